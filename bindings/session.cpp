// SPDX-License-Identifier: MIT
// An inquiry step by step, and many of them as columns, for makegood.session.
#include <pybind11/numpy.h>
#include <pybind11/stl.h>
#include "door.hpp"
#include <makegood/job/session.hpp>
#include <makegood/job/visit.hpp>

namespace py = pybind11;
using namespace pybind11::literals;

namespace makegood::python {
namespace {
using job::session;

document::value family_from(py::handle h) {
  if (py::isinstance<py::str>(h)) return job::family(h.cast<std::string>());
  return job::extended(job::shared_family(), from_python(h));
}
document::object object_from(py::handle h, const char* what) {
  if (h.is_none()) return {};
  const auto v = from_python(h);
  const auto* o = v.as<document::object>();
  if (!o) throw py::type_error(std::string(what) + " is a dict");
  return *o;
}
job::session_options options_from(py::handle costs, py::handle instruments, double none_prior, unsigned points) {
  job::session_options o;
  o.none_prior = none_prior;
  o.points = points;
  o.costs = job::costs_from(object_from(costs, "costs"));
  if (instruments.is_none()) return o;
  for (auto item : instruments.cast<py::sequence>()) {
    if (!py::isinstance<instrument>(item)) throw py::type_error("instruments are Instrument objects");
    const auto one = std::make_shared<const instrument>(item.cast<const instrument&>());
    for (const auto& f : one->functions) o.with.emplace(f.kind, reading(1.0).with(one));
  }
  return o;
}
std::string read_into(session& s, const std::string& test, py::handle value, const std::string& label, const std::string& supersedes) {
  if (py::isinstance<py::str>(value)) return s.read(test, value.cast<std::string>(), label, supersedes);
  if (py::isinstance<reading>(value)) return s.read(test, value.cast<const reading&>(), label, supersedes);
  return s.read(test, reading_from(from_python(value)), label, supersedes);
}
/// Columns by test: numbers, or words as places of outcomes.
py::tuple many_from(py::handle family, py::handle given, py::dict columns, std::size_t rows, py::handle costs, py::handle instruments, double none_prior, unsigned points, unsigned threads, bool plan,
                    py::object progress) {
  auto options = options_from(costs, instruments, none_prior, points);
  options.draws = 0;
  const auto of = job::fill(family_from(family), object_from(given, "given"), options.with);
  std::vector<job::reading_column> list;
  for (auto item : columns) {
    const auto t = item.second.cast<py::tuple>();  // values, states or None, words
    job::reading_column c;
    c.test = item.first.cast<std::string>();
    c.values = t[0].cast<std::vector<double>>();
    if (!t[1].is_none()) c.states = t[1].cast<std::vector<signed char>>();
    c.words = t[2].cast<bool>();
    if (t.size() > 3 && !t[3].is_none()) c.places = t[3].cast<std::vector<int>>();
    list.push_back(std::move(c));
  }
  job::many_results r;
  {
    py::gil_scoped_release released;
    r = job::many(of, list, rows, options, threads, plan, [&](std::size_t done) {
      if (done % 64 != 0 && done != rows) return true;
      py::gil_scoped_acquire back;
      if (PyErr_CheckSignals() != 0) throw py::error_already_set();
      if (!progress.is_none()) progress(done);
      return true;
    });
  }
  const auto column = [](const auto& v) { return py::array(py::cast(v)); };
  py::list hypotheses, tests, acts;
  for (const auto& h : of.hypotheses) hypotheses.append(h.id);
  hypotheses.append("none_of_these");
  for (const auto& t : of.tests) tests.append(t.id);
  for (const auto& a : of.acts) acts.append(a.id);
  py::array_t<double> p({rows, r.width});
  std::copy(r.probabilities.begin(), r.probabilities.end(), p.mutable_data());
  return py::make_tuple(hypotheses, tests, acts, p, column(r.leading), column(r.is), column(r.test), column(r.act));
}
}  // namespace

void add_session(py::module_& m) {
  py::class_<session>(m, "_Session", "An inquiry step by step: use makegood.Session.")
      .def(py::init([](py::handle family, py::handle given, py::handle costs, py::handle instruments, double none_prior, unsigned points) {
             auto o = options_from(costs, instruments, none_prior, points);
             auto filled = job::fill(family_from(family), object_from(given, "given"), o.with);
             return session(std::move(filled), std::move(o));
           }),
           "family"_a, "given"_a, "costs"_a, "instruments"_a, "none_prior"_a, "points"_a)
      .def("read", &read_into, "test"_a, "value"_a, "label"_a, "supersedes"_a)
      .def("withdraw", &session::withdraw, "label"_a)
      .def("stands", &session::stands, "condition"_a, "now"_a)
      .def("undo", &session::undo)
      .def("steps", &session::steps)
      .def("explain", &session::explain)
      .def("standing", [](session& s) { return std::vector<std::string>(s.standing().begin(), s.standing().end()); })
      .def("to_dict", [](session& s) { return to_python(s.to_document()); })
      .def("probabilities", [](session& s) {
        py::dict d;
        const auto& t = s.table();
        for (std::size_t h = 0; h < t.rows.size(); ++h) d[py::str(std::string(s.engine().id(h)))] = t.rows[h].posterior;
        return d;
      });
  m.def("_inquiries",
        [](const job::visit& v) {
          py::list all;
          for (std::size_t i = 0; i < v.inquiries.size(); ++i) {
            auto s = job::session_of(v, i);
            all.append(py::make_tuple(v.inquiries[i].id, v.inquiries[i].name, to_python(s.to_document())));
          }
          return all;
        },
        "visit"_a);
  m.def("_family_ids", [] {
    std::vector<std::string> ids;
    for (const auto id : job::family_ids()) ids.emplace_back(id);
    return ids;
  });
  m.def("_family", [](const std::string& id) { return to_python(job::family(id)); }, "id"_a);
  m.def("_extended", [](py::handle family, py::handle patch) { return to_python(job::extended(from_python(family), from_python(patch))); }, "family"_a, "patch"_a);
  m.def("_many", &many_from, "family"_a, "given"_a, "columns"_a, "rows"_a, "costs"_a, "instruments"_a, "none_prior"_a, "points"_a, "threads"_a, "plan"_a, "progress"_a);
}

}  // namespace makegood::python

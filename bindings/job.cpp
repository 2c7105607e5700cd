// SPDX-License-Identifier: MIT
// The job floor: a visit in, an assessment out.
#include <pybind11/numpy.h>
#include <pybind11/stl.h>
#include "door.hpp"
#include <makegood/job/assess.hpp>
#include <makegood/job/words.hpp>

namespace py = pybind11;
using namespace pybind11::literals;

namespace makegood::python {

void add_job(py::module_& m) {
  py::class_<job::visit>(m, "Visit", "What was found, read and measured in one place. Made by load_visit() or read_visit().")
      .def_readonly("title", &job::visit::title)
      .def_readonly("place", &job::visit::place)
      .def_readonly("date", &job::visit::date)
      .def_readonly("invented", &job::visit::invented)
      .def("__repr__", [](const job::visit& v) { return "<makegood visit: " + v.title + ">"; });
  py::class_<job::finding>(m, "Finding", "One question asked of one thing, and its answer.")
      .def_readonly("path", &job::finding::path)
      .def_readonly("subject", &job::finding::subject)
      .def_readonly("question", &job::finding::question)
      .def_readonly("plain", &job::finding::plain)
      .def_readonly("next", &job::finding::next)
      .def_readonly("kind", &job::finding::kind, "check, observation or diagnosis.")
      .def_readonly("call", &job::finding::call, "The entry of the catalogue behind it.")
      .def_readonly("electrician", &job::finding::electrician, "One sentence for the next electrician.")
      .def_readonly("consequence", &job::finding::consequence, "What can follow when it is left as it is.")
      .def_readonly("caution", &job::finding::caution, "What can hurt somebody who acts on it.")
      .def_readonly("circuit", &job::finding::circuit, "Id of the circuit that is switched off for it.")
      .def_property_readonly("danger", [](const job::finding& f) { return std::string(job::danger_text(f.level)); }, "now, potential, improve, investigate, or empty: a suggestion, no certificate or condition report.")
      .def_property_readonly("outcome", [](const job::finding& f) { return std::string(outcome_text(f.verdict.outcome)); }, "pass, fail or undecided.")
      .def_property_readonly("verdict", [](const job::finding& f) { return verdict(f.verdict); })
      .def("__repr__", [](const job::finding& f) { return "<makegood finding " + f.path + ": " + f.plain + ">"; });
  py::class_<job::assessment>(m, "Assessment", "The findings of a visit under a rulebook.")
      .def_readonly("title", &job::assessment::title)
      .def_readonly("rulebook", &job::assessment::rulebook)
      .def_readonly("decision_rule", &job::assessment::decision_rule)
      .def_readonly("findings", &job::assessment::findings)
      .def_readonly("cautions", &job::assessment::cautions)
      .def("to_dict", [](const job::assessment& a) { return to_python(job::to_document(a)); })
      .def("__repr__", [](const job::assessment& a) {
        return "<makegood assessment: " + std::to_string(a.count(outcome::fail)) + " fail, " + std::to_string(a.count(outcome::undecided)) +
               " undecided, " + std::to_string(a.count(outcome::pass)) + " pass>";
      });
  m.def("read_visit", [](py::handle document_) { return job::read_visit(from_python(document_)); }, "document"_a,
        "A visit from a dict; DocumentError lists all problems with their paths.");
  m.def("assess", [](const job::visit& v, py::handle rules, py::handle rule) { return job::assess(v, rulebook_from(rules), decision_rule_from(rule)); }, "visit"_a, py::kw_only(),
        "rules"_a, "rule"_a = py::none(),
        "Every check that the readings allow, what is wrong with what does not work, what is still to be measured, and what follows: isolating, options with price, an order of work.");
  m.def(
      "_assess_many",
      [](py::sequence visits, py::handle rules, py::handle rule, unsigned threads, bool inquiries, py::object progress) {
        std::vector<job::visit> all;
        for (auto item : visits) all.push_back(py::isinstance<job::visit>(item) ? item.cast<const job::visit&>() : job::read_visit(from_python(item)));
        const auto book = rulebook_from(rules);
        const auto decide = decision_rule_from(rule);
        job::many_findings found;
        {
          py::gil_scoped_release released;
          found = job::assess_many(all, book, decide, threads, inquiries, [&](std::size_t done) {
            if (done % 64 != 0 && done != all.size()) return true;
            py::gil_scoped_acquire back;
            if (PyErr_CheckSignals() != 0) throw py::error_already_set();
            if (!progress.is_none()) progress(done);
            return true;
          });
        }
        const auto column = [](const auto& v) { return py::array(py::array_t<std::decay_t<decltype(v[0])>>(static_cast<py::ssize_t>(v.size()), v.data())); };
        return py::make_tuple(column(found.visit), column(found.path), column(found.call), column(found.outcome), column(found.reason), column(found.danger), column(found.value), column(found.limit), column(found.margin),
                              column(found.probability), found.paths, found.calls);
      },
      "visits"_a, "rules"_a, "rule"_a, "threads"_a, "inquiries"_a, "progress"_a);
  m.def("words", [] { return to_python(job::words()); },
        "Words and judgement that stand beside numbers: \"checks\" by name, \"observations\" by kind, and a \"glossary\".");
  m.def("visit_schema", [] { return to_python(job::visit_schema()); }, "JSON Schema (2020-12) of a visit.");
}

}  // namespace makegood::python

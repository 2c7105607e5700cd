// SPDX-License-Identifier: MIT
// The job floor: a visit in, an assessment out.
#include <pybind11/stl.h>
#include "door.hpp"
#include <makegood/job/assess.hpp>

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
        "Every check that the readings allow, and what is still to be measured.");
  m.def("visit_schema", [] { return to_python(job::visit_schema()); }, "JSON Schema (2020-12) of a visit.");
}

}  // namespace makegood::python

// SPDX-License-Identifier: MIT
// The door between Python and the catalogue: one extension type for every formula, check and model.
#pragma once
#include <pybind11/pybind11.h>
#include <makegood/registry.hpp>

namespace makegood::python {

/// Error classes, created once a module: Error and its children.
struct errors {
  PyObject *base = nullptr, *range = nullptr, *relation = nullptr, *document = nullptr, *rule = nullptr, *convergence = nullptr;
};
const errors& error_types();

void add_errors(pybind11::module_& m);    // door.cpp
void add_doors(pybind11::module_& m);     // door.cpp
void add_classes(pybind11::module_& m);   // classes.cpp
void add_job(pybind11::module_& m);       // job.cpp
void add_inference(pybind11::module_& m); // inference.cpp
void add_session(pybind11::module_& m);   // session.cpp
void add_rows(pybind11::module_& m);      // rows.cpp
void add_uncertainty(pybind11::module_& m);  // uncertainty.cpp
void add_verdict(pybind11::module_& m);   // verdict.cpp

/// Python objects as a document and back.
document::value from_python(pybind11::handle h, int depth = 0);
pybind11::object to_python(const document::value& v);
/// A check's or model's argument. The flag says that a bare number was given.
given given_from(pybind11::handle h);
rulebook rulebook_from(pybind11::handle h);
/// None: the default; a name; a DecisionRule.
decision_rule decision_rule_from(pybind11::handle h);
/// Columns in, columns out (rows.cpp): a tuple (assumed, dict of arrays); a tuple (values, list of slopes).
pybind11::object judge_rows_from(const entry& e, pybind11::handle arguments, pybind11::handle book, unsigned threads, bool nan_for_errors,
                                 pybind11::handle rule);
pybind11::object slopes_from(const entry& e, pybind11::handle arguments, std::size_t rows, unsigned threads, bool nan_for_errors);
/// Monte Carlo and the front door (uncertainty.cpp).
pybind11::object monte_carlo_from(const formula_info& f, pybind11::handle arguments);
/// A new reference.
PyObject* verdict_to_python(const verdict& v);

}  // namespace makegood::python

/// A verdict inside what pybind11 carries (a finding) goes out as the extension type.
template <>
struct pybind11::detail::type_caster<makegood::verdict> {
  static constexpr auto name = const_name("Verdict");
  static handle cast(const makegood::verdict& v, return_value_policy, handle) { return makegood::python::verdict_to_python(v); }
};

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

/// Python objects as a document and back.
document::value from_python(pybind11::handle h, int depth = 0);
pybind11::object to_python(const document::value& v);
/// A check's or model's argument. The flag says that a bare number was given.
given given_from(pybind11::handle h);
rulebook rulebook_from(pybind11::handle h);

}  // namespace makegood::python

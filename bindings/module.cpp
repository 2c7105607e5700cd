// SPDX-License-Identifier: MIT
// Table of contents of the extension module.
#include "door.hpp"

PYBIND11_MODULE(_core, m) {
  m.doc() = "makegood: compiled core. Use the package makegood.";
  m.attr("__version__") = MAKEGOOD_VERSION;
  m.attr("instruction_set") = std::string(makegood::instruction_set());
  makegood::python::add_errors(m);
  makegood::python::add_classes(m);
  makegood::python::add_uncertainty(m);
  makegood::python::add_verdict(m);
  makegood::python::add_rows(m);
  makegood::python::add_job(m);
  makegood::python::add_inference(m);
  makegood::python::add_session(m);
  makegood::python::add_doors(m);
}

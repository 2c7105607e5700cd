// SPDX-License-Identifier: MIT
// Distributions, Monte Carlo and the front door of uncertainty.
#include <pybind11/numpy.h>
#include <pybind11/stl.h>
#include <makegood/monte_carlo.hpp>
#include "door.hpp"

namespace py = pybind11;
using namespace pybind11::literals;

namespace makegood::python {

namespace {

std::vector<uncertain> uncertain_from(py::handle list) {
  std::vector<uncertain> all;
  for (auto item : py::reinterpret_borrow<py::sequence>(list)) {
    if (py::isinstance<measured>(item)) all.emplace_back(item.cast<measured>());
    else if (py::isinstance<distribution>(item)) all.emplace_back(item.cast<distribution>());
    else all.emplace_back(item.cast<double>());
  }
  return all;
}
py::object column_of(const std::vector<unsigned>& v) { return py::array_t<unsigned>(static_cast<py::ssize_t>(v.size()), v.data()); }

}  // namespace

/// _monte_carlo(arguments in order, trials or 0, digits, probability, seed, threads, most, refused share, whether to hold the first order against it)
py::object monte_carlo_from(const formula_info& f, py::handle args) {
  PyObject* list = nullptr;
  monte_carlo_options how;
  Py_ssize_t trials = 0, most = 0;
  unsigned long long seed = 1;
  int front_door = 0;
  if (!PyArg_ParseTuple(args.ptr(), "OnidKIndp", &list, &trials, &how.digits, &how.probability, &seed, &how.threads, &most, &how.refused_share, &front_door))
    throw py::error_already_set();
  how.trials = static_cast<std::size_t>(trials);
  how.most = static_cast<std::size_t>(most);
  how.seed = seed;
  const auto x = uncertain_from(list);
  if (front_door) {
    propagated r;
    {
      const py::gil_scoped_release others_may_run;
      r = propagate(f, x, how);
    }
    return py::cast(std::move(r));
  }
  monte_carlo_result r;
  {
    const py::gil_scoped_release others_may_run;
    r = monte_carlo(f, x, how);
  }
  return py::cast(std::move(r));
}

void add_uncertainty(py::module_& m) {
  py::class_<distribution>(m, "Distribution", "What is known of a quantity, as a distribution; made by the functions of makegood.distribution.")
      .def_property_readonly("mean", &distribution::mean)
      .def_property_readonly("standard_uncertainty", &distribution::standard_uncertainty)
      .def("__repr__", [](const distribution& d) { return "distribution." + d.text(); });
  m.def("_normal", &distribution::normal, "mean"_a, "standard_uncertainty"_a);
  m.def("_rectangular", &distribution::rectangular, "low"_a, "high"_a);
  m.def("_triangular", &distribution::triangular, "low"_a, "high"_a);
  m.def("_trapezoidal", &distribution::trapezoidal, "low"_a, "high"_a, "top"_a);
  m.def("_arcsine", &distribution::arcsine, "low"_a, "high"_a);
  m.def("_student", &distribution::student, "mean"_a, "scale"_a, "dof"_a);
  m.def("_exponential", &distribution::exponential, "mean"_a);
  m.def("_draw", [](const distribution& d, std::size_t n, std::uint64_t seed, std::uint32_t quantity) {
    std::vector<double> to((n + 63) / 64 * 64);
    draw(d, seed, quantity, 0, to);
    return py::array_t<double>(static_cast<py::ssize_t>(n), to.data());
  });

  py::class_<monte_carlo_result>(m, "MonteCarlo", "What the trials of a Monte Carlo calculation say.")
      .def_readonly("mean", &monte_carlo_result::mean)
      .def_readonly("standard_uncertainty", &monte_carlo_result::standard_uncertainty)
      .def_readonly("median", &monte_carlo_result::median)
      .def_property_readonly("interval", [](const monte_carlo_result& r) { return py::make_tuple(r.low, r.high); }, "The probabilistically symmetric coverage interval.")
      .def_property_readonly("shortest_interval", [](const monte_carlo_result& r) { return py::make_tuple(r.shortest_low, r.shortest_high); })
      .def_readonly("probability", &monte_carlo_result::probability)
      .def_readonly("trials", &monte_carlo_result::trials)
      .def_readonly("refused", &monte_carlo_result::refused, "Draws outside what the formula permits; left out of everything else.")
      .def_readonly("seed", &monte_carlo_result::seed)
      .def_readonly("converged", &monte_carlo_result::converged, "Whether twice the standard deviations of mean, uncertainty and both ends are below `tolerance`.")
      .def_readonly("tolerance", &monte_carlo_result::tolerance)
      .def_property_readonly("doubt", [](const monte_carlo_result& r) {
        return py::dict("mean"_a = r.doubt_mean, "standard_uncertainty"_a = r.doubt_u, "low"_a = r.doubt_low, "high"_a = r.doubt_high);
      }, "Twice the standard deviations.")
      .def("histogram", [](const monte_carlo_result& r) { return py::make_tuple(column_of(r.histogram), r.first_cell, r.cell); },
           "Counts of the cells, lower end of the first, width; the first and the last also hold what lies outside.")
      .def("__repr__", [](const monte_carlo_result& r) {
        return "MonteCarlo(mean=" + number_text(r.mean, 6) + ", standard_uncertainty=" + number_text(r.standard_uncertainty, 3) + ", interval=(" +
               number_text(r.low, 6) + ", " + number_text(r.high, 6) + "), trials=" + std::to_string(r.trials) +
               (r.refused ? ", refused=" + std::to_string(r.refused) : std::string()) + (r.converged ? "" : ", not converged") + ")";
      });
  py::class_<propagated>(m, "Propagated", "A result with its uncertainty, by the first order where Monte Carlo confirms it, else by Monte Carlo.")
      .def_property_readonly("value", &propagated::value)
      .def_property_readonly("standard_uncertainty", &propagated::standard_uncertainty)
      .def_property_readonly("interval", [](const propagated& p) { return py::make_tuple(p.low(), p.high()); })
      .def_property_readonly("method", [](const propagated& p) { return p.validated ? "first order" : "Monte Carlo"; })
      .def_readonly("validated", &propagated::validated)
      .def_readonly("word", &propagated::word)
      .def_readonly("first_order", &propagated::first_order)
      .def_readonly("monte_carlo", &propagated::monte_carlo)
      .def("__repr__", [](const propagated& p) {
        return "Propagated(value=" + number_text(p.value(), 6) + ", standard_uncertainty=" + number_text(p.standard_uncertainty(), 3) + ", interval=(" +
               number_text(p.low(), 6) + ", " + number_text(p.high(), 6) + "), method=\"" + (p.validated ? "first order" : "Monte Carlo") + "\")";
      });
}

}  // namespace makegood::python

// SPDX-License-Identifier: MIT
// Checks, slopes and invoices over arrays: NumPy columns in, NumPy columns out. Shapes, words and masks are dealt with in makegood._rows.
#include <pybind11/numpy.h>
#include <pybind11/stl.h>
#include <makegood/price/quote.hpp>
#include "door.hpp"

namespace py = pybind11;

namespace makegood::python {

namespace {

using column = py::array_t<double, py::array::c_style>;
using state_column = py::array_t<signed char, py::array::c_style>;

/// The vector becomes the array's memory.
template <class T, class As = T>
py::array array_of(std::vector<T>&& v) {
  static_assert(sizeof(T) == sizeof(As));
  auto* kept = new std::vector<T>(std::move(v));
  const py::capsule owner(kept, [](void* p) { delete static_cast<std::vector<T>*>(p); });
  return py::array_t<As>(static_cast<py::ssize_t>(kept->size()), reinterpret_cast<const As*>(kept->data()), owner);
}
std::span<const double> numbers_of(const column& a) { return {a.data(), static_cast<std::size_t>(a.size())}; }

/// Net, tax and total of each of many invoices, from columns of whole numbers; what may stand in them is seen to in makegood._invoices.
using whole_column = py::array_t<std::int64_t, py::array::c_style>;
py::tuple invoice_totals(const whole_column& invoice, const whole_column& quantity, const whole_column& unit_price, const whole_column& rate, std::size_t invoices,
                         std::tuple<int, int, int> digits, const std::string& rounding, const std::string& line_mode) {
  const auto whole = [](const whole_column& a) { return std::span<const std::int64_t>(a.data(), static_cast<std::size_t>(a.size())); };
  const price::invoice_columns c{whole(invoice), whole(quantity), whole(unit_price), whole(rate), std::get<0>(digits), std::get<1>(digits), std::get<2>(digits)};
  const auto& rule = price::find_tax_rounding(rounding);
  std::size_t mode = 0;
  while (mode < std::size(price::rounding_modes) && price::rounding_modes[mode] != line_mode) ++mode;
  if (mode == std::size(price::rounding_modes)) throw range_error("invoice_totals: line_mode = \"" + line_mode + "\" is not one of \"half_up\", \"half_even\", \"half_down\", \"down\", \"up\"");
  price::invoice_sums s;
  {
    const py::gil_scoped_release others_may_run;
    s = price::invoice_totals(c, invoices, rule, static_cast<price::rounding_mode>(mode));
  }
  return py::make_tuple(array_of(std::move(s.net)), array_of(std::move(s.vat)), array_of(std::move(s.total)));
}

/// (values, states, standard uncertainties, accuracy, instrument, exact) of a column, or one argument for all rows.
readings readings_from(py::handle h) {
  if (!PyTuple_Check(h.ptr())) return readings(given_from(h));
  const auto t = py::reinterpret_borrow<py::tuple>(h);
  readings r(numbers_of(t[0].cast<column>()));
  if (!t[1].is_none()) {
    const auto s = t[1].cast<state_column>();
    r.states = {s.data(), static_cast<std::size_t>(s.size())};
  }
  if (py::isinstance<py::list>(t[2])) {  // an array of Measured: (source, column, degrees of freedom)
    for (auto item : t[2]) {
      const auto part = py::reinterpret_borrow<py::tuple>(item);
      r.parts.push_back({part[0].cast<std::string>(), numbers_of(part[1].cast<column>()), part[2].cast<double>()});
    }
    r.assumed = t[6].cast<bool>();
  } else if (!t[2].is_none()) {
    r.standard_uncertainty = numbers_of(t[2].cast<column>());
  }
  if (!t[3].is_none()) r.statement = t[3].cast<accuracy>();
  if (py::isinstance<instrument>(t[4])) {
    r.meter = t[4].cast<std::shared_ptr<instrument>>();
    r.instrument = r.meter->id;
  } else {
    r.instrument = t[4].cast<std::string>();
  }
  r.exact = t[5].cast<bool>();
  return r;
}

}  // namespace

py::object judge_rows_from(const entry& e, py::handle arguments, py::handle book, unsigned threads, bool nan_for_errors, py::handle rule) {
  std::vector<readings> list;
  for (auto item : arguments) list.push_back(readings_from(item));
  const rulebook rules = rulebook_from(book);
  const decision_rule decided = decision_rule_from(rule);
  verdicts v;
  {
    const py::gil_scoped_release others_may_run;
    v = judge_rows(e, list, rules, {threads, nan_for_errors, decided});
  }
  py::dict d;
  d["outcome"] = array_of<outcome, signed char>(std::move(v.outcome));
  d["reason"] = array_of<reason, signed char>(std::move(v.reason));
  d["plain"] = array_of<outcome, signed char>(std::move(v.plain));
  d["value"] = array_of(std::move(v.value));
  d["lower"] = array_of(std::move(v.lower));
  d["upper"] = array_of(std::move(v.upper));
  d["margin"] = array_of(std::move(v.margin));
  d["standard_uncertainty"] = array_of(std::move(v.standard_uncertainty));
  d["probability"] = array_of(std::move(v.probability));
  return py::make_tuple(v.assumed, d);
}

py::object slopes_from(const entry& e, py::handle arguments, std::size_t rows, unsigned threads, bool nan_for_errors) {
  std::vector<column> columns;
  std::vector<std::span<const double>> in;
  for (auto item : arguments) {
    columns.push_back(item.cast<column>());
    in.push_back(numbers_of(columns.back()));
  }
  std::vector<double> value(rows);
  std::vector<std::vector<double>> slopes(columns.size());
  std::vector<std::span<double>> out;
  for (std::size_t i = 0; i < slopes.size(); ++i) {
    if (!e.formula.args[i].table) slopes[i].resize(rows);
    out.emplace_back(slopes[i]);
  }
  {
    const py::gil_scoped_release others_may_run;
    slopes_rows(e, in, value, out, {threads, nan_for_errors});
  }
  py::list l;
  for (auto& s : slopes) l.append(array_of(std::move(s)));
  return py::make_tuple(array_of(std::move(value)), l);
}

void add_rows(py::module_& m) {
  py::list outcomes, reasons, states;
  for (int i = 0; i <= static_cast<int>(outcome::undecided); ++i) outcomes.append(outcome_text(static_cast<outcome>(i)));
  for (int i = 0; i <= static_cast<int>(reason::precondition_missing); ++i) reasons.append(reason_text(static_cast<reason>(i)));
  for (int i = 0; i <= static_cast<int>(reading::state::pending); ++i) states.append(state_text(static_cast<reading::state>(i)));
  m.attr("outcomes") = py::tuple(outcomes);
  m.attr("reasons") = py::tuple(reasons);
  m.attr("states") = py::tuple(states);
  m.def("_invoice_totals", invoice_totals);
}

}  // namespace makegood::python

// SPDX-License-Identifier: MIT
// The words of a descriptor: arguments with unit and ranges, choices, sources, and the sentences that refuse a number.
// Core: every subject uses it. Includes the standard library only.
#pragma once
#include <array>
#include <string_view>
#include "error.hpp"
#include "math.hpp"
#include "unit.hpp"
#include "view.hpp"

namespace makegood {
inline namespace v1 {

/// A range of numbers. NaN lies in no range, under every compiler flag.
struct range {
  double low, high;
  bool low_open = false, high_open = false;
  MAKEGOOD_INLINE constexpr bool contains(double x) const {
    return !is_nan(x) && (low_open ? x > low : x >= low) && (high_open ? x < high : x <= high);
  }
};
/// Beyond this a number is a missing-value code or a slip, not a measurement.
inline constexpr double beyond_measure = 1e12;
inline constexpr range positive{0.0, beyond_measure, true, false};
inline constexpr range non_negative{0.0, beyond_measure};
inline constexpr range any_number{-beyond_measure, beyond_measure};
inline constexpr range air_temperature{-100.0, 200.0};
inline constexpr range above_absolute_zero{-273.15, 5000.0, true, false};
constexpr range between(double low, double high) { return {low, high}; }
constexpr range positive_to(double high) { return {0.0, high, true, false}; }

/// One column of numbers of a choice table.
struct column {
  std::string_view symbol;
  unit_t unit;
};
/// One named row: what a word ("copper") stands for.
struct choice_row {
  std::string_view key;
  std::string_view label;
  std::array<double, 8> values{};
  std::string_view source{};
};
/// A constexpr table of named rows; the word selects the numbers before the kernel runs.
struct choice_table {
  view<column> columns;
  view<choice_row> rows;
  constexpr int find(std::string_view key) const {
    for (std::size_t i = 0; i < rows.size(); ++i)
      if (rows[i].key == key) return static_cast<int>(i);
    return -1;
  }
  /// Words that are numbers ("1.5", "2.5": sizes, ratings) may be given as numbers where the language allows it.
  constexpr bool of_numbers() const { return !rows.empty() && rows[0].key[0] >= '0' && rows[0].key[0] <= '9'; }
};

/// The kind of instrument that reads an argument; its worst case is used when a reading names no instrument.
enum class reads : unsigned char {
  nothing, continuity, insulation, loop_impedance, rcd_time, resistance, temperature, airflow, length, voltage, current
};

/// Description of one argument.
struct argument {
  std::string_view name;
  std::string_view symbol;
  unit_t unit{};
  range permitted = any_number;
  std::string_view text{};
  range usual{0.0, 0.0};                  ///< where ordinary jobs lie: examples, tests and hints at slips of unit
  range valid = any_number;               ///< outside: the number is given, a verdict is "undecided: outside validity"
  bool optional = false;
  double fallback = no_number;
  const choice_table* table = nullptr;    ///< set for a choice
  reads instrument = reads::nothing;
};
/// A number among the arguments of a formula.
struct arg : argument {
  constexpr arg(std::string_view name_, std::string_view symbol_, unit_t unit_, range permitted_, std::string_view text_)
      : argument{name_, symbol_, unit_, permitted_, text_, {}, permitted_} {}
  constexpr arg usually(double low, double high) const { arg a = *this; a.usual = between(low, high); return a; }
  constexpr arg valid_in(range r) const { arg a = *this; a.valid = r; return a; }
  constexpr arg otherwise(double value) const { arg a = *this; a.optional = true; a.fallback = value; return a; }
  constexpr arg read_by(reads r) const { arg a = *this; a.instrument = r; return a; }
};
/// A word among the arguments of a formula.
struct choice : argument {
  constexpr choice(std::string_view name_, const choice_table& rows, std::string_view text_)
      : argument{name_, name_, unit::one, {0, 1e6}, text_, {0, static_cast<double>(rows.rows.size()) - 1.0}, {0, 1e6}} {
    table = &rows;
  }
  constexpr choice otherwise(std::string_view key) const {
    choice c = *this;
    c.optional = true;
    c.fallback = table->find(key);
    return c;
  }
};

/// What a formula returns.
struct out {
  std::string_view name;
  std::string_view symbol;
  unit_t unit;
  std::string_view summary;
};
/// Where a formula, a table or a limit was published. Grade "memory": recalled, not read; "common-practice": a rule of the trade.
struct source {
  std::string_view title;
  std::string_view clause{};
  std::string_view grade = "seen";
};

/// What the row of a choice is inside a kernel: row[0], row[1] ... are numbers of the kernel's kind.
template <class T>
struct chosen {
  const choice_table* table;
  int index;
  constexpr T operator[](std::size_t c) const {
    const auto& row = table->rows[static_cast<std::size_t>(index)];
    return static_cast<T>(literal{row.values[c], table->columns[c].unit, table->columns[c].symbol, row.label});
  }
};

/// A relation between arguments that must hold; its breach is an error.
template <class P>
struct requirement {
  P holds;
  std::string_view text;
};
template <class P>
constexpr requirement<P> requires_that(P p, std::string_view text) {
  return {p, text};
}
/// A relation between arguments outside which the formula is known to be doubtful.
template <class P>
struct validity {
  P holds;
  std::string_view text;
};
template <class P>
constexpr validity<P> valid_while(P p, std::string_view text) {
  return {p, text};
}
/// Remarks for the description: accuracy, degenerate cases.
struct remarks {
  std::string_view accuracy{};
  std::string_view degenerate{};
};

namespace detail {

/// Where the number fits in the usual range once a slip of unit is undone: adds the sentence that suggests it.
inline void add_slip_hint(message& text, const argument& a, double x) {
  if (x == -999.0 || x == -9999.0 || (x >= 9e15 && is_finite(x))) {
    text += "; it looks like a code for a missing value: leave the reading out instead";
    return;
  }
  if (!(a.usual.low < a.usual.high)) return;
  const auto suggest = [&](std::string_view unit, double y) {
    text += "; if it was in ";
    text += unit;
    text += ", write ";
    text.quantity(y, a.unit.symbol, 6);
  };
  if (a.unit.celsius && a.usual.contains(x - 273.15)) return suggest("K", x - 273.15);
  for (const auto& slip : a.unit.slips)
    if (a.usual.contains(x * slip.factor)) return suggest(slip.symbol, x * slip.factor);
}
/// "-4 m is below 0 m; ...": one wording for every number that is outside its range.
inline void add_out_of_range(message& text, const argument& a, double x) {
  if (is_nan(x)) {
    text += "not a number: leave a reading that was not taken out, or mark it as not measured";
    return;
  }
  text.quantity(x, a.unit.symbol);
  const bool low = x < a.permitted.high;
  const double bound = low ? a.permitted.low : a.permitted.high;
  const bool open = low ? a.permitted.low_open : a.permitted.high_open;
  if (open && x == bound) text += low ? " must be above " : " must be below ";
  else text += low ? " is below " : " is above ";
  text.quantity(bound, a.unit.symbol);
  add_slip_hint(text, a, x);
}
inline void add_keys(message& text, const choice_table& table) {
  std::string_view before = "\"";
  for (const auto& row : table.rows) {
    text += before;
    text += row.key;
    text += "\"";
    before = ", \"";
  }
}
/// " (current_a = 16 A, length_m = 22 m)": the numbers among the arguments.
inline void add_numbers(message& text, view<argument> args, const double* x) {
  std::string_view before = " (";
  for (std::size_t i = 0; i < args.size(); ++i) {
    if (args[i].table) continue;
    text += before;
    text += args[i].name;
    text += " = ";
    text.quantity(x[i], args[i].unit.symbol);
    before = ", ";
  }
  if (before == ", ") text += ")";
}
inline message unknown_key(std::string_view formula, const argument& a, std::string_view key) {
  message text(formula);
  text += ": ";
  text += a.name;
  text += " = \"";
  text += key;
  text += "\" is not one of ";
  add_keys(text, *a.table);
  return text;
}
[[noreturn]] inline void throw_unknown_key(std::string_view formula, const argument& a, std::string_view key) {
  throw range_error(unknown_key(formula, a, key));
}
}  // namespace detail

}  // namespace v1
}  // namespace makegood

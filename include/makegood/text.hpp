// SPDX-License-Identifier: MIT
// The sentences of the library as std::string: for everything that writes more than an error.
// Core above the formulas: readings, verdicts, working, catalogue. Includes the standard library only.
#pragma once
#include <string>
#include <string_view>
#include "descriptor.hpp"

namespace makegood {
inline namespace v1 {

/// A number as text: shortest form that reads back the same, or `digits` significant digits. No locale, no -0.
inline std::string number_text(double x, int digits = 0) { return std::string(message().number(x, digits)); }
/// "12.5 m", "0.8" (no unit), "-20 °C".
inline std::string quantity_text(double x, std::string_view unit_symbol, int digits = 0) {
  return std::string(message().quantity(x, unit_symbol, digits));
}

namespace detail {
/// "-4 m is below 0 m; ...": one wording for every number that is outside its range.
inline std::string out_of_range_text(const argument& a, double x) {
  message text;
  add_out_of_range(text, a, x);
  return std::string(text);
}
/// The words of a table: "\"copper\", \"aluminium\"".
inline std::string keys_text(const choice_table& table) {
  message text;
  add_keys(text, table);
  return std::string(text);
}
}  // namespace detail

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Errors of the library: one base class, one class for each way an input can be wrong.
// Core: every subject uses it. Includes the standard library only.
#pragma once
#include <charconv>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace makegood {
inline namespace v1 {

/// Base of every error that the library throws.
struct error : std::runtime_error {
  using std::runtime_error::runtime_error;
};
/// An argument is outside its permitted range, not a number, or not one of the listed words.
struct range_error : error {
  using error::error;
};
/// Two arguments contradict each other (a final temperature below the initial one).
struct relation_error : error {
  using error::error;
};
/// A rulebook is unknown or cannot be composed.
struct rule_error : error {
  using error::error;
};
/// A solver did not reach the accuracy asked for.
struct convergence_error : error {
  using error::error;
};

/// One thing wrong in a document, with its path ("circuits[2].length_m").
struct problem {
  std::string path;
  std::string text;
};
/// A document (a visit) has one or more problems; all of them are listed.
struct document_error : error {
  explicit document_error(std::vector<problem> found) : error(join(found)), problems(std::move(found)) {}
  document_error(std::string path, std::string text) : document_error(std::vector<problem>{{std::move(path), std::move(text)}}) {}
  std::vector<problem> problems;

 private:
  static std::string join(const std::vector<problem>& found) {
    std::string text;
    for (const auto& p : found) {
      if (!text.empty()) text += '\n';
      text += p.path;
      if (!p.path.empty()) text += ": ";
      text += p.text;
    }
    return text;
  }
};

/// A number as text: shortest form that reads back the same, or `digits` significant digits. No locale, no -0.
inline std::string number_text(double x, int digits = 0) {
  if (x == 0.0) return "0";
  char buffer[40];
  auto [end, status] = digits > 0 ? std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::general, digits)
                                  : std::to_chars(buffer, buffer + sizeof buffer, x);
  std::string text(buffer, end);
  if (text.find_first_of("en") == std::string::npos) {
    return text;
  }
  double magnitude = x < 0 ? -x : x;  // plain decimals where a reader expects them (1e+05 reads as 100000)
  if (magnitude >= 1e-4 && magnitude < 1e10) {
    auto fixed = digits > 0 ? std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::fixed,
                                            magnitude >= 1.0 ? 0 : digits + 3)
                            : std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::fixed);
    if (fixed.ec == std::errc{}) return std::string(buffer, fixed.ptr);
  }
  return text;
}

/// "12.5 m", "0.8" (no unit), "-20 °C".
inline std::string quantity_text(double x, std::string_view unit_symbol, int digits = 0) {
  std::string text = number_text(x, digits);
  if (!unit_symbol.empty()) {
    text += ' ';
    text += unit_symbol;
  }
  return text;
}

}  // namespace v1
}  // namespace makegood

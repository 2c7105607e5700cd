// SPDX-License-Identifier: MIT
// What a batch function is given and what it fills: plain pointers, so that every instruction set sees the same.
// Core of the batch kind. A column is one number for all rows, or one a row (`wide`).
#pragma once
#include <cstddef>
#include "../verdict.hpp"

namespace makegood {
inline namespace v1 {

/// A formula with its slopes, or with the standard uncertainty of independent arguments: results that nobody asks for are null.
struct slope_columns {
  const double* const* x = nullptr;
  const bool* wide = nullptr;
  double* value = nullptr;
  double* const* slopes = nullptr;
  bool nan_for_errors = false;
  const double* const* u = nullptr;  ///< standard uncertainties; null: an exact argument
  const bool* u_wide = nullptr;
  double* standard_uncertainty = nullptr;
};

/// What is drawn for one column: the kind of a distribution and its numbers.
struct draw_kind {
  enum class shape : unsigned char { normal, rectangular, trapezoidal, arcsine, student, exponential };
  shape is = shape::normal;
  double centre = 0.0, scale = 1.0, extra = 0.0;  ///< extra: the share of the shorter side, or degrees of freedom
  unsigned quantity = 0;                          ///< its number among the draws of a seed
};
/// Draws first ... first + n, n and first multiples of 64.
struct draw_columns {
  draw_kind kind{};
  unsigned long long seed = 0, first = 0;
  std::size_t n = 0;
  double* to = nullptr;
};
/// Numbers of a column and what is found of them; the same bits whatever the instruction set.
struct column_sums {
  std::size_t there = 0;  ///< how many are numbers
  double sum = 0.0, low = 0.0, high = 0.0;
};
struct column_spread {
  double square = 0.0, fourth = 0.0;  ///< sums of powers of the differences from `centre`
};
/// The loops of Monte Carlo, of one instruction set.
struct draw_table {
  static constexpr int cells = 8192;
  void (*fill)(const draw_columns&) = nullptr;
  /// y += factor * x, element by element.
  void (*add)(double* y, const double* x, double factor, std::size_t n) = nullptr;
  column_sums (*sums)(const double*, std::size_t n) = nullptr;
  /// Adds to the counts of the cells from `low` in steps of 1 / per; what lies outside goes into the first or last. Whole rows of 16 go first.
  column_spread (*spread)(const double*, std::size_t n, double centre, double low, double per, unsigned* counts, unsigned short* cell) = nullptr;
};

/// A check over many rows.
struct check_columns {
  static constexpr unsigned char lower_limit = 1, upper_limit = 2, strict = 4, no_rule = 8;

  const double* const* x = nullptr;
  const bool* wide = nullptr;
  const signed char* const* states = nullptr;      ///< by argument: reading::state row by row, or null
  const detail::doubt_term* terms = nullptr;
  std::size_t term_count = 0;
  const choice_table* rule = nullptr;              ///< one row, or one for every word of the condition
  const unsigned char* rule_is = nullptr;          ///< of each row: which limits it has
  const unsigned char* rule_missing = nullptr;     ///< of each row: the reason why there is none
  int condition = -1;                              ///< the argument that selects the row; -1: the first
  bool two_sided = false, may_doubt = false, nan_for_errors = false;
  bool by_probability = true;                      ///< the decision rule
  double accept = proved_at, reject = 1.0 - proved_at;

  double *value = nullptr, *lower = nullptr, *upper = nullptr, *margin = nullptr, *standard_uncertainty = nullptr, *probability = nullptr;
  unsigned char *outcome = nullptr, *reason = nullptr, *plain = nullptr;
};

}  // namespace v1
}  // namespace makegood

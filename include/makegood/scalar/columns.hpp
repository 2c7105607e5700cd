// SPDX-License-Identifier: MIT
// What a batch function is given and what it fills: plain pointers, so that every instruction set sees the same.
// Core of the batch kind. A column is one number for all rows, or one a row (`wide`).
#pragma once
#include <cstddef>
#include "../verdict.hpp"

namespace makegood {
inline namespace v1 {

/// A formula with its slopes: results that nobody asks for are null.
struct slope_columns {
  const double* const* x = nullptr;
  const bool* wide = nullptr;
  double* value = nullptr;
  double* const* slopes = nullptr;
  bool nan_for_errors = false;
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

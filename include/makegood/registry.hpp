// SPDX-License-Identifier: MIT
// The catalogue of everything that is compiled into the `makegood::makegood` target, and calling it by name.
// Opt-in: needs the compiled target.
#pragma once
#include <optional>
#include "catalogue.hpp"

namespace makegood {
inline namespace v1 {

/// Every entry, subject by subject, in the order of the lists.
std::span<const entry> catalogue();
/// The instruction set that arrays are calculated with: the best one here, or the one named by the environment variable
/// MAKEGOOD_INSTRUCTION_SET (sse2, avx2, avx512). The results are the same bits.
std::string_view instruction_set();
/// Those that this processor has, the least first; and an entry whose array functions are those of one of them (tests and benchmarks).
std::vector<std::string_view> instruction_sets();
entry with_instruction_set(const entry& e, std::string_view set);
/// "electrical.voltage_drop"; nullptr when there is none.
const entry* find_entry(std::string_view full_name);
/// The entry of a formula or check by the object itself: its work is then not compiled a second time.
template <class Item>
const entry& entry_of(const Item& item) {
  for (const auto& e : catalogue())
    if (e.item == &item) return e;
  throw error(std::string(item.result.name) + ": not in any subject's list");
}

/// One argument of a check over many rows: one number, reading or word for all rows, or a column. The columns stay the caller's.
struct readings {
  std::span<const double> values{};              ///< one a row; NaN: not measured. Of a word: the indices of its rows
  std::span<const signed char> states{};         ///< one a row, reading::state; empty: all are values
  std::span<const double> standard_uncertainty{};///< one a row; empty: by statement or class
  std::optional<given> all{};                    ///< for all rows, in place of `values`
  std::string instrument{};
  std::optional<accuracy> statement{};
  std::shared_ptr<const v1::instrument> meter{};  ///< in place of a statement: by function, and by range row by row
  bool exact = false;                            ///< numbers without doubt, said by name
  /// Named error sources with a column each, with sign (an array of Measured); a source that two arguments name is common to them.
  struct part {
    std::string source;
    std::span<const double> u;
    double dof = without_end;
  };
  std::vector<part> parts{};
  bool assumed = false;                          ///< of these: an instrument's class was taken

  readings(given one) : all(std::move(one)) {}
  readings(double one) : all(given(one)) {}
  readings(const char* word) : all(given(word)) {}
  readings(std::span<const double> column) : values(column) {}
  readings(const std::vector<double>& column) : values(column) {}
  /// The argument of one row, as a check takes it.
  given at(std::size_t row, const argument& a) const;
};
struct rows_options {
  unsigned threads = 1;         ///< at most; more only where the work pays for it. The bits are the same
  bool nan_for_errors = false;  ///< a row with nonsense counts as not measured; otherwise it is an error that names the row
  decision_rule rule{};         ///< of checks
};
/// The outcomes of a check over many rows, in columns.
struct verdicts {
  std::vector<makegood::outcome> outcome, plain;
  std::vector<makegood::reason> reason;
  std::vector<double> value, lower, upper, margin, standard_uncertainty, probability;  ///< NaN where there is none
  bool assumed = false;  ///< the worst case of an instrument's class was taken for some argument
  const entry* check = nullptr;
  std::vector<readings> arguments{};
  rulebook book{};
  decision_rule decided_by{};

  std::size_t size() const { return outcome.size(); }
  std::size_t count(makegood::outcome o) const;
  /// One row once more, alone: the same numbers, with its source, its words and its worked steps.
  verdict at(std::size_t row) const;
};
/// A check over many rows: one pass from readings to outcomes, every number the same bits as one row at a time.
verdicts judge_rows(const entry& check, std::span<const readings> arguments, const rulebook& book, const rows_options& how = {});

/// A formula over columns (of one number or n) with its slopes by each argument; slopes that are empty are not filled.
void slopes_rows(const entry& formula, std::span<const std::span<const double>> arguments, std::span<double> value,
                 std::span<const std::span<double>> slopes, const rows_options& how = {});
/// A formula over columns (of one number or n) of independent arguments, with its standard uncertainty by the first order, in one pass.
/// u: standard uncertainties, of one number or n; empty: exact.
void uncertainty_rows(const entry& formula, std::span<const std::span<const double>> arguments, std::span<const std::span<const double>> u,
                      std::span<double> value, std::span<double> standard_uncertainty, const rows_options& how = {});
/// A formula over strided arrays (steps in bytes), as NumPy hands them over. Returns the first element refused, or -1.
std::ptrdiff_t batch_rows(const formula_info& f, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, const rows_options& how);

/// Calls an entry by argument names: a number, or an object with the fields of the result.
document::value invoke(const entry& e, const document::object& inputs);
/// Rows of the ledger (tests/published) that hold an entry: read in a source, or computed or recalled.
struct proof {
  int seen = 0, other = 0;
};
proof proved(const entry& e);
/// Everything that the descriptor says, with the state of its proof: for help, catalogue pages and schemas.
document::value describe(const entry& e);

}  // namespace v1
}  // namespace makegood

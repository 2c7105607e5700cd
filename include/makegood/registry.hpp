// SPDX-License-Identifier: MIT
// The catalogue of everything that is compiled into the `makegood::makegood` target, and calling it by name.
// Opt-in: needs the compiled target.
#pragma once
#include "catalogue.hpp"

namespace makegood {
inline namespace v1 {

/// Every entry, subject by subject, in the order of the lists.
std::span<const entry> catalogue();
/// The instruction set that arrays are calculated with: the best one here, or the one named by the environment variable
/// MAKEGOOD_INSTRUCTION_SET (sse2, avx2, avx512). The results are the same bits.
std::string_view instruction_set();
/// Those that this processor has, the least first; and a formula's function for one of them (tests and benchmarks).
std::vector<std::string_view> instruction_sets();
decltype(formula_info::batch) batch_of(const entry& e, std::string_view set);
/// "electrical.voltage_drop"; nullptr when there is none.
const entry* find_entry(std::string_view full_name);
/// The entry of a formula or check by the object itself: its work is then not compiled a second time.
template <class Item>
const entry& entry_of(const Item& item) {
  for (const auto& e : catalogue())
    if (e.formula.self == &item || e.check.self == &item) return e;
  throw error(std::string(item.result.name) + ": not in any subject's list");
}
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

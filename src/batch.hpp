// SPDX-License-Identifier: MIT
// Formulas over arrays, compiled once an instruction set; the best one that the processor has is chosen when asked for.
#pragma once
#include <cstddef>
#include <string_view>

namespace makegood::inline v1 {
struct slope_columns;
struct check_columns;
struct draw_table;
}  // namespace makegood::inline v1

namespace makegood::subjects {

using batch_function = std::ptrdiff_t (*)(const void*, char**, const std::ptrdiff_t*, std::ptrdiff_t, bool);
using slopes_function = std::ptrdiff_t (*)(const slope_columns&, std::size_t, std::size_t);
using check_function = std::ptrdiff_t (*)(const check_columns&, std::size_t, std::size_t);
/// Which item of a list (by its address), and its functions.
struct batch_row {
  const void* item;
  batch_function run;
  slopes_function slopes;
  check_function check;
};
struct batch_table {
  const char* instruction_set;
  const batch_row* rows;
  std::size_t count;
  const v1::draw_table* draws;
};
/// The table in use, or that of an instruction set by name (the one in use where this processor has none of that name).
const batch_table& batches_of(std::string_view instruction_set);

#if defined(MAKEGOOD_BATCH_X86)
namespace sse2 { batch_table batches(); }
namespace avx2 { batch_table batches(); }
namespace avx512 { batch_table batches(); }
#else
namespace generic { batch_table batches(); }
#endif

}  // namespace makegood::subjects

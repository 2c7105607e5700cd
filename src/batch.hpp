// SPDX-License-Identifier: MIT
// Formulas over arrays, compiled once an instruction set; the best one that the processor has is chosen when asked for.
#pragma once
#include <cstddef>

namespace makegood::subjects {

using batch_function = std::ptrdiff_t (*)(const void*, char**, const std::ptrdiff_t*, std::ptrdiff_t, bool);
/// Which formula (by its address), and its function.
struct batch_row {
  const void* self;
  batch_function run;
};
struct batch_table {
  const char* instruction_set;
  const batch_row* rows;
  std::size_t count;
};

#if defined(MAKEGOOD_BATCH_X86)
namespace sse2 { batch_table batches(); }
namespace avx2 { batch_table batches(); }
namespace avx512 { batch_table batches(); }
#else
namespace generic { batch_table batches(); }
#endif

}  // namespace makegood::subjects

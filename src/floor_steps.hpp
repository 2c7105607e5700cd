// SPDX-License-Identifier: MIT
// Many floors at once, in lanes: compiled once for each instruction set (src/floor_steps.cpp), chosen as the batches of formulas are.
#pragma once
#include <makegood/heating/floor_steps.hpp>

namespace makegood::subjects {

struct floor_kernel {
  const char* instruction_set;
  int lanes;
  void (*march)(const heating::floor_columns&, int steps, bool damped);
};

#if defined(MAKEGOOD_BATCH_X86)
namespace sse2 { floor_kernel floors(); }
namespace avx2 { floor_kernel floors(); }
namespace avx512 { floor_kernel floors(); }
#else
namespace generic { floor_kernel floors(); }
#endif
/// That of an instruction set by name; the least one where there is none of that name.
floor_kernel floors_of(const char* instruction_set);

}  // namespace makegood::subjects

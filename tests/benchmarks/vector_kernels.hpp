// SPDX-License-Identifier: MIT
// The vector mathematics as plain functions over arrays, one table an instruction set. Only plain types cross this border: an
// object compiled for one instruction set must not leave an inline function of a library behind.
#pragma once
#include <cstddef>

namespace kernels {

struct kernel {
  const char* name;
  double low, high;  // where the arguments lie
  void (*run)(const double* x, double* out, std::size_t n);  // n is a multiple of 8
};
struct table {
  const char* instruction_set;
  const kernel* list;
  std::size_t count;
};

#if defined(MAKEGOOD_BATCH_X86)
namespace sse2 { table all(); }
namespace avx2 { table all(); }
namespace avx512 { table all(); }
#else
namespace generic { table all(); }
#endif

}  // namespace kernels

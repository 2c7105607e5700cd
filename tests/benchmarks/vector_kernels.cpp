// SPDX-License-Identifier: MIT
// Compiled once for each instruction set, with -DMAKEGOOD_ISA_TAG=<its name>.
#include "vector_kernels.hpp"
#include <makegood/scalar/lanes.hpp>

namespace kernels::MAKEGOOD_ISA_TAG {
namespace {

namespace isa = makegood::v1::MAKEGOOD_ISA_TAG;
using lanes = isa::lanes<>;

template <class F>
void over(F f, const double* x, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; i += lanes::width) f(lanes::load(x + i)).store(out + i);
}
#define KERNEL(name, low, high)                                                                          \
  {                                                                                                      \
    #name, low, high, [](const double* x, double* out, std::size_t n) {                                  \
      over([](const lanes& v) MAKEGOOD_LAMBDA_INLINE { return name(v); }, x, out, n);                    \
    }                                                                                                    \
  }
constexpr kernel list[] = {
    KERNEL(sqrt, 0.0, 100.0),   KERNEL(log, 0.001, 100.0), KERNEL(log10, 0.001, 100.0), KERNEL(log1p, -0.5, 10.0), KERNEL(exp, -20.0, 20.0),
    KERNEL(expm1, -5.0, 5.0),   KERNEL(cbrt, 0.001, 100.0), KERNEL(tanh, -3.0, 3.0),    KERNEL(erf, -3.0, 3.0),    KERNEL(erfc, -3.0, 6.0),
    KERNEL(sin, -10.0, 10.0),   KERNEL(cos, -10.0, 10.0),
    {"pow", 0.001, 100.0, [](const double* x, double* out, std::size_t n) {
       over([](const lanes& v) MAKEGOOD_LAMBDA_INLINE { return pow(v, lanes(1.7)); }, x, out, n);
     }}};
#undef KERNEL

#define TEXT(x) #x
#define TEXT_OF(x) TEXT(x)

}  // namespace

table all() { return {TEXT_OF(MAKEGOOD_ISA_TAG), list, sizeof list / sizeof list[0]}; }

}  // namespace kernels::MAKEGOOD_ISA_TAG

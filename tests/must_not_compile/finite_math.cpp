// SPDX-License-Identifier: MIT
// A unit compiled with finite-math flags must say so, or say that it accepts this.
// error: finite-math flags
#ifdef MAKEGOOD_MUST_COMPILE
#define MAKEGOOD_ALLOW_FINITE_MATH
#endif
#undef __FINITE_MATH_ONLY__
#define __FINITE_MATH_ONLY__ 1
#include <makegood/math.hpp>

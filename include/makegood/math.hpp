// SPDX-License-Identifier: MIT
// Mathematics for formulas: every formula calls these names, for every kind of number.
// Core: every subject uses it. Our own functions stand behind `double` as behind arrays.
#pragma once
#include <bit>
#include <cstdint>
#include "scalar/vector_math.hpp"

#if defined(__FINITE_MATH_ONLY__) && __FINITE_MATH_ONLY__ && !defined(MAKEGOOD_ALLOW_FINITE_MATH)
#error "makegood: this unit is compiled with finite-math flags (-ffast-math). Verdicts find NaN by its bits and stay safe, \
but your own comparisons may not. Drop the flag, or define MAKEGOOD_ALLOW_FINITE_MATH to accept this."
#endif

namespace makegood {
inline namespace v1 {

/// NaN by its bits: true under every compiler flag.
constexpr bool is_nan(double x) {
  return (std::bit_cast<std::uint64_t>(x) & 0x7fffffffffffffffull) > 0x7ff0000000000000ull;
}
/// Neither NaN nor infinite, by the bits.
constexpr bool is_finite(double x) {
  return (std::bit_cast<std::uint64_t>(x) & 0x7ff0000000000000ull) != 0x7ff0000000000000ull;
}
/// The value that stands for "no number": a quiet NaN, built from its bits.
inline constexpr double no_number = std::bit_cast<double>(std::uint64_t{0x7ff8000000000000ull});

// Our own functions, the same bits as over arrays, whatever the instruction set (see scalar/vector_math.hpp for the errors).
#define MAKEGOOD_FUNCTION(name) \
  inline double name(double x) { return MAKEGOOD_ISA_TAG::vector_math::name(x); }
MAKEGOOD_FUNCTION(log)
MAKEGOOD_FUNCTION(log10)
MAKEGOOD_FUNCTION(log1p)
MAKEGOOD_FUNCTION(exp)
MAKEGOOD_FUNCTION(expm1)
MAKEGOOD_FUNCTION(cbrt)
MAKEGOOD_FUNCTION(sin)
MAKEGOOD_FUNCTION(cos)
MAKEGOOD_FUNCTION(tanh)
MAKEGOOD_FUNCTION(erf)
MAKEGOOD_FUNCTION(erfc)
#undef MAKEGOOD_FUNCTION
inline double pow(double x, double y) { return MAKEGOOD_ISA_TAG::vector_math::pow(x, y); }
inline double sqrt(double x) { return __builtin_sqrt(x); }
inline double fabs(double x) { return __builtin_fabs(x); }

/// The branch of a formula: both sides are evaluated, one is taken.
constexpr double select(bool condition, double yes, double no) { return condition ? yes : no; }

/// x / c for a whole number c, at the cost of products: the conversions of units use it.
template <class T>
MAKEGOOD_INLINE constexpr T divided_by(const T& x, double c) {
  if constexpr (requires { typename MAKEGOOD_ISA_TAG::vector_math::kind<T>::bits; }) {
    if (!__builtin_is_constant_evaluated()) return MAKEGOOD_ISA_TAG::vector_math::divided(x, c, 1.0 / c);
  }
  return x / c;
}
/// ln(a / b) of two positive numbers. With slopes (scalar/sparse.hpp) both come from one division.
template <class A, class B>
MAKEGOOD_INLINE auto log_quotient(const A& a, const B& b) {
  return log(a / b);
}
template <class T>
constexpr T square(const T& x) {
  return x * x;
}
template <class T>
constexpr T cube(const T& x) {
  return x * x * x;
}
/// x^N for N >= 0 by multiplications.
template <int N, class T>
MAKEGOOD_INLINE constexpr T whole_power(const T& x) {
  if constexpr (N == 0) return T(1.0);
  else if constexpr (N == 1) return x;
  else if constexpr (N % 2 == 0) return square(whole_power<N / 2>(x));
  else return x * whole_power<N - 1>(x);
}
/// x^(N/D) by multiplications, square and cube roots: D is a product of twos and threes. A negative N divides 1 by it. As with
/// sqrt(), an even root of a negative number is none; as with cbrt(), an odd one is negative.
template <int N, int D = 1, class T>
MAKEGOOD_INLINE constexpr T power(const T& x) {
  static_assert(D > 0);
  if constexpr (N < 0) return T(1.0) / power<-N, D>(x);
  else if constexpr (N % D == 0) return whole_power<N / D>(x);
  else if constexpr (N > D) return whole_power<N / D>(x) * power<N % D, D>(x);
  else if constexpr (N % 2 == 0 && D % 2 == 0) return power<N / 2, D / 2>(x);
  else if constexpr (D % 2 == 0) return power<N, D / 2>(sqrt(x));
  else {
    static_assert(D % 3 == 0, "a root of this order is not made of square and cube roots");
    return power<N, D / 3>(cbrt(x));
  }
}
/// x^y for x >= 0 by way of a plain logarithm: off by up to |y ln x| units in the last place, in a third of the time of pow().
/// For places where the formula damps that error, as a logarithm does.
template <class T>
MAKEGOOD_INLINE T damped_pow(const T& x, double y) {
  return exp(y * log(x));
}
/// What the start of a root is made of: the number itself, of an enclosure its middle.
template <class T>
constexpr const T& guess(const T& x) {
  return x;
}
template <class A, class B>
constexpr auto minimum(const A& a, const B& b) {
  return select(a < b, a, b);
}
template <class A, class B>
constexpr auto maximum(const A& a, const B& b) {
  return select(a < b, b, a);
}

/// Standard normal distribution function.
template <class V>
MAKEGOOD_INLINE V normal_cdf(const V& z) {
  return V(0.5) * erfc(-z * V(0.70710678118654752440));
}

}  // namespace v1
}  // namespace makegood

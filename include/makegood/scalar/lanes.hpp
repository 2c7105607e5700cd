// SPDX-License-Identifier: MIT
// Several doubles at once: a kind of number for formulas over arrays, on the vector extension of the compiler.
// Core of the batch kind. No intrinsics, no containers: an object file compiled for one instruction set leaks nothing.
#pragma once
#include <cstddef>
#include "../unit.hpp"
#include "vector_math.hpp"

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {

/// How many doubles a register of the instruction set holds. Wider lanes work, but slower (g++ 12 splits them badly).
#if defined(__AVX512F__)
inline constexpr int register_lanes = 8;
#elif defined(__AVX2__)
inline constexpr int register_lanes = 4;
#else
inline constexpr int register_lanes = 2;
#endif

/// The vector types of the compiler, width by width.
template <int W>
struct vector_types;
template <>
struct vector_types<2> {
  typedef double reals __attribute__((vector_size(16)));
  typedef std::int64_t masks __attribute__((vector_size(16)));
  typedef std::uint64_t bits __attribute__((vector_size(16)));
  typedef unsigned char bytes __attribute__((vector_size(2)));
};
template <>
struct vector_types<4> {
  typedef double reals __attribute__((vector_size(32)));
  typedef std::int64_t masks __attribute__((vector_size(32)));
  typedef std::uint64_t bits __attribute__((vector_size(32)));
  typedef unsigned char bytes __attribute__((vector_size(4)));
};
template <>
struct vector_types<8> {
  typedef double reals __attribute__((vector_size(64)));
  typedef std::int64_t masks __attribute__((vector_size(64)));
  typedef std::uint64_t bits __attribute__((vector_size(64)));
  typedef unsigned char bytes __attribute__((vector_size(8)));
};

/// As the compiler's own functions want their vectors of whole numbers.
template <int Bytes>
using long_vector __attribute__((vector_size(Bytes))) = long long;

/// The same bytes as numbers of 32 bits.
template <int Bytes>
struct half_words {
  typedef int type __attribute__((vector_size(Bytes)));
};

template <int W = register_lanes>
struct lanes;

/// W truth values.
template <int W = register_lanes>
struct lanes_mask {
  using vector = typename vector_types<W>::masks;
  vector v;  ///< all bits of a lane are set (true) or none

  MAKEGOOD_INLINE lanes_mask() : v{} {}
  MAKEGOOD_INLINE lanes_mask(const lanes_mask& x) : v(x.v) {}
  MAKEGOOD_INLINE lanes_mask& operator=(const lanes_mask& x) {
    v = x.v;
    return *this;
  }
  MAKEGOOD_INLINE explicit lanes_mask(const vector& x) : v(x) {}
  MAKEGOOD_INLINE explicit lanes_mask(bool x) : v(vector{} - static_cast<std::int64_t>(x)) {}
  MAKEGOOD_INLINE bool operator[](int i) const { return v[i] != 0; }

  MAKEGOOD_INLINE friend lanes_mask operator&(const lanes_mask& a, const lanes_mask& b) { return lanes_mask(a.v & b.v); }
  MAKEGOOD_INLINE friend lanes_mask operator|(const lanes_mask& a, const lanes_mask& b) { return lanes_mask(a.v | b.v); }
  // the words of relations between arguments; both sides are evaluated
  MAKEGOOD_INLINE friend lanes_mask operator&&(const lanes_mask& a, const lanes_mask& b) { return lanes_mask(a.v & b.v); }
  MAKEGOOD_INLINE friend lanes_mask operator||(const lanes_mask& a, const lanes_mask& b) { return lanes_mask(a.v | b.v); }
  MAKEGOOD_INLINE friend lanes_mask operator!(const lanes_mask& a) { return lanes_mask(~a.v); }
  MAKEGOOD_INLINE friend bool any(const lanes_mask& a) {
    // the one instruction of the set for it, where there is one
#if defined(__AVX512DQ__)
    if constexpr (W == 8) return __builtin_ia32_cvtq2mask512(__builtin_bit_cast(long_vector<64>, a.v)) != 0;
#endif
#if defined(__AVX__)
    if constexpr (W == 4) return __builtin_ia32_movmskpd256(__builtin_bit_cast(typename vector_types<4>::reals, a.v)) != 0;
#endif
#if defined(__SSE2__)
    if constexpr (W == 2) return __builtin_ia32_movmskpd(__builtin_bit_cast(typename vector_types<2>::reals, a.v)) != 0;
#endif
    std::int64_t r = 0;
    for (int i = 0; i < W; ++i) r |= a.v[i];
    return r != 0;
  }
  MAKEGOOD_INLINE friend bool all(const lanes_mask& a) { return !any(!a); }
  MAKEGOOD_INLINE friend bool any_of(const lanes_mask& a) { return any(a); }
  /// The branch of a formula, lane by lane. Numbers convert by themselves.
  MAKEGOOD_INLINE friend lanes<W> select(const lanes_mask& m, const lanes<W>& yes, const lanes<W>& no) {
    return lanes<W>(m.v ? yes.v : no.v);
  }
  MAKEGOOD_INLINE friend lanes<W> pick(const lanes_mask& m, const lanes<W>& yes, const lanes<W>& no) {
    return lanes<W>(m.v ? yes.v : no.v);
  }
};

/// W unsigned integers of 64 bits: the bits of W doubles.
template <int W>
struct lanes_bits {
  using vector = typename vector_types<W>::bits;
  vector v;

  MAKEGOOD_INLINE explicit lanes_bits(const vector& x) : v(x) {}
  MAKEGOOD_INLINE lanes_bits(const lanes_bits& x) : v(x.v) {}
  MAKEGOOD_INLINE lanes_bits& operator=(const lanes_bits& x) {
    v = x.v;
    return *this;
  }
  MAKEGOOD_INLINE explicit lanes_bits(std::uint64_t x) : v(vector{} + x) {}
  MAKEGOOD_INLINE friend lanes_bits operator+(const lanes_bits& a, const lanes_bits& b) { return lanes_bits(a.v + b.v); }
  MAKEGOOD_INLINE friend lanes_bits operator-(const lanes_bits& a, const lanes_bits& b) { return lanes_bits(a.v - b.v); }
  MAKEGOOD_INLINE friend lanes_bits operator&(const lanes_bits& a, const lanes_bits& b) { return lanes_bits(a.v & b.v); }
  MAKEGOOD_INLINE friend lanes_bits operator|(const lanes_bits& a, const lanes_bits& b) { return lanes_bits(a.v | b.v); }
  MAKEGOOD_INLINE friend lanes_bits operator^(const lanes_bits& a, const lanes_bits& b) { return lanes_bits(a.v ^ b.v); }
  MAKEGOOD_INLINE friend lanes_bits operator<<(const lanes_bits& a, int n) { return lanes_bits(a.v << n); }
  MAKEGOOD_INLINE friend lanes_bits operator>>(const lanes_bits& a, int n) { return lanes_bits(a.v >> n); }
  /// The product of the lower 32 bits of each: one instruction where the set has it.
  MAKEGOOD_INLINE friend lanes_bits product_of_halves(const lanes_bits& a, const lanes_bits& b) {
#if defined(__AVX512F__) && !defined(__clang__)
    if constexpr (W == 8)
      return lanes_bits(__builtin_bit_cast(vector, __builtin_ia32_pmuludq512_mask(__builtin_bit_cast(typename half_words<64>::type, a.v),
                                                                                 __builtin_bit_cast(typename half_words<64>::type, b.v), long_vector<64>{}, 0xff)));
#endif
#if defined(__AVX2__) && !defined(__clang__)
    if constexpr (W == 4)
      return lanes_bits(__builtin_bit_cast(vector, __builtin_ia32_pmuludq256(__builtin_bit_cast(typename half_words<32>::type, a.v), __builtin_bit_cast(typename half_words<32>::type, b.v))));
#endif
#if defined(__SSE2__) && !defined(__clang__)
    if constexpr (W == 2)
      return lanes_bits(__builtin_bit_cast(vector, __builtin_ia32_pmuludq128(__builtin_bit_cast(typename half_words<16>::type, a.v), __builtin_bit_cast(typename half_words<16>::type, b.v))));
#endif
    return lanes_bits((a.v & 0xffffffffu) * (b.v & 0xffffffffu));  // what clang makes of it is that instruction
  }
  MAKEGOOD_INLINE friend lanes<W> from_bits(const lanes_bits& a) {
    return lanes<W>(__builtin_bit_cast(typename lanes<W>::vector, a.v));
  }
};

/// W doubles. Constants convert by themselves; comparisons give a mask, and select() takes the place of every branch.
template <int W>
struct lanes {
  using vector = typename vector_types<W>::reals;
  using mask = lanes_mask<W>;
  static constexpr int width = W;
  vector v;

  MAKEGOOD_INLINE lanes() : v{} {}
  MAKEGOOD_INLINE lanes(const lanes& x) : v(x.v) {}
  MAKEGOOD_INLINE lanes& operator=(const lanes& x) {
    v = x.v;
    return *this;
  }
  MAKEGOOD_INLINE explicit lanes(const vector& x) : v(x) {}
  MAKEGOOD_INLINE lanes(double x) {  // written out, so that it is one operation from the start; not {} + x, which would turn -0 into 0
    if constexpr (W == 8) v = vector{x, x, x, x, x, x, x, x};
    else if constexpr (W == 4) v = vector{x, x, x, x};
    else v = vector{x, x};
  }
  MAKEGOOD_INLINE lanes(const literal& x) : lanes(x.value) {}

  /// W numbers from p on; with a stride, every stride-th.
  MAKEGOOD_INLINE static lanes load(const double* p) {
    lanes r;
    __builtin_memcpy(&r.v, p, sizeof r.v);
    return r;
  }
  MAKEGOOD_INLINE static lanes load(const double* p, std::ptrdiff_t stride) {
    lanes r;
    for (int i = 0; i < W; ++i) r.v[i] = p[i * stride];
    return r;
  }
  MAKEGOOD_INLINE void store(double* p) const { __builtin_memcpy(p, &v, sizeof v); }
  MAKEGOOD_INLINE void store(double* p, std::ptrdiff_t stride) const {
    for (int i = 0; i < W; ++i) p[i * stride] = v[i];
  }
  MAKEGOOD_INLINE double operator[](int i) const { return v[i]; }

  MAKEGOOD_INLINE friend lanes operator+(const lanes& a, const lanes& b) { return lanes(a.v + b.v); }
  MAKEGOOD_INLINE friend lanes operator-(const lanes& a, const lanes& b) { return lanes(a.v - b.v); }
  MAKEGOOD_INLINE friend lanes operator*(const lanes& a, const lanes& b) { return lanes(a.v * b.v); }
  MAKEGOOD_INLINE friend lanes operator/(const lanes& a, const lanes& b) { return lanes(a.v / b.v); }
  MAKEGOOD_INLINE friend lanes operator-(const lanes& a) { return lanes(-a.v); }
  MAKEGOOD_INLINE friend mask operator<(const lanes& a, const lanes& b) { return mask(a.v < b.v); }
  MAKEGOOD_INLINE friend mask operator<=(const lanes& a, const lanes& b) { return mask(a.v <= b.v); }
  MAKEGOOD_INLINE friend mask operator>(const lanes& a, const lanes& b) { return mask(a.v > b.v); }
  MAKEGOOD_INLINE friend mask operator>=(const lanes& a, const lanes& b) { return mask(a.v >= b.v); }
  MAKEGOOD_INLINE friend mask operator==(const lanes& a, const lanes& b) { return mask(a.v == b.v); }
  MAKEGOOD_INLINE friend mask operator!=(const lanes& a, const lanes& b) { return mask(a.v != b.v); }
  /// As minimum() and maximum() of formulas: the second number if one is NaN.
  MAKEGOOD_INLINE friend lanes min(const lanes& a, const lanes& b) { return lanes(a.v < b.v ? a.v : b.v); }
  MAKEGOOD_INLINE friend lanes max(const lanes& a, const lanes& b) { return lanes(a.v > b.v ? a.v : b.v); }

  // what vector_math needs
  MAKEGOOD_INLINE friend lanes_bits<W> to_bits(const lanes& a) {
    return lanes_bits<W>(__builtin_bit_cast(typename lanes_bits<W>::vector, a.v));
  }
  template <class F>
  MAKEGOOD_INLINE friend lanes each_lane(F f, const lanes& a) {
    lanes r;
    for (int i = 0; i < W; ++i) r.v[i] = f(a.v[i]);
    return r;
  }
  MAKEGOOD_INLINE friend lanes square_root(const lanes& a) {
    lanes r;
    for (int i = 0; i < W; ++i) r.v[i] = __builtin_sqrt(a.v[i]);
    return r;
  }

  // what formulas call
  MAKEGOOD_INLINE friend lanes fabs(const lanes& a) { return vector_math::magnitude_of(a); }
  MAKEGOOD_INLINE friend lanes sqrt(const lanes& a) { return square_root(a); }
  MAKEGOOD_INLINE friend lanes log(const lanes& a) { return vector_math::log(a); }
  MAKEGOOD_INLINE friend lanes log10(const lanes& a) { return vector_math::log10(a); }
  MAKEGOOD_INLINE friend lanes log1p(const lanes& a) { return vector_math::log1p(a); }
  MAKEGOOD_INLINE friend lanes exp(const lanes& a) { return vector_math::exp(a); }
  MAKEGOOD_INLINE friend lanes expm1(const lanes& a) { return vector_math::expm1(a); }
  MAKEGOOD_INLINE friend lanes cbrt(const lanes& a) { return vector_math::cbrt(a); }
  MAKEGOOD_INLINE friend lanes pow(const lanes& a, const lanes& b) { return vector_math::pow(a, b); }
  MAKEGOOD_INLINE friend lanes sin(const lanes& a) { return vector_math::sin(a); }
  MAKEGOOD_INLINE friend lanes cos(const lanes& a) { return vector_math::cos(a); }
  MAKEGOOD_INLINE friend lanes tanh(const lanes& a) { return vector_math::tanh(a); }
  MAKEGOOD_INLINE friend lanes erf(const lanes& a) { return vector_math::erf(a); }
  MAKEGOOD_INLINE friend lanes erfc(const lanes& a) { return vector_math::erfc(a); }
};

template <int W>
struct vector_math::kind<lanes<W>> {
  using bits = lanes_bits<W>;
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

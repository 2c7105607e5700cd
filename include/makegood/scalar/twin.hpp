// SPDX-License-Identifier: MIT
// Two registers side by side: a kind of number that gives the processor two independent chains of work at a time.
// Core of the batch kind. Every operation is that of lanes, done twice, so that the bits are the same.
#pragma once
#include "lanes.hpp"

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {

template <class L>
struct twin;

/// The truth values of a twin.
template <class L>
struct twin_mask {
  typename L::mask a, b;

  MAKEGOOD_INLINE twin_mask() = default;
  MAKEGOOD_INLINE twin_mask(const typename L::mask& a_, const typename L::mask& b_) : a(a_), b(b_) {}
  MAKEGOOD_INLINE explicit twin_mask(bool x) : a(x), b(x) {}
  MAKEGOOD_INLINE bool operator[](int i) const { return i < L::width ? a[i] : b[i - L::width]; }
  MAKEGOOD_INLINE friend twin_mask operator&(const twin_mask& x, const twin_mask& y) { return {x.a & y.a, x.b & y.b}; }
  MAKEGOOD_INLINE friend twin_mask operator|(const twin_mask& x, const twin_mask& y) { return {x.a | y.a, x.b | y.b}; }
  MAKEGOOD_INLINE friend twin_mask operator&&(const twin_mask& x, const twin_mask& y) { return x & y; }
  MAKEGOOD_INLINE friend twin_mask operator||(const twin_mask& x, const twin_mask& y) { return x | y; }
  MAKEGOOD_INLINE friend twin_mask operator!(const twin_mask& x) { return {!x.a, !x.b}; }
  MAKEGOOD_INLINE friend bool any(const twin_mask& x) { return any(x.a | x.b); }
  MAKEGOOD_INLINE friend bool all(const twin_mask& x) { return all(x.a & x.b); }
  MAKEGOOD_INLINE friend bool any_of(const twin_mask& x) { return any(x); }
  MAKEGOOD_INLINE friend twin<L> pick(const twin_mask& m, const twin<L>& yes, const twin<L>& no) { return select(m, yes, no); }
  MAKEGOOD_INLINE friend twin<L> select(const twin_mask& m, const twin<L>& yes, const twin<L>& no) {
    return {select(m.a, yes.a, no.a), select(m.b, yes.b, no.b)};
  }
};

/// The bits of a twin.
template <class L>
struct twin_bits {
  using bits = vector_math::bits_t<L>;
  bits a, b;

  MAKEGOOD_INLINE twin_bits(const bits& a_, const bits& b_) : a(a_), b(b_) {}
  MAKEGOOD_INLINE explicit twin_bits(std::uint64_t x) : a(x), b(x) {}
#define MAKEGOOD_TWICE(op) \
  MAKEGOOD_INLINE friend twin_bits operator op(const twin_bits& x, const twin_bits& y) { return {x.a op y.a, x.b op y.b}; }
  MAKEGOOD_TWICE(+)
  MAKEGOOD_TWICE(-)
  MAKEGOOD_TWICE(&)
  MAKEGOOD_TWICE(|)
  MAKEGOOD_TWICE(^)
#undef MAKEGOOD_TWICE
  MAKEGOOD_INLINE friend twin_bits operator<<(const twin_bits& x, int n) { return {x.a << n, x.b << n}; }
  MAKEGOOD_INLINE friend twin_bits operator>>(const twin_bits& x, int n) { return {x.a >> n, x.b >> n}; }
  MAKEGOOD_INLINE friend twin_bits product_of_halves(const twin_bits& x, const twin_bits& y) {
    return {product_of_halves(x.a, y.a), product_of_halves(x.b, y.b)};
  }
  MAKEGOOD_INLINE friend twin<L> from_bits(const twin_bits& x) { return {from_bits(x.a), from_bits(x.b)}; }
};

/// L is lanes of one register.
template <class L>
struct twin {
  using mask = twin_mask<L>;
  static constexpr int width = 2 * L::width;
  L a, b;

  MAKEGOOD_INLINE twin() = default;
  MAKEGOOD_INLINE twin(const L& a_, const L& b_) : a(a_), b(b_) {}
  MAKEGOOD_INLINE twin(double x) : a(x), b(x) {}
  MAKEGOOD_INLINE twin(const literal& x) : twin(x.value) {}
  MAKEGOOD_INLINE static twin load(const double* p) { return {L::load(p), L::load(p + L::width)}; }
  MAKEGOOD_INLINE static twin load(const double* p, std::ptrdiff_t stride) { return {L::load(p, stride), L::load(p + L::width * stride, stride)}; }
  MAKEGOOD_INLINE void store(double* p) const { a.store(p), b.store(p + L::width); }
  MAKEGOOD_INLINE void store(double* p, std::ptrdiff_t stride) const { a.store(p, stride), b.store(p + L::width * stride, stride); }
  MAKEGOOD_INLINE double operator[](int i) const { return i < L::width ? a[i] : b[i - L::width]; }

  MAKEGOOD_INLINE friend twin operator-(const twin& x) { return {-x.a, -x.b}; }
#define MAKEGOOD_TWICE(result, op) \
  MAKEGOOD_INLINE friend result operator op(const twin& x, const twin& y) { return {x.a op y.a, x.b op y.b}; }
  MAKEGOOD_TWICE(twin, +)
  MAKEGOOD_TWICE(twin, -)
  MAKEGOOD_TWICE(twin, *)
  MAKEGOOD_TWICE(twin, /)
  MAKEGOOD_TWICE(mask, <)
  MAKEGOOD_TWICE(mask, <=)
  MAKEGOOD_TWICE(mask, >)
  MAKEGOOD_TWICE(mask, >=)
  MAKEGOOD_TWICE(mask, ==)
  MAKEGOOD_TWICE(mask, !=)
#undef MAKEGOOD_TWICE
  MAKEGOOD_INLINE friend twin min(const twin& x, const twin& y) { return {min(x.a, y.a), min(x.b, y.b)}; }
  MAKEGOOD_INLINE friend twin max(const twin& x, const twin& y) { return {max(x.a, y.a), max(x.b, y.b)}; }

  // what vector_math needs
  MAKEGOOD_INLINE friend twin_bits<L> to_bits(const twin& x) { return {to_bits(x.a), to_bits(x.b)}; }
  template <class F>
  MAKEGOOD_INLINE friend twin each_lane(F f, const twin& x) {
    return {each_lane(f, x.a), each_lane(f, x.b)};
  }
  MAKEGOOD_INLINE friend twin square_root(const twin& x) { return {square_root(x.a), square_root(x.b)}; }

  // what formulas call
  MAKEGOOD_INLINE friend twin fabs(const twin& x) { return vector_math::magnitude_of(x); }
  MAKEGOOD_INLINE friend twin sqrt(const twin& x) { return square_root(x); }
#define MAKEGOOD_FUNCTION(name) \
  MAKEGOOD_INLINE friend twin name(const twin& x) { return vector_math::name(x); }
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
  MAKEGOOD_INLINE friend twin pow(const twin& x, const twin& y) { return vector_math::pow(x, y); }
};

template <class L>
struct vector_math::kind<twin<L>> {
  using bits = twin_bits<L>;
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

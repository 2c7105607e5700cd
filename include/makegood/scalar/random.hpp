// SPDX-License-Identifier: MIT
// Random numbers by a counter: draw number i of quantity d under a seed is a function of (i, d, seed), so that it does not matter who
// draws it, in which order, on how many threads or with how wide registers. For double and for lanes, the same bits.
// Core of Monte Carlo. Includes small headers only.
#pragma once
#include <utility>
#include "vector_math.hpp"

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {
namespace random {

using vector_math::bits_t;
using vector_math::from_bits;
using vector_math::pick;
using vector_math::square_root;
using vector_math::to_bits;

/// Four words of 32 bits, one in each 64-bit place; what stands above the 32 bits does not count.
template <class B>
struct words {
  B a, b, c, d;
};

/// The product of the lower halves of two 64-bit numbers.
MAKEGOOD_INLINE std::uint64_t product_of_halves(std::uint64_t x, std::uint64_t y) { return (x & 0xffffffffu) * (y & 0xffffffffu); }

/// Rounds of the generator: from seven on it passes every test of the publication (its section 5.2 and table 2).
constexpr unsigned rounds = 7;

/// The keys of the rounds, for every place.
template <class B, unsigned count = rounds>
struct schedule {
  B first[count], second[count];
  explicit schedule(std::uint64_t seed) : schedule(static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32), std::make_integer_sequence<unsigned, count>{}) {}

 private:
  template <unsigned... I>
  schedule(std::uint32_t a, std::uint32_t b, std::integer_sequence<unsigned, I...>)
      : first{B(std::uint64_t{a + I * 0x9E3779B9u})...}, second{B(std::uint64_t{b + I * 0xBB67AE85u})...} {}
};
/// Philox4x32 (Salmon, Moraes, Dror, Shaw: Parallel random numbers: as easy as 1, 2, 3; SC 2011).
template <class B, unsigned count>
MAKEGOOD_INLINE words<B> philox(words<B> x, const schedule<B, count>& key) {
  const B first(std::uint64_t{0xD2511F53u}), second(std::uint64_t{0xCD9E8D57u});
#pragma GCC unroll 10
  for (unsigned i = 0; i < count; ++i) {
    const B p = product_of_halves(x.a, first), q = product_of_halves(x.c, second);
    x = {(q >> 32) ^ (x.b ^ key.first[i]), q, (p >> 32) ^ (x.d ^ key.second[i]), p};
  }
  return x;
}

/// Uniform numbers in the open interval from 0 to 1: the middles of 2^52 equal cells, so that 0 and 1 cannot come and x and 1 - x are
/// equally likely. They are whole multiples of 2^-53.
template <class V>
struct two {
  V first, second;
};
/// 64 random bits a place, twice.
template <class B>
struct bits_of_a_draw {
  B first, second;
};
/// The draws of one counter. index: which (up to 2^64), for each place; quantity: whose.
template <class B>
MAKEGOOD_INLINE bits_of_a_draw<B> draw(const B& index, std::uint32_t quantity, const schedule<B>& key) {
  const words<B> w = philox(words<B>{index, index >> 32, B(std::uint64_t{quantity}), B(std::uint64_t{0})}, key);
  const B low(std::uint64_t{0xffffffffu});
  return {(w.a << 32) | (w.b & low), (w.c << 32) | (w.d & low)};
}
template <class V>
MAKEGOOD_INLINE V uniform(const bits_t<V>& x) {
  return from_bits((x >> 12) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) - V(1.0 - 0x1p-53);
}
template <class V>
MAKEGOOD_INLINE two<V> uniforms(const bits_of_a_draw<bits_t<V>>& x) {
  return {uniform<V>(x.first), uniform<V>(x.second)};
}

/// Cosine and sine to 10^-10 of an angle anywhere on the circle: t from -1/2 to 1/2 times a right angle, and in the two lowest bits of
/// `quarter` which quarter (make_vector_math.py: "draws").
template <class V>
MAKEGOOD_INLINE two<V> circle_at(const V& t, const bits_t<V>& quarter) {
  using vector_math::polynomial;
  const V z = t * t;
  const V sine = t * polynomial(z, 1.5707963267880964, -0.6459640961462528, 0.07969258271261404, -0.00468126615955898, 0.00015820608150239268);
  const V cosine = polynomial(z, 0.9999999999524657, -1.2337005406293715, 0.25366920356416844, -0.020860068821393466, 0.0009036265150131533);
  const V large = from_bits(to_bits(cosine) ^ ((quarter << 62) & bits_t<V>(vector_math::sign_bit)));
  const auto swap = from_bits((quarter << 63) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) < V(0.0);
  return {pick(swap, sine, large), pick(swap, large, sine)};
}
/// The same by 52 bits for the angle; the quarter stands in two below them.
template <class V>
MAKEGOOD_INLINE two<V> circle(const bits_t<V>& x) {
  return circle_at<V>(from_bits((x >> 12) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) - V(1.5 - 0x1p-53), x);
}
/// -2 ln u of a uniform number to 10^-10 of itself (vector_math's logarithm by a shorter series; make_vector_math.py: "draws").
template <class V>
MAKEGOOD_INLINE V minus_two_log(const V& u) {
  const vector_math::split<V> a = vector_math::split_of_ordinary(u);
  const V s = (a.m - V(1.0)) / (a.m + V(1.0));
  const V z = s * s;
  return a.k * V(-1.38629436111989061883) +
         s * (V(-4.0) + z * vector_math::polynomial(z, -1.333333331089033, -0.80000243753944, -0.571016331994231, -0.46661163876483785));
}
/// Two independent standard normal numbers of 64 bits (Box and Muller 1958): 40 for the radius, so that none lies beyond 7.5, and 24 for
/// the angle, each in the middle of its cell. The cells of the plane are 10^7 times finer than what 10^8 draws can see.
template <class V>
MAKEGOOD_INLINE two<V> normals(const bits_t<V>& x) {
  const V u = from_bits(((x >> 12) & bits_t<V>(std::uint64_t{0x000ffffffffff000u})) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) - V(1.0 - 0x1p-41);
  const V radius = square_root(minus_two_log(u));
  const V t = from_bits(((x << 28) & bits_t<V>(std::uint64_t{0x000fffffc0000000u})) | bits_t<V>(std::uint64_t{0x3ff0000020000000u})) - V(1.5);
  const two<V> at = circle_at<V>(t, x);
  return {radius * at.first, radius * at.second};
}

// One number of a draw, spread from -1 to 1 (or, beyond, about 0); JCGM 101:2008, 6.4, except Student's.
template <class V>
MAKEGOOD_INLINE V centred(const bits_t<V>& x) {  ///< uniform from -1 to 1
  const V u = uniform<V>(x);
  return u + u - V(1.0);
}
template <class V>
MAKEGOOD_INLINE V trapezoidal(const bits_of_a_draw<bits_t<V>>& x, const V& top) {  ///< `top`: the share of the shorter side; 0: triangular
  return (V(0.5) * (V(1.0) + top)) * centred<V>(x.first) + (V(0.5) * (V(1.0) - top)) * centred<V>(x.second);
}
/// Student's t in one go (Bailey, Mathematics of Computation 62, 1994).
template <class V>
MAKEGOOD_INLINE V student(const bits_of_a_draw<bits_t<V>>& x, const V& dof) {
  const V square = dof * vector_math::expm1(V(1.0) / dof * minus_two_log(uniform<V>(x.first)));
  return square_root(square) * circle<V>(x.second).first;
}

}  // namespace random
}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

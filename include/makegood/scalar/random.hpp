// SPDX-License-Identifier: MIT
// Random numbers by a counter: draw number i of quantity d under a seed is a function of (i, d, seed), so that it does not matter who
// draws it, in which order, on how many threads or with how wide registers. For double and for lanes, the same bits.
// Core of Monte Carlo. Includes small headers only.
#pragma once
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

/// Philox4x32-10 (Salmon, Moraes, Dror, Shaw: Parallel random numbers: as easy as 1, 2, 3; SC 2011).
template <int Rounds = 10, class B>
MAKEGOOD_INLINE words<B> philox(words<B> x, std::uint32_t key_0, std::uint32_t key_1) {
  const B first(std::uint64_t{0xD2511F53u}), second(std::uint64_t{0xCD9E8D57u});
#pragma GCC unroll 10
  for (int i = 0; i < Rounds; ++i) {
    const B p = product_of_halves(x.a, first), q = product_of_halves(x.c, second);
    x = {(q >> 32) ^ (x.b ^ B(std::uint64_t{key_0})), q, (p >> 32) ^ (x.d ^ B(std::uint64_t{key_1})), p};
    key_0 += 0x9E3779B9u;
    key_1 += 0xBB67AE85u;
  }
  return x;
}

/// Two uniform numbers in the open interval from 0 to 1: the middles of 2^52 equal cells, so that 0 and 1 cannot come and x and 1 - x are
/// equally likely. They are whole multiples of 2^-53.
template <class V>
struct two {
  V first, second;
};
template <class V>
MAKEGOOD_INLINE V uniform_from(const bits_t<V>& high, const bits_t<V>& low) {
  const bits_t<V> all = (high << 32) | (low & bits_t<V>(std::uint64_t{0xffffffffu}));
  return from_bits((all >> 12) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) - V(1.0 - 0x1p-53);
}
/// The draws of one counter. index: which (up to 2^64), for each place; quantity: whose.
template <class V>
MAKEGOOD_INLINE two<V> uniforms(const bits_t<V>& index, std::uint32_t quantity, std::uint64_t seed) {
  const words<bits_t<V>> w = philox(words<bits_t<V>>{index, index >> 32, bits_t<V>(std::uint64_t{quantity}), bits_t<V>(std::uint64_t{0})},
                                    static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32));
  return {uniform_from<V>(w.a, w.b), uniform_from<V>(w.c, w.d)};
}

/// cos(2πu) and sin(2πu) for u from 0 to 1: the nearest quarter is taken off exactly.
template <class V>
MAKEGOOD_INLINE two<V> circle(const V& u) {
  using vector_math::rounder;
  const V t = u * V(4.0) + V(rounder);
  const V r = (u * V(4.0) - (t - V(rounder))) * V(1.57079632679489661923);
  const V z = r * r;
  const V sine = r + z * r * (V(-0.16666666666666666) + z * vector_math::sine_rest(z));
  const V cosine = V(1.0) - z * (V(0.5) - z * vector_math::cosine_rest(z));
  const auto n = to_bits(t);
  const auto odd = from_bits((n << 63) | bits_t<V>(std::uint64_t{0x3ff0000000000000u})) < V(0.0);
  const auto sine_sign = (n << 62) & bits_t<V>(vector_math::sign_bit);
  const auto cosine_sign = ((n + bits_t<V>(std::uint64_t{1})) << 62) & bits_t<V>(vector_math::sign_bit);
  return {from_bits(to_bits(pick(odd, sine, cosine)) ^ cosine_sign), from_bits(to_bits(pick(odd, cosine, sine)) ^ sine_sign)};
}
/// ln u of a uniform number.
template <class V>
MAKEGOOD_INLINE V log_uniform(const V& u) {
  return vector_math::log_from(vector_math::split_of_ordinary(u));
}
/// Two independent standard normal numbers of two uniform ones (Box and Muller 1958); none beyond 8.6.
template <class V>
MAKEGOOD_INLINE two<V> normals(const two<V>& u) {
  const V radius = square_root(V(-2.0) * log_uniform(u.first));
  const two<V> at = circle(u.second);
  return {radius * at.first, radius * at.second};
}

// One number of two uniform ones, spread from -1 to 1 (or, beyond, about 0); JCGM 101:2008, 6.4, except Student's.
template <class V>
MAKEGOOD_INLINE V rectangular(const two<V>& u) { return u.first + u.first - V(1.0); }
template <class V>
MAKEGOOD_INLINE V trapezoidal(const two<V>& u, double top) {  ///< `top`: the share of the shorter side; 0: triangular
  return (V(0.5) * (V(1.0) + V(top))) * rectangular(u) + (V(0.5) * (V(1.0) - V(top))) * (u.second + u.second - V(1.0));
}
template <class V>
MAKEGOOD_INLINE V arcsine(const two<V>& u) { return circle(u.first).second; }
template <class V>
MAKEGOOD_INLINE V exponential(const two<V>& u) { return -log_uniform(u.first); }  ///< of mean 1
/// Student's t in one go (Bailey, Mathematics of Computation 62, 1994).
template <class V>
MAKEGOOD_INLINE V student(const two<V>& u, double dof) {
  const V square = V(dof) * vector_math::expm1(V(-2.0 / dof) * log_uniform(u.first));
  return square_root(square) * circle(u.second).first;
}

}  // namespace random
}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Mathematics without branches, written once for double and for lanes: the same bits at every width.
// Core of the batch kind. Needs -ffp-contract=off for the promise of equal bits (fused products change bits, not the accuracy),
// and round-to-nearest (the default of every system).
// Never compile it with -ffast-math: the error terms below are exactly what that flag removes.
#pragma once
#include <cstdint>

#if defined(__FLT_EVAL_METHOD__) && __FLT_EVAL_METHOD__ == 2
#error "makegood: vector_math.hpp needs arithmetic in double (not in the wider registers of the x87)"
#endif
#if defined(__FAST_MATH__) && !defined(MAKEGOOD_ALLOW_FINITE_MATH)
#error "makegood: vector_math.hpp cannot be compiled with -ffast-math"
#endif

// Everything compiled for one instruction set lies in a namespace of its own, so that the linker never mixes two of them.
// A batch file says -DMAKEGOOD_ISA_TAG=avx2; everybody else gets the namespace `portable`, which is inline.
#ifndef MAKEGOOD_ISA_TAG
#define MAKEGOOD_ISA_TAG portable
#define MAKEGOOD_ISA_NAMESPACE inline namespace portable
#else
#define MAKEGOOD_ISA_NAMESPACE namespace MAKEGOOD_ISA_TAG
#endif
#define MAKEGOOD_INLINE [[gnu::always_inline]] inline
#define MAKEGOOD_LAMBDA_INLINE __attribute__((always_inline))

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {
/// A function here takes V = double or lanes<W>, and treats every special value as ISO C (annex F) does; results below the normal
/// numbers lose their digits gradually. No exception flag and no errno is promised. Largest errors seen over 10^6 and more
/// points a function (exhaustive_vector_math.cpp), against long double and quadruple precision, in units of the last place, rounded up:
///   log 0.86, log10 0.72, log1p 0.86, exp 0.92, expm1 0.99, cbrt 0.67, pow 0.90, tanh 0.82, erf 0.89, erfc 1.25, sin and cos 0.79
namespace vector_math {

// ---- what V = double needs; lanes bring their own by argument-dependent lookup ---------------------------------------

template <class V>
struct kind;  ///< kind<V>::bits: the matching unsigned 64-bit integers
template <>
struct kind<double> {
  using bits = std::uint64_t;
};
template <class V>
using bits_t = typename kind<V>::bits;

MAKEGOOD_INLINE std::uint64_t to_bits(double x) { return __builtin_bit_cast(std::uint64_t, x); }
MAKEGOOD_INLINE double from_bits(std::uint64_t x) { return __builtin_bit_cast(double, x); }
MAKEGOOD_INLINE double pick(bool m, double yes, double no) { return m ? yes : no; }
MAKEGOOD_INLINE double square_root(double x) { return __builtin_sqrt(x); }
MAKEGOOD_INLINE bool any_of(bool m) { return m; }
/// Calls a function of doubles lane by lane.
template <class F>
MAKEGOOD_INLINE double each_lane(F f, double x) {
  return f(x);
}

inline constexpr std::uint64_t sign_bit = 0x8000000000000000u;
inline constexpr double infinity = __builtin_inf();
inline constexpr double smallest_normal = 0x1p-1022;
/// Adding it rounds to a whole number (|x| < 2^51), which then stands in the low bits.
inline constexpr double rounder = 0x1.8p52;

template <class V>
MAKEGOOD_INLINE V magnitude_of(const V& x) {
  return from_bits(to_bits(x) & bits_t<V>(~sign_bit));
}
/// The magnitude of x (not negative) with the sign of s.
template <class V>
MAKEGOOD_INLINE V with_sign_of(const V& x, const V& s) {
  return from_bits(to_bits(x) | (to_bits(s) & bits_t<V>(sign_bit)));
}
/// 2^k for a whole number k from -1023 (gives 0) to 1023.
template <class V>
MAKEGOOD_INLINE V power_of_two(const V& k) {
  return from_bits(to_bits(k + V(rounder + 1023.0)) << 52);
}
/// x * 2^k in two steps, so that results below the normal numbers are rounded once, and results above become infinite.
template <class V>
MAKEGOOD_INLINE V scaled(const V& x, const V& k) {
  const V half = (k * V(0.5) + V(rounder)) - V(rounder);
  return x * power_of_two(half) * power_of_two(k - half);
}

/// a + b * x + c * x^2 ...: pairs first, so that the processor has independent work.
template <class V>
MAKEGOOD_INLINE V polynomial(const V&, double a) {
  return V(a);
}
template <class V>
MAKEGOOD_INLINE V polynomial(const V& x, double a, double b) {
  return V(a) + V(b) * x;
}
template <class V, class... C>
MAKEGOOD_INLINE V polynomial(const V& x, double a, double b, double c, C... rest) {
  return (V(a) + V(b) * x) + (x * x) * polynomial(x, c, rest...);
}

// ---- numbers of double length (the classical exact sums) -------------------------------------------------

/// hi + lo, where lo is at most half a unit of the last place of hi.
template <class V>
struct pair {
  V hi, lo;
};
/// The exact sum, for |a| >= |b| (or a = 0).
template <class V>
MAKEGOOD_INLINE pair<V> ordered_sum(const V& a, const V& b) {
  const V s = a + b;
  return {s, b - (s - a)};
}
/// The exact sum.
template <class V>
MAKEGOOD_INLINE pair<V> exact_sum(const V& a, const V& b) {
  const V s = a + b;
  const V t = s - a;
  return {s, (a - (s - t)) + (b - t)};
}
/// The upper 26 bits, the rest cut off, so that products of two such numbers are exact.
template <class V>
MAKEGOOD_INLINE V upper_half(const V& x) {
  return from_bits(to_bits(x) & bits_t<V>(0xfffffffff8000000u));
}
/// The product to 2^-77 of itself. Only exact products are added, so that a compiler that fuses them does no harm.
template <class V>
MAKEGOOD_INLINE pair<V> long_product(const V& a, const V& b) {
  const V ah = upper_half(a), bh = upper_half(b);
  return ordered_sum(ah * bh, ah * (b - bh) + (a - ah) * b);
}
template <class V>
MAKEGOOD_INLINE pair<V> product(const pair<V>& a, const pair<V>& b) {
  const pair<V> p = long_product(a.hi, b.hi);
  return ordered_sum(p.hi, p.lo + (a.hi * b.lo + a.lo * b.hi));
}
template <class V>
MAKEGOOD_INLINE pair<V> quotient(const pair<V>& a, const pair<V>& b) {
  const V q = a.hi / b.hi;
  const pair<V> p = long_product(q, b.hi);
  return {q, (((a.hi - p.hi) - p.lo) + a.lo - q * b.lo) / b.hi};
}

/// x / c for a whole number c of at most 26 significant bits, correctly rounded like the division, without one: the remainder of a first
/// guess is exact, and no quotient by so short a number lies near the middle of two doubles. (Below the normal numbers, to one place.)
template <class V>
MAKEGOOD_INLINE V divided(const V& x, double c, double by_c) {
  const V q = x * V(by_c);
  const V q_hi = upper_half(q);
  const V left = (x - q_hi * V(c)) - (q - q_hi) * V(c);
  return pick(magnitude_of(x) < V(infinity), q + left * V(by_c), q);
}

// ---- logarithms --------------------------------------------------------------------------------------------------------
// ln 2 as a sum: the first part has 32 bits, so that k * ln2_hi is exact.
inline constexpr double ln2_hi = 0x1.62e42fee00000p-1;
inline constexpr double ln2_lo = 0x1.a39ef35793c76p-33;

/// Neither zero, subnormal, infinite, negative nor NaN. Where every lane is so, the functions below take their short path; otherwise
/// they take, for all lanes, a long one apart from it, which gives such lanes the same bits.
template <class V>
MAKEGOOD_INLINE auto is_ordinary(const V& x) {
  return (x >= V(smallest_normal)) & (x < V(infinity));
}
#define MAKEGOOD_APART [[gnu::noinline, gnu::cold, gnu::pure]]

/// x = 2^k * m with m from sqrt(1/2) to sqrt(2).
template <class V>
struct split {
  V k, m;
};
/// For an ordinary x.
template <class V>
MAKEGOOD_INLINE split<V> split_of_ordinary(const V& x) {
  constexpr std::uint64_t half_root = 0x3fe6a09e667f3bcdu;  // the bits of sqrt(1/2)
  const auto b = to_bits(x) + bits_t<V>(0x4000000000000000u - half_root);  // k + 1024 in the place of the exponent
  return {from_bits((b >> 52) | bits_t<V>(0x4330000000000000u)) - V(0x1p52 + 1024.0),
          from_bits((b & bits_t<V>(0x000fffffffffffffu)) + bits_t<V>(half_root))};
}
/// For x > 0 and finite.
template <class V>
MAKEGOOD_INLINE split<V> split_of(const V& x) {
  const auto small = x < V(smallest_normal);
  const split<V> a = split_of_ordinary(pick(small, x * V(0x1p54), x));
  return {a.k - pick(small, V(54.0), V(0.0)), a.m};
}
/// (ln((1+s)/(1-s)) - 2 s) / s for z = s^2 (make_vector_math.py: "logarithm").
template <class V>
MAKEGOOD_INLINE V log_rest(const V& z) {
  return z * polynomial(z, 0.666666666666667, 0.39999999999899444, 0.2857142862600327, 0.22222211130259878,
                        0.18182889455674947, 0.15331710618210773, 0.14616585424888623);
}
/// The values of a logarithm where it is not an ordinary number.
template <class V>
MAKEGOOD_INLINE V log_edges(const V& x, const V& y) {
  V r = pick(x == V(infinity), x, y);
  r = pick(x == V(0.0), V(-infinity), r);
  r = pick(x < V(0.0), V(__builtin_nan("")), r);
  return pick(x == x, r, x);
}

/// Natural logarithm. ln m = f - f^2/2 + s (f^2/2 + rest), s = f / (2 + f), f = m - 1.
template <class V>
MAKEGOOD_INLINE V log_from(const split<V>& a) {
  const V f = a.m - V(1.0);
  const V s = f / (V(2.0) + f);
  const V h = V(0.5) * f * f;
  return a.k * V(ln2_hi) - ((h - (s * (h + log_rest(s * s)) + a.k * V(ln2_lo))) - f);
}
template <class V>
MAKEGOOD_APART V log_apart(const V& x) {
  return log_edges(x, log_from(split_of(x)));
}
template <class V>
MAKEGOOD_INLINE V log(const V& x) {
  V y = log_from(split_of_ordinary(x));
  if (any_of(!is_ordinary(x))) [[unlikely]] y = log_apart(V(x));
  return y;
}

/// ln(1 + x). What 1 + x loses to rounding is put back. x: not infinite.
template <class V>
MAKEGOOD_INLINE V log1p_from(const V& x) {
  const pair<V> u = exact_sum(V(1.0), x);
  const split<V> a = split_of_ordinary(u.hi);
  const V lost = u.lo * power_of_two(V(0.0) - pick(a.k > V(1000.0), V(1000.0), a.k));  // u.lo * 2^-k
  const V f0 = a.m - V(1.0);
  const V f = f0 + lost;
  const V rest = (f0 - f) + lost;
  const V s = f / (V(2.0) + f);
  const V h = V(0.5) * f * f;
  return a.k * V(ln2_hi) - ((h - (s * (h + log_rest(s * s)) + (a.k * V(ln2_lo) + rest * (V(1.0) - f)))) - f);
}
template <class V>
MAKEGOOD_APART V log1p_apart(const V& x) {
  return pick(x == V(0.0), x, log_edges(V(1.0) + x, log1p_from(x)));
}
template <class V>
MAKEGOOD_INLINE V log1p(const V& x) {
  V y = pick(x == V(0.0), x, log1p_from(x));
  if (any_of(!((x > V(-1.0)) & (x < V(infinity))))) [[unlikely]] y = log1p_apart(V(x));
  return y;
}

/// Common logarithm: the leading part in halves, so that powers of ten come out whole.
template <class V>
MAKEGOOD_INLINE V log10_from(const split<V>& a) {
  constexpr double by_ln10_hi = 0x1.bcb7b00000000p-2, by_ln10_lo = 0x1.526e50e32a6abp-26;  // 1 / ln 10, the first with 21 bits
  constexpr double log2_hi = 0x1.34413509f6000p-2, log2_lo = 0x1.9fef311f12b36p-42;        // log10 2, the first with 40 bits
  const V f = a.m - V(1.0);
  const V s = f / (V(2.0) + f);
  const V h = V(0.5) * f * f;
  const V hi = from_bits(to_bits(f - h) & bits_t<V>(0xffffffff00000000u));
  const V lo = ((f - hi) - h) + s * (h + log_rest(s * s));
  const V whole = a.k * V(log2_hi);
  const pair<V> sum = exact_sum(whole, hi * V(by_ln10_hi));
  return sum.hi + (sum.lo + (a.k * V(log2_lo) + ((lo + hi) * V(by_ln10_lo) + lo * V(by_ln10_hi))));
}
template <class V>
MAKEGOOD_APART V log10_apart(const V& x) {
  return log_edges(x, log10_from(split_of(x)));
}
template <class V>
MAKEGOOD_INLINE V log10(const V& x) {
  V y = log10_from(split_of_ordinary(x));
  if (any_of(!is_ordinary(x))) [[unlikely]] y = log10_apart(V(x));
  return y;
}

/// The natural logarithm of x = 2^k * m as a pair good to about 2^-65 of itself; hi has 26 bits.
/// ln m = 2/3 s (3 + s^2 + rest), s = f / (2 + f); leading parts are cut to 26 bits, so that their products are exact
/// (the arrangement is that of the classical pow of fdlibm, in natural instead of binary logarithms).
template <class V>
MAKEGOOD_INLINE pair<V> long_log(const split<V>& a) {
  constexpr double third_hi = 0x1.5555550000000p-1, third_lo = 0x1.5555555555555p-27;  // 2/3, the first with 26 bits
  const V f = a.m - V(1.0);
  const V g = V(2.0) + f;
  const V v = V(1.0) / g;
  const V s = f * v;
  const V s_hi = upper_half(s), g_hi = upper_half(g);
  const V s_lo = v * ((f - s_hi * g_hi) - s_hi * (f - (g_hi - V(2.0))));
  const V z_hi = s_hi * s_hi, z_lo = s_lo * (s_hi + s);
  const V z = z_hi + z_lo;  // s * s would carry the rounding of s, twice, into every digit of the rest
  // make_vector_math.py: "logarithm, long"
  const V rest = z * z * polynomial(z, 0.6, 0.4285714285714405, 0.3333333333248383, 0.272727275030892,
                                    0.2307689244377764, 0.20002207040771278, 0.17559354509229733, 0.17584767935878914) + z_lo;
  const V t_hi = upper_half(V(3.0) + (z_hi + rest));
  const V t_lo = rest - ((t_hi - V(3.0)) - z_hi);
  const V u = s_hi * t_hi, w = s_lo * t_hi + t_lo * s;
  const V p_hi = upper_half(u + w), p_lo = w - (p_hi - u);
  const V l_hi = p_hi * V(third_hi), l_lo = p_hi * V(third_lo) + p_lo * V(2.0 / 3.0);
  const V whole = a.k * V(ln2_hi);
  const V hi = upper_half(whole + (l_hi + l_lo));
  return {hi, (a.k * V(ln2_lo) + l_lo) - ((hi - whole) - l_hi)};
}

// ---- exponentials ------------------------------------------------------------------------------------------------------

/// exp(hi + lo) = 2^k * (1 + r + tail) with |r| <= ln(2)/2 and a small tail.
template <class V>
struct exp_parts {
  V counted;  // k + `rounder`: k stands in its low bits
  V r, tail;
  MAKEGOOD_INLINE V k() const { return counted - V(rounder); }
};
/// (exp(r) - 1 - r) / r^2. `fine` for exp(r) - 1, which leans on it (make_vector_math.py: "exponential", "exponential, fine").
enum class digits { usual, fine };
template <digits D, class V>
MAKEGOOD_INLINE V exp_rest(const V& r) {
  if constexpr (D == digits::fine)
    return polynomial(r, 0.5, 0.1666666666666667, 0.04166666666666667, 0.008333333333326136, 0.0013888888888883748, 0.00019841269874820627,
                      2.4801587325547743e-05, 2.7557255400206422e-06, 2.75572736431103e-07, 2.5105217004720745e-08, 2.0914686968086876e-09);
  else
    return polynomial(r, 0.5000000000000001, 0.16666666666666669, 0.04166666666662413, 0.008333333333330062, 0.0013888888917213717, 0.00019841269863053618, 2.4801521295954376e-05, 2.7557268459997064e-06, 2.7620088445409746e-07, 2.510038549551032e-08);
}
/// For |hi| < 2^20.
template <digits D = digits::usual, class V>
MAKEGOOD_INLINE exp_parts<V> exp_parts_of(const V& hi, const V& lo) {
  const V counted = hi * V(0x1.71547652b82fep+0) + V(rounder);
  const V k = counted - V(rounder);
  const V a = hi - k * V(ln2_hi);
  const V b = lo - k * V(ln2_lo);
  const V r = a + b;
  const V c = (a - r) + b;
  return {counted, r, (c + c * r) + r * r * exp_rest<D>(r)};
}
/// The same for a plain number.
template <digits D = digits::usual, class V>
MAKEGOOD_INLINE exp_parts<V> exp_parts_of(const V& x) {
  const V counted = x * V(0x1.71547652b82fep+0) + V(rounder);
  const V k = counted - V(rounder);
  const V a = x - k * V(ln2_hi);
  const V b = k * V(ln2_lo);
  const V r = a - b;
  const V c = (a - r) - b;
  return {counted, r, (c + c * r) + r * r * exp_rest<D>(r)};
}
/// x * 2^k where the result is a normal number; k as it is counted above.
template <class V>
MAKEGOOD_INLINE V raised(const V& x, const V& counted) {
  return from_bits(to_bits(x) + (to_bits(counted) << 52));
}
template <class V>
MAKEGOOD_INLINE V limited(const V& x, double low, double high) {  // NaN stays NaN
  return pick(x > V(high), V(high), pick(x < V(low), V(low), x));
}

template <class V>
MAKEGOOD_APART V exp_apart(const V& x) {
  const exp_parts<V> e = exp_parts_of(limited(x, -746.0, 710.0));
  return scaled(V(1.0) + (e.r + e.tail), e.k());
}
template <class V>
MAKEGOOD_INLINE V exp(const V& x) {
  const exp_parts<V> e = exp_parts_of(x);
  V y = raised(V(1.0) + (e.r + e.tail), e.counted);
  if (any_of(!(magnitude_of(x) < V(708.0)))) [[unlikely]] y = exp_apart(V(x));
  return y;
}

/// exp(hi + lo) for |hi| < 2^20, as a pair before the scaling by 2^k.
template <class V>
MAKEGOOD_INLINE pair<V> long_exp(const exp_parts<V>& e) {
  const pair<V> r = ordered_sum(e.r, e.tail);
  const pair<V> y = ordered_sum(V(1.0), r.hi);
  return {y.hi, y.lo + r.lo};
}

/// exp(x) - 1 as a pair before a scaling by 2^k, for x from -60 to 710.
template <class V>
MAKEGOOD_INLINE pair<V> long_expm1(const V& x, V& k) {
  const exp_parts<V> e = exp_parts_of<digits::fine>(x);
  k = e.k();
  const pair<V> r = ordered_sum(e.r, e.tail);
  const V back = power_of_two(V(0.0) - pick(k > V(1000.0), V(1000.0), k));  // 2^-k, from 2^-54 on without effect
  const pair<V> whole = exact_sum(V(1.0), V(0.0) - back);
  const pair<V> y = exact_sum(whole.hi, r.hi);
  return {y.hi, y.lo + (whole.lo + r.lo)};
}
template <class V>
inline V expm1(const V& x) {
  V k;
  const pair<V> y = long_expm1(limited(x, -60.0, 710.0), k);
  return pick(x == V(0.0), x, scaled(y.hi + y.lo, k));
}

/// t / (2 + t), t = exp(2 |x|) - 1, in double length.
template <class V>
inline V tanh(const V& x) {
  const V a = magnitude_of(x);
  V k;
  pair<V> t = long_expm1(limited(a + a, 0.0, 44.0), k);
  const V two = power_of_two(k);
  t = ordered_sum(t.hi * two, t.lo * two);
  const pair<V> under = exact_sum(V(2.0), t.hi);
  const pair<V> q = quotient(t, pair<V>{under.hi, under.lo + t.lo});
  const V y = pick(a > V(22.0), V(1.0), q.hi + q.lo);
  return pick(a < V(0x1p-28), x, pick(x == x, with_sign_of(y, x), x));
}

// ---- powers ------------------------------------------------------------------------------------------------------------

/// Whether a (not negative) is a whole number.
template <class V>
MAKEGOOD_INLINE auto is_whole(const V& a) {
  return ((a + V(0x1p52)) - V(0x1p52) == a) | (a >= V(0x1p52));
}
/// y * ln x as a pair, x = 2^k * m.
template <class V>
MAKEGOOD_INLINE pair<V> power_exponent(const split<V>& x, const V& y) {
  const pair<V> l = long_log(x);
  const V y_hi = upper_half(y);
  const V p_hi = y_hi * l.hi, p_lo = (y - y_hi) * l.hi + y * l.lo;
  const V p = p_hi + p_lo;
  return {p, p_lo - (p - p_hi)};
}
/// exp(y * ln x) in double length, with every special case of the C standard.
template <class V>
MAKEGOOD_APART V pow_apart(const V& x, const V& y) {
  const V one(1.0), zero(0.0), inf(infinity);
  const V a = magnitude_of(x), b = magnitude_of(y);
  const pair<V> p = power_exponent(split_of(a), limited(y, -0x1p64, 0x1p64));  // beyond, the result is 0, 1 or infinite all the same
  const exp_parts<V> parts = exp_parts_of(limited(p.hi, -760.0, 720.0), limited(p.lo, -1.0, 1.0));  // far beyond, the low part means nothing
  const pair<V> e = long_exp(parts);
  V r = scaled(e.hi + e.lo, parts.k());

  const auto whole = is_whole(b);
  const auto odd = whole & !is_whole(b * V(0.5)) & (b < V(0x1p53));
  const auto negative = with_sign_of(one, x) < zero;  // counts -0
  const auto below = y < zero;
  r = pick(a == zero, pick(below, inf, zero), r);
  r = pick(a == inf, pick(below, zero, inf), r);
  r = pick(b == inf, pick(a == one, one, pick(below, pick(a < one, inf, zero), pick(a < one, zero, inf))), r);
  r = pick(negative & odd, from_bits(to_bits(r) ^ bits_t<V>(sign_bit)), r);
  r = pick((x < zero) & !whole & (a < inf), V(__builtin_nan("")), r);
  r = pick((x == x) & (y == y), r, x + y);
  return pick((x == one) | (y == zero), one, r);
}
template <class V>
MAKEGOOD_INLINE V pow(const V& x, const V& y) {
  const pair<V> p = power_exponent(split_of_ordinary(x), y);
  const exp_parts<V> parts = exp_parts_of(p.hi, p.lo);
  const pair<V> e = long_exp(parts);
  V r = raised(e.hi + e.lo, parts.counted);
  if (any_of(!(is_ordinary(x) & (magnitude_of(p.hi) < V(708.0))))) [[unlikely]] r = pow_apart(V(x), V(y));
  return r;
}

/// Cube root: 1/cbrt by a polynomial and one step, then one step for the root from a start whose square is exact.
template <class V>
MAKEGOOD_INLINE V cbrt_from(const split<V>& s) {
  const V third = (s.k * V(1.0 / 3.0) + V(rounder)) - V(rounder);
  const V left = s.k - third * V(3.0);  // -1, 0 or 1
  const V m = s.m * pick(left > V(0.5), V(2.0), pick(left < V(-0.5), V(0.5), V(1.0)));
  // m^(-1/3) of the part from sqrt(1/2) to sqrt(2) (make_vector_math.py: "inverse cube root")
  V z = polynomial(s.m, 1.995341481913526, -2.4668647417873153, 2.754857752141042, -1.8620663942011886,
                       0.683577431562695, -0.10484262703707782);
  z = z * pick(left > V(0.5), V(0.7937005259840998), pick(left < V(-0.5), V(1.2599210498948732), V(1.0)));
  z = z + z * ((V(1.0) - m * z * z * z) * V(1.0 / 3.0));
  const V t = upper_half(m * z * z);
  const V d = (m / (t * t) - t) * V(1.0 / 3.0);
  const V y = t + (d - d * d * z);
  return y * power_of_two(third);
}
template <class V>
MAKEGOOD_APART V cbrt_apart(const V& x) {
  const V a = magnitude_of(x);
  return pick((a < V(infinity)) & (a > V(0.0)), with_sign_of(cbrt_from(split_of(a)), x), x + x);
}
template <class V>
MAKEGOOD_INLINE V cbrt(const V& x) {
  const V a = magnitude_of(x);
  V y = with_sign_of(cbrt_from(split_of_ordinary(a)), x);
  if (any_of(!is_ordinary(a))) [[unlikely]] y = cbrt_apart(V(x));
  return y;
}

// ---- error functions ---------------------------------------------------------------------------------------------------

/// erf(x) for |x| <= 0.625: x + x * p(x^2) (make_vector_math.py: "error function").
template <class V>
MAKEGOOD_INLINE pair<V> erf_inside(const V& x) {
  const V z = x * x;
  const V p = polynomial(z, 0.12837916709551256, -0.3761263890318365, 0.11283791670946505, -0.02686617064230241, 0.005223977578262164,
                         -0.0008548322498243402, 0.00012055068252833722, -1.4916034218320667e-05, 1.6249675634588804e-06, -1.3726246055587496e-07);
  return ordered_sum(x, x * p);
}
/// erfc(a) for a from 0.45 to 28 as a pair before a scaling by 2^k: exp(-a^2) / (1 + 2 a) * p((a - 3.5) / (a + 3.5))
/// (make_vector_math.py: "complementary error function").
template <class V>
MAKEGOOD_INLINE pair<V> erfc_outside(const V& a, V& k) {
  const V t = (a - V(3.5)) / (a + V(3.5));
  const V p = t * polynomial(t, -0.14000918013761943, -0.010555596332218215, 0.09751909515325999, -0.11508959816019748,
                             0.08798315382481053, -0.04882332582773532, 0.01909933094343907, -0.0042150199104109545,
                             -0.0003022678884103975, 0.0005643844417950974, -0.00012151235052594521, -4.278236684684909e-05,
                             2.4260649640834825e-05, 2.328784323519687e-06, -3.813688430439478e-06, -4.5272715390849e-08,
                             5.991289241623221e-07, -6.56699056282671e-09, -9.218447925704952e-08, -4.2393408755648875e-10,
                             1.0111784218119617e-08, 3.116333460593385e-10);
  const pair<V> square = long_product(a, a);
  const exp_parts<V> parts = exp_parts_of(V(0.0) - square.hi, V(0.0) - square.lo);
  k = parts.k();
  const pair<V> e = long_exp(parts);
  return quotient(product(e, ordered_sum(V(1.2423492448711544), p)), exact_sum(V(1.0), a + a));
}
template <class V>
inline V erf(const V& x) {
  const V a = magnitude_of(x);
  const pair<V> in = erf_inside(limited(x, -0.625, 0.625));
  V k;
  const pair<V> out = erfc_outside(limited(a, 0.6, 6.5), k);
  const V two = power_of_two(k);
  const pair<V> y = ordered_sum(V(1.0), V(0.0) - out.hi * two);
  const V far = with_sign_of(y.hi + (y.lo - out.lo * two), x);
  return pick(x == V(0.0), x, pick(a > V(0.625), far, in.hi + in.lo));
}
template <class V>
inline V erfc(const V& x) {
  const V a = magnitude_of(x);
  const pair<V> in = erf_inside(limited(x, -0.5, 0.5));
  const pair<V> inner = exact_sum(V(1.0), V(0.0) - in.hi);
  V k;
  const pair<V> out = erfc_outside(limited(a, 0.45, 28.0), k);
  const V positive = scaled(out.hi + out.lo, k);
  const V two = power_of_two(limited(k, -200.0, 0.0));
  const pair<V> back = ordered_sum(V(2.0), V(0.0) - out.hi * two);
  const V negative = back.hi + (back.lo - out.lo * two);
  return pick(a < V(0.5), inner.hi + (inner.lo - in.lo), pick(x == x, pick(x < V(0.0), negative, positive), x));
}

// ---- sine and cosine ---------------------------------------------------------------------------------------------------

/// Up to here the reduction below is good to the last bit; beyond, std::sin and std::cos are called lane by lane (then
/// the bits are those of the C library of the machine).
inline constexpr double circular_limit = 1e5;

/// ((sin(r) - r) / r^3 + 1/6) / z and (cos(r) - 1 + z/2) / z^2 for z = r^2, |r| <= pi/4 (make_vector_math.py: "sine", "cosine").
template <class V>
MAKEGOOD_INLINE V sine_rest(const V& z) {
  return polynomial(z, 0.008333333333333331, -0.0001984126984126506, 2.7557319219335453e-06, -2.5052106231157904e-08,
                    1.6058531414589008e-10, -7.586685070091169e-13);
}
template <class V>
MAKEGOOD_INLINE V cosine_rest(const V& z) {
  return polynomial(z, 0.041666666666666664, -0.0013888888888888887, 2.4801587301584645e-05, -2.755731922140076e-07,
                    2.0876755790363397e-09, -1.1470460773969324e-11, 4.745865203787401e-14);
}
/// sin(x + quadrant * pi/2). pi/2 in four parts, the first three with 33 bits, so that their products with k are exact.
template <class V>
MAKEGOOD_INLINE V circular(const V& x, double quadrant) {
  const V t = x * V(0x1.45f306dc9c883p-1) + V(rounder);
  const V k = t - V(rounder);
  const pair<V> u = exact_sum(x - k * V(0x1.921fb54400000p+0), V(0.0) - k * V(0x1.0b4611a600000p-34));
  const pair<V> v = exact_sum(u.hi, V(0.0) - k * V(0x1.3198a2e000000p-69));
  const pair<V> w = ordered_sum(v.hi, (u.lo + v.lo) - k * V(0x1.b839a252049c1p-104));
  const V r = w.hi, c = w.lo;
  const V z = r * r;
  const V cube = z * r;
  const V sine = r + ((c - V(0.5) * z * c) + cube * (V(-0.16666666666666666) + z * sine_rest(z)));
  const V pc = cosine_rest(z);
  const V h = V(0.5) * z;
  const V top = V(1.0) - h;
  const V cosine = top + (((V(1.0) - top) - h) + (z * z * pc - r * c));
  const auto n = to_bits(t + V(quadrant));
  const V swap = from_bits((n << 63) | bits_t<V>(0x3ff0000000000000u));          // -1 in the odd quadrants
  const auto sign = (n << 62) & bits_t<V>(sign_bit);
  return from_bits(to_bits(pick(swap < V(0.0), cosine, sine)) ^ sign);
}
template <class V>
inline V sin(const V& x) {
  const V a = magnitude_of(x);
  const auto far = !(a <= V(circular_limit));
  V y = pick(a < V(0x1p-27), x, circular(pick(far, V(0.0), x), 0.0));
  if (any_of(far)) [[unlikely]]
    y = pick(far, each_lane([](double v) { return __builtin_sin(v); }, pick(far, x, V(0.0))), y);
  return y;
}
template <class V>
inline V cos(const V& x) {
  const V a = magnitude_of(x);
  const auto far = !(a <= V(circular_limit));
  V y = circular(pick(far, V(0.0), x), 1.0);
  if (any_of(far)) [[unlikely]]
    y = pick(far, each_lane([](double v) { return __builtin_cos(v); }, pick(far, x, V(0.0))), y);
  return y;
}

}  // namespace vector_math
}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

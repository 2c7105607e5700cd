// SPDX-License-Identifier: MIT
// A value with its exact partial derivatives (forward-mode differentiation): measurement uncertainty and what-if.
// Core: evaluated by every formula. Includes the standard library only.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {

template <int N, class V>
struct dual;
/// What has no slope in a dual number over V: plain numbers, constants with a unit, a V itself.
template <class C, class V>
inline constexpr bool has_no_slope = std::is_arithmetic_v<C> || std::is_same_v<C, literal> || std::is_same_v<C, V>;

/// Value and N partial derivatives, in doubles or in lanes; or in duals once more, for derivatives of derivatives. Constants convert by
/// themselves and cost no slopes; comparisons look at the value.
template <int N, class V = double>
struct dual {
  V value{};
  V partial[N > 0 ? N : 1]{};

  using truth = decltype(V{} < V{});  ///< what a comparison gives: bool, or a mask

  constexpr dual() = default;
  MAKEGOOD_INLINE constexpr dual(double x) : value(x) {}
  MAKEGOOD_INLINE constexpr dual(const literal& x) : value(x.value) {}
  MAKEGOOD_INLINE constexpr dual(const V& x)
    requires(!std::is_same_v<V, double>)
      : value(x) {}
  /// The k-th independent input.
  MAKEGOOD_INLINE static constexpr dual input(const V& x, int k) {
    dual result(x);
    result.partial[k] = V(1.0);
    return result;
  }

  // written out slope by slope, so that they stand in registers
  MAKEGOOD_INLINE friend constexpr dual chain(const V& at, const V& slope, const dual& x) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return slope * x.partial[k]; }, at, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual chain(const V& at, const V& slope_a, const dual& a, const V& slope_b, const dual& b) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return slope_a * a.partial[k] + slope_b * b.partial[k]; }, at, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual operator+(const dual& a, const dual& b) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return a.partial[k] + b.partial[k]; }, a.value + b.value, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual operator-(const dual& a, const dual& b) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return a.partial[k] - b.partial[k]; }, a.value - b.value, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual operator-(const dual& a) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return -a.partial[k]; }, -a.value, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual operator*(const dual& a, const dual& b) {
    return chain(a.value * b.value, b.value, a, a.value, b);
  }
  MAKEGOOD_INLINE friend constexpr dual operator/(const dual& a, const dual& b) {
    const V q = a.value / b.value, by = 1.0 / b.value;
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return by * (a.partial[k] - q * b.partial[k]); }, q, slopes{});
  }
  MAKEGOOD_INLINE friend constexpr dual divided_by(const dual& x, double c) { return chain(divided_by(x.value, c), V(1.0 / c), x); }
  // with what has no slope
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator+(const dual& a, const C& c) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return a.partial[k]; }, a.value + flat(c), slopes{});
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator+(const C& c, const dual& a) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return a.partial[k]; }, flat(c) + a.value, slopes{});
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator-(const dual& a, const C& c) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return a.partial[k]; }, a.value - flat(c), slopes{});
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator-(const C& c, const dual& a) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return -a.partial[k]; }, flat(c) - a.value, slopes{});
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator*(const dual& a, const C& c) {
    return chain(a.value * flat(c), flat(c), a);
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator*(const C& c, const dual& a) {
    return chain(flat(c) * a.value, flat(c), a);
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator/(const dual& a, const C& c) {
    return chain(a.value / flat(c), 1.0 / flat(c), a);
  }
  template <class C>
    requires has_no_slope<C, V>
  MAKEGOOD_INLINE friend constexpr dual operator/(const C& c, const dual& a) {
    const V q = flat(c) / a.value;
    if constexpr (!std::is_same_v<C, V> || std::is_same_v<V, double>) {
      const double by = static_cast<double>(c);  // -q / a without a second division
      if (by != 0.0) return chain(q, (by == 1.0 ? -q : -q * (1.0 / by)) * q, a);
    }
    return chain(q, -q / a.value, a);
  }
  MAKEGOOD_INLINE friend constexpr auto operator<(const dual& a, const dual& b) { return a.value < b.value; }
  MAKEGOOD_INLINE friend constexpr auto operator<=(const dual& a, const dual& b) { return a.value <= b.value; }
  MAKEGOOD_INLINE friend constexpr auto operator>(const dual& a, const dual& b) { return a.value > b.value; }
  MAKEGOOD_INLINE friend constexpr auto operator>=(const dual& a, const dual& b) { return a.value >= b.value; }
  MAKEGOOD_INLINE friend constexpr dual select(const truth& condition, const dual& yes, const dual& no) {
    return each([&](int k) MAKEGOOD_LAMBDA_INLINE { return select(condition, yes.partial[k], no.partial[k]); }, select(condition, yes.value, no.value), slopes{});
  }

  MAKEGOOD_INLINE friend dual log(const dual& x) { return chain(log(x.value), 1.0 / x.value, x); }
  MAKEGOOD_INLINE friend dual log10(const dual& x) { return chain(log10(x.value), 0.43429448190325182765 / x.value, x); }
  MAKEGOOD_INLINE friend dual log1p(const dual& x) { return chain(log1p(x.value), 1.0 / (1.0 + x.value), x); }
  MAKEGOOD_INLINE friend dual exp(const dual& x) {
    const V e = exp(x.value);
    return chain(e, e, x);
  }
  MAKEGOOD_INLINE friend dual sqrt(const dual& x) {
    const V r = sqrt(x.value);
    return chain(r, 0.5 / r, x);
  }
  MAKEGOOD_INLINE friend dual cbrt(const dual& x) {
    const V r = cbrt(x.value);
    return chain(r, 1.0 / (3.0 * r * r), x);
  }
  MAKEGOOD_INLINE friend dual pow(const dual& x, double y) { return chain(pow(x.value, y), y * pow(x.value, y - 1.0), x); }
  /// x^(P/D): see power() of formulas.
  template <int P, int D = 1>
  MAKEGOOD_INLINE friend dual power(const dual& x) {
    return chain(power<P, D>(x.value), P == 0 ? V(0.0) : static_cast<double>(P) / D * power<P - D, D>(x.value), x);
  }
  MAKEGOOD_INLINE friend dual damped_pow(const dual& x, double y) { return chain(damped_pow(x.value, y), y * damped_pow(x.value, y - 1.0), x); }
  MAKEGOOD_INLINE friend dual tanh(const dual& x) {
    const V r = tanh(x.value);
    return chain(r, 1.0 - r * r, x);
  }
  MAKEGOOD_INLINE friend dual sin(const dual& x) { return chain(sin(x.value), cos(x.value), x); }
  MAKEGOOD_INLINE friend dual cos(const dual& x) { return chain(cos(x.value), -sin(x.value), x); }
  MAKEGOOD_INLINE friend dual fabs(const dual& x) { return select(x.value < V(0.0), -x, x); }

 private:
  using slopes = std::make_integer_sequence<int, N>;
  template <class F, int... K>
  MAKEGOOD_INLINE static constexpr dual each(const F& f, const V& at, std::integer_sequence<int, K...>) {
    dual result;
    result.value = at;
    ((result.partial[K] = f(K)), ...);
    return result;
  }
  template <class C>
  MAKEGOOD_INLINE static constexpr V flat(const C& c) {
    if constexpr (std::is_arithmetic_v<C>) return V(static_cast<double>(c));
    else if constexpr (std::is_same_v<C, literal>) return V(c.value);
    else return c;
  }
};

/// How a formula's inner check reads a dual: by its value.
template <int N, class V>
  requires std::is_same_v<decltype(plain_value(V{})), double>
constexpr double plain_value(const dual<N, V>& x) {
  return plain_value(x.value);
}

}  // namespace v1
}  // namespace makegood

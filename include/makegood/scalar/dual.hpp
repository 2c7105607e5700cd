// SPDX-License-Identifier: MIT
// A value with its exact partial derivatives (forward-mode differentiation): measurement uncertainty and what-if.
// Core: evaluated by every formula. Includes the standard library only.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {

/// Value and N partial derivatives, in doubles or in lanes. Constants convert by themselves; comparisons look at the value.
template <int N, class V = double>
struct dual {
  V value{};
  V partial[N > 0 ? N : 1]{};

  using truth = decltype(V{} < V{});  ///< what a comparison gives: bool, or a mask

  constexpr dual() = default;
  constexpr dual(double x) : value(x) {}
  constexpr dual(const literal& x) : value(x.value) {}
  constexpr dual(const V& x)
    requires(!std::is_same_v<V, double>)
      : value(x) {}
  /// The k-th independent input.
  static constexpr dual input(const V& x, int k) {
    dual result(x);
    result.partial[k] = V(1.0);
    return result;
  }

  friend constexpr dual chain(const V& at, const V& slope, const dual& x) {
    dual result(at);
    for (int k = 0; k < N; ++k) result.partial[k] = slope * x.partial[k];
    return result;
  }
  friend constexpr dual chain(const V& at, const V& slope_a, const dual& a, const V& slope_b, const dual& b) {
    dual result(at);
    for (int k = 0; k < N; ++k) result.partial[k] = slope_a * a.partial[k] + slope_b * b.partial[k];
    return result;
  }
  friend constexpr dual operator+(const dual& a, const dual& b) { return chain(a.value + b.value, 1.0, a, 1.0, b); }
  friend constexpr dual operator-(const dual& a, const dual& b) { return chain(a.value - b.value, 1.0, a, -1.0, b); }
  friend constexpr dual operator-(const dual& a) { return chain(-a.value, -1.0, a); }
  friend constexpr dual operator*(const dual& a, const dual& b) {
    return chain(a.value * b.value, b.value, a, a.value, b);
  }
  friend constexpr dual operator/(const dual& a, const dual& b) {
    const V q = a.value / b.value;
    return chain(q, 1.0 / b.value, a, -q / b.value, b);
  }
  friend constexpr dual divided_by(const dual& x, double c) { return chain(divided_by(x.value, c), V(1.0 / c), x); }
  friend constexpr auto operator<(const dual& a, const dual& b) { return a.value < b.value; }
  friend constexpr auto operator<=(const dual& a, const dual& b) { return a.value <= b.value; }
  friend constexpr auto operator>(const dual& a, const dual& b) { return a.value > b.value; }
  friend constexpr auto operator>=(const dual& a, const dual& b) { return a.value >= b.value; }
  friend constexpr dual select(const truth& condition, const dual& yes, const dual& no) {
    dual result(select(condition, yes.value, no.value));
    for (int k = 0; k < N; ++k) result.partial[k] = select(condition, yes.partial[k], no.partial[k]);
    return result;
  }

  friend dual log(const dual& x) { return chain(log(x.value), 1.0 / x.value, x); }
  friend dual log10(const dual& x) { return chain(log10(x.value), 0.43429448190325182765 / x.value, x); }
  friend dual log1p(const dual& x) { return chain(log1p(x.value), 1.0 / (1.0 + x.value), x); }
  friend dual exp(const dual& x) {
    const V e = exp(x.value);
    return chain(e, e, x);
  }
  friend dual sqrt(const dual& x) {
    const V r = sqrt(x.value);
    return chain(r, 0.5 / r, x);
  }
  friend dual cbrt(const dual& x) {
    const V r = cbrt(x.value);
    return chain(r, 1.0 / (3.0 * r * r), x);
  }
  friend dual pow(const dual& x, double y) { return chain(pow(x.value, y), y * pow(x.value, y - 1.0), x); }
  /// x^(P/D): see power() of formulas.
  template <int P, int D = 1>
  friend dual power(const dual& x) {
    return chain(power<P, D>(x.value), P == 0 ? V(0.0) : static_cast<double>(P) / D * power<P - D, D>(x.value), x);
  }
  friend dual damped_pow(const dual& x, double y) { return chain(damped_pow(x.value, y), y * damped_pow(x.value, y - 1.0), x); }
  friend dual tanh(const dual& x) {
    const V r = tanh(x.value);
    return chain(r, 1.0 - r * r, x);
  }
  friend dual sin(const dual& x) { return chain(sin(x.value), cos(x.value), x); }
  friend dual cos(const dual& x) { return chain(cos(x.value), -sin(x.value), x); }
  friend dual fabs(const dual& x) { return select(x.value < V(0.0), -x, x); }
};

/// How a formula's inner check reads a dual: by its value.
template <int N>
constexpr double plain_value(const dual<N, double>& x) {
  return x.value;
}

}  // namespace v1
}  // namespace makegood

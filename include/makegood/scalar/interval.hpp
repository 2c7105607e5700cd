// SPDX-License-Identifier: MIT
// An enclosure [low, high] of a number, and the bounds of a formula while its arguments lie anywhere between two ends.
// Core: evaluated by every formula. Includes the standard library only. The rounding mode is left alone.
#pragma once
#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>
#include "../formula.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {

/// The truth of a comparison of intervals: certain, certainly not, or undecided (both may be).
struct certainty {
  bool may_hold = true, may_fail = false;
  constexpr bool certain() const { return !may_fail; }
  constexpr bool impossible() const { return !may_hold; }
  constexpr bool undecided() const { return may_hold && may_fail; }
  friend constexpr certainty operator!(certainty a) { return {a.may_fail, a.may_hold}; }
  friend constexpr certainty operator&&(certainty a, certainty b) { return {a.may_hold && b.may_hold, a.may_fail || b.may_fail}; }
  friend constexpr certainty operator||(certainty a, certainty b) { return {a.may_hold || b.may_hold, a.may_fail && b.may_fail}; }
};

namespace detail {

inline constexpr double endless = std::numeric_limits<double>::infinity();
inline constexpr double barely_normal = 1e-290;  // below, a residue may be lost to underflow

inline double below(double x, int steps = 1) {
  while (steps-- > 0) x = std::nextafter(x, -endless);
  return x;
}
inline double above(double x, int steps = 1) {
  while (steps-- > 0) x = std::nextafter(x, endless);
  return x;
}
// The residue of an operation says whether it was exact. Then the ends stay; otherwise they move outwards by one step, which
// is more than the half step by which the operation may have rounded. Under -ffast-math a residue means nothing.
#ifdef __FAST_MATH__
inline constexpr bool residues_count = false;
#else
inline constexpr bool residues_count = true;
#endif
inline bool sum_exact(double a, double b, double s) {
  const double part = s - a;
  return residues_count && (a - (s - part)) + (b - part) == 0.0;
}
inline bool product_exact(double a, double b, double p) {
  return residues_count && std::fabs(p) > barely_normal && std::fma(a, b, -p) == 0.0;
}
inline bool quotient_exact(double a, double b, double q) {
  return residues_count && std::fabs(q) > barely_normal && std::fabs(a) > barely_normal && std::fma(-q, b, a) == 0.0;
}
inline double sum_below(double a, double b) { const double s = a + b; return sum_exact(a, b, s) ? s : below(s); }
inline double sum_above(double a, double b) { const double s = a + b; return sum_exact(a, b, s) ? s : above(s); }
/// Nothing times an end that is never reached is nothing.
inline double product_below(double a, double b) {
  if (a == 0.0 || b == 0.0) return 0.0;
  const double p = a * b;
  return product_exact(a, b, p) ? p : below(p);
}
inline double product_above(double a, double b) {
  if (a == 0.0 || b == 0.0) return 0.0;
  const double p = a * b;
  return product_exact(a, b, p) ? p : above(p);
}
inline double quotient_below(double a, double b) {
  if (a == 0.0 || !is_finite(b)) return 0.0;
  const double q = a / b;
  return quotient_exact(a, b, q) ? q : below(q);
}
inline double quotient_above(double a, double b) {
  if (a == 0.0 || !is_finite(b)) return 0.0;
  const double q = a / b;
  return quotient_exact(a, b, q) ? q : above(q);
}
// Steps by which results of our functions are widened. Their worst errors by measurement (scalar/vector_math.hpp) are below 1 unit
// in the last place; twice that and more is allowed for. The square root is rounded correctly.
inline constexpr int library_steps = 2, tanh_steps = 3, cbrt_steps = 3;

}  // namespace detail

/// All numbers from low to high. `undefined`: for a part of what went in there may be no result. NaN is never an end.
struct interval {
  double low = 0.0, high = 0.0;
  bool undefined = false;

  constexpr interval() = default;
  constexpr interval(double x) : low(x), high(x) {
    if (!is_finite(x)) *this = anything();
  }
  constexpr interval(const literal& x) : interval(x.value) {}
  constexpr interval(double low_, double high_, bool undefined_ = false) : low(low_), high(high_), undefined(undefined_) {
    if (is_nan(low_) || is_nan(high_)) *this = anything();
  }
  /// The whole line, with the remark that there may be no result at all.
  static constexpr interval anything() {
    interval all;
    all.low = -detail::endless;
    all.high = detail::endless;
    all.undefined = true;
    return all;
  }
  constexpr bool contains(double x) const { return !is_nan(x) && low <= x && x <= high; }
  constexpr bool is_point() const { return low == high; }
  constexpr bool bounded() const { return is_finite(low) && is_finite(high); }
  constexpr double middle() const { return is_point() ? low : 0.5 * low + 0.5 * high; }

  friend interval operator+(const interval& a, const interval& b) {
    return {detail::sum_below(a.low, b.low), detail::sum_above(a.high, b.high), a.undefined || b.undefined};
  }
  friend constexpr interval operator-(const interval& a) { return {-a.high, -a.low, a.undefined}; }
  friend interval operator-(const interval& a, const interval& b) { return a + -b; }
  friend interval operator*(const interval& a, const interval& b) {
    using detail::product_above, detail::product_below;
    const bool lost = a.undefined || b.undefined;
    if (a.low >= 0.0 && b.low >= 0.0) return {product_below(a.low, b.low), product_above(a.high, b.high), lost};
    return {std::min({product_below(a.low, b.low), product_below(a.low, b.high), product_below(a.high, b.low), product_below(a.high, b.high)}),
            std::max({product_above(a.low, b.low), product_above(a.low, b.high), product_above(a.high, b.low), product_above(a.high, b.high)}),
            lost};
  }
  friend interval operator/(const interval& a, const interval& b) {
    using detail::quotient_above, detail::quotient_below;
    if (b.contains(0.0) || !(a.bounded() || b.bounded())) return anything();
    return {std::min({quotient_below(a.low, b.low), quotient_below(a.low, b.high), quotient_below(a.high, b.low), quotient_below(a.high, b.high)}),
            std::max({quotient_above(a.low, b.low), quotient_above(a.low, b.high), quotient_above(a.high, b.low), quotient_above(a.high, b.high)}),
            a.undefined || b.undefined};
  }
  friend constexpr certainty operator<(const interval& a, const interval& b) { return {a.low < b.high, a.high >= b.low}; }
  friend constexpr certainty operator<=(const interval& a, const interval& b) { return {a.low <= b.high, a.high > b.low}; }
  friend constexpr certainty operator>(const interval& a, const interval& b) { return b < a; }
  friend constexpr certainty operator>=(const interval& a, const interval& b) { return b <= a; }
  friend constexpr interval hull(const interval& a, const interval& b) {
    return {a.low < b.low ? a.low : b.low, a.high > b.high ? a.high : b.high, a.undefined || b.undefined};
  }
  /// Two enclosures of one number hold it between them. (Ends that crossed by rounding are put right.)
  friend constexpr interval common(const interval& a, const interval& b) {
    const double from = a.low > b.low ? a.low : b.low, to = a.high < b.high ? a.high : b.high;
    return {from < to ? from : to, from < to ? to : from, a.undefined && b.undefined};
  }
  friend constexpr interval select(certainty condition, const interval& yes, const interval& no) {
    return condition.certain() ? yes : condition.impossible() ? no : hull(yes, no);
  }
  friend constexpr interval minimum(const interval& a, const interval& b) {
    return {a.low < b.low ? a.low : b.low, a.high < b.high ? a.high : b.high, a.undefined || b.undefined};
  }
  friend constexpr interval maximum(const interval& a, const interval& b) {
    return {a.low < b.low ? b.low : a.low, a.high < b.high ? b.high : a.high, a.undefined || b.undefined};
  }

  friend constexpr interval fabs(const interval& x) {
    return x.low >= 0.0 ? x : x.high <= 0.0 ? -x : interval{0.0, -x.low > x.high ? -x.low : x.high, x.undefined};
  }
  friend interval square(const interval& x) {
    const interval m = fabs(x);
    return m * m;
  }
  friend interval cube(const interval& x) {
    const auto least = [](double e) { return detail::product_below(e < 0.0 ? detail::product_above(e, e) : detail::product_below(e, e), e); };
    const auto most = [](double e) { return detail::product_above(e < 0.0 ? detail::product_below(e, e) : detail::product_above(e, e), e); };
    return {least(x.low), most(x.high), x.undefined};
  }
  /// What power() of formulas is made of. Falling and rising with x as it does.
  template <int N>
  friend interval whole_power(const interval& x) {
    if constexpr (N == 0) return {1.0, 1.0, x.undefined};
    const auto up = [](double e) {  // of an e that is not negative
      double p = e;
      for (int i = 1; i < N; ++i) p = detail::product_above(p, e);
      return p;
    };
    const auto down = [](double e) {
      double p = e;
      for (int i = 1; i < N; ++i) p = detail::product_below(p, e);
      return std::max(p, 0.0);
    };
    if constexpr (N % 2 == 0) {
      const interval m = fabs(x);
      return {down(m.low), up(m.high), x.undefined};
    } else {
      return {x.low < 0.0 ? -up(-x.low) : down(x.low), x.high < 0.0 ? -down(-x.high) : up(x.high), x.undefined};
    }
  }
  friend interval guess(const interval& x) { return x.middle(); }
  friend interval sqrt(const interval& x) {
    const interval in = not_below(x, 0.0);
    const double from = v1::sqrt(in.low), to = v1::sqrt(in.high);
    const auto exact = [](double root, double of) { return of == 0.0 || (of > detail::barely_normal && detail::product_exact(root, root, of)); };
    return {exact(from, in.low) ? from : detail::below(from), exact(to, in.high) ? to : detail::above(to), in.undefined};
  }
  friend interval exp(const interval& x) {
    const interval r = rising(x, [](double e) { return v1::exp(e); }, detail::library_steps, 0.0, 1.0);
    return {std::max(r.low, 0.0), r.high, r.undefined};
  }
  friend interval log(const interval& x) { return logarithm(x, 0.0, [](double e) { return v1::log(e); }); }
  friend interval log10(const interval& x) { return logarithm(x, 0.0, [](double e) { return v1::log10(e); }); }
  friend interval log1p(const interval& x) { return logarithm(x, -1.0, [](double e) { return v1::log1p(e); }); }
  friend interval cbrt(const interval& x) { return rising(x, [](double e) { return v1::cbrt(e); }, detail::cbrt_steps, 0.0, 0.0); }
  friend interval tanh(const interval& x) {
    const interval r = rising(x, [](double e) { return v1::tanh(e); }, detail::tanh_steps, 0.0, 0.0);
    return {std::max(r.low, -1.0), std::min(r.high, 1.0), r.undefined};
  }
  friend interval pow(const interval& x, double y) {
    const bool whole = y == std::floor(y) && std::fabs(y) < 1e15;
    if (y == 0.0) return {1.0, 1.0, x.undefined};
    if (y < 0.0) {
      if (whole ? x.contains(0.0) : x.low <= 0.0) return anything();
      if (x.low < 0.0) return std::fmod(y, 2.0) == 0.0 ? pow(-x, y) : -pow(-x, y);
      return {std::max(detail::below(v1::pow(x.high, y), detail::library_steps), 0.0), detail::above(v1::pow(x.low, y), detail::library_steps), x.undefined};
    }
    const auto power = [y](double e) { return v1::pow(e, y); };
    if (whole && std::fmod(y, 2.0) != 0.0) return rising(x, power, detail::library_steps, 0.0, 0.0);
    const interval r = rising(whole ? fabs(x) : not_below(x, 0.0), power, detail::library_steps, 0.0, 0.0);
    return {std::max(r.low, 0.0), r.high, r.undefined};
  }
  friend interval sin(const interval& x) { return wave(x, 1.5707963267948966, [](double e) { return v1::sin(e); }); }
  friend interval cos(const interval& x) { return wave(x, 0.0, [](double e) { return v1::cos(e); }); }

  /// A root, enclosed by interval Newton steps: see detail::enclosed_root.
  template <int Steps, class Start, class R>
  friend interval root(std::string_view, const unit_t&, const Start& start, const R& residual, const interval&);

 private:
  static constexpr interval not_below(const interval& x, double bound) {
    if (x.low >= bound) return x;
    return {bound, x.high > bound ? x.high : bound, true};
  }
  /// f rises; the one argument at which it is exact keeps its value.
  template <class F>
  static interval rising(const interval& x, F f, int steps, double exact_at, double exact_value) {
    return {x.low == exact_at ? exact_value : detail::below(f(x.low), steps), x.high == exact_at ? exact_value : detail::above(f(x.high), steps), x.undefined};
  }
  template <class F>
  static interval logarithm(const interval& x, double pole, F f) {
    const double one = pole + 1.0;  // where the logarithm is 0
    if (x.high <= pole) return anything();
    const double to = x.high == one ? 0.0 : detail::above(f(x.high), detail::library_steps);
    if (x.low <= pole) return {-detail::endless, to, true};
    return {x.low == one ? 0.0 : detail::below(f(x.low), detail::library_steps), to, x.undefined};
  }
  /// A sine whose crests lie at `crest` and every 2π from there, the troughs between them.
  template <class F>
  static interval wave(const interval& x, double crest, F f) {
    constexpr double pi = 3.141592653589793;
    if (!x.bounded() || x.high - x.low >= 2.0 * pi || std::fabs(x.low) > 1e6 || std::fabs(x.high) > 1e6) return {-1.0, 1.0, x.undefined};
    const auto holds = [&](double at) {  // an extreme too near to an end to be sure counts
      const double k = std::ceil((x.low - 1e-8 - at) / (2.0 * pi));
      return at + 2.0 * pi * k <= x.high + 1e-8;
    };
    const double a = f(x.low), b = f(x.high);
    return {holds(crest + pi) ? -1.0 : std::max(-1.0, detail::below(std::min(a, b), detail::library_steps)),
            holds(crest) ? 1.0 : std::min(1.0, detail::above(std::max(a, b), detail::library_steps)), x.undefined};
  }
};
constexpr double plain_value(const interval& x) { return x.middle(); }

namespace detail {
/// Encloses the root of a residual whose parameters are intervals. With x a point and X an interval about it, let
/// N = x - g(x)/g'(X). Where N lies inside X, the residual has one root in X for every choice of the parameters, and that root
/// lies in N (interval Newton). X is widened until this holds; it is a proof, not an estimate. Where it never holds the answer is
/// the whole line, "undefined". The last steps outwards leave room for the rounding of the kernel's own Newton steps in double.
template <class R>
interval enclosed_root(double x, int steps, const R& residual) {
  double slope = 1.0;
  for (int i = 0; i < steps + 4; ++i) {
    const auto [g, s] = residual(interval(x));
    slope = s.middle();
    const double next = x - g.middle() / slope;
    if (!is_finite(next)) return interval::anything();
    x = next;
  }
  const interval g = residual(interval(x)).first;
  const double reach = 1.5 * std::max(std::fabs(g.low), std::fabs(g.high)) / std::fabs(slope) + 1e-15 * std::fabs(x) + 1e-300;
  interval around{x - reach, x + reach};
  for (int i = 0; i < 40; ++i) {
    const auto [value, s] = residual(around);
    if (g.undefined || value.undefined || s.undefined || s.contains(0.0) || !around.bounded()) break;
    interval inside = interval(x) - g / s;
    if (around.low < inside.low && inside.high < around.high) {
      for (int k = 0; k < 3; ++k) inside = common(inside, interval(x) - g / residual(inside).second);
      return {below(inside.low, 4), above(inside.high, 4)};
    }
    around = hull(around, inside);
    const double more = 0.1 * (around.high - around.low);
    around = {around.low - more, around.high + more};
  }
  return interval::anything();
}
}  // namespace detail

template <int Steps, class Start, class R>
interval root(std::string_view, const unit_t&, const Start& start, const R& residual, const interval&) {
  return detail::enclosed_root(static_cast<interval>(start).middle(), Steps, residual);
}

/// An enclosure of a value and of its partial derivatives by up to ten inputs.
struct dual_interval {
  static constexpr int most = 10;
  interval value{};
  interval partial[most]{};

  /// A comparison, and the inputs on which it depends (one bit each).
  struct truth {
    certainty is;
    unsigned inputs;
  };

  dual_interval() = default;
  dual_interval(double x) : value(x) {}
  dual_interval(const literal& x) : value(x) {}
  dual_interval(const interval& x) : value(x) {}
  static dual_interval input(const interval& x, int k) {
    dual_interval result(x);
    result.partial[k] = 1.0;
    return result;
  }

  friend dual_interval chain(const interval& at, const interval& slope, const dual_interval& x) {
    dual_interval result(at);
    for (int k = 0; k < most; ++k)
      if (x.depends(k)) result.partial[k] = slope * x.partial[k];
    return result;
  }
  friend dual_interval chain(const interval& at, const interval& slope_a, const dual_interval& a, const interval& slope_b, const dual_interval& b) {
    dual_interval result(at);
    for (int k = 0; k < most; ++k) {
      if (a.depends(k)) result.partial[k] = slope_a * a.partial[k];
      if (b.depends(k)) result.partial[k] = result.partial[k] + slope_b * b.partial[k];
    }
    return result;
  }
  friend dual_interval operator+(const dual_interval& a, const dual_interval& b) { return chain(a.value + b.value, 1.0, a, 1.0, b); }
  friend dual_interval operator-(const dual_interval& a, const dual_interval& b) { return chain(a.value - b.value, 1.0, a, -1.0, b); }
  friend dual_interval operator-(const dual_interval& a) { return chain(-a.value, -1.0, a); }
  friend dual_interval operator*(const dual_interval& a, const dual_interval& b) { return chain(a.value * b.value, b.value, a, a.value, b); }
  friend dual_interval operator/(const dual_interval& a, const dual_interval& b) {
    const interval q = a.value / b.value;
    return chain(q, interval(1.0) / b.value, a, -q / b.value, b);
  }
  friend truth operator<(const dual_interval& a, const dual_interval& b) { return {a.value < b.value, a.inputs() | b.inputs()}; }
  friend truth operator<=(const dual_interval& a, const dual_interval& b) { return {a.value <= b.value, a.inputs() | b.inputs()}; }
  friend truth operator>(const dual_interval& a, const dual_interval& b) { return {a.value > b.value, a.inputs() | b.inputs()}; }
  friend truth operator>=(const dual_interval& a, const dual_interval& b) { return {a.value >= b.value, a.inputs() | b.inputs()}; }
  /// Undecided: there may be a step between the branches, so nothing is known of the slope by an input that decides.
  friend dual_interval select(const truth& condition, const dual_interval& yes, const dual_interval& no) {
    if (condition.is.certain()) return yes;
    if (condition.is.impossible()) return no;
    dual_interval result(hull(yes.value, no.value));
    for (int k = 0; k < most; ++k) result.partial[k] = (condition.inputs >> k & 1u) ? interval::anything() : hull(yes.partial[k], no.partial[k]);
    return result;
  }

  friend dual_interval square(const dual_interval& x) { return chain(square(x.value), interval(2.0) * x.value, x); }
  friend dual_interval cube(const dual_interval& x) { return chain(cube(x.value), interval(3.0) * square(x.value), x); }
  friend dual_interval log(const dual_interval& x) { return chain(log(x.value), interval(1.0) / not_negative(x.value), x); }
  friend dual_interval log10(const dual_interval& x) {
    return chain(log10(x.value), interval(0.43429448190325181, 0.43429448190325187) / not_negative(x.value), x);
  }
  friend dual_interval log1p(const dual_interval& x) { return chain(log1p(x.value), interval(1.0) / not_negative(interval(1.0) + x.value), x); }
  friend dual_interval exp(const dual_interval& x) {
    const interval e = exp(x.value);
    return chain(e, e, x);
  }
  friend dual_interval sqrt(const dual_interval& x) {
    const interval r = sqrt(x.value);
    return chain(r, rising_slope(0.5, r), x);
  }
  friend dual_interval cbrt(const dual_interval& x) {
    const interval r = cbrt(x.value);
    return chain(r, rising_slope(1.0, interval(3.0) * square(r)), x);
  }
  friend dual_interval pow(const dual_interval& x, double y) {
    if (y > 0.0 && y < 1.0 && x.value.low >= 0.0 && x.value.low < detail::barely_normal)  // endless slope at 0: it still rises
      return chain(pow(x.value, y), {0.0, detail::endless}, x);
    return chain(pow(x.value, y), interval(y) * pow(x.value, y - 1.0), x);
  }
  template <int N, int D = 1>
  friend dual_interval power(const dual_interval& x) {
    const interval y = power<N, D>(x.value);
    if constexpr (N == 0) return y;
    else if (N > 0 && N < D && x.value.low < detail::barely_normal)
      return chain(y, D % 2 == 0 || x.value.low >= 0.0 ? interval{0.0, detail::endless} : interval::anything(), x);
    else return chain(y, interval(N) / interval(D) * power<N - D, D>(x.value), x);
  }
  friend dual_interval damped_pow(const dual_interval& x, double y) {
    const dual_interval r = pow(x, y);
    return replaced(r, damped_pow(x.value, y));
  }
  friend dual_interval guess(const dual_interval& x) { return guess(x.value); }
  friend dual_interval tanh(const dual_interval& x) {
    const interval r = tanh(x.value);
    interval slope = interval(1.0) - square(r);
    if (slope.low < 0.0) slope.low = 0.0;  // it rises everywhere: far out rounding must not hide that
    return chain(r, slope, x);
  }
  friend dual_interval sin(const dual_interval& x) { return chain(sin(x.value), cos(x.value), x); }
  friend dual_interval cos(const dual_interval& x) { return chain(cos(x.value), -sin(x.value), x); }
  friend dual_interval fabs(const dual_interval& x) {
    return chain(fabs(x.value), x.value.low >= 0.0 ? interval(1.0) : x.value.high <= 0.0 ? interval(-1.0) : interval(-1.0, 1.0), x);
  }
  /// By the theorem on implicit functions: the slope of a root is -(slope of the residual by the input)/(slope by the unknown).
  template <int Steps, class Start, class R>
  friend dual_interval root(std::string_view, const unit_t&, const Start& start, const R& residual, const dual_interval&);

 private:
  /// The same slopes with another value.
  static dual_interval replaced(dual_interval x, const interval& value) {
    x.value = value;
    return x;
  }
  bool depends(int k) const { return partial[k].low != 0.0 || partial[k].high != 0.0; }
  unsigned inputs() const {
    unsigned bits = 0;
    for (int k = 0; k < most; ++k) bits |= depends(k) ? 1u << k : 0u;
    return bits;
  }
  static interval not_negative(const interval& x) { return {std::max(x.low, 0.0), std::max(x.high, 0.0), x.undefined}; }
  /// c/x of an x that is not negative: endless at 0, but never below c/high.
  static interval rising_slope(double c, const interval& x) {
    if (x.low > 0.0) return interval(c) / x;
    return {x.high > 0.0 ? detail::quotient_below(c, x.high) : 0.0, detail::endless, x.undefined};
  }
};
inline double plain_value(const dual_interval& x) { return x.value.middle(); }

template <int Steps, class Start, class R>
dual_interval root(std::string_view, const unit_t&, const Start& start, const R& residual, const dual_interval&) {
  const interval x = detail::enclosed_root(static_cast<dual_interval>(start).value.middle(), Steps, [&](const interval& at) {
    const auto [g, slope] = residual(dual_interval(at));
    return std::pair(static_cast<dual_interval>(g).value, static_cast<dual_interval>(slope).value);
  });
  const auto [g, slope] = residual(dual_interval(x));
  dual_interval result(x);
  for (int k = 0; k < dual_interval::most; ++k)
    if (g.depends(k)) result.partial[k] = -g.partial[k] / slope.value;
  return result;
}

// ---------------------------------------------------------------------------------------------------------------------
// Bounds of a formula

namespace detail {

/// A formula without its types, as far as bounds need it.
struct boxed {
  const void* self;
  std::size_t count;
  interval (*value)(const void*, const interval*);
  dual_interval (*slopes)(const void*, const interval*);
};
inline constexpr std::size_t most_boxed = static_cast<std::size_t>(dual_interval::most);

/// Calls look(corner) for the corners of a box until it says stop; returns whether it did.
template <class Look>
bool any_corner(std::size_t n, const double* low, const double* high, Look look) {
  std::array<double, most_boxed> x{};
  std::array<std::size_t, most_boxed> wide{};
  std::size_t free = 0;
  for (std::size_t i = 0; i < n; ++i) {
    x[i] = low[i];
    if (low[i] != high[i]) wide[free++] = i;
  }
  for (std::size_t corner = 0; corner < std::size_t{1} << free; ++corner) {
    for (std::size_t k = 0; k < free; ++k) x[wide[k]] = corner >> k & 1u ? high[wide[k]] : low[wide[k]];
    if (look(x.data())) return true;
  }
  return false;
}

/// A part of the box in the search for the lowest value of `sign` times the formula.
struct piece {
  std::array<interval, most_boxed> box{};
  double bound = -endless;   // proved: no value on the piece is lower
  double reached = endless;  // proved: a value on the piece is not higher
  bool lost = false;         // a part may have no result
  std::array<double, most_boxed> weight{};  // how much each argument makes uncertain
};
inline piece study(const boxed& f, const std::array<interval, most_boxed>& box, double sign) {
  piece p;
  p.box = box;
  dual_interval y = f.slopes(f.self, box.data());
  p.lost = y.value.undefined || !y.value.bounded();
  if (p.lost) return p;
  // Monotone in an argument: the lowest value lies at that argument's end. On the smaller box more may show to be monotone.
  for (bool again = true; again;) {
    again = false;
    for (std::size_t i = 0; i < f.count; ++i) {
      interval& x = p.box[i];
      if (x.is_point()) continue;
      const interval slope = interval(sign) * y.partial[i];
      if (slope.low >= 0.0) x = x.low, again = true;
      else if (slope.high <= 0.0) x = x.high, again = true;
    }
    if (again) y = f.slopes(f.self, p.box.data());
  }
  auto middle = p.box;
  interval away(0.0);
  for (std::size_t i = 0; i < f.count; ++i)
    if (!p.box[i].is_point()) {
      middle[i] = p.box[i].middle();
      const interval part = y.partial[i] * (p.box[i] - middle[i]);
      p.weight[i] = part.high - part.low;
      away = away + part;
    }
  const interval at_middle = f.value(f.self, middle.data());
  interval range = f.value(f.self, p.box.data());
  if (away.bounded()) range = common(range, at_middle + away);  // mean value theorem
  p.bound = sign > 0.0 ? range.low : -range.high;
  p.reached = sign > 0.0 ? at_middle.high : -at_middle.low;
  return p;
}

/// A proved lower bound of `sign` times a formula on a box: the piece that holds it down, or may have no result, is cut in two
/// until more cuts would win nothing. It is sound whenever the cutting ends. NaN: a part of the box may have no result.
inline double lowest(const boxed& f, const std::array<interval, most_boxed>& whole, double sign) {
  constexpr std::size_t most_pieces = 250;
  constexpr double near_enough = 4e-15;
  std::vector<piece> pieces{study(f, whole, sign)};
  for (;;) {
    std::size_t next = 0;
    double reached = endless;
    for (std::size_t k = 0; k < pieces.size(); ++k) {
      if (pieces[k].bound < pieces[next].bound) next = k;
      reached = std::min(reached, pieces[k].reached);
    }
    const piece p = pieces[next];
    // cut the argument that makes most uncertain; where that is endless, the one that is widest, measured by the whole box
    std::size_t cut = f.count;
    std::pair<double, double> most{-1.0, 0.0};
    for (std::size_t i = 0; i < f.count; ++i) {
      const double m = p.box[i].middle();
      if (!(p.box[i].low < m && m < p.box[i].high)) continue;
      const std::pair worth{is_nan(p.weight[i]) ? endless : p.weight[i], (p.box[i].high - p.box[i].low) / (whole[i].high - whole[i].low)};
      if (worth > most) most = worth, cut = i;
    }
    const bool good = !p.lost && reached - p.bound <= near_enough * std::fabs(p.bound);
    if (good || cut == f.count || pieces.size() == most_pieces) return p.lost ? no_number : p.bound;
    auto left = p.box, right = p.box;
    left[cut].high = right[cut].low = p.box[cut].middle();
    pieces[next] = study(f, left, sign);
    pieces.push_back(study(f, right, sign));
  }
}
inline interval enclosed(const boxed& f, const double* low, const double* high) {
  std::array<interval, most_boxed> whole{};
  for (std::size_t i = 0; i < f.count; ++i) whole[i] = {low[i], high[i]};
  const double least = lowest(f, whole, 1.0);
  return is_nan(least) ? interval::anything() : interval{least, -lowest(f, whole, -1.0)};
}

template <class F>
struct boxing {
  static_assert(F::count <= most_boxed);
  static std::array<double, F::count> plain(const interval* x) {  // a choice is the index of its row
    std::array<double, F::count> v{};
    for (std::size_t i = 0; i < F::count; ++i) v[i] = x[i].low;
    return v;
  }
  static interval value(const void* s, const interval* x) {
    return static_cast<const F*>(s)->template value_as<interval>(x, plain(x).data());
  }
  static dual_interval slopes(const void* s, const interval* x) {
    std::array<dual_interval, F::count> in;
    for (std::size_t i = 0; i < F::count; ++i)
      in[i] = F::is_choice[i] ? dual_interval(x[i]) : dual_interval::input(x[i], static_cast<int>(i));
    return static_cast<const F*>(s)->template value_as<dual_interval>(in.data(), plain(x).data());
  }
};

}  // namespace detail

/// Lowest and highest value of a formula while each argument lies anywhere from low to high (in the order of the arguments; a
/// choice is the index of its row). Every value is inside; where the formula is monotone the ends are its values at corners.
/// Ranges and relations are those of a call, looked at in every corner of the box; what has no result in between is found by
/// the evaluation. Proved are the arithmetic, the roots and the monotonicity; taken on trust are the measured errors
/// of our functions, that a kernel's Newton steps reach the root, and that a relation which holds in the corners holds between them.
template <class F>
interval bounds(const F& f, const double* low, const double* high) {
  for (std::size_t i = 0; i < F::count; ++i)
    if (low[i] > high[i]) {
      const auto& a = f.args[i];
      throw relation_error(std::string(f.result.name) + ": " + std::string(a.name) + ": the lower bound " + quantity_text(low[i], a.unit.symbol) +
                           " is above the upper bound " + quantity_text(high[i], a.unit.symbol));
    }
  for (const double* end : {low, high})  // a number out of range is named before a corner is looked at
    if (const fault bad = f.check(end); bad && bad.kind != fault::what::relation) f.refuse(bad, end);
  detail::any_corner(F::count, low, high, [&](const double* x) {
    if (const fault bad = f.check(x)) f.refuse(bad, x);
    return false;
  });
  const interval y = detail::enclosed({&f, F::count, detail::boxing<F>::value, detail::boxing<F>::slopes}, low, high);
  if (y.undefined)
    throw range_error(std::string(f.result.name) + ": between these bounds lie arguments without a result, or it cannot be shown that there are none");
  return y;
}

/// A formula called with intervals gives its bounds.
template <>
struct evaluation<interval> {
  template <class F, class... X>
  static interval run(const F& f, const X&... x) {
    const auto end = [&](bool upper) {
      return f.template with_all<interval>([upper](const auto&... y) { return std::array<double, F::count>{take(y, upper)...}; }, x...);
    };
    return bounds(f, end(false).data(), end(true).data());
  }

 private:
  static double take(const interval& x, bool upper) { return upper ? x.high : x.low; }
  static double take(const chosen<interval>& c, bool) { return c.index; }
};

namespace detail {
/// A call inside a formula: where the inner formula's ranges or relations break in a corner, there may be no result.
template <class K>
struct inner_box {
  template <class F, class... X>
  static K run(const F& f, const X&... x) {
    return f.template with_all<K>(
        [&f](const auto&... y) {
          const std::array<double, F::count> low{end(y, false)...}, high{end(y, true)...};
          K result = f.unchecked(y...);
          if (any_corner(F::count, low.data(), high.data(), [&](const double* corner) { return static_cast<bool>(f.check(corner)); }))
            value_of(result).undefined = true;
          return result;
        },
        x...);
  }

 private:
  static interval& value_of(interval& x) { return x; }
  static interval& value_of(dual_interval& x) { return x.value; }
  static double end(const interval& x, bool upper) { return upper ? x.high : x.low; }
  static double end(const dual_interval& x, bool upper) { return end(x.value, upper); }
  static double end(const chosen<K>& c, bool) { return c.index; }
};
}  // namespace detail
template <>
struct inner_call<interval> : detail::inner_box<interval> {};
template <>
struct inner_call<dual_interval> : detail::inner_box<dual_interval> {};

}  // namespace v1
}  // namespace makegood

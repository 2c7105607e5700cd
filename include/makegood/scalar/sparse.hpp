// SPDX-License-Identifier: MIT
// Dual numbers whose type says which inputs they depend on: slopes that are always zero are neither kept nor calculated.
// Core of the gradient of a formula, for doubles and lanes. Includes the standard library only.
#pragma once
#include "../formula.hpp"
#include "dual.hpp"

namespace makegood {
inline namespace v1 {

/// Value and the partial derivatives by those of N inputs whose bit is set in Of. Sums and products depend on what either depends on.
template <unsigned Of, int N, class V = double>
struct sparse {
  static constexpr int count = __builtin_popcount(Of);
  V value{};
  V partial[count > 0 ? count : 1]{};  ///< one for each input of Of, in order

  constexpr sparse() = default;
  MAKEGOOD_INLINE constexpr sparse(double x) : value(x) {}
  MAKEGOOD_INLINE constexpr sparse(const literal& x) : value(x.value) {}
  MAKEGOOD_INLINE constexpr sparse(const V& x)
    requires(!std::is_same_v<V, double>)
      : value(x) {}
  template <unsigned Less>
    requires((Less & ~Of) == 0 && Less != Of)
  MAKEGOOD_INLINE constexpr sparse(const sparse<Less, N, V>& x) : value(x.value) {
    for_each([&]<int K>() MAKEGOOD_LAMBDA_INLINE { partial[place<K>] = x.template slope<K>(); });
  }
  template <int K>
  static constexpr bool has = (Of >> K & 1u) != 0;
  template <int K>
  static constexpr int place = __builtin_popcount(Of & ((1u << K) - 1u));
  template <int K>
  MAKEGOOD_INLINE constexpr V slope() const {
    if constexpr (has<K>) return partial[place<K>];
    else return V(0.0);
  }
  /// Calls f.operator()<K>() for every input of Of.
  template <class F>
  MAKEGOOD_INLINE static constexpr void for_each(const F& f) {
    [&]<int... K>(std::integer_sequence<int, K...>) MAKEGOOD_LAMBDA_INLINE {
      const auto one = [&]<int I>() MAKEGOOD_LAMBDA_INLINE {
        if constexpr (has<I>) f.template operator()<I>();
      };
      (one.template operator()<K>(), ...);
    }(std::make_integer_sequence<int, N>{});
  }
};
/// The K-th input.
template <int K, int N, class V>
MAKEGOOD_INLINE constexpr sparse<(1u << K), N, V> sparse_input(const V& x) {
  sparse<(1u << K), N, V> r;
  r.value = x;
  r.partial[0] = V(1.0);
  return r;
}
template <unsigned A, unsigned B, int N, class V>
struct wider<sparse<A, N, V>, sparse<B, N, V>> {
  using type = sparse<(A | B), N, V>;
};
template <unsigned A, int N, class V>
struct wider<sparse<A, N, V>, sparse<A, N, V>> {
  using type = sparse<A, N, V>;
};

namespace detail {
template <unsigned A, int N, class V>
MAKEGOOD_INLINE constexpr sparse<A, N, V> chain(const V& at, const V& slope, const sparse<A, N, V>& x) {
  sparse<A, N, V> r;
  r.value = at;
  r.for_each([&]<int K>() MAKEGOOD_LAMBDA_INLINE { r.partial[r.template place<K>] = slope * x.template slope<K>(); });
  return r;
}
/// Made of two: both(a', b') where both depend on an input, first(a') or second(b') where one does.
template <unsigned A, unsigned B, int N, class V, class Both, class First, class Second>
MAKEGOOD_INLINE constexpr sparse<(A | B), N, V> joined(const V& at, const sparse<A, N, V>& a, const sparse<B, N, V>& b, const Both& both, const First& first, const Second& second) {
  sparse<(A | B), N, V> r;
  r.value = at;
  r.for_each([&]<int K>() MAKEGOOD_LAMBDA_INLINE {
    if constexpr ((A >> K & 1u) != 0 && (B >> K & 1u) != 0) r.partial[r.template place<K>] = both(a.template slope<K>(), b.template slope<K>());
    else if constexpr ((A >> K & 1u) != 0) r.partial[r.template place<K>] = first(a.template slope<K>());
    else r.partial[r.template place<K>] = second(b.template slope<K>());
  });
  return r;
}
template <class V, class C>
MAKEGOOD_INLINE constexpr V flat(const C& c) {
  if constexpr (std::is_arithmetic_v<C>) return V(static_cast<double>(c));
  else if constexpr (std::is_same_v<C, literal>) return V(c.value);
  else return c;
}
}  // namespace detail

#define MAKEGOOD_SPARSE_PAIR template <unsigned A, unsigned B, int N, class V> MAKEGOOD_INLINE constexpr
#define MAKEGOOD_SPARSE_ONE template <unsigned A, int N, class V> MAKEGOOD_INLINE constexpr
#define MAKEGOOD_SPARSE_FLAT template <unsigned A, int N, class V, class C> requires has_no_slope<C, V> MAKEGOOD_INLINE constexpr
#define MAKEGOOD_LIKEWISE(x) [&](const V& x) MAKEGOOD_LAMBDA_INLINE
#define MAKEGOOD_LIKEWISE_TWO [&](const V& s, const V& t) MAKEGOOD_LAMBDA_INLINE

MAKEGOOD_SPARSE_PAIR auto operator+(const sparse<A, N, V>& a, const sparse<B, N, V>& b) {
  return detail::joined(a.value + b.value, a, b, MAKEGOOD_LIKEWISE_TWO { return s + t; }, MAKEGOOD_LIKEWISE(s) { return s; }, MAKEGOOD_LIKEWISE(t) { return t; });
}
MAKEGOOD_SPARSE_PAIR auto operator-(const sparse<A, N, V>& a, const sparse<B, N, V>& b) {
  return detail::joined(a.value - b.value, a, b, MAKEGOOD_LIKEWISE_TWO { return s - t; }, MAKEGOOD_LIKEWISE(s) { return s; }, MAKEGOOD_LIKEWISE(t) { return -t; });
}
MAKEGOOD_SPARSE_PAIR auto operator*(const sparse<A, N, V>& a, const sparse<B, N, V>& b) {
  return detail::joined(a.value * b.value, a, b, MAKEGOOD_LIKEWISE_TWO { return b.value * s + a.value * t; }, MAKEGOOD_LIKEWISE(s) { return b.value * s; },
                        MAKEGOOD_LIKEWISE(t) { return a.value * t; });
}
MAKEGOOD_SPARSE_PAIR auto operator/(const sparse<A, N, V>& a, const sparse<B, N, V>& b) {
  const V q = a.value / b.value, by = 1.0 / b.value;
  return detail::joined(q, a, b, MAKEGOOD_LIKEWISE_TWO { return by * (s - q * t); }, MAKEGOOD_LIKEWISE(s) { return by * s; }, MAKEGOOD_LIKEWISE(t) { return -(by * (q * t)); });
}
MAKEGOOD_SPARSE_ONE auto operator-(const sparse<A, N, V>& a) {
  sparse<A, N, V> r;
  r.value = -a.value;
  r.for_each([&]<int K>() MAKEGOOD_LAMBDA_INLINE { r.partial[r.template place<K>] = -a.template slope<K>(); });
  return r;
}
MAKEGOOD_SPARSE_FLAT auto operator+(const sparse<A, N, V>& a, const C& c) {
  auto r = a;
  r.value = a.value + detail::flat<V>(c);
  return r;
}
MAKEGOOD_SPARSE_FLAT auto operator+(const C& c, const sparse<A, N, V>& a) {
  auto r = a;
  r.value = detail::flat<V>(c) + a.value;
  return r;
}
MAKEGOOD_SPARSE_FLAT auto operator-(const sparse<A, N, V>& a, const C& c) {
  auto r = a;
  r.value = a.value - detail::flat<V>(c);
  return r;
}
MAKEGOOD_SPARSE_FLAT auto operator-(const C& c, const sparse<A, N, V>& a) {
  auto r = -a;
  r.value = detail::flat<V>(c) - a.value;
  return r;
}
MAKEGOOD_SPARSE_FLAT auto operator*(const sparse<A, N, V>& a, const C& c) { return detail::chain(a.value * detail::flat<V>(c), detail::flat<V>(c), a); }
MAKEGOOD_SPARSE_FLAT auto operator*(const C& c, const sparse<A, N, V>& a) { return detail::chain(detail::flat<V>(c) * a.value, detail::flat<V>(c), a); }
MAKEGOOD_SPARSE_FLAT auto operator/(const sparse<A, N, V>& a, const C& c) {
  return detail::chain(a.value / detail::flat<V>(c), static_cast<V>(1.0 / detail::flat<V>(c)), a);
}
MAKEGOOD_SPARSE_FLAT auto operator/(const C& c, const sparse<A, N, V>& a) {
  const V q = detail::flat<V>(c) / a.value;
  if constexpr (!std::is_same_v<C, V> || std::is_same_v<V, double>) {
    const double by = static_cast<double>(c);  // -q / a without a second division
    if (by != 0.0) return detail::chain(q, static_cast<V>((by == 1.0 ? -q : -q * (1.0 / by)) * q), a);
  }
  return detail::chain(q, static_cast<V>(-q / a.value), a);
}
#define MAKEGOOD_COMPARED(op)                                                                                              \
  MAKEGOOD_SPARSE_PAIR auto operator op(const sparse<A, N, V>& a, const sparse<B, N, V>& b) { return a.value op b.value; } \
  MAKEGOOD_SPARSE_FLAT auto operator op(const sparse<A, N, V>& a, const C& c) { return a.value op detail::flat<V>(c); }    \
  MAKEGOOD_SPARSE_FLAT auto operator op(const C& c, const sparse<A, N, V>& a) { return detail::flat<V>(c) op a.value; }
MAKEGOOD_COMPARED(<)
MAKEGOOD_COMPARED(<=)
MAKEGOOD_COMPARED(>)
MAKEGOOD_COMPARED(>=)
#undef MAKEGOOD_COMPARED
template <class M, unsigned A, unsigned B, int N, class V>
MAKEGOOD_INLINE constexpr auto select(const M& condition, const sparse<A, N, V>& yes, const sparse<B, N, V>& no) {
  sparse<(A | B), N, V> r;
  r.value = select(condition, yes.value, no.value);
  r.for_each([&]<int K>() MAKEGOOD_LAMBDA_INLINE { r.partial[r.template place<K>] = select(condition, yes.template slope<K>(), no.template slope<K>()); });
  return r;
}
template <class M, unsigned A, int N, class V, class C>
  requires has_no_slope<C, V>
MAKEGOOD_INLINE constexpr auto select(const M& condition, const sparse<A, N, V>& yes, const C& no) {
  return select(condition, yes, sparse<0, N, V>(detail::flat<V>(no)));
}
template <class M, unsigned A, int N, class V, class C>
  requires has_no_slope<C, V>
MAKEGOOD_INLINE constexpr auto select(const M& condition, const C& yes, const sparse<A, N, V>& no) {
  return select(condition, sparse<0, N, V>(detail::flat<V>(yes)), no);
}

#undef MAKEGOOD_SPARSE_ONE
#define MAKEGOOD_SPARSE_ONE template <unsigned A, int N, class V> MAKEGOOD_INLINE
MAKEGOOD_SPARSE_ONE auto log(const sparse<A, N, V>& x) { return detail::chain(V(log(x.value)), V(1.0 / x.value), x); }
/// One division for the slopes 1/a and -1/b, which no quotient of usual numbers over- or underflows.
template <unsigned A, unsigned B, int N, class V>
MAKEGOOD_INLINE auto log_quotient(const sparse<A, N, V>& a, const sparse<B, N, V>& b) {
  const V both = 1.0 / (a.value * b.value), of_a = b.value * both, of_b = a.value * both;
  return detail::joined(V(log(V(a.value / b.value))), a, b, [&](const V& s, const V& t) MAKEGOOD_LAMBDA_INLINE { return of_a * s - of_b * t; },
                        [&](const V& s) MAKEGOOD_LAMBDA_INLINE { return of_a * s; }, [&](const V& t) MAKEGOOD_LAMBDA_INLINE { return -(of_b * t); });
}
MAKEGOOD_SPARSE_ONE auto log10(const sparse<A, N, V>& x) { return detail::chain(V(log10(x.value)), V(0.43429448190325182765 / x.value), x); }
MAKEGOOD_SPARSE_ONE auto log1p(const sparse<A, N, V>& x) { return detail::chain(V(log1p(x.value)), V(1.0 / (1.0 + x.value)), x); }
MAKEGOOD_SPARSE_ONE auto exp(const sparse<A, N, V>& x) {
  const V e = exp(x.value);
  return detail::chain(e, e, x);
}
MAKEGOOD_SPARSE_ONE auto sqrt(const sparse<A, N, V>& x) {
  const V r = sqrt(x.value);
  return detail::chain(r, V(0.5 / r), x);
}
MAKEGOOD_SPARSE_ONE auto cbrt(const sparse<A, N, V>& x) {
  const V r = cbrt(x.value);
  return detail::chain(r, V(1.0 / (3.0 * r * r)), x);
}
MAKEGOOD_SPARSE_ONE auto pow(const sparse<A, N, V>& x, double y) { return detail::chain(V(pow(x.value, V(y))), V(y * pow(x.value, V(y - 1.0))), x); }
MAKEGOOD_SPARSE_ONE auto damped_pow(const sparse<A, N, V>& x, double y) { return detail::chain(V(damped_pow(x.value, y)), V(y * damped_pow(x.value, y - 1.0)), x); }
/// x^(P/D): see power() of formulas.
template <int P, int D = 1, unsigned A, int N, class V>
MAKEGOOD_INLINE auto power(const sparse<A, N, V>& x) {
  return detail::chain(V(power<P, D>(x.value)), V(P == 0 ? V(0.0) : V(static_cast<double>(P) / D * power<P - D, D>(x.value))), x);
}
MAKEGOOD_SPARSE_ONE auto tanh(const sparse<A, N, V>& x) {
  const V r = tanh(x.value);
  return detail::chain(r, V(1.0 - r * r), x);
}
MAKEGOOD_SPARSE_ONE auto sin(const sparse<A, N, V>& x) { return detail::chain(V(sin(x.value)), V(cos(x.value)), x); }
MAKEGOOD_SPARSE_ONE auto cos(const sparse<A, N, V>& x) { return detail::chain(V(cos(x.value)), V(-sin(x.value)), x); }
MAKEGOOD_SPARSE_ONE auto fabs(const sparse<A, N, V>& x) { return select(x.value < V(0.0), -x, x); }

#undef MAKEGOOD_SPARSE_ONE
#undef MAKEGOOD_SPARSE_PAIR
#undef MAKEGOOD_SPARSE_FLAT
#undef MAKEGOOD_LIKEWISE
#undef MAKEGOOD_LIKEWISE_TWO

/// How a formula's inner check reads one: by its value.
template <unsigned A, int N>
constexpr double plain_value(const sparse<A, N, double>& x) {
  return x.value;
}
/// A word's numbers have no slope.
template <unsigned A, int N>
struct chosen<sparse<A, N, double>> {
  const choice_table* table;
  int index;
  constexpr sparse<0, N, double> operator[](std::size_t c) const { return table->rows[static_cast<std::size_t>(index)].values[c]; }
};

}  // namespace v1
}  // namespace makegood

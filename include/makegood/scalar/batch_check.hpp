// SPDX-License-Identifier: MIT
// Checks over arrays, and formulas over arrays with their slopes: the same kernels evaluated with lanes inside dual numbers.
// Included by the batch files alone, once an instruction set; everything here lies in that instruction set's namespace.
#pragma once
#include "../verdict.hpp"
#include "batch.hpp"
#include "columns.hpp"
#include "dual.hpp"
#include "sparse.hpp"

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {

/// Lanes that remember which of them left a range of validity.
template <int W>
struct flagged {
  lanes<W> value{};
  lanes_mask<W> doubt{};

  MAKEGOOD_INLINE flagged() = default;
  MAKEGOOD_INLINE flagged(double x) : value(x) {}
  MAKEGOOD_INLINE flagged(const literal& x) : value(x.value) {}
  MAKEGOOD_INLINE flagged(const lanes<W>& x) : value(x) {}
  MAKEGOOD_INLINE flagged(const lanes<W>& x, const lanes_mask<W>& d) : value(x), doubt(d) {}

  MAKEGOOD_INLINE friend flagged operator+(const flagged& a, const flagged& b) { return {a.value + b.value, a.doubt | b.doubt}; }
  MAKEGOOD_INLINE friend flagged operator-(const flagged& a, const flagged& b) { return {a.value - b.value, a.doubt | b.doubt}; }
  MAKEGOOD_INLINE friend flagged operator*(const flagged& a, const flagged& b) { return {a.value * b.value, a.doubt | b.doubt}; }
  MAKEGOOD_INLINE friend flagged operator/(const flagged& a, const flagged& b) { return {a.value / b.value, a.doubt | b.doubt}; }
  MAKEGOOD_INLINE friend flagged operator-(const flagged& a) { return {-a.value, a.doubt}; }
  MAKEGOOD_INLINE friend lanes_mask<W> operator<(const flagged& a, const flagged& b) { return a.value < b.value; }
  MAKEGOOD_INLINE friend lanes_mask<W> operator<=(const flagged& a, const flagged& b) { return a.value <= b.value; }
  MAKEGOOD_INLINE friend lanes_mask<W> operator>(const flagged& a, const flagged& b) { return a.value > b.value; }
  MAKEGOOD_INLINE friend lanes_mask<W> operator>=(const flagged& a, const flagged& b) { return a.value >= b.value; }
  /// The branch that is not taken raises no doubt.
  MAKEGOOD_INLINE friend flagged select(const lanes_mask<W>& m, const flagged& yes, const flagged& no) {
    return {select(m, yes.value, no.value), (m && yes.doubt) || (!m && no.doubt)};
  }
#define MAKEGOOD_FUNCTION(name) \
  MAKEGOOD_INLINE friend flagged name(const flagged& x) { return {name(x.value), x.doubt}; }
  MAKEGOOD_FUNCTION(log)
  MAKEGOOD_FUNCTION(log10)
  MAKEGOOD_FUNCTION(log1p)
  MAKEGOOD_FUNCTION(exp)
  MAKEGOOD_FUNCTION(sqrt)
  MAKEGOOD_FUNCTION(cbrt)
  MAKEGOOD_FUNCTION(tanh)
  MAKEGOOD_FUNCTION(sin)
  MAKEGOOD_FUNCTION(cos)
  MAKEGOOD_FUNCTION(fabs)
#undef MAKEGOOD_FUNCTION
  MAKEGOOD_INLINE friend flagged pow(const flagged& x, double y) { return {pow(x.value, lanes<W>(y)), x.doubt}; }
  MAKEGOOD_INLINE friend flagged damped_pow(const flagged& x, double y) { return {damped_pow(x.value, y), x.doubt}; }
  template <int P, int D = 1>
  MAKEGOOD_INLINE friend flagged power(const flagged& x) { return {power<P, D>(x.value), x.doubt}; }
};

}  // namespace MAKEGOOD_ISA_TAG

/// A word among arrays of the richer kinds: its numbers have no slope and no doubt.
template <int N, int W>
struct chosen<dual<N, MAKEGOOD_ISA_TAG::lanes<W>>> : chosen<MAKEGOOD_ISA_TAG::lanes<W>> {
  MAKEGOOD_INLINE dual<N, MAKEGOOD_ISA_TAG::lanes<W>> operator[](std::size_t c) const { return chosen<MAKEGOOD_ISA_TAG::lanes<W>>::operator[](c); }
};
template <unsigned A, int N, class V>
  requires(!std::is_same_v<V, double>)
struct chosen<sparse<A, N, V>> : chosen<V> {
  MAKEGOOD_INLINE sparse<0, N, V> operator[](std::size_t c) const { return chosen<V>::operator[](c); }
};
template <int W>
struct chosen<MAKEGOOD_ISA_TAG::flagged<W>> : chosen<MAKEGOOD_ISA_TAG::lanes<W>> {
  MAKEGOOD_INLINE MAKEGOOD_ISA_TAG::flagged<W> operator[](std::size_t c) const { return chosen<MAKEGOOD_ISA_TAG::lanes<W>>::operator[](c); }
};

MAKEGOOD_ISA_NAMESPACE {

template <int N, int W>
MAKEGOOD_INLINE const lanes<W>& plainly(const dual<N, lanes<W>>& x) { return x.value; }
template <int W>
MAKEGOOD_INLINE const lanes<W>& plainly(const flagged<W>& x) { return x.value; }
template <unsigned A, int N, class V>
MAKEGOOD_INLINE const V& plainly(const sparse<A, N, V>& x) { return x.value; }
template <unsigned A, int N, class V>
MAKEGOOD_INLINE const chosen<V>& plainly(const chosen<sparse<A, N, V>>& x) { return x; }
template <int N, int W>
MAKEGOOD_INLINE const chosen<lanes<W>>& plainly(const chosen<dual<N, lanes<W>>>& x) { return x; }
template <int W>
MAKEGOOD_INLINE const chosen<lanes<W>>& plainly(const chosen<flagged<W>>& x) { return x; }

/// Which lanes lie outside a range of validity.
template <class F, class Extras, int W, std::size_t... I, class... X>
MAKEGOOD_INLINE lanes_mask<W> doubted(const F& f, const Extras& extras, const lanes_mask<W>& all, std::index_sequence<I...>, const X&... x) {
  lanes_mask<W> valid = all;
  const auto look = [&valid](const argument& a, const auto& y) MAKEGOOD_LAMBDA_INLINE {
    if constexpr (requires { y.v; })
      if (a.valid.low > a.permitted.low || a.valid.high < a.permitted.high) valid = valid & contained(a.valid, y);
  };
  (look(f.args[I], x), ...);
  return !extras.valid_all(valid, x...);
}

}  // namespace MAKEGOOD_ISA_TAG

template <int N, int W>
struct inner_call<dual<N, MAKEGOOD_ISA_TAG::lanes<W>>> {
  template <class F, class... X>
  static auto run(const F& f, const X&... x) {
    using K = dual<N, MAKEGOOD_ISA_TAG::lanes<W>>;
    return f.template with_all<K>(
        [&f](const auto&... y) MAKEGOOD_LAMBDA_INLINE {
          const auto ok = MAKEGOOD_ISA_TAG::permitted(f, MAKEGOOD_ISA_TAG::lanes_mask<W>(true), std::make_index_sequence<F::count>{}, MAKEGOOD_ISA_TAG::plainly(y)...);
          return select(ok, static_cast<K>(f.unchecked(y...)), K(no_number));
        },
        x...);
  }
};
template <unsigned A, int N, class V>
  requires(!std::is_same_v<V, double>)
struct inner_call<sparse<A, N, V>> {
  template <class F, class... X>
  MAKEGOOD_INLINE static auto run(const F& f, const X&... x) {
    using K = sparse<A, N, V>;
    return f.template with_all<K>(
        [&f](const auto&... y) MAKEGOOD_LAMBDA_INLINE {
          const auto ok = MAKEGOOD_ISA_TAG::permitted(f, typename V::mask(true), std::make_index_sequence<F::count>{}, MAKEGOOD_ISA_TAG::plainly(y)...);
          return select(ok, static_cast<K>(f.unchecked(y...)), K(no_number));
        },
        x...);
  }
};
template <int W>
struct inner_call<MAKEGOOD_ISA_TAG::flagged<W>> {
  template <class F, class... X>
  static auto run(const F& f, const X&... x) {
    using K = MAKEGOOD_ISA_TAG::flagged<W>;
    return f.template with_all<K>(
        [&f](const auto&... y) MAKEGOOD_LAMBDA_INLINE {
          constexpr auto all = std::make_index_sequence<F::count>{};
          const MAKEGOOD_ISA_TAG::lanes_mask<W> everywhere(true);
          const auto ok = MAKEGOOD_ISA_TAG::permitted(f, everywhere, all, MAKEGOOD_ISA_TAG::plainly(y)...);
          const K inner = f.unchecked(y...);
          const auto own = MAKEGOOD_ISA_TAG::doubted(f, f, everywhere, all, MAKEGOOD_ISA_TAG::plainly(y)...);
          return K(select(ok, inner.value, MAKEGOOD_ISA_TAG::lanes<W>(no_number)), inner.doubt | own);
        },
        x...);
  }
};

MAKEGOOD_ISA_NAMESPACE {

/// One number for all rows, or one a row; beyond the end the last is repeated.
template <int W>
MAKEGOOD_INLINE lanes<W> rows_of(const double* p, bool wide, std::size_t k, std::size_t end) {
  if (!wide) return lanes<W>(*p);
  if (k + W <= end) [[likely]] return lanes<W>::load(p + k);
  lanes<W> r;
  for (std::size_t i = 0; i < W; ++i) r.v[i] = p[k + i < end ? k + i : end - 1];
  return r;
}
template <int W>
MAKEGOOD_INLINE lanes<W> codes_of(const signed char* p, std::size_t k, std::size_t end) {
  lanes<W> r;
  for (std::size_t i = 0; i < W; ++i) r.v[i] = p[k + i < end ? k + i : end - 1];
  return r;
}
template <int W>
MAKEGOOD_INLINE void store_rows(double* p, const lanes<W>& x, std::size_t k, std::size_t end) {
  if (k + W <= end) [[likely]] x.store(p + k);
  else
    for (std::size_t i = 0; k + i < end; ++i) p[k + i] = x.v[i];
}
template <int W>
MAKEGOOD_INLINE void store_codes(unsigned char* p, const lanes<W>& x, std::size_t k, std::size_t end) {
  const auto b = __builtin_convertvector(x.v, typename vector_types<W>::bytes);
  if (k + W <= end) [[likely]] __builtin_memcpy(p + k, &b, W);
  else
    for (std::size_t i = 0; k + i < end; ++i) p[k + i] = b[i];
}

MAKEGOOD_INLINE twin<lanes<>> twin_rows(const double* p, bool wide, std::size_t k, std::size_t end) {
  constexpr int W = register_lanes;
  if (!wide) return twin<lanes<>>(*p);
  return {rows_of<W>(p, wide, k, end), rows_of<W>(p, wide, k + W, end)};
}
MAKEGOOD_INLINE void store_twin(double* p, const twin<lanes<>>& x, std::size_t k, std::size_t end) {
  store_rows(p, x.a, k, end);
  store_rows(p, x.b, k + register_lanes, end);
}

/// A formula over arrays with the slopes by its arguments.
template <const auto& Item>
struct batch_slopes {
  using F = std::remove_cvref_t<decltype(Item)>;
  static constexpr int N = static_cast<int>(F::count);
  using V = twin<lanes<>>;
  using M = typename V::mask;
  static constexpr int W = V::width;
  using K = sparse<(1u << N) - 1u, N, V>;  // of the result; on the way a number has the slopes that it can have

  static std::ptrdiff_t run(const slope_columns& c, std::size_t begin, std::size_t end) {
    return loop(c, begin, end, std::make_index_sequence<F::count>{});
  }

 private:
  template <std::size_t I>
  MAKEGOOD_INLINE static auto bound(const V* x) {
    if constexpr (F::is_choice[I]) return chosen<sparse<0, N, V>>{{Item.args[I].table, x[I]}};
    else return sparse_input<static_cast<int>(I), N>(x[I]);
  }
  // flatten: kernel and relations come inside, so that what both compute is computed once and no slope goes through memory
  template <std::size_t... I>
  [[gnu::flatten]] static std::ptrdiff_t loop(const slope_columns& c, std::size_t begin, std::size_t end, std::index_sequence<I...> all) {
    for (std::size_t k = begin; k < end; k += W) {
      const M bad = one(c, k, end, all);
      if (!c.nan_for_errors && any(bad)) [[unlikely]]
        for (int i = 0; i < W; ++i)
          if (bad[i]) return static_cast<std::ptrdiff_t>(k) + i;
    }
    return -1;
  }
  template <std::size_t... I>
  MAKEGOOD_INLINE static M one(const slope_columns& c, std::size_t k, std::size_t end, std::index_sequence<I...> all) {
    V x[] = {twin_rows(c.x[I], c.wide[I], k, end)...};
    const M there = (M(true) & ... & (x[I] == x[I]));
    ((F::is_choice[I] ? void(x[I] = select(there, x[I], V(0.0))) : void()), ...);
    const K y = static_cast<K>(Item.kernel(bound<I>(x)...));
    const M ok = permitted(Item, there, all, plainly(bound<I>(x))...) & (y.value - y.value == V(0.0));
    const V none(no_number);
    if (c.value) store_twin(c.value, select(ok, y.value, none), k, end);
    if (c.slopes) ((c.slopes[I] ? store_twin(c.slopes[I], select(ok, y.partial[I], none), k, end) : void()), ...);
    if (c.standard_uncertainty) {  // the slopes stay in registers
      V variance(0.0);
      const auto add = [&](const V& slope, std::size_t a) MAKEGOOD_LAMBDA_INLINE {
        if (!c.u[a]) return;
        const V part = slope * twin_rows(c.u[a], c.u_wide[a], k, end);
        variance = variance + part * part;
      };
      (add(y.partial[I], I), ...);
      store_twin(c.standard_uncertainty, select(ok, sqrt(variance), none), k, end);
    }
    return there & !ok;
  }
};

/// A check over arrays: one pass from readings to outcomes.
template <const auto& Item>
struct batch_check {
  using F = std::remove_cvref_t<decltype(Item)>;
  static constexpr int W = register_lanes, N = static_cast<int>(F::count);
  using V = lanes<W>;
  using M = lanes_mask<W>;
  using K = dual<N, V>;
  using Q = flagged<W>;

  static std::ptrdiff_t run(const check_columns& c, std::size_t begin, std::size_t end) {
    for (std::size_t k = begin; k < end; k += W) {
      const M bad = one(c, k, end, std::make_index_sequence<F::count>{});
      if (!c.nan_for_errors && any(bad)) [[unlikely]]
        for (int i = 0; i < W; ++i)
          if (bad[i]) return static_cast<std::ptrdiff_t>(k) + i;
    }
    return -1;
  }

 private:
  template <std::size_t I, class T>
  MAKEGOOD_INLINE static auto bound(const V* x, const T* in) {
    if constexpr (!F::is_choice[I]) return in[I];
    else if constexpr (std::is_same_v<T, V>) return chosen<T>{Item.args[I].table, x[I]};
    else return chosen<T>{{Item.args[I].table, x[I]}};
  }
  template <class T>
  struct ends {
    T lower, upper;
  };
  template <class T, std::size_t... I>
  MAKEGOOD_INLINE static ends<T> limits(const check_columns& c, const V& row, const V* x, const T* in, std::index_sequence<I...>) {
    const auto y = Item.limit(chosen<T>{{c.rule, row}}, bound<I>(x, in)...);
    if constexpr (requires { y.lower; }) return {static_cast<T>(y.lower), static_cast<T>(y.upper)};
    else return {static_cast<T>(y), static_cast<T>(y)};
  }
  template <std::size_t... I>
  static M one(const check_columns& c, std::size_t k, std::size_t end, std::index_sequence<I...> all) {
    const V zero(0.0), none(no_number);
    V x[F::count];
    M there(true), no_trip[F::count], out[F::count];
    circumstances<M> is{M(false), M(false), M(false), M(false), M(false), M(true), c.two_sided, c.by_probability, c.accept, c.reject};
    for (std::size_t a = 0; a < F::count; ++a) {
      x[a] = rows_of<W>(c.x[a], c.wide[a], k, end);
      if (c.states[a]) {
        const V s = codes_of<W>(c.states[a], k, end);
        no_trip[a] = s == code(reading::state::no_trip, zero);
        const M below = s == code(reading::state::below, zero);
        out[a] = no_trip[a] | below | (s == code(reading::state::above, zero));
        is.beyond = is.beyond | out[a];
        is.beyond_larger = (out[a] && !below) || (!out[a] && is.beyond_larger);
        x[a] = select(no_trip[a], V(Item.args[a].permitted.high), x[a]);
        there = there & (out[a] | (s == code(reading::state::value, zero)));
      }
      there = there & (x[a] == x[a]);
    }
    K in[F::count];
    for (std::size_t a = 0; a < F::count; ++a) {
      if (F::is_choice[a]) x[a] = select(there, x[a], zero);
      in[a] = F::is_choice[a] ? K(x[a]) : K::input(x[a], static_cast<int>(a));
    }
    // the rule: the same for all rows, or by the word that selects it
    V row = zero;
    M ruled(true);
    V unruled = zero;
    if (c.condition >= 0) {
      row = x[c.condition];
      V flags;
      for (int i = 0; i < W; ++i) {
        const auto r = static_cast<std::size_t>(row.v[i]);
        const unsigned is_ = c.rule_is[r];
        is.has_lower.v[i] = -static_cast<std::int64_t>((is_ & check_columns::lower_limit) != 0);
        is.has_upper.v[i] = -static_cast<std::int64_t>((is_ & check_columns::upper_limit) != 0);
        is.strict.v[i] = -static_cast<std::int64_t>((is_ & check_columns::strict) != 0);
        ruled.v[i] = -static_cast<std::int64_t>((is_ & check_columns::no_rule) == 0);
        unruled.v[i] = c.rule_missing[r];
      }
    } else {
      const unsigned is_ = c.rule_is[0];
      is.has_lower = M((is_ & check_columns::lower_limit) != 0);
      is.has_upper = M((is_ & check_columns::upper_limit) != 0);
      is.strict = M((is_ & check_columns::strict) != 0);
      ruled = M((is_ & check_columns::no_rule) == 0);
      unruled = V(static_cast<double>(c.rule_missing[0]));
    }
    const M allowed = inside(there, all, bound<I>(x, x)...);
    M ok = Item.extras.holds_all(allowed & ruled, bound<I>(x, x)...);

    const K v = static_cast<K>(Item.value(bound<I>(x, in)...));
    const ends<K> l = limits<K>(c, row, x, in, all);
    ok = ok & (v.value - v.value == zero);
    ok = ok & (!is.has_lower || l.lower.value - l.lower.value == zero) & (!is.has_upper || l.upper.value - l.upper.value == zero);
    if (c.may_doubt) {
      Q q[F::count];
      for (std::size_t a = 0; a < F::count; ++a) q[a] = Q(x[a]);
      const ends<Q> ql = limits<Q>(c, row, x, q, all);
      is.doubtful = static_cast<Q>(Item.value(bound<I>(x, q)...)).doubt | ql.lower.doubt | ql.upper.doubt |
                    doubted(Item, Item.extras, M(true), all, bound<I>(x, x)...);
    }
    const auto doubt_of = [&](bool upper, V& u, V& direction) MAKEGOOD_LAMBDA_INLINE {
      u = direction = zero;
      const M& needed = upper ? is.has_upper : is.has_lower;
      if (!any(needed)) return;
      V slope[F::count];
      for (int a = 0; a < N; ++a) slope[a] = upper ? l.upper.partial[a] - v.partial[a] : v.partial[a] - l.lower.partial[a];
      V variance = zero, sum = zero;
      for (std::size_t t = 0; t < c.term_count; ++t) {
        const auto& term = c.terms[t];
        const V size = term.column ? rows_of<W>(term.column, true, k, end) : V(term.size);
        V part = slope[term.argument] * (term.of_reading ? size * x[term.argument] : size);
        if (c.states[term.argument]) part = select(no_trip[term.argument], zero, part);
        sum = term.first ? part : sum + part;
        if (t + 1 == c.term_count || c.terms[t + 1].first) variance = variance + sum * sum;
      }
      u = sqrt(variance);
      ok = ok & (!needed || u - u == zero);
      for (std::size_t a = 0; a < F::count; ++a)
        if (c.states[a]) direction = select(out[a], slope[a], direction);
    };
    const detail::judged<V> j = detail::decide(v.value, l.lower.value, l.upper.value, is, doubt_of);
    const V undecided = code(outcome::undecided, zero);
    store_rows(c.value, select(ok, j.value, none), k, end);
    store_rows(c.lower, select(ok, j.lower, none), k, end);
    store_rows(c.upper, select(ok, j.upper, none), k, end);
    store_rows(c.margin, select(ok, j.margin, none), k, end);
    store_rows(c.standard_uncertainty, select(ok, j.standard_uncertainty, none), k, end);
    store_rows(c.probability, select(ok, j.probability, none), k, end);
    store_codes(c.outcome, select(ok, j.outcome, undecided), k, end);
    store_codes(c.plain, select(ok, j.plain, undecided), k, end);
    const V otherwise = select(allowed && !ruled, unruled, code(reason::not_measured, zero));
    store_codes(c.reason, select(ok, j.reason, otherwise), k, end);
    return there && (!allowed || (ruled && !ok));
  }
  template <std::size_t... I, class... X>
  MAKEGOOD_INLINE static M inside(M ok, std::index_sequence<I...>, const X&... x) {
    const auto look = [&ok](const argument& a, const auto& y) MAKEGOOD_LAMBDA_INLINE {
      if constexpr (requires { y.v; }) ok = ok & contained(a.permitted, y);
    };
    (look(Item.args[I], x), ...);
    return ok;
  }
  template <class E>
  MAKEGOOD_INLINE static V code(E e, const V& like) { return detail::code(e, like); }
  template <class T>
  using circumstances = detail::circumstances<T>;
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Formulas over arrays: the same kernels evaluated with lanes, ranges and relations in the same pass.
// Included by the batch files alone, once an instruction set; everything here lies in that instruction set's namespace.
#pragma once
#include <cstddef>
#include <utility>
#include "../formula.hpp"
#include "lanes.hpp"

namespace makegood {
inline namespace v1 {

/// A word among arrays: the row is chosen lane by lane.
template <int W>
struct chosen<MAKEGOOD_ISA_TAG::lanes<W>> {
  const choice_table* table;
  MAKEGOOD_ISA_TAG::lanes<W> index;
  MAKEGOOD_INLINE MAKEGOOD_ISA_TAG::lanes<W> operator[](std::size_t c) const {
    if (table->rows.size() == 1) return table->rows.data()->values.data()[c];
    MAKEGOOD_ISA_TAG::lanes<W> r;
    for (int i = 0; i < W; ++i) r.v[i] = table->rows.data()[static_cast<std::size_t>(index.v[i])].values.data()[c];
    return r;
  }
};

MAKEGOOD_ISA_NAMESPACE {

/// A range as a mask. NaN lies in no range.
template <int W>
MAKEGOOD_INLINE lanes_mask<W> contained(const range& r, const lanes<W>& x) {
  const lanes<W> low(r.low), high(r.high);
  return (r.low_open ? x > low : x >= low) & (r.high_open ? x < high : x <= high);
}
template <class F, int W, std::size_t... I, class... X>
MAKEGOOD_INLINE lanes_mask<W> permitted(const F& f, const lanes_mask<W>& so_far, std::index_sequence<I...>, const X&... x) {
  lanes_mask<W> ok = so_far;
  const auto look = [&ok](const argument& a, const auto& y) {
    if constexpr (requires { y.v; }) ok = ok & contained(a.permitted, y);
  };
  (look(f.args[I], x), ...);
  return f.holds_all(ok, x...);
}

}  // namespace MAKEGOOD_ISA_TAG

/// A formula inside a formula: its ranges count, lane by lane.
template <int W>
struct inner_call<MAKEGOOD_ISA_TAG::lanes<W>> {
  template <class F, class... X>
  MAKEGOOD_INLINE static MAKEGOOD_ISA_TAG::lanes<W> run(const F& f, const X&... x) {
    using K = MAKEGOOD_ISA_TAG::lanes<W>;
    return f.template with_all<K>(
        [&f](const auto&... y) MAKEGOOD_LAMBDA_INLINE {
          const auto ok = MAKEGOOD_ISA_TAG::permitted(f, MAKEGOOD_ISA_TAG::lanes_mask<W>(true), std::make_index_sequence<F::count>{}, y...);
          return select(ok, f.unchecked(y...), K(no_number));
        },
        x...);
  }
};

MAKEGOOD_ISA_NAMESPACE {

/// One formula over strided arrays (steps in bytes).
template <const auto& Item>
struct batch {
  using F = std::remove_cvref_t<decltype(Item)>;
  static constexpr int W = register_lanes;
  using K = lanes<W>;

  /// NaN in gives NaN out; what is refused gives NaN. Returns the first element refused, or -1.
  static std::ptrdiff_t run(const void*, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, bool nan_for_errors) {
    lanes_mask<W> refused(false);
    for (std::ptrdiff_t k = 0; k < n; k += W) refused = refused | one(data, steps, n, k);
    if (nan_for_errors || !any(refused)) return -1;
    for (std::ptrdiff_t k = 0;; k += W) {  // which one: looked for only now, so that the loop above stays short
      const lanes_mask<W> bad = one(data, steps, n, k);
      for (int i = 0; i < W; ++i)
        if (bad[i]) return k + i;
    }
  }

 private:
  MAKEGOOD_INLINE static double element(const char* p) {
    double x;
    __builtin_memcpy(&x, p, sizeof x);
    return x;
  }
  MAKEGOOD_INLINE static K load(const char* p, std::ptrdiff_t step) {
    if (step == 0) return K(element(p));
    K r;
    if (step == sizeof(double)) {
      __builtin_memcpy(&r.v, p, sizeof r.v);
    } else {
      for (int i = 0; i < W; ++i) r.v[i] = element(p + i * step);
    }
    return r;
  }
  template <std::size_t I>
  MAKEGOOD_INLINE static auto bound(const K* x) {
    if constexpr (F::is_choice[I]) return chosen<K>{Item.args[I].table, x[I]};
    else return x[I];
  }
  /// Elements k to k + W, or as many as there are (then the last is repeated); which were refused.
  MAKEGOOD_INLINE static lanes_mask<W> one(char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, std::ptrdiff_t k) {
    K x[F::count];
    if (k + W <= n) [[likely]] {
      for (std::size_t a = 0; a < F::count; ++a) x[a] = load(data[a] + k * steps[a], steps[a]);
    } else {
      for (std::size_t a = 0; a < F::count; ++a)
        for (int i = 0; i < W; ++i) x[a].v[i] = element(data[a] + (k + i < n ? k + i : n - 1) * steps[a]);
    }
    return evaluate(x, data[F::count] + k * steps[F::count], steps[F::count], n - k, std::make_index_sequence<F::count>{});
  }
  template <std::size_t... I>
  MAKEGOOD_INLINE static lanes_mask<W> evaluate(const K* x, char* out, std::ptrdiff_t step, std::ptrdiff_t left, std::index_sequence<I...> all) {
    lanes_mask<W> there(true);
    ((there = there & (x[I] == x[I])), ...);
    // a word that was not measured must still name a row while it is looked up
    K safe[F::count];
    ((safe[I] = F::is_choice[I] ? select(there, x[I], K(0.0)) : x[I]), ...);
    lanes_mask<W> ok = permitted(Item, there, all, bound<I>(safe)...);
    const K y = static_cast<K>(Item.kernel(bound<I>(safe)...));
    ok = ok & (y - y == K(0.0));
    const K r = select(ok, y, K(no_number));
    if (left >= W && step == sizeof(double)) [[likely]] {
      __builtin_memcpy(out, &r.v, sizeof r.v);
    } else {
      for (int i = 0; i < W && i < left; ++i) {
        const double v = r.v[i];
        __builtin_memcpy(out + i * step, &v, sizeof v);
      }
    }
    return there & !ok;
  }
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

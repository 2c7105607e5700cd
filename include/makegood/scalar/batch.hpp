// SPDX-License-Identifier: MIT
// Formulas over arrays: the same kernels evaluated with lanes, ranges and relations in the same pass.
// Included by the batch files alone, once an instruction set; everything here lies in that instruction set's namespace.
#pragma once
#include <cstddef>
#include <cstdint>
#include <utility>
#include "../formula.hpp"
#include "twin.hpp"

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
template <class L>
struct chosen<MAKEGOOD_ISA_TAG::twin<L>> {
  const choice_table* table;
  MAKEGOOD_ISA_TAG::twin<L> index;
  MAKEGOOD_INLINE MAKEGOOD_ISA_TAG::twin<L> operator[](std::size_t c) const {
    return {chosen<L>{table, index.a}[c], chosen<L>{table, index.b}[c]};
  }
};

MAKEGOOD_ISA_NAMESPACE {

/// A range as a mask. NaN lies in no range.
template <class K>
MAKEGOOD_INLINE typename K::mask contained(const range& r, const K& x) {
  const K low(r.low), high(r.high);
  return (r.low_open ? x > low : x >= low) & (r.high_open ? x < high : x <= high);
}
/// Ranges and relations as a mask. NaN is not permitted.
template <class F, class Mask, std::size_t... I, class... X>
MAKEGOOD_INLINE Mask permitted(const F& f, const Mask& so_far, std::index_sequence<I...>, const X&... x) {
  Mask ok = so_far;
  const auto look = [&ok](const argument& a, const auto& y) MAKEGOOD_LAMBDA_INLINE {
    if constexpr (requires { y < y; }) ok = ok & contained(a.permitted, y);
  };
  (look(f.args[I], x), ...);
  return f.holds_all(ok, x...);
}

}  // namespace MAKEGOOD_ISA_TAG

/// A formula inside a formula: its ranges count, lane by lane.
namespace detail {
template <class K>
struct inner_lanes {
  template <class F, class... X>
  MAKEGOOD_INLINE static K run(const F& f, const X&... x) {
    return f.template with_all<K>(
        [&f](const auto&... y) MAKEGOOD_LAMBDA_INLINE {
          const auto ok = MAKEGOOD_ISA_TAG::permitted(f, typename K::mask(true), std::make_index_sequence<F::count>{}, y...);
          return select(ok, f.unchecked(y...), K(no_number));
        },
        x...);
  }
};
}  // namespace detail
template <int W>
struct inner_call<MAKEGOOD_ISA_TAG::lanes<W>> : detail::inner_lanes<MAKEGOOD_ISA_TAG::lanes<W>> {};
template <class L>
struct inner_call<MAKEGOOD_ISA_TAG::twin<L>> : detail::inner_lanes<MAKEGOOD_ISA_TAG::twin<L>> {};

MAKEGOOD_ISA_NAMESPACE {

/// One formula over whole twins of registers. Argument a lies from from[a] on; step[a] is the size of a twin, or 0 for one that stays.
/// Says whether all elements have a result; what is refused gives NaN, and so does NaN.
using register_loop = bool (*)(const char* const* from, const std::ptrdiff_t* step, char* to, std::ptrdiff_t twins);

/// Any strided arrays (steps in bytes) brought into groups of W elements. What is not contiguous is copied block by block.
/// NaN in gives NaN out; what is refused gives NaN. Returns the first element refused, or -1.
template <std::size_t Count, class K>
std::ptrdiff_t over_arrays(register_loop loop, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, bool nan_for_errors) {
  constexpr std::ptrdiff_t size = sizeof(double), whole = 1024, copied = 128;
  constexpr int W = K::width;
  static_assert(whole % W == 0 && copied % W == 0);
  alignas(64) double same[Count][W], copy[Count + 1][copied];
  const auto element = [](const char* p) MAKEGOOD_LAMBDA_INLINE {
    double x;
    __builtin_memcpy(&x, p, sizeof x);
    return x;
  };
  bool plain = steps[Count] == size;  // everything can stay where it is
  for (std::size_t a = 0; a < Count; ++a) {
    if (steps[a] == 0) {
      for (int i = 0; i < W; ++i) same[a][i] = element(data[a]);
    } else {
      plain = plain && steps[a] == size && (data[a] + n * size <= data[Count] || data[Count] + n * size <= data[a]);
    }
  }
  std::ptrdiff_t refused = -1;
  for (std::ptrdiff_t k = 0; k < n;) {
    const std::ptrdiff_t left = n - k;
    // so many go ahead that long results are then written to whole cache lines
    const std::ptrdiff_t ahead = k == 0 && n >= whole ? static_cast<std::ptrdiff_t>((0 - reinterpret_cast<std::uintptr_t>(data[Count])) % 64) / size : 0;
    const bool direct = plain && left >= W && ahead == 0;
    const std::ptrdiff_t m = direct ? (left < whole ? left - left % W : whole) : ahead > 0 && plain ? ahead : (left < copied ? left : copied);
    const char* from[Count];
    std::ptrdiff_t step[Count];
    for (std::size_t a = 0; a < Count; ++a) {
      from[a] = data[a] + k * steps[a];
      step[a] = steps[a] == 0 ? 0 : W * size;
      if (steps[a] == 0) {
        from[a] = reinterpret_cast<const char*>(same[a]);
      } else if (!direct) {
        for (std::ptrdiff_t i = 0; i < m; ++i) copy[a][i] = element(from[a] + i * steps[a]);
        for (std::ptrdiff_t i = m; i % W != 0; ++i) copy[a][i] = copy[a][m - 1];
        from[a] = reinterpret_cast<const char*>(copy[a]);
      }
    }
    char* const to = direct ? data[Count] + k * size : reinterpret_cast<char*>(copy[Count]);
    const bool all_there = loop(from, step, to, (m + W - 1) / W);
    if (!all_there && !nan_for_errors && refused < 0)
      for (std::ptrdiff_t g = 0; g * W < m && refused < 0; ++g) {  // no result although everything was measured
        const K y = K::load(reinterpret_cast<const double*>(to) + g * W);
        typename K::mask bad = y != y;
        for (std::size_t a = 0; a < Count; ++a) {
          const K x = K::load(reinterpret_cast<const double*>(from[a] + g * step[a]));
          bad = bad & (x == x);
        }
        if (any(bad)) {
          double which[W];
          select(bad, K(1.0), K(0.0)).store(which);
          for (int i = W - 1; i >= 0; --i) refused = which[i] != 0.0 ? k + g * W + i : refused;
        }
      }
    if (!direct)
      for (std::ptrdiff_t i = 0; i < m; ++i) __builtin_memcpy(data[Count] + (k + i) * steps[Count], &copy[Count][i], size);
    k += m;
  }
  return refused;
}

/// One formula over strided arrays.
template <const auto& Item>
struct batch {
  using F = std::remove_cvref_t<decltype(Item)>;
  using K = twin<lanes<>>;

  static std::ptrdiff_t run(const void*, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, bool nan_for_errors) {
    return over_arrays<F::count, K>(&loop, data, steps, n, nan_for_errors);
  }

 private:
  // flatten: kernel and relations come inside, so that what both compute is computed once (where nothing watches every access)
#if !defined(__SANITIZE_ADDRESS__)
  [[gnu::flatten]]
#endif
  static bool loop(const char* const* from, const std::ptrdiff_t* step, char* to, std::ptrdiff_t twins) {
    return loop_over(from, step, to, twins, std::make_index_sequence<F::count>{});
  }
  template <std::size_t... I>
  MAKEGOOD_INLINE static bool loop_over(const char* const* from, const std::ptrdiff_t* step, char* to, std::ptrdiff_t twins, std::index_sequence<I...> all_args) {
    const char* p[] = {from[I]...};
    const std::ptrdiff_t by[] = {step[I]...};
    typename K::mask there(true);
    for (; twins > 0; --twins, to += sizeof(K)) {
      const K x[] = {K::load(reinterpret_cast<const double*>(p[I]))...};
      ((p[I] += by[I]), ...);
      evaluate(x, there, all_args).store(reinterpret_cast<double*>(to));
    }
    return all(there);
  }
  template <std::size_t I>
  MAKEGOOD_INLINE static auto bound(const K* x) {
    if constexpr (F::is_choice[I]) return chosen<K>{Item.args[I].table, x[I]};
    else return x[I];
  }
  template <std::size_t... I>
  MAKEGOOD_INLINE static K evaluate(const K* given, typename K::mask& there, std::index_sequence<I...>) {
    typename K::mask ok(true);
    ((ok = ok & (F::is_choice[I] ? given[I] == given[I] : contained(Item.args[I].permitted, given[I]))), ...);
    K x[] = {given[I]...};
    // What was not measured or is not permitted gives way to usual numbers: no row beyond a table, and no lane for which the
    // mathematics would leave its short path.
    if (any(!ok)) [[unlikely]] ((x[I] = select(ok, x[I], K(F::is_choice[I] ? 0.0 : Item.args[I].usual.high))), ...);
    ok = Item.holds_all(ok, bound<I>(x)...);
    const K y = static_cast<K>(Item.kernel(bound<I>(x)...));
    ok = ok & (fabs(y) < K(vector_math::infinity));
    there = there & ok;
    return select(ok, y, K(no_number));
  }
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

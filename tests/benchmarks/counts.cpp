// SPDX-License-Identifier: MIT
// How many operations an element of each formula takes: the kernels themselves, evaluated with a number that counts.
// Compiled by run.py and called through ctypes. Counted is the portable way through vector_math.hpp, branches as select.
#include <cstring>
#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/sensing/list.hpp>

namespace {

struct {
  double divisions, roots, others;  // others: products, sums, comparisons, choices, operations on bits
} counted_so_far;

struct counted;
struct counted_mask {
  bool m = false;
  friend counted_mask operator&(counted_mask a, counted_mask b) { return ++counted_so_far.others, counted_mask{a.m && b.m}; }
  friend counted_mask operator|(counted_mask a, counted_mask b) { return ++counted_so_far.others, counted_mask{a.m || b.m}; }
  friend counted_mask operator&&(counted_mask a, counted_mask b) { return a & b; }
  friend counted_mask operator||(counted_mask a, counted_mask b) { return a | b; }
  friend counted_mask operator!(counted_mask a) { return ++counted_so_far.others, counted_mask{!a.m}; }
  friend bool any_of(counted_mask a) { return a.m; }
};
struct counted_bits {
  std::uint64_t b;
  explicit counted_bits(std::uint64_t x) : b(x) {}
#define OPERATOR(op) \
  friend counted_bits operator op(counted_bits x, counted_bits y) { return ++counted_so_far.others, counted_bits(x.b op y.b); }
  OPERATOR(+) OPERATOR(-) OPERATOR(&) OPERATOR(|) OPERATOR(^)
#undef OPERATOR
  friend counted_bits operator<<(counted_bits x, int n) { return ++counted_so_far.others, counted_bits(x.b << n); }
  friend counted_bits operator>>(counted_bits x, int n) { return ++counted_so_far.others, counted_bits(x.b >> n); }
  friend counted from_bits(counted_bits x);
};
struct counted {
  double v = 0.0;
  counted() = default;
  counted(double x) : v(x) {}
  counted(const makegood::literal& x) : v(x.value) {}
#define OPERATOR(type, op, what) \
  friend type operator op(const counted& x, const counted& y) { return ++counted_so_far.what, type{x.v op y.v}; }
  OPERATOR(counted, +, others) OPERATOR(counted, -, others) OPERATOR(counted, *, others) OPERATOR(counted, /, divisions)
  OPERATOR(counted_mask, <, others) OPERATOR(counted_mask, <=, others) OPERATOR(counted_mask, >, others)
  OPERATOR(counted_mask, >=, others) OPERATOR(counted_mask, ==, others) OPERATOR(counted_mask, !=, others)
#undef OPERATOR
  friend counted operator-(const counted& x) { return ++counted_so_far.others, counted(-x.v); }
  friend counted_bits to_bits(const counted& x) { return counted_bits(__builtin_bit_cast(std::uint64_t, x.v)); }
  template <class F>
  friend counted each_lane(F f, const counted& x) { return f(x.v); }
  friend counted pick(counted_mask m, const counted& yes, const counted& no) { return ++counted_so_far.others, m.m ? yes : no; }
  friend counted select(counted_mask m, const counted& yes, const counted& no) { return pick(m, yes, no); }
  friend counted square_root(const counted& x) { return ++counted_so_far.roots, counted(__builtin_sqrt(x.v)); }
  friend counted sqrt(const counted& x) { return square_root(x); }
  friend counted fabs(const counted& x) { return makegood::vector_math::magnitude_of(x); }
#define FUNCTION(name) \
  friend counted name(const counted& x) { return makegood::vector_math::name(x); }
  FUNCTION(log) FUNCTION(log10) FUNCTION(log1p) FUNCTION(exp) FUNCTION(expm1) FUNCTION(cbrt) FUNCTION(sin) FUNCTION(cos) FUNCTION(tanh)
#undef FUNCTION
  friend counted pow(const counted& x, const counted& y) { return makegood::vector_math::pow(x, y); }
};
counted from_bits(counted_bits x) { return counted(__builtin_bit_cast(double, x.b)); }

}  // namespace

template <>
struct makegood::vector_math::kind<counted> {
  using bits = counted_bits;
};
// No inner ranges are looked at: what is counted is the arithmetic.
template <>
struct makegood::inner_call<counted> {
  template <class F, class... X>
  static counted run(const F& f, const X&... x) { return f.unchecked(x...); }
};

namespace {

template <const auto& Item>
bool count(const char* name) {
  if constexpr (requires { Item.kernel; }) {
    using F = std::remove_cvref_t<decltype(Item)>;
    if (Item.result.name != name) return false;
    const auto run = [&]<std::size_t... I>(std::index_sequence<I...>) {
      constexpr bool words = (F::is_choice[I] || ...);
      if constexpr (!words) Item.kernel(counted(0.5 * (Item.args[I].usual.low + Item.args[I].usual.high))...);
      return !words;
    };
    return run(std::make_index_sequence<F::count>{});
  }
  return false;
}
template <class List>
struct all;
template <const auto&... Item>
struct all<makegood::list<Item...>> {
  static bool find(const char* name) { return (count<Item>(name) || ...); }
};

}  // namespace

/// Divisions, roots and other operations of one element; 0 where the formula is not there or takes words.
extern "C" int operations(const char* name, double* out) {
  counted_so_far = {};
  const bool found = all<makegood::electrical::entries>::find(name) || all<makegood::sensing::entries>::find(name) ||
                     all<makegood::heating::entries>::find(name) || all<makegood::air::entries>::find(name);
  std::memcpy(out, &counted_so_far, sizeof counted_so_far);
  return found;
}

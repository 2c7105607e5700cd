// SPDX-License-Identifier: MIT
// Not a number but a question: does anything that is calculated here have a range of validity? Both sides of every branch are asked.
// Core: asked once for each check, so that checks without such a range never look for one.
#pragma once
#include <span>
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {

struct probe {
  bool doubt = false;

  constexpr probe() = default;
  constexpr probe(double) {}
  constexpr probe(const literal&) {}
  struct truth {
    friend constexpr truth operator&&(truth, truth) { return {}; }
    friend constexpr truth operator||(truth, truth) { return {}; }
  };
  friend constexpr probe both(const probe& a, const probe& b) {
    probe r;
    r.doubt = a.doubt || b.doubt;
    return r;
  }
  friend constexpr probe operator+(const probe& a, const probe& b) { return both(a, b); }
  friend constexpr probe operator-(const probe& a, const probe& b) { return both(a, b); }
  friend constexpr probe operator*(const probe& a, const probe& b) { return both(a, b); }
  friend constexpr probe operator/(const probe& a, const probe& b) { return both(a, b); }
  friend constexpr probe operator-(const probe& a) { return a; }
  friend constexpr truth operator<(const probe&, const probe&) { return {}; }
  friend constexpr truth operator<=(const probe&, const probe&) { return {}; }
  friend constexpr truth operator>(const probe&, const probe&) { return {}; }
  friend constexpr truth operator>=(const probe&, const probe&) { return {}; }
  friend constexpr probe select(truth, const probe& yes, const probe& no) { return both(yes, no); }
#define MAKEGOOD_FUNCTION(name) \
  friend constexpr probe name(const probe& x) { return x; }
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
  friend constexpr probe pow(const probe& x, double) { return x; }
  friend constexpr probe damped_pow(const probe& x, double) { return x; }
  template <int P, int D = 1>
  friend constexpr probe power(const probe& x) { return x; }
};
constexpr double plain_value(const probe&) { return 0.0; }

namespace detail {
/// A range of validity that is narrower than what is permitted, or a relation of validity.
constexpr bool has_validity(std::span<const argument> args, bool relation) {
  for (const auto& a : args)
    if (!a.table && (a.valid.low > a.permitted.low || a.valid.high < a.permitted.high)) return true;
  return relation;
}
}  // namespace detail

template <>
struct inner_call<probe> {
  template <class F, class... X>
  static constexpr probe run(const F& f, const X&... x) {
    probe r = f.template with_all<probe>([&f](const auto&... y) { return f.unchecked(y...); }, x...);
    r.doubt = r.doubt || detail::has_validity(f.args, F::restricts);
    return r;
  }
};

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// A number with its named error sources: two readings of one meter are correlated by themselves.
// Core: goes into every formula and check, and comes out again. First-order propagation by exact derivatives.
#pragma once
#include <cmath>
#include <string>
#include <vector>
#include "formula.hpp"
#include "scalar/dual.hpp"
#include "text.hpp"

namespace makegood {
inline namespace v1 {

/// Value and the contributions of named error sources (standard uncertainties with sign, in the unit of the value).
struct measured {
  struct part {
    std::string source;
    double u;
  };
  double value = 0.0;
  std::vector<part> parts{};  ///< sorted by source, no source twice
  bool assumed = false;       ///< an instrument's statement was missing: the worst case of its class was taken

  measured() = default;
  measured(double x) : value(x) {}
  measured(const literal& x) : value(x.value) {}
  measured(double x, double standard_uncertainty, std::string source) : value(x) { add(std::move(source), standard_uncertainty); }
  /// A number without doubt, said by name.
  static measured exact(double x) { return measured(x); }

  double standard_uncertainty() const {
    double sum = 0.0;
    for (const auto& p : parts) sum += p.u * p.u;
    return std::sqrt(sum);
  }
  /// Adds c times a source's standard uncertainty; equal names add with their sign, so that they may cancel.
  void add(std::string source, double u) {
    auto at = parts.begin();
    while (at != parts.end() && at->source < source) ++at;
    if (at != parts.end() && at->source == source) at->u += u;
    else parts.insert(at, {std::move(source), u});
  }
};
inline double plain_value(const measured& x) { return x.value; }

/// Combines inputs by a gradient: value y, sensitivities c.
inline measured combine(double y, const double* c, const measured* x, std::size_t n) {
  measured r(y);
  for (std::size_t i = 0; i < n; ++i) {
    for (const auto& p : x[i].parts) r.add(p.source, c[i] * p.u);
    r.assumed = r.assumed || (x[i].assumed && !x[i].parts.empty());
  }
  return r;
}

/// A sum keeps every source, so that common ones add up or cancel.
inline measured operator+(const measured& a, const measured& b) {
  const measured x[] = {a, b};
  constexpr double c[] = {1.0, 1.0};
  return combine(a.value + b.value, c, x, 2);
}
inline measured operator*(double factor, const measured& a) { return combine(factor * a.value, &factor, &a, 1); }

namespace detail {
/// Value and exact gradient at x (choices have none).
template <class F>
double gradient(const F& f, const double* x, double* slopes) {
  constexpr int n = static_cast<int>(F::count);
  std::array<dual<n>, F::count> in;
  for (int i = 0; i < n; ++i)
    in[static_cast<std::size_t>(i)] = F::is_choice[static_cast<std::size_t>(i)] ? dual<n>(x[i]) : dual<n>::input(x[i], i);
  const dual<n> y = f.template value_as<dual<n>>(in.data(), x);
  for (int i = 0; i < n; ++i) slopes[i] = y.partial[i];
  return y.value;
}
}  // namespace detail

template <>
struct evaluation<measured> {
  template <class F, class... X>
  static measured run(const F& f, const X&... x) {
    constexpr std::size_t n = F::count;
    const auto v = f.numbers(x...);
    if (const fault bad = f.check(v.data())) f.refuse(bad, v.data());
    std::array<double, n> c{};
    const double y = detail::gradient(f, v.data(), c.data());
    if (!is_finite(y)) f.refuse({fault::what::no_result, -1}, v.data());
    const auto all = f.template with_all<measured>(
        [](const auto&... m) { return std::array<measured, n>{as_measured(m)...}; }, x...);
    return combine(y, c.data(), all.data(), n);
  }

 private:
  static const measured& as_measured(const measured& m) { return m; }
  static measured as_measured(const chosen<measured>&) { return {}; }
};

}  // namespace v1
}  // namespace makegood

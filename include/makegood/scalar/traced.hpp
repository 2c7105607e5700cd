// SPDX-License-Identifier: MIT
// A value that remembers the first reason why it cannot be trusted: the slow path of errors and of verdicts.
// Core: evaluated only after a fast evaluation gave no number, or when a verdict asks for validity.
#pragma once
#include <string_view>
#include "../math.hpp"
#include "../unit.hpp"

namespace makegood {
inline namespace v1 {

/// Where a step failed (`fault`) or left the range in which its formula is known to hold (`doubt`).
struct remark {
  std::string_view formula{};
  std::string_view argument{};
  std::string_view text{};
  double at = 0.0;
  std::string_view unit{};
  constexpr bool set() const { return !formula.empty(); }
};

struct traced {
  double value = 0.0;
  remark fault{}, doubt{};

  constexpr traced() = default;
  constexpr traced(double x) : value(x) {}
  constexpr traced(const literal& x) : value(x.value) {}
  constexpr traced(double x, const traced& a) : value(x), fault(a.fault), doubt(a.doubt) {}
  constexpr traced(double x, const traced& a, const traced& b)
      : value(x), fault(a.fault.set() ? a.fault : b.fault), doubt(a.doubt.set() ? a.doubt : b.doubt) {}

  friend constexpr traced operator+(const traced& a, const traced& b) { return {a.value + b.value, a, b}; }
  friend constexpr traced operator-(const traced& a, const traced& b) { return {a.value - b.value, a, b}; }
  friend constexpr traced operator-(const traced& a) { return {-a.value, a}; }
  friend constexpr traced operator*(const traced& a, const traced& b) { return {a.value * b.value, a, b}; }
  friend constexpr traced operator/(const traced& a, const traced& b) { return {a.value / b.value, a, b}; }
  friend constexpr bool operator<(const traced& a, const traced& b) { return a.value < b.value; }
  friend constexpr bool operator<=(const traced& a, const traced& b) { return a.value <= b.value; }
  friend constexpr bool operator>(const traced& a, const traced& b) { return a.value > b.value; }
  friend constexpr bool operator>=(const traced& a, const traced& b) { return a.value >= b.value; }
  friend constexpr traced select(bool condition, const traced& yes, const traced& no) { return condition ? yes : no; }
  friend traced log(const traced& x) { return {v1::log(x.value), x}; }
  friend traced log10(const traced& x) { return {v1::log10(x.value), x}; }
  friend traced log1p(const traced& x) { return {v1::log1p(x.value), x}; }
  friend traced exp(const traced& x) { return {v1::exp(x.value), x}; }
  friend traced sqrt(const traced& x) { return {v1::sqrt(x.value), x}; }
  friend traced cbrt(const traced& x) { return {v1::cbrt(x.value), x}; }
  friend traced pow(const traced& x, double y) { return {v1::pow(x.value, y), x}; }
  template <int N, int D = 1>
  friend traced power(const traced& x) { return {v1::power<N, D>(x.value), x}; }
  friend traced damped_pow(const traced& x, double y) { return {v1::damped_pow(x.value, y), x}; }
  friend traced tanh(const traced& x) { return {v1::tanh(x.value), x}; }
  friend traced sin(const traced& x) { return {v1::sin(x.value), x}; }
  friend traced cos(const traced& x) { return {v1::cos(x.value), x}; }
  friend traced fabs(const traced& x) { return {v1::fabs(x.value), x}; }
};
constexpr double plain_value(const traced& x) { return x.value; }

}  // namespace v1
}  // namespace makegood

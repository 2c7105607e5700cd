// SPDX-License-Identifier: MIT
// Quantiles of the normal and of Student's distribution: coverage factors of expanded uncertainties.
// Core: used by measured.hpp. Includes the standard library only.
#pragma once
#include "error.hpp"
#include "math.hpp"

namespace makegood {
inline namespace v1 {

/// Degrees of freedom of an uncertainty that is known outright.
inline constexpr double without_end = __builtin_inf();

namespace detail {
/// z such that a share q lies above it, for 0 < q <= 1/2: Newton's steps on the logarithm of the tail, whose slope is nearly linear.
inline double normal_upper(double q) {
  constexpr double root_half = 0.70710678118654752440, by_root_2pi = 0.39894228040143267794;
  // Start: Abramowitz and Stegun 26.2.22, good to 0.003
  const double t = sqrt(-2.0 * log(q));
  double z = t - (2.30753 + 0.27061 * t) / (1.0 + t * (0.99229 + 0.04481 * t));
  for (int i = 0; i < 4; ++i) {
    const double tail = 0.5 * erfc(z * root_half);
    const double density = by_root_2pi * exp(-0.5 * z * z);
    z += log(tail / q) * tail / density;
  }
  return q == 0.5 ? 0.0 : z;
}
/// Γ((ν+1)/2) / Γ(ν/2): upwards by its recurrence, then the series for large ν.
inline double gamma_step(double dof) {
  double factor = 1.0;
  while (dof < 60.0) {
    factor *= dof / (dof + 1.0);
    dof += 2.0;
  }
  const double x = 1.0 / dof;
  return factor * sqrt(0.5 * dof) * (1.0 + x * (-0.25 + x * (0.03125 + x * (0.0390625 + x * (-21.0 / 2048.0 + x * (-399.0 / 8192.0 + x * (869.0 / 65536.0)))))));
}
/// The regularised incomplete beta function by its continued fraction (Lentz), x below about (a + 1) / (a + b + 2).
/// edge = x^a (1 - x)^b / B(a, b).
inline double beta_fraction(double a, double b, double x, double edge) {
  constexpr double tiny = 1e-300;
  double c = 1.0, d = 1.0 - (a + b) * x / (a + 1.0);
  d = 1.0 / (fabs(d) < tiny ? tiny : d);
  double h = d;
  for (int m = 1; m < 5000; ++m) {
    const double two = 2.0 * m;
    double step = m * (b - m) * x / ((a + two - 1.0) * (a + two));
    d = 1.0 + step * d;
    c = 1.0 + step / c;
    d = 1.0 / (fabs(d) < tiny ? tiny : d);
    c = fabs(c) < tiny ? tiny : c;
    h *= d * c;
    step = -(a + m) * (a + b + m) * x / ((a + two) * (a + two + 1.0));
    d = 1.0 + step * d;
    c = 1.0 + step / c;
    d = 1.0 / (fabs(d) < tiny ? tiny : d);
    c = fabs(c) < tiny ? tiny : c;
    const double by = d * c;
    h *= by;
    if (fabs(by - 1.0) < 1e-16) break;
  }
  return edge / a * h;
}
/// The share of Student's distribution above t >= 0, for fewer than 10^5 degrees of freedom.
inline double student_tail(double t, double dof) {
  const double by_beta = gamma_step(dof) * 0.56418958354775628695;  // 1 / B(ν/2, 1/2)
  const double a = 0.5 * dof, ratio = t * t / dof;
  const double x = 1.0 / (1.0 + ratio), y = ratio / (1.0 + ratio);
  if (y == 0.0) return 0.5;
  const double edge = by_beta * sqrt(y) * exp(-a * log1p(ratio));
  if (x < (a + 1.0) / (a + 2.5)) return 0.5 * beta_fraction(a, 0.5, x, edge);
  return 0.5 - 0.5 * beta_fraction(0.5, a, y, edge);
}
}  // namespace detail

/// The number of standard deviations on both sides that hold a share `probability` of a normal distribution.
inline double normal_factor(double probability) {
  if (!(probability > 0.0 && probability < 1.0)) throw range_error("a coverage probability lies between 0 and 1");
  return detail::normal_upper(0.5 - 0.5 * probability);
}
/// The same of Student's distribution with `dof` degrees of freedom, from 0.5 on and not only whole: error below 1e-12 of the factor
/// for probabilities from 0.01 to 1 - 1e-9.
inline double student_factor(double probability, double dof) {
  if (!(probability > 0.0 && probability < 1.0)) throw range_error("a coverage probability lies between 0 and 1");
  if (!(dof >= 0.5)) throw range_error("Student's distribution needs degrees of freedom from 0.5 on");
  const double q = 0.5 - 0.5 * probability;
  if (!(dof < 1e5)) {  // the expansion about the normal quantile (Abramowitz and Stegun 26.7.5)
    const double z = detail::normal_upper(q), w = z * z, x = 1.0 / dof;
    return z * (1.0 + x * ((w + 1.0) / 4.0 + x * (((5.0 * w + 16.0) * w + 3.0) / 96.0 + x * (((3.0 * w + 19.0) * w + 17.0) * w - 15.0) / 384.0)));
  }
  const double height = detail::gamma_step(dof) / sqrt(dof) * 0.56418958354775628695;  // the density at 0
  double t = detail::normal_upper(q);
  if (t < 1e-3) t = 0.5 * probability / height;
  // Newton on the logarithm of the tail against that of t (far out it is a straight line), near the middle on the share itself
  for (int i = 0; i < 100; ++i) {
    const double tail = detail::student_tail(t, dof);
    const double density = height * exp(-0.5 * (dof + 1.0) * log1p(t * t / dof));
    const double step = t < 0.5 ? (tail - q) / (density * t) : log(tail / q) * tail / (density * t);
    t *= t < 0.5 ? 1.0 + step : exp(step > 4.0 ? 4.0 : step < -4.0 ? -4.0 : step);
    if (fabs(step) < 4e-15) break;
  }
  return t;
}

}  // namespace v1
}  // namespace makegood

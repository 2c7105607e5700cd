// SPDX-License-Identifier: MIT
// Risks of a decision: for the item at hand (specific), and over everything that is tested (global), by quadrature, not by sampling.
// Subject: decision.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>
#include <vector>
#include "../decision_rule.hpp"

namespace makegood {
inline namespace v1 {
namespace decision {

/// JCGM 106: what the functions here are taken from.
inline constexpr source jcgm106{"JCGM 106:2012, The role of measurement uncertainty in conformity assessment", "7 to 9", "standard"};

/// A tolerance or acceptance interval; an infinite end is no limit.
struct interval_of {
  double lower = -std::numeric_limits<double>::infinity(), upper = std::numeric_limits<double>::infinity();
};

/// The standard normal distribution function and its inverse.
inline double normal_probability(double z) { return 0.5 * std::erfc(-z * 0.70710678118654752440); }
inline double normal_quantile(double p) {
  if (!(p > 0.0 && p < 1.0)) throw range_error("normal_quantile: a probability lies between 0 and 1, not at " + number_text(p));
  if (p > 0.5) return -normal_quantile(1.0 - p);  // the small tail keeps its digits
  double low = -40.0, high = 0.0;
  for (int i = 0; i < 200 && low < high; ++i) {
    const double middle = 0.5 * (low + high);
    if (middle == low || middle == high) break;
    (normal_probability(middle) < p ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

/// What is known of the things that are tested, before one of them is measured.
struct distribution {
  enum class kind : unsigned char { normal, gamma, uniform, lognormal };
  kind is = kind::normal;
  double a = 0.0, b = 1.0;  ///< mean and standard deviation; shape and rate; lower and upper; mean and standard deviation of the logarithm

  static distribution normal(double mean, double standard_deviation) { return checked({kind::normal, mean, standard_deviation}, standard_deviation > 0.0); }
  static distribution gamma(double shape, double rate) { return checked({kind::gamma, shape, rate}, shape > 0.0 && rate > 0.0); }
  static distribution uniform(double lower, double upper) { return checked({kind::uniform, lower, upper}, upper > lower); }
  static distribution lognormal(double log_mean, double log_standard_deviation) {
    return checked({kind::lognormal, log_mean, log_standard_deviation}, log_standard_deviation > 0.0);
  }
  double density(double x) const {
    constexpr double root2pi = 2.5066282746310002;
    switch (is) {
      case kind::normal: return std::exp(-0.5 * (x - a) * (x - a) / (b * b)) / (b * root2pi);
      case kind::gamma: return x > 0.0 ? std::exp(a * std::log(b) + (a - 1.0) * std::log(x) - b * x - std::lgamma(a)) : 0.0;
      case kind::uniform: return x >= a && x <= b ? 1.0 / (b - a) : 0.0;
      case kind::lognormal: return x > 0.0 ? std::exp(-0.5 * (std::log(x) - a) * (std::log(x) - a) / (b * b)) / (x * b * root2pi) : 0.0;
    }
    return 0.0;
  }
  /// Outside it less than 1e-15 is left.
  interval_of support() const {
    switch (is) {
      case kind::normal: return {a - 9.0 * b, a + 9.0 * b};
      case kind::gamma: return {0.0, (a + 12.0 * std::sqrt(a) + 50.0) / b};
      case kind::uniform: return {a, b};
      case kind::lognormal: return {std::exp(a - 9.0 * b), std::exp(a + 9.0 * b)};
    }
    return {};
  }

 private:
  static distribution checked(distribution d, bool ok) {
    if (!ok || !std::isfinite(d.a) || !std::isfinite(d.b)) throw range_error("a prior distribution needs finite parameters, and a positive width");
    return d;
  }
};

namespace detail {

/// Integral over [low, high] by the double exponential rule: ends may be singular. The step is halved until two results agree.
template <class F>
double integral(const F& f, double low, double high, double& error) {
  if (!(high > low)) return 0.0;
  const double half = 0.5 * (high - low), middle = 0.5 * (high + low);
  const auto at = [&](double t) {
    const double s = 1.5707963267948966 * std::sinh(t), c = std::cosh(s);
    const double near = half * std::exp(-std::fabs(s)) / c;  // distance to the nearer end, with its digits
    const double x = t == 0.0 ? middle : s < 0.0 ? low + near : high - near;
    if (!(x > low && x < high)) return 0.0;
    const double y = f(x) * half * 1.5707963267948966 * std::cosh(t) / (c * c);
    return std::isfinite(y) ? y : 0.0;
  };
  constexpr double reach = 3.2;
  double step = 0.4, sum = at(0.0);
  for (double t = step; t <= reach; t += step) sum += at(t) + at(-t);
  double result = sum * step, change = result;
  for (int level = 0; level < 9; ++level) {
    for (double t = 0.5 * step; t <= reach; t += step) sum += at(t) + at(-t);
    step *= 0.5;
    change = std::fabs(sum * step - result);
    result = sum * step;
    if (level > 1 && change <= 1e-13 * (std::fabs(result) + 1e-3)) break;
  }
  error += change;
  return result;
}

}  // namespace detail

/// Probability that the true value lies within the limits, when the measurement says value with a standard uncertainty (normal).
inline double conformity_probability(double value, double standard_uncertainty, const interval_of& tolerance) {
  if (standard_uncertainty == 0.0) return value >= tolerance.lower && value <= tolerance.upper ? 1.0 : 0.0;
  const double above = normal_probability((value - tolerance.upper) / standard_uncertainty);  // the small tails are kept, not their complements
  const double below = normal_probability((tolerance.lower - value) / standard_uncertainty);
  return std::max(0.0, 1.0 - above - below);
}

/// Of everything that is tested.
struct global_risks {
  double nonconforming = 0.0;   ///< share that does not conform
  double accepted = 0.0;        ///< share that is accepted
  double consumer = 0.0;        ///< accepted and does not conform
  double producer = 0.0;        ///< rejected and conforms
  double consumer_given_accepted = 0.0;  ///< share of the accepted that does not conform
  double error = 0.0;           ///< how far the last halving of the step moved the sums
};
/// Global risks of consumer and producer: the prior, the tolerance, the acceptance interval, the standard uncertainty of the measurement.
inline global_risks global_risk(const distribution& prior, const interval_of& tolerance, const interval_of& acceptance, double u) {
  if (!(u >= 0.0) || !std::isfinite(u)) throw range_error("global_risk: the standard uncertainty must be 0 or more");
  if (!(tolerance.lower < tolerance.upper)) throw range_error("global_risk: the lower tolerance limit must lie below the upper one");
  const auto accepted = [&](double eta) {
    if (u == 0.0) return eta >= acceptance.lower && eta <= acceptance.upper ? 1.0 : 0.0;
    return std::max(0.0, normal_probability((acceptance.upper - eta) / u) - normal_probability((acceptance.lower - eta) / u));
  };
  const auto rejected = [&](double eta) {
    if (u == 0.0) return eta >= acceptance.lower && eta <= acceptance.upper ? 0.0 : 1.0;
    if (acceptance.upper <= acceptance.lower) return 1.0;
    return normal_probability((eta - acceptance.upper) / u) + normal_probability((acceptance.lower - eta) / u);
  };
  const interval_of all = prior.support();
  std::vector<double> at{all.lower, all.upper};
  for (const double x : {tolerance.lower, tolerance.upper, acceptance.lower, acceptance.upper, acceptance.lower - 6 * u, acceptance.lower + 6 * u, acceptance.upper - 6 * u,
                         acceptance.upper + 6 * u})
    if (x > all.lower && x < all.upper) at.push_back(x);
  std::sort(at.begin(), at.end());
  global_risks r;
  double conforming_accepted = 0.0;
  for (std::size_t i = 0; i + 1 < at.size(); ++i) {
    const double low = at[i], high = at[i + 1], middle = 0.5 * (low + high);
    const bool conforms = middle >= tolerance.lower && middle <= tolerance.upper;
    const double yes = detail::integral([&](double eta) { return prior.density(eta) * accepted(eta); }, low, high, r.error);
    if (conforms) {
      conforming_accepted += yes;
      r.producer += detail::integral([&](double eta) { return prior.density(eta) * rejected(eta); }, low, high, r.error);
    } else {
      r.consumer += yes;
      r.nonconforming += detail::integral([&](double eta) { return prior.density(eta); }, low, high, r.error);
    }
  }
  r.accepted = r.consumer + conforming_accepted;
  r.consumer_given_accepted = r.accepted > 0.0 ? r.consumer / r.accepted : 0.0;
  return r;
}

/// An acceptance interval: the tolerance with a guard band of width w on the inside of each limit.
struct acceptance {
  interval_of is{};
  double guard_band = 0.0;
  global_risks risks{};
};
inline interval_of guarded(const interval_of& tolerance, double w) { return {tolerance.lower + w, tolerance.upper - w}; }
/// The acceptance interval for a wanted global consumer's risk.
inline acceptance acceptance_limit(const distribution& prior, const interval_of& tolerance, double u, double consumer_risk) {
  if (!(u > 0.0) || !std::isfinite(u)) throw range_error("acceptance_limit: the standard uncertainty must be above 0");
  if (!(consumer_risk > 0.0 && consumer_risk < 1.0)) throw range_error("acceptance_limit: the consumer's risk lies between 0 and 1, not at " + number_text(consumer_risk));
  const auto at = [&](double w) { return global_risk(prior, tolerance, guarded(tolerance, w), u); };
  const interval_of all = prior.support();
  const double widest = (all.upper - all.lower) + 12.0 * u;
  double low = -widest, high = widest;
  if (std::isfinite(tolerance.lower) && std::isfinite(tolerance.upper)) high = 0.5 * (tolerance.upper - tolerance.lower);
  if (at(low).consumer <= consumer_risk)
    throw range_error("acceptance_limit: of all that is tested only " + number_text(at(low).nonconforming, 3) + " does not conform: any acceptance limit keeps the risk of " +
                      number_text(consumer_risk));
  for (int i = 0; i < 100 && high - low > 1e-12 * widest; ++i) {
    const double middle = 0.5 * (low + high);
    (at(middle).consumer > consumer_risk ? low : high) = middle;
  }
  return {guarded(tolerance, high), high, at(high)};
}

}  // namespace decision
}  // namespace v1
}  // namespace makegood

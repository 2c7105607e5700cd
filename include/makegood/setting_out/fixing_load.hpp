// SPDX-License-Identifier: MIT
// What a rail's or cabinet's fixings bear, and what tests in that very wall permit: mean over a factor, or a characteristic load.
// Subject: setting_out. Opt-in.
#pragma once
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>
#include "../decision/risk.hpp"
#include "fixings.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

/// k of "mean - k s": with this confidence at least 1 - fractile of all fixings bear more, when n were tested (normal, deviation unknown).
/// k √n is a quantile of the non-central t distribution with n - 1 degrees of freedom and non-centrality z √n.
inline double tolerance_factor(int n, double confidence, double fractile) {
  if (!(n >= 2 && n <= 1000)) throw range_error("tolerance_factor: 2 to 1000 tests, not " + std::to_string(n));
  if (!(confidence >= 0.5 && confidence <= 0.999)) throw range_error("tolerance_factor: confidence = " + number_text(confidence) + ": from 0.5 to 0.999");
  if (!(fractile >= 0.001 && fractile <= 0.5)) throw range_error("tolerance_factor: fractile = " + number_text(fractile) + ": from 0.001 to 0.5");
  const double nu = n - 1.0, delta = -decision::normal_quantile(fractile) * std::sqrt(static_cast<double>(n));
  const double of_density = std::log(2.0) + 0.5 * nu * std::log(0.5 * nu) - std::lgamma(0.5 * nu);
  const double top = 1.0 + 12.0 / std::sqrt(nu);
  const auto below = [&](double t) {  // P(T ≤ t) = ∫ Φ(t s - δ) g(s) ds, s = √(χ²/ν)
    double error = 0.0;
    const auto f = [&](double s) { return s > 0.0 ? decision::normal_probability(t * s - delta) * std::exp(of_density + (nu - 1.0) * std::log(s) - 0.5 * nu * s * s) : 0.0; };
    const double middle = std::min(top, std::max(0.02, 1.0 - 4.0 / std::sqrt(nu)));
    return decision::detail::integral(f, 0.0, middle, error) + decision::detail::integral(f, middle, 1.0, error) + decision::detail::integral(f, 1.0, top, error);
  };
  double low = -1.0, high = 1.0;
  while (below(high) < confidence && high < 1e7) high *= 2.0;
  for (int i = 0; i < 80 && high - low > 1e-12 * std::max(1.0, high); ++i) {
    const double half = 0.5 * (low + high);
    (below(half) < confidence ? low : high) = half;
  }
  return 0.5 * (low + high) / std::sqrt(static_cast<double>(n));
}

struct characteristic_result {
  double mean_n = 0.0, deviation_n = 0.0, factor = 0.0;
  double characteristic_n = 0.0;  ///< mean - k s; 0 where that is negative
  double mean_over_n = 0.0;       ///< mean over the safety factor
};
inline characteristic_result characteristic_load(const std::vector<double>& ultimate_n, double confidence = 0.9, double fractile = 0.05, double safety_factor = 4.0) {
  if (ultimate_n.size() < 2 || ultimate_n.size() > 1000) throw range_error("characteristic_load: ultimate_n: 2 to 1000 tests, not " + std::to_string(ultimate_n.size()));
  characteristic_result r;
  for (std::size_t i = 0; i < ultimate_n.size(); ++i) {
    if (!(ultimate_n[i] > 0.0 && ultimate_n[i] <= 1e6)) throw range_error("characteristic_load: ultimate_n[" + std::to_string(i) + "] = " + number_text(ultimate_n[i]) + " N: above 0 to 1e6 N");
    r.mean_n += ultimate_n[i];
  }
  const double n = static_cast<double>(ultimate_n.size());
  r.mean_n /= n;
  double squares = 0.0;
  for (const double x : ultimate_n) squares += (x - r.mean_n) * (x - r.mean_n);
  r.deviation_n = std::sqrt(squares / (n - 1.0));
  r.factor = tolerance_factor(static_cast<int>(ultimate_n.size()), confidence, fractile);
  r.characteristic_n = std::max(0.0, r.mean_n - r.factor * r.deviation_n);
  r.mean_over_n = allowable_from_tests(r.mean_n, safety_factor);
  return r;
}

/// A bracket: what hangs on it for good, and what comes by accident (a hand, a child, somebody who slips), each at its own distance.
struct fixing_task {
  double load_n = 0.0, projection_mm = 0.0, lever_mm = 0.0;
  int top_count = 2, fixings_count = 4;
  double accidental_n = 0.0, accidental_projection_mm = no_number;
  double allowable_pull_n = no_number, allowable_shear_n = no_number;
};
struct fixing_result {
  double pull_n = 0.0, shear_n = 0.0;                        ///< of each top fixing, all loads together
  double lasting_pull_n = 0.0, lasting_shear_n = 0.0;        ///< without the accident
  double interaction = no_number;
  double greatest_load_n = no_number;  ///< at `projection_mm`, which would use the fixing up
};
inline fixing_result fixing_load(const fixing_task& t) {
  if (!(t.fixings_count >= t.top_count)) throw range_error("fixing_load: top_count = " + std::to_string(t.top_count) + " is more than all fixings, " + std::to_string(t.fixings_count));
  fixing_result r;
  const double top = t.top_count, n = t.fixings_count, further = is_nan(t.accidental_projection_mm) ? t.projection_mm : t.accidental_projection_mm;
  r.lasting_pull_n = fixing_pull({.load_n = t.load_n, .projection_mm = t.projection_mm, .lever_mm = t.lever_mm, .top_count = top});
  r.lasting_shear_n = fixing_shear(t.load_n, n);
  r.pull_n = r.lasting_pull_n + fixing_pull({.load_n = t.accidental_n, .projection_mm = further, .lever_mm = t.lever_mm, .top_count = top});
  r.shear_n = r.lasting_shear_n + fixing_shear(t.accidental_n, n);
  if (!is_nan(t.allowable_pull_n) && !is_nan(t.allowable_shear_n)) {
    r.interaction = fixing_interaction({.pull_n = r.pull_n, .allowable_pull_n = t.allowable_pull_n, .shear_n = r.shear_n, .allowable_shear_n = t.allowable_shear_n});
    const double each = t.projection_mm / (t.lever_mm * top) / t.allowable_pull_n + 1.0 / n / t.allowable_shear_n;
    r.greatest_load_n = 1.0 / each;
  }
  return r;
}

/// Drills from the first to the last, each at most `ratio` times the one before; those at hand, where they are given.
inline std::vector<double> pilot_sizes(double diameter_mm, double first_mm, double ratio, std::vector<double> at_hand = {}) {
  if (!(diameter_mm > 0.0 && diameter_mm <= 1000.0)) throw range_error("pilot_holes: diameter_mm = " + number_text(diameter_mm) + " mm: above 0 to 1000 mm");
  if (!(first_mm > 0.0 && first_mm <= 100.0)) throw range_error("pilot_holes: first_mm = " + number_text(first_mm) + " mm: above 0 to 100 mm");
  if (!(ratio >= 1.1 && ratio <= 10.0)) throw range_error("pilot_holes: step_ratio = " + number_text(ratio) + ": from 1.1 to 10");
  std::vector<double> sizes;
  if (diameter_mm <= first_mm) return {diameter_mm};
  if (at_hand.empty()) {
    const int steps = static_cast<int>(std::ceil(std::log(diameter_mm / first_mm) / std::log(ratio) - 1e-9));
    for (int i = 0; i < steps; ++i) sizes.push_back(first_mm * std::pow(diameter_mm / first_mm, static_cast<double>(i) / steps));
    sizes.push_back(diameter_mm);
    return sizes;
  }
  for (const double x : at_hand)
    if (!(x > 0.0 && x <= 1000.0)) throw range_error("pilot_holes: sizes_mm: " + number_text(x) + " mm: above 0 to 1000 mm");
  std::sort(at_hand.begin(), at_hand.end());
  std::erase_if(at_hand, [&](double x) { return x >= diameter_mm; });
  at_hand.push_back(diameter_mm);
  const auto begin = std::upper_bound(at_hand.begin(), at_hand.end(), first_mm);
  double at = begin == at_hand.begin() ? at_hand.front() : *(begin - 1);
  sizes.push_back(at);
  while (at < diameter_mm) {
    auto next = std::upper_bound(at_hand.begin(), at_hand.end(), at * ratio * (1.0 + 1e-12));
    if (next == at_hand.begin() || *(next - 1) <= at) next = std::upper_bound(at_hand.begin(), at_hand.end(), at) + 1;  // none fits: the next larger one
    at = *(next - 1);
    sizes.push_back(at);
  }
  return sizes;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

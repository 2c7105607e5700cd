// SPDX-License-Identifier: MIT
// Which standard mats fit a floor: free area, strips, and the sets of mats that leave the least of it cold.
// Subject: heating (models). Opt-in: includes the standard library's containers.
#pragma once
#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <vector>
#include "../text.hpp"
#include "elements.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

/// Areas in which mats are usually made, a rule of the trade.
inline constexpr double usual_mat_areas_m2[] = {1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0};

struct floor_plan {
  double length_m, width_m;
  double fixed_area_m2 = 0.0, margin_m = 0.0;
  double mat_width_m = 0.5;
};
struct mat_set {
  std::vector<double> areas_m2;  ///< the largest first
  double total_m2 = 0.0, left_m2 = 0.0;
};
struct mats_fitting {
  double free_m2 = 0.0;    ///< room less margins and fixed things
  double strips_m2 = 0.0;  ///< what whole strips of the mat's width cover at most, laid the better way, less the fixed things
  std::vector<mat_set> sets{};  ///< the least left over first; at most 10; empty: the smallest mat is too large
};

/// Sets of one to `most_mats` mats that are not larger than what strips cover. Mats are never cut to size: a mat that is too large does not fit.
inline mats_fitting mats_that_fit(const floor_plan& floor, std::span<const double> areas_m2 = usual_mat_areas_m2, int most_mats = 2) {
  const std::string who = "mats_that_fit: ";
  if (areas_m2.empty() || areas_m2.size() > 100) throw range_error(who + "areas_m2: 1 to 100 areas");
  for (const double a : areas_m2)
    if (!(a > 0.0 && a <= 1000.0)) throw range_error(who + "areas_m2: " + number_text(a) + " m²: above 0 to 1000 m²");
  if (most_mats < 1 || most_mats > 4) throw range_error(who + "most_mats: 1 to 4");
  if (!(floor.mat_width_m > 0.0 && floor.mat_width_m <= 5.0)) throw range_error(who + "mat_width_m: above 0 to 5 m");
  mats_fitting r;
  r.free_m2 = heated_area({.length_m = floor.length_m, .width_m = floor.width_m, .fixed_area_m2 = floor.fixed_area_m2, .margin_m = floor.margin_m});
  const double l = floor.length_m - 2.0 * floor.margin_m, w = floor.width_m - 2.0 * floor.margin_m;
  const auto strips = [&](double along, double across) { return std::floor(across / floor.mat_width_m + 1e-9) * floor.mat_width_m * along; };
  r.strips_m2 = std::clamp(std::max(strips(l, w), strips(w, l)) - floor.fixed_area_m2, 0.0, r.free_m2);
  std::vector<double> sizes(areas_m2.begin(), areas_m2.end());
  std::sort(sizes.begin(), sizes.end(), std::greater<>());
  sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
  std::vector<double> taken;
  const double most = r.strips_m2 * (1.0 + 1e-12);
  const auto add = [&](auto&& self, std::size_t from, double total) -> void {
    if (!taken.empty()) r.sets.push_back({taken, total, r.free_m2 - total});
    if (taken.size() == static_cast<std::size_t>(most_mats)) return;
    for (std::size_t i = from; i < sizes.size(); ++i) {
      if (total + sizes[i] > most) continue;
      taken.push_back(sizes[i]);
      self(self, i, total + sizes[i]);
      taken.pop_back();
    }
  };
  add(add, 0, 0.0);
  std::stable_sort(r.sets.begin(), r.sets.end(), [](const mat_set& a, const mat_set& b) {
    if (std::fabs(a.left_m2 - b.left_m2) > 1e-9) return a.left_m2 < b.left_m2;
    return a.areas_m2.size() < b.areas_m2.size();
  });
  if (r.sets.size() > 10) r.sets.resize(10);
  return r;
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

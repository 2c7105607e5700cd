// SPDX-License-Identifier: MIT
// Whether a supplied flex reaches an outlet: the shortest way on the wall round what is kept free, its bends, what terminating it takes.
// Subject: setting_out. Opt-in.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <vector>
#include "../decision/risk.hpp"
#include "brackets.hpp"
#include "cords.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

struct wall_point {
  double x_mm = 0.0, y_mm = 0.0;
};
inline constexpr std::string_view directions[] = {"any", "left", "right", "up", "down"};
/// `right_angles`: clipped along the wall; else the straight way round corners, as a taut string lies.
struct flex_task {
  double length_mm = 0.0;            ///< of the flex, from where it leaves the appliance to its end
  wall_point from{}, to{};
  int leaves = 0, enters = 0;        ///< of `directions`: which way it leaves; from which side it comes into the outlet
  double straight_mm = 0.0;          ///< before the first bend and after the last
  std::vector<wall_point> way{};     ///< points that it has to pass, in order
  std::vector<keep_out> keep_outs{};
  double clear_mm = 0.0;             ///< kept from each keep-out
  bool right_angles = true;
  double bend_radius_mm = 0.0;       ///< at the middle of the flex
  double allowance_mm = 0.0, slack_mm = 0.0;
  double length_sd_mm = 0.0, place_sd_mm = 0.0;  ///< doubt of the flex's length, and of each of the two places along the way
};
struct flex_result {
  bool way_found = false;
  std::vector<wall_point> path{};
  double legs_mm = no_number, saved_mm = no_number;
  int bends = 0;
  double needed_mm = no_number, spare_mm = no_number, standard_uncertainty_mm = no_number, probability = no_number;
  bool bends_fit = true;             ///< legs are long enough for the radius
  wall_point ends{};                 ///< where along the way the flex ends when terminated there: the outlet itself, where it reaches
  double concealed_mm = no_number;   ///< along the wall up or down and across, as permitted zones run
  std::string blame{};
};

/// The sag of a cord between two holds of one height, by the catenary; no number where it is shorter than the span.
inline double catenary_sag(double length_mm, double span_mm) {
  if (!(span_mm > 0.0 && span_mm <= 1e6)) throw range_error("hanging_cord: span_mm = " + number_text(span_mm) + " mm: above 0 to 1e6 mm");
  if (!(length_mm >= span_mm && length_mm <= 1e6)) throw range_error("hanging_cord: length_mm = " + number_text(length_mm) + " mm: from the span to 1e6 mm");
  const double slack = (length_mm - span_mm) / span_mm;
  const auto excess = [](double y) {  // sinh(y)/y - 1 with its digits
    if (y > 1.0) return std::sinh(y) / y - 1.0;
    double term = y * y / 6.0, sum = 0.0;
    for (int n = 1; term > 1e-18 * sum && n < 30; ++n) sum += term, term *= y * y / ((2.0 * n + 2.0) * (2.0 * n + 3.0));
    return sum;
  };
  double low = 0.0, high = 1.0;
  while (excess(high) < slack) high *= 2.0;
  for (int i = 0; i < 200; ++i) {
    const double middle = 0.5 * (low + high);
    if (middle == low || middle == high) break;
    (excess(middle) < slack ? low : high) = middle;
  }
  if (high == 0.0 || slack == 0.0) return 0.0;
  const double y = 0.5 * (low + high), half = std::sinh(0.5 * y);
  return span_mm / (2.0 * y) * 2.0 * half * half;  // a (cosh y - 1)
}

namespace detail {
/// Whether the open segment runs through the inside of a rectangle.
inline bool runs_through(const wall_point& a, const wall_point& b, const keep_out& k) {
  double low = 0.0, high = 1.0;
  for (const auto& [from, to, left, right] : {std::array{a.x_mm, b.x_mm, k.left_mm, k.right_mm}, std::array{a.y_mm, b.y_mm, k.bottom_mm, k.top_mm}}) {
    const double d = to - from;
    if (d == 0.0) {
      if (!(from > left && from < right)) return false;
      continue;
    }
    const double u = (left - from) / d, v = (right - from) / d;
    low = std::max(low, std::min(u, v)), high = std::min(high, std::max(u, v));
  }
  return high - low > 1e-12;
}
struct leg_search {
  const std::vector<keep_out>& rects;
  bool right_angles;
  double turn_mm = 0.0;  ///< what a way needs to one side before it can run back

  bool free(const wall_point& a, const wall_point& b) const {
    return std::none_of(rects.begin(), rects.end(), [&](const auto& k) { return runs_through(a, b, k); });
  }
  /// The shortest way with the fewest bends among the shortest; empty: none. At right angles it does not run back towards `before`, nor
  /// come from where it goes to `after`.
  std::vector<wall_point> way(const wall_point& a, const wall_point& b, const wall_point* before_a = nullptr, const wall_point* after_b = nullptr) const {
    std::vector<wall_point> p{a, b};
    if (right_angles) {
      std::vector<double> xs{a.x_mm, b.x_mm}, ys{a.y_mm, b.y_mm};
      for (const auto& k : rects) {
        for (const double x : {k.left_mm, k.right_mm}) xs.push_back(x);
        for (const double y : {k.bottom_mm, k.top_mm}) ys.push_back(y);
      }
      for (const auto* p2 : {&a, &b})
        if (turn_mm > 0.0 && (p2 == &a ? before_a : after_b))
          for (const double by : {-turn_mm, turn_mm}) xs.push_back(p2->x_mm + by), ys.push_back(p2->y_mm + by);
      for (auto* v : {&xs, &ys}) std::sort(v->begin(), v->end()), v->erase(std::unique(v->begin(), v->end()), v->end());
      return on_grid(xs, ys, a, b, before_a, after_b);
    }
    for (const auto& k : rects)
      for (const double x : {k.left_mm, k.right_mm})
        for (const double y : {k.bottom_mm, k.top_mm}) p.push_back({x, y});
    const std::size_t n = p.size();
    std::vector<double> far(n, std::numeric_limits<double>::infinity());
    std::vector<std::size_t> before(n, n);
    std::vector<char> done(n, 0);
    far[0] = 0.0;
    for (std::size_t round = 0; round < n; ++round) {
      std::size_t at = n;
      for (std::size_t i = 0; i < n; ++i)
        if (!done[i] && std::isfinite(far[i]) && (at == n || far[i] < far[at])) at = i;
      if (at == n) break;
      done[at] = 1;
      for (std::size_t i = 0; i < n; ++i) {
        if (done[i]) continue;
        const double d = far[at] + std::hypot(p[i].x_mm - p[at].x_mm, p[i].y_mm - p[at].y_mm);
        if (d < far[i] - 1e-9 && free(p[at], p[i])) far[i] = d, before[i] = at;
      }
    }
    if (!std::isfinite(far[1])) return {};
    std::vector<wall_point> out;
    for (std::size_t i = 1; i != n; i = before[i]) out.insert(out.begin(), p[i]);
    return out;
  }

 private:
  std::vector<wall_point> on_grid(const std::vector<double>& xs, const std::vector<double>& ys, const wall_point& a, const wall_point& b, const wall_point* before_a,
                                  const wall_point* after_b) const {
    const auto towards = [](const wall_point& p, const wall_point* q, int dx, int dy) { return q && ((q->x_mm - p.x_mm) * dx > 0.0 || (q->y_mm - p.y_mm) * dy > 0.0); };
    const std::size_t nx = xs.size(), ny = ys.size(), n = nx * ny * 2;
    const auto index = [](const std::vector<double>& v, double x) { return static_cast<std::size_t>(std::lower_bound(v.begin(), v.end(), x) - v.begin()); };
    struct reached {
      double far = std::numeric_limits<double>::infinity();
      int bends = 0;
      std::size_t before = static_cast<std::size_t>(-1);
      bool done = false;
    };
    std::vector<reached> r(n);  // [place][came along x or y]
    const auto key = [&](std::size_t i, std::size_t j, std::size_t d) { return (j * nx + i) * 2 + d; };
    const std::size_t start = key(index(xs, a.x_mm), index(ys, a.y_mm), 0), goal = key(index(xs, b.x_mm), index(ys, b.y_mm), 0);
    r[start].far = r[start + 1].far = 0.0;
    const auto better = [](double far, int bends, const reached& than) { return far < than.far - 1e-9 || (far < than.far + 1e-9 && bends < than.bends); };
    for (std::size_t round = 0; round < n; ++round) {
      std::size_t at = n;
      for (std::size_t i = 0; i < n; ++i)
        if (!r[i].done && std::isfinite(r[i].far) && (at == n || better(r[i].far, r[i].bends, r[at]))) at = i;
      if (at == n) break;
      r[at].done = true;
      const std::size_t d = at % 2, i = (at / 2) % nx, j = at / 2 / nx;
      for (int k = 0; k < 4; ++k) {
        constexpr int dx[] = {1, -1, 0, 0}, dy[] = {0, 0, 1, -1};
        const auto ni = static_cast<std::ptrdiff_t>(i) + dx[k], nj = static_cast<std::ptrdiff_t>(j) + dy[k];
        if (ni < 0 || nj < 0 || ni >= static_cast<std::ptrdiff_t>(nx) || nj >= static_cast<std::ptrdiff_t>(ny)) continue;
        const auto ui = static_cast<std::size_t>(ni), uj = static_cast<std::size_t>(nj);
        const std::size_t to = key(ui, uj, k < 2 ? 0 : 1);
        if ((at == start || at == start + 1) && towards(a, before_a, dx[k], dy[k])) continue;
        if ((to == goal || to == goal + 1) && towards(b, after_b, -dx[k], -dy[k])) continue;
        if (r[to].done || !free({xs[i], ys[j]}, {xs[ui], ys[uj]})) continue;
        const double far = r[at].far + std::fabs(xs[ui] - xs[i]) + std::fabs(ys[uj] - ys[j]);
        const int bends = r[at].bends + ((k < 2 ? 0U : 1U) != d && at != start && at != start + 1);
        if (better(far, bends, r[to])) r[to].far = far, r[to].bends = bends, r[to].before = at;
      }
    }
    const std::size_t last = better(r[goal + 1].far, r[goal + 1].bends, r[goal]) ? goal + 1 : goal;
    if (!std::isfinite(r[last].far)) return {};
    std::vector<wall_point> out;
    for (std::size_t at = last;; at = r[at].before) {
      out.insert(out.begin(), {xs[(at / 2) % nx], ys[at / 2 / nx]});
      if (r[at].before == static_cast<std::size_t>(-1)) break;
    }
    return out;
  }
};
inline wall_point aside_of(const wall_point& p, int direction, double by) {
  constexpr double dx[] = {0, -1, 1, 0, 0}, dy[] = {0, 0, 0, 1, -1};
  return {p.x_mm + dx[direction] * by, p.y_mm + dy[direction] * by};
}
}  // namespace detail

/// The way, what it needs, and what is missing. Straight stubs where it leaves and enters; each bend of an angle θ saves R (2 tan(θ/2) - θ).
inline flex_result flex_reach(const flex_task& t) {
  constexpr double pi = 3.14159265358979324;
  const auto fail = [](const std::string& s) { throw range_error("flex_reach: " + s); };
  if (!(t.length_mm > 0.0 && t.length_mm <= 1e6)) fail("length_mm = " + number_text(t.length_mm) + " mm: above 0 to 1e6 mm");
  for (const auto& [x, name] : {std::pair{t.straight_mm, "straight_mm"}, {t.clear_mm, "clear_mm"}, {t.bend_radius_mm, "bend_radius_mm"}, {t.allowance_mm, "allowance_mm"}, {t.slack_mm, "slack_mm"},
                                {t.length_sd_mm, "length_sd_mm"}, {t.place_sd_mm, "place_sd_mm"}})
    if (!(x >= 0.0 && x <= 1e5)) fail(std::string(name) + " = " + number_text(x) + " mm: from 0 to 1e5 mm");
  if (t.keep_outs.size() > 30) fail("keep_outs: at most 30");
  if (t.way.size() > 30) fail("way_points: at most 30");
  const auto point = [&](const wall_point& p, std::string_view name) {
    if (!(std::fabs(p.x_mm) <= 1e6 && std::fabs(p.y_mm) <= 1e6)) fail(std::string(name) + ": its place must be a number up to 1e6 mm");
  };
  point(t.from, "from"), point(t.to, "to");
  for (const auto& w : t.way) point(w, "way_points");
  std::vector<keep_out> rects;
  for (std::size_t i = 0; i < t.keep_outs.size(); ++i) {
    const auto& k = t.keep_outs[i];
    if (!(k.left_mm <= k.right_mm && k.bottom_mm <= k.top_mm) || !is_finite(k.left_mm) || !is_finite(k.right_mm) || !is_finite(k.bottom_mm) || !is_finite(k.top_mm))
      fail("keep_outs[" + std::to_string(i) + "]: left ... right and bottom ... top must be numbers in order");
    rects.push_back({k.name, k.left_mm - t.clear_mm, k.bottom_mm - t.clear_mm, k.right_mm + t.clear_mm, k.top_mm + t.clear_mm});
  }
  flex_result r;
  r.concealed_mm = std::fabs(t.to.x_mm - t.from.x_mm) + std::fabs(t.to.y_mm - t.from.y_mm);
  // stubs, then the points to pass
  const double stub = std::max(t.straight_mm, t.bend_radius_mm);
  std::vector<wall_point> stops{t.from};
  if (t.leaves != 0 && stub > 0.0) stops.push_back(detail::aside_of(t.from, t.leaves, stub));
  for (const auto& w : t.way) stops.push_back(w);
  if (t.enters != 0 && stub > 0.0) stops.push_back(detail::aside_of(t.to, t.enters, stub));
  stops.push_back(t.to);
  const auto named = [&](std::size_t k) { return "\"" + (rects[k].name.empty() ? "keep-out " + std::to_string(k + 1) : rects[k].name) + "\""; };
  for (const auto& s : stops)
    for (std::size_t k = 0; k < rects.size(); ++k)
      if (s.x_mm > rects[k].left_mm && s.x_mm < rects[k].right_mm && s.y_mm > rects[k].bottom_mm && s.y_mm < rects[k].top_mm) {
        r.blame = "the point " + number_text(s.x_mm) + ", " + number_text(s.y_mm) + " mm lies in " + named(k) + (t.clear_mm > 0.0 ? " with what is kept clear of it" : "");
        return r;
      }
  const detail::leg_search search{rects, t.right_angles, std::max(2.0 * t.bend_radius_mm, 1.0)};
  const bool out_stub = t.leaves != 0 && stub > 0.0, in_stub = t.enters != 0 && stub > 0.0;
  for (std::size_t i = 0; i + 1 < stops.size(); ++i) {
    const auto leg = search.way(stops[i], stops[i + 1], out_stub && i == 1 ? &stops[0] : nullptr, in_stub && i + 3 == stops.size() ? &stops.back() : nullptr);
    if (leg.empty()) {
      r.blame = "no way from " + number_text(stops[i].x_mm) + ", " + number_text(stops[i].y_mm) + " mm to " + number_text(stops[i + 1].x_mm) + ", " + number_text(stops[i + 1].y_mm) + " mm: the keep-outs close it off";
      return r;
    }
    for (const auto& p : leg)
      if (r.path.empty() || std::hypot(p.x_mm - r.path.back().x_mm, p.y_mm - r.path.back().y_mm) > 1e-9) r.path.push_back(p);
  }
  for (std::size_t i = 1; i + 1 < r.path.size();) {  // what lies on a straight leg is no bend
    const auto &a = r.path[i - 1], &b = r.path[i], &c = r.path[i + 1];
    const double cross = (b.x_mm - a.x_mm) * (c.y_mm - b.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - b.x_mm), dot = (b.x_mm - a.x_mm) * (c.x_mm - b.x_mm) + (b.y_mm - a.y_mm) * (c.y_mm - b.y_mm);
    if (std::fabs(cross) < 1e-9 * (std::fabs(dot) + 1.0) && dot > 0.0) r.path.erase(r.path.begin() + static_cast<std::ptrdiff_t>(i));
    else ++i;
  }
  r.way_found = true, r.legs_mm = 0.0, r.saved_mm = 0.0;
  std::vector<double> leg, taken(r.path.size(), 0.0);
  for (std::size_t i = 0; i + 1 < r.path.size(); ++i) leg.push_back(std::hypot(r.path[i + 1].x_mm - r.path[i].x_mm, r.path[i + 1].y_mm - r.path[i].y_mm)), r.legs_mm += leg.back();
  std::string sharp;
  for (std::size_t i = 1; i + 1 < r.path.size(); ++i) {
    const auto &a = r.path[i - 1], &b = r.path[i], &c = r.path[i + 1];
    const double angle = std::fabs(std::atan2((b.x_mm - a.x_mm) * (c.y_mm - b.y_mm) - (b.y_mm - a.y_mm) * (c.x_mm - b.x_mm), (b.x_mm - a.x_mm) * (c.x_mm - b.x_mm) + (b.y_mm - a.y_mm) * (c.y_mm - b.y_mm)));
    ++r.bends;
    if (angle > 0.75 * pi) {  // back on itself: a loop, not a corner
      r.bends_fit = false;
      if (sharp.empty()) sharp = "the way turns back on itself at " + number_text(b.x_mm) + ", " + number_text(b.y_mm) + " mm: turn the entry, or give it a point to pass";
      continue;
    }
    taken[i] = t.bend_radius_mm * std::tan(0.5 * angle);
    r.saved_mm += 2.0 * taken[i] - t.bend_radius_mm * angle;
  }
  for (std::size_t i = 0; i < leg.size(); ++i)
    if (taken[i] + taken[i + 1] > leg[i] + 1e-9) {
      r.bends_fit = false;
      if (sharp.empty()) sharp = "a leg of " + number_text(std::round(10.0 * leg[i]) / 10.0) + " mm is too short for its bends, which take " + number_text(std::round(10.0 * (taken[i] + taken[i + 1])) / 10.0) + " mm of it";
    }
  r.blame = sharp;
  r.needed_mm = r.legs_mm - r.saved_mm + t.allowance_mm + t.slack_mm;
  r.spare_mm = t.length_mm - r.needed_mm;
  r.standard_uncertainty_mm = std::sqrt(t.length_sd_mm * t.length_sd_mm + 2.0 * t.place_sd_mm * t.place_sd_mm);
  r.probability = r.standard_uncertainty_mm > 0.0 ? decision::normal_probability(r.spare_mm / r.standard_uncertainty_mm) : r.spare_mm >= 0.0 ? 1.0 : 0.0;
  // where the flex ends along the way, with what terminating takes
  double left = std::max(0.0, r.legs_mm + std::min(0.0, r.spare_mm));
  r.ends = r.path.front();
  for (std::size_t i = 0; i < leg.size(); ++i) {
    const double part = std::min(left, leg[i]);
    const double share = leg[i] > 0.0 ? part / leg[i] : 0.0;
    r.ends = {r.path[i].x_mm + share * (r.path[i + 1].x_mm - r.path[i].x_mm), r.path[i].y_mm + share * (r.path[i + 1].y_mm - r.path[i].y_mm)};
    left -= part;
    if (left <= 0.0) break;
  }
  return r;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

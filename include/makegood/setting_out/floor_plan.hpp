// SPDX-License-Identifier: MIT
// The shortest string in plan from a point to a bath, a tray or an outlet, round the corners of walls and partitions: exact, by visibility.
// Subject: setting_out. Opt-in.
#pragma once
#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../error.hpp"
#include "../math.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

/// A place in plan, in metres.
struct plan_point {
  double x_m = 0.0, y_m = 0.0;
  friend constexpr plan_point operator+(plan_point a, plan_point b) { return {a.x_m + b.x_m, a.y_m + b.y_m}; }
  friend constexpr plan_point operator-(plan_point a, plan_point b) { return {a.x_m - b.x_m, a.y_m - b.y_m}; }
  friend constexpr plan_point operator*(double k, plan_point a) { return {k * a.x_m, k * a.y_m}; }
  friend constexpr bool operator==(plan_point a, plan_point b) { return a.x_m == b.x_m && a.y_m == b.y_m; }
};
using plan_polygon = std::vector<plan_point>;
struct plan_segment {
  plan_point from{}, to{};
};

/// What lies within this distance of a line counts as on it: ends of partitions are joined, points on the outline are inside.
inline constexpr double same_place_m = 1e-3;

namespace detail {
inline constexpr double far_away = std::numeric_limits<double>::infinity();
inline constexpr double nearly = 1e-9;  ///< of a metre: rounding of coordinates

constexpr double cross(plan_point a, plan_point b) { return a.x_m * b.y_m - a.y_m * b.x_m; }
constexpr double dot(plan_point a, plan_point b) { return a.x_m * b.x_m + a.y_m * b.y_m; }
inline double length(plan_point a) { return std::sqrt(dot(a, a)); }
/// The place of a segment that is nearest to p, as a part of its length.
inline double nearest_part(plan_point p, plan_point a, plan_point b) {
  const double l2 = dot(b - a, b - a);
  return l2 > 0.0 ? std::clamp(dot(p - a, b - a) / l2, 0.0, 1.0) : 0.0;
}
inline plan_point along(plan_point a, plan_point b, double part) { return part == 1.0 ? b : a + part * (b - a); }
inline double to_segment(plan_point p, plan_point a, plan_point b) { return length(p - along(a, b, nearest_part(p, a, b))); }
/// Where two segments meet in a point that is inside both, by more than rounding.
inline bool cross_inside(plan_point a, plan_point b, plan_point c, plan_point d) {
  const plan_point u = b - a, v = d - c;
  const double c1 = cross(u, c - a), d1 = cross(u, d - a), a1 = cross(v, a - c), b1 = cross(v, b - c);
  if (!((c1 < 0.0) != (d1 < 0.0) && (a1 < 0.0) != (b1 < 0.0))) return false;
  const double eu = nearly * length(u), ev = nearly * length(v);
  return std::fabs(c1) > eu && std::fabs(d1) > eu && std::fabs(a1) > ev && std::fabs(b1) > ev;
}
inline double segment_gap(plan_point a, plan_point b, plan_point c, plan_point d) {
  if (cross_inside(a, b, c, d)) return 0.0;
  return std::min({to_segment(a, c, d), to_segment(b, c, d), to_segment(c, a, b), to_segment(d, a, b)});
}
inline double area_of(const plan_polygon& p) {
  double twice = 0.0;
  for (std::size_t i = 0; i < p.size(); ++i) twice += cross(p[i] - p[0], p[(i + 1) % p.size()] - p[0]);
  return 0.5 * twice;
}
/// Inside or on the edge.
inline bool inside(const plan_polygon& p, plan_point at, double on_edge = nearly) {
  bool in = false;
  for (std::size_t i = 0; i < p.size(); ++i) {
    const plan_point a = p[i], b = p[(i + 1) % p.size()];
    if (to_segment(at, a, b) <= on_edge) return true;
    if ((a.y_m > at.y_m) != (b.y_m > at.y_m) && at.x_m < a.x_m + (at.y_m - a.y_m) / (b.y_m - a.y_m) * (b.x_m - a.x_m)) in = !in;
  }
  return in;
}
inline double to_outline(const plan_polygon& p, plan_point at) {
  double least = far_away;
  for (std::size_t i = 0; i < p.size(); ++i) least = std::min(least, to_segment(at, p[i], p[(i + 1) % p.size()]));
  return least;
}
inline std::string place_text(plan_point p) { return "(" + number_text(p.x_m, 6) + ", " + number_text(p.y_m, 6) + ")"; }
inline std::string edge_text(const plan_polygon& p, std::size_t i) {
  return "edge " + std::to_string(i + 1) + " from " + place_text(p[i]) + " to " + place_text(p[(i + 1) % p.size()]);
}
/// Refuses what is no simple polygon, and names the edges; gives it counter-clockwise, without a corner said twice at its end.
inline plan_polygon demand_polygon(const std::string& who, plan_polygon p) {
  if (p.size() > 1 && p.front() == p.back()) p.pop_back();
  if (p.size() < 3) throw range_error(who + ": " + std::to_string(p.size()) + " corners; at least 3");
  if (p.size() > 200) throw range_error(who + ": " + std::to_string(p.size()) + " corners; at most 200");
  for (std::size_t i = 0; i < p.size(); ++i)
    for (const double x : {p[i].x_m, p[i].y_m})
      if (!(std::fabs(x) <= 100.0))
        throw range_error(who + ": corner " + std::to_string(i + 1) + ": " + number_text(x) + " m is not between -100 m and 100 m" +
                          (is_finite(x) ? "; if it was in mm, write " + number_text(x / 1000.0) + " m" : std::string()));
  const std::size_t n = p.size();
  for (std::size_t i = 0; i < n; ++i)
    if (length(p[(i + 1) % n] - p[i]) < same_place_m) throw range_error(who + ": " + edge_text(p, i) + " is shorter than 1 mm");
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j) {
      const plan_point a = p[i], b = p[(i + 1) % n], c = p[j], d = p[(j + 1) % n];
      const bool after = j == i + 1, before = (j + 1) % n == i;
      bool bad = false;
      if (after || before) {  // neighbours share a corner: they may not lie on each other
        const plan_point at = after ? b : a, u = (after ? a : b) - at, v = (after ? d : c) - at;
        bad = std::fabs(cross(u, v)) <= nearly * length(u) * length(v) && dot(u, v) > 0.0;
        if (n == 3) bad = bad || std::fabs(area_of(p)) < 1e-6;
      } else {
        bad = segment_gap(a, b, c, d) <= nearly;
      }
      if (bad) throw range_error(who + ": " + edge_text(p, i) + " and " + edge_text(p, j) + (after || before ? " lie on each other" : " cross or touch"));
    }
  const double area = area_of(p);
  if (std::fabs(area) < 1e-4) throw range_error(who + ": its area is " + number_text(1e4 * std::fabs(area), 3) + " cm²: at least 1 cm²");
  if (area < 0.0) std::reverse(p.begin(), p.end());
  return p;
}
}  // namespace detail

/// What a string is measured to: a polygon (a bath, a tray), or one place (an outlet).
struct string_target {
  plan_polygon outline{};  ///< counter-clockwise; empty: `at` alone
  plan_point at{};
};
struct taut_string {
  double length_m = detail::far_away;
  std::vector<plan_point> path{};  ///< from the target to the point
};

/// A room with the partitions that stop a string, and its shortest strings. Partitions have no thickness; ends within 1 mm of a wall or of
/// another partition are to be joined before (see `join`). A string may touch walls; it slips through no joint.
class taut_plan {
 public:
  taut_plan() = default;
  taut_plan(plan_polygon outline, const std::vector<plan_segment>& partitions, const std::vector<string_target>& targets) : outline_(std::move(outline)), targets_(targets) {
    for (std::size_t i = 0; i < outline_.size(); ++i) edges_.push_back({outline_[i], outline_[(i + 1) % outline_.size()]});
    for (const auto& s : partitions) edges_.push_back(s);
    for (const auto& e : edges_)
      for (const auto& p : {e.from, e.to})
        if (std::none_of(corners_.begin(), corners_.end(), [&](const corner& c) { return detail::length(c.at - p) <= detail::nearly; })) corners_.push_back({p, {}});
    for (auto& c : corners_) make_sectors(c);
    for (std::size_t c = 0; c < corners_.size(); ++c)
      for (const auto& s : corners_[c].free)
        if (s.sweep > 3.14159265358979323846 + 1e-9) nodes_.push_back({c, s});
    for (const auto& t : targets_) {
      make_inset(t);
      made_.push_back(solve(made_.size()));
    }
  }

  /// The shortest string to a target; infinite: walls and partitions shut it out.
  taut_string string_to(std::size_t target, plan_point p) const {
    taut_string s;
    std::size_t first = none;
    plan_point end{};
    s.length_m = shortest(target, p, first, end);
    if (s.length_m == detail::far_away) return s;
    s.path.push_back(p);
    while (first != none) {
      s.path.push_back(corners_[nodes_[first].corner].at);
      end = made_[target].end[first];
      first = made_[target].next[first];
    }
    s.path.push_back(end);
    std::reverse(s.path.begin(), s.path.end());
    s.path.erase(std::unique(s.path.begin(), s.path.end()), s.path.end());
    return s;
  }
  double length_to(std::size_t target, plan_point p) const {
    std::size_t first = none;
    plan_point end{};
    return shortest(target, p, first, end);
  }
  /// The strings of one place to many: its own part is worked out once.
  class from_place {
   public:
    from_place(const taut_plan& plan, plan_point a) : plan_(plan), at_(a), from_(plan.nodes_.size(), detail::far_away), next_(plan.nodes_.size(), none) {
      for (std::size_t i = 0; i < from_.size(); ++i)
        if (const plan_point v = plan.corner_of(i); plan.sees(a, nullptr, v, &plan.nodes_[i].free)) from_[i] = detail::length(v - a);
      plan.spread(from_, &next_);
    }
    double to(plan_point b) const {
      std::size_t last = none;
      return shortest(b, last);
    }
    /// From the place to b.
    taut_string string_to(plan_point b) const {
      taut_string s;
      std::size_t last = none;
      s.length_m = shortest(b, last);
      if (s.length_m == detail::far_away) return s;
      s.path.push_back(b);
      for (; last != none; last = next_[last]) s.path.push_back(plan_.corner_of(last));
      s.path.push_back(at_);
      std::reverse(s.path.begin(), s.path.end());
      return s;
    }

   private:
    double shortest(plan_point b, std::size_t& last) const {
      double least = plan_.sees(at_, nullptr, b, nullptr) ? detail::length(b - at_) : detail::far_away;
      for (std::size_t i = 0; i < from_.size(); ++i) {
        const plan_point v = plan_.corner_of(i);
        const double d = from_[i] + detail::length(b - v);
        if (d < least && plan_.sees(b, nullptr, v, &plan_.nodes_[i].free)) least = d, last = i;
      }
      return least;
    }
    const taut_plan& plan_;
    plan_point at_;
    std::vector<double> from_;
    std::vector<std::size_t> next_;
  };
  const std::vector<plan_segment>& edges() const { return edges_; }

 private:
  static constexpr std::size_t none = static_cast<std::size_t>(-1);
  /// Directions that are free at a corner: from one edge turning left to the next.
  struct sector {
    plan_point first{};
    double sweep = 0.0;
    bool holds(plan_point u) const {
      const double a = turn(first, u), tolerance = 1e-9 + detail::nearly / std::max(detail::length(u), 1e-12);
      return a <= sweep + tolerance || a >= 6.283185307179586 - tolerance;
    }
  };
  struct corner {
    plan_point at{};
    std::vector<sector> free{};
  };
  struct node {
    std::size_t corner;
    sector free;
  };
  struct solved {
    std::vector<double> from{};       ///< of each node: its string to the target
    std::vector<std::size_t> next{};
    std::vector<plan_point> end{};    ///< where the last leg meets the target
  };
  plan_point corner_of(std::size_t i) const { return corners_[nodes_[i].corner].at; }
  double shortest(std::size_t target, plan_point p, std::size_t& first, plan_point& end) const {
    double least = detail::far_away;
    direct(target, p, nullptr, least, end);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
      const plan_point v = corner_of(i);
      const double d = detail::length(v - p) + made_[target].from[i];
      if (d < least && sees(p, nullptr, v, &nodes_[i].free)) least = d, first = i;
    }
    return least;
  }
  static double turn(plan_point u, plan_point v) {
    const double a = std::atan2(detail::cross(u, v), detail::dot(u, v));
    return a < 0.0 ? a + 6.283185307179586 : a;
  }
  void make_sectors(corner& c) const {
    std::vector<plan_point> out;
    for (const auto& e : edges_) {
      if (detail::to_segment(c.at, e.from, e.to) > detail::nearly) continue;
      for (const auto& end : {e.from, e.to})
        if (detail::length(end - c.at) > detail::nearly) out.push_back(end - c.at);
    }
    const plan_point zero = out.front();
    std::sort(out.begin(), out.end(), [&](plan_point a, plan_point b) { return turn(zero, a) < turn(zero, b); });
    for (std::size_t i = 0; i < out.size(); ++i) {
      double sweep = out.size() == 1 ? 6.283185307179586 : turn(out[i], out[(i + 1) % out.size()]);
      if (out.size() > 1 && i + 1 == out.size() && sweep == 0.0) continue;
      if (sweep < 1e-9) continue;  // edges on each other
      const double half = std::atan2(out[i].y_m, out[i].x_m) + 0.5 * sweep;
      if (detail::inside(outline_, c.at + 1e-6 * plan_point{std::cos(half), std::sin(half)}, 0.0)) c.free.push_back({out[i], sweep});
    }
  }
  /// Whether a string runs straight from a to b. With a sector: it must leave within it.
  bool sees(plan_point a, const sector* at_a, plan_point b, const sector* at_b) const {
    const plan_point u = b - a;
    const double l = detail::length(u);
    if (l <= detail::nearly) return true;
    if ((at_a && !at_a->holds(u)) || (at_b && !at_b->holds(plan_point{} - u))) return false;
    for (const auto& e : edges_)
      if (detail::cross_inside(a, b, e.from, e.to)) return false;
    for (const auto& c : corners_) {
      const plan_point w = c.at - a;
      if (std::fabs(detail::cross(u, w)) > detail::nearly * l) continue;
      const double t = detail::dot(u, w);
      if (t <= detail::nearly * l || t >= (l - detail::nearly) * l) continue;
      if (std::none_of(c.free.begin(), c.free.end(), [&](const sector& s) { return s.holds(u) && s.holds(plan_point{} - u); })) return false;
    }
    return detail::inside(outline_, a + 0.5 * u);
  }
  /// The straight string from p to a target, if it is shorter than `least`.
  void direct(std::size_t target, plan_point p, const sector* at_p, double& least, plan_point& end) const {
    const auto& t = targets_[target];
    if (t.outline.empty()) {
      const double d = detail::length(t.at - p);
      if (d < least && sees(p, at_p, t.at, nullptr)) least = d, end = t.at;
      return;
    }
    if (detail::inside(t.outline, p) && (!at_p || detail::to_outline(t.outline, p) > same_place_m)) {
      if (0.0 < least) least = 0.0, end = p;
      return;
    }
    const auto& in = inset_[target];
    const std::size_t n = t.outline.size();
    for (std::size_t i = 0; i < n; ++i) {
      const plan_point a = t.outline[i], b = t.outline[(i + 1) % n];
      const double part = detail::nearest_part(p, a, b);
      const plan_point foot = detail::along(a, b, part);
      const double d = detail::length(foot - p);
      if (!(d < least)) continue;
      // seen from inside the target, so that a screen on its very edge stops the string
      const plan_point inner = part <= 0.0 ? in.corner[i] : part >= 1.0 ? in.corner[(i + 1) % n] : foot + in.edge[i];
      if (sees(p, at_p, inner, nullptr)) least = d, end = foot;
    }
  }
  void make_inset(const string_target& t) {
    inset in;
    const std::size_t n = t.outline.size();
    for (std::size_t i = 0; i < n; ++i) {
      const plan_point u = t.outline[(i + 1) % n] - t.outline[i];
      in.edge.push_back((same_place_m / detail::length(u)) * plan_point{-u.y_m, u.x_m});
    }
    for (std::size_t i = 0; i < n; ++i) {
      const plan_point sum = in.edge[(i + n - 1) % n] + in.edge[i];
      const double l = detail::length(sum);
      in.corner.push_back(t.outline[i] + (l > 0.0 ? same_place_m / l : 0.0) * sum);
    }
    inset_.push_back(std::move(in));
  }
  /// Shortest ways on from what is known of each node, along straight strings between them.
  void spread(std::vector<double>& from, std::vector<std::size_t>* next) const {
    if (between_.empty() && !nodes_.empty()) {
      between_.assign(nodes_.size() * nodes_.size(), detail::far_away);
      for (std::size_t i = 0; i < nodes_.size(); ++i)
        for (std::size_t j = 0; j < nodes_.size(); ++j) {
          const plan_point a = corners_[nodes_[i].corner].at, b = corners_[nodes_[j].corner].at;
          if (nodes_[i].corner != nodes_[j].corner && sees(a, &nodes_[i].free, b, &nodes_[j].free)) between_[i * nodes_.size() + j] = detail::length(b - a);
        }
    }
    std::vector<char> done(nodes_.size(), 0);
    for (std::size_t round = 0; round < nodes_.size(); ++round) {
      std::size_t nearest = none;
      for (std::size_t i = 0; i < nodes_.size(); ++i)
        if (!done[i] && from[i] < detail::far_away && (nearest == none || from[i] < from[nearest])) nearest = i;
      if (nearest == none) break;
      done[nearest] = 1;
      for (std::size_t j = 0; j < nodes_.size(); ++j)
        if (const double d = from[nearest] + between_[nearest * nodes_.size() + j]; d < from[j]) {
          from[j] = d;
          if (next) (*next)[j] = nearest;
        }
    }
  }
  solved solve(std::size_t target) {
    solved s;
    s.from.assign(nodes_.size(), detail::far_away);
    s.next.assign(nodes_.size(), none);
    s.end.assign(nodes_.size(), {});
    for (std::size_t i = 0; i < nodes_.size(); ++i) direct(target, corners_[nodes_[i].corner].at, &nodes_[i].free, s.from[i], s.end[i]);
    spread(s.from, &s.next);
    return s;
  }
  struct inset {
    std::vector<plan_point> edge{}, corner{};
  };
  plan_polygon outline_{};
  std::vector<string_target> targets_{};
  std::vector<plan_segment> edges_{};
  std::vector<corner> corners_{};
  std::vector<node> nodes_{};
  std::vector<inset> inset_{};
  std::vector<solved> made_{};
  mutable std::vector<double> between_{};
};

/// A partition with its ends put onto the wall or the other partition that they come within 1 mm of.
inline plan_segment join(plan_segment s, const plan_polygon& outline, const std::vector<plan_segment>& others) {
  for (plan_point* end : {&s.from, &s.to}) {
    plan_point best = *end;
    double least = same_place_m;
    const auto take = [&](plan_point a, plan_point b) {
      const double part = detail::nearest_part(*end, a, b);
      for (const plan_point to : {a, b, detail::along(a, b, part)})  // a corner before a place beside it
        if (detail::length(to - *end) < least - detail::nearly) least = detail::length(to - *end), best = to;
    };
    for (std::size_t i = 0; i < outline.size(); ++i) take(outline[i], outline[(i + 1) % outline.size()]);
    for (const auto& o : others) take(o.from, o.to);
    *end = best;
  }
  return s;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

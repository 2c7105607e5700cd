// SPDX-License-Identifier: MIT
// Zones of a room with a bath or a shower: which zone a place lies in, how far from its edges, and whether a tape can tell.
// Subject: setting_out (models). Zones and distances are rows of a rulebook; heights are above the finished floor.
#pragma once
#include <array>
#include <cstdint>
#include <map>
#include <memory>
#include "../rulebook.hpp"
#include "floor_plan.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

enum class wet_kind : unsigned char { bath, shower_tray, shower_without_basin };
inline constexpr std::string_view wet_kinds[] = {"bath", "shower_tray", "shower_without_basin"};

/// A bath, a tray, or a shower that drains into the floor.
struct wet_fixture {
  std::string name{};
  wet_kind kind = wet_kind::bath;
  plan_polygon outline{};             ///< of a bath or tray; drawn up to the wall where it is sealed to it
  plan_point outlet{};                ///< without a basin: centre of the fixed outlet, in plan
  double outlet_height_m = no_number; ///< highest fixed shower head or outlet
  double rim_m = no_number;           ///< of a bath or tray: its upper edge
  double bottom_m = no_number;        ///< underside of what holds water: below it lies the space under the bath; not a number: not told apart
  bool under_needs_tool = false;      ///< the space under it opens with a tool only

  bool basin() const { return kind != wet_kind::shower_without_basin; }
};
enum class partition_kind : unsigned char { partition, door, window, curtain };
inline constexpr std::string_view partition_kinds[] = {"partition", "door", "window", "curtain"};
/// Something that may stop the string. It has no thickness.
struct room_partition {
  std::string name{};
  plan_segment line{};
  double top_m = no_number;  ///< not a number: up to the ceiling
  double bottom_m = 0.0;     ///< above 0: a string passes under it
  partition_kind kind = partition_kind::partition;
};
/// A slope of the ceiling through three places; where there are several, the lowest is the ceiling.
struct ceiling_plane {
  std::array<plan_point, 3> at{};
  std::array<double, 3> height_m{};
};
struct wet_room {
  plan_polygon outline{};
  double floor_m = 0.0;                 ///< level of the finished floor, from which all heights of a point are counted off
  double ceiling_m = no_number;         ///< flat part
  std::vector<ceiling_plane> slopes{};
  std::vector<wet_fixture> fixtures{};
  std::vector<room_partition> partitions{};
};
struct room_place {
  double x_m = 0.0, y_m = 0.0, height_m = 0.0;
};

inline constexpr int outside_zones = 4, no_zone_rule = -1;
inline constexpr std::string_view zone_words[] = {"0", "1", "2", "3", "outside"};
constexpr std::string_view zone_word(int zone) { return zone == no_zone_rule ? std::string_view("no rule in book") : zone_words[zone]; }

/// What a rulebook says of the zones.
struct zone_limits {
  double height_m = no_number, zone1_radius_m = no_number, zone2_width_m = no_number, zone0_height_m = no_number;
  double zone3_width_m = no_number;       ///< older editions
  double socket_distance_m = no_number;   ///< of socket-outlets from zone 1; not a number: the book has none
  double cable_depth_m = no_number;       ///< behind these zones, less deep cables of other circuits are restricted
  double special_height_m = no_number, special_edge_m = no_number, special_radius_m = no_number;  ///< of a location with notifiable work
  bool from_bottom = false;               ///< the height counts from the bottom of the bath or tray
  bool low_partitions = true, doors = false, windows = false;  ///< what limits the zones besides walls and full partitions
  std::vector<source> sources{};
  std::vector<std::string> missing{};
};
inline zone_limits zone_limits_of(const rulebook& book) {
  zone_limits z;
  const auto take = [&](std::string_view id, std::string_view condition, double& to, bool needed) {
    const auto r = book.find(id, condition);
    if (r.found()) {
      to = r.numbers()[0];
      z.sources.push_back(r.changed ? source{"override", {}, "override"} : r.from());
    } else if (needed) {
      z.missing.push_back("no \"" + std::string(id) + "\" in " + (book.tables().empty() && book.overrides().empty() ? std::string("an empty rulebook") : book.id()));
    }
    return r;
  };
  if (const auto r = take("bathroom_zone_height", "", z.height_m, true); r.found()) z.from_bottom = r.numbers()[1] > 0.5;
  take("bathroom_zone2_width", "", z.zone2_width_m, true);
  take("bathroom_zone1_radius", "", z.zone1_radius_m, false);
  take("bathroom_zone0_height", "", z.zone0_height_m, false);
  take("bathroom_zone3_width", "", z.zone3_width_m, false);
  take("bathroom_socket_distance", "", z.socket_distance_m, false);
  take("bathroom_cable_depth", "", z.cable_depth_m, false);
  take("special_location_height", "", z.special_height_m, false);
  take("special_location_edge", "", z.special_edge_m, false);
  take("special_location_radius", "", z.special_radius_m, false);
  double low = 1.0, door = 0.0, window = 0.0;
  take("bathroom_limited_by", "low_partition", low, false);
  take("bathroom_limited_by", "door", door, false);
  take("bathroom_limited_by", "window", window, false);
  z.low_partitions = low > 0.5, z.doors = door > 0.5, z.windows = window > 0.5;
  return z;
}

/// One bath or shower as a place sees it.
struct fixture_place {
  double string_m = detail::far_away;     ///< from its edge (without a basin: from its outlet); infinite: shut out
  double to_zone_1_m = detail::far_away;  ///< in plan from the edge of zone 1; below 0: inside
  double to_outer_m = -detail::far_away;  ///< in plan to the outer edge of its outermost zone; below 0: beyond
  double top_m = no_number;               ///< of its zones
  int zone = outside_zones;
  std::vector<room_place> path{};         ///< of the string, from the fixture
  std::string passes{};                   ///< "over" or "under" a partition, with its name
};
struct zone_answer {
  int zone = no_zone_rule;
  bool doubtful = false;
  int strictest = no_zone_rule;             ///< the strictest zone that the tape leaves possible (5 %)
  double probability = no_number;           ///< that the place lies in `zone`
  std::array<double, 5> probabilities{};    ///< of zones 0, 1, 2, 3, outside
  std::size_t governing = 0;
  std::vector<fixture_place> fixtures{};
  double from_zone_1_m = detail::far_away;  ///< least, in plan; below 0: inside
  double ceiling_m = no_number;             ///< above the place
  double tape_m = no_number;                ///< limit of error of the string that governs
  bool assumed = false;                     ///< the tape was not described
  bool in_special_location = false;
};

/// A room made ready for many places. One object is not for several threads at once.
class bathroom {
 public:
  bathroom(std::string_view who, wet_room room, const rulebook& book) : who_(who), room_(std::move(room)), limits_(zone_limits_of(book)) { demand(); }

  const zone_limits& limits() const { return limits_; }
  const wet_room& room() const { return room_; }
  /// Fixtures that stand within 50 mm of a wall and do not reach it: probably sealed to it.
  const std::vector<std::string>& remarks() const { return remarks_; }

  /// `tape_m`: limit of error of one length with the tape; not a number: 2 %, at least 10 mm.
  zone_answer at(room_place p, double tape_m = no_number, const std::string& what = "point") const {
    zone_answer a;
    for (const double x : {p.x_m, p.y_m, p.height_m})
      if (!(std::fabs(x) <= 100.0))
        throw range_error(who_ + ": " + what + ": " + number_text(x) + " m is not between -100 m and 100 m" + (is_finite(x) ? "; if it was in mm, write " + number_text(x / 1000.0) + " m" : std::string()));
    if (!is_nan(tape_m) && !(tape_m >= 0.0 && tape_m <= 1.0)) throw range_error(who_ + ": tape_m: " + number_text(tape_m) + " m: from 0 to 1 m");
    plan_point at{p.x_m, p.y_m};
    if (!detail::inside(room_.outline, at)) {
      const double off = detail::to_outline(room_.outline, at);
      if (off > same_place_m)
        throw range_error(who_ + ": " + what + " " + detail::place_text(at) + " lies outside the room, " + number_text(off, 3) +
                          " m from its outline; through a doorway: draw the space behind it into the outline, its walls as partitions");
      at = on_outline(at);
    }
    const double z = p.height_m - room_.floor_m;
    if (z < -same_place_m) throw range_error(who_ + ": " + what + ": height_m " + number_text(p.height_m) + " m is below the floor at " + number_text(room_.floor_m) + " m");
    a.ceiling_m = ceiling_at(at);
    if (!is_nan(a.ceiling_m) && z > a.ceiling_m + same_place_m)
      throw range_error(who_ + ": " + what + ": height_m " + number_text(p.height_m) + " m is above the ceiling, which is " + number_text(a.ceiling_m + room_.floor_m, 4) + " m there");
    for (std::size_t f = 0; f < room_.fixtures.size(); ++f) a.fixtures.push_back(seen_from(f, at, std::max(z, 0.0)));
    for (std::size_t f = 0; f < a.fixtures.size(); ++f) {
      const auto &x = a.fixtures[f], &g = a.fixtures[a.governing];
      if (x.zone < g.zone || (x.zone == g.zone && x.string_m < g.string_m)) a.governing = f;
      a.from_zone_1_m = std::min(a.from_zone_1_m, x.to_zone_1_m);
    }
    for (std::size_t f = 0; f < a.fixtures.size(); ++f) a.in_special_location = a.in_special_location || special(f, a.fixtures[f], z);
    if (!limits_.missing.empty()) return a;
    a.zone = a.fixtures[a.governing].zone;
    judge(a, z, tape_m);
    return a;
  }
  /// Height of the ceiling over a place, above the floor; not a number: none was given.
  double ceiling_at(plan_point at) const {
    double least = is_nan(room_.ceiling_m) ? no_number : room_.ceiling_m - room_.floor_m;
    for (const auto& s : room_.slopes) {
      const plan_point u = s.at[1] - s.at[0], v = s.at[2] - s.at[0], w = at - s.at[0];
      const double d = detail::cross(u, v), p = detail::cross(w, v) / d, q = detail::cross(u, w) / d;
      const double h = s.height_m[0] + p * (s.height_m[1] - s.height_m[0]) + q * (s.height_m[2] - s.height_m[0]) - room_.floor_m;
      if (!(h >= least)) least = h;
    }
    return least;
  }

 private:
  struct open_edge {
    plan_point from{}, to{};
  };
  std::string name_of(const wet_fixture& f) const {
    const auto i = static_cast<std::size_t>(&f - room_.fixtures.data());
    return f.name.empty() ? "fixtures[" + std::to_string(i) + "]" : "\"" + f.name + "\"";
  }
  std::string name_of(const room_partition& p) const {
    const auto i = static_cast<std::size_t>(&p - room_.partitions.data());
    return p.name.empty() ? "partitions[" + std::to_string(i) + "]" : "\"" + p.name + "\"";
  }
  plan_point on_outline(plan_point at) const {
    plan_point best = at;
    double least = detail::far_away;
    for (std::size_t i = 0; i < room_.outline.size(); ++i) {
      const plan_point a = room_.outline[i], b = room_.outline[(i + 1) % room_.outline.size()], to = detail::along(a, b, detail::nearest_part(at, a, b));
      if (detail::length(to - at) < least) least = detail::length(to - at), best = to;
    }
    return best;
  }
  void within(const std::string& what, double x, double low, double high) const {
    if (!(x >= low && x <= high))
      throw range_error(who_ + ": " + what + ": " + number_text(x) + " m: from " + number_text(low) + " to " + number_text(high) + " m" +
                        (x / 1000.0 >= low && x / 1000.0 <= high && x > high ? "; if it was in mm, write " + number_text(x / 1000.0) + " m" : std::string()));
  }
  void demand() {
    room_.outline = detail::demand_polygon(who_ + ": room outline", room_.outline);
    within("floor_m", room_.floor_m, -50.0, 50.0);
    if (!is_nan(room_.ceiling_m)) within("ceiling_m less floor_m", room_.ceiling_m - room_.floor_m, 0.5, 20.0);
    if (room_.slopes.size() > 10) throw range_error(who_ + ": slopes: at most 10");
    for (const auto& s : room_.slopes) {
      if (!(std::fabs(detail::cross(s.at[1] - s.at[0], s.at[2] - s.at[0])) > 1e-3)) throw range_error(who_ + ": slopes: the three places of a slope lie on one line");
      for (const double h : s.height_m) within("height_m of a slope", h, -50.0, 70.0);
    }
    if (room_.fixtures.empty()) throw range_error(who_ + ": fixtures: at least one bath or shower");
    if (room_.fixtures.size() > 20) throw range_error(who_ + ": fixtures: at most 20");
    if (room_.partitions.size() > 40) throw range_error(who_ + ": partitions: at most 40");
    for (auto& f : room_.fixtures) {
      const std::string name = who_ + ": fixture " + name_of(f);
      if (f.basin()) {
        f.outline = detail::demand_polygon(name, f.outline);
        for (std::size_t i = 0; i < f.outline.size(); ++i) in_room(name, f.outline[i]);
        for (std::size_t i = 0; i < f.outline.size(); ++i)
          for (std::size_t j = 0; j < room_.outline.size(); ++j) {
            const plan_point a = f.outline[i], b = f.outline[(i + 1) % f.outline.size()], c = room_.outline[j], d = room_.outline[(j + 1) % room_.outline.size()];
            if (detail::cross_inside(a, b, c, d) && !(std::min(detail::to_segment(a, c, d), detail::to_segment(b, c, d)) <= same_place_m || std::min(detail::to_segment(c, a, b), detail::to_segment(d, a, b)) <= same_place_m))
              throw range_error(name + ": " + detail::edge_text(f.outline, i) + " crosses " + detail::edge_text(room_.outline, j) + " of the room");
          }
        if (is_nan(f.rim_m)) throw range_error(name + ": rim_m is missing: height of its upper edge above the floor");
        within("rim_m of " + name_of(f), f.rim_m, 0.0, 2.0);
        if (!is_nan(f.bottom_m)) {
          within("bottom_m of " + name_of(f), f.bottom_m, 0.0, 2.0);
          if (f.bottom_m > f.rim_m) throw relation_error(name + ": bottom_m " + number_text(f.bottom_m) + " m is above its rim at " + number_text(f.rim_m) + " m");
        }
        remark_gap(f);
      } else {
        in_room(name + ": outlet", f.outlet);
        if (!detail::inside(room_.outline, f.outlet)) f.outlet = on_outline(f.outlet);
        if (is_nan(limits_.zone1_radius_m) && limits_.missing.empty()) limits_.missing.push_back("no \"bathroom_zone1_radius\" in the book, which a shower without a basin needs");
      }
      if (!is_nan(f.outlet_height_m)) within("outlet_height_m of " + name_of(f), f.outlet_height_m, 0.0, 10.0);
      targets_.push_back({f.basin() ? f.outline : plan_polygon{}, f.outlet});
    }
    std::vector<plan_segment> lines;
    for (const auto& p : room_.partitions) {
      const std::string name = who_ + ": partition " + name_of(p);
      in_room(name, p.line.from), in_room(name, p.line.to);
      if (detail::length(p.line.to - p.line.from) < same_place_m) throw range_error(name + " is shorter than 1 mm");
      within("bottom_m of " + name_of(p), p.bottom_m, 0.0, 10.0);
      if (!is_nan(p.top_m)) {
        within("top_m of " + name_of(p), p.top_m, 0.0, 10.0);
        if (!(p.top_m > p.bottom_m)) throw relation_error(name + ": top_m " + number_text(p.top_m) + " m is not above bottom_m " + number_text(p.bottom_m) + " m");
      }
      lines.push_back(p.line);
    }
    for (int pass = 0; pass < 2; ++pass)
      for (std::size_t i = 0; i < lines.size(); ++i) {
        std::vector<plan_segment> others;
        for (std::size_t j = 0; j < lines.size(); ++j)
          if (j != i) others.push_back(lines[j]);
        lines[i] = join(lines[i], room_.outline, others);
      }
    for (std::size_t i = 0; i < lines.size(); ++i) {
      for (std::size_t j = 0; j < room_.outline.size(); ++j)
        if (detail::cross_inside(lines[i].from, lines[i].to, room_.outline[j], room_.outline[(j + 1) % room_.outline.size()]))
          throw range_error(who_ + ": partition " + name_of(room_.partitions[i]) + " crosses " + detail::edge_text(room_.outline, j) + " of the room");
      for (std::size_t j = i + 1; j < lines.size(); ++j)
        if (detail::cross_inside(lines[i].from, lines[i].to, lines[j].from, lines[j].to))
          throw range_error(who_ + ": partitions " + name_of(room_.partitions[i]) + " and " + name_of(room_.partitions[j]) + " cross: split one of them where they meet");
      if (!detail::inside(room_.outline, 0.5 * (lines[i].from + lines[i].to), same_place_m)) throw range_error(who_ + ": partition " + name_of(room_.partitions[i]) + " runs outside the room");
      room_.partitions[i].line = lines[i];
    }
    for (std::size_t f = 0; f < room_.fixtures.size(); ++f) open_.push_back(open_edges(room_.fixtures[f], top_of(f)));
  }
  void in_room(const std::string& name, plan_point p) const {
    if (!(std::fabs(p.x_m) <= 100.0 && std::fabs(p.y_m) <= 100.0))
      throw range_error(name + ": " + detail::place_text(p) + " is not between -100 m and 100 m; if it was in mm, divide by 1000");
    if (!detail::inside(room_.outline, p, same_place_m))
      throw range_error(name + ": " + detail::place_text(p) + " lies outside the room, " + number_text(detail::to_outline(room_.outline, p), 3) + " m from its outline");
  }
  void remark_gap(const wet_fixture& f) {
    for (std::size_t i = 0; i < f.outline.size(); ++i) {
      const plan_point a = f.outline[i], b = f.outline[(i + 1) % f.outline.size()];
      double gap = detail::far_away;
      for (std::size_t j = 0; j < room_.outline.size(); ++j) {
        const plan_point c = room_.outline[j], d = room_.outline[(j + 1) % room_.outline.size()];
        gap = std::min(gap, std::max(detail::to_segment(a, c, d), detail::to_segment(b, c, d)));
      }
      if (gap > same_place_m && gap <= 0.05) {
        remarks_.push_back("Fixture " + name_of(f) + " is drawn up to " + number_text(1000.0 * gap, 2) + " mm off a wall: if it is sealed to the wall, draw it up to it, or the wall above the gap counts as beside it.");
        return;
      }
    }
  }
  double top_of(std::size_t f) const {
    const auto& x = room_.fixtures[f];
    const double from = limits_.from_bottom && x.basin() && !is_nan(x.bottom_m) ? x.bottom_m : 0.0;
    const double top = from + limits_.height_m;
    return !is_nan(x.outlet_height_m) && x.outlet_height_m > top ? x.outlet_height_m : top;
  }
  bool stops(const room_partition& p) const {
    if (p.kind == partition_kind::curtain) return false;
    if (p.kind == partition_kind::door) return limits_.doors;
    if (p.kind == partition_kind::window) return limits_.windows;
    return true;
  }
  bool full(const room_partition& p, double top) const { return is_nan(p.top_m) || p.top_m >= top; }
  /// Whether it stops every string between two heights, for zones up to `top`.
  bool blocks(const room_partition& p, double low, double high, double top) const {
    if (!stops(p) || (!limits_.low_partitions && !(full(p, top) && p.bottom_m <= 0.0))) return false;
    return (p.bottom_m <= 0.0 || p.bottom_m < low) && (full(p, top) || p.top_m > high);
  }
  const taut_plan& plan_for(double low, double high, double top) const {
    std::uint64_t which = 0;
    for (std::size_t i = 0; i < room_.partitions.size(); ++i)
      if (blocks(room_.partitions[i], low, high, top)) which |= std::uint64_t{1} << i;
    auto& plan = plans_[which];
    if (!plan) {
      std::vector<plan_segment> lines;
      for (std::size_t i = 0; i < room_.partitions.size(); ++i)
        if (which >> i & 1u) lines.push_back(room_.partitions[i].line);
      plan = std::make_unique<taut_plan>(room_.outline, lines, targets_);
    }
    return *plan;
  }
  /// Parts of a basin's edge that lie on no wall and no full partition: where zone 1 ends.
  std::vector<open_edge> open_edges(const wet_fixture& f, double top) const {
    std::vector<open_edge> open;
    if (!f.basin()) return open;
    std::vector<plan_segment> shut;
    for (std::size_t j = 0; j < room_.outline.size(); ++j) shut.push_back({room_.outline[j], room_.outline[(j + 1) % room_.outline.size()]});
    for (const auto& p : room_.partitions)
      if (stops(p) && full(p, top) && p.bottom_m <= 0.0) shut.push_back(p.line);
    for (std::size_t i = 0; i < f.outline.size(); ++i) {
      const plan_point a = f.outline[i], b = f.outline[(i + 1) % f.outline.size()], u = b - a;
      const double l = detail::length(u);
      std::vector<std::pair<double, double>> hidden;
      for (const auto& s : shut) {
        const plan_point v = s.to - s.from;
        if (std::fabs(detail::cross(u, v)) > 0.01 * l * detail::length(v)) continue;
        const double t0 = detail::dot(s.from - a, u) / (l * l), t1 = detail::dot(s.to - a, u) / (l * l);
        const double low = std::clamp(std::min(t0, t1), 0.0, 1.0), high = std::clamp(std::max(t0, t1), 0.0, 1.0);
        if (high > low && detail::to_segment(a + 0.5 * (low + high) * u, s.from, s.to) <= same_place_m) hidden.emplace_back(low, high);
      }
      std::sort(hidden.begin(), hidden.end());
      double at = 0.0;
      for (const auto& [low, high] : hidden) {
        if (low > at + 1e-9) open.push_back({a + at * u, a + low * u});
        at = std::max(at, high);
      }
      if (at < 1.0 - 1e-9) open.push_back({a + at * u, b});
    }
    return open;
  }
  /// The string over or under a partition that blocks at height z, if it is shorter than what is known.
  void pass(std::size_t f, plan_point at, double z, double top, const room_partition& p, double through, std::string_view word, fixture_place& known) const {
    const double rise = std::fabs(through - z);
    const plan_point a = p.line.from, b = p.line.to;
    const auto& target = targets_[f];
    double gap = detail::far_away;  // of the partition from the target, straight
    if (target.outline.empty()) {
      gap = detail::to_segment(target.at, a, b);
    } else {
      for (std::size_t i = 0; i < target.outline.size(); ++i) gap = std::min(gap, detail::segment_gap(a, b, target.outline[i], target.outline[(i + 1) % target.outline.size()]));
      if (detail::inside(target.outline, a)) gap = 0.0;
    }
    const double near = detail::to_segment(at, a, b);
    if (!(gap + std::sqrt(near * near + rise * rise) < known.string_m)) return;
    const auto& upper = plan_for(through, through, top);
    // what stops the sloping leg at every height of it
    const taut_plan::from_place leg(plan_for(std::min(through, z), std::max(through, z), top), at);
    const auto length_at = [&](double t) {
      const plan_point q = detail::along(a, b, t);
      const double d = leg.to(q);
      return upper.length_to(f, q) + std::sqrt(d * d + rise * rise);
    };
    // neither part changes faster than the place itself moves: stretches that cannot hold anything shorter are dropped
    const double l = detail::length(b - a), close = 1e-4;
    struct stretch {
      double low, high, at_low, at_high;
    };
    constexpr int pieces = 16;
    std::vector<stretch> open;
    double best = known.string_m, best_t = no_number, before = length_at(0.0);
    const auto take = [&](double t, double v) {
      if (v < best) best = v, best_t = t;
    };
    take(0.0, before);
    for (int i = 0; i < pieces; ++i) {
      const double low = static_cast<double>(i) / pieces, high = static_cast<double>(i + 1) / pieces, v = length_at(high);
      take(high, v);
      open.push_back({low, high, before, v});
      before = v;
    }
    while (!open.empty()) {
      const stretch s = open.back();
      open.pop_back();
      const double width = (s.high - s.low) * l;
      const double least = is_finite(s.at_low) && is_finite(s.at_high) ? 0.5 * (s.at_low + s.at_high) - width : std::min(s.at_low, s.at_high) - 2.0 * width;  // one end may be shut out
      if (!(least < best - close)) continue;
      const double t = 0.5 * (s.low + s.high), v = length_at(t);
      take(t, v);
      if (width < close) continue;
      open.push_back({s.low, t, s.at_low, v});
      open.push_back({t, s.high, v, s.at_high});
    }
    if (is_nan(best_t)) return;
    double low = std::max(0.0, best_t - 1.0 / (4.0 * pieces)), high = std::min(1.0, best_t + 1.0 / (4.0 * pieces));  // polish: golden section about the best
    constexpr double golden = 0.6180339887498949;
    double x1 = high - golden * (high - low), x2 = low + golden * (high - low), f1 = length_at(x1), f2 = length_at(x2);
    for (int i = 0; i < 60 && (high - low) * l > 1e-9; ++i) {
      take(x1, f1), take(x2, f2);
      if (f1 < f2) high = x2, x2 = x1, f2 = f1, x1 = high - golden * (high - low), f1 = length_at(x1);
      else low = x1, x1 = x2, f1 = f2, x2 = low + golden * (high - low), f2 = length_at(x2);
    }
    known.string_m = best;
    known.passes = std::string(word) + " " + name_of(p);
    known.path.clear();
    const plan_point q = detail::along(a, b, best_t);
    for (const auto& c : upper.string_to(f, q).path) known.path.push_back({c.x_m, c.y_m, room_.floor_m + through});
    auto down = leg.string_to(q);
    std::reverse(down.path.begin(), down.path.end());
    double gone = 0.0;
    for (std::size_t i = 1; i < down.path.size(); ++i) {
      gone += detail::length(down.path[i] - down.path[i - 1]);
      known.path.push_back({down.path[i].x_m, down.path[i].y_m, room_.floor_m + through + (z - through) * (down.length_m > 0.0 ? gone / down.length_m : 1.0)});
    }
    if (down.path.size() < 2) known.path.push_back({at.x_m, at.y_m, room_.floor_m + z});
  }
  fixture_place seen_from(std::size_t f, plan_point at, double z) const {
    const auto& x = room_.fixtures[f];
    fixture_place s;
    const double top = limits_.missing.empty() ? top_of(f) : detail::far_away;
    auto t = plan_for(z, z, top).string_to(f, at);
    s.string_m = t.length_m;
    for (const auto& p : t.path) s.path.push_back({p.x_m, p.y_m, room_.floor_m + z});
    for (const auto& p : room_.partitions) {
      if (!blocks(p, z, z, top)) continue;
      if (!full(p, top)) pass(f, at, z, top, p, p.top_m, "over", s);
      if (p.bottom_m > 0.0) pass(f, at, z, top, p, p.bottom_m, "under", s);
    }
    s.top_m = limits_.missing.empty() ? top : no_number;
    if (!limits_.missing.empty()) return s;
    const double d = signed_of(f, at, s.string_m);
    const double r1 = x.basin() ? 0.0 : limits_.zone1_radius_m, outer = x.basin() ? limits_.zone2_width_m : r1;
    const double third = outer + (is_nan(limits_.zone3_width_m) ? 0.0 : limits_.zone3_width_m);
    s.to_zone_1_m = d - r1;
    s.to_outer_m = third - d;
    const auto reaches = [](double a, double b) { return a <= b + 1e-9; };
    if (!reaches(z, top)) return s;
    if (reaches(d, r1)) {
      s.zone = 1;
      if (x.basin()) {
        const bool under = !is_nan(x.bottom_m) && z < x.bottom_m - 1e-9;
        if (under) s.zone = x.under_needs_tool ? outside_zones : 1;
        else if (reaches(z, x.rim_m)) s.zone = 0;
      } else if (reaches(z, limits_.zone0_height_m)) {
        s.zone = 0;
      }
    } else if (reaches(d, outer)) {
      s.zone = 2;
    } else if (reaches(d, third)) {
      s.zone = 3;
    }
    return s;
  }
  /// The string; inside a basin minus the way to where zone 1 ends.
  double signed_of(std::size_t f, plan_point at, double string) const {
    if (!room_.fixtures[f].basin() || string > 0.0) return string;
    double least = detail::far_away;
    for (const auto& e : open_[f]) least = std::min(least, detail::to_segment(at, e.from, e.to));
    return -least;
  }
  bool special(std::size_t f, const fixture_place& s, double z) const {
    if (is_nan(limits_.special_height_m)) return false;
    const auto& x = room_.fixtures[f];
    const double top = is_nan(x.outlet_height_m) ? limits_.special_height_m : std::max(limits_.special_height_m, x.outlet_height_m);
    return z <= top + 1e-9 && s.string_m <= (x.basin() ? limits_.special_edge_m : limits_.special_radius_m) + 1e-9;
  }
  /// How probable each zone is, with the tape's doubt of one string and one height; several fixtures are added up, which errs on the strict side.
  void judge(zone_answer& a, double z, double tape_m) const {
    a.assumed = is_nan(tape_m);
    const auto doubt = [&](double x) { return (a.assumed ? std::max(0.01, 0.02 * std::fabs(x)) : tape_m) / std::sqrt(3.0); };
    const auto below = [](double margin, double u) { return is_nan(margin) ? 0.0 : u > 0.0 ? normal_cdf(margin / u) : margin >= -1e-9 ? 1.0 : 0.0; };
    std::array<double, 4> at_most{};
    for (std::size_t f = 0; f < a.fixtures.size(); ++f) {
      const auto& s = a.fixtures[f];
      const auto& x = room_.fixtures[f];
      if (s.string_m == detail::far_away) continue;
      const double r1 = x.basin() ? 0.0 : limits_.zone1_radius_m, d = s.to_zone_1_m + r1, outer = x.basin() ? limits_.zone2_width_m : r1;
      const double u = doubt(is_finite(d) ? d : 0.0), uz = doubt(z);
      const double low = below(s.top_m - z, uz), in1 = below(r1 - d, u);
      const double under = x.basin() && !is_nan(x.bottom_m) ? below(x.bottom_m - z, uz) : 0.0;
      const double shut = x.under_needs_tool ? in1 * under : 0.0;  // under the bath, behind a panel with screws
      const double zero = x.basin() ? in1 * std::max(0.0, below(x.rim_m - z, uz) - under) : in1 * below(limits_.zone0_height_m - z, uz);
      const double first = std::max(zero, in1 * low - shut), second = std::max(first, below(outer - d, u) * low - shut);
      const double third = is_nan(limits_.zone3_width_m) ? second : std::max(second, below(outer + limits_.zone3_width_m - d, u) * low - shut);
      at_most[0] += zero, at_most[1] += first, at_most[2] += second, at_most[3] += third;
    }
    for (auto& p : at_most) p = std::min(p, 1.0);
    a.probabilities = {at_most[0], at_most[1] - at_most[0], at_most[2] - at_most[1], at_most[3] - at_most[2], 1.0 - at_most[3]};
    a.probability = a.probabilities[static_cast<std::size_t>(a.zone)];
    a.doubtful = !(a.probability >= 0.95);
    a.strictest = outside_zones;
    for (int k = 3; k >= 0; --k)
      if (at_most[static_cast<std::size_t>(k)] > 0.05) a.strictest = k;
    a.strictest = std::min(a.strictest, a.zone);
    const auto& g = a.fixtures[a.governing];
    a.tape_m = a.assumed ? std::max(0.01, 0.02 * (is_finite(g.string_m) ? g.string_m : 0.0)) : tape_m;
  }

  std::string who_;
  wet_room room_;
  zone_limits limits_;
  std::vector<string_target> targets_{};
  std::vector<std::vector<open_edge>> open_{};
  std::vector<std::string> remarks_{};
  mutable std::map<std::uint64_t, std::unique_ptr<taut_plan>> plans_{};
};

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

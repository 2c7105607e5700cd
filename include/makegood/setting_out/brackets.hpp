// SPDX-License-Identifier: MIT
// Where to drill a pattern of holes on a tiled wall: farthest from the edges of tiles, on joints, or some of each; exact, by breakpoints.
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

/// A wall of equal tiles in millimetres, x to the right, y upwards from the bottom left corner. `first_x_mm` and `first_y_mm` are the left
/// and lower edge of one whole tile: what the edges of the wall cut off follows. Courses are shifted by `shift_ratio` of the pitch, each
/// against the one below; after `courses_in_bond` of them the bond begins anew (1: straight).
struct tiled_wall {
  double width_mm = 0.0, height_mm = 0.0;
  double tile_width_mm = 0.0, tile_height_mm = 0.0, joint_mm = 0.0;
  double first_x_mm = 0.0, first_y_mm = 0.0;
  double shift_ratio = 0.0;
  int courses_in_bond = 1;
};
/// What one hole is to hit.
enum class hole_wish : unsigned char { tile, vertical_joint, horizontal_joint };
inline constexpr std::string_view hole_wishes[] = {"tile", "vertical_joint", "horizontal_joint"};
struct pattern_hole {
  double x_mm = 0.0, y_mm = 0.0;  ///< from the datum of the pattern
  hole_wish wish = hole_wish::tile;
};
struct keep_out {
  std::string name{};
  double left_mm = 0.0, bottom_mm = 0.0, right_mm = 0.0, top_mm = 0.0;
};
/// `tolerance_mm`: of the pattern's centres; `wander_mm`: of the drill, both worst cases; a keep-out is kept by a hole's whole circle with
/// both (its edge itself may be touched). The datum stays within left ... top. Without a wished place: the middle of that window.
struct bracket_task {
  tiled_wall wall{};
  std::vector<pattern_hole> holes{};
  double hole_diameter_mm = 0.0, tolerance_mm = 0.0, wander_mm = 0.0;
  std::vector<keep_out> keep_outs{};
  double left_mm = no_number, bottom_mm = no_number, right_mm = no_number, top_mm = no_number;
  double wished_x_mm = no_number, wished_y_mm = no_number;
};
struct interval_mm {
  double low, high;
};
struct hole_place {
  double x_mm = 0.0, y_mm = 0.0;
  double to_edge_mm = 0.0;    ///< from the hole's centre to the nearest edge of a tile; in a joint: 0 or below
  double to_joint_mm = 0.0;   ///< from the centre to the centre line of the nearest joint of the wished direction (tile: of any)
  double clearance_mm = 0.0;  ///< to_edge less radius, tolerance and wander; negative: the worst case breaks an edge
};
struct bracket_result {
  bool fits = false;
  double x_mm = no_number, y_mm = no_number;  ///< of the datum: of the best places the one nearest the wished
  double clearance_mm = no_number;            ///< least of the holes in tiles; not a number without one
  double off_joint_mm = no_number;            ///< greatest distance of the holes on joints from their joint; not a number without one
  std::vector<hole_place> holes{};
  std::vector<interval_mm> best_x{}, best_y{};  ///< all best places on the line through the chosen one
  std::string blame{};                          ///< where nothing fits: what would have to give
  double left_mm = no_number, bottom_mm = no_number, right_mm = no_number, top_mm = no_number;  ///< where the datum may be: wall, reach and height together
};

namespace detail {
/// One direction: where joints lie, as centre lines that repeat, cut by the ends of the wall (which are edges too).
struct joint_line {
  double first = 0.0, pitch = 1.0, half = 0.0;  ///< a centre line, how far to the next, half a joint
  double low = 0.0, high = 0.0;                 ///< the ends of the wall

  /// Distance to the centre of the nearest joint.
  double off(double x) const {
    const double r = (x - first) - pitch * std::floor((x - first) / pitch);
    return std::min(r, pitch - r);
  }
  /// Distance to the nearest edge of a tile or end of the wall.
  double edge(double x) const { return std::min(off(x) - half, std::min(x - low, high - x)); }
};
/// A function of one coordinate: the least of some ±1 slopes with breaks. Kept as what makes it: holes at offsets over joint lines.
struct one_way {
  struct part {
    double offset;
    joint_line over;
    bool on_joint;  ///< -off(), else edge()
  };
  std::vector<part> parts{};

  double at(double s) const {
    double least = std::numeric_limits<double>::infinity();
    for (const auto& p : parts) least = std::min(least, p.on_joint ? -p.over.off(s + p.offset) : p.over.edge(s + p.offset));
    return least;
  }
  /// Every place in [low, high] where it may have a maximum: the ends, the breaks, and one crossing between breaks.
  void peaks(double low, double high, std::vector<double>& out) const {
    std::vector<double>& b = breaks_;
    b.clear();
    b.push_back(low), b.push_back(high);
    const auto add = [&](double x) {
      if (x > low && x < high) b.push_back(x);
    };
    for (const auto& p : parts) {
      const double half_pitch = 0.5 * p.over.pitch;
      for (double k = std::floor((low + p.offset - p.over.first) / half_pitch); p.over.first + k * half_pitch - p.offset < high; ++k)
        add(p.over.first + k * half_pitch - p.offset);
      if (!p.on_joint)  // where an end of the wall becomes nearer than a joint: the middle between them, and the end itself
        for (const double end : {p.over.low, p.over.high}) {
          const double side = end == p.over.low ? 1.0 : -1.0;
          const double k = side > 0 ? std::ceil((end - p.over.first) / p.over.pitch) : std::floor((end - p.over.first) / p.over.pitch);
          for (int more = 0; more < 2; ++more) {
            const double joint = p.over.first + (k + side * more) * p.over.pitch;
            add(0.5 * (end + joint - side * p.over.half) - p.offset);
          }
          add(end - p.offset);
        }
    }
    std::sort(b.begin(), b.end());
    for (std::size_t i = 0; i + 1 < b.size(); ++i) {
      out.push_back(b[i]);
      const double x0 = b[i], x1 = b[i + 1], width = x1 - x0;
      if (!(width > 0.0)) continue;
      // between breaks every part is straight: the lowest rising and the lowest falling line cross once
      double rising = std::numeric_limits<double>::infinity(), falling = rising;
      for (const auto& p : parts) {
        const double f0 = p.on_joint ? -p.over.off(x0 + p.offset) : p.over.edge(x0 + p.offset), f1 = p.on_joint ? -p.over.off(x1 + p.offset) : p.over.edge(x1 + p.offset);
        if (f1 > f0) rising = std::min(rising, f0);
        else falling = std::min(falling, f1);
      }
      const double across = 0.5 * (falling - rising + width);  // rising + t = falling + width - t
      if (across > 0.0 && across < width) out.push_back(x0 + across);
    }
    out.push_back(b.back());
  }
  /// Every place in [low, high] where a part takes a level: the ends of the stretches on which the function is at least that.
  void level_edges(double level, double low, double high, std::vector<double>& out) const {
    const auto add = [&](double x) {
      if (x >= low && x <= high) out.push_back(x);
    };
    for (const auto& p : parts) {
      const double away = p.on_joint ? -level : level + p.over.half;
      for (double k = std::floor((low + p.offset - away - p.over.first) / p.over.pitch); p.over.first + k * p.over.pitch - away - p.offset <= high; ++k)
        for (const double side : {-1.0, 1.0}) add(p.over.first + k * p.over.pitch + side * away - p.offset);
      if (!p.on_joint) add(p.over.low + level - p.offset), add(p.over.high - level - p.offset);
    }
  }

 private:
  mutable std::vector<double> breaks_{};
};
}  // namespace detail

/// The best place of the datum. Holes on joints come first (their greatest distance from the joint is made least), then the clearance of
/// the holes in tiles is made greatest among those places. Exact: an optimum lies where both coordinates are an end of the window, an edge
/// of a keep-out seen from a hole, a break, or a crossing of a rising and a falling distance. Worst-case tolerances; the pattern is level.
/// `good_places`, where given, takes the best few candidates of every stretch: other optima begin there.
inline bracket_result place_brackets(const bracket_task& task, std::vector<std::pair<double, double>>* good_places = nullptr) {
  constexpr std::string_view who = "place_brackets: ";
  const auto fail = [&](const std::string& t) { throw range_error(std::string(who) + t); };
  const auto& w = task.wall;
  const auto positive = [&](double x, std::string_view name, double most) {
    if (!(x > 0.0 && x <= most)) fail(std::string(name) + " = " + number_text(x) + " mm: above 0 to " + number_text(most) + " mm");
  };
  positive(w.width_mm, "width_mm", 1e5), positive(w.height_mm, "height_mm", 1e5);
  positive(w.tile_width_mm, "tile_width_mm", 1e4), positive(w.tile_height_mm, "tile_height_mm", 1e4);
  if (!(w.joint_mm >= 0.0 && w.joint_mm < std::min(w.tile_width_mm, w.tile_height_mm))) fail("joint_mm = " + number_text(w.joint_mm) + " mm: from 0 to less than a tile");
  if (!is_finite(w.first_x_mm) || !is_finite(w.first_y_mm)) fail("first_x_mm and first_y_mm must be numbers");
  if (!(w.shift_ratio >= 0.0 && w.shift_ratio < 1.0)) fail("shift_ratio = " + number_text(w.shift_ratio) + ": from 0 to less than 1");
  if (!(w.courses_in_bond >= 1 && w.courses_in_bond <= 20)) fail("courses_in_bond: 1 to 20");
  if (task.holes.empty() || task.holes.size() > 64) fail("holes: 1 to 64");
  if (task.keep_outs.size() > 200) fail("keep_outs: at most 200");
  positive(task.hole_diameter_mm, "hole_diameter_mm", 200.0);
  for (const auto& [x, name] : {std::pair{task.tolerance_mm, "tolerance_mm"}, {task.wander_mm, "wander_mm"}})
    if (!(x >= 0.0 && x <= 100.0)) fail(std::string(name) + " = " + number_text(x) + " mm: from 0 to 100 mm");
  for (std::size_t i = 0; i < task.holes.size(); ++i)
    if (!(std::fabs(task.holes[i].x_mm) <= 1e5 && std::fabs(task.holes[i].y_mm) <= 1e5)) fail("holes[" + std::to_string(i) + "]: its place must be a number up to 1e5 mm");
  for (std::size_t i = 0; i < task.keep_outs.size(); ++i) {
    const auto& k = task.keep_outs[i];
    if (!(k.left_mm <= k.right_mm && k.bottom_mm <= k.top_mm) || !is_finite(k.left_mm) || !is_finite(k.right_mm) || !is_finite(k.bottom_mm) || !is_finite(k.top_mm))
      fail("keep_outs[" + std::to_string(i) + "]: left ... right and bottom ... top must be numbers in order");
  }

  bracket_result out;
  const double radius = 0.5 * task.hole_diameter_mm, reserve = radius + task.tolerance_mm + task.wander_mm;
  // the window: the whole pattern on the wall, and what was asked for
  double x_low = -1e300, x_high = 1e300, y_low = -1e300, y_high = 1e300;
  for (const auto& h : task.holes) {
    x_low = std::max(x_low, reserve - h.x_mm), x_high = std::min(x_high, w.width_mm - reserve - h.x_mm);
    y_low = std::max(y_low, reserve - h.y_mm), y_high = std::min(y_high, w.height_mm - reserve - h.y_mm);
  }
  if (!(x_low <= x_high && y_low <= y_high)) {
    out.blame = !(x_low <= x_high) ? "the pattern is wider than the wall: it lacks " + number_text(x_low - x_high) + " mm of width"
                                   : "the pattern is higher than the wall: it lacks " + number_text(y_low - y_high) + " mm of height";
    return out;
  }
  for (const auto& [x, name] : {std::pair{task.left_mm, "left_mm"}, {task.right_mm, "right_mm"}, {task.bottom_mm, "bottom_mm"}, {task.top_mm, "top_mm"},
                                {task.wished_x_mm, "wished_x_mm"}, {task.wished_y_mm, "wished_y_mm"}})
    if (!is_nan(x) && !(std::fabs(x) <= 1e6)) fail(std::string(name) + " must be a number");
  if (!is_nan(task.left_mm)) x_low = std::max(x_low, task.left_mm);
  if (!is_nan(task.right_mm)) x_high = std::min(x_high, task.right_mm);
  if (!is_nan(task.bottom_mm)) y_low = std::max(y_low, task.bottom_mm);
  if (!is_nan(task.top_mm)) y_high = std::min(y_high, task.top_mm);
  if (!(x_low <= x_high && y_low <= y_high)) {
    out.blame = !(x_low <= x_high) ? "the window for the datum leaves no place from left to right: widen it by " + number_text(x_low - x_high) + " mm"
                                   : "the window for the datum leaves no height: widen it by " + number_text(y_low - y_high) + " mm";
    return out;
  }
  out.left_mm = x_low, out.bottom_mm = y_low, out.right_mm = x_high, out.top_mm = y_high;
  const double wish_x = is_nan(task.wished_x_mm) ? 0.5 * (x_low + x_high) : task.wished_x_mm;
  const double wish_y = is_nan(task.wished_y_mm) ? 0.5 * (y_low + y_high) : task.wished_y_mm;

  // places that a hole in a keep-out forbids to the datum: open rectangles
  struct forbidden {
    double left, bottom, right, top;
  };
  std::vector<forbidden> no;
  for (const auto& k : task.keep_outs)
    for (const auto& h : task.holes) {
      const forbidden f{k.left_mm - reserve - h.x_mm, k.bottom_mm - reserve - h.y_mm, k.right_mm + reserve - h.x_mm, k.top_mm + reserve - h.y_mm};
      if (f.right > x_low && f.left < x_high && f.top > y_low && f.bottom < y_high) no.push_back(f);
    }
  const auto allowed = [&](double x, double y) {
    for (const auto& f : no)
      if (x > f.left && x < f.right && y > f.bottom && y < f.top) return false;
    return true;
  };

  const double pitch_x = w.tile_width_mm + w.joint_mm, pitch_y = w.tile_height_mm + w.joint_mm, half = 0.5 * w.joint_mm;
  const detail::joint_line rows{w.first_y_mm - half, pitch_y, half, 0.0, w.height_mm};
  const auto course_of = [&](double y) {  // the tile's, or of the joint's upper one
    const auto n = static_cast<long long>(std::floor((y - rows.first) / pitch_y));
    const long long m = w.courses_in_bond;
    return static_cast<int>(((n % m) + m) % m);
  };
  const auto columns = [&](int course) { return detail::joint_line{w.first_x_mm - half + course * w.shift_ratio * pitch_x, pitch_x, half, 0.0, w.width_mm}; };

  // where y changes a hole's course, a new set of vertical joints counts: stretches of y with the same courses
  std::vector<double> cuts{y_low, y_high};
  const bool shifted = w.courses_in_bond > 1 && w.shift_ratio > 0.0;
  if (shifted)
    for (const auto& h : task.holes)
      for (double k = std::ceil((y_low + h.y_mm - rows.first) / pitch_y); rows.first + k * pitch_y - h.y_mm < y_high; ++k) {
        const double y = rows.first + k * pitch_y - h.y_mm;
        if (y > y_low) cuts.push_back(y);
      }
  std::sort(cuts.begin(), cuts.end());
  cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
  if (cuts.size() == 1) cuts.push_back(cuts[0]);

  bool any_tile = false, any_joint = false;
  for (const auto& h : task.holes) (h.wish == hole_wish::tile ? any_tile : any_joint) = true;

  // y: holes over the courses
  detail::one_way y_tile, y_joint;
  for (const auto& h : task.holes) {
    if (h.wish == hole_wish::tile) y_tile.parts.push_back({h.y_mm, rows, false});
    if (h.wish == hole_wish::horizontal_joint) y_joint.parts.push_back({h.y_mm, rows, true});
  }
  struct candidate {
    double s, joint, tile;
  };
  const auto candidates = [&](const detail::one_way& tile, const detail::one_way& joint, double low, double high, bool of_x, double wish) {
    std::vector<double> s;
    if (!tile.parts.empty()) tile.peaks(low, high, s);
    if (!joint.parts.empty()) joint.peaks(low, high, s);
    s.push_back(low), s.push_back(high);
    for (const auto& f : no)
      for (const double x : {of_x ? f.left : f.bottom, of_x ? f.right : f.top}) s.push_back(x);
    s.push_back(wish);
    std::vector<candidate> all;
    std::sort(s.begin(), s.end());
    for (std::size_t i = 0; i < s.size(); ++i)
      if (s[i] >= low && s[i] <= high && (i == 0 || s[i] != s[i - 1])) all.push_back({s[i], joint.at(s[i]), tile.at(s[i])});
    return all;
  };
  const double slack = 1e-9;  // places whose value differs by rounding alone are alike
  double best_joint = -1e300, best_tile = -1e300;
  struct columns_met {  // the same for every stretch of y that has the same courses
    std::vector<int> courses;
    detail::one_way tile, joint;
    std::vector<candidate> xs;
  };
  struct stretch {
    double low, high;
    std::size_t met;
    std::vector<candidate> ys;
  };
  std::vector<columns_met> met;
  std::vector<stretch> all;
  for (std::size_t c = 0; c + 1 < cuts.size(); ++c) {
    stretch t{cuts[c], cuts[c + 1], 0, {}};
    std::vector<int> courses;
    for (const auto& h : task.holes) courses.push_back(shifted ? course_of(0.5 * (t.low + t.high) + h.y_mm) : 0);
    while (t.met < met.size() && met[t.met].courses != courses) ++t.met;
    if (t.met == met.size()) {
      met.push_back({courses, {}, {}, {}});
      auto& m = met.back();
      for (std::size_t i = 0; i < task.holes.size(); ++i) {
        const auto& h = task.holes[i];
        if (h.wish == hole_wish::tile) m.tile.parts.push_back({h.x_mm, columns(courses[i]), false});
        if (h.wish == hole_wish::vertical_joint) m.joint.parts.push_back({h.x_mm, columns(courses[i]), true});
      }
      m.xs = candidates(m.tile, m.joint, x_low, x_high, true, wish_x);
    }
    t.ys = candidates(y_tile, y_joint, t.low, t.high, false, wish_y);
    all.push_back(std::move(t));
  }
  // two passes: first how near to joints, then how far from edges
  const auto pass = [&](bool joints) {
    double& best = joints ? best_joint : best_tile;
    const auto value = [&](const candidate& k) { return joints ? k.joint : k.joint >= best_joint - slack ? k.tile : -1e300; };
    const auto better = [&](const auto& a, const auto& b) { return value(a) > value(b); };
    for (auto& m : met) std::sort(m.xs.begin(), m.xs.end(), better);
    for (auto& t : all) {
      std::sort(t.ys.begin(), t.ys.end(), better);
      for (const auto& x : met[t.met].xs) {
        if (!(value(x) > best)) break;
        for (const auto& y : t.ys) {
          const double v = std::min(value(x), value(y));
          if (!(v > best)) break;
          if (allowed(x.s, y.s)) best = v;
        }
      }
    }
  };
  // without holes of a kind its value is the same everywhere
  const auto same_everywhere = [&](double candidate::* of) {
    for (auto& m : met)
      for (auto& k : m.xs) k.*of = 0.0;
    for (auto& t : all)
      for (auto& k : t.ys) k.*of = 0.0;
    return 0.0;
  };
  if (any_joint) pass(true);
  else best_joint = same_everywhere(&candidate::joint);
  if (any_joint && any_tile && best_joint > -1e299) {  // what is as near to joints as can be ends where a distance takes that value
    const auto more = [&](const detail::one_way& tile, const detail::one_way& joint, double low, double high, std::vector<candidate>& to) {
      std::vector<double> s;
      joint.level_edges(best_joint, low, high, s);
      for (const double x : s) to.push_back({x, joint.at(x), tile.at(x)});
    };
    for (auto& m : met) more(m.tile, m.joint, x_low, x_high, m.xs);
    for (auto& t : all) more(y_tile, y_joint, t.low, t.high, t.ys);
  }
  if (any_tile && best_joint > -1e299) pass(false);
  else if (!any_tile) best_tile = same_everywhere(&candidate::tile);
  if (best_tile <= -1e299 || best_joint <= -1e299) {
    // the candidate that asks least: fewest keep-outs in the way, then the least that they would have to give
    struct {
      std::vector<std::pair<std::size_t, double>> gives{};
      double sum = 1e300, x = 0.0, y = 0.0;
    } least;
    std::size_t fewest = task.keep_outs.size() + 1;
    for (const auto& t : all)
      for (const auto& x : met[t.met].xs)
        for (const auto& y : t.ys) {
          std::vector<std::pair<std::size_t, double>> gives;
          double sum = 0.0;
          for (std::size_t k = 0; k < task.keep_outs.size() && gives.size() <= fewest; ++k) {
            const auto& o = task.keep_outs[k];
            double deep = 0.0;
            for (const auto& h : task.holes)
              deep = std::max(deep, std::min(std::min(x.s + h.x_mm + reserve - o.left_mm, o.right_mm + reserve - x.s - h.x_mm), std::min(y.s + h.y_mm + reserve - o.bottom_mm, o.top_mm + reserve - y.s - h.y_mm)));
            if (deep > 0.0) gives.push_back({k, deep}), sum += deep;
          }
          if (gives.size() < fewest || (gives.size() == fewest && sum < least.sum)) fewest = gives.size(), least = {std::move(gives), sum, x.s, y.s};
        }
    const auto name = [&](std::size_t k) { return "\"" + (task.keep_outs[k].name.empty() ? "keep-out " + std::to_string(k + 1) : task.keep_outs[k].name) + "\""; };
    out.blame = "the keep-outs cover every place of the window";
    if (fewest == 1) out.blame += "; without " + name(least.gives[0].first) + " there is one";
    if (fewest >= 1 && fewest <= task.keep_outs.size()) {
      out.blame += "; least is asked with the datum at " + number_text(std::round(10.0 * least.x) / 10.0) + ", " + number_text(std::round(10.0 * least.y) / 10.0) + " mm, where ";
      for (std::size_t i = 0; i < least.gives.size(); ++i)
        out.blame += (i == 0 ? "" : i + 1 == least.gives.size() ? " and " : ", ") + name(least.gives[i].first) + " would have to give " + number_text(std::ceil(10.0 * least.gives[i].second) / 10.0) + " mm";
    }
    return out;
  }

  // all best places: in every stretch, intervals of x times intervals of y, less what is forbidden; of them the nearest to the wish
  const auto level_set = [&](const detail::one_way& tile, const detail::one_way& joint, double low, double high, bool of_x, double wish) {
    std::vector<double> s{low, high, std::clamp(wish, low, high)};
    if (any_tile) tile.level_edges(best_tile, low, high, s);
    if (any_joint) joint.level_edges(best_joint, low, high, s);
    for (const auto& f : no)
      for (const double x : {of_x ? f.left : f.bottom, of_x ? f.right : f.top}) s.push_back(x);
    std::sort(s.begin(), s.end());
    std::vector<double> kept;
    for (const double x : s)
      if (x >= low && x <= high && (kept.empty() || x > kept.back())) kept.push_back(x);
    return kept;
  };
  double nearest = 1e300;
  const stretch* chosen = nullptr;
  const auto good = [&](const stretch& t, double x, double y) {
    const double close = 1e-7;  // of a millimetre
    const auto& m = met[t.met];
    return (!any_tile || (m.tile.at(x) >= best_tile - close && y_tile.at(y) >= best_tile - close)) &&
           (!any_joint || (m.joint.at(x) >= best_joint - close && y_joint.at(y) >= best_joint - close)) && allowed(x, y);
  };
  const auto good_along = [&](const detail::one_way& tile, const detail::one_way& joint, const std::vector<candidate>& known, double low, double high, bool of_x, double wish) {
    std::vector<double> s = level_set(tile, joint, low, high, of_x, wish);
    for (const auto& k : known) s.push_back(k.s);
    std::erase_if(s, [&](double x) { return (any_tile && !(tile.at(x) >= best_tile - 1e-7)) || (any_joint && !(joint.at(x) >= best_joint - 1e-7)); });
    return s;
  };
  std::vector<std::vector<double>> good_x(met.size());
  std::vector<char> made(met.size(), 0);
  for (const auto& t : all) {
    const auto ys = good_along(y_tile, y_joint, t.ys, t.low, t.high, false, wish_y);
    if (ys.empty()) continue;
    const auto& m = met[t.met];
    if (!made[t.met]) good_x[t.met] = good_along(m.tile, m.joint, m.xs, x_low, x_high, true, wish_x), made[t.met] = 1;
    for (const double x : good_x[t.met])
      for (const double y : ys) {
        const double d = std::hypot(x - wish_x, y - wish_y);
        if (d < nearest && allowed(x, y)) nearest = d, out.x_mm = x, out.y_mm = y, chosen = &t;
      }
  }
  out.fits = chosen != nullptr;
  if (!out.fits) {
    out.blame = "no place was found";
    return out;
  }
  const auto line = [&](const std::vector<double>& edges, const auto& is_good) {
    std::vector<interval_mm> found;
    bool open = false;
    for (std::size_t i = 0; i < edges.size(); ++i) {
      if (is_good(edges[i])) {
        if (!open) found.push_back({edges[i], edges[i]}), open = true;
        else found.back().high = edges[i];
      } else {
        open = false;
      }
      if (open && i + 1 < edges.size() && !is_good(0.5 * (edges[i] + edges[i + 1]))) open = false;
    }
    return found;
  };
  auto x_edges = level_set(met[chosen->met].tile, met[chosen->met].joint, x_low, x_high, true, out.x_mm);
  out.best_x = line(x_edges, [&](double x) { return good(*chosen, x, out.y_mm); });
  auto y_edges = level_set(y_tile, y_joint, chosen->low, chosen->high, false, out.y_mm);
  out.best_y = line(y_edges, [&](double y) { return good(*chosen, out.x_mm, y); });
  double least = 1e300, worst = 0.0;
  for (const auto& h : task.holes) {
    hole_place p;
    p.x_mm = out.x_mm + h.x_mm, p.y_mm = out.y_mm + h.y_mm;
    const auto over = columns(met[chosen->met].courses[out.holes.size()]);
    p.to_edge_mm = std::min(over.edge(p.x_mm), rows.edge(p.y_mm));
    p.to_joint_mm = h.wish == hole_wish::vertical_joint ? over.off(p.x_mm) : h.wish == hole_wish::horizontal_joint ? rows.off(p.y_mm) : std::min(over.off(p.x_mm), rows.off(p.y_mm));
    p.clearance_mm = p.to_edge_mm - reserve;
    if (h.wish == hole_wish::tile) least = std::min(least, p.clearance_mm);
    else worst = std::max(worst, p.to_joint_mm);
    out.holes.push_back(p);
  }
  if (any_tile) out.clearance_mm = least;
  if (any_joint) out.off_joint_mm = worst;
  if (good_places) {
    constexpr std::size_t few = 6;
    good_places->push_back({out.x_mm, out.y_mm});
    const auto top = [&](std::vector<candidate> from) {
      std::vector<double> s;
      for (const auto of : {&candidate::joint, &candidate::tile}) {
        std::stable_sort(from.begin(), from.end(), [&](const auto& a, const auto& b) { return a.*of > b.*of; });
        for (std::size_t i = 0; i < std::min(few, from.size()); ++i)
          if (std::find(s.begin(), s.end(), from[i].s) == s.end()) s.push_back(from[i].s);
      }
      return s;
    };
    std::vector<std::vector<double>> xs;
    for (const auto& m : met) xs.push_back(top(m.xs));
    for (const auto& t : all)
      for (const double y : top(t.ys))
        for (const double x : xs[t.met])
          if (allowed(x, y)) good_places->push_back({x, y});
  }
  return out;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

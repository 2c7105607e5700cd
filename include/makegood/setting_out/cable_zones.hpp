// SPDX-License-Identifier: MIT
// Where a rulebook lets cables run unseen in a wall, and what that says of a hole: the rule only, since wiring that somebody else left need not follow it.
// Subject: setting_out (models). Millimetres; x to the right, y upwards from the bottom left corner of the face that is looked at.
#pragma once
#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>
#include "../rulebook.hpp"
#include "../text.hpp"
#include "../verdict.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

inline constexpr std::string_view wall_corners[] = {"internal", "external", "none"};
struct cable_wall {
  double width_mm = no_number, height_mm = no_number;
  double thickness_mm = no_number;             ///< not a number: not known
  std::string left = "internal", right = "internal";  ///< corners
  bool ceiling = true;                         ///< the top of the wall meets a ceiling, or ends there
  bool far_side_seen = false;                  ///< the accessories of the other face are all in the list
};
struct wall_accessory {
  std::string name{};
  double x_mm = 0.0, y_mm = 0.0;               ///< centre, also of one on the far side: where it comes through on this face
  double width_mm = no_number, height_mm = no_number;
  bool far = false;                            ///< on the other face of the wall
};
struct cable_strip {
  double x_mm = 0.0, y_mm = 0.0, width_mm = 0.0, height_mm = 0.0;  ///< lower left corner and size
  std::string rule{};       ///< "top", "bottom", "left_corner", "right_corner", "accessory_vertical", "accessory_horizontal"
  std::string accessory{};
  bool far = false;
  source from{};
};
struct cable_zone_result {
  std::vector<cable_strip> strips{};
  double depth_mm = no_number;           ///< within which the rule holds
  double residual_current_ma = no_number;  ///< that a shallower cable needs
  double thin_wall_mm = no_number;
  bool far_counts = false;               ///< the zones of the other face lie in this one too
  bool far_unknown = false;              ///< thickness or other face not known: more strips may be there
  std::vector<std::string> missing{};
  std::vector<source> sources{};
};

namespace detail {
inline void demand_mm(std::string_view who, const std::string& what, double x, double low, double high) {
  if (x >= low && x <= high) return;
  throw range_error(std::string(who) + ": " + what + ": " + number_text(x) + " mm: from " + number_text(low) + " to " + number_text(high) + " mm" +
                    (x > 0.0 && x < low && 1000.0 * x >= low && 1000.0 * x <= high ? "; if it was in m, write " + number_text(1000.0 * x) + " mm" : std::string()));
}
inline std::string accessory_text(const wall_accessory& a, std::size_t i) { return a.name.empty() ? "accessory " + std::to_string(i + 1) : a.name; }
}  // namespace detail

/// `margin_mm`: how much wider than the accessory its strips are, on each side. The rule has no number for it: it is the caller's choice.
inline cable_zone_result cable_zones(std::string_view who, const cable_wall& wall, const std::vector<wall_accessory>& accessories, const rulebook& book, double margin_mm = 0.0) {
  detail::demand_mm(who, "wall.width_mm", wall.width_mm, 50.0, 1e5);
  detail::demand_mm(who, "wall.height_mm", wall.height_mm, 50.0, 2e4);
  if (!is_nan(wall.thickness_mm)) detail::demand_mm(who, "wall.thickness_mm", wall.thickness_mm, 5.0, 2000.0);
  detail::demand_mm(who, "margin_mm", margin_mm, 0.0, 500.0);
  for (const auto* c : {&wall.left, &wall.right})
    if (std::find(std::begin(wall_corners), std::end(wall_corners), *c) == std::end(wall_corners))
      throw range_error(std::string(who) + ": corner \"" + *c + "\" is not one of \"internal\", \"external\", \"none\"");
  if (accessories.size() > 500) throw range_error(std::string(who) + ": accessories: at most 500");
  cable_zone_result r;
  const auto from_of = [](const rulebook::answer& a) { return a.changed ? source{"override", {}, "override"} : a.from(); };
  const auto find = [&](std::string_view id, std::string_view condition, bool needed) {
    const auto a = book.find(id, condition);
    if (!a.found() && needed)
      r.missing.push_back("no \"" + std::string(id) + "\"" + (condition.empty() ? "" : " for \"" + std::string(condition) + "\"") + " in " +
                          (book.tables().empty() && book.overrides().empty() ? std::string("an empty rulebook") : book.id()));
    if (a.found()) r.sources.push_back(from_of(a));
    return a;
  };
  if (const auto a = find("cable_zone_depth", "", true); a.found()) r.depth_mm = a.numbers()[0];
  if (const auto a = find("cable_zone_thin_wall", "", false); a.found()) r.thin_wall_mm = a.numbers()[0];
  if (const auto a = find("concealed_cable_rcd", "", false); a.found()) r.residual_current_ma = a.numbers()[0];
  const double w = wall.width_mm, h = wall.height_mm;
  /// What lies beyond the wall is cut off; nothing left: no strip.
  const auto add = [&](double x0, double y0, double x1, double y1, std::string rule, const source& from, std::string accessory = {}, bool far = false) {
    x0 = std::max(x0, 0.0), y0 = std::max(y0, 0.0), x1 = std::min(x1, w), y1 = std::min(y1, h);
    if (x1 > x0 && y1 > y0) r.strips.push_back({x0, y0, x1 - x0, y1 - y0, std::move(rule), std::move(accessory), far, from});
  };
  // numbers of a band: how far from the edge it begins, how wide it is
  if (const auto a = find("cable_zone", "top", true); a.found() && wall.ceiling) add(0.0, h - a.numbers()[0] - a.numbers()[1], w, h - a.numbers()[0], "top", from_of(a));
  if (const auto a = find("cable_zone", "bottom", false); a.found()) add(0.0, a.numbers()[0], w, a.numbers()[0] + a.numbers()[1], "bottom", from_of(a));
  for (const bool left : {true, false}) {
    const std::string& corner = left ? wall.left : wall.right;
    if (corner == "none") continue;
    const auto a = find("cable_zone", corner + "_corner", corner == "internal");
    if (!a.found()) continue;
    const double from = a.numbers()[0], to = from + a.numbers()[1];
    if (left) add(from, 0.0, to, h, "left_corner", from_of(a));
    else add(w - to, 0.0, w - from, h, "right_corner", from_of(a));
  }
  const bool has_far = std::any_of(accessories.begin(), accessories.end(), [](const auto& a) { return a.far; });
  r.far_counts = !is_nan(r.thin_wall_mm) && (is_nan(wall.thickness_mm) || wall.thickness_mm <= r.thin_wall_mm);
  r.far_unknown = r.far_counts && (!wall.far_side_seen && !(has_far && !is_nan(wall.thickness_mm)));
  const auto vertical = find("cable_zone", "accessory_vertical", false), horizontal = find("cable_zone", "accessory_horizontal", false);
  for (std::size_t i = 0; i < accessories.size(); ++i) {
    const auto& a = accessories[i];
    const std::string name = detail::accessory_text(a, i), path = "accessories[" + std::to_string(i) + "].";
    detail::demand_mm(who, path + "width_mm", a.width_mm, 1.0, 5000.0);
    detail::demand_mm(who, path + "height_mm", a.height_mm, 1.0, 5000.0);
    if (!(a.x_mm >= 0.0 && a.x_mm <= w && a.y_mm >= 0.0 && a.y_mm <= h))
      throw range_error(std::string(who) + ": \"" + name + "\" at (" + number_text(a.x_mm) + ", " + number_text(a.y_mm) + ") mm is not on the wall of " + number_text(w) + " by " + number_text(h) + " mm");
    if (a.far && !r.far_counts) continue;
    if (vertical.found()) add(a.x_mm - 0.5 * a.width_mm - margin_mm, 0.0, a.x_mm + 0.5 * a.width_mm + margin_mm, h, "accessory_vertical", from_of(vertical), name, a.far);
    if (horizontal.found()) add(0.0, a.y_mm - 0.5 * a.height_mm - margin_mm, w, a.y_mm + 0.5 * a.height_mm + margin_mm, "accessory_horizontal", from_of(horizontal), name, a.far);
  }
  return r;
}

// ---- a hole -----------------------------------------------------------------------------------------------------------

enum class detector_reading : unsigned char { not_used, nothing_found, found };
inline constexpr std::string_view detector_readings[] = {"not_used", "nothing_found", "found"};
struct wall_hole {
  double x_mm = 0.0, y_mm = 0.0, diameter_mm = no_number;
  double tolerance_mm = 0.0;        ///< of its centre, worst case: marking and wander of the drill
  double depth_mm = no_number, depth_tolerance_mm = 0.0;
};
/// What is known of the detecting: a reading counts only on a circuit that was proved dead.
struct detector_use {
  detector_reading reading = detector_reading::not_used;
  bool proved_dead = false;
};
struct hole_result {
  makegood::outcome rule = makegood::outcome::undecided;      ///< of the zones alone
  makegood::outcome outcome = makegood::outcome::undecided;   ///< with the detector; a pass says what was looked at, no more
  makegood::reason reason = makegood::reason::none;
  double clearance_mm = no_number;       ///< from the edge of the hole, worst case, to the nearest strip; below 0: inside; infinite: there is none
  std::size_t nearest = static_cast<std::size_t>(-1);
  std::vector<std::size_t> inside{};     ///< strips that the hole may reach
  bool deep = false;                     ///< it goes deeper than the rule reaches
  bool off_wall = false;
  cable_zone_result zones{};
  std::vector<std::string> findings{};
};
inline constexpr std::string_view not_proved_clear = "not proved clear: isolate and detect";

inline hole_result check_hole_outside_cable_zones(const wall_hole& hole, const cable_wall& wall, const std::vector<wall_accessory>& accessories, const rulebook& book,
                                                  const detector_use& detector = {}, double margin_mm = 0.0) {
  constexpr std::string_view who = "check_hole_outside_cable_zones";
  hole_result r;
  r.zones = cable_zones(who, wall, accessories, book, margin_mm);
  detail::demand_mm(who, "hole.diameter_mm", hole.diameter_mm, 0.1, 500.0);
  detail::demand_mm(who, "hole.tolerance_mm", hole.tolerance_mm, 0.0, 500.0);
  detail::demand_mm(who, "hole.depth_mm", hole.depth_mm, 0.1, 2000.0);
  detail::demand_mm(who, "hole.depth_tolerance_mm", hole.depth_tolerance_mm, 0.0, 500.0);
  if (!(hole.x_mm >= 0.0 && hole.x_mm <= wall.width_mm && hole.y_mm >= 0.0 && hole.y_mm <= wall.height_mm))
    throw range_error(std::string(who) + ": hole at (" + number_text(hole.x_mm) + ", " + number_text(hole.y_mm) + ") mm is not on the wall of " + number_text(wall.width_mm) + " by " + number_text(wall.height_mm) + " mm");
  const double reach = 0.5 * hole.diameter_mm + hole.tolerance_mm;
  r.clearance_mm = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < r.zones.strips.size(); ++i) {
    const auto& s = r.zones.strips[i];
    const double dx = std::max({s.x_mm - hole.x_mm, hole.x_mm - (s.x_mm + s.width_mm)}), dy = std::max({s.y_mm - hole.y_mm, hole.y_mm - (s.y_mm + s.height_mm)});
    const double away = dx > 0.0 && dy > 0.0 ? std::hypot(dx, dy) : std::max(dx, dy);
    if (away - reach < r.clearance_mm) r.clearance_mm = away - reach, r.nearest = i;
    if (away - reach < 0.0) r.inside.push_back(i);
  }
  r.off_wall = hole.x_mm < reach || hole.y_mm < reach || hole.x_mm > wall.width_mm - reach || hole.y_mm > wall.height_mm - reach;
  r.deep = !is_nan(r.zones.depth_mm) && hole.depth_mm + hole.depth_tolerance_mm > r.zones.depth_mm;
  const auto undecided = [&](makegood::reason why, std::string text) {
    if (r.rule != outcome::fail && r.reason == reason::none) r.reason = why;
    r.findings.push_back(std::move(text));
  };
  r.rule = outcome::pass;
  for (const std::size_t i : r.inside) {
    const auto& s = r.zones.strips[i];
    r.findings.push_back("the hole, with its tolerance, reaches into a cable zone: " + s.rule + (s.accessory.empty() ? "" : " of \"" + s.accessory + "\"") + (s.far ? ", on the far side of a thin wall" : ""));
    r.rule = outcome::fail;
  }
  if (r.rule == outcome::pass) {
    for (const auto& m : r.zones.missing) undecided(reason::no_rule_in_book, m);
    if (r.zones.far_unknown)
      undecided(reason::precondition_missing, is_nan(wall.thickness_mm) ? "the wall's thickness is not known: in a thin wall the zones of the other face count too"
                                                                         : "the wall is thin and its other face was not looked at: its accessories have zones here too");
    if (r.deep)
      undecided(reason::outside_validity, "the hole may go " + number_text(hole.depth_mm + hole.depth_tolerance_mm) + " mm deep: below " + number_text(r.zones.depth_mm) + " mm cables may run anywhere");
    if (r.reason != reason::none) r.rule = outcome::undecided;
  }
  // the rule says where cables should be; only a detector says something of where they are
  if (detector.reading == detector_reading::found) {
    r.outcome = outcome::fail, r.reason = reason::none;
    r.findings.push_back("the detector found something: do not drill here");
  } else {
    const bool looked = detector.reading == detector_reading::nothing_found && detector.proved_dead;
    r.outcome = r.rule;
    if (r.rule == outcome::fail) r.reason = reason::none;
    if (!looked) {
      r.findings.push_back(std::string(not_proved_clear) +
                           (detector.reading == detector_reading::nothing_found ? "; the detector found nothing, but the circuits were not proved dead" : "; wiring that somebody else left need not follow the zones"));
      if (r.rule == outcome::pass) r.outcome = outcome::undecided, r.reason = reason::precondition_missing;
    }
  }
  return r;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

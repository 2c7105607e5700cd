// SPDX-License-Identifier: MIT
// A heated floor whose thermostat was switched to sense air alone: what the floor does where nothing limits its temperature.
// Subject: heating (models). Opt-in: includes the standard library's containers.
#pragma once
#include "floor_model.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

/// What a finish bears: the temperature that is not to be passed, and where it is measured.
struct finish_limit {
  std::string_view name, text;
  double limit_c;
  bool at_bond;  ///< under the finish, at its bond, not on top
  source from;
  double thickness_m;
  std::string_view material;
};
inline constexpr finish_limit finish_limits[] = {
    {"tile", "stone or ceramic, bathroom", 33.0, false, {"EN 1264-3, recalled: room temperature plus 9 K in bathrooms", "table of limits", "memory"},
        0.010, "ceramic_tile"},
    {"timber", "timber", 27.0, false, material_practice, 0.014, "timber"},
    {"vinyl", "resilient covering, at its bond", 27.0, true, {"handbook on heated floors", "bond line of laminate and resilient coverings"}, 0.004,
        "vinyl"}};
/// A floor whose thermostat was switched to sense air because its floor probe failed. The first layer is the finish.
struct unlimited_floor {
  floor_setup floor{};             ///< layers, heater, power, what lies below, cover; its room, thermostat and times are set here
  double set_c = no_number;        ///< of the air
  double worst_power_ratio = 1.27; ///< 253 V on an element for 230 V gives 1.21, and an element at the low end of -5 % resistance another 1.05
  double sensed_c = no_number;     ///< the sensed air is another room's, at this temperature; NaN: it is the bathroom's
  std::string_view finish = "tile";
};
struct unlimited_case {
  std::string_view finish;
  double limit_c = no_number;
  bool at_bond = false, as_laid = false;
  floor_rest usual{}, usual_covered{}, worst{}, worst_covered{};
  std::vector<floor_passage> passages{};  ///< the marks, then the finish's own limit; at the worst power
  bool passes_limit = false;              ///< at rest, at the worst power, covered or not
};
struct unlimited_reliance {
  double set_c, surface_low_c, surface_high_c, covered_high_c;
};
struct unlimited_result {
  std::vector<unlimited_case> cases{};
  std::vector<unlimited_reliance> reliance{};
  double surface_per_offset = no_number;  ///< K of the floor for each K by which the sensed air is colder than the bathroom's
  bool never_off = false, never_on = false;
  double room_c = no_number;              ///< of the bathroom that the cases are for
  bool passes_limit = false;              ///< of the finish that is laid
};

/// What the floor does where nothing limits it: the heater on all the time with the room at the set-point, which the air must not reach, or
/// reaches late; at the power stated and at the worst. With the room's heat loss, the room is where it comes to rest instead, if that is
/// below the set-point or if the sensed air is another room's.
inline unlimited_result without_floor_limit(const unlimited_floor& in) {
  const std::string who = "without_floor_limit";
  detail::demand_between(who, "set_point_c", in.set_c, 5.0, 40.0, "°C");
  detail::demand_between(who, "worst_power_ratio", in.worst_power_ratio, 1.0, 3.0, "");
  if (!is_nan(in.sensed_c)) detail::demand_between(who, "air_elsewhere_c", in.sensed_c, -30.0, 50.0, "°C");
  detail::demand_floor(who, in.floor);
  if (in.floor.heater_after < 1) detail::floor_refuse(who, "heater_after_layer: at least the finish lies above the heater");
  if (!(in.floor.power_w_per_m2 > 0.0)) detail::floor_refuse(who, "power_density_w_per_m2 must be above 0");
  unlimited_result out;
  out.never_off = !is_nan(in.sensed_c) && in.sensed_c < in.set_c;
  out.never_on = !is_nan(in.sensed_c) && in.sensed_c >= in.set_c;
  const auto room_at = [&](const floor_setup& s, double power) {
    if (!s.room.lumped) return in.set_c;
    floor_rest open, covered;
    detail::rest_of(s, power, open, covered);
    return !open.reached ? in.set_c : out.never_off ? open.room_c : std::min(open.room_c, in.set_c);
  };
  const auto cases = [&](const finish_limit& f, bool as_laid) {
    unlimited_case c;
    c.finish = f.name;
    c.limit_c = f.limit_c;
    c.at_bond = f.at_bond;
    c.as_laid = as_laid;
    floor_setup s = in.floor;
    if (!as_laid) {
      const auto* m = find_floor_material(f.material);
      s.layers[0] = {std::string(f.name), f.thickness_m, m->conductivity_w_per_mk, m->density_kg_per_m3, m->specific_heat_j_per_kgk, 0.0};
    }
    const double usual = s.power_w_per_m2, worst = usual * in.worst_power_ratio;
    const double usual_room = room_at(s, usual), worst_room = room_at(s, worst);
    s.room.lumped = false;
    s.thermostat = {};
    s.room.temperature_c = usual_room;
    detail::rest_of(s, usual, c.usual, c.usual_covered);
    s.room.temperature_c = worst_room;
    detail::rest_of(s, worst, c.worst, c.worst_covered);
    if (as_laid) out.room_c = worst_room;
    s.power_w_per_m2 = worst;
    s.initial_c = worst_room;
    s.duration_s = 48.0 * 3600.0;
    s.times_s = {3600.0, 6.0 * 3600.0, 24.0 * 3600.0, s.duration_s};
    s.target_c = no_number;
    s.error_k = 0.05;
    std::vector<floor_passage> wanted;
    for (const auto& m : surface_marks) wanted.push_back({m.limit_c});
    wanted.push_back({f.limit_c, f.at_bond});
    c.passages = floor_warm_up(s, wanted).passages;
    const auto over = [&](const floor_rest& r) { return !r.reached || (c.at_bond ? r.bond_c : r.surface_c) > c.limit_c; };
    c.passes_limit = over(c.worst) || (s.cover_ratio > 0.0 && over(c.worst_covered));
    return c;
  };
  bool known = false;
  for (const auto& f : finish_limits)
    if (f.name == in.finish) {
      known = true;
      out.cases.push_back(cases(f, true));
      out.passes_limit = out.cases.back().passes_limit;
    }
  if (!known) detail::floor_refuse(who, "finish \"" + std::string(in.finish) + "\" is not one of \"tile\", \"timber\", \"vinyl\"");
  for (const auto& f : finish_limits)
    if (f.name != in.finish) out.cases.push_back(cases(f, false));
  // one set-point, very different floors: the heater on for a quarter of the time, or for all of it
  floor_setup s = in.floor;
  s.room.lumped = false;
  const auto at = [&](double room, double power, floor_rest& open, floor_rest& covered) {
    s.room.temperature_c = room;
    detail::rest_of(s, power, open, covered);
  };
  for (const double set : {in.set_c - 4.0, in.set_c - 2.0, in.set_c, in.set_c + 2.0, in.set_c + 4.0}) {
    floor_rest low, high, low_covered, high_covered;
    at(set, 0.25 * s.power_w_per_m2, low, low_covered);
    at(set, s.power_w_per_m2 * in.worst_power_ratio, high, high_covered);
    out.reliance.push_back({set, low.surface_c, high.surface_c, s.cover_ratio > 0.0 ? high_covered.surface_c : no_number});
  }
  floor_rest here, warmer, unused;
  at(in.set_c, s.power_w_per_m2, here, unused);
  at(in.set_c + 1.0, s.power_w_per_m2, warmer, unused);
  out.surface_per_offset = warmer.surface_c - here.surface_c;
  return out;
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

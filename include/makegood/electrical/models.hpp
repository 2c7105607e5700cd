// SPDX-License-Identifier: MIT
// Models: what a protective device does by its standard, which size of cable rules, what a dwelling demands, earthing, proof of isolation.
// Subject: electrical. Results with more than one number; what was not read in a source is none, never a guess.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../reading.hpp"
#include "demand.hpp"
#include "devices.hpp"
#include "sizing.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

// ---- protective devices ----------------------------------------------------------------------------------------------

/// The figures of a device by its standard. NaN: needs the maker's figure.
struct device_figures {
  std::string_view standard{};
  double holding_a = no_number, operating_a = no_number;                        ///< ends of the instantaneous band (circuit-breakers)
  double conventional_holding_a = no_number, conventional_operating_a = no_number;
  std::array<double, 5> operating_in_time_a{no_number, no_number, no_number, no_number, no_number};  ///< at 0.1, 0.2, 0.4, 1 and 5 s
  double let_through_a2s = no_number;                                           ///< highest, of the energy limiting class
  double prearcing_min_a2s = no_number, prearcing_max_a2s = no_number;          ///< at 0.01 s (gG)
  std::vector<std::string> notes{};
};
inline constexpr std::array<double, 5> device_times_s{0.1, 0.2, 0.4, 1.0, 5.0};
inline constexpr std::string_view device_kinds[] = {"breaker_b", "breaker_c", "breaker_d", "gg", "bs88_2_2", "bs88_2", "bs1361", "bs3036", "bs1362"};

namespace detail {
struct energy_row {
  char type;
  double most_a, breaking_a, energy_a2s;
};
// EN 60898-1 Annex ZA, energy limiting class 3: the rows that were read (in a quotation); the others are left to the maker.
inline constexpr energy_row energy_class_3[] = {{'b', 16, 10000, 70000}, {'c', 16, 10000, 84000}};
struct prearcing_row {
  double rating_a, min_a2s, max_a2s;
};
// IEC 60269-1 Table 7, pre-arcing I²t of gG fuse-links at 0.01 s; NaN: not read.
inline constexpr prearcing_row prearcing[] = {{16, 300, 1000}, {25, 1000, 3000}, {32, 1800, 5000}, {40, 3000, 9000},
                                              {50, no_number, 16000}, {63, 9000, 27000}, {80, no_number, 46000}, {100, no_number, 86000}};
}  // namespace detail

/// breaking_capacity_a: for the energy of class 3; 0 where it is not known.
inline device_figures protective_device(std::string_view kind, double rating_a, double breaking_capacity_a = 0.0) {
  const auto known = [&] {
    for (const auto k : device_kinds)
      if (k == kind) return true;
    return false;
  };
  if (!known()) {
    std::string text = "protective_device: kind = \"" + std::string(kind) + "\" is not one of";
    for (const auto k : device_kinds) text += (k == device_kinds[0] ? " \"" : ", \"") + std::string(k) + "\"";
    throw range_error(text);
  }
  if (!(rating_a > 0.0 && rating_a <= 1e4)) throw range_error("protective_device: rating_a = " + number_text(rating_a) + " A: above 0 to 10000 A");
  if (!(breaking_capacity_a >= 0.0 && breaking_capacity_a <= 1e6)) throw range_error("protective_device: breaking_capacity_a = " + number_text(breaking_capacity_a) + " A: from 0 to 1000000 A");
  device_figures d;
  const auto conventional = [&](double operating, double holding) {
    d.conventional_operating_a = operating * rating_a;
    if (holding > 0.0) d.conventional_holding_a = holding * rating_a;
  };
  if (kind.starts_with("breaker_")) {
    const char type = kind.back();
    const double low = type == 'b' ? 3.0 : type == 'c' ? 5.0 : 10.0, high = type == 'b' ? 5.0 : type == 'c' ? 10.0 : 20.0;
    d.standard = "IEC 60898-1, or IEC 61009-1 with a residual current device";
    d.holding_a = low * rating_a;
    d.operating_a = high * rating_a;
    for (auto& x : d.operating_in_time_a) x = d.operating_a;
    conventional(1.45, 1.13);
    for (const auto& r : detail::energy_class_3)
      if (r.type == type && r.breaking_a == breaking_capacity_a && rating_a <= r.most_a) d.let_through_a2s = r.energy_a2s;
    if (is_nan(d.let_through_a2s)) d.notes.emplace_back("let-through energy: needs maker's figure (classes exist for types B and C up to 40 A; of their limits only those of 10 000 A up to 16 A were read)");
    else d.notes.emplace_back("let-through energy: the limit of energy limiting class 3 at its full breaking capacity; at a smaller fault current the maker's figure is lower");
    if (type == 'd') d.notes.emplace_back("at 5 s the thermal part may operate below the upper end of the band: the maker's curve says where");
    return d;
  }
  std::string_view table = kind == "gg" ? std::string_view("bs88_2") : kind;
  d.standard = kind == "gg" ? "IEC 60269-2 (gG)" : kind == "bs88_2_2" ? "BS 88-2.2 and BS 88-6 (gG)" : kind == "bs88_2" ? "BS 88-2:2010 (gG)" : kind == "bs1361" ? "BS 1361" : kind == "bs3036" ? "BS 3036" : "BS 1362";
  const std::string key = std::string(table) + "_" + number_text(rating_a, 6);
  if (const int row = fuses.find(key); row >= 0) {
    const auto& v = fuse_rows[row].values;
    if (v[1] > 0.0) d.operating_in_time_a[2] = 230.0 / v[1];
    if (v[2] > 0.0) d.operating_in_time_a[4] = 230.0 / v[2];
  }
  if (is_nan(d.operating_in_time_a[2]) && is_nan(d.operating_in_time_a[4])) d.notes.emplace_back("operating current: needs maker's figure (no printed limit of this rating was read)");
  else d.notes.emplace_back("operating current: 230 V over the printed loop limit of the editions of 2008 and 2011; other times need the maker's curve");
  if (kind == "gg" || table.starts_with("bs88")) {
    if (rating_a >= 16.0) conventional(1.6, 1.25);
    else if (rating_a > 4.0) conventional(1.9, 1.5);
    else conventional(2.1, 1.5);
    for (const auto& r : detail::prearcing)
      if (r.rating_a == rating_a) d.prearcing_min_a2s = r.min_a2s, d.prearcing_max_a2s = r.max_a2s;
    d.notes.emplace_back("total let-through is larger than the pre-arcing energy and depends on the voltage: needs maker's figure");
  } else if (kind == "bs1361") {
    conventional(1.5, 0.0);
  } else if (kind == "bs3036") {
    conventional(2.0, 0.0);
    d.notes.emplace_back("the wire may have been replaced by any other: the figures hold for the right one only; its cable needs the factor 0.725");
  }
  return d;
}

// ---- size of a cable -------------------------------------------------------------------------------------------------

/// The least size by each of the four conditions; NaN: none up to 16 mm².
struct size_by_condition {
  double capacity_mm2 = no_number, drop_mm2 = no_number, loop_mm2 = no_number, energy_mm2 = no_number;
  double size_mm2 = no_number;
  std::vector<std::string_view> ruled_by{};   ///< "capacity", "voltage drop", "loop impedance", "fault energy": those that ask for this size
  std::vector<std::string_view> unmet{};      ///< those that no size satisfies
};
inline size_by_condition cable_size(std::string_view method, double rating_a, double design_current_a, double length_m, double correction_factor, double drop_limit_v,
                                    double external_ohm, double loop_limit_ohm, double let_through_a2s) {
  const int row = method_capacities.find(method);
  if (row < 0) throw range_error(v1::detail::unknown_key("cable_size", smallest_size.args[0], method));
  const double x[] = {static_cast<double>(row), rating_a, design_current_a, length_m, correction_factor, drop_limit_v, external_ohm, loop_limit_ohm, let_through_a2s};
  for (std::size_t i = 1; i < smallest_size.args.size(); ++i) {
    const auto& a = smallest_size.args[i];
    if (!a.permitted.contains(x[i])) throw range_error("cable_size: " + std::string(a.name) + ": " + v1::detail::out_of_range_text(a, x[i]));
  }
  size_by_condition s;
  // the conditions of smallest_size, each by itself, from the largest size down
  const auto& capacity = method_capacity_rows[row].values;
  const auto of = [&](auto i) {
    const double area = flat_twin_cables[i].area_mm2;
    if (detail::carries(i, capacity, rating_a, correction_factor)) s.capacity_mm2 = area;
    if (detail::drops_little(i, design_current_a, length_m, drop_limit_v)) s.drop_mm2 = area;
    if (detail::disconnects(i, length_m, external_ohm, loop_limit_ohm)) s.loop_mm2 = area;
    if (detail::survives(i, let_through_a2s)) s.energy_mm2 = area;
  };
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    (of(std::integral_constant<std::size_t, flat_twin_sizes - 1 - I>{}), ...);
  }(std::make_index_sequence<flat_twin_sizes>{});
  const std::pair<std::string_view, double> all[] = {{"capacity", s.capacity_mm2}, {"voltage drop", s.drop_mm2}, {"loop impedance", s.loop_mm2}, {"fault energy", s.energy_mm2}};
  double largest = 0.0;
  for (const auto& [name, size] : all) {
    if (is_nan(size)) s.unmet.push_back(name);
    else if (size > largest) largest = size;
  }
  if (!s.unmet.empty()) return s;
  s.size_mm2 = largest;
  for (const auto& [name, size] : all)
    if (size == largest) s.ruled_by.push_back(name);
  return s;
}

// ---- demand ----------------------------------------------------------------------------------------------------------

struct load_group {
  std::string kind;             ///< see load_group_kinds
  std::vector<double> currents_a;  ///< of its appliances, or ratings of its circuits
  bool socket = false;          ///< cooker: a socket on its control unit
};
inline constexpr std::string_view load_group_kinds[] = {"lighting", "heating", "cooker", "instantaneous_water", "thermostatic_water", "floor_warming", "storage_heating", "socket_circuits"};
struct demand_line {
  std::string kind, rule;
  double connected_a = 0.0, demand_a = 0.0;
};
struct demand_result {
  std::vector<demand_line> lines{};
  double connected_a = 0.0, demand_a = 0.0;
};
/// The demand of a dwelling by the printed rules of diversity, group by group.
inline demand_result maximum_demand(const std::vector<load_group>& groups) {
  demand_result r;
  for (const auto& g : groups) {
    demand_line l{g.kind, {}};
    double largest = 0.0, second = 0.0;
    for (const double i : g.currents_a) {
      if (!(i >= 0.0 && i <= 1000.0)) throw range_error("maximum_demand: " + g.kind + ": a current of " + number_text(i) + " A: from 0 to 1000 A");
      l.connected_a += i;
      if (i > largest) second = largest, largest = i;
      else if (i > second) second = i;
    }
    if (g.kind == "lighting") l.demand_a = lighting_demand(l.connected_a), l.rule = "66 %";
    else if (g.kind == "heating") l.demand_a = heating_demand(l.connected_a), l.rule = "10 A and half of the rest";
    else if (g.kind == "cooker") l.demand_a = cooker_demand(l.connected_a, g.socket ? "with_socket" : "without_socket"), l.rule = g.socket ? "10 A, 30 % of the rest, 5 A for the socket" : "10 A and 30 % of the rest";
    else if (g.kind == "instantaneous_water") l.demand_a = largest + second + 0.25 * (l.connected_a - largest - second), l.rule = "the two largest in full, 25 % of the rest";
    else if (g.kind == "thermostatic_water" || g.kind == "floor_warming" || g.kind == "storage_heating") l.demand_a = l.connected_a, l.rule = "in full";
    else if (g.kind == "socket_circuits") l.demand_a = circuits_demand(largest, l.connected_a - largest), l.rule = "the largest rating in full, 40 % of the others";
    else {
      std::string text = "maximum_demand: kind = \"" + g.kind + "\" is not one of";
      for (const auto k : load_group_kinds) text += (k == load_group_kinds[0] ? " \"" : ", \"") + std::string(k) + "\"";
      throw range_error(text);
    }
    r.connected_a += l.connected_a;
    r.demand_a += l.demand_a;
    r.lines.push_back(std::move(l));
  }
  return r;
}

// ---- earthing --------------------------------------------------------------------------------------------------------

struct earthing_finding {
  std::string_view outcome;  ///< "pass", "fail", "undecided"
  std::string text;
};
/// What is known of a supply and its earthing. NaN: not known.
struct earthing_facts {
  std::string arrangement;                    ///< "tn_s", "tn_c_s", "tt", or empty: not known
  double external_ohm = no_number;            ///< Z_e, or in a TT system the loop with the electrode
  double electrode_ohm = no_number;
  double residual_current_ma = no_number;     ///< of the device that protects all circuits (TT)
  double line_mm2 = no_number, earthing_conductor_mm2 = no_number;
  std::vector<double> bonding_mm2{};          ///< main bonding conductors found
  bool bonding_complete = false;              ///< every extraneous part was looked for and is bonded
};
inline std::vector<earthing_finding> earthing_arrangement(const earthing_facts& f) {
  std::vector<earthing_finding> r;
  const auto say = [&](std::string_view outcome, std::string text) { r.push_back({outcome, std::move(text)}); };
  const auto positive_number = [&](std::string_view name, double x) {
    if (!is_nan(x) && !(x >= 0.0 && x <= 1e6)) throw range_error("earthing_arrangement: " + std::string(name) + " = " + number_text(x) + ": from 0 to 1000000");
  };
  positive_number("external_ohm", f.external_ohm);
  positive_number("electrode_ohm", f.electrode_ohm);
  positive_number("residual_current_ma", f.residual_current_ma);
  positive_number("line_mm2", f.line_mm2);
  positive_number("earthing_conductor_mm2", f.earthing_conductor_mm2);
  for (const double x : f.bonding_mm2) positive_number("bonding_mm2", x);
  const bool tt = f.arrangement == "tt", tn = f.arrangement == "tn_s" || f.arrangement == "tn_c_s";
  if (f.arrangement.empty()) say("undecided", "the earthing arrangement is not known: look at the intake; never judge by the loop reading alone");
  else if (!tt && !tn) throw range_error("earthing_arrangement: arrangement = \"" + f.arrangement + "\" is not one of \"tn_s\", \"tn_c_s\", \"tt\"");
  if (tn) {
    const double usual = f.arrangement == "tn_s" ? 0.8 : 0.35;  // figures that network operators state
    if (is_nan(f.external_ohm)) say("undecided", "the external loop impedance was not read");
    else if (f.external_ohm <= usual) say("pass", "external loop impedance " + number_text(f.external_ohm, 3) + " Ω: not above " + number_text(usual, 3) + " Ω, which operators usually state (memory)");
    else say("undecided", "external loop impedance " + number_text(f.external_ohm, 3) + " Ω: above " + number_text(usual, 3) + " Ω, which operators usually state (memory): a loose or corroded earth at the intake, another arrangement than thought, or a long line; ask the operator");
  }
  if (tt) {
    const double ohm = is_nan(f.electrode_ohm) ? f.external_ohm : f.electrode_ohm;
    if (is_nan(f.residual_current_ma) || f.residual_current_ma == 0.0) say("fail", "a TT system without a residual current device on all circuits: faults to earth are not disconnected");
    else if (is_nan(ohm)) say("undecided", "the electrode's resistance was not read");
    else {
      const double limit = earth_resistance_limit(f.residual_current_ma, 50.0);
      say(ohm <= limit ? "pass" : "fail", "electrode " + number_text(ohm, 4) + " Ω against 50 V/I_Δn = " + number_text(limit, 4) + " Ω");
      if (ohm > 200.0) say("undecided", "above 200 Ω an electrode may not be stable when the soil dries or freezes");
    }
  }
  if (is_nan(f.earthing_conductor_mm2) || is_nan(f.line_mm2)) {
    say("undecided", "the sizes of line and earthing conductor were not read");
  } else if (f.earthing_conductor_mm2 <= 0.0) {
    say("fail", "no earthing conductor was found");
  } else if (f.line_mm2 > 0.0) {
    const double wanted = protective_conductor_area(f.line_mm2);
    if (f.earthing_conductor_mm2 >= wanted) say("pass", "earthing conductor " + number_text(f.earthing_conductor_mm2, 3) + " mm²: by the table at least " + number_text(wanted, 3) + " mm²");
    else say("undecided", "earthing conductor " + number_text(f.earthing_conductor_mm2, 3) + " mm², by the table " + number_text(wanted, 3) + " mm²: smaller ones need the adiabatic calculation");
  }
  if (f.bonding_mm2.empty()) {
    say(f.bonding_complete ? "pass" : "undecided", f.bonding_complete ? "no extraneous part was found, so none is bonded" : "main bonding: no conductor was found; look for metal pipes and structure that come in from the ground");
  } else {
    double least = f.bonding_mm2[0];
    for (const double x : f.bonding_mm2) least = x < least ? x : least;
    const double half = is_nan(f.earthing_conductor_mm2) ? 6.0 : f.earthing_conductor_mm2 / 2.0;
    double wanted = half < 6.0 ? 6.0 : half > 25.0 ? 25.0 : half;
    if (f.arrangement == "tn_c_s" && wanted < 10.0) wanted = 10.0;  // up to 35 mm² of neutral
    say(least >= wanted ? "pass" : "fail", "smallest main bonding conductor " + number_text(least, 3) + " mm², at least " + number_text(wanted, 3) + " mm² (memory: half the earthing conductor, 6 to 25 mm²; TN-C-S 10 mm²)");
    if (!f.bonding_complete) say("undecided", "it was not said that every extraneous part was looked for");
  }
  return r;
}

// ---- proof of isolation ----------------------------------------------------------------------------------------------

/// What was done to prove a point dead. The record is complete or not; it never says that anything is safe to touch.
struct isolation_record {
  std::string point, isolated_at, means_of_locking, indicator;
  bool indicator_proved_before = false, indicator_proved_after = false;
  std::vector<std::string> tested_between{};   ///< "L-N", "L-E", "N-E"; three-phase more
  std::vector<double> read_v{};                ///< one a pair
  bool three_phase = false;
};
struct isolation_result {
  bool complete = false, live = false;
  std::vector<std::string> missing{};
};
inline isolation_result proof_of_isolation(const isolation_record& r) {
  isolation_result out;
  const auto need = [&](bool there, std::string text) {
    if (!there) out.missing.push_back(std::move(text));
  };
  need(!r.point.empty(), "where the work is");
  need(!r.isolated_at.empty(), "where it was isolated");
  need(!r.means_of_locking.empty(), "how the isolation was locked off");
  need(!r.indicator.empty(), "which voltage indicator was used (an approved two-pole indicator, not a multimeter alone, not a non-contact detector)");
  need(r.indicator_proved_before, "indicator proved on a proving unit or known source before");
  need(r.indicator_proved_after, "indicator proved again after");
  if (r.tested_between.size() != r.read_v.size()) throw range_error("proof_of_isolation: as many readings in read_v as pairs in tested_between");
  std::vector<std::string_view> wanted{"L-N", "L-E", "N-E"};
  if (r.three_phase) wanted = {"L1-L2", "L2-L3", "L1-L3", "L1-N", "L2-N", "L3-N", "L1-E", "L2-E", "L3-E", "N-E"};
  for (const auto w : wanted) {
    bool found = false;
    for (const auto& t : r.tested_between) found = found || t == w;
    need(found, "test between " + std::string(w));
  }
  for (std::size_t i = 0; i < r.read_v.size(); ++i) {
    if (!(r.read_v[i] >= 0.0 && r.read_v[i] <= 1e5)) throw range_error("proof_of_isolation: read_v = " + number_text(r.read_v[i]) + " V: from 0 to 100000 V");
    if (r.read_v[i] > 0.0) {
      out.live = out.live || r.read_v[i] > 25.0;
      out.missing.push_back("a reading of 0 V between " + r.tested_between[i] + " (it showed " + number_text(r.read_v[i], 4) + " V)");
    }
  }
  out.complete = out.missing.empty();
  return out;
}

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

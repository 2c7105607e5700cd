// SPDX-License-Identifier: MIT
// Several loads on one circuit: currents in its sections, drop at each load, a ring and its spurs held to the rules; which tests a residual current device needs.
// Subject: electrical (models). All loads are taken at one power factor, which is on the safe side.
#pragma once
#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../rulebook.hpp"
#include "../text.hpp"
#include "runs.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr std::size_t most_loads = 500;

// ---- loads along a circuit --------------------------------------------------------------------------------------------

struct point_load {
  std::string name{};
  double distance_m = 0.0;       ///< along the circuit from the board; of a ring along the near leg
  double current_a = 0.0;
  double spur_length_m = 0.0;
  double outlets = 1.0;          ///< socket outlets, single or twin, behind the spur
  double fuse_a = 0.0;           ///< fused spur: rating of its fuse; 0: none
  double spur_capacity_a = no_number;
};
struct circuit_loads {
  bool ring = false;
  double length_m = no_number;   ///< of a ring, all round
  double spread_current_a = 0.0; ///< besides, spread evenly along the ring, or along the radial up to its last load
  double resistance_mohm_per_m = no_number;  ///< line and neutral together; NaN: no drops are wanted
  std::vector<point_load> loads{};
};
struct load_section {
  double from_m = 0.0, to_m = 0.0;
  double from_a = 0.0, to_a = 0.0;  ///< current at its two ends; below 0: fed from the far leg
};
struct load_drop {
  std::string name{};
  double distance_m = 0.0, drop_v = no_number, with_spur_v = no_number;
};
struct loads_result {
  double total_a = 0.0, near_leg_a = 0.0, far_leg_a = no_number, highest_leg_a = 0.0;
  double lowest_point_m = no_number;  ///< where the drop along the circuit is largest
  double largest_drop_v = no_number;  ///< of the circuit and its spurs
  std::string largest_at{};           ///< the load, or empty: between loads
  std::vector<load_section> sections{};
  std::vector<load_drop> drops{};     ///< in the order of the loads given
};

namespace detail {
inline void demand_loads(std::string_view who, const circuit_loads& c) {
  const auto within = [&](std::string_view what, double x, double low, double high, std::string_view unit) {
    if (!(x >= low && x <= high))
      throw range_error(std::string(who) + ": " + std::string(what) + " = " + number_text(x) + " " + std::string(unit) + ": from " + number_text(low) + " to " + number_text(high) + " " + std::string(unit));
  };
  if (c.ring) {
    if (!(c.length_m > 0.0)) throw range_error(std::string(who) + ": ring_length_m: above 0, the length all round");
    within("ring_length_m", c.length_m, 0.0, 1e5, "m");
  }
  within("spread_current_a", c.spread_current_a, 0.0, 1e4, "A");
  if (!is_nan(c.resistance_mohm_per_m)) within("resistance_mohm_per_m", c.resistance_mohm_per_m, 0.0, 1e5, "mΩ/m");
  if (c.loads.empty() && c.spread_current_a == 0.0) throw range_error(std::string(who) + ": loads: at least one");
  if (c.loads.size() > most_loads) throw range_error(std::string(who) + ": loads: " + std::to_string(c.loads.size()) + " of them; at most 500");
  for (std::size_t i = 0; i < c.loads.size(); ++i) {
    const auto& l = c.loads[i];
    const std::string at = "loads[" + std::to_string(i) + "].";
    within(at + "distance_m", l.distance_m, 0.0, c.ring ? c.length_m : 1e5, "m");
    within(at + "current_a", l.current_a, 0.0, 1e4, "A");
    within(at + "spur_length_m", l.spur_length_m, 0.0, 1e5, "m");
    within(at + "outlets", l.outlets, 0.0, 100.0, "");
    within(at + "fuse_a", l.fuse_a, 0.0, 100.0, "A");
    if (!is_nan(l.spur_capacity_a)) within(at + "spur_capacity_a", l.spur_capacity_a, 0.0, 1e4, "A");
  }
}
}  // namespace detail

/// Currents and drops by superposition; tests/python/test_loads.py holds them to a nodal analysis.
inline loads_result currents_and_drops(std::string_view who, const circuit_loads& c) {
  detail::demand_loads(who, c);
  loads_result r;
  std::vector<const point_load*> order;
  for (const auto& l : c.loads) order.push_back(&l);
  std::stable_sort(order.begin(), order.end(), [](const auto* a, const auto* b) { return a->distance_m < b->distance_m; });
  const double end = c.ring ? c.length_m : order.empty() ? 0.0 : order.back()->distance_m;
  const double spread = end > 0.0 ? c.spread_current_a : 0.0;
  const double per_metre = end > 0.0 ? spread / end : 0.0;
  r.total_a = c.spread_current_a;
  for (const auto* l : order) r.total_a += l->current_a;
  r.near_leg_a = r.total_a;
  if (c.ring) {
    r.near_leg_a = 0.5 * spread;
    r.far_leg_a = 0.5 * spread;
    for (const auto* l : order) {
      const double near = call(ring_leg_current, c.length_m, l->distance_m, l->current_a);
      r.near_leg_a += near;
      r.far_leg_a += l->current_a - near;
    }
  }
  r.highest_leg_a = c.ring ? std::max(r.near_leg_a, r.far_leg_a) : r.near_leg_a;

  // along the circuit: the current falls at each load and along each metre; the drop is its integral, largest where it turns
  const bool drops = !is_nan(c.resistance_mohm_per_m);
  const double z = drops ? c.resistance_mohm_per_m / 1000.0 : 0.0;
  double current = r.near_leg_a, at = 0.0, drop = 0.0, worst = 0.0, worst_at = 0.0;
  r.drops.resize(c.loads.size());
  const auto go = [&](double to) {
    const double length = to - at, after = current - per_metre * length;
    if (length > 0.0) r.sections.push_back({at, to, current, after});
    if (current > 0.0 && after < 0.0) {  // the current turns inside this section
      const double turn = current / per_metre, there = drop + z * 0.5 * current * turn;
      if (there > worst) worst = there, worst_at = at + turn;
    }
    drop += z * 0.5 * (current + after) * length;
    current = after;
    at = to;
    if (drop > worst) worst = drop, worst_at = at;
  };
  for (const auto* l : order) {
    go(l->distance_m);
    const auto place = static_cast<std::size_t>(l - c.loads.data());
    auto& d = r.drops[place];
    d.name = l->name;
    d.distance_m = l->distance_m;
    if (drops) {
      d.drop_v = drop;
      d.with_spur_v = drop + z * l->spur_length_m * l->current_a;
    }
    current -= l->current_a;
  }
  if (c.ring) go(c.length_m);
  if (!drops) return r;
  r.lowest_point_m = worst_at;
  r.largest_drop_v = worst;
  for (std::size_t i = 0; i < c.loads.size(); ++i)
    if (r.drops[i].with_spur_v >= r.largest_drop_v) {
      r.largest_drop_v = r.drops[i].with_spur_v;
      r.largest_at = r.drops[i].name.empty() ? "load " + std::to_string(i + 1) : r.drops[i].name;
    }
  return r;
}

inline constexpr std::string_view circuit_shapes[] = {"radial", "ring"};
/// Drops of several loads on a radial or a ring.
inline loads_result point_loads(const circuit_loads& c) {
  if (is_nan(c.resistance_mohm_per_m)) throw range_error("point_loads: resistance_mohm_per_m is missing");
  return currents_and_drops("point_loads", c);
}

// ---- a ring and its spurs ---------------------------------------------------------------------------------------------

/// One rule and what became of it.
struct load_finding {
  std::string item, outcome, text;        ///< outcome: "pass", "fail" or "undecided"
  double value = no_number, limit = no_number;
  std::string unit{};
  source from{};
};
struct ring_design {
  circuit_loads loads{};
  double capacity_a = no_number;   ///< of the ring's cable where it lies, all factors in it
  double rating_a = 32.0;
  double floor_area_m2 = no_number;
};
struct spur_load_result {
  loads_result loads{};
  std::string outcome{};
  std::vector<load_finding> findings{};
};
inline spur_load_result spur_load(const ring_design& design, const rulebook& book) {
  constexpr std::string_view who = "spur_load";
  if (!(design.rating_a > 0.0 && design.rating_a <= 1e4)) throw range_error("spur_load: rating_a = " + number_text(design.rating_a) + " A: above 0 to 10000 A");
  if (!is_nan(design.capacity_a) && !(design.capacity_a > 0.0 && design.capacity_a <= 1e4))
    throw range_error("spur_load: capacity_a = " + number_text(design.capacity_a) + " A: above 0 to 10000 A");
  if (!is_nan(design.floor_area_m2) && !(design.floor_area_m2 >= 0.0 && design.floor_area_m2 <= 1e5))
    throw range_error("spur_load: floor_area_m2 = " + number_text(design.floor_area_m2) + " m²: from 0 to 100000 m²");
  circuit_loads c = design.loads;
  c.ring = true;
  spur_load_result r{currents_and_drops(who, c), "pass", {}};
  const auto name = [&](std::size_t i) { return c.loads[i].name.empty() ? "load " + std::to_string(i + 1) : "\"" + c.loads[i].name + "\""; };
  /// Held to a limit; a limit of NaN is one that nobody stated.
  const auto hold = [&](std::string item, std::string text, double value, double limit, std::string unit, source from, bool at_least = false) {
    load_finding f{std::move(item), "pass", std::move(text), value, limit, std::move(unit), from};
    if (is_nan(value) || is_nan(limit)) f.outcome = "undecided";
    else if (at_least ? value < limit : value > limit) f.outcome = "fail";
    r.findings.push_back(std::move(f));
  };
  /// The same by a rule; without one in the book it stays undecided.
  const auto by_rule = [&](std::string item, std::string_view limit_id, std::string text, double value, double own_limit, std::string unit, bool at_least = false) {
    const auto rule = book.find(limit_id, "");
    if (!rule.found()) return hold(std::move(item), std::move(text) + ": no rule in book", value, no_number, std::move(unit), {}, at_least);
    hold(std::move(item), std::move(text), value, is_nan(own_limit) ? rule.numbers()[0] : own_limit, std::move(unit), rule.changed ? source{"override", {}, "override"} : rule.from(), at_least);
  };
  hold("total", "all loads together against the rating of the device", r.loads.total_a, design.rating_a, "A", {"IEC 60364-4-43", "433.1, I_b ≤ I_n"});
  const bool known = !is_nan(design.capacity_a);
  const auto leg = book.find("ring_leg_current", "");
  hold("leg", std::string("current of the leg that carries more against the capacity of the cable") + (leg.found() ? (known ? "" : ": the capacity was not stated") : ": no rule in book"),
       r.loads.highest_leg_a, leg.found() ? design.capacity_a : no_number, "A", leg.from());
  by_rule("capacity", "ring_leg_capacity", std::string("capacity of the ring's cable against the least for a leg") + (known ? "" : ": the capacity was not stated"), design.capacity_a, no_number, "A", true);
  if (!is_nan(design.floor_area_m2)) by_rule("floor_area", "ring_floor_area", "floor area served", design.floor_area_m2, no_number, "m²");

  constexpr double same_place_m = 0.05;
  for (std::size_t i = 0; i < c.loads.size(); ++i) {
    const auto& l = c.loads[i];
    if (!(l.spur_length_m > 0.0)) continue;
    const bool fused = l.fuse_a > 0.0;
    const bool stated = !is_nan(l.spur_capacity_a);
    const double capacity = stated ? l.spur_capacity_a : design.capacity_a;
    const std::string cable = stated ? "" : is_nan(capacity) ? "; its capacity was not stated" : "; the ring's cable is taken for it";
    if (fused) {
      hold("spur_fuse", name(i) + ": load of the fused spur against its fuse", l.current_a, l.fuse_a, "A", {"IEC 60364-4-43", "433.1, I_b ≤ I_n"});
      hold("spur_cable", name(i) + ": fuse of the spur against its cable" + cable, l.fuse_a, capacity, "A", {"IEC 60364-4-43", "433.1, I_n ≤ I_z"});
      continue;
    }
    hold("spur_cable", name(i) + ": load of the spur against its cable" + cable, l.current_a, capacity, "A", {"IEC 60364-4-43", "433.1, I_b ≤ I_z; the ring's device does not protect it from overload", "memory"});
    by_rule("spur_outlets", "unfused_spur_outlets", name(i) + ": outlets on the unfused spur", l.outlets, no_number, "");
    double from_here = 0.0;
    bool first = true;
    for (std::size_t k = 0; k < c.loads.size(); ++k) {
      const auto& o = c.loads[k];
      if (!(o.spur_length_m > 0.0) || o.fuse_a > 0.0 || fabs(o.distance_m - l.distance_m) > same_place_m) continue;
      from_here += 1.0;
      first = first && k >= i;
    }
    if (first && from_here > 1.0) by_rule("spurs_from_one_point", "unfused_spur_outlets", name(i) + ": unfused spurs from one point of the ring", from_here, no_number, "");
  }
  for (const auto& f : r.findings)
    if (f.outcome == "fail" || (f.outcome == "undecided" && r.outcome == "pass")) r.outcome = f.outcome;
  return r;
}

// ---- tests of a residual current device ---------------------------------------------------------------------------------

struct rcd_test_item {
  std::string_view test;                     ///< "half", "1x", "5x", "ramp"
  double current_ma = no_number;             ///< NaN: rising
  enum class asked : unsigned char { no, yes, no_rule } required = asked::no_rule;
  double least_ms = no_number, most_ms = no_number;   ///< of the time; NaN: none, or no rule
  double least_ma = no_number, most_ma = no_number;   ///< of the ramp
  std::string text{};
  source from{};                             ///< of the requirement
};
inline constexpr std::string_view rcd_device_kinds[] = {"general", "selective", "bs4293"};
inline constexpr std::string_view rcd_type_words[] = {"AC", "A", "F", "B"};
/// Which tests an edition asks for, and what each should show. Tests that it does not ask for inform.
inline std::vector<rcd_test_item> required_rcd_tests(double residual_current_ma, std::string_view kind, std::string_view type, const rulebook& book) {
  const auto one_of = [](std::string_view what, std::string_view word, const auto& words) {
    std::string text = "required_rcd_tests: " + std::string(what) + " = \"" + std::string(word) + "\" is not one of";
    for (const auto w : words) {
      if (w == word) return;
      text += (w == words[0] ? " \"" : ", \"") + std::string(w) + "\"";
    }
    throw range_error(text);
  };
  one_of("rcd_kind", kind, rcd_device_kinds);
  one_of("rcd_type", type, rcd_type_words);
  if (!(residual_current_ma > 0.0 && residual_current_ma <= 1e5)) throw range_error("required_rcd_tests: residual_current_ma = " + number_text(residual_current_ma) + " mA: above 0 to 100000 mA");
  std::vector<rcd_test_item> list_;
  const auto add = [&](std::string_view test, double multiple, std::string text) {
    rcd_test_item t{test, multiple > 0.0 ? multiple * residual_current_ma : no_number};
    t.text = std::move(text);
    if (const auto rule = book.find("rcd_test_required", test); rule.found()) {
      const double up_to = rule.numbers()[1];
      t.required = rule.numbers()[0] > 0.5 && !(up_to > 0.0 && residual_current_ma > up_to) ? rcd_test_item::asked::yes : rcd_test_item::asked::no;
      t.from = rule.changed ? source{"override", {}, "override"} : rule.from();
    } else {
      t.text += "; the book does not say whether it is asked for";
    }
    list_.push_back(std::move(t));
    return list_.size() - 1;
  };
  add("half", 0.5, "no trip");
  for (const auto& [test, multiple] : {std::pair{std::string_view("1x"), 1.0}, {std::string_view("5x"), 5.0}}) {
    auto& t = list_[add(test, multiple, "time to trip")];
    const auto window = book.find("rcd_trip_window", std::string(kind) + "_" + std::string(test));
    if (window.found()) t.least_ms = window.numbers()[0], t.most_ms = window.numbers()[1];
    else t.text += "; no limit in the book";
  }
  auto& t = list_[add("ramp", 0.0, "current at which it trips while it rises slowly")];
  if (const auto ramp = book.find("rcd_ramp", type); ramp.found()) {
    t.least_ma = ramp.numbers()[0] * residual_current_ma;
    t.most_ma = ramp.numbers()[1] * residual_current_ma;
  } else {
    t.text += "; no limit in the book for type " + std::string(type);
  }
  return list_;
}

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// What a rulebook asks of the ventilation of rooms and of a dwelling, and which of its rules governs; and a measured flow decided as the
// rulebook itself decides. Subject: air. What a book does not hold is listed as missing, never guessed.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>
#include "checks.hpp"
#include "ventilation_checks.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

struct ventilated_room {
  std::string name{};
  std::string kind{};          ///< "kitchen", "kitchen_hood", "utility", "bathroom", "sanitary" or "habitable"
  bool continuous = false;     ///< extract at a continuous rate; else intermittent
  double volume_m3 = no_number;
  bool outside_wall = true, window = true;
  std::string work = "new";    ///< "new", "added" (to an existing dwelling), "fan_replaced", "never_had_fan"
};
struct ventilated_dwelling {
  double bedrooms = no_number, habitable_rooms = no_number, persons = no_number, main_rooms = no_number, floor_area_m2 = no_number, floors = no_number;
};

/// One rule of a book, as far as it asks for something here.
struct asked_rule {
  double value = no_number;    ///< l/s for flows
  std::string_view by{};       ///< "kind of room", "air changes" ...
  source from{};
  std::string text{};
  std::string overridden{};    ///< "name: reason" of the override that took its place
};
struct room_requirement {
  std::vector<asked_rule> flows{};        ///< every rule that asks for a flow; the greatest governs
  std::size_t governs = 0;
  double flow_l_per_s = no_number;        ///< NaN: no rule asks
  std::vector<asked_rule> overruns{};     ///< minutes
  double overrun_min = no_number;
  asked_rule background{};                ///< mm² equivalent area
  asked_rule purge{};                     ///< air changes an hour
  double purge_l_per_s = no_number;
  std::string fan_required = "yes";       ///< in work on an existing dwelling: the words of the rule
  std::string notifiable{};               ///< likewise
  std::vector<asked_rule> work{};         ///< the rules of such work
  std::vector<std::string> missing{};
};
struct dwelling_requirement {
  asked_rule rule{};
  std::string_view condition{};
  double by_number_l_per_s = no_number, by_area_l_per_s = no_number, least_l_per_s = no_number;
  double flow_l_per_s = no_number;
  std::string_view governs{};             ///< "number", "area", "number and area" or "least"
  double continuous_l_per_s = 0.0;        ///< what the rules of the rooms with continuous extract ask for together
  double extra_l_per_s = no_number;       ///< to be extracted beyond that, so that the dwelling has its rate
  asked_rule undercut{};                  ///< mm² under each inner door
  std::vector<std::string> missing{};
};
struct ventilation_requirement {
  std::vector<room_requirement> rooms{};
  dwelling_requirement dwelling{};
};

namespace detail {
/// The numbers of a rule, or none.
inline bool find_asked(const rulebook& book, std::string_view limit, std::string_view condition, std::string_view by, asked_rule& a, std::array<double, 4>* numbers = nullptr) {
  const auto found = book.find(limit, condition);
  if (!found.found()) return false;
  a.by = by;
  a.value = found.numbers()[0];
  if (numbers) *numbers = found.numbers();
  if (found.changed) {
    a.from = {"override", {}, "override"};
    a.overridden = found.changed->words();
  } else {
    a.from = found.from();
    a.text = std::string(found.row->text);
  }
  return true;
}
inline std::string book_name(const rulebook& b) { return b.id().empty() ? std::string("an empty rulebook") : b.id(); }
}  // namespace detail

inline room_requirement required_in_room(const ventilated_room& room, const ventilated_dwelling& dwelling, const rulebook& book) {
  const std::string who = "ventilation_required: \"" + room.name + "\": ";
  const bool habitable = room.kind == "habitable", kitchen = room.kind == "kitchen" || room.kind == "kitchen_hood";
  if (!habitable && !kitchen && room.kind != "utility" && room.kind != "bathroom" && room.kind != "sanitary")
    throw range_error(who + "kind = \"" + room.kind + "\" is not one of \"kitchen\", \"kitchen_hood\", \"utility\", \"bathroom\", \"sanitary\", \"habitable\"");
  if (!is_nan(room.volume_m3) && !(room.volume_m3 > 0.0 && room.volume_m3 <= 1e6)) throw range_error(who + "volume_m3 must be above 0 and at most 1e6 m³");
  if (room.work != "new" && room.work != "added" && room.work != "fan_replaced" && room.work != "never_had_fan")
    throw range_error(who + "work = \"" + room.work + "\" is not one of \"new\", \"added\", \"fan_replaced\", \"never_had_fan\"");
  room_requirement r;
  asked_rule a;
  const auto by_changes = [&](std::string_view condition, std::string_view by) {
    asked_rule c;
    if (!detail::find_asked(book, "air_changes", condition, by, c)) return;
    if (is_nan(room.volume_m3)) {
      r.missing.push_back("the volume of the room: " + c.text);
      return;
    }
    c.value = airflow_from_air_changes(room.volume_m3, c.value);
    r.flows.push_back(c);
  };
  if (habitable) {
    r.fan_required = "no";
  } else {
    std::string key = kitchen && room.continuous ? std::string("kitchen") : room.kind;
    if (room.continuous) key += "_continuous";
    if (detail::find_asked(book, "extract_rate", key, "kind of room", a)) r.flows.push_back(a);
    if (!room.continuous && !room.outside_wall) by_changes("no_outside_wall", "air changes");
    if (room.kind == "sanitary") by_changes("sanitary", "air changes");
    if (kitchen && room.continuous) {
      by_changes("kitchen_continuous", "air changes");
      if (asked_rule k; !is_nan(dwelling.main_rooms) && detail::find_asked(book, "kitchen_by_main_rooms", "main_rooms_" + number_text(dwelling.main_rooms), "number of main rooms", k)) r.flows.push_back(k);
    }
    if (r.flows.empty()) r.missing.push_back("no extract rate for \"" + key + "\" in " + detail::book_name(book));
    for (std::size_t i = 0; i < r.flows.size(); ++i)
      if (!(r.flow_l_per_s >= r.flows[i].value)) r.flow_l_per_s = r.flows[i].value, r.governs = i;
    // how long it runs on
    if (!room.continuous) {
      if (!room.outside_wall && detail::find_asked(book, "overrun", "no_outside_wall", "no outside wall", a)) r.overruns.push_back(a);
      if (!room.window && detail::find_asked(book, "overrun", "no_window", "no window", a)) r.overruns.push_back(a);
      for (const auto& o : r.overruns)
        if (!(r.overrun_min >= o.value)) r.overrun_min = o.value;
    }
  }
  // background ventilators, purge
  std::string ventilator;
  if (room.work == "added" && !habitable) ventilator = "added_wet_room";
  else if (room.continuous) ventilator = habitable ? "habitable_continuous" : "";
  else if (habitable || kitchen) {
    if (!is_nan(dwelling.floors)) ventilator = std::string(habitable ? "habitable_" : "kitchen_") + (dwelling.floors > 1.0 ? "several_floors" : "one_floor");
    else if (detail::find_asked(book, "background_ventilator", habitable ? "habitable_one_floor" : "kitchen_one_floor", "", a)) r.missing.push_back("the number of floors, for the background ventilator");
  } else {
    ventilator = room.kind;
  }
  if (!ventilator.empty()) detail::find_asked(book, "background_ventilator", ventilator, "background ventilator", r.background);
  if (habitable && detail::find_asked(book, "air_changes", "purge", "purge ventilation", r.purge)) {
    if (is_nan(room.volume_m3)) r.missing.push_back("the volume of the room, for purge ventilation");
    else r.purge_l_per_s = airflow_from_air_changes(room.volume_m3, r.purge.value);
  }
  // work on what is there
  if (room.work != "new") {
    const std::string key = room.work == "added" ? "added_wet_room" : room.work;
    if (detail::find_asked(book, "refurbishment", key, "work on an existing dwelling", a)) {
      r.work.push_back(a);
      if (room.work != "added") r.fan_required = a.overridden.empty() ? a.text : a.overridden;
    } else {
      r.missing.push_back("no rule for such work in " + detail::book_name(book) + ": the rates are those of new work");
    }
    if (room.work == "fan_replaced" && detail::find_asked(book, "refurbishment", "notifiable_on_existing_cabling", "notification", a)) {
      r.work.push_back(a);
      r.notifiable = a.overridden.empty() ? a.text : a.overridden;
    }
  }
  return r;
}

/// What a book asks of rooms and dwelling. Numbers that are not known are NaN.
inline ventilation_requirement ventilation_required(const std::vector<ventilated_room>& rooms, const ventilated_dwelling& dwelling, const rulebook& book) {
  const std::string who = "ventilation_required: ";
  const auto in = [&](double x, double low, double high, bool whole, const char* what) {
    if (!is_nan(x) && (!(x >= low && x <= high) || (whole && x != std::floor(x))))
      throw range_error(who + what + " must be " + (whole ? "a whole number " : "") + "from " + number_text(low) + " to " + number_text(high));
  };
  in(dwelling.bedrooms, 0, 1000, true, "bedrooms");
  in(dwelling.habitable_rooms, 1, 1000, true, "habitable_rooms");
  in(dwelling.persons, 0, 1000, true, "persons");
  in(dwelling.main_rooms, 1, 1000, true, "main_rooms");
  in(dwelling.floors, 1, 100, true, "floors");
  in(dwelling.floor_area_m2, 1, 1e6, false, "floor_area_m2");
  ventilation_requirement r;
  auto& d = r.dwelling;
  for (const auto& room : rooms) {
    r.rooms.push_back(required_in_room(room, dwelling, book));
    const auto& last = r.rooms.back();
    if (room.continuous && !is_nan(last.flow_l_per_s)) d.continuous_l_per_s += last.flow_l_per_s;
  }
  std::array<double, 4> numbers{};
  double count = 0.0;
  const auto use = [&](std::string_view condition, double n) {
    if (is_nan(n) || is_finite(d.rule.value) || !detail::find_asked(book, "whole_dwelling", condition, "whole dwelling", d.rule, &numbers)) return;
    d.condition = condition;
    count = n;
  };
  std::string main_rooms;
  if (dwelling.habitable_rooms == 1.0) use("one_habitable_room", 1.0);
  use("bedrooms", dwelling.bedrooms);
  use("bedrooms_and_area", dwelling.bedrooms);
  use("persons", dwelling.persons);
  if (!is_nan(dwelling.main_rooms)) {
    main_rooms = "main_rooms_" + number_text(dwelling.main_rooms);
    if (const int at = dwelling_counts.find(main_rooms); at >= 0) use(dwelling_counts.rows[static_cast<std::size_t>(at)].key, dwelling.main_rooms);
  }
  if (is_finite(d.rule.value)) {
    const bool adds = d.condition == "bedrooms_and_area";
    d.by_number_l_per_s = numbers[0] + numbers[1] * count;
    d.least_l_per_s = numbers[3];
    if (numbers[2] > 0.0) {
      if (is_nan(dwelling.floor_area_m2)) d.missing.push_back("the floor area: the rule of the dwelling asks for it, and its rate is not complete without");
      else d.by_area_l_per_s = numbers[2] * dwelling.floor_area_m2;
    }
    const double area = is_nan(d.by_area_l_per_s) ? 0.0 : d.by_area_l_per_s;
    d.flow_l_per_s = d.by_number_l_per_s + (adds ? area : 0.0);
    d.governs = adds ? "number and area" : "number";
    if (area > d.flow_l_per_s) d.flow_l_per_s = area, d.governs = "area";
    if (d.least_l_per_s > d.flow_l_per_s) d.flow_l_per_s = d.least_l_per_s, d.governs = "least";
    d.extra_l_per_s = std::max(0.0, d.flow_l_per_s - d.continuous_l_per_s);
  } else {
    bool any = false;
    for (const auto* t : book.tables())
      for (const auto& one : t->rules)
        if (one.limit == "whole_dwelling" && !any) any = true, d.missing.push_back("what the rule of the dwelling counts: \"" + std::string(one.condition) + "\" and the like");
    if (!any) d.missing.push_back("no rate for the whole dwelling in " + detail::book_name(book));
  }
  if (detail::find_asked(book, "door_undercut", "finished_floor", "gap under inner doors", d.undercut, &numbers)) d.undercut.value = numbers[0] * numbers[1];
  return r;
}

// ---- criteria of mould on a surface that a fan blows at -----------------------------------------------------------------------------

/// One named criterion: the period's mean of the humidity at the surface against its limit.
struct surface_criterion {
  std::string_view book{}, period{};
  asked_rule rule{};                ///< the limit in per cent
  comparator compare = comparator::at_most;
  makegood::outcome outcome = makegood::outcome::undecided;
};
/// By every book that has one. A surface that never dries stands at 100 % in every mean: fail. One that stays below the limit even while the
/// fan blows passes, for the fan's air alone. Between them the means are not known.
inline std::vector<surface_criterion> surface_criteria(double humidity_while_running_percent, bool never_dries, const rulebook& book) {
  std::vector<surface_criterion> all;
  for (const auto* t : book.tables())
    for (const auto& period : humidity_period_rows) {
      surface_criterion c;
      const rulebook one(*t);
      if (!detail::find_asked(one, "surface_humidity", period.key, "surface humidity", c.rule)) continue;
      c.book = t->id;
      c.period = period.key;
      c.compare = one.find("surface_humidity", period.key).compare();
      if (never_dries) c.outcome = makegood::outcome::fail;
      else if (humidity_while_running_percent < c.rule.value) c.outcome = makegood::outcome::pass;
      all.push_back(c);
    }
  return all;
}

// ---- a measured flow against its design, decided as the book decides ---------------------------------------------------------------

struct commissioned {
  verdict least{}, most{};          ///< by the book's own decision rule
  bool limited_above = false;
  decision_rule decided_by{};
  bool of_book = false;             ///< the book says how it decides; else the default rule was taken
  asked_rule decision{};
  makegood::outcome outcome = makegood::outcome::undecided;
  verdict proved{};                 ///< the least flow by the default rule, for comparison
};
inline commissioned commissioned_flow(const given& flow, double design_flow_l_per_s, std::string_view extent, const rulebook& book) {
  if (!(design_flow_l_per_s > 0.0 && design_flow_l_per_s <= 1e5)) throw range_error("commissioned_flow: design_flow_l_per_s must be above 0 and at most 100000 l/s");
  commissioned c;
  for (const auto& m : decision_methods)
    if (book.find("flow_decision", m.name).found()) {
      detail::find_asked(book, "flow_decision", m.name, "how the flow is decided", c.decision);
      c.decided_by = decision_rule(m);
      c.of_book = true;
      break;
    }
  const given arguments[] = {flow, measured::exact(design_flow_l_per_s), extent};
  c.least = check_design_flow.judge(arguments, book, c.decided_by);
  c.proved = check_design_flow.judge(arguments, book);
  c.outcome = c.least.outcome;
  c.limited_above = book.find("design_flow_excess", extent).found();
  if (c.limited_above) {
    c.most = check_design_flow_excess.judge(arguments, book, c.decided_by);
    const auto worse = [](outcome a, outcome b) { return a == outcome::fail || b == outcome::fail ? outcome::fail : a == outcome::undecided || b == outcome::undecided ? outcome::undecided : outcome::pass; };
    c.outcome = worse(c.outcome, c.most.outcome);
  }
  return c;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

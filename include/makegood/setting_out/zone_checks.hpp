// SPDX-License-Identifier: MIT
// Equipment in the zones of a bathroom: its kind, protection against water, voltage, residual current device, bonding, each held to the rulebook.
// Subject: setting_out (models). Several limits at once: a finding for each, and the worst of them.
#pragma once
#include <string>
#include <string_view>
#include <vector>
#include "../verdict.hpp"
#include "bathroom.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

inline constexpr std::string_view equipment_kinds[] = {"switch", "pull_cord", "socket", "shaver_supply", "connection_unit", "junction_box", "towel_rail", "fan", "luminaire",
                                                       "water_heater", "shower_unit", "pump", "mirror", "heater", "floor_heating"};
inline constexpr std::string_view equipment_systems[] = {"mains", "selv", "pelv"};
enum class known : unsigned char { no, yes, unknown };

struct zone_equipment {
  std::string kind{};
  std::string ip{};                     ///< "IPX4", "IP44", "IPX5/IPX7"; empty: not known
  std::string system = "mains";
  bool direct_current = false;
  double voltage_v = no_number;         ///< of SELV or PELV
  known source_outside = known::unknown;  ///< the SELV source stands outside zones 0, 1 and 2
  bool water_jets = false;              ///< jets for cleaning are likely
  known spray = known::unknown;         ///< direct spray of a shower reaches it
  known fixed = known::unknown;         ///< fixed and permanently connected
  known maker_suits = known::unknown;   ///< its maker says that it suits the zone
  double residual_current_ma = no_number;  ///< of the device before its circuit; 0: there is none
  known bonding = known::unknown;       ///< supplementary bonding, found and measured
  known disconnection = known::unknown, rcd_on_all = known::unknown, main_bonding = known::unknown;  ///< what lets it be left out
  known grid = known::unknown;          ///< floor heating: earthed grid, sheath or screen
};
/// Where it is: a zone, or what the strictest is that the tape leaves possible.
struct equipment_place {
  int zone = outside_zones;
  bool doubtful = false;
  int strictest = outside_zones;
  double from_zone_1_m = no_number, tape_m = 0.0;
};
struct zone_finding {
  std::string item{};
  makegood::outcome outcome = makegood::outcome::pass;
  makegood::reason reason = makegood::reason::none;
  std::string text{};
  double value = no_number, limit = no_number;
  std::string unit{};
  source from{};
};
struct equipment_result {
  makegood::outcome outcome = makegood::outcome::pass;
  makegood::reason reason = makegood::reason::none;
  int judged_as = outside_zones;
  std::vector<zone_finding> findings{};
  double ip_second_numeral = no_number, selv_ac_v = no_number, selv_dc_v = no_number, residual_current_ma = no_number, socket_distance_m = no_number;
};

/// The second numerals of an IP code: "IPX5/IPX7" has two. None: not stated. What is no IP code is refused.
inline std::vector<int> ip_second_numerals(std::string_view who, std::string_view code) {
  std::vector<int> all;
  std::string_view rest = code;
  while (!rest.empty()) {
    const auto cut = rest.find('/');
    std::string_view one = rest.substr(0, cut);
    rest = cut == std::string_view::npos ? std::string_view() : rest.substr(cut + 1);
    if (one.size() >= 2 && one.substr(0, 2) == "IP") one.remove_prefix(2);
    else if (all.empty()) one = {};
    if (!one.empty() && one.front() == ' ') one.remove_prefix(1);
    const auto digit = [](char c, char most) { return c == 'X' || (c >= '0' && c <= most); };
    if (one.size() < 2 || !digit(one[0], '6') || !digit(one[1], '9') || one.size() > 4)
      throw range_error(std::string(who) + ": ip = \"" + std::string(code) + "\" is no IP code; write \"IPX4\", \"IP44\" or \"IPX5/IPX7\"");
    for (const char c : one.substr(2))
      if (!(c >= 'A' && c <= 'Z')) throw range_error(std::string(who) + ": ip = \"" + std::string(code) + "\" is no IP code; write \"IPX4\", \"IP44\" or \"IPX5/IPX7\"");
    if (one[1] != 'X') all.push_back(one[1] - '0');
  }
  return all;
}
/// Whether codes cover a numeral: up to 6 the higher covers the lower; 7 and 8 cover all but the jets of 5 and 6; 9 covers itself alone.
inline bool ip_covers(const std::vector<int>& codes, int wanted) {
  for (const int c : codes)
    if (c == wanted || (c <= 6 && c > wanted) || (c == 8 && wanted == 7) || ((c == 7 || c == 8) && wanted <= 4)) return true;
  return false;
}

inline equipment_result check_equipment_in_zone(const zone_equipment& e, const equipment_place& place, const rulebook& book) {
  constexpr std::string_view who = "check_equipment_in_zone";
  const auto word = [&](std::string_view name, const std::string& w, const auto& words) {
    if (std::find(std::begin(words), std::end(words), w) != std::end(words)) return;
    std::string text = std::string(who) + ": " + std::string(name) + " = \"" + w + "\" is not one of";
    for (const auto k : words) text += (k == words[0] ? " \"" : ", \"") + std::string(k) + "\"";
    throw range_error(text);
  };
  word("kind", e.kind, equipment_kinds);
  word("system", e.system, equipment_systems);
  const bool low_voltage = e.system != "mains";
  if (!is_nan(e.voltage_v) && !(e.voltage_v > 0.0 && e.voltage_v <= 1000.0)) throw range_error(std::string(who) + ": voltage_v = " + number_text(e.voltage_v) + " V: above 0 to 1000 V");
  if (low_voltage && e.voltage_v > 120.0) throw relation_error(std::string(who) + ": " + number_text(e.voltage_v) + " V is above what SELV or PELV can be; 120 V d.c. at most");
  if (!is_nan(e.residual_current_ma) && !(e.residual_current_ma >= 0.0 && e.residual_current_ma <= 1e5))
    throw range_error(std::string(who) + ": residual_current_ma = " + number_text(e.residual_current_ma) + " mA: from 0 (none) to 100000 mA");
  const auto codes = ip_second_numerals(who, e.ip);

  equipment_result r;
  r.judged_as = place.doubtful ? std::min(place.zone, place.strictest) : place.zone;
  const int zone = r.judged_as;
  const bool in_zone = zone >= 0 && zone < outside_zones;
  const std::string where = in_zone ? "zone " + std::string(zone_word(zone)) : std::string("outside the zones");
  const auto add = [&](std::string_view item, makegood::outcome o, makegood::reason why, std::string text, const source& from, double value = no_number, double limit = no_number, std::string_view unit = {}) {
    r.findings.push_back({std::string(item), o, why, std::move(text), value, limit, std::string(unit), from});
  };
  const auto from_of = [](const rulebook::answer& a) { return a.changed ? source{"override", {}, "override"} : a.from(); };
  const auto no_rule = [&](std::string_view item, std::string_view id, std::string_view condition) {
    add(item, outcome::undecided, reason::no_rule_in_book, "no \"" + std::string(id) + "\"" + (condition.empty() ? "" : " for \"" + std::string(condition) + "\"") + " in " +
        (book.tables().empty() && book.overrides().empty() ? std::string("an empty rulebook") : book.id()), {});
  };
  /// A condition that must hold: held, broken, or nobody said.
  const auto must = [&](std::string_view item, known k, makegood::reason unknown_why, std::string holds, std::string broken, std::string asks, const source& from) {
    if (k == known::yes) add(item, outcome::pass, reason::none, std::move(holds), from);
    else if (k == known::no) add(item, outcome::fail, reason::none, std::move(broken), from);
    else add(item, outcome::undecided, unknown_why, std::move(asks), from);
  };
  if (zone == no_zone_rule) no_rule("zone", "bathroom_zone_height", "");
  if (place.doubtful)
    add("zone", outcome::pass, reason::none, "the tape cannot tell the zone: judged as " + where + ", the strictest that it leaves possible", {});

  const auto selv_limit = [&](std::string_view condition, std::string_view item) {
    const auto a = book.find("bathroom_selv", condition);
    if (!a.found()) return no_rule(item, "bathroom_selv", condition);
    const double limit = a.numbers()[e.direct_current ? 1 : 0];
    r.selv_ac_v = a.numbers()[0], r.selv_dc_v = a.numbers()[1];
    const std::string kind = e.direct_current ? "d.c." : "a.c.";
    if (is_nan(e.voltage_v)) add(item, outcome::undecided, reason::not_measured, "measure: the voltage of the " + e.system + " supply; at most " + number_text(limit) + " V " + kind, from_of(a), no_number, limit, "V");
    else
      add(item, e.voltage_v <= limit ? outcome::pass : outcome::fail, reason::none, number_text(e.voltage_v) + " V " + kind + " against at most " + number_text(limit) + " V in " + where, from_of(a), e.voltage_v, limit, "V");
  };
  const std::string zone_key = in_zone ? "zone_" + std::string(zone_word(zone)) : std::string("outside");

  // the kind of equipment: 0 not permitted, 1 permitted, 2 SELV within the limit for switches, 3 where no direct spray reaches it,
  // 4 beyond the distance from zone 1, 5 SELV within the limit of the zone and suited by its maker
  if (zone == 3) no_rule("kind", "bathroom_equipment", e.kind + " in zone 3");
  else if (zone != no_zone_rule) {
    const auto a = book.find("bathroom_equipment", e.kind);
    if (!a.found()) {
      no_rule("kind", "bathroom_equipment", e.kind);
    } else {
      const int code = static_cast<int>(a.numbers()[static_cast<std::size_t>(in_zone ? zone : 3)]);
      const source from = from_of(a);
      if (code == 0) add("kind", outcome::fail, reason::none, e.kind + " is not permitted in " + where, from);
      if (code == 1) {
        add("kind", outcome::pass, reason::none, e.kind + " is permitted " + (in_zone ? "in " : "") + where, from);
        const bool accessory = e.kind == "pull_cord" || e.kind == "junction_box" || e.kind == "switch" || e.kind == "socket" || e.kind == "connection_unit" || e.kind == "shaver_supply";
        if (zone == 1 && !accessory && e.kind != "floor_heating") {
          must("fixed", e.fixed, reason::not_measured, "fixed and permanently connected", "not fixed and permanently connected", "see: is it fixed and permanently connected", from);
          must("maker", e.maker_suits, reason::needs_makers_figure, "its maker says that it suits zone 1", "its maker does not say it for zone 1", "the maker's instructions: does it suit zone 1", from);
        }
      }
      if (code == 2) {
        if (!low_voltage || e.system == "pelv") add("kind", outcome::fail, reason::none, e.kind + " in " + where + ": of a SELV circuit only", from);
        else {
          add("kind", outcome::pass, reason::none, e.kind + " in " + where + ": of a SELV circuit", from);
          selv_limit(zone == 2 ? "zone_2" : "switch", "voltage");
          must("source", e.source_outside, reason::not_measured, "its source stands outside zones 0, 1 and 2", "its source stands in a zone", "see: does its source stand outside zones 0, 1 and 2", from);
        }
      }
      if (code == 3)
        must("kind", e.spray == known::unknown ? known::unknown : e.spray == known::yes ? known::no : known::yes, reason::not_measured, e.kind + " in " + where + ": no direct spray reaches it",
             e.kind + " in " + where + ": direct spray reaches it", "see: does direct spray of a shower reach it; permitted in " + where + " only where it does not", from);
      if (code == 4) {
        const auto d = book.find("bathroom_socket_distance", "");
        if (e.system == "selv") add("kind", outcome::pass, reason::none, "a SELV socket-outlet outside the zones", from);
        else if (!d.found()) no_rule("distance", "bathroom_socket_distance", "");
        else {
          r.socket_distance_m = d.numbers()[0];
          const double limit = d.numbers()[0], x = place.from_zone_1_m;
          const std::string text = "from zone 1, measured in plan as the string runs, against at least " + number_text(limit) + " m";
          if (is_nan(x)) add("distance", outcome::undecided, reason::not_measured, "measure: distance " + text, from_of(d), no_number, limit, "m");
          else if (std::fabs(x - limit) < 1.645 * place.tape_m / std::sqrt(3.0) && place.tape_m > 0.0)
            add("distance", outcome::undecided, reason::straddles_limit, number_text(x, 4) + " m " + text + ": the tape cannot tell", from_of(d), x, limit, "m");
          else add("distance", x >= limit - 1e-9 ? outcome::pass : outcome::fail, reason::none, (is_finite(x) ? number_text(x, 4) + " m " : "no string reaches it ") + text, from_of(d), x, limit, "m");
        }
      }
      if (code == 5) {
        if (!low_voltage || e.system == "pelv") add("kind", outcome::fail, reason::none, e.kind + " in " + where + ": SELV only", from);
        else {
          add("kind", outcome::pass, reason::none, e.kind + " in " + where + ": SELV", from);
          selv_limit(zone_key, "voltage");
          must("source", e.source_outside, reason::not_measured, "its source stands outside zones 0, 1 and 2", "its source stands in a zone", "see: does its source stand outside zones 0, 1 and 2", from);
          must("fixed", e.fixed, reason::not_measured, "fixed and permanently connected", "not fixed and permanently connected", "see: is it fixed and permanently connected", from);
          must("maker", e.maker_suits, reason::needs_makers_figure, "its maker says that it suits " + where, "its maker does not say it for " + where, "the maker's instructions: does it suit " + where, from);
        }
      }
      if (code == 1 && low_voltage && (zone == 0 || zone == 1)) selv_limit(zone_key, "voltage");
    }
  }

  // protection against water
  if (in_zone && zone != 3 && e.kind != "floor_heating") {
    const bool jets = e.water_jets && zone != 0;
    const auto a = book.find("bathroom_ip", jets ? "jets" : zone_key);
    if (!a.found()) {
      no_rule("ip", "bathroom_ip", jets ? std::string_view("jets") : std::string_view(zone_key));
    } else if (zone == 2 && e.kind == "shaver_supply" && e.spray == known::no && !jets) {
      add("ip", outcome::pass, reason::none, "a shaver supply unit in zone 2 that no direct spray reaches needs no IP code for water", from_of(a));
    } else {
      const int wanted = static_cast<int>(a.numbers()[0]);
      r.ip_second_numeral = wanted;
      const double best = codes.empty() ? no_number : static_cast<double>(*std::max_element(codes.begin(), codes.end()));
      const std::string text = "against IPX" + std::to_string(wanted) + (jets ? ", water jets being likely" : " for " + where);
      const bool dual = wanted >= 5 && wanted <= 6 && best > 6.0;
      if (codes.empty()) add("ip", outcome::undecided, reason::needs_makers_figure, "the maker's IP code, its numeral for water; " + text, from_of(a), no_number, wanted);
      else if (ip_covers(codes, wanted)) add("ip", outcome::pass, reason::none, e.ip + " " + text, from_of(a), best, wanted);
      else if (dual) add("ip", outcome::undecided, reason::needs_makers_figure, e.ip + " " + text + ": immersion does not include jets; the maker's code for both", from_of(a), best, wanted);
      else add("ip", outcome::fail, reason::none, e.ip + " " + text, from_of(a), best, wanted);
    }
  }

  // heating in the floor
  if (e.kind == "floor_heating") {
    const auto a = book.find("bathroom_floor_heating", "");
    if (!a.found()) no_rule("grid", "bathroom_floor_heating", "");
    else if (e.system == "selv") add("grid", outcome::pass, reason::none, "SELV: no earthed grid is asked for", from_of(a));
    else must("grid", e.grid, reason::not_measured, "earthed grid, sheath or screen", "without an earthed grid, sheath or screen", "measure: continuity of its grid, sheath or screen to the protective conductor", from_of(a));
  }

  // residual current device and bonding: for the circuits of the room, in a zone or not
  if (!low_voltage) {
    if (const auto a = book.find("bathroom_rcd", ""); !a.found()) {
      no_rule("rcd", "bathroom_rcd", "");
    } else {
      const double limit = a.numbers()[0], x = e.residual_current_ma;
      r.residual_current_ma = limit;
      if (is_nan(x)) add("rcd", outcome::undecided, reason::not_measured, "see: which residual current device protects the circuit; at most " + number_text(limit) + " mA", from_of(a), no_number, limit, "mA");
      else if (x == 0.0) add("rcd", outcome::fail, reason::none, "no residual current device; " + number_text(limit) + " mA at most is asked for", from_of(a), no_number, limit, "mA");
      else add("rcd", x <= limit ? outcome::pass : outcome::fail, reason::none, number_text(x) + " mA against at most " + number_text(limit) + " mA", from_of(a), x, limit, "mA");
    }
    if (const auto a = book.find("bathroom_bonding", ""); !a.found()) {
      no_rule("bonding", "bathroom_bonding", "");
    } else if (e.bonding == known::yes) {
      add("bonding", outcome::pass, reason::none, "supplementary bonding is there", from_of(a));
    } else if (a.numbers()[0] > 0.5) {
      const bool all = e.disconnection == known::yes && e.rcd_on_all == known::yes && e.main_bonding == known::yes;
      const bool one_fails = e.disconnection == known::no || e.rcd_on_all == known::no || e.main_bonding == known::no;
      if (all) add("bonding", outcome::pass, reason::none, "supplementary bonding may be left out: disconnection, residual current devices on all circuits and main bonding are proved", from_of(a));
      else if (one_fails && e.bonding == known::no) add("bonding", outcome::fail, reason::none, "no supplementary bonding, and what would let it be left out does not hold", from_of(a));
      else
        add("bonding", outcome::undecided, reason::precondition_missing,
            "prove supplementary bonding, or all three: disconnection times, a residual current device on every circuit of the room, extraneous parts joined to the main bonding", from_of(a));
    } else {
      must("bonding", e.bonding, reason::not_measured, "", "no supplementary bonding", "measure: supplementary bonding of the room", from_of(a));
    }
  }
  for (const auto& f : r.findings) {
    if (f.outcome == outcome::fail && r.outcome != outcome::fail) r.outcome = outcome::fail, r.reason = reason::none;
    if (f.outcome == outcome::undecided && r.outcome == outcome::pass) r.outcome = outcome::undecided, r.reason = f.reason;
  }
  return r;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

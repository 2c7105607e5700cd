// SPDX-License-Identifier: MIT
// Ventilation rates: air changes, extract flows, and the rates that a rulebook asks for.
// Subject: air.
#pragma once
#include "../verdict.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr auto airflow_from_air_changes = formula(
    out{"airflow_from_air_changes", "q", unit::litre_per_second, "Air flow that changes the air of a room a number of times an hour."},
    in(arg{"room_volume_m3", "V", unit::cubic_metre, between(0, 1e6), "volume of the room"}.usually(3, 100),
       arg{"air_changes_per_h", "n", unit::per_hour, between(0, 1e5), "air changes an hour"}.usually(0.3, 15)),
    source{"ASHRAE Handbook Fundamentals 2021, ch. 16", "n = q/V", "memory"},
    [](auto volume, auto changes) { return in_milli(volume * hourly(changes)); }, remarks{"exact to rounding", "0 without volume or changes"});

inline constexpr auto air_changes_from_airflow = formula(
    out{"air_changes_from_airflow", "n", unit::per_hour, "Air changes an hour that an air flow makes in a room."},
    in(arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e6), "air flow"}.usually(1, 100),
       arg{"room_volume_m3", "V", unit::cubic_metre, positive_to(1e6), "volume of the room"}.usually(3, 100)),
    source{"ASHRAE Handbook Fundamentals 2021, ch. 16", "n = q/V", "memory"},
    [](auto flow, auto volume) { return in_hourly(milli(flow) / volume); }, remarks{"exact to rounding", "0 without flow"});

inline constexpr auto flow_from_velocity = formula(
    out{"flow_from_velocity", "q", unit::litre_per_second, "Air flow from the mean velocity over a free area."},
    in(arg{"velocity_m_per_s", "v", unit::metre_per_second, between(0, 1e4), "mean velocity over the area"}.usually(0.5, 10),
       arg{"area_mm2", "A", unit::square_millimetre, between(0, 1e9), "free area"}.usually(2000, 80000)),
    source{"White, Fluid Mechanics", "chapter 3, continuity"},
    [](auto velocity, auto area) { return in_milli(velocity * micro(area)); },
    remarks{"exact to rounding; the mean of a few points of a traverse is not", "0 in still air"});

inline constexpr choice_row room_kind_rows[] = {
    {"kitchen", "kitchen without a hood to the outside", {}, {}},
    {"kitchen_hood", "kitchen with a hood to the outside", {}, {}},
    {"utility", "utility room", {}, {}},
    {"bathroom", "bathroom", {}, {}},
    {"sanitary", "sanitary accommodation", {}, {}},
    {"kitchen_continuous", "kitchen, continuous extract at the high rate", {}, {}},
    {"utility_continuous", "utility room, continuous extract at the high rate", {}, {}},
    {"bathroom_continuous", "bathroom, continuous extract at the high rate", {}, {}},
    {"sanitary_continuous", "sanitary accommodation, continuous extract at the high rate", {}, {}}};
inline constexpr choice_table room_kinds{{}, room_kind_rows};
inline constexpr column extract_rate_rule[] = {{"q_min", unit::litre_per_second}};
inline constexpr column air_changes_rule[] = {{"n_min", unit::per_hour}};

inline constexpr auto check_extract = check(
    out{"check_extract", "q", unit::litre_per_second, "Extract rate of a room as measured, against the rulebook's rate for its kind."},
    in(arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "extract flow at the terminal"}.usually(3, 80).read_by(reads::airflow),
       choice{"room_kind", room_kinds, "kind of room and of extract"}),
    rule_use{"extract_rate", "room_kind", extract_rate_rule}, comparator::at_least,
    source{"Approved Document F, volume 1, 2021 edition (England)", "Tables 1.1 and 1.2"}, [](auto flow, auto) { return flow; },
    [](auto rule, auto, auto) { return rule[0]; },
    "Measured with doors and windows shut. An unpowered hood throttles a weak axial fan and reads low. The air must be discharged outside.");

inline constexpr auto check_air_changes = check(
    out{"check_air_changes", "n", unit::per_hour, "Air changes that an intermittent fan makes in a wet room without an outside wall, against the rulebook's number."},
    in(arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e5), "extract flow at the terminal"}.usually(3, 80).read_by(reads::airflow),
       arg{"room_volume_m3", "V", unit::cubic_metre, positive_to(1e6), "volume of the room"}.usually(3, 40)),
    rule_use{"inner_room_air_changes", "", air_changes_rule}, comparator::at_least,
    source{"Approved Document F, volume 1, 2021 edition (England)", "1.48"},
    [](auto flow, auto volume) { return call(air_changes_from_airflow, flow, volume); }, [](auto rule, auto, auto) { return rule[0]; },
    "It comes on top of the room's extract rate; such a room also needs an overrun of 15 minutes.");

inline constexpr auto check_duct_pressure = check(
    out{"check_duct_pressure", "Δp", unit::pascal, "Pressure that a run of duct takes at a flow, against what the fan gives at that flow."},
    in(arg{"pressure_loss_pa", "Δp", unit::pascal, between(0, 1e6), "pressure that the run takes at the flow asked for"}.usually(2, 100),
       arg{"available_pressure_pa", "p_f", unit::pascal, between(0, 1e6), "static pressure that the fan gives at that flow"}.usually(5, 150)),
    rule_use{}, comparator::at_most, source{"the run takes no more pressure than the fan gives at that flow", "", "common-practice"},
    [](auto loss, auto) { return loss; }, [](auto, auto, auto available) { return available; },
    "A calculation from lengths and shapes: a crushed part, a closed shutter or a blocked terminal shows only when the flow is measured.");

/// What a rulebook asks for in a room.
struct extract_requirement {
  double flow_l_per_s = no_number;
  comparator compare = comparator::at_least;
  source from{};
  std::string_view text{};
  std::string rulebook{};
  std::string overridden{};  ///< "name: reason" of the override that was used
};
/// The extract rate that a rulebook asks for. A rate that no book holds is an error, never a guess.
inline extract_requirement required_extract(std::string_view room_kind, const rulebook& book) {
  if (room_kinds.find(room_kind) < 0)
    throw range_error("required_extract: room_kind = \"" + std::string(room_kind) + "\" is not one of " + v1::detail::keys_text(room_kinds));
  const auto found = book.find("extract_rate", room_kind);
  if (!found.found())
    throw rule_error("required_extract: no \"extract_rate\" for \"" + std::string(room_kind) + "\" in " +
                     (book.id().empty() ? std::string("an empty rulebook") : book.id()));
  if (found.needs_makers_figure()) throw rule_error("required_extract: " + std::string(found.row->text));
  extract_requirement r{found.numbers()[0], found.compare(), found.from(), {}, book.id(), {}};
  if (found.changed) {
    r.from = {"override", {}, "override"};
    r.overridden = found.changed->words();
  } else {
    r.text = found.row->text;
  }
  return r;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

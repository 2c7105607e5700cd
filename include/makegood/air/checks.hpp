// SPDX-License-Identifier: MIT
// Checks of ventilation: extract rates, air changes, the pressure of a duct against what its fan gives.
// Subject: air.
#pragma once
#include "../verdict.hpp"
#include "ventilation.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

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

}  // namespace air
}  // namespace v1
}  // namespace makegood

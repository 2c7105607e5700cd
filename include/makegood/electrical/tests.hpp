// SPDX-License-Identifier: MIT
// Tests of an installation: insulation resistance and the tripping time of residual current devices.
// Subject: electrical.
#pragma once
#include "../verdict.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr column insulation_rule[] = {{"R_min", unit::megaohm}};
inline constexpr choice_row circuit_kind_rows[] = {
    {"selv_pelv", "SELV or PELV, tested with 250 V d.c.", {}, {}},
    {"up_to_500_v", "up to and including 500 V, tested with 500 V d.c.", {}, {}},
    {"above_500_v", "above 500 V, tested with 1000 V d.c.", {}, {}}};
inline constexpr choice_table circuit_kinds{{}, circuit_kind_rows};

inline constexpr auto check_insulation = check(
    out{"check_insulation", "R", unit::megaohm, "Insulation resistance against the rulebook's least value."},
    in(arg{"resistance_mohm", "R", unit::megaohm, between(0, 1e9), "insulation resistance at the rulebook's test voltage"}.usually(0.1, 200).read_by(reads::insulation),
       choice{"circuit_kind", circuit_kinds, "kind of circuit, which sets the test voltage"}),
    rule_use{"insulation_minimum", "circuit_kind", insulation_rule}, comparator::at_least, source{"IEC 60364-6", "Table 6.1"},
    [](auto resistance, auto) { return resistance; }, [](auto rule, auto, auto) { return rule[0]; },
    "Dead and isolated; electronics, controllers, sensors, mirrors and neon indicators taken off: they read low and may be damaged. A sound circuit reads far above the limit.");

inline constexpr column trip_time_rule[] = {{"t_max", unit::millisecond}};
inline constexpr choice_row rcd_kind_rows[] = {{"general", "general type", {}, {}}, {"selective", "selective (time-delayed) type", {}, {}}};
inline constexpr choice_table rcd_kinds{{}, rcd_kind_rows};

inline constexpr auto check_rcd_trip = check(
    out{"check_rcd_trip", "t", unit::millisecond, "Tripping time of a residual current device at its rated residual current against the rulebook's limit."},
    in(arg{"time_ms", "t", unit::millisecond, between(0, 1e6), "tripping time at 1 x the rated residual current"}.usually(5, 600).read_by(reads::rcd_time),
       choice{"rcd_kind", rcd_kinds, "kind of device"}),
    rule_use{"rcd_trip_time", "rcd_kind", trip_time_rule}, comparator::at_most, source{"IEC 61008-1", "operating times at I_Δn"},
    [](auto time, auto) { return time; }, [](auto rule, auto, auto) { return rule[0]; },
    "A live test: prove the protective conductor first. The worse of the two half-waves counts. A selective type also has a least time, which this check does not judge.");

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Rulebook: UK requirements of the 16th edition, BS 7671:2001, to judge an installation by the edition it was built to.
// Few rows: what was neither read nor recalled has none, and a check then says "no rule in book". Times of disconnection are among those.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule bs7671_2001_rows[] = {
    // base %, further % per metre, beyond m, at most further %
    {"voltage_drop_limit", "lighting", comparator::at_most, {4.0}, {"BS 7671:2001", "525-01-02, 4 % from the origin to the load", "memory"}, "4 % of the nominal voltage"},
    {"voltage_drop_limit", "other", comparator::at_most, {4.0}, {"BS 7671:2001", "525-01-02, 4 % from the origin to the load", "memory"}, "4 % of the nominal voltage"},
    {"minimum_voltage_factor", "", comparator::at_most, {1.0}, {"BS 7671:2001", "413-02-08; C_min came in 2015", "memory"}, "Z_s · I_a is not above U_0"},
    {"insulation_minimum", "up_to_500_v", comparator::at_least, {0.5}, {"BS 7671:2001", "Table 71A", "memory"}, "0.5 MΩ at 500 V d.c."},
    // a shower without a basin was not recalled
    {"bathroom_zone_height", "", comparator::at_most, {2.25, 0.0}, {"BS 7671:2001", "601-02", "memory"}, "up to 2.25 m above the floor"},
    {"bathroom_zone2_width", "", comparator::at_most, {0.60}, {"BS 7671:2001", "601-02", "memory"}, "0.60 m beyond zone 1 of a bath or tray"},
    {"bathroom_zone3_width", "", comparator::at_most, {2.40}, {"BS 7671:2001", "601-02; zone 3 went in 2008", "memory"}, "2.40 m beyond zone 2"},
    {"rcd_trip_time", "general", comparator::at_most, {300.0}, {"BS EN 61008-1 / 61009-1", "operating time at I_Δn", "seen"}, "300 ms at the rated residual current"},
    {"rcd_trip_time", "selective", comparator::at_most, {500.0}, {"BS EN 61008-1 / 61009-1", "operating time at I_Δn", "seen"}, "500 ms at the rated residual current"},
    {"rcd_trip_time", "bs4293", comparator::at_most, {200.0}, {"BS 4293", "operating time at the rated residual current", "seen"}, "200 ms at the rated residual current (older devices)"},
    {"rcd_trip_window", "general_1x", comparator::within, {0.0, 300.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "at most 300 ms at the rated residual current"},
    {"rcd_trip_window", "general_5x", comparator::within, {0.0, 40.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "at most 40 ms at five times the rated residual current"},
    {"rcd_trip_window", "selective_1x", comparator::within, {130.0, 500.0}, {"BS EN 61008-1 / 61009-1", "Table 1", "seen"}, "130 to 500 ms at the rated residual current"},
    {"rcd_trip_window", "bs4293_1x", comparator::within, {0.0, 200.0}, {"BS 4293", "operating time at the rated residual current", "seen"}, "at most 200 ms at the rated residual current (older devices)"},
    {"rcd_trip_window", "bs4293_5x", comparator::within, {0.0, 40.0}, {"BS 4293 and BS 7288", "operating time at five times the rated residual current", "seen"}, "at most 40 ms at five times the rated residual current (older devices)"},
    {"rcd_ramp", "AC", comparator::within, {0.5, 1.0}, {"BS EN 61008-1 / 61009-1", "Table 1: no trip at 0.5 I_Δn, trip at I_Δn", "memory"}, "trips between 0.5 and 1 times the rated residual current"},
    // socket-outlets indoors, lighting, cables in walls: no such rule was read or recalled
    {"additional_protection", "mobile_outdoor", comparator::at_most, {30.0}, {"BS 7671:2001", "471-16-01, 471-16-02, 412-06-02 (read in a quotation)", "seen"}, "30 mA for socket-outlets up to 32 A that may feed portable equipment outdoors, and for such equipment without one"},
    // 1: asked for, 0: informs; for devices up to that many mA (0: all)
    {"rcd_test_required", "half", comparator::at_least, {1.0}, {"BS 7671:2001", "part 7, tests of residual current devices", "memory"}, "asked for: no trip at half the rated residual current"},
    {"rcd_test_required", "1x", comparator::at_least, {1.0}, {"BS 7671:2001", "part 7, tests of residual current devices", "memory"}, "asked for: time at the rated residual current, alternating"},
    {"rcd_test_required", "5x", comparator::at_least, {1.0, 30.0}, {"BS 7671:2001", "part 7, tests of residual current devices", "memory"}, "asked for up to 30 mA: time at five times the rated residual current"},
    {"rcd_test_required", "ramp", comparator::at_least, {0.0}, {"BS 7671:2001", "part 7, tests of residual current devices", "memory"}, "informs: current at which it trips"},
};
inline constexpr rule_table bs7671_2001{"bs7671:2001", "Requirements for Electrical Installations, IEE Wiring Regulations, 16th edition", "United Kingdom", "BS 7671:2001", "2001-06-01",
                                        bs7671_2001_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood

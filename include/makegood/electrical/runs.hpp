// SPDX-License-Identifier: MIT
// Runs: wire gauges and resistivity, loads spread along a run or a ring, currents in the legs of a ring, longest lengths.
// Subject: electrical.
#pragma once
#include "capacity.hpp"
#include "protection.hpp"

namespace makegood {
inline namespace v1 {
namespace unit {
inline constexpr unit_t ohm_square_millimetre_per_metre = detail::si("Ω·mm²/m", 3, 1, -3, -2, 0, 1e-6);
}  // namespace unit
namespace electrical {

// ---- gauges and resistivity -----------------------------------------------------------------------------------------------

inline constexpr source gauge_rule{"American wire gauge", "d = 0.005 in · 92^((36 - n)/39)"};
inline constexpr literal ln_92 = constant(4.52178857704904031, unit::one, "ln 92");
namespace detail {
inline constexpr arg gauge_arg =
    arg{"gauge", "n", unit::one, between(-3, 56), "number of the gauge; 1/0 is 0, 2/0 is -1, 3/0 is -2, 4/0 is -3"}.usually(-3, 24);
}  // namespace detail
inline constexpr auto awg_diameter = formula(
    out{"awg_diameter", "d", unit::millimetre, "Diameter of a solid conductor of the American wire gauge."},
    in(detail::gauge_arg), gauge_rule,
    [](auto gauge) { return constant(0.127, unit::millimetre) * exp(ln_92 * ((36.0 - gauge) / 39.0)); },
    remarks{"the definition itself; printed tables round to four digits. Whole numbers alone are made", "0.127 mm at 36"});
inline constexpr auto awg_area = formula(
    out{"awg_area", "S", unit::square_millimetre, "Cross-section of a solid conductor of the American wire gauge."},
    in(detail::gauge_arg), gauge_rule,
    [](auto gauge) {
      auto diameter = call(awg_diameter, gauge);
      return constant(0.785398163397448310, unit::one, "π/4") * square(diameter);
    },
    remarks{"the definition itself; a stranded conductor has the same area of metal and a larger diameter. Whole numbers alone are made", "0.01267 mm² at 36"});
inline constexpr auto awg_gauge = formula(
    out{"awg_gauge", "n", unit::one, "Number of the American wire gauge from the diameter of a solid conductor."},
    in(arg{"diameter_mm", "d", unit::millimetre, between(0.01, 12), "diameter of the bare conductor"}.usually(0.5, 11.6)), gauge_rule,
    [](auto diameter) { return 36.0 - 39.0 * log(diameter / constant(0.127, unit::millimetre)) / ln_92; },
    remarks{"exact; 0.01 mm is 0.05 of a number at 14. The nearest whole number is the gauge, if it is near", "0 is 1/0, -3 is 4/0"});

inline constexpr auto conductor_resistivity = formula(
    out{"conductor_resistivity", "ρ", unit::ohm_square_millimetre_per_metre, "Resistivity of a conductor's metal at a temperature."},
    in(choice{"material", conductor_materials, "metal of the conductor"},
       arg{"temperature_c", "t", unit::celsius, between(-200, 1000), "temperature of the conductor"}.usually(-10, 90).valid_in(between(-50, 250)).otherwise(20)),
    source{"NBS Handbook 100, Copper Wire Tables (1966); IEC 60364-5-54 Annex A", "ρ = ρ_20 (β + t)/(β + 20)"},
    [](auto metal, auto t) { return in_milli(metal[3] * (metal[0] + from_zero(t)) / (metal[0] + constant(20.0, unit::kelvin))); },
    requires_that([](auto metal, auto t) { return metal[0] + t > 0.0; }, "the straight line of resistivity is above zero at this temperature"),
    remarks{"within 0.1 % for annealed copper of 100 % conductivity from -20 to 100 °C; the hot values 0.0225 and 0.036 of IEC 60364-5-52 Annex G are another convention (1.25 times that at 20 °C)",
            "0.017241 Ω·mm²/m of copper at 20 °C"});

inline constexpr auto resistance_from_resistivity = formula(
    out{"resistance_from_resistivity", "r", unit::milliohm_per_metre, "Resistance of one metre of a conductor from the resistivity of its metal and its cross-section."},
    in(arg{"resistivity_ohm_mm2_per_m", "ρ", unit::ohm_square_millimetre_per_metre, positive_to(100), "resistivity at the temperature wanted: copper 0.017241 at 20 °C"}.usually(0.017, 0.04),
       arg{"area_mm2", "S", unit::square_millimetre, positive_to(1e5), "cross-section of the metal"}.usually(0.5, 110),
       arg{"lay_factor", "k", unit::one, between(1, 1.2), "length of a strand over the length of the conductor: 1 solid, about 1.02 stranded"}.usually(1, 1.03).otherwise(1)),
    source{"NBS Handbook 100, Copper Wire Tables (1966)", "r = ρ/S"}, [](auto resistivity, auto area, auto lay) { return in_milli(resistivity / area) * lay; },
    remarks{"exact to rounding; a nominal area is not the area of metal: conductors of IEC 60228 are held to a resistance, not to an area", ""});

// ---- spread loads -----------------------------------------------------------------------------------------------------

namespace detail {
inline constexpr arg loop_per_metre =
    arg{"resistance_mohm_per_m", "z", unit::milliohm_per_metre, between(0, 1e5), "resistance of line and neutral together, of one metre of cable"}.usually(5, 45);
inline constexpr arg spread_current = arg{"current_a", "I", unit::ampere, between(0, 1e5), "current of all the loads together"}.usually(0, 32);
inline constexpr arg whole_ring = arg{"ring_length_m", "L", unit::metre, positive_to(1e5), "length of the whole ring"}.usually(40, 120);
}  // namespace detail
inline constexpr source spread_by_integration{"Ohm's law, current falling evenly along the run", "z I (L_0 + L/2)", "derived"};

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(spread_voltage_drop_arguments, (resistance_mohm_per_m, spread_length_m, current_a), (unloaded_length_m = T(0.0)));
inline constexpr auto spread_voltage_drop = formula(
    out{"spread_voltage_drop", "ΔU", unit::volt, "Voltage drop at the end of a run along which the load is spread evenly."},
    in<spread_voltage_drop_arguments>(
        detail::loop_per_metre, arg{"spread_length_m", "L", unit::metre, between(0, 1e5), "length along which the loads are spread, up to the end"}.usually(5, 80),
        detail::spread_current,
        arg{"unloaded_length_m", "L_0", unit::metre, between(0, 1e5), "length from the board to the first of them"}.usually(0, 40).otherwise(0)),
    spread_by_integration, [](auto resistance, auto spread, auto current, auto before) { return milli(resistance * current * (before + spread / 2.0)); },
    remarks{"exact for a load that is spread evenly; n like loads at even distances, the last at the end, drop (n+1)/n of it", "half of a load at the end, without the first length"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(ring_spread_voltage_drop_arguments, (resistance_mohm_per_m, ring_length_m, current_a), (position_ratio = T(0.5)));
inline constexpr auto ring_spread_voltage_drop = formula(
    out{"ring_spread_voltage_drop", "ΔU", unit::volt, "Voltage drop on a ring along which the load is spread evenly."},
    in<ring_spread_voltage_drop_arguments>(
        detail::loop_per_metre, detail::whole_ring, detail::spread_current,
        arg{"position_ratio", "x", unit::one, between(0, 1), "place along the ring: 0 and 1 at the board, 0.5 in the middle"}.usually(0, 1).otherwise(0.5)),
    source{"Ohm's law, current falling evenly from both ends", "z I L x (1 - x)/2", "derived"},
    [](auto resistance, auto ring, auto current, auto x) { return milli(resistance * ring * current * (x * (1.0 - x) / 2.0)); },
    remarks{"exact for a load that is spread evenly; half of what one load of the same current drops at the same place", "z I L/8 in the middle, 0 V at the board"});

inline constexpr auto ring_assumed_current = formula(
    out{"ring_assumed_current", "I", unit::ampere, "Current that, in the middle of a ring alone, drops what a load there and the rest spread evenly drop together."},
    in(arg{"rating_a", "I_n", unit::ampere, positive_to(1e4), "rated current of the ring's device"}.usually(20, 40),
       arg{"far_point_a", "I_f", unit::ampere, between(0, 1e4), "part of it that is taken in the middle: 20 A by convention for 32 A"}.usually(0, 20).otherwise(20)),
    source{"Superposition; convention for rings of 32 A", "I_f + (I_n - I_f)/2", "common-practice"},
    [](auto rating, auto far) { return (rating + far) / 2.0; },
    requires_that([](auto rating, auto far) { return far <= rating; }, "the part in the middle is not above the rating"),
    remarks{"the sum is exact; that the load lies so is a convention", "26 A for 32 A with 20 A in the middle"});

inline constexpr auto ring_leg_current = formula(
    out{"ring_leg_current", "I_1", unit::ampere, "Current in the leg of a ring from which the distance of a load is counted."},
    in(detail::whole_ring, arg{"distance_m", "x", unit::metre, between(0, 1e5), "distance of the load from the board along this leg"}.usually(0, 40),
       arg{"current_a", "I", unit::ampere, between(0, 1e5), "current of the load"}.usually(0, 32)),
    source{"Kirchhoff's laws for two ways in parallel", "I (1 - x/L)", "derived"},
    [](auto ring, auto distance, auto current) { return current * ((ring - distance) / ring); },
    requires_that([](auto ring, auto distance, auto) { return distance <= ring; }, "the load is not further along than the ring is long"),
    remarks{"exact for one cable all round and sound joints; several loads add by superposition, see spur_load", "all of it at the board, half in the middle"});

// ---- longest lengths --------------------------------------------------------------------------------------------------

namespace detail {
inline constexpr arg drop_allowed = arg{"drop_limit_v", "ΔU_max", unit::volt, between(0, 1e4), "voltage drop allowed"}.usually(3, 12);
inline constexpr arg tabulated_drop = arg{"drop_mv_per_a_m", "d", unit::millivolt_per_ampere_metre, positive_to(1000), "tabulated drop of the cable"}.usually(2, 45);
inline constexpr arg working_factor =
    arg{"temperature_factor", "C_t", unit::one, between(0.5, 2), "operating temperature factor, for a cable that is not fully loaded"}.usually(0.85, 1).otherwise(1);
inline constexpr arg load_at_the_end = arg{"current_a", "I", unit::ampere, positive_to(1e5), "current of the load"}.usually(1, 40);
inline constexpr arg highest_loop = arg{"loop_limit_ohm", "Z_max", unit::ohm, positive_to(1e6), "highest loop impedance at working temperature, C_min in it"}.usually(0.8, 8);
inline constexpr arg outer_loop = arg{"external_ohm", "Z_e", unit::ohm, between(0, 1e6), "impedance of the loop outside the installation"}.usually(0.05, 0.8);
inline constexpr arg loop_core_pair = arg{"r1_plus_r2_mohm_per_m", "r_1+r_2", unit::milliohm_per_metre, positive_to(1e5), "line and protective conductor together, of one metre at 20 °C"}.usually(4, 40);
inline constexpr arg warm_factor = arg{"temperature_factor", "F", unit::one, between(0.5, 3), "correction from 20 °C to working temperature"}.usually(1, 1.3).otherwise(1.2);
}  // namespace detail
inline constexpr source longest_by_drop{"BS 7671:2018+A2:2022, Appendix 4, 6.1, solved for the length", "ΔU_max/(d I C_t)", "derived"};
inline constexpr source longest_by_loop{"Z_s = Z_e + F (R_1 + R_2), solved for the length", "(Z_max - Z_e)/((r_1+r_2) F)", "derived"};

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(longest_run_by_drop_arguments, (drop_limit_v, drop_mv_per_a_m, current_a), (temperature_factor = T(1.0)));
inline constexpr auto longest_run_by_drop = formula(
    out{"longest_run_by_drop", "L", unit::metre, "Longest run to a load at its end that keeps the voltage drop."},
    in<longest_run_by_drop_arguments>(detail::drop_allowed, detail::tabulated_drop, detail::load_at_the_end, detail::working_factor), longest_by_drop,
    [](auto limit, auto drop, auto current, auto factor) { return limit / (milli(drop) * current * factor); },
    remarks{"exact to rounding; tabulated drops are rounded to two digits (up to 1.5 %)", "0 m where no drop is allowed"});
inline constexpr auto longest_ring_by_drop = formula(
    out{"longest_ring_by_drop", "L", unit::metre, "Longest ring that keeps the voltage drop of a load in its middle."},
    in<longest_run_by_drop_arguments>(detail::drop_allowed, detail::tabulated_drop,
       arg{"current_a", "I", unit::ampere, positive_to(1e5), "current in the middle, or the assumed current of ring_assumed_current"}.usually(5, 32), detail::working_factor),
    source{"The drop in the middle of a ring, z I L/4, solved for the length", "4 ΔU_max/(d I C_t)", "derived"},
    [](auto limit, auto drop, auto current, auto factor) { return 4.0 * limit / (milli(drop) * current * factor); },
    remarks{"exact to rounding; the length all round, spurs not in it", "0 m where no drop is allowed"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(longest_run_by_loop_arguments, (loop_limit_ohm, external_ohm, r1_plus_r2_mohm_per_m), (temperature_factor = T(1.2)));
inline constexpr auto longest_run_by_loop = formula(
    out{"longest_run_by_loop", "L", unit::metre, "Longest run at whose end the loop impedance still lets the device disconnect in time."},
    in<longest_run_by_loop_arguments>(detail::highest_loop, detail::outer_loop, detail::loop_core_pair, detail::warm_factor), longest_by_loop,
    [](auto limit, auto external, auto pair, auto factor) { return (limit - external) / (milli(pair) * factor); },
    requires_that([](auto limit, auto external, auto, auto) { return external <= limit; }, "the loop outside is not above the limit by itself; otherwise a residual current device"),
    remarks{"impedances added as numbers: on the safe side, by less than 2 % up to 16 mm²", "0 m where the loop outside takes all of it"});
inline constexpr auto longest_ring_by_loop = formula(
    out{"longest_ring_by_loop", "L", unit::metre, "Longest ring in whose middle the loop impedance still lets the device disconnect in time."},
    in<longest_run_by_loop_arguments>(detail::highest_loop, detail::outer_loop, detail::loop_core_pair, detail::warm_factor),
    source{"Z_s = Z_e + F (r_1 + r_2) L/4, solved for the length", "4 (Z_max - Z_e)/((r_1+r_2) F)", "derived"},
    [](auto limit, auto external, auto pair, auto factor) { return 4.0 * (limit - external) / (milli(pair) * factor); },
    requires_that([](auto limit, auto external, auto, auto) { return external <= limit; }, "the loop outside is not above the limit by itself; otherwise a residual current device"),
    remarks{"the length all round; a spur adds its own loop, metre for metre four times as much as the ring", "0 m where the loop outside takes all of it"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

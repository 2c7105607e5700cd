// SPDX-License-Identifier: MIT
// Protection: heating of a conductor by a fault (adiabatic), loop impedance, fault current.
// Subject: electrical.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr source adiabatic_annex{"IEC 60364-5-54:2011", "Annex A, Table A.54.1", "memory"};
inline constexpr source adiabatic_equation{"IEC 60364-5-54:2011", "543.1.2, S = √(I² t)/k"};

// k_0 as the standard prints it, in whole numbers: with it every printed k comes out within 0.5.
inline constexpr column conductor_material_columns[] = {
    {"β", unit::kelvin}, {"k_0", unit::adiabatic_k}, {"Q_c", unit::joule_per_kelvin_cubic_millimetre}, {"ρ_20", unit::ohm_millimetre}};
inline constexpr choice_row conductor_material_rows[] = {
    {"copper", "copper", {234.5, 226.0, 3.45e-3, 17.241e-6}, "IEC 60364-5-54 Annex A, Table A.54.1 (memory)"},
    {"aluminium", "aluminium", {228.0, 148.0, 2.5e-3, 28.264e-6}, "IEC 60364-5-54 Annex A, Table A.54.1 (memory)"},
    {"steel", "steel", {202.0, 78.0, 3.8e-3, 138e-6}, "IEC 60364-5-54 Annex A, Table A.54.1 (memory)"},
    {"lead", "lead", {230.0, 41.0, 1.45e-3, 214e-6}, "IEC 60364-5-54 Annex A, Table A.54.1 (memory)"}};
inline constexpr choice_table conductor_materials{conductor_material_columns, conductor_material_rows};

namespace detail {
inline constexpr arg initial_temperature =
    arg{"initial_c", "t_i", unit::celsius, between(-50, 500), "temperature of the conductor before the fault"}.usually(30, 90);
inline constexpr arg final_temperature =
    arg{"final_c", "t_f", unit::celsius, between(-50, 1100), "highest temperature that the insulation or the surroundings bear"}.usually(140, 250);
inline constexpr arg conductor_area =
    arg{"area_mm2", "S", unit::square_millimetre, positive_to(1e5), "cross-section of the conductor"}.usually(0.75, 25);
inline constexpr arg adiabatic_k_arg =
    arg{"k", "k", unit::adiabatic_k, positive_to(1e4), "k of material, insulation and arrangement (a core in a cable 115, a separate conductor 143)"}.usually(40, 176);
inline constexpr arg fault_current = arg{"current_a", "I", unit::ampere, positive_to(1e6), "fault current"}.usually(50, 6000);
inline constexpr arg let_through =
    arg{"let_through_a2s", "I²t", unit::ampere_squared_second, positive, "energy that the protective device lets through"}.usually(500, 60000);
}  // namespace detail

inline constexpr auto adiabatic_k = formula(
    out{"adiabatic_k", "k", unit::adiabatic_k, "k of a conductor: what it bears when a fault heats it from one temperature to another and no heat escapes."},
    in(choice{"material", conductor_materials, "metal of the conductor"}, detail::initial_temperature, detail::final_temperature), adiabatic_annex,
    [](auto metal, auto initial, auto final) { return metal[1] * sqrt(log1p((final - initial) / (metal[0] + from_zero(initial)))); },
    requires_that([](auto, auto initial, auto final) { return final > initial; }, "the final temperature is above the initial one"),
    remarks{"within 0.5 of every k printed in the standard's tables", "cable, insulation and arrangement decide the temperatures: the same metal has 115 in a cable and 143 alone"});

MAKEGOOD_ARGUMENTS(adiabatic_k_from_constants_arguments, (heat_capacity_j_per_k_mm3, beta_k, resistivity_20_ohm_mm, initial_c, final_c));
inline constexpr auto adiabatic_k_from_constants = formula(
    out{"adiabatic_k_from_constants", "k", unit::adiabatic_k, "k of a conductor from the constants of its metal."},
    in<adiabatic_k_from_constants_arguments>(
        arg{"heat_capacity_j_per_k_mm3", "Q_c", unit::joule_per_kelvin_cubic_millimetre, positive_to(1), "heat capacity of the metal to its volume at 20 °C"}.usually(1.4e-3, 4e-3),
        arg{"beta_k", "β", unit::kelvin, between(1, 1e4), "reciprocal of the temperature coefficient of resistivity at 0 °C"}.usually(200, 240),
        arg{"resistivity_20_ohm_mm", "ρ_20", unit::ohm_millimetre, positive_to(1), "resistivity at 20 °C"}.usually(17e-6, 220e-6),
        detail::initial_temperature, detail::final_temperature),
    adiabatic_annex,
    [](auto heat, auto beta, auto resistivity, auto initial, auto final) {
      return sqrt(heat * (beta + constant(20.0, unit::kelvin)) / resistivity * log1p((final - initial) / (beta + from_zero(initial))));
    },
    requires_that([](auto, auto, auto, auto initial, auto final) { return final > initial; }, "the final temperature is above the initial one"),
    requires_that([](auto, auto beta, auto, auto initial, auto) { return beta + initial > 0.0; }, "the initial temperature is above -β, where the resistivity would vanish"),
    remarks{"exact to rounding; from the constants as remembered two printed values are missed by more than 0.5", ""});

inline constexpr auto adiabatic_area = formula(
    out{"adiabatic_area", "S", unit::square_millimetre, "Least cross-section of a protective conductor for a fault current and its duration."},
    in(arg{"current_a", "I", unit::ampere, between(0, 1e6), "fault current"}.usually(50, 6000),
       arg{"time_s", "t", unit::second, positive_to(1e4), "time to disconnection"}.usually(0.1, 5).valid_in(between(0.1, 5)), detail::adiabatic_k_arg),
    adiabatic_equation, [](auto current, auto time, auto k) { return current * sqrt(time) / k; },
    remarks{"on the safe side up to 5 s; below 0.1 s the let-through energy of the device rules", "0 mm² without current"});

inline constexpr auto adiabatic_area_from_let_through = formula(
    out{"adiabatic_area_from_let_through", "S", unit::square_millimetre, "Least cross-section of a protective conductor for a let-through energy."},
    in(detail::let_through, detail::adiabatic_k_arg), adiabatic_equation, [](auto energy, auto k) { return sqrt(energy) / k; },
    remarks{"that of the maker's energy", ""});

inline constexpr auto adiabatic_time = formula(
    out{"adiabatic_time", "t", unit::second, "Longest time for which a conductor bears a fault current."},
    in(detail::fault_current, detail::conductor_area, detail::adiabatic_k_arg), source{"IEC 60364-4-43", "434.5.2, √t = k S/I", "memory"},
    [](auto current, auto area, auto k) { return square(k * area / current); },
    valid_while([](auto current, auto area, auto k) { const double t = square(k * area / current); return t >= 0.1 && t <= 5.0; },
                "the time lies outside 0.1 to 5 s: below, the let-through energy rules; above, heat escapes"),
    remarks{"exact to rounding; longer than 5 s the conductor bears more", ""});

/// The arguments of adiabatic_final_temperature: a word stands among the numbers.
template <class T>
struct adiabatic_final_temperature_arguments {
  need<T> let_through_a2s, area_mm2;
  need<std::string_view> material;
  need<T> initial_c;
  static constexpr std::string_view names() { return "(let_through_a2s, area_mm2, material, initial_c)"; }
};
inline constexpr auto adiabatic_final_temperature = formula(
    out{"adiabatic_final_temperature", "t_f", unit::celsius, "Temperature of a conductor after a fault, if no heat escapes."},
    in<adiabatic_final_temperature_arguments>(detail::let_through, detail::conductor_area, choice{"material", conductor_materials, "metal of the conductor"},
                                              detail::initial_temperature),
    adiabatic_annex,
    [](auto energy, auto area, auto metal, auto initial) {
      auto beta = metal[0];
      return at_celsius((beta + from_zero(initial)) * exp(energy / square(metal[1] * area)) - beta);
    },
    valid_while([](auto energy, auto area, auto metal, auto initial) { return (metal[0] + initial) * exp(energy / square(metal[1] * area)) - metal[0] <= 1100.0; },
                "the conductor would melt or lose all strength"),
    remarks{"on the high side: heat that escapes is left out", ""});

inline constexpr auto adiabatic_withstand = formula(
    out{"adiabatic_withstand", "k²S²", unit::ampere_squared_second, "Energy that a conductor bears."},
    in(detail::conductor_area, detail::adiabatic_k_arg), source{"IEC 60364-4-43", "434.5.2", "memory"},
    [](auto area, auto k) { return square(k * area); }, remarks{"exact to rounding", ""});

inline constexpr auto fault_energy = formula(
    out{"fault_energy", "I²t", unit::ampere_squared_second, "Energy let through by a steady fault current until the device operates."},
    in(arg{"current_a", "I", unit::ampere, between(0, 1e6), "fault current"}.usually(50, 3000),
       arg{"time_s", "t", unit::second, positive_to(100), "operating time"}.usually(0.1, 5).valid_in(between(0.1, 5))),
    source{"IEC 60364-5-54:2011", "543.1.2: for disconnection times up to 5 s; below 0.1 s the maker's figure", "memory"},
    [](auto current, auto time) { return square(current) * time; },
    remarks{"exact to rounding; the current is taken as steady", "0 without current"});

inline constexpr auto earth_fault_loop_impedance = formula(
    out{"earth_fault_loop_impedance", "Z_s", unit::ohm, "Impedance of the earth fault loop from its part outside and the circuit's line and protective conductor."},
    in(arg{"external_ohm", "Z_e", unit::ohm, between(0, 1e6), "impedance of the loop outside the installation"}.usually(0.1, 0.8),
       arg{"r1_plus_r2_ohm", "R_1+R_2", unit::ohm, between(0, 1e6), "resistance of line and protective conductor"}.usually(0.05, 2)),
    source{"NICEIC technical note on loop impedance", "Z_s = Z_e + (R_1 + R_2)"}, [](auto external, auto circuit) { return external + circuit; },
    remarks{"sum of magnitudes: on the high side, by less than 2 % up to 16 mm²", ""});

inline constexpr auto max_earth_fault_loop_impedance = formula(
    out{"max_earth_fault_loop_impedance", "Z_s", unit::ohm, "Highest loop impedance at which the device still disconnects in time."},
    in(arg{"voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage to earth"}.usually(100, 250),
       arg{"minimum_voltage_factor", "C_min", unit::one, positive_to(1.5), "share of the nominal voltage that is sure: 0.95, before 2015 1"}.usually(0.9, 1),
       arg{"operating_current_a", "I_a", unit::ampere, positive_to(1e6), "current that operates the device in the required time"}.usually(15, 1000)),
    source{"BS 7671:2018+A2:2022", "411.4.4, Z_s I_a ≤ U_0 C_min", "memory"},
    [](auto voltage, auto factor, auto current) { return voltage * factor / current; },
    remarks{"exact to rounding; printed tables are rounded to 0.01 Ω, some upwards. For conductors at their working temperature", ""});

inline constexpr auto prospective_fault_current = formula(
    out{"prospective_fault_current", "I_pf", unit::ampere, "Fault current that a voltage drives through the impedance of the loop."},
    in(arg{"voltage_v", "U_0", unit::volt, positive_to(1e5), "nominal voltage of the loop"}.usually(100, 250),
       arg{"impedance_ohm", "Z", unit::ohm, positive_to(1e6), "impedance of the loop"}.usually(0.05, 5)),
    source{"T. Linsley, Basic Electrical Installation Work (to BS 7671:2008)", "p. 251, example 1"},
    [](auto voltage, auto impedance) { return voltage / impedance; }, remarks{"exact to rounding", ""});

inline constexpr auto warm_loop_impedance = formula(
    out{"warm_loop_impedance", "Z_s", unit::ohm, "Earth fault loop impedance with the circuit's conductors warm, from a reading on cold conductors."},
    in(arg{"cold_loop_impedance_ohm", "Z_c", unit::ohm, between(0, 1e6), "loop impedance read with the conductors cold"}.usually(0.3, 5),
       arg{"external_ohm", "Z_e", unit::ohm, between(0, 1e6), "external part of the loop, which is not warmed"}.usually(0.05, 0.25),
       arg{"temperature_factor", "F", unit::ratio, between(1, 2), "resistance warm over resistance cold"}.usually(1, 1.3).otherwise(1.2)),
    source{"BS 7671:2018+A2:2022", "Appendix 3; factor 1.20 for 70 °C conductors read at 20 °C", "memory"},
    [](auto cold, auto external, auto factor) { return external + factor * (cold - external); },
    requires_that([](auto cold, auto external, auto) { return external <= cold; }, "the external part is not above the whole loop"),
    remarks{"the factor is the rounded one of the site tables (0.004 per kelvin); impedances are added as numbers", "the reading itself when the whole loop is external"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

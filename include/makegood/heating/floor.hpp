// SPDX-License-Identifier: MIT
// Heated floors: what the surface gives off, what goes down, limits.
// Subject: heating.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source floor_characteristic{"EN 1264-2 / ISO 11855-2", "base characteristic, formula (1)"};

inline constexpr auto floor_heat_flux = formula(
    out{"floor_heat_flux", "q", unit::watt_per_square_metre, "Heat given off upwards by a heated floor, convection and radiation together."},
    in(arg{"surface_c", "t_F", unit::celsius, between(-50, 200), "mean temperature of the floor surface"}.usually(25, 33).valid_in(between(0, 40)),
       arg{"room_c", "t_i", unit::celsius, between(-50, 100), "operative temperature of the room"}.usually(15, 24).valid_in(between(0, 35))),
    floor_characteristic,
    [](auto surface, auto room) {
      return attach(8.92 * pow(magnitude(surface - room, unit::kelvin), 1.1), unit::watt_per_square_metre);
    },
    requires_that([](auto surface, auto room) { return surface >= room; }, "the floor is not colder than the room: a cooled floor has another characteristic"),
    remarks{"the standard's own characteristic for heated floors", "0 W/m² at equal temperatures"});

inline constexpr auto floor_surface_temperature = formula(
    out{"floor_surface_temperature", "t_F", unit::celsius, "Mean surface temperature at which a heated floor gives off a flux."},
    in(arg{"flux_w_per_m2", "q", unit::watt_per_square_metre, between(0, 1e4), "heat given off upwards"}.usually(20, 150).valid_in(between(0, 250)),
       arg{"room_c", "t_i", unit::celsius, between(-50, 100), "operative temperature of the room"}.usually(15, 24).valid_in(between(0, 35))),
    floor_characteristic,
    [](auto flux, auto room) {
      auto number = magnitude(flux, unit::watt_per_square_metre);
      return room + attach(select(number > 0.0, pow(number / 8.92, 1.0 / 1.1), 0.0 * number), unit::kelvin);
    },
    remarks{"exact inverse of floor_heat_flux", "the room's temperature at 0 W/m², without a sensitivity to the flux"});

inline constexpr auto floor_limit_factor = formula(
    out{"floor_limit_factor", "φ", unit::one, "Factor of the limit curves for a highest surface temperature other than 9 K above the room."},
    in(arg{"highest_surface_c", "t_Fmax", unit::celsius, between(-50, 200), "highest temperature of the surface"}.usually(26, 35), arg{"room_c", "t_i", unit::celsius, between(-50, 100), "temperature of the room"}.usually(15, 24)),
    source{"ISO 11855-2:2021", "formula (A.20)"}, [](auto highest, auto room) { return pow((highest - room) / constant(9.0, unit::kelvin), 1.1); },
    requires_that([](auto highest, auto room) { return highest >= room; }, "the highest surface temperature is not below the room's"), remarks{"exact to rounding", "1 at 9 K"});

inline constexpr column surface_kind_columns[] = {{"h", unit::watt_per_square_metre_kelvin}};
inline constexpr choice_row surface_kind_rows[] = {{"wall", "heated or cooled wall", {8}}, {"ceiling_heating", "heated ceiling", {6}}, {"floor_cooling", "cooled floor", {7}}, {"floor_layers", "heated floor, as a resistance beside its layers", {10.8}}};
inline constexpr choice_table surface_kinds{surface_kind_columns, surface_kind_rows};
inline constexpr auto surface_heat_flux = formula(
    out{"surface_heat_flux", "q", unit::watt_per_square_metre, "Heat given off by a wall, ceiling or cooled floor: straight lines beside the characteristic of heated floors; negative into the surface."},
    in(choice{"surface", surface_kinds, "kind of surface"}, arg{"surface_c", "t_s", unit::celsius, between(-50, 200), "mean temperature of the surface"}.usually(15, 40), arg{"room_c", "t_i", unit::celsius, between(-50, 100), "temperature of the room"}.usually(15, 26)),
    source{"ISO 11855-2:2021", "formulae (2) to (4), and (A.30) for the layers"}, [](auto surface, auto t, auto room) { return surface[0] * (t - room); },
    remarks{"the standard's own coefficients", "0 W/m² at equal temperatures"});

namespace detail {
inline constexpr arg upward_resistance_arg = arg{"up_m2k_per_w", "R_o", unit::square_metre_kelvin_per_watt, positive_to(100), "resistance from the heating plane up to the room"}.usually(0.1, 0.3);
inline constexpr arg downward_resistance_arg = arg{"down_m2k_per_w", "R_u", unit::square_metre_kelvin_per_watt, positive_to(1000), "resistance from the heating plane down to the space below"}.usually(0.4, 3);
inline constexpr arg space_below_c = arg{"below_c", "t_u", unit::celsius, between(-60, 100), "temperature of the space below"}.usually(5, 20);
inline constexpr arg room_arg = arg{"room_c", "t_i", unit::celsius, between(-50, 100), "temperature of the room"}.usually(18, 24);
}  // namespace detail
inline constexpr auto upward_resistance = formula(
    out{"upward_resistance", "R_o", unit::square_metre_kelvin_per_watt, "Resistance from the plane of a mat up to the room: the surface, its covering and what lies over the mat."},
    in(arg{"covering_m2k_per_w", "R_B", unit::square_metre_kelvin_per_watt, between(0, 10), "resistance of the covering; 1 tog is 0.1 m²·K/W"}.usually(0.005, 0.15),
       arg{"over_mm", "d", unit::millimetre, between(0, 1000), "screed or adhesive over the mat"}.usually(3, 60), arg{"conductivity_w_per_m_k", "λ", unit::watt_per_metre_kelvin, positive_to(100), "its conductivity"}.usually(0.9, 2)),
    source{"ISO 11855-2:2021", "formula (A.30), 1/10.8 + R_B + d/λ"},
    [](auto covering, auto over, auto conductivity) { return constant(1.0 / 10.8, unit::square_metre_kelvin_per_watt, "1/10.8") + covering + milli(over) / conductivity; }, remarks{"exact to rounding", "the surface alone without layers"});

MAKEGOOD_ARGUMENTS(downward_flux_arguments, (flux_w_per_m2, up_m2k_per_w, down_m2k_per_w, room_c, below_c));
inline constexpr auto downward_flux = formula(
    out{"downward_flux", "q_u", unit::watt_per_square_metre, "Heat that a heated floor loses downwards while it gives off a flux upwards."},
    in<downward_flux_arguments>(arg{"flux_w_per_m2", "q", unit::watt_per_square_metre, between(0, 1e4), "heat given off upwards"}.usually(30, 150), detail::upward_resistance_arg, detail::downward_resistance_arg, detail::room_arg, detail::space_below_c),
    source{"ISO 11855-2:2021", "formula (A.29)"}, [](auto flux, auto up, auto down, auto room, auto below) { return (up * flux + (room - below)) / down; },
    remarks{"exact for plane layers in steady state; an electric mat obeys the same network", "negative where the space below is warmer than the heating plane"});
MAKEGOOD_ARGUMENTS(upward_flux_arguments, (power_w_per_m2, up_m2k_per_w, down_m2k_per_w, room_c, below_c));
inline constexpr auto upward_flux = formula(
    out{"upward_flux", "q", unit::watt_per_square_metre, "Part of a mat's power that comes up into the room, the rest goes down."},
    in<upward_flux_arguments>(arg{"power_w_per_m2", "p", unit::watt_per_square_metre, between(0, 1e4), "power of the mat"}.usually(80, 200), detail::upward_resistance_arg, detail::downward_resistance_arg, detail::room_arg, detail::space_below_c),
    source{"ISO 11855-2:2021", "formula (A.29), solved for q with p = q + q_u"},
    [](auto power, auto up, auto down, auto room, auto below) { return (down * power - (room - below)) / (up + down); },
    remarks{"exact for plane layers in steady state", "negative where the space below takes more than the mat gives"});

}  // namespace heating
}  // namespace v1
}  // namespace makegood

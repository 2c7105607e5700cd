// SPDX-License-Identifier: MIT
// Heated floors: what the surface gives off.
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

}  // namespace heating
}  // namespace v1
}  // namespace makegood

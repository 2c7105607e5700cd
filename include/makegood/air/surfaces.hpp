// SPDX-License-Identifier: MIT
// Cold surfaces in a room: their temperature, the humidity of the air at them, and the temperature below which mould or water is to be expected.
// Subject: air. Saturation in the form of ISO 13788 throughout, since the criteria are stated with it.
#pragma once
#include "moist_air.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr source iso_13788_surface{"ISO 13788:2012", "clause 5, surface humidity and temperature factor", "memory"};
namespace detail {
inline constexpr arg room_temperature_arg = arg{"room_c", "t_i", unit::celsius, between(-50, 60), "temperature of the room's air"}.usually(15, 26).read_by(reads::temperature);
inline constexpr arg outside_temperature_arg = arg{"outside_c", "t_e", unit::celsius, between(-60, 60), "temperature outside"}.usually(-10, 10).read_by(reads::temperature);
inline constexpr arg surface_temperature_arg = arg{"surface_c", "t_si", unit::celsius, between(-60, 60), "temperature of the surface on the room's side"}.usually(12, 14).read_by(reads::temperature);
inline constexpr arg room_humidity_arg = arg{"relative_humidity_percent", "φ_i", unit::percent, positive_to(100), "relative humidity of the room's air"}.usually(40, 80);
}  // namespace detail

inline constexpr auto surface_temperature = formula(
    out{"surface_temperature", "t_si", unit::celsius, "Temperature of the inner surface of an outside wall or roof from its temperature factor."},
    in(detail::outside_temperature_arg, detail::room_temperature_arg,
       arg{"temperature_factor", "f_Rsi", unit::ratio, between(0, 1), "temperature factor of the surface: 0 as outside, 1 as the room"}.usually(0.5, 0.95)),
    iso_13788_surface, [](auto outside, auto room, auto factor) { return outside + factor * (room - outside); },
    remarks{"exact to rounding; steady temperatures", "the room's temperature at a factor of 1"});

inline constexpr auto temperature_factor = formula(
    out{"temperature_factor", "f_Rsi", unit::ratio, "Temperature factor of a surface from three temperatures read together."},
    in(arg{"surface_c", "t_si", unit::celsius, between(-60, 60), "temperature of the surface on the room's side"}.usually(10, 18).read_by(reads::temperature),
       arg{"room_c", "t_i", unit::celsius, between(-50, 60), "temperature of the room's air"}.usually(19, 26).read_by(reads::temperature), detail::outside_temperature_arg.usually(-10, 9)),
    iso_13788_surface, [](auto surface, auto room, auto outside) { return (surface - outside) / (room - outside); },
    requires_that([](auto, auto room, auto outside) { return room > outside; }, "the room is warmer than outside"),
    remarks{"exact to rounding; two temperatures close to each other make it worthless", "1 where the surface is as warm as the room"});

inline constexpr auto surface_relative_humidity = formula(
    out{"surface_relative_humidity", "φ_si", unit::percent, "Relative humidity of the room's air where it touches a colder surface; above 100 % water condenses there."},
    in(detail::surface_temperature_arg, detail::room_temperature_arg, detail::room_humidity_arg), iso_13788_surface,
    [](auto surface, auto room, auto humidity) { return humidity * call(saturation_pressure_iso13788, room) / call(saturation_pressure_iso13788, surface); },
    remarks{"that of the saturation formula", "the room's own humidity where the surface is as warm as the air"});

inline constexpr auto critical_surface_temperature = formula(
    out{"critical_surface_temperature", "t_si,min", unit::celsius,
        "Temperature of a surface at which the room's air reaches a given relative humidity there: 80 % for mould after ISO 13788, 100 % for condensation."},
    in(detail::room_temperature_arg, detail::room_humidity_arg,
       arg{"surface_humidity_percent", "φ_si,cr", unit::percent, positive_to(100), "relative humidity at the surface that is not to be passed"}.usually(75, 100)),
    iso_13788_surface,
    [](auto room, auto humidity, auto critical) {
      auto saturated = let("p_cr", unit::pascal, humidity / critical * call(saturation_pressure_iso13788, room));
      auto l = let("l", unit::one, log(saturated / constant(610.5, unit::pascal)));
      auto above = select(l < 0.0, 265.5 * l / (21.875 - l), 237.3 * l / (17.269 - l));
      return at_celsius(attach(above, unit::kelvin));
    },
    valid_while([](auto, auto humidity, auto critical) { return humidity >= 1e-3 * critical; }, "air so dry lies outside the formula of saturation"),
    remarks{"exact inverse of saturation_pressure_iso13788", "0 °C where both branches meet"});

}  // namespace air
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Rooms and rails: heat loss, heating up, running cost, output and surface temperature of a rail, thresholds of burns.
// Subject: heating.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source en_12831{"EN 12831-1 (simplified)", "Φ = (Σ U A + 0.33 n V) Δθ", "memory"};
inline constexpr source en_442{"EN 442-2", "Φ = K_m ΔT^n, rated at 75/65/20 °C"};

namespace detail {
inline constexpr arg inside_arg = arg{"inside_c", "t_i", unit::celsius, between(-50, 100), "temperature of the room"}.usually(18, 24);
inline constexpr arg other_side = arg{"outside_c", "t_e", unit::celsius, between(-60, 60), "temperature on the other side: outside, or the neighbouring room"}.usually(-5, 12);
inline constexpr arg air_factor = arg{"air_factor", "f", unit::watt_hour_per_cubic_metre_kelvin, between(0.2, 0.5), "heat of the air: 0.33 by practice, 0.34 in the standard"}.usually(0.33, 0.34).otherwise(0.33);
inline constexpr arg volume_arg = arg{"volume_m3", "V", unit::cubic_metre, between(0, 1e5), "volume of the room"}.usually(5, 100);
inline constexpr arg changes_arg = arg{"air_changes_per_h", "n", unit::per_hour, between(0, 100), "air changes an hour"}.usually(0.3, 3);
inline constexpr arg loss_arg = arg{"loss_w_per_k", "H", unit::watt_per_kelvin, positive_to(1e6), "heat loss for each kelvin"}.usually(8, 15);
}  // namespace detail

inline constexpr auto air_heat_factor = formula(
    out{"air_heat_factor", "f", unit::watt_hour_per_cubic_metre_kelvin, "Heat that a cubic metre of air takes for each kelvin."},
    in(arg{"density_kg_per_m3", "ρ", unit::kilogram_per_cubic_metre, positive_to(10), "density of the air"}.usually(1.1, 1.3),
       arg{"heat_capacity_j_per_kg_k", "c_p", unit::joule_per_kilogram_kelvin, positive_to(1e4), "specific heat of the air"}.usually(1000, 1020)),
    en_12831, [](auto density, auto heat) { return hourly(density * heat); }, remarks{"exact to rounding; rounded to 0.33 by practice and 0.34 in the standard", ""});

inline constexpr auto ventilation_coefficient = formula(
    out{"ventilation_coefficient", "H_v", unit::watt_per_kelvin, "Heat that the change of air takes for each kelvin."}, in(detail::volume_arg, detail::changes_arg, detail::air_factor), en_12831,
    [](auto volume, auto changes, auto factor) { return factor * changes * volume; }, remarks{"exact to rounding; the number of air changes is the doubt", "0 without air change"});

MAKEGOOD_ARGUMENTS(element_heat_loss_arguments, (u_value, area_m2, inside_c, outside_c));
inline constexpr auto element_heat_loss = formula(
    out{"element_heat_loss", "Φ", unit::watt, "Heat through one wall, window, floor or ceiling; negative from a warmer neighbour."},
    in<element_heat_loss_arguments>(arg{"u_value", "U", unit::watt_per_square_metre_kelvin, between(0, 100), "U-value"}.usually(0.1, 6), arg{"area_m2", "A", unit::square_metre, between(0, 1e5), "area"}.usually(0.5, 50),
                                    detail::inside_arg, detail::other_side),
    source{"diydata.com, worked room-by-room heat loss of a semi-detached house (imperial units)", "table of elements"},
    [](auto u, auto area, auto inside, auto outside) { return u * area * (inside - outside); }, remarks{"exact to rounding; steady", "0 W to a neighbour of the same temperature"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(room_heat_loss_arguments, (fabric_w_per_k, volume_m3, air_changes_per_h, inside_c, outside_c), (air_factor = T(0.33)));
inline constexpr auto room_heat_loss = formula(
    out{"room_heat_loss", "Φ", unit::watt, "Steady heat loss of a room: walls, windows, floor and ceiling (sum of U times area) and the change of air."},
    in<room_heat_loss_arguments>(arg{"fabric_w_per_k", "H_T", unit::watt_per_kelvin, between(0, 1e6), "sum of U-value times area of all that is towards the outside"}.usually(2, 60), detail::volume_arg, detail::changes_arg,
                                 detail::inside_arg, detail::other_side, detail::air_factor),
    en_12831, [](auto fabric, auto volume, auto changes, auto inside, auto outside, auto factor) { return (fabric + call(ventilation_coefficient, volume, changes, factor)) * (inside - outside); },
    remarks{"steady, without heating up; U-values and air changes of an old house may be off by a third", "0 W at equal temperatures"});

inline constexpr auto steady_temperature = formula(
    out{"steady_temperature", "t", unit::celsius, "Temperature that a room or a body comes to with a power, when nothing changes any more."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e7), "power that stays in the room"}.usually(50, 2000), detail::loss_arg, detail::other_side),
    source{"balance of heat", "t_e + P/H", "derived"}, [](auto power, auto loss, auto outside) { return outside + power / loss; },
    remarks{"that of the loss", "the outside temperature without power"});

MAKEGOOD_ARGUMENTS(warm_up_time_arguments, (capacity_j_per_k, power_w, loss_w_per_k, start_c, target_c, surroundings_c));
inline constexpr auto warm_up_time = formula(
    out{"warm_up_time", "t", unit::second, "Time until a room or a body of one temperature comes from a start to a target, with its losses; cooling without power."},
    in<warm_up_time_arguments>(
        arg{"capacity_j_per_k", "C", unit::joule_per_kelvin, positive_to(1e12), "heat that it stores for each kelvin"}.usually(2e5, 5e6), arg{"power_w", "P", unit::watt, between(0, 1e7), "power"}.usually(700, 3000),
        detail::loss_arg, arg{"start_c", "t_0", unit::celsius, between(-60, 1000), "temperature at the start"}.usually(10, 16), arg{"target_c", "t_1", unit::celsius, between(-60, 1000), "temperature to reach"}.usually(18, 24),
        arg{"surroundings_c", "t_e", unit::celsius, between(-60, 1000), "temperature outside"}.usually(-3, 10)),
    source{"J. P. Holman, Heat Transfer (SI units)", "lumped capacity, Example 4-1"},
    [](auto capacity, auto power, auto loss, auto start, auto target, auto surroundings) {
      auto end = let("t_∞", unit::celsius, surroundings + power / loss);
      auto share = let("x", unit::one, (target - start) / (end - target));
      return capacity / loss * log1p(share);
    },
    requires_that(
        [](auto, auto power, auto loss, auto start, auto target, auto surroundings) {
          const auto end = surroundings + power / loss;
          return (target < end && start <= target) || (target > end && start >= target);
        },
        "the target lies between the start and the temperature that this power comes to (t_e + P/H), and is not that one"),
    remarks{"of one temperature throughout: air, walls and floor of a real room follow at different speeds; take the capacity of what warms in the time", "0 s where target and start are equal"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(running_cost_arguments, (power_w, time_h, price_per_kwh), (duty_ratio = T(1.0)));
inline constexpr auto running_cost = formula(
    out{"running_cost", "K", unit::one, "Cost of running a load, in the currency of the price."},
    in<running_cost_arguments>(arg{"power_w", "P", unit::watt, between(0, 1e7), "power while it is on"}.usually(20, 3000), arg{"time_h", "t", unit::hour, between(0, 1e6), "time that it is switched on"}.usually(0.5, 2000),
                               arg{"price_per_kwh", "p", unit::per_kilowatt_hour, between(0, 1000), "price of a kilowatt-hour"}.usually(0.1, 0.6),
                               arg{"duty_ratio", "d", unit::ratio, between(0, 1), "share of that time in which a thermostat lets it heat"}.usually(0.2, 1).otherwise(1)),
    source{"energy times price", "", "memory"}, [](auto power, auto time, auto price, auto duty) { return milli(power * time) * duty * price; },
    remarks{"exact to rounding; the share of time is the doubt", "0 without time"});

namespace detail {
inline constexpr arg excess_arg = arg{"excess_k", "ΔT", unit::kelvin, positive_to(1000), "mean temperature of the surface or water above the room"}.usually(5, 60);
inline constexpr arg rated_output = arg{"rated_output_w", "Φ_N", unit::watt, positive_to(1e6), "output at the rated excess"}.usually(100, 3000);
inline constexpr arg exponent_arg = arg{"exponent", "n", unit::one, between(1, 2), "exponent of the radiator: 1.2 to 1.4, 1.3 as a rule"}.usually(1.2, 1.4).otherwise(1.3);
inline constexpr arg rated_excess = arg{"rated_excess_k", "ΔT_N", unit::kelvin, between(1, 200), "excess at the rating: 50 K for 75/65/20 °C"}.usually(30, 60).otherwise(50);
}  // namespace detail

inline constexpr auto mean_excess = formula(
    out{"mean_excess", "ΔT", unit::kelvin, "Mean excess of a radiator with water over the room, arithmetic."},
    in(arg{"flow_c", "t_f", unit::celsius, between(-20, 200), "flow"}.usually(50, 80), arg{"return_c", "t_r", unit::celsius, between(-20, 200), "return"}.usually(35, 49), arg{"room_c", "t_i", unit::celsius, between(-50, 100), "room"}.usually(15, 24)),
    en_442, [](auto flow, auto back, auto room) { return 0.5 * ((flow - room) + (back - room)); }, remarks{"exact to rounding; the logarithmic mean is right where flow and return are far apart", ""});
inline constexpr auto log_mean_excess = formula(
    out{"log_mean_excess", "ΔT_ln", unit::kelvin, "Mean excess of a radiator with water over the room, logarithmic."},
    in(arg{"flow_c", "t_f", unit::celsius, between(-20, 200), "flow"}.usually(50, 80), arg{"return_c", "t_r", unit::celsius, between(-20, 200), "return"}.usually(35, 49), arg{"room_c", "t_i", unit::celsius, between(-50, 100), "room"}.usually(15, 24)),
    en_442,
    [](auto flow, auto back, auto room) {
      auto spread = let("Δ", unit::kelvin, flow - back);
      return spread / log1p(spread / (back - room));
    },
    requires_that([](auto flow, auto back, auto room) { return flow > back && back > room; }, "the flow is warmer than the return, and the return warmer than the room"),
    remarks{"exact to rounding", ""});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(radiator_output_arguments, (rated_output_w, excess_k), (exponent = T(1.3), rated_excess_k = T(50.0)));
inline constexpr auto radiator_output = formula(
    out{"radiator_output", "Φ", unit::watt, "Output of a radiator or towel rail at an excess over the room other than its rated one."},
    in<radiator_output_arguments>(detail::rated_output, detail::excess_arg, detail::exponent_arg, detail::rated_excess), en_442,
    [](auto rated, auto excess, auto exponent, auto rated_excess) { return rated * exp(exponent * log(excess / rated_excess)); },
    remarks{"2 to 4 % near the rating; towels on a rail take up to half of it away", ""});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(rail_surface_temperature_arguments, (power_w, rated_output_w, room_c), (exponent = T(1.3), rated_excess_k = T(50.0)));
inline constexpr auto rail_surface_temperature = formula(
    out{"rail_surface_temperature", "t_s", unit::celsius, "Mean surface temperature at which a rail gives off an electric power, from its output with water: the inverse of radiator_output."},
    in<rail_surface_temperature_arguments>(arg{"power_w", "P", unit::watt, positive_to(1e6), "electric power"}.usually(50, 1500), detail::rated_output,
                                           arg{"room_c", "t_i", unit::celsius, between(-50, 100), "temperature of the room"}.usually(15, 24), detail::exponent_arg, detail::rated_excess),
    en_442, [](auto power, auto rated, auto room, auto exponent, auto rated_excess) { return room + rated_excess * exp(log(power / rated) / exponent); },
    remarks{"the mean: bars near the element are hotter, and a covered rail as well", ""});

// Burn thresholds: 1 s the lower end of the band, then 1 min, 10 min, 8 h and longer.
inline constexpr column burn_columns[] = {{"t_1s", unit::celsius}, {"t_1min", unit::celsius}, {"t_10min", unit::celsius}, {"t_8h", unit::celsius}};
inline constexpr choice_row burn_rows[] = {
    {"bare_metal", "bare metal", {65, 51, 48, 43}}, {"coated_metal", "painted or enamelled metal (1 s as bare metal, on the safe side)", {65, 51, 48, 43}},
    {"ceramic", "ceramics, glass, stone", {80, 56, 48, 43}}, {"plastic", "plastics", {85, 60, 48, 43}}, {"wood", "wood", {110, 60, 48, 43}}};
inline constexpr choice_table burn_surfaces{burn_columns, burn_rows};
inline constexpr column contact_columns[] = {{"contact", unit::one}};
inline constexpr choice_row contact_rows[] = {{"second", "a touch, 1 s", {0}}, {"minute", "held, 1 min", {1}}, {"ten_minutes", "10 min", {2}}, {"hours", "8 h and longer", {3}}};
inline constexpr choice_table contacts{contact_columns, contact_rows};
inline constexpr auto burn_threshold = formula(
    out{"burn_threshold", "t_b", unit::celsius, "Temperature of a surface below which skin is not burnt by touching it for a time: a threshold, not a limit of comfort."},
    in(choice{"surface", burn_surfaces, "what the surface is made of"}, choice{"contact", contacts, "for how long it is touched"}),
    source{"SP 2.2.2.1327-03 (figures of EN 563 / ISO 13732-1)", "table of surface temperatures by contact period; 1 s and 8 h recalled"},
    [](auto surface, auto contact) {
      return select(contact[0] < 0.5, surface[0], select(contact[0] < 1.5, surface[1], select(contact[0] < 2.5, surface[2], surface[3])));
    },
    remarks{"rounded to whole kelvins; of 1 s the lower end of the band is given", "43 °C holds only while less than a tenth of the body touches: a heated floor has limits of its own"});

}  // namespace heating
}  // namespace v1
}  // namespace makegood

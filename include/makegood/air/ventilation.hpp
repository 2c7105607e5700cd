// SPDX-License-Identifier: MIT
// Ventilation rates: air changes and flows.
// Subject: air.
#pragma once
#include "../formula.hpp"

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

inline constexpr auto door_undercut_area = formula(
    out{"door_undercut_area", "A", unit::square_millimetre, "Free area of the gap under a door."},
    in(arg{"door_width_mm", "b", unit::millimetre, between(0, 1e4), "width of the door"}.usually(600, 930),
       arg{"gap_mm", "h", unit::millimetre, between(0, 1e3), "height of the gap above the finished floor"}.usually(3, 30)),
    source{"Approved Document F, volume 1, 2021 edition (England)", "1.25, 10 mm under a door of 760 mm is 7600 mm²"},
    [](auto width, auto gap) { return width * gap; }, remarks{"exact to rounding", "0 without a gap"});

inline constexpr auto make_up_air_velocity = formula(
    out{"make_up_air_velocity", "v", unit::metre_per_second, "Mean velocity of the air that follows an extract fan through the openings into the room."},
    in(arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e6), "extract flow"}.usually(3, 80),
       arg{"area_mm2", "A", unit::square_millimetre, positive_to(1e9), "free area of all openings together"}.usually(2000, 20000)),
    source{"White, Fluid Mechanics", "chapter 3, continuity"}, [](auto flow, auto area) { return milli(flow) / micro(area); },
    remarks{"exact to rounding for a tight room: leaks let air in as well", "0 without flow"});

// ---- what a mixed room keeps of what is released in it -------------------------------------------------------------------

inline constexpr unit_t parts_per_million = unit::detail::si("ppm", 0, 0, 0, 0, 0, 1e-6);
inline constexpr source mixed_room{"Douglas, Gasiorek and Swaffield, Fluid Mechanics", "chapter 25, contaminant in a ventilated room: V dc/dt = G + q (c_e - c)"};
inline constexpr source stack_source{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "equation (14), thermal gravity effect g (ρ_a - ρ) Δz"};
namespace detail {
inline constexpr arg ppm(std::string_view name, std::string_view symbol, std::string_view meaning) { return arg{name, symbol, parts_per_million, between(0, 1e6), meaning}; }
inline constexpr arg room_volume_arg = arg{"room_volume_m3", "V", unit::cubic_metre, positive_to(1e6), "volume of the room"}.usually(3, 100);
inline constexpr arg positive_changes_arg = arg{"air_changes_per_h", "n", unit::per_hour, positive_to(1e4), "air changes an hour"}.usually(0.3, 15);
inline constexpr arg hours_arg = arg{"time_h", "t", unit::hour, between(0, 1e5), "time"}.usually(0.1, 4);
inline constexpr arg source_flow_arg = arg{"source_l_per_s", "G", unit::litre_per_second, between(0, 1e5), "what is released, as a volume"};
inline constexpr arg outside_ppm_arg = ppm("outside_ppm", "c_e", "of the air that comes in").usually(0, 50).otherwise(0.0);
}  // namespace detail

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(decay_concentration_arguments, (initial_ppm, air_changes_per_h, time_h), (outside_ppm = T(0.0)));
inline constexpr auto decay_concentration = formula(
    out{"decay_concentration", "c", parts_per_million, "Concentration in a mixed room some time after the source has stopped."},
    in<decay_concentration_arguments>(detail::ppm("initial_ppm", "c_0", "at the beginning").usually(200, 5000), detail::positive_changes_arg, detail::hours_arg,
                                      detail::outside_ppm_arg),
    mixed_room, [](auto initial, auto changes, auto time, auto outside) { return outside + (initial - outside) * exp(-(changes * time)); },
    remarks{"exact for perfect mixing; corners of a real room lag behind", "the initial one at time 0"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(room_concentration_arguments, (source_l_per_s, room_volume_m3, air_changes_per_h, time_h), (initial_ppm = T(0.0), outside_ppm = T(0.0)));
inline constexpr auto room_concentration = formula(
    out{"room_concentration", "c", parts_per_million, "Concentration in a mixed room with a steady source, some time after it began."},
    in<room_concentration_arguments>(arg{detail::source_flow_arg}.usually(0.001, 0.01), detail::room_volume_arg, detail::positive_changes_arg, detail::hours_arg,
                                     detail::ppm("initial_ppm", "c_0", "at the beginning").usually(0, 1000).otherwise(0.0), detail::outside_ppm_arg),
    mixed_room,
    [](auto source_flow, auto volume, auto changes, auto time, auto initial, auto outside) {
      auto added = let("c_G", parts_per_million, in_micro(milli(source_flow) / (volume * hourly(changes))));
      auto left = let("k", unit::one, exp(-(changes * time)));
      return initial * left + (outside + added) * (1.0 - left);
    },
    remarks{"exact for perfect mixing and a source that is small beside the air flow", "the initial one at time 0"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(time_to_concentration_arguments, (limit_ppm, source_l_per_s, room_volume_m3, air_changes_per_h), (initial_ppm = T(0.0), outside_ppm = T(0.0)));
inline constexpr auto time_to_concentration = formula(
    out{"time_to_concentration", "t", unit::hour, "Time after which a mixed room reaches a concentration, rising with its source or falling without one."},
    in<time_to_concentration_arguments>(detail::ppm("limit_ppm", "c", "to be reached").usually(5, 10), arg{detail::source_flow_arg}.usually(0.01, 0.05),
                                        arg{detail::room_volume_arg}.usually(3, 40), arg{detail::positive_changes_arg}.usually(0.3, 10),
                                        detail::ppm("initial_ppm", "c_0", "at the beginning").usually(0, 4).otherwise(0.0),
                                        arg{detail::outside_ppm_arg}.usually(0, 50)),
    mixed_room,
    [](auto limit, auto source_flow, auto volume, auto changes, auto initial, auto outside) {
      auto end = let("c_s", parts_per_million, outside + in_micro(milli(source_flow) / (volume * hourly(changes))));
      return -log1p((initial - limit) / (end - initial)) / changes;
    },
    requires_that(
        [](auto limit, auto source_flow, auto volume, auto changes, auto initial, auto outside) {
          return (limit - initial) * (outside + in_micro(milli(source_flow) / (volume * hourly(changes))) - limit) >= 0.0;
        },
        "the limit lies between the concentration at the beginning and the one that the room comes to"),
    requires_that(
        [](auto limit, auto source_flow, auto volume, auto changes, auto, auto outside) {
          auto rest = outside + in_micro(milli(source_flow) / (volume * hourly(changes))) - limit;
          return select(rest < 0.0, 0.0 - rest, rest) > 1e-9 * limit;
        },
        "the limit is not the concentration that the room comes to: that takes for ever"),
    remarks{"exact for perfect mixing", "0 where the room begins at the limit"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(air_changes_from_decay_arguments, (initial_ppm, final_ppm, time_h), (outside_ppm = T(0.0)));
inline constexpr auto air_changes_from_decay = formula(
    out{"air_changes_from_decay", "n", unit::per_hour, "Air changes an hour of a mixed room from two readings of a concentration that decays."},
    in<air_changes_from_decay_arguments>(detail::ppm("initial_ppm", "c_0", "first reading").usually(1000, 5000), detail::ppm("final_ppm", "c", "second reading").usually(400, 900),
                                         arg{"time_h", "t", unit::hour, positive_to(1e5), "time between the readings"}.usually(0.2, 4), detail::outside_ppm_arg),
    mixed_room, [](auto initial, auto last, auto time, auto outside) { return log((initial - outside) / (last - outside)) / time; },
    requires_that([](auto initial, auto last, auto, auto) { return last <= initial; }, "the second reading is not above the first"),
    requires_that([](auto, auto last, auto, auto outside) { return last > outside; }, "the readings are above the concentration outside"),
    remarks{"exact for perfect mixing without a source: nobody in the room", "0 where nothing has decayed"});

// ---- pressure of warm air, and air through a building's leaks -------------------------------------------------------------

inline constexpr auto stack_pressure = formula(
    out{"stack_pressure", "Δp_se", unit::pascal, "Pressure that drives air up a shaft because it is lighter than the air outside; negative: it holds it back."},
    in(arg{"outside_density_kg_per_m3", "ρ_a", unit::kilogram_per_cubic_metre, positive_to(1e5), "density of the air outside the shaft"}.usually(1.25, 1.4),
       arg{"density_kg_per_m3", "ρ", unit::kilogram_per_cubic_metre, between(0, 1e5), "density of the air in it"}.usually(1.0, 1.2),
       arg{"rise_m", "Δz", unit::metre, between(-1e4, 1e4), "how much higher the air leaves than it enters; negative: lower"}.usually(1, 10)),
    stack_source,
    [](auto outside, auto inside, auto rise) { return constant(9.80665, unit::metre_per_square_second, "g") * (outside - inside) * rise; },
    remarks{"exact for a shaft of one temperature", "0 without a difference"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(stack_pressure_from_temperatures_arguments, (inside_c, outside_c, rise_m), (pressure_pa = T(101325.0)));
inline constexpr auto stack_pressure_from_temperatures = formula(
    out{"stack_pressure_from_temperatures", "Δp_se", unit::pascal, "The same from the temperatures inside and outside, as for dry air."},
    in<stack_pressure_from_temperatures_arguments>(
        arg{"inside_c", "t_i", unit::celsius, air_temperature, "temperature in the shaft"}.usually(18, 26),
        arg{"outside_c", "t_e", unit::celsius, air_temperature, "temperature outside"}.usually(-10, 15),
        arg{"rise_m", "Δz", unit::metre, between(-1e4, 1e4), "how much higher the air leaves than it enters; negative: lower"}.usually(1, 10),
        arg{"pressure_pa", "p", unit::pascal, between(5e4, 1.2e5), "pressure of the air"}.usually(90000, 105000).otherwise(101325.0)),
    stack_source,
    [](auto inside, auto outside, auto rise, auto pressure) {
      return constant(9.80665, unit::metre_per_square_second, "g") * pressure * (inside - outside) * rise /
             (constant(287.042, unit::joule_per_kilogram_kelvin, "R_a") * kelvin(inside) * kelvin(outside));
    },
    remarks{"1 % for the moisture left out", "0 without a difference"});

MAKEGOOD_ARGUMENTS(infiltration_flow_arguments, (leakage_area_mm2, temperature_difference_k, wind_m_per_s, stack_coefficient, wind_coefficient));
inline constexpr auto infiltration_flow = formula(
    out{"infiltration_flow", "q", unit::litre_per_second, "Air that wind and warmth drive through the leaks of a dwelling while no fan runs."},
    in<infiltration_flow_arguments>(
        arg{"leakage_area_mm2", "A_L", unit::square_millimetre, between(0, 1e7), "effective leakage area at 4 Pa"}.usually(20000, 100000),
        arg{"temperature_difference_k", "ΔT", unit::kelvin, between(0, 100), "difference of indoor and outdoor temperature, without its sign"}.usually(5, 30),
        arg{"wind_m_per_s", "U", unit::metre_per_second, between(0, 60), "wind speed at the weather station"}.usually(1, 8),
        arg{"stack_coefficient", "C_s", unit::one, between(0, 0.01), "in (l/s)²/(cm⁴·K): 0.000145 one storey, 0.000290 two, 0.000435 three"}.usually(0.000145, 0.000435),
        arg{"wind_coefficient", "C_w", unit::one, between(0, 0.01), "in (l/s)²/(cm⁴·(m/s)²), by storeys and shelter"}.usually(0.00003, 0.0004)),
    source{"ASHRAE Handbook Fundamentals 2021, ch. 16", "equation (48), basic model"},
    [](auto area, auto difference, auto wind, auto stack, auto wind_share) {
      auto drive = let("w", unit::one, stack * magnitude(difference, unit::kelvin) + wind_share * square(magnitude(wind, unit::metre_per_second)));
      return attach(magnitude(area, unit::square_millimetre) / 100.0 * sqrt(drive), unit::litre_per_second);
    },
    remarks{"some 20 to 40 % for a single house: empirical coefficients", "0 in still air of one temperature"});

}  // namespace air
}  // namespace v1
}  // namespace makegood

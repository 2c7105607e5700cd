// SPDX-License-Identifier: MIT
// Power of a fan, and how flow, pressure and power change with speed, size and density.
// Subject: air. The fan laws join points of equal efficiency of fans of one shape.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr unit_t watt_per_litre_per_second = unit::detail::si("W/(l/s)", -1, 1, -2, 0, 0, 1e3);
inline constexpr source fan_laws_source{"Abulencia and Theodore, Fluid Flow for the Practicing Chemical Engineer, 2009", "chapter 17, fan laws: q ~ n D³, p ~ ρ n² D², P ~ ρ n³ D⁵"};

namespace detail {
inline constexpr arg fan_flow_arg = arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e6), "air flow"}.usually(5, 100);
inline constexpr arg fan_pressure_arg = arg{"pressure_pa", "Δp", unit::pascal, between(0, 1e6), "pressure of the fan"}.usually(5, 300);
inline constexpr arg fan_power_arg = arg{"power_w", "P", unit::watt, between(0, 1e6), "power"}.usually(3, 200);
inline constexpr arg speed_ratio_arg = arg{"speed_ratio", "n₂/n₁", unit::ratio, between(0, 100), "new speed over old speed"}.usually(0.4, 1.5);
inline constexpr arg size_ratio_arg =
    arg{"diameter_ratio", "D₂/D₁", unit::ratio, positive_to(100), "new size over old size, of fans of one shape"}.usually(0.5, 2).otherwise(1.0);
inline constexpr arg density_ratio_arg = arg{"density_ratio", "ρ₂/ρ₁", unit::ratio, positive_to(100), "new density over old density"}.usually(0.8, 1.1).otherwise(1.0);
}  // namespace detail

inline constexpr auto air_power = formula(
    out{"air_power", "P_air", unit::watt, "Power that a fan gives to the air."}, in(detail::fan_flow_arg, detail::fan_pressure_arg),
    source{"Cengel and Cimbala, Fluid Mechanics", "chapter 14, q Δp"}, [](auto flow, auto pressure) { return milli(flow) * pressure; },
    remarks{"exact to rounding; small domestic fans turn a few per cent of their electrical power into it", "0 without flow"});

inline constexpr auto specific_fan_power = formula(
    out{"specific_fan_power", "SFP", watt_per_litre_per_second, "Electrical power of a fan to each litre a second that it moves."},
    in(detail::fan_power_arg, arg{"flow_l_per_s", "q", unit::litre_per_second, positive_to(1e6), "air flow as measured"}.usually(5, 100)),
    source{"Approved Document F, volume 1, 2021 edition (England)", "specific fan power", "memory"}, [](auto power, auto flow) { return power / flow; },
    remarks{"exact to rounding", "0 for a fan without power"});

inline constexpr auto fan_law_flow = formula(
    out{"fan_law_flow", "q₂", unit::litre_per_second, "Flow of a fan at another speed or size, at the same efficiency."},
    in(detail::fan_flow_arg, detail::speed_ratio_arg, detail::size_ratio_arg), fan_laws_source,
    [](auto flow, auto speed, auto size) { return flow * speed * cube(size); },
    remarks{"some per cent for a change of speed; a run that goes with the square of the flow keeps the efficiency", "0 at standstill"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(fan_law_pressure_arguments, (pressure_pa, speed_ratio), (diameter_ratio = T(1.0), density_ratio = T(1.0)));
inline constexpr auto fan_law_pressure = formula(
    out{"fan_law_pressure", "Δp₂", unit::pascal, "Pressure of a fan at another speed, size or density, at the same efficiency."},
    in<fan_law_pressure_arguments>(detail::fan_pressure_arg, detail::speed_ratio_arg, detail::size_ratio_arg, detail::density_ratio_arg), fan_laws_source,
    [](auto pressure, auto speed, auto size, auto density) { return pressure * density * square(speed) * square(size); },
    remarks{"some per cent for a change of speed", "0 at standstill"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(fan_law_power_arguments, (power_w, speed_ratio), (diameter_ratio = T(1.0), density_ratio = T(1.0)));
inline constexpr auto fan_law_power = formula(
    out{"fan_law_power", "P₂", unit::watt, "Power at the shaft of a fan at another speed, size or density, at the same efficiency."},
    in<fan_law_power_arguments>(detail::fan_power_arg, detail::speed_ratio_arg, detail::size_ratio_arg, detail::density_ratio_arg), fan_laws_source,
    [](auto power, auto speed, auto size, auto density) { return power * density * cube(speed) * (square(size) * cube(size)); },
    remarks{"the electrical power falls less than this: the motor loses the more the slower it is driven", "0 at standstill"});

}  // namespace air
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Heat from warm surfaces to the room: radiation and natural convection. Rails, mirrors and walls.
// Subject: heating.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source stefan_boltzmann_law{"F. P. Incropera et al., Fundamentals of Heat and Mass Transfer", "Example 1.2, ε σ T⁴"};
inline constexpr source churchill_chu{"F. P. Incropera et al., Fundamentals of Heat and Mass Transfer", "Churchill-Chu for a vertical plate, Example 9.2"};

namespace detail {
inline constexpr literal sigma = constant(5.670374419e-8, unit::watt_per_square_metre_fourth_kelvin, "σ");
inline constexpr literal twelve_decades = constant(27.631021115928547, unit::one, "c_k");  // 12 ln 10: exp(-c_k/T) is 10^(-12/T)
inline constexpr arg emissivity_arg = arg{"emissivity", "ε", unit::one, positive_to(1), "emissivity: painted or glass 0.9, bright chrome 0.05 to 0.1"}.usually(0.05, 0.95);
inline constexpr arg surface_area = arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "area of the surface"}.usually(0.05, 10);
inline constexpr arg rayleigh_arg = arg{"rayleigh", "Ra", unit::one, positive_to(1e14), "Rayleigh number of the height or the diameter"}.usually(1e4, 1e10).valid_in(between(0, 1e12));
inline constexpr arg prandtl_arg = arg{"prandtl", "Pr", unit::one, positive_to(1e5), "Prandtl number: air 0.71"}.usually(0.68, 0.75);
}  // namespace detail

inline constexpr auto radiation_coefficient = formula(
    out{"radiation_coefficient", "h_r", unit::watt_per_square_metre_kelvin, "Coefficient of radiation between a surface and surroundings of nearly its temperature: 4 ε σ T³."},
    in(detail::emissivity_arg, arg{"mean_c", "t_m", unit::celsius, between(-200, 1000), "mean of the two temperatures"}.usually(10, 60)), stefan_boltzmann_law,
    [](auto emissivity, auto mean) { return 4.0 * (emissivity * (detail::sigma * cube(kelvin(mean)))); },
    remarks{"1 % off at a difference of 60 K", ""});

MAKEGOOD_ARGUMENTS(radiation_heat_flow_arguments, (emissivity, area_m2, surface_c, surroundings_c));
inline constexpr auto radiation_heat_flow = formula(
    out{"radiation_heat_flow", "Φ_r", unit::watt, "Net radiation from a surface to surroundings that enclose it."},
    in<radiation_heat_flow_arguments>(detail::emissivity_arg, detail::surface_area,
                                      arg{"surface_c", "t_s", unit::celsius, above_absolute_zero, "temperature of the surface"}.usually(25, 80),
                                      arg{"surroundings_c", "t_u", unit::celsius, above_absolute_zero, "temperature of the surroundings"}.usually(5, 24)),
    stefan_boltzmann_law,
    [](auto emissivity, auto area, auto surface, auto surroundings) {
      auto hot = let("T_s", unit::kelvin, kelvin(surface));
      auto cold = let("T_u", unit::kelvin, kelvin(surroundings));
      return emissivity * (detail::sigma * area) * ((surface - surroundings) * (hot + cold) * (square(hot) + square(cold)));
    },
    remarks{"for a surface that sees nothing but its surroundings", "0 W at equal temperatures; negative where the surroundings are warmer"});

MAKEGOOD_ARGUMENTS(plate_radiation_arguments, (first_emissivity, second_emissivity, area_m2, first_c, second_c));
inline constexpr auto plate_radiation = formula(
    out{"plate_radiation", "Φ_r", unit::watt, "Net radiation between two large parallel surfaces, such as a mirror's back and the wall."},
    in<plate_radiation_arguments>(arg{"first_emissivity", "ε_1", unit::one, positive_to(1), "emissivity of the first surface"}.usually(0.05, 0.95),
                                  arg{"second_emissivity", "ε_2", unit::one, positive_to(1), "emissivity of the second surface"}.usually(0.05, 0.95), detail::surface_area,
                                  arg{"first_c", "t_1", unit::celsius, above_absolute_zero, "temperature of the first surface"}.usually(25, 80),
                                  arg{"second_c", "t_2", unit::celsius, above_absolute_zero, "temperature of the second surface"}.usually(5, 24)),
    source{"J. P. Holman, Heat Transfer (SI units)", "Example 7-8, 1/(1/ε_1 + 1/ε_2 - 1)"},
    [](auto first, auto second, auto area, auto t_1, auto t_2) {
      auto hot = let("T_1", unit::kelvin, kelvin(t_1));
      auto cold = let("T_2", unit::kelvin, kelvin(t_2));
      return detail::sigma * area * ((t_1 - t_2) * (hot + cold) * (square(hot) + square(cold))) / (1.0 / first + 1.0 / second - 1.0);
    },
    remarks{"for a gap that is small beside the surfaces", "0 W at equal temperatures"});

MAKEGOOD_ARGUMENTS(rayleigh_number_arguments, (difference_k, length_mm, expansion_per_k, viscosity_m2_per_s, diffusivity_m2_per_s));
inline constexpr auto rayleigh_number = formula(
    out{"rayleigh_number", "Ra", unit::one, "Rayleigh number of a warm surface: buoyancy against viscosity and conduction."},
    in<rayleigh_number_arguments>(
        arg{"difference_k", "ΔT", unit::kelvin, positive_to(5000), "surface less air"}.usually(2, 60), arg{"length_mm", "L", unit::millimetre, positive_to(1e5), "height of a plate, diameter of a tube"}.usually(20, 2000),
        arg{"expansion_per_k", "β", unit::per_kelvin, positive_to(1), "thermal expansion: 1/T for air"}.usually(0.003, 0.0036),
        arg{"viscosity_m2_per_s", "ν", unit::square_metre_per_second, positive_to(1), "kinematic viscosity"}.usually(1.4e-5, 2e-5),
        arg{"diffusivity_m2_per_s", "a", unit::square_metre_per_second, positive_to(1), "thermal diffusivity"}.usually(2e-5, 2.8e-5)),
    churchill_chu,
    [](auto difference, auto length, auto expansion, auto viscosity, auto diffusivity) {
      return constant(9.80665, unit::metre_per_square_second, "g") * expansion * difference * cube(milli(length)) / (viscosity * diffusivity);
    },
    remarks{"exact to rounding; properties at the mean of surface and air", ""});

inline constexpr auto vertical_plate_nusselt = formula(
    out{"vertical_plate_nusselt", "Nu", unit::one, "Nusselt number of a vertical plate in still air, laminar and turbulent (Churchill-Chu)."}, in(detail::rayleigh_arg, detail::prandtl_arg), churchill_chu,
    [](auto rayleigh, auto prandtl) {
      auto damping = let("ψ", unit::one, power<8, 27>(1.0 + power<9, 16>(0.492 / prandtl)));
      return square(0.825 + 0.387 * power<1, 6>(rayleigh) / damping);
    },
    remarks{"some 10 % of measurements over the whole range", "0.68 where nothing moves"});
inline constexpr auto vertical_plate_nusselt_laminar = formula(
    out{"vertical_plate_nusselt_laminar", "Nu", unit::one, "Nusselt number of a vertical plate in still air, laminar flow, somewhat better up to Ra 10⁹."},
    in(arg{"rayleigh", "Ra", unit::one, positive_to(1e14), "Rayleigh number of the height"}.usually(1e4, 1e9).valid_in(between(0, 1e9)), detail::prandtl_arg), churchill_chu,
    [](auto rayleigh, auto prandtl) { return 0.68 + 0.670 * power<1, 4>(rayleigh) / power<4, 9>(1.0 + power<9, 16>(0.492 / prandtl)); },
    remarks{"some 5 % of measurements in laminar flow", "0.68 where nothing moves"});
inline constexpr auto horizontal_cylinder_nusselt = formula(
    out{"horizontal_cylinder_nusselt", "Nu", unit::one, "Nusselt number of a horizontal tube in still air, such as a bar of a towel rail (Churchill-Chu)."}, in(detail::rayleigh_arg, detail::prandtl_arg),
    source{"Y. A. Cengel, Heat and Mass Transfer: A Practical Approach", "Churchill-Chu for a horizontal cylinder, Example 9.1"},
    [](auto rayleigh, auto prandtl) {
      auto damping = let("ψ", unit::one, power<8, 27>(1.0 + power<9, 16>(0.559 / prandtl)));
      return square(0.6 + 0.387 * power<1, 6>(rayleigh) / damping);
    },
    remarks{"some 10 % of measurements", "0.36 where nothing moves"});
inline constexpr auto plate_below_nusselt = formula(
    out{"plate_below_nusselt", "Nu", unit::one, "Nusselt number of a warm horizontal plate that faces down (length: area over perimeter)."},
    in(arg{"rayleigh", "Ra", unit::one, positive_to(1e14), "Rayleigh number of area over perimeter"}.usually(1e5, 1e10).valid_in(between(1e5, 1e11))),
    source{"Y. A. Cengel, Heat and Mass Transfer: A Practical Approach", "Example 9.2(c), 0.27 Ra^(1/4)"}, [](auto rayleigh) { return 0.27 * power<1, 4>(rayleigh); },
    remarks{"some 10 % of measurements", ""});
inline constexpr auto convection_coefficient = formula(
    out{"convection_coefficient", "h_c", unit::watt_per_square_metre_kelvin, "Coefficient of convection from a Nusselt number."},
    in(arg{"nusselt", "Nu", unit::one, positive_to(1e6), "Nusselt number"}.usually(1, 300), arg{"conductivity_w_per_m_k", "λ", unit::watt_per_metre_kelvin, positive_to(1e4), "conductivity of the air"}.usually(0.024, 0.032),
       arg{"length_mm", "L", unit::millimetre, positive_to(1e5), "the length of the Nusselt number"}.usually(20, 2000)),
    churchill_chu, [](auto nusselt, auto conductivity, auto length) { return nusselt * conductivity / milli(length); }, remarks{"exact to rounding", ""});

inline constexpr auto vertical_plate_coefficient = formula(
    out{"vertical_plate_coefficient", "h_c", unit::watt_per_square_metre_kelvin, "Coefficient of natural convection of a vertical plate in room air, such as a mirror or a wall."},
    in(arg{"surface_c", "t_s", unit::celsius, between(-50, 400), "temperature of the surface"}.usually(25, 80), arg{"air_c", "t_a", unit::celsius, between(-50, 200), "temperature of the air"}.usually(5, 24),
       arg{"height_mm", "L", unit::millimetre, positive_to(20000), "height"}.usually(300, 2000)),
    source{"Churchill-Chu with air of the U.S. Standard Atmosphere 1976", "viscosity, conductivity and density at the mean temperature"},
    [](auto surface, auto air, auto height) {
      auto away = let("Δ", unit::one, magnitude(surface - air, unit::kelvin));
      auto mean = let("T", unit::one, magnitude(kelvin(air), unit::kelvin) + 0.5 * away);
      auto length = let("l", unit::one, magnitude(milli(height), unit::metre));
      auto viscosity = let("ν", unit::one, 1.458e-6 * mean * sqrt(mean) / (mean + 110.4) / (101325.0 / (287.05 * mean)));
      auto conductivity = let("k", unit::one, 2.64638e-3 * mean * sqrt(mean) / (mean + 245.4 * exp(-(detail::twelve_decades / mean))));
      auto diffusivity = let("a", unit::one, conductivity * (287.05 * mean) / (101325.0 * 1007.0));
      auto rayleigh = let("Ra", unit::one, 9.80665 * away * cube(length) / (mean * (viscosity * diffusivity)));
      return attach(call(vertical_plate_nusselt, rayleigh, viscosity / diffusivity) * conductivity / length, unit::watt_per_square_metre_kelvin);
    },
    requires_that([](auto surface, auto air, auto) { return surface > air; }, "the surface is warmer than the air: for a colder one exchange the two temperatures"),
    remarks{"some 10 % in still air; a fan or a draught raises it", ""});

}  // namespace heating
}  // namespace v1
}  // namespace makegood

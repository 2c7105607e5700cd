// SPDX-License-Identifier: MIT
// Ducts: velocity, friction factor in every regime, pressure loss of straight, flexible and fitted ducts.
// Subject: air. Friction factors are Darcy's (four times Fanning's).
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

namespace detail {
inline constexpr arg reynolds_arg =
    arg{"reynolds", "Re", unit::one, positive_to(beyond_measure), "Reynolds number"}.usually(5000, 1e6);
inline constexpr arg relative_roughness_arg =
    arg{"relative_roughness", "ε_r", unit::one, between(0, 1), "roughness over diameter"}.usually(0, 0.02).valid_in(between(0, 0.05));
inline constexpr arg flow_arg =
    arg{"flow_l_per_s", "q", unit::litre_per_second, between(0, 1e6), "air flow"}.usually(1, 100);
inline constexpr arg diameter_arg =
    arg{"diameter_mm", "D", unit::millimetre, between(1, 1e4), "inner diameter"}.usually(80, 315);
inline constexpr arg width_arg =
    arg{"width_mm", "a", unit::millimetre, between(1, 1e4), "inner width"}.usually(100, 400);
inline constexpr arg height_arg =
    arg{"height_mm", "b", unit::millimetre, between(1, 1e4), "inner height"}.usually(50, 300);
inline constexpr arg duct_length_arg =
    arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the duct"}.usually(0.5, 20);
inline constexpr arg roughness_arg =
    arg{"roughness_mm", "ε", unit::millimetre, between(0, 100), "roughness of the wall"}.usually(0, 1);
inline constexpr arg velocity_arg =
    arg{"velocity_m_per_s", "v", unit::metre_per_second, between(0, 1e6), "mean velocity"}.usually(0.5, 10);
inline constexpr arg density_arg =
    arg{"density_kg_per_m3", "ρ", unit::kilogram_per_cubic_metre, positive_to(1e5), "density of the air"}.usually(1.1, 1.3);
inline constexpr arg viscosity_arg =
    arg{"viscosity_pa_s", "µ", unit::pascal_second, positive_to(1e3), "dynamic viscosity of the air"}.usually(1.7e-5, 1.9e-5);
inline constexpr double ln_10 = 2.302585092994045684;
}  // namespace detail

MAKEGOOD_ARGUMENTS(reynolds_number_arguments, (velocity_m_per_s, diameter_mm, density_kg_per_m3, viscosity_pa_s));
inline constexpr auto reynolds_number = formula(
    out{"reynolds_number", "Re", unit::one, "Reynolds number of the flow in a duct."},
    in<reynolds_number_arguments>(detail::velocity_arg, detail::diameter_arg, detail::density_arg, detail::viscosity_arg),
    source{"White, Fluid Mechanics", "chapter 6, Re = ρ v D/µ"},
    [](auto velocity, auto diameter, auto density, auto viscosity) { return density * velocity * milli(diameter) / viscosity; },
    remarks{"exact to rounding", "0 in still air"});

inline constexpr auto friction_factor_haaland = formula(
    out{"friction_factor_haaland", "f", unit::one, "Darcy friction factor of turbulent flow by Haaland's explicit formula."},
    in(arg{"reynolds", "Re", unit::one, between(100, beyond_measure), "Reynolds number"}.usually(5000, 1e6).valid_in(between(4000, 1e8)),
       detail::relative_roughness_arg),
    source{"White, Fluid Mechanics", "chapter 6, Haaland 1983"},
    [](auto reynolds, auto roughness) {
      return 1.0 / square(1.8 * log10(damped_pow(roughness / 3.7, 1.11) + 6.9 / reynolds));
    },
    remarks{"within 2 % of Colebrook-White", ""});

inline constexpr auto friction_factor_swamee_jain = formula(
    out{"friction_factor_swamee_jain", "f", unit::one, "Darcy friction factor of turbulent flow by the explicit formula of Swamee and Jain."},
    in(arg{"reynolds", "Re", unit::one, between(100, beyond_measure), "Reynolds number"}.usually(5000, 1e6).valid_in(between(5e3, 1e8)),
       arg{"relative_roughness", "ε_r", unit::one, between(0, 1), "roughness over diameter"}.usually(1e-5, 0.02).valid_in(between(1e-6, 5e-2))),
    source{"Swamee and Jain 1976", "0.25/lg(ε/(3.7 D) + 5.74/Re^0.9)²"},
    [](auto reynolds, auto roughness) { return 0.25 / square(log10(roughness / 3.7 + 5.74 / damped_pow(reynolds, 0.9))); },
    remarks{"within about 3 % of Colebrook-White in its range", ""});

inline constexpr auto friction_factor_churchill = formula(
    out{"friction_factor_churchill", "f", unit::one, "Darcy friction factor in every regime by Churchill's formula."},
    in(arg{"reynolds", "Re", unit::one, between(1e-3, beyond_measure), "Reynolds number"}.usually(500, 1e6), detail::relative_roughness_arg),
    source{"Churchill 1977", "all regimes, as a Darcy factor"},
    [](auto reynolds, auto roughness) {
      auto slow = 1.0 / reynolds;  // one division for three
      auto a = let("A", unit::one, power<16>(-(2.457 * log(damped_pow(7.0 * slow, 0.9) + 0.27 * roughness))));
      auto b = let("B", unit::one, power<16>(37530.0 * slow));
      return 8.0 * damped_pow(power<12>(8.0 * slow) + power<-3, 2>(a + b), 1.0 / 12.0);
    },
    remarks{"64/Re in laminar flow; within about 3 % of Colebrook-White in turbulent flow; a smooth bridge between", ""});

inline constexpr auto friction_factor_colebrook = formula(
    out{"friction_factor_colebrook", "f", unit::one, "Darcy friction factor of turbulent flow: the root of the Colebrook-White equation."},
    in(arg{"reynolds", "Re", unit::one, between(100, beyond_measure), "Reynolds number"}.usually(5000, 1e6).valid_in(between(4000, 1e8)),
       detail::relative_roughness_arg),
    source{"White, Fluid Mechanics", "chapter 6, Colebrook 1939"},
    [](auto reynolds, auto roughness) {
      constexpr double k = 2.0 / detail::ln_10;
      // One step of Newton's from x = 4, then one of fourth order in ω = inside/(c k), for which ω + ln ω is known (the iteration
      // of Fritsch, Shafer and Crowley for the ω function): within 1e-6, so that the one step below reaches the last place.
      auto share = 2.51 / reynolds;
      auto wall = roughness / 3.7;
      auto c = guess(share);
      auto rough = guess(wall);
      auto before = rough + 4.0 * c;
      auto near = 4.0 - (4.0 + k * log(before)) * before / (before + k * c);
      auto inside = rough + c * near;
      auto omega = inside * guess(reynolds) * (1.0 / (2.51 * k));
      auto r = -1.0 / k * near - log(inside);
      auto y = 2.0 * (1.0 + omega) * (1.0 + omega + 2.0 / 3.0 * r);
      auto x = root<1>(
          "x", unit::one, near + k * omega * r * (y - r) / ((1.0 + omega) * (y - 2.0 * r)),
          [&](const auto& s) {
            auto argument = wall + share * s;
            return std::pair(s + 2.0 * log10(argument), 1.0 + k * share / argument);
          },
          reynolds);
      return 1.0 / square(x);
    },
    remarks{"root to machine accuracy; the equation itself stands within some 10 % of measurements", "roughness 0: a smooth wall"});

inline constexpr auto friction_factor = formula(
    out{"friction_factor", "f", unit::one, "Darcy friction factor: laminar to Re 2300, Churchill in the transition, Colebrook-White from Re 4000."},
    in(detail::reynolds_arg, detail::relative_roughness_arg), source{"White, Fluid Mechanics", "chapter 6"},
    [](auto reynolds, auto roughness) {
      return select(reynolds <= 2300.0, 64.0 / reynolds,
                    select(reynolds < 4000.0, call(friction_factor_churchill, reynolds, roughness),
                           call(friction_factor_colebrook, reynolds, roughness)));
    },
    valid_while([](auto reynolds, auto) { return reynolds <= 2300.0 || reynolds >= 4000.0; },
                "transition between laminar and turbulent flow (Re 2300 to 4000): uncertain"),
    remarks{"laminar exact; turbulent as Colebrook-White", "the factor steps at 2300 and at 4000, where the formula changes"});

inline constexpr auto hydraulic_diameter = formula(
    out{"hydraulic_diameter", "D_h", unit::millimetre, "Hydraulic diameter of a rectangular duct; it goes with the true velocity."},
    in(detail::width_arg, detail::height_arg), source{"White, Fluid Mechanics", "chapter 6, four times area over perimeter"},
    [](auto width, auto height) { return 2.0 * width * height / (width + height); },
    remarks{"exact to rounding", "the side itself for a square"});

inline constexpr auto equivalent_diameter = formula(
    out{"equivalent_diameter", "D_e", unit::millimetre, "Diameter of the round duct with the same flow at the same loss as a rectangular one (Huebscher); not to be used with the true velocity."},
    in(detail::width_arg, detail::height_arg), source{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "equation (25), Huebscher 1948"},
    [](auto width, auto height) {
      return attach(1.30 * power<5, 8>(magnitude(width * height, unit::square_millimetre)) / power<1, 4>(magnitude(width + height, unit::millimetre)),
                    unit::millimetre);
    },
    remarks{"empirical; printed tables agree within their rounding to 1 mm", ""});

inline constexpr auto duct_velocity = formula(
    out{"duct_velocity", "v", unit::metre_per_second, "Mean velocity in a round duct."},
    in(detail::flow_arg, detail::diameter_arg), source{"White, Fluid Mechanics", "chapter 3, continuity"},
    [](auto flow, auto diameter) {
      return milli(flow) / (constant(0.785398163397448310, unit::one, "π/4") * square(milli(diameter)));
    },
    remarks{"exact to rounding", "0 without flow"});

inline constexpr auto duct_velocity_rectangular = formula(
    out{"duct_velocity_rectangular", "v", unit::metre_per_second, "Mean velocity in a rectangular duct."},
    in(detail::flow_arg, detail::width_arg, detail::height_arg), source{"White, Fluid Mechanics", "chapter 3, continuity"},
    [](auto flow, auto width, auto height) { return milli(flow) / (milli(width) * milli(height)); }, remarks{"exact to rounding", "0 without flow"});

inline constexpr auto velocity_pressure = formula(
    out{"velocity_pressure", "p_v", unit::pascal, "Dynamic pressure of the mean velocity."},
    in(detail::velocity_arg, detail::density_arg), source{"White, Fluid Mechanics", "chapter 3, ρ v²/2"},
    [](auto velocity, auto density) { return density * square(velocity) / 2.0; }, remarks{"exact to rounding", "0 in still air"});

inline constexpr auto fitting_pressure_loss = formula(
    out{"fitting_pressure_loss", "Δp", unit::pascal, "Total pressure lost in a fitting from its loss coefficient at the velocity that the coefficient refers to."},
    in(arg{"loss_coefficient", "ζ", unit::one, between(-100, 1e6), "loss coefficient; may be negative in a junction"}.usually(0.05, 3),
       detail::velocity_arg, detail::density_arg),
    source{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "dynamic losses, Δp = ζ ρ v²/2"},
    [](auto coefficient, auto velocity, auto density) { return coefficient * call(velocity_pressure, velocity, density); },
    remarks{"that of the coefficient, often no better than 20 %; bends closer than 10 diameters disturb each other", "0 Pa without flow"});

MAKEGOOD_ARGUMENTS(duct_pressure_loss_arguments, (flow_l_per_s, diameter_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s));
inline constexpr auto duct_pressure_loss = formula(
    out{"duct_pressure_loss", "Δp", unit::pascal, "Pressure lost by friction in a straight round duct (Darcy-Weisbach)."},
    in<duct_pressure_loss_arguments>(detail::flow_arg, detail::diameter_arg, detail::duct_length_arg, detail::roughness_arg, detail::density_arg,
                                     detail::viscosity_arg),
    source{"White, Fluid Mechanics", "chapter 6, Darcy-Weisbach"},
    [](auto flow, auto diameter, auto length, auto roughness, auto density, auto viscosity) {
      auto velocity = call(duct_velocity, flow, diameter);
      auto reynolds = call(reynolds_number, velocity, diameter, density, viscosity);
      auto laminar = 32.0 * viscosity * velocity * length / square(milli(diameter));  // 64/Re put in: holds at zero flow too
      auto turbulent = call(friction_factor, reynolds, roughness / diameter) * length / milli(diameter) * call(velocity_pressure, velocity, density);
      return select(reynolds <= 2300.0, laminar, turbulent);
    },
    requires_that([](auto, auto diameter, auto, auto roughness, auto, auto) { return 2.0 * roughness < diameter; },
                  "the roughness is less than half the diameter"),
    remarks{"that of the friction factor and of the roughness: 5 to 10 % for a clean rigid duct", "0 Pa without flow or length"});

MAKEGOOD_ARGUMENTS(duct_pressure_loss_rectangular_arguments,
                   (flow_l_per_s, width_mm, height_mm, length_m, roughness_mm, density_kg_per_m3, viscosity_pa_s));
inline constexpr auto duct_pressure_loss_rectangular = formula(
    out{"duct_pressure_loss_rectangular", "Δp", unit::pascal, "Pressure lost by friction in a straight rectangular duct: hydraulic diameter and true velocity."},
    in<duct_pressure_loss_rectangular_arguments>(detail::flow_arg, detail::width_arg, detail::height_arg, detail::duct_length_arg,
                                                 detail::roughness_arg, detail::density_arg, detail::viscosity_arg),
    source{"White, Fluid Mechanics", "chapter 6, hydraulic diameter"},
    [](auto flow, auto width, auto height, auto length, auto roughness, auto density, auto viscosity) {
      auto velocity = call(duct_velocity_rectangular, flow, width, height);
      auto diameter = call(hydraulic_diameter, width, height);
      auto reynolds = call(reynolds_number, velocity, diameter, density, viscosity);
      auto laminar = 32.0 * viscosity * velocity * length / square(milli(diameter));
      auto turbulent = call(friction_factor, reynolds, roughness / diameter) * length / milli(diameter) * call(velocity_pressure, velocity, density);
      return select(reynolds <= 2300.0, laminar, turbulent);
    },
    requires_that([](auto, auto width, auto height, auto, auto roughness, auto, auto) { return 2.0 * roughness < width && 2.0 * roughness < height; },
                  "the roughness is less than half of each side"),
    valid_while(
        [](auto flow, auto width, auto height, auto, auto, auto density, auto viscosity) {
          return !(flow > 0.0) ||
                 call(reynolds_number, milli(flow) / (milli(width) * milli(height)), call(hydraulic_diameter, width, height), density, viscosity) > 2300.0;
        },
        "laminar flow in a rectangular duct: 64/Re is the factor of a round one (a square has 57/Re, a flat one up to 96/Re)"),
    remarks{"5 to 10 % for a clean rigid duct in turbulent flow; the factor of a round duct is used", "0 Pa without flow or length"});

inline constexpr auto flexible_duct_multiplier = formula(
    out{"flexible_duct_multiplier", "PDCF", unit::ratio, "How many times the loss of the fully stretched duct a compressed flexible duct has."},
    in(arg{"compression_percent", "K_c", unit::percent, between(0, 100), "shortening: 100 (1 - installed length / fully stretched length)"}.usually(0, 30).valid_in(between(0, 30)),
       arg{"diameter_mm", "D", unit::millimetre, between(1, 1e4), "nominal diameter"}.usually(150, 250).valid_in(between(150, 250))),
    source{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "equation (22), 1 + 0.58 K_c exp(-0.00496 D)"},
    [](auto compression, auto diameter) {
      return 1.0 + 0.58 * magnitude(compression, unit::percent) * exp(-0.00496 * magnitude(diameter, unit::millimetre));
    },
    remarks{"a fit to ducts of 150 to 250 mm; single ducts deviate by a third and more; 100 and 125 mm were not tested", "1 fully stretched"});

}  // namespace air
}  // namespace v1
}  // namespace makegood

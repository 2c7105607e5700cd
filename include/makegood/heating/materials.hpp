// SPDX-License-Identifier: MIT
// Building materials and layers: conductivity, thermal resistance, U-value, effusivity, what a finger feels at first touch.
// Subject: heating. Design values; a maker's declared value comes first.
#pragma once
#include <array>
#include <iterator>
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source en_12524{"EN 12524:2000 (values carried into ISO 10456)", "tabulated design values"};
inline constexpr source iso_6946{"ISO 6946:2007/2017", "thermal resistance of layers, conventional surface resistances"};

inline constexpr source din_4108{"DIN 4108-4, recalled", "screeds", "memory"};
inline constexpr source recalled_materials{"ISO 10456, recalled", "table 3", "memory"};
inline constexpr source material_practice{"common practice", "", "common-practice"};

struct floor_material {
  std::string_view name, text;
  double conductivity_w_per_mk, density_kg_per_m3, specific_heat_j_per_kgk;
  source from;
};
/// Design values. Specific heats of the stones and of plasterboard are 1000 J/(kgK) in the same table.
inline constexpr floor_material floor_materials[] = {
    {"ceramic_tile", "ceramic or porcelain tiles", 1.3, 2300, 840, en_12524},
    {"clay_tile", "clay tiles", 1.0, 2000, 800, en_12524},
    {"marble", "marble", 3.5, 2800, 1000, en_12524},
    {"granite", "granite", 2.8, 2600, 1000, en_12524},
    {"limestone", "limestone, hard", 1.7, 2200, 1000, en_12524},
    {"glass", "glass", 1.0, 2500, 750, en_12524},
    {"concrete", "concrete, medium density", 1.35, 2000, 1000, en_12524},
    {"concrete_high", "concrete, high density", 2.0, 2400, 1000, en_12524},
    {"concrete_reinforced", "concrete with 1 % of steel", 2.3, 2300, 1000, en_12524},
    {"cement_screed", "cement screed", 1.4, 2000, 1000, din_4108},
    {"anhydrite_screed", "anhydrite screed", 1.2, 2100, 1000, din_4108},
    {"mortar", "cement and sand render, mortar, also taken for tile adhesive", 1.0, 1800, 1000, recalled_materials},
    {"plywood", "plywood", 0.13, 500, 1600, en_12524},
    {"plywood_heavy", "plywood, 700 kg/m³", 0.17, 700, 1600, en_12524},
    {"chipboard", "particle board, 600 kg/m³", 0.14, 600, 1700, en_12524},
    {"chipboard_heavy", "particle board, 900 kg/m³", 0.18, 900, 1700, en_12524},
    {"cement_board", "cement-bonded particle board", 0.23, 1200, 1500, en_12524},
    {"osb", "oriented strand board", 0.13, 650, 1700, en_12524},
    {"timber", "timber", 0.13, 500, 1600, en_12524},
    {"plasterboard", "plasterboard", 0.25, 900, 1000, en_12524},
    {"linoleum", "linoleum", 0.17, 1200, 1400, en_12524},
    {"vinyl", "plastic floor covering", 0.25, 1700, 1400, en_12524},
    {"carpet", "textile floor covering", 0.06, 200, 1300, recalled_materials},
    {"xps", "extruded polystyrene by its handbook (boards under tiles are declared higher)", 0.026, 32.5, 1450, {"ASHRAE Handbook Fundamentals", "thermal properties of building materials", "handbook"}},
    {"extruded_foam", "extruded polystyrene, declared 0.030 to 0.036", 0.033, 35, 1450, material_practice}};

constexpr const floor_material* find_floor_material(std::string_view name) {
  for (const auto& m : floor_materials)
    if (m.name == name) return &m;
  return nullptr;
}

namespace detail {
/// The same table as rows that formulas pick from.
inline constexpr auto material_rows_of = [] {
  std::array<choice_row, std::size(floor_materials)> rows{};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto& m = floor_materials[i];
    rows[i] = {m.name, m.text, {m.conductivity_w_per_mk, m.density_kg_per_m3, m.specific_heat_j_per_kgk}};
  }
  return rows;
}();
}  // namespace detail
inline constexpr column material_columns[] = {{"λ", unit::watt_per_metre_kelvin}, {"ρ", unit::kilogram_per_cubic_metre}, {"c", unit::joule_per_kilogram_kelvin}};
inline constexpr choice_table materials{material_columns, detail::material_rows_of};

inline constexpr auto material_conductivity = formula(
    out{"material_conductivity", "λ", unit::watt_per_metre_kelvin, "Thermal conductivity of a building material."}, in(choice{"material", materials, "material"}), en_12524,
    [](auto material) { return material[0]; }, remarks{"tabulated design value, rounded to two digits; moisture raises it", ""});
inline constexpr auto material_density = formula(
    out{"material_density", "ρ", unit::kilogram_per_cubic_metre, "Density of a building material."}, in(choice{"material", materials, "material"}), en_12524,
    [](auto material) { return material[1]; }, remarks{"tabulated design value", ""});
inline constexpr auto material_heat_capacity = formula(
    out{"material_heat_capacity", "c", unit::joule_per_kilogram_kelvin, "Specific heat capacity of a building material."}, in(choice{"material", materials, "material"}), en_12524,
    [](auto material) { return material[2]; }, remarks{"tabulated design value", ""});

namespace detail {
inline constexpr arg conductivity_arg = arg{"conductivity_w_per_m_k", "λ", unit::watt_per_metre_kelvin, positive_to(1e4), "thermal conductivity"}.usually(0.03, 3);
inline constexpr arg thickness_arg = arg{"thickness_mm", "d", unit::millimetre, positive_to(1e5), "thickness"}.usually(3, 300);
inline constexpr arg layer_area = arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "area"}.usually(0.5, 50);
}  // namespace detail

inline constexpr auto thermal_resistance = formula(
    out{"thermal_resistance", "R", unit::square_metre_kelvin_per_watt, "Thermal resistance of a layer."}, in(detail::thickness_arg, detail::conductivity_arg), iso_6946,
    [](auto thickness, auto conductivity) { return milli(thickness) / conductivity; }, remarks{"exact to rounding; layers add", ""});

inline constexpr auto surface_resistance = formula(
    out{"surface_resistance", "R_s", unit::square_metre_kelvin_per_watt, "Resistance of a surface to the air, from its coefficients of convection and radiation."},
    in(arg{"convection_w_per_m2_k", "h_c", unit::watt_per_square_metre_kelvin, positive_to(1e4), "coefficient of convection: 5.0 upwards, 2.5 horizontally, 0.7 downwards, 20 outside"}.usually(0.7, 25),
       arg{"radiation_w_per_m2_k", "h_r", unit::watt_per_square_metre_kelvin, between(0, 1e4), "coefficient of radiation: 5.13 inside, 4.14 outside"}.usually(4, 6)),
    iso_6946, [](auto convection, auto radiation) { return 1.0 / (convection + radiation); }, remarks{"exact to rounding; the standard rounds to 0.10, 0.13, 0.17 and 0.04", ""});

inline constexpr auto u_value = formula(
    out{"u_value", "U", unit::watt_per_square_metre_kelvin, "Heat through a wall or floor for each square metre and kelvin, air to air."},
    in(arg{"layers_m2k_per_w", "R", unit::square_metre_kelvin_per_watt, between(0, 1e4), "thermal resistance of all layers"}.usually(0.1, 6),
       arg{"inside_m2k_per_w", "R_si", unit::square_metre_kelvin_per_watt, positive_to(100), "inner surface: 0.10 upwards, 0.13 horizontally, 0.17 downwards"}.usually(0.1, 0.17).otherwise(0.13),
       arg{"outside_m2k_per_w", "R_se", unit::square_metre_kelvin_per_watt, between(0, 100), "outer surface"}.usually(0.03, 0.17).otherwise(0.04)),
    iso_6946, [](auto layers, auto inside, auto outside) { return 1.0 / (inside + layers + outside); },
    remarks{"exact for plane layers; studs, joints and fixings raise it", "the surfaces alone without layers"});

MAKEGOOD_ARGUMENTS(conduction_heat_flow_arguments, (conductivity_w_per_m_k, area_m2, thickness_mm, difference_k));
inline constexpr auto conduction_heat_flow = formula(
    out{"conduction_heat_flow", "Φ", unit::watt, "Heat through one layer from the temperatures of its two faces."},
    in<conduction_heat_flow_arguments>(detail::conductivity_arg, detail::layer_area, detail::thickness_arg,
                                       arg{"difference_k", "ΔT", unit::kelvin, between(-2000, 2000), "difference of temperature between the faces"}.usually(1, 40)),
    source{"Y. A. Cengel, Heat and Mass Transfer: A Practical Approach", "Examples 1.5 and 3.1"},
    [](auto conductivity, auto area, auto thickness, auto difference) { return conductivity * area * difference / milli(thickness); },
    remarks{"exact for a plane layer in steady state", "0 W without a difference"});

inline constexpr auto thermal_effusivity = formula(
    out{"thermal_effusivity", "e", unit::watt_root_second_per_square_metre_kelvin, "How fast a material takes heat from what touches it: √(λ ρ c)."},
    in(detail::conductivity_arg, arg{"density_kg_per_m3", "ρ", unit::kilogram_per_cubic_metre, positive_to(1e5), "density"}.usually(20, 8000),
       arg{"heat_capacity_j_per_kg_k", "c", unit::joule_per_kilogram_kelvin, positive_to(1e5), "specific heat capacity"}.usually(400, 4200)),
    source{"H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids", "two half-spaces in contact", "memory"},
    [](auto conductivity, auto density, auto heat) { return sqrt(conductivity * density * heat); }, remarks{"exact to rounding", ""});

MAKEGOOD_ARGUMENTS(contact_temperature_arguments, (first_effusivity, first_c, second_effusivity, second_c));
inline constexpr auto contact_temperature = formula(
    out{"contact_temperature", "t_i", unit::celsius, "Temperature at once between two bodies that touch, such as skin and a rail."},
    in<contact_temperature_arguments>(
        arg{"first_effusivity", "e_1", unit::watt_root_second_per_square_metre_kelvin, positive_to(1e6), "effusivity of the first body: skin about 1120 W·√s/(m²·K)"}.usually(1000, 1300),
        arg{"first_c", "t_1", unit::celsius, between(-200, 1000), "its temperature: skin about 33 °C"}.usually(30, 35),
        arg{"second_effusivity", "e_2", unit::watt_root_second_per_square_metre_kelvin, positive_to(1e6), "effusivity of the second body: tile 1585, steel 14000, plywood 322 W·√s/(m²·K)"}.usually(300, 14000),
        arg{"second_c", "t_2", unit::celsius, between(-200, 1000), "its temperature"}.usually(15, 70)),
    source{"H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids", "two half-spaces in contact", "memory"},
    [](auto first, auto t_1, auto second, auto t_2) { return t_1 + second / (first + second) * (t_2 - t_1); },
    remarks{"of thick bodies in the first seconds; thin metal cools, thin skin warms", "the common temperature of two bodies of one temperature"});

}  // namespace heating
}  // namespace v1
}  // namespace makegood

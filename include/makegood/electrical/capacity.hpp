// SPDX-License-Identifier: MIT
// What a conductor may carry: published tables of resistance and capacity, factors of installation, short overloads.
// Subject: electrical. A size is a word that is a number ("2.5"): only printed sizes have an answer.
#pragma once
#include "conductors.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr source conductor_resistances{"IEC 60228:2004", "Tables 1 to 3, highest resistance at 20 °C"};
inline constexpr source capacity_annex_d{"IEC 60364-5-52:2009", "Annex D, I = A S^m - B S^n"};
inline constexpr source annex_d_coefficients{"IEC 60364-5-52:2009", "Annex D, Table D.52.1", "memory"};
inline constexpr source flat_twin_table{"BS 7671:2008 and later", "Appendix 4, Table 4D5"};
inline constexpr source correction_factors{"BS 7671:2008 and later", "Appendix 4, I_t ≥ I_n/(C_a C_g C_i C_f)"};

inline constexpr column metal_columns[] = {{"metal", unit::one}};
inline constexpr choice_row metal_rows[] = {
    {"copper", "copper, plain", {1}}, {"copper_metal_coated", "copper, metal-coated", {2}}, {"aluminium", "aluminium", {3}}};
inline constexpr choice_table metals{metal_columns, metal_rows};
inline constexpr column conductor_class_columns[] = {{"class", unit::one}};
inline constexpr choice_row conductor_class_rows[] = {{"1", "class 1, solid", {1}}, {"2", "class 2, stranded", {2}}, {"5", "class 5, flexible", {5}}};
inline constexpr choice_table conductor_classes{conductor_class_columns, conductor_class_rows};

// 0: the standard has no such conductor, or it was not read. Classes 1 and 2 share their limits up to 150 mm².
inline constexpr column resistance_20_columns[] = {{"r_12", unit::milliohm_per_metre}, {"r_5", unit::milliohm_per_metre}, {"r_Al", unit::milliohm_per_metre}, {"r_5c", unit::milliohm_per_metre}};
inline constexpr choice_row resistance_20_rows[] = {
    // copper class 1 and 2, copper class 5, aluminium class 1 and 2, metal-coated copper class 5
    {"0.5", "0.5 mm²", {36.0, 39.0, 0, 40.1}},    {"0.75", "0.75 mm²", {24.5, 26.0, 0, 26.7}},  {"1", "1 mm²", {18.1, 19.5, 0, 20.0}},
    {"1.5", "1.5 mm²", {12.1, 13.3, 0, 13.7}},    {"2.5", "2.5 mm²", {7.41, 7.98, 0, 8.21}},    {"4", "4 mm²", {4.61, 4.95, 0, 5.09}},
    {"6", "6 mm²", {3.08, 3.30, 0, 3.39}},        {"10", "10 mm²", {1.83, 1.91, 3.08, 1.95}},   {"16", "16 mm²", {1.15, 1.21, 1.91, 1.24}},
    {"25", "25 mm²", {0.727, 0.780, 1.20, 0.795}}, {"35", "35 mm²", {0.524, 0.554, 0.868, 0.565}}, {"50", "50 mm²", {0.387, 0.386, 0.641, 0.393}},
    {"70", "70 mm²", {0.268, 0.272, 0.443, 0.277}}, {"95", "95 mm²", {0.193, 0.206, 0.320, 0.210}}, {"120", "120 mm²", {0.153, 0.161, 0.253, 0.164}}};
inline constexpr choice_table resistances_20{resistance_20_columns, resistance_20_rows};

inline constexpr auto conductor_resistance_20 = formula(
    out{"conductor_resistance_20", "r_20", unit::milliohm_per_metre, "Highest resistance of a conductor at 20 °C that its standard allows."},
    in(choice{"metal", metals, "metal of the conductor"}, choice{"conductor_class", conductor_classes, "1 solid, 2 stranded, 5 flexible"},
       choice{"area_mm2", resistances_20, "nominal cross-section, mm²"}),
    conductor_resistances,
    [](auto metal, auto kind, auto size) {
      return select(metal[0] > 2.5, size[2], select(metal[0] > 1.5, size[3], select(kind[0] > 2.5, size[1], size[0])));
    },
    requires_that([](auto metal, auto kind, auto) { return (metal[0] < 1.5) || (metal[0] > 2.5 && kind[0] < 2.5) || (metal[0] < 2.5 && kind[0] > 2.5); },
                  "this metal is tabulated in this class: plain copper in 1, 2 and 5, metal-coated copper in 5, aluminium in 1 and 2"),
    requires_that([](auto metal, auto, auto size) { return (metal[0] < 2.5) || (size[2] > 0.0); }, "aluminium is tabulated from 10 mm²"),
    remarks{"a limit, not a mean: real cable measures 1 to 3 % lower, so that a length derived from it is on the short side", ""});

MAKEGOOD_ARGUMENTS(current_capacity_arguments, (coefficient_a, exponent_m, coefficient_b, exponent_n, area_mm2));
inline constexpr auto current_capacity = formula(
    out{"current_capacity", "I_z", unit::ampere, "Current that a cable carries continuously, by the standard's formula of its size."},
    in<current_capacity_arguments>(
        arg{"coefficient_a", "A", unit::one, positive_to(1000), "first coefficient of the way of installation"}.usually(8, 20),
        arg{"exponent_m", "m", unit::one, between(0, 1), "its exponent"}.usually(0.5, 0.7),
        arg{"coefficient_b", "B", unit::one, between(0, 100), "second coefficient; 0 for the small sizes"}.usually(0, 0.01),
        arg{"exponent_n", "n", unit::one, between(0, 5), "its exponent"}.usually(1, 2),
        arg{"area_mm2", "S", unit::square_millimetre, between(0.1, 1000), "nominal cross-section"}.usually(1, 25)),
    capacity_annex_d,
    [](auto a, auto m, auto b, auto n, auto area) {
      auto size = let("λ", unit::one, log(magnitude(area, unit::square_millimetre)));
      return attach(a * exp(m * size) - b * exp(n * size), unit::ampere);
    },
    requires_that([](auto a, auto m, auto b, auto n, auto area) { return a * exp(m * log(area)) > b * exp(n * log(area)); }, "the second part is below the first"),
    remarks{"the printed columns to their rounding (0.5 A below 20 A, 1 A above)", ""});

inline constexpr column installation_columns[] = {{"A", unit::one}, {"m", unit::one}};
inline constexpr choice_row installation_rows[] = {
    {"pvc_2_a1", "70 °C, two loaded, in conduit in an insulating wall (A1)", {11.2, 0.6118}},
    {"pvc_2_a2", "70 °C, two loaded, cable in conduit in an insulating wall (A2)", {10.8, 0.6015}},
    {"pvc_2_b1", "70 °C, two loaded, in conduit on a wall (B1)", {13.5, 0.625}},
    {"pvc_2_b2", "70 °C, two loaded, cable in conduit on a wall (B2)", {13.1, 0.600}},
    {"pvc_2_c", "70 °C, two loaded, clipped direct (C)", {15.0, 0.625}},
    {"pvc_3_b2", "70 °C, three loaded, cable in conduit on a wall (B2)", {11.65, 0.6005}},
    {"pvc_3_c", "70 °C, three loaded, clipped direct (C)", {13.5, 0.625}},
    {"xlpe_2_b1", "90 °C, two loaded, in conduit on a wall (B1)", {17.76, 0.625}},
    {"xlpe_2_c", "90 °C, two loaded, clipped direct (C)", {18.77, 0.628}}};
inline constexpr choice_table installations{installation_columns, installation_rows};
inline constexpr auto installed_capacity = formula(
    out{"installed_capacity", "I_z", unit::ampere, "Current that a copper cable carries continuously, by insulation, number of loaded conductors and way of installation."},
    in(choice{"installation", installations, "insulation, loaded conductors and reference method"},
       arg{"area_mm2", "S", unit::square_millimetre, between(1, 16), "nominal cross-section"}.usually(1, 16).valid_in(between(1.5, 16))),
    annex_d_coefficients,
    [](auto way, auto area) { return attach(way[0] * exp(way[1] * log(magnitude(area, unit::square_millimetre))), unit::ampere); },
    remarks{"printed columns to their rounding from 1.5 to 16 mm²; the coefficients are recalled, the columns that hold them were read", "in air of 30 °C, alone"});

inline constexpr column flat_twin_columns[] = {{"I_100", unit::ampere}, {"I_101", unit::ampere}, {"I_102", unit::ampere},
                                               {"I_103", unit::ampere}, {"I_C", unit::ampere}, {"I_A", unit::ampere}, {"d", unit::millivolt_per_ampere_metre}};
inline constexpr choice_row flat_twin_rows[] = {
    // method 100, 101, 102, 103, C, A; then mV/(A·m). 1, 1.5 and 4 (method 100) mm² read in print, the others recalled
    {"1", "1 mm²", {13, 10.5, 13, 8, 16, 11.5, 44}},  {"1.5", "1.5 mm²", {16, 13, 16, 10, 20, 14.5, 29}}, {"2.5", "2.5 mm²", {21, 17, 21, 13.5, 27, 20, 18}},
    {"4", "4 mm²", {27, 22, 27, 17.5, 37, 26, 11}},   {"6", "6 mm²", {34, 27, 35, 23.5, 47, 32, 7.3}},    {"10", "10 mm²", {45, 36, 47, 32, 64, 44, 4.4}},
    {"16", "16 mm²", {57, 46, 63, 42.5, 85, 57, 2.8}}};
inline constexpr choice_table flat_twins{flat_twin_columns, flat_twin_rows};
inline constexpr column method_columns[] = {{"method", unit::one}};
inline constexpr choice_row method_rows[] = {
    {"100", "above a ceiling under up to 100 mm of insulation", {0}},       {"101", "above a ceiling under more than 100 mm of insulation", {1}},
    {"102", "in a stud wall with insulation, touching the inner wall", {2}}, {"103", "in a stud wall with insulation, not touching the inner wall", {3}},
    {"C", "clipped direct", {4}},                                            {"A", "in conduit in an insulating wall", {5}}};
inline constexpr choice_table methods{method_columns, method_rows};
namespace detail {
/// The column of the way of installation.
template <class Size, class Method>
constexpr auto flat_twin_column(const Size& size, const Method& method) {
  const auto m = method[0];
  return select(m < 0.5, size[0], select(m < 1.5, size[1], select(m < 2.5, size[2], select(m < 3.5, size[3], select(m < 4.5, size[4], size[5])))));
}
}  // namespace detail
inline constexpr auto flat_twin_capacity = formula(
    out{"flat_twin_capacity", "I_t", unit::ampere, "Tabulated current of a flat twin cable with protective conductor, 70 °C, by the way it is laid."},
    in(choice{"method", methods, "way of installation"}, choice{"area_mm2", flat_twins, "cross-section of line and neutral, mm²"}), flat_twin_table,
    [](auto method, auto size) { return detail::flat_twin_column(size, method); },
    remarks{"printed values; in air of 30 °C, alone, no other correction", ""});
inline constexpr auto flat_twin_voltage_drop = formula(
    out{"flat_twin_voltage_drop", "d", unit::millivolt_per_ampere_metre, "Tabulated voltage drop of a flat twin cable with protective conductor, at 70 °C."},
    in(choice{"area_mm2", flat_twins, "cross-section of line and neutral, mm²"}), flat_twin_table, [](auto size) { return size[6]; },
    remarks{"printed to two digits: up to 1.5 % from twice the resistance at 70 °C", "line and neutral together"});

inline constexpr column cable_drop_columns[] = {{"d_2", unit::millivolt_per_ampere_metre}, {"d_3", unit::millivolt_per_ampere_metre}, {"d_2x", unit::millivolt_per_ampere_metre},
                                                {"d_3x", unit::millivolt_per_ampere_metre}};
inline constexpr choice_row cable_drop_rows[] = {
    // 70 °C single-phase, three-phase; 90 °C single-phase, three-phase. Those not read agree with 2 and √3 times the hot resistance to the rounding
    {"1", "1 mm²", {44, 38, 46, 40}},   {"1.5", "1.5 mm²", {29, 25, 31, 27}},   {"2.5", "2.5 mm²", {18, 15, 19, 16}},   {"4", "4 mm²", {11, 9.5, 12, 10}},
    {"6", "6 mm²", {7.3, 6.4, 7.9, 6.8}}, {"10", "10 mm²", {4.4, 3.8, 4.7, 4.0}}, {"16", "16 mm²", {2.8, 2.4, 2.9, 2.5}}};
inline constexpr choice_table cable_drops{cable_drop_columns, cable_drop_rows};
inline constexpr column cable_kind_columns[] = {{"cable", unit::one}};
inline constexpr choice_row cable_kind_rows[] = {{"pvc_2", "70 °C, single-phase", {0}}, {"pvc_3", "70 °C, three-phase", {1}},
                                                 {"xlpe_2", "90 °C, single-phase", {2}}, {"xlpe_3", "90 °C, three-phase", {3}}};
inline constexpr choice_table cable_kinds{cable_kind_columns, cable_kind_rows};
inline constexpr auto tabulated_voltage_drop = formula(
    out{"tabulated_voltage_drop", "d", unit::millivolt_per_ampere_metre, "Tabulated voltage drop of a copper cable at its highest working temperature."},
    in(choice{"cable", cable_kinds, "insulation and phases"}, choice{"area_mm2", cable_drops, "nominal cross-section, mm²"}),
    source{"BS 7671:2008 and later", "Appendix 4, Tables 4D1B, 4D2B and 4E4B"},
    [](auto cable, auto size) {
      const auto k = cable[0];
      return select(k < 0.5, size[0], select(k < 1.5, size[1], select(k < 2.5, size[2], size[3])));
    },
    remarks{"printed to two digits: up to 1.5 % from the resistance; three-phase figures give the drop between lines", "line and return together"});

inline constexpr column flex_columns[] = {{"I_z", unit::ampere}, {"d", unit::millivolt_per_ampere_metre}, {"m_max", unit::one}, {"I_z3", unit::ampere}};
inline constexpr choice_row flex_rows[] = {
    // capacity, single-phase mV/(A·m) at 60 °C, mass in kg that a twin cord may carry, three-phase capacity; 0: not read
    {"0.5", "0.5 mm²", {3, 93, 2, 3}},    {"0.75", "0.75 mm²", {6, 62, 3, 6}}, {"1", "1 mm²", {10, 46, 5, 10}}, {"1.25", "1.25 mm²", {13, 0, 5, 0}},
    {"1.5", "1.5 mm²", {16, 32, 5, 16}},  {"2.5", "2.5 mm²", {25, 19, 5, 20}}, {"4", "4 mm²", {32, 12, 5, 25}}};
inline constexpr choice_table flexes{flex_columns, flex_rows};
inline constexpr column flex_phase_columns[] = {{"phases", unit::one}};
inline constexpr choice_row flex_phase_rows[] = {{"single", "direct current or single-phase", {1}}, {"three", "three-phase", {3}}};
inline constexpr choice_table flex_phases{flex_phase_columns, flex_phase_rows};
inline constexpr auto flex_capacity = formula(
    out{"flex_capacity", "I_z", unit::ampere, "Tabulated current of a flexible cord of 60 °C in air of 30 °C."},
    in(choice{"area_mm2", flexes, "cross-section of the cord, mm²"}, choice{"phases", flex_phases, "phases"}.otherwise("single")),
    source{"BS 7671:2008 and later", "Appendix 4, Table 4F3A"}, [](auto cord, auto phases) { return select(phases[0] < 2.0, cord[0], cord[3]); },
    requires_that([](auto cord, auto phases) { return phases[0] < 2.0 || cord[3] > 0.0; }, "the printed three-phase figure of this cord was read"),
    remarks{"printed values; the standard of an appliance may allow less (1.5 mm²: 15 A)", "in warmer air √((60 - t)/30) of it, as check_flex_for_fuse takes it"});
inline constexpr auto flex_voltage_drop = formula(
    out{"flex_voltage_drop", "d", unit::millivolt_per_ampere_metre, "Tabulated single-phase voltage drop of a flexible cord at 60 °C."},
    in(choice{"area_mm2", flexes, "cross-section of the cord, mm²"}), source{"BS 7671:2008 and later", "Appendix 4, Table 4F3B"}, [](auto cord) { return cord[1]; },
    requires_that([](auto cord) { return cord[1] > 0.0; }, "the printed figure of this cord was read"), remarks{"printed to two digits", "both cores together"});

inline constexpr auto ambient_factor = formula(
    out{"ambient_factor", "C_a", unit::ratio, "Factor of a cable's capacity for the temperature of the air around it."},
    in(arg{"conductor_max_c", "t_p", unit::celsius, between(40, 300), "highest normal temperature of the conductor: 70 for PVC, 90 for XLPE, 60 for common cords"}.usually(60, 90),
       arg{"ambient_c", "t_a", unit::celsius, between(-50, 300), "temperature around the cable"}.usually(20, 55),
       arg{"reference_c", "t_r", unit::celsius, between(-50, 100), "temperature to which the tabulated capacity belongs: 30 in air, 20 in the ground"}.usually(20, 30).otherwise(30)),
    source{"IEC 60364-5-52:2009", "Tables B.52.14 and B.52.15, √((t_p - t_a)/(t_p - t_r))", "seen"},
    [](auto hottest, auto ambient, auto reference) { return sqrt((hottest - ambient) / (hottest - reference)); },
    requires_that([](auto hottest, auto, auto reference) { return reference < hottest; }, "the reference temperature is below the highest temperature of the conductor"),
    requires_that([](auto hottest, auto ambient, auto) { return ambient <= hottest; }, "the surroundings are not hotter than the conductor may be"),
    remarks{"printed factors to their second digit from 35 °C up; below 30 °C some editions print less (1.03 instead of 1.06 at 25 °C)", "0 where the air is as hot as the conductor may be"});

inline constexpr column grouping_columns[] = {{"C_b", unit::one}, {"C_s", unit::one}};
inline constexpr choice_row circuits_rows[] = {
    // bunched in air, on a surface, embedded or enclosed; single layer on a wall or floor, touching (0: not printed)
    {"1", "one circuit", {1.0, 1.0}},       {"2", "two circuits", {0.80, 0.85}},     {"3", "three circuits", {0.70, 0.79}},  {"4", "four circuits", {0.65, 0.75}},
    {"5", "five circuits", {0.60, 0.73}},   {"6", "six circuits", {0.57, 0.72}},     {"7", "seven circuits", {0.54, 0.72}},  {"8", "eight circuits", {0.52, 0.71}},
    {"9", "nine circuits", {0.50, 0.70}},   {"12", "twelve circuits", {0.45, 0.70}}, {"16", "sixteen circuits", {0.41, 0.70}}, {"20", "twenty circuits", {0.38, 0.70}}};
inline constexpr choice_table circuits{grouping_columns, circuits_rows};
inline constexpr column arrangement_columns[] = {{"layer", unit::one}};
inline constexpr choice_row arrangement_rows[] = {{"bunched", "bunched in air, on a surface, embedded or enclosed", {0}}, {"single_layer", "one layer on a wall or floor, touching", {1}}};
inline constexpr choice_table arrangements{arrangement_columns, arrangement_rows};
inline constexpr auto grouping_factor = formula(
    out{"grouping_factor", "C_g", unit::ratio, "Factor of a cable's capacity for circuits beside it."},
    in(choice{"arrangement", arrangements, "how the cables lie"}, choice{"circuits", circuits, "number of circuits or of multicore cables"}),
    source{"BS 7671:2008 and later", "Appendix 4, Table 4C1"}, [](auto how, auto many) { return select(how[0] > 0.5, many[1], many[0]); },
    remarks{"for cables of like load; one that carries less than 30 % of its grouped capacity may be left out of the count", "1 alone"});

inline constexpr column insulation_length_columns[] = {{"C_17", unit::one}, {"C_16", unit::one}};
inline constexpr choice_row insulation_length_rows[] = {
    // 17th and 18th edition (recalled); 16th edition (read)
    {"0", "none", {1.0, 1.0}}, {"50", "50 mm", {0.88, 0.89}}, {"100", "100 mm", {0.78, 0.81}}, {"200", "200 mm", {0.63, 0.68}}, {"400", "400 mm", {0.51, 0.55}}, {"500", "500 mm or more", {0.50, 0.50}}};
inline constexpr choice_table insulation_lengths{insulation_length_columns, insulation_length_rows};
inline constexpr column edition_columns[] = {{"edition", unit::one}};
inline constexpr choice_row edition_rows[] = {{"17th", "17th and 18th edition", {17}}, {"16th", "16th edition", {16}}};
inline constexpr choice_table editions{edition_columns, edition_rows};
inline constexpr auto thermal_insulation_factor = formula(
    out{"thermal_insulation_factor", "C_i", unit::ratio, "Factor of a cable's capacity for a length on which thermal insulation surrounds it."},
    in(choice{"length_in_insulation_mm", insulation_lengths, "length surrounded, mm; 500 for that or more"}, choice{"edition", editions, "edition of the table"}.otherwise("17th")),
    source{"BS 7671:2018", "523.9, Table 52.2; 16th edition: Table 52A", "memory"},
    [](auto length, auto edition) { return select(edition[0] > 16.5, length[0], length[1]); },
    remarks{"printed values; the editions differ by up to 0.05", "1 where nothing surrounds it"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(required_capacity_arguments, (rating_a, ambient_factor, grouping_factor), (insulation_factor = T(1.0), device_factor = T(1.0)));
inline constexpr auto required_capacity = formula(
    out{"required_capacity", "I_t", unit::ampere, "Tabulated current that a cable needs behind a protective device."},
    in<required_capacity_arguments>(
        arg{"rating_a", "I_n", unit::ampere, positive_to(1e4), "rated current of the device"}.usually(6, 63),
        arg{"ambient_factor", "C_a", unit::one, positive_to(2), "factor for the temperature around it"}.usually(0.7, 1.1),
        arg{"grouping_factor", "C_g", unit::one, positive_to(1), "factor for circuits beside it"}.usually(0.4, 1),
        arg{"insulation_factor", "C_i", unit::one, positive_to(1), "factor for thermal insulation"}.usually(0.5, 1).otherwise(1),
        arg{"device_factor", "C_f", unit::one, positive_to(1), "factor for the device: 0.725 for a rewirable fuse"}.usually(0.725, 1).otherwise(1)),
    correction_factors, [](auto rating, auto ambient, auto grouping, auto insulation, auto device) { return rating / (ambient * grouping * insulation * device); },
    remarks{"exact to rounding; factors hold for one place of the run, so that the worst place rules, not the product of places", "the rating itself without corrections"});

MAKEGOOD_ARGUMENTS(short_overload_current_arguments, (capacity_a, preload_a, time_s, time_constant_s));
inline constexpr auto short_overload_current = formula(
    out{"short_overload_current", "I", unit::ampere, "Current that brings a cable to its highest normal temperature after a time, from a load before it."},
    in<short_overload_current_arguments>(
        arg{"capacity_a", "I_z", unit::ampere, positive_to(1e5), "continuous capacity where it lies"}.usually(10, 85),
        arg{"preload_a", "I_0", unit::ampere, between(0, 1e5), "steady current before"}.usually(0, 9),
        arg{"time_s", "t", unit::second, positive_to(1e6), "duration of the overload"}.usually(60, 600),
        arg{"time_constant_s", "τ", unit::second, positive_to(1e6), "time constant of the cable where it lies: a maker's figure or a measurement"}.usually(300, 1200)),
    source{"Heat balance of a body of one temperature", "I² = I_0² + (I_z² - I_0²)/(1 - exp(-t/τ))", "derived"},
    [](auto capacity, auto preload, auto time, auto constant_) {
      auto half = let("w", unit::one, tanh(time / constant_ / 2.0));  // q = 1 - exp(-t/τ), with every digit for short times
      auto risen = let("q", unit::one, 2.0 * half / (1.0 + half));
      return sqrt((capacity - preload) * (capacity + preload) / risen + square(preload));
    },
    requires_that([](auto capacity, auto preload, auto, auto) { return preload <= capacity; }, "the load before is not above the capacity"),
    remarks{"one time constant, resistance taken as constant: some 10 % from a finer model; not above the protective device's own limits", "the capacity itself after a long time"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

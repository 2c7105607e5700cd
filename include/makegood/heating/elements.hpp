// SPDX-License-Identifier: MIT
// Resistive heating elements: resistance, power, current, supply voltage, mats in parallel, how they are laid, what their faults do.
// Subject: heating.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr source ohms_law{"D. C. Kulshreshtha, Basic Electrical Engineering", "Example 2.12, P = U²/R"};

namespace detail {
inline constexpr arg power = arg{"power_w", "P", unit::watt, positive_to(1e7), "power of the element"}.usually(20, 3000);
inline constexpr arg voltage = arg{"voltage_v", "U", unit::volt, positive_to(1e5), "voltage at the element"}.usually(100, 250);
/// A count is a whole number.
/// Exact for numbers up to 2^50: adding and taking away 1.5 * 2^52 rounds to a whole number.
template <class T>
constexpr auto is_whole(const T& x) { return (x + 0x1.8p52) - 0x1.8p52 == x; }
}  // namespace detail

inline constexpr auto element_resistance = formula(
    out{"element_resistance", "R", unit::ohm, "Resistance of a heating element from its power and voltage."},
    in(detail::power, detail::voltage), ohms_law, [](auto power, auto voltage) { return square(voltage) / power; },
    remarks{"exact to rounding; an element's cold resistance is lower by its temperature coefficient", ""});

inline constexpr auto element_power = formula(
    out{"element_power", "P", unit::watt, "Power of a heating element from its resistance and voltage."},
    in(arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance of the element"}.usually(15, 3000), detail::voltage), ohms_law,
    [](auto resistance, auto voltage) { return square(voltage) / resistance; }, remarks{"exact to rounding", ""});

inline constexpr auto element_current = formula(
    out{"element_current", "I", unit::ampere, "Current of a heating element from its power and voltage."}, in(detail::power, detail::voltage), ohms_law,
    [](auto power, auto voltage) { return power / voltage; }, remarks{"exact to rounding", ""});

inline constexpr auto power_at_voltage = formula(
    out{"power_at_voltage", "P", unit::watt, "Power of a heating element at another voltage than its rated one, its resistance unchanged."},
    in(arg{"rated_power_w", "P_r", unit::watt, positive_to(1e7), "rated power"}.usually(20, 3000),
       arg{"rated_voltage_v", "U_r", unit::volt, positive_to(1e5), "rated voltage"}.usually(100, 250),
       arg{"voltage_v", "U", unit::volt, between(0, 1e5), "voltage at the element"}.usually(100, 250)),
    ohms_law, [](auto power, auto rated, auto voltage) { return power * square(voltage / rated); },
    remarks{"exact to rounding for a constant resistance", "0 W without voltage"});

inline constexpr auto parallel_element_resistance = formula(
    out{"parallel_element_resistance", "R", unit::ohm, "Resistance of equal heating mats in parallel."},
    in(arg{"power_w", "P", unit::watt, positive_to(1e7), "power of each mat"}.usually(100, 1500), detail::voltage,
       arg{"mats_count", "n", unit::one, between(1, 1000), "number of mats, whole"}.usually(1, 1)),
    ohms_law, [](auto power, auto voltage, auto mats) { return square(voltage) / (mats * power); },
    requires_that([](auto, auto, auto mats) { return detail::is_whole(mats); }, "the number of mats is whole"), remarks{"exact to rounding", "one mat: its own resistance"});

inline constexpr auto power_density = formula(
    out{"power_density", "q", unit::watt_per_square_metre, "Heating power to each square metre."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e7), "heating power"}.usually(50, 3000),
       arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "heated area"}.usually(0.5, 20)),
    source{"power over area", "", "memory"}, [](auto power, auto area) { return power / area; }, remarks{"exact to rounding", "0 without power"});

// ---- laid out -------------------------------------------------------------------------------------------------------

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(heated_area_arguments, (length_m, width_m), (fixed_area_m2 = T(0.0), margin_m = T(0.0)));
inline constexpr auto heated_area = formula(
    out{"heated_area", "A", unit::square_metre, "Free floor area for a mat or cable: the room less a margin along its walls and less what stands on the floor for good."},
    in<heated_area_arguments>(arg{"length_m", "l", unit::metre, positive_to(1000), "length of the room"}.usually(2.5, 5), arg{"width_m", "w", unit::metre, positive_to(1000), "width of the room"}.usually(2, 4),
                              arg{"fixed_area_m2", "A_f", unit::square_metre, between(0, 1e6), "area under bath, tray, units, WC and other fixed things"}.usually(0, 2).otherwise(0),
                              arg{"margin_m", "m", unit::metre, between(0, 10), "distance kept from the walls"}.usually(0, 0.1).otherwise(0)),
    source{"geometry", "(l - 2 m)(w - 2 m) - A_f", "memory"}, [](auto length, auto width, auto fixed, auto margin) { return (length - 2.0 * margin) * (width - 2.0 * margin) - fixed; },
    requires_that([](auto length, auto width, auto, auto margin) { return 2.0 * margin < minimum(length, width); }, "the margins leave a floor between them"),
    requires_that([](auto length, auto width, auto fixed, auto margin) { return fixed <= (length - 2.0 * margin) * (width - 2.0 * margin); }, "the fixed things are not larger than the floor"),
    remarks{"exact to rounding for a rectangle", "0 m² where nothing is free"});

namespace detail {
inline constexpr arg cable_load = arg{"power_w_per_m", "p", unit::watt_per_metre, positive_to(1000), "rated power of each metre of cable"}.usually(5, 20);
}
inline constexpr auto cable_power_density = formula(
    out{"cable_power_density", "q", unit::watt_per_square_metre, "Heating power to each square metre of a cable that is laid at a spacing."},
    in(detail::cable_load, arg{"spacing_mm", "s", unit::millimetre, positive_to(1e4), "distance between the runs"}.usually(50, 200)), source{"power over spacing", "q = p/s", "derived"},
    [](auto load, auto spacing) { return load / milli(spacing); }, remarks{"exact to rounding", ""});
inline constexpr auto cable_spacing = formula(
    out{"cable_spacing", "s", unit::millimetre, "Distance between the runs of a cable that fills an area."},
    in(arg{"length_m", "L", unit::metre, positive_to(1e4), "length of the cable"}.usually(10, 100), arg{"area_m2", "A", unit::square_metre, positive_to(1e4), "area to heat"}.usually(1, 10)),
    source{"area over length", "s = A/L", "derived"}, [](auto length, auto area) { return in_milli(area / length); },
    remarks{"exact to rounding; the least spacing and bend are the maker's; a heating cable is never shortened", ""});

// ---- faults ---------------------------------------------------------------------------------------------------------

inline constexpr source bypass_algebra{"Ohm's law for a series element", "R = (1 - f) R_0, P = P_0/(1 - f)", "derived"};
inline constexpr auto shorted_fraction = formula(
    out{"shorted_fraction", "f", unit::ratio, "Part of a series element that is bypassed, from its resistance; negative where it reads high."},
    in(arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance as read, cold tail taken off"}.usually(50, 100), arg{"rated_ohm", "R_0", unit::ohm, positive_to(1e9), "resistance when sound: the record of the installation, or the rated one"}.usually(105, 600)),
    bypass_algebra, [](auto resistance, auto rated) { return (rated - resistance) / rated; },
    remarks{"below some 5 to 10 % it hides in the tolerance: the record made at installation or an infrared picture tells", "0 for a sound element, 1 for a dead short"});
inline constexpr auto shorted_power = formula(
    out{"shorted_power", "P", unit::watt, "Power of a series element of which a part is bypassed."},
    in(arg{"power_w", "P_0", unit::watt, positive_to(1e7), "power when sound"}.usually(100, 1500), arg{"fraction", "f", unit::ratio, range{0.0, 1.0, false, true}, "part that is bypassed"}.usually(0, 0.6)), bypass_algebra,
    [](auto power, auto fraction) { return power / (1.0 - fraction); }, remarks{"exact for a constant resistance and voltage", "the whole power for a sound element"});
inline constexpr auto shorted_loading = formula(
    out{"shorted_loading", "k", unit::ratio, "How many times its rated power each metre of the rest of a bypassed element gives off."},
    in(arg{"fraction", "f", unit::ratio, range{0.0, 1.0, false, true}, "part that is bypassed"}.usually(0, 0.6)), bypass_algebra,
    [](auto fraction) { return 1.0 / square(1.0 - fraction); }, remarks{"exact for a constant resistance: a quarter bypassed is 1.78 times the power of each metre", "1 for a sound element"});

MAKEGOOD_ARGUMENTS(missing_parallel_mats_arguments, (resistance_ohm, power_w, voltage_v, mats_count));
inline constexpr auto missing_parallel_mats = formula(
    out{"missing_parallel_mats", "n_x", unit::one, "How many of several equal mats in parallel are open, from the resistance of all together."},
    in<missing_parallel_mats_arguments>(arg{"resistance_ohm", "R", unit::ohm, positive_to(1e9), "resistance as read, cold tails taken off"}.usually(60, 600), detail::power, detail::voltage,
                                        arg{"mats_count", "n", unit::one, between(1, 1000), "number of mats, whole"}.usually(1, 1)),
    ohms_law, [](auto resistance, auto power, auto voltage, auto mats) { return mats - square(voltage) / power / resistance; },
    requires_that([](auto, auto, auto, auto mats) { return detail::is_whole(mats); }, "the number of mats is whole"),
    remarks{"near a whole number where mats are open; between whole numbers something else is wrong", "0 where none is missing, all of them at an endless resistance"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(screen_fault_position_arguments, (loop_ohm, first_ohm, second_ohm), (tail_ohm = T(0.0)));
inline constexpr auto screen_fault_position = formula(
    out{"screen_fault_position", "x", unit::ratio, "Where along an element it touches its screen, as a part of its length from the first end, from three readings of resistance."},
    in<screen_fault_position_arguments>(
        arg{"loop_ohm", "R_l", unit::ohm, positive_to(1e7), "resistance end to end"}.usually(80, 600), arg{"first_ohm", "R_1", unit::ohm, between(0, 1e9), "first end to screen"}.usually(20, 100),
        arg{"second_ohm", "R_2", unit::ohm, between(0, 1e9), "second end to screen"}.usually(20, 100), arg{"tail_ohm", "R_t", unit::ohm, between(0, 1000), "resistance of one core of the cold tail, at each end"}.usually(0, 0.3).otherwise(0)),
    source{"Ohm's law for a fault of any resistance", "x = (R_l + R_1 - R_2)/(2 R_l), tails taken off", "derived"},
    [](auto loop, auto first, auto second, auto tail) {
      auto element = let("R_e", unit::ohm, loop - 2.0 * tail);
      return 0.5 + (first - second) / (2.0 * element);
    },
    requires_that([](auto loop, auto, auto, auto tail) { return 2.0 * tail < loop; }, "the tails are below the loop"),
    remarks{"exact for one fault of a steady resistance; below 0 or above 1 there is another fault, or none", "0.5 for equal readings"});
inline constexpr auto screen_fault_resistance = formula(
    out{"screen_fault_resistance", "R_f", unit::ohm, "Resistance of the fault itself between an element and its screen, from three readings."},
    in(arg{"loop_ohm", "R_l", unit::ohm, positive_to(1e7), "resistance end to end"}.usually(80, 150), arg{"first_ohm", "R_1", unit::ohm, between(0, 1e9), "first end to screen"}.usually(100, 2000),
       arg{"second_ohm", "R_2", unit::ohm, between(0, 1e9), "second end to screen"}.usually(100, 2000)),
    source{"Ohm's law for a fault of any resistance", "R_f = (R_1 + R_2 - R_l)/2", "derived"}, [](auto loop, auto first, auto second) { return 0.5 * (first + second - loop); },
    remarks{"exact for one fault; negative where the readings contradict each other", "0 Ω for a dead short"});

// ---- rated power and what an appliance may take ----------------------------------------------------------------------

inline constexpr source power_input_table{"IEC 335-1:1991 = GOST R MEK 335-1-94", "10.1, Table 1"};
inline constexpr column appliance_columns[] = {{"P_1", unit::watt}, {"p_1", unit::percent}, {"p_2", unit::percent}, {"ΔP", unit::watt}};
inline constexpr choice_row appliance_rows[] = {{"heating", "heating or combined appliance", {200, 10, 5, 20}}, {"motor", "motor-operated appliance, or one whose motors take more than half", {300, 20, 15, 60}}};
inline constexpr choice_table appliances{appliance_columns, appliance_rows};
namespace detail {
inline constexpr arg rated_input = arg{"rated_power_w", "P_r", unit::watt, positive_to(1e6), "rated power input"}.usually(30, 3000);
}
inline constexpr auto highest_power_input = formula(
    out{"highest_power_input", "P_max", unit::watt, "Highest power that an appliance may take at its rated voltage, hot."}, in(choice{"appliance", appliances, "kind of appliance"}, detail::rated_input), power_input_table,
    [](auto appliance, auto rated) {
      auto small = 1.2 * rated;
      auto middle = rated * (1.0 + percent(appliance[1]));
      auto large = maximum(rated * (1.0 + percent(appliance[2])), rated + appliance[3]);
      return select(rated <= constant(25.0, unit::watt), small, select(rated <= appliance[0], middle, large));
    },
    remarks{"exact to rounding; measured at rated voltage in normal operation, hot: not a resistance when cold", "it steps down at 25 W"});
inline constexpr auto least_power_input = formula(
    out{"least_power_input", "P_min", unit::watt, "Least power that a heating appliance above 25 W may take at its rated voltage, hot."},
    in(arg{"rated_power_w", "P_r", unit::watt, range{25.0, 1e6, true, false}, "rated power input, above 25 W: smaller ones have no lower limit"}.usually(30, 3000)), power_input_table,
    [](auto rated) { return 0.9 * rated; }, remarks{"exact to rounding; motor-operated appliances have no lower limit", ""});

}  // namespace heating
}  // namespace v1
}  // namespace makegood

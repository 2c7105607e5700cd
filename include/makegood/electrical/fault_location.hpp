// SPDX-License-Identifier: MIT
// Faults along a cable: where one lies by bridge, capacitance, resistance or reflection; and insulation of parts, lengths, temperatures.
// Subject: electrical.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

namespace detail {
inline constexpr arg cable_length_arg = arg{"length_m", "L", unit::metre, positive_to(1e6), "length of the cable, one way"}.usually(5, 500).read_by(reads::length);
inline constexpr arg sound_arm_arg = arg{"sound_arm_ohm", "R_a", unit::ohm, positive_to(1e9), "arm of the bridge beside the sound core"}.usually(1000, 10000);
inline constexpr arg faulty_arm_arg =
    arg{"faulty_arm_ohm", "R_b", unit::ohm, between(0, 1e9), "arm of the bridge beside the faulty core, at balance"}.usually(1, 1000);
}  // namespace detail

// ---- bridges ----------------------------------------------------------------------------------------------------------

inline constexpr source murray_source{"Hawkins Electrical Guide, vol. 3", "Murray loop, case II"};

inline constexpr auto murray_loop_distance = formula(
    out{"murray_loop_distance", "x", unit::metre, "Distance of an earth fault along a core by a Murray loop with a sound core of the same conductor."},
    in(detail::sound_arm_arg, detail::faulty_arm_arg, detail::cable_length_arg), murray_source,
    [](auto sound, auto faulty, auto length) { return 2.0 * length * faulty / (sound + faulty); },
    valid_while([](auto sound, auto faulty, auto) { return faulty <= sound; },
                "the arm beside the faulty core is the larger one: the arms are swapped, or the fault lies in the core that was taken as the sound one"),
    remarks{"exact for two equal cores joined at the far end without resistance; the fault's resistance is not in the balance, but leakage of the sound parts "
            "beside it draws the place towards the "
            "far end, in proportion to the conductances",
            "0 m where the faulty core's arm is 0; the far end where the arms are equal"});

MAKEGOOD_ARGUMENTS(murray_loop_distance_unequal_arguments, (sound_arm_ohm, faulty_arm_ohm, length_m, faulty_mohm_per_m, return_mohm_per_m));
inline constexpr auto murray_loop_distance_unequal = formula(
    out{"murray_loop_distance_unequal", "x", unit::metre, "Distance of an earth fault along a core by a Murray loop whose sound core has another resistance."},
    in<murray_loop_distance_unequal_arguments>(
        detail::sound_arm_arg, detail::faulty_arm_arg, detail::cable_length_arg,
        arg{"faulty_mohm_per_m", "r_f", unit::milliohm_per_metre, positive_to(1e6), "resistance of one metre of the faulty core"}.usually(1, 40),
        arg{"return_mohm_per_m", "r_r", unit::milliohm_per_metre, positive_to(1e6), "resistance of one metre of the sound core that closes the loop"}.usually(
            1, 40)),
    murray_source, [](auto sound, auto faulty, auto length, auto own, auto back) { return faulty / (sound + faulty) * (own + back) / own * length; },
    valid_while([](auto sound, auto faulty, auto, auto own, auto back) { return faulty * (own + back) <= (sound + faulty) * own; },
                "the place lies beyond the far end of the faulty core: the arms are swapped, or the fault lies in the other core"),
    remarks{"exact for uniform cores at one temperature; only the ratio of the two resistances counts, so a common temperature falls out",
            "0 m where the faulty core's arm is 0"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(varley_loop_distance_arguments, (earth_reading_ohm, loop_reading_ohm, length_m), (lead_ohm = T(0.0)));
inline constexpr auto varley_loop_distance = formula(
    out{"varley_loop_distance", "x", unit::metre, "Distance of an earth fault along a core by a Varley loop with equal arms."},
    in<varley_loop_distance_arguments>(
        arg{"earth_reading_ohm", "R_i", unit::ohm, between(0, 1e9), "balance with the battery at the fault (earth): resistance added to the faulty core"}
            .usually(0.01, 0.5),
        arg{"loop_reading_ohm", "R_f", unit::ohm, positive_to(1e9), "balance with the battery at the loop: resistance of both cores, joined at the far end"}
            .usually(0.8, 3),
        detail::cable_length_arg, arg{"lead_ohm", "R_l", unit::ohm, between(0, 1e6), "resistance of each of the two leads"}.usually(0, 0.1).otherwise(0)),
    source{"university problem set on Varley and Murray loop tests", "equal arms, R_f - R_i = 2 R_x"},
    [](auto earth, auto loop, auto length, auto lead) { return length * ((loop - earth) - 2.0 * lead) / (loop - 2.0 * lead); },
    requires_that([](auto, auto loop, auto, auto lead) { return loop > 2.0 * lead; }, "the loop reading is above the resistance of both leads"),
    requires_that([](auto earth, auto loop, auto, auto lead) { return earth + 2.0 * lead <= loop; },
                  "earth reading and both leads together are not above the loop reading: a fault beyond the near end"),
    remarks{"exact for two equal cores; leads are in the loop reading, not in the earth reading, where they stand on both sides; the fault's own resistance "
            "falls out",
            "0 m where the earth reading is the loop reading less both leads"});

MAKEGOOD_ARGUMENTS(varley_loop_resistance_arguments, (sound_arm_ohm, faulty_arm_ohm, added_ohm, loop_ohm));
inline constexpr auto varley_loop_resistance = formula(
    out{"varley_loop_resistance", "R_x", unit::ohm, "Resistance of a core as far as its earth fault, by a Varley loop with any arms."},
    in<varley_loop_resistance_arguments>(
        arg{"sound_arm_ohm", "P", unit::ohm, positive_to(1e9), "arm of the bridge beside the sound core"}.usually(10, 1000),
        arg{"faulty_arm_ohm", "Q", unit::ohm, positive_to(1e9), "arm of the bridge beside the faulty core with the added resistance"}.usually(1000, 2000),
        arg{"added_ohm", "R", unit::ohm, between(0, 1e9), "resistance added to the faulty core at balance"}.usually(0.1, 10),
        arg{"loop_ohm", "R_loop", unit::ohm, positive_to(1e9), "resistance of both cores, joined at the far end"}.usually(10, 100)),
    source{"bridge balance", "P/Q = (R_loop - R_x)/(R + R_x)", "derived"},
    [](auto p, auto q, auto added, auto loop) { return (q * loop - p * added) / (p + q); },
    requires_that([](auto p, auto q, auto added, auto loop) { return p * added <= q * loop; }, "P R is not above Q R_loop: a fault beyond the near end"),
    remarks{"exact at balance; take the lead of the faulty core off the result", "0 Ω at the near end"});

// ---- capacitance --------------------------------------------------------------------------------------------------------

inline constexpr auto capacitance_break_distance = formula(
    out{"capacitance_break_distance", "x", unit::metre, "Distance of a break in a core from the near end by its capacitance from both ends."},
    in(arg{"near_nf", "C_1", unit::nanofarad, between(0, 1e6), "capacitance of the broken core to the others from the near end"}.usually(0.1, 20),
       arg{"far_nf", "C_2", unit::nanofarad, positive_to(1e6), "the same from the far end"}.usually(0.1, 20), detail::cable_length_arg),
    source{"capacitance in proportion to length", "x = L C_1/(C_1 + C_2)", "derived"},
    [](auto near, auto far, auto length) { return length * near / (near + far); },
    remarks{"a clean break in a uniform cable; low insulation, moisture and the capacitance of accessories spoil it; both readings in one way of connection",
            "0 m where nothing is measured from the near end"});

inline constexpr auto capacitance_break_distance_sound_core = formula(
    out{"capacitance_break_distance_sound_core", "x", unit::metre, "Distance of a break in a core by its capacitance against that of an identical sound core."},
    in(arg{"broken_nf", "C_o", unit::nanofarad, between(0, 1e6), "capacitance of the broken core to the others"}.usually(0.1, 10),
       arg{"sound_nf", "C_s", unit::nanofarad, positive_to(1e6), "capacitance of a sound core of the same kind to the others, open at the far end"}.usually(10,
                                                                                                                                                            20),
       detail::cable_length_arg),
    source{"capacitance in proportion to length", "x = L C_open/C_sound", "derived"},
    [](auto broken, auto sound, auto length) { return length * broken / sound; },
    valid_while([](auto broken, auto sound, auto) { return broken <= sound; },
                "the broken core has more capacitance than the sound one: they are not alike, or the break is elsewhere"),
    remarks{"the two cores must lie alike: in flat twin and earth the line and neutral cores do, the bare core between them does not",
            "0 m where nothing is measured"});

// ---- resistance ---------------------------------------------------------------------------------------------------------

inline constexpr arg loop_per_metre_arg =
    arg{"loop_mohm_per_m", "r", unit::milliohm_per_metre, positive_to(1e7), "resistance of both conductors of one metre, at the temperature of the cable"}
        .usually(5, 50);
inline constexpr auto resistance_short_distance = formula(
    out{"resistance_short_distance", "x", unit::metre, "Distance of a dead short between two conductors by their loop resistance from one end."},
    in(arg{"loop_reading_ohm", "R", unit::ohm, between(0, 1e9), "resistance between the two conductors, as read"}.usually(0.5, 5).read_by(reads::resistance),
       loop_per_metre_arg, arg{"lead_ohm", "R_l", unit::ohm, between(0, 1e6), "resistance of leads and contacts together, both ways"}.usually(0, 0.2).otherwise(0)),
    source{"Ohm's law along a uniform pair", "x = (R - R_l)/r", "derived"},
    [](auto reading, auto per_metre, auto lead) { return (reading - lead) / milli(per_metre); },
    requires_that([](auto reading, auto, auto lead) { return lead <= reading; }, "leads and contacts are not above the reading"),
    remarks{"for a fault without resistance of its own: what it has is counted as length, a metre for 36 mΩ at 1 mm²; read from both ends where it can be done",
            "0 m where the reading is the leads'"});

MAKEGOOD_ARGUMENTS(resistance_short_distance_both_ends_arguments, (near_reading_ohm, far_reading_ohm, length_m, loop_mohm_per_m));
inline constexpr auto resistance_short_distance_both_ends = formula(
    out{"resistance_short_distance_both_ends", "x", unit::metre,
        "Distance of a short from the near end by the loop resistance from both ends, without the fault's own resistance."},
    in<resistance_short_distance_both_ends_arguments>(
        arg{"near_reading_ohm", "R_1", unit::ohm, between(0, 1e9), "resistance between the two conductors from the near end"}.usually(0.5, 0.55).read_by(
            reads::resistance),
        arg{"far_reading_ohm", "R_2", unit::ohm, between(0, 1e9), "the same from the far end, with the same leads"}.usually(0.5, 0.55).read_by(
            reads::resistance),
        arg{"length_m", "L", unit::metre, positive_to(1e6), "length of the cable, one way"}.usually(10, 500).read_by(reads::length), loop_per_metre_arg),
    source{"Ohm's law along a uniform pair", "x = (L + (R_1 - R_2)/r)/2", "derived"},
    [](auto near, auto far, auto length, auto per_metre) { return 0.5 * (length + (near - far) / milli(per_metre)); },
    valid_while([](auto near, auto far, auto length, auto per_metre) { return fabs(near - far) <= milli(per_metre) * length; },
                "the two readings differ by more than the whole cable has: the place lies beyond one of its ends"),
    remarks{"the fault's resistance and equal leads fall out, as long as the fault does not change between the two readings",
            "half of the length where both readings are equal"});

// ---- reflection -----------------------------------------------------------------------------------------------------------

inline constexpr literal light_speed = constant(0.299792458, unit::metre_per_nanosecond, "c");
inline constexpr source reflection_source{"time of a reflection", "d = VF c t/2; c is exact", "derived"};
inline constexpr arg round_trip_arg =
    arg{"round_trip_ns", "t", unit::nanosecond, between(0, 1e9), "time from the pulse to its reflection, there and back"}.usually(20, 2000);

inline constexpr auto reflection_distance = formula(
    out{"reflection_distance", "d", unit::metre, "Distance of a break or short by the time of its reflection."},
    in(arg{"velocity_factor", "VF", unit::one, positive_to(1),
           "speed of a pulse in the cable over the speed of light: solid polyethylene 0.66, PVC about 0.5 to 0.6"}
           .usually(0.45, 0.9),
       round_trip_arg),
    reflection_source, [](auto factor, auto time) { return 0.5 * (light_speed * factor * time); },
    remarks{"exact to rounding; in 10 m of building cable the pulse is back after 0.1 µs, and the doubt of VF (5 %) and the rise time are most of the answer: "
            "calibrate on a known length",
            "0 m without delay"});

inline constexpr auto velocity_factor_from_length = formula(
    out{"velocity_factor_from_length", "VF", unit::one, "Velocity factor of a cable from the reflection of its open end at a known length."},
    in(arg{"length_m", "L", unit::metre, positive_to(1e6), "known length of a sound piece of the same cable"}.usually(5, 20).read_by(reads::length),
       arg{"round_trip_ns", "t", unit::nanosecond, positive_to(1e9), "time from the pulse to the reflection of the far end"}.usually(150, 2000)),
    reflection_source, [](auto length, auto time) { return 2.0 * length / (light_speed * time); },
    requires_that([](auto length, auto time) { return 2.0 * length <= light_speed * time; }, "the pulse is not faster than light: length or time is wrong"),
    remarks{"exact to rounding; leads that are in the time must be in the length", "1 for bare wires in air"});

inline constexpr auto velocity_factor_from_permittivity = formula(
    out{"velocity_factor_from_permittivity", "VF", unit::one, "Velocity factor of a cable from the permittivity of its insulation."},
    in(arg{"permittivity", "ε_r", unit::one, between(1, 100),
           "relative permittivity, of what lies between the cores at the frequencies of the pulse: polyethylene 2.3"}
           .usually(1.2, 6)),
    source{"speed of a wave in a dielectric", "VF = 1/√ε_r", "derived"}, [](auto permittivity) { return 1.0 / sqrt(permittivity); },
    remarks{"for a cable filled with one insulation; air beside the cores makes it faster, so a measured factor is better", "1 in air"});

// ---- insulation of parts ----------------------------------------------------------------------------------------------------

inline constexpr source leakage_source{"leakages of parallel parts add", "1/R = Σ 1/R_i", "derived"};

inline constexpr auto insulation_of_two = formula(
    out{"insulation_of_two", "R", unit::megaohm, "Insulation resistance of two circuits that are measured together."},
    in(arg{"first_mohm", "R_1", unit::megaohm, positive_to(1e9), "insulation resistance of one"}.usually(0.5, 500).read_by(reads::insulation),
       arg{"second_mohm", "R_2", unit::megaohm, positive_to(1e9), "insulation resistance of the other"}.usually(0.5, 500).read_by(reads::insulation)),
    leakage_source, [](auto first, auto second) { return first / (1.0 + first / second); },
    remarks{"exact to rounding; surface leakage at a common accessory belongs to both", "half where both are equal"});

inline constexpr auto unknown_branch_insulation = formula(
    out{"unknown_branch_insulation", "R_x", unit::megaohm, "Insulation resistance of one circuit from the whole and the rest without it."},
    in(arg{"total_mohm", "R_t", unit::megaohm, positive_to(1e9), "insulation resistance of all together"}.usually(0.1, 5).read_by(reads::insulation),
       arg{"rest_mohm", "R_r", unit::megaohm, positive_to(1e9), "insulation resistance of the rest, with the circuit taken off"}.usually(6, 500).read_by(
           reads::insulation)),
    leakage_source, [](auto total, auto rest) { return total * rest / (rest - total); },
    requires_that([](auto total, auto rest) { return total < rest; }, "the whole leaks more than the rest: taking the circuit off raises the reading"),
    remarks{"exact to rounding; where the reading hardly rises, the doubt of the meter decides: the circuit is then not the cause",
            "the whole's own value beside a perfect rest"});

inline constexpr auto insulation_of_length = formula(
    out{"insulation_of_length", "R", unit::megaohm, "Insulation resistance of another length of the same cable."},
    in(arg{"resistance_mohm", "R_1", unit::megaohm, between(0, 1e9), "insulation resistance of the length measured"}.usually(0.5, 500).read_by(
           reads::insulation),
       arg{"length_m", "L_1", unit::metre, positive_to(1e6), "length measured"}.usually(5, 500),
       arg{"wanted_length_m", "L_2", unit::metre, positive_to(1e6), "length wanted"}.usually(5, 500)),
    source{"insulation resistance is inversely proportional to length", "", "derived"},
    [](auto resistance, auto length, auto wanted) { return resistance * length / wanted; },
    remarks{"for leakage that is spread evenly; one wet joint does not follow it", "0 MΩ stays 0 MΩ"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(insulation_at_temperature_arguments, (resistance_mohm, temperature_c, wanted_c), (halving_k = T(10.0)));
inline constexpr auto insulation_at_temperature = formula(
    out{"insulation_at_temperature", "R", unit::megaohm, "Insulation resistance at another temperature, by the rule that it halves for each 10 K."},
    in<insulation_at_temperature_arguments>(
        arg{"resistance_mohm", "R_1", unit::megaohm, between(0, 1e9), "insulation resistance as measured"}.usually(0.5, 500).read_by(reads::insulation),
        arg{"temperature_c", "t_1", unit::celsius, between(-50, 200), "temperature at which it was measured"}.usually(0, 60).valid_in(between(-10, 90)),
        arg{"wanted_c", "t_2", unit::celsius, between(-50, 200), "temperature wanted"}.usually(0, 60).valid_in(between(-10, 90)),
        arg{"halving_k", "Δ", unit::kelvin, between(1, 100), "rise that halves it"}.usually(8, 15).otherwise(10)),
    source{"rule of thumb of the trade", "half for each 10 K", "common-practice"},
    [](auto resistance, auto measured_at, auto wanted, auto halving) {
      return resistance * exp(constant(0.69314718055994530942, unit::one, "ln 2") * ((measured_at - wanted) / halving));
    },
    remarks{"a rule of thumb, a factor of two either way over 20 K: materials differ; not a ground for passing a reading below its limit",
            "the reading itself at its own temperature"});

inline constexpr column test_voltage_columns[] = {{"U", unit::volt}};
inline constexpr choice_row test_voltage_rows[] = {{"selv_pelv", "SELV or PELV", {250}}, {"up_to_500_v", "up to and including 500 V", {500}}, {"above_500_v", "above 500 V", {1000}},
                                                   {"up_to_500_v_surge_device", "up to 500 V, with a surge protective device that cannot be taken off (recalled)", {250}}};
inline constexpr choice_table test_voltages{test_voltage_columns, test_voltage_rows};
inline constexpr auto insulation_test_voltage = formula(
    out{"insulation_test_voltage", "U", unit::volt, "Direct voltage with which the insulation of a circuit is tested."},
    in(choice{"circuit_kind", test_voltages, "kind of circuit"}), source{"IEC 60364-6", "Table 6.1"}, [](auto kind) { return kind[0]; },
    remarks{"printed values", "the least resistance belongs to the rulebook: check_insulation"});

inline constexpr auto polarisation_index = formula(
    out{"polarisation_index", "PI", unit::ratio, "Insulation resistance after ten minutes over that after one minute."},
    in(arg{"after_10_min_mohm", "R_10", unit::megaohm, between(0, 1e9), "insulation resistance after ten minutes under test voltage"}.usually(10, 5000).read_by(
           reads::insulation),
       arg{"after_1_min_mohm", "R_1", unit::megaohm, positive_to(1e9), "the same after one minute"}.usually(10, 5000).read_by(reads::insulation)),
    source{"practice with windings of machines", "PI = R_10/R_1", "memory"}, [](auto ten, auto one) { return ten / one; },
    remarks{"for windings of machines, where 2 and more is taken as good; it means nothing on a 10 m heating mat or on house wiring: there is next to no slow "
            "polarisation to see",
            "1 where the reading does not change"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

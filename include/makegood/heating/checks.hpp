// SPDX-License-Identifier: MIT
// Checks of heating: elements, insulation, power, floors and rails that are touched, rooms, protection, mirrors.
// Subject: heating.
#pragma once
#include "../verdict.hpp"
#include "../sensing/metals.hpp"
#include "elements.hpp"
#include "floor.hpp"
#include "mirror.hpp"
#include "rooms.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr column element_band_rule[] = {{"p_-", unit::percent}, {"p_+", unit::percent}};
MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_element_resistance_arguments, (resistance_ohm, rated_power_w, rated_voltage_v),
                                 (mats_count = T(1.0), cold_tail_ohm = T(0.0)));
inline constexpr auto check_element_resistance = check(
    out{"check_element_resistance", "R", unit::ohm, "Resistance of heating mats or an element as read, less the cold tail, against the band about the rated resistance."},
    in<check_element_resistance_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance as read at the end of the cold tail"}.usually(15, 600).read_by(reads::resistance),
        arg{"rated_power_w", "P_r", unit::watt, positive_to(1e7), "rated power of each mat"}.usually(100, 1500),
        arg{"rated_voltage_v", "U_r", unit::volt, positive_to(1e5), "rated voltage"}.usually(100, 250),
        arg{"mats_count", "n", unit::one, between(1, 1000), "number of equal mats in parallel, whole"}.usually(1, 1).otherwise(1),
        arg{"cold_tail_ohm", "R_t", unit::ohm, between(0, 1000), "resistance of the cold tail, out and back"}.usually(0, 0.5).otherwise(0)),
    rule_use{"element_resistance_band", "", element_band_rule}, comparator::within, source{"rule of the trade for heating mats and cables", "", "common-practice"},
    [](auto resistance, auto, auto, auto, auto tail) { return resistance - tail; },
    [](auto rule, auto, auto power, auto voltage, auto mats, auto) {
      auto rated = call(parallel_element_resistance, power, voltage, mats);
      return band{rated * (1.0 - percent(rule[0])), rated * (1.0 + percent(rule[1]))};
    },
    "Dead and isolated, controller and sensor taken off. The maker's band and the record made at installation come first; a bypass below some 5 % hides in the band.",
    requires_that([](auto, auto, auto, auto mats, auto) { return detail::is_whole(mats); }, "the number of mats is whole"),
    requires_that([](auto resistance, auto, auto, auto, auto tail) { return tail <= resistance; }, "the cold tail's resistance is not above the reading"));

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_element_resistance_warm_arguments, (resistance_ohm, rated_power_w, rated_voltage_v, alloy, temperature_c), (working_c = T(40.0)));
inline constexpr auto check_element_resistance_warm = check(
    out{"check_element_resistance_warm", "R", unit::ohm,
        "Resistance of a mat or element as read at one temperature against the band about its rated resistance, which belongs to the temperature at which it works."},
    in<check_element_resistance_warm_arguments>(
        arg{"resistance_ohm", "R", unit::ohm, between(0, 1e9), "resistance as read, cold tail taken off"}.usually(15, 600).read_by(reads::resistance),
        arg{"rated_power_w", "P_r", unit::watt, positive_to(1e7), "rated power"}.usually(100, 1500), arg{"rated_voltage_v", "U_r", unit::volt, positive_to(1e5), "rated voltage"}.usually(100, 250),
        choice{"alloy", sensing::alloys, "alloy of the element, or unknown"}, arg{"temperature_c", "t", unit::celsius, between(-50, 250), "temperature of the element when it was read"}.usually(5, 30).read_by(reads::temperature),
        arg{"working_c", "t_w", unit::celsius, between(-50, 250), "temperature of the element when it works, to which the rating belongs"}.usually(30, 60).otherwise(40)),
    rule_use{"element_resistance_band", "", element_band_rule}, comparator::within, source{"rule of the trade for heating mats and cables", "with the alloy's temperature coefficient and its spread", "common-practice"},
    [](auto resistance, auto, auto, auto, auto, auto) { return resistance; },
    [](auto rule, auto, auto power, auto voltage, auto alloy, auto t, auto working) {
      auto rated = call(element_resistance, power, voltage);
      auto cold = rated * (1.0 + alloy[0] * (t - constant(20.0, unit::celsius))) / (1.0 + alloy[0] * (working - constant(20.0, unit::celsius)));
      auto spread = let("s", unit::one, alloy[1] * fabs(t - working));
      return band{cold * (1.0 - percent(rule[0]) - spread), cold * (1.0 + percent(rule[1]) + spread)};
    },
    "Dead and isolated, controller and sensor taken off. A mat of little power is often made of an alloy that reads some per cent lower when cold: the maker's band at 20 °C comes first.",
    requires_that([](auto, auto, auto, auto alloy, auto t, auto working) { return 1.0 + alloy[0] * (t - 20.0) > 0.0 && 1.0 + alloy[0] * (working - 20.0) > 0.0; },
                  "the straight line of resistance is above zero at both temperatures"));

inline constexpr column element_insulation_rule[] = {{"R_min", unit::megaohm}};
inline constexpr choice_row element_supply_rows[] = {{"selv_pelv", "SELV or PELV, tested with 250 V d.c."}, {"up_to_500_v", "mains, tested with 500 V d.c."}};
inline constexpr choice_table element_supplies{{}, element_supply_rows};
inline constexpr auto check_element_insulation = check(
    out{"check_element_insulation", "R", unit::megaohm, "Insulation of a heating element from its screen or from earth, against the rulebook's least value."},
    in(arg{"resistance_mohm", "R", unit::megaohm, between(0, 1e9), "insulation resistance, line and neutral joined, to the screen"}.usually(0.1, 200).read_by(reads::insulation),
       choice{"supply", element_supplies, "supply of the element, which sets the test voltage"}.otherwise("up_to_500_v")),
    rule_use{"insulation_minimum", "supply", element_insulation_rule}, comparator::at_least, source{"IEC 60364-6", "Table 6.1"}, [](auto resistance, auto) { return resistance; }, [](auto rule, auto, auto) { return rule[0]; },
    "Isolate and prove dead; take the controller and the floor probe off first: the test voltage damages them, and through them it reads low. Join line and neutral of the element. "
    "A new mat reads tens of megohms and more: a reading near the limit is damp or damage. A mat without a screen shows nothing of its insulation on a dry floor.");

inline constexpr auto check_power_input = check(
    out{"check_power_input", "P", unit::watt, "Power that an appliance takes at its rated voltage, hot, against the deviation from its rating that is permitted upwards."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e7), "power as measured at the rated voltage"}.usually(20, 3000), arg{"rated_power_w", "P_r", unit::watt, positive_to(1e6), "rated power input"}.usually(30, 3000),
       choice{"appliance", appliances, "kind of appliance"}.otherwise("heating")),
    rule_use{"power_input"}, comparator::at_most, power_input_table, [](auto power, auto, auto) { return power; }, [](auto, auto, auto rated, auto appliance) { return call(highest_power_input, appliance, rated); },
    "At the rated voltage and when it is hot. At another voltage bring the power there first (power_at_voltage). Too little power is a broken or missing element.");

inline constexpr column power_density_rule[] = {{"q_max", unit::watt_per_square_metre}};
inline constexpr choice_row finish_rows[] = {{"tile", "tile or stone on screed or insulating board"}, {"timber", "timber, laminate, vinyl or carpet"}};
inline constexpr choice_table finishes{{}, finish_rows};
inline constexpr auto check_power_density = check(
    out{"check_power_density", "q", unit::watt_per_square_metre, "Power of a mat or cable for each square metre against what the floor's finish bears by the rule of the trade."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e7), "heating power"}.usually(100, 1500), arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "area that it covers"}.usually(1, 10).read_by(reads::length), choice{"finish", finishes, "finish of the floor"}),
    rule_use{"power_density", "finish", power_density_rule}, comparator::at_most, source{"rule of the trade for heated floors", "", "common-practice"}, [](auto power, auto area, auto) { return call(power_density, power, area); },
    [](auto rule, auto, auto, auto) { return rule[0]; },
    "The makers of the mat and of the finish come first: many finishes ask for 100 W/m² and a limit of 27 °C. A floor gives off 100 W/m² at 9 K above the room: whatever is more relies on the floor probe.");

inline constexpr column floor_temperature_rule[] = {{"t_max", unit::celsius}};
inline constexpr choice_row floor_use_rows[] = {{"occupied", "where people stand and sit"}, {"edge", "strip along an outer wall, up to 1 m wide"}, {"bathroom", "bathroom at 24 °C"}, {"timber", "timber, laminate or resilient finish"}};
inline constexpr choice_table floor_uses{{}, floor_use_rows};
inline constexpr auto check_floor_temperature = check(
    out{"check_floor_temperature", "t_F", unit::celsius, "Temperature of a heated floor's surface against the highest for its use."},
    in(arg{"surface_c", "t_F", unit::celsius, between(-50, 200), "temperature of the surface"}.usually(20, 40).read_by(reads::temperature), choice{"use", floor_uses, "use or finish of the floor"}),
    rule_use{"floor_temperature", "use", floor_temperature_rule}, comparator::at_most, source{"EN 1264-3 / ISO 11855", "limits of floor surface temperature"}, [](auto surface, auto) { return surface; },
    [](auto rule, auto, auto) { return rule[0]; },
    "Whoever cannot move away (small children, people in bed, people who do not feel heat) is burnt by less: 43 °C for hours is enough. A mat, cushion or furniture on the floor makes it hotter under it.");

inline constexpr column covering_rule[] = {{"R_max", unit::square_metre_kelvin_per_watt}};
inline constexpr auto check_floor_covering = check(
    out{"check_floor_covering", "R_B", unit::square_metre_kelvin_per_watt, "Thermal resistance of all that lies on a heated floor against the highest at which it still heats."},
    in(arg{"resistance_m2k_per_w", "R_B", unit::square_metre_kelvin_per_watt, between(0, 10), "resistance of covering and underlay together; 1 tog is 0.1 m²·K/W"}.usually(0.01, 0.3)), rule_use{"floor_covering", "", covering_rule}, comparator::at_most,
    source{"EN 1264-2", "thermal resistance of the covering", "memory"}, [](auto resistance) { return resistance; }, [](auto rule, auto) { return rule[0]; },
    "A rug or a bean bag adds to it: the element under it runs hotter although the room stays cold.");

inline constexpr auto check_touch_temperature = check(
    out{"check_touch_temperature", "t_s", unit::celsius, "Temperature of a surface that is touched against the threshold below which it does not burn."},
    in(arg{"surface_c", "t_s", unit::celsius, between(-50, 500), "temperature of the surface"}.usually(30, 90).read_by(reads::temperature), choice{"surface", burn_surfaces, "what the surface is made of"}, choice{"contact", contacts, "for how long it is touched"}),
    rule_use{"touch_temperature"}, comparator::at_most, source{"ISO 13732-1:2006", "burn thresholds", "memory"}, [](auto surface, auto, auto) { return surface; },
    [](auto, auto, auto surface, auto contact) { return call(burn_threshold, surface, contact); },
    "Thresholds of healthy adults. Children, old and disabled people react late: take the next longer time, or 43 °C. A towel over a rail makes it hotter.");

inline constexpr column vulnerable_rule[] = {{"t_max", unit::celsius}};
inline constexpr auto check_vulnerable_surface = check(
    out{"check_vulnerable_surface", "t_s", unit::celsius, "Temperature of a surface within reach of vulnerable people against the highest for them."},
    in(arg{"surface_c", "t_s", unit::celsius, between(-50, 500), "temperature of the surface at full output"}.usually(30, 70).read_by(reads::temperature)), rule_use{"vulnerable_surface", "", vulnerable_rule}, comparator::at_most,
    source{"HSE, Scalding and burning (health services web guidance)", "risk of burn injuries"}, [](auto surface) { return surface; }, [](auto rule, auto) { return rule[0]; },
    "Guidance for health and social care; in a dwelling the measure for small children, frail people and whoever cannot move away. Guard it, or lower its temperature.");

inline constexpr auto check_room_heating = check(
    out{"check_room_heating", "P", unit::watt, "Power of all heaters of a room, as it comes into the room, against the room's steady heat loss."},
    in(arg{"power_w", "P", unit::watt, between(0, 1e6), "power of mats (their part upwards) and rails together"}.usually(200, 3000), arg{"loss_w", "Φ", unit::watt, between(0, 1e6), "steady heat loss at the coldest that counts"}.usually(100, 3000)), rule_use{"room_heating"},
    comparator::at_least, en_12831, [](auto power, auto) { return power; }, [](auto, auto, auto loss) { return loss; },
    "It holds the temperature, no more: heating up takes more power or more time. Towels on a rail take up to half its output away.");

inline constexpr column heating_rcd_rule[] = {{"I_Δn", unit::milliampere}};
inline constexpr auto check_heating_rcd = check(
    out{"check_heating_rcd", "I_Δn", unit::milliampere, "Rated residual current of the device before an electric floor or ceiling heating against the highest permitted."},
    in(arg{"residual_current_ma", "I_Δn", unit::milliampere, positive_to(1e5), "rated residual current"}.usually(10, 300)), rule_use{"heating_rcd", "", heating_rcd_rule}, comparator::at_most,
    source{"IEC 60364-7-753", "753.411.3.2", "memory"}, [](auto residual) { return residual; }, [](auto rule, auto) { return rule[0]; },
    "The screen or mesh of every unit goes to earth, and its continuity is measured; a circuit without a protective conductor at the floor is reported. The fuse of the connection unit covers the current of all mats.");

inline constexpr column mesh_rule[] = {{"s_max", unit::millimetre}};
inline constexpr choice_row heated_surface_rows[] = {{"floor", "floor or ceiling heating"}, {"wall", "wall heating"}};
inline constexpr choice_table heated_surfaces{{}, heated_surface_rows};
inline constexpr auto check_screen_mesh = check(
    out{"check_screen_mesh", "s", unit::millimetre, "Spacing of an earthed mesh over heating units that have no earthed screen of their own."},
    in(arg{"spacing_mm", "s", unit::millimetre, positive_to(1e4), "spacing of the mesh"}.usually(1, 100).read_by(reads::length), choice{"heated_surface", heated_surfaces, "where the heating lies"}), rule_use{"heating_mesh", "heated_surface", mesh_rule}, comparator::at_most,
    source{"IEC 60364-7-753:2014", "foreword, significant changes"}, [](auto spacing, auto) { return spacing; }, [](auto rule, auto, auto) { return rule[0]; },
    "The mesh goes to the protective conductor. Before drilling into a heated wall or floor: isolate, and find the element first.");

inline constexpr column pad_rule[] = {{"p_-", unit::percent}, {"p_+", unit::percent}};
MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(check_mirror_pad_arguments, (rise_k, power_w, area_m2, thickness_mm, time_s), (coefficient_w_per_m2_k = T(10.0)));
inline constexpr auto check_mirror_pad = check(
    out{"check_mirror_pad", "ΔT", unit::kelvin, "Rise of a mirror's temperature over its pad as seen, against what the whole pad would make."},
    in<check_mirror_pad_arguments>(arg{"rise_k", "ΔT", unit::kelvin, between(-20, 200), "glass over the pad now, less the glass before it was switched on"}.usually(0, 20).read_by(reads::temperature),
                                   arg{"power_w", "P", unit::watt, positive_to(1e4), "rated power of the pad"}.usually(20, 200), detail::pane_area, detail::pane_thickness,
                                   arg{"time_s", "t", unit::second, positive_to(1e6), "time since it was switched on"}.usually(120, 3600), detail::front_coefficient.otherwise(10.0)),
    rule_use{"pad_rise", "", pad_rule}, comparator::within, source{"rule of the trade for mirror pads", "rise seen against rise expected", "common-practice"}, [](auto rise, auto, auto, auto, auto, auto) { return rise; },
    [](auto rule, auto, auto power, auto area, auto thickness, auto time, auto coefficient) {
      auto expected = call(pad_temperature_rise, power, area, thickness, coefficient, time);
      return band{expected * (1.0 - percent(rule[0])), expected * (1.0 + percent(rule[1]))};
    },
    "No rise: no supply, or an open pad. Half of it over half the glass: a part is dead. Isolate before the mirror is taken down; an infrared thermometer sees the room in bare glass: put tape on it.");

}  // namespace heating
}  // namespace v1
}  // namespace makegood

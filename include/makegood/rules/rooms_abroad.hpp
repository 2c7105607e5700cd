// SPDX-License-Identifier: MIT
// Rulebooks: zones of bathrooms in France and Germany, additional protection in France, and the installation zones of walls in Germany, as far as they were read or recalled.
// Numbers only; what may stand in the zones there was not read and has no rows.
#pragma once
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace rules {

inline constexpr rule nfc15100_2015_rows[] = {
    {"bathroom_zone_height", "", comparator::at_most, {2.25, 1.0}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "2.25 m above the bottom of the bath or tray"},
    {"bathroom_zone1_radius", "", comparator::at_most, {1.20}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "without a tray 1.20 m from the reference point"},
    {"bathroom_zone2_width", "", comparator::at_most, {0.60}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "0.60 m"},
    {"bathroom_zone0_height", "", comparator::at_most, {0.10}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "without a tray 0.10 m above the highest point of the shower's floor"},
    {"bathroom_limited_by", "low_partition", comparator::at_least, {0.0}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "only fixed partitions of full height limit the volumes"},
    {"bathroom_limited_by", "door", comparator::at_least, {0.0}, {"NF C 15-100, amendment A5 (2015)", "701, in a trade journal's summary", "seen"}, "only fixed partitions of full height limit the volumes"},
    {"additional_protection", "socket_outlet", comparator::at_most, {30.0}, {"NF C 15-100, amendment A5 (2015)", "all circuits of a dwelling", "memory"}, "30 mA for all circuits of a dwelling"},
    {"additional_protection", "lighting_dwelling", comparator::at_most, {30.0}, {"NF C 15-100, amendment A5 (2015)", "all circuits of a dwelling", "memory"}, "30 mA for all circuits of a dwelling"},
    {"additional_protection", "bathroom", comparator::at_most, {30.0}, {"NF C 15-100, amendment A5 (2015)", "all circuits of a dwelling", "memory"}, "30 mA for all circuits of a dwelling"},
};
inline constexpr rule_table nfc15100_2015{"nfc15100:2015", "Installations à basse tension, bathrooms", "France", "NF C 15-100 with amendment A5", "2015-11-27", nfc15100_2015_rows};

inline constexpr rule dinvde0100_701_2008_rows[] = {
    {"bathroom_zone_height", "", comparator::at_most, {2.25, 0.0}, {"DIN VDE 0100-701:2008-10", "zone 1, as summarised on public pages", "seen"}, "up to 2.25 m above the floor"},
    {"bathroom_zone1_radius", "", comparator::at_most, {1.20}, {"DIN VDE 0100-701:2008-10", "taut string, as summarised on public pages", "seen"}, "without a tray 1.20 m from the outlet, as a taut string runs"},
    {"bathroom_zone2_width", "", comparator::at_most, {0.60}, {"DIN VDE 0100-701:2008-10", "zone 2", "memory"}, "0.60 m"},
    {"bathroom_zone0_height", "", comparator::at_most, {0.05}, {"DIN VDE 0100-701:2008-10", "zone 0 without a tray, as said on a shop's page; elsewhere 0.10 m", "seen"}, "without a tray 0.05 m high"},
    {"bathroom_cable_depth", "", comparator::at_least, {0.06}, {"licht.de glossary, DIN VDE 0100-701", "entry", "seen"}, "6 cm of wall left before cables of other circuits behind the zones"},
    {"bathroom_selv", "zone_0", comparator::at_most, {12.0, 30.0}, {"licht.de glossary, DIN VDE 0100-701", "entry", "seen"}, "12 V a.c., 30 V d.c."},
    {"bathroom_selv", "zone_1", comparator::at_most, {25.0, 60.0}, {"licht.de glossary, DIN VDE 0100-701", "entry, the d.c. value for luminaires", "seen"}, "25 V a.c., 60 V d.c."},
    {"bathroom_equipment", "luminaire", comparator::at_least, {5.0, 5.0, 1.0, 1.0}, {"licht.de glossary, DIN VDE 0100-701", "entry; the newer edition lets some at 230 V into zone 1", "seen"}, "SELV in zones 0 and 1"},
};
inline constexpr rule_table dinvde0100_701_2008{"dinvde0100-701:2008", "Errichten von Niederspannungsanlagen, bathrooms", "Germany", "DIN VDE 0100-701:2008-10", "2008-10-01", dinvde0100_701_2008_rows};

inline constexpr rule din18015_3_rows[] = {
    // mm: from which distance of the edge, how wide
    {"cable_zone", "top", comparator::at_most, {150.0, 300.0}, {"DIN 18015-3", "installation zones", "memory"}, "a band of 300 mm, from 150 mm below the ceiling"},
    {"cable_zone", "bottom", comparator::at_most, {150.0, 300.0}, {"DIN 18015-3", "installation zones", "memory"}, "a band of 300 mm, from 150 mm above the floor"},
    {"cable_zone", "internal_corner", comparator::at_most, {100.0, 200.0}, {"DIN 18015-3", "installation zones", "memory"}, "a band of 200 mm, from 100 mm off the corner"},
    {"cable_zone", "external_corner", comparator::at_most, {100.0, 200.0}, {"DIN 18015-3", "installation zones", "memory"}, "a band of 200 mm, from 100 mm off the edge"},
    {"cable_zone", "accessory_vertical", comparator::at_most, {0.0}, {"DIN 18015-3", "outlets outside the zones are fed from the nearest one straight up or down", "memory"}, "straight up or down to the nearest band"},
};
inline constexpr rule_table din18015_3{"din18015-3", "Installation zones of walls in dwellings", "Germany", "DIN 18015-3", "2016-09-01", din18015_3_rows};

}  // namespace rules
}  // namespace v1
}  // namespace makegood

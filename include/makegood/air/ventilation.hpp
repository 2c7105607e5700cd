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

}  // namespace air
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Zones from C++: strings round corners and over low partitions, a room used for many places, equipment, cable zones and a hole.
// The brute force over random rooms is tests/python/test_zones.py.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/rules/all.hpp>
#include <makegood/setting_out/cable_zones.hpp>
#include <makegood/setting_out/zone_checks.hpp>
#include <string>

using namespace makegood;
using namespace makegood::setting_out;

namespace {
wet_room plain_room() {
  wet_room r;
  r.outline = {{0, 0}, {4, 0}, {4, 3}, {0, 3}};
  r.ceiling_m = 2.4;
  wet_fixture bath;
  bath.name = "bath";
  bath.outline = {{0, 0}, {1.7, 0}, {1.7, 0.7}, {0, 0.7}};
  bath.rim_m = 0.55;
  r.fixtures = {bath};
  return r;
}
room_partition wall(plan_point a, plan_point b) {
  room_partition p;
  p.line = {a, b};
  return p;
}
}  // namespace

TEST_CASE("zones: a string bends round the end of a wall") {
  auto room = plain_room();
  room.partitions = {wall({1.7, 0.0}, {1.7, 1.1})};
  const bathroom b("bathroom_zone", room, rules::bs7671_2018_a2);
  const auto a = b.at({1.9, 0.9, 1.0}, 0.0);
  CHECK(a.zone == outside_zones);
  CHECK(a.fixtures[0].string_m == doctest::Approx(0.4 + std::hypot(0.2, 0.2)).epsilon(1e-12));
  CHECK(a.fixtures[0].path.size() == 3);  // corner of the bath, end of the wall, the point
  CHECK(b.at({1.7, 1.25, 1.0}, 0.0).zone == 2);
  CHECK(b.at({1.0, 0.3, 1.0}, 0.0).zone == 1);
  CHECK(b.at({1.0, 0.3, 0.5}, 0.0).zone == 0);
}

TEST_CASE("zones: plans turned the other way round, closed twice, give the same") {
  auto room = plain_room();
  room.outline = {{0, 3}, {4, 3}, {4, 0}, {0, 0}, {0, 3}};
  room.fixtures[0].outline = {{0, 0.7}, {1.7, 0.7}, {1.7, 0}, {0, 0}};
  const bathroom a("bathroom_zone", room, rules::iec60364), b("bathroom_zone", plain_room(), rules::iec60364);
  for (const double x : {1.75, 2.0, 2.29, 2.31, 3.0}) {
    CHECK(a.at({x, 0.9, 1.2}).zone == b.at({x, 0.9, 1.2}).zone);
    CHECK(a.at({x, 0.9, 1.2}).fixtures[0].string_m == b.at({x, 0.9, 1.2}).fixtures[0].string_m);
  }
}

TEST_CASE("zones: over a low screen") {
  auto room = plain_room();
  room.partitions = {wall({1.7, 0.0}, {1.7, 1.5})};
  room.partitions[0].top_m = 1.4;
  const bathroom b("bathroom_zone", room, rules::bs7671_2018_a2);
  CHECK(b.at({1.9, 0.1, 1.2}).fixtures[0].string_m == doctest::Approx(std::hypot(0.2, 0.2)).epsilon(1e-9));
  CHECK(b.at({1.9, 0.1, 1.4}).fixtures[0].string_m == doctest::Approx(0.2));
  CHECK(b.at({1.9, 0.1, 1.2}).fixtures[0].passes == "over partitions[0]");
}

TEST_CASE("zones: what is wrong is named") {
  const auto refused = [](const wet_room& r) {
    try {
      const bathroom b("bathroom_zone", r, rules::bs7671_2018_a2);
    } catch (const error& e) {
      return std::string(e.what());
    }
    return std::string();
  };
  auto room = plain_room();
  room.outline = {{0, 0}, {4, 0}, {0, 3}, {4, 3}};
  CHECK(refused(room) == "bathroom_zone: room outline: edge 2 from (4, 0) to (0, 3) and edge 4 from (4, 3) to (0, 0) cross or touch");
  room = plain_room();
  room.partitions = {wall({2, 1}, {3, 2}), wall({2, 2}, {3, 1})};
  CHECK(refused(room).find("partitions[0] and partitions[1] cross") != std::string::npos);
  room.partitions = {wall({2, 1}, {no_number, 2})};
  CHECK(refused(room).find("is not between") != std::string::npos);
  room.partitions = {};
  const bathroom b("bathroom_zone", room, rules::bs7671_2018_a2);
  CHECK_THROWS_AS(b.at({no_number, 1, 1}), range_error);
  CHECK_THROWS_AS(b.at({1, 1, 1}, -1.0), range_error);
  CHECK_THROWS_AS(b.at({1, 1, 3}), range_error);
}

TEST_CASE("zones: equipment, and codes for water") {
  CHECK(ip_covers(ip_second_numerals("x", "IP67"), 4));
  CHECK_FALSE(ip_covers(ip_second_numerals("x", "IPX7"), 5));
  CHECK(ip_covers(ip_second_numerals("x", "IPX5/IPX7"), 5));
  CHECK(ip_second_numerals("x", "IP2X").empty());
  CHECK_THROWS_AS(ip_second_numerals("x", "IPX"), range_error);
  CHECK_THROWS_AS(ip_second_numerals("x", "IPX44z"), range_error);
  zone_equipment e;
  e.kind = "fan", e.ip = "IPX4", e.fixed = e.maker_suits = e.bonding = known::yes, e.residual_current_ma = 30;
  CHECK(check_equipment_in_zone(e, {1, false, 1}, rules::bs7671_2018_a2).outcome == outcome::pass);
  e.ip.clear();
  const auto r = check_equipment_in_zone(e, {1, false, 1}, rules::bs7671_2018_a2);
  CHECK(r.outcome == outcome::undecided);
  CHECK(r.reason == reason::needs_makers_figure);
  e.kind = "switch";
  CHECK(check_equipment_in_zone(e, {outside_zones, true, 2}, rules::bs7671_2018_a2).outcome == outcome::fail);
  CHECK(check_equipment_in_zone(e, {outside_zones, false, outside_zones}, rulebook()).reason == reason::no_rule_in_book);
}

TEST_CASE("zones: a hole stays not proved clear") {
  const cable_wall w{3000, 2400, 150};
  const std::vector<wall_accessory> one{{"switch", 1500, 1200, 86, 86}};
  const wall_hole h{800, 800, 8, 1, 40};
  const auto alone = check_hole_outside_cable_zones(h, w, one, rules::bs7671_2018_a2);
  CHECK(alone.rule == outcome::pass);
  CHECK(alone.outcome == outcome::undecided);
  CHECK(alone.findings.back().starts_with(not_proved_clear));
  CHECK(check_hole_outside_cable_zones(h, w, one, rules::bs7671_2018_a2, {detector_reading::nothing_found, true}).outcome == outcome::pass);
  CHECK(check_hole_outside_cable_zones(h, w, one, rules::bs7671_2018_a2, {detector_reading::found, true}).outcome == outcome::fail);
  CHECK(check_hole_outside_cable_zones({1500, 800, 8, 1, 40}, w, one, rules::bs7671_2018_a2, {detector_reading::nothing_found, true}).outcome == outcome::fail);
  CHECK_THROWS_AS(check_hole_outside_cable_zones({1500, 800, no_number, 1, 40}, w, one, rules::bs7671_2018_a2), range_error);
}

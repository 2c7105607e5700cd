// SPDX-License-Identifier: MIT
// Wirings of a switched point: small cases by hand. The exhaustive comparison is in tests/python/test_switching.py.
#include <doctest/doctest.h>
#include <algorithm>
#include <makegood/electrical/switching.hpp>
#include <set>

using namespace makegood;
using namespace makegood::electrical;

namespace {
std::set<std::string> keys(const switched_feed_result& r, std::size_t conductor) {
  std::set<std::string> all;
  for (const auto& w : r.wirings) all.insert(r.roles[w[conductor]].key);
  return all;
}
point_reading voltage(int from, seen_state seen, std::vector<int> positions = {}, supply_state supply = supply_state::on) {
  point_reading r;
  r.from = from;
  r.seen = seen;
  r.positions = std::move(positions);
  r.supply = supply;
  r.high_impedance = false;
  return r;
}
}  // namespace

TEST_CASE("switching: one conductor, one switch") {
  accessory_point p{{"a"}, {{"S", switch_kind::one_way}}, {voltage(0, seen_state::live, {1}), voltage(0, seen_state::dead, {0})}};
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"switched_line:S"});
  p.switches[0].kind = switch_kind::pull_cord;  // nobody knows which position is closed
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"switched_line:S:2"});
  p.readings = {voltage(0, seen_state::live, {-1}), voltage(0, seen_state::dead, {-1})};  // position not known
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"switched_line:S:1", "switched_line:S:2"});
  p.readings = {voltage(0, seen_state::live, {}, supply_state::isolated)};
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"other_line"});
  p.readings = {voltage(0, seen_state::live, {}, supply_state::all_isolated)};
  CHECK(switched_feed_logic(p).wirings.empty());
}

TEST_CASE("switching: dead is dead in four ways, and one reading parts them best") {
  accessory_point p{{"a"}, {}, {voltage(0, seen_state::dead)}};
  const auto r = switched_feed_logic(p);
  CHECK(keys(r, 0) == std::set<std::string>{"neutral", "other_neutral", "earth", "unused"});
  REQUIRE_FALSE(r.next.empty());
  CHECK(r.next[0].what.continuity());
  CHECK(r.next[0].expected_remaining < 4.0);
}

TEST_CASE("switching: intermediate switches") {
  // T1 feeds, I crosses, T2 takes: a strapper beyond I is live with an even number of T1 and I at "2"
  accessory_point p{{"a"}, {{"T1", switch_kind::two_way}, {"T2", switch_kind::two_way}, {"I", switch_kind::intermediate}}, {}};
  for (int s = 0; s < 8; ++s) {
    const int t1 = s & 1, t2 = s >> 1 & 1, i = s >> 2;
    p.readings.push_back(voltage(0, (t1 ^ i) ? seen_state::dead : seen_state::live, {t1, t2, i}));
  }
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"strapper:T1:I:1"});
  p.readings.clear();
  for (int s = 0; s < 8; ++s) {
    const int t1 = s & 1, t2 = s >> 1 & 1, i = s >> 2;
    p.readings.push_back(voltage(0, (t1 ^ t2 ^ i) ? seen_state::live : seen_state::dead, {t1, t2, i}));
  }
  CHECK(keys(switched_feed_logic(p), 0) == std::set<std::string>{"two_way_line:1"});
}

TEST_CASE("switching: a contradiction is a finding with the readings that make it") {
  accessory_point p{{"a"}, {}, {voltage(0, seen_state::dead, {}, supply_state::all_isolated), voltage(0, seen_state::live), voltage(0, seen_state::dead)}};
  const auto r = switched_feed_logic(p);
  CHECK(r.wirings.empty());
  CHECK(r.conflict == std::vector<std::size_t>{1, 2});
  CHECK(r.suspects == std::vector<std::size_t>{1, 2});
}

TEST_CASE("switching: refuses what it cannot enumerate") {
  CHECK_THROWS_AS(switched_feed_logic({{}, {}, {}}), range_error);
  CHECK_THROWS_AS(switched_feed_logic({{"a", "a"}, {}, {}}), range_error);
  CHECK_THROWS_AS(switched_feed_logic({{"a"}, {{"I", switch_kind::intermediate}}, {}}), range_error);
  CHECK_THROWS_AS(switched_feed_logic({{"a"}, {}, {voltage(3, seen_state::live)}}), range_error);
  CHECK_THROWS_AS(switched_feed_logic({{"a"}, {}, {voltage(0, seen_state::live, {1})}}), range_error);
  CHECK_THROWS_AS(switched_feed_logic({{"a"}, {{"S"}}, {voltage(0, seen_state::live, {7})}}), range_error);
  const auto many = switched_feed_logic({{"a", "b", "c", "d", "e", "f", "g", "h"}, {{"S"}}, {}});
  CHECK_FALSE(many.complete);
}

// SPDX-License-Identifier: MIT
// Readings still needed: joined, dead before live, conditions brought about once, most settled per minute.
#include <doctest/doctest.h>
#include <makegood/job/inference.hpp>
#include <makegood/job/readings_needed.hpp>

using namespace makegood;
using namespace makegood::job;

namespace {
std::vector<std::string> order_of(const readings_plan& p) {
  std::vector<std::string> s;
  for (const auto& r : p.readings) s.push_back(r.is.what);
  return s;
}
}  // namespace

TEST_CASE("readings needed: what several findings ask for is one reading that settles them all") {
  const auto p = readings_needed({{"insulation", "Lights", "insulation_mohm", {7}, 3.0, false, {"isolated and proved dead"}, "Lamps out."},
                                  {"insulation of the circuit", "Lights", "insulation_mohm", {2, 4}, 5.0, false, {"isolated and proved dead", "loads disconnected"}, ""},
                                  {"insulation", "Sockets", "insulation_mohm", {4}, 3.0, false, {"isolated and proved dead"}, ""},
                                  {"loop impedance", "Lights", "loop_ohm", {5}, 2.0, true, {}, ""}});
  REQUIRE(p.readings.size() == 3);
  CHECK(order_of(p) == std::vector<std::string>{"insulation", "insulation of the circuit", "loop impedance"});
  const auto& joined = p.readings[1].is;
  CHECK(joined.what == "insulation of the circuit");  // of the earliest finding
  CHECK(joined.settles == std::vector<std::size_t>{2, 4, 7});
  CHECK(joined.minutes == 5.0);
  CHECK(joined.caution == "Lamps out.");
  CHECK(joined.first == std::vector<std::string>{"isolated and proved dead", "loads disconnected"});
  CHECK(p.readings[0].bring == std::vector<std::string>{"isolated and proved dead"});
  CHECK(p.readings[1].bring == std::vector<std::string>{"loads disconnected"});  // the other one stands by now
  CHECK(p.minutes == 10.0);
  CHECK(p.text == std::vector<std::string>{"First: isolated and proved dead (for 2 readings).", "Read insulation of \"Sockets\"; it settles finding 4 (3 min).", "First: loads disconnected.",
                                           "Read insulation of the circuit of \"Lights\"; it settles findings 2, 4 and 7 (5 min). Lamps out.",
                                           "Live: read loop impedance of \"Lights\"; it settles finding 5 (2 min)."});
}

TEST_CASE("readings needed: a dead and a live reading of one name are two; without an argument the wording counts") {
  CHECK(readings_needed({{"a", "x", "v", {1}, 1.0, false, {}, ""}, {"a", "x", "v", {2}, 1.0, true, {}, ""}}).readings.size() == 2);
  CHECK(readings_needed({{"a", "x", "", {1}, 1.0, false, {}, ""}, {"b", "x", "", {2}, 1.0, false, {}, ""}}).readings.size() == 2);
  CHECK(readings_needed({{"a", "x", "", {1}, 1.0, false, {}, ""}, {"a", "x", "", {2}, 1.0, false, {}, ""}}).readings.size() == 1);
  CHECK(readings_needed({{"a", "x", "v", {1}, 1.0, false, {}, ""}, {"a", "y", "v", {2}, 1.0, false, {}, ""}}).readings.size() == 2);
}

TEST_CASE("readings needed: the condition that opens the way to most per minute first; then most settled per minute") {
  const auto p = readings_needed({{"one", "", "", {1}, 2.0, false, {"cover off"}, ""},
                                  {"two", "", "", {2, 3}, 2.0, false, {"loads out"}, ""},
                                  {"three", "", "", {4, 5, 6}, 2.0, false, {"loads out"}, ""},
                                  {"at once", "", "", {7}, 60.0, false, {"dead"}, ""},
                                  {"live", "", "", {8, 9, 10, 11}, 1.0, true, {}, ""}},
                                 {"dead"});
  CHECK(order_of(p) == std::vector<std::string>{"at once", "three", "two", "one", "live"});
  CHECK(readings_needed({}).readings.empty());
}

TEST_CASE("readings needed: nothing lost, nothing twice, conditions stand, dead before live, in any order of the input") {
  const auto draw = [](std::uint64_t seed, std::uint64_t a, std::uint64_t b) { return job::detail::counted_uniform(seed, a, b); };
  const char* conditions[] = {"dead", "loads out", "cover off"};
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    std::vector<reading_needed> asked;
    const auto n = static_cast<std::size_t>(1 + 9 * draw(seed, 0, 0));
    for (std::uint64_t i = 0; i < n; ++i) {
      reading_needed r;
      r.argument = std::string(1, static_cast<char>('a' + static_cast<int>(4 * draw(seed, 1, i))));
      r.what = "reading " + r.argument + (draw(seed, 2, i) < 0.5 ? "" : " again");
      r.subject = draw(seed, 3, i) < 0.5 ? "x" : "y";
      r.settles = {static_cast<std::size_t>(1 + 20 * draw(seed, 4, i)), static_cast<std::size_t>(1 + 20 * draw(seed, 5, i))};
      r.minutes = 1.0 + static_cast<int>(5 * draw(seed, 6, i));
      r.live = draw(seed, 7, i) < 0.3;
      for (std::uint64_t c = 0; c < 3; ++c)
        if (draw(seed, 8 + c, i) < 0.4) r.first.push_back(conditions[c]);
      asked.push_back(r);
    }
    const auto p = readings_needed(asked);
    std::vector<std::string> standing;
    bool live = false;
    for (const auto& r : p.readings) {
      CHECK((r.is.live || !live));
      live = r.is.live;
      for (const auto& b : r.bring) {
        CHECK(std::find(standing.begin(), standing.end(), b) == standing.end());
        standing.push_back(b);
      }
      for (const auto& f : r.is.first) CHECK(std::find(standing.begin(), standing.end(), f) != standing.end());
    }
    for (const auto& a : asked) {  // each is served by exactly one, with all that it asks for
      int found = 0;
      for (const auto& r : p.readings) {
        if (r.is.subject != a.subject || r.is.argument != a.argument || r.is.live != a.live) continue;
        ++found;
        for (const auto s : a.settles) CHECK(std::count(r.is.settles.begin(), r.is.settles.end(), s) == 1);
        for (const auto& f : a.first) CHECK(std::count(r.is.first.begin(), r.is.first.end(), f) == 1);
        CHECK(r.is.minutes >= a.minutes);
      }
      CHECK(found == 1);
    }
    auto other = asked;
    std::reverse(other.begin(), other.end());
    CHECK(readings_needed(other).text == p.text);
  }
}

TEST_CASE("readings needed: what is refused") {
  CHECK_THROWS_AS((void)readings_needed({{"", "x", "v", {1}, 1.0, false, {}, ""}}), range_error);
  CHECK_THROWS_AS((void)readings_needed({{"a", "x", "v", {1}, -1.0, false, {}, ""}}), range_error);
  CHECK_THROWS_AS((void)readings_needed({{"a", "x", "v", {1}, no_number, false, {}, ""}}), range_error);
}

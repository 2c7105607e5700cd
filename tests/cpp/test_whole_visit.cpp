// SPDX-License-Identifier: MIT
// A visit as a whole from C++: what is found, what follows, many at once.
#include <doctest/doctest.h>
#include <makegood/job/assess.hpp>
#include <makegood/job/words.hpp>
#include <makegood/rules/all.hpp>

using namespace makegood;
using document::array;
using document::object;

namespace {
/// An invented chandler's store: one circuit, mended today, and a reading that proves nothing.
document::value store(double insulation_now) {
  object reading_now{{"value", insulation_now}, {"instrument", "tester"}, {"circuit_state", "disconnected"}};
  object reading_before{{"below", 0.05}, {"instrument", "tester"}, {"circuit_state", "disconnected"}};
  return object{{"format", "makegood-visit-1"},
                {"title", "A chandler's store"},
                {"invented", true},
                {"supply", object{{"earthing", "TN-S"}, {"nominal_voltage_v", 230.0}}},
                {"instruments", array{object{{"id", "tester"}, {"accuracy", array{object{{"reads", "insulation"}, {"percent", 3.0}, {"counts", 3.0}, {"resolution", 0.01}}}}}}},
                {"circuits", array{object{{"id", "hoist"}, {"name", "Hoist"}, {"rcd_kind", "general"}, {"insulation_mohm", reading_now}}}},
                {"put_right", array{object{{"id", "joint"}, {"about", "hoist"}, {"what", "A wet joint was renewed."}, {"minutes", 20.0}, {"before", object{{"insulation_mohm", reading_before}}}}}}};
}
const job::finding& of(const job::assessment& a, std::string_view call) {
  for (const auto& f : a.findings)
    if (f.call == call) return f;
  throw error("no such finding");
}
}  // namespace

TEST_CASE("whole visit: findings with words, before and after, what must be off") {
  const auto book = rules::find("bs7671:2018+a2");
  const auto good = job::assess(job::read_visit(store(120.0)), book);
  CHECK(of(good, "electrical.check_insulation").verdict.outcome == outcome::pass);
  CHECK(good.isolate.empty());
  REQUIRE(good.changes.size() == 1);
  const auto* change = good.changes[0].as<object>();
  const auto& answer = *(*change->find("answers")->as<array>())[0].as<object>();
  CHECK(*answer.find("before")->as<object>()->find("outcome")->as<std::string>() == "fail");
  CHECK(*answer.find("after")->as<object>()->find("outcome")->as<std::string>() == "pass");

  const auto bad = job::assess(job::read_visit(store(0.2)), book);
  const auto& f = of(bad, "electrical.check_insulation");
  CHECK(f.verdict.outcome == outcome::fail);
  CHECK(f.level == job::finding::danger::potential);
  CHECK(f.code == "C2");
  CHECK_FALSE(f.consequence.empty());
  CHECK_FALSE(f.electrician.empty());
  REQUIRE(bad.isolate.size() == 1);
  CHECK(*bad.isolate[0].as<object>()->find("circuit")->as<std::string>() == "hoist");
  // the device was not tested: a reading is needed, and nothing is said to be in order
  CHECK(of(bad, "electrical.check_rcd_trip").verdict.reason == reason::not_measured);
  CHECK_FALSE(bad.readings_needed.empty());
  CHECK(bad.readings.size() == 1);
  CHECK(bad.instruments.size() == 1);
}

TEST_CASE("whole visit: as it was found, and a part by its id") {
  const auto v = job::read_visit(store(120.0));
  const auto was = job::as_found(v);
  CHECK(was.circuits[0].insulation_mohm.is == reading::state::below);
  CHECK(v.circuits[0].insulation_mohm.is == reading::state::value);
  CHECK(job::path_of(v, "hoist") == "circuits[0]");
  CHECK(job::path_of(v, "circuits.hoist") == "circuits[0]");
  CHECK(job::path_of(v, "mast") == "");
}

TEST_CASE("whole visit: many at once are each one, on any number of threads") {
  const auto book = rules::find("bs7671:2018+a2");
  std::vector<job::visit> visits;
  for (int i = 0; i < 40; ++i) visits.push_back(job::read_visit(store(0.1 + 0.06 * i)));
  std::size_t seen = 0;
  const auto one = job::assess_many(visits, book);
  const auto two = job::assess_many(visits, book, {}, 3, false, [&](std::size_t n) {
    seen = n;
    return true;
  });
  CHECK(seen == visits.size());
  REQUIRE(one.visit.size() == two.visit.size());
  std::size_t row = 0;
  for (std::size_t i = 0; i < visits.size(); ++i)
    for (const auto& f : job::assess(visits[i], book).findings) {
      CHECK(one.visit[row] == i);
      CHECK(one.calls[one.call[row]] == f.call);
      CHECK(one.outcome[row] == static_cast<unsigned char>(f.verdict.outcome));
      CHECK(two.outcome[row] == one.outcome[row]);
      CHECK(two.calls[two.call[row]] == f.call);
      CHECK(((is_nan(one.value[row]) && is_nan(f.verdict.value)) || one.value[row] == f.verdict.value));
      CHECK(((is_nan(two.value[row]) && is_nan(one.value[row])) || two.value[row] == one.value[row]));
      ++row;
    }
  CHECK(row == one.visit.size());
  CHECK(job::assess_many({}, book).visit.empty());
}

TEST_CASE("whole visit: words by check and by what was seen") {
  CHECK(job::words_of_check("electrical.check_insulation"));
  CHECK(job::words_of_check("electrical.check_nothing") == nullptr);
  CHECK(job::words_of_observation("live_parts_within_reach"));
  CHECK(job::words_of_observation("note") == nullptr);
}

// SPDX-License-Identifier: MIT
// What a whole visit asks of rulebooks: additional protection, codes of danger, work that has to be notified.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/electrical/checks.hpp>
#include <makegood/job/notifiable.hpp>
#include <makegood/rules/all.hpp>
#include <set>
#include <string>

using namespace makegood;

TEST_CASE("visit rules: no condition of a row is a word that nobody asks for, and none stands twice in a book") {
  const std::set<std::string_view> levels{"now", "potential", "improve", "investigate"};
  for (const auto* t : rules::all) {
    std::set<std::string> seen;
    for (const auto& r : t->rules) {
      const bool protection = r.limit == "additional_protection", danger = r.limit == "danger_class", work = r.limit == "notifiable_work";
      if (!protection && !danger && !work) continue;
      CAPTURE(t->id);
      CAPTURE(r.condition);
      CHECK(seen.insert(std::string(r.limit) + " " + std::string(r.condition)).second);
      CHECK((r.from.grade == "seen" || r.from.grade == "memory"));
      CHECK(!r.from.clause.empty());
      CHECK(!r.text.empty());
      if (protection) CHECK(electrical::additional_protection_uses.find(r.condition) >= 0);
      if (danger) CHECK(levels.count(r.condition) == 1);
      if (work) {
        CHECK((r.numbers[0] == 0.0 || r.numbers[0] == 1.0 || r.numbers[0] == 2.0));
        if (!r.condition.empty()) CHECK(job::notifiable_work(r.condition, *t).work == r.condition);
      }
    }
  }
}

TEST_CASE("additional protection: at the limit, one step beyond, no device at all, no rule") {
  using electrical::check_additional_protection;
  const rulebook book = rules::bs7671_2018_a2;
  CHECK(check_additional_protection(measured::exact(30.0), "socket_outlet", book).outcome == outcome::pass);
  CHECK(check_additional_protection(measured::exact(std::nextafter(30.0, 31.0)), "socket_outlet", book).outcome == outcome::fail);
  CHECK(check_additional_protection(measured::exact(10.0), "bathroom", book).outcome == outcome::pass);
  CHECK(check_additional_protection(measured::exact(100.0), "buried_cable", book).outcome == outcome::fail);
  const auto none = check_additional_protection(reading::above(1000.0), "socket_outlet", book);
  CHECK(none.outcome == outcome::fail);
  CHECK(none.taken == reading::state::above);
  CHECK(check_additional_protection(reading::no_trip(), "socket_outlet", book).outcome == outcome::fail);
  CHECK(check_additional_protection(reading::above(10.0), "socket_outlet", book).outcome == outcome::undecided);
  // lighting came in 2018, and cables in walls are no subject of the IEC text
  CHECK(check_additional_protection(measured::exact(30.0), "lighting_dwelling", rules::bs7671_2008).outcome == outcome::undecided);
  CHECK(check_additional_protection(measured::exact(300.0), "socket_outlet", rules::bs7671_2001).outcome == outcome::undecided);
  CHECK(check_additional_protection(measured::exact(300.0), "mobile_outdoor", rules::bs7671_2001).outcome == outcome::fail);
  CHECK(check_additional_protection(measured::exact(30.0), "buried_cable", rules::iec60364).outcome == outcome::undecided);
}

TEST_CASE("codes of danger: the code stands before the colon; an edition without codes has no rows") {
  const rulebook book = rules::bs7671_2018_a2;
  const auto code = [](const rulebook& b, std::string_view level) {
    const auto a = b.find("danger_class", level);
    return a.row ? std::string(a.row->text.substr(0, a.row->text.find(':'))) : std::string();
  };
  CHECK(code(book, "now") == "C1");
  CHECK(code(book, "potential") == "C2");
  CHECK(code(book, "improve") == "C3");
  CHECK(code(book, "investigate") == "FI");
  CHECK(book.find("danger_class", "potential").numbers()[0] == 2.0);
  CHECK(code(rules::bs7671_2008_a3, "now") == "C1");
  CHECK(rules::bs7671_2008_a3.rules.size() == rules::bs7671_2008.rules.size() + 4);
  CHECK(rulebook(rules::bs7671_2008_a3).find("minimum_voltage_factor", "").numbers()[0] == 0.95);
  for (const auto* t : {&rules::bs7671_2008, &rules::bs7671_2001, &rules::iec60364}) CHECK(code(*t, "now").empty());
}

TEST_CASE("notifiable work: England, Wales, Scotland, Northern Ireland, no book") {
  using job::notifiable_work;
  const rulebook england = rules::england_adp_2013, wales = rules::wales_adp_2006, house = rules::scotland_warrant_house, flat = rules::scotland_warrant_flat,
                 north = rules::northern_ireland_electrical;
  CHECK(notifiable_work("new_circuit", england).answer == "notifiable");
  CHECK(notifiable_work("consumer_unit_replaced", england).answer == "notifiable");
  CHECK(notifiable_work("special_location_alteration", england).answer == "notifiable");
  for (const auto* kind : {"kitchen_alteration", "outdoor_alteration"}) {
    CHECK(notifiable_work(kind, england).answer == "not_notifiable");
    CHECK(notifiable_work(kind, wales).answer == "notifiable");
  }
  CHECK(notifiable_work("heating_floor_fixed_wiring", england).answer == "not_known");  // it depends
  CHECK(notifiable_work("heating_floor_fixed_wiring", wales).answer == "notifiable");
  CHECK(notifiable_work("new_circuit", house).answer == "not_notifiable");
  CHECK(notifiable_work("new_circuit", flat).answer == "notifiable");
  CHECK(notifiable_work("outdoor_alteration", flat).answer == "not_known");
  CHECK(notifiable_work("new_circuit", north).answer == "not_known");
  for (const auto& k : job::kinds_of_work) {
    CAPTURE(k.key);
    const auto n = notifiable_work(k.key, rules::bs7671_2018_a2);
    CHECK(n.answer == "not_known");
    CHECK(n.from.title.empty());
    CHECK(!n.what_to_do.empty());
    CHECK(notifiable_work(k.key, rulebook()).answer == "not_known");
    const auto e = notifiable_work(k.key, england);
    CHECK(e.rule.starts_with("England: "));
    CHECK(e.rule.ends_with("."));
    CHECK(e.what_to_do.ends_with("."));
  }
  for (const auto& b : {england, wales, house, flat, north}) CHECK(notifiable_work("inspection_only", b).answer == "not_notifiable");
  // the first book with a row answers; a derived book says so
  CHECK(notifiable_work("kitchen_alteration", rulebook(rules::bs7671_2018_a2) + wales + england).answer == "notifiable");
  const auto changed = notifiable_work("kitchen_alteration", england.with({"landlord", "notifiable_work", "kitchen_alteration", comparator::at_least, {1.0}, "tell the landlord first"}));
  CHECK(changed.answer == "notifiable");
  CHECK(changed.overridden == "landlord: tell the landlord first");
  CHECK(changed.what_to_do == "tell the landlord first");
  CHECK_THROWS_WITH_AS(notifiable_work("new_circiut", england), doctest::Contains("did you mean \"new_circuit\"?"), range_error);
}

// SPDX-License-Identifier: MIT
// Verdicts: three outcomes, the limit itself, doubt, censored readings, rulebooks.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/rules/all.hpp>
#include <makegood/sensing/list.hpp>

using namespace makegood;
using electrical::check_voltage_drop;

namespace {
verdict drop(given x, const rulebook& book = rules::bs7671_2018_a2) {
  return check_voltage_drop({.voltage_drop_v = x, .nominal_voltage_v = 230, .load_kind = "other"}, book);
}
}  // namespace

TEST_CASE("at the limit, and one step either side") {
  const double limit = drop(1.0).limit();
  CHECK(limit == doctest::Approx(11.5));
  CHECK(drop(limit).outcome == outcome::pass);  // at most
  CHECK(drop(std::nextafter(limit, 0.0)).outcome == outcome::pass);
  CHECK(drop(std::nextafter(limit, 100.0)).outcome == outcome::fail);
  CHECK(drop(std::nextafter(limit, 100.0)).margin < 0.0);
}

TEST_CASE("doubt decides between pass, fail and undecided") {
  CHECK(drop(measured(9.0, 0.5, "u")).outcome == outcome::pass);
  CHECK(drop(measured(14.0, 0.5, "u")).outcome == outcome::fail);
  const verdict v = drop(measured(11.3, 0.5, "u"));
  CHECK(v.outcome == outcome::undecided);
  CHECK(v.reason == reason::straddles_limit);
  CHECK(v.plain == outcome::pass);
  CHECK(v.probability == doctest::Approx(0.5 * std::erfc(-0.2 / 0.5 / std::sqrt(2.0))));
  CHECK(v.settle().find("0.11 V") != std::string::npos);  // 0.2 / 1.675 = 0.119, rounded down
  const verdict over = drop(measured(11.7, 0.5, "u"));
  CHECK(over.outcome == outcome::undecided);
  CHECK(over.plain == outcome::fail);
  CHECK(over.detail().find("does not meet the limit as read") != std::string::npos);
  // exactly proved: 95 % whatever its shape needs a margin of 1.675 u
  CHECK(drop(measured(11.5 - 1.68 * 0.5, 0.5, "u")).outcome == outcome::pass);
  CHECK(drop(measured(11.5 - 1.67 * 0.5, 0.5, "u")).outcome == outcome::undecided);
}

TEST_CASE("what was not measured is never a pass") {
  for (const reading& r : {reading::not_measured(), reading::pending()}) {
    const verdict v = drop(r);
    CHECK(v.outcome == outcome::undecided);
    CHECK(v.reason == reason::not_measured);
    CHECK(!v.settle().empty());
  }
  CHECK_THROWS_AS(drop(std::nan("")), range_error);
  CHECK_THROWS_AS(drop(measured(std::nan(""), 1.0, "u")), range_error);
}

TEST_CASE("a reading out of range proves what lies beyond it") {
  CHECK(drop(reading::above(20.0)).outcome == outcome::fail);
  CHECK(drop(reading::above(5.0)).outcome == outcome::undecided);
  CHECK(drop(reading::above(5.0)).plain == outcome::undecided);
  CHECK(drop(reading::below(1.0)).outcome == outcome::pass);
  CHECK(drop(reading::below(20.0)).outcome == outcome::undecided);
}

TEST_CASE("no rule, no verdict; overrides are named") {
  const verdict v = drop(5.0, {});
  CHECK(v.outcome == outcome::undecided);
  CHECK(v.reason == reason::no_rule_in_book);
  const rulebook strict = rulebook(rules::bs7671_2018_a2).with({"site", "voltage_drop_limit", "other", comparator::at_most, {2.0}, "agreed with the client"});
  const verdict w = drop(5.0, strict);
  CHECK(w.limit() == doctest::Approx(4.6));
  CHECK(w.outcome == outcome::fail);
  REQUIRE(w.overrides().size() == 1);
  CHECK(w.overrides()[0] == "site: agreed with the client");
  CHECK(w.rulebook() == "bs7671:2018+a2+site");
  CHECK_THROWS_AS(rules::find("no-such-book"), rule_error);
  const rulebook both = rules::find("bs7671:2018+a2,england-adf-2021");
  CHECK(both.id() == "bs7671:2018+a2,england-adf-2021");
}

TEST_CASE("a verdict carries its working") {
  const verdict v = check_voltage_drop({.voltage_drop_v = 5.0, .nominal_voltage_v = 230, .load_kind = "lighting", .length_m = 160}, rules::iec60364);
  CHECK(v.limit() == doctest::Approx(230 * 0.033));  // 3 % and 60 m beyond 100 m
  const auto w = v.worked();
  REQUIRE(w.size() == 2);
  for (const auto& part : w) CHECK(part.dimension_error == "");
  CHECK(w[1].steps.back().value == v.limit());
}

TEST_CASE("a dead short is a finding, not an error") {
  CHECK(sensing::check_ntc_sensor({.resistance_ohm = 0.0, .temperature_c = 21, .reference_ohm = 10000, .reference_c = 25, .beta_k = 3950}).outcome == outcome::fail);
  CHECK(heating::check_element_resistance({.resistance_ohm = 0.0, .rated_power_w = 450, .rated_voltage_v = 230}, rules::common_practice).outcome == outcome::fail);
}

TEST_CASE("printed with as many digits as keep the order true") {
  CHECK(drop(9.0).digits() == 4);
  const verdict close = drop(11.50004);
  CHECK(close.outcome == outcome::fail);
  CHECK(number_text(close.value, close.digits()) != number_text(close.limit(), close.digits()));
}

TEST_CASE("a value at its printed limit meets it: 3 % of 230 V is 6.9 V, 5 % of 230 V is 11.5 V, 3 % of 110 V is 3.3 V") {
  const auto judged = [](double value, double nominal, const char* kind) {
    return check_voltage_drop({.voltage_drop_v = value, .nominal_voltage_v = nominal, .load_kind = kind}, rules::bs7671_2018_a2).plain;
  };
  CHECK(judged(6.9, 230, "lighting") == outcome::pass);
  CHECK(judged(11.5, 230, "other") == outcome::pass);
  CHECK(judged(3.3, 110, "lighting") == outcome::pass);
  CHECK(judged(std::nextafter(6.9, 7.0), 230, "lighting") == outcome::fail);
}

// SPDX-License-Identifier: MIT
// Decision rules by name, the reading that would settle a verdict, instruments with their error sources, risks.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/air/list.hpp>
#include <makegood/decision/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/rules/all.hpp>

using namespace makegood;
using electrical::check_voltage_drop;

namespace {
verdict drop(given x, const decision_rule& rule = {}) {
  return check_voltage_drop({.voltage_drop_v = x, .nominal_voltage_v = 230, .load_kind = "other"}, rules::bs7671_2018_a2, rule);  // at most 11.5 V
}
verdict insulation(given x, const decision_rule& rule = {}) { return electrical::check_insulation(x, "up_to_500_v", rules::bs7671_2018_a2, rule); }
constexpr double root3 = 1.7320508075688772;
}  // namespace

TEST_CASE("the default rule is jcgm106:0.95 with a reserve for doubts that are not normal") {
  for (const double x : {9.0, 10.6, 10.7, 11.3, 11.7, 12.3, 12.4, 14.0}) {
    const verdict v = drop(measured(x, 0.5, "u")), same = drop(measured(x, 0.5, "u"), "jcgm106:0.95");
    CHECK(v.outcome == same.outcome);
    CHECK(v.probability == same.probability);
    CHECK(v.decided_by.name() == "default");
    CHECK(same.decided_by.name() == "jcgm106:0.95");
  }
  // between 1.645 u and 1.675 u, where two equal rectangles have their 5 %, only jcgm106:0.95 decides; so on the other side
  for (const double z : {1.65, 1.67, -1.65, -1.67}) {
    const measured x(11.5 - z * 0.5, 0.5, "u");
    CHECK(drop(x, "jcgm106:0.95").outcome == (z > 0 ? outcome::pass : outcome::fail));
    CHECK(drop(x).outcome == outcome::undecided);
    CHECK(drop(measured(11.5 - (z > 0 ? 1.68 : -1.68) * 0.5, 0.5, "u")).outcome == (z > 0 ? outcome::pass : outcome::fail));
  }
  // p = 0.99 needs 2.326 u
  CHECK(drop(measured(11.5 - 2.33 * 0.5, 0.5, "u"), decision_rule::jcgm106(0.99)).outcome == outcome::pass);
  CHECK(drop(measured(11.5 - 2.32 * 0.5, 0.5, "u"), decision_rule::jcgm106(0.99)).outcome == outcome::undecided);
}

TEST_CASE("guard bands: at the edge, and one step either side, on both sides of the limit") {
  const double u = 0.5, limit = drop(9.0).limit();
  const auto at = [&](double x, const char* rule) { return drop(measured(x, u, "u"), rule); };
  const auto step = [](double x, double to) { return std::nextafter(x, to); };
  CHECK(at(10.5, "ilac_g8").outcome == outcome::pass);  // 11.5 - U
  CHECK(at(step(10.5, 20), "ilac_g8").outcome == outcome::undecided);
  CHECK(at(step(10.5, 20), "ilac_g8").statement() == "conditional pass");
  CHECK(at(step(limit, 20), "ilac_g8").statement() == "conditional fail");
  CHECK(at(12.5, "ilac_g8").statement() == "conditional fail");
  CHECK(at(step(12.5, 20), "ilac_g8").outcome == outcome::fail);
  CHECK(at(step(10.5, 20), "ilac_g8_binary").outcome == outcome::fail);
  CHECK(at(step(10.5, 20), "ilac_g8_binary").plain == outcome::pass);
  CHECK(at(step(10.5, 20), "ilac_g8_binary").detail().find("meets the limit as read; rejected by the rule") == 0);
  CHECK(at(limit, "simple_acceptance").outcome == outcome::pass);
  CHECK(at(step(limit, 20), "simple_acceptance").outcome == outcome::fail);
  CHECK(at(12.5, "relaxed_acceptance").outcome == outcome::pass);
  CHECK(at(12.5, "relaxed_acceptance").plain == outcome::fail);
  CHECK(at(12.5, "relaxed_acceptance").detail().find("does not meet the limit as read; accepted by the rule") == 0);
  CHECK(at(step(12.5, 20), "relaxed_acceptance").outcome == outcome::fail);
  CHECK(at(11.5 - 0.84, "iso14253").outcome == outcome::pass);
  CHECK(at(11.5 - 0.82, "iso14253").outcome == outcome::undecided);
  CHECK(at(11.5 + 0.82, "iso14253").outcome == outcome::undecided);
  CHECK(at(11.5 + 0.84, "iso14253").outcome == outcome::fail);
  CHECK(at(11.5 - 0.51, "guard_band:0.5").outcome == outcome::pass);
  CHECK(at(11.5 - 0.49, "guard_band:0.5").outcome == outcome::undecided);
}

TEST_CASE("guard bands on a band, a least value, and readings out of range") {
  const auto element = [](double x, const char* rule) {
    return heating::check_element_resistance({.resistance_ohm = measured(x, 1.0, "u"), .rated_power_w = measured(529), .rated_voltage_v = measured(230)}, rules::common_practice, rule);
  };  // 95 to 110 ohm, U = 2
  CHECK(element(97.1, "ilac_g8").outcome == outcome::pass);
  CHECK(element(96.9, "ilac_g8").statement() == "conditional pass");
  CHECK(element(94.9, "ilac_g8").statement() == "conditional fail");
  CHECK(element(92.9, "ilac_g8").outcome == outcome::fail);
  CHECK(element(107.9, "ilac_g8").outcome == outcome::pass);
  CHECK(element(108.1, "ilac_g8").outcome == outcome::undecided);
  CHECK(element(112.1, "ilac_g8").outcome == outcome::fail);
  for (const auto& m : decision_methods) {
    CAPTURE(m.name);
    CHECK(insulation(reading::above(999).with(accuracy{5.0}), decision_rule(m)).outcome == outcome::pass);  // proves a least value
    CHECK(insulation(reading::above(0.2), decision_rule(m)).outcome == outcome::undecided);                 // proves nothing
    CHECK(insulation(reading::below(0.05), decision_rule(m)).outcome == outcome::fail);
    CHECK(drop(reading::above(20.0), decision_rule(m)).outcome == outcome::fail);
    CHECK(drop(reading::not_measured(), decision_rule(m)).reason == reason::not_measured);
    CHECK(drop(9.0, decision_rule(m)).outcome == outcome::pass);
    CHECK(drop(14.0, decision_rule(m)).outcome == outcome::fail);
  }
}

TEST_CASE("names of rules") {
  CHECK_THROWS_AS(decision_rule("iso14252"), rule_error);
  CHECK_THROWS_AS(decision_rule("iso14253:0.5"), rule_error);
  CHECK_THROWS_AS(decision_rule("jcgm106:2"), rule_error);
  CHECK_THROWS_AS(decision_rule("jcgm106:0.5"), rule_error);
  CHECK_THROWS_AS(decision_rule("jcgm106:"), rule_error);
  CHECK_THROWS_AS(decision_rule("jcgm106:nan"), rule_error);
  CHECK_THROWS_AS(decision_rule("guard_band:-1"), rule_error);
  CHECK_THROWS_AS(decision_rule(""), rule_error);
  CHECK(decision_rule("jcgm106:0.999").accept == 0.999);
  CHECK(decision_rule("guard_band:0.83").accept == 0.83);
  for (const auto& m : decision_methods) CHECK(decision_rule(decision_rule(m).name()).accept == m.accept);
}

TEST_CASE("the better reading is calculated: it settles, and a little worse does not") {
  for (const char* rule : {"default", "jcgm106:0.99", "ilac_g8", "iso14253"})
    for (const double x : {11.3, 11.7}) {
      CAPTURE(rule);
      CAPTURE(x);
      const verdict v = drop(measured(x, 0.5, "u"), rule);
      REQUIRE(v.reason == reason::straddles_limit);
      const auto b = v.better();
      REQUIRE(b.has_value());
      CHECK(b->argument == "voltage_drop_v");
      CHECK(b->now == doctest::Approx(0.5));
      CHECK(b->outcome == (x < 11.5 ? outcome::pass : outcome::fail));
      CHECK(drop(measured(x, b->standard_uncertainty, "u"), rule).outcome == b->outcome);
      CHECK(drop(measured(x, 1.12 * b->standard_uncertainty, "u"), rule).outcome == outcome::undecided);  // two digits, rounded down
    }
  CHECK_FALSE(drop(measured(9.0, 0.5, "u")).better().has_value());
  const verdict on_it = drop(measured(11.5, 0.5, "u"));
  CHECK_FALSE(on_it.better().has_value());
  CHECK(on_it.settle().find("lies on the limit itself") != std::string::npos);
}

TEST_CASE("the better reading: which of several arguments, beside the doubt that stays") {
  using air::check_duct_pressure;
  const auto judged = [](double u_loss, double u_fan) { return check_duct_pressure(measured(38.0, u_loss, "loss"), measured(40.0, u_fan, "fan")); };
  const verdict v = judged(3.0, 0.5);
  REQUIRE(v.reason == reason::straddles_limit);
  const auto b = v.better();
  REQUIRE(b.has_value());
  CHECK(b->argument == "pressure_loss_pa");
  CHECK(b->share == doctest::Approx(9.0 / 9.25));
  CHECK(b->standard_uncertainty == doctest::Approx(1.0));  // sqrt((2/1.675)^2 - 0.25) = 1.0844, two digits down
  CHECK(judged(1.08, 0.5).outcome == outcome::pass);
  CHECK(judged(1.09, 0.5).outcome == outcome::undecided);
  CHECK(v.settle().find(" with a standard uncertainty of 1 Pa") != std::string::npos);
  // neither alone: both must come down
  const auto both = judged(3.0, 3.0).better();
  REQUIRE(both.has_value());
  CHECK(both->all_readings);
  const double factor = both->standard_uncertainty / both->now;
  CHECK(judged(3.0 * factor, 3.0 * factor).outcome == outcome::pass);
  CHECK(judged(3.3 * factor, 3.3 * factor).outcome == outcome::undecided);
}

TEST_CASE("which of several instruments would settle it") {
  const auto loop = [](given x) { return electrical::check_loop_impedance(x, 230, 160, rules::bs7671_2018_a2); };  // at most 1.366 ohm
  const verdict v = loop(1.25);  // worst case of the class: 17 % standard uncertainty
  REQUIRE(v.reason == reason::straddles_limit);
  instrument good{"good", {{reads::loop_impedance, {3.0, 2, 0.01}}}}, poor{"poor", {{reads::loop_impedance, {20.0, 5, 0.01}}}}, other{"other", {{reads::length, {1.0}}}};
  CHECK(v.outcome_with(good) == outcome::pass);
  CHECK(v.outcome_with(poor) == outcome::undecided);
  CHECK(v.outcome_with(other) == outcome::undecided);
  CHECK(loop(reading(1.25).with(std::make_shared<const instrument>(good))).outcome == outcome::pass);
}

TEST_CASE("one meter: a difference loses its common gain, a ratio all of it, a sum none") {
  const instrument meter{"meter", {{reads::resistance, {2.0}}, {reads::voltage, {2.0}}, {reads::temperature, accuracy{.limit = 0.5}}}};
  const auto read = [&](reads kind, double x, const char* label) {
    reading r = reading(x).with(std::make_shared<const instrument>(meter));
    r.label = label;
    return to_measured(r, kind, label);
  };
  const double g = 0.02 / root3;
  // sum: external part and conductors of a loop
  const measured sum = electrical::earth_fault_loop_impedance(read(reads::resistance, 0.35, "Ze"), read(reads::resistance, 0.60, "R1+R2"));
  CHECK(sum.standard_uncertainty() == doctest::Approx(0.95 * g).epsilon(1e-12));
  // ratio: power at a voltage from the rated one, both read with one meter
  const measured ratio = heating::power_at_voltage(1000.0, read(reads::voltage, 230.0, "rated"), read(reads::voltage, 218.0, "now"));
  CHECK(ratio.standard_uncertainty() == doctest::Approx(0.0).scale(1.0));
  // difference: the same thermometer at floor and air; its common limit goes altogether
  const measured flux = heating::floor_heat_flux(read(reads::temperature, 27.0, "floor"), read(reads::temperature, 20.0, "air"));
  CHECK(flux.standard_uncertainty() == doctest::Approx(0.0).scale(1.0));
  // difference of resistances inside a check: element less its tail, gain only for what is left
  const auto shared = std::make_shared<const instrument>(meter);
  const verdict v = heating::check_element_resistance({.resistance_ohm = reading(130.0).with(shared), .rated_power_w = measured(700), .rated_voltage_v = measured(230),
                                                       .cold_tail_ohm = reading(60.0).with(shared)}, rules::common_practice);
  CHECK(v.standard_uncertainty == doctest::Approx(70.0 * g).epsilon(1e-12));
  // counts are each reading's own, unless the maker says that the offset is common
  accuracy offset{0.0, 3, 0.1};
  const auto difference = [&](bool common) {
    offset.common_offset = common;
    const auto m = std::make_shared<const instrument>(instrument{"ohm", {{reads::resistance, offset}}});
    return heating::check_element_resistance({.resistance_ohm = reading(130.0).with(m), .rated_power_w = measured(700), .rated_voltage_v = measured(230), .cold_tail_ohm = reading(60.0).with(m)},
                                             rules::common_practice).standard_uncertainty;
  };
  CHECK(difference(false) == doctest::Approx(std::sqrt(2.0) * 0.3 / root3).epsilon(1e-12));
  CHECK(difference(true) == doctest::Approx(0.0).scale(1.0));
}

TEST_CASE("ranges, counts, leads, operating uncertainties") {
  accuracy low{5.0, 3, 0.01}, high{5.0, 3, 0.1};
  low.range = 2.0;
  high.range = 20.0;
  const auto meter = std::make_shared<const instrument>(instrument{"tester", {{reads::loop_impedance, high}, {reads::loop_impedance, low}}});
  CHECK(meter->statement_for(reads::loop_impedance, 1.9)->resolution == 0.01);
  CHECK(meter->statement_for(reads::loop_impedance, 2.0)->resolution == 0.01);
  CHECK(meter->statement_for(reads::loop_impedance, 2.1)->resolution == 0.1);
  CHECK(meter->statement_for(reads::loop_impedance, 99.0)->resolution == 0.1);
  CHECK(meter->statement_for(reads::insulation, 1.0) == nullptr);
  const auto loop = [&](given x) { return electrical::check_loop_impedance(x, measured(230), measured(160), rules::bs7671_2018_a2); };
  CHECK(loop(reading(0.80).with(meter)).standard_uncertainty == doctest::Approx(std::hypot(0.04, 0.03) / root3).epsilon(1e-12));
  CHECK(loop(reading(0.80).with(meter)).notes().empty());
  const auto few = loop(reading(0.08).with(meter)).notes();
  REQUIRE(few.size() == 1);
  CHECK(few[0].find("8 counts of the display") != std::string::npos);
  // a function that the instrument does not state: the worst case of its class
  CHECK(insulation(reading(5.0).with(meter)).assumed);

  accuracy leads = low;
  leads.nulled = false;
  leads.leads_ohm = 0.1;
  leads.leads_standard_uncertainty_ohm = 0.02;
  const verdict v = loop(reading(0.90).with(leads, "tester"));
  CHECK(v.value == doctest::Approx(0.80));
  CHECK(v.standard_uncertainty == doctest::Approx(std::sqrt(square(0.05 * 0.9 / root3) + square(0.03 / root3) + square(0.02))).epsilon(1e-12));
  REQUIRE(v.notes().size() == 1);
  CHECK(v.notes()[0].find("leads of 0.1 Ω were not nulled: subtracted, with a standard uncertainty of 0.02 Ω") != std::string::npos);
  leads.leads_left_in = true;
  CHECK(loop(reading(0.90).with(leads, "tester")).value == 0.90);
  CHECK(loop(reading(0.90).with(leads, "tester")).notes()[0].find("they lie in the reading") != std::string::npos);
  CHECK_THROWS_AS(insulation(reading(5.0).with(leads, "tester")), range_error);

  const verdict edition = loop(reading(1.0).with(operating_uncertainty(30.0, 2019), "tester")), older = loop(reading(1.0).with(operating_uncertainty(30.0, 2007), "tester"));
  CHECK(edition.standard_uncertainty == doctest::Approx(0.15).epsilon(1e-12));
  CHECK(older.standard_uncertainty == doctest::Approx(0.3 / root3).epsilon(1e-12));
  CHECK(edition.notes()[0].find("u = B/2") != std::string::npos);
  CHECK(older.notes()[0].find("u = B/√3") != std::string::npos);
  CHECK(loop(1.0).notes()[0].find("worst case") != std::string::npos);
}

TEST_CASE("risks: limits without doubt, symmetry, acceptance limits that give back their risk") {
  using namespace makegood::decision;
  const auto prior = distribution::normal(10.0, 1.0);
  const interval_of both{8.0, 12.0};
  const auto exact = global_risk(prior, both, both, 0.0);
  CHECK(exact.consumer == doctest::Approx(0.0).scale(1.0));
  CHECK(exact.producer == doctest::Approx(0.0).scale(1.0));
  CHECK(exact.nonconforming == doctest::Approx(2.0 * normal_probability(-2.0)).epsilon(1e-11));
  // an upper and a mirrored lower limit
  const auto up = global_risk(prior, {.upper = 11.0}, {.upper = 10.7}, 0.3), down = global_risk(prior, {.lower = 9.0}, {.lower = 9.3}, 0.3);
  CHECK(up.consumer == doctest::Approx(down.consumer).epsilon(1e-11));
  CHECK(up.producer == doctest::Approx(down.producer).epsilon(1e-11));
  CHECK(up.nonconforming + (1.0 - up.nonconforming) == doctest::Approx(1.0));
  for (const auto& p : {prior, distribution::gamma(4, 0.4), distribution::uniform(5, 15), distribution::lognormal(std::log(10.0), 0.1), distribution::gamma(0.5, 0.05)})
    for (const double risk : {1e-2, 1e-3, 1e-5}) {
      const interval_of upper{.upper = 12.0};
      if (global_risk(p, upper, upper, 0.3).nonconforming <= risk) continue;
      const auto a = acceptance_limit(p, upper, 0.3, risk);
      CHECK(a.risks.consumer == doctest::Approx(risk).epsilon(1e-6));
      CHECK(a.risks.error < 1e-9);
    }
  CHECK_THROWS_AS(acceptance_limit(prior, {.upper = 20.0}, 0.3, 0.01), range_error);  // nothing fails
  // P(conforms and accepted) + producer = P(conforms)
  const auto r = global_risk(distribution::gamma(4, 4), {.upper = 2.0}, {.upper = 2.0}, 0.25);
  CHECK(r.accepted - r.consumer + r.producer == doctest::Approx(1.0 - r.nonconforming).epsilon(1e-11));
  CHECK(normal_quantile(0.95) == doctest::Approx(1.6448536269514722).epsilon(1e-14));
  CHECK(normal_quantile(0.025) == doctest::Approx(-1.959963984540054).epsilon(1e-14));
  CHECK(conformity_probability(0.0, 1.0, {-1.0, 1.0}) == doctest::Approx(0.6826894921370859).epsilon(1e-14));
}

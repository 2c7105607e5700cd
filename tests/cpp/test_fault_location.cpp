// SPDX-License-Identifier: MIT
// Places of faults: formulas with doubt, several methods with shared errors, coverage by simulation, insulation of parallel parts.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/electrical/locating.hpp>
#include <makegood/registry.hpp>
#include <random>

using namespace makegood;
using namespace makegood::electrical;

TEST_CASE("fault location: the formulas carry doubt, and what falls out falls out") {
  const measured length(300.0, 3.0, "length"), gain(1.0, 0.01, "meter, gain");
  // both arms read by one meter: its gain is in neither the place nor its doubt
  const measured sound = 1000.0 * gain, faulty = 500.0 * gain;
  const auto x = murray_loop_distance(sound, faulty, length);
  CHECK(x.value == doctest::Approx(200.0));
  CHECK(x.standard_uncertainty() == doctest::Approx(2.0));
  // the fault's own resistance is in both readings of a short from both ends
  const measured fault(0.3, 0.1, "fault");
  const auto near = fault + measured(0.242), far = fault + measured(0.484);
  const auto y = resistance_short_distance_both_ends(resistance_short_distance_both_ends_arguments<measured>{near, far, measured(30.0), measured(24.2)});
  CHECK(y.value == doctest::Approx(10.0));
  CHECK(y.standard_uncertainty() < 1e-12);
  // leads are in the loop reading alone
  CHECK(varley_loop_distance({.earth_reading_ohm = 0.4, .loop_reading_ohm = 1.04, .length_m = 200.0, .lead_ohm = 0.02}) == doctest::Approx(120.0));
}

TEST_CASE("fault location: sister methods meet") {
  for (const double p : {0.0, 0.1, 0.37, 0.5}) {
    const double L = 42.0, x = 2.0 * L * p;
    CHECK(murray_loop_distance(1.0 - p, p, L) == doctest::Approx(x));
    CHECK(murray_loop_distance_unequal({.sound_arm_ohm = 1.0 - p, .faulty_arm_ohm = p, .length_m = L, .faulty_mohm_per_m = 7.41, .return_mohm_per_m = 7.41}) ==
          doctest::Approx(x));
    const double core = 0.0121 * L, to_fault = 0.0121 * x;
    CHECK(varley_loop_distance({.earth_reading_ohm = 2.0 * core - 2.0 * to_fault, .loop_reading_ohm = 2.0 * core, .length_m = L}) ==
          doctest::Approx(x).epsilon(1e-9));
    CHECK(varley_loop_resistance({.sound_arm_ohm = 50.0, .faulty_arm_ohm = 50.0, .added_ohm = 2.0 * core - 2.0 * to_fault, .loop_ohm = 2.0 * core}) ==
          doctest::Approx(to_fault).epsilon(1e-9));
    CHECK(capacitance_break_distance(x, L - x + 1e-12, L) == doctest::Approx(x));
    CHECK(capacitance_break_distance_sound_core(x, L, L) == doctest::Approx(x));
    CHECK(reflection_distance(velocity_factor_from_length(L, 400.0), 400.0 * x / L) == doctest::Approx(x));
  }
  CHECK(unknown_branch_insulation(insulation_of_two(3.0, 7.0), 7.0) == doctest::Approx(3.0));
  CHECK(velocity_factor_from_permittivity(4.0) == 0.5);
}

TEST_CASE("fault location: relations are errors, a place off the cable is a doubt") {
  CHECK_THROWS_AS(varley_loop_distance({.earth_reading_ohm = 1.0, .loop_reading_ohm = 1.0, .length_m = 10.0, .lead_ohm = 0.1}), relation_error);
  CHECK_THROWS_AS(velocity_factor_from_length(30.0, 100.0), relation_error);
  CHECK_THROWS_AS(unknown_branch_insulation(2.0, 2.0), relation_error);
  CHECK_THROWS_AS(resistance_short_distance(0.1, 24.2, 0.2), relation_error);
  CHECK(murray_loop_distance(1.0, 2.0, 30.0) == doctest::Approx(40.0));
  const double swapped[] = {1.0, 2.0, 30.0}, right[] = {2.0, 1.0, 30.0};
  CHECK(murray_loop_distance.trace(swapped).doubt.set());
  CHECK_FALSE(murray_loop_distance.trace(right).doubt.set());
}

TEST_CASE("locate_fault: two methods by hand") {
  // 10 ± 1 and 12 ± 2, nothing shared: weights 4 to 1
  fault_measurement a{"a", "by hand", measured(10.0, 1.0, "a"), {}, no_number}, b{"b", "by hand", measured(12.0, 2.0, "b"), {}, no_number};
  auto r = locate_fault({a, b});
  CHECK(r.all.distance.value == doctest::Approx(10.4));
  CHECK(r.all.distance.standard_uncertainty() == doctest::Approx(std::sqrt(0.8)));
  CHECK(r.all.chi_square == doctest::Approx(0.8));
  CHECK(r.all.p_value == doctest::Approx(0.371093));  // P(|z| > sqrt 0.8)
  // a common error of 3 moves both alike: same weights, added to the doubt, not to the disagreement
  a.distance.add("common", 3.0);
  b.distance.add("common", 3.0);
  r = locate_fault({a, b});
  CHECK(r.all.distance.value == doctest::Approx(10.4));
  CHECK(r.all.chi_square == doctest::Approx(0.8));
  CHECK(r.all.distance.standard_uncertainty() == doctest::Approx(std::sqrt(9.8)));
  CHECK(shares_of(r.all.distance).front().source == "common");
  CHECK(shares_of(r.all.distance).front().share == doctest::Approx(9.0 / 9.8));
}

TEST_CASE("locate_fault: sensitivities where the estimate lies") {
  const measured factor(0.6, 0.06, "velocity factor");
  const auto m = by_reflection("pulse", measured(100.0, 1.0, "time"), factor);
  REQUIRE(m.at);
  const auto there = m.at(2.0 * m.distance.value);
  CHECK(there.value == m.distance.value);
  CHECK(shares_of(there).front().source == "velocity factor");
  CHECK(std::fabs(shares_of(there).front().effect_m) == doctest::Approx(2.0 * 0.1 * m.distance.value));
  const auto far = from_far_end(m, measured(30.0, 0.3, "length"));
  CHECK(far.distance.value == doctest::Approx(30.0 - m.distance.value));
  CHECK(std::fabs(covariance(far.at(25.0), measured(0.0, 1.0, "velocity factor"))) == doctest::Approx(0.1 * 5.0));
}

TEST_CASE("locate_fault: what disagrees is named, not averaged") {
  const auto one = [](const char* name, double x, double u) { return fault_measurement{name, "by hand", measured(x, u, name), {}, no_number}; };
  const auto r = locate_fault({one("a", 10.0, 0.3), one("b", 10.2, 0.3), one("c", 15.0, 0.3)}, 30.0);
  CHECK_FALSE(r.consistent);
  CHECK(r.resolved);
  REQUIRE(r.suspects.size() == 1);
  CHECK(r.suspects[0] == 2);
  CHECK(r.used.distance.value == doctest::Approx(10.1));
  REQUIRE(r.search.size() == 2);
  CHECK(r.search[0].from_m == doctest::Approx(10.1 - 1.959964 * 0.3 / std::sqrt(2.0)).epsilon(1e-6));
  const auto two = locate_fault({one("a", 10.0, 0.3), one("c", 15.0, 0.3)}, 12.0);
  CHECK_FALSE(two.resolved);
  CHECK(two.suspects.empty());
  REQUIRE(two.search.size() == 2);
  CHECK(two.search[1].to_m == 12.0);  // clipped to the cable
  CHECK(two.search[1].why.find("beyond the end") != std::string::npos);
  const auto torn = locate_fault({one("a", 10.0, 0.3), one("b", 15.0, 0.3), one("c", 20.0, 0.3)});
  CHECK_FALSE(torn.resolved);
  CHECK(torn.suspects.empty());
}

TEST_CASE("locate_fault: refuses what is no measurement") {
  const fault_measurement a{"a", "by hand", measured(10.0, 1.0, "same"), {}, no_number}, b{"b", "by hand", measured(12.0, 1.0, "same"), {}, no_number};
  CHECK_THROWS_AS(locate_fault({}), range_error);
  CHECK_THROWS_AS(locate_fault({a, b}), range_error);  // all doubt is shared
  CHECK_THROWS_AS(locate_fault({a, {"c", "by hand", measured(3.0), {}, no_number}}), range_error);
  CHECK_THROWS_AS(locate_fault(std::vector<fault_measurement>(101, a)), range_error);
}

TEST_CASE("locate_fault: the joint interval covers 95 % of jobs with shared errors") {
  std::mt19937_64 draw(12345);
  std::normal_distribution<double> normal;
  int inside = 0, alarms = 0;
  constexpr int jobs = 20000;
  for (int i = 0; i < jobs; ++i) {
    const double L = 40.0, x = 5.0 + 30.0 * static_cast<double>(i) / jobs, vf = 0.62;
    const measured length(L + 0.4 * normal(draw), 0.4, "length"), factor(vf + 0.015 * normal(draw), 0.015, "factor");
    const double p = x / (2.0 * L), arm = 1000.0 * p / (1.0 - p), time = 2.0 * x / (vf * 0.299792458);
    const auto r = joint_place(std::vector<fault_measurement>{
        by_murray("bridge", 1000.0, measured(arm + 2.0 * normal(draw), 2.0, "arm"), length),
        by_reflection("pulse", measured(time + 2.0 * normal(draw), 2.0, "time"), factor),
        from_far_end(by_reflection("pulse from the far end", measured(2.0 * (L - x) / (vf * 0.299792458) + 2.0 * normal(draw), 2.0, "time 2"), factor),
                     length)});
    inside += std::fabs(r.distance.value - x) <= 1.959964 * r.distance.standard_uncertainty();
    alarms += r.p_value < 0.05;
  }
  const double slack = 4.0 * std::sqrt(0.05 * 0.95 / jobs);  // 0.006
  CHECK(std::fabs(inside / static_cast<double>(jobs) - 0.95) < slack);
  CHECK(std::fabs(alarms / static_cast<double>(jobs) - 0.05) < slack);
}

TEST_CASE("parallel_insulation: the whole, the shares, the limit itself") {
  const insulation_part parts[] = {{"a", 2.0}, {"b", 4.0}, {"c", 4.0}};
  const auto r = parallel_insulation(parts, 1.0);
  CHECK(r.total_mohm == doctest::Approx(1.0));
  CHECK(r.whole_passes);
  CHECK(r.shares[0] == doctest::Approx(0.5));
  CHECK(parallel_insulation(parts, 1.01).whole_fails);
  CHECK(parallel_insulation(parts, 1.01).groups.size() == 2);
  std::vector<insulation_part> many(40, {"one of many", 20.0});
  const auto s = parallel_insulation(many, 1.0);  // 2 µS, 1 µS allowed: two circuits of twenty
  CHECK(s.groups.size() == 2);
  CHECK(s.fewest_proved);
  CHECK_THROWS_AS(parallel_insulation({}, 1.0), range_error);
  const insulation_part dead[] = {{"a", 0.0}};
  CHECK_THROWS_AS(parallel_insulation(dead), range_error);
}

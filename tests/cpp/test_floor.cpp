// SPDX-License-Identifier: MIT
// Floors that store heat: order of convergence and error against analytic solutions, energy, switching, what is refused.
#include <doctest/doctest.h>
#include <cmath>
#include <makegood/heating/floor_model.hpp>
#include <random>

using namespace makegood;
using namespace makegood::heating;

namespace {
constexpr double pi = 3.14159265358979323846;
floor_setup slab(double length_m, std::size_t heater_after, double power) {
  floor_setup s;
  s.layers = {{"screed", length_m, 1.4, 2000.0, 1000.0, 0.0}};
  s.heater_after = heater_after;
  s.power_w_per_m2 = power;
  s.initial_c = s.room.temperature_c = 0.0;
  s.loss.is = surface_loss::law::linear;
  s.loss.coefficient = 0.0;
  return s;
}
/// Rise at the heated face of a slab whose other face is insulated (Carslaw and Jaeger).
double slab_series(double t, double length, double flux) {
  const double fo = 1.4 / 2e6 * t / (length * length);
  double sum = 0.0;
  for (int n = 1; n < 400; ++n) sum += std::exp(-n * n * pi * pi * fo) / (n * n);
  return flux * length / 1.4 * (fo + 1.0 / 3.0 - 2.0 / (pi * pi) * sum);
}
floor_course at_level(const floor_setup& s, int level, double tolerance) { return heating::detail::floor_run(s, 12, level, tolerance, {},
    true).run(); }
floor_setup bathroom() {
  floor_setup s;
  s.layers = {{"tile", 0.010, 1.3, 2300.0, 840.0, 0.0}, {"adhesive", 0.005, 1.0, 1800.0, 1000.0, 0.0}, {"foam", 0.010, 0.033, 35.0, 1450.0, 0.0},
              {"contact", 0.0, 0.0, 0.0, 0.0, 0.02},    {"screed", 0.060, 1.4, 2000.0, 1000.0, 0.0}};
  s.heater_after = 2;
  s.power_w_per_m2 = 150.0;
  s.initial_c = 18.0;
  s.room.temperature_c = 20.0;
  s.below = {0.5, 10.0};
  return s;
}
}  // namespace

TEST_CASE("floor: second order in space and time together") {
  auto s = slab(0.05, 1, 150.0);
  s.times_s = {600.0, 1200.0};
  s.duration_s = 1200.0;
  std::vector<double> errors;
  for (int level = 0; level < 5; ++level) {
    // fixed share of the error to the cells: the tolerance is so small that time does not count
    const auto r = at_level(s, level, 1e-7);
    errors.push_back(std::fabs(r.heater_c[0] - slab_series(600.0, 0.05, 150.0)));
    CHECK(r.balance_ratio < 1e-9);
  }
  for (std::size_t i = 1; i < errors.size(); ++i) CHECK(std::log2(errors[i - 1] / errors[i]) == doctest::Approx(2.0).epsilon(0.05));
  // in time: the step is of the order tolerance^(1/3), an eighth of the tolerance halves it
  const auto exact = at_level(s, 2, 1e-9);
  std::vector<double> moved;
  for (double tolerance = 1e-2; tolerance > 1e-6; tolerance *= 0.125) {
    const auto r = at_level(s, 2, tolerance);
    moved.push_back(std::fabs(r.heater_c[1] - exact.heater_c[1]));
  }
  const double order = std::log2(moved.front() / moved.back()) / static_cast<double>(moved.size() - 1);
  INFO("order in time " << order);
  CHECK(order > 1.7);
}

TEST_CASE("floor: analytic solutions within the error asked for") {
  SUBCASE("slab with constant flux at one face, the other insulated") {
    for (const double asked : {0.05, 1e-3, 1e-5}) {
      auto s = slab(0.05, 1, 150.0);
      s.times_s = {60.0, 1800.0, 7200.0};
      s.duration_s = 7200.0;
      s.error_k = asked;
      const auto r = floor_warm_up(s);
      CHECK(r.error_k <= asked);
      for (std::size_t i = 0; i < s.times_s.size(); ++i) CHECK(std::fabs(r.heater_c[i] - slab_series(s.times_s[i], 0.05, 150.0)) <= asked);
      CHECK(r.balance_ratio < 1e-6);
    }
  }
  SUBCASE("film between two bodies without end: the flux splits as the effusivities do") {
    floor_setup s = slab(0.4, 1, 200.0);
    s.layers = {{"granite", 0.4, 2.8, 2600.0, 1000.0, 0.0}, {"plywood", 0.2, 0.13, 500.0, 1600.0, 0.0}};
    s.times_s = {300.0, 1800.0};
    s.duration_s = 1800.0;
    s.error_k = 1e-3;
    const auto r = floor_warm_up(s);
    const double e = std::sqrt(2.8 * 2600.0 * 1000.0) + std::sqrt(0.13 * 500.0 * 1600.0);
    for (std::size_t i = 0; i < 2; ++i) CHECK(std::fabs(r.heater_c[i] - 2.0 * 200.0 * std::sqrt(s.times_s[i] / pi) / e) <= 2e-3);
  }
  SUBCASE("plane wall cooled by convection: the series with exact roots") {
    for (const double biot : {0.1, 1.0, 5.0}) {
      const double length = 0.04, k = 63.9, density = 7832.0, c = 434.0, h = biot * k / length;
      floor_setup s;
      s.layers = {{"wall", length, k, density, c, 0.0}};
      s.heater_after = 1;
      s.initial_c = -20.0;
      s.room.temperature_c = 60.0;
      s.loss.is = surface_loss::law::linear;
      s.loss.coefficient = h;
      s.times_s = {8.0, 60.0};
      s.duration_s = 60.0;
      s.error_k = 1e-4;
      const auto r = floor_warm_up(s);
      for (std::size_t i = 0; i < 2; ++i) {
        const double fo = k / (density * c) * s.times_s[i] / (length * length);
        double back = 0.0, front = 0.0;
        for (int n = 0; n < 60; ++n) {
          double low = n * pi + 1e-12, high = n * pi + pi / 2 - 1e-12;
          for (int j = 0; j < 100; ++j) {
            const double z = 0.5 * (low + high);
            (z * std::tan(z) < biot ? low : high) = z;
          }
          const double z = 0.5 * (low + high), term = 4.0 * std::sin(z) / (2.0 * z + std::sin(2.0 * z)) * std::exp(-z * z * fo);
          back += term;
          front += term * std::cos(z);
        }
        CHECK(std::fabs(r.heater_c[i] - (60.0 - 80.0 * back)) <= 1e-4);
        CHECK(std::fabs(r.surface_c[i] - (60.0 - 80.0 * front)) <= 1e-4);
      }
    }
  }
  SUBCASE("rest: a composite wall, by resistances in series") {
    auto s = bathroom();
    s.loss.is = surface_loss::law::linear;
    s.loss.coefficient = 10.8;
    s.duration_s = 40.0 * 86400.0;
    s.times_s = {s.duration_s};
    s.error_k = 1e-4;
    const auto r = floor_warm_up(s);
    const double up = 1.0 / 10.8 + 0.010 / 1.3 + 0.005 / 1.0, down = 0.010 / 0.033 + 0.02 + 0.060 / 1.4 + 2.0;
    const double heater = (150.0 + 20.0 / up + 10.0 / down) / (1.0 / up + 1.0 / down);
    CHECK(std::fabs(r.heater_c[0] - heater) < 1e-4);
    CHECK(std::fabs(r.surface_c[0] - (20.0 + (heater - 20.0) / up / 10.8)) < 1e-4);
    CHECK(r.rest.heater_c == doctest::Approx(heater).epsilon(1e-10));
    // the same by the base characteristic: rest satisfies its own equation
    auto t = bathroom();
    t.duration_s = s.duration_s;
    t.times_s = s.times_s;
    t.error_k = 1e-3;
    const auto q = floor_warm_up(t);
    CHECK(q.surface_c[0] == doctest::Approx(q.rest.surface_c).epsilon(1e-5));
    CHECK(q.rest.up_w_per_m2 == doctest::Approx(8.92 * std::pow(q.rest.surface_c - 20.0, 1.1)).epsilon(1e-12));
    CHECK(q.rest.up_w_per_m2 + q.rest.down_w_per_m2 == doctest::Approx(150.0).epsilon(1e-12));
    CHECK(q.rest.down_w_per_m2 == doctest::Approx((q.rest.heater_c - 10.0) / down).epsilon(1e-9));
  }
}

TEST_CASE("floor: a source between two resistances is divided as by thin layers that store next to nothing") {
  auto s = bathroom();
  s.layers = {{"tile", 0.010, 1.3, 2300.0, 840.0, 0.0}, {"above", 0.0, 0.0, 0.0, 0.0, 0.05}, {"below", 0.0, 0.0, 0.0, 0.0, 0.2}, {"screed", 0.05,
      1.4, 2000.0, 1000.0, 0.0}};
  s.heater_after = 2;
  s.probe_after = 1;
  s.times_s = {600.0, 3600.0};
  s.duration_s = 3600.0;
  s.error_k = 1e-3;
  const auto exact = floor_warm_up(s);
  s.layers[1] = {"above", 0.001, 0.001 / 0.05, 1.0, 50.0, 0.0};
  s.layers[2] = {"below", 0.001, 0.001 / 0.2, 1.0, 50.0, 0.0};
  const auto thin = floor_warm_up(s);
  for (std::size_t i = 0; i < 2; ++i) {
    CHECK(std::fabs(exact.heater_c[i] - thin.heater_c[i]) < 3e-3);
    CHECK(std::fabs(exact.surface_c[i] - thin.surface_c[i]) < 3e-3);
  }
}

TEST_CASE("floor: energy is balanced, and switching stands on its threshold") {
  std::mt19937 random(7);
  const auto any = [&](double low, double high) { return std::uniform_real_distribution<double>(low, high)(random); };
  using senses = floor_thermostat::senses;
  for (int i = 0; i < 24; ++i) {
    auto s = bathroom();
    for (auto& l : s.layers)
      if (l.stores()) l.thickness_m *= any(0.5, 2.0);
    s.power_w_per_m2 = any(60.0, 220.0);
    s.initial_c = any(5.0, 25.0);
    s.below = {any(0.1, 5.0), any(-5.0, 20.0)};
    if (i % 2) s.cover_resistance = any(0.02, 0.5), s.cover_ratio = any(0.1, 1.0);
    if (i % 3 == 0) s.room = {any(10.0, 20.0), true, any(2e4, 2e5), any(2.0, 12.0), any(-5.0, 10.0)};
    if (i % 4 == 0) s.loss.is = surface_loss::law::parts;
    s.thermostat.by = static_cast<senses>(i % 4);
    s.thermostat.set_c = s.thermostat.by == senses::floor ? any(22.0, 30.0) : any(18.0, 24.0);
    s.thermostat.floor_limit_c = any(24.0, 30.0);
    s.thermostat.hysteresis_k = any(0.3, 2.0);
    s.duration_s = 7200.0;
    s.times_s = {3600.0, 7200.0};
    s.error_k = 0.1;
    const auto r = floor_warm_up(s);
    CHECK(r.balance_ratio < 1e-6);
    if (s.room.lumped) {
      const double moved = std::fabs(r.energy.up) + std::fabs(r.energy.lost_by_room);
      CHECK(std::fabs(r.energy.up - r.energy.lost_by_room - r.stored_by_room_j_per_m2) < 1e-6 * moved);
    }
    CHECK(r.on_ratio >= 0.0);
    CHECK(r.energy.supplied == doctest::Approx(r.on_ratio * s.duration_s * s.power_w_per_m2).epsilon(1e-9));
    // at the times of switching the sensed temperature stands on its threshold: asked for by name in a second run
    if (s.thermostat.by == senses::floor && !r.switched_s.empty()) {
      auto again = s;
      again.times_s.assign(1, r.switched_s[0]);
      const auto at = heating::detail::floor_run(again, 12, static_cast<int>(r.refinements), 0.02 * std::pow(0.125,
          static_cast<double>(r.refinements)), {}, true).run();
      const bool on_first = s.initial_c < s.thermostat.set_c;
      CHECK(at.probe_c[0] == doctest::Approx(s.thermostat.set_c + (on_first ? 0.5 : -0.5) * s.thermostat.hysteresis_k).epsilon(1e-7));
    }
  }
}

TEST_CASE("floor: a floor colder than the room takes heat in, and cover and heater have their order") {
  auto s = bathroom();
  s.power_w_per_m2 = 0.0;
  s.initial_c = 10.0;
  s.below = {};
  s.duration_s = 86400.0;
  const auto r = floor_warm_up(s);
  for (std::size_t i = 1; i < r.surface_c.size(); ++i) CHECK(r.surface_c[i] >= r.surface_c[i - 1] - 1e-9);
  CHECK(r.surface_c.back() < 20.0 + 1e-6);
  CHECK(r.energy.up < 0.0);
  auto c = bathroom();
  c.initial_c = 20.0;
  c.below.temperature_c = 20.0;
  c.cover_resistance = 0.15;
  c.cover_ratio = 0.5;
  const auto covered = floor_warm_up(c);
  for (std::size_t i = 1; i < covered.surface_c.size(); ++i) {
    CHECK(covered.covered_c[i] >= covered.surface_c[i] - 1e-9);
    CHECK(covered.heater_c[i] >= covered.surface_c[i] - 1e-9);
  }
  CHECK(covered.rest_covered.surface_c > covered.rest.surface_c);
  CHECK(covered.rest_covered.top_of_cover_c < covered.rest.surface_c);
}

TEST_CASE("floor: a pattern along the floor decays as its wave number says") {
  auto s = slab(0.05, 1, 0.0);
  s.initial_c = 10.0;
  s.wave_number_per_m = 2.0 * pi / 0.075;
  s.times_s = {30.0, 120.0, 300.0};
  s.duration_s = 300.0;
  s.error_k = 1e-4;
  const auto r = floor_warm_up(s);
  for (std::size_t i = 0; i < 3;
      ++i) CHECK(std::fabs(r.surface_c[i] - 10.0 * std::exp(-1.4 / 2e6 * s.wave_number_per_m * s.wave_number_per_m * s.times_s[i])) < 1e-4);
}

TEST_CASE("floor: what is refused") {
  const auto refused = [](auto change, std::string_view word) {
    auto s = bathroom();
    s.duration_s = 600.0;
    change(s);
    bool right = false;
    try {
      floor_warm_up(s);
    } catch (const range_error& e) {
      right = std::string_view(e.what()).find(word) != std::string_view::npos;
      if (!right) MESSAGE(e.what());
    }
    CHECK_MESSAGE(right, word);
  };
  refused([](floor_setup& s) { s.layers.clear(); }, "layers");
  refused([](floor_setup& s) { s.layers[0].thickness_m = 0.0; }, "without thickness");
  refused([](floor_setup& s) { s.layers[0].thickness_m = -0.01; }, "thickness_mm");
  refused([](floor_setup& s) { s.layers[0].conductivity_w_per_mk = 0.0; }, "conductivity_w_per_mk");
  refused([](floor_setup& s) { s.layers[0].specific_heat_j_per_kgk = 0.84; }, "not kJ");
  refused([](floor_setup& s) { s.initial_c = -300.0; }, "absolute zero");
  refused([](floor_setup& s) { s.room.temperature_c = -273.16; }, "absolute zero");
  refused([](floor_setup& s) { s.below.temperature_c = no_number; }, "below");
  refused([](floor_setup& s) { s.power_w_per_m2 = -1.0; }, "power_density");
  refused([](floor_setup& s) { s.heater_after = 9; }, "heater_after_layer");
  refused([](floor_setup& s) { s.layers = {{"contact", 0.0, 0.0, 0.0, 0.0, 0.02}}, s.heater_after = 1; }, "store heat");
  refused([](floor_setup& s) { s.layers.insert(s.layers.begin(), 3, {"carpet", 0.0, 0.0, 0.0, 0.0, 0.1}); }, "heater lies between");
  refused([](floor_setup& s) { s.thermostat = {floor_thermostat::senses::air, 22.0, 0.0}; }, "hysteresis");
  refused([](floor_setup& s) { s.times_s = {10.0, 5.0}; }, "times_s");
  refused([](floor_setup& s) { s.error_k = 0.0; }, "error_k");
}

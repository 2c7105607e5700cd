// SPDX-License-Identifier: MIT
// Enclosures: every value lies inside, and where a formula is monotone they are no wider than its corners.
#include <doctest/doctest.h>
#include <makegood/air/ducts.hpp>
#include <makegood/air/moist_air.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/registry.hpp>
#include <makegood/sensing/list.hpp>
#include <map>
#include <random>

using namespace makegood;

namespace {

using numbers = std::vector<double>;

/// A random box in the usual range whose corners are all permitted. One in eight is as narrow as a few steps of a double.
bool usual_box(const formula_info& f, std::mt19937& random, numbers& low, numbers& high) {
  const std::size_t n = f.args.size();
  for (int attempt = 0; attempt < 200; ++attempt) {
    low.assign(n, 0.0);
    high.assign(n, 0.0);
    const bool narrow = random() % 8 == 0;
    for (std::size_t i = 0; i < n; ++i) {
      const auto& a = f.args[i];
      if (a.table) {
        low[i] = high[i] = static_cast<double>(random() % a.table->rows.size());
        continue;
      }
      const double whole = a.usual.high - a.usual.low;
      const double width = whole * std::pow(10.0, std::uniform_real_distribution<>(-4.0, 0.0)(random));
      low[i] = a.usual.low + std::uniform_real_distribution<>(0.0, 1.0)(random) * (whole - width);
      high[i] = std::min(low[i] + width, a.usual.high);
      if (narrow) {
        high[i] = low[i];
        for (auto steps = random() % 6; steps > 0; --steps) high[i] = std::nextafter(high[i], a.usual.high);
      }
      if (random() % 4 == 0) high[i] = low[i];
    }
    bool permitted = true;
    detail::any_corner(n, low.data(), high.data(), [&](const double* x) { return !(permitted = !f.check(f.self, x)); });
    if (permitted) return true;
  }
  return false;
}
/// Steps of a double from a to b, of the size that they have at numbers of this scale; negative when b is below a.
double steps_between(double a, double b, double scale) {
  const double at = std::max({std::fabs(a), std::fabs(b), scale});
  return (b - a) / (std::nextafter(at, 1e300) - at);
}

/// Steps by which a bound may lie outside the corner's value in double: 8, or what the reason allows.
struct allowance {
  double steps = 8;
  const char* why = "up to 8 operations, each of which moves an end by one step";
};
const std::map<std::string, allowance> looser{
    {"electrical.voltage_drop_impedance", {16, "12 operations"}},
    {"electrical.cross_connected_resistance", {16, "11 operations"}},
    {"electrical.ring_voltage_drop", {16, "the difference of two lengths may be small beside them"}},
    {"electrical.adiabatic_time", {16, "the square doubles the steps of k S/I"}},
    {"electrical.adiabatic_final_temperature", {64, "exp of a number up to some 10 multiplies the steps of that number"}},
    {"electrical.current_capacity", {32, "two powers by exp and log, and their difference"}},
    {"electrical.installed_capacity", {16, "a power by exp and log"}},
    {"electrical.short_overload_current", {16, "tanh, two quotients and a root of a sum of squares"}},
    {"electrical.murray_loop_distance_unequal", {16, "6 operations; just above a power of two a step below is half a step above"}},
    {"electrical.varley_loop_distance", {16, "6 operations, two of them differences that magnify by up to 3"}},
    {"electrical.insulation_at_temperature", {32, "exp of a number up to 5 multiplies the steps of that number"}},
    {"electrical.awg_diameter", {32, "exp of a number up to 5 multiplies the steps of that number"}},
    {"electrical.awg_area", {64, "the square doubles the steps of the diameter"}},
    {"electrical.awg_gauge", {8192, "36 less a number of that size: it passes through 0 at 1/0, where steps are small"}},
    {"electrical.ring_leg_current", {16, "the difference of two lengths may be small beside them"}},
    {"electrical.protective_conductor_area", {16, "it steps up to 16 and from there at 35 mm²: boxes across are cut, not proved monotone"}},
    {"sensing.ntc_resistance", {32, "exp of a number up to 2"}},
    {"sensing.beta_from_two_points", {32, "log1p and 8 operations"}},
    {"sensing.steinhart_hart_resistance", {400, "exp of the root, a number up to 11, which itself has 4 steps and the residual's"}},
    {"sensing.metal_temperature", {64, "root of the curve; in steps at the size of the temperature"}},
    {"sensing.ntc_lead_error_k", {64, "log1p of a quotient with exp of a number up to 2"}},
    {"sensing.ntc_shunt_error_k", {64, "log1p of a quotient with exp of a number up to 2"}},
    {"sensing.shunt_resistance", {16, "5 operations, one of them a difference that magnifies"}},
    {"sensing.divider_sensor_power", {16, "7 operations, the quotient squared doubles its steps"}},
    {"sensing.ntc_sensitivity", {16, "the square doubles the steps of the temperature in kelvin"}},
    {"sensing.ntc_tolerance", {16, "14 operations, the square doubles the steps of the temperature in kelvin"}},
    {"sensing.ntc_tolerance_standard", {32, "18 operations"}},
    {"sensing.rtd_tolerance_ohm", {16, "12 operations"}},
    {"sensing.switching_ptc_coefficient", {32, "log1p and 8 operations"}},
    {"heating.radiation_heat_flow", {32, "12 operations"}},
    {"heating.plate_radiation", {32, "16 operations"}},
    {"heating.missing_parallel_mats", {64, "a difference that magnifies by up to 8"}},
    {"heating.radiation_coefficient", {16, "the cube triples the steps of the temperature in kelvin"}},
    {"heating.rayleigh_number", {32, "the cube triples the steps of the length"}},
    {"heating.vertical_plate_nusselt", {256, "roots of roots, of which each moves an end by 2 steps, then powers of 9 and 8 that multiply them, squared"}},
    {"heating.vertical_plate_nusselt_laminar", {32, "roots of roots"}},
    {"heating.horizontal_cylinder_nusselt", {256, "roots of roots, of which each moves an end by 2 steps, then powers of 9 and 8 that multiply them, squared"}},
    {"heating.vertical_plate_coefficient", {400, "that of the Nusselt number, and properties of air: some 50 operations more"}},
    {"heating.floor_limit_factor", {16, "a power"}},
    {"heating.radiator_output", {32, "exp of a number up to 4"}},
    {"heating.rail_surface_temperature", {32, "exp of a number up to 4"}},
    {"heating.warm_up_time", {64, "log1p of a quotient of differences"}},
    {"heating.mirror_clear_time", {64, "log1p of a quotient of differences"}},
    {"heating.mirror_clear_power", {128, "a dew point less a temperature: their difference magnifies"}},
    {"heating.pad_temperature_rise", {32, "tanh and 10 operations"}},
    {"air.friction_factor", {64, "the root of Colebrook-White, squared"}},
    {"air.friction_factor_colebrook", {64, "the root of Colebrook-White, squared"}},
    {"air.friction_factor_churchill", {64, "power of 16; the twelfth root by way of a plain logarithm, up to 9 places of it"}},
    {"air.friction_factor_swamee_jain", {32, "pow and log10, 2 steps each, squared"}},
    {"air.friction_factor_haaland", {32, "pow and log10, 2 steps each, squared"}},
    {"air.equivalent_diameter", {16, "two powers, 2 steps each"}},
    {"air.duct_velocity", {16, "the square doubles the steps of the diameter"}},
    {"air.duct_velocity_rectangular", {16, "5 operations; just above a power of two a step below is half a step above"}},
    {"air.duct_pressure_loss", {128, "the friction factor, with 64, in the transition Churchill's, and 15 operations"}},
    {"air.duct_pressure_loss_rectangular", {128, "the friction factor, with 64, in the transition Churchill's, and 20 operations"}},
    {"air.fan_law_flow", {16, "the cube of the size, 3 steps, and 3 operations"}},
    {"air.fan_law_pressure", {16, "two squares, 2 steps each, and 5 operations"}},
    {"air.fan_law_power", {32, "the cube of the speed and the fifth power of the size, and 8 operations"}},
    {"air.saturation_pressure_ice", {1000, "exp of a sum whose terms, up to 25 each, add up to 5 to 9"}},
    {"air.saturation_pressure", {1000, "exp of a sum whose terms, up to 25 each, add up to 5 to 9"}},
    {"air.vapour_pressure", {1000, "that of the saturation pressure"}},
    {"air.relative_humidity", {2000, "two saturation pressures"}},
    {"air.air_density", {64, "saturation pressure, in a part of some per cent"}},
    {"air.dew_point", {100, "root of the logarithm of a saturation pressure; in steps at 273 K"}},
    {"air.saturation_pressure_magnus", {32, "exp of a number up to 2"}},
    {"air.saturation_pressure_iso13788", {32, "exp of a number up to 2"}},
    {"air.surface_relative_humidity", {64, "two saturation pressures, 32 each"}},
    {"air.critical_surface_temperature", {100, "logarithm of a saturation pressure, turned round by a pole; in steps at 273 K"}},
    {"air.air_viscosity", {16, "8 operations, one of them a root"}},
    {"lighting.point_illuminance", {16, "10 operations, one of them a root"}},
    {"lighting.point_illuminance_vertical", {32, "11 operations, and the cosine of an angle up to 80°, where 1 step of the angle is 8 of the cosine"}},
    {"lighting.luminous_intensity", {16, "9 operations, one of them a root"}},
    {"lighting.luminous_intensity_from_flux", {16, "8 operations and the square of a sine"}},
    {"lighting.line_illuminance", {32, "two roots, and 14 operations"}},
    {"air.saturation_pressure_sonntag", {1000, "exp of a sum whose terms, up to 25 each, add up to 5 to 9"}},
    {"air.saturation_pressure_iapws", {2000, "a difference of squares that loses digits, its root, to the power of four"}},
    {"air.saturation_temperature", {100, "root of the logarithm of a saturation pressure; in steps at 273 K"}},
    {"air.relative_humidity_from_humidity_ratio", {2000, "that of the saturation pressure"}},
    {"air.air_density_from_humidity_ratio", {16, "9 operations"}},
    {"air.vapour_concentration", {2000, "that of the saturation pressure"}},
    {"air.moisture_removed", {8000, "two saturation pressures, whose difference magnifies"}},
    {"air.humidity_ratio_from_wet_bulb", {4000, "that of the saturation pressure, and a difference that magnifies"}},
    {"air.relative_humidity_from_wet_bulb", {4000, "two saturation pressures, and a difference that magnifies"}},
    {"air.wet_bulb", {100, "root of a balance of products with saturation pressures; in steps at 273 K"}},
    {"air.standard_pressure", {32, "a power by exp and log"}},
    {"air.altitude_from_pressure", {1000, "1 less a power near 1"}},
    {"air.decay_concentration", {400, "exp of a number up to 60"}},
    {"air.room_concentration", {400, "1 less exp of a small number"}},
    {"air.time_to_concentration", {100, "log1p of a quotient of differences"}},
    {"air.air_changes_from_decay", {100, "logarithm of a quotient of differences"}},
    {"air.stack_pressure", {16, "a difference that magnifies"}},
    {"air.stack_pressure_from_temperatures", {64, "a difference that magnifies, and two temperatures in kelvin"}},
    {"air.infiltration_flow", {16, "6 operations and a root"}},
    {"air.grille_flow", {16, "4 operations; just above a power of two a step below is half a step above"}},
    {"air.orifice_discharge_coefficient", {4e12, "a sum of parts of both signs: monotone, but cutting does not prove it on a wide box, where 1e-4 of the result is left open"}},
    {"air.orifice_flow", {100, "a quotient to the power of four, taken off 1, and a root"}},
    {"air.diverging_branch_coefficient", {400, "parts that cancel; it may pass through 0"}},
    {"air.diverging_run_coefficient", {64, "it passes through 0 at a share of one half"}},
    {"air.converging_branch_coefficient", {400, "parts that cancel; it passes through 0"}},
    {"air.converging_run_coefficient", {4000, "parts that cancel; it may pass through 0"}},
};
/// Each formula has a stream of its own, so that a new one does not move the boxes of the others.
std::mt19937 drawn_for(const std::string& name, std::uint32_t seed) {
  for (const char c : name) seed = (seed ^ static_cast<unsigned char>(c)) * 16777619u;
  return std::mt19937(seed);
}
/// The friction factor steps at Re 2300 and 4000, so that a box on which the regime changes is not monotone; the wet bulb where it freezes.
bool regime_changes(const std::string& name, const numbers& x) {
  if (name == "air.wet_bulb") return air::wet_bulb.unchecked(x[0], x[1], x[2]) < 0.0;
  if (name == "air.duct_pressure_loss") return air::reynolds_number.unchecked(air::duct_velocity.unchecked(x[0], x[1]), x[1], x[4], x[5]) < 4000.0;
  if (name != "air.duct_pressure_loss_rectangular") return false;
  return air::reynolds_number.unchecked(air::duct_velocity_rectangular.unchecked(x[0], x[1], x[2]), air::hydraulic_diameter.unchecked(x[1], x[2]), x[5], x[6]) < 4000.0;
}

}  // namespace

TEST_CASE("bounds hold every value, and are those of the corners where a formula is monotone") {
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    const std::string name = e.full_name();
    CAPTURE(name);
    std::mt19937 random = drawn_for(name, 20260202);
    const auto& f = e.formula;
    const std::size_t n = f.args.size();
    int boxes = 0, monotone_boxes = 0;
    double worst = 0.0;
    for (int k = 0; k < 40; ++k) {
      numbers low, high, x(n), slopes(n);
      if (!usual_box(f, random, low, high)) continue;
      ++boxes;
      const interval y = f.bounds(f.self, low.data(), high.data());
      std::vector<int> up(n), down(n);
      bool inside = true, steady = true;
      for (int p = 0; p < 200; ++p) {
        for (std::size_t i = 0; i < n; ++i)
          x[i] = std::clamp(std::uniform_real_distribution<>(0.0, 1.0)(random) * (high[i] - low[i]) + low[i], low[i], high[i]);
        if (f.check(f.self, x.data())) continue;
        const double value = f.gradient(f.self, x.data(), slopes.data());
        inside = inside && y.contains(value);
        steady = steady && !regime_changes(name, x);
        for (std::size_t i = 0; i < n; ++i) {
          up[i] += slopes[i] > 0.0;
          down[i] += slopes[i] < 0.0;
        }
      }
      double least = detail::endless, most = -detail::endless;
      detail::any_corner(n, low.data(), high.data(), [&](const double* corner) {
        const double value = f.value(f.self, corner);
        inside = inside && y.contains(value);
        least = std::min(least, value);
        most = std::max(most, value);
        steady = steady && !regime_changes(name, numbers(corner, corner + n));
        return false;
      });
      CAPTURE(k);
      CAPTURE(y.low);
      CAPTURE(y.high);
      CHECK(inside);
      bool monotone = steady;
      for (std::size_t i = 0; i < n; ++i) monotone = monotone && (up[i] == 0 || down[i] == 0);
      if (!monotone) continue;
      ++monotone_boxes;
      const double scale = f.result.unit.celsius ? 273.15 : 0.0;  // it is computed in kelvin
      worst = std::max({worst, steps_between(y.low, least, scale), steps_between(most, y.high, scale)});
    }
    const allowance allowed = looser.contains(name) ? looser.at(name) : allowance{};
    CAPTURE(allowed.why);
    CHECK(worst <= allowed.steps);
    CHECK(boxes >= 30);
    CHECK(monotone_boxes >= 20);
  }
}

TEST_CASE("a box of no width gives the value") {
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    const std::string name = e.full_name();
    CAPTURE(name);
    std::mt19937 random = drawn_for(name, 20260303);
    const auto& f = e.formula;
    numbers low, high;
    for (int k = 0; k < 10; ++k) {
      if (!usual_box(f, random, low, high)) continue;
      const interval y = f.bounds(f.self, low.data(), low.data());
      const double value = f.value(f.self, low.data());
      const double steps = looser.contains(name) ? looser.at(name).steps : 8;
      CHECK(y.contains(value));
      CHECK(steps_between(y.low, y.high, f.result.unit.celsius ? 273.15 : 0.0) <= 2.0 * steps);
    }
  }
}

TEST_CASE("bounds of formulas that are not monotone") {
  // z I x (1 - x/L): with z = 20 mΩ/m, I = 10 A, L = 80 m the highest drop is z I L/4 = 4 V, at the middle of the ring
  const double low[] = {20, 80, 10, 10, 0}, high[] = {20, 80, 70, 10, 0};
  const interval ring = bounds(electrical::ring_voltage_drop, low, high);
  CHECK(ring.high >= 4.0);
  CHECK(ring.high <= 4.0 * (1.0 + 1e-9));
  CHECK(ring.low <= 0.02 * 10 * 10 * 0.875);
  CHECK(ring.low >= 0.02 * 10 * 10 * 0.875 * (1.0 - 1e-14));
  // b (r cos φ + x sin φ) I L is highest at tan φ = x/r: with r = x = 1 mΩ/m, I = 10 A, L = 100 m, b = 1 it is √2 V
  const interval drop = electrical::voltage_drop_impedance(electrical::voltage_drop_impedance_arguments<interval>{1.0, 1.0, 10.0, 100.0, interval(0.6, 0.99), 1.0});
  CHECK(drop.high >= 1.4142135623730951);
  CHECK(drop.high <= 1.4142135623730951 * (1.0 + 1e-9));
  // class A: 0.15 K + 0.002 |t| has its lowest value inside the box
  const interval tolerance = sensing::rtd_tolerance("A", interval(-50.0, 100.0));
  CHECK(tolerance.low == doctest::Approx(0.15).epsilon(1e-12));
  CHECK(tolerance.high == doctest::Approx(0.35).epsilon(1e-12));
  CHECK(tolerance.contains(0.15));
}

TEST_CASE("bounds across a branch") {
  // laminar below Re 2300 (64/Re), Colebrook-White above 4000: the box holds both and the transition
  const interval f = air::friction_factor(interval(1000.0, 10000.0), 0.001);
  CHECK(f.contains(0.064));
  CHECK(f.contains(64.0 / 2300.0));
  CHECK(f.low == doctest::Approx(64.0 / 2300.0).epsilon(1e-9));
  CHECK(f.high == doctest::Approx(0.064).epsilon(1e-9));
  // the turbulent factor is not defined from Re 0, but the branch is not taken there: the pieces of the box show it
  const double low[] = {0, 150, 10, 0.1, 1.2, 1.8e-5}, high[] = {30, 150, 10, 0.1, 1.2, 1.8e-5};
  const interval loss = bounds(air::duct_pressure_loss, low, high);
  CHECK(loss.low == 0.0);
  CHECK(loss.contains(air::duct_pressure_loss.value(high)));
  // platinum across 0 °C, where the equation changes without a step
  const interval r = sensing::rtd_resistance(interval(-20.0, 120.0), 100.0);
  CHECK(steps_between(r.low, sensing::rtd_resistance(-20.0, 100.0), 0.0) <= 8);
  CHECK(steps_between(sensing::rtd_resistance(120.0, 100.0), r.high, 0.0) <= 8);
}

TEST_CASE("what has no bounds is refused") {
  const auto text_of = [](auto call_it) -> std::string {
    try {
      call_it();
    } catch (const range_error& e) {
      return std::string("range: ") + e.what();
    } catch (const relation_error& e) {
      return std::string("relation: ") + e.what();
    }
    return {};
  };
  using electrical::voltage_drop;
  CHECK(text_of([] { voltage_drop(44.0, 16.0, interval(-4.0, 10.0)); }) == "range: voltage_drop: length_m: -4 m is below 0 m");
  CHECK(text_of([] { voltage_drop(44.0, 16.0, interval(22.0, 20.0)); }) ==
        "relation: voltage_drop: length_m: the lower bound 22 m is above the upper bound 20 m");
  const double nan_low[] = {44, 16, no_number}, nan_high[] = {44, 16, 20};
  CHECK(text_of([&] { bounds(voltage_drop, nan_low, nan_high); }).find("range: voltage_drop: length_m: not a number") == 0);
  CHECK(text_of([&] { bounds(voltage_drop, nan_high, nan_low); }).find("range: voltage_drop: length_m: not a number") == 0);
  // one corner breaks the relation
  const double low[] = {20, 80, 10, 10, 0}, high[] = {20, 80, 81, 10, 0};
  CHECK(text_of([&] { bounds(electrical::ring_voltage_drop, low, high); }).find("relation: ring_voltage_drop: the load is not further along") == 0);
  // each corner is permitted, but between them the two temperatures are equal
  const double t_low[] = {20, 10000, 10, 5000}, t_high[] = {20, 10000, 30, 5000};
  CHECK(text_of([&] { bounds(sensing::beta_from_two_points, t_low, t_high); }).find("range: beta_from_two_points: between these bounds lie arguments without a result") == 0);
}

TEST_CASE("comparisons of intervals are certain, impossible or undecided") {
  const interval a(1.0, 2.0), b(2.0, 3.0), c(2.5, 4.0), point(2.0);
  CHECK((a < c).certain());
  CHECK((c < a).impossible());
  CHECK((b < c).undecided());
  // at equality
  CHECK((a < b).undecided());
  CHECK((a <= b).certain());
  CHECK((b < a).impossible());
  CHECK((b <= a).undecided());
  CHECK((b >= a).certain());
  CHECK((a > b).impossible());
  CHECK((point < point).impossible());
  CHECK((point <= point).certain());
  CHECK((!(point <= point)).impossible());
  CHECK(((a < c) && (b < c)).undecided());
  CHECK(((a < c) || (b < c)).certain());
  // one side is taken where it is certain, both where it is not
  const auto is = [](const interval& x, double low, double high) { return x.low == low && x.high == high; };
  CHECK(is(select(a < c, 5.0, interval(7.0)), 5.0, 5.0));
  CHECK(is(select(c < a, interval(5.0), 7.0), 7.0, 7.0));
  CHECK(is(select(b < c, interval(5.0), interval(7.0)), 5.0, 7.0));
  CHECK(is(minimum(b, c), 2.0, 3.0));
  CHECK(is(maximum(b, c), 2.5, 4.0));
}

TEST_CASE("arithmetic of intervals") {
  const auto is = [](const interval& x, double low, double high) { return x.low == low && x.high == high && !x.undefined; };
  // exact results stay, others move outwards
  CHECK(is(interval(1.0, 2.0) + interval(3.0), 4.0, 5.0));
  CHECK(is(interval(1.0, 2.0) - interval(1.0, 2.0), -1.0, 1.0));
  CHECK(is(interval(-1.0, 2.0) * interval(-3.0, 4.0), -6.0, 8.0));
  CHECK(is(interval(1.0, 2.0) / interval(4.0, 8.0), 0.125, 0.5));
  CHECK(is(square(interval(-3.0, 2.0)), 0.0, 9.0));
  CHECK(is(cube(interval(-3.0, 2.0)), -27.0, 8.0));
  CHECK(is(fabs(interval(-3.0, 2.0)), 0.0, 3.0));
  CHECK(is(sqrt(interval(0.0, 9.0)), 0.0, 3.0));
  CHECK(is(interval(0.0) * interval(-detail::endless, detail::endless), 0.0, 0.0));
  const interval third = interval(1.0) / interval(3.0);
  CHECK(third.low < third.high);
  CHECK(third.contains(1.0 / 3.0));
  const interval one = third * interval(3.0);
  CHECK(one.low < 1.0);
  CHECK(one.high > 1.0);
  const interval tenth = interval(0.1) + interval(0.2);
  CHECK(tenth.low < 0.30000000000000004);
  CHECK(tenth.high > 0.30000000000000004);
  // across zero
  for (const interval& by : {interval(-1.0, 1.0), interval(0.0, 1.0), interval(-1.0, 0.0), interval(0.0)}) {
    const interval q = interval(1.0) / by;
    CHECK(q.low == -detail::endless);
    CHECK(q.high == detail::endless);
    CHECK(q.undefined);
  }
  // NaN is never inside, and never an end
  CHECK_FALSE(interval::anything().contains(no_number));
  CHECK(interval(no_number).undefined);
  CHECK(interval(no_number).low == -detail::endless);
  CHECK((interval::anything() - interval::anything()).low == -detail::endless);
  CHECK((interval::anything() / interval::anything()).high == detail::endless);
  // beyond the largest double
  const interval huge = interval(1e300) * interval(1e300);
  CHECK(is_finite(huge.low));
  CHECK(huge.high == detail::endless);
  // below the smallest
  const interval tiny = interval(1e-300) * interval(1e-300);
  CHECK(tiny.low <= 0.0);
  CHECK(tiny.high > 0.0);
}

TEST_CASE("functions of intervals") {
  using v1::cbrt, v1::cos, v1::exp, v1::log, v1::log10, v1::log1p, v1::pow, v1::sin, v1::sqrt, v1::tanh;  // not those of the C library
  // at random, against points inside
  std::mt19937 random(11);
  const auto around = [&](double low, double high, auto f) {
    bool inside = true;
    for (int k = 0; k < 300; ++k) {
      double a = std::uniform_real_distribution<>(low, high)(random), b = std::uniform_real_distribution<>(low, high)(random);
      if (b < a) std::swap(a, b);
      const interval y = f(interval(a, b));
      for (int p = 0; p <= 20; ++p) inside = inside && y.contains(f(std::clamp(a + (b - a) * p / 20.0, a, b)));
      inside = inside && !y.undefined;
    }
    return inside;
  };
  CHECK(around(0.0, 9.0, [](auto x) { return sqrt(x); }));
  CHECK(around(1e-3, 9.0, [](auto x) { return log(x); }));
  CHECK(around(1e-3, 9.0, [](auto x) { return log10(x); }));
  CHECK(around(-0.9, 9.0, [](auto x) { return log1p(x); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return exp(x); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return cbrt(x); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return tanh(x); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return sin(x); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return cos(x); }));
  CHECK(around(0.0, 9.0, [](auto x) { return pow(x, 1.11); }));
  CHECK(around(0.1, 9.0, [](auto x) { return pow(x, -1.5); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return pow(x, 2.0); }));
  CHECK(around(-9.0, 9.0, [](auto x) { return pow(x, 3.0); }));
  CHECK(around(-9.0, -0.1, [](auto x) { return pow(x, -2.0); }));
  CHECK(around(-9.0, -0.1, [](auto x) { return pow(x, -3.0); }));
  CHECK(sin(interval(1.0, 2.0)).high == 1.0);
  CHECK(sin(interval(4.0, 5.0)).low == -1.0);
  CHECK(cos(interval(-1.0, 1.0)).high == 1.0);
  CHECK(cos(interval(3.0, 4.0)).low == -1.0);
  CHECK(sin(interval(0.1, 0.2)).high < 0.2);
  CHECK(log(interval(1.0)).high == 0.0);
  CHECK(exp(interval(0.0)).low == 1.0);
  // outside their range
  CHECK(sqrt(interval(-1.0, 4.0)).undefined);
  CHECK(sqrt(interval(-1.0, 4.0)).high == 2.0);
  CHECK(log(interval(0.0, 1.0)).low == -detail::endless);
  CHECK(log(interval(0.0, 1.0)).undefined);
  CHECK(log(interval(-2.0, -1.0)).undefined);
  CHECK(pow(interval(-1.0, 1.0), 0.5).undefined);
  CHECK(pow(interval(-1.0, 1.0), -2.0).undefined);
}

TEST_CASE("a root is enclosed, or nothing is said") {
  // x² = p for p from 4 to 9: from 2 to 3, wherever the start lies
  const auto solve = [](interval p, double start) {
    return root<8>("x", unit::one, start, [&](const auto& x) { return std::pair(square(x) - p, 2.0 * x); }, p);
  };
  const interval x = solve({4.0, 9.0}, 2.4);
  CHECK(x.low <= 2.0);
  CHECK(x.high >= 3.0);
  CHECK_FALSE(x.undefined);
  const interval two = solve(4.0, 3.0);
  CHECK(two.contains(2.0));
  CHECK(steps_between(two.low, two.high, 0.0) <= 16);
  // a double root at 0 is not proved
  CHECK(solve({0.0, 1.0}, 1.0).undefined);
  CHECK(solve({-2.0, -1.0}, 1.0).undefined);
}

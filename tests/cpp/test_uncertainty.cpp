// SPDX-License-Identifier: MIT
// Measured in full: degrees of freedom, correlation, second order, Monte Carlo; held against the worked examples of the guides
// (tests/published/uncertainty.csv). Their models are of metrology, not of a subject of the library, so they stand here.
#include <doctest/doctest.h>
#include <algorithm>
#include <cmath>
#include <limits>
#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/monte_carlo.hpp>
#include <makegood/registry.hpp>
#include <makegood/sensing/list.hpp>
#include "ledger.hpp"

namespace makegood::guides {  // here log() is the library's
namespace {

constexpr range anything{-1e15, 1e15};
constexpr arg any(std::string_view name) { return arg(name, name, unit::one, anything, "a number"); }

MAKEGOOD_ARGUMENTS(gauge_arguments, (ls, d, alpha_s, theta, dalpha, dtheta));
inline constexpr auto end_gauge = formula(
    out{"end_gauge", "l", unit::one, "Length of an end gauge."},
    in<gauge_arguments>(any("ls"), any("d"), any("alpha_s"), any("theta"), any("dalpha"), any("dtheta")), source{"GUM", "H.1"},
    [](auto ls, auto d, auto alpha_s, auto theta, auto dalpha, auto dtheta) { return ls + d - ls * (dalpha * theta + alpha_s * dtheta); });
inline constexpr auto resistance = formula(
    out{"resistance", "R", unit::one, "Resistance."}, in(any("v"), any("i"), any("phi")), source{"GUM", "H.2"},
    [](auto v, auto i, auto phi) { return v / i * cos(phi); });
inline constexpr auto reactance = formula(
    out{"reactance", "X", unit::one, "Reactance."}, in(any("v"), any("i"), any("phi")), source{"GUM", "H.2"},
    [](auto v, auto i, auto phi) { return v / i * sin(phi); });
inline constexpr auto quotient = formula(
    out{"quotient", "Z", unit::one, "Quotient."}, in(any("v"), any("i")), source{"GUM", "H.2"}, [](auto v, auto i) { return v / i; });
inline constexpr auto quotient_product = formula(
    out{"quotient_product", "Y", unit::one, "Quotient times a number."}, in(any("a"), any("b"), any("c")), source{"", ""},
    [](auto a, auto b, auto c) { return a / b * c; });
MAKEGOOD_ARGUMENTS(four_arguments, (a, b, c, d));
inline constexpr auto sum_of_four = formula(
    out{"sum_of_four", "Y", unit::one, "Sum."}, in<four_arguments>(any("a"), any("b"), any("c"), any("d")), source{"JCGM 101", "9.2"},
    [](auto a, auto b, auto c, auto d) { return a + b + c + d; });
inline constexpr auto sum_of_two = formula(
    out{"sum_of_two", "Y", unit::one, "Sum."}, in(any("a"), any("b")), source{"", ""}, [](auto a, auto b) { return a + b; });
inline constexpr auto comparison_loss = formula(
    out{"comparison_loss", "Y", unit::one, "Loss."}, in(any("a"), any("b")), source{"JCGM 101", "9.4"}, [](auto a, auto b) { return a * a + b * b; });
MAKEGOOD_ARGUMENTS(mass_arguments, (reference, difference, air, weight, standard));
inline constexpr auto mass = formula(
    out{"mass", "dm", unit::one, "Deviation of a weight."},
    in<mass_arguments>(any("reference"), any("difference"), any("air"), any("weight"), any("standard")), source{"JCGM 101", "9.3"},
    [](auto reference, auto difference, auto air, auto weight, auto standard) {
      return (reference + difference) * (1.0 + (air - 1.2) * (1.0 / weight - 1.0 / standard)) - 100000.0;
    });
inline constexpr auto logarithm = formula(
    out{"logarithm", "Y", unit::one, "Logarithm."}, in(arg("x", "x", unit::one, positive, "a number")), source{"", ""}, [](auto x) { return log(x); });
MAKEGOOD_ARGUMENTS(expansion_arguments, (l0, l1, t0, t1));
inline constexpr auto expansion = formula(
    out{"expansion", "a", unit::one, "Coefficient of expansion."}, in<expansion_arguments>(any("l0"), any("l1"), any("t0"), any("t1")), source{"", ""},
    [](auto l0, auto l1, auto t0, auto t1) { return (l1 - l0) / (l0 * (t1 - t0)); });

}  // namespace
}  // namespace makegood::guides

using namespace makegood;
using namespace makegood::guides;

namespace {

struct inputs_of_row {
  document::value all;
  double operator()(std::string_view name) const {
    const auto* x = all.as<document::object>()->find(name);
    REQUIRE_MESSAGE(x, std::string(name));
    return *x->as<double>();
  }
  std::vector<double> list(std::string_view name) const {
    std::vector<double> v;
    for (const auto& x : *all.as<document::object>()->find(name)->as<document::array>())
      v.push_back(x.as<double>() ? *x.as<double>() : without_end);  // "inf"
    return v;
  }
  std::string word(std::string_view name) const { return *all.as<document::object>()->find(name)->as<std::string>(); }
  bool has(std::string_view name) const { return all.as<document::object>()->find(name) != nullptr; }
};

/// A value, and what the trials that it comes from say it may be off.
struct answer {
  double value, doubt = 0.0;
};
monte_carlo_options many() {
  monte_carlo_options how;
  how.trials = 4'000'000;
  return how;
}
answer of_trials(const monte_carlo_result& r, const std::string& field) {
  if (field == "mean") return {r.mean, r.doubt_mean};
  if (field == "standard_uncertainty") return {r.standard_uncertainty, r.doubt_u};
  if (field == "shortest_low") return {r.shortest_low, r.doubt_low};
  if (field == "shortest_high") return {r.shortest_high, r.doubt_high};
  REQUIRE(field == "half_interval");
  return {0.5 * (r.high - r.low), 0.5 * std::hypot(r.doubt_low, r.doubt_high)};
}

answer answer_of(const std::string& model, const std::string& field, const inputs_of_row& x) {
  if (model == "end_gauge") {
    const measured in[] = {{x("ls_nm"), x("u_ls_nm"), "ls", x("nu_ls")},     {x("d_nm"), x("u_d_nm"), "d", x("nu_d")},
                           {x("alpha_s"), x("u_alpha_s"), "alpha_s"},         {x("theta_c"), x("u_theta_c"), "theta"},
                           {x("dalpha"), x("u_dalpha"), "dalpha", x("nu_dalpha")}, {x("dtheta_c"), x("u_dtheta_c"), "dtheta", x("nu_dtheta")}};
    const measured y = end_gauge(gauge_arguments<measured>{in[0], in[1], in[2], in[3], in[4], in[5]});
    if (field == "value") return {y.value};
    if (field == "standard_uncertainty") return {y.standard_uncertainty()};
    if (field == "dof") return {std::floor(y.effective_dof())};
    if (field == "expanded_99") return {y.expanded_uncertainty(0.99)};
    for (const auto& p : y.parts)
      if ("part_" + p.source == field) return {std::fabs(p.u)};
  }
  if (model == "student") return {student_factor(x("p"), x("nu"))};
  if (model == "sum") {
    const auto u = x.list(x.has("u") ? "u" : x.has("u_nm") ? "u_nm" : "rel_u_pct"), nu = x.list("nu");
    measured y(0.0);
    for (std::size_t i = 0; i < u.size(); ++i) y = y + measured(0.0, u[i], std::to_string(i), nu[i]);
    return {field == "dof" ? y.effective_dof() : y.standard_uncertainty()};
  }
  if (model == "impedance") {
    auto current = x.list("I_ma");
    for (double& i : current) i /= 1000.0;
    const auto m = measured_together({x.list("V_v"), current, x.list("phi_rad")}, "sets");
    const measured r = resistance(m[0], m[1], m[2]), z = quotient(m[0], m[1]);
    if (field == "R") return {r.value};
    if (field == "u_R") return {r.standard_uncertainty()};
    if (field == "Z") return {z.value};
    if (field == "u_Z") return {z.standard_uncertainty()};
    if (field == "r_RX") return {correlation(r, reactance(m[0], m[1], m[2]))};
    const auto alone = [](const measured& v, const char* name) { return measured(v.value, v.standard_uncertainty(), name, 4); };
    return {resistance(alone(m[0], "v"), alone(m[1], "i"), alone(m[2], "phi")).standard_uncertainty()};
  }
  if (model == "line") {
    const auto line = line_through(x.list("t_c"), x.list("b_c"), x("t0_c"), "points");
    if (field == "intercept") return {line.intercept.value};
    if (field == "u_intercept") return {line.intercept.standard_uncertainty()};
    if (field == "at_30") return {line.at(30.0).value};
    return {correlation(line.intercept, line.slope)};
  }
  if (model == "quotient_product")
    return {quotient_product(measured(x("X1"), x("u1"), "1", x("nu1")), measured(x("X2"), x("u2"), "2", x("nu2")), measured(x("Yu"), x("u3"), "3", x("nu3"))).standard_uncertainty()};
  if (model == "half_width") {
    const double a = x("half_width");
    return {(field == "rectangular" ? distribution::rectangular(-a, a) : field == "triangular" ? distribution::triangular(-a, a) : distribution::arcsine(-a, a)).standard_uncertainty()};
  }
  if (model == "difference") {
    const auto r = x.list("r_ohm");
    const double root3 = std::sqrt(3.0);
    std::vector<measured> m;
    for (std::size_t i = 0; i < 2; ++i) {
      m.emplace_back(r[i], r[i] * x("gain_halfwidth_rel") / root3, "gain");
      m.back().add("offset " + std::to_string(i), x("offset_halfwidth_ohm") / root3);
    }
    return {(m[0] - m[1]).standard_uncertainty()};
  }
  if (model == "sum_of_four") {
    const auto sd = x.list("sd");
    const auto one = [&](std::size_t i) -> uncertain {
      const double half = sd[i] * std::sqrt(3.0);
      return x.word("dist") == "normal" ? distribution::normal(0.0, sd[i]) : distribution::rectangular(-half, half);
    };
    return of_trials(monte_carlo(sum_of_four, {one(0), one(1), one(2), one(3)}, many()), field);
  }
  if (model == "mass") {
    const auto a = x.list("rho_a"), w = x.list("rho_W"), s = x.list("rho_R");
    const std::vector<uncertain> in{distribution::normal(x("m_Rc_mg"), x("u")), distribution::normal(x("dm_Rc_mg"), x("u_dm")), distribution::rectangular(a[0], a[1]),
                                    distribution::rectangular(w[0], w[1]), distribution::rectangular(s[0], s[1])};
    if (field == "first_order") return {propagate(mass, in).first_order.standard_uncertainty()};
    return of_trials(monte_carlo(mass, in, many()), field);
  }
  if (model == "comparison_loss") {
    const measured a(x("x1"), x("u_x1"), "a"), b(x("x2"), x("u_x2"), "b");
    if (field == "first_order") return {comparison_loss(a, b).standard_uncertainty()};
    return of_trials(monte_carlo(comparison_loss, {a, b}, many()), field);
  }
  if (model == "logarithm") {
    const auto d = distribution::rectangular(0.1, 1.1);
    const measured y = logarithm(d.as_measured("x"));
    if (field == "value") return {y.value};
    if (field == "first_order") return {y.standard_uncertainty()};
    return of_trials(monte_carlo(logarithm, {d}, many()), field);
  }
  if (model == "expansion") {
    const double nu = x("nu_each");
    return {expansion(expansion_arguments<measured>{measured(x("L0_m"), x("u_L0"), "l0", nu), measured(x("L1_m"), x("u_L1"), "l1", nu),
                                                    measured(x("T0_k"), x("u_T0"), "t0", nu), measured(x("T1_k"), x("u_T1"), "t1", nu)}).value};
  }
  const std::string what = model + "." + field;
  FAIL(what);
  return {no_number};
}

}  // namespace

TEST_CASE("uncertainty: the worked examples of the guides come out") {
  const auto rows = ledger::read(std::string(MAKEGOOD_PUBLISHED_DIR) + "/uncertainty.csv");
  REQUIRE(rows.size() >= 40);
  for (const auto& r : rows) {
    CAPTURE(r.at("model") + "." + r.at("field"));
    CAPTURE(r.at("source") + ", " + r.at("locator"));
    const auto got = answer_of(r.at("model"), r.at("field"), {job::parse_json(r.at("inputs"))});
    const double wanted = std::stod(r.at("expected"));
    const double slack = ledger::tolerance(r, wanted) * (1.0 + 1e-9) + 2.0 * got.doubt;
    CHECK_MESSAGE(std::fabs(got.value - wanted) <= slack, "wanted ", wanted, ", got ", got.value, ", tolerance ", slack);
  }
}

TEST_CASE("uncertainty: what cannot have effective degrees of freedom is refused") {
  const measured a(1.0, 0.1, "meter", 5.0), b(2.0, 0.1, "meter", 9.0);
  CHECK((a + a).effective_dof() == doctest::Approx(5.0));  // one source through two inputs is one term
  CHECK_THROWS_AS((a + b).effective_dof(), range_error);   // but not with two numbers of freedom
  CHECK((a + b).standard_uncertainty() == doctest::Approx(0.2));
  CHECK_THROWS_AS(measured(1.0, 0.1, "one", 0.9).coverage_factor(), range_error);
  CHECK(std::isinf(measured(1.0, 0.1, "x").effective_dof()));
  CHECK(measured(1.0, 0.1, "x").coverage_factor(0.95) == doctest::Approx(1.959963984540054));
  CHECK(measured::exact(3.0).expanded_uncertainty(0.95) == 0.0);
  // an ensemble is one term: five sets of three quantities leave four degrees of freedom, through any formula
  const auto m = measured_together({{1.0, 1.1, 0.9, 1.05}, {2.0, 2.1, 2.2, 1.9}}, "sets");
  CHECK((m[0] + m[1]).effective_dof() == doctest::Approx(3.0));
  CHECK(measured::ensemble_of("sets #12") == "sets");
  CHECK(measured::ensemble_of("sets #") == "sets #");
  CHECK(measured::ensemble_of("sets #a") == "sets #a");
}

TEST_CASE("uncertainty: a covariance goes in and comes out again") {
  const std::vector<double> values{1.0, 2.0, 3.0}, c{4.0, 1.0, -2.0, 1.0, 9.0, 0.5, -2.0, 0.5, 16.0};
  const auto m = measured_together(values, c, "three");
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t j = 0; j < 3; ++j) CHECK(covariance(m[i], m[j]) == doctest::Approx(c[3 * i + j]));
  CHECK(correlation(m[0], m[0]) == doctest::Approx(1.0));
  CHECK_THROWS_AS(measured_together(values, std::vector<double>{1, 2, 0, 2, 1, 0, 0, 0, 1}, "bad"), range_error);  // a correlation of 2
  CHECK_THROWS_AS(measured_together(values, std::vector<double>{1, 0.5, 0, 0.4, 1, 0, 0, 0, 1}, "bad"), range_error);
  const auto same = measured_together(std::vector<double>{1.0, 2.0}, std::vector<double>{1.0, 2.0, 2.0, 4.0}, "tied");
  CHECK(correlation(same[0], same[1]) == doctest::Approx(1.0));
  CHECK(same[1].standard_uncertainty() == doctest::Approx(2.0));
}

TEST_CASE("uncertainty: the second order") {
  // x^2 + y^2 at (0.01, 0): variance of a non-central chi-square of two degrees of freedom (JCGM 101, 9.4), which ends with the second order
  const auto s = to_second_order(comparison_loss, measured(0.01, 0.005, "a"), measured(0.0, 0.005, "b"));
  CHECK(s.standard_uncertainty() == doctest::Approx(std::sqrt(4 * 0.01 * 0.01 * 25e-6 + 4 * 625e-12)).epsilon(1e-12));
  CHECK(s.shift == doctest::Approx(5e-5));
  CHECK(s.matters());
  CHECK(s.word().find("Monte Carlo") != std::string::npos);
  CHECK(s.result("loss").standard_uncertainty() == doctest::Approx(s.standard_uncertainty()));
  // the end gauge: alpha_s and theta stand still at the estimate; the second order of H.1.7 adds 11.7 nm and 1.7 nm, 34 nm in all
  const auto g = to_second_order(end_gauge, measured(50000623, 25, "ls"), measured(215, 9.7, "d"), measured(11.5e-6, 1.2e-6, "alpha_s"), measured(-0.1, 0.41, "theta"),
                                 measured(0, 0.58e-6, "dalpha"), measured(0, 0.029, "dtheta"));
  CHECK(std::round(g.standard_uncertainty()) == 34.0);
  CHECK(std::sqrt(g.variance) == doctest::Approx(std::hypot(50000623 * 0.41 * 0.58e-6, 50000623 * 0.029 * 1.2e-6)).epsilon(1e-6));
  const auto flat = to_second_order(quotient_product, measured(1.0, 0.001, "a"), measured(2.0, 0.001, "b"), measured(3.0, 0.001, "c"));
  CHECK_FALSE(flat.matters());
  CHECK_THROWS_AS(to_second_order(comparison_loss, measured(1.0, 0.1, "x"), measured(1.0, 0.1, "x")), range_error);
}

TEST_CASE("uncertainty: derivatives by two arguments agree with differences of the gradient, for every formula") {
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    CAPTURE(e.full_name());
    const auto& f = e.formula;
    const std::size_t n = f.args.size();
    std::vector<double> x;
    for (const auto& a : f.args) x.push_back(a.table ? 0.0 : 0.37 * a.usual.low + 0.63 * a.usual.high);
    if (f.check(f.self, x.data())) continue;
    std::vector<double> c(n), high(n), low(n);
    const double y = f.gradient(f.self, x.data(), c.data());
    for (std::size_t j = 0; j < n; ++j) {
      if (f.args[j].table) continue;
      const double h = 1e-5 * std::fmax(std::fabs(x[j]), 1e-3 * std::fabs(f.args[j].usual.high));
      auto up = x, down = x;
      up[j] += h;
      down[j] -= h;
      if (f.check(f.self, up.data()) || f.check(f.self, down.data())) continue;
      f.gradient(f.self, up.data(), high.data());
      f.gradient(f.self, down.data(), low.data());
      for (std::size_t i = 0; i < n; ++i) {
        if (f.args[i].table) continue;
        const auto d = f.curvature(f.self, x.data(), i, j);
        CAPTURE(i);
        CAPTURE(j);
        CHECK(d.value == doctest::Approx(y).epsilon(1e-14));
        CHECK(d.i == doctest::Approx(c[i]).epsilon(1e-10));
        const double wanted = (high[i] - low[i]) / (up[j] - down[j]);
        // a slope of relative size c / h is noise in a difference
        CHECK(std::fabs(d.ij - wanted) <= 1e-5 * std::fabs(wanted) + 1e-9 * std::fabs(c[i]) / h);
      }
    }
  }
}

TEST_CASE("Monte Carlo: the same result on every instruction set and any number of threads") {
  const std::vector<uncertain> in{distribution::rectangular(9000, 11000), measured(10000, 50, "bridge"), distribution::triangular(24, 26), measured(3950, 20, "maker", 7)};
  monte_carlo_options how;
  how.trials = 50'001;
  const auto whole = monte_carlo(sensing::ntc_temperature, in, how);
  for (const auto set : instruction_sets())
    for (const unsigned threads : {1u, 2u, 3u}) {
      how.instruction_set = set;
      how.threads = threads;
      const auto r = monte_carlo(sensing::ntc_temperature, in, how);
      CHECK(r.mean == whole.mean);
      CHECK(r.standard_uncertainty == whole.standard_uncertainty);
      CHECK(r.low == whole.low);
      CHECK(r.high == whole.high);
      CHECK(r.shortest_low == whole.shortest_low);
      CHECK(r.histogram == whole.histogram);
    }
  how.trials = 0;
  how.instruction_set = {};
  how.threads = 1;
  const auto one = monte_carlo(sensing::ntc_temperature, in, how);
  how.threads = 4;
  const auto four = monte_carlo(sensing::ntc_temperature, in, how);
  CHECK(one.trials == four.trials);
  CHECK(one.high == four.high);
  CHECK(one.converged);
  CHECK(one.trials % 10240 == 0);
  how.seed = 2;
  CHECK(monte_carlo(sensing::ntc_temperature, in, how).mean != one.mean);
}

TEST_CASE("Monte Carlo: the ends are order statistics, the shortest interval no longer than any from a grid of ranks") {
  // against all values, sorted: drawn once more by the same counters
  const auto d = distribution::exponential(2.0);
  std::vector<double> y(64 * 1000);
  draw(d, 5, 0x10000, 0, y);
  std::vector<double> logs = y;
  monte_carlo_options how;
  how.trials = y.size();
  how.seed = 5;
  const auto r = monte_carlo(sum_of_two, {d, 0.0}, how);
  std::sort(y.begin(), y.end());
  const auto inside = static_cast<std::size_t>(0.95 * static_cast<double>(y.size()));
  const std::size_t low = (y.size() - inside + 1) / 2;
  CHECK(r.low == y[low - 1]);
  CHECK(r.high == y[low - 1 + inside]);
  CHECK(r.median == y[y.size() / 2 - 1]);
  double least = without_end;
  for (std::size_t k = 0; k + inside < y.size(); ++k) least = std::min(least, y[k + inside] - y[k]);
  CHECK(r.shortest_high - r.shortest_low <= least + 2 * r.cell);
  CHECK(std::find(y.begin(), y.end(), r.shortest_low) != y.end());
  std::size_t counted = 0;
  for (const unsigned c : r.histogram) counted += c;
  CHECK(counted == y.size());
}

TEST_CASE("Monte Carlo: common sources are drawn once") {
  const measured a(1.0, 0.1, "meter"), b(1.0, 0.1, "meter");
  monte_carlo_options how;
  how.trials = 20'480;
  const auto sum = monte_carlo(sum_of_two, {a, b}, how), difference = monte_carlo(sum_of_two, {a, -1.0 * b}, how);
  CHECK(sum.standard_uncertainty == doctest::Approx(0.2).epsilon(0.03));
  CHECK(difference.standard_uncertainty < 1e-12);
  const auto m = measured_together(std::vector<double>{0.0, 0.0}, std::vector<double>{1.0, 0.8, 0.8, 1.0}, "pair", 6.0);
  how.trials = 400'000;
  // Student's distribution of six degrees of freedom in every direction: variance 6/4 of the square of the scale
  CHECK(monte_carlo(sum_of_two, {m[0], m[1]}, how).standard_uncertainty == doctest::Approx(std::sqrt(3.6 * 1.5)).epsilon(0.02));
  CHECK(monte_carlo(sum_of_two, {m[0], m[1]}, how).high == doctest::Approx(std::sqrt(3.6) * student_factor(0.95, 6)).epsilon(0.02));
  CHECK(monte_carlo(sum_of_two, {m[0], -1.0 * m[1]}, how).standard_uncertainty == doctest::Approx(std::sqrt(0.4 * 1.5)).epsilon(0.02));
}

TEST_CASE("Monte Carlo: what is not permitted is counted, and refused where it is much") {
  monte_carlo_options how;
  how.trials = 200'000;
  const auto few = monte_carlo(logarithm, {measured(1.0, 0.25, "x")}, how);  // 4 standard deviations from 0: 3e-5
  CHECK(few.refused > 0);
  CHECK(few.refused < 30);
  CHECK(few.trials == 200'000);
  CHECK(is_finite(few.mean));
  CHECK_THROWS_AS(monte_carlo(logarithm, {measured(1.0, 0.5, "x")}, how), range_error);
  how.refused_share = 0.05;
  CHECK(monte_carlo(logarithm, {measured(1.0, 0.5, "x")}, how).refused > 1000);
  CHECK_THROWS_AS(monte_carlo(logarithm, {-1.0}, how), range_error);
  how.trials = 10;
  CHECK_THROWS_AS(monte_carlo(logarithm, {1.0}, how), range_error);
  const auto exact = monte_carlo(logarithm, {2.0});
  CHECK(exact.mean == std::log(2.0));
  CHECK(exact.standard_uncertainty == 0.0);
  CHECK(exact.converged);
  CHECK_THROWS_AS(distribution::rectangular(2.0, 1.0), range_error);
  CHECK_THROWS_AS(distribution::rectangular(0.0, std::numeric_limits<double>::infinity()), range_error);
  CHECK_THROWS_AS(distribution::trapezoidal(0.0, 1.0, 1.5), range_error);
  CHECK_THROWS_AS(distribution::student(0.0, 1.0, 0.5), range_error);
  CHECK_THROWS_AS(distribution::normal(no_number, 1.0), range_error);
}

TEST_CASE("Monte Carlo: the front door tells a straight formula from a curved one") {
  const auto straight = propagate(sum_of_two, {measured(1.0, 0.1, "a"), measured(2.0, 0.2, "b")});
  CHECK(straight.validated);
  CHECK(straight.value() == 3.0);
  CHECK(straight.word.find("holds") != std::string::npos);
  // the cases that must fail (JCGM 101, 9.4; y = ln x with wide x; two resistances in parallel, one near nothing)
  const auto loss = propagate(comparison_loss, {measured(0.0, 0.005, "a"), measured(0.0, 0.005, "b")});
  CHECK_FALSE(loss.validated);
  CHECK(loss.value() == doctest::Approx(5e-5).epsilon(0.02));
  CHECK(loss.first_order.standard_uncertainty() == 0.0);
  CHECK_FALSE(propagate(logarithm, {distribution::rectangular(0.1, 1.1)}).validated);
  monte_carlo_options one_digit;
  one_digit.digits = 1;
  const auto far = propagate(comparison_loss, {measured(0.5, 0.005, "a"), measured(0.0, 0.005, "b")}, one_digit);
  CHECK(far.monte_carlo.converged);
  CHECK(far.validated);
  // few degrees of freedom: Student's interval against drawn Student's numbers
  const auto few = propagate(sum_of_two, {measured(1.0, 0.1, "a", 5.0), 0.0});
  CHECK_MESSAGE(few.validated, few.word);
  CHECK(few.high() == doctest::Approx(1.0 + 0.1 * 2.570581835636314).epsilon(1e-9));
}

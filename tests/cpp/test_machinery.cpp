// SPDX-License-Identifier: MIT
// What the machinery promises for every entry: derivatives, working, units, refusals.
#include <doctest/doctest.h>
#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <makegood/electrical/list.hpp>
#include <makegood/registry.hpp>
#include <makegood/rules/all.hpp>
#include <random>

using namespace makegood;

namespace {

/// A random point inside the usual range of every argument that satisfies the relations.
bool usual_point(const entry& e, std::mt19937& random, std::vector<double>& x) {
  for (int attempt = 0; attempt < 200; ++attempt) {
    x.clear();
    for (const auto& a : e.formula.args) {
      if (a.table) x.push_back(static_cast<double>(random() % a.table->rows.size()));
      else x.push_back(std::uniform_real_distribution<>(a.usual.low, a.usual.high)(random));
    }
    if (!e.formula.check(e.formula.self, x.data()) && is_finite(e.formula.value(e.formula.self, x.data()))) return true;
  }
  return false;
}

}  // namespace

TEST_CASE("every argument says where ordinary jobs lie") {
  for (const auto& e : catalogue()) {
    if (e.is == entry::what::model) continue;
    for (const auto& a : e.args()) {
      CAPTURE(e.full_name());
      CAPTURE(a.name);
      CHECK(!a.text.empty());
      if (a.table) continue;
      CHECK(a.usual.low <= a.usual.high);
      CHECK((a.permitted.contains(a.usual.low) || a.permitted.low == a.usual.low));
      CHECK((a.permitted.contains(a.usual.high) || a.permitted.high == a.usual.high));
      CHECK_FALSE(a.permitted.contains(9e15));
      CHECK_FALSE(a.permitted.contains(1e20));
      CHECK_FALSE(a.permitted.contains(std::numeric_limits<double>::infinity()));
      CHECK_FALSE(a.permitted.contains(std::numeric_limits<double>::quiet_NaN()));
    }
  }
}

TEST_CASE("derivatives are exact, the working ends in the value, the units of the equation agree") {
  std::mt19937 random(20260101);
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    const std::string name = e.full_name();
    CAPTURE(name);
    const auto& f = e.formula;
    const std::size_t n = f.args.size();
    int points = 0;
    for (int k = 0; k < 40; ++k) {
      std::vector<double> x, slopes(n);
      if (!usual_point(e, random, x)) continue;
      ++points;
      const double y = f.value(f.self, x.data());
      CHECK(f.gradient(f.self, x.data(), slopes.data()) == y);
      const working w = f.work(f.self, x.data());
      CHECK(w.value == y);
      CHECK(w.dimension_error == "");
      REQUIRE(!w.steps.empty());
      CHECK(w.steps.back().value == y);
      for (std::size_t i = 0; i < n; ++i) {
        if (f.args[i].table) continue;
        // central differences, with a step that stays inside the permitted range
        const double h = 1e-5 * (std::fabs(x[i]) + 1e-3 * (f.args[i].usual.high - f.args[i].usual.low));
        auto up = x, down = x;
        up[i] += h;
        down[i] -= h;
        if (f.check(f.self, up.data()) || f.check(f.self, down.data())) continue;
        const double high = f.value(f.self, up.data()), low = f.value(f.self, down.data());
        const double difference = (high - low) / (2.0 * h);
        // curvature and rounding of the difference itself; a step across a branch shows in the second difference
        const double bend = std::fabs(high - 2.0 * y + low) / h;
        const double noise = 4e-14 * (std::fabs(y) + std::fabs(high)) / h;
        CAPTURE(f.args[i].name);
        CAPTURE(x[i]);
        CHECK(std::fabs(slopes[i] - difference) <= 1e-5 * std::fabs(difference) + bend + noise);
      }
    }
    CHECK(points >= 30);
  }
}

TEST_CASE("the working of every check agrees in its units") {
  const rulebook every = rules::find("bs7671:2018+a2,iec60364,england-adf-2021,heating-standards,common-practice,finland-1009-2017,australia-ncc-2019,nhbc-8.4,us-irc-joists,gb-joists");
  int looked_at = 0;
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::check) continue;
    CAPTURE(e.full_name());
    std::vector<given> in;
    for (const auto& a : e.args()) {
      if (a.table) in.emplace_back(a.table->rows[0].key);
      else in.emplace_back(measured::exact(0.5 * (a.usual.low + a.usual.high)));
    }
    const verdict v = detail::judge(e.check, in, every);
    CHECK(v.reason != reason::no_rule_in_book);
    const auto parts = v.worked();
    CHECK(parts.size() == 2);
    for (const auto& w : parts) CHECK(w.dimension_error == "");
    ++looked_at;
  }
  CHECK(looked_at >= 10);
}

TEST_CASE("hostile numbers are refused with one clear sentence") {
  for (const auto& e : catalogue()) {
    if (e.is != entry::what::formula) continue;
    const auto& f = e.formula;
    std::mt19937 random(7);
    std::vector<double> good;
    REQUIRE(usual_point(e, random, good));
    for (std::size_t i = 0; i < f.args.size(); ++i) {
      if (f.args[i].table) continue;
      for (const double bad : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                               -std::numeric_limits<double>::infinity(), 9e15, 1e20, -1e300}) {
        auto x = good;
        x[i] = bad;
        const fault why = f.check(f.self, x.data());
        CAPTURE(e.full_name());
        CAPTURE(f.args[i].name);
        CAPTURE(bad);
        CHECK(static_cast<bool>(why));
        const std::string text(f.refusal(f.self, why, x.data()));
        CHECK(text.find(std::string(f.args[i].name)) != std::string::npos);
        CHECK(text.find(std::string(e.name())) == 0);
      }
      for (const double edge : {-0.0, 5e-324, f.args[i].permitted.low, f.args[i].permitted.high}) {
        auto x = good;
        x[i] = edge;
        if (f.check(f.self, x.data())) continue;
        // permitted: then a number comes out, or a sentence
        const double y = f.value(f.self, x.data());
        if (!is_finite(y)) CHECK(!f.refusal(f.self, {fault::what::no_result, -1}, x.data()).empty());
      }
    }
  }
}

TEST_CASE("arrays: not measured stays not measured, nonsense is found") {
  const entry* e = find_entry("electrical.voltage_drop");
  REQUIRE(e);
  double d[] = {44, 29, 18, 11}, i[] = {16, no_number, 32, -1}, l[] = {22, 10, 40, 5}, y[4];
  char* data[] = {reinterpret_cast<char*>(d), reinterpret_cast<char*>(i), reinterpret_cast<char*>(l), reinterpret_cast<char*>(y)};
  const std::ptrdiff_t steps[] = {8, 8, 8, 8};
  CHECK(e->formula.batch(e->formula.self, data, steps, 4, false) == 3);
  CHECK(y[0] == electrical::voltage_drop(44, 16, 22));
  CHECK(is_nan(y[1]));
  CHECK(y[2] == electrical::voltage_drop(18, 32, 40));
  CHECK(is_nan(y[3]));
  CHECK(e->formula.batch(e->formula.self, data, steps, 4, true) == -1);
}

TEST_CASE("a formula answers in the kind that goes in") {
  using electrical::voltage_drop;
  const double plain = voltage_drop(44.0, 16.0, 22.0);
  const auto d = voltage_drop(dual<3>::input(44.0, 0), dual<3>::input(16.0, 1), dual<3>::input(22.0, 2));
  CHECK(d.value == plain);
  CHECK(d.partial[0] == doctest::Approx(16.0 * 22.0 / 1000.0));
  CHECK(voltage_drop.unchecked(44.0, 16.0, -22.0) == -plain);
  const auto tried = voltage_drop.try_call(44.0, 16.0, -22.0);
  CHECK_FALSE(tried.ok());
  CHECK(tried.why.kind == fault::what::out_of_range);
  CHECK(tried.why.index == 2);
  CHECK(is_nan(tried.value));
  CHECK(voltage_drop.try_call(44.0, 16.0, 22.0).value == plain);
  const measured m = voltage_drop(measured(44.0), measured(16.0, 0.2, "clamp"), measured(22.0, 0.1, "tape"));
  CHECK(m.value == plain);
  CHECK(m.standard_uncertainty() == doctest::Approx(std::hypot(0.2 * 44 * 22 / 1000, 0.1 * 44 * 16 / 1000)));
}

TEST_CASE("error sources with one name add up by themselves") {
  // in a product a gain common to both factors counts twice, two gains of their own add as squares
  const measured a(16.0, 0.16, "gain"), b(22.0, 0.22, "gain"), c(22.0, 0.22, "other");
  const double together = electrical::voltage_drop(44.0, a, b).standard_uncertainty();
  const double apart = electrical::voltage_drop(44.0, a, c).standard_uncertainty();
  const double y = electrical::voltage_drop(44.0, 16.0, 22.0);
  CHECK(together == doctest::Approx(0.02 * y));
  CHECK(apart == doctest::Approx(0.01 * std::sqrt(2.0) * y));
}

TEST_CASE("slips of unit are suggested") {
  const auto text_of = [](auto call_it) -> std::string {
    try {
      call_it();
    } catch (const error& e) {
      return e.what();
    }
    return {};
  };
  CHECK(text_of([] { electrical::voltage_drop(44, 16, -4); }) == "voltage_drop: length_m: -4 m is below 0 m");
  CHECK(text_of([] { electrical::voltage_drop(44, 16, 150000); }).find("if it was in mm, write 150 m") != std::string::npos);
  CHECK(text_of([] { electrical::voltage_drop(44, 16, -999); }).find("missing value") != std::string::npos);
}

TEST_CASE("an error keeps its sentence while it is copied, and copying it throws nothing") {
  static_assert(std::is_nothrow_copy_constructible_v<range_error> && std::is_nothrow_copy_assignable_v<range_error>);
  error kept("before");
  {
    const range_error gone(std::string("length_m: ") + "-4 m is below 0 m");
    const range_error copy = gone;
    kept = copy;
  }
  CHECK(std::string(kept.what()) == "length_m: -4 m is below 0 m");
  message one(std::string_view("a sentence"));
  const message shared = one;
  one += one;  // its own characters, while somebody else still reads them
  CHECK(shared.view() == "a sentence");
  CHECK(one.view() == "a sentencea sentence");
  CHECK(std::string(one.c_str()) == one.view());
  CHECK(message().empty());
  CHECK(std::string(error("").what()).empty());
}

TEST_CASE("numbers as text") {
  CHECK(number_text(-0.0) == "0");
  CHECK(number_text(0.1) == "0.1");
  CHECK(number_text(1e5) == "100000");
  CHECK(number_text(-4e5, 3) == "-400000");
  CHECK(number_text(1.0 / 3.0, 4) == "0.3333");
  CHECK(number_text(1.5e-7) == "1.5e-07");
  CHECK(number_text(1e12) == "1e+12");
  CHECK(quantity_text(12.5, "m") == "12.5 m");
  CHECK(quantity_text(0.8, "") == "0.8");
}

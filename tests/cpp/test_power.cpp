// SPDX-License-Identifier: MIT
// The words for powers: whole and broken exponents in every kind of number.
#include <doctest/doctest.h>
#include <bit>
#include <cmath>
#include <limits>
#include <makegood/makegood.hpp>
#include <makegood/scalar/dual.hpp>
#include <makegood/scalar/interval.hpp>
#include <makegood/scalar/lanes.hpp>
#include <makegood/scalar/symbol.hpp>
#include <random>

using namespace makegood;

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b) || (is_nan(a) && is_nan(b)); }

/// power<N, D> against long double, and what the other kinds say about it.
template <int N, int D = 1>
void check_power() {
  CAPTURE(N);
  CAPTURE(D);
  const long double exponent = static_cast<long double>(N) / D;
  std::mt19937_64 random(17);
  double worst = 0.0;
  std::size_t different = 0, outside = 0;
  for (int i = 0; i < 4000; ++i) {
    double x[8];
    for (double& v : x) v = std::pow(10.0, std::uniform_real_distribution<>(-12.0, 12.0)(random));
    const double y = power<N, D>(x[0]);
    worst = std::max(worst, static_cast<double>(std::fabs(y / std::pow(static_cast<long double>(x[0]), exponent) - 1.0L)));
    const auto many = power<N, D>(lanes<8>::load(x));
    for (int k = 0; k < 8; ++k) different += !same_bits(many[k], power<N, D>(x[k]));
    const dual<1> d = power<N, D>(dual<1>::input(x[0], 0));
    different += !same_bits(d.value, y) || !same_bits(power<N, D>(traced(x[0])).value, y) || !same_bits(power<N, D>(symbol(x[0])).value(), y);
    const double slope = static_cast<double>(exponent * std::pow(static_cast<long double>(x[0]), exponent - 1.0L));
    worst = std::max(worst, slope == 0.0 ? std::fabs(d.partial[0]) : std::fabs(d.partial[0] / slope - 1.0));
    // an enclosure holds what comes out inside it, the exact value, and is not much wider
    const double low = std::min(x[0], x[1]), high = std::max(x[0], x[1]);
    const interval range = power<N, D>(interval(low, high));
    for (double inside : {low, high, 0.5 * (low + high)}) {
      const long double exact = std::pow(static_cast<long double>(inside), exponent);
      outside += !range.contains(power<N, D>(inside)) || range.low > exact || exact > range.high;
    }
    const double ends[] = {power<N, D>(low), power<N, D>(high)};
    outside += range.low < std::min(ends[0], ends[1]) * (1 - 1e-14) || range.high > std::max(ends[0], ends[1]) * (1 + 1e-14);
    dual_interval slopes = power<N, D>(dual_interval::input(interval(x[0]), 0));
    outside += !(slopes.partial[0].low <= slope * (1 + 1e-14) && slope * (1 - 1e-14) <= slopes.partial[0].high) && slope > 0.0;
  }
  CHECK(worst < 4e-15);
  CHECK(different == 0);
  CHECK(outside == 0);
}

}  // namespace

TEST_CASE("powers: whole and broken exponents in every kind of number") {
  check_power<0>();
  check_power<1>();
  check_power<2>();
  check_power<3>();
  check_power<5>();
  check_power<12>();
  check_power<16>();
  check_power<-1>();
  check_power<-4>();
  check_power<1, 2>();
  check_power<3, 2>();
  check_power<-3, 2>();
  check_power<1, 3>();
  check_power<2, 3>();
  check_power<5, 8>();
  check_power<1, 12>();
  check_power<7, 12>();
  check_power<-5, 6>();
  CHECK(power<4, 2>(3.0) == 9.0);
  CHECK(same_bits(power<6, 4>(7.0), power<3, 2>(7.0)));
}

TEST_CASE("powers: the ends of the numbers") {
  CHECK(power<16>(1e30) == endless);
  CHECK(power<16>(-1e30) == endless);
  CHECK(power<3>(-1e200) == -endless);
  CHECK(power<16>(1e-30) == 0.0);
  CHECK(power<-3, 2>(0.0) == endless);
  CHECK(power<-3, 2>(endless) == 0.0);
  CHECK(power<1, 12>(0.0) == 0.0);
  CHECK(power<1, 12>(endless) == endless);
  CHECK(is_nan(power<1, 12>(-1.0)));
  CHECK(power<2, 3>(-8.0) == 4.0);
  CHECK(is_nan(power<16>(no_number)));
  CHECK(power<0>(5.0) == 1.0);
  // slopes at zero
  CHECK(power<3, 2>(dual<1>::input(0.0, 0)).partial[0] == 0.0);
  CHECK(power<1, 4>(dual<1>::input(0.0, 0)).partial[0] == endless);
  CHECK(power<0>(dual<1>::input(0.0, 0)).partial[0] == 0.0);
  const dual_interval root = power<1, 4>(dual_interval::input(interval(0.0, 1.0), 0));
  CHECK(root.value.contains(0.5));
  CHECK(root.partial[0].low >= 0.0);
  CHECK(root.partial[0].high == endless);
  // about zero
  const interval around(-2.0, 3.0);
  CHECK(power<4>(around).low == 0.0);
  CHECK(power<4>(around).high == 81.0);
  CHECK(power<3>(around).low == -8.0);
  CHECK(power<3>(around).high == 27.0);
  CHECK(power<5>(interval(-3.0, -2.0)).low == -243.0);
  CHECK(power<5>(interval(-3.0, -2.0)).high == -32.0);
  CHECK(power<-2>(around).undefined);
  CHECK(power<1, 2>(around).undefined);
}

TEST_CASE("powers: as the working prints them, with their units") {
  const auto x = symbol::input(16.0, arg{"x", "x", unit::square_metre, positive, "an area"});
  const auto text = [](const symbol& s) { return makegood::detail::plain_expression(s.tree()); };
  const auto in = [](const symbol& s) { return s.tree()->of; };
  CHECK(text(power<16>(x)) == "x¹⁶");
  CHECK(text(power<3>(x)) == "x³");
  CHECK(text(power<1, 12>(x / x)) == "(x / x)^(1/12)");
  CHECK(text(power<5, 8>(x)) == "x^0.625");
  CHECK(text(damped_pow(x / x, 0.9)) == "(x / x)^0.9");
  CHECK(power<3, 2>(x).value() == 64.0);
  CHECK(in(power<1, 2>(x)).same_as(unit::metre));
  CHECK(in(power<3, 2>(x)).same_as(unit::cubic_metre));
  CHECK(in(power<-1>(symbol::input(2.0, arg{"x", "x", unit::kelvin, positive, "a difference"}))).same_as(unit::per_kelvin));
  CHECK(power<3, 2>(x).tree()->error.empty());
  CHECK_FALSE(power<1, 12>(x).tree()->error.empty());
  CHECK_FALSE(damped_pow(x, 0.9).tree()->error.empty());
  const auto mm2 = symbol::input(4.0, arg{"x", "x", unit::square_millimetre, positive, "an area"});
  CHECK(in(power<1, 2>(mm2)).same_as(unit::millimetre));
  CHECK_FALSE(power<2>(symbol::input(4.0, arg{"t", "t", unit::celsius, positive, "a temperature"})).tree()->error.empty());
}

TEST_CASE("powers: the damped power of every kind") {
  std::mt19937_64 random(5);
  std::size_t different = 0, outside = 0;
  double worst = 0.0;
  for (int i = 0; i < 4000; ++i) {
    double x[8];
    for (double& v : x) v = std::pow(10.0, std::uniform_real_distribution<>(-12.0, 12.0)(random));
    const double y = damped_pow(x[0], 0.9);
    const long double exact = std::pow(static_cast<long double>(x[0]), 0.9L);
    worst = std::max(worst, static_cast<double>(std::fabs(y / exact - 1.0L)) / (1.0 + std::fabs(std::log(x[0]))));
    const auto many = damped_pow(lanes<8>::load(x), 0.9);
    for (int k = 0; k < 8; ++k) different += !same_bits(many[k], damped_pow(x[k], 0.9));
    const dual<1> d = damped_pow(dual<1>::input(x[0], 0), 0.9);
    different += !same_bits(d.value, y) || !same_bits(damped_pow(traced(x[0]), 0.9).value, y) || !same_bits(damped_pow(symbol(x[0]), 0.9).value(), y);
    worst = std::max(worst, 1e-2 * std::fabs(d.partial[0] / (0.9 * std::pow(x[0], -0.1)) - 1.0));
    const interval range = damped_pow(interval(x[0]), 0.9);
    outside += !range.contains(y) || range.low > exact || exact > range.high;
    outside += !same_bits(damped_pow(dual_interval::input(interval(x[0]), 0), 0.9).value.low, range.low);
  }
  CHECK(worst < 2.3e-16);
  CHECK(different == 0);
  CHECK(outside == 0);
  CHECK(damped_pow(0.0, 1.11) == 0.0);
  CHECK(damped_pow(endless, 0.9) == endless);
  CHECK(is_nan(damped_pow(-1.0, 0.9)));
  CHECK(damped_pow(dual<1>::input(0.0, 0), 1.11).partial[0] == 0.0);
}

// SPDX-License-Identifier: MIT
// The random numbers: the publication's vectors, the same bits by double and by every instruction set, and a small battery with fixed
// seeds. MAKEGOOD_DRAWS multiplies the draws of the battery (1; 100 for the figure of record).
#include <doctest/doctest.h>
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <makegood/monte_carlo.hpp>
#include <makegood/registry.hpp>
#include <makegood/scalar/random.hpp>
#include <map>
#include <vector>

using namespace makegood;

namespace {

using word = std::uint64_t;

std::size_t draws_wanted() {
  const char* wanted = std::getenv("MAKEGOOD_DRAWS");
  return 64 * 4096 * (wanted ? std::strtoull(wanted, nullptr, 10) : 1);
}
std::vector<double> drawn(const distribution& d, std::size_t n, word seed = 1, std::uint32_t quantity = 0, word first = 0) {
  std::vector<double> x(n);
  draw(d, seed, quantity, first, x);
  return x;
}
std::vector<double> uniforms(std::size_t n, word seed = 1, std::uint32_t quantity = 0, word first = 0) { return drawn(distribution::rectangular(0.0, 1.0), n, seed, quantity, first); }

/// Standard deviations of a chi-square from its mean, by the cube root of Wilson and Hilferty.
double chi_square_off(const std::vector<std::size_t>& counts, const std::vector<double>& wanted) {
  double square = 0.0;
  for (std::size_t i = 0; i < counts.size(); ++i) square += (static_cast<double>(counts[i]) - wanted[i]) * (static_cast<double>(counts[i]) - wanted[i]) / wanted[i];
  const double k = static_cast<double>(counts.size() - 1), v = 2.0 / (9.0 * k);
  return (std::cbrt(square / k) - (1.0 - v)) / std::sqrt(v);
}
double even_off(const std::vector<std::size_t>& counts, double total) { return chi_square_off(counts, std::vector<double>(counts.size(), total / static_cast<double>(counts.size()))); }

/// Kolmogorov and Smirnov: √n times the largest distance; above 1.95 with probability 0.001.
double distance(std::vector<double> x, const std::function<double(double)>& cdf) {
  std::sort(x.begin(), x.end());
  const double n = static_cast<double>(x.size());
  double most = 0.0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const double p = cdf(x[i]);
    most = std::max({most, std::fabs(p - static_cast<double>(i) / n), std::fabs(p - static_cast<double>(i + 1) / n)});
  }
  return most * std::sqrt(n);
}
double correlation_of(const std::vector<double>& a, const std::vector<double>& b, std::size_t lag = 0) {
  double ab = 0.0, aa = 0.0, bb = 0.0;
  for (std::size_t i = 0; i + lag < a.size(); ++i) ab += a[i] * b[i + lag], aa += a[i] * a[i], bb += b[i + lag] * b[i + lag];
  return ab / std::sqrt(aa * bb) * std::sqrt(static_cast<double>(a.size() - lag));  // in standard deviations
}

constexpr double far = 4.2;  ///< standard deviations: 3e-5 for a generator that is right; the seeds are fixed

}  // namespace

TEST_CASE("random: the known answers of the publication") {
  const auto check = [](auto schedule, random::words<word> counter, random::words<word> wanted) {
    const auto got = random::philox(counter, schedule);
    constexpr word low = 0xffffffffu;
    CHECK((got.a & low) == wanted.a);
    CHECK((got.b & low) == wanted.b);
    CHECK((got.c & low) == wanted.c);
    CHECK((got.d & low) == wanted.d);
  };
  const random::words<word> none{0, 0, 0, 0}, all{0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}, pi{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344};
  const word pi_key = 0x299f31d0a4093822u;
  static_assert(random::rounds == 7);
  check(random::schedule<word>(0), none, {0x5f6fb709, 0x0d893f64, 0x4f121f81, 0x4f730a48});
  check(random::schedule<word>(~word{0}), all, {0x5207ddc2, 0x45165e59, 0x4d8ee751, 0x8c52f662});
  check(random::schedule<word>(pi_key), pi, {0x4dfccaba, 0x190a87f0, 0xc47362ba, 0xb6b5242a});
  check(random::schedule<word, 10>(0), none, {0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8});
  check(random::schedule<word, 10>(~word{0}), all, {0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd});
  check(random::schedule<word, 10>(pi_key), pi, {0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1});
}

TEST_CASE("random: double and every instruction set draw the same bits, wherever a column begins") {
  const random::schedule<word> key(77);
  const distribution all[] = {distribution::normal(3.0, 2.0),       distribution::rectangular(-1.0, 4.0), distribution::triangular(0.0, 1.0), distribution::trapezoidal(0.0, 1.0, 0.3),
                              distribution::arcsine(-2.0, 2.0), distribution::student(1.0, 0.5, 4.5), distribution::exponential(3.0)};
  for (const auto& d : all) {
    CAPTURE(d.text());
    const auto whole = drawn(d, 640, 77, 9);
    for (const auto set : instruction_sets()) {
      CAPTURE(set);
      std::vector<double> x(640), part(128);
      draw(d, 77, 9, 0, x, set);
      draw(d, 77, 9, 320, part, set);
      CHECK(x == whole);
      CHECK(std::equal(part.begin(), part.end(), whole.begin() + 320));
    }
    for (std::size_t k = 0; k < 640; ++k) {
      using shape = distribution::shape;
      const std::size_t block = k / 64, in = k % 64;
      const bool four = d.is == shape::normal, one = d.is == shape::trapezoidal || d.is == shape::student;
      const word counter = one ? k : four ? 16 * block + in % 16 : 32 * block + in % 32;
      const auto bits = random::draw<word>(counter, 9, key);
      const word half = (four ? in / 32 : in / 32) == 0 ? bits.first : bits.second;
      double z = 0.0;
      if (d.is == shape::normal) z = in / 16 % 2 == 0 ? random::normals<double>(half).first : random::normals<double>(half).second;
      else if (d.is == shape::rectangular) z = random::centred<double>(half);
      else if (d.is == shape::arcsine) z = random::circle<double>(half).second;
      else if (d.is == shape::exponential) z = 0.5 * random::minus_two_log(random::uniform<double>(half));
      else if (d.is == shape::trapezoidal) z = random::trapezoidal<double>(bits, d.extra);
      else z = random::student<double>(bits, d.extra);
      CHECK(whole[k] == d.centre + d.scale * z);
    }
  }
  CHECK_THROWS_AS(drawn(all[0], 63), range_error);
}

TEST_CASE("random: the ends of the open interval, and the functions of a draw") {
  CHECK(random::uniform<double>(word{0}) == 0x1p-53);
  CHECK(random::uniform<double>(~word{0}) == 1.0 - 0x1p-53);
  for (const word x : {word{0}, ~word{0}, word{0x123456789abcdef0}, word{0x8000000000000000}, word{3}, word{0xfffffffffffff001}}) {
    const auto p = random::circle<double>(x);
    CHECK(p.first * p.first + p.second * p.second == doctest::Approx(1.0).epsilon(1.5e-10));
    // the angle is where the bits say
    const double r = (std::ldexp(static_cast<double>(x >> 12), -52) + 0x1p-53 - 0.5) * 1.5707963267948966;
    const double large = (x >> 1 & 1) ? -std::cos(r) : std::cos(r), small = std::sin(r);
    CHECK(p.first == doctest::Approx((x & 1) ? small : large).epsilon(1.5e-10));
    CHECK(p.second == doctest::Approx((x & 1) ? large : small).epsilon(1.5e-10));
    const auto z = random::normals<double>(x);
    const double u = std::ldexp(static_cast<double>(x >> 24), -40) + 0x1p-41;
    CHECK(z.first * z.first + z.second * z.second == doctest::Approx(-2.0 * std::log(u)).epsilon(2e-10));
  }
}

TEST_CASE("random: distributions have their moments and their shape") {
  const std::size_t n = draws_wanted();
  const auto look = [&](const distribution& d, const std::function<double(double)>& cdf) {
    CAPTURE(d.text());
    const auto x = drawn(d, n, 3, 4);
    CHECK(distance(x, cdf) < 1.95);
    if (!is_finite(d.standard_uncertainty())) return;
    double sum = 0.0, square = 0.0;
    for (const double v : x) sum += v;
    const double mean = sum / static_cast<double>(n), u = d.standard_uncertainty();
    for (const double v : x) square += (v - mean) * (v - mean);
    CHECK(std::fabs(mean - d.mean()) < far * u / std::sqrt(static_cast<double>(n)));
    if (d.is != distribution::shape::student) CHECK(std::sqrt(square / static_cast<double>(n)) == doctest::Approx(u).epsilon(0.02));
  };
  const auto clamp = [](double x) { return std::clamp(x, 0.0, 1.0); };
  look(distribution::normal(2.0, 3.0), [](double x) { return 0.5 * std::erfc(-(x - 2.0) / 3.0 / std::sqrt(2.0)); });
  look(distribution::rectangular(-1.0, 3.0), [&](double x) { return clamp((x + 1.0) / 4.0); });
  look(distribution::triangular(0.0, 2.0), [&](double x) { return x < 1.0 ? 0.5 * x * x : 1.0 - 0.5 * (2.0 - x) * (2.0 - x); });
  look(distribution::trapezoidal(0.0, 2.0, 0.5), [&](double x) {  // density rises over 0.5, flat 2/3, falls
    const double h = 2.0 / 3.0;
    return x < 0.5 ? h * x * x : x < 1.5 ? h * (0.25 + x - 0.5) : 1.0 - h * (2.0 - x) * (2.0 - x);
  });
  look(distribution::arcsine(-1.0, 1.0), [](double x) { return 0.5 + std::asin(std::clamp(x, -1.0, 1.0)) / 3.14159265358979323846; });
  look(distribution::exponential(2.0), [](double x) { return 1.0 - std::exp(-x / 2.0); });
  look(distribution::student(0.0, 1.0, 3.0), [](double t) { return t < 0.0 ? detail::student_tail(-t, 3.0) : 1.0 - detail::student_tail(t, 3.0); });
  look(distribution::student(1.0, 2.0, 1.0), [](double t) { return 0.5 + std::atan((t - 1.0) / 2.0) / 3.14159265358979323846; });
  look(distribution::student(0.0, 1.0, 30.5), [](double t) { return t < 0.0 ? detail::student_tail(-t, 30.5) : 1.0 - detail::student_tail(t, 30.5); });
}

TEST_CASE("random: battery of uniform numbers") {
  const std::size_t n = draws_wanted();
  const double count = static_cast<double>(n);
  for (const word seed : {word{1}, word{2}, word{0x9e3779b97f4a7c15}}) {
    CAPTURE(seed);
    const auto x = uniforms(n, seed);
    // equidistribution of the leading, and of later bits
    for (const double scale : {1.0, 0x1p10, 0x1p30}) {
      std::vector<std::size_t> cells(256);
      for (const double u : x) ++cells[static_cast<std::size_t>(256.0 * (u * scale - std::floor(u * scale)))];
      CHECK(std::fabs(even_off(cells, count)) < far);
    }
    // serial: pairs of draws that follow each other, pairs across quantities, across seeds, of the two halves of a counter
    const auto pairs = [&](const std::vector<double>& a, const std::vector<double>& b, std::size_t lag) {
      std::vector<std::size_t> cells(64 * 64);
      std::size_t total = 0;
      for (std::size_t i = 0; i + lag < a.size(); i += 2, ++total) ++cells[64 * static_cast<std::size_t>(64.0 * a[i]) + static_cast<std::size_t>(64.0 * b[i + lag])];
      CHECK(std::fabs(even_off(cells, static_cast<double>(total))) < far);
    };
    pairs(x, x, 1);
    pairs(x, x, 32);
    pairs(x, uniforms(n, seed, 1), 0);
    pairs(x, uniforms(n, seed + 1), 0);
    pairs(x, uniforms(n, seed ^ (word{1} << 32)), 0);
    pairs(x, uniforms(n, seed, 0, n), 0);
    // gap: how many draws until the next below 0.1
    std::vector<std::size_t> gaps(61);
    std::size_t gap = 0, number = 0;
    for (const double u : x) {
      if (u < 0.1) ++gaps[std::min<std::size_t>(gap, 60)], gap = 0, ++number;
      else ++gap;
    }
    std::vector<double> wanted;
    for (int i = 0; i < 60; ++i) wanted.push_back(static_cast<double>(number) * 0.1 * std::pow(0.9, i));
    wanted.push_back(static_cast<double>(number) * std::pow(0.9, 60));
    CHECK(std::fabs(chi_square_off(gaps, wanted)) < far);
    // runs up, a draw left out after each (Knuth, 3.3.2): length r with probability 1/r! - 1/(r+1)!
    std::vector<std::size_t> runs(6);
    for (std::size_t i = 0, length = 1; i + 1 < n; ++i) {
      if (x[i + 1] > x[i]) {
        ++length;
      } else {
        ++runs[std::min<std::size_t>(length, 6) - 1];
        length = 1;
        ++i;
      }
    }
    double total = 0.0, factorial = 1.0;
    for (const std::size_t r : runs) total += static_cast<double>(r);
    wanted.clear();
    for (int r = 1; r < 6; ++r) {
      factorial *= r;
      wanted.push_back(total * (1.0 / factorial - 1.0 / (factorial * (r + 1))));
    }
    wanted.push_back(total / (factorial * 6.0));
    CHECK(std::fabs(chi_square_off(runs, wanted)) < far);
    // birthday spacings (Marsaglia): 512 birthdays in a year of 2^24 days, equal spacings are Poisson's with mean 2
    std::vector<std::size_t> equals(8);
    std::size_t years = 0;
    for (std::size_t i = 0; i + 512 <= n; i += 512, ++years) {
      std::vector<std::uint32_t> days(512), spaces;
      for (std::size_t k = 0; k < 512; ++k) days[k] = static_cast<std::uint32_t>(x[i + k] * 0x1p24);
      std::sort(days.begin(), days.end());
      for (std::size_t k = 1; k < 512; ++k) spaces.push_back(days[k] - days[k - 1]);
      std::sort(spaces.begin(), spaces.end());
      std::size_t same = 0;
      for (std::size_t k = 1; k < spaces.size(); ++k) same += spaces[k] == spaces[k - 1];
      ++equals[std::min<std::size_t>(same, 7)];
    }
    wanted.clear();
    double left = 1.0, p = std::exp(-2.0);
    for (int k = 0; k < 7; ++k) {
      wanted.push_back(static_cast<double>(years) * p);
      left -= p;
      p *= 2.0 / (k + 1);
    }
    wanted.push_back(static_cast<double>(years) * left);
    CHECK(std::fabs(chi_square_off(equals, wanted)) < far);
    // collisions: 2^14 balls in 2^20 urns; mean and deviation by Knuth (3.3.2 I): n^2/2m and its root, within a part in 100
    double off = 0.0;
    std::size_t throws = 0;
    for (std::size_t i = 0; i + 16384 <= n; i += 16384, ++throws) {
      std::vector<bool> hit(1u << 20);
      double collisions = 0.0;
      for (std::size_t k = 0; k < 16384; ++k) {
        const auto urn = static_cast<std::size_t>(x[i + k] * 0x1p20);
        if (hit[urn]) ++collisions;
        hit[urn] = true;
      }
      const double m = 0x1p20, balls = 16384.0, mean = balls - m * (1.0 - std::pow(1.0 - 1.0 / m, balls));
      off += (collisions - mean) / std::sqrt(mean);
    }
    CHECK(std::fabs(off) / std::sqrt(static_cast<double>(throws)) < far);
  }
}

TEST_CASE("random: normal numbers are independent of their neighbours, of other quantities, seeds and signs") {
  const std::size_t n = draws_wanted();
  const auto normal = distribution::normal(0.0, 1.0);
  const auto x = drawn(normal, n, 11, 0);
  for (const std::size_t lag : {1u, 2u, 15u, 16u, 17u, 32u, 48u, 64u, 128u}) {
    CAPTURE(lag);
    CHECK(std::fabs(correlation_of(x, x, lag)) < far);
    std::vector<double> square(n);  // of one pair the squares would be tied if angle and radius were
    for (std::size_t i = 0; i < n; ++i) square[i] = x[i] * x[i] - 1.0;
    CHECK(std::fabs(correlation_of(square, square, lag)) < far);
  }
  for (std::uint32_t quantity = 1; quantity < 8; ++quantity) CHECK(std::fabs(correlation_of(x, drawn(normal, n, 11, quantity))) < far);
  for (word seed = 12; seed < 18; ++seed) CHECK(std::fabs(correlation_of(x, drawn(normal, n, seed, 0))) < far);
  CHECK(std::fabs(correlation_of(x, uniforms(n, 11, 1))) < far);
  // two halves of one draw fill the plane evenly: 64 equal cells by the distribution function
  std::vector<std::size_t> cells(64);
  const auto eighth = [](double z) { return std::min<std::size_t>(7, static_cast<std::size_t>(8.0 * 0.5 * std::erfc(-z / std::sqrt(2.0)))); };
  std::size_t total = 0;
  for (std::size_t i = 0; i + 16 < n; i += 32)
    for (std::size_t k = 0; k < 16; ++k, ++total) ++cells[8 * eighth(x[i + k]) + eighth(x[i + k + 16])];
  CHECK(std::fabs(even_off(cells, static_cast<double>(total))) < far);
  // tails: how many lie beyond 3 and 4
  double three = 0.0, four = 0.0;
  for (const double z : x) three += std::fabs(z) > 3.0, four += std::fabs(z) > 4.0;
  const double count = static_cast<double>(n), p3 = std::erfc(3.0 / std::sqrt(2.0)), p4 = std::erfc(4.0 / std::sqrt(2.0));
  CHECK(std::fabs(three - count * p3) < far * std::sqrt(count * p3));
  CHECK(std::fabs(four - count * p4) < far * std::sqrt(count * p4) + 1.0);
}

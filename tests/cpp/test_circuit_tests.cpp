// SPDX-License-Identifier: MIT
// Rings against a nodal analysis of their own, published figures of rings and records, and the statistics of a record.
#include <doctest/doctest.h>
#include <makegood/electrical/ring.hpp>
#include <makegood/electrical/test_record.hpp>
#include <cmath>
#include <vector>

using namespace makegood;
using namespace makegood::electrical;
namespace inner = makegood::electrical::detail;

namespace {
/// Resistance between two nodes of a network, by elimination.
struct network {
  int n;
  std::vector<double> g = std::vector<double>(static_cast<std::size_t>(n * n), 0.0);
  double& at(int i, int j) { return g[static_cast<std::size_t>(i * n + j)]; }
  void join(int a, int b, double ohm) {
    at(a, a) += 1.0 / ohm;
    at(b, b) += 1.0 / ohm;
    at(a, b) -= 1.0 / ohm;
    at(b, a) -= 1.0 / ohm;
  }
  double between(int a, int b) {  // node b is earth
    std::vector<double> m = g, i(static_cast<std::size_t>(n), 0.0);
    const auto cell = [&](int r, int c) -> double& { return m[static_cast<std::size_t>(r * n + c)]; };
    for (int k = 0; k < n; ++k) cell(b, k) = cell(k, b) = k == b ? 1.0 : 0.0;
    i[static_cast<std::size_t>(a)] = 1.0;
    for (int k = 0; k < n; ++k)
      for (int r = k + 1; r < n; ++r) {
        const double f = cell(r, k) / cell(k, k);
        for (int c = k; c < n; ++c) cell(r, c) -= f * cell(k, c);
        i[static_cast<std::size_t>(r)] -= f * i[static_cast<std::size_t>(k)];
      }
    for (int k = n - 1; k >= 0; --k) {
      for (int c = k + 1; c < n; ++c) i[static_cast<std::size_t>(k)] -= cell(k, c) * i[static_cast<std::size_t>(c)];
      i[static_cast<std::size_t>(k)] /= cell(k, k);
    }
    return i[static_cast<std::size_t>(a)];
  }
};
constexpr double strap = 1e-7, none = 1e9;

/// Two conductors of end-to-end resistance a and b, the point at x, a joint or break of the first (in_line) or the second at y; crosswise links.
double read_by_network(double a, double b, double x, double y, double joint, bool in_line) {
  network w{8};  // first: 0 end, 1 point, 2 fault, 3 other end; second: 4 .. 7
  const auto chain = [&](int from, double r, bool fault) {
    const double low = std::min(x, y), high = std::max(x, y), extra = fault ? joint : 0.0;
    const int first = from + (x < y ? 1 : 2), second = from + (x < y ? 2 : 1);
    // the joint lies just beyond node 2 on the side of the far end
    w.join(from, first, r * low + (first == from + 2 ? 1e-7 : 0.0));
    w.join(first, second, r * (high - low) + (first == from + 2 ? extra : 0.0) + 1e-12);
    w.join(second, from + 3, r * (1.0 - high) + (second == from + 2 ? extra : 0.0));
  };
  chain(0, a, in_line);
  chain(4, b, !in_line);
  w.join(0, 7, strap);
  w.join(3, 4, strap);
  return w.between(1, 5);
}
double predicted(inner::ring_setup s, inner::ring_test what, const std::vector<double>& p) {
  s.hinted = {true};
  s.place = {1};
  s.fault = 2;
  s.hints = true;
  return inner::ring_prediction{std::make_shared<const inner::ring_setup>(s), what, 0}(job::parameter_values<double>{p.data()});
}
reading stated(double x, double u) {
  accuracy a;
  a.standard_uncertainty = u;
  return reading(x).with(a, "meter");
}
}  // namespace

TEST_CASE("ring: predictions against the nodal analysis") {
  using K = ring_kind;
  using T = inner::ring_test;
  inner::ring_setup s;
  s.ratio = 1.67;
  const double r = 0.5;
  for (const double x : {0.07, 0.3, 0.5, 0.81})
    for (const double y : {0.2, 0.45, 0.9}) {
      CAPTURE(x);
      CAPTURE(y);
      const double sound = read_by_network(r, r * s.ratio, x, y, 0.0, true);
      s.kind = K::intact;
      CHECK(predicted(s, T::line_cpc, {r, x}) == doctest::Approx(sound).epsilon(1e-5));
      CHECK(call(cross_connected_resistance, r, r * s.ratio, x) == doctest::Approx(sound).epsilon(1e-5));
      CHECK(predicted(s, T::line_neutral, {r, x}) == doctest::Approx(0.5 * r));
      for (const bool line : {true, false}) {
        const double bad = read_by_network(r, r * s.ratio, x, y, 0.4, line), open = read_by_network(r, r * s.ratio, x, y, none, line);
        s.kind = line ? K::line_joint : K::cpc_joint;
        CHECK(predicted(s, T::line_cpc, {r, x, 0.4, y}) == doctest::Approx(bad).epsilon(1e-5));
        s.kind = line ? K::line_broken : K::cpc_broken;
        CHECK(predicted(s, T::line_cpc, {r, x, y}) == doctest::Approx(open).epsilon(1e-5));
      }
      // line and neutral: the place counts for nothing
      s.kind = K::line_joint;
      CHECK(predicted(s, T::line_neutral, {r, x, 0.4, y}) == doctest::Approx(read_by_network(r, r, x, y, 0.4, true)).epsilon(1e-5));
      s.kind = K::neutral_joint;
      CHECK(predicted(s, T::line_neutral, {r, x, 0.4}) == doctest::Approx(read_by_network(r, r, x, y, 0.4, false)).epsilon(1e-5));
      s.kind = K::line_broken;
      CHECK(predicted(s, T::line_neutral, {r, x, y}) == doctest::Approx(r));
      s.kind = K::neutral_broken;
      CHECK(predicted(s, T::line_neutral, {r, x}) == doctest::Approx(r));
    }
}

TEST_CASE("ring: a bridge is a shorter ring with spurs, by star and delta") {
  // conductors of resistance a and b, a bridge of the part c of the length between p and q, the point at p + s between them
  const double a = 0.7, b = 1.1, p = 0.2, q = 0.7, d = q - p;
  for (const double c : {0.05, 0.3, 0.5})
    for (const double s : {0.1, 0.25, 0.45}) {
      network w{10};
      for (const int from : {0, 5}) {
        const double r = from == 0 ? a : b;
        w.join(from, from + 1, r * p);            // end, bridge
        w.join(from + 1, from + 2, r * s);        // bridge, point
        w.join(from + 2, from + 3, r * (d - s));  // point, bridge
        w.join(from + 3, from + 4, r * (1.0 - q));
        w.join(from + 1, from + 3, r * c);
      }
      network ends = w;
      w.join(0, 9, strap);
      w.join(4, 5, strap);
      const double left = 1.0 - d + d * c / (d + c), place = (p + s * c / (d + c)) / left, excess = s * (d - s) / (d + c) / left;
      CHECK(ends.between(0, 4) == doctest::Approx(a * left).epsilon(1e-9));
      inner::ring_setup setup;
      setup.kind = ring_kind::interconnected;
      setup.ratio = b / a;
      setup.on_spur = {0};
      CHECK(predicted(setup, inner::ring_test::line_cpc, {a * left, place, left, excess}) == doctest::Approx(w.between(2, 7)).epsilon(1e-5));
    }
}

TEST_CASE("ring: published figures that no entry of the catalogue gives alone") {
  using T = inner::ring_test;
  inner::ring_setup s;
  // a spur of 6 m (19.51 mΩ/m) in the middle of 0.5 and 0.835 Ω: 0.45081 Ω
  s.kind = ring_kind::spur;
  s.ratio = 0.835 / 0.5;
  s.on_spur = {0};
  s.line_ohm_per_m = 0.00741;
  s.cpc_ohm_per_m = 0.0121;
  CHECK(predicted(s, T::line_cpc, {0.5, 0.5, 6.0}) == doctest::Approx(0.45081).epsilon(1e-6));
  // and of 4 m in the middle of a ring of 60 m: 0.37069 Ω
  s.ratio = 0.726 / 0.4446;
  CHECK(std::fabs(predicted(s, T::line_cpc, {0.4446, 0.5, 4.0}) - 0.37069) < 1e-6);
  // the line broken in the middle, read at a quarter: 0.75125 Ω
  s.kind = ring_kind::line_broken;
  s.on_spur.clear();
  s.ratio = 0.835 / 0.5;
  CHECK(std::fabs(predicted(s, T::line_cpc, {0.5, 0.25, 0.5}) - 0.75125) < 5e-7);
  // a bridge of a tenth between a quarter and three quarters leaves 0.583333 of the line
  network w{4};
  w.join(0, 1, 0.25);
  w.join(1, 2, 0.5);
  w.join(1, 2, 0.1);
  w.join(2, 3, 0.25);
  CHECK(std::fabs(w.between(0, 3) - 0.583333) < 5e-7);
  // resistances and ratios of pairs
  for (const auto& c : ring_cables) {
    if (c.key != "2.5/1.5 mm²" && c.key != "4/1.5 mm²") continue;
    const bool small = c.key == "2.5/1.5 mm²";
    CHECK(std::fabs(c.cpc_mohm_per_m / c.line_mohm_per_m - (small ? 1.633 : 2.6247289)) < (small ? 5e-4 : 1e-6));
    if (small) CHECK(std::fabs(c.cpc_mohm_per_m / (c.line_mohm_per_m + c.cpc_mohm_per_m) - 0.62019) < 5e-6);
  }
  // two honest readings on a display of 0.01 with a deviation of 0.05: alike in 5.642 %
  CHECK(std::fabs(chance_of_repeat(0.01, 0.05) - 0.05642) < 0.0002);
  // the share of R2 in R1+R2: nothing is left over
  circuit_record c;
  c.kind = circuit_kind::radial;
  c.line_mohm_per_m = 7.41;
  c.cpc_mohm_per_m = 12.1;
  c.line_plus_cpc_ohm = stated(1.0, 0.01);
  c.cpc_ohm = stated(0.62019, 0.01);
  const auto r = test_record_consistency({c});
  REQUIRE(r.relations.size() == 1);
  CHECK(std::fabs(r.relations[0].residual) < 5e-6);
}

TEST_CASE("ring: kinds, sums and repeats of a call") {
  ring_readings in;
  in.line_ohm = reading::above(20.0);
  in.neutral_ohm = stated(0.44, 0.01);
  in.cpc_ohm = stated(0.72, 0.01);
  in.line_mohm_per_m = 7.41;
  in.cpc_mohm_per_m = 12.1;
  for (const double x : {0.62, 0.55}) {
    ring_point p;
    p.line_neutral_ohm = stated(0.44, 0.01);
    p.line_cpc_ohm = stated(x, 0.01);
    in.points.push_back(p);
  }
  const auto a = ring_tests(in), b = ring_tests(in);
  CHECK(a.kinds[0].kind == ring_kind::line_broken);
  CHECK(a.kinds[0].probability > 0.9);
  CHECK(a.kinds[0].probability < 1.0);
  double sum = 0.0;
  for (std::size_t i = 0; i < a.hypotheses.size(); ++i) {
    sum += a.hypotheses[i].probability;
    CHECK(a.hypotheses[i].probability == b.hypotheses[i].probability);  // the same bits
  }
  CHECK(sum == doctest::Approx(1.0));
  CHECK(a.length_m == b.length_m);
  // conductors changed over at one point: open there in the second round, not in the first
  in.line_ohm = stated(0.44, 0.01);
  for (auto& p : in.points) p.line_neutral_ohm = stated(0.22, 0.01), p.line_cpc_ohm = stated(0.28, 0.01);
  in.points[1].line_cpc_ohm = reading::above(20.0);
  const auto c = ring_tests(in);
  CHECK(c.kinds[0].kind == ring_kind::changed_over);
  CHECK(c.kinds[0].points == std::vector<std::size_t>{1});
  // polarity says so as well
  in.points[1].polarity = polarity::reversed;
  CHECK(ring_tests(in).kinds[0].probability > c.kinds[0].probability);
  // nothing at all is no result
  CHECK_THROWS_AS(ring_tests({}), range_error);
  in.points[0].line_cpc_ohm = reading(no_number);
  CHECK_THROWS_AS(ring_tests(in), range_error);
}

TEST_CASE("record: Holm, tails, and what a sum means") {
  // Holm by hand: 0.01, 0.04, 0.03 of three: 3 × 0.01, 2 × 0.03, and no less than that for 0.04
  const auto h = holm({0.01, 0.04, 0.03});
  CHECK(h[0] == doctest::Approx(0.03));
  CHECK(h[2] == doctest::Approx(0.06));
  CHECK(h[1] == doctest::Approx(0.06));
  CHECK(holm({}).empty());
  // 1 - 0.7^4, 0.3^4, and all
  CHECK(binomial_tail(4, 1, 0.3) == doctest::Approx(1.0 - 0.7 * 0.7 * 0.7 * 0.7));
  CHECK(binomial_tail(4, 4, 0.3) == doctest::Approx(0.0081));
  CHECK(binomial_tail(4, 0, 0.3) == 1.0);
  CHECK(binomial_tail(4, 2, 0.0) == 0.0);
  CHECK(poisson_tail(1, 0.5) == doctest::Approx(1.0 - std::exp(-0.5)));
  CHECK(poisson_tail(3, 2.0) == doctest::Approx(1.0 - std::exp(-2.0) * (1.0 + 2.0 + 2.0)));
  CHECK(poisson_tail(2, 0.0) == 0.0);
  CHECK(poisson_tail(0, 5.0) == 1.0);
  // Zs equal to the sum on every line: a pattern from three lines on, never an accusation
  std::vector<circuit_record> lines;
  board_record board;
  board.external_loop_ohm = stated(0.35, 0.01);
  for (int k = 0; k < 7; ++k) {
    circuit_record c;
    c.line_plus_cpc_ohm = stated(0.2 + 0.07 * k, 0.01);
    c.loop_ohm = stated(0.55 + 0.07 * k, 0.02);
    c.loop_method = loop_method::high_current;
    lines.push_back(c);
    const auto r = test_record_consistency(lines, board);
    bool there = false;
    for (const auto& one : r.relations)
      if (one.relation == record_relation::sums_equal) {
        there = true;
        CHECK(one.p_value == doctest::Approx(std::pow(0.4, k + 1)));
        CHECK(one.log10_ratio == doctest::Approx(-(k + 1) * std::log10(0.4)));
      }
    CHECK(there == (k >= 2));
    CHECK(r.contradictions == 0);
    CHECK(r.patterns == (k >= 5 ? 1u : 0u));  // 0.4⁶ times seven relations is 0.029, 0.4⁵ times six 0.061
    CHECK(r.missing.size() > 5);
  }
  CHECK_THROWS_AS(test_record_consistency({}), range_error);
  CHECK_THROWS_AS(test_record_consistency(lines, board, 0.0), range_error);
  lines[0].loop_ohm = reading(no_number);
  CHECK_THROWS_AS(test_record_consistency(lines, board), range_error);
}

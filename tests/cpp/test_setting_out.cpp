// SPDX-License-Identifier: MIT
// Chances of holes against a simulation and a sweep; ways of a flex against a lattice; k of tests against tables; light against integrals.
// MAKEGOOD_CASES: how many patterns (12).
#include <doctest/doctest.h>
#include <cmath>
#include <cstdlib>
#include <makegood/lighting/layout.hpp>
#include <makegood/setting_out/chances.hpp>
#include <makegood/setting_out/fixing_load.hpp>
#include <makegood/setting_out/flex_reach.hpp>
#include <queue>
#include <random>

using namespace makegood;
using namespace makegood::setting_out;

namespace {
/// Whether a hole's centre at (x, y) is where it is to be: tile by tile and joint by joint.
bool comes_right(const bracket_task& t, const pattern_hole& h, double x, double y) {
  const double r = 0.5 * t.hole_diameter_mm, half = 0.5 * t.wall.joint_mm, px = t.wall.tile_width_mm + t.wall.joint_mm, py = t.wall.tile_height_mm + t.wall.joint_mm;
  if (x < r || x > t.wall.width_mm - r || y < r || y > t.wall.height_mm - r) return false;
  for (const auto& k : t.keep_outs)
    if (x > k.left_mm - r && x < k.right_mm + r && y > k.bottom_mm - r && y < k.top_mm + r) return false;
  const double row = std::floor((y - t.wall.first_y_mm + half) / py), up = y - t.wall.first_y_mm + half - row * py, off_y = std::min(up, py - up);
  const auto course = ((static_cast<long>(row) % t.wall.courses_in_bond) + t.wall.courses_in_bond) % t.wall.courses_in_bond;
  double along = x - t.wall.first_x_mm + half - static_cast<double>(course) * t.wall.shift_ratio * px;
  along -= px * std::floor(along / px);
  const double off_x = std::min(along, px - along);
  if (h.wish == hole_wish::tile) return off_x > half + r && off_y > half + r;
  return h.wish == hole_wish::vertical_joint ? off_x < half : off_y < half;
}
bracket_task some_pattern(int c) {
  bracket_task t;
  t.wall = {900, 900, 148, 148, c % 2 ? 2.0 : 4.0, 10, 20, c % 3 == 1 ? 0.5 : 0.0, c % 3 == 1 ? 2 : 1};
  t.holes = {{0, 0}, {64, 0}, {0, 300}};
  if (c % 4 == 3) t.holes = {{0, 0, hole_wish::vertical_joint}, {40, 55}, {0, 300}};
  t.hole_diameter_mm = 6;
  if (c % 2) t.keep_outs.push_back({"k", 300, 300, 420, 420});
  t.left_mm = 200, t.right_mm = 400, t.bottom_mm = 200, t.top_mm = 400;
  return t;
}
}  // namespace

TEST_CASE("chances: as often as a simulation says, and no place of a sweep is likelier") {
  const char* wanted = std::getenv("MAKEGOOD_CASES");
  const int cases = wanted ? std::atoi(wanted) : 12;
  std::mt19937_64 random(8);
  std::normal_distribution<> normal;
  double worst = 0.0, gain = 0.0;
  int told_apart = 0;
  for (int c = 0; c < cases; ++c) {
    CAPTURE(c);
    const auto t = some_pattern(c);
    const bracket_doubt d{c % 4 == 3 ? 0.8 : 4.0 + 8.0 * (c % 5) / 4.0, c % 4 == 3 ? 0.0 : 3.0, c % 2 && c % 4 != 3 ? 6.0 : 0.0};
    const auto r = most_probable_place(t, d);
    REQUIRE(r.worst_case.fits);
    CHECK(r.at_likeliest.probability >= r.at_worst_case.probability);
    gain = std::max(gain, r.at_likeliest.probability - r.at_worst_case.probability);
    for (const bool likeliest : {false, true}) {
      const double x0 = likeliest ? r.x_mm : r.worst_case.x_mm, y0 = likeliest ? r.y_mm : r.worst_case.y_mm, p = likeliest ? r.at_likeliest.probability : r.at_worst_case.probability;
      const int trials = 40000;
      int right = 0;
      for (int i = 0; i < trials; ++i) {
        const double cx = d.common_mm * normal(random), cy = d.common_mm * normal(random);
        bool all = true;
        for (const auto& h : t.holes) {
          const double ex = d.wander_mm * normal(random) + d.centres_mm * normal(random), ey = d.wander_mm * normal(random) + d.centres_mm * normal(random);
          all = all && comes_right(t, h, x0 + h.x_mm + cx + ex, y0 + h.y_mm + cy + ey);
        }
        right += all;
      }
      const double seen = static_cast<double>(right) / trials, doubt = std::sqrt(std::max(p * (1.0 - p), 1e-6) / trials);
      CHECK(std::fabs(seen - p) <= 4.5 * doubt + 1e-4);
      worst = std::max(worst, std::fabs(seen - p) / doubt);
      told_apart += p > 0.02 && p < 0.98;
    }
    double best = 0.0;
    for (double x = 200; x <= 400; x += 5)
      for (double y = 200; y <= 400; y += 5) {
        bool free = true;
        for (const auto& h : t.holes)
          for (const auto& k : t.keep_outs) free = free && !(x + h.x_mm > k.left_mm - 3 && x + h.x_mm < k.right_mm + 3 && y + h.y_mm > k.bottom_mm - 3 && y + h.y_mm < k.top_mm + 3);
        if (free) best = std::max(best, bracket_probability(t, d, x, y).probability);
      }
    CHECK(r.at_likeliest.probability >= best - 1e-6);
  }
  MESSAGE(cases, " patterns; simulation off by at most ", worst, " of its standard deviations; likeliest place up to ", gain, " likelier than the best by worst cases");
  CHECK(told_apart > 0);
  CHECK(gain > 0.0);
}

TEST_CASE("chances: one hole is a product of two normal areas, and a common shift does not separate two holes alike") {
  bracket_task t;
  t.wall = {3000, 3000, 298, 298, 2, 1, 1, 0.0, 1};
  t.holes = {{0, 0}};
  t.hole_diameter_mm = 6;
  // the circle is clear up to 146 mm from the middle of its tile, and in the next one from 154 to 446 mm
  const auto clear = [](double sd) {
    const auto within = [&](double x) { return std::erf(x / sd / std::sqrt(2.0)); };
    return within(146.0) + within(446.0) - within(154.0);
  };
  const double area = clear(40.0);
  CHECK(bracket_probability(t, {40, 0, 0}, 1050, 1050).probability == doctest::Approx(area * area).epsilon(1e-9));
  t.holes = {{0, 0}, {300, 0}, {0, 300}};
  CHECK(bracket_probability(t, {40, 0, 0}, 1050, 1050).probability == doctest::Approx(std::pow(area, 6)).epsilon(1e-9));
  // nearly all of the doubt is common: as one hole, with the sum of the variances
  const double together = clear(std::sqrt(60.0 * 60.0 + 3.0 * 3.0));
  CHECK(bracket_probability(t, {3, 0, 60}, 1050, 1050).holes[0] == doctest::Approx(together * together).epsilon(1e-6));
  CHECK(bracket_probability(t, {3, 0, 60}, 1050, 1050).probability > together * together - 0.02);
  CHECK(bracket_probability(t, {3, 0, 60}, 1050, 1050).probability < together * together);
  CHECK_THROWS_AS(most_probable_place(t, {1, 0, 60}), range_error);
  CHECK_THROWS_AS(most_probable_place(t, {}), range_error);
}

TEST_CASE("keep-outs that cover all: which of them, and by how much") {
  bracket_task t;
  t.wall = {900, 900, 148, 148, 2, 0, 0, 0.0, 1};
  t.holes = {{0, 0}, {300, 0}};
  t.hole_diameter_mm = 6;
  t.keep_outs = {{"bath", 0, 0, 900, 500}, {"cables", 0, 480, 900, 900}};
  const auto r = place_brackets(t);
  CHECK(!r.fits);
  CHECK(r.blame.find("\"bath\"") != std::string::npos);
  CHECK(r.blame.find("would have to give") != std::string::npos);
  t.keep_outs = {{"window", 0, 0, 900, 900}, {"pipe", 0, 0, 900, 900}};
  const auto both = place_brackets(t);
  CHECK(both.blame.find("\"window\"") != std::string::npos);
  CHECK(both.blame.find("\"pipe\"") != std::string::npos);
}

TEST_CASE("flex: the way at right angles is that of a lattice") {
  std::mt19937 random(5);
  const auto pick = [&](int low, int high) { return std::uniform_int_distribution<>(low, high)(random); };
  int ways = 0, closed = 0;
  for (int c = 0; c < 150; ++c) {
    CAPTURE(c);
    flex_task t;
    t.length_mm = 1000, t.from = {1.0 * pick(0, 30), 1.0 * pick(0, 30)}, t.to = {1.0 * pick(0, 30), 1.0 * pick(0, 30)};
    for (int k = pick(1, 6); k > 0; --k) {
      const double x = pick(-2, 28), y = pick(-2, 28);
      t.keep_outs.push_back({"", x, y, x + pick(1, 25), y + pick(1, 8)});
    }
    const auto r = flex_reach(t);
    // breadth first over whole numbers; an edge is free if its middle lies inside no rectangle
    constexpr int low = -40, n = 120;
    std::vector<int> far(n * n, -1);
    std::queue<int> next;
    const auto at = [&](double x, double y) { return (static_cast<int>(y) - low) * n + static_cast<int>(x) - low; };
    const auto inside = [&](double x, double y) {
      for (const auto& k : t.keep_outs)
        if (x > k.left_mm && x < k.right_mm && y > k.bottom_mm && y < k.top_mm) return true;
      return false;
    };
    const bool buried = inside(t.from.x_mm, t.from.y_mm) || inside(t.to.x_mm, t.to.y_mm);
    far[static_cast<std::size_t>(at(t.from.x_mm, t.from.y_mm))] = 0;
    next.push(at(t.from.x_mm, t.from.y_mm));
    while (!next.empty()) {
      const int i = next.front(), x = i % n + low, y = i / n + low;
      next.pop();
      for (const auto& [dx, dy] : {std::pair{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        if (x + dx < low || x + dx >= low + n || y + dy < low || y + dy >= low + n || inside(x + 0.5 * dx, y + 0.5 * dy) || far[static_cast<std::size_t>(at(x + dx, y + dy))] >= 0) continue;
        far[static_cast<std::size_t>(at(x + dx, y + dy))] = far[static_cast<std::size_t>(i)] + 1;
        next.push(at(x + dx, y + dy));
      }
    }
    const int wanted = far[static_cast<std::size_t>(at(t.to.x_mm, t.to.y_mm))];
    CHECK(r.way_found == (!buried && wanted >= 0));
    if (!r.way_found) {
      ++closed;
      CHECK(!r.blame.empty());
      continue;
    }
    ++ways;
    CHECK(r.legs_mm == doctest::Approx(wanted));
    t.right_angles = false;
    const auto straight = flex_reach(t);
    CHECK(straight.legs_mm <= r.legs_mm + 1e-9);
    CHECK(straight.legs_mm >= std::hypot(t.to.x_mm - t.from.x_mm, t.to.y_mm - t.from.y_mm) - 1e-9);
    for (std::size_t i = 0; i + 1 < straight.path.size(); ++i)
      for (int k = 1; k < 100; ++k) {
        const double s = k / 100.0;
        CHECK(!inside(straight.path[i].x_mm + s * (straight.path[i + 1].x_mm - straight.path[i].x_mm) + 0.0, straight.path[i].y_mm + s * (straight.path[i + 1].y_mm - straight.path[i].y_mm)));
      }
  }
  CHECK(ways > 50);
  CHECK(closed > 5);
}

TEST_CASE("flex: bends, allowance, what is missing, and where the outlet would have to be") {
  flex_task t;
  t.length_mm = 1000, t.to = {600, 400}, t.bend_radius_mm = 30, t.allowance_mm = 100;
  const auto r = flex_reach(t);
  CHECK(r.bends == 1);
  CHECK(r.needed_mm == doctest::Approx(1000.0 - 30.0 * (2.0 - 1.57079632679489662) + 100.0));
  CHECK(r.spare_mm == doctest::Approx(1000.0 - r.needed_mm));
  CHECK(std::fabs(r.ends.x_mm - 600) + std::fabs(r.ends.y_mm - 400) == doctest::Approx(-r.spare_mm));
  t.leaves = 1, t.enters = 1, t.straight_mm = 60;  // out to the left, back over itself is no way
  const auto left = flex_reach(t);
  CHECK(left.way_found);
  CHECK(left.bends_fit);
  CHECK(left.path[1].x_mm == doctest::Approx(-60.0));
  t.keep_outs = {{"mirror", -10, -10, 10, 10}};
  CHECK(flex_reach(t).blame.find("\"mirror\"") != std::string::npos);
  t.keep_outs.clear(), t.length_sd_mm = 10, t.place_sd_mm = 10, t.length_mm = left.needed_mm;
  CHECK(flex_reach(t).probability == doctest::Approx(0.5));
  CHECK(flex_reach(t).standard_uncertainty_mm == doctest::Approx(std::sqrt(300.0)));
}

TEST_CASE("flex: the catenary closes with its length") {
  for (const double slack : {1e-9, 1e-6, 1e-3, 0.01, 0.1, 1.0, 3.0}) {
    const double span = 500.0, length = span * (1.0 + slack), sag = catenary_sag(length, span);
    // the length of a catenary by sag and parameter: L/2 = √(h² + 2 a h), S/2 = a asinh(L/2a); find a by the first, try the second
    const double half = 0.5 * length, a = (half * half - sag * sag) / (2.0 * sag);
    CHECK(2.0 * a * std::asinh(half / a) == doctest::Approx(span).epsilon(1e-9));
  }
  CHECK(catenary_sag(1010, 1000) == doctest::Approx(61.2372).epsilon(0.01));
  CHECK(catenary_sag(1000, 1000) == 0.0);
}

TEST_CASE("tests of fixings: k of the non-central t distribution") {
  // tables of one-sided tolerance factors (95 % of the population): 90 % and 95 % confidence
  CHECK(tolerance_factor(5, 0.95, 0.05) == doctest::Approx(4.203).epsilon(3e-4));
  CHECK(tolerance_factor(10, 0.95, 0.05) == doctest::Approx(2.911).epsilon(3e-4));
  CHECK(tolerance_factor(5, 0.90, 0.05) == doctest::Approx(3.400).epsilon(3e-4));
  CHECK(tolerance_factor(2, 0.90, 0.05) == doctest::Approx(13.090).epsilon(3e-4));
  CHECK(tolerance_factor(5, 0.90, 0.5) == doctest::Approx(1.5332062740589438 / std::sqrt(5.0)).epsilon(1e-9));  // Student's t, 4 degrees
  // how often mean - k s lies below the true fractile
  std::mt19937_64 random(3);
  std::normal_distribution<> normal;
  int below = 0;
  const int trials = 40000;
  const double k = tolerance_factor(5, 0.9, 0.05);
  for (int i = 0; i < trials; ++i) {
    double x[5], mean = 0.0, squares = 0.0;
    for (auto& v : x) v = normal(random), mean += v / 5.0;
    for (const auto v : x) squares += (v - mean) * (v - mean);
    below += mean - k * std::sqrt(squares / 4.0) <= -1.6448536269514722;
  }
  CHECK(std::fabs(below / static_cast<double>(trials) - 0.9) < 4.0 * std::sqrt(0.09 / trials));
  const auto p = pilot_sizes(35.0, 4.0, 2.0);
  CHECK(p.size() == 5);
  for (std::size_t i = 1; i < p.size(); ++i) CHECK(p[i] <= 2.0 * p[i - 1] * (1.0 + 1e-12));
  CHECK(pilot_sizes(10.0, 3.0, 2.0, {3, 5, 6, 8}) == std::vector<double>{3, 6, 10});
}

TEST_CASE("light: strips and rings against integrals, all light of downlights on a wide plane") {
  using namespace makegood::lighting;
  mirror_task m;
  m.flux_lm = 600, m.apart_m = 0.6, m.strip_m = 0.6, m.face_m = 0.5;
  const double a2 = 0.09 + 0.25, a = std::sqrt(a2), y = 0.3;
  const double integral = 2.0 * (y / (2.0 * a2 * (a2 + y * y)) + std::atan(y / a) / (2.0 * a2 * a));
  CHECK(mirror_illuminance(m).front_lx == doctest::Approx(2.0 * 600.0 / (3.14159265358979 * 0.6) * 0.25 * integral).epsilon(2e-4));
  CHECK(mirror_illuminance(m).left_lx == doctest::Approx(mirror_illuminance(m).right_lx));
  m.ring = true;
  CHECK(mirror_illuminance(m).front_lx == doctest::Approx(600.0 / 3.14159265358979 * 0.25 / ((0.09 + 0.25) * (0.09 + 0.25))).epsilon(1e-6));
  // one luminaire over a floor so wide that nearly all of its light comes down on it
  for (const auto shape : {light_shape::cosine_power, light_shape::cone}) {
    downlight_task t;
    t.length_m = t.width_m = 40.0, t.mounting_height_m = 2.0, t.rows = t.columns = 1, t.light = make_beam("test", shape, 1000.0, 60.0);
    const auto r = downlight_layout(t);
    CHECK(r.mean_lx * 1600.0 == doctest::Approx(1000.0).epsilon(0.02));
  }
  CHECK(rows_for(20.0, 8.25, false) == 3);
  CHECK(rows_for(40.0, 8.25, false) == 5);
  downlight_task t;
  t.length_m = 6.0, t.width_m = 4.0, t.mounting_height_m = 2.0, t.spacing_ratio = 1.0, t.work_at_walls = true, t.light = make_beam("test", light_shape::cosine_power, 800.0, 120.0);
  const auto r = downlight_layout(t);
  CHECK(r.column_spacing_m <= 2.0);
  CHECK(r.places[0].x_m == doctest::Approx(r.column_spacing_m / 3.0));
  CHECK(t.light.at(1.0) == doctest::Approx(800.0 / 3.14159265358979));  // a matt surface
  t.spacing_ratio = no_number;
  CHECK_THROWS_AS(downlight_layout(t), range_error);
}

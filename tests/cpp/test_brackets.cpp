// SPDX-License-Identifier: MIT
// Holes on tiles against a sweep: all sizes are whole millimetres (keep-outs and windows too), so that every optimum lies on a lattice of a
// quarter of a millimetre, and the sweep over that lattice must give the same best value. MAKEGOOD_CASES: how many (120).
#include <doctest/doctest.h>
#include <cmath>
#include <cstdlib>
#include <makegood/setting_out/brackets.hpp>
#include <random>

using namespace makegood;
using namespace makegood::setting_out;

namespace {
/// Distance to the nearest tile edge (in a joint: minus the distance out of it), tile by tile; and to joint centres. Written without the library's code.
struct judge {
  const bracket_task& t;
  double pitch_x() const { return t.wall.tile_width_mm + t.wall.joint_mm; }
  double pitch_y() const { return t.wall.tile_height_mm + t.wall.joint_mm; }
  static double nearest(double x, double first, double pitch) {
    double best = 1e9;
    const int n = static_cast<int>(std::lround((x - first) / pitch));
    for (int k = n - 1; k <= n + 1; ++k) best = std::min(best, std::fabs(x - first - k * pitch));
    return best;
  }
  int course(double y) const {
    const int n = static_cast<int>(std::floor((y - (t.wall.first_y_mm - 0.5 * t.wall.joint_mm)) / pitch_y()));
    return ((n % t.wall.courses_in_bond) + t.wall.courses_in_bond) % t.wall.courses_in_bond;
  }
  /// Best of joints, best of tiles at a datum; false: forbidden. A hole on the line between two courses belongs to either that the window
  /// reaches: both are tried by the caller.
  bool value(double x, double y, double& joints, double& tiles, double lean) const {
    joints = tiles = 1e9;
    if (t.bottom_mm < t.top_mm ? (y == t.bottom_mm && lean < 0.0) || (y == t.top_mm && lean > 0.0) : lean < 0.0) return false;
    const double reserve = 0.5 * t.hole_diameter_mm + t.tolerance_mm + t.wander_mm, half = 0.5 * t.wall.joint_mm;
    for (const auto& h : t.holes) {
      const double px = x + h.x_mm, py = y + h.y_mm;
      if (px < reserve || px > t.wall.width_mm - reserve || py < reserve || py > t.wall.height_mm - reserve) return false;
      for (const auto& k : t.keep_outs)
        if (px > k.left_mm - reserve && px < k.right_mm + reserve && py > k.bottom_mm - reserve && py < k.top_mm + reserve) return false;
      const double over_x = nearest(px, t.wall.first_x_mm - half + course(py + lean) * t.wall.shift_ratio * pitch_x(), pitch_x());
      const double over_y = nearest(py, t.wall.first_y_mm - half, pitch_y());
      if (h.wish == hole_wish::vertical_joint) joints = std::min(joints, -over_x);
      else if (h.wish == hole_wish::horizontal_joint) joints = std::min(joints, -over_y);
      else
        tiles = std::min({tiles, over_x - half, over_y - half, px, t.wall.width_mm - px, py, t.wall.height_mm - py});
    }
    return true;
  }
};
}  // namespace

TEST_CASE("brackets: the best place is that of a sweep") {
  std::mt19937 random(20261126);
  const auto pick = [&](int low, int high) { return static_cast<double>(std::uniform_int_distribution<>(low, high)(random)); };
  const char* wanted = std::getenv("MAKEGOOD_CASES");
  const int cases = wanted ? std::atoi(wanted) : 120;
  int without = 0, mixed = 0;
  double worst = 0.0;
  for (int c = 0; c < cases; ++c) {
    CAPTURE(c);
    bracket_task t;
    t.wall = {pick(600, 1500), pick(600, 1500), pick(30, 300), pick(30, 300), 2.0 * pick(1, 3), pick(0, 60), pick(0, 60), 0.0, 1};
    if (c % 3 == 1) t.wall.shift_ratio = 0.5, t.wall.courses_in_bond = 2, t.wall.tile_width_mm = 2.0 * std::floor(t.wall.tile_width_mm / 2.0);
    if (c % 6 == 5) t.wall.shift_ratio = 0.25, t.wall.courses_in_bond = 4, t.wall.tile_width_mm = 4.0 * std::floor(t.wall.tile_width_mm / 4.0) + (t.wall.joint_mm == 2.0 || t.wall.joint_mm == 6.0 ? 2.0 : 0.0);
    const int holes = static_cast<int>(pick(1, 5));
    bool tile = false, joint = false;
    for (int i = 0; i < holes; ++i) {
      const auto wish = c % 4 == 3 ? static_cast<hole_wish>(static_cast<int>(pick(0, 2))) : hole_wish::tile;
      (wish == hole_wish::tile ? tile : joint) = true;
      t.holes.push_back({pick(0, 200), pick(0, 200), wish});
    }
    mixed += tile && joint;
    t.hole_diameter_mm = 2.0 * pick(2, 5), t.tolerance_mm = pick(0, 1), t.wander_mm = pick(0, 2);
    for (int k = static_cast<int>(pick(0, 4)); k > 0; --k) {
      const double x = pick(0, 500), y = pick(0, 500);
      t.keep_outs.push_back({"", x, y, x + pick(0, 120), y + pick(0, 120)});
    }
    t.left_mm = pick(20, 200), t.right_mm = t.left_mm + pick(0, 70), t.bottom_mm = pick(20, 200), t.top_mm = t.bottom_mm + pick(0, 70);
    if (c % 2) t.wished_x_mm = pick(0, 300), t.wished_y_mm = pick(0, 300);
    else t.wished_x_mm = 0.5 * (t.left_mm + t.right_mm), t.wished_y_mm = 0.5 * (t.bottom_mm + t.top_mm);
    const judge by{t};
    double best_joint = -1e9, best_tile = -1e9;
    for (const bool joints : {true, false})
      for (double x = t.left_mm; x <= t.right_mm; x += 0.25)
        for (double y = t.bottom_mm; y <= t.top_mm; y += 0.25)
          for (const double lean : {-1e-6, 1e-6}) {
            double j = 0.0, f = 0.0;
            if (!by.value(x, y, j, f, lean)) continue;
            if (joints) best_joint = std::max(best_joint, j);
            else if (j >= best_joint) best_tile = std::max(best_tile, f);
          }
    const auto r = place_brackets(t);
    CHECK(r.fits == (best_joint > -1e9));
    if (!r.fits) {
      ++without;
      CHECK(!r.blame.empty());
      continue;
    }
    const double reserve = 0.5 * t.hole_diameter_mm + t.tolerance_mm + t.wander_mm;
    if (joint) worst = std::max(worst, std::fabs(r.off_joint_mm + best_joint));
    if (tile) worst = std::max(worst, std::fabs(r.clearance_mm + reserve - best_tile));
    if (joint) CHECK(r.off_joint_mm == doctest::Approx(-best_joint).epsilon(1e-12));
    if (tile) CHECK(r.clearance_mm + reserve == doctest::Approx(best_tile).epsilon(1e-12));
    CHECK(r.holes.size() == t.holes.size());
    // of all best places of the sweep none lies nearer to the wished one (the middle of the window, drawn in by the wall)
    double j = 0.0, f = 0.0, nearest = 1e9;
    const double wish_x = is_nan(t.wished_x_mm) ? 0.5 * (t.left_mm + t.right_mm) : t.wished_x_mm, wish_y = is_nan(t.wished_y_mm) ? 0.5 * (t.bottom_mm + t.top_mm) : t.wished_y_mm;
    for (double x = t.left_mm; x <= t.right_mm; x += 0.25)
      for (double y = t.bottom_mm; y <= t.top_mm; y += 0.25)
        for (const double lean : {-1e-6, 1e-6})
          if (by.value(x, y, j, f, lean) && (!joint || j >= best_joint - 1e-9) && (!tile || f >= best_tile - 1e-9)) nearest = std::min(nearest, std::hypot(x - wish_x, y - wish_y));
    CHECK(std::hypot(r.x_mm - wish_x, r.y_mm - wish_y) <= nearest + 1e-6);
    CHECK(!r.best_x.empty());
    CHECK(!r.best_y.empty());
  }
  MESSAGE(cases, " cases, ", mixed, " with holes of both kinds, ", without, " without a place; largest disagreement ", worst, " mm");
  CHECK(worst < 1e-9);
}

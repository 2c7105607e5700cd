// SPDX-License-Identifier: MIT
// How probably every hole of a pattern comes where it is to come, when drill and centres wander by chance; and the place where it is likeliest.
// Subject: setting_out. Opt-in.
#pragma once
#include <array>
#include "brackets.hpp"

namespace makegood {
inline namespace v1 {
namespace setting_out {

/// Standard deviations in each direction: of the drill and of the pattern's centres, each hole on its own; and of a shift that moves the
/// whole pattern (it was held or marked a little aside). Normal and independent.
struct bracket_doubt {
  double wander_mm = 0.0, centres_mm = 0.0, common_mm = 0.0;
};
struct bracket_chance {
  double probability = no_number;  ///< that every hole comes where it is to come
  double failure = no_number;      ///< 1 - probability with its digits
  std::vector<double> holes{};     ///< of each hole alone
};

namespace detail {
/// Area of the normal distribution in [a, b]; the small tails keep their digits. Without a deviation: whether the middle lies inside.
inline double normal_area(double a, double b, double mean, double sd) {
  if (!(b > a)) return 0.0;
  if (!(sd > 0.0)) return mean >= a && mean <= b ? 1.0 : 0.0;
  const double scale = 0.70710678118654752440 / sd, u = (a - mean) * scale, v = (b - mean) * scale;
  if (u >= 0.0) return 0.5 * (std::erfc(u) - std::erfc(v));
  if (v <= 0.0) return 0.5 * (std::erfc(-v) - std::erfc(-u));
  return 1.0 - 0.5 * (std::erfc(-u) + std::erfc(v));
}
/// The plane of one hole in rows: in a row the same intervals of x fail. Rows that fail alike are one.
struct fail_rows {
  struct row {
    std::vector<interval_mm> y{}, x{};
  };
  std::vector<row> rows{};

  void add(interval_mm y, std::vector<interval_mm> x) {
    if (!(y.high > y.low)) return;
    for (auto& r : rows)
      if (std::equal(r.x.begin(), r.x.end(), x.begin(), x.end(), [](const auto& a, const auto& b) { return a.low == b.low && a.high == b.high; })) {
        r.y.push_back(y);
        return;
      }
    rows.push_back({{y}, std::move(x)});
  }
};
/// Where one hole near (px, py) fails: outside its tile or joint, over an end of the wall, in a keep-out (its whole circle, with square corners).
inline fail_rows where_it_fails(const bracket_task& task, const pattern_hole& h, double px, double py, double reach) {
  constexpr double far = 1e9;
  const auto& w = task.wall;
  const double r = 0.5 * task.hole_diameter_mm, half = 0.5 * w.joint_mm, pitch_x = w.tile_width_mm + w.joint_mm, pitch_y = w.tile_height_mm + w.joint_mm;
  const double row_first = w.first_y_mm - half;
  const bool shifted = w.courses_in_bond > 1 && w.shift_ratio > 0.0;
  const auto mod = [&](double n) {
    const auto m = static_cast<long long>(w.courses_in_bond), k = static_cast<long long>(n);
    return static_cast<double>(((k % m) + m) % m);
  };
  std::vector<double> cuts{-far, far, r, w.height_mm - r};
  for (double n = std::floor((py - reach - row_first) / pitch_y) - 1.0; row_first + n * pitch_y <= py + reach + pitch_y; ++n) {
    const double centre = row_first + n * pitch_y;
    if (h.wish == hole_wish::tile) cuts.push_back(centre - half - r), cuts.push_back(centre + half + r);
    else if (h.wish == hole_wish::vertical_joint) cuts.push_back(centre);
    else cuts.push_back(centre - half), cuts.push_back(centre + half);
  }
  for (const auto& k : task.keep_outs) cuts.push_back(k.bottom_mm - r), cuts.push_back(k.top_mm + r);
  std::sort(cuts.begin(), cuts.end());
  cuts.erase(std::unique(cuts.begin(), cuts.end()), cuts.end());
  fail_rows out;
  for (std::size_t c = 0; c + 1 < cuts.size(); ++c) {
    const double y = 0.5 * (cuts[c] + cuts[c + 1]);
    const double n = std::floor((std::clamp(y, -1e6, 1e6) - row_first) / pitch_y), up = y - row_first - n * pitch_y, off = std::min(up, pitch_y - up);
    std::vector<interval_mm> good;
    const bool row_good = y > r && y < w.height_mm - r && (h.wish == hole_wish::tile ? off > half + r : h.wish == hole_wish::horizontal_joint ? off < half : true);
    if (row_good) {
      const interval_mm wall{r, w.width_mm - r};
      const auto put = [&](double low, double high) {
        low = std::max(low, wall.low), high = std::min(high, wall.high);
        if (high > low) good.push_back({low, high});
      };
      if (h.wish == hole_wish::horizontal_joint) {
        put(wall.low, wall.high);
      } else {
        const double first = w.first_x_mm - half + (shifted ? mod(n) * w.shift_ratio * pitch_x : 0.0);
        for (double k = std::floor((px - reach - first) / pitch_x) - 1.0; first + k * pitch_x <= px + reach + pitch_x; ++k) {
          const double centre = first + k * pitch_x;
          if (h.wish == hole_wish::tile) put(centre + half + r, centre + pitch_x - half - r);
          else put(centre - half, centre + half);
        }
      }
      for (const auto& k : task.keep_outs) {
        if (!(y > k.bottom_mm - r && y < k.top_mm + r)) continue;
        std::vector<interval_mm> left;
        for (const auto& g : good) {
          if (k.left_mm - r > g.low) left.push_back({g.low, std::min(g.high, k.left_mm - r)});
          if (k.right_mm + r < g.high) left.push_back({std::max(g.low, k.right_mm + r), g.high});
        }
        std::erase_if(left, [](const auto& g) { return !(g.high > g.low); });
        good = std::move(left);
      }
    }
    std::vector<interval_mm> bad;
    double at = -far;
    for (const auto& g : good) bad.push_back({at, g.low}), at = g.high;
    bad.push_back({at, far});
    out.add({cuts[c], cuts[c + 1]}, std::move(bad));
  }
  return out;
}
/// Places and weights of a normal shift: Gauss's rule of five points on short stretches out to 8 deviations.
struct shift_nodes {
  std::vector<double> at{0.0}, weight{1.0};
};
inline shift_nodes nodes_of(double sd, double finest) {
  shift_nodes n;
  if (!(sd > 0.0)) return n;
  n.at.clear(), n.weight.clear();
  constexpr double x[] = {-0.90617984593866399280, -0.53846931010568309104, 0.0, 0.53846931010568309104, 0.90617984593866399280};
  constexpr double w[] = {0.23692688505618908751, 0.47862867049936646804, 0.56888888888888888889, 0.47862867049936646804, 0.23692688505618908751};
  const int stretches = static_cast<int>(std::ceil(16.0 * sd / finest));
  const double half = 8.0 / stretches;  // in deviations
  double all = 0.0;
  for (int i = 0; i < stretches; ++i)
    for (int j = 0; j < 5; ++j) {
      const double z = -8.0 + half * (2 * i + 1 + x[j]), weight = w[j] * half * 0.39894228040143267794 * std::exp(-0.5 * z * z);
      n.at.push_back(z * sd), n.weight.push_back(weight), all += weight;
    }
  for (auto& v : n.weight) v /= all;
  return n;
}
inline void demand_doubt(const bracket_doubt& d) {
  const auto fail = [](const std::string& t) { throw range_error("place_brackets: doubt: " + t); };
  for (const auto& [x, name] : {std::pair{d.wander_mm, "wander_mm"}, {d.centres_mm, "centres_mm"}, {d.common_mm, "common_mm"}})
    if (!(x >= 0.0 && x <= 100.0)) fail(std::string(name) + " = " + number_text(x) + " mm: a standard deviation from 0 to 100 mm");
  const double own = std::hypot(d.wander_mm, d.centres_mm);
  if (!(own > 0.0 || d.common_mm > 0.0)) fail("give wander_mm, centres_mm or common_mm: without any nothing is left to chance");
  if (d.common_mm > 0.0 && !(own >= 0.05 * d.common_mm)) fail("common_mm = " + number_text(d.common_mm) + " mm is more than 20 times what each hole wanders on its own: give the wander of the drill as well");
}
}  // namespace detail

/// The chance that every hole comes where it is to come, with the datum at (x, y). Without a common shift a product of normal areas; with
/// one, its integral over the shift. `coarse`: fewer points in that integral, for a search.
inline bracket_chance bracket_probability(const bracket_task& task, const bracket_doubt& doubt, double x, double y, bool coarse = false) {
  const double own = std::hypot(doubt.wander_mm, doubt.centres_mm), reach = 9.0 * own + 8.0 * doubt.common_mm;
  const auto nodes = detail::nodes_of(doubt.common_mm, coarse ? std::max(own, 2.5 * doubt.common_mm) : std::min(own, doubt.common_mm));
  const std::size_t m = nodes.at.size();
  bracket_chance out;
  struct table {
    std::vector<double> y, x;  // [row][node]: chance of the row, chance to fail in it
    std::size_t rows;
  };
  std::vector<table> all;
  bool product = true;  // every hole fails by x or by y alone: rows that fail everywhere, and one other
  for (const auto& h : task.holes) {
    const double px = x + h.x_mm, py = y + h.y_mm;
    const auto where = detail::where_it_fails(task, h, px, py, reach);
    table t{{}, {}, where.rows.size()};
    std::size_t live = 0;
    for (const auto& r : where.rows) {
      live += r.x.size() > 1;
      for (std::size_t i = 0; i < m; ++i) {
        double in_row = 0.0, fails = 0.0;
        for (const auto& v : r.y) in_row += detail::normal_area(v.low, v.high, py + nodes.at[i], own);
        if (r.x.size() == 1) fails = 1.0;
        else
          for (const auto& v : r.x) fails += detail::normal_area(v.low, v.high, px + nodes.at[i], own);
        t.y.push_back(in_row), t.x.push_back(std::min(1.0, fails));
      }
    }
    product = product && live <= 1;
    double alone = 0.0;
    for (std::size_t r = 0; r < t.rows; ++r) {
      double in_row = 0.0, fails = 0.0;
      for (std::size_t i = 0; i < m; ++i) in_row += nodes.weight[i] * t.y[r * m + i], fails += nodes.weight[i] * t.x[r * m + i];
      alone += in_row * fails;
    }
    out.holes.push_back(1.0 - std::min(1.0, alone));
    all.push_back(std::move(t));
  }
  double failure = 0.0;
  if (product) {  // 1 - E[Π good in x] E[Π good in y]
    double bad_x = 0.0, bad_y = 0.0;
    for (std::size_t i = 0; i < m; ++i) {
      double log_x = 0.0, log_y = 0.0;
      for (const auto& t : all) {
        double row_fails = 0.0, fails = 1.0;
        for (std::size_t r = 0; r < t.rows; ++r)
          if (t.x[r * m + i] >= 1.0 && t.rows > 1) row_fails += t.y[r * m + i];
          else fails = t.x[r * m + i];
        log_x += std::log1p(-std::min(1.0, fails)), log_y += std::log1p(-std::min(1.0, row_fails));
      }
      bad_x -= nodes.weight[i] * std::expm1(log_x), bad_y -= nodes.weight[i] * std::expm1(log_y);
    }
    failure = bad_x + bad_y - bad_x * bad_y;
  } else {
    for (std::size_t i = 0; i < m; ++i)
      for (std::size_t j = 0; j < m; ++j) {
        double log_good = 0.0;
        for (const auto& t : all) {
          double fails = 0.0;
          for (std::size_t r = 0; r < t.rows; ++r) fails += t.y[r * m + j] * t.x[r * m + i];
          log_good += std::log1p(-std::min(1.0, fails));
        }
        failure -= nodes.weight[i] * nodes.weight[j] * std::expm1(log_good);
      }
  }
  out.failure = std::clamp(failure, 0.0, 1.0);
  out.probability = 1.0 - out.failure;
  return out;
}

struct likeliest_place {
  bracket_result worst_case{};             ///< the place by worst cases
  bracket_chance at_worst_case{};          ///< what it is worth by chance
  double x_mm = no_number, y_mm = no_number;
  bracket_chance at_likeliest{};
};
/// The place with the greatest chance, beside the best one by worst cases: the good candidates of that are polished in the window, outside
/// the keep-outs (which are kept by the worst case as well).
inline likeliest_place most_probable_place(const bracket_task& task, const bracket_doubt& doubt) {
  detail::demand_doubt(doubt);
  likeliest_place out;
  std::vector<std::pair<double, double>> starts;
  out.worst_case = place_brackets(task, &starts);
  if (!out.worst_case.fits) return out;
  const auto& b = out.worst_case;
  const double reserve = 0.5 * task.hole_diameter_mm + task.tolerance_mm + task.wander_mm;
  const auto permitted = [&](double x, double y) {
    if (!(x >= b.left_mm && x <= b.right_mm && y >= b.bottom_mm && y <= b.top_mm)) return false;
    for (const auto& h : task.holes)
      for (const auto& k : task.keep_outs)
        if (x + h.x_mm > k.left_mm - reserve && x + h.x_mm < k.right_mm + reserve && y + h.y_mm > k.bottom_mm - reserve && y + h.y_mm < k.top_mm + reserve) return false;
    return true;
  };
  // without a common shift each evaluation is cheap: the search takes it as each hole's own, then the true one
  const bracket_doubt quick{std::hypot(doubt.wander_mm, 0.5 * doubt.common_mm), doubt.centres_mm, 0.0};
  struct spot {
    double failure, x, y;
  };
  std::vector<spot> spots;
  std::sort(starts.begin() + 1, starts.end());
  starts.erase(std::unique(starts.begin() + 1, starts.end()), starts.end());
  for (const auto& [x, y] : starts) spots.push_back({bracket_probability(task, quick, x, y).failure, x, y});
  const auto likelier = [](const spot& p, const spot& q) { return p.failure < q.failure; };
  if (std::min_element(spots.begin(), spots.end(), likelier)->failure > 0.5)  // hardly anywhere: what is best by worst cases says little
    for (int i = 0; i < 24; ++i)
      for (int j = 0; j < 24; ++j) {
        const double x = b.left_mm + (b.right_mm - b.left_mm) * (i + 0.5) / 24.0, y = b.bottom_mm + (b.top_mm - b.bottom_mm) * (j + 0.5) / 24.0;
        if (permitted(x, y)) spots.push_back({bracket_probability(task, quick, x, y).failure, x, y});
      }
  std::stable_sort(spots.begin() + 1, spots.end(), likelier);
  const std::size_t most = doubt.common_mm > 0.0 ? 4 : 8;
  if (spots.size() > most) spots.resize(most);
  const double own = std::hypot(doubt.wander_mm, doubt.centres_mm);
  for (auto& s : spots) {
    const auto climb = [&](const bracket_doubt& by, bool coarse, double from, double to) {
      s.failure = bracket_probability(task, by, s.x, s.y, coarse).failure;
      for (double step = from; step > to;) {
        spot best = s;
        for (int k = 0; k < 8; ++k) {
          constexpr int dx[] = {1, -1, 0, 0, 1, 1, -1, -1}, dy[] = {0, 0, 1, -1, 1, -1, 1, -1};
          const double x = std::clamp(s.x + dx[k] * step, b.left_mm, b.right_mm), y = std::clamp(s.y + dy[k] * step, b.bottom_mm, b.top_mm);
          if (!permitted(x, y)) continue;
          const double f = bracket_probability(task, by, x, y, coarse).failure;
          if (f < best.failure) best = {f, x, y};
        }
        if (best.failure < s.failure) s = best;
        else step *= 0.5;
      }
    };
    climb(quick, false, std::max(own, 1.0), 1e-3);
    if (doubt.common_mm > 0.0) climb(doubt, true, 0.25 * std::max(own, 0.5), 0.02);
  }
  out.at_worst_case = bracket_probability(task, doubt, b.x_mm, b.y_mm);
  out.x_mm = b.x_mm, out.y_mm = b.y_mm, out.at_likeliest = out.at_worst_case;
  for (const auto& s : spots) {
    const auto c = bracket_probability(task, doubt, s.x, s.y);
    if (c.failure < out.at_likeliest.failure) out.x_mm = s.x, out.y_mm = s.y, out.at_likeliest = c;
  }
  return out;
}

}  // namespace setting_out
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Fans: a curve from points, and where it meets the system. Speed, density, several fans; every intersection with its stability; doubt.
// Subject: air. Flows in l/s, pressures in Pa. Solving is an iteration, so this is no formula.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <span>
#include <string>
#include <vector>
#include "../measured.hpp"
#include "duct_run.hpp"
#include "fan_laws.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

/// A point of a fan's curve (or of its power).
struct fan_point {
  double flow_l_per_s;
  double value;  ///< Pa, or W
};

/// Monotone cubic interpolation: between two points never above the higher or below the lower of them (Fritsch and Butland's slopes: the
/// weighted harmonic mean of the neighbours, 0 at a peak). Slopes are continuous; nothing is said beyond the ends.
class monotone_curve {
 public:
  monotone_curve() = default;
  /// Points by rising flow. `who` begins every message.
  explicit monotone_curve(std::vector<fan_point> points, const std::string& who = "fan: ") : points_(std::move(points)) {
    const std::size_t n = points_.size();
    if (n < 2 || n > 1000) throw range_error(who + "2 to 1000 points of the curve");
    for (std::size_t i = 0; i < n; ++i) {
      const std::string at = who + "points[" + std::to_string(i) + "]: ";
      if (!(points_[i].flow_l_per_s >= 0.0 && points_[i].flow_l_per_s <= 1e6)) throw range_error(at + "a flow from 0 to 1e6 l/s, not " + quantity_text(points_[i].flow_l_per_s, "l/s"));
      if (!(points_[i].value >= 0.0 && points_[i].value <= 1e6)) throw range_error(at + "a value from 0 to 1e6, not " + number_text(points_[i].value));
      if (i > 0 && !(points_[i].flow_l_per_s > points_[i - 1].flow_l_per_s)) throw range_error(at + "flows must rise from point to point");
    }
    slopes_.resize(n);
    const auto h = [&](std::size_t i) { return points_[i + 1].flow_l_per_s - points_[i].flow_l_per_s; };
    const auto d = [&](std::size_t i) { return (points_[i + 1].value - points_[i].value) / h(i); };
    if (n == 2) {
      slopes_[0] = slopes_[1] = d(0);
    } else {
      for (std::size_t i = 1; i + 1 < n; ++i) {
        const double before = d(i - 1), after = d(i);
        if (before * after > 0.0) {
          const double w1 = 2.0 * h(i) + h(i - 1), w2 = h(i) + 2.0 * h(i - 1);
          slopes_[i] = (w1 + w2) / (w1 / before + w2 / after);
        }
      }
      const auto end = [](double h0, double h1, double d0, double d1) {  // three points, kept to the shape
        const double s = ((2.0 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
        if (s * d0 <= 0.0) return 0.0;
        if (d0 * d1 < 0.0 && std::fabs(s) > 3.0 * std::fabs(d0)) return 3.0 * d0;
        return s;
      };
      slopes_[0] = end(h(0), h(1), d(0), d(1));
      slopes_[n - 1] = end(h(n - 2), h(n - 3), d(n - 2), d(n - 3));
    }
  }
  const std::vector<fan_point>& points() const { return points_; }
  const std::vector<double>& slopes() const { return slopes_; }
  bool empty() const { return points_.empty(); }
  double first_flow() const { return points_.front().flow_l_per_s; }
  double last_flow() const { return points_.back().flow_l_per_s; }
  struct both {
    double value, slope;
  };
  /// In the piece between the points i and i + 1.
  both in_piece(std::size_t i, double flow) const {
    const double h = points_[i + 1].flow_l_per_s - points_[i].flow_l_per_s, t = (flow - points_[i].flow_l_per_s) / h;
    const double a = points_[i].value, b = points_[i + 1].value, da = h * slopes_[i], db = h * slopes_[i + 1];
    const double c2 = 3.0 * (b - a) - 2.0 * da - db, c3 = 2.0 * (a - b) + da + db;
    return {a + t * (da + t * (c2 + t * c3)), (da + t * (2.0 * c2 + 3.0 * t * c3)) / h};
  }
  /// Beyond an end: NaN.
  both at(double flow) const {
    if (!(flow >= first_flow() && flow <= last_flow())) return {no_number, no_number};
    return in_piece(piece(flow), flow);
  }
  std::size_t piece(double flow) const {
    std::size_t low = 0, high = points_.size() - 1;
    while (high - low > 1) {
      const std::size_t middle = (low + high) / 2;
      if (points_[middle].flow_l_per_s <= flow) low = middle;
      else high = middle;
    }
    return low;
  }
  bool rises_everywhere() const {
    for (std::size_t i = 0; i + 1 < points_.size(); ++i)
      if (!(points_[i + 1].value > points_[i].value)) return false;
    return true;
  }

 private:
  std::vector<fan_point> points_;
  std::vector<double> slopes_;
};

/// How several equal fans stand: in series pressures add at equal flow, in parallel flows add at equal pressure.
enum class fans_stand : unsigned char { series, parallel };
struct fan_setting {
  double speed_ratio = 1.0;                ///< of the speed that the curve was drawn for
  double density_kg_per_m3 = 1.2;          ///< of the air that it moves
  double curve_density_kg_per_m3 = 1.2;    ///< of the air that the curve was drawn for
  int count = 1;
  fans_stand stand = fans_stand::series;
};

/// A fan's pressure (and, where it is known, its electrical power) over the flow.
class fan_curve {
 public:
  fan_curve() = default;
  explicit fan_curve(std::vector<fan_point> pressure, std::vector<fan_point> power_w = {}, const std::string& who = "fan: ") : pressure_(std::move(pressure), who) {
    if (pressure_.rises_everywhere())
      throw range_error(who + "the curve rises with the flow everywhere: no fan does; pressure and flow may be exchanged, or it is the curve of a system");
    if (!power_w.empty()) power_ = monotone_curve(std::move(power_w), who + "power: ");
  }
  const monotone_curve& pressure() const { return pressure_; }
  const monotone_curve& power() const { return power_; }
  /// By the fan laws, as one curve of all the fans together.
  fan_curve with(const fan_setting& s, const std::string& who = "fan: ") const {
    if (!(s.speed_ratio > 0.0 && s.speed_ratio <= 10.0)) throw range_error(who + "speed_ratio must be above 0 and at most 10");
    if (!(s.density_kg_per_m3 >= 0.1 && s.density_kg_per_m3 <= 10.0) || !(s.curve_density_kg_per_m3 >= 0.1 && s.curve_density_kg_per_m3 <= 10.0))
      throw range_error(who + "densities must be from 0.1 to 10 kg/m³");
    if (s.count < 1 || s.count > 100) throw range_error(who + "count must be from 1 to 100");
    const double n = s.speed_ratio, rho = s.density_kg_per_m3 / s.curve_density_kg_per_m3, together = s.count;
    const double flow = n * (s.stand == fans_stand::parallel ? together : 1.0), pressure = rho * n * n * (s.stand == fans_stand::series ? together : 1.0);
    const auto scaled = [&](const monotone_curve& c, double by) {
      std::vector<fan_point> p = c.points();
      for (auto& x : p) x.flow_l_per_s *= flow, x.value *= by;
      return p;
    };
    return fan_curve(scaled(pressure_, pressure), power_.empty() ? std::vector<fan_point>{} : scaled(power_, rho * n * n * n * together), who);
  }

 private:
  monotone_curve pressure_, power_;
};

struct intersection {
  double flow_l_per_s, pressure_pa;
  double fan_slope, system_slope;  ///< Pa/(l/s)
  /// The system's pressure rises faster with the flow than the fan's: a small change dies away. The other kind cannot be held.
  bool stable() const { return system_slope > fan_slope; }
};
/// Every flow at which the fan gives what the system takes, by rising flow. Each piece of the curve is searched in steps of a 16th, and
/// where the difference turns without changing its sign, about its turning point as well.
template <class Curve>
std::vector<intersection> intersections(const Curve& fan, const system_curve& system) {
  std::vector<intersection> found;
  const auto& points = fan.points();
  struct place {
    double flow, rest, slope;
  };
  const auto look = [&](std::size_t i, double q) {
    const auto f = fan.in_piece(i, q);
    const auto s = system.at(q);
    return place{q, f.value - s.pressure, f.slope - s.slope};
  };
  const auto add = [&](std::size_t i, place a, place b) {  // the signs at a and b differ
    const bool rising = b.rest > a.rest;
    double q = 0.5 * (a.flow + b.flow);
    if (a.rest == 0.0) q = a.flow;
    else if (b.rest == 0.0) q = b.flow;
    else
      for (int step = 0; step < 100; ++step) {
        const auto here = look(i, q);
        if (here.rest == 0.0) break;
        ((here.rest > 0.0) == rising ? b : a) = here;
        double next = here.flow - here.rest / here.slope;  // Newton inside the bracket, else its middle
        if (!(next > a.flow && next < b.flow)) next = 0.5 * (a.flow + b.flow);
        if (std::fabs(next - q) <= 2e-16 * q || b.flow - a.flow <= 4e-16 * b.flow) {
          q = next;
          break;
        }
        q = next;
      }
    const auto f = fan.in_piece(i, q);
    const auto s = system.at(q);
    if (!found.empty() && std::fabs(found.back().flow_l_per_s - q) <= 1e-12 * q) return;  // the end of one piece is the start of the next
    found.push_back({q, s.pressure, f.slope, s.slope});
  };
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    constexpr int steps = 16;
    const double from = points[i].flow_l_per_s, width = points[i + 1].flow_l_per_s - from;
    place a = look(i, from);
    if (i == 0 && a.rest == 0.0) add(i, a, a);
    for (int k = 1; k <= steps; ++k) {
      const place b = look(i, k == steps ? points[i + 1].flow_l_per_s : from + width * k / steps);
      if (a.rest != 0.0 && ((a.rest > 0.0) != (b.rest > 0.0) || b.rest == 0.0)) {
        add(i, a, b);
      } else if (a.rest != 0.0 && a.slope * b.slope < 0.0 && (a.slope > 0.0) != (a.rest > 0.0)) {
        place l = a, r = b;  // towards zero and back: the turning point
        for (int step = 0; step < 60; ++step) {
          const place m = look(i, 0.5 * (l.flow + r.flow));
          if (m.rest == 0.0 || (m.rest > 0.0) != (a.rest > 0.0)) {
            add(i, a, m);
            if (m.rest != 0.0) add(i, m, b);
            break;
          }
          (m.slope * a.slope > 0.0 ? l : r) = m;
        }
      }
      a = b;
    }
  }
  return found;
}

// ---- operating point -----------------------------------------------------------------------------------------------------

struct operating_doubt {
  double fan_percent = 10.0;     ///< limits of the fan's pressure against its curve (rectangular)
  double system_percent = 20.0;  ///< limits of what the system takes
  double density_percent = 0.0;  ///< limits of the density: moves fan and duct alike
};
struct operating_result {
  enum class state : unsigned char {
    found,
    no_stable,      ///< intersections, but none that can be held
    beyond_last,    ///< at the last point the fan still gives more than the system takes
    below_first     ///< at the first point it gives less
  };
  state is = state::found;
  std::vector<intersection> all{};
  std::size_t used = 0;  ///< the stable one with the largest flow
  measured flow{};       ///< first order: u(q) = u(Δp)/(system's slope - fan's slope)
  double power_w = no_number, air_power_w = no_number, efficiency = no_number, specific_fan_power = no_number;  ///< W/(l/s)
  bool several_stable = false;
};
inline operating_result operating_point(const fan_curve& fan, const system_curve& system, const operating_doubt& doubt = {}) {
  for (const double x : {doubt.fan_percent, doubt.system_percent, doubt.density_percent})
    if (!(x >= 0.0 && x <= 100.0)) throw range_error("operating_point: limits of doubt must be from 0 to 100 %");
  operating_result r;
  const auto& curve = fan.pressure();
  r.all = intersections(curve, system);
  int stable = 0;
  for (std::size_t i = 0; i < r.all.size(); ++i)
    if (r.all[i].stable()) r.used = i, ++stable;
  r.several_stable = stable > 1;
  if (stable == 0) {
    const double first = curve.points().front().value - system(curve.first_flow());
    r.is = !r.all.empty() ? operating_result::state::no_stable : first < 0.0 ? operating_result::state::below_first : operating_result::state::beyond_last;
    return r;
  }
  const auto& at = r.all[r.used];
  constexpr double root3 = 1.7320508075688772;
  const double steep = at.system_slope - at.fan_slope;
  r.flow = measured(at.flow_l_per_s);
  const double moved = at.pressure_pa - system.fixed_pa;
  if (doubt.fan_percent > 0.0) r.flow.add("fan curve", doubt.fan_percent / 100.0 / root3 * at.pressure_pa / steep);
  if (doubt.system_percent > 0.0) r.flow.add("system", -doubt.system_percent / 100.0 / root3 * moved / steep);
  if (doubt.density_percent > 0.0 && system.fixed_pa != 0.0)  // else it moves both alike
    r.flow.add("density", doubt.density_percent / 100.0 / root3 * system.fixed_pa / steep);
  r.air_power_w = 1e-3 * at.flow_l_per_s * at.pressure_pa;
  if (!fan.power().empty()) {
    r.power_w = fan.power().at(at.flow_l_per_s).value;
    if (r.power_w > 0.0) r.efficiency = r.air_power_w / r.power_w;
    if (at.flow_l_per_s > 0.0) r.specific_fan_power = r.power_w / at.flow_l_per_s;
  }
  return r;
}

// ---- two unlike fans -----------------------------------------------------------------------------------------------------

/// Where two fans with curves of their own meet one system. In series pressures add at equal flow; in parallel flows add at equal pressure.
/// The curves are added as they are, not a curve drawn through sums.
struct fan_of_two {
  double flow_l_per_s = no_number, pressure_pa = no_number, slope = no_number, power_w = no_number;
};
struct two_fans_point {
  double flow_l_per_s = no_number, pressure_pa = no_number, system_slope = no_number;
  std::array<fan_of_two, 2> fans{};
  bool stable = false;
};
struct two_fans_result {
  enum class state : unsigned char {
    found,
    no_stable,
    one_driven,     ///< the stronger fan alone already brings the system beyond what the weaker can do: see `driven`
    beyond_last,    ///< both still give more than the system takes at the end of a curve that is not at zero pressure
    below_first
  };
  state is = state::found;
  std::vector<two_fans_point> all{};
  std::size_t used = 0;   ///< the stable one with the largest flow
  bool several_stable = false;
  measured flow{};
  double power_w = no_number, air_power_w = no_number, specific_fan_power = no_number;
  int weaker = 1;                        ///< in parallel: the one with the lower pressure; in series: the one with the lower last flow
  double weaker_limit = no_number;       ///< in parallel Pa: above it the weaker fan is driven backwards; in series l/s: beyond it, it only resists
  double weaker_starts_l_per_s = no_number;  ///< in parallel: total flow above which the weaker fan helps
  std::array<double, 2> alone_l_per_s{no_number, no_number};  ///< each of them alone on the same run, the other away (and shut, in parallel)
};
namespace detail {
/// Two curves in series: the sum where both are known, piece by piece between all the points of both.
class sum_of_curves {
 public:
  sum_of_curves(const monotone_curve& a, const monotone_curve& b) : a_(a), b_(b) {
    const double from = std::max(a.first_flow(), b.first_flow()), to = std::min(a.last_flow(), b.last_flow());
    if (!(to > from)) throw range_error("operating_point: the curves of the two fans have no flow in common");
    std::vector<double> q{from, to};
    for (const auto* c : {&a, &b})
      for (const auto& p : c->points())
        if (p.flow_l_per_s > from && p.flow_l_per_s < to) q.push_back(p.flow_l_per_s);
    std::sort(q.begin(), q.end());
    q.erase(std::unique(q.begin(), q.end()), q.end());
    for (const double x : q) points_.push_back({x, a.at(x).value + b.at(x).value});
  }
  const std::vector<fan_point>& points() const { return points_; }
  monotone_curve::both in_piece(std::size_t i, double flow) const {
    // the piece of each curve that the middle lies in, so that the slopes at a joint are those of this side
    const double middle = 0.5 * (points_[i].flow_l_per_s + points_[i + 1].flow_l_per_s);
    const auto x = a_.in_piece(a_.piece(middle), flow), y = b_.in_piece(b_.piece(middle), flow);
    return {x.value + y.value, x.slope + y.slope};
  }

 private:
  const monotone_curve &a_, &b_;
  std::vector<fan_point> points_;
};
/// The flow in one piece of a curve at a pressure between its ends (a piece is monotone).
inline double flow_at_pressure(const monotone_curve& c, std::size_t piece, double pressure) {
  double low = c.points()[piece].flow_l_per_s, high = c.points()[piece + 1].flow_l_per_s;
  const bool rising = c.points()[piece + 1].value > c.points()[piece].value;
  double q = low + (high - low) * ((pressure - c.points()[piece].value) / (c.points()[piece + 1].value - c.points()[piece].value));
  for (int step = 0; step < 100; ++step) {
    const auto here = c.in_piece(piece, q);
    if (here.value == pressure) break;
    ((here.value > pressure) == rising ? high : low) = q;
    double next = q - (here.value - pressure) / here.slope;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    if (std::fabs(next - q) <= 2e-16 * q || high - low <= 4e-16 * high) return next;
    q = next;
  }
  return q;
}
inline double highest(const monotone_curve& c) {
  double p = 0.0;
  for (const auto& x : c.points()) p = std::max(p, x.value);
  return p;
}
}  // namespace detail

inline two_fans_result operating_point_of_two(const fan_curve& one, const fan_curve& two, fans_stand stand, const system_curve& system, const operating_doubt& doubt = {}) {
  for (const double x : {doubt.fan_percent, doubt.system_percent, doubt.density_percent})
    if (!(x >= 0.0 && x <= 100.0)) throw range_error("operating_point: limits of doubt must be from 0 to 100 %");
  const std::array<const monotone_curve*, 2> curves{&one.pressure(), &two.pressure()};
  if (curves[0]->points().size() > 200 || curves[1]->points().size() > 200) throw range_error("operating_point: two fans: at most 200 points each");
  two_fans_result r;
  for (std::size_t k = 0; k < 2; ++k)
    for (const auto& x : intersections(*curves[k], system))
      if (x.stable()) r.alone_l_per_s[k] = x.flow_l_per_s;
  bool gives_more_at_end = false;
  if (stand == fans_stand::series) {
    const detail::sum_of_curves both(*curves[0], *curves[1]);
    r.weaker = curves[0]->last_flow() < curves[1]->last_flow() ? 0 : 1;
    r.weaker_limit = curves[static_cast<std::size_t>(r.weaker)]->last_flow();
    for (const auto& x : intersections(both, system)) {
      two_fans_point p{x.flow_l_per_s, x.pressure_pa, x.system_slope, {}, x.stable()};
      for (std::size_t k = 0; k < 2; ++k) {
        const auto at = curves[k]->at(x.flow_l_per_s);
        p.fans[k] = {x.flow_l_per_s, at.value, at.slope, no_number};
      }
      r.all.push_back(p);
    }
    const auto& last = both.points().back();
    gives_more_at_end = last.value > system(last.flow_l_per_s);
  } else {
    const std::array<double, 2> top{detail::highest(*curves[0]), detail::highest(*curves[1])};
    r.weaker = top[0] < top[1] ? 0 : 1;
    r.weaker_limit = top[static_cast<std::size_t>(r.weaker)];
    const auto& strong = *curves[static_cast<std::size_t>(1 - r.weaker)];
    for (std::size_t i = 0; i + 1 < strong.points().size(); ++i) {
      const double a = strong.points()[i].value, b = strong.points()[i + 1].value;
      if (a != b && r.weaker_limit >= std::min(a, b) && r.weaker_limit <= std::max(a, b)) r.weaker_starts_l_per_s = detail::flow_at_pressure(strong, i, r.weaker_limit);
    }
    const auto& A = *curves[0];
    const auto& B = *curves[1];
    const auto ends = [](const monotone_curve& c, std::size_t i) { return std::pair(std::min(c.points()[i].value, c.points()[i + 1].value), std::max(c.points()[i].value, c.points()[i + 1].value)); };
    for (std::size_t i = 0; i + 1 < A.points().size(); ++i)
      for (std::size_t j = 0; j + 1 < B.points().size(); ++j) {
        const auto [low_a, high_a] = ends(A, i);
        const auto [low_b, high_b] = ends(B, j);
        const double low = std::max(low_a, low_b), high = std::min(high_a, high_b);
        if (low_a == high_a || low_b == high_b || !(high >= low)) continue;  // a level piece has no flow of its own at a pressure
        const auto rest = [&](double p) { return system(detail::flow_at_pressure(A, i, p) + detail::flow_at_pressure(B, j, p)) - p; };
        constexpr int steps = 16;
        double p0 = low, r0 = rest(low);
        for (int k = 1; k <= (high > low ? steps : 1); ++k) {
          const double p1 = k == steps ? high : low + (high - low) * k / steps, r1 = high > low ? rest(p1) : r0;
          if (r0 == 0.0 || r1 == 0.0 || (r0 > 0.0) != (r1 > 0.0)) {
            double a = p0, b = p1, p = r0 == 0.0 ? p0 : p1;
            if (r0 != 0.0 && r1 != 0.0)
              for (int step = 0; step < 200 && b - a > 1e-15 * b; ++step) {
                p = 0.5 * (a + b);
                ((rest(p) > 0.0) == (r0 > 0.0) ? a : b) = p;
              }
            two_fans_point x;
            x.fans[0].flow_l_per_s = detail::flow_at_pressure(A, i, p);
            x.fans[1].flow_l_per_s = detail::flow_at_pressure(B, j, p);
            x.fans[0].slope = A.in_piece(i, x.fans[0].flow_l_per_s).slope;
            x.fans[1].slope = B.in_piece(j, x.fans[1].flow_l_per_s).slope;
            x.fans[0].pressure_pa = x.fans[1].pressure_pa = p;
            x.flow_l_per_s = x.fans[0].flow_l_per_s + x.fans[1].flow_l_per_s;
            x.pressure_pa = p;
            x.system_slope = system.at(x.flow_l_per_s).slope;
            // both flows are free: the two by two matrix of slopes must be negative, whatever the inertias
            const double s = x.system_slope, f = x.fans[0].slope, g = x.fans[1].slope;
            x.stable = f < s && g < s && f * g > s * (f + g);
            bool known = false;
            for (const auto& old : r.all)
              known = known || (std::fabs(old.fans[0].flow_l_per_s - x.fans[0].flow_l_per_s) <= 1e-9 * x.flow_l_per_s && std::fabs(old.fans[1].flow_l_per_s - x.fans[1].flow_l_per_s) <= 1e-9 * x.flow_l_per_s);
            if (!known) r.all.push_back(x);
          }
          p0 = p1;
          r0 = r1;
        }
      }
    std::sort(r.all.begin(), r.all.end(), [](const auto& a, const auto& b) { return a.flow_l_per_s < b.flow_l_per_s; });
    gives_more_at_end = system(A.last_flow() + B.last_flow()) < std::min(A.points().back().value, B.points().back().value);
  }
  int stable = 0;
  for (std::size_t i = 0; i < r.all.size(); ++i)
    if (r.all[i].stable) r.used = i, ++stable;
  r.several_stable = stable > 1;
  if (stable == 0) {
    using state = two_fans_result::state;
    const double strong = r.alone_l_per_s[static_cast<std::size_t>(1 - r.weaker)];
    const bool driven = !is_nan(strong) && (stand == fans_stand::series ? strong > r.weaker_limit : system(strong) > r.weaker_limit);
    r.is = !r.all.empty() ? state::no_stable : driven ? state::one_driven : gives_more_at_end ? state::beyond_last : state::below_first;
    return r;
  }
  auto& at = r.all[r.used];
  constexpr double root3 = 1.7320508075688772;
  const double s = at.system_slope, f = at.fans[0].slope, g = at.fans[1].slope;
  // effect on the flow of a change of each fan's pressure and of the system's
  std::array<double, 2> by_fan{};
  double by_system = 0.0;
  if (stand == fans_stand::series) {
    by_fan = {1.0 / (s - f - g), 1.0 / (s - f - g)};
    by_system = -by_fan[0];
  } else {
    const double all = f * g - s * (f + g);
    by_fan = {-g / all, -f / all};
    by_system = (f + g) / all;
  }
  r.flow = measured(at.flow_l_per_s);
  const double moved = at.pressure_pa - system.fixed_pa;
  if (doubt.fan_percent > 0.0) {
    r.flow.add("first fan's curve", doubt.fan_percent / 100.0 / root3 * at.fans[0].pressure_pa * by_fan[0]);
    r.flow.add("second fan's curve", doubt.fan_percent / 100.0 / root3 * at.fans[1].pressure_pa * by_fan[1]);
  }
  if (doubt.system_percent > 0.0) r.flow.add("system", doubt.system_percent / 100.0 / root3 * moved * by_system);
  r.air_power_w = 1e-3 * at.flow_l_per_s * at.pressure_pa;
  if (!one.power().empty() && !two.power().empty()) {
    at.fans[0].power_w = one.power().at(at.fans[0].flow_l_per_s).value;
    at.fans[1].power_w = two.power().at(at.fans[1].flow_l_per_s).value;
    r.power_w = at.fans[0].power_w + at.fans[1].power_w;
    if (at.flow_l_per_s > 0.0) r.specific_fan_power = r.power_w / at.flow_l_per_s;
  }
  return r;
}

// ---- arrays of pairs -----------------------------------------------------------------------------------------------------

/// Round ducts with one straight part and a sum of loss coefficients each, for many pairs of a fan and a duct.
struct duct_columns {
  std::span<const double> diameter_mm, length_m, roughness_mm, loss_coefficient;
};
namespace detail {
/// The friction factors of many, one at a time; the compiled library brings one that takes them by lanes, with the same bits.
struct one_colebrook_at_a_time {
  void operator()(const double* reynolds, const double* relative_roughness, double* factor, std::size_t n) const {
    for (std::size_t i = 0; i < n; ++i) factor[i] = call(friction_factor_colebrook, reynolds[i], relative_roughness[i]);
  }
};
}  // namespace detail

/// The stable operating flow of each pair, the largest where there are several; NaN where there is none on the curve. Nothing is thrown
/// for a row: a row that makes no sense is NaN. `fan` holds the index of the curve of each pair. Each row is what `operating_point` gives,
/// to 1e-12 of it: the piece of the curve is sought from its last point down, then a false position with the weights of Anderson and
/// Björck. The rows go step by step together, so that the friction factors of all that are not done can be had in one call.
template <class Colebrook = detail::one_colebrook_at_a_time>
void operating_flows(std::span<const fan_curve> fans, std::span<const double> fan, const duct_columns& ducts, const air_state& air, std::span<double> flow,
                     const Colebrook& colebrook = {}) {
  constexpr std::size_t block = 512;
  constexpr double at_2300 = 64.0 / 2300.0;
  struct row {
    const monotone_curve* curve;
    std::size_t piece;  ///< the point at its upper end
    double reynolds, straight, local, at_4000, flow, a, b, fa, fb;
  };
  std::array<row, block> rows;
  std::array<double, block> reynolds, relative, factor, rough;
  std::array<std::uint16_t, block> active, asked;
  // what the system takes, for the rows that are still active, at their flow
  std::array<double, block> pressure;
  const auto systems = [&](std::size_t n) {
    std::size_t m = 0;
    for (std::size_t k = 0; k < n; ++k) {
      const row& r = rows[active[k]];
      const double re = r.reynolds * r.flow;
      if (re >= 4000.0) {
        reynolds[m] = re;
        relative[m] = rough[active[k]];
        asked[m++] = static_cast<std::uint16_t>(k);
      } else {
        const double f = re > 2300.0 ? at_2300 + (r.at_4000 - at_2300) / 1700.0 * (re - 2300.0) : 64.0 / std::max(re, 1e-300);
        pressure[k] = (r.straight * f + r.local) * r.flow * r.flow;
      }
    }
    colebrook(reynolds.data(), relative.data(), factor.data(), m);
    for (std::size_t j = 0; j < m; ++j) {
      const row& r = rows[active[asked[j]]];
      pressure[asked[j]] = (r.straight * factor[j] + r.local) * r.flow * r.flow;
    }
  };
  for (std::size_t from = 0; from < flow.size(); from += block) {
    const std::size_t size = std::min(block, flow.size() - from);
    std::size_t n = 0;
    for (std::size_t i = 0; i < size; ++i) {
      const std::size_t at = from + i;
      flow[at] = no_number;
      const double which = fan[at], d = ducts.diameter_mm[at], length = ducts.length_m[at], wall = ducts.roughness_mm[at], k = ducts.loss_coefficient[at];
      reynolds[i] = 4000.0;
      rough[i] = 0.0;
      if (!(which >= 0.0 && which < static_cast<double>(fans.size())) || !(d >= 1.0 && d <= 1e4) || !(length >= 0.0 && length <= 1e4) || !(wall >= 0.0 && wall <= 0.5 * d) ||
          !(k >= 0.0 && k <= 1e6))
        continue;
      const double per_flow = 1e-3 / (0.785398163397448310e-6 * d * d), pv = 0.5 * air.density_kg_per_m3 * per_flow * per_flow;
      row& r = rows[i];
      r.curve = &fans[static_cast<std::size_t>(which)].pressure();
      r.piece = r.curve->points().size() - 1;
      r.reynolds = air.density_kg_per_m3 * per_flow * 1e-3 * d / air.viscosity_pa_s;
      r.straight = pv * length / (1e-3 * d);
      r.local = pv * k;
      r.flow = r.curve->last_flow();
      rough[i] = wall / d;
      active[n++] = static_cast<std::uint16_t>(i);
    }
    colebrook(reynolds.data(), rough.data(), factor.data(), size);
    for (std::size_t i = 0; i < size; ++i) rows[i].at_4000 = factor[i];
    // the piece in which the fan falls below the system
    std::array<std::uint16_t, block> found;
    std::size_t bracketed = 0;
    for (bool first = true; n > 0; first = false) {
      systems(n);
      std::size_t left = 0;
      for (std::size_t k = 0; k < n; ++k) {
        row& r = rows[active[k]];
        const auto& points = r.curve->points();
        const std::size_t point = first ? r.piece : r.piece - 1;
        const double rest = points[point].value - pressure[k];
        if (first) {
          r.b = r.flow;
          r.fb = rest;
          if (rest > 0.0) continue;  // beyond the last point
        } else if (rest > 0.0) {
          r.a = r.flow;
          r.fa = rest;
          found[bracketed++] = active[k];
          continue;
        } else {
          r.b = r.flow;
          r.fb = rest;
          if (--r.piece == 0) continue;  // below the first point
        }
        r.flow = points[r.piece - 1].flow_l_per_s;
        active[left++] = active[k];
      }
      n = left;
    }
    n = bracketed;
    std::copy(found.begin(), found.begin() + static_cast<std::ptrdiff_t>(n), active.begin());
    for (int step = 0; step < 60 && n > 0; ++step) {
      for (std::size_t k = 0; k < n; ++k) {
        row& r = rows[active[k]];
        r.flow = (r.a * r.fb - r.b * r.fa) / (r.fb - r.fa);
      }
      systems(n);
      std::size_t left = 0;
      for (std::size_t k = 0; k < n; ++k) {
        row& r = rows[active[k]];
        const double here = r.curve->in_piece(r.piece - 1, r.flow).value - pressure[k];
        flow[from + active[k]] = r.flow;
        if (here == 0.0) continue;
        if ((here > 0.0) == (r.fb > 0.0)) {
          const double m = 1.0 - here / r.fb;
          r.fa *= m > 0.0 ? m : 0.5;
        } else {
          r.a = r.b;
          r.fa = r.fb;
        }
        const double moved = std::fabs(r.flow - r.b);
        r.b = r.flow;
        r.fb = here;
        if (moved <= 1e-13 * r.flow || std::fabs(r.a - r.b) <= 1e-13 * r.flow) continue;
        active[left++] = active[k];
      }
      n = left;
    }
  }
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

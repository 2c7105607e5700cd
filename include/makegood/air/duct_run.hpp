// SPDX-License-Identifier: MIT
// A run of duct, segment by segment: straight and flexible duct, fittings and terminals, each with its share of the whole and a band.
// Subject: air. The same volume passes every segment, or a stated number of times of it. Pressures are total pressures.
#pragma once
#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <string>
#include <string_view>
#include <vector>
#include "../text.hpp"
#include "ducts.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

/// What flows: 1.2 kg/m³ and 1.8e-5 Pa·s stand for indoor air at 20 °C.
struct air_state {
  double density_kg_per_m3 = 1.2;
  double viscosity_pa_s = 1.8e-5;
};

// ---- cross-sections -----------------------------------------------------------------------------------------------------

struct duct_section {
  enum class shape : unsigned char { round, rectangular, oval };
  shape is = shape::round;
  double width_mm = no_number;   ///< of a round one: its diameter
  double height_mm = no_number;  ///< of a flat oval: the shorter axis

  static duct_section round(double diameter_mm) { return {shape::round, diameter_mm, diameter_mm}; }
  double area_m2() const {
    if (is == shape::rectangular) return width_mm * height_mm * 1e-6;
    return (0.785398163397448310 * height_mm * height_mm + height_mm * (width_mm - height_mm)) * 1e-6;
  }
  double perimeter_m() const {
    if (is == shape::rectangular) return 2e-3 * (width_mm + height_mm);
    return (3.14159265358979324 * height_mm + 2.0 * (width_mm - height_mm)) * 1e-3;
  }
  /// Four times the area over the perimeter; it goes with the true velocity.
  double hydraulic_m() const { return 4.0 * area_m2() / perimeter_m(); }
};

// ---- friction, continuous in the flow -----------------------------------------------------------------------------------

/// Darcy friction factor and its slope by Reynolds number: `friction_factor` in laminar (to 2300) and turbulent flow (from 4000), and a
/// straight line between those two ends in the transition, where nobody knows better: a solver needs a curve without steps.
struct friction_line {
  double relative_roughness = 0.0, at_4000 = 0.0;
  explicit friction_line(double relative_roughness_ = 0.0)
      : relative_roughness(relative_roughness_), at_4000(call(friction_factor_colebrook, 4000.0, relative_roughness_)) {}
  struct both {
    double factor, slope;
  };
  both at(double reynolds) const {
    constexpr double at_2300 = 64.0 / 2300.0;
    if (reynolds <= 2300.0) {
      const double f = 64.0 / std::max(reynolds, 1e-12);
      return {f, -f / std::max(reynolds, 1e-12)};
    }
    if (reynolds < 4000.0) {
      const double slope = (at_4000 - at_2300) / 1700.0;
      return {at_2300 + slope * (reynolds - 2300.0), slope};
    }
    // the slope from the equation itself: x + 2 lg(w + s x) = 0 with x = 1/√f
    constexpr double k = 2.0 / detail::ln_10;
    const double f = call(friction_factor_colebrook, reynolds, relative_roughness), x = 1.0 / std::sqrt(f), s = 2.51 / reynolds;
    const double inside = relative_roughness / 3.7 + s * x;
    return {f, -2.0 * f * k * s / (reynolds * (inside + k * s))};
  }
};

/// The pressure that a run or any system takes against the flow in l/s, with its slope: a fixed part, one with the square of the flow, and
/// straight ducts.
struct system_curve {
  struct pipe {
    double reynolds_per_flow;  ///< Reynolds number of 1 l/s
    double pa_per_factor;      ///< pressure of 1 l/s for a friction factor of 1, Pa/(l/s)²
    friction_line friction;
  };
  double fixed_pa = 0.0;
  double quadratic = 0.0;  ///< Pa/(l/s)²
  std::vector<pipe> pipes{};
  struct both {
    double pressure, slope;  ///< Pa and Pa/(l/s)
  };
  /// Odd in the flow but for the fixed part.
  both at(double flow) const {
    const double q = std::fabs(flow);
    double p = quadratic * q * q, slope = 2.0 * quadratic * q;
    for (const auto& one : pipes) {
      const double reynolds = one.reynolds_per_flow * q;
      if (reynolds <= 2300.0) {  // 64/Re · q²: straight, also at 0
        const double linear = one.pa_per_factor * 64.0 / one.reynolds_per_flow;
        p += linear * q;
        slope += linear;
        continue;
      }
      const auto f = one.friction.at(reynolds);
      p += one.pa_per_factor * f.factor * q * q;
      slope += one.pa_per_factor * (2.0 * f.factor * q + f.slope * one.reynolds_per_flow * q * q);
    }
    return {fixed_pa + (flow < 0.0 ? -p : p), slope};
  }
  double operator()(double flow) const { return at(flow).pressure; }
  /// `share`: how many times the flow of the run passes here.
  void add_duct(const duct_section& section, double length_m, double roughness_mm, const air_state& air, double times = 1.0, double share = 1.0) {
    const double area = section.area_m2(), diameter = section.hydraulic_m(), per_flow = 1e-3 * share / area;
    pipes.push_back({air.density_kg_per_m3 * per_flow * diameter / air.viscosity_pa_s,
                     times * length_m / diameter * 0.5 * air.density_kg_per_m3 * per_flow * per_flow, friction_line(roughness_mm * 1e-3 / diameter)});
  }
  void add_fitting(const duct_section& section, double loss_coefficient, const air_state& air, double share = 1.0) {
    const double per_flow = 1e-3 * share / section.area_m2();
    quadratic += loss_coefficient * 0.5 * air.density_kg_per_m3 * per_flow * per_flow;
  }
};

// ---- tables: roughness and loss coefficients ----------------------------------------------------------------------------

/// Roughness of a kind of wall: what is reckoned with, and the ends of what was measured.
struct duct_wall {
  std::string_view key, text;
  double roughness_mm, low_mm, high_mm;
  source from;
};
inline constexpr source ashrae_roughness{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Table 1", "handbook"};
inline constexpr duct_wall duct_walls[] = {
    {"smooth", "smooth plastic", 0.0, 0.0, 0.046, ashrae_roughness},
    {"pvc", "plastic pipe", 0.03, 0.009144, 0.04572, ashrae_roughness},
    {"galvanised", "galvanised steel, round, with joints", 0.09, 0.048768, 0.12192, ashrae_roughness},
    {"galvanised_rectangular", "galvanised steel, rectangular", 0.15, 0.082296, 0.15, ashrae_roughness},
    {"flexible", "flexible duct with a wire, fully stretched", 0.9, 0.09144, 0.9144, ashrae_roughness},
    {"flexible_metal", "corrugated metal flexible duct, fully stretched", 1.6, 1.2, 2.1, ashrae_roughness},
};
inline const duct_wall* find_wall(std::string_view key) {
  for (const auto& w : duct_walls)
    if (w.key == key) return &w;
  return nullptr;
}

/// A fitting or terminal with a fixed loss coefficient, the section that it refers to, and the ends of its band.
struct fitting_row {
  std::string_view key, text, reference;
  double coefficient, low, high;
  bool bend;
  source from;
};
inline constexpr std::string_view of_duct = "velocity in the duct that it joins", of_small = "velocity in the smaller section", of_all = "velocity of all the air together";
inline constexpr fitting_row fitting_rows[] = {
    {"entry_sharp", "flush, sharp entry", of_duct, 0.5, 0.5, 0.57, false, {"Idelchik, Handbook of Hydraulic Resistance", "sharp-edged flush entry", "handbook"}},
    {"entry_rounded", "well rounded entry, r/D 0.2 or more", of_duct, 0.03, 0.02, 0.05, false, {"Idelchik, Handbook of Hydraulic Resistance", "rounded entry", "handbook"}},
    {"entry_projecting", "entry that projects into the room", of_duct, 0.78, 0.78, 0.92, false, {"Crane TP-410", "inward projecting", "handbook"}},
    {"exit", "open end: all velocity pressure is lost", of_duct, 1.0, 1.0, 1.05, false, {"White, Fluid Mechanics", "chapter 6, exit losses", "handbook"}},
    {"bend_stamped", "90° bend, stamped, r/D 1.5", of_duct, 0.11, no_number, no_number, true, {"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Table 14: 0.11 at 200 mm; smaller ones lose more, from memory", "handbook"}},
    {"bend_3_gore", "90° bend of three gores, r/D 1.5", of_duct, 0.34, 0.27, 0.41, true, {"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Table 20, 125 mm", "handbook"}},
    {"bend_7_gore", "90° bend of seven gores, r/D 2.5", of_duct, 0.11, 0.09, 0.14, true, {"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Table 20", "handbook"}},
    {"mitre_30", "mitre bend, 30°", of_duct, 0.153, 0.12, 0.19, true, {"Rennels and Hudson, Pipe Flow", "mitre bend", "handbook"}},
    {"mitre_45", "mitre bend, 45°", of_duct, 0.304, 0.28, 0.37, true, {"Rennels and Hudson, Pipe Flow", "mitre bend", "handbook"}},
    {"mitre_90", "mitre bend, 90°", of_duct, 1.2, 1.0, 1.45, true, {"Rennels and Hudson, Pipe Flow", "mitre bend", "handbook"}},
    {"cap_close", "conical weather cap, close", of_duct, 1.0, 0.8, 1.2, false, {"Cory, Fans and Ventilation, 2005", "fig. 3.70", "handbook"}},
    {"cap_open", "conical weather cap, well clear", of_duct, 0.2, 0.15, 0.25, false, {"Cory, Fans and Ventilation, 2005", "fig. 3.70", "handbook"}},
    {"louvre_0", "louvre opening, blades at 0°", "velocity in the whole opening", 1.5625, 1.4, 1.75, false, {"Iqbal et al. 2023, E3S Web of Conferences 396, 02030", "discharge coefficient 0.80", "paper"}},
    {"louvre_15", "louvre opening, blades at 15°", "velocity in the whole opening", 2.601456815816858, 2.3, 3.0, false, {"Iqbal et al. 2023, E3S Web of Conferences 396, 02030", "discharge coefficient 0.62", "paper"}},
    {"louvre_30", "louvre opening, blades at 30°", "velocity in the whole opening", 5.948839976204640, 5.2, 6.9, false, {"Iqbal et al. 2023, E3S Web of Conferences 396, 02030", "discharge coefficient 0.41", "paper"}},
};
inline const fitting_row* find_fitting(std::string_view key) {
  for (const auto& f : fitting_rows)
    if (f.key == key) return &f;
  return nullptr;
}
/// Small stamped bends lose more: 0.21 at 100 mm and 0.14 at 150 mm (from memory), 0.11 at 200 mm and above (read).
inline double stamped_bend_coefficient(double diameter_mm) {
  if (diameter_mm >= 200.0) return 0.11;
  if (diameter_mm >= 150.0) return 0.11 + 0.03 * (200.0 - diameter_mm) / 50.0;
  return 0.14 + 0.07 * (150.0 - std::max(diameter_mm, 80.0)) / 50.0;
}
inline constexpr source blevins{"Blevins, Applied Fluid Dynamics Handbook, 1984", "screens and grilles", "handbook"};
/// Bar screen or square-edged grille of a free area, on the velocity before it.
inline double grille_coefficient(double free_area_ratio) {
  if (!(free_area_ratio > 0.0 && free_area_ratio <= 1.0)) throw range_error("duct_run: free_area_ratio must be above 0 and at most 1");
  return (0.5 * (1.0 - free_area_ratio) + (1.0 - free_area_ratio * free_area_ratio)) / (free_area_ratio * free_area_ratio);
}
namespace detail {
struct table_point {
  double x, y;
};
/// Straight lines between the points of a table; nothing beyond its ends.
inline double between_points(std::span<const table_point> table, double x) {
  for (std::size_t i = 0; i + 1 < table.size(); ++i)
    if (x >= table[i].x && x <= table[i + 1].x) return table[i].y + (table[i + 1].y - table[i].y) * ((x - table[i].x) / (table[i + 1].x - table[i].x));
  return no_number;
}
}  // namespace detail
/// Grille with rounded edges, and square-edged screen or perforated plate: tables over the free area, on the velocity before them.
inline constexpr detail::table_point rounded_grille_points[] = {{0.3, 2.0}, {0.4, 1.0}, {0.5, 0.6}, {0.6, 0.4}, {0.7, 0.2}};
inline constexpr detail::table_point screen_points[] = {{0.1, 250.0}, {0.15, 85.0}, {0.2, 52.0}, {0.25, 30.0}, {0.3, 17.0}, {0.35, 11.0}, {0.4, 7.7},  {0.45, 5.5},
                                                        {0.5, 3.8},   {0.55, 2.8},  {0.6, 2.0},  {0.65, 1.5},  {0.7, 1.1},  {0.75, 0.78}, {0.8, 0.53}, {0.85, 0.35}};
inline double rounded_grille_coefficient(double free_area_ratio) {
  const double k = detail::between_points(rounded_grille_points, free_area_ratio);
  if (is_nan(k)) throw range_error("duct_run: of a grille with rounded edges free_area_ratio must be from 0.3 to 0.7");
  return k;
}
inline double screen_coefficient(double free_area_ratio) {
  const double k = detail::between_points(screen_points, free_area_ratio);
  if (is_nan(k)) throw range_error("duct_run: of a screen free_area_ratio must be from 0.1 to 0.85");
  return k;
}
/// A bend straight before a centrifugal fan: what it costs on top of its own loss, by its radius and by the straight duct between. Read:
/// all but 0.5 at 5 and 1.0 at 2 diameters, 1.5 at 0 and at 10, 2.0 at 5 (recalled).
inline constexpr double fan_inlet_radii[] = {0.5, 1.0, 1.5, 2.0}, fan_inlet_lengths[] = {0.0, 2.0, 5.0, 10.0};
inline constexpr double fan_inlet_losses[4][4] = {{1.8, 1.0, 0.53, 0.53}, {1.2, 0.67, 0.33, 0.33}, {1.1, 0.6, 0.33, 0.33}, {1.0, 0.53, 0.33, 0.33}};
inline constexpr source fan_inlet_source{"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Table 7, bend at the inlet of a centrifugal fan (ED7-2)", "handbook"};
inline double fan_inlet_bend_coefficient(double radius_ratio, double straight_diameters) {
  if (!(radius_ratio >= 0.5 && radius_ratio <= 2.0)) throw range_error("duct_run: of a bend before a fan radius_ratio must be from 0.5 to 2");
  if (!(straight_diameters >= 0.0 && straight_diameters <= 10.0)) throw range_error("duct_run: of a bend before a fan straight_diameters must be from 0 to 10");
  detail::table_point across[4];
  for (std::size_t i = 0; i < 4; ++i) {
    detail::table_point along[4];
    for (std::size_t j = 0; j < 4; ++j) along[j] = {fan_inlet_lengths[j], fan_inlet_losses[i][j]};
    across[i] = {fan_inlet_radii[i], detail::between_points(along, straight_diameters)};
  }
  return detail::between_points(across, radius_ratio);
}
/// Borda and Carnot: sudden widening, on the velocity in the smaller section.
inline double widening_coefficient(double small_m2, double large_m2) { return (1.0 - small_m2 / large_m2) * (1.0 - small_m2 / large_m2); }
/// Most that a duct of a tightness class may leak: k p^0.65 in l/s for each square metre of its surface.
struct leakage_row {
  std::string_view key;
  double k;
};
inline constexpr leakage_row leakage_rows[] = {{"A", 0.027}, {"B", 0.009}, {"C", 0.003}, {"D", 0.001}, {"E", 0.0003}};
inline constexpr source leakage_source{"Decree of the Ministry of the Environment (Finland) 1009/2017", "section 19", "regulation"};

// ---- a run --------------------------------------------------------------------------------------------------------------

struct duct_segment {
  enum class kind : unsigned char { straight, flexible, fitting };
  std::string name{};
  kind is = kind::straight;
  duct_section section{};
  double length_m = 0.0;             ///< as installed
  double roughness_mm = 0.09, roughness_low_mm = no_number, roughness_high_mm = no_number;
  double compression_percent = 0.0;  ///< of a flexible duct: 100 (1 - installed length / fully stretched length)
  double loss_coefficient = 0.0, loss_low = no_number, loss_high = no_number;
  bool bend = false;
  double flow_ratio = 1.0;           ///< how many times the run's flow passes here: other grilles join before, or leave after
  std::string_view reference = of_duct;
  source from{};
};
struct segment_loss {
  double pressure_pa = 0.0, low_pa = 0.0, high_pa = 0.0;
  double share = 0.0;  ///< of the run
  double velocity_m_per_s = 0.0, velocity_pressure_pa = 0.0;
  double reynolds = no_number, factor = no_number, multiplier = 1.0;
  bool transition = false;     ///< Re 2300 to 4000
  bool extrapolated = false;   ///< flexible duct outside the tested sizes or shortening
};
struct duct_run_result {
  double flow_l_per_s = 0.0;
  double pressure_pa = 0.0, low_pa = 0.0, high_pa = 0.0;
  std::vector<segment_loss> segments{};
  std::size_t worst = 0;
  double surface_m2 = 0.0;
  double leakage_l_per_s = no_number;  ///< most that its tightness class allows
  std::vector<std::string> cautions{};
};

inline constexpr double band_of_rigid = 0.10;        ///< relative half width, on top of the roughness: joints, out of round (judgement)
inline constexpr double band_of_fittings = 0.20;     ///< where no band of its own is given
inline constexpr double band_of_flexible = 1.0 / 3.0;  ///< single ducts about the fit inside the tested range
inline constexpr double factor_untested = 2.0;       ///< outside it: from half to twice (judgement)
inline constexpr double close_bends_diameters = 10.0;

namespace detail {
inline void must(bool good, const std::string& who, const std::string& text) {
  if (!good) throw range_error(who + text);
}
inline bool within(double x, double low, double high) { return x >= low && x <= high; }
inline void check_section(const duct_section& s, const std::string& who) {
  must(within(s.width_mm, 1.0, 1e4), who, s.is == duct_section::shape::round ? "diameter_mm must be from 1 to 10000 mm" : "width_mm must be from 1 to 10000 mm");
  must(within(s.height_mm, 1.0, 1e4), who, "height_mm must be from 1 to 10000 mm");
  must(s.is != duct_section::shape::oval || s.width_mm >= s.height_mm, who, "of an oval duct width_mm is the longer axis");
}
inline void check_air(const air_state& a, const std::string& who) {
  must(within(a.density_kg_per_m3, 0.1, 10.0), who, "density_kg_per_m3 must be from 0.1 to 10 kg/m³");
  must(within(a.viscosity_pa_s, 1e-6, 1e-4), who, "viscosity_pa_s must be from 1e-6 to 1e-4 Pa·s");
}
inline void check_segment(const duct_segment& s, const std::string& who) {
  check_section(s.section, who);
  must(within(s.flow_ratio, 0.01, 100.0), who, "flow_ratio must be from 0.01 to 100: how many times the run's flow passes here");
  if (s.is != duct_segment::kind::fitting) {
    must(within(s.length_m, 0.0, 1e4), who, "length_m = " + quantity_text(s.length_m, "m") + ": from 0 to 10000 m" + (s.length_m < 0.0 ? ", a length is never negative" : ""));
    must(within(s.roughness_mm, 0.0, 0.5 * s.section.height_mm), who, "roughness_mm must be from 0 to half the duct");
  }
  if (s.is == duct_segment::kind::flexible)
    must(within(s.compression_percent, 0.0, 90.0), who, "compression " + quantity_text(s.compression_percent, "%", 3) + ": from 0 to 90 %; the stretched length is never below the installed one");
  if (s.is == duct_segment::kind::fitting) must(within(s.loss_coefficient, -100.0, 1e6), who, "loss_coefficient must be from -100 to 1e6");
}
}  // namespace detail

/// How many times the loss of the stretched duct a flexible one has; and whether that was ever tested.
struct flexible_factor {
  double factor;
  bool extrapolated;
};
inline flexible_factor flexible_factor_of(const duct_segment& s) {
  const double d = s.section.width_mm;
  return {call(flexible_duct_multiplier, s.compression_percent, d), d < 150.0 || d > 250.0 || s.compression_percent > 30.0};
}

/// The run as a curve over the flow; `scale` picks the reckoned values (0), the low end (-1) or the high end (+1) of the band.
inline system_curve curve_of_run(std::span<const duct_segment> run, const air_state& air = {}, int scale = 0) {
  system_curve c;
  for (const auto& s : run) {
    if (s.is == duct_segment::kind::fitting) {
      double k = s.loss_coefficient;
      if (scale < 0) k = is_nan(s.loss_low) ? k - band_of_fittings * std::fabs(k) : s.loss_low;
      if (scale > 0) k = is_nan(s.loss_high) ? k + band_of_fittings * std::fabs(k) : s.loss_high;
      c.add_fitting(s.section, k, air, s.flow_ratio);
      continue;
    }
    double times = 1.0, rough = s.roughness_mm;
    if (scale < 0 && !is_nan(s.roughness_low_mm)) rough = s.roughness_low_mm;
    if (scale > 0 && !is_nan(s.roughness_high_mm)) rough = s.roughness_high_mm;
    if (s.is == duct_segment::kind::flexible) {
      const auto f = flexible_factor_of(s);
      const double wide = f.extrapolated ? (scale > 0 ? factor_untested : 1.0 / factor_untested) : 1.0 + scale * band_of_flexible;
      times = f.factor * (scale == 0 ? 1.0 : wide);
      if (scale < 0) times = std::max(times, 1.0);  // never below the stretched duct
      rough = s.roughness_mm;                       // the factor was fitted to that of the category
    } else {
      times = 1.0 + scale * band_of_rigid;
    }
    c.add_duct(s.section, s.length_m, rough, air, times, s.flow_ratio);
  }
  return c;
}

inline duct_run_result duct_run(std::span<const duct_segment> run, double flow_l_per_s, const air_state& air = {}, std::string_view leakage_class = {},
                                double leakage_pressure_pa = no_number) {
  const std::string who = "duct_run: ";
  detail::must(!run.empty() && run.size() <= 1000, who, "1 to 1000 segments");
  detail::must(detail::within(flow_l_per_s, 0.0, 1e6), who, "flow_l_per_s must be from 0 to 1e6 l/s");
  detail::check_air(air, who);
  duct_run_result r;
  r.flow_l_per_s = flow_l_per_s;
  for (const auto& s : run) {
    const std::string at = who + "\"" + s.name + "\": ";
    detail::check_segment(s, at);
    segment_loss one;
    const double area = s.section.area_m2();
    one.velocity_m_per_s = flow_l_per_s * s.flow_ratio * 1e-3 / area;
    one.velocity_pressure_pa = 0.5 * air.density_kg_per_m3 * one.velocity_m_per_s * one.velocity_m_per_s;
    const std::span<const duct_segment> alone(&s, 1);
    one.pressure_pa = curve_of_run(alone, air)(flow_l_per_s);
    one.low_pa = curve_of_run(alone, air, -1)(flow_l_per_s);
    one.high_pa = curve_of_run(alone, air, 1)(flow_l_per_s);
    if (s.is != duct_segment::kind::fitting) {
      const double diameter = s.section.hydraulic_m();
      const friction_line friction(s.roughness_mm * 1e-3 / diameter);
      one.reynolds = air.density_kg_per_m3 * one.velocity_m_per_s * diameter / air.viscosity_pa_s;
      if (one.reynolds > 0.0) one.factor = friction.at(one.reynolds).factor;
      one.transition = one.reynolds > 2300.0 && one.reynolds < 4000.0;
      if (one.transition) {  // laminar at the low end, turbulent at the high one
        one.low_pa *= 64.0 / one.reynolds / one.factor;
        one.high_pa *= std::max(1.0, call(friction_factor_colebrook, one.reynolds, friction.relative_roughness) / one.factor);
        r.cautions.push_back("\"" + s.name + "\": flow between laminar and turbulent (Re " + number_text(std::round(one.reynolds)) + "): its loss is uncertain.");
      }
      if (s.section.is != duct_section::shape::round && one.reynolds > 0.0 && one.reynolds < 2300.0)
        r.cautions.push_back("\"" + s.name + "\": laminar flow in a duct that is not round: a square one has 57/Re, a flat one up to 96/Re, not 64/Re.");
      if (s.is == duct_segment::kind::flexible) {
        const auto f = flexible_factor_of(s);
        one.multiplier = f.factor;
        one.extrapolated = f.extrapolated;
        if (f.extrapolated)
          r.cautions.push_back("\"" + s.name + "\": flexible duct was tested from 150 to 250 mm and to 30 % shortening; here the factor of " +
                               number_text(f.factor, 3) + " is extrapolated, from half to twice of it is possible. Measure the flow.");
      }
      r.surface_m2 += s.section.perimeter_m() * s.length_m;
    }
    r.pressure_pa += one.pressure_pa;
    r.low_pa += one.low_pa;
    r.high_pa += one.high_pa;
    r.segments.push_back(one);
  }
  for (std::size_t i = 0; i < run.size(); ++i) {
    if (r.pressure_pa != 0.0) r.segments[i].share = r.segments[i].pressure_pa / r.pressure_pa;
    if (r.segments[i].pressure_pa > r.segments[r.worst].pressure_pa) r.worst = i;
  }
  // bends that stand close to each other
  for (std::size_t i = 0; i < run.size(); ++i) {
    if (!run[i].bend) continue;
    double between = 0.0;
    for (std::size_t j = i + 1; j < run.size(); ++j) {
      if (run[j].bend) {
        if (between < close_bends_diameters * run[i].section.hydraulic_m())
          r.cautions.push_back("\"" + run[i].name + "\" and \"" + run[j].name + "\" stand closer than 10 diameters: bends so close disturb each other, and their loss together may be " +
                               "less or more than the sum.");
        break;
      }
      between += run[j].length_m;
    }
  }
  if (!leakage_class.empty()) {
    const leakage_row* row = nullptr;
    for (const auto& l : leakage_rows)
      if (l.key == leakage_class) row = &l;
    detail::must(row, who, "leakage_class = \"" + std::string(leakage_class) + "\" is not one of \"A\", \"B\", \"C\", \"D\", \"E\"");
    if (is_nan(leakage_pressure_pa)) leakage_pressure_pa = r.pressure_pa;
    detail::must(detail::within(leakage_pressure_pa, 0.0, 1e5), who, "leakage_pressure_pa must be from 0 to 100000 Pa");
    r.leakage_l_per_s = row->k * std::pow(leakage_pressure_pa, 0.65) * r.surface_m2;
  }
  return r;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

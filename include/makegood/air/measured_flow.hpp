// SPDX-License-Identifier: MIT
// A flow as it is measured at commissioning: hood, anemometer at a grille, traverse of a duct; corrected, with the doubt of it.
// Subject: air. The roots of pressures are averaged, not the pressures. Solving for the hood is an iteration, so this is no formula.
#pragma once
#include <cmath>
#include <string>
#include <vector>
#include "../reading.hpp"
#include "fans.hpp"
#include "measurement.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

struct flow_measurement {
  enum class way : unsigned char { hood, powered_hood, anemometer, traverse };
  way is = way::hood;
  std::vector<double> readings{};            ///< l/s of a hood, else m/s
  bool pressures = false;                    ///< of a traverse: velocity pressures in Pa instead
  double face_area_mm2 = no_number;          ///< of the grille, or of the duct's section
  double correction_factor = no_number;      ///< flow over what is read; left out: 1
  double correction_percent = no_number;     ///< limits of it (rectangular)
  double instrument_percent = no_number;     ///< limits of error, of the reading; left out: the worst case of its class
  double instrument_limit = 0.0;             ///< limits of error in the unit of the readings, on top
  double repeatability_percent = no_number;  ///< standard deviation of the mean; left out: from the readings, else assumed
  double density_kg_per_m3 = 1.2;
  const monotone_curve* fan = nullptr;       ///< pressure against flow as it stands there: for an unpowered hood
  double hood_pressure_pa = no_number;       ///< what the hood takes at the flow that was read
  double fan_percent = 10.0, hood_pressure_percent = 20.0;  ///< limits of both (rectangular)
};
struct measured_flow_result {
  measured flow{};                        ///< l/s, with its sources
  double read_l_per_s = no_number;        ///< mean of the readings, as a flow, before every correction
  double mean_velocity_m_per_s = no_number;
  double relative_percent = no_number;    ///< standard uncertainty
  double hood_factor = 1.0;               ///< flow without the hood over the flow with it
  bool reads_low = false;                 ///< an unpowered hood that was not corrected for
  std::vector<std::string> assumed{}, cautions{};
};

inline constexpr double assumed_repeatability_percent = 2.0;    ///< of one reading with nothing said about it (judgement)
inline constexpr double assumed_grille_factor_percent = 20.0;   ///< limits of a factor of 1 at a grille that nobody calibrated (judgement)
inline constexpr double assumed_factor_percent = 5.0;           ///< limits of a factor that was given without any (judgement)

namespace detail {
/// The flow without the hood: the run as it must be, so that fan, run and hood meet at the flow that was read; then without the hood.
inline double without_hood(const monotone_curve& fan, double read, double hood_pa, double fan_scale) {
  const double there = fan_scale * fan.at(read).value;
  if (is_nan(there)) return no_number;
  system_curve run;
  run.quadratic = (there - hood_pa) / (read * read) / fan_scale;  // the scale taken off both sides
  if (!(run.quadratic >= 0.0)) return no_number;
  double flow = no_number;
  for (const auto& x : intersections(fan, run))
    if (x.stable()) flow = x.flow_l_per_s;
  return flow;
}
}  // namespace detail

inline measured_flow_result measured_flow(const flow_measurement& m) {
  const std::string who = "measured_flow: ";
  using way = flow_measurement::way;
  const bool hood = m.is == way::hood || m.is == way::powered_hood;
  const auto check = [&](double x, double low, double high, const char* name) { detail::must(is_nan(x) || detail::within(x, low, high), who, std::string(name) + " must be from " + number_text(low) + " to " + number_text(high)); };
  detail::must(!m.readings.empty() && m.readings.size() <= 10000, who, "1 to 10000 readings");
  for (std::size_t i = 0; i < m.readings.size(); ++i)
    detail::must(detail::within(m.readings[i], 0.0, 1e6), who,
                 "readings[" + std::to_string(i) + "]: from 0 to 1e6" + (m.readings[i] < 0.0 ? "; below zero: a probe held the wrong way, or air that comes back: read there again" : ""));
  detail::must(!m.pressures || m.is == way::traverse, who, "only a traverse has velocity pressures");
  detail::must(hood || !is_nan(m.face_area_mm2), who, "the area is missing: of the grille's face, or of the duct's section");
  detail::must(!hood || is_nan(m.face_area_mm2), who, "a hood reads the flow itself: leave the area out");
  check(m.face_area_mm2, 1.0, 1e9, "area_mm2");
  check(m.correction_factor, 0.01, 10.0, "correction_factor");
  check(m.correction_percent, 0.0, 100.0, "correction_percent");
  check(m.instrument_percent, 0.0, 100.0, "instrument_percent");
  check(m.instrument_limit, 0.0, 1e6, "instrument_limit");
  check(m.repeatability_percent, 0.0, 100.0, "repeatability_percent");
  check(m.density_kg_per_m3, 0.1, 10.0, "density_kg_per_m3");
  check(m.fan_percent, 0.0, 50.0, "fan_percent");
  check(m.hood_pressure_percent, 0.0, 100.0, "hood_pressure_percent");
  check(m.hood_pressure_pa, 0.0, 1e4, "hood_pressure_pa");
  detail::must((m.fan != nullptr) == !is_nan(m.hood_pressure_pa), who, "the hood is corrected for with the fan's curve and the hood's own pressure, both of them");
  detail::must(!m.fan || m.is == way::hood, who, "only an unpowered hood is corrected for with the fan's curve");
  constexpr double root3 = 1.7320508075688772;
  const std::size_t n = m.readings.size();

  measured_flow_result r;
  double mean = 0.0, squares = 0.0, limit = m.instrument_limit, slowest = 1e300;
  std::vector<double> x = m.readings;
  if (m.pressures)
    for (double& p : x) p = std::sqrt(2.0 * p / m.density_kg_per_m3);
  for (const double v : x) {
    mean += v / static_cast<double>(n);
    slowest = std::min(slowest, v);
  }
  for (const double v : x) squares += (v - mean) * (v - mean);
  if (m.pressures && mean > 0.0) limit = m.instrument_limit / (m.density_kg_per_m3 * mean);  // dv = dp/(rho v)
  const double per_unit = hood ? 1.0 : m.face_area_mm2 * 1e-3;  // l/s for one unit read
  r.read_l_per_s = mean * per_unit;
  if (!hood) r.mean_velocity_m_per_s = mean;

  const double factor = is_nan(m.correction_factor) ? 1.0 : m.correction_factor;
  double flow = r.read_l_per_s * factor;
  double instrument = m.instrument_percent;
  if (is_nan(instrument)) {
    instrument = class_of(reads::airflow)->percent;
    r.assumed.push_back("instrument within " + number_text(instrument, 3) + " %: the worst case of its class");
  }
  if (m.pressures) instrument *= 0.5;  // of the pressure; the velocity goes with its root
  double correction = m.correction_percent;
  if (is_nan(correction)) {
    if (m.is == way::anemometer) {
      correction = is_nan(m.correction_factor) ? assumed_grille_factor_percent : assumed_factor_percent;
      r.assumed.push_back(is_nan(m.correction_factor) ? "no factor for this grille: 1, within 20 %" : "the factor within 5 %");
    } else if (!is_nan(m.correction_factor) && m.correction_factor != 1.0) {
      correction = assumed_factor_percent;
      r.assumed.push_back("the factor within 5 %");
    } else {
      correction = 0.0;
    }
  }
  double repeat = m.repeatability_percent, freedom = without_end;
  // readings of a hood repeat each other; those over a face or a section are of different places, and say nothing of repeating
  if (is_nan(repeat) && m.is != way::traverse && n >= 2 && mean > 0.0) {
    repeat = 100.0 * std::sqrt(squares / static_cast<double>(n - 1) / static_cast<double>(n)) / mean;
    freedom = static_cast<double>(n - 1);
  } else if (is_nan(repeat)) {
    repeat = assumed_repeatability_percent;
    r.assumed.push_back("repeatability 2 %: nothing was said, and " + std::string(m.is == way::traverse ? "points of a traverse do not repeat each other" : "there is one reading"));
  }

  double slope = 1.0, by_fan = 0.0, by_hood = 0.0;
  if (m.fan && flow > 0.0) {
    const double q = detail::without_hood(*m.fan, flow, m.hood_pressure_pa, 1.0);
    detail::must(!is_nan(m.fan->at(flow).value), who, "the flow that was read, " + quantity_text(flow, "l/s", 3) + ", lies outside the fan's curve: no correction by it");
    detail::must(!is_nan(q), who, "at the flow that was read the fan's curve gives " + quantity_text(m.fan->at(flow).value, "Pa", 3) + " and the hood alone takes " +
                                      quantity_text(m.hood_pressure_pa, "Pa", 3) + ": curve, reading and hood do not go together, or nothing holds back the fan without the hood");
    const double e = 1e-4;
    const auto difference = [&](double up, double down) { return is_nan(up) || is_nan(down) ? no_number : (up - down) / (2.0 * e); };
    by_fan = difference(detail::without_hood(*m.fan, flow, m.hood_pressure_pa, 1.0 + e), detail::without_hood(*m.fan, flow, m.hood_pressure_pa, 1.0 - e));
    by_hood = difference(detail::without_hood(*m.fan, flow, m.hood_pressure_pa * (1.0 + e), 1.0), detail::without_hood(*m.fan, flow, m.hood_pressure_pa * (1.0 - e), 1.0));
    const auto turned = [&](double q_read) { return detail::without_hood(*m.fan, q_read, m.hood_pressure_pa * (q_read / flow) * (q_read / flow), 1.0); };
    slope = difference(turned(flow * (1.0 + e)), turned(flow * (1.0 - e))) / flow;
    detail::must(!is_nan(by_fan) && !is_nan(by_hood) && !is_nan(slope), who, "the reading lies at the end of the fan's curve: no correction by it");
    r.hood_factor = q / flow;
    r.flow = measured(q);
  } else {
    r.flow = measured(flow);
  }
  const auto part = [&](const char* name, double u, double dof = without_end) {
    if (u != 0.0) r.flow.add(name, u, dof);
  };
  part("instrument", instrument / 100.0 / root3 * flow * slope);
  part("instrument, limit", limit / root3 * per_unit * factor * slope);
  part("repeatability", repeat / 100.0 * flow * slope, freedom);
  part("correction factor", correction / 100.0 / root3 * flow * slope);
  part("fan curve", m.fan_percent / 100.0 / root3 * by_fan);
  part("hood pressure", m.hood_pressure_percent / 100.0 / root3 * by_hood);
  if (r.flow.value > 0.0) r.relative_percent = 100.0 * r.flow.standard_uncertainty() / r.flow.value;

  if (m.is == way::hood && !m.fan) {
    r.reads_low = true;
    r.cautions.push_back("An unpowered hood throttles a weak axial fan and reads low: a pass stands, a fail may be the hood's. Use a powered hood, or give the fan's curve and what the hood takes.");
  }
  if (r.hood_factor > 1.25) r.cautions.push_back("The correction for the hood is " + number_text(100.0 * (r.hood_factor - 1.0), 2) + " %: more than a verdict should rest on. Use a powered hood.");
  if (m.is == way::anemometer && is_nan(m.correction_factor)) r.cautions.push_back("Velocity times face area is no flow until the grille's factor is known: its free area is smaller, and its jets are faster than their mean. Use a hood or a traverse.");
  if (m.is == way::traverse && m.pressures && mean < 2.0) r.cautions.push_back("Below 2 m/s the velocity pressure is under 2.5 Pa: a pitot tube hardly reads it.");
  if (!hood && slowest < 0.5 * mean) r.cautions.push_back("Somewhere the air moves at less than half of the mean: a bend or a damper is too near, or a point lies outside the jet. More points, or another section.");
  if (m.is == way::traverse && n < 5) r.cautions.push_back("A traverse of fewer than 5 points: see traverse_points for where they belong.");
  return r;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

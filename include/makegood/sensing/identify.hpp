// SPDX-License-Identifier: MIT
// Which sensor this is, and what is wrong with it, from a few readings of resistance at temperatures that are believed: probabilities over
// curves and faults, and the second reading that tells the leading ones apart. Subject: sensing (models). Opt-in.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>
#include "../job/inference.hpp"
#include "../job/scores.hpp"
#include "../text.hpp"
#include "checks.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

inline constexpr std::size_t most_sensor_readings = 6, most_candidates = 16;
inline constexpr double highest_sensor_ohm = 1e8, lowest_sensor_ohm = 0.01;
inline constexpr double own_scatter = 0.005;  ///< of each reading by itself, in proportion: contacts, its own heat, where exactly the thermometer lay

/// A sensor that it may be. Tolerances are limits, plus or minus; `weight` is how common it is where the sensor was found.
struct sensor_candidate {
  std::string name;
  sensing::curve curve;
  double resistance_tolerance_percent = 5.0;
  double beta_tolerance_percent = 0.0;  ///< of an NTC by its beta value
  double weight = 1.0;
  std::vector<std::array<double, 2>> points{};  ///< printed points (°C, Ω) of the same curve, to hold it against
};
/// What common practice knows of floor and room sensors: 10 kΩ at 25 °C mostly. Weights are a rule of the trade, without a source.
inline std::vector<sensor_candidate> usual_sensors() {
  const auto ntc = [](std::string name, double ohm, double beta, double weight) {
    return sensor_candidate{std::move(name), ntc_curve{ohm, 25.0, beta}, 5.0, 4.0, weight, {}};
  };
  return {ntc("NTC 10 kΩ", 10000, 3950, 0.40),  ntc("NTC 10 kΩ, low beta", 10000, 3435, 0.10), ntc("NTC 12 kΩ", 12000, 3850, 0.13),
          ntc("NTC 15 kΩ", 15000, 3850, 0.07),  ntc("NTC 6.8 kΩ", 6800, 3850, 0.07),            ntc("NTC 33 kΩ", 33000, 3950, 0.05),
          {"Pt100", rtd_curve{100.0}, 0.3, 0.0, 0.05, {}},
          {"Pt1000", rtd_curve{1000.0}, 0.3, 0.0, 0.06, {}},
          {"silicon 1 kΩ", silicon_ptc_curve{1000.0}, 2.0, 0.0, 0.04, {}},
          {"silicon 2 kΩ", silicon_ptc_curve{2000.0}, 2.0, 0.0, 0.03, {}}};
}

/// One reading: what the meter showed, and the temperature that the sensor is believed to have.
struct sensor_reading {
  reading resistance_ohm{};
  double temperature_c = 20.0;
  double temperature_doubt_k = 2.0;     ///< standard uncertainty of that temperature at the sensor
  std::string thermometer{};            ///< readings of one name share one error; empty: each has its own
  double reversed_ohm = no_number;      ///< the same with the meter's leads exchanged, if it was tried
};

enum class sensor_fault : unsigned char { sound, shunt, two_in_parallel, series, temperature_wrong, open, short_circuit, digital, none_of_these };
struct sensor_fault_row {
  std::string_view id, title;
  double weight;  ///< how common, by rule of the trade
};
inline constexpr sensor_fault_row sensor_faults[] = {
    {"sound", "sound, at the temperature that is believed", 0.70},
    {"shunt", "damp or another resistance across it", 0.05},
    {"two_in_parallel", "two of them in parallel", 0.02},
    {"series", "resistance in series: a long lead, a corroded joint", 0.05},
    {"temperature_wrong", "sound, but the temperature that is believed is wrong", 0.06},
    {"open", "open: a broken conductor or joint", 0.06},
    {"short_circuit", "short: its conductors touch", 0.03},
    {"digital", "a digital or polarity-sensitive part in place of a sensor", 0.03},
    {"none_of_these", "none of these", 0.0}};

/// How a set of coefficients stands against points of its own curve.
struct curve_misses {
  std::vector<double> miss_k;  ///< temperature by the curve less that of the point
  double worst_k = 0.0;
  bool steady = true;          ///< it rises or falls all the way from -20 to 80 °C
};

struct sensor_explanation {
  int candidate = -1;  ///< none for open, short, digital, none of these
  sensor_fault fault = sensor_fault::none_of_these;
  double prior = 0.0, posterior = 0.0;
};
struct next_reading {
  std::string id, what;
  double bits = 0.0;                 ///< expected information about which explanation holds
  std::array<double, 2> expected{no_number, no_number};  ///< what the two leading explanations would show
  std::string_view unit{};
};
struct identified_sensor {
  std::vector<sensor_explanation> explanations;   ///< the likeliest first; none of these is always among them
  std::vector<std::pair<std::string, double>> curves;  ///< by candidate; what has no curve is left out of it
  std::array<double, std::size(sensor_faults)> faults{};  ///< in the order of sensor_faults
  std::vector<double> temperature_c;              ///< of the first reading by each candidate's curve, if it were sound; NaN off the curve
  std::vector<next_reading> next;                 ///< most information first
  bool robust = true;                             ///< the leading explanation stays so when any prior is halved or doubled
  std::vector<std::string> findings{};            ///< about the candidates: points that their coefficients miss
};

namespace detail {
/// Resistance of a curve at a temperature, for every kind of number.
template <class T>
T ohms_of(const curve& c, const T& t, const T& beta_more) {
  if (const auto* ntc = std::get_if<ntc_curve>(&c)) return ntc_resistance.unchecked(t, T(ntc->reference_ohm), T(ntc->reference_c), T(ntc->beta_k) + beta_more);
  if (const auto* s = std::get_if<steinhart_hart_curve>(&c)) return steinhart_hart_resistance.unchecked(t, T(s->a), T(s->b), T(s->c));
  if (const auto* rtd = std::get_if<rtd_curve>(&c)) return rtd_resistance.unchecked(t, T(rtd->r0_ohm));
  const auto& silicon = std::get<silicon_ptc_curve>(c);
  return silicon_ptc_resistance.unchecked(t, T(silicon.reference_ohm), T(silicon.a_per_k), T(silicon.b_per_k2));
}
inline double ohms_at(const curve& c, double t) { return ohms_of<double>(c, t, 0.0); }
/// The same, or NaN where the curve refuses it.
inline double ohms_if(const curve& c, double t) {
  if (const auto* ntc = std::get_if<ntc_curve>(&c)) return ntc_resistance.try_call(t, ntc->reference_ohm, ntc->reference_c, ntc->beta_k).value;
  if (const auto* s = std::get_if<steinhart_hart_curve>(&c)) return steinhart_hart_resistance.try_call(t, s->a, s->b, s->c).value;
  if (const auto* rtd = std::get_if<rtd_curve>(&c)) return rtd_resistance.try_call(t, rtd->r0_ohm).value;
  const auto& silicon = std::get<silicon_ptc_curve>(c);
  return silicon_ptc_resistance.try_call(t, silicon.reference_ohm, silicon.a_per_k, silicon.b_per_k2).value;
}
/// Temperature by halving between -60 and 150 °C; NaN off the curve. The curve is steady.
inline double celsius_of(const curve& c, double ohm) {
  double low = -60.0, high = 150.0;
  while (low < -20.0 && !is_finite(ohms_if(c, low))) low += 5.0;
  while (high > 80.0 && !is_finite(ohms_if(c, high))) high -= 5.0;
  const double at_low = ohms_if(c, low), at_high = ohms_if(c, high);
  if (!((ohm - at_low) * (ohm - at_high) <= 0.0)) return no_number;
  const bool falls = at_high < at_low;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    ((ohms_if(c, middle) > ohm) == falls ? low : high) = middle;
  }
  return 0.5 * (low + high);
}

/// What a hypothesis with a curve predicts for one reading.
struct sensor_prediction {
  sensing::curve curve;
  sensor_fault fault;
  double temperature_c;
  int beta = -1, fault_at = -1, thermometer = -1;  // places among the parameters; the tolerance of the resistance stands first
  bool alone = false;                             // read at its own ends, off everything else

  template <class T>
  T operator()(const job::parameter_values<T>& p) const {
    T t(temperature_c);
    if (thermometer >= 0) t = t + p[thermometer];
    if (fault == sensor_fault::temperature_wrong) t = t + p[fault_at];
    const T r = p[0] * ohms_of<T>(curve, t, beta >= 0 ? T(p[beta]) : T(0.0));
    if (alone) return r;
    if (fault == sensor_fault::shunt) return r * p[fault_at] / (r + p[fault_at]);
    if (fault == sensor_fault::two_in_parallel) return T(0.5) * r;
    if (fault == sensor_fault::series) return r + p[fault_at];
    return r;
  }
};
/// A temperature that is measured by itself: the believed one and its error.
struct temperature_prediction {
  double temperature_c;
  int thermometer, offset;
  template <class T>
  T operator()(const job::parameter_values<T>& p) const {
    const T t = T(temperature_c) + p[thermometer];
    return offset >= 0 ? t + p[offset] : t;
  }
};
/// A value that does not follow the temperature, with a scatter of its own in each reading.
struct value_prediction {
  int scatter;
  template <class T>
  T operator()(const job::parameter_values<T>& p) const { return scatter >= 0 ? p[0] * p[scatter] : p[0] * T(1.0); }
};
}  // namespace detail

/// A curve against its own points, and whether it rises or falls all the way where sensors of rooms and floors live.
inline curve_misses curve_against_points(const curve& c, std::span<const std::array<double, 2>> points = {}) {
  curve_misses m;
  double before = detail::ohms_if(c, -20.0), direction = 0.0;
  for (double t = -15.0; t <= 80.0; t += 5.0) {
    const double here = detail::ohms_if(c, t);
    const double step = here - before;
    if (!is_finite(here) || !(here > 0.0) || !(step * direction >= 0.0) || step == 0.0) m.steady = false;
    direction = step;
    before = here;
  }
  for (const auto& p : points) {
    double t = no_number;
    if (const auto* s = std::get_if<steinhart_hart_curve>(&c)) t = steinhart_hart_temperature.try_call(p[1], s->a, s->b, s->c).value;
    else if (m.steady) t = detail::celsius_of(c, p[1]);
    m.miss_k.push_back(t - p[0]);
    if (!(fabs(m.miss_k.back()) <= m.worst_k)) m.worst_k = is_finite(t) ? fabs(m.miss_k.back()) : no_number;
    if (is_nan(m.worst_k)) break;
  }
  return m;
}

struct identify_options {
  double none_prior = 0.05;  ///< of "none of these", from 0.02
  bool with_next = true;     ///< also ask which reading to take next
  double worst_miss_k = 0.5; ///< a candidate whose coefficients miss its own points by more is named
};

namespace detail {
inline void demand_sensor_input(std::span<const sensor_reading> readings, std::span<const sensor_candidate> candidates) {
  const std::string who = "identify_sensor: ";
  if (readings.empty() || readings.size() > most_sensor_readings) throw range_error(who + "1 to 6 readings");
  if (candidates.empty() || candidates.size() > most_candidates) throw range_error(who + "1 to 16 candidates");
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const auto& r = readings[i];
    const std::string at = who + "readings[" + std::to_string(i) + "]: ";
    if (!(r.temperature_c > -273.15)) throw range_error(at + "temperature_c: " + number_text(r.temperature_c) + " °C is not above absolute zero, -273.15 °C");
    if (!(r.temperature_c >= -50.0 && r.temperature_c <= 150.0)) throw range_error(at + "temperature_c: " + number_text(r.temperature_c) + " °C: from -50 to 150 °C");
    if (!(r.temperature_doubt_k > 0.0 && r.temperature_doubt_k <= 50.0))
      throw range_error(at + "temperature_doubt_k: " + number_text(r.temperature_doubt_k) + " K: above 0 to 50 K: no temperature is exact");
    const auto state = r.resistance_ohm.is;
    if (state != reading::state::value && state != reading::state::above && state != reading::state::below) throw range_error(at + "resistance_ohm: a number, or over or under range");
    if (!(r.resistance_ohm.number >= 0.0 && r.resistance_ohm.number <= 1e9)) throw range_error(at + "resistance_ohm: " + number_text(r.resistance_ohm.number) + " Ω: from 0 to 1e9 Ω");
    if (!is_nan(r.reversed_ohm) && !(r.reversed_ohm >= 0.0 && r.reversed_ohm <= 1e9)) throw range_error(at + "reversed_ohm: from 0 to 1e9 Ω");
  }
  double total = 0.0;
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    const auto& c = candidates[i];
    const std::string at = who + "candidate \"" + c.name + "\": ";
    for (std::size_t j = 0; j < i; ++j)
      if (candidates[j].name == c.name) throw range_error(at + "stands twice");
    if (c.name.empty()) throw range_error(who + "a candidate needs a name");
    if (!(c.weight >= 0.0 && c.weight <= 1e6)) throw range_error(at + "weight: from 0");
    if (!(c.resistance_tolerance_percent > 0.0 && c.resistance_tolerance_percent <= 50.0)) throw range_error(at + "resistance_tolerance_percent: above 0 to 50 %");
    if (!(c.beta_tolerance_percent >= 0.0 && c.beta_tolerance_percent <= 20.0)) throw range_error(at + "beta_tolerance_percent: 0 to 20 %");
    if (!curve_against_points(c.curve).steady)
      throw relation_error(at + "its curve does not rise or fall steadily from -20 to 80 °C: these numbers are no sensor for rooms and floors (another unit of resistance, a misprint?)");
    total += c.weight;
  }
  if (!(total > 0.0)) throw range_error(who + "all weights are 0");
}
inline double reference_ohm_of(const curve& c) {
  if (const auto* rtd = std::get_if<rtd_curve>(&c)) return rtd->r0_ohm;
  return ohms_at(c, 25.0);
}
}  // namespace detail

/// Posterior over curves and faults. It is never certain: "none of these" keeps a broad place of its own, and one reading cannot tell a
/// wrong type from a wrong temperature.
inline identified_sensor identify_sensor(std::span<const sensor_reading> readings, std::span<const sensor_candidate> candidates, const identify_options& options = {}) {
  using job::distribution;
  using job::hypothesis;
  using job::observation;
  detail::demand_sensor_input(readings, candidates);
  const std::size_t n = readings.size();
  identified_sensor out;
  for (const auto& c : candidates) {
    if (c.points.empty()) continue;
    const auto m = curve_against_points(c.curve, c.points);
    if (!(m.worst_k <= options.worst_miss_k))
      out.findings.push_back("candidate \"" + c.name + "\": its coefficients miss its own points" + (is_nan(m.worst_k) ? std::string(" altogether") : " by up to " + number_text(std::round(100.0 * m.worst_k) / 100.0) + " K") +
                             ": one of the two is not of this sensor");
  }

  // thermometers: readings of one name share an error
  std::vector<std::string> thermometers;
  std::vector<double> doubts;
  std::vector<int> read_by(n);
  for (std::size_t i = 0; i < n; ++i) {
    const std::string name = readings[i].thermometer.empty() ? "#" + std::to_string(i) : readings[i].thermometer;
    const auto at = std::find(thermometers.begin(), thermometers.end(), name);
    read_by[i] = static_cast<int>(at - thermometers.begin());
    if (at == thermometers.end()) {
      thermometers.push_back(name);
      doubts.push_back(readings[i].temperature_doubt_k);
    } else {
      doubts[static_cast<std::size_t>(read_by[i])] = std::max(doubts[static_cast<std::size_t>(read_by[i])], readings[i].temperature_doubt_k);
    }
  }

  std::vector<job::test> tests;
  const auto id_of = [](std::size_t i) { return "reading " + std::to_string(i); };
  for (std::size_t i = 0; i < n; ++i) tests.push_back({id_of(i), {}, lowest_sensor_ohm, highest_sensor_ohm});
  tests.push_back({"polarity", {}, 0.0, 0.0, {"same", "differs"}});
  tests.push_back({"warm_by_10_k", {}, lowest_sensor_ohm, highest_sensor_ohm});
  tests.push_back({"lift_one_end", {}, lowest_sensor_ohm, highest_sensor_ohm});
  tests.push_back({"measure_the_room", {}, -60.0, 200.0, {}, job::test::spread::uniform});

  std::vector<hypothesis> hypotheses;
  std::vector<sensor_explanation> of;
  const std::size_t last = n - 1;  // what is tried next is tried where the last reading was taken
  const auto polarity = [](double differs) { return job::prediction::outcomes({{"same", 1.0 - differs}, {"differs", differs}}); };
  for (std::size_t c = 0; c < candidates.size(); ++c) {
    const auto& one = candidates[c];
    const bool has_beta = std::holds_alternative<ntc_curve>(one.curve) && one.beta_tolerance_percent > 0.0;
    const double size = detail::reference_ohm_of(one.curve);
    for (const auto fault : {sensor_fault::sound, sensor_fault::shunt, sensor_fault::two_in_parallel, sensor_fault::series, sensor_fault::temperature_wrong}) {
      hypothesis h;
      const auto& row = sensor_faults[static_cast<std::size_t>(fault)];
      h.id = one.name + "/" + std::string(row.id);
      h.prior = one.weight * row.weight;
      h.parameters.push_back({"resistance", distribution::normal(1.0, 0.01 * one.resistance_tolerance_percent / 1.7320508075688772)});
      detail::sensor_prediction p{one.curve, fault, 0.0};
      if (has_beta) {
        p.beta = static_cast<int>(h.parameters.size());
        const double beta = std::get<ntc_curve>(one.curve).beta_k;
        h.parameters.push_back({"beta", distribution::normal(0.0, 0.01 * beta * one.beta_tolerance_percent / 1.7320508075688772)});
      }
      p.fault_at = static_cast<int>(h.parameters.size());
      if (fault == sensor_fault::shunt) h.parameters.push_back({"shunt", distribution::log_uniform(0.1 * size, 30.0 * size)});
      else if (fault == sensor_fault::series) h.parameters.push_back({"series", distribution::log_uniform(0.01 * size, 3.0 * size)});
      else if (fault == sensor_fault::temperature_wrong) h.parameters.push_back({"offset", distribution::normal(0.0, 8.0)});
      else p.fault_at = -1;
      const int first_thermometer = static_cast<int>(h.parameters.size());
      for (std::size_t k = 0; k < thermometers.size(); ++k) h.parameters.push_back({"thermometer " + thermometers[k], distribution::normal(0.0, doubts[k])});
      for (std::size_t i = 0; i < n; ++i) {
        p.temperature_c = readings[i].temperature_c;
        p.thermometer = first_thermometer + read_by[i];
        h.predictions.emplace_back(id_of(i), job::prediction(p));
      }
      h.predictions.emplace_back("polarity", polarity(0.005));
      auto next = p;
      next.temperature_c = readings[last].temperature_c + 10.0;
      h.predictions.emplace_back("warm_by_10_k", job::prediction(next));
      next.temperature_c = readings[last].temperature_c;
      next.alone = true;
      h.predictions.emplace_back("lift_one_end", job::prediction(next));
      h.predictions.emplace_back("measure_the_room", job::prediction(detail::temperature_prediction{
                                     readings[last].temperature_c, p.thermometer, fault == sensor_fault::temperature_wrong ? p.fault_at : -1}));
      hypotheses.push_back(std::move(h));
      of.push_back({static_cast<int>(c), fault, 0.0, 0.0});
    }
  }
  double weights = 0.0;
  for (const auto& c : candidates) weights += c.weight;
  const auto without_curve = [&](sensor_fault fault, double low, double high, double scatter, double above, double differs) {
    hypothesis h;
    const auto& row = sensor_faults[static_cast<std::size_t>(fault)];
    h.id = std::string("no curve/") + std::string(row.id);
    h.prior = weights * row.weight;
    h.parameters.push_back({"value", distribution::log_uniform(low, high)});
    for (std::size_t i = 0; i < n + 2; ++i) h.parameters.push_back({"scatter " + std::to_string(i), distribution::normal(1.0, scatter)});
    for (std::size_t i = 0; i < n + 2; ++i) {
      job::prediction p(detail::value_prediction{static_cast<int>(i) + 1});
      if (above > 0.0) p.or_outcome("above", above);
      h.predictions.emplace_back(i < n ? id_of(i) : i == n ? std::string("warm_by_10_k") : std::string("lift_one_end"), std::move(p));
    }
    h.predictions.emplace_back("polarity", polarity(differs));
    hypotheses.push_back(std::move(h));
    of.push_back({-1, fault, 0.0, 0.0});
  };
  without_curve(sensor_fault::open, 3e5, highest_sensor_ohm, 0.4, 0.7, 0.1);
  without_curve(sensor_fault::short_circuit, 0.02, 30.0, 0.2, 0.0, 0.005);
  without_curve(sensor_fault::digital, 300.0, 5e6, 0.15, 0.2, 0.85);
  of.push_back({-1, sensor_fault::none_of_these, 0.0, 0.0});

  std::vector<observation> seen;
  bool turned = false, differs = false;
  for (std::size_t i = 0; i < n; ++i) {
    auto r = readings[i].resistance_ohm;
    if (r.is == reading::state::value && r.number < lowest_sensor_ohm) r = reading::below(lowest_sensor_ohm);
    if (r.is == reading::state::value && r.number > highest_sensor_ohm) r = reading::above(highest_sensor_ohm);
    seen.push_back(observation::from(id_of(i), r, reads::resistance).with_gain("contact " + std::to_string(i), own_scatter));
    if (is_nan(readings[i].reversed_ohm)) continue;
    turned = true;
    const double other = readings[i].reversed_ohm;
    differs = differs || fabs(other - r.number) > 0.05 * std::max(other, r.number);
  }
  if (turned) seen.push_back(observation::outcome("polarity", differs ? "differs" : "same"));

  job::inference_options how;
  how.none_prior = options.none_prior;
  how.points = 512;
  job::explanations kernel(tests, hypotheses, how);
  const auto table = kernel.explain(seen);
  for (std::size_t h = 0; h < of.size(); ++h) {
    of[h].prior = table.rows[h].prior;
    of[h].posterior = table.rows[h].posterior;
    out.faults[static_cast<std::size_t>(of[h].fault)] += of[h].posterior;
  }
  out.robust = table.robust;
  const auto& first = readings[0].resistance_ohm;
  for (std::size_t c = 0; c < candidates.size(); ++c) {
    double sum = 0.0;
    for (const auto& e : of)
      if (e.candidate == static_cast<int>(c)) sum += e.posterior;
    out.curves.emplace_back(candidates[c].name, sum);
    out.temperature_c.push_back(first.is == reading::state::value && first.number > 0.0 ? detail::celsius_of(candidates[c].curve, first.number) : no_number);
  }
  std::vector<std::size_t> order(of.size());
  for (std::size_t h = 0; h < order.size(); ++h) order[h] = h;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return of[a].posterior > of[b].posterior; });
  for (const auto h : order) out.explanations.push_back(of[h]);
  if (!options.with_next) return out;

  // which reading next: expected information about which of the leading explanations holds, each outcome weighed by the kernel
  std::vector<std::size_t> leading;
  for (const auto h : order)
    if (leading.size() < 2 || (leading.size() < 6 && of[h].posterior > 0.015)) leading.push_back(h);
  std::vector<double> prior, before;
  double sum = 0.0;
  for (const auto h : leading) sum += of[h].posterior;
  for (const auto h : leading) {
    prior.push_back(of[h].posterior / sum);
    before.push_back(kernel.log_likelihood(h));
  }
  const auto ask = [&](const std::string& id, const std::string& what, const std::vector<double>& values, const std::vector<double>& widths, double relative, double absolute, std::string_view unit) {
    auto all = seen;
    auto o = observation::value(id, measured(values[0], absolute, "next reading"));
    if (relative > 0.0) o = o.with_gain("next reading, in proportion", relative);
    all.push_back(o);
    kernel.read(all);
    job::table_of_numbers outcomes(values.size() + 1, std::vector<double>(leading.size(), 0.0));
    next_reading next{id, what, 0.0, {no_number, no_number}, unit};
    for (std::size_t k = 0; k < values.size(); ++k) {
      kernel.change(all.size() - 1, values[k]);
      for (std::size_t j = 0; j < leading.size(); ++j) outcomes[k][j] = exp(kernel.log_likelihood(leading[j]) - before[j]) * widths[k];
    }
    for (std::size_t j = 0; j < leading.size(); ++j) {
      double inside = 0.0, mean = 0.0;
      for (std::size_t k = 0; k < values.size(); ++k) inside += outcomes[k][j], mean += outcomes[k][j] * values[k];
      if (inside > 1.0)
        for (std::size_t k = 0; k < values.size(); ++k) outcomes[k][j] /= inside;
      outcomes[values.size()][j] = inside < 1.0 ? 1.0 - inside : 0.0;
      if (j < 2 && inside > 0.5) next.expected[j] = mean / inside;
    }
    next.bits = std::max(0.0, job::information_gain_nats(prior, outcomes) / job::nats_of_a_bit);
    out.next.push_back(std::move(next));
  };
  const auto& now = readings[last].resistance_ohm;
  const bool value = now.is == reading::state::value && now.number > 0.0;
  std::vector<double> ohms, ohm_widths, kelvins, kelvin_widths;
  const double low = value ? 0.25 * now.number : 50.0, high = value ? 4.0 * now.number : 1e6, step = value ? 0.06 : 0.25;
  for (double x = low; x < high; x *= 1.0 + step) ohms.push_back(x), ohm_widths.push_back(x * step);
  for (int k = -13; k <= 13; ++k) kelvins.push_back(readings[last].temperature_c + 1.2 * k), kelvin_widths.push_back(1.2);
  ask("warm_by_10_k", "Warm the sensor by 10 K (a hand, warm water in a bag), leave all else as it is, and read it again.", ohms, ohm_widths, value ? 0.05 : 0.2, 1e-3, "Ω");
  ask("lift_one_end", "Isolate; take the sensor off its terminals and joints, and read it at its own two ends.", ohms, ohm_widths, value ? 0.05 : 0.2, 1e-3, "Ω");
  ask("measure_the_room", "Measure the temperature at the sensor with a thermometer that you trust, after it has had time to settle.", kelvins, kelvin_widths, 0.0, 1.0, "°C");
  if (!turned) {
    job::table_of_numbers outcomes(2, std::vector<double>(leading.size()));
    for (std::size_t j = 0; j < leading.size(); ++j) {
      const auto h = leading[j];
      const double p = of[h].fault == sensor_fault::digital ? 0.85 : of[h].fault == sensor_fault::open ? 0.1 : of[h].fault == sensor_fault::none_of_these ? 0.5 : 0.005;
      outcomes[0][j] = 1.0 - p;
      outcomes[1][j] = p;
    }
    out.next.push_back({"exchange_the_leads", "Exchange the meter's leads and read again: a plain sensor reads the same.", std::max(0.0, job::information_gain_nats(prior, outcomes) / job::nats_of_a_bit), {no_number, no_number}, ""});
  }
  std::stable_sort(out.next.begin(), out.next.end(), [](const auto& a, const auto& b) { return a.bits > b.bits; });
  return out;
}

}  // namespace sensing
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// What a rising display says: is the whole mat heating, a part of it, or is the room warming the floor?
// Subject: heating (models). Opt-in: includes the inference kernel, and so the standard library's containers.
#pragma once
#include <array>
#include <optional>
#include "../job/inference.hpp"
#include "floor_model.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr std::size_t most_warm_up_readings = 16;
inline constexpr double warm_up_confidence = 0.9;  ///< an explanation is named from this probability on
/// Weights before any reading: judgement, not counted anywhere.
inline constexpr double whole_weight = 0.55, part_weight = 0.2, not_heating_weight = 0.25;
inline constexpr double power_doubt = 0.04;        ///< of the whole mat's power: supply and resistance, standard uncertainty, parts of it
inline constexpr double least_part = 0.1, most_part = 0.9;
inline constexpr double response_doubt = 0.15;     ///< of how fast the build-up answers: standard deviation of the logarithm
inline constexpr double start_doubt_k = 1.0;       ///< of the floor's temperature at the start, before the first reading is looked at

/// What must have been proved before anything was energised.
struct proved_before {
  bool insulation = false, screen = false, resistance = false, rcd = false;
  bool all() const { return insulation && screen && resistance && rcd; }
};
struct warm_up_readings {
  floor_setup floor{};                    ///< its power is the rated one; its room's temperature is that at the start
  std::vector<double> times_s{};          ///< since the heater was switched on; before it: 0 or less
  std::vector<double> temperatures_c{};   ///< as displayed
  double resolution_k = 0.5;              ///< one step of the display
  double timing_s = 30.0;                 ///< doubt of each time, half width
  double room_doubt_k = 1.0;              ///< standard uncertainty of the room's temperature against the floor's
  double spacing_m = 0.075;               ///< between two runs of the heater: a probe lies somewhere between them
  proved_before proved{};
};
enum class warm_up_kind : unsigned char { whole, part, not_heating, none_of_these };
inline constexpr std::string_view warm_up_words[] = {"whole mat heating", "part of it heating", "not heating: the room is warming it",
    "none of these"};

struct warm_up_result {
  bool judged = false;                   ///< false: something was not proved before energising
  bool decided = false;
  warm_up_kind leading = warm_up_kind::none_of_these;
  double probability[4] = {0.0, 0.0, 0.0, 0.0};  ///< in the order of warm_up_kind
  bool robust = true, conflict = false;
  double power_w_per_m2 = no_number, power_low_w_per_m2 = no_number, power_high_w_per_m2 = no_number;  ///< median and 95 % interval
  std::vector<double> whole_c{}, not_heating_c{};  ///< expected at each reading, were it so
  double next_s = no_number;             ///< wait so long after the last reading; NaN: decided
  double next_probability = no_number;   ///< and be right so often then
  double hottest_c = no_number;          ///< what the heater can make of the place of the probe, at rest
  bool too_hot = false;
};

namespace detail {

inline constexpr int heater_modes = 8;        ///< of the pattern between two runs
inline constexpr double heater_half_m = 0.002; ///< half the width of a run: smooths the pattern
inline constexpr double least_distance_m = 0.003;

/// Answer of the probe's plane at the times, for 1 W/m² of the heater (mean, or one mode of its pattern), or for a room 1 K warmer.
inline std::vector<double> response_of(const floor_setup& like, double power, double room, double wave_number, const std::vector<double>& times) {
  floor_setup s = like;
  s.loss.is = surface_loss::law::linear;
  s.loss.coefficient = 10.8;
  s.initial_c = 0.0;
  s.room = {room};
  s.below.temperature_c = 0.0;
  s.power_w_per_m2 = power;
  s.wave_number_per_m = wave_number;
  s.thermostat = {};
  s.target_c = no_number;
  s.times_s.clear();
  for (const double t : times)
    if (t > 0.0) s.times_s.push_back(t);
  s.duration_s = s.times_s.back();
  s.error_k = 0.05;
  const auto r = floor_warm_up(s);
  std::vector<double> out;
  std::size_t i = 0;
  for (const double t : times) out.push_back(t > 0.0 ? r.probe_c[i++] / (power > 0.0 ? power : room) : 0.0);
  return out;
}
/// parameters: start, room above the floor, answer, place between two runs (0: at one, 1/2: in the middle), share of the power
struct warm_up_prediction {
  double room = 0.0;                                ///< K for each K of the room
  std::array<double, heater_modes + 1> source{};    ///< K at the rated power: mean, then amplitudes of the pattern
  bool heats = false;

  template <class P>
  auto operator()(const P& p) const {
    using T = std::remove_cvref_t<decltype(p[0])>;
    T y = p[0] + p[1] * room;
    if (heats) {
      const T c = 2.0 * cos(6.28318530717958647693 * p[3]);
      T before = T(1.0), mode = 0.5 * c, g = source[0] + source[1] * mode;
      for (std::size_t m = 2; m < source.size(); ++m) {
        const T next = c * mode - before;  // cos of m times the angle
        before = mode;
        mode = next;
        g = g + source[m] * mode;
      }
      y = y + p[2] * p[4] * g;
    }
    return y;
  }
};
}  // namespace detail

/// The readings against three explanations, by their joint likelihood: a start that all share, the room warmer or colder than the floor, a
/// build-up that answers more or less than calculated, a probe that lies anywhere between two runs (the pattern between them as a sum of cosines,
/// each a plane problem of its own), and a share of the rated power.
inline warm_up_result warm_up_evidence(const warm_up_readings& in) {
  const std::string who = "warm_up_evidence";
  const auto fail = [&](const std::string& text) { detail::floor_refuse(who, text); };
  const std::size_t n = in.times_s.size();
  if (n < 2) fail("two readings at least");
  if (n > most_warm_up_readings) fail("at most " + std::to_string(most_warm_up_readings) + " readings; leave out some in between");
  if (in.temperatures_c.size() != n) fail("times and temperatures must be as many");
  for (std::size_t i = 0; i < n; ++i) {
    detail::demand_between(who, "times_s[" + std::to_string(i) + "]", in.times_s[i], -86400.0, 172800.0, "s");
    detail::demand_between(who, "temperatures_c[" + std::to_string(i) + "]", in.temperatures_c[i], -20.0, 80.0, "°C",
        "what a display of a floor can show");
    if (i > 0 && !(in.times_s[i] > in.times_s[i - 1])) fail("times_s must rise");
  }
  if (!(in.times_s.back() > 0.0)) fail("times_s: the last reading must be after the heater was switched on, at 0");
  detail::demand_between(who, "resolution_k", in.resolution_k, 0.001, 5.0, "K");
  detail::demand_between(who, "timing_s", in.timing_s, 0.0, 3600.0, "s");
  detail::demand_between(who, "room_doubt_k", in.room_doubt_k, 0.05, 20.0, "K");
  detail::demand_between(who, "heater_spacing_mm", in.spacing_m * 1000.0, 1.0, 500.0, "mm");
  floor_setup s = in.floor;
  s.room.lumped = false;
  s.duration_s = in.times_s.back();
  s.initial_c = in.temperatures_c.front();
  detail::demand_floor(who, s);
  if (!(s.power_w_per_m2 > 0.0)) fail("power_density_w_per_m2 must be above 0");
  warm_up_result out;
  if (!in.proved.all()) return out;
  out.judged = true;

  constexpr double waits[] = {120.0, 300.0, 600.0, 900.0, 1200.0, 1800.0, 2700.0, 3600.0};
  const double last = in.times_s.back();
  std::vector<double> when = in.times_s;
  for (const double w : waits) when.push_back(last + w);
  const auto by_room = detail::response_of(s, 0.0, 100.0, 0.0, when);
  std::array<std::vector<double>, detail::heater_modes + 1> by_source;
  for (std::size_t m = 0; m < by_source.size(); ++m) {
    const double wave = 6.28318530717958647693 * static_cast<double>(m) / in.spacing_m;
    auto& g = by_source[m];
    g = detail::response_of(s, 100.0, 0.0, wave, when);
    const double part = s.power_w_per_m2 * (m == 0 ? 1.0 : 2.0 * exp(-0.5 * square(wave * detail::heater_half_m)));
    for (auto& x : g) x *= part;
  }
  const auto predicted = [&](std::size_t i, bool heats) {
    detail::warm_up_prediction p;
    p.room = by_room[i];
    p.heats = heats;
    for (std::size_t m = 0; m < p.source.size(); ++m) p.source[m] = by_source[m][i];
    return p;
  };
  const double nearest = std::min(0.4, detail::least_distance_m / in.spacing_m);

  std::vector<job::test> tests;
  for (std::size_t i = 0; i < n + std::size(waits); ++i) {
    const std::string digits = std::to_string(i);
    tests.push_back({"reading " + std::string(2 - std::min<std::size_t>(2, digits.size()), '0') + digits, {}, -20.0, 80.0, {},
        job::test::spread::uniform, 0.0});
  }
  const double start = in.temperatures_c.front();
  std::vector<job::hypothesis> list;
  const auto add = [&](std::string id, double weight, bool heats, std::optional<job::distribution> share) {
    job::hypothesis h;
    h.id = std::move(id);
    h.prior = weight;
    h.parameters = {{"start", job::distribution::normal(start, start_doubt_k)},
                    {"room above floor", job::distribution::normal(s.room.temperature_c - start, in.room_doubt_k)}};
    if (heats) {
      h.parameters.push_back({"answer", job::distribution::log_normal(1.0, response_doubt)});
      h.parameters.push_back({"place", job::distribution::uniform(nearest, 0.5)});
      h.parameters.push_back({"share", *share});
    }
    for (std::size_t i = 0; i < tests.size(); ++i) h.predictions.emplace_back(tests[i].id, job::prediction(predicted(i, heats)));
    list.push_back(std::move(h));
  };
  add("whole", whole_weight, true, job::distribution::normal(1.0, power_doubt));
  add("part", part_weight, true, job::distribution::uniform(least_part, most_part));
  add("not_heating", not_heating_weight, false, std::nullopt);
  job::inference_options options;
  options.none_prior = 0.03;
  options.points = 512;
  options.draws = 150;
  job::explanations engine(tests, list, options);
  // doubt of the time makes a doubt of the temperature where it rises: by the mean rise that was read
  const double rise = (in.temperatures_c.back() - start) / (in.times_s.back() - in.times_s.front());
  const double by_time = fabs(rise) * in.timing_s / 1.7320508075688772;
  const auto seen = [&](std::size_t i, double x) {
    measured m(x);
    m.add("display " + std::to_string(i), 0.05);
    if (by_time > 0.0) m.add("time " + std::to_string(i), by_time);
    return job::observation::value(tests[i].id, m, in.resolution_k);
  };
  std::vector<job::observation> readings;
  for (std::size_t i = 0; i < n; ++i) readings.push_back(seen(i, in.temperatures_c[i]));
  const auto table = engine.explain(readings);
  for (std::size_t h = 0; h < 4; ++h) out.probability[h] = table.rows[h].posterior;
  out.robust = table.robust;
  out.conflict = engine.conflict().conflict;
  std::size_t best = 0;
  for (std::size_t h = 1; h < 4; ++h)
    if (out.probability[h] > out.probability[best]) best = h;
  out.leading = static_cast<warm_up_kind>(best);
  out.decided = best < 3 && out.probability[best] >= warm_up_confidence && !out.conflict;

  // power: the shares under "whole" and "part" together, and none under "not heating"
  const double listed = out.probability[0] + out.probability[1] + out.probability[2];
  constexpr int grid = 17;  // of the share of a part; that of the whole stays close to a normal distribution
  constexpr double width = (most_part - least_part) / (grid - 1);
  std::array<double, grid> part_below{};
  if (out.probability[1] > 1e-4 * listed)
    for (int i = 1; i + 1 < grid; ++i)
      part_below[static_cast<std::size_t>(i)] =
          std::max(part_below[static_cast<std::size_t>(i - 1)], std::clamp(engine.parameter_after(1, 4, least_part + width * i).below, 0.0, 1.0));
  part_below[grid - 1] = 1.0;
  const auto whole_share = out.probability[0] > 1e-4 * listed ? engine.parameter_after(0, 4) : job::parameter_posterior{1.0, power_doubt, no_number};
  const auto up_to = [&](double share) {
    double sum = out.probability[2];
    const double at = (share - least_part) / width;
    const std::size_t cell = at <= 0.0 ? 0 : std::min<std::size_t>(static_cast<std::size_t>(at), grid - 2);
    const double between = part_below[cell] + (at - static_cast<double>(cell)) * (part_below[cell + 1] - part_below[cell]);
    const double part = at <= 0.0 ? 0.0 : at >= grid - 1 ? 1.0 : between;
    sum += out.probability[1] * part + out.probability[0] * normal_cdf((share - whole_share.mean) / whole_share.sd);
    return sum / listed;
  };
  const auto quantile = [&](double p) {
    double low = 0.0, high = 1.5;
    if (up_to(0.0) >= p) return 0.0;
    for (int i = 0; i < 50; ++i) {
      const double middle = 0.5 * (low + high);
      (up_to(middle) < p ? low : high) = middle;
    }
    return high;
  };
  out.power_w_per_m2 = s.power_w_per_m2 * quantile(0.5);
  out.power_low_w_per_m2 = s.power_w_per_m2 * quantile(0.025);
  out.power_high_w_per_m2 = s.power_w_per_m2 * quantile(0.975);

  using values = std::array<double, 5>;
  const auto middle = [&](std::size_t h) {
    return values{start, s.room.temperature_c - start, 1.0, 0.5 * (nearest + 0.5), h == 0 ? 1.0 : 0.5 * (least_part + most_part)};
  };
  const auto expected = [&](std::size_t h, std::size_t i, const values& p) { return predicted(i, h < 2)(job::parameter_values<double>{p.data()}); };
  for (std::size_t i = 0; i < n; ++i) {
    out.whole_c.push_back(expected(0, i, middle(0)));
    out.not_heating_c.push_back(expected(2, i, middle(2)));
  }
  auto hot = s;
  hot.room.temperature_c = std::max(s.room.temperature_c, start);
  out.hottest_c = detail::rest_of(hot, 1.27 * s.power_w_per_m2, s.cover_resistance, hot.room.temperature_c).heater_c;
  out.too_hot = *std::max_element(in.temperatures_c.begin(), in.temperatures_c.end()) > std::max(out.hottest_c, start + 5.0) + in.resolution_k;
  if (out.too_hot) out.decided = false;

  if (!out.decided) {
    // each explanation is taken for true in turn, at what the readings so far make of it; how probable would a further reading make it?
    constexpr std::size_t many = std::size(waits);
    constexpr double sides[] = {-1.0, 1.0};
    std::array<double, 6 * many> would{};
    for (std::size_t h = 0; h < 3; ++h) {
      if (out.probability[h] <= 0.01) continue;
      // what differs most within an explanation (the answer of a whole, the share of a part, the room) lies a standard deviation off
      const std::size_t widest = h == 0 ? 2 : h == 1 ? 4 : 1;
      values p = middle(h);
      double sd = 0.0;
      for (std::size_t k = 0; k < list[h].parameters.size(); ++k) {
        const auto is = engine.parameter_after(h, k);
        p[k] = is.mean;
        if (k == widest) sd = is.sd;
      }
      const double centre = p[widest];
      for (std::size_t k = 0; k < 2; ++k) {
        p[widest] = centre + sides[k] * sd;
        for (std::size_t w = 0; w < many; ++w) would[(2 * h + k) * many + w] = expected(h, n + w, p);
      }
    }
    double most = 0.0;
    for (std::size_t w = 0; w < many && readings.size() < job::most_readings; ++w) {
      double right = 0.0;
      for (std::size_t h = 0; h < 3; ++h) {
        if (out.probability[h] <= 0.01) continue;
        for (std::size_t k = 0; k < 2; ++k) {
          const double x = would[(2 * h + k) * many + w];
          auto more = readings;
          more.push_back(seen(n + w, in.resolution_k * static_cast<double>(static_cast<long long>(x / in.resolution_k + (x < 0.0 ? -0.5 : 0.5)))));
          right += 0.5 * out.probability[h] / listed * engine.explain(more).rows[h].posterior;
        }
      }
      if (right > most + 0.02) {
        most = right;
        out.next_s = waits[w];
        out.next_probability = right;
      }
      if (right >= warm_up_confidence) break;
    }
    if (is_nan(out.next_s)) out.next_s = waits[std::size(waits) - 1], out.next_probability = most;
  }
  return out;
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Water in the air of a wet room after a shower, and what a fan that blows into a cold roof void leaves there.
// Subject: air. Well-mixed balances in closed form; what is a bound and what is an estimate is said with each number.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>
#include "../text.hpp"
#include "moist_air.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

inline constexpr double vapour_gas_constant = 461.524;   ///< J/(kg·K)
inline constexpr double dry_air_gas_constant = 287.042;  ///< J/(kg·K)
inline constexpr double never_ends = __builtin_inf();
/// A shower evaporates about 2.6 kg/h; published figures spread by a factor of three.
inline constexpr double shower_low_kg_per_h = 1.5, shower_usual_kg_per_h = 2.6, shower_high_kg_per_h = 4.5;
inline constexpr source shower_source{"Sustainable solar housing design guide (IEA SHC)", "Table 10.1.1, 2500 g/h; other tables 1900 to 2800 g/h, single showers to 1.5 kg", "handbook"};

// ---- a wet room ----------------------------------------------------------------------------------------------------------

struct moisture_room {
  double volume_m3 = no_number;
  double flow_l_per_s = no_number;       ///< while the fan runs
  double background_l_per_s = 0.0;       ///< when it has stopped
  double overrun_min = never_ends;      ///< after the shower; without end: it is left on
  double mixing_factor = 1.0;            ///< 1: perfectly mixed; up to 10: that many times slower
  double room_c = 24.0;
  double incoming_c = 20.0, incoming_humidity_percent = 50.0;
  double shower_min = 10.0;
  double source_kg_per_h = shower_usual_kg_per_h, source_low_kg_per_h = shower_low_kg_per_h, source_high_kg_per_h = shower_high_kg_per_h;
  double wet_water_kg = 0.1;             ///< left on tiles and towels at the slow end of the band
  double clear_humidity_percent = 65.0;
  double clear_ratio = no_number;        ///< instead: the part of the excess at the end of the shower that may be left
  double surface_c = no_number;          ///< of the coldest surface: how long it is wet
};
/// One end of the band, or its middle.
struct moisture_course {
  double peak_humidity_percent = 0.0, end_dew_point_c = no_number;
  double condensed_kg = 0.0;                   ///< at the end of the shower, on walls and glass
  double time_to_clear_min = no_number;        ///< after the end of the shower; NaN: not within two days
  double surface_wet_min = no_number;          ///< that the dew point lies above the surface, from the beginning
};
struct moisture_moment {
  double minute;                     ///< from the beginning of the shower
  std::array<double, 3> humidity_percent, dew_point_c;  ///< low, usual, high
};
struct room_moisture_result {
  double air_changes_per_h = 0.0;
  double incoming_g_per_m3 = 0.0, saturated_g_per_m3 = 0.0;
  double excess_g_per_m3 = 0.0;      ///< at the end of the shower if nothing condensed: an upper bound for the air
  double overrun_ratio = no_number;  ///< part of the excess that the overrun takes away by air changes alone
  std::array<moisture_course, 3> course{};  ///< the least that can be expected, usual, the most
  std::vector<moisture_moment> series{};
};

namespace detail {
/// Vapour in the room air (kg/m³) and liquid water that may go back into it (kg).
struct moist_state {
  double vapour, water;
};
struct moist_balance {
  double volume, incoming, saturated;
  bool back;  ///< water on surfaces goes back into the air, which it keeps saturated until it is gone; else it has run off
  /// After `seconds` with a flow in m³/s and a source in kg/s.
  moist_state after(moist_state s, double flow, double source_kg_s, double seconds) const {
    for (int i = 0; i < 8 && seconds > 0.0; ++i) {
      if (back && s.water > 0.0 && s.vapour < saturated) {
        const double m = std::min(s.water, (saturated - s.vapour) * volume);
        s.water -= m;
        s.vapour += m / volume;
      }
      const double gain = source_kg_s - flow * (saturated - incoming);  // what condenses while the air is saturated
      if (s.vapour >= saturated * (1.0 - 1e-12)) {
        if (gain >= 0.0) {
          s.water += gain * seconds;
          return s;
        }
        if (back && s.water > 0.0) {
          const double step = std::min(seconds, s.water / -gain);
          s.water = step < seconds ? 0.0 : s.water + gain * step;
          seconds -= step;
          if (!(seconds > 0.0)) return s;
        }
      }
      if (flow > 0.0) {
        const double n = flow / volume, end = incoming + source_kg_s / flow;
        double step = seconds;
        bool fills = false;
        if (end > saturated && s.vapour < saturated * (1.0 - 1e-12)) {
          const double reached = std::log((end - s.vapour) / (end - saturated)) / n;
          if (reached < seconds) step = reached, fills = true;
        }
        s.vapour = fills ? saturated : end + (s.vapour - end) * std::exp(-n * step);
        seconds -= step;
      } else {
        const double rate = source_kg_s / volume;
        const double reached = rate > 0.0 ? std::max(0.0, (saturated - s.vapour) / rate) : seconds;
        const double step = std::min(seconds, reached);
        s.vapour = std::min(saturated, s.vapour + rate * step);
        seconds -= step;
        if (!(rate > 0.0)) return s;
      }
    }
    return s;
  }
};
}  // namespace detail

inline room_moisture_result room_moisture(const moisture_room& r) {
  const auto in = [](double x, double low, double high, const char* what) {
    if (!(x >= low && x <= high)) throw range_error("room_moisture: " + std::string(what) + " must be from " + number_text(low) + " to " + number_text(high));
  };
  in(r.volume_m3, 0.5, 1e6, "room_volume_m3");
  in(r.flow_l_per_s, 0.0, 1e6, "flow_l_per_s");
  in(r.background_l_per_s, 0.0, 1e6, "background_l_per_s");
  if (!(r.overrun_min >= 0.0)) throw range_error("room_moisture: overrun_min must be 0 or more");
  in(r.mixing_factor, 1.0, 10.0, "mixing_factor");
  in(r.room_c, 0.0, 60.0, "room_c");
  in(r.incoming_c, -40.0, 60.0, "incoming_c");
  in(r.incoming_humidity_percent, 0.0, 100.0, "incoming_humidity_percent");
  in(r.shower_min, 0.0, 1440.0, "shower_min");
  in(r.source_low_kg_per_h, 0.0, r.source_kg_per_h, "source_low_kg_per_h");
  in(r.source_high_kg_per_h, r.source_kg_per_h, 1000.0, "source_high_kg_per_h");
  in(r.wet_water_kg, 0.0, 100.0, "wet_water_kg");
  in(r.clear_humidity_percent, 1.0, 99.0, "clear_humidity_percent");
  if (!is_nan(r.clear_ratio)) in(r.clear_ratio, 1e-6, 0.999, "clear_ratio");
  if (!is_nan(r.surface_c)) in(r.surface_c, -40.0, 60.0, "surface_c");
  const double kelvins = r.room_c + 273.15, saturated_pa = call(saturation_pressure, r.room_c), incoming_pa = call(vapour_pressure, r.incoming_c, r.incoming_humidity_percent);
  const double density_of_1_pa = 1.0 / (vapour_gas_constant * kelvins);  // the vapour pressure of the air that comes in stays when it warms up
  const double saturated = saturated_pa * density_of_1_pa, incoming = std::min(incoming_pa * density_of_1_pa, saturated);
  const double fan = 1e-3 * r.flow_l_per_s / r.mixing_factor, background = 1e-3 * r.background_l_per_s / r.mixing_factor;
  const double shower = 60.0 * r.shower_min, overrun = 60.0 * r.overrun_min;
  room_moisture_result out;
  out.air_changes_per_h = 3.6 * r.flow_l_per_s / r.volume_m3;
  out.incoming_g_per_m3 = 1e3 * incoming;
  out.saturated_g_per_m3 = 1e3 * saturated;
  const double usual = r.source_kg_per_h / 3600.0;
  out.excess_g_per_m3 = 1e3 * (fan > 0.0 ? usual / fan * -std::expm1(-fan * shower / r.volume_m3) : usual * shower / r.volume_m3);
  if (is_finite(overrun)) out.overrun_ratio = -std::expm1(-fan * overrun / r.volume_m3);
  const double sources[] = {r.source_low_kg_per_h / 3600.0, usual, r.source_high_kg_per_h / 3600.0};
  const auto dew_of = [&](double vapour) {
    const double percent = std::clamp(100.0 * vapour / saturated, 1e-3, 100.0);
    return call(dew_point, r.room_c, percent);
  };
  // the course of one case: how the air is at a time from the beginning
  const auto at = [&](int which, double seconds) {
    const detail::moist_balance b{r.volume_m3, incoming, saturated, which > 0};
    detail::moist_state s{incoming, 0.0};
    s = b.after(s, fan, sources[which], std::min(seconds, shower));
    if (seconds <= shower) return s;
    if (which == 2) s.water += r.wet_water_kg;
    s = b.after(s, fan, 0.0, std::min(seconds - shower, overrun));
    if (seconds - shower > overrun) s = b.after(s, background, 0.0, seconds - shower - overrun);
    return s;
  };
  constexpr double horizon = 48.0 * 3600.0;
  for (int which = 0; which < 3; ++which) {
    auto& c = out.course[static_cast<std::size_t>(which)];
    const auto end = at(which, shower);
    c.peak_humidity_percent = 100.0 * end.vapour / saturated;
    c.end_dew_point_c = dew_of(end.vapour);
    c.condensed_kg = end.water;
    const double target = is_nan(r.clear_ratio) ? 0.01 * r.clear_humidity_percent * saturated : incoming + r.clear_ratio * (end.vapour - incoming);
    const auto first_below = [&](double limit, double from) {
      if (at(which, from + 1e-6).vapour <= limit) return from;
      double low = from, high = from + horizon;
      if (!(at(which, high).vapour <= limit)) return no_number;
      for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (low + high);
        (at(which, middle).vapour <= limit ? high : low) = middle;
      }
      return high;
    };
    c.time_to_clear_min = (first_below(target, shower) - shower) / 60.0;
    if (!is_nan(r.surface_c)) {
      const double wet = std::min(call(saturation_pressure, r.surface_c) * density_of_1_pa, saturated * (1.0 - 1e-9));
      if (incoming >= wet) {
        c.surface_wet_min = never_ends;
      } else if (end.vapour <= wet) {
        c.surface_wet_min = 0.0;
      } else {
        double low = 0.0, high = shower;
        for (int i = 0; i < 60; ++i) {
          const double middle = 0.5 * (low + high);
          (at(which, middle).vapour > wet ? high : low) = middle;
        }
        c.surface_wet_min = (first_below(wet, shower) - high) / 60.0;
      }
    }
  }
  double last = 0.0;
  for (const auto& c : out.course)
    if (is_finite(c.time_to_clear_min)) last = std::max(last, c.time_to_clear_min);
  const double until = r.shower_min + std::clamp(1.25 * last, 30.0, 480.0);
  for (int i = 0; i <= 60; ++i) {
    moisture_moment m{until * i / 60.0, {}, {}};
    for (int which = 0; which < 3; ++which) {
      const double vapour = at(which, 60.0 * m.minute).vapour;
      m.humidity_percent[static_cast<std::size_t>(which)] = 100.0 * vapour / saturated;
      m.dew_point_c[static_cast<std::size_t>(which)] = dew_of(vapour);
    }
    out.series.push_back(m);
  }
  return out;
}

// ---- a fan that blows into a roof void --------------------------------------------------------------------------------------

struct roof_void {
  double room_c = 22.0, room_humidity_percent = 90.0;  ///< of the air that the fan takes
  double flow_l_per_s = no_number;
  double surface_c = no_number;                        ///< of the coldest surface of the void
  double pressure_pa = 101325.0;
  double minutes_per_shower = 25.0, showers_per_day = 2.0;  ///< the fan runs, overrun included
  double void_flow_l_per_s = 0.0;                      ///< of the void's own ventilation; 0: closed
  double outdoor_c = no_number, outdoor_humidity_percent = 90.0;
};
struct roof_void_result {
  double dew_point_c = no_number;
  double dry_air_kg_per_h = 0.0;
  double water_kg_per_kg = 0.0;  ///< that each kilogram of dry air gives up on the way to the surface's temperature
  double upper_kg_per_h = 0.0, upper_kg_per_shower = 0.0, upper_kg_per_day = 0.0;  ///< bound: all air reaches the surface's temperature
  double estimate_kg_per_h = 0.0, estimate_kg_per_shower = 0.0, estimate_kg_per_day = 0.0;  ///< mixed with the void's own air first
  double drying_kg_per_day = 0.0;  ///< estimate: what the void's own air can take from wet surfaces while the fan is off
  bool gathers_by_bound = false, gathers_by_estimate = false;
};
/// Water vapour that the air holds at a temperature, to each kilogram of dry air.
inline double saturated_humidity_ratio(double temperature_c, double pressure_pa) { return call(humidity_ratio, call(saturation_pressure, temperature_c), pressure_pa); }

inline roof_void_result roof_void_condensation(const roof_void& v) {
  const auto in = [](double x, double low, double high, const char* what) {
    if (!(x >= low && x <= high)) throw range_error("roof_void_condensation: " + std::string(what) + " must be from " + number_text(low) + " to " + number_text(high));
  };
  in(v.room_c, 0.0, 60.0, "room_c");
  in(v.room_humidity_percent, 1.0, 100.0, "room_humidity_percent");
  in(v.flow_l_per_s, 0.0, 1e5, "flow_l_per_s");
  in(v.surface_c, -50.0, 60.0, "surface_c");
  in(v.pressure_pa, 5e4, 1.2e5, "pressure_pa");
  in(v.minutes_per_shower, 0.0, 1440.0, "minutes_per_shower");
  in(v.showers_per_day, 0.0, 100.0, "showers_per_day");
  in(v.void_flow_l_per_s, 0.0, 1e6, "void_flow_l_per_s");
  in(v.outdoor_humidity_percent, 0.0, 100.0, "outdoor_humidity_percent");
  const bool ventilated = v.void_flow_l_per_s > 0.0;
  if (ventilated) in(v.outdoor_c, -50.0, 60.0, "outdoor_c");
  if (v.minutes_per_shower * v.showers_per_day > 1440.0) throw range_error("roof_void_condensation: the fan would run more than a day in a day");
  const auto dry_air = [&](double litres, double t, double vapour_pa) { return 3.6 * litres * (v.pressure_pa - vapour_pa) / (dry_air_gas_constant * (t + 273.15)); };  // kg/h
  const double vapour = call(vapour_pressure, v.room_c, v.room_humidity_percent), w_room = call(humidity_ratio, vapour, v.pressure_pa);
  const double w_surface = saturated_humidity_ratio(v.surface_c, v.pressure_pa);
  roof_void_result r;
  r.dew_point_c = call(dew_point, v.room_c, v.room_humidity_percent);
  r.dry_air_kg_per_h = dry_air(v.flow_l_per_s, v.room_c, vapour);
  r.water_kg_per_kg = std::max(0.0, w_room - w_surface);
  r.upper_kg_per_h = r.dry_air_kg_per_h * r.water_kg_per_kg;
  const double hours = v.minutes_per_shower / 60.0;
  r.upper_kg_per_shower = r.upper_kg_per_h * hours;
  r.upper_kg_per_day = r.upper_kg_per_shower * v.showers_per_day;
  double own = 0.0, w_out = 0.0;
  if (ventilated) {
    const double outdoor = call(vapour_pressure, v.outdoor_c, v.outdoor_humidity_percent);
    own = dry_air(v.void_flow_l_per_s, v.outdoor_c, outdoor);
    w_out = call(humidity_ratio, outdoor, v.pressure_pa);
  }
  // both airs mixed, then all of it at the surface's temperature; never more than the bound
  r.estimate_kg_per_h = std::clamp(r.dry_air_kg_per_h * (w_room - w_surface) + own * (w_out - w_surface), 0.0, r.upper_kg_per_h);
  r.estimate_kg_per_shower = r.estimate_kg_per_h * hours;
  r.estimate_kg_per_day = r.estimate_kg_per_shower * v.showers_per_day;
  r.drying_kg_per_day = own * std::max(0.0, w_surface - w_out) * (24.0 - hours * v.showers_per_day);
  r.gathers_by_bound = r.upper_kg_per_day > r.drying_kg_per_day;
  r.gathers_by_estimate = r.estimate_kg_per_day > r.drying_kg_per_day;
  return r;
}

// ---- where to hold the anemometer -------------------------------------------------------------------------------------------

/// Points of a traverse as parts of the diameter or of the side, from one wall; symmetrical about the middle.
struct traverse_row {
  std::string_view shape, method;
  int count;
  std::array<double, 5> lower;  ///< up to the middle
};
inline constexpr traverse_row traverse_rows[] = {
    {"round", "log_tchebycheff", 6, {0.032, 0.135, 0.321}},
    {"round", "log_tchebycheff", 8, {0.021, 0.117, 0.184, 0.345}},
    {"round", "log_tchebycheff", 10, {0.019, 0.077, 0.153, 0.217, 0.361}},
    {"rectangular", "log_tchebycheff", 5, {0.074, 0.288, 0.5}},
    {"rectangular", "log_tchebycheff", 6, {0.061, 0.235, 0.437}},
    {"rectangular", "log_tchebycheff", 7, {0.053, 0.203, 0.366, 0.5}},
};
inline constexpr source traverse_source{"ISO 3966", "log-Tchebycheff positions; equal areas by their centres", "memory"};
inline std::vector<double> traverse_points(std::string_view shape, std::string_view method, int count) {
  if (count < 1 || count > 100) throw range_error("traverse_points: count must be from 1 to 100");
  std::vector<double> x(static_cast<std::size_t>(count));
  if (method == "equal_area") {
    if (shape == "round" && count % 2) throw range_error("traverse_points: a diameter has an even number of points");
    for (int i = 0; i < count; ++i) {
      const double k = count;
      if (shape == "rectangular") x[static_cast<std::size_t>(i)] = (i + 0.5) / k;
      else if (2 * i < count) x[static_cast<std::size_t>(i)] = 0.5 * (1.0 - std::sqrt((k - 2.0 * i - 1.0) / k));
      else x[static_cast<std::size_t>(i)] = 1.0 - x[static_cast<std::size_t>(count - 1 - i)];
    }
    if (shape == "round" || shape == "rectangular") return x;
  }
  for (const auto& r : traverse_rows) {
    if (r.shape != shape || r.method != method || r.count != count) continue;
    for (int i = 0; i < count; ++i) x[static_cast<std::size_t>(i)] = 2 * i < count ? r.lower[static_cast<std::size_t>(i)] : 1.0 - r.lower[static_cast<std::size_t>(count - 1 - i)];
    return x;
  }
  throw range_error("traverse_points: \"" + std::string(method) + "\" over a \"" + std::string(shape) + "\" duct with " + std::to_string(count) +
                    " points: \"log_tchebycheff\" has 6, 8 or 10 across a \"round\" and 5, 6 or 7 along each side of a \"rectangular\" one; \"equal_area\" any number");
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

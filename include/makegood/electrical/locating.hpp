// SPDX-License-Identifier: MIT
// Where a fault lies along a cable, by several methods at once: each with its doubt and its weakest link, and one joint estimate.
// And insulation of parallel parts: which of them leaks, and whether splitting them would help. Subject: electrical. Opt-in.
#pragma once
#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../job/scores.hpp"
#include "../measured.hpp"
#include "conductors.hpp"
#include "fault_location.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

// ---- one measurement -------------------------------------------------------------------------------------------------

/// One measurement by one method: its distance from the near end with every named error source, and the same with the sensitivities
/// that it would have if the fault lay elsewhere (a doubt of 1 % of the length is 1 % of where the fault is, not of what was read).
struct fault_measurement {
  std::string label;
  std::string method;
  measured distance{};
  std::function<measured(double)> at{};  ///< none: the sensitivities stay as they are
  double length_m = no_number;           ///< of the cable, where the method knows it
};

namespace detail {
/// A Murray loop with what spoils it: a contact at the faulty core's terminal and the link at the far end.
MAKEGOOD_ARGUMENTS(bridge_arguments, (sound_arm_ohm, faulty_arm_ohm, length_m, faulty_mohm_per_m, return_mohm_per_m, contact_ohm, link_ohm));
inline constexpr auto bridge = formula(
    out{"murray", "x", unit::metre, "Distance of an earth fault by a Murray loop with the resistances of contact and link."},
    in<bridge_arguments>(
        sound_arm_arg, faulty_arm_arg, cable_length_arg,
        arg{"faulty_mohm_per_m", "r_f", unit::milliohm_per_metre, positive_to(1e6), "resistance of one metre of the faulty core"}.usually(1, 40),
        arg{"return_mohm_per_m", "r_r", unit::milliohm_per_metre, between(0, 1e6), "resistance of one metre of the sound core; 0: both ends are at hand"}
            .usually(1, 40),
        arg{"contact_ohm", "R_c", unit::ohm, between(0, 1e6), "resistance of the contact and lead at the faulty core's near end"}.usually(0, 0.1),
        arg{"link_ohm", "R_k", unit::ohm, between(0, 1e6), "resistance of the link at the far end"}.usually(0, 0.1)),
    murray_source, [](auto sound, auto faulty, auto length, auto own, auto back, auto contact, auto link) {
      auto share = faulty / (sound + faulty);
      return share * (own + back) / own * length + (share * link - (1.0 - share) * contact) / milli(own);
    });

/// The measurement of a formula; argument `read` is the one that would have read otherwise if the fault lay elsewhere.
template <const auto& F, std::size_t n>
fault_measurement measurement_of(std::string label, std::string method, const std::array<measured, n>& x, std::size_t read) {
  static_assert(n == std::remove_cvref_t<decltype(F)>::count);
  const auto run = [](const std::array<measured, n>& all) {
    std::array<double, n> v{}, c{};
    for (std::size_t i = 0; i < n; ++i) v[i] = all[i].value;
    if (const fault bad = F.check(v.data())) F.refuse(bad, v.data());
    const double y = v1::detail::gradient(F, v.data(), c.data());
    if (!is_finite(y)) F.refuse({fault::what::no_result, -1}, v.data());
    return combine(y, c.data(), all.data(), n);
  };
  fault_measurement m{std::move(label), std::move(method), run(x), {}, no_number};
  m.at = [x, run, read, here = m.distance](double distance) {
    std::array<measured, n> moved = x;
    std::array<double, n> v{}, c{};
    for (int step = 0; step < 40; ++step) {
      for (std::size_t i = 0; i < n; ++i) v[i] = moved[i].value;
      if (F.check(v.data())) return here;  // no reading of this method belongs to that place
      const double y = v1::detail::gradient(F, v.data(), c.data());
      if (std::fabs(y - distance) <= 1e-9 * (1.0 + std::fabs(distance))) {
        measured r = run(moved);
        r.value = here.value;
        return r;
      }
      if (!(std::fabs(c[read]) > 0.0)) return here;
      moved[read].value += (distance - y) / c[read];
    }
    return here;
  };
  return m;
}
}  // namespace detail

/// What spoils a Murray loop; without doubt and 0 unless given. Contact and link need the resistance of a metre of core.
struct bridge_contacts {
  measured contact_ohm{0.0};
  measured link_ohm{0.0};
};
inline fault_measurement by_murray_unequal(std::string label, const measured& sound_arm_ohm, const measured& faulty_arm_ohm, const measured& length_m,
                                           const measured& faulty_mohm_per_m, const measured& return_mohm_per_m, const bridge_contacts& contacts = {}) {
  auto m = detail::measurement_of<detail::bridge>(
      std::move(label), "murray_unequal",
      std::array<measured, 7>{sound_arm_ohm, faulty_arm_ohm, length_m, faulty_mohm_per_m, return_mohm_per_m, contacts.contact_ohm, contacts.link_ohm}, 1);
  m.length_m = length_m.value;
  return m;
}
inline fault_measurement by_murray(std::string label, const measured& sound_arm_ohm, const measured& faulty_arm_ohm, const measured& length_m,
                                   const measured& core_mohm_per_m = 1.0, const bridge_contacts& contacts = {}) {
  auto m = by_murray_unequal(std::move(label), sound_arm_ohm, faulty_arm_ohm, length_m, core_mohm_per_m, core_mohm_per_m, contacts);
  m.method = "murray";
  return m;
}
/// An element of a heating mat, or any conductor, with both ends at hand: it is the loop itself. `contact` is at the end from which the
/// distance counts, `link` at the other.
inline fault_measurement by_murray_element(std::string label, const measured& sound_arm_ohm, const measured& faulty_arm_ohm, const measured& length_m,
                                           const measured& core_mohm_per_m = 1.0, const bridge_contacts& contacts = {}) {
  auto m = by_murray_unequal(std::move(label), sound_arm_ohm, faulty_arm_ohm, length_m, core_mohm_per_m, 0.0, contacts);
  m.method = "murray_element";
  return m;
}
inline fault_measurement by_varley(std::string label, const measured& earth_reading_ohm, const measured& loop_reading_ohm, const measured& length_m,
                                   const measured& lead_ohm = 0.0) {
  auto m = detail::measurement_of<varley_loop_distance>(std::move(label), "varley",
                                                        std::array<measured, 4>{earth_reading_ohm, loop_reading_ohm, length_m, lead_ohm}, 0);
  m.length_m = length_m.value;
  return m;
}
inline fault_measurement by_capacitance(std::string label, const measured& near_nf, const measured& far_nf, const measured& length_m) {
  auto m = detail::measurement_of<capacitance_break_distance>(std::move(label), "capacitance", std::array<measured, 3>{near_nf, far_nf, length_m}, 0);
  m.length_m = length_m.value;
  return m;
}
inline fault_measurement by_capacitance_sound_core(std::string label, const measured& broken_nf, const measured& sound_nf, const measured& length_m) {
  auto m = detail::measurement_of<capacitance_break_distance_sound_core>(std::move(label), "capacitance_sound_core",
                                                                         std::array<measured, 3>{broken_nf, sound_nf, length_m}, 0);
  m.length_m = length_m.value;
  return m;
}
/// Leads and contacts, and what the fault may have of its own, are taken off the reading.
inline fault_measurement by_resistance(std::string label, const measured& loop_reading_ohm, const measured& loop_mohm_per_m, const measured& lead_ohm = 0.0,
                                       const measured& fault_ohm = 0.0) {
  return detail::measurement_of<resistance_short_distance>(std::move(label), "resistance",
                                                           std::array<measured, 3>{loop_reading_ohm, loop_mohm_per_m, lead_ohm + fault_ohm}, 0);
}
inline fault_measurement by_resistance_both_ends(std::string label, const measured& near_reading_ohm, const measured& far_reading_ohm, const measured& length_m,
                                                 const measured& loop_mohm_per_m) {
  auto m = detail::measurement_of<resistance_short_distance_both_ends>(
      std::move(label), "resistance_both_ends", std::array<measured, 4>{near_reading_ohm, far_reading_ohm, length_m, loop_mohm_per_m}, 0);
  m.length_m = length_m.value;
  return m;
}
inline fault_measurement by_reflection(std::string label, const measured& round_trip_ns, const measured& velocity_factor) {
  return detail::measurement_of<reflection_distance>(std::move(label), "reflection", std::array<measured, 2>{velocity_factor, round_trip_ns}, 1);
}
/// A measurement that was taken from the far end, as a distance from the near one: the length less it.
inline fault_measurement from_far_end(fault_measurement m, const measured& length_m) {
  m.distance = length_m - m.distance;
  m.length_m = length_m.value;
  if (m.at)
    m.at = [inner = m.at, length_m](double distance) { return length_m - inner(length_m.value - distance); };
  return m;
}

/// A bridge finds the mean place of all leakage. Without that of the rest of the loop: the fault's own resistance to earth and that of the
/// rest, measured apart, and the centre of the rest (the far end for two equal cores, the middle for an element).
inline fault_measurement without_leakage(fault_measurement m, const measured& fault_mohm, const measured& rest_mohm, const measured& centre_m) {
  for (const auto* r : {&fault_mohm, &rest_mohm})
    if (!(r->value > 0.0) || !is_finite(r->value))
      throw range_error("locate_fault: \"" + m.label + "\": the insulation resistances of the fault and of the rest must be above 0 MΩ");
  const double k = fault_mohm.value / rest_mohm.value;
  const auto freed = [=](const measured& read, double where) {
    const measured x[] = {read, fault_mohm, rest_mohm, centre_m};
    const double away = (where - centre_m.value) * k, c[] = {1.0 + k, away / fault_mohm.value, -away / rest_mohm.value, -k};
    return combine((1.0 + k) * read.value - k * centre_m.value, c, x, 4);
  };
  const double read = m.distance.value;
  m.distance = freed(m.distance, read);
  if (m.at)
    m.at = [inner = m.at, freed, k, centre = centre_m.value](double distance) {
      const double where = (distance + k * centre) / (1.0 + k);
      return freed(inner(where), where);
    };
  return m;
}

// ---- all of them -------------------------------------------------------------------------------------------------------

/// A source's part in the doubt of a place: its standard uncertainty there, with sign, and its share of the variance.
struct source_share {
  std::string source;
  double effect_m = 0.0;
  double share = 0.0;
};
inline std::vector<source_share> shares_of(const measured& m) {
  std::vector<source_share> all;
  const double u = m.standard_uncertainty();
  for (const auto& p : m.parts)
    if (p.u != 0.0) all.push_back({p.source, p.u, p.u * p.u / (u * u)});
  std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.share > b.share; });
  return all;
}
/// One estimate out of several measurements, by generalised least squares.
struct joint_estimate {
  measured distance{};
  std::vector<double> weights{};
  double chi_square = 0.0;
  unsigned degrees_of_freedom = 0;
  double p_value = 1.0;  ///< of a χ² at least as large
};
struct search_range {
  double from_m, to_m;
  std::string why;
};
struct fault_place {
  std::vector<fault_measurement> measurements;
  joint_estimate all;                      ///< of every measurement, agreeing or not
  joint_estimate used;                     ///< of those that agree; of all where nothing disagrees
  bool consistent = true;                  ///< the test of all, at 5 %
  bool resolved = true;                    ///< consistent, or one measurement is named that disagrees
  std::vector<std::size_t> suspects{};     ///< measurements without which the rest agrees, the likeliest first
  std::vector<double> p_without{};         ///< p of the rest without each; empty for fewer than three
  std::vector<search_range> search{};      ///< 95 %, clipped to the cable; in this order
};

/// Generalised least squares of several measurements of one place. Sources of one name are common errors. The sensitivities are taken
/// where the estimate lies, not where each method says, so that a common doubt in proportion does not pull the estimate to the smaller.
inline joint_estimate joint_place(std::span<const fault_measurement> all) {
  const std::size_t n = all.size();
  if (n == 0) throw range_error("locate_fault: at least one measurement");
  joint_estimate r;
  std::vector<measured> here;
  for (const auto& m : all) here.push_back(m.distance);
  std::vector<double> lower(n * n), ones(n), values(n);
  const auto solve = [&](std::vector<double> b) {
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t k = 0; k < i; ++k) b[i] -= lower[i * n + k] * b[k];
      b[i] /= lower[i * n + i];
    }
    return b;
  };
  for (int round = 0; round < 6; ++round) {
    for (std::size_t i = 0; i < n; ++i) {
      if (!(here[i].standard_uncertainty() > 0.0))
        throw range_error("locate_fault: \"" + all[i].label +
                          "\" has no doubt at all: give its readings, the length or the velocity factor an uncertainty, or it would outweigh everything");
      for (std::size_t j = 0; j <= i; ++j) {
        double v = covariance(here[i], here[j]);
        for (std::size_t k = 0; k < j; ++k) v -= lower[i * n + k] * lower[j * n + k];
        if (i != j) {
          lower[i * n + j] = v / lower[j * n + j];
        } else if (const double own = covariance(here[i], here[i]); !(v > 1e-9 * own)) {
          throw range_error("locate_fault: \"" + all[i].label +
                            "\" shares every doubt with the measurements before it: it is no further measurement. Give it a reading of its own with an "
                            "uncertainty, or leave it out");
        } else {
          lower[i * n + i] = std::sqrt(v);
        }
      }
    }
    for (std::size_t i = 0; i < n; ++i) ones[i] = 1.0, values[i] = all[i].distance.value;
    const auto a = solve(ones), b = solve(values);
    double aa = 0.0, ab = 0.0;
    for (std::size_t i = 0; i < n; ++i) aa += a[i] * a[i], ab += a[i] * b[i];
    const double x = ab / aa;
    r.chi_square = 0.0;
    for (std::size_t i = 0; i < n; ++i) r.chi_square += square(b[i] - a[i] * x);
    r.weights = a;  // backwards: the second triangle
    for (std::size_t i = n; i-- > 0;) {
      for (std::size_t k = i + 1; k < n; ++k) r.weights[i] -= lower[k * n + i] * r.weights[k];
      r.weights[i] /= lower[i * n + i];
    }
    for (auto& w : r.weights) w /= aa;
    r.distance = combine(x, r.weights.data(), here.data(), n);
    if (n == 1) break;
    for (std::size_t i = 0; i < n; ++i)
      if (all[i].at) here[i] = all[i].at(x);
  }
  r.degrees_of_freedom = static_cast<unsigned>(n - 1);
  r.p_value = n > 1 ? job::chi_square_above(r.chi_square, r.degrees_of_freedom) : 1.0;
  return r;
}

/// Every method's place, the joint one, and where to look. Methods that disagree beyond chance (5 %) are named, not averaged.
inline fault_place locate_fault(std::vector<fault_measurement> all, double length_m = no_number) {
  constexpr double level = 0.05;
  if (all.size() > 100) throw range_error("locate_fault: at most 100 measurements");
  fault_place r;
  r.measurements = std::move(all);
  const auto& m = r.measurements;
  for (const auto& one : m)
    if (is_nan(length_m)) length_m = one.length_m;
  r.all = r.used = joint_place(m);
  r.consistent = r.all.p_value >= level;
  const auto range_of = [&](const measured& x, std::string why) {
    const double half = x.expanded_uncertainty(0.95);
    double from = x.value - half, to = x.value + half;
    if (from < 0.0) from = 0.0;
    if (!is_nan(length_m) && to > length_m) to = length_m;
    if (from > to) {  // the whole of it lies beyond an end
      from = to = x.value < 0.0 ? 0.0 : length_m;
      why += "; it lies beyond the end of the cable: look at this end, and doubt the method";
    }
    r.search.push_back({from, to, std::move(why)});
  };
  if (r.consistent) {
    range_of(r.all.distance, m.size() == 1 ? "one method alone, nothing confirms it" : "all methods together");
    return r;
  }
  if (m.size() > 2) {
    for (std::size_t i = 0; i < m.size(); ++i) {
      auto rest = m;
      rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(i));
      r.p_without.push_back(joint_place(rest).p_value);
      if (r.p_without[i] >= level) r.suspects.push_back(i);
    }
    std::stable_sort(r.suspects.begin(), r.suspects.end(), [&](std::size_t a, std::size_t b) { return r.p_without[a] > r.p_without[b]; });
  }
  r.resolved = r.suspects.size() == 1;
  if (r.resolved) {
    auto rest = m;
    rest.erase(rest.begin() + static_cast<std::ptrdiff_t>(r.suspects[0]));
    r.used = joint_place(rest);
    range_of(r.used.distance, "the methods that agree");
    range_of(m[r.suspects[0]].distance, "only if \"" + m[r.suspects[0]].label + "\" is right against the others, or there is a second fault");
  } else {
    for (const auto& one : m) range_of(one.distance, "\"" + one.label + "\" alone");
  }
  return r;
}

// ---- insulation of parallel parts --------------------------------------------------------------------------------------

/// The insulation resistance of one part; over range: at least this.
struct insulation_part {
  std::string name;
  double resistance_mohm = no_number;
  bool above = false;
};
struct parallel_insulation_result {
  double total_mohm = 0.0;        ///< with over-range parts taken at the end of the range: the least that it can be
  double total_at_most_mohm = 0.0;  ///< with over-range parts taken as perfect; infinite where all are over range
  std::vector<double> shares{};   ///< of the leakage, with over-range parts at the end of the range
  std::size_t dominant = 0;
  bool judged = false;            ///< against a limit
  bool whole_passes = false, whole_fails = false;  ///< neither: the over-range parts decide
  std::vector<std::size_t> failing{};              ///< parts below the limit by themselves
  bool splitting_helps = false;   ///< the whole fails or may fail, and no part fails alone
  std::vector<std::vector<std::size_t>> groups{};  ///< the fewest groups of which each keeps the limit; empty where there are none
  bool fewest_proved = true;
};
namespace detail {
/// The fewest groups whose leakages each stay within what is allowed: exact to 14 parts, then the largest first into the first that holds it.
inline std::vector<std::vector<std::size_t>> fewest_groups(const std::vector<double>& leak, double allowed, bool& proved) {
  const std::size_t n = leak.size();
  std::vector<std::vector<std::size_t>> groups;
  proved = n <= 14;
  if (!proved) {
    std::vector<std::size_t> order(n);
    for (std::size_t i = 0; i < n; ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return leak[a] > leak[b]; });
    std::vector<double> filled;
    for (const auto i : order) {
      std::size_t g = 0;
      while (g < filled.size() && !(filled[g] + leak[i] <= allowed)) ++g;
      if (g == filled.size()) filled.push_back(0.0), groups.emplace_back();
      filled[g] += leak[i];
      groups[g].push_back(i);
    }
    double sum = 0.0;
    for (const double l : leak) sum += l;
    proved = static_cast<double>(groups.size()) < sum / allowed + 1.0;  // fewer would leak more than they may
  } else {
    const std::size_t sets = std::size_t{1} << n;
    std::vector<double> sum(sets, 0.0);
    std::vector<unsigned char> least(sets, 255);
    std::vector<std::uint32_t> last(sets, 0);
    least[0] = 0;
    for (std::uint32_t s = 1; s < sets; ++s) {
      const int low = std::countr_zero(s);
      sum[s] = sum[s & (s - 1)] + leak[static_cast<std::size_t>(low)];
      for (std::uint32_t g = s; g; g = (g - 1) & s)  // the group that holds the lowest part
        if ((g >> low & 1u) && sum[g] <= allowed && least[s ^ g] + 1 < least[s]) least[s] = static_cast<unsigned char>(least[s ^ g] + 1), last[s] = g;
    }
    for (std::uint32_t s = static_cast<std::uint32_t>(sets - 1); s; s ^= last[s]) {
      groups.emplace_back();
      for (std::size_t i = 0; i < n; ++i)
        if (last[s] >> i & 1u) groups.back().push_back(i);
    }
  }
  for (auto& g : groups) std::sort(g.begin(), g.end());
  std::sort(groups.begin(), groups.end());
  return groups;
}
}  // namespace detail

inline parallel_insulation_result parallel_insulation(std::span<const insulation_part> parts, double limit_mohm = no_number) {
  constexpr std::string_view who = "parallel_insulation: ";
  if (parts.empty() || parts.size() > 1000) throw range_error(std::string(who) + "1 to 1000 parts");
  for (const auto& p : parts)
    if (!(p.resistance_mohm > 0.0 && p.resistance_mohm <= 1e9))
      throw range_error(std::string(who) + "\"" + p.name + "\" = " + number_text(p.resistance_mohm) +
                        " MΩ: above 0 to 1e9 MΩ; a reading of 0 is a short, look for it first");
  if (!is_nan(limit_mohm) && !(limit_mohm > 0.0 && limit_mohm <= 1e9)) throw range_error(std::string(who) + "limit_mohm: above 0 to 1e9 MΩ");
  parallel_insulation_result r;
  std::vector<double> leak;
  double most = 0.0, least = 0.0;
  for (const auto& p : parts) {
    leak.push_back(1.0 / p.resistance_mohm);
    most += leak.back();
    if (!p.above) least += leak.back();
  }
  r.total_mohm = 1.0 / most;
  r.total_at_most_mohm = least > 0.0 ? 1.0 / least : __builtin_inf();
  for (const double l : leak) r.shares.push_back(l / most);
  // an over-range part leaks less than its share says: it leads only where nothing else was read
  bool found = false;
  for (std::size_t i = 0; i < parts.size(); ++i)
    if ((!parts[i].above && (!found || leak[i] > leak[r.dominant])) || (i == 0)) {
      r.dominant = i;
      found = found || !parts[i].above;
    }
  if (is_nan(limit_mohm)) return r;
  r.judged = true;
  // the limit itself passes; a hair of rounding is not a failure
  const double allowed = 1.0 / limit_mohm * (1.0 + 1e-12);
  r.whole_passes = most <= allowed;
  r.whole_fails = least > allowed;
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (leak[i] > allowed) r.failing.push_back(i);  // an over-range part below the limit proves nothing: it counts as failing
  r.splitting_helps = !r.whole_passes && r.failing.empty();
  if (r.splitting_helps) r.groups = detail::fewest_groups(leak, allowed, r.fewest_proved);
  return r;
}

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Which of several outlets a fan should blow through: the flow of each with its doubt, the pressure of its run, whether the rate is met, what
// has to be insulated and what it costs. Subject: air. An option that ends in a void is listed with the rule on it, never ranked.
#pragma once
#include <algorithm>
#include <cmath>
#include <string>
#include <vector>
#include "fans.hpp"
#include "required.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

struct outlet_option {
  std::string name{};
  std::string discharge_to = "outside";  ///< a word of discharge_places
  std::vector<duct_segment> run{};
  double cold_void_m = no_number;        ///< of the duct that lies in the cold void; NaN: all of it, the upper bound
  double cost = no_number;               ///< without insulation, in the caller's currency
};
struct outlet_job {
  fan_curve fan{};
  double fan_outlet_pa_s2_per_l2 = 0.0;  ///< velocity pressure at the fan's outlet that a static curve leaves out
  double fan_percent = 10.0;             ///< limits of the fan's pressure against its curve
  air_state air{};
  double required_l_per_s = no_number;
  double insulation_cost_per_m = no_number;
  std::vector<outlet_option> options{};
};
struct outlet_result {
  std::size_t option = 0;
  bool ranked = false;
  verdict discharge{};                   ///< check_discharge_outside by the books named
  operating_result::state state = operating_result::state::found;
  double flow_l_per_s = no_number, standard_uncertainty_l_per_s = no_number, low_l_per_s = no_number, high_l_per_s = no_number;
  double run_pa = no_number, run_low_pa = no_number, run_high_pa = no_number;  ///< at the flow; where the curves do not meet, at the flow required
  double required_run_pa = no_number;    ///< what the run would take at the flow required
  double required_fan_pa = no_number;    ///< what the fan gives there; NaN: beyond its curve
  std::size_t worst = 0;
  double worst_share = 0.0;
  double probability = no_number;        ///< that the flow is at least the one required
  makegood::outcome outcome = makegood::outcome::undecided;
  double insulate_m = 0.0;
  bool insulate_assumed = false;
  double cost = no_number;               ///< with the insulation, where its price is given
  std::vector<std::string> cautions{};
};
struct outlet_results {
  std::vector<outlet_result> all{};      ///< the ranked ones first, best first; then those that are never suggested
  bool by_cost = false;                  ///< all ranked options have a cost
};

inline outlet_results outlet_options(const outlet_job& job, const rulebook& book) {
  const std::string who = "outlet_options: ";
  detail::must(!job.options.empty() && job.options.size() <= 100, who, "1 to 100 options");
  detail::must(job.required_l_per_s > 0.0 && job.required_l_per_s <= 1e5, who, "required_l_per_s must be above 0 and at most 100000 l/s");
  detail::must(job.fan_percent >= 0.0 && job.fan_percent <= 50.0, who, "fan_percent must be from 0 to 50 %");
  detail::must(is_nan(job.insulation_cost_per_m) || (job.insulation_cost_per_m >= 0.0 && job.insulation_cost_per_m <= 1e6), who, "insulation_cost_per_m must be from 0 to 1e6");
  outlet_results out;
  const decision_rule rule;
  for (std::size_t i = 0; i < job.options.size(); ++i) {
    const auto& o = job.options[i];
    const std::string at = who + "\"" + o.name + "\": ";
    detail::must(!o.run.empty(), at, "at least one segment");
    detail::must(is_nan(o.cost) || (o.cost >= 0.0 && o.cost <= 1e9), at, "cost must be from 0 to 1e9");
    const int place = discharge_places.find(o.discharge_to);
    if (place < 0) throw range_error(at + "discharge_to = \"" + o.discharge_to + "\" is not one of " + v1::detail::keys_text(discharge_places));
    outlet_result r;
    r.option = i;
    const given where[] = {std::string_view(o.discharge_to)};
    r.discharge = check_discharge_outside.judge(where, book);
    r.ranked = discharge_places.rows[static_cast<std::size_t>(place)].values[0] > 0.0 && r.discharge.outcome != outcome::fail;
    system_curve curve = curve_of_run(o.run, job.air), low = curve_of_run(o.run, job.air, -1), high = curve_of_run(o.run, job.air, 1);
    for (auto* c : {&curve, &low, &high}) c->quadratic -= job.fan_outlet_pa_s2_per_l2;
    operating_doubt doubt;
    doubt.fan_percent = job.fan_percent;
    doubt.system_percent = 0.0;
    auto point = operating_point(job.fan, curve, doubt);
    r.state = point.is;
    double looked_at = job.required_l_per_s;
    if (point.is == operating_result::state::found) {
      const double q = point.flow.value, p = curve(q);
      doubt.system_percent = p > 0.0 ? std::min(100.0, 50.0 * (high(q) - low(q)) / p) : 0.0;
      point = operating_point(job.fan, curve, doubt);
      r.flow_l_per_s = looked_at = q;
      r.standard_uncertainty_l_per_s = point.flow.standard_uncertainty();
      const double half = point.flow.expanded_uncertainty(0.95);
      r.low_l_per_s = std::max(0.0, q - half);
      r.high_l_per_s = q + half;
      const double z = (q - job.required_l_per_s) / r.standard_uncertainty_l_per_s;
      r.probability = r.standard_uncertainty_l_per_s > 0.0 ? 0.5 * std::erfc(-z * 0.70710678118654752) : q >= job.required_l_per_s ? 1.0 : 0.0;
      r.outcome = r.probability >= rule.accept ? outcome::pass : r.probability <= rule.reject ? outcome::fail : outcome::undecided;
    } else if (point.is == operating_result::state::below_first) {
      r.probability = 0.0;
      r.outcome = outcome::fail;
    }
    const auto run = duct_run(o.run, looked_at, job.air);
    r.run_pa = run.pressure_pa;
    r.run_low_pa = run.low_pa;
    r.run_high_pa = run.high_pa;
    r.worst = run.worst;
    r.worst_share = run.segments[run.worst].share;
    r.cautions = run.cautions;
    r.required_run_pa = curve_of_run(o.run, job.air)(job.required_l_per_s);
    const auto& fan = job.fan.pressure();
    if (job.required_l_per_s >= fan.first_flow() && job.required_l_per_s <= fan.last_flow()) r.required_fan_pa = fan.at(job.required_l_per_s).value;
    double length = 0.0;
    for (const auto& s : o.run)
      if (s.is != duct_segment::kind::fitting) length += s.length_m;
    r.insulate_assumed = is_nan(o.cold_void_m);
    r.insulate_m = r.insulate_assumed ? length : o.cold_void_m;
    detail::must(r.insulate_m >= 0.0 && r.insulate_m <= length * (1.0 + 1e-9), at, "cold_void_m = " + quantity_text(r.insulate_m, "m") + ": from 0 to the length of the ducts, " + quantity_text(length, "m"));
    r.cost = o.cost + (is_nan(job.insulation_cost_per_m) ? 0.0 : job.insulation_cost_per_m * r.insulate_m);
    out.all.push_back(std::move(r));
  }
  out.by_cost = std::all_of(out.all.begin(), out.all.end(), [](const outlet_result& r) { return !r.ranked || !is_nan(r.cost); });
  const auto order = [](outcome o) { return o == outcome::pass ? 0 : o == outcome::undecided ? 1 : 2; };
  std::stable_sort(out.all.begin(), out.all.end(), [&](const outlet_result& a, const outlet_result& b) {
    if (a.ranked != b.ranked) return a.ranked;
    if (!a.ranked) return false;
    if (order(a.outcome) != order(b.outcome)) return order(a.outcome) < order(b.outcome);
    if (out.by_cost && a.cost != b.cost) return a.cost < b.cost;
    const double qa = is_nan(a.flow_l_per_s) ? -1.0 : a.flow_l_per_s, qb = is_nan(b.flow_l_per_s) ? -1.0 : b.flow_l_per_s;
    return qa > qb;
  });
  return out;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

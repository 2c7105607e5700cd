// SPDX-License-Identifier: MIT
// Which of several options to take when the diagnosis is a set of probabilities: trees of attempts worked out exactly, what each leaves
// behind, regret, worst case, and what knowing would be worth. Danger is never a price: what may leave it is not permitted.
// Subject: price. Opt-in. Expected costs are statistics, in binary floating point; amounts to pay are exact money (quote.hpp).
#pragma once
#include <algorithm>
#include <cstdint>
#include <limits>
#include <numeric>
#include <optional>
#include <string>
#include <utility>
#include <vector>
#include "../job/scores.hpp"
#include "spread.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

struct hypothesis_row {
  std::string name{};
  double probability = 0.0;
  bool dangerous = false;
};
/// What can be done. The cost falls due whether it succeeds or not; money in major units.
struct option_row {
  std::string name{};
  spread cost{};
  std::vector<std::optional<double>> cost_under{};  ///< for each hypothesis, in place of `cost`
  double minutes = 0.0;
  std::vector<double> success{};       ///< for each hypothesis: probability that this cures it
  int next = -1;                       ///< the option after a failure; -1: none; cheapest_next: the best of those left
  double cost_uncured = 0.0;           ///< what follows when the fault stays
  std::vector<std::string> unproved{}; ///< what it leaves unproved
  bool isolates = false, secures = false, labels = false;
  double call_back_probability = 0.0, call_back_cost = 0.0;  ///< after a cure
  bool makes_safe_to_leave() const { return isolates && secures && labels; }
  static constexpr int cheapest_next = -2;
};
struct options_task {
  std::vector<option_row> options{};
  std::vector<hypothesis_row> hypotheses{};
  std::optional<double> budget{};
  double negligible = 0.0;  ///< a dangerous hypothesis that is no more likely than this counts as excluded; at most 0.001
  drawing draw{};
};

struct option_result {
  std::string name{};
  std::vector<std::size_t> plan{};     ///< this option and those after its failures
  bool permitted = true;
  std::vector<std::string> reasons{};  ///< why it is not
  double expected = 0.0;               ///< over hypotheses, failures, spreads and call-backs
  double expected_call_back = 0.0;     ///< of that, the risk of a second visit
  double expected_minutes = 0.0;
  double worst = 0.0, p10 = 0.0, p50 = 0.0, p90 = 0.0;
  double over_budget = no_number;
  double success = 0.0;                ///< of the first attempt
  double cured = 0.0;                  ///< by any of the plan
  double danger_left = 0.0;            ///< probability of a danger that is neither cured nor isolated, secured and labelled
  double pays_above = no_number;       ///< success of the attempt above which it beats its follower alone; exact where that costs the same under every hypothesis
  std::vector<std::string> unproved{};
  std::vector<double> cost{};          ///< expected, under each hypothesis
  std::vector<double> regret{};        ///< against the cheapest permitted, under each hypothesis
  double greatest_regret = no_number;
  int dominated_by = -1;
};
/// As one hypothesis becomes more or less likely, the others in proportion, another option becomes the cheapest here.
struct flip {
  std::size_t hypothesis = 0;
  double now = 0.0, at = 0.0;
  std::size_t from = 0, to = 0;
};
struct options_result {
  std::vector<option_result> options{};
  int cheapest = -1, least_regret = -1, least_worst = -1;  ///< among the permitted; -1: none is
  double evpi = no_number;                                 ///< what knowing the fault beforehand would be worth
  std::vector<flip> flips{};
  bool isolation_among_them = false;
};

namespace detail {

/// The end of a way through a plan.
struct leaf {
  double probability = 0.0;
  double fixed = 0.0;                   ///< certain part of the cost
  std::vector<std::size_t> steps{};     ///< the options tried
  std::size_t hypothesis = 0;
};

class weighing {
 public:
  explicit weighing(const options_task& task) : t_(task) { check(); }

  std::size_t count() const { return t_.options.size(); }
  double mean_cost(std::size_t o, std::size_t h) const {
    const auto& x = t_.options[o];
    return !x.cost_under.empty() && x.cost_under[h] ? *x.cost_under[h] : x.cost.mean();
  }
  /// The options one after the other, each after the failure of that before, for these weights of the hypotheses.
  std::vector<std::size_t> plan_of(std::size_t o, const std::vector<double>& weight, std::vector<bool> used) const {
    used[o] = true;
    std::vector<std::size_t> plan{o};
    const int next = t_.options[o].next;
    if (next == -1) return plan;
    std::vector<double> after(weight.size());
    double left = 0.0;
    for (std::size_t h = 0; h < weight.size(); ++h) left += after[h] = weight[h] * (1.0 - t_.options[o].success[h]);
    std::vector<std::size_t> rest;
    if (next >= 0) {
      rest = plan_of(static_cast<std::size_t>(next), after, used);
    } else if (left > 0.0) {
      double least = 0.0;
      bool least_leaves = true;
      for (std::size_t c = 0; c < count(); ++c) {
        if (used[c]) continue;
        const auto tried = plan_of(c, after, used);
        double sum = 0.0;
        for (std::size_t h = 0; h < after.size(); ++h) sum += after[h] * cost_of(tried, h);
        const bool leaves = !reasons_of(tried, after).empty();  // what is permitted goes before what is cheap
        if (rest.empty() || (least_leaves && !leaves) || (leaves == least_leaves && sum < least)) rest = tried, least = sum, least_leaves = leaves;
      }
    }
    plan.insert(plan.end(), rest.begin(), rest.end());
    return plan;
  }
  /// Expected cost of a plan under a hypothesis.
  double cost_of(const std::vector<std::size_t>& plan, std::size_t h) const {
    double reached = 1.0, sum = 0.0;
    for (const auto o : plan) {
      const auto& x = t_.options[o];
      sum += reached * (mean_cost(o, h) + x.success[h] * x.call_back_probability * x.call_back_cost);
      reached *= 1.0 - x.success[h];
    }
    return sum + reached * t_.options[plan.back()].cost_uncured;
  }
  double uncured(const std::vector<std::size_t>& plan, std::size_t h) const {
    double reached = 1.0;
    for (const auto o : plan) reached *= 1.0 - t_.options[o].success[h];
    return reached;
  }
  /// Why a plan is not permitted; empty: it is.
  std::vector<std::string> reasons_of(const std::vector<std::size_t>& plan, const std::vector<double>& weight) const {
    std::vector<std::string> why;
    const option_row& last = t_.options[plan.back()];
    const std::string missing = std::string(last.isolates ? "" : "isolated") + (last.isolates || last.secures ? "" : ", ") + (last.secures ? "" : "secured") +
                                ((last.isolates && last.secures) || last.labels ? "" : ", ") + (last.labels ? "" : "labelled");
    double all_weight = 0.0;
    for (const double w : weight) all_weight += w;
    for (std::size_t h = 0; h < weight.size(); ++h) {
      const double left = all_weight > 0.0 ? weight[h] / all_weight * uncured(plan, h) : 0.0;
      if (t_.hypotheses[h].dangerous && t_.hypotheses[h].probability > t_.negligible && left > 0.0 && !last.makes_safe_to_leave())
        why.push_back("with probability " + number_text(left, 3) + " it leaves \"" + t_.hypotheses[h].name + "\", a danger, not " + missing);
    }
    for (const auto o : plan)
      for (const auto& what : t_.options[o].unproved)
        if (!last.makes_safe_to_leave()) why.push_back("it leaves unproved: " + what + ", not " + missing);
    return why;
  }
  /// Every way through a plan: which hypothesis, how far, with a call-back or without.
  std::vector<leaf> leaves_of(const std::vector<std::size_t>& plan) const {
    std::vector<leaf> all;
    for (std::size_t h = 0; h < t_.hypotheses.size(); ++h) {
      double reached = t_.hypotheses[h].probability;
      leaf l;
      l.hypothesis = h;
      for (const auto o : plan) {
        const auto& x = t_.options[o];
        l.steps.push_back(o);
        for (const bool back : {false, true}) {
          leaf end = l;
          end.probability = reached * x.success[h] * (back ? x.call_back_probability : 1.0 - x.call_back_probability);
          end.fixed = back ? x.call_back_cost : 0.0;
          if (end.probability > 0.0) all.push_back(end);
        }
        reached *= 1.0 - x.success[h];
      }
      if (reached > 0.0) {
        l.probability = reached;
        l.fixed = t_.options[plan.back()].cost_uncured;
        all.push_back(l);
      }
    }
    return all;
  }
  bool spread_in(std::size_t o, std::size_t h) const {
    const auto& x = t_.options[o];
    return x.cost.kind() != spread_kind::none && !(!x.cost_under.empty() && x.cost_under[h]);
  }
  double most(const leaf& l) const {
    double sum = l.fixed;
    for (const auto o : l.steps) sum += spread_in(o, l.hypothesis) ? t_.options[o].cost.most() : mean_cost(o, l.hypothesis);
    return sum;
  }

 private:
  void check() const {
    const auto refuse = [](const std::string& why) { throw range_error("compare_options: " + why); };
    const std::size_t m = t_.hypotheses.size();
    if (t_.options.empty() || t_.options.size() > 64) refuse("options: 1 to 64 of them");
    if (m == 0 || m > 1000) refuse("probabilities: 1 to 1000 of them");
    double sum = 0.0;
    for (std::size_t h = 0; h < m; ++h) {
      const auto& x = t_.hypotheses[h];
      if (!(x.probability >= 0.0 && x.probability <= 1.0)) refuse("probabilities: \"" + x.name + "\" = " + number_text(x.probability) + " is not from 0 to 1");
      for (std::size_t k = 0; k < h; ++k)
        if (t_.hypotheses[k].name == x.name) refuse("probabilities: the name \"" + x.name + "\" stands twice");
      sum += x.probability;
    }
    if (!(fabs(sum - 1.0) <= 1e-6)) refuse("probabilities: they add up to " + number_text(sum) + ", not to 1: name what is left (\"none of these\")");
    if (!(t_.negligible >= 0.0 && t_.negligible <= 0.001)) refuse("negligible_probability = " + number_text(t_.negligible) + " is not from 0 to 0.001");
    if (t_.budget && !(is_finite(*t_.budget) && *t_.budget >= 0.0)) refuse("budget: must be 0 or more");
    std::size_t open = 0;
    for (std::size_t o = 0; o < t_.options.size(); ++o) {
      const auto& x = t_.options[o];
      const std::string at = "options[" + std::to_string(o) + "] \"" + x.name + "\": ";
      for (std::size_t k = 0; k < o; ++k)
        if (t_.options[k].name == x.name) refuse(at + "the name stands twice");
      if (x.success.size() != m || (!x.cost_under.empty() && x.cost_under.size() != m)) refuse(at + "one number for each hypothesis");
      for (const double s : x.success)
        if (!(s >= 0.0 && s <= 1.0)) refuse(at + "a probability of success is from 0 to 1, not " + number_text(s));
      if (!(x.minutes >= 0.0 && is_finite(x.minutes))) refuse(at + "minutes must be 0 or more");
      if (!(x.call_back_probability >= 0.0 && x.call_back_probability <= 1.0)) refuse(at + "call_back: a probability is from 0 to 1");
      if (!is_finite(x.call_back_cost) || !is_finite(x.cost_uncured) || !is_finite(x.cost.mean())) refuse(at + "the costs must be finite");
      open += x.next == option_row::cheapest_next;
      if (x.next >= static_cast<int>(t_.options.size())) refuse(at + "if_it_fails: no such option");
      std::size_t steps = 0;
      for (int next = x.next; next >= 0; next = t_.options[static_cast<std::size_t>(next)].next)
        if (++steps > t_.options.size() || static_cast<std::size_t>(next) == o) refuse(at + "if_it_fails leads back to itself");
    }
    if (open > 6) refuse("at most 6 options go on with \"cheapest\" when they fail");
  }
  const options_task& t_;
};

}  // namespace detail

/// Compares options. Among those that are permitted: the cheapest by expected cost, the one of least regret, the one of least worst case.
inline options_result compare_options(options_task task) {
  const detail::weighing w(task);
  double whole = 0.0;
  for (const auto& h : task.hypotheses) whole += h.probability;
  for (auto& h : task.hypotheses) h.probability /= whole;
  const std::size_t n = task.options.size(), m = task.hypotheses.size();
  std::vector<double> prior;
  for (const auto& h : task.hypotheses) prior.push_back(h.probability);
  options_result r;
  const random::schedule<std::uint64_t> key(task.draw.seed);
  for (std::size_t o = 0; o < n; ++o) {
    const option_row& row = task.options[o];
    option_result x;
    x.name = row.name;
    x.plan = w.plan_of(o, prior, std::vector<bool>(n, false));
    x.reasons = w.reasons_of(x.plan, prior);
    x.permitted = x.reasons.empty();
    r.isolation_among_them = r.isolation_among_them || row.makes_safe_to_leave();
    for (const auto step : x.plan) x.unproved.insert(x.unproved.end(), task.options[step].unproved.begin(), task.options[step].unproved.end());
    const bool safe_end = task.options[x.plan.back()].makes_safe_to_leave();
    double after = 0.0, follower = 0.0;
    for (std::size_t h = 0; h < m; ++h) {
      const double left = w.uncured(x.plan, h);
      x.cost.push_back(w.cost_of(x.plan, h));
      x.expected += prior[h] * x.cost[h];
      x.success += prior[h] * row.success[h];
      x.cured += prior[h] * (1.0 - left);
      if (task.hypotheses[h].dangerous && !safe_end) x.danger_left += prior[h] * left;
      double reached = prior[h];
      for (const auto step : x.plan) {
        const auto& s = task.options[step];
        x.expected_minutes += reached * s.minutes;
        x.expected_call_back += reached * s.success[h] * s.call_back_probability * s.call_back_cost;
        reached *= 1.0 - s.success[h];
      }
      if (x.plan.size() > 1) {
        const std::vector<std::size_t> rest(x.plan.begin() + 1, x.plan.end());
        follower += prior[h] * w.cost_of(rest, h);
        after += prior[h] * (w.mean_cost(o, h) + row.success[h] * row.call_back_probability * row.call_back_cost);
      }
    }
    if (x.plan.size() > 1 && follower > 0.0) x.pays_above = after / follower;

    auto leaves = w.leaves_of(x.plan);
    bool spread_somewhere = false;
    x.worst = -std::numeric_limits<double>::infinity();
    for (const auto& l : leaves) {
      x.worst = std::max(x.worst, w.most(l));
      for (const auto step : l.steps) spread_somewhere = spread_somewhere || w.spread_in(step, l.hypothesis);
    }
    if (!spread_somewhere) {  // finitely many ends: exact
      std::stable_sort(leaves.begin(), leaves.end(), [&](const auto& a, const auto& b) { return w.most(a) < w.most(b); });
      const auto quantile = [&](double share) {
        double sum = 0.0;
        for (const auto& l : leaves)
          if ((sum += l.probability) >= share * (1.0 - 1e-12)) return w.most(l);
        return w.most(leaves.back());
      };
      x.p10 = quantile(0.1), x.p50 = quantile(0.5), x.p90 = quantile(0.9);
      if (task.budget) {
        x.over_budget = 0.0;
        for (const auto& l : leaves)
          if (w.most(l) > *task.budget) x.over_budget += l.probability;
      }
    } else {
      if (task.draw.draws < 100 || task.draw.draws > 10000000) throw range_error("compare_options: draws: from 100 to 10000000");
      std::vector<double> end{0.0}, drawn(task.draw.draws);
      for (const auto& l : leaves) end.push_back(end.back() + l.probability);
      double over = 0.0;
      for (std::size_t d = 0; d < drawn.size(); ++d) {
        const double u = random::uniform<double>(random::draw<std::uint64_t>(d, 0, key).first) * end.back();
        const auto at = static_cast<std::size_t>(std::upper_bound(end.begin(), end.end(), u) - end.begin());
        const auto& l = leaves[std::min(at, leaves.size()) - 1];
        double sum = l.fixed;
        for (const auto step : l.steps)  // a duration drawn for an option is the same in every plan that uses it
          sum += w.spread_in(step, l.hypothesis) ? task.options[step].cost.drawn(random::draw<std::uint64_t>(d, static_cast<std::uint32_t>(step + 1), key)) : w.mean_cost(step, l.hypothesis);
        drawn[d] = sum;
        if (task.budget && sum > *task.budget) over += 1.0;
      }
      std::sort(drawn.begin(), drawn.end());
      x.p10 = at_share(drawn, 0.1), x.p50 = at_share(drawn, 0.5), x.p90 = at_share(drawn, 0.9);
      if (task.budget) x.over_budget = over / static_cast<double>(drawn.size());
    }
    r.options.push_back(std::move(x));
  }

  // ---- among the permitted ones
  std::vector<std::size_t> may;
  for (std::size_t o = 0; o < n; ++o)
    if (r.options[o].permitted) may.push_back(o);
  if (may.empty()) return r;
  std::vector<double> least(m, std::numeric_limits<double>::infinity());
  job::table_of_numbers costs;
  for (const auto o : may) {
    costs.push_back(r.options[o].cost);
    for (std::size_t h = 0; h < m; ++h) least[h] = std::min(least[h], r.options[o].cost[h]);
  }
  for (auto& x : r.options) {
    if (!x.permitted) continue;
    x.greatest_regret = 0.0;
    for (std::size_t h = 0; h < m; ++h) {
      x.regret.push_back(x.cost[h] - least[h]);
      if (prior[h] > 0.0) x.greatest_regret = std::max(x.greatest_regret, x.regret[h]);
    }
  }
  const auto first_least = [&](auto value) {
    std::size_t best = may.front();
    for (const auto o : may)
      if (value(r.options[o]) < value(r.options[best])) best = o;
    return static_cast<int>(best);
  };
  r.cheapest = first_least([](const option_result& x) { return x.expected; });
  r.least_regret = first_least([](const option_result& x) { return x.greatest_regret; });
  r.least_worst = first_least([](const option_result& x) { return x.worst; });
  const auto best = static_cast<std::size_t>(r.cheapest);
  r.evpi = 0.0;
  for (std::size_t h = 0; h < m; ++h) r.evpi += prior[h] * r.options[best].regret[h];
  for (const auto a : may)
    for (const auto b : may) {
      if (a == b || r.options[a].dominated_by >= 0) continue;
      bool nowhere_dearer = true, somewhere_cheaper = false;
      for (std::size_t h = 0; h < m; ++h) {
        nowhere_dearer = nowhere_dearer && r.options[b].cost[h] <= r.options[a].cost[h];
        somewhere_cheaper = somewhere_cheaper || r.options[b].cost[h] < r.options[a].cost[h];
      }
      if (nowhere_dearer && somewhere_cheaper) r.options[a].dominated_by = static_cast<int>(b);
    }
  // where the choice turns: expected costs are straight lines in the probability of one hypothesis, the others in proportion
  for (std::size_t h = 0; h < m; ++h) {
    if (prior[h] >= 1.0) continue;
    const auto without = [&](std::size_t o) { return (r.options[o].expected - prior[h] * r.options[o].cost[h]) / (1.0 - prior[h]); };
    flip up{h, prior[h], 2.0, best, best}, down{h, prior[h], -1.0, best, best};
    for (const auto o : may) {
      if (o == best) continue;
      const double at0 = without(o) - without(best), at1 = r.options[o].cost[h] - r.options[best].cost[h];
      if (at0 == at1) continue;
      const double p = at0 / (at0 - at1);
      if (!(p >= 0.0 && p <= 1.0)) continue;
      if (at1 < at0 && p >= prior[h] && p < up.at && at1 < 0.0) up.at = p, up.to = o;
      if (at0 < at1 && p <= prior[h] && p > down.at && at0 < 0.0) down.at = p, down.to = o;
    }
    if (down.to != best) r.flips.push_back(down);
    if (up.to != best) r.flips.push_back(up);
  }
  return r;
}

}  // namespace price
}  // namespace v1
}  // namespace makegood

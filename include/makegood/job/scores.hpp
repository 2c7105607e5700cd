// SPDX-License-Identifier: MIT
// Discrete probability for decisions: Bayes' rule over states, noisy-OR, entropy, order of repairs, value of information, and the scores
// that a set of stated probabilities is judged by.
// Job floor. Opt-in; includes the standard library only.
#pragma once
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <numeric>
#include <span>
#include <string>
#include <string_view>
#include <vector>
#include "../math.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// A table of numbers, row by row.
using table_of_numbers = std::vector<std::vector<double>>;

namespace detail {
inline void demand_score(bool good, std::string_view who, std::string_view what) {
  if (!good) throw range_error(std::string(who) + ": " + std::string(what));
}
inline void demand_probability(std::span<const double> p, std::string_view who, std::string_view what) {
  for (std::size_t i = 0; i < p.size(); ++i)
    if (!(p[i] >= 0.0 && p[i] <= 1.0)) throw range_error(std::string(who) + ": " + std::string(what) + "[" + std::to_string(i) + "] must be from 0 to 1");
}
inline void demand_distribution(std::span<const double> p, std::string_view who, std::string_view what) {
  demand_probability(p, who, what);
  demand_score(!p.empty(), who, std::string(what) + ": at least one state");
  demand_score(fabs(std::accumulate(p.begin(), p.end(), 0.0) - 1.0) <= 1e-9, who, std::string(what) + " must add up to 1");
}
inline void demand_rows(const table_of_numbers& t, std::size_t width, std::string_view who, std::string_view what) {
  demand_score(!t.empty(), who, std::string(what) + ": at least one row");
  for (const auto& row : t) {
    demand_score(row.size() == width, who, std::string(what) + ": each row holds one number for each state");
    for (const double x : row) demand_score(is_finite(x), who, std::string(what) + ": the numbers must be finite");
  }
}
}  // namespace detail

// ---- Bayes' rule ----------------------------------------------------------------------------------------------------

/// P(effect) with the causes of these probabilities present: 1 - (1 - leak) Π (1 - p_i).
inline double noisy_or(std::span<const double> present, double leak = 0.0) {
  detail::demand_probability(present, "noisy_or", "probabilities");
  detail::demand_probability({&leak, 1}, "noisy_or", "leak");
  double none = 1.0 - leak;
  for (const double p : present) none *= 1.0 - p;
  return 1.0 - none;
}
/// P(cause i | the effect is there, or is not) with independent causes of these priors, by all 2^n states; n up to 20.
inline std::vector<double> noisy_or_causes(std::span<const double> prior, std::span<const double> p, double leak = 0.0, bool effect = true) {
  detail::demand_probability(prior, "noisy_or_causes", "priors");
  detail::demand_probability(p, "noisy_or_causes", "probabilities");
  detail::demand_probability({&leak, 1}, "noisy_or_causes", "leak");
  detail::demand_score(prior.size() == p.size() && !p.empty() && p.size() <= 20, "noisy_or_causes", "one prior for each probability, 1 to 20 of them");
  std::vector<double> with(p.size(), 0.0);
  double sum = 0.0;
  for (std::size_t state = 0; state < (std::size_t{1} << p.size()); ++state) {
    double weight = 1.0, none = 1.0 - leak;
    for (std::size_t i = 0; i < p.size(); ++i) {
      const bool on = state >> i & 1u;
      weight *= on ? prior[i] : 1.0 - prior[i];
      if (on) none *= 1.0 - p[i];
    }
    weight *= effect ? 1.0 - none : none;
    sum += weight;
    for (std::size_t i = 0; i < p.size(); ++i)
      if (state >> i & 1u) with[i] += weight;
  }
  detail::demand_score(sum > 0.0, "noisy_or_causes", "what is seen cannot happen");
  for (auto& w : with) w /= sum;
  return with;
}
/// Odds form for two states: posterior odds = prior odds × product of the likelihood ratios of independent tests.
inline double naive_bayes(double prior, std::span<const double> likelihood_ratios) {
  detail::demand_probability({&prior, 1}, "naive_bayes", "prior");
  double log_ratio = 0.0;
  for (const double r : likelihood_ratios) {
    detail::demand_score(is_finite(r) && r >= 0.0, "naive_bayes", "a likelihood ratio must be a number from 0");
    log_ratio += log(r);
  }
  if (prior == 0.0 || prior == 1.0) return prior;
  return 1.0 / (1.0 + (1.0 - prior) / prior * exp(-log_ratio));
}
/// Exclusive states; one row of likelihoods for each observation, independent given the state.
struct states_after {
  std::vector<double> posterior;
  double probability = 0.0;  ///< of the observations: Σ prior × likelihood
};
inline states_after posterior_of_states(std::span<const double> prior, const table_of_numbers& likelihoods) {
  detail::demand_distribution(prior, "posterior_of_states", "prior");
  detail::demand_rows(likelihoods, prior.size(), "posterior_of_states", "likelihoods");
  states_after s{{prior.begin(), prior.end()}, 0.0};
  for (const auto& row : likelihoods)
    for (std::size_t i = 0; i < prior.size(); ++i) {
      detail::demand_score(row[i] >= 0.0, "posterior_of_states", "a likelihood must be from 0");
      s.posterior[i] *= row[i];
    }
  s.probability = std::accumulate(s.posterior.begin(), s.posterior.end(), 0.0);
  detail::demand_score(s.probability > 0.0, "posterior_of_states", "what is seen cannot happen in any state");
  for (auto& p : s.posterior) p /= s.probability;
  return s;
}

// ---- entropy and tests -------------------------------------------------------------------------------------------------

inline constexpr double nats_of_a_bit = 0.69314718055994530942;
/// -Σ p ln p; 0 ln 0 is 0.
inline double entropy_nats(std::span<const double> p) {
  detail::demand_distribution(p, "entropy", "probabilities");
  double sum = 0.0;
  for (const double x : p)
    if (x > 0.0) sum -= x * log(x);
  return sum;
}
inline double entropy_bits(std::span<const double> p) { return entropy_nats(p) / nats_of_a_bit; }
/// A test with outcomes o of P(o | state), one row an outcome: the entropy that is expected to be left, Σ P(o) H(state | o), in nats.
inline double expected_entropy_nats(std::span<const double> prior, const table_of_numbers& outcomes) {
  detail::demand_distribution(prior, "expected_entropy", "prior");
  detail::demand_rows(outcomes, prior.size(), "expected_entropy", "outcomes");
  for (std::size_t i = 0; i < prior.size(); ++i) {
    double sum = 0.0;
    for (const auto& o : outcomes) {
      detail::demand_probability({&o[i], 1}, "expected_entropy", "outcomes");
      sum += o[i];
    }
    detail::demand_score(fabs(sum - 1.0) <= 1e-9, "expected_entropy", "the outcomes of each state must add up to 1");
  }
  double left = 0.0;
  for (const auto& o : outcomes) {
    double p = 0.0, sum = 0.0;
    for (std::size_t i = 0; i < prior.size(); ++i) p += prior[i] * o[i];
    for (std::size_t i = 0; i < prior.size(); ++i)
      if (const double joint = prior[i] * o[i]; joint > 0.0) sum -= joint * log(joint / p);
    left += sum;
  }
  return left;
}
/// Expected fall of the entropy by a test (mutual information), in nats.
inline double information_gain_nats(std::span<const double> prior, const table_of_numbers& outcomes) {
  return entropy_nats(prior) - expected_entropy_nats(prior, outcomes);
}

// ---- acts ----------------------------------------------------------------------------------------------------------------

/// Order of repairs under a single fault, each action mending its own component: by p/C descending (Heckerman, Breese and Rommelse 1995).
inline std::vector<std::size_t> repair_order(std::span<const double> p, std::span<const double> cost) {
  detail::demand_probability(p, "repair_order", "probabilities");
  detail::demand_score(p.size() == cost.size() && !p.empty(), "repair_order", "one cost for each probability");
  for (const double c : cost) detail::demand_score(is_finite(c) && c > 0.0, "repair_order", "a cost must be above 0");
  std::vector<std::size_t> order(p.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return p[a] * cost[b] > p[b] * cost[a]; });
  return order;
}
/// Expected cost of repairs in an order: Σ C_i (1 - Σ_{j before i} p_j).
inline double repair_cost(std::span<const double> p, std::span<const double> cost, std::span<const std::size_t> order) {
  double left = 1.0, sum = 0.0;
  for (const auto i : order) {
    sum += cost[i] * left;
    left -= p[i];
  }
  return sum;
}
/// Costs of acts (rows) in states (columns).
struct value_of_information {
  std::size_t best_act = 0;
  double cost = 0.0;          ///< expected, of the best act as things stand
  double perfect_cost = 0.0;  ///< expected, when the state is known before the act: Σ p min cost
  double evpi = 0.0;          ///< cost - perfect_cost
  double evsi = 0.0;          ///< what a test is worth: cost - Σ_o min_act Σ_s P(o|s) p_s cost; 0 without a test
};
inline value_of_information information_value(std::span<const double> prior, const table_of_numbers& costs, const table_of_numbers& outcomes = {}) {
  constexpr std::string_view who = "value_of_information";
  detail::demand_distribution(prior, who, "prior");
  detail::demand_rows(costs, prior.size(), who, "costs");
  const auto cheapest = [&](auto weight, std::size_t& act) {
    double best = 0.0;
    for (std::size_t a = 0; a < costs.size(); ++a) {
      double sum = 0.0;
      for (std::size_t s = 0; s < prior.size(); ++s) sum += weight(s) * costs[a][s];
      if (a == 0 || sum < best) best = sum, act = a;
    }
    return best;
  };
  value_of_information v;
  std::size_t any = 0;
  v.cost = cheapest([&](std::size_t s) { return prior[s]; }, v.best_act);
  for (std::size_t s = 0; s < prior.size(); ++s) {
    double least = costs[0][s];
    for (const auto& act : costs) least = act[s] < least ? act[s] : least;
    v.perfect_cost += prior[s] * least;
  }
  v.evpi = v.cost - v.perfect_cost;
  if (outcomes.empty()) return v;
  (void)expected_entropy_nats(prior, outcomes);  // refuses what is no table of outcomes
  double after = 0.0;
  for (const auto& o : outcomes) after += cheapest([&](std::size_t s) { return o[s] * prior[s]; }, any);
  v.evsi = v.cost - after;
  if (v.evsi < 0.0 && v.evsi > -1e-12 * (1.0 + fabs(v.cost))) v.evsi = 0.0;  // rounding
  return v;
}

// ---- scores of stated probabilities ------------------------------------------------------------------------------------

/// Brier score of two classes, mean (p - y)², from 0 to 1.
inline double brier_score(std::span<const double> happened, std::span<const double> p) {
  detail::demand_probability(p, "brier_score", "probabilities");
  detail::demand_score(p.size() == happened.size() && !p.empty(), "brier_score", "one probability for each outcome");
  double sum = 0.0;
  for (std::size_t i = 0; i < p.size(); ++i) {
    detail::demand_score(happened[i] == 0.0 || happened[i] == 1.0, "brier_score", "an outcome is 0 or 1");
    sum += square(p[i] - happened[i]);
  }
  return sum / static_cast<double>(p.size());
}
/// Brier score of several classes, mean Σ_k (p_k - [k is the truth])², from 0 to 2; of two classes it is twice brier_score().
inline double brier_score_classes(std::span<const std::size_t> truth, const table_of_numbers& p) {
  detail::demand_score(truth.size() == p.size() && !p.empty(), "brier_score_classes", "one row of probabilities for each case");
  double sum = 0.0;
  for (std::size_t i = 0; i < p.size(); ++i) {
    detail::demand_distribution(p[i], "brier_score_classes", "probabilities");
    detail::demand_score(truth[i] < p[i].size(), "brier_score_classes", "the truth must be the index of a class");
    for (std::size_t k = 0; k < p[i].size(); ++k) sum += square(p[i][k] - (k == truth[i] ? 1.0 : 0.0));
  }
  return sum / static_cast<double>(p.size());
}
/// Mean -ln p of what happened; probabilities below 1e-12 count as 1e-12 and are counted.
struct log_score_result {
  double mean_nats = 0.0;
  std::size_t clipped = 0;
};
inline log_score_result log_score(std::span<const double> p_of_truth) {
  detail::demand_probability(p_of_truth, "log_score", "probabilities");
  detail::demand_score(!p_of_truth.empty(), "log_score", "at least one case");
  log_score_result r;
  for (const double p : p_of_truth) {
    if (p < 1e-12) ++r.clipped;
    r.mean_nats -= log(p < 1e-12 ? 1e-12 : p);
  }
  r.mean_nats /= static_cast<double>(p_of_truth.size());
  return r;
}
/// Bins of equal width over stated probabilities. ece: Σ count/n |mean stated - share that happened|.
struct reliability_bin {
  double low = 0.0, high = 0.0;
  std::size_t count = 0;
  double mean_stated = no_number, share_happened = no_number;
};
struct reliability_result {
  std::vector<reliability_bin> bins;
  double ece = 0.0;
};
inline reliability_result reliability(std::span<const double> happened, std::span<const double> p, std::size_t bins = 10) {
  (void)brier_score(happened, p);  // refuses what is no list of outcomes and probabilities
  detail::demand_score(bins >= 1 && bins <= 1000, "reliability", "bins: from 1 to 1000");
  reliability_result r;
  std::vector<double> stated(bins, 0.0), seen(bins, 0.0);
  r.bins.resize(bins);
  for (std::size_t i = 0; i < p.size(); ++i) {
    const std::size_t b = std::min(bins - 1, static_cast<std::size_t>(p[i] * static_cast<double>(bins)));
    ++r.bins[b].count;
    stated[b] += p[i];
    seen[b] += happened[i];
  }
  for (std::size_t b = 0; b < bins; ++b) {
    auto& bin = r.bins[b];
    bin.low = static_cast<double>(b) / static_cast<double>(bins);
    bin.high = static_cast<double>(b + 1) / static_cast<double>(bins);
    if (bin.count == 0) continue;
    const double n = static_cast<double>(bin.count);
    bin.mean_stated = stated[b] / n;
    bin.share_happened = seen[b] / n;
    r.ece += n / static_cast<double>(p.size()) * fabs(bin.mean_stated - bin.share_happened);
  }
  return r;
}

/// P(χ² > x) with nu degrees of freedom: the incomplete gamma function by its finite sums.
inline double chi_square_above(double x, unsigned nu) {
  detail::demand_score(is_finite(x) && x >= 0.0 && nu >= 1 && nu <= 1000, "chi_square_above", "x from 0, degrees of freedom from 1 to 1000");
  const double half = 0.5 * x;
  if (nu % 2 == 0) {  // e^-h Σ h^k / k!, k < nu/2
    double term = exp(-half), sum = term;
    for (unsigned k = 1; k < nu / 2; ++k) sum += term *= half / k;
    return sum;
  }
  double term = sqrt(half) * exp(-half) * 1.12837916709551257390, sum = 0.0;  // h^(1/2) / Γ(3/2)
  for (unsigned k = 1; k < nu / 2 + 1; ++k) {
    sum += term;
    term *= half / (k + 0.5);
  }
  return erfc(sqrt(half)) + sum;
}
/// x with P(χ² <= x) = p, by halving.
inline double chi_square_quantile(double p, unsigned nu) {
  detail::demand_score(p >= 0.0 && p < 1.0, "chi_square_quantile", "p: from 0 to below 1");
  double low = 0.0, high = 1.0;
  while (1.0 - chi_square_above(high, nu) < p && high < 1e9) high *= 2.0;
  for (int i = 0; i < 200 && high - low > 1e-14 * high; ++i) {
    const double middle = 0.5 * (low + high);
    (1.0 - chi_square_above(middle, nu) < p ? low : high) = middle;
  }
  return 0.5 * (low + high);
}
/// Whether counts are those of equally likely bins: χ² = Σ (n_i - m)²/m with m the mean, and P(χ² at least as large).
struct uniformity_result {
  double chi_square = 0.0, p_value = 1.0;
};
inline uniformity_result uniformity(std::span<const double> counts) {
  detail::demand_score(counts.size() >= 2, "uniformity", "at least two bins");
  double sum = 0.0;
  for (const double c : counts) {
    detail::demand_score(is_finite(c) && c >= 0.0, "uniformity", "a count is a number from 0");
    sum += c;
  }
  detail::demand_score(sum > 0.0, "uniformity", "nothing is counted");
  const double mean = sum / static_cast<double>(counts.size());
  uniformity_result r;
  for (const double c : counts) r.chi_square += square(c - mean) / mean;
  r.p_value = chi_square_above(r.chi_square, static_cast<unsigned>(counts.size() - 1));
  return r;
}

// ---- diagnoses from conflicts -------------------------------------------------------------------------------------------

/// Least sets of components that meet every conflict (de Kleer and Williams 1987); components are bits. The smaller sets first, then by
/// their components.
inline std::vector<std::uint32_t> minimal_diagnoses(std::span<const std::uint32_t> conflicts, unsigned components) {
  detail::demand_score(components >= 1 && components <= 20, "minimal_diagnoses", "1 to 20 components");
  std::vector<std::uint32_t> found;
  for (unsigned size = 0; size <= components; ++size)
    for (std::uint32_t set = 0; set < (1u << components); ++set) {
      if (static_cast<unsigned>(__builtin_popcount(set)) != size) continue;
      const bool hits = std::all_of(conflicts.begin(), conflicts.end(), [set](std::uint32_t c) { return (c & set) != 0; });
      const bool minimal = std::none_of(found.begin(), found.end(), [set](std::uint32_t f) { return (f & set) == f; });
      if (hits && minimal) found.push_back(set);
    }
  return found;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Models of diagnosis in the subject decision: probabilities of states, what a test is worth, scores of stated probabilities.
#include <makegood/job/scores.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace job = makegood::job;
using document::array;
using document::object;

job::table_of_numbers table_of(std::string_view model, std::string_view name, const document::value& v) {
  const auto* rows = v.as<array>();
  if (!rows) throw range_error(std::string(model) + ": \"" + std::string(name) + "\" must be a list of rows");
  job::table_of_numbers t;
  for (std::size_t i = 0; i < rows->size(); ++i) t.push_back(numbers_of(model, std::string(name) + "[" + std::to_string(i) + "]", (*rows)[i]));
  return t;
}
array list_of(const std::vector<double>& x) {
  array a;
  for (const double v : x) a.emplace_back(v);
  return a;
}
std::size_t whole_number(std::string_view model, std::string_view name, double x, double most) {
  if (!(x >= 0.0 && x <= most) || x != static_cast<double>(static_cast<long long>(x)))
    throw range_error(std::string(model) + ": " + std::string(name) + " = " + number_text(x) + ": a whole number from 0 to " + number_text(most));
  return static_cast<std::size_t>(x);
}
/// The fields of a model with lists in them.
struct lists : fields {
  lists(std::string_view model, const object& from) : fields(model, from), model_(model), from_(from) {}
  std::vector<double> numbers(std::string_view name) const { return numbers_of(model_, name, need(name)); }
  job::table_of_numbers table(std::string_view name) const { return table_of(model_, name, need(name)); }
  bool has(std::string_view name) const {
    const auto* v = from_.find(name);
    return v && !v->is_null();
  }

 private:
  std::string_view model_;
  const object& from_;
};

constexpr source russell_norvig{"Russell and Norvig, Artificial Intelligence: A Modern Approach", "probabilistic reasoning, noisy-OR"};
constexpr source bayes_rule{"Bayes' rule", "", "derived"};
constexpr source shannon{"C. E. Shannon, A Mathematical Theory of Communication (1948)", "entropy", "memory"};
constexpr source heckerman{"Heckerman, Breese and Rommelse, Decision-theoretic troubleshooting, CACM 38(3) 1995", "order by p/C under a single fault"};
constexpr source talts{"Talts et al., Validating Bayesian inference algorithms with simulation-based calibration, arXiv:1804.06788", "uniformity of ranks"};
constexpr source brier{"G. W. Brier, Monthly Weather Review 78 (1950) 1", "", "memory"};
constexpr source de_kleer{"de Kleer and Williams, Diagnosing multiple faults, Artificial Intelligence 32 (1987) 97", "minimal candidates"};
constexpr source raiffa{"Raiffa and Schlaifer, Applied Statistical Decision Theory (1961)", "expected value of information", "memory"};

constexpr model_argument noisy_or_arguments[] = {{"probabilities", "numbers", "of the effect by each cause that is present, each alone, 0 to 1"},
                                                 {"leak", "number", "probability of the effect without any of them, 0 to 1; 0", true}};
document::value run_noisy_or(const object& inputs, const rulebook&) {
  const lists in("noisy_or", inputs);
  in.only("probabilities", "leak");
  return object{{"probability", job::noisy_or(in.numbers("probabilities"), in.has("leak") ? in.number("leak") : 0.0)}};
}
constexpr model noisy_or{{"noisy_or", "Probability of a symptom that several causes can bring about, each on its own: 1 - (1 - leak) ∏(1 - p).", noisy_or_arguments,
                          russell_norvig, run_noisy_or, nullptr}};

constexpr model_argument noisy_or_causes_arguments[] = {{"priors", "numbers", "probability that each cause is present, independent, 0 to 1"},
                                                        {"probabilities", "numbers", "of the effect by each cause alone, 0 to 1"},
                                                        {"leak", "number", "probability of the effect without any of them, 0 to 1; 0", true}};
document::value run_noisy_or_causes(const object& inputs, const rulebook&) {
  const lists in("noisy_or_causes", inputs);
  in.only("priors", "probabilities", "leak");
  return object{{"posterior", list_of(job::noisy_or_causes(in.numbers("priors"), in.numbers("probabilities"), in.has("leak") ? in.number("leak") : 0.0))}};
}
constexpr model noisy_or_causes{{"noisy_or_causes", "Probability of each of several independent causes when their common symptom is there, by all states of them; at most 20 causes.",
                                 noisy_or_causes_arguments, bayes_rule, run_noisy_or_causes, nullptr}};

constexpr model_argument naive_bayes_arguments[] = {{"prior", "number", "probability before the tests, 0 to 1"},
                                                    {"likelihood_ratios", "numbers", "of each independent test: P(seen | true) / P(seen | not)"}};
document::value run_naive_bayes(const object& inputs, const rulebook&) {
  const lists in("naive_bayes", inputs);
  in.only("prior", "likelihood_ratios");
  return object{{"probability", job::naive_bayes(in.number("prior"), in.numbers("likelihood_ratios"))}};
}
constexpr model naive_bayes{{"naive_bayes", "Probability after independent tests of one question: prior odds times the likelihood ratios.", naive_bayes_arguments, bayes_rule,
                             run_naive_bayes, nullptr}};

constexpr model_argument posterior_arguments[] = {{"prior", "numbers", "probabilities of exclusive states, adding up to 1"},
                                                  {"likelihoods", "table", "one row for each observation: its probability or density in each state"}};
document::value run_posterior(const object& inputs, const rulebook&) {
  const lists in("posterior_of_states", inputs);
  in.only("prior", "likelihoods");
  const auto s = job::posterior_of_states(in.numbers("prior"), in.table("likelihoods"));
  return object{{"posterior", list_of(s.posterior)}, {"probability", s.probability}, {"entropy_bits", job::entropy_bits(s.posterior)}};
}
constexpr model posterior_of_states{{"posterior_of_states", "Probabilities of exclusive states after observations that are independent given the state.", posterior_arguments, bayes_rule,
                                     run_posterior, nullptr}};

constexpr model_argument entropy_arguments[] = {{"probabilities", "numbers", "of exclusive states, adding up to 1"}};
document::value run_entropy(const object& inputs, const rulebook&) {
  const lists in("entropy", inputs);
  in.only("probabilities");
  const auto p = in.numbers("probabilities");
  return object{{"bits", job::entropy_bits(p)}, {"nats", job::entropy_nats(p)}};
}
constexpr model entropy{{"entropy", "Entropy of a distribution over exclusive states, in bits and in nats; a state of probability 0 adds nothing.", entropy_arguments, shannon, run_entropy, nullptr}};

constexpr model_argument gain_arguments[] = {{"prior", "numbers", "probabilities of exclusive states, adding up to 1"},
                                             {"outcomes", "table", "one row for each outcome of the test: its probability in each state; each column adds up to 1"}};
document::value run_gain(const object& inputs, const rulebook&) {
  const lists in("information_gain", inputs);
  in.only("prior", "outcomes");
  const auto p = in.numbers("prior");
  const auto o = in.table("outcomes");
  const double left = job::expected_entropy_nats(p, o), gain = job::entropy_nats(p) - left;
  return object{{"bits", gain / job::nats_of_a_bit}, {"nats", gain}, {"expected_entropy_bits", left / job::nats_of_a_bit}};
}
constexpr model information_gain{{"information_gain", "By how much a test is expected to lower the entropy over exclusive states (mutual information).", gain_arguments, shannon, run_gain, nullptr}};

constexpr model_argument order_arguments[] = {{"probabilities", "numbers", "that each component is the single fault, 0 to 1"},
                                              {"costs", "numbers", "of looking at and mending each, above 0, in any one unit"}};
document::value run_order(const object& inputs, const rulebook&) {
  const lists in("repair_order", inputs);
  in.only("probabilities", "costs");
  const auto p = in.numbers("probabilities"), c = in.numbers("costs");
  const auto order = job::repair_order(p, c);
  array first;
  for (const auto i : order) first.emplace_back(i + 1);
  return object{{"order", first}, {"expected_cost", job::repair_cost(p, c, order)}};
}
constexpr model repair_order{{"repair_order", "In which order to look at components when one of them is the fault (numbered from 1), by probability over cost, and the expected cost.",
                              order_arguments, heckerman, run_order, nullptr}};

constexpr model_argument value_arguments[] = {{"prior", "numbers", "probabilities of exclusive states, adding up to 1"},
                                              {"costs", "table", "one row for each act: its cost in each state, in any one unit; a gain is negative"},
                                              {"outcomes", "table", "of a test, one row for each outcome: its probability in each state", true}};
document::value run_value(const object& inputs, const rulebook&) {
  const lists in("value_of_information", inputs);
  in.only("prior", "costs", "outcomes");
  const auto v = job::information_value(in.numbers("prior"), in.table("costs"), in.has("outcomes") ? in.table("outcomes") : job::table_of_numbers{});
  return object{{"best_act", v.best_act + 1}, {"expected_cost", v.cost}, {"expected_cost_if_known", v.perfect_cost}, {"evpi", v.evpi}, {"evsi", v.evsi}};
}
constexpr model value_of_information{{"value_of_information",
                                      "What it is worth to know the state before acting (evpi), and what a test is worth (evsi, without its price); acts are numbered from 1.",
                                      value_arguments, raiffa, run_value, nullptr}};

constexpr model_argument brier_arguments[] = {{"outcomes", "numbers", "1 where it happened, else 0"}, {"probabilities", "numbers", "stated, 0 to 1"}};
document::value run_brier(const object& inputs, const rulebook&) {
  const lists in("brier_score", inputs);
  in.only("outcomes", "probabilities");
  return object{{"score", job::brier_score(in.numbers("outcomes"), in.numbers("probabilities"))}};
}
constexpr model brier_score{{"brier_score", "Brier score of two classes, the mean of (p - y)²: from 0 (best) to 1.", brier_arguments, brier, run_brier, nullptr}};

constexpr model_argument brier_classes_arguments[] = {{"truth", "numbers", "index of the true class of each case, from 0"},
                                                      {"probabilities", "table", "one row for each case, one probability for each class, adding up to 1"}};
document::value run_brier_classes(const object& inputs, const rulebook&) {
  const lists in("brier_score_classes", inputs);
  in.only("truth", "probabilities");
  std::vector<std::size_t> truth;
  for (const double x : in.numbers("truth")) truth.push_back(whole_number("brier_score_classes", "truth", x, 1e6));
  return object{{"score", job::brier_score_classes(truth, in.table("probabilities"))}};
}
constexpr model brier_score_classes{{"brier_score_classes", "Brier score of several classes, the mean over cases of Σ(p_k - y_k)²: from 0 (best) to 2; of two classes twice brier_score.",
                                     brier_classes_arguments, brier, run_brier_classes, nullptr}};

constexpr model_argument log_score_arguments[] = {{"probabilities_of_truth", "numbers", "stated of what then was true, 0 to 1"}};
document::value run_log_score(const object& inputs, const rulebook&) {
  const lists in("log_score", inputs);
  in.only("probabilities_of_truth");
  const auto s = job::log_score(in.numbers("probabilities_of_truth"));
  return object{{"mean_nats", s.mean_nats}, {"clipped_count", s.clipped}};
}
constexpr model log_score{{"log_score", "Mean of -ln p of what was true, in nats; a probability below 1e-12 counts as 1e-12, and how many did is said.", log_score_arguments,
                           {"logarithmic score", "", "derived"}, run_log_score, nullptr}};

constexpr model_argument reliability_arguments[] = {{"outcomes", "numbers", "1 where it happened, else 0"},
                                                    {"probabilities", "numbers", "stated, 0 to 1"},
                                                    {"bins_count", "number", "bins of equal width, 1 to 1000; 10", true}};
document::value run_reliability(const object& inputs, const rulebook&) {
  const lists in("reliability", inputs);
  in.only("outcomes", "probabilities", "bins_count");
  const auto r = job::reliability(in.numbers("outcomes"), in.numbers("probabilities"),
                                  in.has("bins_count") ? whole_number("reliability", "bins_count", in.number("bins_count"), 1000.0) : 10);
  array bins;
  for (const auto& b : r.bins)
    bins.push_back(object{{"low", b.low}, {"high", b.high}, {"count", b.count}, {"mean_stated", document::number_or_null(b.mean_stated)},
                          {"share_happened", document::number_or_null(b.share_happened)}});
  return object{{"expected_calibration_error", r.ece}, {"bins", bins}};
}
constexpr model reliability{{"reliability", "Stated probabilities against what happened, in bins of equal width, and the expected calibration error.", reliability_arguments,
                             {"reliability diagram", "", "derived"}, run_reliability, nullptr}};

constexpr model_argument uniformity_arguments[] = {{"counts", "numbers", "of equally likely bins, at least two"}};
document::value run_uniformity(const object& inputs, const rulebook&) {
  const lists in("rank_uniformity", inputs);
  in.only("counts");
  const auto r = job::uniformity(in.numbers("counts"));
  return object{{"chi_square", r.chi_square}, {"p_value", r.p_value}};
}
constexpr model rank_uniformity{{"rank_uniformity", "Whether counts are those of equally likely bins (ranks of a simulation): χ² and the probability of one at least as large.",
                                 uniformity_arguments, talts, run_uniformity, nullptr}};

constexpr model_argument quantile_arguments[] = {{"p", "number", "probability, 0 to below 1"}, {"degrees_of_freedom", "number", "whole, 1 to 1000"}};
document::value run_quantile(const object& inputs, const rulebook&) {
  const lists in("chi_square_quantile", inputs);
  in.only("p", "degrees_of_freedom");
  const auto nu = whole_number("chi_square_quantile", "degrees_of_freedom", in.number("degrees_of_freedom"), 1000.0);
  return object{{"value", job::chi_square_quantile(in.number("p"), static_cast<unsigned>(nu))}};
}
constexpr model chi_square_quantile{{"chi_square_quantile", "The value that χ² stays below with a probability.", quantile_arguments, {"χ² distribution", "", "derived"}, run_quantile, nullptr}};

constexpr model_argument diagnoses_arguments[] = {{"conflicts", "names", "sets of components that cannot all be sound, by name; 1 to 20 components in all"}};
document::value run_diagnoses(const object& inputs, const rulebook&) {
  const lists in("minimal_diagnoses", inputs);
  in.only("conflicts");
  const auto* rows = in.need("conflicts").as<array>();
  if (!rows) throw range_error("minimal_diagnoses: \"conflicts\" must be a list of lists of names");
  std::vector<std::string> names;
  std::vector<std::vector<std::string>> sets;
  for (const auto& row : *rows) {
    const auto* list_ = row.as<array>();
    sets.emplace_back();
    for (std::size_t i = 0; list_ && i < list_->size(); ++i) {
      const auto* name = (*list_)[i].as<std::string>();
      if (!name) throw range_error("minimal_diagnoses: a component is a name");
      sets.back().push_back(*name);
      names.push_back(*name);
    }
    if (sets.back().empty()) throw range_error("minimal_diagnoses: a conflict is a list of one name or more");
  }
  std::sort(names.begin(), names.end());
  names.erase(std::unique(names.begin(), names.end()), names.end());
  if (names.empty() || names.size() > 20) throw range_error("minimal_diagnoses: 1 to 20 components");
  std::vector<std::uint32_t> conflicts;
  for (const auto& set : sets) {
    conflicts.push_back(0);
    for (const auto& name : set) conflicts.back() |= 1u << (std::lower_bound(names.begin(), names.end(), name) - names.begin());
  }
  array found;
  std::string text;
  for (const auto set : job::minimal_diagnoses(conflicts, static_cast<unsigned>(names.size()))) {
    array one;
    text += text.empty() ? "" : "|";
    for (std::size_t i = 0; i < names.size(); ++i)
      if (set >> i & 1u) {
        text += (one.empty() ? "" : "+") + names[i];
        one.emplace_back(names[i]);
      }
    found.push_back(one);
  }
  return object{{"diagnoses", found}, {"text", text}};
}
constexpr model minimal_diagnoses{{"minimal_diagnoses", "The least sets of faulty components that explain every conflict; the smaller first, then by name.", diagnoses_arguments, de_kleer,
                                   run_diagnoses, nullptr}};

}  // namespace

void diagnosis(std::vector<entry>& all) {
  append(all, "decision",
         list<noisy_or, noisy_or_causes, naive_bayes, posterior_of_states, entropy, information_gain, repair_order, value_of_information, brier_score, brier_score_classes, log_score,
              reliability, rank_uniformity, chi_square_quantile, minimal_diagnoses>{});
}
}  // namespace makegood::subjects

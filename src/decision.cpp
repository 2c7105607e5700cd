// SPDX-License-Identifier: MIT
// Models of decisions: probability of conformity, guard bands, global risks, and what an instrument's statement is worth.
#include <makegood/decision/list.hpp>
#include <array>
#include <cmath>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {

using namespace makegood::decision;

interval_of interval_from(const fields& in, std::string_view lower, std::string_view upper, std::string_view model) {
  interval_of i;
  if (in.has(lower)) i.lower = in.number(lower);
  if (in.has(upper)) i.upper = in.number(upper);
  if (!std::isfinite(i.lower) && !std::isfinite(i.upper)) throw range_error(std::string(model) + ": give \"" + std::string(lower) + "\", \"" + std::string(upper) + "\" or both");
  if (!(i.lower < i.upper)) throw range_error(std::string(model) + ": \"" + std::string(lower) + "\" must be below \"" + std::string(upper) + "\"");
  return i;
}
double uncertainty_from(const fields& in, std::string_view model, std::string_view name = "standard_uncertainty") {
  const double u = in.number(name);
  if (!(u >= 0.0) || !is_finite(u)) throw range_error(std::string(model) + ": \"" + std::string(name) + "\" must be 0 or more");
  return u;
}
document::value end_of(double x) { return std::isfinite(x) ? document::value(x) : document::value(nullptr); }
distribution prior_from(const document::value& v, std::string_view model) {
  const std::string where = std::string(model) + ", prior";
  const auto* o = v.as<document::object>();
  if (!o) throw range_error(where + ": an object with a \"kind\": \"normal\", \"gamma\", \"uniform\" or \"lognormal\"");
  const fields in(where, *o);
  const std::string& kind = in.text("kind");
  if (kind == "normal") {
    in.only("kind", "mean", "standard_deviation");
    return distribution::normal(in.number("mean"), in.number("standard_deviation"));
  }
  if (kind == "gamma") {
    in.only("kind", "shape", "rate");
    return distribution::gamma(in.number("shape"), in.number("rate"));
  }
  if (kind == "uniform") {
    in.only("kind", "lower", "upper");
    return distribution::uniform(in.number("lower"), in.number("upper"));
  }
  if (kind == "lognormal") {
    in.only("kind", "log_mean", "log_standard_deviation");
    return distribution::lognormal(in.number("log_mean"), in.number("log_standard_deviation"));
  }
  throw range_error(where + ": \"kind\" = \"" + kind + "\" is not one of \"normal\", \"gamma\", \"uniform\", \"lognormal\"");
}

constexpr std::string_view tolerance_text = "limit that the thing must keep; leave out: none on that side";
#define MAKEGOOD_LIMITS {"lower", "number", tolerance_text, true}, {"upper", "number", tolerance_text, true}
constexpr std::string_view u_text = "standard uncertainty of the measurement, in the unit of the limits";
constexpr std::string_view prior_text =
    "what is known of the things tested: \"kind\" with its parameters: \"normal\" (mean, standard_deviation), \"gamma\" (shape, rate), \"uniform\" (lower, upper) or "
    "\"lognormal\" (log_mean, log_standard_deviation)";

// ---- the item at hand ------------------------------------------------------------------------------------------------

constexpr model_argument conformity_arguments[] = {{"value", "number", "what was measured"}, {"standard_uncertainty", "number", u_text}, MAKEGOOD_LIMITS};
document::value run_conformity(const document::object& inputs, const rulebook&) {
  constexpr std::string_view name = "conformity_probability";
  const fields in(name, inputs);
  in.only("value", "standard_uncertainty", "lower", "upper");
  const double p = makegood::decision::conformity_probability(in.number("value"), uncertainty_from(in, name), interval_from(in, "lower", "upper", name));
  return document::object{{"probability", p}, {"specific_risk", 1.0 - p}};
}
constexpr model conformity_probability{{"conformity_probability", "The probability that a measured thing keeps its limits, and its complement, the specific risk.", conformity_arguments,
                                        {jcgm106.title, "7.3 and 7.4", "standard"}, run_conformity, nullptr}};

constexpr model_argument guard_band_arguments[] = {
    {"standard_uncertainty", "number", u_text},
    {"rule", "rule", "decision rule, such as \"iso14253\", \"ilac_g8\" or \"jcgm106:0.99\"", true},
    {"lower", "number", tolerance_text, true},
    {"upper", "number", tolerance_text, true}};
document::value run_guard_band(const document::object& inputs, const rulebook&) {
  constexpr std::string_view name = "guard_band";
  const fields in(name, inputs);
  in.only("standard_uncertainty", "rule", "lower", "upper");
  const double u = uncertainty_from(in, name);
  const decision_rule rule = in.has("rule") ? decision_rule(in.text("rule")) : decision_rule();
  const double factor = rule.by_probability() ? 0.5 * normal_quantile(rule.accept) : rule.accept;
  const double w = factor * 2.0 * u;
  document::object o{{"width", w}, {"width_over_expanded_uncertainty", factor}, {"worst_case_false_accept", normal_probability(-2.0 * factor)}, {"rule", rule.name()},
                     {"text", rule.text()}, {"source", std::string(rule.method->from.title) + ", " + std::string(rule.method->from.clause)}, {"grade", rule.method->from.grade}};
  o.set("acceptance_lower", in.has("lower") ? document::value(in.number("lower") + w) : document::value(nullptr));
  o.set("acceptance_upper", in.has("upper") ? document::value(in.number("upper") - w) : document::value(nullptr));
  return o;
}
constexpr model guard_band{{"guard_band", "The guard band of a decision rule, the acceptance limits, and the worst share of wrong acceptance (at the acceptance limit of one side).",
                            guard_band_arguments, {"ILAC-G8:09/2019", "4.2 and table of rules", "handbook"}, run_guard_band, nullptr}};

constexpr model_argument statement_arguments[] = {{"value", "number", "what was measured"},
                                                  {"standard_uncertainty", "number", u_text},
                                                  {"rule", "rule", "decision rule; default: pass at 95 %, fail at 5 %", true},
                                                  MAKEGOOD_LIMITS};
document::value run_statement(const document::object& inputs, const rulebook&) {
  constexpr std::string_view name = "conformity_statement";
  const fields in(name, inputs);
  in.only("value", "standard_uncertainty", "rule", "lower", "upper");
  const interval_of tolerance = interval_from(in, "lower", "upper", name);
  const double u = uncertainty_from(in, name), y = in.number("value");
  const decision_rule rule = in.has("rule") ? decision_rule(in.text("rule")) : decision_rule();
  v1::detail::circumstances<bool> is{};
  is.two_sided = std::isfinite(tolerance.lower) && std::isfinite(tolerance.upper);
  is.has_lower = std::isfinite(tolerance.lower);
  is.has_upper = std::isfinite(tolerance.upper);
  is.decide_by(rule);
  const auto j = v1::detail::decide(y, is.has_lower ? tolerance.lower : 0.0, is.has_upper ? tolerance.upper : 0.0, is, [u](bool, double& doubt, double& direction) {
    doubt = u;
    direction = 0.0;
  });
  const auto decided = static_cast<outcome>(static_cast<unsigned char>(j.outcome));
  const bool met = static_cast<outcome>(static_cast<unsigned char>(j.plain)) == outcome::pass;
  return document::object{{"outcome", outcome_text(decided)},
                          {"statement", decided != outcome::undecided ? outcome_text(decided) : std::string_view(met ? "conditional pass" : "conditional fail")},
                          {"plain", outcome_text(met ? outcome::pass : outcome::fail)},
                          {"margin", j.margin},
                          {"margin_over_expanded_uncertainty", u > 0.0 ? document::value(j.margin / (2.0 * u)) : document::value(nullptr)},
                          {"probability", j.probability},
                          {"rule", rule.name()}};
}
constexpr model conformity_statement{{"conformity_statement", "A value against its limits by a named decision rule, with the statement of a non-binary rule beside the three outcomes.",
                                      statement_arguments, {"ILAC-G8:09/2019", "4.2.3", "handbook"}, run_statement, nullptr}};

// ---- everything that is tested ---------------------------------------------------------------------------------------

document::object risks_of(const global_risks& r) {
  return {{"nonconforming", r.nonconforming}, {"conforming", 1.0 - r.nonconforming}, {"accepted", r.accepted}, {"consumer_risk", r.consumer}, {"producer_risk", r.producer},
          {"nonconforming_of_accepted", r.consumer_given_accepted}, {"converged", r.error < 1e-9}, {"quadrature_error", r.error}};
}
constexpr model_argument global_arguments[] = {{"prior", "object", prior_text},
                                               {"standard_uncertainty", "number", u_text},
                                               MAKEGOOD_LIMITS,
                                               {"acceptance_lower", "number", "end of the acceptance interval; default: the limit", true},
                                               {"acceptance_upper", "number", "end of the acceptance interval; default: the limit", true}};
document::value run_global(const document::object& inputs, const rulebook&) {
  constexpr std::string_view name = "global_risk";
  const fields in(name, inputs);
  in.only("prior", "standard_uncertainty", "lower", "upper", "acceptance_lower", "acceptance_upper");
  const interval_of tolerance = interval_from(in, "lower", "upper", name);
  interval_of accept = tolerance;
  if (in.has("acceptance_lower")) accept.lower = in.number("acceptance_lower");
  if (in.has("acceptance_upper")) accept.upper = in.number("acceptance_upper");
  return risks_of(makegood::decision::global_risk(prior_from(in.need("prior"), name), tolerance, accept, uncertainty_from(in, name)));
}
constexpr model global_risk{{"global_risk", "The consumer's and the producer's risk over everything that is tested, for an acceptance interval.", global_arguments,
                             {jcgm106.title, "9.5", "standard"}, run_global, nullptr}};

constexpr model_argument acceptance_arguments[] = {{"prior", "object", prior_text},
                                                   {"standard_uncertainty", "number", u_text},
                                                   {"consumer_risk", "number", "wanted share of all that is tested which is accepted and does not conform"},
                                                   MAKEGOOD_LIMITS};
document::value run_acceptance(const document::object& inputs, const rulebook&) {
  constexpr std::string_view name = "acceptance_limit";
  const fields in(name, inputs);
  in.only("prior", "standard_uncertainty", "consumer_risk", "lower", "upper");
  const double u = uncertainty_from(in, name);
  const auto a = makegood::decision::acceptance_limit(prior_from(in.need("prior"), name), interval_from(in, "lower", "upper", name), u, in.number("consumer_risk"));
  document::object o = risks_of(a.risks);
  o.set("lower", end_of(a.is.lower));
  o.set("upper", end_of(a.is.upper));
  o.set("guard_band", a.guard_band);
  o.set("guard_band_over_expanded_uncertainty", a.guard_band / (2.0 * u));
  return o;
}
constexpr model acceptance_limit{{"acceptance_limit", "The acceptance limits that keep a wanted consumer's risk.", acceptance_arguments, {jcgm106.title, "9.5.4", "standard"},
                                  run_acceptance, nullptr}};

// ---- instruments -----------------------------------------------------------------------------------------------------

/// Half-width (or expanded uncertainty) and standard uncertainty of a statement at a reading.
struct worth {
  double half_width = 0.0, standard_uncertainty = 0.0;
};
worth worth_of(const accuracy& a, double reading_) {
  worth w;
  double variance = 0.0;
  each_source(&a, {}, {}, reads::resistance, "reading", [&](std::string_view, bool, bool of_reading, double size) {
    const double u = of_reading ? size * std::fabs(reading_) : size;
    variance += u * u;
  });
  w.standard_uncertainty = std::sqrt(variance);
  w.half_width = a.percent / 100.0 * std::fabs(reading_) + a.counts * a.resolution + a.limit;
  return w;
}
constexpr model_argument instrument_arguments[] = {
    {"reading", "number", "what the display shows"},
    {"accuracy", "accuracy", "the statement: percent, counts, resolution, limit, standard_uncertainty, coverage_factor, leads_ohm, nulled ..."}};
document::value run_instrument(const document::object& inputs, const rulebook&) {
  const fields in("instrument_uncertainty", inputs);
  in.only("reading", "accuracy");
  const double x = in.number("reading");
  const accuracy a = accuracy_from(in.need("accuracy"));
  const worth w = worth_of(a, x);
  // one statement of error is one quantity: its parts add before the rectangle is taken; kept apart as sources they are never larger
  const double k = a.coverage_factor > 0.0 ? a.coverage_factor : 1.7320508075688772;
  return document::object{{"half_width", w.half_width},
                          {"counts", a.counts * a.resolution},
                          {"standard_uncertainty_as_one", w.half_width / k},
                          {"expanded_uncertainty_as_one", 2.0 * w.half_width / k},
                          {"standard_uncertainty", w.standard_uncertainty},
                          {"expanded_uncertainty", 2.0 * w.standard_uncertainty},
                          {"count_term_rules", a.counts > 0.0 && a.resolution > 0.0 && std::fabs(x) < 10.0 * a.resolution},
                          {"corrected", x - a.bias()}};
}
constexpr model instrument_uncertainty{{"instrument_uncertainty", "What the statement of an instrument is worth at a reading: half-width, and standard uncertainty with its parts as sources or as one.",
                                        instrument_arguments, {"JCGM 100:2008", "4.3.7", "standard"}, run_instrument, nullptr}};

constexpr model_argument operating_arguments[] = {{"intrinsic", "number", "intrinsic uncertainty A"},
                                                  {"variations", "list", "the variations E by position, supply, temperature, ..."},
                                                  {"edition", "number", "year of the edition of the instrument's standard; default 2019", true}};
document::value run_operating(const document::object& inputs, const rulebook&) {
  const fields in("operating_uncertainty", inputs);
  in.only("intrinsic", "variations", "edition");
  const auto* list = in.need("variations").as<document::array>();
  if (!list) throw range_error("operating_uncertainty: \"variations\" must be a list of numbers");
  double squares = 0.0;
  for (const auto& e : *list) {
    const auto* x = e.as<double>();
    if (!x) throw range_error("operating_uncertainty: \"variations\" must be a list of numbers");
    squares += *x * *x;
  }
  const double b = std::fabs(in.number("intrinsic")) + 1.15 * std::sqrt(squares);
  const bool expanded = in.number_or("edition", 2019.0) >= 2019.0;
  return document::object{{"operating_uncertainty", b}, {"standard_uncertainty", expanded ? b / 2.0 : b / 1.7320508075688772},
                          {"read_as", expanded ? "expanded uncertainty, coverage factor 2: u = B/2" : "limit of error: u = B/√3"}};
}
constexpr model operating_uncertainty_model{{"operating_uncertainty", "Operating uncertainty B = |A| + 1.15 √(ΣE²) of an instrument, and the standard uncertainty that its edition makes of it.",
                                             operating_arguments, {"IEC 61557-1:2019", "4.2, equation 1", "memory"}, run_operating, nullptr}};

constexpr model_argument operating_limit_arguments[] = {{"part", "number", "part of IEC 61557"}, {"reads", "text", "what is read; default: the first of the part", true}};
document::value run_operating_limit(const document::object& inputs, const rulebook&) {
  const fields in("operating_limit", inputs);
  in.only("part", "reads");
  for (const auto& l : operating_limits)
    if (l.part == in.number("part") && (!in.has("reads") || reads_of(in.text("reads")) == l.kind))
      return document::object{{"percent", l.percent}, {"of", l.of}, {"source", l.from.title}, {"clause", l.from.clause}, {"grade", l.from.grade}};
  throw range_error("operating_limit: no figure for that part of IEC 61557 (2 to 6 have one)");
}
constexpr model operating_limit_model{{"operating_limit", "The largest operating uncertainty that a part of IEC 61557 lets an instrument have; recalled, not read.",
                                       operating_limit_arguments, {"IEC 61557-2 to -6", "", "memory"}, run_operating_limit, nullptr}};

constexpr model_argument proving_arguments[] = {{"limit", "number", "the limit"},
                                                {"comparator", "text", "\"<=\": the thing must not exceed it; \">=\": it must reach it"},
                                                {"accuracy", "accuracy", "the statement of the instrument"},
                                                {"rule", "rule", "decision rule; default: pass at 95 %", true}};
document::value run_proving(const document::object& inputs, const rulebook&) {
  const fields in("proving_reading", inputs);
  in.only("limit", "comparator", "accuracy", "rule");
  const double limit = in.number("limit");
  const std::string& compare = in.text("comparator");
  const bool maximum = compare == "<=" || compare == "≤";
  if (!maximum && compare != ">=" && compare != "≥") throw range_error("proving_reading: \"comparator\" is \"<=\" or \">=\"");
  if (!(limit > 0.0) || !is_finite(limit)) throw range_error("proving_reading: the limit must be above 0");
  const accuracy a = accuracy_from(in.need("accuracy"));
  const decision_rule rule = in.has("rule") ? decision_rule(in.text("rule")) : decision_rule();
  const double factor = rule.by_probability() ? normal_quantile(rule.accept) : 2.0 * rule.accept;
  const auto proves = [&](double x) {
    const double value = x - a.bias(), w = factor * worth_of(a, value).standard_uncertainty;
    return maximum ? limit - value >= w : value - limit >= w;
  };
  double good = maximum ? 0.0 : limit * 1e6, bad = maximum ? limit * 1e3 : 0.0;
  if (!proves(good)) throw range_error("proving_reading: no reading of such an instrument proves this limit");
  for (int i = 0; i < 200; ++i) {
    const double middle = 0.5 * (good + bad);
    if (middle == good || middle == bad) break;
    (proves(middle) ? good : bad) = middle;
  }
  return document::object{{"reading", good}, {"of_the_limit", good / limit}, {"rule", rule.name()}};
}
constexpr model proving_reading{{"proving_reading", "The last reading that proves a limit: the largest below a maximum, the smallest above a minimum.", proving_arguments,
                                 {jcgm106.title, "8.3", "standard"}, run_proving, nullptr}};

}  // namespace

void decision(std::vector<entry>& all) {
  append(all, "decision", list<conformity_probability, guard_band, conformity_statement, global_risk, acceptance_limit, instrument_uncertainty, operating_uncertainty_model,
                               operating_limit_model, proving_reading>{});
}
}  // namespace makegood::subjects

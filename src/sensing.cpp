// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <makegood/sensing/fit.hpp>
#include <makegood/sensing/identify.hpp>
#include <makegood/sensing/list.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using makegood::sensing::curve;

constexpr model_argument fit_arguments[] = {{"points", "list", "points [temperature_c, resistance_ohm], at least three"}};
document::value run_fit(const document::object& inputs, const rulebook&) {
  const fields in("fit_steinhart_hart", inputs);
  in.only("points");
  const auto* list_ = in.need("points").as<document::array>();
  if (!list_) throw range_error("fit_steinhart_hart: \"points\" must be a list of [temperature_c, resistance_ohm]");
  std::vector<makegood::sensing::point> points;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* pair = (*list_)[i].as<document::array>();
    const auto* t = pair && pair->size() == 2 ? (*pair)[0].as<double>() : nullptr;
    const auto* r = pair && pair->size() == 2 ? (*pair)[1].as<double>() : nullptr;
    if (!t || !r) throw range_error("fit_steinhart_hart: points[" + std::to_string(i) + "] must be [temperature_c, resistance_ohm]");
    points.push_back({*t, *r});
  }
  const auto fit = makegood::sensing::fit_steinhart_hart(points);
  document::array covariance;
  for (const auto& row : fit.covariance) {
    document::array line;
    for (const double x : row) line.push_back(document::number_or_null(x));
    covariance.push_back(line);
  }
  return document::object{{"a", fit.a}, {"b", fit.b}, {"c", fit.c}, {"covariance", covariance}, {"residual_k", fit.residual_k}};
}
constexpr model fit_steinhart_hart{
    {"fit_steinhart_hart",
     "Steinhart-Hart coefficients (1/K, resistance in ohms) from three points (exact) or more (least squares of 1/T), with covariance; three points leave "
     "no scatter, so their covariance is null.",
     fit_arguments, makegood::sensing::steinhart_hart_1968, run_fit, nullptr}};

curve curve_from(std::string_view model, const document::value& v, std::initializer_list<std::string_view> beside = {}) {
  const auto* o = v.as<document::object>();
  const std::string who(model);
  if (!o) throw range_error(who + ": \"curve\" must be an object with a \"kind\"");
  document::object own;  // the curve's own fields
  for (const auto& f : o->fields)
    if (std::find(beside.begin(), beside.end(), f.first) == beside.end()) own.fields.push_back(f);
  const std::string part = who + ", curve";
  const fields in(part, own);
  const std::string& kind = in.text("kind");
  if (kind == "ntc") {
    in.only("kind", "reference_ohm", "reference_c", "beta_k");
    return makegood::sensing::ntc_curve{in.number("reference_ohm"), in.number("reference_c"), in.number("beta_k")};
  }
  if (kind == "steinhart_hart") {
    in.only("kind", "a", "b", "c");
    return makegood::sensing::steinhart_hart_curve{in.number("a"), in.number("b"), in.number("c")};
  }
  if (kind == "rtd") {
    in.only("kind", "r0_ohm");
    return makegood::sensing::rtd_curve{in.number("r0_ohm")};
  }
  if (kind == "silicon_ptc") {
    in.only("kind", "reference_ohm", "a_per_k", "b_per_k2");
    makegood::sensing::silicon_ptc_curve silicon{in.number("reference_ohm")};
    silicon.a_per_k = in.number_or("a_per_k", silicon.a_per_k);
    silicon.b_per_k2 = in.number_or("b_per_k2", silicon.b_per_k2);
    return silicon;
  }
  throw range_error(who + ": curve: \"kind\" = \"" + kind + "\" is not one of \"ntc\", \"steinhart_hart\", \"rtd\", \"silicon_ptc\"");
}
constexpr model_argument check_sensor_arguments[] = {
    {"resistance_ohm", "reading", "resistance of the sensor"},
    {"temperature_c", "reading", "temperature at the sensor"},
    {"curve", "object",
     "\"kind\" and its constants: \"ntc\" (reference_ohm, reference_c, beta_k), \"steinhart_hart\" (a, b, c), \"rtd\" (r0_ohm) or \"silicon_ptc\" (reference_ohm)"},
    {"rule", "rule", "decision rule, such as \"iso14253\" or \"jcgm106:0.99\"; default: pass at 95 %, fail at 5 %", true}};
verdict judge_sensor(const document::object& inputs, const rulebook&) {
  const fields in("check_sensor", inputs);
  in.only("resistance_ohm", "temperature_c", "curve", "rule");
  return makegood::sensing::check_sensor(reading_from(in.need("resistance_ohm")), reading_from(in.need("temperature_c")), curve_from("check_sensor", in.need("curve")),
                                          in.has("rule") ? decision_rule(in.text("rule")) : decision_rule());
}
constexpr model check_sensor{{"check_sensor", "Resistance of a sensor against its curve at the temperature it should have, for every kind of curve.", check_sensor_arguments,
                              makegood::sensing::sensor_band_practice, nullptr, judge_sensor}};

// ---- a curve against its points ---------------------------------------------------------------------------------------

using document::array;
using document::object;

/// Points [temperature_c, resistance_ohm] of a field.
std::vector<std::array<double, 2>> pairs_of(std::string_view model, const document::value& v) {
  const auto* list_ = v.as<array>();
  if (!list_) throw range_error(std::string(model) + ": \"points\" must be a list of [temperature_c, resistance_ohm]");
  std::vector<std::array<double, 2>> points;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto pair = numbers_of(model, "points[" + std::to_string(i) + "]", (*list_)[i]);
    if (pair.size() != 2) throw range_error(std::string(model) + ": points[" + std::to_string(i) + "] must be [temperature_c, resistance_ohm]");
    if (!(pair[0] > -273.15 && pair[0] <= 1000.0))
      throw range_error(std::string(model) + ": points[" + std::to_string(i) + "]: temperature_c: " + number_text(pair[0]) + " °C: above absolute zero, -273.15 °C, to 1000 °C");
    if (!(pair[1] > 0.0 && pair[1] <= 1e9)) throw range_error(std::string(model) + ": points[" + std::to_string(i) + "]: resistance_ohm: " + number_text(pair[1]) + " Ω: above 0 to 1e9 Ω");
    points.push_back({pair[0], pair[1]});
  }
  return points;
}
constexpr std::string_view curve_kinds_text =
    "\"kind\" and its constants: \"ntc\" (reference_ohm, reference_c, beta_k), \"steinhart_hart\" (a, b, c), \"rtd\" (r0_ohm) or \"silicon_ptc\" (reference_ohm)";
constexpr model_argument curve_points_arguments[] = {{"curve", "object", curve_kinds_text},
                                                     {"points", "list", "points [temperature_c, resistance_ohm] that the curve should go through"},
                                                     {"tolerance_k", "number", "how far a point may lie from the curve; 0.5 K", true}};
document::value run_curve_points(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "curve_against_points";
  const fields in(who, inputs);
  in.only("curve", "points", "tolerance_k");
  const auto c = curve_from(who, in.need("curve"));
  const auto points = pairs_of(who, in.need("points"));
  const double allowed = in.number_or("tolerance_k", 0.5);
  if (!(allowed > 0.0 && allowed <= 100.0)) throw range_error("curve_against_points: tolerance_k: above 0 to 100 K");
  const auto m = makegood::sensing::curve_against_points(c, points);
  array misses, text;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double miss = i < m.miss_k.size() ? m.miss_k[i] : no_number;
    misses.push_back(document::number_or_null(miss));
    if (!(std::fabs(miss) <= allowed))
      text.push_back("At " + number_text(points[i][0]) + " °C the curve " +
                     (is_finite(miss) ? "is off by " + number_text(std::round(1000.0 * miss) / 1000.0) + " K." : std::string("has no temperature for this resistance.")));
  }
  if (!m.steady) text.push_back("The curve does not rise or fall steadily from -20 to 80 °C: these numbers are no sensor for rooms and floors.");
  return object{{"holds", m.steady && m.worst_k <= allowed}, {"steady", m.steady}, {"worst_k", document::number_or_null(m.worst_k)}, {"miss_k", misses}, {"text", text}};
}
constexpr model curve_points{{"curve_against_points",
                              "A sensor's coefficients against the points that were printed with them: how far each point lies from the curve, and whether the curve rises or falls "
                              "steadily. Copied coefficients often miss their own points.",
                              curve_points_arguments, makegood::sensing::steinhart_hart_1968, run_curve_points, nullptr}};

// ---- identify_sensor --------------------------------------------------------------------------------------------------

constexpr model_argument identify_arguments[] = {
    {"readings", "objects",
     "one to six objects: resistance_ohm (a reading; over range: {\"above\": 2e7}), temperature_c that the sensor is believed to have, temperature_doubt_k (its standard "
     "uncertainty; 2 K), thermometer (a name: readings of one name share its error), reversed_ohm (the same with the meter's leads exchanged)"},
    {"candidates", "objects",
     "what it may be: name, kind and its constants (\"ntc\": reference_ohm, reference_c, beta_k; \"steinhart_hart\": a, b, c; \"rtd\": r0_ohm; \"silicon_ptc\": reference_ohm), "
     "resistance_tolerance_percent, beta_tolerance_percent, weight, points; left out: the usual sensors of floors and rooms",
     true},
    {"none_prior", "number", "probability of \"none of these\" before anything is read, from 0.02; 0.05", true},
    {"with_next", "bool", "also work out which reading to take next; true", true}};
std::vector<makegood::sensing::sensor_candidate> candidates_from(const document::value& v) {
  constexpr std::string_view who = "identify_sensor";
  const auto* list_ = v.as<array>();
  if (!list_) throw range_error("identify_sensor: \"candidates\" must be a list of objects");
  std::vector<makegood::sensing::sensor_candidate> all;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* o = (*list_)[i].as<object>();
    if (!o) throw range_error("identify_sensor: candidates[" + std::to_string(i) + "] must be an object");
    const fields in("identify_sensor, candidate", *o);
    makegood::sensing::sensor_candidate c{in.text("name"), curve_from(who, (*list_)[i], {"name", "resistance_tolerance_percent", "beta_tolerance_percent", "weight", "points"}), 5.0, 0.0, 1.0, {}};
    const bool ntc = std::holds_alternative<makegood::sensing::ntc_curve>(c.curve);
    c.resistance_tolerance_percent = in.number_or("resistance_tolerance_percent", std::holds_alternative<makegood::sensing::rtd_curve>(c.curve) ? 0.3 : 5.0);
    c.beta_tolerance_percent = in.number_or("beta_tolerance_percent", ntc ? 1.0 : 0.0);
    c.weight = in.number_or("weight", 1.0);
    if (in.has("points")) c.points = pairs_of(who, in.need("points"));
    all.push_back(std::move(c));
  }
  return all;
}
std::string share_text(double p) { return p > 0.995 ? std::string("over 99 %") : p < 0.005 ? std::string("under 1 %") : number_text(std::round(100.0 * p)) + " %"; }
document::value run_identify(const object& inputs, const rulebook&) {
  using namespace makegood::sensing;
  constexpr std::string_view who = "identify_sensor";
  const fields in(who, inputs);
  in.only("readings", "candidates", "none_prior", "with_next");
  const auto* list_ = in.need("readings").as<array>();
  if (!list_) throw range_error("identify_sensor: \"readings\" must be a list of objects");
  std::vector<sensor_reading> readings;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const auto* o = (*list_)[i].as<object>();
    if (!o) throw range_error("identify_sensor: readings[" + std::to_string(i) + "] must be an object with resistance_ohm and temperature_c");
    const std::string at = "identify_sensor, readings[" + std::to_string(i) + "]";
    const fields one(at, *o);
    one.only("resistance_ohm", "temperature_c", "temperature_doubt_k", "thermometer", "reversed_ohm");
    sensor_reading r;
    r.resistance_ohm = reading_from(one.need("resistance_ohm"));
    r.temperature_c = one.number("temperature_c");
    r.temperature_doubt_k = one.number_or("temperature_doubt_k", 2.0);
    if (one.has("thermometer")) r.thermometer = one.text("thermometer");
    if (one.has("reversed_ohm")) r.reversed_ohm = one.number("reversed_ohm");
    readings.push_back(std::move(r));
  }
  const auto candidates = in.has("candidates") ? candidates_from(in.need("candidates")) : usual_sensors();
  identify_options options;
  options.none_prior = in.number_or("none_prior", 0.05);
  if (in.has("with_next")) {
    const auto* yes = in.need("with_next").as<bool>();
    if (!yes) throw range_error("identify_sensor: \"with_next\" must be true or false");
    options.with_next = *yes;
  }
  const auto found = identify_sensor(readings, candidates, options);
  const auto curve_name = [&](const sensor_explanation& e) { return e.candidate < 0 ? std::string() : candidates[static_cast<std::size_t>(e.candidate)].name; };
  const auto words = [&](const sensor_explanation& e) {
    const auto& row = sensor_faults[static_cast<std::size_t>(e.fault)];
    return e.candidate < 0 ? std::string(row.title) : curve_name(e) + ", " + std::string(row.title);
  };
  array explanations, curves, faults, next, text, findings;
  for (const auto& e : found.explanations)
    explanations.push_back(object{{"curve", e.candidate < 0 ? document::value(nullptr) : document::value(curve_name(e))},
                                  {"fault", std::string(sensor_faults[static_cast<std::size_t>(e.fault)].id)},
                                  {"prior", e.prior},
                                  {"posterior", e.posterior},
                                  {"text", words(e)}});
  for (std::size_t c = 0; c < candidates.size(); ++c)
    curves.push_back(object{{"name", found.curves[c].first}, {"posterior", found.curves[c].second}, {"temperature_if_sound_c", document::number_or_null(found.temperature_c[c])}});
  for (std::size_t f = 0; f < found.faults.size(); ++f)
    faults.push_back(object{{"id", std::string(sensor_faults[f].id)}, {"posterior", found.faults[f]}, {"title", std::string(sensor_faults[f].title)}});
  for (const auto& n : found.next)
    next.push_back(object{{"id", n.id},
                          {"bits", n.bits},
                          {"what", n.what},
                          {"unit", std::string(n.unit)},
                          {"expected_by_first", document::number_or_null(n.expected[0])},
                          {"expected_by_second", document::number_or_null(n.expected[1])}});
  for (const auto& f : found.findings) findings.push_back(f);
  std::string said = "Likeliest:";
  for (std::size_t k = 0; k < found.explanations.size() && k < 3; ++k)
    if (k == 0 || found.explanations[k].posterior > 0.02) said += (k ? "; " : " ") + words(found.explanations[k]) + " (" + share_text(found.explanations[k].posterior) + ")";
  text.push_back(said + ".");
  text.push_back("None of these: " + share_text(found.faults[static_cast<std::size_t>(sensor_fault::none_of_these)]) + ".");
  if (!found.robust) text.push_back("Half or double the weight of one explanation changes the first: do not order a part on this.");
  if (readings.size() == 1) text.push_back("One reading cannot tell a wrong type from a wrong temperature.");
  if (!found.next.empty() && found.next.front().bits > 0.02) text.push_back("Next: " + found.next.front().what);
  text.push_back("Isolate and prove dead before a sensor is taken off: some controllers hold it at mains potential.");
  return object{{"explanations", explanations}, {"curves", curves}, {"faults", faults}, {"none_of_these", found.faults[static_cast<std::size_t>(sensor_fault::none_of_these)]},
                {"robust", found.robust},       {"next", next},     {"findings", findings}, {"text", text}};
}
constexpr source identify_source{"Bayes' rule over curves and faults", "weights by rule of the trade; forward models by the formulas of this subject", "derived"};
constexpr model identify{{"identify_sensor",
                          "Which sensor this is and what is wrong with it, from readings of resistance at temperatures that are believed: probabilities over curves and faults (open, "
                          "short, damp shunt, two in parallel, resistance in series, a digital part, a wrong temperature, none of these), and the reading that tells the leading ones apart.",
                          identify_arguments, identify_source, run_identify, nullptr}};

}  // namespace

void sensing(std::vector<entry>& all) {
  append(all, "sensing", makegood::sensing::entries{});
  append(all, "sensing", list<fit_steinhart_hart, check_sensor, curve_points, identify>{});
}
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
#include <makegood/sensing/fit.hpp>
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

curve curve_from(const document::value& v) {
  const auto* o = v.as<document::object>();
  if (!o) throw range_error("check_sensor: \"curve\" must be an object with a \"kind\"");
  const fields in("check_sensor, curve", *o);
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
  throw range_error("check_sensor: curve: \"kind\" = \"" + kind + "\" is not one of \"ntc\", \"steinhart_hart\", \"rtd\", \"silicon_ptc\"");
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
  return makegood::sensing::check_sensor(reading_from(in.need("resistance_ohm")), reading_from(in.need("temperature_c")), curve_from(in.need("curve")),
                                          in.has("rule") ? decision_rule(in.text("rule")) : decision_rule());
}
constexpr model check_sensor{{"check_sensor", "Resistance of a sensor against its curve at the temperature it should have, for every kind of curve.", check_sensor_arguments,
                              makegood::sensing::sensor_band_practice, nullptr, judge_sensor}};

}  // namespace

void sensing(std::vector<entry>& all) {
  append(all, "sensing", makegood::sensing::entries{});
  append(all, "sensing", list<fit_steinhart_hart, check_sensor>{});
}
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Model of the subject air: a flow as it was measured.
#include <makegood/air/measured_flow.hpp>
#include <cmath>
#include "ventilation.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::air;
using document::array;
using document::object;

std::string three(double x) { return number_text(x, 3); }

constexpr model_argument flow_arguments[] = {
    {"method", "text", "\"hood\" (unpowered), \"powered_hood\", \"anemometer\" (all over a grille's face) or \"traverse\" (across a duct, see traverse_points)"},
    {"readings", "numbers", "l/s of a hood, m/s of the other two; or, of a traverse, velocity pressures in Pa, with \"pressures\""},
    {"area_mm2", "number", "face area of the grille (width times height), or section of the duct", true},
    {"correction_factor", "number", "flow over what is read, 0.01 to 10: of this grille, or of this hood with this fan; left out: 1", true},
    {"correction_percent", "number", "limits of the factor, 0 to 100 %; left out: 5, of a grille without a factor 20", true},
    {"instrument_percent", "number", "limits of error of the instrument, of the reading; left out: 10, the worst case of its class", true},
    {"instrument_limit", "number", "limits of error on top of it, in the unit of the readings; left out: 0", true},
    {"repeatability_percent", "number", "standard deviation of the mean; left out: from the readings of a hood or an anemometer, else 2", true},
    {"pressures", "bool", "the readings of the traverse are velocity pressures: their roots are averaged", true},
    {"air", "object", "{\"density_kg_per_m3\", \"viscosity_pa_s\"}, or {\"temperature_c\", \"relative_humidity_percent\": 50, \"pressure_pa\": 101325}; left out: 1.2 kg/m³", true},
    {"fan", "object", "of an unpowered hood: the fan's curve as for operating_point, to correct for what the hood takes", true},
    {"hood_pressure_pa", "number", "with it: the pressure that the hood takes at the flow that was read, 0 to 10000 Pa", true},
    {"fan_percent", "number", "limits of the fan's pressure against its curve, 0 to 50 %; left out: 10", true},
    {"hood_pressure_percent", "number", "limits of the hood's pressure, 0 to 100 %; left out: 20", true}};

document::value run_measured_flow(const object& inputs, const rulebook&) {
  const std::string who = "measured_flow";
  const fields in(who, inputs);
  in.only("method", "readings", "area_mm2", "correction_factor", "correction_percent", "instrument_percent", "instrument_limit", "repeatability_percent", "pressures", "air", "fan",
          "hood_pressure_pa", "fan_percent", "hood_pressure_percent");
  flow_measurement m;
  const std::string method = in.text("method");
  using way = flow_measurement::way;
  if (method == "hood") m.is = way::hood;
  else if (method == "powered_hood") m.is = way::powered_hood;
  else if (method == "anemometer") m.is = way::anemometer;
  else if (method == "traverse") m.is = way::traverse;
  else throw range_error(who + ": method = \"" + method + "\" is not one of \"hood\", \"powered_hood\", \"anemometer\", \"traverse\"");
  m.readings = numbers_of(who, "readings", in.need("readings"));
  const auto take = [&](std::string_view name, double& x) {
    if (!in.has(name)) return;
    x = in.number(name);
    if (!is_finite(x)) throw range_error(who + ": \"" + std::string(name) + "\" is not a number; leave out what is not known");
  };
  take("area_mm2", m.face_area_mm2);
  take("correction_factor", m.correction_factor);
  take("correction_percent", m.correction_percent);
  take("instrument_percent", m.instrument_percent);
  take("instrument_limit", m.instrument_limit);
  take("repeatability_percent", m.repeatability_percent);
  take("hood_pressure_pa", m.hood_pressure_pa);
  take("fan_percent", m.fan_percent);
  take("hood_pressure_percent", m.hood_pressure_percent);
  if (in.has("pressures")) {
    const auto* yes = in.need("pressures").as<bool>();
    if (!yes) throw range_error(who + ": \"pressures\" must be true or false");
    m.pressures = *yes;
  }
  const auto air = air_from(who, in);
  m.density_kg_per_m3 = air.density_kg_per_m3;
  fan_read fan;
  if (in.has("fan")) {
    fan = fan_from(path(who, "fan"), object_of(who, in, "fan"), air);
    m.fan = &fan.curve.pressure();
  }
  const auto r = makegood::air::measured_flow(m);
  const double u = r.flow.standard_uncertainty(), half = r.flow.value > 0.0 ? r.flow.expanded_uncertainty(0.95) : 0.0;
  array sources, assumed, cautions, text;
  for (const auto& p : r.flow.parts) sources.push_back(object{{"source", p.source}, {"effect_l_per_s", p.u}});
  for (const auto& a : r.assumed) assumed.push_back(a);
  for (const auto& c : r.cautions) cautions.push_back(c);
  text.push_back(three(r.flow.value) + " l/s, standard uncertainty " + three(u) + " l/s (95 %: " + three(std::max(0.0, r.flow.value - half)) + " to " + three(r.flow.value + half) + " l/s).");
  if (r.hood_factor != 1.0) text.push_back("With the hood on " + three(r.flow.value / r.hood_factor) + " l/s were read: the hood held the fan back by " + three(100.0 * (1.0 - 1.0 / r.hood_factor)) + " %.");
  for (const auto& c : r.cautions) text.push_back(c);
  text.push_back("Measured with doors and windows shut, the fan at the speed that is asked for.");
  return object{{"flow_l_per_s", r.flow.value},
                {"standard_uncertainty_l_per_s", u},
                {"relative_percent", document::number_or_null(r.relative_percent)},
                {"low_l_per_s", std::max(0.0, r.flow.value - half)},
                {"high_l_per_s", r.flow.value + half},
                {"read_l_per_s", r.read_l_per_s},
                {"mean_velocity_m_per_s", document::number_or_null(r.mean_velocity_m_per_s)},
                {"hood_factor", r.hood_factor},
                {"reads_low", r.reads_low},
                {"reading", object{{"value", r.flow.value}, {"accuracy", object{{"standard_uncertainty", u}}}}},
                {"sources", sources},
                {"assumed", assumed},
                {"cautions", cautions},
                {"text", text}};
}
constexpr model measured_flow_model{
    {"measured_flow",
     "A flow as it was measured, by hood, by anemometer at a grille or by traverse, with its correction and its standard uncertainty; its \"reading\" is what "
     "check_extract takes. An unpowered hood is corrected for with the fan's curve where it is given.",
     flow_arguments, {"JCGM 100:2008 (GUM)", "rectangular limits and sum of squares; the hood as a resistance in the run"}, run_measured_flow, nullptr}};

}  // namespace

void measured_flow(std::vector<entry>& all) { append(all, "air", list<measured_flow_model>{}); }
}  // namespace makegood::subjects

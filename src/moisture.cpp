// SPDX-License-Identifier: MIT
// Models of the subject air: water in a wet room, a fan that blows into a roof void, points of a traverse.
#include <makegood/air/moisture.hpp>
#include <makegood/air/required.hpp>
#include <cmath>
#include "ventilation.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::air;
using document::array;
using document::object;

std::string three(double x) { return number_text(x, 3); }
document::value source_document(const source& s) { return object{{"title", s.title}, {"clause", s.clause}, {"grade", s.grade}}; }

// ---- room_moisture ----------------------------------------------------------------------------------------------------------

constexpr model_argument room_arguments[] = {
    {"room_volume_m3", "number", "volume of the room, 0.5 to 1e6 m³"},
    {"flow_l_per_s", "number", "extract flow as measured, 0 to 1e6 l/s, from the beginning of the shower"},
    {"shower_min", "number", "how long water evaporates, 0 to 1440 min; left out: 10", true},
    {"source_kg_per_h", "number", "water that evaporates meanwhile; left out: 2.6, with a band from 1.5 to 4.5", true},
    {"source_low_kg_per_h", "number", "low end of the band; left out with a source given: the source itself", true},
    {"source_high_kg_per_h", "number", "high end of the band; likewise", true},
    {"wet_water_kg", "number", "water left on tiles and towels, at the slow end; left out: 0.1", true},
    {"overrun_min", "number", "how long the fan runs after the shower, 0 or more; left out: it is left on", true},
    {"background_l_per_s", "number", "flow when the fan has stopped; left out: 0", true},
    {"mixing_factor", "number", "1 (left out): perfectly mixed, to 10", true},
    {"room_c", "number", "temperature of the room, 0 to 60 °C; left out: 24", true},
    {"incoming_c", "number", "temperature of the air that comes in, -40 to 60 °C; left out: 20", true},
    {"incoming_humidity_percent", "number", "its relative humidity, 0 to 100 %; left out: 50", true},
    {"clear_humidity_percent", "number", "relative humidity at which the room counts as clear, 1 to 99 %; left out: 65", true},
    {"clear_ratio", "number", "instead of it: the part of the excess at the end of the shower that may be left, 1e-6 to 0.999", true},
    {"surface_c", "number", "temperature of the coldest surface: how long it is wet", true}};

document::value run_room(const object& inputs, const rulebook&) {
  const fields in("room_moisture", inputs);
  in.only("room_volume_m3", "flow_l_per_s", "shower_min", "source_kg_per_h", "source_low_kg_per_h", "source_high_kg_per_h", "wet_water_kg", "overrun_min", "background_l_per_s",
          "mixing_factor", "room_c", "incoming_c", "incoming_humidity_percent", "clear_humidity_percent", "clear_ratio", "surface_c");
  moisture_room r;
  const auto take = [&](std::string_view name, double& x) {
    if (!in.has(name)) return;
    x = in.number(name);
    if (is_nan(x)) throw range_error("room_moisture: \"" + std::string(name) + "\" is not a number");
  };
  r.volume_m3 = in.number("room_volume_m3");
  r.flow_l_per_s = in.number("flow_l_per_s");
  take("shower_min", r.shower_min);
  if (in.has("source_kg_per_h")) {
    take("source_kg_per_h", r.source_kg_per_h);
    r.source_low_kg_per_h = r.source_high_kg_per_h = r.source_kg_per_h;
  }
  take("source_low_kg_per_h", r.source_low_kg_per_h);
  take("source_high_kg_per_h", r.source_high_kg_per_h);
  take("wet_water_kg", r.wet_water_kg);
  take("overrun_min", r.overrun_min);
  take("background_l_per_s", r.background_l_per_s);
  take("mixing_factor", r.mixing_factor);
  take("room_c", r.room_c);
  take("incoming_c", r.incoming_c);
  take("incoming_humidity_percent", r.incoming_humidity_percent);
  take("clear_humidity_percent", r.clear_humidity_percent);
  take("clear_ratio", r.clear_ratio);
  take("surface_c", r.surface_c);
  const auto out = room_moisture(r);
  constexpr std::string_view names[] = {"low", "usual", "high"};
  object o{{"air_changes_per_h", out.air_changes_per_h},
           {"incoming_g_per_m3", out.incoming_g_per_m3},
           {"saturated_g_per_m3", out.saturated_g_per_m3},
           {"excess_g_per_m3", out.excess_g_per_m3},
           {"overrun_ratio", document::number_or_null(out.overrun_ratio)}};
  for (std::size_t k = 0; k < 3; ++k) {
    const auto& c = out.course[k];
    o.set(std::string(names[k]), object{{"peak_humidity_percent", c.peak_humidity_percent},
                                        {"end_dew_point_c", c.end_dew_point_c},
                                        {"condensed_kg", c.condensed_kg},
                                        {"time_to_clear_min", document::number_or_null(c.time_to_clear_min)},
                                        {"surface_wet_min", document::number_or_null(c.surface_wet_min)}});
  }
  array series, text;
  for (const auto& m : out.series) {
    array humidity, dew;
    for (std::size_t k = 0; k < 3; ++k) humidity.emplace_back(m.humidity_percent[k]), dew.emplace_back(m.dew_point_c[k]);
    series.push_back(object{{"minute", m.minute}, {"humidity_percent", humidity}, {"dew_point_c", dew}});
  }
  o.set("series", series);
  const auto clear_text = [&](std::size_t k) { return is_finite(out.course[k].time_to_clear_min) ? three(out.course[k].time_to_clear_min) + " min" : std::string("more than two days"); };
  text.push_back("The fan changes the air " + three(out.air_changes_per_h) + " times an hour.");
  const auto& usual = out.course[1];
  if (usual.condensed_kg > 0.0) text.push_back("The air cannot hold what evaporates: about " + three(1e3 * usual.condensed_kg) + " g condense on walls and glass.");
  else text.push_back("At the end of the shower the air stands at " + three(usual.peak_humidity_percent) + " % relative humidity.");
  text.push_back("Clear after " + clear_text(1) + "; at best " + clear_text(0) + " (what condensed has run off), at worst " + clear_text(2) + " (it goes back into the air, with water from towels and tiles).");
  if (r.flow_l_per_s == 0.0) text.push_back("Without a flow the room does not clear.");
  text.push_back("One mixed volume at one temperature, without water that plaster and cloth take up and give back: a lower bound on the time where surfaces are dry, an estimate where they are wet.");
  o.set("text", text);
  return o;
}
constexpr model room_model{
    {"room_moisture",
     "Water in the air of a wet room during and after a shower: humidity and dew point over time, what condenses, how long it takes to clear, as a band from the "
     "spread of showers and from wet surfaces.",
     room_arguments, shower_source, run_room, nullptr}};

// ---- roof_void_condensation ---------------------------------------------------------------------------------------------------

constexpr model_argument void_arguments[] = {
    {"flow_l_per_s", "number", "flow of the fan that blows into the void, 0 to 1e5 l/s"},
    {"surface_c", "number", "temperature of the coldest surface of the void, -50 to 60 °C"},
    {"room_c", "number", "temperature of the air that the fan takes, 0 to 60 °C; left out: 22", true},
    {"room_humidity_percent", "number", "its relative humidity, 1 to 100 %; left out: 90", true},
    {"minutes_per_shower", "number", "that the fan runs for one shower, overrun included; left out: 25", true},
    {"showers_per_day", "number", "0 to 100; left out: 2", true},
    {"void_flow_l_per_s", "number", "flow of the void's own ventilation; left out or 0: closed", true},
    {"outdoor_c", "number", "temperature outside, needed where the void is ventilated", true},
    {"outdoor_humidity_percent", "number", "relative humidity outside, 0 to 100 %; left out: 90", true},
    {"pressure_pa", "number", "pressure of the air, 50000 to 120000 Pa; left out: 101325", true},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook: whether extract air must go outside, and criteria of mould", true},
    {"discharge_to", "text", "\"roof_void\" (left out), or \"vented_roof_void\" where a rulebook permits one with enough openings", true},
    {"open_area_m2", "number", "area of the void's openings, for such a rulebook", true},
    {"ceiling_area_m2", "number", "area of the ceiling under the void, likewise", true},
    {"ridge_area_m2", "number", "open area near the ridge, likewise", true},
    {"pitch", "text", "\"over_22_degrees\" (left out) or \"to_22_degrees\"", true}};

document::value run_void(const object& inputs, const rulebook& book) {
  const fields in("roof_void_condensation", inputs);
  in.only("flow_l_per_s", "surface_c", "room_c", "room_humidity_percent", "minutes_per_shower", "showers_per_day", "void_flow_l_per_s", "outdoor_c", "outdoor_humidity_percent", "pressure_pa",
          "discharge_to", "open_area_m2", "ceiling_area_m2", "ridge_area_m2", "pitch");
  roof_void v;
  const auto take = [&](std::string_view name, double& x) {
    if (!in.has(name)) return;
    x = in.number(name);
    if (is_nan(x)) throw range_error("roof_void_condensation: \"" + std::string(name) + "\" is not a number");
  };
  v.flow_l_per_s = in.number("flow_l_per_s");
  v.surface_c = in.number("surface_c");
  take("room_c", v.room_c);
  take("room_humidity_percent", v.room_humidity_percent);
  take("minutes_per_shower", v.minutes_per_shower);
  take("showers_per_day", v.showers_per_day);
  take("void_flow_l_per_s", v.void_flow_l_per_s);
  take("outdoor_c", v.outdoor_c);
  take("outdoor_humidity_percent", v.outdoor_humidity_percent);
  take("pressure_pa", v.pressure_pa);
  const auto r = roof_void_condensation(v);
  const bool closed = !(v.void_flow_l_per_s > 0.0);
  array text;
  if (r.upper_kg_per_h > 0.0) {
    text.push_back("Bound: no more than " + three(r.upper_kg_per_h) + " kg of water an hour, " + three(r.upper_kg_per_shower) + " kg a shower, " + three(r.upper_kg_per_day) +
                   " kg a day, if all the air cools to the surface.");
    if (closed) text.push_back("The void is closed: nothing carries the water out, and the bound is near.");
    else text.push_back("Estimate, mixed with the void's own air: " + three(r.estimate_kg_per_day) + " kg a day; that air can dry about " + three(r.drying_kg_per_day) + " kg a day" +
                        (r.gathers_by_estimate ? ": water gathers." : r.gathers_by_bound ? ": whether water gathers lies between bound and estimate." : ": more than can condense, as long as it blows so."));
  } else {
    text.push_back("The surface is not below the dew point of " + three(r.dew_point_c) + " °C: nothing condenses there now. The coldest night decides.");
  }
  text.push_back("The lower bound is 0: air may leave before it meets a cold surface. No verdict by the monthly method: it leaves out air that flows, which decides in a cold roof.");
  // the verdict: by the rulebook, whatever condenses
  object discharge;
  const std::string place = in.has("discharge_to") ? in.text("discharge_to") : std::string("roof_void"), pitch = in.has("pitch") ? in.text("pitch") : std::string("over_22_degrees");
  if (place != "roof_void" && place != "vented_roof_void") throw range_error("roof_void_condensation: discharge_to = \"" + place + "\" is not one of \"roof_void\", \"vented_roof_void\"");
  if (roof_pitches.find(pitch) < 0) throw range_error("roof_void_condensation: pitch = \"" + pitch + "\" is not one of \"over_22_degrees\", \"to_22_degrees\"");
  const auto found = book.find("discharge_outside", place);
  array openings;
  if (!found.found()) {
    discharge = object{{"outcome", "undecided"}, {"reason", "no rule in book"}, {"text", "Name a rulebook to hear whether extract air must be discharged outside."}, {"source", nullptr}, {"rulebook", book.id()}, {"override", ""}};
    text.push_back("Whether a fan may blow into a void is a matter of the rulebook; none that says so was named.");
  } else {
    const bool must = found.numbers()[0] > 0.0;
    const source from = found.changed ? source{"override", {}, "override"} : found.from();
    outcome is = must ? outcome::fail : outcome::pass;
    reason why = reason::none;
    if (!must && place == "vented_roof_void" && book.find("roof_void_openings", pitch).found()) {  // permitted with enough openings
      if (in.has("open_area_m2") && in.has("ceiling_area_m2") && in.has("ridge_area_m2")) {
        const given areas[] = {in.number("open_area_m2"), in.number("ceiling_area_m2"), std::string_view(pitch)};
        const verdict all = check_roof_void_openings.judge(areas, book);
        const given high[] = {in.number("ridge_area_m2"), all.lower * in.number("ceiling_area_m2")};
        const verdict ridge = check_roof_void_ridge_share.judge(high, book);
        for (const auto* one : {&all, &ridge}) {
          openings.push_back(to_document(*one, false));
          if (one->outcome != outcome::pass && is != outcome::fail) is = one->outcome, why = one->reason;
        }
      } else {
        is = outcome::undecided;
        why = reason::precondition_missing;
      }
    }
    discharge = object{{"outcome", outcome_text(is)}, {"reason", why == reason::none ? std::string_view("none") : reason_text(why)}, {"text", found.changed ? std::string() : std::string(found.row->text)}, {"source", source_document(from)}, {"rulebook", book.id()},
                       {"override", found.changed ? found.changed->words() : std::string()}};
    if (must) text.push_back("By the rulebook extract air must be discharged outside: run the duct to the outside, insulated through the cold void and with a fall outwards.");
    else if (is == outcome::pass) text.push_back("By this rulebook the void may take the air. What condenses there is not less for it.");
    else text.push_back(why == reason::precondition_missing ? "By this rulebook the void may take the air if its openings are large enough: measure \"open_area_m2\", \"ceiling_area_m2\" and \"ridge_area_m2\"."
                                                            : "The void's openings are not shown to be what the rulebook asks for: run the duct to the outside.");
  }
  // mould on the coldest surface, by each criterion that was named
  const double at_surface = surface_relative_humidity(v.surface_c, v.room_c, v.room_humidity_percent);
  array criteria;
  for (const auto& c : surface_criteria(at_surface, r.upper_kg_per_h > 0.0 && r.gathers_by_estimate, book)) {
    criteria.push_back(object{{"rulebook", c.book},
                              {"period", c.period},
                              {"limit_percent", c.rule.value},
                              {"comparator", comparator_text(c.compare)},
                              {"outcome", outcome_text(c.outcome)},
                              {"text", c.rule.text},
                              {"source", source_document(c.rule.from)}});
    if (c.outcome == outcome::fail) text.push_back("Mould by " + std::string(c.book) + " (" + std::string(c.period) + "): the surface does not dry between, and stays above " + three(c.rule.value) + " %.");
  }
  return object{{"discharge", discharge},
                {"openings", openings},
                {"surface_humidity_percent", at_surface},
                {"criteria", criteria},
                {"dew_point_c", r.dew_point_c},
                {"dry_air_kg_per_h", r.dry_air_kg_per_h},
                {"water_kg_per_kg", r.water_kg_per_kg},
                {"upper_kg_per_h", r.upper_kg_per_h},
                {"upper_kg_per_shower", r.upper_kg_per_shower},
                {"upper_kg_per_day", r.upper_kg_per_day},
                {"lower_kg_per_day", 0.0},
                {"estimate_kg_per_h", r.estimate_kg_per_h},
                {"estimate_kg_per_shower", r.estimate_kg_per_shower},
                {"estimate_kg_per_day", r.estimate_kg_per_day},
                {"drying_kg_per_day", r.drying_kg_per_day},
                {"gathers_by_bound", r.gathers_by_bound},
                {"gathers_by_estimate", r.gathers_by_estimate},
                {"text", text}};
}
constexpr model void_model{
    {"roof_void_condensation",
     "A fan that blows into a cold roof void: the most water that can condense, an hour, a shower and a day, an estimate where the void is ventilated, what that "
     "ventilation dries, and the rulebook's word on it.",
     void_arguments, {"ASHRAE Handbook Fundamentals 2017, ch. 1 Psychrometrics", "m = m_da (W - W_s(t_surface)), Hyland-Wexler"}, run_void, nullptr}};

// ---- traverse_points ----------------------------------------------------------------------------------------------------------

constexpr model_argument traverse_arguments[] = {
    {"shape", "text", "\"round\" (across a diameter) or \"rectangular\" (along a side)"},
    {"count", "number", "points: 6, 8 or 10 across, 5, 6 or 7 along a side; of equal areas any, 1 to 100"},
    {"method", "text", "\"log_tchebycheff\" (left out) or \"equal_area\"", true},
    {"size_mm", "number", "diameter or side: the positions are then given in mm as well", true}};
document::value run_traverse(const object& inputs, const rulebook&) {
  const fields in("traverse_points", inputs);
  in.only("shape", "count", "method", "size_mm");
  const double count = in.number("count");
  if (!(count >= 1.0 && count <= 100.0) || count != std::floor(count)) throw range_error("traverse_points: \"count\" must be a whole number from 1 to 100");
  const auto x = traverse_points(in.text("shape"), in.has("method") ? in.text("method") : std::string("log_tchebycheff"), static_cast<int>(count));
  const double size = in.has("size_mm") ? in.number("size_mm") : no_number;
  if (in.has("size_mm") && !(size >= 1.0 && size <= 1e5)) throw range_error("traverse_points: size_mm must be from 1 to 100000 mm");
  array ratios, places;
  for (const double p : x) {
    ratios.emplace_back(p);
    if (!is_nan(size)) places.emplace_back(p * size);
  }
  return object{{"position_ratio", ratios}, {"position_mm", places}, {"text", "The mean of the readings at these points is the mean velocity: average velocities, not pressures. Positions from one wall; check that they stand alike about the middle."}};
}
constexpr model traverse_model{
    {"traverse_points", "Where to hold the anemometer across a duct, as parts of the diameter or side from one wall.", traverse_arguments, traverse_source, run_traverse, nullptr}};

}  // namespace

void moisture(std::vector<entry>& all) { append(all, "air", list<room_model, void_model, traverse_model>{}); }
}  // namespace makegood::subjects

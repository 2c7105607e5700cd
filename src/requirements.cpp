// SPDX-License-Identifier: MIT
// Models of the subject air: what a rulebook asks of rooms and dwelling, a measured flow decided as the book decides, outlets to choose from.
#include <makegood/air/outlets.hpp>
#include <cmath>
#include "ventilation.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::air;
using document::array;
using document::object;

std::string three(double x) { return number_text(x, 3); }
object source_of(const source& s) { return object{{"title", s.title}, {"clause", s.clause}, {"grade", s.grade}}; }
document::value rule_of(const asked_rule& a) {
  if (is_nan(a.value) && a.text.empty() && a.overridden.empty()) return nullptr;
  return object{{"by", a.by}, {"value", document::number_or_null(a.value)}, {"text", a.text}, {"source", source_of(a.from)}, {"override", a.overridden}};
}
double finite_or_none(const std::string& who, const fields& in, std::string_view name) {
  if (!in.has(name)) return no_number;
  const double x = in.number(name);
  if (!is_finite(x)) throw range_error(who + ": \"" + std::string(name) + "\" is not a number");
  return x;
}
bool yes_or(const std::string& who, const fields& in, std::string_view name, bool otherwise) {
  if (!in.has(name)) return otherwise;
  const auto* b = in.need(name).as<bool>();
  if (!b) throw range_error(who + ": \"" + std::string(name) + "\" must be true or false");
  return *b;
}
ventilated_room room_from(const std::string& at, const object& o, std::size_t number) {
  const fields in(at, o);
  in.only("name", "kind", "continuous", "volume_m3", "outside_wall", "window", "work");
  ventilated_room r;
  r.kind = in.text("kind");
  r.name = in.has("name") ? in.text("name") : r.kind + " " + std::to_string(number + 1);
  r.continuous = yes_or(at, in, "continuous", false);
  r.volume_m3 = finite_or_none(at, in, "volume_m3");
  r.outside_wall = yes_or(at, in, "outside_wall", true);
  r.window = yes_or(at, in, "window", true);
  if (in.has("work")) r.work = in.text("work");
  return r;
}
constexpr std::string_view room_help =
    "{\"kind\": \"kitchen\", \"kitchen_hood\", \"utility\", \"bathroom\", \"sanitary\" or \"habitable\", \"name\", \"continuous\": false, \"volume_m3\", "
    "\"outside_wall\": true, \"window\": true, \"work\": \"new\" (left out), \"added\", \"fan_replaced\" or \"never_had_fan\"}";

// ---- ventilation_required ---------------------------------------------------------------------------------------------------

constexpr model_argument required_arguments[] = {{"rooms", "objects", room_help},
                                                 {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook"},
                                                 {"bedrooms", "number", "of the dwelling, a whole number", true},
                                                 {"floor_area_m2", "number", "of all floors inside, 1 to 1e6 m²", true},
                                                 {"habitable_rooms", "number", "of the dwelling; one alone has a rule of its own", true},
                                                 {"persons", "number", "where the rulebook counts persons", true},
                                                 {"main_rooms", "number", "where the rulebook counts main rooms", true},
                                                 {"floors", "number", "of the dwelling: the least background ventilator depends on it", true}};
document::value run_required(const object& inputs, const rulebook& book) {
  const std::string who = "ventilation_required";
  const fields in(who, inputs);
  in.only("rooms", "bedrooms", "floor_area_m2", "habitable_rooms", "persons", "main_rooms", "floors");
  std::vector<ventilated_room> rooms;
  const auto& list = list_of(who, in, "rooms");
  if (list.size() > 1000) throw range_error(who + ": at most 1000 rooms");
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto* o = list[i].as<object>();
    const std::string at = path(who, "rooms[" + std::to_string(i) + "]");
    if (!o) throw range_error(at + ": must be an object");
    rooms.push_back(room_from(at, *o, i));
  }
  ventilated_dwelling d;
  d.bedrooms = finite_or_none(who, in, "bedrooms");
  d.floor_area_m2 = finite_or_none(who, in, "floor_area_m2");
  d.habitable_rooms = finite_or_none(who, in, "habitable_rooms");
  d.persons = finite_or_none(who, in, "persons");
  d.main_rooms = finite_or_none(who, in, "main_rooms");
  d.floors = finite_or_none(who, in, "floors");
  const auto r = ventilation_required(rooms, d, book);
  array room_list, information, text;
  object by_information;
  for (std::size_t i = 0; i < rooms.size(); ++i) {
    const auto& x = r.rooms[i];
    array flows, overruns, work, missing;
    for (const auto& f : x.flows) flows.push_back(rule_of(f));
    for (const auto& f : x.overruns) overruns.push_back(rule_of(f));
    for (const auto& f : x.work) work.push_back(rule_of(f));
    for (const auto& m : x.missing) missing.push_back(m);
    room_list.push_back(object{{"name", rooms[i].name},
                               {"kind", rooms[i].kind},
                               {"flow_l_per_s", document::number_or_null(x.flow_l_per_s)},
                               {"flow_m3_per_h", document::number_or_null(3.6 * x.flow_l_per_s)},
                               {"governs", x.flows.empty() ? std::string_view() : x.flows[x.governs].by},
                               {"flows", flows},
                               {"overrun_min", document::number_or_null(x.overrun_min)},
                               {"overruns", overruns},
                               {"background_ventilator_mm2", document::number_or_null(x.background.value)},
                               {"background_ventilator", rule_of(x.background)},
                               {"purge_air_changes_per_h", document::number_or_null(x.purge.value)},
                               {"purge_l_per_s", document::number_or_null(x.purge_l_per_s)},
                               {"fan_required", x.fan_required},
                               {"notifiable", x.notifiable},
                               {"work", work},
                               {"missing", missing}});
    std::string line = "\"" + rooms[i].name + "\": ";
    if (!is_nan(x.flow_l_per_s)) {
      line += three(x.flow_l_per_s) + " l/s";
      if (x.flows.size() > 1) line += ", governed by the rule of " + std::string(x.flows[x.governs].by);
      if (!is_nan(x.overrun_min)) line += ", overrun " + three(x.overrun_min) + " min";
    } else if (rooms[i].kind == "habitable") {
      line += is_nan(x.purge_l_per_s) ? "no extract" : "no extract; purge ventilation of " + three(x.purge_l_per_s) + " l/s";
    } else {
      line += "no rate";
    }
    text.push_back(line + ".");
    if (rooms[i].work == "never_had_fan" && x.fan_required != "yes") text.push_back("A fan where there never was one: " + x.fan_required + ". The rate is that of a new one.");
    if (rooms[i].work == "fan_replaced" && !x.notifiable.empty()) text.push_back("Replacing it on the existing cabling is notifiable: " + x.notifiable + ". It is measured all the same.");
    for (const auto& m : x.missing) text.push_back("Missing for \"" + rooms[i].name + "\": " + m + ".");
  }
  const auto& w = r.dwelling;
  array missing;
  for (const auto& m : w.missing) missing.push_back(m);
  if (!is_nan(w.flow_l_per_s)) {
    text.push_back("Whole dwelling: " + three(w.flow_l_per_s) + " l/s, governed by " + std::string(w.governs) + ".");
    if (w.continuous_l_per_s > 0.0 && w.extra_l_per_s > 0.0)
      text.push_back("The rooms with continuous extract ask for " + three(w.continuous_l_per_s) + " l/s together: " + three(w.extra_l_per_s) + " l/s more are to be extracted somewhere.");
  }
  for (const auto* t : book.tables())
    for (const auto& one : t->rules)
      if (one.limit == "information") {
        object entry{{"what", one.condition}, {"value", one.numbers[0]}, {"text", one.text}, {"source", source_of(one.from)}};
        information.push_back(entry);
        if (!by_information.find(one.condition)) by_information.set(std::string(one.condition), one.numbers[0]);
      }
  return object{{"rooms", room_list},
                {"dwelling", object{{"flow_l_per_s", document::number_or_null(w.flow_l_per_s)},
                                    {"flow_m3_per_h", document::number_or_null(3.6 * w.flow_l_per_s)},
                                    {"governs", w.governs},
                                    {"by_number_l_per_s", document::number_or_null(w.by_number_l_per_s)},
                                    {"by_area_l_per_s", document::number_or_null(w.by_area_l_per_s)},
                                    {"least_l_per_s", document::number_or_null(w.least_l_per_s)},
                                    {"counted_by", w.condition},
                                    {"rule", rule_of(w.rule)},
                                    {"continuous_l_per_s", w.continuous_l_per_s},
                                    {"extra_l_per_s", document::number_or_null(w.extra_l_per_s)},
                                    {"undercut_mm2", document::number_or_null(w.undercut.value)},
                                    {"undercut", rule_of(w.undercut)},
                                    {"missing", missing}}},
                {"information", information},
                {"numbers", by_information},
                {"rulebook", book.id()},
                {"text", text}};
}
constexpr model required_model{
    {"ventilation_required",
     "What a rulebook asks of the ventilation of rooms and of the dwelling: rates by kind of room, air changes, number and area, which of them governs, overrun, "
     "background ventilators, purge, gaps under doors, and what changes in work on an existing dwelling.",
     required_arguments, {"Approved Document F, volume 1, 2021 edition (England)", "sections 1 and 3"}, run_required, nullptr}};

// ---- commissioned_flow ---------------------------------------------------------------------------------------------------------

constexpr model_argument commissioned_arguments[] = {{"flow_l_per_s", "reading", "flow as measured, 0 to 100000 l/s, with what is known of the instrument"},
                                                     {"design_flow_l_per_s", "number", "flow as designed, above 0 to 100000 l/s"},
                                                     {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook"},
                                                     {"extent", "text", "\"room\" (left out) or \"dwelling\"", true}};
document::value run_commissioned(const object& inputs, const rulebook& book) {
  const std::string who = "commissioned_flow";
  const fields in(who, inputs);
  in.only("flow_l_per_s", "design_flow_l_per_s", "extent");
  const std::string extent = in.has("extent") ? in.text("extent") : std::string("room");
  if (flow_extents.find(extent) < 0) throw range_error(who + ": extent = \"" + extent + "\" is not one of \"room\", \"dwelling\"");
  const auto c = commissioned_flow(given(reading_from(in.need("flow_l_per_s"))), in.number("design_flow_l_per_s"), extent, book);
  array text;
  const auto& v = c.least;
  if (v.reason == reason::no_rule_in_book) {
    text.push_back("No named rulebook says how a measured flow is held against its design.");
  } else {
    text.push_back("By the rulebook: " + std::string(outcome_text(c.outcome)) + (c.of_book ? " (" + (c.decision.overridden.empty() ? c.decision.text : c.decision.overridden) + ")." : ". It does not say how uncertainty counts: the default rule was taken."));
    if (c.outcome != c.proved.outcome && !c.limited_above)
      text.push_back("With the doubt of the measurement it is " + std::string(outcome_text(c.proved.outcome)) + " (probability " + three(c.proved.probability) + "): what the rulebook accepts need not be proved.");
  }
  text.push_back("Doors and windows shut, other fans as they are used; say instrument, its calibration and the method with the number.");
  return object{{"outcome", outcome_text(c.outcome)},
                {"decided_by", c.decided_by.name()},
                {"decision", rule_of(c.decision)},
                {"least", to_document(c.least, false)},
                {"most", c.limited_above ? to_document(c.most, false) : document::value(nullptr)},
                {"default_outcome", outcome_text(c.proved.outcome)},
                {"probability", document::number_or_null(c.proved.probability)},
                {"text", text}};
}
constexpr model commissioned_model{
    {"commissioned_flow",
     "A flow measured at commissioning against its design, decided as the rulebook itself decides: the reading alone (England), or a tolerance that includes the "
     "uncertainty of the measurement (Finland).",
     commissioned_arguments, {"Approved Document F, volume 1, 2021 edition (England)", "Appendix C, C2"}, run_commissioned, nullptr}};

// ---- outlet_options ---------------------------------------------------------------------------------------------------------------

constexpr model_argument outlet_arguments[] = {
    {"fan", "object", "as for operating_point: {\"points\": [[flow in l/s, pressure in Pa], ...], ...}"},
    {"options", "objects",
     "{\"name\", \"segments\": as for duct_run, \"discharge_to\": \"outside\" (left out), \"roof_void\", \"vented_roof_void\", \"soffit\", \"ridge_vent\", "
     "\"crawl_space\", \"other_room\" or \"recirculated\", \"cold_void_m\": length of duct in the cold void (left out: all of it), \"cost\": without "
     "insulation}"},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook: the rate, and where the air may go", true},
    {"required_l_per_s", "number", "flow to be moved, above 0 to 100000 l/s; or give \"room\"", true},
    {"room", "object", "instead of it, what ventilation_required takes for a room; needs the rulebook", true},
    {"insulation_cost_per_m", "number", "price of insulating a metre of duct, 0 to 1e6", true},
    {"fan_percent", "number", "limits of the fan's pressure against its curve, 0 to 50 %; left out: 10", true},
    {"air", "object", "as for duct_run", true}};
document::value run_outlets(const object& inputs, const rulebook& book) {
  const std::string who = "outlet_options";
  const fields in(who, inputs);
  in.only("fan", "options", "required_l_per_s", "room", "insulation_cost_per_m", "fan_percent", "air");
  outlet_job job;
  job.air = air_from(who, in);
  const auto fan = fan_from(path(who, "fan"), object_of(who, in, "fan"), job.air);
  job.fan = fan.curve;
  job.fan_outlet_pa_s2_per_l2 = fan.outlet_pa_s2_per_l2;
  if (in.has("fan_percent")) job.fan_percent = finite_or_none(who, in, "fan_percent");
  job.insulation_cost_per_m = finite_or_none(who, in, "insulation_cost_per_m");
  if (in.has("room") == in.has("required_l_per_s")) throw range_error(who + ": \"required_l_per_s\" or \"room\"");
  std::string by;
  if (in.has("room")) {
    const auto room = room_from(path(who, "room"), object_of(who, in, "room"), 0);
    const auto asked = required_in_room(room, {}, book);
    if (!asked.missing.empty()) throw rule_error(who + ": missing: " + asked.missing.front());
    if (is_nan(asked.flow_l_per_s)) throw rule_error(who + ": the rulebook asks for no flow in such a room");
    job.required_l_per_s = asked.flow_l_per_s;
    by = std::string(asked.flows[asked.governs].from.title) + ", " + std::string(asked.flows[asked.governs].from.clause);
  } else {
    job.required_l_per_s = finite_or_none(who, in, "required_l_per_s");
  }
  const auto& list = list_of(who, in, "options");
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto* o = list[i].as<object>();
    const std::string at = path(who, "options[" + std::to_string(i) + "]");
    if (!o) throw range_error(at + ": must be an object");
    const fields f(at, *o);
    f.only("name", "segments", "discharge_to", "cold_void_m", "cost");
    outlet_option one;
    one.name = f.text("name");
    one.run = segments_from(at, list_of(at, f, "segments"));
    if (f.has("discharge_to")) one.discharge_to = f.text("discharge_to");
    one.cold_void_m = finite_or_none(at, f, "cold_void_m");
    one.cost = finite_or_none(at, f, "cost");
    job.options.push_back(std::move(one));
  }
  const auto out = outlet_options(job, book);
  constexpr std::string_view states[] = {"found", "no_stable", "beyond_last_point", "below_first_point"};
  array ranked, never, text;
  for (const auto& r : out.all) {
    const auto& o = job.options[r.option];
    array cautions;
    for (const auto& c : r.cautions) cautions.push_back(c);
    const auto rule = r.discharge.rule();
    std::string why;
    if (!r.ranked) {
      if (r.discharge.outcome == outcome::fail) why = "forbidden: " + (rule.changed ? rule.changed->words() : r.discharge.rule_text()) + " (" + r.discharge.source_title() + ", " + r.discharge.source_clause() + ")";
      else if (r.discharge.outcome == outcome::pass) why = "this rulebook permits it under conditions (" + r.discharge.rule_text() + "); the water stays in the void all the same: it is not suggested";
      else why = "no named rulebook says whether it may; air that ends in a void is not discharged: it is not suggested";
    }
    object one{{"name", o.name},
               {"discharge_to", o.discharge_to},
               {"outcome", outcome_text(r.outcome)},
               {"probability", document::number_or_null(r.probability)},
               {"state", states[static_cast<std::size_t>(r.state)]},
               {"flow_l_per_s", document::number_or_null(r.flow_l_per_s)},
               {"standard_uncertainty_l_per_s", document::number_or_null(r.standard_uncertainty_l_per_s)},
               {"low_l_per_s", document::number_or_null(r.low_l_per_s)},
               {"high_l_per_s", document::number_or_null(r.high_l_per_s)},
               {"run_pa", r.run_pa},
               {"run_low_pa", r.run_low_pa},
               {"run_high_pa", r.run_high_pa},
               {"run_at_required_pa", r.required_run_pa},
               {"fan_at_required_pa", document::number_or_null(r.required_fan_pa)},
               {"worst", o.run[r.worst].name},
               {"worst_share_ratio", r.worst_share},
               {"insulate_m", r.insulate_m},
               {"insulate_assumed", r.insulate_assumed},
               {"cost", document::number_or_null(r.cost)},
               {"discharge_outcome", outcome_text(r.discharge.outcome)},
               {"discharge_rule", r.discharge.rule_text()},
               {"discharge_source", object{{"title", r.discharge.source_title()}, {"clause", r.discharge.source_clause()}, {"grade", r.discharge.source_grade()}}},
               {"why_not", why},
               {"cautions", cautions}};
    (r.ranked ? ranked : never).push_back(one);
    if (!r.ranked) {
      text.push_back("\"" + o.name + "\": " + why + ".");
      continue;
    }
    std::string line = "\"" + o.name + "\": ";
    if (!is_nan(r.flow_l_per_s)) line += three(r.flow_l_per_s) + " l/s (95 %: " + three(r.low_l_per_s) + " to " + three(r.high_l_per_s) + " l/s) at " + three(r.run_pa) + " Pa; ";
    else line += r.state == operating_result::state::below_first ? "no flow on the fan's curve; " : r.state == operating_result::state::beyond_last ? "more than the last point of the fan's curve, where nothing is known of it; " : "no flow that can be held; ";
    line += r.outcome == outcome::pass ? "the rate is met" : r.outcome == outcome::fail ? "the rate is not met" : "whether the rate is met is open";
    line += "; most is lost in \"" + o.run[r.worst].name + "\"";
    if (r.insulate_m > 0.0) line += "; insulate " + three(r.insulate_m) + " m" + (r.insulate_assumed ? " if all of it lies cold" : "");
    if (!is_nan(r.cost)) line += "; cost " + number_text(r.cost, 6);
    text.push_back(line + ".");
  }
  document::value best = nullptr;
  if (!ranked.empty() && out.all.front().outcome == outcome::pass) {
    best = job.options[out.all.front().option].name;
    text.push_back("Choose \"" + job.options[out.all.front().option].name + "\"" + (out.by_cost ? ": the cheapest of those that meet the rate." : ": the most air of those that meet the rate."));
  } else {
    text.push_back("No option is proved to meet the rate of " + three(job.required_l_per_s) + " l/s: a shorter or wider run, or a stronger fan; then measure.");
  }
  text.push_back("From lengths and shapes, without wind: measure the flow when it stands. In the cold void the duct is insulated and falls outwards, or it fills with water.");
  if (fan.static_without_outlet) text.push_back("The curve is one of static pressure and its outlet was not given: the velocity pressure there is left out, which gives a little less flow.");
  return object{{"best", best}, {"required_l_per_s", job.required_l_per_s}, {"required_by", by}, {"ranked_by", out.by_cost ? "cost" : "flow"}, {"options", ranked}, {"not_suggested", never}, {"text", text}};
}
constexpr model outlets_model{
    {"outlet_options",
     "Outlets that a fan could blow through, held against each other: flow with its doubt, pressure of the run and its worst part, whether the rate is met, what "
     "to insulate, cost; ranked, and never one that ends in a void.",
     outlet_arguments, {"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "system curve and fan curve"}, run_outlets, nullptr}};

}  // namespace

void requirements(std::vector<entry>& all) { append(all, "air", list<required_model, commissioned_model, outlets_model>{}); }
}  // namespace makegood::subjects

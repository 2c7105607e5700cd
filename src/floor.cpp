// SPDX-License-Identifier: MIT
// Models of the subject heating: heated floors that store heat.
#include <makegood/heating/floor_scenarios.hpp>
#include <makegood/heating/warm_up.hpp>
#include <makegood/heating/without_floor_limit.hpp>
#include <cmath>
#include <initializer_list>
#include <makegood/registry.hpp>
#include "floor_steps.hpp"
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::heating;
using document::array;
using document::number_or_null;
using document::object;

std::string celsius_text(double x) { return quantity_text(std::round(10.0 * x) / 10.0, "°C"); }
std::string duration_text(double s) {
  if (s < 90.0) return quantity_text(std::round(s), "s");
  if (s < 5400.0) return quantity_text(std::round(s / 60.0), "min");
  return quantity_text(std::round(s / 360.0) / 10.0, "h");
}
array numbers_list(const std::vector<double>& x) {
  array a;
  for (const double one : x) a.push_back(number_or_null(one));
  return a;
}
const object* object_in(std::string_view who, const fields& in, std::string_view name) {
  if (!in.has(name)) return nullptr;
  const auto* o = in.need(name).as<object>();
  if (!o) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be an object");
  return o;
}

// ---- materials -----------------------------------------------------------------------------------------------------

std::string materials_text() {
  std::string text;
  for (const auto& m : floor_materials) text += (text.empty() ? "\"" : ", \"") + std::string(m.name) + "\"";
  return text;
}
const floor_material& material_named(std::string_view who, const std::string& name) {
  if (const auto* m = find_floor_material(name)) return *m;
  std::vector<std::string_view> names;
  for (const auto& m : floor_materials) names.push_back(m.name);
  const std::string near = document::nearest(name, names);
  throw range_error(std::string(who) + ": material \"" + name + "\" is not one of " + materials_text() + (near.empty() ? "" : "; did you mean \"" +
      near + "\"?"));
}

constexpr model_argument material_arguments[] = {{"material", "text", "name of a material, such as \"ceramic_tile\", \"cement_screed\", \"timber\""}};
document::value run_material(const object& inputs, const rulebook&) {
  const fields in("floor_material", inputs);
  in.only("material");
  const auto& m = material_named("floor_material", in.text("material"));
  return object{{"material", m.name},
                {"description", m.text},
                {"conductivity_w_per_mk", m.conductivity_w_per_mk},
                {"density_kg_per_m3", m.density_kg_per_m3},
                {"specific_heat_j_per_kgk", m.specific_heat_j_per_kgk},
                {"effusivity_w_s05_per_m2k", std::sqrt(m.conductivity_w_per_mk * m.density_kg_per_m3 * m.specific_heat_j_per_kgk)},
                {"diffusivity_m2_per_s", m.conductivity_w_per_mk / (m.density_kg_per_m3 * m.specific_heat_j_per_kgk)},
                {"source", m.from.title},
                {"grade", m.from.grade},
                {"text", array{std::string(m.text) + ": " + quantity_text(m.conductivity_w_per_mk, "W/(mK)") + ", " +
                    quantity_text(m.density_kg_per_m3, "kg/m³") +
                               ", " + quantity_text(m.specific_heat_j_per_kgk, "J/(kgK)") +
                                   ". A design value: the product's own data count where they are at hand."}}};
}
constexpr model floor_material_model{{"floor_material", "Design values of a material of a floor by name: conductivity, density, specific heat, and "
    "where they are from.",
                                      material_arguments, makegood::heating::en_12524, run_material, nullptr}};

// ---- a build-up as a document --------------------------------------------------------------------------------------

std::vector<floor_layer> layers_from(std::string_view who, const document::value& v) {
  const auto* list_ = v.as<array>();
  if (!list_) throw range_error(std::string(who) + ": \"layers\" must be a list, from the surface down");
  std::vector<floor_layer> layers;
  for (std::size_t i = 0; i < list_->size(); ++i) {
    const std::string at = std::string(who) + ": layers[" + std::to_string(i) + "]";
    const auto* o = (*list_)[i].as<object>();
    if (!o) throw range_error(at + " must be an object: {\"material\": \"ceramic_tile\", \"thickness_mm\": 10}, its own numbers, or "
        "{\"resistance_m2k_per_w\": 0.18}");
    const fields in(at, *o);
    floor_layer l;
    if (in.has("name")) l.name = in.text("name");
    if (in.has("resistance_m2k_per_w")) {
      in.only("name", "resistance_m2k_per_w");
      l.resistance_m2k_per_w = in.number("resistance_m2k_per_w");
      if (!(l.resistance_m2k_per_w > 0.0)) throw range_error(at + ": resistance_m2k_per_w = " + number_text(l.resistance_m2k_per_w) +
          " m²K/W: above 0");
    } else {
      in.only("name", "material", "thickness_mm", "conductivity_w_per_mk", "density_kg_per_m3", "specific_heat_j_per_kgk");
      l.thickness_m = in.number("thickness_mm") / 1000.0;
      if (in.has("material")) {
        const auto& m = material_named(at, in.text("material"));
        if (l.name.empty()) l.name = m.name;
        l.conductivity_w_per_mk = m.conductivity_w_per_mk;
        l.density_kg_per_m3 = m.density_kg_per_m3;
        l.specific_heat_j_per_kgk = m.specific_heat_j_per_kgk;
      }
      const auto own = [&](std::string_view name, double& into) {
        if (in.has(name)) into = in.number(name);
        else if (!in.has("material")) throw range_error(at + ": \"" + std::string(name) + "\" is missing; or name a \"material\"");
      };
      own("conductivity_w_per_mk", l.conductivity_w_per_mk);
      own("density_kg_per_m3", l.density_kg_per_m3);
      own("specific_heat_j_per_kgk", l.specific_heat_j_per_kgk);
    }
    layers.push_back(std::move(l));
  }
  return layers;
}
std::size_t layer_count_in(std::string_view who, const fields& in, std::string_view name, std::size_t otherwise, std::size_t most) {
  if (!in.has(name)) return otherwise;
  const double x = in.number(name);
  if (!(x >= 0.0 && x <= static_cast<double>(most) && x == std::floor(x)))
    throw range_error(std::string(who) + ": \"" + std::string(name) + "\" = " + number_text(x) + ": a whole number from 0 to " +
        std::to_string(most) + ", how many layers lie above");
  return static_cast<std::size_t>(x);
}
void room_from(std::string_view who, const fields& in, floor_setup& s, array& assumptions) {
  const auto& v = in.need("room");
  if (const auto* x = v.as<double>()) {
    s.room.temperature_c = *x;
    assumptions.push_back("The room stays at " + celsius_text(*x) + ", whatever the floor gives off.");
    return;
  }
  const auto* o = v.as<object>();
  if (!o) throw range_error(std::string(who) + ": \"room\" is a temperature in °C, or an object with \"temperature_c\"");
  const std::string at = std::string(who) + ": room";
  const fields room(at, *o);
  room.only("temperature_c", "heat_loss_w_per_k", "outside_c", "capacity_kj_per_k", "heated_area_m2");
  s.room.temperature_c = room.number("temperature_c");
  if (!room.has("heat_loss_w_per_k") && !room.has("capacity_kj_per_k")) {
    assumptions.push_back("The room stays at " + celsius_text(s.room.temperature_c) + ", whatever the floor gives off.");
    return;
  }
  const double area = room.number("heated_area_m2");
  if (!(area > 0.0 && area <= 1000.0)) throw range_error(at + ": heated_area_m2 = " + number_text(area) + " m²: above 0, to 1000");
  s.room.lumped = true;
  s.room.loss_w_per_m2k = room.number("heat_loss_w_per_k") / area;
  s.room.capacity_j_per_m2k = 1000.0 * room.number("capacity_kj_per_k") / area;
  s.room.outside_c = room.number("outside_c");
  assumptions.push_back("The room is one body at one temperature: air, furniture and the inner skin of the walls together.");
}
void below_from(std::string_view who, const fields& in, floor_setup& s, array& assumptions) {
  const auto* o = object_in(who, in, "below");
  if (!o) {
    assumptions.push_back("No heat is lost downwards: \"below\" was left out.");
    return;
  }
  const std::string at = std::string(who) + ": below";
  const fields below(at, *o);
  below.only("temperature_c", "resistance_m2k_per_w");
  s.below.temperature_c = below.number("temperature_c");
  const double r = below.number("resistance_m2k_per_w");
  if (!(r >= 1e-9 && r <= 100.0)) throw range_error(at + ": resistance_m2k_per_w = " + number_text(r) + " m²K/W: above 0, to 100");
  s.below.conductance_w_per_m2k = 1.0 / r;
}
void loss_from(std::string_view who, const fields& in, floor_setup& s, array& assumptions) {
  std::string law = "characteristic";
  const std::string at = std::string(who) + ": upper_loss";
  if (const auto* o = object_in(who, in, "upper_loss")) {
    const fields loss(at, *o);
    loss.only("law", "coefficient_w_per_m2k", "emissivity", "convection_up_w_per_m2k", "convection_down_w_per_m2k");
    law = loss.text("law");
    s.loss.coefficient = loss.number_or("coefficient_w_per_m2k", 10.8);
    s.loss.emissivity = loss.number_or("emissivity", 0.9);
    s.loss.convection_up = loss.number_or("convection_up_w_per_m2k", 5.0);
    s.loss.convection_down = loss.number_or("convection_down_w_per_m2k", 0.7);
  }
  if (law == "characteristic") {
    s.loss.is = surface_loss::law::characteristic;
    assumptions.push_back(
        "Surface to room: 8.92 (t_F - t_i)^1.1 W/m², the base characteristic of a heated floor at rest. A floor colder than the room takes 7 "
            "W/(m²K), as for floor "
        "cooling: the characteristic says nothing there.");
  } else if (law == "linear") {
    s.loss.is = surface_loss::law::linear;
    assumptions.push_back("Surface to room: " + number_text(s.loss.coefficient) + " W/(m²K) times the difference.");
  } else if (law == "convection_and_radiation") {
    s.loss.is = surface_loss::law::parts;
    assumptions.push_back("Surface to room: convection " + number_text(s.loss.convection_up) + " W/(m²K) upwards, " +
        number_text(s.loss.convection_down) +
                          " W/(m²K) into a colder floor, and radiation of emissivity " + number_text(s.loss.emissivity) +
                              " to walls at the room's temperature.");
  } else {
    throw range_error(at + ": law \"" + law + "\" is not one of \"characteristic\", \"linear\", \"convection_and_radiation\"");
  }
}
void cover_from(std::string_view who, const fields& in, floor_setup& s) {
  const auto* o = object_in(who, in, "cover");
  if (!o) return;
  const std::string at = std::string(who) + ": cover";
  const fields cover(at, *o);
  cover.only("resistance_m2k_per_w", "area_ratio");
  s.cover_resistance = cover.number("resistance_m2k_per_w");
  s.cover_ratio = cover.number("area_ratio");
  if (!(s.cover_resistance > 0.0)) throw range_error(at + ": resistance_m2k_per_w must be above 0 (one tog is 0.1 m²K/W)");
}
void thermostat_from(std::string_view who, const fields& in, floor_setup& s) {
  const auto* o = object_in(who, in, "thermostat");
  if (!o) return;
  const std::string at = std::string(who) + ": thermostat";
  const fields t(at, *o);
  t.only("senses", "set_point_c", "hysteresis_k", "floor_limit_c", "limit_hysteresis_k", "air_offset_k", "air_elsewhere_c", "probe_covered");
  auto& to = s.thermostat;
  const std::string& senses = t.text("senses");
  using by = floor_thermostat::senses;
  if (senses == "air") to.by = by::air;
  else if (senses == "floor") to.by = by::floor;
  else if (senses == "air_with_floor_limit") to.by = by::air_with_floor_limit;
  else throw range_error(at + ": senses \"" + senses + "\" is not one of \"air\", \"floor\", \"air_with_floor_limit\"");
  to.set_c = t.number("set_point_c");
  to.hysteresis_k = t.number_or("hysteresis_k", 1.0);
  if (to.by == by::air_with_floor_limit) to.floor_limit_c = t.number("floor_limit_c");
  to.limit_hysteresis_k = t.number_or("limit_hysteresis_k", 1.0);
  to.air_offset_k = t.number_or("air_offset_k", 0.0);
  if (t.has("air_elsewhere_c")) to.elsewhere_c = t.number("air_elsewhere_c");
  heating::detail::demand_between(at, "air_offset_k", to.air_offset_k, -50.0, 50.0, "K");
  if (!is_nan(to.elsewhere_c)) heating::detail::demand_between(at, "air_elsewhere_c", to.elsewhere_c, absolute_zero_c, 60.0, "°C");
  if (t.has("probe_covered")) {
    const auto* b = t.need("probe_covered").as<bool>();
    if (!b) throw range_error(at + ": \"probe_covered\" is true or false");
    s.probe_covered = *b;
    if (*b && !(s.cover_ratio > 0.0)) throw range_error(at + ": \"probe_covered\" needs a \"cover\"");
  }
}
floor_setup setup_from(std::string_view who, const fields& in, array& assumptions) {
  floor_setup s;
  s.layers = layers_from(who, in.need("layers"));
  s.heater_after = layer_count_in(who, in, "heater_after_layer", 1, s.layers.size());
  s.probe_after = layer_count_in(who, in, "probe_after_layer", floor_setup::no_layer, s.layers.size());
  s.power_w_per_m2 = in.number("power_density_w_per_m2");
  room_from(who, in, s, assumptions);
  below_from(who, in, s, assumptions);
  loss_from(who, in, s, assumptions);
  cover_from(who, in, s);
  return s;
}
object rest_document(const floor_rest& r) {
  return object{{"reached", r.reached},
                {"surface_c", number_or_null(r.surface_c)},
                {"top_of_cover_c", number_or_null(r.top_of_cover_c)},
                {"bond_c", number_or_null(r.bond_c)},
                {"heater_c", number_or_null(r.heater_c)},
                {"room_c", number_or_null(r.room_c)},
                {"up_w_per_m2", r.reached ? document::value(r.up_w_per_m2) : document::value(nullptr)},
                {"down_w_per_m2", r.reached ? document::value(r.down_w_per_m2) : document::value(nullptr)}};
}
constexpr std::string_view one_dimension =
    "The floor is calculated as plane layers: between two runs of the heater it is colder than said here, at them warmer; edges lose more.";
constexpr std::string_view before_energising =
    "Before a floor heater is energised: insulation, screen, resistance and RCD are proved, and the adhesive or screed has cured as its maker says. "
        "Isolation is always open to you.";

// ---- floor_warm_up -------------------------------------------------------------------------------------------------

constexpr source conduction_source{"conservation of heat and Fourier's law; steps: Hosea and Shampine, Applied Numerical Mathematics 20 (1996) 21",
    "finite volumes, TR-BDF2",
                                   "derived"};
constexpr std::string_view layers_text =
    "from the surface down: {\"material\": \"ceramic_tile\", \"thickness_mm\": 10}, or thickness_mm with conductivity_w_per_mk, density_kg_per_m3, "
        "specific_heat_j_per_kgk; or "
    "{\"resistance_m2k_per_w\": 0.18} for a contact, a void or a membrane that stores nothing";
constexpr model_argument warm_up_arguments[] = {
    {"layers", "objects", layers_text},
    {"power_density_w_per_m2", "number", "what the heater delivers for each square metre while it is on, 0 to 1e6 W/m²"},
    {"initial_c", "number", "temperature of the whole floor at the start, °C"},
    {"room", "number or object", "temperature in °C, or {\"temperature_c\"} with \"heat_loss_w_per_k\", \"outside_c\", \"capacity_kj_per_k\", "
        "\"heated_area_m2\" for a room that the floor warms"},
    {"heater_after_layer", "number", "how many layers lie above the heater; left out: 1", true},
    {"duration_s", "number", "left out: 14400 s, or the last of times_s", true},
    {"below", "object", "{\"temperature_c\", \"resistance_m2k_per_w\"} under the last layer; left out: no loss downwards", true},
    {"cover", "object", "a rug or mat: {\"resistance_m2k_per_w\", \"area_ratio\"} (1 tog = 0.1 m²K/W)", true},
    {"thermostat", "object",
     "{\"senses\": \"air\" | \"floor\" | \"air_with_floor_limit\", \"set_point_c\", \"hysteresis_k\" (the whole width, 1), \"floor_limit_c\", "
         "\"limit_hysteresis_k\", "
     "\"air_offset_k\", \"air_elsewhere_c\", \"probe_covered\"}; left out: always on",
     true},
    {"upper_loss", "object",
     "{\"law\": \"characteristic\" (left out) | \"linear\" with \"coefficient_w_per_m2k\" (10.8) | \"convection_and_radiation\" with \"emissivity\" "
         "(0.9), "
     "\"convection_up_w_per_m2k\" (5), \"convection_down_w_per_m2k\" (0.7)}",
     true},
    {"probe_after_layer", "number", "how many layers lie above the floor probe; left out: at the heater", true},
    {"times_s", "numbers", "when temperatures are wanted, rising; left out: 49 of them, evenly", true},
    {"target_c", "number", "of the surface: when it is reached", true},
    {"error_k", "number", "largest error of these temperatures from the calculation's steps and cells, 1e-6 to 5 K; left out: 0.02", true}};

document::value run_warm_up(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "floor_warm_up";
  const fields in(who, inputs);
  in.only("layers", "power_density_w_per_m2", "initial_c", "room", "heater_after_layer", "duration_s", "below", "cover", "thermostat", "upper_loss",
      "probe_after_layer", "times_s",
          "target_c", "error_k");
  array assumptions, cautions, findings, text;
  floor_setup s = setup_from(who, in, assumptions);
  thermostat_from(who, in, s);
  s.initial_c = in.number("initial_c");
  if (in.has("times_s")) s.times_s = numbers_of(who, "times_s", in.need("times_s"));
  if (in.has("duration_s")) s.duration_s = in.number("duration_s");
  else if (!s.times_s.empty()) s.duration_s = s.times_s.back();
  if (in.has("target_c")) s.target_c = in.number("target_c");
  if (in.has("error_k")) s.error_k = in.number("error_k");
  std::vector<floor_passage> marks;
  for (const auto& m : surface_marks) marks.push_back({m.limit_c});
  const auto r = floor_warm_up(s, marks);

  array on, passages;
  for (const bool b : r.on) on.push_back(b);
  const bool covered = s.cover_ratio > 0.0;
  for (std::size_t i = 0; i < r.passages.size(); ++i) {
    const auto& p = r.passages[i];
    passages.push_back(object{{"limit_c", p.limit_c}, {"text", surface_marks[i].text}, {"uncovered_s", number_or_null(p.uncovered_s)}, {"covered_s",
        number_or_null(p.covered_s)}});
    if (!is_nan(p.uncovered_s) || !is_nan(p.covered_s))
      findings.push_back("The surface " + std::string(is_nan(p.uncovered_s) ? "under the cover " : "") + "passes " + celsius_text(p.limit_c) + " (" +
          std::string(surface_marks[i].text) +
                         ") after " + duration_text(is_nan(p.uncovered_s) ? p.covered_s : p.uncovered_s) + ".");
  }
  if (!r.rest.reached) findings.push_back("Nothing carries the heat away: the floor would grow warmer as long as the heater is on.");
  else {
    text.push_back("With the heater on all the time the surface would come to rest at " + celsius_text(r.rest.surface_c) +
                   (covered && r.rest_covered.reached ? ", under the cover at " + celsius_text(r.rest_covered.surface_c) : std::string()) + "; " +
                   quantity_text(std::round(r.rest.up_w_per_m2), "W/m²") + " go up and " + quantity_text(std::round(r.rest.down_w_per_m2), "W/m²") +
                       " down.");
    const double hottest = covered && r.rest_covered.reached ? std::max(r.rest.heater_c, r.rest_covered.heater_c) : r.rest.heater_c;
    if (s.initial_c > hottest + 1e-9 && s.power_w_per_m2 > 0.0)
      findings.push_back("The floor begins hotter than its heater could ever make it (" + celsius_text(hottest) +
          " at the heater): another source heats it, or a number is wrong.");
    if (!is_nan(s.target_c) && is_nan(r.target_s) && s.target_c > std::max(r.rest.surface_c, s.initial_c))
      findings.push_back(celsius_text(s.target_c) + " is never reached at the surface: at rest it has " + celsius_text(r.rest.surface_c) + ".");
  }
  if (!is_nan(s.target_c)) {
    if (!is_nan(r.target_s)) text.push_back("The surface reaches " + celsius_text(s.target_c) + " after " + duration_text(r.target_s) + ".");
    else text.push_back("The surface does not reach " + celsius_text(s.target_c) + " within " + duration_text(s.duration_s) + ".");
  }
  text.push_back("Highest: surface " + celsius_text(r.highest_surface_c) + (covered ? ", under the cover " + celsius_text(r.highest_covered_c)
      : std::string()) + ", at the heater " +
                 celsius_text(r.highest_heater_c) + ".");
  const std::string numerics = "The steps and cells of the calculation leave about " + quantity_text(r.error_k, "K", 2) + " (asked: " +
      quantity_text(s.error_k, "K", 2) + "): " +
                               std::to_string(r.nodes) + " nodes, " + std::to_string(r.steps) + " steps, refined " + (r.refinements == 1
                                   ? std::string("once") : std::to_string(r.refinements) + " times") +
                               ". What the build-up really is, leaves more.";
  text.push_back(numerics);
  for (const auto& f : findings) text.push_back(f);
  cautions.push_back(one_dimension);
  if (covered) cautions.push_back("Under a cover the floor is hotter than beside it, and a probe beside it does not know.");
  if (s.thermostat.by == floor_thermostat::senses::air) cautions.push_back("Air alone is sensed: nothing here limits the floor's temperature "
      "(without_floor_limit).");
  if (s.thermostat.by == floor_thermostat::senses::nothing && s.power_w_per_m2 > 0.0) cautions.push_back("No thermostat was given: the heater is on "
      "all the time.");
  cautions.push_back(before_energising);
  const auto& e = r.energy;
  return object{{"times_s", numbers_list(r.times_s)},
                {"surface_c", numbers_list(r.surface_c)},
                {"covered_surface_c", numbers_list(r.covered_c)},
                {"probe_c", numbers_list(r.probe_c)},
                {"heater_c", numbers_list(r.heater_c)},
                {"room_c", numbers_list(r.room_c)},
                {"heater_on", on},
                {"highest_surface_c", r.highest_surface_c},
                {"highest_covered_surface_c", number_or_null(r.highest_covered_c)},
                {"highest_heater_c", r.highest_heater_c},
                {"target_s", number_or_null(r.target_s)},
                {"passages", passages},
                {"switched_s", numbers_list(r.switched_s)},
                {"on_ratio", r.on_ratio},
                {"supplied_j_per_m2", e.supplied},
                {"up_j_per_m2", e.up},
                {"down_j_per_m2", e.down},
                {"stored_j_per_m2", r.stored_j_per_m2},
                {"stored_by_room_j_per_m2", r.stored_by_room_j_per_m2},
                {"lost_by_room_j_per_m2", e.lost_by_room},
                {"balance_ratio", r.balance_ratio},
                {"error_k", r.error_k},
                {"error_asked_k", s.error_k},
                {"nodes_count", r.nodes},
                {"steps_count", r.steps},
                {"refinements_count", r.refinements},
                {"steady", rest_document(r.rest)},
                {"steady_covered", covered ? document::value(rest_document(r.rest_covered)) : document::value(nullptr)},
                {"findings", findings},
                {"assumptions", assumptions},
                {"cautions", cautions},
                {"text", text}};
}
constexpr model floor_warm_up_model{
    {"floor_warm_up",
     "A heated floor in time: conduction through any stack of layers with the heater between two of them, losses upwards and downwards, a cover over part of it, a thermostat by air, "
     "by floor, or by air with a floor limit. Refined until the error asked for is met.",
     warm_up_arguments, conduction_source, run_warm_up, nullptr}};

// ---- without_floor_limit -------------------------------------------------------------------------------------------

constexpr model_argument unlimited_arguments[] = {
    {"layers", "objects", layers_text},
    {"power_density_w_per_m2", "number", "what the heater delivers for each square metre, as rated"},
    {"set_point_c", "number", "of the air, 5 to 40 °C"},
    {"finish", "text", "what is laid on top: \"tile\" (left out), \"timber\" or \"vinyl\"; the first layer is that finish", true},
    {"heater_after_layer", "number", "how many layers lie above the heater; left out: 1", true},
    {"below", "object", "{\"temperature_c\", \"resistance_m2k_per_w\"} under the last layer; left out: no loss downwards", true},
    {"cover", "object", "what lies on part of the floor: {\"resistance_m2k_per_w\", \"area_ratio\"}; left out: a rug of 0.15 m²K/W on a quarter",
        true},
    {"room", "number or object", "{\"temperature_c\", \"heat_loss_w_per_k\", \"outside_c\", \"capacity_kj_per_k\", \"heated_area_m2\"}; left out: "
        "the room stands at the set-point", true},
    {"air_elsewhere_c", "number", "the thermostat senses the air of another room, at this temperature", true},
    {"worst_power_ratio", "number", "most that the heater may deliver over its rating, 1 to 3; left out: 1.27 (253 V on an element for 230 V, and 5 "
        "% less resistance)", true},
    {"written_permission", "bool", "the maker of the heater permits it in writing; left out: no", true}};

document::value run_unlimited(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "without_floor_limit";
  const fields in(who, inputs);
  in.only("layers", "power_density_w_per_m2", "set_point_c", "finish", "heater_after_layer", "below", "cover", "room", "air_elsewhere_c",
      "worst_power_ratio", "written_permission");
  array assumptions, cautions, text, acts;
  unlimited_floor u;
  u.floor.layers = layers_from(who, in.need("layers"));
  u.floor.heater_after = layer_count_in(who, in, "heater_after_layer", 1, u.floor.layers.size());
  u.floor.power_w_per_m2 = in.number("power_density_w_per_m2");
  u.set_c = in.number("set_point_c");
  if (in.has("room")) room_from(who, in, u.floor, assumptions);
  else u.floor.room.temperature_c = is_finite(u.set_c) ? u.set_c : 20.0;
  below_from(who, in, u.floor, assumptions);
  loss_from(who, in, u.floor, assumptions);
  cover_from(who, in, u.floor);
  if (!in.has("cover")) {
    u.floor.cover_resistance = 0.15;
    u.floor.cover_ratio = 0.25;
    assumptions.push_back("A rug of 0.15 m²K/W lies on a quarter of the floor.");
  }
  const std::string finish = in.has("finish") ? in.text("finish") : "tile";
  u.finish = finish;
  if (in.has("air_elsewhere_c")) u.sensed_c = in.number("air_elsewhere_c");
  u.worst_power_ratio = in.has("worst_power_ratio") ? in.number("worst_power_ratio") : 1.27;
  bool permitted = false;
  if (in.has("written_permission")) {
    const auto* b = in.need("written_permission").as<bool>();
    if (!b) throw range_error("without_floor_limit: \"written_permission\" is true or false");
    permitted = *b;
  }
  const auto r = without_floor_limit(u);

  array cases, reliance;
  for (const auto& c : r.cases) {
    array passages;
    for (const auto& p : c.passages)
      passages.push_back(object{{"limit_c", p.limit_c}, {"at_bond", p.at_bond}, {"uncovered_s", number_or_null(p.uncovered_s)}, {"covered_s",
          number_or_null(p.covered_s)}});
    cases.push_back(object{{"finish", c.finish},
                           {"as_laid", c.as_laid},
                           {"limit_c", c.limit_c},
                           {"limit_at_bond", c.at_bond},
                           {"usual", rest_document(c.usual)},
                           {"usual_covered", rest_document(c.usual_covered)},
                           {"worst", rest_document(c.worst)},
                           {"worst_covered", rest_document(c.worst_covered)},
                           {"passages", passages},
                           {"passes_limit", c.passes_limit}});
    const auto& own = c.passages.back();
    const auto after = [&](double s) { return is_nan(s) ? std::string("not within two days") : "after " + duration_text(s); };
    const auto at = [&](const floor_rest& x) { return x.reached ? celsius_text(c.at_bond ? x.bond_c : x.surface_c) : std::string("without end"); };
    text.push_back(std::string(c.finish) + (c.as_laid ? " (laid)" : "") + ", limit " + celsius_text(c.limit_c) + (c.at_bond ? " at the bond"
        : " at the surface") + ": at rest " + at(c.usual) +
                   " bare and " + at(c.usual_covered) + " covered; at worst " + at(c.worst) + " and " + at(c.worst_covered) +
                       ". The limit is passed " + after(own.uncovered_s) + " bare, " +
                   after(own.covered_s) + " covered.");
  }
  for (const auto& x : r.reliance)
    reliance.push_back(object{{"set_point_c", x.set_c},
                              {"surface_low_c", number_or_null(x.surface_low_c)},
                              {"surface_high_c", number_or_null(x.surface_high_c)},
                              {"covered_high_c", number_or_null(x.covered_high_c)}});
  const auto& here = r.reliance[r.reliance.size() / 2];
  if (is_finite(here.surface_low_c) && is_finite(here.surface_high_c))
    text.push_back("The set-point says little of the floor: with the air at " + celsius_text(here.set_c) + " the bare floor may rest anywhere from " +
        celsius_text(here.surface_low_c) +
                   " (on a quarter of the time) to " + celsius_text(here.surface_high_c) + " (on all the time)" +
                   (is_finite(here.covered_high_c) ? ", covered up to " + celsius_text(here.covered_high_c) : std::string()) +
                       ". Four kelvin less on the dial take about four off that.");
  if (is_finite(r.surface_per_offset))
    text.push_back("Each kelvin by which the sensed air is colder than the bathroom's lets the floor be " +
        number_text(std::round(100.0 * r.surface_per_offset) / 100.0) + " K warmer before it acts.");
  if (r.never_off) text.push_back("The air that is sensed is another room's, colder than the set-point: the heater is never switched off.");
  if (r.never_on) text.push_back("The air that is sensed is another room's, warmer than the set-point: the heater is off for now, and comes on for "
      "good when that room cools.");
  const std::string outcome = r.passes_limit ? "fail" : "undecided";
  text.push_back(r.passes_limit ? "Nothing limits the temperature of this floor, and at worst it passes what its finish bears."
                                : "Nothing limits the temperature of this floor. That this calculation stays below a limit is no limit: a thicker "
                                    "cover, furniture or a stuck relay changes it.");
  acts.push_back("Isolate the floor heating and lock it off.");
  acts.push_back("Or restore the floor limit: mend or replace the floor probe, prove that it is read, and set the thermostat to limit by it.");
  acts.push_back("Or have the written permission of the heater's maker for this thermostat, this setting and this floor, and keep it with the "
      "record.");
  if (permitted) text.push_back("The maker's written permission is stated. It is the maker's word on the heater; this calculation adds no pass to "
      "it, and the finish and what lies on it have limits of their own.");
  for (const auto& a : acts) text.push_back(a);
  cautions.push_back(one_dimension);
  cautions.push_back("A small cover loses heat sideways, which is left out: it is a little colder under it than said here, under a large one it is "
      "not.");
  cautions.push_back("A child, or someone who does not feel heat well, can be burnt by long contact at 43 °C and above.");
  cautions.push_back(before_energising);
  return object{{"outcome", outcome},
                {"passes_limit", r.passes_limit},
                {"written_permission", permitted},
                {"room_c", number_or_null(r.room_c)},
                {"cases", cases},
                {"reliance", reliance},
                {"surface_per_offset_ratio", number_or_null(r.surface_per_offset)},
                {"never_off", r.never_off},
                {"never_on", r.never_on},
                {"acts", acts},
                {"assumptions", assumptions},
                {"cautions", cautions},
                {"text", text}};
}
constexpr model without_floor_limit_model{
    {"without_floor_limit",
     "A floor heater whose thermostat was switched to sense air alone because its floor probe failed: the floor at rest, at worst and under a cover, on tile, timber and vinyl, and how "
     "soon it passes what the finish bears. Never a pass.",
     unlimited_arguments, conduction_source, run_unlimited, nullptr}};

// ---- warm_up_evidence ----------------------------------------------------------------------------------------------

constexpr model_argument evidence_arguments[] = {
    {"times_s", "numbers", "of each reading since the heater was switched on, rising; 0 or less: before it"},
    {"temperatures_c", "numbers", "as displayed, 2 to 16 of them"},
    {"build_up", "object", "{\"layers\", \"power_density_w_per_m2\" as rated, \"room\", \"heater_after_layer\", \"probe_after_layer\", \"below\", "
        "\"cover\"} as in floor_warm_up"},
    {"proved", "object", "{\"insulation\", \"screen\", \"resistance\", \"rcd\"}: true for what was proved before anything was energised"},
    {"resolution_k", "number", "one step of the display; left out: 0.5 K", true},
    {"timing_s", "number", "doubt of each time, half width; left out: 30 s", true},
    {"room_doubt_k", "number", "standard uncertainty of the room's temperature against the floor's; left out: 1 K", true},
    {"heater_spacing_mm", "number", "between two runs of the heater; left out: 75 mm", true}};
constexpr source evidence_source{"conservation of heat; joint likelihood of all readings", "finite volumes, Bayes' rule", "derived"};

document::value run_evidence(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "warm_up_evidence";
  const fields in(who, inputs);
  in.only("times_s", "temperatures_c", "build_up", "proved", "resolution_k", "timing_s", "room_doubt_k", "heater_spacing_mm");
  array assumptions, cautions, text, missing, readings;
  warm_up_readings w;
  w.times_s = numbers_of(who, "times_s", in.need("times_s"));
  w.temperatures_c = numbers_of(who, "temperatures_c", in.need("temperatures_c"));
  const auto* built = object_in(who, in, "build_up");
  if (!built) throw range_error("warm_up_evidence: \"build_up\" is missing");
  const fields build("warm_up_evidence: build_up", *built);
  build.only("layers", "power_density_w_per_m2", "room", "heater_after_layer", "probe_after_layer", "below", "cover");
  w.floor = setup_from("warm_up_evidence: build_up", build, assumptions);
  assumptions.back() = "Surface to room: 10.8 W/(m²K) times the difference, so that answers add.";  // in place of the law of a floor at rest
  w.resolution_k = in.has("resolution_k") ? in.number("resolution_k") : 0.5;
  w.timing_s = in.has("timing_s") ? in.number("timing_s") : 30.0;
  w.room_doubt_k = in.has("room_doubt_k") ? in.number("room_doubt_k") : 1.0;
  w.spacing_m = in.has("heater_spacing_mm") ? in.number("heater_spacing_mm") / 1000.0 : 0.075;
  const auto* proved = object_in(who, in, "proved");
  if (!proved) throw range_error("warm_up_evidence: \"proved\" is missing: what was proved before anything was energised");
  const fields before("warm_up_evidence: proved", *proved);
  before.only("insulation", "screen", "resistance", "rcd");
  const auto said = [&](const char* name) {
    if (!before.has(name)) return false;
    const auto* b = before.need(name).as<bool>();
    if (!b) throw range_error(std::string("warm_up_evidence: proved: \"") + name + "\" is true or false");
    return *b;
  };
  w.proved = {said("insulation"), said("screen"), said("resistance"), said("rcd")};
  const struct {
    bool done;
    std::string_view what;
  } needed[] = {{w.proved.insulation, "insulation resistance"}, {w.proved.screen, "continuity of the screen to earth"}, {w.proved.resistance,
      "resistance of the element"},
                {w.proved.rcd, "the RCD"}};
  for (const auto& one : needed)
    if (!one.done) missing.push_back(one.what);
  const auto r = warm_up_evidence(w);

  std::string finding;
  constexpr std::string_view keys[] = {"whole", "part", "not_heating", "none_of_these"};
  object probabilities;
  for (std::size_t h = 0; h < 4; ++h) probabilities.set(std::string(keys[h]), r.judged ? document::value(r.probability[h])
      : document::value(nullptr));
  const auto leading = static_cast<std::size_t>(r.leading);
  const double minutes = std::round(r.next_s / 60.0);
  if (!r.judged) {
    finding = "not judged: prove first";
    std::string list_;
    for (const auto& one : missing) list_ += (list_.empty() ? "" : ", ") + *one.as<std::string>();
    text.push_back("Not proved before the heater was energised: " + list_ + ". A floor that grows warm is no proof of any of these: isolate, prove "
        "them, and then read again.");
  } else if (r.decided) {
    finding = warm_up_words[leading];
    text.push_back("The display says: " + finding + " (" + number_text(std::round(1000.0 * r.probability[leading]) / 10.0) + " %).");
  } else {
    finding = "cannot tell yet: read again in " + number_text(minutes) + " minutes";
    if (r.too_hot)
      text.push_back("The display shows more than this heater can make of this floor (" + celsius_text(r.hottest_c) +
          "): the reading, the build-up or the source of the heat is another. Isolate, and find out.");
    else if (r.conflict || leading == 3)
      text.push_back("None of the explanations fits these readings well: look at the display, the times and the build-up again before more is "
          "concluded.");
    text.push_back("It cannot be told yet. Read again " + number_text(minutes) + " minutes after the last reading; then it can be told with about " +
                   number_text(std::round(100.0 * r.next_probability)) + " % if one of the explanations is true.");
  }
  if (r.judged) {
    text.push_back("Power delivered: " + quantity_text(std::round(r.power_w_per_m2), "W/m²") + ", with 95 % between " +
        quantity_text(std::round(r.power_low_w_per_m2), "W/m²") + " and " +
                   quantity_text(std::round(r.power_high_w_per_m2), "W/m²") + " (rated " + quantity_text(w.floor.power_w_per_m2, "W/m²") + ").");
    for (std::size_t i = 0; i < w.times_s.size(); ++i)
      readings.push_back(object{{"time_s", w.times_s[i]}, {"read_c", w.temperatures_c[i]}, {"whole_c", r.whole_c[i]}, {"not_heating_c",
          r.not_heating_c[i]}});
    if (r.decided && leading == 1) text.push_back("A part that heats carries more than it was made for, if the rest was bypassed: isolate, and "
        "measure the element's resistance against its label.");
    if (r.decided && leading == 2) text.push_back("Isolate before anything is opened: a heater that stays cold may still be live.");
    if (!r.robust) text.push_back("The leading explanation depends on how probable each was held to be before: read again.");
  }
  assumptions.push_back("Before any reading: whole 55, part 20, not heating 25 of a hundred (judgement, not counted). Power of a whole mat ± 4 %, "
      "answer of the build-up ± 15 % (standard uncertainties); the "
                        "probe lies anywhere between two runs.");
  cautions.push_back("The display is evidence of heat, not of insulation, earthing or a working RCD.");
  cautions.push_back("A part of up to a tenth that is missing does not show here: the element's resistance shows it.");
  cautions.push_back(one_dimension);
  cautions.push_back(before_energising);
  return object{{"finding", finding},
                {"judged", r.judged},
                {"decided", r.decided},
                {"leading", r.judged ? document::value(keys[leading]) : document::value(nullptr)},
                {"probabilities", probabilities},
                {"robust", r.robust},
                {"conflict", r.conflict},
                {"too_hot", r.too_hot},
                {"power_w_per_m2", number_or_null(r.power_w_per_m2)},
                {"power_low_w_per_m2", number_or_null(r.power_low_w_per_m2)},
                {"power_high_w_per_m2", number_or_null(r.power_high_w_per_m2)},
                {"rated_w_per_m2", w.floor.power_w_per_m2},
                {"next_reading_s", number_or_null(r.next_s)},
                {"next_probability", number_or_null(r.next_probability)},
                {"hottest_c", number_or_null(r.hottest_c)},
                {"readings", readings},
                {"not_proved", missing},
                {"assumptions", assumptions},
                {"cautions", cautions},
                {"text", text}};
}
constexpr model warm_up_evidence_model{
    {"warm_up_evidence",
     "Two or more readings of a display that rises: the power really delivered, and whether the whole mat heats, a part of it, or nothing but the "
         "room. Only where insulation, screen, "
     "resistance and RCD were proved before anything was energised.",
     evidence_arguments, evidence_source, run_evidence, nullptr}};

// ---- floor_scenarios -----------------------------------------------------------------------------------------------

constexpr model_argument scenario_arguments[] = {
    {"layers", "objects", layers_text},
    {"power_density_w_per_m2", "number or numbers", "of each scenario, 0 to 1e6 W/m²; a single number here and below is for all of them"},
    {"initial_c", "number or numbers", "temperature of the whole floor at the start, °C"},
    {"room_c", "number or numbers", "temperature of the room, which stays, °C"},
    {"heater_after_layer", "number", "how many layers lie above the heater; left out: 1", true},
    {"duration_s", "number", "left out: 14400 s", true},
    {"below_resistance_m2k_per_w", "number", "under the last layer; left out: no loss downwards", true},
    {"below_c", "number or numbers", "temperature below that; left out: 20 °C", true},
    {"cover_m2k_per_w", "number or numbers", "of a cover over the whole floor; left out: none", true},
    {"coefficient_w_per_m2k", "number", "from the surface to the room; left out: 10.8", true},
    {"nodes_count", "number", "an even number from 8 to 4096; left out: 150", true},
    {"steps_count", "number", "left out: 500", true},
    {"outputs_count", "number", "how many times, evenly; the steps are a multiple; left out: 10", true}};

document::value run_scenarios(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "floor_scenarios";
  const fields in(who, inputs);
  in.only("layers", "power_density_w_per_m2", "initial_c", "room_c", "heater_after_layer", "duration_s", "below_resistance_m2k_per_w", "below_c",
      "cover_m2k_per_w",
          "coefficient_w_per_m2k", "nodes_count", "steps_count", "outputs_count");
  floor_setup s;
  s.layers = layers_from(who, in.need("layers"));
  s.heater_after = layer_count_in(who, in, "heater_after_layer", 1, s.layers.size());
  if (in.has("duration_s")) s.duration_s = in.number("duration_s");
  if (in.has("below_resistance_m2k_per_w")) {
    const double r = in.number("below_resistance_m2k_per_w");
    if (!(r >= 1e-9 && r <= 100.0)) throw range_error("floor_scenarios: below_resistance_m2k_per_w = " + number_text(r) + " m²K/W: above 0, to 100");
    s.below.conductance_w_per_m2k = 1.0 / r;
  }
  s.loss.is = surface_loss::law::linear;
  if (in.has("coefficient_w_per_m2k")) s.loss.coefficient = in.number("coefficient_w_per_m2k");
  const auto whole = [&](std::string_view name, int otherwise, double most) {
    if (!in.has(name)) return otherwise;
    const double x = in.number(name);
    if (!(x >= 1.0 && x <= most && x == std::floor(x))) throw range_error("floor_scenarios: \"" + std::string(name) + "\" = " + number_text(x) +
        ": a whole number from 1 to " + number_text(most));
    return static_cast<int>(x);
  };
  const int nodes = whole("nodes_count", 150, 4096.0), steps = whole("steps_count", 500, 1e7), outputs = whole("outputs_count", 10, 10000.0);
  std::vector<floor_scenario> all(1);
  std::size_t count = 0;
  const auto column = [&](std::string_view name, double floor_scenario::*into, double otherwise, bool needed) {
    std::vector<double> x{otherwise};
    if (needed || in.has(name)) {
      const auto& v = in.need(name);
      if (const auto* one = v.as<double>()) x = {*one};
      else x = numbers_of(who, name, v);
      if (x.empty()) throw range_error("floor_scenarios: \"" + std::string(name) + "\" is empty");
      if (x.size() > 1 || v.as<array>()) {
        if (count > 1 && x.size() > 1 && x.size() != count)
          throw range_error("floor_scenarios: \"" + std::string(name) + "\" has " + std::to_string(x.size()) + " numbers, another list has " +
              std::to_string(count));
        if (x.size() > count) {
          all.resize(x.size(), all.back());
          count = x.size();
        }
      }
    }
    for (std::size_t i = 0; i < all.size(); ++i) all[i].*into = x[x.size() == 1 ? 0 : i];
  };
  column("power_density_w_per_m2", &floor_scenario::power_w_per_m2, 0.0, true);
  column("initial_c", &floor_scenario::initial_c, 20.0, true);
  column("room_c", &floor_scenario::room_c, 20.0, true);
  column("below_c", &floor_scenario::below_c, 20.0, false);
  column("cover_m2k_per_w", &floor_scenario::cover_resistance, 0.0, false);
  static const floor_kernel kernel = floors_of(std::string(instruction_set()).c_str());
  const auto r = all.size() == 1 ? floor_scenarios(s, all, nodes, steps, outputs) : floor_scenarios(s, all, nodes, steps, outputs, kernel.lanes,
      kernel.march);
  array times, surface, heater;
  for (int o = 1; o <= outputs; ++o) times.push_back(s.duration_s * o / outputs);
  for (const auto& one : r) {
    surface.push_back(numbers_list(one.surface_c));
    heater.push_back(numbers_list(one.heater_c));
  }
  return object{{"times_s", times},
                {"surface_c", surface},
                {"heater_c", heater},
                {"assumptions", array{"Surface to room: " + number_text(s.loss.coefficient) +
                    " W/(m²K) times the difference; rooms and spaces below keep their temperature; the heater is on all the time."}},
                {"cautions", array{"Equal steps, and no control of their error: floor_warm_up has that.", one_dimension, before_energising}}};
}
constexpr model floor_scenarios_model{
    {"floor_scenarios",
     "Many scenarios of one heated floor side by side, for tables and what-if: a linear surface loss, equal steps, the heater always on. Several go "
         "through the processor at once; the "
     "results are the same bits as one by one.",
     scenario_arguments, {"implicit midpoint rule after four damped half steps (Rannacher)",
         "finite volumes, factorised once, from both ends to the middle", "derived"}, run_scenarios, nullptr}};

}  // namespace

floor_kernel floors_of(const char* instruction_set) {
#if defined(MAKEGOOD_BATCH_X86)
  const std::string_view set(instruction_set);
  return set == "avx512" ? avx512::floors() : set == "avx2" ? avx2::floors() : sse2::floors();
#else
  return instruction_set ? generic::floors() : generic::floors();
#endif
}

void floor(std::vector<entry>& all) {
  using models = list<floor_material_model, floor_warm_up_model, without_floor_limit_model, warm_up_evidence_model, floor_scenarios_model>;
  append(all, "heating", models{});
}

}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject lighting.
#include <makegood/lighting/layout.hpp>
#include <makegood/lighting/list.hpp>
#include <algorithm>
#include <cmath>
#include <iterator>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace li = makegood::lighting;
using document::array;
using document::number_or_null;
using document::object;

double number_if(const fields& in, std::string_view name, double otherwise) { return in.has(name) ? in.number(name) : otherwise; }
std::string rounded(double x, double to) { return number_text(std::round(x / to) * to, 8); }
constexpr std::string_view below_tables =
    "The room index is below 0.75, where tables of utilisation factors begin: walls take so much of the light that the factor is a guess. Sum points instead (downlight_layout).";

// ---- lumen method ----------------------------------------------------------------------------------------------------

constexpr model_argument lumen_arguments[] = {{"length_m", "number", "length of the room"},
                                              {"width_m", "number", "width of the room"},
                                              {"mounting_height_m", "number", "luminaires above the working plane"},
                                              {"illuminance_lx", "number", "maintained illuminance wanted, and say by whom"},
                                              {"flux_lm", "number", "light of each lamp"},
                                              {"utilisation_factor", "number", "from the luminaire's table for the room index"},
                                              {"maintenance_factor", "number", "what is left of new light"},
                                              {"lamps_count", "number", "lamps as they are, whole; left out: as many as it takes", true}};
document::value run_lumen(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "lumen_method";
  const fields in(who, inputs);
  in.only("length_m", "width_m", "mounting_height_m", "illuminance_lx", "flux_lm", "utilisation_factor", "maintenance_factor", "lamps_count");
  const double length = in.number("length_m"), width = in.number("width_m"), wanted = in.number("illuminance_lx"), flux = in.number("flux_lm");
  const double uf = in.number("utilisation_factor"), mf = in.number("maintenance_factor"), index = li::room_index(length, width, in.number("mounting_height_m"));
  const double exact = li::lumen_method_lamps({.illuminance_lx = wanted, .area_m2 = length * width, .flux_lm = flux, .utilisation_factor = uf, .maintenance_factor = mf});
  const double least = std::ceil(exact * (1.0 - 1e-12)), count = number_if(in, "lamps_count", least);
  if (!(count >= 0.0 && count <= 1e6) || count != std::floor(count)) throw range_error("lumen_method: lamps_count = " + number_text(count) + ": a whole number from 0 to 1e6");
  const double reached = li::lumen_method_illuminance({.lamps_count = count, .flux_lm = flux, .utilisation_factor = uf, .maintenance_factor = mf, .area_m2 = length * width});
  array text, cautions;
  text.push_back(number_text(exact, 4) + " lamps, so " + number_text(least) + "; with " + number_text(count) + " of them " + rounded(reached, 0.1) + " lx.");
  if (reached < wanted) text.push_back("That is less than the " + number_text(wanted) + " lx wanted.");
  if (index < 0.75) cautions.push_back(std::string(below_tables));
  cautions.push_back("A mean over the plane, maintained: new lamps give more, corners less. Rated light of the lamp is not what leaves the luminaire.");
  return object{{"room_index", index}, {"lamps", exact}, {"lamps_count", least}, {"illuminance_lx", reached}, {"below_tables", index < 0.75}, {"text", text}, {"cautions", cautions}};
}
constexpr model lumen_method{{"lumen_method", "How many lamps a room takes for a mean illuminance: unrounded, the next whole number, and what that gives.", lumen_arguments,
                              source{"Kelly and O'Connell, Interior Lighting Design - A Student's Guide", "lumen method: N = E A/(F UF MF), K = L W/(H_m (L + W))"}, run_lumen, nullptr}};

// ---- points ----------------------------------------------------------------------------------------------------------

constexpr model_argument points_arguments[] = {{"lamps", "objects", "{\"x_m\", \"y_m\", \"height_m\", \"intensity_cd\"}: height above the point's plane, intensity towards the point"},
                                               {"x_m", "number", "place of the point; 0", true},
                                               {"y_m", "number", "place of the point; 0", true},
                                               {"facing_deg", "number", "for an upright face: where it looks, counted from the x axis towards y; left out: a horizontal plane", true}};
document::value run_points(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "points_illuminance";
  constexpr double degree = 57.295779513082320877;
  const fields in(who, inputs);
  in.only("lamps", "x_m", "y_m", "facing_deg");
  const auto* lamps = in.need("lamps").as<array>();
  if (!lamps || lamps->empty()) throw range_error("points_illuminance: \"lamps\" must be a list of objects with one at least");
  const double px = number_if(in, "x_m", 0.0), py = number_if(in, "y_m", 0.0);
  if (!(std::fabs(px) <= 1e4 && std::fabs(py) <= 1e4)) throw range_error("points_illuminance: x_m and y_m: -1e4 to 1e4 m");
  double sum = 0.0;
  array each;
  for (std::size_t i = 0; i < lamps->size(); ++i) {
    const std::string place = "points_illuminance: lamps[" + std::to_string(i) + "]";
    const auto* o = (*lamps)[i].as<object>();
    if (!o) throw range_error(place + " must be an object");
    const fields f(place, *o);
    f.only("x_m", "y_m", "height_m", "intensity_cd");
    const double dx = f.number("x_m") - px, dy = f.number("y_m") - py, height = f.number("height_m"), intensity = f.number("intensity_cd"), aside = std::hypot(dx, dy);
    double e = 0.0;
    if (!in.has("facing_deg")) {
      e = li::point_illuminance(intensity, height, aside);
    } else if (aside > 0.0) {
      const double turn = std::fabs(std::remainder(std::atan2(dy, dx) * degree - in.number("facing_deg"), 360.0));
      if (turn < 90.0) e = li::point_illuminance_vertical({.intensity_cd = intensity, .height_m = height, .offset_m = aside, .azimuth_deg = turn});
    }
    each.emplace_back(e), sum += e;
  }
  return object{{"illuminance_lx", sum}, {"lamps_lx", each}, {"text", array{"Direct light alone, without what walls and ceiling send back: " + rounded(sum, 0.1) + " lx."}}};
}
constexpr model points_illuminance{{"points_illuminance", "Illuminance of one point from several lamps: direct light on a horizontal plane or an upright face.", points_arguments,
                                    source{"H. C. Verma, Concepts of Physics", "photometry: E = Σ I cos γ/d²"}, run_points, nullptr}};

constexpr model_argument layout_arguments[] = {{"length_m", "number", "length of the room, along which columns count"},
                                               {"width_m", "number", "width of the room, across which rows count"},
                                               {"mounting_height_m", "number", "luminaires above the working plane"},
                                               {"flux_lm", "number", "light that leaves each luminaire"},
                                               {"beam_angle_deg", "number", "full angle at half the greatest intensity; of a cone its whole angle"},
                                               {"spacing_ratio", "number", "greatest spacing over mounting height, from the luminaire's data; or rows and columns", true},
                                               {"rows", "number", "whole; left out: as few as the ratio permits", true},
                                               {"columns", "number", "whole", true},
                                               {"work_at_walls", "bool", "a third of the spacing to the walls instead of half; false", true},
                                               {"distribution", "text", "\"cosine_power\" (default: half at half the beam angle) or \"cone\" (even inside, nothing outside)", true},
                                               {"maintenance_factor", "number", "what is left of new light; 1", true},
                                               {"reflectance", "number", "mean of walls, ceiling and floor: adds an even part as in an integrating sphere, 0 to 0.95; 0", true},
                                               {"room_height_m", "number", "for the area of the walls; the mounting height", true},
                                               {"required_lx", "number", "least illuminance asked for, and say by whom", true}};
document::value run_layout(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "downlight_layout";
  const fields in(who, inputs);
  in.only("length_m", "width_m", "mounting_height_m", "flux_lm", "beam_angle_deg", "spacing_ratio", "rows", "columns", "work_at_walls", "distribution", "maintenance_factor", "reflectance", "room_height_m",
          "required_lx");
  li::downlight_task t;
  t.length_m = in.number("length_m"), t.width_m = in.number("width_m"), t.mounting_height_m = in.number("mounting_height_m");
  const auto count = [&](std::string_view name) {
    if (!in.has(name)) return 0;
    const double x = in.number(name);
    if (!(x >= 1.0 && x <= 100.0) || x != std::floor(x)) throw range_error("downlight_layout: " + std::string(name) + " = " + number_text(x) + ": a whole number from 1 to 100");
    return static_cast<int>(x);
  };
  t.rows = count("rows"), t.columns = count("columns");
  t.spacing_ratio = number_if(in, "spacing_ratio", no_number);
  if (in.has("work_at_walls")) {
    const auto* b = in.need("work_at_walls").as<bool>();
    if (!b) throw range_error("downlight_layout: \"work_at_walls\" must be true or false");
    t.work_at_walls = *b;
  }
  auto shape = li::light_shape::cosine_power;
  if (in.has("distribution")) {
    const auto at = std::find(std::begin(li::light_shapes), std::end(li::light_shapes), in.text("distribution"));
    if (at == std::end(li::light_shapes)) throw range_error("downlight_layout: distribution = \"" + in.text("distribution") + "\" is not one of \"cosine_power\", \"cone\"");
    shape = static_cast<li::light_shape>(at - std::begin(li::light_shapes));
  }
  t.light = li::make_beam(who, shape, in.number("flux_lm"), in.number("beam_angle_deg"));
  t.maintenance_factor = number_if(in, "maintenance_factor", 1.0), t.reflectance = number_if(in, "reflectance", 0.0), t.room_height_m = number_if(in, "room_height_m", no_number);
  const double required = number_if(in, "required_lx", no_number), index = li::room_index(t.length_m, t.width_m, t.mounting_height_m);
  const auto r = li::downlight_layout(t);
  array places, text, cautions;
  for (const auto& p : r.places) places.push_back(object{{"x_m", p.x_m}, {"y_m", p.y_m}});
  text.push_back(std::to_string(r.rows) + " rows of " + std::to_string(r.columns) + ", " + rounded(r.row_spacing_m, 0.001) + " m between rows and " + rounded(r.column_spacing_m, 0.001) + " m in a row.");
  text.push_back("On the working plane " + rounded(r.min_lx, 0.1) + " to " + rounded(r.max_lx, 0.1) + " lx, mean " + rounded(r.mean_lx, 0.1) + " lx, least over mean " + rounded(r.uniformity, 0.01) + "; darkest at " +
                 rounded(r.darkest.x_m, 0.01) + ", " + rounded(r.darkest.y_m, 0.01) + " m.");
  if (!is_nan(r.greatest_spacing_m) && std::max(r.rows > 1 ? r.row_spacing_m : 0.0, r.columns > 1 ? r.column_spacing_m : 0.0) > r.greatest_spacing_m * (1.0 + 1e-9))
    text.push_back("They stand further apart than the " + rounded(r.greatest_spacing_m, 0.001) + " m that the luminaire's data permit.");
  if (!is_nan(required)) text.push_back(r.mean_lx >= required ? "The mean reaches the " + number_text(required) + " lx asked for." : "The mean stays below the " + number_text(required) + " lx asked for.");
  if (index < 0.75) cautions.push_back("The room index is below 0.75, where tables of utilisation factors begin: these sums of points take their place.");
  if (t.reflectance == 0.0) cautions.push_back("Direct light alone: light walls add to it, dark ones do not.");
  else cautions.push_back("What walls send back is taken as the same everywhere, as in an integrating sphere: good for light rooms without dark corners.");
  cautions.push_back("The beam is a model, not the luminaire's measured curve. In a bathroom the zones, and over insulation the heat, decide where a downlight may be at all.");
  return object{{"rows", static_cast<double>(r.rows)}, {"columns", static_cast<double>(r.columns)}, {"row_spacing_m", r.row_spacing_m}, {"column_spacing_m", r.column_spacing_m},
                {"greatest_spacing_m", number_or_null(r.greatest_spacing_m)}, {"positions", places}, {"middle_intensity_cd", t.light.middle_cd},
                {"min_lx", r.min_lx}, {"mean_lx", r.mean_lx}, {"max_lx", r.max_lx}, {"uniformity", r.uniformity}, {"reflected_lx", r.reflected_lx}, {"darkest", object{{"x_m", r.darkest.x_m}, {"y_m", r.darkest.y_m}}},
                {"points", static_cast<double>(r.points)}, {"room_index", index}, {"text", text}, {"cautions", cautions}};
}
constexpr model downlight_layout{{"downlight_layout", "Rows, columns and places of downlights in a rectangular room, and the illuminance of the working plane by sums of points: least, mean, greatest, least over mean.", layout_arguments,
                                  source{"Kelly and O'Connell, Interior Lighting Design - A Student's Guide", "p. 38, spacing; E = Σ I(γ) cos γ/d²"}, run_layout, nullptr}};

// ---- mirror ----------------------------------------------------------------------------------------------------------

constexpr model_argument mirror_arguments[] = {{"shape", "text", "\"strips\" (upright on both sides) or \"ring\""},
                                               {"flux_lm", "number", "light of each strip, or of the ring"},
                                               {"apart_m", "number", "between the middles of the strips; of a ring its diameter"},
                                               {"face_m", "number", "face before the mirror, 0.05 to 10 m"},
                                               {"strip_m", "number", "length of each strip; for \"strips\"", true},
                                               {"middle_up_m", "number", "middle of strips or ring above the face; 0", true},
                                               {"emitter", "text", "\"flat\" (default: looks into the room as a matt surface) or \"tube\" (around its line)", true},
                                               {"maintenance_factor", "number", "what is left of new light; 1", true}};
document::value run_mirror(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "mirror_illuminance";
  const fields in(who, inputs);
  in.only("shape", "flux_lm", "apart_m", "face_m", "strip_m", "middle_up_m", "emitter", "maintenance_factor");
  li::mirror_task t;
  if (in.text("shape") != "strips" && in.text("shape") != "ring") throw range_error("mirror_illuminance: shape = \"" + in.text("shape") + "\" is not one of \"strips\", \"ring\"");
  t.ring = in.text("shape") == "ring";
  if (in.has("emitter")) {
    if (in.text("emitter") != "flat" && in.text("emitter") != "tube") throw range_error("mirror_illuminance: emitter = \"" + in.text("emitter") + "\" is not one of \"flat\", \"tube\"");
    t.tube = in.text("emitter") == "tube";
  }
  t.flux_lm = in.number("flux_lm"), t.apart_m = in.number("apart_m"), t.face_m = in.number("face_m");
  if (!t.ring) t.strip_m = in.number("strip_m");
  t.middle_up_m = number_if(in, "middle_up_m", 0.0), t.maintenance_factor = number_if(in, "maintenance_factor", 1.0);
  const auto r = li::mirror_illuminance(t);
  array text;
  text.push_back("Face towards the mirror " + rounded(r.front_lx, 0.1) + " lx, cheeks turned by 60° " + rounded(r.left_lx, 0.1) + " lx, chin turned down by 60° " + rounded(r.chin_lx, 0.1) + " lx; direct light alone.");
  if (r.chin_lx < 0.1 * r.front_lx) text.push_back("Light from above alone leaves shadows under brows and chin: bring it to the sides of the face.");
  return object{{"front_lx", r.front_lx}, {"left_lx", r.left_lx}, {"right_lx", r.right_lx}, {"chin_lx", r.chin_lx}, {"elements", static_cast<double>(r.elements)}, {"last_change", number_or_null(r.last_change)}, {"text", text},
                {"cautions", array{"In a bathroom the zones decide what may be at the mirror at all; isolate before it is taken down.", "A lamp near the eyes dazzles: a wide matt strip rather than bare points."}}};
}
constexpr model mirror_illuminance{{"mirror_illuminance", "Illuminance of a face before a mirror with strips at its sides or a ring of light, by elements that are halved until their sum stands still.", mirror_arguments,
                                    source{"sum of matt elements", "E = Σ F/π cos γ cos θ/r²", "derived"}, run_mirror, nullptr}};
}  // namespace
void lighting(std::vector<entry>& all) {
  append(all, "lighting", makegood::lighting::entries{});
  append(all, "lighting", list<lumen_method, points_illuminance, downlight_layout, mirror_illuminance>{});
}
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject air: runs of duct, fans and where they meet.
#include "ventilation.hpp"
#include <makegood/air/fan_diagnosis.hpp>
#include <makegood/air/junctions.hpp>
#include <makegood/air/moist_air.hpp>
#include <makegood/registry.hpp>
#include <cmath>
#include <cstdint>

namespace makegood::subjects {
using namespace makegood::air;
using document::array;
using document::object;

std::string path(std::string_view where, std::string_view field) { return std::string(where) + ", " + std::string(field); }
const array& list_of(const std::string& who, const fields& in, std::string_view name) {
  const auto* a = in.need(name).as<array>();
  if (!a) throw range_error(who + ": \"" + std::string(name) + "\" must be a list");
  return *a;
}
const object& object_of(const std::string& who, const fields& in, std::string_view name) {
  const auto* o = in.need(name).as<object>();
  if (!o) throw range_error(who + ": \"" + std::string(name) + "\" must be an object");
  return *o;
}
namespace {
double finite_number(const std::string& who, const fields& in, std::string_view name) {
  const double x = in.number(name);
  if (!is_finite(x)) throw range_error(who + ": \"" + std::string(name) + "\" is not a number");
  return x;
}
double finite_or(const std::string& who, const fields& in, std::string_view name, double otherwise) {
  return in.has(name) ? finite_number(who, in, name) : otherwise;
}
std::string text_or(const fields& in, std::string_view name, std::string_view otherwise) { return in.has(name) ? in.text(name) : std::string(otherwise); }
[[noreturn]] void not_one_of(const std::string& who, std::string_view name, const std::string& word, const std::vector<std::string_view>& words) {
  std::string list;
  for (const auto w : words) list += (list.empty() ? "\"" : ", \"") + std::string(w) + "\"";
  const std::string near = document::nearest(word, words);
  throw range_error(who + ": " + std::string(name) + " = \"" + word + "\" is not one of " + list + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
}
std::string rounded(double x, int digits = 3) { return number_text(x, digits); }
}  // namespace

air_state air_from(const std::string& who, const fields& in) {
  air_state a;
  if (!in.has("air")) return a;
  const std::string at = path(who, "air");
  const fields f(at, object_of(who, in, "air"));
  f.only("density_kg_per_m3", "viscosity_pa_s", "temperature_c", "relative_humidity_percent", "pressure_pa");
  if (f.has("temperature_c")) {
    if (f.has("density_kg_per_m3") || f.has("viscosity_pa_s")) throw range_error(at + ": a temperature, or density and viscosity");
    const double t = finite_number(at, f, "temperature_c");
    a.density_kg_per_m3 = air_density(t, finite_or(at, f, "relative_humidity_percent", 50.0), finite_or(at, f, "pressure_pa", 101325.0));
    a.viscosity_pa_s = air_viscosity(t);
  } else {
    a.density_kg_per_m3 = finite_or(at, f, "density_kg_per_m3", a.density_kg_per_m3);
    a.viscosity_pa_s = finite_or(at, f, "viscosity_pa_s", a.viscosity_pa_s);
  }
  air::detail::check_air(a, at + ": ");
  return a;
}

// ---- segments -------------------------------------------------------------------------------------------------------------

std::vector<duct_segment> segments_from(const std::string& who, const array& list) {
  std::vector<duct_segment> run;
  std::vector<char> sized;
  if (list.empty() || list.size() > 1000) throw range_error(who + ": \"segments\": 1 to 1000 of them");
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto* o = list[i].as<object>();
    std::string at = path(who, "segments[" + std::to_string(i) + "]");
    if (!o) throw range_error(at + ": must be an object");
    const fields in(at, *o);
    duct_segment s;
    const std::string kind = in.text("kind");
    s.name = text_or(in, "name", kind + " " + std::to_string(i + 1));
    const bool fitting = kind == "fitting";
    s.is = fitting ? duct_segment::kind::fitting : kind == "flexible" ? duct_segment::kind::flexible : duct_segment::kind::straight;
    if (!fitting && kind != "round" && kind != "rectangular" && kind != "oval" && kind != "flexible")
      not_one_of(at, "kind", kind, {"round", "rectangular", "oval", "flexible", "fitting"});
    // its size; a fitting without one has that of its neighbour
    bool has_size = true;
    if (in.has("diameter_mm")) {
      if (in.has("width_mm") || in.has("height_mm")) throw range_error(at + ": a diameter, or width and height");
      s.section = duct_section::round(finite_number(at, in, "diameter_mm"));
    } else if (in.has("width_mm") || in.has("height_mm")) {
      s.section = {kind == "oval" ? duct_section::shape::oval : duct_section::shape::rectangular, finite_number(at, in, "width_mm"), finite_number(at, in, "height_mm")};
    } else {
      has_size = false;
    }
    if (!fitting && !has_size) throw range_error(at + ": \"" + std::string(kind == "round" || kind == "flexible" ? "diameter_mm" : "width_mm") + "\" is missing");
    if (!fitting && (kind == "round" || kind == "flexible") != (s.section.is == duct_section::shape::round))
      throw range_error(at + ": " + kind + (kind == "round" || kind == "flexible" ? " needs \"diameter_mm\"" : " needs \"width_mm\" and \"height_mm\""));
    if (fitting) {
      in.only("kind", "name", "diameter_mm", "width_mm", "height_mm", "fitting", "loss_coefficient", "loss_low", "loss_high", "free_area_ratio", "grille", "small_diameter_mm", "bend",
              "junction", "branch_flow_ratio", "branch_diameter_mm", "angle_deg", "fan_inlet_radius_ratio", "straight_diameters", "flow_ratio");
      const int given = in.has("fitting") + in.has("loss_coefficient") + in.has("free_area_ratio") + in.has("small_diameter_mm") + in.has("junction") + in.has("fan_inlet_radius_ratio");
      if (given != 1)
        throw range_error(at + ": one of \"fitting\" (a word), \"loss_coefficient\", \"free_area_ratio\" (of a grille), \"small_diameter_mm\" (before a sudden widening), \"junction\" (a word) and "
                               "\"fan_inlet_radius_ratio\" (of a bend straight before a fan)");
      if (in.has("grille") && !in.has("free_area_ratio")) throw range_error(at + ": a grille needs its \"free_area_ratio\"");
      if (!in.has("junction") && (in.has("branch_flow_ratio") || in.has("branch_diameter_mm") || in.has("angle_deg"))) throw range_error(at + ": a branch needs its \"junction\"");
      if (in.has("straight_diameters") && !in.has("fan_inlet_radius_ratio")) throw range_error(at + ": \"straight_diameters\" needs its \"fan_inlet_radius_ratio\"");
      if (in.has("fitting")) {
        const std::string word = in.text("fitting");
        const auto* row = find_fitting(word);
        if (!row) {
          std::vector<std::string_view> words;
          for (const auto& r : fitting_rows) words.push_back(r.key);
          not_one_of(at, "fitting", word, words);
        }
        s.loss_coefficient = row->coefficient;
        s.loss_low = row->low;
        s.loss_high = row->high;
        s.bend = row->bend;
        s.reference = row->reference;
        s.from = row->from;
      } else if (in.has("free_area_ratio")) {
        const double open = finite_number(at, in, "free_area_ratio");
        const std::string word = text_or(in, "grille", "bars");
        if (word == "bars") s.loss_coefficient = grille_coefficient(open);
        else if (word == "rounded") s.loss_coefficient = rounded_grille_coefficient(open);
        else if (word == "screen") s.loss_coefficient = screen_coefficient(open);
        else not_one_of(at, "grille", word, {"bars", "rounded", "screen"});
        s.reference = "velocity before the grille";
        s.from = blevins;
      } else if (in.has("small_diameter_mm")) {
        const auto small = duct_section::round(finite_number(at, in, "small_diameter_mm"));
        if (!has_size || !(small.area_m2() > 0.0) || small.area_m2() > s.section.area_m2()) throw range_error(at + ": a widening needs a size of its own, above the small one");
        s.loss_coefficient = widening_coefficient(small.area_m2(), s.section.area_m2());
        s.section = small;
        s.reference = of_small;
        s.from = {"White, Fluid Mechanics", "chapter 6, sudden expansion (Borda and Carnot)", "handbook"};
      } else if (in.has("fan_inlet_radius_ratio")) {
        s.loss_coefficient = fan_inlet_bend_coefficient(finite_number(at, in, "fan_inlet_radius_ratio"), finite_or(at, in, "straight_diameters", 0.0));
        s.from = fan_inlet_source;
      } else if (in.has("junction")) {
        // its size is that of the duct with all the air; the run is the leg that it names
        const std::string word = in.text("junction");
        const bool branch = word == "diverging_branch" || word == "converging_branch", diverging = word == "diverging_branch" || word == "diverging_run";
        if (!branch && word != "diverging_run" && word != "converging_run")
          not_one_of(at, "junction", word, {"diverging_branch", "diverging_run", "converging_branch", "converging_run"});
        if (!has_size || s.section.is != duct_section::shape::round) throw range_error(at + ": a junction needs \"diameter_mm\", that of the duct with all the air");
        if (in.has("flow_ratio")) throw range_error(at + ": leave \"flow_ratio\" out: \"branch_flow_ratio\" says how much more passes the junction");
        const double y = finite_number(at, in, "branch_flow_ratio"), size = finite_or(at, in, "branch_diameter_mm", s.section.width_mm) / s.section.width_mm;
        if (!(y >= 0.01 && y <= 0.99)) throw range_error(at + ": branch_flow_ratio must be from 0.01 to 0.99: flow of the branch over the flow of all");
        if (!(size >= 0.1 && size <= 1.0)) throw range_error(at + ": branch_diameter_mm must be from a tenth of diameter_mm to all of it");
        const std::string degrees = number_text(finite_or(at, in, "angle_deg", diverging ? 45.0 : 90.0));
        const auto& angles = diverging ? diverging_angles : converging_angles;
        if (angles.find(degrees) < 0) throw range_error(at + ": angle_deg must be " + (diverging ? "30, 45 or 60: of a square tee no coefficient was read" : "30, 45, 60 or 90"));
        if (word == "diverging_branch") s.loss_coefficient = diverging_branch_coefficient(y, degrees, size);
        else if (word == "diverging_run") s.loss_coefficient = diverging_run_coefficient(y, size);
        else if (word == "converging_branch") s.loss_coefficient = converging_branch_coefficient(y, degrees, size);
        else s.loss_coefficient = converging_run_coefficient(y, degrees, size);
        s.flow_ratio = 1.0 / (branch ? y : 1.0 - y);
        s.reference = of_all;
        s.from = crane_tees;
      } else {
        s.loss_coefficient = finite_number(at, in, "loss_coefficient");
        s.from = {"given with the segment", "", "common-practice"};
      }
      if (in.has("loss_low")) s.loss_low = finite_number(at, in, "loss_low");
      if (in.has("loss_high")) s.loss_high = finite_number(at, in, "loss_high");
      if ((!is_nan(s.loss_low) && s.loss_low > s.loss_coefficient) || (!is_nan(s.loss_high) && s.loss_high < s.loss_coefficient))
        throw range_error(at + ": loss_low, loss_coefficient and loss_high must rise in this order");
      if (in.has("bend")) {
        const auto* yes = in.need("bend").as<bool>();
        if (!yes) throw range_error(at + ": \"bend\" must be true or false");
        s.bend = *yes;
      }
      if (!has_size && !run.empty()) s.section = run.back().section, has_size = sized.back() != 0;
    } else {
      in.only("kind", "name", "diameter_mm", "width_mm", "height_mm", "length_m", "roughness_mm", "wall", "stretched_length_m", "compression_percent", "flow_ratio");
      s.length_m = finite_number(at, in, "length_m");
      if (in.has("roughness_mm") && in.has("wall")) throw range_error(at + ": \"roughness_mm\" or \"wall\"");
      if (in.has("roughness_mm")) {
        s.roughness_mm = finite_number(at, in, "roughness_mm");
      } else {
        const std::string word = text_or(in, "wall", kind == "flexible" ? "flexible" : kind == "round" ? "galvanised" : "galvanised_rectangular");
        const auto* wall = find_wall(word);
        if (!wall) {
          std::vector<std::string_view> words;
          for (const auto& w : duct_walls) words.push_back(w.key);
          not_one_of(at, "wall", word, words);
        }
        s.roughness_mm = wall->roughness_mm;
        s.roughness_low_mm = wall->low_mm;
        s.roughness_high_mm = wall->high_mm;
        s.from = wall->from;
      }
      if (kind == "flexible") {
        if (in.has("stretched_length_m") == in.has("compression_percent"))
          throw range_error(at + ": a flexible duct needs \"stretched_length_m\" or \"compression_percent\": the shortening decides its loss");
        if (in.has("compression_percent")) s.compression_percent = finite_number(at, in, "compression_percent");
        else if (const double whole = finite_number(at, in, "stretched_length_m"); whole > 0.0 && s.length_m >= 0.0) s.compression_percent = 100.0 * (1.0 - s.length_m / whole);
        else throw range_error(at + ": stretched_length_m must be above 0 m and length_m 0 m or more");
      } else if (in.has("stretched_length_m") || in.has("compression_percent")) {
        throw range_error(at + ": only a flexible duct is stretched or shortened");
      }
    }
    if (in.has("flow_ratio")) s.flow_ratio = finite_number(at, in, "flow_ratio");
    run.push_back(std::move(s));
    sized.push_back(has_size);
  }
  for (std::size_t i = run.size(); i-- > 0;) {
    if (sized[i]) continue;
    if (i + 1 < run.size() && sized[i + 1]) run[i].section = run[i + 1].section, sized[i] = 1;
  }
  for (std::size_t i = 0; i < run.size(); ++i) {
    const std::string at = path(who, "\"" + run[i].name + "\": ");
    if (const auto* o = list[i].as<object>(); const auto* word = o ? o->find("fitting") : nullptr)  // depends on the size, which may be the neighbour's
      if (const auto* t = word->as<std::string>(); t && *t == "bend_stamped" && sized[i]) run[i].loss_coefficient = stamped_bend_coefficient(1e3 * run[i].section.hydraulic_m());
    if (!sized[i]) throw range_error(at + "no size, and no neighbour to take it from");
    air::detail::check_segment(run[i], at);
  }
  return run;
}

system_read system_from(const std::string& who, const object& o, const air_state& air) {
  const fields in(who, o);
  in.only("segments", "resistance_pa_s2_per_l2", "flow_l_per_s", "pressure_pa", "fixed_pa");
  system_read s;
  const int given = in.has("segments") + in.has("resistance_pa_s2_per_l2") + in.has("flow_l_per_s");
  if (given != 1) throw range_error(who + ": one of \"segments\", \"resistance_pa_s2_per_l2\", and \"flow_l_per_s\" with \"pressure_pa\" (a point of it)");
  const double fixed = finite_or(who, in, "fixed_pa", 0.0);
  if (!(std::fabs(fixed) <= 1e6)) throw range_error(who + ": fixed_pa must be from -1e6 to 1e6 Pa");
  if (in.has("segments")) {
    s.segments = segments_from(who, list_of(who, in, "segments"));
    s.curve = curve_of_run(s.segments, air);
    s.low = curve_of_run(s.segments, air, -1);
    s.high = curve_of_run(s.segments, air, 1);
  } else if (in.has("flow_l_per_s")) {
    const double q = finite_number(who, in, "flow_l_per_s"), p = finite_number(who, in, "pressure_pa") - fixed;
    if (!(q > 0.0 && q <= 1e6) || !(p >= 0.0 && p <= 1e6)) throw range_error(who + ": a point needs a flow above 0 l/s and a pressure of fixed_pa or more");
    s.curve.quadratic = p / (q * q);
  } else {
    s.curve.quadratic = finite_number(who, in, "resistance_pa_s2_per_l2");
    if (!(s.curve.quadratic >= 0.0)) throw range_error(who + ": resistance_pa_s2_per_l2 must be 0 or more");
  }
  if (!s.banded()) s.low = s.high = s.curve;
  for (auto* c : {&s.curve, &s.low, &s.high}) c->fixed_pa = fixed;
  return s;
}

namespace {
std::vector<fan_point> points_from(const std::string& who, const array& list) {
  std::vector<fan_point> points;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string at = who + "[" + std::to_string(i) + "]";
    const auto* pair = list[i].as<array>();
    const double *q = nullptr, *v = nullptr;
    if (pair && pair->size() == 2) q = (*pair)[0].as<double>(), v = (*pair)[1].as<double>();
    if (!q || !v) throw range_error(at + ": must be a pair [flow in l/s, value]");
    points.push_back({*q, *v});
  }
  return points;
}
}  // namespace

fan_read fan_from(const std::string& who, const object& o, const air_state& air) {
  const fields in(who, o);
  in.only("points", "power_w", "pressure", "outlet_diameter_mm", "speed_ratio", "curve_density_kg_per_m3", "count", "arrangement");
  std::vector<fan_point> power;
  auto points = points_from(path(who, "points"), list_of(who, in, "points"));
  if (in.has("power_w")) {
    const auto& v = in.need("power_w");
    if (const auto* list = v.as<array>()) power = points_from(path(who, "power_w"), *list);
    else if (const auto* w = v.as<double>(); w && points.size() > 1) power = {{points.front().flow_l_per_s, *w}, {points.back().flow_l_per_s, *w}};
    else throw range_error(who + ": \"power_w\" must be a number or a list of pairs");
  }
  const fan_curve plain(std::move(points), std::move(power), who + ": ");
  fan_setting s;
  s.speed_ratio = finite_or(who, in, "speed_ratio", 1.0);
  s.density_kg_per_m3 = air.density_kg_per_m3;
  s.curve_density_kg_per_m3 = finite_or(who, in, "curve_density_kg_per_m3", 1.2);
  const double count = finite_or(who, in, "count", 1.0);
  if (!(count >= 1.0 && count <= 100.0) || count != std::floor(count)) throw range_error(who + ": \"count\" must be a whole number from 1 to 100");
  s.count = static_cast<int>(count);
  const std::string stand = text_or(in, "arrangement", "series");
  if (stand != "series" && stand != "parallel") not_one_of(who, "arrangement", stand, {"series", "parallel"});
  if (s.count > 1 && !in.has("arrangement")) throw range_error(who + ": several fans need an \"arrangement\": \"series\" or \"parallel\"");
  s.stand = stand == "series" ? fans_stand::series : fans_stand::parallel;
  fan_read f;
  f.curve = plain.with(s, who + ": ");
  const std::string pressure = text_or(in, "pressure", "static");
  if (pressure != "static" && pressure != "total") not_one_of(who, "pressure", pressure, {"static", "total"});
  if (pressure == "total") {
    if (in.has("outlet_diameter_mm")) throw range_error(who + ": a curve of total pressure has the outlet in it: leave \"outlet_diameter_mm\" out");
  } else if (in.has("outlet_diameter_mm")) {
    const auto outlet = duct_section::round(finite_number(who, in, "outlet_diameter_mm"));
    air::detail::check_section(outlet, who + ": outlet: ");
    const double per_flow = 1e-3 / outlet.area_m2() / (s.stand == fans_stand::parallel ? s.count : 1.0);
    f.outlet_pa_s2_per_l2 = 0.5 * air.density_kg_per_m3 * per_flow * per_flow;
  } else {
    f.static_without_outlet = true;
  }
  return f;
}

namespace {

// ---- duct_run -------------------------------------------------------------------------------------------------------------

constexpr std::string_view segments_help =
    "in the order of the flow, {\"kind\": \"round\", \"rectangular\", \"oval\", \"flexible\" or \"fitting\", \"name\"}. Ducts: \"diameter_mm\", or "
    "\"width_mm\" and \"height_mm\"; \"length_m\" from 0 to 10000; \"roughness_mm\" or \"wall\": \"smooth\", \"pvc\", \"galvanised\", "
    "\"galvanised_rectangular\", \"flexible\", \"flexible_metal\". A flexible one: \"stretched_length_m\" or \"compression_percent\" (0 to 90). Fittings, "
    "with the size that the coefficient refers to (left out: that of the neighbour): \"fitting\", a word such as \"entry_sharp\", \"bend_stamped\", "
    "\"mitre_90\", \"exit\", \"cap_close\", \"louvre_30\"; or \"loss_coefficient\" with \"loss_low\", \"loss_high\", \"bend\"; or \"free_area_ratio\" of a "
    "\"grille\": \"bars\", \"rounded\" (0.3 to 0.7) or \"screen\" (0.1 to 0.85); or \"small_diameter_mm\" before a sudden widening; or \"junction\": "
    "\"diverging_branch\", \"diverging_run\", \"converging_branch\" or \"converging_run\", with \"branch_flow_ratio\", \"branch_diameter_mm\" and \"angle_deg\" (its "
    "\"diameter_mm\" is that of the duct with all the air; the run is the leg named); or \"fan_inlet_radius_ratio\" with \"straight_diameters\": a bend straight before "
    "a centrifugal fan, on top of its own loss. \"flow_ratio\": how many times the run's flow passes a segment, where others join; left out: 1";
constexpr std::string_view air_help =
    "{\"density_kg_per_m3\", \"viscosity_pa_s\"}, or {\"temperature_c\", \"relative_humidity_percent\": 50, \"pressure_pa\": 101325}; left out: 1.2 kg/m³, 1.8e-5 Pa·s";
constexpr model_argument run_arguments[] = {{"segments", "objects", segments_help},
                                            {"flow_l_per_s", "number", "air flow, the same in every segment, 0 to 1e6 l/s"},
                                            {"air", "object", air_help, true},
                                            {"leakage_class", "text", "tightness class \"A\" to \"E\": the most that the run may leak", true},
                                            {"leakage_pressure_pa", "number", "pressure of the leakage test, 0 to 1e5 Pa; left out: what the run takes", true}};

document::value run_duct_run(const object& inputs, const rulebook&) {
  const std::string who = "duct_run";
  const fields in(who, inputs);
  in.only("segments", "flow_l_per_s", "air", "leakage_class", "leakage_pressure_pa");
  const auto air = air_from(who, in);
  const auto run = segments_from(who, list_of(who, in, "segments"));
  const auto r = duct_run(run, in.number("flow_l_per_s"), air, text_or(in, "leakage_class", ""), in.has("leakage_pressure_pa") ? in.number("leakage_pressure_pa") : no_number);
  array segments, text, cautions;
  for (std::size_t i = 0; i < run.size(); ++i) {
    const auto& s = r.segments[i];
    const bool fitting = run[i].is == duct_segment::kind::fitting;
    object o{{"name", run[i].name},
             {"pressure_pa", s.pressure_pa},
             {"low_pa", s.low_pa},
             {"high_pa", s.high_pa},
             {"share_ratio", s.share},
             {"flow_ratio", run[i].flow_ratio},
             {"velocity_m_per_s", s.velocity_m_per_s},
             {"velocity_pressure_pa", s.velocity_pressure_pa},
             {"reynolds", fitting ? document::value(nullptr) : document::number_or_null(s.reynolds)},
             {"friction_factor", fitting ? document::value(nullptr) : document::number_or_null(s.factor)},
             {"loss_coefficient", fitting ? document::value(run[i].loss_coefficient) : document::value(nullptr)},
             {"reference", fitting ? document::value(run[i].reference) : document::value(nullptr)},
             {"flexible_factor", run[i].is == duct_segment::kind::flexible ? document::value(s.multiplier) : document::value(nullptr)},
             {"compression_percent", run[i].is == duct_segment::kind::flexible ? document::value(run[i].compression_percent) : document::value(nullptr)},
             {"extrapolated", s.extrapolated},
             {"transition", s.transition},
             {"source", document::object{{"title", run[i].from.title}, {"clause", run[i].from.clause}, {"grade", run[i].from.grade}}}};
    segments.push_back(o);
  }
  const auto& worst = r.segments[r.worst];
  text.push_back(rounded(r.flow_l_per_s) + " l/s takes " + rounded(r.pressure_pa) + " Pa (" + rounded(r.low_pa) + " to " + rounded(r.high_pa) + " Pa).");
  if (r.pressure_pa > 0.0)
    text.push_back("The most is lost in \"" + run[r.worst].name + "\": " + rounded(worst.pressure_pa) + " Pa, " + rounded(100.0 * worst.share, 2) + " % of it.");
  text.push_back("From lengths and shapes: a crushed part, a closed shutter or a blocked terminal shows only when the flow is measured.");
  for (const auto& c : r.cautions) cautions.push_back(c);
  return object{{"flow_l_per_s", r.flow_l_per_s},
                {"pressure_pa", r.pressure_pa},
                {"low_pa", r.low_pa},
                {"high_pa", r.high_pa},
                {"worst", run[r.worst].name},
                {"surface_m2", r.surface_m2},
                {"leakage_l_per_s", document::number_or_null(r.leakage_l_per_s)},
                {"segments", segments},
                {"cautions", cautions},
                {"text", text}};
}
constexpr model duct_run_model{
    {"duct_run",
     "Pressure that a run of duct takes at a flow, segment by segment with each one's share, so that the worst is seen; with a band, and cautions where bends "
     "stand close or flexible duct lies outside what was tested.",
     run_arguments, {"ASHRAE Handbook Fundamentals 2021, ch. 21 Duct Design", "Darcy-Weisbach and dynamic losses; equation (22) for flexible duct"}, run_duct_run, nullptr}};

// ---- operating_point -------------------------------------------------------------------------------------------------------

constexpr std::string_view fan_help =
    "{\"points\": [[flow in l/s, pressure in Pa], ...] by rising flow, 2 to 1000, \"pressure\": \"static\" (default) or \"total\", \"outlet_diameter_mm\" of "
    "a static curve, \"power_w\": a number or [[flow, W], ...], \"speed_ratio\": 1, \"curve_density_kg_per_m3\": 1.2, \"count\": 1 with \"arrangement\": "
    "\"series\" or \"parallel\"}";
constexpr std::string_view system_help =
    "{\"segments\": as for duct_run} or {\"flow_l_per_s\", \"pressure_pa\"}: a point that it passes, or {\"resistance_pa_s2_per_l2\"}; with \"fixed_pa\", a "
    "pressure that does not depend on the flow (wind, a difference between rooms)";
constexpr model_argument point_arguments[] = {{"fan", "object", fan_help},
                                              {"system", "object", system_help},
                                              {"air", "object", air_help, true},
                                              {"fan_percent", "number", "limits of the fan's pressure against its curve, 0 to 100 %; left out: 10", true},
                                              {"system_percent", "number", "limits of the system's pressure, 0 to 100 %; left out: the band of its segments, else 20", true},
                                              {"second_fan", "object", "a second fan, with a curve of its own, on the same run: as \"fan\", in parallel without \"outlet_diameter_mm\"", true},
                                              {"arrangement", "text", "how the two fans stand: \"series\" or \"parallel\"", true}};

/// A static curve has its outlet's velocity pressure less: so does the system that it is held against.
void take_off_outlet(system_read& s, const fan_read& f) {
  for (auto* c : {&s.curve, &s.low, &s.high}) c->quadratic -= f.outlet_pa_s2_per_l2;
}
double half_band_percent(const system_read& s, double flow) {
  const double p = s.curve(flow) - s.curve.fixed_pa;
  return p > 0.0 ? std::min(100.0, 50.0 * (s.high(flow) - s.low(flow)) / p) : 0.0;
}

/// Two fans with curves of their own.
document::value run_two_fans(const fields& in, const fan_read& one, system_read system, const air_state& air) {
  const std::string who = "operating_point", word = in.text("arrangement");
  if (word != "series" && word != "parallel") not_one_of(who, "arrangement", word, {"series", "parallel"});
  const fans_stand stand = word == "series" ? fans_stand::series : fans_stand::parallel;
  const auto two = fan_from(path(who, "second_fan"), object_of(who, in, "second_fan"), air);
  if (stand == fans_stand::parallel && (one.outlet_pa_s2_per_l2 != 0.0 || two.outlet_pa_s2_per_l2 != 0.0))
    throw range_error(who + ": of two fans in parallel leave \"outlet_diameter_mm\" out, or give curves of total pressure: each outlet carries a flow of its own");
  take_off_outlet(system, one);
  take_off_outlet(system, two);
  operating_doubt doubt;
  doubt.fan_percent = in.has("fan_percent") ? in.number("fan_percent") : 10.0;
  doubt.system_percent = in.has("system_percent") ? in.number("system_percent") : 20.0;
  auto r = operating_point_of_two(one.curve, two.curve, stand, system.curve, doubt);
  using state = two_fans_result::state;
  const bool found = r.is == state::found;
  if (found && system.banded() && !in.has("system_percent")) {
    doubt.system_percent = half_band_percent(system, r.flow.value);
    r = operating_point_of_two(one.curve, two.curve, stand, system.curve, doubt);
  }
  constexpr std::string_view words[] = {"found", "no_stable", "one_driven", "beyond_last_point", "below_first_point"};
  const std::string weaker = r.weaker == 0 ? "the first" : "the second";
  array all, text, sources, fans;
  for (const auto& x : r.all)
    all.push_back(object{{"flow_l_per_s", x.flow_l_per_s},
                         {"pressure_pa", x.pressure_pa},
                         {"stable", x.stable},
                         {"fan_slope_pa_s_per_l", stand == fans_stand::series ? x.fans[0].slope + x.fans[1].slope : x.fans[0].slope * x.fans[1].slope / (x.fans[0].slope + x.fans[1].slope)},
                         {"system_slope_pa_s_per_l", x.system_slope}});
  double low = no_number, high = no_number, pressure = no_number;
  if (found) {
    const auto& at = r.all[r.used];
    pressure = at.pressure_pa;
    const double half = r.flow.expanded_uncertainty(0.95);
    low = std::max(0.0, r.flow.value - half);
    high = r.flow.value + half;
    for (const auto& p : r.flow.parts) sources.push_back(object{{"source", p.source}, {"effect_l_per_s", p.u}});
    for (const auto& f : at.fans) fans.push_back(object{{"flow_l_per_s", f.flow_l_per_s}, {"pressure_pa", f.pressure_pa}, {"power_w", document::number_or_null(f.power_w)}});
    text.push_back("The two fans and the system meet at " + rounded(r.flow.value) + " l/s and " + rounded(pressure) + " Pa (95 %: " + rounded(low) + " to " + rounded(high) + " l/s).");
    if (stand == fans_stand::parallel)
      text.push_back("The first gives " + rounded(at.fans[0].flow_l_per_s) + " l/s of it, the second " + rounded(at.fans[1].flow_l_per_s) + " l/s.");
    else text.push_back("The first gives " + rounded(at.fans[0].pressure_pa) + " Pa of it, the second " + rounded(at.fans[1].pressure_pa) + " Pa.");
    for (std::size_t k = 0; k < 2; ++k)
      if (!is_nan(r.alone_l_per_s[k])) text.push_back(std::string(k == 0 ? "The first" : "The second") + " alone would give " + rounded(r.alone_l_per_s[k]) + " l/s.");
    if (r.several_stable) text.push_back("There is more than one flow that can be held, and which one it is depends on which fan was started first. The largest is used; measure the flow.");
  } else if (r.is == state::no_stable) {
    text.push_back("The two fans and the system meet, but at no flow that can be held: the fans would hunt.");
  } else if (r.is == state::one_driven) {
    const double strong = r.alone_l_per_s[static_cast<std::size_t>(1 - r.weaker)];
    if (stand == fans_stand::parallel)
      text.push_back("The stronger fan alone brings the run to " + rounded(system.curve(strong)) + " Pa, more than " + weaker + " can give (" + rounded(r.weaker_limit) +
                     " Pa): air is driven backwards through it, unless a shutter closes; with it shut " + rounded(strong) + " l/s flow.");
    else
      text.push_back("The stronger fan alone moves " + rounded(strong) + " l/s, more than " + weaker + " does without any resistance (" + rounded(r.weaker_limit) +
                     " l/s): it is driven along and only resists. What it takes is not on its curve.");
  } else if (r.is == state::beyond_last) {
    text.push_back("At the last points of the curves the fans still give more than the system takes: they meet beyond them, where nothing is known of the fans.");
  } else {
    text.push_back("At the first points of the curves the fans give less than the system takes, or one of them is driven by the other: there is no flow on both curves.");
  }
  if (stand == fans_stand::parallel)
    text.push_back("Above " + rounded(r.weaker_limit) + " Pa " + weaker + " is driven backwards" +
                   (is_nan(r.weaker_starts_l_per_s) ? std::string(".") : ", that is where both together would give less than " + rounded(r.weaker_starts_l_per_s) + " l/s."));
  else text.push_back("Beyond " + rounded(r.weaker_limit) + " l/s " + weaker + " only resists.");
  if (one.static_without_outlet || two.static_without_outlet) text.push_back("A curve is one of static pressure and its outlet was not given: the velocity pressure there is left out, which gives a little less flow.");
  return object{{"state", words[static_cast<std::size_t>(r.is)]},
                {"flow_l_per_s", document::number_or_null(found ? r.flow.value : no_number)},
                {"pressure_pa", document::number_or_null(pressure)},
                {"standard_uncertainty_l_per_s", document::number_or_null(found ? r.flow.standard_uncertainty() : no_number)},
                {"low_l_per_s", document::number_or_null(low)},
                {"high_l_per_s", document::number_or_null(high)},
                {"sources", sources},
                {"intersections", all},
                {"several_stable", r.several_stable},
                {"air_power_w", document::number_or_null(r.air_power_w)},
                {"power_w", document::number_or_null(r.power_w)},
                {"efficiency_ratio", document::number_or_null(r.power_w > 0.0 ? r.air_power_w / r.power_w : no_number)},
                {"specific_fan_power_w_per_l_per_s", document::number_or_null(r.specific_fan_power)},
                {"fans", fans},
                {"weaker_fan", r.weaker + 1},
                {"weaker_limit", r.weaker_limit},
                {"weaker_limit_unit", stand == fans_stand::parallel ? "Pa" : "l/s"},
                {"first_alone_l_per_s", document::number_or_null(r.alone_l_per_s[0])},
                {"second_alone_l_per_s", document::number_or_null(r.alone_l_per_s[1])},
                {"text", text}};
}

document::value run_operating_point(const object& inputs, const rulebook&) {
  const std::string who = "operating_point";
  const fields in(who, inputs);
  in.only("fan", "system", "air", "fan_percent", "system_percent", "second_fan", "arrangement");
  const auto air = air_from(who, in);
  const auto fan = fan_from(path(who, "fan"), object_of(who, in, "fan"), air);
  auto system = system_from(path(who, "system"), object_of(who, in, "system"), air);
  if (in.has("second_fan") != in.has("arrangement")) throw range_error(who + ": \"second_fan\" and \"arrangement\" (\"series\" or \"parallel\") belong together");
  if (in.has("second_fan")) return run_two_fans(in, fan, std::move(system), air);
  take_off_outlet(system, fan);
  operating_doubt doubt;
  doubt.fan_percent = in.has("fan_percent") ? in.number("fan_percent") : 10.0;
  doubt.system_percent = in.has("system_percent") ? in.number("system_percent") : 20.0;
  auto r = operating_point(fan.curve, system.curve, doubt);
  using state = operating_result::state;
  if (r.is == state::found && system.banded() && !in.has("system_percent")) {
    doubt.system_percent = half_band_percent(system, r.flow.value);
    r = operating_point(fan.curve, system.curve, doubt);
  }
  constexpr std::string_view words[] = {"found", "no_stable", "beyond_last_point", "below_first_point"};
  array all, text, sources;
  for (const auto& x : r.all)
    all.push_back(object{{"flow_l_per_s", x.flow_l_per_s}, {"pressure_pa", x.pressure_pa}, {"stable", x.stable()}, {"fan_slope_pa_s_per_l", x.fan_slope}, {"system_slope_pa_s_per_l", x.system_slope}});
  const bool found = r.is == state::found;
  double low = no_number, high = no_number, pressure = no_number;
  if (found) {
    pressure = r.all[r.used].pressure_pa;
    const double half = r.flow.expanded_uncertainty(0.95);
    low = std::max(0.0, r.flow.value - half);
    high = r.flow.value + half;
    for (const auto& p : r.flow.parts) sources.push_back(object{{"source", p.source}, {"effect_l_per_s", p.u}});
    text.push_back("Fan and system meet at " + rounded(r.flow.value) + " l/s and " + rounded(pressure) + " Pa (95 %: " + rounded(low) + " to " + rounded(high) + " l/s).");
    if (r.several_stable)
      text.push_back("The curve has a hump: there is more than one flow that can be held, and which one it is depends on how the fan was started. The largest is used; measure the flow.");
    if (r.specific_fan_power == r.specific_fan_power) text.push_back("Specific fan power " + rounded(r.specific_fan_power) + " W/(l/s).");
  } else if (r.is == state::no_stable) {
    text.push_back("Fan and system meet, but at no flow that can be held: the fan would hunt. Another fan, or less resistance.");
  } else if (r.is == state::beyond_last) {
    const auto& last = fan.curve.pressure().points().back();
    text.push_back("At the last point of the curve (" + rounded(last.flow_l_per_s) + " l/s) the fan still gives " + rounded(last.value) + " Pa and the system takes " +
                   rounded(system.curve(last.flow_l_per_s)) + " Pa: they meet beyond it, where nothing is known of the fan.");
  } else {
    text.push_back("At the first point of the curve the fan gives less than the system takes: there is no flow on this curve.");
  }
  if (fan.static_without_outlet) text.push_back("The curve is one of static pressure and its outlet was not given: the velocity pressure there is left out, which gives a little less flow.");
  return object{{"state", words[static_cast<std::size_t>(r.is)]},
                {"flow_l_per_s", document::number_or_null(found ? r.flow.value : no_number)},
                {"pressure_pa", document::number_or_null(pressure)},
                {"standard_uncertainty_l_per_s", document::number_or_null(found ? r.flow.standard_uncertainty() : no_number)},
                {"low_l_per_s", document::number_or_null(low)},
                {"high_l_per_s", document::number_or_null(high)},
                {"sources", sources},
                {"intersections", all},
                {"several_stable", r.several_stable},
                {"air_power_w", document::number_or_null(r.air_power_w)},
                {"power_w", document::number_or_null(r.power_w)},
                {"efficiency_ratio", document::number_or_null(r.efficiency)},
                {"specific_fan_power_w_per_l_per_s", document::number_or_null(r.specific_fan_power)},
                {"fans", array{}},
                {"weaker_fan", nullptr},
                {"weaker_limit", nullptr},
                {"weaker_limit_unit", ""},
                {"first_alone_l_per_s", nullptr},
                {"second_alone_l_per_s", nullptr},
                {"text", text}};
}
constexpr model operating_point_model{
    {"operating_point",
     "Where a fan's curve meets the system: every intersection, which of them can be held, the flow with its uncertainty, power and specific fan power; density, "
     "speed, equal fans in series or in parallel, or two unlike ones: curves added exactly, and said where the weaker is driven.",
     point_arguments, fan_laws_source, run_operating_point, nullptr}};

// ---- operating_flows -------------------------------------------------------------------------------------------------------

constexpr model_argument flows_arguments[] = {
    {"fans", "objects", "as for operating_point, each with its points; the flows are those of the static or total pressure as drawn"},
    {"fan_index", "numbers", "which fan each row has, from 0"},
    {"diameter_mm", "numbers", "of the round duct of each row, 1 to 10000"},
    {"length_m", "numbers", "0 to 10000"},
    {"roughness_mm", "numbers", "0 to half the diameter"},
    {"loss_coefficient", "numbers", "sum of all, on the velocity in the duct, 0 to 1e6"},
    {"air", "object", air_help, true}};

/// Friction factors by lanes, with the bits of one at a time.
struct by_lanes {
  const formula_info& f;
  void operator()(const double* reynolds, const double* relative_roughness, double* factor, std::size_t n) const {
    char* data[] = {const_cast<char*>(reinterpret_cast<const char*>(reynolds)), const_cast<char*>(reinterpret_cast<const char*>(relative_roughness)), reinterpret_cast<char*>(factor)};
    constexpr std::ptrdiff_t steps[] = {8, 8, 8};
    f.batch(f.self, data, steps, static_cast<std::ptrdiff_t>(n), true);
  }
};
document::value run_operating_flows(const object& inputs, const rulebook&) {
  const std::string who = "operating_flows";
  const fields in(who, inputs);
  in.only("fans", "fan_index", "diameter_mm", "length_m", "roughness_mm", "loss_coefficient", "air");
  const auto air = air_from(who, in);
  std::vector<fan_curve> fans;
  const auto& list = list_of(who, in, "fans");
  for (std::size_t i = 0; i < list.size(); ++i) {
    const auto* o = list[i].as<object>();
    const std::string at = path(who, "fans[" + std::to_string(i) + "]");
    if (!o) throw range_error(at + ": must be an object");
    const auto f = fan_from(at, *o, air);
    if (f.outlet_pa_s2_per_l2 != 0.0) throw range_error(at + ": leave \"outlet_diameter_mm\" out here");
    fans.push_back(f.curve);
  }
  if (fans.empty()) throw range_error(who + ": at least one fan");
  std::vector<std::vector<double>> columns;
  for (const char* name : {"fan_index", "diameter_mm", "length_m", "roughness_mm", "loss_coefficient"}) {
    columns.push_back(numbers_of(who, name, in.need(name)));
    if (columns.back().size() != columns.front().size())
      throw range_error(who + ": \"" + name + "\" has " + std::to_string(columns.back().size()) + " rows, \"fan_index\" " + std::to_string(columns.front().size()));
  }
  std::vector<double> flow(columns[0].size());
  const duct_columns ducts{columns[1], columns[2], columns[3], columns[4]};
  static const entry* colebrook = find_entry("air.friction_factor_colebrook");
  if (colebrook && colebrook->formula.batch) operating_flows(fans, columns[0], ducts, air, flow, by_lanes{colebrook->formula});
  else operating_flows(fans, columns[0], ducts, air, flow);
  array out;
  out.reserve(flow.size());
  std::size_t missing = 0;
  for (const double q : flow) {
    missing += is_nan(q);
    out.emplace_back(q);
  }
  return object{{"flow_l_per_s", std::move(out)}, {"not_found_count", missing}};
}
constexpr model operating_flows_model{
    {"operating_flows",
     "The stable operating flow, the largest where there are several, of many pairs of a fan and a round duct; NaN where the curves do not meet on the points "
     "of the fan, or a row makes no sense.",
     flows_arguments, fan_laws_source, run_operating_flows, nullptr}};

// ---- fan_diagnosis ---------------------------------------------------------------------------------------------------------

constexpr model_argument diagnosis_arguments[] = {
    {"fan", "object", fan_help},
    {"system", "object", "the run as it is seen or was meant: see operating_point, without \"fixed_pa\""},
    {"readings", "object",
     "what was read, one or more of: \"grille_l_per_s\" and \"outlet_l_per_s\" (a number, or a reading with its instrument; negative: against the meant "
     "direction), \"fan_pressure_pa\" (static, across the fan), \"direction\" at the grille: \"in\", \"out\" or \"none\", \"outlet_air\": \"blows\", \"still\" or "
     "\"not_found\", \"running\": \"runs\" or \"silent\""},
    {"blades", "text", "\"axial\" (reversed, it blows backwards) or \"centrifugal\" (reversed, it blows weakly); left out: not known", true},
    {"before_fan_ratio", "number", "share of the run's resistance that lies between grille and fan, 0 to 1; left out: 0.2", true},
    {"fan_percent", "number", "limits of the fan's pressure against its curve, above 0 to 50 %; left out: 10", true},
    {"air", "object", air_help, true}};

document::value run_fan_diagnosis(const object& inputs, const rulebook&) {
  const std::string who = "fan_diagnosis";
  const fields in(who, inputs);
  in.only("fan", "system", "readings", "blades", "before_fan_ratio", "fan_percent", "air");
  const auto air = air_from(who, in);
  const auto fan = fan_from(path(who, "fan"), object_of(who, in, "fan"), air);
  auto system = system_from(path(who, "system"), object_of(who, in, "system"), air);
  if (system.curve.fixed_pa != 0.0) throw range_error(who + ": leave \"fixed_pa\" out: wind and rooms are not among the explanations");
  fan_job j;
  if (!system.segments.empty()) {
    const double q = 0.6 * fan.curve.pressure().last_flow(), all = system.curve(q);
    double flexible = 0.0;
    for (const auto& s : system.segments)
      if (s.is == duct_segment::kind::flexible) flexible += curve_of_run(std::span<const duct_segment>(&s, 1), air)(q);
    if (all > 0.0) j.flexible_share = flexible / all;
  }
  take_off_outlet(system, fan);
  j.fan = fan.curve;
  j.run = system.curve;
  j.run_low = system.low;
  j.run_high = system.high;
  j.before_fan_share = in.has("before_fan_ratio") ? in.number("before_fan_ratio") : 0.2;
  j.fan_percent = in.has("fan_percent") ? in.number("fan_percent") : 10.0;
  const std::string blades = text_or(in, "blades", "");
  if (!blades.empty() && blades != "axial" && blades != "centrifugal") not_one_of(who, "blades", blades, {"axial", "centrifugal"});
  j.blades = blades == "axial" ? fan_blades::axial : blades == "centrifugal" ? fan_blades::centrifugal : fan_blades::unknown;
  const std::string at = path(who, "readings");
  const fields r(at, object_of(who, in, "readings"));
  r.only("grille_l_per_s", "outlet_l_per_s", "fan_pressure_pa", "direction", "outlet_air", "running");
  const auto flow = [&](std::string_view name) {
    if (!r.has(name)) return reading();
    const auto one = reading_from(r.need(name));
    if (one.is == reading::state::value && !is_finite(one.number)) throw range_error(at + ": \"" + std::string(name) + "\" is not a number; leave out what was not read");
    return one;
  };
  j.read.grille_l_per_s = flow("grille_l_per_s");
  j.read.outlet_l_per_s = flow("outlet_l_per_s");
  if (r.has("fan_pressure_pa")) j.read.fan_pressure_pa = finite_number(at, r, "fan_pressure_pa");
  j.read.direction = text_or(r, "direction", "");
  j.read.outlet_air = text_or(r, "outlet_air", "");
  j.read.running = text_or(r, "running", "");
  const auto out = fan_diagnosis(std::move(j));

  array list, next, text;
  for (const auto& x : out.explanations) {
    const auto& row = fan_state_rows[static_cast<std::size_t>(x.is)];
    list.push_back(object{{"kind", row.key},
                          {"text", row.text},
                          {"act", row.act},
                          {"probability", x.probability},
                          {"prior", x.prior},
                          {"grille_l_per_s", document::number_or_null(x.grille_l_per_s)},
                          {"outlet_l_per_s", document::number_or_null(x.outlet_l_per_s)}});
  }
  for (const auto& n : out.next) next.push_back(object{{"reading", n.reading}, {"text", n.text}, {"information_bits", n.information_bits}});
  const auto& first = out.explanations.front();
  const auto& row = fan_state_rows[static_cast<std::size_t>(first.is)];
  text.push_back("Curve and run give " + rounded(out.expected_l_per_s) + " l/s (95 %: " + rounded(out.expected_low_l_per_s) + " to " + rounded(out.expected_high_l_per_s) + " l/s).");
  if (out.none_of_these > first.probability) text.push_back("No listed explanation fits these readings: read again, and doubt the curve and the run as seen.");
  else text.push_back("Most likely: " + std::string(row.text) + " (" + rounded(100.0 * first.probability, 2) + " %). " + std::string(row.act));
  if (!out.robust) text.push_back("What leads depends on the weights before any reading: take another reading first.");
  if (!out.next.empty() && out.next.front().information_bits > 0.01) text.push_back("The reading that tells most: " + out.next.front().text);
  text.push_back("Isolate before a hand goes near a fan: a timer or a sensor may start it. An unpowered hood throttles a weak fan and reads low.");
  return object{{"kind", out.none_of_these > first.probability ? document::value("none_of_these") : document::value(row.key)},
                {"probability", std::max(out.none_of_these, first.probability)},
                {"explanations", list},
                {"none_of_these", out.none_of_these},
                {"robust", out.robust},
                {"conflict", out.conflict},
                {"expected_l_per_s", out.expected_l_per_s},
                {"expected_low_l_per_s", out.expected_low_l_per_s},
                {"expected_high_l_per_s", out.expected_high_l_per_s},
                {"next", next},
                {"text", text}};
}
constexpr model fan_diagnosis_model{
    {"fan_diagnosis",
     "What explains the flow read at the grille (and at the outlet) against the fan's curve and the run: added resistance, crushed flexible duct, closed shutter, "
     "reversed or slow fan, leak or duct off its spigot, no outlet; ranked, with the next reading to take.",
     diagnosis_arguments, {"posterior of exclusive explanations by the inference kernel; weights and ranges of the faults are judgement", "", "common-practice"}, run_fan_diagnosis, nullptr}};

}  // namespace

void ventilation(std::vector<entry>& all) {
  append(all, "air", list<duct_run_model, operating_point_model, operating_flows_model, fan_diagnosis_model>{});
  moisture(all);
  requirements(all);
  measured_flow(all);
}
}  // namespace makegood::subjects

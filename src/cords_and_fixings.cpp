// SPDX-License-Identifier: MIT
// Models of the subject setting_out: fixings and their tests, drills in steps, cords that have to reach.
#include <makegood/setting_out/fixing_load.hpp>
#include <makegood/setting_out/flex_reach.hpp>
#include <algorithm>
#include <cmath>
#include <iterator>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace so = makegood::setting_out;
using document::array;
using document::number_or_null;
using document::object;

array texts(std::initializer_list<std::string_view> list_) {
  array a;
  for (const auto t : list_) a.emplace_back(std::string(t));
  return a;
}
std::string rounded(double x, double to = 0.1) { return number_text(std::round(x / to) * to, 8); }
const object& object_of(std::string_view who, std::string_view name, const document::value& v) {
  const auto* o = v.as<object>();
  if (!o) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be an object, not " + std::string(document::type_name(v)));
  return *o;
}
int whole(const fields& in, std::string_view who, std::string_view name, double otherwise, double low, double high) {
  const double x = in.has(name) ? in.number(name) : otherwise;
  if (!(x >= low && x <= high) || x != std::floor(x)) throw range_error(std::string(who) + ": " + std::string(name) + " = " + number_text(x) + ": a whole number from " + number_text(low) + " to " + number_text(high));
  return static_cast<int>(x);
}
double number_if(const fields& in, std::string_view name, double otherwise) { return in.has(name) ? in.number(name) : otherwise; }

// ---- fixings ---------------------------------------------------------------------------------------------------------

constexpr model_argument fixing_arguments[] = {
    {"load_n", "number", "load that hangs there for good, in newton (1 kg is 9.81 N): a rail with wet towels, a full cabinet"},
    {"projection_mm", "number", "distance of that load from the wall"},
    {"lever_mm", "number", "distance of the top fixings from the lower edge that the bracket turns about"},
    {"top_count", "number", "top fixings that share the pull, whole; 2", true},
    {"fixings_count", "number", "all fixings, which share the shear, whole; 4", true},
    {"accidental_load_n", "number", "what hands, a child or somebody who slips add; 0, and the text says so", true},
    {"accidental_projection_mm", "number", "distance of that from the wall; as for the load", true},
    {"allowable_pull_n", "number", "allowable pull of one fixing in this wall; from its tests where they are given", true},
    {"allowable_shear_n", "number", "allowable shear of one fixing in this wall", true},
    {"ultimate_n", "numbers", "ultimate pulls of fixings tested in this wall, 2 or more: the smaller of mean/4 and the characteristic load over `characteristic_factor` is allowed", true},
    {"confidence", "number", "of the characteristic load, 0.5 to 0.999; 0.9", true},
    {"characteristic_factor", "number", "safety factor on the characteristic load; 3", true}};
document::value run_fixing(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "fixing_load";
  const fields in(who, inputs);
  in.only("load_n", "projection_mm", "lever_mm", "top_count", "fixings_count", "accidental_load_n", "accidental_projection_mm", "allowable_pull_n", "allowable_shear_n", "ultimate_n", "confidence",
          "characteristic_factor");
  so::fixing_task t;
  t.load_n = in.number("load_n"), t.projection_mm = in.number("projection_mm"), t.lever_mm = in.number("lever_mm");
  t.top_count = whole(in, who, "top_count", 2, 1, 100), t.fixings_count = whole(in, who, "fixings_count", 4, 1, 100);
  t.accidental_n = number_if(in, "accidental_load_n", 0.0), t.accidental_projection_mm = number_if(in, "accidental_projection_mm", no_number);
  t.allowable_pull_n = number_if(in, "allowable_pull_n", no_number), t.allowable_shear_n = number_if(in, "allowable_shear_n", no_number);
  const double factor = number_if(in, "characteristic_factor", 3.0);
  if (!(factor >= 1.0 && factor <= 100.0)) throw range_error("fixing_load: characteristic_factor = " + number_text(factor) + ": from 1 to 100");
  for (const auto& [x, name] : {std::pair{t.allowable_pull_n, "allowable_pull_n"}, {t.allowable_shear_n, "allowable_shear_n"}})
    if (!is_nan(x) && !(x > 0.0 && x <= 1e6)) throw range_error("fixing_load: " + std::string(name) + " = " + number_text(x) + " N: above 0 to 1e6 N");
  document::value tests(nullptr);
  std::string from = "as given";
  if (in.has("ultimate_n")) {
    const auto c = so::characteristic_load(numbers_of(who, "ultimate_n", in.need("ultimate_n")), number_if(in, "confidence", 0.9));
    const double by_tests = std::min(c.mean_over_n, c.characteristic_n / factor);
    tests = object{{"mean_n", c.mean_n}, {"deviation_n", c.deviation_n}, {"k", c.factor}, {"characteristic_n", c.characteristic_n}, {"mean_over_4_n", c.mean_over_n}, {"allowable_n", by_tests}};
    if (is_nan(t.allowable_pull_n) || by_tests < t.allowable_pull_n) t.allowable_pull_n = by_tests, from = "by the tests in this wall";
  }
  const bool nothing = t.allowable_pull_n == 0.0;
  if (nothing) t.allowable_pull_n = no_number;
  const auto r = so::fixing_load(t);
  array text;
  text.push_back("Each of the " + std::to_string(t.top_count) + " top fixings is pulled by " + rounded(r.pull_n) + " N, and each of all " + std::to_string(t.fixings_count) + " is sheared by " + rounded(r.shear_n) + " N.");
  if (t.accidental_n == 0.0) text.push_back("That is the hanging load alone: nobody has pulled at it, leaned on it or slipped. Give an accidental load.");
  std::string result = "undecided";
  if (nothing) {
    result = "fail";
    text.push_back("The tests scatter so much that nothing is proved: another fixing, or another place.");
  } else if (is_nan(r.interaction)) {
    text.push_back("What this wall allows is not known: give allowable pull and shear, or tests.");
  } else {
    result = r.interaction <= 1.0 ? "pass" : "fail";
    text.push_back("Pull and shear use " + rounded(100.0 * r.interaction) + " % of what is allowed (pull " + from + "); " + (r.interaction <= 1.0 ? "at that distance " : "no more than ") + rounded(r.greatest_load_n) + " N could hang there in all.");
  }
  return object{{"outcome", result},
                {"text", text},
                {"pull_n", r.pull_n},
                {"shear_n", r.shear_n},
                {"lasting_pull_n", r.lasting_pull_n},
                {"lasting_shear_n", r.lasting_shear_n},
                {"allowable_pull_n", number_or_null(t.allowable_pull_n)},
                {"allowable_shear_n", number_or_null(t.allowable_shear_n)},
                {"interaction", number_or_null(r.interaction)},
                {"greatest_load_n", number_or_null(r.greatest_load_n)},
                {"proof_load_n", is_nan(t.allowable_pull_n) ? document::value(nullptr) : document::value(so::greatest_proof_load(t.allowable_pull_n))},
                {"tests", tests},
                {"cautions", texts({"The wall behind the tiles decides: board, block, studs and voids each want their own fixing.",
                                    "A bracket that does not lie flat puts the whole pull on one fixing.", "Before drilling: isolate, and find cables, pipes and heating wires first."})}};
}
constexpr model fixing_load{{"fixing_load",
                             "Pull and shear on the fixings of a rail or cabinet, with an accidental load, against what is allowed in that wall: as given, or by tests (mean over 4, and a characteristic load "
                             "mean - k s with k of the non-central t distribution).",
                             fixing_arguments, source{"moment balance; BS 8539:2012 as described in the trade", "T = W e/(h n), V = W/n, T/T_a + V/V_a ≤ 1", "memory"}, run_fixing, nullptr}};

constexpr model_argument characteristic_arguments[] = {{"ultimate_n", "numbers", "ultimate loads of fixings tested in one wall, 2 or more, in newton"},
                                                       {"confidence", "number", "0.5 to 0.999; 0.9", true},
                                                       {"fractile", "number", "share of fixings that may bear less, 0.001 to 0.5; 0.05", true},
                                                       {"factor", "number", "safety factor on the mean; 4", true}};
document::value run_characteristic(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "characteristic_load";
  const fields in(who, inputs);
  in.only("ultimate_n", "confidence", "fractile", "factor");
  const auto c = so::characteristic_load(numbers_of(who, "ultimate_n", in.need("ultimate_n")), number_if(in, "confidence", 0.9), number_if(in, "fractile", 0.05), number_if(in, "factor", 4.0));
  array text;
  text.push_back("Mean " + rounded(c.mean_n) + " N; over the factor " + rounded(c.mean_over_n) + " N; characteristic " + rounded(c.characteristic_n) + " N (k = " + number_text(c.factor, 4) + ").");
  if (c.characteristic_n == 0.0) text.push_back("The tests scatter so much that they prove nothing.");
  return object{{"mean_n", c.mean_n}, {"deviation_n", c.deviation_n}, {"k", c.factor}, {"characteristic_n", c.characteristic_n}, {"mean_over_factor_n", c.mean_over_n}, {"text", text}};
}
constexpr model characteristic_load{{"characteristic_load", "What tests of fixings in one wall prove: mean over a safety factor, and mean less k standard deviations, k for the number of tests and the confidence.",
                                     characteristic_arguments, source{"one-sided tolerance limit of the normal distribution", "k √n is the quantile of the non-central t distribution, n - 1 degrees of freedom, non-centrality z √n", "derived"},
                                     run_characteristic, nullptr}};

// ---- drills ----------------------------------------------------------------------------------------------------------

constexpr model_argument pilot_arguments[] = {{"diameter_mm", "number", "of the last drill, above 0 to 1000 mm"},
                                              {"cutting_speed_m_per_min", "number", "at the rim, from whoever made the drills or a table for the material"},
                                              {"first_mm", "number", "first drill; 4", true},
                                              {"step_ratio", "number", "each drill at most this many times the one before, 1.1 to 10; 2", true},
                                              {"sizes_mm", "numbers", "drills at hand; left out: even steps", true}};
document::value run_pilot(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "pilot_holes";
  const fields in(who, inputs);
  in.only("diameter_mm", "cutting_speed_m_per_min", "first_mm", "step_ratio", "sizes_mm");
  const double ratio = number_if(in, "step_ratio", 2.0), speed = in.number("cutting_speed_m_per_min");
  std::vector<double> at_hand;
  if (in.has("sizes_mm")) at_hand = numbers_of(who, "sizes_mm", in.need("sizes_mm"));
  const auto sizes = so::pilot_sizes(in.number("diameter_mm"), number_if(in, "first_mm", 4.0), ratio, at_hand);
  array steps, text;
  bool jumps = false;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const double n = so::spindle_speed(sizes[i], speed);
    jumps = jumps || (i > 0 && sizes[i] > sizes[i - 1] * ratio * (1.0 + 1e-9));
    steps.push_back(object{{"diameter_mm", sizes[i]}, {"spindle_speed_per_min", n}});
    text.push_back(rounded(sizes[i]) + " mm at " + rounded(n, 1.0) + " turns a minute.");
  }
  if (jumps) text.push_back("The drills at hand leave a step that is larger than asked for: mind the edge of the hole there.");
  return object{{"steps", steps}, {"text", text},
                {"cautions", texts({"No hammer on tile: it cracks the glaze or the tile; hammer, if at all, only behind it.", "Cool with water by hand or sponge, and keep the water out of the drill and off anything electrical.",
                                    "Begin slowly, at an angle or through a guide, until the rim has cut in. A core needs no pilot but a guide.", "Isolate, and find cables, pipes, membranes and heating wires before the first hole; old boards and adhesives may hold asbestos."})}};
}
constexpr model pilot_holes{{"pilot_holes", "Drills from a small first to the last one, each at most a multiple of the one before, with the speed of the spindle for each. The steps are a rule of the trade; the cutting speed is the caller's.",
                             pilot_arguments, source{"rule of the trade for stepping up drills", "n = v/(π d)", "common-practice"}, run_pilot, nullptr}};

// ---- cords -----------------------------------------------------------------------------------------------------------

constexpr model_argument hanging_arguments[] = {{"length_mm", "number", "length of the cord between its holds, which are at one height"}, {"span_mm", "number", "distance between the holds"}};
document::value run_hanging(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "hanging_cord";
  const fields in(who, inputs);
  in.only("length_mm", "span_mm");
  const double length = in.number("length_mm"), span = in.number("span_mm"), sag = so::catenary_sag(length, span), parabola = so::parabola_sag(length, span);
  array text;
  text.push_back("It hangs down by " + rounded(sag) + " mm.");
  if (length > 1.03 * span) text.push_back("The parabola of a taut cord would say " + rounded(parabola) + " mm: with so much slack it is too low.");
  return object{{"sag_mm", sag}, {"parabola_mm", parabola}, {"slack_percent", 100.0 * (length - span) / span}, {"text", text}};
}
constexpr model hanging_cord{{"hanging_cord", "How far a cord without stiffness hangs down between two holds of one height: the catenary, beside the parabola of a taut cord.", hanging_arguments,
                              source{"Catenary", "L = 2a sinh(S/2a), h = a (cosh(S/2a) - 1)", "derived"}, run_hanging, nullptr}};

constexpr model_argument flex_arguments[] = {
    {"length_mm", "number", "length of the flex from where it leaves the appliance to its end"},
    {"start", "object", "{\"x_mm\", \"y_mm\", \"leaves\"} on the wall, x to the right and y upwards; leaves: \"left\", \"right\", \"up\", \"down\" or \"any\" (default)"},
    {"outlet", "object", "{\"x_mm\", \"y_mm\", \"enters_from\"}: the outlet, and from which side the flex comes in (\"any\")"},
    {"route", "text", "\"right_angles\" (default, clipped along the wall) or \"straight\" (as a taut string lies)", true},
    {"way_points", "objects", "{\"x_mm\", \"y_mm\"} that it has to pass, in order", true},
    {"keep_outs", "objects", "{\"name\", \"left_mm\", \"bottom_mm\", \"right_mm\", \"top_mm\"} or {\"x_mm\", \"y_mm\", \"width_mm\", \"height_mm\", \"rule\"}: what it may not cross; the edge may be followed", true},
    {"clear_mm", "number", "kept from each keep-out; 0", true},
    {"cable", "text", "kind of cable, as for bend_radius (\"flexible_fixed\" ...), for the least radius", true},
    {"diameter_mm", "number", "outer diameter of the flex, with `cable`", true},
    {"bend_radius_mm", "number", "radius of bends at the middle of the flex; from cable and diameter, else 0", true},
    {"straight_mm", "number", "straight piece where it leaves and enters; at least the radius", true},
    {"allowance_mm", "number", "taken up by terminating it, both ends; 0, and the text says so", true},
    {"slack_mm", "number", "left slack for taking the appliance off; 0", true},
    {"length_sd_mm", "number", "standard uncertainty of the flex's length; 0", true},
    {"place_sd_mm", "number", "standard uncertainty of each of the two places, along the way; 0", true}};
document::value run_flex(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "flex_reach";
  const fields in(who, inputs);
  in.only("length_mm", "start", "outlet", "route", "way_points", "keep_outs", "clear_mm", "cable", "diameter_mm", "bend_radius_mm", "straight_mm", "allowance_mm", "slack_mm", "length_sd_mm", "place_sd_mm");
  so::flex_task t;
  t.length_mm = in.number("length_mm");
  const auto direction = [&](const fields& f, std::string_view name) {
    if (!f.has(name)) return 0;
    const auto at = std::find(std::begin(so::directions), std::end(so::directions), f.text(name));
    if (at == std::end(so::directions)) throw range_error("flex_reach: " + std::string(name) + " = \"" + f.text(name) + "\" is not one of \"any\", \"left\", \"right\", \"up\", \"down\"");
    return static_cast<int>(at - std::begin(so::directions));
  };
  {
    const fields f("flex_reach: start", object_of(who, "start", in.need("start")));
    f.only("x_mm", "y_mm", "leaves");
    t.from = {f.number("x_mm"), f.number("y_mm")}, t.leaves = direction(f, "leaves");
    const fields g("flex_reach: outlet", object_of(who, "outlet", in.need("outlet")));
    g.only("x_mm", "y_mm", "enters_from");
    t.to = {g.number("x_mm"), g.number("y_mm")}, t.enters = direction(g, "enters_from");
  }
  const auto each = [&](std::string_view name, const auto& f) {
    if (!in.has(name)) return;
    const auto* a = in.need(name).as<array>();
    if (!a) throw range_error("flex_reach: \"" + std::string(name) + "\" must be a list of objects, not " + std::string(document::type_name(in.need(name))));
    for (std::size_t i = 0; i < a->size(); ++i) {
      const std::string path = std::string(name) + "[" + std::to_string(i) + "]", place = "flex_reach: " + path;
      f(fields(place, object_of(who, path, (*a)[i])));
    }
  };
  each("way_points", [&](const fields& f) {
    f.only("x_mm", "y_mm");
    t.way.push_back({f.number("x_mm"), f.number("y_mm")});
  });
  each("keep_outs", [&](const fields& f) {
    so::keep_out k;
    if (f.has("width_mm")) {
      f.only("x_mm", "y_mm", "width_mm", "height_mm", "rule", "name");
      const double x = f.number("x_mm"), y = f.number("y_mm");
      k = {"", x, y, x + f.number("width_mm"), y + f.number("height_mm")};
      if (f.has("rule")) k.name = f.text("rule");
    } else {
      f.only("name", "left_mm", "bottom_mm", "right_mm", "top_mm");
      k = {"", f.number("left_mm"), f.number("bottom_mm"), f.number("right_mm"), f.number("top_mm")};
    }
    if (f.has("name")) k.name = f.text("name");
    t.keep_outs.push_back(k);
  });
  if (in.has("route")) {
    if (in.text("route") != "right_angles" && in.text("route") != "straight") throw range_error("flex_reach: route = \"" + in.text("route") + "\" is not one of \"right_angles\", \"straight\"");
    t.right_angles = in.text("route") == "right_angles";
  }
  double inside = no_number;
  if (in.has("cable")) {
    const double d = in.number("diameter_mm");
    inside = so::bend_radius(in.text("cable"), d);
    t.bend_radius_mm = inside + 0.5 * d;
  }
  if (in.has("bend_radius_mm")) t.bend_radius_mm = in.number("bend_radius_mm");
  t.clear_mm = number_if(in, "clear_mm", 0.0), t.straight_mm = number_if(in, "straight_mm", 0.0), t.allowance_mm = number_if(in, "allowance_mm", 0.0);
  t.slack_mm = number_if(in, "slack_mm", 0.0), t.length_sd_mm = number_if(in, "length_sd_mm", 0.0), t.place_sd_mm = number_if(in, "place_sd_mm", 0.0);
  const auto r = so::flex_reach(t);
  array text, path;
  for (const auto& p : r.path) path.push_back(object{{"x_mm", p.x_mm}, {"y_mm", p.y_mm}});
  std::string result = "undecided";
  if (!r.way_found) {
    result = "fail";
    text.push_back("No way: " + r.blame + ".");
  } else {
    result = !r.bends_fit ? "undecided" : r.probability >= 0.95 ? "pass" : r.probability <= 0.05 ? "fail" : "undecided";
    if (r.spare_mm >= 0.0) text.push_back("The way needs " + rounded(r.needed_mm) + " mm of flex: " + rounded(r.spare_mm) + " mm are left over.");
    else
      text.push_back("The way needs " + rounded(r.needed_mm) + " mm of flex: " + rounded(-r.spare_mm) + " mm are missing. Along this way the outlet would have to be at " + rounded(r.ends.x_mm) + ", " + rounded(r.ends.y_mm) + " mm.");
    if (!r.bends_fit) text.push_back("As drawn it cannot be bent: " + r.blame + ".");
    if (result == "undecided" && r.bends_fit) text.push_back("The doubt of the lengths is larger than what is left: measure again, or lay a string along the way.");
    if (t.allowance_mm == 0.0) text.push_back("Nothing is taken off for terminating it: strip lengths, grip and loop take 100 mm and more.");
    if (r.spare_mm < 0.0) text.push_back("A flex is not lengthened by a joint, unless the joint has an enclosure of its own that stays accessible, grips both cords, and may be where it is: rather move the outlet, or ask the maker for a longer flex.");
  }
  return object{{"outcome", result},
                {"text", text},
                {"reaches", r.way_found && r.bends_fit && r.spare_mm >= 0.0},
                {"needed_mm", number_or_null(r.needed_mm)},
                {"spare_mm", number_or_null(r.spare_mm)},
                {"missing_mm", r.way_found ? document::value(std::max(0.0, -r.spare_mm)) : document::value(nullptr)},
                {"standard_uncertainty_mm", number_or_null(r.standard_uncertainty_mm)},
                {"probability", number_or_null(r.probability)},
                {"legs_mm", number_or_null(r.legs_mm)},
                {"saved_mm", number_or_null(r.saved_mm)},
                {"bends_count", static_cast<double>(r.bends)},
                {"bend_radius_mm", t.bend_radius_mm},
                {"bend_inside_mm", number_or_null(inside)},
                {"path", path},
                {"outlet_at", r.way_found ? document::value(object{{"x_mm", r.ends.x_mm}, {"y_mm", r.ends.y_mm}}) : document::value(nullptr)},
                {"concealed",
                 object{{"length_mm", number_or_null(r.concealed_mm)},
                        {"text", texts({"Through the wall instead: up or down and across from the accessories, as permitted zones run, less than this length is not possible.",
                                        "Concealed less than 50 mm deep: within the permitted zones and behind a residual current device of 30 mA, or with earthed mechanical protection.",
                                        "A flex is not buried in plaster: a conduit or a cable of fixed wiring, with an accessible enclosure at each end.",
                                        "Chases weaken a wall, and in a bathroom the zones limit what may be there at all: isolate and detect before cutting."})}}},
                {"cautions", texts({"Isolate and prove dead before the flex is connected. Its protective conductor is the last to be strained: leave it longest.",
                                    "No strain on terminals: a cord grip at both ends. Whoever made the appliance may forbid shortening or other routes."})}};
}
constexpr model flex_reach{{"flex_reach",
                            "Whether a supplied flex reaches an outlet: the shortest way on the wall from entry to outlet through given points and round keep-outs, less what rounded bends save, with allowance, slack "
                            "and doubt; what is left or missing, and where the outlet would have to be.",
                            flex_arguments, source{"shortest way among rectangles, arcs at its corners", "legs - Σ R (2 tan(θ/2) - θ) + allowance + slack; 0.4292 R for a right angle", "derived"}, run_flex, nullptr}};
}  // namespace
void cords_and_fixings(std::vector<entry>& all) { append(all, "setting_out", list<fixing_load, characteristic_load, pilot_holes, flex_reach, hanging_cord>{}); }
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject setting_out.
#include <makegood/setting_out/chances.hpp>
#include <makegood/setting_out/list.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace so = makegood::setting_out;
using document::array;
using document::number_or_null;
using document::object;

constexpr model_argument bracket_arguments[] = {
    {"wall", "object",
     "{\"width_mm\", \"height_mm\", \"tile_width_mm\", \"tile_height_mm\", \"joint_mm\", \"first_x_mm\", \"first_y_mm\", \"shift_ratio\", \"courses_in_bond\"}: x to the right and "
     "y upwards from the bottom left corner; first: left and lower edge of one whole tile (0); shift_ratio: of each course against the one below (0), until the bond begins anew (1)"},
    {"holes", "objects", "{\"x_mm\", \"y_mm\", \"wish\"} from the pattern's datum, 1 to 64; wish: \"tile\" (default: far from its edges), \"vertical_joint\" or \"horizontal_joint\""},
    {"hole_diameter_mm", "number", "above 0 to 200 mm"},
    {"tolerance_mm", "number", "of the pattern's centres, worst case; 0", true},
    {"wander_mm", "number", "of the drill, worst case; 0", true},
    {"keep_outs", "objects", "{\"name\", \"left_mm\", \"bottom_mm\", \"right_mm\", \"top_mm\"}: what no hole may reach (cable zones, pipes, studs, a bath's zone); the edge may be touched", true},
    {"window", "object", "{\"left_mm\", \"bottom_mm\", \"right_mm\", \"top_mm\"}: where the datum may be (reach, height); what is left out is the wall", true},
    {"wished", "object", "{\"x_mm\", \"y_mm\"}: of equally good places the nearest to this; the middle of the window", true},
    {"doubt", "object",
     "{\"wander_mm\", \"centres_mm\", \"common_mm\"}: standard deviations in each direction of the drill, of the pattern's centres (each hole on its own) and of a shift of the whole pattern; "
     "gives the chance that every hole comes where it is to come, and the place where it is greatest", true}};
const object& object_in(std::string_view who, std::string_view name, const document::value& v) {
  const auto* o = v.as<object>();
  if (!o) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be an object, not " + std::string(document::type_name(v)));
  return *o;
}
template <class F>
void each_object(std::string_view who, std::string_view name, const document::value& v, const F& f) {
  const auto* a = v.as<array>();
  if (!a) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be a list of objects, not " + std::string(document::type_name(v)));
  for (std::size_t i = 0; i < a->size(); ++i) {
    const std::string path = std::string(name) + "[" + std::to_string(i) + "]", place = std::string(who) + ": " + path;
    f(fields(place, object_in(who, path, (*a)[i])));
  }
}
array to_document(const std::vector<so::interval_mm>& list_) {
  array a;
  for (const auto& i : list_) a.push_back(object{{"low", i.low}, {"high", i.high}});
  return a;
}
document::value run_brackets(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "place_brackets";
  const fields in(who, inputs);
  in.only("wall", "holes", "hole_diameter_mm", "tolerance_mm", "wander_mm", "keep_outs", "window", "wished", "doubt");
  so::bracket_task t;
  {
    constexpr std::string_view where = "place_brackets: wall";
    const fields w(where, object_in(who, "wall", in.need("wall")));
    w.only("width_mm", "height_mm", "tile_width_mm", "tile_height_mm", "joint_mm", "first_x_mm", "first_y_mm", "shift_ratio", "courses_in_bond");
    const double courses = w.number_or("courses_in_bond", 1.0);
    if (!(courses >= 1.0 && courses <= 20.0 && courses == std::floor(courses))) throw range_error("place_brackets: wall.courses_in_bond: a whole number from 1 to 20");
    t.wall = {w.number("width_mm"), w.number("height_mm"), w.number("tile_width_mm"), w.number("tile_height_mm"), w.number("joint_mm"), w.number_or("first_x_mm", 0.0), w.number_or("first_y_mm", 0.0),
              w.number_or("shift_ratio", 0.0), static_cast<int>(courses)};
  }
  each_object(who, "holes", in.need("holes"), [&](const fields& h) {
    h.only("x_mm", "y_mm", "wish");
    so::pattern_hole hole{h.number("x_mm"), h.number("y_mm"), so::hole_wish::tile};
    if (h.has("wish")) {
      const auto at = std::find(std::begin(so::hole_wishes), std::end(so::hole_wishes), h.text("wish"));
      if (at == std::end(so::hole_wishes)) throw range_error("place_brackets: wish = \"" + h.text("wish") + "\" is not one of \"tile\", \"vertical_joint\", \"horizontal_joint\"");
      hole.wish = static_cast<so::hole_wish>(at - std::begin(so::hole_wishes));
    }
    t.holes.push_back(hole);
  });
  t.hole_diameter_mm = in.number("hole_diameter_mm");
  t.tolerance_mm = in.has("tolerance_mm") ? in.number("tolerance_mm") : 0.0;
  t.wander_mm = in.has("wander_mm") ? in.number("wander_mm") : 0.0;
  if (in.has("keep_outs"))
    each_object(who, "keep_outs", in.need("keep_outs"), [&](const fields& k) {
      k.only("name", "left_mm", "bottom_mm", "right_mm", "top_mm");
      t.keep_outs.push_back({k.has("name") ? k.text("name") : std::string(), k.number("left_mm"), k.number("bottom_mm"), k.number("right_mm"), k.number("top_mm")});
    });
  const auto if_there = [](const fields& f, std::string_view name, double& to) {
    if (f.has(name)) to = f.number(name);
  };
  if (in.has("window")) {
    constexpr std::string_view where = "place_brackets: window";
    const fields w(where, object_in(who, "window", in.need("window")));
    w.only("left_mm", "bottom_mm", "right_mm", "top_mm");
    if_there(w, "left_mm", t.left_mm), if_there(w, "bottom_mm", t.bottom_mm), if_there(w, "right_mm", t.right_mm), if_there(w, "top_mm", t.top_mm);
  }
  if (in.has("wished")) {
    constexpr std::string_view where = "place_brackets: wished";
    const fields w(where, object_in(who, "wished", in.need("wished")));
    w.only("x_mm", "y_mm");
    if_there(w, "x_mm", t.wished_x_mm), if_there(w, "y_mm", t.wished_y_mm);
  }
  so::bracket_doubt doubt;
  if (in.has("doubt")) {
    constexpr std::string_view where = "place_brackets: doubt";
    const fields d(where, object_in(who, "doubt", in.need("doubt")));
    d.only("wander_mm", "centres_mm", "common_mm");
    doubt = {d.number_or("wander_mm", 0.0), d.number_or("centres_mm", 0.0), d.number_or("common_mm", 0.0)};
  }
  const auto chance = in.has("doubt") ? so::most_probable_place(t, doubt) : so::likeliest_place{so::place_brackets(t), {}, no_number, no_number, {}};
  const auto& r = chance.worst_case;
  array holes;
  double edge = no_number;
  for (const auto& h : r.holes) {
    holes.push_back(object{{"x_mm", h.x_mm}, {"y_mm", h.y_mm}, {"to_edge_mm", h.to_edge_mm}, {"to_joint_mm", h.to_joint_mm}, {"clearance_mm", h.clearance_mm}});
    if (t.holes[holes.size() - 1].wish == so::hole_wish::tile && !(edge <= h.to_edge_mm)) edge = h.to_edge_mm;
  }
  array cautions;
  for (const std::string_view c : {"No hammer on tiles: drill through them without, and begin small; hammer, if at all, only behind them.",
                                   "What lies behind is not known from this: detect cables and pipes on a dead circuit, and mind membranes, heated walls and old boards that may hold asbestos.",
                                   "The pattern is taken as level and the tiles as laid to size: measure joints where the holes come before the first one is drilled."})
    cautions.emplace_back(std::string(c));
  std::string text;
  if (!r.fits) text = "No place: " + r.blame + ".";
  else if (!is_nan(r.clearance_mm) && r.clearance_mm < 0.0)
    text = "At the best place the worst case still breaks the edge of a tile, by " + number_text(-r.clearance_mm) + " mm: take less hole, tolerance or wander, or other holes for the joints.";
  else text = "The best place leaves " + number_text(is_nan(r.clearance_mm) ? r.off_joint_mm : r.clearance_mm) + " mm " + (is_nan(r.clearance_mm) ? "between a hole and the middle of its joint." : "to the nearest edge of a tile, worst case.");
  document::value by_chance(nullptr);
  if (in.has("doubt") && r.fits) {
    const auto each = [](const so::bracket_chance& c) {
      array a;
      for (const double p : c.holes) a.emplace_back(p);
      return a;
    };
    by_chance = object{{"probability", chance.at_worst_case.probability}, {"failure", chance.at_worst_case.failure}, {"holes", each(chance.at_worst_case)},
                       {"best_x_mm", chance.x_mm}, {"best_y_mm", chance.y_mm}, {"best_probability", chance.at_likeliest.probability}, {"best_failure", chance.at_likeliest.failure},
                       {"best_holes", each(chance.at_likeliest)}};
    const auto chance_text = [](const so::bracket_chance& c) { return c.failure < 1e-4 ? std::string("more than 0.9999") : number_text(c.probability, 4); };
    text += " By chance every hole comes where it is to come with a probability of " + chance_text(chance.at_worst_case) + " there";
    if (chance.at_worst_case.failure - chance.at_likeliest.failure >= 1e-4)
      text += ", at most " + chance_text(chance.at_likeliest) + " with the datum at " + number_text(std::round(10.0 * chance.x_mm) / 10.0) + ", " + number_text(std::round(10.0 * chance.y_mm) / 10.0) + " mm";
    text += ".";
  }
  return object{{"fits", r.fits},
                {"text", text},
                {"x_mm", number_or_null(r.x_mm)},
                {"y_mm", number_or_null(r.y_mm)},
                {"clearance_mm", number_or_null(r.clearance_mm)},
                {"edge_distance_mm", number_or_null(edge)},
                {"off_joint_mm", number_or_null(r.off_joint_mm)},
                {"holes", holes},
                {"best_x", to_document(r.best_x)},
                {"best_y", to_document(r.best_y)},
                {"chance", by_chance},
                {"cautions", cautions}};
}
constexpr model place_brackets{{"place_brackets",
                                "Where a pattern of holes goes on a tiled wall: farthest from the edges of tiles, on joints, or some of each, outside keep-outs and inside a window; the exact "
                                "best place, all that are as good, and the clearance of each hole; with standard deviations the chance that all holes come right, and the place where that is greatest. In a joint: the "
                                "centre of the hole lies in it. Lengths in millimetres.",
                                bracket_arguments,
                                source{"Enumeration of the breaks and crossings of distances that rise and fall with slope 1", "an optimum lies at one of them in each direction", "derived"},
                                run_brackets, nullptr}};
}  // namespace
void setting_out(std::vector<entry>& all) {
  append(all, "setting_out", makegood::setting_out::entries{});
  append(all, "setting_out", list<place_brackets>{});
}
}  // namespace makegood::subjects

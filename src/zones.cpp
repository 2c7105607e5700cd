// SPDX-License-Identifier: MIT
// Models of the subject setting_out: zones of bathrooms, equipment in them, zones of cables in walls, a hole against them.
#include <makegood/setting_out/cable_zones.hpp>
#include <makegood/setting_out/zone_checks.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace so = makegood::setting_out;
using document::array;
using document::number_or_null;
using document::object;

const object& object_in(std::string_view who, std::string_view name, const document::value& v) {
  const auto* o = v.as<object>();
  if (!o) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be an object, not " + std::string(document::type_name(v)));
  return *o;
}
const array& list_in(std::string_view who, std::string_view name, const document::value& v) {
  const auto* a = v.as<array>();
  if (!a) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be a list, not " + std::string(document::type_name(v)));
  return *a;
}
template <class F>
void each_object(std::string_view who, std::string_view name, const document::value& v, const F& f) {
  const auto& a = list_in(who, name, v);
  for (std::size_t i = 0; i < a.size(); ++i) {
    const std::string path = std::string(name) + "[" + std::to_string(i) + "]", place = std::string(who) + ": " + path;
    f(fields(place, object_in(who, path, a[i])), path);
  }
}
double number_if(const fields& in, std::string_view name) { return in.has(name) ? in.number(name) : no_number; }
bool flag(std::string_view who, const fields& in, std::string_view name, bool otherwise = false) {
  if (!in.has(name)) return otherwise;
  const auto* b = in.need(name).as<bool>();
  if (!b) throw range_error(std::string(who) + ": \"" + std::string(name) + "\" must be true or false");
  return *b;
}
so::known known_of(std::string_view who, const fields& in, std::string_view name) {
  return in.has(name) ? (flag(who, in, name) ? so::known::yes : so::known::no) : so::known::unknown;
}
/// A word of a list.
template <class Words>
std::size_t word_of(std::string_view who, std::string_view name, const std::string& word, const Words& words) {
  const auto at = std::find(std::begin(words), std::end(words), word);
  if (at == std::end(words)) {
    std::string text = std::string(who) + ": " + std::string(name) + " = \"" + word + "\" is not one of";
    for (const auto k : words) text += (k == words[0] ? " \"" : ", \"") + std::string(k) + "\"";
    throw range_error(text);
  }
  return static_cast<std::size_t>(at - std::begin(words));
}
std::vector<double> tuple_of(std::string_view who, const std::string& path, const document::value& v, std::size_t n, std::string_view what) {
  const auto x = numbers_of(who, path, v);
  if (x.size() != n) throw range_error(std::string(who) + ": " + path + " must be " + std::string(what));
  return x;
}
so::plan_point place_of(std::string_view who, const std::string& path, const document::value& v) {
  const auto x = tuple_of(who, path, v, 2, "[x_m, y_m]");
  return {x[0], x[1]};
}
so::plan_polygon polygon_of(std::string_view who, const std::string& path, const document::value& v) {
  const auto& a = list_in(who, path, v);
  so::plan_polygon p;
  for (std::size_t i = 0; i < a.size(); ++i) p.push_back(place_of(who, path + "[" + std::to_string(i) + "]", a[i]));
  return p;
}
object source_of(const source& s) { return object{{"title", s.title}, {"clause", s.clause}, {"grade", s.grade}}; }
array sources_of(const std::vector<source>& all) {
  array list_;
  for (const auto& s : all) list_.push_back(source_of(s));
  return list_;
}
array texts(std::initializer_list<std::string_view> all) {
  array list_;
  for (const auto t : all) list_.emplace_back(std::string(t));
  return list_;
}
std::string metres(double x) { return number_text(std::round(1000.0 * x) / 1000.0) + " m"; }

// ---- bathroom_zone ------------------------------------------------------------------------------------------------------

constexpr std::string_view room_text =
    "{\"outline\": [[x_m, y_m], ...] of a simple plan, concave or not; \"floor_m\" (0), \"ceiling_m\", \"slopes\": [[[x_m, y_m, height_m] three times], ...] of a sloping ceiling; "
    "\"fixtures\": [{\"name\", \"kind\": \"bath\", \"shower_tray\" or \"shower_without_basin\", \"outline\" (bath, tray), \"outlet\": [x_m, y_m] (without a basin), \"rim_m\" (bath, tray), "
    "\"outlet_height_m\", \"bottom_m\", \"under_needs_tool\"}]; \"partitions\": [{\"name\", \"from\", \"to\": [x_m, y_m], \"top_m\" (left out: to the ceiling), \"bottom_m\" (0), "
    "\"kind\": \"partition\", \"door\", \"window\" or \"curtain\"}]}; metres from one corner, heights of the room from floor_m; -100 to 100 m";
constexpr std::string_view zone_book_text = "ids of rulebooks, separated by commas, or a Rulebook: the edition whose zones count (\"bs7671:2018+a2\", \"iec60364\", \"nfc15100:2015\" ...)";
constexpr std::string_view tape_text = "limit of error of one length with the tape, m, 0 to 1; left out: 2 %, at least 10 mm (assumed)";
constexpr model_argument zone_arguments[] = {{"point", "numbers", "[x_m, y_m, height_m] of the nearest part of what is judged, height from the same level as floor_m"},
                                             {"room", "object", room_text},
                                             {"rulebook", "rulebook", zone_book_text},
                                             {"tape_m", "number", tape_text, true}};
constexpr model_argument zones_arguments[] = {{"points", "table", "one row a point: [x_m, y_m, height_m]"},
                                              {"room", "object", room_text},
                                              {"rulebook", "rulebook", zone_book_text},
                                              {"tape_m", "number", tape_text, true}};
so::wet_room room_of(std::string_view who, const document::value& v) {
  const std::string place = std::string(who) + ": room";
  const fields in(place, object_in(who, "room", v));
  in.only("outline", "floor_m", "ceiling_m", "slopes", "fixtures", "partitions");
  so::wet_room r;
  r.outline = polygon_of(who, "room.outline", in.need("outline"));
  if (in.has("floor_m")) r.floor_m = in.number("floor_m");
  r.ceiling_m = number_if(in, "ceiling_m");
  if (in.has("slopes")) {
    const auto& slopes = list_in(who, "room.slopes", in.need("slopes"));
    for (std::size_t i = 0; i < slopes.size(); ++i) {
      const std::string path = "room.slopes[" + std::to_string(i) + "]";
      const auto& three = list_in(who, path, slopes[i]);
      if (three.size() != 3) throw range_error(std::string(who) + ": " + path + " must be three places [x_m, y_m, height_m]");
      so::ceiling_plane p;
      for (std::size_t k = 0; k < 3; ++k) {
        const auto x = tuple_of(who, path + "[" + std::to_string(k) + "]", three[k], 3, "[x_m, y_m, height_m]");
        p.at[k] = {x[0], x[1]}, p.height_m[k] = x[2];
      }
      r.slopes.push_back(p);
    }
  }
  each_object(who, "room.fixtures", in.need("fixtures"), [&](const fields& f, const std::string& path) {
    f.only("name", "kind", "outline", "outlet", "rim_m", "outlet_height_m", "bottom_m", "under_needs_tool");
    so::wet_fixture x;
    if (f.has("name")) x.name = f.text("name");
    x.kind = static_cast<so::wet_kind>(word_of(who, path + ".kind", f.text("kind"), so::wet_kinds));
    if (x.basin()) {
      x.outline = polygon_of(who, path + ".outline", f.need("outline"));
      if (f.has("outlet")) throw range_error(std::string(who) + ": " + path + ": a bath or tray is measured from its outline; \"outlet\" belongs to a shower without a basin");
    } else {
      x.outlet = place_of(who, path + ".outlet", f.need("outlet"));
      for (const auto name : {"outline", "rim_m", "bottom_m", "under_needs_tool"})
        if (f.has(name)) throw range_error(std::string(who) + ": " + path + ": \"" + name + "\" belongs to a bath or tray");
    }
    x.rim_m = number_if(f, "rim_m"), x.outlet_height_m = number_if(f, "outlet_height_m"), x.bottom_m = number_if(f, "bottom_m");
    x.under_needs_tool = flag(who, f, "under_needs_tool");
    if (x.under_needs_tool && is_nan(x.bottom_m)) throw range_error(std::string(who) + ": " + path + ": under_needs_tool asks for bottom_m, the underside of the basin");
    r.fixtures.push_back(std::move(x));
  });
  if (in.has("partitions"))
    each_object(who, "room.partitions", in.need("partitions"), [&](const fields& f, const std::string& path) {
      f.only("name", "from", "to", "top_m", "bottom_m", "kind");
      so::room_partition p;
      if (f.has("name")) p.name = f.text("name");
      p.line = {place_of(who, path + ".from", f.need("from")), place_of(who, path + ".to", f.need("to"))};
      p.top_m = number_if(f, "top_m");
      if (f.has("bottom_m")) p.bottom_m = f.number("bottom_m");
      if (f.has("kind")) p.kind = static_cast<so::partition_kind>(word_of(who, path + ".kind", f.text("kind"), so::partition_kinds));
      r.partitions.push_back(std::move(p));
    });
  return r;
}
std::string name_of(const so::wet_room& room, std::size_t f) {
  return room.fixtures[f].name.empty() ? std::string(so::wet_kinds[static_cast<std::size_t>(room.fixtures[f].kind)]) : room.fixtures[f].name;
}
array path_of(const so::fixture_place& s) {
  array path;
  for (const auto& p : s.path) path.push_back(array{p.x_m, p.y_m, p.height_m});
  return path;
}
object step(std::string_view symbol, std::string equation, std::string substituted, double value, std::string_view where_from = {}) {
  return object{{"symbol", symbol}, {"equation", std::move(equation)}, {"substituted", std::move(substituted)}, {"result", metres(value)}, {"value", number_or_null(value)},
                {"unit", "m"}, {"condition", ""}, {"source", where_from}};
}
/// The legs of the string, added up.
array steps_of(const so::bathroom& b, const so::fixture_place& s, std::size_t f) {
  array steps;
  if (!is_finite(s.string_m)) return steps;
  std::string legs, symbols;
  for (std::size_t i = 1; i < s.path.size(); ++i) {
    const auto &p = s.path[i - 1], &q = s.path[i];
    const double dx = q.x_m - p.x_m, dy = q.y_m - p.y_m, dz = q.height_m - p.height_m;
    legs += (legs.empty() ? "" : " + ") + metres(std::sqrt(dx * dx + dy * dy + dz * dz));
    symbols += (symbols.empty() ? "l_" : " + l_") + std::to_string(i);
  }
  if (legs.empty()) legs = "0 m", symbols = "0";
  steps.push_back(step("d", symbols, legs, s.string_m));
  const bool basin = b.room().fixtures[f].basin();
  if (!b.limits().missing.empty() || s.string_m == 0.0) return steps;
  if (basin) steps.push_back(step("m_2", "w_2 - d", metres(b.limits().zone2_width_m) + " - " + metres(s.string_m), b.limits().zone2_width_m - s.string_m));
  else steps.push_back(step("m_1", "r_1 - d", metres(b.limits().zone1_radius_m) + " - " + metres(s.string_m), b.limits().zone1_radius_m - s.string_m));
  return steps;
}
document::value run_zone(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "bathroom_zone";
  const fields in(who, inputs);
  in.only("point", "room", "tape_m");
  const auto p = tuple_of(who, "point", in.need("point"), 3, "[x_m, y_m, height_m]");
  const so::bathroom room(who, room_of(who, in.need("room")), book);
  const auto a = room.at({p[0], p[1], p[2]}, number_if(in, "tape_m"));
  const auto& g = a.fixtures[a.governing];
  const auto& z = room.limits();
  const bool ruled = a.zone != so::no_zone_rule;
  array fixtures, text, missing;
  for (std::size_t f = 0; f < a.fixtures.size(); ++f) {
    const auto& s = a.fixtures[f];
    fixtures.push_back(object{{"name", name_of(room.room(), f)}, {"zone", ruled ? so::zone_word(s.zone) : so::zone_word(so::no_zone_rule)}, {"string_m", number_or_null(s.string_m)}, {"to_zone_1_m", number_or_null(s.to_zone_1_m)},
                              {"to_outer_edge_m", number_or_null(s.to_outer_m)}, {"top_m", number_or_null(s.top_m)}, {"passes", s.passes}, {"path", path_of(s)}});
  }
  for (const auto& m : z.missing) missing.push_back(m);
  const std::string name = name_of(room.room(), a.governing);
  const auto share = [](double x) { return x > 0.995 ? std::string("over 99 %") : number_text(std::round(100.0 * x)) + " %"; };
  if (!ruled) {
    text.push_back("No zone: " + z.missing[0] + ".");
  } else {
    text.push_back(a.zone == so::outside_zones ? "Outside the zones; the nearest of them belong to \"" + name + "\"." : "Zone " + std::string(so::zone_word(a.zone)) + " of \"" + name + "\".");
    if (!is_finite(g.string_m)) text.push_back("Walls and partitions shut the place out: no string reaches it.");
    else {
      std::string way = g.string_m == 0.0 ? "The place lies over or at its outline" : "A string from " + std::string(room.room().fixtures[a.governing].basin() ? "its edge" : "its outlet") + " is " + metres(g.string_m) + " long";
      const std::size_t corners = g.path.size() > 2 ? g.path.size() - 2 : 0;
      if (!g.passes.empty()) way += ", " + g.passes;
      else if (corners > 0) way += ", round " + std::to_string(corners) + (corners == 1 ? " corner" : " corners");
      if (g.string_m > 0.0) way += g.to_outer_m >= 0.0 ? "; the outer edge is " + metres(g.to_outer_m) + " farther" : "; the outer edge lies " + metres(-g.to_outer_m) + " nearer";
      text.push_back(way + ".");
    }
    if (p[2] - room.room().floor_m > g.top_m) text.push_back("It is " + metres(p[2] - room.room().floor_m - g.top_m) + " above the top of its zones.");
    else text.push_back("The top of its zones is " + metres(g.top_m - (p[2] - room.room().floor_m)) + " above it.");
    if (a.doubtful)
      text.push_back("The tape cannot tell: " + share(a.probability) + " for " + (a.zone == so::outside_zones ? "outside" : "zone " + std::string(so::zone_word(a.zone))) + ". Judge it as " +
                     (a.strictest == so::outside_zones ? "outside" : "zone " + std::string(so::zone_word(a.strictest))) + ", or measure the string itself.");
    if (a.assumed) text.push_back("The tape was not described: a limit of error of " + metres(a.tape_m) + " is assumed.");
    if (a.in_special_location && book.find("notifiable", "special_location_alteration").found()) text.push_back("An addition or alteration to a circuit here is notifiable; replacement, repair and maintenance are not.");
  }
  for (const auto& r : room.remarks()) text.push_back(r);
  const bool special_known = !is_nan(z.special_height_m);
  object probabilities;
  for (std::size_t k = 0; k < 5; ++k)
    if (k != 3 || !is_nan(z.zone3_width_m)) probabilities.set(k == 4 ? "outside" : "zone_" + std::string(so::zone_words[k]), ruled ? document::value(a.probabilities[k]) : document::value(nullptr));
  return object{{"zone", so::zone_word(a.zone)},
                {"zone_doubtful", a.doubtful},
                {"strictest_zone", so::zone_word(a.strictest)},
                {"probability", number_or_null(a.probability)},
                {"probabilities", probabilities},
                {"fixture", name},
                {"string_m", number_or_null(g.string_m)},
                {"to_zone_1_m", number_or_null(g.to_zone_1_m)},
                {"to_outer_edge_m", number_or_null(g.to_outer_m)},
                {"to_top_m", number_or_null(g.top_m - (p[2] - room.room().floor_m))},
                {"from_zone_1_m", number_or_null(a.from_zone_1_m)},
                {"ceiling_m", number_or_null(a.ceiling_m)},
                {"tape_m", number_or_null(a.tape_m)},
                {"assumed", a.assumed},
                {"path", path_of(g)},
                {"fixtures", fixtures},
                {"special_location", special_known ? document::value(a.in_special_location) : document::value(nullptr)},
                {"notifiable", special_known && book.find("notifiable", "special_location_alteration").found() ? document::value(a.in_special_location ? "yes" : "no") : document::value(nullptr)},
                {"limits", object{{"height_m", number_or_null(z.height_m)}, {"height_counts_from", z.from_bottom ? "bottom of the basin" : "floor"}, {"zone1_radius_m", number_or_null(z.zone1_radius_m)},
                                  {"zone2_width_m", number_or_null(z.zone2_width_m)}, {"zone3_width_m", number_or_null(z.zone3_width_m)}, {"zone0_height_m", number_or_null(z.zone0_height_m)},
                                  {"socket_distance_m", number_or_null(z.socket_distance_m)}, {"cable_depth_m", number_or_null(z.cable_depth_m)},
                                  {"special_height_m", number_or_null(z.special_height_m)}, {"special_edge_m", number_or_null(z.special_edge_m)}}},
                {"missing", missing},
                {"steps", steps_of(room, g, a.governing)},
                {"sources", sources_of(z.sources)},
                {"text", text},
                {"cautions", texts({"Measure to the nearest part of the equipment, not to its middle.", "Zones are taken from the plan as drawn: a screen that can be taken away, a curtain or a door that is left open limits nothing.",
                                    "Isolate and prove dead before anything is opened."})}};
}
constexpr source zone_source{"IEC 60364-7-701:2006 / BS 7671 section 701", "zones; distance as a taut string round walls and fixed partitions; shortest paths by visibility, derived"};
constexpr model bathroom_zone{{"bathroom_zone",
                               "Which zone of a bathroom a place lies in: for any plan, with the distance measured as a taut string round corners, over or under low partitions; how far the edges "
                               "are, which bath or shower governs, and whether a tape can tell. At an edge the stricter zone counts. Where a string has several low partitions on its way down, the "
                               "lower ones are left out: never longer than the real one.",
                               zone_arguments, zone_source, run_zone, nullptr}};

document::value run_zones(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "bathroom_zones";
  const fields in(who, inputs);
  in.only("points", "room", "tape_m");
  const so::bathroom room(who, room_of(who, in.need("room")), book);
  const double tape = number_if(in, "tape_m");
  const auto& points = list_in(who, "points", in.need("points"));
  array zone, doubtful, strictest, probability, string, from_1, fixture;
  std::array<double, 6> counts{};
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto* row = points[i].as<array>();
    const auto number = [&](std::size_t k) { return row && row->size() == 3 ? (*row)[k].as<double>() : nullptr; };
    if (!number(0) || !number(1) || !number(2)) throw range_error("bathroom_zones: points[" + std::to_string(i) + "] must be [x_m, y_m, height_m]");
    const auto a = room.at({*number(0), *number(1), *number(2)}, tape, "points[" + std::to_string(i) + "]");
    zone.emplace_back(std::string(so::zone_word(a.zone)));
    doubtful.emplace_back(a.doubtful);
    strictest.emplace_back(std::string(so::zone_word(a.strictest)));
    probability.push_back(number_or_null(a.probability));
    string.push_back(number_or_null(a.fixtures[a.governing].string_m));
    from_1.push_back(number_or_null(a.from_zone_1_m));
    fixture.emplace_back(name_of(room.room(), a.governing));
    ++counts[a.zone == so::no_zone_rule ? 5u : static_cast<std::size_t>(a.zone)];
  }
  array text;
  std::string line;
  for (std::size_t k = 0; k < 6; ++k)
    if (counts[k] > 0.0) line += (line.empty() ? "" : ", ") + (k == 5 ? std::string("no rule in book") : k == 4 ? std::string("outside") : "zone " + std::string(so::zone_words[k])) + " " + number_text(counts[k]);
  text.push_back("Points: " + (line.empty() ? std::string("none") : line) + ".");
  for (const auto& m : room.limits().missing) text.push_back("No zone: " + m + ".");
  for (const auto& r : room.remarks()) text.push_back(r);
  return object{{"zone", zone}, {"zone_doubtful", doubtful}, {"strictest_zone", strictest}, {"probability", probability}, {"string_m", string}, {"from_zone_1_m", from_1}, {"fixture", fixture}, {"text", text}};
}
constexpr model bathroom_zones{{"bathroom_zones", "Zones of many places in one room, as columns; each as bathroom_zone gives it.", zones_arguments, zone_source, run_zones, nullptr}};

// ---- check_equipment_in_zone ------------------------------------------------------------------------------------------------

constexpr model_argument equipment_arguments[] = {
    {"equipment", "object",
     "{\"kind\": \"switch\", \"pull_cord\", \"socket\", \"shaver_supply\", \"connection_unit\", \"junction_box\", \"towel_rail\", \"fan\", \"luminaire\", \"water_heater\", \"shower_unit\", \"pump\", \"mirror\" "
     "(lamp or demister), \"heater\", \"floor_heating\"; \"ip\": \"IPX4\", \"IP44\", \"IPX5/IPX7\"; \"system\": \"mains\" (default), \"selv\", \"pelv\"; \"current\": \"ac\" (default) or \"dc\"; \"voltage_v\" of SELV or PELV, above 0 to "
     "120 V; \"residual_current_ma\" of the device before it, mA (0: none); true or false, left out where nobody looked: \"source_outside\" (SELV source outside zones 0 to 2), \"water_jets\", \"direct_spray\", \"fixed\", "
     "\"maker_suits_zone\", \"earthed_grid\", \"supplementary_bonding\", \"disconnection_proved\", \"rcd_on_all_circuits\", \"main_bonding_proved\"}"},
    {"zone", "text or object", "\"0\", \"1\", \"2\", \"3\", \"outside\", or the mapping that bathroom_zone gives (its to_dict()); a doubtful zone is judged as the strictest that is left"},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook: the edition to judge by"}};
int zone_of(std::string_view who, const std::string& word) {
  if (word == so::zone_word(so::no_zone_rule)) return so::no_zone_rule;
  return static_cast<int>(word_of(who, "zone", word, so::zone_words));
}
document::value run_equipment(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "check_equipment_in_zone", place = "check_equipment_in_zone: equipment";
  const fields in(who, inputs);
  in.only("equipment", "zone");
  const fields e(place, object_in(who, "equipment", in.need("equipment")));
  e.only("kind", "ip", "system", "current", "voltage_v", "residual_current_ma", "source_outside", "water_jets", "direct_spray", "fixed", "maker_suits_zone", "earthed_grid", "supplementary_bonding",
         "disconnection_proved", "rcd_on_all_circuits", "main_bonding_proved");
  so::zone_equipment x;
  x.kind = e.text("kind");
  if (e.has("ip")) x.ip = e.text("ip");
  if (e.has("system")) x.system = e.text("system");
  constexpr std::string_view currents[] = {"ac", "dc"};
  if (e.has("current")) x.direct_current = word_of(place, "current", e.text("current"), currents) == 1;
  x.voltage_v = number_if(e, "voltage_v"), x.residual_current_ma = number_if(e, "residual_current_ma");
  x.water_jets = flag(place, e, "water_jets");
  x.source_outside = known_of(place, e, "source_outside"), x.spray = known_of(place, e, "direct_spray"), x.fixed = known_of(place, e, "fixed"), x.maker_suits = known_of(place, e, "maker_suits_zone");
  x.grid = known_of(place, e, "earthed_grid"), x.bonding = known_of(place, e, "supplementary_bonding"), x.disconnection = known_of(place, e, "disconnection_proved");
  x.rcd_on_all = known_of(place, e, "rcd_on_all_circuits"), x.main_bonding = known_of(place, e, "main_bonding_proved");
  so::equipment_place p;
  if (const auto& v = in.need("zone"); v.as<std::string>()) {
    p.zone = p.strictest = zone_of(who, *v.as<std::string>());
  } else {
    constexpr std::string_view where = "check_equipment_in_zone: zone";
    const fields z(where, object_in(who, "zone", v));
    p.zone = zone_of(who, z.text("zone"));
    p.doubtful = flag(where, z, "zone_doubtful");
    p.strictest = z.has("strictest_zone") ? zone_of(who, z.text("strictest_zone")) : p.zone;
    p.from_zone_1_m = number_if(z, "from_zone_1_m");
    if (z.has("tape_m")) p.tape_m = z.number("tape_m");
    // shut out: no string, so no distance either; that is farther than any
    if (z.has("zone") && !z.has("from_zone_1_m") && z.has("fixtures") && p.zone == so::outside_zones) p.from_zone_1_m = std::numeric_limits<double>::infinity();
  }
  const auto r = so::check_equipment_in_zone(x, p, book);
  array findings, text;
  const std::string judged = r.judged_as == so::outside_zones ? "outside the zones" : r.judged_as == so::no_zone_rule ? "a place without a rule" : "zone " + std::string(so::zone_word(r.judged_as));
  text.push_back(r.outcome == outcome::pass ? "Meets the rules that were looked at, for " + judged + "; they are no proof of its state." :
                 r.outcome == outcome::fail ? "Does not meet the rules for " + judged + "." : "Undecided for " + judged + ": " + std::string(reason_text(r.reason)) + ".");
  for (const auto& f : r.findings) {
    findings.push_back(object{{"item", f.item}, {"outcome", outcome_text(f.outcome)}, {"reason", reason_text(f.reason)}, {"text", f.text}, {"value", number_or_null(f.value)},
                              {"limit", number_or_null(f.limit)}, {"unit", f.unit}, {"source", source_of(f.from)}});
    if (f.outcome != outcome::pass || f.item == "zone") text.push_back(f.item + ": " + f.text + ".");
  }
  return object{{"outcome", outcome_text(r.outcome)},
                {"reason", reason_text(r.reason)},
                {"judged_as", so::zone_word(r.judged_as)},
                {"findings", findings},
                {"limits", object{{"ip_second_numeral", number_or_null(r.ip_second_numeral)}, {"selv_ac_v", number_or_null(r.selv_ac_v)}, {"selv_dc_v", number_or_null(r.selv_dc_v)},
                                  {"residual_current_ma", number_or_null(r.residual_current_ma)}, {"socket_distance_m", number_or_null(r.socket_distance_m)}}},
                {"text", text},
                {"cautions", texts({"Isolate, lock off and prove dead, the tester before and after, before a cover comes off.", "An IP code holds for the equipment as its maker mounts it: seals, cable entries and the wall behind count.",
                                    "Equipment in reach of wet hands: prove the protective conductor and the residual current device by measurement."})}};
}
constexpr model check_equipment_in_zone{{"check_equipment_in_zone",
                                         "Equipment in a zone of a bathroom against an edition's rules: its kind, IP code, SELV voltage and source, distance of socket-outlets, earthed grid of floor heating, residual current device, "
                                         "supplementary bonding. One finding a rule; what nobody looked at is undecided, an unknown IP code needs the maker's figure.",
                                         equipment_arguments, {"IEC 60364-7-701:2006 / BS 7671 section 701", "701.411, 701.415, 701.512, 701.55, 701.753", "memory"}, run_equipment, nullptr}};

// ---- cable_zones ------------------------------------------------------------------------------------------------------------

constexpr std::string_view wall_text =
    "{\"width_mm\", \"height_mm\", 50 mm or more; \"thickness_mm\" (left out: not known), \"left\" and \"right\" corner: \"internal\" (default), \"external\", \"none\"; \"ceiling\" (true), \"far_side_seen\": the "
    "accessories of the other face are all listed (false)}; x to the right, y upwards from the bottom left corner";
constexpr std::string_view accessories_text =
    "one object each: \"name\", \"x_mm\", \"y_mm\" of its centre, \"width_mm\", \"height_mm\", \"side\": \"near\" (default) or \"far\" (on the other face; x as it comes through on this one)";
constexpr std::string_view margin_text = "how much wider than the accessory its strips are on each side, mm, 0 to 500; 0. The rule has no number for it: it is your choice";
constexpr model_argument cable_arguments[] = {{"wall", "object", wall_text},
                                              {"accessories", "objects", accessories_text},
                                              {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook (\"bs7671:2018+a2\", \"din18015-3\" ...)"},
                                              {"margin_mm", "number", margin_text, true}};
so::cable_wall wall_of(std::string_view who, const document::value& v) {
  const std::string place = std::string(who) + ": wall";
  const fields in(place, object_in(who, "wall", v));
  in.only("width_mm", "height_mm", "thickness_mm", "left", "right", "ceiling", "far_side_seen");
  so::cable_wall w;
  w.width_mm = in.number("width_mm"), w.height_mm = in.number("height_mm"), w.thickness_mm = number_if(in, "thickness_mm");
  if (in.has("left")) w.left = in.text("left");
  if (in.has("right")) w.right = in.text("right");
  w.ceiling = flag(place, in, "ceiling", true), w.far_side_seen = flag(place, in, "far_side_seen");
  return w;
}
std::vector<so::wall_accessory> accessories_of(std::string_view who, const document::value& v) {
  std::vector<so::wall_accessory> all;
  constexpr std::string_view sides[] = {"near", "far"};
  each_object(who, "accessories", v, [&](const fields& f, const std::string& path) {
    f.only("name", "x_mm", "y_mm", "width_mm", "height_mm", "side");
    so::wall_accessory a{f.has("name") ? f.text("name") : std::string(), f.number("x_mm"), f.number("y_mm"), f.number("width_mm"), f.number("height_mm"), false};
    if (f.has("side")) a.far = word_of(who, path + ".side", f.text("side"), sides) == 1;
    all.push_back(std::move(a));
  });
  return all;
}
object strip_of(const so::cable_strip& s) {
  return object{{"x_mm", s.x_mm}, {"y_mm", s.y_mm}, {"width_mm", s.width_mm}, {"height_mm", s.height_mm}, {"rule", s.rule}, {"accessory", s.accessory}, {"side", s.far ? "far" : "near"}, {"source", source_of(s.from)}};
}
array strips_of(const so::cable_zone_result& r) {
  array strips;
  for (const auto& s : r.strips) strips.push_back(strip_of(s));
  return strips;
}
document::value run_cable_zones(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "cable_zones";
  const fields in(who, inputs);
  in.only("wall", "accessories", "margin_mm");
  const double margin = in.has("margin_mm") ? in.number("margin_mm") : 0.0;
  const auto wall = wall_of(who, in.need("wall"));
  const auto r = so::cable_zones(who, wall, accessories_of(who, in.need("accessories")), book, margin);
  array text, missing;
  text.push_back(std::to_string(r.strips.size()) + " strips" + (is_nan(r.depth_mm) ? "." : ", for cables less than " + number_text(r.depth_mm) + " mm deep."));
  text.push_back("The strip of an accessory is as wide as the accessory" + (margin > 0.0 ? " and " + number_text(margin) + " mm on each side" : std::string()) + ": a choice, the rule has no number for it.");
  if (!is_nan(r.residual_current_ma)) text.push_back("A cable less deep than that, without earthed metal about it, needs a residual current device of " + number_text(r.residual_current_ma) + " mA at most.");
  if (r.far_unknown) text.push_back(is_nan(wall.thickness_mm) ? "The wall's thickness is not known: up to " + number_text(r.thin_wall_mm) + " mm the zones of the other face lie in this one too." :
                                                                 "The wall is thin: look at its other face, whose accessories have zones here too.");
  if (wall.left == "external" || wall.right == "external") text.push_back("External corners: no strip unless the rulebook names one; an edition that speaks of any angle between two walls may mean them too.");
  text.push_back("Strips say where cables should be, not where they are; openings are not cut out of them.");
  for (const auto& m : r.missing) missing.push_back(m), text.push_back("Missing: " + m + ".");
  return object{{"strips", strips_of(r)}, {"depth_mm", number_or_null(r.depth_mm)}, {"residual_current_ma", number_or_null(r.residual_current_ma)}, {"thin_wall_mm", number_or_null(r.thin_wall_mm)},
                {"margin_mm", margin}, {"far_side_counts", r.far_counts}, {"far_side_unknown", r.far_unknown}, {"missing", missing}, {"text", text}, {"sources", sources_of(r.sources)}};
}
constexpr source cable_source{"BS 7671, 522.6.202", "prescribed zones of cables in walls, read in quotations"};
constexpr model cable_zones{{"cable_zones", "Strips of a wall in which a rulebook lets cables run unseen: from its top, its corners and its accessories, on the far side of a thin wall too, as rectangles.", cable_arguments, cable_source,
                             run_cable_zones, nullptr}};

// ---- check_hole_outside_cable_zones -----------------------------------------------------------------------------------------

constexpr model_argument hole_arguments[] = {
    {"hole", "object", "{\"x_mm\", \"y_mm\" of its centre, \"diameter_mm\" 0.1 to 500, \"depth_mm\" 0.1 to 2000, \"tolerance_mm\" of the centre and \"depth_tolerance_mm\", worst cases (0)}"},
    {"wall", "object", wall_text},
    {"accessories", "objects", accessories_text},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook"},
    {"detector", "object", "{\"reading\": \"not_used\" (default), \"nothing_found\" or \"found\", \"proved_dead\": the circuits were isolated and proved dead (false)}", true},
    {"margin_mm", "number", margin_text, true},
    {"behind", "object", "what is known, true or false: \"pipes\", \"membrane\" (waterproof layer under tiles), \"heated\" (wall heating), \"old_board\" (may hold asbestos), \"partition\" (suspended, hollow or demountable), \"metal\"; left out: not known", true}};
document::value run_hole(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "check_hole_outside_cable_zones";
  const fields in(who, inputs);
  in.only("hole", "wall", "accessories", "detector", "margin_mm", "behind");
  constexpr std::string_view hole_where = "check_hole_outside_cable_zones: hole";
  const fields h(hole_where, object_in(who, "hole", in.need("hole")));
  h.only("x_mm", "y_mm", "diameter_mm", "depth_mm", "tolerance_mm", "depth_tolerance_mm");
  so::wall_hole hole{h.number("x_mm"), h.number("y_mm"), h.number("diameter_mm"), h.has("tolerance_mm") ? h.number("tolerance_mm") : 0.0, h.number("depth_mm"), h.has("depth_tolerance_mm") ? h.number("depth_tolerance_mm") : 0.0};
  so::detector_use detector;
  if (in.has("detector")) {
    constexpr std::string_view where = "check_hole_outside_cable_zones: detector";
    const fields d(where, object_in(who, "detector", in.need("detector")));
    d.only("reading", "proved_dead");
    if (d.has("reading")) detector.reading = static_cast<so::detector_reading>(word_of(where, "reading", d.text("reading"), so::detector_readings));
    detector.proved_dead = flag(where, d, "proved_dead");
  }
  const double margin = in.has("margin_mm") ? in.number("margin_mm") : 0.0;
  const auto r = so::check_hole_outside_cable_zones(hole, wall_of(who, in.need("wall")), accessories_of(who, in.need("accessories")), book, detector, margin);
  array text, findings, inside, cautions;
  for (const auto& f : r.findings) findings.push_back(f);
  for (const std::size_t i : r.inside) inside.push_back(strip_of(r.zones.strips[i]));
  text.push_back(r.rule == outcome::fail ? "The hole reaches into " + std::to_string(r.inside.size()) + (r.inside.size() == 1 ? " cable zone." : " cable zones.")
                 : r.rule == outcome::pass
                     ? "The hole keeps the rule" + (is_finite(r.clearance_mm) ? ": " + number_text(std::round(10.0 * r.clearance_mm) / 10.0) + " mm from the nearest cable zone, worst case." : std::string(": the wall has no cable zone."))
                     : "Whether the hole keeps the rule is undecided.");
  for (const auto& f : r.findings) text.push_back(std::string(1, static_cast<char>(f[0] >= 'a' && f[0] <= 'z' ? f[0] - 'a' + 'A' : f[0])) + f.substr(1) + ".");
  if (r.outcome == outcome::pass) text.push_back("The rule is kept and the detector found nothing on dead circuits: drill slowly, and stop at whatever feels different. Neither proves that nothing is there.");
  if (r.off_wall) text.push_back("The hole, with its tolerance, reaches beyond the edge of the wall.");
  struct concern {
    std::string_view name, if_known, if_unknown;
  };
  static constexpr concern concerns[] = {
      {"pipes", "Pipes are known to be in this wall: find them, and know the stop valve.", "Pipes of water or gas may run here: look at what they serve, and know the stop valve."},
      {"membrane", "A waterproof layer lies behind the tiles: seal every hole through it.", "In a wet room a waterproof layer may lie behind the tiles: seal every hole through it."},
      {"heated", "The wall is heated: find the elements warm, with a thermometer or camera, then isolate and prove dead.", "The wall may be heated: look for a controller, and find the elements before drilling."},
      {"old_board", "The board may hold asbestos: do not drill; have it sampled first.", "Boards and coatings of before 2000 may hold asbestos: do not drill what may be old until it is known."},
      {"partition", "A hollow or demountable partition: cables in it hang free and may lie anywhere.", "If the wall is hollow or demountable, cables in it hang free and may lie anywhere."},
      {"metal", "Metal studs or parts: a drill can press a cable onto them, and a detector tells less.", "Metal studs, foil and wet walls hide cables from a detector."}};
  const bool told = in.has("behind");
  constexpr std::string_view behind_where = "check_hole_outside_cable_zones: behind";
  if (told) fields(behind_where, object_in(who, "behind", in.need("behind"))).only("pipes", "membrane", "heated", "old_board", "partition", "metal");
  cautions.emplace_back("Isolate and prove dead what may be in the wall before drilling.");
  for (const auto& c : concerns) {
    auto k = so::known::unknown;
    if (told) k = known_of(behind_where, fields(behind_where, object_in(who, "behind", in.need("behind"))), c.name);
    if (k != so::known::no) cautions.emplace_back(std::string(k == so::known::yes ? c.if_known : c.if_unknown));
  }
  return object{{"outcome", outcome_text(r.outcome)},
                {"reason", reason_text(r.reason)},
                {"rule_outcome", outcome_text(r.rule)},
                {"clearance_mm", number_or_null(r.clearance_mm)},
                {"nearest", r.nearest < r.zones.strips.size() ? document::value(strip_of(r.zones.strips[r.nearest])) : document::value(nullptr)},
                {"inside", inside},
                {"findings", findings},
                {"detector", object{{"reading", so::detector_readings[static_cast<std::size_t>(detector.reading)]}, {"proved_dead", detector.proved_dead}}},
                {"depth_mm", number_or_null(r.zones.depth_mm)},
                {"strips", strips_of(r.zones)},
                {"text", text},
                {"sources", sources_of(r.zones.sources)},
                {"cautions", cautions}};
}
constexpr model check_hole{{"check_hole_outside_cable_zones",
                            "A hole with its tolerance and depth against the cable zones of a wall. It passes the rule only: wiring that somebody else left need not follow zones, so the finding stays \"not proved clear: isolate and "
                            "detect\" until a detector was used on circuits proved dead.",
                            hole_arguments, cable_source, run_hole, nullptr}};
}  // namespace
void zones(std::vector<entry>& all) { append(all, "setting_out", list<bathroom_zone, bathroom_zones, check_equipment_in_zone, cable_zones, check_hole>{}); }
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject electrical: tests of rings and spurs, and records of tests held against themselves.
#include <makegood/electrical/loads.hpp>
#include <makegood/electrical/ring.hpp>
#include <makegood/electrical/test_record.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace el = makegood::electrical;
using document::array;
using document::number_or_null;
using document::object;

/// The fields of one object somewhere inside the arguments; messages name its path.
class inner_fields {
 public:
  inner_fields(std::string_view model, std::string path, const document::value& v) : model_(model), path_(std::move(path)), from_(v.as<object>()) {
    if (!from_) throw range_error(std::string(model_) + ": " + path_ + " must be an object, not " + std::string(document::type_name(v)));
  }
  template <std::size_t N>
  void only(const std::string_view (&known)[N]) const {
    for (const auto& f : from_->fields)
      if (std::find(std::begin(known), std::end(known), f.first) == std::end(known)) {
        const std::string near = document::nearest(f.first, known);
        throw range_error(std::string(model_) + ": " + path_ + " has no field \"" + f.first + "\"" + (near.empty() ? "" : "; did you mean \"" + near +
            "\"?"));
      }
  }
  makegood::reading reading(std::string_view name) const {
    const auto* v = from_->find(name);
    if (!v) return {};
    try {
      return reading_from(*v);
    } catch (const range_error& e) {
      throw range_error(std::string(model_) + ": " + path_ + "." + std::string(name) + ": " + e.what());
    }
  }
  double number(std::string_view name, double otherwise = no_number) const {
    const auto* v = from_->find(name);
    if (!v || v->is_null()) return otherwise;
    const auto* x = v->as<double>();
    if (!x || !is_finite(*x)) throw range_error(std::string(model_) + ": " + path_ + "." + std::string(name) + " must be a number");
    return *x;
  }
  std::string text(std::string_view name) const {
    const auto* v = from_->find(name);
    if (!v || v->is_null()) return {};
    const auto* t = v->as<std::string>();
    if (!t) throw range_error(std::string(model_) + ": " + path_ + "." + std::string(name) + " must be a text, not " +
        std::string(document::type_name(*v)));
    return *t;
  }
  /// One of some words; the first stands for "not stated".
  template <class E, std::size_t N>
  E word(std::string_view name, const std::string_view (&words)[N]) const {
    const std::string t = text(name);
    if (t.empty()) return E{};
    std::string list;
    for (std::size_t i = 1; i < N; ++i) {
      if (t == words[i]) return static_cast<E>(i);
      list += (list.empty() ? "\"" : ", \"") + std::string(words[i]) + "\"";
    }
    throw range_error(std::string(model_) + ": " + path_ + "." + std::string(name) + " = \"" + t + "\" is not one of " + list);
  }

 private:
  std::string_view model_;
  std::string path_;
  const object* from_;
};
const array& list_in(std::string_view model, std::string_view name, const document::value& v) {
  const auto* a = v.as<array>();
  if (!a) throw range_error(std::string(model) + ": \"" + std::string(name) + "\" must be a list of objects, not " +
      std::string(document::type_name(v)));
  return *a;
}
constexpr std::string_view polarities[] = {"", "right", "reversed"};
array texts(const std::vector<std::string>& list) {
  array a;
  for (const auto& t : list) a.emplace_back(t);
  return a;
}

// ---- ring_tests ------------------------------------------------------------------------------------------------------------

constexpr source ring_network{"Ohm's law and Kirchhoff's laws for two chains with cross links; Bayes' rule",
    "forward models held to a nodal analysis", "derived"};
constexpr model_argument ring_arguments[] = {
    {"line_end_to_end_ohm", "reading", "line conductor, its two ends at the board; {\"above\": x} where the display is over range", true},
    {"neutral_end_to_end_ohm", "reading", "neutral conductor, end to end", true},
    {"cpc_end_to_end_ohm", "reading", "protective conductor, end to end", true},
    {"points", "objects",
     "at each outlet: \"name\", \"line_neutral_ohm\" and \"line_cpc_ohm\" (read with the ends linked crosswise at the board), \"position_ratio\" (0 to 1 along the ring, "
     "if known), \"polarity\" (\"right\" or \"reversed\"); all may be left out",
     true},
    {"line_mohm_per_m", "number", "tabulated resistance of the line at 20 °C; 7.41 (2.5 mm² of copper) is assumed", true},
    {"cpc_mohm_per_m", "number", "tabulated resistance of the protective conductor at 20 °C; 12.1 (1.5 mm²) is assumed", true},
    {"conductor_temperature_c", "number", "temperature of the conductors; 20 ± 5 is assumed", true},
    {"expected_length_m", "reading", "length of the ring by a plan; a bare number is taken as ± 25 %", true}};
double optional_number(const fields& in, std::string_view model, std::string_view name) {
  if (!in.has(name)) return no_number;
  const double x = in.number(name);
  if (!is_finite(x)) throw range_error(std::string(model) + ": " + std::string(name) + " must be a finite number");
  return x;
}
el::ring_readings ring_from(const object& inputs) {
  constexpr std::string_view who = "ring_tests";
  const fields in(who, inputs);
  in.only("line_end_to_end_ohm", "neutral_end_to_end_ohm", "cpc_end_to_end_ohm", "points", "line_mohm_per_m", "cpc_mohm_per_m",
      "conductor_temperature_c", "expected_length_m");
  const auto reading_of = [&](std::string_view name) { return in.has(name) ? reading_from(in.need(name)) : makegood::reading(); };
  el::ring_readings r;
  r.line_ohm = reading_of("line_end_to_end_ohm");
  r.neutral_ohm = reading_of("neutral_end_to_end_ohm");
  r.cpc_ohm = reading_of("cpc_end_to_end_ohm");
  r.line_mohm_per_m = optional_number(in, who, "line_mohm_per_m");
  r.cpc_mohm_per_m = optional_number(in, who, "cpc_mohm_per_m");
  r.conductor_temperature_c = optional_number(in, who, "conductor_temperature_c");
  r.expected_length_m = reading_of("expected_length_m");
  if (!in.has("points")) return r;
  const auto& list_ = list_in(who, "points", in.need("points"));
  if (list_.size() > el::most_ring_points) throw range_error("ring_tests: points: " + std::to_string(list_.size()) + " of them; at most 60");
  for (std::size_t i = 0; i < list_.size(); ++i) {
    const inner_fields p(who, "points[" + std::to_string(i) + "]", list_[i]);
    p.only({"name", "position_ratio", "line_neutral_ohm", "line_cpc_ohm", "polarity"});
    r.points.push_back({p.text("name"), p.number("position_ratio"), p.reading("line_neutral_ohm"), p.reading("line_cpc_ohm"),
        p.word<el::polarity>("polarity", polarities)});
  }
  return r;
}
document::value to_document(const el::ring_residual& r) {
  return object{{"read_ohm", number_or_null(r.read)}, {"over_range", r.over_range}, {"predicted_ohm", number_or_null(r.predicted)},
                {"standard_uncertainty_ohm", number_or_null(r.standard_uncertainty)}, {"distance", number_or_null(r.distance)}};
}
array to_document(const std::vector<el::ring_hypothesis>& list_, bool kinds) {
  array a;
  for (const auto& h : list_) {
    array points;
    for (const auto i : h.points) points.emplace_back(i + 1);
    object o{{"kind", el::ring_kind_rows[static_cast<std::size_t>(h.kind)].key}};
    if (!kinds) o.set("id", h.id);
    o.set("text", h.text);
    o.set("probability", h.probability);
    o.set("prior", h.prior);
    o.set("points", points);
    if (kinds) o.set("act", el::ring_kind_rows[static_cast<std::size_t>(h.kind)].act);
    a.emplace_back(std::move(o));
  }
  return a;
}
document::value run_ring(const object& inputs, const rulebook&) {
  const auto r = el::ring_tests(ring_from(inputs));
  array points, next;
  for (const auto& p : r.points)
    points.push_back(object{{"name", p.name}, {"text", p.text}, {"line_neutral", to_document(p.line_neutral)}, {"line_cpc", to_document(p.line_cpc)},
                            {"spur_probability", p.spur_probability}, {"spur_length_m", number_or_null(p.spur_length_m)},
                            {"spur_length_standard_uncertainty_m", number_or_null(p.spur_length_standard_uncertainty_m)},
                            {"in_likelihood", p.in_likelihood}});
  for (const auto& n : r.next) next.push_back(object{{"reading", n.reading}, {"text", n.text}, {"information_bits", n.information_bits}});
  return object{{"leading", el::ring_kind_rows[static_cast<std::size_t>(r.kinds[0].kind)].key},
                {"probability", r.kinds[0].probability},
                {"text", r.text},
                {"kinds", to_document(r.kinds, true)},
                {"hypotheses", to_document(r.hypotheses, false)},
                {"robust", r.robust},
                {"conflict", r.conflict},
                {"length_m", number_or_null(r.length_m)},
                {"length_standard_uncertainty_m", number_or_null(r.length_standard_uncertainty_m)},
                {"length_low_m", number_or_null(r.length_low_m)},
                {"length_high_m", number_or_null(r.length_high_m)},
                {"highest_line_cpc_ohm", number_or_null(r.highest_line_cpc_ohm)},
                {"points", points},
                {"next", next},
                {"cautions", texts(r.cautions)},
                {"assumptions", texts(r.assumptions)}};
}
constexpr model ring_tests{{"ring_tests",
                            "What is wrong with a ring circuit, by its readings end to end and at outlets: a sound ring, a break, a bridge, spurs, a bad joint, conductors changed over, "
                            "another cable; with probabilities, its length, each outlet, and the next reading.",
                            ring_arguments, ring_network, run_ring, nullptr}};

// ---- test_record_consistency ---------------------------------------------------------------------------------------------------

constexpr source record_relations_source{"Ohm's law and Kirchhoff's laws between the readings of one board; S. Holm, Scandinavian Journal of Statistics 6 (1979) 65", "step-down adjustment", "memory"};
constexpr std::string_view circuit_names[] = {"name", "kind", "line_mohm_per_m", "cpc_mohm_per_m", "conductor_temperature_c", "length_m",
    "line_plus_cpc_ohm", "cpc_ohm",
                                              "line_end_to_end_ohm", "neutral_end_to_end_ohm", "cpc_end_to_end_ohm", "insulation_line_cpc_mohm", "insulation_line_neutral_mohm",
                                              "insulation_neutral_cpc_mohm", "polarity", "loop_ohm", "loop_method", "fault_current_a", "rcd", "rcd_trip_1x_ms", "rcd_trip_5x_ms",
                                              "rcd_trip_half_ms", "rcd_ramp_ma", "rcd_residual_ma"};
constexpr std::string_view board_names[] = {"external_loop_ohm", "insulation_line_cpc_mohm", "short_circuit_current_a", "earth_fault_current_a",
    "nominal_voltage_v", "earthing"};
constexpr std::string_view kinds[] = {"", "ring", "radial"}, methods[] = {"", "high_current", "no_trip"};
constexpr std::string_view rcds[] = {"", "none", "general", "delayed"}, earthings[] = {"", "TN-C-S", "TN-S", "TT"};
constexpr model_argument record_arguments[] = {
    {"circuits", "objects",
     "one object a circuit, every field may be left out: \"name\", \"kind\" (\"ring\", \"radial\"), \"line_mohm_per_m\", \"cpc_mohm_per_m\" (tabulated, 20 °C), "
     "\"conductor_temperature_c\", \"length_m\", \"line_plus_cpc_ohm\" (R1+R2), \"cpc_ohm\" (R2), \"line_end_to_end_ohm\", \"neutral_end_to_end_ohm\", \"cpc_end_to_end_ohm\", "
     "\"insulation_line_cpc_mohm\", \"insulation_line_neutral_mohm\", \"insulation_neutral_cpc_mohm\", \"polarity\" (\"right\", \"reversed\"), \"loop_ohm\" (Zs), "
     "\"loop_method\" (\"high_current\", \"no_trip\"), \"fault_current_a\", \"rcd\" (\"none\", \"general\", \"delayed\"), \"rcd_trip_1x_ms\", \"rcd_trip_5x_ms\", "
     "\"rcd_trip_half_ms\" (ordinarily {\"state\": \"no_trip\"}), \"rcd_ramp_ma\" (current at which it tripped while it rose), \"rcd_residual_ma\" (rated)"},
    {"board", "object",
     "\"external_loop_ohm\" (Ze), \"insulation_line_cpc_mohm\" (all circuits together), \"short_circuit_current_a\", \"earth_fault_current_a\", \"nominal_voltage_v\" (230), "
     "\"earthing\" (\"TN-C-S\", \"TN-S\", \"TT\")",
     true},
    {"level", "number", "chance that an honest record is contradicted at all; 0.05", true}};
document::value circuit_of(const std::optional<std::size_t>& i) { return i ? document::value(*i + 1) : document::value(nullptr); }
document::value run_record(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "test_record_consistency";
  const fields in(who, inputs);
  in.only("circuits", "board", "level");
  std::vector<el::circuit_record> circuits;
  const auto& list_ = list_in(who, "circuits", in.need("circuits"));
  if (list_.size() > el::most_circuits) throw range_error("test_record_consistency: circuits: " + std::to_string(list_.size()) +
      " of them; at most 200");
  for (std::size_t i = 0; i < list_.size(); ++i) {
    const inner_fields f(who, "circuits[" + std::to_string(i) + "]", list_[i]);
    f.only(circuit_names);
    el::circuit_record c;
    c.name = f.text("name");
    c.kind = f.word<el::circuit_kind>("kind", kinds);
    c.line_mohm_per_m = f.number("line_mohm_per_m");
    c.cpc_mohm_per_m = f.number("cpc_mohm_per_m");
    c.conductor_temperature_c = f.number("conductor_temperature_c");
    c.length_m = f.reading("length_m");
    c.line_plus_cpc_ohm = f.reading("line_plus_cpc_ohm");
    c.cpc_ohm = f.reading("cpc_ohm");
    c.line_end_to_end_ohm = f.reading("line_end_to_end_ohm");
    c.neutral_end_to_end_ohm = f.reading("neutral_end_to_end_ohm");
    c.cpc_end_to_end_ohm = f.reading("cpc_end_to_end_ohm");
    c.insulation_line_cpc_mohm = f.reading("insulation_line_cpc_mohm");
    c.insulation_line_neutral_mohm = f.reading("insulation_line_neutral_mohm");
    c.insulation_neutral_cpc_mohm = f.reading("insulation_neutral_cpc_mohm");
    c.polarity = f.word<el::polarity>("polarity", polarities);
    c.loop_ohm = f.reading("loop_ohm");
    c.loop_method = f.word<el::loop_method>("loop_method", methods);
    c.fault_current_a = f.reading("fault_current_a");
    c.rcd = f.word<el::rcd_kind>("rcd", rcds);
    c.rcd_trip_1x_ms = f.reading("rcd_trip_1x_ms");
    c.rcd_trip_5x_ms = f.reading("rcd_trip_5x_ms");
    c.rcd_trip_half_ms = f.reading("rcd_trip_half_ms");
    c.rcd_ramp_ma = f.reading("rcd_ramp_ma");
    c.rcd_residual_ma = f.number("rcd_residual_ma");
    circuits.push_back(std::move(c));
  }
  el::board_record board;
  if (in.has("board")) {
    const inner_fields f(who, "board", in.need("board"));
    f.only(board_names);
    board.external_loop_ohm = f.reading("external_loop_ohm");
    board.insulation_line_cpc_mohm = f.reading("insulation_line_cpc_mohm");
    board.short_circuit_current_a = f.reading("short_circuit_current_a");
    board.earth_fault_current_a = f.reading("earth_fault_current_a");
    board.nominal_voltage_v = f.number("nominal_voltage_v", 230.0);
    board.earthing = f.word<el::earthing>("earthing", earthings);
  }
  const auto r = el::test_record_consistency(circuits, board, in.has("level") ? in.number("level") : 0.05);
  array relations, missing;
  constexpr std::string_view outcomes[] = {"agrees", "query", "contradiction", "improbable_pattern"};
  for (const auto& one : r.relations) {
    const auto& row = el::record_relations[static_cast<std::size_t>(one.relation)];
    relations.push_back(object{{"relation", row.key}, {"circuit", circuit_of(one.circuit)}, {"column", one.column},
        {"outcome", outcomes[static_cast<std::size_t>(one.is)]},
                               {"text", one.text}, {"above_means", row.above}, {"below_means", row.below},
                               {"residual", number_or_null(one.residual)}, {"unit", row.unit},
                               {"standard_uncertainty", number_or_null(one.standard_uncertainty)},
                               {"z", number_or_null(one.z)}, {"p_value", one.p_value}, {"holm_p_value", one.holm_p_value},
                               {"log10_ratio", number_or_null(one.log10_ratio)},
                               {"contradicts", row.side == el::side::above ? "above" : row.side == el::side::below ? "below" : "both"},
                               {"source", object{{"title", row.from.title}, {"clause", row.from.clause}, {"grade", row.from.grade}}}});
  }
  for (const auto& m : r.missing) missing.push_back(object{{"circuit", circuit_of(m.circuit)}, {"item", m.item}, {"text", m.text}});
  return object{{"text", r.text}, {"compared", r.compared}, {"contradictions", r.contradictions}, {"patterns", r.patterns}, {"queries", r.queries},
      {"relations", relations},
                {"missing", missing}, {"not_compared", texts(r.not_compared)},
                {"insulation_parallel_mohm", number_or_null(r.insulation_parallel_mohm)}, {"cautions", texts(r.cautions)}};
}
constexpr model test_record_consistency{{"test_record_consistency",
                                         "The readings of a board's circuits held against each other: residual, z and p-value of each relation, decided for all of them together (Holm), "
                                         "improbable patterns, and what is missing.",
                                         record_arguments, record_relations_source, run_record, nullptr}};

// ---- loads along a circuit, a ring and its spurs ---------------------------------------------------------------------------------

constexpr std::string_view point_names[] = {"name", "distance_m", "current_a", "spur_length_m"};
constexpr std::string_view ring_point_names[] = {"name", "distance_m", "current_a", "spur_length_m", "outlets", "fuse_a", "spur_capacity_a"};
template <std::size_t N>
std::vector<el::point_load> loads_from(std::string_view who, const fields& in, const std::string_view (&known)[N]) {
  std::vector<el::point_load> loads;
  if (!in.has("loads")) return loads;
  const auto& list_ = list_in(who, "loads", in.need("loads"));
  for (std::size_t i = 0; i < list_.size(); ++i) {
    const inner_fields f(who, "loads[" + std::to_string(i) + "]", list_[i]);
    f.only(known);
    el::point_load l;
    l.name = f.text("name");
    l.distance_m = f.number("distance_m");
    l.current_a = f.number("current_a");
    if (is_nan(l.distance_m) || is_nan(l.current_a)) throw range_error(std::string(who) + ": loads[" + std::to_string(i) + "]: distance_m and current_a are needed");
    l.spur_length_m = f.number("spur_length_m", 0.0);
    if constexpr (N > std::size(point_names)) {
      l.outlets = f.number("outlets", 1.0);
      l.fuse_a = f.number("fuse_a", 0.0);
      l.spur_capacity_a = f.number("spur_capacity_a");
    }
    loads.push_back(std::move(l));
  }
  return loads;
}
double finite_or(const fields& in, std::string_view model, std::string_view name, double otherwise) {
  const double x = optional_number(in, model, name);
  return is_nan(x) ? otherwise : x;
}
object loads_to_document(const el::loads_result& r) {
  array sections, drops;
  for (const auto& s : r.sections) sections.push_back(object{{"from_m", s.from_m}, {"to_m", s.to_m}, {"from_a", s.from_a}, {"to_a", s.to_a}});
  for (const auto& d : r.drops)
    drops.push_back(object{{"name", d.name}, {"distance_m", d.distance_m}, {"drop_v", number_or_null(d.drop_v)}, {"with_spur_v", number_or_null(d.with_spur_v)}});
  return object{{"total_a", r.total_a}, {"near_leg_a", r.near_leg_a}, {"far_leg_a", number_or_null(r.far_leg_a)}, {"highest_leg_a", r.highest_leg_a},
                {"largest_drop_v", number_or_null(r.largest_drop_v)}, {"largest_at", r.largest_at}, {"lowest_point_m", number_or_null(r.lowest_point_m)},
                {"drops", drops}, {"sections", sections}};
}
constexpr source superposition{"Ohm's law and Kirchhoff's laws, superposition of loads", "held to a nodal analysis", "derived"};
constexpr model_argument point_loads_arguments[] = {
    {"kind", "text", "\"radial\" or \"ring\""},
    {"resistance_mohm_per_m", "number", "resistance of line and neutral together, of one metre of cable at working temperature, mΩ/m; or the tabulated drop, mV/(A·m)"},
    {"loads", "objects",
     "one object a load: \"distance_m\" from the board (of a ring along the near leg), \"current_a\"; \"name\" and \"spur_length_m\" (same cable) may be left out", true},
    {"ring_length_m", "number", "length of a ring, all round, m", true},
    {"spread_current_a", "number", "current of further loads, spread evenly along the ring, or along the radial up to its last load, A; 0", true}};
document::value run_point_loads(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "point_loads";
  const fields in(who, inputs);
  in.only("kind", "resistance_mohm_per_m", "loads", "ring_length_m", "spread_current_a");
  const auto& kind = in.text("kind");
  if (kind != "radial" && kind != "ring") throw range_error("point_loads: kind = \"" + kind + "\" is not one of \"radial\", \"ring\"");
  el::circuit_loads c;
  c.ring = kind == "ring";
  if (!c.ring && in.has("ring_length_m")) throw range_error("point_loads: ring_length_m belongs to a ring");
  c.length_m = optional_number(in, who, "ring_length_m");
  c.resistance_mohm_per_m = in.number("resistance_mohm_per_m");
  c.spread_current_a = finite_or(in, who, "spread_current_a", 0.0);
  c.loads = loads_from(who, in, point_names);
  return loads_to_document(el::point_loads(c));
}
constexpr model point_loads{{"point_loads", "Currents in the sections of a radial or a ring with several loads, the voltage drop at each load, and the largest.", point_loads_arguments,
                             superposition, run_point_loads, nullptr}};

constexpr model_argument spur_load_arguments[] = {
    {"ring_length_m", "number", "length of the ring, all round, m"},
    {"loads", "objects",
     "one object a load: \"distance_m\" from the board along the near leg, \"current_a\"; with \"spur_length_m\" it hangs on a spur, which may have \"outlets\" (1), \"fuse_a\" (rating of "
     "its fuse, 0: unfused) and \"spur_capacity_a\"; \"name\""},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook"},
    {"capacity_a", "number", "capacity of the ring's cable where it lies, all factors in it, A; left out: what depends on it stays undecided", true},
    {"rating_a", "number", "rated current of the ring's device, A; 32", true},
    {"spread_current_a", "number", "current of further loads, spread evenly along the ring, A; 0", true},
    {"floor_area_m2", "number", "floor area that the ring serves, m²", true},
    {"resistance_mohm_per_m", "number", "resistance of line and neutral together, mΩ/m, for the drops", true}};
document::value run_spur_load(const object& inputs, const rulebook& book) {
  constexpr std::string_view who = "spur_load";
  const fields in(who, inputs);
  in.only("ring_length_m", "loads", "capacity_a", "rating_a", "spread_current_a", "floor_area_m2", "resistance_mohm_per_m");
  el::ring_design d;
  d.loads.length_m = in.number("ring_length_m");
  d.loads.spread_current_a = finite_or(in, who, "spread_current_a", 0.0);
  d.loads.resistance_mohm_per_m = optional_number(in, who, "resistance_mohm_per_m");
  in.need("loads");
  d.loads.loads = loads_from(who, in, ring_point_names);
  d.capacity_a = optional_number(in, who, "capacity_a");
  d.rating_a = finite_or(in, who, "rating_a", 32.0);
  d.floor_area_m2 = optional_number(in, who, "floor_area_m2");
  const auto r = el::spur_load(d, book);
  array findings;
  for (const auto& f : r.findings)
    findings.push_back(object{{"item", f.item}, {"outcome", f.outcome}, {"text", f.text}, {"value", number_or_null(f.value)}, {"limit", number_or_null(f.limit)}, {"unit", f.unit},
                              {"source", object{{"title", f.from.title}, {"clause", f.from.clause}, {"grade", f.from.grade}}}});
  object o{{"outcome", r.outcome}, {"findings", findings}};
  for (auto& f : loads_to_document(r.loads).fields) o.set(f.first, f.second);
  o.set("caution", "Loads as stated, all at once, and a ring with sound joints: a break puts all of it on one leg, which the ring's device does not see. Test the ring first.");
  return o;
}
constexpr model spur_load{{"spur_load", "A ring with its loads and spurs against the rules: current in each leg against the cable, each spur's cable, fuse and outlets; what was not stated stays undecided.",
                           spur_load_arguments, {"BS 7671:2018+A2:2022", "433.1.204, Appendix 15", "memory"}, run_spur_load, nullptr}};

// ---- required_rcd_tests ----------------------------------------------------------------------------------------------------------

constexpr model_argument rcd_tests_arguments[] = {
    {"residual_current_ma", "number", "rated residual current, mA"},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook: the edition to judge by"},
    {"rcd_kind", "text", "\"general\", \"selective\" or \"bs4293\" (the older standard); general", true},
    {"rcd_type", "text", "type marked on the device: \"AC\", \"A\", \"F\", \"B\"; AC", true}};
document::value run_rcd_tests(const object& inputs, const rulebook& book) {
  const fields in("required_rcd_tests", inputs);
  in.only("residual_current_ma", "rcd_kind", "rcd_type");
  const auto list_ = el::required_rcd_tests(in.number("residual_current_ma"), in.has("rcd_kind") ? in.text("rcd_kind") : std::string("general"),
                                            in.has("rcd_type") ? in.text("rcd_type") : std::string("AC"), book);
  array tests;
  for (const auto& t : list_)
    tests.push_back(object{{"test", t.test}, {"current_ma", number_or_null(t.current_ma)},
                           {"required", t.required == el::rcd_test_item::asked::no_rule ? document::value(nullptr) : document::value(t.required == el::rcd_test_item::asked::yes)},
                           {"text", t.text}, {"least_ms", number_or_null(t.least_ms)}, {"most_ms", number_or_null(t.most_ms)}, {"least_ma", number_or_null(t.least_ma)},
                           {"most_ma", number_or_null(t.most_ma)}, {"source", object{{"title", t.from.title}, {"clause", t.from.clause}, {"grade", t.from.grade}}}});
  return object{{"tests", tests},
                {"caution", "Live tests: prove the protective conductor first, at 0° and 180°, and keep the worse. The test button is a further test. Tests that are not asked for inform."}};
}
constexpr model required_rcd_tests{{"required_rcd_tests", "Which tests of a residual current device an edition asks for, with the limits of each; those not asked for inform.", rcd_tests_arguments,
                                    {"BS 7671, tests of residual current devices; IEC 61008-1 Table 1", "", "memory"}, run_rcd_tests, nullptr}};

}  // namespace

void circuit_tests(std::vector<entry>& all) { append(all, "electrical", list<ring_tests, test_record_consistency, point_loads, spur_load, required_rcd_tests>{}); }

}  // namespace makegood::subjects

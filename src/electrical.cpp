// SPDX-License-Identifier: MIT
#include <makegood/electrical/list.hpp>
#include <makegood/electrical/models.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace el = makegood::electrical;
using document::array;
using document::object;

bool flag(std::string_view model, const object& o, std::string_view name) {
  const auto* v = o.find(name);
  if (!v || v->is_null()) return false;
  const auto* b = v->as<bool>();
  if (!b) throw range_error(std::string(model) + ": \"" + std::string(name) + "\" must be true or false");
  return *b;
}
double known_or_none(const fields& in, std::string_view name) { return in.has(name) ? in.number(name) : no_number; }
std::string text_or_none(const fields& in, std::string_view name) { return in.has(name) ? in.text(name) : std::string(); }

constexpr model_argument protective_device_arguments[] = {
    {"kind", "text", "\"breaker_b\", \"breaker_c\", \"breaker_d\" (RCBOs too), \"gg\", \"bs88_2_2\", \"bs88_2\", \"bs1361\", \"bs3036\", \"bs1362\""},
    {"rating_a", "number", "rated current in A"},
    {"breaking_capacity_a", "number", "rated short-circuit capacity in A, for the energy of class 3 of a circuit-breaker", true}};
document::value run_protective_device(const object& inputs, const rulebook&) {
  const fields in("protective_device", inputs);
  in.only("kind", "rating_a", "breaking_capacity_a");
  const auto d = el::protective_device(in.text("kind"), in.number("rating_a"), in.has("breaking_capacity_a") ? in.number("breaking_capacity_a") : 0.0);
  array times;
  for (std::size_t i = 0; i < el::device_times_s.size(); ++i)
    times.push_back(object{{"time_s", el::device_times_s[i]}, {"current_a", document::number_or_null(d.operating_in_time_a[i])}});
  array notes;
  for (const auto& n : d.notes) notes.push_back(n);
  return object{{"standard", d.standard},
                {"holding_a", document::number_or_null(d.holding_a)},
                {"operating_a", document::number_or_null(d.operating_a)},
                {"conventional_holding_a", document::number_or_null(d.conventional_holding_a)},
                {"conventional_operating_a", document::number_or_null(d.conventional_operating_a)},
                {"operating_in_time", times},
                {"let_through_a2s", document::number_or_null(d.let_through_a2s)},
                {"prearcing_min_a2s", document::number_or_null(d.prearcing_min_a2s)},
                {"prearcing_max_a2s", document::number_or_null(d.prearcing_max_a2s)},
                {"notes", notes}};
}
constexpr model protective_device{{"protective_device",
                                   "What a protective device does by its standard: bands, conventional currents, operating current in the required times, let-through energy. null: needs maker's figure.",
                                   protective_device_arguments, el::fuse_loop_tables, run_protective_device, nullptr}};

constexpr model_argument cable_size_arguments[] = {
    {"method", "text", "way of installation of Table 4D5: \"100\", \"101\", \"102\", \"103\", \"C\", \"A\""},
    {"rating_a", "number", "rated current of the device, A"},
    {"design_current_a", "number", "design current, A"},
    {"length_m", "number", "length of the run, one way, m"},
    {"correction_factor", "number", "product of the factors at the worst place"},
    {"drop_limit_v", "number", "voltage drop allowed, V"},
    {"external_ohm", "number", "impedance of the loop outside the installation, Ω"},
    {"loop_limit_ohm", "number", "highest loop impedance, C_min in it, Ω"},
    {"let_through_a2s", "number", "energy that the device lets through at the fault current, A²·s; the maker's figure"}};
document::value run_cable_size(const object& inputs, const rulebook&) {
  const fields in("cable_size", inputs);
  in.only("method", "rating_a", "design_current_a", "length_m", "correction_factor", "drop_limit_v", "external_ohm", "loop_limit_ohm", "let_through_a2s");
  const auto s = el::cable_size(in.text("method"), in.number("rating_a"), in.number("design_current_a"), in.number("length_m"), in.number("correction_factor"), in.number("drop_limit_v"),
                                in.number("external_ohm"), in.number("loop_limit_ohm"), in.number("let_through_a2s"));
  array ruled, unmet;
  for (const auto x : s.ruled_by) ruled.push_back(x);
  for (const auto x : s.unmet) unmet.push_back(x);
  return object{{"size_mm2", document::number_or_null(s.size_mm2)},
                {"ruled_by", ruled},
                {"unmet", unmet},
                {"by_condition", object{{"capacity_mm2", document::number_or_null(s.capacity_mm2)}, {"drop_mm2", document::number_or_null(s.drop_mm2)},
                                        {"loop_mm2", document::number_or_null(s.loop_mm2)}, {"energy_mm2", document::number_or_null(s.energy_mm2)}}}};
}
constexpr model cable_size{{"cable_size", "Smallest flat twin cable by each of capacity, voltage drop, loop impedance and fault energy, and which of them ruled; smallest_size gives the size alone, over arrays too.",
                            cable_size_arguments, el::flat_twin_table, run_cable_size, nullptr}};

constexpr model_argument maximum_demand_arguments[] = {
    {"loads", "groups",
     "groups: {\"kind\": \"lighting\" | \"heating\" | \"cooker\" | \"instantaneous_water\" | \"thermostatic_water\" | \"floor_warming\" | \"storage_heating\" | \"socket_circuits\", \"currents_a\": [...], \"socket\": true}"},
    {"supply_rating_a", "number", "rated current of the supply's fuse, for the spare capacity", true}};
document::value run_maximum_demand(const object& inputs, const rulebook&) {
  const fields in("maximum_demand", inputs);
  in.only("loads", "supply_rating_a");
  const auto* all = in.need("loads").as<array>();
  if (!all) throw range_error("maximum_demand: \"loads\" must be a list of groups");
  std::vector<el::load_group> groups;
  for (std::size_t i = 0; i < all->size(); ++i) {
    const std::string where = "maximum_demand, loads[" + std::to_string(i) + "]";
    const auto* o = (*all)[i].as<object>();
    if (!o) throw range_error(where + ": must be an object with \"kind\" and \"currents_a\"");
    const fields g(where, *o);
    g.only("kind", "currents_a", "socket");
    groups.push_back({g.text("kind"), numbers_of(where, "currents_a", g.need("currents_a")), flag(where, *o, "socket")});
  }
  const auto r = el::maximum_demand(groups);
  array lines;
  for (const auto& l : r.lines) lines.push_back(object{{"kind", l.kind}, {"connected_a", l.connected_a}, {"demand_a", l.demand_a}, {"rule", l.rule}});
  object out{{"demand_a", r.demand_a}, {"connected_a", r.connected_a}, {"lines", lines}};
  if (in.has("supply_rating_a")) {
    const double rating = in.number("supply_rating_a");
    if (!(rating > 0.0 && rating <= 1e4)) throw range_error("maximum_demand: supply_rating_a = " + number_text(rating) + " A: above 0 to 10000 A");
    out.set("spare_a", rating - r.demand_a);
  }
  out.set("caution", "A rule of design, not a measurement: a recording over some days shows what the supply really carries. The supply's fuse belongs to the network operator.");
  return out;
}
constexpr model maximum_demand{{"maximum_demand", "Demand of a dwelling by the printed rules of diversity, group by group, and what the supply has to spare.", maximum_demand_arguments, el::diversity_table,
                                run_maximum_demand, nullptr}};

constexpr model_argument earthing_arguments[] = {
    {"arrangement", "text", "\"tn_s\", \"tn_c_s\", \"tt\"; left out: not known", true},
    {"external_ohm", "number", "external loop impedance Z_e, Ω", true},
    {"electrode_ohm", "number", "resistance of the electrode (TT), Ω", true},
    {"residual_current_ma", "number", "rated residual current of the device that protects all circuits (TT), mA", true},
    {"line_mm2", "number", "cross-section of the supply's line conductor, mm²", true},
    {"earthing_conductor_mm2", "number", "cross-section of the earthing conductor, mm²; 0: none was found", true},
    {"bonding_mm2", "numbers", "cross-sections of the main bonding conductors found, mm²", true},
    {"bonding_complete", "bool", "every extraneous part was looked for", true}};
document::value run_earthing(const object& inputs, const rulebook&) {
  const fields in("earthing_arrangement", inputs);
  in.only("arrangement", "external_ohm", "electrode_ohm", "residual_current_ma", "line_mm2", "earthing_conductor_mm2", "bonding_mm2", "bonding_complete");
  el::earthing_facts f;
  f.arrangement = text_or_none(in, "arrangement");
  f.external_ohm = known_or_none(in, "external_ohm");
  f.electrode_ohm = known_or_none(in, "electrode_ohm");
  f.residual_current_ma = known_or_none(in, "residual_current_ma");
  f.line_mm2 = known_or_none(in, "line_mm2");
  f.earthing_conductor_mm2 = known_or_none(in, "earthing_conductor_mm2");
  if (in.has("bonding_mm2")) f.bonding_mm2 = numbers_of("earthing_arrangement", "bonding_mm2", in.need("bonding_mm2"));
  f.bonding_complete = flag("earthing_arrangement", inputs, "bonding_complete");
  array findings;
  std::string_view worst = "pass";
  for (const auto& x : el::earthing_arrangement(f)) {
    if (x.outcome == "fail" || (x.outcome == "undecided" && worst == "pass")) worst = x.outcome;
    findings.push_back(object{{"outcome", x.outcome}, {"text", x.text}});
  }
  return object{{"outcome", worst}, {"findings", findings}, {"caution", "The intake belongs to the network operator. Never disconnect an earth or a bond with the installation live."}};
}
constexpr model earthing_arrangement{{"earthing_arrangement", "Supply, earthing and main bonding held against each other: what is proved, what is wrong, what was not looked at.", earthing_arguments,
                                      {"BS 7671:2018", "411.4, 411.5, 544.1, Table 54.7; operators' usual figures", "memory"}, run_earthing, nullptr}};

constexpr model_argument isolation_arguments[] = {
    {"point", "text", "where the work is", true},
    {"isolated_at", "text", "where it was isolated", true},
    {"means_of_locking", "text", "how the isolation was locked off", true},
    {"indicator", "text", "which voltage indicator was used", true},
    {"indicator_proved_before", "bool", "proved on a proving unit or known source before", true},
    {"indicator_proved_after", "bool", "and again after", true},
    {"tested_between", "texts", "pairs tested: \"L-N\", \"L-E\", \"N-E\"; three-phase \"L1-L2\" ...", true},
    {"read_v", "numbers", "voltage shown, one a pair, V", true},
    {"three_phase", "bool", "a three-phase point", true}};
document::value run_isolation(const object& inputs, const rulebook&) {
  const fields in("proof_of_isolation", inputs);
  in.only("point", "isolated_at", "means_of_locking", "indicator", "indicator_proved_before", "indicator_proved_after", "tested_between", "read_v", "three_phase");
  el::isolation_record r;
  r.point = text_or_none(in, "point");
  r.isolated_at = text_or_none(in, "isolated_at");
  r.means_of_locking = text_or_none(in, "means_of_locking");
  r.indicator = text_or_none(in, "indicator");
  r.indicator_proved_before = flag("proof_of_isolation", inputs, "indicator_proved_before");
  r.indicator_proved_after = flag("proof_of_isolation", inputs, "indicator_proved_after");
  r.three_phase = flag("proof_of_isolation", inputs, "three_phase");
  if (in.has("tested_between")) {
    const auto* all = in.need("tested_between").as<array>();
    if (!all) throw range_error("proof_of_isolation: \"tested_between\" must be a list of pairs");
    for (const auto& v : *all) {
      const auto* t = v.as<std::string>();
      if (!t) throw range_error("proof_of_isolation: \"tested_between\" must be a list of pairs such as \"L-N\"");
      r.tested_between.push_back(*t);
    }
  }
  if (in.has("read_v")) r.read_v = numbers_of("proof_of_isolation", "read_v", in.need("read_v"));
  const auto p = el::proof_of_isolation(r);
  array missing;
  for (const auto& m : p.missing) missing.push_back(m);
  return object{{"record_complete", p.complete},
                {"found_live", p.live},
                {"missing", missing},
                {"caution", "A record of what was done at one time at one point. It does not say that anything is safe to touch: prove dead again before every work, on all conductors, borrowed neutrals and second supplies too."}};
}
constexpr model proof_of_isolation{{"proof_of_isolation", "Record of proving a point dead: which steps were done, which are missing.", isolation_arguments,
                                    {"Rule of the trade for safe isolation", "", "common-practice"}, run_isolation, nullptr}};

}  // namespace

void electrical(std::vector<entry>& all) {
  append(all, "electrical", makegood::electrical::entries{});
  append(all, "electrical", list<protective_device, cable_size, maximum_demand, earthing_arrangement, proof_of_isolation>{});
}
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject electrical: faults that show only in use, a joint under load and trips that nobody wanted.
#include <makegood/electrical/live_faults.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
namespace el = makegood::electrical;
using document::array;
using document::number_or_null;
using document::object;

array texts(const std::vector<std::string>& list) {
  array a;
  for (const auto& t : list) a.emplace_back(t);
  return a;
}
/// What every ranking gives; the model adds its own.
object to_document(const el::fault_ranking& r) {
  array faults, next;
  for (const auto& f : r.faults) faults.push_back(object{{"kind", f.kind}, {"text", f.text}, {"act", f.act}, {"prior", f.prior}, {"probability", f.probability}});
  for (const auto& n : r.next) next.push_back(object{{"reading", n.reading}, {"text", n.text}, {"information_bits", n.information_bits}});
  return object{{"leading", r.faults[0].kind}, {"probability", r.faults[0].probability}, {"text", r.text},         {"faults", faults},
                {"robust", r.robust},          {"conflict", r.conflict},                 {"next", next},           {"cautions", texts(r.cautions)},
                {"assumptions", texts(r.assumptions)}};
}
template <std::size_t N>
void take(std::string_view model, const fields& in, const std::pair<std::string_view, reading*> (&all)[N]) {
  for (const auto& [name, to] : all) {
    if (!in.has(name)) continue;
    try {
      *to = reading_from(in.need(name));
    } catch (const range_error& e) {
      throw range_error(std::string(model) + ": " + std::string(name) + ": " + e.what());
    }
  }
}

constexpr model_argument joint_arguments[] = {
    {"no_load_v", "reading", "voltage line to neutral at the point without the load, 1 to 1000 V"},
    {"load_v", "reading", "the same with the load on"},
    {"current_a", "reading", "current of the load, 0.05 to 1000 A"},
    {"circuit_ohm", "reading", "line and neutral of the run together as they should be, 0.001 to 100 Ω; a bare number is taken as ± 6 % (standard uncertainty)", true},
    {"supply_ohm", "reading", "line-neutral impedance at the board as it should be, 0.001 to 100 Ω; a bare number is taken as ± 15 %", true},
    {"board_no_load_v", "reading", "voltage at the board without the load; with board_load_v", true},
    {"board_load_v", "reading", "voltage at the board with the same load", true},
    {"line_drop_v", "reading", "along the line conductor from board to point, with the load on", true},
    {"neutral_drop_v", "reading", "along the neutral conductor from board to point, with the load on", true}};
document::value run_joint(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "joint_under_load";
  const fields in(who, inputs);
  in.only("no_load_v", "load_v", "current_a", "circuit_ohm", "supply_ohm", "board_no_load_v", "board_load_v", "line_drop_v", "neutral_drop_v");
  el::joint_readings x;
  (void)in.need("no_load_v"), (void)in.need("load_v"), (void)in.need("current_a");
  take(who, in,
       {{"no_load_v", &x.no_load_v},
        {"load_v", &x.load_v},
        {"current_a", &x.current_a},
        {"circuit_ohm", &x.circuit_ohm},
        {"supply_ohm", &x.supply_ohm},
        {"board_no_load_v", &x.board_no_load_v},
        {"board_load_v", &x.board_load_v},
        {"line_drop_v", &x.line_drop_v},
        {"neutral_drop_v", &x.neutral_drop_v}});
  const auto r = el::joint_under_load(x);
  auto o = to_document(r);
  o.set("drop_v", r.drop_v);
  o.set("drop_standard_uncertainty_v", r.drop_standard_uncertainty_v);
  o.set("joint_ohm", number_or_null(r.joint_ohm));
  o.set("joint_standard_uncertainty_ohm", number_or_null(r.joint_standard_uncertainty_ohm));
  o.set("heat_w", number_or_null(r.heat_w));
  return o;
}
constexpr model joint_under_load{{"joint_under_load",
                                  "Whether a loose joint explains the voltage lost under load: in the line, in the neutral, before the board, or another cable or more current; with "
                                  "probabilities, the joint's resistance and heat, and the next reading.",
                                  joint_arguments, source{"Ohm's law for supply, cable and joint in series; Bayes' rule", "U_0 - U = I (Z_s + R_1 + R_n + R_j)", "derived"}, run_joint, nullptr}};

constexpr model_argument trip_arguments[] = {
    {"residual_current_ma", "number", "rated residual current of the device, 5 to 1000 mA"},
    {"when", "text",
     "when it trips: \"at_once\" (it cannot be closed), \"at_switch_on\" (of some appliance), \"under_load\", \"now_and_then\" or \"in_the_wet\"", true},
    {"leakage_ma", "reading", "standing current by a clamp around all live conductors behind the device, appliances on, 0 to 1e5 mA", true},
    {"ramp_ma", "reading", "current at which a ramp trips it, its load side disconnected", true},
    {"ramp_connected_ma", "reading", "the same with circuits and appliances on; not weighed, held against the other", true},
    {"insulation_line_mohm", "reading", "insulation of the lines to earth, dead, appliances disconnected, 0 to 1e6 MΩ", true},
    {"insulation_neutral_mohm", "reading", "insulation of the neutrals to earth, lifted from the bar", true}};
document::value run_trips(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "unwanted_trips";
  const fields in(who, inputs);
  in.only("residual_current_ma", "when", "leakage_ma", "ramp_ma", "ramp_connected_ma", "insulation_line_mohm", "insulation_neutral_mohm");
  el::trip_readings x;
  x.residual_current_ma = in.number("residual_current_ma");
  if (in.has("when")) {
    const std::string& word = in.text("when");
    std::string known;
    for (std::size_t i = 1; i < std::size(el::trip_moments); ++i) {
      if (word == el::trip_moments[i]) x.when = static_cast<el::trip_moment>(i);
      known += (i > 1 ? ", \"" : "\"") + std::string(el::trip_moments[i]) + "\"";
    }
    if (x.when == el::trip_moment::not_said) throw range_error("unwanted_trips: when = \"" + word + "\" is not one of " + known);
  }
  take(who, in,
       {{"leakage_ma", &x.leakage_ma},
        {"ramp_ma", &x.ramp_ma},
        {"ramp_connected_ma", &x.ramp_connected_ma},
        {"insulation_line_mohm", &x.insulation_line_mohm},
        {"insulation_neutral_mohm", &x.insulation_neutral_mohm}});
  return to_document(el::unwanted_trips(x));
}
constexpr model unwanted_trips{{"unwanted_trips",
                                "Why a residual current device trips unwanted: standing leakage, a fault of wiring, appliance or neutral, a borrowed neutral, dampness, the device itself, "
                                "transients; with probabilities and the next reading.",
                                trip_arguments, source{"Bayes' rule; trip between 0.5 and 1 times the rated residual current", "IEC 61008-1, 5.3", "memory"}, run_trips, nullptr}};
}  // namespace
void live_faults(std::vector<entry>& all) { append(all, "electrical", list<joint_under_load, unwanted_trips>{}); }
}  // namespace makegood::subjects

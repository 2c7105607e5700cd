// SPDX-License-Identifier: MIT
// Models of the subject electrical: which wirings explain what is live at the terminals of a switched point.
#include <makegood/electrical/switching.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::electrical;
using document::array;
using document::object;

constexpr std::string_view who = "switched_feed_logic";

constexpr model_argument switched_arguments[] = {
    {"conductors", "texts", "names of the conductors at the point, taken apart from each other, 1 to 8"},
    {"switches", "objects",
     "the switches that may act on the point: {\"name\", \"kind\"}, and \"neon\": true where a lamp lies across its contacts. Kinds, with their positions: "
     "\"one_way\" and \"double_pole\" "
     "(\"off\", \"on\"), \"pull_cord\", \"double_pole_pull_cord\", \"two_way\" and \"intermediate\" (\"1\", \"2\"; nobody need know which is which)"},
    {"readings", "objects",
     "{\"voltage\": \"live\", \"dead\" or \"ghost\", \"from\": a conductor, \"to\": another or \"earth\" (default), \"supply\": \"on\" (default), \"isolated\" "
     "(this circuit) or "
     "\"all_isolated\", \"meter\": see there} or {\"continuity\": \"continuous\" or \"open\", \"from\", \"to\": a conductor, \"earth\", \"board_neutral\" or "
     "\"board_line\", \"neutral\": "
     "\"connected\" (default) or \"disconnected\" at the board, \"loads\": \"disconnected\" (default) or \"connected\"}, each with \"positions\": {switch: "
     "position}; one left out is not known"},
    {"meter", "text",
     "of voltages that name none: \"low_impedance\" (two-pole tester) or \"high_impedance\", taken where nothing is said: a floating conductor may then show "
     "any voltage",
     true},
    {"isolation_point", "text", "where the point is isolated, as the result shall say it", true},
    {"listed_count", "number", "wirings to list, 0 to 10000; 50", true}};

[[noreturn]] void refuse(const std::string& text) { throw range_error(std::string(who) + ": " + text); }
std::string text_in(const fields& in, std::string_view name, std::string_view otherwise) { return in.has(name) ? in.text(name) : std::string(otherwise); }
template <std::size_t n>
std::size_t one_of(const std::string& where, std::string_view field, const std::string& word, const std::string_view (&words)[n]) {
  std::string list;
  for (std::size_t i = 0; i < n; ++i) {
    if (words[i] == word) return i;
    list += (i ? ", \"" : "\"") + std::string(words[i]) + "\"";
  }
  refuse(where + ": \"" + std::string(field) + "\" = \"" + word + "\" is not one of " + list);
}
const array& list_in(const fields& in, std::string_view name) {
  const auto* a = in.need(name).as<array>();
  if (!a) refuse("\"" + std::string(name) + "\" must be a list");
  return *a;
}
bool low_impedance(const std::string& where, const std::string& word) {
  constexpr std::string_view words[] = {"high_impedance", "low_impedance"};
  return one_of(where, "meter", word, words) == 1;
}
int end_from(const accessory_point& p, const std::string& where, const std::string& name) {
  if (name == "earth") return point_reading::earth;
  if (name == "board_neutral") return point_reading::board_neutral;
  if (name == "board_line") return point_reading::board_line;
  std::vector<std::string_view> names{"earth", "board_neutral", "board_line"};
  for (std::size_t i = 0; i < p.conductors.size(); ++i) {
    if (p.conductors[i] == name) return static_cast<int>(i);
    names.push_back(p.conductors[i]);
  }
  const std::string near = document::nearest(name, names);
  refuse(where + ": \"" + name + "\" is no conductor of the point and no reference" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
}
point_reading reading_of(const accessory_point& p, const object& o, std::size_t index, bool low_by_default) {
  const std::string where = "reading " + std::to_string(index + 1);
  const std::string full_name = std::string(who) + ", " + where;
  const fields in(full_name, o);
  point_reading r;
  if (in.has("voltage") == in.has("continuity")) refuse(where + ": one of \"voltage\" and \"continuity\"");
  r.from = end_from(p, where, in.text("from"));
  r.to = end_from(p, where, text_in(in, "to", "earth"));
  if (in.has("voltage")) {
    in.only("voltage", "from", "to", "positions", "supply", "meter", "note");
    constexpr std::string_view words[] = {"live", "dead", "ghost"};
    r.seen = static_cast<seen_state>(one_of(where, "voltage", in.text("voltage"), words));
    r.supply = static_cast<supply_state>(one_of(where, "supply", text_in(in, "supply", "on"), supply_states));
    r.high_impedance = in.has("meter") ? !low_impedance(where, in.text("meter")) : !low_by_default;
    if (r.from == point_reading::board_line || r.to == point_reading::board_line || r.from == point_reading::board_neutral ||
        r.to == point_reading::board_neutral)
      refuse(where + ": a voltage is read between conductors of the point, or from one to a proved \"earth\"");
  } else {
    in.only("continuity", "from", "to", "positions", "neutral", "loads", "note");
    constexpr std::string_view words[] = {"continuous", "open"}, ways[] = {"connected", "disconnected"};
    r.seen = one_of(where, "continuity", in.text("continuity"), words) ? seen_state::open : seen_state::continuous;
    r.neutral_disconnected = one_of(where, "neutral", text_in(in, "neutral", "connected"), ways) == 1;
    r.loads_connected = one_of(where, "loads", text_in(in, "loads", "disconnected"), ways) == 0;
  }
  r.positions.assign(p.switches.size(), -1);
  if (in.has("positions")) {
    const auto* positions = in.need("positions").as<object>();
    if (!positions) refuse(where + ": \"positions\" must be an object: {switch: position}");
    for (const auto& [name, v] : positions->fields) {
      std::size_t i = 0;
      while (i < p.switches.size() && p.switches[i].name != name) ++i;
      if (i == p.switches.size()) refuse(where + ": no switch \"" + name + "\"");
      const auto* word = v.as<std::string>();
      const auto& allowed = switch_kinds[static_cast<std::size_t>(p.switches[i].kind)].positions;
      if (word && *word == allowed[0]) r.positions[i] = 0;
      else if (word && *word == allowed[1]) r.positions[i] = 1;
      else
        refuse(where + ": position of \"" + name + "\": \"" + std::string(allowed[0]) + "\" or \"" + std::string(allowed[1]) +
               "\", as a text; leave it out where it is not known");
    }
  }
  return r;
}

std::string end_text(const accessory_point& p, int end) {
  return end == point_reading::earth           ? "earth"
         : end == point_reading::board_neutral ? "the circuit's neutral at the board"
         : end == point_reading::board_line    ? "the circuit's line at the board"
                                               : p.conductors[static_cast<std::size_t>(end)];
}
std::string positions_text(const accessory_point& p, const point_reading& r) {
  std::string text;
  for (std::size_t i = 0; i < r.positions.size(); ++i)
    if (r.positions[i] >= 0)
      text += (text.empty() ? "" : ", ") + p.switches[i].name + " at \"" +
              std::string(switch_kinds[static_cast<std::size_t>(p.switches[i].kind)].positions[static_cast<std::size_t>(r.positions[i])]) + "\"";
  return text;
}
std::string what_text(const accessory_point& p, const point_reading& r) {
  std::string text = r.continuity() ? "continuity" : "voltage";
  text += r.from >= 0 && r.to < 0 ? " of " + end_text(p, r.from) + " to " + end_text(p, r.to) : " between " + end_text(p, r.from) + " and " + end_text(p, r.to);
  if (const auto at = positions_text(p, r); !at.empty()) text += ", " + at;
  if (r.continuity()) text += r.neutral_disconnected ? ", neutral taken off at the board" : "";
  else text += r.supply == supply_state::on ? ", supply on" : r.supply == supply_state::isolated ? ", this circuit isolated" : ", everything isolated";
  return text;
}
object reading_document(const accessory_point& p, const point_reading& r) {
  object o{{"kind", r.continuity() ? "continuity" : "voltage"}};
  const auto name = [&](int e) {
    return e == point_reading::earth           ? std::string("earth")
           : e == point_reading::board_neutral ? std::string("board_neutral")
           : e == point_reading::board_line    ? std::string("board_line")
                                               : end_text(p, e);
  };
  o.set("from", name(r.from));
  o.set("to", name(r.to));
  object positions;
  for (std::size_t i = 0; i < r.positions.size(); ++i)
    if (r.positions[i] >= 0)
      positions.set(p.switches[i].name, switch_kinds[static_cast<std::size_t>(p.switches[i].kind)].positions[static_cast<std::size_t>(r.positions[i])]);
  o.set("positions", positions);
  if (r.continuity()) o.set("neutral", r.neutral_disconnected ? "disconnected" : "connected");
  else o.set("supply", supply_states[static_cast<std::size_t>(r.supply)]);
  return o;
}
std::string numbers_text(const std::vector<std::size_t>& some) {
  std::string text;
  for (std::size_t k = 0; k < some.size(); ++k) text += (k == 0 ? "" : k + 1 == some.size() ? " and " : ", ") + std::to_string(some[k] + 1);
  return text;
}
array numbers_list(const std::vector<std::size_t>& some) {
  array a;
  for (const auto i : some) a.emplace_back(i + 1);
  return a;
}

document::value run_switched(const object& inputs, const rulebook&) {
  const fields in(who, inputs);
  in.only("conductors", "switches", "readings", "meter", "isolation_point", "listed_count");
  accessory_point p;
  for (const auto& v : list_in(in, "conductors")) {
    const auto* name = v.as<std::string>();
    if (!name) refuse("a conductor is a name");
    p.conductors.push_back(*name);
  }
  for (const auto& v : list_in(in, "switches")) {
    const auto* o = v.as<object>();
    if (!o) refuse("a switch is an object with \"name\" and \"kind\"");
    const fields s("switched_feed_logic, switches", *o);
    s.only("name", "kind", "neon");
    point_switch one{s.text("name")};
    const std::string& kind = s.text("kind");
    std::size_t k = 0;
    std::string kinds;
    for (; k < std::size(switch_kinds) && switch_kinds[k].key != kind; ++k) kinds += (k ? ", \"" : "\"") + std::string(switch_kinds[k].key) + "\"";
    if (k == std::size(switch_kinds)) refuse("switch \"" + one.name + "\": kind \"" + kind + "\" is not one of " + kinds);
    one.kind = static_cast<switch_kind>(k);
    if (s.has("neon")) {
      const auto* b = s.need("neon").as<bool>();
      if (!b) refuse("switch \"" + one.name + "\": \"neon\" is true or false");
      one.neon = *b;
    }
    p.switches.push_back(std::move(one));
  }
  const double most = in.has("listed_count") ? in.number("listed_count") : 50.0;
  if (!(most >= 0.0 && most <= 10000.0)) refuse("\"listed_count\": from 0 to 10000");
  const std::size_t most_listed = static_cast<std::size_t>(most);
  const bool low = low_impedance("\"meter\"", text_in(in, "meter", "high_impedance"));
  bool any_high = false, any_live = false;
  const auto& readings = list_in(in, "readings");
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const auto* o = readings[i].as<object>();
    if (!o) refuse("reading " + std::to_string(i + 1) + " must be an object");
    p.readings.push_back(reading_of(p, *o, i, low));
    any_live = any_live || p.readings.back().seen == seen_state::live;
    any_high = any_high || (!p.readings.back().continuity() && p.readings.back().high_impedance);
  }
  const auto r = switched_feed_logic(p);

  const std::size_t n = r.wirings.size();
  bool other_circuit = n == 0 || !r.complete;
  array text, wirings, conductors, effects, next, precautions;
  std::vector<std::size_t> still_live;
  for (std::size_t i = 0; i < p.readings.size(); ++i)
    if (p.readings[i].seen == seen_state::live && p.readings[i].supply != supply_state::on) still_live.push_back(i);
  if (!still_live.empty())
    text.push_back("Stop: live with the supply isolated (reading " + numbers_text(still_live) +
                   "). What was switched off does not feed this point alone, or is not what feeds it: another circuit, "
                   "a second supply, a standby source. Find and isolate it before anything else.");
  if (n == 0) {
    std::string said = "No listed wiring explains these readings: ";
    for (std::size_t k = 0; k < r.conflict.size(); ++k) {
      const auto& one = p.readings[r.conflict[k]];
      said += (k ? "; " : "") + std::to_string(r.conflict[k] + 1) + " (" + what_text(p, one) + ": " +
              std::string(seen_states[static_cast<std::size_t>(one.seen)]) + ")";
    }
    text.push_back(said + (r.conflict.size() == 1 ? " by itself." : " together."));
    if (r.suspects.size() == 1)
      text.push_back("If reading " + numbers_text(r.suspects) + " is wrong, the others can be explained: repeat it, with a tester proved before and after.");
    if (r.suspects.size() > 1)
      text.push_back("If any one of the readings " + numbers_text(r.suspects) +
                     " is wrong, the others can be explained: repeat them, with a tester proved before and after.");
    text.push_back(
        "Else the point is wired in a way that is not listed here, a load or an electronic switch still joins conductors, a switch is defective, or its "
        "position was not what was written.");
  } else {
    text.push_back(!r.complete ? "More than " + std::to_string(n) +
                                     " wirings explain these readings: too few readings. Read every conductor to earth in every position of the switches first."
                   : n == 1 ? std::string("One listed wiring explains the readings.")
                            : std::to_string(n) + " listed wirings explain the readings.");
    if (r.complete && n > 1 && r.distinguishable_count < n)
      text.push_back("Readings at these conductors can tell at most " + std::to_string(r.distinguishable_count) +
                     " of them apart for certain: for the rest follow the conductors, or test at another point.");
  }
  for (std::size_t c = 0; c < p.conductors.size(); ++c) {
    array possible, gone;
    std::string line = p.conductors[c] + ": ";
    for (const auto k : r.possible[c]) {
      possible.push_back(r.roles[k].text);
      line += (possible.size() > 1 ? "; or " : "") + r.roles[k].text;
      other_circuit = other_circuit || r.roles[k].key == "other_line" || r.roles[k].key == "other_neutral";
    }
    if (n && r.complete)
      text.push_back(possible.size() <= 5 ? line + "."
                                          : p.conductors[c] + ": " + std::to_string(possible.size()) + " ways are left, listed under \"conductors\".");
    if (n)
      for (const auto& g : r.ruled_out[c])
        gone.push_back(object{{"wiring", r.roles[g.role].text}, {"by_readings", numbers_list(g.by)}, {"several_together", g.by.empty()}});
    conductors.push_back(object{{"conductor", p.conductors[c]}, {"possible", possible}, {"ruled_out", gone}});
  }
  for (std::size_t w = 0; w < n && w < most_listed; ++w) {
    object one;
    for (std::size_t c = 0; c < p.conductors.size(); ++c) one.set(p.conductors[c], r.roles[r.wirings[w][c]].key);
    wirings.push_back(one);
  }
  object roles;
  for (const auto& one : r.roles) roles.set(one.key, one.text);
  for (std::size_t i = 0; i < r.effects.size(); ++i) {
    effects.push_back(object{{"reading", i + 1},
                             {"text", what_text(p, p.readings[i]) + ": " + std::string(seen_states[static_cast<std::size_t>(p.readings[i].seen)])},
                             {"rules_out_count", r.effects[i].rules_out},
                             {"at_least", r.effects[i].at_least}});
    if (r.effects[i].rules_out)
      text.push_back("Without reading " + std::to_string(i + 1) + " (" + what_text(p, p.readings[i]) + ": " +
                     std::string(seen_states[static_cast<std::size_t>(p.readings[i].seen)]) + "), " + (r.effects[i].at_least ? "at least " : "") +
                     std::to_string(r.effects[i].rules_out) + " more would be possible.");
  }
  for (const auto& one : r.next) {
    auto o = reading_document(p, one.what);
    o.set("text", what_text(p, one.what));
    o.set("expected_remaining_count", one.expected_remaining);
    o.set("expected_entropy_bits", one.expected_entropy_bits);
    next.push_back(o);
  }
  if (!r.next.empty())
    text.push_back("The reading that would tell most: " + what_text(p, r.next[0].what) + ". It leaves " + number_text(r.next[0].expected_remaining, 3) +
                   " of " + std::to_string(n) + " wirings on average." +
                   (r.next[0].what.continuity() ? " With everything isolated and proved dead, loads disconnected."
                                                : " A live reading: only by who is competent for it, with guarded probes."));
  else if (n > 1 && r.complete) text.push_back("No further reading at these conductors is sure to tell them apart.");
  if (any_high)
    text.push_back(
        "Voltages read with a high impedance, or with a meter that was not stated, prove little: a floating conductor can show anything up to the full "
        "voltage. Repeat what matters with a two-pole tester.");

  if (any_live)
    text.push_back("Loads are taken to be unplugged. A neutral that is cut off from the board is live through any load left in, and reads as a line does.");

  const std::string at = in.has("isolation_point") ? in.text("isolation_point") : std::string();
  const std::string point =
      at.empty() ? "the main switch of the installation, since the circuit's own device is not known to cut everything here"
                 : at + (other_circuit ? ", and the main switch of the installation as well: a conductor of another circuit is not ruled out here" : "");
  precautions.push_back("Isolation point: " + point + ". Lock it off and keep the key.");
  precautions.push_back(
      "All poles: prove dead every conductor at the point, line, neutral, strapper and unused, each to earth and to every other, in every position of every "
      "switch. A neutral or an unused conductor may be live.");
  precautions.push_back(
      "Proving unit: check the two-pole tester on a proving unit or a known supply immediately before and immediately after. A dead reading without both "
      "proves nothing.");
  for (const auto& line : precautions) text.push_back(line);
  text.push_back("What is listed here are wirings that explain readings. None of it is a proof that a conductor is dead.");
  return object{{"count", n},
                {"complete", r.complete},
                {"explained", n > 0},
                {"conductors", conductors},
                {"wirings", wirings},
                {"wirings_left_off_count", n > most_listed ? n - most_listed : std::size_t{0}},
                {"roles", roles},
                {"readings", effects},
                {"next_readings", next},
                {"distinguishable_count", r.distinguishable_count},
                {"conflict", numbers_list(r.conflict)},
                {"suspects", numbers_list(r.suspects)},
                {"isolation_point", point},
                {"precautions", precautions},
                {"text", text}};
}
constexpr model switched_feed_model{{"switched_feed_logic",
                                     "Every listed wiring that explains what is live, dead and continuous at an accessory point in each position of its "
                                     "switches; what rules out the others, and the "
                                     "reading that would tell the rest apart best. It proves no conductor dead.",
                                     switched_arguments,
                                     {"logic of switched circuits", "enumeration of all assignments", "derived"},
                                     run_switched,
                                     nullptr}};

}  // namespace

void switching(std::vector<entry>& all) { append(all, "electrical", list<switched_feed_model>{}); }

}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// A visit's readings become findings: which checks apply, what they are given, what is said in plain words.
#include <fmt/format.h>
#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/job/assess.hpp>
#include <makegood/registry.hpp>
#include <makegood/sensing/list.hpp>
#include <makegood/version.hpp>
#include <algorithm>
#include <set>

namespace makegood {
inline namespace v1 {
namespace job {

// ---- reading a visit -------------------------------------------------------------------------------------------------

namespace {

/// Ids must be unique, and what is referred to must exist.
template <class List>
std::set<std::string> ids_of(const List& list, const std::string& path, std::vector<problem>& problems) {
  std::set<std::string> ids;
  for (std::size_t i = 0; i < list.size(); ++i)
    if (!ids.insert(list[i].id).second && !list[i].id.empty())
      problems.push_back({detail::indexed(path, i) + ".id", "\"" + list[i].id + "\" stands twice"});
  return ids;
}
/// What is referred to must exist; where a list of ids has a problem of its own, that one is said alone.
void demand_id(const std::set<std::string>& ids, const std::string& id, const std::string& path, std::vector<problem>& problems) {
  if (id.empty() || ids.count(id) || ids.count("")) return;
  std::vector<std::string_view> names(ids.begin(), ids.end());
  const std::string near = nearest(id, names);
  problems.push_back({path, "refers to \"" + id + "\", which is not in the visit" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
}

class instrument_shelf {
 public:
  instrument_shelf(const visit& v, std::vector<problem>& problems) : visit_(v), problems_(problems) {
    ids_ = ids_of(v.instruments, "instruments", problems);
    for (std::size_t i = 0; i < v.instruments.size(); ++i)
      for (std::size_t j = 0; j < v.instruments[i].functions.size(); ++j) {
        const auto& a = v.instruments[i].functions[j];
        const std::string at = detail::indexed(detail::indexed("instruments", i) + ".accuracy", j);
        for (std::size_t k = 0; k < j; ++k)
          if (!a.reads_what.empty() && v.instruments[i].functions[k].reads_what == a.reads_what && v.instruments[i].functions[k].range == a.range)
            problems.push_back({at + ".reads", "\"" + a.reads_what + "\" stands twice for one instrument" + (a.range > 0 ? " and range" : "")});
        if (std::any_of(problems.begin(), problems.end(), [&](const problem& p) { return p.path.starts_with(at); })) continue;
        if (a.counts > 0 && !(a.resolution > 0)) problems.push_back({at, "states counts but not the resolution, the size of one count"});
        else if (a.has_leads() && a.reads_what != "continuity" && a.reads_what != "resistance" && a.reads_what != "loop_impedance")
          problems.push_back({at, "has leads that were not nulled: that is for \"continuity\", \"resistance\" and \"loop_impedance\""});
        else if (!a.nulled && !(a.leads_ohm > 0)) problems.push_back({at, "was not nulled: give leads_ohm, the resistance of the leads"});
        else if (a.nulled && a.leads_ohm > 0) problems.push_back({at, "states leads_ohm but not that they lie in the readings: \"nulled\": false"});
        else if (a.operating_edition && !(a.percent > 0)) problems.push_back({at, "states operating_edition but not percent, the operating uncertainty"});
        else if (a.exact && a.says_something()) problems.push_back({at, "is exact and states an accuracy: leave one of them out"});
        else if (!a.exact && !a.says_something())
          problems.push_back({at, "states no accuracy: give percent, counts with resolution, limit or standard_uncertainty (or leave the function out: "
                                  "the worst case of its class is then assumed)"});
      }
  }
  /// Gives a reading the statement of its instrument for what it reads.
  void attach(reading& r, reads kind) {
    if (!r.instrument.empty()) demand_id(ids_, r.instrument, r.label + ".instrument", problems_);
    if (r.kind == "told") {  // hearsay is no measurement
      r.is = reading::state::not_measured;
      r.number = no_number;
    } else if (r.kind == "estimated" && r.instrument.empty()) {
      r.instrument = "an estimate";
      r.statement = accuracy{20.0};
      return;
    }
    const auto* typical = class_of(kind);
    for (const auto& i : visit_.instruments) {
      if (i.id != r.instrument) continue;
      v1::instrument known{i.id};
      for (const auto& a : i.functions)
        if (typical && a.reads_what == typical->key) known.functions.push_back({kind, a.statement()});
      if (const accuracy* a = known.statement_for(kind, r.number)) r.statement = *a;
    }
  }

 private:
  const visit& visit_;
  std::vector<problem>& problems_;
  std::set<std::string> ids_;
};

template <class S>
void attach_all(S& s, instrument_shelf& shelf) {
  S::fields([&](std::string_view, auto member, const field& f) {
    if constexpr (std::is_same_v<std::remove_cvref_t<decltype(s.*member)>, reading>) shelf.attach(s.*member, f.instrument);
  });
}

}  // namespace

void check_inquiry(const visit& v, std::size_t i, std::vector<problem>& problems);  // families.cpp

visit read_visit(const document::value& d) {
  visit v;
  detail::reader r;
  r.object(d, "", v, "$schema");
  instrument_shelf shelf(v, r.problems);
  attach_all(v.incoming, shelf);
  const auto rooms = ids_of(v.rooms, "rooms", r.problems);
  const auto circuits = ids_of(v.circuits, "circuits", r.problems);
  const auto appliances = ids_of(v.appliances, "appliances", r.problems);
  ids_of(v.sensors, "sensors", r.problems);
  ids_of(v.fans, "fans", r.problems);
  ids_of(v.inquiries, "inquiries", r.problems);
  for (std::size_t i = 0; i < v.inquiries.size(); ++i)
    if (r.problems.empty()) check_inquiry(v, i, r.problems);
  for (auto& c : v.circuits) attach_all(c, shelf);
  for (std::size_t i = 0; i < v.appliances.size(); ++i) {
    attach_all(v.appliances[i], shelf);
    demand_id(circuits, v.appliances[i].circuit_id, detail::indexed("appliances", i) + ".circuit", r.problems);
  }
  for (std::size_t i = 0; i < v.sensors.size(); ++i) {
    attach_all(v.sensors[i], shelf);
    demand_id(appliances, v.sensors[i].appliance_id, detail::indexed("sensors", i) + ".appliance", r.problems);
  }
  for (std::size_t i = 0; i < v.fans.size(); ++i) {
    attach_all(v.fans[i], shelf);
    demand_id(rooms, v.fans[i].room_id, detail::indexed("fans", i) + ".room", r.problems);
  }
  if (!r.problems.empty()) throw document_error(r.problems);
  return v;
}

document::value visit_schema() {
  auto schema = detail::schema_of_structure<visit>();
  document::object head{{"$schema", "https://json-schema.org/draft/2020-12/schema"}, {"title", "makegood visit"}};
  auto& body = std::get<document::object>(schema.is);
  for (auto& f : body.fields) {
    if (f.first == "properties") std::get<document::object>(f.second.is).set("$schema", document::object{{"type", "string"}});
    head.set(f.first, f.second);
  }
  return head;
}

// ---- assessing -------------------------------------------------------------------------------------------------------

namespace {

/// What a check is called in plain words, and what its outcomes mean to the reader.
struct wording {
  std::string_view question, pass, fail;  // {s} subject, {v} value, {l} limit
};

std::string limit_words(const verdict& v) {
  const int n = v.digits();
  if (!is_nan(v.lower) && !is_nan(v.upper)) return fmt::format("{} to {}", quantity_text(v.lower, v.unit(), n), quantity_text(v.upper, v.unit(), n));
  return quantity_text(v.limit(), v.unit(), n);
}

class assessor {
 public:
  assessor(const visit& v, const rulebook& rules, const decision_rule& rule) : visit_(v), rules_(rules), rule_(rule) {
    a_.title = v.title;
    a_.place = v.place;
    a_.date = v.date;
    a_.rulebook = rules.id();
    a_.decision_rule = rule.name();
    a_.invented = v.invented;
    a_.cautions = {
        "Not a substitute for a competent person: local codes and licensed practice come first.",
        "Prove dead before touching: isolate, lock off, and prove the tester before and after.",
        "Verdicts are suggestions from readings as given; this is not a certificate or condition report.",
    };
  }

  assessment run() {
    for (std::size_t i = 0; i < visit_.circuits.size(); ++i) circuit_checks(visit_.circuits[i], detail::indexed("circuits", i));
    for (std::size_t i = 0; i < visit_.appliances.size(); ++i) appliance_checks(visit_.appliances[i], detail::indexed("appliances", i));
    for (std::size_t i = 0; i < visit_.sensors.size(); ++i) {
      const std::string path = detail::indexed("sensors", i);
      ask(path, visit_.sensors[i].name, ask_sensor, sensing::check_ntc_sensor, [&] { sensor_check(visit_.sensors[i], path); });
    }
    for (std::size_t i = 0; i < visit_.fans.size(); ++i) fan_checks(visit_.fans[i], detail::indexed("fans", i));
    return std::move(a_);
  }

 private:
  const visit& visit_;
  const rulebook& rules_;
  decision_rule rule_;
  assessment a_;
  std::vector<working> before_;  // working that leads to the next finding
  remark doubt_{};               // a formula on that way was used outside the range in which it is known to hold

  /// A formula on the way to the value that is judged: its working is kept.
  template <class F, class... X>
  measured through(const F& f, const X&... x) {
    static_assert(sizeof...(X) == F::count);
    static const formula_info& info = entry_of(f).formula;
    return through_info(info, {measured(x)...});
  }
  measured through_info(const formula_info& f, const std::vector<measured>& x) {
    std::vector<double> v, slopes(x.size());
    for (const auto& m : x) v.push_back(m.value);
    if (const fault bad = f.check(f.self, v.data())) throw range_error(f.refusal(f.self, bad, v.data()));
    const double y = f.gradient(f.self, v.data(), slopes.data());
    if (!is_finite(y)) throw range_error(f.refusal(f.self, {fault::what::no_result, -1}, v.data()));
    before_.push_back(f.work(f.self, v.data()));
    if (!doubt_.set()) doubt_ = f.doubt(f.self, v.data());
    return combine(y, slopes.data(), x.data(), x.size());
  }
  /// A check, its arguments in order.
  template <class C>
  verdict judge(const C& check, std::initializer_list<given> x, const rulebook& rules) const {
    static const check_info& info = entry_of(check).check;
    return v1::detail::judge(info, std::vector<given>(x), rules, rule_);
  }
  template <class C>
  static const check_info& info_of(const C& check) {
    static const check_info& info = entry_of(check).check;
    return info;
  }
  static measured number_of(const reading& r, reads kind, std::string_view what) { return to_measured(r, kind, what); }

  /// Asks one question. A number that a formula refuses ends this question, not the visit.
  template <class C, class Answer>
  void ask(const std::string& path, const std::string& subject, std::string_view question, const C& check, Answer answer) {
    try {
      answer();
    } catch (const error& e) {
      before_.clear();
      doubt_ = {};
      unanswered(path, subject, question, info_of(check), reason::outside_validity, e.what());
      finding& f = a_.findings.back();
      f.next = "look at the numbers given once more: " + std::string(e.what());
      f.verdict.said = std::make_shared<const verdict::words>(verdict::words{f.verdict.detail(), {}, f.next});
    }
  }

  void add(const std::string& path, const std::string& subject, const wording& w, verdict v) {
    if (doubt_.set() && !is_nan(v.value)) {
      v.outcome = outcome::undecided;
      v.reason = reason::outside_validity;
      v.said = std::make_shared<const verdict::words>(verdict::words{
          fmt::format("{}: {}{}", doubt_.formula,
                      doubt_.argument.empty() ? "" : fmt::format("{} = {}: ", doubt_.argument, quantity_text(doubt_.at, doubt_.unit, 5)), doubt_.text),
          std::string(doubt_.text), "measure it instead of calculating it"});
    }
    finding f;
    f.path = path;
    f.subject = subject;
    f.question = w.question;
    f.next = v.settle();
    f.before = std::move(before_);
    before_.clear();
    doubt_ = {};
    std::string value = is_nan(v.value) ? std::string() : (v.censored().empty() ? "" : std::string(v.censored()) + " ") + quantity_text(v.value, v.unit(), v.digits());
    if (v.censored() == "no trip") value = "no trip at all";
    const auto say = [&](std::string_view words_) {
      return fmt::format(fmt::runtime(words_), fmt::arg("s", subject), fmt::arg("v", value), fmt::arg("l", limit_words(v)));
    };
    const bool against_reading = (v.outcome == outcome::pass && v.plain == outcome::fail) || (v.outcome == outcome::fail && v.plain == outcome::pass);
    if (against_reading) f.plain = fmt::format("{} (rule \"{}\"). As read: {}", v.outcome == outcome::pass ? "Accepted, since failure is not proved" : "Rejected, since conformity is not proved",
                                               v.decided_by.name(), say(v.plain == outcome::pass ? w.pass : w.fail));
    else if (v.outcome == outcome::pass) f.plain = say(w.pass);
    else if (v.outcome == outcome::fail) f.plain = say(w.fail);
    else if (v.reason == reason::straddles_limit && v.plain == outcome::fail)
      f.plain = "Does not meet the limit as read, but the reading is too uncertain to prove it: " + say(w.fail);
    else if (v.reason == reason::straddles_limit)
      f.plain = "Not proved either way: the reading is too uncertain. As read: " + say(w.pass);
    else if (v.reason == reason::outside_validity && !is_nan(v.value)) f.plain = fmt::format("Not known: {}. Calculated all the same: {}", v.doubt(), say(v.plain == outcome::fail ? w.fail : w.pass));
    else f.plain = fmt::format("Not known: {}.", v.detail().empty() ? std::string(reason_text(v.reason)) : v.detail());
    f.verdict = std::move(v);
    a_.findings.push_back(std::move(f));
  }
  /// A question that cannot be asked yet, and what is wanting.
  void unanswered(const std::string& path, const std::string& subject, std::string_view question, const check_info& info, reason why,
                  std::string wanting) {
    verdict v;
    v.info = &info;
    v.book = rules_;
    v.reason = why;
    v.said = std::make_shared<const verdict::words>(verdict::words{
        wanting, {},
        (why == reason::needs_makers_figure ? "find the maker's figure: " : why == reason::precondition_missing ? "take " : "measure or find out: ") + wanting});
    add(path, subject, {question, "", ""}, std::move(v));
  }

  std::optional<measured> current_of(const circuit& c) {
    if (c.design_current_a) return measured(*c.design_current_a);
    if (!c.power_w) return {};
    return through(electrical::design_current, *c.power_w, visit_.incoming.nominal_voltage_v, c.power_factor);
  }

  static constexpr std::string_view ask_drop = "Does the cable keep the voltage up?";
  static constexpr std::string_view ask_adiabatic = "Does the protective conductor survive a fault?";
  static constexpr std::string_view ask_loop = "Does a fault to earth disconnect in time?";
  static constexpr std::string_view ask_insulation = "Is the insulation of the cable sound?";
  static constexpr std::string_view ask_rcd = "Does the residual current device trip in time?";
  static constexpr std::string_view ask_element = "Is the heating element whole?";
  static constexpr std::string_view ask_screen = "Is the element insulated from its screen or body?";
  static constexpr std::string_view ask_sensor = "Does the sensor say what the controller expects?";
  static constexpr std::string_view ask_extract = "Does the fan move the air that the room needs?";
  static constexpr std::string_view ask_changes = "Does the fan change the air of a room without an outside wall often enough?";
  static constexpr std::string_view ask_discharge = "Does the air that the fan takes out go where the rules let it?";
  static constexpr std::string_view ask_overrun = "Does the fan run on for long enough?";
  static constexpr std::string_view ask_duct = "Can the fan push the air through this duct?";

  void circuit_checks(const circuit& c, const std::string& path) {
    ask(path, c.name, ask_drop, electrical::check_voltage_drop, [&] { voltage_drop_of(c, path); });
    ask(path, c.name, ask_adiabatic, electrical::check_adiabatic, [&] { adiabatic_of(c, path); });
    ask(path, c.name, ask_loop, electrical::check_loop_impedance, [&] { loop_impedance_of(c, path); });
    ask(path, c.name, ask_insulation, electrical::check_insulation, [&] {
      insulation_of(c.insulation_mohm, path, c.name,
                    {ask_insulation, "The insulation reads {v}; at least {l} are asked for.",
                     "The insulation reads {v}; at least {l} are asked for. Do not energise."});
    });
    if (c.rcd_kind != "none")
      ask(path, c.name, ask_rcd, electrical::check_rcd_trip, [&] {
        add(path, c.name,
            {ask_rcd, "It trips in {v}; {l} are allowed.", "It does not trip in time: {v}, where {l} are allowed. Do not rely on it."},
            judge(electrical::check_rcd_trip, {given_of(c.rcd_trip_ms), c.rcd_kind}, rules_));
      });
  }

  void insulation_of(const reading& r, const std::string& path, const std::string& subject, const wording& w) {
    if (r.has_number() && r.circuit_state == "live")
      return unanswered(path, subject, w.question, info_of(electrical::check_insulation), reason::precondition_missing,
                        "a reading with the circuit dead, isolated and its electronics taken off (this one is marked live)");
    add(path, subject, w, judge(electrical::check_insulation, {given_of(r), "up_to_500_v"}, rules_));
  }

  void voltage_drop_of(const circuit& c, const std::string& path) {
    constexpr auto question = ask_drop;
    const auto& info = info_of(electrical::check_voltage_drop);
    if (!c.length_m.has_number()) return unanswered(path, c.name, question, info, reason::not_measured, "the length of the cable run");
    if (!c.wiring.drop_mv_per_a_m && !c.wiring.resistance_mohm_per_m)
      return unanswered(path, c.name, question, info, reason::not_measured, "the size and type of the cable (its tabulated drop, or its resistance per metre)");
    const auto current = current_of(c);
    if (!current) return unanswered(path, c.name, question, info, reason::not_measured, "the design current or the power of the load");
    const measured length = number_of(c.length_m, reads::length, "length_m");
    measured drop;
    if (c.wiring.drop_mv_per_a_m) drop = through(electrical::voltage_drop, measured(*c.wiring.drop_mv_per_a_m), *current, length);
    else
      drop = through(electrical::voltage_drop_impedance, measured(*c.wiring.resistance_mohm_per_m), measured(c.wiring.reactance_mohm_per_m), *current, length,
                     measured(c.power_factor), measured(2.0));
    add(path, c.name,
        {question, "The cable loses {v} of the {l} that are allowed at the design current.",
         "The cable loses {v} at the design current; {l} are allowed."},
        judge(electrical::check_voltage_drop, {drop, measured(visit_.incoming.nominal_voltage_v), c.load_kind, measured(c.length_m.number)}, rules_));
  }

  void adiabatic_of(const circuit& c, const std::string& path) {
    constexpr auto question = ask_adiabatic;
    const auto& info = info_of(electrical::check_adiabatic);
    if (!c.wiring.cpc_area_mm2 || !c.wiring.k)
      return unanswered(path, c.name, question, info, reason::not_measured, "the area of the protective conductor and its k (material, insulation, arrangement)");
    measured energy;
    if (c.protection.let_through_a2s) {
      energy = *c.protection.let_through_a2s;
    } else if (!c.protection.operating_time_s || *c.protection.operating_time_s < 0.1) {
      return unanswered(path, c.name, question, info, reason::needs_makers_figure,
                        "the energy that the device lets through at the fault current (below 0.1 s the time alone does not tell)");
    } else if (!c.loop_impedance_ohm.has_number()) {
      return unanswered(path, c.name, question, info, reason::not_measured, "the earth fault loop impedance, from which the fault current follows");
    } else {
      const measured loop = number_of(c.loop_impedance_ohm, reads::loop_impedance, "loop_impedance_ohm");
      const measured current = through(electrical::prospective_fault_current, measured(visit_.incoming.nominal_voltage_v), loop);
      energy = through(electrical::fault_energy, current, measured(*c.protection.operating_time_s));
    }
    add(path, c.name,
        {question, "A fault lets through {v}; the conductor bears {l}.", "A fault lets through {v}; the conductor bears only {l}."},
        judge(electrical::check_adiabatic, {measured(*c.wiring.cpc_area_mm2), measured(*c.wiring.k), energy}, rules_));
  }

  void loop_impedance_of(const circuit& c, const std::string& path) {
    constexpr auto question = ask_loop;
    const auto& info = info_of(electrical::check_loop_impedance);
    if (!c.protection.operating_current_a)
      return unanswered(path, c.name, question, info, reason::needs_makers_figure, "the current that operates the protective device in the required time");
    given loop = given_of(c.loop_impedance_ohm);
    if (c.loop_impedance_ohm.is == reading::state::value && c.loop_impedance_ohm.circuit_state == "cold") {
      const measured cold = number_of(c.loop_impedance_ohm, reads::loop_impedance, "loop_impedance_ohm");
      measured external(0.0);  // not known: the factor on the whole loop is on the safe side
      if (const auto& r = visit_.incoming.external_loop_impedance_ohm; r.is == reading::state::value && r.number <= cold.value)
        external = number_of(r, reads::loop_impedance, "external_loop_impedance_ohm");
      loop = through(electrical::warm_loop_impedance, cold, external, measured(1.2));
    }
    add(path, c.name,
        {question, "The fault loop has {v}; up to {l} the device disconnects in time.",
         "The fault loop has {v}; only up to {l} does the device disconnect in time."},
        judge(electrical::check_loop_impedance, {loop, measured(visit_.incoming.nominal_voltage_v), measured(*c.protection.operating_current_a)}, rules_));
  }

  void appliance_checks(const appliance& a, const std::string& path) {
    ask(path, a.name, ask_element, heating::check_element_resistance, [&] { element_of(a, path); });
    ask(path, a.name, ask_screen, electrical::check_insulation, [&] {
      insulation_of(a.insulation_mohm, path, a.name,
                    {ask_screen, "Its insulation reads {v}; at least {l} are asked for.",
                     "Its insulation reads {v}; at least {l} are asked for. Do not energise."});
    });
  }

  void element_of(const appliance& a, const std::string& path) {
    constexpr auto question = ask_element;
    const auto& info = info_of(heating::check_element_resistance);
    if (!a.rated_power_w || !a.rated_voltage_v) {
      unanswered(path, a.name, question, info, reason::not_measured, "the rated power and voltage on the plate");
    } else if (!a.resistance_ohm.has_number()) {
      unanswered(path, a.name, question, info, reason::not_measured, "the resistance of the element, dead and disconnected");
    } else if (a.resistance_ohm.circuit_state == "live") {
      unanswered(path, a.name, question, info, reason::precondition_missing, "a reading of the element dead and disconnected (this one was taken live)");
    } else {
      rulebook book = rules_;
      if (a.lower_tolerance_percent && a.upper_tolerance_percent)
        book = rules_.with({"maker's tolerance", "element_resistance_band", "", comparator::within,
                            {*a.lower_tolerance_percent, *a.upper_tolerance_percent}, "as stated for " + a.name});
      add(path, a.name,
          {question, "The element reads {v}, inside {l}.", "The element reads {v}; whole, it lies within {l}."},
          judge(heating::check_element_resistance, {given_of(a.resistance_ohm), measured(*a.rated_power_w), measured(*a.rated_voltage_v), measured(a.mats_count), measured(a.cold_tail_ohm)}, book));
    }
  }

  void sensor_check(const sensor& s, const std::string& path) {
    constexpr auto question = ask_sensor;
    const auto& info = info_of(sensing::check_ntc_sensor);
    const auto want = [&](reason why, const char* what) { unanswered(path, s.name, question, info, why, what); };
    if (!s.curve) return want(reason::needs_makers_figure, "the curve that the controller expects");
    const auto& c = *s.curve;
    const wording words_{question, "It reads {v}, inside the {l} of its curve at that temperature.", "It reads {v}; its curve gives {l} at that temperature."};
    const given ohm = given_of(s.resistance_ohm), at = given_of(s.temperature_c);
    const auto number = [](const std::optional<double>& x) { return given(measured(*x)); };
    if (c.kind == "ntc" && c.reference_ohm && c.beta_k)
      return add(path, s.name, words_,
                 judge(sensing::check_ntc_sensor, {ohm, at, number(c.reference_ohm), measured(c.reference_c.value_or(25.0)), number(c.beta_k)}, {}));
    if (c.kind == "steinhart_hart" && c.a && c.b && c.c)
      return add(path, s.name, words_, judge(sensing::check_steinhart_hart_sensor, {ohm, at, number(c.a), number(c.b), number(c.c)}, {}));
    if (c.kind == "rtd" && c.r0_ohm) return add(path, s.name, words_, judge(sensing::check_rtd_sensor, {ohm, at, number(c.r0_ohm)}, {}));
    if (c.kind == "silicon_ptc" && c.reference_ohm)
      return add(path, s.name, words_, judge(sensing::check_silicon_ptc_sensor, {ohm, at, number(c.reference_ohm)}, {}));
    want(reason::needs_makers_figure, "the constants of the sensor's curve");
  }

  void fan_checks(const fan& f, const std::string& path) {
    const room* at = nullptr;
    for (const auto& r : visit_.rooms)
      if (r.id == f.room_id) at = &r;
    if (!at) return;
    if (at->kind != "other")
      ask(path, f.name, ask_extract, air::check_extract, [&] {
        add(path, f.name, {ask_extract, "It moves {v}; at least {l} are asked for.", "It moves {v}; at least {l} are asked for."},
            judge(air::check_extract, {given_of(f.flow_l_per_s), at->kind}, rules_));
      });
    if (!at->outside_wall)
      ask(path, f.name, ask_changes, air::check_air_changes, [&] {
        const auto volume = at->volume();
        if (!volume)
          return unanswered(path, f.name, ask_changes, info_of(air::check_air_changes), reason::not_measured, "the length, width and height of the room");
        add(path, f.name,
            {ask_changes, "It changes the air at a rate of {v}; at least {l} are asked for.", "It changes the air at a rate of {v}; at least {l} are asked for."},
            judge(air::check_air_changes, {given_of(f.flow_l_per_s), measured(*volume)}, rules_));
      });
    if (f.discharge_to != "not_seen")
      ask(path, f.name, ask_discharge, air::check_discharge_outside, [&] {
        add(path, f.name, {ask_discharge, "It blows to where the rulebook lets it.", "It does not blow to the outside, as the rulebook asks."}, judge(air::check_discharge_outside, {f.discharge_to}, rules_));
      });
    if (f.overrun_min && !at->outside_wall)
      ask(path, f.name, ask_overrun, air::check_overrun, [&] {
        add(path, f.name, {ask_overrun, "It runs on for {v}; at least {l} are asked for.", "It runs on for {v}; at least {l} are asked for."},
            judge(air::check_overrun, {measured::exact(*f.overrun_min), "no_outside_wall"}, rules_));
      });
    if (!f.duct.empty()) ask(path, f.name, ask_duct, air::check_duct_pressure, [&] { duct_check(f, *at, path); });
  }

  void duct_check(const fan& f, const room& at, const std::string& path) {
    constexpr auto question = ask_duct;
    const auto& info = info_of(air::check_duct_pressure);
    if (!f.available_pressure_pa)
      return unanswered(path, f.name, question, info, reason::needs_makers_figure, "the pressure that the fan gives at the flow asked for");
    const auto asked = rules_.find("extract_rate", at.kind);
    measured flow;
    if (asked.found()) flow = measured(asked.numbers()[0]);
    else if (f.flow_l_per_s.is == reading::state::value) flow = number_of(f.flow_l_per_s, reads::airflow, "flow_l_per_s");
    else return unanswered(path, f.name, question, info, reason::no_rule_in_book, "the flow that the room needs");
    const measured density = through(air::air_density, measured(f.air_temperature_c), measured(f.relative_humidity_percent), measured(f.air_pressure_pa));
    const measured viscosity = through(air::air_viscosity, measured(f.air_temperature_c));
    measured total(0.0);
    for (std::size_t i = 0; i < f.duct.size(); ++i) {
      const auto& part = f.duct[i];
      measured loss, velocity;
      const measured length(part.length_m), roughness(part.roughness_mm);
      if (part.diameter_mm) {
        const measured diameter(*part.diameter_mm);
        velocity = through(air::duct_velocity, flow, diameter);
        loss = through(air::duct_pressure_loss, flow, diameter, length, roughness, density, viscosity);
        if (part.compression_percent > 0.0)
          loss = through(air::flexible_duct_multiplier, measured(part.compression_percent), diameter).value * loss;
      } else if (part.width_mm && part.height_mm) {
        const measured width(*part.width_mm), height(*part.height_mm);
        velocity = through(air::duct_velocity_rectangular, flow, width, height);
        loss = through(air::duct_pressure_loss_rectangular, flow, width, height, length, roughness, density, viscosity);
      } else {
        before_.clear();
        doubt_ = {};
        return unanswered(path, f.name, question, info, reason::not_measured,
                          fmt::format("the diameter, or the width and height, of duct[{}]{}", i, part.name.empty() ? "" : " (" + part.name + ")"));
      }
      total = total + loss;
      if (part.loss_coefficient > 0.0)
        total = total + through(air::fitting_pressure_loss, measured(part.loss_coefficient), velocity, density);
    }
    add(path, f.name,
        {question, "The duct takes {v} at the flow asked for; the fan gives {l}.", "The duct takes {v} at the flow asked for; the fan gives only {l}."},
        judge(air::check_duct_pressure, {total, measured(*f.available_pressure_pa)}, {}));
  }

  static given given_of(const reading& r) { return given(r); }
};

}  // namespace

assessment assess(const visit& v, const rulebook& rules, const decision_rule& rule) { return assessor(v, rules, rule).run(); }

document::value to_document(const assessment& a) {
  document::array findings, cautions;
  for (const auto& c : a.cautions) cautions.push_back(c);
  for (const auto& f : a.findings) {
    document::array before;
    std::set<std::string> said;  // density or a temperature in kelvin is worked once a finding, not once a part of the duct
    for (working w : f.before) {
      std::erase_if(w.steps, [&](const step& one) { return !said.insert(one.symbol + "=" + one.equation + "=" + one.substituted).second; });
      append_steps(before, w);
    }
    findings.push_back(document::object{{"path", f.path},
                                        {"subject", f.subject},
                                        {"question", f.question},
                                        {"plain", f.plain},
                                        {"next", f.next},
                                        {"outcome", outcome_text(f.verdict.outcome)},
                                        {"reason", reason_text(f.verdict.reason)},
                                        {"before", before},
                                        {"verdict", v1::to_document(f.verdict)}});
  }
  return document::object{{"format", "makegood-assessment-1"},
                          {"version", version},
                          {"title", a.title},
                          {"place", a.place},
                          {"date", a.date},
                          {"invented", a.invented},
                          {"rulebook", a.rulebook},
                          {"decision_rule", a.decision_rule},
                          {"summary", document::object{{"pass", a.count(outcome::pass)}, {"fail", a.count(outcome::fail)}, {"undecided", a.count(outcome::undecided)}}},
                          {"cautions", cautions},
                          {"findings", findings}};
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

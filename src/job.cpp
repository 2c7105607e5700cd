// SPDX-License-Identifier: MIT
// A visit's readings become findings: which checks apply, what they are given, what is said in plain words.
#include <fmt/format.h>
#include <makegood/catalogue.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/job/assess.hpp>
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
    if (!list[i].id.empty() && !ids.insert(list[i].id).second)
      problems.push_back({detail::indexed(path, i) + ".id", "\"" + list[i].id + "\" stands twice"});
  return ids;
}
void demand_id(const std::set<std::string>& ids, const std::string& id, const std::string& path, std::vector<problem>& problems) {
  if (id.empty() || ids.count(id)) return;
  std::vector<std::string_view> names(ids.begin(), ids.end());
  const std::string near = nearest(id, names);
  problems.push_back({path, "refers to \"" + id + "\", which is not in the visit" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
}

class instrument_shelf {
 public:
  instrument_shelf(const visit& v, std::vector<problem>& problems) : visit_(v), problems_(problems) {
    ids_ = ids_of(v.instruments, "instruments", problems);
  }
  /// Gives a reading the statement of its instrument for what it reads.
  void attach(reading& r, reads kind) {
    demand_id(ids_, r.instrument, r.label + ".instrument", problems_);
    const auto* typical = class_of(kind);
    for (const auto& i : visit_.instruments) {
      if (i.id != r.instrument) continue;
      for (const auto& a : i.functions)
        if (typical && a.reads_what == typical->key) r.statement = a.statement();
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

std::string quantity(double x, std::string_view u) { return quantity_text(x, u, 4); }

std::string limit_words(const verdict& v) {
  if (!is_nan(v.lower) && !is_nan(v.upper)) return fmt::format("{} to {}", quantity(v.lower, v.unit), quantity(v.upper, v.unit));
  return quantity(v.limit(), v.unit);
}

class assessor {
 public:
  assessor(const visit& v, const rulebook& rules) : visit_(v), rules_(rules) {
    a_.title = v.title;
    a_.place = v.place;
    a_.date = v.date;
    a_.rulebook = rules.id();
    a_.invented = v.invented;
    a_.cautions = {
        "Not a substitute for a competent person: local codes and licensed practice come first.",
        "Prove dead before touching: isolate, lock off, and prove the tester before and after.",
        "Verdicts are suggestions from readings as given; this is not a certificate or condition report.",
    };
  }

  assessment run() {
    for (std::size_t i = 0; i < visit_.circuits.size(); ++i) circuit_checks(visit_.circuits[i], detail::indexed("circuits", i));
    return std::move(a_);
  }

 private:
  const visit& visit_;
  const rulebook& rules_;
  assessment a_;
  std::vector<working> before_;

  /// A formula on the way to the value that is judged: its working is kept.
  template <class F, class... X>
  measured through(const F& f, const X&... x) {
    const auto v = f.numbers(x...);
    measured y;
    if constexpr (F::has_aggregate) y = f(typename F::template arguments<measured>{x...});
    else y = f(measured(x)...);
    before_.push_back(work(f, v.data()));
    return y;
  }
  static measured number_of(const reading& r, reads kind, std::string_view what) { return to_measured(r, kind, what); }

  void add(const std::string& path, const std::string& subject, const wording& w, verdict v) {
    finding f;
    f.path = path;
    f.subject = subject;
    f.question = w.question;
    f.next = v.settle;
    f.before = std::move(before_);
    before_.clear();
    const std::string value = is_nan(v.value) ? std::string() : (v.censored.empty() ? "" : v.censored == "no trip" ? "no trip within " : v.censored + " ") + quantity(v.value, v.unit);
    const auto say = [&](std::string_view words_) {
      return fmt::format(fmt::runtime(words_), fmt::arg("s", subject), fmt::arg("v", value), fmt::arg("l", limit_words(v)));
    };
    if (v.outcome == outcome::pass) f.plain = say(w.pass);
    else if (v.outcome == outcome::fail) f.plain = say(w.fail);
    else if (v.reason == reason::straddles_limit && v.plain == outcome::fail)
      f.plain = "Does not meet the limit as read, but the reading is too uncertain to prove it: " + say(w.fail);
    else if (v.reason == reason::straddles_limit)
      f.plain = "Not proved either way: the reading is too uncertain. As read: " + say(w.pass);
    else f.plain = fmt::format("Not known: {}.", v.detail.empty() ? reason_text(v.reason) : v.detail);
    f.verdict = std::move(v);
    a_.findings.push_back(std::move(f));
  }
  /// A question that cannot be asked yet, and what is wanting.
  void unanswered(const std::string& path, const std::string& subject, std::string_view question, const check_info& info, reason why,
                  std::string wanting) {
    verdict v;
    v.check = info.name;
    v.info = info;
    v.unit = info.result.unit.symbol;
    v.caution = info.caution;
    v.rulebook = rules_.id();
    v.reason = why;
    v.detail = wanting;
    v.settle = (why == reason::needs_makers_figure ? "find the maker's figure: " : "measure or find out: ") + wanting;
    add(path, subject, {question, "", ""}, std::move(v));
  }

  std::optional<measured> current_of(const circuit& c) {
    if (c.design_current_a) return measured(*c.design_current_a);
    return {};
  }

  void circuit_checks(const circuit& c, const std::string& path) {
    voltage_drop_of(c, path);
  }

  void voltage_drop_of(const circuit& c, const std::string& path) {
    constexpr std::string_view question = "Does the cable keep the voltage up?";
    const auto info = electrical::check_voltage_drop.info();
    if (!c.length_m.has_number()) return unanswered(path, c.name, question, info, reason::not_measured, "the length of the cable run");
    if (!c.wiring.drop_mv_per_a_m)
      return unanswered(path, c.name, question, info, reason::not_measured, "the size and type of the cable (its tabulated drop)");
    const auto current = current_of(c);
    if (!current) return unanswered(path, c.name, question, info, reason::not_measured, "the design current");
    const measured length = number_of(c.length_m, reads::length, "length_m");
    const measured drop = through(electrical::voltage_drop, measured(*c.wiring.drop_mv_per_a_m), *current, length);
    add(path, c.name,
        {question, "The cable loses {v} of the {l} that are allowed at the design current.",
         "The cable loses {v} at the design current; {l} are allowed."},
        electrical::check_voltage_drop({.voltage_drop_v = drop, .nominal_voltage_v = measured(visit_.incoming.nominal_voltage_v),
                                        .load_kind = c.load_kind, .length_m = measured(c.length_m.number)}, rules_));
  }
};

}  // namespace

assessment assess(const visit& v, const rulebook& rules) { return assessor(v, rules).run(); }

document::value to_document(const assessment& a) {
  document::array findings, cautions;
  for (const auto& c : a.cautions) cautions.push_back(c);
  for (const auto& f : a.findings) {
    document::array before;
    for (const auto& w : f.before) {
      const auto d = v1::to_document(w);
      for (const auto& s : std::get<document::array>(d.as<document::object>()->find("steps")->is)) before.push_back(s);
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
                          {"title", a.title},
                          {"place", a.place},
                          {"date", a.date},
                          {"invented", a.invented},
                          {"rulebook", a.rulebook},
                          {"summary", document::object{{"pass", a.count(outcome::pass)}, {"fail", a.count(outcome::fail)}, {"undecided", a.count(outcome::undecided)}}},
                          {"cautions", cautions},
                          {"findings", findings}};
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

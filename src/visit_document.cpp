// SPDX-License-Identifier: MIT
// A visit and its assessment as documents: what was read and with what, and everything that was found.
#include <makegood/job/session.hpp>
#include <makegood/job/words.hpp>
#include <makegood/registry.hpp>
#include <makegood/version.hpp>
#include <algorithm>
#include <set>
#include "whole_visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

using document::array;
using document::object;
using document::value;

array texts(const std::vector<std::string>& list) {
  array a;
  for (const auto& t : list) a.push_back(t);
  return a;
}

// ---- what was read, and with what ------------------------------------------------------------------------------------------

namespace {
std::string said_of(const reading& r, std::string_view unit) {
  switch (r.is) {
    case reading::state::value: return quantity_text(r.number, unit, 6);
    case reading::state::above: return "more than " + quantity_text(r.number, unit, 6);
    case reading::state::below: return "less than " + quantity_text(r.number, unit, 6);
    case reading::state::no_trip: return "no trip";
    case reading::state::pending: return "pending";
    default: return "not measured";
  }
}
}  // namespace

void readings_of_visit(assessment& a, const visit& v) {
  const auto add = [&](const std::string& path, const std::string& subject, std::string_view what, std::string_view unit, const reading& r) {
    if (r.label.empty() && r.is == reading::state::not_measured) return;  // the document does not mention it
    constexpr std::string_view states[] = {"value", "above", "below", "no_trip", "not_measured", "pending"};
    std::string_view state = "value";
    for (const auto& [is, word] : {std::pair(reading::state::value, states[0]), std::pair(reading::state::above, states[1]), std::pair(reading::state::below, states[2]),
                                   std::pair(reading::state::no_trip, states[3]), std::pair(reading::state::not_measured, states[4]), std::pair(reading::state::pending, states[5])})
      if (r.is == is) state = word;
    a.readings.push_back(object{{"path", path}, {"subject", subject}, {"what", what}, {"said", said_of(r, unit)}, {"value", r.has_number() ? document::number_or_null(r.number) : value(nullptr)}, {"unit", unit},
                                {"state", state}, {"instrument", r.instrument}, {"time", r.taken_at}, {"circuit_state", r.circuit_state},
                                {"test_voltage_v", r.test_voltage_v > 0.0 ? document::number_or_null(r.test_voltage_v) : value(nullptr)}, {"supersedes", r.supersedes}, {"note", r.note}, {"kind", r.kind}});
  };
  const auto fields_of = [&](const auto& part, const std::string& path, const std::string& subject) {
    using S = std::remove_cvref_t<decltype(part)>;
    S::fields([&](std::string_view name, auto member, const field& f) {
      if constexpr (std::is_same_v<std::remove_cvref_t<decltype(part.*member)>, reading>) add(path + "." + std::string(name), subject, f.text, f.unit.symbol, part.*member);
    });
  };
  fields_of(v.incoming, "supply", "The supply");
  const auto list = [&](const auto& parts, const std::string& name) {
    for (std::size_t i = 0; i < parts.size(); ++i) fields_of(parts[i], detail::indexed(name, i), parts[i].name);
  };
  list(v.circuits, "circuits");
  list(v.appliances, "appliances");
  list(v.sensors, "sensors");
  list(v.fans, "fans");
  const auto from_document = [&](const std::string& path, const std::string& subject, std::string_view what, std::string_view unit, const value& x) {
    if (x.is_null()) return;
    try {
      reading r = x.as<std::string>() ? reading() : reading_from(x);
      if (const auto* w = x.as<std::string>()) {
        a.readings.push_back(object{{"path", path}, {"subject", subject}, {"what", what}, {"said", *w}, {"value", nullptr}, {"unit", ""}, {"state", "word"}, {"instrument", ""}, {"time", ""}, {"circuit_state", ""},
                                    {"test_voltage_v", nullptr}, {"supersedes", ""}, {"note", ""}, {"kind", ""}});
        return;
      }
      r.label = path;
      if (const auto* o = x.as<object>())
        for (const auto& [name, into] : {std::pair("note", &r.note), std::pair("kind", &r.kind)})
          if (const auto* t = o->find(name); t && t->as<std::string>()) *into = *t->as<std::string>();
      add(path, subject, what, unit, r);
    } catch (const error&) {  // no reading: a wall, a list
    }
  };
  for (std::size_t i = 0; i < v.inquiries.size(); ++i) {
    const auto& q = v.inquiries[i];
    const auto d = family(q.family);
    const auto* tests = d.as<object>() ? d.as<object>()->find("tests") : nullptr;
    for (const auto& f : q.readings.fields) {
      std::string_view what = f.first, unit;
      if (tests && tests->as<array>())
        for (const auto& t : *tests->as<array>())
          if (text_in(t.as<object>(), "id") == f.first) {
            what = text_in(t.as<object>(), "title");
            unit = text_in(t.as<object>(), "unit");
          }
      const std::string path = detail::indexed("inquiries", i) + ".readings." + f.first, subject = q.name.empty() ? q.id : q.name;
      if (const auto* several = f.second.as<array>())
        for (std::size_t k = 0; k < several->size(); ++k) from_document(detail::indexed(path, k), subject, what, unit, (*several)[k]);
      else from_document(path, subject, what, unit, f.second);
    }
  }
  for (std::size_t i = 0; i < v.calculations.size(); ++i) {
    const auto& c = v.calculations[i];
    const entry* e = find_entry(c.call);
    if (!e || e->is == entry::what::model) continue;
    for (const auto& arg : e->args())
      if (const auto* x = c.inputs.find(arg.name); x && !arg.table)
        from_document(detail::indexed("calculations", i) + ".inputs." + std::string(arg.name), c.name.empty() ? c.id : c.name, arg.text, arg.unit.symbol, *x);
  }
  for (const auto& i : v.instruments) {
    array said;
    for (const auto& f : i.functions) {
      std::string t;
      const auto also = [&](const std::string& more) { t += (t.empty() ? "" : " and ") + more; };
      if (f.exact) also("taken without doubt");
      if (f.percent > 0) also(number_text(f.percent, 4) + " % of the reading");
      if (f.counts > 0) also(number_text(f.counts, 4) + " counts of " + number_text(f.resolution, 4));
      else if (f.resolution > 0) also("a display in steps of " + number_text(f.resolution, 4));
      if (f.limit > 0) also("at most " + number_text(f.limit, 4) + " either way");
      if (f.standard_uncertainty > 0) also("a standard uncertainty of " + number_text(f.standard_uncertainty, 4));
      if (f.range > 0) t += ", up to " + number_text(f.range, 5);
      std::string what = f.reads_what;
      std::replace(what.begin(), what.end(), '_', ' ');
      said.push_back(what + ": " + t);
    }
    a.instruments.push_back(object{{"id", i.id}, {"description", i.description}, {"calibrated", i.calibrated}, {"accuracy", said}});
  }
}

// ---- as a document -------------------------------------------------------------------------------------------------------

namespace {

constexpr std::string_view suggested = "suggested; not a certificate or condition report";

value danger_document(const finding& f) {
  constexpr std::string_view words[] = {"", "to be looked into", "could be better", "may become dangerous", "dangerous now"};
  if (f.level == finding::danger::none) return nullptr;
  return object{{"level", danger_text(f.level)}, {"words", words[static_cast<std::size_t>(f.level)]}, {"code", f.code}, {"source", f.code_source}, {"note", suggested}};
}
value verdict_document(const finding& f) {
  auto v = v1::to_document(f.verdict);
  if (f.shown.fields.empty() && !f.call.empty() && f.verdict.info) return v;
  auto& o = std::get<object>(v.is);
  for (auto& field : o.fields) {
    if (field.first == "check" && field.second.as<std::string>()->empty()) field.second = f.call.substr(f.call.find('.') + 1);
    if (f.shown.find("no_value") && (field.first == "value" || field.first == "margin" || field.first == "standard_uncertainty" || field.first == "expanded_uncertainty")) field.second = nullptr;
    if (f.shown.find("no_value") && field.first == "censored") field.second = "";
    if (field.first == "plain" && !f.verdict.info) field.second = f.verdict.outcome == outcome::undecided ? "" : outcome_text(f.verdict.outcome);
    if (const auto* x = f.shown.find(field.first); x && field.first != "probability") {
      if (field.first == "source" && x->as<object>()) {
        object from = *x->as<object>();
        if (!from.find("rule")) from.set("rule", "");
        if (!from.find("rulebook")) from.set("rulebook", f.verdict.book.id());
        field.second = from;
      } else if (!x->is_null()) {
        field.second = *x;
      }
    }
  }
  return v;
}
/// Terms of the glossary that the words for the client use.
array terms_of(const assessment& a) {
  const auto* all = words().find("glossary");
  const auto* glossary = all ? all->as<object>() : nullptr;
  if (!glossary) return {};
  std::string text;
  for (const auto& f : a.findings) text += f.question + "\n" + f.client + "\n" + f.consequence + "\n" + f.caution_client + "\n";
  for (auto& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  array list;
  for (const auto& term : glossary->fields) {
    std::string key = term.first;
    for (auto& c : key)
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (text.find(key) != std::string::npos) list.push_back(term.first);
  }
  return list;
}

}  // namespace

value to_document(const assessment& a) {
  array findings, cautions;
  for (const auto& c : a.cautions) cautions.push_back(c);
  for (const auto& f : a.findings) {
    array before;
    std::set<std::string> said;  // density or a temperature in kelvin is worked once a finding, not once a part of the duct
    for (working w : f.before) {
      std::erase_if(w.steps, [&](const step& one) { return !said.insert(one.symbol + "=" + one.equation + "=" + one.substituted).second; });
      append_steps(before, w);
    }
    findings.push_back(object{{"path", f.path},
                              {"subject", f.subject},
                              {"question", f.question},
                              {"plain", f.plain},
                              {"next", f.next},
                              {"outcome", outcome_text(f.verdict.outcome)},
                              {"reason", reason_text(f.verdict.reason)},
                              {"kind", f.kind},
                              {"call", f.call},
                              {"client", f.client},
                              {"electrician", f.electrician},
                              {"caution", f.caution},
                              {"caution_client", f.caution_client},
                              {"consequence", f.consequence},
                              {"danger", danger_document(f)},
                              {"circuit", f.circuit},
                              {"about", f.about},
                              {"make_safe", texts(f.make_safe)},
                              {"before", before},
                              {"verdict", verdict_document(f)}});
  }
  object danger;
  for (const auto level : {finding::danger::now, finding::danger::potential, finding::danger::improve, finding::danger::investigate})
    danger.set(std::string(danger_text(level)), static_cast<std::size_t>(std::count_if(a.findings.begin(), a.findings.end(), [&](const finding& f) { return f.level == level; })));
  return object{{"format", "makegood-assessment-1"},
                {"version", version},
                {"title", a.title},
                {"place", a.place},
                {"date", a.date},
                {"invented", a.invented},
                {"rulebook", a.rulebook},
                {"decision_rule", a.decision_rule},
                {"summary", object{{"pass", a.count(outcome::pass)}, {"fail", a.count(outcome::fail)}, {"undecided", a.count(outcome::undecided)}}},
                {"danger", danger},
                {"cautions", cautions},
                {"findings", findings},
                {"isolate", a.isolate},
                {"readings", a.readings},
                {"instruments", a.instruments},
                {"changes", a.changes},
                {"diagnoses", a.diagnoses},
                {"results", a.results},
                {"unproved", a.unproved},
                {"readings_needed", a.readings_needed},
                {"options", a.options},
                {"quote", a.quote},
                {"order_of_work", a.order_of_work},
                {"notifiable", a.notifiable},
                {"terms", terms_of(a)},
                {"scope", a.scope}};
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

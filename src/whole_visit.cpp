// SPDX-License-Identifier: MIT
// What follows from the findings of a visit: what must be off tonight, what is to be read next, what can be done and what it costs, what is
// done first in the time there is, what has to be notified, what was put right.
#include <fmt/format.h>
#include <makegood/job/notifiable.hpp>
#include <makegood/job/readings_needed.hpp>
#include <makegood/job/words.hpp>
#include <makegood/registry.hpp>
#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <map>
#include <set>
#include <thread>
#include <tuple>
#include "whole_visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

using document::array;
using document::object;
using document::value;

std::string_view danger_text(finding::danger d) {
  constexpr std::string_view names[] = {"", "investigate", "improve", "potential", "now"};
  return names[static_cast<std::size_t>(d)];
}
std::string_view text_in(const object* words, std::string_view name) {
  const auto* x = words ? words->find(name) : nullptr;
  const auto* t = x ? x->as<std::string>() : nullptr;
  return t ? std::string_view(*t) : std::string_view();
}
std::vector<std::string> texts_in(const object* words, std::string_view name) {
  std::vector<std::string> list;
  const auto* x = words ? words->find(name) : nullptr;
  if (const auto* a = x ? x->as<array>() : nullptr)
    for (const auto& one : *a)
      if (one.as<std::string>()) list.push_back(*one.as<std::string>());
  return list;
}
const circuit* circuit_of(const visit& v, std::string_view id) {
  for (const auto& c : v.circuits)
    if (c.id == id) return &c;
  return nullptr;
}
visit_part part_of(const visit& v, std::string_view about) {
  if (about.empty()) return {};
  if (about == "supply") return {"supply", "The supply", {}};
  visit_part p{path_of(v, about), {}, {}};
  const auto look = [&](const auto& list, std::string_view name, auto circuit_behind) {
    for (std::size_t i = 0; i < list.size(); ++i)
      if (p.path == detail::indexed(std::string(name), i)) {
        p.name = list[i].name;
        p.circuit = circuit_behind(list[i]);
      }
  };
  look(v.circuits, "circuits", [](const circuit& c) { return c.id; });
  look(v.appliances, "appliances", [](const appliance& a) { return a.circuit_id; });
  look(v.fans, "fans", [](const fan& f) { return f.circuit_id; });
  look(v.rooms, "rooms", [](const room&) { return std::string(); });
  look(v.sensors, "sensors", [&](const sensor& s) { return part_of(v, s.appliance_id).circuit; });
  look(v.inquiries, "inquiries", [&](const inquiry& q) { return q.about == about ? std::string() : part_of(v, q.about).circuit; });
  look(v.observations, "observations", [&](const seen_by_eye& o) { return o.about == about ? std::string() : part_of(v, o.about).circuit; });
  return p;
}

namespace {

bool fails_as_read(const finding& f) {
  return f.verdict.outcome == outcome::undecided && f.verdict.plain == outcome::fail && !is_nan(f.verdict.value);
}
bool against(const finding& f) { return f.verdict.outcome == outcome::fail || fails_as_read(f); }
std::string lower_first(std::string s) {
  if (s.size() > 1 && s[0] >= 'A' && s[0] <= 'Z' && s[1] >= 'a' && s[1] <= 'z') s[0] = static_cast<char>(s[0] - 'A' + 'a');
  return s;
}
value numbered(std::size_t i) { return value(i + 1); }

/// Weights of what a level of danger is worth removing, one against the other: judgement.
double weight_of(finding::danger d) {
  switch (d) {
    case finding::danger::now: return 100.0;
    case finding::danger::potential: return 30.0;
    case finding::danger::investigate: return 5.0;
    case finding::danger::improve: return 2.0;
    default: return 1.0;
  }
}

// ---- what must be off --------------------------------------------------------------------------------------------------

/// The findings that ask for isolating, by circuit, or by thing where no circuit is known.
void isolate_of(assessment& a, const visit& v) {
  struct group {
    std::string what, circuit;
    std::vector<std::size_t> findings;
    finding::danger worst = finding::danger::none;
  };
  std::vector<group> groups;
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    const auto& f = a.findings[i];
    if (!f.isolates) continue;
    const std::string what = f.circuit.empty() ? f.subject : circuit_of(v, f.circuit) ? circuit_of(v, f.circuit)->name : f.circuit;
    auto found = std::find_if(groups.begin(), groups.end(), [&](const group& g) { return g.circuit == f.circuit && (!f.circuit.empty() || g.what == what); });
    if (found == groups.end()) found = groups.insert(groups.end(), group{what, f.circuit, {}, finding::danger::none});
    found->findings.push_back(i);
    found->worst = std::max(found->worst, f.level);
  }
  std::stable_sort(groups.begin(), groups.end(), [](const group& x, const group& y) { return x.worst > y.worst; });
  for (const auto& g : groups) {
    array numbers;
    std::vector<std::string> why, how;
    for (const auto i : g.findings) {
      const auto& f = a.findings[i];
      numbers.push_back(numbered(i));
      const std::string reason_ = (f.subject == g.what ? "" : f.subject + ": ") + (f.consequence.empty() ? f.plain : f.consequence);
      if (std::find(why.begin(), why.end(), reason_) == why.end()) why.push_back(reason_);
      for (const auto& s : f.make_safe)
        if (std::find(how.begin(), how.end(), s) == how.end()) how.push_back(s);
    }
    a.isolate.push_back(object{{"what", g.what}, {"circuit", g.circuit}, {"level", danger_text(g.worst)}, {"findings", numbers}, {"why", texts(why)}, {"how", texts(how)},
                               {"until", "It stays off until it has been put right and tested."}});
  }
}

// ---- what nobody can say yet, and the readings that would tell ---------------------------------------------------------------

struct wanted_reading {
  reading_needed is;
  std::vector<std::string> bring;
  std::string circuit;
  finding::danger level = finding::danger::none;
};
std::vector<wanted_reading> readings_of(const assessment& a) {
  std::vector<reading_needed> asked;
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    const auto& f = a.findings[i];
    const auto& v = f.verdict;
    if (v.outcome != outcome::undecided || v.reason == reason::no_rule_in_book || f.kind == "diagnosis") continue;
    reading_needed w;
    w.subject = f.subject;
    w.settles = {i};
    w.minutes = 5.0;
    const bool lacking = v.reason == reason::not_measured || v.reason == reason::needs_makers_figure;
    w.what = lacking || f.next.empty() ? v.detail() : f.next;
    if (v.reason == reason::outside_validity && !is_nan(v.value)) w.what += ": " + f.question;
    std::string_view argument;
    if (!v.info && lacking) {  // a model: what it usually lacks
      const auto* said_ = words_of_check(f.words);
      const auto* list_ = said_ ? said_->find("needs") : nullptr;
      if (list_ && list_->as<array>() && !list_->as<array>()->empty()) argument = text_in((*list_->as<array>())[0].as<object>(), "reading");
    }
    if (v.missing >= 0 && v.info) argument = v.info->args[static_cast<std::size_t>(v.missing)].name;
    else if (const auto better = v.better()) argument = better->argument;
    const auto* said = words_of_check(f.words);
    const auto* needs = said ? said->find("needs") : nullptr;
    const bool again = v.reason == reason::straddles_limit && argument.empty();  // no better reading of the same value would settle it
    if (again && needs && needs->as<array>() && !needs->as<array>()->empty()) argument = text_in((*needs->as<array>())[0].as<object>(), "reading");
    if (const auto* all = needs ? needs->as<array>() : nullptr)
      for (const auto& one : *all) {
        const auto* n = one.as<object>();
        if (!n || argument.empty() || text_in(n, "reading") != argument) continue;
        if (v.reason == reason::not_measured) {
          w.what = text_in(n, "what");
          w.argument = argument;
        } else if (again) {
          w.what = std::string(text_in(n, "what")) + ": once more, and with a better instrument";
        }
        if (const auto* m = n->find("minutes"); m && m->as<double>()) w.minutes = *m->as<double>();
        if (const auto* l = n->find("live"); l && l->as<bool>()) w.live = *l->as<bool>();
        w.first = texts_in(n, "first");
        w.caution = f.caution;
      }
    if (w.what.empty()) w.what = lower_first(f.question);
    asked.push_back(std::move(w));
  }
  for (const auto& d : a.diagnoses) {
    const auto* o = d.as<object>();
    const auto advice = text_in(o, "advice"), test = text_in(o, "test");
    if (advice != "test" && advice != "must_test") continue;
    const auto place = std::find_if(a.findings.begin(), a.findings.end(), [&](const finding& f) { return f.path == text_in(o, "path"); });
    if (place == a.findings.end()) continue;
    for (const auto& t : *o->find("tests")->as<array>()) {
      const auto* one = t.as<object>();
      if (text_in(one, "id") != test) continue;
      reading_needed w;
      w.what = text_in(one, "title");
      w.subject = place->subject;
      w.settles = {static_cast<std::size_t>(place - a.findings.begin())};
      w.minutes = *one->find("minutes")->as<double>();
      w.live = *one->find("live")->as<bool>();
      w.first = texts_in(one, "first");
      w.caution = text_in(one, "caution");
      asked.push_back(std::move(w));
    }
  }
  std::vector<wanted_reading> list;
  for (auto& r : readings_needed(asked).readings) {
    wanted_reading w;
    for (const auto i : r.is.settles) w.level = std::max(w.level, a.findings[i].level);
    w.circuit = a.findings[r.is.settles[0]].circuit;
    w.bring = std::move(r.bring);
    w.is = std::move(r.is);
    list.push_back(std::move(w));
  }
  return list;
}
void unproved_of(assessment& a, const std::vector<wanted_reading>& readings) {
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    const auto& f = a.findings[i];
    if (f.verdict.outcome != outcome::undecided) continue;
    const std::string why = f.verdict.detail().empty() ? std::string(reason_text(f.verdict.reason)) : f.verdict.detail();
    a.unproved.push_back(object{{"subject", f.subject}, {"question", f.question}, {"why", why}, {"finding", numbered(i)}});
  }
  for (const auto& w : readings) {
    array settles;
    for (const auto i : w.is.settles) settles.push_back(numbered(i));
    a.readings_needed.push_back(object{{"what", w.is.what}, {"subject", w.is.subject}, {"settles", settles}, {"minutes", w.is.minutes}, {"live", w.is.live}, {"first", texts(w.is.first)},
                                       {"bring", texts(w.bring)}, {"caution", w.is.caution},
                                       {"why", w.is.settles.size() > 1 ? fmt::format("It settles {} questions.", w.is.settles.size()) : "It settles: " + a.findings[w.is.settles[0]].question}});
  }
}

// ---- what was put right ------------------------------------------------------------------------------------------------

object answer_of(const finding& f) {
  const auto& v = f.verdict;
  return object{{"outcome", outcome_text(v.outcome)}, {"value", document::number_or_null(v.value)}, {"unit", v.unit()}, {"censored", v.censored()}, {"said", f.client}};
}
void changes_of(assessment& a, const visit& v, const rulebook& rules, const decision_rule& rule) {
  if (v.mended.empty()) return;
  for (const auto& m : v.mended) {
    const visit_part part = part_of(v, m.about);
    array answers, ends;
    assessment before;
    std::map<std::pair<std::string, std::string>, const finding*> found;
    if (!m.before.fields.empty()) {  // the visit as it would be without this
      visit was = v;
      was.mended = {m};
      was = as_found(was);
      was.calculations.clear();
      was.observations.clear();
      was.inquiries.clear();
      before = findings_of(was, rules, rule, {false, false, false});
    }
    for (const auto& f : before.findings) found.emplace(std::pair(f.path, f.call + "/" + f.question), &f);
    for (std::size_t i = 0; i < a.findings.size(); ++i) {
      const auto& f = a.findings[i];
      if (f.path != part.path || part.path.empty()) continue;
      const auto old = found.find(std::pair(f.path, f.call + "/" + f.question));
      if (old == found.end()) continue;
      const auto& b = *old->second;
      const bool same = b.verdict.outcome == f.verdict.outcome && b.plain == f.plain;
      if (same) continue;
      answers.push_back(object{{"question", f.question}, {"finding", numbered(i)}, {"before", answer_of(b)}, {"after", answer_of(f)}});
    }
    for (const auto& id : m.ends)
      for (const auto& o : v.observations)
        if (o.id == id) {
          const auto* said = words_of_observation(o.kind);
          ends.push_back(!o.name.empty() ? o.name : std::string(text_in(said, "title").empty() ? o.kind : text_in(said, "title")));
        }
    a.changes.push_back(object{{"id", m.id}, {"about", m.about}, {"subject", part.name}, {"what", m.what}, {"minutes", m.minutes}, {"time", m.time}, {"answers", answers}, {"ends", ends}, {"note", m.note}});
  }
}

// ---- money --------------------------------------------------------------------------------------------------------------

std::string hours(double minutes) { return fmt::format("{:.4f}", minutes / 60.0); }
object quote_inputs(const prices& p, array lines) {
  object in{{"lines", std::move(lines)}, {"currency", p.currency}, {"registered", p.registered}};
  if (p.registered && !p.vat.fields.empty()) in.set("vat", p.vat);
  if (!p.rounding.empty()) in.set("rounding", p.rounding);
  return in;
}
void lines_of(array& lines, const prices& p, const std::string& title, double minutes, double low, double high, const std::vector<material>& materials, bool spread) {
  object labour{{"kind", "labour"}, {"name", title}, {"time_h", hours(minutes)}, {"rate_per_h", p.rate_per_h}};
  if (spread && low < high) labour.set("spread", object{{"kind", "triangular"}, {"low_h", hours(low)}, {"high_h", hours(high)}});
  lines.push_back(labour);
  for (const auto& m : materials) {
    object one{{"kind", "materials"}, {"name", m.name}, {"cost", m.cost}, {"quantity", fmt::format("{}", m.quantity)}};
    if (!p.markup_percent.empty()) one.set("markup_percent", p.markup_percent);
    lines.push_back(one);
  }
}
std::string total_of(const prices& p, double minutes, const std::vector<material>& materials) {
  static const entry* e = find_entry("price.quote");
  array lines;
  lines_of(lines, p, "work", minutes, minutes, minutes, materials, false);
  const auto said = e->model.run(quote_inputs(p, std::move(lines)), {});
  return std::string(text_in(said.as<object>(), "total"));
}

// ---- what can be done ---------------------------------------------------------------------------------------------------

struct possible {
  std::string id, title, act, access, leaves, why, circuit;
  double minutes = 0.0, low = 0.0, high = 0.0, money = 0.0, probability = no_number;
  std::vector<material> materials;
  bool isolates = false, recommended = false, chosen = false, priced = true;
  const offered_work* work = nullptr;
};
struct matter {
  std::string about, subject, path, circuit;
  std::vector<std::size_t> findings;
  std::vector<possible> list;
  finding::danger level = finding::danger::none;
};
/// What people call the circuit, appliance, sensor or fan of a path.
std::string named(const visit& v, const std::string& path) {
  std::string name;
  const auto look = [&](const auto& list, std::string_view of) {
    for (std::size_t i = 0; i < list.size(); ++i)
      if (path == detail::indexed(std::string(of), i)) name = list[i].name;
  };
  look(v.circuits, "circuits");
  look(v.appliances, "appliances");
  look(v.sensors, "sensors");
  look(v.fans, "fans");
  return name;
}
/// Things that something is to be done about: a path with findings against it, or with works offered for it.
std::vector<matter> matters_of(const assessment& a, const visit& v) {
  std::vector<matter> all;
  const auto at = [&](const std::string& path, const std::string& subject, const std::string& circuit) -> matter& {
    for (auto& m : all)
      if (m.path == path) return m;
    matter m;
    m.path = path;
    m.subject = named(v, path).empty() ? subject : named(v, path);
    m.circuit = circuit;
    all.push_back(m);
    return all.back();
  };
  // an inquiry into an appliance, a sensor or a fan is about that: what can be done stands once
  const auto home = [&](const std::string& path) {
    for (std::size_t i = 0; i < v.inquiries.size(); ++i)
      if (path == detail::indexed("inquiries", i)) {
        const auto part = part_of(v, v.inquiries[i].about).path;
        return part.empty() || part.starts_with("circuits") || part.starts_with("rooms") || part == "supply" ? path : part;
      }
    return path;
  };
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    const auto& f = a.findings[i];
    const bool counts = against(f) || (f.kind == "diagnosis" && f.verdict.outcome != outcome::pass);
    if (!counts) continue;
    auto& m = at(home(f.about.empty() ? f.path : f.about), f.subject, f.circuit);
    m.findings.push_back(i);
    m.level = std::max(m.level, f.level);
  }
  for (const auto& w : v.works) {
    const visit_part part = part_of(v, w.about);
    auto& m = at(home(part.path), part.name, part.circuit);
    possible p;
    p.id = w.id;
    p.title = w.title;
    p.act = w.act;
    p.access = w.access;
    p.leaves = w.leaves;
    p.minutes = w.minutes;
    p.low = w.minutes_low.value_or(w.minutes);
    p.high = w.minutes_high.value_or(w.minutes);
    p.materials = w.materials;
    p.isolates = w.act == "isolate";
    p.chosen = w.chosen;
    p.circuit = m.circuit;
    p.work = &w;
    m.list.push_back(std::move(p));
  }
  for (auto& m : all) {
    const object* diagnosis = nullptr;
    for (const auto& d : a.diagnoses)
      for (const auto i : m.findings)
        if (text_in(d.as<object>(), "path") == a.findings[i].path) diagnosis = d.as<object>();
    if (diagnosis)
      for (const auto& x : *diagnosis->find("acts")->as<array>()) {
        const auto* act = x.as<object>();
        if (!*act->find("allowed")->as<bool>()) continue;
        possible p;
        p.id = text_in(act, "id");
        p.title = text_in(act, "title");
        p.isolates = *act->find("isolates")->as<bool>();
        p.act = p.isolates ? "isolate" : p.id == "leave" ? "decline" : "repair";
        p.minutes = p.low = p.high = *act->find("minutes")->as<double>();
        p.money = *act->find("money")->as<double>();
        p.leaves = text_in(act, "leaves");
        p.probability = *act->find("best_probability")->as<double>();
        const bool offered = std::any_of(m.list.begin(), m.list.end(), [](const possible& one) { return one.work != nullptr; });
        const bool asked_for = text_in(diagnosis, "act") == p.id;
        if (!p.isolates && !asked_for && (offered || p.probability < 0.02)) continue;  // hardly ever the right one
        p.circuit = m.circuit;
        p.recommended = text_in(diagnosis, "advice") == "act" && text_in(diagnosis, "act") == p.id;
        p.why = p.recommended ? "It costs least on the whole, by the readings so far." : "";
        m.list.push_back(std::move(p));
      }
    if (m.list.empty()) {  // nobody has offered anything: the usual ways
      std::set<std::string> seen;
      for (const auto i : m.findings) {
        const auto& f = a.findings[i];
        const auto* said = f.kind == "observation" ? words_of_observation(f.words) : words_of_check(f.words);
        const auto* remedies = said ? said->find("remedies") : nullptr;
        const auto* list = remedies ? remedies->as<array>() : nullptr;
        if (!list) continue;
        for (const auto& x : *list) {
          const auto* r = x.as<object>();
          if (!r || !seen.insert(std::string(text_in(r, "id"))).second) continue;
          possible p;
          p.id = text_in(r, "id");
          p.title = text_in(r, "title");
          p.act = text_in(r, "act");
          p.access = text_in(r, "access");
          p.leaves = text_in(r, "leaves");
          p.isolates = p.act == "isolate";
          p.circuit = m.circuit;
          p.priced = false;  // labour alone: nobody has named the materials
          if (const auto* t = r->find("minutes"); t && t->as<array>() && t->as<array>()->size() == 3) {
            const auto& three = *t->as<array>();
            const auto number = [&](std::size_t k) { return three[k].as<double>() ? *three[k].as<double>() : 0.0; };
            p.low = number(0);
            p.minutes = number(1);
            p.high = number(2);
          }
          m.list.push_back(std::move(p));
        }
      }
    }
    // recommended: what was chosen, else what the diagnosis says, else the least work that leaves nothing open
    const auto any_of = [&](auto is) { return std::any_of(m.list.begin(), m.list.end(), is); };
    if (any_of([](const possible& p) { return p.chosen; })) {
      for (auto& p : m.list) p.recommended = p.chosen;
    } else if (!any_of([](const possible& p) { return p.recommended; })) {
      possible* best = nullptr;
      const auto rank = [](const possible& p) { return std::tuple(!p.leaves.empty(), p.minutes); };
      for (auto& p : m.list)
        if (!p.isolates && p.act != "decline" && (!best || rank(p) < rank(*best))) best = &p;
      if (best) {
        best->recommended = true;
        best->why = best->leaves.empty() ? "The least work that leaves nothing open." : "The least work; every way leaves something open.";
      }
    }
    const bool isolating = std::any_of(m.list.begin(), m.list.end(), [](const possible& p) { return p.isolates; });
    if (!isolating && m.level >= finding::danger::potential) {
      possible p;
      p.id = "isolate";
      p.title = "Isolate, secure and label it, and leave it off";
      p.act = "isolate";
      p.minutes = p.low = p.high = 10.0;
      p.isolates = true;
      p.circuit = m.circuit;
      p.leaves = "It cannot be used until it has been put right and tested.";
      m.list.push_back(std::move(p));
    }
  }
  return all;
}
void options_of(assessment& a, const visit& v, const std::vector<matter>& all) {
  for (const auto& m : all) {
    if (m.list.empty()) continue;
    array list, numbers;
    for (const auto i : m.findings) numbers.push_back(numbered(i));
    for (const auto& p : m.list) {
      object o{{"id", p.id}, {"title", p.title}, {"act", p.act}, {"minutes", p.minutes}, {"minutes_low", p.low}, {"minutes_high", p.high}};
      value price, low, high;
      if (v.price) {
        auto materials = p.materials;
        if (p.money > 0.0) materials.push_back({"materials, as the family of faults reckons them", fmt::format("{:.2f}", p.money), 1.0});
        price = total_of(*v.price, p.minutes, materials);
        if (p.low < p.high) {
          low = total_of(*v.price, p.low, materials);
          high = total_of(*v.price, p.high, materials);
        }
      }
      o.set("price", price);
      o.set("price_low", low);
      o.set("price_high", high);
      o.set("currency", v.price ? value(v.price->currency) : value(nullptr));
      o.set("materials_in", p.priced);
      o.set("probability", document::number_or_null(p.probability));
      o.set("leaves", p.leaves);
      o.set("isolates", p.isolates);
      o.set("recommended", p.recommended);
      o.set("chosen", p.chosen);
      o.set("why", p.why);
      list.push_back(o);
    }
    const std::string for_ = m.findings.empty() ? std::string() : a.findings[m.findings[0]].client;
    a.options.push_back(object{{"about", m.path}, {"subject", m.subject}, {"for", for_}, {"findings", numbers}, {"list", list}});
  }
}
array ways_of(const prices& p) {
  array lines;
  if (!p.call_out.empty()) lines.push_back(object{{"kind", "fixed"}, {"name", "Coming to you"}, {"amount", p.call_out}});
  if (p.travel_miles.empty() || p.rate_per_mile.empty()) return lines;
  object travel{{"kind", "travel"}, {"name", "Travel"}, {"distance_miles", p.travel_miles}, {"rate_per_mile", p.rate_per_mile}};
  if (!p.travel_h.empty()) {
    travel.set("time_h", p.travel_h);
    travel.set("rate_per_h", p.rate_per_h);
  }
  lines.push_back(travel);
  return lines;
}
void quote_of(assessment& a, const visit& v) {
  if (!v.price) return;
  const auto& p = *v.price;
  array lines;
  for (const auto& w : v.works)
    if (w.chosen) lines_of(lines, p, w.title, w.minutes, w.minutes_low.value_or(w.minutes), w.minutes_high.value_or(w.minutes), w.materials, true);
  if (lines.empty()) return;
  for (auto& one : ways_of(p)) {
    const bool first = text_in(one.as<object>(), "kind") == "fixed";
    lines.insert(first ? lines.begin() : lines.end(), std::move(one));
  }
  static const entry* e = find_entry("price.quote");
  auto in = quote_inputs(p, std::move(lines));
  in.set("draws", 2000);
  a.quote = e->model.run(in, {});
}

// ---- what is done first --------------------------------------------------------------------------------------------------

void order_of(assessment& a, const visit& v, const std::vector<matter>& all, const std::vector<wanted_reading>& readings) {
  static const entry* e = find_entry("job.order_of_work");
  if (!e) return;
  struct meaning {
    std::string title, subject;
    std::vector<std::size_t> findings;
  };
  array tasks;
  std::map<std::string, meaning> known;
  std::set<std::string> setups, circuits;
  const auto task = [&](std::string id, std::string title, const std::string& subject, double minutes, double low, double high, double risk, const std::string& access, const std::string& circuit,
                        std::string_view state, bool must, std::vector<std::size_t> findings) {
    while (known.count(id)) id += "'";
    object o{{"id", id}, {"title", title}, {"minutes", std::max(1.0, minutes)}, {"risk", risk}, {"must", must}};
    if (low < high && low > 0.0) {
      o.set("low", low);
      o.set("high", high);
    }
    if (!access.empty()) {
      o.set("access", access);
      setups.insert(access);
    }
    if (!circuit.empty() && state == "dead") {
      o.set("circuit", "circuit " + circuit);
      circuits.insert(circuit);
    }
    if (state == "live" || (state == "dead" && !circuit.empty())) o.set("state", state);
    tasks.push_back(o);
    known[id] = {std::move(title), subject, std::move(findings)};
  };
  for (const auto& one : a.isolate) {
    const auto* o = one.as<object>();
    std::vector<std::size_t> findings;
    double risk = 0.0;
    for (const auto& n : *o->find("findings")->as<array>()) {
      findings.push_back(static_cast<std::size_t>(*n.as<double>()) - 1);
      risk = std::max(risk, weight_of(a.findings[findings.back()].level));
    }
    const std::string what(text_in(o, "what"));
    task("safe:" + what, "Isolate, secure and label: " + what, what, 5.0, 0.0, 0.0, risk, "", "", "", true, findings);
  }
  // the readings on one circuit (or thing), dead or live, are one task
  struct batch {
    std::string subject, circuit;
    bool live = false;
    std::vector<std::string> what;
    std::vector<std::size_t> settles;
    double minutes = 0.0, risk = 0.0;
  };
  std::vector<batch> batches;
  for (const auto& w : readings) {
    auto at = std::find_if(batches.begin(), batches.end(), [&](const batch& x) { return x.live == w.is.live && x.circuit == w.circuit && (!w.circuit.empty() || x.subject == w.is.subject); });
    if (at == batches.end()) at = batches.insert(batches.end(), batch{circuit_of(v, w.circuit) ? circuit_of(v, w.circuit)->name : w.is.subject, w.circuit, w.is.live, {}, {}, 0.0, 0.0});
    at->what.push_back(w.is.what);
    at->settles.insert(at->settles.end(), w.is.settles.begin(), w.is.settles.end());
    at->minutes += w.is.minutes;
    at->risk += weight_of(w.level) * static_cast<double>(w.is.settles.size()) / 5.0;
  }
  for (auto& x : batches) {
    std::sort(x.settles.begin(), x.settles.end());
    x.settles.erase(std::unique(x.settles.begin(), x.settles.end()), x.settles.end());
    std::string title = x.live ? "Read, live: " : "Read: ";
    for (std::size_t i = 0; i < x.what.size() && i < 3; ++i) title += (i ? "; " : "") + x.what[i];
    if (x.what.size() > 3) title += fmt::format("; and {} more", x.what.size() - 3);
    task("read:" + x.subject + (x.live ? ":live" : ""), title, x.subject, x.minutes, 0.0, 0.0, x.risk, "", x.circuit, x.live ? "live" : "dead", false, x.settles);
  }
  for (const auto& m : all) {
    const possible* best = nullptr;
    for (const auto& p : m.list) {
      if (p.isolates || p.act == "decline") continue;
      if (!best || (p.chosen && !best->chosen) || (p.recommended && !best->recommended && !best->chosen)) best = &p;
    }
    if (!best || m.findings.empty()) continue;
    double risk = 0.0;
    for (const auto i : m.findings) risk += weight_of(a.findings[i].level);
    task("do:" + m.path + ":" + best->id, best->title, m.subject, best->minutes, best->low, best->high, risk, best->access, m.circuit, "dead", false, m.findings);
  }
  if (tasks.empty()) {
    a.order_of_work = object{{"available_min", nullptr}, {"steps", array{}}, {"left_out", array{}}, {"text", array{"Nothing that was asked leaves anything to be done."}}};
    return;
  }
  // the plan is exact for so many and quick; what gains least a minute comes after that
  const auto number_in = [](const value& one, std::string_view name) { return *one.as<object>()->find(name)->as<double>(); };
  std::stable_sort(tasks.begin(), tasks.end(), [&](const value& x, const value& y) {
    const bool first = *x.as<object>()->find("must")->as<bool>(), second = *y.as<object>()->find("must")->as<bool>();
    if (first != second) return first;
    return number_in(x, "risk") * number_in(y, "minutes") > number_in(y, "risk") * number_in(x, "minutes");
  });
  std::size_t most = 10;
  while (most < tasks.size() && most < 60 && *tasks[most].as<object>()->find("must")->as<bool>()) ++most;
  array after;
  for (std::size_t i = most; i < tasks.size(); ++i)
    after.push_back(object{{"id", std::string(text_in(tasks[i].as<object>(), "id"))}, {"title", std::string(text_in(tasks[i].as<object>(), "title"))}, {"minutes", number_in(tasks[i], "minutes")},
                           {"risk", number_in(tasks[i], "risk")}, {"reason", "comes_after"}, {"needs", nullptr}, {"short_min", nullptr}, {"why", "comes after the rest: it removes less for each minute"}});
  if (tasks.size() > most) tasks.resize(most);
  array groups;
  const double opening = v.time ? v.time->access_min : 0.0;
  for (const auto& s : setups) groups.push_back(object{{"id", s}, {"title", s}, {"setup_min", 0.5 * opening}, {"close_min", 0.5 * opening}});
  const double isolating = v.time ? v.time->isolating_min : 0.0;
  for (const auto& c : circuits) {
    const auto* one = circuit_of(v, c);
    groups.push_back(object{{"id", "circuit " + c}, {"title", one ? one->name : c}, {"setup_min", 0.5 * isolating}, {"close_min", 0.5 * isolating}, {"isolates", true}});
  }
  const bool stated = v.time && v.time->available_min;
  double spent = v.time ? v.time->used_min : 0.0;
  if (v.time && spent == 0.0)
    for (const auto& m : v.mended) spent += m.minutes;
  const double available = stated ? std::max(0.0, *v.time->available_min - spent) : 1440.0;
  object in{{"tasks", tasks}, {"available_min", available}};
  if (!groups.empty()) in.set("groups", groups);
  if (v.price && !v.price->travel_h.empty())
    if (const double h = std::strtod(v.price->travel_h.c_str(), nullptr); h > 0.0 && h < 24.0) in.set("travel_min", 60.0 * h);
  value said;
  try {
    said = e->model.run(in, {});
  } catch (const error& x) {
    a.order_of_work = object{{"available_min", stated ? value(available) : value(nullptr)}, {"steps", array{}}, {"left_out", array{}}, {"text", array{std::string(x.what())}}};
    return;
  }
  auto& body = std::get<object>(said.is);
  const auto enrich = [&](std::string_view name) {
    for (auto& f : body.fields) {
      if (f.first != name) continue;
      for (auto& one : std::get<array>(f.second.is)) {
        auto& o = std::get<object>(one.is);
        const auto found = known.find(std::string(text_in(&o, "id")));
        if (found == known.end()) continue;
        array numbers;
        for (const auto i : found->second.findings) numbers.push_back(numbered(i));
        o.set("subject", found->second.subject);
        o.set("findings", numbers);
      }
    }
  };
  if (!after.empty())
    for (auto& f : body.fields)
      if (f.first == "left_out")
        for (const auto& one : after) std::get<array>(f.second.is).push_back(one);
  enrich("steps");
  enrich("left_out");
  for (auto& f : body.fields)
    if (f.first == "available_min") f.second = stated ? value(*v.time->available_min) : value(nullptr);
    else if (f.first == "used_min") f.first = "planned_min";
  body.set("used_min", spent);
  body.set("left_min", stated ? value(available) : value(nullptr));
  body.set("assumed", array{"Weights of danger: now 100, may become dangerous 30, to be looked into 5, improvement 2: judgement.",
                            stated ? "The time of the visit is as stated." : "The time of the visit was not stated: all that can be done stands in one order."});
  a.order_of_work = std::move(said);
}

// ---- rules on notification, what was not looked at -------------------------------------------------------------------------

void notifiable_of(assessment& a, const visit& v, const rulebook& rules) {
  const auto ask = [&](const std::string& kind, const std::string& work, const std::string& subject, bool done) {
    if (kind.empty()) return;
    const auto n = notifiable_work(kind, rules);
    a.notifiable.push_back(object{{"work", work}, {"kind", n.work}, {"subject", subject}, {"answer", n.answer}, {"done", done}, {"rule", n.rule},
                                  {"source", std::string(n.from.title) + (n.from.clause.empty() ? "" : ", " + std::string(n.from.clause))}, {"grade", n.from.title.empty() ? std::string_view() : n.from.grade}, {"do", n.what_to_do}});
  };
  for (const auto& m : v.mended) ask(m.work, m.what, part_of(v, m.about).name, true);
  for (const auto& w : v.works) ask(w.kind, w.title, part_of(v, w.about).name, false);
}
void scope_of(assessment& a, const visit& v) {
  if (v.circuits.empty()) a.scope.push_back("No circuit was looked at.");
  if (v.appliances.empty()) a.scope.push_back("No heating element was looked at.");
  if (v.fans.empty()) a.scope.push_back("No fan was looked at.");
  if (v.observations.empty()) a.scope.push_back("Nothing that can be seen by eye was noted; that does not say that there was nothing.");
  a.scope.push_back("Only what is listed was looked at. Wiring that is covered, and rooms that are not named, were not.");
}

}  // namespace

void check_prices(const visit& v, std::vector<problem>& problems);
/// Prices and materials that no quote would take, said when the visit is read.
void check_prices(const visit& v, std::vector<problem>& problems) {
  if (!v.price) return;
  const auto& p = *v.price;
  const auto tried = [&](array lines, const std::string& path) {
    static const entry* e = find_entry("price.quote");
    try {
      (void)e->model.run(quote_inputs(p, std::move(lines)), {});
    } catch (const error& x) {
      problems.push_back({path, x.what()});
    }
  };
  array lines = ways_of(p);
  lines_of(lines, p, "an hour", 60.0, 60.0, 60.0, {{"a part", "1.00", 1.0}}, false);
  tried(std::move(lines), "prices");
  if (!problems.empty()) return;
  for (std::size_t i = 0; i < v.works.size(); ++i) {
    if (v.works[i].materials.empty()) continue;
    array of_work;
    lines_of(of_work, p, v.works[i].title, v.works[i].minutes, 0.0, 0.0, v.works[i].materials, false);
    tried(std::move(of_work), detail::indexed("works", i) + ".materials");
  }
}

void what_follows(assessment& a, const visit& v, const rulebook& rules, const decision_rule& rule) {
  readings_of_visit(a, v);
  isolate_of(a, v);
  const auto readings = readings_of(a);
  unproved_of(a, readings);
  changes_of(a, v, rules, rule);
  const auto all = matters_of(a, v);
  options_of(a, v, all);
  quote_of(a, v);
  order_of(a, v, all, readings);
  notifiable_of(a, v, rules);
  scope_of(a, v);
}

assessment assess(const visit& v, const rulebook& rules, const decision_rule& rule, const assess_options& how) {
  auto a = findings_of(v, rules, rule, how);
  if (how.whole) what_follows(a, v, rules, rule);
  return a;
}

// ---- many visits ---------------------------------------------------------------------------------------------------------

many_findings assess_many(std::span<const visit> visits, const rulebook& rules, const decision_rule& rule, unsigned threads, bool inquiries,
                          const std::function<bool(std::size_t)>& progress) {
  struct row {
    std::string path, call;
    unsigned char outcome, reason, danger;
    double value, limit, margin, probability;
  };
  std::vector<std::vector<row>> rows(visits.size());
  threads = std::max(1u, std::min<unsigned>(threads, static_cast<unsigned>(visits.size() / 8 + 1)));
  std::atomic<std::size_t> next = 0, done = 0;
  std::atomic<bool> stopped = false;
  std::vector<std::exception_ptr> trouble(threads);
  const auto work = [&](unsigned k) {
    try {
      for (std::size_t i; !stopped && (i = next.fetch_add(1)) < visits.size();) {
        const auto a = findings_of(visits[i], rules, rule, {.plan = false, .inquiries = inquiries, .whole = false, .steps = false});
        for (const auto& f : a.findings) {
          const auto& v = f.verdict;
          rows[i].push_back({f.path, f.call, static_cast<unsigned char>(v.outcome), static_cast<unsigned char>(v.reason), static_cast<unsigned char>(f.level), v.value, v.limit(), v.margin, v.probability});
        }
        const std::size_t n = ++done;
        if (k == 0 && progress && !progress(n)) stopped = true;
      }
    } catch (...) {
      trouble[k] = std::current_exception();
      stopped = true;
    }
  };
  std::vector<std::thread> others;
  for (unsigned k = 1; k < threads; ++k) others.emplace_back(work, k);
  work(0);
  for (auto& t : others) t.join();
  for (const auto& t : trouble)
    if (t) std::rethrow_exception(t);
  if (progress && !stopped) progress(visits.size());
  many_findings m;
  std::map<std::string, std::uint32_t> paths, calls;
  const auto place = [](std::map<std::string, std::uint32_t>& known, std::vector<std::string>& names, const std::string& name) {
    const auto [at, fresh] = known.emplace(name, static_cast<std::uint32_t>(names.size()));
    if (fresh) names.push_back(name);
    return at->second;
  };
  for (std::size_t i = 0; i < rows.size(); ++i)
    for (const auto& r : rows[i]) {
      m.visit.push_back(static_cast<std::uint32_t>(i));
      m.path.push_back(place(paths, m.paths, r.path));
      m.call.push_back(place(calls, m.calls, r.call));
      m.outcome.push_back(r.outcome);
      m.reason.push_back(r.reason);
      m.danger.push_back(r.danger);
      m.value.push_back(r.value);
      m.limit.push_back(r.limit);
      m.margin.push_back(r.margin);
      m.probability.push_back(r.probability);
    }
  return m;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// A visit from a document: its fields, its references, its instruments, its state before something was put right.
#include <makegood/job/notifiable.hpp>
#include <makegood/job/visit.hpp>
#include <makegood/job/words.hpp>
#include <makegood/registry.hpp>
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
void check_prices(const visit& v, std::vector<problem>& problems);                  // whole_visit.cpp

namespace {

/// Each part of a visit that others can refer to, with the name of its list.
template <class See>
void each_part(const visit& v, See see) {
  const auto all = [&](const auto& list, std::string_view name) {
    for (std::size_t i = 0; i < list.size(); ++i) see(name, i, std::string_view(list[i].id));
  };
  all(v.circuits, "circuits");
  all(v.appliances, "appliances");
  all(v.sensors, "sensors");
  all(v.fans, "fans");
  all(v.rooms, "rooms");
  all(v.inquiries, "inquiries");
  all(v.observations, "observations");
}
/// "supply", an id, or an id with its list ("circuits.kiln") where it stands in several.
void demand_part(const visit& v, const std::string& id, const std::string& path, std::vector<problem>& problems) {
  if (id.empty() || id == "supply") return;
  std::vector<std::string> found, names;
  each_part(v, [&](std::string_view list, std::size_t, std::string_view one) {
    const std::string whole = std::string(list) + "." + std::string(one);
    names.emplace_back(one);
    names.push_back(whole);
    if ((one == id || whole == id) && std::find(found.begin(), found.end(), whole) == found.end()) found.push_back(whole);
  });
  if (found.size() == 1) return;
  if (found.empty()) {
    const std::vector<std::string_view> views(names.begin(), names.end());
    const std::string near = nearest(id, views);
    problems.push_back({path, "refers to \"" + id + "\", which is not in the visit" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
  } else {
    problems.push_back({path, "\"" + id + "\" stands in more than one list: write \"" + found[0] + "\" or \"" + found[1] + "\""});
  }
}
/// Whether a part of the document has no problem yet: what hangs on its fields is then looked at.
bool whole_part(const std::vector<problem>& problems, const std::string& path) {
  return std::none_of(problems.begin(), problems.end(), [&](const problem& p) { return p.path.starts_with(path); });
}
/// Instruments that readings inside a document name.
void demand_instruments(const document::value& x, const std::set<std::string>& ids, const std::string& path, std::vector<problem>& problems) {
  if (const auto* list = x.as<document::array>())
    for (std::size_t i = 0; i < list->size(); ++i) demand_instruments((*list)[i], ids, detail::indexed(path, i), problems);
  const auto* o = x.as<document::object>();
  if (!o) return;
  const bool reads_something = o->find("value") || o->find("above") || o->find("below") || o->find("state");
  for (const auto& f : o->fields) {
    if (reads_something && f.first == "instrument" && f.second.as<std::string>()) demand_id(ids, *f.second.as<std::string>(), path + ".instrument", problems);
    else demand_instruments(f.second, ids, path + "." + f.first, problems);
  }
}
void check_calculation(const calculation& c, const std::string& path, std::vector<problem>& problems) {
  const bool whole = whole_part(problems, path);
  const entry* e = find_entry(c.call);
  if (!e) {
    std::vector<std::string> all;
    for (const auto& one : catalogue()) all.push_back(one.full_name());
    const std::vector<std::string_view> views(all.begin(), all.end());
    const std::string near = nearest(c.call, views);
    problems.push_back({path + ".call", "there is no \"" + c.call + "\" in the catalogue" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
    return;
  }
  std::vector<std::string_view> names;
  if (e->is == entry::what::model)
    for (const auto& a : e->model.args) names.push_back(a.name);
  else
    for (const auto& a : e->args()) names.push_back(a.name);
  for (const auto& f : c.inputs.fields) {
    if (std::find(names.begin(), names.end(), f.first) != names.end() && f.first != "rulebook") continue;
    const std::string near = f.first == "rulebook" ? std::string() : nearest(f.first, names);
    problems.push_back({path + ".inputs." + f.first, f.first == "rulebook" ? "the rulebook is that of the assessment" : c.call + " has no such argument" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
  }
  const auto missing = [&](std::string_view name, bool optional) {
    if (whole && !optional && name != "rulebook" && !c.inputs.find(name)) problems.push_back({path + ".inputs", c.call + " needs \"" + std::string(name) + "\" (null where it was not measured)"});
  };
  if (e->is == entry::what::model)
    for (const auto& a : e->model.args) missing(a.name, a.optional);
  else
    for (const auto& a : e->args()) missing(a.name, a.optional);
}
/// Fields of a structure that a document overlays; the others stay as they are.
template <class S>
void overlay(detail::reader& r, instrument_shelf& shelf, const document::object& from, const std::string& path, S& s) {
  const auto names = detail::names_of<S>();
  for (const auto& f : from.fields) {
    if (std::find(names.begin(), names.end(), f.first) != names.end() && f.first != "id") continue;
    const std::string near = f.first == "id" ? std::string() : nearest(f.first, names);
    r.problems.push_back({path + "." + f.first, f.first == "id" ? "stays as it is" : "the part has no such field" + (near.empty() ? "" : "; did you mean \"" + near + "\"?")});
  }
  S::fields([&](std::string_view name, auto member, const field& f) {
    const auto* item = from.find(name);
    if (!item || name == "id") return;
    std::remove_cvref_t<decltype(s.*member)> x{};
    r.value(*item, path + "." + std::string(name), x, f);
    s.*member = std::move(x);
    if constexpr (std::is_same_v<std::remove_cvref_t<decltype(s.*member)>, reading>) shelf.attach(s.*member, f.instrument);
  });
}
void demand_kind_of_work(const std::string& kind, const std::string& path, std::vector<problem>& problems) {
  std::vector<std::string_view> keys;
  for (const auto& k : kinds_of_work) {
    keys.push_back(k.key);
    if (kind.empty() || k.key == kind) return;
  }
  const std::string near = nearest(kind, keys);
  std::string list;
  for (const auto k : keys) list += (list.empty() ? "" : ", ") + std::string(k);
  problems.push_back({path, "\"" + kind + "\" is no kind of work" + (near.empty() ? " that the rules know: " + list : "; did you mean \"" + near + "\"?")});
}
visit found_before(const visit& v, std::vector<problem>& problems) {
  visit was = v;
  detail::reader r;
  std::vector<problem> known;  // of the instruments: said already
  instrument_shelf shelf(v, known);
  for (std::size_t i = 0; i < v.mended.size(); ++i) {
    const auto& m = v.mended[i];
    if (m.before.fields.empty()) continue;
    const std::string path = detail::indexed("put_right", i) + ".before", at = path_of(v, m.about);
    std::size_t before = known.size();
    const auto lay = [&](auto& list, std::string_view name) {
      for (std::size_t k = 0; k < list.size(); ++k)
        if (at == detail::indexed(std::string(name), k)) overlay(r, shelf, m.before, path, list[k]);
    };
    if (m.about == "supply") overlay(r, shelf, m.before, path, was.incoming);
    else if (at.empty()) r.problems.push_back({detail::indexed("put_right", i) + ".about", "says of which part: it has fields as they were before"});
    else if (at.starts_with("inquiries") || at.starts_with("observations") || at.starts_with("rooms"))
      r.problems.push_back({detail::indexed("put_right", i) + ".about", "is no circuit, appliance, sensor, fan or supply, so it has no readings before"});
    lay(was.circuits, "circuits");
    lay(was.appliances, "appliances");
    lay(was.sensors, "sensors");
    lay(was.fans, "fans");
    for (; before < known.size(); ++before) r.problems.push_back(known[before]);
  }
  problems.insert(problems.end(), r.problems.begin(), r.problems.end());
  return was;
}

}  // namespace

std::string path_of(const visit& v, std::string_view id) {
  std::string found;
  each_part(v, [&](std::string_view list, std::size_t i, std::string_view one) {
    if (found.empty() && !one.empty() && (one == id || std::string(list) + "." + std::string(one) == id)) found = detail::indexed(std::string(list), i);
  });
  return found;
}
visit as_found(const visit& v) {
  std::vector<problem> problems;
  visit was = found_before(v, problems);
  if (!problems.empty()) throw document_error(problems);
  return was;
}

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
    demand_id(circuits, v.fans[i].circuit_id, detail::indexed("fans", i) + ".circuit", r.problems);
  }
  for (std::size_t i = 0; i < v.circuits.size(); ++i)
    for (std::size_t k = 0; k < v.circuits[i].rooms.size(); ++k)
      demand_id(rooms, v.circuits[i].rooms[k], detail::indexed(detail::indexed("circuits", i) + ".rooms", k), r.problems);
  for (std::size_t i = 0; i < v.inquiries.size(); ++i) demand_part(v, v.inquiries[i].about, detail::indexed("inquiries", i) + ".about", r.problems);
  ids_of(v.calculations, "calculations", r.problems);
  for (std::size_t i = 0; i < v.calculations.size(); ++i) {
    demand_part(v, v.calculations[i].about, detail::indexed("calculations", i) + ".about", r.problems);
    std::set<std::string> instruments;
    for (const auto& one : v.instruments) instruments.insert(one.id);
    demand_instruments(v.calculations[i].inputs, instruments, detail::indexed("calculations", i) + ".inputs", r.problems);
    if (!v.calculations[i].call.empty()) check_calculation(v.calculations[i], detail::indexed("calculations", i), r.problems);
  }
  const auto observations = ids_of(v.observations, "observations", r.problems);
  for (std::size_t i = 0; i < v.observations.size(); ++i) {
    const auto& o = v.observations[i];
    demand_part(v, o.about, detail::indexed("observations", i) + ".about", r.problems);
    if (o.kind.empty() || words_of_observation(o.kind)) continue;
    std::vector<std::string_view> kinds;
    if (const auto* all = words().find("observations"))
      for (const auto& f : all->as<document::object>()->fields) kinds.push_back(f.first);
    const std::string near = nearest(o.kind, kinds);
    r.problems.push_back({detail::indexed("observations", i) + ".kind", "there is no kind \"" + o.kind + "\"" + (near.empty() ? "; makegood.words() lists them" : "; did you mean \"" + near + "\"?")});
  }
  ids_of(v.mended, "put_right", r.problems);
  for (std::size_t i = 0; i < v.mended.size(); ++i) {
    demand_part(v, v.mended[i].about, detail::indexed("put_right", i) + ".about", r.problems);
    demand_kind_of_work(v.mended[i].work, detail::indexed("put_right", i) + ".work", r.problems);
    for (std::size_t k = 0; k < v.mended[i].ends.size(); ++k)
      demand_id(observations, v.mended[i].ends[k], detail::indexed(detail::indexed("put_right", i) + ".ends", k), r.problems);
  }
  ids_of(v.works, "works", r.problems);
  for (std::size_t i = 0; i < v.works.size(); ++i) {
    const auto& w = v.works[i];
    const std::string path = detail::indexed("works", i);
    demand_part(v, w.about, path + ".about", r.problems);
    demand_kind_of_work(w.kind, path + ".work", r.problems);
    if (!whole_part(r.problems, path)) continue;
    if (w.minutes_low.value_or(0.0) > w.minutes || w.minutes_high.value_or(w.minutes) < w.minutes)
      r.problems.push_back({path + ".minutes", "lies outside minutes_low to minutes_high"});
  }
  if (r.problems.empty()) (void)found_before(v, r.problems);
  if (r.problems.empty()) check_prices(v, r.problems);
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


}  // namespace job
}  // namespace v1
}  // namespace makegood

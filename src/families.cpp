// SPDX-License-Identifier: MIT
// The families of hypotheses that come with the library (src/families/*.json, written into this file when it is built), and the models
// of the subject job that stand on them.
#include <makegood/air/fan_diagnosis.hpp>
#include <makegood/job/session.hpp>
#include <makegood/job/visit.hpp>
#include <algorithm>
#include <cstdlib>
#include <map>
#include <mutex>
#include "subjects.hpp"
#include "tokens.hpp"

namespace makegood {
inline namespace v1 {
namespace job {
namespace {
constexpr subjects::token_text family_texts[] = {
#include "families.inc"
};

document::value read_family(std::string_view id) {
  if (auto found = subjects::read_tokens(family_texts, id); !found.is_null()) return found;
  const auto ids = family_ids();
  std::string list;
  for (const auto i : ids) list += (list.empty() ? "\"" : ", \"") + std::string(i) + "\"";
  const auto near = document::nearest(id, ids);
  throw range_error("family: there is no \"" + std::string(id) + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?") + " There are " + list);
}

/// The operating flow and pressure over ln(factor of the run / factor of the fan), as fan_diagnosis has them.
void prepare_fan(const document::object& given, numbers_by_name& numbers, tables_by_name& tables) {
  const auto* v = given.find("curve");
  const auto* list = v ? v->as<document::array>() : nullptr;
  if (!list) throw range_error("family \"fan\": \"curve\" is missing: points of the fan, [[flow_l_per_s, pressure_pa], ...]");
  std::vector<air::fan_point> points;
  for (const auto& p : *list) {
    const auto* one = p.as<document::array>();
    if (!one || one->size() != 2 || !(*one)[0].as<double>() || !(*one)[1].as<double>()) throw range_error("family \"fan\": a point of the curve is [flow_l_per_s, pressure_pa]");
    points.push_back({*(*one)[0].as<double>(), *(*one)[1].as<double>()});
  }
  const double loss = numbers["run_pa"], at = numbers["run_flow_l_per_s"];
  if (!(loss > 0.0) || !(at > 0.0)) throw range_error("family \"fan\": run_pa and run_flow_l_per_s must be above 0");
  const air::fan_curve fan(std::move(points));
  air::system_curve run;
  run.quadratic = loss / (at * at);
  const air::detail::fan_table table(fan, run);
  auto flow = std::make_shared<line_table>(), pressure = std::make_shared<line_table>();
  for (std::size_t i = 0; i < table.flow.size(); ++i) {
    const double x = table.first + table.step * static_cast<double>(i);
    flow->x.push_back(x), flow->y.push_back(table.flow[i]);
    pressure->x.push_back(x), pressure->y.push_back(table.pressure[i]);
  }
  numbers["flow_top_l_per_s"] = 2.0 * fan.pressure().last_flow();
  double most = 1.0;
  for (const auto& p : fan.pressure().points()) most = std::max(most, p.value);
  numbers["pressure_top_pa"] = 2.0 * most;
  tables["fan_flow"] = std::move(flow);
  tables["fan_pressure"] = std::move(pressure);
}
}  // namespace

std::vector<std::string_view> family_ids() {
  std::vector<std::string_view> ids;
  for (const auto& f : family_texts)
    if (f.id != "shared") ids.push_back(f.id);
  return ids;
}
document::value shared_family() { return read_family("shared"); }
document::value family(std::string_view id) {
  static std::mutex one_at_a_time;
  static std::map<std::string, document::value, std::less<>> known;  // reading one takes longer than copying it
  const std::scoped_lock lock(one_at_a_time);
  auto found = known.find(id);
  if (found == known.end()) found = known.emplace(std::string(id), extended(shared_family(), read_family(id))).first;
  return found->second;
}

document::value extended(const document::value& family, const document::value& patch) {
  const auto* a = family.as<document::object>();
  const auto* b = patch.as<document::object>();
  if (a && b) {
    document::object out = *a;
    for (const auto& f : b->fields) {
      bool there = false;
      for (auto& g : out.fields)
        if (g.first == f.first) g.second = extended(g.second, f.second), there = true;
      if (!there) out.set(f.first, f.second);
    }
    return out;
  }
  const auto id_of = [](const document::value& v) -> const std::string* {
    const auto* o = v.as<document::object>();
    const auto* id = o ? o->find("id") : nullptr;
    return id ? id->as<std::string>() : nullptr;
  };
  const auto* x = family.as<document::array>();
  const auto* y = patch.as<document::array>();
  bool by_id = x && y && !x->empty();
  if (by_id)
    for (const auto* list : {x, y})
      for (const auto& v : *list) by_id = by_id && id_of(v);
  if (!by_id) return patch;
  document::array out = *x;
  for (const auto& v : *y) {
    const auto* remove = v.as<document::object>()->find("remove");
    const bool gone = remove && remove->as<bool>() && *remove->as<bool>();
    auto old = std::find_if(out.begin(), out.end(), [&](const auto& o) { return *id_of(o) == *id_of(v); });
    if (old == out.end()) {
      if (gone) throw range_error("family: there is no \"" + *id_of(v) + "\" to remove");
      out.push_back(v);
    } else if (gone) {
      out.erase(old);
    } else {
      *old = extended(*old, v);
    }
  }
  return out;
}

session session_of(const visit& v, std::size_t i, session_options options) {
  const auto& q = v.inquiries.at(i);
  session s(fill(family(q.family), q.given, options.with), std::move(options));
  for (const auto& c : q.standing) s.stands(c);
  for (const auto& f : q.readings.fields) {
    std::string last;  // label of the reading before in the list
    const auto one = [&](const document::value& value) {
      if (const auto* w = value.as<std::string>()) return (void)(last = s.read(f.first, *w));
      auto r = reading_from(value);
      for (const auto& shelf : v.instruments) {
        if (shelf.id != r.instrument || r.meter) continue;
        r = r.with(std::make_shared<const v1::instrument>(shelf.known()));
      }
      last = s.read(f.first, r, {}, r.supersedes.empty() ? std::string() : last);
    };
    if (const auto* several = f.second.as<document::array>())
      for (const auto& value : *several) one(value);
    else one(f.second);
  }
  return s;
}
void check_inquiry(const visit& v, std::size_t i, std::vector<problem>& problems);
void check_inquiry(const visit& v, std::size_t i, std::vector<problem>& problems) {
  try {
    (void)session_of(v, i);
  } catch (const error& e) {
    problems.push_back({"inquiries[" + std::to_string(i) + "]", e.what()});
  }
}

const preparation* preparation_of(std::string_view name) {
  static const std::map<std::string, preparation, std::less<>> all{{"fan", prepare_fan}};
  const auto p = all.find(name);
  return p == all.end() ? nullptr : &p->second;
}

}  // namespace job
}  // namespace v1

namespace subjects {
namespace {
using document::array;
using document::object;

/// A family by its id or as a document, with a patch.
document::value family_from(const fields& in, std::string_view who) {
  const auto& v = in.need("family");
  document::value f;
  if (const auto* id = v.as<std::string>()) f = job::family(*id);
  else if (v.as<object>()) f = job::extended(job::shared_family(), v);
  else throw range_error(std::string(who) + ": family is the id of one, or a document");
  if (in.has("patch")) f = job::extended(f, in.need("patch"));
  return f;
}
job::session_options options_from(const fields& in, std::string_view who) {
  job::session_options o;
  if (!in.has("costs")) return o;
  const auto* c = in.need("costs").as<object>();
  if (!c) throw range_error(std::string(who) + ": costs is an object of numbers");
  o.costs = job::costs_from(*c, who);
  return o;
}
document::value inquire(std::string_view who, const object& inputs) {
  const fields in(who, inputs);
  in.only("family", "given", "readings", "standing", "patch", "costs");
  static const object nothing;
  const auto* given = in.has("given") ? in.need("given").as<object>() : &nothing;
  if (!given) throw range_error(std::string(who) + ": given is an object of numbers");
  job::session s(job::fill(family_from(in, who), *given), options_from(in, who));
  if (in.has("standing")) {
    const auto* list = in.need("standing").as<array>();
    if (!list) throw range_error(std::string(who) + ": standing is a list of conditions");
    for (const auto& x : *list) {
      if (!x.as<std::string>()) throw range_error(std::string(who) + ": standing is a list of conditions");
      s.stands(*x.as<std::string>());
    }
  }
  if (in.has("readings")) {
    const auto* list = in.need("readings").as<object>();
    if (!list) throw range_error(std::string(who) + ": readings is an object: by test, a number, a reading, a word, or a list of these");
    for (const auto& f : list->fields) {
      std::string last;  // label of the reading before in the list
      const auto one = [&](const document::value& v) {
        if (const auto* w = v.as<std::string>()) return (void)(last = s.read(f.first, *w));
        try {
          const auto r = reading_from(v);
          last = s.read(f.first, r, {}, r.supersedes.empty() ? std::string() : last);
        } catch (const range_error& e) {
          throw range_error(std::string(who) + ": " + f.first + ": " + e.what());
        }
      };
      if (const auto* several = f.second.as<array>())
        for (const auto& v : *several) one(v);
      else one(f.second);
    }
  }
  return s.to_document();
}
constexpr model_argument inquiry_arguments[] = {
    {"family", "family", "what is looked into: the id of a family (\"heating_element\", ...) or a document"},
    {"given", "object", "what is known of it: the numbers that the family asks for", true},
    {"readings", "object", "by test: a number, a reading ({\"above\": 999}), a word, or a list of these; tests in the order in which they were made", true},
    {"standing", "texts", "conditions that stand before the first reading, such as \"isolated\"", true},
    {"patch", "object", "laid over the family: objects field by field, lists by id", true},
    {"costs", "object", "money_per_hour 45, fault_left 150, loss_of_use 60 (invented: replace them), danger_limit 0.001", true}};
constexpr source method{"Bayes' rule for joint readings; expected value of sample information", "Raiffa and Schlaifer (1961); JCGM 101 for the propagation", "derived"};
document::value run_diagnose(const object& inputs, const rulebook&) { return inquire("diagnose", inputs); }
document::value run_next_test(const object& inputs, const rulebook&) { return inquire("next_test", inputs); }
constexpr model diagnose{{"diagnose", "What is wrong, from readings: the faults of a family with their probabilities, and what each reading says.", inquiry_arguments, method, run_diagnose, nullptr}};
constexpr model next_test{{"next_test", "Which test to make next, or what to do: the value of each test in money and minutes, danger before money, never a live test where a dead one tells.",
                           inquiry_arguments, method, run_next_test, nullptr}};
}  // namespace
void inquiries(std::vector<entry>& all) { append(all, "job", list<diagnose, next_test>{}); }
}  // namespace subjects
}  // namespace makegood

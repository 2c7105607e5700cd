// SPDX-License-Identifier: MIT
// Families of hypotheses as data: what may be wrong with one kind of thing, what each test would show, what it takes, and what may be done.
// Job floor. Opt-in: needs the compiled target, whose formulas the forward models call by name.
//
// A family is a document: "given" (numbers that the caller knows), "conditions", "accesses", "tests", "hypotheses", "acts". Lists are
// merged by "id" when a family is extended, so that a caller changes one prior or adds one fault and leaves the rest.
// Weights before readings are judgement: they stand in the document, are printed with every answer, and can be replaced.
#pragma once
#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../document.hpp"
#include "expression.hpp"
#include "next_test.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// The families that come with the library, by their ids; each as a document that may be read, extended and handed back.
std::vector<std::string_view> family_ids();
document::value family(std::string_view id);
/// What every family shares: conditions (isolated, insulation proved, energised) and the act of isolating, securing and labelling.
document::value shared_family();
/// A family with a patch on it: objects field by field, lists by "id" ("remove": true takes one out); everything else is replaced.
document::value extended(const document::value& family, const document::value& patch);

/// Words of a test and of a hypothesis that the numbers do not need.
struct test_words {
  std::string title, unit, caution, how;
  reads kind = reads::nothing;
  double own_ratio = 0.0, own_fixed = 0.0;  ///< what a reading has of its own beside its instrument: repeated, it differs
};
struct hypothesis_words {
  std::string title, plain, next;
};
/// A family with its numbers filled in.
struct family_case {
  std::string id, title;
  std::vector<test> tests;
  std::vector<test_words> tests_said;
  std::vector<hypothesis> hypotheses;
  std::vector<hypothesis_words> hypotheses_said;
  std::vector<stake> stakes;
  std::vector<test_work> works;  ///< one for each test, in their order
  std::vector<act> acts;
  std::vector<std::string> acts_said;  ///< what an act leaves unproved
  std::vector<condition> conditions;
  std::vector<access> accesses;
  numbers_by_name given;
  std::vector<std::string> notes;
  unsigned points = 512;         ///< that its sums need: 512, 2048 or 4096

  std::size_t test_place(std::string_view name) const {
    std::size_t t = 0;
    while (t < tests.size() && tests[t].id != name) ++t;
    return t;
  }
};

/// Prepares what no expression can: further numbers and tables from what is given (a fan's curve and its run).
using preparation = std::function<void(const document::object& given, numbers_by_name&, tables_by_name&)>;
const preparation* preparation_of(std::string_view name);

/// The instruments that readings will be taken with, by kind; none: the worst case of the class.
using instruments_by_kind = std::map<reads, reading>;

namespace detail {
class family_reader {
 public:
  family_reader(const document::value& doc, const document::object& given, const instruments_by_kind& with) : with_(with) {
    const auto* o = doc.as<document::object>();
    if (!o) throw range_error("family: a family is an object");
    out_.id = text_or(*o, "id", "family");
    who_ = "family \"" + out_.id + "\": ";
    if (const auto* x = o->find("points")) {
      const double* n = x->as<double>();
      if (!n || (*n != 512.0 && *n != 2048.0 && *n != 4096.0)) throw range_error(who_ + "points are 512, 2048 or 4096");
      out_.points = static_cast<unsigned>(*n);
    }
    known(*o, who_, {"id", "title", "note", "points", "given", "prepare", "tables", "conditions", "accesses", "tests", "hypotheses", "acts"});
    out_.title = text_or(*o, "title", out_.id);
    if (const auto* n = o->find("note"); n && n->as<std::string>()) out_.notes.push_back(*n->as<std::string>());
    take_given(*o, given);
    each(*o, "conditions", [&](const document::object& c, const std::string& id) {
      known(c, in("condition", id), {"id", "title", "minutes", "by_test", "needs", "ends"});
      out_.conditions.push_back({id, text_or(c, "title", id), number_or(c, "minutes", 0.0), truth_or(c, "by_test", false), words(c, "needs"), words(c, "ends")});
    });
    each(*o, "accesses", [&](const document::object& a, const std::string& id) {
      known(a, in("access", id), {"id", "title", "minutes"});
      out_.accesses.push_back({id, text_or(a, "title", id), number_or(a, "minutes", 0.0)});
    });
    each(*o, "tests", [&](const document::object& t, const std::string& id) { take_test(t, id); });
    each(*o, "hypotheses", [&](const document::object& h, const std::string& id) { take_hypothesis(h, id); });
    each(*o, "acts", [&](const document::object& a, const std::string& id) {
      known(a, in("act", id), {"id", "title", "money", "minutes", "ends", "isolates", "leaves"});
      act one{id, text_or(a, "title", id), number_or(a, "money", 0.0), number_or(a, "minutes", 0.0), {}, truth_or(a, "isolates", false)};
      for (auto& e : words(a, "ends")) {
        bool left_out = false, there = false;
        for (const auto& x : left_out_) left_out = left_out || x == e;
        for (const auto& h : out_.hypotheses) there = there || h.id == e;
        if (!there && !left_out) throw range_error(in("act", id) + "it ends \"" + e + "\", which is not among the hypotheses");
        if (there) one.ends.push_back(std::move(e));
      }
      out_.acts.push_back(std::move(one));
      out_.acts_said.push_back(text_or(a, "leaves", ""));
    });
  }
  family_case result() { return std::move(out_); }

 private:
  family_case out_;
  std::string who_;
  const instruments_by_kind& with_;
  tables_by_name tables_;
  std::vector<std::string> left_out_;

  std::string in(std::string_view what, std::string_view id) const { return who_ + std::string(what) + " \"" + std::string(id) + "\": "; }
  static void known(const document::object& o, const std::string& who, std::initializer_list<std::string_view> names) {
    for (const auto& f : o.fields) {
      bool there = false;
      for (const auto n : names) there = there || n == f.first;
      if (there) continue;
      const std::vector<std::string_view> list(names);
      const auto near = document::nearest(f.first, list);
      throw range_error(who + "no field \"" + f.first + "\" is known" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
    }
  }
  static std::string text_or(const document::object& o, std::string_view name, std::string_view otherwise) {
    const auto* v = o.find(name);
    return v && v->as<std::string>() ? *v->as<std::string>() : std::string(otherwise);
  }
  static bool truth_or(const document::object& o, std::string_view name, bool otherwise) {
    const auto* v = o.find(name);
    return v && v->as<bool>() ? *v->as<bool>() : otherwise;
  }
  std::vector<std::string> words(const document::object& o, std::string_view name) const {
    std::vector<std::string> out;
    const auto* v = o.find(name);
    if (!v) return out;
    const auto* list = v->as<document::array>();
    if (!list) throw range_error(who_ + "\"" + std::string(name) + "\" must be a list of words");
    for (const auto& x : *list) {
      if (!x.as<std::string>()) throw range_error(who_ + "\"" + std::string(name) + "\" must be a list of words");
      out.push_back(*x.as<std::string>());
    }
    return out;
  }
  /// A number, or an expression of what is given.
  double number(const document::value& v, const std::string& who) const {
    if (const auto* x = v.as<double>()) return *x;
    if (const auto* t = v.as<std::string>()) {
      static const std::vector<std::string> none;
      try {
        return expression(*t, none, out_.given, tables_).value(nullptr);
      } catch (const range_error& e) {
        throw range_error(who + e.what());
      }
    }
    throw range_error(who + "a number or an expression is expected");
  }
  double number_or(const document::object& o, std::string_view name, double otherwise) const {
    const auto* v = o.find(name);
    return v && !v->is_null() ? number(*v, who_ + std::string(name) + ": ") : otherwise;
  }
  template <class F>
  void each(const document::object& o, std::string_view name, F f) const {
    const auto* v = o.find(name);
    if (!v) return;
    const auto* list = v->as<document::array>();
    if (!list) throw range_error(who_ + "\"" + std::string(name) + "\" must be a list");
    for (std::size_t i = 0; i < list->size(); ++i) {
      const auto* one = (*list)[i].as<document::object>();
      const auto* id = one ? one->find("id") : nullptr;
      if (!id || !id->as<std::string>()) throw range_error(who_ + std::string(name) + "[" + std::to_string(i) + "] needs an \"id\"");
      f(*one, *id->as<std::string>());
    }
  }
  void take_given(const document::object& o, const document::object& given) {
    std::vector<std::string_view> names;
    if (const auto* g = o.find("given"); g && g->as<document::object>())
      for (const auto& f : g->as<document::object>()->fields) {
        names.push_back(f.first);
        const auto* said = f.second.as<document::object>();
        if (!said) throw range_error(who_ + "given \"" + f.first + "\" must be an object with \"text\", \"unit\", \"default\"");
        known(*said, in("given", f.first), {"text", "unit", "default", "low", "high", "list"});
        const auto* v = given.find(f.first);
        const bool is_list = truth_or(*said, "list", false);
        if (!v || v->is_null()) {
          v = said->find("default");
          if (!v && is_list) throw range_error(who_ + "\"" + f.first + "\" is missing: " + text_or(*said, "text", ""));
        }
        if (is_list) continue;
        double x = no_number;
        if (v && !v->is_null()) {
          x = number(*v, in("given", f.first));
          if (!is_finite(x)) throw range_error(in("given", f.first) + "the number must be finite");
          const double low = number_or(*said, "low", -1e300), high = number_or(*said, "high", 1e300);
          if (x < low || x > high)
            throw range_error(who_ + f.first + " = " + number_text(x) + " " + text_or(*said, "unit", "") + ": from " + number_text(low) + " to " + number_text(high));
        }
        out_.given[f.first] = x;
      }
    for (const auto& f : given.fields) {
      bool there = false;
      for (const auto n : names) there = there || n == f.first;
      if (there) continue;
      const auto near = document::nearest(f.first, names);
      throw range_error(who_ + "nothing is given as \"" + f.first + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
    }
    if (const auto* t = o.find("tables"); t && t->as<document::object>())
      for (const auto& f : t->as<document::object>()->fields) {
        auto made = std::make_shared<line_table>();
        const auto* one = f.second.as<document::object>();
        for (const auto side : {"x", "y"}) {
          const auto* v = one ? one->find(side) : nullptr;
          const auto* list = v ? v->as<document::array>() : nullptr;
          if (!list || list->size() < 2) throw range_error(in("table", f.first) + "two lists \"x\" and \"y\" of at least two numbers");
          for (const auto& x : *list) (side[0] == 'x' ? made->x : made->y).push_back(number(x, in("table", f.first)));
        }
        if (made->x.size() != made->y.size() || !std::is_sorted(made->x.begin(), made->x.end(), [](double a, double b) { return a <= b; }))
          throw range_error(in("table", f.first) + "\"x\" must rise, and \"y\" be as long");
        tables_[f.first] = std::move(made);
      }
    if (const auto name = text_or(o, "prepare", ""); !name.empty()) {
      const auto* p = preparation_of(name);
      if (!p) throw range_error(who_ + "there is no preparation \"" + name + "\"");
      (*p)(given, out_.given, tables_);
    }
  }
  void take_test(const document::object& t, const std::string& id) {
    const auto who = in("test", id);
    known(t, who, {"id", "title", "how", "reads", "unit", "low", "high", "broad", "outcomes", "outcomes_share", "minutes", "money", "live", "access", "needs", "proves", "own_ratio", "own_fixed", "caution"});
    test one;
    one.id = id;
    one.title = text_or(t, "title", id);
    one.low = number_or(t, "low", 0.0);
    one.high = number_or(t, "high", 0.0);
    one.categories = words(t, "outcomes");
    const auto broad = text_or(t, "broad", "log_uniform");
    if (broad != "log_uniform" && broad != "uniform") throw range_error(who + "\"broad\" is log_uniform or uniform");
    one.broad = broad == "uniform" ? test::spread::uniform : test::spread::log_uniform;
    one.outcomes_share = number_or(t, "outcomes_share", 0.2);
    test_words said{one.title, text_or(t, "unit", ""), text_or(t, "caution", ""), text_or(t, "how", ""), reads::nothing, number_or(t, "own_ratio", 0.01), number_or(t, "own_fixed", 0.0)};
    if (const auto word = text_or(t, "reads", ""); !word.empty()) {
      said.kind = reads_of(word);
      if (said.kind == reads::nothing) throw range_error(who + "it \"reads\" " + reads_text());
    }
    if (one.real() && said.kind == reads::nothing) throw range_error(who + "a value needs \"reads\": " + reads_text());
    test_work work;
    work.reading = coming(id, said);
    work.minutes = number_or(t, "minutes", 2.0);
    work.money = number_or(t, "money", 0.0);
    work.live = truth_or(t, "live", false);
    work.access = text_or(t, "access", "");
    work.needs = words(t, "needs");
    if (const auto* p = t.find("proves"); p && p->as<document::object>()) {
      const auto& proof = *p->as<document::object>();
      known(proof, who, {"condition", "from", "to", "outcome"});
      work.proves = text_or(proof, "condition", "");
      work.proves_from = number_or(proof, "from", no_number);
      work.proves_to = number_or(proof, "to", no_number);
      work.proves_word = text_or(proof, "outcome", "");
    }
    out_.tests.push_back(std::move(one));
    out_.tests_said.push_back(std::move(said));
    out_.works.push_back(std::move(work));
  }
  coming_reading coming(const std::string& id, const test_words& said) const {
    coming_reading c;
    c.test = id;
    if (said.kind == reads::nothing) return c;
    reading r(1.0);
    if (const auto w = with_.find(said.kind); w != with_.end()) {
      r = w->second;
      r.is = reading::state::value;
      r.number = 1.0;
    }
    const auto o = observation::from(id, r, said.kind);
    c.parts = o.number.parts;
    c.gains = o.gains;
    c.resolution = o.resolution;
    if (said.own_fixed > 0.0) c.parts.push_back({"repeated, " + id, said.own_fixed});
    if (said.own_ratio > 0.0) c.gains.push_back({"repeated, " + id, said.own_ratio});
    return c;
  }
  void take_hypothesis(const document::object& h, const std::string& id) {
    const auto who = in("hypothesis", id);
    known(h, who, {"id", "title", "plain", "next", "prior", "fault", "danger", "isolation_ends", "left_money", "parameters", "shows", "parts"});
    hypothesis one;
    one.id = id;
    one.title = text_or(h, "title", id);
    one.prior = number_or(h, "prior", 1.0);
    if (!(one.prior > 0.0)) {  // it cannot be in this case (no flexible duct, no second element ...)
      if (one.prior < 0.0 || is_nan(one.prior)) throw range_error(who + "the prior must be a weight from 0");
      left_out_.push_back(id);
      return;
    }
    const auto danger_word = text_or(h, "danger", "none");
    if (danger_word != "none" && danger_word != "property" && danger_word != "life") throw range_error(who + "\"danger\" is none, property or life");
    one.danger = danger_word == "life" ? danger::life : danger_word == "property" ? danger::property : danger::none;
    one.parts = words(h, "parts");
    std::vector<std::string> names;
    if (const auto* p = h.find("parameters"); p && p->as<document::object>())
      for (const auto& f : p->as<document::object>()->fields) {
        const auto* list = f.second.as<document::array>();
        const auto* shape = list && !list->empty() ? (*list)[0].as<std::string>() : nullptr;
        if (!shape) throw range_error(who + f.first + ": [\"normal\", mean, sd] or another distribution");
        std::vector<double> x;
        for (std::size_t i = 1; i < list->size(); ++i) x.push_back(number((*list)[i], who + f.first + ": "));
        const std::size_t wanted = *shape == "triangular" ? 3 : 2;
        if (x.size() != wanted) throw range_error(who + f.first + ": " + *shape + " takes " + std::to_string(wanted) + " numbers");
        distribution d;
        if (*shape == "normal") d = distribution::normal(x[0], x[1]);
        else if (*shape == "log_normal") d = distribution::log_normal(x[0], x[1]);
        else if (*shape == "uniform") d = distribution::uniform(x[0], x[1]);
        else if (*shape == "log_uniform") d = distribution::log_uniform(x[0], x[1]);
        else if (*shape == "triangular") d = distribution::triangular(x[0], x[1], x[2]);
        else throw range_error(who + f.first + ": a distribution is normal, log_normal, uniform, log_uniform or triangular");
        one.parameters.push_back({f.first, d});
        names.push_back(f.first);
      }
    if (const auto* s = h.find("shows"); s && s->as<document::object>())
      for (const auto& f : s->as<document::object>()->fields) {
        const auto at_test = who + "\"" + f.first + "\": ";
        prediction p;
        const auto real = [&](const document::value& v) -> prediction {
          if (const auto* x = v.as<double>()) return prediction(*x);
          if (!v.as<std::string>()) throw range_error(at_test + "a number, an expression, or an object of outcomes");
          try {
            return expression::prediction(*v.as<std::string>(), names, out_.given, tables_);
          } catch (const range_error& e) {
            throw range_error(at_test + e.what());
          }
        };
        if (const auto* outcomes = f.second.as<document::object>()) {
          if (const auto* v = outcomes->find("value")) p = real(*v);
          for (const auto& c : outcomes->fields)
            if (c.first != "value") p.or_outcome(c.first, number(c.second, at_test));
        } else {
          p = real(f.second);
        }
        one.predictions.emplace_back(f.first, std::move(p));
      }
    stake at_stake;
    at_stake.fault = truth_or(h, "fault", true);
    at_stake.left_money = number_or(h, "left_money", no_number);
    at_stake.isolation_ends_danger = truth_or(h, "isolation_ends", true);
    out_.hypotheses.push_back(std::move(one));
    out_.hypotheses_said.push_back({text_or(h, "title", id), text_or(h, "plain", ""), text_or(h, "next", "")});
    out_.stakes.push_back(at_stake);
  }
};
}  // namespace detail

/// A family with what is given filled in; every message names the family and the part.
inline family_case fill(const document::value& family, const document::object& given, const instruments_by_kind& with = {}) {
  return detail::family_reader(family, given, with).result();
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Every formula, check and model without its types: what the doors, the ledger and the help are made from.
// Opt-in: an embedder that calls formulas by name in C++ does not need it.
#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>
#include "document.hpp"
#include "scalar/interval.hpp"
#include "verdict.hpp"

namespace makegood {
inline namespace v1 {

struct slope_columns;
struct check_columns;

/// A formula without its types. Numbers stand in the order of the arguments; a choice is the index of its row.
struct formula_info {
  const void* self = nullptr;
  out result{};
  std::span<const argument> args{};
  source from{};
  remarks about{};
  double (*value)(const void*, const double*) = nullptr;
  /// Ranges, relations and value in one: NaN where something is refused (then `check` says what).
  double (*checked)(const double*) = nullptr;
  fault (*check)(const void*, const double*) = nullptr;
  message (*refusal)(const void*, fault, const double*) = nullptr;
  double (*gradient)(const void*, const double*, double*) = nullptr;
  /// Derivatives by two arguments up to the third order, for the second order of uncertainty.
  detail::curvature (*curvature)(const void*, const double*, std::size_t i, std::size_t j) = nullptr;
  working (*work)(const void*, const double*) = nullptr;
  equation_text (*equation)(const void*) = nullptr;
  /// Every value while the arguments lie between two ends; throws as a call does.
  interval (*bounds)(const void*, const double* low, const double* high) = nullptr;
  remark (*doubt)(const void*, const double*) = nullptr;
  /// Over strided arrays, set by the registry for the processor at hand (src/batch.cpp): steps in bytes. NaN in gives NaN out. Returns the first element refused, or -1.
  std::ptrdiff_t (*batch)(const void*, char** data, const std::ptrdiff_t* steps, std::ptrdiff_t n, bool nan_for_errors) = nullptr;
  /// The same with the slopes by each argument (scalar/columns.hpp).
  std::ptrdiff_t (*slopes)(const slope_columns&, std::size_t begin, std::size_t end) = nullptr;
};

/// One argument of a model, as text and type for the help.
struct model_argument {
  std::string_view name, type, text;
  bool optional = false;
};
/// A model without its types: a solver, or a calculation that returns more than one number.
struct model_info {
  std::string_view name, summary;
  std::span<const model_argument> args{};
  source from{};
  /// The rulebook stands apart from the other arguments, since it may be a derived one. One of the two is set.
  document::value (*run)(const document::object&, const rulebook&) = nullptr;
  verdict (*judge)(const document::object&, const rulebook&) = nullptr;
};
/// A model among the entries of a subject's list.
struct model {
  model_info is;
};

struct entry {
  enum class what : unsigned char { formula, check, model };
  std::string_view subject{};
  const void* item = nullptr;  ///< the object in the subject's list
  what is = what::formula;
  formula_info formula{};
  check_info check{};
  std::ptrdiff_t (*check_rows)(const check_columns&, std::size_t begin, std::size_t end) = nullptr;  ///< a check over arrays, set by the registry
  model_info model{};

  std::string_view name() const { return is == what::formula ? formula.result.name : is == what::check ? check.name : model.name; }
  std::string_view summary() const { return is == what::formula ? formula.result.summary : is == what::check ? check.summary : model.summary; }
  std::span<const argument> args() const { return is == what::formula ? formula.args : check.args; }
  const source& from() const { return is == what::formula ? formula.from : is == what::check ? check.from : model.from; }
  std::string full_name() const { return std::string(subject) + "." + std::string(name()); }
  std::size_t required() const {
    std::size_t n = 0;
    while (n < args().size() && !args()[n].optional) ++n;
    return n;
  }
};

namespace detail {
template <const auto& Item>
formula_info describe_formula() {
  using F = std::remove_cvref_t<decltype(Item)>;
  constexpr const F& f = Item;
  formula_info i;
  i.self = &f;
  i.result = f.result;
  i.args = f.args;
  i.from = f.from;
  i.about = f.about();
  i.checked = [](const double* x) {  // the ranges are constants here
    if (Item.check(x)) [[unlikely]] return no_number;
    return Item.value(x);
  };
  i.value = [](const void* s, const double* x) { return static_cast<const F*>(s)->value(x); };
  i.check = [](const void* s, const double* x) { return static_cast<const F*>(s)->check(x); };
  i.refusal = [](const void* s, fault why, const double* x) { return static_cast<const F*>(s)->refusal(why, x); };
  i.gradient = [](const void* s, const double* x, double* c) { return gradient(*static_cast<const F*>(s), x, c); };
  i.curvature = [](const void* s, const double* x, std::size_t a, std::size_t b) { return curvature_at(*static_cast<const F*>(s), x, a, b); };
  i.work = [](const void* s, const double* x) { return v1::work(*static_cast<const F*>(s), x); };
  i.equation = [](const void* s) { return v1::equation(*static_cast<const F*>(s)); };
  i.bounds = [](const void* s, const double* low, const double* high) { return v1::bounds(*static_cast<const F*>(s), low, high); };
  i.doubt = [](const void* s, const double* x) { return static_cast<const F*>(s)->trace(x).doubt; };
  return i;
}
}  // namespace detail

/// The entry of one item of a list.
template <const auto& Item>
entry make_entry(std::string_view subject) {
  using T = std::remove_cvref_t<decltype(Item)>;
  entry e;
  e.subject = subject;
  e.item = &Item;
  if constexpr (std::is_same_v<T, model>) {
    e.is = entry::what::model;
    e.model = Item.is;
  } else if constexpr (requires { T::is_check; }) {
    e.is = entry::what::check;
    e.check = Item.info();
  } else {
    e.formula = detail::describe_formula<Item>();
  }
  return e;
}
template <const auto&... Item>
void append(std::vector<entry>& all, std::string_view subject, list<Item...>) {
  (all.push_back(make_entry<Item>(subject)), ...);
}

// ---- documents -------------------------------------------------------------------------------------------------------

/// The numbers and the marks of a statement, by the names that documents give them.
struct accuracy_number {
  std::string_view name;
  double accuracy::*is;
};
inline constexpr accuracy_number accuracy_numbers[] = {
    {"percent", &accuracy::percent},
    {"counts", &accuracy::counts},
    {"resolution", &accuracy::resolution},
    {"limit", &accuracy::limit},
    {"standard_uncertainty", &accuracy::standard_uncertainty},
    {"coverage_factor", &accuracy::coverage_factor},
    {"range", &accuracy::range},
    {"leads_ohm", &accuracy::leads_ohm},
    {"leads_standard_uncertainty_ohm", &accuracy::leads_standard_uncertainty_ohm}};
struct accuracy_mark {
  std::string_view name;
  bool accuracy::*is;
};
inline constexpr accuracy_mark accuracy_marks[] = {
    {"nulled", &accuracy::nulled}, {"leads_left_in", &accuracy::leads_left_in}, {"common_offset", &accuracy::common_offset}};
inline constexpr std::string_view basis_names[] = {"stated", "operating_2019", "operating_error_limit"};

inline document::value to_document(const accuracy& a) {
  document::object o;
  for (const auto& n : accuracy_numbers) o.set(std::string(n.name), a.*n.is);
  for (const auto& m : accuracy_marks) o.set(std::string(m.name), a.*m.is);
  o.set("basis", basis_names[static_cast<std::size_t>(a.basis)]);
  return o;
}
/// Everything that is not known by name, or is of another kind, is refused: a slip in a name would leave a reading without its doubt.
inline accuracy accuracy_from(const document::value& v) {
  const auto* o = v.as<document::object>();
  if (!o) throw range_error("an accuracy is an object such as {\"percent\": 5, \"counts\": 3, \"resolution\": 0.01}");
  accuracy a;
  const auto set = [&](const std::string& name, const document::value& x) {
    for (const auto& n : accuracy_numbers) {
      if (n.name != name) continue;
      const double* number = x.as<double>();
      if (!number || !(*number >= 0.0)) throw range_error("accuracy: \"" + name + "\" must be a number from 0");
      return void(a.*n.is = *number);
    }
    for (const auto& m : accuracy_marks) {
      if (m.name != name) continue;
      const bool* mark = x.as<bool>();
      if (!mark) throw range_error("accuracy: \"" + name + "\" must be true or false");
      return void(a.*m.is = *mark);
    }
    if (name == "basis") {
      const auto* word = x.as<std::string>();
      for (std::size_t i = 0; i < std::size(basis_names); ++i)
        if (word && *word == basis_names[i]) return void(a.basis = static_cast<statement_basis>(i));
      throw range_error("accuracy: \"basis\" must be stated, operating_2019 or operating_error_limit");
    }
    if (name == "reads") return;  // of a function of an instrument
    std::vector<std::string_view> names{"basis"};
    for (const auto& n : accuracy_numbers) names.push_back(n.name);
    for (const auto& m : accuracy_marks) names.push_back(m.name);
    const auto near = document::nearest(name, names);
    throw range_error("accuracy: there is no \"" + name + "\"" + (near.empty() ? std::string() : "; did you mean \"" + std::string(near) + "\"?"));
  };
  for (const auto& f : o->fields) set(f.first, f.second);
  return a;
}
inline document::value to_document(const instrument& i) {
  document::array functions;
  for (const auto& f : i.functions) {
    const auto* c = class_of(f.kind);
    auto o = to_document(f.statement);
    std::get<document::object>(o.is).set("reads", c ? c->key : std::string_view());
    functions.push_back(o);
  }
  return document::object{{"id", i.id}, {"functions", functions}};
}
inline instrument instrument_from(const document::value& v) {
  instrument i;
  const auto* o = v.as<document::object>();
  const auto* id = o ? o->find("id") : nullptr;
  const auto* list = o ? o->find("functions") : nullptr;
  if (!id || !id->as<std::string>() || !list || !list->as<document::array>())
    throw range_error("an instrument is an object with \"id\" and a list of \"functions\"");
  i.id = *id->as<std::string>();
  for (const auto& f : *list->as<document::array>()) {
    const auto* part = f.as<document::object>();
    const auto* word = part ? part->find("reads") : nullptr;
    const reads kind = word && word->as<std::string>() ? reads_of(*word->as<std::string>()) : reads::nothing;
    if (kind == reads::nothing) throw range_error("instrument \"" + i.id + "\": a function says what it \"reads\": " + reads_text());
    i.functions.push_back({kind, accuracy_from(f)});
  }
  return i;
}

/// The reading that a document states: a number, {"value": x}, {"above": x}, {"below": x}, {"state": "no_trip"}, or null;
/// with "instrument" (its name, or an object: "id" and "functions"), "accuracy" (see to_document), "test_voltage_v", "circuit_state",
/// "time", "supersedes".
inline reading reading_from(const document::value& v) {
  if (v.is_null()) return reading::not_measured();
  if (const auto* x = v.as<double>()) return reading(*x);
  if (const auto* o = v.as<document::object>()) {
    const auto number_in = [](const document::object& from, std::string_view name) -> const double* {
      const auto* f = from.find(name);
      return f ? f->as<double>() : nullptr;
    };
    reading r;
    bool known = true;
    const auto* s = o->find("state");
    const auto* word = s ? s->as<std::string>() : nullptr;
    if (const double* x = number_in(*o, "value")) r = reading(*x);
    else if (const double* y = number_in(*o, "above")) r = reading::above(*y);
    else if (const double* z = number_in(*o, "below")) r = reading::below(*z);
    else if (word && *word == "no_trip") r = reading::no_trip();
    else if (word && *word == "pending") r = reading::pending();
    else known = word && *word == "not_measured";
    if (known) {
      if (const auto* i = o->find("instrument"); i && i->as<std::string>()) {
        r.instrument = *i->as<std::string>();
      } else if (i && i->as<document::object>()) {
        r.meter = std::make_shared<const instrument>(instrument_from(*i));
        r.instrument = r.meter->id;
      }
      if (const auto* a = o->find("accuracy"); a && a->as<document::object>()) r.statement = accuracy_from(*a);
      const auto text_in = [&](std::string_view name, std::string& into) {
        if (const auto* t = o->find(name); t && t->as<std::string>()) into = *t->as<std::string>();
      };
      text_in("circuit_state", r.circuit_state);
      text_in("time", r.taken_at);
      text_in("supersedes", r.supersedes);
      if (const double* u = number_in(*o, "test_voltage_v")) r.test_voltage_v = *u;
      return r;
    }
  }
  throw range_error("a reading is a number, {\"value\": x}, {\"above\": x}, {\"below\": x} or {\"state\": \"no_trip\" | \"not_measured\" | \"pending\"}");
}

/// Adds the steps of a working to a list of documents; with LaTeX only where somebody asks for the working itself.
inline void append_steps(document::array& list, const working& w, bool latex = false) {
  for (const auto& s : w.steps) {
    document::object o{{"symbol", s.symbol}, {"equation", s.equation}, {"substituted", s.substituted}, {"result", s.result},
                       {"value", document::number_or_null(s.value)}, {"unit", s.unit}, {"condition", s.condition}, {"source", s.where_from}};
    if (latex) {
      o.set("symbol_latex", s.symbol_latex);
      o.set("equation_latex", s.equation_latex);
      o.set("substituted_latex", s.substituted_latex);
      o.set("result_latex", s.result_latex);
      o.set("condition_latex", s.condition_latex);
      o.set("source_latex", s.where_from_latex);
    }
    list.push_back(std::move(o));
  }
}
inline document::value to_document(const working& w) {
  document::array steps;
  append_steps(steps, w, true);
  return document::object{{"steps", steps}, {"value", document::number_or_null(w.value)}, {"unit", w.unit}, {"latex", latex(w)}};
}
inline document::value to_document(const std::optional<better_reading>& b) {
  if (!b) return nullptr;
  return document::object{{"argument", b->all_readings ? std::string_view() : b->argument}, {"unit", b->unit}, {"standard_uncertainty", b->standard_uncertainty},
                          {"now", b->now}, {"share", b->share}, {"outcome", outcome_text(b->outcome)}, {"all_readings", b->all_readings}};
}
inline document::value to_document(const verdict& v, bool with_steps = true) {
  document::array overrides, steps, notes;
  for (const auto& t : v.notes()) notes.push_back(t);
  for (const auto& o : v.overrides()) overrides.push_back(o);
  if (with_steps)
    for (const auto& w : v.worked()) append_steps(steps, w);
  return document::object{
      {"check", v.check()},
      {"outcome", outcome_text(v.outcome)},
      {"reason", reason_text(v.reason)},
      {"detail", v.detail()},
      {"plain", is_nan(v.value) ? "" : outcome_text(v.plain)},
      {"value", document::number_or_null(v.value)},
      {"unit", v.unit()},
      {"lower", document::number_or_null(v.lower)},
      {"upper", document::number_or_null(v.upper)},
      {"limit", document::number_or_null(v.limit())},
      {"comparator", comparator_text(v.compare)},
      {"margin", document::number_or_null(v.margin)},
      {"standard_uncertainty", is_nan(v.value) ? document::value(nullptr) : document::value(v.standard_uncertainty)},
      {"expanded_uncertainty", is_nan(v.value) ? document::value(nullptr) : document::value(v.expanded_uncertainty())},
      {"probability", document::number_or_null(v.probability)},
      {"assumed", v.assumed},
      {"censored", v.censored()},
      {"settle", v.settle()},
      {"better", to_document(v.better())},
      {"decision", document::object{{"rule", v.decided_by.name()}, {"text", v.decided_by.text()}, {"kind", v.decided_by.by_probability() ? "probability" : "guard band"},
                                    {"accept", v.decided_by.accept}, {"reject", v.decided_by.reject}, {"statement", v.statement()},
                                    {"source", v.decided_by.method->from.title}, {"clause", v.decided_by.method->from.clause}, {"grade", v.decided_by.method->from.grade}}},
      {"notes", notes},
      {"source", document::object{{"title", v.source_title()}, {"clause", v.source_clause()}, {"grade", v.source_grade()}, {"rule", v.rule_text()}, {"rulebook", v.rulebook()}}},
      {"overrides", overrides},
      {"caution", v.caution()},
      {"steps", steps},
  };
}

}  // namespace v1
}  // namespace makegood

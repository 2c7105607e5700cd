// SPDX-License-Identifier: MIT
#include <makegood/registry.hpp>
#include <makegood/rules/all.hpp>
#include <algorithm>
#include <cstdlib>
#include "batch.hpp"
#include "subjects.hpp"

namespace makegood {
inline namespace v1 {

// ---- arrays: the best instruction set of this processor, or a lesser one on request ------------------------------------

namespace {
std::vector<subjects::batch_table> tables() {
#if defined(MAKEGOOD_BATCH_X86)
  std::vector<subjects::batch_table> all{subjects::sse2::batches()};
  __builtin_cpu_init();
  if (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma")) all.push_back(subjects::avx2::batches());
  if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512bw") && __builtin_cpu_supports("avx512vl"))
    all.push_back(subjects::avx512::batches());
  return all;
#else
  return {subjects::generic::batches()};
#endif
}
const subjects::batch_table& table_in_use() {
  static const subjects::batch_table in_use = [] {
    const auto all = tables();
    const char* most = std::getenv("MAKEGOOD_INSTRUCTION_SET");
    for (const auto& t : all)
      if (most && std::string_view(most) == t.instruction_set) return t;
    return all.back();
  }();
  return in_use;
}
}  // namespace

}  // namespace v1
namespace subjects {
const batch_table& batches_of(std::string_view instruction_set) {
  static const std::vector<batch_table> all = tables();
  for (const auto& t : all)
    if (instruction_set == t.instruction_set) return t;
  return table_in_use();
}
}  // namespace subjects
inline namespace v1 {

std::string_view instruction_set() { return table_in_use().instruction_set; }

std::vector<std::string_view> instruction_sets() {
  std::vector<std::string_view> names;
  for (const auto& t : tables()) names.push_back(t.instruction_set);
  return names;
}

namespace {
void use_batches(entry& e, const subjects::batch_table& t) {
  for (std::size_t i = 0; i < t.count; ++i)
    if (t.rows[i].item == e.item && e.is != entry::what::model) {
      e.formula.batch = t.rows[i].run;
      e.formula.slopes = t.rows[i].slopes;
      e.check_rows = t.rows[i].check;
    }
}
}  // namespace

entry with_instruction_set(const entry& e, std::string_view set) {
  entry other = e;
  for (const auto& t : tables())
    if (set == t.instruction_set) use_batches(other, t);
  return other;
}

std::span<const entry> catalogue() {
  static const std::vector<entry> all = [] {
    std::vector<entry> a;
    subjects::electrical(a);
    subjects::circuit_tests(a);
    subjects::fault_location(a);
    subjects::switching(a);
    subjects::live_faults(a);
    subjects::sensing(a);
    subjects::heating(a);
    subjects::floor(a);
    subjects::air(a);
    subjects::ventilation(a);
    subjects::duct_network(a);
    subjects::setting_out(a);
    subjects::zones(a);
    subjects::cords_and_fixings(a);
    subjects::lighting(a);
    subjects::price(a);
    subjects::decision(a);
    subjects::diagnosis(a);
    subjects::inquiries(a);
    subjects::visit_rules(a);
    subjects::order_of_work(a);
    for (auto& e : a) use_batches(e, table_in_use());
    return a;
  }();
  return all;
}

const entry* find_entry(std::string_view full_name) {
  for (const auto& e : catalogue())
    if (full_name.size() == e.subject.size() + 1 + e.name().size() && full_name.starts_with(e.subject) &&
        full_name[e.subject.size()] == '.' && full_name.ends_with(e.name()))
      return &e;
  return nullptr;
}

proof proved(const entry& e) {
  struct row {
    std::string_view name;
    int seen, other;
  };
  static constexpr row rows[] = {
#include "proved.inc"
      {"", 0, 0}};
  const std::string name = e.full_name();
  for (const auto& r : rows)
    if (r.name == name) return {r.seen, r.other};
  return {};
}

namespace {
/// The worst errors measured against 50-digit arithmetic, at random, boundary and cancellation points (tests/published/accuracy.csv).
struct measured_errors {
  std::string_view name;
  double ulp[3], absolute[3];
};
void set_measured_errors(document::object& o, std::string_view name) {
  static constexpr measured_errors rows[] = {
#include "measured.inc"
      {"", {}, {}}};
  for (const auto& r : rows) {
    if (r.name != name) continue;
    const auto kinds = [](const double(&x)[3]) { return document::object{{"random", x[0]}, {"boundary", x[1]}, {"cancellation", x[2]}}; };
    o.set("measured_error_ulp", kinds(r.ulp));
    o.set("measured_error_absolute", kinds(r.absolute));
  }
}
std::string range_text(const range& r, const unit_t& u) {
  return std::string(r.low_open ? "above " : "from ") + quantity_text(r.low, u.symbol) + (r.high_open ? " to below " : " to ") + quantity_text(r.high, u.symbol);
}
}  // namespace

document::value describe(const entry& e) {
  document::array args;
  if (e.is == entry::what::model) {
    for (const auto& a : e.model.args)
      args.push_back(document::object{{"name", a.name}, {"type", a.type}, {"text", a.text}, {"optional", a.optional}});
  } else {
    for (const auto& a : e.args()) {
      document::object o{{"name", a.name}, {"symbol", a.symbol}, {"text", a.text}, {"optional", a.optional}};
      if (a.table) {
        document::array words;
        for (const auto& r : a.table->rows) words.push_back(r.key);
        o.set("one_of", words);
        if (a.optional) o.set("default", a.table->rows[static_cast<std::size_t>(a.fallback)].key);
      } else {
        o.set("unit", a.unit.symbol);
        o.set("permitted", range_text(a.permitted, a.unit));
        o.set("low", a.permitted.low);
        o.set("high", a.permitted.high);
        o.set("usual", document::array{a.usual.low, a.usual.high});
        if (a.optional) o.set("default", a.fallback);
      }
      args.push_back(o);
    }
  }
  document::object o{{"name", e.full_name()},
                     {"kind", e.is == entry::what::formula ? "formula" : e.is == entry::what::check ? "check" : "model"},
                     {"summary", e.summary()},
                     {"arguments", args},
                     {"source", document::object{{"title", e.from().title}, {"clause", e.from().clause}, {"grade", e.from().grade}}}};
  if (e.is == entry::what::formula) {
    o.set("unit", e.formula.result.unit.symbol);
    o.set("symbol", e.formula.result.symbol);
    o.set("accuracy", e.formula.about.accuracy);
    o.set("degenerate", e.formula.about.degenerate);
    set_measured_errors(o, e.full_name());
  } else if (e.is == entry::what::check) {
    o.set("unit", e.check.result.unit.symbol);
    o.set("limit", e.check.limit_id);
    o.set("caution", e.check.caution);
  } else {
    o.set("returns", e.model.judge ? "Verdict" : "Result");  // several limits at once are no single verdict
  }
  const proof p = proved(e);
  o.set("proof", document::object{{"seen", p.seen}, {"other", p.other}});
  o.set("status", p.seen > 0 ? "proved" : "unproved");
  return o;
}

namespace {
[[noreturn]] void unknown_argument(const entry& e, std::string_view name) {
  std::vector<std::string_view> names;
  for (const auto& a : e.args()) names.push_back(a.name);
  const std::string near = document::nearest(name, names);
  throw range_error(std::string(e.name()) + ": no argument \"" + std::string(name) + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
}
}  // namespace

document::value invoke(const entry& e, const document::object& inputs) {
  const auto* ids = inputs.find("rulebook");
  const rulebook named = ids && ids->as<std::string>() ? rules::find(*ids->as<std::string>()) : rulebook();
  const auto* method = inputs.find("rule");
  const bool ruled = method && method->as<std::string>() && e.is == entry::what::check;
  const decision_rule rule = ruled ? decision_rule(*method->as<std::string>()) : decision_rule();
  if (e.is == entry::what::model) {
    document::object rest = inputs;
    std::erase_if(rest.fields, [](const auto& f) { return f.first == "rulebook"; });
    return e.model.judge ? to_document(e.model.judge(rest, named)) : e.model.run(rest, named);
  }
  const auto args = e.args();
  for (const auto& f : inputs.fields) {
    const bool known = std::any_of(args.begin(), args.end(), [&](const argument& a) { return a.name == f.first; }) ||
                       (e.is == entry::what::check && (f.first == "rulebook" || (ruled && f.first == "rule")));
    if (!known) unknown_argument(e, f.first);
  }
  const auto missing = [&](const argument& a) {
    return range_error(std::string(e.name()) + ": argument \"" + std::string(a.name) + "\" is missing");
  };
  if (e.is == entry::what::formula) {
    std::vector<double> x;
    for (const auto& a : args) {
      const auto* v = inputs.find(a.name);
      if (!v) {
        if (!a.optional) throw missing(a);
        x.push_back(a.fallback);
      } else if (a.table) {
        const auto* number = v->as<double>();
        const auto* word = v->as<std::string>();
        if (!word && !(number && a.table->of_numbers())) throw range_error(std::string(e.name()) + ": " + std::string(a.name) + " must be one of " + detail::keys_text(*a.table));
        const std::string key = word ? *word : number_text(*number, 12);
        const int row = a.table->find(key);
        if (row < 0) detail::throw_unknown_key(e.name(), a, key);
        x.push_back(row);
      } else {
        const auto* number = v->as<double>();
        if (!number) throw range_error(std::string(e.name()) + ": " + std::string(a.name) + " must be a number in " + std::string(a.unit.symbol));
        x.push_back(*number);
      }
    }
    const auto refuse = [&](fault why) {
      const message text = e.formula.refusal(e.formula.self, why, x.data());
      if (why.kind == fault::what::relation) throw relation_error(text);
      throw range_error(text);
    };
    if (const fault bad = e.formula.check(e.formula.self, x.data())) refuse(bad);
    const double y = e.formula.value(e.formula.self, x.data());
    if (!is_finite(y)) refuse({fault::what::no_result, -1});
    return y;
  }
  std::vector<given> list;
  for (const auto& a : args) {
    const auto* v = inputs.find(a.name);
    if (!v) {
      if (!a.optional) throw missing(a);
      if (a.table) list.emplace_back(a.table->rows[static_cast<std::size_t>(a.fallback)].key);
      else list.emplace_back(measured::exact(a.fallback));
      continue;
    }
    if (const auto* word = v->as<std::string>()) {
      list.emplace_back(*word);
    } else if (const auto* number = v->as<double>(); number && a.table && a.table->of_numbers()) {
      list.emplace_back(number_text(*number, 12));
    } else {
      list.emplace_back(reading_from(*v));
    }
  }
  return to_document(detail::judge(e.check, list, named, rule));
}

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// A visit's readings become findings: which checks apply, what they are given, what is said in plain words.
#include <fmt/format.h>
#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/job/assess.hpp>
#include <makegood/job/session.hpp>
#include <makegood/job/words.hpp>
#include <makegood/registry.hpp>
#include <makegood/sensing/list.hpp>
#include <makegood/version.hpp>
#include <algorithm>
#include <map>
#include <set>
#include "whole_visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

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

/// A number for somebody who does not work with it: three digits, and more where it would read like the number that it is held against.
std::string client_number(double x, double beside, const verdict& v, bool unit = true) {
  int n = 3;
  while (n < 9 && !is_nan(beside) && x != beside && quantity_text(x, "", n) == quantity_text(beside, "", n)) ++n;
  return quantity_text(x, unit ? v.unit() : std::string_view(), n);
}
/// The sentence for the client: the words of the check with value {v} and limit {l}, without their unit {n} and {m}; an open question is said with its reason.
std::string for_the_client(const finding& f, std::string_view pass, std::string_view fail) {
  const verdict& v = f.verdict;
  const auto with = [&](std::string_view words_) -> std::string {
    if (words_.empty()) return f.plain;
    if (words_.find('{') == std::string_view::npos) return std::string(words_);
    if (is_nan(v.value)) return f.plain;
    const std::string out_of_range = v.censored().empty() ? "" : std::string(v.censored()) + " ";
    const auto limit = [&](bool unit) {
      if (!is_nan(v.lower) && !is_nan(v.upper)) return client_number(v.lower, v.value, v, unit) + " to " + client_number(v.upper, v.value, v, unit);
      return client_number(v.limit(), v.value, v, unit);
    };
    const std::string value = v.censored() == "no trip" ? "no trip at all" : out_of_range + client_number(v.value, v.limit(), v);
    return fmt::format(fmt::runtime(words_), fmt::arg("v", value), fmt::arg("l", limit(true)), fmt::arg("n", out_of_range + client_number(v.value, v.limit(), v, false)),
                       fmt::arg("m", limit(false)));
  };
  if (v.outcome == outcome::pass && v.plain == outcome::fail) return "Accepted, since failure is not proved. As read: " + with(fail);
  if (v.outcome == outcome::fail && v.plain == outcome::pass) return "Not accepted, since it is not proved. As read: " + with(pass);
  if (v.outcome == outcome::pass) return with(pass);
  if (v.outcome == outcome::fail) return with(fail);
  const std::string asked = f.question + " ";
  if (v.reason == reason::straddles_limit && !is_nan(v.value) && v.plain == outcome::fail)
    return "As read, it is not as it should be, but the reading is too uncertain to prove it. " + with(fail);
  if (v.reason == reason::straddles_limit && !is_nan(v.value)) return "As read, it is as it should be, but the reading is too uncertain to prove it. " + with(pass);
  if (v.reason == reason::straddles_limit) return asked + "Not known yet: the readings are too uncertain to tell.";
  if (v.reason == reason::outside_validity) return asked + "Not known yet: it cannot be calculated well enough here and has to be measured.";
  if (v.reason == reason::not_measured) return asked + "Not known yet: it has not been measured.";
  if (v.reason == reason::needs_makers_figure) return asked + "Not known yet: a figure of the maker is missing.";
  if (v.reason == reason::no_rule_in_book) return asked + "Not known: the rules that were used have no limit for it.";
  if (v.reason == reason::precondition_missing) return asked + "Not known yet: something else has to be done first.";
  return asked + "Not known yet.";
}

class assessor {
 public:
  assessor(const visit& v, const rulebook& rules, const decision_rule& rule, const assess_options& how) : visit_(v), rules_(rules), rule_(rule), how_(how) {
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
    for (std::size_t i = 0; i < visit_.calculations.size(); ++i) calculation_of(visit_.calculations[i], detail::indexed("calculations", i));
    for (std::size_t i = 0; i < visit_.observations.size(); ++i) observation_of(visit_.observations[i], detail::indexed("observations", i));
    if (how_.inquiries)
      for (std::size_t i = 0; i < visit_.inquiries.size(); ++i) inquiry_of(i);
    return std::move(a_);
  }

 private:
  const visit& visit_;
  const rulebook& rules_;
  decision_rule rule_;
  assess_options how_;
  assessment a_;
  std::string saying_;           // key of the words of the next findings, where it is not their check
  std::string calling_;          // the entry behind the next finding, where its check is not in the catalogue by itself
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
    if (how_.steps) before_.push_back(f.work(f.self, v.data()));
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
      return fmt::format(fmt::runtime(words_), fmt::arg("s", subject), fmt::arg("v", value), fmt::arg("l", limit_words(v)),
                         fmt::arg("n", client_number(v.value, v.limit(), v, false)), fmt::arg("m", client_number(v.limit(), v.value, v, false)));
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
    else if (v.reason == reason::no_rule_in_book) f.plain = "Not known: the rulebooks that were used have no limit for it.";
    else f.plain = fmt::format("Not known: {}.", v.detail().empty() ? std::string(reason_text(v.reason)) : v.detail());
    f.call = calling_.empty() ? name_of(v.info) : calling_;
    f.verdict = std::move(v);
    f.words = saying_.empty() ? f.call : saying_;
    keep(std::move(f), path);
  }
  /// The full name of a check in the catalogue.
  static std::string name_of(const check_info* info) {
    static const std::map<const check_info*, std::string> names = [] {
      std::map<const check_info*, std::string> all;
      for (const auto& e : catalogue())
        if (e.is == entry::what::check) all.emplace(&e.check, e.full_name());
      return all;
    }();
    const auto found = names.find(info);
    return found == names.end() ? std::string() : found->second;
  }
  /// What is said beside the numbers: consequence, danger, caution, how the place is left.
  void keep(finding f, const std::string& about) {
    const auto* said = f.kind == "observation" ? words_of_observation(f.words) : words_of_check(f.words);
    f.about = about;
    f.circuit = circuit_behind(about);
    const auto& v = f.verdict;
    const bool fails = v.outcome == outcome::fail || (v.outcome == outcome::undecided && v.plain == outcome::fail && !is_nan(v.value));
    if (said && f.level == finding::danger::none && v.outcome != outcome::pass) {
      const auto worst = text_in(said, "danger_fail").empty() ? text_in(said, "danger") : text_in(said, "danger_fail");
      f.level = level_of(fails ? worst : text_in(said, "danger_undecided"));
    }
    if (fails) {
      if (f.consequence.empty()) f.consequence = text_in(said, "consequence");
      if (f.make_safe.empty()) f.make_safe = texts_in(said, "make_safe");
    }
    if (f.caution.empty()) f.caution = text_in(said, "caution");
    if (f.caution.empty()) f.caution = v.caution();
    if (fails || f.kind == "observation") f.caution_client = text_in(said, "caution_client");
    f.client = f.kind == "check" ? for_the_client(f, text_in(said, "pass"), text_in(said, "fail")) : f.plain;
    if (f.kind == "check" && !f.make_safe.empty() && (f.level == finding::danger::now || (f.level == finding::danger::potential && v.outcome == outcome::fail))) {
      const auto* off = said ? said->find("isolate") : nullptr;
      f.isolates = !off || !off->as<bool>() || *off->as<bool>();
    }
    const auto* has_code = said ? said->find("electrical") : nullptr;  // the codes of the trade are for electrical danger
    if (f.level != finding::danger::none && (!has_code || *has_code->as<bool>())) {
      const auto rule = rules_.find("danger_class", danger_text(f.level));
      if (rule.found() && rule.row) {
        f.code = rule.row->text.substr(0, rule.row->text.find_first_of(": "));
        f.code_source = std::string(rule.row->from.title) + (rule.row->from.clause.empty() ? "" : ", " + std::string(rule.row->from.clause));
      }
    }
    if (f.electrician.empty()) f.electrician = for_the_trade(f);
    a_.findings.push_back(std::move(f));
  }
  static finding::danger level_of(std::string_view word) {
    for (const auto d : {finding::danger::investigate, finding::danger::improve, finding::danger::potential, finding::danger::now})
      if (danger_text(d) == word) return d;
    return finding::danger::none;
  }
  std::string circuit_behind(const std::string& path) const {
    for (std::size_t i = 0; i < visit_.circuits.size(); ++i)
      if (path == detail::indexed("circuits", i)) return visit_.circuits[i].id;
    for (std::size_t i = 0; i < visit_.appliances.size(); ++i)
      if (path == detail::indexed("appliances", i)) return visit_.appliances[i].circuit_id;
    for (std::size_t i = 0; i < visit_.fans.size(); ++i)
      if (path == detail::indexed("fans", i)) return visit_.fans[i].circuit_id;
    for (std::size_t i = 0; i < visit_.sensors.size(); ++i)
      if (path == detail::indexed("sensors", i))
        for (const auto& a : visit_.appliances)
          if (a.id == visit_.sensors[i].appliance_id) return a.circuit_id;
    for (std::size_t i = 0; i < visit_.inquiries.size(); ++i)
      if (path == detail::indexed("inquiries", i)) return part_of(visit_, visit_.inquiries[i].about).circuit;
    for (std::size_t i = 0; i < visit_.observations.size(); ++i)
      if (path == detail::indexed("observations", i)) return part_of(visit_, visit_.observations[i].about).circuit;
    return {};
  }
  /// Quantity, value with its doubt, limit, clause: what the next electrician wants to read.
  static std::string for_the_trade(const finding& f) {
    const auto& v = f.verdict;
    if (!v.info) return f.subject + ": " + f.plain;
    std::string said = f.subject + ": " + std::string(v.info->summary.substr(0, v.info->summary.find_first_of(",.:")));
    if (is_nan(v.value)) return said + ": not decided, " + (v.detail().empty() ? std::string(reason_text(v.reason)) : v.detail()) + ".";
    said += v.censored() == "no trip" ? ": no trip" : fmt::format(": {}{}", v.censored().empty() ? "" : std::string(v.censored()) + " ", quantity_text(v.value, v.unit(), v.digits()));
    if (v.censored().empty() && v.standard_uncertainty > 0) said += fmt::format(" ± {} (k = 2{})", quantity_text(v.expanded_uncertainty(), v.unit(), 2), v.assumed ? ", assumed" : "");
    if (!is_nan(v.limit())) said += ", limit " + (is_nan(v.lower) || is_nan(v.upper) ? std::string(comparator_text(v.compare)) + " " : std::string()) + limit_words(v);
    const std::string from = v.source_title() + (v.source_clause().empty() ? "" : ", " + v.source_clause());
    if (!v.source_title().empty()) said += " (" + from + ")";
    said += v.outcome == outcome::pass ? ": meets it" : v.outcome == outcome::fail ? ": does not meet it" : ": not proved either way";
    return said + ".";
  }
  /// A finding of a document rather than of a check: it has an outcome, sentences and perhaps numbers.
  void add_shown(finding f, outcome is, reason why, std::string detail_, std::string settle, document::object shown, std::string words_key, const std::string& about) {
    f.words = std::move(words_key);
    f.verdict.outcome = f.verdict.plain = is;
    f.verdict.reason = why;
    f.verdict.book = rules_;
    f.verdict.decided_by = rule_;
    f.verdict.said = std::make_shared<const verdict::words>(verdict::words{std::move(detail_), {}, is == outcome::undecided ? settle : std::string()});
    if (is == outcome::undecided) f.next = std::move(settle);
    f.shown = std::move(shown);
    keep(std::move(f), about);
  }

  // ---- calculations of the catalogue on what was read here ----------------------------------------------------------------

  /// Readings that name an instrument of the visit get its statement; hearsay is no measurement.
  document::value with_instruments(const document::value& x) const {
    if (const auto* list = x.as<document::array>()) {
      document::array out;
      for (const auto& one : *list) out.push_back(with_instruments(one));
      return out;
    }
    const auto* o = x.as<document::object>();
    if (!o) return x;
    const auto word = [&](std::string_view name) {
      const auto* f = o->find(name);
      return f && f->as<std::string>() ? std::string_view(*f->as<std::string>()) : std::string_view();
    };
    const bool reads_something = o->find("value") || o->find("above") || o->find("below") || o->find("state");
    if (reads_something && word("kind") == "told") return document::object{{"state", "not_measured"}};
    document::object out;
    for (const auto& f : o->fields) {
      if (reads_something && f.first == "instrument") {
        const auto shelf = std::find_if(visit_.instruments.begin(), visit_.instruments.end(), [&](const auto& i) { return i.id == word("instrument"); });
        if (shelf != visit_.instruments.end() && !shelf->functions.empty()) {
          out.set(f.first, v1::to_document(shelf->known()));
          continue;
        }
      }
      out.set(f.first, with_instruments(f.second));
    }
    if (reads_something && word("kind") == "estimated" && word("instrument").empty()) out.set("accuracy", document::object{{"percent", 20.0}});
    return out;
  }
  static wording wording_of(const entry& e, const document::object* said) {
    const auto or_else = [](std::string_view words_, std::string_view otherwise) { return words_.empty() ? otherwise : words_; };
    return {or_else(text_in(said, "question"), e.summary()), or_else(text_in(said, "pass"), "{v}; the limit is {l}."), or_else(text_in(said, "fail"), "{v}; the limit is {l}.")};
  }
  static given given_from(const document::value& x, const argument& a) {
    if (const auto* w = x.as<std::string>()) return given(*w);
    if (const auto* number = x.as<double>(); number && a.table && a.table->of_numbers()) return given(number_text(*number, 12));
    return given(reading_from(x));
  }
  /// A formula on numbers and readings: value, doubt, and how it was worked out.
  document::value formula_of(const entry& e, const document::object& inputs) {
    document::object plain = inputs;
    std::map<std::string_view, measured> read;
    for (const auto& a : e.args()) {
      const auto* given_ = inputs.find(a.name);
      if (!given_ || a.table || given_->as<double>()) continue;
      const reading r = reading_from(*given_);
      if (r.is != reading::state::value) throw range_error(std::string(a.name) + ": a number is needed, and it was not read as one");
      read.emplace(a.name, to_measured(r, a.instrument, a.name));
      for (auto& f : plain.fields)
        if (f.first == a.name) f.second = r.number;
    }
    const double y = *invoke(e, plain).as<double>();  // refuses what is missing, unknown or outside the range
    std::vector<measured> x;
    for (const auto& a : e.args()) {
      const auto known = read.find(a.name);
      const auto* one = plain.find(a.name);
      const auto* word = one && a.table ? one->as<std::string>() : nullptr;
      if (known != read.end()) x.push_back(known->second);
      else if (word || (one && a.table)) x.push_back(measured::exact(static_cast<double>(a.table->find(word ? *word : number_text(*one->as<double>(), 12)))));
      else x.push_back(measured::exact(one ? *one->as<double>() : a.fallback));
    }
    const measured m = through_info(e.formula, x);
    const std::string_view unit = e.formula.result.unit.symbol;
    const double u = m.standard_uncertainty();
    document::array doubts, steps;
    if (doubt_.set()) doubts.emplace_back(std::string(doubt_.text));
    for (const auto& w : before_) append_steps(steps, w);
    before_.clear();
    doubt_ = {};
    std::string said = std::string(e.formula.result.symbol) + " = " + quantity_text(y, unit, 4);
    if (u > 0.0) said += " ± " + quantity_text(2.0 * u, unit, 2) + " (k = 2)";
    return document::object{{"value", y}, {"unit", unit}, {"standard_uncertainty", u}, {"text", document::array{said}}, {"cautions", doubts}, {"steps", steps}};
  }
  void calculation_of(const calculation& c, const std::string& path) {
    const entry& e = *find_entry(c.call);
    const visit_part part = part_of(visit_, c.about);
    const std::string subject = !c.name.empty() ? c.name : !part.name.empty() ? part.name : c.id;
    const auto* said = words_of_check(c.call);
    const std::string question = text_in(said, "question").empty() ? std::string(e.summary()) : std::string(text_in(said, "question"));
    const auto inputs = std::get<document::object>(with_instruments(c.inputs).is);
    const std::size_t first = a_.findings.size();
    try {
      if (e.is == entry::what::check) {
        std::vector<given> x;
        for (const auto& a : e.args()) {
          const auto* one = inputs.find(a.name);
          if (one) x.push_back(given_from(*one, a));
          else if (a.table) x.emplace_back(a.table->rows[static_cast<std::size_t>(a.fallback)].key);
          else x.emplace_back(measured::exact(a.fallback));
        }
        add(path, subject, wording_of(e, said), v1::detail::judge(e.check, x, rules_, rule_));
      } else if (e.is == entry::what::model && e.model.judge) {
        calling_ = c.call;
        add(path, subject, wording_of(e, said), e.model.judge(inputs, rules_));
        calling_.clear();
      } else {
        document::value result;
        if (e.is == entry::what::model) {
          result = e.model.run(inputs, rules_);
        } else {
          result = formula_of(e, inputs);
        }
        result_of(c, path, subject, question, inputs, result);
      }
    } catch (const error& x) {
      before_.clear();
      doubt_ = {};
      calling_.clear();
      a_.findings.erase(a_.findings.begin() + static_cast<std::ptrdiff_t>(first), a_.findings.end());
      finding f;
      f.path = path;
      f.subject = subject;
      f.question = question;
      f.call = c.call;
      f.plain = "Not known: " + std::string(x.what()) + ".";
      add_shown(std::move(f), outcome::undecided, reason::outside_validity, x.what(), "look at the numbers given once more: " + std::string(x.what()), {}, c.call, part.path);
      return;
    }
    for (std::size_t i = first; i < a_.findings.size(); ++i) {
      a_.findings[i].path = path;
      a_.findings[i].about = part.path;
      a_.findings[i].circuit = part.circuit;
    }
  }
  static std::vector<std::string> sentences_of(const document::object& o) {
    std::vector<std::string> list;
    const auto* t = o.find("text");
    if (!t) return list;
    if (const auto* one = t->as<std::string>()) list.push_back(*one);
    if (const auto* several = t->as<document::array>())
      for (const auto& one : *several)
        if (one.as<std::string>()) list.push_back(*one.as<std::string>());
    return list;
  }
  /// The result of a model: it stands beside the findings, and where it has an outcome it is a finding too.
  void result_of(const calculation& c, const std::string& path, const std::string& subject, const std::string& question, const document::object& inputs, const document::value& result) {
    document::array text;
    const auto* o = result.as<document::object>();
    const auto sentences = o ? sentences_of(*o) : std::vector<std::string>();
    for (const auto& t : sentences) text.push_back(t);
    document::object beside{{"path", path}, {"id", c.id}, {"subject", subject}, {"about", c.about}, {"call", c.call}, {"question", question}, {"result", result}, {"inputs", inputs}};
    if (!text.empty()) beside.set("text", text);
    a_.results.push_back(beside);
    if (!o) return;
    auto said = answer_of(words_of_check(c.call), *o, sentences);
    if (!said) return;
    reason why = reason::none;
    if (said->is == outcome::undecided) {
      why = reason::not_measured;
      for (const auto x : {reason::outside_validity, reason::straddles_limit, reason::needs_makers_figure, reason::no_rule_in_book, reason::precondition_missing})
        if (reason_text(x) == said->why) why = x;
    }
    if (sentences.empty()) std::get<document::object>(a_.results.back().is).set("text", document::array{said->plain});
    finding f;
    f.path = path;
    f.subject = subject;
    f.question = question;
    f.call = c.call;
    f.plain = said->plain;
    std::string settle = said->is != outcome::undecided ? std::string() : said->next.empty() ? said->plain : said->next;
    add_shown(std::move(f), said->is, why, said->plain, std::move(settle), std::move(said->shown), c.call, part_of(visit_, c.about).path);
  }

  // ---- what was seen, and what does not work ------------------------------------------------------------------------------

  void observation_of(const seen_by_eye& o, const std::string& path) {
    for (const auto& m : visit_.mended)
      if (std::find(m.ends.begin(), m.ends.end(), o.id) != m.ends.end()) return;  // it is no more: "changes" says so
    const auto* said = words_of_observation(o.kind);
    const visit_part part = part_of(visit_, o.about);
    finding f;
    f.path = path;
    f.subject = !o.name.empty() ? o.name : !part.name.empty() ? part.name : o.id;
    f.kind = "observation";
    f.question = "What was seen here?";
    f.plain = text_in(said, "client");
    f.electrician = f.subject + ": " + std::string(text_in(said, "electrician")) + (o.note.empty() ? "" : " " + o.note);
    if (const auto* off = said ? said->find("isolate") : nullptr; off && off->as<bool>()) f.isolates = *off->as<bool>();
    const bool doubtful = level_of(text_in(said, "danger")) == finding::danger::investigate;
    add_shown(std::move(f), doubtful ? outcome::undecided : outcome::fail, doubtful ? reason::not_measured : reason::none, std::string(text_in(said, "electrician")),
              doubtful ? "look into it: " + std::string(text_in(said, "electrician")) : std::string(), {}, o.kind, path);
  }
  void inquiry_of(std::size_t i) {
    const auto& q = visit_.inquiries[i];
    const std::string path = detail::indexed("inquiries", i);
    const visit_part part = part_of(visit_, q.about);
    const std::string name = !q.name.empty() ? q.name : !part.name.empty() ? part.name : q.id;
    finding f;
    f.path = path;
    f.subject = name;
    f.kind = "diagnosis";
    f.question = "What is wrong with it?";
    try {
      session s = session_of(visit_, i);
      document::object whole{{"path", path}, {"id", q.id}, {"name", name}, {"about", q.about}};
      const document::array list = s.hypotheses();
      const auto& first = *list[0].as<document::object>();
      const auto word = [](const document::object& from, std::string_view key) {
        const auto* x = from.find(key);
        return x && x->as<std::string>() ? *x->as<std::string>() : std::string();
      };
      const double p = *first.find("probability")->as<double>();
      const bool fault = *first.find("fault")->as<bool>();
      double danger = 0.0;
      for (const auto& h : list) {
        const auto& one = *h.as<document::object>();
        if (word(one, "danger") == "life") danger += *one.find("probability")->as<double>();
      }
      const bool settled = p >= 0.95;
      const outcome is = !settled ? outcome::undecided : fault ? outcome::fail : outcome::pass;
      const std::string likely = word(first, "plain").empty() ? word(first, "title") : word(first, "plain");
      f.plain = settled ? likely : "Not known yet. Most likely: " + likely;
      std::string next;
      f.electrician = fmt::format("{}: {} ({:.0f} %).", name, word(first, "title"), 100.0 * p);
      if (how_.plan) {
        const auto explain = s.explain();
        if (!explain.empty()) next = explain[0];
        if (explain.size() > 1) f.electrician += " " + explain[1];
        auto said = s.to_document();
        for (auto& field : std::get<document::object>(said.is).fields) whole.set(field.first, std::move(field.second));
        a_.diagnoses.push_back(std::move(whole));
      }
      if (is != outcome::pass) f.level = danger > 0.5 ? finding::danger::potential : danger > 1e-3 ? finding::danger::investigate : finding::danger::none;
      if (danger > 0.5) {
        f.isolates = true;
        f.consequence = "Somebody can get a shock, or it can start a fire, if it is used as it is.";
        f.make_safe = {"Isolate it, lock it off and label it.", "Leave its ends in a closed enclosure, so that nobody can put it back into use by mistake."};
      }
      if (is == outcome::fail && f.consequence.empty()) f.consequence = "It does not do its work until that has been put right.";
      document::object shown{{"probability", p}};
      add_shown(std::move(f), is, is == outcome::undecided ? reason::not_measured : reason::none, {}, std::move(next), std::move(shown), {}, path);
    } catch (const error& e) {
      f.plain = "Not known: " + std::string(e.what()) + ".";
      add_shown(std::move(f), outcome::undecided, reason::outside_validity, e.what(), "look at the readings given once more: " + std::string(e.what()), {}, {}, path);
    }
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
    additional_protection(c, path);
    if (c.rcd_kind != "none")
      ask(path, c.name, ask_rcd, electrical::check_rcd_trip, [&] {
        add(path, c.name,
            {ask_rcd, "It trips in {v}; {l} are allowed.", "It does not trip in time: {v}, where {l} are allowed. Do not rely on it."},
            judge(electrical::check_rcd_trip, {given_of(c.rcd_trip_ms), c.rcd_kind}, rules_));
      });
  }

  /// Where the rules ask for a residual current device of a certain rating: which use of the circuit asks for it.
  void additional_protection(const circuit& c, const std::string& path) {
    const entry* e = find_entry("electrical.check_additional_protection");
    if (!e) return;
    std::vector<std::string_view> uses;
    if (c.feeds == "socket_outlets") uses.push_back("socket_outlet");
    if (c.feeds == "lighting" && visit_.dwelling) uses.push_back("lighting_dwelling");
    for (const auto& id : c.rooms)
      for (const auto& r : visit_.rooms)
        if (r.id == id && r.kind.starts_with("bathroom") && (uses.empty() || uses.back() != "bathroom")) uses.push_back("bathroom");
    const auto* said = words_of_check(e->full_name());
    for (const auto use : uses) {
      const given rating = c.rcd_kind == "none" ? given(reading::above(9999.0)) : c.rcd_residual_ma ? given(measured::exact(*c.rcd_residual_ma)) : given(reading::not_measured());
      add(path, c.name, wording_of(*e, said), v1::detail::judge(e->check, std::vector<given>{rating, given(std::string(use))}, rules_, rule_));
      finding& f = a_.findings.back();
      if (c.rcd_kind != "none" || f.verdict.outcome != outcome::fail) continue;
      f.shown.set("no_value", true);  // there is no device: a number that stands for that is not shown
      f.electrician = fmt::format("{}: no residual current device; {} asks for one of at most {}.", c.name, f.verdict.source_title() + ", " + f.verdict.source_clause(), limit_words(f.verdict));
    }
  }

  void insulation_of(const reading& r, const std::string& path, const std::string& subject, const wording& w) {
    if (r.has_number() && r.circuit_state == "live")
      return unanswered(path, subject, w.question, info_of(electrical::check_insulation), reason::precondition_missing,
                        "a reading of the insulation with the circuit dead, isolated and its electronics taken off (this one is marked live)");
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
    const std::string kind = a.kind == "heating_mat" || a.kind == "heating_cable" ? "" : "/appliance";
    saying_ = "heating.check_element_resistance" + kind;
    ask(path, a.name, ask_element, heating::check_element_resistance, [&] { element_of(a, path); });
    saying_ = "heating.check_element_insulation" + kind;
    ask(path, a.name, ask_screen, electrical::check_insulation, [&] {
      insulation_of(a.insulation_mohm, path, a.name,
                    {ask_screen, "Its insulation reads {v}; at least {l} are asked for.",
                     "Its insulation reads {v}; at least {l} are asked for. Do not energise."});
    });
    saying_.clear();
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

assessment findings_of(const visit& v, const rulebook& rules, const decision_rule& rule, const assess_options& how) { return assessor(v, rules, rule, how).run(); }

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// One inquiry into one thing that does not work: readings come in as they are taken, and at any time it can be asked what is wrong, which
// test is next, or what to do. Readings can be superseded, and every step can be undone.
// Job floor. Opt-in: needs the compiled target.
#pragma once
#include <atomic>
#include <cstdio>
#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <thread>
#include <utility>
#include <vector>
#include "../catalogue.hpp"
#include "family.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

struct session_options {
  decision_costs costs{};
  double none_prior = 0.05;
  unsigned points = 0;         ///< of the quasi-random sums of the kernel: 512, 2048 or 4096; 0: as many as the family asks for
  unsigned draws = 100;        ///< of the alarm of conflict; 0: without it
  instruments_by_kind with{};  ///< instruments of readings to come, and of readings that name none
};
/// One reading against what an explanation expects of it once it knows the other readings.
struct expected_reading {
  std::size_t test = 0;
  std::string label;
  observation read;
  bool said = true;        ///< false: the explanation says nothing about it
  double low = no_number, median = no_number, high = no_number;  ///< of a value: 95 %, and its middle
  double chance = 0.0;     ///< probability of what was read: of the word, of a value beyond the end of the range, of any value
  double distance = no_number;  ///< of a value: its place in what is expected, as a standard score (beyond ±2 one in twenty)
};
struct session_finding {
  std::string kind, text;  ///< precondition, conflict, danger, repeated
};

class session {
 public:
  explicit session(family_case of, session_options options = {})
      : case_(std::make_shared<const family_case>(std::move(of))), options_(std::move(options)), engine_(case_->tests, case_->hypotheses, kernel_options(options_, *case_)),
        planner_(engine_, case_->works, case_->acts, case_->stakes, case_->conditions, case_->accesses, options_.costs) {}

  const family_case& of() const { return *case_; }
  const session_options& options() const { return options_; }

  /// A reading of a test; returns its label. `supersedes`: the label of a reading that it replaces. Two readings of one test that
  /// supersede nothing both count.
  std::string read(std::string_view test, const reading& r, std::string label = "", const std::string& supersedes = "") {
    return enter(test, {kind::reading, std::string(test), std::move(label), supersedes, r, ""});
  }
  /// What a test showed, by the word of its outcome.
  std::string read(std::string_view test, std::string_view outcome, std::string label = "", const std::string& supersedes = "") {
    const auto t = place(test);
    const auto& words = case_->tests[t].categories;
    if (std::find(words.begin(), words.end(), outcome) == words.end()) {
      std::string list;
      for (const auto& w : words) list += (list.empty() ? "\"" : ", \"") + w + "\"";
      throw range_error(who() + "\"" + std::string(test) + "\" has no outcome \"" + std::string(outcome) + "\"" + (list.empty() ? "; it is a number" : "; it shows one of " + list));
    }
    return enter(test, {kind::outcome, std::string(test), std::move(label), supersedes, {}, std::string(outcome)});
  }
  /// The same without working anything out yet: for many at once.
  void put(const std::string& test, const reading& r) { put({kind::reading, test, "", "", r, ""}); }
  void put(const std::string& test, const std::string& outcome) { put({kind::outcome, test, "", "", {}, outcome}); }
  /// Takes a reading back, as if it had not been taken: what it superseded counts again.
  void withdraw(const std::string& label) {
    if (!standing_reading(label)) throw range_error(who() + "there is no reading \"" + label + "\" that stands");
    events_.push_back({kind::withdrawn, "", label, "", {}, ""});
    fresh_ = false;
  }
  /// A condition has been brought about, or no longer stands.
  void stands(const std::string& condition, bool now = true) {
    bool known = false;
    for (const auto& c : case_->conditions) known = known || c.id == condition;
    if (!known) {
      std::vector<std::string_view> names;
      for (const auto& c : case_->conditions) names.push_back(c.id);
      const auto near = document::nearest(condition, names);
      throw range_error(who() + "there is no condition \"" + condition + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
    }
    events_.push_back({now ? kind::stands : kind::ended, condition, "", "", {}, ""});
    fresh_ = false;
  }
  /// Takes the last step back; false: there is none.
  bool undo() {
    if (events_.empty()) return false;
    events_.pop_back();
    fresh_ = false;
    return true;
  }
  std::size_t steps() const { return events_.size(); }

  const posterior_table& table() {
    run();
    return engine_.table();
  }
  explanations& engine() {
    run();
    return engine_;
  }
  const next_step& next() {
    run();
    if (!planned_) planned_ = planner_.plan(engine_, standing_, opened_, made_);
    return *planned_;
  }
  /// Whether the readings look like readings of the leading hypothesis; its other numbers only where it is a conflict.
  const conflict_report& conflict() {
    run();
    if (!conflict_) conflict_ = options_.draws > 0 && readings_ > 0 ? engine_.conflict(true) : conflict_report{};
    return *conflict_;
  }
  const std::vector<session_finding>& findings() {
    work();
    return findings_;
  }
  const std::set<std::string>& standing() {
    work();
    return standing_;
  }
  const planner& plans() const { return planner_; }
  /// The readings against what hypothesis h expects of each once it knows the others: of a sound explanation each is as expected.
  std::vector<expected_reading> expected(std::size_t h);
  /// Why this is next, in two sentences.
  std::vector<std::string> explain();
  /// What is wrong, the likeliest first, as it stands in the document.
  document::array hypotheses();
  /// All of it as a document.
  document::value to_document();

  static inference_options kernel_options(const session_options& o, const family_case& of) {
    inference_options k;
    k.none_prior = o.none_prior;
    k.points = o.points ? o.points : of.points;
    k.draws = o.draws;
    return k;
  }
  /// A reading of a test as the kernel takes it, with what it has of its own.
  static observation observed(const family_case& of, std::size_t t, reading r, const instruments_by_kind& with, const std::string& own) {
    const auto& said = of.tests_said[t];
    if (!r.statement && !r.meter && r.instrument.empty())
      if (const auto w = with.find(said.kind); w != with.end()) {
        r.instrument = w->second.instrument;
        r.statement = w->second.statement;
        r.meter = w->second.meter;
      }
    auto o = observation::from(of.tests[t].id, r, said.kind);
    if (o.is == observation::kind::category || o.is == observation::kind::not_measured) return o;
    if (said.own_fixed > 0.0) o.number.parts.push_back({"repeated, " + own, said.own_fixed});
    if (said.own_ratio > 0.0) o.gains.push_back({"repeated, " + own, said.own_ratio});
    return o;
  }

 private:
  enum class kind : unsigned char { reading, outcome, withdrawn, stands, ended };
  struct event {
    kind is;
    std::string what, label, supersedes;
    reading value;
    std::string word;
  };
  std::shared_ptr<const family_case> case_;
  session_options options_;
  explanations engine_;
  planner planner_;
  std::vector<event> events_;
  // worked out
  bool fresh_ = false, ran_ = false;
  std::set<std::string> standing_, opened_;
  std::vector<bool> made_;
  std::vector<session_finding> findings_;
  std::vector<observation> seen_;  // as the kernel has them
  std::vector<std::string> seen_labels_;
  std::size_t readings_ = 0;
  std::optional<next_step> planned_;
  std::optional<conflict_report> conflict_;

  void put(event e) {
    e.label = e.what + " #" + std::to_string(events_.size() + 1);
    events_.push_back(std::move(e));
    fresh_ = false;
  }
  std::string who() const { return "inquiry \"" + case_->id + "\": "; }
  std::size_t place(std::string_view test) const {
    const auto t = case_->test_place(test);
    if (t < case_->tests.size()) return t;
    std::vector<std::string_view> names;
    for (const auto& x : case_->tests) names.push_back(x.id);
    const auto near = document::nearest(test, names);
    throw range_error(who() + "there is no test \"" + std::string(test) + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
  }
  /// Whether a reading still counts: not taken back since, nor superseded by one that counts.
  bool counts(std::size_t i) const {
    for (std::size_t j = i + 1; j < events_.size(); ++j) {
      if (events_[j].is == kind::withdrawn && events_[j].label == events_[i].label) return false;
      if (!events_[j].supersedes.empty() && events_[j].supersedes == events_[i].label && counts(j)) return false;
    }
    return true;
  }
  const event* standing_reading(const std::string& label) const {
    for (std::size_t i = events_.size(); i-- > 0;)
      if ((events_[i].is == kind::reading || events_[i].is == kind::outcome) && events_[i].label == label && counts(i)) return &events_[i];
    return nullptr;
  }
  std::string enter(std::string_view test, event e) {
    const auto t = place(test);
    if (e.is == kind::reading) {
      if (case_->tests_said[t].kind == reads::nothing && e.value.has_number()) throw range_error(who() + "\"" + std::string(test) + "\" shows a word, not a number");
      if (e.value.has_number() && !is_finite(e.value.number)) throw range_error(who() + "\"" + std::string(test) + "\": the number must be finite");
    }
    if (!e.supersedes.empty()) {
      const auto* old = standing_reading(e.supersedes);
      if (!old) throw range_error(who() + "there is no reading \"" + e.supersedes + "\" that stands and could be superseded");
      if (old->what != e.what) throw range_error(who() + "\"" + e.supersedes + "\" is a reading of \"" + old->what + "\", not of \"" + e.what + "\"");
    }
    if (e.label.empty()) {
      std::size_t n = 1;
      for (const auto& one : events_) n += one.what == e.what && (one.is == kind::reading || one.is == kind::outcome);
      e.label = e.what + " #" + std::to_string(n);
    } else if (standing_reading(e.label)) {
      throw range_error(who() + "a reading \"" + e.label + "\" stands already");
    }
    events_.push_back(std::move(e));
    try {
      fresh_ = false;
      work();
    } catch (...) {  // two readings that cannot both be: the step is not taken
      events_.pop_back();
      fresh_ = false;
      throw;
    }
    return events_.back().label;
  }
  const condition* condition_of(const std::string& id) const {
    for (const auto& c : case_->conditions)
      if (c.id == id) return &c;
    return nullptr;
  }
  void bring(const std::string& id) {
    if (const auto* c = condition_of(id))
      for (const auto& e : c->ends) standing_.erase(e);
    standing_.insert(id);
  }
  void work() {
    if (fresh_) return;
    planned_.reset();
    conflict_.reset();
    standing_.clear();
    opened_.clear();
    findings_.clear();
    made_.assign(case_->works.size(), false);
    seen_.clear();
    seen_labels_.clear();
    for (std::size_t i = 0; i < events_.size(); ++i) {
      const auto& e = events_[i];
      if (e.is == kind::stands) {
        if (const auto* c = condition_of(e.what))
          for (const auto& n : c->needs)
            if (const auto* first = condition_of(n); first && first->by_test && !standing_.count(n))
              findings_.push_back({"danger", "\"" + c->title + "\" is said to stand, and \"" + first->title + "\" has not been shown by a test."});
        bring(e.what);
        continue;
      }
      if (e.is == kind::ended) {
        standing_.erase(e.what);
        continue;
      }
      if (e.is == kind::withdrawn) continue;
      if (standing_reading(e.label) != &e) continue;
      if (e.is == kind::reading && !e.value.has_number() && e.value.is != reading::state::no_trip) continue;  // not measured, pending
      const auto t = case_->test_place(e.what);
      const auto& w = case_->works[t];
      double minutes = 0.0;
      std::vector<std::string> first;
      std::string why;
      if (planner_.way_to(w, standing_, opened_, minutes, first, why)) {
        for (const auto& f : first) bring(f);
      } else {
        findings_.push_back({"precondition", case_->tests[t].title + " was read while \"" + why + "\" did not stand" + (w.live ? ": the circuit was made live before that was proved." : ".")});
      }
      if (!w.access.empty()) opened_.insert(w.access);
      made_[t] = true;
      if (e.is == kind::outcome) seen_.push_back(observation::outcome(e.what, e.word));
      else seen_.push_back(observed(*case_, t, e.value, options_.with, e.label));
      seen_labels_.push_back(e.label);
      if (w.proves.empty()) continue;
      bool good = false;
      if (e.is == kind::outcome) {
        good = !w.proves_word.empty() && e.word == w.proves_word;
      } else if (w.proves_word.empty()) {
        const bool from = is_nan(w.proves_from) || (e.value.is != reading::state::below && e.value.number >= w.proves_from);
        const bool to = is_nan(w.proves_to) || (e.value.is != reading::state::above && e.value.number <= w.proves_to);
        good = from && to;
      }
      if (good) standing_.insert(w.proves);
      else standing_.erase(w.proves);
    }
    readings_ = seen_.size();
    engine_.read(seen_);
    ran_ = false;
    // only readings that even "none of these" cannot have are worked out at once: they may be an error
    if (!(engine_.log_likelihood(engine_.none_of_these()) > -detail::infinite)) {
      engine_.run();
      ran_ = true;
    }
    fresh_ = true;
  }
  void run() {
    work();
    if (!ran_) engine_.run();
    ran_ = true;
  }
};

namespace detail {
inline std::string short_number(double x) { return number_text(x, 3); }
inline std::string percent_text(double p) {
  char text[32];
  if (p >= 0.9995) return "over 99.9 %";
  if (p >= 0.995) std::snprintf(text, sizeof text, "%.1f %%", 100.0 * p);
  else if (p >= 0.01) std::snprintf(text, sizeof text, "%.0f %%", 100.0 * p);
  else if (p >= 0.0001) std::snprintf(text, sizeof text, "%.2f %%", 100.0 * p);
  else return "under 0.01 %";
  return text;
}
inline std::string money_text(double x) {
  char text[32];
  std::snprintf(text, sizeof text, "%.2f", x);
  return text;
}
inline constexpr std::string_view advice_words[] = {"test", "must_test", "act", "nothing_left"};
inline constexpr std::string_view offer_words[] = {"offered", "made", "needs_proof", "live_while_dead_tells"};
inline constexpr std::string_view danger_words[] = {"none", "property", "life"};
}  // namespace detail

inline std::vector<expected_reading> session::expected(std::size_t h) {
  run();
  std::vector<expected_reading> list;
  std::vector<observation> others;
  for (std::size_t i = 0; i < seen_.size(); ++i) {
    const auto& o = seen_[i];
    expected_reading one;
    one.test = engine_.place_of(o.test);
    one.label = seen_labels_[i];
    one.read = o;
    others.clear();
    for (std::size_t j = 0; j < seen_.size(); ++j)
      if (j != i) others.push_back(seen_[j]);
    engine_.read(others);
    coming_reading coming = case_->works[one.test].reading;
    if (o.is == observation::kind::value) coming.parts = o.number.parts, coming.gains = o.gains, coming.resolution = o.resolution;
    foreseen f;
    engine_.foresee(h, {&coming, 1}, {&f, 1});
    double all = 0.0, from = detail::infinite, to = -detail::infinite;
    for (const auto& p : f.parts) {
      all += p.weight;
      from = std::min(from, p.mean - 8.0 * p.sd);
      to = std::max(to, p.mean + 8.0 * p.sd);
    }
    const auto up_to = [&](double x) {
      double sum = 0.0;
      for (const auto& p : f.parts) sum += p.weight * normal_cdf((x - p.mean) / p.sd);
      return sum / all;
    };
    if (all > 0.0) {
      const auto quantile = [&](double q) {
        double low = from, high = to;
        for (int step = 0; step < 80; ++step) (up_to(0.5 * (low + high)) < q ? low : high) = 0.5 * (low + high);
        return 0.5 * (low + high);
      };
      one.low = quantile(0.025);
      one.median = quantile(0.5);
      one.high = quantile(0.975);
    }
    const auto& test = case_->tests[one.test];
    const auto chance_of = [&](std::size_t k) { return k < f.outcomes.size() ? f.outcomes[k] : 0.0; };
    switch (o.is) {
      case observation::kind::value:
        one.chance = all + f.broad;
        if (all > 0.0) one.distance = detail::normal_score(std::clamp(up_to(o.number.value), 1e-15, 1.0 - 1e-15));
        break;
      case observation::kind::above:
        one.chance = chance_of(0) + (all > 0.0 ? all * (1.0 - up_to(o.number.value)) : 0.0) + f.broad * engine_.broad_part(one.test, o.number.value, test.high);
        break;
      case observation::kind::below:
        one.chance = chance_of(1) + (all > 0.0 ? all * up_to(o.number.value) : 0.0) + f.broad * engine_.broad_part(one.test, test.low, o.number.value);
        break;
      default:
        for (std::size_t k = 0; k < test.categories.size(); ++k)
          if (test.categories[k] == o.category) one.chance = chance_of(k + 2);
    }
    one.said = all > 0.0 || o.is == observation::kind::category || f.broad < 0.5;
    list.push_back(std::move(one));
  }
  engine_.read(seen_);
  return list;
}

inline std::vector<std::string> session::explain() {
  const auto& n = next();
  const auto& rows = engine_.table().rows;
  std::vector<std::size_t> order;
  for (std::size_t h = 0; h < case_->hypotheses.size(); ++h) order.push_back(h);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rows[a].posterior > rows[b].posterior; });
  const auto title = [&](std::size_t h) { return case_->hypotheses_said[h].title; };
  std::vector<std::string> out;
  if (n.is == advice::test || n.is == advice::must_test) {
    const auto& v = *std::find_if(n.tests.begin(), n.tests.end(), [&](const test_value& x) { return x.test == n.test; });
    std::string one = (n.is == advice::must_test ? "This must be settled first: " : "Next: ") + case_->tests[n.test].title + " (" + detail::short_number(v.minutes) + " min";
    for (std::size_t i = 0; i < v.first.size(); ++i)
      if (const auto* c = condition_of(v.first[i])) one += (i == 0 ? ", first: " : ", then: ") + c->title;
    out.push_back(one + ").");
    const auto& coming = case_->works[n.test].reading;
    std::string two;
    const auto expects = [&](std::size_t h) -> std::string {
      foreseen f;
      engine_.foresee(h, {&coming, 1}, {&f, 1});
      double value = 0.0, mean = 0.0, most = 0.0;
      for (const auto& p : f.parts) value += p.weight, mean += p.weight * p.mean;
      std::string word;
      for (std::size_t k = 0; k < f.outcomes.size(); ++k)
        if (f.outcomes[k] > most) most = f.outcomes[k], word = k == 0 ? "over range" : k == 1 ? "under range" : case_->tests[n.test].categories[k - 2];
      if (value >= most && value > 0.0) return "about " + detail::short_number(mean / value) + (case_->tests_said[n.test].unit.empty() ? "" : " " + case_->tests_said[n.test].unit);
      return most > f.broad ? "\"" + word + "\"" : "anything";
    };
    if (n.is == advice::must_test) {
      two = title(n.must_tell) + " has " + detail::percent_text(rows[n.must_tell].posterior) + " and would stay dangerous with this circuit isolated: it would show " + expects(n.must_tell) + ".";
    } else {
      std::size_t second = order[0];
      const std::string a = expects(order[0]);
      for (std::size_t i = 1; i < order.size() && rows[order[i]].posterior > 1e-7; ++i)
        if (expects(order[i]) != a) {
          second = order[i];
          break;
        }
      two = "If it is \"" + title(order[0]) + "\" (" + detail::percent_text(rows[order[0]].posterior) + ") it shows " + a;
      if (second != order[0]) two += ", if it is \"" + title(second) + "\" (" + detail::percent_text(rows[second].posterior) + ") " + expects(second);
      const double worth = is_finite(v.ahead) ? std::max(v.value, v.ahead + v.cost) : v.value;
      two += "; to know it is worth " + detail::money_text(worth) + ", to read it costs " + detail::money_text(v.cost) + ".";
    }
    out.push_back(two);
    return out;
  }
  const auto& best = n.acts.front();
  std::string why = n.is == advice::nothing_left ? "No test is left that may be made now" : n.decided ? "No test can change the decision" : "No test is worth its time any more";
  for (const auto& v : n.tests)
    if (v.is == offer::needs_proof && v.value > 0.0) {
      why += " (before others, this must stand: " + v.why_not + ")";
      break;
    }
  out.push_back(why + ": " + case_->acts[best.act].title + ".");
  std::string two = "Most likely: " + title(order[0]) + " (" + detail::percent_text(rows[order[0]].posterior) + ")";
  if (order.size() > 1 && rows[order[1]].posterior > 0.01) two += ", then " + title(order[1]) + " (" + detail::percent_text(rows[order[1]].posterior) + ")";
  two += "; unexplained " + detail::percent_text(rows.back().posterior);
  if (best.danger_left > 0.0) two += "; danger left " + detail::percent_text(best.danger_left);
  out.push_back(two + ".");
  return out;
}

/// The faults with what is said of each, the likeliest first.
inline document::array session::hypotheses() {
  const auto& t = table();
  std::vector<std::size_t> order;
  for (std::size_t h = 0; h < t.rows.size(); ++h) order.push_back(h);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return t.rows[a].posterior > t.rows[b].posterior; });
  document::array list;
  for (const auto h : order) {
    const bool listed = h < case_->hypotheses.size();
    document::object one{{"id", engine_.id(h)}, {"title", listed ? case_->hypotheses_said[h].title : std::string("none of these")}, {"probability", t.rows[h].posterior},
               {"prior", t.rows[h].prior}, {"fault", listed ? case_->stakes[h].fault : true}, {"danger", listed ? detail::danger_words[static_cast<std::size_t>(case_->hypotheses[h].danger)] : std::string_view("none")}};
    one.set("plain", listed ? case_->hypotheses_said[h].plain : std::string("Something that is not on this list."));
    one.set("next", listed ? case_->hypotheses_said[h].next : std::string());
    list.emplace_back(std::move(one));
  }
  return list;
}

inline document::value session::to_document() {
  using document::array;
  using document::object;
  const auto& n = next();
  const auto& t = engine_.table();
  object o{{"family", case_->id}, {"title", case_->title}};
  array why;
  for (auto& s : explain()) why.emplace_back(std::move(s));
  const auto titles_of = [&](const std::vector<std::string>& ids) {
    array list;
    for (const auto& id : ids) {
      const auto* c = condition_of(id);
      list.emplace_back(c ? c->title : id);
    }
    return list;
  };
  o.set("advice", detail::advice_words[static_cast<std::size_t>(n.is)]);
  const bool testing = n.is == advice::test || n.is == advice::must_test;
  o.set("test", testing ? document::value(case_->tests[n.test].id) : document::value(nullptr));
  o.set("act", case_->acts[n.act].id);
  o.set("explain", std::move(why));
  o.set("hypotheses", hypotheses());
  if (t.leading < case_->hypotheses.size()) {
    array rows;
    for (const auto& x : expected(t.leading)) {
      if (!x.said) continue;
      const auto k = x.read.is;
      const bool word = k == observation::kind::category;
      rows.emplace_back(object{{"test", case_->tests[x.test].id}, {"label", x.label}, {"what", case_->tests[x.test].title}, {"unit", word ? std::string() : case_->tests_said[x.test].unit},
                               {"state", word ? "outcome" : k == observation::kind::above ? "above" : k == observation::kind::below ? "below" : "value"},
                               {"read", word ? document::value(x.read.category) : document::value(x.read.number.value)},
                               {"predicted", document::number_or_null(x.median)}, {"low", document::number_or_null(x.low)}, {"high", document::number_or_null(x.high)},
                               {"chance", x.chance}, {"z", document::number_or_null(x.distance)}});
    }
    o.set("predicted", std::move(rows));
  } else {
    o.set("predicted", array{});
  }
  array tests;
  for (const auto& v : n.tests) {
    object one{{"id", case_->tests[v.test].id}, {"title", case_->tests[v.test].title}, {"offer", detail::offer_words[static_cast<std::size_t>(v.is)]}, {"why_not", v.why_not},
               {"value", v.value}, {"cost", v.cost}, {"net", v.net()}, {"ahead", document::number_or_null(v.ahead)}, {"information_bits", v.information_bits}, {"minutes", v.minutes},
               {"live", case_->works[v.test].live}};
    one.set("first", titles_of(v.first));
    one.set("how", case_->tests_said[v.test].how);
    one.set("caution", case_->tests_said[v.test].caution);
    tests.emplace_back(std::move(one));
  }
  o.set("tests", std::move(tests));
  array acts;
  for (const auto& a : n.acts)
    acts.emplace_back(object{{"id", case_->acts[a.act].id}, {"title", case_->acts[a.act].title}, {"expected_loss", a.expected_loss}, {"danger_left", a.danger_left},
                             {"best_probability", a.best_probability}, {"allowed", a.allowed}, {"isolates", case_->acts[a.act].isolates}, {"money", case_->acts[a.act].money},
                             {"minutes", case_->acts[a.act].minutes}, {"leaves", case_->acts_said[a.act]}});
  o.set("acts", std::move(acts));
  o.set("perfect_information", n.perfect_information);
  o.set("robust", t.robust);
  o.set("overturned_by", t.robust ? document::value(nullptr) : document::value(engine_.id(t.overturned_by)));
  o.set("conflict", conflict().conflict);
  array findings;
  if (conflict().conflict) findings.emplace_back(object{{"kind", "conflict"}, {"text", "No listed fault explains these readings well: read again, with another instrument if there is one."}});
  for (const auto& f : findings_) findings.emplace_back(object{{"kind", f.kind}, {"text", f.text}});
  o.set("findings", std::move(findings));
  array readings;
  for (const auto& e : events_) {
    if ((e.is != kind::reading && e.is != kind::outcome) || standing_reading(e.label) != &e) continue;
    object one{{"test", e.what}, {"label", e.label}};
    if (e.is == kind::outcome) one.set("outcome", e.word);
    else one.set("state", state_text(e.value.is)), one.set("value", document::number_or_null(e.value.number));
    readings.emplace_back(std::move(one));
  }
  o.set("readings", std::move(readings));
  array notes;
  for (const auto& x : case_->notes) notes.emplace_back(x);
  notes.emplace_back("The weights before any reading are judgement: see \"prior\", and replace them.");
  o.set("notes", std::move(notes));
  return o;
}

/// Costs by name, as documents and Python give them. RangeError: no number, or no such cost.
inline decision_costs costs_from(const document::object& from, std::string_view who = {}) {
  struct one {
    std::string_view name;
    double decision_costs::*is;
  };
  static constexpr one known[] = {{"money_per_hour", &decision_costs::money_per_hour}, {"fault_left", &decision_costs::fault_left},
                                  {"loss_of_use", &decision_costs::loss_of_use}, {"danger_limit", &decision_costs::danger_limit}};
  const std::string where = who.empty() ? std::string("costs") : std::string(who) + ": costs";
  decision_costs c;
  for (const auto& f : from.fields) {
    const auto k = std::find_if(std::begin(known), std::end(known), [&](const one& o) { return o.name == f.first; });
    if (k == std::end(known)) throw range_error(where + " has no \"" + f.first + "\": money_per_hour, fault_left, loss_of_use, danger_limit");
    const auto* x = f.second.as<double>();
    if (!x) throw range_error(where + ": " + f.first + " must be a number");
    c.*(k->is) = *x;
  }
  return c;
}

// ---- of a visit ------------------------------------------------------------------------------------------------------------

struct visit;
/// The inquiry of a visit as a session, with the visit's instruments. Throws where the family, what is given or a reading is refused.
session session_of(const visit& v, std::size_t inquiry, session_options options = {});

// ---- many at once --------------------------------------------------------------------------------------------------------

/// One test of many inquiries: a number a row (NaN: not measured; infinite: beyond the ends of the test; with a state each if `states` is not
/// empty), or the place of an outcome.
struct reading_column {
  std::string test;
  std::vector<double> values{};
  std::vector<signed char> states{};  ///< reading::state
  bool words = false;                 ///< values are places in the categories of the test
  std::vector<int> places{};          ///< of a test that shows numbers and words: one a row, the place of its word, or -1 for the number
};
struct many_results {
  std::vector<double> probabilities{};        ///< row × (hypothesis, then none of these)
  std::vector<int> leading{}, test{}, act{};  ///< test: -1 where an act is next
  std::vector<signed char> is{};              ///< job::advice
  std::size_t width = 0;
};
/// The same family with the same numbers given, over many rows of readings: the same results as one session each, on one thread or more.
/// `progress(done)` is called from the calling thread now and then; false stops, and leaves the rest unworked.
inline many_results many(const family_case& of, std::span<const reading_column> columns, std::size_t rows, const session_options& options = {}, unsigned threads = 1, bool plan = true,
                         const std::function<bool(std::size_t)>& progress = {}) {
  many_results out;
  out.width = of.hypotheses.size() + 1;
  out.probabilities.assign(rows * out.width, no_number);
  out.leading.assign(rows, -1);
  out.test.assign(rows, -1);
  out.act.assign(rows, -1);
  out.is.assign(rows, 0);
  std::vector<std::size_t> places;
  for (const auto& c : columns) {
    const auto t = of.test_place(c.test);
    if (t == of.tests.size()) throw range_error("inquiry \"" + of.id + "\": there is no test \"" + c.test + "\"");
    if (c.values.size() != rows || (!c.states.empty() && c.states.size() != rows)) throw range_error("inquiry \"" + of.id + "\": \"" + c.test + "\": one value a row");
    if (!c.places.empty() && (c.places.size() != rows || of.tests[t].categories.empty())) throw range_error("inquiry \"" + of.id + "\": \"" + c.test + "\" shows no words, or not one a row");
    if (c.words == of.tests[t].real() && (c.words || of.tests[t].categories.empty()))
      throw range_error("inquiry \"" + of.id + "\": \"" + c.test + "\" shows " + (of.tests[t].real() ? "a number" : "a word"));
    places.push_back(t);
  }
  std::atomic<bool> stopped = false;
  std::atomic<std::size_t> done = 0;
  const auto work = [&](std::size_t from, std::size_t to, std::size_t step, bool main) {
    session one(of, options);
    for (std::size_t i = from; i < to && !stopped; i += step) {
      while (one.undo()) {
      }
      for (std::size_t c = 0; c < columns.size(); ++c) {
        const bool says = !columns[c].places.empty() && columns[c].places[i] >= 0;
        const double x = says ? static_cast<double>(columns[c].places[i]) : columns[c].values[i];
        if (is_nan(x)) continue;
        if (columns[c].words || says) {
          const auto& words = of.tests[places[c]].categories;
          if (!(x >= 0.0 && x < static_cast<double>(words.size()))) throw range_error("inquiry \"" + of.id + "\": \"" + columns[c].test + "\", row " + std::to_string(i) + ": no such outcome");
          one.put(columns[c].test, words[static_cast<std::size_t>(x)]);
          continue;
        }
        const auto& t = of.tests[places[c]];
        reading r = is_finite(x) ? reading(x) : x > 0.0 ? reading::above(t.high) : reading::below(t.low);
        if (!columns[c].states.empty()) r.is = static_cast<reading::state>(columns[c].states[i]);
        one.put(columns[c].test, r);
      }
      const auto& t = one.table();
      for (std::size_t h = 0; h < out.width; ++h) out.probabilities[i * out.width + h] = t.rows[h].posterior;
      out.leading[i] = static_cast<int>(t.leading);
      if (plan) {
        const auto& n = one.next();
        out.is[i] = static_cast<signed char>(n.is);
        out.act[i] = static_cast<int>(n.act);
        if (n.is == advice::test || n.is == advice::must_test) out.test[i] = static_cast<int>(n.test);
      }
      ++done;
      if (main && progress && !progress(done)) stopped = true;
    }
  };
  threads = std::max(1u, std::min<unsigned>(threads, static_cast<unsigned>(rows / 8 + 1)));
  std::vector<std::thread> helpers;
  std::vector<std::exception_ptr> trouble(threads);
  for (unsigned k = 1; k < threads; ++k)
    helpers.emplace_back([&, k] {
      try {
        work(k, rows, threads, false);
      } catch (...) {
        trouble[k] = std::current_exception();
        stopped = true;
      }
    });
  try {
    work(0, rows, threads, true);
  } catch (...) {
    trouble[0] = std::current_exception();
    stopped = true;
  }
  for (auto& h : helpers) h.join();
  for (const auto& t : trouble)
    if (t) std::rethrow_exception(t);
  return out;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Checks and their verdicts: a value held against a limit of a rulebook, with doubt, source and working.
// Core: every check of every subject. Includes the standard library only.
#pragma once
#include <algorithm>
#include <deque>
#include <memory>
#include <span>
#include <string>
#include <tuple>
#include <variant>
#include <vector>
#include "decision_rule.hpp"
#include "reading.hpp"
#include "rulebook.hpp"
#include "scalar/probe.hpp"
#include "scalar/symbol.hpp"

namespace makegood {
inline namespace v1 {

enum class outcome : unsigned char { pass, fail, undecided };
enum class reason : unsigned char {
  none, not_measured, outside_validity, straddles_limit, needs_makers_figure, no_rule_in_book, precondition_missing
};
constexpr std::string_view outcome_text(outcome o) {
  return o == outcome::pass ? "pass" : o == outcome::fail ? "fail" : "undecided";
}
constexpr std::string_view reason_text(reason r) {
  switch (r) {
    case reason::none: return "";
    case reason::not_measured: return "not measured";
    case reason::outside_validity: return "outside validity";
    case reason::straddles_limit: return "straddles limit";
    case reason::needs_makers_figure: return "needs maker's figure";
    case reason::no_rule_in_book: return "no rule in book";
    case reason::precondition_missing: return "precondition missing";
  }
  return {};
}

/// An argument of a check: a number, a number with error sources, a reading, or a word.
struct given {
  std::variant<double, measured, reading, std::string> is;
  given(double x) : is(x) {}
  given(int x) : is(static_cast<double>(x)) {}
  given(measured x) : is(std::move(x)) {}
  given(reading x) : is(std::move(x)) {}
  given(std::string x) : is(std::move(x)) {}
  given(std::string_view x) : is(std::string(x)) {}
  given(const char* x) : is(std::string(x)) {}
};

/// No formula and no check takes more.
inline constexpr std::size_t most_arguments = 12;

/// A check without its types: what the doors, the lists and the visit use.
struct check_info {
  const void* self = nullptr;
  std::string_view name;
  std::string_view summary;
  out result;
  std::span<const argument> args;
  std::string_view limit_id;       ///< the rule asked for; empty: the limit needs no rulebook
  int condition = -1;              ///< the argument that selects the rule's row
  std::span<const column> columns; ///< meaning of the rule's numbers
  bool two_sided = false;
  bool may_doubt = false;          ///< something in it has a range of validity
  comparator default_compare = comparator::at_most;
  std::string_view caution;
  source from;
  struct evaluated {
    double value = no_number, lower = no_number, upper = no_number;
    std::array<double, most_arguments> d_value, d_lower, d_upper;  ///< slopes by each argument
    remark fault{}, doubt{};
    std::string_view refused{};  ///< the relation that does not hold
  };
  void (*evaluate)(const void* self, const double* x, const choice_table& rule, evaluated& e) = nullptr;
  working (*work)(const void* self, const double* x, const choice_table& rule, bool value_only) = nullptr;

  std::size_t required() const {
    std::size_t n = 0;
    while (n < args.size() && !args[n].optional) ++n;
    return n;
  }
};

/// Something that a reader of a verdict is told of a reading behind it.
struct note {
  enum class what : unsigned char {
    leads_subtracted, leads_left_in, leads_doubt_assumed, count_term_rules, operating_2019, operating_error_limit, bends
  };
  what is;
  signed char argument;
  double number = 0.0, also = 0.0;
};
/// The better reading that would settle a verdict: of which argument, with which standard uncertainty (in its unit), at the same value.
struct better_reading {
  std::string_view argument, unit;
  double standard_uncertainty = 0.0, now = 0.0;
  double share = 0.0;          ///< of the variance of the margin that this argument has now
  makegood::outcome outcome = makegood::outcome::undecided;  ///< what it would then be
  bool all_readings = false;   ///< no single one can: every reading must come down by standard_uncertainty / now
};
namespace detail {
struct doubts;
}

/// The outcome of a check, with everything that a reader needs to defend it. Numbers and handles; the text is written when asked for.
struct verdict {
  makegood::outcome outcome = makegood::outcome::undecided;
  makegood::reason reason = makegood::reason::none;
  makegood::outcome plain = makegood::outcome::undecided;  ///< the reading against the limit, nothing else
  comparator compare = comparator::at_most;
  bool assumed = false;                  ///< the worst case of an instrument's class was taken
  reading::state taken = reading::state::value;  ///< above, below, no_trip: the reading was out of range
  signed char missing = -1;              ///< not measured: the argument
  unsigned char count = 0;               ///< of inputs
  double value = no_number;
  double lower = no_number, upper = no_number;  ///< limits; NaN: no limit on that side
  double margin = no_number;             ///< distance to the nearest limit, safe side positive, in the unit of the value
  double standard_uncertainty = 0.0;     ///< of the margin
  double probability = no_number;        ///< of conformity
  std::array<double, most_arguments> inputs{};  ///< a word: the index of its row
  remark outside{};                      ///< what lies outside its range of validity
  const check_info* info = nullptr;
  makegood::rulebook book{};
  struct words {
    std::string detail, doubt, settle;
  };
  std::shared_ptr<const words> said{};   ///< written by the visit instead of the check
  decision_rule decided_by{};
  std::vector<note> told{};              ///< of the readings; see notes()
  std::shared_ptr<const detail::doubts> doubts{};  ///< kept where the limit is straddled, for better()

  double expanded_uncertainty() const { return 2.0 * standard_uncertainty; }  ///< k = 2
  /// One sided checks: the limit; two sided: the nearer one.
  double limit() const {
    if (is_nan(lower)) return upper;
    if (is_nan(upper)) return lower;
    return value - lower < upper - value ? lower : upper;
  }
  /// As many significant digits as keep the printed order of value and limits true.
  int digits(int at_least = 4) const {
    const auto alike = [&](double end, int n) { return !is_nan(end) && end != value && number_text(end, n) == number_text(value, n); };
    int n = at_least;
    while (n < 17 && (alike(lower, n) || alike(upper, n))) ++n;
    return n;
  }
  /// A verdict has three outcomes: it is no truth value. Compare `outcome`.
  explicit operator bool() const = delete;

  std::string_view check() const { return info ? info->name : std::string_view(); }
  std::string_view unit() const { return info ? info->result.unit.symbol : std::string_view(); }
  std::string_view caution() const { return info ? info->caution : std::string_view(); }
  std::string rulebook() const { return book.id(); }
  /// The condition of the rule that was asked for.
  std::string_view condition() const {
    if (!info || info->condition < 0) return {};
    const auto k = static_cast<std::size_t>(info->condition);
    return info->args[k].table->rows[static_cast<std::size_t>(inputs[k])].key;
  }
  rulebook::answer rule() const {
    if (!info || info->limit_id.empty() || missing >= 0 || count == 0) return {};
    return book.find(info->limit_id, condition());
  }
  std::string source_title() const {
    const auto r = rule();
    if (r.changed) return "override: " + r.changed->words();
    return std::string(source_row(r).title);
  }
  std::string source_clause() const {
    const auto r = rule();
    return r.changed ? std::string() : std::string(source_row(r).clause);
  }
  std::string source_grade() const {
    const auto r = rule();
    return r.changed ? std::string("override") : std::string(source_row(r).grade);
  }
  std::string rule_text() const {
    const auto r = rule();
    return r.row && !r.changed && !r.row->needs_makers_figure ? std::string(r.row->text) : std::string();
  }
  std::vector<std::string> overrides() const {
    const auto r = rule();
    return r.changed ? std::vector<std::string>{r.changed->words()} : std::vector<std::string>{};
  }
  /// "above", "below" or "no trip" when the reading was out of range.
  std::string_view censored() const {
    if (taken == reading::state::above) return "above";
    if (taken == reading::state::below) return "below";
    return taken == reading::state::no_trip ? "no trip" : "";
  }
  /// Outside validity: why, without the names of formula and argument.
  std::string doubt() const { return said ? said->doubt : std::string(outside.text); }
  /// What is missing, or what lies outside validity.
  std::string detail() const {
    if (said) return said->detail;
    switch (reason) {
      case reason::not_measured: return missing < 0 ? std::string() : std::string(argument_missing().text) + (taken == reading::state::pending ? " (pending)" : "");
      case reason::no_rule_in_book:
        return "no \"" + std::string(info->limit_id) + "\"" + (condition().empty() ? "" : " for \"" + std::string(condition()) + "\"") + " in " +
               (book.tables().empty() && book.overrides().empty() ? std::string("an empty rulebook") : book.id());
      case reason::needs_makers_figure: return std::string(rule().row->text);
      case reason::outside_validity:
        return std::string(outside.formula) + ": " +
               (outside.argument.empty() ? "" : std::string(outside.argument) + " = " + quantity_text(outside.at, outside.unit, 6) + ": ") + std::string(outside.text);
      case reason::straddles_limit:
        if (!censored().empty()) return "the reading is out of the instrument's range on the side where it proves nothing";
        return std::string(plain == makegood::outcome::fail ? "does not meet the limit as read; not proved either way" : "meets the limit as read; not proved either way") +
               (decided_by.by_probability() ? std::string() : " (" + std::string(statement()) + " by the rule \"" + decided_by.name() + "\")");
      case reason::none:
        if (outcome == makegood::outcome::pass && plain == makegood::outcome::fail)
          return "does not meet the limit as read; accepted by the rule \"" + decided_by.name() + "\", since failure is not proved";
        if (outcome == makegood::outcome::fail && plain == makegood::outcome::pass)
          return "meets the limit as read; rejected by the rule \"" + decided_by.name() + "\", since conformity is not proved";
        return {};
      default: return {};
    }
  }
  /// The statement of conformity in the words of a non-binary rule: pass, conditional pass, conditional fail, fail, or undecided where there is no value.
  std::string_view statement() const {
    if (reason != makegood::reason::straddles_limit || !censored().empty()) return outcome_text(outcome);
    return plain == makegood::outcome::pass ? "conditional pass" : "conditional fail";
  }
  /// What is to be known of the readings: leads, counts, how an operating uncertainty was read.
  std::vector<std::string> notes() const {
    std::vector<std::string> list;
    for (const auto& t : told) {
      const auto& a = info->args[static_cast<std::size_t>(t.argument)];
      const std::string name = std::string(a.name) + ": ";
      switch (t.is) {
        case note::what::leads_subtracted:
          list.push_back(name + "leads of " + quantity_text(t.number, a.unit.symbol) + " were not nulled: subtracted, with a standard uncertainty of " + quantity_text(t.also, a.unit.symbol, 2));
          break;
        case note::what::leads_left_in: list.push_back(name + "leads of " + quantity_text(t.number, a.unit.symbol) + " were not nulled: they lie in the reading"); break;
        case note::what::leads_doubt_assumed: list.push_back(name + "the doubt of the leads is assumed: half of their resistance either way"); break;
        case note::what::count_term_rules:
          list.push_back(name + "only " + number_text(t.number, 2) + " counts of the display: the count term rules the doubt; a lower range reads better");
          break;
        case note::what::bends:
          list.push_back(name + "the margin bends within its doubt, so that its mean is off by " + quantity_text(t.number, unit(), 2) + ": the probability holds to first order only, and the decision is near");
          break;
        case note::what::operating_2019: list.push_back(name + "operating uncertainty of IEC 61557-1:2019, coverage factor 2: u = B/2"); break;
        case note::what::operating_error_limit: list.push_back(name + "operating error of an edition before 2019, read as a limit of error: u = B/√3"); break;
      }
    }
    if (assumed) list.push_back("the worst case of an instrument's class, read as a limit of error: u = B/√3");
    return list;
  }
  /// The better reading that would settle it, calculated with the rule that was used; none: settled, or no reading can.
  std::optional<better_reading> better() const;
  /// What the outcome would be, had this instrument read the argument with the largest share of the doubt, at the same value.
  makegood::outcome outcome_with(const instrument& other) const;
  /// What reading would settle it.
  std::string settle() const {
    if (said) return said->settle;
    switch (reason) {
      case reason::not_measured: return missing < 0 ? std::string() : "measure: " + std::string(argument_missing().text);
      case reason::no_rule_in_book: return "the maker's figure, or a rulebook that holds this limit";
      case reason::needs_makers_figure: return "the maker's figure for this device";
      case reason::outside_validity: return "a measurement of the result itself, or a method that holds there";
      case reason::straddles_limit: {
        if (!censored().empty()) return "a reading on a range that reaches " + quantity_text(limit(), unit(), 4);
        const auto b = better();
        if (!b) return "no reading can: the value lies on the limit itself; move the value";
        const auto quantity = [&](double x) { return quantity_text(x, b->unit, 2); };
        if (b->all_readings)
          return "no better reading of one thing alone: all of them with " + number_text(100.0 * b->standard_uncertainty / b->now, 2) +
                 " % of their present doubt, if they show the same values";
        return "a reading of the " + std::string(said_of(b->argument)) + " with a standard uncertainty of " + quantity(b->standard_uncertainty) + " or better (now " +
               quantity(b->now) + "), if it shows the same value";
      }
      default: return {};
    }
  }

  /// The worked steps, written when asked for.
  std::vector<working> worked() const {
    std::vector<working> all;
    if (count == 0 || is_nan(value) || !info || !info->work) return all;
    const auto r = rule();
    choice_row row{"", "", {}, {}};
    if (r.found()) std::copy(r.numbers().begin(), r.numbers().end(), row.values.begin());
    const choice_table table{info->columns, std::span<const choice_row>(&row, 1)};
    all.push_back(info->work(info->self, inputs.data(), table, true));
    all.push_back(info->work(info->self, inputs.data(), table, false));
    return all;
  }

 private:
  /// What an argument is, without what follows its first comma or semicolon.
  std::string_view said_of(std::string_view argument_name) const {
    for (const auto& a : info->args)
      if (a.name == argument_name && !a.text.empty()) return a.text.substr(0, a.text.find_first_of(",;"));
    return argument_name;
  }
  const argument& argument_missing() const { return info->args[static_cast<std::size_t>(missing)]; }
  source source_row(const rulebook::answer& r) const {
    if (r.row) return r.row->from;
    return info && reason != reason::no_rule_in_book ? info->from : source{{}, {}, {}};
  }
};

namespace detail {

constexpr bool any_of(bool x) { return x; }

/// The numbers of a verdict, for one row or for as many as a register holds. Codes are whole numbers.
template <class V>
struct judged {
  V value, lower, upper, margin, standard_uncertainty, probability, outcome, reason, plain;
};
template <class E, class V>
constexpr V code(E e, const V&) { return V(static_cast<double>(static_cast<unsigned char>(e))); }

/// What is known of a row before it is judged. M: bool, or a mask.
template <class M>
struct circumstances {
  M has_lower, has_upper, strict;  ///< of the limit
  M doubtful;                      ///< something lies outside its range of validity
  M beyond, beyond_larger;         ///< a reading lies out of its instrument's range; the true value is larger than the number
  bool two_sided;
  bool by_probability = true;      ///< the decision rule, the same for all rows
  double accept = proved_at, reject = 1.0 - proved_at;

  void decide_by(const decision_rule& r) {
    by_probability = r.by_probability();
    accept = r.accept;
    reject = r.reject;
  }
};

/// The decision rules of the library, once, for every kind of number. `doubt_of(upper, u, direction)` gives the standard uncertainty of the
/// distance to one limit, and how that distance grows with the reading that is out of range.
/// A pass or a fail is proved with the probability of the rule or outside its guard bands; beyond the range, only where "beyond" moves the
/// margin one way.
template <class V, class M, class Doubt>
MAKEGOOD_INLINE judged<V> decide(const V& value, const V& lower_, const V& upper_, const circumstances<M>& is, const Doubt& doubt_of) {
  const V zero(0.0), one(1.0), none(no_number);
  judged<V> r;
  r.value = value;
  r.lower = select(is.has_lower, lower_, none);
  r.upper = select(is.has_upper, upper_, none);
  const M low_met = !is.has_lower || value > lower_ || (!is.strict && value >= lower_);
  const M high_met = !is.has_upper || value < upper_ || (!is.strict && value <= upper_);
  r.plain = select(low_met && high_met, code(outcome::pass, zero), code(outcome::fail, zero));

  // value and limit may share error sources, so the difference is propagated, not the parts
  const auto conforms = [&](const V& margin, const V& u) MAKEGOOD_LAMBDA_INLINE {  // P(margin really on the safe side)
    const M some = u > zero;
    const M met = margin > zero || (!is.strict && margin >= zero);
    const V sure = select(met, one, zero);
    return any_of(some) ? select(some, normal_cdf(margin / select(some, u, one)), sure) : sure;
  };
  V u_high, u_low, direction_high, direction_low;
  doubt_of(true, u_high, direction_high);
  doubt_of(false, u_low, direction_low);
  const V to_upper = upper_ - value, to_lower = value - lower_;
  V p = one;
  if (any_of(is.has_upper)) p = select(is.has_upper, p - (one - conforms(to_upper, u_high)), p);
  if (any_of(is.has_lower)) p = select(is.has_lower, p - (one - conforms(to_lower, u_low)), p);
  p = select(p < zero, zero, p);
  const M nearer_low = is.has_lower && (!is.has_upper || to_lower < to_upper);
  r.margin = select(nearer_low, to_lower, to_upper);
  r.standard_uncertainty = select(nearer_low, u_low, u_high);
  const V direction = select(is.has_upper, direction_high, direction_low);

  M proved = p >= V(is.accept), refuted = p <= V(is.reject);
  if (!is.by_probability) {  // guard bands in units of U = 2 u
    const auto reaches = [&](const V& margin, const V& w) MAKEGOOD_LAMBDA_INLINE { return margin > w || (!is.strict && margin >= w); };
    const V accept(2.0 * is.accept), reject(-2.0 * is.reject);
    proved = (!is.has_upper || reaches(to_upper, accept * u_high)) && (!is.has_lower || reaches(to_lower, accept * u_low));
    refuted = (is.has_upper && !reaches(to_upper, reject * u_high)) || (is.has_lower && !reaches(to_lower, reject * u_low));
  }
  const V undecided = code(outcome::undecided, zero);
  const V ordinary = select(proved, code(outcome::pass, zero), select(refuted, code(outcome::fail, zero), undecided));

  const M grows = (direction > zero && is.beyond_larger) || (direction < zero && !is.beyond_larger);
  const M shrinks = (direction < zero && is.beyond_larger) || (direction > zero && !is.beyond_larger);
  V out_of_range;
  if (is.two_sided) {  // beyond the far limit proves a breach; otherwise nothing is proved
    const M breach = (is.beyond_larger && value > upper_) || (!is.beyond_larger && value < lower_);
    out_of_range = select(breach, code(outcome::fail, zero), undecided);
  } else {
    out_of_range = select(grows && proved, code(outcome::pass, zero), select(shrinks && refuted, code(outcome::fail, zero), undecided));
  }
  r.plain = select(is.beyond && !is.doubtful, out_of_range, r.plain);
  r.probability = select(is.beyond && !is.doubtful, none, p);
  r.outcome = select(is.doubtful, undecided, select(is.beyond, out_of_range, ordinary));
  r.reason = select(is.doubtful, code(reason::outside_validity, zero),
                    select(r.outcome >= undecided, code(reason::straddles_limit, zero), code(reason::none, zero)));
  return r;
}

/// One contribution to the doubt of a check's arguments; the list of a call is sorted by source, so that what has one name adds up.
struct doubt_term {
  std::string_view source;
  std::size_t argument = 0;
  bool of_reading = false;         ///< the size is a factor of the reading
  double size = 0.0;
  const double* column = nullptr;  ///< the sizes row by row (arrays)
  bool first = true;               ///< of its source
};
inline void sort_terms(std::vector<doubt_term>& terms) {
  std::sort(terms.begin(), terms.end(), [](const doubt_term& a, const doubt_term& b) {
    return a.source != b.source ? a.source < b.source : a.argument != b.argument ? a.argument < b.argument : a.of_reading > b.of_reading;
  });
  for (std::size_t i = 1; i < terms.size(); ++i) terms[i].first = terms[i].source != terms[i - 1].source;
}

/// What a straddled limit was judged with: kept so that the reading that would settle it can be calculated with the same rule.
struct doubts {
  std::vector<doubt_term> terms{};  ///< sorted; sizes in the unit of the argument
  std::deque<std::string> names{};
  std::size_t count = 0;            ///< of arguments
  std::array<double, most_arguments> slope_upper{}, slope_lower{};
  circumstances<bool> is{};
  double value = no_number, lower = no_number, upper = no_number;

  /// The verdict with the doubt of one argument (none: count) by a factor, and all others by another.
  judged<double> with(std::size_t argument, double factor, double others = 1.0) const {
    const auto doubt_of = [&](bool high, double& u, double& direction) {
      const auto& slope = high ? slope_upper : slope_lower;
      double variance = 0.0, sum = 0.0;
      for (std::size_t t = 0; t < terms.size(); ++t) {
        const double part = slope[terms[t].argument] * terms[t].size * (terms[t].argument == argument ? factor : others);
        sum = terms[t].first ? part : sum + part;
        if (t + 1 == terms.size() || terms[t + 1].first) variance = variance + sum * sum;
      }
      u = sqrt(variance);
      direction = 0.0;
    };
    return decide(value, lower, upper, is, doubt_of);
  }
  /// The standard uncertainty of an argument, in its unit.
  double own(std::size_t argument) const {
    double variance = 0.0, sum = 0.0;
    for (std::size_t t = 0; t < terms.size(); ++t) {
      const double part = terms[t].argument == argument ? terms[t].size : 0.0;
      sum = terms[t].first ? part : sum + part;
      if (t + 1 == terms.size() || terms[t + 1].first) variance = variance + sum * sum;
    }
    return std::sqrt(variance);
  }
  /// How much less variance the margin has without this argument's doubt, as a share.
  double share(std::size_t argument) const {
    const double all = with(count, 1.0).standard_uncertainty, without = with(argument, 0.0).standard_uncertainty;
    return all > 0.0 ? 1.0 - without * without / (all * all) : 0.0;
  }
  /// The arguments with doubt, the largest share first.
  std::vector<std::size_t> by_share() const {
    std::vector<std::pair<double, std::size_t>> found;
    for (std::size_t i = 0; i < count; ++i)
      if (own(i) > 0.0) found.emplace_back(-share(i), i);
    std::sort(found.begin(), found.end());
    std::vector<std::size_t> order;
    for (const auto& f : found) order.push_back(f.second);
    return order;
  }
  /// The largest factor at which the verdict is settled; 0: none.
  template <class With>
  static double settled_at(const With& with_factor) {
    double low = 1e-6, high = 1.0;  // below: the value lies on the limit for all that instruments can do
    if (with_factor(low).outcome > 1.0) return 0.0;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      (with_factor(middle).outcome > 1.0 ? high : low) = middle;
    }
    return low;
  }
};
/// The last of these digits down: a doubt that is printed must be small enough.
inline double rounded_down(double x, int digits) {
  if (!(x > 0.0) || !is_finite(x)) return x;
  double scale = 1.0;
  const double top = std::pow(10.0, digits);
  while (x * scale < top / 10.0) scale *= 10.0;
  while (x * scale >= top) scale /= 10.0;
  return std::floor(x * scale) / scale;
}

/// Why a check cannot be made of what was given.
struct refusal {
  enum class what : unsigned char { nothing, range, relation } kind = what::nothing;
  std::string text{};
  explicit operator bool() const { return kind != what::nothing; }
  [[noreturn]] void raise() const {
    if (kind == what::relation) throw relation_error(text);
    throw range_error(text);
  }
};
inline refusal refused(const check_info& info, const std::string& text) { return {refusal::what::range, std::string(info.name) + ": " + text}; }
inline bool is_absent(const given& g) {
  const auto* r = std::get_if<reading>(&g.is);
  return r && (r->is == reading::state::not_measured || r->is == reading::state::pending);
}
inline constexpr std::string_view infinite_doubt = "the uncertainty of the margin has no finite value for these arguments";
inline constexpr std::string_view leads_not_here = "the statement has leads that were not nulled: that is for readings in Ω";
inline constexpr std::string_view infinite_limit = "the limit has no finite value for these arguments";

/// The number that a reading stands for: leads that were not nulled are taken off, and what is to be known is noted.
inline double reading_corrected(const accuracy& a, double number, std::size_t argument, std::vector<note>& told) {
  const auto tell = [&](note::what is, double x = 0.0, double also = 0.0) { told.push_back({is, static_cast<signed char>(argument), x, also}); };
  if (a.counts > 0.0 && a.resolution > 0.0 && std::fabs(number) < 10.0 * a.resolution) tell(note::what::count_term_rules, std::fabs(number) / a.resolution);
  if (a.basis == statement_basis::operating_2019) tell(note::what::operating_2019);
  if (a.basis == statement_basis::operating_error_limit) tell(note::what::operating_error_limit);
  if (!a.has_leads()) return number;
  if (a.leads_left_in) {
    tell(note::what::leads_left_in, a.leads_ohm);
    return number;
  }
  tell(note::what::leads_subtracted, a.leads_ohm, a.leads_doubt());
  if (!(a.leads_standard_uncertainty_ohm > 0.0)) tell(note::what::leads_doubt_assumed);
  return number - a.bias();
}

/// By how much the mean of the margin is off when one argument's doubt is propagated to first order: three points of Gauss and Hermite.
inline double bend(const check_info& info, const double* x, const choice_table& rule, std::size_t i, double u, bool lower, double margin) {
  std::array<double, most_arguments> at{};
  std::copy(x, x + info.args.size(), at.begin());
  double sum = -2.0 * margin;
  for (const double away : {-1.7320508075688772, 1.7320508075688772}) {
    at[i] = x[i] + away * u;
    if (!info.args[i].permitted.contains(at[i])) return 0.0;
    check_info::evaluated e;
    info.evaluate(info.self, at.data(), rule, e);
    const double there = lower ? e.value - e.lower : e.upper - e.value;
    if (!e.refused.empty() || !is_finite(there)) return 0.0;
    sum += there;
  }
  return sum / 6.0;
}
/// A decision that is near, on a margin that is not straight: said, not corrected.
inline void note_bends(const check_info& info, const double* x, const choice_table& rule, const std::vector<doubt_term>& terms, verdict& v) {
  const bool lower = is_nan(v.upper) || (!is_nan(v.lower) && v.value - v.lower < v.upper - v.value);
  for (std::size_t i = 0; i < info.args.size(); ++i) {
    double variance = 0.0;
    for (const auto& t : terms)
      if (t.argument == i) variance += square(t.of_reading ? t.size * x[i] : t.size);
    if (!(variance > 0.0)) continue;
    const double off = bend(info, x, rule, i, std::sqrt(variance), lower, v.margin);
    if (std::fabs(off) > 0.05 * v.standard_uncertainty) v.told.push_back({note::what::bends, static_cast<signed char>(i), off});
  }
}

/// Everything between arguments and verdict, for every check; nothing is thrown for what a user may give.
inline refusal try_judge(const check_info& info, std::span<const given> arguments, const rulebook& book, verdict& v, const decision_rule& rule = {}) {
  v.info = &info;
  v.book = book;
  v.decided_by = rule;
  v.compare = info.default_compare;
  const std::size_t n = info.args.size();
  if (arguments.size() < info.required() || arguments.size() > n)
    return refused(info, "takes " + std::to_string(info.required()) + " to " + std::to_string(n) + " arguments");
  for (std::size_t i = 0; i < arguments.size(); ++i)
    if (is_absent(arguments[i])) {
      v.reason = reason::not_measured;
      v.missing = static_cast<signed char>(i);
      v.taken = std::get<reading>(arguments[i].is).is;
      if (info.args[i].table) return refused(info, std::string(info.args[i].name) + " must be one of " + keys_text(*info.args[i].table));
      return {};
    }
  double* x = v.inputs.data();
  v.count = static_cast<unsigned char>(n);
  std::vector<doubt_term> terms;
  std::deque<std::string> names;  // of sources that are not written down anywhere else
  int beyond = -1;
  for (std::size_t i = 0; i < n; ++i) {
    const auto& a = info.args[i];
    if (i >= arguments.size()) {
      x[i] = a.fallback;
      continue;
    }
    const auto& g = arguments[i].is;
    const auto* word = std::get_if<std::string>(&g);
    if (a.table) {
      const auto* number = std::get_if<double>(&g);
      const bool sized = number && a.table->of_numbers();
      const int row = word ? a.table->find(*word) : sized ? a.table->find(number_text(*number, 12)) : -1;
      if (sized && row < 0) return {refusal::what::range, std::string(unknown_key(info.name, a, number_text(*number, 12)))};
      if (!word && !sized) return refused(info, std::string(a.name) + " must be one of " + keys_text(*a.table));
      if (row < 0) return {refusal::what::range, std::string(unknown_key(info.name, a, *word))};
      x[i] = row;
      continue;
    }
    if (word) return refused(info, std::string(a.name) + " must be a number in " + std::string(a.unit.symbol));
    const auto add = [&](std::string_view source, bool lasting, bool of_reading, double size) {
      terms.push_back({lasting ? source : std::string_view(names.emplace_back(source)), i, of_reading, size});
    };
    if (const auto* m = std::get_if<measured>(&g)) {
      x[i] = m->value;
      v.assumed = v.assumed || (m->assumed && !m->parts.empty());
      for (const auto& p : m->parts) {
        if (!is_finite(p.u)) return refused(info, std::string(a.name) + ": its uncertainty (" + p.source + ") is not a number");
        add(p.source, true, false, p.u);
      }
    } else if (const auto* number = std::get_if<double>(&g)) {
      x[i] = *number;
      v.assumed = each_source(nullptr, {}, {}, a.instrument, a.name, add) || v.assumed;
    } else {
      const auto& r = std::get<reading>(g);
      if (r.is == reading::state::no_trip) {
        x[i] = a.permitted.high;
      } else {
        const reads kind = r.statement || r.meter ? read_with(a) : a.instrument;
        const accuracy* stated = r.stated_for(kind);
        if (stated && stated->has_leads() && a.unit.symbol != unit::ohm.symbol) return refused(info, std::string(a.name) + ": " + std::string(leads_not_here));
        x[i] = stated ? reading_corrected(*stated, r.number, i, v.told) : r.number;
        v.assumed = each_source(stated, r.instrument, r.label, kind, a.name, add) || v.assumed;
      }
      if (r.is != reading::state::value) {
        v.taken = r.is;
        beyond = static_cast<int>(i);
      }
    }
    if (!a.permitted.contains(x[i])) return refused(info, std::string(a.name) + ": " + out_of_range_text(a, x[i]));
    for (const auto& t : terms)
      if (t.argument == i && !is_finite(t.size)) return refused(info, std::string(a.name) + ": its uncertainty (" + std::string(t.source) + ") is not a number");
  }
  sort_terms(terms);

  choice_row row{"", "", {}, {}};
  if (!info.limit_id.empty()) {
    const auto r = v.rule();
    if (!r.found() || r.needs_makers_figure()) {
      v.reason = r.found() ? reason::needs_makers_figure : reason::no_rule_in_book;
      return {};
    }
    std::copy(r.numbers().begin(), r.numbers().end(), row.values.begin());
    v.compare = r.compare();
  }
  const choice_table table{info.columns, std::span<const choice_row>(&row, 1)};
  check_info::evaluated e;
  info.evaluate(info.self, x, table, e);
  if (!e.refused.empty()) return {refusal::what::relation, std::string(info.name) + ": " + std::string(e.refused)};
  if (!is_finite(e.value)) {
    std::string text = "no finite value";
    if (e.fault.set()) text += ": inside " + std::string(e.fault.formula) + ": " + std::string(e.fault.argument) + ": " + std::string(e.fault.text);
    return refused(info, text);
  }
  circumstances<bool> is{};
  is.two_sided = info.two_sided;
  is.decide_by(rule);
  is.has_lower = info.two_sided || v.compare == comparator::at_least || v.compare == comparator::above;
  is.has_upper = info.two_sided || v.compare == comparator::at_most || v.compare == comparator::below;
  is.strict = v.compare == comparator::below || v.compare == comparator::above;
  is.doubtful = e.doubt.set();
  is.beyond = beyond >= 0;
  is.beyond_larger = v.taken != reading::state::below;
  if ((is.has_lower && !is_finite(e.lower)) || (is.has_upper && !is_finite(e.upper))) return refused(info, std::string(infinite_limit));
  bool finite = true;
  const auto doubt_of = [&](bool upper, double& u, double& direction) {
    const auto& d = upper ? e.d_upper : e.d_lower;
    const auto slope = [&](std::size_t i) { return upper ? d[i] - e.d_value[i] : e.d_value[i] - d[i]; };
    double variance = 0.0, sum = 0.0;
    for (std::size_t t = 0; t < terms.size(); ++t) {
      const double size = terms[t].of_reading ? terms[t].size * x[terms[t].argument] : terms[t].size;
      const double part = slope(terms[t].argument) * size;
      sum = terms[t].first ? part : sum + part;
      if (t + 1 == terms.size() || terms[t + 1].first) variance = variance + sum * sum;
    }
    u = sqrt(variance);
    direction = beyond >= 0 ? slope(static_cast<std::size_t>(beyond)) : 0.0;
    if (upper ? is.has_upper : is.has_lower) finite = finite && is_finite(u);
  };
  const judged<double> j = decide(e.value, e.lower, e.upper, is, doubt_of);
  if (!finite) return refused(info, std::string(infinite_doubt));
  v.value = j.value;
  v.lower = j.lower;
  v.upper = j.upper;
  v.margin = j.margin;
  v.standard_uncertainty = j.standard_uncertainty;
  v.probability = j.probability;
  v.outcome = static_cast<outcome>(static_cast<unsigned char>(j.outcome));
  v.reason = static_cast<reason>(static_cast<unsigned char>(j.reason));
  v.plain = static_cast<outcome>(static_cast<unsigned char>(j.plain));
  v.outside = e.doubt;
  const double sure = v.probability > 0.5 ? 1.0 - v.probability : v.probability;
  if (v.reason == reason::none && beyond < 0 && sure > 1e-3) note_bends(info, x, table, terms, v);
  if (v.reason == reason::straddles_limit && beyond < 0) {
    auto kept = std::make_shared<doubts>();
    kept->count = n;
    for (auto& t : terms) {
      if (t.of_reading) t.size *= x[t.argument];
      t.of_reading = false;
      t.source = kept->names.emplace_back(t.source);
    }
    kept->terms = std::move(terms);
    for (std::size_t i = 0; i < n; ++i) {
      kept->slope_upper[i] = e.d_upper[i] - e.d_value[i];
      kept->slope_lower[i] = e.d_value[i] - e.d_lower[i];
    }
    kept->is = is;
    kept->value = e.value;
    kept->lower = e.lower;
    kept->upper = e.upper;
    v.doubts = std::move(kept);
  }
  return {};
}
/// The same, with the error that belongs to the refusal.
inline verdict judge(const check_info& info, std::span<const given> arguments, const rulebook& book, const decision_rule& rule = {}) {
  verdict v;
  if (const refusal why = try_judge(info, arguments, book, v, rule)) why.raise();
  return v;
}

}  // namespace detail

inline std::optional<better_reading> verdict::better() const {
  if (!doubts) return {};
  const auto found = [&](std::size_t i, double factor, const detail::judged<double>& then) {
    better_reading b;
    b.argument = info->args[i].name;
    b.unit = info->args[i].unit.symbol;
    b.now = doubts->own(i);
    b.standard_uncertainty = detail::rounded_down(factor * b.now, 2);
    b.share = doubts->share(i);
    b.outcome = static_cast<makegood::outcome>(static_cast<unsigned char>(then.outcome));
    return b;
  };
  const auto order = doubts->by_share();
  for (const std::size_t i : order) {
    const auto with = [&](double factor) { return doubts->with(i, factor); };
    if (const double factor = doubts->settled_at(with); factor > 0.0) return found(i, factor, with(factor));
  }
  const auto with = [&](double factor) { return doubts->with(doubts->count, 1.0, factor); };
  if (const double factor = order.empty() ? 0.0 : doubts->settled_at(with); factor > 0.0) {
    auto b = found(order.front(), factor, with(factor));
    b.all_readings = true;
    return b;
  }
  return {};
}
inline outcome verdict::outcome_with(const instrument& other) const {
  if (!doubts) return outcome;
  for (const std::size_t i : doubts->by_share()) {
    const auto& a = info->args[i];
    const double number = inputs[i];
    const reads kind = read_with(a);
    const accuracy* stated = other.statement_for(kind, number);
    if (!stated) continue;  // it cannot read this: the next argument
    detail::doubts now = *doubts;
    std::erase_if(now.terms, [&](const detail::doubt_term& t) { return t.argument == i; });
    each_source(stated, other.id, {}, kind, a.name, [&](std::string_view source, bool, bool of_reading, double size) {
      now.terms.push_back({now.names.emplace_back(source), i, false, of_reading ? size * number : size});
    });
    for (auto& t : now.terms) t.first = true;
    detail::sort_terms(now.terms);
    return static_cast<makegood::outcome>(static_cast<unsigned char>(now.with(now.count, 1.0).outcome));
  }
  return outcome;
}

/// How a check asks its rulebook: the limit's id, the argument that selects the row, the meaning of the numbers.
struct rule_use {
  std::string_view limit;
  std::string_view condition{};
  std::span<const column> columns{};
};
/// A two-sided limit.
template <class T>
struct band {
  T lower, upper;
};
template <class T>
band(T, T) -> band<T>;

template <class Value, class Limit, class Extras, template <class> class Struct, bool... IsChoice>
struct check_t {
  static constexpr std::size_t count = sizeof...(IsChoice);
  static constexpr std::array<bool, count> is_choice{IsChoice...};
  static constexpr bool has_aggregate = is_aggregate<Struct>;
  static constexpr bool is_check = true;
  template <class T>
  using arguments = Struct<T>;

  out result;
  std::array<argument, count> args;
  rule_use rule;
  comparator compare;
  source from;
  std::string_view caution;
  Value value;
  Limit limit;
  Extras extras;

  /// The check without its types. Every check has a type of its own, so that one description serves all copies.
  const check_info& info() const {
    static const check_t self = *this;
    static const check_info i = self.described();
    return i;
  }
  verdict judge(std::span<const given> arguments_, const rulebook& book, const decision_rule& rule_ = {}) const {
    return detail::judge(info(), arguments_, book, rule_);
  }
  /// Positional: the required arguments, the rulebook, then arguments with a default; a decision_rule anywhere.
  template <class... X>
    requires(!has_aggregate)
  verdict operator()(const X&... x) const {
    return split(std::tuple<const X&...>(x...), std::index_sequence_for<X...>{});
  }
  /// More than three arguments: the aggregate with designated initialisers, then the rulebook.
  verdict operator()(const Struct<given>& s, const rulebook& book = {}, const decision_rule& rule_ = {}) const
    requires(has_aggregate)
  {
    return detail::with_members<count>(s, [&](const auto&... x) {
      const given list[] = {x...};
      return judge(list, book, rule_);
    });
  }

 private:
  check_info described() const {
    check_info i;
    i.self = this;
    i.name = result.name;
    i.summary = result.summary;
    i.result = result;
    i.args = args;
    i.limit_id = rule.limit;
    for (std::size_t k = 0; k < count; ++k)
      if (!rule.condition.empty() && args[k].name == rule.condition) i.condition = static_cast<int>(k);
    i.columns = rule.columns;
    i.two_sided = compare == comparator::within;
    i.default_compare = compare;
    i.caution = caution;
    i.from = from;
    i.may_doubt = may_doubt(std::make_index_sequence<count>{});
    i.evaluate = [](const void* self, const double* x, const choice_table& r, check_info::evaluated& e) {
      static_cast<const check_t*>(self)->evaluate(x, r, e, std::make_index_sequence<count>{});
    };
    i.work = [](const void* self, const double* x, const choice_table& r, bool value_only) {
      return static_cast<const check_t*>(self)->working_of(x, r, value_only);
    };
    return i;
  }
  template <class Tuple, std::size_t... I>
  verdict split(const Tuple& t, std::index_sequence<I...>) const {
    rulebook book;
    decision_rule rule_;
    std::vector<given> list;
    const auto take = [&](const auto& x) {
      using X = std::remove_cvref_t<decltype(x)>;
      if constexpr (std::is_same_v<X, rulebook>) book = x;
      else if constexpr (std::is_same_v<X, rule_table>) book = rulebook(x);
      else if constexpr (std::is_same_v<X, decision_rule>) rule_ = x;
      else list.emplace_back(x);
    };
    (take(std::get<I>(t)), ...);
    return judge(list, book, rule_);
  }
  template <class K, std::size_t I>
  auto bind(const K* x, const double* plain) const {
    if constexpr (is_choice[I]) return chosen<K>{args[I].table, static_cast<int>(plain[I])};
    else return x[I];
  }
  template <class K, std::size_t... I>
  K value_of(const K* x, const double* plain, std::index_sequence<I...>) const {
    return static_cast<K>(value(bind<K, I>(x, plain)...));
  }
  template <class K, std::size_t... I>
  band<K> limits_of(const K* x, const double* plain, const choice_table& r, std::index_sequence<I...>) const {
    const auto y = limit(chosen<K>{&r, 0}, bind<K, I>(x, plain)...);
    if constexpr (requires { y.lower; }) return {static_cast<K>(y.lower), static_cast<K>(y.upper)};
    else return {static_cast<K>(y), static_cast<K>(y)};
  }
  /// Whether anything that value and limit are calculated with has a range of validity.
  template <std::size_t... I>
  bool may_doubt(std::index_sequence<I...> all) const {
    const std::array<probe, count> in{};
    const std::array<double, count> plain{};
    const choice_row row{"", "", {}, {}};
    const choice_table table{rule.columns, std::span<const choice_row>(&row, 1)};
    const band<probe> l = limits_of(in.data(), plain.data(), table, all);
    return value_of(in.data(), plain.data(), all).doubt || l.lower.doubt || l.upper.doubt || detail::has_validity(args, Extras::restricts);
  }
  template <std::size_t... I>
  void evaluate(const double* x, const choice_table& r, check_info::evaluated& e, std::index_sequence<I...> all) const {
    constexpr int n = static_cast<int>(count);
    if (const int broken = extras.broken(bind<double, I>(x, x)...); broken >= 0) {
      e.refused = extras.text(broken);
      return;
    }
    std::array<dual<n>, count> in;
    for (int i = 0; i < n; ++i) {
      const auto k = static_cast<std::size_t>(i);
      in[k] = is_choice[k] ? dual<n>(x[i]) : dual<n>::input(x[i], i);
    }
    const dual<n> v = value_of(in.data(), x, all);
    const band<dual<n>> l = limits_of(in.data(), x, r, all);
    e.value = v.value;
    e.lower = l.lower.value;
    e.upper = l.upper.value;
    std::copy(v.partial, v.partial + n, e.d_value.begin());
    std::copy(l.lower.partial, l.lower.partial + n, e.d_lower.begin());
    std::copy(l.upper.partial, l.upper.partial + n, e.d_upper.begin());
    if (!info().may_doubt && is_finite(e.value)) return;
    std::array<traced, count> slow{traced(x[I])...};
    const traced tv = value_of(slow.data(), x, all);
    const band<traced> tl = limits_of(slow.data(), x, r, all);
    for (const traced* t : {&tv, &tl.lower, &tl.upper}) {
      if (!e.fault.set()) e.fault = t->fault;
      if (!e.doubt.set()) e.doubt = t->doubt;
    }
    for (std::size_t i = 0; i < count && !e.doubt.set(); ++i)
      if (!args[i].table && !args[i].valid.contains(x[i]))
        e.doubt = {result.name, args[i].name, "outside the range in which the check is known to hold", x[i], args[i].unit.symbol};
    if (auto text = extras.doubt(bind<double, I>(x, x)...); !text.empty() && !e.doubt.set()) e.doubt = {result.name, {}, text, 0.0, {}};
  }
  working working_of(const double* x, const choice_table& r, bool value_only) const {
    constexpr auto all = std::make_index_sequence<count>{};
    return detail::write_out(*this, x, [&](const symbol* in) {
      std::vector<detail::named_result> results;
      if (value_only) {
        results.emplace_back(result.symbol, value_of(in, x, all));
        return results;
      }
      const auto l = limits_of(in, x, r, all);
      if (compare == comparator::within) results.emplace_back("lower limit", l.lower);
      results.emplace_back(compare == comparator::within ? "upper limit" : "limit", l.upper);
      return results;
    });
  }
};

/// Makes a check: what is judged, its arguments, the rule it asks for, the kernels of value and limit, a caution.
template <template <class> class Struct, bool... C, class Value, class Limit, class... E>
constexpr auto check(out result, const inputs<Struct, C...>& arguments, rule_use rule, comparator compare, source from, Value value,
                     Limit limit, std::string_view caution, const E&... e) {
  using Extras = detail::extras<E...>;
  return check_t<Value, Limit, Extras, Struct, C...>{result, arguments.list, rule, compare, from, caution, value, limit, {e...}};
}

}  // namespace v1
}  // namespace makegood

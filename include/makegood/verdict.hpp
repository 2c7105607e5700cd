// SPDX-License-Identifier: MIT
// Checks and their verdicts: a value held against a limit of a rulebook, with doubt, source and working.
// Core: every check of every subject. Includes the standard library only.
#pragma once
#include <span>
#include <string>
#include <tuple>
#include <variant>
#include <vector>
#include "reading.hpp"
#include "rulebook.hpp"
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

/// The probability of conformity that proves a value, or its opposite. One place for the whole library.
inline constexpr double proved_at = 0.95;

struct verdict;
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
  comparator default_compare = comparator::at_most;
  std::string_view caution;
  source from;
  struct evaluated {
    double value = no_number, lower = no_number, upper = no_number;
    std::vector<double> d_value, d_lower, d_upper;
    remark fault{}, doubt{};
    int refused_argument = -1;
    std::string refused{};
  };
  evaluated (*evaluate)(const void* self, const double* x, const choice_table& rule) = nullptr;
  working (*work)(const void* self, const double* x, const choice_table& rule, bool value_only) = nullptr;

  std::size_t required() const {
    std::size_t n = 0;
    while (n < args.size() && !args[n].optional) ++n;
    return n;
  }
};

/// The outcome of a check, with everything that a reader needs to defend it.
struct verdict {
  makegood::outcome outcome = makegood::outcome::undecided;
  makegood::reason reason = makegood::reason::none;
  std::string detail{};                  ///< what is missing, or what lies outside validity
  std::string doubt{};                   ///< outside validity: why, without the names of formula and argument
  double value = no_number;
  double lower = no_number, upper = no_number;  ///< limits; NaN: no limit on that side
  comparator compare = comparator::at_most;
  double margin = no_number;             ///< distance to the nearest limit, safe side positive, in the unit of the value
  double standard_uncertainty = 0.0;     ///< of the margin
  double expanded_uncertainty = 0.0;     ///< k = 2
  double probability = no_number;        ///< of conformity
  makegood::outcome plain = makegood::outcome::undecided;  ///< the reading against the limit, nothing else
  bool assumed = false;                  ///< the worst case of an instrument's class was taken
  std::string censored{};                ///< "above" or "below" when the reading was out of range
  std::string settle{};                  ///< what reading would settle it
  std::string unit{};
  std::string source_title{}, source_clause{}, source_grade{}, rule_text{}, rulebook{};
  std::vector<std::string> overrides{};
  std::string caution{};
  std::string check{};
  check_info info{};
  std::vector<double> inputs{};
  std::array<double, 4> rule_numbers{};

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

  /// The worked steps, written when asked for.
  std::vector<working> worked() const {
    std::vector<working> all;
    if (inputs.empty() || is_nan(value) || !info.work) return all;
    const choice_row row{"", "", rule_numbers, {}};
    const choice_table table{info.columns, {&row, 1}};
    all.push_back(info.work(info.self, inputs.data(), table, true));
    all.push_back(info.work(info.self, inputs.data(), table, false));
    return all;
  }
};

namespace detail {

inline outcome plainly(double value, double lower, double upper, comparator c) {
  const bool low_ok = is_nan(lower) || (c == comparator::above ? value > lower : value >= lower);
  const bool high_ok = is_nan(upper) || (c == comparator::below ? value < upper : value <= upper);
  if (is_nan(value)) return outcome::undecided;
  return low_ok && high_ok ? outcome::pass : outcome::fail;
}

/// Everything between arguments and verdict, for every check.
inline verdict judge(const check_info& info, std::span<const given> arguments, const rulebook& book) {
  verdict v;
  v.check = info.name;
  v.info = info;
  v.unit = info.result.unit.symbol;
  v.caution = info.caution;
  v.rulebook = book.id();
  v.compare = info.default_compare;
  v.source_title = info.from.title;
  v.source_clause = info.from.clause;
  v.source_grade = info.from.grade;

  const std::size_t n = info.args.size();
  if (arguments.size() < info.required() || arguments.size() > n)
    throw range_error(std::string(info.name) + ": takes " + std::to_string(info.required()) + " to " + std::to_string(n) + " arguments");
  v.inputs.assign(n, no_number);
  std::vector<measured> in(n);
  int out_of_range_reading = -1;
  for (std::size_t i = 0; i < n; ++i) {
    const auto& a = info.args[i];
    if (i >= arguments.size()) {
      v.inputs[i] = a.fallback;
      in[i] = a.fallback;
      continue;
    }
    const auto& g = arguments[i].is;
    if (a.table) {
      const auto* word = std::get_if<std::string>(&g);
      if (!word) throw range_error(std::string(info.name) + ": " + std::string(a.name) + " must be one of " + keys_text(*a.table));
      const int row = a.table->find(*word);
      if (row < 0) throw_unknown_key(info.name, a, *word);
      v.inputs[i] = row;
      in[i] = row;
      continue;
    }
    if (std::holds_alternative<std::string>(g))
      throw range_error(std::string(info.name) + ": " + std::string(a.name) + " must be a number in " + std::string(a.unit.symbol));
    if (const auto* m = std::get_if<measured>(&g)) {
      in[i] = *m;
    } else {
      const reading r = std::holds_alternative<reading>(g) ? std::get<reading>(g) : reading(std::get<double>(g));
      if (r.is == reading::state::not_measured || r.is == reading::state::pending) {
        v.outcome = outcome::undecided;
        v.reason = reason::not_measured;
        v.detail = std::string(a.text) + (r.is == reading::state::pending ? " (pending)" : "");
        v.settle = "measure: " + std::string(a.text);
        v.inputs.clear();
        return v;
      }
      if (r.is == reading::state::no_trip) {
        in[i] = measured(a.permitted.high);
        v.censored = "no trip";
        out_of_range_reading = static_cast<int>(i);
      } else {
        in[i] = to_measured(r, a.instrument, a.name);
        if (r.is != reading::state::value) {
          v.censored = r.is == reading::state::above ? "above" : "below";
          out_of_range_reading = static_cast<int>(i);
        }
      }
    }
    v.inputs[i] = in[i].value;
    if (!a.permitted.contains(in[i].value))
      throw range_error(std::string(info.name) + ": " + std::string(a.name) + ": " + out_of_range_text(a, in[i].value));
    for (const auto& part : in[i].parts)
      if (!is_finite(part.u))
        throw range_error(std::string(info.name) + ": " + std::string(a.name) + ": its uncertainty (" + part.source + ") is not a number");
    v.assumed = v.assumed || in[i].assumed;
  }

  // the rule
  choice_row row{"", "", {}, {}};
  if (!info.limit_id.empty()) {
    std::string_view condition;
    if (info.condition >= 0) {
      const auto k = static_cast<std::size_t>(info.condition);
      condition = info.args[k].table->rows[static_cast<std::size_t>(v.inputs[k])].key;
    }
    const auto answer = book.find(info.limit_id, condition);
    if (!answer.found) {
      v.reason = reason::no_rule_in_book;
      v.detail = "no \"" + std::string(info.limit_id) + "\"" + (condition.empty() ? "" : " for \"" + std::string(condition) + "\"") + " in " +
                 (book.id().empty() ? std::string("an empty rulebook") : book.id());
      v.settle = "the maker's figure, or a rulebook that holds this limit";
      v.source_title = v.source_clause = v.source_grade = {};
      v.inputs.clear();
      return v;
    }
    if (!answer.overridden.empty()) v.overrides.push_back(answer.overridden);
    if (answer.row.needs_makers_figure) {
      v.reason = reason::needs_makers_figure;
      v.detail = answer.row.text;
      v.settle = "the maker's figure for this device";
      v.inputs.clear();
      return v;
    }
    row.values = answer.row.numbers;
    v.rule_numbers = row.values;
    v.compare = answer.row.compare;
    v.source_title = answer.row.from.title;
    v.source_clause = answer.row.from.clause;
    v.source_grade = answer.row.from.grade;
    v.rule_text = answer.row.text;
    if (!answer.overridden.empty()) {
      v.source_title = "override: " + answer.overridden;
      v.source_clause.clear();
      v.source_grade = "override";
      v.rule_text.clear();
    }
  }
  const choice_table table{info.columns, {&row, 1}};
  const auto e = info.evaluate(info.self, v.inputs.data(), table);
  if (!e.refused.empty()) throw relation_error(e.refused);
  if (!is_finite(e.value)) {
    std::string text = std::string(info.name) + ": no finite value";
    if (e.fault.set()) text += ": inside " + std::string(e.fault.formula) + ": " + std::string(e.fault.argument) + ": " + std::string(e.fault.text);
    throw range_error(text);
  }
  v.value = e.value;
  const bool has_lower = info.two_sided || v.compare == comparator::at_least || v.compare == comparator::above;
  const bool has_upper = info.two_sided || v.compare == comparator::at_most || v.compare == comparator::below;
  if (has_lower) v.lower = e.lower;
  if (has_upper) v.upper = e.upper;
  if ((has_lower && !is_finite(v.lower)) || (has_upper && !is_finite(v.upper)))
    throw range_error(std::string(info.name) + ": the limit has no finite value for these arguments");
  v.plain = plainly(v.value, v.lower, v.upper, v.compare);

  // margins and their doubt: value and limit may share error sources, so the difference is propagated, not the parts
  const auto doubt_of = [&](const std::vector<double>& d_limit, double sign) {
    std::vector<double> c(n);
    for (std::size_t i = 0; i < n; ++i) c[i] = sign * (d_limit[i] - e.d_value[i]);
    return std::pair(combine(0.0, c.data(), in.data(), n).standard_uncertainty(), c);
  };
  const auto conforms = [&](double margin, double u) {  // P(margin really on the safe side)
    if (!is_finite(u)) throw range_error(std::string(info.name) + ": the uncertainty of the margin has no finite value for these arguments");
    if (u > 0.0) return normal_cdf(margin / u);
    const bool strict = v.compare == comparator::below || v.compare == comparator::above;
    return (strict ? margin > 0.0 : margin >= 0.0) ? 1.0 : 0.0;
  };
  double p = 1.0;
  double direction = 0.0;
  if (has_upper) {
    const double margin = v.upper - v.value;
    const auto [u, c] = doubt_of(e.d_upper, +1.0);
    p -= 1.0 - conforms(margin, u);
    v.margin = margin;
    v.standard_uncertainty = u;
    if (out_of_range_reading >= 0) direction = c[static_cast<std::size_t>(out_of_range_reading)];
  }
  if (has_lower) {
    const double margin = v.value - v.lower;
    const auto [u, c] = doubt_of(e.d_lower, -1.0);
    p -= 1.0 - conforms(margin, u);
    if (is_nan(v.margin) || margin < v.margin) {
      v.margin = margin;
      v.standard_uncertainty = u;
    }
    if (out_of_range_reading >= 0 && !has_upper) direction = c[static_cast<std::size_t>(out_of_range_reading)];
  }
  p = p < 0.0 ? 0.0 : p;
  v.expanded_uncertainty = 2.0 * v.standard_uncertainty;
  v.probability = p;

  if (e.doubt.set()) {
    v.reason = reason::outside_validity;
    v.outcome = outcome::undecided;
    v.detail = std::string(e.doubt.formula) + ": " + (e.doubt.argument.empty() ? "" : std::string(e.doubt.argument) + " = " + quantity_text(e.doubt.at, e.doubt.unit, 6) + ": ") +
               std::string(e.doubt.text);
    v.doubt = e.doubt.text;
    v.settle = "a measurement of the result itself, or a method that holds there";
    return v;
  }
  if (out_of_range_reading >= 0) {
    // The true value lies beyond the number read: it is proved only where "beyond" moves the margin one way.
    const bool beyond_is_larger = v.censored != "below";
    const bool margin_grows = (direction > 0.0) == beyond_is_larger && direction != 0.0;
    const bool margin_shrinks = (direction > 0.0) != beyond_is_larger && direction != 0.0;
    v.probability = no_number;
    if (info.two_sided) {
      // beyond the far limit proves a breach; otherwise nothing is proved
      const bool breach = beyond_is_larger ? v.value > v.upper : v.value < v.lower;
      v.outcome = breach ? outcome::fail : outcome::undecided;
    } else if (margin_grows && p >= proved_at) {
      v.outcome = outcome::pass;
    } else if (margin_shrinks && p <= 1.0 - proved_at) {
      v.outcome = outcome::fail;
    }
    if (v.outcome == outcome::undecided) v.plain = outcome::undecided;
    else v.plain = v.outcome;
    if (v.outcome == outcome::undecided) {
      v.reason = reason::straddles_limit;
      v.detail = "the reading is out of the instrument's range on the side where it proves nothing";
      v.settle = "a reading on a range that reaches " + quantity_text(v.limit(), v.unit, 4);
    }
    return v;
  }
  if (p >= proved_at) {
    v.outcome = outcome::pass;
  } else if (p <= 1.0 - proved_at) {
    v.outcome = outcome::fail;
  } else {
    v.outcome = outcome::undecided;
    v.reason = reason::straddles_limit;
    v.detail = v.plain == outcome::fail ? "does not meet the limit as read; not proved either way" : "meets the limit as read; not proved either way";
    const double size = std::fabs(v.margin);
    v.settle = size > 0.0 ? "a reading with a standard uncertainty of " + quantity_text(size / 1.6448536269514722, v.unit, 2) +
                                " or better (now " + quantity_text(v.standard_uncertainty, v.unit, 2) + "), if it shows the same value"
                          : "no reading can: the value lies on the limit itself; move the value";
  }
  return v;
}

}  // namespace detail

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

  check_info info() const {
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
    i.evaluate = [](const void* self, const double* x, const choice_table& r) {
      return static_cast<const check_t*>(self)->evaluate(x, r, std::make_index_sequence<count>{});
    };
    i.work = [](const void* self, const double* x, const choice_table& r, bool value_only) {
      return static_cast<const check_t*>(self)->working_of(x, r, value_only);
    };
    return i;
  }

  verdict judge(std::span<const given> arguments_, const rulebook& book) const { return detail::judge(info(), arguments_, book); }
  /// Positional: the required arguments, the rulebook, then arguments with a default.
  template <class... X>
    requires(!has_aggregate)
  verdict operator()(const X&... x) const {
    return split(std::tuple<const X&...>(x...), std::index_sequence_for<X...>{});
  }
  /// More than three arguments: the aggregate with designated initialisers, then the rulebook.
  verdict operator()(const Struct<given>& s, const rulebook& book = {}) const
    requires(has_aggregate)
  {
    return detail::with_members<count>(s, [&](const auto&... x) {
      const given list[] = {x...};
      return judge(list, book);
    });
  }

 private:
  template <class Tuple, std::size_t... I>
  verdict split(const Tuple& t, std::index_sequence<I...>) const {
    rulebook book;
    std::vector<given> list;
    const auto take = [&](const auto& x) {
      using X = std::remove_cvref_t<decltype(x)>;
      if constexpr (std::is_same_v<X, rulebook>) book = x;
      else if constexpr (std::is_same_v<X, rule_table>) book = rulebook(x);
      else list.emplace_back(x);
    };
    (take(std::get<I>(t)), ...);
    return judge(list, book);
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
  template <std::size_t... I>
  check_info::evaluated evaluate(const double* x, const choice_table& r, std::index_sequence<I...> all) const {
    constexpr int n = static_cast<int>(count);
    std::array<dual<n>, count> in;
    std::array<traced, count> slow;
    for (int i = 0; i < n; ++i) {
      const auto k = static_cast<std::size_t>(i);
      in[k] = is_choice[k] ? dual<n>(x[i]) : dual<n>::input(x[i], i);
      slow[k] = traced(x[i]);
    }
    check_info::evaluated e;
    const int broken = extras.broken(bind<double, I>(x, x)...);
    if (broken >= 0) {
      e.refused = std::string(result.name) + ": " + std::string(extras.text(broken));
      return e;
    }
    const dual<n> v = value_of(in.data(), x, all);
    const band<dual<n>> l = limits_of(in.data(), x, r, all);
    e.value = v.value;
    e.lower = l.lower.value;
    e.upper = l.upper.value;
    e.d_value.assign(v.partial, v.partial + n);
    e.d_lower.assign(l.lower.partial, l.lower.partial + n);
    e.d_upper.assign(l.upper.partial, l.upper.partial + n);
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
    return e;
  }
  working working_of(const double* x, const choice_table& r, bool value_only) const {
    if (value_only)
      return detail::write_out(*this, x, [&](const symbol* in) { return value_of(in, x, std::make_index_sequence<count>{}); });
    working w;
    const auto write = [&](bool lower, std::string_view sign) {
      working part = detail::write_out(*this, x, [&](const symbol* in) {
        const auto l = limits_of(in, x, r, std::make_index_sequence<count>{});
        return lower ? l.lower : l.upper;
      });
      if (!part.steps.empty()) part.steps.back().symbol = sign;
      w.steps.insert(w.steps.end(), part.steps.begin(), part.steps.end());
      w.value = part.value;
      w.unit = part.unit;
      if (w.dimension_error.empty()) w.dimension_error = part.dimension_error;
    };
    if (compare == comparator::within) {
      write(true, "lower limit");
      write(false, "upper limit");
    } else {
      write(false, "limit");
    }
    return w;
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

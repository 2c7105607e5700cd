// SPDX-License-Identifier: MIT
// The worked steps of a formula: symbols, numbers put in, units, result, from the same kernel that computes; as text and as LaTeX.
// Core: evaluated on demand, never on the fast path. Includes the standard library only.
#pragma once
#include <array>
#include <cmath>
#include <memory>
#include <span>
#include <string>
#include <utility>
#include <vector>
#include "../formula.hpp"
#include "../text.hpp"
#include "notation.hpp"

namespace makegood {
inline namespace v1 {

/// One line of the working, as text and as LaTeX.
///
/// Digits: the result of a formula is printed with six significant digits; numbers put in and named parts get as many more as a reader
/// needs who works the printed line out and wants the printed result. What is zero but for the rounding of its operands is printed as 0.
/// All this is in the printing only: `value` is the number itself.
struct step {
  std::string symbol{}, symbol_latex{};            ///< "ΔU"
  std::string equation{}, equation_latex{};        ///< "d · I · L / 1000"
  std::string substituted{}, substituted_latex{};  ///< "44 mV/(A·m) · 16 A · 22 m / 1000"
  std::string result{}, result_latex{};            ///< "15.488 V": the value as printed
  double value = 0.0;
  std::string unit{};
  std::string condition{}, condition_latex{};      ///< which branch was taken and why, and what a word stands for
  std::string where_from{}, where_from_latex{};    ///< source of an inner formula
};
/// The working of one evaluation.
struct working {
  std::vector<step> steps;
  double value = 0.0;
  std::string unit;
  std::string dimension_error;  ///< empty where the units of the equation agree; a test holds every formula to that
};
/// An equation without numbers: the result first, then its named parts and inner formulas, then units.
struct equation_text {
  std::string text, latex;
};

namespace detail {

struct node;
using handle = std::shared_ptr<const node>;

/// A comparison and what came of it.
struct comparison {
  handle a{}, b{};
  notation::relation yes = notation::relation::below;
  bool holds = true;
};

struct node {
  /// same: another unit or none, and the number left as it is.
  enum class op : unsigned char {
    number, literal, argument, named, root, unknown, sum, difference, negative, product, quotient, power, function, same, branch
  };
  /// How the unit of a number that is put in is shown.
  enum class shown : unsigned char { own, none, kelvin };
  op kind = op::number;
  double value = 0.0;
  unit_t of{};
  std::string text{};         // symbol or name of a function
  std::string label{};        // the word that chose a literal
  std::string where_from{};
  std::vector<handle> kids{}; // of a branch: yes, no; of a root: the residual, the unknown
  std::string error{};
  double noise = -1.0;        // what rounding alone makes of the value; below 0: not said yet
  double exponent = 0.0;
  double (*apply)(double) = nullptr;
  bool of_one_more = false;   // ln(1 + x) computed from x
  shown unit_shown = shown::own;
  std::vector<comparison> conditions{};

  bool holds() const {
    for (const auto& c : conditions)
      if (!c.holds) return false;
    return true;
  }
  const node& taken() const { return *kids[holds() ? 0 : 1]; }
  /// A number with a symbol, put in where numbers are.
  bool leaf() const {
    return kind == op::argument || kind == op::named || kind == op::root || kind == op::unknown || (kind == op::literal && !text.empty());
  }
};

inline bool same_dimension(const unit_t& a, const unit_t& b) {
  return unit_t{{}, a.twice, a.scale, false, {}}.same_as({{}, b.twice, b.scale, false, {}});
}
inline unit_t multiplied(const unit_t& a, const unit_t& b, int sign) {
  unit_t r;
  for (std::size_t i = 0; i < r.twice.size(); ++i) r.twice[i] = static_cast<signed char>(a.twice[i] + sign * b.twice[i]);
  r.scale = sign > 0 ? a.scale * b.scale : a.scale / b.scale;
  return r;
}

/// The value of a node from the values of its parts. `leaf(node)` gives the number of a leaf.
template <class Leaf>
double recalculated(const node& n, const Leaf& leaf) {
  using op = node::op;
  const auto kid = [&](std::size_t i) { return recalculated(*n.kids[i], leaf); };
  if (n.leaf()) return leaf(n);
  switch (n.kind) {
    case op::sum: return kid(0) + kid(1);
    case op::difference: return kid(0) - kid(1);
    case op::negative: return -kid(0);
    case op::product: return kid(0) * kid(1);
    case op::quotient: return kid(0) / kid(1);
    case op::power: return v1::pow(kid(0), n.exponent);
    case op::function: return n.apply(n.of_one_more ? recalculated(*n.kids[0]->kids[1], leaf) : kid(0));
    case op::same: return kid(0);
    case op::branch: return recalculated(n.taken(), leaf);
    default: return n.value;
  }
}
/// How far rounding alone may have moved the value, from the same for its parts: a size, no bound.
inline double noise_of(const node& n) {
  using op = node::op;
  const double last_place = 0x1p-53 * v1::fabs(n.value);
  const auto part = [&](std::size_t i) { return n.kids[i]->noise; };
  const auto value = [&](std::size_t i) { return n.kids[i]->value; };
  switch (n.kind) {
    case op::sum:
    case op::difference: return part(0) + part(1);
    case op::negative:
    case op::same: return part(0);
    case op::product: return v1::fabs(value(0)) * part(1) + v1::fabs(value(1)) * part(0) + last_place;
    case op::quotient: return (part(0) + v1::fabs(n.value) * part(1)) / v1::fabs(value(1)) + last_place;
    case op::power:
    case op::function: {
      const node& x = n.of_one_more ? *n.kids[0]->kids[1] : *n.kids[0];
      const auto at = [&](double z) { return n.kind == op::power ? v1::pow(z, n.exponent) : n.apply(z); };
      const double up = at(x.value + x.noise), down = at(x.value - x.noise);
      const double moved = is_finite(up) ? v1::fabs(up - n.value) : is_finite(down) ? v1::fabs(down - n.value) : 0.0;
      return moved + last_place;
    }
    case op::branch: return n.taken().noise;
    case op::named: return n.kids.empty() ? last_place : part(0);
    default: return last_place;
  }
}
/// Zero but for rounding: a difference of less than some four units in the last place of what it was taken from.
inline bool is_noise(const node& n) { return n.value == 0.0 || v1::fabs(n.value) <= 4.0 * n.noise; }

/// So many digits, but none that rounding made.
inline int digits_above_noise(const node& n, int digits) {
  double left = v1::fabs(n.value) / n.noise;
  int sure = 1;
  while (left >= 100.0 && sure < digits) {
    left /= 10.0;
    ++sure;
  }
  return sure;
}

inline handle make(node n) {
  for (const auto& kid : n.kids)
    if (n.error.empty()) n.error = kid->error;
  if (n.noise < 0.0) n.noise = noise_of(n);
  return std::make_shared<const node>(std::move(n));
}
/// The same expression: the same signs over the same numbers.
inline bool same_tree(const node& a, const node& b) {
  if (&a == &b) return true;
  const auto alike = [](double x, double y) { return x == y || (is_nan(x) && is_nan(y)); };
  if (a.kind != b.kind || !alike(a.value, b.value) || a.text != b.text || a.where_from != b.where_from || a.exponent != b.exponent ||
      a.of.symbol != b.of.symbol || a.kids.size() != b.kids.size() || a.conditions.size() != b.conditions.size())
    return false;
  if (a.kind == node::op::argument) return false;  // two arguments are two things, whatever their numbers
  for (std::size_t i = 0; i < a.kids.size(); ++i)
    if (!same_tree(*a.kids[i], *b.kids[i])) return false;
  for (std::size_t i = 0; i < a.conditions.size(); ++i)
    if (a.conditions[i].yes != b.conditions[i].yes || !same_tree(*a.conditions[i].a, *b.conditions[i].a) ||
        !same_tree(*a.conditions[i].b, *b.conditions[i].b))
      return false;
  return true;
}

// ---- from a tree to a line -------------------------------------------------------------------------------------------

/// What stands for a leaf in the lines: a symbol that no other leaf has, and the digits of its number.
struct leaf_shown {
  const node* is;
  std::string name;
  int digits;
};
class leaves {
 public:
  static constexpr int result_digits = 6, all_digits = 15;

  void reserve(std::string_view symbol) { taken_.emplace_back(symbol); }
  /// The entry of a leaf; the second of two that are the same in everything is the first.
  leaf_shown& of(const node& n) {
    for (const auto& [known, i] : index_)
      if (known == &n) return all_[i];
    std::size_t i = 0;
    while (i < all_.size() && !same_tree(*all_[i].is, n)) ++i;
    if (i == all_.size()) all_.push_back({&n, free_name(n), result_digits});
    index_.emplace_back(&n, i);
    return all_[i];
  }
  /// The unknown of a root is written as the root.
  void alias(const node& unknown, const node& root) {
    const leaf_shown& r = of(root);
    index_.emplace_back(&unknown, static_cast<std::size_t>(&r - all_.data()));
  }
  int digits(const node& n) { return digits_above_noise(n, of(n).digits); }
  std::vector<leaf_shown>& all() { return all_; }
  double value(const node& n) { return is_noise(n) ? 0.0 : notation::rounded(n.value, digits(n)); }

 private:
  std::vector<leaf_shown> all_;
  std::vector<std::pair<const node*, std::size_t>> index_;
  std::vector<std::string> taken_;

  std::string free_name(const node& n) {
    std::string name = n.text;
    const auto is_taken = [&] {
      for (const auto& t : taken_)
        if (t == name) return true;
      return false;
    };
    if (n.kind != node::op::argument)  // the arguments of the formula were reserved for themselves
      while (is_taken()) name += "′";
    taken_.push_back(name);
    return name;
  }
};

/// Writes an expression in a dialect: with symbols or with numbers, with all branches or with the one taken.
class expression_writer {
 public:
  expression_writer(const notation::dialect& d, leaves* l, bool numbers, bool all_branches, int digits = 0)
      : d_(d), leaves_(l), numbers_(numbers), all_(all_branches), digits_(digits) {}
  std::string operator()(const node& n) const { return walk(n, node::shown::own, false).text; }
  std::string operator()(const comparison& c, bool as_it_is) const {
    using notation::relation;
    static constexpr relation opposite[] = {relation::at_least, relation::above, relation::at_most, relation::below};
    const relation r = as_it_is && !c.holds ? opposite[static_cast<int>(c.yes)] : c.yes;
    return (*this)(*c.a) + std::string(d_.sign(r)) + (*this)(*c.b);
  }
  /// All the conditions, or those that decided.
  std::string conditions(const node& branch, bool as_it_is) const {
    std::string text;
    for (const auto& c : branch.conditions) {
      if (as_it_is && !branch.holds()) {
        if (!c.holds) return (*this)(c, true);
        continue;
      }
      if (!text.empty()) text += d_.words(" and ");
      text += (*this)(c, as_it_is);
    }
    return text;
  }

 private:
  const notation::dialect& d_;
  leaves* leaves_;
  bool numbers_, all_;
  int digits_;  // of a constant without a symbol; 0: all it has

  notation::piece walk(const node& n, node::shown unit, bool in_fraction) const {
    using op = node::op;
    const auto kid = [&](std::size_t i, bool deeper = false) { return walk(*n.kids[i], unit, in_fraction || deeper); };
    switch (n.kind) {
      case op::number:
        return n.text.empty() ? d_.number(n.value) : notation::piece{d_.name(n.text), notation::level_of_symbol(n.text)};
      case op::literal:
      case op::argument:
      case op::named:
      case op::root:
      case op::unknown: {
        if (n.leaf() && (!numbers_ || n.kind == op::unknown)) {
          const std::string name = leaves_ ? leaves_->of(n).name : n.text;
          return {d_.name(name), notation::level_of_symbol(name)};
        }
        std::string_view symbol = n.of.symbol;
        if (unit != node::shown::own) symbol = unit == node::shown::kelvin ? "K" : "";
        if (!n.leaf() || !leaves_) return d_.quantity(n.value, symbol, digits_);
        return d_.quantity(leaves_->value(n), symbol, leaves_->digits(n));
      }
      case op::sum: return d_.sum(kid(0), kid(1));
      case op::difference: return d_.difference(kid(0), kid(1));
      case op::negative: return d_.negative(kid(0));
      case op::product: return d_.product(kid(0), kid(1));
      case op::quotient: {
        const bool bar = d_.fraction_bar(in_fraction);
        return d_.quotient(kid(0, bar), kid(1, bar), bar);
      }
      case op::power: {
        const node* base = n.kids[0].get();
        double exponent = n.exponent;
        while (base->kind == op::power && whole(exponent) && whole(base->exponent)) {  // (x²)² is x⁴
          exponent *= base->exponent;
          base = base->kids[0].get();
        }
        return d_.raised_to(walk(*base, unit, in_fraction), exponent);
      }
      case op::function: return d_.function(n.text, kid(0).text);
      case op::same: return walk(*n.kids[0], n.unit_shown == node::shown::own ? unit : n.unit_shown, in_fraction);
      case op::branch: return all_ ? cases(n, unit, in_fraction) : walk(n.taken(), unit, in_fraction);
    }
    return {};
  }
  static bool whole(double x) { return x == static_cast<int>(x); }
  notation::piece cases(const node& branch, node::shown unit, bool in_fraction) const {
    if (branch.conditions.size() == 1) {  // select(a < b, a, b) is the smaller one
      const comparison& c = branch.conditions[0];
      const node &yes = *branch.kids[0], &no = *branch.kids[1];
      const bool straight = same_tree(*c.a, yes) && same_tree(*c.b, no), crossed = same_tree(*c.a, no) && same_tree(*c.b, yes);
      const bool less = c.yes == notation::relation::below || c.yes == notation::relation::at_most;
      if (straight || crossed)
        return d_.function(less == straight ? "min" : "max", walk(*c.a, unit, in_fraction).text + ", " + walk(*c.b, unit, in_fraction).text);
    }
    std::vector<std::pair<std::string, std::string>> all;
    const node* n = &branch;
    for (; n->kind == node::op::branch; n = n->kids[1].get()) all.emplace_back(walk(*n->kids[0], unit, in_fraction).text, conditions(*n, false));
    all.emplace_back(walk(*n, unit, in_fraction).text, std::string());
    return d_.cases(all, "if");
  }
};
/// An expression in the words of the kernel, for the sentences about units.
inline std::string plain_expression(const handle& n) { return expression_writer(notation::as_text, nullptr, false, true)(*n); }

}  // namespace detail

/// The truth of a comparison, with what was compared.
struct truth {
  std::vector<detail::comparison> all{};
  bool holds() const {
    for (const auto& c : all)
      if (!c.holds) return false;
    return true;
  }
  explicit operator bool() const { return holds(); }
  friend truth operator&&(const truth& a, const truth& b) {
    truth both = a;
    both.all.insert(both.all.end(), b.all.begin(), b.all.end());
    return both;
  }
};

/// A number that remembers how it came about.
class symbol {
 public:
  using op = detail::node::op;

  symbol() : symbol(0.0) {}
  symbol(double x) : n_(detail::make({op::number, x})) {}
  symbol(const literal& x)
      : n_(detail::make({op::literal, x.value, x.of, std::string(x.symbol), std::string(x.label)})) {}
  explicit symbol(detail::handle n) : n_(std::move(n)) {}
  static symbol input(double x, const argument& a) {
    return symbol(detail::make({op::argument, x, a.unit, std::string(a.symbol)}));
  }

  double value() const { return n_->value; }
  const detail::handle& tree() const { return n_; }

  friend symbol operator+(const symbol& a, const symbol& b) { return sum(a, b, +1); }
  friend symbol operator-(const symbol& a, const symbol& b) { return sum(a, b, -1); }
  friend symbol operator-(const symbol& a) { return symbol(detail::make({op::negative, -a.value(), a.n_->of, {}, {}, {}, {a.n_}})); }
  friend symbol operator*(const symbol& a, const symbol& b) { return product(a, b, +1); }
  friend symbol operator/(const symbol& a, const symbol& b) { return product(a, b, -1); }

  friend truth operator<(const symbol& a, const symbol& b) { return compare(a, b, a.value() < b.value(), notation::relation::below); }
  friend truth operator<=(const symbol& a, const symbol& b) { return compare(a, b, a.value() <= b.value(), notation::relation::at_most); }
  friend truth operator>(const symbol& a, const symbol& b) { return compare(a, b, a.value() > b.value(), notation::relation::above); }
  friend truth operator>=(const symbol& a, const symbol& b) { return compare(a, b, a.value() >= b.value(), notation::relation::at_least); }
  /// Both sides are kept: the working writes the one taken, the equation both.
  friend symbol select(const truth& condition, const symbol& yes, const symbol& no) {
    const symbol& taken = condition.holds() ? yes : no;
    detail::node n{op::branch, taken.value(), taken.n_->of, {}, {}, {}, {yes.n_, no.n_}};
    for (const auto& c : condition.all) {
      if (n.error.empty()) n.error = c.a->error.empty() ? c.b->error : c.a->error;
      if (n.error.empty() && (!detail::same_dimension(c.a->of, c.b->of) || c.a->of.celsius != c.b->of.celsius)) n.error = "a comparison of different units";
    }
    if (n.error.empty() && !yes.n_->of.same_as(no.n_->of)) n.error = "the two branches have different units";
    n.conditions = condition.all;
    return symbol(detail::make(std::move(n)));
  }

  friend symbol log(const symbol& x) { return function("ln", v1::log, x); }
  friend symbol log10(const symbol& x) { return function("lg", v1::log10, x); }
  friend symbol log1p(const symbol& x) {  // written ln(1 + x), computed without losing digits
    const symbol sum_ = symbol(1.0) + x;
    detail::node n{op::function, v1::log1p(x.value()), unit::one, "ln", {}, {}, {sum_.n_}};
    n.apply = v1::log1p;
    n.of_one_more = true;
    return symbol(detail::make(std::move(n)));
  }
  friend symbol exp(const symbol& x) { return function("exp", v1::exp, x); }
  friend symbol tanh(const symbol& x) { return function("tanh", v1::tanh, x); }
  friend symbol sin(const symbol& x) { return function("sin", v1::sin, x); }
  friend symbol cos(const symbol& x) { return function("cos", v1::cos, x); }
  friend symbol cbrt(const symbol& x) { return function("∛", v1::cbrt, x); }
  friend symbol sqrt(const symbol& x) {
    unit_t u = x.n_->of;
    std::string error;
    for (auto& e : u.twice) {
      if (e % 2) error = "square root of a unit with an odd exponent";
      e = static_cast<signed char>(e / 2);
    }
    u.scale = std::sqrt(u.scale);
    u.symbol = {};
    return symbol(applied("√", v1::sqrt, x, u, error));
  }
  friend symbol pow(const symbol& x, double y) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = "power of a quantity with a unit";
    return raised(x, y, v1::pow(x.value(), y), unit::one, error);
  }
  template <int N, int D = 1>
  friend symbol power(const symbol& x) {
    unit_t u = x.n_->of;
    std::string error = u.celsius ? "a temperature in °C multiplied" : "";
    for (auto& e : u.twice) {
      if (e * N % D) error = "a root of a unit that does not come out whole";
      e = static_cast<signed char>(e * N / D);
    }
    u.scale = std::pow(u.scale, static_cast<double>(N) / D);
    u.symbol = {};
    return raised(x, static_cast<double>(N) / D, v1::power<N, D>(x.value()), u, error);
  }
  friend symbol damped_pow(const symbol& x, double y) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = "power of a quantity with a unit";
    return raised(x, y, v1::damped_pow(x.value(), y), unit::one, error);
  }
  friend symbol square(const symbol& x) { return integer_power(x, 2); }
  friend symbol cube(const symbol& x) { return integer_power(x, 3); }
  friend symbol fabs(const symbol& x) { return symbol(applied("abs", v1::fabs, x, x.n_->of, {})); }

  friend symbol let(std::string_view name, const unit_t& u, const symbol& x) { return named(name, u, x, {}); }
  template <int Steps, class Start, class R>
  friend symbol root(std::string_view name, const unit_t& u, const Start& start, const R& residual, const symbol&) {
    double at = static_cast<symbol>(start).value();
    for (int i = 0; i < Steps; ++i) {
      const auto [g, slope] = residual(symbol(detail::make({op::unknown, at, u, std::string(name)})));
      at -= g.value() / slope.value();
    }
    const symbol unknown(detail::make({op::unknown, at, u, std::string(name)}));
    const auto [g, slope] = residual(unknown);
    detail::node n{op::root, at, u, std::string(name), {}, {}, {g.n_, unknown.n_}};
    n.noise = g.n_->noise / v1::fabs(slope.value());
    return symbol(detail::make(std::move(n)));
  }

  friend symbol milli(const symbol& x) { return scaled(x, -1, "", 1000.0); }
  friend symbol micro(const symbol& x) { return scaled(x, -1, "10⁶", 1e6); }
  friend symbol kilo(const symbol& x) { return scaled(x, +1, "", 1000.0); }
  friend symbol mega(const symbol& x) { return scaled(x, +1, "10⁶", 1e6); }
  friend symbol percent(const symbol& x) { return scaled(x, -1, "", 100.0); }
  friend symbol in_percent(const symbol& x) { return scaled(x, +1, "", 100.0); }
  friend symbol in_milli(const symbol& x) { return kilo(x); }
  friend symbol in_micro(const symbol& x) { return mega(x); }
  friend symbol hourly(const symbol& x) { return scaled(x, -1, "", 3600.0); }
  friend symbol in_hourly(const symbol& x) { return scaled(x, +1, "", 3600.0); }
  friend symbol kelvin(const symbol& t) { return temperature(t, true, unit::kelvin, op::sum); }
  friend symbol celsius(const symbol& t) { return temperature(t, false, unit::celsius, op::difference); }
  friend symbol from_zero(const symbol& t) { return temperature(t, true, unit::kelvin, op::same); }
  friend symbol at_celsius(const symbol& t) { return temperature(t, false, unit::celsius, op::same); }
  friend symbol magnitude(const symbol& x, const unit_t& u) {
    std::string error;
    if (!x.n_->of.same_as(u)) error = "taken as a number of " + std::string(u.symbol) + ", but it is in another unit";
    return same(x, unit::one, error, detail::node::shown::none);
  }
  friend symbol attach(const symbol& x, const unit_t& u) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = "a quantity that has a unit already is given another";
    return same(x, u, error, detail::node::shown::own);
  }

  /// A step of its own: the result of an inner formula, or a named part.
  static symbol named(std::string_view name, const unit_t& u, const symbol& x, std::string where_from) {
    std::string error;
    if (!x.n_->of.same_as(u)) error = std::string(name) + ": the expression is not in " + std::string(u.symbol.empty() ? "1" : u.symbol);
    return symbol(detail::make({op::named, x.value(), u, std::string(name), {}, std::move(where_from), {x.n_}, error}));
  }

 private:
  detail::handle n_;

  static symbol sum(const symbol& a, const symbol& b, int sign) {
    const auto& u = a.n_->of;
    const auto& w = b.n_->of;
    unit_t r = u;
    std::string error;
    if (!detail::same_dimension(u, w))
      error = "a sum of different units (" + detail::plain_expression(a.n_) + ", " + detail::plain_expression(b.n_) + ")";
    else if (u.celsius && w.celsius) {
      r = unit::kelvin;
      if (sign > 0) error = "two temperatures added";
    } else if (w.celsius) {
      r = unit::celsius;
      if (sign < 0) error = "a temperature taken from a difference";
    }
    return symbol(detail::make({sign > 0 ? op::sum : op::difference, sign > 0 ? a.value() + b.value() : a.value() - b.value(), r, {}, {}, {}, {a.n_, b.n_}, error}));
  }
  static symbol product(const symbol& a, const symbol& b, int sign) {
    std::string error;
    if (a.n_->of.celsius || b.n_->of.celsius) error = "a temperature in °C multiplied: make it a difference or kelvin first";
    return symbol(detail::make({sign > 0 ? op::product : op::quotient, sign > 0 ? a.value() * b.value() : a.value() / b.value(),
                                detail::multiplied(a.n_->of, b.n_->of, sign), {}, {}, {}, {a.n_, b.n_}, error}));
  }
  static symbol raised(const symbol& x, double exponent, double y, const unit_t& u, std::string error) {
    detail::node n{op::power, y, u, {}, {}, {}, {x.n_}, std::move(error)};
    n.exponent = exponent;
    return symbol(detail::make(std::move(n)));
  }
  static symbol integer_power(const symbol& x, int n) {
    unit_t u = x.n_->of;
    for (int i = 1; i < n; ++i) u = detail::multiplied(u, x.n_->of, +1);
    double v = x.value();
    for (int i = 1; i < n; ++i) v *= x.value();
    return raised(x, n, v, u, x.n_->of.celsius ? "a temperature in °C multiplied" : "");
  }
  static detail::handle applied(const char* name, double (*f)(double), const symbol& x, const unit_t& u, std::string error) {
    detail::node n{op::function, f(x.value()), u, name, {}, {}, {x.n_}, std::move(error)};
    n.apply = f;
    return detail::make(std::move(n));
  }
  static symbol function(const char* name, double (*f)(double), const symbol& x) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = std::string(name) + " of a quantity with a unit";
    return symbol(applied(name, f, x, unit::one, std::move(error)));
  }
  /// A change of unit that multiplies or divides the number.
  static symbol scaled(const symbol& x, int sign, const char* written, double by) {
    unit_t u = x.n_->of;
    u.scale *= sign > 0 ? 1.0 / by : by;
    u.symbol = {};
    const symbol factor(detail::make({op::number, by, unit::one, written}));
    return symbol(detail::make({sign > 0 ? op::product : op::quotient, sign > 0 ? x.value() * by : x.value() / by, u, {}, {}, {}, {x.n_, factor.n_}}));
  }
  /// A change of unit that leaves the number.
  static symbol same(const symbol& x, const unit_t& u, std::string error, detail::node::shown unit_shown) {
    detail::node n{op::same, x.value(), u, {}, {}, {}, {x.n_}, std::move(error)};
    n.unit_shown = unit_shown;
    return symbol(detail::make(std::move(n)));
  }
  static symbol temperature(const symbol& t, bool wants_celsius, const unit_t& u, op how) {
    std::string error;
    if (t.n_->of.celsius != wants_celsius || !detail::same_dimension(t.n_->of, unit::kelvin)) error = "a conversion of temperature on another unit";
    if (how == op::same) return same(t, u, error, wants_celsius ? detail::node::shown::kelvin : detail::node::shown::own);
    const symbol zero(273.15);
    return symbol(detail::make({how, how == op::sum ? t.value() + 273.15 : t.value() - 273.15, u, {}, {}, {}, {t.n_, zero.n_}, error}));
  }
  static truth compare(const symbol& a, const symbol& b, bool holds, notation::relation r) { return {{{a.n_, b.n_, r, holds}}}; }
};
inline double plain_value(const symbol& x) { return x.value(); }

/// A call inside a formula is a step of its own, with the inner formula's symbols and source.
template <>
struct inner_call<symbol> {
  template <class F, class... X>
  static symbol run(const F& f, const X&... x) {
    const symbol y = f.template with_all<symbol>(
        [&f](const auto&... z) {
          return [&]<std::size_t... I>(std::index_sequence<I...>) {
            return f.unchecked(adopt(f.args[I], z)...);
          }(std::make_index_sequence<F::count>{});
        },
        x...);
    return symbol::named(f.result.symbol, f.result.unit, y, std::string(f.from.title) + (f.from.clause.empty() ? "" : ", ") + std::string(f.from.clause));
  }

 private:
  static const chosen<symbol>& adopt(const argument&, const chosen<symbol>& c) { return c; }
  /// What has a symbol keeps it; an expression becomes a step under the inner formula's symbol.
  static symbol adopt(const argument& a, const symbol& x) {
    const auto& n = *x.tree();
    if (n.leaf()) return x;
    if (n.kind == symbol::op::number) return symbol::named(a.symbol, a.unit, symbol(literal{n.value, a.unit}), {});
    return symbol::named(a.symbol, a.unit, x, {});
  }
};

namespace detail {

/// Finds the lines of a working and writes them, each after the lines it needs: the order does not depend on the compiler.
class step_writer {
 public:
  step_writer(std::span<const argument> args, bool all_branches) : all_(all_branches) {
    for (const auto& a : args) leaves_.reserve(a.symbol);
  }
  /// A result to be written, under its symbol.
  void add(const handle& n, std::string_view symbol_, const unit_t& u) {
    leaves_.reserve(symbol_);
    name(*n);
    gather(*n);
    lines_.push_back({nullptr, n.get(), std::string(symbol_), u.symbol, {}, nullptr});
  }
  std::vector<step> steps() {
    if (!all_) refine();
    std::vector<step> list;
    for (const line& l : lines_) {
      step s = written(l);
      if (s.equation != s.symbol) list.push_back(std::move(s));
    }
    return list;
  }
  const std::vector<const node*>& constants() const { return constants_; }
  std::string name_of(const node& n) { return leaves_.of(n).name; }

 private:
  struct line {
    const node* target;  // the named part; none for a result
    const node* body;
    std::string symbol;
    std::string_view unit;
    std::string where_from;
    const node* unknown;  // of a root
  };
  bool all_;
  leaves leaves_;
  std::vector<line> lines_;
  std::vector<const node*> named_, gathered_, constants_;

  static bool seen(std::vector<const node*>& list, const node* n) {
    for (const node* k : list)
      if (k == n) return true;
    list.push_back(n);
    return false;
  }
  /// Goes through the nodes that a line is made of: the operands of its conditions first.
  template <class Fn>
  void parts(const node& n, const Fn& fn) const {
    if (n.kind != node::op::branch) {
      for (const auto& kid : n.kids) fn(*kid);
      return;
    }
    for (const auto& c : n.conditions) {
      fn(*c.a);
      fn(*c.b);
    }
    if (all_) {
      fn(*n.kids[0]);
      fn(*n.kids[1]);
    } else {
      fn(n.taken());
    }
  }
  /// Names are given from the outside inwards: the outermost of two equal symbols stays as it is, the inner one gets a prime.
  void name(const node& n) {
    if (seen(named_, &n)) return;
    if (n.leaf() && n.kind != node::op::unknown) {
      leaves_.of(n);
      if (n.kind == node::op::root) leaves_.alias(*n.kids[1], n);
    }
    parts(n, [this](const node& part) { name(part); });
  }
  void gather(const node& n) {
    using op = node::op;
    const node& first = n.leaf() && n.kind != op::unknown ? *leaves_.of(n).is : n;  // the same step is written once
    if (seen(gathered_, &first)) return;
    parts(first, [this](const node& part) { gather(part); });
    if (first.kind == op::literal && first.leaf()) constants_.push_back(&first);
    if (first.kind == op::named || first.kind == op::root)
      lines_.push_back({&first, first.kids[0].get(), leaves_.of(first).name, first.of.symbol, first.where_from,
                        first.kind == op::root ? first.kids[1].get() : nullptr});
  }

  // -- digits

  const node& result_of(const line& l) const { return l.target ? *l.target : *l.body; }
  int digits_of(const line& l) { return l.target ? leaves_.digits(*l.target) : digits_above_noise(*l.body, leaves::result_digits); }
  /// Whoever works out the printed line gets the printed result.
  bool right(const line& l) {
    const node& result = result_of(l);
    const int digits = digits_of(l);
    if (l.unknown) {  // the residual changes its sign within half of the last digit
      const double printed = leaves_.value(result);
      double unit_ = 1.0;
      const int e = notation::decimal_of(printed, 0).exponent - digits + 1;
      for (int i = e < 0 ? -e : e; i > 0; --i) unit_ *= e < 0 ? 0.1 : 10.0;
      const auto residual = [&](double x) { return recalculated(*l.body, [&](const node& n) { return &n == l.unknown ? x : leaves_.value(n); }); };
      const double low = residual(printed - 0.5 * unit_), high = residual(printed + 0.5 * unit_);
      return !is_finite(low) || !is_finite(high) || (low <= 0.0) != (high < 0.0);
    }
    const double again = recalculated(*l.body, [&](const node& n) { return leaves_.value(n); });
    if (!is_finite(result.value) || !is_finite(again)) return true;
    if (is_noise(result)) return v1::fabs(again) <= 4.0 * result.noise;
    return notation::decimal_of(again, digits) == notation::decimal_of(result.value, digits);
  }
  /// The numbers that are put into a line; not those of its conditions.
  void put_in(const node& n, std::vector<const node*>& list) {
    if (n.kind == node::op::unknown) return;
    if (n.leaf()) {
      seen(list, leaves_.of(n).is);
    } else if (n.kind == node::op::branch) {
      put_in(n.taken(), list);
    } else {
      for (const auto& kid : n.kids) put_in(*kid, list);
    }
  }
  /// One digit more for every number of a line that has more; false where none has.
  bool finer(const line& l) {
    std::vector<const node*> numbers;
    put_in(*l.body, numbers);
    bool any = false;
    for (const node* n : numbers) {
      leaf_shown& shown = leaves_.of(*n);
      if (!is_finite(n->value) || shown.digits >= leaves::all_digits) continue;
      if (static_cast<int>(notation::decimal_of(n->value, 0).digits.size()) <= shown.digits) continue;
      ++shown.digits;
      any = true;
    }
    return any;
  }
  bool all_right() {
    for (const line& l : lines_)
      if (!right(l)) return false;
    return true;
  }
  /// Guard digits, from the results back to what they are made of, until every line is right; then fewer again where some are too many.
  void refine() {
    for (int pass = 0; pass < 8 && !all_right(); ++pass)
      for (std::size_t i = lines_.size(); i-- > 0;)
        while (!right(lines_[i]) && finer(lines_[i])) {}
    if (!all_right()) return;
    for (leaf_shown& shown : leaves_.all()) {
      while (shown.digits > leaves::result_digits) {
        --shown.digits;
        if (all_right()) continue;
        ++shown.digits;
        break;
      }
    }
  }

  // -- lines

  step written(const line& l) {
    step s;
    s.symbol = l.symbol;
    s.value = result_of(l).value;
    s.unit = l.unit;
    s.where_from = l.where_from;
    write(l, notation::as_text, s.equation, s.substituted, s.result, s.condition);
    write(l, notation::as_latex, s.equation_latex, s.substituted_latex, s.result_latex, s.condition_latex);
    s.symbol_latex = notation::as_latex.name(l.symbol);
    if (!l.where_from.empty()) s.where_from_latex = notation::as_latex.words("(" + l.where_from + ")");
    return s;
  }
  void write(const line& l, const notation::dialect& d, std::string& equation, std::string& substituted, std::string& result,
             std::string& condition) {
    const expression_writer with_symbols(d, &leaves_, false, all_);
    const std::string root = l.unknown ? d.words("the root of ") + "0 = " : std::string();
    equation = root + with_symbols(*l.body);
    if (all_) return;
    substituted = root + expression_writer(d, &leaves_, true, false)(*l.body);
    const node& n = result_of(l);
    result = d.quantity(is_noise(n) ? 0.0 : n.value, l.unit, digits_of(l)).text;
    std::vector<std::string> said;
    const auto say = [&](std::string text) {
      for (const auto& before : said)
        if (before == text) return;
      said.push_back(std::move(text));
    };
    const expression_writer short_constants(d, &leaves_, false, false, leaves::result_digits + 1);
    conditions(*l.body, [&](const node& branch) { say(d.words("since ") + short_constants.conditions(branch, true)); });
    chosen_words(*l.body, [&](const node& word) {
      say(d.name(leaves_.of(word).name) + " = " + d.quantity(word.value, word.of.symbol).text + d.words(" (" + word.label + ")"));
    });
    for (const auto& text : said) condition += (condition.empty() ? std::string() : d.words("; ")) + text;
  }
  template <class Fn>
  static void conditions(const node& n, const Fn& fn) {
    if (n.leaf()) return;
    if (n.kind == node::op::branch) {
      fn(n);
      conditions(n.taken(), fn);
      return;
    }
    for (const auto& kid : n.kids) conditions(*kid, fn);
  }
  template <class Fn>
  static void chosen_words(const node& n, const Fn& fn) {
    if (n.kind == node::op::literal && n.leaf() && !n.label.empty()) fn(n);
    if (n.leaf()) return;
    if (n.kind == node::op::branch) return chosen_words(n.taken(), fn);
    for (const auto& kid : n.kids) chosen_words(*kid, fn);
  }
};

/// The working of the results that `evaluate` returns: pairs of a symbol and a number.
template <class F, class Evaluate>
working write_out(const F& descriptor, const double* x, Evaluate evaluate) {
  std::array<symbol, F::count> in;
  for (std::size_t i = 0; i < F::count; ++i) in[i] = symbol::input(x[i], descriptor.args[i]);
  working w;
  step_writer writer(descriptor.args, false);
  const auto results = evaluate(in.data());
  for (const auto& [name, y] : results) {
    w.value = y.value();
    w.unit = descriptor.result.unit.symbol;
    if (w.dimension_error.empty()) w.dimension_error = y.tree()->error;
    if (w.dimension_error.empty() && !y.tree()->of.same_as(descriptor.result.unit))
      w.dimension_error = std::string(descriptor.result.name) + ": the result is not in " + std::string(descriptor.result.unit.symbol);
    writer.add(y.tree(), name, descriptor.result.unit);
  }
  w.steps = writer.steps();
  return w;
}
using named_result = std::pair<std::string_view, symbol>;

/// A symbol that says its own value: "π/4", "√3", "A²" (of an A that stands beside it).
inline bool explains_itself(std::string_view name) {
  while (!name.empty()) {
    const char32_t c = notation::next_character(name);
    if (notation::raised(c) || c == U'√' || c == U'/') return true;
  }
  return false;
}

}  // namespace detail

/// The worked steps of a formula at the given numbers (in the order of its arguments; a choice is the index of its row).
template <class F>
working work(const F& f, const double* x) {
  return detail::write_out(f, x, [&](const symbol* in) {
    return std::array{detail::named_result{f.result.symbol, f.template value_as<symbol>(in, x)}};
  });
}

/// A working as lines of LaTeX under each other (an `aligned`, to be set in mathematics).
inline std::string latex(const working& w) {
  std::string text = "\\begin{aligned}";
  std::string_view between = "\n";
  for (const step& s : w.steps) {
    const auto line = [&](std::string_view left, const std::string& right, const std::string& remark) {
      text += std::string(between) + std::string(left) + " &= " + notation::broken(right, notation::line_width);
      if (!remark.empty()) text += "\\quad " + remark;
      between = " \\\\\n";
    };
    line(s.symbol_latex, s.equation_latex, {});
    if (!s.condition_latex.empty()) text += std::string(between) + "&\\quad " + s.condition_latex;
    if (s.substituted_latex != s.equation_latex && s.substituted_latex != s.result_latex) line({}, s.substituted_latex, {});
    if (s.result_latex != s.equation_latex) line({}, s.result_latex, {});
    if (!s.where_from_latex.empty()) text += std::string(between) + "&\\quad " + s.where_from_latex;
  }
  return text + "\n\\end{aligned}";
}

/// The equation of a formula without numbers, with all its branches: what the kernel computes, named parts and inner formulas under it.
template <class F>
equation_text equation(const F& f) {
  using namespace detail;
  using namespace notation;
  std::array<double, F::count> x{};
  std::array<symbol, F::count> in;
  for (std::size_t i = 0; i < F::count; ++i) {
    x[i] = f.args[i].table ? 0.0 : no_number;
    in[i] = symbol::input(x[i], f.args[i]);
  }
  const symbol y = f.template value_as<symbol>(in.data(), x.data());
  step_writer writer(f.args, true);
  writer.add(y.tree(), f.result.symbol, f.result.unit);
  const std::vector<step> steps = writer.steps();

  equation_text e{{}, "\\begin{aligned}\n"};
  const auto line = [&](const dialect& d, std::string& out, const std::string& name, const std::string& is, std::string_view from) {
    const bool text = &d == &as_text;
    out += name + (text ? " = " + is : " &= " + broken(is, line_width));
    if (!from.empty()) out += text ? "    (" + std::string(from) + ")" : "\\quad " + d.words("(" + std::string(from) + ")");
    out += text ? "\n" : " \\\\\n";
  };
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const step& s = steps[i == 0 ? steps.size() - 1 : i - 1];  // the result first
    line(as_text, e.text, s.symbol, s.equation, s.where_from);
    line(as_latex, e.latex, s.symbol_latex, s.equation_latex, s.where_from);
  }
  for (const node* c : writer.constants()) {
    const std::string name = writer.name_of(*c);
    if (explains_itself(name)) continue;
    const auto constant_in = [&](const dialect& d) {
      for (std::size_t i = 0; i < F::count && !c->label.empty(); ++i) {
        if (!f.args[i].table) continue;
        const choice_table& table = *f.args[i].table;
        for (std::size_t k = 0; k < table.columns.size(); ++k) {
          if (table.columns[k].symbol != c->text) continue;
          std::vector<std::pair<std::string, std::string>> all;
          for (const auto& row : table.rows) all.emplace_back(d.quantity(row.values[k], c->of.symbol).text, d.words(row.label));
          return d.cases(all, "for").text;
        }
      }
      return d.quantity(c->value, c->of.symbol).text;
    };
    line(as_text, e.text, name, constant_in(as_text), {});
    line(as_latex, e.latex, as_latex.name(name), constant_in(as_latex), {});
  }
  // the units that the numbers are in: without them "/ 1000" says nothing
  std::string latex;
  const auto unit_of = [&](std::string_view symbol_, const unit_t& u) {
    if (u.symbol.empty()) return;
    e.text += (latex.empty() ? "with " : ", ") + std::string(symbol_) + " in " + std::string(u.symbol);
    latex += (latex.empty() ? as_latex.words("with ") : ",\\ ") + as_latex.name(symbol_) + as_latex.words(" in ") + as_latex.unit_alone(u.symbol);
  };
  unit_of(f.result.symbol, f.result.unit);
  for (const auto& a : f.args)
    if (!a.table) unit_of(a.symbol, a.unit);
  if (latex.empty()) {
    e.text.pop_back();
    e.latex.resize(e.latex.size() - 4);
  } else {
    e.latex += "&" + latex;
  }
  e.latex += "\n\\end{aligned}";
  return e;
}

}  // namespace v1
}  // namespace makegood

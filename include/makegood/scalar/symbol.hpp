// SPDX-License-Identifier: MIT
// The worked steps of a formula: symbols, numbers put in, units, result, from the same kernel that computes.
// Core: evaluated on demand, never on the fast path. Includes the standard library only.
#pragma once
#include <cmath>
#include <memory>
#include <string>
#include <vector>
#include "../formula.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {

/// One line of the working.
struct step {
  std::string symbol;        ///< "ΔU"
  std::string equation;      ///< "d · I · L / 1000"
  std::string substituted;   ///< "44 mV/(A·m) · 16 A · 22 m / 1000"
  double value = 0.0;
  std::string unit;
  std::string condition;     ///< which branch was taken and why
  std::string where_from;    ///< source of an inner formula
};
/// The working of one evaluation.
struct working {
  std::vector<step> steps;
  double value = 0.0;
  std::string unit;
  std::string dimension_error;  ///< empty where the units of the equation agree; a test holds every formula to that
};

namespace detail {

struct node {
  enum class op : unsigned char { number, literal, argument, named, root, sum, product, power, convert, function, branch };
  op kind = op::number;
  double value = 0.0;
  unit_t of{};
  std::string text{};         // symbol, function name, operator, or what a conversion adds behind
  std::string label{};        // the word that chose a literal; the condition of a branch
  std::string where_from{};
  std::vector<std::shared_ptr<const node>> kids{};
  std::string error{};
  int level = 4;              // precedence: 1 sum, 2 product, 3 power, 4 atom
};
using handle = std::shared_ptr<const node>;

inline bool same_dimension(const unit_t& a, const unit_t& b) {
  return unit_t{{}, a.twice, a.scale, false, {}}.same_as({{}, b.twice, b.scale, false, {}});
}
inline unit_t multiplied(const unit_t& a, const unit_t& b, int sign) {
  unit_t r;
  for (std::size_t i = 0; i < r.twice.size(); ++i) r.twice[i] = static_cast<signed char>(a.twice[i] + sign * b.twice[i]);
  r.scale = sign > 0 ? a.scale * b.scale : a.scale / b.scale;
  return r;
}
inline handle make(node n) {
  for (const auto& kid : n.kids)
    if (n.error.empty()) n.error = kid->error;
  return std::make_shared<const node>(std::move(n));
}

std::string expression(const handle& n, bool numbers);

inline std::string operand(const handle& n, bool numbers, int at_least) {
  if (n->kind == node::op::convert && n->text.empty()) return operand(n->kids[0], numbers, at_least);  // a change of unit that leaves the number
  const bool atom = n->kind == node::op::number || n->kind == node::op::literal || n->kind == node::op::argument ||
                    n->kind == node::op::named || n->kind == node::op::root;
  const bool as_number = atom && (numbers || n->text.empty());
  const int level = as_number ? (n->value < 0 ? 1 : (at_least > 2 && !n->of.symbol.empty() ? 2 : 4)) : n->level;
  std::string text = expression(n, numbers);
  return level < at_least ? "(" + text + ")" : text;
}
inline std::string expression(const handle& n, bool numbers) {
  using op = node::op;
  switch (n->kind) {
    case op::number: return number_text(n->value);
    case op::literal:
    case op::argument:
    case op::named:
    case op::root:
      if (!numbers && !n->text.empty()) return n->text;
      return quantity_text(n->value, n->of.symbol, 6);
    case op::sum:
      return n->kids.size() == 1 ? "−" + operand(n->kids[0], numbers, 2)
                                 : operand(n->kids[0], numbers, 1) + n->text + operand(n->kids[1], numbers, n->text == " + " ? 1 : 2);
    case op::product: return operand(n->kids[0], numbers, 2) + n->text + operand(n->kids[1], numbers, n->text == " · " ? 2 : 3);
    case op::power: return operand(n->kids[0], numbers, 4) + n->text;
    case op::convert: return n->text.empty() ? expression(n->kids[0], numbers) : operand(n->kids[0], numbers, n->level) + n->text;
    case op::function: return n->text + "(" + expression(n->kids[0], numbers) + ")";
    case op::branch: return expression(n->kids[0], numbers);
  }
  return {};
}

}  // namespace detail

/// The truth of a comparison, with its text.
struct truth {
  bool holds = true;
  std::string text{};
  constexpr explicit operator bool() const { return holds; }
  friend truth operator&&(const truth& a, const truth& b) {
    if (a.holds && b.holds) return {true, a.text + " and " + b.text};
    return a.holds ? b : a;
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
  friend symbol operator-(const symbol& a) {
    return symbol(detail::make({op::sum, -a.value(), a.n_->of, " − ", {}, {}, {a.n_}, {}, 1}));
  }
  friend symbol operator*(const symbol& a, const symbol& b) { return product(a, b, +1); }
  friend symbol operator/(const symbol& a, const symbol& b) { return product(a, b, -1); }

  friend truth operator<(const symbol& a, const symbol& b) { return compare(a, b, a.value() < b.value(), " < ", " ≥ "); }
  friend truth operator<=(const symbol& a, const symbol& b) { return compare(a, b, a.value() <= b.value(), " ≤ ", " > "); }
  friend truth operator>(const symbol& a, const symbol& b) { return compare(a, b, a.value() > b.value(), " > ", " ≤ "); }
  friend truth operator>=(const symbol& a, const symbol& b) { return compare(a, b, a.value() >= b.value(), " ≥ ", " < "); }
  friend symbol select(const truth& condition, const symbol& yes, const symbol& no) {
    const symbol& taken = condition.holds ? yes : no;
    std::string error = taken.n_->error;
    if (error.empty() && !yes.n_->of.same_as(no.n_->of)) error = "the two branches have different units";
    return symbol(detail::make({op::branch, taken.value(), taken.n_->of, {}, condition.text, {}, {taken.n_}, error, taken.n_->level}));
  }

  friend symbol log(const symbol& x) { return function("ln", v1::log(x.value()), x); }
  friend symbol log10(const symbol& x) { return function("lg", v1::log10(x.value()), x); }
  friend symbol log1p(const symbol& x) {  // written ln(1 + x), computed without losing digits
    const symbol sum_ = symbol(1.0) + x;
    return symbol(detail::make({op::function, v1::log1p(x.value()), unit::one, "ln", {}, {}, {sum_.n_}, {}}));
  }
  friend symbol exp(const symbol& x) { return function("exp", v1::exp(x.value()), x); }
  friend symbol tanh(const symbol& x) { return function("tanh", v1::tanh(x.value()), x); }
  friend symbol sin(const symbol& x) { return function("sin", v1::sin(x.value()), x); }
  friend symbol cos(const symbol& x) { return function("cos", v1::cos(x.value()), x); }
  friend symbol cbrt(const symbol& x) { return function("∛", v1::cbrt(x.value()), x); }
  friend symbol sqrt(const symbol& x) {
    unit_t u = x.n_->of;
    std::string error;
    for (auto& e : u.twice) {
      if (e % 2) error = "square root of a unit with an odd exponent";
      e = static_cast<signed char>(e / 2);
    }
    u.scale = std::sqrt(u.scale);
    u.symbol = {};
    return symbol(detail::make({op::function, v1::sqrt(x.value()), u, "√", {}, {}, {x.n_}, error}));
  }
  friend symbol pow(const symbol& x, double y) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = "power of a quantity with a unit";
    return symbol(detail::make({op::power, v1::pow(x.value(), y), unit::one, "^" + number_text(y), {}, {}, {x.n_}, error, 3}));
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
    constexpr bool decimal = 1000 % D == 0;  // x^-1.5, but x^(1/12)
    const std::string text = decimal ? number_text(static_cast<double>(N) / D) : "(" + number_text(N) + "/" + number_text(D) + ")";
    return symbol(detail::make({op::power, v1::power<N, D>(x.value()), u, N == 2 && D == 1 ? "²" : N == 3 && D == 1 ? "³" : "^" + text, {}, {}, {x.n_}, error, 3}));
  }
  friend symbol damped_pow(const symbol& x, double y) {
    const symbol shown = pow(x, y);
    detail::node n = *shown.n_;
    n.value = v1::damped_pow(x.value(), y);
    return symbol(detail::make(std::move(n)));
  }
  friend symbol square(const symbol& x) { return integer_power(x, 2, "²"); }
  friend symbol cube(const symbol& x) { return integer_power(x, 3, "³"); }
  friend symbol fabs(const symbol& x) {
    return symbol(detail::make({op::function, v1::fabs(x.value()), x.n_->of, "abs", {}, {}, {x.n_}}));
  }

  friend symbol let(std::string_view name, const unit_t& u, const symbol& x) { return named(name, u, x, {}); }
  template <int Steps, class Start, class R>
  friend symbol root(std::string_view name, const unit_t& u, const Start& start, const R& residual, const symbol&) {
    symbol x(static_cast<symbol>(start).value());
    double at = x.value();
    for (int i = 0; i < Steps; ++i) {
      const auto [g, slope] = residual(symbol(detail::make({op::named, at, u, std::string(name)})));
      at -= g.value() / slope.value();
    }
    const symbol unknown(detail::make({op::named, at, u, std::string(name)}));
    const auto [g, slope] = residual(unknown);
    return symbol(detail::make({op::root, at, u, std::string(name), {}, {}, {g.n_}, g.n_->error}));
  }

  friend symbol milli(const symbol& x) { return convert(x, x.value() / 1000.0, 1e3, " / 1000", 2); }
  friend symbol micro(const symbol& x) { return convert(x, x.value() / 1e6, 1e6, " / 10⁶", 2); }
  friend symbol kilo(const symbol& x) { return convert(x, x.value() * 1000.0, 1e-3, " · 1000", 2); }
  friend symbol mega(const symbol& x) { return convert(x, x.value() * 1e6, 1e-6, " · 10⁶", 2); }
  friend symbol percent(const symbol& x) { return convert(x, x.value() / 100.0, 100.0, " / 100", 2); }
  friend symbol in_percent(const symbol& x) { return convert(x, x.value() * 100.0, 0.01, " · 100", 2); }
  friend symbol in_milli(const symbol& x) { return kilo(x); }
  friend symbol in_micro(const symbol& x) { return mega(x); }
  friend symbol hourly(const symbol& x) { return convert(x, x.value() / 3600.0, 3600.0, " / 3600", 2); }
  friend symbol in_hourly(const symbol& x) { return convert(x, x.value() * 3600.0, 1.0 / 3600.0, " · 3600", 2); }
  friend symbol kelvin(const symbol& t) {
    return temperature(t, t.value() + 273.15, true, unit::kelvin, " + 273.15", 1);
  }
  friend symbol celsius(const symbol& t) { return temperature(t, t.value() - 273.15, false, unit::celsius, " − 273.15", 1); }
  friend symbol from_zero(const symbol& t) { return temperature(t, t.value(), true, unit::kelvin, "", t.n_->level); }
  friend symbol at_celsius(const symbol& t) { return temperature(t, t.value(), false, unit::celsius, "", t.n_->level); }
  friend symbol magnitude(const symbol& x, const unit_t& u) {
    std::string error;
    if (!x.n_->of.same_as(u)) error = "taken as a number of " + std::string(u.symbol) + ", but it is in another unit";
    return symbol(detail::make({op::convert, x.value(), unit::one, {}, {}, {}, {x.n_}, error, x.n_->level}));
  }
  friend symbol attach(const symbol& x, const unit_t& u) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = "a quantity that has a unit already is given another";
    return symbol(detail::make({op::convert, x.value(), u, {}, {}, {}, {x.n_}, error, x.n_->level}));
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
    if (!detail::same_dimension(u, w)) error = "a sum of different units (" + detail::expression(a.n_, false) + ", " + detail::expression(b.n_, false) + ")";
    else if (u.celsius && w.celsius) {
      r = unit::kelvin;
      if (sign > 0) error = "two temperatures added";
    } else if (w.celsius) {
      r = unit::celsius;
      if (sign < 0) error = "a temperature taken from a difference";
    }
    return symbol(detail::make({op::sum, sign > 0 ? a.value() + b.value() : a.value() - b.value(), r, sign > 0 ? " + " : " − ", {}, {}, {a.n_, b.n_}, error, 1}));
  }
  static symbol product(const symbol& a, const symbol& b, int sign) {
    std::string error;
    if (a.n_->of.celsius || b.n_->of.celsius) error = "a temperature in °C multiplied: make it a difference or kelvin first";
    return symbol(detail::make({op::product, sign > 0 ? a.value() * b.value() : a.value() / b.value(),
                                detail::multiplied(a.n_->of, b.n_->of, sign), sign > 0 ? " · " : " / ", {}, {}, {a.n_, b.n_}, error, 2}));
  }
  static symbol integer_power(const symbol& x, int n, const char* sign) {
    unit_t u = x.n_->of;
    for (int i = 1; i < n; ++i) u = detail::multiplied(u, x.n_->of, +1);
    double v = x.value();
    for (int i = 1; i < n; ++i) v *= x.value();
    return symbol(detail::make({op::power, v, u, sign, {}, {}, {x.n_}, u.celsius ? "a temperature in °C multiplied" : "", 3}));
  }
  static symbol function(const char* name, double y, const symbol& x) {
    std::string error;
    if (!detail::same_dimension(x.n_->of, unit::one)) error = std::string(name) + " of a quantity with a unit";
    return symbol(detail::make({op::function, y, unit::one, name, {}, {}, {x.n_}, error}));
  }
  static symbol convert(const symbol& x, double y, double scale, const char* suffix, int level) {
    unit_t u = x.n_->of;
    u.scale *= scale;
    u.symbol = {};
    return symbol(detail::make({op::convert, y, u, suffix, {}, {}, {x.n_}, {}, level}));
  }
  static symbol temperature(const symbol& t, double y, bool wants_celsius, const unit_t& u, const char* suffix, int level) {
    std::string error;
    if (t.n_->of.celsius != wants_celsius || !detail::same_dimension(t.n_->of, unit::kelvin)) error = "a conversion of temperature on another unit";
    return symbol(detail::make({op::convert, y, u, suffix, {}, {}, {t.n_}, error, level}));
  }
  static truth compare(const symbol& a, const symbol& b, bool holds, const char* yes, const char* no) {
    const char* sign = holds ? yes : no;
    std::string text = detail::expression(a.n_, false) + sign + detail::expression(b.n_, false);
    return {holds, text};
  }
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
  static symbol adopt(const argument& a, const symbol& x) {
    const auto& n = *x.tree();
    if (n.kind == symbol::op::number) return symbol::input(n.value, a);
    if (n.text == a.symbol && n.kind != symbol::op::sum && n.kind != symbol::op::product) return x;
    return symbol::named(a.symbol, a.unit, x, {});
  }
};

namespace detail {

/// Writes out the steps, each after the steps it needs: the order does not depend on the compiler.
class step_writer {
 public:
  void emit(std::vector<step>& steps, const handle& n, std::string_view symbol_, std::string_view unit_, const std::string& where_from) {
    collect(steps, n);
    step s;
    s.symbol = symbol_;
    s.equation = expression(n, false);
    s.substituted = expression(n, true);
    s.value = n->value;
    s.unit = unit_;
    s.where_from = where_from;
    conditions(n, s.condition);
    chosen_words(n, s.condition);
    if (s.equation != s.symbol) steps.push_back(std::move(s));
  }

 private:
  std::vector<const node*> done_;

  void collect(std::vector<step>& steps, const handle& n) {
    if (n->kind == node::op::named || n->kind == node::op::root) {
      for (const node* d : done_)
        if (d == n.get()) return;
      done_.push_back(n.get());
      if (n->kids.empty()) return;
      if (n->kind == node::op::named) {
        emit(steps, n->kids[0], n->text, n->of.symbol, n->where_from);
      } else {
        collect(steps, n->kids[0]);
        step s;
        s.symbol = n->text;
        s.equation = "the root of 0 = " + expression(n->kids[0], false);
        s.substituted = expression(n->kids[0], true) + " = 0";
        s.value = n->value;
        s.unit = n->of.symbol;
        steps.push_back(std::move(s));
      }
      return;
    }
    for (const auto& kid : n->kids) collect(steps, kid);
  }
  static bool stops(const node& n) { return n.kind == node::op::named || n.kind == node::op::root; }
  static void add(std::string& text, const std::string& more) {
    if (more.empty() || text.find(more) != std::string::npos) return;
    if (!text.empty()) text += "; ";
    text += more;
  }
  static void conditions(const handle& n, std::string& text) {
    if (n->kind == node::op::branch && !n->label.empty()) add(text, "since " + n->label);
    if (stops(*n)) return;
    for (const auto& kid : n->kids) conditions(kid, text);
  }
  static void chosen_words(const handle& n, std::string& text) {
    if (n->kind == node::op::literal && !n->label.empty())
      add(text, n->text + " = " + quantity_text(n->value, n->of.symbol) + " (" + n->label + ")");
    if (stops(*n)) return;
    for (const auto& kid : n->kids) chosen_words(kid, text);
  }
};

template <class F, class Evaluate>
working write_out(const F& descriptor, const double* x, Evaluate evaluate) {
  std::array<symbol, F::count> in;
  for (std::size_t i = 0; i < F::count; ++i) in[i] = symbol::input(x[i], descriptor.args[i]);
  const symbol y = evaluate(in.data());
  working w;
  w.value = y.value();
  w.unit = descriptor.result.unit.symbol;
  w.dimension_error = y.tree()->error;
  if (w.dimension_error.empty() && !y.tree()->of.same_as(descriptor.result.unit))
    w.dimension_error = std::string(descriptor.result.name) + ": the result is not in " + std::string(descriptor.result.unit.symbol);
  step_writer{}.emit(w.steps, y.tree(), descriptor.result.symbol, descriptor.result.unit.symbol, {});
  return w;
}

}  // namespace detail

/// The worked steps of a formula at the given numbers (in the order of its arguments; a choice is the index of its row).
template <class F>
working work(const F& f, const double* x) {
  return detail::write_out(f, x, [&](const symbol* in) { return f.template value_as<symbol>(in, x); });
}

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// What a formula is: a value (descriptor and kernel together), written once, evaluated with many kinds of number.
// Core: every subject uses it. Includes the standard library only.
#pragma once
#include <array>
#include <string_view>
#include <type_traits>
#include <utility>
#include "descriptor.hpp"
#include "scalar/traced.hpp"
#include "view.hpp"

namespace makegood {
inline namespace v1 {

// ---------------------------------------------------------------------------------------------------------------------
// Kinds of number

template <class T>
struct kind_of { using type = T; };
template <class T>
  requires std::is_arithmetic_v<T>
struct kind_of<T> { using type = double; };
template <>
struct kind_of<literal> { using type = double; };
template <class T>
  requires std::is_convertible_v<T, std::string_view>
struct kind_of<T> { using type = double; };
template <class T>
struct kind_of<chosen<T>> { using type = T; };

/// The wider of two kinds; specialised by the kinds of which two make a third.
template <class A, class B>
struct wider { using type = std::conditional_t<std::is_same_v<A, double>, B, A>; };
template <class A, class B>
using wider_t = typename wider<A, B>::type;
template <class... T>
struct widest { using type = double; };
template <class T, class... Rest>
struct widest<T, Rest...> {
  using type = wider_t<typename kind_of<std::remove_cvref_t<T>>::type, typename widest<Rest...>::type>;
};
/// The kind in which a call with these arguments is evaluated.
template <class... T>
using widest_t = typename widest<T...>::type;

constexpr double plain_value(double x) { return x; }

/// One argument of an aggregate: it has no default, so that leaving it out does not compile.
template <class T>
struct need {
  T value;
  template <class U>
    requires std::is_convertible_v<U, T>
  constexpr need(U&& x) : value(std::forward<U>(x)) {}
  constexpr operator const T&() const { return value; }
};
/// An aggregate of arguments: the names are listed once, those with a default in a second pair of brackets.
#define MAKEGOOD_UNWRAP(...) __VA_ARGS__
#define MAKEGOOD_ARGUMENTS(type, required)                          \
  template <class T>                                                \
  struct type {                                                     \
    ::makegood::need<T> MAKEGOOD_UNWRAP required;                   \
    static constexpr std::string_view names() { return #required; } \
  }
#define MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(type, required, defaulted)            \
  template <class T>                                                           \
  struct type {                                                                \
    ::makegood::need<T> MAKEGOOD_UNWRAP required;                              \
    T MAKEGOOD_UNWRAP defaulted;                                               \
    static constexpr std::string_view names() { return #required #defaulted; } \
  }
/// In the place of an aggregate: the formula takes its arguments one by one.
template <class T>
struct no_aggregate {};
template <template <class> class Struct>
inline constexpr bool is_aggregate = true;
template <>
inline constexpr bool is_aggregate<no_aggregate> = false;

/// Why a set of arguments is refused.
struct fault {
  enum class what : unsigned char { none, not_a_number, out_of_range, relation, no_result } kind = what::none;
  int index = -1;  ///< the argument, or the requirement
  constexpr explicit operator bool() const { return kind != what::none; }
};

namespace detail {

constexpr bool is_name_char(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
}
/// Whether a text like "(a, b)(c = 2.0)" lists the names of the arguments in their order.
constexpr bool lists(std::string_view names, const argument* args, std::size_t count) {
  const char* at = names.data();
  const char* const end = at + names.size();
  for (std::size_t i = 0; i < count; ++i) {
    while (at != end && !is_name_char(*at)) ++at;
    const std::size_t size = args[i].name.size();
    if (static_cast<std::size_t>(end - at) <= size || __builtin_memcmp(at, args[i].name.data(), size) != 0) return false;
    at += size;
    if (is_name_char(*at)) return false;
    while (*at != ',' && *at != ')') ++at;
  }
  return true;
}

template <class T>
constexpr const T& plain(const need<T>& x) { return x.value; }
template <class T>
constexpr const T& plain(const T& x) { return x; }

/// Why a formula without a broken range has no number: an inner one says so, or the arguments are shown.
inline void add_no_result(message& text, view<argument> args, const double* x, const remark& inside) {
  if (!inside.set()) {
    text += ": these arguments have no finite result";
    return add_numbers(text, args, x);
  }
  text += ": inside ";
  text += inside.formula;
  text += ": ";
  text += inside.argument;
  if (!inside.argument.empty()) {
    text += " = ";
    text.quantity(inside.at, inside.unit);
    text += ": ";
  }
  text += inside.text;
}
/// Calls fn with the members of an aggregate of n.
template <std::size_t n, class S, class Fn>
constexpr auto with_members(const S& s, Fn fn) {
  if constexpr (n == 1) { const auto& [a] = s; return fn(plain(a)); }
  else if constexpr (n == 2) { const auto& [a, b] = s; return fn(plain(a), plain(b)); }
  else if constexpr (n == 3) { const auto& [a, b, c] = s; return fn(plain(a), plain(b), plain(c)); }
  else if constexpr (n == 4) { const auto& [a, b, c, d] = s; return fn(plain(a), plain(b), plain(c), plain(d)); }
  else if constexpr (n == 5) { const auto& [a, b, c, d, e] = s; return fn(plain(a), plain(b), plain(c), plain(d), plain(e)); }
  else if constexpr (n == 6) { const auto& [a, b, c, d, e, f] = s; return fn(plain(a), plain(b), plain(c), plain(d), plain(e), plain(f)); }
  else if constexpr (n == 7) {
    const auto& [a, b, c, d, e, f, g] = s;
    return fn(plain(a), plain(b), plain(c), plain(d), plain(e), plain(f), plain(g));
  } else if constexpr (n == 8) {
    const auto& [a, b, c, d, e, f, g, h] = s;
    return fn(plain(a), plain(b), plain(c), plain(d), plain(e), plain(f), plain(g), plain(h));
  } else if constexpr (n == 9) {
    const auto& [a, b, c, d, e, f, g, h, i] = s;
    return fn(plain(a), plain(b), plain(c), plain(d), plain(e), plain(f), plain(g), plain(h), plain(i));
  } else {
    static_assert(n == 10, "a formula takes at most ten arguments");
    const auto& [a, b, c, d, e, f, g, h, i, j] = s;
    return fn(plain(a), plain(b), plain(c), plain(d), plain(e), plain(f), plain(g), plain(h), plain(i), plain(j));
  }
}

}  // namespace detail

// ---------------------------------------------------------------------------------------------------------------------
// The formula

/// The arguments of a formula in order; `Struct` is its aggregate (C++ callers with more than three arguments).
template <template <class> class Struct, bool... IsChoice>
struct inputs {
  std::array<argument, sizeof...(IsChoice)> list;
};
template <template <class> class Struct, class... A>
constexpr auto in(const A&... a) {
  inputs<Struct, std::is_same_v<A, choice>...> made{{static_cast<const argument&>(a)...}};
  if constexpr (is_aggregate<Struct>)
    if (!detail::lists(Struct<double>::names(), made.list.data(), sizeof...(A)))
      throw "the aggregate and the descriptor name different arguments";
  return made;
}
template <class... A>
constexpr auto in(const A&... a) {
  static_assert(sizeof...(A) <= 3, "more than three arguments: give the formula an aggregate (MAKEGOOD_ARGUMENTS)");
  return in<no_aggregate>(a...);
}

/// How a kind of number goes through a checked call. Specialised by kinds that are more than a number (Measured).
template <class K>
struct evaluation {
  template <class F, class... X>
  static constexpr K run(const F& f, const X&... x) {
    f.demand(x...);
    return f.unchecked(x...);
  }
};

/// What a formula says of itself, and its arguments as a kind of number: all that does not depend on the kernel.
/// What only hands arguments on is always inlined: a range that is a constant folds, and a relation shares work with the kernel.
template <bool... IsChoice>
struct described {
  static constexpr std::size_t count = sizeof...(IsChoice);
  static constexpr bool is_choice[count] = {IsChoice...};

  out result;
  std::array<argument, count> args;
  source from;

  constexpr std::size_t required() const {
    std::size_t n = 0;
    while (n < count && !args[n].optional) ++n;
    return n;
  }
  /// Calls fn with every argument as kind K, defaults filled in, words looked up.
  template <class K, class Fn, class... X>
  MAKEGOOD_INLINE constexpr auto with_all(const Fn& fn, const X&... x) const {
    return fill<K>(fn, std::index_sequence_for<X...>{}, std::make_index_sequence<count - sizeof...(X)>{}, x...);
  }
  /// The same from an array of doubles (a choice is the index of its row).
  template <class K, class Fn>
  MAKEGOOD_INLINE constexpr auto with_numbers(const Fn& fn, const double* x) const {
    return from_array<K>(fn, x, x, std::make_index_sequence<count>{});
  }
  /// The same from an array of kind K; the choices stand in `plain`.
  template <class K, class Fn>
  MAKEGOOD_INLINE constexpr auto with_array(const Fn& fn, const K* x, const double* plain) const {
    return from_array<K>(fn, x, plain, std::make_index_sequence<count>{});
  }
  /// The arguments as plain doubles.
  template <class... X>
  constexpr std::array<double, count> numbers(const X&... x) const {
    return with_all<widest_t<X...>>([](const auto&... y) { return std::array<double, count>{index_or_value(y)...}; }, x...);
  }
  /// The first argument outside its permitted range, or -1.
  constexpr int first_outside(const double* x) const { return first_outside(x, std::make_index_sequence<count>{}); }

 protected:
  template <class T>
  static constexpr double index_or_value(const chosen<T>& c) { return c.index; }
  template <class T>
  static constexpr double index_or_value(const T& x) { return plain_value(x); }

 private:
  template <class K, std::size_t I, class X>
  MAKEGOOD_INLINE constexpr auto bind(const X& x) const {
    if constexpr (is_choice[I]) {
      if constexpr (std::is_convertible_v<X, std::string_view>) {
        const int index = args[I].table->find(std::string_view(x));
        if (index < 0) detail::throw_unknown_key(result.name, args[I], std::string_view(x));
        return chosen<K>{args[I].table, index};
      } else if constexpr (std::is_arithmetic_v<X>) {
        return chosen<K>{args[I].table, static_cast<int>(x)};
      } else {
        return chosen<K>{x.table, x.index};
      }
    } else {
      return static_cast<K>(x);
    }
  }
  template <class K, class Fn, std::size_t... I, std::size_t... J, class... X>
  MAKEGOOD_INLINE constexpr auto fill(const Fn& fn, std::index_sequence<I...>, std::index_sequence<J...>, const X&... x) const {
    return fn(bind<K, I>(x)..., bind<K, sizeof...(I) + J>(args[sizeof...(I) + J].fallback)...);
  }
  template <class K, class Fn, class X, std::size_t... I>
  MAKEGOOD_INLINE constexpr auto from_array(const Fn& fn, const X* x, const double* plain, std::index_sequence<I...>) const {
    return fn(element<K, I>(x, plain)...);
  }
  template <class K, std::size_t I, class X>
  MAKEGOOD_INLINE constexpr auto element(const X* x, const double* plain) const {
    if constexpr (is_choice[I]) return chosen<K>{args[I].table, static_cast<int>(plain[I])};
    else return static_cast<K>(x[I]);
  }
  template <std::size_t... I>
  constexpr int first_outside(const double* x, std::index_sequence<I...>) const {  // unrolled, so that constant ranges fold
    int outside = -1;
    (void)((args[I].permitted.contains(x[I]) || (outside = static_cast<int>(I), false)) && ...);
    return outside;
  }
};

/// A value, or the reason why there is none.
struct attempt {
  double value = no_number;
  fault why{};
  constexpr bool ok() const { return !why; }
};

template <class Kernel, class Extras, template <class> class Struct, bool... IsChoice>
struct formula_t : described<IsChoice...>, Extras {
  using base = described<IsChoice...>;
  template <class T>
  using arguments = Struct<T>;

  Kernel kernel;

  /// The kernel alone: no validation, no exception; nonsense in, nonsense or NaN out.
  template <class... X>
  constexpr auto unchecked(const X&... x) const {
    using K = widest_t<X...>;
    return static_cast<K>(this->template with_all<K>(kernel, x...));
  }
  /// Checked call: value, or an error that names argument, value, unit and permitted range.
  template <class... X>
    requires(!is_aggregate<Struct> && sizeof...(X) <= sizeof...(IsChoice))
  constexpr auto operator()(const X&... x) const {
    return evaluation<widest_t<X...>>::run(*this, x...);
  }
  constexpr double operator()(const Struct<double>& s) const
    requires(is_aggregate<Struct>)
  {
    return apply<double>(s);
  }
  template <class T>
    requires(is_aggregate<Struct>)
  constexpr auto operator()(const Struct<T>& s) const {
    return apply<T>(s);
  }
  /// Value or reason, without exceptions.
  template <class... X>
  attempt try_call(const X&... x) const {
    const auto v = this->numbers(x...);
    if (const fault why = check(v.data())) return {no_number, why};
    const double y = value(v.data());
    if (!is_finite(y)) return {no_number, {fault::what::no_result, -1}};
    return {y, {}};
  }

  // ---- the same through an array of doubles (a choice is the index of its row): what the doors and lists use
  constexpr double value(const double* x) const { return static_cast<double>(this->template with_numbers<double>(kernel, x)); }
  template <class K>
  constexpr K value_as(const K* x, const double* plain) const {
    return static_cast<K>(this->template with_array<K>(kernel, x, plain));
  }
  /// First argument or relation that is not permitted.
  constexpr fault check(const double* x) const {
    const int outside = this->first_outside(x);
    if (outside >= 0) [[unlikely]]
      return {is_nan(x[outside]) ? fault::what::not_a_number : fault::what::out_of_range, outside};
    const int broken = this->template with_numbers<double>([this](const auto&... y) MAKEGOOD_LAMBDA_INLINE { return this->broken(y...); }, x);
    return broken < 0 ? fault{} : fault{fault::what::relation, broken};
  }
  /// All ranges and relations in the same pass, for the kinds whose comparison gives a truth value.
  template <class... X>
  constexpr bool holds(const X&... x) const {
    const std::array<double, base::count> v{base::index_or_value(x)...};
    return !check(v.data());
  }
  /// Evaluates with reasons: what failed inside, and what lies outside the range of validity.
  traced trace(const double* x) const {
    traced y = static_cast<traced>(this->template with_numbers<traced>(kernel, x));
    for (std::size_t i = 0; i < base::count; ++i) {
      const argument& a = this->args[i];
      if (!a.table && !a.valid.contains(x[i])) {
        y.doubt = {this->result.name, a.name, "outside the range in which the formula is known to hold", x[i], a.unit.symbol};
        return y;
      }
    }
    const auto text = this->template with_numbers<double>([this](const auto&... z) { return this->doubt(z...); }, x);
    if (!text.empty()) y.doubt = {this->result.name, {}, text, 0.0, {}};
    return y;
  }
  template <class... X>
  constexpr void demand(const X&... x) const {
    const auto v = this->numbers(x...);
    if (const fault f = check(v.data())) [[unlikely]] refuse(f, v.data());
  }
  /// The sentence that belongs to the fault.
  message refusal(fault f, const double* x) const {
    message text(this->result.name);
    if (f.kind == fault::what::relation) {
      text += ": ";
      text += Extras::text(f.index);
      detail::add_numbers(text, this->args, x);
    } else if (f.kind == fault::what::no_result) {
      detail::add_no_result(text, this->args, x, trace(x).fault);
    } else {
      const auto& a = this->args[static_cast<std::size_t>(f.index)];
      text += ": ";
      text += a.name;
      text += ": ";
      detail::add_out_of_range(text, a, x[f.index]);
    }
    return text;
  }
  /// Throws the error that belongs to the fault.
  [[noreturn]] void refuse(fault f, const double* x) const {
    if (f.kind == fault::what::relation) throw relation_error(refusal(f, x));
    throw range_error(refusal(f, x));
  }

 private:
  template <class K>
  constexpr auto apply(const Struct<K>& s) const {
    return detail::with_members<base::count>(s, [this](const auto&... x) { return evaluation<K>::run(*this, x...); });
  }
};

/// A double is also looked at after the kernel: a checked call never returns NaN or infinity.
template <>
struct evaluation<double> {
  template <class F, class... X>
  static constexpr double run(const F& f, const X&... x) {
    const auto v = f.numbers(x...);
    if (const fault bad = f.check(v.data())) [[unlikely]] f.refuse(bad, v.data());
    const double y = f.value(v.data());
    if (!is_finite(y)) [[unlikely]] f.refuse({fault::what::no_result, -1}, v.data());
    return y;
  }
};

namespace detail {
template <class E>
inline constexpr bool is_requirement = false;
template <class P>
inline constexpr bool is_requirement<requirement<P>> = true;
template <class E>
inline constexpr bool is_validity = false;
template <class P>
inline constexpr bool is_validity<validity<P>> = true;

/// Requirements, validity and remarks of a formula, in one base.
template <class... E>
struct extras : E... {
  /// All relations as a mask, for the kinds whose comparison gives one.
  template <class Mask, class... X>
  constexpr Mask holds_all(Mask so_far, const X&... x) const {
    [[maybe_unused]] const auto narrow = [&]<class One>(const One& e) {
      if constexpr (is_requirement<One>) so_far = so_far & Mask(e.holds(x...));
    };
    (narrow(static_cast<const E&>(*this)), ...);
    return so_far;
  }
  /// All relations of validity as a mask.
  template <class Mask, class... X>
  constexpr Mask valid_all(Mask so_far, const X&... x) const {
    [[maybe_unused]] const auto narrow = [&]<class One>(const One& e) {
      if constexpr (is_validity<One>) so_far = so_far & Mask(e.holds(x...));
    };
    (narrow(static_cast<const E&>(*this)), ...);
    return so_far;
  }
  static constexpr bool restricts = (is_validity<E> || ...);  ///< there is a relation outside which the formula is doubtful
  /// The first relation that does not hold, or -1.
  template <class... X>
  MAKEGOOD_INLINE constexpr int broken(const X&... x) const {
    int which = -1;
    [[maybe_unused]] const auto breaks = [&]<class One>(const One& e) MAKEGOOD_LAMBDA_INLINE {
      if constexpr (is_requirement<One>) return ++which, !e.holds(x...);
      else return false;
    };
    return (breaks(static_cast<const E&>(*this)) || ...) ? which : -1;
  }
  /// Why the result is in doubt, or "".
  template <class... X>
  constexpr std::string_view doubt(const X&... x) const {
    std::string_view text;
    [[maybe_unused]] const auto doubtful = [&]<class One>(const One& e) {
      if constexpr (is_validity<One>) return !e.holds(x...) && (text = e.text, true);
      else return false;
    };
    (void)(doubtful(static_cast<const E&>(*this)) || ...);
    return text;
  }
  /// The sentence of a relation, by its number.
  constexpr std::string_view text(int which) const {
    std::string_view found;
    [[maybe_unused]] const auto look = [&]<class One>(const One& e) {
      if constexpr (is_requirement<One>)
        if (which-- == 0) found = e.text;
    };
    (look(static_cast<const E&>(*this)), ...);
    return found;
  }
  constexpr remarks about() const {
    if constexpr ((std::is_same_v<E, remarks> || ...)) return static_cast<const remarks&>(*this);
    else return {};
  }
};
}  // namespace detail

/// Makes a formula: what it returns, its arguments, its source, its kernel, then relations, validity and remarks.
template <template <class> class Struct, bool... C, class Kernel, class... E>
constexpr auto formula(out result, const inputs<Struct, C...>& arguments, source from, Kernel kernel, const E&... e) {
  return formula_t<Kernel, detail::extras<E...>, Struct, C...>{{result, arguments.list, from}, {e...}, kernel};
}

// ---------------------------------------------------------------------------------------------------------------------
// The words of a kernel

/// How a kind of number goes through an inner formula. Specialised by the kinds that carry more than a number.
template <class K>
struct inner_call {
  template <class F, class... X>
  static constexpr K run(const F& f, const X&... x) {
    return f.template with_all<K>(
        [&f](const auto&... y) { return select(f.holds(y...), f.unchecked(y...), static_cast<K>(no_number)); }, x...);
  }
};
/// The slow kind carries the reasons of the inner formula outwards.
template <>
struct inner_call<traced> {
  template <class F, class... X>
  static traced run(const F& f, const X&... x) {
    const auto v = f.numbers(x...);
    traced y = f.template with_all<traced>([&f](const auto&... z) { return f.unchecked(z...); }, x...);
    if (const fault bad = f.check(v.data()); bad && !y.fault.set()) {
      y.value = no_number;
      if (bad.kind == fault::what::relation) {
        y.fault = {f.result.name, {}, f.text(bad.index), 0.0, {}};
      } else {
        const auto& a = f.args[static_cast<std::size_t>(bad.index)];
        y.fault = {f.result.name, a.name, "outside its permitted range", v[static_cast<std::size_t>(bad.index)], a.unit.symbol};
      }
    }
    if (!y.doubt.set()) y.doubt = f.trace(v.data()).doubt;
    return y;
  }
};
/// A formula inside a formula: no second exception, but its ranges count (outside: no number).
template <class F, class... X>
constexpr auto call(const F& f, const X&... x) {
  return inner_call<widest_t<X...>>::run(f, x...);
}

/// Names a step of the working. For numbers it is the identity.
template <class T>
constexpr const T& let(std::string_view, const unit_t&, const T& x) { return x; }
/// A root by a fixed number of Newton steps. `residual(x)` returns {value, slope}; the working prints the equation solved.
template <int Steps, class T, class Start, class R>
constexpr auto root(std::string_view, const unit_t&, const Start& start, const R& residual, const T&) {
  const auto step = [&residual](const auto& x) {
    const auto [g, slope] = residual(x);
    return x - g / slope;
  };
  const auto begin = static_cast<widest_t<T, Start>>(start);
  using S = std::remove_cvref_t<decltype(step(begin))>;  // T, unless a step adds to what a number carries
  S x = static_cast<S>(begin);
  for (int i = 0; i < Steps; ++i) x = static_cast<S>(step(x));
  return x;
}
// Conversions of unit, by name, so that the working carries dimensions.
template <class T> constexpr T milli(const T& x) { return divided_by(x, 1000.0); }
template <class T> constexpr T micro(const T& x) { return divided_by(x, 1e6); }
template <class T> constexpr T kilo(const T& x) { return x * 1000.0; }
template <class T> constexpr T mega(const T& x) { return x * 1e6; }
template <class T> constexpr T percent(const T& x) { return divided_by(x, 100.0); }         ///< per cent to a ratio
template <class T> constexpr T in_percent(const T& x) { return x * 100.0; }      ///< a ratio to per cent
template <class T> constexpr T in_milli(const T& x) { return x * 1000.0; }       ///< m to mm, m³ to l, V to mV
template <class T> constexpr T in_micro(const T& x) { return x * 1e6; }          ///< m² to mm²
template <class T> constexpr T hourly(const T& x) { return divided_by(x, 3600.0); }         ///< 1/h to 1/s
template <class T> constexpr T in_hourly(const T& x) { return x * 3600.0; }      ///< 1/s to 1/h
template <class T> constexpr T kelvin(const T& t) { return t + 273.15; }         ///< °C to K
template <class T> constexpr T celsius(const T& t) { return t - 273.15; }        ///< K to °C
template <class T> constexpr T from_zero(const T& t) { return t; }               ///< °C as a difference from 0 °C, in K
template <class T> constexpr T at_celsius(const T& t) { return t; }              ///< K above 0 °C as a temperature in °C
template <class T> constexpr T magnitude(const T& x, const unit_t&) { return x; }///< the number alone, in that unit
template <class T> constexpr T attach(const T& x, const unit_t&) { return x; }   ///< gives a number its unit

/// A subject's list: one line a formula, check or model.
template <const auto&... Entry>
struct list {
  static constexpr std::size_t size = sizeof...(Entry);
};

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Exact money: fractions of 128 bits, amounts in whole minor units, currencies, and rounding by named rules. No binary floating point.
// Subject: price.
#pragma once
#include <array>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <string_view>
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

__extension__ typedef __int128 wide;            ///< what products of amounts and rates are held in
__extension__ typedef unsigned __int128 wider;  ///< its magnitude

namespace detail {
[[noreturn]] inline void too_large() { throw range_error("the numbers are too large for exact money"); }
constexpr wider magnitude(wide x) { return x < 0 ? wider(0) - static_cast<wider>(x) : static_cast<wider>(x); }
constexpr wider common_divisor(wider a, wider b) {
  while (b != 0) {
    if ((a >> 64) == 0 && (b >> 64) == 0) {  // two words are enough: an ordinary division
      auto x = static_cast<std::uint64_t>(a), y = static_cast<std::uint64_t>(b);
      while (y != 0) {
        const std::uint64_t rest = x % y;
        x = y;
        y = rest;
      }
      return x;
    }
    const wider rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}
constexpr wide times(wide a, wide b) {
  wide c = 0;
  if (__builtin_mul_overflow(a, b, &c)) too_large();
  return c;
}
constexpr wide plus(wide a, wide b) {
  wide c = 0;
  if (__builtin_add_overflow(a, b, &c)) too_large();
  return c;
}
constexpr wide power_of_ten(int n) {
  wide x = 1;
  for (int i = 0; i < n; ++i) x = times(x, 10);
  return x;
}
inline std::string whole_text(wide x) {
  std::string digits;
  wider m = magnitude(x);
  do digits.insert(digits.begin(), static_cast<char>('0' + static_cast<int>(m % 10)));
  while ((m /= 10) != 0);
  return (x < 0 ? "-" : "") + digits;
}
}  // namespace detail

// ---- fractions ---------------------------------------------------------------------------------------------------------

/// A fraction in lowest terms. Sums and products are exact, or an error that says that they are too large; nothing is ever rounded.
class exact {
 public:
  constexpr exact() = default;
  constexpr exact(std::int64_t whole) : top_(whole) {}
  constexpr exact(wide top, wide bottom) : top_(top), bottom_(bottom) {
    if (bottom_ == 0) throw range_error("a division by zero");
    const wider common = detail::common_divisor(detail::magnitude(top_), detail::magnitude(bottom_));
    if (common > 1) top_ /= static_cast<wide>(common), bottom_ /= static_cast<wide>(common);
    if (bottom_ < 0) top_ = detail::times(top_, -1), bottom_ = detail::times(bottom_, -1);
  }
  constexpr wide top() const { return top_; }
  constexpr wide bottom() const { return bottom_; }
  constexpr bool whole() const { return bottom_ == 1; }
  constexpr bool negative() const { return top_ < 0; }
  constexpr bool zero() const { return top_ == 0; }

  friend constexpr exact operator+(const exact& a, const exact& b) {
    if (a.bottom_ == b.bottom_) return {detail::plus(a.top_, b.top_), a.bottom_};
    const auto common = static_cast<wide>(detail::common_divisor(detail::magnitude(a.bottom_), detail::magnitude(b.bottom_)));
    return {detail::plus(detail::times(a.top_, b.bottom_ / common), detail::times(b.top_, a.bottom_ / common)), detail::times(a.bottom_, b.bottom_ / common)};
  }
  friend constexpr exact operator-(const exact& a, const exact& b) { return a + exact(detail::times(b.top_, -1), b.bottom_); }
  friend constexpr exact operator*(const exact& a, const exact& b) {
    const exact x(a.top_, b.bottom_), y(b.top_, a.bottom_);  // common factors go before the products are made
    return {detail::times(x.top_, y.top_), detail::times(x.bottom_, y.bottom_)};
  }
  friend constexpr exact operator/(const exact& a, const exact& b) {
    if (b.top_ == 0) throw range_error("a division by zero");
    return a * exact(b.bottom_, b.top_);
  }
  friend constexpr bool operator==(const exact& a, const exact& b) { return a.top_ == b.top_ && a.bottom_ == b.bottom_; }
  friend constexpr bool operator<(const exact& a, const exact& b) { return (a - b).negative(); }
  friend constexpr bool operator>(const exact& a, const exact& b) { return b < a; }
  friend constexpr bool operator<=(const exact& a, const exact& b) { return !(b < a); }
  friend constexpr bool operator>=(const exact& a, const exact& b) { return !(a < b); }

 private:
  wide top_ = 0, bottom_ = 1;
};
/// The nearest double or its neighbour: for statistics, never for money that is paid.
inline double to_double(const exact& x) { return static_cast<double>(x.top()) / static_cast<double>(x.bottom()); }
/// "7/47" in lowest terms; a whole number as it is.
inline std::string fraction_text(const exact& x) { return detail::whole_text(x.top()) + (x.whole() ? "" : "/" + detail::whole_text(x.bottom())); }

/// A decimal number as text: "17.5", "-3", ".5". Not an exponent, not a comma, at most 15 digits before the point and 12 after it.
inline exact decimal(std::string_view text) {
  const auto refuse = [&](std::string_view why) { throw range_error("\"" + std::string(text.substr(0, 40)) + "\" is no decimal number: " + std::string(why)); };
  std::string_view rest = text;
  const bool minus = !rest.empty() && rest[0] == '-';
  if (!rest.empty() && (rest[0] == '-' || rest[0] == '+')) rest.remove_prefix(1);
  wide top = 0;
  int before = 0, after = 0, digits = 0;
  bool point = false;
  for (const char c : rest) {
    if (c == '.' && !point) {
      point = true;
    } else if (c >= '0' && c <= '9') {
      if (point ? ++after > 12 : (before > 0 || c != '0') && ++before > 15) refuse("at most 15 digits before the point and 12 after it");
      top = top * 10 + (c - '0');
      ++digits;
    } else {
      refuse(c == ',' ? "write it with a point and without commas, such as \"1250.50\"" : "write digits and a point, such as \"17.5\"");
    }
  }
  if (digits == 0) refuse("write digits and a point, such as \"17.5\"");
  return {minus ? -top : top, detail::power_of_ten(after)};
}
/// The number with as many digits as it has, at least `least`; one without an end is cut after eight, with three points behind it.
inline std::string decimal_text(const exact& x, int least = 0) {
  int digits = least;
  exact scaled = x * exact(detail::power_of_ten(digits), 1);
  while (!scaled.whole() && digits < 12) scaled = scaled * exact(10), ++digits;
  const bool endless = !scaled.whole();
  if (endless) {
    digits = 8;
    const exact cut = x * exact(detail::power_of_ten(digits), 1);
    scaled = exact(cut.top() / cut.bottom(), 1);
  }
  std::string text = detail::whole_text(static_cast<wide>(detail::magnitude(scaled.top())));
  const auto places = static_cast<std::size_t>(digits);
  if (places > 0) {
    if (text.size() <= places) text.insert(0, places + 1 - text.size(), '0');
    text.insert(text.size() - places, ".");
  }
  return (x.negative() ? "-" : "") + text + (endless ? "..." : "");
}

// ---- rounding ----------------------------------------------------------------------------------------------------------

/// Where a fraction of a step goes. All but half_even act on the size alone, so that a credit mirrors its charge.
enum class rounding_mode : unsigned char { half_up, half_even, half_down, down, up };
inline constexpr std::string_view rounding_modes[] = {"half_up", "half_even", "half_down", "down", "up"};
inline constexpr std::string_view rounding_texts[] = {"to the nearest, a half up", "to the nearest, a half to the even one", "to the nearest, a half down", "down", "up"};

/// top / bottom as a whole number; bottom above 0.
constexpr wide rounded_quotient(wide top, wide bottom, rounding_mode mode) {
  const wider size = detail::magnitude(top), by = static_cast<wider>(bottom);
  wider whole, rest;
  if ((size >> 64) == 0 && (by >> 64) == 0) {
    const auto a = static_cast<std::uint64_t>(size), b = static_cast<std::uint64_t>(by);
    whole = a / b;
    rest = a % b;
  } else {
    whole = size / by;
    rest = size % by;
  }
  if (rest != 0) {
    const wider left = by - rest;  // the half is compared without doubling, which could overflow
    const bool above = rest > left, tie = rest == left;
    const bool away = mode == rounding_mode::up || (mode != rounding_mode::down && (above || (tie && (mode == rounding_mode::half_up || (mode == rounding_mode::half_even && whole % 2 == 1)))));
    if (away) ++whole;
  }
  return top < 0 ? -static_cast<wide>(whole) : static_cast<wide>(whole);
}
/// To a whole multiple of a step above 0.
constexpr exact rounded(const exact& x, rounding_mode mode, const exact& step = exact(1)) {
  const exact steps = x / step;
  return exact(rounded_quotient(steps.top(), steps.bottom(), mode), 1) * step;
}

// ---- currencies and amounts ------------------------------------------------------------------------------------------

/// A currency by its code, and how many digits of its unit are in use.
struct currency {
  std::array<char, 4> code{};  ///< three letters
  int digits = 2;
  constexpr std::string_view name() const { return {code.data(), 3}; }
  friend constexpr bool operator==(const currency&, const currency&) = default;
};
struct currency_row {
  std::string_view code;
  int digits;
};
inline constexpr source currency_source{"ISO 4217:2015, Codes for the representation of currencies", "list of minor units", "memory"};
/// ISO 4217, the usual ones. Others: make_currency("XYZ", digits).
inline constexpr currency_row currencies[] = {
    {"AED", 2}, {"AUD", 2}, {"BHD", 3}, {"BRL", 2}, {"CAD", 2}, {"CHF", 2}, {"CLP", 0}, {"CNY", 2}, {"CZK", 2}, {"DKK", 2}, {"EUR", 2}, {"GBP", 2}, {"HKD", 2}, {"HUF", 2},
    {"ILS", 2}, {"INR", 2}, {"IQD", 3}, {"ISK", 0}, {"JOD", 3}, {"JPY", 0}, {"KES", 2}, {"KRW", 0}, {"KWD", 3}, {"LYD", 3}, {"MXN", 2}, {"MYR", 2}, {"NGN", 2}, {"NOK", 2},
    {"NZD", 2}, {"OMR", 3}, {"PHP", 2}, {"PLN", 2}, {"RON", 2}, {"SAR", 2}, {"SEK", 2}, {"SGD", 2}, {"THB", 2}, {"TND", 3}, {"TRY", 2}, {"UAH", 2}, {"USD", 2}, {"VND", 0},
    {"ZAR", 2}};
inline currency make_currency(std::string_view code, int digits) {
  bool good = code.size() == 3;
  for (const char c : code) good = good && c >= 'A' && c <= 'Z';
  if (!good) throw range_error("currency \"" + std::string(code.substr(0, 20)) + "\": a code is three capital letters, such as \"GBP\"");
  if (digits < 0 || digits > 6) throw range_error("currency " + std::string(code) + ": digits of the minor unit: 0 to 6");
  return {{code[0], code[1], code[2], '\0'}, digits};
}
inline currency find_currency(std::string_view code) {
  for (const auto& row : currencies)
    if (row.code == code) return make_currency(row.code, row.digits);
  (void)make_currency(code, 2);  // refuses what is no code
  throw range_error("currency \"" + std::string(code) + "\" is not in the list: give its code and the number of its minor digits");
}

/// An amount in whole minor units of a currency.
struct money {
  std::int64_t minor = 0;
  currency of{};

  static money checked(wide minor, const currency& of) {
    if (minor > std::numeric_limits<std::int64_t>::max() || minor < std::numeric_limits<std::int64_t>::min()) detail::too_large();
    return {static_cast<std::int64_t>(minor), of};
  }
  /// An exact amount in major units, rounded once.
  static money from(const exact& amount, const currency& of, rounding_mode mode) {
    return checked(rounded(amount * exact(detail::power_of_ten(of.digits), 1), mode).top(), of);
  }
  exact amount() const { return exact(minor, detail::power_of_ten(of.digits)); }
  /// "338.98"
  std::string digits() const { return decimal_text(amount(), of.digits); }
  /// "338.98 GBP"
  std::string text() const { return digits() + " " + std::string(of.name()); }
  friend money operator+(const money& a, const money& b) {
    if (!(a.of == b.of)) throw relation_error("amounts in " + std::string(a.of.name()) + " and " + std::string(b.of.name()) + " cannot be added");
    return checked(wide(a.minor) + b.minor, a.of);
  }
  friend money operator-(const money& a, const money& b) {
    if (!(a.of == b.of)) throw relation_error("amounts in " + std::string(a.of.name()) + " and " + std::string(b.of.name()) + " cannot be subtracted");
    return checked(wide(a.minor) - b.minor, a.of);
  }
  friend bool operator==(const money&, const money&) = default;
};

// ---- tax ---------------------------------------------------------------------------------------------------------------

/// What is rounded: the tax of each line, of each rate, or of the whole.
enum class tax_scope : unsigned char { line, rate, total };
inline constexpr std::string_view tax_scopes[] = {"line", "rate", "total"};
/// A rule of rounding tax: what is rounded, how, to which step in minor units; a sum that is not whole then is rounded by `total`.
struct tax_rounding {
  std::string_view key, text;
  tax_scope scope = tax_scope::rate;
  rounding_mode mode = rounding_mode::half_up;
  std::int64_t step_top = 1, step_bottom = 1;
  rounding_mode total = rounding_mode::half_up;
  bool retailers = true;  ///< whether a retailer may use it
  source from{};
  constexpr exact step() const { return exact(step_top, step_bottom); }
};
inline constexpr source hmrc_half_up{"HMRC internal manual VAT Trader Records", "VATREC12030: below half a penny down, half a penny or more up", "regulation"};
inline constexpr source hmrc_invoice{"HMRC internal manual VAT Trader Records; VAT Guide Notice 700 paragraph 17.5", "VATREC12010: invoice traders only, not retailers (VATREC12020)", "regulation"};
inline constexpr source common_rounding{"", "", "common-practice"};
inline constexpr tax_rounding tax_roundings[] = {
    {"line_half_up", "tax of each line to the nearest minor unit, a half up", tax_scope::line, rounding_mode::half_up, 1, 1, rounding_mode::half_up, true, hmrc_half_up},
    {"line_down_tenth", "tax of each line down to a tenth of a minor unit, its sum down to a whole one", tax_scope::line, rounding_mode::down, 1, 10, rounding_mode::down, false, hmrc_invoice},
    {"line_nearest_half", "tax of each line to the nearest half of a minor unit, its sum down to a whole one", tax_scope::line, rounding_mode::half_up, 1, 2, rounding_mode::down, false, hmrc_invoice},
    {"line_half_even", "tax of each line to the nearest minor unit, a half to the even one", tax_scope::line, rounding_mode::half_even, 1, 1, rounding_mode::half_even, true, common_rounding},
    {"rate_half_up", "tax of the sum of each rate to the nearest minor unit, a half up", tax_scope::rate, rounding_mode::half_up, 1, 1, rounding_mode::half_up, true, hmrc_half_up},
    {"rate_half_even", "tax of the sum of each rate to the nearest minor unit, a half to the even one", tax_scope::rate, rounding_mode::half_even, 1, 1, rounding_mode::half_even, true, common_rounding},
    {"total_half_up", "tax of the whole to the nearest minor unit, a half up", tax_scope::total, rounding_mode::half_up, 1, 1, rounding_mode::half_up, true, hmrc_half_up},
    {"total_half_even", "tax of the whole to the nearest minor unit, a half to the even one", tax_scope::total, rounding_mode::half_even, 1, 1, rounding_mode::half_even, true, common_rounding},
    {"total_down", "tax of the whole down to a whole minor unit", tax_scope::total, rounding_mode::down, 1, 1, rounding_mode::down, false, hmrc_invoice}};
inline std::string tax_rounding_keys() {
  std::string text;
  for (const auto& r : tax_roundings) text += (text.empty() ? "\"" : ", \"") + std::string(r.key) + "\"";
  return text;
}
inline const tax_rounding& find_tax_rounding(std::string_view key) {
  for (const auto& r : tax_roundings)
    if (r.key == key) return r;
  throw rule_error("rounding = \"" + std::string(key.substr(0, 40)) + "\" is not one of " + tax_rounding_keys());
}
/// A rate in per cent of the price without tax: from 0 to 100.
inline void demand_tax_rate(const exact& percent, std::string_view what) {
  if (percent.negative()) throw range_error(std::string(what) + ": a rate of " + decimal_text(percent) + " % is below 0 %");
  if (percent > exact(100)) throw range_error(std::string(what) + ": a rate of " + decimal_text(percent) + " % is above 100 %; the rate is what is added to the price without tax (120 in all: 20)");
}
/// The share of a price with tax that is tax: r/(100 + r), in lowest terms.
inline exact tax_fraction(const exact& percent) {
  demand_tax_rate(percent, "vat_from_gross");
  return percent / (exact(100) + percent);
}

}  // namespace price
}  // namespace v1
}  // namespace makegood

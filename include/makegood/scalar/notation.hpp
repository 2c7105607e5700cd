// SPDX-License-Identifier: MIT
// How numbers, symbols, units and expressions are written: as text and as LaTeX, both asked for by the same walk over a tree.
// Core: the working of a formula is written with it, on demand. Includes the standard library only.
#pragma once
#include <charconv>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../math.hpp"

namespace makegood {
inline namespace v1 {
namespace notation {

// ---- characters ------------------------------------------------------------------------------------------------------

/// Takes the first character (UTF-8) off the text; 0 at the end.
inline char32_t next_character(std::string_view& text) {
  if (text.empty()) return 0;
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const std::size_t length = byte(0) < 0x80 ? 1 : byte(0) < 0xe0 ? 2 : byte(0) < 0xf0 ? 3 : 4;
  char32_t c = length == 1 ? byte(0) : byte(0) & (0xffu >> (length + 1));
  for (std::size_t i = 1; i < length && i < text.size(); ++i) c = c << 6 | (byte(i) & 0x3fu);
  text.remove_prefix(length < text.size() ? length : text.size());
  return c;
}
inline char32_t first_character(std::string_view text) { return next_character(text); }
constexpr bool is_letter(char32_t c) { return (c >= U'a' && c <= U'z') || (c >= U'A' && c <= U'Z'); }
constexpr bool is_digit(char32_t c) { return c >= U'0' && c <= U'9'; }
/// The digit or sign that is written high ("²"), or 0.
constexpr char raised(char32_t c) {
  if (c == U'²') return '2';
  if (c == U'³') return '3';
  if (c == U'¹') return '1';
  if (c == U'⁻') return '-';
  if (c == U'⁰' || (c >= U'⁴' && c <= U'⁹')) return static_cast<char>('0' + (c - U'⁰'));
  return 0;
}
inline std::string raise(int n) {
  static constexpr std::string_view high[] = {"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
  std::string text;
  for (const char c : std::to_string(n)) text += c == '-' ? std::string_view("⁻") : high[c - '0'];
  return text;
}
/// The LaTeX command of a Greek letter, or nothing.
inline std::string greek(char32_t c) {
  static constexpr std::string_view names[] = {
      "alpha", "beta", "gamma", "delta", "varepsilon", "zeta", "eta", "theta", "iota", "kappa", "lambda", "mu", "nu", "xi", "o", "pi", "rho",
      "varsigma", "sigma", "tau", "upsilon", "varphi", "chi", "psi", "omega"};
  if (c == U'µ') c = U'μ';
  const bool capital = c >= U'Α' && c <= U'Ω';
  if (!capital && (c < U'α' || c > U'ω')) return {};
  std::string_view name = names[c - (capital ? U'Α' : U'α')];
  if (!capital) return name == "o" ? std::string("o") : "\\" + std::string(name);
  // the capitals that look like Latin ones have no command
  static constexpr std::string_view latin[] = {"A", "B", "", "", "E", "Z", "H", "", "I", "K", "", "M", "N", "", "O", "", "P", "", "", "T", "", "", "X", "", ""};
  if (const auto same = latin[c - U'Α']; !same.empty()) return "\\mathrm{" + std::string(same) + "}";
  if (name.starts_with("var")) name.remove_prefix(3);
  std::string command = "\\" + std::string(name);
  command[1] = static_cast<char>(command[1] - 'a' + 'A');
  return command;
}

// ---- numbers ---------------------------------------------------------------------------------------------------------

/// Numbers with more digits before the point are written with a power of ten.
inline constexpr int most_whole_digits = 10;
/// A number as a reader sees it: sign, significant digits without zeros at the end, and the power of ten of the first one.
struct decimal {
  bool negative = false;
  std::string digits = "0";
  int exponent = 0;
  friend bool operator==(const decimal&, const decimal&) = default;
};
/// `digits` significant digits, never fewer than the whole units up to 10 of them; 0: the shortest that read back the same. The number
/// must be finite.
inline decimal decimal_of(double x, int digits) {
  decimal d;
  if (x == 0.0) return d;
  char buffer[40];
  const auto end = digits > 0 ? std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::scientific, digits - 1).ptr
                              : std::to_chars(buffer, buffer + sizeof buffer, x, std::chars_format::scientific).ptr;
  const std::string_view text(buffer, static_cast<std::size_t>(end - buffer));
  const auto e = text.find('e');
  d.negative = x < 0;
  d.digits.clear();
  for (const char c : text.substr(0, e))
    if (is_digit(static_cast<unsigned char>(c))) d.digits += c;
  while (d.digits.size() > 1 && d.digits.back() == '0') d.digits.pop_back();
  const bool below_one = text[e + 1] == '-';
  for (const char c : text.substr(e + 2)) d.exponent = 10 * d.exponent + (c - '0');
  if (below_one) d.exponent = -d.exponent;
  if (digits > 0 && d.exponent >= digits && d.exponent < most_whole_digits) return decimal_of(x, d.exponent + 1);
  return d;
}
/// The number that the digits stand for, to the last place or one beside it.
inline double number_of(const decimal& d) {
  double m = 0.0;
  for (const char c : d.digits) m = 10.0 * m + (c - '0');
  int e = d.exponent - static_cast<int>(d.digits.size()) + 1;
  double scale = 1.0;
  for (int i = e < 0 ? -e : e; i > 0; --i) scale *= 10.0;
  m = e < 0 ? m / scale : m * scale;
  return d.negative ? -m : m;
}
/// The number that is printed with so many digits.
inline double rounded(double x, int digits) {
  if (!is_finite(x) || x == 0.0) return x;
  const decimal whole = decimal_of(x, 0);
  const decimal shown = decimal_of(x, digits);
  return shown == whole ? x : number_of(shown);
}

// ---- dialects --------------------------------------------------------------------------------------------------------

/// A written part of an expression, and how tightly it holds together.
struct piece {
  enum : int { sum = 1, quotient, product, power, function, atom };
  std::string text;
  int level = atom;
};
enum class relation : unsigned char { below, at_most, above, at_least };

/// A way of writing. The walk over the tree decides on order and brackets; a dialect has the signs.
class dialect {
 public:
  piece number(double x, int digits = 0) const {
    if (!is_finite(x)) return {words("no number"), piece::atom};
    const decimal d = decimal_of(x, digits);
    piece p;
    const bool plain = d.exponent >= -4 && d.exponent < most_whole_digits;
    const int point = plain ? d.exponent : 0;  // digits before the point, less one
    std::string whole, rest;
    if (point < 0) {
      whole = "0";
      rest = std::string(static_cast<std::size_t>(-point - 1), '0') + d.digits;
    } else {
      const auto n = static_cast<std::size_t>(point) + 1;
      whole = d.digits.substr(0, n);
      whole.resize(n, '0');
      if (d.digits.size() > n) rest = d.digits.substr(n);
    }
    if (whole.size() > 4)
      for (std::size_t at = whole.size() - 3; at > 0; at -= at > 3 ? 3 : at) whole.insert(at, "'");
    for (const char c : whole) p.text += c == '\'' ? std::string(thousands()) : std::string(1, c);
    if (!rest.empty()) p.text += "." + rest;
    if (!plain) {
      p.text = p.text == "1" ? ten_to(d.exponent) : p.text + std::string(times_ten()) + ten_to(d.exponent);
      p.level = piece::product;
    }
    if (d.negative) p.text.insert(0, minus());
    return p;
  }
  piece quantity(double x, std::string_view unit_symbol, int digits = 0) const {
    piece p = number(x, digits);
    if (unit_symbol.empty()) return p;
    p.text += unit(unit_symbol);
    if (p.level > piece::product) p.level = piece::product;
    return p;
  }
  /// In brackets unless it holds together at least so tightly; behind a sign and under an exponent nothing may begin with a minus.
  std::string held(const piece& p, int at_least, bool right = false) const {
    return p.level < at_least || (right && p.text.starts_with(minus())) ? brackets(p.text) : p.text;
  }
  piece sum(const piece& a, const piece& b) const { return {held(a, piece::sum) + " + " + held(b, piece::sum, true), piece::sum}; }
  piece difference(const piece& a, const piece& b) const {
    return {held(a, piece::sum) + " " + std::string(minus()) + " " + held(b, piece::quotient, true), piece::sum};
  }
  piece negative(const piece& a) const { return {std::string(minus()) + held(a, piece::quotient, true), piece::sum}; }
  piece product(const piece& a, const piece& b) const {
    return {held(a, piece::product) + std::string(dot()) + held(b, piece::product, true), piece::product};
  }
  piece raised_to(const piece& a, double exponent) const { return {held(a, piece::atom, true) + high(exponent), piece::power}; }

  virtual std::string_view minus() const = 0;
  virtual std::string_view dot() const = 0;
  virtual std::string name(std::string_view symbol) const = 0;
  virtual std::string words(std::string_view text) const = 0;
  /// A line in a fraction sets its parts apart by itself, so that they need no brackets; a fraction in a fraction has a stroke.
  virtual bool fraction_bar(bool inside_a_fraction) const = 0;
  virtual piece quotient(const piece& a, const piece& b, bool bar) const = 0;
  virtual piece function(std::string_view name, const std::string& x) const = 0;
  virtual std::string_view sign(relation r) const = 0;
  /// Pairs of expression and condition; the last has none.
  virtual piece cases(const std::vector<std::pair<std::string, std::string>>& all, std::string_view word_before) const = 0;
  virtual std::string brackets(const std::string& inside) const = 0;

 protected:
  constexpr dialect() = default;
  ~dialect() = default;
  virtual std::string_view thousands() const = 0;
  virtual std::string_view times_ten() const = 0;
  virtual std::string ten_to(int exponent) const = 0;
  virtual std::string unit(std::string_view symbol) const = 0;
  virtual std::string high(double exponent) const = 0;
  /// 0.0833... is written as 1/12.
  static bool better_inverted(double x) {
    return decimal_of(x, 0).digits.size() > 8 && decimal_of(1.0 / x, 12).digits.size() <= 4;
  }
};

class text_dialect final : public dialect {
 public:
  std::string_view minus() const override { return "−"; }
  std::string_view dot() const override { return " · "; }
  std::string name(std::string_view symbol) const override { return std::string(symbol); }
  std::string words(std::string_view text) const override { return std::string(text); }
  bool fraction_bar(bool) const override { return false; }
  piece quotient(const piece& a, const piece& b, bool) const override {
    return {held(a, piece::product) + " / " + held(b, piece::power, true), piece::quotient};
  }
  piece function(std::string_view name, const std::string& x) const override { return {std::string(name) + "(" + x + ")", piece::function}; }
  std::string_view sign(relation r) const override {
    static constexpr std::string_view signs[] = {" < ", " ≤ ", " > ", " ≥ "};
    return signs[static_cast<int>(r)];
  }
  piece cases(const std::vector<std::pair<std::string, std::string>>& all, std::string_view word_before) const override {
    std::string text = "{";
    for (const auto& [what, when] : all) {
      if (text.size() > 1) text += "; ";
      text += when.empty() ? "otherwise " + what : what + " " + std::string(word_before) + " " + when;
    }
    return {text + "}", piece::atom};
  }
  std::string brackets(const std::string& inside) const override { return "(" + inside + ")"; }

 private:
  std::string_view thousands() const override { return "\u202f"; }
  std::string_view times_ten() const override { return "·"; }
  std::string ten_to(int exponent) const override { return "10" + raise(exponent); }
  std::string unit(std::string_view symbol) const override { return " " + std::string(symbol); }
  std::string high(double exponent) const override {
    if (exponent == static_cast<int>(exponent)) return raise(static_cast<int>(exponent));
    if (better_inverted(exponent)) return "^(1/" + number(1.0 / exponent, 12).text + ")";
    return "^" + held(number(exponent), piece::atom, true);
  }
};

class latex_dialect final : public dialect {
 public:
  std::string_view minus() const override { return "-"; }
  std::string_view dot() const override { return " \\cdot "; }
  bool fraction_bar(bool inside_a_fraction) const override { return !inside_a_fraction; }
  piece quotient(const piece& a, const piece& b, bool bar) const override {
    if (bar) return {"\\frac{" + a.text + "}{" + b.text + "}", piece::product};
    return {held(a, piece::product) + " / " + held(b, piece::power, true), piece::quotient};
  }
  piece function(std::string_view name, const std::string& x) const override {
    if (name == "√") return {"\\sqrt{" + x + "}", piece::function};
    if (name == "∛") return {"\\sqrt[3]{" + x + "}", piece::function};
    if (name == "abs") return {"\\left|" + x + "\\right|", piece::atom};
    return {command(name) + brackets(x), piece::function};
  }
  std::string_view sign(relation r) const override {
    static constexpr std::string_view signs[] = {" < ", " \\leq ", " > ", " \\geq "};
    return signs[static_cast<int>(r)];
  }
  piece cases(const std::vector<std::pair<std::string, std::string>>& all, std::string_view word_before) const override {
    bool tall = false;  // fractions as large as outside, and room between the lines
    for (const auto& [what, when] : all) tall = tall || what.find("\\frac") != std::string::npos;
    std::string text = "\\begin{cases}";
    std::string_view between = " ";
    for (const auto& [what, when] : all) {
      text += std::string(between) + (tall ? "\\displaystyle " : "") + what + " & ";
      text += when.empty() ? words("otherwise") : words(std::string(word_before) + " ") + when;
      between = tall ? " \\\\[1.5ex] " : " \\\\ ";
    }
    return {text + " \\end{cases}", piece::atom};
  }
  std::string brackets(const std::string& inside) const override { return "\\left(" + inside + "\\right)"; }
  std::string unit_alone(std::string_view symbol) const { return upright(symbol); }

  /// "ΔU", "I_b", "ρ_20", "ρ20", "R_1+R_2", "cos φ", "k²S²", "π/4", "Re", "lower limit": by the characters.
  std::string name(std::string_view symbol) const override {
    if (const auto space = symbol.find(' '); space != std::string_view::npos && !is_command(symbol.substr(0, space))) return words(symbol);
    std::string text;
    const auto add = [&](const std::string& more) {  // a command ends where no letter follows
      if (!more.empty() && is_letter(static_cast<unsigned char>(more[0])) && ends_in_command(text)) text += ' ';
      text += more;
    };
    while (!symbol.empty()) {
      const char32_t c = next_character(symbol);
      if (is_letter(c)) {
        std::string word(1, static_cast<char>(c));
        while (is_letter(first_character(symbol))) word += static_cast<char>(next_character(symbol));
        add(word.size() == 1 ? word : is_command(word) ? "\\" + word : "\\mathrm{" + word + "}");
        add(index(symbol, false));
      } else if (const std::string letter = greek(c); !letter.empty()) {
        add(letter);
        add(index(symbol, false));
      } else if (c == U'_') {
        add(index(symbol, true));
      } else if (raised(c)) {
        add("^{" + exponent(c, symbol) + "}");
      } else if (c == U'√') {
        std::string under;
        while (is_digit(first_character(symbol)) || is_letter(first_character(symbol))) under += static_cast<char>(next_character(symbol));
        add("\\sqrt{" + under + "}");
      } else if (c == U'′') {
        add("'");
      } else if (c == U'−' || c == U'+' || c == U'-') {
        add(c == U'+' ? " + " : " - ");
      } else if (c == U'·') {
        add(" \\cdot ");
      } else if (c == U' ') {
        add(ends_in_command(text) ? " " : "\\ ");
      } else if (c < 0x80) {
        add(std::string(1, static_cast<char>(c)));
      }
    }
    return text;
  }
  /// Upright text, with every character that LaTeX would take for something else.
  std::string words(std::string_view text) const override {
    std::string out = "\\text{";
    while (!text.empty()) {
      const std::string_view before = text;
      const char32_t c = next_character(text);
      if (c == U'\\') out += "\\textbackslash{}";
      else if (c == U'~') out += "$\\sim$";
      else if (c == U'^') out += "$\\hat{\\ }$";
      else if (c == U'{' || c == U'}' || c == U'$' || c == U'&' || c == U'#' || c == U'%' || c == U'_') (out += '\\') += static_cast<char>(c);
      else if (const std::string letter = greek(c); !letter.empty()) out += "$" + letter + "$";
      else if (raised(c)) out += "$^{" + exponent(c, text) + "}$";
      else if (const std::string_view s = mathematical(c); !s.empty()) out += "$" + std::string(s) + "$";
      else out += before.substr(0, before.size() - text.size());
    }
    return out + "}";
  }

 private:
  std::string_view thousands() const override { return "\\,"; }
  std::string_view times_ten() const override { return " \\cdot "; }
  std::string ten_to(int exponent) const override { return "10^{" + std::to_string(exponent) + "}"; }
  std::string unit(std::string_view symbol) const override { return "\\," + upright(symbol); }
  std::string high(double exponent) const override {
    if (better_inverted(exponent)) return "^{1/" + number(1.0 / exponent, 12).text + "}";
    return "^{" + number(exponent).text + "}";
  }

  static bool is_command(std::string_view word) {
    for (const std::string_view known : {"ln", "lg", "exp", "sin", "cos", "tan", "tanh", "min", "max"})
      if (word == known) return true;
    return false;
  }
  static std::string command(std::string_view word) {
    return is_command(word) ? "\\" + std::string(word) : "\\operatorname{" + std::string(word) + "}";
  }
  static bool ends_in_command(std::string_view text) {
    std::size_t n = text.size();
    while (n > 0 && is_letter(static_cast<unsigned char>(text[n - 1]))) --n;
    return n > 0 && n < text.size() && text[n - 1] == '\\';
  }
  static std::string_view mathematical(char32_t c) {
    switch (c) {
      case U'√': return "\\surd";
      case U'∛': return "\\sqrt[3]{}";
      case U'·': return "\\cdot";
      case U'×': return "\\times";
      case U'−': return "-";
      case U'≤': return "\\leq";
      case U'≥': return "\\geq";
      case U'°': return "^{\\circ}";
      case U'′': return "'";
      default: return {};
    }
  }
  /// "²" and what is raised behind it.
  static std::string exponent(char32_t first, std::string_view& rest) {
    std::string text(1, raised(first));
    while (raised(first_character(rest))) text += raised(next_character(rest));
    return text;
  }
  /// What stands low: behind "_" a word, a number or a sign; without it a number alone.
  static std::string index(std::string_view& rest, bool any) {
    std::string low, word;
    const auto end_word = [&] {
      if (!word.empty()) low += "\\mathrm{" + word + "}";
      word.clear();
    };
    for (;;) {
      const char32_t c = first_character(rest);
      if (is_digit(c)) {
        end_word();
        low += static_cast<char>(c);
      } else if (any && is_letter(c)) {
        word += static_cast<char>(c);
      } else if (any && !greek(c).empty()) {
        end_word();
        low += greek(c) + " ";
      } else if (any && low.empty() && word.empty() && (c == U'+' || c == U'-')) {
        low += static_cast<char>(c);
      } else {
        break;
      }
      next_character(rest);
    }
    end_word();
    return low.empty() ? low : "_{" + low + "}";
  }
  /// "mV/(A·m)", "A·√s/mm²", "1/K²", "°C", "%".
  static std::string upright(std::string_view symbol) {
    std::string text;
    const bool inverse = symbol.starts_with("1/") && symbol.find('/', 2) == std::string_view::npos && symbol.find("·") == std::string_view::npos;
    if (inverse) symbol.remove_prefix(2);
    bool has_exponent = false;
    while (!symbol.empty()) {
      const char32_t c = next_character(symbol);
      if (raised(c)) {
        text += (inverse ? "^{-" : "^{") + exponent(c, symbol) + "}";
        has_exponent = true;
      } else if (c == U'°') text += "{}^{\\circ}";
      else if (c == U'·') text += "{\\cdot}";
      else if (c == U'%') text += "\\%";
      else if (c == U'√') text += "\\sqrt{" + std::string(1, static_cast<char>(next_character(symbol))) + "}";
      else if (const std::string letter = greek(c); !letter.empty()) text += letter + (is_letter(first_character(symbol)) ? " " : "");
      else if (c < 0x80) text += static_cast<char>(c);
    }
    return "\\mathrm{" + text + (inverse && !has_exponent ? "^{-1}" : "") + "}";
  }
};

inline constexpr text_dialect as_text{};
inline constexpr latex_dialect as_latex{};

/// A long line of LaTeX, broken before the signs of its outermost sum.
inline std::string broken(std::string_view line, std::size_t width) {
  std::string out;
  std::size_t seen = 0;  // characters that print, more or less; cases stand one under the other and count as nothing
  int depth = 0, cases = 0;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const std::string_view rest = line.substr(i);
    if (rest.starts_with("\\left(") || rest.starts_with("\\left|")) ++depth;
    if (rest.starts_with("\\right")) --depth;
    const int environment = rest.starts_with("\\begin") ? 1 : rest.starts_with("\\end") ? -1 : 0;
    depth += environment;
    cases += environment;
    if (line[i] == '{') ++depth;
    if (line[i] == '}') --depth;
    if (depth == 0 && seen > width && rest.size() > width / 3 && (rest.starts_with(" + ") || rest.starts_with(" - "))) {
      out += " \\\\\n&\\quad{}";
      seen = 0;
    }
    out += line[i];
    if (line[i] == '\\') {
      while (i + 1 < line.size() && is_letter(static_cast<unsigned char>(line[i + 1]))) out += line[++i];
      seen += cases == 0;
    } else if (cases == 0 && line[i] != '{' && line[i] != '}' && line[i] != ' ') {
      ++seen;
    }
  }
  return out;
}
inline constexpr std::size_t line_width = 70;

/// How tightly a symbol holds together: "R_1+R_2" is a sum, "π/4" a quotient, "k²S²" and "I²t" a product.
inline int level_of_symbol(std::string_view symbol) {
  int level = piece::atom;
  char32_t before = 0;
  bool had_power = false;
  const auto at_most = [&](int l) { level = l < level ? l : level; };
  while (!symbol.empty()) {
    const char32_t c = next_character(symbol);
    if ((c == U'+' || c == U'-' || c == U'−') && before != U'_') at_most(piece::sum);
    else if (c == U'/') at_most(piece::quotient);
    else if (c == U'·' || (had_power && (is_letter(c) || !greek(c).empty()))) at_most(piece::product);
    else if (c == U' ' || c == U'√') at_most(piece::function);
    else if (raised(c)) {
      had_power = true;
      at_most(piece::power);
    }
    before = c;
  }
  return level;
}

}  // namespace notation
}  // namespace v1
}  // namespace makegood

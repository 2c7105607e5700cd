// SPDX-License-Identifier: MIT
// The worked steps: how numbers, symbols and units are written, digits, zeros, branches, inner formulas; as text and as LaTeX.
// tests/python/test_working.py works the printed lines of every formula out.
#include <doctest/doctest.h>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/rules/all.hpp>
#include <makegood/sensing/list.hpp>

using namespace makegood;
using notation::as_latex;
using notation::as_text;

namespace {

constexpr source nowhere{"a source", "clause 1"};
constexpr arg number_arg(std::string_view name, std::string_view symbol) { return {name, symbol, unit::one, any_number, "a number"}; }
inline constexpr auto inner = formula(out{"inner", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b")), nowhere,
                                      [](auto a, auto b) { return let("x", unit::one, a + b) * a; });
inline constexpr auto outer = formula(out{"outer", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b")), nowhere, [](auto a, auto b) {
  auto p = call(inner, a, b);
  auto q = call(inner, a, b);
  auto r = call(inner, b + 1.0, b);
  return p * q - r;
});
template <class F>
std::vector<step> steps_of(const F& f, std::initializer_list<double> x) {
  const working w = work(f, x.begin());
  CHECK(w.dimension_error == "");
  return w.steps;
}

}  // namespace

TEST_CASE("numbers are written for a reader") {
  struct row {
    double x;
    int digits;
    const char *text, *latex;
  };
  for (const row& r : std::initializer_list<row>{{0.0, 0, "0", "0"}, {-0.0, 0, "0", "0"}, {44.0, 0, "44", "44"}, {-5.0, 0, "−5", "-5"},
                                                 {1000.0, 0, "1000", "1000"}, {37530.0, 0, "37\u202f530", "37\\,530"},
                                                 {1234567.25, 0, "1\u202f234\u202f567.25", "1\\,234\\,567.25"}, {-12345.678, 7, "−12\u202f345.68", "-12\\,345.68"},
                                                 {0.00393, 0, "0.00393", "0.00393"}, {1.2e-05, 0, "1.2·10⁻⁵", "1.2 \\cdot 10^{-5}"},
                                                 {-5.775e-7, 0, "−5.775·10⁻⁷", "-5.775 \\cdot 10^{-7}"}, {1e-9, 0, "10⁻⁹", "10^{-9}"},
                                                 {1e12, 0, "10¹²", "10^{12}"}, {2.5e21, 0, "2.5·10²¹", "2.5 \\cdot 10^{21}"},
                                                 {2.0 / 3.0, 6, "0.666667", "0.666667"}, {999999.4, 6, "999\u202f999", "999\\,999"}, {3062157.0096, 6, "3\u202f062\u202f157", "3\\,062\\,157"}, {3.06215e10, 3, "3.06·10¹⁰", "3.06 \\cdot 10^{10}"}}) {
    CHECK(as_text.number(r.x, r.digits).text == r.text);
    CHECK(as_latex.number(r.x, r.digits).text == r.latex);
  }
  CHECK(as_text.quantity(0.31, "mΩ/m").text == "0.31 mΩ/m");
  CHECK(notation::rounded(2.0 / 3.0, 3) == doctest::Approx(0.667).epsilon(1e-15));
  CHECK(notation::rounded(-1234567.6, 2) == -1234568.0);
}

TEST_CASE("symbols, units and words in LaTeX follow rules") {
  const std::pair<const char*, const char*> symbols[] = {
      {"I", "I"}, {"I_b", "I_{\\mathrm{b}}"}, {"ρ20", "\\rho_{20}"}, {"ρ_20", "\\rho_{20}"}, {"ΔU", "\\Delta U"}, {"θ_w", "\\theta_{\\mathrm{w}}"},
      {"R1+R2", "R_{1} + R_{2}"}, {"R_1+R_2", "R_{1} + R_{2}"}, {"p_+", "p_{+}"}, {"cos φ", "\\cos \\varphi"}, {"ln p", "\\ln p"},
      {"k²S²", "k^{2}S^{2}"}, {"I²t", "I^{2}t"}, {"π/4", "\\pi/4"}, {"√3", "\\sqrt{3}"}, {"Re", "\\mathrm{Re}"}, {"PDCF", "\\mathrm{PDCF}"},
      {"C_min", "C_{\\mathrm{min}}"}, {"Δ_t", "\\Delta_{\\mathrm{t}}"}, {"f′", "f'"}, {"p_s′", "p_{\\mathrm{s}}'"}, {"µ", "\\mu"}, {"Α", "\\mathrm{A}"},
      {"I_Δn", "I_{\\Delta \\mathrm{n}}"}, {"lower limit", "\\text{lower limit}"}, {"10⁶", "10^{6}"}};
  for (const auto& [text, latex] : symbols) CHECK(as_latex.name(text) == latex);
  const std::pair<const char*, const char*> units[] = {
      {"V", "\\mathrm{V}"}, {"mV/(A·m)", "\\mathrm{mV/(A{\\cdot}m)}"}, {"A·√s/mm²", "\\mathrm{A{\\cdot}\\sqrt{s}/mm^{2}}"}, {"°C", "\\mathrm{{}^{\\circ}C}"},
      {"%", "\\mathrm{\\%}"}, {"1/K", "\\mathrm{K^{-1}}"}, {"1/K²", "\\mathrm{K^{-2}}"}, {"mΩ/m", "\\mathrm{m\\Omega/m}"}, {"1/h", "\\mathrm{h^{-1}}"}};
  for (const auto& [text, latex] : units) CHECK(as_latex.quantity(2, text).text == std::string("2\\,") + latex);
  CHECK(as_latex.words("50 % of R_0 & {x}: √(I² t) ≤ 3 °C, #1 $ ~ ^ \\") ==
        "\\text{50 \\% of R\\_0 \\& \\{x\\}: $\\surd$(I$^{2}$ t) $\\leq$ 3 $^{\\circ}$C, \\#1 \\$ $\\sim$ $\\hat{\\ }$ \\textbackslash{}}");
  CHECK(notation::level_of_symbol("R_1+R_2") == notation::piece::sum);
  CHECK(notation::level_of_symbol("p_+") == notation::piece::atom);
  CHECK(notation::level_of_symbol("π/4") == notation::piece::quotient);
  CHECK(notation::level_of_symbol("I²t") == notation::piece::product);
}

TEST_CASE("a line is bracketed as it is computed") {
  static constexpr auto f = formula(out{"f", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b"), number_arg("c", "c_1")), nowhere,
                                    [](auto a, auto b, auto c) { return a - (b - c) / (a * b) * c - square(-a) * pow(b / c, -1.5) + pow(a, 1.0 / 12.0) + cube(square(a)); });
  const step s = steps_of(f, {2, 3, -4}).back();
  CHECK(s.equation == "a − ((b − c_1) / (a · b)) · c_1 − (−a)² · (b / c_1)^(−1.5) + a^(1/12) + a⁶");
  CHECK(s.substituted == "2 − ((3 − (−4)) / (2 · 3)) · (−4) − (−2)² · (3 / (−4))^(−1.5) + 2^(1/12) + 2⁶");
  CHECK(s.equation_latex == "a - \\frac{b - c_{1}}{a \\cdot b} \\cdot c_{1} - \\left(-a\\right)^{2} \\cdot \\left(\\frac{b}{c_{1}}\\right)^{-1.5} + a^{1/12} + a^{6}");
  static constexpr auto g = formula(out{"g", "y", unit::one, "A test."}, in(number_arg("a", "R_1+R_2"), number_arg("b", "k²S²")), nowhere,
                                    [](auto a, auto b) { return 2.0 * a * square(b) / (a / 3.0); });
  CHECK(steps_of(g, {2, 3}).back().equation == "2 · (R_1+R_2) · (k²S²)² / ((R_1+R_2) / 3)");
}

TEST_CASE("numbers put in have the digits that the printed result needs") {
  static constexpr auto f = formula(out{"f", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b")), nowhere,
                                    [](auto a, auto b) { return let("x", unit::one, sqrt(a)) - b; });
  // √2 − 1.41421 = 3.56237·10⁻⁶: the named part needs six digits more than the result has room for beside 1.4
  const auto s = steps_of(f, {2.0, 1.41421});
  CHECK(s[0].result == "1.41421356237");
  CHECK(s[1].substituted == "1.41421356237 − 1.41421");
  CHECK(s[1].result == "3.56237·10⁻⁶");
  CHECK(steps_of(f, {4.0, 1.0})[1].substituted == "2 − 1");
  // an argument has no more digits than it needs either
  CHECK(steps_of(f, {1.0 / 3.0, 0.0})[0].substituted == "√(0.333333)");
}

TEST_CASE("what is zero but for rounding is printed as 0, and computed as it was") {
  static constexpr auto f = formula(out{"f", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b"), number_arg("c", "c")), nowhere,
                                    [](auto a, auto b, auto c) { auto d = let("d", unit::one, a + b - c); return 5.0 * d; });
  const double x[] = {0.1, 0.2, 0.3};
  const working w = work(f, x);
  CHECK(w.value != 0.0);
  CHECK(w.steps[0].value == 0.1 + 0.2 - 0.3);
  CHECK(w.steps[0].result == "0");
  CHECK(w.steps[1].substituted == "5 · 0");
  CHECK(w.steps[1].result == "0");
  CHECK(w.steps[1].result_latex == "0");
  // a difference that was given is no rounding; of its digits (1.00031·10⁻¹³ in binary) the last are
  CHECK(steps_of(f, {0.1, 0.2, 0.3 - 1e-13})[0].result == "10⁻¹³");
  CHECK(steps_of(f, {1e-20, 0, 0}).back().result == "5·10⁻²⁰");
  CHECK(steps_of(f, {0.0, -0.0, 0.0}).back().result == "0");
  static constexpr auto g = formula(out{"g", "y", unit::one, "A test."}, in(number_arg("a", "a")), nowhere, [](auto a) { return -a * 0.0; });
  CHECK(steps_of(g, {1.0}).back().result == "0");  // -0.0

  // the formulas where it occurs
  const double one_and_a_bit = 1000.0 * (1.0 + 0x1p-52);
  const double ptc[] = {one_and_a_bit, 1000.0, 7.88e-3, 1.937e-5};
  const working at_reference = work(sensing::silicon_ptc_temperature, ptc);
  CHECK(at_reference.steps.front().value != 0.0);
  CHECK(at_reference.steps.front().result == "0");
  CHECK(at_reference.steps.back().result == "25 °C");
  const double rtd[] = {100.0 * (1.0 + 0x1p-52), 100.0};
  CHECK(work(sensing::rtd_temperature, rtd).steps.back().result == "0 °C");
  // the reading less a cold tail of 0.1 Ω and 0.2 Ω: nothing is left of 0.3 Ω
  const auto tail = heating::check_element_resistance(
      {.resistance_ohm = 0.1 + 0.2, .rated_power_w = 500.0, .rated_voltage_v = 230.0, .cold_tail_ohm = 0.3}, rules::common_practice);
  REQUIRE(tail.worked().size() == 2);
  CHECK(tail.value != 0.0);
  CHECK(tail.worked()[0].steps.back().substituted == "0.3 Ω − 0.3 Ω");
  CHECK(tail.worked()[0].steps.back().result == "0 Ω");
}

TEST_CASE("the working shows the branch taken, the equation all of them") {
  static constexpr auto f = formula(out{"f", "y", unit::one, "A test."}, in(number_arg("a", "a"), number_arg("b", "b")), nowhere, [](auto a, auto b) {
    return 2.0 * select(a < 1.0 && b <= 2.0, a, select(b > 3.0, minimum(a, b), b / 7.0)) + maximum(a, b);
  });
  const equation_text e = equation(f);
  CHECK(e.text == "y = 2 · {a if a < 1 and b ≤ 2; min(a, b) if b > 3; otherwise b / 7} + max(a, b)");
  CHECK(e.latex ==
        "\\begin{aligned}\ny &= 2 \\cdot \\begin{cases} \\displaystyle a & \\text{if }a < 1\\text{ and }b \\leq 2 \\\\[1.5ex] \\displaystyle \\min\\left(a, b\\right) & "
        "\\text{if }b > 3 \\\\[1.5ex] "
        "\\displaystyle \\frac{b}{7} & \\text{otherwise} \\end{cases} + \\max\\left(a, b\\right)\n\\end{aligned}");
  const step s = steps_of(f, {0.5, 2.5}).back();
  CHECK(s.equation == "2 · (b / 7) + b");
  CHECK(s.condition == "since b > 2; since b ≤ 3; since a < b");
  CHECK(s.condition_latex == "\\text{since }b > 2\\text{; }\\text{since }b \\leq 3\\text{; }\\text{since }a < b");
}

TEST_CASE("units are proved in the branch that is not taken, and in its condition") {
  static constexpr auto f = formula(out{"f", "y", unit::metre, "A test."},
                                    in(arg{"a", "a", unit::metre, any_number, "a length"}, arg{"b", "b", unit::second, any_number, "a time"}), nowhere,
                                    [](auto a, auto b) { return select(a > constant(0, unit::metre), a, a + b); });
  const double x[] = {1.0, 1.0};
  CHECK(work(f, x).dimension_error.find("a sum of different units") == 0);
  static constexpr auto g = formula(out{"g", "y", unit::metre, "A test."},
                                    in(arg{"a", "a", unit::metre, any_number, "a length"}, arg{"b", "b", unit::second, any_number, "a time"}), nowhere,
                                    [](auto a, auto b) { return select(a > b, a, 2.0 * a); });
  CHECK(work(g, x).dimension_error == "a comparison of different units");
}

TEST_CASE("an inner formula is a step with its source, once, and no two things have one symbol") {
  const auto s = steps_of(outer, {2, 3});
  REQUIRE(s.size() == 6);
  const auto line = [&](std::size_t i) { return s[i].symbol + " = " + s[i].equation + " | " + s[i].where_from; };
  CHECK(line(0) == "x = a + b | ");
  CHECK(line(1) == "y′ = x · a | a source, clause 1");
  CHECK(line(2) == "a′ = b + 1 | ");
  CHECK(line(3) == "x′ = a′ + b | ");
  CHECK(line(4) == "y′′ = x′ · a′ | a source, clause 1");
  CHECK(line(5) == "y = y′ · y′ − y′′ | ");
  CHECK(s[5].equation_latex == "y' \\cdot y' - y''");
  CHECK(s[4].where_from_latex == "\\text{(a source, clause 1)}");
  CHECK(equation(outer).text == "y = y′ · y′ − y′′\nx = a + b\ny′ = x · a    (a source, clause 1)\na′ = b + 1\nx′ = a′ + b\ny′′ = x′ · a′    (a source, clause 1)");
}

TEST_CASE("the limits of a check are one working: no step twice, no two numbers under one symbol") {
  const auto v = sensing::check_ntc_sensor({.resistance_ohm = 11200.0, .temperature_c = 22.0, .reference_ohm = 10000.0, .reference_c = 25.0, .beta_k = 3950.0});
  const auto w = v.worked();
  REQUIRE(w.size() == 2);
  std::vector<std::string> symbols;
  for (const auto& s : w[1].steps) symbols.push_back(s.symbol);
  CHECK(symbols == std::vector<std::string>{"t′", "R′", "lower limit", "t′′", "R′′", "upper limit"});
  const auto e = heating::check_element_resistance({.resistance_ohm = 50.0, .rated_power_w = 500.0, .rated_voltage_v = 230.0, .mats_count = 2.0}, rules::common_practice);
  REQUIRE(e.worked().size() == 2);
  CHECK(e.worked()[1].steps.size() == 3);  // the rated resistance once
}

TEST_CASE("a working and an equation in LaTeX") {
  const double x[] = {44.0, 16.0, 22.0};
  CHECK(latex(work(electrical::voltage_drop, x)) ==
        "\\begin{aligned}\n\\Delta U &= \\frac{d \\cdot I \\cdot L}{1000} \\\\\n"
        " &= \\frac{44\\,\\mathrm{mV/(A{\\cdot}m)} \\cdot 16\\,\\mathrm{A} \\cdot 22\\,\\mathrm{m}}{1000} \\\\\n &= 15.488\\,\\mathrm{V}\n\\end{aligned}");
  CHECK(equation(electrical::voltage_drop).text == "ΔU = d · I · L / 1000\nwith ΔU in V, d in mV/(A·m), I in A, L in m");
  CHECK(equation(electrical::adiabatic_k).text ==
        "k = k_0 · √(ln(1 + (t_f − t_i) / (β + t_i)))\n"
        "k_0 = {226 A·√s/mm² for copper; 148 A·√s/mm² for aluminium; 78 A·√s/mm² for steel; 41 A·√s/mm² for lead}\n"
        "β = {234.5 K for copper; 228 K for aluminium; 202 K for steel; 230 K for lead}\n"
        "with k in A·√s/mm², t_i in °C, t_f in °C");
}

// SPDX-License-Identifier: MIT
// Decision rules by name: where a value is accepted, where it is rejected, and what lies between. The rule used stands in every verdict.
// Core: every check takes one; the default is the design's. Includes the standard library only.
#pragma once
#include <string>
#include <string_view>
#include "descriptor.hpp"
#include "error.hpp"
#include "text.hpp"

namespace makegood {
inline namespace v1 {

/// The probability of conformity that proves a value, or its opposite. One place for the whole library. It is 95 %, with a reserve: p is
/// calculated as if the doubt were normal, and among all sums of independent rectangular and normal errors the one with the widest tail,
/// two equal rectangles, has 5 % beyond 1.6749 standard deviations (2 - sqrt(0.4) in units of half the width, times sqrt(3/2)), not 1.6449.
inline constexpr double proved_at = 0.9531;

/// A published rule. Two kinds: by the probability of conformity p (accepted where p >= accept, rejected where p <= reject), or by
/// guard bands in units of U = 2 u (accepted where the margin is at least accept U, rejected where it is less than -reject U).
struct decision_method {
  std::string_view name;
  bool by_probability;
  bool takes_number;  ///< the name may be followed by the number chosen: "jcgm106:0.99", "guard_band:0.5"
  double accept, reject;
  std::string_view text;
  source from;
};
inline constexpr decision_method decision_methods[] = {
    {"default", true, false, proved_at, 1.0 - proved_at, "pass where the probability of conformity is at least 95 %, fail where it is at most 5 %; by a normal doubt 95.31 and 4.69 %, so that it holds for rectangular ones too",
     {"JCGM 106:2012", "7.3 and 8.3", "standard"}},
    {"jcgm106", true, true, 0.95, 1.0 - 0.95, "pass where the probability of conformity is at least the one chosen, fail where that of non-conformity is",
     {"JCGM 106:2012", "7.3 and 8.3", "standard"}},
    {"simple_acceptance", false, false, 0.0, 0.0, "pass where the reading meets the limit, fail where it does not; no guard band (w = 0): up to 50 % of wrong acceptance at the limit",
     {"ILAC-G8:09/2019", "4.2.1", "handbook"}},
    {"guard_band", false, true, 1.0, 1.0, "pass inside a guard band w on the safe side of the limit, fail beyond w on the other side; conditional between",
     {"ILAC-G8:09/2019", "4.2.3", "handbook"}},
    {"ilac_g8", false, false, 1.0, 1.0, "guard band w = U, non-binary: pass, conditional pass, conditional fail, fail",
     {"ILAC-G8:09/2019", "4.2.3", "handbook"}},
    {"ilac_g8_binary", false, false, 1.0, -1.0, "guard band w = U, binary: pass inside it, fail everywhere else", {"ILAC-G8:09/2019", "4.2.2", "handbook"}},
    {"ilac_g8_3_sigma", false, false, 1.5, 1.5, "guard band w = 1.5 U, non-binary: about 0.14 % of wrong acceptance", {"ILAC-G8:09/2019", "table of rules", "memory"}},
    {"ilac_g8_6_sigma", false, false, 3.0, 3.0, "guard band w = 3 U, non-binary: below 1e-6 of wrong acceptance", {"ILAC-G8:09/2019", "table of rules", "memory"}},
    {"iso14253", false, false, 0.83, 0.83, "guard band w = 0.83 U on both sides: conformity or its opposite is proved outside the uncertainty zone, neither inside",
     {"ISO 14253-1:2017", "default rule, w = 0.83 U", "memory"}},
    {"stringent_acceptance", false, false, 1.0, -1.0, "guard band w = U inside the limit: what is not proved to conform is rejected",
     {"ASME B89.7.3.1-2001", "stringent acceptance with relaxed rejection", "memory"}},
    {"relaxed_acceptance", false, false, -1.0, 1.0, "guard band w = -U: rejected only where failure is proved",
     {"ILAC-G8:09/2019", "table of rules, w = -U", "memory"}},
};

/// The rule that a check is given: a published one and its numbers.
struct decision_rule {
  const decision_method* method = &decision_methods[0];
  double accept = decision_methods[0].accept, reject = decision_methods[0].reject;

  constexpr decision_rule() = default;
  constexpr explicit decision_rule(const decision_method& m) : method(&m), accept(m.accept), reject(m.reject) {}
  /// "iso14253", "jcgm106:0.99" (probability), "guard_band:0.5" (in units of U).
  decision_rule(std::string_view name) : decision_rule(named(name)) {}
  decision_rule(const char* name) : decision_rule(named(name)) {}
  decision_rule(const std::string& name) : decision_rule(named(name)) {}

  /// JCGM 106 with the probability of conformity that is asked for.
  static decision_rule jcgm106(double probability) {
    if (!(probability > 0.5 && probability < 1.0)) throw rule_error("decision rule \"jcgm106\": the probability lies between 0.5 and 1, not at " + number_text(probability));
    decision_rule r(decision_methods[1]);
    r.accept = probability;
    r.reject = 1.0 - probability;
    return r;
  }
  /// A guard band of w = factor U on both sides of the limit.
  static decision_rule guard_band(double factor) {
    if (!(factor >= 0.0 && factor <= 100.0)) throw rule_error("decision rule \"guard_band\": w/U lies between 0 and 100, not at " + number_text(factor));
    decision_rule r(decision_methods[3]);
    r.accept = r.reject = factor;
    return r;
  }
  bool by_probability() const { return method->by_probability; }
  /// As it can be given again: with the number, where one was chosen.
  std::string name() const {
    std::string text(method->name);
    if (method->takes_number) text += ":" + number_text(accept);
    return text;
  }
  /// What the rule does, in one line.
  std::string text() const {
    if (!method->takes_number) return std::string(method->text);
    return std::string(method->text) + (method->by_probability ? " (p = " : " (w = ") + number_text(accept) + (method->by_probability ? ")" : " U)");
  }

 private:
  static decision_rule named(std::string_view name) {
    const auto colon = name.find(':');
    const std::string_view word = name.substr(0, colon);
    for (const auto& m : decision_methods) {
      if (m.name != word) continue;
      if (colon == std::string_view::npos) return decision_rule(m);
      double number = 0.0;
      if (!m.takes_number) throw rule_error("decision rule \"" + std::string(word) + "\" takes no number: \"" + std::string(name) + "\"");
      if (!read_number(name.substr(colon + 1), number)) throw rule_error("decision rule \"" + std::string(name) + "\": what follows the colon is no number");
      return m.by_probability ? jcgm106(number) : guard_band(number);
    }
    std::string list;
    for (const auto& m : decision_methods) list += (list.empty() ? "\"" : ", \"") + std::string(m.name) + "\"";
    throw rule_error("decision rule \"" + std::string(name) + "\" is not one of " + list + " (jcgm106 and guard_band with their number: \"jcgm106:0.99\")");
  }
  /// Plain decimals: no locale, no exponent.
  static bool read_number(std::string_view t, double& x) {
    double scale = 1.0;
    bool digits = false, point = false;
    x = 0.0;
    for (const char c : t) {
      if (c == '.' && !point) point = true;
      else if (c >= '0' && c <= '9') {
        digits = true;
        x = x * 10.0 + (c - '0');
        if (point) scale *= 10.0;
      } else return false;
    }
    x /= scale;
    return digits && t.size() <= 17;
  }
};

}  // namespace v1
}  // namespace makegood

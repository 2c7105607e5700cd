// SPDX-License-Identifier: MIT
// Rulebooks: limits as data, with edition, clause and grade. No book is a default; a missing rule is said, never guessed.
// Core: every check takes one. Includes the standard library only.
#pragma once
#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>
#include "error.hpp"
#include "formula.hpp"

namespace makegood {
inline namespace v1 {

/// How a value is held against a limit. At the limit itself the value meets at_most, at_least and within.
enum class comparator : unsigned char { at_most, below, at_least, above, within };
constexpr std::string_view comparator_text(comparator c) {
  switch (c) {
    case comparator::at_most: return "≤";
    case comparator::below: return "<";
    case comparator::at_least: return "≥";
    case comparator::above: return ">";
    case comparator::within: return "within";
  }
  return {};
}

/// One row of a rulebook: a limit under a condition. The numbers' meaning belongs to the check that asks for the limit.
struct rule {
  std::string_view limit;       ///< limit id, "voltage_drop_limit"
  std::string_view condition;   ///< "lighting"; empty: any
  comparator compare = comparator::at_most;
  std::array<double, 4> numbers{};
  source from{};
  std::string_view text{};      ///< the rule in a few words
  bool needs_makers_figure = false;
};

/// A published set of rules.
struct rule_table {
  std::string_view id;
  std::string_view title;
  std::string_view jurisdiction;
  std::string_view edition;
  std::string_view date;
  std::span<const rule> rules;
};

/// One named change of a derived book; it appears in every verdict that it touches.
struct rule_override {
  std::string name;
  std::string limit;
  std::string condition;
  comparator compare = comparator::at_most;
  std::array<double, 4> numbers{};
  std::string reason;
};

/// One or more tables, in order, with named overrides.
class rulebook {
 public:
  rulebook() = default;
  rulebook(const rule_table& t) : tables_{&t} {}

  /// Both books: the first that has a rule answers.
  friend rulebook operator+(rulebook a, const rulebook& b) {
    for (const auto* t : b.tables_) a.tables_.push_back(t);
    for (const auto& o : b.overrides_) a.overrides_.push_back(o);
    return a;
  }
  rulebook with(rule_override o) const {
    rulebook r = *this;
    r.overrides_.push_back(std::move(o));
    return r;
  }
  std::string id() const {
    std::string text;
    for (const auto* t : tables_) {
      if (!text.empty()) text += ',';
      text += t->id;
    }
    for (const auto& o : overrides_) text += "+" + o.name;
    return text;
  }
  std::span<const rule_table* const> tables() const { return tables_; }
  std::span<const rule_override> overrides() const { return overrides_; }

  struct answer {
    bool found = false;
    rule row{};
    const rule_table* book = nullptr;
    std::string overridden{};  ///< "name: reason" of the override that was used
  };
  answer find(std::string_view limit, std::string_view condition) const {
    answer a;
    for (const auto* t : tables_) {
      for (const auto& r : t->rules)
        if (r.limit == limit && (r.condition.empty() || r.condition == condition)) {
          a = {true, r, t, {}};
          break;
        }
      if (a.found) break;
    }
    for (const auto& o : overrides_)
      if (o.limit == limit && (o.condition.empty() || o.condition == condition)) {
        a.found = true;
        a.row.limit = o.limit;
        a.row.condition = o.condition;
        a.row.compare = o.compare;
        a.row.numbers = o.numbers;
        a.row.needs_makers_figure = false;
        a.overridden = o.name + ": " + o.reason;
      }
    return a;
  }

 private:
  std::vector<const rule_table*> tables_;
  std::vector<rule_override> overrides_;
};

}  // namespace v1
}  // namespace makegood

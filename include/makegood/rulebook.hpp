// SPDX-License-Identifier: MIT
// Rulebooks: limits as data, with edition, clause and grade. No book is a default; a missing rule is said, never guessed.
// Core: every check takes one. Includes the standard library only.
#pragma once
#include <array>
#include <memory>
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

  std::string words() const { return name + ": " + reason; }
};

/// One or more tables, in order, with named overrides. Copies share their content, which never changes.
class rulebook {
 public:
  rulebook() = default;
  rulebook(const rule_table& t) : is_(std::make_shared<const content>(content{{&t}, {}})) {}

  /// Both books: the first that has a rule answers.
  friend rulebook operator+(const rulebook& a, const rulebook& b) {
    content c = a.is_ ? *a.is_ : content{};
    for (const auto* t : b.tables()) c.tables.push_back(t);
    for (const auto& o : b.overrides()) c.overrides.push_back(o);
    return rulebook(std::move(c));
  }
  rulebook with(rule_override o) const {
    content c = is_ ? *is_ : content{};
    c.overrides.push_back(std::move(o));
    return rulebook(std::move(c));
  }
  std::string id() const {
    std::string text;
    for (const auto* t : tables()) {
      if (!text.empty()) text += ',';
      text += t->id;
    }
    for (const auto& o : overrides()) text += "+" + o.name;
    return text;
  }
  std::span<const rule_table* const> tables() const { return is_ ? is_->tables : std::span<const rule_table* const>{}; }
  std::span<const rule_override> overrides() const { return is_ ? is_->overrides : std::span<const rule_override>{}; }

  /// A row, or none; and the override that took its place. It lives as long as the book.
  struct answer {
    const rule* row = nullptr;
    const rule_override* changed = nullptr;

    bool found() const { return row || changed; }
    comparator compare() const { return changed ? changed->compare : row->compare; }
    const std::array<double, 4>& numbers() const { return changed ? changed->numbers : row->numbers; }
    bool needs_makers_figure() const { return !changed && row->needs_makers_figure; }
    source from() const { return row ? row->from : source{}; }
  };
  answer find(std::string_view limit, std::string_view condition) const {
    answer a;
    for (const auto* t : tables()) {
      for (const auto& r : t->rules)
        if (r.limit == limit && (r.condition.empty() || r.condition == condition)) {
          a.row = &r;
          break;
        }
      if (a.row) break;
    }
    for (const auto& o : overrides())
      if (o.limit == limit && (o.condition.empty() || o.condition == condition)) a.changed = &o;
    return a;
  }

 private:
  struct content {
    std::vector<const rule_table*> tables;
    std::vector<rule_override> overrides;
  };
  explicit rulebook(content c) : is_(std::make_shared<const content>(std::move(c))) {}
  std::shared_ptr<const content> is_;
};

}  // namespace v1
}  // namespace makegood

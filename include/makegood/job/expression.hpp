// SPDX-License-Identifier: MIT
// Predictions as text, for families of hypotheses that are data: "heating.element_resistance(power_w, voltage_v) * part + lead_ohm".
// Job floor. Opt-in: needs the compiled target, whose formulas it calls by name, with their exact slopes.
//
// Numbers, names, + - * / ^, brackets, and calls: any formula of the catalogue by its full name (its words of a choice in single quotes),
// min, max, abs, sqrt, exp, log, parallel (1/(1/a + 1/b)), if_above(x, limit, then, otherwise), and the tables of the family by their name.
#pragma once
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>
#include "../registry.hpp"
#include "inference.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// y over x, straight between points, the outermost slopes going on beyond the ends; x rises.
struct line_table {
  std::vector<double> x{}, y{};
};
using numbers_by_name = std::map<std::string, double, std::less<>>;
using tables_by_name = std::map<std::string, std::shared_ptr<const line_table>, std::less<>>;

/// A text as a function of parameters; constants are numbers by name. Everything unknown in it is an error with its place.
class expression {
 public:
  expression(std::string text, const std::vector<std::string>& parameters, const numbers_by_name& constants, const tables_by_name& tables = {})
      : text_(std::move(text)), parameters_(&parameters), constants_(&constants), tables_(&tables) {
    sum(0);
    skip();
    if (at_ != text_.size()) fail("\"" + text_.substr(at_, 12) + "\" is too much");
    parameters_ = nullptr;
    constants_ = nullptr;
    tables_ = nullptr;
  }
  double value(const double* x, int = 0) const {
    std::array<double, deepest> s;
    std::size_t top = 0;
    for (const auto& o : ops_) {
      switch (o.is) {
        case kind::number: s[top++] = o.number; break;
        case kind::parameter: s[top++] = x[o.index]; break;
        default: {
          top -= static_cast<std::size_t>(o.count);
          s[top] = apply(o, &s[top], nullptr);
          ++top;
        }
      }
    }
    return s[0];
  }
  double slopes(const double* x, int n, double* slopes) const {
    std::array<double, deepest> s;
    std::array<std::array<double, most_parameters>, deepest> d;
    std::array<double, 32> by;
    std::size_t top = 0;
    for (const auto& o : ops_) {
      switch (o.is) {
        case kind::number:
          std::fill_n(d[top].begin(), n, 0.0);
          s[top++] = o.number;
          break;
        case kind::parameter:
          std::fill_n(d[top].begin(), n, 0.0);
          d[top][static_cast<std::size_t>(o.index)] = 1.0;
          s[top++] = x[o.index];
          break;
        default: {
          top -= static_cast<std::size_t>(o.count);
          const double y = apply(o, &s[top], by.data());
          std::array<double, most_parameters> sum{};
          for (int a = 0; a < o.count; ++a)
            for (int k = 0; k < n; ++k) {
              const double inner = d[top + static_cast<std::size_t>(a)][static_cast<std::size_t>(k)];
              if (inner != 0.0) sum[static_cast<std::size_t>(k)] += by[static_cast<std::size_t>(a)] * inner;
            }
          d[top] = sum;
          s[top++] = y;
        }
      }
    }
    for (int k = 0; k < n; ++k) slopes[k] = d[0][static_cast<std::size_t>(k)];
    return s[0];
  }
  static job::prediction prediction(std::string text, const std::vector<std::string>& parameters, const numbers_by_name& constants, const tables_by_name& tables = {}) {
    return job::prediction::from(
        std::make_shared<const expression>(std::move(text), parameters, constants, tables),
        [](const void* self, const double* x, int n) { return static_cast<const expression*>(self)->value(x, n); },
        [](const void* self, const double* x, int n, double* out) { return static_cast<const expression*>(self)->slopes(x, n, out); });
  }

 private:
  static constexpr std::size_t deepest = 40;
  enum class kind : unsigned char { number, parameter, add, subtract, multiply, divide, power, negate, least, most, absolute, root, exponential, logarithm, parallel, if_above, formula, table };
  struct op {
    kind is = kind::number;
    int index = 0, count = 0;
    double number = 0.0;
    const entry* e = nullptr;
    std::shared_ptr<const line_table> points{};
  };
  std::string text_;
  std::size_t at_ = 0, depth_ = 0;
  std::vector<op> ops_;
  const std::vector<std::string>* parameters_;
  const numbers_by_name* constants_;
  const tables_by_name* tables_;

  [[noreturn]] void fail(const std::string& what) const { throw range_error("expression \"" + text_ + "\": " + what); }
  void skip() {
    while (at_ < text_.size() && (text_[at_] == ' ' || text_[at_] == '\n' || text_[at_] == '\t')) ++at_;
  }
  bool take(char c) {
    skip();
    if (at_ >= text_.size() || text_[at_] != c) return false;
    ++at_;
    return true;
  }
  bool numbers_last(int count) const {
    if (count <= 0 || ops_.size() < static_cast<std::size_t>(count)) return false;
    for (std::size_t i = ops_.size() - static_cast<std::size_t>(count); i < ops_.size(); ++i)
      if (ops_[i].is != kind::number) return false;
    return true;
  }
  void put(op o) {
    const bool leaf = o.is == kind::number || o.is == kind::parameter;
    if (!leaf) depth_ -= static_cast<std::size_t>(o.count);
    if (++depth_ > deepest) fail("it is too deep");
    if (!leaf && numbers_last(o.count)) {  // what no parameter enters is worked out once
      std::array<double, deepest> a{};
      for (int i = 0; i < o.count; ++i) a[static_cast<std::size_t>(i)] = ops_[ops_.size() - static_cast<std::size_t>(o.count - i)].number;
      if (const double y = apply(o, a.data(), nullptr); is_finite(y)) {
        ops_.resize(ops_.size() - static_cast<std::size_t>(o.count));
        op folded;
        folded.number = y;
        ops_.push_back(std::move(folded));
        return;
      }
    }
    ops_.push_back(std::move(o));
  }
  void put(kind is, int count) {
    op o;
    o.is = is;
    o.count = count;
    put(std::move(o));
  }
  void put_number(double x) {
    op o;
    o.number = x;
    put(std::move(o));
  }
  void sum(int level) {
    if (level > 30) fail("too many brackets");
    product(level);
    for (;;)
      if (take('+')) product(level), put(kind::add, 2);
      else if (take('-')) product(level), put(kind::subtract, 2);
      else return;
  }
  void product(int level) {
    power(level);
    for (;;)
      if (take('*')) power(level), put(kind::multiply, 2);
      else if (take('/')) power(level), put(kind::divide, 2);
      else return;
  }
  void power(int level) {
    if (take('-')) {
      power(level + 1);
      put(kind::negate, 1);
      return;
    }
    primary(level);
    if (take('^')) power(level + 1), put(kind::power, 2);
  }
  static bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }
  static bool digit(char c) { return c >= '0' && c <= '9'; }
  void primary(int level) {
    if (level > 30) fail("too many brackets");
    skip();
    if (at_ >= text_.size()) fail("something is missing at its end");
    if (take('(')) {
      sum(level + 1);
      if (!take(')')) fail("a bracket is not closed");
      return;
    }
    if (digit(text_[at_]) || text_[at_] == '.') {
      const char* from = text_.c_str() + at_;
      char* end = nullptr;
      const double x = std::strtod(from, &end);
      at_ += static_cast<std::size_t>(end - from);
      return put_number(x);
    }
    if (!letter(text_[at_])) fail(std::string("\"") + text_[at_] + "\" is not expected");
    const std::size_t from = at_;
    while (at_ < text_.size() && (letter(text_[at_]) || digit(text_[at_]) || text_[at_] == '.')) ++at_;
    const std::string name = text_.substr(from, at_ - from);
    if (take('(')) return call(name, level + 1);
    for (std::size_t k = 0; k < parameters_->size(); ++k)
      if ((*parameters_)[k] == name) {
        op o;
        o.is = kind::parameter;
        o.index = static_cast<int>(k);
        return put(std::move(o));
      }
    if (const auto c = constants_->find(name); c != constants_->end()) {
      if (is_nan(c->second)) fail("\"" + name + "\" was not given");
      return put_number(c->second);
    }
    std::vector<std::string_view> known(parameters_->begin(), parameters_->end());
    for (const auto& c : *constants_) known.push_back(c.first);
    const auto near = document::nearest(name, known);
    fail("there is no \"" + name + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
  }
  void call(const std::string& name, int level) {
    struct plain {
      std::string_view name;
      kind is;
      int count;
    };
    static constexpr plain known[] = {{"min", kind::least, 2}, {"max", kind::most, 2}, {"abs", kind::absolute, 1}, {"sqrt", kind::root, 1}, {"exp", kind::exponential, 1},
                                      {"log", kind::logarithm, 1}, {"parallel", kind::parallel, 2}, {"if_above", kind::if_above, 4}};
    for (const auto& k : known) {
      if (k.name != name) continue;
      arguments(name, k.count, level);
      return put(k.is, k.count);
    }
    if (const auto t = tables_->find(name); t != tables_->end()) {
      arguments(name, 1, level);
      op o;
      o.is = kind::table;
      o.count = 1;
      o.points = t->second;
      return put(std::move(o));
    }
    const entry* e = find_entry(name);
    if (!e || e->is != entry::what::formula) fail("\"" + name + "\" is neither a formula of the catalogue nor a table of the family");
    op o;
    o.is = kind::formula;
    o.e = e;
    bool closed = take(')');
    for (const auto& a : e->args()) {
      if (!closed) {
        skip();
        if (a.table && take('\'')) {
          const std::size_t end = text_.find('\'', at_);
          if (end == std::string::npos) fail("a quote is not closed");
          const double row = static_cast<double>(a.table->find(text_.substr(at_, end - at_)));
          if (row < 0.0) fail(name + ": " + std::string(a.name) + " must be one of " + makegood::detail::keys_text(*a.table));
          put_number(row);
          at_ = end + 1;
        } else {
          sum(level);
        }
        closed = take(')');
        if (!closed && !take(',')) fail(name + ": a comma or a bracket is missing");
      } else if (a.optional) {
        put_number(a.fallback);
      } else {
        fail(name + ": argument \"" + std::string(a.name) + "\" is missing");
      }
      ++o.count;
    }
    if (!closed) fail(name + " takes no more than " + std::to_string(e->args().size()) + " arguments");
    if (o.count > 20) fail(name + " has too many arguments");
    put(std::move(o));
  }
  void arguments(const std::string& name, int count, int level) {
    for (int i = 0; i < count; ++i) {
      sum(level);
      if (i + 1 < count ? !take(',') : !take(')')) fail(name + " takes " + std::to_string(count) + (count == 1 ? " argument" : " arguments"));
    }
  }
  /// The value of one step, and its slopes by its arguments where they are asked for.
  static double apply(const op& o, const double* a, double* by) {
    const auto two = [&](double y, double first, double second) {
      if (by) by[0] = first, by[1] = second;
      return y;
    };
    const auto one = [&](double y, double first) {
      if (by) by[0] = first;
      return y;
    };
    switch (o.is) {
      case kind::add: return two(a[0] + a[1], 1.0, 1.0);
      case kind::subtract: return two(a[0] - a[1], 1.0, -1.0);
      case kind::multiply: return two(a[0] * a[1], a[1], a[0]);
      case kind::divide: return two(a[0] / a[1], 1.0 / a[1], -a[0] / (a[1] * a[1]));
      case kind::power: {
        const double y = pow(a[0], a[1]);
        return two(y, a[1] * pow(a[0], a[1] - 1.0), a[0] > 0.0 ? y * log(a[0]) : 0.0);
      }
      case kind::negate: return one(-a[0], -1.0);
      case kind::least: return two(a[0] < a[1] ? a[0] : a[1], a[0] < a[1] ? 1.0 : 0.0, a[0] < a[1] ? 0.0 : 1.0);
      case kind::most: return two(a[0] > a[1] ? a[0] : a[1], a[0] > a[1] ? 1.0 : 0.0, a[0] > a[1] ? 0.0 : 1.0);
      case kind::absolute: return one(fabs(a[0]), a[0] < 0.0 ? -1.0 : 1.0);
      case kind::root: {
        const double y = sqrt(a[0]);
        return one(y, 0.5 / y);
      }
      case kind::exponential: {
        const double y = exp(a[0]);
        return one(y, y);
      }
      case kind::logarithm: return one(log(a[0]), 1.0 / a[0]);
      case kind::parallel: {
        const double s = a[0] + a[1];
        return two(a[0] * a[1] / s, a[1] * a[1] / (s * s), a[0] * a[0] / (s * s));
      }
      case kind::if_above: {
        const bool then = a[0] > a[1];
        if (by) by[0] = by[1] = 0.0, by[2] = then ? 1.0 : 0.0, by[3] = then ? 0.0 : 1.0;
        return then ? a[2] : a[3];
      }
      case kind::table: {
        const auto& t = *o.points;
        std::size_t i = static_cast<std::size_t>(std::upper_bound(t.x.begin(), t.x.end(), a[0]) - t.x.begin());
        i = std::clamp<std::size_t>(i, 1, t.x.size() - 1);
        const double slope = (t.y[i] - t.y[i - 1]) / (t.x[i] - t.x[i - 1]);
        return one(t.y[i - 1] + (a[0] - t.x[i - 1]) * slope, slope);
      }
      case kind::formula: {
        const double y = o.e->formula.checked(a);
        if (by) {
          if (is_finite(y)) o.e->formula.gradient(o.e->formula.self, a, by);
          else std::fill(by, by + o.count, 0.0);
        }
        return y;
      }
      default: return no_number;
    }
  }
};

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// How much one more reading is expected to tell: the mutual information between what a test would show and which kind of fault there is,
// from what the explanations hold after the readings at hand. Subject: job. Opt-in.
#pragma once
#include <algorithm>
#include <cmath>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "inference.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// By how many bits the expected reading of a test lowers the entropy over the kinds, from 0 to log2 of their number. After
/// `engine.run()`. `kind_of(h)` gathers hypotheses that call for the same act; "none of these" is left out, since it predicts
/// nothing. `doubt(test, value)` is the standard uncertainty that an instrument would have there. First order about the mean of each
/// hypothesis after the readings, over the most probable ones (those that hold 99 % of what is listed, at most twelve).
inline double expected_information(explanations& engine, std::string_view test, const std::function<int(std::size_t)>& kind_of,
                                   const std::function<double(std::string_view, double)>& doubt) {
  const auto& list = engine.hypotheses();
  const auto& rows = engine.table().rows;
  std::vector<std::size_t> order(list.size());
  for (std::size_t h = 0; h < order.size(); ++h) order[h] = h;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rows[a].posterior > rows[b].posterior; });
  double all = 0.0;
  for (const auto h : order) all += rows[h].posterior;
  if (!(all > 0.0)) return 0.0;

  struct leader {
    int kind;
    double weight, mean = 0.0, sd = 1.0, real = 0.0;
    std::vector<std::pair<std::string, double>> outcomes{};
  };
  std::vector<leader> lead;
  std::vector<std::string> names;
  double held = 0.0, low = 0.0, high = 0.0;
  bool any_real = false;
  for (const auto h : order) {
    if (lead.size() == 12 || (held > 0.99 * all && lead.size() > 1)) break;
    held += rows[h].posterior;
    leader l{kind_of(h), rows[h].posterior};
    const prediction* p = nullptr;
    for (const auto& one : list[h].predictions)
      if (one.first == test) p = &one.second;
    if (!p) return 0.0;  // a hypothesis that says nothing of it: what it would tell is not known
    double chance = 0.0;
    for (const auto& c : p->chances()) {
      l.outcomes.emplace_back(c.outcome, c.probability);
      chance += c.probability;
      if (std::find(names.begin(), names.end(), c.outcome) == names.end()) names.push_back(c.outcome);
    }
    if (p->real()) {
      l.real = std::max(0.0, 1.0 - chance);
      const std::size_t n = list[h].parameters.size();
      std::vector<double> at(n), width(n);
      for (std::size_t k = 0; k < n; ++k) {
        const auto after = engine.parameter_after(h, k);
        const auto& is = list[h].parameters[k].is;
        at[k] = is_finite(after.mean) ? after.mean : is.centre();
        width[k] = is_finite(after.sd) ? after.sd : is.scale();
      }
      l.mean = p->value(at.data(), static_cast<int>(n));
      double variance = square(doubt(test, l.mean));
      for (std::size_t k = 0; k < n; ++k) {
        const double keep = at[k];
        double spread = 0.0;
        for (const double side : {-1.0, 1.0}) {
          at[k] = keep + side * width[k];
          const auto& is = list[h].parameters[k].is;
          const bool positive = is.is == distribution::shape::log_uniform || is.is == distribution::shape::log_normal;
          if (positive && !(at[k] > 0.0)) at[k] = 0.1 * keep;
          spread += 0.5 * square(p->value(at.data(), static_cast<int>(n)) - l.mean);
        }
        at[k] = keep;
        variance += spread;
      }
      l.sd = std::sqrt(variance);
      low = any_real ? std::min(low, l.mean - 5.0 * l.sd) : l.mean - 5.0 * l.sd;
      high = any_real ? std::max(high, l.mean + 5.0 * l.sd) : l.mean + 5.0 * l.sd;
      any_real = true;
    }
    lead.push_back(std::move(l));
  }
  for (auto& l : lead) l.weight /= held;
  double bits = 0.0;
  const auto cell = [&](const auto& chance) {
    double total = 0.0;
    for (const auto& l : lead) total += l.weight * chance(l);
    if (!(total > 0.0)) return;
    for (std::size_t i = 0; i < lead.size(); ++i) {
      bool first = true;
      for (std::size_t k = 0; k < i; ++k) first = first && lead[k].kind != lead[i].kind;
      if (!first) continue;
      double joint = 0.0, weight = 0.0;
      for (const auto& l : lead)
        if (l.kind == lead[i].kind) joint += l.weight * chance(l), weight += l.weight;
      if (joint > 0.0) bits += joint * std::log2(joint / (total * weight));
    }
  };
  for (const auto& name : names)
    cell([&](const leader& l) {
      double p = 0.0;
      for (const auto& o : l.outcomes) p += o.first == name ? o.second : 0.0;
      return p;
    });
  constexpr int cells = 400;
  if (any_real && high > low)
    for (int c = 0; c < cells; ++c) {
      const double a = low + (high - low) * c / cells, b = low + (high - low) * (c + 1) / cells;
      cell([&](const leader& l) { return l.real > 0.0 ? l.real * (normal_cdf((b - l.mean) / l.sd) - normal_cdf((a - l.mean) / l.sd)) : 0.0; });
    }
  return std::max(0.0, bits);
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

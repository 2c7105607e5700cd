// SPDX-License-Identifier: MIT
// A network of ducts and fans: flows of all branches and pressures of all junctions together.
// Subject: air. Opt-in: needs Eigen (sparse factorisation; its pattern is kept from step to step and from solution to solution).
#pragma once
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>
#include <vector>
#include "fans.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

/// A junction, or a place outside whose pressure is known.
struct network_node {
  std::string name{};
  bool outside = false;
  double pressure_pa = 0.0;     ///< of a place outside; also lift or wind
  double supply_l_per_s = 0.0;  ///< of a junction: what comes in there by itself (negative: what is drawn)
};
/// A duct, a leak, a terminal or a fan between two nodes. Flow counts from `from` to `to`; a fan lifts the pressure that way.
struct network_branch {
  std::string name{};
  std::size_t from = 0, to = 0;
  system_curve loss{};  ///< without a fixed part
  fan_curve fan{};      ///< empty: none
  bool has_fan() const { return !fan.pressure().empty(); }
};
struct network_options {
  int most_iterations = 60;
  double tolerance = 1e-9;  ///< of the largest pressure between two ends: what no branch may be off
};
struct network_result {
  std::vector<double> flow_l_per_s{};  ///< by branch; negative: against its direction
  std::vector<double> pressure_pa{};   ///< by node
  int iterations = 0;  ///< sparse systems solved, the first one of straight lines counted
  double pressure_residual_pa = 0.0;   ///< the most that a branch's loss differs from the pressure between its ends
  double flow_residual_l_per_s = 0.0;  ///< the most that a junction's flows fail to add up
  std::vector<std::size_t> beyond_curve{};  ///< branches whose fan works outside the points of its curve: continued as a straight line
};

/// Solves by the global gradient method: flows and pressures are both unknowns of Newton's step, and the flows drop out of it, so that one
/// sparse symmetric system with a row for each junction is left.
class network_solver {
 public:
  network_solver(std::vector<network_node> nodes, std::vector<network_branch> branches) : nodes_(std::move(nodes)), branches_(std::move(branches)) {
    check();
    lay_out();
  }
  const std::vector<network_node>& nodes() const { return nodes_; }
  const std::vector<network_branch>& branches() const { return branches_; }
  /// Losses, fans, pressures and supplies may change between solutions; who is joined to whom may not.
  network_branch& branch(std::size_t b) { return branches_[b]; }
  network_node& node(std::size_t n) { return nodes_[n]; }

  network_result solve(const network_options& how = {}) {
    const std::size_t m = branches_.size();
    network_result r;
    r.flow_l_per_s.assign(m, 0.0);
    r.pressure_pa.assign(nodes_.size(), 0.0);
    auto& q = r.flow_l_per_s;
    for (std::size_t i = 0; i < nodes_.size(); ++i)
      if (nodes_[i].outside) r.pressure_pa[i] = nodes_[i].pressure_pa;
    for (std::size_t b = 0; b < m; ++b) plain_[b] = branches_[b].has_fan() || !branches_[b].loss.pipes.empty() ? -1.0 : branches_[b].loss.quadratic;
    // first: every branch as a straight line through one flow for all, then that pattern of flows brought to the size that fits
    reference_ = reference_flow();
    for (std::size_t b = 0; b < m; ++b) {
      const auto l = branches_[b].loss.at(reference_);
      weight_[b] = reference_ / std::max(l.pressure, 1e-12 + 1e-9 * l.slope * reference_);
      if (branches_[b].has_fan()) {
        const auto f = fan_at(branches_[b], 0.0);
        weight_[b] = 1.0 / (1.0 / weight_[b] + steepness(branches_[b]));
        offset_[b] = weight_[b] * f.value;
      } else {
        offset_[b] = 0.0;
      }
    }
    step(r);
    scale(q, r);
    const auto tangent = [&](std::size_t b, const line& f) {
      weight_[b] = 1.0 / f.slope;
      offset_[b] = q[b] - weight_[b] * f.value;
    };
    for (std::size_t b = 0; b < m; ++b) tangent(b, lost(b, q[b]));
    for (r.iterations = 2; r.iterations <= how.most_iterations; ++r.iterations) {
      double largest = 1e-12;
      step(r);
      r.pressure_residual_pa = 0.0;
      worst_ = 0;
      for (std::size_t b = 0; b < m; ++b) {
        const line f = lost(b, q[b]);
        const double between = r.pressure_pa[static_cast<std::size_t>(end_[b][0])] - r.pressure_pa[static_cast<std::size_t>(end_[b][1])], off = std::fabs(between - f.value);
        tangent(b, f);
        largest = std::max(largest, std::fabs(between));
        if (plain_[b] < 0.0 && branches_[b].has_fan()) largest = std::max(largest, std::fabs(fan_at(branches_[b], q[b]).value));
        if (off > r.pressure_residual_pa) r.pressure_residual_pa = off, worst_ = b;
      }
      if (!is_finite(r.pressure_residual_pa)) break;
      if (r.pressure_residual_pa <= how.tolerance * largest) {
        finish(r);
        return r;
      }
    }
    throw convergence_error("duct_network: no balance after " + std::to_string(how.most_iterations) + " steps; the branch that is off most is \"" + branches_[worst_].name +
                            "\" (" + quantity_text(r.pressure_residual_pa, "Pa", 3) + "): a fan in the hump of its curve has several balances, or none that holds");
  }

 private:
  struct line {
    double value, slope;
  };
  static double steepness(const network_branch& b) {
    double most = 0.0;
    for (const auto& p : b.fan.pressure().points()) most = std::max(most, p.value);
    return most / b.fan.pressure().last_flow();
  }
  /// The fan's pressure; beyond its points a straight line that falls.
  static line fan_at(const network_branch& b, double q) {
    const auto& c = b.fan.pressure();
    const double least = steepness(b);
    if (q < c.first_flow()) {
      const double slope = std::min(c.slopes().front(), -0.2 * least);
      return {c.points().front().value + slope * (q - c.first_flow()), slope};
    }
    if (q > c.last_flow()) {
      const double slope = std::min(c.slopes().back(), -least);
      return {c.points().back().value + slope * (q - c.last_flow()), slope};
    }
    const auto f = c.at(q);
    return {f.value, f.slope};
  }
  /// What a branch takes at a flow; the slope is kept above 0, also at rest and where a fan's curve rises.
  line lost(std::size_t b, double q) const {
    if (const double k = plain_[b]; k >= 0.0) return {k * q * std::fabs(q), std::max({2.0 * k * std::fabs(q), floor_ * k * 2.0 * reference_, 1e-12})};
    const auto& one = branches_[b];
    auto l = one.loss.at(q);
    double slope = std::max(l.slope, floor_ * one.loss.quadratic * 2.0 * reference_);
    if (one.has_fan()) {
      const auto f = fan_at(one, q);
      l.pressure -= f.value;
      slope = std::max(slope - f.slope, 0.05 * steepness(one));
    }
    return {l.pressure, std::max(slope, 1e-12)};
  }
  [[noreturn]] static void refuse(const std::string& text) { throw range_error("duct_network: " + text); }
  std::string called(std::size_t b) const { return "branch \"" + branches_[b].name + "\""; }

  void check() const {
    const std::size_t n = nodes_.size(), m = branches_.size();
    if (m == 0) refuse("at least one branch");
    bool any_outside = false;
    for (const auto& one : nodes_) {
      any_outside = any_outside || one.outside;
      if (!(std::fabs(one.pressure_pa) <= 1e7)) refuse("node \"" + one.name + "\": pressure_pa must be from -1e7 to 1e7 Pa");
      if (!(std::fabs(one.supply_l_per_s) <= 1e9)) refuse("node \"" + one.name + "\": supply_l_per_s must be from -1e9 to 1e9 l/s");
      if (one.outside && one.supply_l_per_s != 0.0) refuse("node \"" + one.name + "\": a place outside takes what comes; a supply belongs to a junction");
    }
    std::vector<std::vector<std::size_t>> at(n);
    for (std::size_t b = 0; b < m; ++b) {
      const auto& one = branches_[b];
      if (one.from >= n || one.to >= n) refuse(called(b) + ": no such node");
      if (one.from == one.to) refuse(called(b) + " begins and ends at node \"" + nodes_[one.from].name + "\": nothing flows round it");
      if (one.loss.fixed_pa != 0.0) refuse(called(b) + ": a fixed pressure belongs to a place outside, not to a branch");
      if (!(one.loss.quadratic >= 0.0) || !is_finite(one.loss.quadratic)) refuse(called(b) + ": its resistance must be 0 or more");
      if (!one.has_fan() && !(one.loss(1.0) > 0.0)) refuse(called(b) + " has no resistance at all: give it a length, a fitting or a resistance");
      at[one.from].push_back(b);
      at[one.to].push_back(b);
    }
    for (std::size_t i = 0; i < n; ++i)
      if (at[i].empty()) refuse("node \"" + nodes_[i].name + "\" is isolated: no branch ends there");
    // a path to outside from everywhere
    std::vector<char> seen(n, 0);
    std::vector<std::size_t> queue;
    for (std::size_t i = 0; i < n; ++i)
      if (nodes_[i].outside) seen[i] = 1, queue.push_back(i);
    while (!queue.empty()) {
      const std::size_t i = queue.back();
      queue.pop_back();
      for (const auto b : at[i]) {
        const std::size_t j = branches_[b].from == i ? branches_[b].to : branches_[b].from;
        if (!seen[j]) seen[j] = 1, queue.push_back(j);
      }
    }
    for (std::size_t b = 0; b < m; ++b)
      if (!seen[branches_[b].from])
        refuse(called(b) + " has no path to outside: no place of known pressure is joined to it" + (any_outside ? "" : "; mark at least one node \"outside\""));
    // a branch behind which nothing enters or leaves cannot carry a flow
    std::vector<std::size_t> left(n);
    std::vector<char> gone(m, 0);
    for (std::size_t i = 0; i < n; ++i) left[i] = at[i].size();
    for (std::size_t i = 0; i < n; ++i)
      if (left[i] == 1 && !nodes_[i].outside && nodes_[i].supply_l_per_s == 0.0) queue.push_back(i);
    if (!queue.empty()) {
      const std::size_t i = queue.front();
      refuse(called(at[i].front()) + " cannot carry a flow: it ends at \"" + nodes_[i].name + "\", where nothing else is joined and nothing enters or leaves; mark the end \"outside\", or leave the branch out");
    }
  }
  void lay_out() {
    const std::size_t n = nodes_.size(), m = branches_.size();
    row_.assign(n, -1);
    int rows = 0;
    for (std::size_t i = 0; i < n; ++i)
      if (!nodes_[i].outside) row_[i] = rows++;
    weight_.assign(m, 1.0);
    offset_.assign(m, 0.0);
    plain_.assign(m, -1.0);
    slots_.assign(m, {-1, -1, -1});
    end_.clear();
    for (const auto& b : branches_) end_.push_back({static_cast<int>(b.from), static_cast<int>(b.to)});
    rhs_.resize(rows);
    if (rows == 0) return;
    const auto pattern = [&](bool whole) {
      std::vector<Eigen::Triplet<double>> cells;
      for (int i = 0; i < rows; ++i) cells.emplace_back(i, i, 1.0);
      for (const auto& b : branches_) {
        const int i = row_[b.from], j = row_[b.to];
        if (i < 0 || j < 0) continue;
        cells.emplace_back(std::min(i, j), std::max(i, j), 1.0);
        if (whole) cells.emplace_back(std::max(i, j), std::min(i, j), 1.0);
      }
      Eigen::SparseMatrix<double> a(rows, rows);
      a.setFromTriplets(cells.begin(), cells.end());
      a.makeCompressed();
      return a;
    };
    // the order that fills least is worked into the rows, so that no step has to permute the matrix
    Eigen::AMDOrdering<int>::PermutationType order;
    Eigen::AMDOrdering<int>()(pattern(true), order);
    std::vector<int> place(static_cast<std::size_t>(rows));
    for (int k = 0; k < rows; ++k) place[static_cast<std::size_t>(order.indices()[k])] = k;
    for (auto& r : row_)
      if (r >= 0) r = place[static_cast<std::size_t>(r)];
    matrix_ = pattern(false);
    const auto slot = [&](int i, int j) -> int {
      if (i < 0 || j < 0) return -1;
      const int line_ = std::min(i, j), column = std::max(i, j);
      const int* first = matrix_.innerIndexPtr() + matrix_.outerIndexPtr()[column];
      const int* last = matrix_.innerIndexPtr() + matrix_.outerIndexPtr()[column + 1];
      return static_cast<int>(std::lower_bound(first, last, line_) - matrix_.innerIndexPtr());
    };
    for (std::size_t b = 0; b < m; ++b) {
      const int i = row_[branches_[b].from], j = row_[branches_[b].to];
      slots_[b] = {slot(i, i), slot(j, j), slot(i, j)};
    }
    factor_.analyzePattern(matrix_);
  }
  /// One linear network: every branch q = offset + weight (pressure between its ends).
  void step(network_result& r) {
    double* cell = matrix_.valuePtr();
    std::fill(cell, cell + matrix_.nonZeros(), 0.0);
    for (std::size_t i = 0; i < nodes_.size(); ++i)
      if (row_[i] >= 0) rhs_[row_[i]] = nodes_[i].supply_l_per_s;
    for (std::size_t b = 0; b < branches_.size(); ++b) {
      const auto [from, to] = end_[b];
      const int i = row_[static_cast<std::size_t>(from)], j = row_[static_cast<std::size_t>(to)];
      const auto& s = slots_[b];
      const double w = weight_[b];
      if (i >= 0) {
        cell[s[0]] += w;
        rhs_[i] -= offset_[b];
        if (j < 0) rhs_[i] += w * r.pressure_pa[static_cast<std::size_t>(to)];
      }
      if (j >= 0) {
        cell[s[1]] += w;
        rhs_[j] += offset_[b];
        if (i < 0) rhs_[j] += w * r.pressure_pa[static_cast<std::size_t>(from)];
      }
      if (i >= 0 && j >= 0) cell[s[2]] -= w;
    }
    if (rhs_.size() > 0) {
      factor_.factorize(matrix_);
      if (factor_.info() != Eigen::Success) throw convergence_error("duct_network: the junctions cannot be solved for: resistances differ by too many orders of magnitude");
      rhs_ = factor_.solve(rhs_);
      for (std::size_t i = 0; i < nodes_.size(); ++i)
        if (row_[i] >= 0) r.pressure_pa[i] = rhs_[row_[i]];
    }
    for (std::size_t b = 0; b < branches_.size(); ++b)
      r.flow_l_per_s[b] = offset_[b] + weight_[b] * (r.pressure_pa[static_cast<std::size_t>(end_[b][0])] - r.pressure_pa[static_cast<std::size_t>(end_[b][1])]);
  }
  double reference_flow() const {
    double supply = 0.0, fans = 0.0, low = 0.0, high = 0.0;
    bool first = true;
    for (const auto& n : nodes_) {
      supply += std::fabs(n.supply_l_per_s);
      if (!n.outside) continue;
      low = first ? n.pressure_pa : std::min(low, n.pressure_pa);
      high = first ? n.pressure_pa : std::max(high, n.pressure_pa);
      first = false;
    }
    for (const auto& b : branches_)
      if (b.has_fan()) fans += 0.5 * b.fan.pressure().last_flow();
    if (supply + fans > 0.0) return std::max(0.5 * supply, fans) / std::sqrt(static_cast<double>(branches_.size()));
    return high > low ? 1.0 : 1e-3;
  }
  /// Brings a pattern of flows to the size at which what is put in by pressures and fans is what is lost; where flows are given, it is that already.
  void scale(std::vector<double>& q, const network_result& r) const {
    for (const auto& n : nodes_)
      if (n.supply_l_per_s != 0.0) return;
    double in = 0.0, largest = 0.0;
    for (std::size_t b = 0; b < branches_.size(); ++b) {
      const auto& one = branches_[b];
      if (nodes_[one.from].outside) in += q[b] * r.pressure_pa[one.from];
      if (nodes_[one.to].outside) in -= q[b] * r.pressure_pa[one.to];
      largest = std::max(largest, std::fabs(q[b]));
    }
    if (!(largest > 0.0)) return;
    const auto rest = [&](double a) {
      double sum = -in;
      for (std::size_t b = 0; b < branches_.size(); ++b) {
        sum += q[b] * branches_[b].loss(a * q[b]);
        if (branches_[b].has_fan()) sum -= q[b] * fan_at(branches_[b], a * q[b]).value;
      }
      return sum;
    };
    double low = 0.0, high = 1.0;
    if (!(rest(0.0) < 0.0)) return;
    for (int i = 0; i < 60 && rest(high) < 0.0; ++i) low = high, high *= 4.0;
    for (int i = 0; i < 12; ++i) {
      const double middle = low == 0.0 ? 0.25 * high : std::sqrt(low * high);
      (rest(middle) < 0.0 ? low : high) = middle;
      if (low > 0.0 && high < 1.15 * low) break;
    }
    const double a = 0.5 * (low + high);
    for (auto& x : q) x *= a;
  }
  void finish(network_result& r) const {
    std::vector<double> sum(nodes_.size(), 0.0);
    for (std::size_t b = 0; b < branches_.size(); ++b) {
      const auto& one = branches_[b];
      sum[one.from] -= r.flow_l_per_s[b];
      sum[one.to] += r.flow_l_per_s[b];
      if (one.has_fan() && !(r.flow_l_per_s[b] >= one.fan.pressure().first_flow() && r.flow_l_per_s[b] <= one.fan.pressure().last_flow())) r.beyond_curve.push_back(b);
    }
    for (std::size_t i = 0; i < nodes_.size(); ++i)
      if (row_[i] >= 0) r.flow_residual_l_per_s = std::max(r.flow_residual_l_per_s, std::fabs(sum[i] + nodes_[i].supply_l_per_s));
  }

  static constexpr double floor_ = 1e-4;  ///< of the slope at the reference flow
  std::vector<network_node> nodes_;
  std::vector<network_branch> branches_;
  std::vector<int> row_;
  std::vector<double> weight_, offset_;
  std::vector<double> plain_;             ///< resistance of a branch that has nothing else; else -1
  std::vector<std::array<int, 2>> end_;   ///< from, to
  std::vector<std::array<int, 3>> slots_;
  Eigen::SparseMatrix<double> matrix_;
  Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Upper, Eigen::NaturalOrdering<int>> factor_;
  Eigen::VectorXd rhs_;
  double reference_ = 1.0;
  std::size_t worst_ = 0;
};

inline network_result duct_network(std::vector<network_node> nodes, std::vector<network_branch> branches, const network_options& how = {}) {
  return network_solver(std::move(nodes), std::move(branches)).solve(how);
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

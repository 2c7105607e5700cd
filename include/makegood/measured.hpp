// SPDX-License-Identifier: MIT
// A number with its named error sources: two readings of one meter are correlated by themselves.
// Core: goes into every formula and check, and comes out again. First-order propagation by exact derivatives.
#pragma once
#include <cmath>
#include <span>
#include <string>
#include <string_view>
#include <vector>
#include "formula.hpp"
#include "scalar/dual.hpp"
#include "scalar/sparse.hpp"
#include "student.hpp"
#include "text.hpp"

namespace makegood {
inline namespace v1 {

/// Value and the contributions of named error sources (standard uncertainties with sign, in the unit of the value).
/// Sources are independent of each other; what is common to two numbers is a source that both name. Sources "sets #1", "sets #2" ...
/// are an ensemble: independent directions of one estimated covariance (see measured_together), with one number of degrees of freedom.
struct measured {
  struct part {
    std::string source;
    double u;
    double dof = without_end;  ///< degrees of freedom of u; NaN: the same source was given with different ones
  };
  double value = 0.0;
  std::vector<part> parts{};  ///< sorted by source, no source twice
  bool assumed = false;       ///< an instrument's statement was missing: the worst case of its class was taken

  measured() = default;
  measured(double x) : value(x) {}
  measured(const literal& x) : value(x.value) {}
  measured(double x, double standard_uncertainty, std::string source, double dof = without_end) : value(x) {
    add(std::move(source), standard_uncertainty, dof);
  }
  /// A number without doubt, said by name.
  static measured exact(double x) { return measured(x); }

  double standard_uncertainty() const {
    double sum = 0.0;
    for (const auto& p : parts) sum += p.u * p.u;
    return std::sqrt(sum);
  }
  /// Adds c times a source's standard uncertainty; equal names add with their sign, so that they may cancel.
  void add(std::string source, double u, double dof = without_end) {
    auto at = parts.begin();
    while (at != parts.end() && at->source < source) ++at;
    if (at == parts.end() || at->source != source) {
      parts.insert(at, {std::move(source), u, dof});
      return;
    }
    at->u += u;
    if (!(at->dof == dof)) at->dof = no_number;
  }

  /// Effective degrees of freedom (GUM G.4, Welch and Satterthwaite), not rounded. The equation wants independent terms: a source is one
  /// term however many inputs it came through, for its estimate is one; an ensemble likewise, since its directions were estimated
  /// together. Refused where a term has no single number of degrees of freedom.
  double effective_dof() const {
    double all = 0.0, sum = 0.0;
    for (std::size_t i = 0; i < parts.size();) {
      const std::string_view name = ensemble_of(parts[i].source);
      double square = 0.0;
      const double dof = parts[i].dof;
      bool one = dof > 0.0;
      for (; i < parts.size() && ensemble_of(parts[i].source) == name; ++i) {
        square += parts[i].u * parts[i].u;
        one = one && parts[i].dof == dof;
      }
      if (square == 0.0) continue;
      if (!one)
        throw range_error("effective degrees of freedom: \"" + std::string(name) +
                          "\" correlates the inputs and was given with different degrees of freedom; the formula of Welch and Satterthwaite needs independent terms");
      all += square;
      sum += square * square / dof;
    }
    return sum > 0.0 ? all * all / sum : without_end;
  }
  /// The coverage factor of a probability: Student's, with the effective degrees of freedom truncated (GUM G.4.1).
  double coverage_factor(double probability = 0.95) const {
    const double dof = std::floor(effective_dof() * (1.0 + 1e-12));  // 40 stays 40 where rounding made it 39.999...
    if (dof < 1.0) throw range_error("coverage factor: fewer than one effective degree of freedom");
    return student_factor(probability, dof);
  }
  double expanded_uncertainty(double probability) const {
    const double u = standard_uncertainty();
    return u == 0.0 ? 0.0 : coverage_factor(probability) * u;
  }

  /// The name of what a source was estimated together with; alone, its own.
  static std::string_view ensemble_of(std::string_view source) {
    const std::size_t at = source.rfind(" #");
    if (at == std::string_view::npos || at + 2 == source.size()) return source;
    for (std::size_t i = at + 2; i < source.size(); ++i)
      if (source[i] < '0' || source[i] > '9') return source;
    return source.substr(0, at);
  }
};
inline double plain_value(const measured& x) { return x.value; }

/// The covariance of two numbers by the sources that they share.
inline double covariance(const measured& a, const measured& b) {
  double sum = 0.0;
  for (auto p = a.parts.begin(), q = b.parts.begin(); p != a.parts.end() && q != b.parts.end();) {
    if (p->source < q->source) ++p;
    else if (q->source < p->source) ++q;
    else sum += p++->u * q++->u;
  }
  return sum;
}
/// Between -1 and 1; NaN where one of them has no uncertainty.
inline double correlation(const measured& a, const measured& b) {
  const double c = covariance(a, b) / (a.standard_uncertainty() * b.standard_uncertainty());
  return c > 1.0 ? 1.0 : c < -1.0 ? -1.0 : c;
}

/// Numbers with a covariance between them (row by row): one source "name #k" for each direction, so that the correlations go through
/// every formula. Degrees of freedom belong to the whole. Refused where the matrix is no covariance.
inline std::vector<measured> measured_together(std::span<const double> values, std::span<const double> covariances, const std::string& name,
                                               double dof = without_end) {
  const std::size_t n = values.size();
  if (covariances.size() != n * n) throw range_error("measured_together: " + std::to_string(n) + " values need " + std::to_string(n * n) + " covariances");
  std::vector<double> rest(covariances.begin(), covariances.end());
  std::vector<measured> all;
  for (const double v : values) all.emplace_back(v);
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      const double x = rest[i * n + j], limit = 1e-12 * std::sqrt(std::fabs(rest[i * n + i] * rest[j * n + j]));
      if (!is_finite(x) || rest[i * n + i] < 0.0 || std::fabs(x - rest[j * n + i]) > limit)
        throw range_error("measured_together: the covariances are not symmetric, or a variance is negative");
    }
  }
  for (std::size_t k = 0; k < n; ++k) {  // Cholesky, a column a source; what is left of a variance by rounding is none
    const double left = rest[k * n + k], own = covariances[k * n + k];
    if (left < -1e-9 * own) throw range_error("measured_together: no numbers can have these covariances (a correlation is too large)");
    if (left <= 1e-14 * own) {
      for (std::size_t i = k + 1; i < n; ++i)
        if (std::fabs(rest[i * n + k]) > 1e-6 * std::sqrt(own * covariances[i * n + i]))
          throw range_error("measured_together: no numbers can have these covariances (a correlation is too large)");
      continue;
    }
    const double root = std::sqrt(left);
    const std::string source = name + " #" + std::to_string(k + 1);
    for (std::size_t i = k; i < n; ++i) all[i].add(source, rest[i * n + k] / root, dof);
    for (std::size_t i = k + 1; i < n; ++i)
      for (std::size_t j = k + 1; j < n; ++j) rest[i * n + j] -= rest[i * n + k] * rest[j * n + k] / left;
  }
  return all;
}
/// The means of quantities that were read at the same time, m readings of each (GUM 5.2.3 and H.2): covariances of the means from the
/// readings, m - 1 degrees of freedom for the whole. With one quantity: a type A evaluation, s / √m.
inline std::vector<measured> measured_together(const std::vector<std::vector<double>>& readings_of, const std::string& name) {
  const std::size_t n = readings_of.size(), m = n ? readings_of[0].size() : 0;
  if (m < 2) throw range_error("measured_together: at least two readings of each quantity");
  std::vector<double> means, covariances(n * n);
  for (const auto& x : readings_of) {
    if (x.size() != m) throw range_error("measured_together: as many readings of each quantity, taken at the same times");
    double sum = 0.0;
    for (const double v : x) sum += v;
    const double mean = sum / static_cast<double>(m);
    double left = 0.0;
    for (const double v : x) left += v - mean;  // what the division lost
    means.push_back(mean + left / static_cast<double>(m));
  }
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j) {
      double sum = 0.0;
      for (std::size_t k = 0; k < m; ++k) sum += (readings_of[i][k] - means[i]) * (readings_of[j][k] - means[j]);
      covariances[i * n + j] = sum / (static_cast<double>(m) * static_cast<double>(m - 1));
    }
  return measured_together(means, covariances, name, static_cast<double>(m - 1));
}

/// Combines inputs by a gradient: value y, sensitivities c. An input without slope brings nothing, not even its source.
inline measured combine(double y, const double* c, const measured* x, std::size_t n) {
  measured r(y);
  for (std::size_t i = 0; i < n; ++i) {
    for (const auto& p : x[i].parts) r.add(p.source, c[i] * p.u, p.dof);
    r.assumed = r.assumed || (x[i].assumed && !x[i].parts.empty());
  }
  return r;
}

/// A sum keeps every source, so that common ones add up or cancel.
inline measured operator+(const measured& a, const measured& b) {
  const measured x[] = {a, b};
  constexpr double c[] = {1.0, 1.0};
  return combine(a.value + b.value, c, x, 2);
}
inline measured operator-(const measured& a, const measured& b) {
  const measured x[] = {a, b};
  constexpr double c[] = {1.0, -1.0};
  return combine(a.value - b.value, c, x, 2);
}
inline measured operator*(double factor, const measured& a) { return combine(factor * a.value, &factor, &a, 1); }

/// A line of calibration y = intercept + slope (x - from) through points of equal doubt, by least squares: both with what the scatter says
/// of them, correlated, n - 2 degrees of freedom (GUM H.3).
struct measured_line {
  measured intercept, slope;
  double from = 0.0;
  measured at(double x) const { return intercept + (x - from) * slope; }
};
inline measured_line line_through(std::span<const double> x, std::span<const double> y, double from, const std::string& name) {
  const std::size_t n = x.size();
  if (n < 3 || y.size() != n) throw range_error("line_through: at least three points, as many y as x");
  const double count = static_cast<double>(n);
  double mean_x = 0.0, mean_y = 0.0, xx = 0.0, xy = 0.0, rest = 0.0;
  for (std::size_t i = 0; i < n; ++i) mean_x += x[i] / count, mean_y += y[i] / count;
  for (std::size_t i = 0; i < n; ++i) xx += (x[i] - mean_x) * (x[i] - mean_x), xy += (x[i] - mean_x) * (y[i] - mean_y);
  if (!(xx > 0.0)) throw range_error("line_through: all points have the same x");
  const double slope = xy / xx, far = from - mean_x;
  for (std::size_t i = 0; i < n; ++i) {
    const double d = (y[i] - mean_y) - slope * (x[i] - mean_x);
    rest += d * d;
  }
  const double variance = rest / (count - 2.0);
  const double values[] = {mean_y + slope * far, slope};
  const double covariances[] = {variance * (1.0 / count + far * far / xx), variance * far / xx, variance * far / xx, variance / xx};
  const auto both = measured_together(values, covariances, name, count - 2.0);
  return {both[0], both[1], from};
}

namespace detail {
/// Value and exact gradient at x (choices have none).
template <class F>
double gradient(const F& f, const double* x, double* slopes) {
  constexpr int n = static_cast<int>(F::count);
  const auto bound = [&]<std::size_t I>() {
    if constexpr (F::is_choice[I]) return chosen<sparse<0, n>>{f.args[I].table, static_cast<int>(x[I])};
    else return sparse_input<static_cast<int>(I), n>(x[I]);
  };
  return [&]<std::size_t... I>(std::index_sequence<I...>) {
    const auto y = static_cast<sparse<(1u << n) - 1u, n>>(f.kernel(bound.template operator()<I>()...));
    ((slopes[I] = y.partial[I]), ...);
    return y.value;
  }(std::make_index_sequence<F::count>{});
}

/// Value and derivatives by two arguments, for the second order.
struct curvature {
  double value, i, j, ij, jj, ijj;
};
/// Exact derivatives at x by dual numbers of dual numbers of dual numbers: along i, j and j.
template <class F>
curvature curvature_at(const F& f, const double* x, std::size_t i, std::size_t j) {
  using one = dual<1>;
  using two = dual<1, one>;
  using three = dual<1, two>;
  std::array<three, F::count> in;
  for (std::size_t k = 0; k < F::count; ++k) {
    in[k] = three(x[k]);
    if (F::is_choice[k]) continue;
    if (k == i) in[k].partial[0] = two(1.0);
    if (k == j) in[k].value.partial[0] = in[k].value.value.partial[0] = one(1.0).value;
  }
  const three y = f.template value_as<three>(in.data(), x);
  return {y.value.value.value, y.partial[0].value.value, y.value.value.partial[0], y.partial[0].value.partial[0], y.value.partial[0].partial[0],
          y.partial[0].partial[0].partial[0]};
}
}  // namespace detail

/// What the second order of GUM 5.1.2 adds (uncorrelated, symmetric inputs), and what it says of the value.
struct second_order {
  measured first{};          ///< the result of the first order
  double variance = 0.0;     ///< added to the square of its standard uncertainty; may be negative
  double shift = 0.0;        ///< by how much the mean lies above the value: half the second derivatives times the variances
  double standard_uncertainty() const {
    const double u = first.standard_uncertainty(), square = u * u + variance;
    return square > 0.0 ? std::sqrt(square) : 0.0;
  }
  /// Whether it changes the standard uncertainty, or moves the mean, by more than a twentieth of the larger uncertainty.
  bool matters() const {
    const double a = first.standard_uncertainty(), b = standard_uncertainty();
    const double twentieth = 0.05 * (a > b ? a : b);
    return std::fabs(a - b) > twentieth || std::fabs(shift) > twentieth;
  }
  std::string word() const {
    if (!matters()) return "The second order does not matter: first order " + number_text(first.standard_uncertainty(), 3) + ", with it " + number_text(standard_uncertainty(), 3) + ".";
    return "The formula is curved within the uncertainty of its arguments: standard uncertainty " + number_text(first.standard_uncertainty(), 3) + " by the first order, " +
           number_text(standard_uncertainty(), 3) + " with the second; the mean lies " + number_text(shift, 3) + " from the value. Ask for Monte Carlo.";
  }
  /// The result with what was added as a source of its own; where the second order makes the uncertainty smaller, every part is.
  measured result(std::string_view formula) const {
    measured r = first;
    if (variance > 0.0) {
      r.add(std::string(formula) + ", second order", std::sqrt(variance));
    } else if (variance < 0.0) {
      const double by = standard_uncertainty() / first.standard_uncertainty();
      for (auto& p : r.parts) p.u *= by;
    }
    return r;
  }
};

namespace detail {
/// curve(i, j) gives the derivatives by two arguments.
template <class Curve>
second_order second_order_of(const measured& first, const measured* x, std::size_t n, const Curve& curve) {
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = i + 1; j < n; ++j)
      for (const auto& p : x[i].parts)
        for (const auto& q : x[j].parts)
          if (p.source == q.source && p.u != 0.0 && q.u != 0.0)
            throw range_error("second order: two arguments share the source \"" + p.source + "\"; its formula is for uncorrelated arguments. Ask for Monte Carlo");
  second_order r{first};
  for (std::size_t j = 0; j < n; ++j) {
    const double uj = x[j].standard_uncertainty();
    if (uj == 0.0) continue;
    for (std::size_t i = 0; i < n; ++i) {
      const double ui = x[i].standard_uncertainty();
      if (ui == 0.0) continue;
      const curvature d = curve(i, j);
      const double square = ui * ui * uj * uj;
      r.variance += (0.5 * d.ij * d.ij + d.i * d.ijj) * square;
      if (i == j) r.shift += 0.5 * d.jj * uj * uj;
    }
  }
  return r;
}
}  // namespace detail

template <>
struct evaluation<measured> {
  template <class F, class... X>
  static measured run(const F& f, const X&... x) {
    constexpr std::size_t n = F::count;
    const auto v = f.numbers(x...);
    if (const fault bad = f.check(v.data())) f.refuse(bad, v.data());
    std::array<double, n> c{};
    const double y = detail::gradient(f, v.data(), c.data());
    if (!is_finite(y)) f.refuse({fault::what::no_result, -1}, v.data());
    const auto all = f.template with_all<measured>(
        [](const auto&... m) { return std::array<measured, n>{as_measured(m)...}; }, x...);
    return combine(y, c.data(), all.data(), n);
  }

 private:
  static const measured& as_measured(const measured& m) { return m; }
  static measured as_measured(const chosen<measured>&) { return {}; }
};

/// A formula with its second order: the arguments one by one, as in a call.
template <class F, class... X>
second_order to_second_order(const F& f, const X&... x) {
  const measured y = evaluation<measured>::run(f, static_cast<measured>(x)...);
  const std::array<measured, sizeof...(X)> in{static_cast<measured>(x)...};
  std::array<double, F::count> v = f.numbers(static_cast<measured>(x)...);
  return detail::second_order_of(y, in.data(), in.size(), [&](std::size_t i, std::size_t j) { return detail::curvature_at(f, v.data(), i, j); });
}

}  // namespace v1
}  // namespace makegood

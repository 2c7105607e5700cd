// SPDX-License-Identifier: MIT
// Fitting a Steinhart-Hart curve to points of temperature and resistance.
// Subject: sensing. Opt-in: needs Eigen.
#pragma once
#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>
#include "../text.hpp"
#include "thermistor.hpp"

namespace makegood {
inline namespace v1 {
namespace sensing {

/// One point of a curve.
struct point {
  double temperature_c;
  double resistance_ohm;
};
/// Coefficients of 1/T = a + b ln R + c (ln R)³ (R in ohms) and what the points say about their doubt.
struct steinhart_hart_fit {
  double a = no_number, b = no_number, c = no_number;  ///< 1/K
  /// Covariance of (a, b, c) in 1/K², from the scatter about the curve. Three points leave no scatter: all NaN.
  std::array<std::array<double, 3>, 3> covariance{};
  double residual_k = no_number;  ///< root mean square distance of the points from the curve; 0 to rounding for three points
};

namespace detail {
/// How many values differ from all before them.
template <class Value>
std::size_t count_different(std::span<const point> points, Value value) {
  std::size_t different = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    bool seen = false;
    for (std::size_t j = 0; j < i && !seen; ++j) seen = value(points[i]) == value(points[j]);
    if (!seen) ++different;
  }
  return different;
}
}  // namespace detail

/// A curve that turns between its points is refused. Exact for three points; for more, least squares of 1/T with equal weights (column-pivoted QR, scaled columns).
inline steinhart_hart_fit fit_steinhart_hart(std::span<const point> points) {
  const std::string name = "fit_steinhart_hart";
  if (points.size() < 3) throw range_error(name + ": " + std::to_string(points.size()) + " points given, at least 3 are needed");
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double values[] = {points[i].temperature_c, points[i].resistance_ohm};
    const argument* kinds[] = {&detail::sensor_temperature, &detail::sensor_resistance};
    for (int k = 0; k < 2; ++k)
      if (!kinds[k]->permitted.contains(values[k]))
        throw range_error(name + ": points[" + std::to_string(i) + "]: " + std::string(kinds[k]->name) + ": " + v1::detail::out_of_range_text(*kinds[k], values[k]));
  }
  if (detail::count_different(points, [](const point& p) { return p.temperature_c; }) < 3)
    throw relation_error(name + ": the points are at fewer than three different temperatures");
  if (detail::count_different(points, [](const point& p) { return p.resistance_ohm; }) < 3)
    throw relation_error(name + ": the points have fewer than three different resistances");

  steinhart_hart_fit fit;
  for (auto& row : fit.covariance) row.fill(no_number);
  const auto kelvins = [&](std::size_t i) { return points[i].temperature_c + 273.15; };
  if (points.size() == 3) {
    // divided differences, each difference taken before it can cancel
    const double x[] = {std::log(points[0].resistance_ohm), std::log(points[1].resistance_ohm), std::log(points[2].resistance_ohm)};
    const auto slope = [&](std::size_t i, std::size_t j) {  // of 1/T over ln R
      return (points[i].temperature_c - points[j].temperature_c) / (kelvins(i) * kelvins(j)) /
             std::log(points[j].resistance_ohm / points[i].resistance_ohm);
    };
    const double sum = x[0] + x[1] + x[2];
    if (std::fabs(sum) < 1e-9 * (std::fabs(x[0]) + std::fabs(x[1]) + std::fabs(x[2])))
      throw relation_error(name + ": these three resistances do not determine the curve (their logarithms add up to nothing)");
    fit.c = (slope(0, 2) - slope(0, 1)) / std::log(points[2].resistance_ohm / points[1].resistance_ohm) / sum;
    fit.b = slope(0, 1) - fit.c * (x[0] * x[0] + x[0] * x[1] + x[1] * x[1]);
    fit.a = 1.0 / kelvins(0) - x[0] * (fit.b + fit.c * x[0] * x[0]);
  } else {
    const auto n = static_cast<Eigen::Index>(points.size());
    Eigen::MatrixX3d matrix(n, 3);
    Eigen::VectorXd right(n);
    for (Eigen::Index i = 0; i < n; ++i) {
      const double x = std::log(points[static_cast<std::size_t>(i)].resistance_ohm);
      matrix.row(i) << 1.0, x, x * x * x;
      right(i) = 1.0 / kelvins(static_cast<std::size_t>(i));
    }
    const Eigen::RowVector3d scale = matrix.colwise().norm();
    for (Eigen::Index k = 0; k < 3; ++k) matrix.col(k) /= scale(k) > 0.0 ? scale(k) : 1.0;
    Eigen::ColPivHouseholderQR<Eigen::MatrixX3d> qr(matrix);
    qr.setThreshold(1e-11);
    if (qr.rank() < 3) throw relation_error(name + ": these points do not determine the curve: take them further apart");
    const Eigen::Vector3d solution = qr.solve(right);
    const Eigen::Vector3d abc = solution.cwiseQuotient(scale.transpose());
    fit.a = abc(0);
    fit.b = abc(1);
    fit.c = abc(2);
    const double variance = (right - matrix * solution).squaredNorm() / static_cast<double>(n - 3);
    const Eigen::Matrix3d upper = qr.matrixR().topLeftCorner<3, 3>().triangularView<Eigen::Upper>();
    const Eigen::Matrix3d inverse = qr.colsPermutation() * upper.triangularView<Eigen::Upper>().solve(Eigen::Matrix3d::Identity()).eval();
    const Eigen::Matrix3d covariance = variance * (inverse * inverse.transpose());
    for (int i = 0; i < 3; ++i)
      for (int k = 0; k < 3; ++k) fit.covariance[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)] = covariance(i, k) / (scale(i) * scale(k));
  }
  double least = std::log(points[0].resistance_ohm), most = least;
  for (const auto& p : points) {
    least = std::min(least, std::log(p.resistance_ohm));
    most = std::max(most, std::log(p.resistance_ohm));
  }
  const auto steep = [&](double x) { return fit.b + 3.0 * fit.c * x * x; };  // d(1/T)/d(ln R), whose middle lies at ln R = 0
  const double at_zero = least < 0.0 && most > 0.0 ? steep(0.0) : steep(least);
  if (!(steep(least) * steep(most) > 0.0) || !(steep(least) * at_zero > 0.0))
    throw relation_error(name + ": the curve through these points turns between them: it is not that of one sensor (a misread point, or points of two sensors)");
  double sum = 0.0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double x = std::log(points[i].resistance_ohm);
    const double inverse = fit.a + x * (fit.b + fit.c * x * x);
    sum += square((1.0 / kelvins(i) - inverse) / inverse * kelvins(i));
  }
  fit.residual_k = std::sqrt(sum / static_cast<double>(points.size()));
  return fit;
}

}  // namespace sensing
}  // namespace v1
}  // namespace makegood

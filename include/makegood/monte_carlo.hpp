// SPDX-License-Identifier: MIT
// Propagation of distributions by Monte Carlo (JCGM 101:2008), and the front door that falls back on it where the first order is not
// good enough. Opt-in: needs the compiled target.
// The draws depend on the seed alone: the same result on every processor and with any number of threads.
#pragma once
#include <cstdint>
#include <span>
#include <string>
#include <variant>
#include <vector>
#include "catalogue.hpp"
#include "measured.hpp"

namespace makegood {
inline namespace v1 {

/// What is known of a quantity, as a distribution (JCGM 101:2008, 6.4).
struct distribution {
  enum class shape : unsigned char { normal, rectangular, trapezoidal, arcsine, student, exponential };
  shape is = shape::normal;
  double centre = 0.0;  ///< the middle; of an exponential distribution its start
  double scale = 1.0;   ///< half the width; of normal and Student's the standard uncertainty; of an exponential distribution its mean above the start
  double extra = 0.0;   ///< of a trapezoid the share of its shorter side; of Student's the degrees of freedom

  static distribution normal(double mean, double standard_uncertainty);
  /// Anywhere between two limits, equally likely.
  static distribution rectangular(double low, double high);
  /// The sum of two rectangular ones of the same width.
  static distribution triangular(double low, double high);
  /// Between rectangular (top = 1) and triangular (top = 0): the share of the width on which all is equally likely.
  static distribution trapezoidal(double low, double high, double top);
  /// U-shaped: what swings like a sine between two limits, read at any time.
  static distribution arcsine(double low, double high);
  /// A mean of few readings: scale is s/√n.
  static distribution student(double mean, double scale, double dof);
  /// Not negative, with a known mean.
  static distribution exponential(double mean);

  double mean() const { return is == shape::exponential ? centre + scale : centre; }
  /// Infinite where Student's has none (two degrees of freedom and fewer).
  double standard_uncertainty() const;
  /// As the first order takes it: of Student's, the scale with its degrees of freedom.
  measured as_measured(std::string source) const;
  std::string text() const;
};

/// One argument: a number, a number with named sources (common ones are drawn once), or a distribution.
using uncertain = std::variant<double, measured, distribution>;

struct monte_carlo_options {
  std::size_t trials = 0;         ///< 0: as many as the digits need, in blocks of 10240 (JCGM 101, 7.9)
  int digits = 2;                 ///< of the standard uncertainty that shall count
  double probability = 0.95;
  std::uint64_t seed = 1;
  unsigned threads = 1;           ///< at most. The bits are the same
  std::size_t most = 5'000'000;   ///< trials at most, where the digits decide
  double refused_share = 0.001;   ///< when more draws than this share are not permitted, there is no result
  std::string_view instruction_set{};  ///< for tests; the bits are the same
};

struct monte_carlo_result {
  double mean = 0.0, standard_uncertainty = 0.0;
  double low = 0.0, high = 0.0;                    ///< probabilistically symmetric coverage interval
  double shortest_low = 0.0, shortest_high = 0.0;  ///< the shortest one, to 1/8192 of the width of the histogram
  double median = 0.0;
  double probability = 0.95;
  std::size_t trials = 0, refused = 0;             ///< refused: draws outside what the formula permits, left out of all the rest
  std::uint64_t seed = 1;
  double tolerance = 0.0;                          ///< half a unit of the last digit asked for
  /// Twice the standard deviations of mean, standard uncertainty and both ends.
  double doubt_mean = 0.0, doubt_u = 0.0, doubt_low = 0.0, doubt_high = 0.0;
  bool converged = false;                          ///< all four are below the tolerance
  double first_cell = 0.0, cell = 0.0;             ///< histogram: lower end, width; what lies outside is in the first and last
  std::vector<unsigned> histogram{};
};

/// Runs the formula on drawn arguments, in their order; those with a default may be left out at the end. A word is the index of its row.
monte_carlo_result monte_carlo(const formula_info& f, std::span<const uncertain> arguments, const monte_carlo_options& how = {});

/// A result with the method that holds for it.
struct propagated {
  measured first_order{};
  double first_low = 0.0, first_high = 0.0;  ///< its coverage interval (Student's factor with the effective degrees of freedom)
  monte_carlo_result monte_carlo{};
  bool validated = false;                    ///< both ends of both methods agree within the tolerance (JCGM 101, 8.1)
  std::string word{};                        ///< that in one sentence

  double value() const { return validated ? first_order.value : monte_carlo.mean; }
  double standard_uncertainty() const { return validated ? first_order.standard_uncertainty() : monte_carlo.standard_uncertainty; }
  double low() const { return validated ? first_low : monte_carlo.low; }
  double high() const { return validated ? first_high : monte_carlo.high; }
};
/// First order, held against Monte Carlo with a fifth of the tolerance (JCGM 101, 8.2); where they differ, Monte Carlo counts.
propagated propagate(const formula_info& f, std::span<const uncertain> arguments, const monte_carlo_options& how = {});

/// Draws first ... first + size - 1 of one quantity of a seed (first and size: multiples of 64). Arguments that are distributions are
/// quantities 0x10000 and on, named sources 0 and on in the order of their names.
void draw(const distribution& d, std::uint64_t seed, std::uint32_t quantity, std::uint64_t first, std::span<double> to, std::string_view instruction_set = {});

namespace detail {
/// A formula that stands in no list: calculated one trial after the other.
template <class F>
formula_info loose_info(const F& f) {
  formula_info i;
  i.self = &f;
  i.result = f.result;
  i.args = f.args;
  i.from = f.from;
  i.value = [](const void* s, const double* x) { return static_cast<const F*>(s)->value(x); };
  i.check = [](const void* s, const double* x) { return static_cast<const F*>(s)->check(x); };
  i.refusal = [](const void* s, fault why, const double* x) { return static_cast<const F*>(s)->refusal(why, x); };
  i.gradient = [](const void* s, const double* x, double* c) { return gradient(*static_cast<const F*>(s), x, c); };
  i.curvature = [](const void* s, const double* x, std::size_t a, std::size_t b) { return curvature_at(*static_cast<const F*>(s), x, a, b); };
  return i;
}
/// What the compiled list has of it, or the formula itself.
template <class F>
formula_info info_for(const F& f);
formula_info listed(const void* item, const formula_info& otherwise);
template <class F>
formula_info info_for(const F& f) {
  return listed(&f, loose_info(f));
}
}  // namespace detail

template <class F>
  requires requires(const F& f) { f.kernel; }
monte_carlo_result monte_carlo(const F& f, const std::vector<uncertain>& arguments, const monte_carlo_options& how = {}) {
  return monte_carlo(detail::info_for(f), std::span<const uncertain>(arguments), how);
}
template <class F>
  requires requires(const F& f) { f.kernel; }
propagated propagate(const F& f, const std::vector<uncertain>& arguments, const monte_carlo_options& how = {}) {
  return propagate(detail::info_for(f), std::span<const uncertain>(arguments), how);
}

}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// How a duration or a cost may come out: one number, triangular, PERT or lognormal; its mean, and its value at a probability.
// Subject: price.
#pragma once
#include <string>
#include <string_view>
#include <vector>
#include "../math.hpp"
#include "../scalar/random.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace price {

enum class spread_kind : unsigned char { none, triangular, pert, lognormal };
inline constexpr std::string_view spread_kinds[] = {"none", "triangular", "pert", "lognormal"};

/// What a number may come out as. PERT is the beta distribution with mean (low + 4 likely + high)/6; of a lognormal one, `likely` is
/// the median and `p90` the value that it keeps in nine of ten cases.
class spread {
 public:
  spread() = default;
  explicit spread(double value) : likely_(value), low_(value), high_(value) {}
  static spread triangular(double low, double likely, double high) { return bounded(spread_kind::triangular, low, likely, high); }
  static spread pert(double low, double likely, double high) {
    spread s = bounded(spread_kind::pert, low, likely, high);
    s.tabulate();
    return s;
  }
  static spread lognormal(double median, double p90) {
    if (!(is_finite(median) && is_finite(p90) && median > 0.0 && p90 > median)) throw range_error("a lognormal spread needs a median above 0, and a p90 above the median");
    spread s(median);
    s.kind_ = spread_kind::lognormal;
    s.sigma_ = log(p90 / median) / 1.2815515655446004;  // the 90 % point of the standard normal distribution
    return s;
  }

  spread_kind kind() const { return kind_; }
  double mean() const {
    switch (kind_) {
      case spread_kind::triangular: return (low_ + likely_ + high_) / 3.0;
      case spread_kind::pert: return (low_ + 4.0 * likely_ + high_) / 6.0;
      case spread_kind::lognormal: return likely_ * exp(0.5 * square(sigma_));
      case spread_kind::none: break;
    }
    return likely_;
  }
  /// The most that it comes to; of a lognormal one, in 99 of 100 cases.
  double most() const { return kind_ == spread_kind::lognormal ? likely_ * exp(2.3263478740408408 * sigma_) : high_; }
  /// Drawn with the 128 random bits of a counter.
  double drawn(const random::bits_of_a_draw<std::uint64_t>& bits) const {
    switch (kind_) {
      case spread_kind::triangular: {
        const double u = random::uniform<double>(bits.first), width = high_ - low_, left = likely_ - low_;
        return u * width <= left ? low_ + sqrt(u * width * left) : high_ - sqrt((1.0 - u) * width * (high_ - likely_));
      }
      case spread_kind::pert: {
        const double u = random::uniform<double>(bits.first);
        std::size_t a = 0, b = table_.size() - 1;
        while (b - a > 1) {
          const std::size_t middle = (a + b) / 2;
          (table_[middle] <= u ? a : b) = middle;
        }
        const double part = table_[b] > table_[a] ? (u - table_[a]) / (table_[b] - table_[a]) : 0.5;
        return low_ + (high_ - low_) * ((static_cast<double>(a) + part) / static_cast<double>(cells));
      }
      case spread_kind::lognormal: return likely_ * exp(sigma_ * random::normals<double>(bits.first).first);
      case spread_kind::none: break;
    }
    return likely_;
  }

 private:
  static constexpr std::size_t cells = 2048;  // the table is good to 1e-6 of the width
  static spread bounded(spread_kind kind, double low, double likely, double high) {
    if (!(is_finite(low) && is_finite(likely) && is_finite(high) && low <= likely && likely <= high && low < high))
      throw range_error("a spread from " + number_text(low) + " to " + number_text(high) + " with " + number_text(likely) + " as the likely one: they must rise, and the ends must differ");
    spread s(likely);
    s.kind_ = kind;
    s.low_ = low;
    s.high_ = high;
    return s;
  }
  /// The distribution function at equal steps of x, by Simpson's rule.
  void tabulate() {
    const double width = high_ - low_, a = 4.0 * (likely_ - low_) / width, b = 4.0 * (high_ - likely_) / width;  // exponents of x and 1 - x
    const auto density = [&](double x) {
      const double rise = a == 0.0 ? 1.0 : x <= 0.0 ? 0.0 : exp(a * log(x)), fall = b == 0.0 ? 1.0 : x >= 1.0 ? 0.0 : exp(b * log(1.0 - x));
      return rise * fall;
    };
    table_.assign(cells + 1, 0.0);
    const double step = 1.0 / static_cast<double>(cells);
    for (std::size_t i = 0; i < cells; ++i) {
      const double x = static_cast<double>(i) * step;
      table_[i + 1] = table_[i] + step / 6.0 * (density(x) + 4.0 * density(x + 0.5 * step) + density(x + step));
    }
    for (std::size_t i = 0; i <= cells; ++i) table_[i] /= table_.back();
  }

  spread_kind kind_ = spread_kind::none;
  double likely_ = 0.0, low_ = 0.0, high_ = 0.0, sigma_ = 0.0;
  std::vector<double> table_{};
};

/// Draws of a model: how many, and the seed that they follow from.
struct drawing {
  std::uint64_t seed = 1;
  std::size_t draws = 10000;
};
/// The value that a share of the sorted numbers does not exceed: the exact order statistic.
template <class T>
T at_share(const std::vector<T>& sorted, double share) {
  const auto n = static_cast<double>(sorted.size());
  auto i = static_cast<std::size_t>(n * share);
  if (static_cast<double>(i) < n * share) ++i;
  return sorted[i > 0 ? i - 1 : 0];
}

}  // namespace price
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// From readings to the probabilities of what may be wrong: hypotheses as forward models with nuisance parameters, one joint likelihood.
// Job floor: used by every diagnosis. Opt-in; includes the standard library only. After set-up nothing is allocated.
#pragma once
#include <algorithm>
#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../measured.hpp"
#include "../reading.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

inline constexpr int most_readings = 24;    ///< in one joint likelihood
inline constexpr int most_parameters = 12;  ///< of one hypothesis
inline constexpr double least_none_prior = 0.02;

// ---- mathematics ---------------------------------------------------------------------------------------------------

namespace detail {
inline constexpr double infinite = __builtin_inf();
inline constexpr double log_root_2pi = 0.91893853320467274178;

/// z with Φ(z) = p for 0 < p < 1: a rational approximation (relative error 1e-9) and one Halley step.
inline double normal_score(double p) {
  constexpr double a[] = {-3.969683028665376e+01, 2.209460984245205e+02, -2.759285104469687e+02, 1.383577518672690e+02, -3.066479806614716e+01, 2.506628277459239e+00};
  constexpr double b[] = {-5.447609879822406e+01, 1.615858368580409e+02, -1.556989798598866e+02, 6.680131188771972e+01, -1.328068155288572e+01, 1.0};
  constexpr double c[] = {-7.784894002430293e-03, -3.223964580411365e-01, -2.400758277161838e+00, -2.549732539343734e+00, 4.374664141464968e+00, 2.938163982698783e+00};
  constexpr double d[] = {0.0, 7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996e+00, 3.754408661907416e+00, 1.0};
  const auto ratio = [](const double* top, const double* bottom, double x) {
    double t = top[0], u = bottom[0];
    for (int i = 1; i < 6; ++i) t = t * x + top[i], u = u * x + bottom[i];
    return t / u;
  };
  const double tail = p < 0.5 ? p : 1.0 - p;
  if (!(tail > 0.0)) return p < 0.5 ? -infinite : infinite;
  double z;  // of the lower tail
  if (tail < 0.02425) z = ratio(c, d, sqrt(-2.0 * log(tail)));
  else z = (tail - 0.5) * ratio(a, b, square(tail - 0.5));
  const double e = (normal_cdf(z) - tail) * 2.5066282746310005024 * exp(0.5 * z * z);
  z -= e / (1.0 + 0.5 * z * e);
  return p < 0.5 ? z : -z;
}
/// ln Φ(z), also where Φ underflows.
inline double log_normal_cdf(double z) {
  if (z > -30.0) return log(normal_cdf(z));
  const double w = 1.0 / (z * z);  // asymptotic series of Mills' ratio
  return -0.5 * z * z - log_root_2pi - log(-z) + log1p(-w * (1.0 - 3.0 * w * (1.0 - 5.0 * w * (1.0 - 7.0 * w))));
}
/// ln(Φ(high) - Φ(low)), low <= high, either may be infinite.
inline double log_normal_between(double low, double high) {
  if (low > 0.0) return log_normal_between(-high, -low);
  if (!(high > low)) return -infinite;
  const double upper = high == infinite ? 0.0 : log_normal_cdf(high);
  if (low == -infinite) return upper;
  const double lower = log_normal_cdf(low);
  return upper + log1p(-exp(lower - upper));
}
inline double log_sum(double a, double b) {
  if (a < b) std::swap(a, b);
  return b == -infinite ? a : a + log1p(exp(b - a));
}
/// The density of the standard normal distribution.
inline double normal_density(double z) { return exp(-0.5 * z * z) * 0.39894228040143267794; }

/// Rank-1 lattice of Korobov's form (n a power of 2), u_ij = frac((i a^j mod n + 1/2) / n): multipliers found by least P_2 in 8 dimensions with weights 1/j.
struct lattice {
  std::uint32_t n, a;
  std::uint32_t next(std::uint32_t x) const { return static_cast<std::uint32_t>((static_cast<std::uint64_t>(x) * a) & (n - 1)); }  ///< from one coordinate to that of the next dimension
};
inline constexpr lattice lattices[] = {{256, 35}, {1024, 57}, {2048, 343}, {4096, 1077}};
constexpr const lattice& lattice_of(std::uint32_t n) {
  for (const auto& l : lattices)
    if (l.n == n) return l;
  return lattices[3];
}

/// The normal scores of the coordinates of a lattice: of (x + 1/2) / n for x = 0 ... n - 1. Worked out once in a process.
inline const std::vector<double>& scores_of(const lattice& of) {
  static const auto tables = [] {
    std::array<std::vector<double>, std::size(lattices)> all;
    for (std::size_t l = 0; l < all.size(); ++l)
      for (std::uint32_t x = 0; x < lattices[l].n; ++x) all[l].push_back(normal_score((static_cast<double>(x) + 0.5) / lattices[l].n));
    return all;
  }();
  return tables[static_cast<std::size_t>(&of - lattices)];
}

/// Counter-based numbers: the same (seed, draw, which) gives the same number, whatever was asked before. Open interval (0, 1).
inline double counted_uniform(std::uint64_t seed, std::uint64_t draw, std::uint64_t which) {
  std::uint64_t x = seed * 0x9e3779b97f4a7c15ull + draw * 0xd1b54a32d192ed03ull + which * 0x8cb92ba72f3d8dd7ull;
  for (int round = 0; round < 2; ++round) {
    x ^= x >> 30;
    x *= 0xbf58476d1ce4e5b9ull;
    x ^= x >> 27;
    x *= 0x94d049bb133111ebull;
    x ^= x >> 31;
  }
  return (static_cast<double>(x >> 11) + 0.5) * 0x1p-53;
}
}  // namespace detail

// ---- what is said before anything is read --------------------------------------------------------------------------

/// How a nuisance parameter is distributed. All are reached from a standard normal score.
struct distribution {
  enum class shape : unsigned char { normal, log_normal, uniform, log_uniform, triangular };
  shape is = shape::normal;
  double a = 0.0, b = 1.0, c = 0.0;

  static distribution normal(double mean, double sd) { return {shape::normal, mean, sd, 0.0}; }
  /// `sd` is that of the natural logarithm.
  static distribution log_normal(double median, double sd) { return {shape::log_normal, median, sd, 0.0}; }
  static distribution uniform(double low, double high) { return {shape::uniform, low, high, 0.0}; }
  static distribution log_uniform(double low, double high) { return {shape::log_uniform, low, high, 0.0}; }
  static distribution triangular(double low, double most_likely, double high) { return {shape::triangular, low, high, most_likely}; }

  /// What is wrong with the numbers, or "".
  std::string_view problem() const {
    if (!is_finite(a) || !is_finite(b) || !is_finite(c)) return "its numbers must be finite";
    switch (is) {
      case shape::normal: return b > 0.0 ? "" : "the standard deviation must be above 0";
      case shape::log_normal: return a > 0.0 && b > 0.0 ? "" : "the median and the standard deviation of the logarithm must be above 0";
      case shape::uniform: return a < b ? "" : "the low end must be below the high end";
      case shape::log_uniform: return 0.0 < a && a < b ? "" : "the low end must be above 0 and below the high end";
      default: return a <= c && c <= b && a < b ? "" : "the most likely value must lie between the ends";
    }
  }
  /// The value at a cumulative probability 0 < p < 1.
  double quantile(double p) const {
    switch (is) {
      case shape::normal: return a + b * detail::normal_score(p);
      case shape::log_normal: return a * exp(b * detail::normal_score(p));
      case shape::uniform: return a + (b - a) * p;
      case shape::log_uniform: return a * exp(p * log(b / a));
      default: {
        const double split = (c - a) / (b - a);
        return p < split ? a + sqrt(p * (b - a) * (c - a)) : b - sqrt((1.0 - p) * (b - a) * (b - c));
      }
    }
  }
  /// The value at a standard normal score, and its slope by the score.
  double at_score(double z) const {
    if (is == shape::normal) return a + b * z;
    if (is == shape::log_normal) return a * exp(b * z);
    return quantile(std::clamp(normal_cdf(z), 1e-300, 1.0 - 0x1p-53));
  }
  double slope_at_score(double z) const {
    const double x = at_score(z);
    switch (is) {
      case shape::normal: return b;
      case shape::log_normal: return b * x;
      case shape::uniform: return (b - a) * detail::normal_density(z);
      case shape::log_uniform: return x * log(b / a) * detail::normal_density(z);
      default: {
        const double height = x < c ? 2.0 * (x - a) / ((b - a) * (c - a)) : 2.0 * (b - x) / ((b - a) * (b - c));
        return height > 0.0 ? detail::normal_density(z) / height : 0.0;
      }
    }
  }
  /// Where the first order stands, and the standard deviation that it uses.
  double centre() const {
    switch (is) {
      case shape::uniform: return 0.5 * (a + b);
      case shape::log_uniform: return sqrt(a * b);
      case shape::triangular: return (a + b + c) / 3.0;
      default: return a;
    }
  }
  double scale() const {
    switch (is) {
      case shape::normal: return b;
      case shape::log_normal: return a * b;
      case shape::uniform: return (b - a) / 3.4641016151377545871;
      case shape::log_uniform: return sqrt(a * b) * log(b / a) / 3.4641016151377545871;
      default: return sqrt((a * a + b * b + c * c - a * b - a * c - b * c) / 18.0);
    }
  }
  /// A point `s` scales away from the centre, kept inside the ends.
  double at_distance(double s) const {
    if (is == shape::log_normal) return a * exp(b * s);
    const double x = centre() + s * scale();
    return is == shape::normal ? x : std::clamp(x, a, b);
  }
};
struct parameter {
  std::string name;
  distribution is;
};

/// The parameters of a hypothesis as a prediction sees them: doubles or duals, in the order of the hypothesis.
template <class T>
struct parameter_values {
  const T* first;
  const T& operator[](int i) const { return first[i]; }
};

/// What a test would show if a hypothesis held: a real value from the parameters, outcomes by name with their probabilities, or both (the
/// real value then has what the outcomes leave). Without a real value the rest belongs to the test's broad distribution.
/// Outcomes: "above" (over range), "below", or a category of the test.
class prediction {
 public:
  struct chance {
    std::string outcome;
    double probability;
  };
  prediction() = default;
  /// From a callable that takes parameter_values<T> for every kind of number T; formulas by call(formula, ...).
  template <class F>
    requires(std::is_invocable_v<const F&, parameter_values<double>>)
  prediction(F f) {
    constexpr int width = 4;  // partial derivatives in one pass
    self_ = std::make_shared<const F>(std::move(f));
    value_ = [](const void* s, const double* x, int) { return static_cast<double>((*static_cast<const F*>(s))(parameter_values<double>{x})); };
    slopes_ = [](const void* s, const double* x, int n, double* slopes) {
      using D = dual<width>;
      std::array<D, most_parameters> in;
      double y = 0.0;
      for (int from = 0; from == 0 || from < n; from += width) {
        for (int i = 0; i < n; ++i) in[static_cast<std::size_t>(i)] = i >= from && i < from + width ? D::input(x[i], i - from) : D(x[i]);
        const D r = static_cast<D>((*static_cast<const F*>(s))(parameter_values<D>{in.data()}));
        y = r.value;
        for (int i = from; i < n && i < from + width; ++i) slopes[i] = r.partial[i - from];
      }
      return y;
    };
  }
  prediction(double constant) : prediction([constant](const auto& p) { return std::remove_cvref_t<decltype(p[0])>(constant); }) {}
  /// Value and slopes by two functions of one object: for models that bring their own derivatives.
  static prediction from(std::shared_ptr<const void> self, double (*value)(const void*, const double* x, int n),
                         double (*slopes)(const void*, const double* x, int n, double* slopes)) {
    prediction p;
    p.self_ = std::move(self);
    p.value_ = value;
    p.slopes_ = slopes;
    return p;
  }
  static prediction outcomes(std::vector<chance> list) {
    prediction p;
    p.chances_ = std::move(list);
    return p;
  }
  prediction& or_outcome(std::string name, double probability) {
    chances_.push_back({std::move(name), probability});
    return *this;
  }
  bool real() const { return value_ != nullptr; }
  const std::vector<chance>& chances() const { return chances_; }
  double value(const double* x, int n) const { return value_(self_.get(), x, n); }
  double slopes(const double* x, int n, double* slopes) const { return slopes_(self_.get(), x, n, slopes); }

 private:
  std::shared_ptr<const void> self_;
  double (*value_)(const void*, const double*, int) = nullptr;
  double (*slopes_)(const void*, const double*, int, double*) = nullptr;
  std::vector<chance> chances_;
};

/// A test that can be made, and the broad distribution of what it may show when nothing is known: the values of its range uniform in the
/// logarithm (or uniform), all outcomes that are no value together `outcomes_share`, in equal parts.
struct test {
  enum class spread : unsigned char { log_uniform, uniform };
  std::string id, title{};
  double low = 0.0, high = 0.0;  ///< range of the instrument in the unit of the reading; both 0: categories alone
  std::vector<std::string> categories{};
  spread broad = spread::log_uniform;
  double outcomes_share = 0.2;  ///< of "above", "below" and the categories; a test without a range has 1

  bool real() const { return high > low; }
};

enum class danger : unsigned char { none, property, life };
/// One explanation, exclusive of all others.
struct hypothesis {
  std::string id, title{};
  double prior = 1.0;  ///< a weight: all listed ones together get what "none of these" leaves
  std::vector<parameter> parameters{};
  std::vector<std::pair<std::string, prediction>> predictions{};  ///< by test; of a test that is not here it says nothing (broad)
  job::danger danger = job::danger::none;
  std::vector<std::string> parts{};  ///< of a listed double: the ids of the two single faults
};
/// Probability of two independent faults together, from those of each alone and of no fault, all of them as exclusive hypotheses:
/// p_a p_b / p_0, exact for independent faults.
inline double prior_of_both(double prior_a, double prior_b, double prior_sound) {
  if (!(prior_a >= 0.0) || !(prior_b >= 0.0) || !(prior_sound > 0.0)) throw range_error("prior_of_both: the priors must be from 0, that of no fault above 0");
  return prior_a * prior_b / prior_sound;
}

// ---- what is read --------------------------------------------------------------------------------------------------

/// One reading of a test. The error sources of its number are named: one name in two readings is one error. Those in `gains` are in
/// proportion to the true value (standard uncertainties as parts of it): their size follows from what a hypothesis predicts.
struct observation {
  enum class kind : unsigned char { value, above, below, category, not_measured };
  std::string test;
  kind is = kind::not_measured;
  measured number{};        ///< the value, or the end of the range that was passed
  double resolution = 0.0;  ///< one count, where the display rounds; not among the error sources
  std::string category{};
  std::vector<measured::part> gains{};

  static observation value(std::string test, measured x, double resolution = 0.0) { return {std::move(test), kind::value, std::move(x), resolution, {}, {}}; }
  static observation above(std::string test, measured x) { return {std::move(test), kind::above, std::move(x), 0.0, {}, {}}; }
  static observation below(std::string test, measured x) { return {std::move(test), kind::below, std::move(x), 0.0, {}, {}}; }
  static observation outcome(std::string test, std::string category) { return {std::move(test), kind::category, {}, 0.0, std::move(category), {}}; }
  static observation not_measured(std::string test) { return {std::move(test), kind::not_measured, {}, 0.0, {}, {}}; }
  observation with_gain(std::string source, double relative) const {
    observation o = *this;
    o.gains.push_back({std::move(source), relative});
    return o;
  }
  /// A reading as it was taken, with the statement of its instrument or the worst case of its class. "No trip" is the category "no_trip".
  static observation from(std::string test, const reading& r, reads what) {
    if (r.is == reading::state::no_trip) return outcome(std::move(test), "no_trip");
    if (!r.has_number()) return not_measured(std::move(test));
    reading plain = r;
    double step = 0.0;
    if (plain.statement && !(plain.statement->counts > 0.0) && !(plain.statement->coverage_factor > 0.0)) {
      step = plain.statement->resolution;  // the rounding is dealt with here, not as an error source
      plain.statement->resolution = 0.0;
    }
    const measured whole = to_measured(plain, what, test);
    plain.number = 0.0;
    observation o = value(test, to_measured(plain, what, test), r.is == reading::state::value ? step : 0.0);
    o.number.value = r.number;
    std::erase_if(o.number.parts, [](const measured::part& p) { return p.u == 0.0; });
    for (const auto& p : whole.parts) {  // what grows with the reading is a gain
      double fixed = 0.0;
      for (const auto& q : o.number.parts) fixed += q.source == p.source ? q.u : 0.0;
      if (r.number != 0.0 && p.u != fixed) o.gains.push_back({p.source, (p.u - fixed) / r.number});
    }
    if (r.is == reading::state::above) o.is = kind::above;
    if (r.is == reading::state::below) o.is = kind::below;
    return o;
  }
};

/// A reading not yet taken: the errors that it will have, named as those of readings are (a name in common is an error in common).
struct coming_reading {
  std::string test;
  std::vector<measured::part> parts{};  ///< standard uncertainties in the unit of the test
  std::vector<measured::part> gains{};  ///< and as parts of the true value
  double resolution = 0.0;
};

// ---- what comes out ------------------------------------------------------------------------------------------------

/// `bounded`: not summed, since even with its best parameters the hypothesis is hopeless beside another (options: hopeless).
enum class method : unsigned char { first_order, quasi_random, bounded };
/// What became of one hypothesis. The last row of a table is "none of these".
struct share {
  double prior = 0.0;           ///< normalised
  double log_likelihood = 0.0;  ///< ln of the density of all readings (of values by their units, of outcomes their probability)
  double posterior = 0.0;
  method how = method::first_order;
  double effective_points = 0.0;  ///< of the quasi-random sum: below about 50 its result is rough
};
struct posterior_table {
  std::vector<share> rows{};     ///< in the order of the hypotheses, then "none of these"
  double log_evidence = 0.0;     ///< ln of the predictive density of the readings
  std::size_t leading = 0;
  bool robust = true;            ///< the leading one stays in front when any prior is halved or doubled
  std::size_t overturned_by = 0; ///< whose prior changes the leading one, where it is not robust
};
/// Whether the readings look like readings of the leading listed hypothesis.
struct conflict_report {
  bool conflict = false;
  double log_density = 0.0;     ///< of the readings, under the leading listed hypothesis
  double log_density_1pc = 0.0; ///< its simulated 1 % quantile
  double share_below = 0.0;     ///< of simulated readings that are less likely than those read
  std::size_t leading = 0;
  std::string_view text{};      ///< "no listed fault explains these readings", or ""
};
/// One reading against what a hypothesis predicts for it (first order).
struct predicted_reading {
  std::size_t reading = 0;  ///< as handed in
  double mean = no_number, standard_uncertainty = no_number;  ///< of the prediction and the reading's own errors together
  double standard_uncertainty_of_prediction = no_number;
  double distance = no_number;  ///< (read - mean) / standard uncertainty
};
/// A nuisance parameter after the readings.
struct parameter_posterior {
  double mean = no_number, sd = no_number, below = no_number;  ///< `below`: probability of a value up to the one asked for
};

/// What a hypothesis expects of a coming reading, after the readings at hand: a value from a sum of normal densities, or an outcome.
struct foreseen {
  struct part {
    double weight, mean, sd;
  };
  std::vector<part> parts{};       ///< their weights add up to the probability of a value
  std::vector<double> outcomes{};  ///< probabilities of "above", "below", then of the categories of the test
  double broad = 0.0;              ///< probability of a value about which nothing is said: as the broad distribution of the test has it
};

struct inference_options {
  double none_prior = 0.05;           ///< of "none of these", from 0.02
  unsigned points = 4096;             ///< of the quasi-random sum: 512, 2048 or 4096
  enum class rule : unsigned char { automatic, first_order, quasi_random } how = rule::automatic;
  double bend = 0.01;                 ///< first order holds while no parameter bends a prediction, at ±√3 scales, by more than this many standard deviations
  double share_of_uniform = 0.25;     ///< and no bounded parameter makes more than this part of a prediction's variance
  double hopeless = 1e-12;            ///< a sum is not made where the best likelihood that was found leaves less than this part of the leading one's weight; 0: all are made
  std::uint64_t seed = 1;             ///< of the simulated readings of the conflict alarm
  unsigned draws = 400;
};

// ---- the kernel ----------------------------------------------------------------------------------------------------

/// Tests and hypotheses are set up once; then readings come and go. Results do not depend on the order of readings or hypotheses.
///
/// The likelihood of a hypothesis is that of all readings together. Values: a normal density with the mean f(θ₀) and the covariance
/// J Σ Jᵀ of the parameters plus that of the named error sources. A display that rounds: the probability of its step over the step, as a
/// normal density with step²/12 more variance where the step is at most one standard deviation, otherwise by the areas. Over and under
/// range: the probability beyond the limit, given the values (one: exact; several: sequential conditioning over 1024 lattice points).
/// Where a parameter bends a prediction, is log-uniform, or is bounded and matters, it is summed over lattice points, half of them spread
/// as its distribution and half near the best fit, and the first order is left with the other parameters at each point. The likeliest is
/// summed first; one whose likelihood is hopeless beside it with any parameters (64 lattice points and the best fit) has Laplace's estimate.
class explanations {
 public:
  static constexpr int no_reading = -1;

  explicit explanations(std::vector<test> tests, std::vector<hypothesis> hypotheses, inference_options options = {})
      : tests_(std::move(tests)), hypotheses_(std::move(hypotheses)), options_(options) {
    set_up();
  }

  const std::vector<test>& tests() const { return tests_; }
  const std::vector<hypothesis>& hypotheses() const { return hypotheses_; }
  const posterior_table& table() const { return table_; }
  std::size_t none_of_these() const { return hypotheses_.size(); }
  std::string_view id(std::size_t h) const { return h < hypotheses_.size() ? std::string_view(hypotheses_[h].id) : "none_of_these"; }

  /// Takes the readings in place of earlier ones, and gives the table.
  const posterior_table& explain(std::span<const observation> readings) {
    read(readings);
    return run();
  }
  /// Takes the readings in place of earlier ones.
  void read(std::span<const observation> readings);
  /// The number of one value, or the limit of one that is over or under range, becomes another; its error sources stay. No allocation.
  void change(std::size_t reading, double number) {
    for (int i = 0; i < rows_used_; ++i)
      if (rows_[at(i)].caller == reading) rows_[at(i)].x = number;
  }
  /// The table for the readings at hand. No allocation.
  const posterior_table& run();
  /// ln of the likelihood of all readings under one hypothesis (the last: none of these), as run() takes it where it is not hopeless. No allocation.
  double log_likelihood(std::size_t h) {
    share s;
    return likelihood(h, s, half_points());
  }
  /// Compares the readings with simulated readings of the leading listed hypothesis; after run(). No allocation.
  conflict_report conflict(bool only_whether = false);
  /// Values read against what a hypothesis predicts for them, in the order of the tests.
  std::vector<predicted_reading> predicted(std::size_t h);
  /// Parameter k of hypothesis h after the readings (the first order is held to a fifth of `bend`, since a bend shows in a distribution
  /// before it shows in a probability); `below` is the probability that it is at most `value`.
  parameter_posterior parameter_after(std::size_t h, std::size_t k, double value = no_number);
  /// What hypothesis h (the last: none of these) expects of coming readings, each alone, after those at hand; one element of `out` for
  /// each. First order about the parameters after the readings; where a parameter bends a prediction or is spread wide, a sum over points
  /// of it. Outcomes by name do not depend on the parameters.
  void foresee(std::size_t h, std::span<const coming_reading> coming, std::span<foreseen> out);
  /// Part of a test's broad distribution between two values.
  double broad_part(std::size_t test, double low, double high) const { return broad_between(tests_[test], low, high); }
  /// Place of a test in tests(); tests().size() if there is none of that id.
  std::size_t place_of(std::string_view test) const {
    std::size_t t = 0;
    while (t < tests_.size() && tests_[t].id != test) ++t;
    return t;
  }

 private:
  static constexpr std::size_t N = most_readings, P = most_parameters;
  static constexpr std::size_t at(int i) { return static_cast<std::size_t>(i); }
  static constexpr std::size_t cell(int i, int j) { return static_cast<std::size_t>(i) * N + static_cast<std::size_t>(j); }
  using kind = observation::kind;
  using matrix = std::array<double, N * N>;

  /// A reading, its names looked up. Rows stand in an order that does not depend on that of the caller.
  struct row {
    int test = 0;
    kind is = kind::value;
    double x = 0.0, resolution = 0.0;
    int category = -1;
    int source = 0;  ///< row of the error sources
    std::size_t caller = 0;
  };
  /// What does not depend on the readings: the prediction of one test at the centre of the parameters.
  struct linear {
    double value = 0.0;
    std::array<double, P> slope{};       ///< by one scale of each parameter
    std::array<double, P> up{}, down{};  ///< distance from the straight line at ±√3 scales
  };
  using point = std::array<double, P>;  // normal scores of the wide parameters
  /// A best fit of the wide parameters.
  struct fit {
    point best{};
    std::array<double, P * P> root{};             ///< Cholesky factor of the precision there
    double top = -detail::infinite, log_root = 0.0;  ///< ln of likelihood and prior density there; ln of the determinant of the root
  };
  /// A hypothesis before it is summed: what it is at some points and at its best fit.
  struct look {
    unsigned wide = 0;
    fit at_best{};
    double bound = 0.0;              ///< highest ln of a likelihood that was seen: no parameters are known that make the readings likelier
    std::array<double, 256> seen{};  ///< ln of the likelihood at the points of the first look
    double estimate() const { return at_best.top - at_best.log_root; }  ///< Laplace's
  };
  struct nothing {
    void operator()(std::uint32_t, const double*) const {}
  };

  std::vector<test> tests_;
  std::vector<hypothesis> hypotheses_;
  inference_options options_;
  std::vector<int> which_;        // hypothesis × test: index of the prediction, or -1
  std::vector<linear> linear_;    // the same
  std::vector<std::size_t> order_;  // hypotheses by id
  std::vector<double> prior_;
  posterior_table table_;
  // readings
  std::array<row, N> rows_{};
  int rows_used_ = 0;
  std::size_t sources_ = 0;
  std::vector<std::string> names_;  // of the sources
  std::vector<double> errors_;  // row × source
  std::vector<double> gains_;   // row × source, parts of the true value
  bool any_gain_ = false;
  matrix fixed_fixed_{}, fixed_gain_{}, gain_gain_{};  // products of the errors, by row.source
  // the joint block of one hypothesis: values first, then what is known by an interval
  int used_ = 0, points_ = 0;
  std::array<int, N> block_{}, against_{};
  std::array<double, N> low_{}, high_{}, certain_{}, open_{};
  std::array<double, N> f_{}, r_{}, z_{}, scratch_{};
  std::array<double, N> true_{};  // the true value of each row, as the hypothesis has it: what the gains are parts of
  std::array<std::array<double, N>, P> g_{};  // parameter × row: by one scale (first order) or one unit of the parameter
  matrix base_{}, upper_{};                   // upper triangles: covariance of the errors, Cholesky factor Lᵀ of all
  double fixed_ = 0.0;
  // quasi-random sum
  std::vector<double> log_weight_, kept_, kept_mean_, kept_sd_, simulated_;
  std::vector<look> looks_;
  look scratch_look_;
  std::vector<std::size_t> to_sum_;

  unsigned half_points() const { return options_.points / 2; }
  const prediction* predicts(std::size_t h, int test) const {
    if (h >= hypotheses_.size()) return nullptr;
    const int p = which_[h * tests_.size() + at(test)];
    return p < 0 ? nullptr : &hypotheses_[h].predictions[at(p)].second;
  }
  const linear& linear_of(std::size_t h, int test) const { return linear_[h * tests_.size() + at(test)]; }

  void set_up();
  // broad distribution of a test
  static double outcome_share(const test& t) {
    const std::size_t n = t.categories.size() + (t.real() ? 2 : 0);
    return n == 0 ? 0.0 : (t.real() ? t.outcomes_share : 1.0) / static_cast<double>(n);
  }
  static double value_share(const test& t) { return t.real() ? 1.0 - t.outcomes_share : 0.0; }
  static double broad_density(const test& t, double x) {
    if (t.broad == test::spread::uniform) return 1.0 / (t.high - t.low);
    return 1.0 / (std::clamp(x, t.low, t.high) * log(t.high / t.low));
  }
  /// Part of the range between two values.
  static double broad_between(const test& t, double low, double high) {
    low = std::clamp(low, t.low, t.high);
    high = std::clamp(high, t.low, t.high);
    if (!(high > low)) return 0.0;
    return t.broad == test::spread::uniform ? (high - low) / (t.high - t.low) : log(high / low) / log(t.high / t.low);
  }
  /// Probability that a prediction gives to an outcome by name, and what its outcomes leave.
  static double chance_of(const prediction* p, std::string_view outcome) {
    double sum = 0.0;
    if (p)
      for (const auto& c : p->chances())
        if (c.outcome == outcome) sum += c.probability;
    return sum;
  }
  static double rest_of(const prediction* p) {
    double rest = 1.0;
    if (p)
      for (const auto& c : p->chances()) rest -= c.probability;
    return rest > 1e-15 ? rest : 0.0;
  }

  double errors(int a, int b, double true_a, double true_b) const {  // covariance of the errors of two readings
    const std::size_t i = at(rows_[at(a)].source), j = at(rows_[at(b)].source);
    double sum = fixed_fixed_[i * N + j];
    if (any_gain_) sum += true_b * fixed_gain_[i * N + j] + true_a * (fixed_gain_[j * N + i] + true_b * gain_gain_[i * N + j]);
    return sum;
  }
  double covariance(int i, int j) const {  // of the errors of two rows of the block
    const int a = block_[at(i)], b = block_[at(j)], ra = against_[at(i)], rb = against_[at(j)];
    const double ta = true_[at(i)], tb = true_[at(j)];
    double sum = errors(a, b, ta, tb);
    if (ra >= 0) sum -= errors(ra, b, ta, tb);
    if (rb >= 0) sum -= errors(a, rb, ta, tb);
    if (ra >= 0 && rb >= 0) sum += errors(ra, rb, ta, tb);
    return sum;
  }
  void fill_base();
  bool assemble(std::size_t h, unsigned wide);
  void factor();
  void solve(double* x, int n) const;
  void add_parameters(int count, unsigned wide, const std::array<double, P>& variance);
  double of_values(double so_far);
  double of_intervals(const double* u);
  double of_intervals();
  double straight(std::size_t h, unsigned wide);
  unsigned bent(std::size_t h, double bend);
  bool evaluate(std::size_t h, unsigned wide, const double* theta, bool slopes_of_wide);
  double at_point(std::size_t h, unsigned wide, const double* theta, const double* u);
  struct placing;
  double weight_at(std::size_t h, unsigned wide, placing& place, const point& z, double& alone);
  void look_at(std::size_t h, unsigned wide, look& l);
  void look_further(std::size_t h, look& l);
  void look_over(std::size_t h, placing& place, look& l, std::uint32_t from);
  void climb_from_several(std::size_t h, placing& place, look& l, std::uint32_t step);
  void climb(std::size_t h, unsigned wide, placing& place, fit& l, double& bound);
  template <class Visit>
  double sum_from(std::size_t h, look& l, unsigned half, double& effective, const Visit& visit);
  template <class Visit>
  double sum_over(std::size_t h, unsigned wide, unsigned half, double& effective, const Visit& visit);
  double first_order(std::size_t h, share& s, unsigned& wide);
  double likelihood(std::size_t h, share& s, unsigned half);
  void simulate(std::size_t h, std::uint64_t draw);
};

inline void explanations::set_up() {
  const auto fail = [](std::string text) { throw range_error("inference: " + text); };
  const auto& o = options_;
  if (!(o.none_prior >= least_none_prior && o.none_prior < 1.0)) fail("none_prior = " + number_text(o.none_prior) + ": from 0.02 to below 1 (a wrong set of hypotheses must be able to show)");
  if (!(o.hopeless >= 0.0 && o.hopeless <= 1e-6)) fail("hopeless = " + number_text(o.hopeless) + ": from 0 to 1e-6");
  if (o.points != 512 && o.points != 2048 && o.points != 4096) fail("points: 512, 2048 or 4096");
  if (hypotheses_.empty()) fail("no hypothesis is listed");
  for (std::size_t i = 0; i < tests_.size(); ++i) {
    const auto& t = tests_[i];
    for (std::size_t j = 0; j < i; ++j)
      if (tests_[j].id == t.id) fail("test \"" + t.id + "\" stands twice");
    if (!is_finite(t.low) || !is_finite(t.high) || t.high < t.low) fail("test \"" + t.id + "\": its range must be two numbers, the low end first");
    if (t.real() && t.broad == test::spread::log_uniform && !(t.low > 0.0)) fail("test \"" + t.id + "\": a range that is uniform in the logarithm begins above 0");
    if (!t.real() && t.categories.empty()) fail("test \"" + t.id + "\" has neither a range nor categories");
    if (t.real() && !(t.outcomes_share >= 0.0 && t.outcomes_share < 1.0)) fail("test \"" + t.id + "\": outcomes_share: from 0 to below 1");
  }
  const std::size_t n = tests_.size();
  which_.assign(hypotheses_.size() * n, -1);
  linear_.assign(hypotheses_.size() * n, {});
  double total = 0.0;
  for (std::size_t h = 0; h < hypotheses_.size(); ++h) {
    const auto& one = hypotheses_[h];
    const std::string who = "hypothesis \"" + one.id + "\"";
    for (std::size_t j = 0; j < h; ++j)
      if (hypotheses_[j].id == one.id) fail(who + " stands twice");
    if (one.id == "none_of_these") fail("\"none_of_these\" is always there: it is not listed");
    if (!is_finite(one.prior) || one.prior < 0.0) fail(who + ": its prior must be a weight from 0");
    if (one.parameters.size() > P) fail(who + ": at most 12 parameters");
    total += one.prior;
    std::array<double, P> centre{};
    const int count = static_cast<int>(one.parameters.size());
    for (int k = 0; k < count; ++k) {
      const auto& p = one.parameters[at(k)];
      if (const auto bad = p.is.problem(); !bad.empty()) fail(who + ": " + p.name + ": " + std::string(bad));
      centre[at(k)] = p.is.centre();
    }
    for (std::size_t p = 0; p < one.predictions.size(); ++p) {
      const auto& [name, what] = one.predictions[p];
      std::size_t t = 0;
      while (t < n && tests_[t].id != name) ++t;
      if (t == n) fail(who + " predicts \"" + name + "\", which is not among the tests");
      if (which_[h * n + t] >= 0) fail(who + " predicts \"" + name + "\" twice");
      which_[h * n + t] = static_cast<int>(p);
      double sum = 0.0;
      for (const auto& c : what.chances()) {
        const auto& words = tests_[t].categories;
        if (!(tests_[t].real() && (c.outcome == "above" || c.outcome == "below")) && std::find(words.begin(), words.end(), c.outcome) == words.end())
          fail(who + ": \"" + name + "\" has no outcome \"" + c.outcome + "\"");
        if (!(c.probability >= 0.0)) fail(who + ": \"" + name + "\": the probability of \"" + c.outcome + "\" must be from 0");
        sum += c.probability;
      }
      if (sum > 1.0 + 1e-12) fail(who + ": \"" + name + "\": its outcomes have more than probability 1");
      if (!what.real()) continue;
      if (!tests_[t].real()) fail(who + ": \"" + name + "\" has categories alone, and a value is predicted");
      auto& l = linear_[h * n + t];
      l.value = what.slopes(centre.data(), count, l.slope.data());
      if (!is_finite(l.value)) fail(who + ": \"" + name + "\": no number at the middle of the parameters");
      for (int k = 0; k < count; ++k) {
        const auto& d = one.parameters[at(k)].is;
        l.slope[at(k)] *= d.scale();
        for (const double side : {1.0, -1.0}) {
          auto moved = centre;
          moved[at(k)] = d.at_distance(side * 1.7320508075688772);
          const double off = what.value(moved.data(), count) - l.value - side * 1.7320508075688772 * l.slope[at(k)];
          const bool rounding = fabs(off) <= 1e-12 * (fabs(l.value) + fabs(l.slope[at(k)]));
          (side > 0.0 ? l.up : l.down)[at(k)] = rounding ? 0.0 : is_finite(off) ? off : 1e300;
        }
        if (!is_finite(l.slope[at(k)])) l.slope[at(k)] = 0.0, l.up[at(k)] = 1e300;
      }
    }
  }
  if (!(total > 0.0)) fail("all priors are 0");
  order_.resize(hypotheses_.size());
  for (std::size_t h = 0; h < order_.size(); ++h) order_[h] = h;
  std::sort(order_.begin(), order_.end(), [this](std::size_t a, std::size_t b) { return hypotheses_[a].id < hypotheses_[b].id; });
  total = 0.0;
  for (const auto h : order_) total += hypotheses_[h].prior;
  prior_.clear();
  for (const auto& h : hypotheses_) prior_.push_back(h.prior / total * (1.0 - o.none_prior));
  prior_.push_back(o.none_prior);
  order_.push_back(hypotheses_.size());
  table_.rows.assign(prior_.size(), {});
  for (std::size_t h = 0; h < prior_.size(); ++h) table_.rows[h].prior = table_.rows[h].posterior = prior_[h];
  for (auto* v : {&log_weight_, &kept_, &kept_mean_, &kept_sd_}) v->assign(o.points, 0.0);
  simulated_.assign(o.draws, 0.0);
  looks_.resize(hypotheses_.size());
  to_sum_.reserve(hypotheses_.size());
  (void)detail::scores_of(detail::lattices[0]);
}

inline void explanations::read(std::span<const observation> readings) {
  const auto fail = [](std::size_t i, std::string text) { throw range_error("inference: readings[" + std::to_string(i) + "]: " + text); };
  struct named {
    const observation* from;
    row is;
  };
  std::vector<named> list;
  std::vector<std::string> names;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const auto& o = readings[i];
    row r;
    r.caller = i;
    std::size_t t = 0;
    while (t < tests_.size() && tests_[t].id != o.test) ++t;
    if (t == tests_.size()) fail(i, "\"" + o.test + "\" is not among the tests");
    if (o.is == kind::not_measured) continue;
    r.test = static_cast<int>(t);
    r.is = o.is;
    if (o.is == kind::category) {
      const auto& words = tests_[t].categories;
      const auto word = std::find(words.begin(), words.end(), o.category);
      if (word == words.end()) fail(i, "\"" + o.test + "\" has no category \"" + o.category + "\"");
      r.category = static_cast<int>(word - words.begin());
    } else {
      if (!tests_[t].real()) fail(i, "\"" + o.test + "\" has categories alone, and a value is read");
      if (!is_finite(o.number.value)) fail(i, "\"" + o.test + "\": the value must be a finite number");
      bool doubt = o.resolution > 0.0;
      for (const auto* list_ : {&o.number.parts, &o.gains})
        for (const auto& p : *list_) {
          if (!is_finite(p.u)) fail(i, "\"" + o.test + "\": " + p.source + ": the uncertainty must be a finite number");
          doubt = doubt || p.u != 0.0;
          names.push_back(p.source);
        }
      if (!is_finite(o.resolution) || o.resolution < 0.0) fail(i, "\"" + o.test + "\": the resolution must be a number from 0");
      if (o.is == kind::value && !doubt)
        fail(i, "\"" + o.test + "\": a value needs an uncertainty or a resolution: no reading is exact");
      r.x = o.number.value;
      r.resolution = o.is == kind::value ? o.resolution : 0.0;
    }
    list.push_back({&o, r});
  }
  // an order of its own: by the test's id, then by what was read
  std::sort(list.begin(), list.end(), [this](const named& a, const named& b) {
    const auto& ta = tests_[at(a.is.test)].id;
    const auto& tb = tests_[at(b.is.test)].id;
    if (ta != tb) return ta < tb;
    if (a.is.is != b.is.is) return a.is.is < b.is.is;
    if (a.is.category != b.is.category) return a.is.category < b.is.category;
    if (a.is.x != b.is.x) return a.is.x < b.is.x;
    if (a.is.resolution != b.is.resolution) return a.is.resolution < b.is.resolution;
    const auto by_parts = [](const auto& pa, const auto& pb) {
      return std::lexicographical_compare(pa.begin(), pa.end(), pb.begin(), pb.end(), [](const measured::part& p, const measured::part& q) {
        return p.source != q.source ? p.source < q.source : p.u < q.u;
      });
    };
    if (by_parts(a.from->number.parts, b.from->number.parts)) return true;
    return !by_parts(b.from->number.parts, a.from->number.parts) && by_parts(a.from->gains, b.from->gains);
  });
  std::vector<named> kept;
  for (const auto& one : list) {
    if (!kept.empty() && kept.back().is.test == one.is.test && kept.back().is.is == one.is.is) {
      // of several over-range readings of one test the highest limit counts, of those under range the lowest; an outcome counts once
      if (one.is.is == kind::above) kept.pop_back();
      else if (one.is.is == kind::below) continue;
      else if (one.is.is == kind::category && kept.back().is.category == one.is.category) continue;
    }
    kept.push_back(one);
  }
  if (kept.size() > N) throw range_error("inference: more than 24 readings");
  std::sort(names.begin(), names.end());
  names.erase(std::unique(names.begin(), names.end()), names.end());
  sources_ = names.size();
  names_ = names;
  errors_.assign(kept.size() * sources_, 0.0);
  gains_.assign(kept.size() * sources_, 0.0);
  any_gain_ = false;
  rows_used_ = static_cast<int>(kept.size());
  for (std::size_t i = 0; i < kept.size(); ++i) {
    rows_[i] = kept[i].is;
    rows_[i].source = static_cast<int>(i);
    if (rows_[i].is == kind::category) continue;
    const auto place = [&](const measured::part& p) {
      return i * sources_ + static_cast<std::size_t>(std::lower_bound(names.begin(), names.end(), p.source) - names.begin());
    };
    for (const auto& p : kept[i].from->number.parts) errors_[place(p)] += p.u;
    for (const auto& p : kept[i].from->gains) gains_[place(p)] += p.u;
    any_gain_ = any_gain_ || !kept[i].from->gains.empty();
  }
  for (std::size_t i = 0; i < kept.size(); ++i)
    for (std::size_t j = 0; j < kept.size(); ++j) {
      double ff = 0.0, fg = 0.0, gg = 0.0;
      for (std::size_t s = 0; s < sources_; ++s) {
        ff += errors_[i * sources_ + s] * errors_[j * sources_ + s];
        fg += errors_[i * sources_ + s] * gains_[j * sources_ + s];
        gg += gains_[i * sources_ + s] * gains_[j * sources_ + s];
      }
      fixed_fixed_[i * N + j] = ff;
      fixed_gain_[i * N + j] = fg;
      gain_gain_[i * N + j] = gg;
    }
  for (int i = 1; i < rows_used_; ++i) {
    const row &a = rows_[at(i - 1)], &b = rows_[at(i)];
    if (a.test != b.test || a.is != kind::value || b.is != kind::value || fabs(a.x - b.x) <= 0.5 * (a.resolution + b.resolution)) continue;
    const double variance = errors(i - 1, i - 1, a.x, a.x) + errors(i, i, b.x, b.x) - 2.0 * errors(i - 1, i, a.x, b.x);
    if (a.resolution == 0.0 && b.resolution == 0.0 && square(a.x - b.x) > 1e4 * variance)  // 100 standard deviations
      throw relation_error("inference: two readings of \"" + tests_[at(a.test)].id + "\" differ (" + number_text(a.x) + ", " + number_text(b.x) +
                           ") and have all their error sources in common: give each its own repeatability");
  }
}

/// Sets the block of one hypothesis up: which rows are in the joint likelihood, and all factors that stand outside. False: impossible.
inline bool explanations::assemble(std::size_t h, unsigned wide) {
  double fixed = 0.0;
  bool possible = true;
  const auto times = [&](double p) {
    if (p > 0.0) fixed += log(p);
    else possible = false;
  };
  std::array<int, N> late{}, late_against{};
  int n_late = 0;
  used_ = 0;
  int first_value = -1;
  double beyond = -detail::infinite, under = detail::infinite;  // of a test about which nothing is said, read without a value
  for (int i = 0; i < rows_used_; ++i) {
    const row& r = rows_[at(i)];
    const bool new_test = i == 0 || rows_[at(i - 1)].test != r.test;
    const bool last_of_test = i + 1 == rows_used_ || rows_[at(i + 1)].test != r.test;
    const test& t = tests_[at(r.test)];
    const prediction* p = predicts(h, r.test);
    const bool real = p && p->real();
    const double rest = rest_of(p);
    if (new_test) {
      first_value = -1;
      beyond = -detail::infinite;
      under = detail::infinite;
    }
    if (r.is == kind::category) {
      times(chance_of(p, t.categories[at(r.category)]) + (real ? 0.0 : rest * outcome_share(t)));
    } else if (r.is == kind::value) {
      const bool first = first_value < 0;
      if (first) first_value = i;
      if (first) times(real ? rest : rest * value_share(t) * broad_density(t, r.x));
      if (!real && first) continue;
      // a step of the display that is coarse against the doubt is taken by its areas
      block_[at(used_)] = i;
      against_[at(used_)] = real ? -1 : first_value;
      true_[at(used_)] = real ? linear_of(h, r.test).value : rows_[at(first_value)].x;
      double variance = covariance(used_, used_);
      if (real) {
        const auto& l = linear_of(h, r.test);
        for (std::size_t k = 0; k < hypotheses_[h].parameters.size(); ++k)
          if (!(wide >> k & 1u)) variance += square(l.slope[k]);
      }
      if (square(r.resolution) > variance) {
        late[at(n_late)] = i;
        late_against[at(n_late++)] = real ? -1 : first_value;
      } else {
        ++used_;
      }
    } else if (real || first_value >= 0) {
      late[at(n_late)] = i;
      late_against[at(n_late++)] = real ? -1 : first_value;
    } else {
      if (r.is == kind::above) beyond = r.x;
      else under = r.x;
    }
    if (last_of_test && (beyond > -detail::infinite || under < detail::infinite)) {
      double outcome = 0.0;
      if (beyond > -detail::infinite) outcome += chance_of(p, "above") + rest * outcome_share(t);
      if (under < detail::infinite) outcome += chance_of(p, "below") + rest * outcome_share(t);
      if (beyond > -detail::infinite && under < detail::infinite) outcome = 0.0;
      times(outcome + rest * value_share(t) * broad_between(t, beyond, under));
      beyond = -detail::infinite;
      under = detail::infinite;
    }
  }
  points_ = used_;
  for (int i = 0; i < n_late; ++i) {
    block_[at(used_)] = late[at(i)];
    against_[at(used_)] = late_against[at(i)];
    const row& r = rows_[at(late[at(i)])];
    const prediction* p = predicts(h, r.test);
    true_[at(used_)] = late_against[at(i)] < 0 ? linear_of(h, r.test).value : rows_[at(late_against[at(i)])].x;
    certain_[at(used_)] = 0.0;
    open_[at(used_)] = 1.0;
    if (r.is == kind::value) {
      low_[at(used_)] = -0.5 * r.resolution;
      high_[at(used_)] = 0.5 * r.resolution;
      fixed -= log(r.resolution);
    } else {
      const bool above = r.is == kind::above;
      low_[at(used_)] = above ? 0.0 : -detail::infinite;
      high_[at(used_)] = above ? detail::infinite : 0.0;
      if (late_against[at(i)] < 0 && !(i > 0 && rows_[at(late[at(i - 1)])].test == r.test)) {
        bool value_too = false;  // with a value of the same test, the factor of a real value stands already
        for (int j = 0; j < rows_used_; ++j) value_too = value_too || (rows_[at(j)].test == r.test && rows_[at(j)].is == kind::value);
        if (!value_too) {
          certain_[at(used_)] = chance_of(p, above ? "above" : "below");
          open_[at(used_)] = rest_of(p);
        }
      }
    }
    ++used_;
  }
  fill_base();
  fixed_ = fixed;
  return possible;
}

/// The covariance of the errors of the block, for the true values that stand in true_; steps of the display among the values count as errors.
inline void explanations::fill_base() {
  bool plain = true;
  for (int i = 0; i < used_; ++i) plain = plain && against_[at(i)] < 0;
  for (int i = 0; i < used_; ++i) {
    for (int j = i; j < used_; ++j) base_[cell(i, j)] = plain ? errors(block_[at(i)], block_[at(j)], true_[at(i)], true_[at(j)]) : covariance(i, j);
    if (i < points_) base_[cell(i, i)] += square(rows_[at(block_[at(i)])].resolution) / 12.0;
  }
  if (plain) return;
  for (int i = 0; i < used_; ++i)  // the value that others stand against is rounded too
    for (int j = i; j < used_; ++j)
      if (against_[at(i)] >= 0 && against_[at(i)] == against_[at(j)]) base_[cell(i, j)] += square(rows_[at(against_[at(i)])].resolution) / 12.0;
}

/// Cholesky factor of upper_, in place. A row that the rows before it determine gets a pivot of 0.
inline void explanations::factor() {
  for (int i = 0; i < used_; ++i) scratch_[at(i)] = upper_[cell(i, i)];
  for (int k = 0; k < used_; ++k) {
    const double rest = upper_[cell(k, k)];
    if (!(rest > 1e-12 * scratch_[at(k)] && rest > 0.0)) {
      for (int j = k; j < used_; ++j) upper_[cell(k, j)] = 0.0;
      continue;
    }
    const double pivot = sqrt(rest), inverse = 1.0 / pivot;
    double* const row_k = &upper_[cell(k, 0)];
    row_k[k] = pivot;
    for (int j = k + 1; j < used_; ++j) row_k[j] *= inverse;
    for (int i = k + 1; i < used_; ++i) {
      const double c = row_k[i];
      double* const row_i = &upper_[cell(i, 0)];
      for (int j = i; j < used_; ++j) row_i[j] -= c * row_k[j];
    }
  }
}

/// Turns x into L⁻¹ x over the first n rows; where the pivot is 0, what is left stays and counts as no part of it.
inline void explanations::solve(double* x, int n) const {
  for (int k = 0; k < n; ++k) {
    const double pivot = upper_[cell(k, k)];
    if (!(pivot > 0.0)) continue;
    x[k] /= pivot;
    const double c = x[k];
    const double* const row_k = &upper_[cell(k, 0)];
    for (int j = k + 1; j < n; ++j) x[j] -= c * row_k[j];
  }
}

/// ln of the density of the values, with residuals r_ and the factor upper_; fills z_.
inline double explanations::of_values(double so_far) {
  for (int i = 0; i < points_; ++i) z_[at(i)] = r_[at(i)];
  solve(z_.data(), points_);
  double product = 1.0;
  for (int i = 0; i < points_; ++i) {
    const double pivot = upper_[cell(i, i)];
    if (!(pivot > 0.0)) {  // the same reading again, or a contradiction
      if (!(fabs(z_[at(i)]) <= 1e-5 * sqrt(scratch_[at(i)]) + 1e-12 * fabs(rows_[at(block_[at(i)])].x))) return -detail::infinite;
      z_[at(i)] = 0.0;
      continue;
    }
    so_far -= 0.5 * square(z_[at(i)]) + detail::log_root_2pi;
    product *= pivot;
    if (product > 1e100 || product < 1e-100) {
      so_far -= log(product);
      product = 1.0;
    }
  }
  return so_far - log(product);
}

/// ln of the probability of all intervals given the values, one path of the sequential conditioning; u drives all rows but the last.
inline double explanations::of_intervals(const double* u) {
  double sum = 0.0;
  for (int i = points_; i < used_; ++i) {
    double s = 0.0;
    for (int j = 0; j < i; ++j) s += upper_[cell(j, i)] * z_[at(j)];
    const double pivot = upper_[cell(i, i)], low = low_[at(i)] + r_[at(i)] - s, high = high_[at(i)] + r_[at(i)] - s;
    const double p = certain_[at(i)], q = open_[at(i)];
    z_[at(i)] = 0.0;
    if (!(pivot > 0.0)) {
      const double slack = 1e-9 * sqrt(scratch_[at(i)]);
      const double inside = p + (low <= slack && high >= -slack ? q : 0.0);
      sum += inside > 0.0 ? log(inside) : -detail::infinite;
      continue;
    }
    const double a = low / pivot, b = high / pivot;
    const double inside = detail::log_normal_between(a, b);
    sum += p > 0.0 ? log(p + q * exp(inside)) : log(q) + inside;
    if (i + 1 == used_) continue;
    // the error of this row, given what was read: density φ(z) (p + q [a < z < b])
    const double lowest = a == -detail::infinite ? 0.0 : normal_cdf(a), width = exp(inside);
    double v = u[i - points_];
    if (p > 0.0) {
      const double w = v * (p + q * width);
      if (w < p * lowest) v = w / p;
      else if (w < p * lowest + (p + q) * width) v = (w + q * lowest) / (p + q);
      else v = (w - q * width) / p;
    } else if (a > 0.0) {
      const double beyond = b == detail::infinite ? 0.0 : normal_cdf(-b);  // in the upper tail, counted from above
      const double tail = beyond + (1.0 - v) * width;
      z_[at(i)] = tail > 1e-300 ? -detail::normal_score(tail) : a;
      continue;
    } else {
      v = lowest + v * width;
    }
    z_[at(i)] = v > 1e-300 && v < 1.0 ? detail::normal_score(v) : std::clamp(0.0, a, b);
  }
  return sum;
}
inline double explanations::of_intervals() {
  const int n = used_ - points_;
  if (n == 0) return 0.0;
  std::array<double, N> u{};
  if (n == 1) return of_intervals(u.data());
  const auto& points = detail::lattice_of(1024);
  double top = -detail::infinite, sum = 0.0;
  for (std::uint32_t k = 0; k < points.n; ++k) {
    std::uint64_t x = k;
    for (int j = 0; j + 1 < n; ++j, x = x * points.a % points.n) u[at(j)] = (static_cast<double>(x) + 0.5) / points.n;
    const double one = of_intervals(u.data());
    if (one > top) {
      sum = sum * exp(top - one) + 1.0;
      top = one;
    } else if (one > -detail::infinite) {
      sum += exp(one - top);
    }
  }
  return sum > 0.0 ? top + log(sum / points.n) : -detail::infinite;
}

/// First order in the parameters that are not wide; residuals and slopes at the centre.
inline double explanations::straight(std::size_t h, unsigned wide) {
  const int count = h < hypotheses_.size() ? static_cast<int>(hypotheses_[h].parameters.size()) : 0;
  for (int i = 0; i < used_; ++i) {
    const row& r = rows_[at(block_[at(i)])];
    const bool predicted = against_[at(i)] < 0;
    const linear* l = predicted ? &linear_of(h, r.test) : nullptr;
    r_[at(i)] = r.x - (predicted ? l->value : rows_[at(against_[at(i)])].x);
    for (int k = 0; k < count; ++k) g_[at(k)][at(i)] = predicted ? l->slope[at(k)] : 0.0;
  }
  std::array<double, P> one{};
  one.fill(1.0);
  add_parameters(count, wide, one);
  factor();
  const double values = of_values(fixed_);
  return values > -detail::infinite ? values + of_intervals() : values;
}
/// upper_ = base_ and what the parameters that are not wide add, by slopes g_ and variances.
inline void explanations::add_parameters(int count, unsigned wide, const std::array<double, P>& variance) {
  for (int i = 0; i < used_; ++i) {
    const double* const base = &base_[cell(i, 0)];
    double* const sum = &upper_[cell(i, 0)];
    for (int j = i; j < used_; ++j) sum[j] = base[j];
    for (int k = 0; k < count; ++k) {
      if (wide >> k & 1u) continue;
      const double* const g = g_[at(k)].data();
      const double c = g[i] * variance[at(k)];
      for (int j = i; j < used_; ++j) sum[j] += c * g[j];
    }
  }
}

/// The parameters for which the first order does not hold, as bits. After assemble(h, 0) and the factor of straight(h, 0).
inline unsigned explanations::bent(std::size_t h, double bend) {
  unsigned wide = 0;
  const auto& list = hypotheses_[h].parameters;
  // squared length of a change of the predictions, in standard deviations of all readings together
  const auto length = [this](const auto& change) {
    std::array<double, N> x;
    for (int i = 0; i < used_; ++i) x[at(i)] = against_[at(i)] >= 0 ? 0.0 : change(i);
    solve(x.data(), used_);
    double sum = 0.0;
    for (int i = 0; i < used_; ++i) {
      if (!(upper_[cell(i, i)] > 0.0) && fabs(x[at(i)]) > 1e-9 * sqrt(scratch_[at(i)])) return 1e300;
      sum += upper_[cell(i, i)] > 0.0 ? square(x[at(i)]) : 0.0;
    }
    return sum;
  };
  for (std::size_t k = 0; k < list.size(); ++k) {
    const auto line = [&](int i) -> const linear& { return linear_of(h, rows_[at(block_[at(i)])].test); };
    const auto shape = list[k].is.is;
    bool matters = false, bends = false;
    for (int i = 0; i < used_; ++i) {
      if (against_[at(i)] >= 0) continue;
      const auto& l = line(i);
      bends = bends || l.up[k] != 0.0 || l.down[k] != 0.0;
      matters = matters || bends || l.slope[k] != 0.0;
    }
    if (!matters) continue;
    const bool bounded = shape == distribution::shape::uniform || shape == distribution::shape::triangular;
    if (shape == distribution::shape::log_uniform || (bends && length([&](int i) { return line(i).up[k]; }) > square(bend)) ||
        (bends && length([&](int i) { return line(i).down[k]; }) > square(bend)) ||
        (bounded && length([&](int i) { return line(i).slope[k]; }) > options_.share_of_uniform))
      wide |= 1u << k;
  }
  return wide;
}

/// Predictions (and their slopes) at a point of the parameters. False: some prediction has no number there.
inline bool explanations::evaluate(std::size_t h, unsigned wide, const double* theta, bool slopes_of_wide) {
  const auto& one = hypotheses_[h];
  const int count = static_cast<int>(one.parameters.size());
  const bool slopes = slopes_of_wide || wide != (1u << count) - 1u;
  std::array<double, P> slope{};
  double value = 0.0;
  for (int i = 0; i < used_; ++i) {
    const row& r = rows_[at(block_[at(i)])];
    if (against_[at(i)] >= 0) {
      r_[at(i)] = r.x - rows_[at(against_[at(i)])].x;
      for (int k = 0; k < count; ++k) g_[at(k)][at(i)] = 0.0;
      continue;
    }
    if (!(i > 0 && against_[at(i - 1)] < 0 && rows_[at(block_[at(i - 1)])].test == r.test)) {
      const prediction* p = predicts(h, r.test);
      value = slopes ? p->slopes(theta, count, slope.data()) : p->value(theta, count);
    }
    f_[at(i)] = value;
    for (int k = 0; k < count; ++k) g_[at(k)][at(i)] = slope[at(k)];
    if (!is_finite(f_[at(i)])) return false;
    r_[at(i)] = r.x - f_[at(i)];
  }
  return true;
}

/// ln of the likelihood at one point of the wide parameters, the others to first order there.
inline double explanations::at_point(std::size_t h, unsigned wide, const double* theta, const double* u) {
  if (!evaluate(h, wide, theta, false)) return -detail::infinite;
  const auto& list = hypotheses_[h].parameters;
  const int count = static_cast<int>(list.size());
  if (any_gain_) {
    for (int i = 0; i < used_; ++i)
      if (against_[at(i)] < 0) true_[at(i)] = f_[at(i)];
    fill_base();
  }
  if (any_gain_ || wide != (1u << count) - 1u) {
    std::array<double, P> variance{};
    for (int k = 0; k < count; ++k) variance[at(k)] = wide >> k & 1u ? 0.0 : square(list[at(k)].is.scale());
    add_parameters(count, wide, variance);
    factor();
  }
  const double values = of_values(fixed_);
  return values > -detail::infinite && used_ > points_ ? values + of_intervals(u) : values;
}

/// A wide parameter as points place it: from its probability where that is known, else from its score.
struct explanations::placing {
  std::array<int, P> which{};
  std::array<const distribution*, P> is{};
  std::array<double, P> log_ratio{};
  std::array<double, P> theta{};
  int wide = 0;

  placing(const hypothesis& h, unsigned bits) {
    for (int k = 0; k < static_cast<int>(h.parameters.size()); ++k) {
      const auto& d = h.parameters[at(k)].is;
      theta[at(k)] = d.centre();
      if (!(bits >> k & 1u)) continue;
      which[at(wide)] = k;
      log_ratio[at(wide)] = d.is == distribution::shape::log_uniform ? log(d.b / d.a) : 0.0;
      is[at(wide++)] = &d;
    }
  }
  void one(int k, double z, double p) {
    const auto& d = *is[at(k)];
    double& x = theta[at(which[at(k)])];
    switch (d.is) {
      case distribution::shape::normal: x = d.a + d.b * z; break;
      case distribution::shape::log_normal: x = d.a * exp(d.b * z); break;
      case distribution::shape::log_uniform: x = d.a * exp(p * log_ratio[at(k)]); break;
      default: x = d.quantile(p);
    }
  }
  void at_scores(const point& z) {
    for (int k = 0; k < wide; ++k) {
      const auto shape = is[at(k)]->is;
      const bool by_score = shape == distribution::shape::normal || shape == distribution::shape::log_normal;
      one(k, z[at(k)], by_score ? 0.0 : std::clamp(normal_cdf(z[at(k)]), 1e-300, 1.0 - 0x1p-53));
    }
  }
  /// Point i of a lattice, with its scores; what is left of the coordinates goes to u.
  void at_lattice(const detail::lattice& of, const std::vector<double>& scores, std::uint32_t i, point& z, double* u, int more) {
    std::uint32_t x = i;
    for (int k = 0; k < wide; ++k, x = of.next(x)) one(k, z[at(k)] = scores[x], (static_cast<double>(x) + 0.5) / of.n);
    for (int k = 0; k < more; ++k, x = of.next(x)) u[k] = (static_cast<double>(x) + 0.5) / of.n;
  }
};

/// ln of likelihood and prior density (by the scores, without its constant) at scores of the wide parameters; `alone`: the likelihood.
inline double explanations::weight_at(std::size_t h, unsigned wide, placing& place, const point& z, double& alone) {
  std::array<double, N> u;
  u.fill(0.5);
  alone = at_point(h, wide, place.theta.data(), u.data());
  double sum = alone;
  for (int k = 0; k < place.wide; ++k) sum -= 0.5 * square(z[at(k)]);
  return is_nan(sum) ? -detail::infinite : sum;
}

/// The first look at a hypothesis whose parameters bend its predictions: every fourth of 256 lattice points (they are a lattice of their
/// own), and the best fit from the best of them and from two others that lie apart. After assemble(h, wide).
inline void explanations::look_at(std::size_t h, unsigned wide, look& l) {
  l.wide = wide;
  l.bound = -detail::infinite;
  l.at_best = {};
  placing place(hypotheses_[h], wide);
  upper_ = base_;
  factor();
  look_over(h, place, l, 0);
  climb_from_several(h, place, l, 4);
}
/// The other points of the first look; a better one among them is one more start.
inline void explanations::look_further(std::size_t h, look& l) {
  placing place(hypotheses_[h], l.wide);
  upper_ = base_;
  factor();
  for (std::uint32_t from = 1; from < 4; ++from) look_over(h, place, l, from);
  climb_from_several(h, place, l, 1);
}
inline void explanations::look_over(std::size_t h, placing& place, look& l, std::uint32_t from) {
  const auto& coarse = detail::lattice_of(256);
  const auto& scores = detail::scores_of(coarse);
  for (std::uint32_t i = from; i < coarse.n; i += 4) {
    point z{};
    place.at_lattice(coarse, scores, i, z, nullptr, 0);
    (void)weight_at(h, l.wide, place, z, l.seen[i]);
    if (is_nan(l.seen[i])) l.seen[i] = -detail::infinite;
    if (l.seen[i] > l.bound) l.bound = l.seen[i];
  }
}
/// Climbs from the three best of every so many points of the first look that lie more than two apart in all; what is better stays.
inline void explanations::climb_from_several(std::size_t h, placing& place, look& l, std::uint32_t step) {
  const auto& coarse = detail::lattice_of(256);
  const auto& scores = detail::scores_of(coarse);
  const auto point_of = [&](std::uint32_t i) {
    point z{};
    for (std::uint32_t k = 0, x = i; k < static_cast<std::uint32_t>(place.wide); ++k, x = coarse.next(x)) z[k] = scores[x];
    return z;
  };
  std::array<point, 3> starts{};
  for (std::size_t n = 0; n < starts.size(); ++n) {
    fit one;
    for (std::uint32_t i = 0; i < coarse.n; i += step) {
      if (!(l.seen[i] > -detail::infinite)) continue;
      const point z = point_of(i);
      double here = l.seen[i];
      for (int k = 0; k < place.wide; ++k) here -= 0.5 * square(z[at(k)]);
      bool apart = true;
      for (std::size_t j = 0; j < n; ++j) {
        double distance = 0.0;
        for (int k = 0; k < place.wide; ++k) distance += square(z[at(k)] - starts[j][at(k)]);
        apart = apart && distance > 4.0;
      }
      if (apart && here > one.top) one.top = here, one.best = z;
    }
    if (!(one.top > -detail::infinite)) return;
    starts[n] = one.best;
    climb(h, l.wide, place, one, l.bound);
    if (one.top > l.at_best.top) l.at_best = one;
  }
}
/// Gauss-Newton steps over the normal scores, damped as Levenberg and Marquardt do, from the best point so far.
inline void explanations::climb(std::size_t h, unsigned wide, placing& place, fit& l, double& bound) {
  const auto& list = hypotheses_[h].parameters;
  const int w = place.wide, count = static_cast<int>(list.size());
  auto& root = l.root;  // Cholesky factor of the precision at the best fit
  root.fill(0.0);
  for (int k = 0; k < w; ++k) root[at(k) * P + at(k)] = 1.0;
  double alone = 0.0;
  std::array<double, P * P> precision{};
  point pull{};
  // precision and pull of the scores at the best fit, the block standing there; what is known by an interval pulls from outside to its nearer end
  const auto weigh = [&](bool intervals) {
    if (!evaluate(h, wide, place.theta.data(), true)) return false;
    std::array<std::array<double, N>, P> a{};  // L⁻¹ times the slopes by the scores
    std::array<double, N> b = r_;
    std::array<bool, N> idle{};
    for (int i = points_; i < used_; ++i) {
      const double low = low_[at(i)] + r_[at(i)], high = high_[at(i)] + r_[at(i)];
      b[at(i)] = low > 0.0 ? low : high < 0.0 ? high : 0.0;
      idle[at(i)] = !intervals || b[at(i)] == 0.0 || certain_[at(i)] > 0.0;
    }
    solve(b.data(), used_);
    for (int k = 0; k < w; ++k) {
      const int p = place.which[at(k)];
      const double unit = list[at(p)].is.slope_at_score(l.best[at(k)]);
      for (int i = 0; i < used_; ++i) a[at(k)][at(i)] = g_[at(p)][at(i)] * unit;
      solve(a[at(k)].data(), used_);
    }
    for (int i = 0; i < used_; ++i) {
      if (upper_[cell(i, i)] > 0.0 && !idle[at(i)]) continue;
      b[at(i)] = 0.0;
      if (idle[at(i)])
        for (int k = 0; k < w; ++k) a[at(k)][at(i)] = 0.0;
    }
    for (int k = 0; k < w; ++k) {
      for (int m = 0; m <= k; ++m) {
        double sum = k == m ? 1.0 : 0.0;
        for (int i = 0; i < used_; ++i) sum += a[at(k)][at(i)] * a[at(m)][at(i)];
        precision[at(k) * P + at(m)] = sum;
      }
      pull[at(k)] = -l.best[at(k)];
      for (int i = 0; i < used_; ++i) pull[at(k)] += a[at(k)][at(i)] * b[at(i)];
    }
    return true;
  };
  // L Lᵀ of the precision, its diagonal enlarged, and the step by it
  const auto step_by = [&](double damping, std::array<double, P * P>& lower, point& move) {
    for (int k = 0; k < w; ++k) {
      for (int m = 0; m <= k; ++m) {
        double sum = precision[at(k) * P + at(m)] * (k == m ? 1.0 + damping : 1.0);
        for (int j = 0; j < m; ++j) sum -= lower[at(k) * P + at(j)] * lower[at(m) * P + at(j)];
        lower[at(k) * P + at(m)] = k == m ? sqrt(sum > 1e-12 ? sum : 1e-12) : sum / lower[at(m) * P + at(m)];
      }
      double sum = pull[at(k)];
      for (int j = 0; j < k; ++j) sum -= lower[at(k) * P + at(j)] * move[at(j)];
      move[at(k)] = sum / lower[at(k) * P + at(k)];
    }
    for (int k = w - 1; k >= 0; --k) {
      double sum = move[at(k)];
      for (int j = k + 1; j < w; ++j) sum -= lower[at(j) * P + at(k)] * move[at(j)];
      move[at(k)] = sum / lower[at(k) * P + at(k)];
    }
  };
  bool stands = false;  // the block, at the best fit
  const auto stand = [&] {
    place.at_scores(l.best);
    if (!stands && (any_gain_ || wide != (1u << count) - 1u)) (void)weight_at(h, wide, place, l.best, alone);
  };
  for (int step = 0; step < 20 && l.top > -detail::infinite; ++step) {
    stand();
    if (!weigh(true)) break;
    stands = false;
    double gain = 0.0;
    std::array<double, P * P> damped{};
    for (double damping = 0.0; damping < 1e4 && !stands; damping = damping == 0.0 ? 0.3 : 6.0 * damping) {
      point move{}, next = l.best;
      step_by(damping, damping == 0.0 ? root : damped, move);
      for (int k = 0; k < w; ++k) next[at(k)] = std::clamp(l.best[at(k)] + move[at(k)], -8.0, 8.0);
      place.at_scores(next);
      const double there = weight_at(h, wide, place, next, alone);
      if (alone > bound) bound = alone;
      if (there > l.top) {
        stands = true;
        gain = there - l.top;
        l.top = there;
        l.best = next;
      }
    }
    if (!stands || gain < 1e-3) break;
  }
  if (used_ > points_ && l.top > -detail::infinite) {  // beyond the end of a range there is a tail: the points are spread by the values alone
    point move{};
    stand();
    if (weigh(false)) step_by(0.0, root, move);
  }
  l.log_root = 0.0;
  for (int k = 0; k < w; ++k) l.log_root += log(root[at(k) * P + at(k)]);
}

/// The quasi-random sum after look_at(). visit(point, theta) is called at every point that counts, the block still standing as it was there;
/// with `nothing` the points of the first look are not worked out again where they are those of the sum.
template <class Visit>
double explanations::sum_from(std::size_t h, look& l, unsigned half, double& effective, const Visit& visit) {
  look_further(h, l);
  placing place(hypotheses_[h], l.wide);
  upper_ = base_;
  factor();
  const int w = place.wide, more = used_ - points_ > 1 ? used_ - points_ - 1 : 0;
  const auto& [best, root, top, log_root] = l.at_best;
  constexpr double wider = 1.4;
  std::array<double, N> u{};
  u.fill(0.5);
  const auto& points = detail::lattice_of(half);
  const auto& scores = detail::scores_of(points);
  const bool seen = std::is_same_v<Visit, nothing> && points.n == l.seen.size() && more == 0;
  const std::uint32_t total = 2 * points.n;
  const double log_wider = w * log(wider);
  double highest = -detail::infinite;
  for (std::uint32_t i = 0; i < total; ++i) {
    point z{};
    const bool near = i >= points.n;
    if (near || !seen) place.at_lattice(points, scores, i & (points.n - 1), z, u.data(), more);
    else
      for (std::uint32_t k = 0, x = i; k < static_cast<std::uint32_t>(w); ++k, x = points.next(x)) z[k] = scores[x];
    if (near) {
      for (int k = w - 1; k >= 0; --k) {
        double s = wider * z[at(k)];
        for (int j = k + 1; j < w; ++j) s -= root[at(j) * P + at(k)] * z[at(j)];
        z[at(k)] = s / root[at(k) * P + at(k)];
      }
      for (int k = 0; k < w; ++k) z[at(k)] += best[at(k)];
      place.at_scores(z);
    }
    double log_ratio = log_root - log_wider;  // of the density near the best fit to that of the parameters
    for (int k = 0; k < w; ++k) {
      double s = 0.0;
      for (int j = k; j < w; ++j) s += root[at(j) * P + at(k)] * (z[at(j)] - best[at(j)]);
      log_ratio += 0.5 * square(z[at(k)]) - 0.5 * square(s / wider);
    }
    const double one = seen && !near ? l.seen[i] : at_point(h, l.wide, place.theta.data(), u.data());
    log_weight_[i] = one - detail::log_sum(0.0, log_ratio) + 0.69314718055994530942;
    if (is_nan(log_weight_[i])) log_weight_[i] = -detail::infinite;
    if (log_weight_[i] > highest) highest = log_weight_[i];
    if (one > -detail::infinite) visit(i, place.theta.data());
  }
  effective = 0.0;
  if (!(highest > -detail::infinite)) return highest;
  double sum = 0.0, squares = 0.0;
  for (std::uint32_t i = 0; i < total; ++i) {
    const double weight = log_weight_[i] > -detail::infinite ? exp(log_weight_[i] - highest) : 0.0;
    sum += weight;
    squares += square(weight);
  }
  effective = square(sum) / squares;
  return highest + log(sum / total);
}
template <class Visit>
double explanations::sum_over(std::size_t h, unsigned wide, unsigned half, double& effective, const Visit& visit) {
  (void)assemble(h, wide);
  look_at(h, wide, scratch_look_);
  return sum_from(h, scratch_look_, half, effective, visit);
}

/// What first order says, and the parameters for which it does not hold.
inline double explanations::first_order(std::size_t h, share& s, unsigned& wide) {
  wide = 0;
  s.how = method::first_order;
  s.effective_points = 0.0;
  if (!assemble(h, 0)) return -detail::infinite;
  const double first = straight(h, 0);
  if (h >= hypotheses_.size() || options_.how == inference_options::rule::first_order) return first;
  const unsigned all = (1u << hypotheses_[h].parameters.size()) - 1u;
  wide = options_.how == inference_options::rule::quasi_random ? all : bent(h, options_.bend);
  if (wide != 0) s.how = method::quasi_random;
  return first;
}
inline double explanations::likelihood(std::size_t h, share& s, unsigned half) {
  unsigned wide = 0;
  const double first = first_order(h, s, wide);
  return wide == 0 ? first : sum_over(h, wide, half, s.effective_points, nothing{});
}

inline const posterior_table& explanations::run() {
  auto& rows = table_.rows;
  const auto weight_of = [&](std::size_t h) { return prior_[h] > 0.0 ? log(prior_[h]) + rows[h].log_likelihood : -detail::infinite; };
  double top = -detail::infinite;
  to_sum_.clear();
  for (const auto h : order_) {
    rows[h].prior = prior_[h];
    unsigned wide = 0;
    rows[h].log_likelihood = rows_used_ == 0 ? 0.0 : first_order(h, rows[h], wide);
    if (wide != 0) {
      (void)assemble(h, wide);
      look_at(h, wide, looks_[h]);
      rows[h].log_likelihood = looks_[h].estimate();
      to_sum_.push_back(h);
    } else {
      top = std::max(top, weight_of(h));
    }
  }
  // the likeliest first, so that those that cannot matter beside it are known
  std::sort(to_sum_.begin(), to_sum_.end(), [&](std::size_t a, std::size_t b) {
    const double x = weight_of(a), y = weight_of(b);
    return x != y ? x > y : hypotheses_[a].id < hypotheses_[b].id;
  });
  for (const auto h : to_sum_) {
    auto& l = looks_[h];
    if (prior_[h] > 0.0 && options_.hopeless > 0.0 && l.bound > -detail::infinite && log(prior_[h]) + l.bound < top + log(options_.hopeless)) {
      rows[h].how = method::bounded;
      rows[h].log_likelihood = std::min(l.estimate(), l.bound);
    } else {
      (void)assemble(h, l.wide);
      rows[h].log_likelihood = sum_from(h, l, half_points(), rows[h].effective_points, nothing{});
    }
    top = std::max(top, weight_of(h));
  }
  double sum = 0.0;
  for (const auto h : order_) {
    rows[h].posterior = prior_[h] > 0.0 && top > -detail::infinite ? exp(log(prior_[h]) + rows[h].log_likelihood - top) : 0.0;
    sum += rows[h].posterior;
  }
  if (!(sum > 0.0)) throw relation_error("inference: these readings cannot occur together, whatever is wrong: look at their error sources");
  table_.log_evidence = top + log(sum);
  table_.leading = order_.front();
  for (const auto h : order_) {
    rows[h].posterior /= sum;
    if (rows[h].posterior > rows[table_.leading].posterior) table_.leading = h;
  }
  table_.robust = true;
  const double leads = rows[table_.leading].posterior;
  double closest = 0.0;
  for (const auto h : order_) {
    if (h == table_.leading || !(2.0 * rows[h].posterior >= leads) || !(rows[h].posterior > closest)) continue;
    closest = rows[h].posterior;  // halving the leading one's prior does the same as doubling this one's
    table_.robust = false;
    table_.overturned_by = h;
  }
  return table_;
}

/// Draws the readings at hand anew from a hypothesis: parameters, outcomes, error sources, rounding, range.
inline void explanations::simulate(std::size_t h, std::uint64_t draw) {
  const auto& one = hypotheses_[h];
  const int count = static_cast<int>(one.parameters.size());
  const auto uniform = [&](std::uint64_t which) { return detail::counted_uniform(options_.seed, draw, which); };
  std::array<double, P> theta{};
  for (int k = 0; k < count; ++k) theta[at(k)] = one.parameters[at(k)].is.quantile(uniform(at(k)));
  double true_value = 0.0;
  for (int i = 0; i < rows_used_; ++i) {
    row& r = rows_[at(i)];
    const test& t = tests_[at(r.test)];
    const prediction* p = predicts(h, r.test);
    const bool new_test = i == 0 || rows_[at(i - 1)].test != r.test;
    double v = uniform(100 + at(r.test));
    // an outcome by name?
    int outcome = -1;  // 0 above, 1 below, 2... categories
    const int outcomes = static_cast<int>(t.categories.size()) + 2;
    const bool real = p && p->real();
    for (int o = t.real() ? 0 : 2; o < outcomes && outcome < 0; ++o) {
      const std::string_view name = o == 0 ? "above" : o == 1 ? "below" : std::string_view(t.categories[at(o - 2)]);
      const double share = chance_of(p, name) + (real ? 0.0 : rest_of(p) * outcome_share(t));
      if (v < share) outcome = o;
      v -= share;
    }
    if (outcome >= 2 || (outcome < 0 && !t.real())) {
      r.is = kind::category;
      r.category = outcome >= 2 ? outcome - 2 : 0;
      continue;
    }
    if (outcome >= 0) {
      r.is = outcome == 0 ? kind::above : kind::below;
      r.x = outcome == 0 ? t.high : t.low;
      continue;
    }
    if (real) {
      true_value = p->value(theta.data(), count);
    } else if (new_test) {
      const double w = uniform(200 + at(r.test));
      true_value = t.broad == test::spread::uniform ? t.low + w * (t.high - t.low) : t.low * exp(w * log(t.high / t.low));
    }
    double y = true_value;
    for (std::size_t s = 0; s < sources_; ++s)
      if (const double u = errors_[at(r.source) * sources_ + s] + true_value * gains_[at(r.source) * sources_ + s]; u != 0.0) y += u * detail::normal_score(uniform(1000 + s));
    if (r.resolution > 0.0) y = r.resolution * __builtin_floor(y / r.resolution + 0.5);
    r.is = kind::value;
    r.x = y;
    if (real && y > t.high) r.is = kind::above, r.x = t.high;
    if (real && y < t.low) r.is = kind::below, r.x = t.low;
  }
}

inline conflict_report explanations::conflict(bool only_whether) {
  conflict_report c;
  double most = -1.0;
  for (const auto h : order_)
    if (h < hypotheses_.size() && table_.rows[h].posterior > most) most = table_.rows[h].posterior, c.leading = h;
  if (rows_used_ == 0) return c;
  // a sum with fewer points is enough to compare readings among themselves
  const unsigned half = 256;
  share s;
  c.log_density = likelihood(c.leading, s, half);
  const auto kept = rows_;
  std::size_t below = 0, no_more = 0, n = 0;
  for (unsigned d = 0; d < options_.draws; ++d) {
    if (only_whether && no_more > options_.draws / 100) return c;  // too many are as unlikely: the 1 % quantile of all draws cannot lie above
    simulate(c.leading, d);
    const double one = likelihood(c.leading, s, half);
    rows_ = kept;
    simulated_[n++] = one;
    below += one < c.log_density;
    no_more += one <= c.log_density;
  }
  if (n > 0) {
    const std::size_t at_1pc = n / 100;
    std::nth_element(simulated_.begin(), simulated_.begin() + static_cast<std::ptrdiff_t>(at_1pc), simulated_.end());
    c.log_density_1pc = simulated_[at_1pc];
    c.share_below = static_cast<double>(below) / static_cast<double>(n);
    c.conflict = c.log_density < c.log_density_1pc;
  }
  if (c.conflict) c.text = "no listed fault explains these readings";
  return c;
}

inline std::vector<predicted_reading> explanations::predicted(std::size_t h) {
  std::vector<predicted_reading> list;
  for (int i = 0; i < rows_used_; ++i) {
    const row& r = rows_[at(i)];
    const prediction* p = predicts(h, r.test);
    if (r.is == kind::category || !p || !p->real()) continue;
    const auto& l = linear_of(h, r.test);
    predicted_reading one;
    one.reading = r.caller;
    one.mean = l.value;
    double variance = 0.0;
    for (std::size_t k = 0; k < hypotheses_[h].parameters.size(); ++k) variance += square(l.slope[k]);
    one.standard_uncertainty_of_prediction = sqrt(variance);
    one.standard_uncertainty = sqrt(variance + errors(i, i, l.value, l.value) + square(r.resolution) / 12.0);
    if (r.is == kind::value) one.distance = (r.x - one.mean) / one.standard_uncertainty;
    list.push_back(one);
  }
  return list;
}

inline parameter_posterior explanations::parameter_after(std::size_t h, std::size_t k, double value) {
  if (h >= hypotheses_.size() || k >= hypotheses_[h].parameters.size()) throw range_error("parameter_after: there is no such parameter");
  const auto& list = hypotheses_[h].parameters;
  const unsigned all = (1u << list.size()) - 1u;
  parameter_posterior out;
  const bool asked = !is_nan(value);
  if (!assemble(h, 0)) return out;
  (void)straight(h, 0);
  const bool intervals = used_ > points_;
  unsigned wide = options_.how == inference_options::rule::first_order ? 0u
                  : options_.how == inference_options::rule::quasi_random || intervals ? all
                                                                                        : bent(h, 0.2 * options_.bend) | (list[k].is.is == distribution::shape::normal ? 0u : 1u << k);
  // first order: mean and variance of a narrow parameter given the values, from the factor that stands
  const auto narrow = [&](double centre, double unit, double& mean, double& sd) {
    double shift = 0.0, share = 0.0;
    std::array<double, N> y = g_[k], e = r_;
    for (auto& x : y) x *= unit;
    solve(y.data(), points_);
    solve(e.data(), points_);
    for (int i = 0; i < points_; ++i) {
      if (!(upper_[cell(i, i)] > 0.0)) continue;
      shift += y[at(i)] * e[at(i)];
      share += square(y[at(i)]);
    }
    const double scale = list[k].is.scale();
    mean = centre + scale * shift;
    sd = scale * sqrt(share < 1.0 ? 1.0 - share : 0.0);
  };
  if (wide == 0) {
    narrow(list[k].is.centre(), 1.0, out.mean, out.sd);
    if (asked) out.below = normal_cdf((value - out.mean) / out.sd);
    return out;
  }
  const bool is_wide = wide >> k & 1u;
  double effective = 0.0;
  const double whole = sum_over(h, wide, half_points(), effective, [&](std::uint32_t i, const double* theta) {
    kept_[i] = theta[k];
    kept_sd_[i] = 0.0;
    if (!is_wide) narrow(theta[k], list[k].is.scale(), kept_[i], kept_sd_[i]);
  });
  if (!(whole > -detail::infinite)) return out;
  double sum = 0.0, mean = 0.0, below = 0.0, variance = 0.0;
  for (std::size_t i = 0; i < 2 * half_points(); ++i) {
    if (!(log_weight_[i] > -detail::infinite)) continue;
    const double weight = exp(log_weight_[i] - whole);
    sum += weight;
    mean += weight * kept_[i];
    if (asked) below += weight * (is_wide ? (kept_[i] < value ? 1.0 : kept_[i] > value ? 0.0 : 0.5) : normal_cdf((value - kept_[i]) / kept_sd_[i]));
  }
  out.mean = mean / sum;
  for (std::size_t i = 0; i < 2 * half_points(); ++i)
    if (log_weight_[i] > -detail::infinite) variance += exp(log_weight_[i] - whole) / sum * (square(kept_[i] - out.mean) + square(kept_sd_[i]));
  out.sd = sqrt(variance);
  if (asked) out.below = below / sum;
  return out;
}

inline void explanations::foresee(std::size_t h, std::span<const coming_reading> coming, std::span<foreseen> out) {
  constexpr std::size_t most_points = 24;
  struct ready {  // a coming reading, its names looked up
    int test = 0;
    const prediction* p = nullptr;
    bool real = false;
    std::vector<double> fixed, gain;               // by the sources of the readings at hand
    double own_ff = 0.0, own_fg = 0.0, own_gg = 0.0;  // of the others
  };
  std::vector<ready> list(coming.size());
  bool any = false;
  for (std::size_t c = 0; c < coming.size(); ++c) {
    auto& r = list[c];
    const std::size_t t = place_of(coming[c].test);
    if (t == tests_.size()) throw range_error("foresee: \"" + coming[c].test + "\" is not among the tests");
    const test& of = tests_[t];
    r.test = static_cast<int>(t);
    r.p = predicts(h, r.test);
    r.real = r.p && r.p->real();
    const double rest = rest_of(r.p);
    auto& o = out[c];
    o.parts.clear();
    o.broad = r.real ? 0.0 : rest * value_share(of);
    o.outcomes.assign(of.categories.size() + 2, 0.0);
    for (std::size_t k = 0; k < o.outcomes.size(); ++k) {
      if (k < 2 && !of.real()) continue;
      const std::string_view name = k == 0 ? "above" : k == 1 ? "below" : std::string_view(of.categories[k - 2]);
      o.outcomes[k] = chance_of(r.p, name) + (r.real ? 0.0 : rest * outcome_share(of));
    }
    if (!r.real || !(rest > 0.0)) {
      r.real = false;
      continue;
    }
    any = true;
    r.fixed.assign(sources_, 0.0);
    r.gain.assign(sources_, 0.0);
    std::vector<std::pair<std::string_view, std::array<double, 2>>> own;
    const auto put = [&](const measured::part& p, bool as_gain) {
      const auto at_name = std::lower_bound(names_.begin(), names_.end(), p.source);
      if (at_name != names_.end() && *at_name == p.source) {
        (as_gain ? r.gain : r.fixed)[static_cast<std::size_t>(at_name - names_.begin())] += p.u;
        return;
      }
      auto mine = std::find_if(own.begin(), own.end(), [&](const auto& x) { return x.first == p.source; });
      if (mine == own.end()) mine = own.insert(own.end(), {p.source, {0.0, 0.0}});
      mine->second[as_gain ? 1 : 0] += p.u;
    };
    for (const auto& p : coming[c].parts) put(p, false);
    for (const auto& p : coming[c].gains) put(p, true);
    for (const auto& x : own) {
      r.own_ff += square(x.second[0]);
      r.own_fg += x.second[0] * x.second[1];
      r.own_gg += square(x.second[1]);
    }
    r.own_ff += square(coming[c].resolution) / 12.0;
  }
  if (!any) return;

  const auto& parameters = hypotheses_[h].parameters;
  const int count = static_cast<int>(parameters.size());
  const auto variance_of = [&](const ready& r, double m) {
    double sum = r.own_ff + 2.0 * m * r.own_fg + m * m * r.own_gg;
    for (std::size_t s = 0; s < sources_; ++s) sum += square(r.fixed[s] + m * r.gain[s]);
    return sum;
  };
  // one point of the wide parameters, the block standing there
  const auto part_at = [&](double weight, const double* theta, unsigned wide, bool by_scale) {
    std::array<double, P> slope{};
    std::array<double, N> y{};
    for (std::size_t c = 0; c < list.size(); ++c) {
      const auto& r = list[c];
      if (!r.real) continue;
      const double m = r.p->slopes(theta, count, slope.data());
      if (!is_finite(m)) continue;
      double variance = variance_of(r, m), mean = m;
      for (int i = 0; i < points_; ++i) {
        const std::size_t a = at(rows_[at(block_[at(i)])].source);
        double common = 0.0;
        for (std::size_t s = 0; s < sources_; ++s) {
          const double mine = r.fixed[s] + m * r.gain[s];
          if (mine == 0.0) continue;
          common += mine * (errors_[a * sources_ + s] + true_[at(i)] * gains_[a * sources_ + s]);
          if (against_[at(i)] >= 0) {
            const std::size_t b = at(rows_[at(against_[at(i)])].source);
            common -= mine * (errors_[b * sources_ + s] + true_[at(i)] * gains_[b * sources_ + s]);
          }
        }
        y[at(i)] = common;
      }
      for (int k = 0; k < count; ++k) {
        if (wide >> k & 1u) continue;
        const double scale = parameters[at(k)].is.scale(), g = slope[at(k)] * scale;
        if (!is_finite(g)) continue;
        variance += g * g;
        for (int i = 0; i < points_; ++i) y[at(i)] += g * g_[at(k)][at(i)] * (by_scale ? 1.0 : scale);
      }
      const double before = variance;
      solve(y.data(), points_);
      for (int i = 0; i < points_; ++i) {
        if (!(upper_[cell(i, i)] > 0.0)) continue;
        mean += y[at(i)] * z_[at(i)];
        variance -= square(y[at(i)]);
      }
      variance = std::max(variance, 1e-12 * before);
      const double rest = rest_of(r.p);
      out[c].parts.push_back({rest * weight, mean, sqrt(variance)});
    }
  };

  // which parameters are summed over points: those that the readings at hand depend on, and those that only the coming ones do
  unsigned wide = 0, seen = 0;
  for (const auto& r : list) {
    if (!r.real) continue;
    const auto& l = linear_of(h, r.test);
    double variance = variance_of(r, l.value);
    for (int k = 0; k < count; ++k) variance += square(l.slope[at(k)]);
    for (int k = 0; k < count; ++k) {
      const auto shape = parameters[at(k)].is.is;
      const double bends = std::max(fabs(l.up[at(k)]), fabs(l.down[at(k)]));
      const bool bounded = shape == distribution::shape::uniform || shape == distribution::shape::triangular;
      if ((shape == distribution::shape::log_uniform && (l.slope[at(k)] != 0.0 || bends > 0.0)) || square(bends) > 0.04 * variance ||
          (bounded && square(l.slope[at(k)]) > options_.share_of_uniform * variance))
        wide |= 1u << k;
    }
  }
  for (int i = 0; i < rows_used_; ++i) {
    const prediction* p = predicts(h, rows_[at(i)].test);
    if (!p || !p->real()) continue;
    const auto& l = linear_of(h, rows_[at(i)].test);
    for (int k = 0; k < count; ++k)
      if (l.slope[at(k)] != 0.0 || l.up[at(k)] != 0.0 || l.down[at(k)] != 0.0) seen |= 1u << k;
  }
  std::array<double, P> theta{};
  for (int k = 0; k < count; ++k) theta[at(k)] = parameters[at(k)].is.centre();
  used_ = points_ = 0;
  unsigned summed = wide & seen;
  if (rows_used_ > 0) {
    if (!assemble(h, 0)) return;
    (void)straight(h, 0);
    if (options_.how == inference_options::rule::automatic) summed |= used_ > points_ ? seen : bent(h, options_.bend);
    if (options_.how == inference_options::rule::quasi_random) summed |= seen;
    wide |= summed;
  }
  if (wide == 0) return part_at(1.0, theta.data(), 0, true);
  // points of the distributions of those that no reading has touched, by Kronecker's sequence
  const unsigned untouched = wide & ~summed;
  const int dimensions = __builtin_popcount(untouched);
  double root = 2.0;  // of the generalised golden ratio of as many dimensions
  for (int step = 0; step < 40; ++step) root = pow(1.0 + root, 1.0 / (dimensions + 1));
  const auto spread = [&](std::size_t i) {
    double step = 1.0;
    for (int k = 0; k < count; ++k) {
      if (!(untouched >> k & 1u)) continue;
      step /= root;
      double u = 0.5 / most_points + static_cast<double>(i) * (dimensions == 1 ? (summed ? 0.41421356237309505 : 1.0 / most_points) : step);
      u -= __builtin_floor(u);
      theta[at(k)] = parameters[at(k)].is.quantile(std::clamp(u, 1e-9, 1.0 - 1e-9));
    }
  };
  if (summed == 0) {
    for (std::size_t i = 0; i < most_points; ++i) {
      spread(i);
      part_at(1.0 / most_points, theta.data(), wide, true);
    }
    return;
  }
  constexpr unsigned half = 256;
  std::vector<std::array<double, P>> at_points(2 * half);
  double effective = 0.0;
  const double whole = sum_over(h, summed, half, effective, [&](std::uint32_t i, const double* x) { std::copy(x, x + count, at_points[i].begin()); });
  if (!(whole > -detail::infinite)) return;
  double sum = 0.0, so_far = 0.0;
  for (std::uint32_t i = 0; i < 2 * half; ++i)
    if (log_weight_[i] > -detail::infinite) sum += exp(log_weight_[i] - whole);
  const auto weights = std::vector<double>(log_weight_.begin(), log_weight_.begin() + 2 * half);
  std::array<double, N> u{};
  u.fill(0.5);
  std::size_t taken = 0;
  for (std::uint32_t i = 0; i < 2 * half && taken < most_points; ++i) {
    if (!(weights[i] > -detail::infinite)) continue;
    so_far += exp(weights[i] - whole) / sum;
    std::size_t here = 0;
    while (taken + here < most_points && (static_cast<double>(taken + here) + 0.5) / most_points <= so_far) ++here;
    if (here == 0) continue;
    theta = at_points[i];
    if (at_point(h, summed, theta.data(), u.data()) > -detail::infinite)
      for (std::size_t k = 0; k < (untouched ? here : 1); ++k) {
        spread(taken + k);
        part_at(static_cast<double>(untouched ? 1 : here) / most_points, theta.data(), wide, false);
      }
    taken += here;
  }
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

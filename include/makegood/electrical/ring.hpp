// SPDX-License-Identifier: MIT
// What the readings of a ring circuit say: sound, broken, interconnected, with spurs, with a bad joint, with conductors changed over.
// Subject: electrical (models). Opt-in: includes the inference kernel, and so the standard library's containers.
#pragma once
#include <algorithm>
#include <array>
#include <memory>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>
#include "../job/inference.hpp"
#include "../reading.hpp"
#include "conductors.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

// ---- what is handed in ---------------------------------------------------------------------------------------------------

enum class polarity : unsigned char { not_read, right, reversed };

/// One socket or joint at which the cross-connected readings were taken.
struct ring_point {
  std::string name{};
  double position_ratio = no_number;  ///< where it lies along the ring, 0 to 1; NaN: not known
  reading line_neutral_ohm{};         ///< line and neutral linked crosswise at the board
  reading line_cpc_ohm{};             ///< line and protective conductor linked crosswise at the board
  electrical::polarity polarity = polarity::not_read;
};
struct ring_readings {
  reading line_ohm{}, neutral_ohm{}, cpc_ohm{};  ///< end to end
  std::vector<ring_point> points{};
  double line_mohm_per_m = no_number, cpc_mohm_per_m = no_number;  ///< at 20 °C, as tabulated; NaN: 7.41 and 12.1 are assumed
  double conductor_temperature_c = no_number;                      ///< NaN: (20 ± 5) °C is assumed
  reading expected_length_m{};                                     ///< from a plan; a bare number is taken as ± 25 %
};

// ---- what is assumed ------------------------------------------------------------------------------------------------------

inline constexpr std::size_t most_ring_points = 60;         ///< that may be handed in
inline constexpr std::size_t most_ring_points_at_once = 8;  ///< of the joint likelihood; the rest is held against the result
/// IEC 60228 prints upper limits: real cable reads 1 to 3 % lower (recalled, not read in a print).
inline constexpr double share_of_tabulated = 0.98, share_of_tabulated_doubt = 0.006;
inline constexpr double ring_contact_doubt_ohm = 0.01;      ///< of probes and plug pins, where no statement of the instrument is given
inline constexpr double ring_contact_doubt_stated_ohm = 0.005;
inline constexpr double ring_position_doubt = 0.08;         ///< standard uncertainty of a stated place along the ring
/// 4x(1-x) at an unknown place x, anywhere along the ring: mean and standard deviation.
inline constexpr double mean_of_place = 2.0 / 3.0, scatter_of_place = 0.29814239699997196;
inline constexpr double neutral_against_line = 0.005, cpc_against_table = 0.01;  ///< spread of cores in one cable, parts of the value

enum class ring_kind : unsigned char {
  intact, line_broken, neutral_broken, cpc_broken, interconnected, spur, line_joint, neutral_joint, cpc_joint, wrong_links, changed_over, not_on_ring, other_cable, none_of_these
};
inline constexpr int ring_kinds = 14;
/// Of each kind: its word, the weight before any reading (judgement, not counted anywhere), what it means and what to do next.
struct ring_kind_row {
  std::string_view key;
  double prior;
  std::string_view text, act;
};
inline constexpr ring_kind_row ring_kind_rows[ring_kinds] = {
    {"intact", 0.50, "a sound ring", "Take what is still missing: both cross-connected readings at every outlet, then insulation."},
    {"line_broken", 0.03, "the line conductor is open somewhere",
     "Part the ring at an outlet near its middle and read the line end to end in each half; halve again."},
    {"neutral_broken", 0.03, "the neutral conductor is open somewhere",
     "Part the ring at an outlet near its middle and read the neutral end to end in each half; halve again."},
    {"cpc_broken", 0.04, "the protective conductor is open somewhere",
     "Part the ring at an outlet near its middle and read the protective conductor end to end in each half; halve again."},
    {"interconnected", 0.04, "the ring is bridged between two places (a figure of eight)",
     "Open the outlets that stand out and their neighbours and count the cables: where three or more meet, part them and read end to end again."},
    {"spur", 0.16, "one or more outlets are on spurs",
     "Open the outlet that stands out: one cable in it means a spur; two mean that a joint is bad or the ring is bridged."},
    {"line_joint", 0.03, "a bad joint in the line conductor", "Remake the line terminals outlet by outlet, and read end to end after each."},
    {"neutral_joint", 0.03, "a bad joint in the neutral conductor", "Remake the neutral terminals outlet by outlet, and read end to end after each."},
    {"cpc_joint", 0.03, "a bad joint in the protective conductor",
     "Remake the terminals of the protective conductor outlet by outlet, and read end to end after each."},
    {"wrong_links", 0.05, "the ends at the board were not linked crosswise",
     "Link the line of one leg with the other conductor of the other leg, and the reverse; read the points again."},
    {"changed_over", 0.03, "two conductors are changed over at an outlet", "Open that outlet and look at its terminals."},
    {"not_on_ring", 0.02, "an outlet is not on this ring, or a conductor is loose at it",
     "Find the circuit of that outlet; look for a loose conductor in it."},
    {"other_cable", 0.06, "the cable is another one than stated", "Measure the strands of both conductors at the board, and put their resistances in."},
    {"none_of_these", 0.0, "something that is not in this list",
     "Read everything once more with the leads nulled; part the ring and read its halves."}};

/// Copper pairs of line and protective conductor that a ring may be of (IEC 60228, class 1 and 2, at 20 °C).
struct ring_cable_row {
  std::string_view key;
  double line_mohm_per_m, cpc_mohm_per_m;
};
inline constexpr ring_cable_row ring_cables[] = {{"1.5/1.0 mm²", 12.1, 18.1}, {"1.5/1.5 mm²", 12.1, 12.1}, {"2.5/1.0 mm²", 7.41, 18.1},
                                                 {"2.5/1.5 mm²", 7.41, 12.1}, {"2.5/2.5 mm²", 7.41, 7.41}, {"4/1.5 mm²", 4.61, 12.1},
                                                 {"4/2.5 mm²", 4.61, 7.41}};

// ---- what comes out ---------------------------------------------------------------------------------------------------------

struct ring_hypothesis {
  ring_kind kind = ring_kind::none_of_these;
  std::string id{}, text{};
  std::vector<std::size_t> points{};  ///< which it is about, as handed in
  double prior = 0.0, probability = 0.0;
};
/// One reading at a point against what the leading hypothesis predicts without this point's own readings.
struct ring_residual {
  double read = no_number, predicted = no_number, standard_uncertainty = no_number, distance = no_number;
  bool over_range = false;
};
struct ring_point_result {
  std::string name{};
  ring_residual line_neutral{}, line_cpc{};
  double spur_probability = 0.0, spur_length_m = no_number, spur_length_standard_uncertainty_m = no_number;
  bool in_likelihood = true;
  std::string text{};
};
struct ring_next_reading {
  std::string reading{}, text{};
  double information_bits = 0.0;  ///< how much it is expected to lower the entropy over the kinds
};
struct ring_result {
  std::vector<ring_hypothesis> kinds{};       ///< one for each kind, the most probable first
  std::vector<ring_hypothesis> hypotheses{};  ///< every listed one, the most probable first
  bool robust = true;                         ///< the leading kind stays in front when its weight is halved or another doubled
  bool conflict = false;                      ///< a reading lies far from what even the leading one predicts: "none of these" was given 40 %
  double length_m = no_number, length_standard_uncertainty_m = no_number, length_low_m = no_number, length_high_m = no_number;
  double highest_line_cpc_ohm = no_number;    ///< read at a point: R1+R2 of the circuit
  std::vector<ring_point_result> points{};
  std::vector<ring_next_reading> next{};      ///< best first; empty: nothing is left unread
  std::vector<std::string> cautions{}, assumptions{};
  std::string text{};
};

namespace detail {

enum class ring_test : unsigned char { line, neutral, cpc, line_neutral, line_cpc, length };

/// Everything that the predictions of one hypothesis need.
struct ring_setup {
  ring_kind kind = ring_kind::intact;
  double ratio = 1.0;               // cpc to line, end to end
  double line_ohm_per_m = 1.0;      // expected mean at the temperature: for lengths
  double cpc_ohm_per_m = 1.0;
  bool straight_neutral = false, straight_cpc = false;  // linked straight
  bool apart_neutral = false, apart_cpc = false;        // not linked at all
  std::vector<int> on_spur{};       // points (of those used) with a length of their own, in the order of the parameters
  std::vector<bool> hinted{};       // points whose place along the ring was stated
  std::vector<int> place{};         // the parameter that is the place of a point; -1: none, an average place with its scatter in the reading
  int fault = 1;                    // the first parameter of the fault
  bool hints = false;
  bool by_place() const {           // a point's place counts, not only how far it is from the board
    return kind == ring_kind::line_broken || kind == ring_kind::cpc_broken || kind == ring_kind::line_joint || kind == ring_kind::cpc_joint;
  }
};

template <class T>
constexpr double number_in(const T& x) {
  if constexpr (requires { x.value; }) return x.value;
  else return x;
}

/// The reading of one test as a function of the parameters: end-to-end resistance of the line, places, then what the fault brings. The
/// network is two chains with cross links, so that two ways in parallel join the points; a bridge between two places is, by star and
/// delta, the same as a shorter ring with a spur at each point between them. Both are held to a nodal analysis by the tests.
struct ring_prediction {
  std::shared_ptr<const ring_setup> s;
  ring_test what;
  int point;

  template <class P>
  auto operator()(const P& p) const {
    using T = std::remove_cvref_t<decltype(p[0])>;
    const T r = p[0];
    const int fault = s->fault;
    const ring_kind k = s->kind;
    switch (what) {
      case ring_test::line: return k == ring_kind::line_joint ? T(r + p[fault]) : r;
      case ring_test::neutral: return k == ring_kind::neutral_joint ? T(r + p[fault]) : r;
      case ring_test::cpc: return k == ring_kind::cpc_joint ? T(r * s->ratio + p[fault]) : T(r * s->ratio);
      case ring_test::length: return k == ring_kind::interconnected ? T(r / s->line_ohm_per_m / p[fault]) : T(r / s->line_ohm_per_m);
      default: break;
    }
    const bool neutral = what == ring_test::line_neutral;
    const T a = r, b = neutral ? r : T(r * s->ratio);
    const int place_of = s->place[static_cast<std::size_t>(point)];
    const T x = place_of < 0 ? T(mean_of_place) : p[place_of];
    const bool is_place = s->hinted[static_cast<std::size_t>(point)] || (place_of >= 0 && s->by_place());
    const T q = is_place ? T(4.0 * x * (1.0 - x)) : x;  // 0 at the board, 1 in the middle
    if (neutral ? s->straight_neutral : s->straight_cpc) return T(0.25 * (a + b) * q);
    const bool in_line = k == ring_kind::line_broken || k == ring_kind::line_joint;
    const bool in_other = neutral ? k == ring_kind::neutral_broken || k == ring_kind::neutral_joint : k == ring_kind::cpc_broken || k == ring_kind::cpc_joint;
    if (in_line || in_other) {
      const bool broken = k == ring_kind::line_broken || k == ring_kind::neutral_broken || k == ring_kind::cpc_broken;
      const int place = fault + (broken ? 0 : 1);
      // ways A (line to end 0, other from end 1) and B; without a hint of any place a mirror makes A the way with the fault
      bool on_a = true;
      if (s->hints && s->by_place()) on_a = in_line ? number_in(p[place]) < number_in(x) : number_in(p[place]) > number_in(x);
      const T way_a = s->by_place() ? T(a * x + b * (1.0 - x)) : T(0.5 * (a + b));
      const T way_b = T(a + b) - way_a;
      if (broken) return on_a ? way_b : way_a;
      const T bad = (on_a ? way_a : way_b) + p[fault], good = on_a ? way_b : way_a;
      return T(bad * good / (bad + good));
    }
    const T low = a * b / (a + b);
    T y = low + q * (0.25 * (a + b) - low);
    for (std::size_t j = 0; j < s->on_spur.size(); ++j)
      if (s->on_spur[j] == point) {
        if (k == ring_kind::interconnected) y = y + p[fault + 1 + static_cast<int>(j)] * (a + b);
        else y = y + p[fault + static_cast<int>(j)] * (s->line_ohm_per_m + (neutral ? s->line_ohm_per_m : s->cpc_ohm_per_m));
      }
    return y;
  }
};

inline void demand_ring_reading(const reading& r, const std::string& name) {
  if (!r.has_number()) {
    if (r.is == reading::state::no_trip) throw range_error("ring_tests: " + name + ": \"no_trip\" is no reading of a resistance");
    return;
  }
  if (is_nan(r.number)) throw range_error("ring_tests: " + name + " is no number; leave out what was not measured");
  if (!(r.number >= 0.0)) throw range_error("ring_tests: " + name + " = " + number_text(r.number) + " Ω: a resistance is not negative; null the leads");
  if (r.is == reading::state::value && !(r.number <= 100.0))
    throw range_error("ring_tests: " + name + " = " + number_text(r.number) +
        " Ω: up to 100 Ω; over range is {\"above\": the end of the range}; was it read in mΩ?");
  if (!is_finite(r.number) || r.number > 1e7) throw range_error("ring_tests: " + name + ": the end of the range in Ω must be a number up to 1e7");
  if (r.is == reading::state::below && !(r.number > 0.0)) throw range_error("ring_tests: " + name + ": \"below\" needs a number above 0 Ω");
}
/// A reading for the kernel: the instrument's statement, contacts, and what cores of one cable differ by.
inline job::observation ring_observation(const std::string& test, const reading& r, std::string_view core, double part, double place_part = 0.0) {
  auto o = job::observation::from(test, r, reads::continuity);
  if (o.is == job::observation::kind::not_measured) return o;
  const bool stated = r.stated_for(reads::continuity) != nullptr;
  o.number.add("contact, " + test, stated ? ring_contact_doubt_stated_ohm : ring_contact_doubt_ohm);
  if (!stated && o.is == job::observation::kind::value) o.resolution = 0.01;
  if (part > 0.0) o.gains.push_back({std::string(core), part});
  if (place_part > 0.0) o.gains.push_back({"place, " + test, place_part});
  return o;
}
inline std::string ring_point_name(const ring_readings& in, std::size_t i) {
  return in.points[i].name.empty() ? "point " + std::to_string(i + 1) : "\"" + in.points[i].name + "\"";
}
inline std::string metre_text(double x) { return number_text(static_cast<double>(static_cast<long long>(x + 0.5))) + " m"; }
inline std::string percent_text(double p) {
  if (p < 0.005) return "below 1 %";
  if (p > 0.985) return "over 98 %";
  return number_text(static_cast<double>(static_cast<long long>(p * 100.0 + 0.5))) + " %";
}
inline double median_of(std::vector<double> x) {
  std::sort(x.begin(), x.end());
  return x.size() % 2 ? x[x.size() / 2] : 0.5 * (x[x.size() / 2 - 1] + x[x.size() / 2]);
}

class ring_analysis {
 public:
  explicit ring_analysis(const ring_readings& in) : in_(in) {}

  ring_result run() {
    demand();
    conductors();
    choose_points();
    first_guess();
    hypotheses();
    job::inference_options o;
    o.none_prior = 0.05;
    o.points = 512;
    engine_ = std::make_unique<job::explanations>(tests_, list_, o);
    observe();
    table_ = engine_->explain(seen_);
    shares();
    length();
    points();
    temper();
    next();
    words();
    return std::move(out_);
  }

 private:
  const ring_readings& in_;
  ring_result out_;
  double line_ = 7.41, cpc_ = 12.1, temperature_ = 20.0, factor_ = 1.0;
  bool cable_assumed_ = false, temperature_assumed_ = false, instrument_assumed_ = false;
  double line_ohm_per_m_ = 0.0, cpc_ohm_per_m_ = 0.0;  // expected means at the temperature
  double guess_ = 0.0;
  std::vector<std::size_t> used_;
  std::vector<job::test> tests_;
  std::vector<job::hypothesis> list_;
  struct origin {
    ring_kind kind;
    std::vector<std::size_t> points;  // as handed in
    std::shared_ptr<const ring_setup> setup;
    std::string text;
  };
  std::vector<origin> from_;
  std::vector<job::observation> seen_;
  std::unique_ptr<job::explanations> engine_;
  job::posterior_table table_;
  bool unexplained_ = false;  // an open reading that the leading hypothesis does not have
  std::size_t best_ = 0;      // the leading hypothesis of the leading listed kind

  static bool is_value(const reading& r) { return r.is == reading::state::value; }
  bool open(std::size_t i) const {
    const auto& p = in_.points[i];
    return p.line_neutral_ohm.is == reading::state::above || p.line_cpc_ohm.is == reading::state::above;
  }

  void demand() {
    const auto fail = [](const std::string& t) { throw range_error("ring_tests: " + t); };
    demand_ring_reading(in_.line_ohm, "line_end_to_end_ohm");
    demand_ring_reading(in_.neutral_ohm, "neutral_end_to_end_ohm");
    demand_ring_reading(in_.cpc_ohm, "cpc_end_to_end_ohm");
    if (in_.points.size() > most_ring_points) fail("points: " + std::to_string(in_.points.size()) + " of them; at most 60");
    bool any = in_.line_ohm.has_number() || in_.neutral_ohm.has_number() || in_.cpc_ohm.has_number();
    for (std::size_t i = 0; i < in_.points.size(); ++i) {
      const auto& p = in_.points[i];
      const std::string at = "points[" + std::to_string(i) + "].";
      demand_ring_reading(p.line_neutral_ohm, at + "line_neutral_ohm");
      demand_ring_reading(p.line_cpc_ohm, at + "line_cpc_ohm");
      any = any || p.line_neutral_ohm.has_number() || p.line_cpc_ohm.has_number() || p.polarity != polarity::not_read;
      if (!is_nan(p.position_ratio) && !(p.position_ratio >= 0.0 && p.position_ratio <= 1.0))
        fail(at + "position_ratio must be from 0 to 1 along the ring");
    }
    if (!any) fail("no reading at all; end to end: line_end_to_end_ohm, neutral_end_to_end_ohm, cpc_end_to_end_ohm; at outlets: points");
    const auto per_metre = [&](double x, std::string_view name) {
      if (is_nan(x)) return;
      if (!(x > 0.05 && x <= 200.0)) fail(std::string(name) + " = " + number_text(x) + " mΩ/m: from 0.05 to 200 (2.5 mm² of copper has 7.41)");
    };
    per_metre(in_.line_mohm_per_m, "line_mohm_per_m");
    per_metre(in_.cpc_mohm_per_m, "cpc_mohm_per_m");
    if (!is_nan(in_.conductor_temperature_c) && !(in_.conductor_temperature_c >= -40.0 && in_.conductor_temperature_c <= 120.0))
      fail("conductor_temperature_c must be from -40 to 120 °C");
    if (in_.expected_length_m.has_number() && !(in_.expected_length_m.is == reading::state::value && in_.expected_length_m.number > 1.0 &&
        in_.expected_length_m.number < 2000.0))
      fail("expected_length_m must be a length from 1 to 2000 m");
  }
  void conductors() {
    cable_assumed_ = is_nan(in_.line_mohm_per_m) || is_nan(in_.cpc_mohm_per_m);
    if (!is_nan(in_.line_mohm_per_m)) line_ = in_.line_mohm_per_m;
    if (!is_nan(in_.cpc_mohm_per_m)) cpc_ = in_.cpc_mohm_per_m;
    temperature_assumed_ = is_nan(in_.conductor_temperature_c);
    if (!temperature_assumed_) temperature_ = in_.conductor_temperature_c;
    factor_ = call(resistance_at_temperature, 1.0, temperature_, 0.00393);
    line_ohm_per_m_ = line_ * factor_ * share_of_tabulated / 1000.0;
    cpc_ohm_per_m_ = cpc_ * factor_ * share_of_tabulated / 1000.0;
  }
  /// At most eight points: those that are open or changed over, the three highest, the lowest, then evenly through the rest.
  void choose_points() {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < in_.points.size(); ++i) {
      const auto& p = in_.points[i];
      if (p.line_neutral_ohm.has_number() || p.line_cpc_ohm.has_number() || p.polarity != polarity::not_read) order.push_back(i);
    }
    if (order.size() > most_ring_points_at_once) {
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return height(a) > height(b); });
      std::vector<std::size_t> kept;
      const auto keep = [&](std::size_t i) {
        if (kept.size() < most_ring_points_at_once && std::find(kept.begin(), kept.end(), i) == kept.end()) kept.push_back(i);
      };
      for (const auto i : order)
        if (kept.size() < 3 && (open(i) || in_.points[i].polarity == polarity::reversed)) keep(i);
      std::size_t high = 0;
      for (const auto i : order)
        if (!open(i) && high < 3) keep(i), ++high;
      keep(order.back());
      for (std::size_t step = 1; step < 64 && kept.size() < most_ring_points_at_once; ++step) keep(order[(order.size() - 1) * (step * 29 % 64) / 64]);
      order = kept;
    }
    std::sort(order.begin(), order.end());
    used_ = order;
  }
  double height(std::size_t i) const {
    const auto& p = in_.points[i];
    if (is_value(p.line_neutral_ohm)) return p.line_neutral_ohm.number;
    if (is_value(p.line_cpc_ohm)) return p.line_cpc_ohm.number * 2.0 * line_ / (line_ + cpc_);
    return -1.0;
  }
  /// A first guess of the line's resistance, the middle of a wide prior that all hypotheses share.
  void first_guess() {
    std::vector<double> all, cross;
    const auto take = [&](const reading& r, double by) {
      if (is_value(r) && r.number > 0.0) all.push_back(r.number * by);
    };
    take(in_.line_ohm, 1.0);
    take(in_.neutral_ohm, 1.0);
    take(in_.cpc_ohm, line_ / cpc_);
    for (std::size_t i = 0; i < in_.points.size(); ++i)
      if (const double h = height(i); h > 0.0) cross.push_back(2.0 * h);
    if (!cross.empty() && all.size() < 2) all.push_back(median_of(cross));
    guess_ = !all.empty() ? median_of(all) : in_.expected_length_m.has_number() ? in_.expected_length_m.number * line_ohm_per_m_ : 60.0 * line_ohm_per_m_;
    guess_ = std::max(guess_, 0.02);
  }
  /// Over range is an open conductor, where the range ends far above what the ring can be; a lesser end may also be passed by a bad joint.
  std::string_view open_word(const reading& r) const {
    return r.is == reading::state::above && r.number < std::max(5.0, 10.0 * guess_ * (1.0 + cpc_ / line_)) ? "above" : "open";
  }
  static std::string test_id(std::string_view what, std::size_t point) {
    std::string n = std::to_string(point);
    return std::string(what) + "[" + std::string(2 - std::min<std::size_t>(2, n.size()), '0') + n + "]";
  }

  void add(ring_setup base, std::string id, std::string text, double prior, std::vector<job::parameter> more, std::vector<std::size_t> points,
           std::string_view open_test = {}, std::size_t opened = 0) {
    const bool straight = base.straight_neutral || base.straight_cpc;
    for (const auto i : used_) {
      base.hinted.push_back(!is_nan(in_.points[i].position_ratio));
      base.hints = base.hints || base.hinted.back();
      base.place.push_back(base.hinted.back() || base.by_place() || straight ? base.fault++ : -1);
    }
    const auto s = std::make_shared<const ring_setup>(base);
    job::hypothesis h;
    h.id = id;
    h.title = text;
    h.prior = prior;
    h.parameters.push_back({"line", job::distribution::normal(guess_, 0.4 * guess_)});
    for (std::size_t j = 0; j < used_.size(); ++j) {
      const double place = in_.points[used_[j]].position_ratio;
      if (base.place[j] < 0) continue;
      h.parameters.push_back({"place " + std::to_string(j), base.hinted[j]     ? job::distribution::normal(place, ring_position_doubt)
                                                            : s->by_place() ? job::distribution::uniform(0.0, 1.0)
                                                                            : job::distribution::triangular(0.0, 1.0, 1.0)});
    }
    for (auto& m : more) h.parameters.push_back(std::move(m));
    const auto say = [&](const std::string& test, const reading& r, ring_test what, int point, bool open) {
      const std::string word(open_word(r));
      if (open) {
        h.predictions.push_back({test, job::prediction::outcomes({{word, 0.97}})});
        return;
      }
      job::prediction p(ring_prediction{s, what, point});
      if (what != ring_test::length) p.or_outcome(word, 0.0005);  // a plug that was not home
      h.predictions.push_back({test, std::move(p)});
    };
    const ring_kind k = base.kind;
    say("line", in_.line_ohm, ring_test::line, 0, k == ring_kind::line_broken);
    say("neutral", in_.neutral_ohm, ring_test::neutral, 0, k == ring_kind::neutral_broken);
    say("cpc", in_.cpc_ohm, ring_test::cpc, 0, k == ring_kind::cpc_broken);
    if (in_.expected_length_m.has_number()) say("length", {}, ring_test::length, 0, false);
    for (std::size_t j = 0; j < used_.size(); ++j) {
      const bool here = !open_test.empty() && used_[j] == opened;
      say(test_id("line_neutral", used_[j]), in_.points[used_[j]].line_neutral_ohm, ring_test::line_neutral, static_cast<int>(j),
          base.apart_neutral || (here && (open_test == "line_neutral" || open_test == "both")));
      say(test_id("line_cpc", used_[j]), in_.points[used_[j]].line_cpc_ohm, ring_test::line_cpc, static_cast<int>(j),
          base.apart_cpc || (here && (open_test == "line_cpc" || open_test == "both")));
      if (in_.points[used_[j]].polarity != polarity::not_read) {
        const double reversed = !here ? 0.005 : k == ring_kind::not_on_ring ? 0.02 : open_test == "both" ? 0.5 : 0.97;
        h.predictions.push_back({test_id("polarity", used_[j]), job::prediction::outcomes({{"right", 1.0 - reversed}, {"reversed", reversed}})});
      }
    }
    list_.push_back(std::move(h));
    from_.push_back({base.kind, std::move(points), s, std::move(text)});
  }

  void hypotheses() {
    // the tests
    for (const char* id : {"line", "neutral", "cpc"}) tests_.push_back({id, "", 0.005, 200.0, {"open"}});
    if (in_.expected_length_m.has_number()) tests_.push_back({"length", "", 1.0, 2000.0, {}, job::test::spread::log_uniform, 0.0});
    for (const auto i : used_) {
      tests_.push_back({test_id("line_neutral", i), "", 0.005, 200.0, {"open"}});
      tests_.push_back({test_id("line_cpc", i), "", 0.005, 200.0, {"open"}});
      if (in_.points[i].polarity != polarity::not_read) tests_.push_back({test_id("polarity", i), "", 0.0, 0.0, {"right", "reversed"}});
    }
    using K = ring_kind;
    ring_setup sound;
    sound.ratio = cpc_ / line_;
    sound.line_ohm_per_m = line_ohm_per_m_;
    sound.cpc_ohm_per_m = cpc_ohm_per_m_;
    const auto weight = [](K k) { return ring_kind_rows[static_cast<std::size_t>(k)].prior; };
    const auto words_of = [](K k) { return std::string(ring_kind_rows[static_cast<std::size_t>(k)].text); };
    const auto of = [&](K k) {
      ring_setup s = sound;
      s.kind = k;
      return s;
    };
    const bool hints = std::any_of(used_.begin(), used_.end(), [&](std::size_t i) { return !is_nan(in_.points[i].position_ratio); });
    std::vector<job::parameter> place;
    if (hints) place.push_back({"place of the fault", job::distribution::uniform(0.0, 1.0)});
    add(sound, "intact", words_of(K::intact), weight(K::intact), {}, {});
    add(of(K::line_broken), "line_broken", words_of(K::line_broken), weight(K::line_broken), place, {});
    add(of(K::neutral_broken), "neutral_broken", words_of(K::neutral_broken), weight(K::neutral_broken), {}, {});
    add(of(K::cpc_broken), "cpc_broken", words_of(K::cpc_broken), weight(K::cpc_broken), place, {});
    const job::parameter joint{"joint", job::distribution::log_normal(0.25, 0.9)};
    for (const K k : {K::line_joint, K::neutral_joint, K::cpc_joint}) {
      std::vector<job::parameter> more{joint};
      if (k != K::neutral_joint) more.insert(more.end(), place.begin(), place.end());
      add(of(k), std::string(ring_kind_rows[static_cast<std::size_t>(k)].key), words_of(k), weight(k), more, {});
    }
    // links at the board: straight, or none
    if (!used_.empty()) {
      const double each = weight(K::wrong_links) / 6.0;
      const std::string neutral = "line and neutral were ", cpc = "line and protective conductor were ", both = "in both rounds of readings the ends were ";
      const std::string straight = "linked straight at the board, not crosswise", apart = "not linked at the board";
      auto s = of(K::wrong_links);
      s.straight_neutral = true;
      add(s, "links_straight_neutral", neutral + straight, each, {}, {});
      s.straight_cpc = true;
      add(s, "links_straight_both", both + straight, each, {}, {});
      s.straight_neutral = false;
      add(s, "links_straight_cpc", cpc + straight, each, {}, {});
      s.straight_cpc = false;
      s.apart_neutral = true;
      add(s, "links_none_neutral", neutral + apart, each, {}, {});
      s.apart_cpc = true;
      add(s, "links_none_both", both + apart, each, {}, {});
      s.apart_neutral = false;
      add(s, "links_none_cpc", cpc + apart, each, {}, {});
    }
    // spurs: each point alone, then the highest ones together; a set of points has its part of the weight of all sets of that size
    const auto sets = [](std::size_t n, std::size_t k) {
      double c = 1.0;
      for (std::size_t i = 0; i < k; ++i) c *= static_cast<double>(n - i) / static_cast<double>(i + 1);
      return c;
    };
    std::vector<std::size_t> high;
    for (std::size_t j = 0; j < used_.size(); ++j)
      if (!open(used_[j]) && height(used_[j]) > 0.0) high.push_back(j);
    std::stable_sort(high.begin(), high.end(), [&](std::size_t a, std::size_t b) { return height(used_[a]) > height(used_[b]); });
    const job::parameter spur_length{"spur", job::distribution::log_normal(4.0, 0.8)};
    const auto spurs = [&](std::vector<std::size_t> set, double prior) {
      auto s = of(K::spur);
      std::vector<job::parameter> more;
      std::vector<std::size_t> which;
      std::string id = "spur";
      std::string text = set.size() == 1 ? "a spur at " : "spurs at ";
      std::sort(set.begin(), set.end());
      for (std::size_t j = 0; j < set.size(); ++j) {
        s.on_spur.push_back(static_cast<int>(set[j]));
        more.push_back(spur_length);
        more.back().name += " " + std::to_string(j);
        which.push_back(used_[set[j]]);
        id += "_" + std::to_string(used_[set[j]] + 1);
        text += std::string(j == 0 ? "" : j + 1 == set.size() ? " and " : ", ") + ring_point_name(in_, used_[set[j]]);
      }
      add(s, id, text, prior, more, which);
    };
    // what no reading could have shown: it keeps its weight
    add(of(K::spur), "spur_not_read", "a spur at an outlet that was not read", weight(K::spur) / (1.0 + static_cast<double>(high.size())), {}, {});
    for (const auto j : high) spurs({j}, 0.7 * weight(K::spur) / static_cast<double>(high.size()));
    if (high.size() >= 3) {
      for (const int left_out : {2, 1, 0})
        spurs({high[left_out == 0 ? 1u : 0u], high[left_out == 2 ? 1u : 2u]}, 0.2 * weight(K::spur) / sets(high.size(), 2));
      if (high.size() >= 4) spurs({high[0], high[1], high[2]}, 0.1 * weight(K::spur) / sets(high.size(), 3));
    }
    // a bridge: the highest points lie between its ends
    const job::parameter left{"part of the length left", job::distribution::uniform(0.35, 0.97)};
    std::size_t places = 0;
    for (const auto i : used_) places += !is_nan(in_.points[i].position_ratio);
    const std::size_t most = std::min<std::size_t>(high.size() > 1 ? high.size() - 1 : 0, job::most_parameters - 2 - places);
    const double unread = 1.0 / (1.0 + static_cast<double>(high.size()));  // that none of the outlets read lies between
    for (std::size_t k = 0; k <= most; ++k) {
      auto s = of(K::interconnected);
      std::vector<job::parameter> more{left};
      std::vector<std::size_t> which;
      for (std::size_t j = 0; j < k; ++j) {
        s.on_spur.push_back(static_cast<int>(high[j]));
        more.push_back({"excess " + std::to_string(j), job::distribution::normal(0.07, 0.05)});  // s(d-s)/(d+c) of the length, up to d²/(4(d+c))
        which.push_back(used_[high[j]]);
      }
      std::sort(which.begin(), which.end());
      std::string names;
      for (const auto i : which) names += (names.empty() ? " round " : ", ") + ring_point_name(in_, i);
      const double of_size = most == 0 ? 1.0 : k == 0 ? unread : (1.0 - unread) / static_cast<double>(most);
      add(s, "interconnected_" + std::to_string(k), words_of(K::interconnected) + (k == 0 ? std::string(", no outlet read lies between") : names),
          weight(K::interconnected) * of_size / sets(high.size(), k), more, which);
    }
    // conductors changed over, or loose, where a reading or the polarity says so
    for (const auto i : used_) {
      if (!open(i) && in_.points[i].polarity != polarity::reversed) continue;
      const std::string name = ring_point_name(in_, i), n = "_" + std::to_string(i + 1);
      const double points_read = static_cast<double>(used_.size()), each = weight(K::changed_over) / 3.0 / points_read;
      add(of(K::changed_over), "line_neutral_changed" + n, "line and neutral are changed over at " + name, each, {}, {i}, "line_cpc", i);
      add(of(K::changed_over), "line_cpc_changed" + n, "line and protective conductor are changed over at " + name, each, {}, {i}, "line_neutral", i);
      add(of(K::changed_over), "neutral_cpc_changed" + n, "neutral and protective conductor are changed over at " + name, each, {}, {i}, "both", i);
      add(of(K::not_on_ring), "not_on_ring" + n, name + " is not on this ring, or a conductor is loose at it", weight(K::not_on_ring) / points_read,
          {}, {i}, "both", i);
    }
    // other cables: by the ratio of their conductors and, where a length is expected, by their size
    std::vector<const ring_cable_row*> cables;
    std::vector<double> ratios{cpc_ / line_};
    for (const auto& c : ring_cables) {
      const bool stated = fabs(c.line_mohm_per_m / line_ - 1.0) < 0.02 && fabs(c.cpc_mohm_per_m / cpc_ - 1.0) < 0.02;
      const double ratio = c.cpc_mohm_per_m / c.line_mohm_per_m;
      const bool known = std::any_of(ratios.begin(), ratios.end(), [&](double r) { return fabs(ratio / r - 1.0) < 0.04; });
      if (stated || (known && !in_.expected_length_m.has_number())) continue;
      ratios.push_back(ratio);
      cables.push_back(&c);
    }
    for (const auto* c : cables) {
      auto s = of(K::other_cable);
      s.ratio = c->cpc_mohm_per_m / c->line_mohm_per_m;
      s.line_ohm_per_m = c->line_mohm_per_m * factor_ * share_of_tabulated / 1000.0;
      s.cpc_ohm_per_m = c->cpc_mohm_per_m * factor_ * share_of_tabulated / 1000.0;
      std::string text = "the conductors are as in " + std::string(c->key) + ", not as stated";
      if (!in_.expected_length_m.has_number()) text += " (or another pair with that ratio)";
      add(s, "other_cable_" + std::string(c->key.substr(0, c->key.find(' '))), text, weight(K::other_cable) / static_cast<double>(cables.size()),
          {}, {});
    }
  }

  void observe() {
    const auto give = [&](const std::string& test, const reading& r, std::string_view core, double part, double place_part = 0.0) {
      auto o = ring_observation(test, r, core, part, place_part);
      if (o.is == job::observation::kind::not_measured) return;
      if (o.is == job::observation::kind::above && open_word(r) == "open") o = job::observation::outcome(test, "open");
      instrument_assumed_ = instrument_assumed_ || o.number.assumed;
      seen_.push_back(std::move(o));
    };
    give("line", in_.line_ohm, "", 0.0);
    give("neutral", in_.neutral_ohm, "neutral core of the cable", neutral_against_line);
    give("cpc", in_.cpc_ohm, "protective core of the cable", cpc_against_table);
    for (const auto i : used_) {
      const auto& p = in_.points[i];
      give(test_id("line_neutral", i), p.line_neutral_ohm, "neutral core of the cable", 0.5 * neutral_against_line);
      give(test_id("line_cpc", i), p.line_cpc_ohm, "protective core of the cable", 0.5 * cpc_against_table, place_part(i));
    }
    // polarity counts where conductors may be changed over; elsewhere all hypotheses give "right" the same probability. At most four of them
    int room = 4;
    for (const bool reversed : {true, false})
      for (const auto i : used_) {
        const auto is = in_.points[i].polarity;
        if (room == 0 || is != (reversed ? polarity::reversed : polarity::right) || (!reversed && !open(i))) continue;
        seen_.push_back(job::observation::outcome(test_id("polarity", i), reversed ? "reversed" : "right"));
        --room;
      }
    if (in_.expected_length_m.has_number()) {
      const auto& e = in_.expected_length_m;
      job::observation o = job::observation::value("length", measured(e.number, 1e-3 * e.number, "expected length, rounding"));
      if (e.stated_for(reads::length)) o = job::observation::from("length", e, reads::length);
      else o.gains.push_back({"expected length", 0.25 / 1.7320508075688772});
      o.gains.push_back({"resistance of one metre", share_of_tabulated_doubt});
      o.gains.push_back({"conductor temperature", temperature_doubt()});
      seen_.push_back(std::move(o));
    }
  }
  /// How far a reading between line and protective conductor follows an unknown place, as a part of it.
  double place_part(std::size_t i) const {
    if (!is_nan(in_.points[i].position_ratio)) return 0.0;
    const double ratio = cpc_ / line_, low = ratio / (1.0 + ratio), high = 0.25 * (1.0 + ratio);
    return scatter_of_place * (high - low) / (low + mean_of_place * (high - low));
  }
  double temperature_doubt() const { return 0.00393 * (temperature_assumed_ ? 5.0 : 2.0) / factor_ / 1.7320508075688772; }

  /// Probabilities, with a share of the weights before any reading left in: a short list of hypotheses is never the whole world.
  void shares() {
    const double doubt = 0.02 + 0.1 / static_cast<double>(std::max<std::size_t>(1, seen_.size()));
    const std::size_t count = list_.size();
    double kind_prior[ring_kinds] = {}, kind_now[ring_kinds] = {};
    for (std::size_t h = 0; h <= count; ++h) {
      ring_hypothesis r;
      r.kind = h < count ? from_[h].kind : ring_kind::none_of_these;
      r.id = h < count ? list_[h].id : "none_of_these";
      r.text = h < count ? from_[h].text : std::string(ring_kind_rows[static_cast<std::size_t>(ring_kind::none_of_these)].text);
      if (h < count) r.points = from_[h].points;
      r.prior = table_.rows[h].prior;
      r.probability = (1.0 - doubt) * table_.rows[h].posterior + doubt * r.prior;
      kind_prior[static_cast<std::size_t>(r.kind)] += r.prior;
      kind_now[static_cast<std::size_t>(r.kind)] += r.probability;
      out_.hypotheses.push_back(std::move(r));
    }
    for (int k = 0; k < ring_kinds; ++k) {
      const auto i = static_cast<std::size_t>(k);
      if (!(kind_prior[i] > 0.0)) continue;
      ring_hypothesis r;
      r.kind = static_cast<ring_kind>(k);
      r.id = std::string(ring_kind_rows[i].key);
      r.prior = kind_prior[i];
      r.probability = kind_now[i];
      double most = -1.0;
      for (std::size_t h = 0; h <= count; ++h)
        if (out_.hypotheses[h].kind == r.kind && out_.hypotheses[h].probability > most) {
          most = out_.hypotheses[h].probability;
          r.text = out_.hypotheses[h].text;
          r.points = out_.hypotheses[h].points;
        }
      out_.kinds.push_back(std::move(r));
    }
    const auto by_probability = [](const ring_hypothesis& a, const ring_hypothesis& b) { return a.probability > b.probability; };
    std::stable_sort(out_.kinds.begin(), out_.kinds.end(), by_probability);
    out_.robust = out_.kinds.size() < 2 || out_.kinds[0].probability > 2.0 * out_.kinds[1].probability;
    const ring_kind lead = out_.kinds[0].kind != ring_kind::none_of_these ? out_.kinds[0].kind : out_.kinds[1].kind;
    double most = -1.0;
    for (std::size_t h = 0; h < count; ++h)
      if (from_[h].kind == lead && table_.rows[h].posterior > most) most = table_.rows[h].posterior, best_ = h;
    std::stable_sort(out_.hypotheses.begin(), out_.hypotheses.end(), by_probability);
  }

  void length() {
    // by the resistances alone: what was expected of the length is left out
    std::vector<job::observation> readings;
    for (const auto& o : seen_)
      if (o.test != "length") readings.push_back(o);
    if (std::none_of(readings.begin(), readings.end(), [](const auto& o) { return o.is == job::observation::kind::value; })) return;
    job::explanations one(tests_, {list_[best_]}, [] {
      job::inference_options o;
      o.points = 512;
      return o;
    }());
    one.explain(readings);
    const auto r = one.parameter_after(0, 0);
    if (is_nan(r.mean) || !(r.mean > 0.0)) return;
    const double per_metre = from_[best_].setup->line_ohm_per_m;
    out_.length_m = r.mean / per_metre;
    out_.length_standard_uncertainty_m = out_.length_m * sqrt(square(r.sd / r.mean) + square(share_of_tabulated_doubt / share_of_tabulated) +
        square(temperature_doubt()));
    out_.length_low_m = std::max(0.0, out_.length_m - 2.0 * out_.length_standard_uncertainty_m);
    out_.length_high_m = out_.length_m + 2.0 * out_.length_standard_uncertainty_m;
  }

  /// Parameters of a hypothesis after the readings, those of places as they were before.
  std::vector<double> after(std::size_t h) {
    std::vector<double> p;
    for (std::size_t k = 0; k < list_[h].parameters.size(); ++k) {
      const auto& d = list_[h].parameters[k].is;
      const bool is_place = k >= 1 && k < static_cast<std::size_t>(from_[h].setup->fault);
      const double mean = is_place ? no_number : engine_->parameter_after(h, k).mean;
      p.push_back(is_nan(mean) ? d.centre() : mean);
    }
    return p;
  }
  ring_residual residual(const reading& r, const ring_prediction& f, const std::vector<double>& p, int point, std::size_t i) const {
    ring_residual out;
    if (!r.has_number()) return out;
    out.over_range = r.is == reading::state::above;
    if (is_value(r)) out.read = r.number;
    const ring_kind kind = from_[best_].kind;
    if (out.over_range &&
        (kind == ring_kind::changed_over || kind == ring_kind::not_on_ring || kind == ring_kind::wrong_links)) return out;  // no number is predicted
    const job::prediction predicted(f);
    std::array<double, job::most_parameters> slopes{};
    const int n = static_cast<int>(p.size());
    out.predicted = predicted.slopes(p.data(), n, slopes.data());
    const bool neutral = f.what == ring_test::line_neutral;
    const auto o = ring_observation("own", r, "core", neutral ? 0.5 * neutral_against_line : 0.5 * cpc_against_table, neutral ? 0.0 : place_part(i));
    double variance = square(o.resolution) / 12.0 + square(0.005 * out.predicted);
    for (const auto& s : o.number.parts) variance += square(s.u);
    for (const auto& g : o.gains)  // the gain of the instrument is in the line's resistance already
      if (g.source.find("gain") == std::string::npos) variance += square(g.u * out.predicted);
    if (const int k = f.s->place[static_cast<std::size_t>(point)]; k >= 0) {
      auto moved = p;
      for (const double by : {-1.7320508075688772, 1.7320508075688772}) {
        moved[static_cast<std::size_t>(k)] = list_[best_].parameters[static_cast<std::size_t>(k)].is.at_distance(by);
        variance += 0.5 * square(predicted.value(moved.data(), n) - out.predicted) / 3.0;
      }
    }
    out.standard_uncertainty = sqrt(variance);
    out.distance = (out.read - out.predicted) / out.standard_uncertainty;
    return out;
  }
  void points() {
    const auto p = after(best_);
    const auto& s = from_[best_].setup;
    const auto with_spur = [&](std::size_t h, std::size_t i) { return std::find(from_[h].points.begin(), from_[h].points.end(),
        i) != from_[h].points.end(); };
    double worst = 0.0;
    for (std::size_t i = 0; i < in_.points.size(); ++i) {
      ring_point_result r;
      r.name = in_.points[i].name;
      const auto at = std::find(used_.begin(), used_.end(), i);
      r.in_likelihood = at != used_.end();
      // a point outside the joint likelihood is held against a point without fault of its own
      std::shared_ptr<const ring_setup> setup = s;
      int j = static_cast<int>(at - used_.begin());
      if (!r.in_likelihood && !used_.empty()) {
        auto plain = *s;
        plain.on_spur.clear();
        j = 0;
        setup = std::make_shared<const ring_setup>(plain);
      }
      if (!used_.empty() && (r.in_likelihood || in_.points[i].line_neutral_ohm.has_number() || in_.points[i].line_cpc_ohm.has_number())) {
        r.line_neutral = residual(in_.points[i].line_neutral_ohm, {setup, ring_test::line_neutral, j}, p, j, i);
        r.line_cpc = residual(in_.points[i].line_cpc_ohm, {setup, ring_test::line_cpc, j}, p, j, i);
      }
      for (const auto* one : {&r.line_neutral, &r.line_cpc}) {
        unexplained_ = unexplained_ || (one->over_range && s->kind != ring_kind::wrong_links && !with_spur(best_, i));
        if (r.in_likelihood && is_finite(one->distance)) worst = std::max(worst, fabs(one->distance));
      }
      if (is_value(in_.points[i].line_cpc_ohm) &&
          !(out_.highest_line_cpc_ohm >= in_.points[i].line_cpc_ohm.number)) out_.highest_line_cpc_ohm = in_.points[i].line_cpc_ohm.number;
      std::size_t likely = list_.size();
      for (std::size_t h = 0; h < list_.size(); ++h) {
        if (from_[h].kind != ring_kind::spur || !with_spur(h, i)) continue;
        r.spur_probability += table_.rows[h].posterior;
        if (likely == list_.size() || table_.rows[h].posterior > table_.rows[likely].posterior) likely = h;
      }
      if (likely < list_.size() && r.spur_probability > 0.1) {
        const auto& which = from_[likely].points;
        const std::size_t k = static_cast<std::size_t>(from_[likely].setup->fault) + static_cast<std::size_t>(std::find(which.begin(), which.end(),
            i) - which.begin());
        const auto length = engine_->parameter_after(likely, k);
        r.spur_length_m = length.mean;
        r.spur_length_standard_uncertainty_m = length.sd;
      }
      r.text = point_text(i, r);
      out_.points.push_back(std::move(r));
    }
    for (const auto& [r, what, core, part] : {std::tuple{&in_.line_ohm, ring_test::line, "", 0.0}, {&in_.neutral_ohm, ring_test::neutral, "core",
        neutral_against_line},
                                             {&in_.cpc_ohm, ring_test::cpc, "core", cpc_against_table}}) {
      const bool expected_open = (what == ring_test::line && s->kind == ring_kind::line_broken) || (what == ring_test::neutral &&
          s->kind == ring_kind::neutral_broken) ||
                                 (what == ring_test::cpc && s->kind == ring_kind::cpc_broken);
      if (r->is == reading::state::above && !expected_open) unexplained_ = true;
      if (is_value(*r) && expected_open) unexplained_ = true;
      if (!is_value(*r) || expected_open) continue;
      const double predicted = ring_prediction{s, what, 0}(job::parameter_values<double>{p.data()});
      const auto o = ring_observation("own", *r, core, part);
      double variance = square(o.resolution) / 12.0 + square(0.005 * predicted);
      for (const auto& one : o.number.parts) variance += square(one.u);
      for (const auto& g : o.gains)
        if (g.source.find("gain") == std::string::npos) variance += square(g.u * predicted);
      worst = std::max(worst, fabs(r->number - predicted) / sqrt(variance));
    }
    out_.conflict = worst > 4.0 || unexplained_;
  }
  /// What even the leading hypothesis does not explain speaks for something that is not listed, two faults at once among it: it gets a part
  /// of everything (judgement).
  void temper() {
    if (!out_.conflict) return;
    constexpr double unlisted = 0.4;
    for (auto* rows : {&out_.kinds, &out_.hypotheses}) {
      for (auto& h : *rows) h.probability = h.probability * (1.0 - unlisted) + (h.kind == ring_kind::none_of_these ? unlisted : 0.0);
      std::stable_sort(rows->begin(), rows->end(), [](const ring_hypothesis& a, const ring_hypothesis& b) { return a.probability > b.probability; });
    }
    out_.robust = false;
  }
  std::string point_text(std::size_t i, const ring_point_result& r) const {
    const auto& p = in_.points[i];
    if (r.line_neutral.over_range || r.line_cpc.over_range) {
      std::string t = r.line_neutral.over_range && r.line_cpc.over_range ? "both readings are over range" : r.line_neutral.over_range ? "line to neutral is over range" : "line to protective conductor is over range";
      return t + ": open, changed over, or not on this ring";
    }
    if (p.polarity == polarity::reversed) return "polarity was read as reversed";
    if (r.spur_probability > 0.5)
      return "likely on a spur of about " + metre_text(r.spur_length_m) + " (standard uncertainty " + metre_text(std::max(1.0,
          r.spur_length_standard_uncertainty_m)) + "), or a bad joint at it";
    double z = 0.0;
    for (const auto* one : {&r.line_neutral, &r.line_cpc})
      if (is_finite(one->distance) && fabs(one->distance) > fabs(z)) z = one->distance;
    if (z > 3.0) return "reads higher than the leading explanation has it";
    if (z < -3.0) return "reads lower than the leading explanation has it";
    if (from_[best_].kind == ring_kind::interconnected && std::find(from_[best_].points.begin(), from_[best_].points.end(),
        i) != from_[best_].points.end())
      return "stands out: between the ends of the bridge, or on a spur";
    if (r.spur_probability > 0.1) return "a spur is possible (about " + metre_text(r.spur_length_m) + ")";
    if (!r.line_neutral.over_range && !is_finite(r.line_neutral.read) && !is_finite(r.line_cpc.read)) return "not read";
    return std::string("fits") + (is_finite(r.line_neutral.read) ? "" : "; line to neutral was not read") + (is_finite(r.line_cpc.read) ? "" : "; line to protective conductor was not read");
  }

  /// Expected fall of the entropy over the kinds by one more reading: predictions of the leading hypotheses, each a normal around its own
  /// value with the parameters after the readings at hand.
  void next() {
    struct leader {
      std::size_t h;
      double weight;
      std::vector<double> p;
    };
    std::vector<leader> lead;
    std::vector<std::size_t> order(list_.size());
    for (std::size_t h = 0; h < order.size(); ++h) order[h] = h;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return table_.rows[a].posterior > table_.rows[b].posterior; });
    double total = 0.0;
    for (const auto h : order)
      if (lead.size() < 5 && table_.rows[h].posterior > 0.005) lead.push_back({h, table_.rows[h].posterior,
          after(h)}), total += table_.rows[h].posterior;
    if (lead.size() < 2) {  // a sound ring and a fault of each kind stand against each other all the same
      for (const auto h : order)
        if (lead.size() < 5 && std::none_of(lead.begin(), lead.end(), [&](const leader& l) { return from_[l.h].kind == from_[h].kind; }))
          lead.push_back({h, 0.02, after(h)}), total += 0.02;
    }
    for (auto& l : lead) l.weight /= total;
    const auto consider = [&](const std::string& test, const std::string& reading_name, const std::string& words) {
      constexpr int cells = 240;
      std::vector<double> mean(lead.size(), 0.0), sd(lead.size(), 1.0), above(lead.size(), 0.0);
      double low = 1e9, high = -1e9;
      for (std::size_t l = 0; l < lead.size(); ++l) {
        const auto& h = list_[lead[l].h];
        const job::prediction* p = nullptr;
        for (const auto& one : h.predictions)
          if (one.first == test) p = &one.second;
        if (!p) return;
        for (const auto& c : p->chances())
          if (c.outcome == "open" || c.outcome == "above") above[l] += c.probability;
        if (!p->real()) continue;
        const int n = static_cast<int>(lead[l].p.size());
        mean[l] = p->value(lead[l].p.data(), n);
        double variance = square(ring_contact_doubt_ohm) + square((test.starts_with("line_cpc") ? 0.02 : 0.01) * mean[l]) + 1e-5;
        for (std::size_t k = 1; k < h.parameters.size(); ++k)
          for (const double side : {-1.0, 1.0}) {
            auto moved = lead[l].p;
            moved[k] = h.parameters[k].is.at_distance(side);
            variance += 0.5 * square(p->value(moved.data(), n) - mean[l]);
          }
        sd[l] = sqrt(variance);
        low = std::min(low, mean[l] - 5.0 * sd[l]);
        high = std::max(high, mean[l] + 5.0 * sd[l]);
      }
      double bits = 0.0;
      const auto cell = [&](const auto& chance) {
        double by_kind[ring_kinds] = {}, kind_weight[ring_kinds] = {}, all = 0.0;
        for (std::size_t l = 0; l < lead.size(); ++l) {
          const double joint = lead[l].weight * chance(l);
          by_kind[static_cast<std::size_t>(from_[lead[l].h].kind)] += joint;
          kind_weight[static_cast<std::size_t>(from_[lead[l].h].kind)] += lead[l].weight;
          all += joint;
        }
        for (int k = 0; k < ring_kinds; ++k)
          if (by_kind[k] > 0.0 && all > 0.0) bits += by_kind[k] * log(by_kind[k] / (all * kind_weight[k])) / 0.69314718055994531;
      };
      cell([&](std::size_t l) { return above[l]; });
      for (int c = 0; c < cells && high > low; ++c) {
        const double a = low + (high - low) * c / cells, b = low + (high - low) * (c + 1) / cells;
        cell([&](std::size_t l) { return (1.0 - above[l]) * (normal_cdf((b - mean[l]) / sd[l]) - normal_cdf((a - mean[l]) / sd[l])); });
      }
      out_.next.push_back({reading_name, words, bits});
    };
    const auto unread = [](const reading& r) { return !r.has_number(); };
    if (unread(in_.line_ohm)) consider("line", "line_end_to_end_ohm", "Read the line conductor end to end at the board.");
    if (unread(in_.neutral_ohm)) consider("neutral", "neutral_end_to_end_ohm", "Read the neutral conductor end to end at the board.");
    if (unread(in_.cpc_ohm)) consider("cpc", "cpc_end_to_end_ohm", "Read the protective conductor end to end at the board.");
    for (const auto i : used_) {
      const std::string at = "points[" + std::to_string(i) + "].", name = ring_point_name(in_, i);
      if (unread(in_.points[i].line_neutral_ohm)) consider(test_id("line_neutral", i), at + "line_neutral_ohm",
          "Link line and neutral crosswise at the board and read between them at " + name + ".");
      if (unread(in_.points[i].line_cpc_ohm))
        consider(test_id("line_cpc", i), at + "line_cpc_ohm",
          "Link line and protective conductor crosswise at the board and read between them at " + name + ".");
    }
    std::stable_sort(out_.next.begin(), out_.next.end(), [](const auto& a, const auto& b) { return a.information_bits > b.information_bits; });
  }

  void words() {
    const auto& first = out_.kinds[0];
    const auto& row = ring_kind_rows[static_cast<std::size_t>(first.kind)];
    std::string& t = out_.text;
    t = "Most likely: " + first.text + " (" + percent_text(first.probability) + ").";
    if (out_.kinds.size() > 1 && out_.kinds[1].probability > 0.02) {
      t += " Then: " + out_.kinds[1].text + " (" + percent_text(out_.kinds[1].probability) + ")";
      if (out_.kinds.size() > 2 && out_.kinds[2].probability > 0.02)
        t += ", " + out_.kinds[2].text + " (" + percent_text(out_.kinds[2].probability) + ")";
      t += ".";
    }
    if (out_.conflict)
      t += " But not that alone: at least one reading lies far from what even the leading explanation has it to be. Read it again; if it stands, there is a second fault or one that is not listed.";
    else if (!out_.robust) t += " The first two are close: another weight before the readings would change their order.";
    if (is_finite(out_.length_m))
      t += " Length by resistance: " + metre_text(out_.length_m) + ", about " + metre_text(out_.length_low_m) + " to " + metre_text(out_.length_high_m) +
           (first.kind == ring_kind::interconnected ? " of a ring without the bridge that reads the same." : ".");
    const bool complete = out_.next.empty() && in_.points.size() >= 3;
    t += " " + (first.kind == ring_kind::intact && complete
        ? std::string("Go on with insulation, and with polarity when live.") : std::string(row.act));
    if (!out_.next.empty() && out_.next[0].information_bits > 0.005) t += " The reading that tells most: " + out_.next[0].text;
    const std::size_t readings = seen_.size();
    auto& c = out_.cautions;
    c.push_back("Dead tests: isolate, lock off and prove dead before the first lead is put on.");
    c.push_back("Both ends of all three conductors must be out of the board's terminals, loads and indicators unplugged or switched off, and the leads nulled.");
    c.push_back("A sound result here says nothing of insulation, of polarity when live, or of a conductor that holds by a strand.");
    if (readings < 6) c.push_back("Only " + std::to_string(readings) + (readings == 1 ? " reading: " : " readings: ") +
        "the probabilities lean on the weights before any reading.");
    if (first.kind == ring_kind::spur || first.kind == ring_kind::interconnected)
      c.push_back("From the board a bridged ring reads as a shorter ring with spurs at the outlets between; only the length expected, or an opened joint, tells them apart.");
    if (used_.size() < in_.points.size()) {
      std::size_t read = 0;
      for (const auto& p : in_.points) read += p.line_neutral_ohm.has_number() || p.line_cpc_ohm.has_number() || p.polarity != polarity::not_read;
      if (read > used_.size())
        c.push_back("The probabilities rest on " + std::to_string(used_.size()) + " of " + std::to_string(read) +
            " points (the open, the highest, the lowest and some between); the others are held against the result.");
    }
    auto& a = out_.assumptions;
    a.push_back("Tabulated resistances (IEC 60228) are upper limits; cable is taken to measure 1 to 3 % lower (recalled, not read in a print). The length includes that doubt.");
    if (cable_assumed_) a.push_back("Conductors not stated: " + number_text(line_) + " and " + number_text(cpc_) +
        " mΩ/m at 20 °C are assumed (2.5/1.5 mm² of copper has 7.41 and 12.1). The length is no better than that.");
    if (temperature_assumed_) a.push_back("Conductor temperature not stated: (20 ± 5) °C is assumed.");
    if (instrument_assumed_) a.push_back("No statement of the instrument: 30 % of the reading is assumed as an error common to all readings, and 0.01 Ω for each contact. Ratios are good all the same, the length is not.");
    a.push_back("Weights before the readings are judgement: sound 50 %, spur 16 %, other cable 6 %, links at the board 5 %, the other faults 2 to 4 % each, something else 5 %.");
    a.push_back("An unstated place of an outlet may be anywhere along the ring.");
  }
};

}  // namespace detail

/// Ranks what may be wrong with a ring circuit by its readings at the board and at outlets.
inline ring_result ring_tests(const ring_readings& in) { return detail::ring_analysis(in).run(); }

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// What a flow read at the grille, and at the outlet, says about a fan and its run: which fault explains it, and what to read next.
// Subject: air. By the inference kernel: hypotheses as forward models of fan and run, one joint likelihood.
#pragma once
#include <memory>
#include "../job/inference.hpp"
#include "../reading.hpp"
#include "fans.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

enum class fan_blades : unsigned char { unknown, axial, centrifugal };
enum class fan_state : unsigned char {
  as_expected, added_resistance, crushed_flexible, closed_shutter, reversed, leak_after_fan, leak_before_fan, no_outlet, slow, not_running
};
inline constexpr int fan_states = 10;
/// Of each state: its word, the weight before any reading (judgement, not counted anywhere), what it means and what to do next.
struct fan_state_row {
  std::string_view key, text, act;
  double prior;
};
inline constexpr fan_state_row fan_state_rows[fan_states] = {
    {"as_expected", "fan and run do what curve and dimensions say", "Hold the flow against the rate that the room needs; if it falls short, the run or the fan is too small.", 30.0},
    {"added_resistance", "more resistance than the run as seen: dirty grille, filter or terminal, a longer or narrower run", "Take the grille off and read again; clean grille, filter and terminal; follow the run.", 15.0},
    {"crushed_flexible", "flexible duct crushed, kinked, sagging or left unstretched", "Look along the flexible duct; stretch, shorten and support it; read again.", 20.0},
    {"closed_shutter", "a shutter or flap that does not open, or a run that is blocked", "Isolate, then look at the shutter in the fan and at the outlet: free it, and look for a block.", 8.0},
    {"reversed", "the fan turns or stands the wrong way round", "Isolate; compare the arrow of the fan with the flow, and its connections with the instructions.", 4.0},
    {"leak_after_fan", "leak after the fan, or the duct off its spigot there", "Look at the spigots and joints after the fan; hold a hand or smoke beside them; refix and seal.", 10.0},
    {"leak_before_fan", "leak before the fan, or the duct off its spigot there: the fan draws from the void", "Look at the spigots and joints between grille and fan; refix and seal.", 4.0},
    {"no_outlet", "the duct ends in the void: there is no outlet", "Find where the run ends. The air must be discharged outside.", 6.0},
    {"slow", "the fan is slow: worn, on its low speed, or with low voltage", "Check the speed that is selected and the voltage at the fan under load; listen for a worn bearing.", 5.0},
    {"not_running", "the fan does not run", "Prove the supply at the fan's isolator, its switch and its timer.", 4.0}};

/// What a flow reading has of its own, beside the statement of its instrument: repeated, it differs (standard uncertainties; judgement).
inline constexpr double flow_own_l_per_s = 0.25, flow_own_ratio = 0.03;

struct fan_readings {
  reading grille_l_per_s{}, outlet_l_per_s{};
  double fan_pressure_pa = no_number;  ///< static pressure between before and after the fan
  std::string direction{};             ///< at the grille: "in" (as meant), "out" or "none"
  std::string outlet_air{};            ///< "blows", "still" or "not_found"
  std::string running{};               ///< "runs" or "silent"
};
struct fan_job {
  fan_curve fan{};  ///< at its speed and density
  system_curve run{}, run_low{}, run_high{};
  double flexible_share = 0.0;     ///< of the run's loss: 0 without flexible duct
  double before_fan_share = 0.2;   ///< of the run's loss between grille and fan
  double fan_percent = 10.0;       ///< limits of the fan's pressure against its curve
  fan_blades blades = fan_blades::unknown;
  fan_readings read{};
};
struct fan_explanation {
  fan_state is;
  double probability, prior;
  double grille_l_per_s, outlet_l_per_s;  ///< as it would have them, the parameters in their middle
};
struct fan_next_reading {
  std::string reading, text;
  double information_bits;  ///< how much it is expected to tell about the state
};
struct fan_diagnosis_result {
  double expected_l_per_s = no_number, expected_low_l_per_s = no_number, expected_high_l_per_s = no_number;  ///< 95 %, of a sound fan and run
  std::vector<fan_explanation> explanations{};  ///< likeliest first; without "none of these"
  double none_of_these = 0.0;
  bool robust = true, conflict = false;
  std::vector<fan_next_reading> next{};
};

namespace detail {
/// The operating flow of the fan, and its pressure there, over ln(run's factor / fan's factor): both factors scale pressures, so that
/// their ratio alone decides where the curves meet.
struct fan_table {
  static constexpr double first = -5.0, step = 0.05;
  std::vector<double> flow, pressure;
  fan_table(const fan_curve& fan, const system_curve& run) {
    const auto& curve = fan.pressure();
    for (int i = 0; i <= 420; ++i) {
      const double times = std::exp(first + step * i);
      // the stable crossing with the largest flow; without one: the end of the curve that is nearer
      double q = curve.points().front().value > times * run(curve.first_flow()) ? curve.last_flow() : curve.first_flow();
      bool found = false;
      for (std::size_t p = curve.points().size() - 1; p > 0 && !found; --p) {
        constexpr int pieces = 16;
        const double a = curve.points()[p - 1].flow_l_per_s, width = curve.points()[p].flow_l_per_s - a;
        for (int k = pieces; k > 0 && !found; --k) {
          double low = a + width * (k - 1) / pieces, high = a + width * k / pieces;
          const auto rest = [&](double x) { return curve.in_piece(p - 1, x).value - times * run(x); };
          if (!(rest(low) > 0.0 && rest(high) <= 0.0)) continue;
          for (int s = 0; s < 50; ++s) {
            const double m = 0.5 * (low + high);
            (rest(m) > 0.0 ? low : high) = m;
          }
          q = 0.5 * (low + high);
          found = true;
        }
      }
      flow.push_back(q);
      pressure.push_back(curve.at(q).value);
    }
  }
  template <class T>
  T at(const std::vector<double>& column, const T& x) const {
    const double where = (plain_value(x) - first) / step;
    const auto i = static_cast<std::size_t>(std::clamp(where, 0.0, static_cast<double>(column.size()) - 2.0));
    return column[i] + (x - (first + step * static_cast<double>(i))) * ((column[i + 1] - column[i]) / step);
  }
};
}  // namespace detail

class fan_inquiry {
 public:
  explicit fan_inquiry(fan_job j) : job_(std::move(j)) {
    const std::string who = "fan_diagnosis: ";
    const auto word = [&](std::string_view field, const std::string& w, std::initializer_list<std::string_view> known) {
      std::string list;
      for (const auto k : known) {
        if (w.empty() || w == k) return;
        list += (list.empty() ? "\"" : ", \"") + std::string(k) + "\"";
      }
      throw range_error(who + std::string(field) + " = \"" + w + "\" is not one of " + list);
    };
    word("direction", job_.read.direction, {"in", "out", "none"});
    word("outlet_air", job_.read.outlet_air, {"blows", "still", "not_found"});
    word("running", job_.read.running, {"runs", "silent"});
    if (!(job_.before_fan_share >= 0.0 && job_.before_fan_share <= 1.0)) throw range_error(who + "before_fan_ratio must be from 0 to 1");
    if (!(job_.fan_percent > 0.0 && job_.fan_percent <= 50.0)) throw range_error(who + "fan_percent must be above 0 and at most 50 %");
    if (job_.fan.pressure().empty()) throw range_error(who + "a fan needs the points of its curve");
    if (!is_nan(job_.read.fan_pressure_pa) && !(std::fabs(job_.read.fan_pressure_pa) <= 1e5)) throw range_error(who + "fan_pressure_pa must be from -100000 to 100000 Pa");
    if (!job_.read.grille_l_per_s.has_number() && !job_.read.outlet_l_per_s.has_number() && is_nan(job_.read.fan_pressure_pa) && job_.read.direction.empty() &&
        job_.read.outlet_air.empty() && job_.read.running.empty())
      throw range_error(who + "at least one reading: the flow at the grille first");
    for (const auto* r : {&job_.read.grille_l_per_s, &job_.read.outlet_l_per_s})
      if (r->has_number() && !(r->number >= -1e4 && r->number <= 1e4)) throw range_error(who + "flows must be from -10000 to 10000 l/s");
    if (!(job_.run(1.0) > 0.0)) throw range_error(who + "the run takes no pressure at all: give it a length, a fitting or a terminal");
    table_ = std::make_shared<const detail::fan_table>(job_.fan, job_.run);
    set_up();
  }
  fan_diagnosis_result result() {
    std::vector<job::observation> seen;
    const auto& r = job_.read;
    const auto flow_read = [&](const char* test, const reading& one) {
      if (!one.has_number()) return;
      auto o = job::observation::from(test, one, reads::airflow);
      o.number.add("repeated, " + std::string(test), flow_own_l_per_s);  // beside what the instrument states
      o.gains.push_back({"place of the hood, " + std::string(test), flow_own_ratio});
      seen.push_back(std::move(o));
    };
    flow_read("grille", r.grille_l_per_s);
    flow_read("outlet", r.outlet_l_per_s);
    if (!is_nan(r.fan_pressure_pa)) seen.push_back(job::observation::value("pressure", measured(r.fan_pressure_pa, 1.0 + 0.05 * std::fabs(r.fan_pressure_pa), "pressure reading")));
    if (!r.direction.empty()) seen.push_back(job::observation::outcome("direction", r.direction));
    if (!r.outlet_air.empty()) seen.push_back(job::observation::outcome("outlet_air", r.outlet_air));
    if (!r.running.empty()) seen.push_back(job::observation::outcome("running", r.running));
    job::inference_options options;
    options.points = 2048;
    options.draws = 100;
    job::explanations engine(tests_, list_, options);
    const auto& found = engine.explain(seen);
    fan_diagnosis_result out;
    out.robust = found.robust;
    out.none_of_these = found.rows.back().posterior;
    out.conflict = engine.conflict().conflict;
    std::array<double, fan_states> p{}, prior{};
    std::array<int, fan_states> first{};
    first.fill(-1);
    for (std::size_t h = 0; h < list_.size(); ++h) {
      const auto k = static_cast<std::size_t>(of_[h]);
      p[k] += found.rows[h].posterior;
      prior[k] += found.rows[h].prior;
      if (first[k] < 0 || found.rows[h].posterior > found.rows[static_cast<std::size_t>(first[k])].posterior) first[k] = static_cast<int>(h);
    }
    for (std::size_t k = 0; k < fan_states; ++k) {
      if (first[k] < 0) continue;
      const auto& h = list_[static_cast<std::size_t>(first[k])];
      std::vector<double> middle;
      for (const auto& one : h.parameters) middle.push_back(one.is.centre());
      const auto value = [&](std::string_view test) {
        for (const auto& one : h.predictions)
          if (one.first == test && one.second.real()) return one.second.value(middle.data(), static_cast<int>(middle.size()));
        return no_number;
      };
      out.explanations.push_back({static_cast<fan_state>(k), p[k], prior[k], value("grille"), value("outlet")});
    }
    std::stable_sort(out.explanations.begin(), out.explanations.end(), [](const auto& a, const auto& b) { return a.probability > b.probability; });
    // what a sound one gives, with 95 % of fan and run
    const double spread = 1.96 * std::sqrt(run_sd_ * run_sd_ + fan_sd_ * fan_sd_);
    out.expected_l_per_s = table_->at(table_->flow, 0.0);
    out.expected_low_l_per_s = table_->at(table_->flow, spread);
    out.expected_high_l_per_s = table_->at(table_->flow, -spread);
    next(found, seen, out);
    return out;
  }

 private:
  using distribution = job::distribution;
  template <class F>
  void add(fan_state state, double weight, std::vector<job::parameter> more, F flows, double direction_in, double direction_out, double outlet_blows, double outlet_missing, double runs,
           bool pressure = true) {
    job::hypothesis h;
    h.id = std::to_string(list_.size() + 10) + " " + std::string(fan_state_rows[static_cast<std::size_t>(state)].key);
    h.title = fan_state_rows[static_cast<std::size_t>(state)].text;
    h.prior = weight;
    h.parameters.push_back({"fan", distribution::log_normal(1.0, fan_sd_)});
    h.parameters.push_back({"run", distribution::log_normal(1.0, run_sd_)});
    for (auto& m : more) h.parameters.push_back(std::move(m));
    const auto table = table_;
    h.predictions.push_back({"grille", job::prediction([table, flows](const auto& p) { return flows(*table, p, 0); })});
    h.predictions.push_back({"outlet", job::prediction([table, flows](const auto& p) { return flows(*table, p, 1); })});
    if (pressure) h.predictions.push_back({"pressure", job::prediction([table, flows](const auto& p) { return flows(*table, p, 2); })});
    const double none = 1.0 - direction_in - direction_out, still = 1.0 - outlet_blows - outlet_missing;
    h.predictions.push_back({"direction", job::prediction::outcomes({{"in", direction_in}, {"out", direction_out}, {"none", none}})});
    h.predictions.push_back({"outlet_air", job::prediction::outcomes({{"blows", outlet_blows}, {"still", still}, {"not_found", outlet_missing}})});
    h.predictions.push_back({"running", job::prediction::outcomes({{"runs", runs}, {"silent", 1.0 - runs}})});
    list_.push_back(std::move(h));
    of_.push_back(state);
  }
  void set_up() {
    const double top = 2.0 * job_.fan.pressure().last_flow(), most = 2.0 * [&] {
      double m = 1.0;
      for (const auto& p : job_.fan.pressure().points()) m = std::max(m, p.value);
      return m;
    }();
    using spread = job::test::spread;
    tests_ = {{"grille", "", -0.25 * top, top, {}, spread::uniform}, {"outlet", "", -0.25 * top, top, {}, spread::uniform},
              {"pressure", "", -0.25 * most, most, {}, spread::uniform}, {"direction", "", 0.0, 0.0, {"in", "out", "none"}},
              {"outlet_air", "", 0.0, 0.0, {"blows", "still", "not_found"}}, {"running", "", 0.0, 0.0, {"runs", "silent"}}};
    fan_sd_ = job_.fan_percent / 100.0 / 1.7320508075688772;
    const double usual = std::max(1.0, table_->at(table_->flow, 0.0)), low = job_.run_low(usual), high = job_.run_high(usual);
    run_sd_ = low > 0.0 && high > low ? std::clamp(std::log(high / low) / 3.4641016151377545, 0.05, 0.6) : 0.12;
    using S = fan_state;
    const auto weight = [](S s) { return fan_state_rows[static_cast<std::size_t>(s)].prior; };
    // 0: grille, 1: outlet, 2: pressure at the fan; p[0] the fan's factor, p[1] the run's
    const auto all_of = [](const detail::fan_table& t, const auto& fan, const auto& times, int what) {
      const auto x = log(times) - log(fan);
      return what == 2 ? fan * t.at(t.pressure, x) : t.at(t.flow, x);
    };
    add(S::as_expected, weight(S::as_expected), {}, [all_of](const auto& t, const auto& p, int what) { return all_of(t, p[0], p[1], what); }, 0.97, 0.005, 0.95, 0.02, 0.98);
    add(S::added_resistance, weight(S::added_resistance), {{"times", distribution::log_uniform(1.8, 15.0)}},
        [all_of](const auto& t, const auto& p, int what) { return all_of(t, p[0], p[1] * p[2], what); }, 0.95, 0.005, 0.9, 0.03, 0.98);
    if (const double share = job_.flexible_share; share > 0.02)
      add(S::crushed_flexible, weight(S::crushed_flexible), {{"times", distribution::log_uniform(2.5, 40.0)}},
          [all_of, share](const auto& t, const auto& p, int what) { return all_of(t, p[0], p[1] * (1.0 + share * (p[2] - 1.0)), what); }, 0.93, 0.005, 0.88, 0.04, 0.98);
    add(S::closed_shutter, weight(S::closed_shutter), {{"times", distribution::log_uniform(40.0, 5000.0)}},
        [all_of](const auto& t, const auto& p, int what) { return all_of(t, p[0], p[1] * p[2], what); }, 0.35, 0.005, 0.1, 0.1, 0.97);
    if (job_.blades != fan_blades::axial)  // still blows the right way, with a fraction of its pressure
      add(S::reversed, weight(S::reversed) * (job_.blades == fan_blades::unknown ? 0.5 : 1.0), {{"part", distribution::uniform(0.08, 0.35)}},
          [all_of](const auto& t, const auto& p, int what) { return all_of(t, p[0] * p[2], p[1], what); }, 0.93, 0.01, 0.9, 0.03, 0.98);
    if (job_.blades != fan_blades::centrifugal)  // blows backwards
      add(S::reversed, weight(S::reversed) * (job_.blades == fan_blades::unknown ? 0.5 : 1.0), {{"part", distribution::uniform(0.04, 0.6)}},
          [all_of](const auto& t, const auto& p, int what) { return -1.0 * all_of(t, p[0] * p[2], p[1], what); }, 0.03, 0.93, 0.03, 0.1, 0.98);
    const double before = job_.before_fan_share;
    // after the leak most air takes the short way out; w: what still reaches the outlet
    add(S::leak_after_fan, weight(S::leak_after_fan), {{"open", distribution::log_uniform(0.02, 0.7)}, {"reaches the outlet", distribution::uniform(0.0, 0.75)}},
        [all_of, before](const auto& t, const auto& p, int what) {
          const auto q = all_of(t, p[0], p[1] * (before + (1.0 - before) * p[2]), what);
          return what == 1 ? q * p[3] : q;
        },
        0.97, 0.005, 0.6, 0.1, 0.98);
    add(S::leak_before_fan, weight(S::leak_before_fan), {{"open", distribution::log_uniform(0.05, 0.9)}, {"comes through the grille", distribution::uniform(0.0, 0.75)}},
        [all_of, before](const auto& t, const auto& p, int what) {
          const auto q = all_of(t, p[0], p[1] * (1.0 - before + before * p[2]), what);
          return what == 0 ? q * p[3] : q;
        },
        0.8, 0.005, 0.95, 0.02, 0.98);
    add(S::no_outlet, weight(S::no_outlet), {{"of the run", distribution::log_uniform(0.4, 2.0)}, {"draught", distribution::normal(0.0, 0.3)}},
        [all_of](const auto& t, const auto& p, int what) {
          const auto q = all_of(t, p[0], p[1] * p[2], what);
          return what == 1 ? p[3] + 0.0 * q : q;
        },
        0.9, 0.01, 0.02, 0.9, 0.98);
    add(S::slow, weight(S::slow), {{"speed", distribution::uniform(0.3, 0.85)}},
        [all_of](const auto& t, const auto& p, int what) {
          // the run goes nearly with the square of the flow: the fan's own curve shrinks along it
          const auto q = all_of(t, p[0], p[1], what);
          return what == 2 ? q * p[2] * p[2] : q * p[2];
        },
        0.93, 0.005, 0.9, 0.02, 0.97);
    add(S::not_running, weight(S::not_running), {{"draught", distribution::normal(0.0, 0.5)}},
        [all_of](const auto& t, const auto& p, int what) {
          const auto q = all_of(t, p[0], p[1], 0);
          return 0.0 * q + (what == 2 ? 0.2 * p[2] : 1.0 * p[2]);
        },
        0.12, 0.08, 0.1, 0.05, 0.03);
  }
  /// The information that each reading not yet taken is expected to give about the state: the parameters are drawn from their
  /// distributions and weighted by the readings at hand.
  void next(const job::posterior_table& found, const std::vector<job::observation>& seen, fan_diagnosis_result& out) {
    constexpr int draws = 300;
    struct drawn {
      std::vector<double> theta, weight;
      int count = 0;
    };
    std::vector<drawn> all(list_.size());
    std::vector<double> p(list_.size(), 0.0);
    double total = 0.0;
    const auto prediction_of = [&](std::size_t h, std::string_view test) -> const job::prediction* {
      for (const auto& one : list_[h].predictions)
        if (one.first == test) return &one.second;
      return nullptr;
    };
    for (std::size_t h = 0; h < list_.size(); ++h) {
      if (found.rows[h].posterior < 0.004) continue;
      auto& d = all[h];
      d.count = static_cast<int>(list_[h].parameters.size());
      double sum = 0.0;
      for (std::uint64_t i = 0; i < draws; ++i) {
        double log_weight = 0.0;
        for (std::size_t k = 0; k < list_[h].parameters.size(); ++k) d.theta.push_back(list_[h].parameters[k].is.quantile(job::detail::counted_uniform(7, i, k)));
        const double* theta = d.theta.data() + static_cast<std::ptrdiff_t>(i) * d.count;
        for (const auto& o : seen) {
          const auto* f = prediction_of(h, o.test);
          if (!f || !f->real() || o.is != job::observation::kind::value) continue;
          double sd = 0.3;
          for (const auto& g : o.gains) sd += g.u * std::fabs(o.number.value);
          sd = std::hypot(sd, o.number.standard_uncertainty());
          const double away = (f->value(theta, d.count) - o.number.value) / sd;
          log_weight -= 0.5 * away * away;
        }
        d.weight.push_back(std::exp(std::max(log_weight, -200.0)));
        sum += d.weight.back();
      }
      for (auto& w : d.weight) w /= sum;
      p[h] = found.rows[h].posterior;
      total += p[h];
    }
    if (!(total > 0.0)) return;
    const auto told = [&](std::string_view test) {
      const job::test* t = nullptr;
      for (const auto& one : tests_)
        if (one.id == test) t = &one;
      constexpr int cells = 60;
      const std::size_t n = t->real() ? cells : t->categories.size();
      std::vector<std::array<double, fan_states>> joint(n);
      std::array<double, fan_states> of_state{};
      for (auto& j : joint) j.fill(0.0);
      for (std::size_t h = 0; h < list_.size(); ++h) {
        if (!(p[h] > 0.0)) continue;
        const auto k = static_cast<std::size_t>(of_[h]);
        const auto* f = prediction_of(h, test);
        of_state[k] += p[h] / total;
        if (!t->real()) {
          for (std::size_t c = 0; c < n; ++c)
            for (const auto& o : f->chances())
              if (o.outcome == t->categories[c]) joint[c][k] += p[h] / total * o.probability;
          continue;
        }
        for (std::size_t i = 0; i < draws; ++i) {
          if (all[h].weight[i] < 1e-6) continue;
          const double y = f->value(all[h].theta.data() + static_cast<std::ptrdiff_t>(i) * all[h].count, all[h].count), sd = 0.3 + 0.06 * std::fabs(y), w = (t->high - t->low) / cells;
          const int from = std::clamp(static_cast<int>((y - 4.0 * sd - t->low) / w), 0, cells - 1), to = std::clamp(static_cast<int>((y + 4.0 * sd - t->low) / w), 0, cells - 1);
          for (int c = from; c <= to; ++c)
            joint[static_cast<std::size_t>(c)][k] += p[h] / total * all[h].weight[i] * (normal_cdf((t->low + w * (c + 1) - y) / sd) - normal_cdf((t->low + w * c - y) / sd));
        }
      }
      double bits = 0.0;
      for (const auto& j : joint) {
        double any = 0.0;
        for (const double x : j) any += x;
        for (std::size_t k = 0; k < fan_states; ++k)
          if (j[k] > 0.0) bits += j[k] * std::log2(j[k] / (any * of_state[k]));
      }
      return std::max(bits, 0.0);
    };
    const auto consider = [&](bool unread, std::string_view test, std::string_view field, std::string_view text) {
      if (unread) out.next.push_back({std::string(field), std::string(text), told(test)});
    };
    const auto& r = job_.read;
    consider(!r.grille_l_per_s.has_number(), "grille", "grille_l_per_s", "Read the flow at the grille, doors and windows shut.");
    consider(!r.outlet_l_per_s.has_number() && r.outlet_air != "not_found", "outlet", "outlet_l_per_s", "Read the flow at the outlet.");
    consider(is_nan(r.fan_pressure_pa), "pressure", "fan_pressure_pa", "Read the static pressure across the fan.");
    consider(r.direction.empty(), "direction", "direction", "Hold a strip of paper to the grille: in, out, or none.");
    consider(r.outlet_air.empty() && !r.outlet_l_per_s.has_number(), "outlet_air", "outlet_air", "Go outside and look for the outlet: does it blow?");
    consider(r.running.empty(), "running", "running", "Listen at the fan: does it run?");
    std::stable_sort(out.next.begin(), out.next.end(), [](const auto& a, const auto& b) { return a.information_bits > b.information_bits; });
  }

  fan_job job_;
  std::shared_ptr<const detail::fan_table> table_;
  double fan_sd_ = 0.06, run_sd_ = 0.12;
  std::vector<job::test> tests_;
  std::vector<job::hypothesis> list_;
  std::vector<fan_state> of_;
};

inline fan_diagnosis_result fan_diagnosis(fan_job j) { return fan_inquiry(std::move(j)).result(); }

}  // namespace air
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Faults that show only in use: a loose joint, by voltages under load, and trips of a residual current device that nobody wanted. Both
// are ranked by the kernel of job/inference.hpp, with the reading that would tell most. Subject: electrical. Opt-in.
#pragma once
#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../job/inference.hpp"
#include "../job/next_reading.hpp"
#include "../reading.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

/// One kind of explanation: its weight before any reading is our judgement.
struct fault_kind_row {
  std::string_view key;
  double prior;
  std::string_view text, act;
};
struct ranked_fault {
  std::string kind{}, text{}, act{};
  double prior = 0.0, probability = 0.0;
};
struct wanted_reading {
  std::string reading{}, text{};
  double information_bits = 0.0;  ///< how much it is expected to lower the entropy over the kinds
};
/// What every diagnosis here gives.
struct fault_ranking {
  std::vector<ranked_fault> faults{};  ///< the most probable first, "none_of_these" among them
  bool robust = true;                  ///< the leading one stays in front when any weight is halved or doubled
  bool conflict = false;               ///< no listed one explains the readings
  std::vector<wanted_reading> next{};  ///< best first
  std::vector<std::string> cautions{}, assumptions{};
  std::string text{};
};

inline constexpr double none_of_these_prior = 0.05;
inline constexpr fault_kind_row joint_kinds[] = {
    {"sound_joints", 0.45, "no joint stands out: the drop is that of the supply and the cable",
     "Hold the drop against its limit. A joint that is bad only when it is warm or moved is not excluded by this."},
    {"line_joint", 0.14, "a bad joint or contact in the line conductor between board and point",
     "Isolate, lock off, prove dead; remake the line terminals between board and point, at switches and connection units first; then read again under load."},
    {"neutral_joint", 0.14, "a bad joint or contact in the neutral conductor between board and point",
     "Isolate, lock off, prove dead; remake the neutral terminals between board and point; then read again under load."},
    {"supply_joint", 0.08, "a bad joint in, or a weak, supply before the board",
     "Tighten only what is yours on the isolated board. What lies before the main switch belongs to the network operator: call it, at once if voltages swing or rise with load."},
    {"other_cable", 0.09, "a longer or thinner cable than stated", "Read the conductors end to end, dead, and measure their strands; put their resistance in."},
    {"more_current", 0.05, "more current than was read flows through the same conductors", "Read the current at the board, on that circuit alone, with every other load on it off."}};
inline constexpr fault_kind_row trip_kinds[] = {
    {"standing_leakage", 0.24, "the standing leakage of several sound appliances takes up most of the device's margin",
     "Spread the circuits over more devices, or move the appliances with most leakage; nothing is damaged by it."},
    {"wiring_fault", 0.14, "a fault of insulation between line and earth in fixed wiring",
     "Leave it isolated. Part the circuit and find the length that reads low; then locate the place along it."},
    {"appliance_fault", 0.20, "an appliance whose insulation fails when it is switched on or warm",
     "Leave it unplugged or isolated; read the insulation of the appliance alone, then exchange or repair it."},
    {"neutral_fault", 0.12, "a neutral that touches earth or the protective conductor",
     "Isolate, lift the neutrals one by one at the board and read each to earth; the low one is the circuit."},
    {"borrowed_neutral", 0.07, "a circuit that returns by another circuit's neutral",
     "Isolate both circuits together: a borrowed neutral stays live when one of them is off. Part it and give each circuit its own."},
    {"dampness", 0.08, "dampness in an accessory, a lighting point or a joint",
     "Leave it isolated until it is found, dried and closed against water; read the insulation again afterwards."},
    {"early_device", 0.07, "a device that trips below half of its rated residual current", "Exchange the device; repeat the ramp with its load side disconnected."},
    {"transients", 0.08, "transients or filter inrush at switching, with nothing damaged", "Find what is switched at that moment; filters of several appliances on one device add up."}};

/// Voltages at one point without and with a load, what flows, and anything more that is known; a reading may be left out where it says so.
struct joint_readings {
  reading no_load_v{}, load_v{}, current_a{};
  reading board_no_load_v{}, board_load_v{};   ///< at the board at the same load; both or neither
  reading line_drop_v{}, neutral_drop_v{};     ///< along one conductor from board to point, with the load on; either may be left out
  reading circuit_ohm{};                       ///< line and neutral of the run as they should be, at their temperature; may be left out
  reading supply_ohm{};                        ///< line-neutral impedance at the board as it should be; may be left out
};
struct joint_result : fault_ranking {
  double drop_v = 0.0, drop_standard_uncertainty_v = 0.0;
  double joint_ohm = no_number, joint_standard_uncertainty_ohm = no_number;  ///< if the leading one is a joint
  double heat_w = no_number;                                                ///< made in it by the current read
};
enum class trip_moment : unsigned char { not_said, at_once, at_switch_on, under_load, now_and_then, in_the_wet };
inline constexpr std::string_view trip_moments[] = {"", "at_once", "at_switch_on", "under_load", "now_and_then", "in_the_wet"};
struct trip_readings {
  double residual_current_ma = no_number;      ///< rated
  reading leakage_ma{};                        ///< standing, clamp around all live conductors behind the device, appliances on
  reading ramp_ma{};                           ///< at which it trips by a ramp, its load side disconnected
  reading ramp_connected_ma{};                 ///< the same with circuits and appliances on
  reading insulation_line_mohm{};              ///< line to earth, dead, appliances unplugged or disconnected
  reading insulation_neutral_mohm{};           ///< neutral to earth, dead, lifted at the board
  trip_moment when = trip_moment::not_said;
};
using trip_result = fault_ranking;

namespace detail {
inline std::string share_text(double p) {
  if (p < 0.005) return "below 1 %";
  if (p > 0.985) return "over 98 %";
  return number_text(std::floor(p * 100.0 + 0.5)) + " %";
}
/// A bare number where a doubt is needed: a part of it as a standard uncertainty.
inline measured believed(const reading& r, reads what, std::string_view name, double part) {
  const measured x = to_measured(r, what, std::string(name));
  return x.standard_uncertainty() > 0.0 ? x : measured(x.value, part * std::fabs(x.value), std::string(name));
}
inline void demand_reading(std::string_view who, const reading& r, std::string_view name, double low, double high, std::string_view unit_text) {
  if (!r.has_number()) return;
  if (!(r.number >= low && r.number <= high))
    throw range_error(std::string(who) + ": " + std::string(name) + " = " + number_text(r.number) + " " + std::string(unit_text) + ": from " + number_text(low) + " to " +
                      number_text(high) + " " + std::string(unit_text));
}

/// Gathers tests, hypotheses and readings, and reads the ranking off the kernel.
template <std::size_t kinds>
class fault_ranker {
 public:
  explicit fault_ranker(const fault_kind_row (&rows)[kinds]) : rows_(rows) {}

  void test(job::test t, std::string reading_name, std::string words) {
    asked_.push_back({t.id, std::move(reading_name), std::move(words)});
    tests_.push_back(std::move(t));
  }
  job::hypothesis& hypothesis(std::size_t kind) {
    list_.push_back({std::string(rows_[kind].key), std::string(rows_[kind].text), rows_[kind].prior, {}, {}});
    kind_.push_back(static_cast<int>(kind));
    return list_.back();
  }
  void seen(job::observation o) {
    if (o.is != job::observation::kind::not_measured) seen_.push_back(std::move(o));
  }
  bool read(std::string_view test) const {
    return std::any_of(seen_.begin(), seen_.end(), [&](const auto& o) { return o.test == test; });
  }
  std::size_t readings() const { return seen_.size(); }

  /// Ranks, and weighs every test that was not read; `doubt` is what an instrument would have there.
  job::explanations rank(fault_ranking& out, const std::function<double(std::string_view, double)>& doubt) {
    job::inference_options o;
    o.none_prior = none_of_these_prior;
    o.points = 512;
    o.draws = 200;
    job::explanations engine(tests_, list_, o);
    const job::posterior_table table = engine.explain(seen_);
    for (std::size_t h = 0; h < list_.size(); ++h) {
      const auto& row = rows_[static_cast<std::size_t>(kind_[h])];
      out.faults.push_back({std::string(row.key), std::string(row.text), std::string(row.act), table.rows[h].prior, table.rows[h].posterior});
    }
    out.faults.push_back({"none_of_these", "something that is not in this list", "Read everything once more; isolate and part the circuit before anything is guessed.",
                          table.rows.back().prior, table.rows.back().posterior});
    std::stable_sort(out.faults.begin(), out.faults.end(), [](const auto& a, const auto& b) { return a.probability > b.probability; });
    out.robust = table.robust;
    out.conflict = engine.conflict().conflict;
    for (const auto& t : asked_)
      if (!read(t.test)) {
        const double bits = job::expected_information(engine, t.test, [&](std::size_t h) { return kind_[h]; }, doubt);
        if (bits > 0.0) out.next.push_back({t.reading, t.words, bits});
      }
    std::stable_sort(out.next.begin(), out.next.end(), [](const auto& a, const auto& b) { return a.information_bits > b.information_bits; });
    auto& t = out.text;
    t = "Most likely: " + out.faults[0].text + " (" + share_text(out.faults[0].probability) + ").";
    if (out.faults[1].probability > 0.02) t += " Then: " + out.faults[1].text + " (" + share_text(out.faults[1].probability) + ").";
    if (out.conflict) t += " But even the leading explanation has the readings otherwise: read again; if they stand, there are two faults or one that is not listed.";
    else if (!out.robust) t += " The first two are close: another weight before the readings would change their order.";
    t += " " + out.faults[0].act;
    if (!out.next.empty() && out.next[0].information_bits > 0.02) t += " The reading that tells most: " + out.next[0].text;
    if (seen_.size() < 3)
      out.cautions.push_back("Only " + std::to_string(seen_.size()) + (seen_.size() == 1 ? " reading: " : " readings: ") + "the probabilities lean on the weights before any reading.");
    std::string weights = "Weights before the readings are judgement:";
    for (std::size_t k = 0; k < kinds; ++k) weights += " " + std::string(rows_[k].key) + " " + share_text(rows_[k].prior) + ",";
    out.assumptions.push_back(weights + " none_of_these " + share_text(none_of_these_prior) + ".");
    return engine;
  }

 private:
  const fault_kind_row (&rows_)[kinds];
  struct asked {
    std::string test, reading, words;
  };
  std::vector<asked> asked_;
  std::vector<job::test> tests_;
  std::vector<job::hypothesis> list_;
  std::vector<int> kind_;
  std::vector<job::observation> seen_;
};
}  // namespace detail

/// Whether a joint between board and point, or before the board, drops more than supply and cable do.
inline joint_result joint_under_load(const joint_readings& in) {
  constexpr std::string_view who = "joint_under_load";
  const auto fail = [&](const std::string& t) { throw range_error(std::string(who) + ": " + t); };
  for (const auto& [r, name] : {std::pair{&in.no_load_v, "no_load_v"}, {&in.load_v, "load_v"}, {&in.current_a, "current_a"}})
    if (r->is != reading::state::value) fail(std::string(name) + ": a measured value is needed");
  for (const auto& [r, name] : {std::pair{&in.no_load_v, "no_load_v"}, {&in.load_v, "load_v"}, {&in.board_no_load_v, "board_no_load_v"}, {&in.board_load_v, "board_load_v"}})
    detail::demand_reading(who, *r, name, 1.0, 1000.0, "V");
  for (const auto& [r, name] : {std::pair{&in.line_drop_v, "line_drop_v"}, {&in.neutral_drop_v, "neutral_drop_v"}}) detail::demand_reading(who, *r, name, 0.0, 500.0, "V");
  detail::demand_reading(who, in.current_a, "current_a", 0.05, 1000.0, "A");
  for (const auto& [r, name] : {std::pair{&in.circuit_ohm, "circuit_ohm"}, {&in.supply_ohm, "supply_ohm"}}) detail::demand_reading(who, *r, name, 0.001, 100.0, "Ω");
  const auto value_of = [](const reading& r) { return r.is == reading::state::value; };
  if (value_of(in.board_no_load_v) != value_of(in.board_load_v)) fail("board_no_load_v and board_load_v belong together: both, or neither");

  joint_result out;
  constexpr double swing_v = 0.4;  // of the supply between two readings
  const auto drop = [&](const reading& without, const reading& with, std::string_view name) {
    measured d = to_measured(without, reads::voltage, std::string(name) + ", without load") - to_measured(with, reads::voltage, std::string(name) + ", with load");
    d.add("supply between the readings, " + std::string(name), swing_v);
    return d;
  };
  const measured at_point = drop(in.no_load_v, in.load_v, "point");
  const measured current = detail::believed(in.current_a, reads::current, "current", 0.025);
  out.drop_v = at_point.value;
  out.drop_standard_uncertainty_v = at_point.standard_uncertainty();

  detail::fault_ranker ranker(joint_kinds);
  const auto volts = [](std::string id) { return job::test{std::move(id), "", -10.0, 120.0, {}, job::test::spread::uniform, 0.0}; };
  ranker.test(volts("point"), "load_v", "Read the voltage at the point without and with the load.");
  ranker.test(volts("board"), "board_no_load_v and board_load_v", "Read the voltage at the board without and with the same load.");
  ranker.test(volts("line"), "line_drop_v", "With the load on, read along the line conductor from board to point with a long lead.");
  ranker.test(volts("neutral"), "neutral_drop_v", "With the load on, read along the neutral conductor from board to point with a long lead.");

  const bool cable_known = value_of(in.circuit_ohm), supply_known = value_of(in.supply_ohm);
  const auto normal_of = [](const measured& x) { return job::distribution::normal(x.value, x.standard_uncertainty()); };
  std::vector<job::parameter> common{
      {"current", normal_of(current)},
      {"supply", supply_known ? normal_of(detail::believed(in.supply_ohm, reads::nothing, "supply", 0.15)) : job::distribution::log_normal(0.25, 0.6)},
      {"circuit", cable_known ? normal_of(detail::believed(in.circuit_ohm, reads::nothing, "circuit", 0.06)) : job::distribution::log_uniform(0.02, 2.0)},
      {"line_share", job::distribution::normal(0.5, 0.01)}};
  // current, supply, circuit, share of the line, and what the kind adds
  enum class adds { nothing, line, neutral, supply, cable, amperes };
  const auto add = [&](std::size_t kind, adds what, std::optional<job::parameter> more) {
    auto& h = ranker.hypothesis(kind);
    h.parameters = common;
    if (more) h.parameters.push_back(*more);
    const auto say = [&](const char* test, int conductor) {  // 0 point, 1 board, 2 line, 3 neutral
      h.predictions.emplace_back(test, job::prediction([what, conductor](const auto& p) {
        auto i = p[0];
        auto board = p[1], line = p[2] * p[3], neutral = p[2] * (1.0 - p[3]);
        switch (what) {
          case adds::line: line = line + p[4]; break;
          case adds::neutral: neutral = neutral + p[4]; break;
          case adds::supply: board = board + p[4]; break;
          case adds::cable: line = line * p[4], neutral = neutral * p[4]; break;
          case adds::amperes: i = i * p[4]; break;
          case adds::nothing: break;
        }
        return conductor == 0 ? i * (board + line + neutral) : conductor == 1 ? i * board : conductor == 2 ? i * line : i * neutral;
      }));
    };
    say("point", 0), say("board", 1), say("line", 2), say("neutral", 3);
  };
  const job::parameter joint{"joint", job::distribution::log_uniform(0.02, 20.0)};
  add(0, adds::nothing, std::nullopt);
  add(1, adds::line, joint);
  add(2, adds::neutral, joint);
  add(3, adds::supply, joint);
  if (cable_known) add(4, adds::cable, job::parameter{"times", job::distribution::log_uniform(1.3, 4.0)});
  add(5, adds::amperes, job::parameter{"times", job::distribution::log_uniform(1.3, 5.0)});

  ranker.seen(job::observation::value("point", at_point));
  if (value_of(in.board_load_v)) ranker.seen(job::observation::value("board", drop(in.board_no_load_v, in.board_load_v, "board")));
  const auto along = [&](const char* test, const reading& r) {
    auto o = job::observation::from(test, r, reads::voltage);
    o.number.add(std::string("contact, ") + test, 0.02);
    ranker.seen(std::move(o));
  };
  if (in.line_drop_v.has_number()) along("line", in.line_drop_v);
  if (in.neutral_drop_v.has_number()) along("neutral", in.neutral_drop_v);
  auto engine = ranker.rank(out, [](std::string_view test, double v) { return std::sqrt(square(test == "board" ? 0.5 : 0.05) + square(0.012 * v)); });

  const auto& first = out.faults[0].kind;
  if (first.ends_with("_joint"))
    for (std::size_t h = 0; h < engine.hypotheses().size(); ++h)
      if (engine.hypotheses()[h].id == first) {
        const auto after = engine.parameter_after(h, 4);
        out.joint_ohm = after.mean;
        out.joint_standard_uncertainty_ohm = after.sd;
        out.heat_w = square(current.value) * after.mean;
        out.text += " About " + number_text(std::floor(out.heat_w + 0.5)) + " W are made in it at this current: a few watts char an accessory.";
      }
  auto& c = out.cautions;
  c.insert(c.begin(), "Live readings at open terminals are for those trained and equipped for them; dead tests come first. Covers back on before the load is switched on.");
  c.push_back("A joint that reads well by the small current of a continuity test may still be bad under load, and one that holds today may not when it is warm.");
  c.push_back("Voltages that swing, or rise when a load is switched on, may mean a broken neutral of the supply: switch off, and call the network operator at once.");
  if (current.value < 3.0) c.push_back("A load of " + number_text(current.value) + " A drops little: take the largest that the circuit is meant for.");
  if (at_point.value < 0.0) c.push_back("The voltage was higher with the load than without: the supply moved between the readings, or see the caution about its neutral.");
  auto& a = out.assumptions;
  a.push_back("The supply is taken to move by 0.4 V between two readings, contacts of a long lead to add 0.02 V (standard uncertainties).");
  if (!cable_known) a.push_back("circuit_ohm was not given: anything from 0.02 to 2 Ω; only the difference of the two conductors can then show a joint in the run.");
  if (!supply_known) a.push_back("supply_ohm was not given: 0.25 Ω, within a factor of 1.8 (standard deviation), is assumed.");
  return out;
}

/// Why a residual current device trips although nobody touched anything.
inline trip_result unwanted_trips(const trip_readings& in) {
  constexpr std::string_view who = "unwanted_trips";
  const double rated = in.residual_current_ma;
  if (!(rated >= 5.0 && rated <= 1000.0))
    throw range_error(std::string(who) + ": residual_current_ma = " + number_text(rated) + " mA: from 5 to 1000 (30 is usual)");
  for (const auto& [r, name] : {std::pair{&in.leakage_ma, "leakage_ma"}, {&in.ramp_ma, "ramp_ma"}, {&in.ramp_connected_ma, "ramp_connected_ma"}})
    detail::demand_reading(who, *r, name, 0.0, 1e5, "mA");
  for (const auto& [r, name] : {std::pair{&in.insulation_line_mohm, "insulation_line_mohm"}, {&in.insulation_neutral_mohm, "insulation_neutral_mohm"}})
    detail::demand_reading(who, *r, name, 0.0, 1e6, "MΩ");

  trip_result out;
  detail::fault_ranker ranker(trip_kinds);
  const auto milliamperes = [](std::string id) { return job::test{std::move(id), "", 0.05, 2000.0, {}, job::test::spread::log_uniform, 0.05}; };
  const auto megohms = [](std::string id) { return job::test{std::move(id), "", 1e-4, 1000.0, {}, job::test::spread::log_uniform, 0.1}; };
  ranker.test(milliamperes("leakage"), "leakage_ma", "Clamp all live conductors behind the device together and read the standing leakage with the appliances on.");
  ranker.test(milliamperes("ramp"), "ramp_ma", "With the load side disconnected, read by a ramp at which current the device trips.");
  ranker.test(megohms("line"), "insulation_line_mohm", "Dead, appliances unplugged and electronics disconnected: read the insulation of the lines to earth.");
  ranker.test(megohms("neutral"), "insulation_neutral_mohm", "Dead, neutrals lifted from the bar: read the insulation of each neutral to earth.");
  std::vector<std::string> moments(std::begin(trip_moments) + 1, std::end(trip_moments));
  ranker.test({"when", "", 0.0, 0.0, moments}, "when", "Ask when it trips: at once, at switching on, under load, in the wet, or now and then.");

  struct shape {
    job::distribution leakage, trips, line, neutral;
    double moments[5];  // at_once, at_switch_on, under_load, now_and_then, in_the_wet
  };
  using d = job::distribution;
  const d sound = d::log_normal(30.0, 1.2), usual = d::log_normal(0.07 * rated, 0.7), device = d::normal(0.75 * rated, 0.07 * rated);
  const d any = d::log_uniform(0.02 * rated, 2.0 * rated);
  const shape shapes[] = {{d::log_uniform(0.3 * rated, 0.9 * rated), device, sound, sound, {0.03, 0.30, 0.07, 0.55, 0.05}},
                          {any, device, d::log_uniform(0.001, 0.5), sound, {0.45, 0.20, 0.05, 0.20, 0.10}},
                          {d::log_uniform(0.1 * rated, 2.0 * rated), device, sound, sound, {0.03, 0.50, 0.22, 0.20, 0.05}},
                          {any, device, sound, d::log_uniform(0.0002, 0.1), {0.10, 0.20, 0.45, 0.20, 0.05}},
                          {any, device, sound, sound, {0.10, 0.30, 0.50, 0.08, 0.02}},
                          {usual, device, d::log_uniform(0.02, 3.0), d::log_uniform(0.02, 300.0), {0.05, 0.05, 0.02, 0.13, 0.75}},
                          {usual, d::uniform(0.2 * rated, 0.5 * rated), sound, sound, {0.05, 0.25, 0.05, 0.60, 0.05}},
                          {usual, device, sound, sound, {0.01, 0.58, 0.05, 0.35, 0.01}}};
  static_assert(std::size(shapes) == std::size(trip_kinds));
  for (std::size_t k = 0; k < std::size(trip_kinds); ++k) {
    auto& h = ranker.hypothesis(k);
    h.parameters = {{"leakage", shapes[k].leakage}, {"trips", shapes[k].trips}, {"line", shapes[k].line}, {"neutral", shapes[k].neutral}};
    const char* names[] = {"leakage", "ramp", "line", "neutral"};
    for (int i = 0; i < 4; ++i) h.predictions.emplace_back(names[i], job::prediction([i](const auto& p) { return 1.0 * p[i]; }));
    std::vector<job::prediction::chance> chances;
    for (int i = 0; i < 5; ++i) chances.push_back({moments[static_cast<std::size_t>(i)], shapes[k].moments[i]});
    h.predictions.emplace_back("when", job::prediction::outcomes(chances));
  }
  const auto seen = [&](const char* test, const reading& r, reads what) {
    if (r.has_number()) ranker.seen(job::observation::from(test, r, what).with_gain(std::string("scatter, ") + test, 0.05));
  };
  seen("leakage", in.leakage_ma, reads::current);
  seen("ramp", in.ramp_ma, reads::current);
  seen("line", in.insulation_line_mohm, reads::insulation);
  seen("neutral", in.insulation_neutral_mohm, reads::insulation);
  if (in.when != trip_moment::not_said) ranker.seen(job::observation::outcome("when", std::string(trip_moments[static_cast<std::size_t>(in.when)])));
  if (ranker.readings() == 0) out.cautions.push_back("Nothing was read: what follows are the weights alone.");
  ranker.rank(out, [](std::string_view test, double x) { return test == "line" || test == "neutral" ? 0.2 * std::fabs(x) + 0.001 : 0.05 * std::fabs(x) + 0.05; });

  auto& c = out.cautions;
  c.insert(c.begin(), "Never bridge or exchange the device for a less sensitive one to stop the trips: until the cause is found, leave the circuit isolated.");
  c.push_back("Insulation tests: isolate, prove dead, and disconnect electronics, indicators and surge protection first.");
  if (in.ramp_connected_ma.is == reading::state::value && in.ramp_ma.is == reading::state::value) {
    const double lost = in.ramp_ma.number - in.ramp_connected_ma.number;
    c.push_back("Between the two ramps lie " + number_text(lost) + " mA: so much of the margin goes to what is connected (currents of other phase add to less than their sum).");
    if (in.ramp_connected_ma.number > in.ramp_ma.number)
      c.push_back("With the circuits on it tripped later than without: leakage may be of opposite sense to the test's, or an appliance desensitises the device by direct current.");
  }
  out.assumptions.push_back("A device in order trips between 50 % and 100 % of its rated residual current, 75 % most often (IEC 61008-1); sound insulation is taken as 30 MΩ within a factor of 3.3; readings scatter by 5 % beside their instrument.");
  return out;
}

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

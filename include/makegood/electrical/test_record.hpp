// SPDX-License-Identifier: MIT
// A record of tests held against itself: which of its numbers cannot all belong to the circuit that it describes, and what is missing.
// Subject: electrical (models). Opt-in: includes the standard library's containers.
#pragma once
#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>
#include "../job/inference.hpp"
#include "../reading.hpp"
#include "conductors.hpp"
#include "ring.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

// ---- what is handed in ---------------------------------------------------------------------------------------------------

enum class circuit_kind : unsigned char { not_stated, ring, radial };
enum class loop_method : unsigned char { not_stated, high_current, no_trip };
enum class rcd_kind : unsigned char { not_stated, none, general, delayed };
enum class earthing : unsigned char { not_stated, tn_c_s, tn_s, tt };

struct circuit_record {
  std::string name{};
  circuit_kind kind = circuit_kind::not_stated;
  double line_mohm_per_m = no_number, cpc_mohm_per_m = no_number;  ///< stated conductors at 20 °C, as tabulated
  double conductor_temperature_c = no_number;                      ///< NaN: (20 ± 5) °C
  reading length_m{};                                              ///< a bare number is taken as ± 20 %
  reading line_plus_cpc_ohm{}, cpc_ohm{};                          ///< R1+R2, R2
  reading line_end_to_end_ohm{}, neutral_end_to_end_ohm{}, cpc_end_to_end_ohm{};
  reading insulation_line_cpc_mohm{}, insulation_line_neutral_mohm{}, insulation_neutral_cpc_mohm{};
  electrical::polarity polarity = polarity::not_read;
  reading loop_ohm{};  ///< Zs
  electrical::loop_method loop_method = loop_method::not_stated;
  reading fault_current_a{};
  electrical::rcd_kind rcd = rcd_kind::not_stated;
  reading rcd_trip_1x_ms{}, rcd_trip_5x_ms{};
  reading rcd_trip_half_ms{};                  ///< at half the rated residual current: ordinarily no_trip
  reading rcd_ramp_ma{};                       ///< current at which it tripped while it rose slowly
  double rcd_residual_ma = no_number;          ///< rated residual current
};
struct board_record {
  reading external_loop_ohm{};  ///< Ze
  reading insulation_line_cpc_mohm{};
  reading short_circuit_current_a{}, earth_fault_current_a{};
  double nominal_voltage_v = 230.0;
  electrical::earthing earthing = earthing::not_stated;
};

// ---- the relations ---------------------------------------------------------------------------------------------------------

inline constexpr std::size_t most_circuits = 200;
inline constexpr std::size_t least_readings_of_a_pattern = 10, least_lines_of_a_sum = 3;

enum class record_relation : unsigned char {
  loop_sum, loop_above_line, cpc_share, ring_line_neutral, ring_cpc_line, ring_cross_low, ring_cross_high, length, fault_current, origin_current, board_fault_current,
  board_currents, insulation_parallel, rcd_times, rcd_delay, rcd_half_time, rcd_ramp_low, rcd_ramp_high, sums_equal, last_digits, repeats, rows_copied
};
enum class side : unsigned char { above, below, both };
struct record_relation_row {
  std::string_view key;
  electrical::side side;       ///< which residual contradicts
  std::string_view unit, text; ///< the relation in words
  std::string_view above, below;  ///< what a breach would mean
  source from;
};
inline constexpr source own_derivation{"Ohm's law and Kirchhoff's laws", "", "derived"};
inline constexpr record_relation_row record_relations[] = {
    {"loop_sum", side::above, "Ω", "Zs is at most Ze + (R1+R2)",
        "a bad joint, readings of another circuit, or R1+R2 or Ze read too low or written down wrongly",
     "parallel earth paths: ordinary", {"NICEIC technical note", "Zs = Ze + (R1+R2)"}},
    {"loop_above_line", side::below, "Ω", "Zs is at least the resistance of the line conductor", "",
        "Zs or R1+R2 belongs to another circuit, or two readings are exchanged", own_derivation},
    {"cpc_share", side::above, "Ω", "R2 is at most its share of R1+R2",
        "a bad joint in the protective conductor, another cable, or readings exchanged", "a parallel earth path: ordinary", own_derivation},
    {"ring_line_neutral", side::both, "Ω", "the line and the neutral of a ring read alike end to end",
        "a bad joint in the line, a bridge in the neutral alone, or a reading of another conductor",
     "a bad joint in the neutral, a bridge in the line alone, or a reading of another conductor", own_derivation},
    {"ring_cpc_line", side::both, "Ω", "end to end, the protective conductor and the line of a ring stand as their resistances per metre",
     "a bad joint in the protective conductor, a smaller one than stated, or readings exchanged",
     "a protective conductor as large as the line's (another cable than stated), a parallel path, or readings exchanged or copied", own_derivation},
    {"ring_cross_low", side::below, "Ω", "R1+R2 of a ring is at least r1 r2/(r1+r2)", "",
        "R1+R2 was read with the ends not linked crosswise, or was not read on this ring", own_derivation},
    {"ring_cross_high", side::above, "Ω", "R1+R2 of a ring is at most (r1+r2)/4 and a spur of 15 m",
        "an open ring, a bad joint, a long spur, or R1+R2 of another circuit", "", own_derivation},
    {"length", side::both, "m", "the length by resistance is the length stated", "a bad joint, smaller conductors than stated, or a longer route",
        "larger conductors than stated, a bridge, or a shorter route", own_derivation},
    {"fault_current", side::both, "1", "the fault current of the circuit is U0/Zs",
        "the current or Zs is of another circuit or was worked out from another voltage",
     "the current or Zs is of another circuit or was worked out from another voltage", own_derivation},
    {"origin_current", side::above, "A", "the fault current is highest at the origin", "one of the two currents was not read where it says", "",
        own_derivation},
    {"board_fault_current", side::both, "1", "the earth fault current at the board is U0/Ze",
        "the current or Ze was not read at the board, or parallel paths were connected for one of them",
     "the current or Ze was not read at the board", own_derivation},
    {"board_currents", side::both, "1", "with TN-C-S both fault currents at the board are nearly equal",
        "one of the two was not read at the board, or the earthing is another one",
     "one of the two was not read at the board, or the earthing is another one", own_derivation},
    {"insulation_parallel", side::above, "1", "the insulation of the whole board is at most that of its circuits in parallel",
        "a circuit or the board was not read, or was not connected when the board was read", "", own_derivation},
    {"rcd_times", side::above, "ms", "five times the current trips no slower than once the current",
        "the two times are exchanged, or one was not read", "", {"IEC 61008-1", "", "memory"}},
    {"rcd_delay", side::below, "ms", "a delayed device does not trip before 130 ms", "",
        "the device is not a delayed one, or the time is of another one", {"IEC 61008-1", "type S, 130 ms at the rated current", "memory"}},
    {"rcd_half_time", side::below, "ms", "half the rated current trips no faster than the whole of it", "",
        "the two times are exchanged, one was not read, or a leakage that came and went was on for one of them", {"IEC 61008-1", "", "memory"}},
    {"rcd_ramp_low", side::below, "1", "a device that holds at half its rated current trips above that half while the current rises", "",
        "one of the two was not read, is of another device, or a standing leakage was on for one of them", {"IEC 61008-1", "no trip at 0.5 I_Δn", "memory"}},
    {"rcd_ramp_high", side::above, "1", "a device that trips at its rated current trips before that while the current rises",
        "one of the two was not read, or is of another device", "", {"IEC 61008-1", "trip at I_Δn", "memory"}},
    {"sums_equal", side::above, "lines", "independent readings of Zs scatter around Ze + (R1+R2)",
        "Zs may have been worked out as the sum and not read, which a record should say", "", own_derivation},
    {"last_digits", side::above, "readings", "last digits of independent readings are spread evenly",
        "last digits heap on 0 and 5: rounded or estimated by eye", "", own_derivation},
    {"repeats", side::above, "readings", "independent readings repeat no more often than their spread lets them",
        "the same figure stands more often than readings would repeat it", "", own_derivation},
    {"rows_copied", side::above, "figures alike", "two circuits share no more figures of resistance and insulation than chance and alike circuits give them",
        "the one row may have been copied from the other", "", own_derivation}};

struct relation_result {
  record_relation relation = record_relation::loop_sum;
  std::optional<std::size_t> circuit{};  ///< none: of the board or of all circuits
  std::string column{};                  ///< of a pattern: which readings
  double residual = no_number, standard_uncertainty = no_number, z = no_number;
  double p_value = 1.0, holm_p_value = 1.0;
  double log10_ratio = no_number;  ///< of a pattern: how much likelier it is where readings were copied or worked out
  enum class outcome : unsigned char { agrees, query, contradiction, improbable_pattern } is = outcome::agrees;
  std::string text{};
};
struct missing_item {
  std::optional<std::size_t> circuit{};
  std::string item{}, text{};
};
struct record_result {
  std::vector<relation_result> relations{};
  std::vector<missing_item> missing{};       ///< not proved, never a pass
  std::vector<std::string> not_compared{};   ///< relations that lacked a reading
  std::size_t compared = 0, contradictions = 0, patterns = 0, queries = 0;
  double insulation_parallel_mohm = no_number;  ///< of the circuits whose insulation is a number; those over range are left out
  std::vector<std::string> cautions{};
  std::string text{};
};

/// Probability that two independent honest readings with a standard deviation show the same figure on a display that steps: q/(2 σ √π),
/// for steps that are small against the deviation.
inline double chance_of_repeat(double step, double standard_deviation) {
  return std::min(1.0, step / (2.0 * standard_deviation * 1.7724538509055160273));
}
/// P(at least k of n) of independent events of probability p.
inline double binomial_tail(std::size_t n, std::size_t k, double p) {
  if (k == 0) return 1.0;
  if (!(p > 0.0)) return 0.0;
  if (p >= 1.0) return 1.0;
  double log_term = static_cast<double>(n) * log1p(-p), sum = 0.0;
  for (std::size_t i = 0; i <= n; ++i) {
    if (i >= k) sum += exp(log_term);
    if (i < n) log_term += log(static_cast<double>(n - i) / static_cast<double>(i + 1) * p / (1.0 - p));
  }
  return std::min(1.0, sum);
}
/// P(at least k) of a Poisson variable.
inline double poisson_tail(std::size_t k, double mean) {
  if (k == 0) return 1.0;
  if (!(mean > 0.0)) return 0.0;
  double log_term = -mean;
  for (std::size_t i = 1; i <= k; ++i) log_term += log(mean / static_cast<double>(i));
  double term = exp(log_term), sum = 0.0;
  for (std::size_t i = k; i < k + 2000 && term > 1e-18 * sum; ++i) {
    sum += term;
    term *= mean / static_cast<double>(i + 1);
  }
  return std::min(1.0, sum);
}
/// Holm's step-down: p-values adjusted for all of them together; each is rejected at a level where its adjusted value is at most that.
inline std::vector<double> holm(const std::vector<double>& p) {
  std::vector<std::size_t> order(p.size());
  for (std::size_t i = 0; i < p.size(); ++i) order[i] = i;
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return p[a] < p[b]; });
  std::vector<double> adjusted(p.size(), 1.0);
  double so_far = 0.0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    so_far = std::max(so_far, std::min(1.0, static_cast<double>(p.size() - i) * p[order[i]]));
    adjusted[order[i]] = so_far;
  }
  return adjusted;
}

namespace detail {

class record_analysis {
 public:
  record_analysis(const std::vector<circuit_record>& records, const board_record& board, double level)
      : circuits_(records), board_(board), level_(level) {}

  record_result run() {
    demand();
    for (std::size_t i = 0; i < circuits_.size(); ++i) of_circuit(i);
    of_board();
    patterns();
    copied_rows();
    decide();
    missing();
    words();
    return std::move(out_);
  }

 private:
  const std::vector<circuit_record>& circuits_;
  const board_record& board_;
  double level_;
  record_result out_;
  using R = record_relation;

  static bool is_value(const reading& r) { return r.is == reading::state::value; }
  std::string name(std::size_t i) const { return circuits_[i].name.empty() ? "circuit " + std::to_string(i + 1) : "\"" + circuits_[i].name + "\""; }

  // ---- what is refused
  static void demand_reading(const reading& r, const std::string& what, double most, std::string_view unit, std::string_view slip) {
    if (!r.has_number()) return;
    const std::string who = "test_record_consistency: " + what;
    if (is_nan(r.number)) throw range_error(who + " is no number; leave out what was not measured");
    if (!(r.number >= 0.0) || !(r.number <= most))
      throw range_error(who + " = " + number_text(r.number) + " " + std::string(unit) + ": from 0 to " + number_text(most) + " " + std::string(unit) +
          std::string(slip));
  }
  void demand() const {
    const auto fail = [](const std::string& t) { throw range_error("test_record_consistency: " + t); };
    if (circuits_.empty()) fail("circuits: at least one");
    if (circuits_.size() > most_circuits) fail("circuits: " + std::to_string(circuits_.size()) + " of them; at most 200");
    if (!(level_ > 0.0 && level_ <= 0.5)) fail("level: above 0, at most 0.5");
    demand_reading(board_.external_loop_ohm, "board.external_loop_ohm", 1e5, "Ω", "; was it read in mΩ?");
    demand_reading(board_.insulation_line_cpc_mohm, "board.insulation_line_cpc_mohm", 1e6, "MΩ", "; was it read in kΩ?");
    demand_reading(board_.short_circuit_current_a, "board.short_circuit_current_a", 1e6, "A", "");
    demand_reading(board_.earth_fault_current_a, "board.earth_fault_current_a", 1e6, "A", "");
    if (!(board_.nominal_voltage_v >= 50.0 && board_.nominal_voltage_v <= 1000.0)) fail("board.nominal_voltage_v: line to earth, from 50 to 1000 V");
    for (std::size_t i = 0; i < circuits_.size(); ++i) {
      const auto& c = circuits_[i];
      const std::string at = "circuits[" + std::to_string(i) + "].";
      for (const auto& [r, n] : {std::pair{&c.line_plus_cpc_ohm, "line_plus_cpc_ohm"}, {&c.cpc_ohm, "cpc_ohm"},
                                 {&c.line_end_to_end_ohm, "line_end_to_end_ohm"}, {&c.neutral_end_to_end_ohm, "neutral_end_to_end_ohm"},
                                 {&c.cpc_end_to_end_ohm, "cpc_end_to_end_ohm"}, {&c.loop_ohm, "loop_ohm"}})
        demand_reading(*r, at + n, 1e5, "Ω", "; was it read in mΩ?");
      for (const auto& [r, n] : {std::pair{&c.insulation_line_cpc_mohm, "insulation_line_cpc_mohm"},
                                 {&c.insulation_line_neutral_mohm, "insulation_line_neutral_mohm"},
                                 {&c.insulation_neutral_cpc_mohm, "insulation_neutral_cpc_mohm"}})
        demand_reading(*r, at + n, 1e6, "MΩ", "; was it read in kΩ?");
      demand_reading(c.length_m, at + "length_m", 1e4, "m", "; was it mm?");
      demand_reading(c.fault_current_a, at + "fault_current_a", 1e6, "A", "");
      demand_reading(c.rcd_trip_1x_ms, at + "rcd_trip_1x_ms", 1e4, "ms", "");
      demand_reading(c.rcd_trip_5x_ms, at + "rcd_trip_5x_ms", 1e4, "ms", "");
      demand_reading(c.rcd_trip_half_ms, at + "rcd_trip_half_ms", 1e4, "ms", "");
      demand_reading(c.rcd_ramp_ma, at + "rcd_ramp_ma", 1e5, "mA", "");
      if (!is_nan(c.rcd_residual_ma) && !(c.rcd_residual_ma >= 1.0 && c.rcd_residual_ma <= 1e5))
        fail(at + "rcd_residual_ma = " + number_text(c.rcd_residual_ma) + " mA: from 1 to 100000 mA; was it A?");
      for (const auto& [x, n] : {std::pair{c.line_mohm_per_m, "line_mohm_per_m"}, {c.cpc_mohm_per_m, "cpc_mohm_per_m"}})
        if (!is_nan(x) && !(x > 0.05 && x <= 200.0)) fail(at + n + " = " + number_text(x) + " mΩ/m: from 0.05 to 200 (2.5 mm² of copper has 7.41)");
      if (!is_nan(c.conductor_temperature_c) && !(c.conductor_temperature_c >= -40.0 && c.conductor_temperature_c <= 120.0))
        fail(at + "conductor_temperature_c must be from -40 to 120 °C");
    }
  }

  // ---- numbers with their doubt
  /// A reading with the instrument's statement; without one, the worst case of the class and a scatter of its own.
  static measured number(const reading& r, reads kind, const std::string& label) {
    measured m = to_measured(r, kind, label);
    if (!r.stated_for(kind)) {
      const double own = kind == reads::continuity ? 0.0105 : kind == reads::loop_impedance ? 0.02 + 0.01 * r.number : kind == reads::insulation ? 0.05 * r.number
                         : kind == reads::rcd_time ? 1.0 + 0.02 * r.number : kind == reads::current ? 0.02 * r.number : 0.0;
      m.add(label + ", scatter", own);
    }
    if (!(m.standard_uncertainty() > 0.0)) m.add(label + ", rounding", std::max(1e-6, 1e-3 * r.number));
    return m;
  }
  static double factor(const circuit_record& c) {
    return call(resistance_at_temperature, 1.0, is_nan(c.conductor_temperature_c) ? 20.0 : c.conductor_temperature_c, 0.00393);
  }
  static bool conductors(const circuit_record& c) { return !is_nan(c.line_mohm_per_m) && !is_nan(c.cpc_mohm_per_m); }

  void lacks(std::size_t i, R r, std::string_view needs) {
    out_.not_compared.push_back(name(i) + ": " + std::string(record_relations[static_cast<std::size_t>(r)].text) + ": needs " + std::string(needs));
  }
  void compare(R r, std::optional<std::size_t> circuit, const measured& residual) {
    relation_result one;
    one.relation = r;
    one.circuit = circuit;
    one.residual = residual.value;
    one.standard_uncertainty = residual.standard_uncertainty();
    one.z = one.residual / one.standard_uncertainty;
    const double above = normal_cdf(-one.z), below = normal_cdf(one.z);
    switch (record_relations[static_cast<std::size_t>(r)].side) {
      case side::above: one.p_value = above; break;
      case side::below: one.p_value = below; break;
      default: one.p_value = std::min(1.0, 2.0 * std::min(above, below));
    }
    out_.relations.push_back(std::move(one));
  }
  static measured with_slopes(double value, std::initializer_list<std::pair<double, const measured*>> terms) {
    measured m(value);
    for (const auto& [slope, x] : terms)
      for (const auto& p : x->parts) m.add(p.source, slope * p.u);
    return m;
  }

  void of_circuit(std::size_t i) {
    const auto& c = circuits_[i];
    const std::string who = "circuit " + std::to_string(i + 1) + ", ";
    const auto ohm = [&](const reading& r, const char* what) { return number(r, reads::continuity, who + what); };
    const bool loop = is_value(c.loop_ohm), sum = is_value(c.line_plus_cpc_ohm);
    const measured zs = loop ? number(c.loop_ohm, reads::loop_impedance, who + "Zs") : measured();
    const measured r12 = sum ? ohm(c.line_plus_cpc_ohm, "R1+R2") : measured();
    const measured ze = is_value(board_.external_loop_ohm) ? number(board_.external_loop_ohm, reads::loop_impedance, "Ze") : measured();
    if (loop && sum && is_value(board_.external_loop_ohm)) {
      measured residual = zs - ze - r12;
      if (c.loop_method != loop_method::high_current) {  // such a test reads up to 0.2 Ω high
        residual.value -= 0.1;
        residual.add(who + "no-trip test", 0.2 / 3.4641016151377545871);
      }
      compare(R::loop_sum, i, residual);
      if (c.loop_method != loop_method::high_current) out_.relations.back().residual += 0.1;
    } else {
      lacks(i, R::loop_sum, "loop_ohm, line_plus_cpc_ohm and board.external_loop_ohm");
    }
    if (loop && sum && is_value(c.cpc_ohm)) {
      compare(R::loop_above_line, i, zs - r12 + ohm(c.cpc_ohm, "R2"));
    } else if (loop && sum && conductors(c)) {
      const double share = c.line_mohm_per_m / (c.line_mohm_per_m + c.cpc_mohm_per_m);
      compare(R::loop_above_line, i, zs - share * r12);
    } else {
      lacks(i, R::loop_above_line, "loop_ohm, line_plus_cpc_ohm, and cpc_ohm or the conductors");
    }
    if (sum && is_value(c.cpc_ohm) && conductors(c) && c.kind != circuit_kind::ring) {
      const double share = c.cpc_mohm_per_m / (c.line_mohm_per_m + c.cpc_mohm_per_m);
      measured residual = ohm(c.cpc_ohm, "R2") - share * r12;
      residual.add(who + "cores of the cable", cpc_against_table * (1.0 - share) * c.cpc_ohm.number);
      compare(R::cpc_share, i, residual);
    } else if (c.kind != circuit_kind::ring) {
      lacks(i, R::cpc_share, "cpc_ohm, line_plus_cpc_ohm and the conductors");
    }
    const bool r1 = is_value(c.line_end_to_end_ohm), rn = is_value(c.neutral_end_to_end_ohm), r2 = is_value(c.cpc_end_to_end_ohm);
    const bool ring = c.kind == circuit_kind::ring || r1 || rn || r2;
    const measured m1 = r1 ? ohm(c.line_end_to_end_ohm, "r1") : measured();
    const measured mn = rn ? ohm(c.neutral_end_to_end_ohm, "rn") : measured();
    const measured m2 = r2 ? ohm(c.cpc_end_to_end_ohm, "r2") : measured();
    if (ring) {
      if (r1 && rn) {
        measured residual = m1 - mn;
        residual.add(who + "cores of the cable", neutral_against_line * m1.value);
        compare(R::ring_line_neutral, i, residual);
      } else {
        lacks(i, R::ring_line_neutral, "line_end_to_end_ohm and neutral_end_to_end_ohm");
      }
      if (r1 && r2 && conductors(c)) {
        measured residual = m2 - c.cpc_mohm_per_m / c.line_mohm_per_m * m1;
        residual.add(who + "cores of the cable", cpc_against_table * m2.value);
        compare(R::ring_cpc_line, i, residual);
      } else {
        lacks(i, R::ring_cpc_line, "line_end_to_end_ohm, cpc_end_to_end_ohm and the conductors");
      }
      if (r1 && r2 && sum && m1.value + m2.value > 0.0) {
        const double s = m1.value + m2.value;
        compare(R::ring_cross_low, i,
                with_slopes(r12.value - m1.value * m2.value / s, {{1.0, &r12}, {-square(m2.value / s), &m1}, {-square(m1.value / s), &m2}}));
        if (conductors(c)) {
          const double spur = 15.0 * (c.line_mohm_per_m + c.cpc_mohm_per_m) / 1000.0;
          measured residual = with_slopes(r12.value - 0.25 * s - 0.5 * spur, {{1.0, &r12}, {-0.25, &m1}, {-0.25, &m2}});
          residual.add(who + "spur", spur / 3.4641016151377545871);
          compare(R::ring_cross_high, i, residual);
          out_.relations.back().residual += 0.5 * spur;
        }
      } else {
        lacks(i, R::ring_cross_low, "line_end_to_end_ohm, cpc_end_to_end_ohm and line_plus_cpc_ohm");
      }
    }
    if (is_value(c.length_m) && conductors(c) && (ring ? r1 : sum)) {
      const double ohm_per_m = (ring ? c.line_mohm_per_m : c.line_mohm_per_m + c.cpc_mohm_per_m) * factor(c) * share_of_tabulated / 1000.0;
      const measured& r = ring ? m1 : r12;
      measured residual = with_slopes(r.value / ohm_per_m - c.length_m.number, {{1.0 / ohm_per_m, &r}});
      const double by = r.value / ohm_per_m;
      residual.add(who + "resistance of one metre", share_of_tabulated_doubt * by);
      residual.add(who + "conductor temperature", 0.00393 * (is_nan(c.conductor_temperature_c) ? 5.0 : 2.0) / 1.7320508075688772 * by);
      if (c.length_m.stated_for(reads::length)) {
        const measured length = to_measured(c.length_m, reads::length, who + "length");
        for (const auto& p : length.parts) residual.add(p.source, -p.u);
      } else {
        residual.add(who + "length", 0.2 / 1.7320508075688772 * c.length_m.number);
      }
      compare(R::length, i, residual);
    } else {
      lacks(i, R::length, "length_m, the conductors and line_end_to_end_ohm of a ring or line_plus_cpc_ohm of a radial");
    }
    if (is_value(c.fault_current_a) && loop && zs.value > 0.0) {
      const measured current = number(c.fault_current_a, reads::current, who + "fault current");
      const double ratio = current.value * zs.value / board_.nominal_voltage_v;
      measured residual = with_slopes(ratio - 1.0, {{zs.value / board_.nominal_voltage_v, &current}, {current.value / board_.nominal_voltage_v, &zs}});
      residual.add(who + "voltage", 0.06 / 1.7320508075688772);
      compare(R::fault_current, i, residual);
    }
    const reading& origin = is_value(board_.earth_fault_current_a) ? board_.earth_fault_current_a : board_.short_circuit_current_a;
    if (is_value(c.fault_current_a) && is_value(origin)) {
      measured residual =
          number(c.fault_current_a, reads::current, who + "fault current") - number(origin, reads::current, "fault current at the board");
      residual.add(who + "voltage", 0.03 * c.fault_current_a.number);
      compare(R::origin_current, i, residual);
    }
    if (is_value(c.rcd_trip_1x_ms) && is_value(c.rcd_trip_5x_ms)) {
      measured residual = number(c.rcd_trip_5x_ms, reads::rcd_time, who + "time at 5x") - number(c.rcd_trip_1x_ms, reads::rcd_time, who + "time at 1x");
      residual.add(who + "half-cycle", 3.0);
      compare(R::rcd_times, i, residual);
    }
    if (c.rcd == rcd_kind::delayed && is_value(c.rcd_trip_1x_ms)) {
      measured residual = number(c.rcd_trip_1x_ms, reads::rcd_time, who + "time at 1x");
      residual.value -= 130.0;
      compare(R::rcd_delay, i, residual);
    }
    of_rcd(i, who);
  }

  /// Half the rated current, and a current that rises, against what the device did at the rated one.
  void of_rcd(std::size_t i, const std::string& who) {
    const auto& c = circuits_[i];
    const bool once = is_value(c.rcd_trip_1x_ms), never = c.rcd_trip_1x_ms.is == reading::state::no_trip;
    if (is_value(c.rcd_trip_half_ms) && (once || never)) {
      measured residual = number(c.rcd_trip_half_ms, reads::rcd_time, who + "time at 0.5x");
      // no trip at the rated current: it was on for 300 ms at least
      residual = once ? residual - number(c.rcd_trip_1x_ms, reads::rcd_time, who + "time at 1x") : residual - measured(300.0);
      residual.add(who + "half-cycle at 0.5x", 10.0 / 1.7320508075688772);
      compare(R::rcd_half_time, i, residual);
    }
    if (!is_value(c.rcd_ramp_ma) || is_nan(c.rcd_residual_ma)) return;
    const measured share = (1.0 / c.rcd_residual_ma) * number(c.rcd_ramp_ma, reads::current, who + "rising current");
    const auto against = [&](R r, double end) {
      measured residual = share - measured(end);
      residual.add(who + "steps of the rising current, and leakage", 0.1 / 1.7320508075688772);
      compare(r, i, residual);
    };
    if (c.rcd_trip_half_ms.is == reading::state::no_trip) against(R::rcd_ramp_low, 0.5);
    if (once) against(R::rcd_ramp_high, 1.0);
  }

  void of_board() {
    if (is_value(board_.earth_fault_current_a) && is_value(board_.external_loop_ohm) && board_.external_loop_ohm.number > 0.0) {
      const measured current = number(board_.earth_fault_current_a, reads::current, "earth fault current at the board");
      const measured ze = number(board_.external_loop_ohm, reads::loop_impedance, "Ze");
      measured residual = with_slopes(current.value * ze.value / board_.nominal_voltage_v - 1.0,
                                      {{ze.value / board_.nominal_voltage_v, &current}, {current.value / board_.nominal_voltage_v, &ze}});
      residual.add("voltage at the board", 0.06 / 1.7320508075688772);
      compare(R::board_fault_current, {}, residual);
    }
    if (board_.earthing == earthing::tn_c_s && is_value(board_.earth_fault_current_a) && is_value(board_.short_circuit_current_a) &&
        board_.short_circuit_current_a.number > 0.0) {
      const measured e = number(board_.earth_fault_current_a, reads::current, "earth fault current at the board");
      const measured s = number(board_.short_circuit_current_a, reads::current, "short-circuit current at the board");
      measured residual = with_slopes(e.value / s.value - 1.0, {{1.0 / s.value, &e}, {-e.value / square(s.value), &s}});
      residual.add("clamps and leads", 0.08);
      compare(R::board_currents, {}, residual);
    }
    measured conductance(0.0);
    bool any = false;
    for (std::size_t i = 0; i < circuits_.size(); ++i) {
      const auto& r = circuits_[i].insulation_line_cpc_mohm;
      if (!(is_value(r) && r.number > 0.0)) continue;
      const measured m = number(r, reads::insulation, "circuit " + std::to_string(i + 1) + ", insulation");
      conductance = conductance + with_slopes(1.0 / m.value, {{-1.0 / square(m.value), &m}});
      any = true;
    }
    if (!any) return;
    out_.insulation_parallel_mohm = 1.0 / conductance.value;
    const auto& b = board_.insulation_line_cpc_mohm;
    if (!(is_value(b) || b.is == reading::state::above) || !(b.number > 0.0)) return;
    // over range is at least that; circuits over range conduct nothing here, in favour of the record
    const measured whole = number(b, reads::insulation, "board, insulation");
    compare(R::insulation_parallel, {},
            with_slopes(log(whole.value * conductance.value), {{1.0 / whole.value, &whole}, {1.0 / conductance.value, &conductance}}));
  }

  // ---- patterns over many readings. Times of RCDs are left out: one device stands in many rows with its one time.
  struct column_of {
    const char* name;
    reading circuit_record::*is;
    reads kind;
    double step;
  };
  static constexpr column_of columns[] = {{"loop_ohm", &circuit_record::loop_ohm, reads::loop_impedance, 0.01},
                                          {"line_plus_cpc_ohm", &circuit_record::line_plus_cpc_ohm, reads::continuity, 0.01},
                                          {"cpc_ohm", &circuit_record::cpc_ohm, reads::continuity, 0.01}};
  static constexpr double end_of_fine_display = 20.0;  // from here on a display may step by 0.1 Ω
  static double whole(double x, double step) { return static_cast<double>(static_cast<long long>(x / step + 0.5)); }
  void pattern(R r, std::string column, double count, double p, double log10_ratio) {
    relation_result one;
    one.relation = r;
    one.column = std::move(column);
    one.residual = count;
    one.p_value = std::clamp(p, 0.0, 1.0);
    one.log10_ratio = log10_ratio;
    out_.relations.push_back(std::move(one));
  }
  /// log10 of the likelihood of k of n at its own share to that at p.
  static double binomial_ratio(std::size_t n, std::size_t k, double p) {
    const double share = static_cast<double>(k) / static_cast<double>(n);
    double nats = 0.0;
    if (k > 0) nats += static_cast<double>(k) * log(share / p);
    if (k < n) nats += static_cast<double>(n - k) * log((1.0 - share) / (1.0 - p));
    return share > p ? nats / 2.302585092994046 : 0.0;
  }
  void patterns() {
    // Zs that is the sum to the last digit, line by line
    std::size_t lines = 0, equal = 0;
    if (is_value(board_.external_loop_ohm))
      for (const auto& c : circuits_) {
        if (!is_value(c.loop_ohm) || !is_value(c.line_plus_cpc_ohm) || !(c.line_plus_cpc_ohm.number > 0.0) ||
            !(c.loop_ohm.number < end_of_fine_display)) continue;
        ++lines;
        equal += fabs(c.loop_ohm.number - board_.external_loop_ohm.number - c.line_plus_cpc_ohm.number) < 0.005;
      }
    if (lines >= least_lines_of_a_sum) {
      constexpr double chance = 0.4;  // three readings that scatter by half a last digit each, and are rounded, meet in 0.38 of cases
      pattern(R::sums_equal, "loop_ohm", static_cast<double>(equal), binomial_tail(lines, equal, chance), binomial_ratio(lines, equal, chance));
    }
    for (const auto& k : columns) {
      std::vector<double> x;
      double step = k.step;
      for (const auto& c : circuits_)
        if (const reading& r = c.*k.is; is_value(r) && r.number < end_of_fine_display) {
          x.push_back(r.number);
          if (const auto* stated = r.stated_for(k.kind)) step = std::max(step, stated->resolution);
        }
      if (x.size() < least_readings_of_a_pattern) continue;
      // a coarser display than usual, or a finer one
      const double coarse = 10.0 * step;
      if (std::all_of(x.begin(), x.end(), [&](double v) { return fabs(v - coarse * whole(v, coarse)) <= 1e-6 * coarse; })) step = coarse;
      for (int finer = 0; finer < 3; ++finer)
        if (std::any_of(x.begin(), x.end(), [&](double v) { return fabs(v - step * whole(v, step)) > 1e-6 * step + 1e-12 * v; })) step *= 0.1;
      const std::size_t n = x.size();
      const auto [low, high] = std::minmax_element(x.begin(), x.end());
      if (*high - *low >= 20.0 * step) {
        std::size_t heaped = 0;
        for (const double v : x) heaped += static_cast<long long>(whole(v, step)) % 5 == 0;
        pattern(R::last_digits, k.name, static_cast<double>(heaped), binomial_tail(n, heaped, 0.2), binomial_ratio(n, heaped, 0.2));
      }
      // repeated figures against a smooth density of the readings themselves
      std::sort(x.begin(), x.end());
      std::size_t repeated = 0;
      for (std::size_t i = 1; i < n; ++i) repeated += whole(x[i], step) == whole(x[i - 1], step);
      double mean = 0.0, sd = 0.0;
      for (const double v : x) mean += v / static_cast<double>(n);
      for (const double v : x) sd += square(v - mean) / static_cast<double>(n - 1);
      sd = sqrt(sd);
      const double width = std::max(3.0 * step, 0.5 * sd * exp(-0.2 * log(static_cast<double>(n))));
      double expected = 0.0;
      for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < i; ++j) expected += step / width * job::detail::normal_density((x[i] - x[j]) / width);
      const double k_ = static_cast<double>(repeated);
      const double nats = k_ > expected ? k_ * log(k_ / expected) - k_ + expected : 0.0;
      pattern(R::repeats, k.name, k_, poisson_tail(repeated, expected), nats / 2.302585092994046);
    }
  }

  // ---- a row copied from another. Resistances of alike circuits are alike, and so are figures that follow from one another: only the first that
  // agrees counts in full. Insulation of alike circuits is not alike; so it is what carries weight here. Times, currents and lengths are left out.
  static constexpr reading circuit_record::*ohm_columns[] = {&circuit_record::line_plus_cpc_ohm, &circuit_record::cpc_ohm, &circuit_record::line_end_to_end_ohm,
      &circuit_record::neutral_end_to_end_ohm, &circuit_record::cpc_end_to_end_ohm, &circuit_record::loop_ohm};
  static constexpr reading circuit_record::*insulation_columns[] = {&circuit_record::insulation_line_cpc_mohm, &circuit_record::insulation_line_neutral_mohm,
      &circuit_record::insulation_neutral_cpc_mohm};
  static constexpr std::size_t least_rows = 4;
  static constexpr double chance_of_a_follower = 0.5, least_chance_of_insulation = 0.1;
  static bool alike(double a, double b) { return fabs(a - b) <= 1e-9 * std::max(a, b); }
  /// Chance that another circuit shows the figure of `i` in a column, by a smooth density of the column; `j` agrees with it already.
  double chance_of_figure(reading circuit_record::*column, std::size_t i, std::size_t j, bool logarithmic) const {
    std::vector<double> all, others;
    double step = logarithmic ? 1e6 : 0.01;
    const double v = (circuits_[i].*column).number;
    if (!(v > 0.0)) return 1.0;
    for (std::size_t k = 0; k < circuits_.size(); ++k) {
      const reading& r = circuits_[k].*column;
      if (!is_value(r) || !(r.number > 0.0)) continue;
      if (logarithmic)  // the coarsest step that its neighbours in size fit, as the display is not stated
        while (step > 0.001 && r.number > 0.1 * v && r.number < 10.0 * v && fabs(r.number - step * whole(r.number, step)) > 1e-6 * step + 1e-12 * r.number) step *= 0.1;
      const double x = logarithmic ? log(r.number) : r.number;
      all.push_back(x);
      if (k != i && k != j) others.push_back(x);
    }
    if (all.size() < least_rows) return 0.2;
    const double at = logarithmic ? log(v) : v, size = logarithmic ? step / v : step;
    const double n = static_cast<double>(all.size());
    double mean = 0.0, sd = 0.0;
    for (const double x : all) mean += x / n;
    for (const double x : all) sd += square(x - mean) / (n - 1.0);
    const double fine = logarithmic ? std::max(0.05, size) : size, wide = std::max(fine, 0.5 * sqrt(sd) * exp(-0.2 * log(n)));
    const auto density = [&](const std::vector<double>& points, double width) {
      double sum = 0.0;
      for (const double x : points) sum += job::detail::normal_density((at - x) / width);
      return sum / (static_cast<double>(points.size()) * width);
    };
    double most = density(all, wide);
    for (const double width : {fine, 3.0 * fine})
      if (width < wide) most = std::max(most, density(others, width));
    return std::min(1.0, size * most);
  }
  struct pair_of_rows {
    std::size_t i, j, equal, shared;
    double chance;
  };
  void copied_rows() {
    if (circuits_.size() < least_rows) return;
    std::vector<pair_of_rows> found;
    std::size_t pairs = 0;
    for (std::size_t i = 0; i < circuits_.size(); ++i)
      for (std::size_t j = i + 1; j < circuits_.size(); ++j) {
        pair_of_rows p{i, j, 0, 0, 1.0};
        const auto look = [&](auto& columns_, bool insulation) {
          std::vector<double> chances;
          for (const auto column : columns_) {
            const reading &a = circuits_[i].*column, &b = circuits_[j].*column;
            if (!is_value(a) || !is_value(b) || (!insulation && !(a.number < end_of_fine_display))) continue;
            ++p.shared;
            if (!alike(a.number, b.number)) continue;
            ++p.equal;
            chances.push_back(chance_of_figure(column, i, j, insulation));
          }
          std::sort(chances.begin(), chances.end());
          for (std::size_t k = 0; k < chances.size(); ++k)
            p.chance *= k == 0 ? chances[k] : std::max(chances[k], insulation ? least_chance_of_insulation : chance_of_a_follower);
        };
        look(ohm_columns, false);
        look(insulation_columns, true);
        if (p.shared < 2) continue;
        ++pairs;
        if (p.equal >= 2) found.push_back(p);
      }
    if (pairs == 0) return;
    if (found.empty()) return pattern(R::rows_copied, "", 0.0, 1.0, 0.0);
    // which of the shared figures agree was not laid down beforehand
    const auto p_value = [&](const pair_of_rows& p) {
      double ways = 1.0;
      for (std::size_t k = 0; k < p.equal; ++k) ways *= static_cast<double>(p.shared - k) / static_cast<double>(k + 1);
      return std::min(1.0, static_cast<double>(pairs) * ways * p.chance);
    };
    std::stable_sort(found.begin(), found.end(), [&](const auto& a, const auto& b) { return p_value(a) < p_value(b); });
    std::string which = name(found[0].i) + " and " + name(found[0].j);
    for (std::size_t k = 1; k < found.size() && k < 5 && p_value(found[k]) < 0.001; ++k) which += ", " + name(found[k].i) + " and " + name(found[k].j);
    pattern(R::rows_copied, which, static_cast<double>(found[0].equal), p_value(found[0]), -log(std::max(1e-300, found[0].chance)) / 2.302585092994046);
  }

  static bool is_pattern(R r) { return r == R::sums_equal || r == R::last_digits || r == R::repeats || r == R::rows_copied; }
  void decide() {
    std::vector<double> p;
    for (const auto& r : out_.relations) p.push_back(r.p_value);
    const auto adjusted = holm(p);
    using O = relation_result::outcome;
    for (std::size_t i = 0; i < p.size(); ++i) {
      auto& r = out_.relations[i];
      r.holm_p_value = adjusted[i];
      r.is = adjusted[i] <= level_ ? (is_pattern(r.relation) ? O::improbable_pattern : O::contradiction) : p[i] <= 0.0455 ? O::query : O::agrees;
      out_.contradictions += r.is == O::contradiction;
      out_.patterns += r.is == O::improbable_pattern;
      out_.queries += r.is == O::query;
      const auto& row = record_relations[static_cast<std::size_t>(r.relation)];
      const std::string who = r.circuit ? name(*r.circuit) + ": " : "";
      std::string& t = r.text;
      if (is_pattern(r.relation)) {
        t = (r.column.empty() ? "" : r.column + ": ") + std::string(row.text);
        if (r.is != O::agrees) t += "; here " + number_text(r.residual) + " " + std::string(row.unit);
        if (r.is == O::query) t += ": uncommon, but not beyond chance among so many comparisons";
        if (r.is == O::improbable_pattern)
          t += ": pattern improbable under independent measurement (log10 ratio " + number_text(static_cast<double>(static_cast<long long>(r.log10_ratio * 10.0 + 0.5)) / 10.0) +
               "); " + std::string(row.above) + ". Read some of them again";
      } else {
        t = who + std::string(row.text);
        if (r.is != O::agrees) t += r.is == O::contradiction ? "; not so here, which could mean: " : "; only just so here, which, if it is no chance, could mean: ";
        if (r.is != O::agrees) t += std::string(r.residual > 0.0 ? (row.above.empty() ? row.below : row.above) : (row.below.empty() ? row.above : row.below));
      }
      t += ".";
    }
    out_.compared = out_.relations.size();
  }

  void missing() {
    const auto lack = [&](std::optional<std::size_t> i, const reading& r, const char* item, const char* text) {
      if (r.has_number()) return;
      out_.missing.push_back({i, item, std::string(i ? name(*i) : "board") + ": " + text + ": not proved"});
    };
    lack({}, board_.external_loop_ohm, "external_loop_ohm", "Ze");
    if (!board_.short_circuit_current_a.has_number() && !board_.earth_fault_current_a.has_number())
      out_.missing.push_back({{}, "short_circuit_current_a", "board: prospective fault current: not proved"});
    for (std::size_t i = 0; i < circuits_.size(); ++i) {
      const auto& c = circuits_[i];
      if (!c.line_plus_cpc_ohm.has_number()) lack(i, c.cpc_ohm, "line_plus_cpc_ohm", "continuity of the protective conductor (R1+R2 or R2)");
      if (c.kind == circuit_kind::not_stated) out_.missing.push_back({i, "kind", name(i) + ": ring or radial: not stated"});
      if (c.kind == circuit_kind::ring) {
        lack(i, c.line_end_to_end_ohm, "line_end_to_end_ohm", "line of the ring end to end");
        lack(i, c.neutral_end_to_end_ohm, "neutral_end_to_end_ohm", "neutral of the ring end to end");
        lack(i, c.cpc_end_to_end_ohm, "cpc_end_to_end_ohm", "protective conductor of the ring end to end");
      }
      lack(i, c.insulation_line_cpc_mohm, "insulation_line_cpc_mohm", "insulation, line to protective conductor");
      lack(i, c.insulation_line_neutral_mohm, "insulation_line_neutral_mohm", "insulation, line to neutral");
      lack(i, c.insulation_neutral_cpc_mohm, "insulation_neutral_cpc_mohm", "insulation, neutral to protective conductor");
      if (c.polarity == polarity::not_read) out_.missing.push_back({i, "polarity", name(i) + ": polarity: not proved"});
      lack(i, c.loop_ohm, "loop_ohm", "Zs");
      if (c.rcd == rcd_kind::not_stated) out_.missing.push_back({i, "rcd", name(i) + ": whether there is an RCD: not stated"});
      else if (c.rcd != rcd_kind::none) {
        if (c.rcd_trip_1x_ms.is != reading::state::no_trip) lack(i, c.rcd_trip_1x_ms, "rcd_trip_1x_ms", "tripping time of the RCD");
      }
    }
  }

  void words() {
    std::string& t = out_.text;
    if (out_.compared == 0) {
      t = "Nothing could be compared: no two readings here belong to one relation. That is no pass.";
    } else {
      t = std::to_string(out_.compared) + (out_.compared == 1 ? " relation" : " relations") + " compared: " + std::to_string(out_.contradictions) +
          (out_.contradictions == 1 ? " contradiction, " : " contradictions, ") + std::to_string(out_.patterns) + (out_.patterns == 1 ? " improbable pattern, " : " improbable patterns, ") +
          std::to_string(out_.queries) + " to look at.";
      for (const auto& r : out_.relations)
        if (r.is == relation_result::outcome::contradiction || r.is == relation_result::outcome::improbable_pattern) t += " " + r.text;
      if (out_.contradictions +
          out_.patterns == 0) t += out_.queries == 0 ? " What was compared agrees within its doubt; that does not prove that it was measured well."
                                                                          : " What is to look at may be chance; the rest agrees within its doubt, which does not prove that it was measured well.";
    }
    if (!out_.missing.empty()) t += " " + std::to_string(out_.missing.size()) + (out_.missing.size() == 1 ? " item is" : " items are") + " missing: not proved.";
    auto& c = out_.cautions;
    c.push_back("A contradiction says that these numbers cannot all belong to the circuit as described, within their stated doubt; it does not say which one is wrong, or why.");
    c.push_back("The decisions hold for all relations together: an honest record is contradicted in at most " + number_text(level_ * 100.0) +
        " % of cases (Holm), if the doubts stated are true.");
    c.push_back("Zs below Ze + (R1+R2), and R2 below its share, are ordinary with parallel earth paths: they are not counted against a record.");
    bool assumed = false, scatter = false;
    for (const auto& r : circuits_) {
      for (const auto* x : {&r.line_plus_cpc_ohm, &r.line_end_to_end_ohm, &r.cpc_end_to_end_ohm})
        assumed = assumed || (x->has_number() && !x->stated_for(reads::continuity));
      assumed = assumed || (r.loop_ohm.has_number() && !r.loop_ohm.stated_for(reads::loop_impedance));
      scatter = scatter || (r.loop_ohm.has_number() && r.loop_method != loop_method::high_current);
    }
    if (assumed) c.push_back("Some readings name no instrument: 30 % of the reading is assumed for them, so that little can be contradicted. State the instruments.");
    if (scatter) c.push_back("Where a loop test was not stated to be of high current, Zs may read up to 0.2 Ω high (recalled from practice).");
  }
};

}  // namespace detail

/// Holds the readings of one board's circuits against each other. `level`: chance that an honest record is contradicted at all.
inline record_result test_record_consistency(const std::vector<circuit_record>& records, const board_record& board = {}, double level = 0.05) {
  return detail::record_analysis(records, board, level).run();
}

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Readings as they are taken: a value, over range, no trip, not measured; and what is known of the instrument.
// Core: the inputs of every check. Includes the standard library only.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>
#include "measured.hpp"

namespace makegood {
inline namespace v1 {

/// Where a statement comes from, and so how its figures become a standard uncertainty.
enum class statement_basis : unsigned char {
  stated,                ///< limits of error (u = a/√3), or expanded uncertainties where a coverage factor is stated (u = U/k)
  operating_2019,        ///< operating uncertainty B of IEC 61557-1:2019, stated with coverage factor 2: u = B/2
  operating_error_limit  ///< operating error of an older edition, read cautiously as a limit of error: u = B/√3
};

/// What an instrument's maker or calibration says about one of its functions, on one range. Limits are rectangular (u = a/√3)
/// unless a coverage factor is stated (u = U/k).
struct accuracy {
  double percent = 0.0;               ///< of the reading: the gain, common to all readings of one function and range
  double counts = 0.0;                ///< of the last digit
  double resolution = 0.0;            ///< one count: the last displayed place of the range, in the unit of the reading
  double limit = 0.0;                 ///< plus or minus, in the unit of the reading; common to all readings
  double standard_uncertainty = 0.0;  ///< in the unit of the reading
  double coverage_factor = 0.0;       ///< 0: percent, counts and limit are limits of error
  double range = 0.0;                 ///< the end of the range; 0: one range
  double leads_ohm = 0.0;             ///< resistance of leads that were not nulled: a bias
  double leads_standard_uncertainty_ohm = 0.0;  ///< of it; 0: anything from half of it to one and a half, assumed
  bool nulled = true;                 ///< false: the leads lie in the readings
  bool leads_left_in = false;         ///< true: reported only; false: subtracted, with their doubt
  bool common_offset = false;         ///< the counts are an offset common to all readings of one function and range
  statement_basis basis = statement_basis::stated;

  bool has_leads() const { return !nulled && leads_ohm > 0.0; }
  /// What is taken off a reading.
  double bias() const { return has_leads() && !leads_left_in ? leads_ohm : 0.0; }
  double leads_doubt() const { return leads_standard_uncertainty_ohm > 0.0 ? leads_standard_uncertainty_ohm : 0.5 * leads_ohm / 1.7320508075688772; }
};
/// An operating uncertainty in per cent of the reading (IEC 61557), read by its edition: from 2019 on with coverage factor 2, before
/// that as a limit of error. The verdict says which.
inline accuracy operating_uncertainty(double percent, int edition_year) {
  accuracy a;
  a.percent = percent;
  a.basis = edition_year >= 2019 ? statement_basis::operating_2019 : statement_basis::operating_error_limit;
  if (edition_year >= 2019) a.coverage_factor = 2.0;
  return a;
}
/// The largest operating uncertainties that the parts of IEC 61557 let an instrument have. All recalled, none read: confirm before relying on one.
struct operating_limit {
  int part;
  reads kind;
  double percent;
  std::string_view of;
  source from;
};
inline constexpr operating_limit operating_limits[] = {
    {2, reads::insulation, 30.0, "the reading, within the marked range", {"IEC 61557-2", "4.1", "memory"}},
    {3, reads::loop_impedance, 30.0, "the reading, within the marked range", {"IEC 61557-3", "4.1", "memory"}},
    {4, reads::continuity, 30.0, "the reading, within the marked range", {"IEC 61557-4", "4.1", "memory"}},
    {5, reads::resistance, 30.0, "the reading of an earth electrode, within the marked range", {"IEC 61557-5", "4.1", "memory"}},
    {6, reads::rcd_time, 10.0, "the limit of the tripping time", {"IEC 61557-6", "4", "memory"}},
    {6, reads::current, 10.0, "the rated residual current", {"IEC 61557-6", "4", "memory"}},
};

/// The worst case of a class of instrument, for readings that name none.
struct instrument_class {
  reads kind;
  std::string_view key;
  double percent;
  double limit;
  source from;
  std::string_view unnamed_gain, unnamed_limit;  ///< the error sources of an instrument without a name
};
#define MAKEGOOD_CLASS(kind, percent, limit, ...) \
  {reads::kind, #kind, percent, limit, source{__VA_ARGS__}, "an unnamed instrument, " #kind ", gain", "an unnamed instrument, " #kind ", limit"}
inline constexpr instrument_class instrument_classes[] = {
    MAKEGOOD_CLASS(continuity, 30.0, 0.0, "IEC 61557-4", "operating uncertainty within the marked range", "memory"),
    MAKEGOOD_CLASS(insulation, 30.0, 0.0, "IEC 61557-2", "operating uncertainty within the marked range", "memory"),
    MAKEGOOD_CLASS(loop_impedance, 30.0, 0.0, "IEC 61557-3", "operating uncertainty within the marked range", "memory"),
    MAKEGOOD_CLASS(rcd_time, 10.0, 0.0, "IEC 61557-6", "tripping time", "memory"),
    MAKEGOOD_CLASS(resistance, 2.0, 0.0, "multimeter, worst case", "", "common-practice"),
    MAKEGOOD_CLASS(temperature, 0.0, 2.0, "contact thermometer, worst case", "", "common-practice"),
    MAKEGOOD_CLASS(airflow, 10.0, 0.0, "vane anemometer in a hood, worst case", "", "common-practice"),
    MAKEGOOD_CLASS(length, 2.0, 0.0, "tape along a route, worst case", "", "common-practice"),
    MAKEGOOD_CLASS(voltage, 2.0, 0.0, "multimeter, worst case", "", "common-practice"),
    MAKEGOOD_CLASS(current, 5.0, 0.0, "clamp meter, worst case", "", "common-practice"),
};
#undef MAKEGOOD_CLASS
constexpr const instrument_class* class_of(reads kind) {
  for (const auto& c : instrument_classes)
    if (c.kind == kind) return &c;
  return nullptr;
}

/// The kind of reading by its word; nothing: there is none.
constexpr reads reads_of(std::string_view key) {
  for (const auto& c : instrument_classes)
    if (c.key == key) return c.kind;
  return reads::nothing;
}

/// What an argument is read with: as its descriptor says, or else by its unit. For readings whose instrument is known; a bare number of
/// an argument that is not read with an instrument stays without doubt.
inline reads read_with(const argument& a) {
  if (a.instrument != reads::nothing) return a.instrument;
  const std::string_view u = a.unit.symbol;
  if (u == unit::ohm.symbol) return reads::resistance;
  if (u == unit::megaohm.symbol) return reads::insulation;
  if (u == unit::volt.symbol) return reads::voltage;
  if (u == unit::ampere.symbol) return reads::current;
  if (u == unit::celsius.symbol) return reads::temperature;
  if (u == unit::metre.symbol) return reads::length;
  if (u == unit::litre_per_second.symbol) return reads::airflow;
  if (u == unit::millisecond.symbol) return reads::rcd_time;
  return reads::nothing;
}

/// Every kind, as words: "continuity", "insulation" ...
inline std::string reads_text() {
  std::string list;
  for (const auto& c : instrument_classes) list += (list.empty() ? "\"" : ", \"") + std::string(c.key) + "\"";
  return list;
}

/// An instrument: what is stated of each of its functions, range by range. A reading that names it takes the statement of its function,
/// on the smallest range that reaches the reading; what it does not state is the worst case of the class.
struct instrument {
  struct function {
    reads kind;
    accuracy statement;
  };
  std::string id;
  std::vector<function> functions{};

  const accuracy* statement_for(reads kind, double number) const {
    const accuracy* best = nullptr;
    const auto end = [](const accuracy& a) { return a.range > 0.0 ? a.range : beyond_measure; };
    bool best_reaches = false;
    for (const auto& f : functions) {
      if (f.kind != kind) continue;
      const accuracy& a = f.statement;
      const bool reaches = std::fabs(number) <= end(a);
      if (!best || (reaches ? !best_reaches || end(a) < end(*best) : !best_reaches && end(a) > end(*best))) {
        best = &a;
        best_reaches = reaches;
      }
    }
    return best;
  }
};

/// One reading, or the reason why there is no number.
struct reading {
  enum class state : unsigned char { value, above, below, no_trip, not_measured, pending };

  state is = state::not_measured;
  double number = no_number;  ///< the value, or the end of the range passed
  std::string instrument{};   ///< id; empty: not named
  std::optional<accuracy> statement{};  ///< of this reading; none: the instrument's
  std::shared_ptr<const v1::instrument> meter{};
  std::string label{};        ///< makes the reading's own error source unique
  std::string taken_at{};     ///< time, as written
  std::string kind{};         ///< measured, nameplate, estimated or told; empty: measured
  std::string supersedes{};   ///< what this reading replaces, and why
  std::string circuit_state{};
  std::string note{};
  double test_voltage_v = no_number;

  reading() = default;
  explicit reading(double x) : is(state::value), number(x) {}
  static reading above(double x) { return make(state::above, x); }
  static reading below(double x) { return make(state::below, x); }
  static reading no_trip() { return make(state::no_trip, no_number); }
  static reading not_measured() { return {}; }
  static reading pending() { return make(state::pending, no_number); }
  reading with(accuracy a, std::string instrument_id = "instrument") const {
    reading r = *this;
    r.statement = a;
    r.instrument = std::move(instrument_id);
    return r;
  }
  /// Read with an instrument whose statements are known.
  reading with(std::shared_ptr<const v1::instrument> known) const {
    reading r = *this;
    r.instrument = known->id;
    r.meter = std::move(known);
    return r;
  }
  /// The statement that holds for it as a reading of some kind; none: the worst case of the class.
  const accuracy* stated_for(reads kind_) const {
    if (statement) return &*statement;
    return meter ? meter->statement_for(kind_, number) : nullptr;
  }
  bool has_number() const { return is == state::value || is == state::above || is == state::below; }

 private:
  static reading make(state s, double x) {
    reading r;
    r.is = s;
    r.number = x;
    return r;
  }
};

/// The name of a state, as documents and arrays write it.
constexpr std::string_view state_text(reading::state s) {
  constexpr std::string_view names[] = {"value", "above", "below", "no_trip", "not_measured", "pending"};
  return names[static_cast<std::size_t>(s)];
}

/// The error sources of a reading: gain (common to all readings of that function and range of that instrument) and the reading's own part.
/// No statement: the worst case of the class; then the answer is true. fn(source, lasting, of_reading, size): the name, whether it outlives
/// the call, whether the size is a factor of the reading, the standard uncertainty.
template <class Fn>
bool each_source(const accuracy* stated, std::string_view instrument, std::string_view label, reads kind, std::string_view what, Fn fn) {
  constexpr double root3 = 1.7320508075688772;
  const auto* typical = class_of(kind);
  if (!stated) {
    if (!typical) return false;
    const auto tell = [&](std::string_view unnamed, std::string_view part, bool of_reading, double size) {
      if (instrument.empty()) fn(unnamed, true, of_reading, size);
      else fn(std::string(instrument) + ", " + std::string(typical->key) + std::string(part), false, of_reading, size);
    };
    if (typical->percent > 0.0) tell(typical->unnamed_gain, ", gain", true, typical->percent / 100.0 / root3);
    if (typical->limit > 0.0) tell(typical->unnamed_limit, ", limit", false, typical->limit / root3);
    return true;
  }
  const auto& a = *stated;
  std::string id(instrument.empty() ? std::string_view("an unnamed instrument") : instrument);
  id += ", ";
  id += typical ? typical->key : std::string_view("reading");
  const std::string leads = id + ", leads";  // the same leads, whatever the range
  if (a.range > 0.0) id += ", range " + number_text(a.range);
  const std::string own = id + ", " + std::string(label.empty() ? what : label);
  const double k = a.coverage_factor > 0.0 ? a.coverage_factor : root3;
  if (a.percent > 0.0) {
    fn(id + ", gain", false, true, a.percent / 100.0 / k);
    if (a.bias() > 0.0) fn(id + ", gain", false, false, a.percent / 100.0 / k * a.bias());  // of what was displayed, leads and all
  }
  if (a.counts > 0.0) fn(a.common_offset ? id + ", offset" : own + ", last digits", false, false, a.counts * a.resolution / k);
  else if (a.resolution > 0.0 && !(a.coverage_factor > 0.0)) fn(own + ", resolution", false, false, 0.5 * a.resolution / root3);
  if (a.limit > 0.0) fn(id + ", limit", false, false, a.limit / k);
  if (a.standard_uncertainty > 0.0) fn(own + ", stated", false, false, a.standard_uncertainty);
  if (a.bias() > 0.0) fn(leads, false, false, a.leads_doubt());
  return false;
}
/// The number of a reading with its error sources, corrected for leads that were not nulled.
inline measured to_measured(const reading& r, reads kind, std::string_view what) {
  const accuracy* stated = r.stated_for(kind);
  measured m(stated && stated->has_leads() ? r.number - stated->bias() : r.number);
  m.assumed = each_source(stated, r.instrument, r.label, kind, what, [&m](std::string_view source, bool, bool of_reading, double size) {
    m.add(std::string(source), of_reading ? size * m.value : size);
  });
  return m;
}

}  // namespace v1
}  // namespace makegood

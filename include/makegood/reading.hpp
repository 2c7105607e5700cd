// SPDX-License-Identifier: MIT
// Readings as they are taken: a value, over range, no trip, not measured; and what is known of the instrument.
// Core: the inputs of every check. Includes the standard library only.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include "measured.hpp"

namespace makegood {
inline namespace v1 {

/// What an instrument's maker or calibration says about one of its functions. Limits are rectangular (u = a/√3)
/// unless a coverage factor is stated (u = U/k).
struct accuracy {
  double percent = 0.0;               ///< of the reading
  double counts = 0.0;                ///< of the last digit
  double resolution = 0.0;            ///< one count, in the unit of the reading
  double limit = 0.0;                 ///< plus or minus, in the unit of the reading
  double standard_uncertainty = 0.0;  ///< in the unit of the reading
  double coverage_factor = 0.0;       ///< 0: percent, counts and limit are limits of error
};

/// The worst case of a class of instrument, for readings that name none.
struct instrument_class {
  reads kind;
  std::string_view key;
  double percent;
  double limit;
  source from;
};
inline constexpr instrument_class instrument_classes[] = {
    {reads::continuity, "continuity", 30.0, 0.0, {"IEC 61557-4", "operating uncertainty within the marked range", "memory"}},
    {reads::insulation, "insulation", 30.0, 0.0, {"IEC 61557-2", "operating uncertainty within the marked range", "memory"}},
    {reads::loop_impedance, "loop_impedance", 30.0, 0.0, {"IEC 61557-3", "operating uncertainty within the marked range", "memory"}},
    {reads::rcd_time, "rcd_time", 10.0, 0.0, {"IEC 61557-6", "tripping time", "memory"}},
    {reads::resistance, "resistance", 2.0, 0.0, {"multimeter, worst case", "", "common-practice"}},
    {reads::temperature, "temperature", 0.0, 2.0, {"contact thermometer, worst case", "", "common-practice"}},
    {reads::airflow, "airflow", 10.0, 0.0, {"vane anemometer in a hood, worst case", "", "common-practice"}},
    {reads::length, "length", 2.0, 0.0, {"tape along a route, worst case", "", "common-practice"}},
    {reads::voltage, "voltage", 2.0, 0.0, {"multimeter, worst case", "", "common-practice"}},
    {reads::current, "current", 5.0, 0.0, {"clamp meter, worst case", "", "common-practice"}},
};
constexpr const instrument_class* class_of(reads kind) {
  for (const auto& c : instrument_classes)
    if (c.kind == kind) return &c;
  return nullptr;
}

/// One reading, or the reason why there is no number.
struct reading {
  enum class state : unsigned char { value, above, below, no_trip, not_measured, pending };

  state is = state::not_measured;
  double number = no_number;  ///< the value, or the end of the range passed
  std::string instrument{};   ///< id; empty: not named
  std::optional<accuracy> statement{};
  std::string label{};        ///< makes the reading's own error source unique
  std::string taken_at{};     ///< time, as written
  std::string kind{};         ///< measured, nameplate, estimated or told; empty: measured
  std::string supersedes{};   ///< what this reading replaces, and why
  std::string circuit_state{};
  std::string note{};

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
  bool has_number() const { return is == state::value || is == state::above || is == state::below; }

 private:
  static reading make(state s, double x) {
    reading r;
    r.is = s;
    r.number = x;
    return r;
  }
};

/// The number of a reading with its error sources: gain (common to all readings of that function of that instrument) and
/// the reading's own part. No statement: the worst case of the class, marked as assumed.
inline measured to_measured(const reading& r, reads kind, std::string_view what) {
  measured m(r.number);
  const double size = std::fabs(r.number);
  std::string id = r.instrument.empty() ? std::string("an unnamed instrument") : r.instrument;
  const auto* typical = class_of(kind);
  id += ", ";
  id += typical ? typical->key : std::string_view("reading");
  std::string own = id + ", " + (r.label.empty() ? std::string(what) : r.label);
  constexpr double root3 = 1.7320508075688772;
  if (r.statement) {
    const auto& a = *r.statement;
    const double k = a.coverage_factor > 0.0 ? a.coverage_factor : root3;
    if (a.percent > 0.0) m.add(id + ", gain", a.percent / 100.0 * r.number / k);
    if (a.counts > 0.0) m.add(own + ", last digits", a.counts * a.resolution / k);
    else if (a.resolution > 0.0 && !(a.coverage_factor > 0.0)) m.add(own + ", resolution", 0.5 * a.resolution / root3);
    if (a.limit > 0.0) m.add(id + ", limit", a.limit / k);
    if (a.standard_uncertainty > 0.0) m.add(own + ", stated", a.standard_uncertainty);
  } else if (typical) {
    m.assumed = true;
    if (typical->percent > 0.0) m.add(id + ", gain", typical->percent / 100.0 * size / root3);
    if (typical->limit > 0.0) m.add(id + ", limit", typical->limit / root3);
  }
  return m;
}

}  // namespace v1
}  // namespace makegood

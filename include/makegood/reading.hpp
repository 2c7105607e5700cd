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

/// The name of a state, as documents and arrays write it.
constexpr std::string_view state_text(reading::state s) {
  constexpr std::string_view names[] = {"value", "above", "below", "no_trip", "not_measured", "pending"};
  return names[static_cast<std::size_t>(s)];
}

/// The error sources of a reading: gain (common to all readings of that function of that instrument) and the reading's own part.
/// No statement: the worst case of the class; then the answer is true. fn(source, lasting, of_reading, size): the name, whether it outlives
/// the call, whether the size is a factor of the reading, the standard uncertainty.
template <class Fn>
bool each_source(const std::optional<accuracy>& stated, std::string_view instrument, std::string_view label, reads kind, std::string_view what, Fn fn) {
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
  const std::string own = id + ", " + std::string(label.empty() ? what : label);
  const double k = a.coverage_factor > 0.0 ? a.coverage_factor : root3;
  if (a.percent > 0.0) fn(id + ", gain", false, true, a.percent / 100.0 / k);
  if (a.counts > 0.0) fn(own + ", last digits", false, false, a.counts * a.resolution / k);
  else if (a.resolution > 0.0 && !(a.coverage_factor > 0.0)) fn(own + ", resolution", false, false, 0.5 * a.resolution / root3);
  if (a.limit > 0.0) fn(id + ", limit", false, false, a.limit / k);
  if (a.standard_uncertainty > 0.0) fn(own + ", stated", false, false, a.standard_uncertainty);
  return false;
}
/// The number of a reading with its error sources.
inline measured to_measured(const reading& r, reads kind, std::string_view what) {
  measured m(r.number);
  m.assumed = each_source(r.statement, r.instrument, r.label, kind, what, [&m](std::string_view source, bool, bool of_reading, double size) {
    m.add(std::string(source), of_reading ? size * m.value : size);
  });
  return m;
}

}  // namespace v1
}  // namespace makegood

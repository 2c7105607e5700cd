// SPDX-License-Identifier: MIT
// A heated floor as a body that stores heat: materials, warming up, thermostats, rest.
// Subject: heating (models). Opt-in: includes the standard library's containers.
#pragma once
#include "conduction.hpp"
#include "materials.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

// ---- what floors are judged by -----------------------------------------------------------------------------------------

/// Surface temperatures that heated floors are judged by.
struct surface_mark {
  double limit_c;
  std::string_view text;
};
inline constexpr surface_mark surface_marks[] = {
    {29.0, "occupied area, room at 20 °C"}, {33.0, "bathroom, room at 24 °C"}, {35.0, "edge zone, where nobody stays"}};

// ---- what is handed in ---------------------------------------------------------------------------------------------------

struct floor_thermostat {
  enum class senses : unsigned char { nothing, air, floor, air_with_floor_limit };
  senses by = senses::nothing;   ///< nothing: the heater is on all the time
  double set_c = no_number;      ///< of the air, or of the floor
  double hysteresis_k = 1.0;     ///< the whole width: on at half of it below the set-point, off at half of it above
  double floor_limit_c = no_number, limit_hysteresis_k = 1.0;
  double air_offset_k = 0.0;     ///< what the sensed air is warmer than the room's
  double elsewhere_c = no_number;///< the sensed air is another room's, at this temperature
};
struct floor_setup {
  std::vector<floor_layer> layers{};       ///< from the surface down
  std::size_t heater_after = 1;            ///< how many layers lie above the heater
  double power_w_per_m2 = 0.0;
  double initial_c = 20.0;
  room_above room{};
  surface_loss loss{};
  space_below below{};
  double cover_resistance = 0.0, cover_ratio = 0.0;  ///< a rug or mat over part of the floor
  floor_thermostat thermostat{};
  std::size_t probe_after = no_layer;      ///< how many layers lie above the floor probe; left out: at the heater
  bool probe_covered = false;
  double duration_s = 14400.0;
  std::vector<double> times_s{};           ///< when the temperatures are wanted; empty: 48 of them, evenly
  double target_c = no_number;             ///< of the surface
  double error_k = 0.02;                   ///< asked for
  double wave_number_per_m = 0.0;          ///< of a pattern along the floor (side_conduction); 0: plane. The balance is of plane floors
  static constexpr std::size_t no_layer = static_cast<std::size_t>(-1);
};

/// Floor at rest, the heater on all the time.
struct floor_rest {
  double surface_c = no_number, top_of_cover_c = no_number, bond_c = no_number, heater_c = no_number, room_c = no_number;
  double up_w_per_m2 = 0.0, down_w_per_m2 = 0.0;
  bool reached = true;  ///< false: nothing carries the heat away, and it rises without end
};
struct floor_passage {
  double limit_c;
  bool at_bond = false;           ///< at the bond under the first layer; otherwise at the surface
  double uncovered_s = no_number, covered_s = no_number;  ///< NaN: not within the time
};
struct floor_course {
  std::vector<double> times_s{}, surface_c{}, covered_c{}, probe_c{}, heater_c{}, room_c{};
  std::vector<bool> on{};
  double highest_surface_c = no_number, highest_covered_c = no_number, highest_heater_c = no_number, highest_bond_c = no_number;
  double target_s = no_number;
  std::vector<floor_passage> passages{};
  std::vector<double> switched_s{};
  double on_ratio = 0.0;
  floor_in_time::energies energy{};
  double stored_j_per_m2 = 0.0, stored_by_room_j_per_m2 = 0.0, balance_ratio = 0.0;
  double error_k = no_number;   ///< estimated, of the temperatures at the times asked for
  std::size_t nodes = 0, steps = 0, refinements = 0;
  floor_rest rest{}, rest_covered{};
};

namespace detail {

[[noreturn]] inline void floor_refuse(const std::string& who, const std::string& text) { throw range_error(who + ": " + text); }
inline void demand_between(const std::string& who, const std::string& name, double x, double low, double high, std::string_view unit,
    std::string_view hint = {}) {
  if (is_finite(x) && x >= low && x <= high) return;
  const bool cold = unit == "°C" && is_finite(x) && x < absolute_zero_c;
  std::string text = name + (is_finite(x) ? " = " + quantity_text(x, unit, 6) : std::string(" is not a number"));
  if (cold) text += " is below absolute zero (-273.15 °C)";
  text += ": from " + quantity_text(low, unit) + " to " + quantity_text(high, unit);
  if (!hint.empty()) text += "; " + std::string(hint);
  floor_refuse(who, text);
}

/// A temperature that crosses a threshold in time.
struct relay {
  double off_above = 0.0, on_below = 0.0;
  bool closed = true;
  double threshold() const { return closed ? off_above : on_below; }
  bool past(double x) const { return closed ? x >= off_above : x <= on_below; }
};

class floor_run {
 public:
  floor_run(const floor_setup& in, int cells, int halvings, double tolerance, std::vector<floor_passage> passages, bool keep)
      : in_(in), tolerance_(tolerance), keep_(keep), floor_(parts(in, cells, halvings), in.loss, in.room, in.below, in.initial_c) {
    out_.passages = std::move(passages);
    probe_ = floor_.parts()[0].mesh.interface_node(in.probe_after == floor_setup::no_layer ? in.heater_after : in.probe_after);
    for (const auto& p : floor_.parts()) out_.nodes += p.mesh.size();
  }
  static std::vector<floor_part> parts(const floor_setup& in, int cells, int halvings) {
    std::vector<floor_part> all;
    if (in.cover_ratio < 1.0) all.push_back({mesh_of(in.layers, in.heater_after, 0.0, in.below, cells, halvings), 1.0 - in.cover_ratio});
    if (in.cover_ratio > 0.0) all.push_back({mesh_of(in.layers, in.heater_after, in.cover_resistance, in.below, cells, halvings), in.cover_ratio});
    if (in.wave_number_per_m > 0.0)
      for (auto& p : all) side_conduction(p.mesh, in.layers, in.wave_number_per_m);
    return all;
  }

  floor_course run() {
    const auto& t = in_.thermostat;
    using senses = floor_thermostat::senses;
    air_ = t.by == senses::air || t.by == senses::air_with_floor_limit;
    probe_sensed_ = t.by == senses::floor || t.by == senses::air_with_floor_limit;
    const double probe_set = t.by == senses::floor ? t.set_c : t.floor_limit_c;
    const double probe_width = t.by == senses::floor ? t.hysteresis_k : t.limit_hysteresis_k;
    by_air_ = {t.set_c + 0.5 * t.hysteresis_k, t.set_c - 0.5 * t.hysteresis_k, true};
    by_probe_ = {probe_set + 0.5 * probe_width, probe_set - 0.5 * probe_width, true};
    if (t.by == senses::air_with_floor_limit) by_probe_.off_above = probe_set, by_probe_.on_below = probe_set - probe_width;  // a limit is not passed
    by_air_.closed = air_sensed(0.0, false) < t.set_c;
    by_probe_.closed = probe(1.0) < probe_set;
    switch_heater();
    record(0.0, 0.0);
    double h = std::min(0.05, in_.duration_s);
    const double end = in_.duration_s;
    highest(1.0);
    while (floor_.time() < end) {
      if (++out_.steps > 300000) throw convergence_error("floor_warm_up: more than 300000 steps; ask for a larger error or a shorter time");
      const double left = end - floor_.time();
      const bool last = h >= left * (1.0 - 1e-12);
      double step = last ? left : h;
      double error = floor_.try_step(step);
      if (error > tolerance_ && step > 1e-9) {
        h = step * std::clamp(0.9 * cbrt(tolerance_ / error), 0.1, 0.8);
        continue;
      }
      const bool switched = first_event(step);
      const double began = floor_.time();
      floor_.take();
      if (floor_.power() > 0.0) on_s_ += floor_.time() - began;
      if (last && !switched) finish(end);
      passages();
      while (next_ < wanted() && when(next_) <= floor_.time()) record(when(next_), (when(next_) - began) / (floor_.time() - began));
      highest(1.0);
      if (switched) {
        toggle();
        out_.switched_s.push_back(floor_.time());
        switch_heater();
        h = std::min(h, 0.5);
        continue;
      }
      const double grow = std::clamp(0.9 * cbrt(tolerance_ / std::max(error, 1e-300)), 0.3, 3.0);
      if (!last && (grow < 1.0 || grow > 1.25)) h = step * grow;  // small changes are not worth a new matrix
    }
    while (next_ < wanted()) record(when(next_), 1.0);
    sums();
    return std::move(out_);
  }

 private:
  const floor_setup& in_;
  double tolerance_;
  bool keep_;
  floor_in_time floor_;
  floor_course out_;
  int probe_ = 0;
  bool air_ = false, probe_sensed_ = false;
  relay by_air_, by_probe_;
  std::size_t next_ = 0;
  double on_s_ = 0.0;
  bool finished_ = false;

  std::size_t wanted() const { return in_.times_s.size(); }
  double when(std::size_t i) const { return in_.times_s[i]; }
  std::size_t covered_part() const { return in_.cover_ratio > 0.0 ? floor_.parts().size() - 1 : 0; }
  std::size_t probe_part() const { return in_.probe_covered ? covered_part() : 0; }
  double probe(double s, bool aside = false) const {
    return s == 1.0 && !aside ? floor_.node(probe_part(), probe_) : floor_.between(probe_part(), probe_, s, aside);
  }
  double air_sensed(double s, bool aside) const {
    const auto& t = in_.thermostat;
    if (!is_nan(t.elsewhere_c)) return t.elsewhere_c;
    return (floor_.time() == 0.0 && !aside ? in_.room.temperature_c : floor_.room_between(s, aside)) + t.air_offset_k;
  }
  void finish(double) { finished_ = true; }
  void switch_heater() {
    const bool on = (!air_ || by_air_.closed) && (!probe_sensed_ || by_probe_.closed);
    floor_.set_power(on ? in_.power_w_per_m2 : 0.0);
  }
  bool crossed_air_ = false, crossed_probe_ = false;
  void toggle() {
    if (crossed_air_) by_air_.closed = !by_air_.closed;
    if (crossed_probe_) by_probe_.closed = !by_probe_.closed;
  }
  /// Whether a relay switches within the step that is kept aside; then the step is made again so that it ends there.
  bool first_event(double step) {
    crossed_air_ = crossed_probe_ = false;
    if (!air_ && !probe_sensed_) return false;
    const auto past = [&](double s) {
      return (air_ && by_air_.past(air_sensed(s, true))) || (probe_sensed_ && by_probe_.past(probe(s, true)));
    };
    double from = 0.0, to = -1.0;
    for (int i = 1; i <= 8 && to < 0.0; ++i) {
      const double s = i / 8.0;
      if (past(s)) to = s;
      else from = s;
    }
    if (to < 0.0) return false;
    for (int i = 0; i < 60 && to - from > 1e-15; ++i) {
      const double s = 0.5 * (from + to);
      (past(s) ? to : from) = s;
    }
    crossed_air_ = air_ && by_air_.past(air_sensed(to, true));
    crossed_probe_ = probe_sensed_ && by_probe_.past(probe(to, true));
    // the cubic is a guess; a secant through real steps puts the end on the threshold
    const bool by_air = crossed_air_;
    const auto off = [&] { return by_air ? air_sensed(1.0, true) - by_air_.threshold() : probe(1.0, true) - by_probe_.threshold(); };
    double h0 = 0.0, f0 = by_air ? air_sensed(0.0, true) - by_air_.threshold() : probe(0.0, true) - by_probe_.threshold();
    double h = std::max(to * step, 1e-9);
    for (int i = 0; i < 8; ++i) {
      floor_.try_step(h);
      const double f = off();
      if (fabs(f) <= 1e-10 || f == f0) break;
      const double next = std::clamp(h - f * (h - h0) / (f - f0), 0.1 * h, 2.0 * h);
      h0 = h;
      f0 = f;
      h = next;
    }
    return true;
  }
  void record(double t, double s) {
    if (t == 0.0 && (next_ >= wanted() || when(next_) > 0.0)) return;
    const bool start = t == 0.0;
    const auto surface = [&](std::size_t part) {
      if (start) return in_.initial_c;
      return floor_.surface_between(part, s).first;
    };
    out_.times_s.push_back(t);
    out_.surface_c.push_back(surface(0));
    if (in_.cover_ratio > 0.0) out_.covered_c.push_back(surface(covered_part()));
    out_.probe_c.push_back(start ? in_.initial_c : probe(s));
    out_.heater_c.push_back(start ? heater_temperature(floor_.parts()[0].mesh, floor_.nodes(0), floor_.power()) : floor_.heater_between(0, s));
    out_.room_c.push_back(start ? in_.room.temperature_c : floor_.room_between(s));
    out_.on.push_back(floor_.power() > 0.0);
    ++next_;
  }
  double bond(std::size_t part) const {
    const int node = floor_.parts()[part].mesh.interface_node(1);
    return node < 0 ? no_number : floor_.node(part, node);
  }
  void highest(double) {
    if (!keep_) return;
    const auto raise = [](double& most, double x) {
      if (!(x <= most)) most = x;
    };
    const bool start = floor_.time() == 0.0;
    raise(out_.highest_surface_c, start ? in_.initial_c : floor_.surface_between(0, 1.0).first);
    if (in_.cover_ratio > 0.0) raise(out_.highest_covered_c, start ? in_.initial_c : floor_.surface_between(covered_part(), 1.0).first);
    raise(out_.highest_heater_c, heater_temperature(floor_.parts()[covered_part()].mesh, floor_.nodes(covered_part()), floor_.power()));
    raise(out_.highest_bond_c, bond(covered_part()));
  }
  /// First times at which a surface passes a limit, within the step just taken.
  void passages() {
    const double began = floor_.before(), span = floor_.time() - began;
    const auto first = [&](std::size_t part, double limit, bool at_bond, double& at) {
      const int node = at_bond ? floor_.parts()[part].mesh.interface_node(1) : -1;
      const auto over = [&](double s) { return (node >= 0 ? floor_.between(part, node, s) : floor_.surface_between(part, s).first) > limit; };
      if (!is_nan(at) || !over(1.0)) return;
      double low = 0.0, high = 1.0;
      if (began == 0.0 && in_.initial_c > limit) high = 0.0;
      for (int i = 0; i < 50 && high > low; ++i) {
        const double s = 0.5 * (low + high);
        (over(s) ? high : low) = s;
      }
      at = began + high * span;
    };
    for (auto& p : out_.passages) {
      first(0, p.limit_c, p.at_bond, p.uncovered_s);
      if (in_.cover_ratio > 0.0) first(covered_part(), p.limit_c, p.at_bond, p.covered_s);
    }
    if (!is_nan(in_.target_c)) first(0, in_.target_c, false, out_.target_s);
  }
  void sums() {
    out_.energy = floor_.energy();
    out_.stored_j_per_m2 = floor_.stored();
    out_.stored_by_room_j_per_m2 = floor_.stored_by_room();
    const auto& e = out_.energy;
    const double moved = std::max({fabs(e.supplied), fabs(e.up), fabs(e.down), fabs(out_.stored_j_per_m2), 1e-300});
    out_.balance_ratio = fabs(e.supplied - e.up - e.down - out_.stored_j_per_m2) / moved;
    out_.on_ratio = in_.duration_s > 0.0 ? on_s_ / in_.duration_s : 0.0;
  }
};

/// One part of the floor at rest with a flux p from the heater, by resistances alone.
inline floor_rest rest_of(const floor_setup& in, double power, double cover_resistance, double room) {
  floor_rest r;
  double up = cover_resistance, down = 0.0, bond = 0.0;
  for (std::size_t i = 0; i < in.layers.size(); ++i) (i < in.heater_after ? up : down) += in.layers[i].resistance();
  if (!in.layers.empty() && in.heater_after >= 1) bond = in.layers[0].resistance();
  const double gd = in.below.conductance_w_per_m2k > 0.0 ? 1.0 / (down + 1.0 / in.below.conductance_w_per_m2k) : 0.0;
  // q + gd (Tc + up q - Tu) = p for the top Tc: a rising function of Tc
  const auto b = balance_top(in.loss, up, gd, 1.0, power + gd * in.below.temperature_c, room, room);
  r.reached = gd > 0.0 || in.loss.is != surface_loss::law::linear || in.loss.coefficient > 0.0;
  if (!r.reached) return r;
  r.up_w_per_m2 = b.flux;
  r.down_w_per_m2 = power - b.flux;
  r.top_of_cover_c = b.top;
  r.surface_c = b.top + cover_resistance * b.flux;
  r.bond_c = r.surface_c + bond * b.flux;
  r.heater_c = b.top + up * b.flux;
  r.room_c = room;
  return r;
}
/// Both parts at rest, with the room that they share.
inline void rest_of(const floor_setup& in, double power, floor_rest& open, floor_rest& covered) {
  double room = in.room.temperature_c;
  if (in.room.lumped) {
    if (!(in.room.loss_w_per_m2k > 0.0)) {
      open.reached = covered.reached = false;
      return;
    }
    const auto excess = [&](double at) {
      const double bare = rest_of(in, power, 0.0, at).up_w_per_m2, under = rest_of(in, power, in.cover_resistance, at).up_w_per_m2;
      return (1.0 - in.cover_ratio) * bare + in.cover_ratio * under - in.room.loss_w_per_m2k * (at - in.room.outside_c);
    };
    double low = absolute_zero_c;
    double high = in.room.outside_c + std::max(power, 1.0) / in.room.loss_w_per_m2k + std::max(0.0, in.below.temperature_c) + 1.0;
    for (int i = 0; i < 200 && high - low > 1e-13 * fabs(high); ++i) {
      const double middle = 0.5 * (low + high);
      (excess(middle) > 0.0 ? low : high) = middle;
    }
    room = 0.5 * (low + high);
  }
  open = rest_of(in, power, 0.0, room);
  if (in.cover_ratio > 0.0) covered = rest_of(in, power, in.cover_resistance, room);
}

inline void demand_floor(const std::string& who, const floor_setup& in) {
  const auto fail = [&](const std::string& t) { floor_refuse(who, t); };
  if (in.layers.empty()) fail("layers: at least one, from the surface down");
  if (in.layers.size() > 20) fail("layers: at most 20");
  for (std::size_t i = 0; i < in.layers.size(); ++i) {
    const auto& l = in.layers[i];
    const std::string at = "layers[" + std::to_string(i) + "]" + (l.name.empty() ? "" : " (" + l.name + ")") + ": ";
    if (l.resistance_m2k_per_w != 0.0) {
      demand_between(who, at + "resistance_m2k_per_w", l.resistance_m2k_per_w, 1e-6, 50.0, "m²K/W");
      continue;
    }
    if (l.thickness_m == 0.0) fail(at + "thickness 0 mm: a layer without thickness is no layer; leave it out, or give a resistance_m2k_per_w");
    demand_between(who, at + "thickness_mm", l.thickness_m * 1000.0, 0.01, 5000.0, "mm", "thickness is in mm");
    demand_between(who, at + "conductivity_w_per_mk", l.conductivity_w_per_mk, 0.005, 500.0, "W/(mK)");
    demand_between(who, at + "density_kg_per_m3", l.density_kg_per_m3, 1.0, 25000.0, "kg/m³");
    demand_between(who, at + "specific_heat_j_per_kgk", l.specific_heat_j_per_kgk, 50.0, 10000.0, "J/(kgK)", "in J/(kgK), not kJ");
  }
  if (in.heater_after > in.layers.size()) fail("heater_after_layer: from 0 to the number of layers");
  if (in.probe_after != floor_setup::no_layer && in.probe_after > in.layers.size()) fail("probe_after_layer: from 0 to the number of layers");
  demand_between(who, "power_density_w_per_m2", in.power_w_per_m2, 0.0, 1e6, "W/m²");
  demand_between(who, "initial_c", in.initial_c, absolute_zero_c, 1000.0, "°C");
  demand_between(who, "room: temperature_c", in.room.temperature_c, absolute_zero_c, 1500.0, "°C");
  if (in.room.lumped) {
    demand_between(who, "room: capacity by the heated area", in.room.capacity_j_per_m2k, 100.0, 1e8, "J/(m²K)");
    demand_between(who, "room: heat loss by the heated area", in.room.loss_w_per_m2k, 0.0, 1000.0, "W/(m²K)");
    demand_between(who, "room: outside_c", in.room.outside_c, absolute_zero_c, 60.0, "°C");
  }
  demand_between(who, "upper_loss: coefficient_w_per_m2k", in.loss.coefficient, 0.0, 1e9, "W/(m²K)");
  demand_between(who, "upper_loss: emissivity", in.loss.emissivity, 0.0, 1.0, "");
  demand_between(who, "upper_loss: convection_up_w_per_m2k", in.loss.convection_up, 0.0, 1000.0, "W/(m²K)");
  demand_between(who, "upper_loss: convection_down_w_per_m2k", in.loss.convection_down, 0.0, 1000.0, "W/(m²K)");
  demand_between(who, "below: temperature_c", in.below.temperature_c, absolute_zero_c, 1000.0, "°C");
  demand_between(who, "cover: resistance_m2k_per_w", in.cover_resistance, 0.0, 10.0, "m²K/W", "one tog is 0.1 m²K/W");
  demand_between(who, "cover: area_ratio", in.cover_ratio, 0.0, 1.0, "");
  demand_between(who, "duration_s", in.duration_s, 1e-3, 1e7, "s");
  demand_between(who, "error_k", in.error_k, 1e-6, 5.0, "K");
  const auto& t = in.thermostat;
  using senses = floor_thermostat::senses;
  if (t.by != senses::nothing) {
    demand_between(who, "thermostat: set_point_c", t.set_c, absolute_zero_c, 200.0, "°C");
    demand_between(who, "thermostat: hysteresis_k", t.hysteresis_k, 0.01, 50.0, "K", "without a hysteresis it would switch without end");
  }
  if (t.by == senses::air_with_floor_limit) {
    demand_between(who, "thermostat: floor_limit_c", t.floor_limit_c, absolute_zero_c, 200.0, "°C");
    demand_between(who, "thermostat: limit_hysteresis_k", t.limit_hysteresis_k, 0.01, 50.0, "K", "without a hysteresis it would switch without end");
  }
  for (std::size_t i = 0; i < in.times_s.size(); ++i) {
    demand_between(who, "times_s[" + std::to_string(i) + "]", in.times_s[i], 0.0, in.duration_s, "s");
    if (i > 0 && !(in.times_s[i] > in.times_s[i - 1])) fail("times_s must rise");
  }
  if (!is_nan(in.target_c)) demand_between(who, "target_c", in.target_c, absolute_zero_c, 1000.0, "°C");
}

}  // namespace detail

/// The floor from `initial_c` on. The grid is halved and the tolerance of the steps cut to an eighth until the temperatures at the times
/// asked for no longer move by more than the error asked for; the method is of second order in both, so that what is left is about a
/// third of the last move. Throws convergence_error where that is not reached.
inline floor_course floor_warm_up(floor_setup in, const std::vector<floor_passage>& passages = {}) {
  const std::string who = "floor_warm_up";
  detail::demand_floor(who, in);
  if (in.times_s.empty())
    for (int i = 0; i <= 48; ++i) in.times_s.push_back(in.duration_s * i / 48.0);
  // a mesh once, so that a heater or a probe at an impossible place is refused before anything is run
  const std::size_t above_probe = in.probe_after == floor_setup::no_layer ? in.heater_after : in.probe_after;
  const auto probe_at = mesh_of(in.layers, in.heater_after, 0.0, in.below, 8, 0).interface_node(above_probe);
  if (probe_at < 0)
    detail::floor_refuse(who, "probe_after_layer: the probe lies between two resistances that store no heat; put it beside a layer that does");
  constexpr int cells = 12, most = 6;
  floor_course coarse;
  double moved = no_number;
  for (int level = 0; level <= most; ++level) {
    double tolerance = 0.02;
    for (int i = 0; i < level; ++i) tolerance *= 0.125;
    auto fine = detail::floor_run(in, cells, level, tolerance, passages, true).run();
    if (level > 0) {
      moved = 0.0;
      const auto compare = [&](const std::vector<double>& a, const std::vector<double>& b) {
        for (std::size_t i = 0; i < a.size(); ++i) moved = std::max(moved, fabs(a[i] - b[i]));
      };
      compare(fine.surface_c, coarse.surface_c);
      compare(fine.covered_c, coarse.covered_c);
      compare(fine.probe_c, coarse.probe_c);
      compare(fine.heater_c, coarse.heater_c);
      compare(fine.room_c, coarse.room_c);
      fine.error_k = moved / 3.0;
      fine.refinements = static_cast<std::size_t>(level);
      if (moved / 3.0 <= in.error_k) {
        detail::rest_of(in, in.power_w_per_m2, fine.rest, fine.rest_covered);
        return fine;
      }
    }
    coarse = std::move(fine);
  }
  throw convergence_error(who + ": the error asked for, " + quantity_text(in.error_k, "K") +
      ", was not reached: the last refinement still moved a temperature by " +
                          quantity_text(moved, "K", 3) + "; ask for a larger error, or for times that are not at a switching");
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

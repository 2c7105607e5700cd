// SPDX-License-Identifier: MIT
// Transient conduction through a stack of layers with a source inside: finite volumes, TR-BDF2, switching located in time.
// Subject: heating (models). Opt-in: includes the standard library's containers.
#pragma once
#include <algorithm>
#include <array>
#include <string>
#include <vector>
#include "../error.hpp"
#include "../math.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

inline constexpr double absolute_zero_c = -273.15;
inline constexpr double stefan_boltzmann = 5.670374419e-8;  ///< W/(m²K⁴), CODATA 2018

/// A layer that stores heat (thickness, conductivity, density, specific heat), or one that only resists (a contact, a void, a membrane,
/// an insulation whose own heat does not matter): then `resistance_m2k_per_w` is above 0 and the rest is 0.
struct floor_layer {
  std::string name{};
  double thickness_m = 0.0, conductivity_w_per_mk = 0.0, density_kg_per_m3 = 0.0, specific_heat_j_per_kgk = 0.0;
  double resistance_m2k_per_w = 0.0;

  bool stores() const { return !(resistance_m2k_per_w > 0.0); }
  double resistance() const { return stores() ? thickness_m / conductivity_w_per_mk : resistance_m2k_per_w; }
  double capacity() const { return thickness_m * density_kg_per_m3 * specific_heat_j_per_kgk; }  ///< J/(m²K)
};

/// What leaves the surface: q(surface, room) in W/m², never falling when the surface warms.
struct surface_loss {
  enum class law : unsigned char { characteristic, linear, parts };
  law is = law::characteristic;
  double coefficient = 10.8;       ///< of the linear law, W/(m²K)
  double emissivity = 0.9;         ///< of the parts
  double convection_up = 5.0;      ///< W/(m²K) from a warm floor, ISO 6946
  double convection_down = 0.7;    ///< W/(m²K) into a cold floor, ISO 6946
  double cold_floor = 7.0;         ///< W/(m²K) into a floor that is colder than the room, where the characteristic does not hold

  /// Heat given off and its slope by the surface temperature (against the room's it is almost the same with the sign turned).
  double flux(double surface, double room, double* slope = nullptr, double* slope_room = nullptr) const {
    const double d = surface - room;
    double q = 0.0, by_surface = 0.0, by_room = 0.0;
    if (is == law::linear) {
      q = coefficient * d;
      by_surface = coefficient;
      by_room = -coefficient;
    } else if (is == law::characteristic) {
      const double p = d > 0.0 ? 8.92 * pow(d, 0.1) : cold_floor;
      q = p * d;
      by_surface = d > 0.0 ? 1.1 * p : p;
      by_room = -by_surface;
    } else {
      const double h = d > 0.0 ? convection_up : convection_down, s = surface - absolute_zero_c, r = room - absolute_zero_c;
      q = h * d + emissivity * stefan_boltzmann * (s * s * s * s - r * r * r * r);
      by_surface = h + 4.0 * emissivity * stefan_boltzmann * s * s * s;
      by_room = -h - 4.0 * emissivity * stefan_boltzmann * r * r * r;
    }
    if (slope) *slope = by_surface;
    if (slope_room) *slope_room = by_room;
    return q;
  }
};

/// The room above: a fixed temperature, or one body of air and furniture that the floor heats and that loses heat outwards.
struct room_above {
  double temperature_c = 20.0;         ///< fixed, or at the start
  bool lumped = false;
  double capacity_j_per_m2k = 0.0;     ///< by the heated area
  double loss_w_per_m2k = 0.0;         ///< by the heated area
  double outside_c = 0.0;
};
/// Below the stack: insulated (conductance 0), or a resistance and a fixed temperature.
struct space_below {
  double conductance_w_per_m2k = 0.0, temperature_c = 20.0;
};

/// One stack cut into finite volumes. Nodes stand at the surface, at every interface and evenly between; a node has half a cell on
/// either side. Resistances between layers that store are conductances between two nodes; those on top belong to the surface loss, those
/// at the bottom to the space below. A source between two resistances is divided as a current is between two resistors, which is exact.
struct stack_mesh {
  std::vector<double> capacity;     ///< J/(m²K) of each node
  std::vector<double> conductance;  ///< W/(m²K) between node i and i + 1
  std::vector<double> source;       ///< share of the source that goes to each node
  std::vector<double> aside;        ///< W/(m²K) from each node sideways (side_conduction); empty: none
  double below = 0.0;               ///< W/(m²K) from the last node
  double top_resistance = 0.0;      ///< m²K/W between node 0 and the surface of the stack
  double cover_resistance = 0.0;    ///< m²K/W of a cover on top of that
  double heater_up = 0.0, heater_down = 0.0;  ///< resistances between the source and its two nodes
  int heater_above = -1, heater_below = -1;   ///< these nodes; one of them may be missing
  std::vector<int> top_node, bottom_node;     ///< of each layer; -1 of one that stores nothing

  std::size_t size() const { return capacity.size(); }
  /// The node below so many layers; -1 between resistances.
  int interface_node(std::size_t layers) const {
    if (layers > 0 && bottom_node[layers - 1] >= 0) return bottom_node[layers - 1];
    return layers < top_node.size() ? top_node[layers] : -1;
  }
};

/// How long heat takes to cross a layer, as the root of that time.
inline double crossing_of(const floor_layer& l) {
  return l.stores() ? l.thickness_m * sqrt(l.density_kg_per_m3 * l.specific_heat_j_per_kgk / l.conductivity_w_per_mk) : 0.0;
}
inline double crossing_of(const std::vector<floor_layer>& layers) {
  double sum = 0.0;
  for (const auto& l : layers) sum += crossing_of(l);
  if (!(sum > 0.0)) throw range_error("floor: at least one layer must store heat (thickness, conductivity, density and specific heat)");
  return sum;
}
/// Cells of each layer: `cells` in all, shared as heat takes time to cross them, at least 2 each; then every cell is cut into 2^halvings.
inline std::vector<int> cells_of(const std::vector<floor_layer>& layers, int cells, int halvings) {
  const double sum = crossing_of(layers);
  std::vector<int> all;
  for (const auto& l : layers) all.push_back(l.stores() ? std::max(2, static_cast<int>(cells * crossing_of(l) / sum + 0.5)) << halvings : 0);
  return all;
}
/// Cells of each layer so that there are just so many nodes; empty where that is too few.
inline std::vector<int> cells_for(const std::vector<floor_layer>& layers, int nodes) {
  int left = nodes;  // a run of layers without a resistance between has one node more than cells
  bool open = true, any = false;
  for (const auto& l : layers) {
    if (l.stores() && open) --left;
    if (l.stores()) any = true;
    open = !l.stores() && any;
    if (!any) open = true;
  }
  auto all = cells_of(layers, left, 0);
  int sum = 0;
  for (const int c : all) sum += c;
  while (sum != left) {
    // the layer whose cells are the finest gives one away, or the coarsest takes one
    std::size_t which = layers.size();
    double most = 0.0;
    for (std::size_t i = 0; i < layers.size(); ++i) {
      if (!layers[i].stores() || (sum > left && all[i] <= 2)) continue;
      const double coarse = crossing_of(layers[i]) / all[i], want = sum > left ? 1.0 / coarse : coarse;
      if (want > most) most = want, which = i;
    }
    if (which == layers.size()) return {};
    all[which] += sum > left ? -1 : 1;
    sum += sum > left ? -1 : 1;
  }
  return all;
}
inline stack_mesh mesh_of(const std::vector<floor_layer>& layers, std::size_t heater_after, double cover_resistance, const space_below& below,
                          const std::vector<int>& cells) {
  stack_mesh m;
  m.cover_resistance = cover_resistance;
  crossing_of(layers);
  std::size_t first = 0;
  while (!layers[first].stores()) ++first;
  m.top_node.assign(layers.size(), -1);
  m.bottom_node.assign(layers.size(), -1);
  double waiting = 0.0;  // resistance since the last layer that stores
  for (std::size_t i = 0; i < layers.size(); ++i) {
    const auto& l = layers[i];
    if (!l.stores()) {
      if (i < first) m.top_resistance += l.resistance_m2k_per_w;
      else waiting += l.resistance_m2k_per_w;
      continue;
    }
    const int share = cells[i];
    const double half = 0.5 * l.capacity() / share, g = share / l.resistance();
    if (m.capacity.empty() || waiting > 0.0) {
      if (!m.capacity.empty()) m.conductance.push_back(1.0 / waiting);
      m.capacity.push_back(0.0);
    }
    waiting = 0.0;
    m.top_node[i] = static_cast<int>(m.capacity.size()) - 1;
    m.capacity.back() += half;
    for (int c = 0; c < share; ++c) {
      m.capacity.push_back(c + 1 < share ? 2.0 * half : half);
      m.conductance.push_back(g);
    }
    m.bottom_node[i] = static_cast<int>(m.capacity.size()) - 1;
  }
  m.below = below.conductance_w_per_m2k > 0.0 ? 1.0 / (1.0 / below.conductance_w_per_m2k + waiting) : 0.0;
  m.source.assign(m.capacity.size(), 0.0);
  double up = 0.0, down = 0.0;
  std::size_t a = heater_after, b = heater_after;
  for (; a > 0 && !layers[a - 1].stores(); --a) up += layers[a - 1].resistance_m2k_per_w;
  for (; b < layers.size() && !layers[b].stores(); ++b) down += layers[b].resistance_m2k_per_w;
  const bool has_above = a > 0, has_below = b < layers.size();
  if ((!has_above && down > 0.0) || (!has_below && up > 0.0))
    throw range_error("floor: the heater lies between resistances with no layer that stores heat on one side: give the layer next to it thickness, "
        "density and specific heat");
  if (has_above) m.heater_above = m.bottom_node[a - 1];
  if (has_below) m.heater_below = m.top_node[b];
  m.heater_up = up;
  m.heater_down = down;
  if (has_above && has_below && up + down > 0.0) {
    const double to_above = down / (up + down);
    m.source[static_cast<std::size_t>(m.heater_above)] += to_above;
    m.source[static_cast<std::size_t>(m.heater_below)] += 1.0 - to_above;
  } else {
    m.source[static_cast<std::size_t>(has_below ? m.heater_below : m.heater_above)] = 1.0;
  }
  return m;
}

inline stack_mesh mesh_of(const std::vector<floor_layer>& layers, std::size_t heater_after, double cover_resistance, const space_below& below,
                          int cells, int halvings) {
  return mesh_of(layers, heater_after, cover_resistance, below, cells_of(layers, cells, halvings));
}

/// A pattern cos(κx) along plane layers keeps its shape: each node loses k·κ² of its depth times its temperature sideways. So a heater of
/// parallel runs is a sum of plane problems, one for each κ = 2πn / spacing.
inline void side_conduction(stack_mesh& m, const std::vector<floor_layer>& layers, double wave_number_per_m) {
  m.aside.assign(m.size(), 0.0);
  for (std::size_t i = 0; i < layers.size(); ++i) {
    if (!layers[i].stores()) continue;
    const int cells = m.bottom_node[i] - m.top_node[i];
    const double half = 0.5 * layers[i].thickness_m / cells * layers[i].conductivity_w_per_mk * wave_number_per_m * wave_number_per_m;
    for (int c = 0; c < cells; ++c) {
      m.aside[static_cast<std::size_t>(m.top_node[i] + c)] += half;
      m.aside[static_cast<std::size_t>(m.top_node[i] + c + 1)] += half;
    }
  }
}

/// Temperature at the heater: of its node, or between its two by the resistances.
inline double heater_temperature(const stack_mesh& m, const double* t, double source_w_per_m2) {
  const bool two = m.heater_above >= 0 && m.heater_below >= 0 && m.heater_above != m.heater_below;
  if (!two) return t[m.heater_below >= 0 ? m.heater_below : m.heater_above];
  if (m.heater_up == 0.0) return t[m.heater_above];
  if (m.heater_down == 0.0) return t[m.heater_below];
  const double gu = 1.0 / m.heater_up, gd = 1.0 / m.heater_down;
  return (gu * t[m.heater_above] + gd * t[m.heater_below] + source_w_per_m2) / (gu + gd);
}

/// A part of the floor: its stack, and the part of the heated area that it has.
struct floor_part {
  stack_mesh mesh;
  double area_ratio = 1.0;
};

namespace detail {

/// Temperature of the very top (of the cover, where there is one) from d·T0 + w·q = y with T0 = Tc + R·q(Tc - Tr): a rising function,
/// by Newton's steps kept inside a bracket. Gives q and its slope against the room.
struct top_balance {
  double top = 0.0, flux = 0.0, flux_by_room = 0.0;
};
inline top_balance balance_top(const surface_loss& loss, double resistance, double d, double w, double y, double room, double guess) {
  const double slip = d * resistance + w;
  double low = -1e300, high = 1e300, x = guess, q = 0.0, s = 0.0, sr = 0.0;
  for (int i = 0; i < 100; ++i) {
    q = loss.flux(x, room, &s, &sr);
    const double f = d * x + slip * q - y, slope = d + slip * s;
    if (f > 0.0) high = x;
    else low = x;
    double next = x - f / slope;
    const bool done = fabs(next - x) <= 2e-15 * (fabs(x) + 1.0);
    if (!done && !(next > low && next < high) && low > -1e299 && high < 1e299) next = 0.5 * (low + high);
    x = next;
    if (done) break;
  }
  q = loss.flux(x, room, &s, &sr);
  return {x, q, sr * d / (d + slip * s)};
}
}  // namespace detail

/// The floor in time. State: nodes of each part, then the room's temperature. One matrix per length of step; the surface law is the only
/// part that is not linear, and it stands in one row, so that a step is one sweep each way and one scalar equation, solved to rounding.
class floor_in_time {
 public:
  struct energies {
    double supplied = 0.0, up = 0.0, down = 0.0, lost_by_room = 0.0;  ///< J/m² since the start
  };

  floor_in_time(std::vector<floor_part> parts, surface_loss loss, room_above room, space_below below, double initial_c)
      : parts_(std::move(parts)), loss_(loss), room_(room), below_(below) {
    for (const auto& p : parts_) begin_.push_back(total_), total_ += p.mesh.size();
    for (auto* v : {&u_, &f_, &u2_, &f2_, &u3_, &f3_, &y_, &error_}) v->assign(total_ + 1, 0.0);
    for (auto* v : {&inverse_, &ratio_}) v->assign(total_, 0.0);
    std::fill(u_.begin(), u_.end(), initial_c);
    u_[total_] = room_.temperature_c;
    start_ = u_;
    top_.assign(parts_.size(), initial_c);
    flux_.assign(parts_.size(), 0.0);
    rates(u_, f_, up_, down_);
  }

  double time() const { return time_; }
  double power() const { return power_; }
  const energies& energy() const { return energy_; }
  const std::vector<floor_part>& parts() const { return parts_; }
  double room() const { return u_[total_]; }
  double node(std::size_t part, int i) const { return u_[begin_[part] + static_cast<std::size_t>(i)]; }
  const double* nodes(std::size_t part) const { return u_.data() + begin_[part]; }
  /// Heat stored above the start, J/m² of the heated area; the room's is apart.
  double stored() const {
    double sum = 0.0;
    for (std::size_t p = 0; p < parts_.size(); ++p)
      for (std::size_t i = 0; i < parts_[p].mesh.size(); ++i)
        sum += parts_[p].area_ratio * parts_[p].mesh.capacity[i] * (u_[begin_[p] + i] - start_[begin_[p] + i]);
    return sum;
  }
  double stored_by_room() const { return room_.lumped ? room_.capacity_j_per_m2k * (u_[total_] - start_[total_]) : 0.0; }

  /// The source becomes another, W/m².
  void set_power(double w_per_m2) {
    power_ = w_per_m2;
    rates(u_, f_, up_, down_);
  }
  /// A step of h seconds into the future, kept aside; the largest local error of any node, in K. Nothing changes until take().
  double try_step(double h) {
    factor(h);
    h_ = h;
    const double dh = d * h;
    // to γh: C (u2 - u) = dh (f + f2)
    for (std::size_t p = 0; p < parts_.size(); ++p)
      for (std::size_t i = 0; i < parts_[p].mesh.size(); ++i) {
        const std::size_t k = begin_[p] + i;
        y_[k] = parts_[p].mesh.capacity[i] * u_[k] + dh * f_[k];
      }
    y_[total_] = room_.capacity_j_per_m2k * u_[total_] + dh * f_[total_];
    solve(dh, u2_);
    rates(u2_, f2_, up2_, down2_);
    // to h: C (u3 - u) = w h (f + f2) + dh f3
    for (std::size_t p = 0; p < parts_.size(); ++p)
      for (std::size_t i = 0; i < parts_[p].mesh.size(); ++i) {
        const std::size_t k = begin_[p] + i;
        y_[k] = parts_[p].mesh.capacity[i] * u_[k] + w * h * (f_[k] + f2_[k]);
      }
    y_[total_] = room_.capacity_j_per_m2k * u_[total_] + w * h * (f_[total_] + f2_[total_]);
    solve(dh, u3_);
    rates(u3_, f3_, up3_, down3_);
    return local_error(h);
  }
  void take() {
    energy_.supplied += h_ * power_;
    energy_.up += h_ * (w * (up_ + up2_) + d * up3_);
    energy_.down += h_ * (w * (down_ + down2_) + d * down3_);
    if (room_.lumped)
      energy_.lost_by_room += h_ * room_.loss_w_per_m2k * (w * (u_[total_] + u2_[total_]) + d * u3_[total_] - (2.0 * w + d) * room_.outside_c);
    before_ = time_;
    u_.swap(u3_);  // u3_, f3_ are now the beginning of the step
    f_.swap(f3_);
    up_ = up3_;
    down_ = down3_;
    time_ += h_;
    span_ = h_;
  }
  /// A node between the beginning and the end of the last step taken (or of the one kept aside): cubic through values and slopes.
  double between(std::size_t part, int i, double s, bool aside = false) const {
    const std::size_t k = begin_[part] + static_cast<std::size_t>(i);
    return cubic(k, parts_[part].mesh.capacity[static_cast<std::size_t>(i)], s, aside);
  }
  double room_between(double s, bool aside = false) const {
    return room_.lumped ? cubic(total_, room_.capacity_j_per_m2k, s, aside) : room_.temperature_c;
  }
  double heater_between(std::size_t part, double s, bool aside = false) const {
    const auto& m = parts_[part].mesh;
    const bool two = m.heater_above >= 0 && m.heater_below >= 0 && m.heater_above != m.heater_below;
    if (!two) return between(part, m.heater_below >= 0 ? m.heater_below : m.heater_above, s, aside);
    if (m.heater_up == 0.0) return between(part, m.heater_above, s, aside);
    if (m.heater_down == 0.0) return between(part, m.heater_below, s, aside);
    const double gu = 1.0 / m.heater_up, gd = 1.0 / m.heater_down;
    return (gu * between(part, m.heater_above, s, aside) + gd * between(part, m.heater_below, s, aside) + power_) / (gu + gd);
  }
  /// The surface of the stack (under a cover, if there is one), and the top of the cover.
  std::pair<double, double> surface_between(std::size_t part, double s, bool aside = false) const {
    const auto& m = parts_[part].mesh;
    const double t0 = between(part, 0, s, aside), r = m.top_resistance + m.cover_resistance;
    if (r == 0.0) return {t0, t0};
    const auto b = detail::balance_top(loss_, r, 1.0, 0.0, t0, room_between(s, aside), t0);
    return {b.top + m.cover_resistance * b.flux, b.top};
  }
  double before() const { return before_; }
  double up_flux() const { return up_; }
  double down_flux() const { return down_; }

 private:
  static constexpr double root2 = 1.41421356237309504880;
  static constexpr double d = 1.0 - 0.5 * root2, w = 0.25 * root2;  // γ = 2 - √2, d = γ/2

  std::vector<floor_part> parts_;
  surface_loss loss_;
  room_above room_;
  space_below below_;
  std::vector<std::size_t> begin_;
  std::size_t total_ = 0;
  std::vector<double> u_, f_, u2_, f2_, u3_, f3_, y_, error_, inverse_, ratio_, start_;
  std::vector<double> top_, flux_;
  double up_ = 0.0, down_ = 0.0, up2_ = 0.0, down2_ = 0.0, up3_ = 0.0, down3_ = 0.0;
  double time_ = 0.0, before_ = 0.0, span_ = 0.0, h_ = 0.0, power_ = 0.0, factored_ = -1.0;
  energies energy_;

  double cubic(std::size_t k, double capacity, double s, bool aside) const {
    const double h = aside ? h_ : span_;
    const double a = aside ? u_[k] : u3_[k], b = aside ? u3_[k] : u_[k];
    const double da = h * (aside ? f_[k] : f3_[k]) / capacity, db = h * (aside ? f3_[k] : f_[k]) / capacity;
    const double r = 1.0 - s;
    return a * (1.0 + 2.0 * s) * r * r + da * s * r * r + b * s * s * (1.0 + 2.0 * r) - db * s * s * r;
  }

  /// W/m² into each node; heat given off upwards and downwards by the whole floor.
  void rates(const std::vector<double>& u, std::vector<double>& f, double& up, double& down) {
    up = down = 0.0;
    const double room = u[total_];
    for (std::size_t p = 0; p < parts_.size(); ++p) {
      const auto& m = parts_[p].mesh;
      const double* t = u.data() + begin_[p];
      double* into = f.data() + begin_[p];
      const std::size_t n = m.size();
      for (std::size_t i = 0; i < n; ++i) into[i] = m.source[i] * power_;
      for (std::size_t i = 0; i + 1 < n; ++i) {
        const double q = m.conductance[i] * (t[i] - t[i + 1]);
        into[i] -= q;
        into[i + 1] += q;
      }
      const double r = m.top_resistance + m.cover_resistance;
      const double q = r == 0.0 ? loss_.flux(t[0], room) : detail::balance_top(loss_, r, 1.0, 0.0, t[0], room, top_[p]).flux;
      const double qd = m.below * (t[n - 1] - below_.temperature_c);
      into[0] -= q;
      into[n - 1] -= qd;
      for (std::size_t i = 0; i < m.aside.size(); ++i) into[i] -= m.aside[i] * t[i];
      up += parts_[p].area_ratio * q;
      down += parts_[p].area_ratio * qd;
    }
    f[total_] = room_.lumped ? up - room_.loss_w_per_m2k * (room - room_.outside_c) : 0.0;
  }
  /// Elimination from the bottom upwards of C + dh·A without the surface loss.
  void factor(double h) {
    if (h == factored_) return;
    factored_ = h;
    const double dh = d * h;
    for (std::size_t p = 0; p < parts_.size(); ++p) {
      const auto& m = parts_[p].mesh;
      const std::size_t n = m.size(), at = begin_[p];
      for (std::size_t i = n; i-- > 0;) {
        double diagonal = m.capacity[i];
        if (!m.aside.empty()) diagonal += dh * m.aside[i];
        if (i > 0) diagonal += dh * m.conductance[i - 1];
        if (i + 1 < n) {
          const double g = dh * m.conductance[i];
          ratio_[at + i] = g * inverse_[at + i + 1];
          diagonal += g - g * ratio_[at + i];
        } else {
          diagonal += dh * m.below;
        }
        inverse_[at + i] = 1.0 / diagonal;
      }
    }
  }
  /// (C + dh·A) x = y + dh·(source and what lies below); y_ is used up.
  void solve(double dh, std::vector<double>& x) {
    for (std::size_t p = 0; p < parts_.size(); ++p) {
      const auto& m = parts_[p].mesh;
      const std::size_t n = m.size();
      double* y = y_.data() + begin_[p];
      const double* ratio = ratio_.data() + begin_[p];
      y[n - 1] += dh * (m.below * below_.temperature_c + m.source[n - 1] * power_);
      for (std::size_t i = n - 1; i-- > 0;) y[i] += dh * m.source[i] * power_ + ratio[i] * y[i + 1];
    }
    double room = room_.temperature_c;
    const auto tops = [&](double at_room, double& slope) {
      double sum = 0.0;
      slope = 0.0;
      for (std::size_t p = 0; p < parts_.size(); ++p) {
        const auto& m = parts_[p].mesh;
        const double d0 = 1.0 / inverse_[begin_[p]];
        const auto b = detail::balance_top(loss_, m.top_resistance + m.cover_resistance, d0, dh, y_[begin_[p]], at_room, top_[p]);
        top_[p] = b.top;
        flux_[p] = b.flux;
        sum += parts_[p].area_ratio * b.flux;
        slope += parts_[p].area_ratio * b.flux_by_room;
      }
      return sum;
    };
    double slope = 0.0;
    if (room_.lumped) {
      room = u_[total_];
      double low = -1e300, high = 1e300;
      const double own = room_.capacity_j_per_m2k + dh * room_.loss_w_per_m2k, y = y_[total_] + dh * room_.loss_w_per_m2k * room_.outside_c;
      for (int i = 0; i < 100; ++i) {
        const double f = own * room - dh * tops(room, slope) - y;
        if (f > 0.0) high = room;
        else low = room;
        double next = room - f / (own - dh * slope);
        const bool done = fabs(next - room) <= 2e-15 * (fabs(room) + 1.0);
        if (!done && !(next > low && next < high) && low > -1e299 && high < 1e299) next = 0.5 * (low + high);
        room = next;
        if (done) break;
      }
    }
    tops(room, slope);
    x[total_] = room;
    for (std::size_t p = 0; p < parts_.size(); ++p) {
      const auto& m = parts_[p].mesh;
      const std::size_t n = m.size(), at = begin_[p];
      x[at] = (y_[at] - dh * flux_[p]) * inverse_[at];
      for (std::size_t i = 1; i < n; ++i) x[at + i] = inverse_[at + i] * y_[at + i] + dh * m.conductance[i - 1] * inverse_[at + i] * x[at + i - 1];
    }
  }
  /// Third-order companion of Hosea and Shampine, through the matrix of the step once more so that stiff parts do not count.
  double local_error(double h) {
    constexpr double b1 = (1.0 - w) / 3.0, b2 = (3.0 * w + 1.0) / 3.0, b3 = d / 3.0;
    for (std::size_t k = 0; k <= total_; ++k) error_[k] = h * ((w - b1) * f_[k] + (w - b2) * f2_[k] + (d - b3) * f3_[k]);
    double most = 0.0;
    for (std::size_t p = 0; p < parts_.size(); ++p) {
      const auto& m = parts_[p].mesh;
      const std::size_t n = m.size(), at = begin_[p];
      double* e = error_.data() + at;
      for (std::size_t i = n - 1; i-- > 0;) e[i] += ratio_[at + i] * e[i + 1];
      double slope = 0.0;
      loss_.flux(top_[p], u3_[total_], &slope);
      slope /= 1.0 + slope * (m.top_resistance + m.cover_resistance);
      e[0] /= 1.0 / inverse_[at] + d * h * slope;
      for (std::size_t i = 1; i < n; ++i) e[i] = inverse_[at + i] * (e[i] + d * h * m.conductance[i - 1] * e[i - 1]);
      for (std::size_t i = 0; i < n; ++i) most = std::max(most, fabs(e[i]));
    }
    if (room_.lumped) most = std::max(most, fabs(error_[total_]) / (room_.capacity_j_per_m2k + d * h * room_.loss_w_per_m2k));
    return most;
  }
};

}  // namespace heating
}  // namespace v1
}  // namespace makegood

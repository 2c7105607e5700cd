// SPDX-License-Identifier: MIT
// Many floors of one build-up side by side: a linear surface loss, equal steps, no thermostat. For tables and what-if; no error control.
// Subject: heating (models). Opt-in: includes the standard library's containers.
#pragma once
#include <cstdint>
#include "floor_model.hpp"
#include "floor_steps.hpp"

namespace makegood {
inline namespace v1 {
namespace heating {

struct floor_scenario {
  double power_w_per_m2 = 0.0, initial_c = 20.0, room_c = 20.0, below_c = 20.0, cover_resistance = 0.0;
};
struct scenario_course {
  std::vector<double> surface_c{}, heater_c{};  ///< at the times
};
inline constexpr int damped_half_steps = 4;  ///< of backward Euler, in place of the first two whole steps

/// The floors in steps of duration / steps, their temperatures after every steps / outputs of them. `lanes` floors go through the kernel
/// together, and the results are the same bits for any number of lanes.
template <class March>
std::vector<scenario_course> floor_scenarios(const floor_setup& like, const std::vector<floor_scenario>& all, int nodes, int steps, int outputs,
    int lanes, March march_them) {
  const std::string who = "floor_scenarios";
  const auto fail = [&](const std::string& text) { detail::floor_refuse(who, text); };
  detail::demand_floor(who, like);
  if (like.loss.is != surface_loss::law::linear || !(like.loss.coefficient > 0.0)) fail("a linear surface loss above 0 W/(m²K) is needed");
  if (nodes < 8 || nodes > 4096 || nodes % 2) fail("nodes_count: an even number from 8 to 4096");
  if (outputs < 1 || outputs > 10000) fail("outputs_count: from 1 to 10000");
  if (steps < 2 || steps > 10000000 || steps % outputs || steps / outputs < 2)
    fail("steps_count: at least two for each output, and a multiple of outputs_count");
  if (all.empty() || all.size() > 100000) fail("from 1 to 100000 scenarios");
  for (std::size_t i = 0; i < all.size(); ++i) {
    const std::string at = "scenario " + std::to_string(i) + ": ";
    detail::demand_between(who, at + "power_density_w_per_m2", all[i].power_w_per_m2, 0.0, 1e6, "W/m²");
    detail::demand_between(who, at + "initial_c", all[i].initial_c, absolute_zero_c, 1000.0, "°C");
    detail::demand_between(who, at + "room_c", all[i].room_c, absolute_zero_c, 1500.0, "°C");
    detail::demand_between(who, at + "below_c", all[i].below_c, absolute_zero_c, 1000.0, "°C");
    detail::demand_between(who, at + "cover_m2k_per_w", all[i].cover_resistance, 0.0, 10.0, "m²K/W");
  }
  const auto cells = cells_for(like.layers, nodes);
  if (cells.empty()) fail("nodes_count: too few for these layers");
  const auto mesh = mesh_of(like.layers, like.heater_after, 0.0, like.below, cells);
  if (static_cast<int>(mesh.size()) != nodes) fail("nodes_count: cannot be had with these layers");
  const std::size_t n = mesh.size(), half = n / 2, width = static_cast<std::size_t>(lanes);
  const double step = like.duration_s / steps, theta = 0.5 * step;
  std::vector<double> root(n), from_root(n);
  for (std::size_t i = 0; i < n; ++i) root[i] = sqrt(mesh.capacity[i]), from_root[i] = 1.0 / root[i];
  // off-diagonals of I + θK are the same for all floors; place of node i: its end and its number from there
  std::vector<double> beside(n - 1);
  for (std::size_t i = 0; i + 1 < n; ++i) beside[i] = -theta * mesh.conductance[i] * from_root[i] * from_root[i + 1];
  const auto place = [&](std::size_t i, std::size_t lane) { return i < half ? 2 * i * width + lane : (2 * (n - 1 - i) + 1) * width + lane; };
  const std::size_t size = 2 * half * width;
  std::vector<double> memory(6 * size + 4 * width + 8);
  double* begin = memory.data();
  while (reinterpret_cast<std::uintptr_t>(begin) % 64 != 0) ++begin;
  double *z = begin, *s = z + size, *l = s + size, *l2 = l + size, *inverse = l2 + size, *y = inverse + size;
  double *own = y + size, *other = own + 2 * width;
  const floor_columns columns{z, s, l, l2, inverse, y, own, other, static_cast<int>(half)};
  std::vector<scenario_course> out(all.size());
  std::vector<double> top(width), heater(n);
  // diagonals of I + θK without what leaves at the top, which differs from floor to floor
  std::vector<double> diagonal(n), before(width);
  for (std::size_t i = 0; i < n; ++i) {
    double g = i + 1 == n ? mesh.below : 0.0;
    if (i > 0) g += mesh.conductance[i - 1];
    if (i + 1 < n) g += mesh.conductance[i];
    diagonal[i] = 1.0 + theta * g * from_root[i] * from_root[i];
  }
  for (std::size_t first = 0; first < all.size(); first += width) {
    const auto floor_of = [&](std::size_t j) -> const floor_scenario& { return all[std::min(first + j, all.size() - 1)]; };
    for (std::size_t j = 0; j < width; ++j) top[j] = 1.0 / (1.0 / like.loss.coefficient + mesh.top_resistance + floor_of(j).cover_resistance);
    for (std::size_t i = 0; i < n; ++i)
      for (std::size_t j = 0; j < width; ++j) {
        const auto& one = floor_of(j);
        double into = mesh.source[i] * one.power_w_per_m2;
        if (i == 0) into += top[j] * one.room_c;
        if (i + 1 == n) into += mesh.below * one.below_c;
        s[place(i, j)] = theta * into * from_root[i];
        z[place(i, j)] = root[i] * one.initial_c;
      }
    for (const bool at_top : {true, false})
      for (std::size_t k = 0; k < half; ++k) {
        const std::size_t i = at_top ? k : n - 1 - k, at = place(i, 0);
        const double off = k == 0 ? 0.0 : beside[at_top ? i - 1 : i], own_part = diagonal[i], square_of = off * off;
        for (std::size_t j = 0; j < width; ++j) {
          const double d = own_part + (i == 0 ? theta * top[j] * from_root[0] * from_root[0] : 0.0) - (k == 0 ? 0.0 : square_of * before[j]);
          l[at + j] = k == 0 ? 0.0 : off * before[j];
          l2[at + j] = k < 2 ? 0.0 : l[at + j] * l[at - 2 * width + j];
          inverse[at + j] = 1.0 / d;
          before[j] = inverse[at + j];
          if (k + 1 == half) (at_top ? own : own + width)[j] = d;
        }
      }
    for (std::size_t j = 0; j < width; ++j) {  // the middle: 2 × 2
      const double middle = beside[half - 1], a = own[j], b = own[width + j], determinant = 1.0 / (a * b - middle * middle);
      own[j] = b * determinant;
      own[width + j] = a * determinant;
      other[j] = other[width + j] = -middle * determinant;
    }
    for (int o = 0; o < outputs; ++o) {
      int left = steps / outputs;
      if (o == 0) {
        march_them(columns, damped_half_steps, true);
        left -= damped_half_steps / 2;
      }
      if (left > 0) march_them(columns, left, false);
      for (std::size_t j = 0; j < width && first + j < all.size(); ++j) {
        const auto& one = all[first + j];
        const double flux = top[j] * (z[place(0, j)] * from_root[0] - one.room_c);
        out[first + j].surface_c.push_back(one.room_c + flux * (1.0 / like.loss.coefficient + one.cover_resistance));
        for (const int node : {mesh.heater_above, mesh.heater_below})
          if (node >= 0) heater[static_cast<std::size_t>(node)] = z[place(static_cast<std::size_t>(node), j)] * from_root[static_cast<std::size_t>(node)];
        out[first + j].heater_c.push_back(heater_temperature(mesh, heater.data(), one.power_w_per_m2));
      }
    }
  }
  return out;
}
inline std::vector<scenario_course> floor_scenarios(const floor_setup& like, const std::vector<floor_scenario>& all, int nodes, int steps,
    int outputs) {
  return floor_scenarios(like, all, nodes, steps, outputs, 1, &march<double>);
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Size of a cable: the smallest flat twin cable that satisfies capacity, voltage drop, protection against shock and heating by a fault together.
// Subject: electrical. Flat twin cables with their own, smaller protective conductor.
#pragma once
#include <type_traits>
#include "capacity.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

/// A flat twin cable: line and protective conductor, both together at 20 °C (the sum of IEC 60228), tabulated drop.
struct flat_twin_cable {
  double area_mm2, protective_mm2, r1_plus_r2_mohm_per_m, drop_mv_per_a_m;
};
namespace detail {
constexpr double tabulated_drop_of(std::size_t i) { return flat_twin_rows[i].values[6]; }
}  // namespace detail
inline constexpr flat_twin_cable flat_twin_cables[] = {
    {1, 1, 36.2, detail::tabulated_drop_of(0)},     {1.5, 1, 30.2, detail::tabulated_drop_of(1)}, {2.5, 1.5, 19.51, detail::tabulated_drop_of(2)}, {4, 1.5, 16.71, detail::tabulated_drop_of(3)},
    {6, 2.5, 10.49, detail::tabulated_drop_of(4)}, {10, 4, 6.44, detail::tabulated_drop_of(5)},  {16, 6, 4.23, detail::tabulated_drop_of(6)}};
inline constexpr std::size_t flat_twin_sizes = sizeof flat_twin_cables / sizeof flat_twin_cables[0];
static_assert(flat_twin_sizes == sizeof flat_twin_rows / sizeof flat_twin_rows[0]);
// flat_twin_rows turned: a row a way of installation, so that one word chooses all its sizes before the kernel runs.
inline constexpr column method_capacity_columns[] = {{"I_1", unit::ampere}, {"I_1.5", unit::ampere}, {"I_2.5", unit::ampere}, {"I_4", unit::ampere},
                                                     {"I_6", unit::ampere}, {"I_10", unit::ampere},  {"I_16", unit::ampere}};
namespace detail {
constexpr choice_row capacities_of(std::size_t method) {
  choice_row r{method_rows[method].key, method_rows[method].label};
  for (std::size_t i = 0; i < flat_twin_sizes; ++i) r.values[i] = flat_twin_rows[i].values[method];
  return r;
}
}  // namespace detail
inline constexpr choice_row method_capacity_rows[] = {detail::capacities_of(0), detail::capacities_of(1), detail::capacities_of(2),
                                                      detail::capacities_of(3), detail::capacities_of(4), detail::capacities_of(5)};
inline constexpr choice_table method_capacities{method_capacity_columns, method_capacity_rows};
inline constexpr double protective_core_k = 115.0;     ///< a core in the cable, 70 to 160 °C
inline constexpr double warm_conductor_factor = 1.2;   ///< 20 to 70 °C, the rounded factor of site tables

template <class T>
struct smallest_size_arguments {
  need<std::string_view> method;
  need<T> rating_a, design_current_a, length_m, correction_factor, drop_limit_v, external_ohm, loop_limit_ohm, let_through_a2s;
  static constexpr std::string_view names() {
    return "(method, rating_a, design_current_a, length_m, correction_factor, drop_limit_v, external_ohm, loop_limit_ohm, let_through_a2s)";
  }
};
namespace detail {
/// The smallest size that serves, of those that are left; the largest if none of the others does.
template <class T, std::size_t I = 0, class Serves>
constexpr T smallest_of(const Serves& serves) {
  const auto area = constant(flat_twin_cables[I].area_mm2, unit::square_millimetre);
  if constexpr (I + 1 == flat_twin_sizes) return static_cast<T>(area);
  else return static_cast<T>(select(serves(std::integral_constant<std::size_t, I>{}), static_cast<T>(area), smallest_of<T, I + 1>(serves)));
}
template <class I, class Method, class R, class C>
constexpr auto carries(I i, const Method& method, const R& rating, const C& correction) {
  return method[i] * correction >= rating;
}
template <class I, class B, class L, class D>
constexpr auto drops_little(I i, const B& design, const L& length, const D& limit) {
  return milli(constant(flat_twin_cables[i].drop_mv_per_a_m, unit::millivolt_per_ampere_metre) * design * length) <= limit;
}
template <class I, class L, class E, class Z>
constexpr auto disconnects(I i, const L& length, const E& external, const Z& limit) {
  return external + milli(warm_conductor_factor * (constant(flat_twin_cables[i].r1_plus_r2_mohm_per_m, unit::milliohm_per_metre) * length)) <= limit;
}
template <class I, class E>
constexpr auto survives(I i, const E& energy) {
  return energy <= constant(square(protective_core_k * flat_twin_cables[i].protective_mm2), unit::ampere_squared_second);
}
}  // namespace detail

inline constexpr auto smallest_size = formula(
    out{"smallest_size", "S", unit::square_millimetre, "Smallest flat twin cable that satisfies capacity, voltage drop, loop impedance and fault energy together."},
    in<smallest_size_arguments>(
        choice{"method", method_capacities, "way of installation, of Table 4D5"}, arg{"rating_a", "I_n", unit::ampere, positive_to(1e4), "rated current of the device"}.usually(6, 40),
        arg{"design_current_a", "I_b", unit::ampere, between(0, 1e4), "design current"}.usually(1, 32),
        arg{"length_m", "L", unit::metre, between(0, 1e5), "length of the run, one way"}.usually(2, 20),
        arg{"correction_factor", "C", unit::one, positive_to(2), "product of the factors at the worst place"}.usually(0.95, 1),
        arg{"drop_limit_v", "ΔU_max", unit::volt, positive_to(1e4), "voltage drop allowed"}.usually(6.9, 11.5),
        arg{"external_ohm", "Z_e", unit::ohm, between(0, 1e6), "impedance of the loop outside the installation"}.usually(0.1, 0.35),
        arg{"loop_limit_ohm", "Z_max", unit::ohm, positive_to(1e6), "highest loop impedance, C_min in it"}.usually(1, 5),
        arg{"let_through_a2s", "I²t", unit::ampere_squared_second, between(0, beyond_measure), "energy that the device lets through at the fault current; the maker's figure"}.usually(1000, 13000)),
    flat_twin_table,
    [](auto method, auto rating, auto design, auto length, auto correction, auto drop_limit, auto external, auto loop_limit, auto energy) {
      using T = widest_t<decltype(rating), decltype(design), decltype(length), decltype(correction), decltype(drop_limit), decltype(external), decltype(loop_limit), decltype(energy)>;
      auto capacity = let("S_I", unit::square_millimetre, detail::smallest_of<T>([&](auto i) { return detail::carries(i, method, rating, correction); }));
      auto drop = let("S_U", unit::square_millimetre, detail::smallest_of<T>([&](auto i) { return detail::drops_little(i, design, length, drop_limit); }));
      auto loop = let("S_Z", unit::square_millimetre, detail::smallest_of<T>([&](auto i) { return detail::disconnects(i, length, external, loop_limit); }));
      auto heat = let("S_k", unit::square_millimetre, detail::smallest_of<T>([&](auto i) { return detail::survives(i, energy); }));
      return maximum(maximum(capacity, drop), maximum(loop, heat));
    },
    requires_that([](auto method, auto rating, auto, auto, auto correction, auto, auto, auto, auto) {
                    return detail::carries(std::integral_constant<std::size_t, flat_twin_sizes - 1>{}, method, rating, correction);
                  }, "16 mm² carries the device's rating; otherwise another cable or way of installation"),
    requires_that([](auto, auto, auto design, auto length, auto, auto drop_limit, auto, auto, auto) {
                    return detail::drops_little(std::integral_constant<std::size_t, flat_twin_sizes - 1>{}, design, length, drop_limit);
                  }, "16 mm² keeps the voltage drop; otherwise a shorter run"),
    requires_that([](auto, auto, auto, auto length, auto, auto, auto external, auto loop_limit, auto) {
                    return detail::disconnects(std::integral_constant<std::size_t, flat_twin_sizes - 1>{}, length, external, loop_limit);
                  }, "16 mm² keeps the loop impedance; otherwise a residual current device or a shorter run"),
    requires_that([](auto, auto, auto, auto, auto, auto, auto, auto, auto energy) {
                    return detail::survives(std::integral_constant<std::size_t, flat_twin_sizes - 1>{}, energy);
                  }, "the protective conductor of 16 mm² bears the energy; otherwise another device"),
    remarks{"exact for the printed tables; conductors at 70 °C, protective conductor as a core of the cable", "the smallest of 1, 1.5, 2.5, 4, 6, 10 and 16 mm²"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Demand of a dwelling: what of the connected load counts, by the printed rules of diversity.
// Subject: electrical.
#pragma once
#include "conductors.hpp"

namespace makegood {
inline namespace v1 {
namespace electrical {

inline constexpr source diversity_table{"J. Whitfield, The Electrician's Guide to the Wiring Regulations", "Table 6.2, household"};

inline constexpr column socket_columns[] = {{"I_s", unit::ampere}};
inline constexpr choice_row socket_rows[] = {{"without_socket", "no socket on the control unit", {0}}, {"with_socket", "a socket on the control unit", {5}}};
inline constexpr choice_table sockets{socket_columns, socket_rows};
inline constexpr auto cooker_demand = formula(
    out{"cooker_demand", "I", unit::ampere, "Demand of a household cooker: 10 A, 30 % of the rest, and 5 A for a socket on its control unit."},
    in(arg{"connected_a", "I_c", unit::ampere, between(0, 1000), "connected current of all its elements"}.usually(10, 65), choice{"socket", sockets, "socket on the control unit"}),
    diversity_table,
    [](auto connected, auto socket) {
      auto first = constant(10.0, unit::ampere);
      return minimum(connected, first) + 0.3 * maximum(connected - first, constant(0.0, unit::ampere)) + socket[0];
    },
    remarks{"a rule of design: single households go above it now and then", "the connected current itself up to 10 A"});
inline constexpr auto heating_demand = formula(
    out{"heating_demand", "I", unit::ampere, "Demand of fixed heating and power other than cookers, motors and water heaters: 10 A and half of the rest."},
    in(arg{"connected_a", "I_c", unit::ampere, between(0, 1000), "connected current"}.usually(10, 60)), diversity_table,
    [](auto connected) {
      auto first = constant(10.0, unit::ampere);
      return minimum(connected, first) + 0.5 * maximum(connected - first, constant(0.0, unit::ampere));
    },
    remarks{"a rule of design; floor warming, storage and thermostatic water heaters count in full", "the connected current itself up to 10 A"});
inline constexpr auto lighting_demand = formula(
    out{"lighting_demand", "I", unit::ampere, "Demand of household lighting: 66 % of what is connected."},
    in(arg{"connected_a", "I_c", unit::ampere, between(0, 1000), "connected current"}.usually(1, 20)), diversity_table,
    [](auto connected) { return percent(constant(66.0, unit::percent) * connected); }, remarks{"a rule of design", "0 A without lighting"});
inline constexpr auto circuits_demand = formula(
    out{"circuits_demand", "I", unit::ampere, "Demand of standard socket circuits: the largest rating in full and 40 % of the others."},
    in(arg{"largest_a", "I_1", unit::ampere, between(0, 1000), "rated current of the largest circuit"}.usually(16, 32),
       arg{"others_a", "I_o", unit::ampere, between(0, 1e4), "sum of the rated currents of the others"}.usually(0, 64)),
    diversity_table, [](auto largest, auto others) { return largest + percent(constant(40.0, unit::percent) * others); },
    remarks{"a rule of design", "the rating itself of one circuit"});

}  // namespace electrical
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// The network solver behind a plain interface, for air.py: grids from outside, flows back.
#include <cstddef>
#include <makegood/air/network.hpp>

using namespace makegood;

extern "C" {
void* network_new(std::size_t nodes, std::size_t branches, const double* from, const double* to, const double* resistance, const double* supply) {
  std::vector<air::network_node> n(nodes);
  std::vector<air::network_branch> b(branches);
  for (std::size_t i = 0; i < nodes; ++i) n[i].supply_l_per_s = supply[i];
  n[0].outside = true;
  for (std::size_t i = 0; i < branches; ++i) {
    b[i].from = static_cast<std::size_t>(from[i]);
    b[i].to = static_cast<std::size_t>(to[i]);
    b[i].loss.quadratic = resistance[i];
  }
  return new air::network_solver(std::move(n), std::move(b));
}
/// Sparse systems solved.
int network_solve(void* solver, double* flow) {
  const auto r = static_cast<air::network_solver*>(solver)->solve();
  std::copy(r.flow_l_per_s.begin(), r.flow_l_per_s.end(), flow);
  return r.iterations;
}
void network_delete(void* solver) { delete static_cast<air::network_solver*>(solver); }
}

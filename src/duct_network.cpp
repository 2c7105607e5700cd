// SPDX-License-Identifier: MIT
// Model of the subject air: a network of ducts and fans.
#include <makegood/air/network.hpp>
#include <cmath>
#include <unordered_map>
#include "ventilation.hpp"

namespace makegood::subjects {
namespace {
using namespace makegood::air;
using document::array;
using document::object;

constexpr model_argument network_arguments[] = {
    {"branches", "objects",
     "{\"name\", \"from\", \"to\": names of nodes; what it takes: \"segments\" as for duct_run, or \"resistance_pa_s2_per_l2\", or a point \"flow_l_per_s\" and "
     "\"pressure_pa\"; \"fan\" as for operating_point, which lifts the pressure from \"from\" to \"to\"}"},
    {"nodes", "objects",
     "{\"name\", \"outside\": true with \"pressure_pa\" (default 0), or \"supply_l_per_s\": what comes in there by itself, negative if it is drawn}; at least one "
     "outside; a node that is not listed is a junction"},
    {"air", "object", "see duct_run", true}};

document::value run_duct_network(const object& inputs, const rulebook&) {
  const std::string who = "duct_network";
  const fields in(who, inputs);
  in.only("branches", "nodes", "air");
  const auto air = air_from(who, in);
  std::vector<network_node> nodes;
  std::unordered_map<std::string, std::size_t> index;
  const auto& listed = list_of(who, in, "nodes");
  for (std::size_t i = 0; i < listed.size(); ++i) {
    const std::string at = path(who, "nodes[" + std::to_string(i) + "]");
    const auto* o = listed[i].as<object>();
    if (!o) throw range_error(at + ": must be an object");
    const fields f(at, *o);
    f.only("name", "outside", "pressure_pa", "supply_l_per_s");
    network_node n;
    n.name = f.text("name");
    if (f.has("outside")) {
      const auto* yes = f.need("outside").as<bool>();
      if (!yes) throw range_error(at + ": \"outside\" must be true or false");
      n.outside = *yes;
    }
    if (f.has("pressure_pa") && !n.outside) throw range_error(at + ": \"pressure_pa\" is that of a place \"outside\"; the pressure of a junction is a result");
    n.pressure_pa = f.number_or("pressure_pa", 0.0);
    n.supply_l_per_s = f.number_or("supply_l_per_s", 0.0);
    if (!index.emplace(n.name, nodes.size()).second) throw range_error(at + ": node \"" + n.name + "\" stands twice");
    nodes.push_back(std::move(n));
  }
  std::vector<network_branch> branches;
  std::unordered_map<std::string, std::size_t> known;
  const auto& list_ = list_of(who, in, "branches");
  const auto node = [&](const std::string& name) {
    const auto found = index.emplace(name, nodes.size());
    if (found.second) nodes.push_back({name, false, 0.0, 0.0});
    return found.first->second;
  };
  for (std::size_t i = 0; i < list_.size(); ++i) {
    const auto* o = list_[i].as<object>();
    const std::string place = path(who, "branches[" + std::to_string(i) + "]");
    if (!o) throw range_error(place + ": must be an object");
    const fields f(place, *o);
    f.only("name", "from", "to", "segments", "resistance_pa_s2_per_l2", "flow_l_per_s", "pressure_pa", "fan");
    network_branch b;
    b.name = f.has("name") ? f.text("name") : std::to_string(i + 1);
    const std::string at = path(who, "branch \"" + b.name + "\"");
    if (!known.emplace(b.name, i).second) throw range_error(at + ": the name stands twice");
    b.from = node(f.text("from"));
    b.to = node(f.text("to"));
    object system;
    for (const char* name : {"segments", "resistance_pa_s2_per_l2", "flow_l_per_s", "pressure_pa"})
      if (f.has(name)) system.set(name, f.need(name));
    if (!system.fields.empty() || !f.has("fan")) b.loss = system_from(at, system, air).curve;
    if (f.has("fan")) {
      const auto fan = fan_from(path(at, "fan"), object_of(at, f, "fan"), air);
      b.fan = fan.curve;
      b.loss.quadratic -= fan.outlet_pa_s2_per_l2;
      if (b.loss.quadratic < 0.0)
        throw range_error(at + ": the velocity pressure at the fan's outlet is more than the branch takes: give the curve as \"total\" pressure, or the branch its outlet");
    }
    branches.push_back(std::move(b));
  }
  network_solver solver(std::move(nodes), std::move(branches));
  const auto r = solver.solve();
  array flows, pressures, text;
  object by_name, at_node;
  std::size_t largest = 0;
  for (std::size_t b = 0; b < solver.branches().size(); ++b) {
    const auto& one = solver.branches()[b];
    const double between = r.pressure_pa[one.from] - r.pressure_pa[one.to];
    flows.push_back(object{{"name", one.name}, {"flow_l_per_s", r.flow_l_per_s[b]}, {"pressure_pa", between}, {"lost_pa", one.loss(r.flow_l_per_s[b])}, {"reversed", r.flow_l_per_s[b] < 0.0}});
    if (std::fabs(r.flow_l_per_s[b]) > std::fabs(r.flow_l_per_s[largest])) largest = b;
  }
  for (std::size_t i = 0; i < solver.nodes().size(); ++i)
    pressures.push_back(object{{"name", solver.nodes()[i].name}, {"pressure_pa", r.pressure_pa[i]}, {"outside", solver.nodes()[i].outside}});
  array beyond;
  for (const auto b : r.beyond_curve) {
    beyond.push_back(solver.branches()[b].name);
    text.push_back("The fan in \"" + solver.branches()[b].name + "\" works outside the points of its curve (" + number_text(r.flow_l_per_s[b], 3) + " l/s): what it does there was not given.");
  }
  std::string against;
  int count = 0;
  for (std::size_t b = 0; b < solver.branches().size() && count <= 10; ++b)
    if (r.flow_l_per_s[b] < 0.0 && ++count <= 10) against += (against.empty() ? "\"" : ", \"") + solver.branches()[b].name + "\"";
  if (count > 0) text.push_back("Against their direction: " + against + (count > 10 ? " and more." : "."));
  text.push_back("In balance after " + std::to_string(r.iterations) + " steps; no branch is off by more than " + quantity_text(r.pressure_residual_pa, "Pa", 2) + ".");
  return object{{"branches", flows},
                {"nodes", pressures},
                {"iterations_count", static_cast<std::size_t>(r.iterations)},
                {"pressure_residual_pa", r.pressure_residual_pa},
                {"flow_residual_l_per_s", r.flow_residual_l_per_s},
                {"beyond_curve", beyond},
                {"text", text}};
}
constexpr model duct_network_model{
    {"duct_network",
     "Flows and pressures of a network of ducts, terminals and fans with loops; flows may turn out against the direction of a branch. Solved for flows and "
     "pressures together (global gradient method).",
     network_arguments, {"Todini and Pilati 1988, A gradient algorithm for the analysis of pipe networks", "global gradient method", "memory"}, run_duct_network, nullptr}};

}  // namespace

void duct_network(std::vector<entry>& all) { append(all, "air", list<duct_network_model>{}); }
}  // namespace makegood::subjects

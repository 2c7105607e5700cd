// SPDX-License-Identifier: MIT
// Runs, fans and networks by their headers: slopes, the pattern that is kept, steps to the balance.
#include <doctest/doctest.h>
#include <cmath>
#include <cstdint>
#include <makegood/air/fan_diagnosis.hpp>
#include <makegood/air/measured_flow.hpp>
#include <makegood/air/network.hpp>
#include <makegood/air/outlets.hpp>
#include <makegood/rules/all.hpp>

using namespace makegood;
using namespace makegood::air;

namespace {
double counted(std::uint64_t i) { return job::detail::counted_uniform(3, i, 0); }

struct grid {
  std::vector<network_node> nodes;
  std::vector<network_branch> branches;
  explicit grid(std::size_t k, bool ducts = false) : nodes(k * k) {
    std::uint64_t n = 0;
    for (std::size_t i = 0; i < k * k; ++i) nodes[i].name = std::to_string(i), nodes[i].supply_l_per_s = -counted(n++);
    nodes[0].outside = true;
    nodes[0].supply_l_per_s = 0.0;
    const auto join = [&](std::size_t a, std::size_t b) {
      network_branch one;
      one.name = nodes[a].name + "-" + nodes[b].name;
      one.from = a;
      one.to = b;
      if (ducts) {
        const auto section = duct_section::round(80.0 + 120.0 * counted(n++));
        one.loss.add_duct(section, 1.0 + 5.0 * counted(n++), 0.09, {});
        one.loss.add_fitting(section, counted(n++), {});
      } else {
        one.loss.quadratic = std::exp(2.0 * counted(n++) - 1.0);
      }
      branches.push_back(std::move(one));
    };
    for (std::size_t i = 0; i < k; ++i)
      for (std::size_t j = 0; j < k; ++j) {
        if (i + 1 < k) join(i * k + j, (i + 1) * k + j);
        if (j + 1 < k) join(i * k + j, i * k + j + 1);
      }
  }
};
void check_balance(const network_solver& s, const network_result& r) {
  std::vector<double> sum(s.nodes().size(), 0.0);
  double most = 0.0, total = 0.0;
  for (std::size_t b = 0; b < s.branches().size(); ++b) {
    const auto& one = s.branches()[b];
    sum[one.from] -= r.flow_l_per_s[b];
    sum[one.to] += r.flow_l_per_s[b];
    most = std::max(most, std::fabs(r.pressure_pa[one.from] - r.pressure_pa[one.to]));
  }
  for (const auto& n : s.nodes()) total += std::fabs(n.supply_l_per_s);
  for (std::size_t b = 0; b < s.branches().size(); ++b) {
    const auto& one = s.branches()[b];
    CHECK(std::fabs(r.pressure_pa[one.from] - r.pressure_pa[one.to] - one.loss(r.flow_l_per_s[b])) <= 2e-9 * most);
  }
  for (std::size_t i = 0; i < sum.size(); ++i)
    if (!s.nodes()[i].outside) CHECK(std::fabs(sum[i] + s.nodes()[i].supply_l_per_s) <= 1e-9 * total);
}
}  // namespace

TEST_CASE("the slope of a system is that of its pressure, also through the transition") {
  system_curve s;
  s.add_duct(duct_section::round(100), 5.0, 0.09, {});
  s.add_duct({duct_section::shape::rectangular, 204, 60}, 2.0, 0.15, {});
  s.add_fitting(duct_section::round(100), 2.5, {});
  for (double q = 0.3; q < 60.0; q *= 1.07) {
    CAPTURE(q);
    const double e = 1e-5 * q, slope = (s(q + e) - s(q - e)) / (2.0 * e);
    CHECK(std::fabs(s.at(q).slope / slope - 1.0) < 2e-3);  // the straight line of the transition has corners
    CHECK(s(-q) == -s(q));
  }
  CHECK(s(0.0) == 0.0);
  CHECK(s.at(0.0).slope > 0.0);  // laminar: no slope of nothing, which Newton could not leave
}

TEST_CASE("networks of 10, 1 000 and 10 000 branches balance in at most 6 sparse systems, of ducts with their friction in 8") {
  for (const std::size_t k : {3u, 23u, 71u})
    for (const bool ducts : {false, true}) {
      CAPTURE(k);
      CAPTURE(ducts);
      grid g(k, ducts);
      network_solver s(g.nodes, g.branches);
      const auto r = s.solve();
      CHECK(r.iterations <= (ducts ? 8 : 6));
      check_balance(s, r);
    }
}

TEST_CASE("a solver that is used again gives what a new one gives") {
  grid g(8);
  network_solver kept(g.nodes, g.branches);
  (void)kept.solve();
  for (std::size_t b = 0; b < g.branches.size(); b += 3) kept.branch(b).loss.quadratic *= 7.0, g.branches[b].loss.quadratic *= 7.0;
  kept.node(20).supply_l_per_s = g.nodes[20].supply_l_per_s = 11.0;
  const auto again = kept.solve();
  const auto fresh = network_solver(g.nodes, g.branches).solve();
  CHECK(again.flow_l_per_s == fresh.flow_l_per_s);
  CHECK(again.pressure_pa == fresh.pressure_pa);
}

TEST_CASE("a fan in the hump of its curve balances at a point that holds, or says that none does") {
  const fan_curve hump({{0, 30}, {5, 26}, {10, 34}, {20, 28}, {30, 0}});
  for (double k = 0.001; k < 20.0; k *= 1.5) {
    CAPTURE(k);
    network_branch b;
    b.name = "only";
    b.from = 0;
    b.to = 1;
    b.loss.quadratic = k;
    b.fan = hump;
    std::vector<network_node> ends(2);
    for (auto& e : ends) e.outside = true;
    system_curve system;
    system.quadratic = k;
    const auto all = intersections(hump.pressure(), system);
    const auto r = network_solver(ends, {b}).solve();
    bool known = false;
    for (const auto& x : all) known = known || std::fabs(x.flow_l_per_s - r.flow_l_per_s[0]) < 1e-6;
    CHECK((known || !r.beyond_curve.empty()));
  }
}

TEST_CASE("many pairs in one call are each what one call gives, whatever stands beside them") {
  std::vector<fan_curve> fans;
  for (int i = 0; i < 7; ++i) {
    std::vector<fan_point> points;
    for (int k = 0; k <= 6; ++k) points.push_back({(20.0 + 10.0 * i) * k / 6.0, (30.0 + 20.0 * i) * (1.0 - std::pow(k / 6.0, 1.5 + 0.1 * i))});
    fans.emplace_back(points);
  }
  const std::size_t n = 1300;
  std::vector<double> which(n), d(n), length(n), rough(n), k(n), flow(n);
  for (std::size_t i = 0; i < n; ++i) {
    which[i] = static_cast<double>(i % 7);
    d[i] = 80.0 + 100.0 * counted(5 * i);
    length[i] = 20.0 * counted(5 * i + 1);
    rough[i] = counted(5 * i + 2);
    k[i] = 1.0 + 5.0 * counted(5 * i + 3);
  }
  operating_flows(fans, which, {d, length, rough, k}, {}, flow);
  for (std::size_t i = 0; i < n; ++i) {
    double alone = 0.0;
    operating_flows(fans, std::span(&which[i], 1), {{&d[i], 1}, {&length[i], 1}, {&rough[i], 1}, {&k[i], 1}}, {}, std::span(&alone, 1));
    CHECK(alone == flow[i]);
    system_curve system;
    system.add_duct(duct_section::round(d[i]), length[i], rough[i], {});
    system.add_fitting(duct_section::round(d[i]), k[i], {});
    const auto one = operating_point(fans[static_cast<std::size_t>(which[i])], system);
    CHECK(std::fabs(one.flow.value / flow[i] - 1.0) < 1e-12);
  }
}

TEST_CASE("what rulebooks ask for, and how they decide, by headers alone") {
  ventilated_room inner;
  inner.name = "inner";
  inner.kind = "bathroom";
  inner.outside_wall = false;
  for (const double volume : {5.0, 13.5, 18.0, 40.0}) {
    inner.volume_m3 = volume;
    const auto r = ventilation_required({inner}, {}, rules::england_adf_2021);
    CHECK(r.rooms[0].flow_l_per_s == doctest::Approx(std::max(15.0, 4.0 * volume / 3.6)).epsilon(1e-12));
    CHECK(r.rooms[0].overrun_min == 15.0);
  }
  // the first book that has a rule answers
  const auto two = ventilation_required({inner}, {}, rulebook(rules::australia_ncc_2019) + rulebook(rules::england_adf_2021));
  CHECK(two.rooms[0].flows[0].value == 25.0);
  CHECK(two.rooms[0].flows.size() == 2);
  inner.kind = "cellar";
  CHECK_THROWS_AS(ventilation_required({inner}, {}, rules::england_adf_2021), range_error);
  // one reading, two countries
  const measured read(14.5, 0.1, "hood");
  CHECK(commissioned_flow(read, 15.0, "room", rules::england_adf_2021).outcome == outcome::fail);
  CHECK(commissioned_flow(read, 15.0, "room", rules::finland_1009).outcome == outcome::pass);
  CHECK(commissioned_flow(measured(14.5, 1.5, "hood"), 15.0, "room", rules::finland_1009).outcome == outcome::fail);
  // no condition of the rows is a word that its check does not know
  struct {
    std::string_view limit;
    const choice_table* words;
  } constexpr known[] = {{"whole_dwelling", &dwelling_counts}, {"overrun", &overrun_cases}, {"air_changes", &air_change_purposes}, {"background_ventilator", &ventilated_rooms},
                         {"ventilation_distance", &ventilation_distances}, {"duct_length", &limited_ducts}, {"purge_opening", &purge_openings}, {"extract_rate", &room_kinds},
                         {"surface_humidity", &humidity_periods}, {"discharge_outside", &discharge_places}};
  for (const auto* t : rules::all)
    for (const auto& row : t->rules)
      for (const auto& k : known)
        if (row.limit == k.limit && !row.condition.empty()) {
          CAPTURE(row.condition);
          CHECK(k.words->find(row.condition) >= 0);
        }
}

TEST_CASE("outlets by headers alone: a void is never ranked, a wider duct gives more air") {
  outlet_job job;
  job.fan = fan_curve({{0.0, 60.0}, {10.0, 52.0}, {20.0, 34.0}, {30.0, 0.0}});
  job.required_l_per_s = 15.0;
  for (const double diameter : {80.0, 100.0, 125.0}) {
    duct_segment s;
    s.name = "duct";
    s.section = duct_section::round(diameter);
    s.length_m = 6.0;
    outlet_option o;
    o.name = number_text(diameter);
    o.run = {s};
    job.options.push_back(o);
    o.discharge_to = "roof_void";
    job.options.push_back(o);
  }
  for (const auto& book : {rulebook(), rulebook(rules::england_adf_2021), rulebook(rules::australia_ncc_2019)}) {
    const auto r = outlet_options(job, book);
    REQUIRE(r.all.size() == 6);
    for (std::size_t i = 0; i < 6; ++i) CHECK(r.all[i].ranked == (i < 3));
    double last = 1e9;
    for (std::size_t i = 0; i < 3; ++i) {
      const auto& one = r.all[i];
      CHECK(job.options[one.option].discharge_to == "outside");
      CHECK(one.flow_l_per_s <= last);
      last = one.flow_l_per_s;
      CHECK(one.low_l_per_s <= one.flow_l_per_s);
      CHECK(one.insulate_m == 6.0);
    }
    for (std::size_t i = 3; i < 6; ++i) CHECK(r.all[i].discharge.outcome == (book.id().empty() ? outcome::undecided : outcome::fail));
  }
}

TEST_CASE("criteria of mould: wet for ever fails, dry passes, between them nobody knows") {
  const rulebook both = rulebook(rules::england_adf_2021) + rulebook(rules::iso13788);
  CHECK(surface_criteria(100.0, true, both).size() == 4);
  for (const auto& c : surface_criteria(100.0, true, both)) CHECK(c.outcome == outcome::fail);
  for (const auto& c : surface_criteria(74.0, false, both)) CHECK(c.outcome == outcome::pass);
  for (const auto& c : surface_criteria(96.0, false, both)) CHECK(c.outcome == outcome::undecided);
}

TEST_CASE("two unlike fans balance on both curves at once, or one of them is said to be driven") {
  std::vector<fan_point> a, b;
  for (int i = 0; i <= 50; ++i) {
    const double q = 0.5 * i, r = 0.6 * i;
    a.push_back({q, std::max(0.0, 50.0 - 0.08 * q * q)});
    b.push_back({r, std::max(0.0, 40.0 - 40.0 / 900.0 * r * r)});
  }
  const fan_curve one(a), two(b);
  for (int i = 1; i <= 60; ++i) {
    system_curve system;
    system.quadratic = 0.002 * i * i;
    for (const auto stand : {fans_stand::series, fans_stand::parallel}) {
      const auto r = operating_point_of_two(one, two, stand, system);
      if (r.is != two_fans_result::state::found) {
        CHECK(r.is == two_fans_result::state::one_driven);
        const double strong = r.alone_l_per_s[static_cast<std::size_t>(1 - r.weaker)];
        CHECK((stand == fans_stand::series ? strong : system(strong)) > r.weaker_limit);
        continue;
      }
      const auto& at = r.all[r.used];
      CHECK(std::fabs(system(at.flow_l_per_s) - at.pressure_pa) < 1e-9 * at.pressure_pa);
      for (std::size_t k = 0; k < 2; ++k) CHECK(std::fabs((k == 0 ? one : two).pressure().at(at.fans[k].flow_l_per_s).value - at.fans[k].pressure_pa) < 1e-9 * at.pressure_pa);
      const bool series = stand == fans_stand::series;
      CHECK(std::fabs((series ? at.fans[0].pressure_pa + at.fans[1].pressure_pa : at.fans[0].flow_l_per_s + at.fans[1].flow_l_per_s) / (series ? at.pressure_pa : at.flow_l_per_s) - 1.0) <
            1e-9);
    }
  }
}

TEST_CASE("a hood that takes nothing corrects nothing, and more hood corrects more") {
  const fan_curve fan({{0, 60}, {10, 50}, {20, 30}, {30, 0}});
  flow_measurement m;
  m.readings = {12.0};
  m.fan = &fan.pressure();
  double last = 0.999999;
  for (const double pressure : {0.0, 2.0, 5.0, 10.0, 20.0}) {
    m.hood_pressure_pa = pressure;
    const auto r = measured_flow(m);
    CHECK(r.hood_factor > last);
    if (pressure == 0.0) CHECK(std::fabs(r.hood_factor - 1.0) < 1e-12);
    last = r.hood_factor;
  }
  CHECK(last > 1.2);
}

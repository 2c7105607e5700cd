// SPDX-License-Identifier: MIT
// Which test next: sums against full enumeration, the rules of danger and of live work, families as data, an inquiry step by step.
#include <doctest/doctest.h>
#include <makegood/job/session.hpp>
#include <cmath>
#include <ctime>

using namespace makegood;
using namespace makegood::job;

namespace {
/// Words alone: everything can be enumerated.
struct small_case {
  std::vector<test> tests;
  std::vector<hypothesis> hypotheses;
  std::vector<stake> stakes;
  std::vector<test_work> works;
  std::vector<act> acts;
};
double draw(std::uint64_t seed, std::uint64_t a, std::uint64_t b) { return job::detail::counted_uniform(seed, a, b); }
small_case random_case(std::uint64_t seed, bool deadly) {
  small_case c;
  const std::size_t n_tests = 2 + static_cast<std::size_t>(3 * draw(seed, 0, 0)), n = 3 + static_cast<std::size_t>(3 * draw(seed, 0, 1));
  for (std::size_t t = 0; t < n_tests; ++t) {
    const auto id = "t" + std::to_string(t);
    c.tests.push_back({id, id, 0.0, 0.0, {"a", "b", "c"}});
    test_work w;
    w.reading.test = id;
    w.minutes = 1.0 + 9.0 * draw(seed, 1, t);
    c.works.push_back(w);
  }
  for (std::size_t h = 0; h < n; ++h) {
    hypothesis one;
    one.id = "h" + std::to_string(h);
    one.prior = 0.2 + draw(seed, 2, h);
    if (deadly && h == 1) one.danger = danger::life;
    for (std::size_t t = 0; t < n_tests; ++t) {
      const double a = draw(seed, 10 + t, h), b = draw(seed, 30 + t, h), d = draw(seed, 50 + t, h), sum = a + b + d;
      one.predictions.emplace_back("t" + std::to_string(t), prediction::outcomes({{"a", a / sum}, {"b", b / sum}, {"c", d / sum}}));
    }
    c.hypotheses.push_back(std::move(one));
    c.stakes.push_back({h != 0});
  }
  c.acts.push_back({"isolate", "", 0.0, 5.0, {}, true});
  c.acts.push_back({"leave"});
  for (std::size_t h = 1; h < n; ++h) c.acts.push_back({"mend " + std::to_string(h), "", 300.0 * draw(seed, 70, h), 20.0, {"h" + std::to_string(h)}});
  c.acts.push_back({"replace", "", 600.0, 60.0, {}});
  for (std::size_t h = 1; h < n; ++h) c.acts.back().ends.push_back("h" + std::to_string(h));
  return c;
}
}  // namespace

TEST_CASE("next test: the value of a test is that of full enumeration, between nothing and knowing all") {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    const auto c = random_case(seed, seed % 3 == 0);
    explanations engine(c.tests, c.hypotheses);
    engine.explain({});
    planner p(engine, c.works, c.acts, c.stakes);
    const auto n = p.plan(engine, {}, {}, std::vector<bool>(c.works.size(), false));
    const auto& rows = engine.table().rows;
    const std::size_t width = rows.size();
    const auto best = [&](const std::vector<double>& w) {
      double least = 1e300;
      for (std::size_t a = 0; a < c.acts.size(); ++a) {
        double sum = 0.0;
        for (std::size_t h = 0; h < width; ++h) sum += w[h] * p.loss(a, h);
        least = std::min(least, sum);
      }
      return least;
    };
    std::vector<double> w(width);
    for (std::size_t h = 0; h < width; ++h) w[h] = rows[h].posterior;
    const double now = best(w);
    for (const auto& v : n.tests) {
      double after = 0.0;
      for (const char* word : {"a", "b", "c"}) {
        // by Bayes' rule, the reading really taken
        auto joint = w;
        for (std::size_t h = 0; h < width; ++h) {
          double chance = 1.0 / 3.0;  // of "none of these"
          if (h + 1 < width)
            for (const auto& q : c.hypotheses[h].predictions)
              if (q.first == c.tests[v.test].id)
                for (const auto& o : q.second.chances())
                  if (o.outcome == word) chance = o.probability;
          joint[h] *= chance;
        }
        after += best(joint);
      }
      CHECK(v.value == doctest::Approx(now - after).epsilon(1e-9).scale(now));
      CHECK(v.value >= 0.0);
      CHECK(v.value <= n.perfect_information + 1e-9 * now);
      CHECK(v.information_bits >= 0.0);
    }
  }
}

TEST_CASE("next test: danger comes before money") {
  auto c = random_case(7, true);
  explanations engine(c.tests, c.hypotheses);
  engine.explain({});
  planner p(engine, c.works, c.acts, c.stakes);
  const auto n = p.plan(engine, {}, {}, std::vector<bool>(c.works.size(), true));
  CHECK(n.is == advice::act);
  const auto& best = n.acts.front();
  CHECK(best.allowed);
  for (const auto& a : n.acts) {
    bool ends = c.acts[a.act].isolates;
    for (const auto& e : c.acts[a.act].ends) ends = ends || e == "h1";
    if (!ends) CHECK(a.danger_left > engine.table().rows[1].posterior - 1e-12);
    if (!a.allowed) CHECK(a.danger_left > 1e-3);
  }
  SUBCASE("what isolating would not end must be told by a test") {
    c.stakes[1].isolation_ends_danger = false;
    planner q(engine, c.works, c.acts, c.stakes);
    const auto m = q.plan(engine, {}, {}, std::vector<bool>(c.works.size(), false));
    CHECK(m.is == advice::must_test);
    CHECK(m.must_tell == 1);
  }
}

TEST_CASE("next test: where isolating does not end the danger, the act that leaves least of it is advised") {
  // h1 (0.95 of 0.95): deadly, and isolating does not end it; h2 (0.04 of 0.95): deadly, and isolating ends it. No test is left.
  small_case c;
  c.tests.push_back({"t", "t", 0.0, 0.0, {"a"}});
  for (const double prior : {0.01, 0.95, 0.04}) {
    hypothesis one;
    one.id = "h" + std::to_string(c.hypotheses.size());
    one.prior = prior;
    if (one.id != "h0") one.danger = danger::life;
    c.hypotheses.push_back(one);
    c.stakes.push_back({one.id != "h0"});
  }
  c.stakes[1].isolation_ends_danger = false;
  c.acts = {{"isolate", "", 0.0, 5.0, {}, true}, {"leave"}, {"mend 1", "", 100.0, 60.0, {"h1"}}, {"mend 2", "", 1.0, 5.0, {"h2"}}};
  explanations engine(c.tests, c.hypotheses);
  engine.explain({});
  planner p(engine, c.works, c.acts, c.stakes);
  const auto n = p.plan(engine, {}, {}, {});
  CHECK(c.acts[n.act].id == "mend 1");
  for (const auto& v : n.acts) {
    CAPTURE(c.acts[v.act].id);
    CHECK(v.allowed == (c.acts[v.act].id == "isolate" || c.acts[v.act].id == "mend 1"));
    if (c.acts[v.act].id == "isolate") CHECK(v.danger_left == doctest::Approx(0.95 * 0.95));
    if (c.acts[v.act].id == "mend 1") CHECK(v.danger_left == doctest::Approx(0.95 * 0.04));
  }
}

TEST_CASE("next test: no live test while a dead one tells, and conditions in their order") {
  const std::vector<test> tests{{"dead", "", 0.0, 0.0, {"good", "bad"}}, {"live", "", 0.0, 0.0, {"good", "bad"}}};
  std::vector<hypothesis> list(2);
  list[0] = {"sound", "", 1.0, {}, {{"dead", prediction::outcomes({{"good", 0.9}, {"bad", 0.1}})}, {"live", prediction::outcomes({{"good", 0.99}, {"bad", 0.01}})}}};
  list[1] = {"broken", "", 1.0, {}, {{"dead", prediction::outcomes({{"good", 0.1}, {"bad", 0.9}})}, {"live", prediction::outcomes({{"good", 0.01}, {"bad", 0.99}})}}};
  test_work dead{{"dead", {}, {}, 0.0}, 5.0};
  dead.needs = {"isolated"};
  test_work live{{"live", {}, {}, 0.0}, 1.0};
  live.live = true;
  live.needs = {"energised"};
  const std::vector<condition> conditions{{"isolated", "isolate", 4.0, false, {}, {"energised"}}, {"proved", "proved", 0.0, true}, {"energised", "energise", 2.0, false, {"proved"}, {"isolated"}}};
  const std::vector<act> acts{{"isolate", "", 0.0, 5.0, {}, true}, {"leave"}, {"mend", "", 100.0, 30.0, {"broken"}}};
  explanations engine(tests, list);
  engine.explain({});
  planner p(engine, {dead, live}, acts, {{false}, {true}}, conditions);
  auto n = p.plan(engine, {"energised"}, {}, {false, false});
  CHECK(n.is == advice::test);
  CHECK(n.test == 0);
  for (const auto& v : n.tests) {
    if (v.test == 1) CHECK(v.is == offer::live_while_dead_tells);
    if (v.test == 0) {
      CHECK(v.first == std::vector<std::string>{"isolated"});
      CHECK(v.minutes == 9.0);
    }
  }
  n = p.plan(engine, {"isolated"}, {}, {true, false});
  for (const auto& v : n.tests)
    if (v.test == 1) CHECK(v.is == offer::needs_proof);
  n = p.plan(engine, {"isolated", "proved"}, {}, {true, false});
  for (const auto& v : n.tests)
    if (v.test == 1) CHECK(v.is == offer::offered);
  CHECK_THROWS_AS(planner(engine, {dead, live}, {{"leave"}}, {{false}, {true}}, conditions), range_error);  // isolating is always an act
}

TEST_CASE("next test: a reading to come is foreseen as it is then explained") {
  // one shared gain, one tolerance: what is expected after a reading is the conditional distribution, by the kernel's own densities
  const std::vector<test> tests{{"a", "", 1.0, 1000.0}, {"b", "", 1.0, 1000.0}};
  hypothesis h{"sound", "", 1.0, {{"part", distribution::normal(1.0, 0.05)}}, {{"a", prediction([](const auto& p) { return 100.0 * p[0]; })}, {"b", prediction([](const auto& p) { return 50.0 * p[0] + 3.0; })}}};
  explanations engine(tests, {h});
  const auto with = [](const char* t, double x) { return observation::value(t, measured(x, 0.2, std::string("own ") + t)).with_gain("meter", 0.01); };
  const std::vector<observation> one{with("a", 104.0)};
  engine.explain(one);
  const double before = engine.log_likelihood(0);
  foreseen f;
  const coming_reading coming{"b", {{"own b", 0.2}}, {{"meter", 0.01}}, 0.0};
  engine.foresee(0, {&coming, 1}, {&f, 1});
  REQUIRE(f.parts.size() == 1);
  for (const double x : {52.0, 54.0, 55.0, 57.0}) {
    const std::vector<observation> both{one[0], with("b", x)};
    engine.explain(both);
    const double density = engine.log_likelihood(0) - before, z = (x - f.parts[0].mean) / f.parts[0].sd;
    CHECK(density == doctest::Approx(-0.5 * z * z - std::log(f.parts[0].sd) - 0.91893853320467274).epsilon(1e-3));
  }
}

TEST_CASE("next test: fifty hypotheses and thirty tests in time, and the same bits again") {
  std::vector<test> tests;
  std::vector<test_work> works;
  for (int t = 0; t < 30; ++t) {
    const auto id = "t" + std::to_string(t);
    tests.push_back({id, id, 0.1, 10000.0});
    test_work w;
    w.reading = {id, {{"own " + id, 0.5}}, {{"meter", 0.01}}, 0.0};
    w.minutes = 2.0 + t % 5;
    works.push_back(w);
  }
  std::vector<hypothesis> list;
  std::vector<stake> stakes;
  std::vector<act> acts{{"isolate", "", 0.0, 10.0, {}, true}, {"leave"}};
  for (int k = 0; k < 50; ++k) {
    hypothesis h;
    h.id = "h" + std::to_string(100 + k);
    h.parameters = {{"part", distribution::normal(1.0, 0.05)}, {"lead", distribution::uniform(0.0, 0.4)}};
    for (int t = 0; t < 30; ++t) {
      const double level = 20.0 + 400.0 * draw(5, static_cast<std::uint64_t>(k % (2 + t)), static_cast<std::uint64_t>(t));
      h.predictions.emplace_back("t" + std::to_string(t), prediction([level](const auto& p) { return level * p[0] + p[1]; }));
    }
    if (k > 0) acts.push_back({"mend " + h.id, "", 50.0 + 5.0 * k, 30.0, {h.id}});
    list.push_back(std::move(h));
    stakes.push_back({k > 0});
  }
  explanations engine(tests, list);
  engine.explain({});
  planner p(engine, works, acts, stakes);
  const std::vector<bool> made(works.size(), false);
  const auto first = p.plan(engine, {}, {}, made);
  double best = 1e9;
  for (int i = 0; i < 5; ++i) {
    const auto t0 = std::clock();
    const auto n = p.plan(engine, {}, {}, made);
    best = std::min(best, 1e3 * static_cast<double>(std::clock() - t0) / CLOCKS_PER_SEC);
    REQUIRE(n.tests.size() == first.tests.size());
    for (std::size_t k = 0; k < n.tests.size(); ++k) {
      CHECK(n.tests[k].test == first.tests[k].test);
      CHECK(n.tests[k].value == first.tests[k].value);
      CHECK(n.tests[k].information_bits == first.tests[k].information_bits);
    }
  }
  MESSAGE("30 tests ranked with 50 hypotheses: " << best << " ms");
}

TEST_CASE("inquiry: readings, what they supersede, and steps taken back") {
  session s(fill(family("heating_element"), document::object{{"power_w", 600.0}}));
  const auto at_start = s.table().rows;
  const auto first = s.read("element_ohm", reading(60.0));
  CHECK(first == "element_ohm #1");
  const auto wrong = s.table().rows;
  const auto second = s.read("element_ohm", reading(88.1), "", first);
  CHECK(s.table().rows[0].posterior > wrong[0].posterior);
  CHECK_THROWS_AS(s.withdraw(first), range_error);       // superseded: it does not stand
  CHECK_THROWS_AS(s.read("element_omh", reading(1.0)), range_error);
  CHECK_THROWS_AS(s.read("element_ohm", "good"), range_error);
  CHECK_THROWS_AS(s.stands("isolatd"), range_error);
  CHECK(s.undo());
  for (std::size_t h = 0; h < wrong.size(); ++h) CHECK(s.table().rows[h].posterior == wrong[h].posterior);
  CHECK(s.undo());
  for (std::size_t h = 0; h < wrong.size(); ++h) CHECK(s.table().rows[h].posterior == at_start[h].posterior);
  CHECK(!s.undo());
  const auto old = s.read("element_ohm", reading(60.0));
  s.withdraw(s.read("element_ohm", reading(88.1), "better", old));  // what it superseded counts again
  for (std::size_t h = 0; h < wrong.size(); ++h) CHECK(s.table().rows[h].posterior == wrong[h].posterior);
  while (s.undo()) {
  }

  s.read("current_a", reading(2.6));  // live, and no insulation was shown
  REQUIRE(s.findings().size() == 1);
  CHECK(s.findings()[0].kind == "precondition");
  CHECK_THROWS_AS(fill(family("heating_element"), document::object{}), range_error);
  CHECK_THROWS_AS(fill(family("heating_element"), document::object{{"power_w", 600.0}, {"volts", 230.0}}), range_error);
  CHECK_THROWS_AS(family("heating_elements"), range_error);
}

TEST_CASE("inquiry: a family is extended and overridden as data") {
  const document::object patch{{"hypotheses", document::array{document::object{{"id", "open"}, {"prior", 50.0}}, document::object{{"id", "damp"}, {"remove", true}},
                                                              document::object{{"id", "mouse"}, {"title", "gnawed"}, {"shows", document::object{{"element_ohm", document::object{{"above", 0.5}}}}}}}},
                               {"acts", document::array{document::object{{"id", "replace"}, {"ends", document::array{"open"}}}}}};
  const auto changed = fill(extended(family("heating_element"), patch), document::object{{"power_w", 600.0}});
  const auto plain = fill(family("heating_element"), document::object{{"power_w", 600.0}});
  CHECK(changed.hypotheses.size() == plain.hypotheses.size());  // one more, one less
  for (const auto& h : changed.hypotheses) {
    if (h.id == "open") CHECK(h.prior == 50.0);
    CHECK(h.id != "damp");
  }
  CHECK(changed.hypotheses.back().id == "mouse");
  CHECK_THROWS_AS(extended(family("heating_element"), document::object{{"tests", document::array{document::object{{"id", "nothing"}, {"remove", true}}}}}), range_error);
}

TEST_CASE("inquiry: expressions say what is wrong with them") {
  const std::vector<std::string> names{"part"};
  const numbers_by_name given{{"power_w", 600.0}, {"voltage_v", 230.0}, {"nothing", no_number}};
  const auto refused = [&](const char* text, const char* part) {
    try {
      expression(text, names, given);
    } catch (const range_error& e) {
      CHECK_MESSAGE(std::string(e.what()).find(part) != std::string::npos, e.what());
      return;
    }
    FAIL("accepted: " << text);
  };
  refused("power_w *", "missing");
  refused("(power_w", "bracket");
  refused("powr_w", "power_w");
  refused("heating.element_resistance(power_w)", "voltage_v");
  refused("heating.no_such(1)", "neither");
  refused("nothing + 1", "not given");
  refused("power_w 3", "too much");
  refused("min(1)", "2 arguments");
  const expression e("heating.element_resistance(power_w, voltage_v)^2/part - -3*min(part, 2) + parallel(part, 4)", names, given);
  double slope = 0.0;
  const double x = 1.3, h = 1e-6, up = x + h, down = x - h;
  CHECK(e.slopes(&x, 1, &slope) == e.value(&x));
  CHECK(slope == doctest::Approx((e.value(&up) - e.value(&down)) / (2.0 * h)).epsilon(1e-7));
  const double r = 230.0 * 230.0 / 600.0;
  CHECK(e.value(&x) == doctest::Approx(r * r / 1.3 + 3.9 + 1.3 * 4.0 / 5.3).epsilon(1e-14));
}

TEST_CASE("inquiry: many at once give what one each gives") {
  const auto of = fill(family("heating_element"), document::object{{"power_w", 600.0}});
  session_options options;
  options.draws = 0;
  std::vector<double> ohm, mohm;
  for (int i = 0; i < 24; ++i) ohm.push_back(60.0 + 4.0 * i), mohm.push_back(i % 3 == 0 ? no_number : 0.05 * std::pow(2.0, i % 9));
  const std::vector<reading_column> columns{{"element_ohm", ohm}, {"insulation_mohm", mohm}};
  const auto one = many(of, columns, ohm.size(), options, 1), two = many(of, columns, ohm.size(), options, 2);
  CHECK(one.probabilities == two.probabilities);
  CHECK(one.test == two.test);
  for (std::size_t i = 0; i < ohm.size(); i += 5) {
    session s(of, options);
    s.read("element_ohm", reading(ohm[i]));
    if (!is_nan(mohm[i])) s.read("insulation_mohm", reading(mohm[i]));
    for (std::size_t h = 0; h < one.width; ++h) CHECK(one.probabilities[i * one.width + h] == s.table().rows[h].posterior);
    CHECK(one.act[i] == static_cast<int>(s.next().act));
  }
}

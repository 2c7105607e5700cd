// SPDX-License-Identifier: MIT
// Order of work: against every order of every subset, Smith's rule, set-ups paid once, needs, what must be done, durations by simulation.
#include <doctest/doctest.h>
#include <makegood/job/inference.hpp>
#include <makegood/job/order_of_work.hpp>
#include <makegood/job/scores.hpp>
#include <cmath>
#include <numeric>

using namespace makegood;
using namespace makegood::job;

namespace {
double draw(std::uint64_t seed, std::uint64_t a, std::uint64_t b) { return job::detail::counted_uniform(seed, a, b); }
int whole(std::uint64_t seed, std::uint64_t a, std::uint64_t b, int most) { return static_cast<int>(draw(seed, a, b) * (most + 1)); }

struct small_job {
  std::vector<work_task> tasks;
  std::vector<work_setup> setups;
  double time = 0.0, all = 0.0;  // available; of all tasks with every set-up for each
};
/// Whole minutes and quarters of risk: every sum is exact, so that ties are ties.
small_job random_job(std::uint64_t seed, int n, bool musts = true) {
  small_job j;
  j.setups = {{"hatch", "", double(whole(seed, 1, 0, 10)), double(whole(seed, 1, 1, 5)), false},
              {"panel", "", double(whole(seed, 1, 2, 6)), double(whole(seed, 1, 3, 6)), false},
              {"lights", "", double(whole(seed, 1, 4, 12)), double(whole(seed, 1, 5, 4)), true},
              {"sockets", "", double(whole(seed, 1, 6, 12)), double(whole(seed, 1, 7, 4)), true}};
  for (int i = 0; i < n; ++i) {
    const auto k = static_cast<std::uint64_t>(i);
    work_task t;
    t.id = std::string(1, static_cast<char>('a' + i));
    t.minutes = 1.0 + whole(seed, 2, k, 19);
    t.risk = 0.25 * std::max(0, whole(seed, 3, k, 24) - 3);
    const int place = whole(seed, 4, k, 3);
    if (place < 2) t.access = place == 0 ? "hatch" : "panel";
    const int state = whole(seed, 5, k, 4);
    if (state < 3) t.state = supply_state::dead, t.circuit = state < 2 ? "lights" : "sockets";
    if (state == 3) t.state = supply_state::live;
    t.must = musts && draw(seed, 6, k) < 0.12;
    for (int before = 0; before < i; ++before)
      if (draw(seed, 10 + k, static_cast<std::uint64_t>(before)) < 0.12) t.needs.push_back(std::string(1, static_cast<char>('a' + before)));
    j.all += t.minutes + 22.0;
    j.tasks.push_back(t);
  }
  j.time = std::floor(j.all * draw(seed, 7, 0) * (seed % 5 == 0 ? 1.0 : 0.6));
  return j;
}

/// By hand, from the words alone: what a list of tasks takes and removes.
struct by_hand {
  double risk = 0.0, weighted = 0.0, time = 0.0;
  std::vector<std::string> ids;
};
double minutes_of(const small_job& j, const std::string& id, bool isolates, bool open) {
  for (const auto& s : j.setups)
    if (s.id == id && s.isolates == isolates) return open ? s.setup_min : s.close_min;
  return 0.0;
}
by_hand walk(const small_job& j, const std::vector<std::size_t>& order) {
  by_hand w;
  std::string place, off;
  for (const auto i : order) {
    const auto& t = j.tasks[i];
    const std::string circuit = t.state == supply_state::dead ? t.circuit : "";
    if (place != t.access) w.time += minutes_of(j, place, false, false) + minutes_of(j, t.access, false, true), place = t.access;
    if (off != circuit) w.time += minutes_of(j, off, true, false) + minutes_of(j, circuit, true, true), off = circuit;
    w.time += t.minutes;
    w.risk += t.risk;
    w.weighted += t.risk * w.time;
    w.ids.push_back(t.id);
  }
  w.time += minutes_of(j, place, false, false) + minutes_of(j, off, true, false);
  return w;
}
bool beats(const by_hand& a, const by_hand& b) {
  if (a.risk != b.risk) return a.risk > b.risk;
  if (a.weighted != b.weighted) return a.weighted < b.weighted;
  if (a.time != b.time) return a.time < b.time;
  if (a.ids.size() != b.ids.size()) return a.ids.size() < b.ids.size();
  return a.ids < b.ids;
}
struct enumeration {
  const small_job& j;
  std::vector<bool> must, done;
  std::size_t musts = 0;
  double until = 0.0, least = 1e300;
  bool any = false, choosing = false;
  by_hand best;
  std::vector<std::size_t> order;
  std::size_t place(const std::string& id) const {
    for (std::size_t i = 0; i < j.tasks.size(); ++i)
      if (j.tasks[i].id == id) return i;
    return j.tasks.size();
  }
  void mark(std::size_t i) {
    must[i] = true;
    for (const auto& n : j.tasks[i].needs) mark(place(n));
  }
  explicit enumeration(const small_job& job_) : j(job_), must(job_.tasks.size(), false), done(job_.tasks.size(), false) {
    for (std::size_t i = 0; i < j.tasks.size(); ++i)
      if (j.tasks[i].must) mark(i);
    musts = static_cast<std::size_t>(std::count(must.begin(), must.end(), true));
    go();  // the least time of what must be done
    until = std::max(j.time, least);
    choosing = true;
    go();
  }
  void go() {
    if (order.size() >= musts) {
      const by_hand w = walk(j, order);
      if (!choosing) {
        least = std::min(least, w.time);
        return;
      }
      if (w.time <= until && (!any || beats(w, best))) best = w, any = true;
    }
    for (std::size_t i = 0; i < j.tasks.size(); ++i) {
      if (done[i] || (order.size() < musts && !must[i])) continue;
      bool ready = true;
      for (const auto& n : j.tasks[i].needs) ready = ready && done[place(n)];
      if (!ready) continue;
      done[i] = true;
      order.push_back(i);
      go();
      order.pop_back();
      done[i] = false;
    }
  }
};
std::vector<std::string> ids_of(const small_job& j, const work_order& r) {
  std::vector<std::string> ids;
  for (const auto& s : r.steps) ids.push_back(j.tasks[s.task].id);
  return ids;
}
work_order plan(const small_job& j, int exact_up_to = 14) { return order_of_work(j.tasks, j.setups, {j.time, 0.0, exact_up_to}); }
}  // namespace

TEST_CASE("order of work: the best of every order of every subset, ties by id") {
  int with_left_out = 0, with_must = 0, over = 0;
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    const auto j = random_job(seed, 2 + static_cast<int>(seed % 6));
    const enumeration every(j);
    const auto r = plan(j);
    INFO("seed " << seed);
    REQUIRE(r.exact);
    REQUIRE(ids_of(j, r) == every.best.ids);
    CHECK(r.risk_removed == every.best.risk);
    CHECK(r.used_min == every.best.time);
    CHECK(r.over_min == std::max(0.0, every.best.time - j.time));
    double all = 0.0;
    for (const auto& t : j.tasks) all += t.risk;
    const double span = std::max(j.time, r.used_min);
    CHECK(r.risk_minutes == doctest::Approx(all * span - every.best.risk * span + every.best.weighted).epsilon(1e-12));
    CHECK(r.steps.size() + r.left_out.size() == j.tasks.size());
    for (const auto& l : r.left_out)
      if (l.is == left_reason::does_not_fit || l.is == left_reason::needs) CHECK(l.short_min > 0.0);
    with_left_out += !r.left_out.empty();
    with_must += every.musts > 0;
    over += r.over_min > 0.0;
  }
  CHECK(with_left_out > 300);  // the cases are of every kind
  CHECK(with_must > 200);
  CHECK(over > 20);
}

TEST_CASE("order of work: what is left out is short by the least time that any order would take") {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const auto j = random_job(seed, 5, false);
    const auto r = plan(j);
    for (const auto& l : r.left_out) {
      if (l.is != left_reason::does_not_fit) continue;
      std::vector<std::size_t> all{l.task};
      for (const auto& s : r.steps) all.push_back(s.task);
      std::sort(all.begin(), all.end());
      double least = 1e300;
      do {
        std::vector<std::string> before;
        bool ready = true;
        for (const auto i : all) {
          for (const auto& n : j.tasks[i].needs) ready = ready && std::find(before.begin(), before.end(), n) != before.end();
          before.push_back(j.tasks[i].id);
        }
        if (ready) least = std::min(least, walk(j, all).time);
      } while (std::next_permutation(all.begin(), all.end()));
      CHECK(l.short_min == doctest::Approx(least - j.time).epsilon(1e-12));
    }
  }
}

TEST_CASE("order of work: without set-ups and with time for all, risk per minute descending (Smith's rule), the order of p/C") {
  for (std::uint64_t seed = 1; seed <= 50; ++seed)
    for (const int n : {9, 25}) {  // exact, and beyond
      small_job j;
      std::vector<double> p, cost;
      for (int i = 0; i < n; ++i) {
        const auto k = static_cast<std::uint64_t>(i);
        p.push_back(draw(seed, 1, k) / n);
        cost.push_back(1.0 + whole(seed, 2, k, 50));
        work_task t;
        t.id = "task " + std::to_string(100 + i);
        t.minutes = cost.back();
        t.risk = p.back();
        j.tasks.push_back(t);
      }
      j.time = 2000.0;
      const auto r = plan(j);
      std::vector<std::size_t> order;
      for (const auto& s : r.steps) order.push_back(s.task);
      CHECK(order == repair_order(p, cost));
      CHECK(r.left_out.empty());
    }
}

TEST_CASE("order of work: a set-up is paid once for tasks that follow each other, and again when it is left and returned to") {
  small_job j;
  j.setups = {{"hatch", "Hatch", 10.0, 5.0, false}, {"lights", "Lights", 8.0, 2.0, true}};
  for (const char* id : {"a", "b", "c"}) {
    work_task t;
    t.id = id;
    t.minutes = 20.0;
    t.risk = 1.0;
    if (*id != 'b') t.access = "hatch", t.state = supply_state::dead, t.circuit = "lights";
    j.tasks.push_back(t);
  }
  j.time = 85.0;  // 10 + 8 + 20 + 20 + 5 + 2 + 20
  auto r = plan(j);
  CHECK(r.used_min == 85.0);
  CHECK(r.steps.size() == 3);
  CHECK(r.fits_probability == 1.0);
  j.time = 84.0;
  r = plan(j);
  CHECK(r.steps.size() == 2);
  REQUIRE(r.left_out.size() == 1);
  CHECK(r.left_out[0].short_min == 1.0);
  CHECK(r.all_min == 85.0);
  // b and one of the others are done, 1 × 20 + 1 × 58 of risk × minutes; c is left: 10 + 8 + 20 + 5 + 2 min and the way
  const auto later = order_of_work(j.tasks, j.setups, {84.0, 30.0});
  CHECK(later.later_min == 75.0);
  const auto said = [&](const char* sentence) { return std::find(later.text.begin(), later.text.end(), sentence) != later.text.end(); };
  CHECK(said("Isolate \"Lights\": switch off, lock off, label, prove dead (8 min)."));
  CHECK(said("From 38 to 58 min: a. It removes 33 % of the risk."));
  CHECK(said("Close \"Hatch\", and switch \"Lights\" on again once what was done is tested (7 min)."));
  CHECK(said("It takes 65 of 84 min and removes 67 % of the risk."));
  CHECK(said("Left out: c; it does not fit beside the rest by 1 min."));
  CHECK(said("Another visit for what is left takes about 75 min, 30 min of them travel."));
  CHECK(said("Staying 1 min longer does all of it in one visit."));
  // a needs b, b needs c: the hatch must be opened twice
  j.tasks[0].needs = {"b"};
  j.tasks[1].needs = {"c"};
  j.time = 500.0;
  r = plan(j);
  CHECK(ids_of(j, r) == std::vector<std::string>{"c", "b", "a"});
  CHECK(r.used_min == 2 * (10.0 + 8.0 + 20.0 + 5.0 + 2.0) + 20.0);
  CHECK(r.steps[1].closes == std::vector<std::string>{"hatch", "lights"});
  CHECK(r.steps[2].opens == std::vector<std::string>{"lights", "hatch"});
}

TEST_CASE("order of work: what must be done is done, first and whatever it takes; needs come before") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    const auto j = random_job(seed, seed % 3 == 0 ? 20 : 10);
    const auto r = plan(j);
    bool others = false;
    std::vector<std::string> before;
    double last = 0.0;
    for (const auto& s : r.steps) {
      CHECK(!(s.must && others));
      others = others || !s.must;
      for (const auto& n : j.tasks[s.task].needs) CHECK(std::find(before.begin(), before.end(), n) != before.end());
      before.push_back(j.tasks[s.task].id);
      CHECK(s.begin_min == doctest::Approx(last));
      CHECK(s.end_min == doctest::Approx(s.begin_min + s.change_min + s.minutes));
      last = s.end_min;
    }
    for (const auto& l : r.left_out) CHECK(!j.tasks[l.task].must);
    CHECK(r.used_min == doctest::Approx(last + r.close_min));
    if (others) CHECK(r.used_min <= std::max(j.time, r.used_min - r.over_min));
  }
}

TEST_CASE("order of work: more time never removes less; the same in any order of the input, and every time") {
  for (std::uint64_t seed = 1; seed <= 60; ++seed) {
    auto j = random_job(seed, 9);
    double removed = -1.0;
    for (double time = 0.0; time <= j.all; time += 7.0) {
      j.time = time;
      const auto r = plan(j);
      CHECK(r.risk_removed >= removed);
      removed = r.risk_removed;
    }
    for (const int exact_up_to : {14, 0}) {
      j.time = std::floor(0.35 * j.all);
      const auto r = plan(j, exact_up_to);
      auto other = j;
      std::reverse(other.tasks.begin(), other.tasks.end());
      std::rotate(other.tasks.begin(), other.tasks.begin() + 3, other.tasks.end());
      std::reverse(other.setups.begin(), other.setups.end());
      const auto again = plan(other, exact_up_to), same = plan(j, exact_up_to);
      CHECK(ids_of(j, r) == ids_of(other, again));
      CHECK(r.text == again.text);
      CHECK(r.text == same.text);
      CHECK(r.risk_minutes == again.risk_minutes);
      CHECK(r.fits_probability == doctest::Approx(again.fits_probability).epsilon(1e-12));
    }
  }
}

TEST_CASE("order of work: the heuristic against the exact answer") {
  double worst = 1.0, sum = 0.0, worst_early = 1.0;
  int count = 0, same_set = 0, best = 0;
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    const auto j = random_job(seed + 5000, 12);
    const auto exact = plan(j), other = plan(j, 0);
    REQUIRE(exact.exact);
    CHECK(!other.exact);
    CHECK(other.risk_removed <= exact.risk_removed + 1e-9);
    if (exact.risk_removed > 0.0) {
      const double ratio = other.risk_removed / exact.risk_removed;
      worst = std::min(worst, ratio);
      sum += ratio;
      ++count;
    }
    if (other.risk_removed == exact.risk_removed) {
      ++same_set;
      if (exact.risk_minutes > 0.0) worst_early = std::max(worst_early, other.risk_minutes / exact.risk_minutes);
      best += other.risk_minutes <= exact.risk_minutes * (1.0 + 1e-12);
    }
  }
  INFO("mean " << sum / count << ", worst " << worst << " of " << count << "; as much removed in " << same_set << ", as early in " << best << ", latest " << worst_early);
  CHECK(sum / count > 0.99);
  CHECK(worst > 0.85);
  CHECK(worst_early < 1.10);
}

TEST_CASE("order of work: the probability that durations fit, against simulation and against the exact cases") {
  // one triangle: its own distribution function
  const spread_minutes one[] = {{10.0, 20.0, 50.0}};
  for (double x = 11.0; x < 50.0; x += 3.3) {
    const double exact = x <= 20.0 ? (x - 10.0) * (x - 10.0) / (40.0 * 10.0) : 1.0 - (50.0 - x) * (50.0 - x) / (40.0 * 30.0);
    CHECK(std::fabs(chance_within(one, x) - exact) < 0.001);
  }
  CHECK(chance_within(one, 50.0) == 1.0);
  CHECK(chance_within(one, 9.9) == 0.0);
  CHECK(chance_within({}, 0.0) == 1.0);
  CHECK(chance_within({}, -1.0) == 0.0);
  const spread_minutes fixed[] = {{5.0, 5.0, 5.0}, {7.0, 7.0, 7.0}};
  CHECK(chance_within(fixed, 12.0) == 1.0);
  CHECK(chance_within(fixed, 11.99) == 0.0);
  // two triangles mirrored about each other: their sum is symmetrical
  const spread_minutes mirrored[] = {{0.0, 5.0, 30.0}, {0.0, 25.0, 30.0}};
  CHECK(chance_within(mirrored, 30.0) == doctest::Approx(0.5).epsilon(1e-9));
  for (std::uint64_t seed = 1; seed <= 12; ++seed) {
    std::vector<spread_minutes> d;
    double likely = 0.0;
    for (std::uint64_t i = 0; i < 1 + seed % 6; ++i) {
      const double low = std::floor(30.0 * draw(seed, 1, i)), a = 20.0 * draw(seed, 2, i), b = 40.0 * draw(seed, 3, i) * (seed % 4 == 0 ? 0.02 : 1.0);
      d.push_back({low, low + a, low + a + b});
      likely += low + a;
    }
    const double limit = likely * (0.95 + 0.2 * draw(seed, 4, 0));
    const int trials = 200000;
    int fit = 0;
    for (int k = 0; k < trials; ++k) {
      double sum = 0.0;
      for (std::size_t i = 0; i < d.size(); ++i) {  // by the inverse of the distribution function
        const double u = draw(seed + 100, static_cast<std::uint64_t>(k), i), width = d[i].high - d[i].low, at = (d[i].likely - d[i].low) / width;
        sum += u < at ? d[i].low + std::sqrt(u * width * (d[i].likely - d[i].low)) : d[i].high - std::sqrt((1.0 - u) * width * (d[i].high - d[i].likely));
      }
      fit += sum <= limit;
    }
    const double seen = static_cast<double>(fit) / trials, p = chance_within(d, limit);
    CHECK(std::fabs(p - seen) < 0.001 + 4.0 * std::sqrt(std::max(seen * (1.0 - seen), 1e-4) / trials));  // stated error, and 4 standard deviations of the trials
  }
}

TEST_CASE("order of work: what is refused, and with which words") {
  small_job j = random_job(3, 3, false);
  const auto says = [&](const std::string& part) {
    try {
      (void)plan(j);
    } catch (const error& e) {
      INFO(e.what());
      CHECK(std::string_view(e.what()).find(part) != std::string_view::npos);
      return;
    }
    CHECK(part == "nothing was refused");
  };
  const auto sound = j;
  j.tasks[0].access = "hutch";
  says("did you mean \"hatch\"?");
  j = sound;
  j.tasks[0].state = supply_state::dead, j.tasks[0].circuit = "light";
  says("did you mean \"lights\"?");
  j.tasks[0].circuit = "";
  says("names its circuit");
  j = sound;
  j.tasks[0].id = "first", j.tasks[1].needs = {"frist"};
  says("did you mean \"first\"?");
  j = sound;
  j.tasks[1].id = j.tasks[0].id;
  says("there twice");
  j = sound;
  j.tasks[0].minutes = -1.0;
  CHECK_THROWS_AS((void)plan(j), range_error);
  j = sound;
  j.tasks[0].low = j.tasks[0].minutes + 1.0;
  CHECK_THROWS_AS((void)plan(j), range_error);
  j = sound;
  j.tasks[0].risk = no_number;
  CHECK_THROWS_AS((void)plan(j), range_error);
  j = sound;
  j.time = no_number;
  CHECK_THROWS_AS((void)plan(j), range_error);
  j = sound;
  j.tasks[0].needs = {"b"}, j.tasks[1].needs = {"c"}, j.tasks[2].needs = {"a"};
  CHECK_THROWS_AS((void)plan(j), relation_error);
  says("\"a\", \"b\" and \"c\" need each other");
  j.tasks.clear();
  CHECK(plan(j).steps.empty());
}

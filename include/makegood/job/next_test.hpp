// SPDX-License-Identifier: MIT
// Which test next, or which act: what each test is worth, in money and in minutes, before it is made.
// Job floor, on the inference kernel. Opt-in; includes the standard library only.
//
// The loss of an act under a hypothesis is its money and minutes, what a fault costs that it leaves, and the price of a danger that it
// leaves. That price is such that isolating is the cheaper act wherever more than `danger_limit` of probability of a danger to life would
// be left: danger comes before money. The value of a test is the expected loss of the best act now less the expected loss of the best
// act when its result is known (EVSI), by finite sums over its outcomes and cells of its values; never below 0, never above the value of
// knowing all (EVPI).
#pragma once
#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "inference.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

// ---- what is said before ----------------------------------------------------------------------------------------------

/// Something that must stand before a test may be made ("isolated and proved dead", "insulation proved").
struct condition {
  std::string id, title{};
  double minutes = 0.0;                ///< to bring it about
  bool by_test = false;                ///< it cannot be brought about: a test proves it
  std::vector<std::string> needs{};    ///< other conditions, first
  std::vector<std::string> ends{};     ///< conditions that no longer stand once it does
};
/// A place that is opened once for several tests.
struct access {
  std::string id, title{};
  double minutes = 0.0;
};
/// How a test is made; `reading.test` names the test of the kernel.
struct test_work {
  coming_reading reading;
  double minutes = 1.0, money = 0.0;
  bool live = false;                   ///< with the circuit energised
  std::string access{};
  std::vector<std::string> needs{};
  std::string proves{};                ///< a condition that stands after a good result
  double proves_from = no_number, proves_to = no_number;  ///< good: a value from and to here ("above" is good where there is no upper end)
  std::string proves_word{};           ///< or this outcome
};
/// Something that may be done at the end.
struct act {
  std::string id, title{};
  double money = 0.0, minutes = 0.0;
  std::vector<std::string> ends{};     ///< hypotheses whose fault it ends, and with it its danger
  bool isolates = false;               ///< isolated, secured and labelled: ends every danger that isolation ends
};
/// What a hypothesis is for the decision, beside its probability.
struct stake {
  bool fault = true;                   ///< something is left undone unless an act ends it
  double left_money = no_number;       ///< what it costs when left; not given: `decision_costs::fault_left`
  bool isolation_ends_danger = true;
};
struct decision_costs {
  double money_per_hour = 45.0;        ///< of the one who tests: invented, to be replaced
  double fault_left = 400.0;           ///< a fault that is left: another visit, somebody else, doing without
  double loss_of_use = 60.0;           ///< something sound that is isolated
  double unlisted_limit = 0.2;         ///< probability of "none of these" above which nothing but isolating is allowed
  double danger_limit = 1e-3;          ///< probability of a danger to life that an act may leave
  double established = 0.95;           ///< probability at which a danger that isolating would not end counts as found
  int cells = 48;                      ///< of a test's values
  int nodes = 4000;                    ///< of the look-ahead: it goes as many steps ahead as this allows, two at least
};

// ---- what comes out ---------------------------------------------------------------------------------------------------

enum class offer : unsigned char { offered, made, needs_proof, live_while_dead_tells };
struct test_value {
  std::size_t test = 0;                ///< in the order of the works
  offer is = offer::offered;
  std::string why_not{};               ///< the condition that does not stand
  double information_bits = 0.0;       ///< expected fall of the entropy over the hypotheses
  double value = 0.0, cost = 0.0;      ///< EVSI, and minutes and money to make it (with what must be brought about first)
  double minutes = 0.0;
  double ahead = no_number;            ///< net value when the tests after it are chosen well; of those looked at further
  std::vector<std::string> first{};    ///< conditions to bring about, in order
  double net() const { return value - cost; }
};
struct act_value {
  std::size_t act = 0;
  double expected_loss = 0.0;          ///< money, with what faults left cost, without the price of danger
  double danger_left = 0.0;            ///< probability of a danger to life that it leaves
  double best_probability = 0.0;       ///< that no other act would have been better, were everything known
  bool allowed = true;                 ///< isolating, or: danger left up to the limit (or less than any other act where isolating leaves more), and the readings not left unexplained
};
enum class advice : unsigned char { test, must_test, act, nothing_left };
struct next_step {
  advice is = advice::act;
  std::size_t test = 0, act = 0;       ///< the test to make next (of the works), and the best act as things are
  std::size_t must_tell = no_hypothesis;  ///< the danger that isolation would not end, and that a test must settle
  double perfect_information = 0.0;    ///< EVPI
  double danger_price = 0.0;
  bool decided = false;                ///< no test can change the act
  std::vector<test_value> tests{};     ///< in the order of their rank
  std::vector<act_value> acts{};       ///< best first
  static constexpr std::size_t no_hypothesis = static_cast<std::size_t>(-1);
};

// ---- the planner -------------------------------------------------------------------------------------------------------

/// Ranks tests and acts for the readings that an `explanations` holds. Nothing is sampled: the same input gives the same bits.
class planner {
 public:
  planner(const explanations& engine, std::vector<test_work> works, std::vector<act> acts, std::vector<stake> stakes, std::vector<condition> conditions = {},
          std::vector<access> accesses = {}, decision_costs costs = {})
      : works_(std::move(works)), acts_(std::move(acts)), stakes_(std::move(stakes)), conditions_(std::move(conditions)), accesses_(std::move(accesses)), costs_(costs) {
    set_up(engine);
  }
  const std::vector<test_work>& works() const { return works_; }
  const std::vector<act>& acts() const { return acts_; }
  const std::vector<condition>& conditions() const { return conditions_; }
  const std::vector<access>& accesses() const { return accesses_; }
  const decision_costs& costs() const { return costs_; }
  /// Loss of an act under a hypothesis (the last: none of these), the price of danger in it.
  double loss(std::size_t act, std::size_t h) const { return loss_[act * count_ + h]; }

  /// After engine.run(). `standing`: conditions that stand; `opened`: places that are open; `made`: tests that have a reading (by works).
  next_step plan(explanations& engine, const std::set<std::string>& standing, const std::set<std::string>& opened, const std::vector<bool>& made);

  /// Minutes until a test is done, and what must be brought about first, in order; false: a condition has no way but a test.
  bool way_to(const test_work& w, const std::set<std::string>& standing, const std::set<std::string>& opened, double& minutes, std::vector<std::string>& first,
              std::string& why_not) const {
    minutes = w.minutes;
    first.clear();
    std::set<std::string> now = standing;
    for (const auto& n : w.needs)
      if (!bring(n, now, minutes, first, why_not, 0)) return false;
    if (!w.access.empty() && !opened.count(w.access))
      for (const auto& a : accesses_)
        if (a.id == w.access) minutes += a.minutes;
    return true;
  }

 private:
  std::vector<test_work> works_;
  std::vector<act> acts_;
  std::vector<stake> stakes_;
  std::vector<condition> conditions_;
  std::vector<access> accesses_;
  decision_costs costs_;
  std::size_t count_ = 0;
  std::vector<double> loss_, plain_, danger_;  // act × hypothesis: all, without the price of danger, danger left (0 or 1)
  std::vector<bool> deadly_;
  std::vector<double> by_hypothesis_;  // loss_ the other way round
  std::vector<double> best_of_;        // least loss under each hypothesis
  std::vector<std::vector<std::uint32_t>> needs_of_, work_needs_;  // as bits of conditions
  std::vector<std::uint32_t> ends_of_, work_access_, work_proves_;
  double price_ = 0.0;

  // one test as the sums take it: probability of each outcome under each hypothesis
  struct table {
    std::size_t outcomes = 0;
    std::vector<double> chance;  // hypothesis × outcome
  };

  const condition* condition_of(std::string_view id) const {
    for (const auto& c : conditions_)
      if (c.id == id) return &c;
    return nullptr;
  }
  bool bring(const std::string& id, std::set<std::string>& now, double& minutes, std::vector<std::string>& first, std::string& why_not, int depth) const {
    if (now.count(id)) return true;
    const auto* c = condition_of(id);
    if (!c || c->by_test || depth > 16) {
      why_not = c && !c->title.empty() ? c->title : id;
      return false;
    }
    for (const auto& n : c->needs)
      if (!bring(n, now, minutes, first, why_not, depth + 1)) return false;
    minutes += c->minutes;
    first.push_back(id);
    for (const auto& e : c->ends) now.erase(e);
    now.insert(id);
    return true;
  }
  void set_up(const explanations& engine) {
    const auto fail = [](std::string text) { throw range_error("next test: " + text); };
    const auto& list = engine.hypotheses();
    count_ = list.size() + 1;
    if (stakes_.size() != list.size()) fail("one stake for each hypothesis");
    if (acts_.empty()) fail("no act is listed: isolating, securing and labelling is always one");
    if (costs_.cells < 8 || costs_.cells > 512) fail("cells: from 8 to 512");
    if (!(costs_.danger_limit > 0.0 && costs_.danger_limit < 1.0)) fail("danger_limit: above 0 and below 1");
    if (!(costs_.unlisted_limit > 0.0 && costs_.unlisted_limit <= 1.0)) fail("unlisted_limit: above 0 and up to 1");
    if (conditions_.size() > 32 || accesses_.size() > 32) fail("at most 32 conditions and 32 accesses");
    if (!(costs_.money_per_hour >= 0.0) || !(costs_.fault_left >= 0.0) || !(costs_.loss_of_use >= 0.0)) fail("costs must be from 0");
    bool isolating = false;
    for (const auto& a : acts_) isolating = isolating || a.isolates;
    if (!isolating) fail("no act isolates, secures and labels: it is always offered");
    for (const auto& w : works_) {
      if (engine.place_of(w.reading.test) == engine.tests().size()) fail("\"" + w.reading.test + "\" is not among the tests");
      if (!(w.minutes >= 0.0) || !(w.money >= 0.0)) fail("\"" + w.reading.test + "\": minutes and money must be from 0");
      bool known = w.access.empty();
      for (const auto& a : accesses_) known = known || a.id == w.access;
      if (!known) fail("\"" + w.reading.test + "\": no access \"" + w.access + "\"");
      for (const auto& n : w.needs)
        if (!condition_of(n)) fail("\"" + w.reading.test + "\" needs \"" + n + "\", which is not among the conditions");
      if (!w.proves.empty() && !condition_of(w.proves)) fail("\"" + w.reading.test + "\" proves \"" + w.proves + "\", which is not among the conditions");
    }
    for (const auto& c : conditions_) {
      if (!(c.minutes >= 0.0)) fail("condition \"" + c.id + "\": minutes must be from 0");
      for (const auto* side : {&c.needs, &c.ends})
        for (const auto& n : *side)
          if (!condition_of(n)) fail("condition \"" + c.id + "\" names \"" + n + "\", which is not among the conditions");
    }
    deadly_.assign(count_, false);
    for (std::size_t h = 0; h + 1 < count_; ++h) deadly_[h] = list[h].danger == danger::life;
    loss_.assign(acts_.size() * count_, 0.0);
    plain_ = danger_ = loss_;
    double dearest = 0.0;
    for (std::size_t a = 0; a < acts_.size(); ++a) {
      const auto& one = acts_[a];
      if (!(one.money >= 0.0) || !(one.minutes >= 0.0)) fail("act \"" + one.id + "\": money and minutes must be from 0");
      for (const auto& e : one.ends) {
        bool known = false;
        for (const auto& h : list) known = known || h.id == e;
        if (!known) fail("act \"" + one.id + "\" ends \"" + e + "\", which is not among the hypotheses");
      }
      for (std::size_t h = 0; h < count_; ++h) {
        const bool listed = h + 1 < count_;
        const bool fault = !listed || stakes_[h].fault;
        const bool ended = listed && std::find(one.ends.begin(), one.ends.end(), list[h].id) != one.ends.end();
        double money = one.money + one.minutes / 60.0 * costs_.money_per_hour;
        if (fault && !ended) money += listed && is_finite(stakes_[h].left_money) ? stakes_[h].left_money : costs_.fault_left;
        if (one.isolates && !fault) money += costs_.loss_of_use;
        plain_[a * count_ + h] = money;
        danger_[a * count_ + h] = deadly_[h] && !ended && !(one.isolates && stakes_[h].isolation_ends_danger) ? 1.0 : 0.0;
        if (one.isolates) dearest = std::max(dearest, money);
      }
    }
    price_ = dearest / costs_.danger_limit;
    for (std::size_t i = 0; i < loss_.size(); ++i) loss_[i] = plain_[i] + price_ * danger_[i];
    by_hypothesis_.assign(loss_.size(), 0.0);
    for (std::size_t a = 0; a < acts_.size(); ++a)
      for (std::size_t h = 0; h < count_; ++h) by_hypothesis_[h * acts_.size() + a] = loss_[a * count_ + h];
    best_of_.assign(loss_.begin(), loss_.begin() + static_cast<std::ptrdiff_t>(count_));
    for (std::size_t a = 1; a < acts_.size(); ++a)
      for (std::size_t h = 0; h < count_; ++h) best_of_[h] = std::min(best_of_[h], loss_[a * count_ + h]);
    const auto bits = [&](const std::vector<std::string>& ids) {
      std::vector<std::uint32_t> found;
      for (const auto& id : ids) found.push_back(bit_of_condition(id));
      return found;
    };
    for (const auto& c : conditions_) {
      needs_of_.push_back(bits(c.needs));
      ends_of_.push_back(0);
      for (const auto b : bits(c.ends)) ends_of_.back() |= b;
    }
    for (const auto& w : works_) {
      work_needs_.push_back(bits(w.needs));
      work_access_.push_back(0);
      for (std::size_t a = 0; a < accesses_.size(); ++a)
        if (accesses_[a].id == w.access) work_access_.back() = 1u << a;
      work_proves_.push_back(w.proves.empty() ? 0u : bit_of_condition(w.proves));
    }
  }
  /// Acts side by side: the inner loop is over them, so that it goes by vectors without another order of the sums.
  double best_loss(const double* weight) const {
    constexpr std::size_t wide = 64;
    const std::size_t acts = acts_.size();
    double best = detail::infinite;
    for (std::size_t from = 0; from < acts; from += wide) {
      const std::size_t n = std::min(wide, acts - from);
      std::array<double, wide> sum{};
      for (std::size_t h = 0; h < count_; ++h) {
        if (weight[h] == 0.0) continue;
        const double* l = &by_hypothesis_[h * acts + from];
        for (std::size_t a = 0; a < n; ++a) sum[a] += weight[h] * l[a];
      }
      for (std::size_t a = 0; a < n; ++a) best = std::min(best, sum[a]);
    }
    return best;
  }
  /// Edges of cells that follow where the values of a test are expected, whichever hypothesis holds.
  std::vector<double> edges_of(const test& t, std::span<const foreseen> by, std::span<const double> weight, int cells) const {
    struct mass {
      double at, weight;
    };
    std::vector<mass> points;
    constexpr double z[] = {-1.6448536269514722, -0.6744897501960817, 0.0, 0.6744897501960817, 1.6448536269514722};
    constexpr double w[] = {0.15, 0.2, 0.3, 0.2, 0.15};
    const double even = 1.0 / static_cast<double>(std::max<std::size_t>(1, weight.size()));
    for (std::size_t h = 0; h < weight.size(); ++h) {
      if (!(weight[h] > 0.0)) continue;
      const double share = 0.5 * weight[h] + 0.5 * even;  // a rare one has cells of its own too
      for (const auto& p : by[h].parts)
        for (int k = 0; k < 5; ++k) points.push_back({p.mean + z[k] * p.sd, share * p.weight * w[k]});
      if (by[h].broad > 0.0)
        for (int k = 0; k < 16; ++k) {
          const double u = (k + 0.5) / 16.0;
          points.push_back({t.broad == test::spread::uniform ? t.low + u * (t.high - t.low) : t.low * exp(u * log(t.high / t.low)), share * by[h].broad / 16.0});
        }
    }
    std::sort(points.begin(), points.end(), [](const mass& a, const mass& b) { return a.at < b.at; });
    double total = 0.0;
    for (const auto& p : points) total += p.weight;
    std::vector<double> edges{t.low};
    double so_far = 0.0;
    int next = 1;
    for (std::size_t i = 0; i < points.size() && next < cells; ++i) {
      so_far += points[i].weight;
      if (so_far < total * next / cells) continue;
      while (next < cells && so_far >= total * next / cells) ++next;
      const double here = i + 1 < points.size() ? 0.5 * (points[i].at + points[i + 1].at) : points[i].at;
      if (here > edges.back() && here < t.high) edges.push_back(here);
    }
    edges.push_back(t.high);
    return edges;
  }
  /// Probability of each outcome (above, below, categories, cells) of each hypothesis.
  table table_of(const explanations& engine, std::size_t t, std::span<const foreseen> by, std::span<const double> edges) const {
    const auto& of = engine.tests()[t];
    const std::size_t named = of.categories.size() + 2, cells = edges.size() > 1 ? edges.size() - 1 : 0;
    table out;
    out.outcomes = named + cells;
    out.chance.assign(by.size() * out.outcomes, 0.0);
    for (std::size_t h = 0; h < by.size(); ++h) {
      double* row = &out.chance[h * out.outcomes];
      for (std::size_t k = 0; k < by[h].outcomes.size(); ++k) row[k] += by[h].outcomes[k];
      if (cells == 0) continue;
      for (const auto& p : by[h].parts) {
        const double reach = 7.0 * p.sd;
        const auto from = static_cast<std::size_t>(std::lower_bound(edges.begin(), edges.end(), p.mean - reach) - edges.begin());
        double before = from == 0 ? normal_cdf((edges[0] - p.mean) / p.sd) : 0.0;
        if (from == 0) row[1] += p.weight * before;  // below the range
        std::size_t e = from == 0 ? 1 : from;
        for (; e <= cells; ++e) {
          const double upto = edges[e] - p.mean > reach ? 1.0 : normal_cdf((edges[e] - p.mean) / p.sd);
          row[named + e - 1] += p.weight * (upto - before);
          before = upto;
          if (upto == 1.0) break;
        }
        if (before < 1.0) row[0] += p.weight * (1.0 - before);  // above the range
      }
      if (by[h].broad > 0.0)
        for (std::size_t e = 0; e < cells; ++e) row[named + e] += by[h].broad * engine.broad_part(t, edges[e], edges[e + 1]);
    }
    return out;
  }
  /// The same with at most `most` outcomes: those that say nearly the same are put together, the least information lost first.
  table merged(const table& t, std::span<const double> weight, std::size_t most) const {
    std::vector<std::vector<double>> group;  // joint probabilities
    for (std::size_t o = 0; o < t.outcomes; ++o) {
      std::vector<double> j(weight.size());
      double sum = 0.0;
      for (std::size_t h = 0; h < weight.size(); ++h) sum += j[h] = weight[h] * t.chance[h * t.outcomes + o];
      if (sum > 1e-12) group.push_back(std::move(j));
    }
    const auto told = [](const std::vector<double>& j) {
      double sum = 0.0, part = 0.0;
      for (const double x : j) {
        sum += x;
        if (x > 0.0) part += x * log(x);
      }
      return part - (sum > 0.0 ? sum * log(sum) : 0.0);
    };
    std::vector<double> own;
    for (const auto& g : group) own.push_back(told(g));
    const auto loss_of = [&](std::size_t a, std::size_t b) {
      double sum = 0.0, part = 0.0;
      for (std::size_t h = 0; h < weight.size(); ++h) {
        const double x = group[a][h] + group[b][h];
        sum += x;
        if (x > 0.0) part += x * log(x);
      }
      return own[a] + own[b] - (part - (sum > 0.0 ? sum * log(sum) : 0.0));
    };
    const auto put_together = [&](std::size_t a, std::size_t b) {
      for (std::size_t h = 0; h < weight.size(); ++h) group[a][h] += group[b][h];
      own[a] = told(group[a]);
      group.erase(group.begin() + static_cast<std::ptrdiff_t>(b));
      own.erase(own.begin() + static_cast<std::ptrdiff_t>(b));
    };
    // neighbours first: cells of values lie beside each other
    constexpr std::size_t few = 12;
    std::vector<double> beside;
    for (std::size_t a = 0; a + 1 < group.size() && group.size() > few; ++a) beside.push_back(loss_of(a, a + 1));
    while (group.size() > std::max(most, few)) {
      const auto a = static_cast<std::size_t>(std::min_element(beside.begin(), beside.end()) - beside.begin());
      put_together(a, a + 1);
      beside.erase(beside.begin() + static_cast<std::ptrdiff_t>(a));
      if (a > 0) beside[a - 1] = loss_of(a - 1, a);
      if (a < beside.size()) beside[a] = loss_of(a, a + 1);
    }
    while (group.size() > most) {
      std::size_t best_a = 0, best_b = 1;
      double least = detail::infinite;
      for (std::size_t a = 0; a + 1 < group.size(); ++a)
        for (std::size_t b = a + 1; b < group.size(); ++b)
          if (const double l = loss_of(a, b); l < least) least = l, best_a = a, best_b = b;
      put_together(best_a, best_b);
    }
    table out;
    out.outcomes = group.size();
    out.chance.assign(weight.size() * out.outcomes, 0.0);
    for (std::size_t h = 0; h < weight.size(); ++h)
      for (std::size_t o = 0; o < out.outcomes; ++o) out.chance[h * out.outcomes + o] = weight[h] > 0.0 ? group[o][h] / weight[h] : 0.0;
    return out;
  }

  // ---- looking ahead ----
  struct place {  // conditions and accesses as bits
    std::uint32_t standing = 0, opened = 0;
  };
  std::uint32_t bit_of_condition(std::string_view id) const {
    for (std::size_t i = 0; i < conditions_.size(); ++i)
      if (conditions_[i].id == id) return 1u << i;
    return 0;
  }
  bool bring_bit(std::uint32_t bit, place& p, double& minutes, int depth) const {
    if (p.standing & bit) return true;
    const auto& c = conditions_[static_cast<std::size_t>(__builtin_ctz(bit))];
    if (c.by_test || depth > 16) return false;
    for (const auto n : needs_of_[static_cast<std::size_t>(__builtin_ctz(bit))])
      if (!bring_bit(n, p, minutes, depth + 1)) return false;
    minutes += c.minutes;
    p.standing = (p.standing & ~ends_of_[static_cast<std::size_t>(__builtin_ctz(bit))]) | bit;
    return true;
  }
  /// Money of a test from a place, and the place after it; false: it cannot be made.
  bool step(std::size_t w, place& p, double& money) const {
    double minutes = works_[w].minutes;
    for (const auto n : work_needs_[w])
      if (!bring_bit(n, p, minutes, 0)) return false;
    if (work_access_[w] != 0 && !(p.opened & work_access_[w])) {
      minutes += accesses_[static_cast<std::size_t>(__builtin_ctz(work_access_[w]))].minutes;
      p.opened |= work_access_[w];
    }
    p.standing |= work_proves_[w];
    money = minutes / 60.0 * costs_.money_per_hour + works_[w].money;
    return true;
  }
  struct search {
    std::vector<std::size_t> work;   // tests that are looked at
    std::vector<table> of;           // their outcomes, merged
    std::vector<double> weight;      // the joint weights of each depth, one behind the other
    double least = 0.0;              // money of the cheapest test
    int left = 0;                    // nodes
  };
  /// Least expected loss, costs of tests included, for joint weights at `depth` (their sum is the probability to be here).
  double least_loss(search& s, int depth, int steps, std::uint32_t open, place p) const {
    const double* w = &s.weight[static_cast<std::size_t>(depth) * count_];
    double best = best_loss(w);
    if (steps == 0 || open == 0) return best;
    double mass = 0.0, known = 0.0;
    for (std::size_t h = 0; h < count_; ++h) {
      mass += w[h];
      known += w[h] * best_of_[h];
    }
    if (best - known <= s.least * mass || mass < 1e-9) return best;  // to know all would not pay for the cheapest test
    for (std::size_t c = 0; c < s.work.size(); ++c) {
      if (!(open >> c & 1u)) continue;
      place after = p;
      double money = 0.0;
      if (!step(s.work[c], after, money) || best - known <= money * mass) continue;
      const double sum = money * mass + loss_after(s, c, depth, steps, open & ~(1u << c), after);
      best = std::min(best, sum);
    }
    return best;
  }
  double loss_after(search& s, std::size_t c, int depth, int steps, std::uint32_t open, place p) const {
    const auto& t = s.of[c];
    double sum = 0.0;
    for (std::size_t o = 0; o < t.outcomes; ++o) {
      const double* w = &s.weight[static_cast<std::size_t>(depth) * count_];
      double* next = &s.weight[static_cast<std::size_t>(depth + 1) * count_];
      for (std::size_t h = 0; h < count_; ++h) next[h] = w[h] * t.chance[h * t.outcomes + o];
      --s.left;
      sum += least_loss(s, depth + 1, s.left > 0 ? steps - 1 : 0, open, p);
    }
    return sum;
  }
  /// Least expected loss where tests are made in one order and may stop after each: what several bring together that none brings alone.
  double loss_in_turn(search& s, std::size_t c, int depth, place p) const {
    const double* w = &s.weight[static_cast<std::size_t>(depth) * count_];
    const double best = best_loss(w);
    place after = p;
    double money = 0.0, mass = 0.0;
    if (c == s.work.size() || !step(s.work[c], after, money)) return best;
    for (std::size_t h = 0; h < count_; ++h) mass += w[h];
    if (mass < 1e-9) return best;
    return std::min(best, money * mass + after_in_turn(s, c, depth, after));
  }
  double after_in_turn(search& s, std::size_t c, int depth, place p) const {
    const auto& t = s.of[c];
    double sum = 0.0;
    for (std::size_t o = 0; o < t.outcomes; ++o) {
      for (std::size_t h = 0; h < count_; ++h)
        s.weight[static_cast<std::size_t>(depth + 1) * count_ + h] = s.weight[static_cast<std::size_t>(depth) * count_ + h] * t.chance[h * t.outcomes + o];
      sum += loss_in_turn(s, c + 1, depth + 1, p);
    }
    return sum;
  }
  /// Bits of a test about one hypothesis against all others.
  double bits_about(const table& t, std::span<const double> weight, std::size_t about) const {
    const double p = weight[about];
    double bits = 0.0;
    for (std::size_t o = 0; o < t.outcomes; ++o) {
      double sum = 0.0;
      for (std::size_t h = 0; h < count_; ++h) sum += weight[h] * t.chance[h * t.outcomes + o];
      const double with = p * t.chance[about * t.outcomes + o], without = sum - with;
      if (with > 0.0) bits += with * log(with / (sum * p));
      if (without > 1e-15 && p < 1.0) bits += without * log(without / (sum * (1.0 - p)));
    }
    return bits / 0.69314718055994530942;
  }
  /// EVSI and bits of a test for probabilities of the hypotheses.
  void worth(const table& t, std::span<const double> weight, double best_now, double& value, double& bits) const {
    std::vector<double> joint(weight.size());
    double after = 0.0, kept = 0.0, told = 0.0;
    for (std::size_t o = 0; o < t.outcomes; ++o) {
      double sum = 0.0;
      for (std::size_t h = 0; h < weight.size(); ++h) sum += joint[h] = weight[h] * t.chance[h * t.outcomes + o];
      if (!(sum > 0.0)) continue;
      kept += sum;
      after += best_loss(joint.data());
      for (std::size_t h = 0; h < weight.size(); ++h)
        if (joint[h] > 0.0) told += joint[h] * log(joint[h] / (sum * weight[h]));
    }
    value = kept > 0.0 ? std::max(0.0, best_now - after / kept) : 0.0;
    if (value < 1e-9 * best_now) value = 0.0;  // rounding of the sums
    bits = kept > 0.0 ? std::max(0.0, told / kept / 0.69314718055994530942) : 0.0;
  }
};

inline next_step planner::plan(explanations& engine, const std::set<std::string>& standing, const std::set<std::string>& opened, const std::vector<bool>& made) {
  next_step out;
  out.danger_price = price_;
  std::vector<double> weight(count_, 0.0);
  for (std::size_t h = 0; h < count_; ++h) weight[h] = engine.table().rows[h].posterior;

  // acts
  double best_now = best_loss(weight.data()), known = 0.0;
  for (std::size_t h = 0; h < count_; ++h) known += weight[h] * best_of_[h];
  out.perfect_information = std::max(0.0, best_now - known);
  for (std::size_t a = 0; a < acts_.size(); ++a) {
    act_value v;
    v.act = a;
    for (std::size_t h = 0; h < count_; ++h) {
      v.expected_loss += weight[h] * plain_[a * count_ + h];
      v.danger_left += weight[h] * danger_[a * count_ + h];
      if (loss_[a * count_ + h] <= best_of_[h] + 1e-9 * (1.0 + best_of_[h])) v.best_probability += weight[h];
    }
    out.acts.push_back(v);
  }
  // a danger that isolating does not end (a neutral that another circuit keeps live): isolating is then not the act that leaves least
  double least = detail::infinite, isolated = detail::infinite;
  for (const auto& v : out.acts) {
    least = std::min(least, v.danger_left);
    if (acts_[v.act].isolates) isolated = std::min(isolated, v.danger_left);
  }
  const double bearable = isolated > costs_.danger_limit && least < isolated ? std::max(costs_.danger_limit, least) : costs_.danger_limit;
  for (auto& v : out.acts) v.allowed = acts_[v.act].isolates || (v.danger_left <= bearable && weight.back() <= costs_.unlisted_limit);
  std::stable_sort(out.acts.begin(), out.acts.end(), [&](const act_value& a, const act_value& b) {
    if (a.allowed != b.allowed) return a.allowed;
    const double la = a.expected_loss + price_ * a.danger_left, lb = b.expected_loss + price_ * b.danger_left;
    return la != lb ? la < lb : acts_[a.act].id < acts_[b.act].id;
  });
  out.act = out.acts.front().act;

  // tests
  std::vector<std::size_t> asked;
  std::vector<coming_reading> coming;
  for (std::size_t w = 0; w < works_.size(); ++w) {
    test_value v;
    v.test = w;
    std::string why_not;
    if (made[w]) {
      v.is = offer::made;
    } else if (!way_to(works_[w], standing, opened, v.minutes, v.first, why_not)) {
      v.is = offer::needs_proof;
      v.why_not = why_not;
    }
    v.cost = v.minutes / 60.0 * costs_.money_per_hour + works_[w].money;
    if (v.is != offer::made) {
      asked.push_back(out.tests.size());
      coming.push_back(works_[w].reading);
    }
    out.tests.push_back(std::move(v));
  }
  std::vector<std::vector<foreseen>> by_test(coming.size(), std::vector<foreseen>(count_));
  {
    std::vector<foreseen> column(coming.size());
    for (std::size_t h = 0; h < count_; ++h) {
      if (!(weight[h] > 1e-9)) continue;
      engine.foresee(h, coming, column);
      for (std::size_t c = 0; c < coming.size(); ++c) std::swap(by_test[c][h], column[c]);
    }
  }
  for (auto& w : weight)
    if (!(w > 1e-9)) w = 0.0;
  best_now = best_loss(weight.data());
  std::vector<table> tables(coming.size());
  for (std::size_t c = 0; c < coming.size(); ++c) {
    const std::size_t t = engine.place_of(coming[c].test);
    std::vector<double> edges;
    if (engine.tests()[t].real()) edges = edges_of(engine.tests()[t], by_test[c], weight, costs_.cells);
    tables[c] = table_of(engine, t, by_test[c], edges);
    auto& v = out.tests[asked[c]];
    worth(tables[c], weight, best_now, v.value, v.information_bits);
  }

  const double little = 1e-6 * (1.0 + fabs(best_now));
  const auto net_of = [](const test_value& v) { return is_finite(v.ahead) ? std::max(v.ahead, v.net()) : v.net(); };
  const auto first_of = [&](const test_value& a, const test_value& b) {
    if ((a.is == offer::offered) != (b.is == offer::offered)) return a.is == offer::offered;
    const double na = net_of(a), nb = net_of(b);
    if (fabs(na - nb) > little) return na > nb;
    const double ra = a.information_bits / std::max(a.minutes, 0.01), rb = b.information_bits / std::max(b.minutes, 0.01);
    return ra != rb ? ra > rb : works_[a.test].reading.test < works_[b.test].reading.test;
  };
  std::vector<std::size_t> order(asked.size());
  for (std::size_t c = 0; c < order.size(); ++c) order[c] = c;
  const auto rank = [&] {
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return first_of(out.tests[asked[a]], out.tests[asked[b]]); });
  };
  // dead tests first; live ones are looked at only where no dead one tells
  place here;
  for (const auto& c : standing) here.standing |= bit_of_condition(c);
  for (std::size_t a = 0; a < accesses_.size(); ++a)
    if (opened.count(accesses_[a].id)) here.opened |= 1u << a;
  // tests that show what others need shown, such as insulation before anything is energised
  const auto with_proofs = [&](std::vector<std::size_t>& chosen) {
    bool barred = false;
    for (const auto c : chosen) {
      place after = here;
      double money = 0.0;
      barred = barred || !step(out.tests[asked[c]].test, after, money);
    }
    for (std::size_t c = 0; barred && c < asked.size(); ++c) {
      const auto& v = out.tests[asked[c]];
      if (v.is == offer::offered && (work_proves_[v.test] & ~here.standing) != 0 && std::find(chosen.begin(), chosen.end(), c) == chosen.end() && chosen.size() < 9) chosen.push_back(c);
    }
  };
  const auto look_ahead = [&](bool live) {
    search s;
    std::vector<std::size_t> chosen;  // the best by value, and by what they tell in a minute
    for (const bool by_value : {true, false}) {
      std::vector<std::size_t> by(asked.size());
      for (std::size_t c = 0; c < by.size(); ++c) by[c] = c;
      std::stable_sort(by.begin(), by.end(), [&](std::size_t a, std::size_t b) {
        const auto &x = out.tests[asked[a]], &y = out.tests[asked[b]];
        if (by_value) return x.net() > y.net();
        return x.information_bits / std::max(x.minutes, 0.01) > y.information_bits / std::max(y.minutes, 0.01);
      });
      std::size_t taken = 0;
      for (const auto c : by) {
        const auto& v = out.tests[asked[c]];
        if (taken == 3 || chosen.size() == 8) break;
        if (works_[v.test].live > live || !(v.information_bits > 1e-9)) continue;
        ++taken;
        if (std::find(chosen.begin(), chosen.end(), c) == chosen.end()) chosen.push_back(c);
      }
    }
    with_proofs(chosen);
    if (chosen.empty()) return;
    s.least = detail::infinite;
    for (const auto c : chosen) {
      s.work.push_back(out.tests[asked[c]].test);
      s.of.push_back(merged(tables[c], weight, 6));
      s.least = std::min(s.least, works_[s.work.back()].minutes / 60.0 * costs_.money_per_hour + works_[s.work.back()].money);
    }
    const int deepest = static_cast<int>(chosen.size());
    s.weight.assign(static_cast<std::size_t>(deepest + 2) * count_, 0.0);
    std::copy(weight.begin(), weight.end(), s.weight.begin());
    const std::uint32_t all = (1u << chosen.size()) - 1u;
    // as deep as the nodes allow: each depth once more from the start
    std::vector<double> ahead(chosen.size(), no_number);
    for (int steps = 2; steps <= std::max(2, deepest); ++steps) {
      // a count that does not depend on the machine: fewer where each is dearer
      const double dear = static_cast<double>(count_ * acts_.size());
      s.left = steps == 2 ? 1 << 30 : std::min(costs_.nodes, static_cast<int>(4e6 / dear));
      std::vector<double> now(chosen.size(), no_number);
      for (std::size_t c = 0; c < chosen.size(); ++c) {
        place after = here;
        double money = 0.0;
        if (!step(s.work[c], after, money)) continue;
        now[c] = best_now - money - loss_after(s, c, 0, steps, all & ~(1u << c), after);
      }
      if (s.left <= 0) break;
      if (steps > 2 && now == ahead) break;
      ahead = now;
    }
    for (std::size_t c = 0; c < chosen.size(); ++c) out.tests[asked[chosen[c]]].ahead = ahead[c];
  };
  // The dearest dangers that forbid the act which would cost least: a test for each, in turn, each of which alone changes nothing.
  const auto exclude_in_turn = [&](bool live) {
    const act_value* wished = nullptr;
    for (const auto& v : out.acts)
      if (!acts_[v.act].isolates && (!wished || v.expected_loss < wished->expected_loss)) wished = &v;
    if (!wished || wished->allowed) return;
    std::vector<std::size_t> dangers;
    for (std::size_t h = 0; h < count_; ++h)
      if (weight[h] * danger_[wished->act * count_ + h] > 0.01 * costs_.danger_limit) dangers.push_back(h);
    const auto left_by = [&](std::size_t h) { return weight[h] * danger_[wished->act * count_ + h]; };
    std::stable_sort(dangers.begin(), dangers.end(), [&](std::size_t a, std::size_t b) { return left_by(a) > left_by(b); });
    if (dangers.size() > 5) dangers.resize(5);
    std::vector<std::size_t> chosen;
    for (const auto h : dangers) {
      std::size_t best = asked.size();
      double most = 0.0;
      for (std::size_t c = 0; c < asked.size(); ++c) {
        const auto& v = out.tests[asked[c]];
        if (works_[v.test].live > live) continue;
        const double rate = bits_about(tables[c], weight, h) / std::max(v.minutes, 0.01);
        if (rate > most * (1.0 + 1e-9)) most = rate, best = c;
      }
      if (best < asked.size() && std::find(chosen.begin(), chosen.end(), best) == chosen.end()) chosen.push_back(best);
    }
    if (chosen.size() > 4) chosen.resize(4);
    const std::size_t tell = chosen.size();
    with_proofs(chosen);
    std::rotate(chosen.begin(), chosen.begin() + static_cast<std::ptrdiff_t>(tell), chosen.end());  // what proves comes before what needs it
    if (chosen.size() > 5) chosen.resize(5);
    // each of them first once, the others after it as they stand
    std::vector<std::pair<std::size_t, double>> found;
    for (std::size_t k = 0; k < chosen.size(); ++k) {
      search s;
      std::vector<std::size_t> turn = chosen;
      std::rotate(turn.begin(), turn.begin() + static_cast<std::ptrdiff_t>(k), turn.begin() + static_cast<std::ptrdiff_t>(k) + 1);
      for (const auto c : turn) {
        s.work.push_back(out.tests[asked[c]].test);
        s.of.push_back(merged(tables[c], weight, 6));
      }
      s.weight.assign((turn.size() + 2) * count_, 0.0);
      std::copy(weight.begin(), weight.end(), s.weight.begin());
      place after = here;
      double money = 0.0;
      if (!step(s.work[0], after, money)) continue;
      found.emplace_back(turn[0], best_now - money - after_in_turn(s, 0, 0, after));
    }
    for (const auto& [c, net] : found) {
      auto& v = out.tests[asked[c]];
      v.ahead = is_finite(v.ahead) ? std::max(v.ahead, net) : net;
    }
  };
  look_ahead(false);
  exclude_in_turn(false);
  bool dead_tells = false;
  for (const auto c : asked) {
    const auto& v = out.tests[c];
    dead_tells = dead_tells || (v.is == offer::offered && !works_[v.test].live && net_of(v) > little);
  }
  if (dead_tells) {
    for (const auto c : asked)
      if (out.tests[c].is == offer::offered && works_[out.tests[c].test].live) out.tests[c].is = offer::live_while_dead_tells;
  } else {
    look_ahead(true);
    exclude_in_turn(true);
  }
  rank();
  // what can be seen only as things were found comes before the test that would end that, where it pays too and tells as much in a minute
  if (order.size() > 1) {
    const auto& leader = out.tests[asked[order[0]]];
    place after = here;
    double money = 0.0;
    if (leader.is == offer::offered && step(leader.test, after, money)) {
      const auto rate = [](const test_value& v) { return v.information_bits / std::max(v.minutes, 0.01); };
      std::uint32_t lost = here.standing & ~after.standing;
      for (std::size_t c = 0; c < conditions_.size(); ++c)
        if (!conditions_[c].by_test) lost &= ~(1u << c);
      for (std::size_t i = 1; i < order.size() && lost != 0; ++i) {
        const auto& v = out.tests[asked[order[i]]];
        bool needs = false;
        for (const auto n : work_needs_[v.test]) needs = needs || (n & lost);
        if (!needs || v.is != offer::offered || !(net_of(v) > little) || rate(v) < rate(leader)) continue;
        std::rotate(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(i), order.begin() + static_cast<std::ptrdiff_t>(i) + 1);
        break;
      }
    }
  }

  // a danger that isolating would not end must be settled by a test, until it is excluded or established
  double worst = costs_.danger_limit;
  for (std::size_t h = 0; h + 1 < count_; ++h)
    if (deadly_[h] && !stakes_[h].isolation_ends_danger && weight[h] > worst && weight[h] < costs_.established) worst = weight[h], out.must_tell = h;
  std::size_t must = asked.size();
  if (out.must_tell != next_step::no_hypothesis) {
    double most = 1e-6;
    for (std::size_t c = 0; c < asked.size(); ++c) {
      const auto& v = out.tests[asked[c]];
      if (v.is != offer::offered && v.is != offer::live_while_dead_tells) continue;
      const double bits = bits_about(tables[c], weight, out.must_tell);
      const double rate = bits / std::max(v.minutes, 0.01) * (works_[v.test].live ? 1e-3 : 1.0);  // a dead one first, if it tells at all
      if (bits > 1e-4 && rate > most) most = rate, must = c;
    }
  }

  std::vector<test_value> ranked;
  for (const auto c : order) ranked.push_back(out.tests[asked[c]]);
  double most_value = 0.0;
  bool any_offered = false, pays = false;
  for (const auto& v : ranked) {
    if (v.is == offer::made) continue;
    most_value = std::max(most_value, v.value);
    if (v.is != offer::offered) continue;
    any_offered = true;
    pays = pays || net_of(v) > little;
  }
  for (const auto& v : ranked)
    if (is_finite(v.ahead)) most_value = std::max(most_value, v.ahead);
  out.decided = most_value <= little;
  if (must < asked.size()) {
    out.is = advice::must_test;
    out.test = out.tests[asked[must]].test;
  } else if (pays) {
    out.is = advice::test;
    out.test = ranked.front().test;
  } else {
    out.is = any_offered || out.acts.front().allowed ? advice::act : advice::nothing_left;
  }
  for (const auto& v : out.tests)
    if (v.is == offer::made) ranked.push_back(v);
  out.tests = std::move(ranked);
  return out;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// What is done today and in which order, so that the most risk is removed in the time there is, and as early as it can be.
// Job floor. Opt-in; includes the standard library only.
//
// A task takes minutes and, once it is done, removes risk (any one measure that adds up: expected harm). A place that must be opened and a
// circuit that must be isolated are set-ups: paid once for the tasks that follow each other in them, and again when they are left and
// returned to. Every plan closes what it opened before the time is over. What must be done whatever comes first. Among the plans that fit,
// the one that removes the most risk is taken; among those the one whose remaining risk, integrated over the time, is least
// (equal to the least sum of risk × time of its removal); then the shortest, then the one with fewest tasks, then by id.
// Without set-ups and with time for all this is Smith's rule: risk per minute, descending.
//
// Up to 14 tasks that count the answer is exact: dynamic programming over the set of tasks done and the set-ups that stand, where each state
// keeps every pair of (minutes, risk × time) that no other one beats in both. Beyond that it is a heuristic, and the result says so: batches
// of tasks of one set-up by risk per minute, then insertions, moves, exchanges. Minutes count to the thousandth.
#pragma once
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>
#include "../document.hpp"
#include "../math.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

// ---- what is said before ----------------------------------------------------------------------------------------------

enum class supply_state : unsigned char { any, dead, live };
/// Something that may be done.
struct work_task {
  std::string id, title{};
  double minutes = 0.0;                ///< the likely duration: the plan is made with it
  double low = no_number, high = no_number;  ///< triangular spread; not given: none
  double risk = 0.0;                   ///< removed once it is done, from 0: any measure that adds up
  std::string access{};                ///< a set-up that opens a place
  supply_state state = supply_state::any;
  std::string circuit{};               ///< dead: a set-up that isolates
  std::vector<std::string> needs{};    ///< tasks that must be done before
  bool must = false;                   ///< done whatever, and first: making safe
};
/// A place that is opened, or a circuit that is isolated, for the tasks that follow each other in it.
struct work_setup {
  std::string id, title{};
  double setup_min = 0.0, close_min = 0.0;
  bool isolates = false;
};
struct work_limits {
  double available_min = 0.0;
  double travel_min = 0.0;             ///< of a later visit
  int exact_up_to = 14;                ///< tasks; fewer only to try the heuristic
};
inline constexpr std::size_t most_work_tasks = 64;

// ---- what comes out ---------------------------------------------------------------------------------------------------

struct work_step {
  std::size_t task = 0;
  double begin_min = 0.0;              ///< from here it is closed and opened, isolated and switched on again, for `change_min`
  double change_min = 0.0, minutes = 0.0;
  double end_min = 0.0;                ///< the task is done, its risk removed
  double risk_per_min = 0.0;           ///< over change and task
  bool must = false;                   ///< itself, or for one that must be done
  std::vector<std::string> closes{}, opens{};  ///< ids of set-ups, in order
  std::string why{};
};
enum class left_reason : unsigned char { no_risk, serves_none, needs, does_not_fit };
struct left_task {
  std::size_t task = 0;
  left_reason is = left_reason::does_not_fit;
  std::string needs{};                 ///< the id of what it needs that is left out as well
  double short_min = 0.0;              ///< minutes more that it would take, with what it needs, beside all that is planned
  std::string why{};
};
struct work_order {
  std::vector<work_step> steps{};
  std::vector<left_task> left_out{};
  bool exact = true;
  double close_min = 0.0;              ///< to close at the end
  double used_min = 0.0;               ///< all of it
  double over_min = 0.0;               ///< what must be done takes that much more than there is
  double risk_before = 0.0, risk_removed = 0.0;
  double risk_minutes = 0.0;           ///< remaining risk, integrated over the time available (over `used_min` if that is longer)
  double fits_probability = 1.0;       ///< that the durations, independent, come to no more than the time
  double later_min = 0.0;              ///< of another visit for what is left out and removes risk, with its travel; 0: none
  double all_min = 0.0;                ///< to do all that removes risk in this visit
  std::vector<std::string> text{};
};

// ---- durations ----------------------------------------------------------------------------------------------------------

struct spread_minutes {
  double low = 0.0, likely = 0.0, high = 0.0;
};
/// Probability that independent triangular durations add up to no more than `limit`: convolution on a grid. A duration's mass between two
/// points is shared so that its mean is kept; its variance grows by h²/6. h is 0.5 min, halved until all of that, with the last step, is
/// at most 0.2 % of the variance of the sum (not below 1/64 min; doubled where there would be more than 8000 cells). The error of the
/// probability is then about 0.121 × 0.002 for a sum near normal; 0.001 in trials, a single triangle the worst.
inline double chance_within(std::span<const spread_minutes> durations, double limit) {
  double low = 0.0, high = 0.0, variance = 0.0, count = 0.0;
  for (const auto& d : durations) {
    if (!(is_finite(d.low) && is_finite(d.high) && d.low >= 0.0 && d.low <= d.likely && d.likely <= d.high))
      throw range_error("chance_within: a duration must be low <= likely <= high, from 0");
    low += d.low;
    high += d.high;
    if (!(d.high > d.low)) continue;
    count += 1.0;
    variance += (square(d.high - d.low) - (d.likely - d.low) * (d.high - d.likely)) / 18.0;
  }
  const double slack = 1e-9 * (1.0 + high);
  if (is_nan(limit)) throw range_error("chance_within: limit must be a number");
  if (limit >= high - slack) return 1.0;
  if (limit < low - slack) return 0.0;
  double h = 0.5;
  while (h > 1.0 / 64.0 && (count / 6.0 + 1.0 / 12.0) * h * h > 0.002 * variance) h *= 0.5;
  while ((high - low) / h > 8000.0) h *= 2.0;
  std::vector<double> sum{1.0}, next;
  for (const auto& d : durations) {
    if (!(d.high > d.low)) continue;
    const double a = d.likely - d.low, b = d.high - d.likely, width = d.high - d.low, mean = (a + width) / 3.0;
    const auto twice = [&](double x) {  // the integral of the distribution function, from its low end
      if (x <= 0.0) return 0.0;
      if (x >= width) return x - mean;
      return x < a ? x * x * x / (3.0 * width * a) : x - mean + (b > 0.0 ? (width - x) * (width - x) * (width - x) / (3.0 * width * b) : 0.0);
    };
    const std::size_t cells = static_cast<std::size_t>(width / h) + 2;
    std::vector<double> mass(cells);
    for (std::size_t k = 0; k < cells; ++k) {
      const double x = static_cast<double>(k) * h;
      mass[k] = std::max(0.0, (twice(x + h) - 2.0 * twice(x) + twice(x - h)) / h);
    }
    next.assign(sum.size() + cells - 1, 0.0);
    for (std::size_t i = 0; i < sum.size(); ++i)
      for (std::size_t k = 0; k < cells; ++k) next[i + k] += sum[i] * mass[k];
    sum.swap(next);
  }
  double p = 0.0;
  for (std::size_t k = 0; k < sum.size(); ++k) p += sum[k] * std::clamp((limit - low) / h - static_cast<double>(k) + 0.5, 0.0, 1.0);
  return std::clamp(p, 0.0, 1.0);
}

// ---- the plan -------------------------------------------------------------------------------------------------------------

namespace detail {
using ticks = std::int64_t;  // thousandths of a minute
inline ticks to_ticks(double minutes) { return static_cast<ticks>(minutes * 1000.0 + 0.5); }
inline double of_ticks(ticks t) { return static_cast<double>(t) / 1000.0; }

class order_solver {
 public:
  using bits = std::uint64_t;
  using sequence = std::vector<int>;
  static constexpr ticks never = std::numeric_limits<ticks>::max() / 4;
  struct value {
    bool valid = false;
    double risk = 0.0, weighted = 0.0;  // removed; Σ risk × time of its removal
    ticks time = 0;                     // with closing
    std::size_t count = 0;
  };

  /// One task: its ticks, risk, needs, place of its pair of set-ups. Tasks are numbered by id.
  std::vector<ticks> minutes;
  std::vector<double> risk;
  std::vector<bits> needs, all_needs;  // direct; with theirs
  std::vector<std::size_t> pair;       // 0: none
  std::vector<std::vector<ticks>> change;  // from pair to pair
  std::vector<ticks> close;
  bits must = 0;                       // with their needs
  double total = 0.0;                  // of all risk
  double slack = 0.0;                  // of a sum of risk × time

  static bits bit(int i) { return bits{1} << i; }
  static bits bit(std::size_t i) { return bits{1} << i; }
  static bits bits_of(const sequence& s) {
    bits b = 0;
    for (const int i : s) b |= bit(i);
    return b;
  }
  sequence tasks_of(bits b) const {
    sequence s;
    for (std::size_t i = 0; i < minutes.size(); ++i)
      if (b & bit(i)) s.push_back(static_cast<int>(i));
    return s;
  }
  double risk_of(bits b) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < risk.size(); ++i)
      if (b & bit(i)) sum += risk[i];
    return sum;
  }
  bool better(const value& a, const value& b) const {
    if (a.valid != b.valid) return a.valid;
    if (fabs(a.risk - b.risk) > 1e-12 * total) return a.risk > b.risk;
    if (fabs(a.weighted - b.weighted) > slack) return a.weighted < b.weighted;
    if (a.time != b.time) return a.time < b.time;
    return a.count < b.count;
  }
  /// `done` stands before (another visit).
  value evaluate(const sequence& s, ticks available, bits done = 0) const {
    value v;
    ticks t = 0;
    std::size_t at = 0;
    const bits musts = must & ~done;
    for (const int i : s) {
      const auto k = static_cast<std::size_t>(i);
      if ((needs[k] & ~done) || (!(musts & bit(i)) && (musts & ~done))) return v;
      t += change[at][pair[k]] + minutes[k];
      at = pair[k];
      v.risk += risk[k];
      v.weighted += risk[k] * static_cast<double>(t);
      done |= bit(i);
    }
    v.time = t + close[at];
    v.count = s.size();
    v.valid = v.time <= available && !(musts & ~done);
    return v;
  }

  // ---- exact ----

  /// The least time in which all of these are done, and an order for it; needs outside of them count as done.
  ticks least_time(bits which, sequence* order = nullptr) const {
    const sequence own = tasks_of(which);
    const std::size_t n = own.size(), pairs = close.size();
    if (n == 0) return 0;
    if (n > 14) return least_time_by_insertion(which, order);
    const std::size_t sets = std::size_t{1} << n;
    const auto [need, first] = local(own);
    std::vector<ticks> best(sets * pairs, never);
    std::vector<std::uint16_t> from(sets * pairs, 0);  // task and pair before
    best[0] = 0;
    for (std::size_t set = 0; set < sets; ++set)
      for (std::size_t p = 0; p < pairs; ++p) {
        const ticks t = best[set * pairs + p];
        if (t >= never) continue;
        for (std::size_t k = 0; k < n; ++k) {
          if ((set >> k & 1u) || (need[k] & ~set) || (!(first >> k & 1u) && (first & ~set))) continue;
          const std::size_t q = pair[static_cast<std::size_t>(own[k])], to = (set | std::size_t{1} << k) * pairs + q;
          const ticks then = t + change[p][q] + minutes[static_cast<std::size_t>(own[k])];
          if (then < best[to]) best[to] = then, from[to] = static_cast<std::uint16_t>(k * 256 + p);
        }
      }
    ticks least = never;
    std::size_t end = 0;
    for (std::size_t p = 0; p < pairs; ++p)
      if (best[(sets - 1) * pairs + p] < never && best[(sets - 1) * pairs + p] + close[p] < least) least = best[(sets - 1) * pairs + p] + close[p], end = p;
    if (order) {
      order->clear();
      std::size_t set = sets - 1;
      while (set) {
        const auto f = from[set * pairs + end];
        order->insert(order->begin(), own[f / 256u]);
        set &= ~(std::size_t{1} << (f / 256u));
        end = f % 256u;
      }
    }
    return least;
  }
  /// The best plan from these, at most 14.
  sequence exact(bits which, ticks available) const {
    const sequence own = tasks_of(which);
    const std::size_t n = own.size(), pairs = close.size(), sets = std::size_t{1} << n;
    struct label {
      ticks time;
      double weighted;
      std::uint64_t path;  // the first task in the highest four bits: paths of one length compare as lists of ids
    };
    const auto [need, first] = local(own);
    std::vector<std::vector<label>> labels(sets * pairs);
    labels[0].push_back({0, 0.0, 0});
    const auto add = [&](std::vector<label>& list, const label& l) {
      for (const auto& o : list) {
        if (o.time > l.time || o.weighted > l.weighted + slack) continue;
        if (o.time < l.time || o.weighted < l.weighted - slack || o.path <= l.path) return;
      }
      std::erase_if(list, [&](const label& o) { return o.time >= l.time && o.weighted >= l.weighted - slack; });
      list.push_back(l);
    };
    value best;
    std::uint64_t path = 0;
    bool any = false;
    for (std::size_t set = 0; set < sets; ++set) {
      bits global = 0;
      std::size_t count = 0;
      for (std::size_t k = 0; k < n; ++k)
        if (set >> k & 1u) global |= bit(own[k]), ++count;
      const double removed = risk_of(global);
      for (std::size_t p = 0; p < pairs; ++p) {
        auto& here = labels[set * pairs + p];
        for (const auto& l : here) {
          if (!(first & ~set)) {
            const value v{true, removed, l.weighted, l.time + close[p], count};
            const bool less = better(v, best) || (any && !better(best, v) && l.path < path);
            if (!any || less) best = v, path = l.path, any = true;
          }
          for (std::size_t k = 0; k < n; ++k) {
            if ((set >> k & 1u) || (need[k] & ~set) || (!(first >> k & 1u) && (first & ~set))) continue;
            const auto i = static_cast<std::size_t>(own[k]);
            const ticks then = l.time + change[p][pair[i]] + minutes[i];
            if (then + close[pair[i]] > available) continue;
            add(labels[(set | std::size_t{1} << k) * pairs + pair[i]],
                {then, l.weighted + risk[i] * static_cast<double>(then), l.path | static_cast<std::uint64_t>(k) << (4 * (13 - count))});
          }
        }
        std::vector<label>().swap(here);
      }
    }
    sequence s;
    for (std::size_t k = 0; k < best.count; ++k) s.push_back(own[path >> (4 * (13 - k)) & 15u]);
    return s;
  }

  // ---- beyond that ----

  /// Tasks that go with i and are not yet there, those needed first, i the last.
  sequence batch_of(int i, bits done) const {
    sequence s;
    bits rest = (all_needs[static_cast<std::size_t>(i)] | bit(i)) & ~done;
    while (rest)
      for (std::size_t k = 0; k < minutes.size(); ++k)
        if ((rest & bit(k)) && !(needs[k] & rest)) {
          s.push_back(static_cast<int>(k));
          rest &= ~bit(k);
          break;
        }
    return s;
  }
  /// The best way of putting a task, with what it needs, into a plan.
  std::pair<sequence, value> inserted(const sequence& s, int i, ticks available) const {
    const sequence batch = batch_of(i, bits_of(s));
    std::pair<sequence, value> best;
    for (std::size_t at = 0; at <= s.size(); ++at) {  // in one piece
      sequence t = s;
      t.insert(t.begin() + static_cast<std::ptrdiff_t>(at), batch.begin(), batch.end());
      if (const value v = evaluate(t, available); better(v, best.second)) best = {std::move(t), v};
    }
    if (batch.size() > 1) {  // one after the other, each where it takes the least time
      sequence t = s;
      for (const int k : batch) {
        ticks least = never;
        sequence keep;
        for (std::size_t at = 0; at <= t.size(); ++at) {
          sequence u = t;
          u.insert(u.begin() + static_cast<std::ptrdiff_t>(at), k);
          if (const value v = evaluate(u, never); v.valid && v.time < least) least = v.time, keep = std::move(u);
        }
        if (least >= never) return best;
        t = std::move(keep);
      }
      if (const value v = evaluate(t, available); better(v, best.second)) best = {std::move(t), v};
    }
    return best;
  }
  /// Puts in what fits, the most risk for the added time first.
  void fill(sequence& s, ticks available) const {
    for (;;) {
      const value now = evaluate(s, available);
      const bits done = bits_of(s);
      sequence best;
      double most = 0.0;
      for (std::size_t i = 0; i < minutes.size(); ++i) {
        if ((done & bit(i)) || !(risk[i] > 0.0)) continue;
        const auto put = inserted(s, static_cast<int>(i), available);
        if (!put.second.valid) continue;
        const double gain = (put.second.risk - now.risk) / static_cast<double>(std::max<ticks>(1, put.second.time - now.time));
        if (gain > most) most = gain, best = put.first;
      }
      if (best.empty()) return;
      s = std::move(best);
    }
  }
  void without(sequence& s, bits gone) const {
    std::erase_if(s, [&](int i) { return (bit(i) | all_needs[static_cast<std::size_t>(i)]) & gone; });
  }
  sequence heuristic(bits which, ticks available, const sequence& musts) const {
    sequence best;
    value best_value;
    for (int start = 0; start < 4; ++start) {
      sequence s = musts;
      if (start == 1) fill(s, available);
      if (start == 0 || start == 2) by_batches(s, which, available, start == 0);
      if (start == 3) {  // the greatest risk first
        sequence order = tasks_of(which);
        std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return risk[static_cast<std::size_t>(a)] > risk[static_cast<std::size_t>(b)]; });
        for (const int i : order)
          if (!(bits_of(s) & bit(i)) && risk[static_cast<std::size_t>(i)] > 0.0)
            if (auto put = inserted(s, i, available); put.second.valid) s = std::move(put.first);
      }
      improve(s, available);
      if (const value v = evaluate(s, available); start == 0 || better(v, best_value)) best = s, best_value = v;
    }
    return best;
  }

  sequence improved(sequence s, ticks available) const {
    improve(s, available);
    return s;
  }

 private:
  std::pair<std::vector<std::size_t>, std::size_t> local(const sequence& own) const {
    std::vector<std::size_t> need(own.size(), 0);
    std::size_t first = 0;
    for (std::size_t k = 0; k < own.size(); ++k) {
      if (must & bit(own[k])) first |= std::size_t{1} << k;
      for (std::size_t j = 0; j < own.size(); ++j)
        if (needs[static_cast<std::size_t>(own[k])] & bit(own[j])) need[k] |= std::size_t{1} << j;
    }
    return {std::move(need), first};
  }
  ticks least_time_by_insertion(bits which, sequence* order) const {
    // needs outside of them count as done
    bits outside = 0;
    for (std::size_t i = 0; i < minutes.size(); ++i)
      if (!(which & bit(i))) outside |= bit(i);
    sequence s;
    bits rest = which;
    while (rest)
      for (std::size_t k = 0; k < minutes.size(); ++k) {
        if (!(rest & bit(k)) || (needs[k] & rest) || (!(must & bit(k)) && (must & rest))) continue;
        s.push_back(static_cast<int>(k));
        rest &= ~bit(k);
        for (bool moved = true; moved;) {  // the new one, and whatever comes cheaper elsewhere
          moved = false;
          const ticks now = evaluate(s, never, outside).time;
          for (std::size_t i = 0; i < s.size() && !moved; ++i)
            for (std::size_t at = 0; at < s.size() && !moved; ++at) {
              sequence u = s;
              const int one = u[i];
              u.erase(u.begin() + static_cast<std::ptrdiff_t>(i));
              u.insert(u.begin() + static_cast<std::ptrdiff_t>(at), one);
              const value v = evaluate(u, never, outside | rest_of_must(which, u));
              if (v.valid && v.time < now && in_order(u, outside)) s = std::move(u), moved = true;
            }
        }
        break;
      }
    if (order) *order = s;
    return evaluate(s, never, outside).time;
  }
  bits rest_of_must(bits which, const sequence& s) const { return must & which & ~bits_of(s); }
  bool in_order(const sequence& s, bits done) const {
    const bits own = bits_of(s);
    for (const int i : s) {
      if (needs[static_cast<std::size_t>(i)] & ~done) return false;
      if (!(must & bit(i)) && (must & own & ~done)) return false;
      done |= bit(i);
    }
    return true;
  }
  /// Again and again the batch of one pair of set-ups that removes the most risk for each minute, the set-ups in it: its best tasks up to
  /// some number (or all that fit), those that they need before them.
  void by_batches(sequence& s, bits which, ticks available, bool shortest) const {
    for (;;) {
      const bits done = bits_of(s);
      const value now = evaluate(s, available);
      sequence best;
      double most = 0.0;
      for (std::size_t p = 0; p < close.size(); ++p) {
        sequence order;
        for (const int i : tasks_of(which & ~done))
          if (pair[static_cast<std::size_t>(i)] == p && risk[static_cast<std::size_t>(i)] > 0.0) order.push_back(i);
        std::stable_sort(order.begin(), order.end(), [&](int a, int b) {
          const auto x = static_cast<std::size_t>(a), y = static_cast<std::size_t>(b);
          return risk[x] * static_cast<double>(minutes[y]) > risk[y] * static_cast<double>(minutes[x]);
        });
        sequence t = s, whole;
        double whole_gain = 0.0;
        for (const int i : order) {
          if (bits_of(t) & bit(i)) continue;
          sequence u = t;
          for (const int k : batch_of(i, bits_of(t))) u.push_back(k);
          const value v = evaluate(u, available);
          if (!v.valid) continue;
          t = std::move(u);
          const double gain = (v.risk - now.risk) / static_cast<double>(std::max<ticks>(1, v.time - now.time));
          if (shortest && gain > most) most = gain, best = t;
          whole = t, whole_gain = gain;
        }
        if (!shortest && whole_gain > most) most = whole_gain, best = whole;
      }
      if (best.empty()) return;
      s = std::move(best);
    }
  }
  void improve(sequence& s, ticks available) const {
    value now = evaluate(s, available);
    const auto take = [&](sequence&& t) {
      const value v = evaluate(t, available);
      if (!better(v, now)) return false;
      s = std::move(t);
      now = v;
      return true;
    };
    for (bool again = true; again;) {
      again = false;
      sequence filled = s;
      fill(filled, available);
      again = take(std::move(filled)) || again;
      for (std::size_t length = 1; length <= 4; ++length)  // a piece elsewhere
        for (std::size_t i = 0; i + length <= s.size(); ++i)
          for (std::size_t at = 0; at + length <= s.size(); ++at) {
            if (at == i) continue;
            sequence t = s;
            const sequence piece(t.begin() + static_cast<std::ptrdiff_t>(i), t.begin() + static_cast<std::ptrdiff_t>(i + length));
            t.erase(t.begin() + static_cast<std::ptrdiff_t>(i), t.begin() + static_cast<std::ptrdiff_t>(i + length));
            t.insert(t.begin() + static_cast<std::ptrdiff_t>(at), piece.begin(), piece.end());
            again = take(std::move(t)) || again;
          }
      for (std::size_t i = 0; i < s.size(); ++i)  // two change places
        for (std::size_t k = i + 1; k < s.size(); ++k) {
          sequence t = s;
          std::swap(t[i], t[k]);
          again = take(std::move(t)) || again;
        }
      if (again) continue;
      const auto refilled = [&](bits gone) {  // taken out, and what then fits best put in
        sequence t = s;
        without(t, gone & ~must);
        const bits kept = bits_of(t);
        if (kept == bits_of(s)) return false;
        for (std::size_t j = 0; j < minutes.size(); ++j) {  // each left one in turn comes first
          if ((bits_of(s) & bit(j)) || !(risk[j] > 0.0)) continue;
          auto put = inserted(t, static_cast<int>(j), available);
          if (!put.second.valid) continue;
          fill(put.first, available);
          if (take(std::move(put.first))) return true;
        }
        fill(t, available);
        return take(std::move(t));
      };
      for (std::size_t i = 0; i < s.size() && !again; ++i) again = refilled(bit(s[i]));
      if (s.size() <= 16)
        for (std::size_t i = 0; i < s.size() && !again; ++i)
          for (std::size_t k = i + 1; k < s.size() && !again; ++k) again = refilled(bit(s[i]) | bit(s[k]));
      for (std::size_t p = 0; p < close.size() && !again; ++p) {
        bits gone = 0;
        for (const int i : s)
          if (pair[static_cast<std::size_t>(i)] == p) gone |= bit(i);
        again = refilled(gone);
      }
    }
  }
};

inline std::string minutes_text(double m) { return number_text(static_cast<double>(to_ticks(m)) / 1000.0) + " min"; }
inline std::string listed(const std::vector<std::string>& names) {
  std::string s;
  for (std::size_t i = 0; i < names.size(); ++i) s += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + ("\"" + names[i] + "\"");
  return s;
}
}  // namespace detail

/// The plan. Errors: range_error for a number out of its range, an id that is missing, twice there or unknown; relation_error for tasks
/// that need each other in a circle.
inline work_order order_of_work(const std::vector<work_task>& tasks, const std::vector<work_setup>& setups, const work_limits& limits) {
  using solver = detail::order_solver;
  using detail::minutes_text;
  const auto fail = [](const std::string& text) { throw range_error("order_of_work: " + text); };
  const auto minutes_good = [](double m) { return is_finite(m) && m >= 0.0 && m <= 10080.0; };
  const auto unknown = [&](const std::string& where, const std::string& id, const std::vector<std::string_view>& names, const std::string& what) {
    const std::string near = document::nearest(id, names);
    fail(where + ": no " + what + " \"" + id + "\"" + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
  };
  if (tasks.size() > most_work_tasks) fail(std::to_string(tasks.size()) + " tasks; at most " + std::to_string(most_work_tasks));
  if (setups.size() > 64) fail(std::to_string(setups.size()) + " groups; at most 64");
  if (!minutes_good(limits.available_min)) fail("available_min: " + number_text(limits.available_min) + ": from 0 to 10080 min");
  if (!minutes_good(limits.travel_min)) fail("travel_min: " + number_text(limits.travel_min) + ": from 0 to 10080 min");
  if (limits.exact_up_to < 0 || limits.exact_up_to > 14) fail("exact_up_to: from 0 to 14");

  // numbered by id: the order in which they were handed over does not count
  std::vector<std::size_t> by_id(tasks.size());
  for (std::size_t i = 0; i < by_id.size(); ++i) by_id[i] = i;
  std::sort(by_id.begin(), by_id.end(), [&](std::size_t a, std::size_t b) { return tasks[a].id < tasks[b].id; });
  std::vector<std::string_view> ids, places, circuits;
  for (std::size_t i = 0; i < by_id.size(); ++i) {
    const auto& id = tasks[by_id[i]].id;
    if (id.empty()) fail("a task without id");
    if (i > 0 && ids.back() == id) fail("the id \"" + id + "\" is there twice");
    ids.push_back(id);
  }
  for (std::size_t i = 0; i < setups.size(); ++i) {
    const auto& s = setups[i];
    if (s.id.empty()) fail("a group without id");
    for (std::size_t k = 0; k < i; ++k)
      if (setups[k].id == s.id && setups[k].isolates == s.isolates) fail("the group \"" + s.id + "\" is there twice");
    if (!minutes_good(s.setup_min) || !minutes_good(s.close_min)) fail("group \"" + s.id + "\": setup_min and close_min from 0 to 10080 min");
    (s.isolates ? circuits : places).push_back(s.id);
  }
  const auto setup_of = [&](const std::string& id, bool isolates) -> const work_setup* {
    for (const auto& s : setups)
      if (s.id == id && s.isolates == isolates) return &s;
    return nullptr;
  };

  solver in;
  const std::size_t n = tasks.size();
  std::vector<std::pair<const work_setup*, const work_setup*>> pairs{{nullptr, nullptr}};  // place, isolation
  in.needs.assign(n, 0);
  for (std::size_t i = 0; i < n; ++i) {
    const auto& t = tasks[by_id[i]];
    const std::string where = "task \"" + t.id + "\"";
    if (!minutes_good(t.minutes)) fail(where + ": minutes = " + number_text(t.minutes) + ": from 0 to 10080");
    const double low = is_nan(t.low) ? t.minutes : t.low, high = is_nan(t.high) ? t.minutes : t.high;
    if (!minutes_good(low) || !minutes_good(high) || low > t.minutes || t.minutes > high) fail(where + ": low, minutes and high must be in this order, from 0 to 10080");
    if (!(is_finite(t.risk) && t.risk >= 0.0 && t.risk <= 1e12)) fail(where + ": risk = " + number_text(t.risk) + ": from 0 to 1e12");
    const work_setup* place = nullptr;
    const work_setup* isolation = nullptr;
    if (!t.access.empty() && !(place = setup_of(t.access, false))) unknown(where, t.access, places, "access");
    if (t.state == supply_state::dead) {
      if (t.circuit.empty()) fail(where + ": what is done dead names its circuit");
      if (!(isolation = setup_of(t.circuit, true))) unknown(where, t.circuit, circuits, "circuit that is isolated");
    }
    std::size_t p = 0;
    while (p < pairs.size() && pairs[p] != std::pair{place, isolation}) ++p;
    if (p == pairs.size()) pairs.emplace_back(place, isolation);
    in.pair.push_back(p);
    in.minutes.push_back(detail::to_ticks(t.minutes));
    in.risk.push_back(t.risk);
    in.total += t.risk;
    for (const auto& need : t.needs) {
      const auto found = std::lower_bound(ids.begin(), ids.end(), std::string_view(need));
      if (found == ids.end() || *found != need) unknown(where + " needs", need, ids, "task");
      in.needs[i] |= solver::bit(static_cast<std::size_t>(found - ids.begin()));
    }
  }
  in.all_needs = in.needs;
  for (std::size_t k = 0; k < n; ++k)  // closure
    for (std::size_t i = 0; i < n; ++i)
      if (in.all_needs[i] & solver::bit(k)) in.all_needs[i] |= in.all_needs[k];
  for (std::size_t i = 0; i < n; ++i)
    if (in.all_needs[i] & solver::bit(i)) {
      std::vector<std::string> circle;
      for (std::size_t k = 0; k < n; ++k)
        if ((in.all_needs[i] & solver::bit(k)) && (in.all_needs[k] & solver::bit(i))) circle.emplace_back(ids[k]);
      throw relation_error("order_of_work: " + detail::listed(circle) + (circle.size() == 1 ? " needs itself" : " need each other: none can be done first"));
    }
  const auto part = [&](const work_setup* s, bool opening) { return !s ? detail::ticks{0} : detail::to_ticks(opening ? s->setup_min : s->close_min); };
  in.change.assign(pairs.size(), std::vector<detail::ticks>(pairs.size(), 0));
  for (std::size_t p = 0; p < pairs.size(); ++p) {
    in.close.push_back(part(pairs[p].first, false) + part(pairs[p].second, false));
    for (std::size_t q = 0; q < pairs.size(); ++q) {
      if (pairs[p].first != pairs[q].first) in.change[p][q] += part(pairs[p].first, false) + part(pairs[q].first, true);
      if (pairs[p].second != pairs[q].second) in.change[p][q] += part(pairs[p].second, false) + part(pairs[q].second, true);
    }
  }
  solver::bits counts = 0, removes = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (tasks[by_id[i]].must) in.must |= solver::bit(i) | in.all_needs[i];
    if (in.risk[i] > 0.0) removes |= solver::bit(i);
    if (in.risk[i] > 0.0 || tasks[by_id[i]].must) counts |= solver::bit(i) | in.all_needs[i];
  }

  // ---- solve
  work_order out;
  const auto available = detail::to_ticks(limits.available_min);
  solver::sequence musts;
  const auto least_musts = in.least_time(in.must, &musts);
  const auto until = std::max(available, least_musts);
  in.slack = 1e-12 * in.total * static_cast<double>(std::max<detail::ticks>(1, until));
  const auto size_of = [&](solver::bits b) { return in.tasks_of(b).size(); };
  solver::sequence order;
  if (size_of(counts) <= static_cast<std::size_t>(limits.exact_up_to)) {
    order = in.exact(counts, until);
  } else {
    out.exact = false;
    order = in.heuristic(counts, until, musts);
    for (std::size_t i = 0; i < n; ++i) {  // nothing is left out that would fit in another order
      const auto with = solver::bits_of(order) | solver::bit(i) | in.all_needs[i];
      solver::sequence other;
      if ((removes & ~solver::bits_of(order) & solver::bit(i)) && in.least_time(with, &other) <= until) order = in.improved(std::move(other), until);
    }
    if (order.size() <= static_cast<std::size_t>(limits.exact_up_to)) {  // those chosen, and the best of the others: exactly
      solver::bits tried = solver::bits_of(order);
      for (;;) {
        double most = -1.0;
        solver::bits more = 0;
        for (std::size_t i = 0; i < n; ++i) {
          const auto with = tried | solver::bit(i) | in.all_needs[i];
          if (!(counts & solver::bit(i)) || with == tried || size_of(with) > static_cast<std::size_t>(limits.exact_up_to)) continue;
          detail::ticks added = 1;
          for (const int k : in.tasks_of(with & ~tried)) added += in.minutes[static_cast<std::size_t>(k)];
          const double ratio = in.risk_of(with & ~tried) / static_cast<double>(added);
          if (ratio > most) most = ratio, more = with;
        }
        if (most < 0.0) break;
        tried = more;
      }
      auto again = in.exact(tried, until);
      if (in.better(in.evaluate(again, until), in.evaluate(order, until))) order = std::move(again);
    }
  }

  // ---- say it
  const auto title_of = [&](std::size_t i) { return tasks[by_id[i]].title.empty() ? tasks[by_id[i]].id : tasks[by_id[i]].title; };
  const auto name_of = [](const work_setup* s) { return s->title.empty() ? s->id : s->title; };
  const auto doing = solver::bits_of(order);
  out.risk_before = in.total;
  detail::ticks now = 0;
  std::size_t at = 0;
  std::vector<spread_minutes> durations;
  double weighted = 0.0, fixed = 0.0;
  const auto share = [&](double r) { return number_text(in.total > 0.0 ? 100.0 * r / in.total : 0.0, 2) + " %"; };
  for (std::size_t s = 0; s < order.size(); ++s) {
    const auto i = static_cast<std::size_t>(order[s]);
    const auto& t = tasks[by_id[i]];
    const std::size_t p = in.pair[i];
    work_step step;
    step.task = by_id[i];
    step.begin_min = detail::of_ticks(now);
    step.change_min = detail::of_ticks(in.change[at][p]);
    step.minutes = detail::of_ticks(in.minutes[i]);
    now += in.change[at][p] + in.minutes[i];
    step.end_min = detail::of_ticks(now);
    const double taken = step.end_min - step.begin_min;
    step.risk_per_min = t.risk > 0.0 && taken > 0.0 ? t.risk / taken : 0.0;
    step.must = (in.must & solver::bit(i)) != 0;
    const auto together = [&](auto same) {  // how many of those that follow use it too
      std::size_t count = 0;
      for (std::size_t k = s; k < order.size() && same(pairs[in.pair[static_cast<std::size_t>(order[k])]]); ++k) ++count;
      return count > 1 ? ", once for " + std::to_string(count) + " tasks" : std::string();
    };
    const auto [was_place, was_isolation] = pairs[at];
    const auto [place, isolation] = pairs[p];
    if (was_place && was_place != place) {
      step.closes.push_back(was_place->id);
      out.text.push_back("Close \"" + name_of(was_place) + "\" again (" + minutes_text(was_place->close_min) + ").");
    }
    if (was_isolation && was_isolation != isolation) {
      step.closes.push_back(was_isolation->id);
      out.text.push_back("Switch \"" + name_of(was_isolation) + "\" on again once what was done is tested (" + minutes_text(was_isolation->close_min) + ").");
    }
    if (isolation && isolation != was_isolation) {
      step.opens.push_back(isolation->id);
      out.text.push_back("Isolate \"" + name_of(isolation) + "\"" + (s == 0 ? " first" : "") + ": switch off, lock off, label, prove dead (" + minutes_text(isolation->setup_min) +
                         together([&, i_ = isolation](const auto& x) { return x.second == i_; }) + ").");
    }
    if (place && place != was_place) {
      step.opens.push_back(place->id);
      out.text.push_back("Open \"" + name_of(place) + "\" (" + minutes_text(place->setup_min) + together([&, p_ = place](const auto& x) { return x.first == p_; }) + ").");
    }
    std::vector<std::string> serves;
    for (std::size_t k = 0; k < n; ++k)
      if ((doing & solver::bit(k)) && (in.needs[k] & solver::bit(i))) serves.push_back(title_of(k));
    if (t.must)
      step.why = "It must be done whatever else is.";
    else if (step.must)
      step.why = "What must be done needs it.";
    if (t.risk > 0.0) step.why += (step.why.empty() ? "" : " ") + ("It removes " + share(t.risk) + " of the risk.");
    if (!serves.empty()) step.why += (step.why.empty() ? "" : " ") + ("It comes before " + detail::listed(serves) + ", which " + (serves.size() == 1 ? "needs" : "need") + " it.");
    out.text.push_back("From " + number_text(step.begin_min + step.change_min) + " to " + minutes_text(step.end_min) + ": " + title_of(i) +
                       (t.state == supply_state::live ? " (live: the circuit is on)" : "") + "." + (step.why.empty() ? "" : " " + step.why));
    out.risk_removed += t.risk;
    weighted += t.risk * step.end_min;
    fixed += step.change_min;
    durations.push_back({is_nan(t.low) ? t.minutes : t.low, t.minutes, is_nan(t.high) ? t.minutes : t.high});
    out.steps.push_back(std::move(step));
    at = p;
  }
  if (const auto [place, isolation] = pairs[at]; place || isolation) {
    std::string s;
    if (place) s += "Close \"" + name_of(place) + "\"";
    if (isolation) s += (place ? ", and switch \"" : "Switch \"") + name_of(isolation) + "\" on again once what was done is tested";
    out.text.push_back(s + " (" + minutes_text(detail::of_ticks(in.close[at])) + ").");
  }
  out.close_min = detail::of_ticks(in.close[at]);
  fixed += out.close_min;
  out.used_min = detail::of_ticks(now + in.close[at]);
  out.over_min = detail::of_ticks(std::max<detail::ticks>(0, now + in.close[at] - available));
  const double span_min = std::max(limits.available_min, out.used_min);
  out.risk_minutes = in.total * span_min - (out.risk_removed * span_min - weighted);
  out.fits_probability = chance_within(durations, limits.available_min - fixed);
  out.all_min = detail::of_ticks(in.least_time(counts));

  solver::bits later = 0;
  for (std::size_t i = 0; i < n; ++i) {
    if (doing & solver::bit(i)) continue;
    left_task left;
    left.task = by_id[i];
    const auto with = doing | solver::bit(i) | in.all_needs[i];
    if (!(counts & solver::bit(i))) {
      left.is = left_reason::no_risk;
      left.why = "removes no risk";
    } else {
      if (removes & solver::bit(i)) later |= (solver::bit(i) | in.all_needs[i]) & ~doing;
      left.short_min = detail::of_ticks(std::max<detail::ticks>(0, in.least_time(with) - available));
      std::vector<std::string> missing, serves;
      for (std::size_t k = 0; k < n; ++k) {
        if ((in.all_needs[i] & ~doing) & solver::bit(k)) {
          missing.push_back(title_of(k));
          if (left.needs.empty() && (in.needs[i] & solver::bit(k))) left.needs = ids[k];
        }
        if ((removes & solver::bit(k)) && (in.all_needs[k] & solver::bit(i))) serves.push_back(title_of(k));
      }
      if (in.risk[i] == 0.0) {
        left.is = left_reason::serves_none;
        left.why = "removes no risk itself, and " + detail::listed(serves) + ", which " + (serves.size() == 1 ? "needs" : "need") + " it, " + (serves.size() == 1 ? "is" : "are") + " left out";
      } else if (!missing.empty()) {
        left.is = left_reason::needs;
        left.why = "needs " + detail::listed(missing) + ", left out too; together they do not fit beside the rest by " + minutes_text(left.short_min);
      } else {
        left.why = "does not fit beside the rest by " + minutes_text(left.short_min);
      }
    }
    out.left_out.push_back(std::move(left));
  }
  if (later) out.later_min = detail::of_ticks(in.least_time(later)) + limits.travel_min;

  if (order.empty()) out.text.push_back(n == 0 ? "There is nothing to do." : counts ? "Nothing fits into the time." : "Nothing on the list removes risk.");
  if (!order.empty()) {
    out.text.push_back("It takes " + number_text(out.used_min) + " of " + minutes_text(limits.available_min) +
                       (in.total > 0.0 ? " and removes " + (later ? share(out.risk_removed) : std::string("all")) + " of the risk." : "."));
    if (out.over_min > 0.0) out.text.push_back("What must be done takes " + minutes_text(out.over_min) + " more than there is; it is done all the same.");
    if (out.fits_probability < 1.0) {
      out.text.push_back("With durations as spread as stated it is done in the time with a probability of " +
                         (out.fits_probability < 0.01 ? "less than 0.01" : out.fits_probability > 0.99 ? "more than 0.99" : number_text(out.fits_probability, 2)) + ".");
    }
  }
  for (const auto& l : out.left_out) {
    const auto& t = tasks[l.task];
    out.text.push_back("Left out: " + (t.title.empty() ? t.id : t.title) + "; it " + l.why + ".");
  }
  if (later) {
    out.text.push_back("Another visit for what is left takes about " + minutes_text(out.later_min) + (limits.travel_min > 0.0 ? ", " + minutes_text(limits.travel_min) + " of them travel." : "."));
    if (const double more = out.all_min - limits.available_min; limits.travel_min > 0.0 && more > 0.0 && out.over_min == 0.0 && more < out.later_min)
      out.text.push_back("Staying " + minutes_text(more) + " longer does all of it in one visit.");
  }
  if (!out.exact) out.text.push_back("There are too many tasks to try every order: a better one may exist.");
  return out;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

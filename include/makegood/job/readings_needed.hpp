// SPDX-License-Identifier: MIT
// The readings that are still needed, each one once: what several findings ask for is read once and settles them all.
// Job floor. Opt-in; includes the standard library only.
//
// Two entries are the same reading if they are of the same argument of the same subject and both dead or both live (without an argument:
// of the same wording). Order: dead before live; then what needs no further condition before what does. Where a condition must be brought
// about next, those are chosen that open the way to the most findings settled per minute; once there they serve all that follow.
// Then most settled per minute, then by subject and wording.
#pragma once
#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>
#include "../document.hpp"
#include "../math.hpp"
#include "../text.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// One finding, or several, asks for a reading.
struct reading_needed {
  std::string what{};                  ///< in words: "insulation between line and protective conductor"
  std::string subject{};               ///< of which circuit, appliance, room
  std::string argument{};              ///< the reading's name in the check, or ""
  std::vector<std::size_t> settles{};  ///< numbers of findings
  double minutes = 0.0;
  bool live = false;                   ///< with the circuit energised
  std::vector<std::string> first{};    ///< conditions that must stand before, in order
  std::string caution{};
};
struct reading_to_take {
  reading_needed is{};                 ///< joined: all findings in rising order, the longest time, all conditions, all cautions
  std::vector<std::string> bring{};    ///< those conditions that do not stand yet when its turn comes
  std::string text{};
};
struct readings_plan {
  std::vector<reading_to_take> readings{};
  double minutes = 0.0;                ///< of all readings, without bringing the conditions about
  std::vector<std::string> text{};
};

/// Joins and orders. `standing`: conditions that stand already. range_error: no wording, or minutes that are none.
inline readings_plan readings_needed(const std::vector<reading_needed>& asked, const std::vector<std::string>& standing = {}) {
  const auto same = [](const reading_needed& a, const reading_needed& b) {
    return a.subject == b.subject && a.live == b.live && a.argument == b.argument && (!a.argument.empty() || a.what == b.what);
  };
  const auto add = [](auto& list, const auto& more) {
    for (const auto& m : more)
      if (std::find(list.begin(), list.end(), m) == list.end()) list.push_back(m);
  };
  // first the ones with the earliest finding: what is joined does not depend on the order of the input
  std::vector<reading_needed> all = asked;
  for (std::size_t i = 0; i < all.size(); ++i) {
    auto& a = all[i];
    if (a.what.empty()) throw range_error("readings_needed: entry " + std::to_string(i) + ": what is to be read is not said");
    if (!(is_finite(a.minutes) && a.minutes >= 0.0)) throw range_error("readings_needed: \"" + a.what + "\": minutes = " + number_text(a.minutes) + ": from 0");
    std::sort(a.settles.begin(), a.settles.end());
    a.settles.erase(std::unique(a.settles.begin(), a.settles.end()), a.settles.end());
  }
  std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) {
    return std::tie(a.settles, a.subject, a.argument, a.what, a.live, a.minutes, a.first, a.caution) < std::tie(b.settles, b.subject, b.argument, b.what, b.live, b.minutes, b.first, b.caution);
  });
  std::vector<reading_needed> joined;
  for (auto& a : all) {
    const auto found = std::find_if(joined.begin(), joined.end(), [&](const auto& b) { return same(a, b); });
    if (found == joined.end()) {
      std::vector<std::string> once;
      add(once, a.first);
      a.first = std::move(once);
      joined.push_back(std::move(a));
      continue;
    }
    add(found->settles, a.settles);
    add(found->first, a.first);
    found->minutes = std::max(found->minutes, a.minutes);
    if (!a.caution.empty() && found->caution.find(a.caution) == std::string::npos) found->caution += (found->caution.empty() ? "" : " ") + a.caution;
  }
  for (auto& a : joined) std::sort(a.settles.begin(), a.settles.end());

  // settled per minute, without dividing: no minutes at all come first
  const auto more_per_minute = [](double n, double minutes, double other_n, double other_minutes) {
    if (minutes <= 0.0 && other_minutes <= 0.0) return n > other_n;
    return n * other_minutes > other_n * minutes;
  };
  readings_plan plan;
  std::vector<std::string> now = standing;
  const auto stands = [&](const std::string& c) { return std::find(now.begin(), now.end(), c) != now.end(); };
  std::vector<bool> taken(joined.size(), false);
  for (std::size_t turn = 0; turn < joined.size(); ++turn) {
    struct candidate {
      std::size_t at = 0;
      std::vector<std::string> bring{};
      double opens = 0.0, opens_minutes = 0.0;  // what may be read once its conditions stand
    };
    candidate best;
    bool any = false;
    for (std::size_t i = 0; i < joined.size(); ++i) {
      if (taken[i]) continue;
      candidate c{i};
      for (const auto& f : joined[i].first)
        if (!stands(f)) c.bring.push_back(f);
      for (std::size_t k = 0; k < joined.size(); ++k) {
        if (taken[k] || joined[k].live != joined[i].live) continue;
        bool opened = true;
        for (const auto& f : joined[k].first) opened = opened && (stands(f) || std::find(c.bring.begin(), c.bring.end(), f) != c.bring.end());
        if (opened) c.opens += static_cast<double>(joined[k].settles.size()), c.opens_minutes += joined[k].minutes;
      }
      const auto before = [&](const candidate& a, const candidate& b) {
        const auto &x = joined[a.at], &y = joined[b.at];
        if (x.live != y.live) return y.live;
        if (a.bring.empty() != b.bring.empty()) return a.bring.empty();
        if (!a.bring.empty()) {
          if (a.bring.size() != b.bring.size()) return a.bring.size() < b.bring.size();
          if (more_per_minute(a.opens, a.opens_minutes, b.opens, b.opens_minutes)) return true;
          if (more_per_minute(b.opens, b.opens_minutes, a.opens, a.opens_minutes)) return false;
        }
        const auto n = static_cast<double>(x.settles.size()), m = static_cast<double>(y.settles.size());
        if (more_per_minute(n, x.minutes, m, y.minutes)) return true;
        if (more_per_minute(m, y.minutes, n, x.minutes)) return false;
        return std::tie(x.subject, x.what, x.argument) < std::tie(y.subject, y.what, y.argument);
      };
      if (!any || before(c, best)) best = std::move(c), any = true;
    }
    taken[best.at] = true;
    reading_to_take r{joined[best.at], best.bring, {}};
    for (const auto& b : best.bring) {
      now.push_back(b);
      std::size_t serves = 1;
      for (std::size_t k = 0; k < joined.size(); ++k)
        if (!taken[k] && std::find(joined[k].first.begin(), joined[k].first.end(), b) != joined[k].first.end()) ++serves;
      plan.text.push_back("First: " + b + (serves > 1 ? " (for " + std::to_string(serves) + " readings)" : "") + ".");
    }
    r.text = (r.is.live ? "Live: read " : "Read ") + r.is.what + (r.is.subject.empty() ? "" : " of \"" + r.is.subject + "\"");
    if (!r.is.settles.empty()) {
      r.text += r.is.settles.size() == 1 ? "; it settles finding " : "; it settles findings ";
      for (std::size_t i = 0; i < r.is.settles.size(); ++i)
        r.text += (i == 0 ? "" : i + 1 == r.is.settles.size() ? " and " : ", ") + std::to_string(r.is.settles[i]);
    }
    r.text += (r.is.minutes > 0.0 ? " (" + number_text(r.is.minutes, 3) + " min)." : ".") + (r.is.caution.empty() ? "" : " " + r.is.caution);
    plan.text.push_back(r.text);
    plan.minutes += r.is.minutes;
    plan.readings.push_back(std::move(r));
  }
  return plan;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

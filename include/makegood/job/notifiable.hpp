// SPDX-License-Identifier: MIT
// Which work on an electrical installation has to be notified: rows "notifiable_work" of the rulebooks, by the kind of work.
// A book that says nothing of a kind gives "not known", never "not notifiable".
#pragma once
#include <string>
#include <string_view>
#include "../document.hpp"
#include "../rulebook.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// A kind of work, and what a sentence calls it.
struct kind_of_work {
  std::string_view key, title;
};
inline constexpr kind_of_work kinds_of_work[] = {
    {"new_circuit", "a new circuit"},
    {"consumer_unit_replaced", "replacing the consumer unit"},
    {"special_location_alteration", "an addition or alteration to a circuit in a special location (about a bath or shower, swimming pool, sauna)"},
    {"kitchen_alteration", "an addition or alteration to a circuit in a kitchen"},
    {"outdoor_alteration", "an addition or alteration to a circuit outdoors"},
    {"alteration_elsewhere", "an addition or alteration to a circuit elsewhere"},
    {"like_for_like_replacement", "replacing a part by one of its kind"},
    {"repair", "a repair or maintenance"},
    {"heating_floor_fixed_wiring", "fixed wiring of electric floor heating"},
    {"ventilation_fan_wiring", "wiring a ventilation fan"},
    {"fan_replacement", "replacing a ventilation fan on its existing cabling"},
    {"fan_installation", "installing a ventilation fan and its duct where there was none"},
    {"inspection_only", "inspection and testing alone"}};
constexpr std::size_t count_of_works = sizeof(kinds_of_work) / sizeof(kinds_of_work[0]);

struct notification {
  std::string_view answer = "not_known";  ///< "notifiable", "not_notifiable", "not_known"
  std::string_view work{};                ///< the kind of work asked for
  std::string rule{};                     ///< what the book says, a sentence with its source
  source from{};                          ///< empty: no row
  std::string what_to_do{};               ///< who is told, before or after
  std::string overridden{};               ///< the named change of a derived book that answered
};

/// Whether a kind of work has to be notified by the rules of a book, and what to do.
/// In: one of kinds_of_work; a book with rows "notifiable_work": 1 notifiable (in Scotland: needs a building warrant), 0 not, 2 it depends on what
/// the row's text says. Anything else, no row, and no book give "not_known" with whom to ask. The first book that has a row answers.
/// Throws range_error for an unknown kind, with the nearest one. It says nothing about whether the work is done well, and rules change.
/// Example: notifiable_work("new_circuit", rules::england_adp_2013).answer is "notifiable" (Building Regulations 2010, regulation 12(6A)).
inline notification notifiable_work(std::string_view work, const rulebook& book) {
  const kind_of_work* kind = nullptr;
  for (const auto& k : kinds_of_work)
    if (k.key == work) kind = &k;
  if (!kind) {
    std::string_view keys[count_of_works];
    std::string text = "notifiable_work: work = \"" + std::string(work) + "\" is not one of ";
    for (std::size_t i = 0; i < count_of_works; ++i) {
      keys[i] = kinds_of_work[i].key;
      text += (i ? ", \"" : "\"") + std::string(keys[i]) + "\"";
    }
    const std::string near = document::nearest(work, keys);
    throw range_error(text + (near.empty() ? "" : "; did you mean \"" + near + "\"?"));
  }
  notification n;
  n.work = kind->key;
  const auto row = book.find("notifiable_work", kind->key);
  if (!row.found()) {
    n.rule = (book.id().empty() ? "No rulebook was named for " : "No rule in " + book.id() + " for ") + std::string(kind->title) + ".";
    n.what_to_do = "Ask the local building control before the work begins; if a registered installer does it, ask the scheme.";
    return n;
  }
  n.from = row.from();
  const double number = row.numbers()[0];
  n.answer = number == 1.0 ? "notifiable" : number == 0.0 ? "not_notifiable" : "not_known";
  std::string_view where;
  for (const auto* t : book.tables())
    for (const auto& r : t->rules)
      if (&r == row.row) where = t->jurisdiction;
  const bool of_any_kind = row.row && row.row->condition.empty();  // a book that has no such rule at all says so once
  n.rule = (where.empty() ? "By the derived book" : std::string(where)) + ": " + std::string(kind->title) +
           (number == 1.0 ? " has to be notified" : number == 0.0 ? " need not be notified" : of_any_kind ? ", no such rule was found" : " may or may not have to be notified");
  if (row.changed) {
    n.overridden = row.changed->words();
    n.rule += " (" + n.overridden + ").";
    n.what_to_do = row.changed->reason;
    return n;
  }
  n.rule += " (" + std::string(n.from.title) + ", " + std::string(n.from.clause) + (n.from.grade == "seen" ? ")." : "; recalled, not read).");
  n.what_to_do = std::string(row.row->text);
  return n;
}

}  // namespace job
}  // namespace v1
}  // namespace makegood

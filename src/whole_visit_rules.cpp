// SPDX-License-Identifier: MIT
// Models of the subject job that a whole visit asks of rulebooks: which work has to be notified.
#include <makegood/job/notifiable.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using document::array;
using document::object;

constexpr model_argument notifiable_arguments[] = {
    {"work", "text",
     "kind of work: \"new_circuit\", \"consumer_unit_replaced\", \"special_location_alteration\", \"kitchen_alteration\", \"outdoor_alteration\", \"alteration_elsewhere\", "
     "\"like_for_like_replacement\", \"repair\", \"heating_floor_fixed_wiring\", \"ventilation_fan_wiring\", \"fan_replacement\" (on its existing cabling), \"fan_installation\" (with its "
     "duct, where there was none) or \"inspection_only\""},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook: \"england-adp-2013\", \"wales-adp-2006\", \"scotland-warrant-house\", \"scotland-warrant-flat\", "
                             "\"northern-ireland-electrical\""}};
document::value run_notifiable(const object& inputs, const rulebook& book) {
  const fields in("notifiable_work", inputs);
  in.only("work");
  const auto n = job::notifiable_work(in.text("work"), book);
  object o{{"work", n.work}, {"answer", n.answer}, {"rule", n.rule}};
  if (n.from.title.empty()) o.set("source", document::value(nullptr));
  else o.set("source", object{{"title", n.from.title}, {"clause", n.from.clause}, {"grade", n.from.grade}});
  o.set("do", n.what_to_do);
  o.set("override", n.overridden);
  o.set("text", array{n.rule, n.what_to_do});
  o.set("caution", "Rules and editions change: where it matters, ask building control. Work that nobody is told of has to comply just as well.");
  return o;
}
constexpr model notifiable_work{{"notifiable_work",
                                 "Whether a kind of electrical work in a dwelling has to be notified by the rules of a country, and who is told, before or after. A kind of which "
                                 "the book says nothing is \"not_known\".",
                                 notifiable_arguments, {"Building Regulations 2010, Approved Document P; Building (Scotland) Regulations 2004, schedule 3", "by country, as each row says", "memory"},
                                 run_notifiable, nullptr}};
}  // namespace

void visit_rules(std::vector<entry>& all) { append(all, "job", list<notifiable_work>{}); }

}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
#include <makegood/air/list.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {

constexpr model_argument required_extract_arguments[] = {
    {"room_kind", "text", "kind of room and of extract: \"kitchen\", \"kitchen_hood\", \"utility\", \"bathroom\", \"sanitary\", or one of them with \"_continuous\""},
    {"rulebook", "rulebook", "ids of rulebooks, separated by commas, or a Rulebook"}};
document::value run_required_extract(const document::object& inputs, const rulebook& book) {
  const fields in("required_extract", inputs);
  in.only("room_kind");
  const auto r = makegood::air::required_extract(in.text("room_kind"), book);
  return document::object{
      {"flow_l_per_s", r.flow_l_per_s},
      {"comparator", comparator_text(r.compare)},
      {"source", document::object{{"title", r.from.title}, {"clause", r.from.clause}, {"grade", r.from.grade}, {"rule", r.text}, {"rulebook", r.rulebook}}},
      {"override", r.overridden}};
}
constexpr model required_extract{{"required_extract", "The extract rate that a rulebook asks for in a kind of room, in l/s, with its source.", required_extract_arguments,
                                  {"Approved Document F, volume 1, 2021 edition (England)", "Tables 1.1 and 1.2"}, run_required_extract, nullptr}};

}  // namespace

void air(std::vector<entry>& all) {
  append(all, "air", makegood::air::entries{});
  append(all, "air", list<required_extract>{});
}
}  // namespace makegood::subjects

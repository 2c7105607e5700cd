// SPDX-License-Identifier: MIT
// What a rulebook asks for in a room, before anything is measured.
// Subject: air.
#pragma once
#include "checks.hpp"

namespace makegood {
inline namespace v1 {
namespace air {

/// What a rulebook asks for in a room.
struct extract_requirement {
  double flow_l_per_s = no_number;
  comparator compare = comparator::at_least;
  source from{};
  std::string_view text{};
  std::string rulebook{};
  std::string overridden{};  ///< "name: reason" of the override that was used
};
/// The extract rate that a rulebook asks for. A rate that no book holds is an error, never a guess.
inline extract_requirement required_extract(std::string_view room_kind, const rulebook& book) {
  if (room_kinds.find(room_kind) < 0)
    throw range_error("required_extract: room_kind = \"" + std::string(room_kind) + "\" is not one of " + v1::detail::keys_text(room_kinds));
  const auto found = book.find("extract_rate", room_kind);
  if (!found.found())
    throw rule_error("required_extract: no \"extract_rate\" for \"" + std::string(room_kind) + "\" in " +
                     (book.id().empty() ? std::string("an empty rulebook") : book.id()));
  if (found.needs_makers_figure()) throw rule_error("required_extract: " + std::string(found.row->text));
  extract_requirement r{found.numbers()[0], found.compare(), found.from(), {}, book.id(), {}};
  if (found.changed) {
    r.from = {"override", {}, "override"};
    r.overridden = found.changed->words();
  } else {
    r.text = found.row->text;
  }
  return r;
}

}  // namespace air
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Words and judgement that stand beside numbers: what a check asks in plain words, what follows when it fails, how the place is made safe,
// which readings it needs, how it is usually put right; things seen by eye; a glossary. Data: src/words/*.json, compiled in.
// Job floor. Declared here, compiled in makegood::makegood.
#pragma once
#include "../document.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// Everything: "checks" by full name, "observations" by kind, "glossary" by term.
const document::object& words();
/// What is said of a check or model ("electrical.check_insulation"); nullptr: nothing.
const document::object* words_of_check(std::string_view call);
/// What is said of a thing seen by eye ("live_parts_within_reach"); nullptr: there is no such kind.
const document::object* words_of_observation(std::string_view kind);

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Between the files that assess a visit: parts by id, and what follows from the findings.
#pragma once
#include <makegood/job/assess.hpp>
#include <optional>

namespace makegood {
inline namespace v1 {
namespace job {

/// What something is about: a part of the visit, with the circuit that feeds it.
struct visit_part {
  std::string path, name, circuit;
};
visit_part part_of(const visit& v, std::string_view about);
const circuit* circuit_of(const visit& v, std::string_view id);

/// The findings of the visit alone: checks, observations, calculations, inquiries.
assessment findings_of(const visit& v, const rulebook& rules, const decision_rule& rule, const assess_options& how);
/// Every reading of the visit with its instrument, and what the instruments state.
void readings_of_visit(assessment& a, const visit& v);
/// What follows from the findings.
void what_follows(assessment& a, const visit& v, const rulebook& rules, const decision_rule& rule);

/// What the result of a model says about what was asked.
struct answer {
  outcome is = outcome::undecided;
  std::string why;    ///< of an undecided one: the words of a reason
  std::string plain;  ///< a sentence or several
  std::string next;   ///< what settles it, where the result says so
  document::object shown;  ///< numbers that stand with it
};
/// Nothing where neither the result has an outcome nor its words say how it is read.
std::optional<answer> answer_of(const document::object* words, const document::object& result, const std::vector<std::string>& sentences);

/// A text in a document of words; empty: there is none.
std::string_view text_in(const document::object* words, std::string_view name);
document::array texts(const std::vector<std::string>& list);
std::vector<std::string> texts_in(const document::object* words, std::string_view name);

}  // namespace job
}  // namespace v1
}  // namespace makegood

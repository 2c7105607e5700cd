// SPDX-License-Identifier: MIT
// From a visit and a rulebook to findings: each with verdict, plain words, source, working, caution.
// Job floor. Declared here, compiled in makegood::makegood.
#pragma once
#include "../verdict.hpp"
#include "visit.hpp"

namespace makegood {
inline namespace v1 {
namespace job {

/// One question asked of one thing, and its answer.
struct finding {
  std::string path;      ///< "circuits[0]"
  std::string subject;   ///< what people call it
  std::string question;  ///< "Does the cable keep the voltage up?"
  std::string plain;     ///< the answer in plain words
  std::string next;      ///< the reading or figure that would settle it; empty when settled
  makegood::verdict verdict;
  std::vector<working> before{};  ///< steps that led to the value judged
};
struct assessment {
  std::string title, place, date, rulebook, decision_rule;
  bool invented = false;
  std::vector<finding> findings;
  std::vector<std::string> cautions;
  std::size_t count(outcome o) const {
    std::size_t n = 0;
    for (const auto& f : findings) n += f.verdict.outcome == o;
    return n;
  }
};

/// Every check that the visit's readings allow, and what is still to be measured.
assessment assess(const visit& v, const rulebook& rules, const decision_rule& rule = {});
/// The assessment as a document: an object whose `findings` is a list.
document::value to_document(const assessment& a);

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// From a visit and a rulebook to findings: each with verdict, plain words, source, working, caution.
// Job floor. Declared here, compiled in makegood::makegood.
#pragma once
#include <cstdint>
#include <functional>
#include <span>
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

  /// What can follow for people and property, by judgement; a rulebook may have a published code for it.
  enum class danger : unsigned char { none, investigate, improve, potential, now };
  std::string kind = "check";       ///< "check", "observation", "diagnosis"
  std::string call{};               ///< the entry of the catalogue behind it; empty: none
  std::string words{};              ///< key of what is said beside the numbers, see job/words.hpp
  std::string electrician{};        ///< one sentence for the next electrician
  std::string client{};             ///< the answer for somebody without technical schooling
  std::string caution{};            ///< what can hurt somebody who acts on it: for whoever tests or mends
  std::string caution_client{};     ///< what the people of the house must not do until it has been put right; empty: nothing
  std::string consequence{};        ///< what can follow when it is left as it is
  std::string circuit{};            ///< id of the circuit that is switched off for it
  std::string about{};              ///< path of the part of the visit that it is about
  danger level = danger::none;
  std::string code{}, code_source{};///< the published code of the rulebook for that level, if it has one: suggested, no certificate
  bool isolates = false;            ///< it must be off until it has been put right
  std::vector<std::string> make_safe{};  ///< how the place is left until it has been put right; empty: nothing to isolate
  document::object shown{};         ///< of findings without a check behind them: value, limit, unit, source
};
std::string_view danger_text(finding::danger d);

/// A visit under a rulebook. What is not a finding is a document, in the shape that to_document() gives.
struct assessment {
  std::string title, place, date, rulebook, decision_rule;
  bool invented = false;
  std::vector<finding> findings;
  std::vector<std::string> cautions;
  document::array readings{};         ///< every reading of the visit, with its instrument and the state of the circuit
  document::array instruments{};      ///< what they were read with
  document::array diagnoses{};        ///< of each inquiry: what is wrong, which test is next, what to do
  document::array results{};          ///< of each calculation that is not a check
  document::array changes{};          ///< what was put right, with the answers before and after
  document::array isolate{};          ///< what must be off until it has been put right, and how it is left
  document::array unproved{};         ///< what nobody can say yet
  document::array readings_needed{};  ///< each reading once, with the findings that it settles; dead tests first
  document::array notifiable{};       ///< each kind of work against the rules on notification
  document::array options{};          ///< what can be done about each thing, with time and price
  document::value order_of_work{};    ///< what is done in the time there is
  document::value quote{};            ///< of the works that were chosen
  document::array scope{};            ///< what was not looked at
  std::size_t count(outcome o) const {
    std::size_t n = 0;
    for (const auto& f : findings) n += f.verdict.outcome == o;
    return n;
  }
};

/// How much of a visit is worked out.
struct assess_options {
  bool plan = true;      ///< inquiries: the next test too, not only what is wrong
  bool inquiries = true; ///< what is wrong with what does not work: some milliseconds each
  bool whole = true;     ///< what follows from the findings: isolating, readings needed, options, order of work, quote
  bool steps = true;     ///< the worked steps of the formulas on the way to a value
};
/// Every check that the visit's readings allow, what is wrong with what does not work, what is still to be measured, and what follows.
assessment assess(const visit& v, const rulebook& rules, const decision_rule& rule = {}, const assess_options& how = {});

/// The findings of many visits in columns; each row is one finding.
struct many_findings {
  std::vector<std::uint32_t> visit{};         ///< place of the visit
  std::vector<std::uint32_t> path{};          ///< place in `paths`
  std::vector<std::uint32_t> call{};          ///< place in `calls`
  std::vector<unsigned char> outcome{}, reason{}, danger{};
  std::vector<double> value{}, limit{}, margin{}, probability{};
  std::vector<std::string> paths{}, calls{};
};
/// Many visits at once, the same findings as one at a time, on one thread or more; those of inquiries only if asked for. `progress(done)` is called from the calling thread now
/// and then; false stops, and leaves the rest unworked.
many_findings assess_many(std::span<const visit> visits, const rulebook& rules, const decision_rule& rule = {}, unsigned threads = 1, bool inquiries = true,
                          const std::function<bool(std::size_t)>& progress = {});
/// The assessment as a document: an object whose `findings` is a list.
document::value to_document(const assessment& a);

}  // namespace job
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// The main job in C++: a visit's JSON in, findings out; and every problem of a bad document at once.
#include <doctest/doctest.h>
#include <algorithm>
#include <fstream>
#include <iterator>
#include <makegood/job/assess.hpp>
#include <makegood/job/json.hpp>
#include <makegood/rules/all.hpp>

using namespace makegood;

namespace {

std::string text_of(const std::string& path) {
  std::ifstream file(std::string(MAKEGOOD_TESTS_DIR) + "/" + path, std::ios::binary);
  REQUIRE(file.good());
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}
std::vector<problem> problems_of(const std::string& text) {
  try {
    job::parse_visit(text);
  } catch (const document_error& e) {
    return e.problems;
  }
  return {};
}
bool has(const std::vector<problem>& found, std::string_view path, std::string_view words) {
  return std::any_of(found.begin(), found.end(), [&](const problem& p) { return p.path == path && p.text.find(words) != std::string::npos; });
}
constexpr const char* head = R"({"format": "makegood-visit-1", "title": "t", "supply": {"earthing": "TT", "nominal_voltage_v": 230})";

}  // namespace

TEST_CASE("the demonstration shows every outcome") {
  const job::visit v = job::parse_visit(text_of("../notebooks/demo_visit.json"));
  CHECK(v.invented);
  const auto a = job::assess(v, rules::find("bs7671:2018+a2,england-adf-2021"));
  CHECK(a.count(outcome::pass) > 0);
  CHECK(a.count(outcome::fail) > 0);
  CHECK(a.count(outcome::undecided) > 0);
  for (const reason r : {reason::not_measured, reason::outside_validity, reason::straddles_limit, reason::needs_makers_figure, reason::no_rule_in_book})
    CHECK(std::any_of(a.findings.begin(), a.findings.end(), [&](const job::finding& f) { return f.verdict.reason == r; }));
  for (const auto& f : a.findings) {
    CAPTURE(f.path);
    CAPTURE(f.question);
    CHECK(!f.plain.empty());
    CHECK((f.verdict.outcome != outcome::undecided || !f.next.empty()));
    for (const auto& w : f.before) CHECK(w.dimension_error == "");
    for (const auto& w : f.verdict.worked()) CHECK(w.dimension_error == "");
  }
}

TEST_CASE("the document of an assessment is JSON and reads back") {
  const auto a = job::assess(job::parse_visit(text_of("../notebooks/demo_visit.json")), rules::find("bs7671:2018+a2"));
  const auto d = job::parse_json(document::to_json(job::to_document(a)));
  const auto* findings = d.as<document::object>()->find("findings");
  REQUIRE(findings);
  CHECK(findings->as<document::array>()->size() == a.findings.size());
}

TEST_CASE("all problems of a document at once, each with its path") {
  const auto found = problems_of(std::string(head) + R"(, "circuits": [
    {"id": "a", "name": "one", "length_m": -4},
    {"id": "a", "name": "two", "lenght_m": 3, "load_kind": "lightning"},
    {"id": "c", "name": 3, "length_m": 22000, "insulation_mohm": {"value": 1, "above": 2}}],
    "fans": [{"id": "f", "name": "fan", "room": "nowhere"}]})");
  CHECK(has(found, "circuits[0].length_m", "-4 m is below 0 m"));
  CHECK(has(found, "circuits[1].lenght_m", "did you mean \"length_m\"?"));
  CHECK(has(found, "circuits[1].load_kind", "did you mean \"lighting\"?"));
  CHECK(has(found, "circuits[1].id", "stands twice"));
  CHECK(has(found, "circuits[2].name", "must be a text, not a number"));
  CHECK(has(found, "circuits[2].length_m", "if it was in mm, write 22 m"));
  CHECK(has(found, "circuits[2].insulation_mohm", "more than one thing"));
  CHECK(has(found, "fans[0].room", "not in the visit"));
  CHECK(found.size() == 8);
}

TEST_CASE("documents that are no visit") {
  CHECK(has(problems_of("[]"), "", "must be an object"));
  CHECK(has(problems_of("{"), "", "not JSON"));
  CHECK(has(problems_of("{}"), "supply", "is missing"));
  CHECK(has(problems_of(std::string(head) + R"(, "title": "again"})"), "title", "stands twice"));
  CHECK(problems_of(std::string(head) + "}").empty());
}

TEST_CASE("an instrument that states nothing is not exact by silence") {
  const auto with = [](const std::string& accuracy) {
    return problems_of(std::string(head) + R"(, "instruments": [{"id": "i", "accuracy": [{"reads": "length")" + accuracy + "}]}]}");
  };
  CHECK(has(with(""), "instruments[0].accuracy[0]", "states no accuracy"));
  CHECK(has(with(", \"counts\": 3"), "instruments[0].accuracy[0]", "resolution"));
  CHECK(has(with(", \"exact\": true, \"percent\": 1"), "instruments[0].accuracy[0]", "is exact and states an accuracy"));
  CHECK(with(", \"exact\": true").empty());
  CHECK(with(", \"percent\": 1").empty());
}

TEST_CASE("what an instrument states reaches the verdict") {
  const std::string text = std::string(head) + R"(, "instruments": [{"id": "tape", "accuracy": [{"reads": "length", "percent": 2}]}],
    "circuits": [{"id": "a", "name": "one", "length_m": {"value": 50, "instrument": "tape"}, "design_current_a": 20, "cable": {"drop_mv_per_a_m": 11}}]})";
  const auto a = job::assess(job::parse_visit(text), rules::bs7671_2018_a2);
  const auto& v = a.findings.at(0).verdict;
  CHECK(v.value == doctest::Approx(11.0));
  CHECK(v.standard_uncertainty == doctest::Approx(11.0 * 0.02 / std::sqrt(3.0)));
  CHECK_FALSE(v.assumed);
  CHECK(v.outcome == outcome::pass);  // 0.5 V margin, u 0.127 V
}

TEST_CASE("what was told is not measured, what was estimated is doubtful") {
  const auto with = [](const std::string& kind) {
    return job::assess(job::parse_visit(std::string(head) + R"(, "circuits": [{"id": "a", "name": "one", "length_m": {"value": 50, "kind": ")" + kind +
                                        R"("}, "design_current_a": 20, "cable": {"drop_mv_per_a_m": 11}}]})"),
                       rules::bs7671_2018_a2).findings.at(0).verdict;
  };
  CHECK(with("told").reason == reason::not_measured);
  CHECK(with("estimated").standard_uncertainty == doctest::Approx(11.0 * 0.2 / std::sqrt(3.0)));
  CHECK(with("estimated").outcome == outcome::undecided);
  CHECK(with("measured").outcome == outcome::pass);
  CHECK(with("measured").assumed);
}

TEST_CASE("an insulation reading on a live circuit proves nothing") {
  const auto a = job::assess(job::parse_visit(std::string(head) + R"(, "circuits": [{"id": "a", "name": "one", "insulation_mohm": {"above": 999, "circuit_state": "live"}}]})"),
                             rules::bs7671_2018_a2);
  const auto found = std::find_if(a.findings.begin(), a.findings.end(), [](const job::finding& f) { return f.verdict.check() == "check_insulation"; });
  REQUIRE(found != a.findings.end());
  CHECK(found->verdict.outcome == outcome::undecided);
  CHECK(found->verdict.reason == reason::precondition_missing);
}

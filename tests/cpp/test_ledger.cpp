// SPDX-License-Identifier: MIT
// Every row of the ledger, dispatched by descriptor.
#include <doctest/doctest.h>
#include <makegood/registry.hpp>
#include "ledger.hpp"

using namespace makegood;

TEST_CASE("published values come out") {
  const auto rows = ledger::all();
  REQUIRE(rows.size() > 0);
  for (const auto& r : rows) {
    CAPTURE(r.at("function"));
    CAPTURE(r.at("inputs"));
    CAPTURE(r.at("source"));
    CAPTURE(r.at("locator"));
    const entry* e = find_entry(r.at("function"));
    CHECK_MESSAGE(e != nullptr, "the ledger names a function that is not in the catalogue");
    if (!e) continue;
    document::value got;
    try {
      got = invoke(*e, *job::parse_json(r.at("inputs")).as<document::object>());
    } catch (const std::exception& x) {
      FAIL_CHECK(x.what());
      continue;
    }
    if (const auto& field = r.at("field"); !field.empty()) {
      for (std::size_t from = 0; from < field.size();) {  // "posterior.0": a field, or the place in a list
        const std::size_t to = std::min(field.find('.', from), field.size());
        const std::string part = field.substr(from, to - from);
        const auto* o = got.as<document::object>();
        const auto* a = got.as<document::array>();
        const auto* f = o ? o->find(part) : a && std::stoul(part) < a->size() ? &(*a)[std::stoul(part)] : nullptr;
        REQUIRE_MESSAGE(f != nullptr, field);
        const document::value inside = *f;  // f lies inside got
        got = inside;
        from = to + 1;
      }
    }
    if (const auto* text = got.as<std::string>()) {
      CHECK(*text == r.at("expected"));
      continue;
    }
    const auto* y = got.as<double>();
    CHECK_MESSAGE(y != nullptr, "no number");
    if (!y) continue;
    const double wanted = std::stod(r.at("expected"));
    const double slack = ledger::tolerance(r, wanted) * (1.0 + 1e-9) + 1e-12 * std::fabs(wanted);
    CHECK_MESSAGE(!(std::fabs(*y - wanted) > slack), "wanted ", wanted, ", got ", *y, ", tolerance ", slack, " ", r.at("unit"));
    CHECK_FALSE(is_nan(*y));
  }
}

TEST_CASE("a row that is wrong is found") {
  const entry* e = find_entry("electrical.voltage_drop");
  REQUIRE(e);
  const auto y = invoke(*e, {{"drop_mv_per_a_m", 44.0}, {"current_a", 16.0}, {"length_m", 22.0}});
  CHECK(*y.as<double>() == doctest::Approx(15.488));
  CHECK_THROWS_AS(invoke(*e, {{"drop_mv_per_a_m", 44.0}, {"current_a", 16.0}}), range_error);
  CHECK_THROWS_AS(invoke(*e, {{"drop_mv_per_a_m", 44.0}, {"current_a", 16.0}, {"length_m", 22.0}, {"lenght_m", 1.0}}), range_error);
}

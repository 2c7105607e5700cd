// SPDX-License-Identifier: MIT
// A second translation unit with every header: it must link beside the others.
#include <doctest/doctest.h>
#include <makegood/makegood.hpp>

TEST_CASE("formulas are the same object in every unit") {
  const auto* e = makegood::find_entry("electrical.voltage_drop");
  REQUIRE(e);
  CHECK(e->formula.self == &makegood::electrical::voltage_drop);
}

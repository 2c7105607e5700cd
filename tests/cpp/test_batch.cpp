// SPDX-License-Identifier: MIT
// Formulas over arrays of every shape: strides, single numbers, lengths, in place; what is refused and where.
#include <doctest/doctest.h>
#include <bit>
#include <makegood/makegood.hpp>
#include <makegood/registry.hpp>
#include <vector>

using namespace makegood;

namespace {

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

/// An array with a step in bytes, possibly 0 or backwards.
struct strided {
  std::vector<double> room;
  std::ptrdiff_t step, first = 0;
  strided(std::ptrdiff_t n, std::ptrdiff_t in_doubles) : step(in_doubles * static_cast<std::ptrdiff_t>(sizeof(double))) {
    const std::ptrdiff_t away = in_doubles < 0 ? -in_doubles : in_doubles;
    room.assign(static_cast<std::size_t>(away * n + 1), -1.0);
    if (in_doubles < 0) first = away * (n - 1);
  }
  double& operator[](std::ptrdiff_t i) { return room[static_cast<std::size_t>(first + i * step / static_cast<std::ptrdiff_t>(sizeof(double)))]; }
  char* data() { return reinterpret_cast<char*>(&(*this)[0]); }
};

}  // namespace

TEST_CASE("arrays: every stride and length gives what single calls give") {
  const entry* e = find_entry("sensing.ntc_temperature");
  REQUIRE(e);
  for (const auto set : instruction_sets()) {
    CAPTURE(set);
    const auto run = with_instruction_set(*e, set).formula.batch;
    for (std::ptrdiff_t n : {0, 1, 2, 3, 7, 8, 9, 15, 16, 17, 127, 128, 129, 1023, 1024, 1025, 1033, 2500})
      for (std::ptrdiff_t in : {1, 2, -1, -3})
        for (std::ptrdiff_t out : {1, 2, -1}) {
          CAPTURE(n);
          CAPTURE(in);
          CAPTURE(out);
          strided r(n, in), r0(n, 0), t0(n, 1), b(n, 0), y(n, out);
          for (std::ptrdiff_t i = 0; i < n; ++i) r[i] = 3000.0 + 11.0 * static_cast<double>(i), t0[i] = 20.0 + 0.001 * static_cast<double>(i);
          r0[0] = 10000.0;
          b[0] = 3950.0;
          char* data[] = {r.data(), r0.data(), t0.data(), b.data(), y.data()};
          const std::ptrdiff_t steps[] = {r.step, r0.step, t0.step, b.step, y.step};
          CHECK(run(e->formula.self, data, steps, n, false) == -1);
          std::ptrdiff_t different = 0;
          for (std::ptrdiff_t i = 0; i < n; ++i) {
            const double x[] = {r[i], r0[0], t0[i], b[0]};
            different += !same_bits(y[i], e->formula.checked(x));
          }
          CHECK(different == 0);
          double untouched = -1.0;  // between the elements nothing is written
          if (out == 2)
            for (std::size_t k = 1; k < y.room.size(); k += 2) untouched = y.room[k] != -1.0 ? y.room[k] : untouched;
          CHECK(untouched == -1.0);
        }
  }
}

TEST_CASE("arrays: the first refused element is found wherever it lies, also among readings not taken") {
  const entry* e = find_entry("electrical.voltage_drop");
  REQUIRE(e);
  for (const auto set : instruction_sets()) {
    CAPTURE(set);
    const auto run = with_instruction_set(*e, set).formula.batch;
    for (std::ptrdiff_t step : {1, 2})
      for (std::ptrdiff_t at : {0, 1, 7, 8, 127, 128, 1023, 1024, 1031, 2999}) {
        CAPTURE(step);
        CAPTURE(at);
        const std::ptrdiff_t n = 3000;
        strided d(n, step), i(n, step), l(n, 0), y(n, 1);
        for (std::ptrdiff_t k = 0; k < n; ++k) d[k] = 44.0, i[k] = k % 5 == 3 ? no_number : 16.0;
        l[0] = 22.0;
        d[at] = at % 2 ? 0.0 : 1001.0;  // the range is above 0 to 1000
        i[at] = 16.0;
        if (at + 1 < n) d[at + 1] = -1.0;
        char* data[] = {d.data(), i.data(), l.data(), y.data()};
        const std::ptrdiff_t steps[] = {d.step, i.step, l.step, y.step};
        CHECK(run(e->formula.self, data, steps, n, false) == at);
        CHECK(is_nan(y[at]));
        CHECK(is_nan(y[3]));
        CHECK(run(e->formula.self, data, steps, n, true) == -1);
        // a single number out of range refuses every element that was measured
        l[0] = -1.0;
        d[0] = 44.0;
        i[0] = no_number;
        i[1] = at == 1 ? 16.0 : no_number;
        CHECK(run(e->formula.self, data, steps, n, false) == (at == 1 ? 1 : 2));
        // and one that was not measured refuses none
        l[0] = no_number;
        CHECK(run(e->formula.self, data, steps, n, false) == -1);
        CHECK(is_nan(y[n - 1]));
      }
  }
}

TEST_CASE("arrays: the result may take the place of an argument") {
  const entry* e = find_entry("electrical.voltage_drop");
  REQUIRE(e);
  const std::ptrdiff_t n = 1500;
  for (const auto set : instruction_sets()) {
    CAPTURE(set);
    std::vector<double> d(n, 44.0), i(n, 16.0), l(n);
    for (std::size_t k = 0; k < l.size(); ++k) l[k] = static_cast<double>(k);
    l[1400] = -2.0;
    char* data[] = {reinterpret_cast<char*>(d.data()), reinterpret_cast<char*>(i.data()), reinterpret_cast<char*>(l.data()), reinterpret_cast<char*>(l.data())};
    const std::ptrdiff_t steps[] = {8, 8, 8, 8};
    CHECK(with_instruction_set(*e, set).formula.batch(e->formula.self, data, steps, n, false) == 1400);
    std::size_t different = 0;
    for (std::size_t k = 0; k < l.size(); ++k) different += k != 1400 && !same_bits(l[k], electrical::voltage_drop(44.0, 16.0, static_cast<double>(k)));
    CHECK(different == 0);
    CHECK(is_nan(l[1400]));
  }
}

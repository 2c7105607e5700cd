// SPDX-License-Identifier: MIT
// Built with -ffast-math and the opt-out. 44 mV/(A·m) x 16 A x 22 m = 15.488 V: a product, worked by hand.
// NaN still never passes: it is found by its bits, whatever the compiler assumes about comparisons.
#include <makegood/electrical/list.hpp>
#include <makegood/rules/bs7671_2018_a2.hpp>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>

namespace {

int failures = 0;
void expect(bool good, const char* what) {
    if (!good) {
        std::fprintf(stderr, "not so: %s\n", what);
        ++failures;
    }
}
template <class F>
bool refuses(F f) {
    try {
        f();
    } catch (const makegood::error&) {
        return true;
    }
    return false;
}

}  // namespace

int main() {
    using namespace makegood::electrical;
    const makegood::rule_table& book = makegood::rules::bs7671_2018_a2;
    expect(std::fabs(voltage_drop(44.0, 16.0, 22.0) - 15.488) <= 1e-12, "voltage_drop(44, 16, 22) is 15.488 V");

    // read from text, so that the compiler cannot see what they are
    const double not_a_number = std::strtod("nan", nullptr);
    const double infinite = std::strtod("inf", nullptr);
    for (const double bad : {not_a_number, -not_a_number, infinite, -infinite}) {
        expect(refuses([&] { return voltage_drop(44.0, bad, 22.0); }), "a formula refuses it");
        expect(!voltage_drop.try_call(44.0, bad, 22.0).ok(), "try_call gives a reason");
        expect(refuses([&] { return check_insulation(bad, "up_to_500_v", book); }), "a check refuses it");
        expect(refuses([&] { return check_rcd_trip(makegood::measured(bad), "general", book); }), "a check refuses it as Measured");
        expect(refuses([&] { return check_rcd_trip(makegood::measured(100.0, bad, "u"), "general", book); }) ||
                   check_rcd_trip(makegood::measured(100.0, bad, "u"), "general", book).outcome != makegood::outcome::pass,
               "a doubt that is no number never passes");
    }
    const auto v = check_insulation(makegood::reading::not_measured(), "up_to_500_v", book);
    expect(v.outcome == makegood::outcome::undecided && v.reason == makegood::reason::not_measured, "not measured is undecided");
    expect(check_insulation(makegood::reading::above(999.0), "up_to_500_v", book).outcome == makegood::outcome::pass, "above 999 MΩ passes");
    expect(check_insulation(0.2, "up_to_500_v", book).outcome == makegood::outcome::fail, "0.2 MΩ fails");
    return failures;
}

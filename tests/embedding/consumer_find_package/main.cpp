// SPDX-License-Identifier: MIT
// 44 mV/(A·m) x 16 A x 22 m = 15.488 V, by the definition of the tabulated drop: a product, worked by hand.
#include <makegood/electrical/conductors.hpp>

#include <cmath>
#include <cstdio>

int main() {
    const double got = makegood::electrical::voltage_drop(44.0, 16.0, 22.0);
    if (!(std::fabs(got - 15.488) <= 1e-12)) {
        std::fprintf(stderr, "voltage_drop(44, 16, 22): wanted 15.488 V, got %.17g V\n", got);
        return 1;
    }
    return 0;
}

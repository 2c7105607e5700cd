// SPDX-License-Identifier: MIT
// Something that only the compiled library holds: the catalogue of every formula by name.
#include <makegood/registry.hpp>

#include <cstdio>

int main() {
    if (makegood::find_entry("electrical.voltage_drop") == nullptr || makegood::find_entry("electrical.no_such_formula") != nullptr) {
        std::fprintf(stderr, "the catalogue of the installed library is wrong: %zu entries\n", makegood::catalogue().size());
        return 1;
    }
    return 0;
}

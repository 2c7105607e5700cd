// SPDX-License-Identifier: MIT
// Checks of lighting.
// Subject: lighting.
#pragma once
#include "../verdict.hpp"
#include "photometry.hpp"

namespace makegood {
inline namespace v1 {
namespace lighting {

inline constexpr auto check_illuminance = check(
    out{"check_illuminance", "E", unit::lux, "Illuminance as calculated or read against what the client, the maker or a standard asks for: that number is the caller's."},
    in(arg{"illuminance_lx", "E", unit::lux, between(0, 1e6), "illuminance, maintained: of new lamps in a clean room take the maintenance factor off"}.usually(20, 1000),
       arg{"required_lx", "E_r", unit::lux, between(0, 1e6), "least illuminance asked for, and say by whom"}.usually(50, 750)),
    rule_use{}, comparator::at_least, source{"the limit that the caller names", "", "common-practice"}, [](auto illuminance, auto) { return illuminance; }, [](auto, auto, auto required) { return required; },
    "A phone is no light meter. Daylight out, lamps warm, the meter at the working plane and nobody's shadow on it. Maintained, not new; lux, not footcandles (1 fc is 10.76 lx).");

}  // namespace lighting
}  // namespace v1
}  // namespace makegood

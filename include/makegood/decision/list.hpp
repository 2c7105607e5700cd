// SPDX-License-Identifier: MIT
// What the library calculates about decisions; its models are described in src/decision.cpp.
#pragma once
#include "../catalogue.hpp"
#include "risk.hpp"

namespace makegood {
inline namespace v1 {
namespace decision {

using entries = list<>;

}  // namespace decision
}  // namespace v1
}  // namespace makegood

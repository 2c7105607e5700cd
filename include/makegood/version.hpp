// SPDX-License-Identifier: MIT
// The version of the library; CMake reads it here. The editions of the rulebooks are numbered apart.
#pragma once
#include <string_view>

namespace makegood {
inline namespace v1 {
inline constexpr std::string_view version = "0.1.0";
}  // namespace v1
}  // namespace makegood

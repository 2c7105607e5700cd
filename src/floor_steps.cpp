// SPDX-License-Identifier: MIT
// Compiled once for each instruction set, with -DMAKEGOOD_ISA_TAG=<its name>, as batch.cpp is and under the same rule: nothing here may
// leave a function without that name in its own.
#include "floor_steps.hpp"
#include <makegood/scalar/lanes.hpp>

namespace makegood::subjects::MAKEGOOD_ISA_TAG {
namespace {

using number = v1::MAKEGOOD_ISA_TAG::lanes<>;
static_assert(sizeof(heating::both_ends<number>) == 2 * number::width * sizeof(double));

#define MAKEGOOD_TEXT(x) #x
#define MAKEGOOD_TEXT_OF(x) MAKEGOOD_TEXT(x)

}  // namespace

floor_kernel floors() { return {MAKEGOOD_TEXT_OF(MAKEGOOD_ISA_TAG), number::width, &heating::march<number>}; }

}  // namespace makegood::subjects::MAKEGOOD_ISA_TAG

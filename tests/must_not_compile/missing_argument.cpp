// SPDX-License-Identifier: MIT
// Leaving out an argument that has no default must not compile.
// error: (could not convert|no viable|no matching|no match)
#include <makegood/electrical/checks.hpp>

makegood::verdict ask() {
#ifdef MAKEGOOD_MUST_COMPILE
  return makegood::electrical::check_voltage_drop({.voltage_drop_v = 5, .nominal_voltage_v = 230, .load_kind = "other"});
#else
  return makegood::electrical::check_voltage_drop({.voltage_drop_v = 5, .load_kind = "other"});
#endif
}

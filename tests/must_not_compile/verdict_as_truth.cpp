// SPDX-License-Identifier: MIT
// A verdict has three outcomes: using it as a truth value must not compile.
// error: (deleted function|use of deleted)
#include <makegood/verdict.hpp>

int ask(const makegood::verdict& v) {
#ifdef MAKEGOOD_MUST_COMPILE
  if (v.outcome == makegood::outcome::pass) return 1;
#else
  if (v) return 1;
#endif
  return 0;
}

// SPDX-License-Identifier: MIT
#include <makegood/electrical/list.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
void electrical(std::vector<entry>& all) { append(all, "electrical", makegood::electrical::entries{}); }
}  // namespace makegood::subjects

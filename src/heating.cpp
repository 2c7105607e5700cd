// SPDX-License-Identifier: MIT
#include <makegood/heating/list.hpp>
#include "subjects.hpp"

namespace makegood::subjects {
void heating(std::vector<entry>& all) { append(all, "heating", makegood::heating::entries{}); }
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Models of the subject electrical: where a fault lies along a cable.
#include "subjects.hpp"

namespace makegood::subjects {

void fault_location(std::vector<entry>&) {}

}  // namespace makegood::subjects

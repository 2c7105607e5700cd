// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: setting_out.
#pragma once
#include "cords.hpp"
#include "drilling.hpp"
#include "fixings.hpp"

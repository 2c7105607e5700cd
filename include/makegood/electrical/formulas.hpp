// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: electrical.
#pragma once
#include "conductors.hpp"
#include "fault_location.hpp"
#include "protection.hpp"

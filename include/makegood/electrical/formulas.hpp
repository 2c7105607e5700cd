// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: electrical.
#pragma once
#include "capacity.hpp"
#include "conductors.hpp"
#include "demand.hpp"
#include "devices.hpp"
#include "fault_location.hpp"
#include "protection.hpp"
#include "runs.hpp"
#include "sizing.hpp"

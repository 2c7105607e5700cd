// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: electrical.
#pragma once
#include "conductors.hpp"
#include "protection.hpp"
#include "capacity.hpp"
#include "demand.hpp"
#include "devices.hpp"
#include "sizing.hpp"

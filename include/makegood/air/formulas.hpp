// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: air.
#pragma once
#include "ducts.hpp"
#include "fan_laws.hpp"
#include "junctions.hpp"
#include "measurement.hpp"
#include "moist_air.hpp"
#include "surfaces.hpp"
#include "ventilation.hpp"

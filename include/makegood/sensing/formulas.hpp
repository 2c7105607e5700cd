// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: sensing.
#pragma once
#include "errors.hpp"
#include "metals.hpp"
#include "resistance.hpp"
#include "thermistor.hpp"

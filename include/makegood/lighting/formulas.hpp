// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: lighting.
#pragma once
#include "photometry.hpp"

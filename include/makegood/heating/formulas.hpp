// SPDX-License-Identifier: MIT
// Every formula of this subject, without the checks and their machinery: the cheapest way in.
// Subject: heating.
#pragma once
#include "elements.hpp"
#include "floor.hpp"
#include "materials.hpp"
#include "mirror.hpp"
#include "rooms.hpp"
#include "surfaces.hpp"

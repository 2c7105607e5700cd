// SPDX-License-Identifier: MIT
// Every formula of this subject, without the models: the cheapest way in.
// Subject: price.
#pragma once
#include "ratios.hpp"

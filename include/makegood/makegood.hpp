// SPDX-License-Identifier: MIT
// Everything that needs the standard library alone. Opt-in beside it: job/json.hpp (nlohmann/json), sensing/fit.hpp and air/network.hpp (Eigen).
#pragma once
#include "air/list.hpp"
#include "catalogue.hpp"
#include "decision/list.hpp"
#include "electrical/list.hpp"
#include "heating/list.hpp"
#include "job/assess.hpp"
#include "lighting/list.hpp"
#include "price/list.hpp"
#include "registry.hpp"
#include "rules/all.hpp"
#include "scalar/interval.hpp"
#include "sensing/list.hpp"
#include "setting_out/list.hpp"
#include "version.hpp"

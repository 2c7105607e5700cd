// SPDX-License-Identifier: MIT
// What the models of the subject air read from documents alike: air, segments of a run, a system, a fan.
#pragma once
#include <makegood/air/fans.hpp>
#include <string>
#include <vector>
#include "subjects.hpp"

namespace makegood::subjects {

void moisture(std::vector<entry>& all);       // called by ventilation()
void requirements(std::vector<entry>& all);   // likewise
void measured_flow(std::vector<entry>& all);  // likewise

std::string path(std::string_view where, std::string_view field);
const document::array& list_of(const std::string& who, const fields& in, std::string_view name);
const document::object& object_of(const std::string& who, const fields& in, std::string_view name);

/// "air": density and viscosity, or a temperature with humidity and pressure.
air::air_state air_from(const std::string& who, const fields& in);
std::vector<air::duct_segment> segments_from(const std::string& who, const document::array& list);

/// A system: segments with a band, or a resistance, or a point that it passes.
struct system_read {
  air::system_curve curve, low, high;
  std::vector<air::duct_segment> segments;
  bool banded() const { return !segments.empty(); }
};
system_read system_from(const std::string& who, const document::object& o, const air::air_state& air);

struct fan_read {
  air::fan_curve curve;              ///< as it stands there
  double outlet_pa_s2_per_l2 = 0.0;  ///< what a static curve leaves out: the velocity pressure at its outlet
  bool static_without_outlet = false;
};
fan_read fan_from(const std::string& who, const document::object& o, const air::air_state& air);

}  // namespace makegood::subjects

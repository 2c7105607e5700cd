// SPDX-License-Identifier: MIT
#include <makegood/heating/layout.hpp>
#include <makegood/heating/list.hpp>
#include <cmath>
#include "subjects.hpp"

namespace makegood::subjects {
namespace {
using document::array;
using document::object;
using namespace makegood::heating;

constexpr model_argument mats_arguments[] = {
    {"length_m", "number", "length of the room"},
    {"width_m", "number", "width of the room"},
    {"fixed_area_m2", "number", "area under bath, tray, units, WC and other fixed things; 0", true},
    {"margin_m", "number", "distance kept from the walls; 0", true},
    {"areas_m2", "numbers", "areas in which the mats are made; left out: the usual ones", true},
    {"power_w_per_m2", "number", "power of the mats for each square metre; 150", true},
    {"voltage_v", "number", "supply; 230", true},
    {"most_mats", "number", "how many mats at most, 1 to 4; 2", true},
    {"mat_width_m", "number", "width of a strip; 0.5", true}};
document::value run_mats(const object& inputs, const rulebook&) {
  constexpr std::string_view who = "mats_that_fit";
  const fields in(who, inputs);
  in.only("length_m", "width_m", "fixed_area_m2", "margin_m", "areas_m2", "power_w_per_m2", "voltage_v", "most_mats", "mat_width_m");
  const floor_plan floor{in.number("length_m"), in.number("width_m"), in.number_or("fixed_area_m2", 0.0), in.number_or("margin_m", 0.0), in.number_or("mat_width_m", 0.5)};
  const double density = in.number_or("power_w_per_m2", 150.0), voltage = in.number_or("voltage_v", 230.0), most = in.number_or("most_mats", 2.0);
  if (!(density > 0.0 && density <= 1000.0)) throw range_error("mats_that_fit: power_w_per_m2: above 0 to 1000 W/m²");
  if (!(voltage > 0.0 && voltage <= 1000.0)) throw range_error("mats_that_fit: voltage_v: above 0 to 1000 V");
  if (!(most >= 1.0 && most <= 4.0) || most != std::floor(most)) throw range_error("mats_that_fit: most_mats: 1 to 4, whole");
  std::vector<double> areas(std::begin(usual_mat_areas_m2), std::end(usual_mat_areas_m2));
  if (in.has("areas_m2")) areas = numbers_of(who, "areas_m2", in.need("areas_m2"));
  const auto r = mats_that_fit(floor, areas, static_cast<int>(most));
  array sets, text;
  for (const auto& s : r.sets) {
    array each;
    for (const double a : s.areas_m2) each.emplace_back(a);
    const double power = s.total_m2 * density;
    sets.push_back(object{{"areas_m2", each}, {"total_m2", s.total_m2}, {"left_m2", s.left_m2}, {"power_w", power}, {"current_a", element_current(power, voltage)}});
  }
  if (r.sets.empty()) text.push_back("No mat of these areas fits: a loose cable, or a smaller mat.");
  else text.push_back("Largest: " + number_text(r.sets[0].total_m2) + " m² of " + number_text(std::round(100.0 * r.free_m2) / 100.0) + " m² free.");
  text.push_back("By area and whole strips alone: draw the strips before ordering. A mat's backing may be cut to turn it, its heating wire never; no mat under fixed furniture.");
  return object{{"free_m2", r.free_m2}, {"strips_m2", r.strips_m2}, {"sets", sets}, {"text", text}};
}
constexpr model mats{{"mats_that_fit", "Which standard mats fit a floor: free area, what whole strips cover, and the sets of mats that leave the least of it cold, with power and current.", mats_arguments,
                      source{"geometry", "largest sets not above the area of whole strips", "derived"}, run_mats, nullptr}};
}  // namespace

void heating(std::vector<entry>& all) {
  append(all, "heating", makegood::heating::entries{});
  append(all, "heating", list<mats>{});
}
}  // namespace makegood::subjects

// SPDX-License-Identifier: MIT
// Lumen method, illuminance of points and of strips, cones of light.
// Subject: lighting.
#pragma once
#include "../formula.hpp"

namespace makegood {
inline namespace v1 {
namespace lighting {

namespace unit {
using namespace makegood::unit;
inline constexpr unit_t lumen{"lm", {0, 0, 0, 0, 0, 2}, 1.0, false, {}};
inline constexpr unit_t candela{"cd", {0, 0, 0, 0, 0, 2}, 1.0, false, {}};
inline constexpr unit_t candela_per_metre{"cd/m", {-2, 0, 0, 0, 0, 2}, 1.0, false, {}};
inline constexpr unit_slip lux_slips[] = {{10.763910416709722, "fc (footcandle)"}, {1e3, "klx"}};
inline constexpr unit_t lux{"lx", {-4, 0, 0, 0, 0, 2}, 1.0, false, lux_slips};
inline constexpr unit_t degree{"°", {0, 0, 0, 0, 0, 0}, 1.0, false, {}};
}  // namespace unit

namespace detail {
inline constexpr arg flux = arg{"flux_lm", "F", unit::lumen, positive_to(1e7), "light of each lamp as rated; of a whole luminaire what comes out of it"}.usually(200, 5000);
inline constexpr arg utilisation = arg{"utilisation_factor", "UF", unit::ratio, range{0.0, 2.0, true, false}, "part of the light that comes to the working plane, from the luminaire's table for the room index"}.usually(0.2, 0.9);
inline constexpr arg maintenance = arg{"maintenance_factor", "MF", unit::ratio, range{0.0, 1.0, true, false}, "part of the new light that is left before cleaning and new lamps"}.usually(0.5, 0.95);
inline constexpr arg lit_area = arg{"area_m2", "A", unit::square_metre, positive_to(1e6), "area of the working plane"}.usually(2, 300);
inline constexpr arg intensity = arg{"intensity_cd", "I", unit::candela, between(0, 1e7), "luminous intensity towards the point"}.usually(5, 2000);
inline constexpr arg mounting = arg{"height_m", "h", unit::metre, positive_to(1000), "height of the lamp above the plane of the point"}.usually(0.4, 4);
inline constexpr arg aside = arg{"offset_m", "x", unit::metre, between(0, 1e4), "how far to the side of the point below the lamp"}.usually(0, 4);
inline constexpr arg mounting_height = arg{"mounting_height_m", "H_m", unit::metre, positive_to(1000), "height of the luminaires above the working plane"}.usually(1.2, 6);
inline constexpr source student_guide{"Kelly and O'Connell, Interior Lighting Design - A Student's Guide", "lumen method"};
inline constexpr source inverse_square{"H. C. Verma, Concepts of Physics", "photometry: E = I cos γ/d²"};
/// Of degrees.
template <class T>
constexpr auto radians(const T& x) { return constant(0.017453292519943295769, makegood::unit::one, "π/180") * x; }
}  // namespace detail

inline constexpr auto room_index = formula(
    out{"room_index", "K", unit::ratio, "Room index: how much floor there is for the walls between luminaires and working plane."},
    in(arg{"length_m", "L", unit::metre, positive_to(1000), "length of the room"}.usually(1.5, 40), arg{"width_m", "W", unit::metre, positive_to(1000), "width of the room"}.usually(1.2, 20), detail::mounting_height),
    detail::student_guide, [](auto length, auto width, auto height) { return length * width / (height * (length + width)); },
    remarks{"exact to rounding; tables of utilisation factors begin at 0.75: below it, as in a small bathroom, sum points instead", "swapping length and width changes nothing"});

MAKEGOOD_ARGUMENTS(lumen_method_illuminance_arguments, (lamps_count, flux_lm, utilisation_factor, maintenance_factor, area_m2));
inline constexpr auto lumen_method_illuminance = formula(
    out{"lumen_method_illuminance", "E", unit::lux, "Mean maintained illuminance of a working plane by the lumen method."},
    in<lumen_method_illuminance_arguments>(arg{"lamps_count", "N", unit::one, between(0, 1e6), "number of lamps"}.usually(1, 60), detail::flux, detail::utilisation, detail::maintenance, detail::lit_area), detail::student_guide,
    [](auto lamps, auto flux, auto utilisation, auto maintenance, auto area) { return lamps * flux * utilisation * maintenance / area; },
    remarks{"a mean: corners have less; factors from tables are good to some 10 %", "0 without lamps"});

MAKEGOOD_ARGUMENTS(lumen_method_lamps_arguments, (illuminance_lx, area_m2, flux_lm, utilisation_factor, maintenance_factor));
inline constexpr auto lumen_method_lamps = formula(
    out{"lumen_method_lamps", "N", unit::one, "Number of lamps for a maintained illuminance by the lumen method, unrounded: take the next whole number (the model lumen_method does)."},
    in<lumen_method_lamps_arguments>(arg{"illuminance_lx", "E", unit::lux, between(0, 1e6), "maintained illuminance wanted"}.usually(50, 1000), detail::lit_area, detail::flux, detail::utilisation, detail::maintenance), detail::student_guide,
    [](auto illuminance, auto area, auto flux, auto utilisation, auto maintenance) { return illuminance * area / (flux * utilisation * maintenance); },
    remarks{"a mean: corners have less; factors from tables are good to some 10 %", "0 for no light"});

MAKEGOOD_ARGUMENTS(maintenance_factor_arguments, (lamp_lumen_factor, lamp_survival_factor, luminaire_factor, room_surface_factor));
inline constexpr auto maintenance_factor = formula(
    out{"maintenance_factor", "MF", unit::ratio, "Maintenance factor: what is left of the new light by ageing, failed lamps, and dirt on luminaires and walls."},
    in<maintenance_factor_arguments>(arg{"lamp_lumen_factor", "LLMF", unit::ratio, range{0.0, 1.0, true, false}, "light that lamps still give"}.usually(0.7, 1), arg{"lamp_survival_factor", "LSF", unit::ratio, range{0.0, 1.0, true, false}, "lamps that still burn; 1 where each is replaced at once"}.usually(0.8, 1),
                                     arg{"luminaire_factor", "LMF", unit::ratio, range{0.0, 1.0, true, false}, "left by dirt on the luminaire"}.usually(0.7, 1), arg{"room_surface_factor", "RSMF", unit::ratio, range{0.0, 1.0, true, false}, "left by dirt on walls and ceiling"}.usually(0.8, 1)),
    source{"CIE 97, maintenance of indoor lighting", "MF = LLMF · LSF · LMF · RSMF", "memory"}, [](auto lumen, auto survival, auto luminaire, auto surface) { return lumen * survival * luminaire * surface; },
    remarks{"exact to rounding", "1 for a new room"});

inline constexpr auto point_illuminance = formula(
    out{"point_illuminance", "E_h", unit::lux, "Illuminance of a horizontal plane at a point, from one lamp above it that is small beside its distance."}, in(detail::intensity, detail::mounting, detail::aside), detail::inverse_square,
    [](auto intensity, auto height, auto offset) {
      auto square_of_distance = let("d²", makegood::unit::square_metre, square(height) + square(offset));
      return intensity * height / (square_of_distance * sqrt(square_of_distance));
    },
    remarks{"exact for a point; within 1 % where the lamp is at most a fifth of the distance", "I/h² straight below"});

MAKEGOOD_ARGUMENTS_WITH_DEFAULTS(point_illuminance_vertical_arguments, (intensity_cd, height_m, offset_m), (azimuth_deg = T(0.0)));
inline constexpr auto point_illuminance_vertical = formula(
    out{"point_illuminance_vertical", "E_v", unit::lux, "Illuminance of an upright face at a point, from one lamp above and before it."},
    in<point_illuminance_vertical_arguments>(detail::intensity, arg{"height_m", "h", unit::metre, between(0, 1000), "height of the lamp above the point"}.usually(0.1, 3),
                                             arg{"offset_m", "x", unit::metre, positive_to(1e4), "horizontal distance of the lamp from the point"}.usually(0.2, 4),
                                             arg{"azimuth_deg", "φ", unit::degree, between(0, 90), "angle, seen from above, between where the face looks and the lamp"}.usually(0, 80).otherwise(0)),
    detail::inverse_square,
    [](auto intensity, auto height, auto offset, auto azimuth) {
      auto square_of_distance = let("d²", makegood::unit::square_metre, square(height) + square(offset));
      return intensity * offset * cos(detail::radians(azimuth)) / (square_of_distance * sqrt(square_of_distance));
    },
    remarks{"exact for a point", "I/x² for a lamp at the height of the point"});

inline constexpr auto luminous_intensity = formula(
    out{"luminous_intensity", "I", unit::candela, "Luminous intensity of a lamp from the illuminance that a meter reads below it or to the side."},
    in(arg{"illuminance_lx", "E", unit::lux, between(0, 1e7), "illuminance of the horizontal plane"}.usually(5, 2000), detail::mounting, arg{"offset_m", "x", unit::metre, between(0, 1e4), "how far to the side of the point below the lamp"}.usually(0, 3).otherwise(0)),
    detail::inverse_square,
    [](auto illuminance, auto height, auto offset) {
      auto square_of_distance = let("d²", makegood::unit::square_metre, square(height) + square(offset));
      return illuminance * square_of_distance * sqrt(square_of_distance) / height;
    },
    remarks{"exact for a point in a dark room: light from the walls is read as well", "E h² straight below"});

inline constexpr auto luminous_intensity_from_flux = formula(
    out{"luminous_intensity_from_flux", "I", unit::candela, "Mean luminous intensity of light that is spread evenly in a cone."},
    in(detail::flux, arg{"beam_angle_deg", "β", unit::degree, range{0.0, 360.0, true, false}, "full angle of the cone"}.usually(10, 120)), source{"solid angle of a cone", "I = F/(2π (1 - cos(β/2)))", "derived"},
    [](auto flux, auto angle) { return flux / (constant(3.14159265358979324, makegood::unit::one, "π") * (4.0 * square(sin(detail::radians(angle) / 4.0)))); },
    remarks{"a mean: a beam angle ends at half the greatest intensity, and some of the light lies beyond it, so the middle of a real beam is brighter", "F/(4π) at 360°"});

inline constexpr auto downlight_spacing = formula(
    out{"downlight_spacing", "S", unit::metre, "Greatest distance between the middles of luminaires for an even light."},
    in(detail::mounting_height, arg{"spacing_ratio", "SHR", unit::ratio, positive_to(10), "greatest ratio of spacing to mounting height, from the luminaire's data"}.usually(0.7, 1.8)), detail::student_guide,
    [](auto height, auto ratio) { return height * ratio; }, remarks{"exact to rounding; to the wall half of it, a third where work is done at the wall", ""});

MAKEGOOD_ARGUMENTS(line_illuminance_arguments, (intensity_cd_per_m, distance_m, left_m, right_m));
inline constexpr auto line_illuminance = formula(
    out{"line_illuminance", "E", unit::lux, "Illuminance of a face at a point before a straight strip of light: the face looks at the strip's line, the strip glows as a matt surface along itself."},
    in<line_illuminance_arguments>(arg{"intensity_cd_per_m", "I_l", unit::candela_per_metre, between(0, 1e6), "luminous intensity of each metre of strip, square to it"}.usually(20, 500),
                                   arg{"distance_m", "d", unit::metre, positive_to(1000), "distance of the point from the strip's line"}.usually(0.3, 1.5),
                                   arg{"left_m", "l_1", unit::metre, between(0, 1000), "strip to the one side of the foot of the point"}.usually(0.1, 1), arg{"right_m", "l_2", unit::metre, between(0, 1000), "strip to the other side"}.usually(0.1, 1)),
    source{"integral of I cos²γ/r² along a strip", "E = I_l/(2d) Σ (θ + sin θ cos θ), tan θ = l/d", "derived"},
    [](auto intensity, auto distance, auto left, auto right) {
      const auto part = [&](auto name, auto length) {
        auto z = length / distance;
        auto start = guess(z) / (0.63661977236758134 * guess(z) + 1.0 / (1.0 + 0.6 * guess(z)));
        auto angle = root<3>(
            name, makegood::unit::one, start, [&](const auto& t) { return std::pair(sin(t) - z * cos(t), cos(t) + z * sin(t)); }, z);
        return angle + z / (1.0 + square(z));
      };
      return intensity / (2.0 * distance) * (part("θ_a", left) + part("θ_b", right));
    },
    requires_that([](auto, auto distance, auto left, auto right) { return left <= 1000.0 * distance && right <= 1000.0 * distance; }, "the strip is at most a thousand times as long as its distance"),
    remarks{"exact for a thin strip whose light falls off along itself as a cosine; a real one is narrower or wider: point sums (mirror_illuminance)", "0 without strip; π I_l/(2d) for one without end"});

}  // namespace lighting
}  // namespace v1
}  // namespace makegood

// SPDX-License-Identifier: MIT
// Sums of points: downlights over a room, light at a mirror.
// Subject: lighting. Opt-in.
#pragma once
#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>
#include "../error.hpp"
#include "../text.hpp"
#include "photometry.hpp"

namespace makegood {
inline namespace v1 {
namespace lighting {

/// How a luminaire sends its light: evenly in a cone, or falling off as a power of the cosine so that it has half its greatest intensity
/// at half the beam angle (60 degrees to each side: a matt surface).
enum class light_shape : unsigned char { cosine_power, cone };
inline constexpr std::string_view light_shapes[] = {"cosine_power", "cone"};
struct beam {
  light_shape shape = light_shape::cosine_power;
  double flux_lm = 0.0, angle_deg = 120.0;
  double middle_cd = 0.0, exponent = 1.0, edge_cosine = 0.0;

  double at(double cosine) const {
    if (!(cosine > 0.0)) return 0.0;
    if (shape == light_shape::cone) return cosine >= edge_cosine ? middle_cd : 0.0;
    return middle_cd * std::pow(cosine, exponent);
  }
};
inline beam make_beam(std::string_view who, light_shape shape, double flux_lm, double angle_deg) {
  constexpr double degree = 0.017453292519943295769, pi = 3.14159265358979323846;
  if (!(flux_lm > 0.0 && flux_lm <= 1e6)) throw range_error(std::string(who) + ": flux_lm = " + number_text(flux_lm) + " lm: above 0 to 1e6 lm");
  if (!(angle_deg >= 1.0 && angle_deg < 180.0)) throw range_error(std::string(who) + ": beam_angle_deg = " + number_text(angle_deg) + "°: from 1 to below 180°");
  beam b{shape, flux_lm, angle_deg};
  b.edge_cosine = std::cos(0.5 * angle_deg * degree);
  if (shape == light_shape::cone) b.middle_cd = luminous_intensity_from_flux(flux_lm, angle_deg);
  else b.exponent = -std::log(2.0) / std::log(b.edge_cosine), b.middle_cd = flux_lm * (b.exponent + 1.0) / (2.0 * pi);  // ∫ I cos^m dΩ = 2π I/(m + 1)
  return b;
}

struct lamp_place {
  double x_m, y_m;
};
struct downlight_task {
  double length_m = 0.0, width_m = 0.0, mounting_height_m = 0.0;
  beam light{};
  double spacing_ratio = no_number;
  int rows = 0, columns = 0;          ///< of the caller; 0: as few as the spacing ratio permits
  bool work_at_walls = false;
  double maintenance_factor = 1.0;
  double reflectance = 0.0, room_height_m = no_number;  ///< mean of all surfaces; the height that counts for their area
};
struct downlight_result {
  int rows = 0, columns = 0;
  double row_spacing_m = 0.0, column_spacing_m = 0.0, greatest_spacing_m = no_number;
  std::vector<lamp_place> places{};
  double min_lx = 0.0, mean_lx = 0.0, max_lx = 0.0, uniformity = 0.0, reflected_lx = 0.0;
  lamp_place darkest{};
  int points = 0;
};
/// Rows along the width, columns along the length; half a spacing to the walls, or a third where work is done at them.
inline int rows_for(double across_m, double spacing_m, bool work_at_walls) {
  const double n = work_at_walls ? (across_m - 2.0 / 3.0 * spacing_m) / spacing_m + 1.0 : across_m / spacing_m;
  return std::max(1, static_cast<int>(std::ceil(n - 1e-9)));
}
inline downlight_result downlight_layout(const downlight_task& t) {
  const auto fail = [](const std::string& s) { throw range_error("downlight_layout: " + s); };
  const auto length = [&](double x, std::string_view name, double most) {
    if (!(x > 0.0 && x <= most)) fail(std::string(name) + " = " + number_text(x) + " m: above 0 to " + number_text(most) + " m");
  };
  length(t.length_m, "length_m", 100.0), length(t.width_m, "width_m", 100.0), length(t.mounting_height_m, "mounting_height_m", 30.0);
  if (!(t.maintenance_factor > 0.0 && t.maintenance_factor <= 1.0)) fail("maintenance_factor = " + number_text(t.maintenance_factor) + ": above 0 to 1");
  if (!(t.reflectance >= 0.0 && t.reflectance <= 0.95)) fail("reflectance = " + number_text(t.reflectance) + ": from 0 to 0.95");
  downlight_result r;
  if (!is_nan(t.spacing_ratio)) r.greatest_spacing_m = downlight_spacing(t.mounting_height_m, t.spacing_ratio);
  if (is_nan(t.spacing_ratio) && !(t.rows > 0 && t.columns > 0)) fail("give \"spacing_ratio\", or \"rows\" and \"columns\"");
  r.rows = t.rows > 0 ? t.rows : rows_for(t.width_m, r.greatest_spacing_m, t.work_at_walls);
  r.columns = t.columns > 0 ? t.columns : rows_for(t.length_m, r.greatest_spacing_m, t.work_at_walls);
  if (!(r.rows >= 1 && r.columns >= 1 && static_cast<double>(r.rows) * r.columns <= 400.0))
    fail("more than 400 luminaires (" + std::to_string(r.rows) + " rows of " + std::to_string(r.columns) + "): the spacing is too small for this room");
  const auto spacing = [&](double across, int n) { return across / (t.work_at_walls && n > 1 ? n - 1 + 2.0 / 3.0 : n); };
  r.row_spacing_m = spacing(t.width_m, r.rows), r.column_spacing_m = spacing(t.length_m, r.columns);
  for (int j = 0; j < r.rows; ++j)
    for (int i = 0; i < r.columns; ++i)
      r.places.push_back({0.5 * t.length_m + (i - 0.5 * (r.columns - 1)) * r.column_spacing_m, 0.5 * t.width_m + (j - 0.5 * (r.rows - 1)) * r.row_spacing_m});
  const double h = t.mounting_height_m, flux = t.light.flux_lm * static_cast<double>(r.places.size());
  if (t.reflectance > 0.0) {
    const double high = is_nan(t.room_height_m) ? h : t.room_height_m;
    if (!(high > 0.0 && high <= 30.0)) fail("room_height_m = " + number_text(high) + " m: above 0 to 30 m");
    const double area = 2.0 * (t.length_m * t.width_m + high * (t.length_m + t.width_m));
    r.reflected_lx = t.maintenance_factor * flux * t.reflectance / (area * (1.0 - t.reflectance));
  }
  // points at the middles of equal fields, several in the spot of one beam; finer until mean and least stand still
  const double spot = 4.0 * h * std::tan(0.5 * t.light.angle_deg * 0.017453292519943295769);
  double mean_before = -1.0, least_before = -1.0;
  for (int fine = 8; fine <= 128; fine *= 2) {
    const double step = std::max(std::min(std::min(t.length_m, t.width_m), spot) / fine, std::max(t.length_m, t.width_m) / 400.0);
    const int nx = std::max(2, static_cast<int>(std::ceil(t.length_m / step))), ny = std::max(2, static_cast<int>(std::ceil(t.width_m / step)));
    double sum = 0.0, least = 1e300, most = 0.0;
    for (int j = 0; j < ny; ++j)
      for (int i = 0; i < nx; ++i) {
        const double x = (i + 0.5) * t.length_m / nx, y = (j + 0.5) * t.width_m / ny;
        double e = 0.0;
        for (const auto& p : r.places) {
          const double square_of_distance = (x - p.x_m) * (x - p.x_m) + (y - p.y_m) * (y - p.y_m) + h * h, cosine = h / std::sqrt(square_of_distance);
          e += t.light.at(cosine) * cosine / square_of_distance;
        }
        e = t.maintenance_factor * e + r.reflected_lx;
        sum += e, most = std::max(most, e);
        if (e < least) least = e, r.darkest = {x, y};
      }
    r.points = nx * ny, r.mean_lx = sum / r.points, r.min_lx = least, r.max_lx = most;
    r.uniformity = r.mean_lx > 0.0 ? r.min_lx / r.mean_lx : 0.0;
    if (std::fabs(r.mean_lx - mean_before) <= 0.005 * r.mean_lx && std::fabs(r.min_lx - least_before) <= 0.01 * r.mean_lx) break;
    mean_before = r.mean_lx, least_before = r.min_lx;
  }
  return r;
}

/// Light at a mirror, face before it: strips upright on both sides, or a ring. Metres from the point on the mirror straight before the face;
/// elements glow as a matt surface that looks into the room ("flat"), or evenly around their line ("tube").
struct mirror_task {
  bool ring = false, tube = false;
  double flux_lm = 0.0;              ///< of each strip, or of the ring
  double apart_m = 0.0;              ///< between the middles of the strips; of a ring its diameter
  double strip_m = 0.0;              ///< length of each strip
  double middle_up_m = 0.0;          ///< middle of strips or ring above the face
  double face_m = 0.0;               ///< face before the mirror
  double maintenance_factor = 1.0;
};
struct mirror_result {
  double front_lx = 0.0, left_lx = 0.0, right_lx = 0.0, chin_lx = 0.0;  ///< face forward, cheeks turned by 60 degrees, turned down by 60 degrees
  int elements = 0;
  double last_change = no_number;
};
inline mirror_result mirror_illuminance(const mirror_task& t) {
  constexpr double pi = 3.14159265358979323846;
  const auto fail = [](const std::string& s) { throw range_error("mirror_illuminance: " + s); };
  if (!(t.flux_lm > 0.0 && t.flux_lm <= 1e5)) fail("flux_lm = " + number_text(t.flux_lm) + " lm: above 0 to 1e5 lm");
  if (!(t.apart_m > 0.0 && t.apart_m <= 10.0)) fail("apart_m = " + number_text(t.apart_m) + " m: above 0 to 10 m");
  if (!t.ring && !(t.strip_m > 0.0 && t.strip_m <= 10.0)) fail("strip_m = " + number_text(t.strip_m) + " m: above 0 to 10 m");
  if (!(std::fabs(t.middle_up_m) <= 10.0)) fail("middle_up_m = " + number_text(t.middle_up_m) + " m: from -10 to 10 m");
  if (!(t.face_m >= 0.05 && t.face_m <= 10.0)) fail("face_m = " + number_text(t.face_m) + " m: from 0.05 to 10 m");
  if (!(t.maintenance_factor > 0.0 && t.maintenance_factor <= 1.0)) fail("maintenance_factor = " + number_text(t.maintenance_factor) + ": above 0 to 1");
  if (t.ring && t.tube) fail("emitter: a ring is taken as \"flat\"");
  // normals at the face: towards the mirror (0, 0, -1), turned by 60 degrees
  constexpr double turned = 0.86602540378443864676;
  const double normal[4][3] = {{0, 0, -1}, {-turned, 0, -0.5}, {turned, 0, -0.5}, {0, -turned, -0.5}};
  mirror_result r;
  double before = -1.0;
  for (int n = 10; n <= 10240; n *= 2) {
    double e[4] = {0, 0, 0, 0};
    const auto element = [&](double x, double y, double flux) {
      const double d = t.face_m, square_of_distance = x * x + y * y + d * d, distance = std::sqrt(square_of_distance);
      // flat: F/π cos γ from the mirror's normal; tube: F/π² sin from its line
      const double intensity = t.tube ? flux / (pi * pi) * std::sqrt(x * x + d * d) / distance : flux / pi * d / distance;
      for (int k = 0; k < 4; ++k) {
        const double cosine = (normal[k][0] * x + normal[k][1] * y - normal[k][2] * d) / distance;
        if (cosine > 0.0) e[k] += intensity * cosine / square_of_distance;
      }
    };
    for (int i = 0; i < n; ++i) {
      if (t.ring) {
        const double angle = 2.0 * pi * (i + 0.5) / n;
        element(0.5 * t.apart_m * std::cos(angle), t.middle_up_m + 0.5 * t.apart_m * std::sin(angle), t.flux_lm / n);
      } else {
        const double y = t.middle_up_m + t.strip_m * ((i + 0.5) / n - 0.5);
        element(-0.5 * t.apart_m, y, t.flux_lm / n), element(0.5 * t.apart_m, y, t.flux_lm / n);
      }
    }
    r.front_lx = t.maintenance_factor * e[0], r.left_lx = t.maintenance_factor * e[1], r.right_lx = t.maintenance_factor * e[2], r.chin_lx = t.maintenance_factor * e[3];
    r.elements = n, r.last_change = before >= 0.0 ? std::fabs(r.front_lx - before) / r.front_lx : no_number;
    if (before >= 0.0 && r.last_change < 1e-4) break;
    before = r.front_lx;
  }
  return r;
}

}  // namespace lighting
}  // namespace v1
}  // namespace makegood

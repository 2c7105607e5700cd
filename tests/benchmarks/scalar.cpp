// SPDX-License-Identifier: MIT
// The ten formulas of arrays.py as plain loops over the C library: what a careful programmer writes by hand.
// Compiled by run.py (g++ -std=c++20 -O2 -shared -fPIC) and called through ctypes. Nothing of makegood is included here.
#include <cmath>
#include <cstddef>

namespace {

constexpr double ln_10 = 2.302585092994045684;

double to_the_4th(double x) {
  x *= x;
  return x * x;
}
double to_the_16th(double x) { return to_the_4th(to_the_4th(x)); }

}  // namespace

extern "C" {

void voltage_drop(const double* drop, const double* current, const double* length, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) out[i] = drop[i] * current[i] * length[i] / 1000;
}

void adiabatic_area(const double* current, const double* seconds, const double* k, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) out[i] = std::sqrt(current[i] * current[i] * seconds[i]) / k[i];
}

void ntc_temperature(const double* ohm, double reference_ohm, double reference_c, double beta, double* out, std::size_t n) {
  const double zero = 1 / (reference_c + 273.15);
  for (std::size_t i = 0; i < n; ++i) out[i] = 1 / (zero + std::log(ohm[i] / reference_ohm) / beta) - 273.15;
}

void ntc_resistance(const double* t, double reference_ohm, double reference_c, double beta, double* out, std::size_t n) {
  const double zero = 1 / (reference_c + 273.15);
  for (std::size_t i = 0; i < n; ++i) out[i] = reference_ohm * std::exp(beta * (1 / (t[i] + 273.15) - zero));
}

void steinhart_hart_temperature(const double* ohm, double a, double b, double c, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    const double x = std::log(ohm[i]);
    out[i] = 1 / (a + x * (b + c * x * x)) - 273.15;
  }
}

void friction_factor_churchill(const double* reynolds, const double* roughness, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    const double re = reynolds[i];
    const double a = to_the_16th(-2.457 * std::log(std::pow(7 / re, 0.9) + 0.27 * roughness[i]));
    const double sum = a + to_the_16th(37530 / re);
    const double laminar = to_the_4th(8 / re);
    out[i] = 8 * std::pow(laminar * laminar * laminar + 1 / (sum * std::sqrt(sum)), 1.0 / 12);
  }
}

void friction_factor_colebrook(const double* reynolds, const double* roughness, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    const double wall = roughness[i] / 3.7, slope = 2.51 / reynolds[i];
    double x = -1.8 / ln_10 * std::log(wall + 6.9 / reynolds[i]);
    for (int step = 0; step < 4; ++step) {
      const double inside = wall + slope * x;
      x -= (x + 2 / ln_10 * std::log(inside)) / (1 + 2 / ln_10 * slope / inside);
    }
    out[i] = 1 / (x * x);
  }
}

void saturation_pressure(const double* t, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    const double T = t[i] + 273.15;
    if (t[i] < 0)
      out[i] = std::exp(-5674.5359 / T + 6.3925247 + T * (-0.009677843 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
                        4.1635019 * std::log(T));
    else
      out[i] = std::exp(-5800.2206 / T + 1.3914993 + T * (-0.048640239 + T * (4.1764768e-5 - T * 1.4452093e-8)) + 6.5459673 * std::log(T));
  }
}

void dew_point_magnus(const double* t, const double* humidity, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) {
    const double g = std::log(humidity[i] / 100) + 17.62 * t[i] / (243.12 + t[i]);
    out[i] = 243.12 * g / (17.62 - g);
  }
}

void element_resistance(const double* power, double voltage, double* out, std::size_t n) {
  for (std::size_t i = 0; i < n; ++i) out[i] = voltage * voltage / power[i];
}

}

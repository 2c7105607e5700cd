// SPDX-License-Identifier: MIT
// Time per element of the branch-free mathematics in lanes of one register against the C library, in one process, interleaved.
// g++ -std=c++20 -O3 -fno-math-errno -fno-trapping-math -ffp-contract=off -Iinclude [-mavx2 -DMAKEGOOD_ISA_TAG=avx2] tests/benchmarks/vector_math.cpp
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <makegood/scalar/lanes.hpp>
#include <random>
#include <vector>

namespace isa = makegood::v1::MAKEGOOD_ISA_TAG;

namespace {

constexpr std::size_t count = 4096;  // in the first-level cache
constexpr int rounds = 15, repeats = 20;
std::vector<double> x(count), out(count);

template <class F>
double nanoseconds(const F& pass) {
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < repeats; ++i) {
    pass();
    asm volatile("" ::: "memory");
  }
  return std::chrono::duration<double, std::nano>(std::chrono::steady_clock::now() - start).count() / (repeats * static_cast<double>(count));
}
double median(std::vector<double>& v) {
  std::sort(v.begin(), v.end());
  return v[v.size() / 2];
}

template <class Lanes, class Library>
void compare(const char* name, double low, double high, const Lanes& lanes_of, const Library& library) {
  std::mt19937_64 random(1);
  for (auto& v : x) v = std::uniform_real_distribution<>(low, high)(random);
  std::vector<double> a, b;
  for (int r = 0; r < rounds; ++r) {
    a.push_back(nanoseconds([&] {
      for (std::size_t i = 0; i < count; i += isa::register_lanes) lanes_of(isa::lanes<>::load(&x[i])).store(&out[i]);
    }));
    b.push_back(nanoseconds([&] {
      for (std::size_t i = 0; i < count; ++i) out[i] = library(x[i]);
    }));
  }
  const double own = median(a), other = median(b);
  std::printf("%-6s  lanes<%d> %7.2f ns  C library %7.2f ns  ratio %.2f\n", name, isa::register_lanes, own, other, other / own);
}

}  // namespace

#define COMPARE(name, low, high) \
  compare(#name, low, high, [](const isa::lanes<>& v) { return name(v); }, [](double v) { return std::name(v); })

int main() {
  COMPARE(sqrt, 0.0, 100.0);
  COMPARE(log, 0.001, 100.0);
  COMPARE(log10, 0.001, 100.0);
  COMPARE(log1p, -0.5, 10.0);
  COMPARE(exp, -20.0, 20.0);
  COMPARE(expm1, -5.0, 5.0);
  COMPARE(cbrt, 0.001, 100.0);
  COMPARE(tanh, -3.0, 3.0);
  COMPARE(erf, -3.0, 3.0);
  COMPARE(erfc, -3.0, 6.0);
  COMPARE(sin, -10.0, 10.0);
  COMPARE(cos, -10.0, 10.0);
  compare("pow", 0.001, 100.0, [](const isa::lanes<>& v) { return pow(v, 1.7); }, [](double v) { return std::pow(v, 1.7); });
}

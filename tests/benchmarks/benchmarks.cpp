// SPDX-License-Identifier: MIT
// The C++ side, by Google Benchmark: the vector mathematics on each instruction set against the C library, formulas one value at a
// time and over arrays, derivatives and bounds against the plain value, a check. Names are subject/what/how:
//   makegood_benchmarks --benchmark_filter=log --benchmark_enable_random_interleaving=true --benchmark_repetitions=9
// "items_per_second" counts elements; before anything is timed, each side is compared with the other.
#include <benchmark/benchmark.h>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <makegood/monte_carlo.hpp>
#include <makegood/registry.hpp>
#include <makegood/rules/all.hpp>
#include <makegood/air/list.hpp>
#include <makegood/electrical/list.hpp>
#include <makegood/heating/list.hpp>
#include <makegood/job/inference.hpp>
#include <makegood/scalar/dual.hpp>
#include <makegood/scalar/interval.hpp>
#include <makegood/sensing/list.hpp>
#include <random>
#include <string>
#include <vector>
#include "vector_kernels.hpp"

using namespace makegood;

namespace {

constexpr std::size_t count = 4096;  // in the first or second cache

std::vector<double> uniform(double low, double high, unsigned seed = 1) {
  std::mt19937_64 random(seed);
  std::vector<double> x(count);
  for (auto& v : x) v = std::uniform_real_distribution<>(low, high)(random);
  return x;
}
void demand(bool good, const std::string& what) {
  if (good) return;
  std::fprintf(stderr, "%s: the sides disagree\n", what.c_str());
  std::exit(1);
}
bool near(double a, double b, double tolerance) { return a == b || std::fabs(a - b) <= tolerance * std::fabs(b); }

template <class Pass>
void elements(benchmark::State& state, const Pass& pass) {
  for (auto _ : state) {
    pass();
    benchmark::ClobberMemory();
  }
  state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations()) * static_cast<std::int64_t>(count));
}

// ---- vector mathematics ------------------------------------------------------------------------------------------------

std::vector<kernels::table> kernel_tables() {
#if defined(MAKEGOOD_BATCH_X86)
  std::vector<kernels::table> all{kernels::sse2::all()};
  for (const auto set : instruction_sets()) {
    if (set == "avx2") all.push_back(kernels::avx2::all());
    if (set == "avx512") all.push_back(kernels::avx512::all());
  }
  return all;
#else
  return {kernels::generic::all()};
#endif
}
struct library_function {
  const char* name;
  double (*f)(double);
};
#define LIBRARY(name) \
  { #name, [](double x) { return std::name(x); } }
const library_function library[] = {LIBRARY(sqrt), LIBRARY(log),  LIBRARY(log10), LIBRARY(log1p), LIBRARY(exp), LIBRARY(expm1),
                                    LIBRARY(cbrt), LIBRARY(tanh), LIBRARY(erf),   LIBRARY(erfc),  LIBRARY(sin), LIBRARY(cos),
                                    {"pow", [](double x) { return std::pow(x, 1.7); }}};
#undef LIBRARY

void register_mathematics() {
  for (const auto& l : library) {
    for (const auto& t : kernel_tables())
      for (std::size_t i = 0; i < t.count; ++i) {
        const auto& k = t.list[i];
        if (std::string_view(k.name) != l.name) continue;
        const auto x = uniform(k.low, k.high);
        std::vector<double> out(count);
        k.run(x.data(), out.data(), count);
        for (std::size_t j = 0; j < count; ++j) demand(near(out[j], l.f(x[j]), 1e-15), k.name);
        benchmark::RegisterBenchmark(("math/" + std::string(l.name) + "/" + t.instruction_set).c_str(), [k, x](benchmark::State& state) {
          std::vector<double> y(count);
          elements(state, [&] { k.run(x.data(), y.data(), count); });
        });
        if (&t.list[0] == kernel_tables()[0].list)
          benchmark::RegisterBenchmark(("math/" + std::string(l.name) + "/libm").c_str(), [f = l.f, x](benchmark::State& state) {
            std::vector<double> y(count);
            elements(state, [&] {
              for (std::size_t j = 0; j < count; ++j) y[j] = f(x[j]);
            });
          });
      }
  }
}

// ---- formulas ----------------------------------------------------------------------------------------------------------

template <class Item, std::size_t... I>
void register_formula(const Item& item, const std::vector<std::vector<double>>& x, std::index_sequence<I...>) {
  constexpr std::size_t n = sizeof...(I);
  const std::string name = "formula/" + std::string(item.result.name) + "/";
  // the plain value, unchecked and checked, and by value() as the doors call it
  benchmark::RegisterBenchmark((name + "double").c_str(), [&item, x](benchmark::State& state) {
    std::vector<double> y(count);
    elements(state, [&] {
      for (std::size_t j = 0; j < count; ++j) y[j] = item.unchecked(x[I][j]...);
    });
  });
  benchmark::RegisterBenchmark((name + "double, checked").c_str(), [&item, x](benchmark::State& state) {
    std::vector<double> y(count);
    elements(state, [&] {
      for (std::size_t j = 0; j < count; ++j) y[j] = item.try_call(x[I][j]...).value;
    });
  });
  benchmark::RegisterBenchmark((name + "dual of " + std::to_string(n)).c_str(), [&item, x](benchmark::State& state) {
    std::vector<dual<static_cast<int>(n)>> y(count);
    elements(state, [&] {
      for (std::size_t j = 0; j < count; ++j) y[j] = item.unchecked(dual<static_cast<int>(n)>::input(x[I][j], static_cast<int>(I))...);
    });
  });
  benchmark::RegisterBenchmark((name + "bounds, 1 %").c_str(), [&item, x](benchmark::State& state) {
    std::size_t j = 0;
    for (auto _ : state) {
      const double low[] = {x[I][j] - 0.005 * std::fabs(x[I][j])...}, high[] = {x[I][j] + 0.005 * std::fabs(x[I][j])...};
      benchmark::DoNotOptimize(bounds(item, low, high));
      j = (j + 1) % 64;
    }
    state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations()));
  });
  for (const auto set : instruction_sets()) {
    const auto batch = with_instruction_set(entry_of(item), set).formula.batch;
    const auto pass = [batch, &item](const std::vector<std::vector<double>>& given, std::vector<double>& y) {
      char* data[] = {const_cast<char*>(reinterpret_cast<const char*>(given[I].data()))..., reinterpret_cast<char*>(y.data())};
      const std::ptrdiff_t steps[] = {(static_cast<void>(I), std::ptrdiff_t{sizeof(double)})..., sizeof(double)};
      return batch(&item, data, steps, static_cast<std::ptrdiff_t>(count), false);
    };
    std::vector<double> out(count);
    demand(pass(x, out) == -1, name);
    for (std::size_t j = 0; j < count; ++j) demand(out[j] == item.unchecked(x[I][j]...), name + std::string(set));
    benchmark::RegisterBenchmark((name + "batch " + std::string(set)).c_str(), [pass, x](benchmark::State& state) {
      std::vector<double> y(count);
      elements(state, [&] { pass(x, y); });
    });
  }
}
/// The value alone, and with its standard uncertainty in the same pass: one thread, every instruction set. "ratio": of the two.
void register_uncertainty(std::string_view full_name) {
  const entry* plain = find_entry(full_name);
  demand(plain != nullptr, std::string(full_name));
  const auto& args = plain->formula.args;
  std::vector<std::vector<double>> x, u;
  for (std::size_t i = 0; i < args.size(); ++i) {
    x.push_back(uniform(args[i].usual.low + 0.3 * (args[i].usual.high - args[i].usual.low), args[i].usual.high, static_cast<unsigned>(i + 1)));
    u.push_back(x.back());
    for (double& v : u.back()) v = 0.01 * std::fabs(v);
  }
  for (const auto set : instruction_sets()) {
    const entry e = with_instruction_set(*plain, set);
    std::vector<std::span<const double>> in(x.begin(), x.end()), of(u.begin(), u.end());
    std::vector<double> y(count), doubt(count), slopes(args.size()), at(args.size());
    uncertainty_rows(e, in, of, y, doubt);
    for (std::size_t k = 0; k < count; k += 97) {  // against one value at a time
      double square = 0.0;
      for (std::size_t i = 0; i < args.size(); ++i) at[i] = x[i][k];
      demand(e.formula.gradient(e.formula.self, at.data(), slopes.data()) == y[k], std::string(full_name));
      for (std::size_t i = 0; i < args.size(); ++i) square += slopes[i] * slopes[i] * u[i][k] * u[i][k];
      demand(near(doubt[k], std::sqrt(square), 1e-14), std::string(full_name));
    }
    benchmark::RegisterBenchmark(("uncertainty/" + std::string(full_name) + "/" + std::string(set)).c_str(), [e, x, u](benchmark::State& state) {
      std::vector<std::span<const double>> ins(x.begin(), x.end()), ofs(u.begin(), u.end());
      std::vector<double> value(count), with(count);
      std::vector<char*> data;
      for (const auto& c : x) data.push_back(const_cast<char*>(reinterpret_cast<const char*>(c.data())));
      data.push_back(reinterpret_cast<char*>(value.data()));
      const std::vector<std::ptrdiff_t> steps(data.size(), sizeof(double));
      double alone = 1e9, both = 1e9;
      for (auto _ : state) {  // in turns, so that noise falls on both
        auto begin = std::chrono::steady_clock::now();
        for (int i = 0; i < 8; ++i) e.formula.batch(e.formula.self, data.data(), steps.data(), static_cast<std::ptrdiff_t>(count), false);
        benchmark::ClobberMemory();
        auto end = std::chrono::steady_clock::now();
        alone = std::min(alone, std::chrono::duration<double>(end - begin).count());
        for (int i = 0; i < 8; ++i) uncertainty_rows(e, ins, ofs, value, with);
        benchmark::ClobberMemory();
        begin = std::chrono::steady_clock::now();
        both = std::min(both, std::chrono::duration<double>(begin - end).count());
      }
      state.counters["value_ns"] = alone / 8.0 / count * 1e9;
      state.counters["with_u_ns"] = both / 8.0 / count * 1e9;
      state.counters["ratio"] = both / alone;
    });
  }
}
void register_uncertainties() {
  for (const char* name : {"sensing.ntc_temperature", "sensing.ntc_resistance", "sensing.steinhart_hart_temperature", "electrical.voltage_drop", "electrical.adiabatic_area",
                           "air.friction_factor_colebrook", "air.friction_factor_churchill", "air.dew_point_magnus"})
    register_uncertainty(name);
}
void register_monte_carlo() {
  for (const auto set : instruction_sets())
    for (const bool quantiles : {false, true})
      benchmark::RegisterBenchmark(("monte_carlo/" + std::string(quantiles ? "ntc_temperature, 4 normals, all" : "1e6 normals, drawn alone") + "/" + std::string(set)).c_str(),
                                   [set, quantiles](benchmark::State& state) {
        constexpr std::size_t n = 1'000'000;
        std::vector<double> to(1024);
        monte_carlo_options how;
        how.trials = n;
        how.instruction_set = set;
        for (auto _ : state) {
          if (quantiles)
            benchmark::DoNotOptimize(monte_carlo(sensing::ntc_temperature, {measured(10000, 50, "a"), measured(10000, 20, "b"), measured(25, 0.1, "c"), measured(3950, 20, "d")}, how));
          else
            for (std::size_t k = 0; k < n; k += to.size()) draw(distribution::normal(0, 1), 1, 0, k, to, set);
        }
        state.SetItemsProcessed(static_cast<std::int64_t>(state.iterations()) * static_cast<std::int64_t>(n));
      });
}

template <class Item, class... R>
void register_formula(const Item& item, const R&... x) {
  register_formula(item, std::vector<std::vector<double>>{x...}, std::make_index_sequence<sizeof...(R)>{});
}
std::vector<double> all(double x) { return std::vector<double>(count, x); }

void register_formulas() {
  register_formula(electrical::voltage_drop, uniform(1, 44), uniform(1, 60, 2), uniform(1, 60, 3));
  register_formula(electrical::adiabatic_area, uniform(100, 3000), uniform(0.1, 5, 2), uniform(50, 140, 3));
  register_formula(sensing::ntc_temperature, uniform(3000, 30000), all(10000), all(25), all(3950));
  register_formula(sensing::ntc_resistance, uniform(5, 60), all(10000), all(25), all(3950));
  register_formula(sensing::steinhart_hart_temperature, uniform(3000, 30000), all(1.135e-3), all(2.329e-4), all(9.41e-8));
  register_formula(air::friction_factor_churchill, uniform(5e3, 5e5), uniform(1e-5, 5e-3, 2));
  register_formula(air::friction_factor_colebrook, uniform(5e3, 5e5), uniform(1e-5, 5e-3, 2));
  register_formula(air::saturation_pressure, uniform(-15, 35));
  register_formula(air::dew_point_magnus, uniform(5, 35), uniform(30, 95, 2));
  register_formula(heating::element_resistance, uniform(100, 3000), all(230));
}

// ---- a check -----------------------------------------------------------------------------------------------------------

void register_checks() {
  const auto judge = [](const measured& drop) {
    return electrical::check_voltage_drop({.voltage_drop_v = drop, .nominal_voltage_v = measured::exact(230), .load_kind = "other"},
                                          rules::bs7671_2018_a2);
  };
  demand(judge(measured::exact(8.9)).outcome == outcome::pass && judge(measured::exact(12.0)).outcome == outcome::fail, "check_voltage_drop");
  benchmark::RegisterBenchmark("check/check_voltage_drop/exact", [judge](benchmark::State& state) {
    const measured drop = measured::exact(8.9);
    for (auto _ : state) benchmark::DoNotOptimize(judge(drop));
  });
  benchmark::RegisterBenchmark("check/check_voltage_drop/measured", [judge](benchmark::State& state) {
    const measured drop(8.9, 0.09, "tape");
    for (auto _ : state) benchmark::DoNotOptimize(judge(drop));
  });
}

// ---- the inference kernel ------------------------------------------------------------------------------------------------

/// 50 hypotheses of three parameters, 15 readings with a shared gain, a shared offset and errors of their own. Gate 1 ms, aim 0.2 ms:
///   makegood_benchmarks --benchmark_filter=inference
void register_inference() {
  const auto set_up = [](bool wide) {
    std::vector<job::test> tests;
    std::vector<job::observation> readings;
    std::vector<job::hypothesis> list;
    for (int t = 0; t < 15; ++t) {
      const std::string id = "test " + std::to_string(t);
      tests.push_back({id, "", 1.0, 1e4});
      measured m(118.0 + t, 0.5, id);
      m.add("offset", 0.1);
      readings.push_back(job::observation::value(id, m, 0.1).with_gain("gain", 0.005));
    }
    for (int h = 0; h < 50; ++h) {
      job::hypothesis one{std::to_string(h), "", 1.0, {{"tolerance", job::distribution::normal(1.0, 0.03)}, {"lead_ohm", job::distribution::normal(0.3, 0.1)}}, {}};
      one.parameters.push_back({"joint_ohm", wide && h == 0 ? job::distribution::log_uniform(0.1, 10.0) : job::distribution::normal(1.0, 0.1)});
      for (int t = 0; t < 15; ++t)
        one.predictions.emplace_back("test " + std::to_string(t), [=](const auto& p) {
          return call(heating::element_resistance, 450.0 + h, 230.0) * p[0] + p[1] * (1.0 + 0.1 * t) + p[2] + (1.0 * t - 1.0);
        });
      list.push_back(std::move(one));
    }
    job::explanations e(std::move(tests), std::move(list));
    e.read(readings);
    return e;
  };
  for (const bool wide : {false, true}) {
    auto e = set_up(wide);
    const auto& rows = e.run().rows;
    demand(std::count_if(rows.begin(), rows.end(), [](const job::share& s) { return s.how == job::method::quasi_random; }) == (wide ? 1 : 0), "inference");
    benchmark::RegisterBenchmark(wide ? "inference/50x15/one_quasi_random" : "inference/50x15/first_order", [set_up, wide](benchmark::State& state) {
      auto of = set_up(wide);
      double x = 118.0;
      for (auto _ : state) {
        of.change(0, x += 1e-6);
        benchmark::DoNotOptimize(of.run().log_evidence);
      }
    });
  }
}

}  // namespace

int main(int argc, char** argv) {
  register_mathematics();
  register_formulas();
  register_uncertainties();
  register_monte_carlo();
  register_checks();
  register_inference();
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
}

// SPDX-License-Identifier: MIT
// The branch-free mathematics at every bit pattern that 32 bits can reach: each of the 2^32 patterns as the upper word of a double,
// with three lower words (zeros, ones, a hash of the pattern). A program of its own, built on request (makegood_exhaustive):
//
//   makegood_exhaustive [--functions log,exp,...] [--step N] [--threads K]
//
// --step N takes every N-th pattern. Held are the class of every result (NaN, infinity, zero, subnormal, sign) exactly, and the error
// in units in the last place. The reference is the C library: in double where glibc states less than 0.6 of a unit (log, exp, pow,
// sin, cos; where ours has the same bits nothing more is asked, where not, long double decides), in long double for the others.
// pow has two arguments: all pairs of special values, and 2 * 10^8 / N pairs of random patterns, half of them with a result that is
// an ordinary number. Every 16th block is also calculated one value at a time: the bits must be those of the lanes.
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <makegood/scalar/lanes.hpp>
#include <mutex>
#include <random>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

namespace math = makegood::MAKEGOOD_ISA_TAG::vector_math;
using lanes = makegood::MAKEGOOD_ISA_TAG::lanes<>;

namespace {

constexpr int width = makegood::MAKEGOOD_ISA_TAG::register_lanes;
constexpr double smallest_normal = std::numeric_limits<double>::min();

std::uint64_t bits_of(double x) { return __builtin_bit_cast(std::uint64_t, x); }
double from(std::uint64_t b) { return __builtin_bit_cast(double, b); }
bool same(double a, double b) { return bits_of(a) == bits_of(b) || (a != a && b != b); }

/// NaN, infinite, zero, subnormal or normal, and the sign (of a NaN it means nothing).
int class_of(double x) {
  const int c = std::fpclassify(x);
  return c == FP_NAN ? c : 2 * c + (std::signbit(x) ? 1 : 0) + 100;
}
/// In units of the last place of the double nearest to `want`; both finite.
double error_in_ulp(double got, long double want) {
  const double a = std::fabs(static_cast<double>(want));
  return std::fabs(static_cast<double>(std::ldexp(static_cast<long double>(got) - want, 52 - (a < smallest_normal ? -1022 : std::ilogb(a)))));
}

struct finding {
  std::uint64_t points = 0, wrong = 0, differing = 0;
  double worst = 0.0, x = 0.0, y = 0.0;
  double wrong_x = 0.0, wrong_y = 0.0, wrong_got = 0.0, wrong_want = 0.0;

  void add(const finding& o) {
    if (o.worst > worst) worst = o.worst, x = o.x, y = o.y;
    if (o.wrong && !wrong) wrong_x = o.wrong_x, wrong_y = o.wrong_y, wrong_got = o.wrong_got, wrong_want = o.wrong_want;
    points += o.points, wrong += o.wrong, differing += o.differing;
  }
  void look(double at_x, double at_y, double got, long double want) {
    const double nearest = static_cast<double>(want);
    if (class_of(got) != class_of(nearest)) {
      // where normal and subnormal numbers meet, the last unit may decide: that is an error in ulp, not in kind
      const bool edge = std::isfinite(got) && std::isfinite(nearest) && std::fabs(std::fabs(nearest) - smallest_normal) <= 0x1p-1074;
      if (!edge) {
        if (!wrong++) wrong_x = at_x, wrong_y = at_y, wrong_got = got, wrong_want = nearest;
        return;
      }
    }
    if (!std::isfinite(nearest)) return;
    const double e = error_in_ulp(got, want);
    if (!(e <= worst)) worst = e, x = at_x, y = at_y;
  }
};

struct function {
  const char* name;
  double limit;   // ulp
  bool accurate;  // the C library's own in double errs by less than 0.6
  lanes (*of_lanes)(const lanes&);
  double (*of_one)(double);
  double (*of_libm)(double);
  long double (*exact)(long double);
};
#define FUNCTION(name, limit, accurate)                                                                                     \
  {                                                                                                                         \
    #name, limit, accurate, [](const lanes& x) { return math::name(x); }, [](double x) { return math::name(x); },           \
        [](double x) { return std::name(x); }, [](long double x) { return std::name(x); }                                   \
  }
const function functions[] = {
    FUNCTION(log, 1.1, true),    FUNCTION(exp, 1.1, true),    FUNCTION(sin, 1.1, true),    FUNCTION(cos, 1.1, true),
    FUNCTION(log10, 1.1, false), FUNCTION(log1p, 1.1, false), FUNCTION(expm1, 1.1, false), FUNCTION(cbrt, 1.1, false),
    FUNCTION(tanh, 1.1, false),  FUNCTION(erf, 1.1, false),   FUNCTION(erfc, 1.5, false)};
#undef FUNCTION

constexpr std::size_t block = 512;  // patterns at a time
constexpr std::uint64_t patterns = std::uint64_t{1} << 32;

std::uint32_t hash(std::uint32_t p) {
  p = (p ^ (p >> 16)) * 0x45d9f3bu;
  p = (p ^ (p >> 16)) * 0x45d9f3bu;
  return p ^ (p >> 16);
}

/// The patterns from `first` on, a block of them.
void work(const function& f, std::uint64_t first, std::uint64_t step, bool scalar_too, finding& found) {
  double x[3 * block], y[3 * block];
  std::size_t n = 0;
  for (std::uint64_t p = first; p < patterns && n < 3 * block; p += step)
    for (const std::uint32_t low : {std::uint32_t{0}, ~std::uint32_t{0}, hash(static_cast<std::uint32_t>(p))}) x[n++] = from((p << 32) | low);
  const std::size_t real = n;
  while (n < 3 * block) x[n++] = 1.0;
  for (std::size_t i = 0; i < n; i += width) f.of_lanes(lanes::load(x + i)).store(y + i);
  for (std::size_t i = 0; i < real; ++i) {
    if (scalar_too) found.differing += !same(f.of_one(x[i]), y[i]);
    if (f.accurate && same(y[i], f.of_libm(x[i]))) continue;
    found.look(x[i], 0.0, y[i], f.exact(x[i]));
  }
  found.points += real;
}

// ---- pow -------------------------------------------------------------------------------------------------------------

void look_at_pow(double x, double y, double got, finding& found) {
  ++found.points;
  if (same(got, std::pow(x, y))) return;
  found.look(x, y, got, std::pow(static_cast<long double>(x), static_cast<long double>(y)));
}
std::vector<double> special_numbers() {
  std::vector<double> v{0.0, 0x1p-1074, 0x1p-1073, 0x1.fffffffffffffp-1023, 0x1p-1022, 0x1.8p-1022, 1e-300, 0x1p-537, 0x1p-54, 0x1p-53, 0x1p-52, 1e-10,
                        0.1, 0.25, 1.0 / 3.0, 0.5, 0x1.fffffffffffffp-1, 1.0, 0x1.0000000000001p0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 7.0, 10.0, 100.0, 101.0,
                        709.0, 745.0, 1022.0, 1023.0, 1024.0, 1074.0, 1075.0, 1e10, 0x1p31, 0x1p32, 0x1p51, 0x1p51 + 0.5, 0x1p52, 0x1p52 + 1.0, 0x1p53 - 1.0,
                        0x1p53, 0x1p53 + 2.0, 0x1p63, 0x1p64, 0x1.8p64, 1e100, 1e300, 0x1p1023, std::numeric_limits<double>::max(),
                        std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()};
  for (std::size_t i = 0, n = v.size(); i < n; ++i) v.push_back(-v[i]);
  return v;
}
void special_pairs(finding& found) {
  const auto v = special_numbers();
  for (const double x : v)
    for (const double y : v) {
      look_at_pow(x, y, math::pow(x, y), found);
      found.differing += !same(math::pow(lanes(x), lanes(y))[0], math::pow(x, y));
    }
}
void random_pairs(std::uint64_t seed, std::uint64_t count, finding& found) {
  std::mt19937_64 random(seed);
  const auto part = [&random] { return static_cast<double>(random() >> 11) * 0x1p-53; };
  double x[block], y[block], r[block];
  for (std::uint64_t done = 0; done < count; done += block) {
    for (std::size_t i = 0; i < block; ++i) {
      x[i] = from(random());
      y[i] = from(random());
      if (i % 2) {  // towards a result between the smallest and the largest number
        const int smaller = -static_cast<int>(random() % 50);
        x[i] = i % 4 == 1 ? std::fabs(x[i]) : 1.0 + std::ldexp(part() - 0.5, smaller);
        y[i] = (part() * 1460.0 - 748.0) / std::log(x[i]);
      }
    }
    for (std::size_t i = 0; i < block; i += width) math::pow(lanes::load(x + i), lanes::load(y + i)).store(r + i);
    for (std::size_t i = 0; i < block; ++i) {
      if (done % (16 * block) == 0) found.differing += !same(math::pow(x[i], y[i]), r[i]);
      look_at_pow(x[i], y[i], r[i], found);
    }
  }
}

// ---- the run ---------------------------------------------------------------------------------------------------------

/// Calls part(i, finding) for i below `count` from several threads, with a line of progress.
template <class Part>
finding in_parallel(const char* name, std::uint64_t count, unsigned threads, const Part& part) {
  std::atomic<std::uint64_t> next{0};
  std::mutex door;
  finding all;
  std::vector<std::thread> pool;
  const auto start = std::chrono::steady_clock::now();
  for (unsigned t = 0; t < threads; ++t)
    pool.emplace_back([&, t] {
      finding mine;
      auto said = start;
      for (std::uint64_t i; (i = next.fetch_add(1)) < count;) {
        part(i, mine);
        const auto now = std::chrono::steady_clock::now();
        if (t == 0 && now - said > std::chrono::seconds(2)) {
          said = now;
          std::fprintf(stderr, "\r%-6s %5.1f %%", name, 100.0 * static_cast<double>(i) / static_cast<double>(count));
        }
      }
      const std::lock_guard lock(door);
      all.add(mine);
    });
  for (auto& t : pool) t.join();
  std::fprintf(stderr, "\r%20s\r", "");
  return all;
}

std::string hex(double x) {
  char text[24];
  std::snprintf(text, sizeof text, "0x%016llx", static_cast<unsigned long long>(bits_of(x)));
  return text;
}
bool report(const char* name, double limit, const finding& f, double seconds) {
  const bool pow = std::string_view(name) == "pow";
  std::printf("%-6s %12llu %9.4f  %-23a", name, static_cast<unsigned long long>(f.points), f.worst, f.x);
  if (pow) std::printf(" %-23a", f.y);
  std::printf(" %12llu %12llu %8.0f s%s\n", static_cast<unsigned long long>(f.wrong), static_cast<unsigned long long>(f.differing), seconds,
              f.worst > limit ? "  above its limit" : "");
  if (f.wrong)
    std::printf("       first of another class: %s(%s%s%s) = %a, not %a\n", name, hex(f.wrong_x).c_str(), pow ? ", " : "",
                pow ? hex(f.wrong_y).c_str() : "", f.wrong_got, f.wrong_want);
  std::fflush(stdout);
  return f.worst <= limit && !f.wrong && !f.differing;
}

bool processor_has_it() {
#if defined(__AVX512F__)
  return __builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512bw") && __builtin_cpu_supports("avx512vl");
#elif defined(__AVX2__)
  return __builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma");
#else
  return true;
#endif
}

}  // namespace

int main(int count, char** words) {
  std::uint64_t step = 1;
  unsigned threads = 2;
  std::string chosen;
  for (int i = 1; i < count; ++i) {
    const std::string_view word = words[i];
    if (i + 1 < count && word == "--step") step = std::strtoull(words[++i], nullptr, 10);
    else if (i + 1 < count && word == "--threads") threads = static_cast<unsigned>(std::strtoul(words[++i], nullptr, 10));
    else if (i + 1 < count && word == "--functions") chosen = std::string(",") + words[++i] + ",";
    else step = 0;
  }
  if (step == 0 || threads == 0) {
    std::fprintf(stderr, "%s [--functions log,exp,...,pow] [--step N] [--threads K]\n", words[0]);
    return 2;
  }
  if (!processor_has_it()) {
    std::printf("this processor has not the instructions that this program is compiled for\n");
    return 77;
  }
  const auto wanted = [&](const char* name) { return chosen.empty() || chosen.find("," + std::string(name) + ",") != std::string::npos; };
  std::printf("lanes of %d; every %s%llu%s of the 2^32 upper words\n", width, step == 1 ? "one (step " : "", static_cast<unsigned long long>(step),
              step == 1 ? ")" : "th");
  std::printf("%-6s %12s %9s  %-23s %12s %12s\n", "", "points", "worst ulp", "at", "other class", "lanes differ");
  bool good = true;
  int looked_at = 0;
  const auto timed = [&](const char* name, double limit, const auto& run) {
    const auto start = std::chrono::steady_clock::now();
    const finding f = run();
    good = report(name, limit, f, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count()) && good;
    ++looked_at;
  };
  for (const auto& f : functions) {
    if (!wanted(f.name)) continue;
    const std::uint64_t blocks = (patterns / step + block) / block;
    timed(f.name, f.limit, [&] {
      return in_parallel(f.name, blocks, threads,
                         [&](std::uint64_t i, finding& found) { work(f, i * block * step, step, i % 16 == 0, found); });
    });
  }
  if (wanted("pow")) {
    timed("pow", 1.5, [&] {
      const std::uint64_t each = 1 << 17;
      finding all = in_parallel("pow", (200'000'000 / step + each) / each, threads,
                                [&](std::uint64_t i, finding& found) { random_pairs(i + 1, each, found); });
      special_pairs(all);
      return all;
    });
  }
  return looked_at == 0 ? 2 : good ? 0 : 1;
}

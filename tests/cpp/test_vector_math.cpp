// SPDX-License-Identifier: MIT
// The branch-free mathematics: special values (ISO C, annex F), largest error against long double, equal bits at every width.
#include <doctest/doctest.h>
#include <cmath>
#include <limits>
#include <makegood/scalar/twin.hpp>
#include <random>
#include <vector>

using namespace makegood;

namespace {

constexpr double inf = std::numeric_limits<double>::infinity();
constexpr double none = std::numeric_limits<double>::quiet_NaN();
constexpr double least = std::numeric_limits<double>::denorm_min();
constexpr double normal = std::numeric_limits<double>::min();
constexpr double largest = std::numeric_limits<double>::max();

bool same(double a, double b) {
  const auto bits = [](double x) { return __builtin_bit_cast(std::uint64_t, x); };
  return (a != a && b != b) || bits(a) == bits(b);
}

// One object a function: at(x) for double and for lanes, exact(x) in long double.
#define FUNCTION(name)                                                             \
  struct name##_t {                                                                \
    static constexpr const char* text = #name;                                     \
    template <class V>                                                             \
    static V at(const V& x) { return makegood::vector_math::name(x); }             \
    static long double exact(double x) { return std::name(static_cast<long double>(x)); } \
  }
FUNCTION(log);
FUNCTION(log10);
FUNCTION(log1p);
FUNCTION(exp);
FUNCTION(expm1);
FUNCTION(cbrt);
FUNCTION(tanh);
FUNCTION(erf);
FUNCTION(erfc);
FUNCTION(sin);
FUNCTION(cos);
#undef FUNCTION
struct sqrt_t {
  static constexpr const char* text = "sqrt";
  template <class V>
  static V at(const V& x) { return square_root(x); }
  static double at(double x) { return makegood::vector_math::square_root(x); }
  static long double exact(double x) { return std::sqrt(static_cast<long double>(x)); }
};

/// The error of `got` in units of the last place of the double nearest to `want`. Overflow and NaN must agree.
double error_in_ulp(double got, long double want) {
  const double nearest = static_cast<double>(want);
  if (!std::isfinite(nearest) || !std::isfinite(got)) return same(got, nearest) ? 0.0 : inf;
  const double a = std::fabs(nearest);
  const int exponent = a < normal ? -1022 : std::ilogb(a);
  return std::fabs(static_cast<double>(std::ldexp(static_cast<long double>(got) - want, 52 - exponent)));
}

/// Random numbers of every kind: uniform in a range, of any exponent in a range, near 1.
struct points {
  std::mt19937_64 random;
  explicit points(unsigned seed) : random(seed) {}
  double uniform(double low, double high) { return low + (high - low) * (static_cast<double>(random() >> 11) * 0x1p-53); }
  double of_exponent(int low, int high) { return std::ldexp(uniform(1.0, 2.0), low + static_cast<int>(random() % static_cast<unsigned>(high - low))); }
  double signed_of_exponent(int low, int high) { return random() & 1 ? of_exponent(low, high) : -of_exponent(low, high); }
};

template <class L, class F>
std::size_t differing(const F& at, const std::vector<double>& x, const std::vector<double>& y) {
  constexpr std::size_t W = L::width;
  std::size_t count = 0;
  double out[W];
  for (std::size_t i = 0; i + W <= x.size(); i += W) {
    at(L::load(&x[i])).store(out);
    for (std::size_t k = 0; k < W; ++k) count += !same(out[k], y[i + k]);
  }
  return count;
}

constexpr std::size_t point_count = 1 << 20;

/// Largest error over 2^20 points at most `limit`, and the same bits from lanes of 2, 4 and 8 and from twins.
template <class F, class G>
void check_points(double limit, unsigned seed, const G& make) {
  points source(seed);
  std::vector<double> x(point_count), y(point_count);
  for (std::size_t i = 0; i < point_count; ++i) x[i] = make(source, i % 4);
  double worst = 0.0, worst_at = 0.0;
  for (std::size_t i = 0; i < point_count; ++i) {
    y[i] = F::at(x[i]);
    const double e = error_in_ulp(y[i], F::exact(x[i]));
    if (!(e <= worst)) worst = e, worst_at = x[i];
  }
  CAPTURE(F::text);
  CAPTURE(worst_at);
  CHECK(worst <= limit);
  CHECK(worst > 0.3);  // a meter that always says 0 measures nothing
  const auto at = [](const auto& v) { return F::at(v); };
  CHECK(differing<lanes<2>>(at, x, y) == 0);
  CHECK(differing<lanes<4>>(at, x, y) == 0);
  CHECK(differing<lanes<8>>(at, x, y) == 0);
  CHECK(differing<twin<lanes<2>>>(at, x, y) == 0);
}

struct value {
  double x, want;
};
template <class F>
void check_values(std::initializer_list<value> list) {
  CAPTURE(F::text);
  for (const auto& v : list) {
    CAPTURE(v.x);
    CAPTURE(v.want);
    CAPTURE(F::at(v.x));
    CHECK(same(F::at(v.x), v.want));
    lanes<2> two(v.x);
    lanes<4> four(v.x);
    lanes<8> eight(v.x);
    for (int i = 0; i < 2; ++i) CHECK(same(F::at(two)[i], v.want));
    for (int i = 0; i < 4; ++i) CHECK(same(F::at(four)[i], v.want));
    for (int i = 0; i < 8; ++i) CHECK(same(F::at(eight)[i], v.want));
    // one special lane among ordinary ones disturbs neither itself nor its neighbours
    double mixed[4] = {0.5, v.x, 0.25, v.x}, out[4];
    const auto check_mixed = [&] {
      CHECK(same(out[0], F::at(0.5)));
      CHECK(same(out[1], v.want));
      CHECK(same(out[2], F::at(0.25)));
      CHECK(same(out[3], v.want));
    };
    F::at(lanes<4>::load(mixed)).store(out);
    check_mixed();
    F::at(twin<lanes<2>>::load(mixed)).store(out);
    check_mixed();
  }
}

}  // namespace

TEST_CASE("vector mathematics: the meter of the errors works") {
  CHECK(error_in_ulp(1.0, 1.0L) == 0.0);
  CHECK(error_in_ulp(1.0 + 0x1p-52, 1.0L) == 1.0);
  CHECK(error_in_ulp(1.0 - 0x1p-53, 1.0L) == 0.5);
  CHECK(error_in_ulp(2 * least, static_cast<long double>(least)) == 1.0);
  CHECK(error_in_ulp(inf, static_cast<long double>(largest)) == inf);
  CHECK(error_in_ulp(0.0, std::numeric_limits<long double>::quiet_NaN()) == inf);
}

TEST_CASE("vector mathematics: special values") {
  check_values<log_t>({{0.0, -inf}, {-0.0, -inf}, {-1.0, none}, {-least, none}, {-inf, none}, {inf, inf}, {none, none}, {1.0, 0.0},
                       {least, -0x1.74385446d71c3p+9}, {normal, -0x1.6232bdd7abcd2p+9}, {largest, 0x1.62e42fefa39efp+9}});
  check_values<log10_t>({{0.0, -inf}, {-0.0, -inf}, {-1.0, none}, {-least, none}, {-inf, none}, {inf, inf}, {none, none}, {1.0, 0.0}});
  check_values<log1p_t>({{0.0, 0.0}, {-0.0, -0.0}, {-1.0, -inf}, {-1.5, none}, {-inf, none}, {inf, inf}, {none, none}, {least, least},
                         {-least, -least}, {normal, normal}, {1e-300, 1e-300}, {-1e-20, -1e-20}, {largest, 0x1.62e42fefa39efp+9}});
  check_values<exp_t>({{0.0, 1.0}, {-0.0, 1.0}, {inf, inf}, {-inf, 0.0}, {none, none}, {710.0, inf}, {1e300, inf}, {-746.0, 0.0}, {-1e300, 0.0},
                       {least, 1.0}, {-least, 1.0}, {-745.0, least}, {709.78271289338409, inf}});
  check_values<expm1_t>({{0.0, 0.0}, {-0.0, -0.0}, {inf, inf}, {-inf, -1.0}, {none, none}, {710.0, inf}, {1e300, inf}, {-60.0, -1.0}, {-1e300, -1.0},
                         {least, least}, {-least, -least}, {normal, normal}, {1e-300, 1e-300}});
  check_values<sqrt_t>({{0.0, 0.0}, {-0.0, -0.0}, {-1.0, none}, {-least, none}, {-inf, none}, {inf, inf}, {none, none}, {4.0, 2.0}, {0x1p-1074, 0x1p-537}});
  check_values<cbrt_t>({{0.0, 0.0}, {-0.0, -0.0}, {inf, inf}, {-inf, -inf}, {none, none}, {27.0, 3.0}, {-27.0, -3.0}, {0x1p-1074, 0x1p-358},
      {-0x1p-1074, -0x1p-358},
                        {0x1p1023, 0x1p341}, {1.0, 1.0}, {-1.0, -1.0}});
  check_values<tanh_t>({{0.0, 0.0}, {-0.0, -0.0}, {inf, 1.0}, {-inf, -1.0}, {none, none}, {30.0, 1.0}, {-30.0, -1.0}, {1e300, 1.0}, {least, least},
      {-least, -least},
                        {normal, normal}, {-1e-300, -1e-300}});
  check_values<erf_t>({{0.0, 0.0}, {-0.0, -0.0}, {inf, 1.0}, {-inf, -1.0}, {none, none}, {7.0, 1.0}, {-7.0, -1.0}, {1e300, 1.0}, {least, least},
      {-least, -least}});
  check_values<erfc_t>({{0.0, 1.0}, {-0.0, 1.0}, {inf, 0.0}, {-inf, 2.0}, {none, none}, {28.0, 0.0}, {1e300, 0.0}, {-7.0, 2.0}, {-1e300, 2.0},
      {least, 1.0}, {-least, 1.0}});
  check_values<sin_t>({{0.0, 0.0}, {-0.0, -0.0}, {inf, none}, {-inf, none}, {none, none}, {least, least}, {-least, -least}, {normal, normal},
      {-1e-300, -1e-300}});
  check_values<cos_t>({{0.0, 1.0}, {-0.0, 1.0}, {inf, none}, {-inf, none}, {none, none}, {least, 1.0}, {-least, 1.0}, {1e-300, 1.0}});
}

TEST_CASE("vector mathematics: special values of pow (ISO C, F.10.4.4)") {
  struct power {
    double x, y, want;
  };
  const power list[] = {
      // anything to the power 0, and 1 to any power
      {0.0, 0.0, 1.0}, {-0.0, 0.0, 1.0}, {inf, 0.0, 1.0}, {-inf, -0.0, 1.0}, {none, 0.0, 1.0}, {none, -0.0, 1.0}, {5.0, 0.0, 1.0},
      {1.0, none, 1.0}, {1.0, inf, 1.0}, {1.0, -inf, 1.0}, {1.0, 1e300, 1.0}, {none, 1.0, none}, {2.0, none, none}, {none, none, none}, {-1.0, none, none},
      {0.0, none, none},
      // zero
      {0.0, 3.0, 0.0}, {-0.0, 3.0, -0.0}, {0.0, 2.0, 0.0}, {-0.0, 2.0, 0.0}, {0.0, 0.5, 0.0}, {-0.0, 0.5, 0.0}, {0.0, inf, 0.0}, {-0.0, inf, 0.0},
      {0.0, -3.0, inf}, {-0.0, -3.0, -inf}, {0.0, -2.0, inf}, {-0.0, -2.0, inf}, {0.0, -0.5, inf}, {-0.0, -0.5, inf}, {0.0, -inf, inf}, {-0.0, -inf, inf},
      // infinite base
      {inf, 2.0, inf}, {inf, 0.5, inf}, {inf, -0.5, 0.0}, {inf, -3.0, 0.0}, {inf, inf, inf}, {inf, -inf, 0.0}, {-inf, 3.0, -inf}, {-inf, 2.0, inf},
      {-inf, 0.5, inf},
      {-inf, -3.0, -0.0}, {-inf, -2.0, 0.0}, {-inf, -0.5, 0.0}, {-inf, inf, inf}, {-inf, -inf, 0.0},
      // infinite exponent
      {-1.0, inf, 1.0}, {-1.0, -inf, 1.0}, {0.5, inf, 0.0}, {0.5, -inf, inf}, {2.0, inf, inf}, {2.0, -inf, 0.0}, {-0.5, inf, 0.0}, {-0.5, -inf, inf},
      {-2.0, inf, inf}, {-2.0, -inf, 0.0},
      // negative base
      {-2.0, 3.0, -8.0}, {-2.0, 2.0, 4.0}, {-2.0, 0.5, none}, {-2.0, -1.5, none}, {-least, 0.5, none}, {-2.0, -3.0, -0.125}, {-1.0, 0x1p53, 1.0},
      {-1.0, 0x1p53 - 1.0, -1.0}, {-1.0, 0x1p52 + 1.0, -1.0},
      {-1.0, 0x1p52 + 2.0, 1.0}, {-1.0, 0x1p51 + 0.5, none}, {-1.0, largest, 1.0}, {-1.0, -0x1p53, 1.0},
      // overflow, underflow, gradual underflow, subnormal base
      {10.0, 400.0, inf}, {10.0, -400.0, 0.0}, {-10.0, 401.0, -inf}, {-10.0, -401.0, -0.0}, {2.0, 1023.0, 0x1p1023}, {2.0, 1024.0, inf},
      {2.0, -1074.0, 0x1p-1074}, {2.0, -1050.0, 0x1p-1050}, {2.0, -1076.0, 0.0},
      {0x1p-1074, 0.5, 0x1p-537}, {0x1p-1074, 1.0, 0x1p-1074}, {0x1p-1074, -0.5, 0x1p537}, {0x1p-1074, -1.0, inf}, {1.0 + 0x1p-52, 1e300, inf},
      {1.0 - 0x1p-53, 1e300, 0.0}, {1.0 + 0x1p-52, -1e300, 0.0}, {largest, 1.0, largest},
      {largest, 2.0, inf}, {5.0, least, 1.0}, {5.0, -least, 1.0},
      // whole results
      {10.0, 2.0, 100.0}, {10.0, 22.0, 1e22}, {3.0, 4.0, 81.0}, {4.0, 0.5, 2.0}, {9.0, 1.5, 27.0}, {0.5, 3.0, 0.125}};
  for (const auto& p : list) {
    CAPTURE(p.x);
    CAPTURE(p.y);
    CAPTURE(p.want);
    CAPTURE(vector_math::pow(p.x, p.y));
    CHECK(same(vector_math::pow(p.x, p.y), p.want));
    const auto two = pow(lanes<2>(p.x), p.y);
    const auto four = pow(lanes<4>(p.x), p.y);
    const auto eight = pow(lanes<8>(p.x), p.y);
    for (int i = 0; i < 2; ++i) CHECK(same(two[i], p.want));
    for (int i = 0; i < 4; ++i) CHECK(same(four[i], p.want));
    for (int i = 0; i < 8; ++i) CHECK(same(eight[i], p.want));
  }
}

TEST_CASE("vector mathematics: results that are whole come out whole") {
  double power = 1.0;
  for (int n = 0; n <= 22; ++n, power *= 10.0) {  // 10^22 is the last power of ten that a double holds exactly
    CHECK(vector_math::log10(power) == n);
    CHECK(vector_math::pow(10.0, static_cast<double>(n)) == power);
  }
  int wrong = 0;
  for (int n = 1; n <= 5000; ++n) wrong += vector_math::cbrt(static_cast<double>(n) * n * n) != n;
  for (int n = 1; n <= 5000; ++n) wrong += vector_math::pow(static_cast<double>(n), 2.0) != static_cast<double>(n) * n;
  CHECK(wrong == 0);
}

// Where the exponents lie: the first kinds of point cover all that a double holds, the others where the function bends.
TEST_CASE("vector mathematics: largest error and equal bits") {
  check_points<log_t>(1.1, 1, [](points& p, std::size_t i) {
    return i == 0 ? p.of_exponent(-1074, 1024) : i == 1 ? p.uniform(0.5, 2.0) : i == 2 ? 1.0 + p.signed_of_exponent(-50, -1) : p.uniform(0.0, 1000.0);
  });
  check_points<log10_t>(1.5, 2, [](points& p, std::size_t i) {
    return i == 0 ? p.of_exponent(-1074, 1024) : i == 1 ? p.uniform(0.5, 2.0) : i == 2 ? 1.0 + p.signed_of_exponent(-50, -1) : p.uniform(0.0, 1000.0);
  });
  check_points<log1p_t>(1.1, 3, [](points& p, std::size_t i) {
    return i == 0 ? p.of_exponent(-1074, 1024) : i == 1 ? p.signed_of_exponent(-60, 0) : i == 2 ? p.of_exponent(-53, 0) - 1.0 : p.uniform(-0.75, 60.0);
  });
  check_points<exp_t>(1.1, 4, [](points& p, std::size_t i) {
    return i == 0 ? p.uniform(-746.0, 710.0) : i == 1 ? p.uniform(-2.0, 2.0) : i == 2 ? p.signed_of_exponent(-60, 9) : p.uniform(-745.5, -708.0);
  });
  check_points<expm1_t>(1.1, 5, [](points& p, std::size_t i) {
    return i == 0 ? p.uniform(-60.0, 710.0) : i == 1 ? p.uniform(-2.0, 2.0) : i == 2 ? p.signed_of_exponent(-1074, 5) : p.uniform(-50.0, 70.0);
  });
  check_points<cbrt_t>(1.1, 6, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-1074, 1024) : i == 1 ? p.uniform(0.5, 8.0) : p.signed_of_exponent(-40, 40);
  });
  check_points<tanh_t>(1.1, 7, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-1074, 6) : i == 1 ? p.uniform(-1.0, 1.0) : i == 2 ? p.signed_of_exponent(-30, 0) : p.uniform(-25.0, 25.0);
  });
  check_points<erf_t>(1.1, 8, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-1070, 4) : i == 1 ? p.uniform(0.0, 1.0) : i == 2 ? p.signed_of_exponent(-20, 1) : p.uniform(-6.5, 6.5);
  });
  check_points<erfc_t>(1.5, 9, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-60, 5) : i == 1 ? p.uniform(0.4, 1.5) : i == 2 ? p.uniform(26.0, 27.3) : p.uniform(-6.5, 27.3);
  });
  check_points<sin_t>(1.1, 10, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-1074, 16) : i == 1 ? p.uniform(-7.0, 7.0)
        : i == 2 ? std::round(p.uniform(-63000.0, 63000.0)) * 1.5707963267948966 : p.uniform(-1e5, 1e5);
  });
  check_points<cos_t>(1.1, 11, [](points& p, std::size_t i) {
    return i == 0 ? p.signed_of_exponent(-1074, 16) : i == 1 ? p.uniform(-7.0, 7.0)
        : i == 2 ? std::round(p.uniform(-63000.0, 63000.0)) * 1.5707963267948966 : p.uniform(-1e5, 1e5);
  });
  check_points<sqrt_t>(0.5, 12, [](points& p, std::size_t) { return p.of_exponent(-1074, 1024); });
}

TEST_CASE("vector mathematics: largest error and equal bits of pow") {
  points source(13);
  std::vector<double> x(point_count), y(point_count), r(point_count);
  double worst = 0.0, worst_x = 0.0, worst_y = 0.0;
  for (std::size_t i = 0; i < point_count; ++i) {
    switch (i % 4) {
      case 0: x[i] = source.of_exponent(-1074, 1024), y[i] = source.signed_of_exponent(-20, 9); break;
      case 1: x[i] = source.uniform(0.5, 2.0), y[i] = source.uniform(-1000.0, 1000.0); break;
      case 2: x[i] = source.uniform(0.0, 100.0), y[i] = source.uniform(-5.0, 5.0); break;
      default:  // close to 1, to results of every size
        x[i] = 1.0 + source.signed_of_exponent(-50, -2);
        y[i] = source.uniform(-745.0, 710.0) / std::log(x[i]);
    }
    r[i] = vector_math::pow(x[i], y[i]);
    const double e = error_in_ulp(r[i], std::pow(static_cast<long double>(x[i]), static_cast<long double>(y[i])));
    if (!(e <= worst)) worst = e, worst_x = x[i], worst_y = y[i];
  }
  CAPTURE(worst_x);
  CAPTURE(worst_y);
  CHECK(worst <= 1.5);
  CHECK(worst > 0.3);
  const auto count = [&]<int W>(std::integral_constant<int, W>) {
    std::size_t n = 0;
    double out[W];
    for (std::size_t i = 0; i < point_count; i += W) {
      pow(lanes<W>::load(&x[i]), lanes<W>::load(&y[i])).store(out);
      for (std::size_t k = 0; k < W; ++k) n += !same(out[k], r[i + k]);
    }
    return n;
  };
  CHECK(count(std::integral_constant<int, 2>{}) == 0);
  CHECK(count(std::integral_constant<int, 4>{}) == 0);
  CHECK(count(std::integral_constant<int, 8>{}) == 0);
}

TEST_CASE("vector mathematics: sine and cosine beyond the limit of the reduction are those of the C library") {
  const double x[4] = {1e6, 0.5, -3e22, largest};
  double s[4], c[4];
  sin(lanes<4>::load(x)).store(s);
  cos(lanes<4>::load(x)).store(c);
  for (int i = 0; i < 4; ++i) {
    CHECK(error_in_ulp(s[i], std::sin(static_cast<long double>(x[i]))) <= 1.1);
    CHECK(error_in_ulp(c[i], std::cos(static_cast<long double>(x[i]))) <= 1.1);
    CHECK(same(s[i], vector_math::sin(x[i])));
    CHECK(same(c[i], vector_math::cos(x[i])));
  }
}

TEST_CASE_TEMPLATE("lanes: the operations of a formula", V, lanes<2>, lanes<4>, lanes<8>, twin<lanes<2>>) {
  constexpr int W = V::width;
  double in[3 * W], out[3 * W];
  for (int i = 0; i < 3 * W; ++i) in[i] = i + 1.0, out[i] = -1.0;
  const V x = V::load(in), y = V::load(in + 1, 3);
  for (int i = 0; i < W; ++i) {
    CHECK(x[i] == i + 1.0);
    CHECK(y[i] == 3.0 * i + 2.0);
    CHECK((x + y)[i] == x[i] + y[i]);
    CHECK((x - y)[i] == x[i] - y[i]);
    CHECK((x * y)[i] == x[i] * y[i]);
    CHECK((x / y)[i] == x[i] / y[i]);
    CHECK(same((-V(0.0))[i], -0.0));
    CHECK(same(V(-0.0)[i], -0.0));
    CHECK((2.0 - x)[i] == 2.0 - x[i]);
    CHECK((x * constant(2.5, unit::ohm))[i] == 2.5 * x[i]);
    CHECK(fabs(0.0 - x)[i] == x[i]);
    CHECK(same(fabs(V(-0.0))[i], 0.0));
    CHECK(sqrt(y)[i] == std::sqrt(y[i]));
    CHECK((x < 2.0)[i] == (x[i] < 2.0));
    CHECK((x <= 2.0)[i] == (x[i] <= 2.0));
    CHECK((x > 2.0)[i] == (x[i] > 2.0));
    CHECK((x >= 2.0)[i] == (x[i] >= 2.0));
    CHECK((x == 2.0)[i] == (x[i] == 2.0));
    CHECK((x != 2.0)[i] == (x[i] != 2.0));
    CHECK((!(x < 2.0))[i] == !(x[i] < 2.0));
    CHECK(((x > 1.0) & (y < 5.0))[i] == (x[i] > 1.0 && y[i] < 5.0));
    CHECK(((x < 2.0) | (y > 5.0))[i] == (x[i] < 2.0 || y[i] > 5.0));
    CHECK(select(x < 2.0, x, y)[i] == (x[i] < 2.0 ? x[i] : y[i]));
    CHECK(select(x < 2.0, 0.5, constant(7.0, unit::one))[i] == (x[i] < 2.0 ? 0.5 : 7.0));
    CHECK(min(x, 2.0)[i] == (x[i] < 2.0 ? x[i] : 2.0));
    CHECK(max(x, 2.0)[i] == (x[i] > 2.0 ? x[i] : 2.0));
    CHECK_FALSE((V(none) == V(none))[i]);
    CHECK_FALSE((V(none) < V(1.0))[i]);
    CHECK_FALSE((V(none) >= V(1.0))[i]);
    CHECK(same(pow(x, 2.0)[i], x[i] * x[i]));
    CHECK(same(log(y)[i], vector_math::log(y[i])));
  }
  CHECK(all(x > 0.0));
  CHECK_FALSE(all(x > 1.0));
  CHECK(any(x > 1.0));
  CHECK_FALSE(any(x > 2.0 * W));
  CHECK(all(typename V::mask(true)));
  CHECK_FALSE(any(typename V::mask(false)));
  x.store(out + 1, 2);
  for (int i = 0; i < W; ++i) CHECK(out[2 * i + 1] == in[i]);
  CHECK(out[0] == -1.0);
  CHECK(out[2] == -1.0);
  x.store(out);
  for (int i = 0; i < W; ++i) CHECK(out[i] == in[i]);
}

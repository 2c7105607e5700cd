// SPDX-License-Identifier: MIT
// What the machine can do at most, measured in the same run: bandwidth of copy and triad, and how fast the widest registers
// divide, take roots, and multiply or add. Compiled by run.py (-O3) and called through ctypes. Nothing of makegood is included.
#include <cstddef>
#if defined(__x86_64__)
#include <immintrin.h>
#endif

#if defined(__x86_64__)
#define FOR(set) __attribute__((target(set), noinline))
#define WIDE FOR("avx512f,avx512dq,avx512vl")
#define MIDDLE FOR("avx2")
#else
#define FOR(set) __attribute__((noinline))
#endif

namespace {

typedef double v2 __attribute__((vector_size(16)));
typedef double v4 __attribute__((vector_size(32)));
typedef double v8 __attribute__((vector_size(64)));

int lanes() {
#if defined(__x86_64__)
  __builtin_cpu_init();
  if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512vl")) return 8;
  if (__builtin_cpu_supports("avx2")) return 4;
#endif
  return 2;
}

// Ten independent chains hide the latency. `n` counts numbers, not registers; the empty asm keeps every result alive, in a register.
#if defined(__x86_64__)
#define KEEP(x) asm volatile("" : "+x"(x))
#else
#define KEEP(x) asm volatile("" : "+w"(x))
#endif
#define ONE(x, step)     \
  {                      \
    auto& a = x;         \
    step;                \
    KEEP(x);             \
  }
#define CHAINS(V, step)                                                                                                   \
  V a0 = V{} + 1.0, a1 = V{} + 1.1, a2 = V{} + 1.2, a3 = V{} + 1.3, a4 = V{} + 1.4, a5 = V{} + 1.5, a6 = V{} + 1.6,        \
    a7 = V{} + 1.7, a8 = V{} + 1.8, a9 = V{} + 1.9;                                                                       \
  [[maybe_unused]] const V c = V{} + 0.5;                                                                                 \
  for (std::size_t i = 0; i < n; i += 10 * sizeof(V) / 8) {                                                               \
    ONE(a0, step) ONE(a1, step) ONE(a2, step) ONE(a3, step) ONE(a4, step)                                                 \
    ONE(a5, step) ONE(a6, step) ONE(a7, step) ONE(a8, step) ONE(a9, step)                                                 \
  }
#define DIVIDE a = c / a
#define MULTIPLY a = a * c; KEEP(a); a = a + c

void divide_2(std::size_t n) { CHAINS(v2, DIVIDE) }
void multiply_2(std::size_t n) { CHAINS(v2, MULTIPLY) }
#if defined(__x86_64__)
void root_2(std::size_t n) { CHAINS(v2, a = _mm_sqrt_pd(a)) }
MIDDLE void divide_4(std::size_t n) { CHAINS(v4, DIVIDE) }
MIDDLE void multiply_4(std::size_t n) { CHAINS(v4, MULTIPLY) }
MIDDLE void root_4(std::size_t n) { CHAINS(v4, a = _mm256_sqrt_pd(a)) }
WIDE void divide_8(std::size_t n) { CHAINS(v8, DIVIDE) }
WIDE void multiply_8(std::size_t n) { CHAINS(v8, MULTIPLY) }
WIDE void root_8(std::size_t n) { CHAINS(v8, a = _mm512_sqrt_pd(a)) }
#else
void root_2(std::size_t n) { CHAINS(v2, (a = v2{__builtin_sqrt(a[0]), __builtin_sqrt(a[1])})) }
#endif

#define COPY for (std::size_t i = 0; i < n; ++i) a[i] = b[i]
#define TRIAD for (std::size_t i = 0; i < n; ++i) a[i] = b[i] + 0.5 * c[i]
void copy_2(double* __restrict__ a, const double* __restrict__ b, std::size_t n) { COPY; }
void triad_2(double* __restrict__ a, const double* __restrict__ b, const double* __restrict__ c, std::size_t n) { TRIAD; }
#if defined(__x86_64__)
MIDDLE void copy_4(double* __restrict__ a, const double* __restrict__ b, std::size_t n) { COPY; }
MIDDLE void triad_4(double* __restrict__ a, const double* __restrict__ b, const double* __restrict__ c, std::size_t n) { TRIAD; }
WIDE void copy_8(double* __restrict__ a, const double* __restrict__ b, std::size_t n) { COPY; }
WIDE void triad_8(double* __restrict__ a, const double* __restrict__ b, const double* __restrict__ c, std::size_t n) { TRIAD; }
// Past the caches: the line that is written is not read before.
void triad_past(double* a, const double* b, const double* c, std::size_t n) {
  const __m128d half = _mm_set1_pd(0.5);
  for (std::size_t i = 0; i + 2 <= n; i += 2)
    _mm_stream_pd(a + i, _mm_add_pd(_mm_loadu_pd(b + i), _mm_mul_pd(half, _mm_loadu_pd(c + i))));
  _mm_sfence();
}
#endif

#if defined(__x86_64__)
#define BEST(name) (lanes() == 8 ? name##_8 : lanes() == 4 ? name##_4 : name##_2)
#else
#define BEST(name) name##_2
#endif

}  // namespace

extern "C" {
int register_lanes() { return lanes(); }
void divide(std::size_t n) { BEST(divide)(n); }
void root(std::size_t n) { BEST(root)(n); }
void multiply(std::size_t n) { BEST(multiply)(n / 2); }  // a product and a sum a step
void copy(double* a, const double* b, std::size_t n, int times) {
  while (times-- > 0) BEST(copy)(a, b, n);
}
void triad(double* a, const double* b, const double* c, std::size_t n, int times) {
  while (times-- > 0) BEST(triad)(a, b, c, n);
}
void triad_streaming(double* a, const double* b, const double* c, std::size_t n) {
#if defined(__x86_64__)
  triad_past(a, b, c, n);  // `a` from NumPy is a multiple of 16
#else
  BEST(triad)(a, b, c, n);
#endif
}
}

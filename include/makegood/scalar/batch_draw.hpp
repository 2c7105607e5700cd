// SPDX-License-Identifier: MIT
// Random columns, and what is summed up of them: the loops of Monte Carlo with lanes.
// Included by the batch files alone, once an instruction set; everything here lies in that instruction set's namespace.
#pragma once
#include "columns.hpp"
#include "random.hpp"
#include "twin.hpp"

namespace makegood {
inline namespace v1 {
MAKEGOOD_ISA_NAMESPACE {

/// The order of draws does not depend on the width: a block of 64 numbers is made of counters that follow each other, 16 at a time;
/// with four numbers a counter the first are numbers 0 to 15, the second 16 to 31 ...; with two, 0 to 31 and 32 to 63.
struct batch_draw {
  using L = lanes<>;
  using K = twin<L>;
  using B = vector_math::bits_t<K>;
  using D = random::bits_of_a_draw<B>;
  static constexpr int W = K::width;
  static_assert(16 % W == 0);

  static void fill(const draw_columns& c) {
    const random::schedule<B> key(c.seed);
    fill_with(c, key);
  }
  static void add(double* y, const double* x, double factor, std::size_t n) {
    const L f(factor);
    std::size_t k = 0;
    for (; k + L::width <= n; k += L::width) (L::load(y + k) + f * L::load(x + k)).store(y + k);
    for (; k < n; ++k) y[k] = y[k] + factor * x[k];
  }
  static column_sums sums(const double* y, std::size_t n) {
    K sum[16 / W], count[16 / W], low[16 / W], high[16 / W];
    for (int g = 0; g < 16 / W; ++g) low[g] = K(vector_math::infinity), high[g] = K(-vector_math::infinity);
    const auto look = [&](const double* p) MAKEGOOD_LAMBDA_INLINE {
      for (int g = 0; g < 16 / W; ++g) {
        const K x = K::load(p + g * W);
        const auto there = x == x;
        sum[g] = sum[g] + select(there, x, K(0.0));
        count[g] = count[g] + select(there, K(1.0), K(0.0));
        low[g] = min(x, low[g]);  // the second where one is NaN
        high[g] = max(x, high[g]);
      }
    };
    std::size_t k = 0;
    for (; k + 16 <= n; k += 16) look(y + k);
    if (k < n) {
      double rest[16];
      for (std::size_t i = 0; i < 16; ++i) rest[i] = k + i < n ? y[k + i] : __builtin_nan("");
      look(rest);
    }
    column_sums r{0, 0.0, vector_math::infinity, -vector_math::infinity};
    for (int i = 0; i < 16; ++i) {
      r.sum += sum[i / W][i % W];
      r.there += static_cast<std::size_t>(count[i / W][i % W]);
      r.low = low[i / W][i % W] < r.low ? low[i / W][i % W] : r.low;
      r.high = high[i / W][i % W] > r.high ? high[i / W][i % W] : r.high;
    }
    return r;
  }
  static column_spread spread(const double* y, std::size_t n, double centre, double low, double per, unsigned* counts, unsigned short* cell) {
    K square[16 / W], fourth[16 / W];
    const K c(centre), from(low), by(per);
    alignas(64) std::uint64_t at[16];
    const auto look = [&](const double* p) MAKEGOOD_LAMBDA_INLINE {
      for (int g = 0; g < 16 / W; ++g) {
        const K x = K::load(p + g * W);
        const K d = (x - c) * (x - c);
        square[g] = square[g] + d;
        fourth[g] = fourth[g] + d * d;
        const K place = max(min((x - from) * by - K(0.5), K(draw_table::cells - 1.0)), K(0.0)) + K(0x1p52);
        from_bits(to_bits(place) & B(std::uint64_t{draw_table::cells - 1})).store(reinterpret_cast<double*>(at) + g * W);
      }
    };
    std::size_t k = 0;
    for (; k + 16 <= n; k += 16) {
      look(y + k);
      for (int i = 0; i < 16; ++i) {
        cell[k + static_cast<std::size_t>(i)] = static_cast<unsigned short>(at[i]);
        ++counts[at[i]];
      }
    }
    if (k < n) {
      double rest[16];
      for (std::size_t i = 0; i < 16; ++i) rest[i] = k + i < n ? y[k + i] : centre;
      look(rest);
      for (std::size_t i = 0; k + i < n; ++i) {
        cell[k + i] = static_cast<unsigned short>(at[i]);
        ++counts[at[i]];
      }
    }
    column_spread r;
    for (int i = 0; i < 16; ++i) r.square += square[i / W][i % W], r.fourth += fourth[i / W][i % W];
    return r;
  }
  static constexpr draw_table table() { return {&fill, &add, &sums, &spread}; }

 private:
  MAKEGOOD_INLINE static D drawn(const random::schedule<B>& key, std::uint64_t from, unsigned quantity) {
    typename lanes_bits<L::width>::vector a, b;
    for (int i = 0; i < L::width; ++i) {
      a[i] = static_cast<std::uint64_t>(i);
      b[i] = static_cast<std::uint64_t>(i + L::width);
    }
    const B places{lanes_bits<L::width>(a), lanes_bits<L::width>(b)};
    return random::draw<B>(places + B(from), quantity, key);
  }
  /// Numbers of one counter each, two, or four.
  template <class Make>
  MAKEGOOD_INLINE static void each_one(const draw_columns& c, const random::schedule<B>& key, const Make& make) {
    const K centre(c.kind.centre), scale(c.kind.scale);
    for (std::size_t k = 0; k < c.n; k += W) (centre + scale * make(drawn(key, c.first + k, c.kind.quantity))).store(c.to + k);
  }
  template <class Make>
  MAKEGOOD_INLINE static void each_two(const draw_columns& c, const random::schedule<B>& key, const Make& make) {
    const K centre(c.kind.centre), scale(c.kind.scale);
    for (std::size_t k = 0; k < c.n; k += 64)
      for (std::size_t g = 0; g < 32; g += W) {
        const D d = drawn(key, (c.first + k) / 2 + g, c.kind.quantity);
        (centre + scale * make(d.first)).store(c.to + k + g);
        (centre + scale * make(d.second)).store(c.to + k + 32 + g);
      }
  }
  [[gnu::noinline]] static void fill_with(const draw_columns& c, const random::schedule<B>& key) {
    const K extra(c.kind.extra);
    switch (c.kind.is) {
      case draw_kind::shape::normal: {
        const K centre(c.kind.centre), scale(c.kind.scale);
        for (std::size_t k = 0; k < c.n; k += 64)
          for (std::size_t g = 0; g < 16; g += W) {
            const D d = drawn(key, (c.first + k) / 4 + g, c.kind.quantity);
            const auto a = random::normals<K>(d.first), b = random::normals<K>(d.second);
            (centre + scale * a.first).store(c.to + k + g);
            (centre + scale * a.second).store(c.to + k + 16 + g);
            (centre + scale * b.first).store(c.to + k + 32 + g);
            (centre + scale * b.second).store(c.to + k + 48 + g);
          }
        return;
      }
      case draw_kind::shape::rectangular: return each_two(c, key, [](const B& x) MAKEGOOD_LAMBDA_INLINE { return random::centred<K>(x); });
      case draw_kind::shape::arcsine: return each_two(c, key, [](const B& x) MAKEGOOD_LAMBDA_INLINE { return random::circle<K>(x).second; });
      case draw_kind::shape::exponential:
        return each_two(c, key, [](const B& x) MAKEGOOD_LAMBDA_INLINE { return K(0.5) * random::minus_two_log(random::uniform<K>(x)); });
      case draw_kind::shape::trapezoidal: return each_one(c, key, [&](const D& x) MAKEGOOD_LAMBDA_INLINE { return random::trapezoidal<K>(x, extra); });
      case draw_kind::shape::student: return each_one(c, key, [&](const D& x) MAKEGOOD_LAMBDA_INLINE { return random::student<K>(x, extra); });
    }
  }
};

}  // namespace MAKEGOOD_ISA_TAG
}  // namespace v1
}  // namespace makegood

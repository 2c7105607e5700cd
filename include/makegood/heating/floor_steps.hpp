// SPDX-License-Identifier: MIT
// Floors with a linear surface loss and equal steps: one factorisation, then every step a sweep from both ends to the middle and back.
// Subject: heating (kernel). Includes nothing but what the kind of number brings: an object compiled for one instruction set leaks nothing.
#pragma once

namespace makegood {
inline namespace v1 {
namespace heating {

/// The same for the end that begins at the surface and the end that begins at the bottom.
template <class T>
struct both_ends {
  T top, bottom;

  friend both_ends operator+(const both_ends& a, const both_ends& b) { return {a.top + b.top, a.bottom + b.bottom}; }
  friend both_ends operator-(const both_ends& a, const both_ends& b) { return {a.top - b.top, a.bottom - b.bottom}; }
  friend both_ends operator*(const both_ends& a, const both_ends& b) { return {a.top * b.top, a.bottom * b.bottom}; }
};

/// One or several floors (T: a number, or lanes of numbers) of 2 × half nodes; node k of the top end is node k, of the bottom end node
/// 2 × half - 1 - k. Unknown is z = √C·T, so that the matrix I + θK, θ = half a step, is symmetric and one factor serves both sweeps.
template <class T>
struct equal_steps {
  both_ends<T>* z;               ///< in and out
  const both_ends<T>* s;         ///< half a step of what flows in from outside, over √C
  const both_ends<T>* l;         ///< factor of node k against node k - 1; l[0] is not read
  const both_ends<T>* l2;        ///< l[k]·l[k-1]
  const both_ends<T>* inverse;   ///< 1 / diagonal of the factorised matrix
  both_ends<T>* y;               ///< room for the sweep
  both_ends<T> own, other;       ///< the 2 × 2 inverse in the middle: x = own·y + other·(y of the other end)
  int half;                      ///< from 3
};

/// Columns of numbers for so many floors side by side: that of node k, end e (0: top) and floor j stands at [(2 k + e) floors + j].
struct floor_columns {
  double* z;
  const double *s, *l, *l2, *inverse;
  double* y;
  const double *own, *other;  ///< 2 × floors each
  int half;
};

/// `steps` times x = (I + θK)⁻¹ (z + s); then z becomes 2x - z, which is a step of the implicit midpoint rule (Crank-Nicolson for a linear
/// floor), or x, which is half a step of the backward Euler rule and damps what a sudden start excites. The recurrences look two nodes
/// ahead: y[k] = g + l[k] l[k-1] y[k-2], so that two chains from each end run side by side. All kinds of number do the same operations in
/// the same order.
template <bool Damped, class T>
inline void march(const equal_steps<T>& m, int steps) {
  using V = both_ends<T>;
  V *z = m.z, *y = m.y;
  const V *s = m.s, *l = m.l, *l2 = m.l2, *e = m.inverse;
  const int h = m.half;
  const auto keep = [&](int k, const V& x) {
    if constexpr (Damped) z[k] = x;
    else z[k] = (x + x) - z[k];
  };
  for (int n = 0; n < steps; ++n) {
    V before = z[1] + s[1];
    V p0 = z[0] + s[0];
    V p1 = before - l[1] * p0;
    y[0] = p0;
    y[1] = p1;
    int k = 2;
    for (; k + 1 < h; k += 2) {
      const V a = z[k] + s[k], b = z[k + 1] + s[k + 1];
      p0 = (a - l[k] * before) + l2[k] * p0;
      p1 = (b - l[k + 1] * a) + l2[k + 1] * p1;
      y[k] = p0;
      y[k + 1] = p1;
      before = b;
    }
    V last = p1;
    if (k < h) {
      last = ((z[k] + s[k]) - l[k] * before) + l2[k] * p0;
      y[k] = last;
    }
    const V x = m.own * last + m.other * V{last.bottom, last.top};
    keep(h - 1, x);
    V after = e[h - 2] * y[h - 2];
    V x1 = x, x0 = after - l[h - 1] * x;
    keep(h - 2, x0);
    k = h - 3;
    for (; k > 0; k -= 2) {
      const V a = e[k] * y[k], b = e[k - 1] * y[k - 1];
      x1 = (a - l[k + 1] * after) + l2[k + 2] * x1;
      x0 = (b - l[k] * a) + l2[k + 1] * x0;
      keep(k, x1);
      keep(k - 1, x0);
      after = b;
    }
    if (k == 0) {
      x1 = (e[0] * y[0] - l[1] * after) + l2[2] * x1;
      keep(0, x1);
    }
  }
}

template <class T>
inline void march(const floor_columns& c, int steps, bool damped) {
  using ends = both_ends<T>;
  const auto as = [](const double* p) { return reinterpret_cast<const ends*>(p); };
  const equal_steps<T> m{reinterpret_cast<ends*>(c.z), as(c.s), as(c.l), as(c.l2), as(c.inverse), reinterpret_cast<ends*>(c.y), *as(c.own),
      *as(c.other), c.half};
  if (damped) march<true>(m, steps);
  else march<false>(m, steps);
}

}  // namespace heating
}  // namespace v1
}  // namespace makegood

# SPDX-License-Identifier: MIT
"""Prints the coefficients of include/makegood/scalar/vector_math.hpp and random.hpp, and the error of each polynomial (needs mpmath).

Every polynomial interpolates its function at Chebyshev nodes of the stated interval (computed with 60 digits), which is
within a small factor of the best polynomial of that degree; one degree is spent on that factor. The coefficients are then
rounded to double, and the error printed is that of the rounded polynomial. Nothing else is fitted or taken from elsewhere.
"""
import mpmath as mp

mp.mp.dps = 60


def fit(name, fn, low, high, degree):
    low, high = mp.mpf(low), mp.mpf(high)
    nodes = [(low + high) / 2 + (high - low) / 2 * mp.cos(mp.pi * (2 * i + 1) / (2 * (degree + 1))) for i in range(degree + 1)]
    matrix = mp.matrix(degree + 1, degree + 1)
    for i, x in enumerate(nodes):
        for j in range(degree + 1):
            matrix[i, j] = x**j
    solution = mp.lu_solve(matrix, mp.matrix([fn(x) for x in nodes]))
    exact = [solution[j] for j in range(degree + 1)]
    rounded = [mp.mpf(float(c)) for c in exact]
    grid = [low + (high - low) * mp.mpf(i) / 400 for i in range(401)]

    def worst(coefficients):
        return max(abs(mp.polyval(coefficients[::-1], x) - fn(x)) for x in grid)

    print(f"// {name}: [{mp.nstr(low, 6)}, {mp.nstr(high, 6)}], degree {degree}, error 2^{mp.nstr(mp.log(worst(exact), 2), 4)}, "
          f"rounded 2^{mp.nstr(mp.log(worst(rounded), 2), 4)}")
    for c in rounded:
        print(f"  {float(c)!r},")


def series(fn, at_zero):
    """fn, with its limit at 0 (the quotients below are 0/0 there)."""
    return lambda x: fn(x) if abs(x) > mp.mpf(10) ** -20 else mp.mpf(at_zero)


def parts(name, x, bits):
    """Splits x into a sum of doubles with the given numbers of significant bits (the last one is a full double)."""
    pieces = []
    rest = x
    for b in bits:
        step = mp.mpf(2) ** (mp.floor(mp.log(abs(rest), 2)) - b + 1)
        piece = mp.floor(rest / step) * step  # towards zero: the rest keeps its sign
        pieces.append(float(piece))
        rest -= piece
    pieces.append(float(rest))
    print(f"// {name}")
    for p in pieces:
        print(f"  {p!r},  // {p.hex()}")


def logarithm(z):
    s = mp.sqrt(z)
    return (mp.log((1 + s) / (1 - s)) / s - 2) / z


if __name__ == "__main__":
    edge = (mp.sqrt(2) - 1) / (mp.sqrt(2) + 1)
    fit("logarithm: (ln((1+s)/(1-s)) - 2 s) / s^3 in z = s^2", series(logarithm, mp.mpf(2) / 3), 0, edge**2 * 1.0001, 6)
    fit("logarithm, long: (1.5 ln((1+s)/(1-s)) / s - 3 - z) / z^2 in z = s^2",
        lambda z: (logarithm(z) * mp.mpf(3) / 2 - 1) / z, mp.mpf(10) ** -12, edge**2 * 1.0001, 7)
    half_ln2 = mp.log(2) / 2 * 1.0001
    fit("exponential: (exp(r) - 1 - r) / r^2", series(lambda r: (mp.exp(r) - 1 - r) / r**2, 0.5), -half_ln2, half_ln2, 9)
    fit("exponential, fine: the same", series(lambda r: (mp.exp(r) - 1 - r) / r**2, 0.5), -half_ln2, half_ln2, 10)
    quarter_pi = mp.pi / 4 * 1.0001
    fit("sine: (sin r - r) / r^3 in z = r^2", lambda z: (mp.sin(mp.sqrt(z)) - mp.sqrt(z)) / mp.sqrt(z) ** 3, mp.mpf(10) ** -12, quarter_pi**2, 6)
    fit("cosine: (cos r - 1 + z/2) / z^2 in z = r^2", lambda z: (mp.cos(mp.sqrt(z)) - 1 + z / 2) / z**2, mp.mpf(10) ** -12, quarter_pi**2, 6)
    fit("inverse cube root of m", lambda m: m ** (-mp.mpf(1) / 3), mp.sqrt(mp.mpf(1) / 2), mp.sqrt(2), 5)
    fit("error function: erf(x)/x - 1 in z = x^2", lambda z: mp.erf(mp.sqrt(z)) / mp.sqrt(z) - 1, mp.mpf(10) ** -12, mp.mpf("0.3907"), 9)
    scale = mp.mpf("3.5")

    def scaled(t):
        x = scale * (1 + t) / (1 - t)
        return (1 + 2 * x) * mp.exp(x * x) * mp.erfc(x)

    fit("complementary error function: (1 + 2 x) exp(x^2) erfc(x) in t = (x - 3.5) / (x + 3.5), x in [0.45, 28]", scaled,
        (mp.mpf("0.45") - scale) / (mp.mpf("0.45") + scale), (28 - scale) / (28 + scale), 22)
    # draws: scalar/random.hpp
    fit("draws: -2 (ln((1+s)/(1-s)) - 2 s) / s^3 in z = s^2", series(lambda z: -2 * logarithm(z), -mp.mpf(4) / 3), 0, edge**2 * 1.0001, 3)
    right_angle = mp.pi / 2
    fit("draws: sin(t pi/2) / t in z = t^2", series(lambda z: mp.sin(right_angle * mp.sqrt(z)) / mp.sqrt(z), right_angle), 0, mp.mpf(1) / 4 * 1.0001, 4)
    fit("draws: cos(t pi/2) in z = t^2", lambda z: mp.cos(right_angle * mp.sqrt(z)), 0, mp.mpf(1) / 4 * 1.0001, 4)
    parts("ln 2", mp.log(2), [32])
    parts("1 / ln 2", 1 / mp.log(2), [])
    parts("pi / 2", mp.pi / 2, [33, 33, 33])
    parts("2 / pi", 2 / mp.pi, [])
    parts("1 / ln 10", 1 / mp.log(10), [21])
    parts("log10 2", mp.log10(2), [40])
    parts("2 / 3", mp.mpf(2) / 3, [26])
    parts("2^(1/3)", mp.cbrt(2), [])

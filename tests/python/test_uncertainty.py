# SPDX-License-Identifier: MIT
"""Numbers with doubt from Python: quantiles against SciPy and mpmath, arrays, second order, Monte Carlo, the front door."""

import math
import warnings

import numpy as np
import pytest

import makegood as mg
from makegood import distribution


@pytest.mark.parametrize("dof", [1, 1.5, 2, 3, 4.7, 9, 16, 25.6, 59.9, 60.1, 120, 999.5, 1e5 - 1, 1e5, 1e7])
@pytest.mark.parametrize("probability", [0.01, 0.5, 0.6827, 0.9, 0.95, 0.9545, 0.99, 0.999, 1 - 1e-6, 1 - 1e-9])
def test_student_factor_against_exact_arithmetic(dof, probability):
    mp = pytest.importorskip("mpmath")
    with mp.workdps(40):
        t, nu = mp.mpf(mg.coverage_factor(probability, dof)), mp.mpf(dof)
        wanted = (1 - mp.mpf(probability)) / 2
        if dof < 5000:
            tail = mp.betainc(nu / 2, mp.mpf(1) / 2, 0, nu / (nu + t * t), regularized=True) / 2
        else:  # the integral converges where the series does not
            density = lambda x: (1 + x * x / nu) ** (-(nu + 1) / 2)
            height = mp.gammaprod([(nu + 1) / 2], [nu / 2]) / mp.sqrt(nu * mp.pi)
            tail = mp.mpf(1) / 2 - height * mp.quad(density, [0, t])
        slope = mp.exp(mp.loggamma((nu + 1) / 2) - mp.loggamma(nu / 2)) / mp.sqrt(nu * mp.pi) * (1 + t * t / nu) ** (-(nu + 1) / 2)
        assert abs(tail - wanted) / slope / t < 1e-10  # how far the factor itself is off


def test_student_factor_against_scipy():
    stats = pytest.importorskip("scipy.stats")
    for dof in (1, 2, 5, 10, 18.5, 50, 300):
        for p in (0.5, 0.9, 0.95, 0.99, 0.999):
            assert mg.coverage_factor(p, dof) == pytest.approx(stats.t.ppf(0.5 + p / 2, dof), rel=1e-10)
    assert mg.coverage_factor(0.95) == pytest.approx(stats.norm.ppf(0.975), rel=1e-12)
    for bad in (0.0, 1.0, -1.0, math.nan):
        with pytest.raises(mg.RangeError):
            mg.coverage_factor(bad)
    with pytest.raises(mg.RangeError):
        mg.coverage_factor(0.95, 0.2)


def test_degrees_of_freedom_go_through_formulas():
    v = mg.Measured(230.0, 1.0, "volt", dof=5)
    r = mg.heating.element_resistance(mg.Measured(1000.0, 10.0, "watt", dof=8), v)
    slopes = mg.heating.element_resistance.sensitivities(1000.0, 230.0)
    parts = [10.0 * slopes["power_w"], 1.0 * slopes["voltage_v"]]
    wanted = sum(p * p for p in parts) ** 2 / (parts[0] ** 4 / 8 + parts[1] ** 4 / 5)
    assert r.dof == pytest.approx(wanted)
    assert r.coverage_factor() == pytest.approx(mg.coverage_factor(0.95, math.floor(wanted)))
    low, high = r.interval(0.99)
    assert high - r.value == pytest.approx(r.coverage_factor(0.99) * r.standard_uncertainty)
    assert low < r.value < high


def test_covariance():
    a, b = mg.measured_together([[1.0, 1.2, 1.1, 0.9], [2.0, 2.3, 2.2, 2.1]], "bench")
    x, y = np.array([[1.0, 1.2, 1.1, 0.9], [2.0, 2.3, 2.2, 2.1]])
    assert mg.covariance(a, b) == pytest.approx(np.cov(x, y)[0, 1] / 4)
    assert mg.correlation(a, b) == pytest.approx(np.corrcoef(x, y)[0, 1])
    assert a.dof == pytest.approx(3)
    c, d = mg.measured_with_covariance([1.0, 2.0], [[4.0, -1.0], [-1.0, 1.0]], "pair")
    assert mg.covariance(c, d) == pytest.approx(-1.0)
    with pytest.raises(mg.RangeError):
        mg.measured_with_covariance([1.0, 2.0], [[1.0, 2.0], [2.0, 1.0]])


def test_second_order_is_asked_for_by_order():
    t = mg.Measured(20.0, 15.0, "t")
    first = mg.air.saturation_pressure(t)
    with pytest.warns(mg.CurvatureWarning, match="second"):
        second = mg.air.saturation_pressure(t, order=2)
    assert second.standard_uncertainty > 1.05 * first.standard_uncertainty
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        near = mg.air.saturation_pressure(mg.Measured(20.0, 0.1, "t"), order=2)
        assert near.standard_uncertainty == pytest.approx(mg.air.saturation_pressure(mg.Measured(20.0, 0.1, "t")).standard_uncertainty, rel=1e-3)
    with pytest.raises(ValueError):
        mg.air.saturation_pressure(t, order=3)
    with pytest.raises(TypeError):
        mg.air.saturation_pressure(20.0, order=2)


def rows_of(n=50):
    rng = np.random.default_rng(5)
    return rng.uniform(5000, 20000, n), rng.uniform(1, 100, n)


def test_arrays_of_measured_are_their_rows():
    ohm, u = rows_of()
    many = mg.Measured(ohm, u, "meter")
    assert isinstance(many, mg.MeasuredArray) and not isinstance(many, mg.Measured)
    beta = mg.Measured(3950.0, 30.0, "maker", dof=7)
    other = mg.Measured(np.full(50, 10000.0), np.linspace(0, 50, 50), "meter")  # the same source: it adds up or cancels
    for given in ((many, 10000.0, 25.0, 3950.0), (many, other, 25.0, beta), (ohm, 10000.0, 25.0, beta), (many, 10000.0, np.full(50, 25.0), beta)):
        got = mg.sensing.ntc_temperature(*given)
        assert isinstance(got, mg.MeasuredArray)
        for i in range(50):
            one = mg.sensing.ntc_temperature(*(v[i] if getattr(v, "ndim", 0) else v for v in given))
            row = got[i]
            assert row.value == one.value == got.value[i]
            assert row.standard_uncertainty == pytest.approx(one.standard_uncertainty, rel=1e-14)
            assert set(row.sources) == set(one.sources)
            if math.isfinite(one.dof):
                assert row.dof == pytest.approx(one.dof)
        assert got.standard_uncertainty == pytest.approx([got[i].standard_uncertainty for i in range(50)])
        assert got.expanded_uncertainty == pytest.approx(2 * got.standard_uncertainty)
    assert many[3:6].shape == (3,) and len(many) == 50
    grid = mg.sensing.ntc_temperature(mg.Measured(ohm.reshape(5, 10), u.reshape(5, 10), "meter"), 10000.0, 25.0, 3950.0)
    assert grid.shape == (5, 10) and grid[2, 3].value == mg.sensing.ntc_temperature(ohm[23], 10000.0, 25.0, 3950.0)


def test_arrays_of_measured_refuse_nonsense():
    with pytest.raises(mg.RangeError):
        mg.Measured([1.0, 2.0], [0.1, -0.1])
    with pytest.raises(ValueError, match="shapes"):
        mg.Measured([1.0, 2.0], [0.1, 0.1, 0.1])
    with pytest.raises(mg.RangeError):
        mg.sensing.ntc_temperature(mg.Measured([10000.0, -1.0], 10.0), 10000.0, 25.0, 3950.0)
    got = mg.sensing.ntc_temperature(mg.Measured([10000.0, -1.0], 10.0), 10000.0, 25.0, 3950.0, errors="nan")
    assert math.isnan(got.value[1]) and got.value[0] == 25.0
    with pytest.raises(TypeError):
        mg.sensing.ntc_temperature(mg.Measured([10000.0], 10.0), 10000.0, 25.0, 3950.0, out=np.empty(1))
    assert isinstance(mg.Measured(1.0, 0.1), mg.Measured)
    assert isinstance(mg.Measured(1, 0.1, source="x", dof=3), mg.Measured)


def test_checks_over_rows_take_arrays_of_measured():
    rng = np.random.default_rng(1)
    drop = mg.Measured(rng.uniform(4, 16, 40), rng.uniform(0.05, 0.5, 40), "tape")
    volts = mg.Measured(rng.uniform(225, 240, 40), 1.5, "tape")  # shared with the drop
    check, book = mg.electrical.check_voltage_drop, "bs7671:2018+a2"
    got = check(drop, volts, "other", book)
    for i in range(40):
        one = check(drop[i], volts[i], "other", book)
        assert got[i].outcome == one.outcome == mg.Verdicts.outcomes[got.outcome[i]]
        assert got.standard_uncertainty[i] == pytest.approx(one.standard_uncertainty, rel=1e-13)
        assert got[i].margin == one.margin == got.margin[i]
    apart = check(drop, mg.Measured(volts.value, 1.5, "another"), "other", book)
    assert not np.allclose(apart.standard_uncertainty, got.standard_uncertainty)
    holed = drop.value.copy()
    holed[3] = np.nan
    assert check(mg.Measured(holed, 0.1, "tape"), 230.0, "other", book).words("reason")[3] == "not measured"


NTC = (distribution.rectangular(9000, 11000), mg.Measured(10000.0, 50.0, "bridge"), 25.0, mg.Measured(3950.0, 20.0, "maker"))


def test_monte_carlo():
    f = mg.sensing.ntc_temperature
    r = f.monte_carlo(*NTC)
    assert r.converged and r.seed == 1 and r.refused == 0 and r.trials % 10240 == 0
    again = f.monte_carlo(*NTC, threads=2)
    assert (again.mean, again.interval, again.trials) == (r.mean, r.interval, r.trials)
    assert f.monte_carlo(*NTC, seed=2).mean != r.mean
    fixed = f.monte_carlo(resistance_ohm=NTC[0], reference_ohm=NTC[1], reference_c=25, beta_k=NTC[3], trials=300_000)
    assert fixed.trials == 300_000
    # the same drawn by NumPy
    rng = np.random.default_rng(3)
    n = 300_000
    y = f(rng.uniform(9000, 11000, n), rng.normal(10000, 50, n), 25.0, rng.normal(3950, 20, n))
    assert fixed.mean == pytest.approx(y.mean(), abs=5 * y.std() / math.sqrt(n))
    assert fixed.standard_uncertainty == pytest.approx(y.std(), rel=0.01)
    assert fixed.interval == pytest.approx(np.quantile(y, [0.025, 0.975]), abs=0.02 * y.std())
    counts, low, width = fixed.histogram()
    assert counts.sum() == n and width > 0 and low < fixed.interval[0]
    assert fixed.shortest_interval[1] - fixed.shortest_interval[0] <= fixed.interval[1] - fixed.interval[0] + 2 * width
    assert "converged" not in repr(r) and "MonteCarlo(" in repr(r)


def test_monte_carlo_refuses_nonsense():
    f = mg.sensing.ntc_temperature
    for named in ({"trials": 10}, {"trials": True}, {"digits": 0}, {"probability": 1.0}, {"probability": math.nan}, {"seed": -1}, {"threads": 0}):
        with pytest.raises(ValueError):
            f.monte_carlo(*NTC, **named)
    with pytest.raises(TypeError):
        f.monte_carlo("x", 10000.0, 25.0, 3950.0)
    with pytest.raises(TypeError):
        f.monte_carlo(*NTC, trails=1000)
    with pytest.raises(mg.RangeError, match="not permitted"):
        f.monte_carlo(mg.Measured(100.0, 100.0), 10000.0, 25.0, 3950.0)
    with pytest.raises(mg.RangeError):
        f.monte_carlo(-5.0, 10000.0, 25.0, 3950.0)
    with pytest.raises(TypeError):
        mg.electrical.check_voltage_drop.monte_carlo()
    for bad in (lambda: distribution.rectangular(1, 0), lambda: distribution.normal(0, -1), lambda: distribution.student(0, 1, 0), lambda: distribution.exponential(math.inf)):
        with pytest.raises(mg.RangeError):
            bad()


def test_the_front_door():
    straight = mg.electrical.voltage_drop.propagate(44.0, mg.Measured(16.0, 0.1, "clamp"), mg.Measured(22.0, 0.1, "tape"))
    assert straight.validated and straight.method == "first order" and "holds" in straight.word
    assert straight.value == mg.electrical.voltage_drop(44.0, 16.0, 22.0)
    # the square of a number that is known to a quarter of itself: its mean and variance are known in closed form
    curved = mg.heating.element_resistance.propagate(1000.0, mg.Measured(8.0, 2.0, "volt"))
    assert not curved.validated and curved.method == "Monte Carlo" and "does not hold" in curved.word
    assert curved.value == curved.monte_carlo.mean
    assert curved.value == pytest.approx((64 + 4) / 1000, rel=0.02)
    assert curved.standard_uncertainty == pytest.approx(math.sqrt(4 * 64 * 4 + 2 * 16) / 1000, rel=0.02)


def test_distributions_say_what_they_are():
    assert repr(distribution.rectangular(1, 2)) == "distribution.rectangular(1, 2)"
    assert distribution.rectangular(0, 1).standard_uncertainty == pytest.approx(1 / math.sqrt(12))
    assert distribution.trapezoidal(-1, 1, 1).standard_uncertainty == pytest.approx(1 / math.sqrt(3))
    assert distribution.exponential(3).mean == 3
    assert distribution.student(0, 1, 2).standard_uncertainty == math.inf

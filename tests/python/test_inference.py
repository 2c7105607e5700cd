# SPDX-License-Identifier: MIT
"""The inference kernel through Python, against Monte Carlo of an independent kind."""

from __future__ import annotations

import math

import numpy as np
import pytest

import makegood
from makegood.inference import Explanations, Hypothesis, Observation, Test, formula, log_uniform, normal, uniform

DRAWS = 400_000


def density(x, mean, sd):
    return np.exp(-0.5 * ((x - mean) / sd) ** 2) / sd / math.sqrt(2 * math.pi)


def mat(form):
    tolerance = {"tolerance": normal(1, 0.03)}
    if form == "formula":
        of = lambda power: formula("heating.element_resistance", power_w=power, voltage_v=230, times="tolerance")  # noqa: E731
    else:
        of = lambda power: lambda t: 230**2 / power * t  # noqa: E731
    return [
        Hypothesis("sound", 0.80, tolerance, {"r": of(450)}),
        Hypothesis("wrong_mat", 0.08, tolerance, {"r": of(375)}),
        Hypothesis("shunt", 0.07, tolerance, {"r": lambda t: 1 / (1 / (230**2 / 450 * t) + 1e-3)}),
    ]


METER = {"sources": {"meter": 0.2 / math.sqrt(3)}, "gains": {"meter": 0.008 / math.sqrt(3)}}


@pytest.mark.parametrize("form", ["formula", "callable"])
def test_the_worked_mat(form):
    e = Explanations([Test("r", 10, 1000, broad="uniform", outcomes_share=0)], mat(form), none_prior=0.05, method="first_order")
    found = e.explain([Observation("r", 124.9, **METER)])
    assert list(found.posterior) == ["sound", "wrong_mat", "shunt", "none_of_these"]
    assert found.posterior["sound"] == pytest.approx(0.994832, abs=2e-6)
    assert found.posterior["wrong_mat"] == pytest.approx(0.000577, abs=2e-6)
    assert found.posterior["none_of_these"] == pytest.approx(0.004591, abs=2e-6)
    assert found.leading == "sound" and found.robust
    assert e.predicted("sound")[0].standard_uncertainty == pytest.approx(3.58761, abs=5e-6)
    assert not e.conflict().conflict


def test_several_readings_against_monte_carlo():
    """Two temperatures, a shared gain, an own error, an over-range reading and a wide joint: averages over draws of all that is hidden."""
    parameters = {"cold_c": normal(21, 0.5), "warm_c": normal(32, 0.5), "curve": normal(1, 0.01)}

    def curve(t, r25, beta):
        return r25 * np.exp(beta * (1 / (t + 273.15) - 1 / 298.15))

    def with_joint(which):
        return formula("sensing.ntc_resistance", temperature_c=which, reference_ohm=10, reference_c=25, beta_k=3950, times="curve", plus="joint")

    def sound(which, r25, beta):
        return formula("sensing.ntc_resistance", temperature_c=which, reference_ohm=r25, reference_c=25, beta_k=beta, times="curve")

    e = Explanations(
        [Test("cold", 0.1, 11.5), Test("warm", 0.1, 11.5)],
        [
            Hypothesis("10k", 0.5, parameters, {"cold": sound("cold_c", 10, 3950), "warm": sound("warm_c", 10, 3950)}),
            Hypothesis("12k", 0.2, parameters, {"cold": sound("cold_c", 12, 3740), "warm": sound("warm_c", 12, 3740)}),
            Hypothesis("joint", 0.3, {**parameters, "joint": log_uniform(0.1, 5)}, {"cold": with_joint("cold_c"), "warm": with_joint("warm_c")}),
        ],
        none_prior=0.02,
    )
    random = np.random.default_rng(1)
    t1, t2, g = (random.normal(m, s, DRAWS) for m, s in ((21, 0.5), (32, 0.5), (1, 0.01)))
    gain = 1 + 0.005 * random.standard_normal(DRAWS)
    joint = np.exp(random.uniform(math.log(0.1), math.log(5), DRAWS))
    models = [
        (curve(t1, 10, 3950) * g, curve(t2, 10, 3950) * g),
        (curve(t1, 12, 3740) * g, curve(t2, 12, 3740) * g),
        (curve(t1, 10, 3950) * g + joint, curve(t2, 10, 3950) * g + joint),
    ]
    phi = np.vectorize(lambda z: 0.5 * math.erfc(-z / math.sqrt(2)))
    # None: over range, above 11.5. Cases in which the average itself is known to a few thousandths
    for cold, warm in ((11.2, 7.3), (None, 7.3), (None, 7.7), (None, 8.3)):
        likelihood = []
        for first, second in models:
            a = phi((first * gain - 11.5) / 0.1) if cold is None else density(cold, first * gain, 0.1)
            likelihood.append(np.mean(a * density(warm, second * gain, 0.1)))
        broad = 0.8 / math.log(115)
        likelihood.append((0.1 if cold is None else broad / cold) * broad / warm)
        wanted = np.array([0.5, 0.2, 0.3, 0.02 / 0.98]) * likelihood
        wanted /= wanted.sum()
        gains = {"gain": 0.005}
        first = (
            Observation.above("cold", 11.5, sources={"cold": 0.1}, gains=gains)
            if cold is None
            else Observation("cold", cold, sources={"cold": 0.1}, gains=gains)
        )
        found = e.explain([first, Observation("warm", warm, sources={"warm": 0.1}, gains=gains)])
        assert list(found.posterior.values()) == pytest.approx(wanted, abs=0.005), (warm, cold)


def test_gaussian_cases_against_the_closed_form():
    """Linear models: the evidence is a multivariate normal, by NumPy's own determinant and solution."""
    random = np.random.default_rng(3)
    for case in range(20):
        n = 1 + case % 6
        names = [f"t{i}" for i in range(n)]
        scale, offset = random.uniform(10, 100, n), random.uniform(0, 2, n)
        hypotheses = [
            Hypothesis(
                f"h{k}", random.uniform(0.1, 1), {"a": normal(1 + 0.02 * k, 0.03), "b": normal(0.5, 0.2)},
                {t: (lambda a, b, s=s, o=o: s * a + o * b) for t, s, o in zip(names, scale, offset)},
            )
            for k in range(3)
        ]  # fmt: skip
        own, common = random.uniform(0.1, 1, n), random.uniform(0, 1, n)
        x = scale * random.normal(1.02, 0.03) + offset * 0.5 + common * random.standard_normal() + own * random.standard_normal(n)
        e = Explanations([Test(t, 0.1, 1e3) for t in names], hypotheses, none_prior=0.02)
        found = e.explain([Observation(t, v, sources={t: o, "common": c}) for t, v, o, c in zip(names, x, own, common)])
        jacobian = np.stack([scale, offset], axis=1)
        covariance = jacobian @ np.diag([0.03**2, 0.2**2]) @ jacobian.T + np.outer(common, common) + np.diag(own**2)
        for k in range(3):
            r = x - jacobian @ [1 + 0.02 * k, 0.5]
            wanted = -0.5 * (r @ np.linalg.solve(covariance, r) + np.linalg.slogdet(2 * math.pi * covariance)[1])
            assert found.log_likelihood[f"h{k}"] == pytest.approx(wanted, abs=1e-6)
            assert found.method[f"h{k}"] == "first_order"


def test_readings_of_a_meter_and_outcomes():
    e = Explanations(
        [Test("trip_ms", 1, 300, ["no_trip"]), Test("r", 1, 1000)],
        [
            Hypothesis("sound", 0.9, {"t": uniform(15, 40)}, {"trip_ms": ((lambda t: t), {"no_trip": 0.001}), "r": 100.0}),
            Hypothesis("stuck", 0.1, {}, {"trip_ms": {"no_trip": 0.95}}, danger="life"),
        ],
    )
    found = e.explain([Observation("trip_ms", makegood.Reading.no_trip(), reads="rcd_time")])
    assert found.posterior["stuck"] > 0.95
    found = e.explain([Observation("trip_ms", makegood.Reading(25.0), reads="rcd_time"), Observation("r", makegood.Measured(100.2, 0.5, "meter"))])
    assert found.posterior["sound"] > 0.95
    assert e.explain([]).posterior["stuck"] == pytest.approx(0.095)
    after = e.parameter("sound", "t", 20.0)
    assert after.below == pytest.approx(0.2, abs=0.01)


def test_what_is_refused():
    one = [Hypothesis("a", 1, {}, {"r": 2.0})]
    with pytest.raises(makegood.RangeError, match="0.02"):
        Explanations([Test("r", 1, 10)], one, none_prior=0.01)
    with pytest.raises(makegood.RangeError, match="not among the tests"):
        Explanations([Test("x", 1, 10)], one)
    with pytest.raises(makegood.RangeError, match="no reading is exact"):
        Explanations([Test("r", 1, 10)], one).explain([Observation("r", 2.0)])
    with pytest.raises(makegood.RangeError, match="no parameter"):
        Explanations([Test("r", 1, 10)], [Hypothesis("a", 1, {}, {"r": formula("heating.element_resistance", power_w=450, voltage_v="u")})])
    with pytest.raises(ZeroDivisionError):
        Explanations([Test("r", 1, 10)], [Hypothesis("a", 1, {"p": normal(0, 1)}, {"r": lambda p: 1 / (p - p)})])

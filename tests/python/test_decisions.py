# SPDX-License-Identifier: MIT
"""Decision rules, instruments and better readings through the Python door; risks against Monte Carlo of their own."""

import inspect
import math

import numpy as np
import pytest

import makegood
from makegood import Accuracy, DecisionRule, Instrument, Measured, Reading, Readings, air, decision, electrical, heating, sensing

BOOK = "bs7671:2018+a2"


def drop(volts, u=0.5, **how):
    return electrical.check_voltage_drop(Measured(volts, u), 230, "other", BOOK, **how)


def test_a_rule_goes_into_every_check():
    for d in makegood.catalogue():
        if d["kind"] == "check":
            check = getattr(getattr(makegood, d["name"].split(".")[0]), d["name"].split(".")[1])
            assert inspect.signature(check).parameters["rule"].kind == inspect.Parameter.KEYWORD_ONLY
    assert drop(11.3).rule == "default"
    assert drop(11.3, rule="ilac_g8").statement == "conditional pass" and drop(11.3, rule="ilac_g8").outcome == "undecided"
    assert drop(11.3, rule=DecisionRule("simple_acceptance")).outcome == "pass"
    assert drop(10.6, rule=DecisionRule.jcgm106(0.99)).outcome == "undecided" and drop(10.6).outcome == "pass"
    assert drop(10.9, rule="guard_band:0.5").outcome == "pass"
    said = drop(11.3, rule="iso14253").to_dict()["decision"]
    assert said["rule"] == "iso14253" and said["grade"] == "memory" and said["accept"] == 0.83 and said["source"].startswith("ISO 14253-1")
    sensor = sensing.check_sensor(10500.0, 24.0, {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950}, rule="simple_acceptance")
    assert sensor.rule == "simple_acceptance" and sensor.outcome in ("pass", "fail")
    with pytest.raises(makegood.RuleError, match="is not one of"):
        drop(11.3, rule="iso14252")
    with pytest.raises(TypeError, match="rule is a name"):
        drop(11.3, rule=0.95)
    assert [r["name"] for r in makegood.decision_rules()][0] == "default"
    for r in makegood.decision_rules():
        assert r["source"] and r["grade"] and r["text"]


@pytest.mark.parametrize("rule", [r["name"] for r in makegood.decision_rules()] + ["jcgm106:0.999", "guard_band:0.25"])
def test_rules_over_rows(rule):
    volts = np.linspace(9.5, 13.5, 401)
    rows = electrical.check_voltage_drop(Readings(volts, standard_uncertainty=0.5), 230, "other", BOOK, rule=rule)
    assert rows.rule.split(":")[0] == rule.split(":")[0]
    for i in range(0, 401, 7):
        alone = rows[i]
        assert alone.rule == rows.rule
        assert alone.outcome == rows.outcomes[rows.outcome[i]]
        assert alone.probability == rows.probability[i] and alone.margin == rows.margin[i]


def test_the_better_reading():
    v = drop(11.3)
    b = v.better
    assert b["argument"] == "voltage_drop_v" and b["outcome"] == "pass" and b["share"] == pytest.approx(1)
    assert b["standard_uncertainty"] == pytest.approx(0.2 / 1.6749, abs=0.01)  # rounded down to two digits
    assert drop(11.3, b["standard_uncertainty"]).outcome == "pass"
    assert "voltage drop at the design current" in v.settle and v.to_dict()["better"]["now"] == pytest.approx(0.5)
    assert drop(9.0).better is None
    assert drop(11.5).better is None and "limit itself" in drop(11.5).settle
    fine, coarse = Instrument("fine", {"voltage": Accuracy(percent=0.5)}), Instrument("coarse", {"voltage": Accuracy(percent=5)})
    assert v.which_settle([fine, coarse]) == ["fine"]
    with pytest.raises(TypeError):
        v.which_settle(["fine"])


METER = Instrument(
    "tester",
    {
        "loop_impedance": [Accuracy(percent=3, counts=2, resolution=0.01, range=2), Accuracy(percent=5, counts=2, resolution=0.1, range=20)],
        "resistance": Accuracy(percent=1, counts=2, resolution=0.1, nulled=False, leads_ohm=0.2, leads_standard_uncertainty_ohm=0.02),
    },
)


def test_instruments_by_range_alone_and_in_rows():
    ohm = np.array([0.05, 0.8, 1.3, 1.99, 2.0, 2.01, 12.0])
    rows = electrical.check_loop_impedance(Readings(ohm, instrument=METER), 230, 160, BOOK)
    for i, x in enumerate(ohm):
        alone = electrical.check_loop_impedance(Reading(x, instrument=METER), 230, 160, BOOK)
        assert alone.standard_uncertainty == rows.standard_uncertainty[i] == rows[i].standard_uncertainty
        percent, count = (3, 0.01) if x <= 2 else (5, 0.1)
        expected = math.hypot(percent / 100 * x, 2 * count) / math.sqrt(3)
        assert alone.standard_uncertainty == pytest.approx(expected, rel=1e-12)
    assert any("counts of the display" in t for t in electrical.check_loop_impedance(Reading(0.05, instrument=METER), 230, 160, BOOK).notes)
    band = [100.0, 117.0, 130.0]
    rows = heating.check_element_resistance(Readings(band, instrument=METER), 450, 230, "common-practice")
    assert rows.value == pytest.approx(np.array(band) - 0.2)
    for i, x in enumerate(band):
        alone = heating.check_element_resistance(Reading(x, instrument=METER), 450, 230, "common-practice")
        assert (alone.value, alone.standard_uncertainty, alone.probability) == (rows.value[i], rows.standard_uncertainty[i], rows.probability[i])
        assert any("subtracted" in t for t in alone.notes)
    with pytest.raises(makegood.RangeError, match="readings in Ω"):
        electrical.check_insulation(Reading(5.0, Accuracy(percent=1, nulled=False, leads_ohm=0.1)), "up_to_500_v", BOOK)
    with pytest.raises(makegood.RangeError, match="is not one of"):
        Instrument("x", {"ohms": Accuracy(percent=1)})
    with pytest.raises(TypeError):
        Instrument("x", {"resistance": 1.0})
    with pytest.raises(makegood.RangeError):
        Accuracy(percent=-1)
    assert METER.statement("loop_impedance", 3.0).percent == 5 and METER.statement("voltage", 3.0) is None


def test_readings_carry_their_circumstances():
    r = Reading(200.0, instrument="tester", test_voltage_v=500, circuit_state="isolated", time="10:40", supersedes="the first, taken with a lamp in")
    assert (r.test_voltage_v, r.circuit_state, r.time) == (500, "isolated", "10:40") and "lamp" in r.supersedes
    assert Reading(1.0).test_voltage_v is None
    with pytest.raises(makegood.RangeError):
        Reading(1.0, test_voltage_v=-500)
    curve = {"kind": "ntc", "reference_ohm": 10000, "reference_c": 25, "beta_k": 3950}
    v = sensing.check_sensor(Reading(10000.2, instrument=METER), 25.0, curve)  # through a document
    assert v.value == pytest.approx(10000.0) and any("subtracted" in t for t in v.notes)


def test_both_ways_to_read_an_operating_uncertainty():
    v = electrical.check_loop_impedance(Reading(1.0, Accuracy.operating(30, 2019)), 230, 160, BOOK)
    w = electrical.check_loop_impedance(Reading(1.0, Accuracy.operating(30, 2007)), 230, 160, BOOK)
    assert v.standard_uncertainty == pytest.approx(0.15) and "B/2" in v.notes[0]
    assert w.standard_uncertainty == pytest.approx(0.3 / math.sqrt(3)) and "B/√3" in w.notes[0]
    assert "assumed" not in v.notes[0] and electrical.check_loop_impedance(1.0, 230, 160, BOOK).assumed
    assert {l["grade"] for l in makegood.operating_limits} == {"memory"}


def test_common_gain_of_python_instruments():
    volt = Instrument("v", {"voltage": Accuracy(percent=2)})
    ratio = heating.power_at_voltage(1000, volt.measured("voltage", 230, "rated"), volt.measured("voltage", 218, "now"))
    assert ratio.standard_uncertainty == pytest.approx(0, abs=1e-9)
    ohm = Instrument("o", {"resistance": Accuracy(percent=2)})
    total = electrical.earth_fault_loop_impedance(ohm.measured("resistance", 0.35, "Ze"), ohm.measured("resistance", 0.6, "R1+R2"))
    assert total.standard_uncertainty == pytest.approx(0.95 * 0.02 / math.sqrt(3))


RISKS = [
    ({"kind": "normal", "mean": 10, "standard_deviation": 1}, lambda r, n: r.normal(10, 1, n)),
    ({"kind": "gamma", "shape": 4, "rate": 0.4}, lambda r, n: r.gamma(4, 2.5, n)),
    ({"kind": "uniform", "lower": 7, "upper": 13}, lambda r, n: r.uniform(7, 13, n)),
    ({"kind": "lognormal", "log_mean": 2.3, "log_standard_deviation": 0.1}, lambda r, n: r.lognormal(2.3, 0.1, n)),
]


@pytest.mark.parametrize(("prior", "draw"), RISKS, ids=[p["kind"] for p, _ in RISKS])
def test_global_risks_against_sampling(prior, draw):
    n = 400_000
    random = np.random.default_rng(5)
    true = draw(random, n)
    read = true + random.normal(0, 0.4, n)
    got = decision.global_risk(prior, 0.4, 8.5, 11.5, 8.8, 11.3)
    good, accepted = (true >= 8.5) & (true <= 11.5), (read >= 8.8) & (read <= 11.3)
    for name, share in (("consumer_risk", accepted & ~good), ("producer_risk", ~accepted & good), ("nonconforming", ~good), ("accepted", accepted)):
        p = float(np.mean(share))
        assert abs(getattr(got, name) - p) < 4.5 * math.sqrt(p * (1 - p) / n), name
    assert got.converged
    wanted = 0.5 * got.consumer_risk
    limit = decision.acceptance_limit(prior, 0.4, wanted, 8.5, 11.5)
    assert decision.global_risk(prior, 0.4, 8.5, 11.5, limit.lower, limit.upper).consumer_risk == pytest.approx(wanted, rel=1e-6)


def test_models_refuse_nonsense():
    with pytest.raises(makegood.RangeError):
        decision.conformity_probability(1.0, -0.1, None, 2.0)
    with pytest.raises(makegood.RangeError):
        decision.conformity_probability(1.0, 0.1)
    with pytest.raises(makegood.RangeError):
        decision.global_risk({"kind": "normal", "mean": 0, "standard_deviation": 0}, 0.1, 0, 1)
    with pytest.raises(makegood.RangeError):
        decision.global_risk({"kind": "beta"}, 0.1, 0, 1)
    with pytest.raises(makegood.RuleError):
        decision.guard_band(0.1, "none of these")


def test_proving_readings_prove():
    """What proving_reading says is what the check says, at that reading and a little worse."""
    stated = Accuracy(percent=30, coverage_factor=2, basis="operating_2019")
    for rule in ("default", "ilac_g8", "iso14253", "jcgm106:0.99"):
        last = decision.proving_reading(230 * 0.95 / 160, "<=", stated, rule).reading
        judged = [electrical.check_loop_impedance(Reading(x, stated), 230, 160, BOOK, rule=rule).outcome for x in (0.9999 * last, 1.0001 * last)]
        assert judged == ["pass", "undecided"], rule
    first = decision.proving_reading(15, ">=", Accuracy(percent=10), "default").reading
    assert [air.check_extract(Reading(x, Accuracy(percent=10)), "bathroom", "england-adf-2021").outcome for x in (0.9999 * first, 1.0001 * first)] == ["undecided", "pass"]


def test_a_visit_by_a_rule_and_an_instrument_with_ranges():
    visit = makegood.read_visit(
        {
            "format": "makegood-visit-1",
            "title": "one loop",
            "supply": {"earthing": "TN-S", "nominal_voltage_v": 230},
            "instruments": [
                {
                    "id": "tester",
                    "accuracy": [
                        {"reads": "loop_impedance", "percent": 3, "counts": 2, "resolution": 0.01, "range": 2, "nulled": False, "leads_ohm": 0.1},
                        {"reads": "loop_impedance", "percent": 5, "counts": 2, "resolution": 0.1, "range": 20, "nulled": False, "leads_ohm": 0.1},
                    ],
                }
            ],
            "circuits": [{"id": "a", "name": "A", "device": {"operating_current_a": 160}, "loop_impedance_ohm": {"value": 1.42, "instrument": "tester"}}],
        }
    )

    def loop(**how):
        assessment = makegood.assess(visit, rules=BOOK, **how)
        return assessment, next(f for f in assessment.findings if f.verdict.check == "check_loop_impedance")

    assessment, found = loop()
    assert assessment.decision_rule == "default" and found.verdict.value == pytest.approx(1.32)
    assert found.verdict.outcome == "undecided" and found.verdict.better["argument"] == "loop_impedance_ohm"
    assert found.next == found.verdict.settle
    assessment, found = loop(rule="simple_acceptance")
    assert assessment.to_dict()["decision_rule"] == "simple_acceptance" and found.verdict.outcome == "pass"
    _, found = loop(rule="ilac_g8_binary")
    assert found.verdict.outcome == "fail" and "Rejected, since conformity is not proved" in found.plain


def test_visits_say_what_is_wrong_with_an_instrument():
    def problems(**accuracy):
        with pytest.raises(makegood.DocumentError) as e:
            makegood.read_visit(
                {"format": "makegood-visit-1", "title": "t", "supply": {"earthing": "TT", "nominal_voltage_v": 230}, "instruments": [{"id": "m", "accuracy": [accuracy]}]}
            )
        return str(e.value)

    assert "leads_ohm" in problems(reads="resistance", percent=1, nulled=False)
    assert "nulled" in problems(reads="resistance", percent=1, leads_ohm=0.1)
    assert "leads" in problems(reads="insulation", percent=1, nulled=False, leads_ohm=0.1)
    assert "operating_edition" in problems(reads="resistance", limit=1, operating_edition=2019)

# SPDX-License-Identifier: MIT
"""Checks and slopes over arrays, threads, and what crosses the border: shapes, words, masks, states, errors."""

import gc
import math
import multiprocessing
import os
import random
import subprocess
import sys
import warnings

import numpy as np
import pytest

import makegood
from makegood import Accuracy, Measured, Reading, Readings, air, electrical, heating, sensing

BOOK = "bs7671:2018+a2"
COLUMNS = ("value", "lower", "upper", "margin", "standard_uncertainty", "probability")


def same_as_alone(rows):
    """Every row once more, alone: the same outcome and the same bits."""
    flat = {name: getattr(rows, name).ravel() for name in (*COLUMNS, "outcome", "reason", "plain", "limit")}
    for i, v in enumerate(rows):
        assert rows.outcomes[flat["outcome"][i]] == v.outcome
        assert rows.reasons[flat["reason"][i]] == v.reason
        for name in ("limit", *COLUMNS):
            alone, together = getattr(v, name), float(flat[name][i])
            if v.value is None:
                assert math.isnan(together)
            else:
                assert (alone is None and math.isnan(together)) or alone == together, (name, i)


def test_columns_and_words():
    drop = np.array([[5.2, 7.5, np.nan], [6.9, 6.8999, 20.0]])
    kinds = np.array([["lighting", "lighting", "other"], ["lighting", "other", "other"]])
    rows = electrical.check_voltage_drop(drop, 230, kinds, BOOK)
    assert isinstance(rows, makegood.Verdicts) and rows.shape == (2, 3) and len(rows) == 2
    assert rows.words("outcome").tolist() == [["pass", "fail", "undecided"], ["pass", "pass", "fail"]]
    assert rows.words("reason")[0, 2] == "not measured" and rows.words("plain")[0, 2] == ""
    assert rows.count() == {"pass": 3, "fail": 2, "undecided": 1}
    assert rows.passed.sum() == 3 and rows.failed.sum() == 2 and rows.undecided.sum() == 1
    assert rows.limit[0, 0] == pytest.approx(6.9)
    assert set(rows.to_dict()) >= {"outcome", "reason", "value", "limit", "margin", "probability"}
    assert "3 pass, 2 fail, 1 undecided" in repr(rows)
    with pytest.raises(TypeError, match="no truth value"):
        bool(rows)
    same_as_alone(rows)
    alone = rows[1, 2]
    assert alone.worked()[-1]["value"] == alone.limit and alone.source.startswith("BS 7671")


@pytest.mark.parametrize("name", ["check_insulation", "check_rcd_trip"])
def test_states_and_mixed_lists(name):
    check = getattr(electrical, name)
    word = check.describe()["arguments"][1]["one_of"][0]
    list_ = [250.0, None, Reading.above(999), Reading.below(0.05), Reading.no_trip(), Reading.pending(), 0.4]
    rows = check(list_, word, BOOK)
    same_as_alone(rows)
    for i, x in enumerate(list_):
        assert check(x, word, BOOK).outcome == rows.words("outcome")[i]
    coded = check(Readings([250, 0, 999, 0.05, 0, 0, 0.4], states=["value", "not_measured", "above", "below", "no_trip", "pending", "value"]), word, BOOK)
    assert coded.outcome.tolist() == rows.outcome.tolist() and coded.reason.tolist() == rows.reason.tolist()


def test_doubt_of_columns():
    ohm = np.linspace(20, 40, 41)
    bare = heating.check_element_resistance(ohm, 1500, 230, "common-practice")
    stated = heating.check_element_resistance(Readings(ohm, accuracy=Accuracy(percent=0.5, counts=2, resolution=0.1), instrument="meter"), 1500, 230, "common-practice")
    each = heating.check_element_resistance(Readings(ohm, standard_uncertainty=0.01 * ohm), 1500, 230, "common-practice")
    exact = heating.check_element_resistance(Readings(ohm, exact=True), 1500, 230, "common-practice")
    one_for_all = heating.check_element_resistance(ohm, Measured(1500, 20, "plate"), 230, "common-practice")
    for rows in (bare, stated, each, exact, one_for_all):
        same_as_alone(rows)
    assert bare.assumed and one_for_all.assumed and not stated.assumed and not each.assumed and not exact.assumed
    assert (exact.standard_uncertainty == 0).all() and (bare.standard_uncertainty > stated.standard_uncertainty).all()
    assert exact.undecided.sum() == 0 < stated.undecided.sum() <= bare.undecided.sum()
    # two readings of one meter share its gain: a tolerance of a quotient does not depend on it
    assert (one_for_all.standard_uncertainty > bare.standard_uncertainty).all()


def test_every_check_over_rows():
    random.seed(4)
    for subject in makegood._core.subjects.values():
        for check in subject.values():
            if check.kind != "check":
                continue
            values = []
            for a in check.describe()["arguments"]:
                if "one_of" in a:
                    values.append([random.choice(a["one_of"]) for _ in range(60)])
                else:
                    values.append(np.array([random.uniform(*a["usual"]) for _ in range(60)]))
            names = check.argument_names
            rows = check(**dict(zip(names, values)), rulebook="bs7671:2018+a2,england-adf-2021,heating-standards,common-practice,finland-1009-2017,australia-ncc-2019,nhbc-8.4,us-irc-joists,gb-joists")
            same_as_alone(rows)


def test_masks_shapes_and_empty():
    masked = np.ma.array([5.0, -3.0], mask=[False, True])
    assert electrical.check_voltage_drop(masked, 230, "lighting", BOOK).words("reason").tolist() == ["", "not measured"]
    assert electrical.check_voltage_drop(np.ones((3, 1)), [230, 110], "lighting", BOOK).shape == (3, 2)
    assert electrical.check_voltage_drop(np.ones((4, 6))[:, ::2], 230, "lighting", BOOK).shape == (4, 3)
    assert len(electrical.check_voltage_drop([], 230, "lighting", BOOK)) == 0
    with pytest.raises(ValueError, match=r"voltage_drop_v \(3,\), nominal_voltage_v \(2,\)"):
        electrical.check_voltage_drop(np.ones(3), np.ones(2), "lighting", BOOK)


def test_nonsense_names_the_row():
    with pytest.raises(makegood.RangeError, match=r"-1 V is below 0 V \(row 1;"):
        electrical.check_voltage_drop([5, -1], 230, "lighting", BOOK)
    rows = electrical.check_voltage_drop([5, -1, math.inf], 230, "lighting", BOOK, errors="nan")
    assert rows.words("reason").tolist() == ["", "not measured", "not measured"]
    with pytest.raises(makegood.RangeError, match="is not one of"):
        electrical.check_voltage_drop([5, 1], 230, ["lighting", "lightning"], BOOK)
    for bad in ([True], ["5"], [5 + 0j], [b"5"], [object()], [{}]):
        with pytest.raises(TypeError, match="voltage_drop_v"):
            electrical.check_voltage_drop(bad, 230, "lighting", BOOK)
    with pytest.raises(TypeError, match="one of"):
        electrical.check_voltage_drop([5.0], 230, Readings([1.0]), BOOK)
    with pytest.raises(TypeError, match="one of standard_uncertainty, accuracy and exact"):
        Readings([1.0], exact=True, standard_uncertainty=0.1)
    with pytest.raises(ValueError, match='a state is one of "value"'):
        Readings([1.0], states=["open"])
    with pytest.raises(ValueError, match="from 0 to 5"):
        Readings([1.0], states=[6])
    with pytest.raises(makegood.RangeError, match="0 or more"):
        electrical.check_voltage_drop(Readings([1.0], standard_uncertainty=[-1.0]), 230, "lighting", BOOK)
    with pytest.raises(TypeError, match="missing argument 'rulebook'"):
        electrical.check_voltage_drop([5.0], 230, "lighting")
    with pytest.raises(LookupError):
        electrical.check_voltage_drop([5.0], 230, "lighting", "nobody's")


def test_rows_without_a_rule():
    rows = electrical.check_voltage_drop([5.0, 6.0], 230, "lighting", "common-practice")
    assert set(rows.words("reason")) == {"no rule in book"} and np.isnan(rows.value).all()
    assert "lighting" in rows[0].detail


def test_a_missing_row_warns_nobody():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with np.errstate(all="raise"):
            rows = sensing.check_ntc_sensor(np.array([9800.0, np.nan, 0.0]), 25, 10000, 25, 3950)
            assert rows.words("reason")[1] == "not measured"
            electrical.adiabatic_area(np.array([np.nan, 800.0]), 0.1, 115)
            electrical.adiabatic_area.sensitivities(np.array([np.nan, 800.0]), 0.1, 115)


def test_sensitivities_over_arrays():
    current = np.array([100.0, 800.0, np.nan])
    slopes = electrical.adiabatic_area.sensitivities(current, 0.1, 115)
    alone = electrical.adiabatic_area.sensitivities(800.0, 0.1, 115)
    for name, x in alone.items():
        assert slopes[name][1] == x and np.isnan(slopes[name][2])
    assert air.saturation_pressure.sensitivities(np.ones((2, 3)))["temperature_c"].shape == (2, 3)
    with pytest.raises(makegood.RangeError, match="row 1"):
        electrical.adiabatic_area.sensitivities([100.0, -5.0], 0.1, 115)
    assert np.isnan(electrical.adiabatic_area.sensitivities([100.0, -5.0], 0.1, 115, errors="nan")["time_s"][1])
    with pytest.raises(ValueError, match="shapes do not fit"):
        electrical.adiabatic_area.sensitivities([1.0, 2.0], [1.0, 2.0, 3.0], 115)


def test_threads_give_the_same_bits():
    rng = np.random.default_rng(3)
    re, rough = rng.uniform(4e3, 1e6, 200_000), rng.uniform(0, 0.05, 200_000)
    one = air.friction_factor_colebrook(re, rough)
    for threads in (2, 3, 8):
        assert np.array_equal(one, air.friction_factor_colebrook(re, rough, threads=threads))
    re[150_000] = -1
    with pytest.raises(makegood.RangeError, match="element 150000"):
        air.friction_factor_colebrook(re, rough, threads=2)
    ohm = rng.uniform(5e3, 2e4, 100_000)
    a, b = (sensing.check_ntc_sensor(ohm, 25, 10000, 25, 3950, threads=n) for n in (1, 2))
    assert all(np.array_equal(getattr(a, n), getattr(b, n)) for n in (*COLUMNS, "outcome", "reason"))
    for bad in (0, -1, 1.5, True, None):
        with pytest.raises(ValueError, match="threads"):
            air.friction_factor_colebrook(re, rough, threads=bad)


def _child(queue):
    re = np.linspace(4e3, 1e6, 200_000)
    queue.put(float(air.friction_factor_colebrook(re, 1e-3, threads=2).sum()))


@pytest.mark.skipif(not hasattr(os, "fork"), reason="no fork here")
def test_threads_survive_a_fork():
    want = float(air.friction_factor_colebrook(np.linspace(4e3, 1e6, 200_000), 1e-3, threads=2).sum())  # the workers are there now
    context = multiprocessing.get_context("fork")
    queue = context.Queue()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # newer Pythons warn about a fork beside threads: that is what is tested
        child = context.Process(target=_child, args=(queue,))
        child.start()
    assert queue.get(timeout=60) == want
    child.join(60)
    assert child.exitcode == 0


def test_an_error_is_not_lost_in_a_lazy_frame():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame({"d": [44.0, 29.0], "i": [16.0, -1.0]})
    with pytest.raises(makegood.RangeError):
        electrical.voltage_drop(frame["d"], frame["i"], 22.0)
    ok = electrical.voltage_drop(frame["d"], 16.0, 22.0)
    assert isinstance(ok, pandas.Series) and ok[0] == electrical.voltage_drop(44.0, 16.0, 22.0)
    rows = electrical.check_voltage_drop(frame["d"] / 10, 230, pandas.Categorical(["lighting", "other"]), BOOK)
    assert pandas.DataFrame(rows.to_dict()).shape[0] == 2


def test_verdicts_are_freed():
    gc.collect()
    v = electrical.check_voltage_drop(5.2, 230, "lighting", BOOK)
    kept = sys.getrefcount(type(v))
    many = [electrical.check_voltage_drop(5.2, 230, "lighting", BOOK) for _ in range(1000)]
    assert sys.getrefcount(type(v)) >= kept + 1000
    del many
    assert sys.getrefcount(type(v)) <= kept + 1
    with pytest.raises(TypeError):
        type(v)()


def test_import_needs_no_numpy_for_a_verdict():
    code = (
        "import sys, makegood; v = makegood.electrical.check_voltage_drop(5.2, 230, 'lighting', 'bs7671:2018+a2');"
        "assert v.outcome == 'pass' and 'numpy' not in sys.modules; v.worked(); str(v); assert 'numpy' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", "import sys; sys.path[:0] = %r; %s" % (sys.path, code)], check=True)

# SPDX-License-Identifier: MIT
"""The Python door: what it takes, what it refuses, and in which words."""

import copy
import inspect
import math
import pickle
import subprocess
import sys
import warnings

import numpy as np
import pytest

import makegood
from makegood import electrical

EXACT = 44 * 16 * 22 / 1000


@pytest.mark.parametrize(
    "value",
    [44, 44.0, np.float64(44), np.float32(44), np.int16(44), np.uint8(44), np.int64(44)],
    ids=lambda v: type(v).__name__,
)
def test_numbers_of_every_kind(value):
    result = electrical.voltage_drop(value, 16, 22)
    assert type(result) is float
    assert result == EXACT


def test_positions_and_names():
    assert electrical.voltage_drop(44, length_m=22, current_a=16) == EXACT
    assert electrical.voltage_drop(**{"length_m": 22, "drop_mv_per_a_m": 44, "current_a": 16}) == EXACT
    assert list(inspect.signature(electrical.voltage_drop).parameters) == ["drop_mv_per_a_m", "current_a", "length_m"]


@pytest.mark.parametrize("value", [True, None, "44", b"44", bytearray(b"4"), 44 + 0j, np.bool_(True), np.complex128(44), np.str_("44"), object(), {}, [None], ["44"], np.array([True]), np.array([1j]), np.array(["a"])], ids=repr)
def test_what_is_no_number_is_refused(value):
    with pytest.raises(TypeError, match="drop_mv_per_a_m"):
        electrical.voltage_drop(value, 16, 22)


def test_wrong_calls():
    with pytest.raises(TypeError, match="missing argument 'length_m'"):
        electrical.voltage_drop(44, 16)
    with pytest.raises(TypeError, match="at most 3"):
        electrical.voltage_drop(44, 16, 22, 1)
    with pytest.raises(TypeError, match="multiple values for argument 'current_a'"):
        electrical.voltage_drop(44, 16, current_a=16, length_m=3)
    with pytest.raises(TypeError, match='did you mean "length_m"'):
        electrical.voltage_drop(44, 16, lenght_m=22)
    with pytest.raises(makegood.RangeError, match="length_m is too large a number"):
        electrical.voltage_drop(44, 16, 10**400)


@pytest.mark.parametrize("bad", [-4, math.nan, math.inf, -math.inf, -999, 9e15, 1e20])
def test_ranges(bad):
    with pytest.raises(ValueError) as caught:
        electrical.voltage_drop(44, 16, bad)
    assert isinstance(caught.value, makegood.RangeError) and isinstance(caught.value, makegood.Error)
    assert "voltage_drop: length_m" in str(caught.value)


def test_messages():
    for value, words in [(-4, "-4 m is below 0 m"), (150000, "if it was in mm, write 150 m"), (-999, "missing value")]:
        with pytest.raises(makegood.RangeError) as caught:
            electrical.voltage_drop(44, 16, value)
        assert words in str(caught.value)


def test_arrays():
    d = np.array([44.0, 29.0, np.nan, 18.0])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        result = electrical.voltage_drop(d, 16, 22)
    assert result.dtype == float and np.isnan(result[2])
    for x, y in zip(d, result):
        assert np.isnan(x) or y == electrical.voltage_drop(float(x), 16, 22)  # the same bits
    assert electrical.voltage_drop(d[:, None], np.ones(3), 1).shape == (4, 3)
    assert electrical.voltage_drop([44, 29], 16, 22).tolist() == [electrical.voltage_drop(44, 16, 22), electrical.voltage_drop(29, 16, 22)]
    out = np.empty(4)
    assert electrical.voltage_drop(d, 16, 22, out=out) is out
    assert electrical.voltage_drop(d[::2], 16, 22)[0] == result[0]
    assert electrical.voltage_drop(np.array([]), 16, 22).shape == (0,)


def test_nonsense_in_arrays():
    with pytest.raises(makegood.RangeError, match="element 1"):
        electrical.voltage_drop(np.array([44.0, -1.0]), 16, 22)
    result = electrical.voltage_drop(np.array([44.0, -1.0, np.inf]), 16, 22, errors="nan")
    assert result[0] == EXACT and np.isnan(result[1:]).all()
    with pytest.raises(ValueError, match=r"drop_mv_per_a_m \(3,\), current_a \(2,\)"):
        electrical.voltage_drop(np.ones(3), np.ones(2), 1)
    with pytest.raises(ValueError, match="errors"):
        electrical.voltage_drop(np.ones(3), 1, 1, errors="ignore")


def test_masks_are_carried():
    m = np.ma.array([44.0, -1.0], mask=[False, True])
    result = electrical.voltage_drop(m, 16, 22)
    assert isinstance(result, np.ma.MaskedArray)
    assert result.mask.tolist() == [False, True] and result[0] == EXACT


def test_measured_in_measured_out():
    y = electrical.voltage_drop(makegood.Measured(44, 0.5, "table"), 16, makegood.Measured(22, 0.2, "tape"))
    assert y.value == EXACT
    assert y.standard_uncertainty == pytest.approx(math.hypot(0.5 * 16 * 22 / 1000, 0.2 * 44 * 16 / 1000), rel=1e-14)
    assert set(y.sources) == {"table", "tape"}


def test_worked_steps_and_sensitivities():
    w = electrical.voltage_drop.worked(44, 16, length_m=22)
    assert w.value == EXACT and w.unit == "V"
    assert w.steps[-1]["equation"] == "d · I · L / 1000"
    assert w.steps[-1]["substituted"] == "44 mV/(A·m) · 16 A · 22 m / 1000"
    assert electrical.voltage_drop.sensitivities(44, 16, 22) == pytest.approx({"drop_mv_per_a_m": 0.352, "current_a": 0.968, "length_m": 0.704})
    with pytest.raises(makegood.RangeError):
        electrical.voltage_drop.worked(44, 16, -1)


def test_verdict_has_no_truth_value():
    v = electrical.check_voltage_drop(5.2, 230, "lighting", "bs7671:2018+a2")
    with pytest.raises(TypeError, match="three outcomes"):
        bool(v)
    assert (v.outcome, v.plain, v.reason) == ("pass", "pass", "")
    assert v.limit == pytest.approx(6.9) and v.margin == pytest.approx(1.7)
    assert v.worked()[-1]["value"] == v.limit
    assert electrical.check_voltage_drop(None, 230, "lighting", "bs7671:2018+a2").reason == "not measured"
    assert electrical.check_voltage_drop(makegood.Reading.above(20), 230, "lighting", "bs7671:2018+a2").outcome == "fail"


def test_check_signature_and_rulebooks():
    assert list(inspect.signature(electrical.check_voltage_drop).parameters) == ["voltage_drop_v", "nominal_voltage_v", "load_kind", "rulebook", "length_m", "rule"]
    with pytest.raises(TypeError, match="missing argument 'rulebook'"):
        electrical.check_voltage_drop(5, 230, "other")
    with pytest.raises(LookupError, match="no rulebook"):
        electrical.check_voltage_drop(5, 230, "other", "nobody's")
    with pytest.raises(makegood.RangeError, match='"lightning" is not one of'):
        electrical.check_voltage_drop(5, 230, "lightning", "iec60364")
    book = makegood.Rulebook("bs7671:2018+a2").override("site", "voltage_drop_limit", "other", "<=", [2], "agreed with the client")
    v = electrical.check_voltage_drop(5, 230, "other", book)
    assert v.outcome == "fail" and v.overrides == ["site: agreed with the client"]
    assert all(b["edition"] and b["jurisdiction"] for b in makegood.rulebooks())


def test_every_entry_helps_and_travels():
    for subject in makegood._core.subjects.values():
        for name, f in subject.items():
            assert f.__name__ == name and f.__doc__.startswith(name + "(")
            assert f.__doc__.split("\n")[2].endswith("."), f"{name}: the summary is a sentence"
            inspect.signature(f)
            assert pickle.loads(pickle.dumps(f)) is f and copy.copy(f) is f
            for a in f.describe()["arguments"]:
                assert a["text"], (name, a)


def test_import_is_light():
    code = (
        "import sys; before = set(sys.modules); import makegood; loaded = set(sys.modules) - before;"
        "heavy = {'numpy', 'dataclasses', 'enum', 'json', 'inspect', 'argparse'} & loaded; assert not heavy, heavy"
    )
    subprocess.run([sys.executable, "-S", "-c", "import sys; sys.path[:0] = %r; %s" % (sys.path, code)], check=True)

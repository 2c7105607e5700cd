# SPDX-License-Identifier: MIT
"""The benchmarks measure the same thing on both sides, and say so when a gate is missed. No time is looked at here."""

from __future__ import annotations

import ctypes
import pathlib
import subprocess
import sys

import pytest

HERE = pathlib.Path(__file__).resolve().parents[1] / "benchmarks"
sys.path.insert(0, str(HERE))

import arrays  # noqa: E402
import calls  # noqa: E402
import floor  # noqa: E402
import measuring  # noqa: E402
import run as benchmark  # noqa: E402

sys.path.remove(str(HERE))


@pytest.mark.parametrize("name", arrays.SCALARS)
def test_candidates_agree(name):
    worst = arrays.disagreement(name, 67, tuple(w for w in arrays.OTHERS if "numba" not in w))
    assert {"ours", "Python", "NumPy"} <= set(worst)
    assert max(worst.values()) < arrays.AGREE, worst


def test_numba_agrees_where_it_is_there():
    pytest.importorskip("numba")
    for name in ("voltage_drop", "friction_factor_churchill"):
        worst = arrays.disagreement(name, 67, ("numba", "numba fastmath"))
        assert {"numba", "numba fastmath"} <= set(worst) and max(worst.values()) < arrays.AGREE, worst


def test_a_wrong_candidate_is_seen(monkeypatch):
    monkeypatch.setitem(arrays.NUMPY, "element_resistance", [lambda power, voltage: voltage * voltage / power * (1 + 1e-9)])
    assert arrays.disagreement("element_resistance", 67, ("NumPy",))["NumPy"] > arrays.AGREE


def test_calls_agree():
    assert calls.disagreement() == []


def test_floors_agree():
    assert floor.disagreement() < 1e-9
    assert len(floor.calls()) >= 2


def test_missed_gates_and_missing_measurements():
    targets = (
        benchmark.Target("arrays", "more", "a", 2.0, 3.0, True),
        benchmark.Target("arrays", "less", "b", 2.0, 1.0, False),
        benchmark.Target("arrays", "no aim", "c", 2.0, None, True),
    )

    def states(a, b, c):
        return [state for _, _, state in benchmark.judge({"a": a, "b": b, "c": c}, targets)]

    assert states(1.999, 2.001, 1.0) == ["MISSED"] * 3
    assert states(2.0, 2.0, 2.0) == ["met"] * 3
    assert states(3.0, 1.0, 9.0) == ["aim reached", "aim reached", "met"]
    assert states(None, float("nan"), None) == ["not measured"] * 3
    assert all(state == "not measured" for _, _, state in benchmark.judge({}))


def test_exit_status(monkeypatch, capsys):
    def part(value):
        def measure(run):
            run.figures["errors.ratio"] = value

        return {"errors": ("An error", measure)}

    for value, status, word in ((0.5, 0, "aim reached"), (0.9, 0, "met"), (1.1, 1, "MISSED"), (None, 0, "not measured")):
        monkeypatch.setattr(benchmark, "PARTS", part(value))
        assert benchmark.main(["--only", "errors"]) == status
        assert word in capsys.readouterr().out


def test_operations_are_counted():
    counts = measuring.compiled("counts.cpp", "-O0")
    if counts is None:
        pytest.skip("no C++ compiler")
    found = (ctypes.c_double * 3)()
    assert counts.operations(b"adiabatic_area", found)
    divisions, roots, others = found
    assert divisions >= 1 and roots >= 1 and others >= 1
    assert counts.operations(b"element_resistance", found) and list(found) == [1, 0, 1]  # U * U / P
    assert not counts.operations(b"no_such_formula", found)


def test_the_command_runs():
    out = subprocess.run([sys.executable, str(HERE / "run.py"), "--quick", "--only", "calls"], capture_output=True, text=True)
    assert "calls of math.sqrt" in out.stdout and "gate <= 4" in out.stdout, out.stdout + out.stderr
    assert out.returncode in (0, 1)
    assert subprocess.run([sys.executable, str(HERE / "run.py"), "--only", "nonsense"], capture_output=True).returncode == 2

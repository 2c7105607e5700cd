# SPDX-License-Identifier: MIT
"""Speed and size as ratios measured in one run: python tests/benchmarks/figures.py [calls] [imports] [compile] [ledger]
(with makegood importable; no name: all of them). Exit status 1 when a gate is missed.

Each figure says against what. Medians of interleaved rounds; the machine's noise is in both sides of a ratio.
"""

from __future__ import annotations

import collections
import csv
import math
import os
import pathlib
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import timeit

import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include" / "makegood"
CORE = "verdict scalar/symbol measured document".split()
FORMULAS = sorted(path.relative_to(INCLUDE).with_suffix("").as_posix() for path in INCLUDE.glob("*/formulas.hpp"))
EVERYTHING = sorted(path.relative_to(INCLUDE).with_suffix("").as_posix() for path in INCLUDE.glob("*/list.hpp"))
EIGEN = "/usr/include/eigen3"
# One unit with every formula against one with <Eigen/Core>, and the core against its standard headers, in CPU time.
FORMULAS_GATE, FORMULAS_AIM, CORE_GATE = 0.5, 0.3, 2.0


def interleaved(snippets: dict[str, str], space: dict, rounds: int = 15, number: int = 100_000) -> dict[str, float]:
    timers = {name: timeit.Timer(code, globals=space) for name, code in snippets.items()}
    times = collections.defaultdict(list)
    for _ in range(rounds):
        for name, timer in timers.items():
            times[name].append(timer.timeit(number) / number)
    return {name: statistics.median(t) for name, t in times.items()}


def calls() -> None:
    space = {"sqrt": math.sqrt, "drop": makegood.electrical.voltage_drop, "ntc": makegood.sensing.ntc_temperature}
    t = interleaved(
        {
            "math.sqrt, 1 positional": "sqrt(2.0)",
            "voltage_drop, 3 positional": "drop(44.0, 16.0, 22.0)",
            "ntc_temperature, 4 positional": "ntc(11200.0, 10000.0, 25.0, 3950.0)",
            "ntc_temperature, 4 keywords": "ntc(resistance_ohm=11200.0, reference_ohm=10000.0, reference_c=25.0, beta_k=3950.0)",
        },
        space,
    )
    base = t["math.sqrt, 1 positional"]
    for name, x in t.items():
        print(f"  {name:32} {x * 1e9:7.1f} ns  {x / base:5.2f} calls of math.sqrt")


def imports(rounds: int = 15) -> None:
    times = collections.defaultdict(list)
    code = "import time, os; t = time.perf_counter(); import {}; print(time.perf_counter() - t)"
    for _ in range(rounds):
        for module in ("makegood", "numpy", "json"):
            out = subprocess.run([sys.executable, "-c", code.format(module)], capture_output=True, text=True, check=True).stdout
            times[module].append(float(out))
    for module, t in times.items():
        print(f"  import {module:25} {statistics.median(t) * 1e3:7.2f} ms")


def standard_headers(headers: list[str]) -> list[str]:
    """The standard headers that some of our own name, themselves or by another of ours."""
    found, seen, left = set(), set(), [INCLUDE / f"{h}.hpp" for h in headers]
    while left:
        path = left.pop().resolve()
        if path in seen:
            continue
        seen.add(path)
        text = path.read_text(encoding="utf-8")
        found.update(re.findall(r"^#include <([a-z_]+)>", text, re.M))
        left += [path.parent / h for h in re.findall(r'^#include "([^"]+)"', text, re.M)]
    return sorted(found)


def compile_times(rounds: int = 9) -> bool:
    compiler = os.environ.get("CXX") or shutil.which("g++") or shutil.which("c++")
    if not compiler:
        print("  no compiler here")
        return True
    formulas = "every formula of every subject"
    core, standard = "every core header", "the standard headers that the core uses"
    units = {
        standard: [f"<{h}>" for h in standard_headers(CORE)],
        core: [f"<makegood/{h}.hpp>" for h in CORE],
        "the standard headers that formulas use": [f"<{h}>" for h in standard_headers(FORMULAS)],
        "formula.hpp": ["<makegood/formula.hpp>"],
        formulas: [f"<makegood/{h}.hpp>" for h in FORMULAS],
        "every formula, check and model": [f"<makegood/{h}.hpp>" for h in EVERYTHING],
    }
    eigen = "Eigen/Core"
    if pathlib.Path(EIGEN).is_dir():
        units[eigen] = ["<Eigen/Core>"]
    times, memory = collections.defaultdict(list), {}
    with tempfile.TemporaryDirectory() as folder:
        for _ in range(rounds):
            for name, headers in units.items():
                source = pathlib.Path(folder, "unit.cpp")
                source.write_text("".join(f"#include {h}\n" for h in headers))
                command = [compiler, "-std=c++20", "-O2", f"-I{ROOT / 'include'}", "-isystem", EIGEN, "-c", str(source), "-o", os.devnull]
                process = subprocess.Popen(command)
                _, status, used = os.wait4(process.pid, 0)
                process.returncode = os.waitstatus_to_exitcode(status)
                if status:
                    raise SystemExit(f"{name} does not compile")
                times[name].append(used.ru_utime + used.ru_stime)
                memory[name] = used.ru_maxrss / 1024
    median = {name: statistics.median(t) for name, t in times.items()}
    base = eigen if eigen in median else standard
    for name, t in median.items():
        print(f"  {name:40} {t:6.3f} s CPU  {memory[name]:4.0f} MB  {t / median[base]:5.2f} of {base}")
    good = True

    def hold(what: str, ratio: float, gate: float, aim: float | None = None) -> None:
        nonlocal good
        good = good and ratio <= gate
        wanted = f"gate {gate:g}" + (f", aim {aim:g}" if aim else "")
        print(f"  {what}: {ratio:.2f} ({wanted}): " + ("gate MISSED" if ratio > gate else "gate held" if aim is None or ratio > aim else "aim reached"))

    hold("core against its standard headers", median[core] / median[standard], CORE_GATE)
    if eigen in median:
        hold("formulas against Eigen/Core", median[formulas] / median[eigen], FORMULAS_GATE, FORMULAS_AIM)
    else:
        print("  formulas against Eigen/Core: not measured, Eigen is not here")
    return good


def ledger() -> None:
    grades: collections.Counter[str] = collections.Counter()
    seen: collections.Counter[str] = collections.Counter()
    for path in sorted((ROOT / "tests" / "published").glob("*.csv")):
        with path.open(newline="", encoding="utf-8") as file:
            for row in csv.DictReader(file):
                if row.get("function"):
                    grades[row["grade"]] += 1
                    seen[row["seen"]] += 1
    print(f"  {sum(grades.values())} rows: " + ", ".join(f"{n} {g}" for g, n in grades.most_common()))
    print("  " + ", ".join(f"{n} {s}" for s, n in seen.most_common()))
    entries = makegood.catalogue()
    unproved = [d["name"] for d in entries if d["status"] == "unproved"]
    print(f"  {len(entries)} entries, {len(unproved)} without a seen row: " + ", ".join(unproved))


PARTS = {
    "calls": ("Python call against math.sqrt", calls),
    "imports": ("Import, each in a new process", imports),
    "compile": ("Compiling one unit: CPU time, memory", compile_times),
    "ledger": ("Ledger", ledger),
}

if __name__ == "__main__":
    missed = []
    for key in sys.argv[1:] or PARTS:
        title, part = PARTS[key]
        print(title)
        if part() is False:
            missed.append(key)
    sys.exit(f"gate missed: {', '.join(missed)}" if missed else 0)

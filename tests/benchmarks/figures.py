# SPDX-License-Identifier: MIT
"""Speed and size as ratios measured in one run: python tests/benchmarks/figures.py (with makegood importable).

Each figure says against what. Medians of interleaved rounds; the machine's noise is in both sides of a ratio.
"""

from __future__ import annotations

import collections
import csv
import math
import os
import pathlib
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile
import timeit

import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
STANDARD = "array bit charconv cmath cstdint initializer_list limits memory optional span stdexcept string string_view tuple type_traits utility variant vector".split()
CORE = "verdict scalar/symbol measured document".split()
SUBJECTS = "electrical/list sensing/list heating/list air/list".split()


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


def compile_times(rounds: int = 5) -> None:
    compiler = os.environ.get("CXX") or shutil.which("g++") or shutil.which("c++")
    if not compiler:
        print("  no compiler here")
        return
    units = {
        "the standard headers that the core uses": [f"<{h}>" for h in STANDARD],
        "every core header": [f"<makegood/{h}.hpp>" for h in CORE],
        "every formula of every subject": [f"<makegood/{h}.hpp>" for h in SUBJECTS],
    }
    times = collections.defaultdict(list)
    with tempfile.TemporaryDirectory() as folder:
        for _ in range(rounds):
            for name, headers in units.items():
                source = pathlib.Path(folder, "unit.cpp")
                source.write_text("".join(f"#include {h}\n" for h in headers))
                before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
                subprocess.run([compiler, "-std=c++20", "-O2", f"-I{ROOT / 'include'}", "-c", str(source), "-o", os.devnull], check=True)
                times[name].append(resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime - before)
    base = statistics.median(times["the standard headers that the core uses"])
    for name, t in times.items():
        print(f"  {name:40} {statistics.median(t):5.2f} s CPU  {statistics.median(t) / base:5.2f}")


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


for title, part in (
    ("Python call against math.sqrt", calls),
    ("Import, each in a new process", imports),
    ("Compiling one unit, CPU time against the standard headers alone", compile_times),
    ("Ledger", ledger),
):
    print(title)
    part()

# SPDX-License-Identifier: MIT
"""Time of compiling, and the state of the ledger: python tests/benchmarks/figures.py [compile] [ledger]
(with makegood importable; no name: both). Exit status 1 when a gate is missed. Speed: run.py.
"""

from __future__ import annotations

import collections
import csv
import os
import pathlib
import re
import shutil
import statistics
import subprocess
import sys
import tempfile

import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include" / "makegood"
CORE = "verdict scalar/symbol measured document".split()
FORMULAS = sorted(path.relative_to(INCLUDE).with_suffix("").as_posix() for path in INCLUDE.glob("*/formulas.hpp"))
EVERYTHING = sorted(path.relative_to(INCLUDE).with_suffix("").as_posix() for path in INCLUDE.glob("*/list.hpp"))
EIGEN = "/usr/include/eigen3"
# One unit with every formula against one with <Eigen/Core>, and the core against its standard headers, in CPU time.
FORMULAS_GATE, FORMULAS_AIM, CORE_GATE = 0.5, 0.3, 2.0


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
                if row.get("grade") and (row.get("function") or row.get("model")):
                    grades[row["grade"]] += 1
                    seen[row["seen"]] += 1
    print(f"  {sum(grades.values())} rows: " + ", ".join(f"{n} {g}" for g, n in grades.most_common()))
    print("  " + ", ".join(f"{n} {s}" for s, n in seen.most_common()))
    entries = makegood.catalogue()
    unproved = [d["name"] for d in entries if d["status"] == "unproved"]
    print(f"  {len(entries)} entries, {len(unproved)} without a seen row: " + ", ".join(unproved))


PARTS = {
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

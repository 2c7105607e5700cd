# SPDX-License-Identifier: MIT
"""Time of compiling, and the state of the ledger: python tests/benchmarks/figures.py (with makegood importable).

Each figure says against what. Medians of interleaved rounds; the machine's noise is in both sides of a ratio. Speed: run.py.
"""

from __future__ import annotations

import collections
import csv
import os
import pathlib
import resource
import shutil
import statistics
import subprocess
import sys
import tempfile

import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
STANDARD = "array bit charconv cmath cstdint initializer_list limits memory optional span stdexcept string string_view tuple type_traits utility variant vector".split()
CORE = "verdict scalar/symbol measured document".split()
SUBJECTS = "electrical/list sensing/list heating/list air/list".split()


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
                if row.get("function") and "seen" in row:
                    grades[row["grade"]] += 1
                    seen[row["seen"]] += 1
    print(f"  {sum(grades.values())} rows: " + ", ".join(f"{n} {g}" for g, n in grades.most_common()))
    print("  " + ", ".join(f"{n} {s}" for s, n in seen.most_common()))
    entries = makegood.catalogue()
    unproved = [d["name"] for d in entries if d["status"] == "unproved"]
    print(f"  {len(entries)} entries, {len(unproved)} without a seen row: " + ", ".join(unproved))


if __name__ == "__main__":
    for title, part in (("Compiling one unit, CPU time against the standard headers alone", compile_times), ("Ledger", ledger)):
        print(title)
        part()

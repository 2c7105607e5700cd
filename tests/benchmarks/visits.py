# SPDX-License-Identifier: MIT
"""Whole visits: the demo visit with everything that follows from it, its first page in a process of its own, and many visits in one call."""

from __future__ import annotations

import copy
import json
import os
import pathlib
import random
import subprocess
import sys
import time
from typing import Any

import makegood

DEMO = pathlib.Path(__file__).resolve().parents[2] / "notebooks" / "demo_visit.json"
RULES = "bs7671:2018+a2,england-adf-2021,england-adp-2013"

FIRST_PAGE = f"""
import time
t, p = time.perf_counter(), time.process_time()
import makegood
a = makegood.assess(makegood.load_visit({str(DEMO)!r}), rules={RULES!r})
page = makegood.report(a, audience="client")
t, p = time.perf_counter() - t, time.process_time() - p
most = next(int(x.split()[1]) for x in open("/proc/self/status") if x.startswith("VmHWM"))  # not ru_maxrss: that of the parent goes into it
print(t, most / 1024, len(page), p)
"""


def report_data() -> dict[str, Any]:
    """The demo visit from its file to everything that a page is made of."""
    document: dict[str, Any] = makegood.assess(makegood.load_visit(DEMO), rules=RULES).to_dict()
    return document


def first_page() -> tuple[float, float, int, float]:
    """Seconds, greatest memory in MiB, characters of the client's page, and seconds of the processor, in a process that has loaded nothing before.

    As a user runs it: without the settings of memory that are for the arrays, and with the bytecode that an installed package has.
    """
    plain = {k: v for k, v in os.environ.items() if not k.startswith("MALLOC_") and k != "PYTHONDONTWRITEBYTECODE"}
    said = subprocess.run([sys.executable, "-c", FIRST_PAGE], check=True, capture_output=True, text=True, env=plain).stdout.split()
    return float(said[0]), float(said[1]), int(said[2]), float(said[3])


def many(n: int) -> list[Any]:
    """So many visits, each with readings of its own."""
    draw = random.Random(2026)
    whole = json.loads(DEMO.read_text(encoding="utf-8"))
    visits = []
    for _ in range(n):
        one = copy.deepcopy(whole)
        for part in (*one["circuits"], *one["appliances"], *one["sensors"], *one["fans"]):
            for name, reading in part.items():
                if isinstance(reading, dict) and "value" in reading and not name.startswith("temperature"):
                    reading["value"] = round(reading["value"] * draw.uniform(0.7, 1.4), 3)
        visits.append(makegood.read_visit(one))
    return visits


def seconds_of_many(visits: list[Any], threads: int, inquiries: bool = True) -> float:
    t = time.perf_counter()
    makegood.assess_many(visits, rules=RULES, threads=threads, inquiries=inquiries, progress=True)
    return time.perf_counter() - t


if __name__ == "__main__":
    found = sorted(first_page() for _ in range(9))
    processor = sorted(f[3] for f in found)
    print(f"first page of the client, from nothing: {found[4][0]:.2f} s in the middle of 9, {found[0][0]:.2f} to {found[-1][0]:.2f};", end=" ")
    print(f"of the processor {processor[4]:.2f} s; {max(f[1] for f in found):.0f} MiB")

# SPDX-License-Identifier: MIT
"""What the benchmarks share: interleaved timing, compiling C++ on the fly, and libraries that may be missing."""

from __future__ import annotations

import ctypes
import functools
import importlib
import math
import os
import pathlib
import random
import shutil
import statistics
import subprocess
import tempfile
import time
from typing import Any, Callable

# The processor's time of this process: what others run meanwhile does not count, and a second thread is not free.
clock = time.process_time
HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]


def geometric_mean(values: list[float]) -> float:
    return math.exp(statistics.fmean(map(math.log, values)))


def library(name: str) -> Any:
    """A module that may be missing: None then."""
    try:
        return importlib.import_module(name)
    except ImportError:
        return None


def compiler() -> str | None:
    return os.environ.get("CXX") or shutil.which("g++") or shutil.which("c++")


@functools.cache
def compiled(file: str, *flags: str) -> ctypes.CDLL | None:
    """A C++ file of this folder as a library, or None where there is no compiler."""
    if not compiler():
        return None
    folder = tempfile.TemporaryDirectory(prefix="makegood-benchmark-")
    made = pathlib.Path(folder.name, "it.so")
    subprocess.run([compiler(), "-std=c++20", *flags, "-shared", "-fPIC", f"-I{ROOT / 'include'}", str(HERE / file), "-o", str(made)], check=True)
    found = ctypes.CDLL(str(made))
    folder.cleanup()  # the library is mapped; nothing is left behind
    return found


def pointer(array: Any) -> ctypes.c_void_p:
    return ctypes.c_void_p(array.ctypes.data)


def medians(candidates: dict[str, Callable[[], Any]], rounds: int, least: float = 2e-4) -> dict[str, float]:
    """Seconds a call. In each round every candidate runs once warm, in an order drawn anew, as often as fills `least` seconds."""
    counts = {}
    for name, f in candidates.items():
        f()
        begin = clock()
        f()
        counts[name] = max(1, math.ceil(least / max(clock() - begin, 1e-7)))
    times: dict[str, list[float]] = {name: [] for name in candidates}
    order = list(candidates)
    shuffle = random.Random(1).shuffle
    for _ in range(rounds):
        shuffle(order)
        for name in order:
            f, count = candidates[name], range(counts[name])
            f()  # its own data are in the caches, not those of whoever was before it
            begin = clock()
            for _ in count:
                f()
            times[name].append((clock() - begin) / len(count))
    return {name: statistics.median(t) for name, t in times.items()}


def median_snippets(snippets: dict[str, str], space: dict[str, Any], rounds: int, number: int) -> dict[str, float]:
    """Seconds a statement, the empty loop taken off; interleaved as above."""
    import timeit

    timers = {name: timeit.Timer(code, timer=clock, globals=space) for name, code in {"": "pass", **snippets}.items()}
    times: dict[str, list[float]] = {name: [] for name in timers}
    for _ in range(rounds):
        for name, timer in timers.items():
            times[name].append(timer.timeit(number) / number)
    middle = {name: statistics.median(t) for name, t in times.items()}
    return {name: t - middle[""] for name, t in middle.items() if name}

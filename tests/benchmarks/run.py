# SPDX-License-Identifier: MIT
"""All benchmarks in one run, as ratios: python tests/benchmarks/run.py [--quick] [--only arrays,calls] [--picture speed.png]

With makegood importable (PYTHONPATH=build/dev/python). Everything that is compared runs in this process, in turns in an order drawn
anew each round, by the processor's time of the process, and the medians are compared; so that noise of the machine falls on both sides
of a ratio. Sections: arrays, lengths, limits, memory, calls, errors, imports, checks, sizes, floor, fans,
network, monte_carlo, visits, compile, ledger.

numba, numexpr and matplotlib (pip install numba numexpr matplotlib, or makegood[bench]) and a C++ compiler are used where they are
there. What is missing is printed as such, and its gate as not measured. Exit status: 1 if a gate is missed, else 0.

The script starts itself again with MALLOC_MMAP_THRESHOLD_ and MALLOC_TRIM_THRESHOLD_ raised: else every temporary of NumPy from
128 KiB on costs page faults, and NumPy would be compared at less than its best.
"""

from __future__ import annotations

import argparse
import ctypes
import os
import platform
import sys
from dataclasses import dataclass
from typing import Any, Callable

HEAP = {"MALLOC_MMAP_THRESHOLD_": str(1 << 32), "MALLOC_TRIM_THRESHOLD_": str(1 << 33), "MALLOC_TOP_PAD_": str(1 << 26)}


@dataclass(frozen=True)
class Target:
    section: str
    text: str
    figure: str  # its key among the figures
    gate: float
    aim: float | None
    more: bool  # more is better
    unit: str = ""


# Set for the instruction set that the processor has (AVX-512 where the figures were first seen); ratios, unless a unit is given.
TARGETS = (
    Target("arrays", "NumPy / ours, geometric mean", "arrays.NumPy", 1.7, 2.5, True),
    Target("arrays", "NumPy / ours, the least of the ten", "arrays.NumPy.least", 1.1, None, True),
    Target("arrays", "numba fastmath / ours, geometric mean", "arrays.numba fastmath", 2.2, 3.0, True),
    Target("arrays", "numexpr, 1 thread / ours, geometric mean", "arrays.numexpr", 4.0, 6.0, True),
    Target("memory", "bandwidth of voltage_drop / triad, n = 4e7", "memory.share", 0.95, 1.05, True),
    Target("calls", "4 positional, in calls of math.sqrt", "calls.positional", 4.0, 2.5, False),
    Target("calls", "4 keywords, in calls of math.sqrt", "calls.keywords", 4.0, 2.5, False),
    Target("errors", "raised and caught / a Python function that raises", "errors.ratio", 1.0, 0.7, False),
    Target("monte_carlo", "NumPy / ours, 1e6 trials of 6 normals", "monte_carlo.ratio", 7.0, 10.0, True),
    Target("floor", "numba with factors / ours, one floor", "floor.numba", 1.8, 2.5, True),
    Target("floor", "numba with factors / ours, each of eight in lanes", "floor.lanes", 8.0, 12.0, True),
    Target("floor", "SciPy, a banded solution a step / ours", "floor.SciPy", 20.0, 50.0, True),
    Target("fans", "operating points from Python, 1e6 pairs", "fans.per second", 1.0, 2.0, True, "million a second"),
    Target("network", "SciPy's spsolve, same method / ours, 1000 branches", "network.ratio 1000", 12.0, 20.0, True),
    Target("network", "sparse systems to the balance, the most of all sizes", "network.steps", 8.0, 6.0, False),
    Target("network", "10 000 branches", "network.ms 10000", 20.0, None, False, "ms"),
    Target("visits", "the demo visit, from its file to the data of a page", "visits.ms", 200.0, 50.0, False, "ms"),
    Target("visits", "first page of the client, from nothing", "visits.page", 1.0, 0.5, False, "s"),
    Target("visits", "greatest memory for it", "visits.memory", 150.0, 100.0, False, "MiB"),
    Target("visits", "10 000 visits in one call, 2 threads", "visits.many", 60.0, 30.0, False, "s"),
    Target("imports", "import makegood", "imports.ms", 10.0, 5.0, False, "ms"),
)


def judge(figures: dict[str, float | None], targets: tuple[Target, ...] = TARGETS) -> list[tuple[Target, float | None, str]]:
    """What became of each target: missed, met, aim reached, or not measured."""
    found = []
    for t in targets:
        value = figures.get(t.figure)
        if value is None or value != value:
            found.append((t, None, "not measured"))
            continue
        good, best = (x is not None and (value >= x if t.more else value <= x) for x in (t.gate, t.aim))
        found.append((t, value, "MISSED" if not good else "aim reached" if best else "met"))
    return found


@dataclass
class Run:
    rounds: int
    n: int
    quick: bool
    figures: dict[str, Any]
    table: dict[str, dict[str, float]]  # formula -> candidate -> ns an element
    shares: dict[str, tuple[float, str]]  # formula -> (share of its limit, which)


# ------------------------------------------------------------------------------------------------------------- arrays


def measured_formula(run: Run, name: str, n: int, only: tuple[str, ...]) -> dict[str, float]:
    """ns an element of each candidate that is there."""
    import arrays
    from measuring import medians

    worst = arrays.disagreement(name, n, only)
    if max(worst.values()) > arrays.AGREE:
        raise SystemExit(f"{name}: the candidates disagree: {worst}")
    there = arrays.candidates(name, n, only)
    flat = {f"{who}/{i}": c for who, several in there.items() for i, c in enumerate(several)}
    times = medians({key: c.call for key, c in flat.items()}, run.rounds)
    return {who: min(times[f"{who}/{i}"] / c.elements for i, c in enumerate(several)) * 1e9 for who, several in there.items()}


def part_arrays(run: Run) -> None:
    import arrays
    import numpy as np

    import makegood as mg
    from measuring import geometric_mean

    print(f"  n = {run.n}, instruction set {mg._core.instruction_set}, NumPy {np.__version__}; ns an element, in brackets how many times ours")
    print(f"  {'':28}{'ours':>8}" + "".join(f"{who:>17}" for who in arrays.OTHERS))
    for name in arrays.SCALARS:
        t = run.table[name] = measured_formula(run, name, run.n, arrays.OTHERS)
        cells = "".join(f"{t[w]:10.2f}{'(%.2f)' % (t[w] / t['ours']):>7}" if w in t else f"{'-':>17}" for w in arrays.OTHERS)
        print(f"  {name:28}{t['ours']:8.2f}{cells}", flush=True)
    means = []
    for who in arrays.OTHERS:
        ratios = [t[who] / t["ours"] for t in run.table.values() if who in t]
        run.figures[f"arrays.{who}"] = geometric_mean(ratios) if ratios else None
        run.figures[f"arrays.{who}.least"] = min(ratios) if ratios else None
        means.append(f"{'(%.2f)' % geometric_mean(ratios):>17}" if ratios else f"{'not installed':>17}")
    print(f"  {'geometric mean':36}" + "".join(means))


def part_lengths(run: Run) -> None:
    import arrays
    from measuring import geometric_mean

    only = ("NumPy", "numba fastmath")
    for n in (1, 4096, 65536):
        found = {name: measured_formula(run, name, n if not run.quick else max(1, n // 8), only) for name in arrays.SCALARS}
        if n == 1:
            print(f"  a call with arrays of 1: {geometric_mean([t['ours'] for t in found.values()]) / 1e3:.2f} µs")
        for who in only:
            ratios = [t[who] / t["ours"] for t in found.values() if who in t]
            text = f"{geometric_mean(ratios):5.2f} (least {min(ratios):.2f})" if ratios else "not installed"
            print(f"  n = {n:6}: {who} / ours, geometric mean {text}", flush=True)


# ------------------------------------------------------------------------------------------------------------- limits


def limits_library() -> Any:
    from measuring import compiled

    wide = ["-mprefer-vector-width=512"] if platform.machine() in ("x86_64", "AMD64") else []
    return compiled("limits.cpp", "-O3", *wide)


def part_limits(run: Run) -> None:
    import arrays
    import numpy as np
    from measuring import compiled, medians, pointer

    machine, kernels = limits_library(), compiled("counts.cpp", "-O1")
    if machine is None or kernels is None:
        print("  no C++ compiler here: not measured")
        return
    n, many, turns = run.n, 1_000_000, 50  # enough that the call itself does not count
    kept = [np.ones(n) for _ in range(3)]
    a, b, c = map(pointer, kept)
    size, chain, times = ctypes.c_size_t(n), ctypes.c_size_t(many), ctypes.c_int(turns)
    seconds = medians(
        {
            "divide": lambda: machine.divide(chain),
            "root": lambda: machine.root(chain),
            "multiply": lambda: machine.multiply(chain),
            "copy": lambda: machine.copy(a, b, size, times),
            "triad": lambda: machine.triad(a, b, c, size, times),
        },
        run.rounds,
    )
    ns = {k: t / (n * turns if k in ("copy", "triad") else many) * 1e9 for k, t in seconds.items()}
    costs = f"division {ns['divide']:.3f} ns, root {ns['root']:.3f} ns, product or sum {ns['multiply']:.3f} ns"
    print(f"  registers of {machine.register_lanes()} numbers; a number costs: {costs}")
    print(f"  {n} numbers in the caches: copy {16 / ns['copy']:.0f} GB/s, triad {24 / ns['triad']:.0f} GB/s")
    print("  the time that the machine allows a formula: the longest of divider (divisions, roots), arithmetic (everything) and memory")
    given = arrays.arguments(n)
    for name in arrays.SCALARS:
        counts = (ctypes.c_double * 3)()
        assert kernels.operations(name.encode(), counts), name
        divisions, roots, others = counts
        streams = sum(isinstance(x, np.ndarray) for x in given[name]) + 1
        least = {
            "divider": divisions * ns["divide"] + roots * ns["root"],
            "arithmetic": (divisions + roots + others) * ns["multiply"],
            "memory": streams * 8 * ns["triad"] / 24,
        }
        which = max(least, key=lambda k: least[k])
        ours = run.table.get(name, {}).get("ours") or measured_formula(run, name, n, ())["ours"]
        run.shares[name] = (least[which] / ours, which)
        print(
            f"  {name:28}{divisions:4.0f} divisions{roots:3.0f} roots{others:5.0f} others {streams} streams: "
            f"{least[which]:6.2f} of {ours:6.2f} ns, {least[which] / ours:4.0%} of the {which} limit"
        )


def part_memory(run: Run) -> None:
    import numpy as np
    from measuring import medians, pointer

    import makegood as mg

    machine = limits_library()
    if machine is None:
        print("  no C++ compiler here: not measured")
        return
    n = 400_000 if run.quick else 40_000_000
    size = ctypes.c_size_t(n)
    drop, current, length, out = (np.full(n, x) for x in (18.0, 16.0, 31.0, 0.0))
    f = mg.electrical.voltage_drop
    f(drop, current, length, out=out)
    assert np.array_equal(out, np.full(n, f(18.0, 16.0, 31.0)))
    times = medians(
        {
            "ours": lambda: f(drop, current, length, out=out),
            "triad": lambda: machine.triad(pointer(out), pointer(drop), pointer(current), size, ctypes.c_int(1)),
            "triad past the caches": lambda: machine.triad_streaming(pointer(out), pointer(drop), pointer(current), size),
            "copy": lambda: machine.copy(pointer(out), pointer(drop), size, ctypes.c_int(1)),
            "NumPy": lambda: np.multiply(np.multiply(np.multiply(drop, current, out=out), length, out=out), 0.001, out=out),
        },
        max(5, run.rounds // 2),
    )
    moved = {"ours": 32, "triad": 24, "triad past the caches": 24, "copy": 16}  # bytes an element as STREAM counts: each array once
    speed = {k: moved[k] * n / times[k] / 1e9 for k in moved}
    for k, x in speed.items():
        print(f"  {k:24}{times[k] / n * 1e9:7.2f} ns an element{x:8.1f} GB/s")
    print(f"  {'NumPy, three passes':24}{times['NumPy'] / n * 1e9:7.2f} ns an element, {times['NumPy'] / times['ours']:.2f} times ours")
    if run.quick:
        print("  n is too small in a quick run to judge")
    else:
        run.figures["memory.share"] = speed["ours"] / speed["triad"]
        run.figures["memory.share past the caches"] = speed["ours"] / speed["triad past the caches"]
        print(f"  ours / triad {speed['ours'] / speed['triad']:.2f}, / triad past the caches {speed['ours'] / speed['triad past the caches']:.2f}")


# -------------------------------------------------------------------------------------------------------------- calls


def part_calls(run: Run) -> None:
    import calls

    t = calls.seconds(calls.CALLS, run.rounds, 2_000 if run.quick else 50_000)
    for name, x in t.items():
        print(f"  {name:32}{x * 1e9:8.1f} ns{x / t['math.sqrt']:8.2f} calls of math.sqrt")
    run.figures["calls.positional"] = t["ntc_temperature, 4 positional"] / t["math.sqrt"]
    run.figures["calls.keywords"] = t["ntc_temperature, 4 keywords"] / t["math.sqrt"]


def part_errors(run: Run) -> None:
    import calls

    t = calls.seconds(calls.ERRORS, run.rounds, 500 if run.quick else 10_000)
    ours, theirs = t.values()
    run.figures["errors.ratio"] = ours / theirs
    for name, x in t.items():
        print(f"  {name:32}{x * 1e9:8.0f} ns{x / theirs:8.2f}")


def part_checks(run: Run) -> None:
    import calls

    if wrong := calls.disagreement():
        raise SystemExit(f"the two sides differ: {wrong}")
    t = calls.seconds(calls.CHECKS, run.rounds, 500 if run.quick else 10_000)
    base = list(t.values())[-1]
    for name, x in t.items():
        print(f"  {name:42}{x * 1e9:8.0f} ns{x / base:8.2f}")


def part_monte_carlo(run: Run) -> None:
    import uncertainty
    from measuring import medians

    n = 100_000 if run.quick else uncertainty.TRIALS
    if wrong := uncertainty.disagreement(n):
        raise SystemExit(f"the two sides differ, in standard errors: {wrong}")
    t = medians(uncertainty.calls(n), max(5, run.rounds // 2))
    for name, x in t.items():
        print(f"  {name:12}{x * 1e3:8.2f} ms for {n} trials of six normal arguments, with quantiles, one thread{x / t['ours']:8.2f}")
    run.figures["monte_carlo.ratio"] = t["NumPy"] / t["ours"]


def part_sizes(run: Run) -> None:
    import sizes
    from measuring import medians

    n = 10_000 if run.quick else 1_000_000
    if wrong := sizes.disagreement(n):
        raise SystemExit(f"smallest sizes: {wrong} of {n} circuits differ")
    t = medians(sizes.calls(n), max(5, run.rounds // 2))
    for name, x in t.items():
        print(f"  {name:20}{x * 1e3:8.2f} ms for {n} circuits{x / t['ours']:8.2f}")


def part_floor(run: Run) -> None:
    import floor
    from measuring import medians

    if (wrong := floor.disagreement()) > 1e-9:
        raise SystemExit(f"floors: the candidates differ by {wrong} K")
    t = medians(floor.calls(), run.rounds)
    one = t["ours, one floor"]
    for name, x in t.items():
        print(f"  {name:40}{x * 1e3:8.3f} ms, {floor.NODES} nodes, {floor.STEPS} steps{x / one:8.2f}")
    numba, scipy = t.get("numba, factors made beforehand"), t.get("SciPy, banded solution in each step")
    run.figures["floor.numba"] = numba / one if numba else None
    run.figures["floor.lanes"] = 8 * numba / t["ours, eight floors"] if numba else None
    run.figures["floor.SciPy"] = scipy / one if scipy else None


def part_fans(run: Run) -> None:
    import air
    from measuring import medians

    n = 10_000 if run.quick else 1_000_000
    if (worst := air.operating_disagreement(n)) > 1e-9:
        raise SystemExit(f"operating points: the two sides differ by {worst:.1e}")
    t = medians(air.operating_calls(n), max(3, run.rounds // 4))
    for name, x in t.items():
        print(f"  {name:20}{x * 1e3:8.1f} ms for {n} pairs of fan and duct, {n / x / 1e6:6.2f} million a second{x / t['ours']:8.2f}")
    run.figures["fans.per second"] = n / t["ours"] / 1e6
    if "NumPy" in t:
        run.figures["fans.ratio"] = t["NumPy"] / t["ours"]
        one = medians({"brentq": air.by_brentq(n)}, 3)["brentq"] / 200
        print(f"  {'SciPy, one by one':20}{one * 1e6:8.1f} µs a pair{one / (t['ours'] / n):31.0f}")


def part_network(run: Run) -> None:
    import air
    import numpy as np
    from measuring import library, medians

    solver = air.solver()
    if solver is None:
        print("  no C++ compiler or no Eigen here: not measured")
        return
    last = None
    for about, side in air.SIZES.items():
        network = air.grid(side)
        calls = {"ours": air.Ours(solver, network)} | ({"spsolve": air.BySciPy(network), "splu, symmetric": air.BySciPy(network, True)} if library("scipy.sparse.linalg") else {})
        flows = {name: np.array(f()) for name, f in calls.items()}
        largest = np.max(abs(flows["ours"]))
        if (off := max(float(np.max(abs(f - flows["ours"])) / largest) for f in flows.values())) > 1e-7:
            raise SystemExit(f"network of {len(network[0])} branches: the sides differ by {off:.1e} of the largest flow")
        t = medians(calls, max(5, run.rounds // (1 if about < 10_000 else 2)))
        branches = len(network[0])
        growth = "" if last is None else f", time grows with the power {np.log(t['ours'] / last[1]) / np.log(branches / last[0]):.2f} of the branches"
        last = branches, t["ours"]
        for name, x in t.items():
            print(f"  {branches:6} branches  {name:16}{x * 1e3:10.3f} ms in {calls[name].steps} sparse systems{x / t['ours']:8.2f}{growth if name == 'ours' else ''}", flush=True)
        run.figures[f"network.steps {about}"] = float(calls["ours"].steps)
        run.figures[f"network.ms {about}"] = t["ours"] * 1e3
        if "spsolve" in t:
            run.figures[f"network.ratio {about}"] = t["spsolve"] / t["ours"]
            run.figures[f"network.ratio of splu {about}"] = t["splu, symmetric"] / t["ours"]
    run.figures["network.steps"] = max(x for key, x in run.figures.items() if key.startswith("network.steps ") and x)


def part_visits(run: Run) -> None:
    import visits
    from measuring import medians

    run.figures["visits.ms"] = 1e3 * medians({"ours": visits.report_data}, run.rounds)["ours"]
    print(f"  the demo visit with all that follows: {run.figures['visits.ms']:.1f} ms")
    pages = sorted(visits.first_page() for _ in range(3))
    run.figures["visits.page"], run.figures["visits.memory"] = pages[1][0], max(p[1] for p in pages)
    print(f"  first page of the client: {pages[1][0]:.2f} s ({pages[1][3]:.2f} s of the processor), {run.figures['visits.memory']:.0f} MiB,"
          f" {pages[1][2]} characters")
    n = 500 if run.quick else 10_000
    one = visits.many(n)
    for threads in (1, 2):
        seconds = visits.seconds_of_many(one, threads)
        print(f"  {n} visits, {threads} thread{'s' if threads > 1 else ''}: {seconds:.1f} s")
    run.figures["visits.many"] = seconds * 10_000 / n
    print(f"  the same without what does not work: {visits.seconds_of_many(one, 2, False):.1f} s")


def part_imports(run: Run) -> None:
    import calls

    t = calls.imports(3 if run.quick else run.rounds)
    for module, x in t.items():
        print(f"  import {module:25}{x * 1e3:7.2f} ms{x / t['json']:8.2f} of json")
    run.figures["imports.ms"] = t["makegood"] * 1e3


def part_compile(run: Run) -> None:
    import figures

    figures.compile_times(1 if run.quick else 5)


def part_ledger(run: Run) -> None:
    import figures

    figures.ledger()


PARTS: dict[str, tuple[str, Callable[[Run], None]]] = {
    "arrays": ("Arrays", part_arrays),
    "lengths": ("Arrays of other lengths", part_lengths),
    "limits": ("Limits of the machine", part_limits),
    "memory": ("Arrays beyond the caches: voltage_drop with out=", part_memory),
    "calls": ("A call from Python, the empty loop taken off", part_calls),
    "errors": ("An error from Python", part_errors),
    "checks": ("A check from Python", part_checks),
    "sizes": ("Smallest cable of many circuits", part_sizes),
    "floor": ("A heated floor in equal steps", part_floor),
    "fans": ("Operating points of many pairs of a fan and a duct, arrays from Python", part_fans),
    "network": ("Networks of ducts: global gradient method, pattern kept", part_network),
    "imports": ("Import, each in a new process, time of the processor", part_imports),
    "monte_carlo": ("Monte Carlo", part_monte_carlo),
    "visits": ("Whole visits", part_visits),
    "compile": ("Compiling one unit, CPU time", part_compile),
    "ledger": ("Ledger", part_ledger),
}


# ------------------------------------------------------------------------------------------------------------ picture


def picture(run: Run, path: str) -> str | None:
    """Draws times and targets; the reason where that cannot be."""
    from measuring import library

    if library("matplotlib") is None:
        return "matplotlib is not installed"
    if not run.table:
        return "the picture shows the arrays, which were not measured"
    import matplotlib

    matplotlib.use("agg")
    import matplotlib.pyplot as plt

    import arrays

    names = list(run.table)
    marks = {"ours": ("#000000", "D"), "NumPy": ("#0072b2", "o"), "numba": ("#009e73", "^"), "numba fastmath": ("#009e73", "v"),
             "numexpr": ("#cc79a7", "s"), "C++ scalar": ("#d55e00", "P"), "Python": ("#999999", "x")}  # fmt: skip
    figure, (left, right) = plt.subplots(1, 2, figsize=(13, 5.4), width_ratios=(1.45, 1), layout="constrained")
    rows = list(range(len(names)))[::-1]
    for who in ("ours", *arrays.OTHERS):
        there = [(t[who], y) for t, y in zip(run.table.values(), rows) if who in t]
        if there:
            colour, mark = marks[who]
            left.plot(*zip(*there), mark, color=colour, label=who, markersize=6, linestyle="none", zorder=3 if who == "ours" else 2)
    if run.shares:
        limit = [(run.shares[n][0] * run.table[n]["ours"], y) for n, y in zip(names, rows)]
        left.plot(*zip(*limit), "|", color="#000000", markersize=13, linestyle="none", label="limit of the machine")
    left.set(xscale="log", xlabel="ns an element (less is better)", title=f"Arrays of {run.n}: one thread, whole Python call")
    left.set_yticks(rows, names)
    left.grid(axis="x", which="both", color="#e5e5e5", linewidth=0.6)
    left.legend(loc="upper right", fontsize=7, frameon=True, ncols=2)
    left.set_ylim(-0.6, len(names) + 0.9)

    judged = judge(run.figures)
    rows = list(range(len(judged)))[::-1]
    for (t, value, state), y in zip(judged, rows):
        aim = "" if t.aim is None else f", aim {t.aim:g}"
        text = f"{t.text}\n{'not measured; ' if state == 'not measured' else ''}gate {t.gate:g}{aim} {t.unit}"
        right.text(-0.03, y, text, transform=right.get_yaxis_transform(), ha="right", va="center", fontsize=8)
        if value is not None:
            good = value / t.gate if t.more else t.gate / value
            right.barh(y, good, height=0.55, color="#d55e00" if state == "MISSED" else "#0072b2")
            right.text(good, y, f" {value:.2f}{' ' + t.unit if t.unit else ''}", va="center", fontsize=8)
        if t.aim is not None:
            right.plot(t.aim / t.gate if t.more else t.gate / t.aim, y, "|", color="black", markersize=14)
    right.axvline(1, color="black", linewidth=1)
    right.set(yticks=[], xlabel="against the gate (1 and more: met; stroke: aim)", title="Targets")
    right.set_xlim(0, max(2.2, right.get_xlim()[1] * 1.12))
    figure.savefig(path, dpi=130)
    plt.close(figure)
    return None


# --------------------------------------------------------------------------------------------------------------- main


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0], epilog=f"sections: {', '.join(PARTS)}")
    parser.add_argument("--quick", action="store_true", help="few rounds, small arrays: shows that everything runs, the figures mean little")
    parser.add_argument("--only", metavar="SECTIONS", help="these sections, with commas between")
    parser.add_argument("--picture", metavar="FILE", action="append", default=[], help="draws the result (.png, .svg, .pdf); may be repeated")
    given = parser.parse_args(arguments)
    chosen = given.only.split(",") if given.only else list(PARTS)
    if strange := [c for c in chosen if c not in PARTS]:
        parser.error(f"no section {', '.join(strange)}; there are {', '.join(PARTS)}")

    run = Run(rounds=3 if given.quick else 21, n=2048 if given.quick else 16384, quick=given.quick, figures={}, table={}, shares={})
    for name in PARTS:
        if name in chosen:
            print(PARTS[name][0], flush=True)
            PARTS[name][1](run)

    judged = [j for j in judge(run.figures) if j[0].section in chosen]
    print("Targets")
    for t, value, state in judged:
        reached = "" if value is None else f"{value:.2f}{' ' + t.unit if t.unit else ''}"
        print(f"  {t.text:52}{reached:>9}   gate {'>=' if t.more else '<='} {t.gate:<5g} aim {'-' if t.aim is None else format(t.aim, 'g'):<5} {state}")
    for path in given.picture:
        trouble = picture(run, path)
        print(f"no picture: {trouble}" if trouble else f"picture: {path}")
    count = {s: sum(j[2] == s for j in judged) for s in ("aim reached", "met", "MISSED", "not measured")}
    print(", ".join(f"{n} {s.lower()}" for s, n in count.items()))
    return 1 if count["MISSED"] else 0


if __name__ == "__main__":
    if any(os.environ.get(k) != v for k, v in HEAP.items()) and os.name == "posix":
        os.execve(sys.executable, [sys.executable, *sys.argv], {**os.environ, **HEAP})
    sys.exit(main(sys.argv[1:]))

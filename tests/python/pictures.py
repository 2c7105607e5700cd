# SPDX-License-Identifier: MIT
"""Pictures of the proof: how often what was stated with some probability was so, and what visits cost.

    python test_proof.py 100000 && python test_proof.py cost 2000       # or fewer
    python pictures.py DIRECTORY [family ...]                            # of what they kept under build/proof/

Writes reliability.png and cost.png. Needs matplotlib. MAKEGOOD_POINTS: of the sums, 512 unless given, as there.
"""

from __future__ import annotations

import os
import sys
import textwrap
from pathlib import Path

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np

os.environ.setdefault("MAKEGOOD_POINTS", "512")
from proof import reliability, scores  # noqa: E402
from test_proof import FAMILIES, HERE, document, kept  # noqa: E402

INK, GRID, MAIN, OTHER, THIRD = "#222222", "#dddddd", "#1f5f99", "#c8742b", "#888888"


def title_of(name: str) -> str:
    return document(name)["title"]


def curves(names: list[str], path: Path) -> None:
    columns = 2 if len(names) in (2, 4) else min(3, len(names))
    rows = -(-len(names) // columns)
    figure, axes = plt.subplots(rows, columns, figsize=(3.6 * columns, 3.9 * rows), squeeze=False)
    for place, axis in enumerate(axes.flat):
        if place >= len(names):
            axis.axis("off")
            continue
        name = names[place]
        axis.plot([0, 1], [0, 1], color=THIRD, lw=1, zorder=1)
        lines = []
        of = kept(name, HERE)
        for part, colour, shift, words in ((1.0, MAIN, -0.004, "all tests"), (0.5, OTHER, 0.004, "half of them")):
            made = of["part"] == part
            p, truth = of["p"][made], of["truth"][made]
            s = scores(p, truth, np.random.default_rng(1))
            points = reliability(p, truth, 10)
            if points:
                x, y, sd, _ = (np.array(v) for v in zip(*points))
                axis.errorbar(x + shift, y, 2 * sd, color=colour, marker="o", ms=4, lw=0, elinewidth=1.2, capsize=2, zorder=3)
            lines.append(f"{words}: slope {s.slope:.3f}, ECE {s.ece:.3f}, first {s.top_1:.0%}")
        axis.set_title(textwrap.fill(title_of(name), 44), fontsize=8.5, color=INK)
        axis.text(0.97, 0.03, "\n".join([*lines, f"{s.visits} visits each"]), transform=axis.transAxes, ha="right", va="bottom", fontsize=5.5, color=INK)
        axis.set_xlim(-0.02, 1.02)
        axis.set_ylim(-0.02, 1.02)
        axis.set_aspect("equal")
        axis.grid(color=GRID, lw=0.6)
        for side in ("top", "right"):
            axis.spines[side].set_visible(False)
        if place % columns == 0:
            axis.set_ylabel("found")
        axis.set_xlabel("stated probability")
        if place == 0:
            marks = [plt.Line2D([], [], color=c, marker="o", ms=4, lw=0) for c in (MAIN, OTHER)]
            axis.legend(marks, ["all tests", "half of them"], loc="upper left", fontsize=7, frameon=False)
    figure.suptitle("Found against stated, over all hypotheses; bars: two standard deviations of chance", fontsize=10, color=INK)
    figure.tight_layout(h_pad=1.6, rect=(0, 0.01, 1, 1 - 0.04 / rows))
    figure.savefig(path, dpi=130, bbox_inches="tight")
    plt.close(figure)


def costs(names: list[str], path: Path) -> None:
    figure, axis = plt.subplots(figsize=(8.2, 1.3 + 0.85 * len(names)))
    ticks, labels = [], []
    longest = 0.0
    for i, name in enumerate(names):
        of = kept(name, HERE / "cost")
        for j, (which, word) in enumerate((("ours", "planner"), ("theirs", "checklist"))):
            tests = of[which][:, 0]
            wrong = of[which][:, 1] - of["known"]
            at = -(i * 2.6 + j)
            axis.barh(at, tests.mean(), color=MAIN, height=0.8, label="tests" if i + j == 0 else None)
            axis.barh(at, wrong.mean(), left=tests.mean(), color=OTHER, height=0.8, label="acts that were not the best" if i + j == 0 else None)
            total = tests + wrong
            error = 2 * total.std() / len(total) ** 0.5
            axis.errorbar(total.mean(), at, xerr=error, color=INK, lw=1, capsize=2)
            axis.text(total.mean() + error, at, f"  {total.mean():.0f}", va="center", fontsize=8, color=INK)
            longest = max(longest, total.mean() + error)
            ticks.append(at)
            labels.append(textwrap.fill(title_of(name), 34) + f": {word}" if j == 0 else word)
    axis.set_yticks(ticks, labels, fontsize=8)
    axis.set_xlim(0, 1.12 * longest)
    axis.set_xlabel("money a visit, beyond the act that fits the fault best", fontsize=9)
    axis.grid(axis="x", color=GRID, lw=0.6)
    axis.set_axisbelow(True)
    for side in ("top", "right", "left"):
        axis.spines[side].set_visible(False)
    axis.legend(loc="lower right", bbox_to_anchor=(1.0, 1.0), ncols=2, fontsize=8, frameon=False)
    figure.suptitle("What finding out costs (lines: two standard deviations of chance)", fontsize=10, color=INK)
    figure.tight_layout(h_pad=1.6)
    figure.savefig(path, dpi=130)
    plt.close(figure)


if __name__ == "__main__":
    where = Path(sys.argv[1])
    where.mkdir(parents=True, exist_ok=True)
    asked = sys.argv[2:] or FAMILIES
    curves(asked, where / "reliability.png")
    costs(asked, where / "cost.png")
    print(*(where / f for f in ("reliability.png", "cost.png")), sep="\n")

# SPDX-License-Identifier: MIT
"""Counts the rows of the ledger by function: python proved.py TESTS/PUBLISHED OUTPUT.inc"""
import csv
import pathlib
import sys

counts: dict[str, list[int]] = {}
for path in sorted(pathlib.Path(sys.argv[1]).glob("*.csv")):
    with path.open(newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            name = row.get("function")
            if not name or "seen" not in row:  # the measured errors are no published values
                continue
            seen_other = counts.setdefault(name, [0, 0])
            # a value computed from a formula that was only recalled is no proof
            seen_other[0 if row["seen"] == "seen" and row["grade"] != "memory" else 1] += 1
text = "".join(f'      {{"{name}", {seen}, {other}}},\n' for name, (seen, other) in sorted(counts.items()))
target = pathlib.Path(sys.argv[2])
target.parent.mkdir(parents=True, exist_ok=True)
if not target.exists() or target.read_text(encoding="utf-8") != text:
    target.write_text(text, encoding="utf-8")

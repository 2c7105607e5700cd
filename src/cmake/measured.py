# SPDX-License-Identifier: MIT
"""The table of measured errors as rows of C++: python measured.py TESTS/PUBLISHED/accuracy.csv OUTPUT.inc"""
import csv
import pathlib
import sys

KINDS = ("random", "boundary", "cancellation")
found: dict[str, dict[str, tuple[str, str]]] = {}
with open(sys.argv[1], newline="", encoding="utf-8") as file:
    for row in csv.DictReader(file):
        # through float: what stands in the file cannot become anything but a number
        found.setdefault(row["function"], {})[row["kind"]] = (repr(float(row["ulp"])), repr(float(row["absolute"])))
text = ""
for name, kinds in sorted(found.items()):
    ulp, absolute = (", ".join(kinds[k][i] for k in KINDS) for i in (0, 1))
    text += f'      {{"{name}", {{{ulp}}}, {{{absolute}}}}},\n'
target = pathlib.Path(sys.argv[2])
target.parent.mkdir(parents=True, exist_ok=True)
if not target.exists() or target.read_text(encoding="utf-8") != text:
    target.write_text(text, encoding="utf-8")

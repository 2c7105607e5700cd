# SPDX-License-Identifier: MIT
"""A folder of JSON files as C++ texts, one token a line: python tokens.py FOLDER OUTPUT.inc"""
import json
import pathlib
import sys


def tokens(value: object) -> list[str]:
    if isinstance(value, dict):
        return ["{"] + [t for k, v in value.items() for t in ["k" + k, *tokens(v)]] + ["}"]
    if isinstance(value, list):
        return ["["] + [t for v in value for t in tokens(v)] + ["]"]
    if isinstance(value, bool) or value is None:
        return [{True: "t", False: "f", None: "z"}[value]]
    if isinstance(value, str):
        assert "\n" not in value and ")mg" not in value, value
        return ["s" + value]
    assert isinstance(value, (int, float))
    return ["n" + repr(float(value))]


text = ""
for path in sorted(pathlib.Path(sys.argv[1]).glob("*.json")):
    part, size = "", 0
    for line in tokens(json.loads(path.read_text(encoding="utf-8"))):
        if size > 60000:  # a literal may have 65536 bytes: the rest follows under the same name
            text += f'    {{"{path.stem}", R"mg({part})mg"}},\n'
            part, size = "", 0
        part += line + "\n"
        size += len(line.encode()) + 1
    text += f'    {{"{path.stem}", R"mg({part})mg"}},\n'
target = pathlib.Path(sys.argv[2])
target.parent.mkdir(parents=True, exist_ok=True)
if not target.exists() or target.read_text(encoding="utf-8") != text:
    target.write_text(text, encoding="utf-8")

# SPDX-License-Identifier: MIT
"""Reading a visit from a file: JSON text to a document, with duplicate names and non-numbers refused."""

from __future__ import annotations

import os
from typing import Any

from . import _core


def _document_error(path: str, text: str) -> _core.DocumentError:
    error = _core.DocumentError(f"{path}: {text}" if path else text)
    error.problems = [(path, text)]
    return error


class _Pairs(tuple):
    """An object in which a name stands twice: all its pairs, so that the reader can say where."""

    makegood_pairs = True


def parse_json(text: str) -> Any:
    """JSON (RFC 8259) as a document; NaN and Infinity are no numbers, a name that stands twice is kept for the reader."""
    import json

    def pairs(items: list[tuple[str, Any]]) -> Any:
        fields = dict(items)
        return fields if len(fields) == len(items) else _Pairs(items)

    def constant(word: str) -> Any:
        raise _document_error("", f"not JSON: {word} is no number; leave the reading out or write null")

    try:
        return json.loads(text, object_pairs_hook=pairs, parse_constant=constant)
    except json.JSONDecodeError as e:
        raise _document_error("", f"not JSON: {e.msg} (line {e.lineno}, column {e.colno})") from None
    except RecursionError:
        raise _document_error("", "is nested too deeply") from None
    except _core.Error:
        raise
    except ValueError as e:  # a whole number of thousands of digits
        raise _document_error("", f"not JSON that can be read: {e}") from None


def load_visit(path: str | os.PathLike[str]) -> _core.Visit:
    """The visit in a JSON file. DocumentError lists every problem with its path in the document."""
    with open(path, encoding="utf-8-sig") as file:
        try:
            text = file.read()
        except UnicodeDecodeError as e:
            raise _document_error("", f"not UTF-8 text ({e.reason} at byte {e.start})") from None
    return _core.read_visit(parse_json(text))

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
from typing import Any

class Result:
    """The result of a model: its fields as attributes, and as a mapping by `to_dict()`."""

    def __init__(self, fields: dict[str, Any]) -> None: ...
    def __getattr__(self, name: str) -> Any: ...
    def to_dict(self) -> dict[str, Any]: ...
    def __eq__(self, other: object) -> bool: ...

class Worked:
    """Worked steps: a list of dicts in `steps`, and text by `str()`."""

    steps: list[dict[str, Any]]
    value: float
    unit: str
    def __init__(self, fields: dict[str, Any]) -> None: ...

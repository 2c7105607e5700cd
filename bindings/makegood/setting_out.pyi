# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Setting out: where to drill on a tiled wall."""

from collections.abc import Sequence
from typing import Any, Final, final

from ._core import Formula
from ._slow import Result

@final
class _PlaceBrackets(Formula):
    """Where a pattern of holes goes on a tiled wall: farthest from the edges of tiles, on joints, or some of each, outside keep-outs and inside a window; the exact best place, all that are as good, and the clearance of each hole. Lengths in millimetres."""

    def __call__(
        self,
        wall: dict[str, Any],
        holes: Sequence[dict[str, Any]],
        hole_diameter_mm: float,
        tolerance_mm: float | None = None,
        wander_mm: float | None = None,
        keep_outs: Sequence[dict[str, Any]] | None = None,
        window: dict[str, Any] | None = None,
        wished: dict[str, Any] | None = None,
    ) -> Result:
        """Where a pattern of holes goes on a tiled wall: farthest from the edges of tiles, on joints, or some of each, outside keep-outs and inside a window; the exact best place, all that are as good, and the clearance of each hole. Lengths in millimetres."""

place_brackets: Final[_PlaceBrackets]

__all__ = [
    "place_brackets",
]

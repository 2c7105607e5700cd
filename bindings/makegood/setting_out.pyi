# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Setting out: where to drill on a tiled wall."""

from collections.abc import Sequence
from typing import Any, Final, final

import numpy as np
import numpy.typing as npt

from ._core import Formula, Rulebook
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

@final
class _BathroomZone(Formula):
    """Which zone of a bathroom a place lies in: for any plan, with the distance measured as a taut string round corners, over or under low partitions; how far the edges are, which bath or shower governs, and whether a tape can tell. At an edge the stricter zone counts. Where a string has several low partitions on its way down, the lower ones are left out: never longer than the real one."""

    def __call__(
        self,
        point: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        room: dict[str, Any],
        rulebook: str | Rulebook,
        tape_m: float | None = None,
    ) -> Result:
        """Which zone of a bathroom a place lies in: for any plan, with the distance measured as a taut string round corners, over or under low partitions; how far the edges are, which bath or shower governs, and whether a tape can tell. At an edge the stricter zone counts. Where a string has several low partitions on its way down, the lower ones are left out: never longer than the real one."""

@final
class _BathroomZones(Formula):
    """Zones of many places in one room, as columns; each as bathroom_zone gives it."""

    def __call__(
        self,
        points: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
        room: dict[str, Any],
        rulebook: str | Rulebook,
        tape_m: float | None = None,
    ) -> Result:
        """Zones of many places in one room, as columns; each as bathroom_zone gives it."""

@final
class _CheckEquipmentInZone(Formula):
    """Equipment in a zone of a bathroom against an edition's rules: its kind, IP code, SELV voltage and source, distance of socket-outlets, earthed grid of floor heating, residual current device, supplementary bonding. One finding a rule; what nobody looked at is undecided, an unknown IP code needs the maker's figure."""

    def __call__(self, equipment: dict[str, Any], zone: str | dict[str, Any], rulebook: str | Rulebook) -> Result:
        """Equipment in a zone of a bathroom against an edition's rules: its kind, IP code, SELV voltage and source, distance of socket-outlets, earthed grid of floor heating, residual current device, supplementary bonding. One finding a rule; what nobody looked at is undecided, an unknown IP code needs the maker's figure."""

@final
class _CableZones(Formula):
    """Strips of a wall in which a rulebook lets cables run unseen: from its top, its corners and its accessories, on the far side of a thin wall too, as rectangles."""

    def __call__(
        self,
        wall: dict[str, Any],
        accessories: Sequence[dict[str, Any]],
        rulebook: str | Rulebook,
        margin_mm: float | None = None,
    ) -> Result:
        """Strips of a wall in which a rulebook lets cables run unseen: from its top, its corners and its accessories, on the far side of a thin wall too, as rectangles."""

@final
class _CheckHoleOutsideCableZones(Formula):
    """A hole with its tolerance and depth against the cable zones of a wall. It passes the rule only: wiring that somebody else left need not follow zones, so the finding stays "not proved clear: isolate and detect" until a detector was used on circuits proved dead."""

    def __call__(
        self,
        hole: dict[str, Any],
        wall: dict[str, Any],
        accessories: Sequence[dict[str, Any]],
        rulebook: str | Rulebook,
        detector: dict[str, Any] | None = None,
        margin_mm: float | None = None,
        behind: dict[str, Any] | None = None,
    ) -> Result:
        """A hole with its tolerance and depth against the cable zones of a wall. It passes the rule only: wiring that somebody else left need not follow zones, so the finding stays "not proved clear: isolate and detect" until a detector was used on circuits proved dead."""

place_brackets: Final[_PlaceBrackets]
bathroom_zone: Final[_BathroomZone]
bathroom_zones: Final[_BathroomZones]
check_equipment_in_zone: Final[_CheckEquipmentInZone]
cable_zones: Final[_CableZones]
check_hole_outside_cable_zones: Final[_CheckHoleOutsideCableZones]

__all__ = [
    "place_brackets",
    "bathroom_zone",
    "bathroom_zones",
    "check_equipment_in_zone",
    "cable_zones",
    "check_hole_outside_cable_zones",
]

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Extract ventilation: moist air, ducts, rates of extract."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Reading, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

_RoomKind: TypeAlias = Literal[
    "kitchen",
    "kitchen_hood",
    "utility",
    "bathroom",
    "sanitary",
    "kitchen_continuous",
    "utility_continuous",
    "bathroom_continuous",
    "sanitary_continuous",
]
_Purpose: TypeAlias = Literal["no_outside_wall", "purge", "sanitary", "kitchen_continuous"]
_OverrunCase: TypeAlias = Literal["no_outside_wall", "no_window"]
_CountedBy: TypeAlias = Literal[
    "bedrooms",
    "one_habitable_room",
    "bedrooms_and_area",
    "persons",
    "main_rooms_1",
    "main_rooms_2",
    "main_rooms_3",
    "main_rooms_4",
    "main_rooms_5",
    "main_rooms_6",
    "main_rooms_7",
]
_Floor: TypeAlias = Literal["finished_floor", "bare_floor"]
_VentilatedRoom: TypeAlias = Literal[
    "habitable_several_floors",
    "habitable_one_floor",
    "kitchen_several_floors",
    "kitchen_one_floor",
    "bathroom",
    "utility",
    "sanitary",
    "habitable_continuous",
    "habitable_continuous_checklist",
    "replaced_window",
    "added_wet_room",
    "diagram_4_smaller",
]
_Opening: TypeAlias = Literal["opens_15_to_30", "opens_30_or_more", "openable"]
_Distance: TypeAlias = Literal[
    "terminal_below_ceiling",
    "hood_above_hob",
    "ventilator_height",
    "fan_to_ventilator",
    "rigid_support_spacing",
    "flexible_support_spacing",
    "bathroom_fan_diameter",
]
_Duct: TypeAlias = Literal[
    "flexible_final",
    "flexible_4_in_50_cfm",
    "flexible_5_in_80_cfm",
    "flexible_5_in_100_cfm",
    "flexible_6_in_100_cfm",
    "smooth_4_in_80_cfm",
    "smooth_4_in_100_cfm",
    "smooth_5_in_125_cfm",
]
_DischargeTo: TypeAlias = Literal[
    "outside",
    "roof_void",
    "vented_roof_void",
    "soffit",
    "ridge_vent",
    "crawl_space",
    "other_room",
    "recirculated",
]
_Pitch: TypeAlias = Literal["over_22_degrees", "to_22_degrees"]
_Extent: TypeAlias = Literal["room", "dwelling"]
_Period: TypeAlias = Literal["month", "week", "day"]
_Taps: TypeAlias = Literal["corner", "flange", "d_half"]
_AngleDeg: TypeAlias = Literal["30", "45", "60"] | float
_AngleDeg2: TypeAlias = Literal["30", "45", "60", "90"] | float

@final
class _AirflowFromAirChanges(Formula):
    """Air flow that changes the air of a room a number of times an hour."""

    @overload
    def __call__(  # type: ignore
        self,
        room_volume_m3: float,
        air_changes_per_h: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Air flow that changes the air of a room a number of times an hour."""
    @overload
    def __call__(  # type: ignore
        self,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        room_volume_m3: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, room_volume_m3: float | Measured, air_changes_per_h: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        room_volume_m3: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirChangesFromAirflow(Formula):
    """Air changes an hour that an air flow makes in a room."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        room_volume_m3: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Air changes an hour that an air flow makes in a room."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        room_volume_m3: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_l_per_s: float | Measured, room_volume_m3: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flow_l_per_s: float | Measured, room_volume_m3: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        room_volume_m3: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FlowFromVelocity(Formula):
    """Air flow from the mean velocity over a free area."""

    @overload
    def __call__(self, velocity_m_per_s: float, area_mm2: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Air flow from the mean velocity over a free area."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        area_mm2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | _Array,
        area_mm2: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_m_per_s: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, velocity_m_per_s: float | Measured, area_mm2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, velocity_m_per_s: float | Measured, area_mm2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        velocity_m_per_s: float | _Array,
        area_mm2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_m_per_s: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DoorUndercutArea(Formula):
    """Free area of the gap under a door."""

    @overload
    def __call__(self, door_width_mm: float, gap_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Free area of the gap under a door."""
    @overload
    def __call__(  # type: ignore
        self,
        door_width_mm: float | Measured,
        gap_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        door_width_mm: float | _Array,
        gap_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        door_width_mm: float | _Array | Measured | MeasuredArray,
        gap_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, door_width_mm: float | Measured, gap_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, door_width_mm: float | Measured, gap_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        door_width_mm: float | _Array,
        gap_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        door_width_mm: float | tuple[float, float],
        gap_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        door_width_mm: float | Measured | Distribution,
        gap_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        door_width_mm: float | Measured | Distribution,
        gap_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _MakeUpAirVelocity(Formula):
    """Mean velocity of the air that follows an extract fan through the openings into the room."""

    @overload
    def __call__(self, flow_l_per_s: float, area_mm2: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Mean velocity of the air that follows an extract fan through the openings into the room."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        area_mm2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        area_mm2: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_l_per_s: float | Measured, area_mm2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flow_l_per_s: float | Measured, area_mm2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        area_mm2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirPower(Formula):
    """Power that a fan gives to the air."""

    @overload
    def __call__(self, flow_l_per_s: float, pressure_pa: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Power that a fan gives to the air."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        pressure_pa: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        pressure_pa: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_l_per_s: float | Measured, pressure_pa: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flow_l_per_s: float | Measured, pressure_pa: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        pressure_pa: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        pressure_pa: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SpecificFanPower(Formula):
    """Electrical power of a fan to each litre a second that it moves."""

    @overload
    def __call__(self, power_w: float, flow_l_per_s: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Electrical power of a fan to each litre a second that it moves."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        flow_l_per_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        flow_l_per_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        power_w: float | _Array | Measured | MeasuredArray,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w: float | Measured, flow_l_per_s: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w: float | Measured, flow_l_per_s: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        flow_l_per_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        flow_l_per_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        flow_l_per_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        power_w: float | Measured | Distribution,
        flow_l_per_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FanLawFlow(Formula):
    """Flow of a fan at another speed or size, at the same efficiency."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        speed_ratio: float,
        diameter_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Flow of a fan at another speed or size, at the same efficiency."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        speed_ratio: float | _Array | Measured | MeasuredArray,
        diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flow_l_per_s: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        speed_ratio: float | tuple[float, float],
        diameter_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FanLawPressure(Formula):
    """Pressure of a fan at another speed, size or density, at the same efficiency."""

    @overload
    def __call__(  # type: ignore
        self,
        pressure_pa: float,
        speed_ratio: float,
        diameter_ratio: float = 1.0,
        density_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Pressure of a fan at another speed, size or density, at the same efficiency."""
    @overload
    def __call__(  # type: ignore
        self,
        pressure_pa: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        pressure_pa: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        density_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        pressure_pa: float | _Array | Measured | MeasuredArray,
        speed_ratio: float | _Array | Measured | MeasuredArray,
        diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        density_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        pressure_pa: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        pressure_pa: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        pressure_pa: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        density_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        pressure_pa: float | tuple[float, float],
        speed_ratio: float | tuple[float, float],
        diameter_ratio: float | tuple[float, float] = 1.0,
        density_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        pressure_pa: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        density_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        pressure_pa: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        density_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FanLawPower(Formula):
    """Power at the shaft of a fan at another speed, size or density, at the same efficiency."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        speed_ratio: float,
        diameter_ratio: float = 1.0,
        density_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Power at the shaft of a fan at another speed, size or density, at the same efficiency."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        density_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        power_w: float | _Array | Measured | MeasuredArray,
        speed_ratio: float | _Array | Measured | MeasuredArray,
        diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        density_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        speed_ratio: float | Measured,
        diameter_ratio: float | Measured = 1.0,
        density_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        speed_ratio: float | _Array,
        diameter_ratio: float | _Array = 1.0,
        density_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        speed_ratio: float | tuple[float, float],
        diameter_ratio: float | tuple[float, float] = 1.0,
        density_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        density_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        power_w: float | Measured | Distribution,
        speed_ratio: float | Measured | Distribution,
        diameter_ratio: float | Measured | Distribution = 1.0,
        density_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _CheckExtract(Formula):
    """Extract rate of a room as measured, against the rulebook's rate for its kind."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        room_kind: _RoomKind,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Extract rate of a room as measured, against the rulebook's rate for its kind."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        room_kind: _RoomKind | Sequence[_RoomKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckAirChanges(Formula):
    """Air changes that an intermittent fan makes in a wet room without an outside wall, against the rulebook's number."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        room_volume_m3: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Air changes that an intermittent fan makes in a wet room without an outside wall, against the rulebook's number."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        room_volume_m3: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDuctPressure(Formula):
    """Pressure that a run of duct takes at a flow, against what the fan gives at that flow."""

    @overload
    def __call__(  # type: ignore
        self,
        pressure_loss_pa: _Given,
        available_pressure_pa: _Given,
        rulebook: str | Rulebook | None = None,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Pressure that a run of duct takes at a flow, against what the fan gives at that flow."""
    @overload
    def __call__(
        self,
        pressure_loss_pa: _Given | _Rows,
        available_pressure_pa: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckAirChangesFor(Formula):
    """Air changes that a flow makes in a room, against the rulebook's number for the purpose."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        room_volume_m3: _Given,
        purpose: _Purpose,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Air changes that a flow makes in a room, against the rulebook's number for the purpose."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        room_volume_m3: _Given | _Rows,
        purpose: _Purpose | Sequence[_Purpose] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckOverrun(Formula):
    """Time that an intermittent fan runs on, against the rulebook's least time for such a room."""

    @overload
    def __call__(  # type: ignore
        self,
        overrun_min: _Given,
        overrun_case: _OverrunCase,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Time that an intermittent fan runs on, against the rulebook's least time for such a room."""
    @overload
    def __call__(
        self,
        overrun_min: _Given | _Rows,
        overrun_case: _OverrunCase | Sequence[_OverrunCase] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckWholeDwelling(Formula):
    """Ventilation of a whole dwelling, the sum of its continuous extract or supply, against the rulebook's rate."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        counted_by: _CountedBy,
        rulebook: str | Rulebook,
        counted_count: _Given = 0.0,
        floor_area_m2: _Given = 0.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Ventilation of a whole dwelling, the sum of its continuous extract or supply, against the rulebook's rate."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        counted_by: _CountedBy | Sequence[_CountedBy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        counted_count: _Given | _Rows = 0.0,
        floor_area_m2: _Given | _Rows = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDoorUndercut(Formula):
    """Free area under an inner door against the area that the rulebook's gap under its door has."""

    @overload
    def __call__(  # type: ignore
        self,
        door_width_mm: _Given,
        gap_mm: _Given,
        floor: _Floor,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Free area under an inner door against the area that the rulebook's gap under its door has."""
    @overload
    def __call__(
        self,
        door_width_mm: _Given | _Rows,
        gap_mm: _Given | _Rows,
        floor: _Floor | Sequence[_Floor] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckBackgroundVentilator(Formula):
    """Equivalent area of a room's background ventilators together, against the rulebook's least for the room."""

    @overload
    def __call__(  # type: ignore
        self,
        equivalent_area_mm2: _Given,
        ventilated_room: _VentilatedRoom,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Equivalent area of a room's background ventilators together, against the rulebook's least for the room."""
    @overload
    def __call__(
        self,
        equivalent_area_mm2: _Given | _Rows,
        ventilated_room: _VentilatedRoom | Sequence[_VentilatedRoom] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckPurgeOpening(Formula):
    """Opening for purge ventilation as a part of the room's floor area, against the rulebook's least part."""

    @overload
    def __call__(  # type: ignore
        self,
        opening_area_m2: _Given,
        floor_area_m2: _Given,
        opening: _Opening,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Opening for purge ventilation as a part of the room's floor area, against the rulebook's least part."""
    @overload
    def __call__(
        self,
        opening_area_m2: _Given | _Rows,
        floor_area_m2: _Given | _Rows,
        opening: _Opening | Sequence[_Opening] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckVentilationDistance(Formula):
    """A distance of an installed fan, terminal, ventilator or duct support against the rulebook's least or greatest one."""

    @overload
    def __call__(  # type: ignore
        self,
        distance_mm: _Given,
        distance: _Distance,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """A distance of an installed fan, terminal, ventilator or duct support against the rulebook's least or greatest one."""
    @overload
    def __call__(
        self,
        distance_mm: _Given | _Rows,
        distance: _Distance | Sequence[_Distance] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDuctLength(Formula):
    """Length of a duct against the greatest that the rulebook permits, less what its elbows take off."""

    @overload
    def __call__(  # type: ignore
        self,
        length_m: _Given,
        duct: _Duct,
        rulebook: str | Rulebook,
        elbow_count: _Given = 0.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Length of a duct against the greatest that the rulebook permits, less what its elbows take off."""
    @overload
    def __call__(
        self,
        length_m: _Given | _Rows,
        duct: _Duct | Sequence[_Duct] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        elbow_count: _Given | _Rows = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckFlexibleBends(Formula):
    """Bends made with flexible duct against the greatest number at the flow."""

    @overload
    def __call__(  # type: ignore
        self,
        bend_count: _Given,
        flow_l_per_s: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Bends made with flexible duct against the greatest number at the flow."""
    @overload
    def __call__(
        self,
        bend_count: _Given | _Rows,
        flow_l_per_s: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckTerminalArea(Formula):
    """Free area of a terminal as a part of the duct's free area, against the rulebook's least part."""

    @overload
    def __call__(  # type: ignore
        self,
        free_area_mm2: _Given,
        duct_area_mm2: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Free area of a terminal as a part of the duct's free area, against the rulebook's least part."""
    @overload
    def __call__(
        self,
        free_area_mm2: _Given | _Rows,
        duct_area_mm2: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDischargeOutside(Formula):
    """Where extracted air goes, 1 for outside and 0 for anywhere else, against what the rulebook permits."""

    @overload
    def __call__(  # type: ignore
        self,
        discharge_to: _DischargeTo,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Where extracted air goes, 1 for outside and 0 for anywhere else, against what the rulebook permits."""
    @overload
    def __call__(
        self,
        discharge_to: _DischargeTo | Sequence[_DischargeTo] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRoofVoidOpenings(Formula):
    """Open area of a roof void that extract air is blown into, as a part of the ceiling area, against the rulebook's least part."""

    @overload
    def __call__(  # type: ignore
        self,
        open_area_m2: _Given,
        ceiling_area_m2: _Given,
        pitch: _Pitch,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Open area of a roof void that extract air is blown into, as a part of the ceiling area, against the rulebook's least part."""
    @overload
    def __call__(
        self,
        open_area_m2: _Given | _Rows,
        ceiling_area_m2: _Given | _Rows,
        pitch: _Pitch | Sequence[_Pitch] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRoofVoidRidgeShare(Formula):
    """Part of a roof void's openings that lies near the ridge, against the rulebook's least part."""

    @overload
    def __call__(  # type: ignore
        self,
        ridge_area_m2: _Given,
        open_area_m2: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Part of a roof void's openings that lies near the ridge, against the rulebook's least part."""
    @overload
    def __call__(
        self,
        ridge_area_m2: _Given | _Rows,
        open_area_m2: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDesignFlow(Formula):
    """Flow as measured at commissioning against the least that the rulebook accepts for the flow as designed."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        design_flow_l_per_s: _Given,
        extent: _Extent,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Flow as measured at commissioning against the least that the rulebook accepts for the flow as designed."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        design_flow_l_per_s: _Given | _Rows,
        extent: _Extent | Sequence[_Extent] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDesignFlowExcess(Formula):
    """Flow as measured at commissioning against the greatest that the rulebook accepts for the flow as designed."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: _Given,
        design_flow_l_per_s: _Given,
        extent: _Extent,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Flow as measured at commissioning against the greatest that the rulebook accepts for the flow as designed."""
    @overload
    def __call__(
        self,
        flow_l_per_s: _Given | _Rows,
        design_flow_l_per_s: _Given | _Rows,
        extent: _Extent | Sequence[_Extent] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckSurfaceMould(Formula):
    """Relative humidity of the room's air at its coldest surface against the criterion of mould that is named."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: _Given,
        room_c: _Given,
        relative_humidity_percent: _Given,
        period: _Period,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Relative humidity of the room's air at its coldest surface against the criterion of mould that is named."""
    @overload
    def __call__(
        self,
        surface_c: _Given | _Rows,
        room_c: _Given | _Rows,
        relative_humidity_percent: _Given | _Rows,
        period: _Period | Sequence[_Period] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckSurfaceCondensation(Formula):
    """Temperature of a surface against the dew point of the air at it: water condenses where it is not above."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: _Given,
        room_c: _Given,
        relative_humidity_percent: _Given,
        rulebook: str | Rulebook | None = None,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Temperature of a surface against the dew point of the air at it: water condenses where it is not above."""
    @overload
    def __call__(
        self,
        surface_c: _Given | _Rows,
        room_c: _Given | _Rows,
        relative_humidity_percent: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRoomHumidity(Formula):
    """Mean relative humidity of a room against the rulebook's criterion for the period."""

    @overload
    def __call__(  # type: ignore
        self,
        relative_humidity_percent: _Given,
        period: _Period,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Mean relative humidity of a room against the rulebook's criterion for the period."""
    @overload
    def __call__(
        self,
        relative_humidity_percent: _Given | _Rows,
        period: _Period | Sequence[_Period] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _SurfaceTemperature(Formula):
    """Temperature of the inner surface of an outside wall or roof from its temperature factor."""

    @overload
    def __call__(  # type: ignore
        self,
        outside_c: float,
        room_c: float,
        temperature_factor: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of the inner surface of an outside wall or roof from its temperature factor."""
    @overload
    def __call__(  # type: ignore
        self,
        outside_c: float | Measured,
        room_c: float | Measured,
        temperature_factor: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        outside_c: float | _Array,
        room_c: float | _Array,
        temperature_factor: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        outside_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        outside_c: float | Measured,
        room_c: float | Measured,
        temperature_factor: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        outside_c: float | Measured,
        room_c: float | Measured,
        temperature_factor: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        outside_c: float | _Array,
        room_c: float | _Array,
        temperature_factor: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        outside_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
        temperature_factor: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        outside_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        outside_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _TemperatureFactor(Formula):
    """Temperature factor of a surface from three temperatures read together."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float,
        room_c: float,
        outside_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature factor of a surface from three temperatures read together."""
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        outside_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
        outside_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        surface_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, surface_c: float | Measured, room_c: float | Measured, outside_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        outside_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
        outside_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        surface_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
        outside_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SurfaceRelativeHumidity(Formula):
    """Relative humidity of the room's air where it touches a colder surface; above 100 % water condenses there."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float,
        room_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Relative humidity of the room's air where it touches a colder surface; above 100 % water condenses there."""
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        surface_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        surface_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _CriticalSurfaceTemperature(Formula):
    """Temperature of a surface at which the room's air reaches a given relative humidity there: 80 % for mould after ISO 13788, 100 % for condensation."""

    @overload
    def __call__(  # type: ignore
        self,
        room_c: float,
        relative_humidity_percent: float,
        surface_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of a surface at which the room's air reaches a given relative humidity there: 80 % for mould after ISO 13788, 100 % for condensation."""
    @overload
    def __call__(  # type: ignore
        self,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
        surface_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        room_c: float | _Array,
        relative_humidity_percent: float | _Array,
        surface_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        room_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        surface_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
        surface_humidity_percent: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        room_c: float | Measured,
        relative_humidity_percent: float | Measured,
        surface_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        room_c: float | _Array,
        relative_humidity_percent: float | _Array,
        surface_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        room_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
        surface_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        room_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        surface_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        room_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        surface_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _ReynoldsNumber(Formula):
    """Reynolds number of the flow in a duct."""

    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float,
        diameter_mm: float,
        density_kg_per_m3: float,
        viscosity_pa_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Reynolds number of the flow in a duct."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        diameter_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | _Array,
        diameter_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_m_per_s: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        viscosity_pa_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        velocity_m_per_s: float | Measured,
        diameter_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        diameter_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        velocity_m_per_s: float | _Array,
        diameter_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_m_per_s: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        viscosity_pa_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FrictionFactor(Formula):
    """Darcy friction factor: laminar to Re 2300, Churchill in the transition, Colebrook-White from Re 4000."""

    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float,
        relative_roughness: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Darcy friction factor: laminar to Re 2300, Churchill in the transition, Colebrook-White from Re 4000."""
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | Measured,
        relative_roughness: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        reynolds: float | _Array | Measured | MeasuredArray,
        relative_roughness: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, reynolds: float | Measured, relative_roughness: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, reynolds: float | Measured, relative_roughness: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        reynolds: float | tuple[float, float],
        relative_roughness: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FrictionFactorColebrook(Formula):
    """Darcy friction factor of turbulent flow: the root of the Colebrook-White equation."""

    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float,
        relative_roughness: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Darcy friction factor of turbulent flow: the root of the Colebrook-White equation."""
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | Measured,
        relative_roughness: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        reynolds: float | _Array | Measured | MeasuredArray,
        relative_roughness: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, reynolds: float | Measured, relative_roughness: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, reynolds: float | Measured, relative_roughness: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        reynolds: float | tuple[float, float],
        relative_roughness: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FrictionFactorChurchill(Formula):
    """Darcy friction factor in every regime by Churchill's formula."""

    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float,
        relative_roughness: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Darcy friction factor in every regime by Churchill's formula."""
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | Measured,
        relative_roughness: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        reynolds: float | _Array | Measured | MeasuredArray,
        relative_roughness: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, reynolds: float | Measured, relative_roughness: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, reynolds: float | Measured, relative_roughness: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        reynolds: float | tuple[float, float],
        relative_roughness: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FrictionFactorSwameeJain(Formula):
    """Darcy friction factor of turbulent flow by the explicit formula of Swamee and Jain."""

    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float,
        relative_roughness: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Darcy friction factor of turbulent flow by the explicit formula of Swamee and Jain."""
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | Measured,
        relative_roughness: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        reynolds: float | _Array | Measured | MeasuredArray,
        relative_roughness: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, reynolds: float | Measured, relative_roughness: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, reynolds: float | Measured, relative_roughness: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        reynolds: float | tuple[float, float],
        relative_roughness: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FrictionFactorHaaland(Formula):
    """Darcy friction factor of turbulent flow by Haaland's explicit formula."""

    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float,
        relative_roughness: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Darcy friction factor of turbulent flow by Haaland's explicit formula."""
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | Measured,
        relative_roughness: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        reynolds: float | _Array | Measured | MeasuredArray,
        relative_roughness: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, reynolds: float | Measured, relative_roughness: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, reynolds: float | Measured, relative_roughness: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        reynolds: float | _Array,
        relative_roughness: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        reynolds: float | tuple[float, float],
        relative_roughness: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        reynolds: float | Measured | Distribution,
        relative_roughness: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _HydraulicDiameter(Formula):
    """Hydraulic diameter of a rectangular duct; it goes with the true velocity."""

    @overload
    def __call__(self, width_mm: float, height_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Hydraulic diameter of a rectangular duct; it goes with the true velocity."""
    @overload
    def __call__(  # type: ignore
        self,
        width_mm: float | Measured,
        height_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        width_mm: float | _Array | Measured | MeasuredArray,
        height_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, width_mm: float | Measured, height_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, width_mm: float | Measured, height_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        width_mm: float | tuple[float, float],
        height_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _EquivalentDiameter(Formula):
    """Diameter of the round duct with the same flow at the same loss as a rectangular one (Huebscher); not to be used with the true velocity."""

    @overload
    def __call__(self, width_mm: float, height_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Diameter of the round duct with the same flow at the same loss as a rectangular one (Huebscher); not to be used with the true velocity."""
    @overload
    def __call__(  # type: ignore
        self,
        width_mm: float | Measured,
        height_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        width_mm: float | _Array | Measured | MeasuredArray,
        height_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, width_mm: float | Measured, height_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, width_mm: float | Measured, height_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        width_mm: float | tuple[float, float],
        height_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DuctVelocity(Formula):
    """Mean velocity in a round duct."""

    @overload
    def __call__(self, flow_l_per_s: float, diameter_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Mean velocity in a round duct."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        diameter_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        diameter_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_l_per_s: float | Measured, diameter_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flow_l_per_s: float | Measured, diameter_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        diameter_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DuctVelocityRectangular(Formula):
    """Mean velocity in a rectangular duct."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        width_mm: float,
        height_mm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mean velocity in a rectangular duct."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        width_mm: float | _Array | Measured | MeasuredArray,
        height_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        width_mm: float | _Array,
        height_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        width_mm: float | tuple[float, float],
        height_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VelocityPressure(Formula):
    """Dynamic pressure of the mean velocity."""

    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float,
        density_kg_per_m3: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Dynamic pressure of the mean velocity."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        density_kg_per_m3: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_m_per_s: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, velocity_m_per_s: float | Measured, density_kg_per_m3: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        density_kg_per_m3: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        velocity_m_per_s: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_m_per_s: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FittingPressureLoss(Formula):
    """Total pressure lost in a fitting from its loss coefficient at the velocity that the coefficient refers to."""

    @overload
    def __call__(  # type: ignore
        self,
        loss_coefficient: float,
        velocity_m_per_s: float,
        density_kg_per_m3: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Total pressure lost in a fitting from its loss coefficient at the velocity that the coefficient refers to."""
    @overload
    def __call__(  # type: ignore
        self,
        loss_coefficient: float | Measured,
        velocity_m_per_s: float | Measured,
        density_kg_per_m3: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loss_coefficient: float | _Array,
        velocity_m_per_s: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        loss_coefficient: float | _Array | Measured | MeasuredArray,
        velocity_m_per_s: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loss_coefficient: float | Measured,
        velocity_m_per_s: float | Measured,
        density_kg_per_m3: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loss_coefficient: float | Measured,
        velocity_m_per_s: float | Measured,
        density_kg_per_m3: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loss_coefficient: float | _Array,
        velocity_m_per_s: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loss_coefficient: float | tuple[float, float],
        velocity_m_per_s: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loss_coefficient: float | Measured | Distribution,
        velocity_m_per_s: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        loss_coefficient: float | Measured | Distribution,
        velocity_m_per_s: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DuctPressureLoss(Formula):
    """Pressure lost by friction in a straight round duct (Darcy-Weisbach)."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        diameter_mm: float,
        length_m: float,
        roughness_mm: float,
        density_kg_per_m3: float,
        viscosity_pa_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Pressure lost by friction in a straight round duct (Darcy-Weisbach)."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        diameter_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        diameter_mm: float | _Array,
        length_m: float | _Array,
        roughness_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        roughness_mm: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        viscosity_pa_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flow_l_per_s: float | Measured,
        diameter_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        diameter_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        diameter_mm: float | _Array,
        length_m: float | _Array,
        roughness_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        roughness_mm: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        viscosity_pa_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        roughness_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        roughness_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DuctPressureLossRectangular(Formula):
    """Pressure lost by friction in a straight rectangular duct: hydraulic diameter and true velocity."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        width_mm: float,
        height_mm: float,
        length_m: float,
        roughness_mm: float,
        density_kg_per_m3: float,
        viscosity_pa_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Pressure lost by friction in a straight rectangular duct: hydraulic diameter and true velocity."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        width_mm: float | _Array,
        height_mm: float | _Array,
        length_m: float | _Array,
        roughness_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        width_mm: float | _Array | Measured | MeasuredArray,
        height_mm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        roughness_mm: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        viscosity_pa_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        width_mm: float | Measured,
        height_mm: float | Measured,
        length_m: float | Measured,
        roughness_mm: float | Measured,
        density_kg_per_m3: float | Measured,
        viscosity_pa_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        width_mm: float | _Array,
        height_mm: float | _Array,
        length_m: float | _Array,
        roughness_mm: float | _Array,
        density_kg_per_m3: float | _Array,
        viscosity_pa_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        width_mm: float | tuple[float, float],
        height_mm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        roughness_mm: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        viscosity_pa_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        roughness_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        width_mm: float | Measured | Distribution,
        height_mm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        roughness_mm: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        viscosity_pa_s: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FlexibleDuctMultiplier(Formula):
    """How many times the loss of the fully stretched duct a compressed flexible duct has."""

    @overload
    def __call__(  # type: ignore
        self,
        compression_percent: float,
        diameter_mm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How many times the loss of the fully stretched duct a compressed flexible duct has."""
    @overload
    def __call__(  # type: ignore
        self,
        compression_percent: float | Measured,
        diameter_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        compression_percent: float | _Array,
        diameter_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        compression_percent: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, compression_percent: float | Measured, diameter_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        compression_percent: float | Measured,
        diameter_mm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        compression_percent: float | _Array,
        diameter_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        compression_percent: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        compression_percent: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        compression_percent: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressure(Formula):
    """Pressure of saturated water vapour, over ice below 0 °C and over water from 0 °C (Hyland-Wexler)."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated water vapour, over ice below 0 °C and over water from 0 °C (Hyland-Wexler)."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressureIce(Formula):
    """Pressure of saturated water vapour over ice (Hyland-Wexler)."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated water vapour over ice (Hyland-Wexler)."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressureMagnus(Formula):
    """Pressure of saturated water vapour over water by the WMO form of the Magnus formula."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated water vapour over water by the WMO form of the Magnus formula."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressureIso13788(Formula):
    """Pressure of saturated water vapour as building physics takes it (ISO 13788)."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated water vapour as building physics takes it (ISO 13788)."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VapourPressure(Formula):
    """Partial pressure of the water vapour in air of a given temperature and relative humidity."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Partial pressure of the water vapour in air of a given temperature and relative humidity."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, relative_humidity_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DewPoint(Formula):
    """Temperature at which the air's vapour saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature at which the air's vapour saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, relative_humidity_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DewPointMagnus(Formula):
    """Dew point over water by the WMO form of the Magnus formula."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Dew point over water by the WMO form of the Magnus formula."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, relative_humidity_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RelativeHumidity(Formula):
    """Relative humidity from temperature and dew point (below 0 °C: over ice, frost point)."""

    @overload
    def __call__(self, temperature_c: float, dew_point_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Relative humidity from temperature and dew point (below 0 °C: over ice, frost point)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        dew_point_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        dew_point_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        dew_point_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, dew_point_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured, dew_point_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        dew_point_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        dew_point_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        dew_point_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        dew_point_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _HumidityRatio(Formula):
    """Mass of water vapour to each kilogram of dry air."""

    @overload
    def __call__(  # type: ignore
        self,
        vapour_pressure_pa: float,
        pressure_pa: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mass of water vapour to each kilogram of dry air."""
    @overload
    def __call__(  # type: ignore
        self,
        vapour_pressure_pa: float | Measured,
        pressure_pa: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        vapour_pressure_pa: float | _Array,
        pressure_pa: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        vapour_pressure_pa: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, vapour_pressure_pa: float | Measured, pressure_pa: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        vapour_pressure_pa: float | Measured,
        pressure_pa: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        vapour_pressure_pa: float | _Array,
        pressure_pa: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        vapour_pressure_pa: float | tuple[float, float],
        pressure_pa: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        vapour_pressure_pa: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        vapour_pressure_pa: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirDensity(Formula):
    """Density of moist air as a mixture of ideal gases."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        pressure_pa: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Density of moist air as a mixture of ideal gases."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        pressure_pa: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        pressure_pa: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
        pressure_pa: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirViscosity(Formula):
    """Dynamic viscosity of air by Sutherland's formula."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Dynamic viscosity of air by Sutherland's formula."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressureSonntag(Formula):
    """Pressure of saturated water vapour over water by Sonntag's formula of 1990."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated water vapour over water by Sonntag's formula of 1990."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationPressureIapws(Formula):
    """Pressure of saturated steam by the international industrial formulation (IAPWS-IF97, region 4)."""

    @overload
    def __call__(self, temperature_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of saturated steam by the international industrial formulation (IAPWS-IF97, region 4)."""
    @overload
    def __call__(self, temperature_c: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, temperature_c: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DewPointIso13788(Formula):
    """Dew point, below 0 °C frost point, by the saturation formula of building physics (ISO 13788)."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Dew point, below 0 °C frost point, by the saturation formula of building physics (ISO 13788)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, relative_humidity_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _SaturationTemperature(Formula):
    """Temperature at which water vapour of a pressure saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."""

    @overload
    def __call__(self, vapour_pressure_pa: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Temperature at which water vapour of a pressure saturates: dew point, below 0 °C frost point (inverse of Hyland-Wexler)."""
    @overload
    def __call__(self, vapour_pressure_pa: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        vapour_pressure_pa: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        vapour_pressure_pa: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, vapour_pressure_pa: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, vapour_pressure_pa: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        vapour_pressure_pa: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, vapour_pressure_pa: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        vapour_pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        vapour_pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VapourPressureFromHumidityRatio(Formula):
    """Partial pressure of the water vapour from the mass of vapour to each kilogram of dry air."""

    @overload
    def __call__(  # type: ignore
        self,
        humidity_ratio: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Partial pressure of the water vapour from the mass of vapour to each kilogram of dry air."""
    @overload
    def __call__(  # type: ignore
        self,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        humidity_ratio: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, humidity_ratio: float | Measured, pressure_pa: float | Measured = 101325.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        humidity_ratio: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RelativeHumidityFromHumidityRatio(Formula):
    """Relative humidity from temperature and humidity ratio (below 0 °C over ice)."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        humidity_ratio: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Relative humidity from temperature and humidity ratio (below 0 °C over ice)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        humidity_ratio: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        humidity_ratio: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirDensityFromHumidityRatio(Formula):
    """Density of moist air from its humidity ratio."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        humidity_ratio: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Density of moist air from its humidity ratio."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        humidity_ratio: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        humidity_ratio: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VapourConcentration(Formula):
    """Mass of water vapour in each cubic metre of air."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mass of water vapour in each cubic metre of air."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, relative_humidity_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _MoistureRemoved(Formula):
    """Water that an air flow carries out of a room; negative: it brings water in."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float,
        temperature_c: float,
        relative_humidity_percent: float,
        outside_c: float,
        outside_humidity_percent: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Water that an air flow carries out of a room; negative: it brings water in."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        outside_c: float | Measured,
        outside_humidity_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_l_per_s: float | _Array,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        outside_c: float | _Array,
        outside_humidity_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_l_per_s: float | _Array | Measured | MeasuredArray,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        outside_humidity_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flow_l_per_s: float | Measured,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        outside_c: float | Measured,
        outside_humidity_percent: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_l_per_s: float | Measured,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        outside_c: float | Measured,
        outside_humidity_percent: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_l_per_s: float | _Array,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        outside_c: float | _Array,
        outside_humidity_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_l_per_s: float | tuple[float, float],
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
        outside_c: float | tuple[float, float],
        outside_humidity_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_l_per_s: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        outside_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        flow_l_per_s: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        outside_humidity_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _Enthalpy(Formula):
    """Enthalpy of moist air to each kilogram of dry air, from 0 for dry air and liquid water at 0 °C."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        humidity_ratio: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Enthalpy of moist air to each kilogram of dry air, from 0 for dry air and liquid water at 0 °C."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        humidity_ratio: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        humidity_ratio: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, humidity_ratio: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured, humidity_ratio: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        humidity_ratio: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        humidity_ratio: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _TemperatureFromEnthalpy(Formula):
    """Temperature of moist air from its enthalpy and humidity ratio."""

    @overload
    def __call__(  # type: ignore
        self,
        enthalpy_kj_per_kg: float,
        humidity_ratio: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of moist air from its enthalpy and humidity ratio."""
    @overload
    def __call__(  # type: ignore
        self,
        enthalpy_kj_per_kg: float | Measured,
        humidity_ratio: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        enthalpy_kj_per_kg: float | _Array,
        humidity_ratio: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        enthalpy_kj_per_kg: float | _Array | Measured | MeasuredArray,
        humidity_ratio: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, enthalpy_kj_per_kg: float | Measured, humidity_ratio: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        enthalpy_kj_per_kg: float | Measured,
        humidity_ratio: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        enthalpy_kj_per_kg: float | _Array,
        humidity_ratio: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        enthalpy_kj_per_kg: float | tuple[float, float],
        humidity_ratio: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        enthalpy_kj_per_kg: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        enthalpy_kj_per_kg: float | Measured | Distribution,
        humidity_ratio: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _HumidityRatioFromWetBulb(Formula):
    """Humidity ratio from dry bulb and wet bulb; a wet bulb below 0 °C is an iced one."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        wet_bulb_c: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Humidity ratio from dry bulb and wet bulb; a wet bulb below 0 °C is an iced one."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        wet_bulb_c: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        wet_bulb_c: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        wet_bulb_c: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        wet_bulb_c: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        wet_bulb_c: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        wet_bulb_c: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RelativeHumidityFromWetBulb(Formula):
    """Relative humidity from dry bulb and wet bulb of a psychrometer (below 0 °C over ice)."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        wet_bulb_c: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Relative humidity from dry bulb and wet bulb of a psychrometer (below 0 °C over ice)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        wet_bulb_c: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        wet_bulb_c: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        wet_bulb_c: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        wet_bulb_c: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        wet_bulb_c: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        wet_bulb_c: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        wet_bulb_c: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _WetBulb(Formula):
    """Thermodynamic wet bulb of air: the root of the energy balance, over water, below 0 °C over ice."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        relative_humidity_percent: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Thermodynamic wet bulb of air: the root of the energy balance, over water, below 0 °C over ice."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        relative_humidity_percent: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        relative_humidity_percent: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        temperature_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _StandardPressure(Formula):
    """Pressure of the standard atmosphere at an altitude above the sea."""

    @overload
    def __call__(self, altitude_m: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Pressure of the standard atmosphere at an altitude above the sea."""
    @overload
    def __call__(self, altitude_m: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        altitude_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        altitude_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, altitude_m: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, altitude_m: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        altitude_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, altitude_m: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        altitude_m: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        altitude_m: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AltitudeFromPressure(Formula):
    """Altitude above the sea at which the standard atmosphere has a pressure."""

    @overload
    def __call__(self, pressure_pa: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Altitude above the sea at which the standard atmosphere has a pressure."""
    @overload
    def __call__(self, pressure_pa: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        pressure_pa: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        pressure_pa: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, pressure_pa: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, pressure_pa: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        pressure_pa: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, pressure_pa: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        pressure_pa: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DecayConcentration(Formula):
    """Concentration in a mixed room some time after the source has stopped."""

    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float,
        air_changes_per_h: float,
        time_h: float,
        outside_ppm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Concentration in a mixed room some time after the source has stopped."""
    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float | _Array,
        air_changes_per_h: float | _Array,
        time_h: float | _Array,
        outside_ppm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        initial_ppm: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        time_h: float | _Array | Measured | MeasuredArray,
        outside_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        initial_ppm: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        initial_ppm: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        initial_ppm: float | _Array,
        air_changes_per_h: float | _Array,
        time_h: float | _Array,
        outside_ppm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        initial_ppm: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
        time_h: float | tuple[float, float],
        outside_ppm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        initial_ppm: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        initial_ppm: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RoomConcentration(Formula):
    """Concentration in a mixed room with a steady source, some time after it began."""

    @overload
    def __call__(  # type: ignore
        self,
        source_l_per_s: float,
        room_volume_m3: float,
        air_changes_per_h: float,
        time_h: float,
        initial_ppm: float = 0.0,
        outside_ppm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Concentration in a mixed room with a steady source, some time after it began."""
    @overload
    def __call__(  # type: ignore
        self,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        source_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        time_h: float | _Array,
        initial_ppm: float | _Array = 0.0,
        outside_ppm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        source_l_per_s: float | _Array | Measured | MeasuredArray,
        room_volume_m3: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        time_h: float | _Array | Measured | MeasuredArray,
        initial_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        outside_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        time_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        source_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        time_h: float | _Array,
        initial_ppm: float | _Array = 0.0,
        outside_ppm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        source_l_per_s: float | tuple[float, float],
        room_volume_m3: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
        time_h: float | tuple[float, float],
        initial_ppm: float | tuple[float, float] = 0.0,
        outside_ppm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        source_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        initial_ppm: float | Measured | Distribution = 0.0,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        source_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        initial_ppm: float | Measured | Distribution = 0.0,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _TimeToConcentration(Formula):
    """Time after which a mixed room reaches a concentration, rising with its source or falling without one."""

    @overload
    def __call__(  # type: ignore
        self,
        limit_ppm: float,
        source_l_per_s: float,
        room_volume_m3: float,
        air_changes_per_h: float,
        initial_ppm: float = 0.0,
        outside_ppm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Time after which a mixed room reaches a concentration, rising with its source or falling without one."""
    @overload
    def __call__(  # type: ignore
        self,
        limit_ppm: float | Measured,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        limit_ppm: float | _Array,
        source_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        initial_ppm: float | _Array = 0.0,
        outside_ppm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        limit_ppm: float | _Array | Measured | MeasuredArray,
        source_l_per_s: float | _Array | Measured | MeasuredArray,
        room_volume_m3: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        initial_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        outside_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        limit_ppm: float | Measured,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        limit_ppm: float | Measured,
        source_l_per_s: float | Measured,
        room_volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        initial_ppm: float | Measured = 0.0,
        outside_ppm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        limit_ppm: float | _Array,
        source_l_per_s: float | _Array,
        room_volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        initial_ppm: float | _Array = 0.0,
        outside_ppm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        limit_ppm: float | tuple[float, float],
        source_l_per_s: float | tuple[float, float],
        room_volume_m3: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
        initial_ppm: float | tuple[float, float] = 0.0,
        outside_ppm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        limit_ppm: float | Measured | Distribution,
        source_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        initial_ppm: float | Measured | Distribution = 0.0,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        limit_ppm: float | Measured | Distribution,
        source_l_per_s: float | Measured | Distribution,
        room_volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        initial_ppm: float | Measured | Distribution = 0.0,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _AirChangesFromDecay(Formula):
    """Air changes an hour of a mixed room from two readings of a concentration that decays."""

    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float,
        final_ppm: float,
        time_h: float,
        outside_ppm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Air changes an hour of a mixed room from two readings of a concentration that decays."""
    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float | Measured,
        final_ppm: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        initial_ppm: float | _Array,
        final_ppm: float | _Array,
        time_h: float | _Array,
        outside_ppm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        initial_ppm: float | _Array | Measured | MeasuredArray,
        final_ppm: float | _Array | Measured | MeasuredArray,
        time_h: float | _Array | Measured | MeasuredArray,
        outside_ppm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        initial_ppm: float | Measured,
        final_ppm: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        initial_ppm: float | Measured,
        final_ppm: float | Measured,
        time_h: float | Measured,
        outside_ppm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        initial_ppm: float | _Array,
        final_ppm: float | _Array,
        time_h: float | _Array,
        outside_ppm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        initial_ppm: float | tuple[float, float],
        final_ppm: float | tuple[float, float],
        time_h: float | tuple[float, float],
        outside_ppm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        initial_ppm: float | Measured | Distribution,
        final_ppm: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        initial_ppm: float | Measured | Distribution,
        final_ppm: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        outside_ppm: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _StackPressure(Formula):
    """Pressure that drives air up a shaft because it is lighter than the air outside; negative: it holds it back."""

    @overload
    def __call__(  # type: ignore
        self,
        outside_density_kg_per_m3: float,
        density_kg_per_m3: float,
        rise_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Pressure that drives air up a shaft because it is lighter than the air outside; negative: it holds it back."""
    @overload
    def __call__(  # type: ignore
        self,
        outside_density_kg_per_m3: float | Measured,
        density_kg_per_m3: float | Measured,
        rise_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        outside_density_kg_per_m3: float | _Array,
        density_kg_per_m3: float | _Array,
        rise_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        outside_density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        rise_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        outside_density_kg_per_m3: float | Measured,
        density_kg_per_m3: float | Measured,
        rise_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        outside_density_kg_per_m3: float | Measured,
        density_kg_per_m3: float | Measured,
        rise_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        outside_density_kg_per_m3: float | _Array,
        density_kg_per_m3: float | _Array,
        rise_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        outside_density_kg_per_m3: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        rise_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        outside_density_kg_per_m3: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        rise_m: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        outside_density_kg_per_m3: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        rise_m: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _StackPressureFromTemperatures(Formula):
    """The same from the temperatures inside and outside, as for dry air."""

    @overload
    def __call__(  # type: ignore
        self,
        inside_c: float,
        outside_c: float,
        rise_m: float,
        pressure_pa: float = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """The same from the temperatures inside and outside, as for dry air."""
    @overload
    def __call__(  # type: ignore
        self,
        inside_c: float | Measured,
        outside_c: float | Measured,
        rise_m: float | Measured,
        pressure_pa: float | Measured = 101325.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        inside_c: float | _Array,
        outside_c: float | _Array,
        rise_m: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        inside_c: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        rise_m: float | _Array | Measured | MeasuredArray,
        pressure_pa: float | _Array | Measured | MeasuredArray = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        inside_c: float | Measured,
        outside_c: float | Measured,
        rise_m: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        inside_c: float | Measured,
        outside_c: float | Measured,
        rise_m: float | Measured,
        pressure_pa: float | Measured = 101325.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        inside_c: float | _Array,
        outside_c: float | _Array,
        rise_m: float | _Array,
        pressure_pa: float | _Array = 101325.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        inside_c: float | tuple[float, float],
        outside_c: float | tuple[float, float],
        rise_m: float | tuple[float, float],
        pressure_pa: float | tuple[float, float] = 101325.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        inside_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        rise_m: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        inside_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        rise_m: float | Measured | Distribution,
        pressure_pa: float | Measured | Distribution = 101325.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _InfiltrationFlow(Formula):
    """Air that wind and warmth drive through the leaks of a dwelling while no fan runs."""

    @overload
    def __call__(  # type: ignore
        self,
        leakage_area_mm2: float,
        temperature_difference_k: float,
        wind_m_per_s: float,
        stack_coefficient: float,
        wind_coefficient: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Air that wind and warmth drive through the leaks of a dwelling while no fan runs."""
    @overload
    def __call__(  # type: ignore
        self,
        leakage_area_mm2: float | Measured,
        temperature_difference_k: float | Measured,
        wind_m_per_s: float | Measured,
        stack_coefficient: float | Measured,
        wind_coefficient: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        leakage_area_mm2: float | _Array,
        temperature_difference_k: float | _Array,
        wind_m_per_s: float | _Array,
        stack_coefficient: float | _Array,
        wind_coefficient: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        leakage_area_mm2: float | _Array | Measured | MeasuredArray,
        temperature_difference_k: float | _Array | Measured | MeasuredArray,
        wind_m_per_s: float | _Array | Measured | MeasuredArray,
        stack_coefficient: float | _Array | Measured | MeasuredArray,
        wind_coefficient: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        leakage_area_mm2: float | Measured,
        temperature_difference_k: float | Measured,
        wind_m_per_s: float | Measured,
        stack_coefficient: float | Measured,
        wind_coefficient: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        leakage_area_mm2: float | Measured,
        temperature_difference_k: float | Measured,
        wind_m_per_s: float | Measured,
        stack_coefficient: float | Measured,
        wind_coefficient: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        leakage_area_mm2: float | _Array,
        temperature_difference_k: float | _Array,
        wind_m_per_s: float | _Array,
        stack_coefficient: float | _Array,
        wind_coefficient: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        leakage_area_mm2: float | tuple[float, float],
        temperature_difference_k: float | tuple[float, float],
        wind_m_per_s: float | tuple[float, float],
        stack_coefficient: float | tuple[float, float],
        wind_coefficient: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        leakage_area_mm2: float | Measured | Distribution,
        temperature_difference_k: float | Measured | Distribution,
        wind_m_per_s: float | Measured | Distribution,
        stack_coefficient: float | Measured | Distribution,
        wind_coefficient: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        leakage_area_mm2: float | Measured | Distribution,
        temperature_difference_k: float | Measured | Distribution,
        wind_m_per_s: float | Measured | Distribution,
        stack_coefficient: float | Measured | Distribution,
        wind_coefficient: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VelocityFromVelocityPressure(Formula):
    """Velocity from the velocity pressure that a pitot tube reads."""

    @overload
    def __call__(  # type: ignore
        self,
        velocity_pressure_pa: float,
        density_kg_per_m3: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Velocity from the velocity pressure that a pitot tube reads."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_pressure_pa: float | Measured,
        density_kg_per_m3: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_pressure_pa: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_pressure_pa: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, velocity_pressure_pa: float | Measured, density_kg_per_m3: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        velocity_pressure_pa: float | Measured,
        density_kg_per_m3: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        velocity_pressure_pa: float | _Array,
        density_kg_per_m3: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_pressure_pa: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_pressure_pa: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        velocity_pressure_pa: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _GrilleFlow(Formula):
    """Air flow from the mean velocity before a grille, its face area and the factor that belongs to both."""

    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float,
        face_area_mm2: float,
        correction_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Air flow from the mean velocity before a grille, its face area and the factor that belongs to both."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        face_area_mm2: float | Measured,
        correction_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_m_per_s: float | _Array,
        face_area_mm2: float | _Array,
        correction_factor: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_m_per_s: float | _Array | Measured | MeasuredArray,
        face_area_mm2: float | _Array | Measured | MeasuredArray,
        correction_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        velocity_m_per_s: float | Measured,
        face_area_mm2: float | Measured,
        correction_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        velocity_m_per_s: float | Measured,
        face_area_mm2: float | Measured,
        correction_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        velocity_m_per_s: float | _Array,
        face_area_mm2: float | _Array,
        correction_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_m_per_s: float | tuple[float, float],
        face_area_mm2: float | tuple[float, float],
        correction_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        face_area_mm2: float | Measured | Distribution,
        correction_factor: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        velocity_m_per_s: float | Measured | Distribution,
        face_area_mm2: float | Measured | Distribution,
        correction_factor: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _FlowMeasurementUncertainty(Formula):
    """Relative standard uncertainty of a measured flow."""

    @overload
    def __call__(  # type: ignore
        self,
        limit_percent: float,
        repeatability_percent: float,
        correction_percent: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Relative standard uncertainty of a measured flow."""
    @overload
    def __call__(  # type: ignore
        self,
        limit_percent: float | Measured,
        repeatability_percent: float | Measured,
        correction_percent: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        limit_percent: float | _Array,
        repeatability_percent: float | _Array,
        correction_percent: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        limit_percent: float | _Array | Measured | MeasuredArray,
        repeatability_percent: float | _Array | Measured | MeasuredArray,
        correction_percent: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        limit_percent: float | Measured,
        repeatability_percent: float | Measured,
        correction_percent: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        limit_percent: float | Measured,
        repeatability_percent: float | Measured,
        correction_percent: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        limit_percent: float | _Array,
        repeatability_percent: float | _Array,
        correction_percent: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        limit_percent: float | tuple[float, float],
        repeatability_percent: float | tuple[float, float],
        correction_percent: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        limit_percent: float | Measured | Distribution,
        repeatability_percent: float | Measured | Distribution,
        correction_percent: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        limit_percent: float | Measured | Distribution,
        repeatability_percent: float | Measured | Distribution,
        correction_percent: float | Measured | Distribution = 0.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _OrificeDischargeCoefficient(Formula):
    """Discharge coefficient of a sharp orifice plate (Reader-Harris and Gallagher)."""

    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float,
        diameter_mm: float,
        reynolds: float,
        taps: _Taps,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Discharge coefficient of a sharp orifice plate (Reader-Harris and Gallagher)."""
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        reynolds: float | Measured,
        taps: _Taps,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        reynolds: float | _Array,
        taps: _Taps | Sequence[_Taps] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        orifice_mm: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        reynolds: float | _Array | Measured | MeasuredArray,
        taps: _Taps | Sequence[_Taps] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        reynolds: float | Measured,
        taps: _Taps,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        reynolds: float | Measured,
        taps: _Taps,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        reynolds: float | _Array,
        taps: _Taps | Sequence[_Taps] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        orifice_mm: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
        reynolds: float | tuple[float, float],
        taps: _Taps,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        reynolds: float | Measured | Distribution,
        taps: _Taps,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        reynolds: float | Measured | Distribution,
        taps: _Taps,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _OrificeExpansibility(Formula):
    """Expansibility factor of a sharp orifice plate: what the gas expands on its way through."""

    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float,
        diameter_mm: float,
        upstream_pa: float,
        downstream_pa: float,
        isentropic_exponent: float = 1.4,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Expansibility factor of a sharp orifice plate: what the gas expands on its way through."""
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        upstream_pa: float | Measured,
        downstream_pa: float | Measured,
        isentropic_exponent: float | Measured = 1.4,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        upstream_pa: float | _Array,
        downstream_pa: float | _Array,
        isentropic_exponent: float | _Array = 1.4,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        orifice_mm: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        upstream_pa: float | _Array | Measured | MeasuredArray,
        downstream_pa: float | _Array | Measured | MeasuredArray,
        isentropic_exponent: float | _Array | Measured | MeasuredArray = 1.4,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        upstream_pa: float | Measured,
        downstream_pa: float | Measured,
        isentropic_exponent: float | Measured = 1.4,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        upstream_pa: float | Measured,
        downstream_pa: float | Measured,
        isentropic_exponent: float | Measured = 1.4,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        upstream_pa: float | _Array,
        downstream_pa: float | _Array,
        isentropic_exponent: float | _Array = 1.4,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        orifice_mm: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
        upstream_pa: float | tuple[float, float],
        downstream_pa: float | tuple[float, float],
        isentropic_exponent: float | tuple[float, float] = 1.4,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        upstream_pa: float | Measured | Distribution,
        downstream_pa: float | Measured | Distribution,
        isentropic_exponent: float | Measured | Distribution = 1.4,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        upstream_pa: float | Measured | Distribution,
        downstream_pa: float | Measured | Distribution,
        isentropic_exponent: float | Measured | Distribution = 1.4,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _OrificeFlow(Formula):
    """Flow through an orifice plate from the pressure across it."""

    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float,
        diameter_mm: float,
        pressure_difference_pa: float,
        density_kg_per_m3: float,
        discharge_coefficient: float,
        expansibility_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Flow through an orifice plate from the pressure across it."""
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        pressure_difference_pa: float | Measured,
        density_kg_per_m3: float | Measured,
        discharge_coefficient: float | Measured,
        expansibility_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        pressure_difference_pa: float | _Array,
        density_kg_per_m3: float | _Array,
        discharge_coefficient: float | _Array,
        expansibility_factor: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        orifice_mm: float | _Array | Measured | MeasuredArray,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        pressure_difference_pa: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        discharge_coefficient: float | _Array | Measured | MeasuredArray,
        expansibility_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        pressure_difference_pa: float | Measured,
        density_kg_per_m3: float | Measured,
        discharge_coefficient: float | Measured,
        expansibility_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        orifice_mm: float | Measured,
        diameter_mm: float | Measured,
        pressure_difference_pa: float | Measured,
        density_kg_per_m3: float | Measured,
        discharge_coefficient: float | Measured,
        expansibility_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        orifice_mm: float | _Array,
        diameter_mm: float | _Array,
        pressure_difference_pa: float | _Array,
        density_kg_per_m3: float | _Array,
        discharge_coefficient: float | _Array,
        expansibility_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        orifice_mm: float | tuple[float, float],
        diameter_mm: float | tuple[float, float],
        pressure_difference_pa: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        discharge_coefficient: float | tuple[float, float],
        expansibility_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        pressure_difference_pa: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        discharge_coefficient: float | Measured | Distribution,
        expansibility_factor: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        orifice_mm: float | Measured | Distribution,
        diameter_mm: float | Measured | Distribution,
        pressure_difference_pa: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        discharge_coefficient: float | Measured | Distribution,
        expansibility_factor: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DivergingBranchCoefficient(Formula):
    """Loss coefficient of the air that leaves into the branch of a wye."""

    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Loss coefficient of the air that leaves into the branch of a wye."""
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg | Sequence[_AngleDeg] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        branch_flow_ratio: float | _Array | Measured | MeasuredArray,
        angle_deg: _AngleDeg | Sequence[_AngleDeg] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg | Sequence[_AngleDeg] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        branch_flow_ratio: float | tuple[float, float],
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _DivergingRunCoefficient(Formula):
    """Loss coefficient of the air that goes straight on past a branch that takes some of it."""

    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float,
        branch_diameter_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Loss coefficient of the air that goes straight on past a branch that takes some of it."""
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        branch_diameter_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        branch_flow_ratio: float | _Array | Measured | MeasuredArray,
        branch_diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, branch_flow_ratio: float | Measured, branch_diameter_ratio: float | Measured = 1.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        branch_flow_ratio: float | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        branch_flow_ratio: float | tuple[float, float],
        branch_diameter_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _ConvergingBranchCoefficient(Formula):
    """Loss coefficient of the air that comes in by the branch of a tee or wye."""

    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Loss coefficient of the air that comes in by the branch of a tee or wye."""
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        branch_flow_ratio: float | _Array | Measured | MeasuredArray,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        branch_flow_ratio: float | tuple[float, float],
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _ConvergingRunCoefficient(Formula):
    """Loss coefficient of the air that comes straight on, past a branch that adds to it."""

    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Loss coefficient of the air that comes straight on, past a branch that adds to it."""
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        branch_flow_ratio: float | _Array | Measured | MeasuredArray,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        branch_flow_ratio: float | Measured,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        branch_flow_ratio: float | _Array,
        angle_deg: _AngleDeg2 | Sequence[_AngleDeg2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        branch_diameter_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        branch_flow_ratio: float | tuple[float, float],
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        branch_flow_ratio: float | Measured | Distribution,
        angle_deg: _AngleDeg2,
        branch_diameter_ratio: float | Measured | Distribution = 1.0,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RequiredExtract(Formula):
    """The extract rate that a rulebook asks for in a kind of room, in l/s, with its source."""

    def __call__(self, room_kind: str, rulebook: str | Rulebook) -> Result:
        """The extract rate that a rulebook asks for in a kind of room, in l/s, with its source."""

@final
class _DuctRun(Formula):
    """Pressure that a run of duct takes at a flow, segment by segment with each one's share, so that the worst is seen; with a band, and cautions where bends stand close or flexible duct lies outside what was tested."""

    def __call__(
        self,
        segments: Sequence[dict[str, Any]],
        flow_l_per_s: float,
        air: dict[str, Any] | None = None,
        leakage_class: str | None = None,
        leakage_pressure_pa: float | None = None,
    ) -> Result:
        """Pressure that a run of duct takes at a flow, segment by segment with each one's share, so that the worst is seen; with a band, and cautions where bends stand close or flexible duct lies outside what was tested."""

@final
class _OperatingPoint(Formula):
    """Where a fan's curve meets the system: every intersection, which of them can be held, the flow with its uncertainty, power and specific fan power; density, speed, equal fans in series or in parallel, or two unlike ones: curves added exactly, and said where the weaker is driven."""

    def __call__(
        self,
        fan: dict[str, Any],
        system: dict[str, Any],
        air: dict[str, Any] | None = None,
        fan_percent: float | None = None,
        system_percent: float | None = None,
        second_fan: dict[str, Any] | None = None,
        arrangement: str | None = None,
    ) -> Result:
        """Where a fan's curve meets the system: every intersection, which of them can be held, the flow with its uncertainty, power and specific fan power; density, speed, equal fans in series or in parallel, or two unlike ones: curves added exactly, and said where the weaker is driven."""

@final
class _OperatingFlows(Formula):
    """The stable operating flow, the largest where there are several, of many pairs of a fan and a round duct; NaN where the curves do not meet on the points of the fan, or a row makes no sense."""

    def __call__(
        self,
        fans: Sequence[dict[str, Any]],
        fan_index: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        diameter_mm: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        length_m: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        roughness_mm: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        loss_coefficient: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        air: dict[str, Any] | None = None,
    ) -> Result:
        """The stable operating flow, the largest where there are several, of many pairs of a fan and a round duct; NaN where the curves do not meet on the points of the fan, or a row makes no sense."""

@final
class _FanDiagnosis(Formula):
    """What explains the flow read at the grille (and at the outlet) against the fan's curve and the run: added resistance, crushed flexible duct, closed shutter, reversed or slow fan, leak or duct off its spigot, no outlet; ranked, with the next reading to take."""

    def __call__(
        self,
        fan: dict[str, Any],
        system: dict[str, Any],
        readings: dict[str, Any],
        blades: str | None = None,
        before_fan_ratio: float | None = None,
        fan_percent: float | None = None,
        air: dict[str, Any] | None = None,
    ) -> Result:
        """What explains the flow read at the grille (and at the outlet) against the fan's curve and the run: added resistance, crushed flexible duct, closed shutter, reversed or slow fan, leak or duct off its spigot, no outlet; ranked, with the next reading to take."""

@final
class _RoomMoisture(Formula):
    """Water in the air of a wet room during and after a shower: humidity and dew point over time, what condenses, how long it takes to clear, as a band from the spread of showers and from wet surfaces."""

    def __call__(
        self,
        room_volume_m3: float,
        flow_l_per_s: float,
        shower_min: float | None = None,
        source_kg_per_h: float | None = None,
        source_low_kg_per_h: float | None = None,
        source_high_kg_per_h: float | None = None,
        wet_water_kg: float | None = None,
        overrun_min: float | None = None,
        background_l_per_s: float | None = None,
        mixing_factor: float | None = None,
        room_c: float | None = None,
        incoming_c: float | None = None,
        incoming_humidity_percent: float | None = None,
        clear_humidity_percent: float | None = None,
        clear_ratio: float | None = None,
        surface_c: float | None = None,
    ) -> Result:
        """Water in the air of a wet room during and after a shower: humidity and dew point over time, what condenses, how long it takes to clear, as a band from the spread of showers and from wet surfaces."""

@final
class _RoofVoidCondensation(Formula):
    """A fan that blows into a cold roof void: the most water that can condense, an hour, a shower and a day, an estimate where the void is ventilated, what that ventilation dries, and the rulebook's word on it."""

    def __call__(
        self,
        flow_l_per_s: float,
        surface_c: float,
        room_c: float | None = None,
        room_humidity_percent: float | None = None,
        minutes_per_shower: float | None = None,
        showers_per_day: float | None = None,
        void_flow_l_per_s: float | None = None,
        outdoor_c: float | None = None,
        outdoor_humidity_percent: float | None = None,
        pressure_pa: float | None = None,
        rulebook: str | Rulebook | None = None,
        discharge_to: str | None = None,
        open_area_m2: float | None = None,
        ceiling_area_m2: float | None = None,
        ridge_area_m2: float | None = None,
        pitch: str | None = None,
    ) -> Result:
        """A fan that blows into a cold roof void: the most water that can condense, an hour, a shower and a day, an estimate where the void is ventilated, what that ventilation dries, and the rulebook's word on it."""

@final
class _TraversePoints(Formula):
    """Where to hold the anemometer across a duct, as parts of the diameter or side from one wall."""

    def __call__(self, shape: str, count: float, method: str | None = None, size_mm: float | None = None) -> Result:
        """Where to hold the anemometer across a duct, as parts of the diameter or side from one wall."""

@final
class _VentilationRequired(Formula):
    """What a rulebook asks of the ventilation of rooms and of the dwelling: rates by kind of room, air changes, number and area, which of them governs, overrun, background ventilators, purge, gaps under doors, and what changes in work on an existing dwelling."""

    def __call__(
        self,
        rooms: Sequence[dict[str, Any]],
        rulebook: str | Rulebook,
        bedrooms: float | None = None,
        floor_area_m2: float | None = None,
        habitable_rooms: float | None = None,
        persons: float | None = None,
        main_rooms: float | None = None,
        floors: float | None = None,
    ) -> Result:
        """What a rulebook asks of the ventilation of rooms and of the dwelling: rates by kind of room, air changes, number and area, which of them governs, overrun, background ventilators, purge, gaps under doors, and what changes in work on an existing dwelling."""

@final
class _CommissionedFlow(Formula):
    """A flow measured at commissioning against its design, decided as the rulebook itself decides: the reading alone (England), or a tolerance that includes the uncertainty of the measurement (Finland)."""

    def __call__(
        self,
        flow_l_per_s: float | Measured | Reading | dict[str, Any] | None,
        design_flow_l_per_s: float,
        rulebook: str | Rulebook,
        extent: str | None = None,
    ) -> Result:
        """A flow measured at commissioning against its design, decided as the rulebook itself decides: the reading alone (England), or a tolerance that includes the uncertainty of the measurement (Finland)."""

@final
class _OutletOptions(Formula):
    """Outlets that a fan could blow through, held against each other: flow with its doubt, pressure of the run and its worst part, whether the rate is met, what to insulate, cost; ranked, and never one that ends in a void."""

    def __call__(
        self,
        fan: dict[str, Any],
        options: Sequence[dict[str, Any]],
        rulebook: str | Rulebook | None = None,
        required_l_per_s: float | None = None,
        room: dict[str, Any] | None = None,
        insulation_cost_per_m: float | None = None,
        fan_percent: float | None = None,
        air: dict[str, Any] | None = None,
    ) -> Result:
        """Outlets that a fan could blow through, held against each other: flow with its doubt, pressure of the run and its worst part, whether the rate is met, what to insulate, cost; ranked, and never one that ends in a void."""

@final
class _MeasuredFlow(Formula):
    """A flow as it was measured, by hood, by anemometer at a grille or by traverse, with its correction and its standard uncertainty; its "reading" is what check_extract takes. An unpowered hood is corrected for with the fan's curve where it is given."""

    def __call__(
        self,
        method: str,
        readings: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        area_mm2: float | None = None,
        correction_factor: float | None = None,
        correction_percent: float | None = None,
        instrument_percent: float | None = None,
        instrument_limit: float | None = None,
        repeatability_percent: float | None = None,
        pressures: bool | None = None,
        air: dict[str, Any] | None = None,
        fan: dict[str, Any] | None = None,
        hood_pressure_pa: float | None = None,
        fan_percent: float | None = None,
        hood_pressure_percent: float | None = None,
    ) -> Result:
        """A flow as it was measured, by hood, by anemometer at a grille or by traverse, with its correction and its standard uncertainty; its "reading" is what check_extract takes. An unpowered hood is corrected for with the fan's curve where it is given."""

@final
class _DuctNetwork(Formula):
    """Flows and pressures of a network of ducts, terminals and fans with loops; flows may turn out against the direction of a branch. Solved for flows and pressures together (global gradient method)."""

    def __call__(
        self,
        branches: Sequence[dict[str, Any]],
        nodes: Sequence[dict[str, Any]],
        air: dict[str, Any] | None = None,
    ) -> Result:
        """Flows and pressures of a network of ducts, terminals and fans with loops; flows may turn out against the direction of a branch. Solved for flows and pressures together (global gradient method)."""

airflow_from_air_changes: Final[_AirflowFromAirChanges]
air_changes_from_airflow: Final[_AirChangesFromAirflow]
flow_from_velocity: Final[_FlowFromVelocity]
door_undercut_area: Final[_DoorUndercutArea]
make_up_air_velocity: Final[_MakeUpAirVelocity]
air_power: Final[_AirPower]
specific_fan_power: Final[_SpecificFanPower]
fan_law_flow: Final[_FanLawFlow]
fan_law_pressure: Final[_FanLawPressure]
fan_law_power: Final[_FanLawPower]
check_extract: Final[_CheckExtract]
check_air_changes: Final[_CheckAirChanges]
check_duct_pressure: Final[_CheckDuctPressure]
check_air_changes_for: Final[_CheckAirChangesFor]
check_overrun: Final[_CheckOverrun]
check_whole_dwelling: Final[_CheckWholeDwelling]
check_door_undercut: Final[_CheckDoorUndercut]
check_background_ventilator: Final[_CheckBackgroundVentilator]
check_purge_opening: Final[_CheckPurgeOpening]
check_ventilation_distance: Final[_CheckVentilationDistance]
check_duct_length: Final[_CheckDuctLength]
check_flexible_bends: Final[_CheckFlexibleBends]
check_terminal_area: Final[_CheckTerminalArea]
check_discharge_outside: Final[_CheckDischargeOutside]
check_roof_void_openings: Final[_CheckRoofVoidOpenings]
check_roof_void_ridge_share: Final[_CheckRoofVoidRidgeShare]
check_design_flow: Final[_CheckDesignFlow]
check_design_flow_excess: Final[_CheckDesignFlowExcess]
check_surface_mould: Final[_CheckSurfaceMould]
check_surface_condensation: Final[_CheckSurfaceCondensation]
check_room_humidity: Final[_CheckRoomHumidity]
surface_temperature: Final[_SurfaceTemperature]
temperature_factor: Final[_TemperatureFactor]
surface_relative_humidity: Final[_SurfaceRelativeHumidity]
critical_surface_temperature: Final[_CriticalSurfaceTemperature]
reynolds_number: Final[_ReynoldsNumber]
friction_factor: Final[_FrictionFactor]
friction_factor_colebrook: Final[_FrictionFactorColebrook]
friction_factor_churchill: Final[_FrictionFactorChurchill]
friction_factor_swamee_jain: Final[_FrictionFactorSwameeJain]
friction_factor_haaland: Final[_FrictionFactorHaaland]
hydraulic_diameter: Final[_HydraulicDiameter]
equivalent_diameter: Final[_EquivalentDiameter]
duct_velocity: Final[_DuctVelocity]
duct_velocity_rectangular: Final[_DuctVelocityRectangular]
velocity_pressure: Final[_VelocityPressure]
fitting_pressure_loss: Final[_FittingPressureLoss]
duct_pressure_loss: Final[_DuctPressureLoss]
duct_pressure_loss_rectangular: Final[_DuctPressureLossRectangular]
flexible_duct_multiplier: Final[_FlexibleDuctMultiplier]
saturation_pressure: Final[_SaturationPressure]
saturation_pressure_ice: Final[_SaturationPressureIce]
saturation_pressure_magnus: Final[_SaturationPressureMagnus]
saturation_pressure_iso13788: Final[_SaturationPressureIso13788]
vapour_pressure: Final[_VapourPressure]
dew_point: Final[_DewPoint]
dew_point_magnus: Final[_DewPointMagnus]
relative_humidity: Final[_RelativeHumidity]
humidity_ratio: Final[_HumidityRatio]
air_density: Final[_AirDensity]
air_viscosity: Final[_AirViscosity]
saturation_pressure_sonntag: Final[_SaturationPressureSonntag]
saturation_pressure_iapws: Final[_SaturationPressureIapws]
dew_point_iso13788: Final[_DewPointIso13788]
saturation_temperature: Final[_SaturationTemperature]
vapour_pressure_from_humidity_ratio: Final[_VapourPressureFromHumidityRatio]
relative_humidity_from_humidity_ratio: Final[_RelativeHumidityFromHumidityRatio]
air_density_from_humidity_ratio: Final[_AirDensityFromHumidityRatio]
vapour_concentration: Final[_VapourConcentration]
moisture_removed: Final[_MoistureRemoved]
enthalpy: Final[_Enthalpy]
temperature_from_enthalpy: Final[_TemperatureFromEnthalpy]
humidity_ratio_from_wet_bulb: Final[_HumidityRatioFromWetBulb]
relative_humidity_from_wet_bulb: Final[_RelativeHumidityFromWetBulb]
wet_bulb: Final[_WetBulb]
standard_pressure: Final[_StandardPressure]
altitude_from_pressure: Final[_AltitudeFromPressure]
decay_concentration: Final[_DecayConcentration]
room_concentration: Final[_RoomConcentration]
time_to_concentration: Final[_TimeToConcentration]
air_changes_from_decay: Final[_AirChangesFromDecay]
stack_pressure: Final[_StackPressure]
stack_pressure_from_temperatures: Final[_StackPressureFromTemperatures]
infiltration_flow: Final[_InfiltrationFlow]
velocity_from_velocity_pressure: Final[_VelocityFromVelocityPressure]
grille_flow: Final[_GrilleFlow]
flow_measurement_uncertainty: Final[_FlowMeasurementUncertainty]
orifice_discharge_coefficient: Final[_OrificeDischargeCoefficient]
orifice_expansibility: Final[_OrificeExpansibility]
orifice_flow: Final[_OrificeFlow]
diverging_branch_coefficient: Final[_DivergingBranchCoefficient]
diverging_run_coefficient: Final[_DivergingRunCoefficient]
converging_branch_coefficient: Final[_ConvergingBranchCoefficient]
converging_run_coefficient: Final[_ConvergingRunCoefficient]
required_extract: Final[_RequiredExtract]
duct_run: Final[_DuctRun]
operating_point: Final[_OperatingPoint]
operating_flows: Final[_OperatingFlows]
fan_diagnosis: Final[_FanDiagnosis]
room_moisture: Final[_RoomMoisture]
roof_void_condensation: Final[_RoofVoidCondensation]
traverse_points: Final[_TraversePoints]
ventilation_required: Final[_VentilationRequired]
commissioned_flow: Final[_CommissionedFlow]
outlet_options: Final[_OutletOptions]
measured_flow: Final[_MeasuredFlow]
duct_network: Final[_DuctNetwork]

__all__ = [
    "airflow_from_air_changes",
    "air_changes_from_airflow",
    "flow_from_velocity",
    "door_undercut_area",
    "make_up_air_velocity",
    "air_power",
    "specific_fan_power",
    "fan_law_flow",
    "fan_law_pressure",
    "fan_law_power",
    "check_extract",
    "check_air_changes",
    "check_duct_pressure",
    "check_air_changes_for",
    "check_overrun",
    "check_whole_dwelling",
    "check_door_undercut",
    "check_background_ventilator",
    "check_purge_opening",
    "check_ventilation_distance",
    "check_duct_length",
    "check_flexible_bends",
    "check_terminal_area",
    "check_discharge_outside",
    "check_roof_void_openings",
    "check_roof_void_ridge_share",
    "check_design_flow",
    "check_design_flow_excess",
    "check_surface_mould",
    "check_surface_condensation",
    "check_room_humidity",
    "surface_temperature",
    "temperature_factor",
    "surface_relative_humidity",
    "critical_surface_temperature",
    "reynolds_number",
    "friction_factor",
    "friction_factor_colebrook",
    "friction_factor_churchill",
    "friction_factor_swamee_jain",
    "friction_factor_haaland",
    "hydraulic_diameter",
    "equivalent_diameter",
    "duct_velocity",
    "duct_velocity_rectangular",
    "velocity_pressure",
    "fitting_pressure_loss",
    "duct_pressure_loss",
    "duct_pressure_loss_rectangular",
    "flexible_duct_multiplier",
    "saturation_pressure",
    "saturation_pressure_ice",
    "saturation_pressure_magnus",
    "saturation_pressure_iso13788",
    "vapour_pressure",
    "dew_point",
    "dew_point_magnus",
    "relative_humidity",
    "humidity_ratio",
    "air_density",
    "air_viscosity",
    "saturation_pressure_sonntag",
    "saturation_pressure_iapws",
    "dew_point_iso13788",
    "saturation_temperature",
    "vapour_pressure_from_humidity_ratio",
    "relative_humidity_from_humidity_ratio",
    "air_density_from_humidity_ratio",
    "vapour_concentration",
    "moisture_removed",
    "enthalpy",
    "temperature_from_enthalpy",
    "humidity_ratio_from_wet_bulb",
    "relative_humidity_from_wet_bulb",
    "wet_bulb",
    "standard_pressure",
    "altitude_from_pressure",
    "decay_concentration",
    "room_concentration",
    "time_to_concentration",
    "air_changes_from_decay",
    "stack_pressure",
    "stack_pressure_from_temperatures",
    "infiltration_flow",
    "velocity_from_velocity_pressure",
    "grille_flow",
    "flow_measurement_uncertainty",
    "orifice_discharge_coefficient",
    "orifice_expansibility",
    "orifice_flow",
    "diverging_branch_coefficient",
    "diverging_run_coefficient",
    "converging_branch_coefficient",
    "converging_run_coefficient",
    "required_extract",
    "duct_run",
    "operating_point",
    "operating_flows",
    "fan_diagnosis",
    "room_moisture",
    "roof_void_condensation",
    "traverse_points",
    "ventilation_required",
    "commissioned_flow",
    "outlet_options",
    "measured_flow",
    "duct_network",
]

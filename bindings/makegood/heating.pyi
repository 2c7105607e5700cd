# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Heating elements and floors: resistance, power, surface temperature."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

_Appliance: TypeAlias = Literal["heating", "motor"]
_Surface: TypeAlias = Literal["wall", "ceiling_heating", "floor_cooling", "floor_layers"]
_Material: TypeAlias = Literal[
    "ceramic_tile",
    "clay_tile",
    "marble",
    "granite",
    "limestone",
    "glass",
    "concrete",
    "concrete_high",
    "concrete_reinforced",
    "cement_screed",
    "anhydrite_screed",
    "mortar",
    "plywood",
    "plywood_heavy",
    "chipboard",
    "chipboard_heavy",
    "cement_board",
    "osb",
    "timber",
    "plasterboard",
    "linoleum",
    "vinyl",
    "carpet",
    "xps",
    "extruded_foam",
]
_Surface2: TypeAlias = Literal["bare_metal", "coated_metal", "ceramic", "plastic", "wood"]
_Contact: TypeAlias = Literal["second", "minute", "ten_minutes", "hours"]
_Alloy: TypeAlias = Literal[
    "copper",
    "nickel",
    "constantan",
    "nichrome",
    "manganin",
    "platinum",
    "CuNi2",
    "CuNi6",
    "CuNi10",
    "CuNi23Mn",
    "CuNi44",
    "NiCr80-20",
    "CrAl25-5",
    "unknown",
]
_Supply: TypeAlias = Literal["selv_pelv", "up_to_500_v"]
_Finish: TypeAlias = Literal["tile", "timber"]
_Use: TypeAlias = Literal["occupied", "edge", "bathroom", "timber"]
_HeatedSurface: TypeAlias = Literal["floor", "wall"]

@final
class _ElementResistance(Formula):
    """Resistance of a heating element from its power and voltage."""

    @overload
    def __call__(self, power_w: float, voltage_v: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Resistance of a heating element from its power and voltage."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
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
        voltage_v: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w: float | Measured, voltage_v: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w: float | Measured, voltage_v: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
        voltage_v: float | Measured | Distribution,
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
class _ElementPower(Formula):
    """Power of a heating element from its resistance and voltage."""

    @overload
    def __call__(self, resistance_ohm: float, voltage_v: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Power of a heating element from its resistance and voltage."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        voltage_v: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        voltage_v: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        voltage_v: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, voltage_v: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, voltage_v: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        voltage_v: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
        resistance_ohm: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
class _ElementCurrent(Formula):
    """Current of a heating element from its power and voltage."""

    @overload
    def __call__(self, power_w: float, voltage_v: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Current of a heating element from its power and voltage."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
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
        voltage_v: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w: float | Measured, voltage_v: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w: float | Measured, voltage_v: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
        voltage_v: float | Measured | Distribution,
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
class _PowerAtVoltage(Formula):
    """Power of a heating element at another voltage than its rated one, its resistance unchanged."""

    @overload
    def __call__(  # type: ignore
        self,
        rated_power_w: float,
        rated_voltage_v: float,
        voltage_v: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Power of a heating element at another voltage than its rated one, its resistance unchanged."""
    @overload
    def __call__(  # type: ignore
        self,
        rated_power_w: float | Measured,
        rated_voltage_v: float | Measured,
        voltage_v: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rated_power_w: float | _Array,
        rated_voltage_v: float | _Array,
        voltage_v: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rated_power_w: float | _Array | Measured | MeasuredArray,
        rated_voltage_v: float | _Array | Measured | MeasuredArray,
        voltage_v: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        rated_power_w: float | Measured,
        rated_voltage_v: float | Measured,
        voltage_v: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        rated_power_w: float | Measured,
        rated_voltage_v: float | Measured,
        voltage_v: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        rated_power_w: float | _Array,
        rated_voltage_v: float | _Array,
        voltage_v: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rated_power_w: float | tuple[float, float],
        rated_voltage_v: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rated_power_w: float | Measured | Distribution,
        rated_voltage_v: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
        rated_power_w: float | Measured | Distribution,
        rated_voltage_v: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
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
class _ParallelElementResistance(Formula):
    """Resistance of equal heating mats in parallel."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        voltage_v: float,
        mats_count: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of equal heating mats in parallel."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        mats_count: float | _Array,
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
        voltage_v: float | _Array | Measured | MeasuredArray,
        mats_count: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        mats_count: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
        mats_count: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
        mats_count: float | Measured | Distribution,
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
        voltage_v: float | Measured | Distribution,
        mats_count: float | Measured | Distribution,
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
class _PowerDensity(Formula):
    """Heating power to each square metre."""

    @overload
    def __call__(self, power_w: float, area_m2: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Heating power to each square metre."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
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
        area_m2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w: float | Measured, area_m2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w: float | Measured, area_m2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        area_m2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
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
        area_m2: float | Measured | Distribution,
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
class _FloorHeatFlux(Formula):
    """Heat given off upwards by a heated floor, convection and radiation together."""

    @overload
    def __call__(self, surface_c: float, room_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Heat given off upwards by a heated floor, convection and radiation together."""
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
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
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, surface_c: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, surface_c: float | Measured, room_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        surface_c: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        surface_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _FloorSurfaceTemperature(Formula):
    """Mean surface temperature at which a heated floor gives off a flux."""

    @overload
    def __call__(self, flux_w_per_m2: float, room_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Mean surface temperature at which a heated floor gives off a flux."""
    @overload
    def __call__(  # type: ignore
        self,
        flux_w_per_m2: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flux_w_per_m2: float | _Array,
        room_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flux_w_per_m2: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flux_w_per_m2: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flux_w_per_m2: float | Measured, room_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flux_w_per_m2: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flux_w_per_m2: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flux_w_per_m2: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
        flux_w_per_m2: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _HeatedArea(Formula):
    """Free floor area for a mat or cable: the room less a margin along its walls and less what stands on the floor for good."""

    @overload
    def __call__(  # type: ignore
        self,
        length_m: float,
        width_m: float,
        fixed_area_m2: float = 0.0,
        margin_m: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Free floor area for a mat or cable: the room less a margin along its walls and less what stands on the floor for good."""
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        fixed_area_m2: float | Measured = 0.0,
        margin_m: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | _Array,
        width_m: float | _Array,
        fixed_area_m2: float | _Array = 0.0,
        margin_m: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        length_m: float | _Array | Measured | MeasuredArray,
        width_m: float | _Array | Measured | MeasuredArray,
        fixed_area_m2: float | _Array | Measured | MeasuredArray = 0.0,
        margin_m: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        fixed_area_m2: float | Measured = 0.0,
        margin_m: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        fixed_area_m2: float | Measured = 0.0,
        margin_m: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        length_m: float | _Array,
        width_m: float | _Array,
        fixed_area_m2: float | _Array = 0.0,
        margin_m: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_m: float | tuple[float, float],
        width_m: float | tuple[float, float],
        fixed_area_m2: float | tuple[float, float] = 0.0,
        margin_m: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_m: float | Measured | Distribution,
        width_m: float | Measured | Distribution,
        fixed_area_m2: float | Measured | Distribution = 0.0,
        margin_m: float | Measured | Distribution = 0.0,
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
        length_m: float | Measured | Distribution,
        width_m: float | Measured | Distribution,
        fixed_area_m2: float | Measured | Distribution = 0.0,
        margin_m: float | Measured | Distribution = 0.0,
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
class _CablePowerDensity(Formula):
    """Heating power to each square metre of a cable that is laid at a spacing."""

    @overload
    def __call__(self, power_w_per_m: float, spacing_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Heating power to each square metre of a cable that is laid at a spacing."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w_per_m: float | Measured,
        spacing_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w_per_m: float | _Array,
        spacing_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        power_w_per_m: float | _Array | Measured | MeasuredArray,
        spacing_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w_per_m: float | Measured, spacing_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w_per_m: float | Measured, spacing_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w_per_m: float | _Array,
        spacing_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w_per_m: float | tuple[float, float],
        spacing_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w_per_m: float | Measured | Distribution,
        spacing_mm: float | Measured | Distribution,
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
        power_w_per_m: float | Measured | Distribution,
        spacing_mm: float | Measured | Distribution,
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
class _CableSpacing(Formula):
    """Distance between the runs of a cable that fills an area."""

    @overload
    def __call__(self, length_m: float, area_m2: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Distance between the runs of a cable that fills an area."""
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | Measured,
        area_m2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | _Array,
        area_m2: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        length_m: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, length_m: float | Measured, area_m2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, length_m: float | Measured, area_m2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        length_m: float | _Array,
        area_m2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_m: float | tuple[float, float],
        area_m2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_m: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
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
        length_m: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
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
class _ShortedFraction(Formula):
    """Part of a series element that is bypassed, from its resistance; negative where it reads high."""

    @overload
    def __call__(self, resistance_ohm: float, rated_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Part of a series element that is bypassed, from its resistance; negative where it reads high."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        rated_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        rated_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        rated_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, rated_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, rated_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        rated_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        rated_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        rated_ohm: float | Measured | Distribution,
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
        resistance_ohm: float | Measured | Distribution,
        rated_ohm: float | Measured | Distribution,
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
class _ShortedPower(Formula):
    """Power of a series element of which a part is bypassed."""

    @overload
    def __call__(self, power_w: float, fraction: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Power of a series element of which a part is bypassed."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        fraction: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        fraction: float | _Array,
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
        fraction: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_w: float | Measured, fraction: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_w: float | Measured, fraction: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        fraction: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        fraction: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        fraction: float | Measured | Distribution,
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
        fraction: float | Measured | Distribution,
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
class _ShortedLoading(Formula):
    """How many times its rated power each metre of the rest of a bypassed element gives off."""

    @overload
    def __call__(self, fraction: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """How many times its rated power each metre of the rest of a bypassed element gives off."""
    @overload
    def __call__(self, fraction: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        fraction: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        fraction: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, fraction: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, fraction: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        fraction: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, fraction: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        fraction: float | Measured | Distribution,
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
        fraction: float | Measured | Distribution,
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
class _MissingParallelMats(Formula):
    """How many of several equal mats in parallel are open, from the resistance of all together."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        power_w: float,
        voltage_v: float,
        mats_count: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How many of several equal mats in parallel are open, from the resistance of all together."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        power_w: float | _Array,
        voltage_v: float | _Array,
        mats_count: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        power_w: float | _Array | Measured | MeasuredArray,
        voltage_v: float | _Array | Measured | MeasuredArray,
        mats_count: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_ohm: float | Measured,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        power_w: float | Measured,
        voltage_v: float | Measured,
        mats_count: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        power_w: float | _Array,
        voltage_v: float | _Array,
        mats_count: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
        mats_count: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
        mats_count: float | Measured | Distribution,
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
        resistance_ohm: float | Measured | Distribution,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
        mats_count: float | Measured | Distribution,
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
class _ScreenFaultPosition(Formula):
    """Where along an element it touches its screen, as a part of its length from the first end, from three readings of resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float,
        first_ohm: float,
        second_ohm: float,
        tail_ohm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Where along an element it touches its screen, as a part of its length from the first end, from three readings of resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        tail_ohm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float | _Array,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        tail_ohm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        loop_ohm: float | _Array | Measured | MeasuredArray,
        first_ohm: float | _Array | Measured | MeasuredArray,
        second_ohm: float | _Array | Measured | MeasuredArray,
        tail_ohm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        tail_ohm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        tail_ohm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loop_ohm: float | _Array,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        tail_ohm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loop_ohm: float | tuple[float, float],
        first_ohm: float | tuple[float, float],
        second_ohm: float | tuple[float, float],
        tail_ohm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loop_ohm: float | Measured | Distribution,
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
        tail_ohm: float | Measured | Distribution = 0.0,
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
        loop_ohm: float | Measured | Distribution,
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
        tail_ohm: float | Measured | Distribution = 0.0,
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
class _ScreenFaultResistance(Formula):
    """Resistance of the fault itself between an element and its screen, from three readings."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float,
        first_ohm: float,
        second_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of the fault itself between an element and its screen, from three readings."""
    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loop_ohm: float | _Array,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        loop_ohm: float | _Array | Measured | MeasuredArray,
        first_ohm: float | _Array | Measured | MeasuredArray,
        second_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loop_ohm: float | Measured,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loop_ohm: float | _Array,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loop_ohm: float | tuple[float, float],
        first_ohm: float | tuple[float, float],
        second_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loop_ohm: float | Measured | Distribution,
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
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
        loop_ohm: float | Measured | Distribution,
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
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
class _HighestPowerInput(Formula):
    """Highest power that an appliance may take at its rated voltage, hot."""

    @overload
    def __call__(  # type: ignore
        self,
        appliance: _Appliance,
        rated_power_w: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Highest power that an appliance may take at its rated voltage, hot."""
    @overload
    def __call__(  # type: ignore
        self,
        appliance: _Appliance,
        rated_power_w: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        appliance: _Appliance | Sequence[_Appliance] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rated_power_w: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        appliance: _Appliance | Sequence[_Appliance] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rated_power_w: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, appliance: _Appliance, rated_power_w: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, appliance: _Appliance, rated_power_w: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        appliance: _Appliance | Sequence[_Appliance] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rated_power_w: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, appliance: _Appliance, rated_power_w: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        appliance: _Appliance,
        rated_power_w: float | Measured | Distribution,
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
        appliance: _Appliance,
        rated_power_w: float | Measured | Distribution,
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
class _LeastPowerInput(Formula):
    """Least power that a heating appliance above 25 W may take at its rated voltage, hot."""

    @overload
    def __call__(self, rated_power_w: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Least power that a heating appliance above 25 W may take at its rated voltage, hot."""
    @overload
    def __call__(self, rated_power_w: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        rated_power_w: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rated_power_w: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rated_power_w: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rated_power_w: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rated_power_w: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, rated_power_w: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rated_power_w: float | Measured | Distribution,
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
        rated_power_w: float | Measured | Distribution,
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
class _FloorLimitFactor(Formula):
    """Factor of the limit curves for a highest surface temperature other than 9 K above the room."""

    @overload
    def __call__(self, highest_surface_c: float, room_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Factor of the limit curves for a highest surface temperature other than 9 K above the room."""
    @overload
    def __call__(  # type: ignore
        self,
        highest_surface_c: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        highest_surface_c: float | _Array,
        room_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        highest_surface_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, highest_surface_c: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, highest_surface_c: float | Measured, room_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        highest_surface_c: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        highest_surface_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        highest_surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
        highest_surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _SurfaceHeatFlux(Formula):
    """Heat given off by a wall, ceiling or cooled floor: straight lines beside the characteristic of heated floors; negative into the surface."""

    @overload
    def __call__(  # type: ignore
        self,
        surface: _Surface,
        surface_c: float,
        room_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat given off by a wall, ceiling or cooled floor: straight lines beside the characteristic of heated floors; negative into the surface."""
    @overload
    def __call__(  # type: ignore
        self,
        surface: _Surface,
        surface_c: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        surface: _Surface | Sequence[_Surface] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        surface_c: float | _Array,
        room_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        surface: _Surface | Sequence[_Surface] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        surface_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, surface: _Surface, surface_c: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        surface: _Surface,
        surface_c: float | Measured,
        room_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        surface: _Surface | Sequence[_Surface] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        surface_c: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        surface: _Surface,
        surface_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface: _Surface,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
        surface: _Surface,
        surface_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _UpwardResistance(Formula):
    """Resistance from the plane of a mat up to the room: the surface, its covering and what lies over the mat."""

    @overload
    def __call__(  # type: ignore
        self,
        covering_m2k_per_w: float,
        over_mm: float,
        conductivity_w_per_m_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance from the plane of a mat up to the room: the surface, its covering and what lies over the mat."""
    @overload
    def __call__(  # type: ignore
        self,
        covering_m2k_per_w: float | Measured,
        over_mm: float | Measured,
        conductivity_w_per_m_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        covering_m2k_per_w: float | _Array,
        over_mm: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        covering_m2k_per_w: float | _Array | Measured | MeasuredArray,
        over_mm: float | _Array | Measured | MeasuredArray,
        conductivity_w_per_m_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        covering_m2k_per_w: float | Measured,
        over_mm: float | Measured,
        conductivity_w_per_m_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        covering_m2k_per_w: float | Measured,
        over_mm: float | Measured,
        conductivity_w_per_m_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        covering_m2k_per_w: float | _Array,
        over_mm: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        covering_m2k_per_w: float | tuple[float, float],
        over_mm: float | tuple[float, float],
        conductivity_w_per_m_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        covering_m2k_per_w: float | Measured | Distribution,
        over_mm: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
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
        covering_m2k_per_w: float | Measured | Distribution,
        over_mm: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
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
class _DownwardFlux(Formula):
    """Heat that a heated floor loses downwards while it gives off a flux upwards."""

    @overload
    def __call__(  # type: ignore
        self,
        flux_w_per_m2: float,
        up_m2k_per_w: float,
        down_m2k_per_w: float,
        room_c: float,
        below_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat that a heated floor loses downwards while it gives off a flux upwards."""
    @overload
    def __call__(  # type: ignore
        self,
        flux_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flux_w_per_m2: float | _Array,
        up_m2k_per_w: float | _Array,
        down_m2k_per_w: float | _Array,
        room_c: float | _Array,
        below_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flux_w_per_m2: float | _Array | Measured | MeasuredArray,
        up_m2k_per_w: float | _Array | Measured | MeasuredArray,
        down_m2k_per_w: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        below_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        flux_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flux_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flux_w_per_m2: float | _Array,
        up_m2k_per_w: float | _Array,
        down_m2k_per_w: float | _Array,
        room_c: float | _Array,
        below_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flux_w_per_m2: float | tuple[float, float],
        up_m2k_per_w: float | tuple[float, float],
        down_m2k_per_w: float | tuple[float, float],
        room_c: float | tuple[float, float],
        below_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flux_w_per_m2: float | Measured | Distribution,
        up_m2k_per_w: float | Measured | Distribution,
        down_m2k_per_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        below_c: float | Measured | Distribution,
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
        flux_w_per_m2: float | Measured | Distribution,
        up_m2k_per_w: float | Measured | Distribution,
        down_m2k_per_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        below_c: float | Measured | Distribution,
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
class _UpwardFlux(Formula):
    """Part of a mat's power that comes up into the room, the rest goes down."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w_per_m2: float,
        up_m2k_per_w: float,
        down_m2k_per_w: float,
        room_c: float,
        below_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Part of a mat's power that comes up into the room, the rest goes down."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w_per_m2: float | _Array,
        up_m2k_per_w: float | _Array,
        down_m2k_per_w: float | _Array,
        room_c: float | _Array,
        below_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        power_w_per_m2: float | _Array | Measured | MeasuredArray,
        up_m2k_per_w: float | _Array | Measured | MeasuredArray,
        down_m2k_per_w: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        below_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w_per_m2: float | Measured,
        up_m2k_per_w: float | Measured,
        down_m2k_per_w: float | Measured,
        room_c: float | Measured,
        below_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w_per_m2: float | _Array,
        up_m2k_per_w: float | _Array,
        down_m2k_per_w: float | _Array,
        room_c: float | _Array,
        below_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w_per_m2: float | tuple[float, float],
        up_m2k_per_w: float | tuple[float, float],
        down_m2k_per_w: float | tuple[float, float],
        room_c: float | tuple[float, float],
        below_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w_per_m2: float | Measured | Distribution,
        up_m2k_per_w: float | Measured | Distribution,
        down_m2k_per_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        below_c: float | Measured | Distribution,
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
        power_w_per_m2: float | Measured | Distribution,
        up_m2k_per_w: float | Measured | Distribution,
        down_m2k_per_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        below_c: float | Measured | Distribution,
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
class _MaterialConductivity(Formula):
    """Thermal conductivity of a building material."""

    @overload
    def __call__(self, material: _Material, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Thermal conductivity of a building material."""
    @overload
    def __call__(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, material: _Material) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, material: _Material) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, material: _Material) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        material: _Material,
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
        material: _Material,
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
class _MaterialDensity(Formula):
    """Density of a building material."""

    @overload
    def __call__(self, material: _Material, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Density of a building material."""
    @overload
    def __call__(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, material: _Material) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, material: _Material) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, material: _Material) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        material: _Material,
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
        material: _Material,
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
class _MaterialHeatCapacity(Formula):
    """Specific heat capacity of a building material."""

    @overload
    def __call__(self, material: _Material, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Specific heat capacity of a building material."""
    @overload
    def __call__(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, material: _Material) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, material: _Material) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, material: _Material) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        material: _Material,
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
        material: _Material,
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
class _ThermalResistance(Formula):
    """Thermal resistance of a layer."""

    @overload
    def __call__(  # type: ignore
        self,
        thickness_mm: float,
        conductivity_w_per_m_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Thermal resistance of a layer."""
    @overload
    def __call__(  # type: ignore
        self,
        thickness_mm: float | Measured,
        conductivity_w_per_m_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        thickness_mm: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        thickness_mm: float | _Array | Measured | MeasuredArray,
        conductivity_w_per_m_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, thickness_mm: float | Measured, conductivity_w_per_m_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        thickness_mm: float | Measured,
        conductivity_w_per_m_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        thickness_mm: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        thickness_mm: float | tuple[float, float],
        conductivity_w_per_m_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        thickness_mm: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
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
        thickness_mm: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
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
class _SurfaceResistance(Formula):
    """Resistance of a surface to the air, from its coefficients of convection and radiation."""

    @overload
    def __call__(  # type: ignore
        self,
        convection_w_per_m2_k: float,
        radiation_w_per_m2_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a surface to the air, from its coefficients of convection and radiation."""
    @overload
    def __call__(  # type: ignore
        self,
        convection_w_per_m2_k: float | Measured,
        radiation_w_per_m2_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        convection_w_per_m2_k: float | _Array,
        radiation_w_per_m2_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        convection_w_per_m2_k: float | _Array | Measured | MeasuredArray,
        radiation_w_per_m2_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, convection_w_per_m2_k: float | Measured, radiation_w_per_m2_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        convection_w_per_m2_k: float | Measured,
        radiation_w_per_m2_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        convection_w_per_m2_k: float | _Array,
        radiation_w_per_m2_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        convection_w_per_m2_k: float | tuple[float, float],
        radiation_w_per_m2_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        convection_w_per_m2_k: float | Measured | Distribution,
        radiation_w_per_m2_k: float | Measured | Distribution,
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
        convection_w_per_m2_k: float | Measured | Distribution,
        radiation_w_per_m2_k: float | Measured | Distribution,
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
class _UValue(Formula):
    """Heat through a wall or floor for each square metre and kelvin, air to air."""

    @overload
    def __call__(  # type: ignore
        self,
        layers_m2k_per_w: float,
        inside_m2k_per_w: float = 0.13,
        outside_m2k_per_w: float = 0.04,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat through a wall or floor for each square metre and kelvin, air to air."""
    @overload
    def __call__(  # type: ignore
        self,
        layers_m2k_per_w: float | Measured,
        inside_m2k_per_w: float | Measured = 0.13,
        outside_m2k_per_w: float | Measured = 0.04,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        layers_m2k_per_w: float | _Array,
        inside_m2k_per_w: float | _Array = 0.13,
        outside_m2k_per_w: float | _Array = 0.04,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        layers_m2k_per_w: float | _Array | Measured | MeasuredArray,
        inside_m2k_per_w: float | _Array | Measured | MeasuredArray = 0.13,
        outside_m2k_per_w: float | _Array | Measured | MeasuredArray = 0.04,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        layers_m2k_per_w: float | Measured,
        inside_m2k_per_w: float | Measured = 0.13,
        outside_m2k_per_w: float | Measured = 0.04,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        layers_m2k_per_w: float | Measured,
        inside_m2k_per_w: float | Measured = 0.13,
        outside_m2k_per_w: float | Measured = 0.04,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        layers_m2k_per_w: float | _Array,
        inside_m2k_per_w: float | _Array = 0.13,
        outside_m2k_per_w: float | _Array = 0.04,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        layers_m2k_per_w: float | tuple[float, float],
        inside_m2k_per_w: float | tuple[float, float] = 0.13,
        outside_m2k_per_w: float | tuple[float, float] = 0.04,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        layers_m2k_per_w: float | Measured | Distribution,
        inside_m2k_per_w: float | Measured | Distribution = 0.13,
        outside_m2k_per_w: float | Measured | Distribution = 0.04,
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
        layers_m2k_per_w: float | Measured | Distribution,
        inside_m2k_per_w: float | Measured | Distribution = 0.13,
        outside_m2k_per_w: float | Measured | Distribution = 0.04,
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
class _ConductionHeatFlow(Formula):
    """Heat through one layer from the temperatures of its two faces."""

    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float,
        area_m2: float,
        thickness_mm: float,
        difference_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat through one layer from the temperatures of its two faces."""
    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        difference_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        difference_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        conductivity_w_per_m_k: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        thickness_mm: float | _Array | Measured | MeasuredArray,
        difference_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        conductivity_w_per_m_k: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        difference_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        conductivity_w_per_m_k: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        difference_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        conductivity_w_per_m_k: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        difference_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        conductivity_w_per_m_k: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        thickness_mm: float | tuple[float, float],
        difference_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        conductivity_w_per_m_k: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        difference_k: float | Measured | Distribution,
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
        conductivity_w_per_m_k: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        difference_k: float | Measured | Distribution,
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
class _ThermalEffusivity(Formula):
    """How fast a material takes heat from what touches it: √(λ ρ c)."""

    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float,
        density_kg_per_m3: float,
        heat_capacity_j_per_kg_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How fast a material takes heat from what touches it: √(λ ρ c)."""
    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float | Measured,
        density_kg_per_m3: float | Measured,
        heat_capacity_j_per_kg_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        conductivity_w_per_m_k: float | _Array,
        density_kg_per_m3: float | _Array,
        heat_capacity_j_per_kg_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        conductivity_w_per_m_k: float | _Array | Measured | MeasuredArray,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        heat_capacity_j_per_kg_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        conductivity_w_per_m_k: float | Measured,
        density_kg_per_m3: float | Measured,
        heat_capacity_j_per_kg_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        conductivity_w_per_m_k: float | Measured,
        density_kg_per_m3: float | Measured,
        heat_capacity_j_per_kg_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        conductivity_w_per_m_k: float | _Array,
        density_kg_per_m3: float | _Array,
        heat_capacity_j_per_kg_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        conductivity_w_per_m_k: float | tuple[float, float],
        density_kg_per_m3: float | tuple[float, float],
        heat_capacity_j_per_kg_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        conductivity_w_per_m_k: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        heat_capacity_j_per_kg_k: float | Measured | Distribution,
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
        conductivity_w_per_m_k: float | Measured | Distribution,
        density_kg_per_m3: float | Measured | Distribution,
        heat_capacity_j_per_kg_k: float | Measured | Distribution,
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
class _ContactTemperature(Formula):
    """Temperature at once between two bodies that touch, such as skin and a rail."""

    @overload
    def __call__(  # type: ignore
        self,
        first_effusivity: float,
        first_c: float,
        second_effusivity: float,
        second_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature at once between two bodies that touch, such as skin and a rail."""
    @overload
    def __call__(  # type: ignore
        self,
        first_effusivity: float | Measured,
        first_c: float | Measured,
        second_effusivity: float | Measured,
        second_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        first_effusivity: float | _Array,
        first_c: float | _Array,
        second_effusivity: float | _Array,
        second_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        first_effusivity: float | _Array | Measured | MeasuredArray,
        first_c: float | _Array | Measured | MeasuredArray,
        second_effusivity: float | _Array | Measured | MeasuredArray,
        second_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        first_effusivity: float | Measured,
        first_c: float | Measured,
        second_effusivity: float | Measured,
        second_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        first_effusivity: float | Measured,
        first_c: float | Measured,
        second_effusivity: float | Measured,
        second_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        first_effusivity: float | _Array,
        first_c: float | _Array,
        second_effusivity: float | _Array,
        second_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        first_effusivity: float | tuple[float, float],
        first_c: float | tuple[float, float],
        second_effusivity: float | tuple[float, float],
        second_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        first_effusivity: float | Measured | Distribution,
        first_c: float | Measured | Distribution,
        second_effusivity: float | Measured | Distribution,
        second_c: float | Measured | Distribution,
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
        first_effusivity: float | Measured | Distribution,
        first_c: float | Measured | Distribution,
        second_effusivity: float | Measured | Distribution,
        second_c: float | Measured | Distribution,
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
class _RadiationCoefficient(Formula):
    """Coefficient of radiation between a surface and surroundings of nearly its temperature: 4 ε σ T³."""

    @overload
    def __call__(self, emissivity: float, mean_c: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Coefficient of radiation between a surface and surroundings of nearly its temperature: 4 ε σ T³."""
    @overload
    def __call__(  # type: ignore
        self,
        emissivity: float | Measured,
        mean_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        emissivity: float | _Array,
        mean_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        emissivity: float | _Array | Measured | MeasuredArray,
        mean_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, emissivity: float | Measured, mean_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, emissivity: float | Measured, mean_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        emissivity: float | _Array,
        mean_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        emissivity: float | tuple[float, float],
        mean_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        emissivity: float | Measured | Distribution,
        mean_c: float | Measured | Distribution,
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
        emissivity: float | Measured | Distribution,
        mean_c: float | Measured | Distribution,
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
class _RadiationHeatFlow(Formula):
    """Net radiation from a surface to surroundings that enclose it."""

    @overload
    def __call__(  # type: ignore
        self,
        emissivity: float,
        area_m2: float,
        surface_c: float,
        surroundings_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Net radiation from a surface to surroundings that enclose it."""
    @overload
    def __call__(  # type: ignore
        self,
        emissivity: float | Measured,
        area_m2: float | Measured,
        surface_c: float | Measured,
        surroundings_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        emissivity: float | _Array,
        area_m2: float | _Array,
        surface_c: float | _Array,
        surroundings_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        emissivity: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        surface_c: float | _Array | Measured | MeasuredArray,
        surroundings_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        emissivity: float | Measured,
        area_m2: float | Measured,
        surface_c: float | Measured,
        surroundings_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        emissivity: float | Measured,
        area_m2: float | Measured,
        surface_c: float | Measured,
        surroundings_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        emissivity: float | _Array,
        area_m2: float | _Array,
        surface_c: float | _Array,
        surroundings_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        emissivity: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        surface_c: float | tuple[float, float],
        surroundings_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        emissivity: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        surface_c: float | Measured | Distribution,
        surroundings_c: float | Measured | Distribution,
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
        emissivity: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        surface_c: float | Measured | Distribution,
        surroundings_c: float | Measured | Distribution,
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
class _PlateRadiation(Formula):
    """Net radiation between two large parallel surfaces, such as a mirror's back and the wall."""

    @overload
    def __call__(  # type: ignore
        self,
        first_emissivity: float,
        second_emissivity: float,
        area_m2: float,
        first_c: float,
        second_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Net radiation between two large parallel surfaces, such as a mirror's back and the wall."""
    @overload
    def __call__(  # type: ignore
        self,
        first_emissivity: float | Measured,
        second_emissivity: float | Measured,
        area_m2: float | Measured,
        first_c: float | Measured,
        second_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        first_emissivity: float | _Array,
        second_emissivity: float | _Array,
        area_m2: float | _Array,
        first_c: float | _Array,
        second_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        first_emissivity: float | _Array | Measured | MeasuredArray,
        second_emissivity: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        first_c: float | _Array | Measured | MeasuredArray,
        second_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        first_emissivity: float | Measured,
        second_emissivity: float | Measured,
        area_m2: float | Measured,
        first_c: float | Measured,
        second_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        first_emissivity: float | Measured,
        second_emissivity: float | Measured,
        area_m2: float | Measured,
        first_c: float | Measured,
        second_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        first_emissivity: float | _Array,
        second_emissivity: float | _Array,
        area_m2: float | _Array,
        first_c: float | _Array,
        second_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        first_emissivity: float | tuple[float, float],
        second_emissivity: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        first_c: float | tuple[float, float],
        second_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        first_emissivity: float | Measured | Distribution,
        second_emissivity: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        first_c: float | Measured | Distribution,
        second_c: float | Measured | Distribution,
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
        first_emissivity: float | Measured | Distribution,
        second_emissivity: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        first_c: float | Measured | Distribution,
        second_c: float | Measured | Distribution,
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
class _RayleighNumber(Formula):
    """Rayleigh number of a warm surface: buoyancy against viscosity and conduction."""

    @overload
    def __call__(  # type: ignore
        self,
        difference_k: float,
        length_mm: float,
        expansion_per_k: float,
        viscosity_m2_per_s: float,
        diffusivity_m2_per_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Rayleigh number of a warm surface: buoyancy against viscosity and conduction."""
    @overload
    def __call__(  # type: ignore
        self,
        difference_k: float | Measured,
        length_mm: float | Measured,
        expansion_per_k: float | Measured,
        viscosity_m2_per_s: float | Measured,
        diffusivity_m2_per_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        difference_k: float | _Array,
        length_mm: float | _Array,
        expansion_per_k: float | _Array,
        viscosity_m2_per_s: float | _Array,
        diffusivity_m2_per_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        difference_k: float | _Array | Measured | MeasuredArray,
        length_mm: float | _Array | Measured | MeasuredArray,
        expansion_per_k: float | _Array | Measured | MeasuredArray,
        viscosity_m2_per_s: float | _Array | Measured | MeasuredArray,
        diffusivity_m2_per_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        difference_k: float | Measured,
        length_mm: float | Measured,
        expansion_per_k: float | Measured,
        viscosity_m2_per_s: float | Measured,
        diffusivity_m2_per_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        difference_k: float | Measured,
        length_mm: float | Measured,
        expansion_per_k: float | Measured,
        viscosity_m2_per_s: float | Measured,
        diffusivity_m2_per_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        difference_k: float | _Array,
        length_mm: float | _Array,
        expansion_per_k: float | _Array,
        viscosity_m2_per_s: float | _Array,
        diffusivity_m2_per_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        difference_k: float | tuple[float, float],
        length_mm: float | tuple[float, float],
        expansion_per_k: float | tuple[float, float],
        viscosity_m2_per_s: float | tuple[float, float],
        diffusivity_m2_per_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        difference_k: float | Measured | Distribution,
        length_mm: float | Measured | Distribution,
        expansion_per_k: float | Measured | Distribution,
        viscosity_m2_per_s: float | Measured | Distribution,
        diffusivity_m2_per_s: float | Measured | Distribution,
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
        difference_k: float | Measured | Distribution,
        length_mm: float | Measured | Distribution,
        expansion_per_k: float | Measured | Distribution,
        viscosity_m2_per_s: float | Measured | Distribution,
        diffusivity_m2_per_s: float | Measured | Distribution,
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
class _VerticalPlateNusselt(Formula):
    """Nusselt number of a vertical plate in still air, laminar and turbulent (Churchill-Chu)."""

    @overload
    def __call__(self, rayleigh: float, prandtl: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Nusselt number of a vertical plate in still air, laminar and turbulent (Churchill-Chu)."""
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | Measured,
        prandtl: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rayleigh: float | _Array | Measured | MeasuredArray,
        prandtl: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rayleigh: float | Measured, prandtl: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rayleigh: float | Measured, prandtl: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rayleigh: float | tuple[float, float],
        prandtl: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
class _VerticalPlateNusseltLaminar(Formula):
    """Nusselt number of a vertical plate in still air, laminar flow, somewhat better up to Ra 10⁹."""

    @overload
    def __call__(self, rayleigh: float, prandtl: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Nusselt number of a vertical plate in still air, laminar flow, somewhat better up to Ra 10⁹."""
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | Measured,
        prandtl: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rayleigh: float | _Array | Measured | MeasuredArray,
        prandtl: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rayleigh: float | Measured, prandtl: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rayleigh: float | Measured, prandtl: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rayleigh: float | tuple[float, float],
        prandtl: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
class _HorizontalCylinderNusselt(Formula):
    """Nusselt number of a horizontal tube in still air, such as a bar of a towel rail (Churchill-Chu)."""

    @overload
    def __call__(self, rayleigh: float, prandtl: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Nusselt number of a horizontal tube in still air, such as a bar of a towel rail (Churchill-Chu)."""
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | Measured,
        prandtl: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rayleigh: float | _Array | Measured | MeasuredArray,
        prandtl: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rayleigh: float | Measured, prandtl: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rayleigh: float | Measured, prandtl: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rayleigh: float | _Array,
        prandtl: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rayleigh: float | tuple[float, float],
        prandtl: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
        rayleigh: float | Measured | Distribution,
        prandtl: float | Measured | Distribution,
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
class _PlateBelowNusselt(Formula):
    """Nusselt number of a warm horizontal plate that faces down (length: area over perimeter)."""

    @overload
    def __call__(self, rayleigh: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Nusselt number of a warm horizontal plate that faces down (length: area over perimeter)."""
    @overload
    def __call__(self, rayleigh: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        rayleigh: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rayleigh: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rayleigh: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rayleigh: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rayleigh: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, rayleigh: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rayleigh: float | Measured | Distribution,
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
        rayleigh: float | Measured | Distribution,
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
class _ConvectionCoefficient(Formula):
    """Coefficient of convection from a Nusselt number."""

    @overload
    def __call__(  # type: ignore
        self,
        nusselt: float,
        conductivity_w_per_m_k: float,
        length_mm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Coefficient of convection from a Nusselt number."""
    @overload
    def __call__(  # type: ignore
        self,
        nusselt: float | Measured,
        conductivity_w_per_m_k: float | Measured,
        length_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        nusselt: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        length_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        nusselt: float | _Array | Measured | MeasuredArray,
        conductivity_w_per_m_k: float | _Array | Measured | MeasuredArray,
        length_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        nusselt: float | Measured,
        conductivity_w_per_m_k: float | Measured,
        length_mm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        nusselt: float | Measured,
        conductivity_w_per_m_k: float | Measured,
        length_mm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        nusselt: float | _Array,
        conductivity_w_per_m_k: float | _Array,
        length_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        nusselt: float | tuple[float, float],
        conductivity_w_per_m_k: float | tuple[float, float],
        length_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        nusselt: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
        length_mm: float | Measured | Distribution,
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
        nusselt: float | Measured | Distribution,
        conductivity_w_per_m_k: float | Measured | Distribution,
        length_mm: float | Measured | Distribution,
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
class _VerticalPlateCoefficient(Formula):
    """Coefficient of natural convection of a vertical plate in room air, such as a mirror or a wall."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float,
        air_c: float,
        height_mm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Coefficient of natural convection of a vertical plate in room air, such as a mirror or a wall."""
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | Measured,
        air_c: float | Measured,
        height_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        surface_c: float | _Array,
        air_c: float | _Array,
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
        surface_c: float | _Array | Measured | MeasuredArray,
        air_c: float | _Array | Measured | MeasuredArray,
        height_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, surface_c: float | Measured, air_c: float | Measured, height_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        surface_c: float | Measured,
        air_c: float | Measured,
        height_mm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        surface_c: float | _Array,
        air_c: float | _Array,
        height_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        surface_c: float | tuple[float, float],
        air_c: float | tuple[float, float],
        height_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface_c: float | Measured | Distribution,
        air_c: float | Measured | Distribution,
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
        surface_c: float | Measured | Distribution,
        air_c: float | Measured | Distribution,
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
class _AirHeatFactor(Formula):
    """Heat that a cubic metre of air takes for each kelvin."""

    @overload
    def __call__(  # type: ignore
        self,
        density_kg_per_m3: float,
        heat_capacity_j_per_kg_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat that a cubic metre of air takes for each kelvin."""
    @overload
    def __call__(  # type: ignore
        self,
        density_kg_per_m3: float | Measured,
        heat_capacity_j_per_kg_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        density_kg_per_m3: float | _Array,
        heat_capacity_j_per_kg_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        density_kg_per_m3: float | _Array | Measured | MeasuredArray,
        heat_capacity_j_per_kg_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, density_kg_per_m3: float | Measured, heat_capacity_j_per_kg_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        density_kg_per_m3: float | Measured,
        heat_capacity_j_per_kg_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        density_kg_per_m3: float | _Array,
        heat_capacity_j_per_kg_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        density_kg_per_m3: float | tuple[float, float],
        heat_capacity_j_per_kg_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        density_kg_per_m3: float | Measured | Distribution,
        heat_capacity_j_per_kg_k: float | Measured | Distribution,
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
        density_kg_per_m3: float | Measured | Distribution,
        heat_capacity_j_per_kg_k: float | Measured | Distribution,
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
class _VentilationCoefficient(Formula):
    """Heat that the change of air takes for each kelvin."""

    @overload
    def __call__(  # type: ignore
        self,
        volume_m3: float,
        air_changes_per_h: float,
        air_factor: float = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat that the change of air takes for each kelvin."""
    @overload
    def __call__(  # type: ignore
        self,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        air_factor: float | Measured = 0.33,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        air_factor: float | _Array = 0.33,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        volume_m3: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        air_factor: float | _Array | Measured | MeasuredArray = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        air_factor: float | Measured = 0.33,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        air_factor: float | Measured = 0.33,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        air_factor: float | _Array = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        volume_m3: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
        air_factor: float | tuple[float, float] = 0.33,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        air_factor: float | Measured | Distribution = 0.33,
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
        volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        air_factor: float | Measured | Distribution = 0.33,
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
class _ElementHeatLoss(Formula):
    """Heat through one wall, window, floor or ceiling; negative from a warmer neighbour."""

    @overload
    def __call__(  # type: ignore
        self,
        u_value: float,
        area_m2: float,
        inside_c: float,
        outside_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Heat through one wall, window, floor or ceiling; negative from a warmer neighbour."""
    @overload
    def __call__(  # type: ignore
        self,
        u_value: float | Measured,
        area_m2: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        u_value: float | _Array,
        area_m2: float | _Array,
        inside_c: float | _Array,
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
        u_value: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        inside_c: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        u_value: float | Measured,
        area_m2: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        u_value: float | Measured,
        area_m2: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        u_value: float | _Array,
        area_m2: float | _Array,
        inside_c: float | _Array,
        outside_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        u_value: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        inside_c: float | tuple[float, float],
        outside_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        u_value: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        inside_c: float | Measured | Distribution,
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
        u_value: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        inside_c: float | Measured | Distribution,
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
class _RoomHeatLoss(Formula):
    """Steady heat loss of a room: walls, windows, floor and ceiling (sum of U times area) and the change of air."""

    @overload
    def __call__(  # type: ignore
        self,
        fabric_w_per_k: float,
        volume_m3: float,
        air_changes_per_h: float,
        inside_c: float,
        outside_c: float,
        air_factor: float = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Steady heat loss of a room: walls, windows, floor and ceiling (sum of U times area) and the change of air."""
    @overload
    def __call__(  # type: ignore
        self,
        fabric_w_per_k: float | Measured,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
        air_factor: float | Measured = 0.33,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        fabric_w_per_k: float | _Array,
        volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        inside_c: float | _Array,
        outside_c: float | _Array,
        air_factor: float | _Array = 0.33,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        fabric_w_per_k: float | _Array | Measured | MeasuredArray,
        volume_m3: float | _Array | Measured | MeasuredArray,
        air_changes_per_h: float | _Array | Measured | MeasuredArray,
        inside_c: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        air_factor: float | _Array | Measured | MeasuredArray = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        fabric_w_per_k: float | Measured,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
        air_factor: float | Measured = 0.33,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        fabric_w_per_k: float | Measured,
        volume_m3: float | Measured,
        air_changes_per_h: float | Measured,
        inside_c: float | Measured,
        outside_c: float | Measured,
        air_factor: float | Measured = 0.33,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        fabric_w_per_k: float | _Array,
        volume_m3: float | _Array,
        air_changes_per_h: float | _Array,
        inside_c: float | _Array,
        outside_c: float | _Array,
        air_factor: float | _Array = 0.33,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        fabric_w_per_k: float | tuple[float, float],
        volume_m3: float | tuple[float, float],
        air_changes_per_h: float | tuple[float, float],
        inside_c: float | tuple[float, float],
        outside_c: float | tuple[float, float],
        air_factor: float | tuple[float, float] = 0.33,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        fabric_w_per_k: float | Measured | Distribution,
        volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        inside_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        air_factor: float | Measured | Distribution = 0.33,
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
        fabric_w_per_k: float | Measured | Distribution,
        volume_m3: float | Measured | Distribution,
        air_changes_per_h: float | Measured | Distribution,
        inside_c: float | Measured | Distribution,
        outside_c: float | Measured | Distribution,
        air_factor: float | Measured | Distribution = 0.33,
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
class _SteadyTemperature(Formula):
    """Temperature that a room or a body comes to with a power, when nothing changes any more."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        loss_w_per_k: float,
        outside_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature that a room or a body comes to with a power, when nothing changes any more."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        outside_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        loss_w_per_k: float | _Array,
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
        power_w: float | _Array | Measured | MeasuredArray,
        loss_w_per_k: float | _Array | Measured | MeasuredArray,
        outside_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        outside_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        outside_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        loss_w_per_k: float | _Array,
        outside_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        loss_w_per_k: float | tuple[float, float],
        outside_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        loss_w_per_k: float | Measured | Distribution,
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
        power_w: float | Measured | Distribution,
        loss_w_per_k: float | Measured | Distribution,
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
class _WarmUpTime(Formula):
    """Time until a room or a body of one temperature comes from a start to a target, with its losses; cooling without power."""

    @overload
    def __call__(  # type: ignore
        self,
        capacity_j_per_k: float,
        power_w: float,
        loss_w_per_k: float,
        start_c: float,
        target_c: float,
        surroundings_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Time until a room or a body of one temperature comes from a start to a target, with its losses; cooling without power."""
    @overload
    def __call__(  # type: ignore
        self,
        capacity_j_per_k: float | Measured,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        start_c: float | Measured,
        target_c: float | Measured,
        surroundings_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        capacity_j_per_k: float | _Array,
        power_w: float | _Array,
        loss_w_per_k: float | _Array,
        start_c: float | _Array,
        target_c: float | _Array,
        surroundings_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        capacity_j_per_k: float | _Array | Measured | MeasuredArray,
        power_w: float | _Array | Measured | MeasuredArray,
        loss_w_per_k: float | _Array | Measured | MeasuredArray,
        start_c: float | _Array | Measured | MeasuredArray,
        target_c: float | _Array | Measured | MeasuredArray,
        surroundings_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        capacity_j_per_k: float | Measured,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        start_c: float | Measured,
        target_c: float | Measured,
        surroundings_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        capacity_j_per_k: float | Measured,
        power_w: float | Measured,
        loss_w_per_k: float | Measured,
        start_c: float | Measured,
        target_c: float | Measured,
        surroundings_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        capacity_j_per_k: float | _Array,
        power_w: float | _Array,
        loss_w_per_k: float | _Array,
        start_c: float | _Array,
        target_c: float | _Array,
        surroundings_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        capacity_j_per_k: float | tuple[float, float],
        power_w: float | tuple[float, float],
        loss_w_per_k: float | tuple[float, float],
        start_c: float | tuple[float, float],
        target_c: float | tuple[float, float],
        surroundings_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        capacity_j_per_k: float | Measured | Distribution,
        power_w: float | Measured | Distribution,
        loss_w_per_k: float | Measured | Distribution,
        start_c: float | Measured | Distribution,
        target_c: float | Measured | Distribution,
        surroundings_c: float | Measured | Distribution,
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
        capacity_j_per_k: float | Measured | Distribution,
        power_w: float | Measured | Distribution,
        loss_w_per_k: float | Measured | Distribution,
        start_c: float | Measured | Distribution,
        target_c: float | Measured | Distribution,
        surroundings_c: float | Measured | Distribution,
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
class _RunningCost(Formula):
    """Cost of running a load, in the currency of the price."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        time_h: float,
        price_per_kwh: float,
        duty_ratio: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Cost of running a load, in the currency of the price."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        time_h: float | Measured,
        price_per_kwh: float | Measured,
        duty_ratio: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        time_h: float | _Array,
        price_per_kwh: float | _Array,
        duty_ratio: float | _Array = 1.0,
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
        time_h: float | _Array | Measured | MeasuredArray,
        price_per_kwh: float | _Array | Measured | MeasuredArray,
        duty_ratio: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        time_h: float | Measured,
        price_per_kwh: float | Measured,
        duty_ratio: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        time_h: float | Measured,
        price_per_kwh: float | Measured,
        duty_ratio: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        time_h: float | _Array,
        price_per_kwh: float | _Array,
        duty_ratio: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        time_h: float | tuple[float, float],
        price_per_kwh: float | tuple[float, float],
        duty_ratio: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        time_h: float | Measured | Distribution,
        price_per_kwh: float | Measured | Distribution,
        duty_ratio: float | Measured | Distribution = 1.0,
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
        time_h: float | Measured | Distribution,
        price_per_kwh: float | Measured | Distribution,
        duty_ratio: float | Measured | Distribution = 1.0,
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
class _MeanExcess(Formula):
    """Mean excess of a radiator with water over the room, arithmetic."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float,
        return_c: float,
        room_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mean excess of a radiator with water over the room, arithmetic."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float | Measured,
        return_c: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float | _Array,
        return_c: float | _Array,
        room_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_c: float | _Array | Measured | MeasuredArray,
        return_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_c: float | Measured, return_c: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_c: float | Measured,
        return_c: float | Measured,
        room_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_c: float | _Array,
        return_c: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_c: float | tuple[float, float],
        return_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_c: float | Measured | Distribution,
        return_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
        flow_c: float | Measured | Distribution,
        return_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _LogMeanExcess(Formula):
    """Mean excess of a radiator with water over the room, logarithmic."""

    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float,
        return_c: float,
        room_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mean excess of a radiator with water over the room, logarithmic."""
    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float | Measured,
        return_c: float | Measured,
        room_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flow_c: float | _Array,
        return_c: float | _Array,
        room_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flow_c: float | _Array | Measured | MeasuredArray,
        return_c: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flow_c: float | Measured, return_c: float | Measured, room_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        flow_c: float | Measured,
        return_c: float | Measured,
        room_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        flow_c: float | _Array,
        return_c: float | _Array,
        room_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flow_c: float | tuple[float, float],
        return_c: float | tuple[float, float],
        room_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flow_c: float | Measured | Distribution,
        return_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
        flow_c: float | Measured | Distribution,
        return_c: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
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
class _RadiatorOutput(Formula):
    """Output of a radiator or towel rail at an excess over the room other than its rated one."""

    @overload
    def __call__(  # type: ignore
        self,
        rated_output_w: float,
        excess_k: float,
        exponent: float = 1.3,
        rated_excess_k: float = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Output of a radiator or towel rail at an excess over the room other than its rated one."""
    @overload
    def __call__(  # type: ignore
        self,
        rated_output_w: float | Measured,
        excess_k: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rated_output_w: float | _Array,
        excess_k: float | _Array,
        exponent: float | _Array = 1.3,
        rated_excess_k: float | _Array = 50.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rated_output_w: float | _Array | Measured | MeasuredArray,
        excess_k: float | _Array | Measured | MeasuredArray,
        exponent: float | _Array | Measured | MeasuredArray = 1.3,
        rated_excess_k: float | _Array | Measured | MeasuredArray = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        rated_output_w: float | Measured,
        excess_k: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        rated_output_w: float | Measured,
        excess_k: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        rated_output_w: float | _Array,
        excess_k: float | _Array,
        exponent: float | _Array = 1.3,
        rated_excess_k: float | _Array = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rated_output_w: float | tuple[float, float],
        excess_k: float | tuple[float, float],
        exponent: float | tuple[float, float] = 1.3,
        rated_excess_k: float | tuple[float, float] = 50.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rated_output_w: float | Measured | Distribution,
        excess_k: float | Measured | Distribution,
        exponent: float | Measured | Distribution = 1.3,
        rated_excess_k: float | Measured | Distribution = 50.0,
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
        rated_output_w: float | Measured | Distribution,
        excess_k: float | Measured | Distribution,
        exponent: float | Measured | Distribution = 1.3,
        rated_excess_k: float | Measured | Distribution = 50.0,
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
class _RailSurfaceTemperature(Formula):
    """Mean surface temperature at which a rail gives off an electric power, from its output with water: the inverse of radiator_output."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        rated_output_w: float,
        room_c: float,
        exponent: float = 1.3,
        rated_excess_k: float = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mean surface temperature at which a rail gives off an electric power, from its output with water: the inverse of radiator_output."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        rated_output_w: float | Measured,
        room_c: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        rated_output_w: float | _Array,
        room_c: float | _Array,
        exponent: float | _Array = 1.3,
        rated_excess_k: float | _Array = 50.0,
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
        rated_output_w: float | _Array | Measured | MeasuredArray,
        room_c: float | _Array | Measured | MeasuredArray,
        exponent: float | _Array | Measured | MeasuredArray = 1.3,
        rated_excess_k: float | _Array | Measured | MeasuredArray = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        rated_output_w: float | Measured,
        room_c: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        rated_output_w: float | Measured,
        room_c: float | Measured,
        exponent: float | Measured = 1.3,
        rated_excess_k: float | Measured = 50.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        rated_output_w: float | _Array,
        room_c: float | _Array,
        exponent: float | _Array = 1.3,
        rated_excess_k: float | _Array = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        rated_output_w: float | tuple[float, float],
        room_c: float | tuple[float, float],
        exponent: float | tuple[float, float] = 1.3,
        rated_excess_k: float | tuple[float, float] = 50.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        rated_output_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        exponent: float | Measured | Distribution = 1.3,
        rated_excess_k: float | Measured | Distribution = 50.0,
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
        rated_output_w: float | Measured | Distribution,
        room_c: float | Measured | Distribution,
        exponent: float | Measured | Distribution = 1.3,
        rated_excess_k: float | Measured | Distribution = 50.0,
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
class _BurnThreshold(Formula):
    """Temperature of a surface below which skin is not burnt by touching it for a time: a threshold, not a limit of comfort."""

    @overload
    def __call__(self, surface: _Surface2, contact: _Contact, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Temperature of a surface below which skin is not burnt by touching it for a time: a threshold, not a limit of comfort."""
    @overload
    def __call__(
        self,
        surface: _Surface2 | Sequence[_Surface2] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        contact: _Contact | Sequence[_Contact] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, surface: _Surface2, contact: _Contact) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, surface: _Surface2, contact: _Contact) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        surface: _Surface2 | Sequence[_Surface2] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        contact: _Contact | Sequence[_Contact] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, surface: _Surface2, contact: _Contact) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        surface: _Surface2,
        contact: _Contact,
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
        surface: _Surface2,
        contact: _Contact,
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
class _MirrorClearPower(Formula):
    """Power that keeps a mirror above the dew point of the room's air by a margin."""

    @overload
    def __call__(  # type: ignore
        self,
        air_c: float,
        relative_humidity_percent: float,
        glass_c: float,
        area_m2: float,
        coefficient_w_per_m2_k: float = 8.0,
        back_w_per_m2_k: float = 0.0,
        margin_k: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Power that keeps a mirror above the dew point of the room's air by a margin."""
    @overload
    def __call__(  # type: ignore
        self,
        air_c: float | Measured,
        relative_humidity_percent: float | Measured,
        glass_c: float | Measured,
        area_m2: float | Measured,
        coefficient_w_per_m2_k: float | Measured = 8.0,
        back_w_per_m2_k: float | Measured = 0.0,
        margin_k: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        air_c: float | _Array,
        relative_humidity_percent: float | _Array,
        glass_c: float | _Array,
        area_m2: float | _Array,
        coefficient_w_per_m2_k: float | _Array = 8.0,
        back_w_per_m2_k: float | _Array = 0.0,
        margin_k: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        air_c: float | _Array | Measured | MeasuredArray,
        relative_humidity_percent: float | _Array | Measured | MeasuredArray,
        glass_c: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        coefficient_w_per_m2_k: float | _Array | Measured | MeasuredArray = 8.0,
        back_w_per_m2_k: float | _Array | Measured | MeasuredArray = 0.0,
        margin_k: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        air_c: float | Measured,
        relative_humidity_percent: float | Measured,
        glass_c: float | Measured,
        area_m2: float | Measured,
        coefficient_w_per_m2_k: float | Measured = 8.0,
        back_w_per_m2_k: float | Measured = 0.0,
        margin_k: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        air_c: float | Measured,
        relative_humidity_percent: float | Measured,
        glass_c: float | Measured,
        area_m2: float | Measured,
        coefficient_w_per_m2_k: float | Measured = 8.0,
        back_w_per_m2_k: float | Measured = 0.0,
        margin_k: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        air_c: float | _Array,
        relative_humidity_percent: float | _Array,
        glass_c: float | _Array,
        area_m2: float | _Array,
        coefficient_w_per_m2_k: float | _Array = 8.0,
        back_w_per_m2_k: float | _Array = 0.0,
        margin_k: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        air_c: float | tuple[float, float],
        relative_humidity_percent: float | tuple[float, float],
        glass_c: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        coefficient_w_per_m2_k: float | tuple[float, float] = 8.0,
        back_w_per_m2_k: float | tuple[float, float] = 0.0,
        margin_k: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        air_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        glass_c: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution = 8.0,
        back_w_per_m2_k: float | Measured | Distribution = 0.0,
        margin_k: float | Measured | Distribution = 1.0,
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
        air_c: float | Measured | Distribution,
        relative_humidity_percent: float | Measured | Distribution,
        glass_c: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution = 8.0,
        back_w_per_m2_k: float | Measured | Distribution = 0.0,
        margin_k: float | Measured | Distribution = 1.0,
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
class _MirrorClearTime(Formula):
    """Time until a heated pane comes from cold to the temperature at which it stays clear."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        area_m2: float,
        thickness_mm: float,
        coefficient_w_per_m2_k: float,
        glass_c: float,
        target_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Time until a heated pane comes from cold to the temperature at which it stays clear."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        glass_c: float | Measured,
        target_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        coefficient_w_per_m2_k: float | _Array,
        glass_c: float | _Array,
        target_c: float | _Array,
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
        area_m2: float | _Array | Measured | MeasuredArray,
        thickness_mm: float | _Array | Measured | MeasuredArray,
        coefficient_w_per_m2_k: float | _Array | Measured | MeasuredArray,
        glass_c: float | _Array | Measured | MeasuredArray,
        target_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        glass_c: float | Measured,
        target_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        glass_c: float | Measured,
        target_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        coefficient_w_per_m2_k: float | _Array,
        glass_c: float | _Array,
        target_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        thickness_mm: float | tuple[float, float],
        coefficient_w_per_m2_k: float | tuple[float, float],
        glass_c: float | tuple[float, float],
        target_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution,
        glass_c: float | Measured | Distribution,
        target_c: float | Measured | Distribution,
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
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution,
        glass_c: float | Measured | Distribution,
        target_c: float | Measured | Distribution,
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
class _PadTemperatureRise(Formula):
    """How much a heated pane warms in a time, if the whole pad works."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        area_m2: float,
        thickness_mm: float,
        coefficient_w_per_m2_k: float,
        time_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How much a heated pane warms in a time, if the whole pad works."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        time_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        coefficient_w_per_m2_k: float | _Array,
        time_s: float | _Array,
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
        area_m2: float | _Array | Measured | MeasuredArray,
        thickness_mm: float | _Array | Measured | MeasuredArray,
        coefficient_w_per_m2_k: float | _Array | Measured | MeasuredArray,
        time_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        time_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        area_m2: float | Measured,
        thickness_mm: float | Measured,
        coefficient_w_per_m2_k: float | Measured,
        time_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        area_m2: float | _Array,
        thickness_mm: float | _Array,
        coefficient_w_per_m2_k: float | _Array,
        time_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        thickness_mm: float | tuple[float, float],
        coefficient_w_per_m2_k: float | tuple[float, float],
        time_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
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
        area_m2: float | Measured | Distribution,
        thickness_mm: float | Measured | Distribution,
        coefficient_w_per_m2_k: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
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
class _CheckElementResistance(Formula):
    """Resistance of heating mats or an element as read, less the cold tail, against the band about the rated resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        rated_power_w: _Given,
        rated_voltage_v: _Given,
        rulebook: str | Rulebook,
        mats_count: _Given = 1.0,
        cold_tail_ohm: _Given = 0.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of heating mats or an element as read, less the cold tail, against the band about the rated resistance."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        rated_power_w: _Given | _Rows,
        rated_voltage_v: _Given | _Rows,
        rulebook: str | Rulebook,
        mats_count: _Given | _Rows = 1.0,
        cold_tail_ohm: _Given | _Rows = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckElementResistanceWarm(Formula):
    """Resistance of a mat or element as read at one temperature against the band about its rated resistance, which belongs to the temperature at which it works."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        rated_power_w: _Given,
        rated_voltage_v: _Given,
        alloy: _Alloy,
        temperature_c: _Given,
        rulebook: str | Rulebook,
        working_c: _Given = 40.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a mat or element as read at one temperature against the band about its rated resistance, which belongs to the temperature at which it works."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        rated_power_w: _Given | _Rows,
        rated_voltage_v: _Given | _Rows,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: _Given | _Rows,
        rulebook: str | Rulebook,
        working_c: _Given | _Rows = 40.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckElementInsulation(Formula):
    """Insulation of a heating element from its screen or from earth, against the rulebook's least value."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: _Given,
        rulebook: str | Rulebook,
        supply: _Supply = "up_to_500_v",
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Insulation of a heating element from its screen or from earth, against the rulebook's least value."""
    @overload
    def __call__(
        self,
        resistance_mohm: _Given | _Rows,
        rulebook: str | Rulebook,
        supply: _Supply | Sequence[_Supply] | npt.NDArray[np.str_] | npt.NDArray[np.object_] = "up_to_500_v",
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckPowerInput(Formula):
    """Power that an appliance takes at its rated voltage, hot, against the deviation from its rating that is permitted upwards."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: _Given,
        rated_power_w: _Given,
        rulebook: str | Rulebook,
        appliance: _Appliance = "heating",
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Power that an appliance takes at its rated voltage, hot, against the deviation from its rating that is permitted upwards."""
    @overload
    def __call__(
        self,
        power_w: _Given | _Rows,
        rated_power_w: _Given | _Rows,
        rulebook: str | Rulebook,
        appliance: _Appliance | Sequence[_Appliance] | npt.NDArray[np.str_] | npt.NDArray[np.object_] = "heating",
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckPowerDensity(Formula):
    """Power of a mat or cable for each square metre against what the floor's finish bears by the rule of the trade."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: _Given,
        area_m2: _Given,
        finish: _Finish,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Power of a mat or cable for each square metre against what the floor's finish bears by the rule of the trade."""
    @overload
    def __call__(
        self,
        power_w: _Given | _Rows,
        area_m2: _Given | _Rows,
        finish: _Finish | Sequence[_Finish] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckFloorTemperature(Formula):
    """Temperature of a heated floor's surface against the highest for its use."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: _Given,
        use: _Use,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Temperature of a heated floor's surface against the highest for its use."""
    @overload
    def __call__(
        self,
        surface_c: _Given | _Rows,
        use: _Use | Sequence[_Use] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckFloorCovering(Formula):
    """Thermal resistance of all that lies on a heated floor against the highest at which it still heats."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_m2k_per_w: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Thermal resistance of all that lies on a heated floor against the highest at which it still heats."""
    @overload
    def __call__(
        self,
        resistance_m2k_per_w: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckTouchTemperature(Formula):
    """Temperature of a surface that is touched against the threshold below which it does not burn."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: _Given,
        surface: _Surface2,
        contact: _Contact,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Temperature of a surface that is touched against the threshold below which it does not burn."""
    @overload
    def __call__(
        self,
        surface_c: _Given | _Rows,
        surface: _Surface2 | Sequence[_Surface2] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        contact: _Contact | Sequence[_Contact] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckVulnerableSurface(Formula):
    """Temperature of a surface within reach of vulnerable people against the highest for them."""

    @overload
    def __call__(  # type: ignore
        self,
        surface_c: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Temperature of a surface within reach of vulnerable people against the highest for them."""
    @overload
    def __call__(
        self,
        surface_c: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRoomHeating(Formula):
    """Power of all heaters of a room, as it comes into the room, against the room's steady heat loss."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: _Given,
        loss_w: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Power of all heaters of a room, as it comes into the room, against the room's steady heat loss."""
    @overload
    def __call__(
        self,
        power_w: _Given | _Rows,
        loss_w: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckHeatingRcd(Formula):
    """Rated residual current of the device before an electric floor or ceiling heating against the highest permitted."""

    @overload
    def __call__(  # type: ignore
        self,
        residual_current_ma: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Rated residual current of the device before an electric floor or ceiling heating against the highest permitted."""
    @overload
    def __call__(
        self,
        residual_current_ma: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckScreenMesh(Formula):
    """Spacing of an earthed mesh over heating units that have no earthed screen of their own."""

    @overload
    def __call__(  # type: ignore
        self,
        spacing_mm: _Given,
        heated_surface: _HeatedSurface,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Spacing of an earthed mesh over heating units that have no earthed screen of their own."""
    @overload
    def __call__(
        self,
        spacing_mm: _Given | _Rows,
        heated_surface: _HeatedSurface | Sequence[_HeatedSurface] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckMirrorPad(Formula):
    """Rise of a mirror's temperature over its pad as seen, against what the whole pad would make."""

    @overload
    def __call__(  # type: ignore
        self,
        rise_k: _Given,
        power_w: _Given,
        area_m2: _Given,
        thickness_mm: _Given,
        time_s: _Given,
        rulebook: str | Rulebook,
        coefficient_w_per_m2_k: _Given = 10.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Rise of a mirror's temperature over its pad as seen, against what the whole pad would make."""
    @overload
    def __call__(
        self,
        rise_k: _Given | _Rows,
        power_w: _Given | _Rows,
        area_m2: _Given | _Rows,
        thickness_mm: _Given | _Rows,
        time_s: _Given | _Rows,
        rulebook: str | Rulebook,
        coefficient_w_per_m2_k: _Given | _Rows = 10.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _MatsThatFit(Formula):
    """Which standard mats fit a floor: free area, what whole strips cover, and the sets of mats that leave the least of it cold, with power and current."""

    def __call__(
        self,
        length_m: float,
        width_m: float,
        fixed_area_m2: float | None = None,
        margin_m: float | None = None,
        areas_m2: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        power_w_per_m2: float | None = None,
        voltage_v: float | None = None,
        most_mats: float | None = None,
        mat_width_m: float | None = None,
    ) -> Result:
        """Which standard mats fit a floor: free area, what whole strips cover, and the sets of mats that leave the least of it cold, with power and current."""

@final
class _FloorMaterial(Formula):
    """Design values of a material of a floor by name: conductivity, density, specific heat, and where they are from."""

    def __call__(self, material: str) -> Result:
        """Design values of a material of a floor by name: conductivity, density, specific heat, and where they are from."""

@final
class _FloorWarmUp(Formula):
    """A heated floor in time: conduction through any stack of layers with the heater between two of them, losses upwards and downwards, a cover over part of it, a thermostat by air, by floor, or by air with a floor limit. Refined until the error asked for is met."""

    def __call__(
        self,
        layers: Sequence[dict[str, Any]],
        power_density_w_per_m2: float,
        initial_c: float,
        room: float | dict[str, Any],
        heater_after_layer: float | None = None,
        duration_s: float | None = None,
        below: dict[str, Any] | None = None,
        cover: dict[str, Any] | None = None,
        thermostat: dict[str, Any] | None = None,
        upper_loss: dict[str, Any] | None = None,
        probe_after_layer: float | None = None,
        times_s: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        target_c: float | None = None,
        error_k: float | None = None,
    ) -> Result:
        """A heated floor in time: conduction through any stack of layers with the heater between two of them, losses upwards and downwards, a cover over part of it, a thermostat by air, by floor, or by air with a floor limit. Refined until the error asked for is met."""

@final
class _WithoutFloorLimit(Formula):
    """A floor heater whose thermostat was switched to sense air alone because its floor probe failed: the floor at rest, at worst and under a cover, on tile, timber and vinyl, and how soon it passes what the finish bears. Never a pass."""

    def __call__(
        self,
        layers: Sequence[dict[str, Any]],
        power_density_w_per_m2: float,
        set_point_c: float,
        finish: str | None = None,
        heater_after_layer: float | None = None,
        below: dict[str, Any] | None = None,
        cover: dict[str, Any] | None = None,
        room: float | dict[str, Any] | None = None,
        air_elsewhere_c: float | None = None,
        worst_power_ratio: float | None = None,
        written_permission: bool | None = None,
    ) -> Result:
        """A floor heater whose thermostat was switched to sense air alone because its floor probe failed: the floor at rest, at worst and under a cover, on tile, timber and vinyl, and how soon it passes what the finish bears. Never a pass."""

@final
class _WarmUpEvidence(Formula):
    """Two or more readings of a display that rises: the power really delivered, and whether the whole mat heats, a part of it, or nothing but the room. Only where insulation, screen, resistance and RCD were proved before anything was energised."""

    def __call__(
        self,
        times_s: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        temperatures_c: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        build_up: dict[str, Any],
        proved: dict[str, Any],
        resolution_k: float | None = None,
        timing_s: float | None = None,
        room_doubt_k: float | None = None,
        heater_spacing_mm: float | None = None,
    ) -> Result:
        """Two or more readings of a display that rises: the power really delivered, and whether the whole mat heats, a part of it, or nothing but the room. Only where insulation, screen, resistance and RCD were proved before anything was energised."""

@final
class _FloorScenarios(Formula):
    """Many scenarios of one heated floor side by side, for tables and what-if: a linear surface loss, equal steps, the heater always on. Several go through the processor at once; the results are the same bits as one by one."""

    def __call__(
        self,
        layers: Sequence[dict[str, Any]],
        power_density_w_per_m2: float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        initial_c: float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        room_c: float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        heater_after_layer: float | None = None,
        duration_s: float | None = None,
        below_resistance_m2k_per_w: float | None = None,
        below_c: float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        cover_m2k_per_w: float | Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        coefficient_w_per_m2k: float | None = None,
        nodes_count: float | None = None,
        steps_count: float | None = None,
        outputs_count: float | None = None,
    ) -> Result:
        """Many scenarios of one heated floor side by side, for tables and what-if: a linear surface loss, equal steps, the heater always on. Several go through the processor at once; the results are the same bits as one by one."""

element_resistance: Final[_ElementResistance]
element_power: Final[_ElementPower]
element_current: Final[_ElementCurrent]
power_at_voltage: Final[_PowerAtVoltage]
parallel_element_resistance: Final[_ParallelElementResistance]
power_density: Final[_PowerDensity]
floor_heat_flux: Final[_FloorHeatFlux]
floor_surface_temperature: Final[_FloorSurfaceTemperature]
heated_area: Final[_HeatedArea]
cable_power_density: Final[_CablePowerDensity]
cable_spacing: Final[_CableSpacing]
shorted_fraction: Final[_ShortedFraction]
shorted_power: Final[_ShortedPower]
shorted_loading: Final[_ShortedLoading]
missing_parallel_mats: Final[_MissingParallelMats]
screen_fault_position: Final[_ScreenFaultPosition]
screen_fault_resistance: Final[_ScreenFaultResistance]
highest_power_input: Final[_HighestPowerInput]
least_power_input: Final[_LeastPowerInput]
floor_limit_factor: Final[_FloorLimitFactor]
surface_heat_flux: Final[_SurfaceHeatFlux]
upward_resistance: Final[_UpwardResistance]
downward_flux: Final[_DownwardFlux]
upward_flux: Final[_UpwardFlux]
material_conductivity: Final[_MaterialConductivity]
material_density: Final[_MaterialDensity]
material_heat_capacity: Final[_MaterialHeatCapacity]
thermal_resistance: Final[_ThermalResistance]
surface_resistance: Final[_SurfaceResistance]
u_value: Final[_UValue]
conduction_heat_flow: Final[_ConductionHeatFlow]
thermal_effusivity: Final[_ThermalEffusivity]
contact_temperature: Final[_ContactTemperature]
radiation_coefficient: Final[_RadiationCoefficient]
radiation_heat_flow: Final[_RadiationHeatFlow]
plate_radiation: Final[_PlateRadiation]
rayleigh_number: Final[_RayleighNumber]
vertical_plate_nusselt: Final[_VerticalPlateNusselt]
vertical_plate_nusselt_laminar: Final[_VerticalPlateNusseltLaminar]
horizontal_cylinder_nusselt: Final[_HorizontalCylinderNusselt]
plate_below_nusselt: Final[_PlateBelowNusselt]
convection_coefficient: Final[_ConvectionCoefficient]
vertical_plate_coefficient: Final[_VerticalPlateCoefficient]
air_heat_factor: Final[_AirHeatFactor]
ventilation_coefficient: Final[_VentilationCoefficient]
element_heat_loss: Final[_ElementHeatLoss]
room_heat_loss: Final[_RoomHeatLoss]
steady_temperature: Final[_SteadyTemperature]
warm_up_time: Final[_WarmUpTime]
running_cost: Final[_RunningCost]
mean_excess: Final[_MeanExcess]
log_mean_excess: Final[_LogMeanExcess]
radiator_output: Final[_RadiatorOutput]
rail_surface_temperature: Final[_RailSurfaceTemperature]
burn_threshold: Final[_BurnThreshold]
mirror_clear_power: Final[_MirrorClearPower]
mirror_clear_time: Final[_MirrorClearTime]
pad_temperature_rise: Final[_PadTemperatureRise]
check_element_resistance: Final[_CheckElementResistance]
check_element_resistance_warm: Final[_CheckElementResistanceWarm]
check_element_insulation: Final[_CheckElementInsulation]
check_power_input: Final[_CheckPowerInput]
check_power_density: Final[_CheckPowerDensity]
check_floor_temperature: Final[_CheckFloorTemperature]
check_floor_covering: Final[_CheckFloorCovering]
check_touch_temperature: Final[_CheckTouchTemperature]
check_vulnerable_surface: Final[_CheckVulnerableSurface]
check_room_heating: Final[_CheckRoomHeating]
check_heating_rcd: Final[_CheckHeatingRcd]
check_screen_mesh: Final[_CheckScreenMesh]
check_mirror_pad: Final[_CheckMirrorPad]
mats_that_fit: Final[_MatsThatFit]
floor_material: Final[_FloorMaterial]
floor_warm_up: Final[_FloorWarmUp]
without_floor_limit: Final[_WithoutFloorLimit]
warm_up_evidence: Final[_WarmUpEvidence]
floor_scenarios: Final[_FloorScenarios]

__all__ = [
    "element_resistance",
    "element_power",
    "element_current",
    "power_at_voltage",
    "parallel_element_resistance",
    "power_density",
    "floor_heat_flux",
    "floor_surface_temperature",
    "heated_area",
    "cable_power_density",
    "cable_spacing",
    "shorted_fraction",
    "shorted_power",
    "shorted_loading",
    "missing_parallel_mats",
    "screen_fault_position",
    "screen_fault_resistance",
    "highest_power_input",
    "least_power_input",
    "floor_limit_factor",
    "surface_heat_flux",
    "upward_resistance",
    "downward_flux",
    "upward_flux",
    "material_conductivity",
    "material_density",
    "material_heat_capacity",
    "thermal_resistance",
    "surface_resistance",
    "u_value",
    "conduction_heat_flow",
    "thermal_effusivity",
    "contact_temperature",
    "radiation_coefficient",
    "radiation_heat_flow",
    "plate_radiation",
    "rayleigh_number",
    "vertical_plate_nusselt",
    "vertical_plate_nusselt_laminar",
    "horizontal_cylinder_nusselt",
    "plate_below_nusselt",
    "convection_coefficient",
    "vertical_plate_coefficient",
    "air_heat_factor",
    "ventilation_coefficient",
    "element_heat_loss",
    "room_heat_loss",
    "steady_temperature",
    "warm_up_time",
    "running_cost",
    "mean_excess",
    "log_mean_excess",
    "radiator_output",
    "rail_surface_temperature",
    "burn_threshold",
    "mirror_clear_power",
    "mirror_clear_time",
    "pad_temperature_rise",
    "check_element_resistance",
    "check_element_resistance_warm",
    "check_element_insulation",
    "check_power_input",
    "check_power_density",
    "check_floor_temperature",
    "check_floor_covering",
    "check_touch_temperature",
    "check_vulnerable_surface",
    "check_room_heating",
    "check_heating_rcd",
    "check_screen_mesh",
    "check_mirror_pad",
    "mats_that_fit",
    "floor_material",
    "floor_warm_up",
    "without_floor_limit",
    "warm_up_evidence",
    "floor_scenarios",
]

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Heating elements and floors: resistance, power, surface temperature."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

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
check_element_resistance: Final[_CheckElementResistance]
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
    "check_element_resistance",
    "floor_material",
    "floor_warm_up",
    "without_floor_limit",
    "warm_up_evidence",
    "floor_scenarios",
]

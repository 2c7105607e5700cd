# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Conductors, protection, tests: what a circuit carries, loses and withstands."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Reading, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

_LoadKind: TypeAlias = Literal["lighting", "other", "lighting_private_supply", "other_private_supply"]
_Material: TypeAlias = Literal["copper", "aluminium", "steel", "lead"]
_CircuitKind: TypeAlias = Literal["selv_pelv", "up_to_500_v", "above_500_v"]
_RcdKind: TypeAlias = Literal["general", "selective"]

@final
class _VoltageDrop(Formula):
    """Voltage drop along a cable from its tabulated drop per ampere and metre."""

    @overload
    def __call__(  # type: ignore
        self,
        drop_mv_per_a_m: float,
        current_a: float,
        length_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage drop along a cable from its tabulated drop per ampere and metre."""
    @overload
    def __call__(  # type: ignore
        self,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
        length_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        drop_mv_per_a_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
        length_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        drop_mv_per_a_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        length_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
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
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
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
class _VoltageDropImpedance(Formula):
    """Voltage drop of a run from resistance, reactance and power factor."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float,
        reactance_mohm_per_m: float,
        current_a: float,
        length_m: float,
        power_factor: float,
        b: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage drop of a run from resistance, reactance and power factor."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        reactance_mohm_per_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
        power_factor: float | Measured,
        b: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | _Array,
        reactance_mohm_per_m: float | _Array,
        current_a: float | _Array,
        length_m: float | _Array,
        power_factor: float | _Array,
        b: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_mohm_per_m: float | _Array | Measured | MeasuredArray,
        reactance_mohm_per_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        power_factor: float | _Array | Measured | MeasuredArray,
        b: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm_per_m: float | Measured,
        reactance_mohm_per_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
        power_factor: float | Measured,
        b: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        reactance_mohm_per_m: float | Measured,
        current_a: float | Measured,
        length_m: float | Measured,
        power_factor: float | Measured,
        b: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm_per_m: float | _Array,
        reactance_mohm_per_m: float | _Array,
        current_a: float | _Array,
        length_m: float | _Array,
        power_factor: float | _Array,
        b: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm_per_m: float | tuple[float, float],
        reactance_mohm_per_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        length_m: float | tuple[float, float],
        power_factor: float | tuple[float, float],
        b: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm_per_m: float | Measured | Distribution,
        reactance_mohm_per_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        power_factor: float | Measured | Distribution,
        b: float | Measured | Distribution,
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
        resistance_mohm_per_m: float | Measured | Distribution,
        reactance_mohm_per_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        power_factor: float | Measured | Distribution,
        b: float | Measured | Distribution,
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
class _RingVoltageDrop(Formula):
    """Voltage drop at one load on a ring, and at the end of a spur from it."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float,
        ring_length_m: float,
        distance_m: float,
        current_a: float,
        spur_length_m: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage drop at one load on a ring, and at the end of a spur from it."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
        spur_length_m: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | _Array,
        ring_length_m: float | _Array,
        distance_m: float | _Array,
        current_a: float | _Array,
        spur_length_m: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_mohm_per_m: float | _Array | Measured | MeasuredArray,
        ring_length_m: float | _Array | Measured | MeasuredArray,
        distance_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        spur_length_m: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
        spur_length_m: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
        spur_length_m: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm_per_m: float | _Array,
        ring_length_m: float | _Array,
        distance_m: float | _Array,
        current_a: float | _Array,
        spur_length_m: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm_per_m: float | tuple[float, float],
        ring_length_m: float | tuple[float, float],
        distance_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        spur_length_m: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm_per_m: float | Measured | Distribution,
        ring_length_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        spur_length_m: float | Measured | Distribution = 0.0,
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
        resistance_mohm_per_m: float | Measured | Distribution,
        ring_length_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        spur_length_m: float | Measured | Distribution = 0.0,
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
class _OperatingTemperatureFactor(Formula):
    """How much of its tabulated resistance a conductor has that carries less than its full load."""

    @overload
    def __call__(  # type: ignore
        self,
        design_current_a: float,
        tabulated_capacity_a: float,
        ambient_factor: float,
        grouping_factor: float,
        conductor_max_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How much of its tabulated resistance a conductor has that carries less than its full load."""
    @overload
    def __call__(  # type: ignore
        self,
        design_current_a: float | Measured,
        tabulated_capacity_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        conductor_max_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        design_current_a: float | _Array,
        tabulated_capacity_a: float | _Array,
        ambient_factor: float | _Array,
        grouping_factor: float | _Array,
        conductor_max_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        design_current_a: float | _Array | Measured | MeasuredArray,
        tabulated_capacity_a: float | _Array | Measured | MeasuredArray,
        ambient_factor: float | _Array | Measured | MeasuredArray,
        grouping_factor: float | _Array | Measured | MeasuredArray,
        conductor_max_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        design_current_a: float | Measured,
        tabulated_capacity_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        conductor_max_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        design_current_a: float | Measured,
        tabulated_capacity_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        conductor_max_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        design_current_a: float | _Array,
        tabulated_capacity_a: float | _Array,
        ambient_factor: float | _Array,
        grouping_factor: float | _Array,
        conductor_max_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        design_current_a: float | tuple[float, float],
        tabulated_capacity_a: float | tuple[float, float],
        ambient_factor: float | tuple[float, float],
        grouping_factor: float | tuple[float, float],
        conductor_max_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        design_current_a: float | Measured | Distribution,
        tabulated_capacity_a: float | Measured | Distribution,
        ambient_factor: float | Measured | Distribution,
        grouping_factor: float | Measured | Distribution,
        conductor_max_c: float | Measured | Distribution,
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
        design_current_a: float | Measured | Distribution,
        tabulated_capacity_a: float | Measured | Distribution,
        ambient_factor: float | Measured | Distribution,
        grouping_factor: float | Measured | Distribution,
        conductor_max_c: float | Measured | Distribution,
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
class _DesignCurrent(Formula):
    """Current of a single-phase load from its power."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        voltage_v: float,
        power_factor: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current of a single-phase load from its power."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        power_factor: float | _Array,
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
        power_factor: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        power_factor: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
        power_factor: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
        power_factor: float | Measured | Distribution,
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
        power_factor: float | Measured | Distribution,
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
class _DesignCurrentThreePhase(Formula):
    """Current in each line of a balanced three-phase load from its power."""

    @overload
    def __call__(  # type: ignore
        self,
        power_w: float,
        voltage_v: float,
        power_factor: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current in each line of a balanced three-phase load from its power."""
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        power_factor: float | _Array,
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
        power_factor: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        power_w: float | Measured,
        voltage_v: float | Measured,
        power_factor: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        power_w: float | _Array,
        voltage_v: float | _Array,
        power_factor: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_w: float | tuple[float, float],
        voltage_v: float | tuple[float, float],
        power_factor: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_w: float | Measured | Distribution,
        voltage_v: float | Measured | Distribution,
        power_factor: float | Measured | Distribution,
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
        power_factor: float | Measured | Distribution,
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
class _ResistanceAtTemperature(Formula):
    """Resistance of a conductor at a temperature from its resistance at 20 °C."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_20_mohm_per_m: float,
        temperature_c: float,
        alpha_per_k: float = 0.00393,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a conductor at a temperature from its resistance at 20 °C."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_20_mohm_per_m: float | Measured,
        temperature_c: float | Measured,
        alpha_per_k: float | Measured = 0.00393,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_20_mohm_per_m: float | _Array,
        temperature_c: float | _Array,
        alpha_per_k: float | _Array = 0.00393,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_20_mohm_per_m: float | _Array | Measured | MeasuredArray,
        temperature_c: float | _Array | Measured | MeasuredArray,
        alpha_per_k: float | _Array | Measured | MeasuredArray = 0.00393,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_20_mohm_per_m: float | Measured,
        temperature_c: float | Measured,
        alpha_per_k: float | Measured = 0.00393,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_20_mohm_per_m: float | Measured,
        temperature_c: float | Measured,
        alpha_per_k: float | Measured = 0.00393,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_20_mohm_per_m: float | _Array,
        temperature_c: float | _Array,
        alpha_per_k: float | _Array = 0.00393,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_20_mohm_per_m: float | tuple[float, float],
        temperature_c: float | tuple[float, float],
        alpha_per_k: float | tuple[float, float] = 0.00393,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_20_mohm_per_m: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        alpha_per_k: float | Measured | Distribution = 0.00393,
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
        resistance_20_mohm_per_m: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        alpha_per_k: float | Measured | Distribution = 0.00393,
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
class _LoopResistance(Formula):
    """Resistance of line and protective conductor of a run together."""

    @overload
    def __call__(  # type: ignore
        self,
        line_mohm_per_m: float,
        cpc_mohm_per_m: float,
        length_m: float,
        temperature_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of line and protective conductor of a run together."""
    @overload
    def __call__(  # type: ignore
        self,
        line_mohm_per_m: float | Measured,
        cpc_mohm_per_m: float | Measured,
        length_m: float | Measured,
        temperature_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        line_mohm_per_m: float | _Array,
        cpc_mohm_per_m: float | _Array,
        length_m: float | _Array,
        temperature_factor: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        line_mohm_per_m: float | _Array | Measured | MeasuredArray,
        cpc_mohm_per_m: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        line_mohm_per_m: float | Measured,
        cpc_mohm_per_m: float | Measured,
        length_m: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        line_mohm_per_m: float | Measured,
        cpc_mohm_per_m: float | Measured,
        length_m: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        line_mohm_per_m: float | _Array,
        cpc_mohm_per_m: float | _Array,
        length_m: float | _Array,
        temperature_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        line_mohm_per_m: float | tuple[float, float],
        cpc_mohm_per_m: float | tuple[float, float],
        length_m: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        line_mohm_per_m: float | Measured | Distribution,
        cpc_mohm_per_m: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution = 1.0,
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
        line_mohm_per_m: float | Measured | Distribution,
        cpc_mohm_per_m: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution = 1.0,
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
class _LengthFromResistance(Formula):
    """Length of a conductor from its resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        resistance_mohm_per_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Length of a conductor from its resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        resistance_mohm_per_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        resistance_mohm_per_m: float | _Array,
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
        resistance_mohm_per_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, resistance_mohm_per_m: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        resistance_mohm_per_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        resistance_mohm_per_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        resistance_mohm_per_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        resistance_mohm_per_m: float | Measured | Distribution,
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
        resistance_mohm_per_m: float | Measured | Distribution,
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
class _CrossConnectedResistance(Formula):
    """Reading between two conductors of a sound ring at one point, their ends linked crosswise at the board."""

    @overload
    def __call__(  # type: ignore
        self,
        first_ohm: float,
        second_ohm: float,
        position_ratio: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Reading between two conductors of a sound ring at one point, their ends linked crosswise at the board."""
    @overload
    def __call__(  # type: ignore
        self,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        position_ratio: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        position_ratio: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        first_ohm: float | _Array | Measured | MeasuredArray,
        second_ohm: float | _Array | Measured | MeasuredArray,
        position_ratio: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        position_ratio: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        first_ohm: float | Measured,
        second_ohm: float | Measured,
        position_ratio: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        first_ohm: float | _Array,
        second_ohm: float | _Array,
        position_ratio: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        first_ohm: float | tuple[float, float],
        second_ohm: float | tuple[float, float],
        position_ratio: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
        position_ratio: float | Measured | Distribution,
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
        first_ohm: float | Measured | Distribution,
        second_ohm: float | Measured | Distribution,
        position_ratio: float | Measured | Distribution,
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
class _CheckVoltageDrop(Formula):
    """Voltage drop of a final circuit against the rulebook's share of the nominal voltage."""

    @overload
    def __call__(  # type: ignore
        self,
        voltage_drop_v: _Given,
        nominal_voltage_v: _Given,
        load_kind: _LoadKind,
        rulebook: str | Rulebook,
        length_m: _Given = 0.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Voltage drop of a final circuit against the rulebook's share of the nominal voltage."""
    @overload
    def __call__(
        self,
        voltage_drop_v: _Given | _Rows,
        nominal_voltage_v: _Given | _Rows,
        load_kind: _LoadKind | Sequence[_LoadKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        length_m: _Given | _Rows = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _AdiabaticK(Formula):
    """k of a conductor: what it bears when a fault heats it from one temperature to another and no heat escapes."""

    @overload
    def __call__(  # type: ignore
        self,
        material: _Material,
        initial_c: float,
        final_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """k of a conductor: what it bears when a fault heats it from one temperature to another and no heat escapes."""
    @overload
    def __call__(  # type: ignore
        self,
        material: _Material,
        initial_c: float | Measured,
        final_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array,
        final_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array | Measured | MeasuredArray,
        final_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, material: _Material, initial_c: float | Measured, final_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        material: _Material,
        initial_c: float | Measured,
        final_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array,
        final_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        material: _Material,
        initial_c: float | tuple[float, float],
        final_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        material: _Material,
        initial_c: float | Measured | Distribution,
        final_c: float | Measured | Distribution,
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
        initial_c: float | Measured | Distribution,
        final_c: float | Measured | Distribution,
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
class _AdiabaticKFromConstants(Formula):
    """k of a conductor from the constants of its metal."""

    @overload
    def __call__(  # type: ignore
        self,
        heat_capacity_j_per_k_mm3: float,
        beta_k: float,
        resistivity_20_ohm_mm: float,
        initial_c: float,
        final_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """k of a conductor from the constants of its metal."""
    @overload
    def __call__(  # type: ignore
        self,
        heat_capacity_j_per_k_mm3: float | Measured,
        beta_k: float | Measured,
        resistivity_20_ohm_mm: float | Measured,
        initial_c: float | Measured,
        final_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        heat_capacity_j_per_k_mm3: float | _Array,
        beta_k: float | _Array,
        resistivity_20_ohm_mm: float | _Array,
        initial_c: float | _Array,
        final_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        heat_capacity_j_per_k_mm3: float | _Array | Measured | MeasuredArray,
        beta_k: float | _Array | Measured | MeasuredArray,
        resistivity_20_ohm_mm: float | _Array | Measured | MeasuredArray,
        initial_c: float | _Array | Measured | MeasuredArray,
        final_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        heat_capacity_j_per_k_mm3: float | Measured,
        beta_k: float | Measured,
        resistivity_20_ohm_mm: float | Measured,
        initial_c: float | Measured,
        final_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        heat_capacity_j_per_k_mm3: float | Measured,
        beta_k: float | Measured,
        resistivity_20_ohm_mm: float | Measured,
        initial_c: float | Measured,
        final_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        heat_capacity_j_per_k_mm3: float | _Array,
        beta_k: float | _Array,
        resistivity_20_ohm_mm: float | _Array,
        initial_c: float | _Array,
        final_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        heat_capacity_j_per_k_mm3: float | tuple[float, float],
        beta_k: float | tuple[float, float],
        resistivity_20_ohm_mm: float | tuple[float, float],
        initial_c: float | tuple[float, float],
        final_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        heat_capacity_j_per_k_mm3: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
        resistivity_20_ohm_mm: float | Measured | Distribution,
        initial_c: float | Measured | Distribution,
        final_c: float | Measured | Distribution,
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
        heat_capacity_j_per_k_mm3: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
        resistivity_20_ohm_mm: float | Measured | Distribution,
        initial_c: float | Measured | Distribution,
        final_c: float | Measured | Distribution,
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
class _AdiabaticArea(Formula):
    """Least cross-section of a protective conductor for a fault current and its duration."""

    @overload
    def __call__(  # type: ignore
        self,
        current_a: float,
        time_s: float,
        k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Least cross-section of a protective conductor for a fault current and its duration."""
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | Measured,
        time_s: float | Measured,
        k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | _Array,
        time_s: float | _Array,
        k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        current_a: float | _Array | Measured | MeasuredArray,
        time_s: float | _Array | Measured | MeasuredArray,
        k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, current_a: float | Measured, time_s: float | Measured, k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        current_a: float | Measured,
        time_s: float | Measured,
        k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        current_a: float | _Array,
        time_s: float | _Array,
        k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        current_a: float | tuple[float, float],
        time_s: float | tuple[float, float],
        k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        current_a: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
        current_a: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
class _AdiabaticAreaFromLetThrough(Formula):
    """Least cross-section of a protective conductor for a let-through energy."""

    @overload
    def __call__(self, let_through_a2s: float, k: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Least cross-section of a protective conductor for a let-through energy."""
    @overload
    def __call__(  # type: ignore
        self,
        let_through_a2s: float | Measured,
        k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        let_through_a2s: float | _Array,
        k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        let_through_a2s: float | _Array | Measured | MeasuredArray,
        k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, let_through_a2s: float | Measured, k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, let_through_a2s: float | Measured, k: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        let_through_a2s: float | _Array,
        k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        let_through_a2s: float | tuple[float, float],
        k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        let_through_a2s: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
        let_through_a2s: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
class _AdiabaticTime(Formula):
    """Longest time for which a conductor bears a fault current."""

    @overload
    def __call__(  # type: ignore
        self,
        current_a: float,
        area_mm2: float,
        k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Longest time for which a conductor bears a fault current."""
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | Measured,
        area_mm2: float | Measured,
        k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | _Array,
        area_mm2: float | _Array,
        k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        current_a: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, current_a: float | Measured, area_mm2: float | Measured, k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        current_a: float | Measured,
        area_mm2: float | Measured,
        k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        current_a: float | _Array,
        area_mm2: float | _Array,
        k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        current_a: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
        k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        current_a: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
        current_a: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
class _AdiabaticFinalTemperature(Formula):
    """Temperature of a conductor after a fault, if no heat escapes."""

    @overload
    def __call__(  # type: ignore
        self,
        let_through_a2s: float,
        area_mm2: float,
        material: _Material,
        initial_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of a conductor after a fault, if no heat escapes."""
    @overload
    def __call__(  # type: ignore
        self,
        let_through_a2s: float | Measured,
        area_mm2: float | Measured,
        material: _Material,
        initial_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        let_through_a2s: float | _Array,
        area_mm2: float | _Array,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        let_through_a2s: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        let_through_a2s: float | Measured,
        area_mm2: float | Measured,
        material: _Material,
        initial_c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        let_through_a2s: float | Measured,
        area_mm2: float | Measured,
        material: _Material,
        initial_c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        let_through_a2s: float | _Array,
        area_mm2: float | _Array,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        initial_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        let_through_a2s: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
        material: _Material,
        initial_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        let_through_a2s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        material: _Material,
        initial_c: float | Measured | Distribution,
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
        let_through_a2s: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        material: _Material,
        initial_c: float | Measured | Distribution,
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
class _AdiabaticWithstand(Formula):
    """Energy that a conductor bears."""

    @overload
    def __call__(self, area_mm2: float, k: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Energy that a conductor bears."""
    @overload
    def __call__(self, area_mm2: float | Measured, k: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        area_mm2: float | _Array,
        k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        area_mm2: float | _Array | Measured | MeasuredArray,
        k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, area_mm2: float | Measured, k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, area_mm2: float | Measured, k: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        area_mm2: float | _Array,
        k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, area_mm2: float | tuple[float, float], k: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        area_mm2: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
        area_mm2: float | Measured | Distribution,
        k: float | Measured | Distribution,
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
class _FaultEnergy(Formula):
    """Energy let through by a steady fault current until the device operates."""

    @overload
    def __call__(self, current_a: float, time_s: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Energy let through by a steady fault current until the device operates."""
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | Measured,
        time_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        current_a: float | _Array,
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
        current_a: float | _Array | Measured | MeasuredArray,
        time_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, current_a: float | Measured, time_s: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, current_a: float | Measured, time_s: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        current_a: float | _Array,
        time_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        current_a: float | tuple[float, float],
        time_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        current_a: float | Measured | Distribution,
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
        current_a: float | Measured | Distribution,
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
class _EarthFaultLoopImpedance(Formula):
    """Impedance of the earth fault loop from its part outside and the circuit's line and protective conductor."""

    @overload
    def __call__(  # type: ignore
        self,
        external_ohm: float,
        r1_plus_r2_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Impedance of the earth fault loop from its part outside and the circuit's line and protective conductor."""
    @overload
    def __call__(  # type: ignore
        self,
        external_ohm: float | Measured,
        r1_plus_r2_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        external_ohm: float | _Array,
        r1_plus_r2_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        external_ohm: float | _Array | Measured | MeasuredArray,
        r1_plus_r2_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, external_ohm: float | Measured, r1_plus_r2_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, external_ohm: float | Measured, r1_plus_r2_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        external_ohm: float | _Array,
        r1_plus_r2_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        external_ohm: float | tuple[float, float],
        r1_plus_r2_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_ohm: float | Measured | Distribution,
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
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_ohm: float | Measured | Distribution,
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
class _MaxEarthFaultLoopImpedance(Formula):
    """Highest loop impedance at which the device still disconnects in time."""

    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float,
        minimum_voltage_factor: float,
        operating_current_a: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Highest loop impedance at which the device still disconnects in time."""
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | Measured,
        minimum_voltage_factor: float | Measured,
        operating_current_a: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | _Array,
        minimum_voltage_factor: float | _Array,
        operating_current_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        voltage_v: float | _Array | Measured | MeasuredArray,
        minimum_voltage_factor: float | _Array | Measured | MeasuredArray,
        operating_current_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        voltage_v: float | Measured,
        minimum_voltage_factor: float | Measured,
        operating_current_a: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        voltage_v: float | Measured,
        minimum_voltage_factor: float | Measured,
        operating_current_a: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        voltage_v: float | _Array,
        minimum_voltage_factor: float | _Array,
        operating_current_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        voltage_v: float | tuple[float, float],
        minimum_voltage_factor: float | tuple[float, float],
        operating_current_a: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        voltage_v: float | Measured | Distribution,
        minimum_voltage_factor: float | Measured | Distribution,
        operating_current_a: float | Measured | Distribution,
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
        voltage_v: float | Measured | Distribution,
        minimum_voltage_factor: float | Measured | Distribution,
        operating_current_a: float | Measured | Distribution,
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
class _WarmLoopImpedance(Formula):
    """Earth fault loop impedance with the circuit's conductors warm, from a reading on cold conductors."""

    @overload
    def __call__(  # type: ignore
        self,
        cold_loop_impedance_ohm: float,
        external_ohm: float,
        temperature_factor: float = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Earth fault loop impedance with the circuit's conductors warm, from a reading on cold conductors."""
    @overload
    def __call__(  # type: ignore
        self,
        cold_loop_impedance_ohm: float | Measured,
        external_ohm: float | Measured,
        temperature_factor: float | Measured = 1.2,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        cold_loop_impedance_ohm: float | _Array,
        external_ohm: float | _Array,
        temperature_factor: float | _Array = 1.2,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        cold_loop_impedance_ohm: float | _Array | Measured | MeasuredArray,
        external_ohm: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        cold_loop_impedance_ohm: float | Measured,
        external_ohm: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        cold_loop_impedance_ohm: float | Measured,
        external_ohm: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        cold_loop_impedance_ohm: float | _Array,
        external_ohm: float | _Array,
        temperature_factor: float | _Array = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        cold_loop_impedance_ohm: float | tuple[float, float],
        external_ohm: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.2,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cold_loop_impedance_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution = 1.2,
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
        cold_loop_impedance_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        temperature_factor: float | Measured | Distribution = 1.2,
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
class _ProspectiveFaultCurrent(Formula):
    """Fault current that a voltage drives through the impedance of the loop."""

    @overload
    def __call__(self, voltage_v: float, impedance_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Fault current that a voltage drives through the impedance of the loop."""
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | Measured,
        impedance_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | _Array,
        impedance_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        voltage_v: float | _Array | Measured | MeasuredArray,
        impedance_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, voltage_v: float | Measured, impedance_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, voltage_v: float | Measured, impedance_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        voltage_v: float | _Array,
        impedance_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        voltage_v: float | tuple[float, float],
        impedance_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        voltage_v: float | Measured | Distribution,
        impedance_ohm: float | Measured | Distribution,
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
        voltage_v: float | Measured | Distribution,
        impedance_ohm: float | Measured | Distribution,
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
class _CheckAdiabatic(Formula):
    """Energy let through in a fault against what the conductor bears."""

    @overload
    def __call__(  # type: ignore
        self,
        area_mm2: _Given,
        k: _Given,
        let_through_a2s: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Energy let through in a fault against what the conductor bears."""
    @overload
    def __call__(
        self,
        area_mm2: _Given | _Rows,
        k: _Given | _Rows,
        let_through_a2s: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckLoopImpedance(Formula):
    """Earth fault loop impedance against the highest at which the device disconnects in time."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_impedance_ohm: _Given,
        voltage_v: _Given,
        operating_current_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Earth fault loop impedance against the highest at which the device disconnects in time."""
    @overload
    def __call__(
        self,
        loop_impedance_ohm: _Given | _Rows,
        voltage_v: _Given | _Rows,
        operating_current_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckInsulation(Formula):
    """Insulation resistance against the rulebook's least value."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: _Given,
        circuit_kind: _CircuitKind,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Insulation resistance against the rulebook's least value."""
    @overload
    def __call__(
        self,
        resistance_mohm: _Given | _Rows,
        circuit_kind: _CircuitKind | Sequence[_CircuitKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRcdTrip(Formula):
    """Tripping time of a residual current device at its rated residual current against the rulebook's limit."""

    @overload
    def __call__(  # type: ignore
        self,
        time_ms: _Given,
        rcd_kind: _RcdKind,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Tripping time of a residual current device at its rated residual current against the rulebook's limit."""
    @overload
    def __call__(
        self,
        time_ms: _Given | _Rows,
        rcd_kind: _RcdKind | Sequence[_RcdKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _RingTests(Formula):
    """What is wrong with a ring circuit, by its readings end to end and at outlets: a sound ring, a break, a bridge, spurs, a bad joint, conductors changed over, another cable; with probabilities, its length, each outlet, and the next reading."""

    def __call__(
        self,
        line_end_to_end_ohm: float | Measured | Reading | dict[str, Any] | None = None,
        neutral_end_to_end_ohm: float | Measured | Reading | dict[str, Any] | None = None,
        cpc_end_to_end_ohm: float | Measured | Reading | dict[str, Any] | None = None,
        points: Sequence[dict[str, Any]] | None = None,
        line_mohm_per_m: float | None = None,
        cpc_mohm_per_m: float | None = None,
        conductor_temperature_c: float | None = None,
        expected_length_m: float | Measured | Reading | dict[str, Any] | None = None,
    ) -> Result:
        """What is wrong with a ring circuit, by its readings end to end and at outlets: a sound ring, a break, a bridge, spurs, a bad joint, conductors changed over, another cable; with probabilities, its length, each outlet, and the next reading."""

@final
class _TestRecordConsistency(Formula):
    """The readings of a board's circuits held against each other: residual, z and p-value of each relation, decided for all of them together (Holm), improbable patterns, and what is missing."""

    def __call__(
        self,
        circuits: Sequence[dict[str, Any]],
        board: dict[str, Any] | None = None,
        level: float | None = None,
    ) -> Result:
        """The readings of a board's circuits held against each other: residual, z and p-value of each relation, decided for all of them together (Holm), improbable patterns, and what is missing."""

voltage_drop: Final[_VoltageDrop]
voltage_drop_impedance: Final[_VoltageDropImpedance]
ring_voltage_drop: Final[_RingVoltageDrop]
operating_temperature_factor: Final[_OperatingTemperatureFactor]
design_current: Final[_DesignCurrent]
design_current_three_phase: Final[_DesignCurrentThreePhase]
resistance_at_temperature: Final[_ResistanceAtTemperature]
loop_resistance: Final[_LoopResistance]
length_from_resistance: Final[_LengthFromResistance]
cross_connected_resistance: Final[_CrossConnectedResistance]
check_voltage_drop: Final[_CheckVoltageDrop]
adiabatic_k: Final[_AdiabaticK]
adiabatic_k_from_constants: Final[_AdiabaticKFromConstants]
adiabatic_area: Final[_AdiabaticArea]
adiabatic_area_from_let_through: Final[_AdiabaticAreaFromLetThrough]
adiabatic_time: Final[_AdiabaticTime]
adiabatic_final_temperature: Final[_AdiabaticFinalTemperature]
adiabatic_withstand: Final[_AdiabaticWithstand]
fault_energy: Final[_FaultEnergy]
earth_fault_loop_impedance: Final[_EarthFaultLoopImpedance]
max_earth_fault_loop_impedance: Final[_MaxEarthFaultLoopImpedance]
warm_loop_impedance: Final[_WarmLoopImpedance]
prospective_fault_current: Final[_ProspectiveFaultCurrent]
check_adiabatic: Final[_CheckAdiabatic]
check_loop_impedance: Final[_CheckLoopImpedance]
check_insulation: Final[_CheckInsulation]
check_rcd_trip: Final[_CheckRcdTrip]
ring_tests: Final[_RingTests]
test_record_consistency: Final[_TestRecordConsistency]

__all__ = [
    "voltage_drop",
    "voltage_drop_impedance",
    "ring_voltage_drop",
    "operating_temperature_factor",
    "design_current",
    "design_current_three_phase",
    "resistance_at_temperature",
    "loop_resistance",
    "length_from_resistance",
    "cross_connected_resistance",
    "check_voltage_drop",
    "adiabatic_k",
    "adiabatic_k_from_constants",
    "adiabatic_area",
    "adiabatic_area_from_let_through",
    "adiabatic_time",
    "adiabatic_final_temperature",
    "adiabatic_withstand",
    "fault_energy",
    "earth_fault_loop_impedance",
    "max_earth_fault_loop_impedance",
    "warm_loop_impedance",
    "prospective_fault_current",
    "check_adiabatic",
    "check_loop_impedance",
    "check_insulation",
    "check_rcd_trip",
    "ring_tests",
    "test_record_consistency",
]

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Floor probes and other temperature sensors: curves both ways, tolerances, checks."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Reading, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

_ToleranceClass: TypeAlias = Literal["AA", "A", "B", "C"]
_Metal: TypeAlias = Literal["copper", "nickel"]
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

@final
class _NtcResistance(Formula):
    """Resistance of an NTC thermistor at a temperature, from its beta value."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        reference_ohm: float,
        reference_c: float,
        beta_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of an NTC thermistor at a temperature, from its beta value."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
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
        reference_ohm: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray,
        beta_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        reference_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
class _NtcTemperature(Formula):
    """Temperature of an NTC thermistor from its resistance and beta value."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        reference_ohm: float,
        reference_c: float,
        beta_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of an NTC thermistor from its resistance and beta value."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
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
        reference_ohm: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray,
        beta_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        reference_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
class _BetaFromTwoPoints(Formula):
    """Beta value of a thermistor from its resistance at two temperatures; negative if the resistance rises."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float,
        resistance_1_ohm: float,
        temperature_2_c: float,
        resistance_2_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Beta value of a thermistor from its resistance at two temperatures; negative if the resistance rises."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float | _Array,
        resistance_1_ohm: float | _Array,
        temperature_2_c: float | _Array,
        resistance_2_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_1_c: float | _Array | Measured | MeasuredArray,
        resistance_1_ohm: float | _Array | Measured | MeasuredArray,
        temperature_2_c: float | _Array | Measured | MeasuredArray,
        resistance_2_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_1_c: float | _Array,
        resistance_1_ohm: float | _Array,
        temperature_2_c: float | _Array,
        resistance_2_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_1_c: float | tuple[float, float],
        resistance_1_ohm: float | tuple[float, float],
        temperature_2_c: float | tuple[float, float],
        resistance_2_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_1_c: float | Measured | Distribution,
        resistance_1_ohm: float | Measured | Distribution,
        temperature_2_c: float | Measured | Distribution,
        resistance_2_ohm: float | Measured | Distribution,
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
        temperature_1_c: float | Measured | Distribution,
        resistance_1_ohm: float | Measured | Distribution,
        temperature_2_c: float | Measured | Distribution,
        resistance_2_ohm: float | Measured | Distribution,
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
class _SteinhartHartTemperature(Formula):
    """Temperature of a thermistor from its resistance by the Steinhart-Hart equation."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        a: float,
        b: float,
        c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of a thermistor from its resistance by the Steinhart-Hart equation."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        a: float | _Array,
        b: float | _Array,
        c: float | _Array,
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
        a: float | _Array | Measured | MeasuredArray,
        b: float | _Array | Measured | MeasuredArray,
        c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_ohm: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        a: float | _Array,
        b: float | _Array,
        c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        a: float | tuple[float, float],
        b: float | tuple[float, float],
        c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        a: float | Measured | Distribution,
        b: float | Measured | Distribution,
        c: float | Measured | Distribution,
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
        a: float | Measured | Distribution,
        b: float | Measured | Distribution,
        c: float | Measured | Distribution,
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
class _SteinhartHartResistance(Formula):
    """Resistance of a thermistor at a temperature by the Steinhart-Hart equation."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        a: float,
        b: float,
        c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a thermistor at a temperature by the Steinhart-Hart equation."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        a: float | _Array,
        b: float | _Array,
        c: float | _Array,
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
        a: float | _Array | Measured | MeasuredArray,
        b: float | _Array | Measured | MeasuredArray,
        c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        a: float | Measured,
        b: float | Measured,
        c: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        a: float | _Array,
        b: float | _Array,
        c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        a: float | tuple[float, float],
        b: float | tuple[float, float],
        c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        a: float | Measured | Distribution,
        b: float | Measured | Distribution,
        c: float | Measured | Distribution,
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
        a: float | Measured | Distribution,
        b: float | Measured | Distribution,
        c: float | Measured | Distribution,
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
class _RtdResistance(Formula):
    """Resistance of a platinum sensor at a temperature (IEC 60751)."""

    @overload
    def __call__(self, temperature_c: float, r0_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Resistance of a platinum sensor at a temperature (IEC 60751)."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
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
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, r0_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured, r0_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        r0_ohm: float | Measured | Distribution,
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
class _RtdTemperature(Formula):
    """Temperature of a platinum sensor from its resistance (IEC 60751, exact root also below 0 °C)."""

    @overload
    def __call__(self, resistance_ohm: float, r0_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Temperature of a platinum sensor from its resistance (IEC 60751, exact root also below 0 °C)."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        r0_ohm: float | _Array,
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
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, r0_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, r0_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        r0_ohm: float | Measured | Distribution,
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
class _RtdTolerance(Formula):
    """Permitted deviation of a platinum sensor of a tolerance class, plus or minus."""

    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Permitted deviation of a platinum sensor of a tolerance class, plus or minus."""
    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
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
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, tolerance_class: _ToleranceClass, temperature_c: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, tolerance_class: _ToleranceClass, temperature_c: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        tolerance_class: _ToleranceClass,
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
        tolerance_class: _ToleranceClass,
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
class _SiliconPtcResistance(Formula):
    """Resistance of a silicon sensor with a rising curve, from its resistance at 25 °C."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        reference_ohm: float,
        a_per_k: float = 0.00788,
        b_per_k2: float = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a silicon sensor with a rising curve, from its resistance at 25 °C."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        reference_ohm: float | _Array,
        a_per_k: float | _Array = 0.00788,
        b_per_k2: float | _Array = 1.937e-05,
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
        reference_ohm: float | _Array | Measured | MeasuredArray,
        a_per_k: float | _Array | Measured | MeasuredArray = 0.00788,
        b_per_k2: float | _Array | Measured | MeasuredArray = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        reference_ohm: float | _Array,
        a_per_k: float | _Array = 0.00788,
        b_per_k2: float | _Array = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        a_per_k: float | tuple[float, float] = 0.00788,
        b_per_k2: float | tuple[float, float] = 1.937e-05,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        a_per_k: float | Measured | Distribution = 0.00788,
        b_per_k2: float | Measured | Distribution = 1.937e-05,
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
        reference_ohm: float | Measured | Distribution,
        a_per_k: float | Measured | Distribution = 0.00788,
        b_per_k2: float | Measured | Distribution = 1.937e-05,
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
class _SiliconPtcTemperature(Formula):
    """Temperature of a silicon sensor with a rising curve, from its resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        reference_ohm: float,
        a_per_k: float = 0.00788,
        b_per_k2: float = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of a silicon sensor with a rising curve, from its resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        reference_ohm: float | _Array,
        a_per_k: float | _Array = 0.00788,
        b_per_k2: float | _Array = 1.937e-05,
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
        reference_ohm: float | _Array | Measured | MeasuredArray,
        a_per_k: float | _Array | Measured | MeasuredArray = 0.00788,
        b_per_k2: float | _Array | Measured | MeasuredArray = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        reference_ohm: float | Measured,
        a_per_k: float | Measured = 0.00788,
        b_per_k2: float | Measured = 1.937e-05,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        reference_ohm: float | _Array,
        a_per_k: float | _Array = 0.00788,
        b_per_k2: float | _Array = 1.937e-05,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        a_per_k: float | tuple[float, float] = 0.00788,
        b_per_k2: float | tuple[float, float] = 1.937e-05,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        a_per_k: float | Measured | Distribution = 0.00788,
        b_per_k2: float | Measured | Distribution = 1.937e-05,
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
        reference_ohm: float | Measured | Distribution,
        a_per_k: float | Measured | Distribution = 0.00788,
        b_per_k2: float | Measured | Distribution = 1.937e-05,
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
class _MetalResistance(Formula):
    """Resistance of a copper or nickel resistance thermometer at a temperature."""

    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal,
        temperature_c: float,
        r0_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a copper or nickel resistance thermometer at a temperature."""
    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array | Measured | MeasuredArray,
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, metal: _Metal, temperature_c: float | Measured, r0_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        metal: _Metal,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        metal: _Metal,
        temperature_c: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        metal: _Metal,
        temperature_c: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        metal: _Metal,
        temperature_c: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
class _MetalTemperature(Formula):
    """Temperature of a copper or nickel resistance thermometer from its resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal,
        resistance_ohm: float,
        r0_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature of a copper or nickel resistance thermometer from its resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal,
        resistance_ohm: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        resistance_ohm: float | _Array,
        r0_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, metal: _Metal, resistance_ohm: float | Measured, r0_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        metal: _Metal,
        resistance_ohm: float | Measured,
        r0_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        resistance_ohm: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        metal: _Metal,
        resistance_ohm: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        metal: _Metal,
        resistance_ohm: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        metal: _Metal,
        resistance_ohm: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
class _AlloyResistance(Formula):
    """Resistance of a heating element or wire at a temperature, from its resistance at 20 °C and its alloy."""

    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float,
        resistance_20_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a heating element or wire at a temperature, from its resistance at 20 °C and its alloy."""
    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float | Measured,
        resistance_20_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        resistance_20_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array | Measured | MeasuredArray,
        resistance_20_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, alloy: _Alloy, temperature_c: float | Measured, resistance_20_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float | Measured,
        resistance_20_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        resistance_20_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        alloy: _Alloy,
        temperature_c: float | tuple[float, float],
        resistance_20_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        alloy: _Alloy,
        temperature_c: float | Measured | Distribution,
        resistance_20_ohm: float | Measured | Distribution,
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
        alloy: _Alloy,
        temperature_c: float | Measured | Distribution,
        resistance_20_ohm: float | Measured | Distribution,
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
class _AlloyResistance20(Formula):
    """Resistance at 20 °C of a heating element or wire, from its resistance at another temperature and its alloy."""

    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float,
        resistance_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance at 20 °C of a heating element or wire, from its resistance at another temperature and its alloy."""
    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float | Measured,
        resistance_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        resistance_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array | Measured | MeasuredArray,
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, alloy: _Alloy, temperature_c: float | Measured, resistance_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        alloy: _Alloy,
        temperature_c: float | Measured,
        resistance_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        alloy: _Alloy | Sequence[_Alloy] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        resistance_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        alloy: _Alloy,
        temperature_c: float | tuple[float, float],
        resistance_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        alloy: _Alloy,
        temperature_c: float | Measured | Distribution,
        resistance_ohm: float | Measured | Distribution,
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
        alloy: _Alloy,
        temperature_c: float | Measured | Distribution,
        resistance_ohm: float | Measured | Distribution,
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
class _LeadResistanceErrorK(Formula):
    """Error of a two-wire reading by what is in series with the sensor, from the slope of its curve."""

    @overload
    def __call__(self, lead_ohm: float, slope_ohm_per_k: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Error of a two-wire reading by what is in series with the sensor, from the slope of its curve."""
    @overload
    def __call__(  # type: ignore
        self,
        lead_ohm: float | Measured,
        slope_ohm_per_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        lead_ohm: float | _Array,
        slope_ohm_per_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        lead_ohm: float | _Array | Measured | MeasuredArray,
        slope_ohm_per_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, lead_ohm: float | Measured, slope_ohm_per_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, lead_ohm: float | Measured, slope_ohm_per_k: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        lead_ohm: float | _Array,
        slope_ohm_per_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        lead_ohm: float | tuple[float, float],
        slope_ohm_per_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        lead_ohm: float | Measured | Distribution,
        slope_ohm_per_k: float | Measured | Distribution,
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
        lead_ohm: float | Measured | Distribution,
        slope_ohm_per_k: float | Measured | Distribution,
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
class _RtdLeadErrorK(Formula):
    """Error of a two-wire reading of a platinum sensor from 0 °C up, by what is in series with it."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        lead_ohm: float,
        r0_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Error of a two-wire reading of a platinum sensor from 0 °C up, by what is in series with it."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        lead_ohm: float | _Array,
        r0_ohm: float | _Array,
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
        lead_ohm: float | _Array | Measured | MeasuredArray,
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        r0_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        r0_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        lead_ohm: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        lead_ohm: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        lead_ohm: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
class _NtcLeadErrorK(Formula):
    """Error of an NTC reading by what is in series with it: it reads low, so the heat comes on late and stays on."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        lead_ohm: float,
        reference_ohm: float,
        reference_c: float,
        beta_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Error of an NTC reading by what is in series with it: it reads low, so the heat comes on late and stays on."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        lead_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
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
        lead_ohm: float | _Array | Measured | MeasuredArray,
        reference_ohm: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray,
        beta_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        lead_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        lead_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        lead_ohm: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        reference_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
        lead_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
class _NtcShuntErrorK(Formula):
    """Error of an NTC reading by a resistance across it (damp): it reads high, so the heat goes off early."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        shunt_ohm: float,
        reference_ohm: float,
        reference_c: float,
        beta_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Error of an NTC reading by a resistance across it (damp): it reads high, so the heat goes off early."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        shunt_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        shunt_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
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
        shunt_ohm: float | _Array | Measured | MeasuredArray,
        reference_ohm: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray,
        beta_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        shunt_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        shunt_ohm: float | Measured,
        reference_ohm: float | Measured,
        reference_c: float | Measured,
        beta_k: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        shunt_ohm: float | _Array,
        reference_ohm: float | _Array,
        reference_c: float | _Array,
        beta_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        shunt_ohm: float | tuple[float, float],
        reference_ohm: float | tuple[float, float],
        reference_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        shunt_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
        shunt_ohm: float | Measured | Distribution,
        reference_ohm: float | Measured | Distribution,
        reference_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
class _ShuntedResistance(Formula):
    """Resistance that is read where a shunt lies across a sensor."""

    @overload
    def __call__(self, resistance_ohm: float, shunt_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Resistance that is read where a shunt lies across a sensor."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        shunt_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        shunt_ohm: float | _Array,
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
        shunt_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, shunt_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, shunt_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        shunt_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        shunt_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        shunt_ohm: float | Measured | Distribution,
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
        shunt_ohm: float | Measured | Distribution,
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
class _ShuntResistance(Formula):
    """Resistance across a sensor that explains a reading which is too low."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float,
        reading_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance across a sensor that explains a reading which is too low."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        reading_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        reading_ohm: float | _Array,
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
        reading_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, reading_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, reading_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        reading_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        reading_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        reading_ohm: float | Measured | Distribution,
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
        reading_ohm: float | Measured | Distribution,
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
class _SelfHeatingK(Formula):
    """How much warmer a sensor is than its surroundings by the power that it takes."""

    @overload
    def __call__(  # type: ignore
        self,
        power_mw: float,
        dissipation_mw_per_k: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How much warmer a sensor is than its surroundings by the power that it takes."""
    @overload
    def __call__(  # type: ignore
        self,
        power_mw: float | Measured,
        dissipation_mw_per_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        power_mw: float | _Array,
        dissipation_mw_per_k: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        power_mw: float | _Array | Measured | MeasuredArray,
        dissipation_mw_per_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, power_mw: float | Measured, dissipation_mw_per_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, power_mw: float | Measured, dissipation_mw_per_k: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        power_mw: float | _Array,
        dissipation_mw_per_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        power_mw: float | tuple[float, float],
        dissipation_mw_per_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        power_mw: float | Measured | Distribution,
        dissipation_mw_per_k: float | Measured | Distribution,
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
        power_mw: float | Measured | Distribution,
        dissipation_mw_per_k: float | Measured | Distribution,
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
class _DividerSensorPower(Formula):
    """Power in a sensor that is read through a divider with one resistor."""

    @overload
    def __call__(  # type: ignore
        self,
        supply_v: float,
        series_ohm: float,
        resistance_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Power in a sensor that is read through a divider with one resistor."""
    @overload
    def __call__(  # type: ignore
        self,
        supply_v: float | Measured,
        series_ohm: float | Measured,
        resistance_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        supply_v: float | _Array,
        series_ohm: float | _Array,
        resistance_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        supply_v: float | _Array | Measured | MeasuredArray,
        series_ohm: float | _Array | Measured | MeasuredArray,
        resistance_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        supply_v: float | Measured,
        series_ohm: float | Measured,
        resistance_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        supply_v: float | Measured,
        series_ohm: float | Measured,
        resistance_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        supply_v: float | _Array,
        series_ohm: float | _Array,
        resistance_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        supply_v: float | tuple[float, float],
        series_ohm: float | tuple[float, float],
        resistance_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        supply_v: float | Measured | Distribution,
        series_ohm: float | Measured | Distribution,
        resistance_ohm: float | Measured | Distribution,
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
        supply_v: float | Measured | Distribution,
        series_ohm: float | Measured | Distribution,
        resistance_ohm: float | Measured | Distribution,
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
class _NtcSensitivity(Formula):
    """Relative change of an NTC's resistance with temperature: negative, -B/T²."""

    @overload
    def __call__(self, temperature_c: float, beta_k: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Relative change of an NTC's resistance with temperature: negative, -B/T²."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
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
        beta_k: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, temperature_c: float | Measured, beta_k: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, temperature_c: float | Measured, beta_k: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
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
        beta_k: float | Measured | Distribution,
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
class _NtcTolerance(Formula):
    """How far an NTC may be from its temperature by its tolerances, worst case: both the same way."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        beta_k: float,
        resistance_tolerance_percent: float,
        beta_tolerance_percent: float,
        reference_c: float = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How far an NTC may be from its temperature by its tolerances, worst case: both the same way."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
        resistance_tolerance_percent: float | _Array,
        beta_tolerance_percent: float | _Array,
        reference_c: float | _Array = 25.0,
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
        beta_k: float | _Array | Measured | MeasuredArray,
        resistance_tolerance_percent: float | _Array | Measured | MeasuredArray,
        beta_tolerance_percent: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
        resistance_tolerance_percent: float | _Array,
        beta_tolerance_percent: float | _Array,
        reference_c: float | _Array = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
        resistance_tolerance_percent: float | tuple[float, float],
        beta_tolerance_percent: float | tuple[float, float],
        reference_c: float | tuple[float, float] = 25.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
        resistance_tolerance_percent: float | Measured | Distribution,
        beta_tolerance_percent: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 25.0,
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
        beta_k: float | Measured | Distribution,
        resistance_tolerance_percent: float | Measured | Distribution,
        beta_tolerance_percent: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 25.0,
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
class _NtcToleranceStandard(Formula):
    """Standard uncertainty of an NTC's temperature by its tolerances, each taken as rectangular and apart from the other."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float,
        beta_k: float,
        resistance_tolerance_percent: float,
        beta_tolerance_percent: float,
        reference_c: float = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Standard uncertainty of an NTC's temperature by its tolerances, each taken as rectangular and apart from the other."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
        resistance_tolerance_percent: float | _Array,
        beta_tolerance_percent: float | _Array,
        reference_c: float | _Array = 25.0,
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
        beta_k: float | _Array | Measured | MeasuredArray,
        resistance_tolerance_percent: float | _Array | Measured | MeasuredArray,
        beta_tolerance_percent: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_c: float | Measured,
        beta_k: float | Measured,
        resistance_tolerance_percent: float | Measured,
        beta_tolerance_percent: float | Measured,
        reference_c: float | Measured = 25.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_c: float | _Array,
        beta_k: float | _Array,
        resistance_tolerance_percent: float | _Array,
        beta_tolerance_percent: float | _Array,
        reference_c: float | _Array = 25.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_c: float | tuple[float, float],
        beta_k: float | tuple[float, float],
        resistance_tolerance_percent: float | tuple[float, float],
        beta_tolerance_percent: float | tuple[float, float],
        reference_c: float | tuple[float, float] = 25.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_c: float | Measured | Distribution,
        beta_k: float | Measured | Distribution,
        resistance_tolerance_percent: float | Measured | Distribution,
        beta_tolerance_percent: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 25.0,
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
        beta_k: float | Measured | Distribution,
        resistance_tolerance_percent: float | Measured | Distribution,
        beta_tolerance_percent: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 25.0,
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
class _RtdToleranceOhm(Formula):
    """Permitted deviation of a platinum sensor of a tolerance class in ohms, plus or minus: the deviation in kelvin times the local slope."""

    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float,
        r0_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Permitted deviation of a platinum sensor of a tolerance class in ohms, plus or minus: the deviation in kelvin times the local slope."""
    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array | Measured | MeasuredArray,
        r0_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured,
        r0_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        tolerance_class: _ToleranceClass | Sequence[_ToleranceClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array,
        r0_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | tuple[float, float],
        r0_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
        tolerance_class: _ToleranceClass,
        temperature_c: float | Measured | Distribution,
        r0_ohm: float | Measured | Distribution,
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
class _SwitchingPtcCoefficient(Formula):
    """Temperature coefficient of a switching PTC on the steep part of its curve."""

    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float,
        resistance_1_ohm: float,
        temperature_2_c: float,
        resistance_2_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Temperature coefficient of a switching PTC on the steep part of its curve."""
    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        temperature_1_c: float | _Array,
        resistance_1_ohm: float | _Array,
        temperature_2_c: float | _Array,
        resistance_2_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        temperature_1_c: float | _Array | Measured | MeasuredArray,
        resistance_1_ohm: float | _Array | Measured | MeasuredArray,
        temperature_2_c: float | _Array | Measured | MeasuredArray,
        resistance_2_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        temperature_1_c: float | Measured,
        resistance_1_ohm: float | Measured,
        temperature_2_c: float | Measured,
        resistance_2_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        temperature_1_c: float | _Array,
        resistance_1_ohm: float | _Array,
        temperature_2_c: float | _Array,
        resistance_2_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        temperature_1_c: float | tuple[float, float],
        resistance_1_ohm: float | tuple[float, float],
        temperature_2_c: float | tuple[float, float],
        resistance_2_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        temperature_1_c: float | Measured | Distribution,
        resistance_1_ohm: float | Measured | Distribution,
        temperature_2_c: float | Measured | Distribution,
        resistance_2_ohm: float | Measured | Distribution,
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
        temperature_1_c: float | Measured | Distribution,
        resistance_1_ohm: float | Measured | Distribution,
        temperature_2_c: float | Measured | Distribution,
        resistance_2_ohm: float | Measured | Distribution,
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
class _CheckNtcSensor(Formula):
    """Resistance of an NTC sensor against its beta curve at the temperature it should have."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        temperature_c: _Given,
        reference_ohm: _Given,
        reference_c: _Given,
        beta_k: _Given,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given = 5.0,
        temperature_tolerance_k: _Given = 2.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of an NTC sensor against its beta curve at the temperature it should have."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        temperature_c: _Given | _Rows,
        reference_ohm: _Given | _Rows,
        reference_c: _Given | _Rows,
        beta_k: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given | _Rows = 5.0,
        temperature_tolerance_k: _Given | _Rows = 2.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckSteinhartHartSensor(Formula):
    """Resistance of a thermistor against its Steinhart-Hart curve at the temperature it should have."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        temperature_c: _Given,
        a: _Given,
        b: _Given,
        c: _Given,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given = 5.0,
        temperature_tolerance_k: _Given = 2.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a thermistor against its Steinhart-Hart curve at the temperature it should have."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        temperature_c: _Given | _Rows,
        a: _Given | _Rows,
        b: _Given | _Rows,
        c: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given | _Rows = 5.0,
        temperature_tolerance_k: _Given | _Rows = 2.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRtdSensor(Formula):
    """Resistance of a platinum sensor against its curve at the temperature it should have."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        temperature_c: _Given,
        r0_ohm: _Given,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given = 0.5,
        temperature_tolerance_k: _Given = 2.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a platinum sensor against its curve at the temperature it should have."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        temperature_c: _Given | _Rows,
        r0_ohm: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        resistance_tolerance_percent: _Given | _Rows = 0.5,
        temperature_tolerance_k: _Given | _Rows = 2.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckSiliconPtcSensor(Formula):
    """Resistance of a silicon sensor against its rising curve at the temperature it should have."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        temperature_c: _Given,
        reference_ohm: _Given,
        rulebook: str | Rulebook | None = None,
        a_per_k: _Given = 0.00788,
        b_per_k2: _Given = 1.937e-05,
        resistance_tolerance_percent: _Given = 2.0,
        temperature_tolerance_k: _Given = 2.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a silicon sensor against its rising curve at the temperature it should have."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        temperature_c: _Given | _Rows,
        reference_ohm: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        a_per_k: _Given | _Rows = 0.00788,
        b_per_k2: _Given | _Rows = 1.937e-05,
        resistance_tolerance_percent: _Given | _Rows = 2.0,
        temperature_tolerance_k: _Given | _Rows = 2.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _FitSteinhartHart(Formula):
    """Steinhart-Hart coefficients (1/K, resistance in ohms) from three points (exact) or more (least squares of 1/T), with covariance; three points leave no scatter, so their covariance is null."""

    def __call__(self, points: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]]) -> Result:
        """Steinhart-Hart coefficients (1/K, resistance in ohms) from three points (exact) or more (least squares of 1/T), with covariance; three points leave no scatter, so their covariance is null."""

@final
class _CheckSensor(Formula):
    """Resistance of a sensor against its curve at the temperature it should have, for every kind of curve."""

    def __call__(
        self,
        resistance_ohm: float | Measured | Reading | dict[str, Any] | None,
        temperature_c: float | Measured | Reading | dict[str, Any] | None,
        curve: dict[str, Any],
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a sensor against its curve at the temperature it should have, for every kind of curve."""

@final
class _CurveAgainstPoints(Formula):
    """A sensor's coefficients against the points that were printed with them: how far each point lies from the curve, and whether the curve rises or falls steadily. Copied coefficients often miss their own points."""

    def __call__(
        self,
        curve: dict[str, Any],
        points: Sequence[Sequence[float]] | npt.NDArray[np.floating[Any]],
        tolerance_k: float | None = None,
    ) -> Result:
        """A sensor's coefficients against the points that were printed with them: how far each point lies from the curve, and whether the curve rises or falls steadily. Copied coefficients often miss their own points."""

@final
class _IdentifySensor(Formula):
    """Which sensor this is and what is wrong with it, from readings of resistance at temperatures that are believed: probabilities over curves and faults (open, short, damp shunt, two in parallel, resistance in series, a digital part, a wrong temperature, none of these), and the reading that tells the leading ones apart."""

    def __call__(
        self,
        readings: Sequence[dict[str, Any]],
        candidates: Sequence[dict[str, Any]] | None = None,
        none_prior: float | None = None,
        with_next: bool | None = None,
    ) -> Result:
        """Which sensor this is and what is wrong with it, from readings of resistance at temperatures that are believed: probabilities over curves and faults (open, short, damp shunt, two in parallel, resistance in series, a digital part, a wrong temperature, none of these), and the reading that tells the leading ones apart."""

ntc_resistance: Final[_NtcResistance]
ntc_temperature: Final[_NtcTemperature]
beta_from_two_points: Final[_BetaFromTwoPoints]
steinhart_hart_temperature: Final[_SteinhartHartTemperature]
steinhart_hart_resistance: Final[_SteinhartHartResistance]
rtd_resistance: Final[_RtdResistance]
rtd_temperature: Final[_RtdTemperature]
rtd_tolerance: Final[_RtdTolerance]
silicon_ptc_resistance: Final[_SiliconPtcResistance]
silicon_ptc_temperature: Final[_SiliconPtcTemperature]
metal_resistance: Final[_MetalResistance]
metal_temperature: Final[_MetalTemperature]
alloy_resistance: Final[_AlloyResistance]
alloy_resistance_20: Final[_AlloyResistance20]
lead_resistance_error_k: Final[_LeadResistanceErrorK]
rtd_lead_error_k: Final[_RtdLeadErrorK]
ntc_lead_error_k: Final[_NtcLeadErrorK]
ntc_shunt_error_k: Final[_NtcShuntErrorK]
shunted_resistance: Final[_ShuntedResistance]
shunt_resistance: Final[_ShuntResistance]
self_heating_k: Final[_SelfHeatingK]
divider_sensor_power: Final[_DividerSensorPower]
ntc_sensitivity: Final[_NtcSensitivity]
ntc_tolerance: Final[_NtcTolerance]
ntc_tolerance_standard: Final[_NtcToleranceStandard]
rtd_tolerance_ohm: Final[_RtdToleranceOhm]
switching_ptc_coefficient: Final[_SwitchingPtcCoefficient]
check_ntc_sensor: Final[_CheckNtcSensor]
check_steinhart_hart_sensor: Final[_CheckSteinhartHartSensor]
check_rtd_sensor: Final[_CheckRtdSensor]
check_silicon_ptc_sensor: Final[_CheckSiliconPtcSensor]
fit_steinhart_hart: Final[_FitSteinhartHart]
check_sensor: Final[_CheckSensor]
curve_against_points: Final[_CurveAgainstPoints]
identify_sensor: Final[_IdentifySensor]

__all__ = [
    "ntc_resistance",
    "ntc_temperature",
    "beta_from_two_points",
    "steinhart_hart_temperature",
    "steinhart_hart_resistance",
    "rtd_resistance",
    "rtd_temperature",
    "rtd_tolerance",
    "silicon_ptc_resistance",
    "silicon_ptc_temperature",
    "metal_resistance",
    "metal_temperature",
    "alloy_resistance",
    "alloy_resistance_20",
    "lead_resistance_error_k",
    "rtd_lead_error_k",
    "ntc_lead_error_k",
    "ntc_shunt_error_k",
    "shunted_resistance",
    "shunt_resistance",
    "self_heating_k",
    "divider_sensor_power",
    "ntc_sensitivity",
    "ntc_tolerance",
    "ntc_tolerance_standard",
    "rtd_tolerance_ohm",
    "switching_ptc_coefficient",
    "check_ntc_sensor",
    "check_steinhart_hart_sensor",
    "check_rtd_sensor",
    "check_silicon_ptc_sensor",
    "fit_steinhart_hart",
    "check_sensor",
    "curve_against_points",
    "identify_sensor",
]

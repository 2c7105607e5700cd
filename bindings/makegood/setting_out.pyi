# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Setting out: where to drill on a tiled wall, fixings, joists, cords that have to reach."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

_Cable: TypeAlias = Literal[
    "fixed_unarmoured",
    "shaped_once",
    "flexible_fixed",
    "flexible_free",
    "flexible_entry",
    "flexible_guided",
    "mineral_insulated",
]
_Where: TypeAlias = Literal["between", "end"]

@final
class _SpindleSpeed(Formula):
    """Speed of the spindle for a cutting speed at the rim of the drill. The cutting speed comes from whoever made the drill: there is none by default."""

    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float,
        cutting_speed_m_per_min: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Speed of the spindle for a cutting speed at the rim of the drill. The cutting speed comes from whoever made the drill: there is none by default."""
    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float | Measured,
        cutting_speed_m_per_min: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float | _Array,
        cutting_speed_m_per_min: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        cutting_speed_m_per_min: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, diameter_mm: float | Measured, cutting_speed_m_per_min: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        diameter_mm: float | Measured,
        cutting_speed_m_per_min: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        diameter_mm: float | _Array,
        cutting_speed_m_per_min: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        diameter_mm: float | tuple[float, float],
        cutting_speed_m_per_min: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        diameter_mm: float | Measured | Distribution,
        cutting_speed_m_per_min: float | Measured | Distribution,
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
        diameter_mm: float | Measured | Distribution,
        cutting_speed_m_per_min: float | Measured | Distribution,
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
class _PeripheralSpeed(Formula):
    """Speed of the rim of a drill or core at a speed of the spindle."""

    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float,
        spindle_speed_per_min: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Speed of the rim of a drill or core at a speed of the spindle."""
    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float | Measured,
        spindle_speed_per_min: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: float | _Array,
        spindle_speed_per_min: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        diameter_mm: float | _Array | Measured | MeasuredArray,
        spindle_speed_per_min: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, diameter_mm: float | Measured, spindle_speed_per_min: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        diameter_mm: float | Measured,
        spindle_speed_per_min: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        diameter_mm: float | _Array,
        spindle_speed_per_min: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        diameter_mm: float | tuple[float, float],
        spindle_speed_per_min: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        diameter_mm: float | Measured | Distribution,
        spindle_speed_per_min: float | Measured | Distribution,
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
        diameter_mm: float | Measured | Distribution,
        spindle_speed_per_min: float | Measured | Distribution,
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
class _BendSaving(Formula):
    """What rounded right-angle bends save of the length along the corners: 0.4292 R each."""

    @overload
    def __call__(  # type: ignore
        self,
        radius_mm: float,
        bends_count: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """What rounded right-angle bends save of the length along the corners: 0.4292 R each."""
    @overload
    def __call__(  # type: ignore
        self,
        radius_mm: float | Measured,
        bends_count: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        radius_mm: float | _Array,
        bends_count: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        radius_mm: float | _Array | Measured | MeasuredArray,
        bends_count: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, radius_mm: float | Measured, bends_count: float | Measured = 1.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, radius_mm: float | Measured, bends_count: float | Measured = 1.0) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        radius_mm: float | _Array,
        bends_count: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        radius_mm: float | tuple[float, float],
        bends_count: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        radius_mm: float | Measured | Distribution,
        bends_count: float | Measured | Distribution = 1.0,
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
        radius_mm: float | Measured | Distribution,
        bends_count: float | Measured | Distribution = 1.0,
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
class _CordLength(Formula):
    """Length of a cord along legs that meet at right angles, with rounded bends and what is taken up where it is terminated or left slack."""

    @overload
    def __call__(  # type: ignore
        self,
        legs_mm: float,
        radius_mm: float = 0.0,
        bends_count: float = 0.0,
        allowance_mm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Length of a cord along legs that meet at right angles, with rounded bends and what is taken up where it is terminated or left slack."""
    @overload
    def __call__(  # type: ignore
        self,
        legs_mm: float | Measured,
        radius_mm: float | Measured = 0.0,
        bends_count: float | Measured = 0.0,
        allowance_mm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        legs_mm: float | _Array,
        radius_mm: float | _Array = 0.0,
        bends_count: float | _Array = 0.0,
        allowance_mm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        legs_mm: float | _Array | Measured | MeasuredArray,
        radius_mm: float | _Array | Measured | MeasuredArray = 0.0,
        bends_count: float | _Array | Measured | MeasuredArray = 0.0,
        allowance_mm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        legs_mm: float | Measured,
        radius_mm: float | Measured = 0.0,
        bends_count: float | Measured = 0.0,
        allowance_mm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        legs_mm: float | Measured,
        radius_mm: float | Measured = 0.0,
        bends_count: float | Measured = 0.0,
        allowance_mm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        legs_mm: float | _Array,
        radius_mm: float | _Array = 0.0,
        bends_count: float | _Array = 0.0,
        allowance_mm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        legs_mm: float | tuple[float, float],
        radius_mm: float | tuple[float, float] = 0.0,
        bends_count: float | tuple[float, float] = 0.0,
        allowance_mm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        legs_mm: float | Measured | Distribution,
        radius_mm: float | Measured | Distribution = 0.0,
        bends_count: float | Measured | Distribution = 0.0,
        allowance_mm: float | Measured | Distribution = 0.0,
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
        legs_mm: float | Measured | Distribution,
        radius_mm: float | Measured | Distribution = 0.0,
        bends_count: float | Measured | Distribution = 0.0,
        allowance_mm: float | Measured | Distribution = 0.0,
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
class _ParabolaSag(Formula):
    """How far a nearly taut cord hangs down between two holds of one height: the parabola, below 1 % low up to 3 % of slack."""

    @overload
    def __call__(self, length_mm: float, span_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """How far a nearly taut cord hangs down between two holds of one height: the parabola, below 1 % low up to 3 % of slack."""
    @overload
    def __call__(  # type: ignore
        self,
        length_mm: float | Measured,
        span_mm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        length_mm: float | _Array,
        span_mm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        length_mm: float | _Array | Measured | MeasuredArray,
        span_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, length_mm: float | Measured, span_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, length_mm: float | Measured, span_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        length_mm: float | _Array,
        span_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_mm: float | tuple[float, float],
        span_mm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_mm: float | Measured | Distribution,
        span_mm: float | Measured | Distribution,
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
        length_mm: float | Measured | Distribution,
        span_mm: float | Measured | Distribution,
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
class _BendRadius(Formula):
    """Least radius of a bend, at its inside, of a cable or cord by its kind and outer diameter."""

    @overload
    def __call__(self, cable: _Cable, diameter_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Least radius of a bend, at its inside, of a cable or cord by its kind and outer diameter."""
    @overload
    def __call__(self, cable: _Cable, diameter_mm: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        cable: _Cable | Sequence[_Cable] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
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
        cable: _Cable | Sequence[_Cable] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        diameter_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, cable: _Cable, diameter_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, cable: _Cable, diameter_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        cable: _Cable | Sequence[_Cable] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        diameter_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, cable: _Cable, diameter_mm: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cable: _Cable,
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
        cable: _Cable,
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
class _FixingPull(Formula):
    """Pull out of the wall on each of the top fixings of a bracket that a load tips forward."""

    @overload
    def __call__(  # type: ignore
        self,
        load_n: float,
        projection_mm: float,
        lever_mm: float,
        top_count: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Pull out of the wall on each of the top fixings of a bracket that a load tips forward."""
    @overload
    def __call__(  # type: ignore
        self,
        load_n: float | Measured,
        projection_mm: float | Measured,
        lever_mm: float | Measured,
        top_count: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        load_n: float | _Array,
        projection_mm: float | _Array,
        lever_mm: float | _Array,
        top_count: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        load_n: float | _Array | Measured | MeasuredArray,
        projection_mm: float | _Array | Measured | MeasuredArray,
        lever_mm: float | _Array | Measured | MeasuredArray,
        top_count: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        load_n: float | Measured,
        projection_mm: float | Measured,
        lever_mm: float | Measured,
        top_count: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        load_n: float | Measured,
        projection_mm: float | Measured,
        lever_mm: float | Measured,
        top_count: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        load_n: float | _Array,
        projection_mm: float | _Array,
        lever_mm: float | _Array,
        top_count: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        load_n: float | tuple[float, float],
        projection_mm: float | tuple[float, float],
        lever_mm: float | tuple[float, float],
        top_count: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        load_n: float | Measured | Distribution,
        projection_mm: float | Measured | Distribution,
        lever_mm: float | Measured | Distribution,
        top_count: float | Measured | Distribution,
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
        load_n: float | Measured | Distribution,
        projection_mm: float | Measured | Distribution,
        lever_mm: float | Measured | Distribution,
        top_count: float | Measured | Distribution,
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
class _FixingShear(Formula):
    """Shear along the wall on each fixing of a bracket."""

    @overload
    def __call__(self, load_n: float, fixings_count: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Shear along the wall on each fixing of a bracket."""
    @overload
    def __call__(  # type: ignore
        self,
        load_n: float | Measured,
        fixings_count: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        load_n: float | _Array,
        fixings_count: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        load_n: float | _Array | Measured | MeasuredArray,
        fixings_count: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, load_n: float | Measured, fixings_count: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, load_n: float | Measured, fixings_count: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        load_n: float | _Array,
        fixings_count: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        load_n: float | tuple[float, float],
        fixings_count: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        load_n: float | Measured | Distribution,
        fixings_count: float | Measured | Distribution,
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
        load_n: float | Measured | Distribution,
        fixings_count: float | Measured | Distribution,
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
class _FixingInteraction(Formula):
    """How much of a fixing is used by pull and shear together: the straight line, which is cautious."""

    @overload
    def __call__(  # type: ignore
        self,
        pull_n: float,
        allowable_pull_n: float,
        shear_n: float,
        allowable_shear_n: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """How much of a fixing is used by pull and shear together: the straight line, which is cautious."""
    @overload
    def __call__(  # type: ignore
        self,
        pull_n: float | Measured,
        allowable_pull_n: float | Measured,
        shear_n: float | Measured,
        allowable_shear_n: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        pull_n: float | _Array,
        allowable_pull_n: float | _Array,
        shear_n: float | _Array,
        allowable_shear_n: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        pull_n: float | _Array | Measured | MeasuredArray,
        allowable_pull_n: float | _Array | Measured | MeasuredArray,
        shear_n: float | _Array | Measured | MeasuredArray,
        allowable_shear_n: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        pull_n: float | Measured,
        allowable_pull_n: float | Measured,
        shear_n: float | Measured,
        allowable_shear_n: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        pull_n: float | Measured,
        allowable_pull_n: float | Measured,
        shear_n: float | Measured,
        allowable_shear_n: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        pull_n: float | _Array,
        allowable_pull_n: float | _Array,
        shear_n: float | _Array,
        allowable_shear_n: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        pull_n: float | tuple[float, float],
        allowable_pull_n: float | tuple[float, float],
        shear_n: float | tuple[float, float],
        allowable_shear_n: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        pull_n: float | Measured | Distribution,
        allowable_pull_n: float | Measured | Distribution,
        shear_n: float | Measured | Distribution,
        allowable_shear_n: float | Measured | Distribution,
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
        pull_n: float | Measured | Distribution,
        allowable_pull_n: float | Measured | Distribution,
        shear_n: float | Measured | Distribution,
        allowable_shear_n: float | Measured | Distribution,
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
class _AllowableFromTests(Formula):
    """Allowable load of a fixing from the mean of ultimate loads found by tests in that very wall."""

    @overload
    def __call__(  # type: ignore
        self,
        mean_ultimate_n: float,
        factor: float = 4.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Allowable load of a fixing from the mean of ultimate loads found by tests in that very wall."""
    @overload
    def __call__(  # type: ignore
        self,
        mean_ultimate_n: float | Measured,
        factor: float | Measured = 4.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        mean_ultimate_n: float | _Array,
        factor: float | _Array = 4.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        mean_ultimate_n: float | _Array | Measured | MeasuredArray,
        factor: float | _Array | Measured | MeasuredArray = 4.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, mean_ultimate_n: float | Measured, factor: float | Measured = 4.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, mean_ultimate_n: float | Measured, factor: float | Measured = 4.0) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        mean_ultimate_n: float | _Array,
        factor: float | _Array = 4.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        mean_ultimate_n: float | tuple[float, float],
        factor: float | tuple[float, float] = 4.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        mean_ultimate_n: float | Measured | Distribution,
        factor: float | Measured | Distribution = 4.0,
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
        mean_ultimate_n: float | Measured | Distribution,
        factor: float | Measured | Distribution = 4.0,
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
class _GreatestProofLoad(Formula):
    """Greatest load with which a fixing is proved on site, which does not harm a sound one."""

    @overload
    def __call__(self, allowable_n: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Greatest load with which a fixing is proved on site, which does not harm a sound one."""
    @overload
    def __call__(self, allowable_n: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        allowable_n: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        allowable_n: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, allowable_n: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, allowable_n: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        allowable_n: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, allowable_n: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        allowable_n: float | Measured | Distribution,
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
        allowable_n: float | Measured | Distribution,
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
class _CheckFixing(Formula):
    """Pull and shear on a fixing together against what is allowed in that wall."""

    @overload
    def __call__(  # type: ignore
        self,
        pull_n: _Given,
        allowable_pull_n: _Given,
        shear_n: _Given,
        allowable_shear_n: _Given,
        rulebook: str | Rulebook | None = None,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Pull and shear on a fixing together against what is allowed in that wall."""
    @overload
    def __call__(
        self,
        pull_n: _Given | _Rows,
        allowable_pull_n: _Given | _Rows,
        shear_n: _Given | _Rows,
        allowable_shear_n: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistHole(Formula):
    """Size of a hole through a solid timber joist against the largest for its depth; its place and its neighbours have checks of their own."""

    @overload
    def __call__(  # type: ignore
        self,
        diameter_mm: _Given,
        joist_depth_mm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Size of a hole through a solid timber joist against the largest for its depth; its place and its neighbours have checks of their own."""
    @overload
    def __call__(
        self,
        diameter_mm: _Given | _Rows,
        joist_depth_mm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistHolePlace(Formula):
    """Place of a hole along a solid timber joist against the stretch where holes are permitted."""

    @overload
    def __call__(  # type: ignore
        self,
        from_support_mm: _Given,
        span_m: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Place of a hole along a solid timber joist against the stretch where holes are permitted."""
    @overload
    def __call__(
        self,
        from_support_mm: _Given | _Rows,
        span_m: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistHoleSpacing(Formula):
    """Distance between the centres of two holes in a joist against the least for their diameter."""

    @overload
    def __call__(  # type: ignore
        self,
        centres_mm: _Given,
        diameter_mm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Distance between the centres of two holes in a joist against the least for their diameter."""
    @overload
    def __call__(
        self,
        centres_mm: _Given | _Rows,
        diameter_mm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistHoleToNotch(Formula):
    """Distance between a hole and a notch in a joist against the least."""

    @overload
    def __call__(  # type: ignore
        self,
        distance_mm: _Given,
        joist_depth_mm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Distance between a hole and a notch in a joist against the least."""
    @overload
    def __call__(
        self,
        distance_mm: _Given | _Rows,
        joist_depth_mm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistNotch(Formula):
    """Depth of a notch in a solid timber joist against the greatest for its depth; its place has a check of its own. Unrounded: a printed 19 mm for 18.75 mm is rounded the wrong way."""

    @overload
    def __call__(  # type: ignore
        self,
        notch_depth_mm: _Given,
        joist_depth_mm: _Given,
        rulebook: str | Rulebook,
        where: _Where = "between",
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Depth of a notch in a solid timber joist against the greatest for its depth; its place has a check of its own. Unrounded: a printed 19 mm for 18.75 mm is rounded the wrong way."""
    @overload
    def __call__(
        self,
        notch_depth_mm: _Given | _Rows,
        joist_depth_mm: _Given | _Rows,
        rulebook: str | Rulebook,
        where: _Where | Sequence[_Where] | npt.NDArray[np.str_] | npt.NDArray[np.object_] = "between",
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistNotchPlace(Formula):
    """Place of a notch along a solid timber joist against the stretch where notches are permitted."""

    @overload
    def __call__(  # type: ignore
        self,
        from_support_mm: _Given,
        span_m: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Place of a notch along a solid timber joist against the stretch where notches are permitted."""
    @overload
    def __call__(
        self,
        from_support_mm: _Given | _Rows,
        span_m: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckJoistNotchLength(Formula):
    """Length of a notch along a solid timber joist against the greatest for its depth."""

    @overload
    def __call__(  # type: ignore
        self,
        notch_length_mm: _Given,
        joist_depth_mm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Length of a notch along a solid timber joist against the greatest for its depth."""
    @overload
    def __call__(
        self,
        notch_length_mm: _Given | _Rows,
        joist_depth_mm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _PlaceBrackets(Formula):
    """Where a pattern of holes goes on a tiled wall: farthest from the edges of tiles, on joints, or some of each, outside keep-outs and inside a window; the exact best place, all that are as good, and the clearance of each hole; with standard deviations the chance that all holes come right, and the place where that is greatest. In a joint: the centre of the hole lies in it. Lengths in millimetres."""

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
        doubt: dict[str, Any] | None = None,
    ) -> Result:
        """Where a pattern of holes goes on a tiled wall: farthest from the edges of tiles, on joints, or some of each, outside keep-outs and inside a window; the exact best place, all that are as good, and the clearance of each hole; with standard deviations the chance that all holes come right, and the place where that is greatest. In a joint: the centre of the hole lies in it. Lengths in millimetres."""

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

@final
class _FixingLoad(Formula):
    """Pull and shear on the fixings of a rail or cabinet, with an accidental load, against what is allowed in that wall: as given, or by tests (mean over 4, and a characteristic load mean - k s with k of the non-central t distribution)."""

    def __call__(
        self,
        load_n: float,
        projection_mm: float,
        lever_mm: float,
        top_count: float | None = None,
        fixings_count: float | None = None,
        accidental_load_n: float | None = None,
        accidental_projection_mm: float | None = None,
        allowable_pull_n: float | None = None,
        allowable_shear_n: float | None = None,
        ultimate_n: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        confidence: float | None = None,
        characteristic_factor: float | None = None,
    ) -> Result:
        """Pull and shear on the fixings of a rail or cabinet, with an accidental load, against what is allowed in that wall: as given, or by tests (mean over 4, and a characteristic load mean - k s with k of the non-central t distribution)."""

@final
class _CharacteristicLoad(Formula):
    """What tests of fixings in one wall prove: mean over a safety factor, and mean less k standard deviations, k for the number of tests and the confidence."""

    def __call__(
        self,
        ultimate_n: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]],
        confidence: float | None = None,
        fractile: float | None = None,
        factor: float | None = None,
    ) -> Result:
        """What tests of fixings in one wall prove: mean over a safety factor, and mean less k standard deviations, k for the number of tests and the confidence."""

@final
class _PilotHoles(Formula):
    """Drills from a small first to the last one, each at most a multiple of the one before, with the speed of the spindle for each. The steps are a rule of the trade; the cutting speed is the caller's."""

    def __call__(
        self,
        diameter_mm: float,
        cutting_speed_m_per_min: float,
        first_mm: float | None = None,
        step_ratio: float | None = None,
        sizes_mm: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
    ) -> Result:
        """Drills from a small first to the last one, each at most a multiple of the one before, with the speed of the spindle for each. The steps are a rule of the trade; the cutting speed is the caller's."""

@final
class _FlexReach(Formula):
    """Whether a supplied flex reaches an outlet: the shortest way on the wall from entry to outlet through given points and round keep-outs, less what rounded bends save, with allowance, slack and doubt; what is left or missing, and where the outlet would have to be."""

    def __call__(
        self,
        length_mm: float,
        start: dict[str, Any],
        outlet: dict[str, Any],
        route: str | None = None,
        way_points: Sequence[dict[str, Any]] | None = None,
        keep_outs: Sequence[dict[str, Any]] | None = None,
        clear_mm: float | None = None,
        cable: str | None = None,
        diameter_mm: float | None = None,
        bend_radius_mm: float | None = None,
        straight_mm: float | None = None,
        allowance_mm: float | None = None,
        slack_mm: float | None = None,
        length_sd_mm: float | None = None,
        place_sd_mm: float | None = None,
    ) -> Result:
        """Whether a supplied flex reaches an outlet: the shortest way on the wall from entry to outlet through given points and round keep-outs, less what rounded bends save, with allowance, slack and doubt; what is left or missing, and where the outlet would have to be."""

@final
class _HangingCord(Formula):
    """How far a cord without stiffness hangs down between two holds of one height: the catenary, beside the parabola of a taut cord."""

    def __call__(self, length_mm: float, span_mm: float) -> Result:
        """How far a cord without stiffness hangs down between two holds of one height: the catenary, beside the parabola of a taut cord."""

spindle_speed: Final[_SpindleSpeed]
peripheral_speed: Final[_PeripheralSpeed]
bend_saving: Final[_BendSaving]
cord_length: Final[_CordLength]
parabola_sag: Final[_ParabolaSag]
bend_radius: Final[_BendRadius]
fixing_pull: Final[_FixingPull]
fixing_shear: Final[_FixingShear]
fixing_interaction: Final[_FixingInteraction]
allowable_from_tests: Final[_AllowableFromTests]
greatest_proof_load: Final[_GreatestProofLoad]
check_fixing: Final[_CheckFixing]
check_joist_hole: Final[_CheckJoistHole]
check_joist_hole_place: Final[_CheckJoistHolePlace]
check_joist_hole_spacing: Final[_CheckJoistHoleSpacing]
check_joist_hole_to_notch: Final[_CheckJoistHoleToNotch]
check_joist_notch: Final[_CheckJoistNotch]
check_joist_notch_place: Final[_CheckJoistNotchPlace]
check_joist_notch_length: Final[_CheckJoistNotchLength]
place_brackets: Final[_PlaceBrackets]
bathroom_zone: Final[_BathroomZone]
bathroom_zones: Final[_BathroomZones]
check_equipment_in_zone: Final[_CheckEquipmentInZone]
cable_zones: Final[_CableZones]
check_hole_outside_cable_zones: Final[_CheckHoleOutsideCableZones]
fixing_load: Final[_FixingLoad]
characteristic_load: Final[_CharacteristicLoad]
pilot_holes: Final[_PilotHoles]
flex_reach: Final[_FlexReach]
hanging_cord: Final[_HangingCord]

def draw_wall(
    wall: dict[str, Any],
    placed: Result | dict[str, Any] | None = None,
    hole_diameter_mm: float = 6.0,
    keep_outs: Sequence[dict[str, Any]] = (),
    zones: Sequence[dict[str, Any]] = (),
    title: str = "Where to drill",
) -> str: ...

__all__ = [
    "spindle_speed",
    "peripheral_speed",
    "bend_saving",
    "cord_length",
    "parabola_sag",
    "bend_radius",
    "fixing_pull",
    "fixing_shear",
    "fixing_interaction",
    "allowable_from_tests",
    "greatest_proof_load",
    "check_fixing",
    "check_joist_hole",
    "check_joist_hole_place",
    "check_joist_hole_spacing",
    "check_joist_hole_to_notch",
    "check_joist_notch",
    "check_joist_notch_place",
    "check_joist_notch_length",
    "place_brackets",
    "bathroom_zone",
    "bathroom_zones",
    "check_equipment_in_zone",
    "cable_zones",
    "check_hole_outside_cable_zones",
    "fixing_load",
    "characteristic_load",
    "pilot_holes",
    "flex_reach",
    "hanging_cord",
    "draw_wall",
]

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Lighting: lumen method, points and strips of light, downlights, mirrors."""

from collections.abc import Sequence
from typing import Any, Final, final, Literal, overload

import numpy as np
import numpy.typing as npt

from ._core import DecisionRule, Distribution, Formula, Measured, MonteCarlo, Propagated, Rulebook, Verdict, _Array, _Given, _Rows
from ._measured import MeasuredArray
from ._rows import Verdicts
from ._slow import Result, Worked

@final
class _RoomIndex(Formula):
    """Room index: how much floor there is for the walls between luminaires and working plane."""

    @overload
    def __call__(  # type: ignore
        self,
        length_m: float,
        width_m: float,
        mounting_height_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Room index: how much floor there is for the walls between luminaires and working plane."""
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        mounting_height_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | _Array,
        width_m: float | _Array,
        mounting_height_m: float | _Array,
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
        mounting_height_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        mounting_height_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        length_m: float | Measured,
        width_m: float | Measured,
        mounting_height_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        length_m: float | _Array,
        width_m: float | _Array,
        mounting_height_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_m: float | tuple[float, float],
        width_m: float | tuple[float, float],
        mounting_height_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_m: float | Measured | Distribution,
        width_m: float | Measured | Distribution,
        mounting_height_m: float | Measured | Distribution,
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
        mounting_height_m: float | Measured | Distribution,
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
class _LumenMethodIlluminance(Formula):
    """Mean maintained illuminance of a working plane by the lumen method."""

    @overload
    def __call__(  # type: ignore
        self,
        lamps_count: float,
        flux_lm: float,
        utilisation_factor: float,
        maintenance_factor: float,
        area_m2: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Mean maintained illuminance of a working plane by the lumen method."""
    @overload
    def __call__(  # type: ignore
        self,
        lamps_count: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
        area_m2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        lamps_count: float | _Array,
        flux_lm: float | _Array,
        utilisation_factor: float | _Array,
        maintenance_factor: float | _Array,
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
        lamps_count: float | _Array | Measured | MeasuredArray,
        flux_lm: float | _Array | Measured | MeasuredArray,
        utilisation_factor: float | _Array | Measured | MeasuredArray,
        maintenance_factor: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        lamps_count: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
        area_m2: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        lamps_count: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
        area_m2: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        lamps_count: float | _Array,
        flux_lm: float | _Array,
        utilisation_factor: float | _Array,
        maintenance_factor: float | _Array,
        area_m2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        lamps_count: float | tuple[float, float],
        flux_lm: float | tuple[float, float],
        utilisation_factor: float | tuple[float, float],
        maintenance_factor: float | tuple[float, float],
        area_m2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        lamps_count: float | Measured | Distribution,
        flux_lm: float | Measured | Distribution,
        utilisation_factor: float | Measured | Distribution,
        maintenance_factor: float | Measured | Distribution,
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
        lamps_count: float | Measured | Distribution,
        flux_lm: float | Measured | Distribution,
        utilisation_factor: float | Measured | Distribution,
        maintenance_factor: float | Measured | Distribution,
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
class _LumenMethodLamps(Formula):
    """Number of lamps for a maintained illuminance by the lumen method, unrounded: take the next whole number (the model lumen_method does)."""

    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float,
        area_m2: float,
        flux_lm: float,
        utilisation_factor: float,
        maintenance_factor: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Number of lamps for a maintained illuminance by the lumen method, unrounded: take the next whole number (the model lumen_method does)."""
    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float | Measured,
        area_m2: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float | _Array,
        area_m2: float | _Array,
        flux_lm: float | _Array,
        utilisation_factor: float | _Array,
        maintenance_factor: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        illuminance_lx: float | _Array | Measured | MeasuredArray,
        area_m2: float | _Array | Measured | MeasuredArray,
        flux_lm: float | _Array | Measured | MeasuredArray,
        utilisation_factor: float | _Array | Measured | MeasuredArray,
        maintenance_factor: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        illuminance_lx: float | Measured,
        area_m2: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        illuminance_lx: float | Measured,
        area_m2: float | Measured,
        flux_lm: float | Measured,
        utilisation_factor: float | Measured,
        maintenance_factor: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        illuminance_lx: float | _Array,
        area_m2: float | _Array,
        flux_lm: float | _Array,
        utilisation_factor: float | _Array,
        maintenance_factor: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        illuminance_lx: float | tuple[float, float],
        area_m2: float | tuple[float, float],
        flux_lm: float | tuple[float, float],
        utilisation_factor: float | tuple[float, float],
        maintenance_factor: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        illuminance_lx: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        flux_lm: float | Measured | Distribution,
        utilisation_factor: float | Measured | Distribution,
        maintenance_factor: float | Measured | Distribution,
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
        illuminance_lx: float | Measured | Distribution,
        area_m2: float | Measured | Distribution,
        flux_lm: float | Measured | Distribution,
        utilisation_factor: float | Measured | Distribution,
        maintenance_factor: float | Measured | Distribution,
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
class _MaintenanceFactor(Formula):
    """Maintenance factor: what is left of the new light by ageing, failed lamps, and dirt on luminaires and walls."""

    @overload
    def __call__(  # type: ignore
        self,
        lamp_lumen_factor: float,
        lamp_survival_factor: float,
        luminaire_factor: float,
        room_surface_factor: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Maintenance factor: what is left of the new light by ageing, failed lamps, and dirt on luminaires and walls."""
    @overload
    def __call__(  # type: ignore
        self,
        lamp_lumen_factor: float | Measured,
        lamp_survival_factor: float | Measured,
        luminaire_factor: float | Measured,
        room_surface_factor: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        lamp_lumen_factor: float | _Array,
        lamp_survival_factor: float | _Array,
        luminaire_factor: float | _Array,
        room_surface_factor: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        lamp_lumen_factor: float | _Array | Measured | MeasuredArray,
        lamp_survival_factor: float | _Array | Measured | MeasuredArray,
        luminaire_factor: float | _Array | Measured | MeasuredArray,
        room_surface_factor: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        lamp_lumen_factor: float | Measured,
        lamp_survival_factor: float | Measured,
        luminaire_factor: float | Measured,
        room_surface_factor: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        lamp_lumen_factor: float | Measured,
        lamp_survival_factor: float | Measured,
        luminaire_factor: float | Measured,
        room_surface_factor: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        lamp_lumen_factor: float | _Array,
        lamp_survival_factor: float | _Array,
        luminaire_factor: float | _Array,
        room_surface_factor: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        lamp_lumen_factor: float | tuple[float, float],
        lamp_survival_factor: float | tuple[float, float],
        luminaire_factor: float | tuple[float, float],
        room_surface_factor: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        lamp_lumen_factor: float | Measured | Distribution,
        lamp_survival_factor: float | Measured | Distribution,
        luminaire_factor: float | Measured | Distribution,
        room_surface_factor: float | Measured | Distribution,
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
        lamp_lumen_factor: float | Measured | Distribution,
        lamp_survival_factor: float | Measured | Distribution,
        luminaire_factor: float | Measured | Distribution,
        room_surface_factor: float | Measured | Distribution,
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
class _PointIlluminance(Formula):
    """Illuminance of a horizontal plane at a point, from one lamp above it that is small beside its distance."""

    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float,
        height_m: float,
        offset_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Illuminance of a horizontal plane at a point, from one lamp above it that is small beside its distance."""
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        intensity_cd: float | _Array | Measured | MeasuredArray,
        height_m: float | _Array | Measured | MeasuredArray,
        offset_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        intensity_cd: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        intensity_cd: float | tuple[float, float],
        height_m: float | tuple[float, float],
        offset_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        intensity_cd: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution,
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
        intensity_cd: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution,
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
class _PointIlluminanceVertical(Formula):
    """Illuminance of an upright face at a point, from one lamp above and before it."""

    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float,
        height_m: float,
        offset_m: float,
        azimuth_deg: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Illuminance of an upright face at a point, from one lamp above and before it."""
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
        azimuth_deg: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array,
        azimuth_deg: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        intensity_cd: float | _Array | Measured | MeasuredArray,
        height_m: float | _Array | Measured | MeasuredArray,
        offset_m: float | _Array | Measured | MeasuredArray,
        azimuth_deg: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
        azimuth_deg: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        intensity_cd: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured,
        azimuth_deg: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        intensity_cd: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array,
        azimuth_deg: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        intensity_cd: float | tuple[float, float],
        height_m: float | tuple[float, float],
        offset_m: float | tuple[float, float],
        azimuth_deg: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        intensity_cd: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution,
        azimuth_deg: float | Measured | Distribution = 0.0,
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
        intensity_cd: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution,
        azimuth_deg: float | Measured | Distribution = 0.0,
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
class _LuminousIntensity(Formula):
    """Luminous intensity of a lamp from the illuminance that a meter reads below it or to the side."""

    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float,
        height_m: float,
        offset_m: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Luminous intensity of a lamp from the illuminance that a meter reads below it or to the side."""
    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        illuminance_lx: float | _Array | Measured | MeasuredArray,
        height_m: float | _Array | Measured | MeasuredArray,
        offset_m: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        illuminance_lx: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        illuminance_lx: float | Measured,
        height_m: float | Measured,
        offset_m: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        illuminance_lx: float | _Array,
        height_m: float | _Array,
        offset_m: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        illuminance_lx: float | tuple[float, float],
        height_m: float | tuple[float, float],
        offset_m: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        illuminance_lx: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution = 0.0,
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
        illuminance_lx: float | Measured | Distribution,
        height_m: float | Measured | Distribution,
        offset_m: float | Measured | Distribution = 0.0,
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
class _LuminousIntensityFromFlux(Formula):
    """Mean luminous intensity of light that is spread evenly in a cone."""

    @overload
    def __call__(self, flux_lm: float, beam_angle_deg: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Mean luminous intensity of light that is spread evenly in a cone."""
    @overload
    def __call__(  # type: ignore
        self,
        flux_lm: float | Measured,
        beam_angle_deg: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        flux_lm: float | _Array,
        beam_angle_deg: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        flux_lm: float | _Array | Measured | MeasuredArray,
        beam_angle_deg: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, flux_lm: float | Measured, beam_angle_deg: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, flux_lm: float | Measured, beam_angle_deg: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        flux_lm: float | _Array,
        beam_angle_deg: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        flux_lm: float | tuple[float, float],
        beam_angle_deg: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        flux_lm: float | Measured | Distribution,
        beam_angle_deg: float | Measured | Distribution,
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
        flux_lm: float | Measured | Distribution,
        beam_angle_deg: float | Measured | Distribution,
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
class _DownlightSpacing(Formula):
    """Greatest distance between the middles of luminaires for an even light."""

    @overload
    def __call__(  # type: ignore
        self,
        mounting_height_m: float,
        spacing_ratio: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Greatest distance between the middles of luminaires for an even light."""
    @overload
    def __call__(  # type: ignore
        self,
        mounting_height_m: float | Measured,
        spacing_ratio: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        mounting_height_m: float | _Array,
        spacing_ratio: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        mounting_height_m: float | _Array | Measured | MeasuredArray,
        spacing_ratio: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, mounting_height_m: float | Measured, spacing_ratio: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        mounting_height_m: float | Measured,
        spacing_ratio: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        mounting_height_m: float | _Array,
        spacing_ratio: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        mounting_height_m: float | tuple[float, float],
        spacing_ratio: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        mounting_height_m: float | Measured | Distribution,
        spacing_ratio: float | Measured | Distribution,
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
        mounting_height_m: float | Measured | Distribution,
        spacing_ratio: float | Measured | Distribution,
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
class _LineIlluminance(Formula):
    """Illuminance of a face at a point before a straight strip of light: the face looks at the strip's line, the strip glows as a matt surface along itself."""

    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd_per_m: float,
        distance_m: float,
        left_m: float,
        right_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Illuminance of a face at a point before a straight strip of light: the face looks at the strip's line, the strip glows as a matt surface along itself."""
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd_per_m: float | Measured,
        distance_m: float | Measured,
        left_m: float | Measured,
        right_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        intensity_cd_per_m: float | _Array,
        distance_m: float | _Array,
        left_m: float | _Array,
        right_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        intensity_cd_per_m: float | _Array | Measured | MeasuredArray,
        distance_m: float | _Array | Measured | MeasuredArray,
        left_m: float | _Array | Measured | MeasuredArray,
        right_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        intensity_cd_per_m: float | Measured,
        distance_m: float | Measured,
        left_m: float | Measured,
        right_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        intensity_cd_per_m: float | Measured,
        distance_m: float | Measured,
        left_m: float | Measured,
        right_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        intensity_cd_per_m: float | _Array,
        distance_m: float | _Array,
        left_m: float | _Array,
        right_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        intensity_cd_per_m: float | tuple[float, float],
        distance_m: float | tuple[float, float],
        left_m: float | tuple[float, float],
        right_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        intensity_cd_per_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        left_m: float | Measured | Distribution,
        right_m: float | Measured | Distribution,
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
        intensity_cd_per_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        left_m: float | Measured | Distribution,
        right_m: float | Measured | Distribution,
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
class _CheckIlluminance(Formula):
    """Illuminance as calculated or read against what the client, the maker or a standard asks for: that number is the caller's."""

    @overload
    def __call__(  # type: ignore
        self,
        illuminance_lx: _Given,
        required_lx: _Given,
        rulebook: str | Rulebook | None = None,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Illuminance as calculated or read against what the client, the maker or a standard asks for: that number is the caller's."""
    @overload
    def __call__(
        self,
        illuminance_lx: _Given | _Rows,
        required_lx: _Given | _Rows,
        rulebook: str | Rulebook | None = None,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _LumenMethod(Formula):
    """How many lamps a room takes for a mean illuminance: unrounded, the next whole number, and what that gives."""

    def __call__(
        self,
        length_m: float,
        width_m: float,
        mounting_height_m: float,
        illuminance_lx: float,
        flux_lm: float,
        utilisation_factor: float,
        maintenance_factor: float,
        lamps_count: float | None = None,
    ) -> Result:
        """How many lamps a room takes for a mean illuminance: unrounded, the next whole number, and what that gives."""

@final
class _PointsIlluminance(Formula):
    """Illuminance of one point from several lamps: direct light on a horizontal plane or an upright face."""

    def __call__(
        self,
        lamps: Sequence[dict[str, Any]],
        x_m: float | None = None,
        y_m: float | None = None,
        facing_deg: float | None = None,
    ) -> Result:
        """Illuminance of one point from several lamps: direct light on a horizontal plane or an upright face."""

@final
class _DownlightLayout(Formula):
    """Rows, columns and places of downlights in a rectangular room, and the illuminance of the working plane by sums of points: least, mean, greatest, least over mean."""

    def __call__(
        self,
        length_m: float,
        width_m: float,
        mounting_height_m: float,
        flux_lm: float,
        beam_angle_deg: float,
        spacing_ratio: float | None = None,
        rows: float | None = None,
        columns: float | None = None,
        work_at_walls: bool | None = None,
        distribution: str | None = None,
        maintenance_factor: float | None = None,
        reflectance: float | None = None,
        room_height_m: float | None = None,
        required_lx: float | None = None,
    ) -> Result:
        """Rows, columns and places of downlights in a rectangular room, and the illuminance of the working plane by sums of points: least, mean, greatest, least over mean."""

@final
class _MirrorIlluminance(Formula):
    """Illuminance of a face before a mirror with strips at its sides or a ring of light, by elements that are halved until their sum stands still."""

    def __call__(
        self,
        shape: str,
        flux_lm: float,
        apart_m: float,
        face_m: float,
        strip_m: float | None = None,
        middle_up_m: float | None = None,
        emitter: str | None = None,
        maintenance_factor: float | None = None,
    ) -> Result:
        """Illuminance of a face before a mirror with strips at its sides or a ring of light, by elements that are halved until their sum stands still."""

room_index: Final[_RoomIndex]
lumen_method_illuminance: Final[_LumenMethodIlluminance]
lumen_method_lamps: Final[_LumenMethodLamps]
maintenance_factor: Final[_MaintenanceFactor]
point_illuminance: Final[_PointIlluminance]
point_illuminance_vertical: Final[_PointIlluminanceVertical]
luminous_intensity: Final[_LuminousIntensity]
luminous_intensity_from_flux: Final[_LuminousIntensityFromFlux]
downlight_spacing: Final[_DownlightSpacing]
line_illuminance: Final[_LineIlluminance]
check_illuminance: Final[_CheckIlluminance]
lumen_method: Final[_LumenMethod]
points_illuminance: Final[_PointsIlluminance]
downlight_layout: Final[_DownlightLayout]
mirror_illuminance: Final[_MirrorIlluminance]

__all__ = [
    "room_index",
    "lumen_method_illuminance",
    "lumen_method_lamps",
    "maintenance_factor",
    "point_illuminance",
    "point_illuminance_vertical",
    "luminous_intensity",
    "luminous_intensity_from_flux",
    "downlight_spacing",
    "line_illuminance",
    "check_illuminance",
    "lumen_method",
    "points_illuminance",
    "downlight_layout",
    "mirror_illuminance",
]

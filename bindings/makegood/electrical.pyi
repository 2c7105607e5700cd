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

_Metal: TypeAlias = Literal["copper", "copper_metal_coated", "aluminium"]
_ConductorClass: TypeAlias = Literal["1", "2", "5"] | float
_AreaMm2: TypeAlias = Literal[
    "0.5",
    "0.75",
    "1",
    "1.5",
    "2.5",
    "4",
    "6",
    "10",
    "16",
    "25",
    "35",
    "50",
    "70",
    "95",
    "120",
] | float
_Installation: TypeAlias = Literal[
    "pvc_2_a1",
    "pvc_2_a2",
    "pvc_2_b1",
    "pvc_2_b2",
    "pvc_2_c",
    "pvc_3_b2",
    "pvc_3_c",
    "xlpe_2_b1",
    "xlpe_2_c",
]
_Method: TypeAlias = Literal["100", "101", "102", "103", "C", "A"] | float
_AreaMm22: TypeAlias = Literal["1", "1.5", "2.5", "4", "6", "10", "16"] | float
_Arrangement: TypeAlias = Literal["bunched", "single_layer"]
_Circuits: TypeAlias = Literal["1", "2", "3", "4", "5", "6", "7", "8", "9", "12", "16", "20"] | float
_LengthInInsulationMm: TypeAlias = Literal["0", "50", "100", "200", "400", "500"] | float
_Edition: TypeAlias = Literal["17th", "16th"] | float
_Cable: TypeAlias = Literal["pvc_2", "pvc_3", "xlpe_2", "xlpe_3"]
_AreaMm23: TypeAlias = Literal["0.5", "0.75", "1", "1.25", "1.5", "2.5", "4"] | float
_Phases: TypeAlias = Literal["single", "three"]
_Material: TypeAlias = Literal["copper", "aluminium", "steel", "lead"]
_LoadKind: TypeAlias = Literal["lighting", "other", "lighting_private_supply", "other_private_supply"]
_Type: TypeAlias = Literal["B", "C", "D"]
_Fuse: TypeAlias = Literal[
    "bs88_2_2_6",
    "bs88_2_2_10",
    "bs88_2_2_16",
    "bs88_2_2_20",
    "bs88_2_2_25",
    "bs88_2_2_32",
    "bs88_2_6",
    "bs88_2_10",
    "bs88_2_16",
    "bs88_2_20",
    "bs88_2_25",
    "bs88_2_32",
    "bs1361_5",
    "bs1361_20",
    "bs1361_30",
    "bs3036_15",
    "bs3036_20",
    "bs3036_30",
    "bs1362_3",
    "bs1362_13",
]
_DisconnectionTimeS: TypeAlias = Literal["0.4", "5"] | float
_Device: TypeAlias = Literal["breaker", "gg_16_up", "gg_4_to_16", "gg_to_4", "bs1361", "bs3036"]
_Socket: TypeAlias = Literal["without_socket", "with_socket"]
_CircuitKind: TypeAlias = Literal["selv_pelv", "up_to_500_v", "above_500_v", "up_to_500_v_surge_device"]
_CircuitKind2: TypeAlias = Literal["selv_pelv", "up_to_500_v", "above_500_v"]
_RcdKind: TypeAlias = Literal["general", "selective", "bs4293"]
_RcdTest: TypeAlias = Literal[
    "general_1x",
    "general_2x",
    "general_5x",
    "selective_1x",
    "selective_2x",
    "selective_5x",
    "bs4293_1x",
    "bs4293_5x",
]
_Location: TypeAlias = Literal["general", "special"]
_Circuit: TypeAlias = Literal[
    "tn_final",
    "tt_final",
    "tn_distribution",
    "tt_distribution",
    "tn_final_120_v",
    "tn_final_400_v",
    "tn_final_above_400_v",
    "tt_final_400_v",
    "tt_final_above_400_v",
]
_RcdType: TypeAlias = Literal["AC", "A", "F", "B"]
_Load: TypeAlias = Literal[
    "resistive",
    "single_phase_electronics",
    "class_1_it",
    "single_phase_drive",
    "three_phase_rectifier",
]
_Use: TypeAlias = Literal[
    "socket_outlet",
    "lighting_dwelling",
    "mobile_outdoor",
    "buried_cable",
    "bathroom",
    "floor_heating",
    "swimming",
    "sauna",
    "vehicle_charging",
]

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
class _ConductorResistance20(Formula):
    """Highest resistance of a conductor at 20 °C that its standard allows."""

    @overload
    def __call__(  # type: ignore
        self,
        metal: _Metal,
        conductor_class: _ConductorClass,
        area_mm2: _AreaMm2,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Highest resistance of a conductor at 20 °C that its standard allows."""
    @overload
    def __call__(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        conductor_class: _ConductorClass | Sequence[_ConductorClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        area_mm2: _AreaMm2 | Sequence[_AreaMm2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, metal: _Metal, conductor_class: _ConductorClass, area_mm2: _AreaMm2) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        metal: _Metal,
        conductor_class: _ConductorClass,
        area_mm2: _AreaMm2,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        metal: _Metal | Sequence[_Metal] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        conductor_class: _ConductorClass | Sequence[_ConductorClass] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        area_mm2: _AreaMm2 | Sequence[_AreaMm2] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, metal: _Metal, conductor_class: _ConductorClass, area_mm2: _AreaMm2) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        metal: _Metal,
        conductor_class: _ConductorClass,
        area_mm2: _AreaMm2,
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
        conductor_class: _ConductorClass,
        area_mm2: _AreaMm2,
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
class _CurrentCapacity(Formula):
    """Current that a cable carries continuously, by the standard's formula of its size."""

    @overload
    def __call__(  # type: ignore
        self,
        coefficient_a: float,
        exponent_m: float,
        coefficient_b: float,
        exponent_n: float,
        area_mm2: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current that a cable carries continuously, by the standard's formula of its size."""
    @overload
    def __call__(  # type: ignore
        self,
        coefficient_a: float | Measured,
        exponent_m: float | Measured,
        coefficient_b: float | Measured,
        exponent_n: float | Measured,
        area_mm2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        coefficient_a: float | _Array,
        exponent_m: float | _Array,
        coefficient_b: float | _Array,
        exponent_n: float | _Array,
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
        coefficient_a: float | _Array | Measured | MeasuredArray,
        exponent_m: float | _Array | Measured | MeasuredArray,
        coefficient_b: float | _Array | Measured | MeasuredArray,
        exponent_n: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        coefficient_a: float | Measured,
        exponent_m: float | Measured,
        coefficient_b: float | Measured,
        exponent_n: float | Measured,
        area_mm2: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        coefficient_a: float | Measured,
        exponent_m: float | Measured,
        coefficient_b: float | Measured,
        exponent_n: float | Measured,
        area_mm2: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        coefficient_a: float | _Array,
        exponent_m: float | _Array,
        coefficient_b: float | _Array,
        exponent_n: float | _Array,
        area_mm2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        coefficient_a: float | tuple[float, float],
        exponent_m: float | tuple[float, float],
        coefficient_b: float | tuple[float, float],
        exponent_n: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        coefficient_a: float | Measured | Distribution,
        exponent_m: float | Measured | Distribution,
        coefficient_b: float | Measured | Distribution,
        exponent_n: float | Measured | Distribution,
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
        coefficient_a: float | Measured | Distribution,
        exponent_m: float | Measured | Distribution,
        coefficient_b: float | Measured | Distribution,
        exponent_n: float | Measured | Distribution,
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
class _InstalledCapacity(Formula):
    """Current that a copper cable carries continuously, by insulation, number of loaded conductors and way of installation."""

    @overload
    def __call__(  # type: ignore
        self,
        installation: _Installation,
        area_mm2: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current that a copper cable carries continuously, by insulation, number of loaded conductors and way of installation."""
    @overload
    def __call__(  # type: ignore
        self,
        installation: _Installation,
        area_mm2: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        installation: _Installation | Sequence[_Installation] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
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
        installation: _Installation | Sequence[_Installation] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        area_mm2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, installation: _Installation, area_mm2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, installation: _Installation, area_mm2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        installation: _Installation | Sequence[_Installation] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        area_mm2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, installation: _Installation, area_mm2: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        installation: _Installation,
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
        installation: _Installation,
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
class _FlatTwinCapacity(Formula):
    """Tabulated current of a flat twin cable with protective conductor, 70 °C, by the way it is laid."""

    @overload
    def __call__(self, method: _Method, area_mm2: _AreaMm22, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Tabulated current of a flat twin cable with protective conductor, 70 °C, by the way it is laid."""
    @overload
    def __call__(
        self,
        method: _Method | Sequence[_Method] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, method: _Method, area_mm2: _AreaMm22) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, method: _Method, area_mm2: _AreaMm22) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        method: _Method | Sequence[_Method] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, method: _Method, area_mm2: _AreaMm22) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        method: _Method,
        area_mm2: _AreaMm22,
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
        method: _Method,
        area_mm2: _AreaMm22,
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
class _FlatTwinVoltageDrop(Formula):
    """Tabulated voltage drop of a flat twin cable with protective conductor, at 70 °C."""

    @overload
    def __call__(self, area_mm2: _AreaMm22, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Tabulated voltage drop of a flat twin cable with protective conductor, at 70 °C."""
    @overload
    def __call__(
        self,
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, area_mm2: _AreaMm22) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, area_mm2: _AreaMm22) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, area_mm2: _AreaMm22) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        area_mm2: _AreaMm22,
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
        area_mm2: _AreaMm22,
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
class _AmbientFactor(Formula):
    """Factor of a cable's capacity for the temperature of the air around it."""

    @overload
    def __call__(  # type: ignore
        self,
        conductor_max_c: float,
        ambient_c: float,
        reference_c: float = 30.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Factor of a cable's capacity for the temperature of the air around it."""
    @overload
    def __call__(  # type: ignore
        self,
        conductor_max_c: float | Measured,
        ambient_c: float | Measured,
        reference_c: float | Measured = 30.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        conductor_max_c: float | _Array,
        ambient_c: float | _Array,
        reference_c: float | _Array = 30.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        conductor_max_c: float | _Array | Measured | MeasuredArray,
        ambient_c: float | _Array | Measured | MeasuredArray,
        reference_c: float | _Array | Measured | MeasuredArray = 30.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        conductor_max_c: float | Measured,
        ambient_c: float | Measured,
        reference_c: float | Measured = 30.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        conductor_max_c: float | Measured,
        ambient_c: float | Measured,
        reference_c: float | Measured = 30.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        conductor_max_c: float | _Array,
        ambient_c: float | _Array,
        reference_c: float | _Array = 30.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        conductor_max_c: float | tuple[float, float],
        ambient_c: float | tuple[float, float],
        reference_c: float | tuple[float, float] = 30.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        conductor_max_c: float | Measured | Distribution,
        ambient_c: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 30.0,
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
        conductor_max_c: float | Measured | Distribution,
        ambient_c: float | Measured | Distribution,
        reference_c: float | Measured | Distribution = 30.0,
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
class _GroupingFactor(Formula):
    """Factor of a cable's capacity for circuits beside it."""

    @overload
    def __call__(  # type: ignore
        self,
        arrangement: _Arrangement,
        circuits: _Circuits,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Factor of a cable's capacity for circuits beside it."""
    @overload
    def __call__(
        self,
        arrangement: _Arrangement | Sequence[_Arrangement] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        circuits: _Circuits | Sequence[_Circuits] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, arrangement: _Arrangement, circuits: _Circuits) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, arrangement: _Arrangement, circuits: _Circuits) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        arrangement: _Arrangement | Sequence[_Arrangement] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        circuits: _Circuits | Sequence[_Circuits] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, arrangement: _Arrangement, circuits: _Circuits) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        arrangement: _Arrangement,
        circuits: _Circuits,
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
        arrangement: _Arrangement,
        circuits: _Circuits,
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
class _ThermalInsulationFactor(Formula):
    """Factor of a cable's capacity for a length on which thermal insulation surrounds it."""

    @overload
    def __call__(  # type: ignore
        self,
        length_in_insulation_mm: _LengthInInsulationMm,
        edition: _Edition = "17th",
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Factor of a cable's capacity for a length on which thermal insulation surrounds it."""
    @overload
    def __call__(
        self,
        length_in_insulation_mm: _LengthInInsulationMm | Sequence[_LengthInInsulationMm] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        edition: _Edition | Sequence[_Edition] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array = "17th",
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, length_in_insulation_mm: _LengthInInsulationMm, edition: _Edition = "17th") -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        length_in_insulation_mm: _LengthInInsulationMm,
        edition: _Edition = "17th",
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        length_in_insulation_mm: _LengthInInsulationMm | Sequence[_LengthInInsulationMm] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        edition: _Edition | Sequence[_Edition] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array = "17th",
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_in_insulation_mm: _LengthInInsulationMm,
        edition: _Edition = "17th",
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_in_insulation_mm: _LengthInInsulationMm,
        edition: _Edition = "17th",
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
        length_in_insulation_mm: _LengthInInsulationMm,
        edition: _Edition = "17th",
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
class _RequiredCapacity(Formula):
    """Tabulated current that a cable needs behind a protective device."""

    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float,
        ambient_factor: float,
        grouping_factor: float,
        insulation_factor: float = 1.0,
        device_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Tabulated current that a cable needs behind a protective device."""
    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        insulation_factor: float | Measured = 1.0,
        device_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float | _Array,
        ambient_factor: float | _Array,
        grouping_factor: float | _Array,
        insulation_factor: float | _Array = 1.0,
        device_factor: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rating_a: float | _Array | Measured | MeasuredArray,
        ambient_factor: float | _Array | Measured | MeasuredArray,
        grouping_factor: float | _Array | Measured | MeasuredArray,
        insulation_factor: float | _Array | Measured | MeasuredArray = 1.0,
        device_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        rating_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        insulation_factor: float | Measured = 1.0,
        device_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        rating_a: float | Measured,
        ambient_factor: float | Measured,
        grouping_factor: float | Measured,
        insulation_factor: float | Measured = 1.0,
        device_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        rating_a: float | _Array,
        ambient_factor: float | _Array,
        grouping_factor: float | _Array,
        insulation_factor: float | _Array = 1.0,
        device_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rating_a: float | tuple[float, float],
        ambient_factor: float | tuple[float, float],
        grouping_factor: float | tuple[float, float],
        insulation_factor: float | tuple[float, float] = 1.0,
        device_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rating_a: float | Measured | Distribution,
        ambient_factor: float | Measured | Distribution,
        grouping_factor: float | Measured | Distribution,
        insulation_factor: float | Measured | Distribution = 1.0,
        device_factor: float | Measured | Distribution = 1.0,
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
        rating_a: float | Measured | Distribution,
        ambient_factor: float | Measured | Distribution,
        grouping_factor: float | Measured | Distribution,
        insulation_factor: float | Measured | Distribution = 1.0,
        device_factor: float | Measured | Distribution = 1.0,
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
class _ShortOverloadCurrent(Formula):
    """Current that brings a cable to its highest normal temperature after a time, from a load before it."""

    @overload
    def __call__(  # type: ignore
        self,
        capacity_a: float,
        preload_a: float,
        time_s: float,
        time_constant_s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current that brings a cable to its highest normal temperature after a time, from a load before it."""
    @overload
    def __call__(  # type: ignore
        self,
        capacity_a: float | Measured,
        preload_a: float | Measured,
        time_s: float | Measured,
        time_constant_s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        capacity_a: float | _Array,
        preload_a: float | _Array,
        time_s: float | _Array,
        time_constant_s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        capacity_a: float | _Array | Measured | MeasuredArray,
        preload_a: float | _Array | Measured | MeasuredArray,
        time_s: float | _Array | Measured | MeasuredArray,
        time_constant_s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        capacity_a: float | Measured,
        preload_a: float | Measured,
        time_s: float | Measured,
        time_constant_s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        capacity_a: float | Measured,
        preload_a: float | Measured,
        time_s: float | Measured,
        time_constant_s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        capacity_a: float | _Array,
        preload_a: float | _Array,
        time_s: float | _Array,
        time_constant_s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        capacity_a: float | tuple[float, float],
        preload_a: float | tuple[float, float],
        time_s: float | tuple[float, float],
        time_constant_s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        capacity_a: float | Measured | Distribution,
        preload_a: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
        time_constant_s: float | Measured | Distribution,
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
        capacity_a: float | Measured | Distribution,
        preload_a: float | Measured | Distribution,
        time_s: float | Measured | Distribution,
        time_constant_s: float | Measured | Distribution,
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
class _SmallestSize(Formula):
    """Smallest flat twin cable that satisfies capacity, voltage drop, loop impedance and fault energy together."""

    @overload
    def __call__(  # type: ignore
        self,
        method: _Method,
        rating_a: float,
        design_current_a: float,
        length_m: float,
        correction_factor: float,
        drop_limit_v: float,
        external_ohm: float,
        loop_limit_ohm: float,
        let_through_a2s: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Smallest flat twin cable that satisfies capacity, voltage drop, loop impedance and fault energy together."""
    @overload
    def __call__(  # type: ignore
        self,
        method: _Method,
        rating_a: float | Measured,
        design_current_a: float | Measured,
        length_m: float | Measured,
        correction_factor: float | Measured,
        drop_limit_v: float | Measured,
        external_ohm: float | Measured,
        loop_limit_ohm: float | Measured,
        let_through_a2s: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        method: _Method | Sequence[_Method] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        rating_a: float | _Array,
        design_current_a: float | _Array,
        length_m: float | _Array,
        correction_factor: float | _Array,
        drop_limit_v: float | _Array,
        external_ohm: float | _Array,
        loop_limit_ohm: float | _Array,
        let_through_a2s: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        method: _Method | Sequence[_Method] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        rating_a: float | _Array | Measured | MeasuredArray,
        design_current_a: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        correction_factor: float | _Array | Measured | MeasuredArray,
        drop_limit_v: float | _Array | Measured | MeasuredArray,
        external_ohm: float | _Array | Measured | MeasuredArray,
        loop_limit_ohm: float | _Array | Measured | MeasuredArray,
        let_through_a2s: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        method: _Method,
        rating_a: float | Measured,
        design_current_a: float | Measured,
        length_m: float | Measured,
        correction_factor: float | Measured,
        drop_limit_v: float | Measured,
        external_ohm: float | Measured,
        loop_limit_ohm: float | Measured,
        let_through_a2s: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        method: _Method,
        rating_a: float | Measured,
        design_current_a: float | Measured,
        length_m: float | Measured,
        correction_factor: float | Measured,
        drop_limit_v: float | Measured,
        external_ohm: float | Measured,
        loop_limit_ohm: float | Measured,
        let_through_a2s: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        method: _Method | Sequence[_Method] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        rating_a: float | _Array,
        design_current_a: float | _Array,
        length_m: float | _Array,
        correction_factor: float | _Array,
        drop_limit_v: float | _Array,
        external_ohm: float | _Array,
        loop_limit_ohm: float | _Array,
        let_through_a2s: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        method: _Method,
        rating_a: float | tuple[float, float],
        design_current_a: float | tuple[float, float],
        length_m: float | tuple[float, float],
        correction_factor: float | tuple[float, float],
        drop_limit_v: float | tuple[float, float],
        external_ohm: float | tuple[float, float],
        loop_limit_ohm: float | tuple[float, float],
        let_through_a2s: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        method: _Method,
        rating_a: float | Measured | Distribution,
        design_current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        correction_factor: float | Measured | Distribution,
        drop_limit_v: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        loop_limit_ohm: float | Measured | Distribution,
        let_through_a2s: float | Measured | Distribution,
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
        method: _Method,
        rating_a: float | Measured | Distribution,
        design_current_a: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        correction_factor: float | Measured | Distribution,
        drop_limit_v: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        loop_limit_ohm: float | Measured | Distribution,
        let_through_a2s: float | Measured | Distribution,
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
class _TabulatedVoltageDrop(Formula):
    """Tabulated voltage drop of a copper cable at its highest working temperature."""

    @overload
    def __call__(self, cable: _Cable, area_mm2: _AreaMm22, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Tabulated voltage drop of a copper cable at its highest working temperature."""
    @overload
    def __call__(
        self,
        cable: _Cable | Sequence[_Cable] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, cable: _Cable, area_mm2: _AreaMm22) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, cable: _Cable, area_mm2: _AreaMm22) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        cable: _Cable | Sequence[_Cable] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        area_mm2: _AreaMm22 | Sequence[_AreaMm22] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, cable: _Cable, area_mm2: _AreaMm22) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cable: _Cable,
        area_mm2: _AreaMm22,
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
        area_mm2: _AreaMm22,
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
class _FlexCapacity(Formula):
    """Tabulated current of a flexible cord of 60 °C in air of 30 °C."""

    @overload
    def __call__(  # type: ignore
        self,
        area_mm2: _AreaMm23,
        phases: _Phases = "single",
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Tabulated current of a flexible cord of 60 °C in air of 30 °C."""
    @overload
    def __call__(
        self,
        area_mm2: _AreaMm23 | Sequence[_AreaMm23] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        phases: _Phases | Sequence[_Phases] | npt.NDArray[np.str_] | npt.NDArray[np.object_] = "single",
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, area_mm2: _AreaMm23, phases: _Phases = "single") -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, area_mm2: _AreaMm23, phases: _Phases = "single") -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        area_mm2: _AreaMm23 | Sequence[_AreaMm23] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        phases: _Phases | Sequence[_Phases] | npt.NDArray[np.str_] | npt.NDArray[np.object_] = "single",
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, area_mm2: _AreaMm23, phases: _Phases = "single") -> tuple[float, float]: ...
    def monte_carlo(
        self,
        area_mm2: _AreaMm23,
        phases: _Phases = "single",
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
        area_mm2: _AreaMm23,
        phases: _Phases = "single",
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
class _FlexVoltageDrop(Formula):
    """Tabulated single-phase voltage drop of a flexible cord at 60 °C."""

    @overload
    def __call__(self, area_mm2: _AreaMm23, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Tabulated single-phase voltage drop of a flexible cord at 60 °C."""
    @overload
    def __call__(
        self,
        area_mm2: _AreaMm23 | Sequence[_AreaMm23] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, area_mm2: _AreaMm23) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, area_mm2: _AreaMm23) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        area_mm2: _AreaMm23 | Sequence[_AreaMm23] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, area_mm2: _AreaMm23) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        area_mm2: _AreaMm23,
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
        area_mm2: _AreaMm23,
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
class _AwgDiameter(Formula):
    """Diameter of a solid conductor of the American wire gauge."""

    @overload
    def __call__(self, gauge: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Diameter of a solid conductor of the American wire gauge."""
    @overload
    def __call__(self, gauge: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        gauge: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        gauge: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, gauge: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, gauge: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        gauge: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, gauge: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        gauge: float | Measured | Distribution,
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
        gauge: float | Measured | Distribution,
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
class _AwgArea(Formula):
    """Cross-section of a solid conductor of the American wire gauge."""

    @overload
    def __call__(self, gauge: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Cross-section of a solid conductor of the American wire gauge."""
    @overload
    def __call__(self, gauge: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        gauge: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        gauge: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, gauge: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, gauge: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        gauge: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, gauge: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        gauge: float | Measured | Distribution,
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
        gauge: float | Measured | Distribution,
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
class _AwgGauge(Formula):
    """Number of the American wire gauge from the diameter of a solid conductor."""

    @overload
    def __call__(self, diameter_mm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Number of the American wire gauge from the diameter of a solid conductor."""
    @overload
    def __call__(self, diameter_mm: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
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
        diameter_mm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, diameter_mm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, diameter_mm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        diameter_mm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, diameter_mm: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
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
class _ConductorResistivity(Formula):
    """Resistivity of a conductor's metal at a temperature."""

    @overload
    def __call__(  # type: ignore
        self,
        material: _Material,
        temperature_c: float = 20.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistivity of a conductor's metal at a temperature."""
    @overload
    def __call__(  # type: ignore
        self,
        material: _Material,
        temperature_c: float | Measured = 20.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array = 20.0,
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
        temperature_c: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, material: _Material, temperature_c: float | Measured = 20.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, material: _Material, temperature_c: float | Measured = 20.0) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        material: _Material | Sequence[_Material] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        temperature_c: float | _Array = 20.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, material: _Material, temperature_c: float | tuple[float, float] = 20.0) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        material: _Material,
        temperature_c: float | Measured | Distribution = 20.0,
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
        temperature_c: float | Measured | Distribution = 20.0,
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
class _ResistanceFromResistivity(Formula):
    """Resistance of one metre of a conductor from the resistivity of its metal and its cross-section."""

    @overload
    def __call__(  # type: ignore
        self,
        resistivity_ohm_mm2_per_m: float,
        area_mm2: float,
        lay_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of one metre of a conductor from the resistivity of its metal and its cross-section."""
    @overload
    def __call__(  # type: ignore
        self,
        resistivity_ohm_mm2_per_m: float | Measured,
        area_mm2: float | Measured,
        lay_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistivity_ohm_mm2_per_m: float | _Array,
        area_mm2: float | _Array,
        lay_factor: float | _Array = 1.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistivity_ohm_mm2_per_m: float | _Array | Measured | MeasuredArray,
        area_mm2: float | _Array | Measured | MeasuredArray,
        lay_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistivity_ohm_mm2_per_m: float | Measured,
        area_mm2: float | Measured,
        lay_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistivity_ohm_mm2_per_m: float | Measured,
        area_mm2: float | Measured,
        lay_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistivity_ohm_mm2_per_m: float | _Array,
        area_mm2: float | _Array,
        lay_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistivity_ohm_mm2_per_m: float | tuple[float, float],
        area_mm2: float | tuple[float, float],
        lay_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistivity_ohm_mm2_per_m: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        lay_factor: float | Measured | Distribution = 1.0,
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
        resistivity_ohm_mm2_per_m: float | Measured | Distribution,
        area_mm2: float | Measured | Distribution,
        lay_factor: float | Measured | Distribution = 1.0,
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
class _SpreadVoltageDrop(Formula):
    """Voltage drop at the end of a run along which the load is spread evenly."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float,
        spread_length_m: float,
        current_a: float,
        unloaded_length_m: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage drop at the end of a run along which the load is spread evenly."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        spread_length_m: float | Measured,
        current_a: float | Measured,
        unloaded_length_m: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | _Array,
        spread_length_m: float | _Array,
        current_a: float | _Array,
        unloaded_length_m: float | _Array = 0.0,
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
        spread_length_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        unloaded_length_m: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm_per_m: float | Measured,
        spread_length_m: float | Measured,
        current_a: float | Measured,
        unloaded_length_m: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        spread_length_m: float | Measured,
        current_a: float | Measured,
        unloaded_length_m: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm_per_m: float | _Array,
        spread_length_m: float | _Array,
        current_a: float | _Array,
        unloaded_length_m: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm_per_m: float | tuple[float, float],
        spread_length_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        unloaded_length_m: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm_per_m: float | Measured | Distribution,
        spread_length_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        unloaded_length_m: float | Measured | Distribution = 0.0,
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
        spread_length_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        unloaded_length_m: float | Measured | Distribution = 0.0,
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
class _RingSpreadVoltageDrop(Formula):
    """Voltage drop on a ring along which the load is spread evenly."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float,
        ring_length_m: float,
        current_a: float,
        position_ratio: float = 0.5,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage drop on a ring along which the load is spread evenly."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        current_a: float | Measured,
        position_ratio: float | Measured = 0.5,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm_per_m: float | _Array,
        ring_length_m: float | _Array,
        current_a: float | _Array,
        position_ratio: float | _Array = 0.5,
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
        current_a: float | _Array | Measured | MeasuredArray,
        position_ratio: float | _Array | Measured | MeasuredArray = 0.5,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        current_a: float | Measured,
        position_ratio: float | Measured = 0.5,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm_per_m: float | Measured,
        ring_length_m: float | Measured,
        current_a: float | Measured,
        position_ratio: float | Measured = 0.5,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm_per_m: float | _Array,
        ring_length_m: float | _Array,
        current_a: float | _Array,
        position_ratio: float | _Array = 0.5,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm_per_m: float | tuple[float, float],
        ring_length_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        position_ratio: float | tuple[float, float] = 0.5,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm_per_m: float | Measured | Distribution,
        ring_length_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
        position_ratio: float | Measured | Distribution = 0.5,
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
        current_a: float | Measured | Distribution,
        position_ratio: float | Measured | Distribution = 0.5,
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
class _RingAssumedCurrent(Formula):
    """Current that, in the middle of a ring alone, drops what a load there and the rest spread evenly drop together."""

    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float,
        far_point_a: float = 20.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current that, in the middle of a ring alone, drops what a load there and the rest spread evenly drop together."""
    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float | Measured,
        far_point_a: float | Measured = 20.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        rating_a: float | _Array,
        far_point_a: float | _Array = 20.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        rating_a: float | _Array | Measured | MeasuredArray,
        far_point_a: float | _Array | Measured | MeasuredArray = 20.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, rating_a: float | Measured, far_point_a: float | Measured = 20.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, rating_a: float | Measured, far_point_a: float | Measured = 20.0) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        rating_a: float | _Array,
        far_point_a: float | _Array = 20.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        rating_a: float | tuple[float, float],
        far_point_a: float | tuple[float, float] = 20.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        rating_a: float | Measured | Distribution,
        far_point_a: float | Measured | Distribution = 20.0,
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
        rating_a: float | Measured | Distribution,
        far_point_a: float | Measured | Distribution = 20.0,
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
class _RingLegCurrent(Formula):
    """Current in the leg of a ring from which the distance of a load is counted."""

    @overload
    def __call__(  # type: ignore
        self,
        ring_length_m: float,
        distance_m: float,
        current_a: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current in the leg of a ring from which the distance of a load is counted."""
    @overload
    def __call__(  # type: ignore
        self,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        ring_length_m: float | _Array,
        distance_m: float | _Array,
        current_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        ring_length_m: float | _Array | Measured | MeasuredArray,
        distance_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        ring_length_m: float | Measured,
        distance_m: float | Measured,
        current_a: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        ring_length_m: float | _Array,
        distance_m: float | _Array,
        current_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        ring_length_m: float | tuple[float, float],
        distance_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        ring_length_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
        ring_length_m: float | Measured | Distribution,
        distance_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
class _LongestRunByDrop(Formula):
    """Longest run to a load at its end that keeps the voltage drop."""

    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float,
        drop_mv_per_a_m: float,
        current_a: float,
        temperature_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Longest run to a load at its end that keeps the voltage drop."""
    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float | _Array,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
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
        drop_limit_v: float | _Array | Measured | MeasuredArray,
        drop_mv_per_a_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        drop_limit_v: float | _Array,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
        temperature_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        drop_limit_v: float | tuple[float, float],
        drop_mv_per_a_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        drop_limit_v: float | Measured | Distribution,
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
        drop_limit_v: float | Measured | Distribution,
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
class _LongestRingByDrop(Formula):
    """Longest ring that keeps the voltage drop of a load in its middle."""

    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float,
        drop_mv_per_a_m: float,
        current_a: float,
        temperature_factor: float = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Longest ring that keeps the voltage drop of a load in its middle."""
    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        drop_limit_v: float | _Array,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
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
        drop_limit_v: float | _Array | Measured | MeasuredArray,
        drop_mv_per_a_m: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        drop_limit_v: float | Measured,
        drop_mv_per_a_m: float | Measured,
        current_a: float | Measured,
        temperature_factor: float | Measured = 1.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        drop_limit_v: float | _Array,
        drop_mv_per_a_m: float | _Array,
        current_a: float | _Array,
        temperature_factor: float | _Array = 1.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        drop_limit_v: float | tuple[float, float],
        drop_mv_per_a_m: float | tuple[float, float],
        current_a: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        drop_limit_v: float | Measured | Distribution,
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
        drop_limit_v: float | Measured | Distribution,
        drop_mv_per_a_m: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
class _LongestRunByLoop(Formula):
    """Longest run at whose end the loop impedance still lets the device disconnect in time."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float,
        external_ohm: float,
        r1_plus_r2_mohm_per_m: float,
        temperature_factor: float = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Longest run at whose end the loop impedance still lets the device disconnect in time."""
    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float | _Array,
        external_ohm: float | _Array,
        r1_plus_r2_mohm_per_m: float | _Array,
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
        loop_limit_ohm: float | _Array | Measured | MeasuredArray,
        external_ohm: float | _Array | Measured | MeasuredArray,
        r1_plus_r2_mohm_per_m: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loop_limit_ohm: float | _Array,
        external_ohm: float | _Array,
        r1_plus_r2_mohm_per_m: float | _Array,
        temperature_factor: float | _Array = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loop_limit_ohm: float | tuple[float, float],
        external_ohm: float | tuple[float, float],
        r1_plus_r2_mohm_per_m: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.2,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loop_limit_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_mohm_per_m: float | Measured | Distribution,
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
        loop_limit_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_mohm_per_m: float | Measured | Distribution,
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
class _LongestRingByLoop(Formula):
    """Longest ring in whose middle the loop impedance still lets the device disconnect in time."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float,
        external_ohm: float,
        r1_plus_r2_mohm_per_m: float,
        temperature_factor: float = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Longest ring in whose middle the loop impedance still lets the device disconnect in time."""
    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loop_limit_ohm: float | _Array,
        external_ohm: float | _Array,
        r1_plus_r2_mohm_per_m: float | _Array,
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
        loop_limit_ohm: float | _Array | Measured | MeasuredArray,
        external_ohm: float | _Array | Measured | MeasuredArray,
        r1_plus_r2_mohm_per_m: float | _Array | Measured | MeasuredArray,
        temperature_factor: float | _Array | Measured | MeasuredArray = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loop_limit_ohm: float | Measured,
        external_ohm: float | Measured,
        r1_plus_r2_mohm_per_m: float | Measured,
        temperature_factor: float | Measured = 1.2,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loop_limit_ohm: float | _Array,
        external_ohm: float | _Array,
        r1_plus_r2_mohm_per_m: float | _Array,
        temperature_factor: float | _Array = 1.2,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loop_limit_ohm: float | tuple[float, float],
        external_ohm: float | tuple[float, float],
        r1_plus_r2_mohm_per_m: float | tuple[float, float],
        temperature_factor: float | tuple[float, float] = 1.2,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loop_limit_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_mohm_per_m: float | Measured | Distribution,
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
        loop_limit_ohm: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        r1_plus_r2_mohm_per_m: float | Measured | Distribution,
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
class _BreakerOperatingCurrent(Formula):
    """Current at which a circuit-breaker or RCBO is sure to operate at once: the upper end of its band."""

    @overload
    def __call__(self, type: _Type, rating_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Current at which a circuit-breaker or RCBO is sure to operate at once: the upper end of its band."""
    @overload
    def __call__(self, type: _Type, rating_a: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, type: _Type, rating_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, type: _Type, rating_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, type: _Type, rating_a: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        type: _Type,
        rating_a: float | Measured | Distribution,
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
        type: _Type,
        rating_a: float | Measured | Distribution,
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
class _BreakerHoldingCurrent(Formula):
    """Highest current that a circuit-breaker or RCBO is sure to bear without instantaneous operation: the lower end of its band."""

    @overload
    def __call__(self, type: _Type, rating_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Highest current that a circuit-breaker or RCBO is sure to bear without instantaneous operation: the lower end of its band."""
    @overload
    def __call__(self, type: _Type, rating_a: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, type: _Type, rating_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, type: _Type, rating_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        type: _Type | Sequence[_Type] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, type: _Type, rating_a: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        type: _Type,
        rating_a: float | Measured | Distribution,
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
        type: _Type,
        rating_a: float | Measured | Distribution,
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
class _FuseOperatingCurrent(Formula):
    """Current that operates a fuse in the required time."""

    @overload
    def __call__(  # type: ignore
        self,
        fuse: _Fuse,
        disconnection_time_s: _DisconnectionTimeS,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Current that operates a fuse in the required time."""
    @overload
    def __call__(
        self,
        fuse: _Fuse | Sequence[_Fuse] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        disconnection_time_s: _DisconnectionTimeS | Sequence[_DisconnectionTimeS] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, fuse: _Fuse, disconnection_time_s: _DisconnectionTimeS) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, fuse: _Fuse, disconnection_time_s: _DisconnectionTimeS) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        fuse: _Fuse | Sequence[_Fuse] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        disconnection_time_s: _DisconnectionTimeS | Sequence[_DisconnectionTimeS] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, fuse: _Fuse, disconnection_time_s: _DisconnectionTimeS) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        fuse: _Fuse,
        disconnection_time_s: _DisconnectionTimeS,
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
        fuse: _Fuse,
        disconnection_time_s: _DisconnectionTimeS,
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
class _ConventionalOperatingCurrent(Formula):
    """Current that is sure to operate an overload device within its conventional time."""

    @overload
    def __call__(self, device: _Device, rating_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Current that is sure to operate an overload device within its conventional time."""
    @overload
    def __call__(self, device: _Device, rating_a: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        device: _Device | Sequence[_Device] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        device: _Device | Sequence[_Device] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, device: _Device, rating_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, device: _Device, rating_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        device: _Device | Sequence[_Device] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rating_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, device: _Device, rating_a: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        device: _Device,
        rating_a: float | Measured | Distribution,
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
        device: _Device,
        rating_a: float | Measured | Distribution,
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
class _ColdLoopLimit(Formula):
    """Rule of thumb for a loop read on cold conductors: 0.8 of the limit."""

    @overload
    def __call__(self, limit_ohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Rule of thumb for a loop read on cold conductors: 0.8 of the limit."""
    @overload
    def __call__(self, limit_ohm: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        limit_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        limit_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, limit_ohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, limit_ohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        limit_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, limit_ohm: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        limit_ohm: float | Measured | Distribution,
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
        limit_ohm: float | Measured | Distribution,
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
class _EarthResistanceLimit(Formula):
    """Highest resistance of electrode and protective conductors with a residual current device."""

    @overload
    def __call__(  # type: ignore
        self,
        residual_current_ma: float,
        touch_voltage_v: float = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Highest resistance of electrode and protective conductors with a residual current device."""
    @overload
    def __call__(  # type: ignore
        self,
        residual_current_ma: float | Measured,
        touch_voltage_v: float | Measured = 50.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        residual_current_ma: float | _Array,
        touch_voltage_v: float | _Array = 50.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        residual_current_ma: float | _Array | Measured | MeasuredArray,
        touch_voltage_v: float | _Array | Measured | MeasuredArray = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, residual_current_ma: float | Measured, touch_voltage_v: float | Measured = 50.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        residual_current_ma: float | Measured,
        touch_voltage_v: float | Measured = 50.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        residual_current_ma: float | _Array,
        touch_voltage_v: float | _Array = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        residual_current_ma: float | tuple[float, float],
        touch_voltage_v: float | tuple[float, float] = 50.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        residual_current_ma: float | Measured | Distribution,
        touch_voltage_v: float | Measured | Distribution = 50.0,
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
        residual_current_ma: float | Measured | Distribution,
        touch_voltage_v: float | Measured | Distribution = 50.0,
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
class _TouchVoltage(Formula):
    """Voltage on exposed metal during an earth fault, against the main earthing terminal."""

    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float,
        external_ohm: float,
        line_ohm: float,
        protective_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Voltage on exposed metal during an earth fault, against the main earthing terminal."""
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | Measured,
        external_ohm: float | Measured,
        line_ohm: float | Measured,
        protective_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | _Array,
        external_ohm: float | _Array,
        line_ohm: float | _Array,
        protective_ohm: float | _Array,
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
        external_ohm: float | _Array | Measured | MeasuredArray,
        line_ohm: float | _Array | Measured | MeasuredArray,
        protective_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        voltage_v: float | Measured,
        external_ohm: float | Measured,
        line_ohm: float | Measured,
        protective_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        voltage_v: float | Measured,
        external_ohm: float | Measured,
        line_ohm: float | Measured,
        protective_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        voltage_v: float | _Array,
        external_ohm: float | _Array,
        line_ohm: float | _Array,
        protective_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        voltage_v: float | tuple[float, float],
        external_ohm: float | tuple[float, float],
        line_ohm: float | tuple[float, float],
        protective_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        voltage_v: float | Measured | Distribution,
        external_ohm: float | Measured | Distribution,
        line_ohm: float | Measured | Distribution,
        protective_ohm: float | Measured | Distribution,
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
        external_ohm: float | Measured | Distribution,
        line_ohm: float | Measured | Distribution,
        protective_ohm: float | Measured | Distribution,
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
class _BondingResistanceLimit(Formula):
    """Highest resistance between parts that can be touched together, for supplementary bonding."""

    @overload
    def __call__(  # type: ignore
        self,
        operating_current_a: float,
        touch_voltage_v: float = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Highest resistance between parts that can be touched together, for supplementary bonding."""
    @overload
    def __call__(  # type: ignore
        self,
        operating_current_a: float | Measured,
        touch_voltage_v: float | Measured = 50.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        operating_current_a: float | _Array,
        touch_voltage_v: float | _Array = 50.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        operating_current_a: float | _Array | Measured | MeasuredArray,
        touch_voltage_v: float | _Array | Measured | MeasuredArray = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, operating_current_a: float | Measured, touch_voltage_v: float | Measured = 50.0) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        operating_current_a: float | Measured,
        touch_voltage_v: float | Measured = 50.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        operating_current_a: float | _Array,
        touch_voltage_v: float | _Array = 50.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        operating_current_a: float | tuple[float, float],
        touch_voltage_v: float | tuple[float, float] = 50.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        operating_current_a: float | Measured | Distribution,
        touch_voltage_v: float | Measured | Distribution = 50.0,
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
        operating_current_a: float | Measured | Distribution,
        touch_voltage_v: float | Measured | Distribution = 50.0,
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
class _ExtraneousPartResistance(Formula):
    """Resistance to the main earthing terminal above which metal counts as isolated from earth."""

    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float,
        body_current_ma: float,
        body_impedance_ohm: float = 1000.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance to the main earthing terminal above which metal counts as isolated from earth."""
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | Measured,
        body_current_ma: float | Measured,
        body_impedance_ohm: float | Measured = 1000.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        voltage_v: float | _Array,
        body_current_ma: float | _Array,
        body_impedance_ohm: float | _Array = 1000.0,
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
        body_current_ma: float | _Array | Measured | MeasuredArray,
        body_impedance_ohm: float | _Array | Measured | MeasuredArray = 1000.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        voltage_v: float | Measured,
        body_current_ma: float | Measured,
        body_impedance_ohm: float | Measured = 1000.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        voltage_v: float | Measured,
        body_current_ma: float | Measured,
        body_impedance_ohm: float | Measured = 1000.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        voltage_v: float | _Array,
        body_current_ma: float | _Array,
        body_impedance_ohm: float | _Array = 1000.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        voltage_v: float | tuple[float, float],
        body_current_ma: float | tuple[float, float],
        body_impedance_ohm: float | tuple[float, float] = 1000.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        voltage_v: float | Measured | Distribution,
        body_current_ma: float | Measured | Distribution,
        body_impedance_ohm: float | Measured | Distribution = 1000.0,
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
        body_current_ma: float | Measured | Distribution,
        body_impedance_ohm: float | Measured | Distribution = 1000.0,
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
class _ProtectiveConductorArea(Formula):
    """Cross-section of a protective conductor of the same metal by the table, without calculation."""

    @overload
    def __call__(self, line_area_mm2: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Cross-section of a protective conductor of the same metal by the table, without calculation."""
    @overload
    def __call__(self, line_area_mm2: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        line_area_mm2: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        line_area_mm2: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, line_area_mm2: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, line_area_mm2: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        line_area_mm2: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, line_area_mm2: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        line_area_mm2: float | Measured | Distribution,
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
        line_area_mm2: float | Measured | Distribution,
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
class _JointResistanceUnderLoad(Formula):
    """Resistance of a joint, or of a run with its joints, from the voltage across it under load."""

    @overload
    def __call__(self, drop_v: float, current_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Resistance of a joint, or of a run with its joints, from the voltage across it under load."""
    @overload
    def __call__(  # type: ignore
        self,
        drop_v: float | Measured,
        current_a: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        drop_v: float | _Array,
        current_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        drop_v: float | _Array | Measured | MeasuredArray,
        current_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, drop_v: float | Measured, current_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, drop_v: float | Measured, current_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        drop_v: float | _Array,
        current_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        drop_v: float | tuple[float, float],
        current_a: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        drop_v: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
        drop_v: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
class _JointHeating(Formula):
    """Heat made in a joint by the current through it."""

    @overload
    def __call__(self, resistance_ohm: float, current_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Heat made in a joint by the current through it."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | Measured,
        current_a: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: float | _Array,
        current_a: float | _Array,
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
        current_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, resistance_ohm: float | Measured, current_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, resistance_ohm: float | Measured, current_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        resistance_ohm: float | _Array,
        current_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_ohm: float | tuple[float, float],
        current_a: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_ohm: float | Measured | Distribution,
        current_a: float | Measured | Distribution,
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
        current_a: float | Measured | Distribution,
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
class _ResidualShare(Formula):
    """Share of a residual current device's rated residual current that the standing leakage takes."""

    @overload
    def __call__(  # type: ignore
        self,
        leakage_ma: float,
        residual_current_ma: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Share of a residual current device's rated residual current that the standing leakage takes."""
    @overload
    def __call__(  # type: ignore
        self,
        leakage_ma: float | Measured,
        residual_current_ma: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        leakage_ma: float | _Array,
        residual_current_ma: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        leakage_ma: float | _Array | Measured | MeasuredArray,
        residual_current_ma: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, leakage_ma: float | Measured, residual_current_ma: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        leakage_ma: float | Measured,
        residual_current_ma: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        leakage_ma: float | _Array,
        residual_current_ma: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        leakage_ma: float | tuple[float, float],
        residual_current_ma: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        leakage_ma: float | Measured | Distribution,
        residual_current_ma: float | Measured | Distribution,
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
        leakage_ma: float | Measured | Distribution,
        residual_current_ma: float | Measured | Distribution,
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
class _CookerDemand(Formula):
    """Demand of a household cooker: 10 A, 30 % of the rest, and 5 A for a socket on its control unit."""

    @overload
    def __call__(self, connected_a: float, socket: _Socket, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Demand of a household cooker: 10 A, 30 % of the rest, and 5 A for a socket on its control unit."""
    @overload
    def __call__(self, connected_a: float | Measured, socket: _Socket, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        connected_a: float | _Array,
        socket: _Socket | Sequence[_Socket] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        connected_a: float | _Array | Measured | MeasuredArray,
        socket: _Socket | Sequence[_Socket] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, connected_a: float | Measured, socket: _Socket) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, connected_a: float | Measured, socket: _Socket) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        connected_a: float | _Array,
        socket: _Socket | Sequence[_Socket] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, connected_a: float | tuple[float, float], socket: _Socket) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        connected_a: float | Measured | Distribution,
        socket: _Socket,
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
        connected_a: float | Measured | Distribution,
        socket: _Socket,
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
class _HeatingDemand(Formula):
    """Demand of fixed heating and power other than cookers, motors and water heaters: 10 A and half of the rest."""

    @overload
    def __call__(self, connected_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Demand of fixed heating and power other than cookers, motors and water heaters: 10 A and half of the rest."""
    @overload
    def __call__(self, connected_a: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        connected_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        connected_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, connected_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, connected_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        connected_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, connected_a: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        connected_a: float | Measured | Distribution,
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
        connected_a: float | Measured | Distribution,
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
class _LightingDemand(Formula):
    """Demand of household lighting: 66 % of what is connected."""

    @overload
    def __call__(self, connected_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Demand of household lighting: 66 % of what is connected."""
    @overload
    def __call__(self, connected_a: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        connected_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        connected_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, connected_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, connected_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        connected_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, connected_a: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        connected_a: float | Measured | Distribution,
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
        connected_a: float | Measured | Distribution,
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
class _CircuitsDemand(Formula):
    """Demand of standard socket circuits: the largest rating in full and 40 % of the others."""

    @overload
    def __call__(self, largest_a: float, others_a: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Demand of standard socket circuits: the largest rating in full and 40 % of the others."""
    @overload
    def __call__(  # type: ignore
        self,
        largest_a: float | Measured,
        others_a: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        largest_a: float | _Array,
        others_a: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        largest_a: float | _Array | Measured | MeasuredArray,
        others_a: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, largest_a: float | Measured, others_a: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, largest_a: float | Measured, others_a: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        largest_a: float | _Array,
        others_a: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        largest_a: float | tuple[float, float],
        others_a: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        largest_a: float | Measured | Distribution,
        others_a: float | Measured | Distribution,
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
        largest_a: float | Measured | Distribution,
        others_a: float | Measured | Distribution,
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
class _MurrayLoopDistance(Formula):
    """Distance of an earth fault along a core by a Murray loop with a sound core of the same conductor."""

    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float,
        faulty_arm_ohm: float,
        length_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of an earth fault along a core by a Murray loop with a sound core of the same conductor."""
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
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
        sound_arm_ohm: float | _Array | Measured | MeasuredArray,
        faulty_arm_ohm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
        length_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        sound_arm_ohm: float | tuple[float, float],
        faulty_arm_ohm: float | tuple[float, float],
        length_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
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
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
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
class _MurrayLoopDistanceUnequal(Formula):
    """Distance of an earth fault along a core by a Murray loop whose sound core has another resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float,
        faulty_arm_ohm: float,
        length_m: float,
        faulty_mohm_per_m: float,
        return_mohm_per_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of an earth fault along a core by a Murray loop whose sound core has another resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
        faulty_mohm_per_m: float | Measured,
        return_mohm_per_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
        length_m: float | _Array,
        faulty_mohm_per_m: float | _Array,
        return_mohm_per_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        sound_arm_ohm: float | _Array | Measured | MeasuredArray,
        faulty_arm_ohm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        faulty_mohm_per_m: float | _Array | Measured | MeasuredArray,
        return_mohm_per_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
        faulty_mohm_per_m: float | Measured,
        return_mohm_per_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        length_m: float | Measured,
        faulty_mohm_per_m: float | Measured,
        return_mohm_per_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
        length_m: float | _Array,
        faulty_mohm_per_m: float | _Array,
        return_mohm_per_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        sound_arm_ohm: float | tuple[float, float],
        faulty_arm_ohm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        faulty_mohm_per_m: float | tuple[float, float],
        return_mohm_per_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        faulty_mohm_per_m: float | Measured | Distribution,
        return_mohm_per_m: float | Measured | Distribution,
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
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        faulty_mohm_per_m: float | Measured | Distribution,
        return_mohm_per_m: float | Measured | Distribution,
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
class _VarleyLoopDistance(Formula):
    """Distance of an earth fault along a core by a Varley loop with equal arms."""

    @overload
    def __call__(  # type: ignore
        self,
        earth_reading_ohm: float,
        loop_reading_ohm: float,
        length_m: float,
        lead_ohm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of an earth fault along a core by a Varley loop with equal arms."""
    @overload
    def __call__(  # type: ignore
        self,
        earth_reading_ohm: float | Measured,
        loop_reading_ohm: float | Measured,
        length_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        earth_reading_ohm: float | _Array,
        loop_reading_ohm: float | _Array,
        length_m: float | _Array,
        lead_ohm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        earth_reading_ohm: float | _Array | Measured | MeasuredArray,
        loop_reading_ohm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        lead_ohm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        earth_reading_ohm: float | Measured,
        loop_reading_ohm: float | Measured,
        length_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        earth_reading_ohm: float | Measured,
        loop_reading_ohm: float | Measured,
        length_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        earth_reading_ohm: float | _Array,
        loop_reading_ohm: float | _Array,
        length_m: float | _Array,
        lead_ohm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        earth_reading_ohm: float | tuple[float, float],
        loop_reading_ohm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        lead_ohm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        earth_reading_ohm: float | Measured | Distribution,
        loop_reading_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution = 0.0,
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
        earth_reading_ohm: float | Measured | Distribution,
        loop_reading_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution = 0.0,
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
class _VarleyLoopResistance(Formula):
    """Resistance of a core as far as its earth fault, by a Varley loop with any arms."""

    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float,
        faulty_arm_ohm: float,
        added_ohm: float,
        loop_ohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Resistance of a core as far as its earth fault, by a Varley loop with any arms."""
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        added_ohm: float | Measured,
        loop_ohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
        added_ohm: float | _Array,
        loop_ohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        sound_arm_ohm: float | _Array | Measured | MeasuredArray,
        faulty_arm_ohm: float | _Array | Measured | MeasuredArray,
        added_ohm: float | _Array | Measured | MeasuredArray,
        loop_ohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        added_ohm: float | Measured,
        loop_ohm: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        sound_arm_ohm: float | Measured,
        faulty_arm_ohm: float | Measured,
        added_ohm: float | Measured,
        loop_ohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        sound_arm_ohm: float | _Array,
        faulty_arm_ohm: float | _Array,
        added_ohm: float | _Array,
        loop_ohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        sound_arm_ohm: float | tuple[float, float],
        faulty_arm_ohm: float | tuple[float, float],
        added_ohm: float | tuple[float, float],
        loop_ohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
        added_ohm: float | Measured | Distribution,
        loop_ohm: float | Measured | Distribution,
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
        sound_arm_ohm: float | Measured | Distribution,
        faulty_arm_ohm: float | Measured | Distribution,
        added_ohm: float | Measured | Distribution,
        loop_ohm: float | Measured | Distribution,
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
class _CapacitanceBreakDistance(Formula):
    """Distance of a break in a core from the near end by its capacitance from both ends."""

    @overload
    def __call__(  # type: ignore
        self,
        near_nf: float,
        far_nf: float,
        length_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of a break in a core from the near end by its capacitance from both ends."""
    @overload
    def __call__(  # type: ignore
        self,
        near_nf: float | Measured,
        far_nf: float | Measured,
        length_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        near_nf: float | _Array,
        far_nf: float | _Array,
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
        near_nf: float | _Array | Measured | MeasuredArray,
        far_nf: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, near_nf: float | Measured, far_nf: float | Measured, length_m: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        near_nf: float | Measured,
        far_nf: float | Measured,
        length_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        near_nf: float | _Array,
        far_nf: float | _Array,
        length_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        near_nf: float | tuple[float, float],
        far_nf: float | tuple[float, float],
        length_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        near_nf: float | Measured | Distribution,
        far_nf: float | Measured | Distribution,
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
        near_nf: float | Measured | Distribution,
        far_nf: float | Measured | Distribution,
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
class _CapacitanceBreakDistanceSoundCore(Formula):
    """Distance of a break in a core by its capacitance against that of an identical sound core."""

    @overload
    def __call__(  # type: ignore
        self,
        broken_nf: float,
        sound_nf: float,
        length_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of a break in a core by its capacitance against that of an identical sound core."""
    @overload
    def __call__(  # type: ignore
        self,
        broken_nf: float | Measured,
        sound_nf: float | Measured,
        length_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        broken_nf: float | _Array,
        sound_nf: float | _Array,
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
        broken_nf: float | _Array | Measured | MeasuredArray,
        sound_nf: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, broken_nf: float | Measured, sound_nf: float | Measured, length_m: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        broken_nf: float | Measured,
        sound_nf: float | Measured,
        length_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        broken_nf: float | _Array,
        sound_nf: float | _Array,
        length_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        broken_nf: float | tuple[float, float],
        sound_nf: float | tuple[float, float],
        length_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        broken_nf: float | Measured | Distribution,
        sound_nf: float | Measured | Distribution,
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
        broken_nf: float | Measured | Distribution,
        sound_nf: float | Measured | Distribution,
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
class _ResistanceShortDistance(Formula):
    """Distance of a dead short between two conductors by their loop resistance from one end."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_reading_ohm: float,
        loop_mohm_per_m: float,
        lead_ohm: float = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of a dead short between two conductors by their loop resistance from one end."""
    @overload
    def __call__(  # type: ignore
        self,
        loop_reading_ohm: float | Measured,
        loop_mohm_per_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        loop_reading_ohm: float | _Array,
        loop_mohm_per_m: float | _Array,
        lead_ohm: float | _Array = 0.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        loop_reading_ohm: float | _Array | Measured | MeasuredArray,
        loop_mohm_per_m: float | _Array | Measured | MeasuredArray,
        lead_ohm: float | _Array | Measured | MeasuredArray = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        loop_reading_ohm: float | Measured,
        loop_mohm_per_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        loop_reading_ohm: float | Measured,
        loop_mohm_per_m: float | Measured,
        lead_ohm: float | Measured = 0.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        loop_reading_ohm: float | _Array,
        loop_mohm_per_m: float | _Array,
        lead_ohm: float | _Array = 0.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        loop_reading_ohm: float | tuple[float, float],
        loop_mohm_per_m: float | tuple[float, float],
        lead_ohm: float | tuple[float, float] = 0.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        loop_reading_ohm: float | Measured | Distribution,
        loop_mohm_per_m: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution = 0.0,
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
        loop_reading_ohm: float | Measured | Distribution,
        loop_mohm_per_m: float | Measured | Distribution,
        lead_ohm: float | Measured | Distribution = 0.0,
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
class _ResistanceShortDistanceBothEnds(Formula):
    """Distance of a short from the near end by the loop resistance from both ends, without the fault's own resistance."""

    @overload
    def __call__(  # type: ignore
        self,
        near_reading_ohm: float,
        far_reading_ohm: float,
        length_m: float,
        loop_mohm_per_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of a short from the near end by the loop resistance from both ends, without the fault's own resistance."""
    @overload
    def __call__(  # type: ignore
        self,
        near_reading_ohm: float | Measured,
        far_reading_ohm: float | Measured,
        length_m: float | Measured,
        loop_mohm_per_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        near_reading_ohm: float | _Array,
        far_reading_ohm: float | _Array,
        length_m: float | _Array,
        loop_mohm_per_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        near_reading_ohm: float | _Array | Measured | MeasuredArray,
        far_reading_ohm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        loop_mohm_per_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        near_reading_ohm: float | Measured,
        far_reading_ohm: float | Measured,
        length_m: float | Measured,
        loop_mohm_per_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        near_reading_ohm: float | Measured,
        far_reading_ohm: float | Measured,
        length_m: float | Measured,
        loop_mohm_per_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        near_reading_ohm: float | _Array,
        far_reading_ohm: float | _Array,
        length_m: float | _Array,
        loop_mohm_per_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        near_reading_ohm: float | tuple[float, float],
        far_reading_ohm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        loop_mohm_per_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        near_reading_ohm: float | Measured | Distribution,
        far_reading_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        loop_mohm_per_m: float | Measured | Distribution,
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
        near_reading_ohm: float | Measured | Distribution,
        far_reading_ohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        loop_mohm_per_m: float | Measured | Distribution,
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
class _ReflectionDistance(Formula):
    """Distance of a break or short by the time of its reflection."""

    @overload
    def __call__(  # type: ignore
        self,
        velocity_factor: float,
        round_trip_ns: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Distance of a break or short by the time of its reflection."""
    @overload
    def __call__(  # type: ignore
        self,
        velocity_factor: float | Measured,
        round_trip_ns: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        velocity_factor: float | _Array,
        round_trip_ns: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        velocity_factor: float | _Array | Measured | MeasuredArray,
        round_trip_ns: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, velocity_factor: float | Measured, round_trip_ns: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, velocity_factor: float | Measured, round_trip_ns: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        velocity_factor: float | _Array,
        round_trip_ns: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        velocity_factor: float | tuple[float, float],
        round_trip_ns: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        velocity_factor: float | Measured | Distribution,
        round_trip_ns: float | Measured | Distribution,
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
        velocity_factor: float | Measured | Distribution,
        round_trip_ns: float | Measured | Distribution,
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
class _VelocityFactorFromLength(Formula):
    """Velocity factor of a cable from the reflection of its open end at a known length."""

    @overload
    def __call__(self, length_m: float, round_trip_ns: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Velocity factor of a cable from the reflection of its open end at a known length."""
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | Measured,
        round_trip_ns: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        length_m: float | _Array,
        round_trip_ns: float | _Array,
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
        round_trip_ns: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, length_m: float | Measured, round_trip_ns: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, length_m: float | Measured, round_trip_ns: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        length_m: float | _Array,
        round_trip_ns: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        length_m: float | tuple[float, float],
        round_trip_ns: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        length_m: float | Measured | Distribution,
        round_trip_ns: float | Measured | Distribution,
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
        round_trip_ns: float | Measured | Distribution,
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
class _VelocityFactorFromPermittivity(Formula):
    """Velocity factor of a cable from the permittivity of its insulation."""

    @overload
    def __call__(self, permittivity: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Velocity factor of a cable from the permittivity of its insulation."""
    @overload
    def __call__(self, permittivity: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        permittivity: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        permittivity: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, permittivity: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, permittivity: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        permittivity: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, permittivity: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        permittivity: float | Measured | Distribution,
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
        permittivity: float | Measured | Distribution,
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
class _InsulationOfTwo(Formula):
    """Insulation resistance of two circuits that are measured together."""

    @overload
    def __call__(self, first_mohm: float, second_mohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Insulation resistance of two circuits that are measured together."""
    @overload
    def __call__(  # type: ignore
        self,
        first_mohm: float | Measured,
        second_mohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        first_mohm: float | _Array,
        second_mohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        first_mohm: float | _Array | Measured | MeasuredArray,
        second_mohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, first_mohm: float | Measured, second_mohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, first_mohm: float | Measured, second_mohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        first_mohm: float | _Array,
        second_mohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        first_mohm: float | tuple[float, float],
        second_mohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        first_mohm: float | Measured | Distribution,
        second_mohm: float | Measured | Distribution,
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
        first_mohm: float | Measured | Distribution,
        second_mohm: float | Measured | Distribution,
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
class _UnknownBranchInsulation(Formula):
    """Insulation resistance of one circuit from the whole and the rest without it."""

    @overload
    def __call__(self, total_mohm: float, rest_mohm: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Insulation resistance of one circuit from the whole and the rest without it."""
    @overload
    def __call__(  # type: ignore
        self,
        total_mohm: float | Measured,
        rest_mohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        total_mohm: float | _Array,
        rest_mohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        total_mohm: float | _Array | Measured | MeasuredArray,
        rest_mohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, total_mohm: float | Measured, rest_mohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, total_mohm: float | Measured, rest_mohm: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        total_mohm: float | _Array,
        rest_mohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        total_mohm: float | tuple[float, float],
        rest_mohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        total_mohm: float | Measured | Distribution,
        rest_mohm: float | Measured | Distribution,
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
        total_mohm: float | Measured | Distribution,
        rest_mohm: float | Measured | Distribution,
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
class _InsulationOfLength(Formula):
    """Insulation resistance of another length of the same cable."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float,
        length_m: float,
        wanted_length_m: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Insulation resistance of another length of the same cable."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float | Measured,
        length_m: float | Measured,
        wanted_length_m: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float | _Array,
        length_m: float | _Array,
        wanted_length_m: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_mohm: float | _Array | Measured | MeasuredArray,
        length_m: float | _Array | Measured | MeasuredArray,
        wanted_length_m: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm: float | Measured,
        length_m: float | Measured,
        wanted_length_m: float | Measured,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm: float | Measured,
        length_m: float | Measured,
        wanted_length_m: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm: float | _Array,
        length_m: float | _Array,
        wanted_length_m: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm: float | tuple[float, float],
        length_m: float | tuple[float, float],
        wanted_length_m: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        wanted_length_m: float | Measured | Distribution,
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
        resistance_mohm: float | Measured | Distribution,
        length_m: float | Measured | Distribution,
        wanted_length_m: float | Measured | Distribution,
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
class _InsulationAtTemperature(Formula):
    """Insulation resistance at another temperature, by the rule that it halves for each 10 K."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float,
        temperature_c: float,
        wanted_c: float,
        halving_k: float = 10.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Insulation resistance at another temperature, by the rule that it halves for each 10 K."""
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float | Measured,
        temperature_c: float | Measured,
        wanted_c: float | Measured,
        halving_k: float | Measured = 10.0,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        resistance_mohm: float | _Array,
        temperature_c: float | _Array,
        wanted_c: float | _Array,
        halving_k: float | _Array = 10.0,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        resistance_mohm: float | _Array | Measured | MeasuredArray,
        temperature_c: float | _Array | Measured | MeasuredArray,
        wanted_c: float | _Array | Measured | MeasuredArray,
        halving_k: float | _Array | Measured | MeasuredArray = 10.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(
        self,
        resistance_mohm: float | Measured,
        temperature_c: float | Measured,
        wanted_c: float | Measured,
        halving_k: float | Measured = 10.0,
    ) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        resistance_mohm: float | Measured,
        temperature_c: float | Measured,
        wanted_c: float | Measured,
        halving_k: float | Measured = 10.0,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        resistance_mohm: float | _Array,
        temperature_c: float | _Array,
        wanted_c: float | _Array,
        halving_k: float | _Array = 10.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        resistance_mohm: float | tuple[float, float],
        temperature_c: float | tuple[float, float],
        wanted_c: float | tuple[float, float],
        halving_k: float | tuple[float, float] = 10.0,
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        resistance_mohm: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        wanted_c: float | Measured | Distribution,
        halving_k: float | Measured | Distribution = 10.0,
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
        resistance_mohm: float | Measured | Distribution,
        temperature_c: float | Measured | Distribution,
        wanted_c: float | Measured | Distribution,
        halving_k: float | Measured | Distribution = 10.0,
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
class _InsulationTestVoltage(Formula):
    """Direct voltage with which the insulation of a circuit is tested."""

    @overload
    def __call__(self, circuit_kind: _CircuitKind, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Direct voltage with which the insulation of a circuit is tested."""
    @overload
    def __call__(
        self,
        circuit_kind: _CircuitKind | Sequence[_CircuitKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    def worked(self, circuit_kind: _CircuitKind) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, circuit_kind: _CircuitKind) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        circuit_kind: _CircuitKind | Sequence[_CircuitKind] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, circuit_kind: _CircuitKind) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        circuit_kind: _CircuitKind,
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
        circuit_kind: _CircuitKind,
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
class _PolarisationIndex(Formula):
    """Insulation resistance after ten minutes over that after one minute."""

    @overload
    def __call__(  # type: ignore
        self,
        after_10_min_mohm: float,
        after_1_min_mohm: float,
        *,
        errors: Literal["raise", "nan"] = "raise",
    ) -> float:
        """Insulation resistance after ten minutes over that after one minute."""
    @overload
    def __call__(  # type: ignore
        self,
        after_10_min_mohm: float | Measured,
        after_1_min_mohm: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        after_10_min_mohm: float | _Array,
        after_1_min_mohm: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        after_10_min_mohm: float | _Array | Measured | MeasuredArray,
        after_1_min_mohm: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, after_10_min_mohm: float | Measured, after_1_min_mohm: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(  # type: ignore
        self,
        after_10_min_mohm: float | Measured,
        after_1_min_mohm: float | Measured,
    ) -> dict[str, float]: ...
    @overload
    def sensitivities(
        self,
        after_10_min_mohm: float | _Array,
        after_1_min_mohm: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        after_10_min_mohm: float | tuple[float, float],
        after_1_min_mohm: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        after_10_min_mohm: float | Measured | Distribution,
        after_1_min_mohm: float | Measured | Distribution,
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
        after_10_min_mohm: float | Measured | Distribution,
        after_1_min_mohm: float | Measured | Distribution,
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
        circuit_kind: _CircuitKind2,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Insulation resistance against the rulebook's least value."""
    @overload
    def __call__(
        self,
        resistance_mohm: _Given | _Rows,
        circuit_kind: _CircuitKind2 | Sequence[_CircuitKind2] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
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
class _CheckRcdTripAt(Formula):
    """Tripping time of a residual current device at a multiple of its rated residual current, against its longest and, selective, its least time."""

    @overload
    def __call__(  # type: ignore
        self,
        time_ms: _Given,
        rcd_test: _RcdTest,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Tripping time of a residual current device at a multiple of its rated residual current, against its longest and, selective, its least time."""
    @overload
    def __call__(
        self,
        time_ms: _Given | _Rows,
        rcd_test: _RcdTest | Sequence[_RcdTest] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckBreakingCapacity(Formula):
    """Prospective fault current against what the protective device can break."""

    @overload
    def __call__(  # type: ignore
        self,
        fault_current_a: _Given,
        breaking_capacity_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Prospective fault current against what the protective device can break."""
    @overload
    def __call__(
        self,
        fault_current_a: _Given | _Rows,
        breaking_capacity_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckOverload(Formula):
    """Rated current of a device between the current of the circuit and the capacity of its cable."""

    @overload
    def __call__(  # type: ignore
        self,
        rating_a: _Given,
        design_current_a: _Given,
        capacity_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Rated current of a device between the current of the circuit and the capacity of its cable."""
    @overload
    def __call__(
        self,
        rating_a: _Given | _Rows,
        design_current_a: _Given | _Rows,
        capacity_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckOverloadOperation(Formula):
    """Current that is sure to operate the device against what the cable bears for a while."""

    @overload
    def __call__(  # type: ignore
        self,
        operating_current_a: _Given,
        capacity_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Current that is sure to operate the device against what the cable bears for a while."""
    @overload
    def __call__(
        self,
        operating_current_a: _Given | _Rows,
        capacity_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckTouchVoltage(Formula):
    """Touch voltage that stays, against its conventional limit."""

    @overload
    def __call__(  # type: ignore
        self,
        touch_voltage_v: _Given,
        location: _Location,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Touch voltage that stays, against its conventional limit."""
    @overload
    def __call__(
        self,
        touch_voltage_v: _Given | _Rows,
        location: _Location | Sequence[_Location] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckSupplementaryBonding(Formula):
    """Resistance between parts that can be touched together against the limit from the device's current."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        operating_current_a: _Given,
        location: _Location,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance between parts that can be touched together against the limit from the device's current."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        operating_current_a: _Given | _Rows,
        location: _Location | Sequence[_Location] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckEarthElectrode(Formula):
    """Resistance of an earth electrode against the limit of the residual current device that relies on it."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        residual_current_ma: _Given,
        location: _Location,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of an earth electrode against the limit of the residual current device that relies on it."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        residual_current_ma: _Given | _Rows,
        location: _Location | Sequence[_Location] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckStandingLeakage(Formula):
    """Standing leakage as a share of the residual current device's rated current, against the share that avoids unwanted trips."""

    @overload
    def __call__(  # type: ignore
        self,
        leakage_ma: _Given,
        residual_current_ma: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Standing leakage as a share of the residual current device's rated current, against the share that avoids unwanted trips."""
    @overload
    def __call__(
        self,
        leakage_ma: _Given | _Rows,
        residual_current_ma: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckDisconnectionTime(Formula):
    """Time in which a fault is disconnected against the longest that the system allows."""

    @overload
    def __call__(  # type: ignore
        self,
        time_s: _Given,
        circuit: _Circuit,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Time in which a fault is disconnected against the longest that the system allows."""
    @overload
    def __call__(
        self,
        time_s: _Given | _Rows,
        circuit: _Circuit | Sequence[_Circuit] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckColdLoopImpedance(Formula):
    """Loop impedance read on cold conductors against the rule of thumb."""

    @overload
    def __call__(  # type: ignore
        self,
        loop_impedance_ohm: _Given,
        limit_ohm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Loop impedance read on cold conductors against the rule of thumb."""
    @overload
    def __call__(
        self,
        loop_impedance_ohm: _Given | _Rows,
        limit_ohm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckBondingContinuity(Formula):
    """Resistance of a bonding conductor and its clamps against the trade's figure for a sound one."""

    @overload
    def __call__(  # type: ignore
        self,
        resistance_ohm: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Resistance of a bonding conductor and its clamps against the trade's figure for a sound one."""
    @overload
    def __call__(
        self,
        resistance_ohm: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckFuseForLoad(Formula):
    """Current of an appliance against the fuse of its plug or connection unit."""

    @overload
    def __call__(  # type: ignore
        self,
        load_current_a: _Given,
        fuse_rating_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Current of an appliance against the fuse of its plug or connection unit."""
    @overload
    def __call__(
        self,
        load_current_a: _Given | _Rows,
        fuse_rating_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckFlexForFuse(Formula):
    """Fuse of an appliance against the capacity of its flexible cord where it lies."""

    @overload
    def __call__(  # type: ignore
        self,
        fuse_rating_a: _Given,
        area_mm2: _AreaMm23,
        ambient_c: _Given,
        rulebook: str | Rulebook,
        conductor_max_c: _Given = 60.0,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Fuse of an appliance against the capacity of its flexible cord where it lies."""
    @overload
    def __call__(
        self,
        fuse_rating_a: _Given | _Rows,
        area_mm2: _AreaMm23 | Sequence[_AreaMm23] | npt.NDArray[np.str_] | npt.NDArray[np.object_] | _Array,
        ambient_c: _Given | _Rows,
        rulebook: str | Rulebook,
        conductor_max_c: _Given | _Rows = 60.0,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRcdTypeForLoad(Formula):
    """Type of a residual current device (rank AC 1, A 2, F 3, B 4) against what the electronics of its load need."""

    @overload
    def __call__(  # type: ignore
        self,
        rcd_type: _RcdType,
        load: _Load,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Type of a residual current device (rank AC 1, A 2, F 3, B 4) against what the electronics of its load need."""
    @overload
    def __call__(
        self,
        rcd_type: _RcdType | Sequence[_RcdType] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        load: _Load | Sequence[_Load] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckMaximumDemand(Formula):
    """Demand of the installation against the rating of its supply."""

    @overload
    def __call__(  # type: ignore
        self,
        demand_a: _Given,
        supply_rating_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Demand of the installation against the rating of its supply."""
    @overload
    def __call__(
        self,
        demand_a: _Given | _Rows,
        supply_rating_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRcdRamp(Formula):
    """Residual current at which a device tripped while it rose slowly, against the band of its rated residual current."""

    @overload
    def __call__(  # type: ignore
        self,
        trip_current_ma: _Given,
        residual_current_ma: _Given,
        rcd_type: _RcdType,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Residual current at which a device tripped while it rose slowly, against the band of its rated residual current."""
    @overload
    def __call__(
        self,
        trip_current_ma: _Given | _Rows,
        residual_current_ma: _Given | _Rows,
        rcd_type: _RcdType | Sequence[_RcdType] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRingCapacity(Formula):
    """Capacity of the cable of a ring for socket outlets, 30 or 32 A, against the least that each leg needs."""

    @overload
    def __call__(  # type: ignore
        self,
        capacity_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Capacity of the cable of a ring for socket outlets, 30 or 32 A, against the least that each leg needs."""
    @overload
    def __call__(
        self,
        capacity_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRingLegCurrent(Formula):
    """Current in one leg of a ring against the capacity of its cable."""

    @overload
    def __call__(  # type: ignore
        self,
        leg_current_a: _Given,
        capacity_a: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Current in one leg of a ring against the capacity of its cable."""
    @overload
    def __call__(
        self,
        leg_current_a: _Given | _Rows,
        capacity_a: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckRingFloorArea(Formula):
    """Floor area served by one ring for socket outlets against the usual design rule."""

    @overload
    def __call__(  # type: ignore
        self,
        floor_area_m2: _Given,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Floor area served by one ring for socket outlets against the usual design rule."""
    @overload
    def __call__(
        self,
        floor_area_m2: _Given | _Rows,
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _CheckAdditionalProtection(Formula):
    """Rated residual current of the device that protects a circuit against the highest permitted for its use."""

    @overload
    def __call__(  # type: ignore
        self,
        rcd_residual_ma: _Given,
        use: _Use,
        rulebook: str | Rulebook,
        *,
        rule: str | DecisionRule | None = None,
    ) -> Verdict:
        """Rated residual current of the device that protects a circuit against the highest permitted for its use."""
    @overload
    def __call__(
        self,
        rcd_residual_ma: _Given | _Rows,
        use: _Use | Sequence[_Use] | npt.NDArray[np.str_] | npt.NDArray[np.object_],
        rulebook: str | Rulebook,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
        rule: str | DecisionRule | None = None,
    ) -> Verdicts: ...

@final
class _ProtectiveDevice(Formula):
    """What a protective device does by its standard: bands, conventional currents, operating current in the required times, let-through energy. null: needs maker's figure."""

    def __call__(self, kind: str, rating_a: float, breaking_capacity_a: float | None = None) -> Result:
        """What a protective device does by its standard: bands, conventional currents, operating current in the required times, let-through energy. null: needs maker's figure."""

@final
class _CableSize(Formula):
    """Smallest flat twin cable by each of capacity, voltage drop, loop impedance and fault energy, and which of them ruled; smallest_size gives the size alone, over arrays too."""

    def __call__(
        self,
        method: str,
        rating_a: float,
        design_current_a: float,
        length_m: float,
        correction_factor: float,
        drop_limit_v: float,
        external_ohm: float,
        loop_limit_ohm: float,
        let_through_a2s: float,
    ) -> Result:
        """Smallest flat twin cable by each of capacity, voltage drop, loop impedance and fault energy, and which of them ruled; smallest_size gives the size alone, over arrays too."""

@final
class _MaximumDemand(Formula):
    """Demand of a dwelling by the printed rules of diversity, group by group, and what the supply has to spare."""

    def __call__(self, loads: Sequence[dict[str, Any]], supply_rating_a: float | None = None) -> Result:
        """Demand of a dwelling by the printed rules of diversity, group by group, and what the supply has to spare."""

@final
class _EarthingArrangement(Formula):
    """Supply, earthing and main bonding held against each other: what is proved, what is wrong, what was not looked at."""

    def __call__(
        self,
        arrangement: str | None = None,
        external_ohm: float | None = None,
        electrode_ohm: float | None = None,
        residual_current_ma: float | None = None,
        line_mm2: float | None = None,
        earthing_conductor_mm2: float | None = None,
        bonding_mm2: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        bonding_complete: bool | None = None,
    ) -> Result:
        """Supply, earthing and main bonding held against each other: what is proved, what is wrong, what was not looked at."""

@final
class _ProofOfIsolation(Formula):
    """Record of proving a point dead: which steps were done, which are missing."""

    def __call__(
        self,
        point: str | None = None,
        isolated_at: str | None = None,
        means_of_locking: str | None = None,
        indicator: str | None = None,
        indicator_proved_before: bool | None = None,
        indicator_proved_after: bool | None = None,
        tested_between: Sequence[str] | None = None,
        read_v: Sequence[float] | npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | None = None,
        three_phase: bool | None = None,
    ) -> Result:
        """Record of proving a point dead: which steps were done, which are missing."""

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

@final
class _PointLoads(Formula):
    """Currents in the sections of a radial or a ring with several loads, the voltage drop at each load, and the largest."""

    def __call__(
        self,
        kind: str,
        resistance_mohm_per_m: float,
        loads: Sequence[dict[str, Any]] | None = None,
        ring_length_m: float | None = None,
        spread_current_a: float | None = None,
    ) -> Result:
        """Currents in the sections of a radial or a ring with several loads, the voltage drop at each load, and the largest."""

@final
class _SpurLoad(Formula):
    """A ring with its loads and spurs against the rules: current in each leg against the cable, each spur's cable, fuse and outlets; what was not stated stays undecided."""

    def __call__(
        self,
        ring_length_m: float,
        loads: Sequence[dict[str, Any]],
        rulebook: str | Rulebook,
        capacity_a: float | None = None,
        rating_a: float | None = None,
        spread_current_a: float | None = None,
        floor_area_m2: float | None = None,
        resistance_mohm_per_m: float | None = None,
    ) -> Result:
        """A ring with its loads and spurs against the rules: current in each leg against the cable, each spur's cable, fuse and outlets; what was not stated stays undecided."""

@final
class _RequiredRcdTests(Formula):
    """Which tests of a residual current device an edition asks for, with the limits of each; those not asked for inform."""

    def __call__(
        self,
        residual_current_ma: float,
        rulebook: str | Rulebook,
        rcd_kind: str | None = None,
        rcd_type: str | None = None,
    ) -> Result:
        """Which tests of a residual current device an edition asks for, with the limits of each; those not asked for inform."""

@final
class _ParallelInsulation(Formula):
    """Insulation resistance of parts that are connected together: the whole, each part's share of the leakage, and whether splitting the circuit would let every part keep a limit that the whole fails."""

    def __call__(
        self,
        resistances_mohm: Sequence[float | Measured | Reading | dict[str, Any]] | npt.NDArray[np.floating[Any]],
        names: Sequence[str] | None = None,
        limit_mohm: float | None = None,
    ) -> Result:
        """Insulation resistance of parts that are connected together: the whole, each part's share of the leakage, and whether splitting the circuit would let every part keep a limit that the whole fails."""

@final
class _LocateFault(Formula):
    """Where a fault lies along a cable by several methods: each with its doubt and its weakest link, one joint estimate with the errors they share, a test that names the method that disagrees, and where to search."""

    def __call__(self, cable: dict[str, Any], measurements: Sequence[dict[str, Any]]) -> Result:
        """Where a fault lies along a cable by several methods: each with its doubt and its weakest link, one joint estimate with the errors they share, a test that names the method that disagrees, and where to search."""

@final
class _SwitchedFeedLogic(Formula):
    """Every listed wiring that explains what is live, dead and continuous at an accessory point in each position of its switches; what rules out the others, and the reading that would tell the rest apart best. It proves no conductor dead."""

    def __call__(
        self,
        conductors: Sequence[str],
        switches: Sequence[dict[str, Any]],
        readings: Sequence[dict[str, Any]],
        meter: str | None = None,
        isolation_point: str | None = None,
        listed_count: float | None = None,
    ) -> Result:
        """Every listed wiring that explains what is live, dead and continuous at an accessory point in each position of its switches; what rules out the others, and the reading that would tell the rest apart best. It proves no conductor dead."""

@final
class _JointUnderLoad(Formula):
    """Whether a loose joint explains the voltage lost under load: in the line, in the neutral, before the board, or another cable or more current; with probabilities, the joint's resistance and heat, and the next reading."""

    def __call__(
        self,
        no_load_v: float | Measured | Reading | dict[str, Any] | None,
        load_v: float | Measured | Reading | dict[str, Any] | None,
        current_a: float | Measured | Reading | dict[str, Any] | None,
        circuit_ohm: float | Measured | Reading | dict[str, Any] | None = None,
        supply_ohm: float | Measured | Reading | dict[str, Any] | None = None,
        board_no_load_v: float | Measured | Reading | dict[str, Any] | None = None,
        board_load_v: float | Measured | Reading | dict[str, Any] | None = None,
        line_drop_v: float | Measured | Reading | dict[str, Any] | None = None,
        neutral_drop_v: float | Measured | Reading | dict[str, Any] | None = None,
    ) -> Result:
        """Whether a loose joint explains the voltage lost under load: in the line, in the neutral, before the board, or another cable or more current; with probabilities, the joint's resistance and heat, and the next reading."""

@final
class _UnwantedTrips(Formula):
    """Why a residual current device trips unwanted: standing leakage, a fault of wiring, appliance or neutral, a borrowed neutral, dampness, the device itself, transients; with probabilities and the next reading."""

    def __call__(
        self,
        residual_current_ma: float,
        when: str | None = None,
        leakage_ma: float | Measured | Reading | dict[str, Any] | None = None,
        ramp_ma: float | Measured | Reading | dict[str, Any] | None = None,
        ramp_connected_ma: float | Measured | Reading | dict[str, Any] | None = None,
        insulation_line_mohm: float | Measured | Reading | dict[str, Any] | None = None,
        insulation_neutral_mohm: float | Measured | Reading | dict[str, Any] | None = None,
    ) -> Result:
        """Why a residual current device trips unwanted: standing leakage, a fault of wiring, appliance or neutral, a borrowed neutral, dampness, the device itself, transients; with probabilities and the next reading."""

voltage_drop: Final[_VoltageDrop]
voltage_drop_impedance: Final[_VoltageDropImpedance]
ring_voltage_drop: Final[_RingVoltageDrop]
operating_temperature_factor: Final[_OperatingTemperatureFactor]
design_current: Final[_DesignCurrent]
design_current_three_phase: Final[_DesignCurrentThreePhase]
resistance_at_temperature: Final[_ResistanceAtTemperature]
loop_resistance: Final[_LoopResistance]
length_from_resistance: Final[_LengthFromResistance]
conductor_resistance_20: Final[_ConductorResistance20]
current_capacity: Final[_CurrentCapacity]
installed_capacity: Final[_InstalledCapacity]
flat_twin_capacity: Final[_FlatTwinCapacity]
flat_twin_voltage_drop: Final[_FlatTwinVoltageDrop]
ambient_factor: Final[_AmbientFactor]
grouping_factor: Final[_GroupingFactor]
thermal_insulation_factor: Final[_ThermalInsulationFactor]
required_capacity: Final[_RequiredCapacity]
short_overload_current: Final[_ShortOverloadCurrent]
smallest_size: Final[_SmallestSize]
tabulated_voltage_drop: Final[_TabulatedVoltageDrop]
flex_capacity: Final[_FlexCapacity]
flex_voltage_drop: Final[_FlexVoltageDrop]
awg_diameter: Final[_AwgDiameter]
awg_area: Final[_AwgArea]
awg_gauge: Final[_AwgGauge]
conductor_resistivity: Final[_ConductorResistivity]
resistance_from_resistivity: Final[_ResistanceFromResistivity]
spread_voltage_drop: Final[_SpreadVoltageDrop]
ring_spread_voltage_drop: Final[_RingSpreadVoltageDrop]
ring_assumed_current: Final[_RingAssumedCurrent]
ring_leg_current: Final[_RingLegCurrent]
longest_run_by_drop: Final[_LongestRunByDrop]
longest_ring_by_drop: Final[_LongestRingByDrop]
longest_run_by_loop: Final[_LongestRunByLoop]
longest_ring_by_loop: Final[_LongestRingByLoop]
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
breaker_operating_current: Final[_BreakerOperatingCurrent]
breaker_holding_current: Final[_BreakerHoldingCurrent]
fuse_operating_current: Final[_FuseOperatingCurrent]
conventional_operating_current: Final[_ConventionalOperatingCurrent]
cold_loop_limit: Final[_ColdLoopLimit]
earth_resistance_limit: Final[_EarthResistanceLimit]
touch_voltage: Final[_TouchVoltage]
bonding_resistance_limit: Final[_BondingResistanceLimit]
extraneous_part_resistance: Final[_ExtraneousPartResistance]
protective_conductor_area: Final[_ProtectiveConductorArea]
joint_resistance_under_load: Final[_JointResistanceUnderLoad]
joint_heating: Final[_JointHeating]
residual_share: Final[_ResidualShare]
cooker_demand: Final[_CookerDemand]
heating_demand: Final[_HeatingDemand]
lighting_demand: Final[_LightingDemand]
circuits_demand: Final[_CircuitsDemand]
murray_loop_distance: Final[_MurrayLoopDistance]
murray_loop_distance_unequal: Final[_MurrayLoopDistanceUnequal]
varley_loop_distance: Final[_VarleyLoopDistance]
varley_loop_resistance: Final[_VarleyLoopResistance]
capacitance_break_distance: Final[_CapacitanceBreakDistance]
capacitance_break_distance_sound_core: Final[_CapacitanceBreakDistanceSoundCore]
resistance_short_distance: Final[_ResistanceShortDistance]
resistance_short_distance_both_ends: Final[_ResistanceShortDistanceBothEnds]
reflection_distance: Final[_ReflectionDistance]
velocity_factor_from_length: Final[_VelocityFactorFromLength]
velocity_factor_from_permittivity: Final[_VelocityFactorFromPermittivity]
insulation_of_two: Final[_InsulationOfTwo]
unknown_branch_insulation: Final[_UnknownBranchInsulation]
insulation_of_length: Final[_InsulationOfLength]
insulation_at_temperature: Final[_InsulationAtTemperature]
insulation_test_voltage: Final[_InsulationTestVoltage]
polarisation_index: Final[_PolarisationIndex]
check_adiabatic: Final[_CheckAdiabatic]
check_loop_impedance: Final[_CheckLoopImpedance]
check_insulation: Final[_CheckInsulation]
check_rcd_trip: Final[_CheckRcdTrip]
check_rcd_trip_at: Final[_CheckRcdTripAt]
check_breaking_capacity: Final[_CheckBreakingCapacity]
check_overload: Final[_CheckOverload]
check_overload_operation: Final[_CheckOverloadOperation]
check_touch_voltage: Final[_CheckTouchVoltage]
check_supplementary_bonding: Final[_CheckSupplementaryBonding]
check_earth_electrode: Final[_CheckEarthElectrode]
check_standing_leakage: Final[_CheckStandingLeakage]
check_disconnection_time: Final[_CheckDisconnectionTime]
check_cold_loop_impedance: Final[_CheckColdLoopImpedance]
check_bonding_continuity: Final[_CheckBondingContinuity]
check_fuse_for_load: Final[_CheckFuseForLoad]
check_flex_for_fuse: Final[_CheckFlexForFuse]
check_rcd_type_for_load: Final[_CheckRcdTypeForLoad]
check_maximum_demand: Final[_CheckMaximumDemand]
check_rcd_ramp: Final[_CheckRcdRamp]
check_ring_capacity: Final[_CheckRingCapacity]
check_ring_leg_current: Final[_CheckRingLegCurrent]
check_ring_floor_area: Final[_CheckRingFloorArea]
check_additional_protection: Final[_CheckAdditionalProtection]
protective_device: Final[_ProtectiveDevice]
cable_size: Final[_CableSize]
maximum_demand: Final[_MaximumDemand]
earthing_arrangement: Final[_EarthingArrangement]
proof_of_isolation: Final[_ProofOfIsolation]
ring_tests: Final[_RingTests]
test_record_consistency: Final[_TestRecordConsistency]
point_loads: Final[_PointLoads]
spur_load: Final[_SpurLoad]
required_rcd_tests: Final[_RequiredRcdTests]
parallel_insulation: Final[_ParallelInsulation]
locate_fault: Final[_LocateFault]
switched_feed_logic: Final[_SwitchedFeedLogic]
joint_under_load: Final[_JointUnderLoad]
unwanted_trips: Final[_UnwantedTrips]

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
    "conductor_resistance_20",
    "current_capacity",
    "installed_capacity",
    "flat_twin_capacity",
    "flat_twin_voltage_drop",
    "ambient_factor",
    "grouping_factor",
    "thermal_insulation_factor",
    "required_capacity",
    "short_overload_current",
    "smallest_size",
    "tabulated_voltage_drop",
    "flex_capacity",
    "flex_voltage_drop",
    "awg_diameter",
    "awg_area",
    "awg_gauge",
    "conductor_resistivity",
    "resistance_from_resistivity",
    "spread_voltage_drop",
    "ring_spread_voltage_drop",
    "ring_assumed_current",
    "ring_leg_current",
    "longest_run_by_drop",
    "longest_ring_by_drop",
    "longest_run_by_loop",
    "longest_ring_by_loop",
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
    "breaker_operating_current",
    "breaker_holding_current",
    "fuse_operating_current",
    "conventional_operating_current",
    "cold_loop_limit",
    "earth_resistance_limit",
    "touch_voltage",
    "bonding_resistance_limit",
    "extraneous_part_resistance",
    "protective_conductor_area",
    "joint_resistance_under_load",
    "joint_heating",
    "residual_share",
    "cooker_demand",
    "heating_demand",
    "lighting_demand",
    "circuits_demand",
    "murray_loop_distance",
    "murray_loop_distance_unequal",
    "varley_loop_distance",
    "varley_loop_resistance",
    "capacitance_break_distance",
    "capacitance_break_distance_sound_core",
    "resistance_short_distance",
    "resistance_short_distance_both_ends",
    "reflection_distance",
    "velocity_factor_from_length",
    "velocity_factor_from_permittivity",
    "insulation_of_two",
    "unknown_branch_insulation",
    "insulation_of_length",
    "insulation_at_temperature",
    "insulation_test_voltage",
    "polarisation_index",
    "check_adiabatic",
    "check_loop_impedance",
    "check_insulation",
    "check_rcd_trip",
    "check_rcd_trip_at",
    "check_breaking_capacity",
    "check_overload",
    "check_overload_operation",
    "check_touch_voltage",
    "check_supplementary_bonding",
    "check_earth_electrode",
    "check_standing_leakage",
    "check_disconnection_time",
    "check_cold_loop_impedance",
    "check_bonding_continuity",
    "check_fuse_for_load",
    "check_flex_for_fuse",
    "check_rcd_type_for_load",
    "check_maximum_demand",
    "check_rcd_ramp",
    "check_ring_capacity",
    "check_ring_leg_current",
    "check_ring_floor_area",
    "check_additional_protection",
    "protective_device",
    "cable_size",
    "maximum_demand",
    "earthing_arrangement",
    "proof_of_isolation",
    "ring_tests",
    "test_record_consistency",
    "point_loads",
    "spur_load",
    "required_rcd_tests",
    "parallel_insulation",
    "locate_fault",
    "switched_feed_logic",
    "joint_under_load",
    "unwanted_trips",
]

# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
from collections.abc import Iterator, Sequence
from typing import Any, ClassVar, Literal, NoReturn, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import Accuracy, Instrument, Reading, Verdict

_Numbers: TypeAlias = npt.NDArray[np.floating[Any]] | npt.NDArray[np.integer[Any]] | Sequence[float]
_Column: TypeAlias = npt.NDArray[np.float64]
_Codes: TypeAlias = npt.NDArray[np.int8]
_Mask: TypeAlias = npt.NDArray[np.bool_]

class Readings:
    """One argument of a check over many rows, with what is known of the instrument."""

    values: _Column
    states: _Codes | None
    standard_uncertainty: _Column | None
    accuracy: Accuracy | None
    instrument: str | Instrument
    exact: bool
    def __init__(
        self,
        values: _Numbers | Sequence[float | Reading | None] | npt.NDArray[np.object_],
        *,
        states: Sequence[str] | Sequence[int] | npt.NDArray[np.str_] | npt.NDArray[np.integer[Any]] | None = None,
        standard_uncertainty: float | _Numbers | None = None,
        accuracy: Accuracy | None = None,
        instrument: str | Instrument = "",
        exact: bool = False,
    ) -> None: ...

class Verdicts:
    """The outcomes of a check over many rows, in columns; v[i] is the Verdict of one row, with its words and worked steps."""

    outcomes: ClassVar[tuple[str, ...]]
    reasons: ClassVar[tuple[str, ...]]
    shape: tuple[int, ...]
    assumed: bool
    outcome: _Codes
    reason: _Codes
    plain: _Codes
    value: _Column
    lower: _Column
    upper: _Column
    margin: _Column
    standard_uncertainty: _Column
    probability: _Column
    @property
    def check(self) -> str: ...
    @property
    def rule(self) -> str: ...
    @property
    def limit(self) -> _Column: ...
    @property
    def expanded_uncertainty(self) -> _Column: ...
    @property
    def passed(self) -> _Mask: ...
    @property
    def failed(self) -> _Mask: ...
    @property
    def undecided(self) -> _Mask: ...
    def words(self, column: Literal["outcome", "reason", "plain"]) -> npt.NDArray[np.str_]: ...
    def count(self) -> dict[str, int]: ...
    def to_dict(self) -> dict[str, npt.NDArray[Any]]: ...
    def __len__(self) -> int: ...
    def __bool__(self) -> NoReturn: ...
    def __getitem__(self, index: int | tuple[int, ...]) -> Verdict: ...
    def __iter__(self) -> Iterator[Verdict]: ...

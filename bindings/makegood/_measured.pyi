# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
from collections.abc import Iterator
from typing import Any

import numpy as np
import numpy.typing as npt

from ._core import Measured, _Array

class MeasuredArray:
    """Columns of numbers with their named error sources."""

    value: npt.NDArray[np.float64]
    sources: dict[str, npt.NDArray[np.float64]]
    assumed: bool
    def __init__(self, value: float | _Array, standard_uncertainty: float | _Array, source: str = "stated", dof: float = ...) -> None: ...
    @property
    def standard_uncertainty(self) -> npt.NDArray[np.float64]: ...
    @property
    def expanded_uncertainty(self) -> npt.NDArray[np.float64]: ...
    @property
    def shape(self) -> tuple[int, ...]: ...
    @property
    def ndim(self) -> int: ...
    @property
    def size(self) -> int: ...
    def __len__(self) -> int: ...
    def __getitem__(self, index: Any) -> Any: ...
    def __iter__(self) -> Iterator[Measured | MeasuredArray]: ...

# SPDX-License-Identifier: MIT
"""Arrays of numbers with named error sources. Loaded when a Measured is first made of arrays, or meets one."""

from __future__ import annotations

from typing import Any

import numpy as np

from . import _core, _rows, _slow


class MeasuredArray:
    """Columns of numbers with their named error sources: what Measured(array, array) makes, and what formulas return for it.

    value: the numbers. sources: for each source a column, its standard uncertainties with sign in the unit of the value. A source that
    two arrays name is common to them row by row. m[i] is the Measured of one row.
    """

    def __init__(self, value: Any, standard_uncertainty: Any, source: str = "stated", dof: float = np.inf) -> None:
        v, u = np.asarray(value, dtype=float), np.asarray(standard_uncertainty, dtype=float)
        if not isinstance(source, str):
            raise TypeError(f"Measured: source must be a text, not {type(source).__name__}")
        if not dof > 0:
            raise _core.RangeError("Measured: dof must be above 0")
        if not (u[~np.isnan(u)] >= 0).all():
            raise _core.RangeError("Measured: standard_uncertainty must be 0 or more")
        try:
            v, u = np.broadcast_arrays(v, u)
        except ValueError:
            raise ValueError(f"Measured: the shapes do not fit together: value {v.shape}, standard_uncertainty {u.shape}") from None
        self._fill(v, {source: u}, {source: float(dof)}, False)

    def _fill(self, value: Any, parts: dict[str, Any], dofs: dict[str, float], assumed: bool) -> None:
        self.value, self.sources, self._dofs, self.assumed = value, parts, dofs, assumed

    @classmethod
    def _made(cls, value: Any, parts: dict[str, Any], dofs: dict[str, float], assumed: bool) -> MeasuredArray:
        made = object.__new__(cls)
        made._fill(value, parts, dofs, assumed)
        return made

    @property
    def standard_uncertainty(self) -> Any:
        square = np.zeros(self.value.shape)
        for name in sorted(self.sources):  # in the order in which one row adds them
            square += self.sources[name] * self.sources[name]
        return np.sqrt(square)

    @property
    def expanded_uncertainty(self) -> Any:
        return 2.0 * self.standard_uncertainty

    @property
    def shape(self) -> tuple[int, ...]:
        return self.value.shape

    @property
    def ndim(self) -> int:
        return self.value.ndim

    @property
    def size(self) -> int:
        return self.value.size

    def __len__(self) -> int:
        return len(self.value)

    def __getitem__(self, index: Any) -> Any:
        value = self.value[index]
        parts = {name: column[index] for name, column in self.sources.items()}
        if np.ndim(value):
            return MeasuredArray._made(value, parts, self._dofs, self.assumed)
        return _core.Measured._of(float(value), [(n, float(u), self._dofs[n]) for n, u in parts.items()], self.assumed)

    def __iter__(self) -> Any:
        return (self[i] for i in range(len(self)))

    def __repr__(self) -> str:
        return f"<Measured array of {' x '.join(map(str, self.shape))}; sources: {', '.join(self.sources) or 'none'}>"

    __array_ufunc__ = None  # NumPy must not take it apart


def call(door: Any, values: list[Any], errors: str, threads: int) -> MeasuredArray:
    """A formula over columns of which some have uncertainties: first order, by exact slopes, row by row."""
    plain = [v.value if isinstance(v, (MeasuredArray, _core.Measured)) else v for v in values]
    for i, v in enumerate(plain):
        if isinstance(v, (_core.Reading, _rows.Readings, dict)):
            raise _slow._type_error(door, i, v)
    value, slopes = _rows.slopes(door, plain, threads, errors)
    parts: dict[str, Any] = {}
    dofs: dict[str, float] = {}
    assumed = False
    for a, v in zip(_slow._arguments(door), values):
        if isinstance(v, MeasuredArray):
            own = [(name, u, v._dofs[name]) for name, u in v.sources.items()]
        elif isinstance(v, _core.Measured):
            own = v._parts
        else:
            continue
        assumed = assumed or (v.assumed and bool(own))
        slope = slopes[a["name"]]
        for name, u, dof in own:
            if name in parts:
                parts[name] = parts[name] + slope * u
                if dofs[name] != dof:
                    dofs[name] = float("nan")
            else:
                parts[name] = slope * u
                dofs[name] = dof
    return MeasuredArray._made(value, parts, dofs, assumed)

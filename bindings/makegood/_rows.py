# SPDX-License-Identifier: MIT
"""Checks over arrays: columns of readings in, columns of outcomes out. Loaded when an array first goes into a check."""

from __future__ import annotations

from typing import Any

import numpy as np

from . import _core, _slow


class Readings:
    """One argument of a check over many rows, with what is known of the instrument.

    values: numbers; NaN, None or a masked element: not measured. A list may also hold Reading objects, without accuracies of their own.
    states: for each row "value", "above", "below", "no_trip", "not_measured" or "pending" (or its number, 0 to 5).
    standard_uncertainty: for each row, in the unit of the values. accuracy: what is stated of the instrument, for all rows.
    instrument: its name, or an Instrument: its statement for what the check reads, by range row by row.
    exact: numbers without doubt. Nothing of these: the worst case of the instrument's class, as for a bare number.
    """

    def __init__(self, values: Any, *, states: Any = None, standard_uncertainty: Any = None, accuracy: Any = None, instrument: Any = "", exact: bool = False) -> None:
        if sum((standard_uncertainty is not None, accuracy is not None, bool(exact))) > 1:
            raise TypeError("Readings: give one of standard_uncertainty, accuracy and exact")
        if not isinstance(instrument, (str, _core.Instrument)):
            raise TypeError(f"Readings: instrument is a name or an Instrument, not {type(instrument).__name__}")
        if accuracy is not None and not isinstance(accuracy, _core.Accuracy):
            raise TypeError(f"Readings: accuracy must be an Accuracy, not {type(accuracy).__name__}")
        self.values, own = _numbers(values)
        self.states = own if states is None else _states(states)
        self.standard_uncertainty = None if standard_uncertainty is None else np.asarray(standard_uncertainty, dtype=float)
        self.accuracy = accuracy
        self.instrument = instrument
        self.exact = bool(exact)

    def __repr__(self) -> str:
        return f"<makegood readings: {self.values.size}>"


def _numbers(values: Any) -> tuple[Any, Any]:
    """Values and states; the states are None where every row is a number or is missing."""
    if isinstance(values, np.ma.MaskedArray):
        values = values.astype(float).filled(np.nan)
    a = np.asarray(values)
    if a.dtype.kind in "fiu":
        return a.astype(float, copy=False), None
    if a.dtype.kind != "O":
        raise TypeError(f"an array of {a.dtype} holds no readings")
    numbers = np.full(a.shape, np.nan)
    states = np.zeros(a.shape, dtype=np.int8)
    for i, x in np.ndenumerate(a):
        if x is None:
            continue
        if isinstance(x, _core.Reading):
            if x.instrument:
                raise TypeError("a Reading in a list names no instrument: give Readings(..., accuracy=, instrument=) for all rows")
            states[i] = _core.states.index(x.state)
            if x.number is not None:
                numbers[i] = x.number
        elif isinstance(x, (int, float, np.floating, np.integer)) and not isinstance(x, bool):
            numbers[i] = x
        else:
            raise TypeError(f"a row of readings is a number, a Reading or None, not {type(x).__name__}")
    return numbers, states


def _states(states: Any) -> Any:
    a = np.asarray(states)
    if a.dtype.kind in "iu":
        if a.size and not (0 <= a.min() and a.max() < len(_core.states)):
            raise ValueError(f"a state is a number from 0 to {len(_core.states) - 1}")
        return a.astype(np.int8)
    codes = {word: code for code, word in enumerate(_core.states)}
    try:
        return np.array([codes[w] for w in a.ravel().tolist()], dtype=np.int8).reshape(a.shape)
    except (KeyError, TypeError):
        raise ValueError("a state is one of " + ", ".join(f'"{w}"' for w in _core.states)) from None


class Verdicts:
    """The outcomes of a check over many rows, in columns; v[i] is the Verdict of one row, with its words and worked steps.

    outcome, reason, plain: numbers; their words are `Verdicts.outcomes` and `Verdicts.reasons`. value, limit, lower, upper, margin,
    standard_uncertainty, probability: NaN where there is none.
    """

    outcomes = _core.outcomes
    reasons = _core.reasons

    def __init__(self, door: Any, arguments: list[Any], book: Any, shape: tuple[int, ...], assumed: bool, columns: dict[str, Any], rule: Any = None) -> None:
        self._door, self._arguments, self._book, self._rule = door, arguments, book, rule
        self.shape = shape
        self.assumed = assumed
        for name, column in columns.items():
            setattr(self, name, column.reshape(shape))

    @property
    def check(self) -> str:
        return self._door.__name__

    @property
    def rule(self) -> str:
        """The decision rule, as it can be given again."""
        return "default" if self._rule is None else self._rule.name

    @property
    def limit(self) -> Any:
        """The limit; where there are two, the nearer."""
        nearer_low = self.value - self.lower < self.upper - self.value
        return np.where(np.isnan(self.lower), self.upper, np.where(np.isnan(self.upper) | nearer_low, self.lower, self.upper))

    @property
    def expanded_uncertainty(self) -> Any:
        return 2.0 * self.standard_uncertainty

    @property
    def passed(self) -> Any:
        return self.outcome == 0

    @property
    def failed(self) -> Any:
        return self.outcome == 1

    @property
    def undecided(self) -> Any:
        return self.outcome == 2

    def words(self, column: str) -> Any:
        """The column "outcome", "reason" or "plain" as texts."""
        names = np.array(self.reasons if column == "reason" else self.outcomes)
        if column not in ("outcome", "reason", "plain"):
            raise ValueError('words of "outcome", "reason" or "plain"')
        text = names[getattr(self, column)]
        return np.where(np.isnan(self.value), "", text) if column == "plain" else text

    def count(self) -> dict[str, int]:
        """How many rows pass, fail, are undecided."""
        return {word: int(np.count_nonzero(self.outcome == code)) for code, word in enumerate(self.outcomes)}

    def to_dict(self) -> dict[str, Any]:
        """Flat columns with words for codes: what a data frame takes."""
        d = {name: self.words(name).ravel() for name in ("outcome", "reason", "plain")}
        for name in ("value", "limit", "lower", "upper", "margin", "standard_uncertainty", "probability"):
            d[name] = getattr(self, name).ravel()
        return d

    def __len__(self) -> int:
        return self.shape[0] if self.shape else 1

    def __bool__(self) -> bool:
        raise TypeError("verdicts have three outcomes and no truth value: look at .passed, .failed, .undecided or .count()")

    def __getitem__(self, index: Any) -> Any:
        """The verdict of one row, made once more from its readings."""
        flat = np.arange(int(np.prod(self.shape))).reshape(self.shape)[index]
        if np.ndim(flat):
            raise TypeError("one row at a time: an index for each dimension; for parts of columns index the columns")
        return self._door._judge([_row(a, int(flat)) for a in self._arguments], self._book, self._rule)

    def __iter__(self) -> Any:
        return (self[i] for i in np.ndindex(self.shape))

    def __repr__(self) -> str:
        counts = self.count()
        return f"Verdicts({self.check}: " + ", ".join(f"{counts[w]} {w}" for w in self.outcomes) + ")"


class _Words:
    """A column of words: the indices of their rows, and the words."""

    def __init__(self, indices: Any, words: list[str]) -> None:
        self.values, self.words = indices, words


def _row(argument: Any, i: int) -> Any:
    """One row of an argument, as a check of one row takes it."""
    if isinstance(argument, _Words):
        return argument.words[int(argument.values[i])]
    if type(argument).__name__ == "MeasuredArray":
        return argument[i] if not np.isnan(argument.value[i]) else _core.Reading.not_measured()
    if not isinstance(argument, Readings):
        return argument
    state = "value" if argument.states is None else _core.states[argument.states[i]]
    number = float(argument.values[i])
    if state == "not_measured" or (state == "value" and np.isnan(number)):
        return _core.Reading.not_measured()
    if state == "pending":
        return _core.Reading.pending()
    if state == "no_trip":
        return _core.Reading.no_trip()
    if argument.exact and state == "value":
        return _core.Measured.exact(number)
    accuracy = argument.accuracy
    if argument.standard_uncertainty is not None:
        accuracy = _core.Accuracy(standard_uncertainty=float(argument.standard_uncertainty[i]))
    if accuracy is None and isinstance(argument.instrument, _core.Instrument):
        return _core.Reading._of_instrument(state, number, argument.instrument)
    name = argument.instrument if isinstance(argument.instrument, str) else argument.instrument.id
    return _core.Reading._of(state, number, accuracy, name)


def is_column(value: Any) -> bool:
    return isinstance(value, (list, Readings)) or bool(getattr(value, "ndim", 0))  # arrays of Measured have one, too


def check(door: Any, values: list[Any], book: Any, errors: str, threads: int, rule: Any = None) -> Verdicts:
    """The check over all rows of its columns, whose shapes are broadcast."""
    described = _slow._arguments(door)
    arguments: list[Any] = []
    for i, (a, v) in enumerate(zip(described, values)):
        if not is_column(v):
            arguments.append(v)
        elif "one_of" in a:
            if isinstance(v, Readings) or type(v).__name__ == "MeasuredArray":
                raise _slow._type_error(door, i, v)
            arguments.append(_Words(_slow._keys(door, i, v), a["one_of"]))
        elif isinstance(v, Readings) or type(v).__name__ == "MeasuredArray":
            arguments.append(v)
        else:
            try:
                arguments.append(Readings(v))
            except TypeError as e:
                raise TypeError(f"{door.__name__}: {a['name']}: {e}") from None
    columns = [(a["name"], c) for a, c in zip(described, arguments) if isinstance(c, (Readings, _Words)) or type(c).__name__ == "MeasuredArray"]
    parts = ("values", "value", "states", "standard_uncertainty")
    try:
        shape = np.broadcast_shapes(*(np.shape(getattr(c, p)) for _, c in columns for p in parts if getattr(c, p, None) is not None))
    except ValueError:
        shapes = ", ".join(f"{name} {np.shape(getattr(c, 'values', getattr(c, 'value', None)))}" for name, c in columns)
        raise ValueError(f"{door.__name__}: the shapes do not fit together: {shapes}") from None

    def flat(x: Any, dtype: Any = float) -> Any:
        return None if x is None else np.ascontiguousarray(np.broadcast_to(x, shape), dtype=dtype).ravel()

    rows: list[Any] = []
    given: list[Any] = []
    for c in arguments:
        if isinstance(c, _Words):
            c = _Words(flat(c.values), c.words)
            given.append((c.values, None, None, None, "", True))
        elif isinstance(c, Readings):
            kept = object.__new__(Readings)
            kept.__dict__.update(c.__dict__, values=flat(c.values), states=flat(c.states, np.int8), standard_uncertainty=flat(c.standard_uncertainty))
            c = kept
            given.append((c.values, c.states, c.standard_uncertainty, c.accuracy, c.instrument, c.exact))
        elif type(c).__name__ == "MeasuredArray":
            # a row that was not measured has no uncertainty either
            there = ~np.isnan(flat(c.value))
            sources = {n: np.where(there, flat(u), 0.0) for n, u in c.sources.items()}
            c = type(c)._made(flat(c.value), sources, c._dofs, c.assumed)
            listed = [(n, u, c._dofs[n]) for n, u in sources.items()]
            given.append((c.value, None, listed or None, None, "", not listed, c.assumed))
        else:
            given.append(c)
        rows.append(c)
    decided = rule if isinstance(rule, _core.DecisionRule) else _core.DecisionRule(rule or "default")
    assumed, result = door._judge_rows(given, book, threads, errors == "nan", decided)
    return Verdicts(door, rows, book, shape, assumed, result, decided)


def slopes(door: Any, values: list[Any], threads: int, errors: str) -> tuple[Any, dict[str, Any]]:
    """Values of a formula over arrays, and its derivatives by each argument."""
    arrays = _slow._columns(door, values)[0]
    try:
        shape = np.broadcast_shapes(*(np.shape(a) for a in arrays))
    except ValueError:
        shapes = ", ".join(f"{n} {np.shape(a)}" for n, a in zip(door.argument_names, arrays) if np.shape(a))
        raise ValueError(f"{door.__name__}: the shapes do not fit together: {shapes}") from None
    rows = int(np.prod(shape))
    flat = [np.ascontiguousarray(np.broadcast_to(a, shape) if np.shape(a) else np.reshape(a, 1), dtype=float).ravel() for a in arrays]
    value, slopes_ = door._slopes(flat, rows, threads, errors == "nan")
    named = {a["name"]: s.reshape(shape) for a, s in zip(_slow._arguments(door), slopes_) if "one_of" not in a}
    return value.reshape(shape), named

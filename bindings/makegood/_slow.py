# SPDX-License-Identifier: MIT
"""What the fast call does not take: arrays, numbers with doubt, readings, checks and models."""

from __future__ import annotations

import sys
from typing import Any

from . import _core

_UFUNC_WORDS = frozenset(("out", "where", "casting", "order", "dtype", "subok", "signature"))
_MISSING: Any = object()


class Result:
    """The result of a model: its fields as attributes, and as a mapping by `to_dict()`."""

    def __init__(self, fields: dict[str, Any]) -> None:
        self.__dict__.update(fields)

    def to_dict(self) -> dict[str, Any]:
        return dict(self.__dict__)

    def __repr__(self) -> str:
        return "Result(" + ", ".join(f"{k}={v!r}" for k, v in self.__dict__.items()) + ")"

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Result) and self.__dict__ == other.__dict__


_described: dict[Any, list[dict[str, Any]]] = {}


def _arguments(door: Any) -> list[dict[str, Any]]:
    """The arguments as the descriptor says them, kept: an array call must not describe its formula anew."""
    found = _described.get(door)
    if found is None:
        found = _described[door] = door.describe()["arguments"]
    return found


def signature(door: Any) -> Any:
    import inspect

    empty = inspect.Parameter.empty
    parameters = []
    described = door.describe()
    for a in described["arguments"]:
        default = a["default"] if "default" in a else (None if a.get("optional") else empty)
        parameters.append(inspect.Parameter(a["name"], inspect.Parameter.POSITIONAL_OR_KEYWORD, default=default))
    if door.kind == "check":
        parameters.append(inspect.Parameter("rule", inspect.Parameter.KEYWORD_ONLY, default=None))
        place = next((i for i, p in enumerate(parameters) if p.default is not empty), len(parameters) - 1)
        default = empty if described["limit"] else None
        parameters.insert(place, inspect.Parameter("rulebook", inspect.Parameter.POSITIONAL_OR_KEYWORD, default=default))
    return inspect.Signature(parameters)


def _nearest(word: str, names: Any) -> str:
    import difflib

    near = difflib.get_close_matches(word, list(names), n=1)
    return f'; did you mean "{near[0]}"?' if near else ""


def _bind(door: Any, names: tuple[str, ...], args: tuple[Any, ...], kwargs: dict[str, Any]) -> list[Any]:
    """Arguments in order; _MISSING where none was given."""
    if len(args) > len(names):
        raise TypeError(f"{door.__name__}() takes at most {len(names)} arguments ({len(args)} given)")
    values = list(args) + [_MISSING] * (len(names) - len(args))
    for key, value in kwargs.items():
        if key not in names:
            raise TypeError(f"{door.__name__}() got an unexpected argument '{key}'{_nearest(key, names)}")
        i = names.index(key)
        if values[i] is not _MISSING:
            raise TypeError(f"{door.__name__}() got multiple values for argument '{key}'")
        values[i] = value
    return values


def _defaults(door: Any, values: list[Any]) -> list[Any]:
    described = _arguments(door)
    for i, a in enumerate(described):
        if values[i] is _MISSING:
            if "default" not in a:
                raise TypeError(f"{door.__name__}() missing argument '{a['name']}'")
            values[i] = a["default"]
    return values


def _type_error(door: Any, i: int, value: Any, what: str | None = None) -> TypeError:
    a = _arguments(door)[i]
    if "one_of" in a:
        want = "one of " + ", ".join(f'"{w}"' for w in a["one_of"])
    else:
        want = "a number" + (f" in {a['unit']}" if a["unit"] else "")
    return TypeError(f"{door.__name__}: {a['name']} must be {want}, not {what or type(value).__name__}")


def _is_scalar(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def _numpy_scalar(door: Any, i: int, value: Any) -> Any:
    """NumPy's scalars as Python's; anything else as it is."""
    np = sys.modules.get("numpy")
    if np is None or not isinstance(value, np.generic):
        return value
    if isinstance(value, (np.bool_, np.complexfloating, np.bytes_)) or value.dtype.kind not in "fiuU":
        raise _type_error(door, i, value)
    return value.item() if value.dtype.kind != "f" else float(value)


def call(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    """The whole of a call that the fast path handed over."""
    if door.kind == "model":
        return _model(door, args, kwargs)
    errors, threads = _how(kwargs)
    if door.kind == "check":
        return _check(door, args, kwargs, errors, threads)
    order = kwargs.pop("order") if isinstance(kwargs.get("order"), int) else _MISSING  # a number: of uncertainty; a letter: of an array's memory
    ufunc_words = {k: kwargs.pop(k) for k in list(kwargs) if k in _UFUNC_WORDS}
    values = _bind(door, door.argument_names, args, kwargs)
    values = [v if v is _MISSING else _numpy_scalar(door, i, v) for i, v in enumerate(values)]
    values = _defaults(door, values)
    if any(type(v).__name__ == "MeasuredArray" for v in values) or (
        any(isinstance(v, _core.Measured) for v in values) and any(getattr(v, "ndim", 0) or isinstance(v, list) for v in values)
    ):
        if ufunc_words or order not in (_MISSING, 1):
            raise TypeError(f"{door.__name__}: out=, where=, order= ... are not for arrays of Measured")
        from . import _measured as arrays

        return arrays.call(door, values, errors, threads)
    if any(isinstance(v, _core.Measured) for v in values):
        if ufunc_words or errors != "raise":
            raise TypeError(f"{door.__name__}: out=, where=, errors= ... are for arrays, not for Measured")
        return _measured(door, values, 1 if order is _MISSING else order)
    if order is not _MISSING:
        raise TypeError(f"{door.__name__}: order= is for Measured")
    for i, v in enumerate(values):
        if isinstance(v, _core.Reading):
            raise _type_error(door, i, v, "Reading: that goes into a check")
        if isinstance(v, dict):
            raise _type_error(door, i, v)
    if not ufunc_words and errors == "raise" and all(_is_scalar(v) or isinstance(v, str) for v in values):
        return door(*values)
    return _array(door, values, ufunc_words, errors, threads)


def _how(kwargs: dict[str, Any]) -> tuple[str, int]:
    """What every array call takes besides its arguments: errors="raise" or "nan", threads=1 or more."""
    errors = kwargs.pop("errors", "raise")
    if errors not in ("raise", "nan"):
        raise ValueError('errors is "raise" or "nan"')
    threads = kwargs.pop("threads", 1)
    if not isinstance(threads, int) or isinstance(threads, bool) or not 1 <= threads <= 1024:
        raise ValueError("threads is a whole number from 1 to 1024")
    return errors, threads


class CurvatureWarning(UserWarning):
    """The formula is curved within the uncertainty of its arguments: the second order of uncertainty matters."""


def _measured(door: Any, values: list[Any], order: int) -> Any:
    """order=1: first order; 2: with the second order of GUM 5.1.2, and a warning where it matters."""
    if order not in (1, 2):
        raise ValueError("order is 1 or 2")
    described = _arguments(door)
    plain = []
    for i, (a, v) in enumerate(zip(described, values)):
        if "one_of" in a:
            plain.append(float(door._key(i, v)))
        elif isinstance(v, _core.Measured):
            plain.append(v)
        elif _is_scalar(v):
            plain.append(float(v))
        else:
            raise TypeError(f"{door.__name__}: {a['name']}: a Measured goes with numbers and other Measured, not {type(v).__name__}")
    if order == 1:
        return door._measured(plain, 1)
    result, matters, word = door._measured(plain, 2)
    if matters:
        import warnings

        warnings.warn(f"{door.__name__}: {word}", CurvatureWarning, stacklevel=3)
    return result


def _drawn(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any], front_door: bool) -> Any:
    if door.kind != "formula":
        raise TypeError(f"{door.__name__} is a {door.kind}: only a formula is drawn; a verdict carries its own uncertainty")

    def whole(name: str, default: int, low: int, high: int) -> int:
        x = kwargs.pop(name, default)
        if not isinstance(x, int) or isinstance(x, bool) or not low <= x <= high:
            raise ValueError(f"{name} is a whole number from {low} to {high}")
        return x

    trials = 0 if kwargs.get("trials") is None else whole("trials", 0, 1000, 10**9)
    kwargs.pop("trials", None)
    digits = whole("digits", 2, 1, 6)
    seed = whole("seed", 1, 0, 2**64 - 1)
    threads = whole("threads", 1, 1, 1024)
    most = whole("most", 5_000_000, 20_480, 10**9)
    probability, share = kwargs.pop("probability", 0.95), kwargs.pop("refused_share", 0.001)
    for name, x in (("probability", probability), ("refused_share", share)):
        if not _is_scalar(x) or not 0 <= x < 1:
            raise ValueError(f"{name} is a number from 0 to below 1")
    values = _defaults(door, _bind(door, door.argument_names, args, kwargs))
    given = []
    for i, (a, v) in enumerate(zip(_arguments(door), values)):
        v = _numpy_scalar(door, i, v)
        if "one_of" in a:
            given.append(float(door._key(i, v)))
        elif "one_of" not in a and isinstance(v, (_core.Measured, _core.Distribution)):
            given.append(v)
        elif "one_of" not in a and _is_scalar(v):
            given.append(float(v))
        else:
            raise _type_error(door, i, v)
    return door._monte_carlo(given, trials, digits, float(probability), seed, threads, most, float(share), front_door)


def monte_carlo(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    return _drawn(door, args, kwargs, False)


def propagate(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    return _drawn(door, args, kwargs, True)


def _columns(door: Any, values: list[Any]) -> tuple[list[Any], Any]:
    """Every argument as an array of numbers (a word as the index of its row), and the mask of all of them together."""
    import numpy as np

    arrays: list[Any] = []
    mask: Any = None
    for i, (a, v) in enumerate(zip(_arguments(door), values)):
        if "one_of" in a:
            arrays.append(_keys(door, i, v))
            continue
        if isinstance(v, (str, bytes, bytearray, bool, complex)) or v is None:
            raise _type_error(door, i, v)
        if isinstance(v, np.ma.MaskedArray):
            mask = np.ma.getmaskarray(v) if mask is None else np.ma.mask_or(mask, np.ma.getmaskarray(v), shrink=False)
            v = v.astype(float).filled(np.nan)
        elif not hasattr(v, "__array_ufunc__") or isinstance(v, np.ndarray):
            v = np.asarray(v)
        kind = getattr(getattr(v, "dtype", None), "kind", "f")
        if kind not in "fiu":
            raise _type_error(door, i, v, f"an array of {v.dtype}")
        arrays.append(v)
    return arrays, mask


def _array(door: Any, values: list[Any], ufunc_words: dict[str, Any], errors: str, threads: int = 1) -> Any:
    import numpy as np

    arrays, mask = _columns(door, values)
    before = door._threads(threads)
    try:
        result = door._ufunc(errors == "nan")(*arrays, **ufunc_words)
    except ValueError as e:
        if isinstance(e, _core.Error) or "broadcast" not in str(e):
            raise
        shapes = ", ".join(f"{a['name']} {np.shape(v)}" for a, v in zip(_arguments(door), arrays) if np.shape(v))
        raise ValueError(f"{door.__name__}: the shapes do not fit together: {shapes}") from None
    finally:
        door._threads(before)
    if mask is not None:
        return np.ma.MaskedArray(result, mask=np.broadcast_to(mask, np.shape(result)))
    return float(result) if isinstance(result, np.generic) else result


def _keys(door: Any, i: int, value: Any) -> Any:
    """Words as the indices of their rows: one word, a list, or a categorical column."""
    if isinstance(value, (str, int, float)) and not isinstance(value, bool):
        return float(door._key(i, value))
    import numpy as np

    words = np.asarray(value)
    if words.dtype.kind in "iuf":  # sizes and ratings: words that are numbers
        numbers, back = np.unique(words.ravel(), return_inverse=True)
        rows = np.array([door._key(i, float(w)) for w in numbers], dtype=float)
        return rows[back].reshape(words.shape)
    if words.dtype.kind not in "UO":
        raise _type_error(door, i, value)
    different, back = np.unique(words.astype(object).ravel(), return_inverse=True)
    for w in different:
        if not isinstance(w, str):
            raise _type_error(door, i, w)
    rows = np.array([door._key(i, w) for w in different], dtype=float)
    return rows[back].reshape(words.shape)


_parameters: dict[Any, list[tuple[str, Any]]] = {}


def _check_parameters(door: Any) -> list[tuple[str, Any]]:
    """Names and defaults of a check with its rulebook, in order; _MISSING: no default."""
    found = _parameters.get(door)
    if found is None:
        found = [(p.name, _MISSING if p.default is p.empty else p.default) for p in signature(door).parameters.values() if p.kind != p.KEYWORD_ONLY]
        _parameters[door] = found
    return found


def _check(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any], errors: str, threads: int) -> Any:
    parameters = _check_parameters(door)
    rule = kwargs.pop("rule", None)
    values = _bind(door, tuple(name for name, _ in parameters), args, kwargs)
    book = None
    rest = []
    for (name, default), v in zip(parameters, values):
        if v is _MISSING:
            if default is _MISSING:
                raise TypeError(f"{door.__name__}() missing argument '{name}'")
            v = default if name == "rulebook" or isinstance(default, str) else _core.Measured.exact(default)
        if name == "rulebook":
            book = v
        else:
            rest.append(v)
    rest = [_numpy_scalar(door, i, v) for i, v in enumerate(rest)]
    for i, v in enumerate(rest):
        if isinstance(v, (tuple, set, bytes, bool, complex)):
            raise _type_error(door, i, v)
    if any(isinstance(v, list) or getattr(v, "ndim", 0) or type(v).__name__ in ("Readings", "MeasuredArray") for v in rest):
        from . import _rows

        return _rows.check(door, rest, book, errors, threads, rule)
    return door._judge(rest, book, rule)


def _model(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
    values = _bind(door, door.argument_names, args, kwargs)
    given = {}
    for a, v in zip(_arguments(door), values):
        if v is _MISSING:
            if not a["optional"]:
                raise TypeError(f"{door.__name__}() missing argument '{a['name']}'")
            continue
        given[a["name"]] = v
    result = door._run(given, given.pop("rulebook", None))
    return Result(result) if isinstance(result, dict) else result


def _plain(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> list[float]:
    if door.kind != "formula":
        raise TypeError(f"{door.__name__} is a {door.kind}: only a formula has this; a verdict carries its own working")
    values = _defaults(door, _bind(door, door.argument_names, args, kwargs))
    plain = []
    for i, v in enumerate(values):
        v = _numpy_scalar(door, i, v)
        if "one_of" in _arguments(door)[i]:
            plain.append(float(door._key(i, v)))
        elif isinstance(v, _core.Measured):
            plain.append(v.value)
        elif _is_scalar(v):
            plain.append(float(v))
        else:
            raise _type_error(door, i, v)
    return plain


class Worked:
    """Worked steps: a list of dicts in `steps`, text by `str()`, LaTeX by `latex()`; a notebook shows the LaTeX."""

    def __init__(self, fields: dict[str, Any]) -> None:
        self.steps: list[dict[str, Any]] = fields["steps"]
        self.value: float = fields["value"]
        self.unit: str = fields["unit"]
        self._latex: str = fields["latex"]

    def __str__(self) -> str:
        return steps_text(self.steps)

    __repr__ = __str__

    def latex(self) -> str:
        """The lines under each other, as an `aligned` to be set in mathematics (amsmath)."""
        return self._latex

    def _repr_latex_(self) -> str:
        return f"$$\n{self._latex}\n$$"


def steps_text(steps: list[dict[str, Any]]) -> str:
    lines = []
    for s in steps:
        lines.append(f"{s['symbol']} = {s['equation']}" + (f"    [{s['condition']}]" if s["condition"] else ""))
        pad = " " * len(s["symbol"])
        if s["substituted"] not in (s["equation"], s["result"]):
            lines.append(f"{pad} = {s['substituted']}")
        lines.append(f"{pad} = {s['result']}" + (f"    ({s['source']})" if s["source"] else ""))
    return "\n".join(lines)


def equation(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> str:
    if door.kind != "formula":
        raise TypeError(f"{door.__name__} is a {door.kind}: only a formula has an equation")
    (latex,) = _bind(door, ("latex",), args, kwargs)
    text, in_latex = door._equation()
    return in_latex if latex is not _MISSING and latex else text


def worked(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Worked:
    return Worked(door._work(_plain(door, args, kwargs)))


def sensitivities(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> dict[str, Any]:
    if door.kind != "formula":
        raise TypeError(f"{door.__name__} is a {door.kind}: only a formula has sensitivities")
    errors, threads = _how(kwargs)
    values = _defaults(door, _bind(door, door.argument_names, args, kwargs))
    if any(getattr(v, "ndim", 0) or isinstance(v, list) for v in values):
        from . import _rows

        return _rows.slopes(door, values, threads, errors)[1]
    _, slopes = door._gradient(_plain(door, tuple(values), {}))
    return {a["name"]: s for a, s in zip(_arguments(door), slopes) if "one_of" not in a}


def bounds(door: Any, args: tuple[Any, ...], kwargs: dict[str, Any]) -> tuple[float, float]:
    if door.kind != "formula":
        raise TypeError(f"{door.__name__} is a {door.kind}: only a formula has bounds")
    values = _defaults(door, _bind(door, door.argument_names, args, kwargs))
    described = _arguments(door)
    lows, highs = [], []
    for i, (a, v) in enumerate(zip(described, values)):
        if "one_of" in a:
            ends = (door._key(i, v),) * 2
        elif isinstance(v, (tuple, list)):
            if len(v) != 2:
                raise TypeError(f"{door.__name__}: {a['name']}: bounds are a pair (low, high), not {len(v)} numbers")
            ends = (v[0], v[1])
        else:
            ends = (v, v)
        low, high = (_numpy_scalar(door, i, end) for end in ends)
        for end in (low, high):
            if not _is_scalar(end):
                raise _type_error(door, i, end)
        try:
            lows.append(float(low))
            highs.append(float(high))
        except OverflowError:
            raise _core.RangeError(f"{door.__name__}: {a['name']} is too large a number") from None
    low, high = door._bounds(lows, highs)
    return low, high

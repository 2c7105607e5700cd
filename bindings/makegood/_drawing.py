# SPDX-License-Identifier: MIT
"""The drawing of a check: the limit and the value with its doubt, to scale, as inline SVG."""

from __future__ import annotations

import math
from html import escape

from ._words import (
    _AS_READ,
    _direction,
    _doubtful_value,
    _is_number,
    _limit_text,
    _limits,
    _number,
    _place,
    _value_text,
    Document,
)

def _nice_ticks(low: float, high: float) -> list[float]:
    span = high - low
    step = 10.0 ** math.floor(math.log10(span / 4))
    for factor in (1, 2, 2.5, 5, 10):
        if span / (step * factor) <= 5:
            step *= factor
            break
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return [k * step for k in range(first, last + 1)]


class _Scale:
    """From a quantity to per cent of the width of a drawing."""

    def __init__(self, v: Document) -> None:
        value = _place(v)
        lower, upper = _limits(v)
        limits = [float(x) for x in (lower, upper) if x is not None]
        u = v.get("expanded_uncertainty")
        u = float(u) if _is_number(u) and value is not None and not v.get("censored") else 0.0
        spots = limits + ([value] if value is not None else [])
        self.log = (
            value is not None and bool(limits) and all(s > 0 for s in spots)
            and max(max(value / x, x / value) for x in limits) > 20.0
        )  # fmt: skip
        if self.log:
            low, high = math.log10(min(spots)), math.log10(max(spots))
            pad = 0.18 * (high - low)
            self.low, self.high = math.floor(10 * (low - pad)) / 10, math.ceil(10 * (high + pad)) / 10
            self.ticks = [10.0**k for k in range(math.ceil(self.low), math.floor(self.high) + 1)]
            while len(self.ticks) > 6:
                self.ticks = self.ticks[::2]
        else:
            low, high = min(spots), max(spots)
            if value is not None:
                low, high = min(low, value - u), max(high, value + u)
            if len(limits) == 2 and limits[0] < limits[1]:
                room = 0.5 * (limits[1] - limits[0])
                low, high = min(low, limits[0] - room), max(high, limits[1] + room)
                pad = 0.08 * (high - low)
                floor = 0.0 if min(spots) >= 0.0 else -math.inf
                self.low, self.high = max(floor, low - pad), high + pad
            elif min(spots) >= 0.0 and max(spots) > 0.0:
                self.low, self.high = 0.0, 1.22 * high
            else:
                pad = 0.2 * (high - low) or abs(high) or 1.0
                self.low, self.high = low - pad, high + pad
            self.ticks = _nice_ticks(self.low, self.high)

    def __call__(self, x: float) -> float:
        if self.log:
            if x <= 0:
                return 0.0
            x = math.log10(x)
        return min(100.0, max(0.0, 100.0 * (x - self.low) / (self.high - self.low)))


def _mark(outcome: str) -> str:
    """The shape of an outcome about (0, 0): it is told apart without colour."""
    if outcome == "fail":
        return '<path class="mark" d="M0-7 7 0 0 7-7 0Z"/>'
    if outcome == "pass":
        return '<circle class="mark" r="5.5"/>'
    return '<circle class="mark open" r="5.5"/><path class="stroke" d="M-2.4-2.4 2.4 2.4M-2.4 2.4 2.4-2.4"/>'


def _anchor(x: float) -> str:
    return "start" if x < 50 else "end"


def _drawing(v: Document) -> str:
    """Limit against value: permitted side hatched and framed, limit as a heavy line, value as a mark with its doubt."""
    value = _place(v)
    lower, upper = _limits(v)
    if value is None and lower is None and upper is None:
        return ""
    scale = _Scale(v)
    parts: list[str] = []
    add = parts.append

    if lower is not None or upper is not None:
        left = scale(lower) if lower is not None else 0.0
        right = scale(upper) if upper is not None else 100.0
        add(f'<rect class="permitted" x="{left:.2f}%" y="22" width="{max(0.0, right - left):.2f}%" height="26"/>')
        for limit in (lower, upper):
            if limit is not None:
                x = scale(limit)
                add(f'<line class="limit" x1="{x:.2f}%" x2="{x:.2f}%" y1="17" y2="53"/>')
        if lower is not None and upper is not None:
            middle = (left + right) / 2
            anchor = "start" if middle < 35 else "end" if middle > 65 else "middle"
            at = left if anchor == "start" else right if anchor == "end" else middle
        else:
            at = right if upper is not None else left
            anchor = _anchor(at)
        add(f'<text x="{at:.2f}%" y="12" text-anchor="{anchor}">{escape(_limit_text(v))}</text>')

    add('<line class="axis" x1="0" x2="100%" y1="76" y2="76"/>')
    if scale.log:
        for k in range(math.floor(scale.low), math.ceil(scale.high) + 1):
            for m in range(1, 10):
                at = k + math.log10(m)
                if scale.low <= at <= scale.high:
                    x = scale(m * 10.0**k)
                    add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="{73 if m == 1 else 74.5}" y2="76"/>')
    for tick in scale.ticks:
        x = scale(tick)
        anchor = "start" if x < 4 else "end" if x > 96 else "middle"
        add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="72" y2="76"/>')
        add(f'<text class="tick" x="{x:.2f}%" y="89" text-anchor="{anchor}">{escape(_number(tick))}</text>')

    if value is not None:
        x = scale(value)
        direction = _direction(v)
        u = v.get("expanded_uncertainty")
        label = _value_text(v)
        if direction:
            end = 100.0 if direction > 0 else 0.0
            far = x + math.copysign(min(22.0, abs(end - x)), direction)
            add(f'<line class="doubt" x1="{x:.2f}%" x2="{far:.2f}%" y1="35" y2="35"/>')
            head = "M0 0-9-5V5Z" if direction > 0 else "M0 0 9-5V5Z"
            add(f'<svg x="{far:.2f}%" y="35" overflow="visible"><path class="mark" d="{head}"/></svg>')
        elif _is_number(u) and u > 0:
            low, high = scale(value - u), scale(value + u)
            add(f'<line class="doubt" x1="{low:.2f}%" x2="{high:.2f}%" y1="35" y2="35"/>')
            for cap in (low, high):
                if 0.0 < cap < 100.0:
                    add(f'<line class="doubt" x1="{cap:.2f}%" x2="{cap:.2f}%" y1="30" y2="40"/>')
            label = _doubtful_value(v)
        add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="42" y2="76"/>')
        add(f'<svg x="{x:.2f}%" y="35" overflow="visible">{_mark(v.get("outcome") or "")}</svg>')
        nudge = 5 if x < 50 else -5
        add(f'<text class="value" x="{x:.2f}%" dx="{nudge}" y="66" text-anchor="{_anchor(x)}">{escape(label)}</text>')

    elif v.get("censored") and upper is not None:
        x = (scale(upper) + 100.0) / 2
        add(f'<line class="doubt" x1="{x:.2f}%" x2="100%" y1="35" y2="35"/>')
        add('<svg x="100%" y="35" overflow="visible"><path class="mark" d="M0 0-9-5V5Z"/></svg>')
        add(f'<svg x="{x:.2f}%" y="35" overflow="visible">{_mark(v.get("outcome") or "")}</svg>')
        add(f'<text class="value" x="100%" y="66" text-anchor="end">{escape(_value_text(v))}</text>')

    label = _drawing_label(v, scale.log)
    caption = '<figcaption class="small">The scale goes in steps of ten.</figcaption>' if scale.log else ""
    return (
        f'<figure><svg class="drawing" role="img" aria-label="{escape(label)}" width="100%" height="94">'
        f"{''.join(parts)}</svg>{caption}</figure>"
    )


def _drawing_label(v: Document, log: bool) -> str:
    said = ["Drawing"]
    if log:
        said[0] += " on a scale in steps of ten"
    limit = _limit_text(v)
    said.append(f"permitted is {limit}" if limit else "no limit")
    if _is_number(v.get("value")):
        said.append(f"the value is {_doubtful_value(v)}")
        said.append(f"as read it {_AS_READ.get(v.get('plain') or 'undecided', 'cannot be compared')}")
    else:
        said.append("there is no value yet")
    return ": ".join((said[0], "; ".join(said[1:]))).replace("\u00a0", " ") + "."

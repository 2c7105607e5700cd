# SPDX-License-Identifier: MIT
"""Pictures of a whole assessment: all limits at one line, what can be done, what explains the readings."""

from __future__ import annotations

from typing import Any

from ._charts import _quote
from ._sketch import _bars, _drawn, _NOTHING, _paper, _ruler, INK, PALE, PAPER, Picture, Sketch, SOFT
from ._words import _direction, _findings, _is_number, _limits, _number, _place, Document, money

# What a check is about, in few words, beside its mark; a check that is not here is said by its question.
SHORT = {
    "check_voltage_drop": "voltage lost on the way",
    "check_adiabatic": "earth wire in a fault",
    "check_loop_impedance": "fault switched off",
    "check_insulation": "insulation",
    "check_rcd_trip": "safety switch",
    "check_element_resistance": "heating wire",
    "check_ntc_sensor": "sensor",
    "check_extract": "air moved",
    "check_duct_pressure": "duct",
    "check_air_changes": "air changes",
    "check_overrun": "fan running on",
    "check_additional_protection": "sensitive safety switch",
    "check_continuity": "joined through",
    "check_polarity": "wires the right way",
}
REACH = 2.0  # how far beyond the limit the picture goes, in limits


def _used(v: Document, value: float) -> float | None:
    """The part of the limit that a value uses: 1 at the limit, less inside it, more beyond it."""
    lower, upper = _limits(v)
    if lower is not None and upper is not None:
        half = (upper - lower) / 2
        return abs(value - (lower + upper) / 2) / half if half > 0 else None
    if upper is not None:
        return value / upper if upper > 0 and value >= 0 else None
    return (lower / value if value > 0 else REACH) if lower is not None and lower > 0 else None


def short(f: Document) -> str:
    v = f.get("verdict") or {}
    return SHORT.get(v.get("check") or "") or (f.get("question") or "").rstrip("?") or "question"


def _rows(a: Document) -> list[tuple[str, str, str, float, float, float, int]]:
    """subject, words, outcome, part used, least and most of it by the doubt, direction of a reading out of range."""
    rows = []
    for _, f in _findings(a):
        v = f.get("verdict") or {}
        no_trip = v.get("censored") == "no trip"
        value = float(v.get("upper") or v.get("limit") or 1.0) * 10 if no_trip else _place(v)
        if value is None:
            continue
        if not v.get("unit") and value in (0.0, 1.0) and v.get("limit") in (0.0, 1.0):
            continue  # a yes or a no: it has no place on a scale
        used = _used(v, value)
        if used is None:
            continue
        u = v.get("expanded_uncertainty")
        ends = [used]
        if _is_number(u) and not v.get("censored"):
            lower, upper = _limits(v)
            both = lower is not None and upper is not None
            if both:
                half = (upper - lower) / 2
                ends = [max(0.0, used - u / half), used + u / half]
            else:
                ends = [x for x in (_used(v, value - u), _used(v, value + u)) if x is not None] or [used]
        out = 1 if no_trip else _direction(v) * (1 if _limits(v)[1] is not None else -1)
        rows.append((f.get("subject") or "", short(f), f.get("outcome") or "undecided", used, min(ends), max(ends), out))
    return rows


def margins(a: Document, key: str) -> Picture | None:
    """Every answer that has a value and a limit, with all limits at one line."""
    rows = _rows(a)
    if len(rows) < 2:
        return None

    def make() -> Sketch:
        subjects: list[str] = []
        for row in rows:
            if row[0] not in subjects:
                subjects.append(row[0])
        line, head = 15.5, 20.0
        height = line * len(rows) + head * len(subjects)
        sheet = _paper(height + 42, left=146, right=14, bottom=6, top=36)
        sheet.set_limits(0, 0, REACH)
        sheet.set_limits(1, -height, 0)
        sheet.strip(1, REACH, facecolor=PALE, edgecolor=SOFT, hatch="////", linewidth=0, zorder=0)
        sheet.line([1, 1], [-height, 4], color=INK, lw=2.6, clip=False, zorder=1)
        for x, words, side in ((0.96, "keeps to it", "right"), (1.04, "beyond it", "left")):
            sheet.say(words, x, 0, by=(0, 5), ha=side, va="bottom")
        sheet.say("the limit", 1, 0, by=(0, 20), ha="center", va="bottom", weight="bold")
        y = 0.0
        lines: list[tuple[float, float, float]] = []  # a thin line for each row, then its doubt: y, from, to
        doubts: list[tuple[float, float, float]] = []
        marks: dict[str, list[tuple[float, float]]] = {"pass": [], "fail": [], "undecided": [], "beyond": []}
        for subject in subjects:
            y -= head
            shown = subject if len(subject) <= 44 else subject[:43] + "…"
            sheet.say(shown, 3, y + 5, "rows", weight="bold")
            for _, words, outcome, used, low, high, out in [row for row in rows if row[0] == subject]:
                y -= line
                sheet.say(words if len(words) <= 25 else words[:24] + "…", 10.5, y + 7, "rows")
                lines.append((y + 7, 0.0, REACH))
                at = min(max(used, 0.03), REACH - 0.05)
                if out:
                    doubts.append((y + 7, at, REACH) if out > 0 else (y + 7, 0.0, at))
                elif high > low:
                    doubts.append((y + 7, max(0.0, low), min(REACH, high)))
                if used > REACH:
                    marks["beyond"].append((REACH - 0.03, y + 7))
                    at = REACH - 0.16
                marks[outcome if outcome in marks else "undecided"].append((at, y + 7))
        for found, colour, width, order in ((lines, SOFT, 0.4, 0.5), (doubts, INK, 2.0, 1.5)):
            sheet.rules(found, color=colour, lw=width, zorder=order)
        for kind, marker, face, edge, size in (
            ("pass", "o", INK, PAPER, 8.0),
            ("fail", "D", INK, PAPER, 7.5),
            ("undecided", "X", PAPER, INK, 9.5),
            ("beyond", ">", INK, INK, 6.0),
        ):
            if marks[kind]:
                sheet.line(*zip(*marks[kind]), color=INK, marker=marker, mfc=face, mec=edge, mew=1.1, ms=size, ls="none", clip=False)
        far = [row for row in rows if row[2] == "fail"]
        words = f"{len(far)} of {len(rows)} {'lies' if len(far) == 1 else 'lie'} beyond the line."
        see = f"All limits stand at the heavy line. Dots keep to it, diamonds do not, crosses are not known. {words}"
        return Sketch(sheet, "Everything that was measured, against its limit", see)

    return _drawn(make, key)


def options(group: Document, key: str) -> Picture | None:
    """What each way costs and leaves open; where fewer than three prices differ, the list says it as well."""
    listed = [o for o in group.get("list") or [] if _amount(o.get("price")) is not None]
    if len({o["price"] for o in listed}) < 3:
        return None

    def make() -> Sketch:
        currency = listed[0].get("currency") or "GBP"
        prices = [_amount(o["price"]) or 0.0 for o in listed]
        pairs = [
            (
                (low, high)
                if (low := _amount(o.get("price_low"))) is not None and (high := _amount(o.get("price_high"))) is not None and high > low
                else None
            )
            for o in listed
        ]
        notes = [f"leaves {o['leaves']}" if o.get("leaves") else "" for o in listed]
        sheet = _bars(
            [o.get("title") or "" for o in listed],
            prices,
            currency,
            pairs,
            ["////" if o.get("recommended") else "" for o in listed],
            [money(o["price"], currency) for o in listed],
            notes=notes,
        )
        see = "The longer the bar, the more it costs" + ("; a thin line shows how far it can go" if any(pairs) else "") + "."
        if any(o.get("recommended") for o in listed):
            see += " The striped bar is the one that is suggested."
        return Sketch(sheet, "What each way costs, and what it leaves", see)

    try:
        return _drawn(make, key)
    except _NOTHING:
        return None


def _amount(price: Any) -> float | None:
    try:
        return float(price) if price not in (None, "") else None
    except (TypeError, ValueError):
        return None


def hypotheses(diagnosis: Document, key: str) -> Picture | None:
    """What explains the readings, before and after they were taken."""
    listed = [h for h in diagnosis.get("hypotheses") or [] if _is_number(h.get("probability"))][:6]
    if len(listed) < 2:
        return None

    def make() -> Sketch:
        sheet = _bars(
            [h.get("title") or h.get("id") or "" for h in listed],
            [100 * h["probability"] for h in listed],
            "%",
            None,
            ["xxxx" if h.get("danger") else "" for h in listed],
            [f"{_number(100 * h['probability'], digits=2)} %" for h in listed],
            notes=[f"before any reading {_number(100 * h['prior'], digits=2)} %" if _is_number(h.get("prior")) else "" for h in listed],
        )
        see = f"The longest bar explains the readings best: {listed[0].get('title') or ''}."
        if any(h.get("danger") for h in listed):
            see += " A crossed bar is one that can hurt."
        return Sketch(sheet, "What explains the readings", see)

    try:
        return _drawn(make, key)
    except _NOTHING:
        return None


FITS = 2.0  # standard uncertainties within which a reading is as foretold
FAR = 5.0  # where the picture ends


def compared(diagnosis: Document) -> list[Document]:
    """The readings that are held beside what the leading hypothesis foretells, with their distance in standard uncertainties."""
    return [r for r in diagnosis.get("predicted") or [] if isinstance(r, dict) and _is_number(r.get("z"))]


def foretold(diagnosis: Document, key: str) -> Picture | None:
    """How far each reading lies from what the leading hypothesis foretells."""
    rows = compared(diagnosis)
    if not rows:
        return None

    def make() -> Sketch:
        line = 30.0
        sheet = _paper(line * len(rows) + 36, left=12, right=12, bottom=34, top=2)
        sheet.set_limits(0, -FAR, FAR)
        sheet.set_limits(1, 0, line * len(rows))
        sheet.strip(-FITS, FITS, facecolor=PALE, edgecolor=SOFT, hatch="////", linewidth=0, zorder=0)
        sheet.line([0, 0], [0, line * len(rows)], color=INK, lw=1.2)
        for i, r in enumerate(rows):
            y = line * (len(rows) - i) - 21
            at = min(max(r["z"], -FAR + 0.25), FAR - 0.25)
            marker = ("<" if r["z"] < 0 else ">") if abs(r["z"]) > FAR else "o" if abs(r["z"]) <= FITS else "D"
            sheet.line([0, at], [y, y], color=INK, lw=1.6)
            sheet.line([at], [y], color=INK, marker=marker, mec=PAPER, ms=8, ls="none")
            sheet.say(str(r.get("what") or ""), 0, line * (len(rows) - i) - 2, "y", va="top")
        _ruler(sheet, "x", "standard uncertainties from what is foretold")
        fit = sum(abs(r["z"]) <= FITS for r in rows)
        see = f"Dots in the striped part are as foretold: {fit} of {len(rows)}. A diamond or an arrow lies outside it."
        return Sketch(sheet, "How well the first explanation fits", see)

    try:
        return _drawn(make, key)
    except _NOTHING:
        return None


def total(quote: Document, key: str) -> Picture | None:
    """What the total of a quote may come to."""
    try:
        return _drawn(lambda: _quote(quote, {}), key)
    except _NOTHING:
        return None

# SPDX-License-Identifier: MIT
"""Pictures of results, as inline SVG: one small function for each model, in a table at the end.

A function takes the result and the inputs of a model and returns a Sketch: the sheet, its title, and a sentence that says what to see.
Nothing is told by colour.
"""

from __future__ import annotations

import re
from typing import Callable

from ._sketch import _bars, _drawn, _NOTHING, _paper, _ruler, INK, PALE, PAPER, Picture, Sketch, SOFT, WIDTH
from ._words import _count_text, _is_number, _number, _quantity, decimals, Document, money


def _hours(seconds: list[float]) -> tuple[list[float], str]:
    return ([s / 3600 for s in seconds], "hours") if seconds[-1] > 3 * 3600 else ([s / 60 for s in seconds], "minutes")


def _time_text(seconds: float) -> str:
    return f"{round(seconds / 60)} min" if seconds < 7200 else f"{_number(seconds / 3600, digits=2)} h"


def _warm_up(r: Document, given: Document) -> Sketch:
    t, unit = _hours(r["times_s"])
    sheet = _paper(232, left=48, top=52 if r.get("covered_surface_c") else 38)
    sheet.line(t, r["surface_c"], color=INK, lw=2, label="surface")
    if r.get("covered_surface_c"):
        sheet.line(t, r["covered_surface_c"], color=INK, lw=1.8, ls=":", label="surface under a rug")
    sheet.line(t, r["heater_c"], color=SOFT, lw=1.6, ls="--", label="at the heating wire")
    see = f"The surface reaches {_quantity(r['highest_surface_c'], '°C', digits=3)} at most in the time shown."
    if _is_number(given.get("target_c")) and _is_number(r.get("target_s")):
        at = r["target_s"] / (3600 if unit == "hours" else 60)
        sheet.line([at], [given["target_c"]], color=INK, marker="o", ms=8, ls="none")
        sheet.set_limits(1, *sheet.limits(1))
        sheet.line([t[0], at, at], [given["target_c"]] * 2 + [sheet.limits(1)[0]], color=SOFT, lw=0.8, ls=(0, (1, 2)))
        sheet.say(f"{_quantity(given['target_c'], '°C')} after {_time_text(r['target_s'])}", at, given["target_c"], by=(10, -9))
        see = (
            f"The surface reaches {_quantity(given['target_c'], '°C')} after {_time_text(r['target_s'])}; it does not get warmer than"
            f" {_quantity(r['highest_surface_c'], '°C', digits=3)} in the time shown."
        )
    sheet.set_limits(0, t[0], t[-1])
    _ruler(sheet, "x", f"{unit} since it was switched on")
    _ruler(sheet, "y", unit="°C")
    sheet.key()
    return Sketch(sheet, "How the floor warms", see)


def _evidence(r: Document, given: Document) -> Sketch:
    rows = r["readings"]
    t, unit = _hours([row["time_s"] for row in rows])
    sheet = _paper(240, left=48, top=52)
    sheet.line(t, [row["whole_c"] for row in rows], color=SOFT, lw=1.6, ls="--", label="if the whole floor heated")
    sheet.line(t, [row["not_heating_c"] for row in rows], color=SOFT, lw=1.8, ls=":", label="if it did not heat at all")
    sheet.line(t, [row["read_c"] for row in rows], color=INK, marker="o", ms=7, ls="none", label="read on the display")
    _ruler(sheet, "x", f"{unit} since it was switched on")
    _ruler(sheet, "y", unit="°C")
    sheet.key()
    leading = r["probabilities"].get(r.get("leading") or "")
    sure = f" ({_number(100 * leading, digits=2)} % likely)" if _is_number(leading) else ""
    see = f"The marks are what was read. They lie where this would put them: {r['finding']}{sure}."
    return Sketch(sheet, "The display against what it would show", see)


def _no_limit(r: Document, given: Document) -> Sketch | None:
    case = next((c for c in r["cases"] if c["as_laid"]), None)
    if case is None:
        return None
    at = "bond_c" if case["limit_at_bond"] else "surface_c"
    names = [
        ("usual", "as rated, bare"),
        ("usual_covered", "as rated, under a rug"),
        ("worst", "at worst, bare"),
        ("worst_covered", "at worst, under a rug"),
    ]
    rows = [(words, case[k][at]) for k, words in names if case.get(k)]
    sheet = _bars(
        [words for words, _ in rows],
        [x for _, x in rows],
        "°C",
        hatches=["", "////", "||||", "xxxx"],
        said=[_quantity(x, "°C", digits=3) for _, x in rows],
        limit=(case["limit_c"], f"{case['finish']} bears {_quantity(case['limit_c'], '°C')}"),
    )
    hottest = max(x for _, x in rows)
    passes = "Every bar that passes the heavy line harms it." if hottest > case["limit_c"] else "No bar passes the heavy line."
    see = f"The {case['finish']} would come to {_quantity(hottest, '°C', digits=3)} at worst; it bears {_quantity(case['limit_c'], '°C')}. {passes}"
    return Sketch(sheet, "The floor without its own limit", see)


def _meeting(r: Document, given: Document) -> Sketch | None:
    from . import air

    q, p = r.get("flow_l_per_s"), r.get("pressure_pa")
    fan, system, second = given["fan"], given["system"], given.get("second_fan")
    if not _is_number(q) or not _is_number(p):
        return None
    more = {k: given[k] for k in ("air", "arrangement") if k in given} | ({"second_fan": second} if second else {})
    curve = []
    for k in range(-14, 19):  # the fan's curve: where it meets systems of every resistance
        met = air.operating_point(fan, {"resistance_pa_s2_per_l2": p / q / q * 1.5**k}, **more)
        curve += [(x["flow_l_per_s"], x["pressure_pa"]) for x in met.intersections]
    curve.sort()
    most = max(x for x, _ in curve)
    flows = [most * k / 24 for k in range(25)]
    fixed = float(system.get("fixed_pa") or 0.0)
    load, low, high = [fixed + (p - fixed) * (x / q) ** 2 for x in flows], None, None
    if system.get("segments"):
        runs = [air.duct_run(system["segments"], max(x, 1e-6), given.get("air")) for x in (*flows, q)]
        rest = (p - fixed - runs[-1].pressure_pa) / q / q  # what the fan's outlet gives back
        load = [fixed + run.pressure_pa + rest * x * x for run, x in zip(runs, flows)]
        low, high = ([fixed + getattr(run, name) + rest * x * x for run, x in zip(runs, flows)] for name in ("low_pa", "high_pa"))
    top = 1.12 * max(y for _, y in curve)
    sheet = _paper(230, left=48, top=38)
    sheet.line([x for x, _ in curve], [y for _, y in curve], color=INK, lw=2, label="what the fan can do")
    sheet.line(flows, load, color=INK, lw=1.8, ls="--", label="what the duct asks for, with its doubt" if low else "what the duct asks for")
    if low is not None:
        sheet.between(flows, low, high, facecolor=PALE, edgecolor=SOFT, hatch="||||", linewidth=0.3, alpha=0.55, zorder=0)
    if _is_number(r.get("low_l_per_s")) and _is_number(r.get("high_l_per_s")):
        sheet.line([r["low_l_per_s"], r["high_l_per_s"]], [p, p], color=INK, lw=1.6, marker="|", ms=10, mew=1.6)
    sheet.line([q], [p], color=INK, marker="D", ms=9, ls="none")
    sheet.say(_quantity(q, "l/s", digits=3), q, p, by=(0, 15), ha="center", weight="bold")
    sheet.set_limits(0, 0, most * 1.04)
    sheet.set_limits(1, 0, top)
    _ruler(sheet, "x", "air moved, l/s")
    _ruler(sheet, "y", unit="Pa")
    sheet.key()
    spread = (
        f"; between {_number(r['low_l_per_s'], digits=3)} and {_quantity(r['high_l_per_s'], 'l/s', digits=3)} is possible"
        if _is_number(r.get("low_l_per_s"))
        else ""
    )
    return Sketch(sheet, "The fan and its duct", f"Where the two lines cross is what comes through: {_quantity(q, 'l/s', digits=3)}{spread}.")


def _duct(r: Document, given: Document) -> Sketch:
    rows = r["segments"]
    sheet = _bars(
        [s["name"] or "part" for s in rows],
        [s["pressure_pa"] for s in rows],
        "Pa lost",
        [(s["low_pa"], s["high_pa"]) for s in rows],
        ["xxxx" if s["name"] == r["worst"] else "" for s in rows],
        [_quantity(s["pressure_pa"], "Pa", digits=2) for s in rows],
    )
    worst = next(s for s in rows if s["name"] == r["worst"])
    see = (
        f"The longest bar is where the air is lost: {r['worst']}, {_number(100 * worst['share_ratio'], digits=2)} % of it. The lines show how far"
        " each can be out."
    )
    return Sketch(sheet, "Where the duct holds the air back", see)


def _shower(r: Document, given: Document) -> Sketch:
    rows = r["series"]
    t = [row["minute"] for row in rows]
    clear = given.get("clear_humidity_percent") or (None if given.get("clear_ratio") else 65)
    sheet = _paper(240, left=48, top=52)
    shower = given.get("shower_min") or 10
    sheet.strip(0, shower, facecolor=PALE, edgecolor=SOFT, hatch="////", linewidth=0, zorder=0)
    for k, words, style in ((1, "a usual shower", "-"), (0, "little steam", ":"), (2, "much steam", "--")):
        sheet.line(t, [row["humidity_percent"][k] for row in rows], color=INK if k == 1 else SOFT, lw=2 if k == 1 else 1.6, ls=style, label=words)
    if clear:
        sheet.line([0, 1], [clear, clear], "y", color=INK, lw=0.9, ls=(0, (1, 2)))
        sheet.say(f"clear: {_quantity(clear, '%')}", t[-1], clear, by=(0, 9), ha="right")
    sheet.say("shower", shower / 2, 14, ha="center", rotation=90 if shower < 0.14 * t[-1] else 0)
    sheet.set_limits(0, 0, t[-1])
    sheet.set_limits(1, 0, 104)
    _ruler(sheet, "x", "minutes")
    _ruler(sheet, "y", unit="%")
    sheet.key()
    usual, worst = (r[k].get("time_to_clear_min") for k in ("usual", "high"))
    see = (
        f"How damp the air is. After a usual shower it is clear {_quantity(usual, 'min', digits=2)} later"
        if _is_number(usual)
        else "How damp the air is. It does not come clear in the time shown"
    )
    if _is_number(usual) and _is_number(worst):
        see += f", after one with much steam {_quantity(worst, 'min', digits=2)} later"
    return Sketch(sheet, "The air after a shower", see + ".")


def _void(r: Document, given: Document) -> Sketch:
    rows = [
        ("can condense at most", r["upper_kg_per_day"], "////"),
        ("is likely to condense", r.get("estimate_kg_per_day"), "xxxx"),
        ("the roof's own air can dry", r.get("drying_kg_per_day"), "||||"),
    ]
    rows = [row for row in rows if _is_number(row[1])]
    sheet = _bars(
        [row[0] for row in rows],
        [float(row[1]) for row in rows],
        "kg of water a day",
        hatches=[row[2] for row in rows],
        said=[_quantity(row[1], "kg", digits=2) for row in rows],
    )
    gathers = r.get("gathers_by_estimate")
    see = (
        ""
        if gathers is None
        else (
            "More condenses than dries: water gathers in the roof."
            if gathers
            else "More can dry than is likely to condense, as long as the roof is aired so."
        )
    )
    return Sketch(
        sheet,
        "Water that the fan blows into the roof",
        see or f"Up to {_quantity(r['upper_kg_per_day'], 'kg', digits=2)} of water a day can condense there.",
    )


def _zones(r: Document, given: Document) -> Sketch:
    import contourpy  # comes with matplotlib

    from . import setting_out

    room, points = given["room"], given["points"]
    outline = [*room["outline"], room["outline"][0]]
    xs, ys = [x for x, _ in outline], [y for _, y in outline]
    wide, deep = max(xs) - min(xs), max(ys) - min(ys)
    height = min(420.0, (WIDTH - 16) * deep / wide)
    sheet = _paper(height + 16 + 26, left=8, right=8, bottom=8, top=34)
    n = 44
    steps = [min(max(k / (n - 1), 1e-6), 1 - 1e-6) for k in range(n)]
    across, up = [min(xs) + wide * k for k in steps], [min(ys) + deep * k for k in steps]
    grid = [[x, y, 1.0] for y in up for x in across]
    zone = [str(z) for z in setting_out.bathroom_zones(grid, room, given["rulebook"]).zone]
    names = sorted({z for z in zone if z != "outside"})
    for name, hatch in zip(names, ("xxxx", "////", "||||")):
        level = [[1.0 if zone[j * n + i] == name else 0.0 for i in range(n)] for j in range(n)]
        outlines = contourpy.contour_generator(across, up, level, fill_type="OuterCode").filled(0.5, 1.5)
        sheet.region(zip(*outlines), facecolor=PALE, edgecolor=SOFT, linewidth=0, hatch=hatch, label=f"zone {name}")
    sheet.line(xs, ys, color=INK, lw=3)
    for f in room.get("fixtures") or []:
        if f.get("outline"):
            fx, fy = zip(*[*f["outline"], f["outline"][0]])
            sheet.line(fx, fy, color=INK, lw=1.2)
            sheet.say(f["name"], sum(fx[:-1]) / len(fx[:-1]), sum(fy[:-1]) / len(fy[:-1]) - 0.12 * deep, ha="center")
    for w in room.get("partitions") or []:
        sheet.line([w["from"][0], w["to"][0]], [w["from"][1], w["to"][1]], color=INK, lw=2.4, ls="--")
    for i, (x, y, *_) in enumerate(points, 1):
        sheet.line([x], [y], color=INK, marker="o", ms=15, mfc=PAPER, mew=1.4, ls="none")
        sheet.say(str(i), x, y, ha="center", weight="bold")
    sheet.equal_scales()
    sheet.key(3)
    said = "; ".join(
        f"{i} {'outside the zones' if z == 'outside' else f'in zone {z}'}{', in doubt' if doubt else ''}"
        for i, (z, doubt) in enumerate(zip(r["zone"], r["zone_doubtful"]), 1)
    )
    return Sketch(sheet, "The room from above, at 1 m height", f"The hatched parts are where little may be fitted. The places asked about: {said}.")


def _ring(r: Document, given: Document) -> Sketch | None:
    rows = [p for p in r["points"] if p.get("line_neutral") or p.get("line_cpc")]
    if not rows:
        return None
    sheet = _paper(34.0 * len(rows) + 106, left=10, bottom=34, top=68)
    for kind, lift, marker, hollow, words in (
        ("line_neutral", 0.04, "o", "s", "line to neutral"),
        ("line_cpc", -0.22, "D", "^", "line to protective"),
    ):
        found = [(len(rows) - 1 - i, p[kind]) for i, p in enumerate(rows) if p.get(kind) and _is_number(p[kind].get("read_ohm"))]
        if not found:
            continue
        for y, q in found:
            u = 2 * q["standard_uncertainty_ohm"]
            sheet.line([q["predicted_ohm"] - u, q["predicted_ohm"] + u], [y + lift] * 2, color=SOFT, lw=5, alpha=0.45)
        sheet.line(
            [q["predicted_ohm"] for _, q in found],
            [y + lift for y, _ in found],
            color=INK,
            marker=hollow,
            mfc=PAPER,
            ms=8,
            ls="none",
            label=f"{words}, foretold",
        )
        sheet.line([q["read_ohm"] for _, q in found], [y + lift for y, _ in found], color=INK, marker=marker, ms=6, ls="none", label=f"{words}, read")
    for i, p in enumerate(rows):
        sheet.say(p["name"], 0, len(rows) - 1 - i + 0.24, "y", va="bottom")
    sheet.set_limits(1, -0.5, len(rows) - 0.35)
    _ruler(sheet, "x", "Ω", grid=True)
    sheet.key()
    return Sketch(
        sheet,
        "What each outlet should read, and what it read",
        f"A filled mark that lies beside its hollow one does not fit. Most likely: {r['kinds'][0]['text']}"
        f" ({_number(100 * r['probability'], digits=2)} %).",
    )


def _quote(r: Document, given: Document) -> Sketch | None:
    if not all(_is_number(r.get(k)) for k in ("p10_minor", "p50_minor", "p90_minor")):
        return None
    sheet = _paper(112, left=12, right=12, bottom=34, top=8)
    currency = r["currency"]
    low, middle, high, total = (r[k] / 10 ** decimals(currency) for k in ("p10_minor", "p50_minor", "p90_minor", "total_minor"))
    sheet.line([low, high], [0, 0], color=SOFT, lw=9, alpha=0.5)
    sheet.line([middle], [0], color=INK, marker="|", ms=22, mew=2.4, ls="none")
    sheet.line([total], [0], color=INK, marker="D", ms=9, ls="none")
    span = max(high, total) - min(low, total) or 1.0
    side = "left" if total < min(low, total) + 0.3 * span else "right" if total > min(low, total) + 0.7 * span else "center"
    sheet.say(f"as quoted {money(total, currency)}", total, 0, by=(0, 21), ha=side, weight="bold")
    close = "left" if middle < min(low, total) + 0.3 * span else "right" if middle > min(low, total) + 0.7 * span else "center"
    sheet.say(f"half the time below {money(middle, currency)}", middle, 0, by=(0, -21), ha=close)
    sheet.set_limits(0, min(low, total) - 0.12 * span, max(high, total) + 0.12 * span)
    sheet.set_limits(1, -1, 1)
    _ruler(sheet, "x", said=lambda x: money(x, currency))
    see = f"In eight of ten cases the work comes to between {money(low, currency)} and {money(high, currency)}."
    return Sketch(sheet, "What the total may come to", see)


def _choice(r: Document, given: Document) -> Sketch:
    rows, currency = r["options"], r["currency"]
    sheet = _bars(
        [o["name"] for o in rows],
        [o["expected_cost"] for o in rows],
        f"{currency} expected",
        [(o["p10_cost"], o["p90_cost"]) if o["p90_cost"] > o["p10_cost"] else None for o in rows],
        ["" if o["permitted"] else "xxxx" for o in rows],
        [money(o["expected_cost"], currency) for o in rows],
        notes=["" if o["permitted"] else "leaves danger or something unproved" for o in rows],
    )
    crossed = any(not o["permitted"] for o in rows)
    return Sketch(
        sheet,
        "What each way costs",
        f"Cheapest of those that leave no danger: {r['cheapest']}."
        + (" A crossed bar is a way that leaves danger or something unproved." if crossed else ""),
    )


CHARTS: dict[str, Callable[[Document, Document], Sketch | None]] = {
    "heating.floor_warm_up": _warm_up,
    "heating.warm_up_evidence": _evidence,
    "heating.without_floor_limit": _no_limit,
    "air.operating_point": _meeting,
    "air.duct_run": _duct,
    "air.room_moisture": _shower,
    "air.roof_void_condensation": _void,
    "setting_out.bathroom_zones": _zones,
    "electrical.ring_tests": _ring,
    "price.quote": _quote,
    "price.compare_options": _choice,
}


def _wall(r: Document, given: Document, key: str) -> Picture:
    """The drawing of the wall, which needs no library: names and style of its own, so that several can stand in a page."""
    from ._wall import draw_wall

    shown = {k: v for k, v in r.items() if k != "text"}  # its words stand beside the drawing
    source = draw_wall(given["wall"], shown, float(given.get("hole_diameter_mm") or 6.0), given.get("keep_outs") or (), given.get("zones") or ())
    source = re.sub(r'\b(id|aria-labelledby)="([^"]*)"', lambda m: f'{m[1]}="{" ".join(f"{key}-{w}" for w in m[2].split())}"', source)
    source = re.sub(r"url\(#([^)]*)\)", rf"url(#{key}-\1)", source)

    def own(style: re.Match[str]) -> str:
        rules = re.sub(r"([^{}]+)\{", lambda m: ",".join(f"#{key} {name.strip()}" for name in m[1].split(",")) + "{", style[1])
        return f"<style>{rules}</style>"

    source = re.sub(r"<style>(.*?)</style>", own, source, flags=re.S)
    source = re.sub(r'<svg xmlns="[^"]*"', f'<svg id="{key}" class="wall-drawing"', source, count=1)
    source = re.sub(r'\swidth="[\d.]+mm" height="[\d.]+mm"', "", source, count=1)
    holes = r["holes"]
    see = (
        f"Where the {_count_text(len(holes), 'hole goes', 'holes go')}: crosses with numbers; nothing is drilled in the hatched strips."
        if holes
        else "No place was found that is clear of everything."
    )
    if 0 < len(holes) <= 8:
        places = (
            f"{i} at {_number(h['x_mm'])} mm from the left corner and {_quantity(h['y_mm'], 'mm')} above the floor" for i, h in enumerate(holes, 1)
        )
        see += f" Hole {'; '.join(places)}."
    return Picture(source.strip(), "The wall, to print and take along", see, wide=True)


# ------------------------------------------------------------------------------------------------------------ what pages ask


def of_result(entry: Document, key: str) -> Picture | None:
    """The picture of a result; None where there is none for its model, or the document does not hold what it needs."""
    call, result, given = entry.get("call") or "", entry.get("result"), entry.get("inputs") or {}
    if not isinstance(result, dict):
        return None
    try:
        if call == "setting_out.place_brackets":
            return _wall(result, given, key)
        make = CHARTS.get(call)
        return _drawn(lambda: make(result, given), key) if make else None
    except _NOTHING:
        return None

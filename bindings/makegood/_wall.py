# SPDX-License-Identifier: MIT
"""The drawing of a tiled wall with holes, joints and what is kept free: one SVG, to scale, to print and take to the wall."""

from __future__ import annotations

import math
from html import escape
from typing import Any, Iterable

from ._core import RangeError

PAPER = (190.0, 277.0)  # A4 with its margins, in mm; turned where the wall is wide
TEXT = 3.0
STYLE = """
text{font:3px 'Helvetica Neue',Arial,sans-serif;fill:#000}
.small{font-size:2.5px}.title{font-size:4.6px;font-weight:bold}.bold{font-weight:bold}
.wall{fill:none;stroke:#000;stroke-width:.7}.tile{stroke:#555;stroke-width:.18}.keep{stroke:#000;stroke-width:.35;stroke-dasharray:2 1}
.hole{fill:#fff;stroke:#000;stroke-width:.4}.cross,.ext{stroke:#000;stroke-width:.15}.ext{stroke-dasharray:.6 .8}.dim{stroke:#000;stroke-width:.25}
.halo{fill:#fff;stroke:#fff;stroke-width:1.2;stroke-linejoin:round}
"""
PATTERNS = (
    '<pattern id="cut" width="2.4" height="2.4" patternUnits="userSpaceOnUse"><rect width="2.4" height="2.4" fill="#fff"/>'
    '<circle cx=".6" cy=".6" r=".22" fill="#777"/><circle cx="1.8" cy="1.8" r=".22" fill="#777"/></pattern>'
    '<pattern id="keep" width="2.2" height="2.2" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    '<rect width="2.2" height="2.2" fill="#fff" fill-opacity=".75"/><line y2="2.2" stroke="#000" stroke-width=".45"/></pattern>'
)


def _number(x: float, digits: int = 1) -> str:
    text = f"{x:.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def _of(thing: Any) -> dict[str, Any]:
    return dict(thing) if isinstance(thing, dict) else thing.to_dict()


def _need(d: dict[str, Any], name: str, what: str, low: float = 0.0, high: float = 1e5) -> float:
    x = d.get(name)
    if isinstance(x, bool) or not isinstance(x, (int, float)) or not math.isfinite(x) or not low <= x <= high:
        raise RangeError(f"draw_wall: {what}: {name} = {x!r}: a number from {_number(low)} to {_number(high)} mm")
    return float(x)


def _rectangle(k: dict[str, Any], what: str) -> tuple[float, float, float, float, str]:
    """left, bottom, right, top, words: of a keep-out, or of a zone given by corner and size."""
    wide = 1e6
    if "width_mm" in k:
        left, bottom = _need(k, "x_mm", what, -wide, wide), _need(k, "y_mm", what, -wide, wide)
        right, top = left + _need(k, "width_mm", what, 0, wide), bottom + _need(k, "height_mm", what, 0, wide)
    else:
        left, bottom = _need(k, "left_mm", what, -wide, wide), _need(k, "bottom_mm", what, -wide, wide)
        right, top = _need(k, "right_mm", what, left, wide), _need(k, "top_mm", what, bottom, wide)
    name = k.get("name") or str(k.get("rule") or "").replace("_", " ")
    if k.get("accessory"):  # of cable_zones: what the strip goes out from
        name = f"{name}: {k['accessory']}"
    return left, bottom, right, top, str(name)


def _tiles(wall: dict[str, Any]) -> Iterable[tuple[float, float, float, float, bool]]:
    """left, bottom, right, top, cut of every tile on the wall."""
    width, height = _need(wall, "width_mm", "wall", 1), _need(wall, "height_mm", "wall", 1)
    tile_w, tile_h = _need(wall, "tile_width_mm", "wall", 1, 1e4), _need(wall, "tile_height_mm", "wall", 1, 1e4)
    joint = _need(wall, "joint_mm", "wall", 0, 1e3)
    first_x, first_y = float(wall.get("first_x_mm") or 0.0), float(wall.get("first_y_mm") or 0.0)
    shift, bond = float(wall.get("shift_ratio") or 0.0), int(wall.get("courses_in_bond") or 1)
    pitch_x, pitch_y = tile_w + joint, tile_h + joint
    if width / pitch_x * height / pitch_y > 20000:
        raise RangeError("draw_wall: wall: more than 20000 tiles: draw a part of it")
    for n in range(math.floor(-first_y / pitch_y) - 1, math.ceil((height - first_y) / pitch_y) + 1):
        bottom = first_y + n * pitch_y
        low, high = max(0.0, bottom), min(height, bottom + tile_h)
        if high <= low:
            continue
        start = first_x + (n % bond) * shift * pitch_x
        for k in range(math.floor(-start / pitch_x) - 1, math.ceil((width - start) / pitch_x) + 1):
            left = start + k * pitch_x
            a, b = max(0.0, left), min(width, left + tile_w)
            if b > a:
                cut = b - a < tile_w - 1e-6 or high - low < tile_h - 1e-6
                yield a, low, b, high, cut


def _spread(places: list[float], least: float, low: float, high: float) -> list[float]:
    """Places for labels: near their own, `least` apart, in order."""
    n = len(places)
    out = list(places)
    for _ in range(200):
        moved = False
        for i in range(n - 1):
            lack = least - (out[i + 1] - out[i])
            if lack > 1e-6:
                out[i] -= lack / 2
                out[i + 1] += lack / 2
                moved = True
        if out and out[0] < low:
            out[0] = low
        if out and out[-1] > high:
            out[-1] = high
        if not moved:
            break
    return out


def _scale_bar(x: float, y: float, scale: float) -> str:
    step = next(s for s in (10, 20, 50, 100, 200, 250, 500, 1000, 2000, 5000, 10000, 20000, 50000) if s * scale >= 12)
    parts = [f'<g transform="translate({x:.2f} {y:.2f})">']
    for i in range(3):
        fill = "#000" if i % 2 == 0 else "#fff"
        parts.append(f'<rect x="{i * step * scale:.3f}" width="{step * scale:.3f}" height="1.6" fill="{fill}" stroke="#000" stroke-width=".2"/>')
    for i in range(4):
        unit = " mm" if i == 3 else ""
        parts.append(f'<text class="small" x="{i * step * scale:.3f}" y="4.6" text-anchor="middle">{i * step}{unit}</text>')
    return "".join(parts) + "</g>"


def draw_wall(
    wall: dict[str, Any],
    placed: Any = None,
    hole_diameter_mm: float = 6.0,
    keep_outs: Iterable[dict[str, Any]] = (),
    zones: Iterable[dict[str, Any]] = (),
    title: str = "Where to drill",
) -> str:
    """A drawing of a tiled wall to print: tiles and cut edges, joints, holes, keep-outs and zones, dimensions from corner and floor (SVG).

    wall: as place_brackets takes it. placed: what place_brackets returned, or {"holes": [{"x_mm", "y_mm"}, ...]}; None: the wall alone.
    keep_outs: as place_brackets takes them; zones: the same, or {"x_mm", "y_mm", "width_mm", "height_mm", "rule"}. Nothing is told by
    colour alone; title and description serve screen readers.
    """
    wall = _of(wall)
    tiles = list(_tiles(wall))
    width, height = float(wall["width_mm"]), float(wall["height_mm"])
    diameter = _need({"hole_diameter_mm": hole_diameter_mm}, "hole_diameter_mm", "holes", 0.1, 200)
    kept = [_rectangle(_of(k), f"keep_outs[{i}]") for i, k in enumerate(keep_outs)]
    kept += [_rectangle(_of(k), f"zones[{i}]") for i, k in enumerate(zones)]
    result = _of(placed) if placed is not None else {}
    fits = bool(result.get("fits", True))
    holes = [_of(h) for h in result.get("holes") or []]
    spots = [(_need(h, "x_mm", f"holes[{i}]", -1e6, 1e6), _need(h, "y_mm", f"holes[{i}]", -1e6, 1e6)) for i, h in enumerate(holes)]

    paper_w, paper_h = PAPER if width < 1.25 * height else PAPER[::-1]
    left, right, top = 22.0, 6.0, 14.0
    notes = [str(t) for t in ([result["text"]] if isinstance(result.get("text"), str) else result.get("text") or [])]
    cautions = [str(t) for t in result.get("cautions") or []]
    per_line = int((paper_w - 12) / 1.48)
    lines: list[tuple[str, str]] = [("bold", line) for n in notes for line in _wrapped(n, per_line)]
    columns = max(1, min(3, int((paper_w - 12) // 88)))
    table_rows = math.ceil(len(spots) / columns)
    lines += [("", line) for c in cautions for line in _wrapped(c, per_line)]
    below = 22.0 + 10.0 + 5.0 * (table_rows + (1 if spots else 0)) + 4.0 * len(lines) + 8.0
    scale = min((paper_w - left - right) / width, max(40.0, paper_h - top - below) / height)
    w, h = width * scale, height * scale
    total_w, total_h = paper_w, top + h + below
    x0 = left + max(0.0, (paper_w - left - right - w) / 2)

    def px(x: float) -> float:
        return x0 + x * scale

    def py(y: float) -> float:
        return top + h - y * scale

    cut_count = sum(cut for *_, cut in tiles)
    said = f"A wall of {_number(width)} by {_number(height)} mm with {len(tiles)} tiles, {cut_count} of them cut, and joints of {_number(float(wall['joint_mm']))} mm."
    for i, (x, y) in enumerate(spots):
        said += f" Hole {i + 1}: {_number(x)} mm from the left corner, {_number(y)} mm above the floor."
    for a, b, c, d, words in kept:
        said += f" Kept free{': ' + words if words else ''}: from {_number(a)} to {_number(c)} mm from the left and from {_number(b)} to {_number(d)} mm high."
    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="wall-title wall-desc" width="{total_w:.1f}mm" height="{total_h:.1f}mm" '
        f'viewBox="0 0 {total_w:.2f} {total_h:.2f}">',
        f'<title id="wall-title">{escape(title)}</title><desc id="wall-desc">{escape(" ".join([said, *notes]))}</desc>',
        f"<style>{STYLE}</style><defs>{PATTERNS}",
        f'<clipPath id="on-wall"><rect x="{px(0):.3f}" y="{py(height):.3f}" width="{w:.3f}" height="{h:.3f}"/></clipPath></defs>',
        f'<rect width="{total_w:.2f}" height="{total_h:.2f}" fill="#fff"/><text class="title" x="6" y="8">{escape(title)}</text>',
    ]
    add = parts.append
    add(f'<rect x="{px(0):.3f}" y="{py(height):.3f}" width="{w:.3f}" height="{h:.3f}" fill="#ddd"/>')  # what shows between tiles is joint
    for a, b, c, d, cut in tiles:
        fill = "url(#cut)" if cut else "#fff"
        add(f'<rect class="tile" x="{px(a):.3f}" y="{py(d):.3f}" width="{(c - a) * scale:.3f}" height="{(d - b) * scale:.3f}" fill="{fill}"/>')
    add('<g clip-path="url(#on-wall)">')
    for a, b, c, d, _ in kept:
        add(f'<rect class="keep" x="{px(a):.3f}" y="{py(d):.3f}" width="{max(0.3, (c - a) * scale):.3f}" height="{max(0.3, (d - b) * scale):.3f}" fill="url(#keep)"/>')
    add("</g>")
    add(f'<rect class="wall" x="{px(0):.3f}" y="{py(height):.3f}" width="{w:.3f}" height="{h:.3f}"/>')
    for a, b, c, d, words in kept:  # words over the hatch, upright where the strip is
        a, b, c, d = max(a, 0.0), max(b, 0.0), min(c, width), min(d, height)
        if not words or c <= a or d <= b:
            continue
        long_way = max((c - a), (d - b)) * scale
        shown = words if len(words) * 1.5 <= max(long_way, 14.0) else words[: max(6, int(max(long_way, 14.0) / 1.5) - 1)] + "…"
        x, y = px((a + c) / 2), py((b + d) / 2) + 0.9
        turn = f' transform="rotate(-90 {x:.2f} {y - 0.9:.2f})"' if (d - b) > 1.5 * (c - a) else ""
        for cls in ("small halo", "small"):
            add(f'<text class="{cls}" x="{x:.2f}" y="{y:.2f}" text-anchor="middle"{turn}>{escape(shown)}</text>')
    # running dimensions: from the left corner along the floor, from the floor along the left edge
    floor_y, edge_x = py(0), px(0)
    for of_x in (True, False):
        values = sorted({round(p[0 if of_x else 1], 1) for p in spots if -1 <= p[0 if of_x else 1] <= (width if of_x else height) + 1})
        places = [px(v) if of_x else py(v) for v in values]
        order = sorted(range(len(values)), key=lambda i: places[i])
        spread = _spread([places[i] for i in order], 3.6, (px(0) if of_x else py(height)), (px(width) if of_x else py(0)) - (0 if of_x else 2))
        for at, i in zip(spread, order):
            v, p = values[i], places[i]
            if of_x:
                reach = min(py(y) for x, y in spots if round(x, 1) == v)
                add(f'<line class="ext" x1="{p:.3f}" x2="{p:.3f}" y1="{reach:.3f}" y2="{floor_y:.3f}"/>')
                add(f'<path class="dim" fill="none" d="M{p:.3f} {floor_y:.3f}v1.5L{at:.3f} {floor_y + 5:.3f}v1.5"/>')
                add(f'<text x="{at + 1:.3f}" y="{floor_y + 7.5:.3f}" text-anchor="end" transform="rotate(-90 {at + 1:.3f} {floor_y + 7.5:.3f})">{_number(v)}</text>')
            else:
                reach = max(px(x) for x, y in spots if round(y, 1) == v)
                add(f'<line class="ext" x1="{edge_x:.3f}" x2="{reach:.3f}" y1="{p:.3f}" y2="{p:.3f}"/>')
                add(f'<path class="dim" fill="none" d="M{edge_x:.3f} {p:.3f}h-1.5L{edge_x - 5:.3f} {at:.3f}h-1.5"/>')
                add(f'<text x="{edge_x - 7.2:.3f}" y="{at + 1:.3f}" text-anchor="end">{_number(v)}</text>')
    add(f'<text class="small" x="{px(width):.2f}" y="{floor_y + 19.5:.2f}" text-anchor="end">mm from the left corner; at the left: mm above the floor</text>')
    radius = max(0.9, diameter / 2 * scale)
    for i, (x, y) in enumerate(spots):
        a, b = px(x), py(y)
        arm = radius + 1.6
        add(f'<circle class="hole" cx="{a:.3f}" cy="{b:.3f}" r="{radius:.3f}"/><path class="cross" d="M{a - arm:.3f} {b:.3f}h{2 * arm:.3f}M{a:.3f} {b - arm:.3f}v{2 * arm:.3f}"/>')
        for cls in ("bold halo", "bold"):
            add(f'<text class="{cls}" x="{a + radius + 1:.3f}" y="{b - radius - 0.8:.3f}">{i + 1}</text>')
    # below: scale, signs, table, words
    y = floor_y + 24.0
    add(_scale_bar(10.0, y, scale))
    x = 10.0 + 3.0 * next(s for s in (10, 20, 50, 100, 200, 250, 500, 1000, 2000, 5000, 10000, 20000, 50000) if s * scale >= 12) * scale + 14.0
    signs = (("#fff", "tile", "tile"), ("url(#cut)", "tile", "cut tile"), ("url(#keep)", "keep", "kept free"))
    for fill, cls, words in signs:
        add(f'<rect class="{cls}" x="{x:.2f}" y="{y - 0.6:.2f}" width="5" height="3.4" fill="{fill}"/><text class="small" x="{x + 6.2:.2f}" y="{y + 2.2:.2f}">{words}</text>')
        x += 6.2 + 1.6 * len(words) + 5
    add(f'<circle class="hole" cx="{x + 1.2:.2f}" cy="{y + 1.1:.2f}" r="1"/><text class="small" x="{x + 3.6:.2f}" y="{y + 2.2:.2f}">hole, {_number(diameter)} mm</text>')
    y += 10.0
    if spots:
        column = (paper_w - 12) / columns
        for c in range(columns):
            for at, words in ((0, "hole"), (12, "from corner"), (31, "from floor"), (49, "to tile edge"), (68, "clear")):
                if c * table_rows < len(spots):
                    add(f'<text class="small bold" x="{6 + c * column + at:.2f}" y="{y:.2f}">{words}</text>')
        for i, (x, up) in enumerate(spots):
            c, r = divmod(i, table_rows)
            hole = holes[i]
            cells = [(0, str(i + 1)), (12, _number(x)), (31, _number(up))]
            cells += [(at, _number(float(hole[name]))) for at, name in ((49, "to_edge_mm"), (68, "clearance_mm")) if isinstance(hole.get(name), (int, float))]
            for at, words in cells:
                add(f'<text x="{6 + c * column + at:.2f}" y="{y + 5.0 * (r + 1):.2f}">{words}</text>')
        y += 5.0 * (table_rows + 1) + 3.0
    for cls, line in lines:
        add(f'<text class="small {cls}" x="6" y="{y:.2f}">{escape(line)}</text>')
        y += 4.0
    if not fits and not notes:
        add(f'<text class="bold" x="6" y="{y:.2f}">No place fits.</text>')
    return "".join(parts) + "</svg>\n"


def _wrapped(text: str, width: int) -> list[str]:
    lines, line = [], ""
    for word in text.split():
        if line and len(line) + 1 + len(word) > width:
            lines.append(line)
            line = word
        else:
            line = f"{line} {word}".strip()
    return [*lines, line] if line else lines

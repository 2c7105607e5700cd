# SPDX-License-Identifier: MIT
"""Paper and pencil of the pictures: a figure of one width, bars and words in it, and the SVG that stands in a page.

matplotlib is loaded when the first picture is asked for; without it there is none, and the pages say so.
"""

from __future__ import annotations

import contextlib
import re
from html import escape
from typing import Any, Callable, Iterator, NamedTuple, TYPE_CHECKING

from ._core import Error
from ._drawing import _nice_ticks
from ._words import _number, _quantity

if TYPE_CHECKING:
    from ._sheet import Sheet

INK, SOFT, PALE, PAPER = "#22262a", "#5a6268", "#e4e8e6", "#ffffff"
HATCHES = ("", "////", "||||", "xxxx", "\\\\\\\\", "----")
WIDTH = 302.0  # points: text of 10 points is 11 to 12 pixels high on a phone
HOW_TO_GET = "Pictures are drawn by matplotlib, which is not installed here: pip install 'makegood[pages]'."


class Sketch(NamedTuple):
    sheet: Sheet
    title: str
    see: str


class Picture(NamedTuple):
    svg: str
    title: str
    see: str
    wide: bool = False


# -------------------------------------------------------------------------------------------------------- paper and pencil

_loaded: dict[str, Any] = {}
_PLAIN = {
    "svg.fonttype": "none",
    "svg.hashsalt": "makegood",
    "font.family": ["sans-serif"],
    "font.sans-serif": ["system-ui"],
    "hatch.linewidth": 0.7,
    "hatch.color": SOFT,
    "text.parse_math": False,
    "lines.solid_capstyle": "butt",
}
_LOOKS = ("hatch", "lines", "markers", "patch", "path", "svg", "text")


@contextlib.contextmanager
def _uncollected() -> Iterator[None]:
    """Nothing is collected meanwhile: what is made here stays, and looking through it again and again takes a twentieth of the time."""
    import gc

    was = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was:
            gc.enable()


def available() -> bool:
    """Whether matplotlib is there; it is loaded here, and nowhere before."""
    if "sheet" not in _loaded:
        try:
            with _uncollected():
                import matplotlib

                from ._sheet import Sheet
        except ImportError:
            return False
        # The defaults of the library, whatever the reader's own settings are.
        _loaded["looks"] = {k: v for k, v in matplotlib.rcParamsDefault.items() if k.partition(".")[0] in _LOOKS} | _PLAIN
        _loaded["sheet"] = Sheet
    return True


def looks() -> Any:
    """The settings of pictures for a while: only those that differ now are set, since each that is set is looked through."""
    import matplotlib

    now = matplotlib.rcParams
    return matplotlib.rc_context({k: v for k, v in _loaded["looks"].items() if dict.__getitem__(now, k) != v})


def _paper(height: float, left: float = 36, right: float = 12, bottom: float = 34, top: float = 22) -> Sheet:
    """A sheet of the width of all pictures, and so high; margins in points."""
    sheet: Sheet = _loaded["sheet"](WIDTH, height, left, bottom, right, top)
    return sheet


def _ruler(sheet: Sheet, along: str, title: str = "", unit: str = "", grid: bool = False, said: Callable[[float], str] | None = None) -> None:
    """A scale along the lower or the left side of the frame, at round numbers within the limits as they are now."""
    level = along == "x"
    for axis in (0, 1):
        sheet.set_limits(axis, *sheet.limits(axis))
    low, high = sheet.limits(0 if level else 1)
    ticks = [t for t in _nice_ticks(low, high) if low <= t <= high]
    noughts, ends = [0.0] * len(ticks), [low, high]
    dash: dict[str, Any] = {"color": SOFT, "lw": 0.8, "place": along, "clip": False}
    for t in ticks if grid else ():
        sheet.line(*(([t, t], [0, 1]) if level else ([0, 1], [t, t])), **{**dash, "color": PALE, "zorder": 0})
    sheet.line(*((ends, [0, 0]) if level else ([0, 0], ends)), **dash)
    sheet.line(*((ticks, noughts) if level else (noughts, ticks)), **{**dash, "lw": 0}, marker=3 if level else 0, ms=3.5, mew=0.8)
    for t in ticks:
        words = said(t) if said else f"{_number(t)} {unit}".rstrip()
        part = (t - low) / (high - low) if high > low else 0.5
        if level and said and len(ticks) > 3 and not 0.04 < part < 0.96:
            continue  # its words would stand beyond the edge
        if level:
            sheet.say(words, t, 0, "x", by=(0, -5), ha="center", va="top")
        else:
            sheet.say(words, 0, t, "y", by=(-5, 0), ha="right")
    if title:
        sheet.say(title, 0.5, 0, "frame", by=(0, -19), ha="center", va="top")


def _bars(
    names: list[str],
    values: list[float],
    unit: str,
    whiskers: list[tuple[float, float] | None] | None = None,
    hatches: list[str] | None = None,
    said: list[str] | None = None,
    limit: tuple[float, str] | None = None,
    notes: list[str] | None = None,
) -> Sheet:
    """Bars one under the other, each with its name and value above it, and what it leaves under it; a limit as a heavy line."""
    import textwrap

    over = ["\n".join(textwrap.wrap(name, 34)) or " " for name in names]
    under = ["\n".join(textwrap.wrap(note, 50)) for note in notes or [""] * len(names)]
    rows = [22.0 + 12.5 * (a.count("\n") + 1) + (12.0 * (b.count("\n") + 1) if b else 0.0) for a, b in zip(over, under)]
    top = 26.0 if limit else 6.0
    sheet = _paper(sum(rows) + 32 + top, left=10, right=12, bottom=32, top=top)
    far = [high for pair in whiskers or [] if pair for high in pair]
    most = max([*values, *far, limit[0] if limit else 0.0, 1e-9])
    bottom = sum(rows)
    for i, value in enumerate(values):
        bottom -= rows[i]
        y = bottom + rows[i] - 12.5 * (over[i].count("\n") + 1) - 10.0  # the middle of the bar, in points
        hatch = (hatches or [HATCHES[1]] * len(names))[i]
        sheet.bar(0.0, y - 6, value, 12, facecolor=PALE, edgecolor=INK, linewidth=0.9, hatch=hatch)
        pair = (whiskers or [None] * len(names))[i]
        if pair:
            sheet.line(pair, [y, y], color=INK, lw=1.6, marker="|", ms=9, mew=1.6)
        sheet.say(over[i], 0, y + 6, by=(0, 2), va="bottom", line=1.25)
        sheet.say(said[i] if said else _quantity(value, unit), 1, y + 6, "y", by=(0, 2), va="bottom", ha="right", weight="bold")
        if under[i]:
            sheet.say(under[i], 0, y - 6, by=(0, -2), va="top", size=9.5, colour=SOFT, line=1.2)
    if limit:
        sheet.line([limit[0]] * 2, [0, sum(rows) + 2], color=INK, lw=2.6, clip=False)
        near_end = limit[0] > 0.6 * most
        sheet.say(limit[1], limit[0], sum(rows) + 2, by=(-4 if near_end else 4, 4), ha="right" if near_end else "left", va="bottom")
    sheet.set_limits(0, 0, 1.04 * most)
    sheet.set_limits(1, 0, sum(rows))
    _ruler(sheet, "x", unit)
    return sheet


def _clean(source: str, key: str, title: str, see: str) -> str:
    """The SVG to stand in a page: no addresses, no global style, names of its own, as wide as its place."""
    source = source[source.index("<svg") :]
    source = re.sub(r"<metadata>.*?</metadata>|<style[^>]*>.*?</style>|<!--.*?-->|\sxmlns(?::\w+)?=\"[^\"]*\"", "", source, flags=re.S)
    source = source.replace("xlink:href", "href")
    source = re.sub(r'\bid="([^"]*)"', rf'id="{key}-\1"', source)
    source = re.sub(r'href="#([^"]*)"', rf'href="#{key}-\1"', source)
    source = re.sub(r"url\(#([^)]*)\)", rf"url(#{key}-\1)", source)
    source = re.sub(r"<svg[^>]*?viewBox=\"([^\"]*)\"[^>]*>", r'<svg viewBox="\1">', source, count=1, flags=re.S)
    source = re.sub(r"'DejaVu Sans'[^;\"]*", "system-ui, sans-serif", source)
    source = re.sub(r"\n\s*", " ", source).strip()
    label = escape(f"{title}. {see}")
    head = f'<svg class="chart" role="img" aria-label="{label}" width="100%" stroke-linejoin="round" '
    named = f"<title>{escape(title)}</title><desc>{escape(see)}</desc>"
    return re.sub(r"^<svg ([^>]*)>", lambda m: f"{head}{m[1]}>{named}", source, count=1)


def _drawn(make: Callable[[], Sketch | None], key: str) -> Picture | None:
    """What a function sketches, as a picture; None without matplotlib, or where the document does not hold what it needs."""
    if not available():
        return None
    with _uncollected(), looks():
        sketch = make()
        if sketch is None:
            return None
        source = sketch.sheet.svg()
    return Picture(_clean(source, key, sketch.title, sketch.see), sketch.title, sketch.see)


# What a document that lacks something can raise.
_NOTHING = (Error, KeyError, TypeError, ValueError, IndexError, AttributeError, StopIteration, ZeroDivisionError)

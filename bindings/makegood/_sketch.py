# SPDX-License-Identifier: MIT
"""Paper and pencil of the pictures: a figure of one width, bars and words in it, and the SVG that stands in a page.

matplotlib is loaded when the first picture is asked for; without it there is none, and the pages say so.
"""

from __future__ import annotations

import contextlib
import re
from html import escape
from typing import Any, Callable, Iterator, NamedTuple

from ._core import Error
from ._drawing import _nice_ticks
from ._words import _number, _quantity

INK, SOFT, PALE, PAPER = "#22262a", "#5a6268", "#e4e8e6", "#ffffff"
HATCHES = ("", "////", "||||", "xxxx", "\\\\\\\\", "----")
WIDTH = 302.0  # points: text of 10 points is 11 to 12 pixels high on a phone
HOW_TO_GET = "Pictures are drawn by matplotlib, which is not installed here: pip install 'makegood[pages]'."


class Sketch(NamedTuple):
    figure: Any
    title: str
    see: str


class Picture(NamedTuple):
    svg: str
    title: str
    see: str
    wide: bool = False


# -------------------------------------------------------------------------------------------------------- paper and pencil

_loaded: dict[str, Any] = {}
_LOOKS = (
    "axes",
    "contour",
    "figure",
    "font",
    "grid",
    "hatch",
    "legend",
    "lines",
    "markers",
    "mathtext",
    "patch",
    "path",
    "savefig",
    "svg",
    "text",
    "xtick",
    "ytick",
)


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
    if "ok" not in _loaded:
        try:
            with _uncollected():
                import matplotlib
                from matplotlib.axes import Axes
                from matplotlib.backends.backend_svg import FigureCanvasSVG
                from matplotlib.figure import Figure
        except ImportError:
            return False

        class Bare(Axes):  # type: ignore[misc]
            """Axes without ticks of their own."""

            def tick_params(self, axis: str = "both", **more: Any) -> None:
                pass

        # The defaults of the library, whatever the reader's own settings are.
        plain = {k: v for k, v in matplotlib.rcParamsDefault.items() if k.partition(".")[0] in _LOOKS}
        plain.update(
            {
                "svg.fonttype": "none",
                "svg.hashsalt": "makegood",
                "font.family": "sans-serif",
                "font.sans-serif": ["DejaVu Sans"],
                "font.size": 10,
                "text.color": INK,
                "axes.edgecolor": SOFT,
                "axes.labelcolor": INK,
                "xtick.color": SOFT,
                "ytick.color": SOFT,
                "axes.linewidth": 0.8,
                "xtick.labelcolor": INK,
                "ytick.labelcolor": INK,
                "axes.spines.top": False,
                "axes.spines.right": False,
                "hatch.linewidth": 0.7,
                "hatch.color": SOFT,
                "axes.unicode_minus": True,
                "text.parse_math": False,
                "lines.solid_capstyle": "butt",
            }
        )
        _loaded.update(ok=True, context=_context, figure=Figure, axes=Bare, canvas=FigureCanvasSVG, plain=plain)
    return True


def _context(looks: dict[str, Any]) -> Any:
    """These settings for a while: only those that differ now are set, since each that is set is looked through."""
    import matplotlib

    now = matplotlib.rcParams
    return matplotlib.rc_context({k: v for k, v in looks.items() if dict.__getitem__(now, k) != v})


def _paper(height: float, left: float = 36, right: float = 12, bottom: float = 34, top: float = 22) -> tuple[Any, Any]:
    """A figure with one pair of axes; margins in points."""
    figure = _loaded["figure"](figsize=(WIDTH / 72, height / 72))
    place = (left / WIDTH, bottom / height, (WIDTH - left - right) / WIDTH, (height - bottom - top) / height)
    axes = figure.add_axes(_loaded["axes"](figure, place))
    axes.set_axis_off()  # the scales are drawn by _ruler: those of the library take half the time of a picture
    return figure, axes


def _ruler(axes: Any, along: str, title: str = "", unit: str = "", grid: bool = False, said: Callable[[float], str] | None = None) -> None:
    """A scale along the lower or the left side of the axes, at round numbers within the limits as they are now."""
    level = along == "x"
    low, high = axes.get_xlim() if level else axes.get_ylim()
    (axes.set_xlim if level else axes.set_ylim)(low, high)
    if grid or not level:
        other = axes.get_ylim() if level else axes.get_xlim()
        (axes.set_ylim if level else axes.set_xlim)(*other)
    ticks = [t for t in _nice_ticks(low, high) if low <= t <= high]
    frame = axes.get_xaxis_transform() if level else axes.get_yaxis_transform()
    where: Any = ("data", "axes fraction") if level else ("axes fraction", "data")
    noughts, ends = [0.0] * len(ticks), [low, high]
    dash: dict[str, Any] = {"color": SOFT, "lw": 0.8, "transform": frame, "clip_on": False, "label": "_"}
    for t in ticks if grid else ():
        axes.plot(*(([t, t], [0, 1]) if level else ([0, 1], [t, t])), **{**dash, "color": PALE, "zorder": 0})
    axes.plot(*((ends, [0, 0]) if level else ([0, 0], ends)), **dash)
    axes.plot(*((ticks, noughts) if level else (noughts, ticks)), **{**dash, "lw": 0}, marker=3 if level else 0, ms=3.5, mew=0.8)
    for t in ticks:
        words = said(t) if said else f"{_number(t)} {unit}".rstrip()
        part = (t - low) / (high - low) if high > low else 0.5
        if level and said and len(ticks) > 3 and not 0.04 < part < 0.96:
            continue  # its words would stand beyond the edge
        at = {"xytext": (0, -5), "ha": "center", "va": "top"} if level else {"xytext": (-5, 0), "ha": "right", "va": "center"}
        axes.annotate(words, (t, 0) if level else (0, t), xycoords=where, textcoords="offset points", annotation_clip=False, **at)
    if title:
        at = {"xytext": (0, -19), "ha": "center", "va": "top"}
        axes.annotate(title, (0.5, 0), xycoords="axes fraction", textcoords="offset points", annotation_clip=False, **at)


def _say(axes: Any, x: float, y: float, words: str, **more: Any) -> None:
    """Words in the picture, readable over lines."""
    at = {"xytext": (0, 0), "textcoords": "offset points", "ha": "left", "va": "center", **more}
    axes.annotate(words, (x, y), bbox={"facecolor": PAPER, "edgecolor": "none", "pad": 1, "alpha": 0.85}, annotation_clip=False, **at)


def _key(figure: Any, axes: Any, columns: int = 1) -> None:
    """The key, over the picture."""
    axes.legend(
        loc="lower left",
        bbox_to_anchor=(0, 1.01),
        frameon=False,
        ncols=columns,
        handlelength=3.0,
        borderaxespad=0,
        labelspacing=0.25,
        columnspacing=1.2,
        fontsize=10,
    )


def _bars(
    names: list[str],
    values: list[float],
    unit: str,
    whiskers: list[tuple[float, float] | None] | None = None,
    hatches: list[str] | None = None,
    said: list[str] | None = None,
    limit: tuple[float, str] | None = None,
    notes: list[str] | None = None,
) -> Any:
    """Bars one under the other, each with its name and value above it, and what it leaves under it; a limit as a heavy line."""
    import textwrap

    over = ["\n".join(textwrap.wrap(name, 34)) or " " for name in names]
    under = ["\n".join(textwrap.wrap(note, 50)) for note in notes or [""] * len(names)]
    rows = [22.0 + 12.5 * (a.count("\n") + 1) + (12.0 * (b.count("\n") + 1) if b else 0.0) for a, b in zip(over, under)]
    top = 26.0 if limit else 6.0
    figure, axes = _paper(sum(rows) + 32 + top, left=10, right=12, bottom=32, top=top)
    far = [high for pair in whiskers or [] if pair for high in pair]
    most = max([*values, *far, limit[0] if limit else 0.0, 1e-9])
    bottom = sum(rows)
    for i, value in enumerate(values):
        bottom -= rows[i]
        y = bottom + rows[i] - 12.5 * (over[i].count("\n") + 1) - 10.0  # the middle of the bar, in points
        axes.barh(y, value, 12, facecolor=PALE, edgecolor=INK, linewidth=0.9, hatch=(hatches or [HATCHES[1]] * len(names))[i])
        pair = (whiskers or [None] * len(names))[i]
        if pair:
            axes.plot(pair, [y, y], color=INK, lw=1.6, marker="|", ms=9, mew=1.6, label="_")
        words = said[i] if said else _quantity(value, unit)
        at: dict[str, Any] = {"textcoords": "offset points", "annotation_clip": False}
        axes.annotate(over[i], (0, y + 6), xytext=(0, 2), va="bottom", ha="left", linespacing=1.1, **at)
        axes.annotate(words, (1, y + 6), xycoords=("axes fraction", "data"), xytext=(0, 2), va="bottom", ha="right", weight="bold", **at)
        if under[i]:
            axes.annotate(under[i], (0, y - 6), xytext=(0, -2), va="top", ha="left", fontsize=9.5, color=SOFT, linespacing=1.1, **at)
    if limit:
        axes.plot([limit[0]] * 2, [0, sum(rows) + 2], color=INK, lw=2.6, label="_", clip_on=False)
        near_end = limit[0] > 0.6 * most
        axes.annotate(
            limit[1],
            (limit[0], sum(rows) + 2),
            xytext=(-4 if near_end else 4, 4),
            textcoords="offset points",
            ha="right" if near_end else "left",
            va="bottom",
            annotation_clip=False,
        )
    axes.set_xlim(0, 1.04 * most)
    axes.set_ylim(0, sum(rows))
    _ruler(axes, "x", unit)
    return figure


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
    import io

    if not available():
        return None
    with _uncollected(), _loaded["context"](_loaded["plain"]):
        sketch = make()
        if sketch is None:
            return None
        out = io.StringIO()
        _loaded["canvas"](sketch.figure).print_svg(out, metadata={"Date": None, "Creator": None, "Format": None, "Type": None})
    return Picture(_clean(out.getvalue(), key, sketch.title, sketch.see), sketch.title, sketch.see)


# What a document that lacks something can raise.
_NOTHING = (Error, KeyError, TypeError, ValueError, IndexError, AttributeError, StopIteration, ZeroDivisionError)

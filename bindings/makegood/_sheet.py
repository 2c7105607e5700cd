# SPDX-License-Identifier: MIT
"""The paper of the pictures: lines, shapes and words of matplotlib, placed here and written by its SVG renderer.

Everything in a picture has its place from the start, so the axes and the figure of the library, which look for room for labels and ticks,
are not loaded: they would take half the time of a page. No font is looked up either: the reader's own is another one, and words hang on
their anchors.
"""

from __future__ import annotations

import io
import math
from typing import Any, Iterable, NamedTuple, Sequence

from matplotlib.backends.backend_svg import RendererSVG
from matplotlib.font_manager import FontProperties
from matplotlib.lines import Line2D
from matplotlib.patches import Patch, PathPatch, Polygon, Rectangle
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.transforms import Bbox, BboxTransform, BboxTransformTo, blended_transform_factory, IdentityTransform, Transform

from ._sketch import INK

ASCENT, DESCENT, LINE = 0.77, 0.23, 1.12  # of a line of words, in sizes of the font
MARGIN = 0.05  # beside what is drawn, where no limits are set, as a part of it


class Words(NamedTuple):
    said: str
    x: float
    y: float
    place: Transform
    by: tuple[float, float]
    ha: str
    va: str
    font: FontProperties
    colour: str
    line: float
    rotation: float


class Sheet:
    """A picture of some width and height with a frame in it, all in points; numbers are placed by the frame's limits."""

    def __init__(self, width: float, height: float, left: float, bottom: float, right: float, top: float) -> None:
        self.width, self.height = width, height
        self.lines: list[Line2D] = []
        self.patches: list[Patch] = []
        self.words: list[Words] = []
        self._view, self._set = Bbox([[0.0, 0.0], [1.0, 1.0]]), [False, False]
        self._frame = Bbox([[left, bottom], [width - right, height - top]])
        # Where a place is told: by numbers, by parts of the frame, by numbers along one side alone, or in points.
        data, part = BboxTransform(self._view, self._frame), BboxTransformTo(self._frame)
        self.places: dict[str, Transform] = {
            "data": data,
            "frame": part,
            "x": blended_transform_factory(data, part),
            "y": blended_transform_factory(part, data),
            "sheet": IdentityTransform(),
            "rows": blended_transform_factory(IdentityTransform(), data),  # x in points from the left edge, y by numbers
        }

    # ------------------------------------------------------------------------------------------------------------ limits

    def limits(self, axis: int) -> tuple[float, float]:
        """What the frame shows along x (0) or y (1): as it was set, or all that is drawn and a little more."""
        if not self._set[axis]:
            ends = [float(e) for line in self.lines if line.get_transform() is self.places["data"] for e in line.get_data()[axis]]
            ends += [float(e) for p in self.patches if p.get_transform().contains_branch(self.places["data"]) for e in _ends(p, axis)]
            if ends:
                low, high = min(filter(math.isfinite, ends)), max(filter(math.isfinite, ends))
                room = MARGIN * (high - low) or MARGIN * abs(high) or MARGIN
                return low - room, high + room
        return (float(self._view.x0), float(self._view.x1)) if axis == 0 else (float(self._view.y0), float(self._view.y1))

    def set_limits(self, axis: int, low: float, high: float) -> None:
        ends = self._view.get_points().copy()  # what it is given is compared with what it holds
        ends[:, axis] = low, high
        self._view.set_points(ends)
        self._set[axis] = True

    def equal_scales(self) -> None:
        """One unit is as long along x as along y; what is drawn stands in the middle."""
        (x0, x1), (y0, y1) = self.limits(0), self.limits(1)
        unit = max((x1 - x0) / self._frame.width, (y1 - y0) / self._frame.height)  # numbers in a point
        for axis, low, high, size in ((0, x0, x1, self._frame.width), (1, y0, y1, self._frame.height)):
            middle = (low + high) / 2
            self.set_limits(axis, middle - unit * size / 2, middle + unit * size / 2)

    # ----------------------------------------------------------------------------------------------------- what is drawn

    def line(self, xs: Sequence[float], ys: Sequence[float], place: str = "data", clip: bool = True, **more: Any) -> None:
        """A line through points, or marks at them (marker, ls="none"); without a label it does not stand in the key."""
        drawn = Line2D(xs, ys, **{"label": "_", **more})
        drawn.set_transform(self.places[place])
        drawn.set_clip_box(self._frame if clip else None)
        self.lines.append(drawn)

    def rules(self, rows: Iterable[tuple[float, float, float]], **more: Any) -> None:
        """Level lines: y, from, to of each."""
        spots = [spot for y, start, end in rows for spot in ((start, y), (end, y), (math.nan, math.nan))]
        if spots:
            self.line(*zip(*spots), **more)

    def shape(self, drawn: Patch, place: str = "data") -> None:
        drawn.set_transform(self.places[place])
        drawn.set_clip_box(self._frame)
        self.patches.append(drawn)

    def bar(self, x: float, y: float, width: float, height: float, **more: Any) -> None:
        """From a corner, so wide and so high."""
        self.shape(Rectangle((x, y), width, height, **{"label": "_", **more}))

    def strip(self, low: float, high: float, **more: Any) -> None:
        """Between two x, from the bottom to the top."""
        self.shape(Rectangle((low, 0.0), high - low, 1.0, **{"label": "_", **more}), "x")

    def between(self, xs: Sequence[float], low: Sequence[float], high: Sequence[float], **more: Any) -> None:
        self.shape(Polygon([*zip(xs, low), *zip(reversed(xs), reversed(high))], **{"label": "_", **more}))

    def region(self, outlines: Iterable[tuple[Any, Any]], **more: Any) -> None:
        """A shape of several parts that may have holes: points and codes of each."""
        self.shape(PathPatch(Path.make_compound_path(*(Path(points, codes) for points, codes in outlines)), **{"label": "_", **more}))

    def say(
        self, said: str, x: float, y: float, place: str = "data", by: tuple[float, float] = (0.0, 0.0), ha: str = "left", va: str = "center",
        size: float = 10.0, weight: str = "normal", colour: str = INK, line: float = LINE, rotation: float = 0.0,
    ) -> None:  # fmt: skip
        """Words at a place, moved by some points."""
        font = FontProperties(family="sans-serif", size=size, weight=weight)
        self.words.append(Words(said, x, y, self.places[place], by, ha, va, font, colour, line * size, rotation))

    def key(self, columns: int = 1) -> None:
        """The key over the frame: each line and shape that has a label."""
        named: list[tuple[str, Line2D | Patch]] = [(str(a.get_label()), a) for a in (*self.lines, *self.patches)]
        named = [(label, a) for label, a in named if not label.startswith("_")]
        rows = -(-len(named) // columns)
        wide, high, x0, y0 = self._frame.width / columns, 13.0, self._frame.x0, self._frame.y1 + 3.0
        for i, (label, shown) in enumerate(named):
            x, y = x0 + wide * (i // rows), y0 + high * (rows - 1 - i % rows) + high / 2
            sample: Line2D | Patch
            if isinstance(shown, Line2D):
                mark = shown.get_linestyle() in ("None", "none")
                sample = Line2D([x + 15.0] if mark else [x, x + 30.0], [y] if mark else [y, y])
                sample.update_from(shown)
                sample.set_transform(self.places["sheet"])
                self.lines.append(sample)
            else:
                sample = Rectangle((x, y - 3.5), 30.0, 7.0)
                sample.update_from(shown)
                sample.set_transform(self.places["sheet"])
                self.patches.append(sample)
            sample.set_label("_")
            sample.set_clip_box(None)
            self.say(label, x + 36.0, y, "sheet")

    # ------------------------------------------------------------------------------------------------------------ as SVG

    def svg(self) -> str:
        for axis in (0, 1):
            self.set_limits(axis, *self.limits(axis))
        out = io.StringIO()
        renderer = RendererSVG(self.width, self.height, out, metadata={"Date": None, "Creator": None, "Format": None, "Type": None})
        for drawn in sorted((*self.patches, *self.lines), key=lambda a: a.get_zorder()):
            drawn.draw(renderer)
        for words in self.words:
            _write(renderer, words)
        renderer.finalize()
        return out.getvalue()


def _ends(p: Patch, axis: int) -> list[float]:
    """The numbers along one axis that a shape reaches."""
    corners = p.get_patch_transform().transform(p.get_path().vertices)
    return [float(corners[:, axis].min()), float(corners[:, axis].max())]


def _write(renderer: RendererSVG, w: Words) -> None:
    """Words of a line or more, anchored as they are aligned: the font of the reader decides how wide they are."""
    x, y = w.place.transform((w.x, w.y))
    lines, size = w.said.split("\n"), w.font.get_size_in_points()
    tall = w.line * (len(lines) - 1)
    lift = {"top": -ASCENT * size, "bottom": DESCENT * size + tall, "center": (tall - (ASCENT - DESCENT) * size) / 2}[w.va]
    turn = math.radians(w.rotation)
    x, y = x + w.by[0] - lift * math.sin(turn), y + w.by[1] + lift * math.cos(turn)
    paint = renderer.new_gc()
    paint.set_foreground(w.colour)
    for i, line in enumerate(lines):
        down = y - w.line * i
        anchor = Text(x, down, line, ha=w.ha, rotation=w.rotation, rotation_mode="anchor")
        renderer.draw_text(paint, x, renderer.height - down, line, w.font, w.rotation, False, anchor)
    paint.restore()

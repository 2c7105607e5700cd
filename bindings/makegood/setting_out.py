# SPDX-License-Identifier: MIT
"""Setting out: where to drill on a tiled wall, fixings, joists, cords that have to reach."""

from . import _core

globals().update(_core.subjects["setting_out"])
__all__ = [*_core.subjects["setting_out"], "draw_wall"]


def draw_wall(wall, placed=None, hole_diameter_mm=6.0, keep_outs=(), zones=(), title="Where to drill"):
    """A drawing of a tiled wall to print, as SVG: tiles and cut edges, joints, holes, keep-outs and zones, dimensions from corner and floor."""
    from ._wall import draw_wall as draw

    return draw(wall, placed, hole_diameter_mm, keep_outs, zones, title)

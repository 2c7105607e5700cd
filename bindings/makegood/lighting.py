# SPDX-License-Identifier: MIT
"""Lighting: lumen method, points and strips of light, downlights, mirrors."""

from . import _core

globals().update(_core.subjects["lighting"])
__all__ = list(_core.subjects["lighting"])

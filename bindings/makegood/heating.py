# SPDX-License-Identifier: MIT
"""Heating elements and floors: resistance, power, surface temperature."""

from . import _core

globals().update(_core.subjects["heating"])
__all__ = list(_core.subjects["heating"])

# SPDX-License-Identifier: MIT
"""Conductors, protection, tests: what a circuit carries, loses and withstands."""

from . import _core

globals().update(_core.subjects["electrical"])
__all__ = list(_core.subjects["electrical"])

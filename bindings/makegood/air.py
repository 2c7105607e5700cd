# SPDX-License-Identifier: MIT
"""Extract ventilation: moist air, ducts, rates of extract."""

from . import _core

globals().update(_core.subjects["air"])
__all__ = list(_core.subjects["air"])

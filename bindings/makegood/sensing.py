# SPDX-License-Identifier: MIT
"""Floor probes and other temperature sensors: curves both ways, tolerances, checks."""

from . import _core

globals().update(_core.subjects["sensing"])
__all__ = list(_core.subjects["sensing"])

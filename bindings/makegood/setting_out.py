# SPDX-License-Identifier: MIT
"""Setting out: where to drill on a tiled wall."""

from . import _core

globals().update(_core.subjects["setting_out"])
__all__ = list(_core.subjects["setting_out"])

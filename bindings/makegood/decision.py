# SPDX-License-Identifier: MIT
"""Decisions: probabilities of states, entropy, order of repairs, value of information, scores of stated probabilities."""

from . import _core

globals().update(_core.subjects["decision"])
__all__ = list(_core.subjects["decision"])

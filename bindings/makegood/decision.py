# SPDX-License-Identifier: MIT
"""Conformity: probabilities, guard bands, risks of consumer and producer, what an instrument's statement is worth; states, tests and scores."""

from . import _core

globals().update(_core.subjects["decision"])
__all__ = list(_core.subjects["decision"])

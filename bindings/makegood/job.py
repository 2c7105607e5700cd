# SPDX-License-Identifier: MIT
"""What is wrong, which test is next, and what to do: families of hypotheses, tests and acts. One inquiry step by step: makegood.Session."""

from . import _core

globals().update(_core.subjects["job"])
__all__ = list(_core.subjects["job"])

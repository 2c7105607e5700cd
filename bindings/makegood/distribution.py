# SPDX-License-Identifier: MIT
"""What is known of a quantity, as a distribution: arguments of a formula's monte_carlo() and propagate()."""

from ._core import Distribution
from ._core import _arcsine as arcsine
from ._core import _exponential as exponential
from ._core import _normal as normal
from ._core import _rectangular as rectangular
from ._core import _student as student
from ._core import _trapezoidal as trapezoidal
from ._core import _triangular as triangular

__all__ = ["Distribution", "arcsine", "exponential", "normal", "rectangular", "student", "trapezoidal", "triangular"]

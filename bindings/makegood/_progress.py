# SPDX-License-Identifier: MIT
"""A progress bar on stderr, for calls that take a while."""

from __future__ import annotations

import sys
from collections.abc import Callable


def steps(progress: bool | Callable[[int], None], count: int) -> Callable[[int], None] | None:
    """What is called with the rows done: the caller's own function, a bar, or nothing."""
    if callable(progress):
        return progress
    if not progress:
        return None

    last = ""

    def bar(done: int) -> None:
        nonlocal last
        part = done / count if count else 1.0
        line = f"\r{'#' * round(40 * part):<40} {100 * part:3.0f} %" + ("\n" if done >= count else "")
        if line == last:
            return  # it shows that already
        last = line
        sys.stderr.write(line)
        sys.stderr.flush()

    return bar

# SPDX-License-Identifier: MIT
"""Price: markup and margin, tax, exact money, quotes, and which of several options to take."""

from . import _core

globals().update(_core.subjects["price"])
__all__ = [*_core.subjects["price"], "InvoiceTotals", "invoice_totals"]


def __getattr__(name):  # loaded when asked for: they need more than the import of the package may load
    if name in ("InvoiceTotals", "invoice_totals"):
        from . import _invoices

        return getattr(_invoices, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")

# SPDX-License-Identifier: MIT
"""Many invoices in columns of whole numbers; makegood.price shows it."""

from __future__ import annotations

from typing import Any, NamedTuple

from . import _core


class InvoiceTotals(NamedTuple):
    """One number an invoice, in whole minor units: NumPy arrays of int64."""

    net_minor: Any
    vat_minor: Any
    total_minor: Any


def invoice_totals(
    invoice: Any,
    quantity: Any,
    unit_price: Any,
    rate: Any,
    *,
    quantity_digits: int = 0,
    price_digits: int = 0,
    rate_digits: int = 2,
    rounding: str = "rate_half_up",
    line_mode: str = "half_up",
) -> InvoiceTotals:
    """Net, VAT and total of many invoices at once, exactly: the same numbers as `quote` gives one by one.

    Columns of whole numbers, one row a line: `invoice` (which invoice the line belongs to: 0, 1, 2 ..., rising), `quantity` in
    10^-quantity_digits, `unit_price` in 10^-price_digits of a minor unit, `rate` of tax in 10^-rate_digits per cent of the net price
    (2000 is 20.00 %; 0 for zero rate, exempt and outside the scope). `rounding` and `line_mode`: as of `quote`. An array of floats is
    refused: money is counted. An error names the line.

    >>> invoice_totals([0, 0, 0], [1, 1, 1], [99, 99, 99], [2000, 2000, 2000], rounding="line_half_up").vat_minor
    array([60])
    >>> invoice_totals([0, 0, 0], [1, 1, 1], [99, 99, 99], [2000, 2000, 2000]).vat_minor
    array([59])
    """
    import numpy as np

    columns = []
    for name, given in (("invoice", invoice), ("quantity", quantity), ("unit_price", unit_price), ("rate", rate)):
        if isinstance(given, np.ma.MaskedArray) and np.ma.is_masked(given):
            raise TypeError(f"invoice_totals: {name}: a mask hides some of the numbers")
        a = np.asarray(given)
        if a.size == 0:
            a = a.astype(np.int64)
        if a.dtype.kind not in "iu" or (a.dtype.kind == "u" and a.size and int(a.max()) > 2**63 - 1):
            raise TypeError(f"invoice_totals: {name} must be a column of whole numbers that fit 64 bits, not of {a.dtype}")
        columns.append(a.astype(np.int64))
    if any(a.ndim > 1 for a in columns):
        raise TypeError("invoice_totals: the columns have one dimension")
    size = max(a.size for a in columns)
    if any(a.ndim == 1 and a.size != size for a in columns):
        raise _core.RangeError("invoice_totals: the columns are of different lengths")
    columns = [np.ascontiguousarray(np.broadcast_to(a, (size,))) for a in columns]
    most = int(columns[0].max(initial=-1)) + 1
    if most > max(10 * size, 1000):
        raise _core.RangeError(f"invoice_totals: invoice {most - 1} with {size} lines: number them 0, 1, 2 ...")
    digits = (quantity_digits, price_digits, rate_digits)
    for name, d in zip(("quantity_digits", "price_digits", "rate_digits"), digits):
        if not isinstance(d, int) or isinstance(d, bool) or not 0 <= d <= 9:
            raise _core.RangeError(f"invoice_totals: {name} is a whole number from 0 to 9")
    return InvoiceTotals(*_core._invoice_totals(*columns, most, digits, rounding, line_mode))

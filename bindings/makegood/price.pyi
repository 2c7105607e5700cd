# SPDX-License-Identifier: MIT
# Written by bindings/make_stubs.py from the built module: do not edit.
"""Price: markup and margin, tax, exact money, quotes, and which of several options to take."""

from collections.abc import Sequence
from decimal import Decimal
from typing import Any, Final, final, Literal, NamedTuple, overload, TypeAlias

import numpy as np
import numpy.typing as npt

from ._core import Distribution, Formula, Measured, MonteCarlo, Propagated, _Array
from ._measured import MeasuredArray
from ._slow import Result, Worked

@final
class _PriceFromMarkup(Formula):
    """Price of what costs C with a markup in per cent of the cost, in the currency of the cost."""

    @overload
    def __call__(self, cost: float, markup_percent: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Price of what costs C with a markup in per cent of the cost, in the currency of the cost."""
    @overload
    def __call__(  # type: ignore
        self,
        cost: float | Measured,
        markup_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        cost: float | _Array,
        markup_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        cost: float | _Array | Measured | MeasuredArray,
        markup_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, cost: float | Measured, markup_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, cost: float | Measured, markup_percent: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        cost: float | _Array,
        markup_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        cost: float | tuple[float, float],
        markup_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cost: float | Measured | Distribution,
        markup_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        cost: float | Measured | Distribution,
        markup_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _PriceFromMargin(Formula):
    """Price of what costs C that leaves a margin in per cent of the price, in the currency of the cost."""

    @overload
    def __call__(self, cost: float, margin_percent: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Price of what costs C that leaves a margin in per cent of the price, in the currency of the cost."""
    @overload
    def __call__(  # type: ignore
        self,
        cost: float | Measured,
        margin_percent: float | Measured,
        *,
        order: Literal[1, 2] = 1,
    ) -> Measured: ...
    @overload
    def __call__(  # type: ignore
        self,
        cost: float | _Array,
        margin_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        cost: float | _Array | Measured | MeasuredArray,
        margin_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, cost: float | Measured, margin_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, cost: float | Measured, margin_percent: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        cost: float | _Array,
        margin_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(
        self,
        cost: float | tuple[float, float],
        margin_percent: float | tuple[float, float],
    ) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cost: float | Measured | Distribution,
        margin_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        cost: float | Measured | Distribution,
        margin_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _MarginFromMarkup(Formula):
    """Margin, in per cent of the price, that a markup in per cent of the cost leaves."""

    @overload
    def __call__(self, markup_percent: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Margin, in per cent of the price, that a markup in per cent of the cost leaves."""
    @overload
    def __call__(self, markup_percent: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        markup_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        markup_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, markup_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, markup_percent: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        markup_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, markup_percent: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        markup_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        markup_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _MarkupFromMargin(Formula):
    """Markup, in per cent of the cost, that leaves a margin in per cent of the price."""

    @overload
    def __call__(self, margin_percent: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Markup, in per cent of the cost, that leaves a margin in per cent of the price."""
    @overload
    def __call__(self, margin_percent: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        margin_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        margin_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, margin_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, margin_percent: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        margin_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, margin_percent: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        margin_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        margin_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _VatShareOfGross(Formula):
    """Share of a price with tax that is tax, when the rate is in per cent of the price without it."""

    @overload
    def __call__(self, vat_rate_percent: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Share of a price with tax that is tax, when the rate is in per cent of the price without it."""
    @overload
    def __call__(self, vat_rate_percent: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        vat_rate_percent: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        vat_rate_percent: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, vat_rate_percent: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, vat_rate_percent: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        vat_rate_percent: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, vat_rate_percent: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        vat_rate_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        vat_rate_percent: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _BreakEvenProbability(Formula):
    """Probability of success above which an act pays: what it costs over what it saves when it succeeds."""

    @overload
    def __call__(self, cost: float, saving: float, *, errors: Literal["raise", "nan"] = "raise") -> float:  # type: ignore
        """Probability of success above which an act pays: what it costs over what it saves when it succeeds."""
    @overload
    def __call__(self, cost: float | Measured, saving: float | Measured, *, order: Literal[1, 2] = 1) -> Measured: ...  # type: ignore
    @overload
    def __call__(  # type: ignore
        self,
        cost: float | _Array,
        saving: float | _Array,
        *,
        out: npt.NDArray[np.float64] | None = None,
        where: bool | npt.NDArray[np.bool_] = True,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> npt.NDArray[np.float64]: ...
    @overload
    def __call__(
        self,
        cost: float | _Array | Measured | MeasuredArray,
        saving: float | _Array | Measured | MeasuredArray,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> MeasuredArray: ...
    def worked(self, cost: float | Measured, saving: float | Measured) -> Worked: ...
    def equation(self, latex: bool = False) -> str: ...
    @overload
    def sensitivities(self, cost: float | Measured, saving: float | Measured) -> dict[str, float]: ...  # type: ignore
    @overload
    def sensitivities(
        self,
        cost: float | _Array,
        saving: float | _Array,
        *,
        errors: Literal["raise", "nan"] = "raise",
        threads: int = 1,
    ) -> dict[str, npt.NDArray[np.float64]]: ...
    def bounds(self, cost: float | tuple[float, float], saving: float | tuple[float, float]) -> tuple[float, float]: ...
    def monte_carlo(
        self,
        cost: float | Measured | Distribution,
        saving: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> MonteCarlo: ...
    def propagate(
        self,
        cost: float | Measured | Distribution,
        saving: float | Measured | Distribution,
        *,
        trials: int | None = None,
        digits: int = 2,
        probability: float = 0.95,
        seed: int = 1,
        threads: int = 1,
        most: int = 5_000_000,
        refused_share: float = 0.001,
    ) -> Propagated: ...

@final
class _RoundMoney(Formula):
    """An exact amount as whole minor units of its currency, rounded once by a named rule."""

    def __call__(self, amount: str | int | Decimal, mode: str, currency: str | dict[str, Any] | None = None) -> Result:
        """An exact amount as whole minor units of its currency, rounded once by a named rule."""

@final
class _VatFromGross(Formula):
    """The tax in a price with tax, the price without it, and the fraction that the tax is of the price with it, exactly."""

    def __call__(
        self,
        gross: str | int | Decimal,
        rate_percent: str | int | Decimal,
        mode: str | None = None,
        currency: str | dict[str, Any] | None = None,
    ) -> Result:
        """The tax in a price with tax, the price without it, and the fraction that the tax is of the price with it, exactly."""

@final
class _Quote(Formula):
    """A quote in exact money: labour, travel, materials, contingency, discount, the risk of a call-back; VAT by line, rate or as a whole by a named rule of rounding; the total, and what it comes to in one, five and nine of ten cases where durations are spread."""

    def __call__(
        self,
        lines: Sequence[dict[str, Any]],
        vat: dict[str, Any] | None = None,
        rounding: str | dict[str, Any] | None = None,
        registered: bool | None = None,
        currency: str | dict[str, Any] | None = None,
        discount: dict[str, Any] | None = None,
        budget: str | int | Decimal | None = None,
        retailer: bool | None = None,
        line_mode: str | None = None,
        show_call_back: bool | None = None,
        seed: float | None = None,
        draws: float | None = None,
    ) -> Result:
        """A quote in exact money: labour, travel, materials, contingency, discount, the risk of a call-back; VAT by line, rate or as a whole by a named rule of rounding; the total, and what it comes to in one, five and nine of ten cases where durations are spread."""

@final
class _CompareOptions(Formula):
    """Repair, work around, replace, isolate or decline, from the probabilities of a diagnosis: expected cost, spread and worst case of each, attempts and what follows their failure, regret, what is left dangerous or without proof, where the choice turns, and what knowing would be worth."""

    def __call__(
        self,
        options: Sequence[dict[str, Any]],
        probabilities: dict[str, Any],
        dangerous: Sequence[str] | None = None,
        budget: str | int | Decimal | None = None,
        currency: str | dict[str, Any] | None = None,
        negligible_probability: float | None = None,
        seed: float | None = None,
        draws: float | None = None,
    ) -> Result:
        """Repair, work around, replace, isolate or decline, from the probabilities of a diagnosis: expected cost, spread and worst case of each, attempts and what follows their failure, regret, what is left dangerous or without proof, where the choice turns, and what knowing would be worth."""

price_from_markup: Final[_PriceFromMarkup]
price_from_margin: Final[_PriceFromMargin]
margin_from_markup: Final[_MarginFromMarkup]
markup_from_margin: Final[_MarkupFromMargin]
vat_share_of_gross: Final[_VatShareOfGross]
break_even_probability: Final[_BreakEvenProbability]
round_money: Final[_RoundMoney]
vat_from_gross: Final[_VatFromGross]
quote: Final[_Quote]
compare_options: Final[_CompareOptions]

_Whole: TypeAlias = int | Sequence[int] | npt.NDArray[np.integer[Any]]

class InvoiceTotals(NamedTuple):
    """One number an invoice, in whole minor units: NumPy arrays of int64."""

    net_minor: npt.NDArray[np.int64]
    vat_minor: npt.NDArray[np.int64]
    total_minor: npt.NDArray[np.int64]

def invoice_totals(
    invoice: _Whole,
    quantity: _Whole,
    unit_price: _Whole,
    rate: _Whole,
    *,
    quantity_digits: int = 0,
    price_digits: int = 0,
    rate_digits: int = 2,
    rounding: str = "rate_half_up",
    line_mode: str = "half_up",
) -> InvoiceTotals:
    """Net, VAT and total of many invoices at once, exactly: the same numbers as `quote` gives one by one."""

__all__ = [
    "price_from_markup",
    "price_from_margin",
    "margin_from_markup",
    "markup_from_margin",
    "vat_share_of_gross",
    "break_even_probability",
    "round_money",
    "vat_from_gross",
    "quote",
    "compare_options",
    "InvoiceTotals",
    "invoice_totals",
]

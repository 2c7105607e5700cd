# SPDX-License-Identifier: MIT
"""The words and numbers of a page: how an assessment is said."""

from __future__ import annotations

import math
from typing import Any, TypeGuard

Document = dict[str, Any]

# ---------------------------------------------------------------------------------------------------------------- words

_GROUPS = (
    ("fail", "Does not meet its limit", "Nothing was found that does not meet its limit."),
    ("undecided", "Not known yet", "Every question that was asked could be answered."),
    ("pass", "In order", "Nothing was proved to be in order."),
)
_PROVED = {"pass": "meets its limit", "fail": "does not meet its limit", "undecided": "not known yet"}
_AS_READ = {"pass": "meets the limit", "fail": "does not meet the limit", "undecided": "cannot be compared"}
_REASONS = {
    "not measured": "it has not been measured",
    "outside validity": "the method does not hold here",
    "straddles limit": "the doubt of the reading reaches across the limit",
    "needs maker's figure": "the maker's figure is missing",
    "no rule in book": "the rulebook used has no limit for it",
    "precondition missing": "something else has to come first",
}
_COMPARED = {"≤": "at most", "<": "below", "≥": "at least", ">": "above"}
_GRADES = {
    "seen": "read in the source",
    "standard": "read in the source",
    "regulation": "read in the source",
    "handbook": "read in a handbook",
    "memory": "from memory, not checked against the print",
    "common-practice": "a rule of the trade, in no standard that was read",
    "derived": "derived from the source",
    "override": "changed by name for this assessment",
}
_INVENTED = "This is an invented demonstration: the place, the people and every reading are made up."
_STANDING = (
    "Findings are suggestions that can be checked step by step. They are no certificate and no condition report, and they do "
    "not take the place of a competent person on site."
)

# -------------------------------------------------------------------------------------------------------------- numbers

_SUPERSCRIPT = str.maketrans("-0123456789", "⁻⁰¹²³⁴⁵⁶⁷⁸⁹")
_THIN = "\u202f"


def _is_number(x: Any) -> TypeGuard[float]:
    return isinstance(x, (int, float)) and not isinstance(x, bool) and math.isfinite(x)


def _plain_number(x: float, digits: int = 4) -> str:
    """`digits` significant digits, never fewer than the whole units, no exponent in everyday sizes."""
    if x == 0:
        return "0"
    size = math.floor(math.log10(abs(x)))
    if size >= 9 or size < -6:
        mantissa, exponent = f"{x:.{digits - 1}e}".split("e")
        if "." in mantissa:
            mantissa = mantissa.rstrip("0").rstrip(".")
        return f"{mantissa} × 10{str(int(exponent)).translate(_SUPERSCRIPT)}".replace("-", "−")
    shown = f"{x:.{max(0, digits - 1 - size)}f}"
    if "." in shown:
        shown = shown.rstrip("0").rstrip(".")
    whole, dot, rest = shown.partition(".")
    sign = "−" if whole.startswith("-") else ""
    whole = whole.lstrip("-")
    if len(whole) > 4:
        whole = f"{int(whole):,}".replace(",", _THIN)
    return sign + whole + dot + rest


def _doubt(u: float) -> str:
    """Two significant digits, the zeros at the end kept: "0.10"."""
    shown = _plain_number(u, 2)
    if "×" in shown or u >= 10 or u == 0:
        return shown
    return f"{u:.{1 - math.floor(math.log10(float(f'{u:.1e}')))}f}"


def _number(x: Any, beside: tuple[Any, ...] = (), digits: int = 4) -> str:
    """A number with the digits that matter: more of them where a number to be compared with it would print alike."""
    if not _is_number(x):
        return "–"
    others = [float(y) for y in beside if _is_number(y) and float(y) != float(x)]
    for n in range(digits, 16):
        shown = _plain_number(float(x), n)
        if all(shown != _plain_number(y, n) for y in others):
            return shown
    return repr(float(x))


def _quantity(x: Any, unit: str, beside: tuple[Any, ...] = (), digits: int = 4) -> str:
    shown = _number(x, beside, digits)
    return f"{shown}\u00a0{unit}" if unit and shown != "–" else shown


_SIGNS = {"GBP": "£", "EUR": "€", "USD": "$"}
_DECIMALS = dict.fromkeys(("CLP", "ISK", "JPY", "KRW", "VND"), 0) | dict.fromkeys(("BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"), 3)


def decimals(currency: str) -> int:
    """How many decimals an amount of this currency is written with."""
    return _DECIMALS.get(currency, 2)


def money(price: Any, currency: str) -> str:
    """An amount as it is said, with the decimals of its currency; empty where there is none. No digit of the document is dropped or rounded."""
    if price in (None, "") or isinstance(price, (bool, dict, list)):
        return ""
    digits = decimals(currency)
    said = f"{price:.{digits}f}" if isinstance(price, (int, float)) else str(price)
    whole, _, rest = said.partition(".")
    sign, whole = ("−", whole[1:]) if whole.startswith("-") else ("", whole)
    if not whole.isdigit() or (rest and not rest.isdigit()):  # not an amount: said as it stands
        return f"{said}\u00a0{currency}".rstrip()
    if len(whole) > 4:
        whole = f"{int(whole):,}".replace(",", _THIN)
    rest = rest.rstrip("0").ljust(digits, "0")
    amount = whole + (f".{rest}" if rest else "")
    return f"{sign}{_SIGNS[currency]}{amount}" if currency in _SIGNS else f"{sign}{amount}\u00a0{currency}".rstrip()


def _place(v: Document) -> float | None:
    """Where the value stands on the scale of a drawing; a device that did not trip has no such place."""
    return float(v["value"]) if _is_number(v.get("value")) and v.get("censored") != "no trip" else None


def _limits(v: Document) -> tuple[Any, Any]:
    """Lower and upper limit; a document with `limit` alone is understood by its comparator."""
    lower, upper = v.get("lower"), v.get("upper")
    if not _is_number(lower) and not _is_number(upper) and _is_number(v.get("limit")):
        if v.get("comparator") in ("≥", ">"):
            lower = v["limit"]
        else:
            upper = v["limit"]
    return (lower if _is_number(lower) else None), (upper if _is_number(upper) else None)


def _value_text(v: Document) -> str:
    """The value as it is said, with its end of range where the reading had none."""
    value, unit, censored = v.get("value"), v.get("unit") or "", v.get("censored") or ""
    if not _is_number(value):
        return ""
    if censored == "no trip":
        return "no trip"
    shown = _quantity(value, unit, _limits(v))
    direction = _direction(v)
    return f"more than {shown}" if direction > 0 else f"less than {shown}" if direction < 0 else shown


def _direction(v: Document) -> int:
    """Where the true value lies from the number shown: +1 above it, -1 below it, 0 at it (no reading out of range)."""
    censored, value = v.get("censored") or "", v.get("value")
    if not censored or not _is_number(value):
        return 0
    lower, upper = _limits(v)
    outcome = v.get("outcome")
    said = -1 if censored == "below" else 1
    if (lower is None) == (upper is None):
        return said
    towards_upper = upper is not None
    if outcome == "pass":
        return -1 if towards_upper else 1
    if outcome == "fail":
        return 1 if towards_upper else -1
    if towards_upper:
        return 1 if value <= upper else -1
    return -1 if lower is not None and value >= lower else 1


def _doubtful_value(v: Document) -> str:
    """Value and expanded uncertainty in one: "1.300 ± 0.094 Ω"; the value alone where there is no doubt to show."""
    u, unit = v.get("expanded_uncertainty"), v.get("unit") or ""
    if not _is_number(v.get("value")) or v.get("censored") or not _is_number(u) or u <= 0:
        return _value_text(v)
    doubt, value = _doubt(u), _number(v["value"], _limits(v))
    if "×" not in doubt + value:
        missing = len(doubt.partition(".")[2]) - len(value.partition(".")[2])
        if missing > 0:
            value += ("" if "." in value else ".") + "0" * missing
    return f"{value} ± {doubt}" + (f"\u00a0{unit}" if unit else "")


def _limit_text(v: Document) -> str:
    lower, upper = _limits(v)
    unit, value = v.get("unit") or "", v.get("value")
    if lower is not None and upper is not None:
        return f"{_number(lower, (value,))} to {_quantity(upper, unit, (value,))}"
    limit = upper if upper is not None else lower
    if limit is None:
        return ""
    word = _COMPARED.get(v.get("comparator") or "", "at most" if upper is not None else "at least")
    return f"{word} {_quantity(limit, unit, (value,))}"


def _margin_text(v: Document) -> str:
    margin = v.get("margin")
    if not _is_number(margin):
        return ""
    if v.get("censored") == "no trip":
        return "without end: it did not trip"
    if margin == 0:
        return "none: exactly on the limit"
    side = "to spare" if margin > 0 else "beyond the limit"
    least = "at least " if v.get("censored") and v.get("outcome") in ("pass", "fail") else ""
    return f"{least}{_quantity(abs(margin), v.get('unit') or '')} {side}"


def _uncertainty_text(v: Document) -> str:
    u = v.get("expanded_uncertainty")
    if not _is_number(u) or not _is_number(v.get("value")):
        return ""
    unit = f"\u00a0{v['unit']}" if v.get("unit") else ""
    return "none stated" if u == 0 else f"± {_doubt(u)}{unit} (k = 2)"


def _probability_text(v: Document) -> str:
    p = v.get("probability")
    if not _is_number(p):
        return "not given for a reading out of range" if v.get("censored") and _is_number(v.get("value")) else ""
    if v.get("standard_uncertainty") == 0:
        return "not a question of probability: no uncertainty enters"
    if p > 0.999:
        return "over 99.9\u00a0%"
    if p < 0.001:
        return "under 0.1\u00a0%"
    return _number(100.0 * p, (95.0, 5.0), 3) + "\u00a0%"


def _reason_text(f: Document) -> str:
    v = f.get("verdict") or {}
    reason = f.get("reason") or v.get("reason") or ""
    if reason == "straddles limit" and v.get("censored"):
        return "the reading is out of range on the side where it proves nothing"
    return _REASONS.get(reason, reason)


def _fails_as_read(f: Document) -> bool:
    return f.get("outcome") == "undecided" and (f.get("verdict") or {}).get("plain") == "fail"


def _says_as_read(f: Document) -> bool:
    """Whether the sentence of a finding says by itself that the reading does not meet the limit."""
    return "as read" in (f.get("plain") or "").lower()


def _findings(assessment: Document) -> list[tuple[int, Document]]:
    return list(enumerate(assessment.get("findings") or [], 1))


def _group(assessment: Document, outcome: str) -> list[tuple[int, Document]]:
    """The findings of one outcome; among the undecided, those that do not meet their limit as read come first."""
    chosen = [(n, f) for n, f in _findings(assessment) if f.get("outcome") == outcome]
    return sorted(chosen, key=lambda item: not _fails_as_read(item[1]))


def _steps(f: Document) -> list[Document]:
    flat: list[Document] = []
    for item in list(f.get("before") or []) + list((f.get("verdict") or {}).get("steps") or []):
        flat.extend(item["steps"] if isinstance(item, dict) and isinstance(item.get("steps"), list) else [item])
    return flat


def _count_text(n: int, one: str, many: str) -> str:
    return f"{n} {one if n == 1 else many}"


def _summary(assessment: Document) -> str:
    total = len(assessment.get("findings") or [])
    if not total:
        return "No question could be asked of this visit: it holds nothing that can be checked."
    counts = {outcome: len(_group(assessment, outcome)) for outcome, _, _ in _GROUPS}
    return (
        f"{_count_text(total, 'question was', 'questions were')} asked: "
        f"{_count_text(counts['fail'], 'does not meet its limit', 'do not meet their limit')}, "
        f"{_count_text(counts['undecided'], 'is', 'are')} not known yet, {_count_text(counts['pass'], 'is', 'are')} in order."
    )


def _as_document(assessment: Any) -> Document:
    document: Document = assessment.to_dict() if hasattr(assessment, "to_dict") else assessment
    return document

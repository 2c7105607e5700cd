# SPDX-License-Identifier: MIT
"""An assessment as a page and as text.

`report(assessment)` writes one self-contained HTML file: it opens without a network, prints on A4, reads on a phone, without
colour and with a screen reader. `text(assessment)` writes the same findings for a terminal.
Both take the document of an assessment (format "makegood-assessment-1"); neither calculates or judges anything.
"""

from __future__ import annotations

import math
import re
import textwrap
from html import escape
from typing import Any, TypeGuard

__all__ = ["report", "text"]

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


# ---------------------------------------------------------------------------------------------------------- the drawing


def _nice_ticks(low: float, high: float) -> list[float]:
    span = high - low
    step = 10.0 ** math.floor(math.log10(span / 4))
    for factor in (1, 2, 2.5, 5, 10):
        if span / (step * factor) <= 5:
            step *= factor
            break
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return [k * step for k in range(first, last + 1)]


class _Scale:
    """From a quantity to per cent of the width of a drawing."""

    def __init__(self, v: Document) -> None:
        value = _place(v)
        lower, upper = _limits(v)
        limits = [float(x) for x in (lower, upper) if x is not None]
        u = v.get("expanded_uncertainty")
        u = float(u) if _is_number(u) and value is not None and not v.get("censored") else 0.0
        spots = limits + ([value] if value is not None else [])
        self.log = (
            value is not None and bool(limits) and all(s > 0 for s in spots)
            and max(max(value / x, x / value) for x in limits) > 20.0
        )  # fmt: skip
        if self.log:
            low, high = math.log10(min(spots)), math.log10(max(spots))
            pad = 0.18 * (high - low)
            self.low, self.high = math.floor(10 * (low - pad)) / 10, math.ceil(10 * (high + pad)) / 10
            self.ticks = [10.0**k for k in range(math.ceil(self.low), math.floor(self.high) + 1)]
            while len(self.ticks) > 6:
                self.ticks = self.ticks[::2]
        else:
            low, high = min(spots), max(spots)
            if value is not None:
                low, high = min(low, value - u), max(high, value + u)
            if len(limits) == 2 and limits[0] < limits[1]:
                room = 0.5 * (limits[1] - limits[0])
                low, high = min(low, limits[0] - room), max(high, limits[1] + room)
                pad = 0.08 * (high - low)
                floor = 0.0 if min(spots) >= 0.0 else -math.inf
                self.low, self.high = max(floor, low - pad), high + pad
            elif min(spots) >= 0.0 and max(spots) > 0.0:
                self.low, self.high = 0.0, 1.22 * high
            else:
                pad = 0.2 * (high - low) or abs(high) or 1.0
                self.low, self.high = low - pad, high + pad
            self.ticks = _nice_ticks(self.low, self.high)

    def __call__(self, x: float) -> float:
        if self.log:
            if x <= 0:
                return 0.0
            x = math.log10(x)
        return min(100.0, max(0.0, 100.0 * (x - self.low) / (self.high - self.low)))


def _mark(outcome: str) -> str:
    """The shape of an outcome about (0, 0): it is told apart without colour."""
    if outcome == "fail":
        return '<path class="mark" d="M0-7 7 0 0 7-7 0Z"/>'
    if outcome == "pass":
        return '<circle class="mark" r="5.5"/>'
    return '<circle class="mark open" r="5.5"/><path class="stroke" d="M-2.4-2.4 2.4 2.4M-2.4 2.4 2.4-2.4"/>'


def _anchor(x: float) -> str:
    return "start" if x < 50 else "end"


def _drawing(v: Document) -> str:
    """Limit against value: permitted side hatched and framed, limit as a heavy line, value as a mark with its doubt."""
    value = _place(v)
    lower, upper = _limits(v)
    if value is None and lower is None and upper is None:
        return ""
    scale = _Scale(v)
    parts: list[str] = []
    add = parts.append

    if lower is not None or upper is not None:
        left = scale(lower) if lower is not None else 0.0
        right = scale(upper) if upper is not None else 100.0
        add(f'<rect class="permitted" x="{left:.2f}%" y="22" width="{max(0.0, right - left):.2f}%" height="26"/>')
        for limit in (lower, upper):
            if limit is not None:
                x = scale(limit)
                add(f'<line class="limit" x1="{x:.2f}%" x2="{x:.2f}%" y1="17" y2="53"/>')
        if lower is not None and upper is not None:
            middle = (left + right) / 2
            anchor = "start" if middle < 35 else "end" if middle > 65 else "middle"
            at = left if anchor == "start" else right if anchor == "end" else middle
        else:
            at = right if upper is not None else left
            anchor = _anchor(at)
        add(f'<text x="{at:.2f}%" y="12" text-anchor="{anchor}">{escape(_limit_text(v))}</text>')

    add('<line class="axis" x1="0" x2="100%" y1="76" y2="76"/>')
    if scale.log:
        for k in range(math.floor(scale.low), math.ceil(scale.high) + 1):
            for m in range(1, 10):
                at = k + math.log10(m)
                if scale.low <= at <= scale.high:
                    x = scale(m * 10.0**k)
                    add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="{73 if m == 1 else 74.5}" y2="76"/>')
    for tick in scale.ticks:
        x = scale(tick)
        anchor = "start" if x < 4 else "end" if x > 96 else "middle"
        add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="72" y2="76"/>')
        add(f'<text class="tick" x="{x:.2f}%" y="89" text-anchor="{anchor}">{escape(_number(tick))}</text>')

    if value is not None:
        x = scale(value)
        direction = _direction(v)
        u = v.get("expanded_uncertainty")
        label = _value_text(v)
        if direction:
            end = 100.0 if direction > 0 else 0.0
            far = x + math.copysign(min(22.0, abs(end - x)), direction)
            add(f'<line class="doubt" x1="{x:.2f}%" x2="{far:.2f}%" y1="35" y2="35"/>')
            head = "M0 0-9-5V5Z" if direction > 0 else "M0 0 9-5V5Z"
            add(f'<svg x="{far:.2f}%" y="35" overflow="visible"><path class="mark" d="{head}"/></svg>')
        elif _is_number(u) and u > 0:
            low, high = scale(value - u), scale(value + u)
            add(f'<line class="doubt" x1="{low:.2f}%" x2="{high:.2f}%" y1="35" y2="35"/>')
            for cap in (low, high):
                if 0.0 < cap < 100.0:
                    add(f'<line class="doubt" x1="{cap:.2f}%" x2="{cap:.2f}%" y1="30" y2="40"/>')
            label = _doubtful_value(v)
        add(f'<line class="axis" x1="{x:.2f}%" x2="{x:.2f}%" y1="42" y2="76"/>')
        add(f'<svg x="{x:.2f}%" y="35" overflow="visible">{_mark(v.get("outcome") or "")}</svg>')
        nudge = 5 if x < 50 else -5
        add(f'<text class="value" x="{x:.2f}%" dx="{nudge}" y="66" text-anchor="{_anchor(x)}">{escape(label)}</text>')

    elif v.get("censored") and upper is not None:
        x = (scale(upper) + 100.0) / 2
        add(f'<line class="doubt" x1="{x:.2f}%" x2="100%" y1="35" y2="35"/>')
        add('<svg x="100%" y="35" overflow="visible"><path class="mark" d="M0 0-9-5V5Z"/></svg>')
        add(f'<svg x="{x:.2f}%" y="35" overflow="visible">{_mark(v.get("outcome") or "")}</svg>')
        add(f'<text class="value" x="100%" y="66" text-anchor="end">{escape(_value_text(v))}</text>')

    label = _drawing_label(v, scale.log)
    caption = '<figcaption class="small">The scale goes in steps of ten.</figcaption>' if scale.log else ""
    return (
        f'<figure><svg class="drawing" role="img" aria-label="{escape(label)}" width="100%" height="94">'
        f"{''.join(parts)}</svg>{caption}</figure>"
    )


def _drawing_label(v: Document, log: bool) -> str:
    said = ["Drawing"]
    if log:
        said[0] += " on a scale in steps of ten"
    limit = _limit_text(v)
    said.append(f"permitted is {limit}" if limit else "no limit")
    if _is_number(v.get("value")):
        said.append(f"the value is {_doubtful_value(v)}")
        said.append(f"as read it {_AS_READ.get(v.get('plain') or 'undecided', 'cannot be compared')}")
    else:
        said.append("there is no value yet")
    return ": ".join((said[0], "; ".join(said[1:]))).replace("\u00a0", " ") + "."


# ------------------------------------------------------------------------------------------------------------- the page

_STYLE = """
:root{--ink:#22262a;--soft:#5a6268;--line:#c9ccc8;--paper:#fbfaf6;--tint:#f1efe8;color-scheme:light}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.55 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans",sans-serif;
overflow-wrap:anywhere;font-variant-numeric:tabular-nums}
header,main,footer{max-width:47rem;margin:0 auto;padding:0 1.25rem}
header{padding-top:2.5rem}
footer{padding:1.5rem 1.25rem 3rem;color:var(--soft);font-size:.875rem}
h1,h2,h3{font-family:Georgia,"Noto Serif",serif;font-weight:normal;line-height:1.25}
h1{font-size:1.9rem;margin:0 0 .4rem}
h2{font-size:1.5rem;margin:3.2rem 0 .6rem}
h3{font-size:1.15rem;margin:2.2rem 0 .6rem;font-weight:bold}
h4{font-size:1.05rem;margin:0;line-height:1.35}
p{margin:.5rem 0}
a{color:inherit;text-decoration-thickness:1px;text-underline-offset:.2em}
a:focus-visible,summary:focus-visible{outline:3px solid var(--ink);outline-offset:3px}
.skip{position:absolute;left:-99rem}
.skip:focus{left:1rem;top:1rem;background:var(--paper);padding:.5rem}
.soft,.small{color:var(--soft)}
.small{font-size:.875rem}
.said{border-left:.3rem double var(--ink);padding:.1rem 0 .1rem 1rem;margin:1.2rem 0;font-size:1.05rem}
ul.plain{list-style:none;margin:0;padding:0}
ul.plain>li{display:grid;grid-template-columns:1.5rem 1fr;margin:.75rem 0}
ul.tight>li{margin:.35rem 0}
.shape{width:14px;height:14px;overflow:visible;margin-top:.36rem}
sub{font-size:.75em;line-height:0}
.date{display:inline-block}
.next{display:block}
.cautions li{margin:.35rem 0}
article{margin:0 0 2.6rem;scroll-margin-top:1rem}
.answer{display:grid;grid-template-columns:1.5rem 1fr;margin:.45rem 0 .6rem}
figure{margin:.9rem -8px .5rem;padding:0 8px;overflow:hidden}
svg.drawing{display:block;overflow:visible;max-width:38rem}
svg text{font-size:12.5px;fill:var(--ink)}
svg text.tick{font-size:11px;fill:var(--soft)}
.permitted{fill:url(#hatch);stroke:var(--ink);stroke-width:.8}
.limit{stroke:var(--ink);stroke-width:3}
.axis{stroke:var(--soft);stroke-width:.8}
.doubt,.stroke{stroke:var(--ink);stroke-width:2;fill:none}
.stroke{stroke-width:1.2}
.mark{fill:var(--ink);stroke:var(--paper);stroke-width:1}
.mark.open{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
dl.facts{display:grid;grid-template-columns:repeat(auto-fill,minmax(12.5rem,1fr));gap:.55rem 1.5rem;margin:.7rem 0}
dt{color:var(--soft);font-size:.8125rem;line-height:1.3}
dd{margin:0}
.notes p{margin:.3rem 0}
summary{cursor:pointer;width:max-content;max-width:100%;margin-top:.6rem;text-decoration:underline;text-decoration-thickness:1px;
text-underline-offset:.2em}
ol.steps{margin:.4rem 0 0;padding:0 0 0 1.6rem}
ol.steps>li{margin:.75rem 0}
.sum{display:grid;grid-template-columns:auto 1fr;column-gap:.5rem;font-family:Georgia,"Noto Serif","DejaVu Serif",serif}
.sum span{min-width:0}
.legend{display:grid;grid-template-columns:repeat(auto-fill,minmax(13.5rem,1fr));gap:.3rem 1.5rem;list-style:none;padding:0;margin:.8rem 0}
.legend li{display:grid;grid-template-columns:52px 1fr;align-items:center}
.legend svg{width:40px;height:20px;overflow:visible}
@media screen{details:not([open])+.working{display:none}}
@media (max-width:30rem){h1{font-size:1.55rem}h2{font-size:1.3rem;margin-top:2.6rem}
dl.facts{display:block}dl.facts div{display:grid;grid-template-columns:9.2rem 1fr;column-gap:.6rem;margin:.25rem 0;align-items:baseline}
ol.steps{padding-left:1.3rem}}
@page{size:A4;margin:16mm 16mm 18mm}
@media print{
:root{--paper:#fff;--tint:#fff}
html{font-size:9.8pt}
body{line-height:1.42}
header,main,footer{max-width:none;padding:0}
.skip{display:none}
h1{font-size:20pt}h2{font-size:15pt;margin-top:9mm}h3{margin-top:6mm}
h2,h3,h4,.answer,dt{break-after:avoid}
.head,figure,ol.steps>li,ul.plain>li{break-inside:avoid}
article{margin-bottom:7mm}
a{text-decoration:none}
summary{list-style:none;text-decoration:none;font-weight:bold;break-after:avoid}
summary::-webkit-details-marker{display:none}
details{break-after:avoid}
.working{break-before:avoid}
p{orphans:3;widows:3}
}
"""


_UNIT = re.compile(r"(?<=\d) (?=(?:[MkmµG]?(?:Ω|V|A|W|Pa|m|s)|l/s|°C|K|%|mm²|m³|A²·s|1/h)(?![\w/²³]))")
_INDEX = re.compile(r"(?<![A-Za-z_])([^\W\d_]{1,2})_([^\W_]{1,4}|[+−-])(?![^\W_])")


def _words(said: str) -> str:
    """Escaped words in which no line breaks between a number and its unit."""
    return _UNIT.sub("\u00a0", escape(said))


def _formula(said: str) -> str:
    """An escaped formula: U_0 is written with an index."""
    return _INDEX.sub(r"\1<sub>\2</sub>", escape(said))


def _shape(outcome: str) -> str:
    return f'<svg class="shape" viewBox="-7 -7 14 14" aria-hidden="true">{_mark(outcome)}</svg>'


def _name(f: Document) -> str:
    return f.get("subject") or f.get("path") or "Unnamed"


def _overview(assessment: Document) -> str:
    out: list[str] = []
    for outcome, title, nothing in _GROUPS:
        chosen = _group(assessment, outcome)
        out.append(f'<h3 id="{outcome}">{escape(title)} <span class="soft">({len(chosen)})</span></h3>')
        if not chosen:
            out.append(f"<p>{escape(nothing)}</p>")
            continue
        tight = " tight" if outcome == "pass" else ""
        out.append(f'<ul class="plain{tight}">')
        for n, f in chosen:
            sentence = f.get("plain") or f.get("question") or ""
            body = f'<a href="#f{n}">{escape(_name(f))}</a>: '
            if _fails_as_read(f) and not _says_as_read(f):
                body += "<strong>As read, it does not meet its limit;</strong> that is not proved. "
            body += _words(sentence)
            if outcome == "undecided":
                settle = f.get("next") or (f.get("verdict") or {}).get("settle") or ""
                if settle:
                    body += f'<span class="next"><strong>To settle it:</strong> {_words(settle)}</span>'
            out.append(f"<li>{_shape(outcome)}<span>{body}</span></li>")
        out.append("</ul>")
    return "".join(out)


def _fact(term: str, said: str) -> str:
    return f"<div><dt>{escape(term)}</dt><dd>{escape(said)}</dd></div>" if said else ""


def _bare(line: str) -> str:
    return re.sub(r"\s", "", line)


def _step(s: Document) -> str:
    unit = s.get("unit") or ""
    symbol = s.get("symbol") or ""
    lines: list[str] = []
    result = _quantity(s.get("value"), unit, digits=6) if _is_number(s.get("value")) else ""
    for line in (s.get("equation") or "", s.get("substituted") or "", result):
        if line and line != symbol and _bare(line) not in map(_bare, lines[-1:]):
            lines.append(line)
    rows = "".join(
        f"<span>{_formula(symbol) if i == 0 else ''}</span><span>{'= ' if symbol or i else ''}{_formula(line)}</span>"
        for i, line in enumerate(lines)
    )
    out = f'<div class="sum">{rows}</div>'
    if s.get("condition"):
        because = s["condition"]
        because = because[:1].upper() + because[1:] if because.startswith("since ") else f"Because: {because}"
        out += f'<p class="small">{_formula(because)}</p>'
    where = s.get("source") or s.get("where_from") or ""
    if isinstance(where, dict):
        where = ", ".join(str(where[k]) for k in ("title", "clause") if where.get(k))
    if where:
        out += f'<p class="small">From: {_formula(str(where))}</p>'
    return f"<li>{out}</li>"


def _source_text(v: Document) -> str:
    s = v.get("source") or {}
    where = ", ".join(x for x in (s.get("title") or "", s.get("clause") or "") if x)
    grade = s.get("grade") or ""
    if grade:
        where += f" ({_GRADES[grade]}; grade “{grade}”)" if grade in _GRADES else f" (grade “{grade}”)"
    return where


def _article(n: int, f: Document, level: str) -> str:
    v: Document = f.get("verdict") or {}
    source: Document = v.get("source") or {}
    outcome = f.get("outcome") or v.get("outcome") or "undecided"
    word = _PROVED.get(outcome, outcome)
    badge = word[:1].upper() + word[1:]
    if outcome == "undecided":
        if _fails_as_read(f) and not _says_as_read(f):
            badge += "; as read, it does not meet its limit"
        why = _reason_text(f)
        badge += f": {why}" if why else ""
    out = [f'<article id="f{n}" aria-labelledby="q{n}"><div class="head">']
    out.append(f'<{level} id="q{n}">{escape(f.get("question") or v.get("check") or "Question")}</{level}>')
    out.append(f'<div class="answer">{_shape(outcome)}<div><strong>{escape(badge)}.</strong> {_words(f.get("plain") or "")}')
    settle = f.get("next") or ""
    if settle and outcome == "undecided":
        out.append(f"<br><strong>To settle it:</strong> {_words(settle)}")
    elif settle:
        out.append(f"<br><strong>Next:</strong> {_words(settle)}")
    out.append("</div></div>")
    out.append(_drawing(v))
    out.append("</div>")

    facts = [
        _fact("Value", _value_text(v)),
        _fact("Limit", _limit_text(v)),
        _fact("Margin", _margin_text(v)),
        _fact("Expanded uncertainty", _uncertainty_text(v)),
        _fact("Probability it meets", _probability_text(v)),
    ]
    if _is_number(v.get("value")):
        as_read = _AS_READ.get(v.get("plain") or "undecided", "")
        facts.append(_fact("As read / as proved", f"{as_read} / {word}"))
    if any(facts):
        out.append(f'<dl class="facts">{"".join(facts)}</dl>')

    notes: list[tuple[str, str]] = []
    if v.get("assumed"):
        notes.append(("Assumed", "no accuracy was stated for an instrument; the worst case of its class was taken."))
    if v.get("detail"):
        notes.append(("In detail", v["detail"]))
    if v.get("settle") and v["settle"] != settle:
        notes.append(("What would settle it", v["settle"]))
    if v.get("caution"):
        notes.append(("Keep in mind", v["caution"]))
    notes.extend(("Changed from the rulebook", str(o)) for o in v.get("overrides") or [])
    out.append('<div class="notes small">')
    out.extend(f"<p><strong>{escape(k)}:</strong> {_words(t)}</p>" for k, t in notes)
    for line in (
        (("Rule", source.get("rule")), ("Source", _source_text(v))),
        (("Rulebook", source.get("rulebook")), ("Where", f.get("path")), ("Check", v.get("check"))),
    ):
        said = [f"<strong>{k}:</strong> {_formula(t.rstrip('.'))}." for k, t in line if t]
        if said:
            out.append(f"<p>{' '.join(said)}</p>")
    out.append("</div>")

    steps = _steps(f)
    if steps:
        # The steps stand beside the fold, not in it: every browser can then print them from a closed fold.
        title = _count_text(len(steps), "worked step", "worked steps")
        out.append(f"<details><summary>{escape(title)}</summary></details>")
        out.append(f'<div class="working"><ol class="steps">{"".join(_step(s) for s in steps)}</ol></div>')
    out.append("</article>")
    return "".join(out)


def _details(assessment: Document) -> str:
    out: list[str] = []
    last = None
    for n, f in _findings(assessment):
        here = (f.get("path"), f.get("subject"))
        if here != last:
            out.append(f"<h3>{escape(_name(f))}</h3>")
            last = here
        out.append(_article(n, f, "h4"))
    return "".join(out)


_LEGEND = (
    ('<rect class="permitted" x="1" y="2" width="38" height="16"/>', "permitted"),
    ('<line class="limit" x1="20" x2="20" y1="0" y2="20"/>', "the limit"),
    ('<line class="doubt" x1="4" x2="36" y1="10" y2="10"/><path class="doubt" d="M4 5V15M36 5V15"/>', "its doubt (k = 2)"),
    ('<line class="doubt" x1="6" x2="30" y1="10" y2="10"/><path class="mark" d="M38 10 29 5V15Z"/>', "out of range: it lies that way"),
)


def _legend() -> str:
    items = [
        f'<li><svg aria-hidden="true" viewBox="0 0 40 20">{drawn}</svg><span>{escape(said)}</span></li>' for drawn, said in _LEGEND
    ]
    for outcome, said in (("fail", "a value that does not meet its limit"), ("undecided", "a value that is not decided"), ("pass", "a value that meets its limit")):
        items.append(
            f'<li><svg aria-hidden="true" viewBox="0 0 40 20"><g transform="translate(20 10)">{_mark(outcome)}</g></svg>'
            f"<span>{escape(said)}</span></li>"
        )
    return f'<ul class="legend small">{"".join(items)}</ul>'


def report(assessment: Document) -> str:
    """The page of an assessment: one HTML file without scripts and without any outside address."""
    a = _as_document(assessment)
    title = a.get("title") or "Assessment"
    findings = a.get("findings") or []
    out: list[str] = []
    add = out.append
    add('<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">')
    add('<meta name="viewport" content="width=device-width, initial-scale=1">')
    add("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">")
    add(f"<title>{escape(title)}</title><style>{_STYLE}</style></head>\n<body>")
    add('<svg width="0" height="0" style="position:absolute" aria-hidden="true"><defs><pattern id="hatch" width="6" height="6" ')
    add('patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="6" height="6" fill="#fff"/>')
    add('<line x1="0" x2="0" y1="0" y2="6" stroke="#8d948f" stroke-width="1.4"/></pattern></defs></svg>')
    add('<a class="skip" href="#found">To what was found</a>')

    add(f"<header><h1>{escape(title)}</h1>")
    date = f'<span class="date">{escape(a["date"])}</span>' if a.get("date") else ""
    where = " · ".join(x for x in (escape(a.get("place") or ""), date) if x)
    if where:
        add(f'<p class="soft">{where}</p>')
    if a.get("invented"):
        add(f"<p><strong>{escape(_INVENTED)}</strong></p>")
    add(f'<p class="said">{escape(_summary(a))}</p>')
    if a.get("rulebook"):
        add(f'<p class="small">Held against: {escape(a["rulebook"])}</p>')
    cautions = a.get("cautions") or []
    if cautions:
        add('<section class="cautions" aria-labelledby="first"><h2 id="first">Before anything else</h2><ul>')
        out.extend(f"<li>{escape(str(c))}</li>" for c in cautions)
        add("</ul></section>")
    add("</header>\n<main>")

    add('<section aria-labelledby="found"><h2 id="found">What was found</h2>')
    add(_overview(a) if findings else "<p>Nothing was asked, so nothing was found: no reading in this visit can be held against a limit.</p>")
    add("</section>")
    if findings:
        add('\n<section aria-labelledby="each"><h2 id="each">Each question in turn</h2>')
        add("<p>A drawing shows the limit and the value to scale:</p>")
        add(_legend())
        add(_details(a))
        add("</section>")
    add("</main>\n<footer>")
    add(f"<p>{escape(_STANDING)}</p>")
    version = f" {a['version']}" if a.get("version") else ""
    add(f"<p>Written by makegood{escape(version)}.</p></footer></body></html>\n")
    return "".join(out)


# ------------------------------------------------------------------------------------------------------------- the text

_WIDTH = 98


def _wrapped(said: str, indent: str = "", hanging: str | None = None) -> list[str]:
    said = " ".join(said.replace("\u00a0", " ").replace(_THIN, " ").split())
    return textwrap.wrap(said, _WIDTH, initial_indent=indent, subsequent_indent=indent if hanging is None else hanging)


def text(assessment: Document) -> str:
    """The findings in plain words for a terminal, grouped as on the page; no line is longer than 98 columns."""
    a = _as_document(assessment)
    lines = _wrapped(a.get("title") or "Assessment")
    where = ", ".join(x for x in (a.get("place") or "", a.get("date") or "") if x)
    lines += _wrapped(where)
    if a.get("rulebook"):
        lines += _wrapped("Held against: " + a["rulebook"])
    if a.get("invented"):
        lines += ["", *_wrapped(_INVENTED)]
    if a.get("cautions"):
        lines.append("")
        for c in a["cautions"]:
            lines += _wrapped(str(c), "! ", "  ")
    lines += ["", *_wrapped(_summary(a))]
    for outcome, title, nothing in _GROUPS if a.get("findings") else ():
        chosen = _group(a, outcome)
        lines += ["", f"{title} ({len(chosen)})", "-" * len(f"{title} ({len(chosen)})")]
        if not chosen:
            lines += _wrapped(nothing, "  ")
        for _, f in chosen:
            v = f.get("verdict") or {}
            said = f"{_name(f)}: "
            if _fails_as_read(f) and not _says_as_read(f):
                said += "As read, it does not meet its limit; that is not proved. "
            lines += _wrapped(said + (f.get("plain") or f.get("question") or ""), "  ", "    ")
            value, limit = _doubtful_value(v), _limit_text(v)
            if value and limit:
                lines += _wrapped(f"{value}, permitted {limit}" + ("; instrument class assumed" if v.get("assumed") else ""), "    ")
            settle = f.get("next") or (v.get("settle") if outcome == "undecided" else "") or ""
            if settle:
                lines += _wrapped(("To settle it: " if outcome == "undecided" else "Next: ") + settle, "    ", "      ")
    lines += ["", *_wrapped(_STANDING)]
    return "\n".join(lines) + "\n"

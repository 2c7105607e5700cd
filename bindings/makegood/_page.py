# SPDX-License-Identifier: MIT
"""An assessment as a page and as text.

`report(assessment)` writes one self-contained HTML file: it opens without a network, prints on A4, reads on a phone, without
colour and with a screen reader. `text(assessment)` writes the same findings for a terminal.
Both take the document of an assessment (format "makegood-assessment-1"); neither calculates or judges anything.
"""

from __future__ import annotations

import re
import textwrap
from html import escape

from ._drawing import (
    _drawing,
    _mark,
)
from ._words import (
    _as_document,
    _AS_READ,
    _count_text,
    _doubtful_value,
    _fails_as_read,
    _findings,
    _GRADES,
    _group,
    _GROUPS,
    _INVENTED,
    _is_number,
    _limit_text,
    _margin_text,
    _probability_text,
    _PROVED,
    _quantity,
    _reason_text,
    _says_as_read,
    _STANDING,
    _steps,
    _summary,
    _THIN,
    _uncertainty_text,
    _value_text,
    Document,
)

__all__ = ["report", "text"]

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
_UNIT_IN_FORMULA = re.compile(r"(?<=[\d⁰¹²³⁴⁵⁶⁷⁸⁹]) (?=[^\W\d_]{1,3}(?:[\s·/²³⁴(),.;]|$)|[%°1])")
_INDEX = re.compile(r"(?<![A-Za-z_])([^\W\d_]{1,2})_([^\W_]{1,4}|[+−-])(?![^\W_])")


def _words(said: str) -> str:
    """Escaped words in which no line breaks between a number and its unit."""
    return _UNIT.sub("\u00a0", escape(said))


def _formula(said: str) -> str:
    """An escaped formula: U_0 is written with an index, and no line breaks between a number and its unit."""
    return _INDEX.sub(r"\1<sub>\2</sub>", _UNIT_IN_FORMULA.sub("\u00a0", escape(said)))


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
    result = s.get("result") or (_quantity(s.get("value"), unit, digits=6) if _is_number(s.get("value")) else "")
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

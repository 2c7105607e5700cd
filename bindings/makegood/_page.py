# SPDX-License-Identifier: MIT
"""An assessment as a page and as text.

`report(assessment)` writes one self-contained HTML file: it opens without a network, prints on A4, reads on a phone, without
colour and with a screen reader. `text(assessment)` writes the same findings for a terminal.
Both take the document of an assessment (format "makegood-assessment-1"); neither calculates or judges anything.
"""

from __future__ import annotations

import re
from html import escape

from . import _record
from ._drawing import _drawing, _mark
from ._message import message, text
from ._parts import danger_words, LEVELS, name as _name, NOTE, sentence, working
from ._style import _formula, _shape, _words, cautions, closing, opening
from ._words import (
    _as_document, _AS_READ, _count_text, _fails_as_read, _findings, _GRADES, _group, _GROUPS, _is_number, _limit_text, _margin_text,
    _probability_text, _PROVED, _quantity, _reason_text, _says_as_read, _steps, _summary, _uncertainty_text, _value_text, Document,
)  # fmt: skip

__all__ = ["message", "report", "text"]

_KINDS = {"observation": "Seen there", "wanting": "Missing"}


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
    badge = _KINDS.get(f.get("kind") or "", "") or word[:1].upper() + word[1:]
    if outcome == "undecided":
        if _fails_as_read(f) and not _says_as_read(f):
            badge += "; as read, it does not meet its limit"
        why = _reason_text(f)
        badge += f": {why}" if why else ""
    out = [f'<article id="f{n}" aria-labelledby="q{n}"><div class="head">']
    out.append(f'<{level} id="q{n}"><span class="soft">{n}.</span> {escape(f.get("question") or v.get("check") or "Question")}</{level}>')
    out.append(f'<div class="answer">{_shape(outcome)}<div><strong>{escape(badge)}.</strong> {_words(f.get("plain") or "")}')
    settle = f.get("next") or ""
    if settle and outcome == "undecided":
        out.append(f"<br><strong>To settle it:</strong> {_words(settle)}")
    elif settle:
        out.append(f"<br><strong>Next:</strong> {_words(settle)}")
    out.append("</div></div>")
    out.append(_drawing(v))
    out.append("</div>")

    danger = f.get("danger")
    if isinstance(danger, dict):
        said = f"{sentence(LEVELS.get(danger.get('level') or '', danger.get('level')))} {danger_words(f)}".strip()
        code = " ".join(x for x in (danger.get("code") or "", f"({danger['source']})" if danger.get("source") else "") if x)
        code = f" {escape(code)}." if code else ""
        out.append(f'<p><strong>Danger:</strong> {_words(said)}{code} <span class="note">{escape(NOTE)}</span></p>')
    if f.get("caution"):
        out.append(f"<p><strong>Caution:</strong> {_words(sentence(f['caution']))}</p>")
    if f.get("caution_client"):
        out.append(f"<p><strong>For the people of the house:</strong> {_words(sentence(f['caution_client']))}</p>")
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
    if f.get("electrician") and f["electrician"] != f.get("plain"):
        notes.append(("For the next electrician", f["electrician"]))
    if f.get("consequence"):
        notes.append(("If it is left", sentence(f["consequence"])))
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
        (("Rulebook", source.get("rulebook")), ("Where", f.get("path")), ("Check", f.get("call") or v.get("check"))),
    ):
        told = [f"<strong>{k}:</strong> {_formula(t.rstrip('.'))}." for k, t in line if t]
        if told:
            out.append(f"<p>{' '.join(told)}</p>")
    out.append("</div>")

    out.append(working(_steps(f)))
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
    marks = (("fail", "a value that does not meet its limit"), ("undecided", "a value that is not decided"), ("pass", "a value that meets its limit"))
    for outcome, said in marks:
        items.append(
            f'<li><svg aria-hidden="true" viewBox="0 0 40 20"><g transform="translate(20 10)">{_mark(outcome)}</g></svg>'
            f"<span>{escape(said)}</span></li>"
        )
    return f'<ul class="legend small">{"".join(items)}</ul>'


AUDIENCES = ("client", "record", "quote")


def report(assessment: Document, audience: str = "record") -> str:
    """A page of an assessment: one HTML file without scripts and without any outside address.

    audience: "record" (every reading, limit, source and worked step), "client" (for the person who lives there), "quote".
    """
    a = _as_document(assessment)
    if audience == "client":
        from ._client import client

        return client(a)
    if audience == "quote":
        from ._quote import quote

        return quote(a)
    if audience != "record":
        raise ValueError(f"audience: {audience!r} is not one of " + ", ".join(f'"{x}"' for x in AUDIENCES))
    findings = a.get("findings") or []
    out = opening(a, a.get("title") or "Assessment", "found", "To what was found")
    add = out.append
    add(f'<p class="said">{escape(_summary(a))}</p>')
    if a.get("rulebook"):
        add(f'<p class="small">Held against: {escape(a["rulebook"])}</p>')
    add(cautions(a, "Before anything else"))
    add("</header>\n<main>")
    add(_record.dangerous(a))
    add('<section aria-labelledby="found"><h2 id="found">What was found</h2>')
    add(_overview(a) if findings else "<p>Nothing was asked, so nothing was found: no reading in this visit can be held against a limit.</p>")
    add("</section>")
    add(_record.put_right(a))
    add(_record.readings(a))
    if findings:
        add('\n<section aria-labelledby="each"><h2 id="each">Each question in turn</h2>')
        add("<p>A drawing shows the limit and the value to scale:</p>")
        add(_legend())
        add(_details(a))
        add("</section>")
    for part in (_record.explained, _record.worked_out, _record.still_to_read, _record.doable, _record.order, _record.to_notify, _record.unseen):
        add(part(a))
    add("</main>" + closing(a))
    return "".join(out)

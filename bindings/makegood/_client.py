# SPDX-License-Identifier: MIT
"""The page for the person who lives there, in the order of their questions."""

from __future__ import annotations

import re
from html import escape, unescape

from . import _charts, _overviews
from ._parts import (
    caution_for_client,
    changes,
    count,
    danger_words,
    dangers,
    isolate,
    LEVELS,
    name,
    NOTE,
    notifiable,
    options,
    order_of_work,
    scope,
    sentence,
    still_open,
    taxed,
    terms,
    weighs_danger,
)
from ._style import _shape, _words, cautions, closing, figure, no_pictures, opening
from ._words import _count_text, _fails_as_read, _findings, _group, _says_as_read, Document, money

# Pictures that speak to somebody who does not wire houses; what is left out stands on the record.
FOR_CLIENTS = tuple(call for call in (*_charts.CHARTS, "setting_out.place_brackets") if not call.startswith(("price.", "electrical.")))


def said_of(f: Document) -> str:
    """A finding in the client's words, or in plain ones where it has none."""
    words = f.get("client") or f.get("plain") or f.get("question") or ""
    if _fails_as_read(f) and not _says_as_read(f) and not f.get("client"):
        words = f"As read, it does not meet its limit; that is not proved. {words}"
    return sentence(words)


def _in_short(a: Document) -> str:
    fails, unknown, good = (len(_group(a, o)) for o in ("fail", "undecided", "pass"))
    if not fails + unknown + good:
        return "Nothing could be asked: no reading was taken that can be held against a limit."
    off = len(a.get("isolate") or [])
    first = f"{sentence(count(off, 'thing', 'things')).rstrip('.')} must be off tonight. " if off else ""
    return (
        f"{first}Of {fails + unknown + good} questions, {good} {'is' if good == 1 else 'are'} answered well, {fails} not, and {unknown}"
        f" {'is' if unknown == 1 else 'are'} not known yet."
    )


def _tonight(a: Document) -> str:
    out = ['<section aria-labelledby="tonight"><h2 id="tonight">Is anything dangerous tonight, and what was switched off?</h2>']
    chosen = dangers(a)
    off = {n for item in a.get("isolate") or [] for n in item.get("findings") or []}
    if not weighs_danger(a):
        out.append(
            "<p><strong>This assessment does not say what is dangerous.</strong> Until somebody competent has, use nothing that is said below not to"
            " meet its limit.</p>"
        )
        return "".join(out) + "</section>"
    if a.get("isolate"):
        out.append("<p><strong>Yes.</strong> These must be off, and stay off until the sentence at the end of each is met:</p>" + isolate(a, plain=True))
    open_now = [(n, f) for n, f in chosen if n not in off and f["danger"].get("level") == "now"]
    for n, f in open_now:
        out.append(
            f'<div class="danger"><h3>{escape(name(f))}: keep away</h3><p>{_words(said_of(f))} {_words(danger_words(f))}</p>'
        )
        out.append(f"<p><strong>{_words(caution_for_client(f))}</strong></p>" if caution_for_client(f) else "")
        out.append("</div>")
    if not a.get("isolate") and not open_now:
        out.append(
            "<p><strong>Of what was looked at, nothing was found that is dangerous as it stands.</strong> What was not looked at is listed below.</p>"
        )
    later = [f for n, f in chosen if n not in off and f["danger"].get("level") != "now"]
    if later:
        out.append('<h3>Not tonight, but not to be left</h3><ul class="way">')
        for f in (f for f in later if f["danger"].get("level") == "potential"):
            out.append(
                f'<li><span class="subject">{escape(name(f))}</span> <span class="tag">{LEVELS["potential"]}</span><br>{_words(said_of(f))}'
                f' {_words(danger_words(f))}'
            )
            out.append(f" <strong>{_words(caution_for_client(f))}</strong>" if caution_for_client(f) else "")
            out.append("</li>")
        rest: dict[str, dict[str, None]] = {}
        for f in (f for f in later if f["danger"].get("level") != "potential"):
            rest.setdefault(LEVELS.get(f["danger"].get("level") or "", "to be looked into"), {})[name(f)] = None
        out.extend(
            f'<li><span class="subject">{sentence(level).rstrip(".")}:</span> {escape(", ".join(names))}.</li>' for level, names in rest.items()
        )
        out.append("</ul>")
    if chosen or a.get("isolate"):
        out.append(f'<p class="note">{escape(NOTE)}</p>')
    return "".join(out) + "</section>"


def _fits(a: Document, f: Document) -> str:
    """How many readings are as the leading explanation of a diagnosis would make them."""
    for d in a.get("diagnoses") or []:
        if f.get("kind") == "diagnosis" and (d.get("path") or d.get("name")) in (f.get("path"), f.get("subject")):
            rows = _overviews.compared(d)
            fit = sum(abs(r["z"]) <= _overviews.FITS for r in rows)
            leading = next((str(h.get("id") or "") for h in d.get("hypotheses") or []), "")
            cause = "a sound one" if leading.startswith("sound") else "this fault"
            made = f"is as {cause} would make it" if len(rows) == 1 else f"are as {cause} would make them"
            return f" {fit} of {_count_text(len(rows), 'reading', 'readings')} {made}." if rows else ""
    return ""


def _item(f: Document, more: str = "") -> str:
    return f'<li>{_shape(f.get("outcome") or "")}<span><span class="subject">{escape(name(f))}.</span> {_words(said_of(f))}{more}</span></li>'


def _works(a: Document) -> str:
    out = ['<section aria-labelledby="works"><h2 id="works">What works, what does not, and what is not known?</h2>']
    if not a.get("findings"):
        return "".join(out) + "<p>Nothing was asked, so nothing was found.</p></section>"
    out.append(figure(_overviews.margins(a, "margins")))
    rank = {n: i for i, (n, _) in enumerate(dangers(a))}
    fails = sorted(_group(a, "fail"), key=lambda item: rank.get(item[0], len(rank)))
    out.append('<h3 id="no">Does not work as it should</h3>')
    if fails:
        out.append('<ul class="plain">')
        for _, f in fails:
            left = f'<br><span class="soft">If it is left: {_words(_low(f["consequence"]))}</span>' if f.get("consequence") else ""
            danger = f.get("danger") or {}
            if danger.get("level") in ("investigate", "improve"):  # the others stand with their cautions above
                left = (
                    f" {_words(danger_words(f))}"
                    + (f" <strong>{_words(caution_for_client(f))}</strong>" if caution_for_client(f) else "")
                    + left
                )
            out.append(_item(f, _words(_fits(a, f)) + left))
        out.append("</ul>")
    else:
        out.append("<p>Nothing of what was asked.</p>")
    unknown = _group(a, "undecided")
    out.append('<h3 id="unknown">Not known yet</h3>')
    if unknown:
        out.append("<p>These are neither good nor bad: a reading is missing, or lies too near to its limit.</p>")
        out.append('<ul class="plain">' + "".join(_item(f, _words(_fits(a, f))) for _, f in unknown) + "</ul>")
    else:
        out.append("<p>Every question that was asked could be answered.</p>")
    told = {n for n, _ in unknown}
    rest = [u for u in a.get("unproved") or [] if u.get("finding") not in told]
    if rest:
        out.append(
            "<p>Not proved either:</p><ul>"
            + "".join(f"<li>{escape(u.get('subject') or '')}: {_words(sentence(u.get('why') or u.get('question')))}</li>" for u in rest)
            + "</ul>"
        )
    out.append('<h3 id="yes">Works</h3>')
    by_subject: dict[str, list[Document]] = {}
    for _, f in _group(a, "pass"):
        by_subject.setdefault(name(f), []).append(f)
    if by_subject:
        out.append('<ul class="plain tight">')
        for subject, found in by_subject.items():
            words = " ".join(dict.fromkeys(said_of(f) for f in found))
            out.append(f'<li>{_shape("pass")}<span><span class="subject">{escape(subject)}.</span> {_words(words)}</span></li>')
        out.append("</ul>")
    else:
        out.append("<p>Nothing was proved to be in order.</p>")
    if a.get("scope"):
        out.append('<h3 id="unseen">Not looked at</h3>' + scope(a))
    return "".join(out) + "</section>"


def _low(said: str) -> str:
    words = sentence(said)
    return words[:1].lower() + words[1:] if not words[1:2].isupper() else words


def _pictures(a: Document) -> str:
    drawn = [(r, _charts.of_result(r, f"r{i}")) for i, r in enumerate(a.get("results") or []) if r.get("call") in FOR_CLIENTS]
    if not any(p for _, p in drawn):
        return ""
    out = ['<section aria-labelledby="pictures"><h2 id="pictures">What the readings show</h2>']
    last = None
    for r, p in drawn:
        if p is None:
            continue
        out.append('<div class="result">')
        if r.get("subject") != last:
            last = r.get("subject")
            out.append(f"<h3>{escape(last or 'Worked out')}</h3>")
        out.append(figure(p) + "</div>")
    return "".join(out) + "</section>"


def _doable(a: Document) -> str:
    body = options(a, "way")
    quote = a.get("quote") or {}
    if not body and not quote:
        return ""
    out = ['<section aria-labelledby="doable"><h2 id="doable">What can be done, what does it cost, and what does it leave open?</h2>', body]
    if quote.get("total"):
        out.append(
            f"<p>The work that was chosen comes to <strong>{_words(money(quote['total'], quote.get('currency') or ''))}</strong>"
            f"{', tax included' if taxed(quote) else ''}; the lines stand in the quote.</p>"
        )
    return "".join(out) + "</section>"


def _next(a: Document) -> str:
    parts = [
        ("In this order", order_of_work(a, plain=True)),
        ("What has to be measured yet", still_open(a)),
        ("Who may do it, and who has to be told", notifiable(a, sources=False)),
    ]
    out = ['<section aria-labelledby="then"><h2 id="then">What happens next, and who may do it?</h2>']
    if not any(body for _, body in parts):
        out.append("<p>No order of work was made. Work on the wiring is for a competent person; some of it has to be notified before it begins.</p>")
    out.extend(f"<h3>{escape(title)}</h3>{body}" for title, body in parts if body)
    return "".join(out) + "</section>"


def client(a: Document) -> str:
    """The page for the client."""
    out = opening(a, a.get("title") or "What was found", "tonight", "To what is dangerous tonight")
    out.append(f'<p class="said">{_words(_in_short(a))}</p></header>\n<main>')
    put_right = changes(a)
    if put_right:
        put_right = f'<section aria-labelledby="mended"><h2 id="mended">What was put right today?</h2>{put_right}</section>'
    body = [_tonight(a), _works(a), no_pictures(len(_findings(a)) > 1), put_right, _doable(a), _next(a), _pictures(a)]
    out.extend(body)
    words = terms(a, unescape(re.sub(r"<[^>]+>", " ", "".join(body))))
    if words:
        out.append(f'<section aria-labelledby="words"><h2 id="words">Words used here</h2>{words}</section>')
    out.append(cautions(a, "To be kept in mind") + "</main>" + closing(a))
    return "".join(out)

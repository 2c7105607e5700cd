# SPDX-License-Identifier: MIT
"""The page of a price: what the work costs, line by line, how sure that is, what is not in it, and what else could be done."""

from __future__ import annotations

from html import escape

from . import _overviews
from ._parts import danger_words, dangers, is_isolating, name, NOTE, options, price_of, scope, sentence, taxed
from ._style import _words, cautions, closing, figure, no_pictures, opening
from ._words import _is_number, _number, Document, money


def _minor(q: Document, key: str) -> str:
    """An amount of the quote in major units; the quote holds it in minor ones."""
    x = q.get(key)
    digits = len(str(q.get("net") or "0.00").partition(".")[2])
    return money(f"{x / 10**digits:.{digits}f}", q.get("currency") or "") if _is_number(x) else ""


def _row(words: str, amount: str, of: str = "div", kind: str = "") -> str:
    return f'<{of} class="row{" " + kind if kind else ""}"><span>{words}</span><span>{_words(amount)}</span></{of}>'


def _lines(q: Document) -> str:
    def exact(price: object) -> str:
        return money(price, q.get("currency") or "")

    out = ['<ul class="way">']
    for x in q.get("client_lines") or q.get("lines") or []:
        out.append(f"<li>{_row(escape(x.get('name') or x.get('kind') or ''), exact(x.get('net')) or _minor({**q, **x}, 'net_minor'))}</li>")
    out.append("</ul>")
    if _is_number(q.get("discount_minor")) and q["discount_minor"] > 0:
        out.append(_row("Taken off", "−" + _minor(q, "discount_minor")))
    taxes = [r for r in q.get("rates") or [] if r.get("vat") not in (None, "")]
    if taxes:
        out.append(_row("Together, without tax", exact(q.get("net"))))
        for r in taxes:
            out.append(_row(f"Tax at {escape(str(r.get('rate_percent')))}\u00a0% on {_words(exact(r.get('net')))}", exact(r.get("vat"))))
    out.append(_row("To pay" + (", tax included" if taxes else ""), exact(q.get("total")), kind="total"))
    out.append("" if taxes else '<p class="small">No tax is charged.</p>')
    rounding = (q.get("rounding") or {}).get("text") if taxes else ""
    out.append(f'<p class="small">Rounded: {_words(sentence(rounding)[:1].lower() + sentence(rounding)[1:])}</p>' if rounding else "")
    return "".join(out)


def _sure(q: Document) -> str:
    low, middle, high = (_minor(q, k) for k in ("p10_minor", "p50_minor", "p90_minor"))
    if not (low and middle and high):
        return "<p>No doubt was put on the hours: the price is one number.</p>"
    out = [
        f"<p>The hours are an estimate. In eight of ten cases the work comes to between <strong>{_words(low)}</strong> and"
        f" <strong>{_words(high)}</strong>; half the time to less than {_words(middle)}.</p>"
    ]
    if _is_number(q.get("over_budget_probability")):
        out.append(f"<p>It passes the budget that was named in {_number(100 * q['over_budget_probability'], digits=2)} of 100 cases.</p>")
    out.append(figure(_overviews.total(q, "total")))
    return "".join(out)


def _not_in_it(a: Document) -> str:
    """The works and remedies that were not chosen: their names alone, and what they cost where a price is known."""
    items = []
    for group in a.get("options") or []:
        listed = group.get("list") or []
        if any(o.get("chosen") for o in listed):
            continue  # what it is about is dealt with: the other ways stand below
        for o in [o for o in listed if o.get("recommended")] or listed[:1]:
            items.append(f"{group.get('subject') or ''}: {_low(o.get('title') or 'nothing is known yet')}: {price_of(o).replace(' (', ', ').rstrip(')')}")
    chosen = {str(x.get("name")) for x in (a.get("quote") or {}).get("lines") or []}
    for s in (a.get("order_of_work") or {}).get("left_out") or []:
        if not str(s.get("id") or "").startswith("read:") and not is_isolating(s) and s.get("title") not in chosen:
            if not any(_low(s.get("title") or "") in item for item in items):
                items.append(": ".join(x for x in (s.get("subject") or "", _low(s.get("title") or "")) if x))
    out = "<p>These works were not chosen:</p><ul>" + "".join(f"<li>{_words(i)}.</li>" for i in dict.fromkeys(items)) + "</ul>" if items else ""
    unseen = scope(a)
    return out + (f"<p>Not looked at, so not priced:</p>{unseen}" if unseen else "")


def _low(said: str) -> str:
    return said[:1].lower() + said[1:] if not said[1:2].isupper() else said


def _stays_off(a: Document) -> str:
    rows = [f"<li><strong>{escape(str(i.get('what') or ''))}</strong>. {_words(sentence(i.get('until')))}</li>" for i in a.get("isolate") or []]
    told = {n for i in a.get("isolate") or [] for n in i.get("findings") or []}
    rows += [
        f"<li><strong>{escape(name(f))}</strong>: keep away. {_words(danger_words(f) or sentence(f.get('client') or f.get('plain')))}</li>"
        for n, f in dangers(a)
        if f["danger"].get("level") == "now" and n not in told
    ]
    return f'<ul>{"".join(rows)}</ul><p class="note">{escape(NOTE)}</p>' if rows else ""


def _low_article(title: str) -> str:
    first, space, rest = title.partition(" ")
    return first.lower() + space + rest if first in ("A", "An", "The") else title


def quote(a: Document) -> str:
    """The page of a price."""
    q: Document = a.get("quote") or {}
    out = opening(a, f"Price: {_low_article(a['title'])}" if a.get("title") else "A price", "cost", "To the price")
    if q.get("total"):
        out.append(
            f'<p class="said">The work that was chosen comes to <strong>{_words(money(q["total"], q.get("currency") or ""))}</strong>'
            + (", tax included" if taxed(q) else "")
            + ".</p>"
        )
    else:
        out.append('<p class="said">No work was chosen yet, so there is no price.</p>')
    out.append("</header>\n<main>")
    parts = [
        ("off", "What stays off until the work is done?", _stays_off(a)),
        ("cost", "What does it cost?", _lines(q) if q else "<p>What can be done stands below, each with its own price where one is known.</p>"),
        ("sure", "How sure is the price?", _sure(q) if q else ""),
        ("without", "What is not in it?", _not_in_it(a)),
        ("else", "What else could be done, and what does each leave open?", no_pictures(bool(a.get("options") or q)) + options(a, "way")),
    ]
    out.extend(f'<section aria-labelledby="{id}"><h2 id="{id}">{escape(title)}</h2>{body}</section>' for id, title, body in parts if body)
    out.append(cautions(a, "To be kept in mind") + "</main>" + closing(a))
    return "".join(out)

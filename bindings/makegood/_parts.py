# SPDX-License-Identifier: MIT
"""Parts of pages that say one thing: dangers, what was put right, what can be done, prices, what comes next, the words used."""

from __future__ import annotations

import re
from html import escape
from typing import Any

from . import _overviews
from ._style import _shape, _words, figure
from ._words import _count_text, _findings, _is_number, _number, Document

LEVELS = {"now": "dangerous now", "potential": "can become dangerous", "investigate": "to be looked into soon", "improve": "to be improved"}
NOTE = "Suggested; not a certificate or condition report."
_SIGNS = {"GBP": "£", "EUR": "€", "USD": "$"}


def sentence(said: Any) -> str:
    """Words as a sentence: a capital at the front, a stop at the end."""
    words = re.sub(r"[ \t\r\n]+", " ", str(said or "")).strip(" ")  # spaces that hold a number together stay
    if not words:
        return ""
    return words[0].upper() + words[1:] + ("" if words[-1] in ".!?…" else ".")


def money(price: Any, currency: str, whole_digits: bool = False) -> str:
    """An amount as it is said; empty where there is none. The digits are those of the document; noughts alone are left out unless asked for."""
    if price in (None, ""):
        return ""
    whole, dot, rest = str(price).partition(".")
    sign, whole = ("−", whole[1:]) if whole.startswith("-") else ("", whole)
    if whole.isdigit() and len(whole) > 4:
        whole = f"{int(whole):,}".replace(",", "\u202f")
    amount = whole + (dot + rest if rest.strip("0") or whole_digits else "")
    return f"{sign}{_SIGNS[currency]}{amount}" if currency in _SIGNS else f"{sign}{amount}\u00a0{currency}".rstrip()


def minutes(m: Any) -> str:
    if not _is_number(m):
        return ""
    if m < 90:
        return f"{_number(m)}\u00a0min"
    hours, rest = divmod(round(m), 60)
    return f"{hours}\u00a0h" + (f" {rest}\u00a0min" if rest else "")


def dangers(a: Document) -> list[tuple[int, Document]]:
    """The findings that have a danger, the worst first."""
    order = list(LEVELS)
    chosen = [(n, f) for n, f in _findings(a) if isinstance(f.get("danger"), dict)]
    return sorted(chosen, key=lambda item: order.index(item[1]["danger"].get("level")) if item[1]["danger"].get("level") in order else len(order))


def weighs_danger(a: Document) -> bool:
    """Whether this assessment says of its findings how dangerous they are."""
    return "isolate" in a or any("danger" in f for f in a.get("findings") or [])


def name(f: Document) -> str:
    return f.get("subject") or f.get("path") or "Unnamed"


def isolate(a: Document) -> str:
    """What must be off tonight: why, how, until when."""
    out = []
    findings = dict(_findings(a))
    for item in a.get("isolate") or []:
        out.append(f'<div class="danger"><h3>{escape(sentence(item.get("what")).rstrip("."))}: off</h3>')
        out.append(f"<p>{_words(' '.join(sentence(w) for w in item.get('why') or []))}</p>")
        for n in item.get("findings") or []:
            if findings.get(n, {}).get("caution"):
                out.append(f"<p><strong>{_words(sentence(findings[n]['caution']))}</strong></p>")
        out.append("".join(f"<p>{_words(sentence(h))}</p>" for h in item.get("how") or []))
        if item.get("until"):
            out.append(f"<p>{_words(sentence(item['until']))}</p>")
        out.append("</div>")
    return "".join(out)


def changes(a: Document) -> str:
    """What was put right, with the answers before and after."""
    out = []
    for c in a.get("changes") or []:
        when = ", ".join(x for x in (c.get("time") or "", minutes(c.get("minutes"))) if x)
        out.append(f'<div class="put-right"><h3>{escape(c.get("subject") or c.get("about") or "")}</h3>')
        out.append(f"<p>{_words(sentence(c.get('what')))}" + (f' <span class="soft">({_words(when)})</span>' if when else "") + "</p>")
        for answer in c.get("answers") or []:
            out.append(f"<p>{escape(answer.get('question') or '')}</p>")
            for when, words in (("before", "before"), ("after", "after")):
                x = answer.get(when) or {}
                said = x.get("said") or (f"{_number(x.get('value'))}\u00a0{x.get('unit') or ''}" if _is_number(x.get("value")) else "not read")
                out.append(f'<div class="turn"><span class="soft">{words}</span>{_shape(x.get("outcome") or "")}<span>{_words(said)}</span></div>')
        if c.get("ends"):
            out.append(f"<p>No longer there: {_words(', '.join(c['ends']))}.</p>")
        out.append("</div>")
    return "".join(out)


def price_of(o: Document) -> str:
    shown = money(o.get("price"), o.get("currency") or "")
    low, high = o.get("price_low"), o.get("price_high")
    if shown and low not in (None, "") and high not in (None, "") and (low, high) != (o["price"], o["price"]):
        shown += f" ({money(low, o.get('currency') or '')} to {money(high, o.get('currency') or '')})"
    return shown or "price to be asked for"


def option(o: Document) -> str:
    tag = '<span class="tag">suggested</span>' if o.get("recommended") else ""
    out = [
        "<li><div"
        f' class="row"><span><strong>{escape(o.get("title") or "")}</strong>{tag}</span><span>{_words(price_of(o).partition(" (")[0])}</span></div>'
    ]
    facts = []
    if "(" in price_of(o):
        facts.append(f"it may come to {price_of(o).partition('(')[2].rstrip(')')}")
    if minutes(o.get("minutes")) and o.get("minutes"):
        facts.append(f"about {minutes(o['minutes'])} of work")
    if _is_number(o.get("probability")) and not o.get("isolates"):
        facts.append(f"settles it in {_number(100 * o['probability'], digits=2)} of 100 cases")
    if o.get("why"):
        out.append(f"<p>{_words(sentence(o['why']))}</p>")
    if facts:
        out.append(f'<p class="soft">{_words(sentence("; ".join(facts)))}</p>')
    out.append(f"<p>Leaves open: {_words(sentence(o['leaves'])[:1].lower() + sentence(o['leaves'])[1:])}</p>" if o.get("leaves") else "")
    return "".join(out) + "</li>"


def options(a: Document, key: str) -> str:
    out = []
    for i, group in enumerate(a.get("options") or []):
        listed = group.get("list") or []
        if not listed:
            continue
        title = ": ".join(x for x in (group.get("subject") or group.get("about") or "", group.get("for") or "") if x)
        out.append(f'<div class="choice"><h3>{escape(title)}</h3>')
        out.append(figure(_overviews.options(group, f"{key}{i}")))
        out.append(f'<ul class="way">{"".join(option(o) for o in listed)}</ul></div>')
    return "".join(out)


def order_of_work(a: Document) -> str:
    plan: Document = a.get("order_of_work") or {}
    out = [f"<p>{_words(' '.join(sentence(t) for t in plan['text']))}</p>"] if plan.get("text") else []
    if plan.get("steps"):
        out.append('<ol class="order">')
        for s in plan["steps"]:
            out.append(f"<li><strong>{escape(s.get('title') or '')}</strong>")
            about = ", ".join(escape(x) for x in (s.get("subject") or "", minutes(s.get("minutes"))) if x)
            out.append(f" ({about})" if about else "")
            out.append(f'<br><span class="soft">{_words(sentence(s["why"]))}</span>' if s.get("why") else "")
            out.append("</li>")
        out.append("</ol>")
    if plan.get("left_out"):
        out.append("<p>Has to wait:</p><ul>")
        for s in plan["left_out"]:
            about = f" ({escape(s['subject'])})" if s.get("subject") else ""
            out.append(f"<li>{escape(s.get('title') or '')}{about}: {_words(sentence(s.get('why') or 'no time was left'))}</li>")
        out.append("</ul>")
    return "".join(out)


_ANSWERS = {"notifiable": "Has to be notified", "not_notifiable": "Need not be notified", "not_known": "Not known whether it has to be notified"}


def notifiable(a: Document, sources: bool) -> str:
    out = []
    for x in a.get("notifiable") or []:
        out.append(
            f'<li><div><span class="subject">{escape(x.get("work") or "")}</span>'
            + (f' <span class="soft">({escape(x["subject"])})</span>' if x.get("subject") else "")
            + "</div>"
        )
        out.append(f"{_ANSWERS.get(x.get('answer') or '', x.get('answer') or '')}. {_words(sentence(x.get('do')))}")
        where = ", ".join(t for t in (x.get("rule") or "", x.get("source") or "") if t)
        out.append(f'<p class="small">{escape(where)}.</p>' if sources and where else "")
        out.append("</li>")
    return f'<ul class="way">{"".join(out)}</ul>' if out else ""


def readings_needed(a: Document, numbers: bool) -> str:
    """Dead ones first: an offered order, as the assessment has it within each kind."""
    wanted = sorted(a.get("readings_needed") or [], key=lambda r: bool(r.get("live")))
    out = []
    for r in wanted:
        about = "; ".join(
            x for x in (r.get("subject") or "", minutes(r.get("minutes")), "with the power on" if r.get("live") else "with the power off") if x
        )
        out.append(f"<li><strong>{escape(r.get('what') or '')}</strong> ({escape(about)}). {_words(sentence(r.get('why')))}")
        if numbers:
            out.append("".join(f" {_words(sentence(x))}" for x in r.get("first") or []))
            if r.get("settles"):
                out.append(" Settles: " + ", ".join(f'<a href="#f{n}">{n}</a>' for n in r["settles"] if n in dict(_findings(a))) + ".")
        out.append(f" <strong>{_words(sentence(r['caution']))}</strong>" if r.get("caution") else "")
        out.append("</li>")
    return f'<ol class="order">{"".join(out)}</ol>' if out else ""


def scope(a: Document) -> str:
    items = "".join(f"<li>{_words(sentence(s))}</li>" for s in a.get("scope") or [])
    return f"<ul>{items}</ul>" if items else ""


def glossary() -> dict[str, str]:
    """The words that are explained, as the package has them; none where it has none."""
    import makegood

    words = getattr(makegood, "words", None)
    if words is None:
        return {}
    found: dict[str, str] = words().get("glossary") or {}
    return found


def terms(a: Document, said: str) -> str:
    """The words of the glossary that occur in what was said, with what they mean."""
    known = glossary()
    shown = said.casefold()
    chosen = sorted((t for t in known if t in (a.get("terms") or []) or _occurs(t.casefold(), shown)), key=str.casefold)
    items = "".join(f"<div><dt>{escape(t)}</dt><dd>{_words(known[t])}</dd></div>" for t in chosen)
    return f'<dl class="terms">{items}</dl>' if items else ""


def _occurs(term: str, said: str) -> bool:
    return re.search(rf"(?<!\w){re.escape(term)}(?:s|es)?(?!\w)", said) is not None


def count(n: int, one: str, many: str) -> str:
    """A small number as a word."""
    small = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
    return _count_text(n, one, many) if n >= len(small) else f"{small[n]} {one if n == 1 else many}"

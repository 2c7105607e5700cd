# SPDX-License-Identifier: MIT
"""Parts of pages that say one thing: dangers, what was put right, what can be done, prices, what comes next, the words used."""

from __future__ import annotations

import re
from html import escape
from typing import Any

from . import _overviews
from ._style import _formula, _shape, _words, figure
from ._words import _count_text, _findings, _is_number, _number, _quantity, Document, money

LEVELS = {"now": "dangerous now", "potential": "can become dangerous", "investigate": "to be looked into soon", "improve": "to be improved"}
NOTE = "Suggested; not a certificate or condition report."
# The words of a danger that say no more than its level does.
_LEVEL_WORDS = ("dangerous now", "may become dangerous", "to be looked into", "could be better")


def sentence(said: Any) -> str:
    """Words as a sentence: a capital at the front, a stop at the end."""
    words = re.sub(r"[ \t\r\n]+", " ", str(said or "")).strip(" ")  # spaces that hold a number together stay
    if not words:
        return ""
    return words[0].upper() + words[1:] + ("" if words[-1] in ".!?…" else ".")


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


def working(steps: list[Document]) -> str:
    """Worked steps under a fold: they stand beside it, not in it, so that every browser can print them from a closed one."""
    if not steps:
        return ""
    title = _count_text(len(steps), "worked step", "worked steps")
    return f'<details><summary>{escape(title)}</summary></details><div class="working"><ol class="steps">{"".join(_step(s) for s in steps)}</ol></div>'


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


def danger_words(f: Document) -> str:
    """What can happen, where the danger says more of it than its level."""
    words = (f.get("danger") or {}).get("words") or ""
    return "" if words.rstrip(".").lower() in _LEVEL_WORDS else sentence(words)


def is_isolating(step: Document) -> bool:
    """Whether a step of the order of work is to switch something off and leave it off."""
    return str(step.get("id") or "").startswith("safe:") or (step.get("title") or "").lower().startswith(("isolate", "leave it isolated"))


def caution_for_client(f: Document) -> str:
    """What the people of the house must not do; an assessment that does not tell its readers apart has one caution for all."""
    return sentence(f["caution_client"] if "caution_client" in f else f.get("caution"))


def isolate(a: Document, plain: bool = False) -> str:
    """What must be off tonight: why, how, until when. How it is done is for the one who does it; the client is told not to undo it."""
    out = []
    findings = dict(_findings(a))
    for item in a.get("isolate") or []:
        out.append(f'<div class="danger"><h3>{escape(sentence(item.get("what")).rstrip("."))}: off</h3>')
        out.append(f"<p>{_words(' '.join(sentence(w) for w in item.get('why') or []))}</p>")
        about = [findings[n] for n in item.get("findings") or [] if n in findings]
        warned = dict.fromkeys(caution_for_client(f) if plain else sentence(f.get("caution")) for f in about)
        out.extend(f"<p><strong>{_words(w)}</strong></p>" for w in warned if w)
        how = ["It is switched off, locked off and labelled by the electrician: do not switch it on again."] if plain else item.get("how") or []
        out.append("".join(f"<p>{_words(sentence(h))}</p>" for h in how))
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


def taxed(quote: Document) -> bool:
    return bool(str(quote.get("vat") or "").strip("0."))


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
    said: set[str] = set()
    for i, group in enumerate(a.get("options") or []):
        listed = group.get("list") or []
        if not listed:
            continue
        title = ": ".join(x for x in (group.get("subject") or group.get("about") or "", group.get("for") or "") if x)
        out.append(f'<div class="choice"><h3>{_words(title)}</h3>')
        out.append(figure(_overviews.options(group, f"{key}{i}"), said))
        out.append(f'<ul class="way">{"".join(option(o) for o in listed)}</ul></div>')
    return "".join(out)


def is_reading(step: Document) -> bool:
    """Whether a step of the order of work is a measurement and no work."""
    return str(step.get("id") or "").startswith("read:") or (step.get("title") or "").startswith(("Read: ", "Read, live: "))


def _about(*said: str) -> str:
    about = ", ".join(x for x in said if x)
    return f" ({_words(about)})" if about else ""


def order_of_work(a: Document, plain: bool = False) -> str:
    plan: Document = a.get("order_of_work") or {}
    steps, waiting = plan.get("steps") or [], plan.get("left_out") or []
    titles = [s["title"] for s in [*steps, *waiting] if s.get("title")]
    # Sentences that tell the steps one by one again are left out; what is said of the whole stays.
    whole = [t for t in plan.get("text") or [] if not any(x in t for x in titles) and not re.match(r'(?:Isolate|Open|Close|Switch) "', t)]
    fits = plan.get("fits_probability")
    if plain and _is_number(fits):
        whole = [f"It fits into the time in {_number(100 * fits, digits=2)} of 100 cases" if "probability" in t else t for t in whole]
    out = [f"<p>{_words(' '.join(sentence(t) for t in whole))}</p>"] if whole else []
    if steps:
        out.append('<ol class="order">')
        for s in steps:
            title, subject = s.get("title") or "", s.get("subject") or ""
            if plain and is_reading(s):
                title = "Measure what is not known yet"
            out.append(f"<li><strong>{_words(title)}</strong>")
            out.append(_about("" if subject.casefold() in title.casefold() else subject, minutes(s.get("minutes"))))
            why = re.sub(r"It removes [\d.]+ % of the risk\.?", "", s.get("why") or "").strip() if plain else s.get("why")
            out.append(f'<br><span class="soft">{_words(sentence(why))}</span>' if why else "")
            out.append("</li>")
        out.append("</ol>")
    if plain and any(is_reading(s) for s in waiting):
        subjects = dict.fromkeys(s.get("subject") or "" for s in waiting if is_reading(s))
        out.append(f"<p>Has to be measured on another day: {_words(', '.join(x for x in subjects if x))}.</p>")
        waiting = [s for s in waiting if not is_reading(s)]
    if waiting:
        out.append("<p>Has to wait:</p><ul>")
        last = ""
        for s in sorted(waiting, key=lambda s: [w.get("why") for w in waiting].index(s.get("why"))):
            why = sentence(s.get("why") or "no time was left")
            shown = _words(s.get("title") or "") + _about(s.get("subject") or "")
            out.append(f"<li>{shown}{'.' if why == last else ': ' + _words(why)}</li>")
            last = why
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


def still_open(a: Document) -> str:
    """What has to be measured yet, for the client: of each thing what it is about; how it is measured stands on the record."""
    by_subject: dict[str, list[Document]] = {}
    for r in a.get("readings_needed") or []:
        by_subject.setdefault(r.get("subject") or "", []).append(r)
    findings, out = dict(_findings(a)), []
    for subject, wanted in by_subject.items():
        asked = dict.fromkeys(_overviews.short(findings[n]) for r in wanted for n in r.get("settles") or [] if n in findings)
        times = [r["minutes"] for r in wanted if _is_number(r.get("minutes"))]
        facts = [count(len(wanted), "measurement", "measurements"), f"about {minutes(sum(times))}" if times else ""]
        facts.append("some with the power on" if any(r.get("live") for r in wanted) else "with the power off")
        out.append(f"<li><strong>{_words(subject)}</strong>{': ' * bool(asked)}{_words(', '.join(asked))}{_about(*facts)}.</li>")
    return f"<ul>{''.join(out)}</ul>" if out else ""


def readings_needed(a: Document) -> str:
    """Dead ones first: an offered order, as the assessment has it within each kind."""
    wanted = sorted(a.get("readings_needed") or [], key=lambda r: bool(r.get("live")))
    out = []
    warned: set[str] = set()
    for r in wanted:
        what, caution = str(r.get("what") or ""), str(r.get("caution") or "")
        about = "; ".join(
            x for x in (r.get("subject") or "", minutes(r.get("minutes")), "with the power on" if r.get("live") else "with the power off") if x
        )
        out.append(f"<li><strong>{_words(what)}</strong> ({escape(about)}). {_words(sentence(r.get('why')))}")
        out.append("".join(f" {_words(sentence(x))}" for x in r.get("first") or []))
        if r.get("settles"):
            out.append(" Settles: " + ", ".join(f'<a href="#f{n}">{n}</a>' for n in r["settles"] if n in dict(_findings(a))) + ".")
        out.append(f" <strong>{_words(sentence(caution))}</strong>" if caution and caution not in warned else "")
        warned.add(caution)
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
    chosen = {t for t in known if t in (a.get("terms") or []) or _occurs(t.casefold(), shown)}
    new = chosen
    while new:  # a term that explains another one is explained as well
        told = " ".join(known[t] for t in sorted(new)).casefold()
        new = {t for t in known if t not in chosen and _occurs(t.casefold(), told)}
        chosen |= new
    items = "".join(f"<div><dt>{escape(t)}</dt><dd>{_words(known[t])}</dd></div>" for t in sorted(chosen, key=str.casefold))
    return f'<dl class="terms">{items}</dl>' if items else ""


def _occurs(term: str, said: str) -> bool:
    return term in said and re.search(rf"(?<!\w){re.escape(term)}(?:s|es)?(?!\w)", said) is not None


def count(n: int, one: str, many: str) -> str:
    """A small number as a word."""
    small = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
    return _count_text(n, one, many) if n >= len(small) else f"{small[n]} {one if n == 1 else many}"

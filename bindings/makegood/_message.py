# SPDX-License-Identifier: MIT
"""An assessment as a short message for a phone, and as text for a terminal."""

from __future__ import annotations

import textwrap

from ._parts import danger_words, dangers, is_isolating, is_reading, LEVELS, minutes, name, NOTE, price_of, sentence, weighs_danger
from ._words import (
    _as_document,
    _count_text,
    _doubtful_value,
    _fails_as_read,
    _group,
    _GROUPS,
    _INVENTED,
    _limit_text,
    _says_as_read,
    _STANDING,
    _summary,
    _THIN,
    Document,
)

# ---------------------------------------------------------------------------------------------------------- the message


def _warnings(a: Document) -> list[list[str]]:
    """What must be said whole, in ways of saying it from the long one to the short one."""
    off = a.get("isolate") or []
    told = {n for item in off for n in item.get("findings") or []}
    open_now = [f for n, f in dangers(a) if f["danger"].get("level") == "now" and n not in told]
    if not off and not open_now:
        if not weighs_danger(a):
            bad = list(dict.fromkeys(name(f) for _, f in _group(a, "fail")))
            return (
                [
                    [f"Danger was not judged. Do not use: {', '.join(bad)}."],
                    [f"Danger was not judged. Do not use {len(bad)} things that fail: see the page."],
                ]
                if bad
                else [["Danger was not judged."]]
            )
        first = "Of what was looked at, nothing was found to be dangerous tonight."
        soon = list(dict.fromkeys(name(f) for _, f in dangers(a) if f["danger"].get("level") == "potential"))
        return (
            [[first, f"Can become dangerous: {', '.join(soon)}."], [first, f"{len(soon)} can become dangerous: see the page."]] if soon else [[first]]
        )
    names = [str(item.get("what") or item.get("circuit") or "") for item in off]
    long = [f"{w}: {' '.join(sentence(s) for s in (item.get('why') or [])[:1])} {sentence(item.get('until'))}" for w, item in zip(names, off)]
    apart = [f"{name(f)}: keep away. {danger_words(f) or sentence(f.get('client') or f.get('plain'))}" for f in open_now]
    away = ", ".join(dict.fromkeys(name(f) for f in open_now))
    short = [*([f"KEEP OFF: {', '.join(names)}."] if names else []), *([f"KEEP AWAY FROM: {away}."] if away else [])]
    middle = [
        f"KEEP OFF {w}{f' ({_low(why)})' if why else ''}."
        for w, item in zip(names, off)
        for why in ["".join((item.get("why") or [])[:1]).rstrip(".")]
    ]
    return [
        ["DANGER, keep off:"] * bool(off) + long + ["DANGER:"] * bool(apart) + apart,
        ["DANGER.", *middle, *short[len(names) > 0 :]],
        ["DANGER.", *short],
    ]


def _low(said: str) -> str:
    return said[:1].lower() + said[1:] if not said[1:2].isupper() else said


def _are(n: int, words: str) -> str:
    return f"{n} {'is' if n == 1 else 'are'} {words}"


def _next(step: Document) -> str:
    title, subject = "measure what is not known yet" if is_reading(step) else str(step["title"]).rstrip("."), str(step.get("subject") or "")
    return f"Next: {title}" + (f" ({subject})." if subject and subject.casefold() not in title.casefold() else ".")


_NO_CERTIFICATE = "Suggested; no certificate."


def message(assessment: Document, limit: int = 480) -> str:
    """What is dangerous tonight, what works and what does not, what is next: in `limit` characters at most.

    A warning is never cut: it is said shorter where everything else would have no room, and other words are left out. Where even its
    shortest words have no room, ValueError.
    """
    a = _as_document(assessment)
    title = a.get("title") or ""
    head = ["Invented demonstration."] if a.get("invented") else []
    fails = list(dict.fromkeys(name(f) for _, f in _group(a, "fail")))
    unknown = len(_group(a, "undecided"))
    good = len(_group(a, "pass"))
    plan: Document = a.get("order_of_work") or {}
    bad = len(_group(a, "fail"))
    following = next((s for s in [*(plan.get("steps") or []), *(plan.get("left_out") or [])] if s.get("title") and not is_isolating(s)), None)
    counts = f"Of {_count_text(good + bad + unknown, 'thing', 'things')} asked, {_are(good, 'in order')}"
    counts += "".join(f", {_are(n, words)}" for n, words in ((bad, "not"), (unknown, "not known yet")) if n) + "."
    told = {str(item.get("what")) for item in a.get("isolate") or []} | (set() if weighs_danger(a) else set(fails))
    fails = [f for f in fails if f not in told]
    rest = [
        counts if a.get("findings") else "",
        _next(following) if following else "",
    ]
    rest = [words for words in rest if words]
    if fails:  # said where there is room left
        rest.append(f"Not as it should be{' either' if told else ''}: {', '.join(fails)}.")
    best = ""
    for warning in _warnings(a):
        for kept in (title, ""):
            said = _clean(" ".join(x for x in (f"{kept}:" if kept else "", *head, *warning, _NO_CERTIFICATE) if x))
            if len(said) > limit:
                continue
            whole = True
            for i, words in enumerate(rest):
                longer = f"{said} {_clean(words)}"
                whole = whole and (len(longer) <= limit or i > 1)
                said = longer if len(longer) <= limit else said
            best = best or said
            if whole:
                return said
    if not best:
        raise ValueError(
            f"message: the warning alone takes {len(_clean(' '.join([*head, *_warnings(a)[-1], _NO_CERTIFICATE])))} characters: limit = {limit}"
        )
    return best


def _clean(said: str) -> str:
    return " ".join(said.replace("\u00a0", " ").replace(_THIN, " ").split())


# ------------------------------------------------------------------------------------------------------------- the text

_WIDTH = 98


def _wrapped(said: str, indent: str = "", hanging: str | None = None) -> list[str]:
    said = " ".join(said.replace("\u00a0", " ").replace(_THIN, " ").split())
    return textwrap.wrap(said, _WIDTH, initial_indent=indent, subsequent_indent=indent if hanging is None else hanging)


def _titled(title: str) -> list[str]:
    return ["", title, "-" * len(title)]


def _off(a: Document) -> list[str]:
    """What must be off tonight, and what else is dangerous."""
    lines: list[str] = []
    if a.get("isolate"):
        lines += _titled("Must be off tonight")
        for item in a["isolate"]:
            said = " ".join(sentence(s) for s in [*(item.get("why") or []), *(item.get("how") or []), item.get("until")] if s)
            lines += _wrapped(f"{item.get('what') or item.get('circuit') or ''}: {said}", "! ", "    ")
    off = {n for item in a.get("isolate") or [] for n in item.get("findings") or []}
    other = [f for n, f in dangers(a) if n not in off]
    if other:
        lines += _titled("Dangers besides")
        for f in other:
            level = LEVELS.get(f["danger"].get("level") or "", "")
            lines += _wrapped(f"{name(f)} ({level}): {danger_words(f) or sentence(f.get('client') or f.get('plain'))}", "  ", "    ")
    return [*lines, *_wrapped(NOTE, "  ")] if lines else []


def _more(a: Document) -> list[str]:
    """What was put right, what explains the readings, what was worked out, what comes next: briefly."""
    lines: list[str] = []
    parts: list[tuple[str, list[str]]] = [
        ("Put right", [f"{c.get('subject') or ''}: {sentence(c.get('what'))}" for c in a.get("changes") or []]),
        (
            "What explains it",
            [
                f"{d.get('name') or d.get('id') or ''}: {' '.join(sentence(e) for e in d.get('explain') or [d.get('title')])}"
                for d in a.get("diagnoses") or []
            ],
        ),
        ("Worked out", [f"{r.get('subject') or r.get('id') or ''}: {' '.join((r.get('text') or [])[:2])}" for r in a.get("results") or []]),
        (
            "What can be done",
            [f"{g.get('subject') or ''}: {o.get('title') or ''}, {price_of(o)}" for g in a.get("options") or [] for o in g.get("list") or []],
        ),
        (
            "To be read, dead first",
            [f"{r.get('what') or ''} ({r.get('subject') or ''})" for r in sorted(a.get("readings_needed") or [], key=lambda r: bool(r.get("live")))],
        ),
        (
            "To be notified",
            [f"{x.get('work') or ''}: {sentence(x.get('do'))}" for x in a.get("notifiable") or [] if x.get("answer") != "not_notifiable"],
        ),
        (
            "Order of work",
            [
                f"{s.get('n') or ''}. {s.get('title') or ''} ({s.get('subject') or ''}, {minutes(s.get('minutes'))})"
                for s in (a.get("order_of_work") or {}).get("steps") or []
            ],
        ),
        ("Not looked at", [sentence(s) for s in a.get("scope") or []]),
    ]
    for title, said in parts:
        if said:
            lines += _titled(title)
            for line in said:
                lines += _wrapped(line, "  ", "    ")
    return lines


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
    lines += _off(a)
    for outcome, title, nothing in _GROUPS if a.get("findings") else ():
        chosen = _group(a, outcome)
        lines += ["", f"{title} ({len(chosen)})", "-" * len(f"{title} ({len(chosen)})")]
        if not chosen:
            lines += _wrapped(nothing, "  ")
        for _, f in chosen:
            v = f.get("verdict") or {}
            said = f"{name(f)}: "
            if _fails_as_read(f) and not _says_as_read(f):
                said += "As read, it does not meet its limit; that is not proved. "
            lines += _wrapped(said + (f.get("plain") or f.get("question") or ""), "  ", "    ")
            value, limit = _doubtful_value(v), _limit_text(v)
            if value and limit:
                lines += _wrapped(f"{value}, permitted {limit}" + ("; instrument class assumed" if v.get("assumed") else ""), "    ")
            settle = f.get("next") or (v.get("settle") if outcome == "undecided" else "") or ""
            if settle:
                lines += _wrapped(("To settle it: " if outcome == "undecided" else "Next: ") + settle, "    ", "      ")
            if f.get("caution"):
                lines += _wrapped("! " + sentence(f["caution"]), "    ", "      ")
    lines += _more(a)
    lines += ["", *_wrapped(_STANDING)]
    return "\n".join(lines) + "\n"

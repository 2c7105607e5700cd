# SPDX-License-Identifier: MIT
"""Parts that stand on the record alone: dangers with their codes, diagnoses, results with their numbers."""

from __future__ import annotations

import re
from html import escape
from typing import Any

from . import _charts, _overviews
from ._parts import changes, dangers, isolate, LEVELS, minutes, name, NOTE, notifiable, options, order_of_work, readings_needed, scope, sentence
from ._style import _words, figure, no_pictures
from ._words import _findings, _is_number, _number, _quantity, Document


def _section(id: str, title: str, body: str) -> str:
    return f'<section aria-labelledby="{id}"><h2 id="{id}">{escape(title)}</h2>{body}</section>\n' if body else ""


def dangerous(a: Document) -> str:
    """What must be off, then every finding with a danger: its level, code, source, where it is said in full."""
    rows = []
    for n, f in dangers(a):
        d = f["danger"]
        code = ", ".join(x for x in (d.get("code") or "", d.get("source") or "") if x)
        rows.append(
            f'<li><a href="#f{n}">{n}. {escape(name(f))}</a> <span'
            f' class="tag">{escape(LEVELS.get(d.get("level") or "", d.get("level") or ""))}</span><br>{_words(sentence(d.get("words")))}'
        )
        rows.append(f' <span class="soft">{escape(code)}.</span></li>' if code else "</li>")
    listed = f'<ul class="way">{"".join(rows)}</ul>' if rows else ""
    off = isolate(a)
    return (
        _section("dangers", "What is dangerous, and what must be off", off + listed + f'<p class="note">{escape(NOTE)}</p>') if off or listed else ""
    )


def put_right(a: Document) -> str:
    return _section("mended", "What was put right", changes(a))


def _test(t: Document) -> str:
    about = ", ".join(x for x in (minutes(t.get("minutes")), "live" if t.get("live") else "dead") if x)
    worth = f"; worth {_number(t['net'], digits=3)}" if _is_number(t.get("net")) else ""
    caution = f" <strong>{_words(sentence(t['caution']))}</strong>" if t.get("caution") else ""
    return (
        f"<li><strong>{escape(t.get('title') or t.get('id') or '')}</strong> ({escape(about + worth)})."
        f" {_words(sentence(t.get('how')))}{caution}</li>"
    )


def _act(o: Document) -> str:
    facts = [
        f"costs {_number(o['money'])}" if _is_number(o.get("money")) else "",
        minutes(o.get("minutes")),
        f"expected loss {_number(o['expected_loss'])}" if _is_number(o.get("expected_loss")) else "",
        f"best with probability {_number(o['best_probability'], digits=2)}" if _is_number(o.get("best_probability")) else "",
        f"danger left with probability {_number(o['danger_left'], digits=2)}" if _is_number(o.get("danger_left")) else "",
        "" if o.get("allowed", True) else "not permitted: it would leave danger",
    ]
    leaves = f" Leaves: {_words(sentence(o['leaves']))}" if o.get("leaves") else ""
    return f"<li><strong>{escape(o.get('title') or o.get('id') or '')}</strong> ({_words('; '.join(x for x in facts if x))}).{leaves}</li>"


def explained(a: Document) -> str:
    """Each diagnosis: what it rests on, the probabilities, what would tell more, what can be done."""
    out = []
    for i, d in enumerate(a.get("diagnoses") or []):
        out.append(f"<h3>{escape(': '.join(x for x in (d.get('name') or d.get('id') or '', d.get('title') or '') if x))}</h3>")
        out.append(f"<p>{_words(' '.join(sentence(e) for e in d.get('explain') or []))}</p>")
        out.append(f"<p>{_words(sentence(d['advice']))}</p>" if d.get("advice") else "")
        out.append(figure(_overviews.hypotheses(d, f"why{i}")))
        rows = []
        for h in d.get("hypotheses") or []:
            p = f"{_number(100 * h['probability'], digits=3)} %" if _is_number(h.get("probability")) else ""
            before = f" (before any reading {_number(100 * h['prior'], digits=3)} %)" if _is_number(h.get("prior")) else ""
            rows.append(f'<li><div class="row"><strong>{escape(h.get("title") or h.get("id") or "")}</strong><span>{_words(p)}</span></div>')
            rows.append(
                f'{_words(" ".join(sentence(x) for x in (h.get("plain"), h.get("next")) if x))}<span class="soft">{escape(before)}</span></li>'
            )
        out.append(f'<ul class="way">{"".join(rows)}</ul>' if rows else "")
        read = [r for r in d.get("predicted") or d.get("readings") or [] if isinstance(r, dict) and ("predicted" in r or "read" in r)]
        if read:
            items = "".join(
                f"<li>{escape(str(r.get('what') or r.get('id') or ''))}: read {_value(r.get('read'), r)}; foretold"
                f" {_value(r.get('predicted'), r)}</li>"
                for r in read
            )
            out.append(f"<p>What was read, and what the first of them foretells:</p><ul>{items}</ul>")
        for title, rows in (
            ("What would tell more", [_test(t) for t in d.get("tests") or []]),
            ("What can be done about it", [_act(o) for o in d.get("acts") or []]),
        ):
            out.append(f"<p>{title}:</p><ul>{''.join(rows)}</ul>" if rows else "")
        out.append("".join(f"<p class='small'>{_words(sentence(x.get('text') if isinstance(x, dict) else x))}</p>" for x in d.get("notes") or []))
    return _section("why", "What explains the readings", "".join(out))


def _value(x: Any, r: Document) -> str:
    return escape(_quantity(x, r.get("unit") or "")) if _is_number(x) else escape(str(x if x is not None else "–"))


_UNITS = (
    ("_l_per_s", "l/s"),
    ("_w_per_m2", "W/m²"),
    ("_j_per_m2", "J/m²"),
    ("_kg_per_day", "kg/day"),
    ("_kg_per_h", "kg/h"),
    ("_kg_per_shower", "kg a shower"),
    ("_kg_per_kg", "kg/kg"),
    ("_m_per_s", "m/s"),
    ("_g_per_m3", "g/m³"),
    ("_w_per_l_per_s", "W/(l/s)"),
    ("_per_h", "1/h"),
    ("_percent", "%"),
    ("_probability", ""),
    ("_ratio", ""),
    ("_count", ""),
    ("_mohm", "MΩ"),
    ("_ohm", "Ω"),
    ("_mm", "mm"),
    ("_m2", "m²"),
    ("_min", "min"),
    ("_pa", "Pa"),
    ("_kg", "kg"),
    ("_ma", "mA"),
    ("_c", "°C"),
    ("_k", "K"),
    ("_s", "s"),
    ("_w", "W"),
    ("_v", "V"),
    ("_a", "A"),
    ("_m", "m"),
)


def _fact(key: str, value: Any) -> str:
    """A number of a result, by the name of its field: "pressure_pa": 40.4 is "pressure", "40.4 Pa"."""
    unit = ""
    for end, word in _UNITS:
        if key.endswith(end):
            key, unit = key[: -len(end)] + ("" if word else end), word
            break
    said = re.sub(r"_+", " ", key).strip() or "value"
    return f"<div><dt>{escape(said)}</dt><dd>{escape(_quantity(value, unit))}</dd></div>"


def worked_out(a: Document) -> str:
    """What the models gave: their sentences, the picture, the numbers."""
    out = []
    for i, r in enumerate(a.get("results") or []):
        out.append(
            f'<div class="result"><h3>{escape(r.get("subject") or r.get("id") or "")} <span class="soft'
            f' small">{escape(r.get("call") or "")}</span></h3>'
        )
        said = r.get("text") or []
        out.extend(f"<p>{_words(t)}</p>" for t in ([said] if isinstance(said, str) else said))
        result = r.get("result") if isinstance(r.get("result"), dict) else {}
        out.append("</div>" + figure(_charts.of_result(r, f"r{i}")))
        out.append("".join(f'<p class="small"><strong>Caution:</strong> {_words(sentence(c))}</p>' for c in result.get("cautions") or []))
        out.append("".join(f'<p class="small"><strong>Taken as given:</strong> {_words(sentence(c))}</p>' for c in result.get("assumptions") or []))
        facts = "".join(_fact(k, v) for k, v in result.items() if _is_number(v) and not k.endswith("_minor") and not k.startswith("error_"))
        out.append(f'<dl class="facts">{facts}</dl>' if facts else "")
    if not out:
        return ""
    return _section("worked", "What was worked out", no_pictures(True) + "".join(out))


def still_to_read(a: Document) -> str:
    body = readings_needed(a, numbers=True)
    known = dict(_findings(a))
    rows = []
    for u in a.get("unproved") or []:
        n = u.get("finding")
        link = f'<a href="#f{n}">{escape(u.get("subject") or "")}</a>' if n in known else escape(u.get("subject") or "")
        rows.append(f"<li>{link}: {_words(u.get('question') or '')} {_words(sentence(u.get('why')))}</li>")
    if rows:
        body = f"<p>Not proved:</p><ul>{''.join(rows)}</ul>" + (f"<p>To be read, with the power off first:</p>{body}" if body else "")
    return _section("missing", "What is still to be read", body)


def doable(a: Document) -> str:
    return _section("ways", "What can be done", options(a, "way"))


def order(a: Document) -> str:
    return _section("order", "Order of work", order_of_work(a))


def to_notify(a: Document) -> str:
    return _section("notify", "Work that has to be notified", notifiable(a, sources=True))


def unseen(a: Document) -> str:
    return _section("unseen", "What was not looked at", scope(a))

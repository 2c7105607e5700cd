# SPDX-License-Identifier: MIT
"""Parts that stand on the record alone: dangers with their codes, diagnoses, results with their numbers."""

from __future__ import annotations

import re
from html import escape
from typing import Any

from . import _charts, _overviews
from ._parts import changes, dangers, isolate, LEVELS, minutes, name, NOTE, notifiable, options, order_of_work, readings_needed, scope, sentence, working
from ._style import _words, figure, no_pictures
from ._words import _findings, _is_number, _number, _quantity, Document, money


def _section(id: str, title: str, body: str) -> str:
    return f'<section aria-labelledby="{id}"><h2 id="{id}">{escape(title)}</h2>{body}</section>\n' if body else ""


def dangerous(a: Document) -> str:
    """What must be off, then the findings with a danger by level: level, code and source once, then where each is said in full."""
    groups: dict[tuple[str, str, str], list[tuple[int, Document]]] = {}
    for n, f in dangers(a):
        d = f["danger"]
        groups.setdefault((d.get("level") or "", d.get("code") or "", d.get("source") or ""), []).append((n, f))
    rows = []
    for (level, code, source), found in groups.items():
        shown = (f' <span class="tag">{escape(code)}</span>' if code else "") + f' <span class="note">{escape(NOTE)}</span>'
        where = f'<br><span class="small">{escape(source)}.</span>' if source else ""
        rows.append(f'<li><strong>{escape(sentence(LEVELS.get(level, level)).rstrip("."))}</strong>{shown}{where}<br>')
        rows.append("; ".join(f'<a href="#f{n}">{n}. {escape(name(f))}</a>' for n, f in found) + ".</li>")
    listed = f'<ul class="way">{"".join(rows)}</ul>' if rows else ""
    off = isolate(a)
    note = f'<p class="note">{escape(NOTE)}</p>' if off and not listed else ""
    return _section("dangers", "What is dangerous, and what must be off", off + listed + note)


_READING_KINDS = {"nameplate": "from the nameplate", "estimated": "an estimate", "told": "as told, not read"}


def readings(a: Document) -> str:
    """Every reading as it was taken: a table where there is room, a list on a phone; then the instruments."""
    taken = a.get("readings") or []
    replaced = {str(r.get("supersedes")) for r in taken if r.get("supersedes")}
    columns = ("Where", "What", "Read", "Instrument", "Circuit", "Time", "Note")
    rows = []
    last = None
    for r in taken:
        state = str(r.get("circuit_state") or "").replace("_", " ")
        volts = f"tested at {_quantity(r['test_voltage_v'], 'V')}" if _is_number(r.get("test_voltage_v")) else ""
        kind = str(r.get("kind") or "")
        old = "an earlier reading, taken again since" if r.get("path") and str(r["path"]) in replaced else ""
        again = "taken again" if r.get("supersedes") else ""
        note = "; ".join(x for x in (_READING_KINDS.get(kind, "" if kind == "measured" else kind), old or again, str(r.get("note") or "")) if x)
        where = r.get("subject") or r.get("path") or ""
        cells = (
            where,
            r.get("what") or "",
            r.get("said") or _value_said(r),
            str(r.get("instrument") or ""),
            ", ".join(x for x in (state, volts) if x),
            r.get("time") or "",
            sentence(note),
        )
        strong = "" if where == last else ' class="new"'
        last = where
        inner = "".join(
            f'<td{" class=empty" if not said else ""}>{_words(str(said))}</td>' for said in cells
        )
        rows.append(f"<tr{strong}>{inner}</tr>")
    table = ""
    if rows:
        head = "".join(f'<th scope="col">{c}</th>' for c in columns)
        table = f'<table class="readings"><thead><tr>{head}</tr></thead><tbody>{"".join(rows)}</tbody></table>'
    tools = []
    for i in a.get("instruments") or []:
        when = f", calibrated {i['calibrated']}" if i.get("calibrated") else ", no calibration is stated"
        said = i.get("accuracy") or []
        accuracy = "; ".join(str(x) for x in ([said] if isinstance(said, str) else said) if isinstance(x, str))
        tools.append(
            f"<li><strong>{escape(str(i.get('id') or ''))}</strong>{': ' + escape(str(i['description'])) if i.get('description') else ''}{escape(when)}. "
            + (_words(sentence(accuracy)) if accuracy else "No accuracy is stated: the worst case of its class is taken where one is known.")
            + "</li>"
        )
    return _section("readings", "Readings", table) + _section("tools", "Instruments", f'<ul class="way">{"".join(tools)}</ul>' if tools else "")


def _value_said(r: Document) -> str:
    if not _is_number(r.get("value")):
        return str(r.get("state") or "not measured").replace("_", " ")
    said = _quantity(r["value"], r.get("unit") or "")
    return {"above": f"more than {said}", "below": f"less than {said}"}.get(str(r.get("state") or ""), said)


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


def _act(o: Document, currency: str) -> str:
    facts = [
        f"costs {money(o['money'], currency)}" if _is_number(o.get("money")) else "",
        minutes(o.get("minutes")),
        f"expected loss {_number(o['expected_loss'])}" if _is_number(o.get("expected_loss")) else "",
        f"best with probability {_number(o['best_probability'], digits=2)}" if _is_number(o.get("best_probability")) else "",
        f"danger left with probability {_number(o['danger_left'], digits=2)}" if _is_number(o.get("danger_left")) else "",
        "" if o.get("allowed", True) else "not permitted: it would leave danger",
    ]
    leaves = f" Leaves: {_words(sentence(o['leaves']))}" if o.get("leaves") else ""
    return f"<li><strong>{escape(o.get('title') or o.get('id') or '')}</strong> ({_words('; '.join(x for x in facts if x))}).{leaves}</li>"


def _priced(a: Document) -> list[Document]:
    """What in the assessment has a currency."""
    return [a.get("quote") or {}, *(o for group in a.get("options") or [] for o in group.get("list") or [])]


def explained(a: Document) -> str:
    """Each diagnosis: what it rests on, the probabilities, what would tell more, what can be done."""
    out = []
    currency = next((str(o["currency"]) for o in _priced(a) if o.get("currency")), "")
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
        if not read:
            told = [x for x in map(_told, d.get("readings") or []) if x]
            out.append(f"<p>It rests on: {_words('; '.join(told))}.</p>" if told else "")
        if read:
            out.append(f"<p>What was read, and what the first of them foretells:</p>{_foretold(read)}{figure(_overviews.foretold(d, f'fits{i}'))}")
        for title, rows in (
            ("What would tell more", [_test(t) for t in d.get("tests") or []]),
            ("What can be done about it", [_act(o, currency) for o in d.get("acts") or []]),
        ):
            out.append(f"<p>{title}:</p><ul>{''.join(rows)}</ul>" if rows else "")
        out.append("".join(f"<p class='small'>{_words(sentence(x.get('text') if isinstance(x, dict) else x))}</p>" for x in d.get("notes") or []))
    return _section("why", "What explains the readings", "".join(out))


def _foretold(read: list[Document]) -> str:
    """A table of readings beside what a hypothesis foretells: where 95 % of such readings lie, and where this one does, or how likely it is."""
    head = "".join(f'<th scope="col">{c}</th>' for c in ("Reading", "Read", "Foretold, with 95 %", "Apart, in standard uncertainties"))
    rows = []
    for r in read:
        z, chance, unit = r.get("z"), r.get("chance"), r.get("unit") or ""
        apart = f"{_number(abs(z), digits=2)} {'above' if z > 0 else 'below'}" if _is_number(z) and z != 0 else "0" if z == 0 else "–"
        if not _is_number(z) and _is_number(chance):
            apart = f"{_number(100 * chance, digits=2)} % likely"
        said = _value_said({"value": r["read"], "unit": unit, "state": r.get("state")}) if _is_number(r.get("read")) else str(r.get("read") or "–")
        told = _quantity(r["predicted"], unit, digits=3) if _is_number(r.get("predicted")) else "–"
        if _is_number(r.get("low")) and _is_number(r.get("high")):
            told += f", {_quantity(r['low'], unit, digits=3)} to {_quantity(r['high'], unit, digits=3)}"
        cells = (str(r.get("what") or r.get("id") or ""), said, told, apart)
        rows.append("<tr>" + "".join(f"<td>{escape(c)}</td>" for c in cells) + "</tr>")
    return f'<table class="numbers"><thead><tr>{head}</tr></thead><tbody>{"".join(rows)}</tbody></table>'


def _told(r: Any) -> str:
    """A reading of a diagnosis: the test it belongs to, and what it gave."""
    if not isinstance(r, dict):
        return ""
    key = re.sub(r" #1$", "", str(r.get("label") or r.get("test") or ""))
    test, space, which = key.partition(" ")
    words, unit = _unit_of(test)
    state, value = str(r.get("state") or ""), r.get("value")
    said = _quantity(value, unit) if _is_number(value) else str(r.get("outcome") or "") or state.replace("_", " ")
    said = {"above": f"more than {said}", "below": f"less than {said}"}.get(state, said)
    return ": ".join(x for x in (words + space + which, said) if x)


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


def _unit_of(key: str) -> tuple[str, str]:
    """The name of a field in words, and its unit: "highest_surface_c" is ("highest surface", "°C")."""
    unit = ""
    for end, word in _UNITS:
        if key.endswith(end):
            key, unit = key[: -len(end)] + ("" if word else end), word
            break
    return re.sub(r"_+", " ", key).strip() or "value", unit


def _fact(key: str, value: Any) -> str:
    """A number of a result, by the name of its field: "pressure_pa": 40.4 is "pressure", "40.4 Pa"."""
    said, unit = _unit_of(key)
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
        out.append(working([s for s in result.get("steps") or [] if isinstance(s, dict) and s.get("equation")]))
    if not out:
        return ""
    return _section("worked", "What was worked out", no_pictures(True) + "".join(out))


def still_to_read(a: Document) -> str:
    body = readings_needed(a)
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

# SPDX-License-Identifier: MIT
"""The pages of a visit, its message and its pictures: what the reader sees first, what is never left out, and that pictures are true."""

from __future__ import annotations

import copy
import json
import os
import re
import subprocess
import sys
import time
from pathlib import Path

import pytest
from sample_assessment import RULES, sample
from test_report import BARE, EVERY, HOSTILE, HOSTILE_ALL, NAMES, NONE, Page, plain

import makegood
from makegood import _charts, _overviews, _sketch, air
from makegood._page import AUDIENCES, message, report, text
from makegood._parts import LEVELS, NOTE
from makegood._words import _STANDING, money

pytest.importorskip("matplotlib")

ROOT = Path(__file__).parents[2]
SAMPLE = sample()
TODAY = makegood.assess(makegood.load_visit(ROOT / "notebooks/demo_visit.json"), rules=RULES).to_dict()
# What an assessment of an older version lacks: it held findings without the words and the dangers, and nothing of the whole visit.
NEW_FIELDS = (
    "danger", "isolate", "changes", "diagnoses", "results", "unproved", "readings_needed", "options", "quote", "order_of_work", "notifiable",
    "terms", "scope", "readings", "instruments",
)  # fmt: skip
NEW_OF_A_FINDING = ("kind", "client", "electrician", "caution", "consequence", "danger", "circuit", "call")


def older(a: dict) -> dict:
    kept = {k: v for k, v in a.items() if k not in NEW_FIELDS}
    return {**kept, "findings": [{k: v for k, v in f.items() if k not in NEW_OF_A_FINDING} for f in a["findings"]]}


OLDER = older(TODAY)
DOCUMENTS = {"sample": SAMPLE, "today": TODAY, "older": OLDER, "every": EVERY, "names": NAMES, "hostile": HOSTILE_ALL, "none": NONE, "bare": BARE}
PAGES: dict[tuple[str, str], str] = {}


def page(document: str, audience: str) -> str:
    if (document, audience) not in PAGES:
        PAGES[document, audience] = report(DOCUMENTS[document], audience)
    return PAGES[document, audience]


@pytest.fixture(params=[(d, a) for d in DOCUMENTS for a in AUDIENCES], ids=lambda p: "-".join(p))
def source(request):
    return page(*request.param)


def sketched(call: str):
    """What a chart sketches from the sample, before it is written."""
    entry = next((r for r in SAMPLE["results"] if r["call"] == call), None)
    result, given = (entry["result"], entry["inputs"]) if entry else (SAMPLE["quote"], {})
    assert _sketch.available()
    with _sketch.looks():
        return _charts.CHARTS[call](result, given)


# ------------------------------------------------------------------------------------------------------------ every page


def test_well_formed(source):
    tags = Page(source).tags
    ids = [a["id"] for _, a in tags if "id" in a]
    assert len(ids) == len(set(ids))
    wanted = {a["href"][1:] for _, a in tags if "href" in a}
    wanted |= {w for _, a in tags for w in a.get("aria-labelledby", "").split()}
    wanted |= set(re.findall(r"url\(#([^)]*)\)", source))
    assert wanted <= set(ids)


def test_headings_in_order(source):
    levels = [int(t[1]) for t, _ in Page(source).tags if re.fullmatch("h[1-6]", t)]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(b - a <= 1 for a, b in zip(levels, levels[1:]))


def test_nothing_from_outside(source):
    assert "default-src 'none'" in source
    for tag, attributes in Page(source).tags:
        assert tag not in {"script", "link", "img", "iframe", "object", "embed", "base", "form", "input", "foreignobject", "metadata"}
        assert not [k for k in attributes if k.startswith(("on", "xmlns", "xlink")) or k in ("src", "srcset", "action", "data")], (tag, attributes)
        assert attributes.get("href", "#").startswith("#")
    style = "".join(re.findall(r"<style>(.*?)</style>", source, re.S))
    assert "@import" not in style and set(re.findall(r"url\((.)", source)) <= {"#"}
    if HOSTILE.replace("<", "&lt;")[:8] not in source:
        assert "//" not in source


def test_styles_of_a_drawing_stay_in_it():
    """A style sheet inside an inline drawing counts for the whole page: each of its rules names the drawing."""
    first, *others = re.findall(r"<style>(.*?)</style>", page("sample", "client"), re.S)
    assert others
    for style in others:
        for names in re.findall(r"([^{}]+)\{", style):
            assert all(name.strip().startswith("#r") for name in names.split(",")), names


def test_what_every_page_says(source):
    said = Page(source).said
    assert plain(_STANDING) in said and "Written by makegood" in said
    for audience in AUDIENCES:
        for caution in SAMPLE["cautions"]:
            assert plain(caution) in Page(page("sample", audience)).said
        assert "invented demonstration" in page("sample", audience)
        assert "invented" not in page("none", audience)


def test_pictures_have_words(source):
    tags = Page(source).tags
    for i, (tag, attributes) in enumerate(tags):
        if tag != "svg":
            continue
        if attributes.get("role") == "img":
            assert len(attributes.get("aria-label") or attributes.get("aria-labelledby") or "") > 8
            if "chart" in attributes.get("class", ""):
                assert [t for t, _ in tags[i + 1 : i + 3]] == ["title", "desc"]
        else:
            assert attributes.get("aria-hidden") == "true" or "overflow" in attributes  # a mark inside a drawing
    assert source.count('<figure class="picture') == source.count("<figcaption><strong>")


def test_suggested_stands_wherever_a_danger_does():
    for audience in AUDIENCES:
        assert NOTE in Page(page("sample", audience)).said
    assert NOTE in " ".join(text(SAMPLE).split())
    assert "Suggested; no certificate." in message(SAMPLE)
    record = Page(page("sample", "record")).said
    marked = [f for f in SAMPLE["findings"] if f["danger"]]
    levels = {(f["danger"]["level"], f["danger"]["code"], f["danger"]["source"]) for f in marked}
    assert record.count(NOTE) == len(marked) + len(levels)
    source = page("sample", "record")
    first = source[source.index('id="dangers"') : source.index('id="found"')]
    for level, code, where in levels:
        assert first.count(f'<span class="tag">{code}</span> <span class="note">{NOTE}') == 1 and LEVELS[level] in first.lower()
    for n, f in enumerate(SAMPLE["findings"], 1):
        assert (f'<a href="#f{n}">{n}. {f["subject"]}</a>' in first) == bool(f["danger"])
    assert first.count("Appendix 6") == len(levels) > 1
    for f in marked:
        assert f"{f['danger']['code']} ({f['danger']['source']})." in record and f["danger"]["words"] in record


def test_two_renders_are_the_same_bytes():
    for audience in AUDIENCES:
        assert report(SAMPLE, audience) == page("sample", audience)
    program = (
        "import sys, hashlib; from sample_assessment import sample; from makegood._page import report\nfor x in ('client', 'record', 'quote'):"
        " print(hashlib.sha256(report(sample(), x).encode()).hexdigest())"
    )
    there = subprocess.run(
        [sys.executable, "-c", program],
        capture_output=True,
        text=True,
        check=True,
        cwd=ROOT / "tests/python",
        env={**os.environ, "PYTHONHASHSEED": "7"},
    )
    import hashlib

    assert there.stdout.split() == [hashlib.sha256(page("sample", x).encode()).hexdigest() for x in ("client", "record", "quote")]


def test_the_document_is_left_alone():
    before = copy.deepcopy(SAMPLE)
    for audience in AUDIENCES:
        report(SAMPLE, audience)
    message(SAMPLE)
    assert SAMPLE == before


def test_an_unknown_audience_is_refused():
    with pytest.raises(ValueError, match='"client", "record", "quote"'):
        report(NONE, "everybody")
    assert makegood.report(NONE) == report(NONE, "record") and makegood.message(NONE) == message(NONE)


# ------------------------------------------------------------------------------------------------------------ the client


def test_danger_is_the_first_thing_the_client_reads():
    source = page("sample", "client")
    marks = ['id="tonight"', 'id="works"', 'id="mended"', 'id="doable"', 'id="then"', 'id="pictures"', 'id="first"']
    places = [source.index(m) for m in marks]
    assert places == sorted(places)
    first = Page(
        "<html><head></head><body>"
        + source[source.index('<section aria-labelledby="tonight"') : source.index('<section aria-labelledby="works"')]
        + "</body></html>"
    ).said
    for item in SAMPLE["isolate"]:
        for words in (item["what"], *item["why"], item["until"]):
            assert plain(words) in first
        assert all(plain(words) in Page(page("sample", "record")).said for words in item["how"])  # an order to the one who does it
    assert first.count("do not switch it on again") == len(SAMPLE["isolate"])
    for f in SAMPLE["findings"]:
        if f["danger"] and f["caution"]:
            assert plain(f["caution"]) in (first if f["danger"]["level"] in ("now", "potential") else Page(source).said)
    assert first.index("Sauna heater") < first.index("Fan of the wash room")


def test_a_danger_that_was_not_switched_off_is_said():
    a = sample()
    a["isolate"] = []
    said = Page(report(a, "client")).said
    for f in a["findings"]:
        if f["danger"] and f["danger"]["level"] == "now":
            assert f"{f['subject']}: keep away" in said
    assert "nothing was found that is dangerous" not in said
    quiet = sample()
    quiet["isolate"] = []
    for f in quiet["findings"]:
        f["danger"] = None
    assert "nothing was found that is dangerous as it stands" in Page(report(quiet, "client")).said


def test_numbers_are_not_torn():
    """Spaces inside a number stay what they are: a browser does not break a line there."""
    a = sample()
    a["findings"][0]["client"] = "It bears  29\u202f756\u00a0A²·s and\nmore"
    assert "It bears 29\u202f756\u00a0A²·s and more." in report(a, "client")


def test_an_assessment_without_danger_says_so():
    said = Page(page("older", "client")).said
    assert "This assessment does not say what is dangerous." in said and "Yes." not in said
    assert "safe." not in said.lower() and " is safe" not in said.lower()


JARGON = (
    "RCD", "Zs", "CPC", "impedance", "residual current", "adiabatic", "insulation resistance", "A²·s", "conductor", "standard uncertainty",
    "disconnect in time", "let-through", "polarity", "neutral", "straddles", "undecided", "verdict", "probability", "hypothesis", "laminar",
    "thermistor", "NTC", "specific fan power", "k = 2",
    "Re ", "C1", "C2", "C3", "FI", "BS 7671", "circuits[", "path",
)  # fmt: skip


def test_the_client_page_has_no_jargon():
    source = re.sub(r"<style>.*?</style>", "", page("sample", "client"), flags=re.S)
    start = source.index('<section aria-labelledby="words"')
    explained = source[start : source.index("</section>", start) + len("</section>")]
    said = Page(source.replace(explained, "")).said
    for words in JARGON:
        assert not re.search(rf"(?<!\w){re.escape(words)}(?!\w)", said), words
    for words in set(JARGON) & set(makegood.words()["glossary"]):  # a term that explains another one is explained as well
        assert words not in Page(explained).said or f"<dt>{words}</dt>" in explained, words
    record = Page(page("sample", "record")).said
    assert sum(bool(re.search(rf"(?<!\w){re.escape(words)}(?!\w)", record)) for words in JARGON) > 8  # the list is not an empty one


def test_every_finding_reaches_the_client():
    said = Page(page("sample", "client")).said
    for f in SAMPLE["findings"]:
        assert plain(f["client"]) in said and f["subject"] in said
        if f["outcome"] == "fail" and f["consequence"]:
            assert plain(f["consequence"])[1:] in said
    for words in (c["what"] for c in SAMPLE["changes"]):
        assert words in said
    for answer in SAMPLE["changes"][0]["answers"]:
        assert f"before{answer['before']['said']}after{answer['after']['said']}".replace(" ", "") in said.replace(" ", "")
    for group in SAMPLE["options"]:
        for o in group["list"]:
            assert o["title"] in said and plain(o["leaves"])[1:] in said
            if o["price"]:
                assert money(o["price"], "GBP") in said
    for s in SAMPLE["scope"]:
        assert s in said


def test_words_that_are_explained(monkeypatch):
    known = {"safety switch": "It cuts the power when current takes a wrong way.", "MΩ": "A million ohms.", "never said here": "Nothing."}
    monkeypatch.setattr(makegood, "words", lambda: {"glossary": known}, raising=False)
    source = report(SAMPLE, "client")
    said = Page(source).said
    assert "Words used here" in said and known["safety switch"] in said and known["MΩ"] in said and "never said here" not in said
    assert source.index('id="words"') > source.index('id="then"')
    monkeypatch.setattr(makegood, "words", lambda: {}, raising=False)
    assert "Words used here" not in report(SAMPLE, "client")


# ------------------------------------------------------------------------------------------------------------ the record


def test_every_finding_stands_once_on_the_record():
    source = page("sample", "record")
    for n, f in enumerate(SAMPLE["findings"], 1):
        assert source.count(f'<article id="f{n}"') == 1
        assert plain(f["electrician"]) in Page(source).said
    assert source.count("<article ") == len(SAMPLE["findings"])


def test_the_record_is_whole():
    said = Page(page("sample", "record")).said
    for r in SAMPLE["results"]:
        assert r["call"] in said
        for words in r["text"]:
            assert plain(words) in said
        for words in r["result"].get("cautions") or []:
            assert plain(words)[1:] in said
    d = SAMPLE["diagnoses"][0]
    for words in (
        d["name"],
        d["title"],
        d["advice"],
        *d["explain"],
        *(h["title"] for h in d["hypotheses"]),
        d["tests"][0]["how"],
        d["acts"][0]["title"],
    ):
        assert plain(words) in said
    for x in SAMPLE["notifiable"]:
        assert x["work"] in said and x["do"] in said and x["source"] in said
    for u in SAMPLE["unproved"]:
        assert plain(u["question"]) in said
    source = page("sample", "record")
    assert (
        source.index("Resistance between each pair") < source.index("Flow of the fan") < source.index("Tripping time of the new")
    )  # dead before live


def test_readings_and_instruments_stand_on_the_record():
    source = page("sample", "record")
    table = source[source.index('<table class="readings">') : source.index("</table>")]
    assert table.count("<tr") == 1 + len(SAMPLE["readings"]) and table.count('scope="col"') == 7
    said = Page("<html><body>" + table + "</table></body></html>").said
    for r in SAMPLE["readings"]:
        for words in (r["subject"], r["what"], r["said"], r["time"], r["note"], r["circuit_state"].replace("_", " ")):
            assert plain(words)[1:] in said, words
    assert "From the nameplate" in said and "taken again" in said and "500 V" in said
    after = Page(source).said
    for i in SAMPLE["instruments"]:
        for words in (i["description"], i["calibrated"], *i["accuracy"]):
            assert plain(words)[1:] in after
    assert "No accuracy is stated" in after and "no calibration is stated" in after
    for audience in ("client", "quote"):
        assert '<table class="readings">' not in page("sample", audience)
    bare = {k: v for k, v in SAMPLE.items() if k not in ("readings", "instruments")}
    assert 'id="readings"' not in report(bare) and 'id="tools"' not in report(bare)


def test_a_diagnosis_says_what_it_rests_on():
    said = Page(page("sample", "record")).said
    assert "It rests on: element: 116.4 Ω; insulation: more than 999 MΩ; cables: one." in said


def test_numbers_of_results_have_units():
    said = Page(page("sample", "record")).said
    for words in (
        "flow 14.66 l/s",
        "pressure 40.38 Pa",
        "surface 2.419 m²",
        "highest surface 28.9 °C",
        "air changes 2.979 1/h",
        "length 82.83 m",
        "clearance 33 mm",
    ):
        assert words.replace(" ", "") in said.replace(" ", ""), words


def test_sentences_beside_pictures_have_units():
    units = r"[ \u00a0](?:%|(?:°C|l/s|Pa|kg|min|h|m|of|outside|in|and)\b)"
    for call in _charts.CHARTS:
        see = re.sub(r"zone \d|£[\d.\u202f]+", "", sketched(call).see)
        for m in re.finditer(r"(?<![\d.])\d+(?:\.\d+)?", see):
            assert re.match(units, see[m.end() :]), (see, m[0])


# -------------------------------------------------------------------------------------------------------------- the price


def test_the_price_is_the_one_of_the_document():
    q = SAMPLE["quote"]
    said = Page(page("sample", "quote")).said
    assert sum(x["net_minor"] for x in q["client_lines"]) == q["net_minor"] and q["net_minor"] + q["vat_minor"] == q["total_minor"]
    for x in q["client_lines"]:
        assert f"{x['name']}£{x['net']}" in said.replace(" £", "£")
    for words in (q["net"], q["vat"], q["total"], f"{q['p10_minor'] / 100:.2f}", f"{q['p90_minor'] / 100:.2f}"):
        assert f"£{words}" in said
    source = page("sample", "quote")
    places = [source.index(f'id="{m}"') for m in ("off", "cost", "sure", "without", "else")]
    assert places == sorted(places)
    for s in (*SAMPLE["scope"], *(x["title"] for x in SAMPLE["order_of_work"]["left_out"])):
        assert s in said
    assert "No work was chosen yet" in Page(page("older", "quote")).said


def test_the_price_names_no_readings():
    """What is not in a price are works and what was not looked at: no readings, and no reasons of an order of work."""
    source = page("today", "quote")
    start = source.index('<section aria-labelledby="without"')
    part = Page(source[start : source.index('<section aria-labelledby="else"')]).said
    assert "Lay a cable"[1:] in part and "Take the duct"[1:] in part and TODAY["scope"][0] in part
    assert "Renew the residual current device" not in part  # chosen
    left = [s for s in TODAY["order_of_work"]["left_out"] if s["id"].startswith("read:")]
    assert left
    for s in left:
        assert s["title"] not in part
    for s in TODAY["order_of_work"]["left_out"]:
        assert s["why"] not in part
    assert "<h1>Price: a garage that is to become a pottery studio</h1>" in source
    assert "<h1>Price: Boat-house with a sauna</h1>" in page("sample", "quote")


@pytest.mark.parametrize(("price", "currency", "said"), [
    ("123.40", "GBP", "£123.40"), ("120.00", "GBP", "£120.00"), ("120", "GBP", "£120.00"), (120, "GBP", "£120.00"), ("-3.5", "EUR", "−€3.50"),
    ("0.005", "GBP", "£0.005"), ("1472.00", "GBP", "£1472.00"), ("12345.00", "USD", "$12\u202f345.00"), ("99", "CHF", "99.00\u00a0CHF"),
    ("1.25", "KWD", "1.250\u00a0KWD"), ("1500", "JPY", "1500\u00a0JPY"), (None, "GBP", ""), ("", "GBP", ""), ("9", "", "9.00"),
    ("to be asked for", "GBP", "to be asked for\u00a0GBP"),
])  # fmt: skip
def test_money(price, currency, said):
    assert money(price, currency) == said


def test_every_amount_has_its_decimals():
    for document in ("sample", "today"):
        for audience in AUDIENCES:
            amounts = re.findall(r"£[\d\u202f]+(?:\.\d+)?", Page(page(document, audience)).said)
            assert amounts or audience != "quote"
            assert not [x for x in amounts if not re.fullmatch(r"£[\d\u202f]+\.\d\d", x)]


# ------------------------------------------------------------------------------------------------------------ the message


@pytest.mark.parametrize("limit", [1000, 480, 400, 320, 240, 160, 140])
def test_the_message_keeps_its_limit_and_every_warning(limit):
    said = message(SAMPLE, limit)
    assert len(said) <= limit and "DANGER" in said and "nvented" in said and "\n" not in said
    for item in SAMPLE["isolate"]:
        assert item["what"] in said


def test_a_warning_is_never_cut():
    a = sample()
    a["isolate"] = [
        {
            "what": f"Circuit number {i} in the far end of the long hall",
            "circuit": str(i),
            "findings": [],
            "why": ["It is live."],
            "how": [],
            "until": "",
        }
        for i in range(12)
    ]
    with pytest.raises(ValueError, match=r"takes \d+ characters: limit = 480"):
        message(a)
    least = int(re.search(r"takes (\d+)", str(pytest.raises(ValueError, message, a).value))[1])
    for limit in (least, least + 1, least + 200, 5000):
        said = message(a, limit)
        assert len(said) <= limit and all(i["what"] in said for i in a["isolate"])
    with pytest.raises(ValueError):
        message(a, least - 1)


def test_a_danger_without_isolation_reaches_the_message():
    a = sample()
    a["isolate"] = []
    said = message(a)
    for f in a["findings"]:
        if f["danger"] and f["danger"]["level"] == "now":
            assert f["subject"] in said
    assert "Danger was not judged. Do not use: Kiln circuit" in message(OLDER)
    for f in a["findings"]:
        if f["danger"] and f["danger"]["level"] == "now":
            f["danger"] = None
    assert "nothing was found to be dangerous tonight. Can become dangerous: Outlets in the boat hall." in message(a)
    assert "nothing was found to be dangerous" in message({**NONE, "isolate": []}) and "Danger was not judged" in message(NONE)


def test_the_message_says_what_is_next():
    said = message(SAMPLE)
    assert "Of 29 things asked, 20 are in order, 6 are not, 3 are not known yet." in said
    assert "Next: Put a lid on the joint box (Joint box under the bench)." in said


def test_what_is_next_is_no_isolating_and_names_its_subject_once():
    """What is to be kept off stands before; a title that names its subject is followed by no subject."""
    a = sample()
    off = {"id": "safe:hall", "title": "Isolate, secure and label: Outlets in the boat hall", "subject": "Outlets in the boat hall", "minutes": 5}
    a["order_of_work"]["steps"] = [off, {"id": "do:mat", "title": "Mend the heating mat under the slate", "subject": "Heating mat under the slate"}]
    assert "Next: Mend the heating mat under the slate. " in message(a, 1000)
    a["order_of_work"] = {"steps": [off], "left_out": [off]}
    assert "Next" not in message(a, 1000)
    today = message(TODAY)
    n = {k: int(v) for k, v in TODAY["summary"].items()}
    counts = f"Of {sum(n.values())} things asked, {n['pass']} are in order, {n['fail']} are not, {n['undecided']} are not known yet."
    assert "Next: " in today and "Next: Isolate" not in today and counts in today


# --------------------------------------------------------------------------------------------------- whatever may be missing


def keys(value, path=()):
    if isinstance(value, dict):
        for k, v in value.items():
            yield (*path, k)
            yield from keys(v, (*path, k))
    elif isinstance(value, list) and value:
        yield from keys(value[0], (*path, 0))


def test_every_field_may_be_missing(monkeypatch):
    monkeypatch.setattr(_sketch, "available", lambda: False)
    base = sample()
    base["findings"] = [f for f in base["findings"] if f["danger"]][:2]
    base["results"] = base["results"][-4:]
    tried = 0
    for path in [p for p in keys(base) if "verdict" not in p and "before" not in p[2:3] and not ("results" in p and len(p) > 4)]:
        a = copy.deepcopy(base)
        place = a
        for step in path[:-1]:
            place = place[step]
        for missing in (False, True):
            if missing:
                del place[path[-1]]
            else:
                place[path[-1]] = None
            if not (path == ("findings",) and not missing):
                for audience in AUDIENCES:
                    assert report(a, audience).endswith("</html>\n")
                message(a, 5000)
                text(a)
                tried += 1
    assert tried > 300


def hostile(value, key=""):
    if isinstance(value, dict):
        return {k: hostile(v, k) for k, v in value.items()}
    if isinstance(value, list):
        return [hostile(v, key) for v in value]
    kept = (
        "outcome",
        "level",
        "call",
        "currency",
        "check",
        "price",
        "price_low",
        "price_high",
        "net",
        "vat",
        "total",
        "answer",
        "act",
        "rate_percent",
        "rulebook",
        "kind",
        "material",
        "wall",
        "fitting",
        "pressure",
    )
    return value + HOSTILE if isinstance(value, str) and key not in kept else value


def test_hostile_words_stay_words():
    a = hostile(sample())
    for audience in AUDIENCES:
        source = report(a, audience)
        said = Page(source).said
        assert "<script" not in source and "<img" not in source and plain(HOSTILE) in said
    assert _charts.of_result(a["results"][4], "x") is not None  # names with brackets and quotes stand in a picture too
    assert HOSTILE in message(a, 5000) and HOSTILE.replace(" ", "") in text(a).replace(" ", "").replace("\n", "")


def test_without_the_library(monkeypatch):
    monkeypatch.setattr(_sketch, "_loaded", {})
    monkeypatch.setitem(sys.modules, "matplotlib", None)
    assert not _sketch.available()
    for audience in AUDIENCES:
        source = report(SAMPLE, audience)
        said = Page(source).said
        assert _sketch.HOW_TO_GET in said and 'class="chart"' not in source
        assert audience == "quote" or "wall-drawing" in source  # this one needs no library
    assert all(f["client"] in Page(report(SAMPLE, "client")).said.replace("\u00a0", " ") for f in SAMPLE["findings"])


def test_the_library_is_loaded_only_for_a_picture():
    program = (
        "import makegood, sys, json; from makegood._page import *; a = json.load(sys.stdin); text(a); message(a, 5000); report({'findings': []},"
        " 'client'); assert 'matplotlib' not in sys.modules"
    )
    subprocess.run([sys.executable, "-c", program], input=json.dumps(SAMPLE), text=True, check=True)
    folder = Path(_charts.__file__).parent
    for module in ("_charts", "_client", "_message", "_overviews", "_page", "_parts", "_quote", "_record", "_sketch", "_style"):
        source = (folder / f"{module}.py").read_text(encoding="utf-8")
        names = set(re.findall(r"^(?:from|import) ([a-zA-Z]\w*)", source, re.M))
        assert names <= set(sys.stdlib_module_names) | {"__future__"}, module
        assert "pyplot" not in source and len(source.splitlines()) < 500 and max(map(len, source.splitlines())) <= 320


# ------------------------------------------------------------------------------------------------------------- the pictures


def test_every_model_with_a_picture_draws_one():
    drawn = {r["call"] for i, r in enumerate(SAMPLE["results"]) if _charts.of_result(r, f"r{i}")}
    assert drawn == set(_charts.CHARTS) - {"price.quote"} | {"setting_out.place_brackets"}
    assert (
        _overviews.total(SAMPLE["quote"], "q")
        and _overviews.margins(SAMPLE, "m")
        and _overviews.hypotheses(SAMPLE["diagnoses"][0], "h")
        and _overviews.options(SAMPLE["options"][0], "o")
    )


def test_a_result_that_lacks_its_inputs_has_no_picture():
    for r in SAMPLE["results"]:
        for broken in ({**r, "inputs": {}}, {**r, "result": {}}, {**r, "result": None}, {**r, "inputs": None, "result": {"text": []}}):
            found = _charts.of_result(broken, "x")
            assert found is None or broken["result"]


@pytest.mark.parametrize("call", sorted(_charts.CHARTS))
def test_no_colour_is_needed(call):
    """Named series differ in the style of their line or in their mark; bars that mean different things in their hatch."""
    sheet = sketched(call).sheet
    named = [line for line in sheet.lines if not line.get_label().startswith("_")]
    styles = [(str(line.get_linestyle()), str(line.get_marker())) for line in named]
    assert len(styles) == len(set(styles)), styles
    patches = [p for p in sheet.patches if not p.get_label().startswith("_")]
    assert len({p.get_hatch() for p in patches}) == len(patches)
    for audience in AUDIENCES:
        for colour in set(re.findall(r"#[0-9a-f]{6}", page("sample", audience))):
            r, g, b = (int(colour[i : i + 2], 16) for i in (1, 3, 5))
            assert max(r, g, b) - min(r, g, b) < 16, colour  # ink, greys and paper


def test_text_in_pictures_can_be_read_on_a_phone():
    """A picture is 302 units wide and at least 340 pixels on a phone of 390: text of 9.5 units is more than 10 pixels high."""
    for audience in AUDIENCES:
        charts = re.findall(r'<svg class="chart".*?</svg>', page("sample", audience), re.S)
        assert charts or audience == "none"
        for chart in charts:
            assert float(re.search(r'viewBox="0 0 ([\d.]+)', chart)[1]) == pytest.approx(302, abs=0.1)
            sizes = [float(x) for x in re.findall(r"(?:font-size: |font: (?:\d+ )?)([\d.]+)px", chart)]
            assert sizes and min(sizes) >= 9.5 and "<text" in chart


def series(sheet, word):
    (line,) = [x for x in sheet.lines if x.get_label().startswith(word)]
    return [float(x) for x in line.get_xdata()], [float(y) for y in line.get_ydata()]


def at(xs, ys, x):
    i = next(k for k in range(1, len(xs)) if xs[k] >= x)
    return ys[i - 1] + (ys[i] - ys[i - 1]) * (x - xs[i - 1]) / (xs[i] - xs[i - 1])


def test_the_fan_and_the_duct_are_true():
    """The fan's line passes through the points that were given; the duct's line through where it meets the same fan at other speeds."""
    given = next(r["inputs"] for r in SAMPLE["results"] if r["call"] == "air.operating_point")
    sheet = sketched("air.operating_point").sheet
    xs, ys = series(sheet, "what the fan")
    for q, p in given["fan"]["points"][1:-1]:
        assert at(xs, ys, q) == pytest.approx(p, abs=0.8)
    xs, ys = series(sheet, "what the duct")
    for speed in (0.6, 0.8, 0.9, 1.0, 1.1):
        met = air.operating_point({**given["fan"], "speed_ratio": speed}, given["system"])
        assert at(xs, ys, met.flow_l_per_s) == pytest.approx(met.pressure_pa, rel=0.02, abs=0.1)


def test_curves_are_those_of_the_result():
    r = next(r for r in SAMPLE["results"] if r["call"] == "heating.floor_warm_up")["result"]
    xs, ys = series(sketched("heating.floor_warm_up").sheet, "surface")
    assert ys == r["surface_c"] and xs[-1] == pytest.approx(r["times_s"][-1] / 3600)
    e = next(r for r in SAMPLE["results"] if r["call"] == "heating.warm_up_evidence")["result"]
    assert series(sketched("heating.warm_up_evidence").sheet, "read on")[1] == [x["read_c"] for x in e["readings"]]
    d = next(r for r in SAMPLE["results"] if r["call"] == "air.duct_run")["result"]
    assert [b.get_width() for b in sketched("air.duct_run").sheet.patches] == [s["pressure_pa"] for s in d["segments"]]


def test_the_margins_stand_on_the_side_where_the_reading_is():
    rows = _overviews._rows(SAMPLE)
    answers = [f for f in SAMPLE["findings"] if f["verdict"]]
    assert len(rows) == len(answers)
    for (subject, _, outcome, used, low, high, out), f in zip(rows, answers):
        assert subject == f["subject"] and outcome == f["outcome"]
        assert (used <= 1) == (f["verdict"]["plain"] == "pass"), f["plain"]
        assert low <= used <= high
    half = next(row for row in rows if row[0] == "Outlets in the boat hall" and row[2] == "undecided")
    assert half[4] < 1 < half[5]  # its doubt reaches across the line


def test_each_reader_has_a_caution_of_their_own():
    a = sample()
    for f in a["findings"]:
        f["caution"], f["caution_client"] = "This is a live test.", "Do not use the winch."
    client, record = Page(report(a, "client")).said, Page(report(a, "record")).said
    assert "Do not use the winch." in client and "live test" not in client
    assert "Do not use the winch." in record and "This is a live test." in record


PREDICTED = [  # z by hand: (116.4 - 117.0) / 0.6, (48.0 - 52.5) / 1.5, (0.41 - 0.38) / 0.004, and a reading that has no such distance
    {"what": "element", "read": 116.4, "predicted": 117.0, "unit": "Ω", "z": -1.0, "low": 115.8, "high": 118.2},
    {"what": "after 20 minutes", "read": 48.0, "predicted": 52.5, "unit": "°C", "z": -3.0},
    {"what": "supply cable", "read": 0.41, "predicted": 0.38, "unit": "Ω", "z": 7.5},
    {"what": "insulation", "read": 999.0, "state": "above", "predicted": None, "unit": "MΩ", "z": None, "chance": 0.43},
]


def fitted(**more):
    a = sample()
    d = a["diagnoses"][0]
    d.update(predicted=PREDICTED, **more)
    a["findings"].append({**a["findings"][0], "kind": "diagnosis", "path": "inquiries[0]", "subject": d["name"], "outcome": "undecided"})
    return a


def test_what_was_read_beside_what_was_foretold():
    source = report(fitted(), "record")
    table = source[source.index('<table class="numbers">') :].partition("</table>")[0]
    cells = [Page(row).said for row in re.findall("<tr>(.*?)</tr>", table)[1:]]
    assert len(cells) == 4
    for cell, words in zip(cells, (("116.4 Ω", "117 Ω, 116 Ω to 118 Ω", "1 below"), ("48 °C", "52.5 °C", "3 below"), ("0.41 Ω", "0.38 Ω", "7.5 above"), ("more than 999 MΩ", "–", "43 % likely"))):
        for w in words:
            assert w.replace(" ", "") in re.sub(r"\s", "", cell), (cell, w)
    assert "Dots in the striped part are as foretold: 1 of 3." in Page(source).said
    assert "numbers" not in re.findall(r'<table class="(\w+)"', page("sample", "record"))


def test_each_reading_stands_where_its_distance_is():
    picture = _overviews.foretold({"predicted": PREDICTED}, "x")
    with _sketch.looks():
        made = []
        keep, _overviews._drawn = _overviews._drawn, lambda make, key: made.append(make())
        try:
            _overviews.foretold({"predicted": PREDICTED}, "x")
        finally:
            _overviews._drawn = keep
    marks = [(line.get_xdata()[0], line.get_marker()) for line in made[0].sheet.lines if line.get_marker() in ("o", "D", "<", ">")]
    assert [m for _, m in marks] == ["o", "D", ">"] and [x for x, _ in marks][:2] == [-1.0, -3.0] and marks[2][0] < _overviews.FAR
    assert picture and "1 of 3" in picture.see and _overviews.foretold({"predicted": []}, "x") is None


def test_the_client_hears_how_many_readings_fit():
    assert "1 of 3 readings are as this fault would make them." in Page(report(fitted(), "client")).said
    sound = fitted(hypotheses=[{"id": "sound", "title": "It is sound", "probability": 0.9}])
    assert "1 of 3 readings are as a sound one would make them." in Page(report(sound, "client")).said
    assert "would make them" not in Page(page("sample", "client")).said


# ------------------------------------------------------------------------------------------------------ how long, how much


def test_time_and_memory():
    """The first page of a process, the library loaded and every picture drawn; a generous bound, for busy machines."""
    program = (
        "import json, sys, time; a = json.load(sys.stdin); t = time.process_time(); from makegood._page import report; p = report(a, 'client')\n"
        # not ru_maxrss: that of the process which starts this one goes into it
        "most = next(int(x.split()[1]) for x in open('/proc/self/status') if x.startswith('VmHWM'))\n"
        "print(time.process_time() - t, most / 1024, len(p))"
    )
    there = subprocess.run([sys.executable, "-c", program], input=json.dumps(SAMPLE), text=True, capture_output=True, check=True)
    seconds, megabytes, _ = map(float, there.stdout.split())
    print(f"first page: {seconds:.2f} s of the processor, {megabytes:.0f} MB")
    assert megabytes < 150
    assert seconds < 6
    before = time.process_time()
    report(SAMPLE, "client")
    again = time.process_time() - before
    assert again < 3


# ------------------------------------------------------------------------------------------------------- the command line


def test_pages_at_the_command_line(tmp_path):
    names = {"--json": "a.json", "--html": "record.html", "--client": "client.html", "--quote": "quote.html"}
    options = [x for k, v in names.items() for x in (k, str(tmp_path / v))]
    run = [sys.executable, "-m", "makegood", "assess", str(ROOT / "notebooks/demo_visit.json"), "--rules", RULES]
    done = subprocess.run([*run, *options, "--message"], capture_output=True, text=True, check=True)
    assert len(done.stdout.strip()) <= 480 and done.stdout.startswith("A garage that is to become a pottery studio: Invented demonstration.")
    a = json.loads((tmp_path / "a.json").read_text(encoding="utf-8"))
    for option, audience in (("--html", "record"), ("--client", "client"), ("--quote", "quote")):
        assert (tmp_path / names[option]).read_text(encoding="utf-8") == report(a, audience)
    assert set(LEVELS) == {"now", "potential", "investigate", "improve"}

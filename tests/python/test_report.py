# SPDX-License-Identifier: MIT
"""The page and the text of an assessment, from documents written by hand: every outcome, every reason, and hostile words."""

from __future__ import annotations

import math
import re
from html.parser import HTMLParser
from pathlib import Path

import pytest

from makegood._page import report, text

# ------------------------------------------------------------------------------------------------------ sample documents

SEEN = {
    "title": "BS 7671:2018+A2:2022",
    "clause": "Appendix 4, Table 4Ab",
    "grade": "seen",
    "rule": "5 % of the nominal voltage for other uses",
    "rulebook": "bs7671:2018+a2",
}


def step(symbol, equation, substituted, value, unit, condition="", source=""):
    return {
        "symbol": symbol, "equation": equation, "substituted": substituted, "value": value, "unit": unit,
        "condition": condition, "source": source,
    }  # fmt: skip


def verdict(outcome, **changes):
    v = {
        "check": "check_voltage_drop", "outcome": outcome, "reason": "", "detail": "", "plain": "", "value": None, "unit": "V",
        "lower": None, "upper": None, "limit": None, "comparator": "≤", "margin": None, "standard_uncertainty": None,
        "expanded_uncertainty": None, "probability": None, "assumed": False, "censored": "", "settle": "",
        "source": dict(SEEN), "overrides": [], "caution": "", "steps": [],
    }  # fmt: skip
    assert set(changes) <= set(v), set(changes) - set(v)
    v.update(changes)
    return v


def finding(outcome, subject, question, plain, /, path="circuits[0]", next="", before=(), **changes):
    v = verdict(outcome, **changes)
    return {
        "path": path, "subject": subject, "question": question, "plain": plain, "next": next, "outcome": outcome,
        "reason": v["reason"], "before": list(before), "verdict": v,
    }  # fmt: skip


def assessment(findings, **changes):
    outcomes = [f["outcome"] for f in findings]
    a = {
        "format": "makegood-assessment-1", "version": "0.1.0", "title": "A garage that became a pottery studio", "place": "Outbuilding",
        "date": "2026-11-02", "invented": True, "rulebook": "bs7671:2018+a2,england-adf-2021",
        "summary": {k: outcomes.count(k) for k in ("pass", "fail", "undecided")},
        "cautions": ["Not a substitute for a competent person.", "Prove dead before touching."], "findings": list(findings),
    }  # fmt: skip
    a.update(changes)
    return a


def numbers(value, lower, upper, u, outcome, plain=None, **more):
    """The fields of a verdict that has a value. Probability by the normal distribution of the nearest margin."""
    margins = [m for m in (None if upper is None else upper - value, None if lower is None else value - lower) if m is not None]
    margin = min(margins)
    limit = upper if upper is not None and margin == upper - value else lower
    p = 0.5 * math.erfc(-margin / (u / 2) / math.sqrt(2)) if u else float(margin >= 0)
    return {
        "value": value, "lower": lower, "upper": upper, "limit": limit, "margin": margin, "standard_uncertainty": u / 2,
        "expanded_uncertainty": u, "probability": p, "plain": plain or ("pass" if margin >= 0 else "fail"), **more,
    }  # fmt: skip


DROP_STEP = step("ΔU", "d · I · L / 1000", "11 mV/(A·m) · 30 A · 38 m / 1000", 12.54, "V", source="BS 7671:2018+A2:2022, Appendix 4, 6.1")
LIMIT_STEP = step("limit", "U_0 · (p + p_+) / 100", "230 V · (5 % + 0 %) / 100", 11.5, "V", condition="L ≤ 100 m, so nothing is added")

EVERY = assessment(
    [
        finding(
            "fail", "Kiln", "Does the cable keep the voltage up?", "The cable loses 12.54 V at the design current; 11.5 V are allowed.",
            before=[DROP_STEP], steps=[step("ΔU", "ΔU", "12.54 V", 12.54, "V"), LIMIT_STEP], assumed=True,
            caution="The limit guards the working of the equipment, not its safety.", **numbers(12.54, None, 11.5, 0.29, "fail"),
        ),
        finding(
            "pass", "Kiln", "Is the insulation good?", "The insulation reads more than 999 MΩ; 1 MΩ is the least.", check="check_insulation",
            comparator="≥", censored="above", unit="MΩ", **{**numbers(999.0, 1.0, None, 0.0, "pass"), "probability": None},
        ),
        finding(
            "pass", "Kiln", "Does the device trip in time?", "It trips after 24 ms; 300 ms are allowed.", check="check_rcd_trip", unit="ms",
            **numbers(24.0, None, 300.0, 1.3, "pass"),
        ),
        finding(
            "fail", "Floor warming", "Does the device trip in time?", "It did not trip.", path="circuits[1]", check="check_rcd_trip", unit="ms",
            censored="no trip", **{**numbers(10000.0, None, 300.0, 0.0, "fail"), "probability": None},
        ),
        finding(
            "undecided", "Floor warming", "Does a fault disconnect in time?", "Not proved either way: the reading is too uncertain.",
            path="circuits[1]", reason="straddles limit", unit="Ω", detail="meets the limit as read; not proved either way",
            next="a reading with a standard uncertainty of 0.04 Ω or better", settle="a reading with a standard uncertainty of 0.04 Ω or better",
            **numbers(1.30, None, 1.365625, 0.094, "undecided"),
        ),
        finding(
            "undecided", "Extract of the WC", "Does the fan move enough air?", "Too close to the limit for this reading.", path="fans[0]",
            reason="straddles limit", unit="l/s", comparator="≥", assumed=True, next="a reading with a better instrument",
            **numbers(5.8, 6.0, None, 0.67, "undecided"),
        ),
        finding(
            "undecided", "Lights", "Is the insulation good?", "The reading says less than 20 MΩ, which proves nothing.", path="circuits[3]",
            reason="straddles limit", censored="below", unit="MΩ", comparator="≥", next="a reading on a range that reaches 1 MΩ",
            **{**numbers(20.0, 1.0, None, 0.0, "undecided", "undecided"), "probability": None},
        ),
        finding(
            "fail", "Lights", "Is the insulation good?", "Less than 0.05 MΩ; 1 MΩ is the least.", path="circuits[3]", censored="below",
            unit="MΩ", comparator="≥", **{**numbers(0.05, 1.0, None, 0.0, "fail"), "probability": None},
        ),
        finding(
            "undecided", "Bench outlets", "Does the cable keep the voltage up?", "Not known: the length of the cable run.", path="circuits[4]",
            reason="not measured", detail="the length of the cable run", next="measure: the length of the cable run",
            settle="measure: the length of the cable run",
        ),
        finding(
            "undecided", "Wall heater", "Does a fault disconnect in time?", "Not known: the current that operates the device.",
            path="circuits[2]", reason="needs maker's figure", detail="the operating current", next="find the maker's figure", settle="another text",
        ),
        finding(
            "undecided", "Heating cable", "Is the element whole?", "Not known: the rulebook has no band for it.", path="appliances[0]",
            reason="no rule in book", comparator="within", unit="Ω",
        ),
        finding(
            "undecided", "Duct", "Does the fan overcome the duct?", "Not known: the flow is between laminar and turbulent.", path="fans[0]",
            reason="outside validity", unit="Pa", detail="friction_factor: Re = 3395", **numbers(7.1, None, 25.0, 0.0, "undecided", "pass"),
        ),
        finding(
            "undecided", "Kiln", "Was it proved dead?", "Not known.", path="circuits[0]", reason="precondition missing",
            detail="proof of isolation comes first",
        ),
        finding(
            "pass", "Second heater", "Is the element whole?", "27.3 Ω lies in its band.", path="appliances[1]", unit="Ω",
            comparator="within", overrides=["maker's tolerance: printed on the plate"], source={**SEEN, "grade": "override", "title": "override"},
            **numbers(27.3, 25.1275, 29.1, 0.3, "pass"),
        ),
        finding(
            "fail", "Kiln elements", "Is the element whole?", "11.6 Ω is far above the band.", path="appliances[2]", unit="Ω", comparator="within",
            **numbers(11.6, 7.283, 8.433, 0.12, "fail"),
        ),
        finding(
            "pass", "Kiln", "Does the protective conductor bear the fault?", "It bears it.", unit="A²·s", source={**SEEN, "grade": "memory"},
            **numbers(6116.31, None, 29756.25, 2100.0, "pass"),
        ),
        finding(
            "pass", "Cold store", "Is it cold enough?", "It is.", path="sensors[0]", unit="°C", **numbers(-18.5, None, -15.0, 0.8, "pass"),
        ),
        finding("pass", "At the limit", "Is it met?", "Exactly.", path="circuits[8]", **numbers(11.5, None, 11.5, 0.0, "pass")),
        finding("fail", "A hair over", "Is it met?", "Just not.", path="circuits[9]", **numbers(11.50004, None, 11.5, 0.0, "fail")),
        finding("pass", "Nothing flows", "Is it met?", "Yes.", path="circuits[10]", **numbers(0.0, None, 0.0, 0.0, "pass")),
    ]
)  # fmt: skip

LONG = "Garage" + "verylongnamewithoutanyspace" * 12
NAMES = assessment(
    [
        finding(
            "fail", LONG, "Does " + LONG + " keep the voltage up?", "plain words " * 60, next="measure again " * 30,
            **numbers(123456.7, None, 11.5, 40.0, "fail"), steps=[step("x" * 80, "y" * 300, "z" * 300, 1.0, "V")],
        ),
        finding("undecided", LONG, "Why?", LONG, reason="not measured"),
    ],
    title=LONG * 2,
)  # fmt: skip
HOSTILE = '<script>alert("x")</script>&<img src=x onerror=y>\'"</style></svg>{}'
HOSTILE_ALL = assessment(
    [
        {
            **finding(
                "fail", HOSTILE, HOSTILE, HOSTILE, path=HOSTILE, next=HOSTILE, before=[step(*[HOSTILE] * 3, 1.0, HOSTILE, HOSTILE, HOSTILE)],
                check=HOSTILE, detail=HOSTILE, settle=HOSTILE + "2", caution=HOSTILE, overrides=[HOSTILE], unit=HOSTILE,
                source={k: HOSTILE for k in SEEN}, steps=[step(*[HOSTILE] * 3, 1.0, HOSTILE, HOSTILE, HOSTILE)], **numbers(2.0, None, 1.0, 0.1, "fail"),
            )
        },
        finding("undecided", "x", "y", "z", reason=HOSTILE, censored=HOSTILE, comparator=HOSTILE, **numbers(2.0, None, 1.0, 0.1, "undecided")),
    ],
    title=HOSTILE, place=HOSTILE, date=HOSTILE, rulebook=HOSTILE, cautions=[HOSTILE], version=HOSTILE,
)  # fmt: skip
NONE = assessment([], invented=False, cautions=[])
BARE = {"findings": [{"outcome": "undecided", "verdict": {}}, {"outcome": "pass"}]}
SAMPLES = {"every": EVERY, "names": NAMES, "hostile": HOSTILE_ALL, "none": NONE, "bare": BARE}


# ------------------------------------------------------------------------------------------------------- reading the page

VOID = {"meta", "br", "img", "link", "input", "hr"}


class Page(HTMLParser):
    """A strict reader: every tag that is opened is closed, in order."""

    def __init__(self, source: str) -> None:
        super().__init__(convert_charrefs=True)
        self.open: list[str] = []
        self.tags: list[tuple[str, dict[str, str]]] = []
        self.words: list[str] = []
        self.feed(source)
        self.close()
        assert self.open == [], f"left open: {self.open}"

    def handle_starttag(self, tag, attrs):
        names = [k for k, _ in attrs]
        assert len(names) == len(set(names)), f"<{tag}> says an attribute twice"
        self.tags.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag):
        assert self.open and self.open[-1] == tag, f"</{tag}> closes {self.open[-1:]}"
        self.open.pop()

    def handle_data(self, data):
        if self.open and self.open[-1] not in ("style", "script"):
            self.words.append(data)

    @property
    def said(self) -> str:
        return plain("".join(self.words))


@pytest.fixture(params=SAMPLES, scope="module")
def sample(request):
    return SAMPLES[request.param]


def plain(words: str) -> str:
    """Words as they are read: numbers without the thin spaces between their groups, one space between words."""
    words = re.sub("(?<=\\d)\u202f(?=\\d)", "", words)
    return " ".join(words.replace("\u00a0", " ").replace("\u202f", " ").split())


def test_tags_are_balanced_and_ids_unique(sample):
    page = Page(report(sample))
    assert [t for t, _ in page.tags[:2]] == ["html", "head"]
    ids = [a["id"] for _, a in page.tags if "id" in a]
    assert len(ids) == len(set(ids))
    targets = {a["href"][1:] for t, a in page.tags if t == "a"} | {a["aria-labelledby"] for _, a in page.tags if "aria-labelledby" in a}
    assert targets <= set(ids)


def test_nothing_from_outside(sample):
    source = report(sample)
    page = Page(source)
    tags = {t for t, _ in page.tags}
    assert not tags & {"script", "link", "img", "iframe", "object", "embed", "base", "form", "input", "table", "foreignobject"}
    for tag, attributes in page.tags:
        assert not [k for k in attributes if k.startswith("on") or k in ("src", "srcset", "xlink:href", "action", "data", "ping")], (tag, attributes)
        if "href" in attributes:
            assert tag == "a" and attributes["href"].startswith("#")
        assert "url(" not in " ".join(v or "" for v in attributes.values())
    style = source[source.index("<style>") : source.index("</style>")]
    assert re.findall(r"url\(([^)]*)\)", style) == ["#hatch"]
    assert "@import" not in style
    if sample is not HOSTILE_ALL:
        assert "http:" not in source and "https:" not in source and "//" not in source
    assert "default-src 'none'" in source


def test_every_finding_is_said(sample):
    page = Page(report(sample))
    for f in sample["findings"]:
        v = f.get("verdict") or {}
        for words in [f.get("question"), f.get("plain"), f.get("next"), v.get("caution"), v.get("detail"), *(v.get("overrides") or [])]:
            assert plain(words or "") in page.said
        for s in (f.get("before") or []) + (v.get("steps") or []):
            for words in (s["substituted"], s["condition"], s["source"]):  # an index is written low, without its underscore
                assert plain(words).replace("_", "") in page.said.replace("_", "")
        source = v.get("source") or {}
        for key in ("title", "clause", "grade", "rule", "rulebook"):
            assert plain(source.get(key, "")) in page.said
    for caution in sample.get("cautions") or []:
        assert plain(caution) in page.said


def test_hostile_words_stay_words():
    source = report(HOSTILE_ALL)
    page = Page(source)
    assert "<script" not in source and "<img" not in source
    assert plain(HOSTILE) in page.said
    assert source.count("</style>") == 1
    labels = [a["aria-label"] for t, a in page.tags if t == "svg" and "aria-label" in a]
    assert any(HOSTILE in label for label in labels)


def test_headings_in_order(sample):
    levels = [int(t[1]) for t, _ in Page(report(sample)).tags if re.fullmatch("h[1-6]", t)]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(b - a <= 1 for a, b in zip(levels, levels[1:]))


def test_order_of_the_readers_questions():
    source = report(EVERY)
    marks = ["Before anything else", 'id="found"', 'id="fail"', 'id="undecided"', 'id="pass"', 'id="each"', 'id="f1"']
    places = [source.index(m) for m in marks]
    assert places == sorted(places)


def test_outcomes_in_words_and_shapes():
    page = Page(report(EVERY))
    for words in ("Does not meet its limit.", "Meets its limit.", "Not known yet"):
        assert words in page.said
    for words in (
        "it has not been measured", "the method does not hold here", "the doubt of the reading reaches across the limit",
        "the maker's figure is missing", "the rulebook used has no limit for it", "something else has to come first",
        "the reading is out of range on the side where it proves nothing",
    ):  # fmt: skip
        assert words in page.said
    source = report(EVERY)
    shapes = {o: source[source.index('class="shape"', source.index(f'id="{o}"')) :].split("</svg>")[0] for o in ("fail", "undecided", "pass")}
    assert len(set(shapes.values())) == 3


def test_over_the_limit_as_read_is_never_said_milder():
    page = Page(report(EVERY))
    assert page.said.count("As read, it does not meet its limit") == 1
    assert "Not known yet; as read, it does not meet its limit: the doubt of the reading reaches across the limit." in page.said
    shown = text(EVERY)
    assert "Extract of the WC: As read, it does not meet its limit; that is not proved." in shown
    group = shown[shown.index("Not known yet") :]
    assert group.index("Extract of the WC") < group.index("Floor warming")


def test_values_limits_and_margins():
    said = Page(report(EVERY)).said
    for words in (
        "meets the limit / not known yet", "12.54 V", "at most 11.5 V", "1.04 V beyond the limit", "± 0.29 V (k = 2)", "more than 999 MΩ", "at least 1 MΩ", "no trip",
        "less than 0.05 MΩ", "25.13 to 29.1 Ω", "1.300 ± 0.094 Ω", "5.80 ± 0.67 l/s", "29756 A²·s", "−18.5 °C", "none: exactly on the limit", "over 99.9 %", "under 0.1 %",
        "no accuracy was stated for an instrument", "maker's tolerance: printed on the plate", "1.366 Ω",
    ):  # fmt: skip
        assert words in said, words
    assert "e+0" not in said and "e-0" not in said and "nan" not in said.lower().replace("maintenance", "")


def test_printed_order_stays_true():
    """11.50004 V against 11.5 V: four digits would print them alike."""
    page = report(EVERY)
    article = Page("<html><head></head><body>" + page[page.index('<article id="f19"') : page.index('<article id="f20"')].split("<h3>")[0] + "</body></html>")
    assert "11.50004 V" in article.said


def test_probability_keeps_its_side_of_the_line():
    f = finding("undecided", "x", "y", "z", reason="straddles limit", **{**numbers(1.0, None, 2.0, 1.0, "undecided"), "probability": 0.94996})
    assert "94.996 %" in Page(report(assessment([f]))).said
    f["verdict"]["probability"] = 0.9501
    assert "95.01 %" in Page(report(assessment([f]))).said


def drawings(sample):
    """The drawings of a page as lists of (tag, attributes), each with its label."""
    found = []
    for block in re.findall(r'<svg class="drawing".*?</svg>(?=</figure>|<figcaption)', report(sample), re.S):
        inner = Page("<html><head></head>" + block + "</html>")
        found.append(inner.tags[2:])
    return found


def percent(text_: str) -> float:
    assert text_.endswith("%") or text_ == "0"
    return float(text_.rstrip("%"))


def test_drawings_are_to_scale():
    """The mark stands on the permitted side exactly where the value is, and the distances agree with the ticks."""
    seen = drawings(EVERY)
    with_value = [f for f in EVERY["findings"] if f["verdict"]["value"] is not None]
    assert len(seen) == len(with_value)
    for tags, f in zip(seen, with_value):
        v = f["verdict"]
        label = tags[0][1]["aria-label"]
        region = next(a for t, a in tags if t == "rect")
        left = percent(region["x"])
        right = left + percent(region["width"])
        (mark,) = [percent(a["x"]) for t, a in tags if t == "svg" and "overflow" in a][-1:]
        if v["plain"] == "pass":
            assert left - 0.02 <= mark <= right + 0.02, label
        elif v["plain"] == "fail" and abs(v["margin"]) > 1e-3:
            assert not left < mark < right, label
        limits = [percent(a["x1"]) for t, a in tags if a.get("class") == "limit"]
        assert len(limits) == sum(v[k] is not None for k in ("lower", "upper"))
        ratio = v["value"] / v["limit"] if v["limit"] and v["censored"] != "no trip" else 1.0
        assert ("steps of ten" in label) == (ratio > 20 or 0 < ratio < 1 / 20), label
        for _, a in tags:
            for k in ("x", "x1", "x2"):
                if k in a:
                    assert -0.01 <= percent(a[k]) <= 100.01, (label, k, a[k])


def test_no_trip_has_no_place_on_the_scale():
    """The number that stands for "no trip" is the end of a range: a drawing up to it would squeeze the limit."""
    f = finding("fail", "x", "y", "z", censored="no trip", unit="ms", **numbers(1e6, None, 300.0, 0.0, "fail"))
    page = report(assessment([f]))
    (tags,) = drawings(assessment([f]))
    assert next(percent(a["x1"]) for t, a in tags if a.get("class") == "limit") > 50
    assert "1 000 000" not in Page(page).said and "999 700" not in Page(page).said


def test_as_read_is_said_once():
    f = finding("undecided", "x", "y", "Does not meet the limit as read, but that is not proved.", reason="straddles limit", **numbers(2.1, None, 2.0, 0.4, "undecided"))
    assert Page(report(assessment([f]))).said.lower().count("as read,") == 2  # the overview and the question itself
    assert text(assessment([f])).lower().count("as read") == 1


def test_linear_scale_puts_thirds_at_thirds():
    f = finding("pass", "x", "y", "z", **numbers(3.0, None, 9.0, 0.0, "pass"))
    (tags,) = drawings(assessment([f]))
    limit = next(percent(a["x1"]) for t, a in tags if a.get("class") == "limit")
    mark = [percent(a["x"]) for t, a in tags if t == "svg" and "overflow" in a][-1]
    assert mark / limit == pytest.approx(1 / 3, abs=1e-3)


def test_logarithmic_scale_puts_tens_at_equal_steps():
    f = finding("pass", "x", "y", "z", comparator="≥", **numbers(1000.0, 1.0, None, 0.0, "pass"))
    (tags,) = drawings(assessment([f]))
    limit = next(percent(a["x1"]) for t, a in tags if a.get("class") == "limit")
    mark = [percent(a["x"]) for t, a in tags if t == "svg" and "overflow" in a][-1]
    ticks = [percent(a["x1"]) for t, a in tags if a.get("class") == "axis" and a.get("y1") == "72"]
    third = limit + (mark - limit) / 3
    assert min(abs(x - third) for x in ticks) < 0.02


@pytest.mark.parametrize(
    ("censored", "outcome", "lower", "upper", "value", "points"),
    [
        ("above", "pass", 1.0, None, 999.0, "right"),
        ("above", "fail", None, 1.0, 20.0, "right"),
        ("below", "fail", 1.0, None, 0.05, "left"),
        ("below", "pass", None, 1.0, 0.05, "left"),
        ("no trip", "fail", None, 300.0, 10000.0, "right"),
        ("above", "pass", None, 100.0, 20.0, "left"),  # a value that falls while its reading rises
    ],
)
def test_arrow_of_a_reading_out_of_range(censored, outcome, lower, upper, value, points):
    comparator = "≥" if lower is not None else "≤"
    f = finding(outcome, "x", "y", "z", censored=censored, comparator=comparator, **numbers(value, lower, upper, 0.0, outcome))
    (tags,) = drawings(assessment([f]))
    arrow, mark = (percent(a["x"]) for t, a in tags if t == "svg" and "overflow" in a)
    assert (arrow > mark) == (points == "right")


def test_drawing_labels_say_what_is_drawn():
    labels = [tags[0][1]["aria-label"] for tags in drawings(EVERY)]
    assert labels[0] == "Drawing: permitted is at most 11.5 V; the value is 12.54 ± 0.29 V; as read it does not meet the limit."
    assert all(tags[0][1]["role"] == "img" for tags in drawings(EVERY))


def test_worked_steps_print_from_a_closed_fold():
    source = report(EVERY)
    assert source.count("<details>") == source.count('<div class="working">') == 1
    style = source[source.index("<style>") : source.index("</style>")]
    hiding = re.findall(r"@media ([a-z]+)\{details:not\(\[open\]\)\+\.working\{display:none\}\}", style)
    assert hiding == ["screen"]
    assert "</details><div class=\"working\">" in source


def test_invented_is_said_only_when_it_is():
    assert "invented demonstration" in report(EVERY) and "invented demonstration" in text(EVERY)
    assert "invented" not in report(NONE) and "invented" not in text(NONE)


def test_no_findings():
    assert "nothing was found" in Page(report(NONE)).said
    assert "No question could be asked" in text(NONE)


def test_text_fits_a_terminal(sample):
    shown = text(sample)
    assert max(len(line) for line in shown.splitlines()) <= 100
    assert shown.endswith("\n") and "\u00a0" not in shown
    assert not [line for line in shown.splitlines() if line != line.rstrip()]


def test_text_says_every_finding():
    shown = plain(text(EVERY))
    for f in EVERY["findings"]:
        assert plain(f["plain"]) in shown and f["subject"] in shown
        if f["next"]:
            assert plain(f["next"]) in shown
    places = [shown.index(words) for words in ("Does not meet its limit (", "Not known yet (", "In order (")]
    assert places == sorted(places)
    counts = EVERY["summary"]
    assert f"Does not meet its limit ({counts['fail']})" in shown and f"In order ({counts['pass']})" in shown


def test_the_document_is_left_alone():
    import copy

    before = copy.deepcopy(EVERY)
    first = report(EVERY)
    assert report(EVERY) == first
    text(EVERY)
    assert EVERY == before


def test_no_words_of_forms():
    """The page is drawn from the reader's questions: none of the words of a certificate's boxes."""
    said = Page(report(EVERY)).said.lower()
    for words in ("c1", "c2", "c3", "unsatisfactory", "schedule of", "signature"):
        assert not re.search(rf"\b{words}\b", said), words


def test_report_module_needs_only_the_standard_library():
    import sys

    import makegood._page

    folder = Path(makegood._page.__file__).parent
    for module in ("_page", "_drawing", "_words"):
        source = (folder / f"{module}.py").read_text(encoding="utf-8")
        names = set(re.findall(r"^(?:from|import) ([a-zA-Z_]+)", source, re.M))
        assert names <= set(sys.stdlib_module_names) | {"__future__"}, module


def test_steps_show_the_digits_that_go_on():
    """A result of one step is put into the next with six digits: the step shows as many."""
    f = finding(
        "pass", "x", "y", "z", before=[step("T", "t + 273.15", "20 °C + 273.15", 293.15, "K", condition="since t ≥ 0 °C")],
        steps=[step("limit", "U_0 · (p + p_+) / 100", "230 V · 5 % / 100", 11.5, "V")], **numbers(1.0, None, 11.5, 0.10381, "pass"),
    )  # fmt: skip
    source = report(assessment([f]))
    said = Page(source).said
    assert "= 293.15 K" in said and "Since t ≥ 0 °C" in said
    assert "U<sub>0</sub> · (p + p<sub>+</sub>) / 100" in source
    assert "± 0.10 V (k = 2)" in said and "1.00 ± 0.10 V" in said


@pytest.mark.parametrize(
    ("x", "shown"),
    [
        (0.0, "0"), (1.0, "1"), (1.23456, "1.235"), (0.0123456, "0.01235"), (12345.678, "12\u202f346"), (1234.5, "1234"), (9.99999, "10"),
        (-3.5, "−3.5"), (2e7, "20\u202f000\u202f000"), (3.2e12, "3.2 × 10¹²"), (1.8134e-5, "0.00001813"), (4e-9, "4 × 10⁻⁹"), (float("nan"), "–"),
        (True, "–"), (None, "–"), ("7", "–"),
    ],
)  # fmt: skip
def test_numbers(x, shown):
    from makegood._words import _number

    assert _number(x) == shown

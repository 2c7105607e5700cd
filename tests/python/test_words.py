# SPDX-License-Identifier: MIT
"""The words of a visit are data: every check has them, they name what exists, and they are fit to be read by a client.

Each rule is also held against data that break it, so that no rule is kept by accident.
"""

import copy
import functools
import json
import pathlib
import re

import pytest

import makegood

WORDS = pathlib.Path(__file__).resolve().parents[2] / "src" / "words"
LEVELS = ("now", "potential", "improve", "investigate", "")
RANK = {"": 0, "improve": 1, "investigate": 1, "potential": 2, "now": 3}
ACTS = ("repair", "replace", "work_around", "isolate", "improve")
ACCESS = ("", "board", "box", "ceiling", "floor", "loft", "outlet", "outside", "wall")
CHECK_KEYS = ("question", "pass", "fail", "consequence", "danger_fail", "danger_undecided", "caution", "caution_client", "make_safe", "needs", "remedies")
# What may stand before these: how the result of a model is read, and that the trade's codes of danger are not for it.
MAY_STAND = ("says", "electrical")
SAYS = {  # kind of answer: what must be said of it
    "ranking": ("as", "leads", "share", "title", "sound", "next"),
    "counts": ("as", "counts", "lacking"),
    "proof": ("as", "proved", "against", "lacking", "pass", "fail", "undecided"),
}
OBSERVATION_KEYS = ("title", "client", "electrician", "consequence", "danger", "caution", "caution_client", "make_safe", "isolate", "remedies")
REMEDY_KEYS = ("id", "title", "act", "minutes", "access", "leaves")
NEED_KEYS = ("reading", "what", "minutes", "live", "first")
# Models that answer a question of a visit as checks do; so does every model that returns a verdict.
MODELS = (
    "electrical.maximum_demand", "electrical.ring_tests", "electrical.test_record_consistency", "electrical.earthing_arrangement", "electrical.proof_of_isolation",
    "setting_out.check_equipment_in_zone", "setting_out.check_hole_outside_cable_zones", "heating.without_floor_limit", "heating.warm_up_evidence",
    "electrical.joint_under_load", "electrical.unwanted_trips", "electrical.spur_load", "sensing.identify_sensor", "air.fan_diagnosis", "air.commissioned_flow",
    "setting_out.fixing_load", "setting_out.flex_reach",
)
# Checks of a rank, a place, or of a quantity that nobody has a feeling for: their number says nothing to a reader.
NO_NUMBER = ("electrical.check_rcd_type_for_load", "air.check_discharge_outside", "electrical.check_adiabatic")
# Said nowhere in words for the client: they are the trade's, and there are plainer ones.
JARGON = ("impedance", "prospective", "exposed-conductive", "extraneous", "adiabatic", "diversity", "class i", "class ii", "let-through", "discrimination", "beta", "conformity")
# Units and words of calculation: nobody who does not calculate has a feeling for them.
MEANINGLESS = ("laminar", "turbulent", "standard uncertainty", "design current", "1/h", "rulebook's test voltage", "at rest", "half-wave", "half-waves", "expected loss")
# An act of whoever tests or mends: no client does it, so it is no caution for the client.
OF_THE_TRADE = re.compile(r"\b(live test|dead test|test voltage|prove[ds]?|proved dead|isolate[ds]?|lock(?:ed)? off|discharge[ds]?|probes?|clamp|come off first|the tester)\b", re.IGNORECASE)
# May be said to the client, since the glossary explains them.
TECHNICAL = (
    "bonding", "circuit", "circuit breaker", "cold tail", "connection unit", "consumer unit", "controller", "cord", "earth", "earth electrode", "element", "extra-low voltage", "fault",
    "fault current", "fuse", "heating energy", "insulation", "insulation resistance", "isolate", "joist", "leakage", "live", "network operator", "neutral", "notch", "protective conductor", "protective device",
    "prove dead", "relative humidity", "residual current device", "ring circuit", "roof space", "screen", "sensor", "short circuit", "socket-outlet", "terminal", "thermistor", "trip", "voltage", "zone",
)
PROPER = ("Britain",)
QUESTIONS = {  # as they have been asked since the first visit
    "electrical.check_voltage_drop": "Does the cable keep the voltage up?",
    "electrical.check_adiabatic": "Does the protective conductor survive a fault?",
    "electrical.check_loop_impedance": "Does a fault to earth disconnect in time?",
    "electrical.check_insulation": "Is the insulation of the cable sound?",
    "electrical.check_rcd_trip": "Does the residual current device trip in time?",
    "heating.check_element_resistance": "Is the heating element whole?",
    "heating.check_element_insulation": "Is the element insulated from its screen or body?",
    "sensing.check_ntc_sensor": "Does the sensor say what the controller expects?",
    "sensing.check_steinhart_hart_sensor": "Does the sensor say what the controller expects?",
    "sensing.check_rtd_sensor": "Does the sensor say what the controller expects?",
    "sensing.check_silicon_ptc_sensor": "Does the sensor say what the controller expects?",
    "air.check_extract": "Does the fan move the air that the room needs?",
    "air.check_air_changes": "Does the fan change the air of a room without an outside wall often enough?",
    "air.check_discharge_outside": "Does the air that the fan takes out go where the rules let it?",
    "air.check_overrun": "Does the fan run on for long enough?",
    "air.check_duct_pressure": "Can the fan push the air through this duct?",
}


def said_once(pairs):
    """A key that stands twice would hide what stands first."""
    keys = [k for k, _ in pairs]
    assert len(keys) == len(set(keys)), sorted(k for k in keys if keys.count(k) > 1)
    return dict(pairs)


def words():
    return {name: json.loads((WORDS / f"{name}.json").read_text(encoding="utf-8"), object_pairs_hook=said_once) for name in ("checks", "observations", "glossary")}


CATALOGUE = {d["name"]: d for d in makegood.catalogue()}


def sentences(text):
    return re.split(r"(?<=[.?!])\s+", text) if text else []


@functools.lru_cache(None)
def any_term(terms):
    return re.compile(rf"(?<![\w-])({'|'.join(re.escape(t) for t in sorted(terms, key=len, reverse=True))})(?:s|es)?(?![\w-])", re.IGNORECASE)


def terms_in(text, terms):
    return sorted({m.lower() for m in any_term(terms).findall(text)}) if terms else []


def client_texts(entry):
    """What a client reads of an entry: (where, text) of sentences and of titles."""
    full = [(k, entry[k]) for k in ("question", "pass", "fail", "client", "consequence", "caution", "caution_client") if k in entry]
    full += [(f"make_safe[{i}]", s) for i, s in enumerate(entry["make_safe"])]
    full += [(f"remedies[{i}].leaves", r["leaves"]) for i, r in enumerate(entry["remedies"])]
    titles = [("title", entry["title"])] if "title" in entry else []
    return full, titles + [(f"remedies[{i}].title", r["title"]) for i, r in enumerate(entry["remedies"])]


@functools.lru_cache(None)
def of_any_text(text):
    """What holds of every text, whoever reads it."""
    return tuple(breaches_of_any_text(text))


def breaches_of_any_text(text):
    if re.search(r"\b(un)?safe(ly|ty)?\b", text, re.IGNORECASE):
        yield "calls something safe or unsafe"
    if re.search(r"\b[A-Z][A-Z0-9]+\b|\b[A-Z][a-z]?\d+\b|\bZ[se]\b", text):
        yield "has an abbreviation"
    if "!" in text or "  " in text or text != text.strip():
        yield "has an exclamation mark or a stray space"
    if "certificate" in text.lower() and not re.search(r"\b(no|not|never)\b", text):
        yield "speaks of a certificate"
    if re.search(r"\b(clause|regulation|table|schedule) \d|\d\.\d+\.\d", text, re.IGNORECASE):
        yield "names a clause"
    for s in sentences(text):
        for m in re.finditer(r"(?<=[a-z,;:] )[A-Z][a-z]+", s):
            if m.group() not in PROPER:
                yield f"has a name: {m.group()}"
    if re.search(r"\b(color|center|meter(?=s? (long|wide|high))|molding|gray|aluminum|fiber)\b", text):
        yield "is not spelt as in Britain"


def of_client_text(text, glossary):
    yield from of_any_text(text)
    for word in terms_in(text, (*JARGON, *MEANINGLESS)):
        yield f"has the trade's word {word}"
    for term in terms_in(text, tuple(t for t in TECHNICAL if t not in glossary)):
        yield f"says {term}, which the glossary lacks"


def of_caution_client(entry):
    if OF_THE_TRADE.search(entry["caution_client"]):
        yield "warns the client of what whoever tests must do"
    if entry.get("danger_fail", entry.get("danger")) == "now" and not entry["caution_client"]:
        yield "is a danger now and does not tell the client what not to do"


def of_sentences(text, mark="."):
    for s in sentences(text):
        if not s.endswith(mark) or not re.match(r"[A-Z]", s):
            yield f"is no whole sentence: {s}"
        if len(s) > 200:
            yield f"has a sentence of {len(s)} characters"


def of_remedies(remedies):
    if not 1 <= len(remedies) <= 3:
        yield "has not 1 to 3 remedies"
    ids = [r["id"] for r in remedies]
    if len(ids) != len(set(ids)):
        yield "has a remedy twice"
    for r in remedies:
        if tuple(r) != REMEDY_KEYS or r["act"] not in ACTS or r["access"] not in ACCESS or not re.fullmatch(r"[a-z_]+", r["id"]) or r["title"].endswith("."):
            yield f"has a remedy of another shape: {r['id']}"
        m = r["minutes"]
        if len(m) != 3 or not all(isinstance(x, (int, float)) for x in m) or not 0 < m[0] <= m[1] <= m[2]:
            yield f"has minutes that do not rise: {r['id']}"
        if r["act"] == "isolate" and not r["leaves"]:
            yield f"does not say what is left open where it is isolated: {r['id']}"


def of_make_safe(level, steps):
    if level == "now" and not steps:
        yield "is a danger now and does not say how to make it safe"
    if steps and not steps[0].startswith("Isolate"):
        yield "does not begin with isolating"


def keys_of(entry):
    return tuple(k for k in entry if k not in MAY_STAND)


def of_says(name, entry, known):
    """How a result is read, and whether the trade's codes are for it."""
    says = entry.get("says")
    if says is not None:
        if known["kind"] != "model" or says.get("as") not in SAYS or tuple(says) != SAYS[says["as"]]:
            yield "does not say how its result is read"
        elif not all(isinstance(v, list if k in ("sound", "counts") else str) for k, v in says.items()):
            yield "says how its result is read in words that nobody reads"
    no_code = name.startswith(("air.", "lighting.", "setting_out.check_fixing", "setting_out.check_joist", "setting_out.fixing_load"))
    if (entry.get("electrical") is False) != no_code or entry.get("electrical") is True:
        yield "gets a code of electrical danger where it is none, or none where it is"


def of_check(name, entry, glossary):
    known = CATALOGUE.get(name.removesuffix("/appliance"))
    if keys_of(entry) != CHECK_KEYS:
        yield "has other keys"
        return
    if known is not None:
        yield from of_says(name, entry, known)
    if name in QUESTIONS and entry["question"] != QUESTIONS[name]:
        yield "asks its question otherwise than before"
    for k in ("pass", "fail"):
        left = set(re.findall(r"\{[^}]*\}?|\}", entry[k])) - {"{v}", "{l}", "{n}", "{m}"}
        if left:
            yield f"has a placeholder that nobody fills: {sorted(left)}"
    for k in ("question", "consequence", "caution", "caution_client"):
        if re.search(r"[{}]", entry[k]):
            yield f"has a placeholder in its {k}"
    if entry["pass"] == entry["fail"]:
        yield "says the same for pass and fail"
    judged = known is None or known["kind"] == "check" or known.get("returns") == "Verdict"
    if judged and name not in NO_NUMBER and not re.search("{[lm]}", entry["fail"]):
        yield "does not say the limit when it fails"
    if judged and name not in NO_NUMBER and not re.search("{[vn]}", entry["pass"]):
        yield "does not say the value when it passes"
    if (not judged or name in NO_NUMBER) and "{" in entry["pass"] + entry["fail"]:
        yield "speaks of a number that there is not"
    if not entry["consequence"] or not entry["caution"]:
        yield "has no consequence or no caution"
    for k in ("danger_fail", "danger_undecided"):
        if entry[k] not in LEVELS:
            yield f"has a level that is none: {entry[k]}"
    if RANK.get(entry["danger_undecided"], 0) > RANK.get(entry["danger_fail"], 0):
        yield "is more dangerous undecided than failed"
    for level in (entry["danger_fail"], entry["danger_undecided"]):
        yield from of_make_safe(level, entry["make_safe"])
    arguments = {a["name"]: a for a in known["arguments"]} if known else None
    asked = [n["reading"] for n in entry["needs"]]
    if len(asked) != len(set(asked)) or (known and known["kind"] == "check" and not asked):
        yield "asks for a reading twice, or for none"
    for n in entry["needs"]:
        if tuple(n) != NEED_KEYS or not n["what"] or n["minutes"] <= 0 or not isinstance(n["live"], bool) or not all(n["first"]):
            yield f"has a need of another shape: {n['reading']}"
        if arguments is not None and n["reading"] not in arguments:
            yield f"asks for {n['reading']}, which is no argument"
        if n["live"] and not n["first"]:
            yield f"asks for a live reading before anything stands: {n['reading']}"
        if arguments is not None and not n["live"] and arguments.get(n["reading"], {}).get("unit") in ("Ω", "MΩ") and not any("isolated" in f for f in n["first"]):
            yield f"asks for a dead reading without isolating: {n['reading']}"
        for text in (n["what"], *n["first"]):
            yield from of_any_text(text)


def of_observation(entry):
    if tuple(entry) != OBSERVATION_KEYS:
        yield "has other keys"
        return
    if entry["danger"] not in LEVELS:
        yield f"has a level that is none: {entry['danger']}"
    if not all(entry[k] for k in ("title", "client", "electrician", "consequence", "caution")):
        yield "has an empty text"
    if len(sentences(entry["client"])) > 2:
        yield "says more than two sentences to the client"
    if len(sentences(entry["electrician"])) != 1:
        yield "says not one sentence to the electrician"
    if entry["title"].endswith(".") or len(entry["title"]) > 70:
        yield "has a title that is none"
    if not isinstance(entry["isolate"], bool) or (entry["danger"] == "now" and not entry["isolate"]) or (entry["isolate"] and not entry["make_safe"]):
        yield "must be off tonight and does not say so"
    if re.search(r"[{}]", json.dumps([entry[k] for k in ("title", "client", "electrician", "consequence", "caution", "make_safe")])):
        yield "has a placeholder"
    yield from of_make_safe(entry["danger"], entry["make_safe"])
    yield from of_any_text(entry["electrician"])
    yield from of_sentences(entry["electrician"])


def of_both(entry, glossary):
    yield from of_remedies(entry["remedies"])
    yield from of_caution_client(entry)
    full, titles = client_texts(entry)
    for where, text in full:
        for what in (*of_client_text(text, glossary), *of_sentences(text, "?" if where == "question" else ".")):
            yield f"{where} {what}"
    for where, text in titles:
        for what in of_client_text(text, glossary):
            yield f"{where} {what}"


def complaints(data):
    """Every breach of a rule, as "file: entry: what"."""
    checks, observations, glossary = data["checks"], data["observations"], data["glossary"]
    found = []
    for file in ("checks", "observations"):
        if "judgement" not in data[file].get("note", ""):
            found.append(f"{file}: does not say that minutes and levels are judgement")
    wanted = {n for n, d in CATALOGUE.items() if d["kind"] == "check" or d.get("returns") == "Verdict"} | set(MODELS)
    found += [f"checks: {n}: has no entry" for n in sorted(wanted - set(checks))]
    found += [f"checks: {n}: does not exist" for n in sorted(checks) if n != "note" and n.removesuffix("/appliance") not in CATALOGUE]
    for name, entry in checks.items():
        if name != "note":
            found += [f"checks: {name}: {w}" for w in of_check(name, entry, glossary)]
            if keys_of(entry) == CHECK_KEYS:
                found += [f"checks: {name}: {w}" for w in of_both(entry, glossary)]
    for kind, entry in observations.items():
        if kind != "note":
            if not re.fullmatch(r"[a-z_]+", kind):
                found.append(f"observations: {kind}: is no word")
            found += [f"observations: {kind}: {w}" for w in of_observation(entry)]
            if tuple(entry) == OBSERVATION_KEYS:
                found += [f"observations: {kind}: {w}" for w in of_both(entry, glossary)]
    for field in ("title", "client"):
        said = [e.get(field) for k, e in observations.items() if k != "note"]
        found += [f"observations: two kinds have one {field}: {t}" for t in sorted({t for t in said if said.count(t) > 1})]
    if list(glossary) != sorted(glossary):
        found.append("glossary: is not in order")
    for term, text in glossary.items():
        for what in (*of_any_text(text), *of_sentences(text)):
            found.append(f"glossary: {term}: {what}")
        if not 1 <= len(sentences(text)) <= 2 or term != term.lower():
            found.append(f"glossary: {term}: is not explained in one or two sentences")
        if text.lower().startswith(term):
            found.append(f"glossary: {term}: is explained by itself")
    return found


def test_words_keep_every_rule():
    assert complaints(words()) == []


def test_how_many():
    data = words()
    assert 35 <= len(data["observations"]) - 1 <= 60 and 50 <= len(data["glossary"]) <= 80
    kinds = [e["danger"] for k, e in data["observations"].items() if k != "note"]
    assert set(kinds) == set(LEVELS)


def test_filled_sentences_have_no_gap():
    data = words()
    for name, entry in data["checks"].items():
        if name != "note":
            for k in ("pass", "fail"):
                for value, limit in (("above 999 MΩ", "1 MΩ"), ("no trip at all", "130 ms to 500 ms"), ("93.6 Ω", "80 Ω to 95 Ω")):
                    text = entry[k].format(v=value, l=limit, n=value.partition(" ")[0], m=limit.partition(" ")[0])
                    assert "{" not in text and list(of_sentences(text)) == [], (name, text)


INSULATION, LIVE = "electrical.check_insulation", "live_parts_within_reach"


def put(value, *way):
    """A break of the data: the value at the end of a way of keys."""

    def broken(data):
        for key in way[:-1]:
            data = data[key]
        data[way[-1]] = value

    return broken


def drop(*way):
    def broken(data):
        for key in way[:-1]:
            data = data[key]
        del data[way[-1]]

    return broken


def again(*way):
    def broken(data):
        for key in way:
            data = data[key]
        data.append(copy.deepcopy(data[0]))

    return broken


C, O = ("checks", INSULATION), ("observations", LIVE)
BREAKS = [
    (drop("checks", "note"), "minutes and levels are judgement"),
    (drop(*C), "has no entry"),
    (drop("checks", "sensing.check_sensor"), "has no entry"),
    (drop("checks", "electrical.ring_tests"), "has no entry"),
    (lambda d: d["checks"].update({"electrical.check_nothing": d["checks"][INSULATION]}), "does not exist"),
    (drop(*C, "caution"), "has other keys"),
    (put("Is it sound?", *C, "question"), "asks its question otherwise"),
    (put("It reads {value}; at least {l} is asked for.", *C, "fail"), "placeholder that nobody fills"),
    (put("It reads {v; at least {l} is asked for.", *C, "fail"), "placeholder that nobody fills"),
    (put("It can leak {v}.", *C, "consequence"), "placeholder in its consequence"),
    (lambda d: put(d["checks"][INSULATION]["pass"], *C, "fail")(d), "the same for pass and fail"),
    (put("The insulation is low.", *C, "fail"), "does not say the limit"),
    (put("The insulation is well above {l}.", *C, "pass"), "does not say the value"),
    (put("It blows {v} to where it may.", "checks", "air.check_discharge_outside", "pass"), "a number that there is not"),
    (put("The ring has {v}.", "checks", "electrical.ring_tests", "pass"), "a number that there is not"),
    (put("", *C, "consequence"), "no consequence or no caution"),
    (put("high", *C, "danger_fail"), "a level that is none"),
    (put("now", *C, "danger_undecided"), "more dangerous undecided"),
    (put([], "checks", "electrical.check_touch_voltage", "make_safe"), "does not say how to make it safe"),
    (put(["Tell the people of the house.", "Isolate the circuit."], *C, "make_safe"), "does not begin with isolating"),
    (again(*C, "needs"), "a reading twice"),
    (put([], *C, "needs"), "or for none"),
    (put(0, *C, "needs", 0, "minutes"), "a need of another shape"),
    (put("insulation_mohm", *C, "needs", 0, "reading"), "which is no argument"),
    (put([], "checks", "electrical.check_rcd_trip", "needs", 0, "first"), "before anything stands"),
    (put(["controller disconnected"], *C, "needs", 0, "first"), "without isolating"),
    (put("reading of the RCD", *C, "needs", 0, "what"), "has an abbreviation"),
    (put({"as": "ranking"}, "checks", "electrical.ring_tests", "says"), "does not say how its result is read"),
    (put({"as": "proof"}, *C, "says"), "does not say how its result is read"),
    (put("intact", "checks", "electrical.ring_tests", "says", "sound"), "in words that nobody reads"),
    (put(False, *C, "electrical"), "a code of electrical danger"),
    (drop("checks", "air.check_extract", "electrical"), "a code of electrical danger"),
    (put([], *C, "remedies"), "not 1 to 3 remedies"),
    (again("checks", "electrical.check_adiabatic", "remedies"), "not 1 to 3 remedies"),
    (again(*O, "remedies"), "a remedy twice"),
    (put("mend", *C, "remedies", 0, "act"), "a remedy of another shape"),
    (put("garden", *C, "remedies", 0, "access"), "a remedy of another shape"),
    (put([30, 20, 60], *C, "remedies", 0, "minutes"), "minutes that do not rise"),
    (put([0, 20, 60], *C, "remedies", 0, "minutes"), "minutes that do not rise"),
    (put("", *C, "remedies", 2, "leaves"), "does not say what is left open"),
    (put("This is a live test: prove the protective conductor first.", *C, "caution_client"), "warns the client of what"),
    (put("Isolate it before a cover comes off.", *O, "caution_client"), "warns the client of what"),
    (put("", *O, "caution_client"), "does not tell the client what not to do"),
    (put("The flow is laminar at {v}; at least {l} is asked for.", *C, "fail"), "the trade's word laminar"),
    (put("The circuit is safe to use.", *C, "consequence"), "calls something safe"),
    (put("The RCD trips.", *C, "consequence"), "has an abbreviation"),
    (put("The Zs is high.", *C, "consequence"), "has an abbreviation"),
    (put("The loop impedance is high.", *C, "consequence"), "the trade's word impedance"),
    (drop("glossary", "residual current device"), "which the glossary lacks"),
    (put("It can leak!", *C, "consequence"), "exclamation mark"),
    (put("This is your certificate.", *C, "consequence"), "speaks of a certificate"),
    (put("See clause 4 of the rules.", *C, "consequence"), "names a clause"),
    (put("Fit one made by Bloggs.", *C, "consequence"), "has a name: Bloggs"),
    (put("The color of the wire fades.", *C, "consequence"), "is not spelt as in Britain"),
    (put("Current can leak", *C, "consequence"), "is no whole sentence"),
    (put("Is the insulation sound.", "checks", "electrical.check_overload", "question"), "is no whole sentence"),
    (put("Current can leak " + "and leak " * 25 + "again.", *C, "consequence"), "characters"),
    (drop(*O, "isolate"), "has other keys"),
    (put("severe", *O, "danger"), "a level that is none"),
    (put("", *O, "client"), "has an empty text"),
    (put("One. Two. Three.", *O, "client"), "more than two sentences"),
    (put("One. Two.", *O, "electrician"), "not one sentence to the electrician"),
    (put("Live parts.", *O, "title"), "a title that is none"),
    (put("Parts of the SELV", *O, "title"), "has an abbreviation"),
    (put(False, *O, "isolate"), "must be off tonight"),
    (put([], "observations", "heat_marks", "make_safe"), "must be off tonight"),
    (put("It reads {v}.", *O, "client"), "has a placeholder"),
    (put("Cover it first.", *O, "make_safe", 0), "does not begin with isolating"),
    (lambda d: d["observations"].update({"Live parts": d["observations"].pop(LIVE)}), "is no word"),
    (put("Heat marks at a terminal or accessory", *O, "title"), "two kinds have one title"),
    (lambda d: d["glossary"].update({"aaa": "The first letter, three times."}), "is not in order"),
    (put("One. Two. Three.", "glossary", "earth"), "one or two sentences"),
    (put("Earth is earth.", "glossary", "earth"), "is explained by itself"),
    (put("The ground, which is safe.", "glossary", "earth"), "calls something safe"),
]


@pytest.mark.parametrize("number", range(len(BREAKS)))
def test_each_rule_finds_its_breach(number):
    broken, said = BREAKS[number]
    data = words()
    broken(data)
    assert any(said in c for c in complaints(data)), said


def test_a_key_that_stands_twice_is_found():
    with pytest.raises(AssertionError):
        json.loads('{"a": 1, "a": 2}', object_pairs_hook=said_once)


HARD = WORDS.parents[1] / "tests" / "visits" / "hard"
RULES = "bs7671:2018+a2,england-adf-2021,england-adp-2013"
VISITS = {"demo": WORDS.parents[1] / "notebooks" / "demo_visit.json"}
VISITS.update({p.stem: p for p in sorted(HARD.glob("*.json")) if ".expected" not in p.name and "errors" not in json.loads((HARD / f"{p.stem}.expected.json").read_text())})


@pytest.mark.parametrize("name", VISITS)
def test_what_the_client_reads_of_a_visit(name):
    """No answer holds a unit or a word that says nothing to somebody who does not calculate, and no caution is for whoever tests."""
    document = makegood.assess(makegood.load_visit(VISITS[name]), rules=RULES).to_dict()
    assert document["findings"]
    for f in document["findings"]:
        assert not terms_in(f["client"], MEANINGLESS) and "A²" not in f["client"], f["client"]
        assert not re.search(r"\bRe \d|\bpending\b|1/h|\d x the", f["client"]), f["client"]
        assert not OF_THE_TRADE.search(f["caution_client"]), f["caution_client"]
        for number in re.findall(r"\d[\d.]*", f["client"]) if f["verdict"]["check"].startswith("check_") else ():
            assert len(number.strip(".").replace(".", "").lstrip("0").rstrip("0")) <= 5, f["client"]

# SPDX-License-Identifier: MIT
"""Additional protection, codes of danger, work that has to be notified: what a whole visit asks of rulebooks."""

from __future__ import annotations

import pytest

import makegood
from makegood import electrical, job

BOOK = "bs7671:2018+a2"
COUNTRIES = ("england-adp-2013", "wales-adp-2006", "scotland-warrant-house", "scotland-warrant-flat", "northern-ireland-electrical")
USES = ("socket_outlet", "lighting_dwelling", "mobile_outdoor", "buried_cable", "bathroom", "floor_heating", "swimming", "sauna", "vehicle_charging")
ANSWERS = {1: "notifiable", 0: "not_notifiable", 2: "not_known"}


def rows(book: str, limit: str) -> dict[str, dict]:
    return {r["condition"]: r for r in makegood.Rulebook(book).rows() if r["limit"] == limit}


def test_every_use_has_a_row_today_and_is_held_at_30_ma():
    assert set(rows(BOOK, "additional_protection")) == set(USES)
    for use in USES:
        assert [electrical.check_additional_protection(x, use, BOOK).plain for x in (10, 30, 100, 500)] == ["pass", "pass", "fail", "fail"]


def test_no_device_at_all_fails():
    v = electrical.check_additional_protection({"above": 1000}, "socket_outlet", BOOK)
    assert (v.outcome, v.plain, v.censored) == ("fail", "fail", "above")
    assert electrical.check_additional_protection(None, "socket_outlet", BOOK).outcome == "undecided"


def test_an_older_edition_asks_for_less():
    before = electrical.check_additional_protection(300, "lighting_dwelling", "bs7671:2008")
    assert (before.outcome, before.reason) == ("undecided", "no rule in book")
    assert electrical.check_additional_protection(300, "mobile_outdoor", "bs7671:2001").outcome == "fail"
    assert electrical.check_additional_protection(300, "socket_outlet", "bs7671:2001").reason == "no rule in book"


def test_codes_of_danger():
    found = {c: (r["numbers"][0], r["text"].split(":")[0]) for c, r in rows(BOOK, "danger_class").items()}
    assert found == {"now": (1, "C1"), "potential": (2, "C2"), "improve": (3, "C3"), "investigate": (0, "FI")}
    assert not rows("bs7671:2008", "danger_class") and set(rows("bs7671:2008+a3", "danger_class")) == set(found)


@pytest.mark.parametrize("book", COUNTRIES)
def test_an_answer_is_that_of_its_row(book):
    known = rows(book, "notifiable_work")
    for kind, row in known.items():
        if not kind:
            continue
        r = job.notifiable_work(kind, book)
        assert r.answer == ANSWERS[row["numbers"][0]]
        assert r.source == {"title": row["source"], "clause": row["clause"], "grade": row["grade"]}
        assert r.do == row["text"] and row["clause"] in r.rule
        assert ("recalled, not read" in r.rule) == (row["grade"] == "memory")
        assert r.text == [r.rule, r.do]
    assert job.notifiable_work("inspection_only", book).answer == "not_notifiable"


def test_england_dropped_kitchens_and_gardens_and_wales_kept_them():
    for kind in ("kitchen_alteration", "outdoor_alteration"):
        assert job.notifiable_work(kind, "england-adp-2013").answer == "not_notifiable"
        assert job.notifiable_work(kind, "wales-adp-2006").answer == "notifiable"
    for kind in ("new_circuit", "consumer_unit_replaced", "special_location_alteration"):
        assert {job.notifiable_work(kind, b).answer for b in COUNTRIES[:2]} == {"notifiable"}


def test_silence_is_never_not_notifiable():
    for book in (BOOK, "common-practice"):
        r = job.notifiable_work("new_circuit", book)
        assert r.answer == "not_known" and r.source is None and r.rule.startswith("No rule in") and "before the work" in r.do
    assert job.notifiable_work("new_circuit", f"{BOOK},england-adp-2013").answer == "notifiable"


def test_an_unknown_kind_names_the_nearest():
    with pytest.raises(makegood.RangeError, match='did you mean "consumer_unit_replaced"'):
        job.notifiable_work("consumer_unit_replacd", "england-adp-2013")


def test_a_derived_book_says_that_it_answered():
    book = makegood.Rulebook("england-adp-2013").override("landlord", "notifiable_work", "kitchen_alteration", ">=", [1], "tell the landlord first")
    r = job.notifiable_work("kitchen_alteration", book)
    assert (r.answer, r.override, r.do) == ("notifiable", "landlord: tell the landlord first", "tell the landlord first")

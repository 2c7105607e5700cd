# SPDX-License-Identifier: MIT
"""Exact money against Python's decimal and fractions, quotes and options against independent ones, and every error with its line.

    MAKEGOOD_INVOICES=1000000 python -m pytest tests/python/test_price.py -k decimal    # the figure of record
    PYTHONPATH=... python tests/python/test_price.py 1000000                             # the same, with its time
"""

from __future__ import annotations

import itertools
import os
import random
import sys
import time
from decimal import ROUND_DOWN, ROUND_HALF_DOWN, ROUND_HALF_EVEN, ROUND_HALF_UP, ROUND_UP, Decimal, localcontext
from fractions import Fraction as F

import numpy as np
import pytest

import makegood
from makegood import price

MODES = {"half_up": ROUND_HALF_UP, "half_even": ROUND_HALF_EVEN, "half_down": ROUND_HALF_DOWN, "down": ROUND_DOWN, "up": ROUND_UP}
# rule: what is rounded, how, to which step in pence, and the sum; from the tables of the sources, not from the library
RULES = {
    "line_half_up": ("line", ROUND_HALF_UP, Decimal(1), ROUND_HALF_UP),
    "line_down_tenth": ("line", ROUND_DOWN, Decimal("0.1"), ROUND_DOWN),
    "line_nearest_half": ("line", ROUND_HALF_UP, Decimal("0.5"), ROUND_DOWN),
    "line_half_even": ("line", ROUND_HALF_EVEN, Decimal(1), ROUND_HALF_EVEN),
    "rate_half_up": ("rate", ROUND_HALF_UP, Decimal(1), ROUND_HALF_UP),
    "rate_half_even": ("rate", ROUND_HALF_EVEN, Decimal(1), ROUND_HALF_EVEN),
    "total_half_up": ("total", ROUND_HALF_UP, Decimal(1), ROUND_HALF_UP),
    "total_half_even": ("total", ROUND_HALF_EVEN, Decimal(1), ROUND_HALF_EVEN),
    "total_down": ("total", ROUND_DOWN, Decimal(1), ROUND_DOWN),
}


def to_step(x: Decimal, mode: str, step: Decimal) -> Decimal:
    return (x / step).to_integral_value(mode) * step


def vat_by_decimal(lines: list[tuple[Decimal, Decimal]], rule: str) -> Decimal:
    """Tax in pence of lines of (net pence, rate in per cent)."""
    scope, mode, step, total = RULES[rule]
    if scope == "line":
        return sum((to_step(n * r / 100, mode, step) for n, r in lines), Decimal(0)).to_integral_value(total)
    if scope == "rate":
        return sum((to_step(sum(n for n, q in lines if q == r) * r / 100, mode, step) for r in {r for _, r in lines}), Decimal(0))
    return to_step(sum((n * r / 100 for n, r in lines), Decimal(0)), mode, step)


def invoices_against_decimal(count: int, rule: str, seed: int = 8) -> tuple[int, int]:
    """Random invoices in columns, and each once more by decimal. Returns how many lines there were, and how many invoices differ."""
    rng = np.random.default_rng(seed)
    lines = rng.integers(1, 6, count)
    invoice = np.repeat(np.arange(count), lines)
    n = invoice.size
    quantity = rng.integers(0, 200_000, n)  # thousandths
    unit_price = rng.integers(0, 3_000_000, n)  # tenths of a penny
    rate = rng.choice([2000, 500, 0, 1750, 2250], n)
    got = price.invoice_totals(invoice, quantity, unit_price, rate, quantity_digits=3, price_digits=1, rate_digits=2, rounding=rule)
    different = 0
    with localcontext() as context:
        context.prec = 60
        thousand, ten, hundred = Decimal(1000), Decimal(10), Decimal(100)
        at = 0
        columns = zip(quantity.tolist(), unit_price.tolist(), rate.tolist())
        totals = zip(*(column.tolist() for column in got))
        for k, (net, vat, total) in zip(lines.tolist(), totals):
            rows = [((q / thousand * p / ten).to_integral_value(ROUND_HALF_UP), r / hundred) for q, p, r in ((Decimal(q), Decimal(p), Decimal(r)) for q, p, r in itertools.islice(columns, k))]
            wanted_net = sum(x for x, _ in rows)
            wanted_vat = vat_by_decimal(rows, rule)
            different += (net, vat, total) != (wanted_net, wanted_vat, wanted_net + wanted_vat)
            at += k
    assert at == n
    return n, different


@pytest.mark.parametrize("rule", RULES)
def test_many_invoices_against_decimal(rule):
    count = int(os.environ.get("MAKEGOOD_INVOICES", "18000")) // len(RULES)
    assert invoices_against_decimal(count, rule)[1] == 0


def test_columns_are_held_to_whole_numbers():
    good = dict(invoice=[0, 0, 1], quantity=[1, 2, 3], unit_price=100, rate=[2000, 2000, 500])
    t = price.invoice_totals(**good)
    assert t.net_minor.dtype == np.int64 and t.total_minor.tolist() == [360, 315]
    assert price.invoice_totals([], [], [], []).net_minor.size == 0
    for wrong, kind in (
        (dict(quantity=[1.0, 2.0, 3.0]), TypeError),
        (dict(quantity=["1", "2", "3"]), TypeError),
        (dict(quantity=[True, True, True]), TypeError),
        (dict(quantity=np.array([1, 2, 2**63 + 5], dtype=np.uint64)), TypeError),
        (dict(quantity=[1, 2]), makegood.RangeError),
        (dict(quantity=[1, -2, 3]), makegood.RangeError),
        (dict(invoice=[0, 1, 0]), makegood.RangeError),
        (dict(invoice=[0, 0, -1]), makegood.RangeError),
        (dict(invoice=[0, 0, 10**12]), makegood.RangeError),
        (dict(rate=[2000, 12000, 500]), makegood.RangeError),
        (dict(unit_price=2**62, quantity=[1, 1000, 1]), makegood.RangeError),
        (dict(rounding="by_eye"), makegood.RuleError),
        (dict(line_mode="by_eye"), makegood.RangeError),
        (dict(rate_digits=2.0), makegood.RangeError),
        (dict(quantity=np.ma.array([1, 2, 3], mask=[0, 1, 0])), TypeError),
    ):
        with pytest.raises(kind, match="invoice_totals|rounding"):
            price.invoice_totals(**{**good, **wrong})
    with pytest.raises(makegood.RangeError, match="line 1: the rate of tax"):
        price.invoice_totals(**{**good, "rate": [2000, 12000, 500]})


def test_round_money_against_decimal():
    rng = random.Random(3)
    for _ in range(3000):
        digits = rng.choice([0, 2, 3])
        code = {0: "JPY", 2: "GBP", 3: "KWD"}[digits]
        amount = Decimal(rng.randint(-(10**9), 10**9)).scaleb(-rng.randint(0, 6))
        if rng.random() < 0.3:  # a tie
            amount = Decimal(2 * rng.randint(-(10**5), 10**5) + 1) / 2 / Decimal(10) ** digits
        mode = rng.choice(list(MODES))
        wanted = amount.quantize(Decimal(1).scaleb(-digits), MODES[mode])
        got = price.round_money(amount if rng.random() < 0.5 else format(amount, "f"), mode, code)
        assert Decimal(got.rounded) == wanted and got.rounded_minor == int(wanted.scaleb(digits)), (amount, mode, code)
        assert type(got.rounded_minor) is int


def test_vat_from_gross_against_fractions():
    rng = random.Random(4)
    for _ in range(1000):
        gross, rate = rng.randint(0, 10**7), Decimal(rng.randint(0, 2500)).scaleb(-2)
        share = F(rate) / (100 + F(rate))
        got = price.vat_from_gross(Decimal(gross).scaleb(-2), rate)
        wanted = gross * share
        assert got.vat_minor == int(wanted + F(1, 2)) and got.net_minor + got.vat_minor == gross
        assert F(got.fraction) == share


# ---- quotes --------------------------------------------------------------------------------------------------------------


def half_up(x: F) -> int:
    return int(x + F(1, 2)) if x >= 0 else -int(-x + F(1, 2))


def quote_by_fractions(lines, rates, rule, discount_percent):
    """A quote of shown lines written once more with fractions; pence. Returns net, tax, discount and the net of each line."""
    nets = []
    for line in lines:
        number = {k: F(v) for k, v in line.items() if k not in ("kind", "vat", "name")}
        g = number.get
        if line["kind"] == "labour":
            time_h = g("time_h", F(0))
            if "increment_h" in number:
                time_h = -(-time_h // number["increment_h"]) * number["increment_h"]
            price_ = max(time_h * g("rate_per_h", F(0)), g("minimum", F(0))) + g("call_out", F(0))
        elif line["kind"] == "travel":
            price_ = g("distance_km", F(0)) * g("rate_per_km", F(0)) + g("distance_miles", F(0)) * g("rate_per_mile", F(0)) + g("time_h", F(0)) * g("rate_per_h", F(0))
        elif line["kind"] == "materials":
            price_ = g("cost") * g("quantity", F(1)) * (1 + g("markup_percent", F(0)) / 100) / (1 - g("margin_percent", F(0)) / 100)
        elif line["kind"] == "contingency":
            price_ = F(sum(nets), 100) * g("percent") / 100
        elif line["kind"] == "call_back":
            price_ = g("probability") * g("visit_cost")
        else:
            price_ = g("amount")
        nets.append(half_up(100 * price_))
    discount = half_up(F(sum(nets)) * F(discount_percent) / 100)
    shares = [F(discount * n, sum(nets)) if sum(nets) else F(0) for n in nets]
    parts = [int(s) for s in shares]
    for i in sorted(range(len(nets)), key=lambda i: (-(shares[i] - parts[i]), i))[: discount - sum(parts)]:
        parts[i] += 1
    charged = [(Decimal(n - p), Decimal(rates[line["vat"]])) for n, p, line in zip(nets, parts, lines)]
    return sum(nets) - discount, int(vat_by_decimal(charged, rule)), discount, nets


def random_line(rng: random.Random) -> dict:
    def d(most: int, digits: int) -> str:
        return format(Decimal(rng.randint(0, most * 10**digits)).scaleb(-digits), "f")

    kind = rng.choice(["labour", "travel", "materials", "parking", "waste", "fixed", "contingency", "call_back"])
    line: dict = {"kind": kind, "vat": rng.choice(["standard", "reduced", "zero"])}
    if kind == "labour":
        line |= {"time_h": d(12, 2), "rate_per_h": d(80, 2)}
        line |= {"minimum": d(100, 2)} if rng.random() < 0.3 else {}
        line |= {"call_out": d(60, 2)} if rng.random() < 0.3 else {}
        line |= {"increment_h": rng.choice(["0.25", "0.5", "1"])} if rng.random() < 0.3 else {}
    elif kind == "travel":
        line |= {"distance_km": d(90, 1), "rate_per_km": d(1, 4)} if rng.random() < 0.5 else {"distance_miles": d(90, 1), "rate_per_mile": d(1, 4)}
        line |= {"time_h": d(3, 2), "rate_per_h": d(50, 2)} if rng.random() < 0.5 else {}
    elif kind == "materials":
        line |= {"cost": d(300, 3)}
        line |= {"quantity": d(30, 2)} if rng.random() < 0.5 else {}
        line |= rng.choice([{}, {"markup_percent": d(60, 1)}, {"margin_percent": d(60, 1)}])
    elif kind == "contingency":
        line |= {"percent": d(15, 1)}
    elif kind == "call_back":
        line |= {"probability": d(1, 3), "visit_cost": d(90, 2), "shown": True}
    else:
        line |= {"amount": d(200, 2)}
    return line


def test_quotes_against_fractions():
    rng = random.Random(8)
    rates = {"standard": "20", "reduced": "5", "zero": "0"}
    for _ in range(800):
        lines = [random_line(rng) for _ in range(rng.randint(1, 8))]
        rule, percent = rng.choice(list(RULES)), rng.choice(["0", "10", "2.5"])
        plain = [{k: v for k, v in line.items() if k != "shown"} for line in lines]
        net, vat, discount, nets = quote_by_fractions(plain, rates, rule, percent)
        q = price.quote(lines, {"standard": "20", "reduced": 5}, rule, discount={"percent": percent})
        assert [x["net_minor"] for x in q.lines] == nets, lines
        assert (q.net_minor, q.vat_minor, q.total_minor, q.discount_minor) == (net, vat, net + vat, discount), (lines, rule)
        assert Decimal(q.total) == Decimal(q.total_minor).scaleb(-2)
        assert sum(x["net_minor"] for x in q.client_lines) == net
        assert sum(x["net_minor"] for x in q.rates) == net


JOB = [
    {"kind": "labour", "name": "work", "time_h": "3.5", "rate_per_h": "48.00"},
    {"kind": "materials", "name": "parts", "cost": "86.40", "markup_percent": "20"},
    {"kind": "travel", "name": "drive", "distance_miles": "24", "rate_per_mile": "0.45"},
]


def numbers(x, path=""):
    if isinstance(x, dict):
        for k, v in x.items():
            yield from numbers(v, f"{path}.{k}")
    elif isinstance(x, list):
        for i, v in enumerate(x):
            yield from numbers(v, f"{path}[{i}]")
    elif isinstance(x, float):
        yield path


def test_no_amount_is_a_float():
    q = price.quote(JOB, {"standard": "20"}, budget="400")
    assert type(q.total_minor) is int and q.total_minor == 33898 and q.total == "338.98"
    assert {p.split(".")[-1] for p in numbers(q.to_dict())} <= {"over_budget_probability", "charged_in", "draws", "seed"}
    for given in (Decimal("48.00"), 48, "48", "48.00 GBP"):
        assert price.quote([JOB[0] | {"rate_per_h": given}], {"standard": 20}).net == "168.00"
    with pytest.raises(makegood.RangeError, match=r'lines\[0\] "work": rate_per_h: 48.1 is a binary fraction.*give it as text, "48.1"'):
        price.quote([JOB[0] | {"rate_per_h": 48.1}], {"standard": 20})
    with pytest.raises(makegood.RangeError, match="as text only"):
        price.round_money(2**53 + 2, "half_up")


def test_what_the_client_sees():
    lines = [*JOB, {"kind": "call_back", "probability": 0.05, "visit_cost": 80}]
    q = price.quote(lines, {"standard": "20"})
    assert q.net_minor == 28248 + 400 and len(q.client_lines) == 3 and q.client_lines[0]["net_minor"] == 16800 + 400
    assert q.lines[3]["shown"] is False and q.lines[3]["charged_in"] == 0 and "probability 0.05 × 80.00 GBP" in q.lines[3]["working"]
    assert not any("call" in t or "second visit" in t for t in q.client_text) and any("second visit" in t for t in q.text)
    shown = price.quote(lines, {"standard": "20"}, show_call_back=True)
    assert len(shown.client_lines) == 4 and shown.total_minor == q.total_minor
    plain = price.quote(lines, registered=False)
    assert plain.vat_minor is None and plain.vat is None and plain.total_minor == q.net_minor and plain.rates == []
    assert not any("VAT" in t for t in plain.client_text) and any("Not registered" in t for t in plain.text)
    mixed = price.quote([JOB[0] | {"vat": "exempt"}, JOB[1] | {"vat": "outside_scope"}, JOB[2] | {"vat": "zero"}], {"standard": "20"})
    assert mixed.vat_minor == 0 and [r["rate_percent"] for r in mixed.rates] == ["0", None, None]
    yen = price.quote([{"kind": "fixed", "amount": "1234.5"}], {"standard": "10"}, currency="JPY")
    assert yen.net == "1235" and yen.total == "1359" and yen.currency == "JPY"  # 123.5 goes up to 124
    own = price.quote([{"kind": "fixed", "amount": "1.04"}], {"standard": "20"}, {"scope": "total", "mode": "half_up", "step_minor": "5", "source": "cash in steps of five"}, currency={"code": "XTS", "digits": 2})
    assert own.vat == "0.20" and own.rounding["source"] == "cash in steps of five" and own.rounding["grade"] == "stated"


def test_spread_of_a_total():
    spread = {"kind": "triangular", "low_h": 2, "high_h": 8}
    q = price.quote([JOB[0] | {"spread": spread}, *JOB[1:]], {"standard": "20"}, budget="450", draws=40000)
    rest = 103.68 + 10.80

    def quantile(p):  # of a triangle from 2 to 8 with its peak at 3.5
        return 2 + (p * 6 * 1.5) ** 0.5 if p * 6 <= 1.5 else 8 - ((1 - p) * 6 * 4.5) ** 0.5

    for share, got in ((0.1, q.p10_minor), (0.5, q.p50_minor), (0.9, q.p90_minor)):
        assert got / 100 == pytest.approx(1.2 * (48 * quantile(share) + rest), rel=6e-3)
    t = (450 / 1.2 - rest) / 48
    over = (8 - t) ** 2 / (6 * 4.5)
    assert q.over_budget_probability == pytest.approx(over, abs=4 * (over * (1 - over) / 40000) ** 0.5)
    again = price.quote([JOB[0] | {"spread": spread}, *JOB[1:]], {"standard": "20"}, budget="450", draws=40000)
    assert again == q and q.drawn == {"draws": 40000.0, "seed": 1.0}
    other = price.quote([JOB[0] | {"spread": spread}, *JOB[1:]], {"standard": "20"}, budget="450", draws=40000, seed=2)
    assert other.p50_minor != q.p50_minor and other.p50_minor == pytest.approx(q.p50_minor, rel=1e-2)
    for kind, given in (("pert", {"low_h": 2, "high_h": 8}), ("lognormal", {"p90_h": 6})):
        r = price.quote([JOB[0] | {"spread": {"kind": kind, **given}}], {"standard": "20"})
        assert r.p10_minor < r.p50_minor < r.p90_minor
        if kind == "lognormal":
            assert r.p50_minor == pytest.approx(1.2 * 4800 * 3.5, rel=0.02) and r.p90_minor == pytest.approx(1.2 * 4800 * 6, rel=0.03)


BAD_QUOTES = [
    (dict(vat={"standard": "120"}), r'vat "standard": a rate of 120 % is above 100 %.*\(120 in all: 20\)'),
    (dict(vat={"standard": "-5"}), "below 0 %"),
    (dict(vat={"standard": 17.5}), r'give it as text, "17.5"'),
    (dict(vat={"zero": "5"}), "has its own meaning"),
    (dict(vat=None), "no rate of tax"),
    (dict(lines=[{**JOB[0], "time_h": "-2"}]), r'lines\[0\] "work": time_h = -2 h is below 0'),
    (dict(lines=[JOB[1], {**JOB[0], "time_h": "90000"}]), r'lines\[1\] "work": time_h = 90000 h.*minutes'),
    (dict(lines=[JOB[1], {**JOB[0], "tiem_h": "2"}]), r'lines\[1\] "work": no field "tiem_h"; did you mean "time_h"'),
    (dict(lines=[{**JOB[1], "margin_percent": "20"}]), "give one of them"),
    (dict(lines=[{"kind": "materials", "cost": "5", "margin_percent": "100"}]), "stays below 100"),
    (dict(lines=[{"kind": "materials", "cost": "1,250.00"}]), r'lines\[0\]: cost: .*"1250.50"'),
    (dict(lines=[{"kind": "materials", "cost": "5 EUR"}]), r'lines\[0\]: cost: "5 EUR" is in EUR, the rest in GBP'),
    (dict(lines=[{"kind": "materials", "cost": "5", "currency": "EUR"}]), r"lines\[0\]: is in EUR, the quote in GBP"),
    (dict(lines=[{"kind": "materials", "cost": True}]), "not true or false"),
    (dict(lines=[{"kind": "materials", "cost": Decimal("NaN")}]), "NaN"),
    (dict(lines=[{"kind": "materials", "cost": float("nan")}]), "must be a decimal number"),
    (dict(lines=[{"kind": "materials"}]), '"materials" needs cost'),
    (dict(lines=[{"kind": "labor"}]), '"labor" is not one of "labour"'),
    (dict(lines=[{"kind": "travel", "distance_km": "5", "rate_per_mile": "1"}]), "in km or in miles"),
    (dict(lines=[{"kind": "travel", "distance_km": "5"}]), "rate_per_distance is missing"),
    (dict(lines=[{**JOB[0], "spread": {"kind": "triangular", "low_h": 4, "high_h": 8}}]), r'lines\[0\] "work": spread.*they must rise'),
    (dict(lines=[{**JOB[0], "spread": {"kind": "gauss"}}]), "is not one of"),
    (dict(lines=[{"kind": "call_back", "probability": 1.5, "visit_cost": 80}]), "from 0 to 1"),
    (dict(lines=[]), "at least one line"),
    (dict(currency="XYZ"), "number of its minor digits"),
    (dict(currency="pounds"), "three capital letters"),
    (dict(currency={"code": "XTS", "digits": 9}), "0 to 6"),
    (dict(rounding="nearest"), "is not one of"),
    (dict(rounding="total_down", retailer=True), "a retailer may not"),
    (dict(discount={"percent": "110"}), "0 to 100"),
    (dict(discount={"amount": "1000"}), "more than all lines together"),
    (dict(discount={}), "is missing"),
    (dict(draws=10), "from 100"),
    (dict(budget="-1"), "0 or more"),
]


@pytest.mark.parametrize("wrong, said", BAD_QUOTES, ids=[str(i) for i in range(len(BAD_QUOTES))])
def test_quotes_that_cannot_be(wrong, said):
    with pytest.raises(makegood.Error, match=said) as e:
        price.quote(**{"lines": JOB, "vat": {"standard": "20"}, **wrong})
    assert "quote" in str(e.value) or "rounding" in str(e.value)


# ---- options -------------------------------------------------------------------------------------------------------------


def expected_by_enumeration(options, probabilities):
    """Expected cost of each option under each hypothesis, with fractions, by every way through the tree."""
    by_name = {o["name"]: o for o in options}

    def cost(o, h):
        c = F(o["cost_under"][h]) if h in o.get("cost_under", {}) else F(o["cost"])
        s = F(o["cures"].get(h, 0))
        back = o.get("call_back")
        good = c + (F(back["probability"]) * F(back["cost"]) if back else 0)
        bad = c + (cost(by_name[o["if_it_fails"]], h) if "if_it_fails" in o else F(o.get("cost_if_uncured", 0)))
        return s * good + (1 - s) * bad

    return {o["name"]: {h: cost(o, h) for h in probabilities} for o in options}


def test_options_against_fractions():
    rng = random.Random(12)
    for _ in range(400):
        names = [f"h{i}" for i in range(rng.randint(1, 4))]
        cut = sorted(rng.sample(range(1, 1000), len(names) - 1))
        p = dict(zip(names, (F(b - a, 1000) for a, b in zip([0, *cut], [*cut, 1000]))))
        options = []
        for i in range(rng.randint(1, 5)):
            o = {"name": f"o{i}", "cost": str(rng.randint(0, 900)), "cures": {h: format(Decimal(rng.randint(0, 100)).scaleb(-2), "f") for h in names if rng.random() < 0.7}}
            if i and rng.random() < 0.5:
                o["if_it_fails"] = f"o{rng.randrange(i)}"
            elif rng.random() < 0.5:
                o["cost_if_uncured"] = str(rng.randint(0, 3000))
            if rng.random() < 0.3:
                o["call_back"] = {"probability": "0.125", "cost": "80.50"}
            if rng.random() < 0.2:
                o["cost_under"] = {rng.choice(names): "250.25"}
            options.append(o)
        r = price.compare_options(options, {h: float(x) for h, x in p.items()})
        wanted = expected_by_enumeration(options, p)
        means = {o: sum(p[h] * c for h, c in under.items()) for o, under in wanted.items()}
        for row in r.options:
            assert row["expected_cost"] == pytest.approx(float(means[row["name"]]), rel=1e-12, abs=1e-9)
            for h in names:
                assert row["cost_under"][h] == pytest.approx(float(wanted[row["name"]][h]), rel=1e-12, abs=1e-9)
                regret = wanted[row["name"]][h] - min(w[h] for w in wanted.values())
                assert row["regret_under"][h] == pytest.approx(float(regret), rel=1e-9, abs=1e-9)
        assert float(means[r.cheapest]) == pytest.approx(float(min(means.values())), rel=1e-12)
        knowing = min(means.values()) - sum(p[h] * min(w[h] for w in wanted.values()) for h in names)
        assert r.value_of_knowing == pytest.approx(float(knowing), rel=1e-9, abs=1e-9) and r.value_of_knowing >= 0
        greatest = {o: max(w[h] - min(v[h] for v in wanted.values()) for h in names) for o, w in wanted.items()}
        assert float(greatest[r.least_regret]) == pytest.approx(float(min(greatest.values())), rel=1e-12, abs=1e-9)


FLOOR = dict(
    options=[
        {"name": "joint repair", "act": "repair", "cost": "140", "minutes": 90, "cures": ["joint"], "if_it_fails": "replace"},
        {"name": "replace", "act": "replace", "cost": "900", "minutes": 480, "cures": ["joint", "under_tile"]},
    ],
    probabilities={"joint": 0.55, "under_tile": 0.45},
)


def test_two_stages():
    r = price.compare_options(**FLOOR, budget="1000")
    first, second = r.options
    assert first["plan"] == ["joint repair", "replace"] and first["expected_minutes"] == pytest.approx(90 + 0.45 * 480)
    assert (first["worst_cost"], first["p10_cost"], first["p90_cost"]) == (1040, 140, 1040) and first["over_budget_probability"] == pytest.approx(0.45)
    assert first["pays_above_probability"] == pytest.approx(140 / 900) and second["over_budget_probability"] == 0
    (flip,) = [f for f in r.flips if f["hypothesis"] == "joint"]
    assert flip["at"] == pytest.approx(140 / 900) and flip["to"] == "replace"  # 140 + (1 - p) 900 = 900
    assert r.least_worst_case == "replace" and r.least_regret == "joint repair"
    opened = price.compare_options([FLOOR["options"][0] | {"if_it_fails": "cheapest"}, FLOOR["options"][1], {"name": "leave it off", "cost": "0", "cost_if_uncured": "2000"}], FLOOR["probabilities"])
    assert opened.options[0]["plan"] == ["joint repair", "replace"] and opened.options[0]["expected_cost"] == pytest.approx(545)
    spread = {"kind": "triangular", "low": 700, "high": 1500}
    wide = price.compare_options([FLOOR["options"][0], FLOOR["options"][1] | {"spread": spread}], FLOOR["probabilities"], budget="1200", draws=100000)
    mean = (700 + 900 + 1500) / 3
    assert wide.options[0]["expected_cost"] == pytest.approx(140 + 0.45 * mean) and wide.options[0]["worst_cost"] == 1640
    over = 0.45 * (1500 - 1060) ** 2 / (800 * 600)  # 140 beside a replacement above 1060
    assert wide.options[0]["over_budget_probability"] == pytest.approx(over, abs=5e-3)
    assert wide.options[0]["p50_cost"] == 140


def test_danger_is_left_only_isolated_secured_and_labelled():
    p = {"sound": 0.7, "damaged cable": 0.3}
    leave = {"name": "leave it", "act": "decline", "cost": 0}
    r = price.compare_options([leave], p, ["damaged cable"])
    assert r.cheapest is None and r.expected_cost is None and not r.options[0]["permitted"]
    assert "a danger, not isolated, secured, labelled" in r.options[0]["reasons"][0] and "on offer" in r.text[-1] and "give its cost" in r.text[-1]
    assert r.options[0]["danger_left_probability"] == pytest.approx(0.3)
    r = price.compare_options([leave, {"name": "make it dead", "act": "isolate", "cost": "60"}], p, ["damaged cable"])
    assert r.cheapest == "make it dead" and r.options[1]["danger_left_probability"] == 0 and not r.options[0]["permitted"]
    r = price.compare_options([{"name": "repair", "cost": "10", "cures": {"sound": 1, "damaged cable": 0.99}}], p, ["damaged cable"])
    assert r.cheapest is None  # an attempt that may fail needs what follows its failure
    r = price.compare_options([{"name": "repair", "cost": "10", "cures": ["sound", "damaged cable"], "not_proved": ["insulation"]}], p, ["damaged cable"])
    assert r.cheapest is None and "it leaves unproved: insulation" in r.options[0]["reasons"][0]
    assert not any("safe" in t for t in [*r.text, *r.cautions])


def test_properties_of_options():
    rng = random.Random(5)
    for _ in range(100):
        costs = [[rng.randint(0, 500) for _ in range(3)] for _ in range(4)]
        p = dict(zip("abc", rng.choice([(0.2, 0.3, 0.5), (0.1, 0.1, 0.8), (1.0, 0.0, 0.0)])))
        options = [{"name": str(i), "cost_under": dict(zip("abc", map(str, c)))} for i, c in enumerate(costs)]
        r = price.compare_options(options, p)
        fewer = price.compare_options(options[:-1], p)
        assert r.expected_cost <= fewer.expected_cost + 1e-12
        shuffled = price.compare_options(options[::-1], dict(reversed(p.items())))
        assert shuffled.expected_cost == pytest.approx(r.expected_cost) and shuffled.value_of_knowing == pytest.approx(r.value_of_knowing, abs=1e-9)
        for row in r.options:
            dominated = any(all(x <= y for x, y in zip(other, costs[int(row["name"])])) and other != costs[int(row["name"])] for other in costs)
            assert (row["dominated_by"] is not None) == dominated
        assert next(row for row in r.options if row["name"] == r.cheapest)["dominated_by"] is None or p["a"] == 1.0


BAD_OPTIONS = [
    (dict(probabilities={"joint": 0.5, "under_tile": 0.4}), "add up to 0.9"),
    (dict(probabilities={"joint": 1.5, "under_tile": -0.5}), "is not from 0 to 1"),
    (dict(dangerous=["jont"]), 'did you mean "joint"'),
    (dict(options=[{"name": "a", "cost": "1", "cures": ["jont"]}]), r'options\[0\] "a": cures: "jont" is not among the probabilities'),
    (dict(options=[{"name": "a", "cost": 1.5}]), r'options\[0\] "a": cost: 1.5 is a binary fraction'),
    (dict(options=[{"name": "a"}]), r'options\[0\] "a": "cost" is missing'),
    (dict(options=[{"name": "a", "cost": "1", "if_it_fails": "b"}]), "is no option"),
    (dict(options=[{"name": "a", "cost": "1", "if_it_fails": "a"}]), "back to itself"),
    (dict(options=[{"name": "a", "cost": "1"}, {"name": "a", "cost": "1"}]), "stands twice"),
    (dict(options=[{"name": "a", "cost": "1", "cures": {"joint": 1.2}}]), "from 0 to 1"),
    (dict(options=[{"name": "a", "cost": "1 EUR"}]), "is in EUR"),
    (dict(options=[{"name": "a", "cost_under": {"joint": "1"}}]), '"under_tile" is missing'),
    (dict(options=[{"name": "a", "cost": "1", "minutes": -5}]), "minutes"),
    (dict(options=[{"name": "a", "cost": "1", "spread": {"kind": "pert", "low": 2, "high": 9}}]), "must rise"),
    (dict(options=[]), "1 to 64"),
    (dict(negligible_probability=0.5), "0 to 0.001"),
]


@pytest.mark.parametrize("wrong, said", BAD_OPTIONS, ids=[str(i) for i in range(len(BAD_OPTIONS))])
def test_options_that_cannot_be(wrong, said):
    with pytest.raises(makegood.RangeError, match=said) as e:
        price.compare_options(**{**FLOOR, **wrong})
    assert str(e.value).startswith("compare_options: ")


def main() -> int:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    lines = different = 0
    for rule in RULES:
        n, d = invoices_against_decimal(count // len(RULES), rule)
        lines, different = lines + n, different + d
    print(f"{count // len(RULES) * len(RULES)} invoices, {lines} lines, nine rules: {different} differ from decimal")
    rng = np.random.default_rng(1)
    invoice = np.repeat(np.arange(count), rng.integers(1, 6, count))
    columns = [invoice, rng.integers(0, 200_000, invoice.size), rng.integers(0, 3_000_000, invoice.size), rng.choice([2000, 500, 0], invoice.size)]
    start = time.perf_counter()
    price.invoice_totals(*columns, quantity_digits=3, price_digits=1)
    print(f"invoice_totals of {count} invoices, {invoice.size} lines: {time.perf_counter() - start:.3f} s")
    return different != 0


if __name__ == "__main__":
    sys.exit(main())

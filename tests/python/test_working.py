# SPDX-License-Identifier: MIT
"""The printed working is the code, and a reader who works a printed line out gets the printed result (working.py does it)."""

from __future__ import annotations

import math
import random
import re

import pytest
from working import Line, last_place, latex_problems, number

import makegood

FORMULAS = {e["name"]: e for e in makegood.catalogue() if e["kind"] == "formula"}
POINTS = 12
ROOT = "the root of 0 = "


def door(name):
    subject, formula = name.split(".")
    return getattr(getattr(makegood, subject), formula)


def points(name):
    """Seeded points where ordinary jobs lie: readings of three or four digits, and numbers with all their digits; the ends too."""
    entry = FORMULAS[name]
    rng = random.Random(name)
    found = []
    for k in range(40 * POINTS):
        values = []
        for a in entry["arguments"]:
            if "one_of" in a:
                values.append(rng.choice(a["one_of"]))
                continue
            low, high = a["usual"]
            x = low if k % 5 == 0 and rng.random() < 0.3 else high if k % 5 == 1 and rng.random() < 0.3 else rng.uniform(low, high)
            values.append(x if k % 3 == 2 else float(f"{x:.{3 + k % 2}g}"))
        try:
            door(name)(*values)
        except makegood.Error:
            continue
        found.append(values)
        if len(found) == POINTS:
            return found
    raise AssertionError(f"{name}: hardly a point is permitted")


def result_parts(step):
    """Number and unit of a printed result."""
    text, _, unit = step["result"].partition(" ")
    assert unit == step["unit"]
    return text


def brackets(f, low, high):
    a, b = f(low), f(high)
    return a == 0.0 or b == 0.0 or (a < 0.0) != (b < 0.0)


def all_steps():
    """Steps of every formula at its points, and of every check."""
    for name in FORMULAS:
        for values in points(name):
            yield name, values, door(name).worked(*values).steps
    rules = "bs7671:2018+a2,iec60364,england-adf-2021,heating-standards,common-practice,finland-1009-2017,australia-ncc-2019,nhbc-8.4,us-irc-joists,gb-joists"
    for entry in makegood.catalogue():
        if entry["kind"] != "check":
            continue
        rng = random.Random(entry["name"])
        for _ in range(POINTS):
            given = {a["name"]: rng.choice(a["one_of"]) if "one_of" in a else rng.uniform(*a["usual"]) for a in entry["arguments"]}
            if "mats_count" in given:
                given["mats_count"] = rng.randint(1, 4)
            try:
                verdict = door(entry["name"])(**given, rulebook=rules)
            except makegood.Error:
                continue
            yield entry["name"], given, verdict.worked()


ALL_STEPS = list(all_steps())


def test_printed_lines_give_the_printed_result():
    lines = 0
    for name, values, steps in ALL_STEPS:
        for s in steps:
            where = f"{name} {values}: {s['symbol']} = {s['substituted']} = {s['result']}"
            printed = result_parts(s)
            half = 0.5 * last_place(printed, 6) * (1 + 1e-9)
            lines += 1
            if s["substituted"].startswith(ROOT):

                def residual(x, s=s):
                    return Line(s["substituted"].removeprefix(ROOT), {s["symbol"]: x}).value()

                assert brackets(residual, number(printed) - half, number(printed) + half), where
                continue
            line = Line(s["substituted"])
            again = line.value()
            rounding = 8 * 2.0**-52 * line.largest  # of this calculator
            if number(printed) == 0.0:
                assert abs(again) <= rounding, where
            else:
                assert abs(again - number(printed)) <= half + 1e-15 * abs(again), f"{where}, worked out {again!r}"
    assert lines > 1000


def test_named_numbers_are_printed_alike_wherever_they_stand():
    for name, values, steps in ALL_STEPS:
        for k, s in enumerate(steps):
            for later in steps[k + 1 :]:
                used = re.search(rf"(?<![\w′]){re.escape(s['symbol'])}(?![\w′])", later["equation"])
                if used and not later["equation"].startswith(ROOT) and " " not in s["symbol"]:
                    assert result_parts(s) in later["substituted"], f"{name} {values}: {s} in {later}"


def test_no_step_twice_and_each_after_what_it_needs():
    for name, values, steps in ALL_STEPS:
        symbols = [s["symbol"] for s in steps]
        assert len(set(symbols)) == len(symbols), f"{name} {values}: {symbols}"
        said = [(s["equation"], s["unit"], s["source"], s["condition"]) for s in steps]
        assert len(set(said)) == len(said), f"{name} {values}: {said}"
        for k, s in enumerate(steps):
            for later in symbols[k + 1 :]:
                if later != symbols[-1] and " " not in later:
                    assert not re.search(rf"(?<![\w′.]){re.escape(later)}(?![\w′(])", s["equation"]) or later in argument_symbols(name), f"{name}: {later} before {s}"


def argument_symbols(name):
    return [a["symbol"] for a in next(e for e in makegood.catalogue() if e["name"] == name)["arguments"]]


# ---------------------------------------------------------------------------------------------------------- the equation


class Equation:
    """The printed equation of a formula, worked out."""

    def __init__(self, name, values):
        self.result, *lines = (re.sub(r" {4}\(.*\)$", "", line) for line in door(name).equation().split("\n"))
        self.values = {}
        self.lines = {}
        self.roots = {}
        self.hints = {s["symbol"]: s["value"] for s in door(name).worked(*values).steps if s["equation"].startswith(ROOT)}
        self.words = []
        for a, x in zip(FORMULAS[name]["arguments"], values, strict=True):
            if "one_of" in a:
                self.words.append((a["one_of"], a["one_of"].index(x)))
            else:
                self.values[a["symbol"]] = x
        for line in lines:
            if line.startswith("with "):
                continue
            symbol, _, expression = line.partition(" = ")
            if " for " in expression:  # the rows of a table, in the order of its words
                rows = [row.partition(" for ") for row in expression[1:-1].split("; ")]
                self.values[symbol] = Line(rows[self.row_of([label for _, _, label in rows])][0]).value()
            else:
                self.lines[symbol] = expression

    def row_of(self, labels):
        """The row of the word whose table has these labels: as many as it has keys, which most of them speak of."""
        fitting = [(sum(k.replace("_", " ") in label for k, label in zip(keys, labels)), row) for keys, row in self.words if len(keys) == len(labels)]
        return max(fitting)[1]

    def value(self, symbol):
        if symbol not in self.values:
            expression = self.lines[symbol]
            self.values[symbol] = self.root(symbol, expression.removeprefix(ROOT)) if expression.startswith(ROOT) else self.line(expression)
        return self.values[symbol]

    def line(self, expression):
        return Line(expression, self.value, (*self.values, *self.lines)).value()

    def root(self, symbol, residual):
        """By halving, between ends about the root that the working names; which of several roots is meant the equation does not say."""
        hint = self.hints[symbol] if len(self.hints) > 1 else next(iter(self.hints.values()))

        def f(x):
            return Line(residual, lambda s: x if s == symbol else self.value(s), (*self.values, *self.lines)).value()

        reach = 1e-3 * abs(hint) + 1e-9
        low, high = hint - reach, hint + reach
        assert brackets(f, low, high), residual
        rising = f(low) < 0.0
        for _ in range(200):
            middle = 0.5 * (low + high)
            if (f(middle) < 0.0) == rising:
                low = middle
            else:
                high = middle
        return 0.5 * (low + high)


@pytest.mark.parametrize("name", FORMULAS)
def test_printed_equation_is_the_code(name):
    for values in points(name):
        e = Equation(name, values)
        symbol, _, expression = e.result.partition(" = ")
        assert symbol == FORMULAS[name]["symbol"]
        wanted = door(name)(*values)
        if expression.startswith(ROOT):
            got = e.root(symbol, expression.removeprefix(ROOT))
        else:
            got = e.line(expression)
        assert got == pytest.approx(wanted, rel=2e-11, abs=1e-11), f"{values}: {e.result}"


@pytest.mark.parametrize("name", FORMULAS)
def test_equation_of_each_step_is_the_code(name):
    """With every number in full, the equation of a step gives its value."""
    for values in points(name):
        known = Equation(name, values)
        for s in door(name).worked(*values).steps:
            if not s["equation"].startswith(ROOT):
                names = dict(known.values)
                again = Line(s["equation"], lambda n: names[n] if n in names else known.value(n), (*names, *known.lines)).value()
                assert again == pytest.approx(s["value"], rel=2e-11, abs=1e-11), f"{values}: {s}"
            known.values[s["symbol"]] = s["value"]


# ----------------------------------------------------------------------------------------------------------------- LaTeX


def test_the_checker_of_latex_finds_what_is_wrong():
    for sound in (r"a_{1}^{2}", r"\text{50 \% $\rho$ \_ \{}", r"\begin{cases} a & \text{if }b < 1 \\ c & \text{otherwise} \end{cases}", r"\left(a\right)^{2}", r"f'^{2}",
                  r"2\,\mathrm{{}^{\circ}C}"):  # fmt: skip
        assert not latex_problems(sound), sound
    for wrong in ("{a", "a}", r"\left(a", r"\left(\frac{a\right)}{b}", "ρ", "a^2", "x^{2}^{3}", "x_{a}_{b}", r"\begin{cases} a", r"\text{R_0}", r"\text{a & b}", r"\rhoo", "a & b",
                  "5 %", r"\text{\text{a}}", "$a$", r"\frac ab"):  # fmt: skip
        assert latex_problems(wrong), wrong


@pytest.mark.parametrize("name", FORMULAS)
def test_latex_can_be_set(name):
    assert latex_problems(door(name).equation(latex=True)) == []
    for values in points(name):
        w = door(name).worked(*values)
        assert latex_problems(w.latex()) == [], w.latex()
        assert w._repr_latex_() == f"$$\n{w.latex()}\n$$"
        for s in w.steps:
            for field in ("symbol", "equation", "substituted", "result", "condition", "source"):
                latex = s[field + "_latex"]
                assert latex_problems(latex) == [], latex
                assert bool(latex) == bool(s[field]), (field, s)
                if field in ("symbol", "equation", "substituted", "result"):
                    assert s[field + "_latex"] in re.sub(r" \\\\\n&\\quad\{\}", "", w.latex()), (field, s)


def test_text_and_latex_carry_the_same_numbers():
    for name in FORMULAS:
        for values in points(name)[:4]:
            for s in door(name).worked(*values).steps:
                for field in ("substituted", "result"):
                    text = s[field]
                    latex = re.sub(r"\\mathrm\{(?:[^{}]|\{[^{}]*\})*\}", "", s[field + "_latex"])  # units and symbols: m^{2}
                    latex = latex.replace(r"\,", "\u202f").replace("\u202f\\", "\\").replace(r" \cdot 10^", "·10^").replace(r"\sqrt[3]", "")
                    latex = re.sub(r"\u202f(?!\d)", "", latex)
                    plain = re.sub(r"\^\{(-?\d+)\}", lambda m: m.group(1).translate(str.maketrans("0123456789-", "⁰¹²³⁴⁵⁶⁷⁸⁹⁻")), latex)
                    pattern = r"(?<![\w_])\d+(?:\u202f\d{3})*(?:\.\d+)?(?:·10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)?"
                    numbers = re.findall(pattern, re.sub(r"(?<=[\d⁰¹²³⁴⁵⁶⁷⁸⁹]) 1/(?=[Khm(])", " ", text))
                    assert sorted(re.findall(pattern, plain)) == sorted(numbers), (text, s[field + "_latex"])


def test_equation_takes_one_word_and_only_formulas_have_one():
    assert makegood.electrical.voltage_drop.equation() == "ΔU = d · I · L / 1000\nwith ΔU in V, d in mV/(A·m), I in A, L in m"
    assert makegood.electrical.voltage_drop.equation(latex=True).startswith("\\begin{aligned}\n\\Delta U &= \\frac{d \\cdot I \\cdot L}{1000}")
    with pytest.raises(TypeError, match="unexpected argument 'latx'"):
        makegood.electrical.voltage_drop.equation(latx=True)
    with pytest.raises(TypeError, match="only a formula"):
        makegood.electrical.check_voltage_drop.equation()


def test_text_of_a_working():
    w = makegood.heating.element_power.worked(52.9, 230)
    assert str(w) == "P = U² / R\n  = (230 V)² / (52.9 Ω)\n  = 1000 W"
    assert str(makegood.electrical.voltage_drop.worked(44, 16, 22)).endswith("= 15.488 V")


def test_guard_digits_are_no_more_than_it_takes():
    """Few need many: behind a long chain of inner formulas, before an exponent, or where a result lies hard by the middle of two printed ones.

    Most of those are of one formula, heating.vertical_plate_coefficient: five properties of air, each in the next. The exponent of the
    standard atmosphere is a ratio of its constants, printed whole, and air.saturation_pressure_iapws ends in a difference that loses digits."""
    digits = []
    for name, _, steps in ALL_STEPS:
        for s in steps:
            for printed in re.findall(r"(?<![\d.\u202f])\d+(?:\u202f\d{3})*(?:\.\d+)?", s["substituted"] + " = " + s["result"]):
                digits.append((len(printed.replace("\u202f", "").replace(".", "").lstrip("0")), name, s["substituted"]))
    digits = [d for d in digits if d[1] not in ("air.altitude_from_pressure", "air.standard_pressure")]
    assert max(digits)[0] <= 15, max(digits)
    long = [d for d in digits if d[0] > 10 and d[1] not in ("heating.vertical_plate_coefficient", "air.saturation_pressure_iapws")]
    assert len(long) < 0.002 * len(digits), sorted({name: sum(d[1] == name for d in long) for _, name, _ in long}.items())
    assert sum(n > 8 for n, _, _ in digits) < 0.03 * len(digits)

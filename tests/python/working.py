# SPDX-License-Identifier: MIT
"""Works out the printed lines of a working, as a reader with a calculator would: from the text alone, by code of its own.

It reads what a line may hold: numbers with thousands set apart, a minus sign, powers of ten and a unit behind; symbols; + − · /,
superscripts, ^, √, ∛, ln, lg, exp, tanh, sin, cos, abs, min, max; and cases, {a if x < 1; b if x < 2; otherwise c}.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping

_HIGH = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻"
_TO_PLAIN = str.maketrans(_HIGH, "0123456789-")
_NUMBER = re.compile(r"\d+(?:\u202f\d{3})*(?:\.\d+)?(?:·10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)?")
_FUNCTIONS: dict[str, Callable[..., float]] = {
    "√": math.sqrt, "∛": lambda x: math.copysign(abs(x) ** (1 / 3), x), "ln": math.log, "lg": math.log10, "exp": math.exp,
    "tanh": math.tanh, "sin": math.sin, "cos": math.cos, "abs": abs, "min": min, "max": max,
}  # fmt: skip
_COMPARE: dict[str, Callable[[float, float], bool]] = {
    "<": lambda a, b: a < b, "≤": lambda a, b: a <= b, ">": lambda a, b: a > b, "≥": lambda a, b: a >= b,
}  # fmt: skip


def number(text: str) -> float:
    """A printed number, its sign before it."""
    sign = -1.0 if text.startswith("−") else 1.0
    text = text.removeprefix("−").replace("\u202f", "")
    mantissa, ten, power = text.partition("·10")
    if not ten and re.fullmatch(rf"10[{_HIGH}]+", text):
        return sign * float("1e" + text[2:].translate(_TO_PLAIN))
    return sign * float(mantissa + ("e" + power.translate(_TO_PLAIN) if ten else ""))


def last_place(text: str, at_least: int = 1) -> float:
    """Size of one unit in the last printed digit; zeros that were left off count up to `at_least` digits."""
    mantissa, _, _ = text.removeprefix("−").replace("\u202f", "").partition("·10")
    value = abs(number(text))
    digits = max(at_least, len(mantissa.replace(".", "").lstrip("0")))
    return 0.0 if value == 0.0 else 10.0 ** (math.floor(math.log10(value) * (1 + 1e-15)) - digits + 1)


class Line:
    """An expression as printed, to be worked out with the values of the symbols in it."""

    def __init__(self, text: str, values: Mapping[str, float] | Callable[[str], float] | None = None, symbols: tuple[str, ...] = ()) -> None:
        self.text = text
        self.at = 0
        self.largest = 0.0  # of the numbers that were met, for what is zero beside them
        if values is None:
            values = {}
        self._value = values if callable(values) else values.__getitem__
        known = symbols if callable(values) else (*symbols, *values)
        self._symbols = sorted(known, key=len, reverse=True)

    def value(self) -> float:
        x = self._sum()
        if self.at != len(self.text):
            raise ValueError(f"not understood: {self.text[self.at :]!r} in {self.text!r}")
        return x

    # -- the grammar

    def _next(self, token: str) -> bool:
        if self.text.startswith(token, self.at):
            self.at += len(token)
            return True
        return False

    def _need(self, token: str) -> None:
        if not self._next(token):
            raise ValueError(f"{token!r} expected before {self.text[self.at :]!r} in {self.text!r}")

    def _sum(self) -> float:
        x = self._product()
        while True:
            if self._next(" + "):
                x += self._product()
            elif self._next(" − "):
                x -= self._product()
            else:
                return x

    def _product(self) -> float:
        x = self._signed()
        divided = False
        while True:
            if self._next(" · "):
                assert not divided, f"a factor behind a quotient without brackets: {self.text}"
                x *= self._signed()
            elif self._next(" / ") or self._next("/"):
                assert not divided, f"two quotients without brackets: {self.text}"
                divided = True
                x /= self._signed()
            else:
                return x

    def _signed(self) -> float:
        return -self._signed() if self._next("−") else self._power()

    def _power(self) -> float:
        x = self._atom()
        if self._next("^"):
            return float(x ** self._atom())
        high = ""
        while self.at < len(self.text) and self.text[self.at] in _HIGH:
            high += self.text[self.at]
            self.at += 1
        return float(x ** int(high.translate(_TO_PLAIN))) if high else x

    def _atom(self) -> float:
        if self._next("("):
            x = self._sum()
            self._need(")")
            return x
        if self._next("{"):
            return self._cases()
        found = _NUMBER.match(self.text, self.at)
        if found:
            self.at = found.end()
            x = number(found.group())
            self._unit()
            self.largest = max(self.largest, abs(x))
            return x
        for name, f in _FUNCTIONS.items():
            if self._next(name + "("):
                parts = [self._sum()]
                while self._next(", "):
                    parts.append(self._sum())
                self._need(")")
                return float(f(*parts))
        for name in self._symbols:
            if self._next(name):
                x = self._value(name)
                self.largest = max(self.largest, abs(x))
                return x
        if self._next("π"):
            return math.pi
        if self._next("√"):  # √3
            return math.sqrt(self._atom())
        raise ValueError(f"not understood: {self.text[self.at :]!r} in {self.text!r}")

    def _unit(self) -> None:
        """Passes over a unit: what stands behind the space after a number, up to the next space or a bracket that it has not opened."""
        if not self.text.startswith(" ", self.at) or self.text[self.at + 1 : self.at + 2] in tuple("+−·/<≤>≥"):
            return
        end, depth = self.at + 1, 0
        while end < len(self.text) and self.text[end] not in " ;,}":
            depth += (self.text[end] == "(") - (self.text[end] == ")")
            if depth < 0:
                break
            end += 1
        if self.text[self.at + 1 : end] not in ("if", "and", "for", "otherwise"):
            self.at = end

    def _cases(self) -> float:
        """Every branch is read, the first whose condition holds is worked out."""
        taken: float | None = None
        end = self._end_of_cases()
        inside = self.text[self.at : end - 1]
        for part in inside.split("; "):
            if part.startswith("otherwise "):
                expression, holds = part.removeprefix("otherwise "), True
            else:
                expression, _, condition = part.partition(" if ")
                holds = taken is None and all(self._holds(c) for c in condition.split(" and "))
            if taken is None and holds:
                taken = self._inner(expression)
        self.at = end
        if taken is None:
            raise ValueError(f"no case holds: {inside}")
        return taken

    def _end_of_cases(self) -> int:
        end = self.text.index("}", self.at) + 1
        assert "{" not in self.text[self.at : end], "cases inside cases"
        return end

    def _inner(self, text: str) -> float:
        line = Line(text, self._value, tuple(self._symbols))
        x = line.value()
        self.largest = max(self.largest, line.largest)
        return x

    def _holds(self, text: str) -> bool:
        for sign, f in _COMPARE.items():
            left, found, right = text.partition(f" {sign} ")
            if found:
                return f(self._inner(left), self._inner(right))
        raise ValueError(f"no comparison: {text}")


# ------------------------------------------------------------------------------------------------------------------ LaTeX

_COMMANDS = frozenset(
    "alpha beta gamma delta varepsilon zeta eta theta lambda mu nu pi rho sigma tau varphi psi Delta Sigma Phi Omega "
    "displaystyle frac sqrt cdot left right ln lg exp sin cos tan tanh min max leq geq mathrm text circ quad begin end surd operatorname times sim hat".split()
)
_ESCAPED = frozenset("\\%_{}&#$, ")  # a command of one character: a new line, a character as such, a space


def latex_problems(text: str) -> list[str]:
    """What would keep LaTeX with amsmath from setting this mathematics."""
    problems = []
    if not text.isascii():
        problems.append("characters that LaTeX may not have: " + "".join(sorted({c for c in text if ord(c) > 126})))
    stack: list[str] = []

    def close(wanted: str) -> None:
        if not stack or stack[-1] != wanted:
            problems.append(f"{wanted} is open, not {stack[-1] if stack else 'nothing'}")
        else:
            stack.pop()

    at = 0
    in_words = 0  # depth of the braces at which \text{ began
    mathematics = True
    while at < len(text):
        c = text[at]
        if c == "\\":
            found = re.match(r"\\([A-Za-z]+|.)", text[at:], re.DOTALL)
            if found is None:
                problems.append("a backslash at the end")
                break
            word = found.group(1)
            at += found.end()
            if not word[0].isalpha():
                if word not in _ESCAPED:
                    problems.append(f"unknown: \\{word}")
                continue
            if word not in _COMMANDS:
                problems.append(f"unknown: \\{word}")
            if word in ("begin", "end"):
                environment = re.match(r"\{(aligned|cases)\}", text[at:])
                if environment is None:
                    problems.append("unknown environment")
                    continue
                at += environment.end()
                stack.append(environment.group(1)) if word == "begin" else close(environment.group(1))
            elif word in ("left", "right"):
                bracket = text[at : at + 1]
                if bracket not in ("(", ")", "|"):
                    problems.append(f"unknown bracket {bracket!r}")
                at += 1
                stack.append("left") if word == "left" else close("left")
            elif word in ("frac", "mathrm", "text", "operatorname"):
                if text[at : at + 1] != "{":
                    problems.append(f"\\{word} without braces")
                if word == "text":
                    if in_words:
                        problems.append("words inside words")
                    in_words, mathematics = len(stack) + 1, False
            continue
        if c == "{":
            stack.append("{")
        elif c == "}":
            if in_words == len(stack) and not mathematics:
                in_words, mathematics = 0, True
            close("{")
        elif c == "$":
            if not in_words:
                problems.append("$ outside words")
            mathematics = not mathematics
        elif c in "^_" and not mathematics:
            problems.append(f"{c} in words")
        elif c in "^_" and text[at + 1 : at + 2] != "{":
            problems.append(f"{c} without braces")
        elif c == "&" and (not stack or stack[-1] not in ("aligned", "cases")):
            problems.append("& outside lines")
        elif c in "#%~":
            problems.append(f"{c} without a backslash")
        at += 1
    if stack:
        problems.append(f"left open: {stack}")
    for pattern, what in ((r"\^\{[^{}]*\}'?\^", "two exponents"), (r"_\{(?:[^{}]|\{[^{}]*\})*\}_", "two indices"), (r"[\^_]\{\}'?(?!\\circ|\^)", "an empty index")):
        if re.search(pattern, text.replace("{}^{\\circ}", "")):
            problems.append(what)
    return problems

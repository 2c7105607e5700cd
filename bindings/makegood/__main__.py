# SPDX-License-Identifier: MIT
"""python -m makegood: assess a visit, list rulebooks, describe a formula, print the schema of a visit."""

from __future__ import annotations

import argparse
import os
import sys
from typing import Any


def _write_whole(files: dict[str, str]) -> None:
    """Writes every file whole, or none of them."""
    import tempfile

    parts: list[tuple[str, str]] = []
    try:
        for path, text in files.items():
            folder = os.path.dirname(os.path.abspath(path))
            os.makedirs(folder, exist_ok=True)
            if os.path.isdir(path):
                raise IsADirectoryError(21, "is a folder", path)
            handle, part = tempfile.mkstemp(dir=folder, prefix=".", suffix=".part")
            parts.append((part, path))
            with os.fdopen(handle, "w", encoding="utf-8") as file:
                file.write(text)
            mask = os.umask(0)
            os.umask(mask)
            os.chmod(part, 0o666 & ~mask)
        while parts:
            os.replace(*parts[0])
            parts.pop(0)
    finally:
        for part, _ in parts:
            os.unlink(part)


def _json(value: Any) -> str:
    import json

    return json.dumps(value, ensure_ascii=False, indent=2, allow_nan=False) + "\n"


def _assess(options: argparse.Namespace) -> int:
    import makegood

    visit = makegood.load_visit(options.visit)
    assessment = makegood.assess(visit, rules=options.rules).to_dict()
    from ._page import message, report, text

    files = {}
    if options.json:
        files[options.json] = _json(assessment)
    for path, audience in ((options.html, "record"), (options.client, "client"), (options.quote, "quote")):
        if path:
            files[path] = report(assessment, audience)
    _write_whole(files)
    print(message(assessment) if options.message else text(assessment))
    return 0


def _next(options: argparse.Namespace) -> int:
    import makegood
    from makegood.session import inquiries

    said = inquiries(makegood.load_visit(options.visit))
    if options.json:
        _write_whole({options.json: _json(said)})
    if not said:
        print('This visit holds no "inquiries": name the family of what does not work, and what was read. Families: ' + ", ".join(makegood.session.families()))
    for one, s in said.items():
        print(f"{s['name'] or one}: {s['title']}")
        for sentence in s["explain"]:
            print(f"  {sentence}")
        for h in s["hypotheses"][:4]:
            print(f"    {100 * h['probability']:5.1f} %  {h['title']}  (before any reading {100 * h['prior']:.1f} %)")
        for f in s["findings"]:
            print(f"  ! {f['text']}")
        print()
    if said:
        print("Probabilities before readings are judgement. Isolate and prove dead before touching; local codes and licensed practice come first.")
    return 0


def _rulebooks(_: argparse.Namespace) -> int:
    import makegood

    for book in makegood.rulebooks():
        print(f"{book['id']:20} {book['edition']} ({book['jurisdiction']}): {book['title']}")
    return 0


def _describe(options: argparse.Namespace) -> int:
    import makegood

    found = [d for d in makegood.catalogue() if options.name in (d["name"], d["name"].split(".")[1])]
    if not found:
        print(f'makegood: there is no "{options.name}"; the catalogue: ' + ", ".join(d["name"] for d in makegood.catalogue()), file=sys.stderr)
        return 2
    for d in found:
        subject, name = d["name"].split(".")
        print(getattr(getattr(makegood, subject), name).__doc__)
    return 0


def _schema(_: argparse.Namespace) -> int:
    import makegood

    print(_json(makegood.visit_schema()), end="")
    return 0


def main(arguments: list[str] | None = None) -> int:
    import makegood

    parser = argparse.ArgumentParser(
        prog="python -m makegood",
        description="Readings in, defended verdicts out. Not a substitute for a competent person; verdicts are suggestions, "
        "not a certificate or condition report.",
    )
    parser.add_argument("--version", action="version", version=makegood.__version__)
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")
    one = commands.add_parser("assess", help="assess a visit: prints the findings, writes JSON and pages if asked")
    one.add_argument("visit", metavar="VISIT.json")
    one.add_argument("--rules", required=True, metavar="ID[,ID]", help="rulebooks, e.g. bs7671:2018+a2,england-adf-2021")
    one.add_argument("--json", metavar="PATH", help="write the assessment as JSON")
    one.add_argument("--html", metavar="PATH", help="write the page with every reading, limit, source and worked step")
    one.add_argument("--client", metavar="PATH", help="write the page for the client")
    one.add_argument("--quote", metavar="PATH", help="write the page of the price")
    one.add_argument("--message", action="store_true", help="print a short message for a phone instead of the findings")
    one.set_defaults(run=_assess)
    more = commands.add_parser("next", help="what is wrong with the things that do not work, which test is next, or what to do")
    more.add_argument("visit", metavar="VISIT.json")
    more.add_argument("--json", metavar="PATH", help="write everything as JSON")
    more.set_defaults(run=_next)
    commands.add_parser("rulebooks", help="list the rulebooks").set_defaults(run=_rulebooks)
    two = commands.add_parser("describe", help="what a formula or check takes, gives and comes from")
    two.add_argument("name")
    two.set_defaults(run=_describe)
    commands.add_parser("schema", help="JSON Schema of a visit").set_defaults(run=_schema)
    options = parser.parse_args(arguments)
    try:
        return int(options.run(options))
    except makegood.DocumentError as e:
        print(f"{options.visit}: {len(e.problems)} problem{'s' if len(e.problems) > 1 else ''}", file=sys.stderr)
        for path, text in e.problems:
            print(f"  {path}: {text}" if path else f"  {text}", file=sys.stderr)
    except makegood.Error as e:
        print(f"makegood: {e}", file=sys.stderr)
    except OSError as e:
        print(f"makegood: {e.filename or ''}: {e.strerror}", file=sys.stderr)
    return 2


if __name__ == "__main__":
    sys.exit(main())

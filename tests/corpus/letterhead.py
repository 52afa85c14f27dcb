"""How the lines of a letterhead lie on the sheet: one a row, joined into one cell, label beside value, two in a row."""

import random

from tests.corpus.model import SheetPlan


def lay_out(
    rng: random.Random, sheet: SheetPlan, row: int, column: int, title: str, vendor: list[str], terms: list[str]
) -> int:
    """Write the title, the vendor's lines and the terms; returns the next free row."""
    head = [title, *vendor] if rng.random() < 0.12 else [*vendor, title]
    form = rng.choices(("rows", "joined", "pairs", "beside"), (6, 2, 2, 1))[0]
    if form == "joined" and len(terms) > 1:
        terms = [rng.choice((". ", "; ", " – ", ", ")).join(line.rstrip(".") for line in terms) + "."]
    lines = [*head, *terms]
    at = row
    for index, line in enumerate(lines):
        label, colon, value = line.partition(": ")
        if form == "pairs" and colon and index:
            sheet.put(at, column, f"{label}:")
            sheet.put(at, column + 1, value)
        elif form == "beside" and index > 2 and (at - 1, column + 3) not in sheet.cells:
            sheet.put(at - 1, column + 3, line)
            continue
        else:
            sheet.put(at, column, line, bold=index == 0)
        at += 1
    return at

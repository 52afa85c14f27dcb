"""A published price index, as a CSV of dates and values, that carries a market level forward."""

from __future__ import annotations

import csv
from datetime import date
from decimal import Decimal, InvalidOperation
from pathlib import Path
from typing import TYPE_CHECKING

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.levels import Level

Index = tuple[tuple[date, Decimal], ...]

_LONGEST = 20_000
_MONTH = 7  # letters of '2026-10'


def read_index(path: Path) -> Index:
    """The index in a CSV whose first column is a date (2026-10-01, or 2026-10 for a month) and whose second is a value.

    A first row of headings is passed over; the values come out in order of date. Trouble, with the row, for anything
    that can't be read so: a date such as 01/10/2026 is refused, because it is read two ways.
    """
    try:
        with path.open(encoding="utf-8-sig", newline="") as file:
            rows = [row for row in csv.reader(file) if any(cell.strip() for cell in row)]
    except (OSError, UnicodeDecodeError, csv.Error) as problem:
        raise Trouble(
            f"The index {path.name} can't be read ({problem}): save it as a CSV of date and value."
        ) from problem
    if len(rows) > _LONGEST:
        raise Trouble(f"The index {path.name} has {len(rows):,} rows; more than {_LONGEST:,} is no price index.")
    values: dict[date, Decimal] = {}
    for number, row in enumerate(rows, start=1):
        if number == 1 and not row[0].strip()[:1].isdigit():
            continue
        day, value = _row(path.name, number, row)
        if values.setdefault(day, value) != value:
            raise Trouble(f"The index {path.name} has two values for {day.isoformat()} (row {number}): leave one.")
    if len(values) < 2:
        raise Trouble(f"The index {path.name} holds {len(values)} values: it takes two to carry a level forward.")
    return tuple(sorted(values.items()))


def carry_forward(desk: Desk, grade: str, index: Index, name: str) -> Edit:
    """Lets an index carry the grade's latest level forward, instead of any index given for it before.

    Trouble where no level is set, or where the index starts after the level's day.
    """
    from tracker.store import levels as kept

    code = grade.strip().upper()
    with desk.store.reading() as connection:
        level = next((each for each in kept.listing(connection) if each.grade == code), None)
    if level is None:
        raise Trouble(f"No level of {code} is set that an index could carry forward: set it first.")
    check_reach(level, index, name)
    text = f"the level of {code} of {level.on.isoformat()} is carried forward by {name}"
    with writing(desk, text) as pen:
        change = kept.carry_by(pen, level.id, name, index)
    return Edit(text, (change,))


def check_reach(level: Level, index: Index, name: str) -> None:
    """Trouble where the index has no value for the level's day or before."""
    if index[0][0] > level.on:
        raise Trouble(
            f"The index {name} starts on {index[0][0].isoformat()}, after the level's day {level.on.isoformat()}: "
            "give one that starts earlier."
        )


def _row(file: str, number: int, row: list[str]) -> tuple[date, Decimal]:
    day_words, value_words = row[0].strip(), row[1].strip() if len(row) > 1 else ""
    try:
        day = date.fromisoformat(f"{day_words}-01" if len(day_words) == _MONTH else day_words)
    except ValueError:
        raise Trouble(
            f"The index {file}, row {number}: “{day_words}” is no date; write it as 2026-10-01 or 2026-10."
        ) from None
    try:
        value = Decimal(value_words)
    except InvalidOperation:
        value = Decimal(0)
    if not (value.is_finite() and value > 0):
        raise Trouble(f"The index {file}, row {number}: “{value_words}” is no value above 0; write it as 147.8.")
    return day, value

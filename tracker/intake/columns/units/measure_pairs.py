"""Caliper and basis weight in one column: '14 pt / 56' below 'Cal./wt (lb/MSF)'."""

import re
from collections.abc import Iterator, Mapping
from functools import lru_cache
from itertools import product

from tracker.intake.columns.column import Column, Columns
from tracker.intake.grid import Cell
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.roles import Role

_NAMES = 0.5
_PARTS = re.compile(r"\s*[/|;]\s*|\s+[-–]\s+")


def measured_cells(cells: Mapping[int, Cell], columns: Columns, role: Role) -> Iterator[tuple[Cell, Column]]:
    """The row's cells of one measure (`role`: caliper or weight), each with its column; of a column for both measures
    the part of the cell that is this one, below the part of the head that names it."""
    for column in columns.of(Role.CALIPER, Role.WEIGHT):
        cell = cells.get(column.index)
        if cell is None:
            continue
        parts = _parts(cell.text) if isinstance(cell.value, str) else ()
        heads = _heads_of_both(column.said[-1].text) if len(parts) == 2 and column.said else None
        if heads is None:
            if column.role is role:
                yield cell, column
            continue
        for text, (named, words) in zip(parts, heads, strict=True):
            if named is role:
                yield cell._replace(value=text, text=text), Column(column.index, role, column.heads, (header(words),))


def _parts(text: str) -> tuple[str, ...]:
    """'18 pt / 76': two parts with a figure each. The 74 of '18 pt / 74 lb/MSF' says its own unit."""
    parts = tuple(_PARTS.split(text.strip()))
    return parts if len(parts) == 2 and all(any(map(str.isdigit, part)) for part in parts) else ()


@lru_cache(maxsize=1024)
def _heads_of_both(text: str) -> tuple[tuple[Role, str], tuple[Role, str]] | None:
    """The two measures of 'Cal./wt (lb/MSF)' in their order, each with its part of the head; None for other heads."""
    for halves in _halves(text):
        first, second = map(_measure, halves)
        if first is not None and second is not None and first is not second:
            return (first, halves[0]), (second, halves[1])
    return None


def _halves(text: str) -> Iterator[tuple[str, str]]:
    """Each way to part a head in two: 'Gramaje / espesor (g/m2 / micras)' with the unit of each behind its word, and in
    no other way."""
    behind = _UNITS_BEHIND.fullmatch(text.strip())
    units = [pair for pair in _pairs(behind["units"]) if len({*map(_measure, pair)} - {None}) > 1] if behind else []
    if behind is None or not units:
        yield from _pairs(text)
        return
    for (word, other), (unit, another) in product(_pairs(behind["words"]), units):
        yield f"{word} {unit}", f"{other} {another}"


def _pairs(text: str) -> list[tuple[str, str]]:
    return [(text[: match.start()], text[match.end() :]) for match in _PARTS.finditer(text)]


_UNITS_BEHIND = re.compile(r"(?P<words>[^()\[\]]+)[(\[](?P<units>[^()\[\]]+)[)\]]")


def _measure(text: str) -> Role | None:
    said = header(text.strip(" ()"))
    found = [role for role in (Role.CALIPER, Role.WEIGHT) if said.strength(role) >= _NAMES]
    return found[0] if len(found) == 1 else None

"""Sheets whose name calls them old, beside another with the same boards: 'Old 2025' beside 'Current', '2025' beside
'2026'."""

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache

from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.values.changes.list_age import Age, age_of_name
from tracker.intake.values.changes.old_names import CalledOld, called_current, called_old, is_of_a_later_year
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.fold import fold

_Board = tuple[str, ...]
_YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")


def age_of_sheet(sheet: ReadSheet, sheets: Iterable[ReadSheet]) -> Age:
    """What a sheet's name says of its prices, together with the other sheets of the file.

    One that is plainly called old is, where another offers the same boards; one that is called so by a single word,
    where that other is called the current one or is of a later year. Where none does, the name leaves it open.
    """
    age = age_of_name(sheet.name)
    called = called_old(sheet.name)
    if age is Age.SUPERSEDED or called is CalledOld.NOT:
        return age
    boards = set(_boards(sheet))
    alike = [other for other in sheets if other is not sheet and _same_boards(boards, other)]
    told = called is CalledOld.PLAINLY or any(
        called_current(other.name) or is_of_a_later_year(other.name, sheet.name) for other in alike
    )
    if alike and told:
        return Age.SUPERSEDED
    return Age.DOUBTFUL if alike or called is CalledOld.PLAINLY else age


def _same_boards(boards: set[_Board], other: ReadSheet) -> bool:
    """Whether another sheet in force offers at least half of these boards."""
    in_force = age_of_name(other.name) is Age.IN_FORCE and called_old(other.name) is CalledOld.NOT
    return in_force and bool(boards) and 2 * len(boards.intersection(_boards(other))) >= len(boards)


_OF_BOARDS = (Role.PRODUCT, Role.GRADE, Role.CALIPER, Role.WEIGHT)


def _boards(sheet: ReadSheet) -> Iterator[_Board]:
    """What the rows of its tables with offers call their boards, and measure of them."""
    for read in sheet.tables:
        columns = read.columns.of(*_OF_BOARDS) if not read.passed_over else ()
        for row in read.table.rows if columns else ():
            cells = read.table.view.rows[row.index]
            yield tuple(fold(cells[column.index].text.strip()) for column in columns if column.index in cells)


@lru_cache(maxsize=64)
def outdated_sheets(names: tuple[str, ...]) -> frozenset[str]:
    """Sheets called the same but for an earlier year: '2025' beside '2026', 'List 2025' beside 'List 2026'."""
    years: dict[str, dict[str, str]] = {}
    for name in names:
        found = _YEAR.findall(name)
        if len(found) == 1:
            years.setdefault(_YEAR.sub("", name).strip(), {})[found[0]] = name
    return frozenset(name for group in years.values() for year, name in group.items() if year < max(group))

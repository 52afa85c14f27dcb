"""Boards named by what may be a name by chance: an item's code, or what a board is for. What stands over them counts
beside it."""

import re
from collections.abc import Iterable

from tracker.intake.columns.column import Columns
from tracker.intake.offers.boards.measures import Cells
from tracker.intake.offers.notes.said import Said
from tracker.intake.offers.notes.scope import Scope
from tracker.intake.values.boards.grade import GradeReading
from tracker.intake.values.heads.roles import Role
from tracker.intake.words.lists import phrases


def beside_headings(
    named: dict[str, Said[GradeReading]], cells: Cells, columns: Columns, scope: Scope
) -> dict[str, Said[GradeReading]]:
    """The grades that a row names, with another that stands over it where the row may mean none."""
    words = [said.words for said in named.values()]
    if all(map(_ITEM_CODE.fullmatch, words)):
        surely = all(_is_an_items_code(each, cells, columns) for each in words)
        headed = _headed_otherwise(named, scope, "heading")
        return {} if surely and headed else named | headed
    if all(map(_is_said_loosely, words)):
        # 'Folding' below 'SBS board' may be the SBS for folding cartons.
        return named | _headed_otherwise(named, scope, "heading", "title")
    return named


_ITEM_CODE = re.compile(r"([A-Z]{1,4})[-/]?(\d{2,})[A-Z]?")
_SHORT = 2


def _is_an_items_code(words: str, cells: Cells, columns: Columns) -> bool:
    """'UC40' is the fortieth of something below a heading that names another board. 'SBS18', and 'GD250' beside 250
    g/m², may be a grade and its measure, or an item's code for all that: below such a heading it is asked."""
    code = _ITEM_CODE.fullmatch(words)
    if code is None or len(code[1]) > _SHORT:
        return False
    measured = columns.of(Role.CALIPER, Role.WEIGHT)
    return code[2] not in {cells[one.index].text.strip() for one in measured if one.index in cells}


def _is_said_loosely(words: str) -> bool:
    """'Folding', which elsewhere says what a board is for; 'Folding boxboard' is none."""
    return phrases("loose_grade_names").whole(words) is not None


def _headed_otherwise(named: Iterable[str], scope: Scope, *levels: str) -> dict[str, Said[GradeReading]]:
    """What a sub-heading 'Unlined chipboard' over 'UC40' says that board is: the letters of an item's code may be those
    of a grade by chance. Nothing where it agrees."""
    for level in scope.levels:
        over = {grade: said for said in level.grades for grade in said.value.grades} if level.name in levels else {}
        if over:
            return over if over.keys().isdisjoint(named) else {}
    return {}

"""How old the prices of a table on its side are, told over its columns: 'This year | Last year' over 'Board | SBS'.

Of such a row each text holds for its own columns, and hides none of the others.
"""

from collections.abc import Mapping

from tracker.intake.grid import Cell
from tracker.intake.tables.lying.turned import Labels
from tracker.intake.tables.table import Headings, Table, Words
from tracker.intake.tables.view import View
from tracker.intake.values.changes.list_age import Age, age_of_name
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role

_FEWEST = 2


def ages_over(view: View, run: Labels) -> dict[int, Words]:
    """By the first column that each holds for, the texts of the row right above a run of labels, where some but not all
    of them mark prices as earlier ones; none over the labels but a name of them all ('Year')."""
    row = run.rows[0] - 1
    cells = {column: cell for column, cell in view.rows.get(row, {}).items() if column != run.column}
    if len(cells) < _FEWEST or not all(run.column < column <= run.right for column in cells):
        return {}
    old = [_is_old(cell) for cell in cells.values()]
    return {at: Words(view.sheet, row, cell, cell.text.strip()) for at, cell in cells.items()} if _differ(old) else {}


def _differ(old: list[bool]) -> bool:
    return any(old) and not all(old)


def _is_old(cell: Cell) -> bool:
    if not isinstance(cell.value, str):
        return False
    named = header_roles(cell.text)
    previous = bool(named) and named[0].role is Role.PREVIOUS_PRICE and named[0].strength >= 1
    return previous or age_of_name(cell.text) is Age.SUPERSEDED


def with_ages(table: Table, ages: Mapping[int, Words]) -> None:
    """Gives each board, a column of the sheet, the text over it as its heading; one over blanks holds for them too."""
    headings = {at: Headings((words,)) for at, words in ages.items()}
    for row in table.rows:
        start = max((at for at in headings if at <= row.index), default=None)
        if start is not None:
            row.headings = headings[start]

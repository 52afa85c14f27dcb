"""Notes that correct or call off a line by its code or name: 'K103: read 1,052', 'Item K104 is withdrawn'."""

import re
from collections.abc import Iterable, Iterator, Mapping

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.changes.line_corrections import corrects
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.words.fold import fold

_NAMES = (Role.ITEM, Role.PRODUCT)
_SHORTEST = 3
"""A shorter code may be any word or figure of a note; lines that are counted are told by their numbers."""


def notes_of_codes(notes: Iterable[Words], table: Table, columns: Columns) -> Mapping[str, Words]:
    """The notes by the codes, folded, of this table's lines that they correct or call off."""
    named = columns.of(*_NAMES)
    told = [words for words in notes if any(map(corrects, clauses(words.text)))] if named else []
    if not told or table.view.passing:
        return {}
    rows = [table.view.rows[row.index] for row in table.rows]
    codes = {code for cells in rows for column in named if (code := _code(cells.get(column.index)))}
    return {code: words for words in reversed(told) for code in codes if _corrects(words.text, code)}


def notes_of_row(cells: Mapping[int, Cell], columns: Columns, coded: Mapping[str, Words]) -> Iterator[Words]:
    """The notes on the line that these cells are of."""
    if coded:
        codes = {_code(cells.get(column.index)) for column in columns.of(*_NAMES)}
        yield from (coded[code] for code in codes if code in coded)


def _code(cell: Cell | None) -> str:
    """What a line is called by and no board is; '' for none."""
    text = fold(cell.text.strip()) if cell is not None else ""
    return text if len(text) >= _SHORTEST and not names_grade(text) else ""


def _corrects(note: str, code: str) -> bool:
    """Whether one part of a note names the code and says what is wrong with it. The 1003 of 'K7: 1003, not 1030' is no
    code: one of figures alone comes first."""
    ahead = r"^\D*" if code.isdigit() else r"(?<![\w-])"
    named = re.compile(rf"{ahead}{re.escape(code)}(?![\w-]|[.,]\d)")
    return any(named.search(said) and corrects(named.sub(" ", said)) for said in map(fold, clauses(note)))

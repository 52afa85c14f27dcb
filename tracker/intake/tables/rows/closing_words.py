"""Words below the rows that they are about: 'Above prices in US dollars' between two lots of boards."""

from collections.abc import Iterable

from tracker.intake.grid import Cell
from tracker.intake.tables.table import BodyRow, Headings, Words
from tracker.intake.words.lists import phrases


def is_closing(cells: Iterable[Cell]) -> bool:
    """'Obige Preise ab Werk'; '10,000 lb and above' and 'see above' point at no prices."""
    return any(phrases("prices_above").find(cell.text) for cell in cells if isinstance(cell.value, str))


def close(rows: list[BodyRow], since: int, said: tuple[Words, ...]) -> int:
    """Puts the words over the rows since the last such words, where what is said of rows is looked for, nearer than the
    sub-headings that these rows have. Returns where the next lot begins."""
    over: dict[int, Headings] = {}
    for row in rows[since:]:
        row.headings = over.setdefault(id(row.headings), Headings(said, row.headings))
    return len(rows)

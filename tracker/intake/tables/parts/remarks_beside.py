"""Remarks on boards in the last column beside a table: 'Lead time 4 weeks' beside one board and 'Lead time 3 weeks'
beside the next are each said of that board.

Lines that each tell something else look like remarks and like terms of all boards. A box of several of them is one of
terms (`terms_boxes`); what one or two say beside some board holds for that one either way, and is left open for the
others.
"""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.parts.terms_told import terms_told, told_of_board
from tracker.intake.tables.table import Table, Words
from tracker.intake.tables.view import View, part_of, without_cells
from tracker.intake.tables.words import row_words
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.notes.statements import SaysWeightBasis, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import joined, phrases

_FEWEST_FIGURES = 2
"""Of a board in its row: its size or weight, and its price."""
_LONGEST = 60
_MOST = 200
_PAIR = 2
_AROUND = " *~-–—:.!•·=_"
_OF_HEADS = (SaysBasis, SaysCurrency, SaysWeightBasis, LegendEntry)
"""What is said of columns, and of every row in them."""
_OF_ALL = ("all_of_them", "price_words", "price_lists", "list_names", "these_prices")


@dataclass(frozen=True, slots=True)
class Remarks:
    """What stands beside some rows. `certain`: it is theirs alone; else it may be said of all boards."""

    of_rows: Mapping[int, Words]
    certain: bool


def with_remarks_apart(view: View) -> tuple[View, Remarks | None]:
    """The sheet without such a column, and what it says; the sheet as it is where it has none."""
    column = 0 if view.passing else max((max(cells) for cells in view.rows.values()), default=0)
    rows = [row for row in view.order if column in view.rows[row]] if column else []
    if not rows or len(rows) > _MOST:
        return view, None
    headed = phrases("terms_heads").whole(view.rows[rows[0]][column].text.strip(_AROUND)) is not None
    pair = part_of(view, rows, range(column - 1, column + 1))
    part = pair if all(is_pair(pair, row) for row in rows) else part_of(view, rows, range(column, column + 1))
    lines = rows[1:] if headed else rows
    remarks = _remarks(view, part, lines, headed=headed) if lines else None
    taken = {(row, at) for row, cells in part.rows.items() for at in cells}
    return (view, None) if remarks is None else (without_cells(view, taken), remarks)


def is_pair(part: View, row: int) -> bool:
    """'Freight | $42/ST': a label and what stands beside it, and nothing else."""
    return len(part.rows[row]) == _PAIR and len(row_words(part, row)) == 1


def said_of_boards_beside(tables: Sequence[Table], remarks: Remarks) -> list[Words]:
    """Puts each remark to its row, and what may be said of all to the other rows as well, where it is open; gives what
    stands beside no row of a table."""
    left = dict(remarks.of_rows)
    for table in tables:
        if not any(row.index in remarks.of_rows for row in table.rows):
            continue
        for row in table.rows:
            own = remarks.of_rows.get(row.index)
            left.pop(row.index, None)
            others = () if remarks.certain else (one for one in remarks.of_rows.values() if one is not own)
            said = (*((own,) if own else ()), *(replace(one, unsure=True) for one in others))
            row.lines = (*row.lines, *said)
    return [replace(words, unsure=True) for words in left.values()]


def _remarks(view: View, part: View, rows: Sequence[int], *, headed: bool) -> Remarks | None:
    """The remarks in these rows: each beside a board, none said of all prices, and terms among them. A key of the heads
    ('P.U.: € / 1000 kg') and a list of terms, each behind its label, are none."""
    column = min(min(cells) for cells in part.rows.values())
    of_rows = {row: words for row in rows for words in row_words(part, row)}
    texts = [words.text for words in of_rows.values()]
    if not all(stands_by_a_board(view, row, column) for row in rows) or any(map(_is_of_all, texts)):
        return None
    # '30 days' by a board is its lead time, and under 'Terms' when to pay.
    told = [terms_told(text) if headed else told_of_board(text) for text in texts]
    if 2 * sum(map(bool, told)) < len(texts) or (_are_labelled(texts) and not headed):
        return None
    parted = not any(column - 1 in view.rows[row] for row in rows)
    # Two boards have each their own.
    alike = max(Counter(matter for one in told for matter in one).values()) > 1
    if alike and (headed or not parted):
        # A column of the table like others.
        return None
    return Remarks(of_rows, certain=alike or not (parted or headed or len(rows) > 1))


def _is_of_all(text: str) -> bool:
    if len(text) > _LONGEST or joined(*_OF_ALL).find(text) or company_name(text):
        return True
    if names_grade(text):
        # 'CUK 6 weeks' tells by itself of which board it is.
        return True
    return any(isinstance(one, _OF_HEADS) for one in statements(text))


def _are_labelled(texts: list[str]) -> bool:
    """'Delivery: ex works' over 'Lead time: 4 weeks': each term once, behind a label of its own."""
    labels = [text.partition(":")[0].strip().casefold() for text in texts if ":" in text]
    return len(texts) > 1 and len(labels) == len(texts) == len(set(labels))


def stands_by_a_board(view: View, row: int, column: int) -> bool:
    """Whether two figures of a board stand left of a column, in one row."""
    left = [cell for at, cell in view.rows[row].items() if at < column]
    # '18 pt' measures it, too.
    told = sum(is_figure(cell) or any(map(str.isdigit, cell.text)) for cell in left)
    return told >= _FEWEST_FIGURES and any(map(is_figure, left))

"""Boxes of terms to the right of a table: 'Unsere Konditionen' over 'Lieferung frei Haus' and 'Gültig bis 15. Oktober',
line by line beside the boards, of which each line is said of all.

A column 'Terms' of the boards' own and remarks on each of them look alike. A box has an empty column before it or a
head, and tells each term once.
"""

from collections import Counter
from collections.abc import Sequence
from itertools import pairwise

from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.parts.remarks_beside import is_pair, stands_by_a_board
from tracker.intake.tables.parts.terms_told import matters_told, terms_told
from tracker.intake.tables.table import Table, Words
from tracker.intake.tables.view import View, part_of, without_cells
from tracker.intake.tables.words import words_of
from tracker.intake.words.lists import phrases

_FEWEST, _MOST = 2, 16
"""Lines; a longer list beside the boards has one for each of them."""
_WIDEST_GAP = 2
_AROUND = " *~-–—:.!•·=_"


def with_terms_apart(view: View) -> tuple[View, list[Words]]:
    """The sheet without such a box, and what its lines say of all boards; the sheet as it is where it has none."""
    if view.passing:
        return view, []
    reaching = [max(cells) for cells in view.rows.values()]
    last = max(reaching, default=0)
    for column in range(_FEWEST, last + 1):
        if sum(end >= column for end in reaching) > _MOST:
            continue
        box = part_of(view, view.order, range(column, last + 1))
        if 0 < len(box.order) <= _MOST and (_is_box(view, box, column) or _are_labelled(view, box, column)):
            taken = {(row, index) for row, cells in box.rows.items() for index in cells}
            return without_cells(view, taken), words_of(box, box.order)
    return view, []


def said_of_tables_beside(tables: Sequence[Table], box: Sequence[Words]) -> list[Words]:
    """What a box says of the whole sheet, as one at the top does. One that begins below the first tables is about those
    that it stands beside, whose notes its lines become."""
    first, last = (edge(words.row for words in box) if box else -1 for edge in (min, max))
    beside = [table for table in tables if table.first_row <= last and first <= table.last_row]
    if not beside or first <= min(table.last_row for table in tables):
        return list(box)
    for table in beside:
        table.notes += tuple(box)
    return []


def _is_box(view: View, box: View, column: int) -> bool:
    rows = box.order
    if len(rows) < _FEWEST or any(lower - upper > _WIDEST_GAP for upper, lower in pairwise(rows)):
        return False
    figures = any(is_figure(cell) for cells in box.rows.values() for cell in cells.values())
    boards = [row for row in view.order if stands_by_a_board(view, row, column)]
    beside = [row for row in rows if row in boards]
    if figures or len(beside) < _FEWEST or beside[0] + 1 != beside[1]:
        return False
    head, *lines = words_of(box, rows)
    title = head.text.strip(_AROUND)
    named = phrases("terms_heads").whole(title)
    headed = named is not None
    if not headed and rows[0] not in boards and phrases("headers").whole(title) is not None:
        # 'Bemerkung' heads a column; 'Delivered' beside the first board does not.
        return False
    parted = not any(column - 1 in view.rows[row] for row in rows)
    lines = lines if headed else [head, *lines]
    beyond = any(words.row not in boards for words in lines)
    if headed and parted:
        # 'Please note' over two remarks may head the column of those two boards.
        fewest = _FEWEST if named == "any" or beyond else _FEWEST + 1
        return len(lines) >= fewest and _tell_different_terms(lines, _FEWEST, repeated=beyond, headed=True)
    each = len(lines) == len(boards) and not parted
    if not (parted or headed) or (not beyond and (each or _leave_some_out(lines, boards))):
        # One right beside each board, or beside some here and there, may be its own remark.
        return False
    return _tell_different_terms(lines, _FEWEST if beyond else _FEWEST + 1)


def _are_labelled(view: View, box: View, column: int) -> bool:
    """'Freight | $42/ST' over 'Lead time | 4 weeks': terms behind labels, or one in line with the heads."""
    rows = box.order
    if column - 1 in view.rows[rows[0]] or not all(is_pair(box, row) for row in rows):
        return False
    boards = [row for row in view.order if stands_by_a_board(view, row, column)]
    above = bool(boards) and rows[0] + 1 == boards[0]
    if not (above or rows[0] in boards) or rows[-1] - rows[0] >= len(rows):
        return False
    return len(rows) >= _FEWEST - above and _tell_different_terms(words_of(box, rows), len(rows))


def _leave_some_out(lines: Sequence[Words], boards: Sequence[int]) -> bool:
    """Whether boards between the lines have none."""
    rows = [words.row for words in lines]
    return any(rows[0] < board < rows[-1] and board not in rows for board in boards)


def _tell_different_terms(
    lines: Sequence[Words], fewest: int, *, repeated: bool = False, headed: bool = False
) -> bool:  # fmt: skip
    """Freight, validity, a smallest order: so many lines tell one each, none what another tells. Remarks on boards tell
    the same of several of them. `repeated`: there are more lines than boards, and none can be a board's. '4
    weeks' by itself is a board's, but not under a head or beside 'Net 30', which is said of the whole list."""
    paid = [_of_payment(words.text) for words in lines]
    told = [terms_told(words.text) or payment for words, payment in zip(lines, paid, strict=True)]
    if headed or any(paid):
        told = [one or matters_told(words.text) for words, one in zip(lines, told, strict=True)]
    terms = Counter(term for one in told for term in one)
    enough = len(terms) >= fewest and sum(map(bool, told)) >= fewest
    return enough and (repeated or max(terms.values()) == 1)


def _of_payment(text: str) -> frozenset[tuple[type[object], str]]:
    """'30 Tage netto' and 'zzgl. MwSt.' are said of a whole list, and of no board of it."""
    taxed = any(match.value == "named" for match in phrases("tax").find(text))
    return frozenset({(Words, "tax" if taxed else "payment")} if taxed or phrases("pays").find(text) else ())

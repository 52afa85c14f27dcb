"""Lines of words that go on with the position above them: 'Lieferzeit abweichend 6 Wochen', 'Format 72 x 102 cm'.

Such a line stands where a sub-heading for the next rows would. It belongs to the row above where every row has such
lines right below and none stands above the first; in a list whose rows are numbered and such lines are not, or whose
lines tell terms under figures, also where only some rows have any, the last one among them. Where the last has none it
is not told, and a lead time that such a line names is left open for the rows on both sides of it.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.parts.terms_told import matters_told
from tracker.intake.tables.rows.body import Body, body_of
from tracker.intake.tables.rows.lines_between import describes
from tracker.intake.tables.table import Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of
from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.figures.sheetsize import find_sheet_sizes
from tracker.intake.values.heads.roles import MEASURES
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.lead_remarked import lead_remarked
from tracker.intake.words.lists import phrases

_FEWEST = 2
_Lines = dict[int, tuple[int, ...]]
"""The lines below each row, by the rows' numbers."""


def with_lines_below(view: View, rows: Sequence[int], body: Body, valued: frozenset[int]) -> Body:
    """The body with each row's own lines at the row; the body itself where they are none."""
    if view.passing or len(body.rows) < _FEWEST:
        return body
    priced = [row.index for row in body.rows]
    boards = _without_totals(view, priced)
    others = set(rows) - set(priced)
    if len(boards) < _FEWEST:
        return body
    below = {board: tuple(_below(view, others, board)) for board in boards}
    if not any(below.values()) or not _may_go_on(view, others, boards, below):
        return body
    told = all(below.values()) or _numbered(view, boards, below) or _indented(view, below)
    if below[boards[-1]] and told:
        return _with_lines(view, rows, body, valued, below)
    return _with_doubts(view, body, below) if _numbered(view, boards, below) else body


def _without_totals(view: View, priced: Sequence[int]) -> list[int]:
    """The rows that begin where the first does; sums behind the last begin further right."""
    edge = min(view.rows[priced[0]])
    boards = [row for row in priced if edge in view.rows[row]]
    return boards if boards == list(priced[: len(boards)]) else []


def _with_lines(view: View, rows: Sequence[int], body: Body, valued: frozenset[int], below: _Lines) -> Body:
    gone = {line for lines in below.values() for line in lines}
    left = body_of(view, [row for row in rows if row not in gone], valued)
    if [row.index for row in left.rows] != [row.index for row in body.rows]:
        return body
    left.rows = [
        replace(row, lines=tuple(words_of(view, below.get(row.index, ()))), after_gap=before.after_gap)
        for row, before in zip(left.rows, body.rows, strict=True)
    ]
    return left


def _with_doubts(view: View, body: Body, below: _Lines) -> Body:
    """Lines with a lead time below some numbered rows, and none below the last: the row above and those below may each
    be the ones that are meant."""
    said: tuple[Words, ...] = ()
    doubted = []
    for row in body.rows:
        under = said if said and row.headings is not None and said[0] in row.headings.own else ()
        timed = [line for line in below.get(row.index, ()) if lead_remarked(_text(view, line)) is not None]
        said = tuple(words_of(view, timed)) or under
        about = tuple(dict.fromkeys((*under, *said)))
        doubted.append(replace(row, lines=about, unsure=True) if about else row)
    return replace(body, rows=doubted)


def _below(view: View, others: set[int], board: int) -> Iterator[int]:
    """The lines right below a row, up to the first that does not stand under its words, or speaks of the whole list."""
    line = board + 1
    while line in others and _stands_under(view, board, line) and not _of_the_list(_text(view, line)):
        yield line
        line += 1


def _stands_under(view: View, board: int, line: int) -> bool:
    """Words alone, in columns where the row has words as well."""
    own, cells = view.rows[board], view.rows[line]
    return all(
        isinstance(cell.value, str)
        and any(map(str.isalpha, cell.text))
        and column in own
        and (isinstance(own[column].value, str) or _tells_terms_under(column, cells, own))
        for column, cell in cells.items()
    )


def _tells_terms_under(column: int, cells: Mapping[int, Cell], own: Mapping[int, Cell]) -> bool:
    """'Lieferzeit 4 Wochen' alone under a board's weight or price."""
    return len(cells) == 1 and column > min(own) and bool(matters_told(cells[column].text))


def _of_the_list(text: str) -> bool:
    """'All prices ex works' and 'Payment 30 days' right below the last row are no lines of its own."""
    if any(match.value == "any" for match in phrases("not_lead").find(text)):
        return True
    return bool(phrases("all_of_them").find(text) or phrases("price_words").find(text))


def _text(view: View, line: int) -> str:
    return "\n".join(cell.text for _, cell in sorted(view.rows[line].items()))


def _may_go_on(view: View, others: set[int], boards: Sequence[int], below: _Lines) -> bool:
    """Whether the lines may be the rows' own: none stands above the first, and none names a board."""
    first = boards[0] - 1
    if first in others and _stands_under(view, boards[0], first):
        return False
    texts = [_text(view, line) for lines in below.values() for line in lines]
    return not any(map(_names_board, texts)) and any(map(_says_terms, texts))


def _names_board(text: str) -> bool:
    """'GD2 350 g/m²', and 'Sheets' over a group of them; 'en stock' and 'FOB mill' are terms, and
    'bobine 720 mm' a row's own."""
    if describes(text):
        return True
    return names_only_board(text) and not any(map(str.isdigit, text)) and not matters_told(text)


def _says_terms(text: str) -> bool:
    """Something that may be one row's own; what says nothing known may as well stay what it is taken for."""
    return bool(statements(text) or find_sheet_sizes(text)) or lead_remarked(text) is not None


def _indented(view: View, below: _Lines) -> bool:
    """Terms alone under a figure of some boards, in one column: 'ab Werk' there heads no rows."""
    columns = set[int]()
    for board, lines in below.items():
        own = view.rows[board]
        for cells in map(view.rows.__getitem__, lines):
            if not all(_tells_terms_under(column, cells, own) for column in cells):
                return False
            columns |= {column for column in cells if not isinstance(own[column].value, str)} or {-1}
    # Below the last board alone they are notes on all.
    return len(columns) == 1 and -1 not in columns and sum(map(bool, below.values())) >= _FEWEST


def _numbered(view: View, boards: Sequence[int], below: _Lines) -> bool:
    """Each row begins with a number of its own, 'Pos. 10', under which no line stands: no '.020' and no 250 under
    'g/m²'."""
    first = [view.rows[board][min(view.rows[board])] for board in boards]
    numbers = {number for cell in first if _NUMBER.fullmatch(number := cell.text.strip().rstrip(".)"))}
    unique = len({cell.column for cell in first}) == 1 and len(numbers) == len(boards)
    under = any(first[0].column in view.rows[line] for lines in below.values() for line in lines)
    return unique and not under and not holds_measures(view, first[0])


_NUMBER = re.compile(r"\d+(?:\.\d+)*")


def holds_measures(view: View, first: Cell) -> bool:
    """Whether the words right above a figure say that its column holds calipers or basis weights."""
    above = [row for row in view.order if row < first.row and first.column in view.rows[row]]
    head = head_of(view.rows[above[-1]][first.column]) if above else None
    return head is not None and head.role in MEASURES and not head.across

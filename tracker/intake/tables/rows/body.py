"""The rows below a header: which hold figures, which are sub-headings for the rows after them, which are notes.

A row of words alone is a sub-heading when rows with figures follow it and a note when none do. A board whose price is
left blank is neither: what it says holds for no other row.
"""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of_words, looks_priced
from tracker.intake.tables.rows.charge_lines import (
    charges_among,
    names_charge,
    notes_before_charges,
    rows_added,
    states_charge,
)
from tracker.intake.tables.rows.closing_words import Sides, close, put_over, sides_of, tells_sides
from tracker.intake.tables.rows.group_levels import GroupLevels, Reach
from tracker.intake.tables.rows.terms_below import leads_to_prices, tells_terms_of_prices
from tracker.intake.tables.rows.terms_between import TermsBetween, TermsOfGroups, closing_kinds, sides_told
from tracker.intake.tables.table import BodyRow, Headings, Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.firms.company import labelled_company
from tracker.intake.values.freight.additions_below import leads_to_additions
from tracker.intake.values.heads.roles import MEASURES
from tracker.intake.values.prices.money import price_unit


@dataclass
class Body:
    """Rows with figures, each with its sub-headings; footnotes among them, and the rows of words that follow the last
    of them."""

    rows: list[BodyRow] = field(default_factory=list)
    notes: list[int] = field(default_factory=list)
    after: list[int] = field(default_factory=list)

    @property
    def own_lines(self) -> set[int]:
        """The rows of words that go on with a row of figures."""
        return {words.row for row in self.rows if not row.unsure for words in row.lines}


def body_of(view: View, rows: Iterable[int], valued: frozenset[int]) -> Body:
    """Rows of one table below its header. `valued`: the columns where prices stand."""
    body = Body()
    pending: list[int] = []
    headings: Headings | None = None
    last: int | None = None
    lot = 0
    groups, terms = GroupLevels(), TermsOfGroups()
    rows = tuple(rows)
    priced = frozenset(row for row in rows if _is_priced(view, row, valued))
    boards = priced | _without_price(view, [row for row in rows if row not in priced], priced, valued)
    end = _last_board(view, rows, boards)
    boards |= charges_among(view, [row for row in rows if row not in boards], boards, end)
    between = closing_kinds(words_of(view, [row for row in rows if row > end]), end)
    for row in rows:
        if row in view.going_on and row - 1 == last and row not in boards:
            body.rows[-1].lines += tuple(words_of(view, [row]))
            continue
        if row not in boards or _goes_on_with_notes(view, row, pending, last):
            pending.append(row)
            continue
        notes = [other for other in pending if last is not None and _is_footnote(view, other, headings)]
        body.notes += notes
        body.notes += notes_before_charges(view, [other for other in pending if end < other and other not in notes])
        told, of_group = _sides(view, [other for other in pending if other not in notes], last, between)
        if told.above and of_group:
            _close_groups(body.rows, terms, told.above, groups.ended_by(told.below))
        elif told.above:
            lot = close(body.rows, lot, told.above)
        if told.below:
            headings = Headings(told.below, headings)
            groups.begins(told.below, len(body.rows))
        pending = []
        gap = last is not None and any(other not in view.joined_rows for other in range(last + 1, row))
        body.rows.append(BodyRow(row, headings, gap))
        last = row
    closing = [other for other in pending if lot and _is_about_rows_above(view, other)]
    if closing:
        close(body.rows, lot, tuple(words_of(view, closing)))
    left = [other for other in pending if other not in closing]
    said = words_of(view, left)
    own = said[: between.below_the_last(said, last)] if last is not None else []
    if own:
        _close_groups(body.rows, terms, tuple(own), groups.last)
    body.after = [other for other in left if other not in {words.row for words in own}]
    return body


def _sides(view: View, rows: Sequence[int], last: int | None, between: TermsBetween) -> tuple[Sides, bool]:
    """What rows of words say of the rows above them and of those below; and whether only of the last group above."""
    said = tuple(words_of(view, rows))
    if last is None:
        between.above_the_first(said)
        return Sides((), said), False
    if any(tells_sides(view.rows[row].values()) for row in rows):
        return sides_told(said), False
    return between.sides(said, last), True


def _close_groups(rows: list[BodyRow], terms: TermsOfGroups, said: tuple[Words, ...], reach: Reach) -> None:
    for meant, words in terms.shared(said, reach, len(rows)):
        put_over(rows[meant.start : meant.stop], words)


def _is_about_rows_above(view: View, row: int) -> bool:
    """A line with nothing for what follows it."""
    said = tuple(words_of(view, [row]))
    told = sides_of(said) if tells_sides(view.rows[row].values()) else Sides((), said)
    return bool(told.above) and not told.below


def _last_board(view: View, rows: Sequence[int], boards: Collection[int]) -> int:
    """The last row of figures that is no charge; -1 where there is none."""
    added = rows_added(view, rows)
    own = (row for row in reversed(rows) if row in boards and row not in added)
    return next((row for row in own if not names_charge(view.rows[row])), -1)


_FOOTNOTE = re.compile(r"\s*(?:[*†‡]+\)?|\*?\)|[¹²³⁴])\s*\S")


def _is_footnote(view: View, row: int, headings: Headings | None) -> bool:
    """'*) SEK per 1 000 m²' between a list and an index below it: said of what has the sign, and no sub-heading."""
    first, *others = view.rows[row].values()
    if others or _FOOTNOTE.match(first.text) is None:
        return False
    heads = leads_to_additions(first.text) or _is_set_off(first.text) or _heads_like_others(first.text, headings)
    return not heads


def _is_set_off(text: str) -> bool:
    """'** CLASS 20 CUK C1S **', '* CUK *': a sub-heading between stars."""
    text = text.strip()
    return bool(text.strip("* ")) and text[0] == "*" == text[-1]


def _heads_like_others(text: str, headings: Headings | None) -> bool:
    """'* CUK' where '* SBS' heads the rows above: the sign is how this list sets its grades off."""
    above = headings.own if headings is not None else ()
    signed = any(_FOOTNOTE.match(words.text) and find_grade(words.text) is not None for words in above)
    return signed and find_grade(text) is not None


_NUMBERED = re.compile(r"\s*\(?\d{1,2}[.)]\s*[^\W\d]")


def _goes_on_with_notes(view: View, row: int, pending: Sequence[int], last: int | None) -> bool:
    """'3. Last year's volume: | 18450' behind '1. Minimum order 8,000 lb', set apart from the boards by a blank row."""
    if last is None or not pending or pending[0] == last + 1:
        return False
    return all(_NUMBERED.match(next(iter(view.rows[each].values())).text) for each in (pending[0], row))


def _is_priced(view: View, row: int, valued: frozenset[int]) -> bool:
    """A row with something in a column of prices, or below such a row with terms of each."""
    if _has_figures(view.rows[row], valued) or _under_a_price(view, row, valued):
        return True
    follows = row - 1 in view.rows or not leads_to_prices(view, row, valued)
    return follows and tells_terms_of_prices(view.rows[row], valued)


def _has_figures(cells: dict[int, Cell], valued: frozenset[int]) -> bool:
    """Something stands in a price column, beside or instead of what describes the board."""
    if len(cells) == 1 and (_is_a_sentence(next(iter(cells.values()))) or states_charge(cells)):
        return False
    priced = [cells[column] for column in valued if column in cells and not cells[column].text.rstrip().endswith(":")]
    if any(looks_priced(cell) for cell in priced):
        return True
    # 'call' or a dash beside a board counts; a heading that happens to stand in a price column is alone.
    beside = bool(priced) and len(cells) > len(priced)
    return beside and not (_heads_with_unit(cells, priced) or _tells_who_quotes(cells))


def _is_a_sentence(cell: Cell) -> bool:
    """'We credit $3.50 for each good core sent back' below the boards: money in many words, and no board in them."""
    if not isinstance(cell.value, str) or sum(map(str.isalpha, cell.text.split())) < _FEWEST_WORDS:
        return False
    return find_grade(cell.text) is None and not names_measure(cell.text)


_FEWEST_WORDS = 6


def _tells_who_quotes(cells: dict[int, Cell]) -> bool:
    """'Vendor: | Ferrowick Board | | by phone' in the column of prices: a line over the next firm's prices."""
    label, *others = (cell.text.strip() for _, cell in sorted(cells.items()))
    return bool(others) and labelled_company(f"{label.rstrip(' :')}: {others[0]}") is not None


def _heads_with_unit(cells: dict[int, Cell], priced: list[Cell]) -> bool:
    """'SBS C1S' and in the price column '$/ST': a sub-heading that says what the prices below it are in; 'EUR' and
    there 'g/m²' the title of a table that spreads weights across."""
    words = [cell for cell in cells.values() if cell not in priced]
    if len(words) != 1 or not isinstance(words[0].value, str):
        return False
    return all(price_unit(cell.text) for cell in priced) or all(_names_a_measure(cell.text) for cell in priced)


def _names_a_measure(text: str) -> bool:
    head = head_of_words(text)
    return head is not None and head.role in MEASURES and not head.across


def _under_a_price(view: View, row: int, valued: frozenset[int]) -> bool:
    """A price merged over several rows stands beside each of them; a paragraph merged across the table is none."""
    if not view.spread:
        return False
    merged = (view.spread.get((row, column)) for column in valued)
    return any(cell is not None and view.column_of(cell) in valued and looks_priced(cell) for cell in merged)


def _without_price(view: View, rows: Sequence[int], priced: frozenset[int], valued: frozenset[int]) -> frozenset[int]:
    """The rows that describe a board in the columns where the priced ones do."""
    if not rows:
        return frozenset()
    counts = Counter(column for row in priced for column in _figured(view.rows[row], valued))
    measured = frozenset(column for column, count in counts.items() if count > len(priced) / 2)
    return frozenset(row for row in rows if measured and _is_board(view.rows[row], measured, valued))


def _is_board(cells: dict[int, Cell], measured: frozenset[int], valued: frozenset[int]) -> bool:
    """A name and its measures behind it; '1 | Solid board' numbers a sub-heading, 'Lead time | 15' is a term."""
    names = [column for column, cell in cells.items() if isinstance(cell.value, str) and cell.text[:1].isalpha()]
    if not names:
        return False
    figures = [column for column in _figured(cells, valued) if column in measured and column > names[0]]
    head = head_of_words(cells[names[0]].text)
    return len(figures) >= min(2, len(measured)) and (head is None or not head.named)


def _figured(cells: dict[int, Cell], valued: frozenset[int]) -> list[int]:
    return [column for column, cell in cells.items() if column not in valued and _FIGURE.match(cell.text)]


_FIGURE = re.compile(r"[.,]?\d")

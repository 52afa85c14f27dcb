"""Lists beside the boards that are none of their columns, though they stand in their rows: 'Order size | Surcharge'
over sizes that run on from row to row, 'Form | Lead time' over each form once.

They say what holds for an order of that size or in that form, whichever board stands in its row. What is paid differs
with a discount, and a person is asked.
"""

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import Head, head_of
from tracker.intake.tables.table import Words
from tracker.intake.tables.view import View
from tracker.intake.tables.words import words_of
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.changes.price_changes import price_changes
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.heads.roles import ON_TOP, ORDER_SIZES, Role
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.money import price_unit
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit

_FEWEST_BOARDS = 2
_FEWEST_SIZES = 2
_FEWEST_COLUMNS = 2
_FEWEST_KINDS = 3
"""Of two boards one may well be for rolls and the other for sheets; a list of two beside three boards is of none."""
_LOOKED_AT = 60
_WIDEST_STEP = 2
"""From '1-4 t' to '5-9 t' and from '< 500 kg' to '1 t' a list of sizes may leave something out."""
_KINDS = (Role.FORM, Role.DESTINATION)
_TERMS = (Role.LEAD_TIME, Role.MINIMUM, Role.VALIDITY, Role.DELIVERY_TERMS, *ON_TOP)
_OF_SHEETS = (Role.PACKING,)
"""What sheets of a size have, whatever board they are of."""


def listed_terms(part: View, view: View) -> tuple[Words, ...]:
    """What such a list beside boards that are each another says, as one would write it below them: 'Zuschlag unter 1 t:
    80 EUR/t'; () for a stretch of columns that is none."""
    row = next((row for row in part.order[:_LOOKED_AT] if _heads_list(part, view, row)), None)
    if row is None:
        return ()
    above = words_of(part, [other for other in part.order if other < row])
    return (*above, *_in_words(part, row))


def lists_terms_of_boards(part: View) -> bool:
    """'Lead times' over 'SBS | 4 weeks' and 'CRB | 2 weeks': terms by board beside a table, in rows of their own."""
    first, *others = (list(part.rows[row].values()) for row in part.order)
    head = head_of(first[0])
    if len(first) != 1 or not others or head is None or head.role not in (Role.LEAD_TIME, Role.MINIMUM):
        return False
    named = (find_grade(cells[0].text) for cells in others)
    return all(len(cells) == 2 for cells in others) and all(one is not None and one.grades for one in named)


def _in_words(part: View, row: int) -> Iterator[Words]:
    labels, *others = sorted(part.rows[row])
    rows = [part.rows[other] for other in part.order if other > row and labels in part.rows[other]]
    yearly = part.rows[row][labels].text.strip() if _is_yearly(part, row) else ""
    for column in others:
        head = head_of(part.rows[row][column])
        entries = [(cells[labels], cells[column]) for cells in rows if column in cells]
        if _is_discount(head) and not yearly:
            yield from _discounts(part, row, column)
            continue
        charged = head is not None and head.role in ON_TOP
        for label, cell in _borne(entries) if charged else entries:
            name, unit = with_unit(part.rows[row][column].text.strip(), cell)
            size = f"{yearly} {label.text.strip()}".strip()
            text = f"{name} {size}: {cell.text.strip()} {unit}" if charged else f"{size}: {name} {cell.text} {unit}"
            yield Words(part.sheet, label.row, label, text.strip())


def _borne(entries: Sequence[tuple[Cell, Cell]]) -> list[tuple[Cell, Cell]]:
    """What orders of these sizes bear: where the largest bear nothing, the smallest tell that small ones cost more."""
    borne = [(label, cell) for label, cell in entries if cell.value != 0 and not _ZERO.match(cell.text.strip())]
    sizes = [(bracket_text(label.text), (label, cell)) for label, cell in borne]
    smallest = [entry for size, entry in sizes if size is not None and size.start is None]
    ended = all(size is not None and size.end is not None for size, _ in sizes)
    return smallest if smallest and ended else borne


_ZERO = re.compile(r"0(?:[.,]0+)?(?![\d.,])")
_IN_BRACKETS = re.compile(r"(?P<name>.*\S)\s*[(\[](?P<unit>[^()\[\]]+)[)\]]")


def with_unit(head: str, cell: Cell) -> tuple[str, str]:
    """'Zuschlag EUR/t' and 'Lead time (weeks)' over bare figures: what they are, and what they are in."""
    if isinstance(cell.value, str) and not number_readings(cell.text):
        return head, ""
    bracketed = _IN_BRACKETS.fullmatch(head)
    if bracketed is not None:
        return bracketed["name"], bracketed["unit"]
    words = head.split()
    tails = (at for at in range(1, len(words)) if (unit := price_unit(" ".join(words[at:]))) and unit.currency)
    at = next(tails, len(words))
    return " ".join(words[:at]), " ".join(words[at:])


def _heads_list(part: View, view: View, row: int) -> bool:
    heads = part.rows[row]
    if len(heads) < 2 or not _boards_differ(part, view, row):
        return False
    first, *others = (head_of(cell) for _, cell in sorted(heads.items()))
    if first is None or (first.board and first.role is not Role.SHEET_SIZE):
        return False
    if any(head is None or head.board or head.price for head in others):
        return False
    below = [part.rows[other] for other in part.order if other > row]
    entries = [cells[min(heads)] for cells in below if min(heads) in cells and len(cells) > 1]
    if len(entries) < len(below):
        return False
    shorter = len(entries) < _boards_from(view, heads, row)
    if first.role is Role.SHEET_SIZE and not shorter:
        # As many as the boards, they are the size of each.
        return False
    discounted = [at for at, head in zip(sorted(heads)[1:], others, strict=True) if _is_discount(head)]
    if discounted and _is_yearly(part, row):
        return all(find_masses(cell.text) for cell in entries) and len(entries) >= _FEWEST_SIZES
    # A discount that nothing would be asked about is left among the columns, where it is.
    told = (words for at in discounted for words in _discounts(part, row, at))
    if not all(price_changes(words.text) for words in told):
        return False
    fewest = _FEWEST_KINDS - shorter
    return _run_on(first, entries) or (_names_terms(first, others) and _are_kinds(entries, fewest))


def _boards_from(view: View, heads: Mapping[int, Cell], row: int) -> int:
    """How many rows in turn below the heads hold boards."""
    under = view.rows[row].keys() - heads.keys()
    other = row + 1
    while other in view.rows and len(under & view.rows[other].keys()) >= _FEWEST_COLUMNS:
        other += 1
    return other - row - 1


def _is_discount(head: Head | None) -> bool:
    return head is not None and head.role is Role.DISCOUNT


def _is_yearly(part: View, row: int) -> bool:
    """'Jahresmenge | Bonus' is no price: it is paid back when the year is over."""
    return any(phrases("yearly").find(cell.text) for cell in part.rows[row].values())


def _discounts(part: View, row: int, column: int) -> Iterator[Words]:
    """'Rabatt: 1 %', without the size of the order, about which a person is asked."""
    name = part.rows[row][column].text
    below = [part.rows[other][column] for other in part.order if other > row and column in part.rows[other]]
    for cell in (cell for cell in below if cell.value != 0 and not _ZERO.match(cell.text.strip())):
        share = "" if "%" in cell.text or "%" not in name else " %"
        yield Words(part.sheet, cell.row, cell, f"{name.replace('%', '').strip(' ()')}: {cell.text.strip()}{share}")


def _boards_differ(part: View, view: View, row: int) -> bool:
    """Heads of boards and prices beside the list's own, over a board in each row, no two of them alike: one board at
    several sizes has its size in its row."""
    heads = {at: head for at, cell in view.rows[row].items() if at not in part.rows[row] and (head := head_of(cell))}
    boards = [at for at, head in heads.items() if head.board]
    if not boards or not any(head.price for head in heads.values()):
        return False
    beside = [view.rows[other] for other in part.order if other > row]
    # The list may be longer than the boards are many.
    rows = [cells for cells in beside if cells.keys() & heads.keys()]
    named = [tuple(cells[at].text if at in cells else "" for at in boards) for cells in rows]
    return all(one[0] for one in named) and len(set(named)) == len(named) >= _FEWEST_BOARDS


def _run_on(head: Head, entries: Sequence[Cell]) -> bool:
    """'Under 1 t', '1–3 t', '3–5 t', from above or from below; or where figures stand under a head of sizes, each
    greater than the last."""
    sizes = [_size(cell, head) for cell in entries]
    # '5-20 ST' runs on as '5-20 t' does, be they pieces or tons.
    told = [size for size in sizes if size is not None and size.not_weight in ("", PIECES_OR_TONS)]
    if len(told) < len(entries) or len(told) < _FEWEST_SIZES:
        return False
    bare = all(size.alone for size in told)
    if bare and (head.role not in ORDER_SIZES or len(told) < _FEWEST_KINDS):
        return False
    return all(_meet(*pair) for pair in pairwise(told)) or all(_meet(*pair) for pair in pairwise(reversed(told)))


def _size(cell: Cell, head: Head) -> Bracket | None:
    if number_readings(cell.text) and head.role not in ORDER_SIZES:
        return None
    return bracket_text(cell.text) or bracket_text(cell.text, (MassUnit.KG,))


def _meet(lower: Bracket, upper: Bracket) -> bool:
    """Whether one size begins where the other ends, or further up where neither tells its end."""
    begins = upper.start.kg(MassUnit.TONNE) if upper.start is not None else None
    if begins is None:
        return False
    ends = lower.end.kg(MassUnit.TONNE) if lower.end is not None else None
    if ends is not None:
        return ends <= begins < ends * _WIDEST_STEP
    before = lower.start.kg(MassUnit.TONNE) if lower.start is not None else None
    return before is not None and before < begins


def _names_terms(first: Head, others: Sequence[Head | None]) -> bool:
    terms = _OF_SHEETS if first.role is Role.SHEET_SIZE else _TERMS if first.role in _KINDS else ()
    return first.named and all(head is not None and head.role in terms for head in others)


def _are_kinds(entries: Sequence[Cell], fewest: int) -> bool:
    """Each once; rolls in two rows are those of two boards."""
    said = {cell.text.strip().casefold() for cell in entries}
    return len(said) == len(entries) >= fewest

"""Whether a row of cells heads a table: its words name what stands below, or one property of board is spread across."""

import re
from collections.abc import Iterable
from decimal import Decimal
from itertools import pairwise

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headerless.headless import describes_board
from tracker.intake.tables.headerless.sentences import parted_offer
from tracker.intake.tables.headers.heads import AXIS_ROLES, Head, head_of, is_bare_number, looks_priced
from tracker.intake.tables.headers.letterheads import asks_for_several, is_letterhead
from tracker.intake.tables.headers.numbered import amounts_told, counted_prices, priced_years, years_in_turn
from tracker.intake.tables.rows.charge_lines import states_charge
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import bare_caliper
from tracker.intake.values.figures.numbers import number_readings
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import MEASURES, ORDER_SIZES, Role
from tracker.intake.values.orders.brackets import bracket_text, is_open_figure
from tracker.intake.values.orders.counted_orders import counts_orders
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.prices.price_sentences import asks_basis
from tracker.intake.values.times.lead import lead_text
from tracker.intake.values.times.lead_sentences import leads_by_grade
from tracker.trade.quantities import MassUnit

_LONGEST_HEAD = 90
_OUTRIGHT = 0.9


def is_header_row(view: View, row: int) -> bool:
    """Whether most of a row's cells name what stands below them, or spread one property of board across."""
    heads = heads_of(view, row)
    if heads is None or (len(heads) == 2 and _ends_with_an_offer(view, row)) or states_charge(view.rows[row]):
        return False
    named = sum(head.named for head in heads)
    across = _most_across(heads)
    # A bare number is a head only among others like it, under or beside words.
    bare = sum(head.number is not None for head in heads)
    if bare and not _bare_numbers_head(view, row, heads):
        return False
    if any(head.answers_itself for head in heads) and named < 3:
        return False
    if asked_and_answered(view, row, heads) or is_letterhead(view, row) or asks_for_several(view, row):
        return False
    if named < 3 and next(iter(view.rows[row].values())).text.rstrip().endswith(":"):
        return False
    if named + across >= 2 or (bare >= 2 and named >= 1):
        known = sum(head.named or bool(head.across) or head.number is not None for head in heads)
        if 2 * known >= len(heads) and (named > 0 or across >= 2):
            return True
    if named >= 1 and bare == 0 and (_figures_under_words(view, row) or _axis_below(view, row)):
        return True
    if named == 1 and len(heads) > 1:
        return _price_beside_boards(view, row, heads)
    return named == 1 and len(heads) == 1 and heads[0].price and _prices_under(view, row)


def _ends_with_an_offer(view: View, row: int) -> bool:
    """'Item 1 | GC1, 260 gsm, 410 micron, at £1,110.00 per tonne' numbers a line of a letter and heads nothing."""
    last = view.rows[row][max(view.rows[row])]
    return isinstance(last.value, str) and parted_offer(last.text) is not None


def _price_beside_boards(view: View, row: int, heads: list[Head]) -> bool:
    """'What | Offer' over 'SBS C1S 18 pt 75#/MSF | 56.50': unknown words over boards and what else there is to say, and
    a price's. A board may be written once, and prices by order size follow below it."""
    columns = sorted(view.rows[row])
    priced = [column for column, head in zip(columns, heads, strict=True) if head.price]
    if len(priced) != 1 or priced == columns[:1] or any(head.across for head in heads):
        return False
    first, second = (view.rows.get(row + step, {}) for step in (1, 2))
    if not all(priced[0] in cells and looks_priced(cells[priced[0]]) for cells in (first, second)):
        return False
    whole = first.keys() >= set(columns) and describes_board(first[columns[0]])
    under = second.get(columns[0])
    return whole and (describes_board(under) if under is not None else len(columns) > _BOARD_AND_PRICE)


_BOARD_AND_PRICE = 2


def names_board_and_unit(view: View, row: int) -> bool:
    """'SBS C1S' and farther right '$/ST': below a table's heads a sub-heading that says what its prices are in."""
    if len(view.rows[row]) != 2:
        return False
    board, unit = (cell for _, cell in sorted(view.rows[row].items()))
    head = head_of(board)
    return head is not None and head.across == "grade" and not head.named and price_unit(unit.text) is not None


def asked_and_answered(view: View, row: int, heads: list[Head]) -> bool:
    """'Currency | EUR', 'Price basis | per tonne', 'Valid until | 15 May', 'Lead time | SBS 4 weeks; CRB 2 weeks':
    lines of a form at its left edge."""
    if len(heads) != 2:
        return False
    label, answer = view.rows[row].values()
    edge = min(view.rows[row])
    # With boards at their left, these are the heads of two columns.
    beneath = [min(view.rows[other]) for other in (row + 1, row + 2) if other in view.rows]
    by_terms = heads[0].role is Role.DELIVERY_TERMS and find_delivery(answer.text) is not None
    asks = heads[0].role in _ASKS or asks_basis(label.text)
    by_unit = asks and heads[1].unit and not _heads_figures(view, row, answer)
    by_date = heads[0].role in _DATED and heads[1].across == "period"
    timed = lead_text(answer.text) or leads_by_grade(f"{label.text}: {answer.text}")
    by_time = heads[0].role is Role.LEAD_TIME and timed
    by_weight = heads[0].role is Role.MINIMUM and find_masses(answer.text)
    return bool(by_terms or by_unit or by_date or by_time or by_weight) and all(left >= edge for left in beneath)


def _heads_figures(view: View, row: int, cell: Cell) -> bool:
    """'A. ROLLS | | | $/ST': a unit over the figures of a column that the header below leaves without a head."""
    column = next(column for column, found in view.rows[row].items() if found is cell)
    below, under = view.rows.get(row + 1, {}), view.rows.get(row + 2, {})
    return len(below) > 2 and column not in below and column in under and looks_priced(under[column])


_ASKS = frozenset({Role.CURRENCY, Role.BASIS})
_DATED = frozenset({Role.VALIDITY, Role.VALID_FROM, Role.RECEIVED})


def _most_across(heads: list[Head]) -> int:
    """How many cells are values of one and the same property, the commonest in the row."""
    kinds = [head.across for head in heads if head.across and not head.named]
    return max((kinds.count(kind) for kind in set(kinds)), default=0)


def heads_of(view: View, row: int) -> list[Head] | None:
    """What each cell of a row may head, left to right; None when one of them can be no head at all."""
    heads = []
    cells = tuple(view.rows[row].values())
    counted = counted_prices(cells) | priced_years(cells) | years_in_turn(cells) | amounts_told(cells)
    for cell in view.rows[row].values():
        head = counted.get(cell) or head_of(cell)
        if head is None or len(cell.text) > _LONGEST_HEAD or (is_open_figure(cell.text) and not _goes_on(cell, cells)):
            return None
        heads.append(head)
    return heads


def _goes_on(cell: Cell, cells: Iterable[Cell]) -> bool:
    """Another order size of the row ends right before this '10 000–', which would be a price elsewhere."""
    begins = {reading.value for reading in number_readings(cell.text.rstrip(" -–—"))}
    sizes = (bracket_text(other.text, (MassUnit.KG,)) for other in cells if other is not cell)
    ends = {amount.value for size in sizes if size is not None and size.end is not None for amount in size.end.amounts}
    return any(0 <= start - end <= 1 for start in begins for end in ends)


def _bare_numbers_head(view: View, row: int, heads: list[Head]) -> bool:
    """Numbers across (12 | 14 | 16) head columns when the corner says of what, or they rise and a word above does."""
    numbers = [head.number for head in heads if head.number is not None]
    if len(numbers) < 2 or any(head.across for head in heads):
        return False
    corner = view.rows[row][min(view.rows[row])]
    axes = axes_named(corner)
    if axes & MEASURES:
        return True
    if not all(a < b for a, b in pairwise(numbers)):
        return False
    if axes and len({reading.unit for number in numbers if (reading := bare_caliper(number)) is not None}) == 1:
        return True
    columns = [column for column, cell in view.rows[row].items() if head_of(cell) in heads and is_bare_number(cell)]
    above = [view.rows[row - 1][column] for column in columns if column in view.rows.get(row - 1, {})]
    return len(above) == 1 and (found := head_of(above[0])) is not None and found.axis_word


def _figures_under_words(view: View, row: int) -> bool:
    """Words only, with figures right below most of them: heads, though not all are known words (places, months)."""
    cells, under = view.rows[row], view.rows.get(row + 1, {})
    if len(cells) < 3 or any(looks_priced(cell) for cell in cells.values()) or _tells_terms(cells):
        return False
    figures = sum(column in under and is_figure(under[column]) for column in cells)
    above = view.rows.get(row - 1, {})
    return (
        figures >= 2
        and 2 * figures >= len(cells)
        and not any(isinstance(cell.value, Decimal) for cell in above.values())
    )


def _tells_terms(cells: dict[int, Cell]) -> bool:
    """'Lead time | 15 days | to be agreed' tells the terms of each column."""
    first, *others = (cell for _, cell in sorted(cells.items()))
    head = head_of(first)
    told = head is not None and head.named and head.role in (Role.LEAD_TIME, Role.MINIMUM)
    return told and any(cell.text[:1].isdigit() for cell in others)


_SPREAD = MEASURES.union(ORDER_SIZES)
"""What bare numbers under one word may be: 'Price from quantity (t)' over 1 | 5 | 20 too; no grade, no sheet size."""


def axes_named(corner: Cell) -> frozenset[Role]:
    """The properties of board that a corner names outright; 'carton premium' is a board, though it says carton."""
    head = head_of(corner)
    figured = any(sign.isdecimal() for sign in _without_area(corner.text))
    if figured and not (head is not None and head.unit):
        return frozenset()
    named = {r.role for r in header_roles(corner.text) if r.role in AXIS_ROLES and r.strength >= _OUTRIGHT}
    said = header(corner.text)
    # 'lb/3000 sq ft' by itself.
    weighs = head is not None and head.unit and len(said.weight_units) == 1 and not said.weights
    return frozenset(named | {Role.WEIGHT} if weighs else named)


def _without_area(text: str) -> str:
    """'Basis weight, lb per 3,000 sq ft' without the area that such pounds are on."""
    said = header(text)
    return _AREA.sub(" ", text, count=1) if len(said.weight_units) == 1 and not said.weights else text


_AREA = re.compile(r"(?<![\d.,])[13][.,'’ \u00a0\u202f]?000(?![\d.,]*\d)")


def _prices_under(view: View, row: int) -> bool:
    column = next(iter(view.rows[row]))
    under = view.rows.get(row + 1, {})
    return column in under and looks_priced(under[column]) and any(left < column for left in under)


def _axis_below(view: View, row: int) -> bool:
    """The row below is bare numbers that one of this row's words names."""
    return row + 1 in view.rows and are_numbers(view, row + 1) and under_axis(view, row, row + 1)


def are_numbers(view: View, row: int) -> bool:
    """Whether a row is bare numbers, behind a label or without one."""
    heads = heads_of(view, row)
    numbers = [head for head in heads or () if head.number is not None]
    return bool(numbers) and len(numbers) == len(_behind_a_label(view, row))


_LABELS = frozenset({Role.FORM, Role.PRODUCT, Role.GRADE, Role.COATING, *ORDER_SIZES})


def _behind_a_label(view: View, row: int) -> dict[int, Cell]:
    """A row without the words before it that name what stands below them: 'Form | 230 | 300'."""
    (at, label), *others = sorted(view.rows[row].items())
    head = head_of(label) if isinstance(label.value, str) else None
    named = head is not None and head.named and head.role in _LABELS
    return dict(others) if named else {at: label, **dict(others)}


def under_axis(view: View, main: int, row: int) -> bool:
    """Bare numbers spread what one header cell above all of them names: 'Caliper (pt)' over 12 | 14 | 16. So does one
    over each group of them, as 'GC1 (g/m²) | GD2 (g/m²)'."""
    cells = _behind_a_label(view, row)
    over: dict[Cell | None, list[Cell]] = {}
    for column, cell in cells.items():
        over.setdefault(_covering(view, main, column), []).append(cell)
    if len(cells) < 2 or None in over or not (len(over) > 1 or _ascend(list(cells.values()))):
        return False
    # Each number under a head of its own is a row of figures.
    labelled = min(cells) > min((*view.rows.get(main, ()), *view.rows.get(row + 1, ())))
    several = 1 < len(over) < len(cells) and labelled
    return all(_spreads(word, named=several) for word in over if word is not None) and (several or len(over) == 1)


def _ascend(cells: list[Cell]) -> bool:
    numbers = [head.number for cell in cells if (head := head_of(cell)) is not None and head.number is not None]
    return all(a < b for a, b in pairwise(numbers))


def _spreads(word: Cell, *, named: bool) -> bool:
    """Whether a head names what figures below it spread; `named`: with the name of a board, and by a unit alone."""
    if named:
        head, said = head_of(word), header(word.text)
        measured = said.caliper_unit is not None or len(said.weight_units) == 1
        return head is not None and head.across == "grade" and measured and said.currency is None
    said_by_words = {reading.role for reading in header_roles(word.text)}
    return bool(said_by_words & _SPREAD) or bool(counts_orders(word.text))


def _covering(view: View, row: int, column: int) -> Cell | None:
    """The header cell over a column: its own, the merged one, or the nearest to the left over blanks."""
    own = view.spread_cell(row, column)
    if own is not None:
        return own
    before = [left for left in view.rows.get(row, {}) if left < column]
    return view.rows[row][max(before)] if before else None

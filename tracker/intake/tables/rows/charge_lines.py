"""Rows that name a charge and say what it comes to: 'Energy surcharge | 3.5 % of board price', 'Freight | $2.35/cwt'.

They head nothing, whatever stands below them, and are no sub-heading of the boards that follow.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from decimal import Decimal
from itertools import takewhile

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import as_formatted
from tracker.intake.tables.headers.priced_texts import is_money
from tracker.intake.tables.rows.terms_below import tells_terms_of_prices
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.figures.rates import names_percent
from tracker.intake.values.freight.additions_below import (
    additions_of,
    adds_to_one_side,
    leads_to_additions,
    leads_to_included,
)
from tracker.intake.values.freight.charge_amounts import left_beside
from tracker.intake.values.freight.charge_names import ChargeKind, charges_named
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.freight.freight_to_buyer import freight_to_buyer
from tracker.intake.values.notes.above_and_below import parts_by_side
from tracker.intake.values.notes.statements import SaysOrders, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases

_LONGEST = 60


def states_charge(cells: Mapping[int, Cell]) -> bool:
    """Whether a row is a charge's name and one amount with its unit, or one share of the price, and no board."""
    if not cells or not names_charge(cells):
        return False
    said = in_one_line(cells)
    told = find_charges(said)
    if len(told) != 1 or not told[0].amounts:
        return False
    # 'An energy surcharge of 3 % applies from May' is a sentence, and so is 'Energy 3 % is added to the above prices'.
    sentence = len(said) > _LONGEST or bool(parts_by_side(said))
    return len(cells) > 1 or (not sentence and said.lstrip(" +").startswith(told[0].label))


def cell_of_board(cells: Mapping[int, Cell], index: int) -> Cell | None:
    """A row's cell, but for the '3.5 % of board price' of one that states a charge, and the '3 weeks' of one that tells
    terms: they tell nothing of their column."""
    cell = cells.get(index)
    if cell is None or not isinstance(cell.value, str):
        return cell
    of_charge = names_percent(cell.text) and states_charge(cells)
    return None if of_charge or tells_terms_of_prices(cells, cells) else cell


def names_charge(cells: Mapping[int, Cell]) -> bool:
    """Whether a row begins with the name of a charge and of no board."""
    label = cells[min(cells)]
    if not isinstance(label.value, str) or len(label.text) > _LONGEST or find_grade(label.text) is not None:
        return False
    return bool(charges_named(label.text)) or freight_to_buyer(label.text) is not None


def in_one_line(cells: Mapping[int, Cell]) -> str:
    """The row as one would write it in a line: 'Energy surcharge: 3.5 %'."""
    label, *others = (cells[index] for index in sorted(cells))
    name = label.text.strip()
    return f"{name.rstrip(' :')}: {' '.join(map(as_formatted, others))}" if others else name


def names_bare_amount(cells: Mapping[int, Cell]) -> bool:
    """'Energy surcharge | 24' with the figure below no price, and no word of what it is in."""
    label, *others = (cells[index] for index in sorted(cells))
    bare = (
        len(others) == 1 and isinstance(others[0].value, Decimal) and as_formatted(others[0]) == others[0].text.strip()
    )
    if not bare or not names_charge(cells):
        return False
    named = charges_named(label.text)
    left = left_beside(label.text, named)
    sure = named and (named[0].value != ChargeKind.OTHER or phrases("surcharge_words").find(label.text))
    return bool(sure) and not any(map(str.isalnum, left))


def charges_among(view: View, rows: Iterable[int], boards: Collection[int], end: int) -> frozenset[int]:
    """The rows of words that state a charge above the last board, 'Energy surcharge | 3.5 %' between two grades, and
    then those right below that one too: each group may have its own. They are no sub-headings of what follows. Right
    below all boards those with a bare figure too, of which a note would say nothing."""
    rows = list(rows)
    stated = [row for row in rows if states_charge(view.rows[row])]
    stated = _of_every_lot(view, rows, stated) if stated else []
    found = {row for row in stated if row < end}
    several = bool(found)
    for row in rows:
        below = row > end >= 0 and (row - 1 in boards or row - 1 in found or row - 1 in stated)
        if below and (names_bare_amount(view.rows[row]) or (several and row in stated)):
            found.add(row)
    return frozenset(found)


def _of_every_lot(view: View, rows: Sequence[int], stated: Iterable[int]) -> list[int]:
    """Without those below 'Added to the prices above:' and 'The prices include:', which are read with that line."""
    lines = [row for row in rows if _tells_of_those_below(view.rows[row])]
    tied = {line + place for line in lines for place in range(1, len(rows) + 1) if _reaches(rows, line, place)}
    return [row for row in stated if row not in tied]


def _tells_of_those_below(cells: Mapping[int, Cell]) -> bool:
    said = next(iter(cells.values())) if len(cells) == 1 else None
    text = said.text if said is not None and isinstance(said.value, str) else ""
    return leads_to_included(text) or (adds_to_one_side(text) and additions_of(text) is not None)


def _reaches(rows: Sequence[int], line: int, place: int) -> bool:
    """Whether no gap and no board stands between the line and what stands so far below it."""
    return all(line + at in rows for at in range(1, place + 1))


def charges_apart(view: View, rows: Sequence[int]) -> list[int]:
    """The rows at the end, set apart by a gap, that are charges with units of their own and words: below several
    tables they are of all of them."""
    apart: list[int] = []
    for row in reversed(rows):
        cells = view.rows[row]
        if not (states_charge(cells) or all(map(_is_of_words, cells.values()))):
            break
        apart.insert(0, row)
    gaps = [at for at, row in enumerate(apart) if row - 1 not in view.rows]
    behind = apart[gaps[0] :] if gaps else []
    return behind if any(states_charge(view.rows[row]) for row in behind) else []


def _is_of_words(cell: Cell) -> bool:
    return isinstance(cell.value, str) and not is_money(cell.text)


def rows_added(view: View, rows: Sequence[int]) -> frozenset[int]:
    """The rows below a line that adds them to the prices, up to the first that names a board."""
    lines = [row for row in rows if len(cells := view.rows[row]) == 1 and _leads(*cells.values())]
    added: set[int] = set()
    for line in lines:
        below = (row for row in rows if row > line)
        added.update(takewhile(lambda row: not _names_board(view.rows[row]), below))
    return frozenset(added)


def _leads(cell: Cell) -> bool:
    return isinstance(cell.value, str) and leads_to_additions(cell.text)


def _names_board(cells: Mapping[int, Cell]) -> bool:
    return any(isinstance(cell.value, str) and find_grade(cell.text) is not None for cell in cells.values())


def notes_before_charges(view: View, rows: Iterable[int]) -> list[int]:
    """Those of the rows of words between the last board and charges with figures that say something of all boards:
    'Energy surcharge | 3.5 %' before 'Freight | | | 2.35', 'All prices are FOB mill'. They head no board."""
    return [row for row in rows if _says_something(view.rows[row])]


def _says_something(cells: Mapping[int, Cell]) -> bool:
    """'For delivered prices add:' leads to what stands below it, and says nothing of the prices by itself."""
    said = in_one_line(cells)
    if isinstance(cells[min(cells)].value, str) and charges_named(cells[min(cells)].text):
        # 'Energy surcharge, SBS only | 3.5 %' too: of which boards is told by whoever reads notes.
        return any(map(str.isdigit, said)) or (len(cells) > 1 and bool(find_charges(said)))
    return not said.endswith(":") and any(not isinstance(one, _OF_FIGURES) for one in statements(said))


_OF_FIGURES = (SaysBasis, SaysCurrency, SaysOrders, LegendEntry)
"""What may be said of the charges' own figures."""

"""Rows that name a charge and say what it comes to: 'Energy surcharge | 3.5 % of board price', 'Freight | $2.35/cwt'.

They head nothing, whatever stands below them, and are no sub-heading of the boards that follow.
"""

from collections.abc import Iterable, Mapping
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.legends import LegendEntry
from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.freight.charges import find_charges
from tracker.intake.values.freight.freight_to_buyer import freight_to_buyer
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
    # 'An energy surcharge of 3 % applies from May' is a sentence; so is what is said of all boards.
    return len(cells) > 1 or (len(said) <= _LONGEST and said.lstrip(" +").startswith(told[0].label))


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
    return f"{name.rstrip(' :')}: {' '.join(map(_shown, others))}" if others else name


def _shown(cell: Cell) -> str:
    """A share that its format alone shows as one, 0.035 as '3.5 %', with its sign."""
    if isinstance(cell.value, Decimal) and "%" in cell.number_format:
        return f"{(cell.value * 100).normalize():f} %"
    return cell.text.strip()


def of_every_board(cells: Mapping[int, Cell]) -> bool:
    """'Energy surcharge 3.5 %, all grades' among the boards is said of those above it too."""
    return bool(phrases("all_of_them").find(in_one_line(cells)))


def notes_before_charges(view: View, rows: Iterable[int]) -> list[int]:
    """Those of the rows of words between the last board and charges with figures that say something of all boards:
    'Energy surcharge | 3.5 %' before 'Freight | | | 2.35', 'All prices are FOB mill'. They head no board."""
    return [row for row in rows if _says_something(view.rows[row])]


def _says_something(cells: Mapping[int, Cell]) -> bool:
    """'For delivered prices add:' leads to what stands below it, and says nothing of the prices by itself."""
    said = in_one_line(cells)
    if names_charge(cells):
        return bool(find_charges(said))
    return not said.endswith(":") and any(not isinstance(one, _OF_FIGURES) for one in statements(said))


_OF_FIGURES = (SaysBasis, SaysCurrency, SaysOrders, LegendEntry)
"""What may be said of the charges' own figures."""

"""Lines above a header that tell of each of its vendors or places alone, as a buyer's comparison writes them.

Kestrel Board Co. | Alder Paper
FOB mill          | delivered
valid 30 Sept     | 60 days from 1 June
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import head_of
from tracker.intake.tables.table import HeadedColumn
from tracker.intake.tables.view import View
from tracker.intake.values.firms.company import company_name, labelled_company, may_be_a_name, name_of_bidder
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import price_unit

_MOST_LINES = 8
_FEWEST = 2
_PLAINLY = 0.8
_LABELS = (Role.VENDOR, Role.DELIVERY_TERMS, Role.VALIDITY, Role.LEAD_TIME, Role.MINIMUM, Role.REMARKS, Role.PAYMENT)


@dataclass(frozen=True, slots=True)
class GroupLines:
    """The rows of such lines from `top` on, and by the first column of each group what they say of it: the vendor, and
    every other cell, behind its label where the line has one. `labelled`: a label says what the lowest line tells."""

    top: int
    vendors: dict[int, str]
    said: dict[int, tuple[Cell, ...]]
    labelled: bool = False

    def over(self, column: HeadedColumn) -> HeadedColumn:
        """The column with what is said of its group; a unit of price is a head like any other."""
        start = max((start for start in self.said if start <= column.index), default=None)
        if start is None:
            return column
        priced = any((head := head_of(cell)) is not None and head.price for cell in column.heads)
        units = tuple(cell for cell in self.said[start] if priced and price_unit(cell.text) is not None)
        vendor = self.vendors.get(start, "")
        return replace(column, heads=(*units, *column.heads), lines=self.said[start], vendor=vendor)


def group_lines(view: View, main: int, top: int, below: int) -> GroupLines | None:
    """The lines over the groups of the header in row `main`, whose uppermost row is `top`; None for none."""
    priced = [column for column, cell in view.rows[main].items() if (head := head_of(cell)) is not None and head.price]
    if len(priced) < _FEWEST:
        return None
    lines = list(_lines(view, min(priced), top, below))
    starts = sorted({column for _, values in lines for column in values})
    if not lines or len(starts) < _FEWEST or not _each_has_a_price(starts, priced):
        return None
    vendors: dict[int, str] = {}
    said: dict[int, list[Cell]] = {start: [] for start in starts}
    told = 0
    for label, values in reversed(lines):
        names = _vendors(label, values) if not vendors else {}
        vendors |= names
        told += bool(names) or _tell_terms(label, values)
        for column, cell in values.items():
            said[column].append(_behind(label, cell))
    if not told:
        return None
    first = top - len(lines)
    label = lines[0][0]
    labelled = label is not None and _tell_terms(label, {})
    return GroupLines(first, vendors, {start: tuple(cells) for start, cells in said.items()}, labelled)


def leads_to_groups(view: View, row: int, below: int) -> bool:
    """Whether a row is such a line of a header further down, though it looks like a header itself."""
    for main in range(row + 1, row + 1 + _MOST_LINES):
        if main not in view.rows:
            return False
        found = group_lines(view, main, main, below)
        if found is not None:
            return found.top <= row and bool(found.vendors)
    return False


def _lines(view: View, first_price: int, top: int, below: int) -> Iterator[tuple[Cell | None, dict[int, Cell]]]:
    """The rows right above, from the lowest up: a label at the left or none, and cells that begin groups."""
    starts: set[int] = set()
    for row in range(top - 1, max(below, top - 1 - _MOST_LINES), -1):
        cells = dict(view.rows.get(row, {}))
        left = sorted(column for column in cells if column < first_price)
        label = cells.pop(left[0]) if len(left) == 1 else None
        if len(left) > 1 or not cells or (label is not None and not isinstance(label.value, str)):
            return
        if len(cells) < _FEWEST or (starts and not (cells.keys() <= starts or starts <= cells.keys())):
            return
        if label is None and not all(isinstance(cell.value, str) for cell in cells.values()):
            return
        starts |= cells.keys()
        yield label, cells


def _each_has_a_price(starts: list[int], priced: list[int]) -> bool:
    ends = [*starts[1:], max(priced) + 1]
    return all(any(start <= column < end for column in priced) for start, end in zip(starts, ends, strict=True))


def _vendors(label: Cell | None, values: dict[int, Cell]) -> dict[int, str]:
    """Names beside each other: behind 'Lieferant', or where a word shows that one of them is a firm's."""
    texts = {column: _named(cell.text.strip()) for column, cell in values.items() if isinstance(cell.value, str)}
    called = label is not None and any(
        reading.role is Role.VENDOR and reading.strength >= _PLAINLY for reading in header_roles(label.text)
    )
    named = any(company_name(text) is not None for text in texts.values())
    written = all(company_name(text) is not None or may_be_a_name(text) for text in texts.values())
    return texts if called or (label is None and named and written) else {}


def _named(text: str) -> str:
    """'Fournisseur : Cartons Ormoy SA' and 'Bid 2 – Tarn Kartong AB' without what comes before the name."""
    return labelled_company(text) or name_of_bidder(text) or text


def _tell_terms(label: Cell | None, values: dict[int, Cell]) -> bool:
    if label is not None:
        return any(one.role in _LABELS and one.strength >= _PLAINLY for one in header_roles(label.text))
    return all(find_delivery(cell.text) is not None or statements(cell.text) for cell in values.values())


def _behind(label: Cell | None, cell: Cell) -> Cell:
    if label is None:
        return cell
    text = f"{label.text.strip().rstrip(':')}: {cell.text.strip()}"
    return cell._replace(text=text)

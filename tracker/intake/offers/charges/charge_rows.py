"""The rows of charges of one table: which charge each gives, and whose it is."""

from collections.abc import Iterator, Mapping

from tracker.intake.columns.column import Columns, Kind
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.charge_lines import as_far_as_added, charge_in_line, line_above, with_unit_above
from tracker.intake.offers.charges.charge_runs import ChargeRow, ChargeRuns
from tracker.intake.offers.charges.row_charges import (
    charge_of_row,
    charge_told_beside,
    has_figure,
    is_of_all_prices,
    with_unit_beside,
)
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.rows.row_labels import charge_of_label
from tracker.intake.tables.table import BodyRow, Headings, Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.words.lists import phrases


class ChargeRows:
    """Takes a table's rows in order. `of_columns`: charges that stand below some of several prices only, by column."""

    def __init__(self, sheet: str, columns: Columns) -> None:
        self._sheet, self._columns = sheet, columns
        self._priced = frozenset(price.index for price in columns.prices)
        self._offered = frozenset(price.index for price in columns.prices if price.kind is Kind.OFFER)
        # A column that nothing heads may hold the amounts of charges alone.
        self._headed = frozenset(price.index for price in columns.prices if price.column.heads) or self._priced
        self.of_columns: dict[int, list[Said[ChargeWords]]] = {}
        self._runs = ChargeRuns()

    def take_board(self, row: int, headings: Headings | None) -> None:
        """A row that offers a board."""
        self._runs.take_board(row, headings)

    def takes_in_line(self, row: BodyRow, cells: dict[int, Cell], label: Cell, headings: Headings | None) -> bool:
        """Whether a row is a charge whose amount stands below no price."""
        charge = charge_told_beside(cells, label, self._priced)
        charge = charge or charge_in_line(cells, label, self._headed, row.headings)
        if charge is not None:
            self._take(row, cells, label, charge, headings)
        return charge is not None

    def take(
        self, row: BodyRow, cells: dict[int, Cell], label: Cell, headings: Headings | None,
        named: ChargeWords | None = None,
    ) -> None:  # fmt: skip
        """A row of a charge with its figures under the prices. `named`: what the line above makes of its label."""
        named = with_unit_above(named or charge_of_label(label.text), row.headings)
        below = [index for index in sorted(self._offered) if index in cells and has_figure(cells[index])]
        some, added = 0 < len(below) < len(self._offered), line_above(row.headings) != ""
        if some and not is_of_all_prices(cells, label, self._columns.prices, apart=row.after_gap, added=added):
            for index in below:
                own = as_far_as_added(charge_of_row(label, [with_unit_beside(cells, index, self._priced)], named),
                                      label, row.headings)  # fmt: skip
                if own is not None:
                    self.of_columns.setdefault(index, []).append(Said(own, at(label), said_in(cells, label)))
            return
        figures = [with_unit_beside(cells, index, self._priced) for index in sorted(self._priced) if index in cells]
        self._take(row, cells, label, charge_of_row(label, figures, named), headings)

    def _take(
        self, row: BodyRow, cells: dict[int, Cell], label: Cell, charge: ChargeWords | None, headings: Headings | None
    ) -> None:
        words = said_in(cells, label)
        figures = any(has_figure(cell) for cell in cells.values() if cell is not label)
        charge = as_far_as_added(charge, label, row.headings, figures=figures)
        if charge is not None and _is_of_some(cells, label):
            charge = ChargeWords(charge.kind, charge.label)
        said = None if charge is None else Said(charge, at(label), words)
        everybodys = line_above(row.headings) != "" or bool(phrases("all_of_them").find(words))
        # 'Frachtzuschlag frei Haus | 37.5' says where the freight leads, and not that prices bear it.
        leads = charge is not None and charge.kind is ChargeKind.FREIGHT and bool(phrases("delivery").find(label.text))
        told = None if leads else Words(self._sheet, row.index, label, words)
        self._runs.take_charge(ChargeRow(told, said, everybodys), headings)

    def of_all(self) -> Iterator[ChargeRow]:
        """The charges of every board."""
        return self._runs.of_all()

    def of_boards(self) -> Mapping[int, tuple[Said[ChargeWords], ...]]:
        """The charges of single boards, by row."""
        return self._runs.of_boards()


def _is_of_some(cells: dict[int, Cell], label: Cell) -> bool:
    """'Freight | $2.35/cwt | to Ohio only': words beside the amount that give it to some orders or boards."""
    words = [cell.text for cell in cells.values() if cell is not label and isinstance(cell.value, str)]
    return any(find_grade(text) or any(phrases(section).find(text) for section in _OF_SOME) for text in words)


_OF_SOME = ("only_these", "only_if", "exceptions", "small_orders")


def said_in(cells: dict[int, Cell], label: Cell) -> str:
    """All that a row says."""
    return " ".join(cell.text.strip() for _, cell in sorted(cells.items()) if cell is not label or cell.text.strip())

"""The rows of a table made whole: once-written and merged values filled in, rows that offer nothing taken out."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from tracker.intake.columns.column import Column, Columns, Kind
from tracker.intake.grid import Cell
from tracker.intake.offers.boards.written_once import BOARD, says_same, written_once
from tracker.intake.offers.charges.charge_lines import freight_to_somewhere, is_added_term, line_above, named_below
from tracker.intake.offers.charges.charge_rows import ChargeRows, said_in
from tracker.intake.offers.charges.optional_rows import below_optional
from tracker.intake.offers.charges.row_charges import says_unit_of_charge
from tracker.intake.offers.notes.asides import begin_a_group
from tracker.intake.offers.notes.said import Said, at
from tracker.intake.offers.rows.lookalikes import Lookalikes
from tracker.intake.offers.rows.means import Means
from tracker.intake.offers.rows.neighbours import Neighbours
from tracker.intake.offers.rows.no_vendors import no_vendors
from tracker.intake.offers.rows.outdated import age_of_remarks, columns_beside, remarks_in
from tracker.intake.offers.rows.row_labels import (
    RowKind,
    heads_charges,
    heads_measures,
    kind_of_row,
    label_among,
    names_board,
    says_coating_alone,
    term_of_row,
)
from tracker.intake.offers.rows.term_rows import freight_by_column, merged_over, terms_alike, terms_by_column
from tracker.intake.offers.rows.term_runs import TermRow, TermRuns, Terms
from tracker.intake.tables.figures import is_figure
from tracker.intake.tables.headers.heads import looks_priced
from tracker.intake.tables.rows.charge_lines import states_charge
from tracker.intake.tables.table import BodyRow, Headings, Table, Words
from tracker.intake.values.changes.list_age import Age
from tracker.intake.values.changes.others_prices import Offering, remark_offers, row_offers
from tracker.intake.values.freight.charge_parts import OptionalCharge, is_fee
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.freight.delivery import find_delivery
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.notes.statements import Statement
from tracker.intake.values.times.lead import lead_unit

_UNITS = (Role.BASIS, Role.CURRENCY, Role.PER_QUANTITY)
_TERMS = (Role.VENDOR, Role.LEAD_TIME, Role.VALIDITY, Role.MINIMUM, Role.DELIVERY_TERMS)
_FILLED = (*BOARD, Role.WIDTH, Role.LENGTH, Role.DESTINATION, *_UNITS, *_TERMS, *ON_TOP)


@dataclass(slots=True)
class WholeRow:
    """A row with its values filled in. `own` are the columns that the row itself has cells in.

    `doubt`: why it may be no board at all, '' where it is one.
    """

    row: BodyRow
    cells: dict[int, Cell]
    own: frozenset[int]
    doubt: str = ""


class Rows:
    """Goes over a table's rows in order. `passed` collects the rows that are no offers, with the reason.

    `terms`: what those state that tell of the other rows. `charges` are those whose figures stand among the prices,
    `charges_of` those that stand below some of several prices only, by column, and `charges_below` those that stand
    below some boards only, by row.
    """

    def __init__(self, table: Table, columns: Columns, texts: Iterable[str] = ()) -> None:
        self._table, self._columns = table, columns
        self._filled = columns.of(*_FILLED)
        self._once = written_once(table, columns, self._filled, texts)
        self._leaders = tuple(column.index for column in columns.of(Role.PRODUCT, Role.GRADE))
        self._priced = frozenset(price.index for price in columns.prices)
        self._offered = frozenset(price.index for price in columns.prices if price.kind is Kind.OFFER)
        self._copied = (*(column.index for column in self._filled), *self._priced)
        self._beside = columns_beside(table, columns)
        self._neighbours = Neighbours(table, self._priced)
        once = any(column.index in self._once for column in columns.of(Role.VENDOR))
        self._no_vendors = no_vendors(table, columns, self._neighbours, once=once)
        self._means = Means(table, columns, self._neighbours)
        self._lookalikes = Lookalikes(columns, self._neighbours)
        self._measured = frozenset(column.index for column in columns.of(Role.CALIPER, Role.WEIGHT))
        self._measures = tuple(column.index for column in columns.of(Role.CALIPER, Role.WEIGHT, Role.GRADE))
        self.passed: dict[int, str] = {}
        self.terms = Terms()
        self.charges: list[Said[Statement]] = []
        self.charges_of: dict[int, list[Said[ChargeWords]]] = {}
        self.charges_below: Mapping[int, tuple[Said[ChargeWords], ...]] = {}
        self._charges, self._terms = ChargeRows(table.view.sheet, columns), TermRuns()
        self._headings: Headings | None = None
        self._own: dict[frozenset[int], frozenset[int]] = {}
        self._gone_over = False

    def go_over(self) -> None:
        """Goes over the rows, unless somebody has, so that they have told what they state beside offers."""
        for _ in () if self._gone_over else self:
            pass

    def __iter__(self) -> Iterator[WholeRow]:
        self.passed, self.charges, self._terms, self._headings = {}, [], TermRuns(), None
        self._charges = ChargeRows(self._table.view.sheet, self._columns)
        held: dict[int, Cell] = {}
        above: dict[int, Cell] = {}
        headings: Headings | None = None
        for row in self._table.rows:
            if row.headings is not None and row.headings is not headings:
                headings = self._headings = row.headings
                held = {} if begin_a_group(headings.own) else held
            cells = above = self._as_above(self._table.view.rows[row.index], above)
            reason, doubt = self._no_offer(row, cells)
            if reason:
                self.passed[row.index] = reason
                continue
            cells = self._with_merged_prices(row.index, cells)
            whole = self._filled_in(row, cells, held)
            held = {index: whole[index] for index in self._once if index in whole}
            self._charges.take_board(row.index, headings)
            self._terms.take_board(row.index, headings)
            own = frozenset(cells)
            # Rows with cells in the same columns share what tells which these are.
            yield WholeRow(row, whole, self._own.setdefault(own, own), doubt)
        self.terms = self._terms.told()
        for charged in self._charges.of_all():
            self.terms.stated.extend((charged.words,) if charged.words is not None else ())
            self.charges.extend((charged.charge,) if charged.charge is not None else ())
        self.charges_below, self.charges_of = self._charges.of_boards(), self._charges.of_columns
        self._gone_over = True

    def _with_merged_prices(self, row: int, cells: dict[int, Cell]) -> dict[int, Cell]:
        """The row's cells, and the prices merged over several boards or order sizes, each at an address of its own."""
        view = self._table.view
        if not view.spread:
            return cells
        merged = {
            index: covering._replace(row=index, column=row) if view.turned else covering._replace(row=row, column=index)
            for index in self._priced - cells.keys()
            if (covering := view.spread.get((row, index))) is not None
            and view.column_of(covering) in self._priced
            and looks_priced(covering)
        }
        return cells | merged if merged else cells

    def _as_above(self, cells: dict[int, Cell], above: dict[int, Cell]) -> dict[int, Cell]:
        """The row with what stands above each sign for 'the same' in its place; a price stays where its sign stands."""
        copied = [(index, cells[index]) for index in self._copied if index in cells]
        signs = [index for index, cell in copied if isinstance(cell.value, str) and says_same(cell.text)]
        if not signs:
            return cells
        same = {index: above[index] for index in signs if index in above}
        for index in self._priced & same.keys():
            same[index] = same[index]._replace(row=cells[index].row, column=cells[index].column)
        return cells | same if same else cells

    def _filled_in(self, row: BodyRow, cells: dict[int, Cell], held: dict[int, Cell]) -> dict[int, Cell]:
        """The row's cells with the values that hold for it; nobody changes what is handed out, so that a row that needs
        none is handed out as it is."""
        missing = [column for column in self._filled if column.index not in cells]
        if not missing:
            return cells
        whole = dict(cells)
        spread = self._table.view.spread
        new_board = any(index in cells for index in self._leaders)
        for column in missing:
            merged = spread.get((row.index, column.index)) if spread else None
            if merged is not None:
                whole[column.index] = merged
            elif column.index in held and (column.role in _UNITS or not new_board or self._groups(column, cells)):
                whole[column.index] = held[column.index]
        return whole

    def _groups(self, column: Column, cells: dict[int, Cell]) -> bool:
        """A vendor once, to the left of several boards, quotes them all; a place is where all of them go, and a grade
        that of those whose descriptions say no more than how they are coated."""
        others = [leader for leader in self._leaders if leader != column.index]
        if not all(column.index < leader for leader in others):
            return False
        if column.role is Role.GRADE:
            return all(says_coating_alone(cells[leader].text) for leader in others if leader in cells)
        return column.role in (Role.VENDOR, Role.DESTINATION)

    def _no_offer(self, row: BodyRow, cells: dict[int, Cell]) -> tuple[str, str]:
        """Why a row of figures offers nothing, and why it may be no offer: '' and '' for one that surely is."""
        label = label_among(cells, self._priced, self._columns)
        if label is None:
            return self._unlabelled(row, cells), ""
        if row.index in self._no_vendors:
            return self._no_vendors[row.index]
        remarks = remarks_in(cells, self._beside)
        if age_of_remarks(remarks)[0] is Age.SUPERSEDED:
            return "marked as no longer in force", ""
        offering = max([row_offers(label.text), *[remark_offers(remark.text) for remark in remarks]])
        if offering is Offering.NOT:
            return "its words say that nobody offers it", ""
        if offering is Offering.DOUBTFUL:
            return "", f"“{label.text.strip()}” may be what nobody offers"
        if (extras := below_optional(row.headings)) and (states_charge(cells) or not self._may_be_board(cells, label)):
            self.charges.append(Said(OptionalCharge(f"{said_in(cells, label)} ({extras})"), at(label), extras))
            return RowKind.CHARGE.value, ""
        if is_fee(label.text) and not self._may_be_board(cells, label):
            self.charges.append(Said(OptionalCharge(said_in(cells, label), of_dealings=True), at(label), label.text))
            return RowKind.CHARGE.value, ""
        if self._charges.takes_in_line(row, cells, label, self._headings):
            return RowKind.CHARGE.value, ""
        # First, because it settles nearly every row of a long list and costs next to nothing.
        if self._has_board(cells, label):
            return self._means.told(row, cells, label)
        kind = kind_of_row(label.text)
        if kind is RowKind.TERM and self._takes_freight(row, cells, label):
            return RowKind.CHARGE.value, ""
        if kind is RowKind.TERM and is_added_term(label.text, term_of_row(label.text), cells.values(), row.headings):
            kind = None
        if kind is not None:
            told = self._lookalikes.told(kind, label, cells)
            if told is not None:
                return "", told
            self._take(kind, row, cells, label)
            return kind.value, ""
        above = row.headings.own if row.headings is not None else ()
        named = named_below(label, row.headings)
        if named is not None and not self._may_be_board(cells, label):
            self._state_charge(row, cells, label, named)
            return RowKind.CHARGE.value, ""
        # 'Wet-strength (CUK only) | 30' among adders is no board beside those at a thousand.
        charged = any(heads_charges(words.text) for words in above) and not self._may_be_board(cells, label)
        return (RowKind.CHARGE.value if charged else ""), ""

    def _takes_freight(self, row: BodyRow, cells: dict[int, Cell], label: Cell) -> bool:
        """'Fracht frei Haus | 37.5' is charged below a line that adds it; elsewhere prices may bear it already."""
        freight = freight_to_somewhere(label)
        if freight is None or not any(is_figure(cells[index]) for index in self._priced if index in cells):
            return False
        if line_above(row.headings):
            self._state_charge(row, cells, label, freight)
        else:
            self.charges.append(Said(freight, at(label), said_in(cells, label)))
        return True

    def _may_be_board(self, cells: dict[int, Cell], label: Cell) -> bool:
        far = self._neighbours.far_below
        return self._has_board(cells, label) or (names_board(label.text) and not far(cells, self._measured))

    def _take(self, kind: RowKind, row: BodyRow, cells: dict[int, Cell], label: Cell) -> None:
        """What a row says that is no offer, for the rows that are."""
        if kind is RowKind.CHARGE:
            self._state_charge(row, cells, label)
        elif kind is RowKind.TERM:
            self._take_terms(term_of_row(label.text), row, cells, label)

    def _take_terms(self, role: Role | None, row: BodyRow, cells: dict[int, Cell], label: Cell) -> None:
        """'Lead time | 15 days | 4 weeks' gives each price column its own; one beside the label is every column's."""
        cells = cells | merged_over(self._table.view, row.index, self._offered - cells.keys())
        figures = {index: cells[index] for index in self._priced if index in cells}
        if role is Role.STOCK and any(map(is_figure, figures.values())):
            return  # 'In stock, tons | 30 | 0 | 20': how much of each is there, and of some nothing.
        unit = lead_unit(label.text)
        leads = {index: (cell, unit) for index, cell in figures.items() if any(map(str.isalnum, cell.text))}
        ways = (freight_by_column, terms_by_column, terms_alike)
        pieces = next((told for tells in ways if (told := tells(label, cells, self._offered))), ())
        # 'Delivery | FOB mill | delivered' tells at whose freight.
        freight = any(find_delivery(piece.text) for piece in pieces)
        role = Role.DELIVERY_TERMS if role is Role.LEAD_TIME and freight else role
        several = role is Role.LEAD_TIME and len(figures) > 1
        self._state_terms(role, TermRow(self._words(row, cells, label), pieces, leads if several else None))

    def _state_terms(self, role: Role | None, said: TermRow) -> None:
        self._terms.take(role, said, self._headings)

    def _words(self, row: BodyRow, cells: dict[int, Cell], label: Cell) -> Words:
        return Words(self._table.view.sheet, row.index, label, said_in(cells, label))

    def _state_charge(
        self, row: BodyRow, cells: dict[int, Cell], label: Cell, named: ChargeWords | None = None
    ) -> None:
        if pieces := freight_by_column(label, cells, self._offered):
            self._state_terms(Role.FREIGHT, TermRow(self._words(row, cells, label), pieces))
        else:
            self._charges.take(row, cells, label, self._headings, named)

    def _has_board(self, cells: dict[int, Cell], label: Cell) -> bool:
        """A caliper, a weight or a grade of its own beside the label; 'per short ton' beside a charge is none, nor are
        the units of a row below the heads."""
        own = (cells[index] for index in self._measures if index in cells and cells[index] is not label)
        return any(not isinstance(cell.value, str) or not _is_unit(cell.text, label.text) for cell in own)

    def _unlabelled(self, row: BodyRow, cells: dict[int, Cell]) -> str:
        """Bare figures under a gap, with no word and no measure of board, or without a gap that sum up those above:
        sums and the like. '120,000 | Goods total | 58,077' has its label where others have their prices."""
        board = self._columns.of(*BOARD)
        if not board or any(column.index in cells for column in board):
            return ""
        if self._means.sums_up_the_quantities(row, cells, self._priced):
            return RowKind.TOTAL.value
        return "figures without a board" if row.after_gap else ""


def _is_unit(text: str, label: str) -> bool:
    return says_unit_of_charge(text, label) or heads_measures(text)

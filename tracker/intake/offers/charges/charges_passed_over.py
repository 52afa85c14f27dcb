"""Charges in tables of their own that no rule read: the cost with them is not known.

'Charge | USD/ST' over 'Energy surcharge | 25' is passed over as holding no board; without it a delivered price would
look like all of the cost.
"""

from collections.abc import Iterable, Iterator, Sequence

from tracker.intake.columns.column import Columns
from tracker.intake.grid import Cell
from tracker.intake.offers.charges.row_charges import has_figure
from tracker.intake.offers.charges.surcharges_listed import CHARGES, lists_surcharges
from tracker.intake.offers.rows.pass_over import NOTHING_OFFERED
from tracker.intake.offers.rows.row_labels import RowKind, charge_of_label, names_board
from tracker.intake.offers.sheet import ReadSheet, ReadTable
from tracker.intake.tables.table import Words
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.freight.charge_names import ChargeKind
from tracker.intake.values.freight.charges import ChargeWords
from tracker.intake.values.heads.roles import ON_TOP
from tracker.intake.words.lists import joined
from tracker.trade.offer import PassedOver

Named = tuple[Words, ChargeWords]


def charges_passed_over(sheets: Sequence[ReadSheet], passed: Iterable[PassedOver]) -> Iterator[Named]:
    """The charges that such tables name beside a figure, also where each row was passed over by itself; not those that
    a buyer may do without, nor freight, without which a price is not taken to be delivered."""
    rows = {(one.sheet, row) for one in passed if one.why == RowKind.CHARGE.value for row in _rows_of(one)}
    for sheet in sheets:
        for read in sheet.tables:
            in_full = read.passed_over == CHARGES and not read.told
            listed = in_full and lists_surcharges(read)
            # The charges in a row below boards are read with them.
            if in_full or all((sheet.name, row.index) in rows for row in read.table.rows):
                for row in read.table.rows:
                    yield from _labelled(read.table.view.rows[row.index], sheet.name, listed=listed)
            if read.passed_over == NOTHING_OFFERED:
                yield from _headed(read, read.columns, sheet.name)


def _rows_of(passed: PassedOver) -> range:
    first, _, last = passed.rows.partition("-")
    return range(int(first) - 1, int(last or first)) if first.isdigit() else range(0)


def _labelled(cells: dict[int, Cell], sheet: str, *, listed: bool) -> Iterator[Named]:
    """`listed`: whatever the row names is a surcharge: 'Schmalrollen unter 600 mm | 40'."""
    label, *others = cells.values()
    charge = charge_of_label(label.text)
    if listed and charge is None and not names_board(label.text):
        charge = ChargeWords(ChargeKind.OTHER, label.text.strip())
    if charge is not None and any(map(has_figure, others)) and _is_borne(charge, label):
        yield Words(sheet, label.row, label, label.text), charge


def _headed(read: ReadTable, columns: Columns, sheet: str) -> Iterator[Named]:
    for column in columns.of(*ON_TOP):
        charge = charge_header(column.text)
        first = next((cell for cell in read.cells(column) if has_figure(cell)), None)
        if charge is not None and first is not None and _is_borne(charge, first):
            yield Words(sheet, first.row, first, f"{column.text}: {first.text}"), charge


def _is_borne(charge: ChargeWords, said: Cell) -> bool:
    freed = joined("relieved", "optional", "fees_of_dealings", "tax").find(f"{charge.label} {said.text}")
    return charge.kind not in (ChargeKind.FREIGHT, ChargeKind.SHEETING) and not freed

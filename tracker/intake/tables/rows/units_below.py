"""What prices are per, or whether they are delivered, in a row of its own right below each: '60' over 'per cwt'.

Such a row stands where a heading for the next prices would. It belongs to the price above it where such rows end every
run of prices and none stands above the first, for a heading has prices below it.
"""

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import as_formatted, is_figure
from tracker.intake.tables.view import View
from tracker.intake.values.prices.money import PriceText, price_text

_FEWEST = 2
_LONGEST = 30


def with_units_below(view: View) -> View:
    """The view with each such line behind its price, and gone from the row below."""
    if view.passing:
        return view
    # Nearly every row has a number, which tells sooner than words do that it is none of these.
    worded = (row for row in view.order if not any(isinstance(one.value, Decimal) for one in view.rows[row].values()))
    units = [row for row in worded if all(map(_kind, view.rows[row].values()))]
    lines = [row for row in units if _is_below_prices(view, row)]
    told = [row for row in lines if all(_end_their_runs(view, column, units) for column in view.rows[row])]
    if len(told) < _FEWEST or len({_kind(cell) for row in told for cell in view.rows[row].values()}) > 1:
        return view
    joined = {row - 1: {**view.rows[row - 1], **dict(_joined(view, row))} for row in told}
    rows = {row: joined.get(row, view.rows[row]) for row in view.order if row not in told}
    return replace(view, rows=rows, joined_rows=view.joined_rows | frozenset(told))


def _is_below_prices(view: View, row: int) -> bool:
    """Whether each cell of such a row stands right below a price that names nothing of the kind, of some board."""
    cells, above = view.rows[row], view.rows.get(row - 1, {})
    return cells.keys() < above.keys() and all(_is_bare_price(above[column]) for column in cells)


def _kind(cell: Cell) -> str:
    """Of what a text speaks that would be understood behind any price, and with nothing else; '' for no such text."""
    said = _read(f"1 {cell.text.strip()}") if isinstance(cell.value, str) and len(cell.text) <= _LONGEST else None
    if said is None or is_figure(cell) or (said.basis is not None) == (said.delivered is not None):
        return ""
    return "unit" if said.basis is not None else "delivery"


def _is_bare_price(cell: Cell) -> bool:
    said = _read(cell.text)
    return is_figure(cell) or (said is not None and said.basis is None and said.delivered is None)


def _read(text: str) -> PriceText | None:
    """The text of a price of which nothing is left unread."""
    said = price_text(text)
    return said if said is not None and said.amounts and not said.rest else None


def _end_their_runs(view: View, column: int, units: list[int]) -> bool:
    """Whether every run of prices and such lines in a column begins with a price, and those with lines end with one."""
    runs = [run for run in _runs(view, column, units) if not set(run).isdisjoint(units)]
    return all(run[0] not in units and run[-1] in units for run in runs)


def _runs(view: View, column: int, units: list[int]) -> Iterator[list[int]]:
    """Rows with a price in the column, and such lines, with nothing else between them."""
    run: list[int] = []
    for row in view.order:
        cell = view.rows[row].get(column)
        if cell is not None and (row in units or _is_bare_price(cell)):
            run.append(row)
        elif run:
            yield run
            run = []
    if run:
        yield run


def _joined(view: View, row: int) -> Iterator[tuple[int, Cell]]:
    for column, cell in view.rows[row].items():
        price = view.rows[row - 1][column]
        text = f"{as_formatted(price)} {cell.text.strip()}"
        yield column, price._replace(value=text, text=text, number_format="General")

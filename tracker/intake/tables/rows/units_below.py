"""What is said of each price alone in a row of its own right below it: '60' over 'per cwt', '1200' over 'min. 5 t'.

A unit, a currency, at whose freight, a smallest order. Such a row stands where a heading for the next prices would. It
belongs to the price above it where such rows end every run of prices and none stands above the first, for a heading has
prices below it.
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from decimal import Decimal
from functools import reduce

from tracker.intake.grid import Cell
from tracker.intake.tables.figures import as_formatted, is_figure
from tracker.intake.tables.rows.lines_below import holds_measures
from tracker.intake.tables.view import View
from tracker.intake.values.prices.money import PriceText, price_text
from tracker.intake.values.prices.price_terms import price_and_terms

_FEWEST = 2
_LONGEST = 40
_Kinds = frozenset[str]


def with_units_below(view: View) -> View:
    """The view with such lines behind their price, and gone from the rows below."""
    if view.passing:
        return view
    # Nearly every row has a number, which tells sooner than words do that it is none of these.
    worded = (row for row in view.order if not any(isinstance(one.value, Decimal) for one in view.rows[row].values()))
    kinds = {row: found for row in worded if (found := _kinds_in(view.rows[row]))}
    lines = [row for row in kinds if _is_below_prices(view, row, kinds)]
    ended = {column for column in _columns(view, lines) if _end_their_runs(view, column, kinds)}
    ended = {column for column in ended if not _is_measured(view, column)}
    of_boards: dict[int, list[int]] = {}
    for row in lines:
        if view.rows[row].keys() <= ended:
            of_boards.setdefault(_board_above(row, kinds), []).append(row)
    told = [frozenset[str]().union(*(kinds[row] for row in rows)) for rows in of_boards.values()]
    if len(told) < _FEWEST or not reduce(frozenset.__and__, told):
        return view
    joined = {board: view.rows[board] | dict(_joined(view, board, rows)) for board, rows in of_boards.items()}
    gone = frozenset(row for rows in of_boards.values() for row in rows)
    rows = {row: joined.get(row, view.rows[row]) for row in view.order if row not in gone}
    return replace(view, rows=rows, joined_rows=view.joined_rows | gone)


def _columns(view: View, lines: list[int]) -> set[int]:
    return {column for row in lines for column in view.rows[row]}


def _board_above(row: int, kinds: Mapping[int, _Kinds]) -> int:
    """The row over such a line, or over several of them."""
    while row in kinds:
        row -= 1
    return row


def _is_below_prices(view: View, row: int, kinds: Mapping[int, _Kinds]) -> bool:
    """Whether each cell of such a row stands below a price, of some board, that names nothing of the kind; nor does a
    line between them."""
    board = _board_above(row, kinds)
    cells, above = view.rows[row], view.rows.get(board, {})
    told = frozenset[str]().union(*(kinds[between] for between in range(board + 1, row)))
    if not (cells.keys() < above.keys() and told.isdisjoint(kinds[row])):
        return False
    return all(_is_bare_price(above[column], kinds[row]) for column in cells)


def _kinds_in(cells: dict[int, Cell]) -> _Kinds:
    """Of what a row speaks, the same in all its cells; none for another row."""
    first, *others = (_kinds(cell) for cell in cells.values())
    return first if all(other == first for other in others) else frozenset()


def _kinds(cell: Cell) -> _Kinds:
    """Of what a text speaks that would be understood behind any price, and with nothing else."""
    text = cell.text.strip()
    if not isinstance(cell.value, str) or len(text) > _LONGEST or is_figure(cell):
        return frozenset()
    if (said := _read(f"1 {text}")) is not None:
        return _told(said)
    terms = price_and_terms(_as_terms("1", text))
    return frozenset(terms.kinds) if terms is not None else frozenset()


def _told(said: PriceText) -> _Kinds:
    told = {"unit": said.basis, "currency": said.currency, "delivery": said.delivered}
    return frozenset(kind for kind, value in told.items() if value is not None)


def _is_bare_price(cell: Cell, kinds: _Kinds) -> bool:
    said = _read(cell.text)
    return is_figure(cell) or (said is not None and kinds.isdisjoint(_told(said)))


def _read(text: str) -> PriceText | None:
    """The text of a price of which nothing is left unread."""
    said = price_text(text)
    return said if said is not None and said.amounts and not (said.rest or said.is_range) else None


def _end_their_runs(view: View, column: int, kinds: Mapping[int, _Kinds]) -> bool:
    """Whether every run of prices and such lines in a column begins with a price, and those with lines end with one."""
    runs = [run for run in _runs(view, column, kinds) if not kinds.keys().isdisjoint(run)]
    return all(run[0] not in kinds and run[-1] in kinds for run in runs)


def _runs(view: View, column: int, kinds: Mapping[int, _Kinds]) -> Iterator[list[int]]:
    """Rows with a price in the column, and such lines, with nothing else between them."""
    run: list[int] = []
    for row in view.order:
        cell = view.rows[row].get(column)
        if cell is not None and (row in kinds or _is_bare_price(cell, frozenset())):
            run.append(row)
        elif run:
            yield run
            run = []
    if run:
        yield run


def _is_measured(view: View, column: int) -> bool:
    """Whether a head says that the column's figures are calipers: 'Lead time 4 weeks' below '18' is none's unit."""
    cells = (view.rows[row][column] for row in view.order if column in view.rows[row])
    first = next((cell for cell in cells if is_figure(cell)), None)
    return first is not None and holds_measures(view, first)


def _joined(view: View, board: int, lines: list[int]) -> Iterator[tuple[int, Cell]]:
    """The prices of a board, each with what is said below it."""
    for column in _columns(view, lines):
        price = view.rows[board][column]
        said = [view.rows[row][column].text.strip() for row in lines if column in view.rows[row]]
        units = [text for text in said if _read(f"1 {text}") is not None]
        terms = "; ".join(text for text in said if text not in units)
        behind = " ".join((as_formatted(price), *units))
        text = _as_terms(behind, terms) if terms else behind
        yield column, price._replace(value=text, text=text, number_format="General")


def _as_terms(price: str, said: str) -> str:
    """Terms are told from a price without money or unit by a bracket."""
    return f"{price} ({said.strip('()')})"

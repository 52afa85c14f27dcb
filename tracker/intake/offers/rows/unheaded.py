"""Sheets with rows of figures under no heads that are understood: whether they are prices a person must say."""

from collections import Counter
from collections.abc import Iterator, Mapping

from tracker.intake.grid import Cell
from tracker.intake.offers.draft import Draft
from tracker.intake.tables.figures import figure_of
from tracker.intake.tables.view import View
from tracker.intake.values.boards.caliper import bare_caliper, find_calipers
from tracker.intake.values.boards.grade import find_grade, names_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases
from tracker.trade.offer import NoteCode

_Cells = Mapping[int, Cell]
_FEWEST = 2
_LOOKED_AT = 40
"""Rows from the top that may tell what the sheet is about."""
_LEAST_PRICE = 20
"""Less than this no board costs by the ton or the 1,000 ft²; common practice, no source."""


def unheaded_drafts(view: View, *, beside_offers: bool = False) -> Iterator[Draft]:
    """One held line a row of a list that nothing heads, at its last figure, all asked about in one question.

    Only of rows alike in shape that may be board: something in them names a board or price, or they hold a figure that
    can be a caliper beside a larger one. One figure is enough behind words that tell a board's grade and measure, and
    two rows that name grades need not be alike, as those of a table whose heads are bare figures. Nor do rows need
    words where the sheet speaks of prices or names a grade. `beside_offers`: another sheet offers something, and only
    rows that name grades are asked about.
    """
    bare = _tells_of_prices(view) and not beside_offers
    shapes = {row: shape for row in view.order if (shape := _shape(view.rows[row], bare=bare)) is not None}
    counts = Counter(shapes.values())
    boards = {row for row in shapes if _prices_a_grade(view.rows[row])}
    for row, shape in shapes.items():
        described = len(shape[1]) == 1
        named = row in boards and len(boards) >= _FEWEST
        alike = counts[shape] >= _FEWEST and not beside_offers
        if described or named or (alike and _may_be_board(view.rows[row])):
            yield _asked(view, _likeliest(view.rows[row], shape[1]))


def _tells_of_prices(view: View) -> bool:
    texts = [cell.text for row in view.order[:_LOOKED_AT] for cell in view.rows[row].values()]
    said = any(isinstance(one, SaysCurrency | SaysBasis) for text in texts for one in statements(text))
    return said or any(phrases("price_words").find(text) or names_grade(text) for text in texts)


def _shape(cells: _Cells, *, bare: bool = False) -> tuple[tuple[int, ...], tuple[int, ...]] | None:
    """The columns of a row's words and of its figures; None where these are too few to be a board and its price."""
    figures = tuple(column for column, cell in sorted(cells.items()) if figure_of(cell) is not None)
    words = tuple(column for column, cell in sorted(cells.items()) if any(map(str.isalpha, cell.text)))
    enough = len(figures) >= _FEWEST or (len(figures) == 1 and _board_and_price(cells, cells[figures[0]]))
    return (words, figures) if (words or bare) and enough else None


def _prices_a_grade(cells: _Cells) -> bool:
    """'Solid bleached board C1S | 1290 | 1280': a grade by its name, and figures as high as prices."""
    named = any(names_grade(cell.text) for cell in cells.values() if isinstance(cell.value, str))
    figures = [figure for cell in cells.values() if (figure := figure_of(cell)) is not None]
    return named and bool(figures) and all(figure >= _LEAST_PRICE for figure in figures)


def _board_and_price(cells: _Cells, figured: Cell) -> bool:
    """'GC1 250 g/m² 400 µm' before a figure that may be its price, as a letter lists boards."""
    figure = figure_of(figured)
    told = [cell.text for cell in cells.values() if cell is not figured and isinstance(cell.value, str)]
    measured = any(find_grade(text) and (find_calipers(text) or find_weights(text)) for text in told)
    return measured and figure is not None and figure >= _LEAST_PRICE


def _likeliest(cells: _Cells, figures: tuple[int, ...]) -> Cell:
    """The figure right beside a currency or a unit, else the last one."""
    beside = (column for column in figures if any(_is_unit(cells.get(near)) for near in (column + 1, column - 1)))
    return cells[next(beside, figures[-1])]


def _is_unit(cell: Cell | None) -> bool:
    unit = price_unit(cell.text) if cell is not None and isinstance(cell.value, str) else None
    return unit is not None and unit.currency is not None


def _may_be_board(cells: _Cells) -> bool:
    texts = [cell.text for cell in cells.values() if isinstance(cell.value, str)]
    if any(find_grade(text) or find_calipers(text) or find_weights(text) for text in texts):
        return True
    if any(phrases("price_words").find(text) for text in texts):
        return True
    figures = [figure for cell in cells.values() if (figure := figure_of(cell)) is not None]
    largest = max(figures)
    return largest >= _LEAST_PRICE and any(bare_caliper(one) is not None and one < largest for one in figures)


def _asked(view: View, cell: Cell) -> Draft:
    draft = Draft(view.sheet, cell)
    where = f"The sheet “{view.sheet}”" if view.sheet else "The file"
    text = f"{where} has figures under no headings that are understood. If they are prices, mark its table by hand."
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, f"table:{view.sheet}", draft.where, text)
    return draft

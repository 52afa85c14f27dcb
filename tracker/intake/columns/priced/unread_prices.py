"""The last look at a table that names boards and seems to price none: figures that no head explains are asked about.

A list passed over in silence looks like one without offers. What a head does explain (a stock, a weight, a yield, a
price that held before, a charge) is left to it.
"""

from collections.abc import Mapping, Sequence
from decimal import Decimal
from itertools import pairwise

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.own_costs import names_own_cost
from tracker.intake.columns.priced.withheld import withheld_figures
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.columns.sizes.forms import form_alone
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of
from tracker.intake.tables.headers.periods import is_period
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.boards.grade import names_grade
from tracker.intake.values.figures.formats import number_format_currency
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency

_FEWEST = 2


def figures_in_doubt(
    columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]], titles: Sequence[Words]
) -> list[Column]:
    """Figures under heads that say something else, or that nothing explains, where nothing is a price."""
    return withheld_figures(columns, samples, titles) or unread_prices(columns, samples, titles)


def unread_prices(
    columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]], titles: Sequence[Words]
) -> list[Column]:
    """The columns that may hold the prices of a table of boards; () where heads say what all its figures are."""
    if not _tell_boards(columns, samples):
        return []
    titled = any(_says_what_prices_are_in(words.text) for words in titles)
    figured = [column for column in columns if mostly_priced(samples[column.index]) and not _set_aside(column)]
    return (
        [column for column in figured if _in_money(column, samples[column.index])]
        or [column for column in figured if _under_no_head(column, samples[column.index])]
        or [column for column in figured if _against_its_head(column, samples[column.index])]
        or [column for column in figured if _unexplained(column)]
        or [column for column in figured if titled and _names_a_form(column)]
    )


def _tell_boards(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Both measures of board stand in the table, or half the cells of a column name a grade or a measured board."""
    if {Role.CALIPER, Role.WEIGHT} <= {column.role for column in columns}:
        return True
    return any(_name_boards(samples[column.index]) for column in columns if column.role in (Role.PRODUCT, Role.GRADE))


def _name_boards(cells: Sequence[Cell]) -> bool:
    words = [cell for cell in cells if isinstance(cell.value, str)]
    named = [cell for cell in words if names_grade(cell.text) or names_measure(cell.text)]
    return bool(named) and 2 * len(named) >= len(cells)


def _set_aside(column: Column) -> bool:
    """Money that is no price to pay: before, on top, in all, or what the vendor pays himself."""
    said = column.role in _OTHER_MONEY and column.sure
    return said or is_period(column.text) or names_own_cost(column) or column.percent


_OTHER_MONEY = frozenset({
    Role.PREVIOUS_PRICE, Role.FREIGHT, Role.ENERGY, Role.SHEETING, Role.CHARGE, Role.DISCOUNT, Role.INDEX, Role.CHANGE,
    Role.MARGIN, Role.TOTAL, Role.PAYMENT,
})  # fmt: skip


def _in_money(column: Column, cells: Sequence[Cell]) -> bool:
    """A currency stands in the head or in the number format, whatever else the head says: 'Rolle, €'."""
    formats = sum(number_format_currency(cell.number_format) is not None for cell in cells)
    return bool(column.currencies) or 2 * formats > len(cells)


def _under_no_head(column: Column, cells: Sequence[Cell]) -> bool:
    """Figures that nothing stands over, and that do not number the rows."""
    figures = _figures(cells)
    numbers = len(figures) >= _FEWEST and all(after - one == 1 for one, after in pairwise(figures))
    return column.role is None and not column.heads and bool(figures) and not numbers


def _against_its_head(column: Column, cells: Sequence[Cell]) -> bool:
    """'Short tons per shipment' over order sizes is no time to wait: no board takes 500 days. What words alone can say
    (a vendor, terms) no figures do."""
    figures = _figures(cells)
    if column.role is Role.LEAD_TIME:
        # Nor does any wait 60.15 weeks.
        broken = sum(figure.quantize(_TENTH) != figure for figure in figures)
        return bool(figures) and (min(figures) >= _LONGER_THAN_ANY_WAIT or 2 * broken > len(figures))
    return column.role in _SAID_IN_WORDS and bool(column.heads) and bool(figures) and min(figures) >= _LEAST_PRICE


def _unexplained(column: Column) -> bool:
    """'Wexlo' over 59.40 right before the freight: taken for a charge as long as something else may be the price."""
    return column.role in ON_TOP and not column.sure


def _names_a_form(column: Column) -> bool:
    """'Rolle' and 'Bogen' below 'EUR/t': what board costs in that form, unless so many sheets are packed."""
    forms = {form_alone(head.text) for head in column.said}
    return "roll" in forms or ("sheet" in forms and column.role is not Role.PACKING)


def _says_what_prices_are_in(title: str) -> bool:
    return any(isinstance(said, SaysCurrency | SaysBasis) for said in statements(title))


_SAID_IN_WORDS = frozenset({Role.VENDOR, Role.DELIVERY_TERMS, Role.FORM, Role.REMARKS, Role.BASIS, Role.CURRENCY})
_TENTH = Decimal("0.1")
_LONGER_THAN_ANY_WAIT = Decimal(200)
_LEAST_PRICE = Decimal(20)
"""More days than board is made in, and the least that it costs by the ton or 1,000 ft²; common practice, no source."""


def _figures(cells: Sequence[Cell]) -> list[Decimal]:
    return [figure for cell in cells if (figure := figure_of(cell)) is not None]

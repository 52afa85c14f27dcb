"""Figures like prices under heads that say something else, in a table of boards where nothing else is a price.

'Rückseite weiß | Rückseite grau', 'Q1 2027 | Q2 2027' and 'MOQ 1 t | MOQ 5 t' may each stand over what boards cost:
whether they do is asked, because a list passed over in silence looks like one without offers.
"""

from collections.abc import Mapping, Sequence

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.against_heads import may_misname
from tracker.intake.columns.priced.in_force import old_and_new
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.grid import Cell
from tracker.intake.tables.figures import figure_of
from tracker.intake.tables.headers.periods import is_period
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import names_measure
from tracker.intake.values.freight.charge_heads import charge_header
from tracker.intake.values.heads.roles import ON_TOP, Role
from tracker.intake.values.notes.statements import Remark, says, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases

_MOST_TIMES = 4
"""More months or quarters beside each other are a history."""


def withheld_figures(
    columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]], titles: Sequence[Words]
) -> list[Column]:
    """The columns that may hold prices where measures describe the boards; () where there are none to ask about."""
    if not any(_describes_boards(column, samples[column.index]) for column in columns):
        return []
    titled = any(_of_money(words.text) for words in titles)
    offering = titled and not any(_of_something_else(words.text) for words in titles)
    # By its cells alone '890 / 915' may be a sheet.
    ages = [column for column in columns if not column.sure and old_and_new(column) and samples[column.index]]
    if ages:
        return ages
    times = [column for column in columns if _heads_times(column) and mostly_priced(samples[column.index])]
    orders = [column for column in columns if column.role is Role.MINIMUM and mostly_priced(samples[column.index])]
    others = [column for column in columns if column.role is Role.PROPERTY and mostly_priced(samples[column.index])]
    # 'Class A | Class B' and 'Quality 1 | Quality 2' would name boards over words.
    named = [column for column in columns if _may_name_boards(column) and mostly_priced(samples[column.index])]
    for found in (times if len(times) <= _MOST_TIMES else [], orders, others if titled else [], named):
        if _alike(found, samples) or (titled and found is times and _nothing_to_compare(found, samples)):
            return found
    return _misnamed(columns, samples, titled=offering)


def _describes_boards(column: Column, cells: Sequence[Cell]) -> bool:
    if column.role in (Role.WEIGHT, Role.CALIPER):
        return True
    return column.role in _NAMES_BOARDS and any(names_measure(cell.text) for cell in cells)


def _may_name_boards(column: Column) -> bool:
    """By its head; over figures it may be taken for a list's own numbers."""
    by_head = any(head.strength(role) > 0 for head in column.said for role in _NAMES_BOARDS)
    return column.role in _NAMES_BOARDS or (column.role is Role.ITEM and by_head)


_NAMES_BOARDS = (Role.PRODUCT, Role.GRADE)


def _of_something_else(title: str) -> bool:
    """'Surcharges, EUR/t' and 'Market index (US$/ST)' name what stands below them."""
    return Remark.INDEX in says(title) or charge_header(title) is not None


def _misnamed(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]], *, titled: bool) -> list[Column]:
    """'Tier 1 | Tier 2', or below a title that speaks of prices the one column of figures as high as these."""
    heads = [column for column in columns if may_misname(column) or (titled and column.role is Role.INDEX)]
    found = [column for column in heads if mostly_priced(samples[column.index])]
    if _alike(found, samples):
        return found
    dear = [column for column in found if _is_dear(column, samples[column.index])]
    alone = len(found) == 1 and (titled or all(column.role in _OF_MONEY for column in found))
    return dear if alone else []


_OF_MONEY = (*ON_TOP, Role.CHANGE)
"""What a head that names money may say of figures too high for it."""


def _is_dear(column: Column, cells: Sequence[Cell]) -> bool:
    """As high as a price by the ton, where the head says what may be put on one."""
    least = _DEARER_THAN_CHARGES if column.role in (*_OF_MONEY, Role.STOCK) else _LEAST_PRICE
    return all(least <= figure <= _MOST_PRICE for cell in cells if (figure := figure_of(cell)) is not None)


_LEAST_PRICE, _DEARER_THAN_CHARGES, _MOST_PRICE = 20, 300, 20_000
"""What board costs by the ton or the 1,000 ft², what no charge does, and what is more than it costs; common practice,
no source."""


def _heads_times(column: Column) -> bool:
    return column.role is None and bool(column.heads) and is_period(column.text)


def _of_money(title: str) -> bool:
    said = any(isinstance(one, SaysCurrency | SaysBasis) for one in statements(title))
    return said or bool(phrases("price_words").find(title))


def _alike(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> bool:
    """Several columns whose figures go with those of the first from row to row, as prices of one board do."""
    first = samples[columns[0].index] if columns else ()
    return len(columns) > 1 and all(close_by_row(samples[column.index], first) for column in columns[1:])


def _nothing_to_compare(columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]]) -> bool:
    """One column, or columns of one figure each: that these go together from row to row can't be seen."""
    return len(columns) == 1 or (bool(columns) and all(len(samples[column.index]) == 1 for column in columns))

"""Figures like prices under heads that say something else, in a table of boards where nothing else is a price.

'Rückseite weiß | Rückseite grau', 'Q1 2027 | Q2 2027' and 'MOQ 1 t | MOQ 5 t' may each stand over what boards cost:
whether they do is asked, because a list passed over in silence looks like one without offers.
"""

from collections.abc import Mapping, Sequence

from tracker.intake.columns.column import Column
from tracker.intake.columns.headed_figures import mostly_priced
from tracker.intake.columns.in_force import old_and_new
from tracker.intake.columns.unnamed import close_by_row
from tracker.intake.grid import Cell
from tracker.intake.tables.periods import is_period
from tracker.intake.tables.table import Words
from tracker.intake.values.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.roles import Role
from tracker.intake.values.statements import statements
from tracker.intake.words.lists import phrases

_MOST_TIMES = 4
"""More months or quarters beside each other are a history."""


def withheld_figures(
    columns: Sequence[Column], samples: Mapping[int, Sequence[Cell]], titles: Sequence[Words]
) -> list[Column]:
    """The columns that may hold prices where measures describe the boards; () where there are none to ask about."""
    if not any(column.role in (Role.WEIGHT, Role.CALIPER) for column in columns):
        return []
    titled = any(_of_money(words.text) for words in titles)
    # By its cells alone '890 / 915' may be a sheet.
    ages = [column for column in columns if not column.sure and old_and_new(column) and samples[column.index]]
    if ages:
        return ages
    times = [column for column in columns if _heads_times(column) and mostly_priced(samples[column.index])]
    orders = [column for column in columns if column.role is Role.MINIMUM and mostly_priced(samples[column.index])]
    others = [column for column in columns if column.role is Role.PROPERTY and mostly_priced(samples[column.index])]
    for found in (times if len(times) <= _MOST_TIMES else [], orders, others if titled else []):
        if _alike(found, samples) or (titled and found is times and _nothing_to_compare(found, samples)):
            return found
    return []


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

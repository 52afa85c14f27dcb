"""Prices in two columns that are the ends of one range: 'Low | High', 'Price from | Price to', 'von | bis'."""

import re
from collections.abc import Iterator, Mapping, Sequence
from itertools import product

from tracker.intake.columns.column import Column
from tracker.intake.columns.priced.own_costs import names_own_cost
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.columns.roles.headed_figures import mostly_priced
from tracker.intake.columns.sizes.order_sizes import order_size
from tracker.intake.grid import Cell
from tracker.intake.tables.headers.heads import PRICE_ROLES
from tracker.intake.values.heads.header import header
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.fold import fold
from tracker.intake.words.lists import phrases

_FEWEST_LETTERS = 3
"""A shorter word ('a', 'to', 'de') tells of a range only beside its other end."""
_PLAINLY = 0.85


def ranged_prices(
    columns: Sequence[Column], priced: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """The columns that hold the ends, or the middle, of ranges of prices and no price to pay.

    `priced`: the columns whose heads say price. Beside them 'min | max' and 'von | bis' are about something else.
    """
    said = {column: end for column in columns if column.heads and (end := _end(column)) is not None}
    own = [column for column, (_, rest) in said.items() if column in priced or not (rest or priced)]
    own = [column for column in own if mostly_priced(samples[column.index]) and not names_own_cost(column)]
    ends = {column for pair in _pairs(own, said, samples) for column in pair}
    alone = [column for column in own if (said[column][1] or _names_price(column)) and _plainly_said(column)]
    middle = [column for column in own if said[column][0] == "middle" and ends]
    return [column for column in columns if column in ends or column in alone or column in middle]


def _pairs(
    columns: Sequence[Column], said: Mapping[Column, tuple[str, str]], samples: Mapping[int, Sequence[Cell]]
) -> Iterator[tuple[Column, Column]]:
    """The lower end and the upper end under heads that differ in nothing else, whose figures go together row by row."""
    for low, high in product(columns, columns):
        (one, rest), (other, same) = said[low], said[high]
        alike = (one, other) == ("low", "high") and rest == same
        if alike and close_by_row(samples[high.index], samples[low.index], 1):
            yield low, high


def _end(column: Column) -> tuple[str, str] | None:
    """Which end of a range a head names, and what else it says: nothing, or that it is about a price."""
    text = column.text
    found = phrases("price_range").find(text)
    ends = {match.value for match in found} - {"range"}
    if len(ends) != 1 or find_dates(text) or order_size(column)[1] is not None:
        # 'Price up to 5 t' is a price.
        return None
    if any(text[match.end :].lstrip()[:1].isdigit() for match in found):
        # 'New price (from 10/1)' is one as of a day.
        return None
    for match in reversed(found):
        text = f"{text[: match.start]} {text[match.end :]}"
    rest = " ".join(re.sub(r"[().,;:/-]+(?=\s|$)", " ", text).split())
    if any(map(str.isalnum, rest)):
        roles = header(rest).roles
        if not roles or roles[0].role not in PRICE_ROLES or roles[0].strength < _PLAINLY:
            return None
    return ends.pop(), fold(rest)


def _names_price(column: Column) -> bool:
    """'Durchschnittspreis' says both in one word."""
    return bool(phrases("price_words").find(column.text))


def _plainly_said(column: Column) -> bool:
    """'Max. price' and 'Average price' alone are no price either; 'Price to' may go on elsewhere."""
    return any(
        match.value != "range" and match.end - match.start >= _FEWEST_LETTERS
        for match in phrases("price_range").find(column.text)
    )

"""Figures beside the prices of firms, under a head that has a name in it: 'Lakemont Fiber' right of 'Tarrow Mills' and
'Quenby Board Inc.'. Whatever else its words are taken for, what moves with the prices of others is one too."""

from collections.abc import Mapping, Sequence

from tracker.intake.columns.column import Column, vendor_in_head
from tracker.intake.columns.priced.unnamed import close_by_row
from tracker.intake.grid import Cell
from tracker.intake.values.firms.own_words import has_a_strange_word
from tracker.intake.values.heads.header import without_unit


def beside_firms(
    columns: Sequence[Column], prices: Sequence[Column], samples: Mapping[int, Sequence[Cell]]
) -> list[Column]:
    """The columns that may be such, of those that are no `prices` yet."""
    firms = [(price, row) for price in prices if (row := _row_of_firm(price)) is not None]
    return [
        column
        for column in (columns if firms else ())
        if column not in prices
        and any(
            _is_named_in(column, row) and close_by_row(samples[column.index], samples[price.index])
            for price, row in firms
        )
    ]


def _row_of_firm(price: Column) -> int | None:
    heads = zip(price.heads, price.said, strict=True)
    return next((cell.row for cell, head in heads if vendor_in_head(head) is not None), None)


def _is_named_in(column: Column, row: int) -> bool:
    heads = [head for cell, head in zip(column.heads, column.said, strict=True) if cell.row == row]
    names = [without_unit(head).strip(" /()[],") for head in heads]
    # 'Lakemont Coated' is written like a board, and is asked about.
    return any(name[:1].isupper() and not any(map(str.isdigit, name)) and has_a_strange_word(name) for name in names)

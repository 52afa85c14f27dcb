"""Columns of codes that a key explains under their own head: '1 | 2' below 'G', and 'G: 1 = solid bleached sulfate C1S,
2 = coated unbleached kraft'."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keyed_units import UNIT
from tracker.intake.tables.headers.keys import Keys, Told, explained_two_ways, heads_of, key_of
from tracker.intake.tables.rows.kinds_of_codes import Kind, counts_orders, kind_of, unit_alone
from tracker.intake.tables.rows.rows_joined import Cells
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.prices.units_of_codes import without_terms_of_the_last
from tracker.intake.words.fold import fold


@dataclass(frozen=True, slots=True)
class Explained:
    """What the codes of a column stand for, what kind of thing that is, and the texts that say so. `counted`: the
    column of quantities that they are the units of."""

    key: Mapping[str, str]
    kind: Kind
    sources: frozenset[Words]
    counted: int | None = None


def with_keyed_columns(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with what such codes stand for in their place: a grade, what prices are per, at whose freight they
    are, or what else holds for their rows. The key itself is then said of these rows alone. `elsewhere`: what sheets of
    words alone say."""
    if found.view.passing:
        return found
    keys = Keys(found, elsewhere)
    if not keys.labelled:
        return found
    told: set[Words] = set()
    tables = [_in_words(table, keys.of_table(table), told) for table in found.tables]
    if not told:
        return found
    return replace(found, tables=tuple(_without(table, told) for table in tables), texts=_kept(found.texts, told))


def _in_words(table: Table, entries: Sequence[Told], told: set[Words]) -> Table:
    """The table with its codes in words; the texts that explain them are added to `told`."""
    rows, columns = dict(table.view.rows), list(table.columns)
    for place, column in enumerate(table.columns):
        explained = explained_codes(table, place, entries)
        if explained is None:
            continue
        for row, cell in _down(table, column):
            said = explained.key.get(fold(cell.text).strip())
            if said is not None:
                rows[row] = _written(rows[row], cell, column, said, explained.counted)
        told |= explained.sources
        columns[place] = column if explained.counted is not None else _headed(column, explained.kind)
    return replace(table, columns=tuple(columns), view=replace(table.view, rows=rows))


def _written(cells: Mapping[int, Cell], code: Cell, column: HeadedColumn, said: str, counted: int | None) -> Cells:
    """A row with the words in place of the code; those of a quantity's unit stand behind the quantity."""
    if counted is None:
        return {**cells, column.index: code._replace(value=said, text=said, number_format="General")}
    amount = cells.get(counted)
    left = {index: cell for index, cell in cells.items() if index != column.index}
    if amount is None:
        return left
    text = f"{amount.text.strip()} {said}"
    return {**left, counted: amount._replace(value=text, text=text, number_format="General")}


def _headed(column: HeadedColumn, kind: Kind) -> HeadedColumn:
    *above, lowest = column.heads
    head = lowest if kind.head is None else lowest._replace(value=kind.head, text=kind.head)
    return replace(column, heads=(*above, head), named=column.called)


def explained_codes(table: Table, place: int, entries: Sequence[Told]) -> Explained | None:
    """What a key says of a column's codes, most of which it names, and all of one kind."""
    column = table.columns[place]
    heads = heads_of(column)
    own = [
        one._replace(said=one.said.rstrip(" .")) for one in entries if one.whole and one.label and one.label in heads
    ]
    # A code that is explained two ways may be either: what is said of it both ways is asked about.
    doubts = {code: _EITHER.join(said) for code, said in explained_two_ways(own).items()}
    key = key_of(own) | doubts
    cells = [cell for _, cell in _down(table, column)] if key else []
    known = sum(fold(cell.text).strip() in key for cell in cells)
    if not known or 2 * known <= len(cells):
        return None
    before = table.columns[place - 1] if place else None
    sources = frozenset(one.source for one in own if one.said in key.values() or one.code in doubts)
    if before is not None and counts_orders(before) and all(map(unit_alone, key.values())):
        return Explained(key, Kind(None), sources, before.index)
    kind = kind_of(column, key_of(own) or doubts)
    if kind is None:
        return None
    key = without_terms_of_the_last(key) if kind.head == UNIT else key
    return Explained({code: kind.doubt or said for code, said in key.items()}, kind, sources)


_EITHER = " ≠ "
"""Not the sign of a range: '3 weeks / 5 weeks' would be one."""


def _down(table: Table, column: HeadedColumn) -> Sequence[tuple[int, Cell]]:
    return list(table.view.down(column.index, (row.index for row in table.rows)))


def _without(table: Table, told: set[Words]) -> Table:
    return replace(table, titles=_kept(table.titles, told), notes=_kept(table.notes, told))


def _kept(texts: Sequence[Words], told: set[Words]) -> tuple[Words, ...]:
    return tuple(words for words in texts if words not in told)

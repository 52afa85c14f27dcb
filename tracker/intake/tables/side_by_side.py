"""Tables beside each other: what stands over each of them, in one row, is that table's alone."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from tracker.intake.tables.table import SheetTables, Table, Words
from tracker.intake.values.company import company_name
from tracker.intake.values.others_prices import Offering, title_offers
from tracker.intake.values.statements import statements

_FEWEST = 2


def with_own_titles(found: SheetTables) -> SheetTables:
    """The tables with what is said of each alone, taken from what holds for the sheet: 'USD per short ton, FOB mill'
    over one and 'EUR per tonne, DAP' over the one beside it, where a firm over each may stand as well."""
    texts = list(found.texts)
    for beside in _beside_each_other(found.tables):
        for row in _rows_above(beside, found.tables, texts):
            shares = _shares(beside, [words for words in texts if words.row == row])
            if not _say_alike(shares):
                continue
            for table, own in zip(beside, shares, strict=True):
                table.titles = (*own, *table.titles)
            texts = [words for words in texts if words.row != row]
    return found if len(texts) == len(found.texts) else replace(found, texts=tuple(texts))


def _beside_each_other(tables: Sequence[Table]) -> list[list[Table]]:
    """The tables that begin in one row, from the left."""
    by_row: dict[int, list[Table]] = {}
    for table in tables:
        by_row.setdefault(table.first_row, []).append(table)
    return [sorted(group, key=_left) for group in by_row.values() if len(group) >= _FEWEST]


def _left(table: Table) -> int:
    return min(column.index for column in table.columns)


def _rows_above(beside: Sequence[Table], tables: Iterable[Table], texts: Iterable[Words]) -> list[int]:
    """The rows of words over some tables, the lowest first, up to the table before them."""
    first = beside[0].first_row
    edge = max((table.last_row for table in tables if table.last_row < first), default=-1)
    return sorted({words.row for words in texts if edge < words.row < first}, reverse=True)


def _shares(beside: Sequence[Table], said: Sequence[Words]) -> list[tuple[Words, ...]]:
    """What stands over each table, from its first column up to that of the next."""
    starts = [0, *map(_left, beside[1:])]
    spans = zip(starts, [*starts[1:], None], strict=True)
    return [
        tuple(words for words in said if start <= words.cell.column and (end is None or words.cell.column < end))
        for start, end in spans
    ]


def _say_alike(shares: Sequence[Sequence[Words]]) -> bool:
    """Whether each has a firm of its own, or says something of the same kind; 'Quote 4711' beside a date holds for
    all. 'Our offer' and 'Competitors' head one table each."""
    named = [{company_name(words.text) for words in own} - {None} for own in shares]
    if all(named) and len(set().union(*named)) == len(shares):
        return True
    if all(shares) and any(title_offers(own[0].text) is not Offering.SURELY for own in shares):
        return True
    kinds = [{type(said) for words in own for said in statements(words.text)} for own in shares]
    return bool(set.intersection(*kinds))

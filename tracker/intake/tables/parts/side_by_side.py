"""Tables beside each other: what stands over each of them, in one row, is that table's alone."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from tracker.intake.tables.table import SheetTables, Table, Words
from tracker.intake.values.changes.others_prices import Offering, title_offers
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.notes.statements import statements

_FEWEST = 2


def with_own_titles(found: SheetTables) -> SheetTables:
    """The tables with what is said of each alone, taken from what holds for the sheet: 'USD per short ton, FOB mill'
    over one and 'EUR per tonne, DAP' over the one beside it, where a firm over each may stand as well."""
    texts = list(found.texts)
    for beside in _beside_each_other(found.tables):
        rows = _rows_above(beside, found.tables, texts)
        shares = {row: _shares(beside, [words for words in texts if words.row == row]) for row in rows}
        for row in _rows_apart(shares):
            for table, own in zip(beside, shares[row], strict=True):
                table.titles = (*own, *table.titles)
            texts = [words for words in texts if words.row != row]
        if _name_firms([table.titles for table in beside]):
            texts = _with_own_notes(beside, found.tables, texts)
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


def _with_own_notes(beside: Sequence[Table], tables: Iterable[Table], texts: Sequence[Words]) -> list[Words]:
    """Takes what stands below each firm's table for that one's notes; a row below the first one alone holds for all."""
    last = max(table.last_row for table in beside)
    edge = min((table.first_row for table in tables if table.first_row > last), default=None)
    below = [words for words in texts if words.row > last and (edge is None or words.row < edge)]
    taken: set[Words] = set()
    for row in sorted({words.row for words in below}):
        shares = _shares(beside, [words for words in below if words.row == row])
        for table, own in zip(beside, shares, strict=True):
            if any(shares[1:]):
                table.notes = (*table.notes, *own)
                taken.update(own)
    return [words for words in texts if words not in taken]


def _shares(beside: Sequence[Table], said: Sequence[Words]) -> list[tuple[Words, ...]]:
    """What stands over each table, from its first column up to that of the next."""
    starts = [0, *map(_left, beside[1:])]
    spans = zip(starts, [*starts[1:], None], strict=True)
    return [
        tuple(words for words in said if start <= words.cell.column and (end is None or words.cell.column < end))
        for start, end in spans
    ]


def _rows_apart(shares: Mapping[int, Sequence[Sequence[Words]]]) -> list[int]:
    """The rows of words that are about one table each, the lowest first: those that say alike, and below them those
    with words for every table; below a firm over each all that follow, where one may say what the other does not."""
    apart: list[int] = []
    of_firms: int | None = None
    for row in sorted(shares):
        own = shares[row]
        below_firms = of_firms is not None and row == of_firms + 1
        if _say_alike(own) or (apart and all(own)) or below_firms:
            apart.append(row)
            of_firms = row if below_firms or _name_firms(own) else of_firms
    return apart[::-1]


def _name_firms(shares: Sequence[Sequence[Words]]) -> bool:
    """Whether a firm of its own stands over each table."""
    named = [{company_name(words.text) for words in own} - {None} for own in shares]
    return all(named) and len(set().union(*named)) == len(shares)


def _say_alike(shares: Sequence[Sequence[Words]]) -> bool:
    """Whether each has a firm of its own, or says something of the same kind; 'Quote 4711' beside a date holds for
    all. 'Our offer' and 'Competitors' head one table each."""
    if _name_firms(shares):
        return True
    if all(shares) and any(title_offers(own[0].text) is not Offering.SURELY for own in shares):
        return True
    kinds = [{type(said) for words in own for said in statements(words.text)} for own in shares]
    return bool(set.intersection(*kinds))

"""Units that a letter behind a price stands for: '1,226 s', and 's = US$ per short ton' below."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keys import around, entries, key_of
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.notes.note_signs import LETTER
from tracker.intake.values.prices.units_of_codes import unit_led_to
from tracker.intake.words.fold import fold

_LETTERED = re.compile(
    r"(?P<figure>[^\d\s]{0,3}\s*\d[\d.,' \u00a0\u202f]*?)\s*"
    r"(?:\((?P<inside>[^\W\d_]{1,2})\)|(?P<code>[^\W\d_]{1,2}))\s*"
)


def with_keyed_prices(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the unit in place of such letters. What explains a letter behind prices is said of these alone:
    units are taken from the texts, and of what else it says the letter is made a sign. `elsewhere`: what sheets of
    words alone say."""
    if found.view.passing:
        return found
    key = key_of(entries([*around(found), *elsewhere]))
    if not key:
        return found
    units = {code: unit for code, said in key.items() if (unit := _unit(said)) is not None}
    carried = {
        code for table in found.tables for column in table.columns for code in _codes(table, column)
    } & key.keys()
    if not carried:
        return found
    tables = tuple(_with_signs(_in_words(table, units), carried) for table in found.tables)
    return replace(found, tables=tables, texts=_signed(found.texts, carried))


def _unit(said: str) -> str | None:
    return unit_led_to(said.rstrip(". "))


def _in_words(table: Table, units: Mapping[str, str]) -> Table:
    rows, keyed = dict(table.view.rows), set(table.keyed)
    for column in table.columns:
        for row, cell in _down(table, column):
            if _code(cell) in units:
                rows[row] = rows[row] | {column.index: _with_unit(cell, units[_code(cell)])}
                keyed.add((cell.row, cell.column))
    return replace(table, view=replace(table.view, rows=rows), keyed=frozenset(keyed)) if keyed else table


def _down(table: Table, column: HeadedColumn) -> Iterator[tuple[int, Cell]]:
    return table.view.down(column.index, (row.index for row in table.rows))


def _codes(table: Table, column: HeadedColumn) -> set[str]:
    return {_code(cell) for _, cell in _down(table, column)}


def _code(cell: Cell) -> str:
    """The letter behind a figure, folded, also where its number format shows it; '' for none."""
    if isinstance(cell.value, Decimal):
        shown = format_words(cell.number_format) if cell.number_format not in ("", "General") else ""
        return fold(shown) if shown.isalpha() and len(shown) <= _LONGEST else ""
    match = _LETTERED.fullmatch(cell.text) if isinstance(cell.value, str) else None
    return "" if match is None else fold(match["inside"] or match["code"])


_LONGEST = 2


def _with_unit(cell: Cell, unit: str) -> Cell:
    if isinstance(cell.value, Decimal):
        return cell._replace(number_format=f'0 "{unit}"')
    match = _LETTERED.fullmatch(cell.text)
    text = cell.text if match is None else f"{match['figure'].strip()} {unit}"
    return cell._replace(value=text, text=text)


def _with_signs(table: Table, carried: set[str]) -> Table:
    return replace(table, titles=_signed(table.titles, carried), notes=_signed(table.notes, carried))


def _signed(texts: Sequence[Words], carried: set[str]) -> tuple[Words, ...]:
    """The texts without those that explain units by such letters and do nothing else; 'a = lead time 6 weeks' as a
    footnote."""
    return tuple(made for words in texts if (made := _as_a_footnote(words, carried)) is not None)


def _as_a_footnote(words: Words, carried: set[str]) -> Words | None:
    told = list(entries([words]))
    if not told or not {code for code, _ in told} <= carried:
        return words
    rest = words.text
    for code, said in told:
        rest = re.sub(rf"\(?{re.escape(code)}\)?\W*{re.escape(said)}", " ", rest, count=1, flags=re.IGNORECASE)
    beside = any(map(str.isalnum, rest))
    if all(_unit(said) is not None for _, said in told):
        # 'All prices in US dollars; f = per 1,000 sq ft' goes on saying the first.
        return replace(words, text=rest.strip(" ,;:")) if beside else None
    code, said = told[0]
    return words if beside or len(told) > 1 else replace(words, text=f"[{LETTER}{code.upper()}] {said}")

"""Letters behind prices that a key explains: '1,226 s', and 's = US$ per short ton' or 's = minimum 20,000 lb'."""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.headers.keys import Keys, Told, entries, for_column, key_of
from tracker.intake.tables.table import HeadedColumn, SheetTables, Table, Words
from tracker.intake.values.boards.caliper import caliper_unit
from tracker.intake.values.boards.weight import weight_units
from tracker.intake.values.figures.formats import format_words
from tracker.intake.values.heads.header import header
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import MONEY, Role
from tracker.intake.values.notes.note_signs import LETTER
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.currency import find_currencies
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.prices.units_of_codes import unit_led_to, without_terms_of_the_last
from tracker.intake.words.fold import fold

_LONGEST = 2
_LETTERED = re.compile(
    r"(?P<figure>[^\d\s]{0,3}\s*\d[\d.,' \u00a0\u202f]*?)\s*"
    rf"(?:\((?P<inside>[^\W\d_]{{1,{_LONGEST}}})\)|(?P<code>[^\W\d_]{{1,{_LONGEST}}}))\s*"
)


def with_keyed_prices(found: SheetTables, elsewhere: Sequence[Words] = ()) -> SheetTables:
    """The tables with the unit in place of such letters, with a sign in place of one that stands for other terms, and
    with all that the key says where that is neither. What explains a letter behind prices is said of these alone: units
    are taken from the texts, and what else a letter says is made a footnote. `elsewhere`: what sheets of words alone
    say."""
    if found.view.passing:
        return found
    keys = Keys(found, elsewhere)
    if not keys:
        return found
    carried: set[str] = set()
    tables = [_in_words(table, keys.of_table(table), carried) for table in found.tables]
    if not carried:
        return found
    tables = [_with_signs(table, carried) for table in tables]
    return replace(found, tables=tuple(tables), texts=_signed(found.texts, carried))


def _in_words(table: Table, told: Sequence[Told], carried: set[str]) -> Table:
    """The table with its letters in words or as signs; the letters are added to `carried`."""
    rows, keyed = dict(table.view.rows), set(table.keyed)
    priced = [column.index for column in table.columns if told and _reader_of(column) is _unit]
    for column in table.columns:
        reads = _reader_of(column)
        key = key_of(for_column(told, column)) if reads is not None else {}
        units = without_terms_of_the_last(key)
        for row, cell in _down(table, column) if key else ():
            code = _code(cell)
            if reads is None or code not in key:
                continue
            carried.add(code)
            unit = reads(units[code])
            if unit is not None:
                rows[row] = rows[row] | {column.index: _with_behind(cell, unit, f'0 "{unit}"')}
            elif reads is _unit and _is_amount(cell):
                # What the key says wins over any unit that the letter is elsewhere.
                terms = _terms(key[code], code if _says_of_all(table.view.rows[row], priced, code) else "")
                rows[row] = rows[row] | {column.index: _with_behind(cell, terms, f'0 "{terms}"')}
            if unit is not None and reads is _unit:
                keyed.add((cell.row, cell.column))
    return replace(table, view=replace(table.view, rows=rows), keyed=frozenset(keyed))


def _unit(said: str) -> str | None:
    return unit_led_to(said.rstrip(". "))


def _measure(said: str) -> str | None:
    """The 'points' of 'p = points', behind a caliper."""
    unit = said.strip(". ")
    return unit if caliper_unit(unit) is not None or len(weight_units(unit)) == 1 else None


def _reader_of(column: HeadedColumn) -> Callable[[str], str | None] | None:
    """What reads the units of a column's letters: those of measures under their heads, those of prices under heads for
    money and under what may be one. The 't' behind an order size is its own."""
    heads = [[reading for reading in header_roles(cell.text) if reading.strength >= _PLAINLY] for cell in column.heads]
    if any(reading.role in MONEY for readings in heads for reading in readings[:1]) or not heads or not heads[-1]:
        return _unit
    said = header(column.heads[-1].text)
    if said.calipers or said.weights or said.bracket is not None:
        # '18 pt' and 'under 5 t' stand over prices.
        return _unit
    role = heads[-1][0].role
    return _measure if role in (Role.CALIPER, Role.WEIGHT) else _unit if role in _MAY_BE_PRICED else None


_PLAINLY = 0.8
_MAY_BE_PRICED = frozenset({*MONEY, Role.BASIS, Role.CURRENCY, Role.COATING, Role.FORM,
    Role.DESTINATION, Role.DELIVERY_TERMS, Role.VENDOR, Role.SHEET_SIZE})  # fmt: skip
"""Forms, places and firms stand over prices as well as over their own names; the '(a)' of 'GD2 (a)' is a board's."""


def _down(table: Table, column: HeadedColumn) -> Iterator[tuple[int, Cell]]:
    return table.view.down(column.index, (row.index for row in table.rows))


def _code(cell: Cell) -> str:
    """The letter behind a figure, folded, also where its number format shows it; '' for none."""
    if isinstance(cell.value, Decimal):
        shown = format_words(cell.number_format) if cell.number_format not in ("", "General") else ""
        return fold(shown) if shown.isalpha() and len(shown) <= _LONGEST else ""
    match = _LETTERED.fullmatch(cell.text) if isinstance(cell.value, str) else None
    return "" if match is None else fold(match["inside"] or match["code"])


def _is_amount(cell: Cell) -> bool:
    """'1200 b' and '$1200 b'; 'GD2 (a)' is none."""
    ahead = "" if isinstance(cell.value, Decimal) else re.split(r"\d", cell.text, maxsplit=1)[0]
    return not any(map(str.isalpha, ahead)) or bool(find_currencies(ahead))


def _with_behind(cell: Cell, words: str, number_format: str) -> Cell:
    if isinstance(cell.value, Decimal):
        return cell._replace(number_format=number_format)
    match = _LETTERED.fullmatch(cell.text)
    text = cell.text if match is None else f"{match['figure'].strip()} {words}"
    return cell._replace(value=text, text=text)


def _terms(said: str, code: str) -> str:
    """The sign of a footnote, for a letter by which the key states terms of all of a row's prices; else its words."""
    return f"[{LETTER}{code.upper()}]" if code and _is_footnote(code, said) else f"({said})"


def _says_of_all(cells: Mapping[int, Cell], priced: Sequence[int], code: str) -> bool:
    """Whether no price of a row is without the letter: a sign holds for all of its row."""
    found = (cells[index] for index in priced if index in cells)
    amounts = (cell for cell in found if isinstance(cell.value, Decimal) or _code(cell))
    return all(_code(cell) == code for cell in amounts)


def _is_footnote(code: str, said: str) -> bool:
    """Terms, and no unit or money that is not understood; the signs of two letters are those of two notes."""
    told = statements(said)
    return len(code) == 1 and bool(told) and not any(isinstance(one, SaysBasis | SaysCurrency) for one in told)


def _with_signs(table: Table, carried: set[str]) -> Table:
    return replace(table, titles=_signed(table.titles, carried), notes=_signed(table.notes, carried))


def _signed(texts: Sequence[Words], carried: set[str]) -> tuple[Words, ...]:
    """The texts without those that explain units by such letters and do nothing else; 'a = lead time 6 weeks' as a
    footnote."""
    return tuple(made for words in texts for made in _as_footnotes(words, carried))


def _as_footnotes(words: Words, carried: set[str]) -> Sequence[Words]:
    told = list(entries([words]))
    if not told or not {one.code for one in told} <= carried:
        return (words,)
    rest = words.text
    for one in told:
        code = re.escape(one.code)
        rest = re.sub(rf"\(?{code}\)?\W*{re.escape(one.said)}", " ", rest, count=1, flags=re.IGNORECASE)
    beside = any(map(str.isalnum, rest))
    others = _not_units({one.code: one.said for one in told})
    if beside and others:
        return (words,)
    # 'All prices in US dollars; f = per 1,000 sq ft' goes on saying the first.
    kept = [replace(words, text=rest.strip(" ,;:"))] if beside else []
    return [*kept, *(replace(words, text=f"[{LETTER}{code.upper()}] {said}") for code, said in others.items())]


def _not_units(key: Mapping[str, str]) -> dict[str, str]:
    return {code: said for code, said in without_terms_of_the_last(key).items() if _unit(said) is None}

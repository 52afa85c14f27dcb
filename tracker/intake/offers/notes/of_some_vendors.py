"""Notes about one of the vendors whose names stand in a column of a comparison: 'Larkhollow: delivered, 5 weeks',
'Larkhollow quotes in Canadian dollars, the others in US dollars'. They are kept from the rows of the other vendors."""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from typing import NamedTuple

from tracker.intake.columns.column import Columns
from tracker.intake.columns.groups.names import names_of_vendors
from tracker.intake.grid import Cell
from tracker.intake.offers.notes.of_some_columns import states_terms
from tracker.intake.offers.notes.of_some_lines import of_own
from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Table, Words
from tracker.intake.values.heads.columns_meant import ColumnNames, columns_apart
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.lines_meant import lines_meant
from tracker.intake.values.notes.note_signs import without_sign
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


class _Part(NamedTuple):
    """A part of a note: what it says, and the numbers of the vendors that it is about; None: of all."""

    text: str
    vendors: frozenset[int] | None = None


class OfSomeVendors:
    """The levels around a table with what they say of each vendor as texts of their own."""

    def __init__(self, table: Table, columns: Columns, levels: tuple[Level, ...]) -> None:
        self._columns = [column.index for column in columns.of(Role.VENDOR)]
        vendors = [self._vendor(table.view.rows[row.index]) for row in table.rows] if self._columns else []
        self._vendors = list(dict.fromkeys(filter(None, vendors)))
        self._names = names_of_vendors(self._vendors)
        self._last_row = table.last_row
        self._told: dict[Words, frozenset[int]] = {}
        several = len(self._vendors) > 1
        self.levels = tuple(replace(level, texts=tuple(self._apart(level))) for level in levels) if several else levels

    def of_row(self, cells: Mapping[int, Cell]) -> int:
        """The number of a row's vendor, where something is said of one alone; else, and of none, -1."""
        vendor = self._vendor(cells) if self._told else ""
        return self._vendors.index(vendor) if vendor in self._vendors else -1

    def left_to(self, levels: tuple[Level, ...], number: int) -> tuple[Level, ...]:
        """The levels of a vendor's rows: what is said of him comes first, what is said of others is left out."""
        if not self._told:
            return levels
        own = (
            of_own(level, texts)
            for level in levels
            if (texts := tuple(words for words in level.texts if number in self._told.get(words, ())))
        )
        return (*own, *(_without(level, self._told) for level in levels))

    def _vendor(self, cells: Mapping[int, Cell]) -> str:
        return next((cells[index].text.strip() for index in self._columns if index in cells), "")

    def _apart(self, level: Level) -> Iterator[Words]:
        for words in level.texts:
            parts = self._parts(words)
            for part in parts:
                own = replace(words, text=part.text)
                if part.vendors is not None:
                    self._told[own] = self._told.get(own, frozenset()) | part.vendors
                yield own
            if not parts:
                yield words

    def _parts(self, words: Words) -> tuple[_Part, ...]:
        """The parts of a text that are about some vendors each; () where it tells none apart."""
        text = without_sign(words.text)
        parts = _parts_by_name(text, self._names)
        if not any(part.vendors is not None and states_terms(part.text) for part in parts):
            return ()
        named = {part.vendors for part in parts if part.vendors is not None}
        head, colon, rest = text.partition(":")
        if colon and len(named) == 1 and _parts_by_name(f"{head}: {_ANY}", self._names):
            # What follows a colon is all of the one it stands behind: 'Marrabel: FOB mill; URB is picked up by us'.
            said, of_all = _until_all_prices(rest)
            vendors = named.pop()
            own = tuple(_Part(term, vendors) for term in _terms_in(said))
            return (*own, *(_parts_by_name(of_all, self._names) or (_Part(of_all),))) if of_all else own
        told = words.row > self._last_row or colon
        sections = () if told else ("the_others", "quoting", "only_these")
        return parts if told or any(phrases(section).find(text) for section in sections) else ()


def _parts_by_name(text: str, vendors: ColumnNames) -> tuple[_Part, ...]:
    """A note tells vendors apart by their names as it does columns, by the numbers that `vendors` gives them."""
    return tuple(_Part(piece.text, piece.columns) for piece in columns_apart(text, vendors))


def _until_all_prices(text: str) -> tuple[str, str]:
    """The sentences about the one before the colon, and those from the one that begins with 'All prices' on; all are
    his where the first begins so: 'Marrabel: all prices FOB mill'."""
    parts = clauses(text)
    place = next((at for at, part in enumerate(parts) if at and _begins_with_all_prices(part)), 0)
    return (". ".join(parts[:place]), ". ".join(parts[place:])) if place else (text, "")


def _begins_with_all_prices(sentence: str) -> bool:
    found = tokens_of(sentence)
    return phrases("all_of_them").at(found, 0) is not None and any(
        phrases("all_prices").at(found, place) is not None for place in (0, 1)
    )


_ANY = "delivered"
_COMMA = re.compile(r",\s+(?!\d{4}\b)")


def _terms_in(text: str) -> Iterator[str]:
    """Its clauses, and their parts where each says a term of its own: 'FOB mill', 'freight $38/ST added to SBS'."""
    for clause in clauses(text):
        parts = _COMMA.split(clause)
        apart = all(states_terms(part) or lines_meant(part, note=True) is not None for part in parts)
        yield from parts if apart else (clause,)


def _without(level: Level, told: Iterable[Words]) -> Level:
    texts = tuple(words for words in level.texts if words not in told)
    return level if texts == level.texts else replace(level, texts=texts)

"""Tables by their letters and numbers in a text: 'In table A kr is SEK, in table B DKK' says one thing of each."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.freight.delivery import Delivery
from tracker.intake.values.heads.role_words import header_roles
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.rest import Span, rest_of
from tracker.intake.values.notes.said_anew import in_its_place
from tracker.intake.values.notes.statements import SaysTon, statements
from tracker.intake.values.notes.table_labels import PLACE, table_labels
from tracker.intake.values.prices.other_times import without_other_times
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import joined, pattern, phrases
from tracker.intake.words.phrases import blanked, tokens_of

_STOPS = re.compile(rf",(?!\d)|;|[.!]\s|\n|\s[-–—]\s|\s{pattern('and_words', 'any')}\s")

LAST = f"{PLACE}last"
NOWHERE = frozenset({"?"})
"""What a part is about that says of no table of its own what stands in it: 'See table B for DKK prices'."""


@dataclass(frozen=True, slots=True)
class TablePart:
    """A part of a text. `tables`: the letters, numbers or names of the tables that it is about, folded; empty: of all,
    save those in `but`, of which another part says the same. `alone`: it is the whole text. `before`: the part whose
    terms it may tell anew, in words that are not read."""

    tables: frozenset[str]
    text: str
    alone: bool = False
    but: frozenset[str] = frozenset()
    before: str = ""


@dataclass(frozen=True, slots=True)
class _Piece:
    """What stands between stops, `said`: without the table's name where that says something.
    `excepted`: the table is not like the rest."""

    tables: frozenset[str]
    said: str
    excepted: bool = False


@lru_cache(maxsize=4096)
def parts_by_table(
    text: str, names: frozenset[tuple[str, int]] = frozenset(), lists: frozenset[str] = frozenset()
) -> tuple[TablePart, ...]:
    """The parts of a text that are about some tables each, and those about all; () where it tells no tables apart.

    `names`: what else tables are called, with a number for each; a text that calls them so tells their units.
    `lists`: the names of those that are lists with a number, 'List 14', by which one alone may be meant.
    """
    found = ((frozenset({name}), match.span()) for name in lists for match in _whole(name).finditer(text))
    named = tuple(sorted((*table_labels(text), *found), key=lambda one: one[1]))
    pieces = [*_pieces(text, named)] if named else _by_name(text, names)
    told = [piece for piece in pieces if piece.tables]
    if not told:
        return ()
    if len(pieces) == 1:
        return () if told[0].excepted else (_alone(told[0], text),)
    return tuple(_parts(pieces))


def _alone(piece: _Piece, text: str) -> TablePart:
    """A text of which all is about some tables; without their name, where nobody can tell that 'Table 2 is valid until
    30 June' is of prices."""
    whole, said = ({type(one) for one in statements(each)} for each in (text, piece.said))
    if piece.tables != NOWHERE and said - whole:
        return TablePart(piece.tables, piece.said)
    return TablePart(piece.tables, text, alone=piece.tables != NOWHERE)


def _parts(pieces: list[_Piece]) -> Iterator[TablePart]:
    for place, piece in enumerate(pieces):
        if not piece.tables:
            others = (other.tables for other in pieces if other.tables and _tells_anew(other, piece.said))
            yield TablePart(frozenset(), piece.said, but=frozenset[str]().union(*others))
        else:
            before = next((other.said for other in reversed(pieces[:place]) if other.tables != NOWHERE), "")
            unread = not statements(piece.said) and _tells_anew(piece, before)
            anew = _told_anew(before, piece.said) if unread and not piece.excepted else ""
            yield TablePart(piece.tables, anew or piece.said, before=before if unread and not anew else "")


def _told_anew(before: str, own: str) -> str:
    """'Lead time 6 weeks' of 'lead time for table A 4 weeks, table B 6 weeks'; '' where more than a figure is said."""
    figure = _without_labels(own).strip(" .,;:–—-")
    said = in_its_place(_without_labels(before), figure)
    return said if said != figure and statements(said) else ""


def _tells_anew(piece: _Piece, before: str) -> bool:
    """Whether a part about a table says what another said before it, if in words that are not read: 'lead time 4 weeks,
    table B 6'."""
    if piece.tables == NOWHERE:
        return False
    own, others = statements(piece.said), statements(before)
    if piece.excepted or {type(one) for one in own} & {type(one) for one in others}:
        return True
    of_units = all(isinstance(one, SaysCurrency | SaysBasis | SaysTon) for one in others)
    said = without_other_times(piece.said)
    figure = bool(phrases("currency").find(said)) if of_units else any(map(str.isdigit, _without_labels(said)))
    return bool(others) and not own and figure


def _without_labels(text: str) -> str:
    return blanked(text, [span for _, span in table_labels(text)])


def defines_of_tables(text: str) -> bool:
    """'In table 1 ton = 2,000 lb, in table 2 ton = 1,000 kg': which ton it is in some tables."""
    if not phrases("ton_words").find(text):
        return False
    return any(
        part.tables and any(isinstance(one, SaysTon) for one in statements(part.text)) for part in parts_by_table(text)
    )


def _leads(ahead: str) -> bool:
    """Nothing, or the 'In' of 'In table A kr is SEK' and the 'Prices in' of another."""
    words = [word for word in ahead.split() if any(map(str.isalnum, word))]
    return len(words) <= _FEW_WORDS and not rest_of(ahead, (), "price_words", "exceptions", "excepted")


_FEW_WORDS = 3
_FIGURE_AHEAD = re.compile(r"\W*\d")


def _is_figure_of(part: str, named: list[tuple[frozenset[str], Span]]) -> bool:
    """'10 in table B', with nothing behind the table."""
    return bool(_FIGURE_AHEAD.match(part)) and not any(map(str.isalnum, part[named[-1][1][1] :]))


def _by_name(text: str, names: frozenset[tuple[str, int]]) -> list[_Piece]:
    """'Sweden: kr = SEK, Denmark: kr = DKK' over and below the tables of these names; 'A: SEK, B: DKK'."""
    found = [
        (name, table, match.span())
        for name, table in names
        for match in _whole(name).finditer(text)
        if len(name) > 1 or _stands_alone(text, match)
    ]
    if len({table for _, table, _ in found}) < _SEVERAL:
        return []
    named = sorted(((frozenset({name}), span) for name, _, span in found), key=lambda one: one[1])
    pieces = [*_pieces(text, tuple(named))]
    told = [piece for piece in pieces if piece.tables]
    return pieces if len(told) >= _SEVERAL and all(statements(piece.said) for piece in told) else []


_SEVERAL = 2
_WORD_AHEAD = re.compile(r"([^\W\d]+)\s+$")
_WORD_BEHIND = re.compile(r"\s*-?([^\W\d]+)")
_LABEL_BEHIND = re.compile(r"\s*-?[^\W\d][^:=,;.]*[:=]")
_THINGS = frozenset({
    Role.ITEM, Role.PRODUCT, Role.GRADE, Role.COATING, Role.SHEET_SIZE, Role.VENDOR, Role.DESTINATION, Role.FORM,
    Role.PACKING, Role.STOCK,
})  # fmt: skip


def _stands_alone(text: str, letter: re.Match[str]) -> bool:
    """'A: SEK', 'Prices A in SEK', 'List A: FOB mill'; 'Mill A: 4 weeks' and 'A quality: FOB mill' are about something
    else."""
    ahead, behind = _WORD_AHEAD.search(text, 0, letter.start()), _WORD_BEHIND.match(text, letter.end())
    if any(word is not None and _is_a_thing(word[1]) for word in (ahead, behind)):
        return False
    unread = ahead is not None and rest_of(ahead[1], (), "price_words", "list_names", "price_lists")
    return not unread and _LABEL_BEHIND.match(text, letter.end()) is None


def _is_a_thing(word: str) -> bool:
    return any(reading.role in _THINGS for reading in header_roles(word))


@lru_cache(maxsize=256)
def _whole(name: str) -> re.Pattern[str]:
    """A name in any letters, and a letter by itself as titles have it."""
    one = len(name) == 1
    return re.compile(rf"(?<!\w){re.escape(name.upper() if one else name)}(?!\w)", 0 if one else re.IGNORECASE)


def _pieces(text: str, named: tuple[tuple[frozenset[str], Span], ...]) -> Iterator[_Piece]:
    """Each part between stops that names a table, with those behind it that name none."""
    begun: list[tuple[int, int, bool]] = []
    for start, end, excepted in _between_stops(text, [span for _, span in named]):
        holds = any(start <= a < end for _, (a, _) in named)
        if begun and not holds and not _stands_apart(text, begun[-1], named):
            begun[-1] = (begun[-1][0], end, begun[-1][2])
        else:
            begun.append((start, end, excepted))
    for start, end, excepted in begun:
        inside = [(signs, (a - start, b - start)) for signs, (a, b) in named if start <= a < end]
        yield _piece(text[start:end], inside, excepted)


def _stands_apart(text: str, part: tuple[int, int, bool], named: tuple[tuple[frozenset[str], Span], ...]) -> bool:
    """'See table B for reels; all in SEK' and 'Except table B, all in SEK' go on about all tables."""
    start, end, excepted = part
    if not any(start <= a < end for _, (a, _) in named):
        return False
    return bool(phrases("points_to").find(text[start:end])) or (excepted and not text[:start].strip())


def _between_stops(text: str, names: list[Span]) -> Iterator[tuple[int, int, bool]]:
    """From where to where each part goes, and whether a word for an exception leads it or stands at its end."""
    words = [one.span for one in joined("exceptions", "excepted").find(text)]
    stops = [(one.start(), one.end()) for one in _STOPS.finditer(text) if not _joins(text, one, names)]
    stops += [(start, start) for start, end in words if text[end:].strip(" .,;)")]
    edges = sorted({0, len(text), *(end for start, end in stops if not any(a <= start < b for a, b in names))})
    for start, end in pairwise(edges):
        if text[start:end].strip():
            behind = bool(phrases("excepted_behind").find(text[start:end]))
            yield start, end, behind or any(first == start for first, _ in words)


def _joins(text: str, stop: re.Match[str], names: list[Span]) -> bool:
    """Whether a stop stands between two tables of which one thing is said: 'prices of table A and table B'."""
    before = max((end for _, end in names if end <= stop.start()), default=None)
    behind = min((start for start, _ in names if start >= stop.end()), default=None)
    if before is None or behind is None or stop.group().strip() in {".", "!", ";"}:
        return False
    return not rest_of(text[before : stop.start()], ()) and not rest_of(text[stop.end() : behind], ())


def _piece(part: str, named: list[tuple[frozenset[str], Span]], excepted: bool) -> _Piece:
    tables = frozenset[str]().union(*(signs for signs, _ in named))
    whole = part.strip(" ,;–—-")
    if not tables:
        return _Piece(tables, whole)
    denied = {one.end for one in phrases("negations").find(part)}
    if len(named) > 1 and any(len(part[:start].rstrip()) in denied for _, (start, _) in named):
        # Of 'not table A but table B is delivered' it is not told apart what holds for which.
        return _Piece(NOWHERE, whole)
    said = next(filter(statements, _bare(blanked(part, [_with_its_lead(part, span) for _, span in named]))), "")
    if phrases("points_to").find(part):
        units = any(isinstance(one, SaysCurrency | SaysBasis | SaysTon | Delivery) for one in statements(part))
        return _Piece(NOWHERE if units else frozenset(), whole)
    if not said and not _leads(part[: named[0][1][0]]) and not _is_figure_of(part, named):
        return _Piece(frozenset(), whole)
    return _Piece(tables, said or whole, excepted=excepted)


def _with_its_lead(part: str, table: Span) -> Span:
    """With the 'für' of 'Lieferzeit für Tabelle A 4 Wochen', where other words stand before that."""
    ahead = part[: table[0]].rstrip()
    lead = next((one for one in phrases("about_lines").find(ahead) if one.end == len(ahead) and one.first > 0), None)
    return table if lead is None else (lead.start, table[1])


def _bare(part: str) -> Iterator[str]:
    """What a part says of its tables, without their names, and without more and more of the small words before it."""
    bare = " ".join(part.split()).strip(" ,;:–—-")
    while bare:
        yield bare
        first = next((one for one in joined(*_SMALL).find(bare) if one.first == 0), None)
        if first is None or phrases("was_then").at(tokens_of(bare), 0) is not None:
            return
        bare = bare[first.end :].strip(" ,;:–—-")


_SMALL = ("says_nothing_more", "relative_words", "exceptions", "excepted")

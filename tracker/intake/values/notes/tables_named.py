"""Tables by their letters and numbers in a text: 'In table A kr is SEK, in table B DKK' says one thing of each."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from tracker.intake.values.notes.rest import Span
from tracker.intake.values.notes.statements import SaysTon, statements
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import pattern, phrases
from tracker.intake.words.phrases import blanked

_SIGN = r"(?:[A-Z]|[IVX]{1,4}|\d{1,2})"
_LABELS = re.compile(
    rf"\.?\s*(?:n[or]\.?|n[°º])?\s*(?P<labels>{_SIGN}(?:\s*(?:[,&+]|\b{pattern('range', 'and')}\b)\s*{_SIGN}(?!\w))*)"
    r"(?![\w°%]|[.,]\d)"
)
_EACH = re.compile(_SIGN)
_STOPS = re.compile(rf",(?!\d)|;|[.!]\s|\n|\s[-–—]\s|\s{pattern('and_words', 'any')}\s")


PLACE = "#"
"""Before the number of a table that is called by its place: 'the first table'."""


@dataclass(frozen=True, slots=True)
class TablePart:
    """A part of a text. `tables`: the letters, numbers or names of the tables that it is about, folded; empty: of all.
    `alone`: it is the whole text."""

    tables: frozenset[str]
    text: str
    alone: bool = False


@lru_cache(maxsize=4096)
def table_labels(text: str) -> tuple[tuple[frozenset[str], Span], ...]:
    """The letters and numbers by which a text names tables, and where: 'table A', 'Tafeln 1 und 2', 'first table'."""
    found = []
    for match in phrases("tables_named").find(text):
        if match.value != "table":
            found.append((frozenset({f"{PLACE}{match.value}"}), (match.start, match.end)))
        elif (labels := _LABELS.match(text, match.end)) is not None:
            signs = frozenset(sign.casefold() for sign in _EACH.findall(labels["labels"]))
            found.append((signs, (match.start, labels.end())))
    return tuple(found)


@lru_cache(maxsize=4096)
def parts_by_table(text: str, names: frozenset[tuple[str, int]] = frozenset()) -> tuple[TablePart, ...]:
    """The parts of a text that are about some tables each, and those about all; () where it tells no tables apart.

    `names`: what else tables are called, with a number for each; a text that calls them so tells their units.
    """
    named = table_labels(text)
    if not named:
        return _parts_by_name(text, names)
    parts = tuple(_parts(text, named))
    if sum(bool(part.tables) for part in parts) > 1:
        return parts
    (labels, (start, end)), *more = named
    of_one = not more and (_leads(text[:start]) or _ends_unit(text, start, end))
    return (TablePart(labels, text, alone=True),) if of_one else ()


def defines_of_tables(text: str) -> bool:
    """'In table 1 ton = 2,000 lb, in table 2 ton = 1,000 kg': which ton it is in some tables."""
    if not phrases("ton_words").find(text):
        return False
    return any(
        part.tables and any(isinstance(one, SaysTon) for one in statements(part.text)) for part in parts_by_table(text)
    )


def _leads(ahead: str) -> bool:
    """Nothing, or the 'In' of 'In table A kr is SEK'; 'See table B' tells of something else."""
    words = ahead.split()
    return all(phrases("says_nothing_more").whole(word) is not None for word in words) and len(words) <= _FEW_WORDS


_FEW_WORDS = 2


def _ends_unit(text: str, start: int, end: int) -> bool:
    """'kr = SEK in table A': a unit, and behind it the table, with no stop between."""
    said = statements(text[:start].strip())
    units = bool(said) and all(isinstance(one, SaysCurrency | SaysBasis | SaysTon) for one in said)
    return units and not any(map(str.isalnum, text[end:])) and _STOPS.search(text[:start]) is None


def _parts_by_name(text: str, names: frozenset[tuple[str, int]]) -> tuple[TablePart, ...]:
    """'Sweden: kr = SEK, Denmark: kr = DKK' over and below the tables of these names."""
    found = [(name, table, match.span()) for name, table in names for match in _whole(name).finditer(text)]
    if len({table for _, table, _ in found}) < _SEVERAL:
        return ()
    parts = tuple(_parts(text, sorted(((frozenset({name}), span) for name, _, span in found), key=lambda one: one[1])))
    told = [part for part in parts if part.tables]
    return parts if len(told) >= _SEVERAL and all(statements(part.text) for part in told) else ()


_SEVERAL = 2


@lru_cache(maxsize=256)
def _whole(name: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w){re.escape(name)}(?!\w)", re.IGNORECASE)


def _parts(text: str, named: Iterable[tuple[frozenset[str], Span]]) -> Iterator[TablePart]:
    """Each part between stops that names a table, with those behind it that name none."""
    named = tuple(named)
    stops = [stop for stop in _STOPS.finditer(text) if not any(a <= stop.start() < b for _, (a, b) in named)]
    edges = [0, *(stop.end() for stop in stops), len(text)]
    begun: list[tuple[int, int, frozenset[str]]] = []
    for start, end in pairwise(edges):
        labels = frozenset[str]().union(*(signs for signs, (a, _) in named if start <= a < end))
        if begun and not labels:
            begun[-1] = (begun[-1][0], end, begun[-1][2])
        else:
            begun.append((start, end, labels))
    for start, end, labels in begun:
        spans = [(a - start, b - start) for _, (a, b) in named if start <= a < end]
        yield TablePart(labels, _said(text[start:end], spans))


def _said(part: str, spans: list[Span]) -> str:
    """What a part says of its tables, without their names where that says something by itself."""
    bare = " ".join(blanked(part, spans).split()).strip(" ,;:–—-")
    for match in phrases("says_nothing_more").find(bare):
        if match.start == 0:
            bare = bare[match.end :].strip(" ,;:–—-")
            break
    return bare if statements(bare) else part.strip(" ,;–—-")

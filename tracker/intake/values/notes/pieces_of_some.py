"""A note in pieces, each of which tells terms of all boards or of some: 'Lead time is 4 weeks' and 'weights over 350
g/m² take 6' of 'Lead time is 4 weeks; weights over 350 g/m², however, take 6'."""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.boards.some_boards import SomeBoards, some_boards
from tracker.intake.values.notes.clauses import COMMA, clauses
from tracker.intake.values.notes.lines_counted import lines_named
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.masses import find_masses
from tracker.intake.values.times.times_in_words import counts_time
from tracker.intake.words.lists import joined, pattern, phrases, without_words
from tracker.intake.words.phrases import Found, outside

_PARTED = re.compile(rf"{COMMA.pattern}|[()]")
_AND = re.compile(rf"\s{pattern('range', 'and')}\s", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Piece:
    """`boards`: those that it is about, None for all; `clause`: the one that it is a part of."""

    text: str
    boards: SomeBoards | None
    clause: str

    @property
    def excepts(self) -> bool:
        """Whether it excepts boards by other words than its first ones: 'SBS excepted'."""
        # The 'menos' of 'menos de 3 t' excepts nothing.
        apart = joined("made_so.apart", "bracket.below").find(self.text)
        found = outside(joined("excepted", "exceptions").find(self.text), apart)
        # Of 'greyboard is the exception' something is told behind.
        return any(match.first > 0 for match in found)

    @property
    def of_all_but(self) -> SomeBoards | None:
        """The CUK of 'all grades but CUK 4 weeks', where nothing else is told of it."""
        found = joined("excepted", "exceptions").find(self.text)
        every = [match for match in phrases("all_of_them").find(self.text) if match.first == 0]
        if len(found) != 1 or not every or self.boards is None or not self.boards.certain or self.boards.beside:
            return None
        between = self.text[every[0].end : max(found[0].start, every[0].end)]
        return self.boards if not rest_of(between, (), "all_goods", "made_so.boards") else None

    @property
    def is_exception(self) -> bool:
        """'Except weights over 350 g/m², which take 6 weeks'."""
        return any(match.first == 0 for match in joined("excepted", "exceptions").find(self.text))


@lru_cache(maxsize=4096)
def pieces_of(text: str) -> tuple[Piece, ...]:
    """Its pieces; () of a text about lines that it names by numbers or signs, and of those that are without."""
    if lines_named(text) is not None or any(phrases(section).find(text) for section in ("marked", "so_marked")):
        return ()
    return tuple(
        Piece(said, some_boards(said), clause)
        for clause in clauses(text)
        for said in map(", ".join, _together(list(_parts(clause))))
    )


def _parts(clause: str) -> Iterator[str]:
    """Parted at commas, before what is excepted, and at an 'and' between boards that have each their own."""
    for part in _PARTED.split(clause):
        but = _exception(part)
        for piece in (part,) if but is None else (part[: but.start], part[but.start :]):
            yield from filter(None, map(str.strip, _at_and(piece)))


def _exception(part: str) -> Found[str] | None:
    found = joined("excepted", "exceptions").find(part)
    return next((match for match in found if some_boards(part[match.end :]) is not None), None)


def _at_and(part: str) -> Iterator[str]:
    begins = 0
    spans = phrases("open_measures").find(part)
    for match in _AND.finditer(part):
        if any(span.start <= match.start() + 1 < span.end for span in spans):
            # '18 pt and lighter'.
            continue
        ahead, behind = part[begins : match.start()], part[match.end() :]
        if tells_something(ahead) and tells_something(behind) and some_boards(behind) is not None:
            yield ahead
            begins = match.end()
    yield part[begins:]


def _together(parts: list[str]) -> Iterator[list[str]]:
    """The parts of each piece: a new one begins with the boards of which something else is told than before."""
    held: list[str] = []
    for place, part in enumerate(parts):
        told = any(tells_something(one) or tells_figure(one) for one in held)
        if told and some_boards(part) is not None and _told_on(parts[place:]):
            yield held
            held = []
        held.append(part)
    if held:
        yield held


def _told_on(parts: list[str]) -> bool:
    """Whether something is told of the boards in the first part before others are named."""
    but = _exception(parts[0])
    if tells_something(parts[0]) or tells_figure(parts[0]) or (but is not None and but.first == 0):
        return True
    for part in parts[1:]:
        if tells_something(part) or tells_figure(part):
            return some_boards(part) is None
        if some_boards(part) is not None:
            return False
    return False


def tells_something(part: str) -> bool:
    """Whether a part tells a time, that goods are in stock or made to order, or the weight of an order."""
    return counts_time(part) or tells_stock(part) or bool(find_masses(part) or phrases("no_minimum").find(part))


def tells_figure(part: str) -> bool:
    """'GD2 6', 'CUK in 6-8', 'which takes 6': a small figure of what was told before, and boards at most."""
    boards = some_boards(part)
    rest = without_words(part if boards is None else boards.rest, "within_a_time", "about", "takes_time", "made_so")
    return _FIGURE.fullmatch(without_words(rest, "and_words", "articles").strip(" .:;,")) is not None


_FIGURE = re.compile(r"\d{1,2}(?:\s*[-–]\s*\d{1,2})?")


def tells_stock(part: str) -> bool:
    """'In stock', or 'made to order'."""
    return bool(joined("from_stock.any", "kept_in_stock", "made_so.to_order").find(part))

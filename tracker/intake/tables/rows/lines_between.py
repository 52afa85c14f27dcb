"""Lines of words between boards: whether they head the board below them or describe the one above.

Lines below each board and none above the first are the boards' own; lines above each and none below the last are
headings. What a board says itself weighs more: figures that it shares with a line, or a grade that a line contradicts.
Where lines stand at both ends of the table, it is told by what kind of line stands at which end.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import cached_property

from tracker.intake.tables.view import View
from tracker.intake.values.boards.board_words import names_only_board
from tracker.intake.values.boards.caliper import find_calipers
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.boards.weight import find_weights
from tracker.intake.values.figures.sheetsize import find_sheet_sizes

Lines = tuple[int, ...]

_FEWEST = 2


class Side(Enum):
    """Where the lines stand that say of a board what it is."""

    ABOVE = "above"
    BELOW = "below"
    UNTOLD = "untold"


@dataclass
class Lined:
    """Boards with the lines of words right below each; `first`: those right above the first board."""

    view: View
    boards: list[int]
    below: list[Lines]
    first: Lines

    @cached_property
    def own(self) -> list[bool]:
        """Which boards say on their own line what they are."""
        return [describes(self.words((board,))) for board in self.boards]

    @cached_property
    def measured(self) -> list[bool]:
        """Which boards say on their own line what they measure."""
        return [_measures(self.words((board,))) for board in self.boards]

    def above(self, place: int) -> Lines:
        return self.below[place - 1] if place else self.first

    def around(self, place: int) -> Lines:
        """The lines on both sides of a board; at an end of the table the next two of the other side."""
        sides = [self.first, *self.below]
        nearest = sides[place : place + 2]
        if not nearest[0]:
            nearest = sides[place + 1 : place + 3]
        elif not nearest[-1]:
            nearest = sides[max(0, place - 1) : place + 1]
        return tuple(line for lines in nearest for line in lines)

    def words(self, lines: Lines) -> str:
        return "\n".join(cell.text for line in lines for _, cell in sorted(self.view.rows[line].items()))


def describes(text: str) -> bool:
    """Whether a text names a grade or a measure of board."""
    # The grade first: nearly every board says one, and measures take ten times as long to look for.
    return bool(_grades(text)) or _measures(text)


def _measures(text: str) -> bool:
    return bool(find_weights(text) or find_calipers(text))


def _grades(text: str) -> tuple[str, ...]:
    grade = find_grade(text)
    return () if grade is None else grade.grades


def side_of(lined: Lined) -> Side:
    """By what the boards say themselves, else by the ends of the table."""
    said = _by_their_words(lined)
    if said is not None:
        return said
    last = lined.below[-1]
    if not last and not lined.first and lined.own[0] and _measure(lined) and not lined.measured[0]:
        # 'GD2, reel 860 mm' over '320 g/m²': what the first board weighs is not said above it.
        return Side.BELOW if lined.measured[-1] else Side.UNTOLD
    if not last and not lined.first and not lined.own[0]:
        # The last board says itself what it is, or one of the two at the ends is measured by nothing.
        return Side.BELOW if lined.own[-1] else Side.UNTOLD if _measure(lined) else Side.ABOVE
    if not last or _is_a_note(lined):
        return Side.ABOVE
    if not lined.first:
        return Side.UNTOLD if _may_be_a_note(lined) else Side.BELOW
    kinds = _kinds(lined)
    first_alike, last_alike = _kind(lined, lined.first) in kinds, _kind(lined, last) in kinds
    if first_alike is last_alike:
        return Side.UNTOLD
    return Side.ABOVE if first_alike else Side.BELOW


def _by_their_words(lined: Lined) -> Side | None:
    """A board called 'GC2-260-720R' and the line 'GC2, 260 g/m², 720 mm' are one, and one called 'GD2' and the line
    'GC2' are not; None where no board tells, or they do not tell the same."""
    contradicting = set(_contradicted(lined))
    if len(contradicting) == 1:
        return Side.ABOVE if contradicting == {Side.BELOW} else Side.BELOW
    told = []
    for place, board in enumerate(lined.boards):
        own = _marks(lined.words((board,)))
        above = len(own & _marks(lined.words(lined.above(place))))
        below = len(own & _marks(lined.words(lined.below[place])))
        if above != below:
            told.append(Side.BELOW if below > above else Side.ABOVE)
    return told[0] if len(told) >= _FEWEST and len(set(told)) == 1 else None


def _contradicted(lined: Lined) -> Iterator[Side]:
    """The sides on which a line contradicts what a board's own words say."""
    for place, board in enumerate(lined.boards):
        own = lined.words((board,))
        for side, lines in ((Side.ABOVE, lined.above(place)), (Side.BELOW, lined.below[place])):
            if _contradict(own, lined.words(lines)):
                yield side


def _contradict(one: str, other: str) -> bool:
    said = zip(_said(one), _said(other), strict=True)
    return any(mine and theirs and mine.isdisjoint(theirs) for mine, theirs in said)


def _said(text: str) -> tuple[frozenset[object], ...]:
    weights = frozenset(weight.gsm for weight in find_weights(text))
    return frozenset(_grades(text)), weights, frozenset(caliper.um for caliper in find_calipers(text))


_FIGURES = re.compile(r"\d{2,}")


def _marks(text: str) -> set[str]:
    """Figures of two digits and more, and grades."""
    return {*_FIGURES.findall(text), *_grades(text)}


def _measure(lined: Lined) -> bool:
    """Whether the lines say what boards measure, which headings of several boards leave to these."""
    words = [lined.words(lines) for lines in lined.below if lines]
    return all(map(_measures, words))


def _is_a_note(lined: Lined) -> bool:
    """Below lines that name boards and nothing else, 'Other weights of GC2 on request' names none of the table's."""
    return _says_more(lined) and _kind(lined, lined.below[-1]) not in _kinds(lined)


def _may_be_a_note(lined: Lined) -> bool:
    """Below lines that are grades alone, 'GD2 auf Anfrage' may be one or not."""
    return _says_more(lined) and sum(_kind(lined, lined.below[-1])[:_PROPERTIES]) == 1


def _says_more(lined: Lined) -> bool:
    """The last line says other things than which board it is, and no line before it does."""
    *lines, last = lined.below
    return all(names_only_board(lined.words(each)) for each in lines) and not names_only_board(lined.words(last))


_PROPERTIES = 4


def _kind(lined: Lined, lines: Lines) -> tuple[int, ...]:
    """What lines say of a board, and where they stand."""
    text = lined.words(lines)
    said = map(bool, (_grades(text), find_weights(text), find_calipers(text), find_sheet_sizes(text)))
    return (*said, len(lines), *(min(lined.view.rows[line]) for line in lines))


def _kinds(lined: Lined) -> set[tuple[int, ...]]:
    return {_kind(lined, lines) for lines in lined.below[:-1] if lines}

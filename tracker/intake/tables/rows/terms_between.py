"""Lines of terms right below some boards and above what heads the next ones: 'Lead time 3 weeks' over 'CUK'.

Behind 'All prices below are delivered' what stood before it may be of the boards above, and before a line about these
it is. A list that has such a line above the first heading leads its groups in by them; one that has it below the last
board ends its groups with them. An empty row on one side tells it as well. Else it is not known which they are of.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from tracker.intake.tables.parts.terms_told import matters_told
from tracker.intake.tables.rows.closing_words import Sides, sides_of
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.notes.above_and_below import Side, parts_by_side
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import phrases

_Kinds = frozenset[type[object]]


def terms_ahead(said: Sequence[Words]) -> int:
    """How many of the first words tell terms of boards and no more: none that head what follows, or speak of prices."""
    return next((place for place, words in enumerate(said) if not _tells_terms(words.text)), len(said))


def _tells_terms(text: str) -> bool:
    heads = text.rstrip().endswith(":") or phrases("price_words").find(text) or boards_named(text).some
    return not heads and bool(matters_told(text))


def sides_told(said: Sequence[Words]) -> Sides:
    """What words of which some name a side say of the boards above and below, with the terms ahead of these."""
    count = next((place for place, words in enumerate(said) if parts_by_side(words.text)), len(said))
    count = min(count, terms_ahead(said))
    ahead, told = tuple(said[:count]), sides_of(said[count:])
    first = parts_by_side(said[count].text) if count < len(said) else ()
    if not ahead or not first:
        return sides_of(said)
    if first[0].side is Side.ABOVE:
        return Sides((*ahead, *told.above), told.below)
    doubted = _doubted(ahead)
    return Sides((*doubted, *told.above), (*doubted, *told.below))


def _doubted(said: Sequence[Words]) -> tuple[Words, ...]:
    return tuple(replace(words, unsure=True) for words in said)


def _kinds(said: Sequence[Words]) -> _Kinds:
    return frozenset(kind for words in said for kind, _ in matters_told(words.text))


@dataclass
class TermsBetween:
    """`leading`: terms stand above the heading of the first boards. `closing`: the kinds of those below the last ones.
    `told`: the kinds of those known to be of the boards above them."""

    closing: _Kinds = frozenset()
    leading: bool = False
    told: _Kinds = frozenset()

    def above_the_first(self, said: Sequence[Words]) -> None:
        """Hears the words above the first boards."""
        self.leading = self._of_terms(said) > 0

    def below_the_last(self, said: Sequence[Words], last: int) -> int:
        """How many of the words below the last boards are terms of these alone."""
        ahead = said[: terms_ahead(said)]
        return len(ahead) if ahead and ahead[0].row == last + 1 and _kinds(ahead) & self.told else 0

    def sides(self, said: tuple[Words, ...], last: int) -> Sides:
        """What words between two groups say of each; `last`: the last row above them."""
        ahead = said[: 0 if self.leading else self._of_terms(said)]
        if not ahead:
            return Sides((), said)
        heading = said[len(ahead) :]
        touching = ahead[0].row == last + 1, heading[0].row == ahead[-1].row + 1
        if touching == (False, True):
            return Sides((), said)
        if touching == (True, False) or _kinds(ahead) & self.closing:
            self.told |= _kinds(ahead)
            return Sides(ahead, heading)
        doubted = _doubted(ahead)
        return Sides(doubted, (*doubted, *heading))

    @staticmethod
    def _of_terms(said: Sequence[Words]) -> int:
        """How many terms stand above a heading; 0 where none follows."""
        count = terms_ahead(said)
        heading = said[count].text if count < len(said) else ""
        return count if heading and (boards_named(heading).some or not statements(heading)) else 0


def closing_kinds(said: Sequence[Words], last: int) -> TermsBetween:
    """What a table tells right below its last board, row `last`."""
    ahead = said[: terms_ahead(said)]
    return TermsBetween(_kinds(ahead) if ahead and ahead[0].row == last + 1 else frozenset())

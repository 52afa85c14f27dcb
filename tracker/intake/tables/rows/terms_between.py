"""Lines of terms right below some boards and above what heads the next ones: 'Lead time 3 weeks' over 'CUK'.

Behind 'All prices below are delivered' what stood before it may be of the boards above, and before a line about these
it is. A list that has such a line above the first heading leads its groups in by lines of its kind; one that has it
below the last board ends its groups with them. An empty row on one side tells it as well. Else it is not known which
they are of.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from tracker.intake.tables.parts.terms_told import matters_told
from tracker.intake.tables.rows.closing_words import Sides, sides_of
from tracker.intake.tables.rows.group_levels import Reach
from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.firms.company import company_name
from tracker.intake.values.notes.above_and_below import Side, parts_by_side
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.prices.money import price_unit
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.words.lists import phrases

_Kinds = frozenset[type[object]]


def terms_ahead(said: Sequence[Words]) -> int:
    """How many of the first words tell terms of boards and no more: none that head what follows, or speak of prices."""
    return next((place for place, words in enumerate(said) if not _tells_terms(words.text)), len(said))


def _tells_terms(text: str) -> bool:
    heads = text.rstrip().endswith(":") or boards_named(text).some or _heads_prices(text) or _names_a_group(text)
    return not heads and bool(matters_told(text))


def _heads_prices(text: str) -> bool:
    """'Prices delivered, USD/ST' and 'Delivered prices' head what is below, 'Prices delivered' may be said of what is
    above."""
    named = phrases("price_words").find(text)
    ends = bool(named) and named[-1].start > 0 and not text[named[-1].end :].strip(" .")
    return ends or (bool(named) and _has_units(text))


def _names_a_group(text: str) -> bool:
    """'Sheets, delivered' and 'Recycled, lead time 3 weeks': the name of a group, with its terms."""
    first, *others = COMMA.split(text)
    return bool(others) and not any(map(str.isdigit, first)) and not matters_told(first)


def _has_units(text: str) -> bool:
    return bool(price_unit(text)) or any(isinstance(one, SaysCurrency | SaysBasis) for one in statements(text))


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
    """`leading`: the kinds of terms above the heading of the first boards, `closing`: those of terms below the last
    ones, `told`: those of terms known to be of the boards above them."""

    closing: _Kinds = frozenset()
    leading: _Kinds = frozenset()
    told: _Kinds = frozenset()

    def above_the_first(self, said: Sequence[Words]) -> None:
        """Hears the words above the first boards."""
        self.leading = _kinds(said)

    def below_the_last(self, said: Sequence[Words], last: int) -> int:
        """How many of the words below the last boards are terms of these alone."""
        ahead = said[: terms_ahead(said)]
        return len(ahead) if ahead and ahead[0].row == last + 1 and _kinds(ahead) & self.told else 0

    def ended(self, said: Sequence[Words], last: int) -> int:
        """How many of the words right below a table, an empty row above the next, are terms of its own: the last table
        ends with terms of their kind as well."""
        ahead = said[: terms_ahead(said)]
        if not ahead or ahead[0].row != last + 1 or not _kinds(ahead) & self.closing - self.leading:
            return 0
        self.told |= _kinds(ahead)
        return len(ahead)

    def sides(self, said: tuple[Words, ...], last: int, head: int | None = None) -> Sides:
        """What words between two groups say of each; `last`: the last row above them, `head`: that of a header below
        them, which needs no heading."""
        ahead = said[: _of_terms(said, headed=head is not None)]
        if not ahead:
            return Sides((), said)
        heading = said[len(ahead) :]
        touching = ahead[0].row == last + 1, (heading[0].row if heading else head) == ahead[-1].row + 1
        kinds = _kinds(ahead)
        leads, ends = bool(kinds & self.leading), bool(kinds & self.closing)
        # The name of a firm begins what is its own, and ends what was the last one's.
        ends = ends or (touching[0] and bool(heading) and company_name(heading[0].text) is not None)
        if touching == (False, True) or (leads and not ends):
            return Sides((), said)
        if (touching == (True, False) or ends) and not leads:
            self.told |= kinds
            return Sides(ahead, heading)
        doubted = _doubted(ahead)
        return Sides(doubted, (*doubted, *heading))


def _of_terms(said: Sequence[Words], *, headed: bool) -> int:
    """How many terms stand above a heading; 0 where none follows."""
    count = terms_ahead(said)
    if count == len(said):
        return count if headed else 0
    heading = said[count].text
    return count if boards_named(heading).some or not statements(heading) else 0


def closing_kinds(said: Sequence[Words], last: int) -> TermsBetween:
    """What a table tells right below its last board, row `last`."""
    ahead = said[: terms_ahead(said)]
    return TermsBetween(_kinds(ahead) if ahead and ahead[0].row == last + 1 else frozenset())


class TermsOfGroups:
    """The terms that groups end with, and how many of the rows above each tells its own to."""

    def __init__(self) -> None:
        self._until: dict[type[object], int] = {}

    def shared(self, said: Sequence[Words], reach: Reach, end: int) -> Iterator[tuple[range, tuple[Words, ...]]]:
        """The rows that terms are of, and those that they may be of; `end`: the row behind the last."""
        kinds = _kinds(said)
        own = max((self._until.get(kind, 0) for kind in kinds), default=0)
        # 'Lead time 4 weeks' below the second group, where the first ended with 'FOB mill': of both, or of one.
        others = max((row for kind, row in self._until.items() if kind not in kinds), default=0)
        sure = max(reach.sure, own, others)
        yield range(max(reach.earliest, own), sure), _doubted(said)
        yield range(sure, end), tuple(said)
        self._until.update(dict.fromkeys(kinds, end))

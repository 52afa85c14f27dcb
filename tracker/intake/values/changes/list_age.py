"""Whether a title, a sub-heading or a remark says of what it stands beside that it is no longer in force.

'SUPERSEDED - list of 2025' and 'Price list 2025 (old)' do. 'Changes from the previous price list are shown in bold',
'prices hold until superseded' and 'expired certificate' speak of something else. What may be said either way is a
matter for a person.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum
from functools import cached_property, lru_cache

from tracker.intake.values.changes.histories import names_history
from tracker.intake.values.heads.roles import Role
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.statements import Remark, says
from tracker.intake.values.prices.currency import currency_phrases
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, Token, tokens_of


class Age(IntEnum):
    """What a text says of the prices that it stands beside: the later one of two outweighs the earlier."""

    IN_FORCE = 0
    DOUBTFUL = 1
    SUPERSEDED = 2


@lru_cache(maxsize=8192)
def age_of_list(text: str) -> Age:
    """What a title or a sub-heading says of the prices below it."""
    return _age(text, named=False)


@lru_cache(maxsize=8192)
def age_of_name(text: str) -> Age:
    """What the name of a sheet or the head of a column says of the prices in it: a mark set apart is about them."""
    return _age(text, named=True)


def tells_age(text: str) -> bool:
    """'expired' and 'new', beside 'valid until 31 December' in the row below 'Price 2025 | Price 2026'."""
    return phrases("price_ages").whole(text.strip(" ()")) is not None or age_of_name(text) is Age.SUPERSEDED


def _age(text: str, *, named: bool) -> Age:
    if names_history(text):
        return Age.SUPERSEDED
    if Remark.SUPERSEDED in says(text):
        marked = [one for one in _clauses(text) if Remark.SUPERSEDED in says(one[0])]
        told = (_of_clause(_parts(one), first, named=named) for one, first in marked if not _moves_its_day(one, text))
        return max(told, default=Age.IN_FORCE)
    return Age.SUPERSEDED if _called_old(_parts(text)) else Age.IN_FORCE


@lru_cache(maxsize=8192)
def age_of_row(text: str) -> Age:
    """What a remark says of its row. What a board's price was before, and that its certificate has expired, says
    nothing of the price it has."""
    if Remark.SUPERSEDED not in says(text):
        return Age.IN_FORCE
    parts = [part for clause, _ in _clauses(text) for part in _parts(clause)]
    told = (_of_board(parts, place, mark) for place, part in enumerate(parts) for mark in part.marks)
    return max(told, default=Age.IN_FORCE)


def is_of_something_else(remark: str) -> bool:
    """'Cancelled orders charged 50 %', 'void-free', 'do not use for food': no row is marked by these."""
    return Remark.SUPERSEDED in says(remark) and age_of_row(remark) is Age.IN_FORCE


def _clauses(text: str) -> list[tuple[str, bool]]:
    """The sentences of a text, and whether each is its first."""
    return [(clause, place == 0) for place, clause in enumerate(clauses(text))]


def _moves_its_day(clause: str, text: str) -> bool:
    """'The validity below (31 March 2027) is superseded. The offer is valid until 28 February 2027': a last day is
    replaced by another, and the prices hold until that one."""
    of_day = bool(phrases("valid").find(clause)) and bool(find_dates(clause))
    others = (
        [one for one, _ in _clauses(text) if one != clause and Remark.SUPERSEDED not in says(one)] if of_day else []
    )
    return any(phrases("until").find(one) and find_dates(one) for one in others)


_SET_APART = re.compile(r"[()\[\]:|/]|,(?!\s?\d)|\s[-–—]+\s|[-–—]+\s|\s[-–—]+")
_FEW_WORDS = 4


def _parts(text: str) -> list["_Part"]:
    return [_Part(part.strip()) for part in _SET_APART.split(text) if part.strip()]


@dataclass(frozen=True)
class _Part:
    """What stands between two brackets, commas, colons or dashes."""

    text: str

    @cached_property
    def tokens(self) -> Sequence[Token]:
        return tokens_of(self.text)

    @cached_property
    def marks(self) -> list[Found[str]]:
        """The marks that may hold: 'void-free' has none, nor has 'void after 31 October', and what is said until a list
        is superseded is none yet."""
        found = phrases("superseded").find(self.text)
        return [mark for mark in found if not _of_a_word(self.text, mark) and not self._still_to_come(mark)]

    def _still_to_come(self, mark: Found[str]) -> bool:
        last = phrases("until").find(self.text)
        if any(match.start <= mark.start and mark.end <= match.end for match in last):
            return True
        ends = [match.end for match in last if match.end <= mark.start]
        return bool(ends) and not any(map(str.isdigit, self.text[ends[-1] : mark.start]))

    @cached_property
    def strange(self) -> frozenset[int]:
        """The places of words that neither name a list nor say when, in what unit or how it holds."""
        known = self._places(*_OF_LISTS) | self._places("superseded")
        for match in currency_phrases().among(self.tokens):
            known |= set(range(match.first, match.after))
        return frozenset(
            place
            for place, (word, start, _) in enumerate(self.tokens)
            if word.isalpha()
            and place not in known
            and not any(day.start <= start < day.end for day in find_dates(self.text))
        )

    @cached_property
    def lists(self) -> frozenset[int]:
        """The places of words for prices and for the paper that they stand on."""
        return frozenset(self._places("price_words", "list_names", "papers", "price_lists", "these_prices"))

    @cached_property
    def boards(self) -> frozenset[int]:
        """The places of words for boards: 'grades', 'items', 'Sorten'."""
        named = (match for match in phrases("headers").among(self.tokens) if match.value in _NAME_BOARDS)
        generic = self._places("generic_names")
        return frozenset(generic.union(*(range(match.first, match.after) for match in named)))

    def says(self, section: str, start: int = 0, end: int | None = None) -> bool:
        """Whether a phrase of this section stands between two places."""
        end = len(self.tokens) if end is None else end
        return any(start <= match.first and match.after <= end for match in phrases(section).among(self.tokens))

    def strange_in(self, start: int, end: int | None = None) -> bool:
        end = len(self.tokens) if end is None else end
        return any(start <= place < end for place in self.strange)

    def _places(self, *sections: str) -> set[int]:
        return {
            place
            for section in sections
            for match in phrases(section).among(self.tokens)
            for place in range(match.first, match.after)
        }


_OF_LISTS = (
    "price_words", "list_names", "papers", "price_lists", "these_prices", "articles", "since", "dated", "months",
    "valid", "until", "basis", "delivery", "incoterms", "header_filler", "copula", "end_of",
)  # fmt: skip
_NAME_BOARDS = (Role.PRODUCT, Role.GRADE, Role.ITEM)


def _of_a_word(text: str, mark: Found[str]) -> bool:
    """'Void-free' and 'archive-quality' are other words."""
    joined = re.match(r"-\w", text[mark.end :]) or re.search(r"\w-$", text[: mark.start])
    return joined is not None


def _of_clause(parts: list[_Part], first: bool, *, named: bool) -> Age:
    """The age that the marks of one sentence give the list."""
    found = Age.IN_FORCE
    for place, part in enumerate(parts):
        for mark in part.marks:
            if mark.value == _LIST:
                leading = first and not any(map(_says_more, parts[:place]))
                age = _named_old(part, mark, leading=leading)
                age = Age.IN_FORCE if not leading and _is_dated(parts[place + 1 :]) else age
            elif mark.value == _ASIDE:
                age = Age.DOUBTFUL
            else:
                age = _in_a_state(part, mark)
                if age is Age.SUPERSEDED and not part.lists and not (named or _stamps(parts, place)):
                    age = Age.DOUBTFUL
            found = max(found, age)
    return found


_STATE, _LIST, _ASIDE = "state", "list", "aside"
"""Keys of the word lists: what is said of old lists, what they are called, and what may be said of any."""


def _is_dated(following: list[_Part]) -> bool:
    """'(previous list: 1 May 2026)' dates another list than the one that says so."""
    return bool(following) and bool(find_dates(following[0].text)) and not following[0].strange


def _says_more(part: _Part) -> bool:
    """More than a number or letter before a title."""
    return any(len(word) > 1 and word.isalpha() for word, *_ in part.tokens)


def _stamps(parts: list[_Part], place: int) -> bool:
    """A mark set apart before or behind what names a list, a time or a unit, or by itself: 'Tarif 2025 (périmé)'."""
    before = parts[:place]
    if any(part.strange and part.says("compared") for part in before):
        return False
    told = all(part.lists or part.marks or not part.strange for part in [*before, *parts[place + 1 :]])
    return told or place == 0 or any(part.lists for part in before)


def _named_old(part: _Part, mark: Found[str], *, leading: bool) -> Age:
    """'Old prices, until 30 June' is what a list is called; 'changes from the old prices' speaks of another one."""
    if any(place in part.strange for place in range(mark.first)):
        return Age.IN_FORCE
    if part.says("copula", mark.after):
        return Age.IN_FORCE
    moved = any(word in "+%" for word, *_ in part.tokens[mark.after :])
    more = moved or any(other.first > mark.first for other in part.marks)
    told = part.says("copula", 0, mark.first) or part.strange_in(mark.after) or more
    return Age.SUPERSEDED if leading and mark.first == 0 and not told else Age.DOUBTFUL


def _in_a_state(part: _Part, mark: Found[str]) -> Age:
    """'These prices are no longer valid', 'Tarif annulé', 'Ersetzt durch Liste 5'; not 'orders cancelled later'."""
    subject = _subject(part, mark.first)
    if subject is None:
        return _first_of_all(part, mark)
    if any(other.value == _LIST and other.first <= subject < other.after for other in part.marks):
        # Of an earlier list: the sheet may be that one, or the one after it.
        return Age.DOUBTFUL
    if subject in part.strange:
        return Age.DOUBTFUL if subject in part.boards or len(part.tokens) <= _FEW_WORDS else Age.IN_FORCE
    this = part.says("these_prices", 0, mark.first)
    told = part.says("copula", 0, mark.first) and not this
    if told or part.strange_in(0, mark.first) or (part.strange_in(mark.after) and not _by(part, mark)):
        return Age.DOUBTFUL
    return Age.SUPERSEDED


def _subject(part: _Part, end: int) -> int | None:
    """The place of the last word before a mark that is no small word; None where the mark stands first."""
    copulas = {place for match in phrases("copula").among(part.tokens) for place in range(match.first, match.after)}
    before = [place for place in range(end) if place not in copulas and part.tokens[place][0].isalnum()]
    return before[-1] if before else None


def _first_of_all(part: _Part, mark: Found[str]) -> Age:
    """'Superseded 1 October 2026', 'Expired quotes are not honoured', 'void where prohibited', 'obsolete grades'."""
    if _by(part, mark) or not part.strange_in(mark.after):
        return Age.SUPERSEDED
    if part.says("copula", mark.after) and not part.says("these_prices"):
        return Age.IN_FORCE
    follows = _next_word(part, mark)
    of_other = follows in part.strange and follows not in part.boards and not part.lists
    return Age.IN_FORCE if of_other else Age.DOUBTFUL


def _next_word(part: _Part, mark: Found[str]) -> int | None:
    places = range(mark.after, len(part.tokens))
    return next((place for place in places if part.tokens[place][0].isalpha()), None)


def _by(part: _Part, mark: Found[str]) -> bool:
    """Whether what has taken its place is told: 'superseded by the list of 1 May', 'ersetzt durch Liste 5'."""
    agents = {match.after for match in phrases("superseded_by").among(part.tokens)}
    return not agents.isdisjoint((mark.after, mark.after + 1))


def _called_old(parts: list[_Part]) -> bool:
    """'Price list 2025 (old)', 'Preisliste - alt': a list, and set apart behind it that it is an old one."""
    if not any(part.lists for part in parts[:-1]):
        return False
    return phrases("price_ages").whole(parts[-1].text) == "old"


def _of_board(parts: list[_Part], place: int, mark: Found[str]) -> Age:
    """The age that a mark among a row's remarks gives its price."""
    part = parts[place]
    if mark.first == 0 and mark.after == len(part.tokens):
        return Age.DOUBTFUL if len(parts) > 1 else Age.SUPERSEDED
    if mark.value != _STATE:
        return Age.IN_FORCE
    subject = _subject(part, mark.first)
    if subject is not None:
        of_it = subject in part.lists or subject in part.boards
        return Age.DOUBTFUL if of_it else Age.IN_FORCE
    if _by(part, mark) or (find_dates(part.text) and not part.strange_in(mark.after)):
        return Age.SUPERSEDED
    follows = _next_word(part, mark)
    return Age.DOUBTFUL if follows not in part.strange or follows in part.boards else Age.IN_FORCE

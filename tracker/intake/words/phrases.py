"""Finding the trade's words in a text: whole words only, longest first, so that 'GT' is never seen in 'WEIGHT'."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property, lru_cache
from typing import Any, Generic, TypeVar

from tracker.intake.words.fold import WRITTEN_WITH_DOTS, fold, runs_of_letters, spellings, token_words, tokens

T = TypeVar("T")
_AROUND = frozenset("()[]:;,!*")
Token = tuple[str, int, int]


@dataclass(frozen=True, slots=True)
class Found(Generic[T]):
    """One match: what it means, its span in the text, and the numbers of its first token and of the one after it."""

    value: T
    start: int
    end: int
    first: int
    after: int

    @property
    def span(self) -> tuple[int, int]:
        """Where it stands."""
        return self.start, self.end


class Phrases(Generic[T]):
    """Phrases with their meanings. A phrase may end or begin with '*'.

    Then its last or first word is a part of a word.
    """

    def __init__(self, meanings: Mapping[T, Iterable[str]]) -> None:
        self._by_first: dict[str, dict[tuple[str, ...], T]] = {}
        self._endings: list[tuple[str, T]] = []
        self._beginnings: list[tuple[str, T]] = []
        for meaning, phrases in meanings.items():
            for phrase in phrases:
                self._add(phrase, meaning)
        self._longest_first: dict[str, tuple[tuple[tuple[str, ...], T], ...]] = {}
        self._ends = tuple(ending for ending, _ in self._endings)
        self._starts = tuple(beginning for beginning, _ in self._beginnings)
        self._has_parts = bool(self._ends or self._starts)

    def _add(self, phrase: str, meaning: T) -> None:
        for spelling in spellings(phrase):
            if spelling.startswith("*"):
                self._endings.append((spelling[1:], meaning))
            elif spelling.endswith("*"):
                self._beginnings.append((spelling[:-1], meaning))
            else:
                self._add_words(token_words(spelling), meaning)

    def _add_words(self, words: tuple[str, ...], meaning: T) -> None:
        if not words:
            return
        self._by_first.setdefault(words[0], {}).setdefault(words, meaning)
        # '1000' is written '1 000' too.
        for at, word in enumerate(words):
            if len(word) == 4 and word.isdigit():
                self._add_words((*words[:at], word[0], word[1:], *words[at + 1 :]), meaning)
                break

    def at(self, found: Sequence[Token], place: int) -> Found[T] | None:
        """The longest phrase that begins at this token; None beyond the last one."""
        if place >= len(found):
            return None
        word = found[place][0]
        for words, meaning in self._beginning_with(word) if word in self._by_first else ():
            after = place + len(words)
            # A second word that differs tells nearly all of them apart.
            if len(words) > 1 and (after > len(found) or found[place + 1][0] != words[1]):
                continue
            if len(words) < 3 or all(found[place + i][0] == words[i] for i in range(2, len(words))):
                return Found(meaning, found[place][1], found[after - 1][2], place, after)
        meaning_of_part = self._by_part(word) if self._has_parts else None
        if meaning_of_part is None:
            return None
        return Found(meaning_of_part, found[place][1], found[place][2], place, place + 1)

    def _beginning_with(self, word: str) -> tuple[tuple[tuple[str, ...], T], ...]:
        """The phrases with this first word, the longest first: put in order when it first comes by in a text, as few
        of the thousands do."""
        ordered = self._longest_first.get(word)
        if ordered is None:
            ordered = self._longest_first[word] = _longest_first(self._by_first[word])
        return ordered

    def _by_part(self, word: str) -> T | None:
        for ending, meaning in self._endings:
            if word.endswith(ending):
                return meaning
        for beginning, meaning in self._beginnings:
            if word.startswith(beginning):
                return meaning
        return None

    def among(self, found: Sequence[Token]) -> list[Found[T]]:
        """Every phrase among the tokens, from left to right, none within another."""
        matches: list[Found[T]] = []
        after = 0
        # Nearly no word begins a phrase: that is told first, for a text is looked through for dozens of lists.
        for place in [place for place, (word, _, _) in enumerate(found) if self._may_begin(word)]:
            match = self.at(found, place) if place >= after else None
            if match is not None:
                matches.append(match)
                after = match.after
        return matches

    def _may_begin(self, word: str) -> bool:
        return word in self._by_first or (
            self._has_parts and (word.endswith(self._ends) or word.startswith(self._starts))
        )

    def find(self, text: str) -> tuple[Found[T], ...]:
        """Every phrase in a text as written."""
        looked = _looked_through(text)
        found: tuple[Found[T], ...] | None = looked.found.get(self)
        if found is None:
            # Nine lists in ten have no word of the text.
            strange = not self._has_parts and self._by_first.keys().isdisjoint(looked.words)
            found = looked.found[self] = () if strange else tuple(self.among(looked.tokens))
        return found

    def may_begin_in(self, text: str) -> bool:
        """Whether a word of a text may begin a phrase: told in a fraction of the time that it takes to find which, for
        texts of which each comes once."""
        if not self._begin_with_letters:
            return True
        return not self._by_first.keys().isdisjoint(runs_of_letters(fold(text)))

    @cached_property
    def _begin_with_letters(self) -> bool:
        """Whether every phrase begins with a word that is a run of letters however it is written."""
        return not self._has_parts and all(word.isalpha() and word not in WRITTEN_WITH_DOTS for word in self._by_first)

    def whole(self, text: str) -> T | None:
        """The meaning of a text that is this phrase and nothing else (brackets, dots and colons around it do not
        count).
        """
        found = _looked_through(text).bare
        match = self.at(found, 0)
        return match.value if match is not None and match.after == len(found) else None


def _longest_first(group: Mapping[tuple[str, ...], T]) -> tuple[tuple[tuple[str, ...], T], ...]:
    return tuple(sorted(group.items(), key=lambda entry: -len(entry[0]))) if len(group) > 1 else tuple(group.items())


def outside(found: Iterable[Found[str]], others: Iterable[Found[str]]) -> list[Found[str]]:
    """The matches that are no part of a longer one among the others: the 'net' of 'your net' is no word of its own."""
    spans = [(other.start, other.end) for other in others]
    return [match for match in found if not any(_is_part(match, *span) for span in spans)]


def between(text: str, found: Iterable[Found[str]]) -> Iterator[str]:
    """The pieces of a text before, between and behind matches that follow each other."""
    start = 0
    for match in found:
        yield text[start : match.start]
        start = match.end
    yield text[start:]


def without(text: str, found: Iterable[Found[str]]) -> str:
    """A text with one blank for each of the matches, which follow each other."""
    return " ".join(between(text, found))


def blanked(text: str, spans: Iterable[tuple[int, int]]) -> str:
    """A text with blanks for what stands there, so that all else keeps its place."""
    signs = list(text)
    for start, end in spans:
        signs[start:end] = " " * (end - start)
    return "".join(signs)


def _is_part(match: Found[str], start: int, end: int) -> bool:
    return start <= match.start and match.end <= end and match.end - match.start < end - start


def tokens_of(text: str) -> Sequence[Token]:
    """The words, digit runs and signs of a text as written."""
    return _looked_through(text).tokens


@dataclass(frozen=True, slots=True, eq=False)
class _LookedThrough:
    """A text's tokens, those of them that are no signs around it, its words, and what each of the lists that it was
    looked through for found in it."""

    tokens: tuple[Token, ...]
    bare: tuple[Token, ...]
    words: frozenset[str]
    found: dict[Phrases[Any], tuple[Found[Any], ...]] = field(default_factory=dict)


@lru_cache(maxsize=1024)
def _looked_through(text: str) -> _LookedThrough:
    """Remembered for a moment, because one text is looked through for hundreds of lists, for many of them by several
    rules."""
    found = tuple(tokens(fold(text)))
    words = frozenset([word for word, _, _ in found])
    bare = found if words.isdisjoint(_AROUND) else tuple([token for token in found if token[0] not in _AROUND])
    return _LookedThrough(found, bare, words)

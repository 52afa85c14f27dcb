"""What is left of a part of a sentence once all that is understood of it is taken out.

A value is taken for certain only from a part where nothing is left: the word that nobody thought of may be the one that
gives the weight, the time or the money to something else.
"""

from collections.abc import Iterable, Sequence

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, Token, blanked, tokens_of

Span = tuple[int, int]
_SHARED = "says_nothing_more"


def rest_of(part: str, spans: Iterable[Span], *sections: str) -> str:
    """The words left without these spans, the words of these lists and those that go without saying; '' where none is.

    A list is named by its section, or with one of its meanings: 'ordered.any'. The longest phrase of all lists goes
    first, for 'in' is also the first word of 'in der Regel'.
    """
    left = blanked(part, spans)
    found = tokens_of(left)
    known: list[Span] = []
    place = 0
    while place < len(found):
        longest = _longest(found, place, (*sections, _SHARED))
        place = place + 1 if longest is None else longest.after
        if longest is not None:
            known.append(longest.span)
    left = blanked(left, known)
    return " ".join(word for word in left.split() if any(map(str.isalnum, word)))


def _longest(found: Sequence[Token], place: int, sections: Iterable[str]) -> Found[str] | None:
    """The longest of the phrases that begin at one token in any of these lists."""
    matches = (_at(found, place, section) for section in sections)
    return max((match for match in matches if match is not None), key=lambda match: match.after, default=None)


def _at(found: Sequence[Token], place: int, section: str) -> Found[str] | None:
    name, _, meaning = section.partition(".")
    match = phrases(name).at(found, place)
    return match if match is not None and meaning in ("", match.value) else None

"""What is left of a part of a sentence once all that is understood of it is taken out.

A value is taken for certain only from a part where nothing is left: the word that nobody thought of may be the one that
gives the weight, the time or the money to something else.
"""

from collections.abc import Iterable

from tracker.intake.words.lists import joined
from tracker.intake.words.phrases import blanked

Span = tuple[int, int]
_SHARED = "says_nothing_more"


def rest_of(part: str, spans: Iterable[Span], *sections: str) -> str:
    """The words left without these spans, the words of these lists and those that go without saying; '' where none is.

    A list is named by its section, or with one of its meanings: 'ordered.any'. The longest phrase of all lists goes
    first, for 'in' is also the first word of 'in der Regel'.
    """
    left = blanked(part, spans)
    left = blanked(left, (match.span for match in joined(*sections, _SHARED).find(left)))
    return " ".join(word for word in left.split() if any(map(str.isalnum, word)))

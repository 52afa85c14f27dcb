"""Words that are said to be untrue: 'not withdrawn', 'nicht enthalten', 'ingår inte'."""

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, tokens_of

_NEAR = 2
"""Words that may stand between a negation and what it denies: 'no está incluido', 'is not yet deducted'."""


def denied(text: str, said: Found[str]) -> bool:
    """Whether a negation stands close before a phrase of this text, or right behind it."""
    found = tokens_of(text)
    around = (*range(max(0, said.first - 1 - _NEAR), said.first), said.after)
    return any(phrases("negations").at(found, place) is not None for place in around)

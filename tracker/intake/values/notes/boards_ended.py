"""Days on which a board ends: it may be given up then, or only its price."""

from collections.abc import Iterable

from tracker.intake.values.notes.statements import Statement, statements
from tracker.intake.values.times.validity import Validity
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import tokens_of


def stated_of_boards(text: str) -> Iterable[Statement]:
    """What a text states that is about some boards: 'går ut 2026-12-24', of GC1, names no last day of a price for
    certain, where the offer that ends then does."""
    for said in statements(text):
        if isinstance(said, Validity) and phrases("closes").at(tokens_of(said.words), 0) is not None:
            yield Validity(said.words, unread=True)
        else:
            yield said

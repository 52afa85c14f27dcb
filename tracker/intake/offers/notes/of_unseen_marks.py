"""Notes on rows that are marked in a way that is not seen: any row may be one of them, so that of none it is known."""

from collections.abc import Iterator
from dataclasses import replace

from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.price_changes import ChangesPrice
from tracker.intake.values.notes.clauses import sentences_of
from tracker.intake.values.notes.note_signs import sign_ahead
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.notes.unseen_marks import of_unseen_marks
from tracker.intake.values.notes.word_keys import of_orders, word_keys
from tracker.intake.values.prices.price_sentences import SaysBasis, SaysCurrency
from tracker.intake.values.times.lead_remarked import lead_remarked


def with_unseen_marks(level: Level) -> Level:
    """The level with what is said of such rows as texts of their own, which may be about any row."""
    texts = tuple(part for words in level.texts for part in _parted(words))
    return level if texts == level.texts else replace(level, texts=texts)


def may_be_of_any(words: Words) -> bool:
    """Whether a text is one of these, or a key whose words no cell has."""
    return words.unsure and (of_unseen_marks(words.text) or any(one.alone for one in word_keys(words.text)))


def _parted(words: Words) -> Iterator[Words]:
    if sign_ahead(words.text) or not of_unseen_marks(words.text):
        yield words
        return
    sentences = sentences_of(words.text)
    unseen = [sentence for sentence in sentences if of_unseen_marks(sentence) and _tells_terms(sentence)]
    plain = [sentence for sentence in sentences if sentence not in unseen]
    if plain:
        yield words if not unseen else replace(words, text=". ".join(plain))
    for sentence in unseen:
        yield replace(words, text=sentence, unsure=True)


def _tells_terms(sentence: str) -> bool:
    """What changes a price, its money or its unit is asked about by itself."""
    if any(isinstance(one, _ASKED) for one in statements(sentence)):
        return False
    return of_orders(sentence) or lead_remarked(sentence) is not None


_ASKED = (ChangesPrice, SaysBasis, SaysCurrency)

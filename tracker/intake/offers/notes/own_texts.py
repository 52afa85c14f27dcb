"""Texts around a table without what they say of competitors, which holds for none of its lines."""

from dataclasses import replace

from tracker.intake.offers.notes.scope import Level
from tracker.intake.tables.table import Words
from tracker.intake.values.changes.competitors import without_competitors


def of_own_prices(level: Level) -> Level:
    """The level without those sentences."""
    own = tuple(words for words in map(_own, level.texts) if words.text)
    return level if own == level.texts else replace(level, texts=own)


def _own(words: Words) -> Words:
    text = without_competitors(words.text)
    return words if text == words.text else replace(words, text=text)

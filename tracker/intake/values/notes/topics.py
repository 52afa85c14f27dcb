"""The words in a note that tell what its figures are of: the 'Minimum order' of 'Minimum order 10,000 lb'."""

from tracker.intake.words.lists import phrases

OF_TERMS = ("lead_topic", "minimum", "charges")
"""The sections of words for what some boards may have otherwise than the rest."""


def topic_of(text: str, *sections: str) -> str:
    """The first words of these sections in a text, as it has them; '' where it has none."""
    found = [match for section in sections for match in phrases(section).find(text)]
    first = min(found, key=lambda match: match.start, default=None)
    return text[first.start : first.end] if first is not None else ""

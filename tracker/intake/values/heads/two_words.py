"""Names of fields that run two cut words together: 'UNTPRC' and 'EFFDT'."""

from functools import lru_cache

from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import is_listed, meanings_of_phrases

_FEWEST, _SHORTEST_PART = 5, 2


@lru_cache(maxsize=4096)
def two_words(text: str) -> str:
    """A name in capitals that no list holds, as the two words of one head that it runs together; else as it is."""
    if len(text) < _FEWEST or not text.isalpha() or not text.isupper() or is_listed(fold(text)):
        return text
    parted = (f"{text[:place]} {text[place:]}" for place in range(_SHORTEST_PART, len(text) - _SHORTEST_PART + 1))
    heads = meanings_of_phrases("headers")
    return next((words for words in parted if tuple(fold(words).split()) in heads), text)

"""Misspelt words: near misses of a word list, letter by letter and under strict limits."""

import re
from functools import cache, lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from tracker.intake.words.fold import spellings, token_words
from tracker.intake.words.lists import word_lists, words
from tracker.intake.words.phrases import tokens_of

# One wrong, missing, extra or swapped letter in a short word, two in a long one; shorter words have too many
# neighbours.
_SHORTEST, _SHORTEST_MEANT, _LONG = 4, 5, 8
_LONGEST = 40


@cache
def meanings_of_phrases(section: str) -> dict[tuple[str, ...], tuple[str, ...]]:
    """Every phrase of a section, as tokens, with all the meanings whose lists hold it."""
    found: dict[tuple[str, ...], list[str]] = {}
    for meaning, phrases in words(section).items():
        for phrase in phrases:
            for spelling in spellings(phrase):
                found.setdefault(token_words(spelling), []).append(meaning)
    return {phrase: tuple(dict.fromkeys(meanings)) for phrase, meanings in found.items()}


@lru_cache(maxsize=8192)
def near_miss(word: str, section: str) -> tuple[str, ...]:
    """The meanings of the phrase that a word or phrase misspells; () where none is near enough.

    A word that begins with another letter is another word: 'height' is not 'weight'.
    """
    folded = " ".join(token for token, _, _ in tokens_of(word) if token.isalpha())
    if not _SHORTEST <= len(folded) <= _LONGEST:
        return ()
    slips = 2 if len(folded) >= _LONG else 1
    best = process.extractOne(folded, _long_phrases(section).keys(), scorer=OSA.distance, score_cutoff=slips)
    return _long_phrases(section)[best[0]] if best is not None and best[0][0] == folded[0] else ()


@lru_cache(maxsize=8192)
def nearest_word(word: str, section: str) -> str | None:
    """The one long word of a section's phrases that a long word misses by a letter; None for a word of theirs, and
    where none or several are as near. `word` is folded."""
    known = _long_words(section)
    if len(word) < _LONG - 1 or not word.isalpha() or word in known:
        return None
    near = process.extract(word, known, scorer=OSA.distance, score_cutoff=1, limit=2)
    return near[0][0] if len(near) == 1 and near[0][0][0] == word[0] else None


@lru_cache(maxsize=16384)
def words_misspelt(word: str, *sections: str, short: bool = False) -> tuple[str, ...]:
    """The words of these sections' phrases that a word may misspell by one letter; () for a word of any list. `word` is
    folded; `short`: words of four letters too."""
    if len(word) < _SHORTEST or not word.isalpha():
        return ()
    if is_listed(word):
        return ()
    known = _vocabulary(sections, _SHORTEST if short else _SHORTEST_MEANT)
    near = process.extract(word, known, scorer=OSA.distance, score_cutoff=1, limit=_MOST_MEANT)
    return tuple(meant for meant, _, _ in near)


_MOST_MEANT = 4


@cache
def _vocabulary(sections: tuple[str, ...], shortest: int) -> tuple[str, ...]:
    found = {token for section in sections for phrase in meanings_of_phrases(section) for token in phrase}
    return tuple(sorted(token for token in found if token.isalpha() and len(token) >= shortest))


def is_listed(word: str) -> bool:
    """Whether it is a word of any list; `word` is folded."""
    return word in _every_word()


@cache
def _every_word() -> frozenset[str]:
    listed = {text for meanings in word_lists().values() for texts in meanings.values() for text in texts}
    return frozenset(_LETTERS.findall("\n".join(spelling for text in listed for spelling in spellings(text))))


_LETTERS = re.compile(r"[^\W\d_]+")


@cache
def _long_words(section: str) -> tuple[str, ...]:
    found = {token for phrase in meanings_of_phrases(section) for token in phrase if token.isalpha()}
    return tuple(sorted(token for token in found if len(token) >= _LONG - 1))


@cache
def _long_phrases(section: str) -> dict[str, tuple[str, ...]]:
    return {
        " ".join(phrase): meanings
        for phrase, meanings in meanings_of_phrases(section).items()
        if len(" ".join(phrase)) >= _SHORTEST_MEANT and all(token.isalpha() for token in phrase)
    }

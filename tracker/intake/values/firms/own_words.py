"""The words of a firm's name that are its own: no words of the trade, of boards and of lists."""

import re

from tracker.intake.words.fold import fold
from tracker.intake.words.likeness import is_listed
from tracker.intake.words.lists import phrases

# The d' and l' of "Cartonneries du Val d'Ormoy" are small words inside a name.
ELIDED = re.compile(r"\b[dl]['’](?=[^\W\d_])")
_WORD = re.compile(r"[^\W\d_]+")


def has_words_of_its_own(name: str) -> bool:
    """Words that describe no board and no list, and join no others."""
    return any(
        phrases("generic_names").whole(word) is None and phrases("name_particles").whole(word) is None
        for word in _WORD.findall(ELIDED.sub("", name))
    )


def has_a_strange_word(name: str) -> bool:
    """A word that no list of words has, as 'Lakemont' is one: names are made of these."""
    return any(len(word) >= _SHORTEST and not _is_known(word) for word in _WORD.findall(name))


_SHORTEST = 4


def named_beside_its_trade(name: str) -> bool:
    """A name beside words of the trade: 'Premium Kraftboards' and 'Packaging Materials' have none; 'Vretakartong' is
    one that ends in such a word."""
    of_trade = [match for match in phrases("company").find(name) if match.value in ("trade", "weak", "first")]
    traded = {word for match in of_trade for word in _WORD.findall(name[match.start : match.end]) if _is_known(word)}
    own = _WORD.sub(lambda word: " " if word[0] in traded else word[0], name)
    return bool(of_trade) and has_words_of_its_own(own)


def _is_known(word: str) -> bool:
    return is_listed(fold(word))

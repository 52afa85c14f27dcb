"""Whether a misspelt word of a grade's name is a slip, or belongs to a name that somebody coined: 'duplx', 'Duplix'."""

from collections.abc import Sequence

from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, Phrases, Token


def surely_meant(text: str, found: Sequence[Token], mended: Sequence[Token], names: Phrases[str]) -> bool:
    """Whether each word of `found` that `mended` has otherwise is a slip, by itself or by the words around it."""
    named = list(names.among(mended))
    return all(
        _is_slip(word, meant, _stands_in_a_name(place, mended, named), place > 0 and text[start].islower())
        for place, ((word, start, _), (meant, *_)) in enumerate(zip(found, mended, strict=True))
        if word != meant
    )


def _is_slip(word: str, meant: str, in_a_name: bool, in_small_letters: bool) -> bool:
    """A name that somebody coined has a letter of its own or leaves the end off: 'Foldina', 'Triplax', 'Duple', where
    'foldng' and 'duplx' miss one and 'dulpex' has two swapped; the small letters of 'carton plian' are no
    name. In one of several words the others tell what a long word is, whatever letter of it is wrong: 'solid bleeched
    sulfate'."""
    if word[0] != meant[0] or len(meant) < _SURE:
        return False
    if len(meant) >= (_SURE + 1 if in_a_name else _NOT_COINED):
        return word[-1] == meant[-1] or len(word) < len(meant)
    missing, swapped = len(word) < len(meant), sorted(word) == sorted(meant)
    doubled = len(word) > len(meant) and set(word) == set(meant)
    return (missing or swapped or doubled) and (in_small_letters or swapped or word[-1] == meant[-1])


_SURE = 6
"""Letters of a word that is mended where nothing speaks against it."""
_NOT_COINED = 14
"""Letters of a word so long that nobody coins one a letter beside it: 'Faltschachtelkarten'."""


def _stands_in_a_name(place: int, found: Sequence[Token], named: Sequence[Found[str]]) -> bool:
    """With a word that tells more than that it is board: 'folding' of 'folding boxbord', not the last of 'Triplax
    board'."""
    around = next((name for name in named if name.first <= place < name.after), None)
    others = [found[at][0] for at in range(around.first, around.after) if at != place] if around is not None else []
    return any(phrases("board_nouns").whole(word) is None for word in others)

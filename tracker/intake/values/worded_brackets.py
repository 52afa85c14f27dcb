"""Order sizes behind words that are none of their own: 'Kleinmenge (< 1 t)', 'Small lots up to 5 t'."""

from tracker.intake.values.brackets import Bracket, bracket_text

_MOST_WORDS_BEFORE = 5


def bracket_behind_words(text: str) -> Bracket | None:
    """The order size in weight that a text ends with, behind a few words without figures; None where it ends in none.

    A bare weight ('Sorte A 5 t') is no order size.
    """
    words = text.split()
    for start in range(min(len(words), _MOST_WORDS_BEFORE + 1)):
        if any(sign.isdigit() for word in words[:start] for sign in word):
            return None
        bracket = bracket_text(" ".join(words[start:]))
        if bracket is not None and not bracket.alone and not bracket.not_weight:
            return bracket
    return None

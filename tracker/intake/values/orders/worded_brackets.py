"""Order sizes behind words that are none of their own: 'Kleinmenge (< 1 t)', 'Small lots up to 5 t'."""

from tracker.intake.values.figures.numbers_in_words import says_unread_number
from tracker.intake.values.orders.bracket_pieces import PIECES_OR_TONS
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.words.lists import phrases
from tracker.trade.quantities import MassUnit

_MOST_WORDS_BEFORE = 5


def bracket_behind_words(text: str) -> Bracket | None:
    """The order size in weight that a text ends with, behind a few words without figures; None where it ends in none.

    A bare weight ('Sorte A 5 t') is no order size, nor is what one of something weighs ('Tonne von 1.000 kg'), nor the
    end of a number ('one hundred twenty tonnes and up').
    """
    words = text.split() if not says_unread_number(text) else []
    for start in range(min(len(words), _MOST_WORDS_BEFORE + 1)):
        if any(sign.isdigit() for word in words[:start] for sign in word):
            return None
        bracket = bracket_text(" ".join(words[start:]))
        if bracket is not None and begins_or_ends(bracket):
            weighed = names_one_quantity(bracket) and _ends_in_what_is_weighed(" ".join(words[:start]))
            return None if weighed else bracket
    return None


def begins_or_ends(bracket: Bracket) -> bool:
    """Whether an order size is in weight and no bare weight: '5 to under 10 ST', '10 ST and up'; 'Offer ST-553' is the
    number of a paper."""
    if not bracket.not_weight:
        return not bracket.alone
    signs = {match.value for match in phrases("bracket").find(bracket.words)} & {"from", "above"}
    return bracket.not_weight == PIECES_OR_TONS and (bracket.end is not None or bool(signs))


def names_one_quantity(bracket: Bracket) -> bool:
    """'De 1.000 kg' and 'von 5 t': what a tonne, a reel or the one order weighs; by themselves no size begins there.
    Nor does one in 'one ton (1,000 kg)'."""
    if _says_it_twice(bracket):
        return True
    if bracket.end is not None or bracket.start_excluded:
        return False
    begins = (match for match in phrases("bracket").find(bracket.words) if match.value == "from")
    said = [phrases("of_a_quantity").whole(bracket.words[match.start : match.end]) for match in begins]
    return bool(said) and None not in said


def _says_it_twice(bracket: Bracket) -> bool:
    start, end = bracket.start, bracket.end
    return start is not None and end is not None and any(start.kg(ton) == end.kg(ton) is not None for ton in _TONS)


_TONS = (MassUnit.SHORT_TON, MassUnit.TONNE)


def _ends_in_what_is_weighed(before: str) -> bool:
    """'EUR la tonne', 'en bobines'."""
    rest = before.rstrip(" (")
    named = [*phrases("basis").find(rest), *(one for one in phrases("bracket").find(rest) if one.value in _WEIGHED)]
    return any(match.end == len(rest) for match in named)


_WEIGHED = ("pallet", "roll")

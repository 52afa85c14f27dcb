"""Who a list is for: 'For Marlow Board Inc.', 'An Kartonhaus Lind', 'Attn: Marlow Board' name a reader, no vendor."""

from tracker.intake.words.lists import phrases, without_words
from tracker.intake.words.phrases import blanked, tokens_of

_ATTENTION = "attention"
_SECTIONS = ("letters_to", "meant_for", _ATTENTION)


def leads_to_a_reader(text: str) -> bool:
    """Whether a text begins with a word before who it is for. The A of 'A Plus Paper' is no 'À'; 'Till Karton GmbH' and
    'Para Board, Inc.' leave no name behind such a word, which is the first of theirs."""
    found = tokens_of(text)
    for section in _SECTIONS:
        led = phrases(section).at(found, 0)
        if led is not None and led.after < len(found) and (led.end > 1 or not text.lstrip()[:1].isascii()):
            return section == _ATTENTION or not _names_only_a_trade(text[led.end :])
    return False


def _names_only_a_trade(rest: str) -> bool:
    """'Karton GmbH', 'Board Co., Inc.': what a firm deals in and its legal form, and no name."""
    forms = [match for match in phrases("company").find(rest) if match.value == "legal"]
    traded = without_words(blanked(rest, (match.span for match in forms)), "board_nouns", "board_goods")
    return bool(forms) and not rest.lstrip().startswith(":") and not any(map(str.isalnum, traded))

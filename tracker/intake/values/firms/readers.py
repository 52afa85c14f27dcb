"""Who a list is for: 'For Marlow Board Inc.', 'An Kartonhaus Lind', 'Attn: Marlow Board' name a reader, no vendor."""

from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases

_SECTIONS = ("letters_to", "meant_for", "attention")


def leads_to_a_reader(text: str) -> bool:
    """Whether a text begins with a word before who it is for. The A of 'A Plus Paper' is no 'À'."""
    found = tokens(fold(text))
    for section in _SECTIONS:
        led = phrases(section).at(found, 0)
        if led is not None and led.after < len(found) and (led.end > 1 or not text.lstrip()[:1].isascii()):
            return True
    return False

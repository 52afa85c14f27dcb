"""Signs by which the amount behind a charge's name takes something off: '-$12/ST', '($12)/ST'.

A dash with blanks around it parts the amount from its name, and '($12/ST)' has its unit in the brackets as well.
"""

import re

_MONEY = r"(?:[$€£]|[A-Z]{3}\s?)"
_MINUS = re.compile(rf"(?:^|\s)[-−]{_MONEY}?\d|[:=]\s*[-−–]\s?{_MONEY}?\d|(?:^|\s){_MONEY}[-−]\d")
_IN_BRACKETS = re.compile(rf"\({_MONEY}?\s?\d+(?:[.,]\d+)?\s?[$€£]?\)\s*(?:/|$)")
_SIGNED = re.compile(rf"[-−(]{_MONEY}\s?\d|{_MONEY}[-−]\d")


def takes_off(amount: str) -> bool:
    """Whether an amount has a minus right before its figure, or brackets around it, as books have."""
    return _MINUS.search(amount) is not None or _IN_BRACKETS.search(amount) is not None


def signs_money(amount: str) -> bool:
    """Whether the sign stands with the money's own, so that nothing else can be meant: '-$12', '$-12'."""
    return _SIGNED.search(amount) is not None

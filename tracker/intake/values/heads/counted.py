"""Heads that are counted: 'a) per short ton | b) per MSF', '(1) under 5 t | (2) 5 t and over'."""

import re

_COUNT = re.compile(r"\s*(?:\(?(?:[^\W\d_]|\d{1,2})\)\s+(?=[^\W_])|\d{1,2}\.\s+(?=[^\W_0]))")
"""'10. 000' is one figure that was torn apart."""


def without_count(text: str) -> str:
    """The head behind the letter or the number that counts it."""
    return _COUNT.sub("", text, count=1) if _COUNT.match(text) else text

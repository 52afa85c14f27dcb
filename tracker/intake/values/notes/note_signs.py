"""The signs that footnotes begin with: '*', '¹', '2)', '(a)'; also the numbers of notes that count themselves."""

import re

# '*)' and '(*)' are '*'; '1)' and '(1)' are '¹'.
STAR = r"\(\*+\)|\*+\)?|[†‡§°]+\)?"
SIGN = (
    rf"{STAR}|[¹²³⁴⁵⁶⁷⁸⁹]+\)?|\([\da-eA-E]\)|\[[\da-e]\]|[\da-e]\)|\[(?:not )?letter [A-Z]+\]|\[not [^\[\]\s]{{1,9}}\]"
    r"|\[=[^\[\]]{1,40}\]"
)
_AHEAD = re.compile(rf"\s*({SIGN})(?:\s*[=:–—-]?\s*(?=[^\W\d])|\s*[=:]\s*(?=[$€£¥])|\s+(?=[\d$€£¥]))")
WITHIN = re.compile(rf"(?<=[^\W\d_]{{3}})({STAR}|[¹²³⁴⁵⁶⁷⁸⁹]+\)?|\(\*+\))(?=\s+[^\W\d_])")
"""A sign at the end of a word of a head that goes on behind it: the star of 'Price* below 10 t'."""
RAISED = str.maketrans("¹²³⁴⁵⁶⁷⁸⁹", "123456789", "()[]")


KEYED = "="
"""What the sign of a key's entry begins with: '[=yellow] lead time 5 weeks'."""
NOT, LETTER = "not ", "letter "
"""What the sign of rows without another one begins with ('[not *] lead time 3 weeks'), and a letter that is a mark."""


def marked(sign: str) -> frozenset[str]:
    """The signs that lines must not carry for a note with this sign to hold for them, two for 'not letter AB' and 'not
    *,**'; none for any other sign."""
    if not sign.startswith(NOT):
        return frozenset()
    kept = sign.removeprefix(NOT)
    letters = kept.removeprefix(LETTER)
    return frozenset(kept.split(",")) if letters == kept else frozenset(f"{LETTER}{letter}" for letter in letters)


def sign_ahead(text: str) -> str:
    """The sign that a note begins with, '' for none; '¹', '1)' and '(1)' are one."""
    found = _AHEAD.match(text)
    return found.group(1).translate(RAISED) if found else ""


def as_written(text: str) -> str:
    """A note with the word of a key's entry as a person writes it: 'yellow = lead time 5 weeks'."""
    sign = sign_ahead(text)
    return f"{sign.removeprefix(KEYED)} {KEYED} {without_sign(text)}" if sign.startswith(KEYED) else text


def without_sign(text: str) -> str:
    """The note behind its sign."""
    found = _AHEAD.match(text)
    return text[found.end() :] if found else text

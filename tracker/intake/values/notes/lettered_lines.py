"""Lines that letters tell apart: '(a)' before a line, and 'Items (a) and (c): six weeks' in a note.

Each sign is given a number by which mark and note find each other: a letter its place in the alphabet, a Roman number
of several letters one behind all of these, so that the '(i)' of either kind is the same in both places.
"""

import re

from tracker.intake.words.lists import pattern, phrases

_SIGN = r"\(?(?P<sign>[A-Za-z]|[ivx]{2,4})\)"
_MARK = re.compile(rf"{_SIGN}|(?P<stop>[A-Za-z])\.")
_JOINED = rf"\s*(?:,|&|\+|[-–]|\b{pattern('range', 'and', 'or', 'any')}\b)?\s*"
_NAMED = re.compile(rf"\s*{_SIGN}(?:{_JOINED}\(?(?:[A-Za-z]|[ivx]{{2,4}})\))*")
_EACH = re.compile(_SIGN)
_ROMAN = ("", "i", "ii", "iii", "iv", "v", "vi", "vii", "viii", "ix", "x", "xi", "xii", "xiii", "xiv", "xv")
_BEHIND_LETTERS = 500


def number_of_mark(text: str) -> int | None:
    """The number of '(b)', 'b)', 'b.' and '(iv)'."""
    found = _MARK.fullmatch(text.strip())
    return _number(found["sign"] or found["stop"]) if found is not None else None


def letters_as_numbers(text: str) -> str:
    """'Items (a) and (c): six weeks' as 'Items 1 and 3: six weeks'."""
    for match in reversed(phrases("line_numbers").find(text)):
        named = _NAMED.match(text, match.end)
        if named is not None:
            numbers = _EACH.sub(lambda each: str(_number(each["sign"]) or each[0]), named[0])
            text = text[: match.end] + numbers + text[named.end() :]
    return text


def _number(sign: str) -> int | None:
    sign = sign.casefold()
    if len(sign) == 1:
        return ord(sign) - ord("a") + 1
    return _BEHIND_LETTERS + _ROMAN.index(sign) if sign in _ROMAN else None

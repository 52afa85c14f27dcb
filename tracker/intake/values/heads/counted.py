"""Heads that are counted: 'a) per short ton | b) per MSF', '(1) under 5 t | (2) 5 t and over', '1. under 5 t'; and the
numbers of notes behind the names of loads: 'LTL (1) | TL (2)'."""

import re

from tracker.intake.words.lists import phrases

_IN_BRACKETS = r"\(?(?:[^\W\d_]|\d{1,2})\)\s+(?=[^\W_])"
_BEFORE_A_STOP = r"\d{1,2}\.\s+(?=[^\W_0])"
"""'10. 000' is one figure that was torn apart."""
_COUNT = re.compile(rf"\s*{_IN_BRACKETS}")
_NOTE = re.compile(r"(?<=[^\W\d_])\s*\(?[1-9]\)$")
_ON_WHEELS = ("truckload", "railcar", "part_load", "half_load")
_ANY_COUNT = re.compile(rf"\s*(?:{_IN_BRACKETS}|{_BEFORE_A_STOP})")


def without_count(text: str) -> str:
    """The head behind the letter or the number that counts it. '1. Angebot' stays: there the number may tell which of
    the offers."""
    return _behind(_COUNT, text)


def size_without_count(text: str) -> str:
    """The same of an order size, of which '1.' tells nothing, nor the '(2)' of 'TL (2)', which is no two truckloads."""
    note = _NOTE.search(text)
    if note is not None and phrases("bracket").whole(text[: note.start()]) in _ON_WHEELS:
        return text[: note.start()]
    return _behind(_ANY_COUNT, text)


def _behind(count: re.Pattern[str], text: str) -> str:
    return count.sub("", text, count=1) if count.match(text) else text

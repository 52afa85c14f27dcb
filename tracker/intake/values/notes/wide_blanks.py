"""Matters that wide blanks set apart on one line: 'Good through 06/07/2026      U.S. funds (USD)'."""

import re
from itertools import pairwise

from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.dates import find_dates
from tracker.intake.words.lists import phrases

_WIDE = re.compile(r"(?<=[^\s,:])[ \u00a0]{4,}(?=[^\W\d_a-z])")


def on_lines_of_their_own(text: str) -> str:
    """The text with a line for each matter; as it is where a piece says no whole one, or goes on about another: the
    'SBS only' behind what is charged."""
    pieces = _WIDE.split(text)
    if len(pieces) < 2 or not all(map(_is_whole, pieces)) or any(_goes_on(behind) for _, behind in pairwise(pieces)):
        return text
    return "\n".join(pieces)


def _is_whole(piece: str) -> bool:
    return bool(statements(piece) or find_dates(piece)) and not _LEADS_ON.search(piece)


_LEADS_ON = re.compile(r"(?<!\w)[a-zà-ÿ]{2,3}\s*$")
"""'… for orders of', '… ohne den': a short word at the end, which no matter ends with."""


def _goes_on(behind: str) -> bool:
    return boards_named(behind).some or bool(phrases("only_these").find(behind) or phrases("forms_named").find(behind))

"""What numbers the lines of a letter in a cell of its own: '(a) | GC2, 250 g/m², at £1,085 per tonne;' and '1) | …'.

A sign that marks a place by its form ('(a)', '1)', '2.', '–') needs no more; a bare number or letter may be anything,
and is one where it counts on from the line before, by one or by ten.
"""

import re
from decimal import Decimal

from tracker.intake.grid import Cell
from tracker.intake.tables.view import View
from tracker.intake.words.lists import phrases

_SIGN = r"[^\W\d_]|[ivx]{1,4}|\d{1,3}"
_MARK = re.compile(rf"\(\s*(?:{_SIGN})\s*\)|(?:{_SIGN})\s*[.)]|[-–—•·*▪●○]", re.I)
_CALLED = re.compile(r"(?P<word>[^\W\d]+|n[°º]|#)\.?\s*\d{1,3}\s*[.):]?", re.I)
_NUMBERS = ("no", "nr", "n°", "nº", "#")
_BARE = re.compile(r"[^\W\d_]|\d{1,3}")
_STEPS = (1, 10)
_FEWEST = 2


def item_marks(view: View) -> dict[int, Cell]:
    """The mark of each row that holds one and words to its right, and no more."""
    pairs = [[cell for _, cell in sorted(view.rows[row].items())] for row in view.order if len(view.rows[row]) == 2]
    led = [(mark, words) for mark, words in pairs if isinstance(words.value, str)]
    marks = {mark.row: mark for mark, _ in led if is_item_mark(mark)}
    bare = [mark for mark, _ in led if isinstance(mark.value, str | Decimal) and _BARE.fullmatch(mark.text.strip())]
    return marks | ({mark.row: mark for mark in bare} if _count_on(bare) else {})


def is_item_mark(cell: Cell) -> bool:
    """'(a)', '2.', 'Pos. 3' and a dash before a line."""
    text = cell.text.strip()
    if not isinstance(cell.value, str) or _MARK.fullmatch(text):
        return isinstance(cell.value, str)
    called = _CALLED.fullmatch(text)
    word = called["word"] if called is not None else ""
    return word.casefold() in _NUMBERS or (bool(word) and phrases("line_numbers").whole(word) is not None)


def _count_on(marks: list[Cell]) -> bool:
    """1, 2, 3; 10, 20, 30; a, b, c: from the first on, each by the same step."""
    places = [_place(mark.text.strip()) for mark in marks]
    step = places[0] if places else 0
    return len(places) >= _FEWEST and step in _STEPS and places == [step * count for count in range(1, len(places) + 1)]


def _place(text: str) -> int:
    return int(text) if text.isdecimal() else ord(text.casefold()) - ord("a") + 1

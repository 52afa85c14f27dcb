"""Cell addresses, and which cells of a vendor's sheet an understanding rests on."""

import re
from collections.abc import Iterable
from enum import IntEnum

from tracker.trade.offer import Line, Question, State

_A1 = re.compile(r"^([A-Z]{1,3})([1-9]\d{0,6})$")


class Use(IntEnum):
    """What a cell did for the reading; the higher one is shown where several hold."""

    SAID = 1
    PRICE = 2
    REFUSED = 3
    ASKED = 4


def column_letters(column: int) -> str:
    """0 is 'A', 27 is 'AB'."""
    letters = ""
    column += 1
    while column:
        column, remainder = divmod(column - 1, 26)
        letters = chr(ord("A") + remainder) + letters
    return letters


def place_of(address: str) -> tuple[int, int] | None:
    """'D5' as (row, column) counted from 0; None for what is no address."""
    match = _A1.match(address)
    if match is None:
        return None
    column = 0
    for letter in match[1]:
        column = column * 26 + ord(letter) - ord("A") + 1
    return int(match[2]) - 1, column - 1


def uses_of(lines: Iterable[Line], questions: Iterable[Question]) -> dict[str, dict[tuple[int, int], Use]]:
    """Sheet name to cell to what it was used for."""
    uses: dict[str, dict[tuple[int, int], Use]] = {}

    def mark(sheet: str, address: str, use: Use) -> None:
        place = place_of(address)
        if place is not None:
            of_sheet = uses.setdefault(sheet, {})
            of_sheet[place] = max(use, of_sheet.get(place, use))

    for line in lines:
        source = line.offer.source
        use = {State.ACCEPTED: Use.PRICE, State.QUESTION: Use.ASKED, State.REFUSED: Use.REFUSED}[line.state]
        for address in (source.cell, *source.also):
            mark(source.sheet, address, use)
        for said in line.evidence:
            mark(source.sheet, said.said_by, Use.SAID)
    for question in questions:
        for sheet, address in question.cells:
            mark(sheet, address, Use.ASKED)
    return uses

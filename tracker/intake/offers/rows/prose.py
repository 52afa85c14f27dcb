"""Prices within sentences: too much is told around them to be taken as an offer, and too little to be left out."""

from collections.abc import Iterator

from tracker.intake.offers.boards.physics import far_off
from tracker.intake.offers.draft import Draft
from tracker.intake.offers.sheet import ReadSheet
from tracker.intake.tables.table import Words
from tracker.intake.values.prices.money import PriceText
from tracker.intake.values.prices.priced_prose import priced_prose
from tracker.trade.basis import BoardMeasure
from tracker.trade.offer import NoteCode

_SHOWN = 120


def prose_drafts(sheet: ReadSheet, *, alone: bool = False) -> Iterator[Draft]:
    """One held line for each text around the tables that names a board and what it costs.

    `alone`: the file offers nothing else, and less is needed to ask.
    """
    asked: set[tuple[int, int]] = set()
    for words in _around(sheet):
        told = priced_prose(words.text, alone=alone)
        place = words.cell.row, words.cell.column
        if told is not None and place not in asked and _may_buy_board(told.price):
            asked.add(place)
            yield _asked(words, told.sentence)


def _around(sheet: ReadSheet) -> Iterator[Words]:
    yield from sheet.found.texts
    for read in sheet.tables:
        yield from (*read.table.titles, *read.table.notes)
        yield from (*read.table.headings(), *read.table.lines())


def _may_buy_board(price: PriceText | None) -> bool:
    """'GC1 400 µm goes up by 15 EUR/t': what no board costs is a change or a charge, whatever its words."""
    if price is None:
        return True
    bases = price.basis.bases if price.basis is not None else frozenset()
    codes = price.currency.codes if price.currency is not None else ()
    code = "USD" if "USD" in codes else next(iter(codes), "")
    readings = [(reading.value, basis) for reading in price.amounts for basis in bases]
    return not readings or any(far_off(amount, code, basis, _NO_BOARD) is None for amount, basis in readings)


_NO_BOARD = BoardMeasure(None, None)


def _asked(words: Words, told: str) -> Draft:
    draft = Draft(words.sheet, words.cell)
    shown = told if len(told) <= _SHOWN else f"{told[:_SHOWN]}…"
    text = (
        f"A sentence names a price of board: “{shown}”. If it is an offer, write its board and its price in cells "
        "of their own and import the file again; else leave it out."
    )
    draft.ask(NoteCode.NUMBER_AMBIGUOUS, draft.price_key, draft.where, text, shown)
    return draft

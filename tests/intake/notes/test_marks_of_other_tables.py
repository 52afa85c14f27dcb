"""A footnote on a mark that lines of one table carry is about those, and no line of the next table."""

import pytest

from tests.intake.sheets import book, grid, lines
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

_NOTES = {
    "en": "* plus barrier surcharge 45 €/t",
    "de": "* zuzüglich Barrierezuschlag 45 €/t",
    "fr": "* plus supplément énergie 45 €/t",
    "es": "* más recargo energético 45 €/t",
    "sv": "* plus barriärtillägg 45 €/t",
}
_TITLE, _HEAD = ["Prices DAP your works"], ["Board", "g/m²", "µm", "EUR/t"]


def sheet(first, second, *notes, between=()):
    below = [[], ["Continued"], _HEAD, [second, 300, 385, 802], ["GD2", 350, 460, 794]]
    return [_TITLE, _HEAD, [first, 250, 390, 1248], *between, *below, [], *([note] for note in notes)]


def charged(rows):
    return [[f"{one.price:f}" for one in line.offer.charges] for line in lines(rows).values()]


@pytest.mark.parametrize("note", _NOTES.values(), ids=_NOTES)
@pytest.mark.parametrize(("sign", "mark"), [("*", "*"), ("*)", "*"), ("¹", "¹"), ("1)", "1)")])
def test_a_mark_of_the_first_table_is_none_of_the_next(note, sign, mark):
    assert charged(sheet(f"GC1 {mark}", "GD2", note.replace("*", sign))) == [["45"], [], []]


@pytest.mark.parametrize("note", _NOTES.values(), ids=_NOTES)
def test_nor_is_one_of_the_second_that_of_the_first(note):
    assert charged(sheet("GC1", "GD2 *", note)) == [[], ["45"], []]


@pytest.mark.parametrize("note", _NOTES.values(), ids=_NOTES)
def test_without_any_mark_the_note_is_of_all(note):
    assert charged(sheet("GC1", "GD2", note)) == [["45"]] * 3


def test_what_begins_with_the_sign_below_another_table_is_that_table_s():
    rows = sheet("GC1 *", "GD2", "* lead time 3 weeks", between=[["* lead time 5 weeks"]])
    assert [line.offer.lead_days for line in lines(rows).values()][1:] == [(21, 21)] * 2


def test_terms_on_a_sheet_of_their_own_are_of_the_sheet_with_the_mark():
    sheets = [grid([_TITLE, _HEAD, [name, 300, 385, 802]], sheet=name[:3]) for name in ("GC1 *", "GD2")]
    terms = grid([["Terms"], ["* plus barrier surcharge 45 €/t"]], sheet="Terms")
    found = read_workbook(book(*sheets, terms), Answers()).lines
    assert [len(line.offer.charges) for line in found] == [1, 0]

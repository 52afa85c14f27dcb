"""Letters whose lines are offers, each with its mark in the cell before it; and notes that name a line by its mark."""

import pytest

from tests.intake.sheets import lines, read

ENGLISH = [
    "GC1 folding boxboard, 260 gsm, 410 micron, in reels, at £1,110.00 per tonne;",
    "white-lined chipboard GD2, 320 gsm, 420 micron, in sheets 720 x 1020 mm, at £161.25 per thousand sheets;",
    "unlined grey chipboard, 900 gsm, 1400 micron, in reels, at £610.00 per tonne.",
]
SPANISH = [
    "Cartulina SBS estucada dos caras, 300 g/m², 365 micras: US$ 1.312,50 por tonelada métrica",
    "Cartulina FBB (GC1), 255 g/m², 405 micras: US$ 1.148,00 por tonelada métrica",
]


def _letter(marks, offers, *below):
    return [["Oakmere Board Ltd"], ["We quote as follows, delivered:"], *zip(marks, offers, strict=True), *below]


def _accepted(found):
    return [(cell, str(one.offer.price)) for cell, one in found.items() if str(one.state) == "accepted"]


MARKS = [("(a)", "(b)", "(c)"), ("1)", "2)", "3)"), ("–", "–", "–"), (1, 2, 3), (10, 20, 30), ("a", "b", "c")]
CALLED = [("Item 1", "Item 2", "Item 3"), ("Pos. 1", "Pos. 2", "Pos. 3"), ("No. 1", "No. 2", "No. 3")]


@pytest.mark.parametrize("marks", [*MARKS, *CALLED], ids=lambda marks: marks[0])
def test_a_mark_before_a_line_leaves_it_an_offer(marks):
    found = lines(_letter(marks, ENGLISH, ["Delivery is three weeks from order."]))
    assert _accepted(found) == [("B3", "1110.00"), ("B4", "161.25"), ("B5", "610.00")]
    assert (found["B4"].offer.sheet_mm, str(found["B4"].offer.basis)) == ((720, 1020), "1000sheets")
    assert found["B5"].offer.lead_days == (21, 21)


def test_spanish_lines_with_marks_are_offers():
    found = lines([["Papelera Vega Alta S.A."], ["Ofrecemos FOB puerto:"], *zip(["1)", "2)"], SPANISH, strict=True)])
    assert _accepted(found) == [("B3", "1312.50"), ("B4", "1148.00")]
    assert (found["B3"].offer.coated_sides, found["B3"].offer.delivered) == (2, False)


@pytest.mark.parametrize("marks", [(18, 24, 28), ("5 t", "5 t", "20 t"), (5, 5, 20)], ids=lambda marks: str(marks[0]))
def test_a_figure_that_counts_nothing_leaves_the_line_a_question(marks):
    assert not _accepted(lines(_letter(marks, ENGLISH)))


@pytest.mark.parametrize("note", ["Item (c): delivery six weeks.", "Items (b) to (c): delivery six weeks."])
def test_a_note_on_a_lettered_line_is_that_lines(note):
    found = lines(_letter(("(a)", "(b)", "(c)"), ENGLISH, [note]))
    assert (found["B3"].offer.lead_days, found["B5"].offer.lead_days) == (None, (42, 42))


def test_roman_numbers_name_their_lines():
    found = lines(_letter(("(i)", "(ii)", "(iii)"), ENGLISH, ["Items (i) and (iii) are quoted ex works."]))
    assert [one.offer.delivered for one in found.values()] == [False, True, False]


def test_the_firm_below_the_buyer_is_addressed():
    head = [["Oakmere Board Ltd"], ["Mill Lane, Oakmere"], [], ["The Buyer"], ["Linfold Cartons Ltd, 3 Quay Road"], []]
    assert read([*head, ["(a)", ENGLISH[0]]]).vendor == "Oakmere Board Ltd"
    assert read([*head[:2], [], head[4], [], ["(a)", ENGLISH[0]]]).vendor is None

"""Heads that one sign or a dot made something else of: '#', 'F.O.B.', 'Offer 1', and units beside labels of a form."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["SBS C1S", 12, 51], ["SBS C1S", 16, 68], ["CRB C1S", 18, 71], ["CRB C1S", 20, 79]]


def form(numbers, head="#", asked="Price unit:"):
    rows = [[numbers[place], *board, 1250, 4, 1190 + place] for place, board in enumerate(BOARDS)]
    empty = [[number, None, None, None, None, None, 0] for number in numbers[len(BOARDS) :]]
    heads = [head, "Grade", "Caliper pt", "Basis lb/MSF", "List price", "Disc. %", "Net price"]
    return lines([["Harwick Point Board"], ["Currency:", "USD", None, asked, "short ton"], [], heads, *rows, *empty])


@pytest.mark.parametrize("head", ["#", "Line #", "Item #", "Pos. #"])
@pytest.mark.parametrize("numbers", [(1, 2, 3, 4, 5, 6, 7), (10, 20, 30, 40, 50), (1, 2, 4, 5, 6)])
def test_numbers_of_lines_are_no_pounds(head, numbers):
    found = form(numbers, head)
    offers = [found[cell].offer for cell in ("G5", "G6", "G7", "G8")]
    assert {(offer.from_kg, offer.below_kg) for offer in offers} == {(None, None)}
    assert {(found["G5"].state, offer.basis) for offer in offers} == {("accepted", "short_ton")}


def test_pounds_under_their_sign_are_orders():
    rows = [["CRB C1S", 18, 71, size, price] for size, price in ((5000, 46), (10000, 44), (20000, 42))]
    found = lines([["USD per cwt"], ["Grade", "Caliper pt", "lb/MSF", "#", "Price"], *rows])
    assert float(found["E4"].offer.from_kg) == pytest.approx(4535.9237)


@pytest.mark.parametrize("asked", ["Price unit:", "Unit:", "Price basis", "UoM", "Preisbasis:", "Unidad de precio:"])
def test_the_second_label_of_a_row_asks_for_the_unit(asked):
    assert form((1, 2, 3, 4), asked=asked)["G5"].offer.basis == "short_ton"


def test_a_label_goes_on_over_the_unit_of_its_amount():
    rows = [["Minimum order", 5, "t"], [], ["Sorte", "µm", "g/m²", "EUR/t"], ["GC1", 390, 240, 1138]]
    assert lines(rows)["D4"].offer.minimum_kg == 5000


@pytest.mark.parametrize("row", [["Minimum order:", 5, "Unit:", "t"], ["Mindestmenge:", "5", "Einheit:", "t"]])
def test_the_unit_behind_an_amount_is_not_that_of_the_prices(row):
    rows = [["EUR"], row, [], ["Sorte", "µm", "g/m²", "Preis"], ["GC1", 390, 240, 1138]]
    assert lines(rows)["D5"].offer.basis is None


TERMS = [
    ("F.O.B. mill", "Delivered Dorwell"), ("f.o.b. works", "delivered"), ("E.X.W.", "D.A.P."),
    ("F.C.A. Werk", "frei Haus"), ("F.C.A. usine", "rendu"), ("F. O. B. mill", "dlvd"), ("E.X.W. bruk", "fritt kund"),
]  # fmt: skip


@pytest.mark.parametrize("over", [False, True])
@pytest.mark.parametrize(("collected", "delivered"), TERMS)
def test_terms_with_dots_head_prices(collected, delivered, over):
    head = ["Sorte", "µm", "g/m²", collected, delivered]
    unit = [[None, None, None, "EUR/t"]] if over else []
    rows = [["GC1", 390, 240, 860, 918], ["GC2", 440, 270, 850, 908], ["GD2", 465, 350, 745, 803]]
    found = lines([["Harwick Karton AG"], ["Preise in EUR/t"], [], *unit, head, *rows])
    told = {(cell[0], line.state, line.offer.delivered) for cell, line in found.items()}
    assert told == {("D", "accepted", False), ("E", "accepted", True)}


def test_a_diameter_heads_no_prices():
    rows = [["GC1", 390, 240, 1200, 860], ["GC2", 440, 270, 1200, 850]]
    found = lines([["EUR/t"], ["Sorte", "µm", "g/m²", "Ø", "Preis"], *rows])
    assert list(found) == ["E3", "E4"]


def across(heads, boards):
    rows = [["Quality", *boards], ["g/m²", 240, 270, 350], ["Price, GBP/tonne delivered", 1138, 1097, 748]]
    return lines([["Ravenmoor Carton Ltd, quotation"], [], [None, *heads], *rows])


@pytest.mark.parametrize("word", ["Offer", "Option", "Angebot", "Offre", "Oferta", "Offert"])
def test_offers_of_several_boards_are_no_rounds_of_bids(word):
    found = across([f"{word} {number}" for number in (1, 2, 3)], ("GC1", "GC2", "GD2"))
    assert [line.state for line in found.values()] == ["accepted"] * 3


def test_a_revised_offer_beside_the_first_is_asked_about():
    found = across(["Initial offer", "Revised offer", "Offer 3"], ("GC1", "GC2", "GD2"))
    assert found["B6"].state == "question"


@pytest.mark.parametrize("head", ["Mill grade", "Supplier's description", "Vendor board", "Lieferant Sorte"])
def test_a_vendors_word_for_the_board_heads_boards_and_no_vendors(head):
    rows = [[head, "Caliper, in.", "lb/MSF", "USD/ST"], ["SBS C1S", 0.018, 75, 1250], ["CRB C1S", 0.02, 79, 920]]
    found = lines([["Harwick Point Board Inc."], [], *rows])
    assert [(line.state, line.offer.grade) for line in found.values()] == [("accepted", "SBS"), ("accepted", "CRB")]


def test_a_vendors_head_beside_that_of_the_boards_still_heads_vendors():
    rows = [["Mill", "Grade", "Caliper, in.", "lb/MSF", "USD/ST"]]
    rows += [["Tarn Valley Board", "SBS C1S", 0.018, 75, 1250], ["Ottermoor Papers", "CRB C1S", 0.02, 79, 920]]
    assert [line.offer.vendor for line in lines(rows).values()] == ["Tarn Valley Board", "Ottermoor Papers"]

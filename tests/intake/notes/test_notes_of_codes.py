"""What a text says of one code is said of the rows that hold it, under the head by which the text calls it.

All vendors, boards and prices are invented.
"""

import pytest

from tests.intake.sheets import lines

LANGUAGES = [
    ("Mill", "Mill A: US dollars per short ton, FOB Dayton", "USD", "short_ton"),
    ("Mill", "Mill A prices are US dollars per short ton, FOB Dayton", "USD", "short_ton"),
    ("Werk", "Werk A: Euro je Tonne, ab Werk", "EUR", "tonne"),
    ("Usine", "Usine A : euros par tonne, départ usine", "EUR", "tonne"),
    ("Fábrica", "Fábrica A: euros por tonelada métrica, en fábrica", "EUR", "tonne"),
    ("Bruk", "Bruk A: euro per 1000 kg, fritt fabrik", "EUR", "tonne"),
]


def priced(head, *notes):
    rows = [["SBS", 450, 350, "T", 1180], ["CUK", 500, 330, "A", 1080], ["CRB", 500, 400, "A", 742]]
    sheet = [["Halden Board"], ["Grade", "µm", "g/m²", head, "Price"], *rows, [], *([note] for note in notes)]
    return [
        (line.offer.currency, line.offer.basis and str(line.offer.basis), line.offer.delivered, str(line.state))
        for line in lines(sheet).values()
    ]


@pytest.mark.parametrize(("head", "note", "currency", "basis"), LANGUAGES)
def test_the_unit_and_freight_of_one_mill_are_no_others(head, note, currency, basis):
    other, *own = priced(head, note)
    assert other == (None, None, None, "question")
    assert own == [(currency, basis, False, "accepted")] * 2


def test_each_mill_has_its_own_where_one_text_tells_of_both():
    other, *own = priced("Mill", "Mill A: USD per short ton, FOB Dayton; Mill T: EUR per tonne, delivered")
    assert other == ("EUR", "tonne", True, "accepted")
    assert own == [("USD", "short_ton", False, "accepted")] * 2


@pytest.mark.parametrize("note", ["Mill prices in US dollars per short ton, FOB Dayton", "USD per short ton, FOB mill"])
def test_what_names_no_code_holds_for_all(note):
    assert priced("Mill", note) == [("USD", "short_ton", False, "accepted")] * 3


def test_a_unit_that_is_not_certain_is_asked_of_all():
    told = priced("Mill", "Mill A: US dollars per short ton before the yearly bonus")
    assert [state for *_, state in told] == ["question"] * 3


@pytest.mark.parametrize("head", ["Unit", "Code", "Item"])
@pytest.mark.parametrize("left_out", ["C", "P", "M", "T"])
def test_a_code_that_the_key_leaves_out_is_no_unit(head, left_out):
    key = ["A = USD per short ton, B = USD per cwt"] if head == "Unit" else []
    key = key or [f"{head} A: figure is US dollars per short ton", f"{head} B: figure is US dollars per cwt"]
    rows = [["SBS", 18, 220, left_out, 98], ["CUK", 20, 230, "B", 54], ["CRB", 24, 260, "A", 780]]
    sheet = [["Halden Board"], ["Grade", "Caliper (pt)", "Basis wt (lb/3000 sq ft)", head, "Price"], *rows]
    asked, *told = lines([*sheet, [], *([line] for line in key)]).values()
    assert (str(asked.state), asked.offer.price, asked.offer.basis) == ("question", 98, None)
    assert [(line.offer.basis, str(line.state)) for line in told] == [("cwt", "accepted"), ("short_ton", "accepted")]


def test_units_beside_a_code_of_the_key_stay_units():
    rows = [["SBS", 18, 220, "cwt", 58], ["CUK", 20, 230, "A", 1080], ["CRB", 24, 260, "ST", 780]]
    sheet = [["Price list, USD"], ["Grade", "Caliper (pt)", "Basis wt (lb/3000 sq ft)", "Unit", "Price"], *rows]
    found = lines([*sheet, [], ["A = USD per short ton"]]).values()
    assert [line.offer.basis for line in found] == ["cwt", "short_ton", "short_ton"]

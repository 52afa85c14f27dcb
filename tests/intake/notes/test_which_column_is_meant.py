"""Notes about one column by its letter are said of no other."""

from tests.intake.sheets import lines

HEAD = ["Board", "Caliper (pt)", "lb/MSF"]
ROWS = [["SBS C1S", 18, 75, 1100, 1215], ["CRB", 18, 72, 900, 995]]


def money(*legend, heads=("Price", "Price")):
    found = lines([*([text] for text in legend), [*HEAD, *heads], *ROWS])
    return {cell: (line.offer.currency, line.offer.basis, line.offer.delivered) for cell, line in found.items()}


def test_each_column_has_its_own_currency_and_unit_from_two_notes_or_one():
    expected = {"D": ("USD", "short_ton", True), "E": ("EUR", "tonne", False)}
    parted = money("Col. D = USD/ST delivered", "Col. E = EUR/tonne ex works")
    assert parted == {f"{column}{row}": said for row in (4, 5) for column, said in expected.items()}
    expected = {"D": ("USD", "short_ton", None), "E": ("EUR", "tonne", None)}
    together = money("Column D: USD per short ton; column E: EUR per tonne")
    assert together == {f"{column}{row}": said for row in (3, 4) for column, said in expected.items()}


def test_a_note_about_another_column_contradicts_no_head():
    found = money("Spalte E: EUR/Tonne", heads=("Price USD/ST", "Price"))
    assert found["D3"] == ("USD", "short_ton", None)
    assert found["E3"] == ("EUR", "tonne", None)

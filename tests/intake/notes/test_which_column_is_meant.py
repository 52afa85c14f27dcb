"""Notes about one column, by its letter or as the superseded one, are said of no other."""

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


def _accepted(found) -> set[str]:
    return {cell for cell, line in found.items() if str(line.state) == "accepted"}


def test_a_note_between_a_list_and_an_index_is_the_lists():
    head = ["Kvalitet", "Pris*", "Ytvikt"]
    rows = [["GD2", 2590, "300 g/m²"], ["GT1", 2610, "280 g/m²"], ["*) SEK per 1 000 m², fritt kund."]]
    found = lines([head, *rows, [], ["Massaindex", 1184]])
    assert (found["B2"].offer.currency, str(found["B2"].offer.basis)) == ("SEK", "1000m2")


def test_what_is_said_of_superseded_prices_is_said_of_their_column():
    letter = ["Dear Sirs, the superseded prices are shown for reference only."]
    head = ["Grade", "g/m²", "Superseded £/tonne", "New £/tonne from 1.2.27", "Change %"]
    found = lines([letter, [], head, ["GD2", 280, 812, 842, 3.7], ["GD2", 320, 806, 836, 3.7]])
    assert _accepted(found) == {"D4", "D5"}


def test_a_note_calls_off_the_superseded_column_and_not_the_new_one():
    note = ["US dollars per short ton. The 2026 prices below are superseded and shown for reference only."]
    head = ["Grade", "pt", "2026 price (superseded)", "Change", "NEW price 1/4/2027"]
    found = lines([note, [], head, ["CUK", 16, 1045, 50, 1095], ["CUK", 18, 1035, 50, 1085]])
    assert _accepted(found) == {"E4", "E5"}

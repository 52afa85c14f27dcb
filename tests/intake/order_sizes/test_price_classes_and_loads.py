"""Prices by class, which a note explains by order sizes, and one price for every kind of load."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper pt", "lb/MSF"]
ROWS = [["CCNB", 16, 63, 51.4, 47.2, 45.1], ["SBS C1S", 12, 51, 67.8, 63.5, 61.25], ["SBS C1S", 16, 67, 66.8, 62.5, 60]]
SIZES = ["orders under 10,000 lb", "10,000 lb to less than 40,000 lb", "40,000 lb and up"]


def by_class(heads, notes, over=None):
    title = ["Harwick Point Board Sales"], ["US$ per cwt, delivered"], []
    return lines([*title, [None, None, None, over], [*HEAD, *heads], *ROWS, [], *[[note] for note in notes]])


@pytest.mark.parametrize(
    ("over", "heads", "called"),
    [
        ("Price class", ("A", "B", "C"), ("Class A", "Class B", "Class C")),
        ("Bracket", (1, 2, 3), ("Bracket 1", "Bracket 2", "Bracket 3")),
        (None, ("Class A", "Class B", "Class C"), ("Class A", "Class B", "Class C")),
        ("Preisstufe", ("A", "B", "C"), ("Stufe A", "Stufe B", "Stufe C")),
        ("Palier", ("A", "B", "C"), ("Palier A", "Palier B", "Palier C")),
        ("Tramo", ("A", "B", "C"), ("Tramo A", "Tramo B", "Tramo C")),
        ("Prisklass", ("A", "B", "C"), ("Klass A", "Klass B", "Klass C")),
    ],
)
def test_a_note_for_each_class_gives_its_order_size(over, heads, called):
    found = by_class(heads, [f"{name}: {size}" for name, size in zip(called, SIZES, strict=True)], over)
    first = [found[cell].offer for cell in ("D6", "E6", "F6")]
    assert [(offer.from_kg is None, offer.below_kg is None) for offer in first] == [
        (True, False), (False, False), (False, True),
    ]  # fmt: skip
    assert float(first[0].below_kg) == float(first[1].from_kg) == pytest.approx(4535.9237)


def test_classes_of_something_else_are_asked_about():
    found = by_class(("A", "B", "C"), ["Class A: coated", "Class B: uncoated", "Class C: seconds"], "Price class")
    assert found["D6"].state == "question"


@pytest.mark.parametrize("word", ["Class", "Quality", "Grade", "Klasse", "Catégorie", "Sorte"])
def test_prices_under_classes_that_nothing_explains_are_no_names_of_boards(word):
    found = by_class((f"{word} A", f"{word} B", f"{word} C"), [])
    assert len(found) == 9
    assert {line.state for line in found.values()} == {"question"}


def test_a_second_name_of_the_board_is_no_price():
    rows = [["CCNB", 16, 63, 4711, 51.4], ["SBS C1S", 12, 51, 4712, 67.8]]
    found = lines([["US$ per cwt"], [*HEAD, "Quality no.", "Price"], *rows])
    assert list(found) == ["E3", "E4"]


LOADS = [
    ("Carload", "Carload / LTL same price. Slitting: ask."), ("Carload", "Same price any quantity"),
    ("LKW", "LKW und Teilladung gleicher Preis"), ("Camion complet", "Même prix camion complet ou charge partielle"),
    ("Camión completo", "Mismo precio camión completo y carga parcial"), ("Helbil", "Samma pris helbil och delparti"),
]  # fmt: skip


def of_load(sheet, note):
    rows = [["Quality", "µm", "g/m²", "EUR/t"], ["GC1", 390, 240, 1138], ["GC2", 400, 250, 1038]]
    return lines([["Harwick Karton AG"], ["FCA"], [], *rows, [], [note]], sheet=sheet)["D5"]


@pytest.mark.parametrize(("sheet", "note"), LOADS)
def test_one_price_for_every_load_is_no_price_of_one(sheet, note):
    line = of_load(sheet, note)
    assert (line.state, line.offer.from_kg, line.offer.below_kg) == ("accepted", None, None)


@pytest.mark.parametrize("note", ["LTL +3 cents", "Same price for SBS and CUK"])
def test_a_load_whose_price_is_not_that_of_others_is_asked_about(note):
    assert "bracket-unread" in codes(of_load("Carload", note))


def lots(amounts, boards=("SBS C1S", "CUK", "CCNB", "URB"), title="Spot offers"):
    head = ["#", "Grade", "Caliper pt", "lb/MSF", "Qty", "Price"]
    rows = [
        [n, board, 18, 75, amount, 60 - n] for n, (board, amount) in enumerate(zip(boards, amounts, strict=True), 1)
    ]
    return lines([[f"{title}, USD per cwt"], [], head, *rows])["F4"]


def test_amounts_of_several_kinds_are_what_there_is_of_each_lot():
    line = lots(["1 truck", "25 t", "8 skids", "2 trucks"])
    assert (line.state, line.offer.from_kg) == ("accepted", None)


def test_amounts_of_one_board_may_be_order_sizes():
    assert "bracket-unread" in codes(lots(["8 skids", "1 truck", "2 trucks", "3 trucks"], ["SBS C1S"] * 4))
    assert "bracket-unread" in codes(lots(["8 skids", "1 truck", "25 t", "3 trucks"], title="Quotation"))

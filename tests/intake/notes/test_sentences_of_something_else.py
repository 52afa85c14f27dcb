"""Sentences below a list that speak of other sales, other money and other days than its prices."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State

BOARDS = [
    ["Board", "Caliper (in)", "lb/MSF", "Price, dollars per ton"],
    ["SBS", 0.012, 53, 1255],
    ["CUK", 0.018, 75, 1015],
]


@pytest.mark.parametrize(
    ("note", "basis"),
    [
        ("Orders for export are quoted separately, in dollars per metric ton.", "short_ton"),
        ("Export shipments are priced separately, in dollars per metric ton.", "short_ton"),
        ("All prices are in dollars per metric ton.", "tonne"),
    ],
)
def test_what_is_sold_apart_says_nothing_of_these_prices(note, basis):
    found = lines([["Boards"], *BOARDS, [], ["A ton is 2,000 pounds." if basis == "short_ton" else ""], [note]])
    assert [line.offer.basis for line in found.values()] == [basis] * 2


@pytest.mark.parametrize(
    "note",
    [
        "Todo cheque devuelto causa un cargo del 20 %.",
        "A 15% charge applies to returned checks.",
        "Tout chèque impayé entraîne un supplément de 20 %.",
    ],
)
def test_what_a_bad_cheque_costs_is_no_charge_on_board(note):
    assert [line.offer.charges for line in lines([["All prices delivered"], *BOARDS, [], [note]]).values()] == [(), ()]


def test_a_sentence_with_money_below_the_boards_is_no_row_and_takes_no_note_away():
    notes = [["Energy surcharge of $0.50 per cwt"], ["We credit $3.50 for each good core that is sent back."]]
    head = ["Board", "Points", "Lb per 1,000 sq. ft.", "Board ¢/lb"]
    found = lines([head, ["CCNB", 16, 66, 43.25], ["CCNB", 18, 73, 42.75], [], *notes])
    assert {at: [charge.price for charge in line.offer.charges] for at, line in found.items()} == {
        "D2": [pytest.approx(0.5)],
        "D3": [pytest.approx(0.5)],
    }


def test_a_line_of_a_letter_with_a_name_that_nobody_knows_is_asked_about():
    told = [["18pt C1S SBS, 76 lb/MSF - $1,095.00/ST"], ["22pt Silkmoor white, 88 lb/MSF - $51.00/cwt"]]
    assert {at: line.state for at, line in lines(told).items()} == {"A1": State.ACCEPTED, "A2": State.QUESTION}


@pytest.mark.parametrize(("heading", "grade"), [("Unlined chipboard", "URB"), ("Our usual sizes", "FBB")])
def test_the_letters_of_an_items_code_give_way_to_a_heading_that_names_the_board(heading, grade):
    rows = [["gsm", "micron", "Mill code", "£/tonne"], [heading], [400, 560, "UC40", 598], [600, 860, "UC60", 589.5]]
    assert [line.offer.grade for line in lines(rows).values()] == [grade] * 2


@pytest.mark.parametrize(
    ("heading", "rows", "grades"),
    [
        ("Folding boxboard", [("FBB270", 270, 450), ("CRB300", 300, 400)], ["FBB", None]),
        ("Frischfaserkarton GC1", [("GC230", 230, 300), ("GD250", 250, 330)], ["FBB", None]),
        ("Graupappe", [("GD500", 500, 700), ("GC70", 700, 1000)], [None, "URB"]),
        ("Our usual sizes", [("GC230", 230, 300), ("CRB300", 300, 400)], ["FBB", "CRB"]),
    ],
)
def test_a_grade_with_its_measure_is_asked_about_under_a_heading_of_another(heading, rows, grades):
    told = [["Product", "g/m²", "µm", "EUR/t"], [heading], *([*row, 1100] for row in rows)]
    found = list(lines(told).values())
    assert [line.offer.grade for line in found] == grades
    assert ["grade-unknown" in codes(line) for line in found] == [grade is None for grade in grades]


@pytest.mark.parametrize("code", ["SUS12", "CRB40"])
def test_so_is_a_code_of_a_grades_own_letters(code):
    (line,) = lines([["Item", "Caliper (pt)", "USD/ST"], ["FBB"], [code, 18, 1228]]).values()
    assert codes(line) == {"grade-unknown"}


@pytest.mark.parametrize(
    ("title", "basis"),
    [
        ("USD per short ton FOB mill, freight quoted separately", "short_ton"),
        ("Preise in EUR je Tonne, Fracht wird gesondert angeboten", "tonne"),
        ("Export orders, US$ per metric ton", "tonne"),
    ],
)
def test_freight_quoted_apart_and_an_export_list_leave_the_unit_as_it_is(title, basis):
    found = lines([[title], ["Board", "g/m²", "µm", "Price"], ["GC1", 270, 450, 1200]])
    assert [line.offer.basis for line in found.values()] == [basis]


@pytest.mark.parametrize("head", ["Charge", "Charge (kg)"])
def test_the_number_of_a_making_is_no_charge(head):
    rows = [["Sorte", "g/m²", "µm", "EUR/t", head], ["GC1", 300, 450, 1120, 117], ["GD2", 350, 450, 820, 118]]
    assert [(line.state, line.offer.charges) for line in lines(rows).values()] == [(State.ACCEPTED, ())] * 2

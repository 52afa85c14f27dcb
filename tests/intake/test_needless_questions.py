"""What a sheet says plainly and was asked about all the same; beside each the case that is asked still."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.intake.values.caliper import find_calipers
from tracker.intake.values.grade import find_grade
from tracker.intake.values.money import price_text
from tracker.trade.basis import Basis

GC1 = ["GC1", 250, 410]


def basis_said(text):
    (line,) = lines([[text], ["Grade", "g/m²", "µm", "Price"], [*GC1, 1250]]).values()
    return line.offer.currency, line.offer.basis


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("Monnaie : euro, unité : tonne", ("EUR", Basis.TONNE)), ("Währung: EUR, Einheit: Tonne", ("EUR", Basis.TONNE)),
        ("Currency: EUR, unit: tonne", ("EUR", Basis.TONNE)), ("Currency: EUR, contact: sales", ("EUR", None)),
    ],
)  # fmt: skip
def test_labels_side_by_side_say_each_its_own(text, said):
    assert basis_said(text) == said


@pytest.mark.parametrize(
    ("note", "state"),
    [
        ("Freight to destination, US$ per cwt (not included in prices)", "accepted"),
        ("Freight, US$ per cwt, not included in the price", "accepted"),
        ("Freight allowed, all prices in US$ per cwt", "question"),
    ],
)
def test_what_freight_is_per_says_nothing_of_the_prices(note, state):
    rows = [["Board", "pt", "lb/MSF", "Price USD/ST"], ["SBS C1S", 18, 75, 1180], [], [note]]
    assert [str(line.state) for line in lines(rows).values()] == [state]


@pytest.mark.parametrize(
    ("unit", "basis"), [("$ CA/t.c.", Basis.SHORT_TON), ("$ CA/t.m.", Basis.TONNE), ("$ CA/t", None)]
)
def test_short_forms_of_the_two_tons(unit, basis):
    rows = [["Carton", "pt", "lb/1000 pi²", f"Prix ({unit})"], ["SBS C1S", 18, 75, 1580]]
    assert [line.offer.basis for line in lines(rows).values()] == [basis]


@pytest.mark.parametrize(
    ("text", "rest"),
    [("$0.59 each", ""), ("0.59 each net", ""), ("$0.59 each way", "way"), ("1.18 the sheet", "")],
)
def test_a_word_that_leads_to_a_unit_may_be_one(text, rest):
    assert price_text(text).rest == rest


@pytest.mark.parametrize(
    ("weight", "caliper"), [("1 100", "1 650"), ("1\u202f100", "1\u00a0650"), ("1 100 g/m²", "1 650 µm")]
)
def test_thousands_set_apart_by_a_space_are_one_figure(weight, caliper):
    rows = [["Material", "g/m²", "µm", "SEK/m²"], ["URB", weight, caliper, "8,47"], ["GD2", "280", "360", "2,84"]]
    first = next(iter(lines(rows).values())).offer
    assert (first.grammage_gsm, first.caliper_um) == (1100, 1650)


def test_two_figures_with_a_space_between_are_asked():
    rows = [["Material", "g/m²", "µm", "SEK/m²"], ["GC2", "250", "410 455", "4.10"]]
    assert next(iter(lines(rows).values())).offer.caliper_um is None


@pytest.mark.parametrize(
    ("text", "calipers"),
    [
        ("GC2 275 g/m², 0,44 mm, Rolle 1.120 mm", [440]), ("GC2 440 µm bobine 1.120 mm", [440]),
        ("Greyboard roll 1.120 mm", [1120]), ("GC2 0,44 mm, Nutzen 1.120 mm", [440, 1120]),
    ],
)  # fmt: skip
def test_beside_a_caliper_a_figure_behind_roll_is_its_width(text, calipers):
    assert [reading.um for reading in find_calipers(text)] == [Decimal(um) for um in calipers]


@pytest.mark.parametrize(("head", "caliper"), [("Web", Decimal("457.2")), ("Thickness", None)])
def test_inches_below_a_word_for_width_are_no_caliper(head, caliper):
    rows = [
        ["USD per short ton"], ["Board", "Caliper", "Weight", head, "Net"],
        [None, "points", "lb per 1,000 sq ft", "inches", "USD"],
        ["SBS C1S", 18, 76, 42.5, 1214], ["SBS C2S", 16, 70, 38, 1250],
    ]  # fmt: skip
    assert next(iter(lines(rows).values())).offer.caliper_um == caliper


@pytest.mark.parametrize(("first", "second"), [("Dicke", "Bahn"), ("Ep.", "Machine"), ("Thickness", "Slit")])
def test_millimetres_that_no_board_is_thick_are_a_width_beside_those_that_one_is(first, second):
    heads = [["EUR/tonne"], ["Sorte", first, "g/m²", second, "Preis"], [None, "mm", None, "mm", None]]
    found = lines([*heads, ["GC1", 0.41, 250, 1020, 1214], ["GD2", 0.45, 350, 1200, 900]])
    assert [line.offer.caliper_um for line in found.values()] == [410, 450]
    alone = lines([*heads, ["GC1", None, 250, 1020, 1214], ["GD2", None, 350, 1200, 900]])
    assert not any(line.offer.caliper_um for line in alone.values())


@pytest.mark.parametrize(
    ("text", "grades", "sides"),
    [
        ("SUS uncoated back", ("CUK",), None), ("CUK Rückseite ungestrichen", ("CUK",), None),
        ("SBS verso non couché", ("SBS",), None), ("Unbleached kraft, uncoated back", (), None),
        ("SUS uncoated", ("CUK", "UUK"), 0),
    ],
)  # fmt: skip
def test_a_back_without_coating_says_nothing_of_the_face(text, grades, sides):
    reading = find_grade(text)
    assert (reading.grades, reading.coated_sides) == (grades, sides)


def test_order_sizes_broken_over_two_rows_of_the_head():
    rows = [
        ["Board", "Spec", None, "US cents per pound by order weight"],
        [None, "Caliper", "Basis", "Under", "10,000 -", "40,000"],
        [None, "pt", "lb/MSF", "10,000 lb", "39,999 lb", "lb & up"],
        ["SBS C1S", 12, 50, 69.25, 66, 64.75],
        [None, 14, 58, 68.9, 65.65, 64.4],
    ]
    found = list(lines(rows, merged=merged((0, 1, 0, 2), (0, 3, 0, 5))).values())
    assert {str(line.state) for line in found} == {"accepted"}
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found[:3]] == [
        (None, Decimal("4535.9237")), (Decimal("4535.9237"), Decimal("18143.6948")), (Decimal("18143.6948"), None),
    ]  # fmt: skip


def test_whole_order_sizes_below_each_other_are_left_apart():
    rows = [
        ["USD/ST", None, None, "Under 10,000 lb", "10,000 lb and up"],
        ["Board", "pt", "lb/MSF", "Mill", "Mill"],
        ["SBS C1S", 12, 50, 1385, 1320],
    ]
    assert [line.offer.price for line in lines(rows).values()] == [1385, 1320]


@pytest.mark.parametrize(("gap", "states"), [([None], ["accepted", "accepted"]), ([], ["accepted", "accepted"])])
def test_a_letter_s_boards_and_their_prices_with_an_empty_column_between(gap, states):
    rows = [
        ["Nordvik Carton AB"],
        ["GC2 270 g/m² 440 µm", *gap, "1 312 €/tonne"],
        ["GD2 300 g/m² 385 µm", *gap, "884,50 €/tonne"],
    ]
    assert [str(line.state) for line in lines(rows).values()] == states


def test_words_beside_a_table_with_heads_are_no_boards_of_it():
    rows = [
        ["Grade", "g/m²", "µm", "EUR/t", None, "Sorte GC1: einseitig"],
        ["GC1", 250, 410, 1250, None, "GC2 300 g/m² auf Anfrage"],
    ]
    assert list(lines(rows)) == ["D2"]


def test_a_quantity_below_the_boards_makes_no_charge_of_one_that_costs_as_much():
    head = ["Board", "12 pt", "16 pt", "18 pt"]
    rows = [
        ["USD per short ton"], head, ["SBS C1S", 1300, 1289, 1278], ["CUK", 1180, 1169, 1158],
        ["SBS premium white", 1342, 1331, 1320], [], ["Tons shipped 2025", 48210],
    ]  # fmt: skip
    assert {"B5", "C5", "D5"} <= {cell for cell, line in lines(rows).items() if not codes(line) & {"number-ambiguous"}}
    rows[4] = ["SBS premium white", 42, 31, 20]
    assert not any(str(line.state) == "accepted" for cell, line in lines(rows).items() if cell in ("B5", "C5", "D5"))


@pytest.mark.parametrize("label", ["Tons shipped 2025", "Offererad volym, ton", "Planmenge (t)", "Toneladas previstas"])
def test_a_quantity_below_the_boards_is_no_price(label):
    rows = [["EUR/tonne"], ["Grade", "g/m²", "µm", "Net"], ["GC1", 250, 410, 1250], ["GC2", 300, 500, 1210]]
    assert list(lines([*rows, [], [label, None, None, 420]])) == ["D3", "D4"]
    assert "D6" in lines([*rows, [], ["Brownboard 7", None, None, 420]])


def test_a_calendar_of_makings_offers_nothing():
    rows = [["Calidad", "Gramaje g/m²", "Semana de fabricación", "Toneladas previstas"], ["GC1", 235, 24, 310]]
    assert lines(rows) == {}
    assert list(lines([[*rows[0][:2], "Precio EUR/t", rows[0][3]], ["GC1", 235, 1240, 310]])) == ["C2"]


@pytest.mark.parametrize(
    ("said", "leads"),
    [
        ("Délai 3 semaines, contact : service commercial, poste 2", [(21, 21), (21, 21)]),
        ("Poste 2 : délai 3 semaines", [None, (21, 21)]),
    ],
)  # fmt: skip
def test_the_number_of_a_telephone_is_that_of_no_line(said, leads):
    rows = [["Pos.", "Qualité", "g/m²", "µm", "€ / tonne"], [1, "GC1", 250, 410, 1250], [2, "GC2", 300, 500, 1210]]
    assert [line.offer.lead_days for line in lines([[said], [], *rows]).values()] == leads


def test_a_price_to_be_asked_for_heads_no_table():
    rows = [
        ["Descripción", "Espesor", "Gramaje", "Precio neto"], ["GC1", "355 µm", "215 g/m²", "1.160,00 EUR / 1000 kg"],
        ["GC1", "475 µm", "300 g/m²", "a cons."], ["GC1", "540 µm", "350 g/m²", "386,04 EUR por mil m²"],
    ]  # fmt: skip
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"D2": "accepted", "D4": "accepted"}

"""Units of freight, charges, orders and worked examples are none of the prices."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import State


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


@pytest.mark.parametrize("line", ["Sheeting charges, US$/cwt (where sheets are ordered)", "Freight rates in US$/cwt"])
def test_the_unit_of_a_charge_is_not_the_prices(line):
    rows = [["US$/ST FOB mill"], ["Grade", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1190], [], [line]]
    assert states(rows) == {"D3": ("accepted", "1190")}


HEAD = ["Board", "gsm", "micron", "EUR/t"]
BOARDS = [["SBS", 240, 340, 1298], ["GC1", 280, 450, 1180], ["GD2", 300, 420, 845]]


def test_a_worked_example_says_no_units_of_the_prices_above():
    note = "Worked example (how a price per MSF is found; not a quotation)"
    assert {str(line.state) for line in lines([HEAD, *BOARDS, [], [note]]).values()} == {"accepted"}
    priced_otherwise = lines([HEAD, *BOARDS, [], ["Prices per MSF"]]).values()
    assert {str(line.state) for line in priced_otherwise} == {"question"}


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


def test_a_sentence_on_freight_says_no_unit_of_the_prices():
    said = "Freight to your dock is quoted beside each item for the lane we use today, truck, in US$/cwt."
    rows = [[said], [*EXPORT_HEAD, "USD per short ton", "Freight US$/cwt"], [*BOARD, 1190, 2.9]]
    line = lines(rows)["D3"]
    assert (str(line.state), line.offer.basis, len(line.offer.charges)) == ("accepted", "short_ton", 1)


def test_the_unit_right_of_a_quantity_is_the_quantitys():
    rows = [
        ["Line description", "Qty", "UOM", "Price unit", "Bid price USD", "Min order qty", "Min UOM"],
        ["SBS, C1S, 0.018 IN, 76 LB/MSF", 1200, "ST", "1 ST", 1221, 20000, "LB"],
        ["URB, 0.030 IN, 105 LB/MSF, SHEET 30 X 40 IN", 90000, "EA", "1000 EA", 412, 10000, "EA"],
    ]
    assert [line.offer.basis for line in lines(rows).values()] == ["short_ton", "1000sheets"]


@pytest.mark.parametrize("unit", ["MinUoM", "MIN_UOM", "MOQ UoM"])
def test_a_unit_beside_a_smallest_order_is_of_the_order(unit):
    head = ["Grade", "g/m²", "µm", "Amount", "Curr", "Per", "UoM", "MinQty", unit]
    rows = [["GC1", 250, 410, 1218, "GBP", 1, "TNE", 5000, "KG"], ["GD2", 350, 460, 842, "GBP", 1, "TNE", 3000, "KG"]]
    assert [line.offer.minimum_kg for line in lines([head, *rows]).values()] == [5000, 3000]


US = (["Board", "pt", "lb/MSF", "Base price"], ["CUK", 18, 74, 1083], ["CUK", 21, 87, 1075])
METRIC = (["Board", "µm", "g/m²", "Price"], ["GC1", 410, 255, 1083], ["GC1", 455, 305, 1075])


@pytest.mark.parametrize(
    ("title", "boards", "freight", "unit"),
    [
        ("Prices in USD per short ton, FOB mill", US, "Freight from mill (add if we ship)", "$/cwt"),
        ("Prices in USD per short ton, FOB mill", US, "Freight", "$/cwt"),
        ("Preise in EUR/t ab Werk", METRIC, "Frachtzuschlag (bei Lieferung durch uns)", "EUR/100 kg"),
        ("Prix en EUR/t départ usine", METRIC, "Transport depuis l'usine (si nous livrons)", "EUR/kg"),
        ("Precios en EUR/t franco fábrica", METRIC, "Flete desde fábrica (si entregamos)", "EUR/kg"),
        ("Priser i EUR/t fritt fabrik", METRIC, "Frakt från bruk (om vi levererar)", "EUR/kg"),
    ],
)
def test_the_unit_of_freight_is_none_of_the_prices(title, boards, freight, unit):
    zones = [["Zone 1", "to 300 km", 1.4], ["Zone 2", "301-600 km", 2.2], ["Zone 3", "beyond", 3.5]]
    found = lines([[title], [], *boards, [], [freight, None, unit], *zones])
    assert [(line.state, line.offer.price) for line in found.values()] == [
        (State.ACCEPTED, 1083), (State.ACCEPTED, 1075),
    ]  # fmt: skip


def test_two_units_that_are_said_of_prices_are_asked_about():
    rows = [["Prices in USD per short ton"], ["Prices in USD per cwt"], [], *US]
    assert all(codes(line) == {"basis-unknown"} for line in lines(rows).values())


def test_the_unit_beside_words_for_prices_is_theirs():
    rows = [["Prices, freight included", None, "USD/cwt"], [], ["Board", "pt", "lb/MSF", "Price"], ["CUK", 18, 74, 54]]
    (line,) = lines(rows).values()
    assert (line.state, str(line.offer.basis)) == (State.ACCEPTED, "cwt")


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
    ("title", "basis"),
    [
        ("Delivered, US dollars per cwt, weights per MSF", "cwt"),
        ("Lieferung frei Haus, Preise in USD je cwt, Flächengewichte in lb/MSF", "cwt"),
        ("US dollars, weights per MSF", None),
        ("US dollars, prices per MSF", "msf"),
    ],
)
def test_what_weights_are_on_is_no_unit_of_prices(title, basis):
    (line,) = lines([[title], ["Grade", "pt", "lb", "Price"], ["SBS C1S", 18, 76, 41]]).values()
    assert line.offer.basis == basis


def test_a_sentence_behind_the_name_of_a_number_is_no_unit():
    rows = [["Pos", "Board", "Price USD/short ton"], [16, "SBS C1S", 1240], [18, "CRB", 820]]
    found = lines([*rows, ["Pos: thickness in points is given in the description"]])
    assert [line.offer.caliper_um for line in found.values()] == [None, None]


def test_a_load_that_is_weighed_says_how_the_board_comes():
    rows = [["Produit", "g/m²", "µm", "Prix"], ["GC2", 240, 395, "1 125 € / tonne"]]
    for note, state in (
        ("Prix rendus franco votre usine, par camion complet de 24 tonnes.", "accepted"),
        ("Prix par camion.", "question"),
    ):
        (line,) = lines([*rows, [], [note]]).values()
        assert line.state == state


@pytest.mark.parametrize("note", ["Terms: USD pmt 30 days", "USD pmt due in 30 days"])
def test_pmt_beside_days_is_when_to_pay(note):
    (line,) = lines([["Grade", "pt", "lb/MSF", "Price USD"], ["SBS C1S", 16, 67, 1230], [], [note]]).values()
    assert line.offer.basis is None

"""What a title, or words over the whole list, says of the unit of its prices."""

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.intake.values.prices.basis import find_basis
from tracker.trade.basis import Basis

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def test_places_under_delivered_to_take_the_unit_of_the_title():
    rows = [
        ["Delivered prices by zone, US$ per MSF"],
        ["Board", "pt", "lb/MSF", "Delivered to", None],
        [None, None, None, "Midwest", "Southeast"],
        ["SBS C1S", 14, 60, 37.9, 38.4],
        ["CRB C1S", 18, 70, 32.5, 33.0],
    ]
    found = lines(rows, merged=merged((1, 3, 1, 4))).values()
    assert [(str(line.state), line.offer.basis) for line in found] == [("accepted", "msf")] * 4


def test_what_the_first_boards_title_says_of_money_holds_for_the_next_board():
    head = [*HEAD[:3], "Price"]
    first, second = [["GC1, EUR/t ex works"], head, ["GC1", 250, 400, 1240]], [["GD2"], head, ["GD2", 300, 395, 880]]
    assert {line.offer.currency for line in lines([["Marlwick Board Ltd"], [], *first, [], *second]).values()} == {
        "EUR"
    }


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize("said", ["Freight included in price, USD per short ton", "Freight extra, USD per short ton"])
def test_what_is_said_behind_freight_may_be_the_prices_unit(said):
    assert lines([[said], [*EXPORT_HEAD, "Price"], [*BOARD, 1190]])["D3"].offer.basis == "short_ton"


@pytest.mark.parametrize(("head", "basis"), [("Preis", None), ("Preis €/t", "tonne")])
def test_a_title_that_names_two_units_leaves_open_which_one_a_price_is_per(head, basis):
    found = lines([["Preise in €/t bzw. €/1000 m²"], ["Sorte", "g/m²", "µm", head], ["GC1", 250, 405, 1204]])
    assert found["D3"].offer.basis == basis


@pytest.mark.parametrize(
    ("title", "measures"),
    [
        ("GC2 250 g/m², 405 µm – pris SEK/ton fritt kund", (250, 405)),
        ("GC2, pris SEK/ton fritt kund, 405 µm", (None, None)),
        ("GC2 från 250 g/m² i SEK/ton", (None, None)),
        ("GC2 250 g/m² +200 SEK/ton", (None, None)),
    ],
)
def test_a_title_that_calls_the_board_first_may_say_its_price_unit_too(title, measures):
    found = lines([["Priser i SEK/ton, falskartong GC2"], [title], ["Från kg", "Pris"], [1000, 12400], [5000, 12100]])
    assert {(line.offer.grammage_gsm, line.offer.caliper_um) for line in found.values()} == {measures}


def test_the_unit_in_the_corner_over_the_boards_is_the_prices():
    found = lines(
        [["US$/short ton", "Basis weight, lb/MSF", None], ["Grade", 52, 60], ["SBS", 1245, 1230], ["CRB", 870, 860]]
    )
    assert {(line.offer.currency, str(line.offer.basis)) for line in found.values()} == {("USD", "short_ton")}


@pytest.mark.parametrize(
    "said", ["Allt per 1000 kg", "Alles je 1000 kg", "Todo por 1000 kg", "Le tout à la tonne", "All grades per tonne"]
)
def test_everything_on_a_list_is_sold_by(said):
    rows = [[said], [], ["Sorte", "g/m²", "µm", "EUR", "SEK"], ["GC2", 230, 365, 1262, 14100]]
    assert {str(line.state) for line in lines(rows).values()} == {"accepted"}


def test_everything_on_pallets_says_no_unit_of_prices():
    rows = [["Everything on pallets of 1000 kg"], [], ["Grade", "g/m²", "µm", "EUR"], ["GC2", 230, 365, 1262]]
    assert "basis-unknown" in codes(lines(rows)["D4"])


def test_a_unit_of_prices_that_the_first_words_say_with_a_term_of_delivery():
    rows = [["Quality", "230 gsm", "250 gsm"], ["GC1", 1248, 1236]]
    money = {(row, column): "[$£-809]#,##0" for row in (1, 2) for column in (1, 2)}
    found = lines([["Per tonne delivered, in force until 31 March 2027."], *rows], formats=money)
    assert {line.offer.basis for line in found.values()} == {Basis.TONNE}
    found = lines([["Freight per tonne delivered, in force until 31 March 2027."], *rows], formats=money)
    assert {line.offer.basis for line in found.values()} == {None}


@pytest.mark.parametrize(
    "title",
    [
        "price page / feuille de prix", "list of prices/feuille de prix", "Preisblatt / price sheet",
        "Preisliste / Blatt 2", "lista de precios / hoja 3", "prislista / ark 2", "price list / sheet 2 of 3",
        "tarif / feuille tarifaire", "hoja de precios / feuille de prix",
    ],
)  # fmt: skip
def test_a_sheet_of_paper_with_prices_is_no_unit(title):
    found = lines([[f"Coated board – {title}"], HEAD, ["GC1", 250, 400, 1240]])
    assert [(str(line.state), line.offer.basis) for line in found.values()] == [("accepted", "tonne")]


@pytest.mark.parametrize(
    "title", ["Price list, EUR / sheet", "prix / feuille", "EUR / feuille 70x100", "precio / hoja", "Preis / Bogen 1)"]
)
def test_a_sheet_of_board_behind_a_stroke_is_one(title):
    assert find_basis(title).basis is Basis.SHEET
    (line,) = lines([[title], HEAD, ["GC1", 250, 400, 1240]]).values()
    assert codes(line) == {"basis-unknown"}

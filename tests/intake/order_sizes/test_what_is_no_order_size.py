"""Yearly volumes, counts and weights of rolls that part no orders."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

HEAD, GC1 = ["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1180]


def only(rows, cell):
    found = lines(rows)
    assert list(found) == [cell]
    return found[cell]


@pytest.mark.parametrize("head", ["Annual volume", "Jahresmenge", "Volume annuel", "Volumen anual", "Årsvolym"])
def test_what_is_bought_in_a_year_bounds_no_order(head):
    assert only([[*HEAD, head], [*GC1, "500 t"]], "D2").offer.from_kg is None


@pytest.mark.parametrize("head", ["Order size", "Abnahmemenge", "Quantité", "Cantidad", "Kvantitet"])
def test_an_order_size_does(head):
    assert only([[*HEAD, head], [*GC1, "≥ 5 t"]], "D2").offer.from_kg == 5000


def test_numbers_that_count_the_prices_are_no_order_sizes():
    rows = [
        ["Sorte", "g/m²", "µm", "Preis 1 (ab 1 t)", "Preis 2 (ab 5 t)"],
        ["GC1", 240, 405, "1.390,00 €/t", "1.340,00 €/t"],
    ]
    found = lines(rows)
    assert [(found[cell].offer.from_kg, found[cell].offer.below_kg) for cell in ("D2", "E2")] == [
        (1000, 5000),
        (5000, None),
    ]


BOARD = ["SBS C1S", 18, 75]
EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


@pytest.mark.parametrize(
    "head", ["Qty avail lb", "Available today (lb)", "Menge p.a. kg", "Qté dispo. (lb)", "Cant. anual (kg)"]
)
def test_how_much_there_is_or_is_bought_in_a_year_is_no_order_size(head):
    found = lines([[*EXPORT_HEAD, head, "$/cwt"], [*BOARD, 12400, 62], ["CRB", 18, 70, 31050, 45]])
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [("accepted", None)] * 2


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize("head", ["Qté minimale", "Quantité mini", "Cantidad mín."])
def test_a_least_quantity_is_no_order_size(head):
    found = offer([["Carton", "g/m²", "µm", "€/t", head], ["GC2", 260, 420, 1188, "5 t"]], "D2")
    assert (found.minimum_kg, found.from_kg) == (5000, None)


def test_the_same_lot_in_every_row_parts_no_orders():
    rows = [
        ["Qty", "Description", "Price"],
        ["1 lot", "SBS C1S 16 pt", "$1,215 / short ton"],
        ["1 lot", "CUK 18 pt", "$0.54/lb"],
    ]
    assert {line.state for line in lines(rows).values()} == {State.ACCEPTED}


@pytest.mark.parametrize("quantity", ["2 rolls", "1 skid", "3 truckloads"])
def test_one_quantity_a_board_that_the_price_was_asked_for_bounds_no_order(quantity):
    found = lines([["Qty", *EXPORT_HEAD, "USD/ST"], [quantity, *BOARD, 1190], ["5 rolls", "CRB", 18, 70, 850]])
    assert [(str(line.state), line.offer.from_kg) for line in found.values()] == [("accepted", None)] * 2
    sized = lines([["Order size", *EXPORT_HEAD, "USD/ST"], [quantity, *BOARD, 1190], ["5 rolls", "CRB", 18, 70, 850]])
    assert {str(line.state) for line in sized.values()} == {"question"}


_BOARDS = [["Grade", "Caliper pt", "Price USD/short ton"], ["SBS C1S", 18, 1240], ["CRB", 20, 820]]


def told(note):
    return list(lines([*_BOARDS, [], [note]]).values())


@pytest.mark.parametrize(
    "note",
    [
        "Reel weight not less than 500 kg.", "Palettengewicht nicht unter 600 kg.", "Rullvikt inte mindre än 400 kg.",
        "Poids des bobines pas moins de 500 kg.", "Full truckload means not less than 42,000 lb.",
        "No order number needed below 5,000 lb.",
    ],
)  # fmt: skip
def test_weights_of_rolls_and_loads_are_no_smallest_order(note):
    assert [line.offer.minimum_kg for line in told(note)] == [None, None]

"""Freight beside the price, within it, prepaid, on a condition, for a place or a board: charged once, or left open."""

from decimal import Decimal

import pytest

from tests.intake.readings import accepted, by_cell, read_rows
from tests.intake.sheets import lines

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


@pytest.mark.parametrize(
    ("head", "delivered", "charges"),
    [
        ("Delivered $/ST", 1180, {"D2": [18, 42], "G2": []}),
        ("Delivered $/ST", 1162, {"D2": [18, 42], "G2": [18]}),
        ("Total delivered", 1180, {"D2": [18, 42]}),
    ],
)
def test_a_delivered_price_beside_base_and_freight_is_an_offer_that_bears_the_freight_once(head, delivered, charges):
    reading = read_rows([[*HEAD, "Base $/ST", "Energy $/ST", "Freight $/ST", head], [*BOARD, 1120, 18, 42, delivered]])
    assert list(accepted(reading)) == list(charges)
    assert {cell: sorted(one.price for one in line.offer.charges) for cell, line in by_cell(reading).items()} == charges


def test_prepaid_and_collect_below_freight_are_terms():
    reading = read_rows([[*HEAD, "USD/cwt", "Freight"], [*BOARD, 62, "Collect"], ["CRB", 20, 79, 48.5, "Prepaid"]])
    assert [line.offer.delivered for line in reading.lines] == [False, True]


def in_cents(unit, freight):
    rows = [["SBS C1S", 14, 60, 58.25, freight], ["CUK C1S", 21, 88, 51.75, freight]]
    return lines([["Board", "Points", "lb/MSF", "Price", "Freight"], *rows, [], [f"Prices in {unit}, FOB mill"]])


def test_freight_without_a_unit_counts_cents_as_the_price_does():
    (charge,) = in_cents("US cents per pound", 1.75)["D2"].offer.charges
    assert (charge.price, charge.currency) == (Decimal("0.0175"), "USD")
    (charge,) = in_cents("US dollars per cwt", 1.75)["D2"].offer.charges
    assert (charge.price, charge.currency) == (Decimal("1.75"), "USD")


def test_freight_too_large_for_cents_stays_open():
    (charge,) = in_cents("US cents per pound", 42)["D2"].offer.charges
    assert charge.price == 0


@pytest.mark.parametrize(
    ("head", "words"),
    [("Fracht", ("inkl.", "frei")), ("Freight", ("Prepaid", "prepaid")), ("Frakt", ("ingår", "fritt"))],
)
def test_a_freight_column_with_words_and_a_figure_keeps_both(head, words):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "EUR/t", head]]
    rows += [["GC1", 250, 405, 1290, words[0]], ["GC1", 300, 480, 1280, 45]]
    rows += [["GC2", 300, 490, 1230, words[1]], ["GC2", 320, 520, 1225, "n. Aufwand"]]
    found = [line.offer for line in lines(rows).values()]
    assert [offer.delivered for offer in found] == [True, None, True, None]
    assert [[charge.price for charge in offer.charges] for offer in found] == [[], [45], [], []]


def test_freight_paid_from_an_order_size_on_is_no_order_size_of_the_prices():
    rows = [["Preise frei Haus ab 5 t"], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1290]]
    (line,) = lines(rows).values()
    assert (line.offer.from_kg, line.offer.delivered) == (None, None)
    rows = [["Sorte", "g/m²", "µm", "EUR/t"], ["Frei Haus ab 5 t"], ["GC1", 250, 405, 1290], ["Frei Haus ab 10 t"],
            ["GC1", 250, 405, 1260]]  # fmt: skip
    found = [line.offer for line in lines(rows).values()]
    assert [(offer.from_kg, offer.below_kg) for offer in found] == [(5000, 10000), (10000, None)]


def test_a_toll_beside_the_price_is_part_of_the_delivered_cost():
    rows = [["€/t ab Werk"], ["Sorte", "g/m²", "µm", "€/t", "Maut €/t", "Fracht €/t"], ["GC1", 240, 405, 1240, 6, 45]]
    found = lines(rows)
    assert set(found) == {"D3"}
    assert sorted(charge.price for charge in found["D3"].offer.charges) == [6, 45]


@pytest.mark.parametrize(
    "note",
    [
        "Franco de port à négocier", "Franco : nous consulter", "Free delivery negotiable",
        "Frei Haus nach Vereinbarung", "Portes pagados a convenir", "Fritt levererat enligt överenskommelse",
    ],
)  # fmt: skip
def test_freight_that_is_to_be_agreed_is_in_no_price(note):
    (line,) = lines([["EUR / 1000 kg"], [note], ["Board", "µm", "g/m²", "EUR/t"], ["GC1", 400, 250, 1195]]).values()
    assert line.offer.delivered is None


@pytest.mark.parametrize(
    ("first", "second", "figure", "offered"),
    [
        ("SEK/ton exkl. frakt", "SEK/ton inkl. frakt", 12600, [(False, 0), (True, 0)]),
        ("SEK/ton", "plus frakt SEK/ton", 400, [(None, 1)]),
    ],
)
def test_freight_behind_a_price_unit_says_what_the_price_has_in_it(first, second, figure, offered):
    found = lines([["Sort", "g/m²", "µm", first, second], ["GC1", 250, 405, 12200, figure]])
    assert [(line.offer.delivered, len(line.offer.charges)) for line in found.values()] == offered


def test_a_price_with_its_freight_beside_the_one_at_the_mill():
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "ab Werk", "inkl. Fracht"], ["GC1", 250, 405, 1204, 1252]]
    found = lines([*rows, ["GD2", 350, 465, 846, 894]])
    assert [(str(line.state), line.offer.delivered) for line in found.values()] == [
        ("accepted", False), ("accepted", True),
    ] * 2  # fmt: skip


QUOTED_HEAD = ["Grade", "Caliper pt", "lb/MSF", "PRICE", "CCY", "PER"]
ROWS = [["SBS C1S", 18, 78, 1221, "USD", "STN"], ["CRB", 20, 79, 964, "USD", "STN"], ["URB", 28, 99, 723, "USD", "STN"]]


def test_a_code_of_freight_says_whether_it_is_paid():
    said = ["MILL", "DLVD", "DAP"]
    found = lines([[*QUOTED_HEAD, "FOB_CODE"], *([*row, code] for row, code in zip(ROWS, said, strict=True))])
    assert [line.offer.delivered for line in found.values()] == [False, True, True]


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize("head", ["Port €/t", "Transport €/t", "Flete €/t"])
def test_freight_beside_the_price(head):
    found = offer([["Carton", "g/m²", "µm", "Prix départ €/t", head], ["GC2", 260, 420, 1188, 62]], "D2")
    assert [(charge.price, charge.basis) for charge in found.charges] == [(62, "tonne")]


POINTS_HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


@pytest.mark.parametrize(("said", "delivered"), [("Delivered, except CUK", True), ("FOB mill except CUK", False)])
def test_freight_that_one_board_is_excepted_from_is_left_open_for_that_board(said, delivered):
    found = lines([[*POINTS_HEAD, "USD/ST"], [*SBS, 1178], ["CUK", 18, 74, 1139], [], [said]])
    assert [line.offer.delivered for line in found.values()] == [delivered, None]


def test_freight_a_ton_is_charged_beside_a_price_per_area_of_its_height():
    head = ["Description", "pt", "lb/MSF", "Base USD/ST", "Same, USD/MSF", "Freight to you USD/ST"]
    rows = [["Base price USD/ST at mill"], head,
            ["SBS C1S", 16, 68, 1205, 40.97, 46], ["SBS C1S", 18, 76, 1192, 45.3, 46]]  # fmt: skip
    found = lines(rows)
    assert list(found) == ["D3", "D4"]
    assert [[float(charge.price) for charge in line.offer.charges] for line in found.values()] == [[46.0]] * 2


EURO_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize(
    "note",
    [
        "Delivered to customer at cost", "Prices include delivery within 100 miles", "Delivered prices on request",
        "Full freight allowed on truckloads",
        "Lieferung frei Haus im Umkreis von 50 km", "Geliefert gegen Berechnung", "Preise frei Haus auf Anfrage",
        "Livraison franco dans un rayon de 100 km", "Franco aux frais du client",
        "Portes pagados en un radio de 50 km", "Entregado por cuenta del cliente",
        "Fritt levererat inom 50 km", "Fritt levererat mot kostnad",
    ],
)  # fmt: skip
def test_freight_that_is_borne_on_a_condition_leaves_the_delivered_cost_open(note):
    (line,) = lines([[note], EURO_HEAD, GC1]).values()
    assert (line.offer.delivered, line.offer.price) == (None, 1100)


@pytest.mark.parametrize(
    "note",
    [
        "Delivered to customer at no cost", "Delivered to your dock in Dayton (45 miles from our mill)",
        "Delivered by our own truck", "Delivered prices, pallets at cost", "Frei Haus ohne Kosten für Sie",
        "Prix franco, autres formats sur demande", "Fritt levererat inom Sverige",
        "Precios entregados, recargo de gasóleo al coste",
    ],
)  # fmt: skip
def test_freight_that_is_borne_is_in_the_price(note):
    (line,) = lines([[note], EURO_HEAD, GC1]).values()
    assert line.offer.delivered is True


TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]


@pytest.mark.parametrize(
    "head",
    ["Flete a destino", "Freight to destination", "Fracht zum Bestimmungsort", "Transport à destination"],
)
def test_a_column_of_what_freight_to_a_place_costs_holds_no_prices(head):
    rows = [["Grade", "µm", "g/m²", "Price ex works", head], ["", "µm", "g/m²", "EUR/tonne", "EUR/tonne"]]
    (line,) = lines([*rows, ["GC1", 450, 300, 1100, 54]]).values()
    assert line.offer.price == 1100
    assert [charge.price for charge in line.offer.charges] == [54]


@pytest.mark.parametrize("head", ["Delivered to destination", "Franco destination"])
def test_a_column_of_delivered_prices_does(head):
    rows = [["Grade", "µm", "g/m²", "Price ex works", head], ["", "µm", "g/m²", "EUR/tonne", "EUR/tonne"]]
    found = lines([*rows, ["GC1", 450, 300, 1100, 1154]]).values()
    assert [(line.offer.price, line.offer.delivered) for line in found] == [(1100, False), (1154, True)]


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("Freight, prepaid and added: EUR 21 per tonne on every item above.", 21),
        ("(1) Participation transport : 21 € par tonne, en sus du prix net.", 21),
        ("2) Freight: EUR 21 per tonne extra", 21),
        ("Freight: prepaid and added", None),
    ],
)
def test_what_a_numbered_note_adds_for_freight(text, amount):
    (line,) = lines([TONNES, GC1, [], [text]]).values()
    assert [charge.price for charge in line.offer.charges] == ([amount] if amount else [])


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("F.O.B. mill, freight prepaid and added at $42.00 per ST.", 42),
        ("F.O.B. mill, freight prepaid and charged ($42.00/ST).", 42),
        ("Add $42/ST freight to all points.", 42),
        ("F.O.B. mill, freight prepaid and added at cost.", None),
        ("F.O.B. mill, freight prepaid and charged.", None),
        ("Freight prepaid and charged at cost", None),
    ],
)
def test_freight_prepaid_and_added_at_an_amount_is_charged(text, amount):
    (line,) = lines([[text], [], [*HEAD, "US$/ST"], [*BOARD, 1120]]).values()
    assert [charge.price for charge in line.offer.charges] == ([amount] if amount else [])
    assert (str(line.state), line.offer.delivered) == ("accepted", None if text.startswith("Add") else False)

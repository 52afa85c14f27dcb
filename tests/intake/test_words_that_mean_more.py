"""Words that name one thing beside prices and another elsewhere, in five languages read together."""

import pytest

from tests.intake.sheets import codes, lines

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


@pytest.mark.parametrize(
    "note",
    [
        "Energy surcharge 3 % on coated carton.", "Energy surcharge 3 % on carton 18 pt only.",
        "Energiezuschlag 3 % auf Karton über 400 g/m².", "Energy surcharge 3 % on white carton.",
    ],
)  # fmt: skip
def test_a_rate_on_some_board_is_open(note):
    assert all("number-ambiguous" in codes(line) for line in told(note))


@pytest.mark.parametrize(
    ("note", "rate"),
    [
        ("Transportkosten 4,5 % seit 1. Oktober", 4.5), ("Coût de transport 4 % depuis janvier", 4),
        ("Energy cost 3 % since 1 January.", 3), ("Plus 3 % energy cost, higher in winter.", 3),
    ],
)  # fmt: skip
def test_a_cost_with_its_first_day_is_charged(note, rate):
    assert [[float(charge.price) for charge in line.offer.charges] for line in told(note)] == [[rate]] * 2


@pytest.mark.parametrize(
    "note",
    [
        "2 % Skonto auf alle Preise bei Zahlung innerhalb 14 Tagen.", "2 % cash discount is not added to all prices.",
        "Late payment interest of 1.5 % per month will be added to the price.",
        "La hausse de 3 % porte sur toutes les références.",
    ],
)  # fmt: skip
def test_discounts_and_interest_are_no_charges(note):
    assert all(line.offer.charges == () for line in told(note))


def test_an_import_tariff_is_charged():
    rows = [
        ["Grade", "Caliper pt", "Price USD/short ton", "Tariff USD/short ton"],
        ["SBS", 18, 1240, 35],
        ["CRB", 20, 820, 35],
    ]
    assert [[float(charge.price) for charge in line.offer.charges] for line in lines(rows).values()] == [[35.0]] * 2


@pytest.mark.parametrize(("head", "price"), [("Netto kg", 1.24), ("kg netto", 1.24)])
def test_a_net_price_per_kg_alone_is_offered(head, price):
    found = lines([["Preise in EUR"], ["Sorte", "g/m2", head], ["GC1", 300, price], ["GC2", 280, 1.2]])
    assert [(float(line.offer.price), line.offer.basis) for line in found.values()] == [(price, "kg"), (1.2, "kg")]


def test_a_sentence_behind_the_name_of_a_number_is_no_unit():
    rows = [["Pos", "Board", "Price USD/short ton"], [16, "SBS C1S", 1240], [18, "CRB", 820]]
    found = lines([*rows, ["Pos: thickness in points is given in the description"]])
    assert [line.offer.caliper_um for line in found.values()] == [None, None]


def test_obsolete_stock_is_sold():
    assert len(lines([["Obsolete card – clearance offer"], *_BOARDS])) == 2


def test_a_buyers_own_warehouse_is_no_vendors():
    found = lines([["Solicitud de oferta: precio puesto en nuestro almacén de Zaragoza"], *_BOARDS])
    assert [line.offer.delivered for line in found.values()] == [None, None]


def test_paid_beside_collect_is_asked_and_what_was_last_paid_is_not_offered():
    rows = [["SBS", 18, 1240, 1200], ["CRB", 20, 820, 790]]
    found = lines([["Grade", "pt", "Paid USD/short ton", "Collect USD/short ton"], *rows])
    assert str(found["C2"].state) == "question"
    assert list(lines([["Grade", "pt", "Last paid USD/short ton", "Price USD/short ton"], *rows])) == ["D2", "D3"]

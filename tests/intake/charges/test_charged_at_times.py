"""What may be charged, falls due where something happens, or is told of the past is no charge of today for certain."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.charge_names import is_of_the_past
from tracker.intake.values.freight.charges import find_charges
from tracker.trade.offer import OPEN


def figures(said):
    found = lines([["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1278], ["GD2", 350, 465, 868], [], *said])
    return [
        [None if one.currency == OPEN else f"{one.price:f}" for one in line.offer.charges] for line in found.values()
    ]


@pytest.mark.parametrize(
    "note",
    [
        "A surcharge of 25 EUR/t may apply.",
        "Energy surcharge of 3 % may be added.",
        "Ein Energiezuschlag von 25 EUR/t kann anfallen.",
        "Ein Zuschlag von 25 EUR/t kann berechnet werden.",
        "Un supplément de 25 EUR/t peut s'appliquer.",
        "Puede aplicarse un recargo de 25 EUR/t.",
        "Ett tillägg på 25 EUR/t kan tillkomma.",
        "Energy surcharge 3 % max.",
        "Energy surcharge 3 % approx.",
        "Energiezuschlag höchstens 3 %",
        "Supplément énergie 3 % au maximum",
        "Recargo energético máx. 3 %",
        "Energitillägg högst 3 %",
        "Energy surcharge 3 % west of Tarn.",
        "Energiezuschlag 3 % westlich der Tarn.",
        "Supplément énergie 3 % à l'ouest de Tarn.",
        "Recargo energía 3 % al oeste de Tarn.",
        "Fuel surcharge 2 % for delivered orders.",
        "Energy surcharge 3 % in the winter months.",
        "Standgebühr 20 EUR/t",
        "Lageravgift 20 EUR/t",
        "Energy surcharge last quarter 3 %",
        "Last year added to all prices: energy 3 %",
    ],
)
def test_what_may_be_charged_is_open(note):
    assert figures([[note]]) == [[None], [None]]


@pytest.mark.parametrize(
    ("note", "figure"),
    [
        ("A surcharge of 25 EUR/t must be added.", "25"),
        ("A surcharge of 25 EUR/t applies.", "25"),
        ("Ein Zuschlag von 25 EUR/t wird berechnet.", "25"),
        ("Energy surcharge 3 %, may be adjusted monthly.", "3"),
        ("Energy surcharge 3 %. Orders can be placed by phone.", "3"),
        ("Energy surcharge 3 % on all orders.", "3"),
        ("Energy surcharge 3 % on rolls and sheets.", "3"),
        ("Mautgebühr 20 EUR/t", "20"),
    ],
)
def test_what_is_charged_is_charged(note, figure):
    assert figures([[note]]) == [[figure], [figure]]


def test_on_a_board_it_may_be_charged_on_that_board_alone():
    assert figures([["A surcharge of 25 EUR/t on GC1 may apply."]]) == [[None], []]
    assert figures([["A surcharge of 25 EUR/t on GC1 applies to new orders."]]) == [[None], []]
    assert figures([["A surcharge of 25 EUR/t on GC1 applies."]]) == [["25"], []]


@pytest.mark.parametrize(
    "fee",
    [
        "Cancellation fee", "Stornopauschale", "Rücksendegebühr", "Ausfallgebühr", "Lizenzabgabe",
        "Frais d'annulation", "Gastos de cancelación", "Avbeställningsavgift", "Returavgift",
    ],
)  # fmt: skip
def test_fees_of_what_no_order_carried_out_bears_are_no_charges(fee):
    assert not find_charges(f"{fee} 20 EUR/t")
    assert figures([["Added to all prices:"], [fee, "20 €/t"]]) == [[], []]
    head = ["Board", "g/m²", "µm", "EUR/t", f"{fee} EUR/t"]
    for line in lines([head, ["GC1", 250, 405, 1278, 20], ["GD2", 350, 465, 868, 20]]).values():
        assert line.offer.charges == ()
        assert "number-ambiguous" in codes(line)


@pytest.mark.parametrize(
    ("label", "past"),
    [
        ("Energy surcharge last quarter", True), ("Energy surcharge (old)", True), ("Energiezuschlag Vorquartal", True),
        ("Supplément énergie trimestre précédent", True), ("Recargo energía trimestre anterior", True),
        ("Energitillägg förra kvartalet", True), ("Energy surcharge", False), ("Energy surcharge (new)", False),
        ("Energy surcharge (unchanged from last quarter)", False),
    ],
)  # fmt: skip
def test_labels_of_the_past(label, past):
    assert is_of_the_past(label) is past


def test_a_row_of_the_past_is_open_and_gives_way_to_that_of_today():
    rows = [["Board", "g/m²", "µm", "EUR/t"], ["GC1", 250, 405, 1278], ["GD2", 350, 465, 868]]
    old, new = ["Energy surcharge (old)", None, None, 35], ["Energy surcharge (new)", None, None, 25]
    told = [[(one.price, one.currency) for one in each.offer.charges] for each in lines([*rows, old]).values()]
    assert told == [[(0, OPEN)]] * 2
    told = [[(one.price, one.currency) for one in each.offer.charges] for each in lines([*rows, old, new]).values()]
    assert told == [[(25, "EUR")]] * 2


def test_sides_that_no_row_says_are_those_of_none_for_certain():
    rows = [["Grade", "Caliper (pt)", "Price USD/short ton"], ["SBS", 18, 1200], ["CUK", 20, 900], []]
    for line in lines([*rows, ["C2S: energy surcharge $80/ST"]]).values():
        assert [one.currency for one in line.offer.charges] == [OPEN]
    said = [["Grade", "Caliper (pt)", "Price USD/short ton"], ["SBS C2S", 18, 1200], ["SBS C1S", 20, 900], []]
    found = lines([*said, ["C2S: energy surcharge $80/ST"]]).values()
    assert [[one.price for one in line.offer.charges] for line in found] == [[80], []]


@pytest.mark.parametrize(
    ("note", "delivered"),
    [
        ("Delivered, freight billed on a separate line.", None),
        ("Delivered, freight $45/ST billed on a separate line.", None),
        ("Frei Haus, Fracht wird gesondert berechnet.", None),
        ("Franco, transport facturé sur une ligne séparée.", None),
        ("Entregado, portes facturados en línea aparte.", None),
        ("Fritt levererat, frakt faktureras på egen rad.", None),
        ("Delivered, pallets billed on a separate line.", True),
        ("Delivered, freight for samples billed on a separate line.", True),
        ("Delivered, freight not billed separately.", True),
        ("Delivered.", True),
    ],
)
def test_freight_billed_apart_is_in_no_price_for_certain(note, delivered):
    rows = [["Grade", "Caliper (pt)", "Price USD/short ton"], ["SBS", 18, 1200], ["CUK", 20, 900], [], [note]]
    assert [line.offer.delivered for line in lines(rows).values()] == [delivered] * 2

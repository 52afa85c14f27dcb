"""Prices by place or zone across, delivered and at the mill: each an offer of its own."""

import pytest

from tests.intake.readings import accepted, read_rows
from tests.intake.sheets import lines, read
from tracker.trade.offer import State

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_places_under_zones_head_delivered_prices():
    head = [[None, None, None, "Zone 1", "Zone 2"], [*HEAD, "Northeast", "Southeast"]]
    reading = read_rows([["Delivered price by zone, US$ per short ton"], [], *head, [*BOARD, 1205, 1190]])
    assert accepted(reading) == {
        "D5": ("SBS", "1205", "USD", "short_ton"),
        "E5": ("SBS", "1190", "USD", "short_ton"),
    }


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


def test_prices_to_zones_across_are_offers_where_the_table_describes_boards():
    rows = [
        ["GD2 Chromoduplexkarton, EUR/t frei Haus"],
        [],
        ["g/m²", "Dicke µm", "Zone 1 (D)", "Zone 2 (A/CH)"],
        [230, 300, 905, 930],
    ]
    assert prices(lines(rows)) == {"C4": ("accepted", "905", "tonne"), "D4": ("accepted", "930", "tonne")}


def test_figures_that_are_not_of_a_size_are_no_prices_to_places():
    rows = [
        ["EUR je Tonne"],
        ["Sorte", "g/m²", "µm", "Kennziffer", "Losfaktor"],
        ["GD2", 300, 400, 1000, 4],
        ["GD2", 350, 465, 1000, 5],
    ]
    assert {str(line.state) for line in lines(rows).values()} == {"question"}


def test_prices_free_to_places_beside_the_one_at_the_mill():
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", "ab Werk", "frei Hamburg", "frei Wien"],
        ["GD2", 350, 460, 840, 870, 900],
    ]
    found = lines(rows)
    assert {str(line.state) for line in found.values()} == {"accepted"}
    assert [line.offer.delivered for line in found.values()] == [False, True, True]
    with_freight = [
        rows[0],
        ["Sorte", "g/m²", "µm", "ab Werk", "Fracht", "frei Hamburg"],
        ["GD2", 350, 460, 840, 30, 870],
    ]
    assert {cell: len(line.offer.charges) for cell, line in lines(with_freight).items()} == {"D3": 1, "F3": 0}


def test_a_place_once_holds_for_the_boards_below_it():
    boards = [["SBS C1S", 18, 75], ["CRB C1S", 18, 70]]
    places = [[place if first else None, *board, price + 1100] for place, price in (("Dayton", 0), ("Reno", 58))
              for first, board in zip((True, False), boards, strict=True)]  # fmt: skip
    found = lines([["Ship to", "Board", "Caliper (pt)", "lb/MSF", "USD/ST delivered"], *places])
    assert {cell: line.state for cell, line in found.items()} == dict.fromkeys(("E2", "E3", "E4", "E5"), State.ACCEPTED)


def test_a_place_called_port_is_no_freight():
    rows = [
        ["Delivered price by destination, US$ per short ton"], [],
        ["Grade", "pt", "Eastburn", "Port Hanley", "West Tarring"],
        ["SBS C1S", 14, 1150, 1170, 1185], ["CUK", 24, 1105, 1125, 1140],
    ]  # fmt: skip
    found = lines(rows)
    assert list(found) == ["C4", "D4", "E4", "C5", "D5", "E5"]
    assert not any(line.offer.charges for line in found.values())


def test_a_place_spelt_like_a_word_for_validity_heads_prices():
    rows = [
        ["Precios en euros por tonelada, portes incluidos"], ["Calidad", "g/m²", "µm", "Madrid", "Valencia"],
        ["GC2", 250, 405, 1310, 1318], ["GD2", 300, 390, 910, 918],
    ]  # fmt: skip
    assert list(lines(rows)) == ["D3", "E3", "D4", "E4"]


def test_prices_by_lettered_zones_are_offers_of_their_own():
    heads = ["Grade", "gsm", "µm", "Zone A", "Zone B", "Zone C"]
    found = lines([["£ per tonne, delivered to zone"], heads, ["GC1", 250, 405, 1100, 1125, 1160]])
    assert [(cell, str(line.state)) for cell, line in found.items()] == [
        ("D3", "accepted"),
        ("E3", "accepted"),
        ("F3", "accepted"),
    ]


@pytest.mark.parametrize(
    ("head", "price"),
    [("Offer DAP your works", "€1,240.00/t"), ("Angebot frei Haus Kassel", "1.240,00 €/t"),
     ("Offre franco votre usine", "1 240,00 €/t"), ("Oferta puesta en su planta", "1.240,00 €/t"),
     ("Offert fritt er fabrik", "1 240,00 €/t"), ("Your number", "€1,240.00/t")],
)  # fmt: skip
def test_offers_delivered_somewhere_are_prices(head, price):
    other = price.replace("240", "180")
    found = read([["Ref.", "Board", head], ["A1", "GC1 250 g/m²", price], ["A2", "GC2 250 g/m²", other]])
    assert [(line.offer.price, line.offer.basis) for line in found.lines] == [(1240, "tonne"), (1180, "tonne")]

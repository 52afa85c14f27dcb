"""Two columns, boards in whole descriptions and their prices, and words beside a table that are no boards of it."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

METRIC = (["GC1 290 g/m² 470 µm", 1284], ["GD2 340 g/m² 445 µm", 836], ["GT2 410 g/m²", 866])


@pytest.mark.parametrize(
    ("heads", "note"),
    [
        (["What", "Offer"], "Offers are in EUR/t, FCA our warehouse."),
        (["Was", "Angebot"], "Preise in EUR/t ab Werk"),
        (["Quoi", "Offre"], "Offres en EUR/t départ usine"),
        (["Qué", "Oferta"], "Ofertas en EUR/t franco fábrica"),
        (["Vad", "Offert"], "Priser i EUR/t fritt fabrik"),
    ],
)
def test_the_prices_beside_descriptions_are_read(heads, note):
    found = lines([["Surplus lots"], [], heads, *METRIC, [], [note]]).values()
    assert [(line.state, line.offer.price) for line in found] == [(State.ACCEPTED, row[1]) for row in METRIC]


def test_cents_and_pounds_of_the_notes_hold_for_them():
    boards = (["SBS C1S .016 67#/MSF", 58.5], ["CUK .021 89#/MSF", 52.25])
    found = lines([["Surplus"], [], ["What", "Offer"], *boards, [], ["Offers are in US cents per pound."]]).values()
    assert [line.offer.price for line in found] == [Decimal("0.585"), Decimal("0.5225")]


@pytest.mark.parametrize("head", ["Pallets in stock", "kg"])
def test_other_figures_beside_descriptions_are_no_prices(head):
    rows = [["Surplus lots"], [], ["What", head], *METRIC, [], ["EUR/t on request"]]
    assert all(line.state is not State.ACCEPTED for line in lines(rows).values())


def test_costs_of_other_things_are_no_offers():
    assert not lines([["Expenses"], [], ["What", "Offer"], ["Lunch", 31], ["Taxi", 22], [], ["EUR"]])


def test_words_beside_a_table_with_heads_are_no_boards_of_it():
    rows = [
        ["Grade", "g/m²", "µm", "EUR/t", None, "Sorte GC1: einseitig"],
        ["GC1", 250, 410, 1250, None, "GC2 300 g/m² auf Anfrage"],
    ]
    assert list(lines(rows)) == ["D2"]


@pytest.mark.parametrize("total", ["Summe", "Total", "Gesamt"])
def test_boards_under_was_are_what_is_sold_though_a_total_stands_below_them(total):
    lots = [["1207", "GC2 Rollen 1a", 270, 440, 4120, "0,74"], ["1211", "GD2 Rollen 2. Wahl", 350, 470, 860, "0,49"]]
    rows = [["Preis in EUR je kg, ab Lager"], [], ["Los", "Was", "g/m²", "µm", "Menge kg", "EUR/kg"], *lots]
    found = lines([*rows, [None, total, None, None, 4980]])
    assert {at: (line.state, line.offer.grade) for at, line in found.items()} == {
        "F4": (State.ACCEPTED, "FBB"),
        "F5": (State.ACCEPTED, "CRB"),
    }


def test_figures_under_was_are_what_a_price_was():
    rows = [["EUR/kg"], [], ["Board", "g/m²", "µm", "Was", "Now"], ["GC2", 270, 440, 0.79, 0.74], ["Total", None]]
    assert {at: line.offer.price for at, line in lines(rows).items()} == {"E4": Decimal("0.74")}

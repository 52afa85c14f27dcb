"""Columns that are shown to compare by beside the price to be paid: an index, the contract before, what others pay."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (["GC2", 250, 405, 1255, 1230], ["GC2", 295, 495, 1235, 1210], ["GD2", 300, 400, 890, 900])
_PAID = {"1255", "1235", "890"}


def _prices(heads, groups=("", "")):
    over = [None, None, None, *groups]
    found = lines([["EUR/t, DAP"], over, ["Grade", "g/m²", "µm", *heads], *(list(board) for board in _BOARDS)])
    return {str(line.offer.price) for line in found.values() if str(line.state) == "accepted"}


@pytest.mark.parametrize(
    ("heads", "group"),
    [
        (("Contract price", "Last tender"), "Reference only"),
        (("Vertragspreis", "Letzte Ausschreibung"), "Nur zur Information"),
        (("Prix contractuel", "Prix du marché"), "Pour information"),
        (("Precio de contrato", "Última licitación"), "Sólo referencia"),
        (("Avtalspris", "Marknadspris"), "Endast referens"),
    ],
)
def test_what_is_for_reference_is_not_paid(heads, group):
    assert _prices(heads, ("Your price", group)) == _PAID


@pytest.mark.parametrize(
    "before", ["Prior contract", "Vorvertrag", "Contrat précédent", "Contrato anterior", "Föregående avtal"]
)
def test_nor_is_what_the_contract_before_said(before):
    assert _prices(("Contract price", before)) == _PAID


def test_an_index_an_adjustment_and_a_change_lead_to_the_contract_price():
    heads = ["Published index", "Adjustment", "Contract price", "Prior contract", "Change %"]
    groups = [None, None, None, "Reference only", None, "Your price", "Reference only"]
    rows = ([*board[:3], board[3] + 85, -85, board[3], board[4], 0.02] for board in _BOARDS)
    found = lines([["Contract prices from 1 December 2026, EUR/t"], groups, ["Grade", "g/m²", "µm", *heads], *rows])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("F4", "F5", "F6"), "accepted")


def test_a_list_that_is_all_for_reference_has_its_prices():
    over, heads = [None, None, None, "Reference only"], ["Grade", "g/m²", "µm", "Price"]
    found = lines([["EUR/t, DAP"], over, heads, *(board[:4] for board in _BOARDS)])
    assert len(found) == 3


def test_the_price_on_another_basis_is_still_that_price():
    rows = (["SBS", 14, 59, 1300, 38.35], ["SBS", 18, 74, 1280, 47.36], ["CUK", 18, 68, 1100, 37.4])
    over = [None, None, None, None, "For reference"]
    found = lines([["USD"], over, ["Grade", "Caliper pt", "lb/MSF", "Price $/ST", "Price $/MSF"], *map(list, rows)])
    assert all(line.offer.source.also for line in found.values())


@pytest.mark.parametrize(
    ("paid", "shown"),
    [
        ("Price EUR/t", "Reference only EUR/t"),
        ("Price EUR/t", "Memo EUR/t"),
        ("Price EUR/t", "Price EUR/t (for reference)"),
        ("Preis EUR/t", "Preis EUR/t (zur Information)"),
        ("Prix EUR/t", "Prix EUR/t (pour mémoire)"),
        ("Precio EUR/t", "Precio EUR/t (a título informativo)"),
        ("Pris EUR/t", "Pris EUR/t (för kännedom)"),
    ],
)
@pytest.mark.parametrize("order", [(0, 1), (1, 0)])
def test_beside_a_price_and_a_unit_it_says_so_too(paid, shown, order):
    heads, figures = [(paid, shown)[at] for at in order], [(1200, 1240)[at] for at in order]
    found = lines([["Grade", "g/m²", *heads], ["GC1", 250, *figures], ["GD2", 300, *(one - 300 for one in figures)]])
    assert [(str(line.offer.price), str(line.state)) for line in found.values()] == [
        ("1200", "accepted"),
        ("900", "accepted"),
    ]


@pytest.mark.parametrize(
    "title",
    [
        "Prices of the previous quarter, for comparison",
        "Index prices for reference",
        "Vergleichspreise Vorquartal",
        "Vorquartal zum Vergleich",
        "Prix du trimestre précédent, pour comparaison",
        "Precios del trimestre anterior, para comparar",
        "Föregående kvartals priser, för jämförelse",
    ],
)
def test_a_title_that_shows_the_prices_of_a_time_before_is_asked_about(title):
    found = lines([[title], ["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]])
    assert {str(line.state) for line in found.values()} == {"question"}


@pytest.mark.parametrize("title", ["For your information: our prices", "Zur Information: unsere Preise"])
def test_one_that_every_vendor_may_write_is_not(title):
    found = lines([[title], ["Grade", "g/m²", "Price EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]])
    assert {str(line.state) for line in found.values()} == {"accepted"}

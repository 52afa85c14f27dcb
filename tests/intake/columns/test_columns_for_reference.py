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

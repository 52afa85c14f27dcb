"""Columns of stiffness, burst and the like tell of no second weight, caliper or price."""

import pytest

from tests.intake.sheets import lines

_BOARDS = (["GC2", 250, 405, 118, 23, 1240], ["GC2", 295, 495, 165, 25, 1215], ["GD2", 300, 400, 121, 33, 898])


def _read(names, units):
    title, unit_row = ["EUR/t, DAP"], [None, "g/m²", "µm", *units, "€/t"]
    rows = [title, ["Grade", "Basis weight", "Caliper", *names, "Price"], unit_row, *map(list, _BOARDS)]
    found = lines(rows)
    return {cell: (str(line.state), line.offer.grammage_gsm, str(line.offer.price)) for cell, line in found.items()}


_WHOLE = {f"F{row}": ("accepted", board[1], str(board[5])) for row, board in enumerate(_BOARDS, 4)}


@pytest.mark.parametrize("unit", ["g·cm", "g-cm", "g.cm", "gf·cm", "mN·m", "mN"])
@pytest.mark.parametrize(
    ("stiffness", "burst"),
    [
        ("Taber stiffness (15°) MD", "Burst"),
        ("Biegesteifigkeit (15°) längs", "Berstdruck"),
        ("Rigidité Taber SM", "Éclatement"),
        ("Rigidez Taber DM", "Reventamiento"),
        ("Böjstyvhet (15°) MD", "Sprängstyrka"),
    ],
)
def test_a_stiffness_is_no_weight(stiffness, burst, unit):
    assert _read((stiffness, burst), (unit, "psi")) == _WHOLE


@pytest.mark.parametrize(
    ("cobb", "coat"),
    [
        ("Cobb (60 s)", "Coating weight"),
        ("Cobb60", "Strichgewicht"),
        ("Cobb 60", "Poids de couche"),
        ("Cobb 60", "Gramaje de estuco"),
        ("Cobb60", "Bestrykningsvikt"),
    ],
)
def test_nor_is_water_or_coating_by_the_square_metre(cobb, coat):
    assert _read((cobb, coat), ("g/m²", "g/m²")) == _WHOLE


def test_the_foot_of_a_bond_is_no_money():
    assert _read(("PPS", "Scott bond"), ("µm", "ft-lb")) == _WHOLE


def test_grams_below_a_weight_weigh():
    found = lines([["EUR/t, DAP"], ["Grade", "Substance", "Price"], [None, "g", "€/t"], ["GC2", 250, 1240]])
    assert [line.offer.grammage_gsm for line in found.values()] == [250]


@pytest.mark.parametrize(
    "head",
    [
        "Ply bond ft-lb", "Scott bond (ft-lb x 10-3)", "Ply bond ft.lb/1000", "Impact ft-lb/in", "Bond ft lb",
        "Ply bond (ft-lbs)", "Spaltfestigkeit ft-lb", "Liaison interne ft-lb", "Fuerza interlaminar ft-lb",
        "Delamineringsstyrka ft-lb",
    ],
)  # fmt: skip
def test_a_bond_with_its_unit_in_one_cell_is_no_offer_in_forints(head):
    found = lines([["Grade", "Caliper (pt)", head, "Price USD/ST"], ["SBS", 18, 120, 1200], ["CUK", 20, 130, 900]])
    assert [(cell, line.offer.currency) for cell, line in found.items()] == [("D2", "USD"), ("D3", "USD")]


@pytest.mark.parametrize(("head", "basis"), [("Price Ft/kg", "kg"), ("Price ft/kg", "kg"), ("Price Ft/lb", "lb")])
def test_forints_are_money(head, basis):
    found = lines([["Grade", "Caliper (pt)", head], ["SBS", 18, 320], ["CUK", 20, 330]])
    assert [(line.offer.currency, str(line.offer.basis)) for line in found.values()] == [("HUF", basis)] * 2


@pytest.mark.parametrize(("head", "least"), [("Minimum in lb", "10000"), ("Minimum (lb)", "10000")])
def test_a_minimum_in_pounds_is_no_bond_in_inch_pounds(head, least):
    found = lines([["Grade", "Caliper (pt)", head, "Price USD/ST"], ["SBS", 18, least, 1200], ["CUK", 20, least, 900]])
    assert {line.offer.minimum_kg is not None for line in found.values()} == {True}

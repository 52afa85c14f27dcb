"""Rates, yields and volumes that stand beside or below the boards: no offers, and nothing about the boards."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["CUK", 457, 360, 1098], ["CUK", 533, 420, 1086], ["CUK", 610, 480, 1075]]


def beside(heads, rates, title=None):
    return lines(
        [
            ["EUR/t, FOB mill"],
            [],
            [None, None, None, None, None, title],
            ["Board", "µm", "g/m²", "EUR/t", None, *heads],
            *([*board, None, *rate] for board, rate in zip(BOARDS, rates, strict=True)),
        ]
    )


ZONES = [["Zone 1", 1045], ["Zone 2", 62], ["Zone 3", 81]]


@pytest.mark.parametrize(
    ("heads", "title"),
    [
        (["Freight only", "EUR/t"], None),
        (["Fracht", "EUR/t"], None),
        (["Transport", "EUR/t"], None),
        (["Flete", "EUR/t"], None),
        (["Frakt", "EUR/t"], None),
        (["Zone", "EUR/t"], "Freight rates"),
        (["Ziel", "EUR/t"], "Frachtsätze"),
        (["Zona", "EUR/t"], "Fletes"),
    ],
)
def test_freight_rates_set_apart_from_the_boards_are_no_prices_and_no_board_s_own(heads, title):
    found = beside(heads, ZONES, title)
    assert {cell[0] for cell in found} == {"D"}
    assert all(str(line.state) == "accepted" and not line.offer.charges for line in found.values())


def test_freight_in_the_board_s_own_row_is_its_charge():
    found = beside(["Freight EUR/t"], [[45], [46], [47]])
    assert [charge.price for line in found.values() for charge in line.offer.charges] == [45, 46, 47]


@pytest.mark.parametrize("unit", ["m²/kg", "sq ft/lb", "m² par kg", "m2 je kg"])
def test_a_yield_is_no_price(unit):
    rows = [["EUR"], ["Sorte", "g/m²", "µm", "EUR/t"], ["GC2", 250, 410, 1214], ["GD2", 350, 470, 848], []]
    found = lines([*rows, ["Grade", "g/m²", None, unit], ["GC2", 250, None, 4], ["GD2", 350, None, 2.857]])
    assert sorted(found) == ["D3", "D4"]


@pytest.mark.parametrize(
    ("words", "offers"),
    [
        ("Tonnes sold 2025", 3),
        ("Verkaufte Tonnen 2025", 3),
        ("Tonnes vendues 2025", 3),
        ("Toneladas vendidas 2025", 3),
        ("Sålda ton 2025", 3),
        ("SBS, sold in reels", 5),
    ],
)
def test_what_was_sold_is_no_price(words, offers):
    heads = [["EUR per tonne DAP"], [], ["Grade", "Basis weight, g/m²"], [None, 225, 300]]
    found = lines([*heads, ["GC2", 1235, 1202], ["GD3", None, 838], [], [words, 850, 1210]])
    assert len(found) == offers
    assert {str(line.state) for line in found.values()} == {"accepted"}

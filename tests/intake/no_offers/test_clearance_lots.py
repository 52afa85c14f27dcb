"""Lots of surplus board: what is left of each, what a pound costs, and what the whole lot comes to."""

from decimal import Decimal

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [
    [1, "CRB C1S 20 pt 78 lb/MSF", 18000],
    [2, "SBS C1S 14 pt 60 lb/MSF", 9200],
    [3, "CUK 21 pt 87 lb/MSF", 30500],
]
CENTS = [36.5, 48.25, 41.9]


def lots(head="Lbs. avail.", last=None):
    rows = [
        [*board, cents, float(board[2] * Decimal(str(cents)) / 100)] for board, cents in zip(BOARDS, CENTS, strict=True)
    ]
    extra = [[4, "URB 30 pt 106 lb/MSF", 12000, last, 3100]] if last is not None else []
    return lines([["Clearance, where it lies"], ["Lot", "Goods", head, "c/lb", "Whole lot $"], *rows, *extra])


@pytest.mark.parametrize(
    "head", ["Lbs. avail.", "Lbs available", "Weight available lb", "Lbs on hand", "Lot weight lb"]
)
def test_the_price_of_a_pound_is_offered_and_what_the_lot_comes_to_is_not(head):
    found = lots(head)
    assert {cell: (str(line.state), line.offer.price) for cell, line in found.items()} == {
        "D3": ("accepted", Decimal("0.365")),
        "D4": ("accepted", Decimal("0.4825")),
        "D5": ("accepted", Decimal("0.419")),
    }
    assert {line.offer.lead_days for line in found.values()} == {None}
    assert {line.offer.delivered for line in found.values()} == {False}


@pytest.mark.parametrize(
    ("heads", "rows"),
    [
        (["Sorte", "g/m²", "µm", "kg verfügbar", "EUR/t", "Posten gesamt €"], ["GC2", 270, 430]),
        (["Qualité", "g/m²", "µm", "kg disponibles", "EUR/t", "Lot complet €"], ["GC2", 270, 430]),
        (["Calidad", "g/m²", "µm", "kg disponibles", "EUR/t", "Lote completo €"], ["GC2", 270, 430]),
        (["Kvalitet", "g/m²", "µm", "Tillg. kg", "EUR/ton (1000 kg)", "Hela partiet EUR"], ["GC2", 270, 430]),
    ],
)
def test_so_it_is_in_other_languages(heads, rows):
    found = lines([heads, [*rows, 4200, 980, 4116], [*rows[:1], 300, 480, 7300, 965, 7044.5]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"E2": "accepted", "E3": "accepted"}


@pytest.mark.parametrize(
    "sold", ["sold", "sold Aug 3", "Sold 8/3", "verkauft am 03.08.", "vendu le 3 août", "vendido 3/8"]
)
def test_a_lot_that_was_sold_offers_no_price(sold):
    assert "D6" not in lots(last=sold)


def test_what_a_lot_was_sold_for_is_asked_about():
    assert str(lots(last="sold 350")["D6"].state) == "question"


def test_a_price_by_the_lot_alone_is_asked_about():
    rows = [["Clearance"], ["Goods", "Lbs avail", "Lot price $"], *([name, lbs, 4100] for _, name, lbs in BOARDS)]
    assert all("basis-unknown" in codes(line) for line in lines(rows).values())

"""What a pallet or a pack costs beside the price that it is reckoned from, and where it is a price of its own."""

import pytest

from tests.intake.sheets import codes, lines

BOARDS = [["GC1", 250, 405, "700 x 1000"], ["GC1", 300, 490, "720 x 1020"], ["GC2", 275, 440, "640 x 900"]]
PER_PALLET = [(2400, 471.6, 196.5), (2000, 494.4, 247.2), (2800, 471.1, 168.25)]
HEADS = [
    ("Sheets/pallet", "EUR per pallet", "EUR per 1,000"), ("Bogen/Palette", "EUR je Palette", "EUR/1000 Bogen"),
    ("Feuilles/palette", "€ par palette", "€/1000 feuilles"), ("Hojas/palé", "€ por palé", "€ el millar"),
    ("Ark/pall", "EUR/pall", "EUR/1000 ark"),
]  # fmt: skip


def offers(heads, figures):
    rows = [[*board, *row] for board, row in zip(BOARDS, figures, strict=True)]
    return lines([["Grade", "g/m²", "µm", "mm", *heads], *rows])


@pytest.mark.parametrize("heads", HEADS)
def test_a_pallets_price_that_its_sheets_come_to_is_no_offer_of_its_own(heads):
    found = offers(heads, PER_PALLET)
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(("G2", "G3", "G4"), "accepted")
    packs = [(100, price / 10, price) for _, _, price in PER_PALLET]
    assert set(offers(("Sheets/pack", "EUR per pack", heads[2]), packs)) == {"G2", "G3", "G4"}


@pytest.mark.parametrize("heads", HEADS)
@pytest.mark.parametrize("last", [(2800, 480, 168.25), (2800, 471.1, None)])
def test_where_one_row_does_not_fit_each_is_asked_about(heads, last):
    found = offers(heads, [*PER_PALLET[:2], last])
    assert all(codes(found[cell]) == {"basis-unknown"} for cell in ("F2", "F3", "F4"))


@pytest.mark.parametrize("heads", HEADS)
def test_a_pallets_price_by_itself_is_asked_about(heads):
    found = offers(heads[:2], [row[:2] for row in PER_PALLET])
    assert all("basis-unknown" in codes(line) for line in found.values())
    assert len(found) == len(BOARDS)

"""A sheet says the same whether its numbers are numbers or texts, as all are in a CSV file."""

import pytest

from tests.intake.sheets import lines

BOARD = ["Board", "µm", "g/m²"]
GC1, GC2 = ["GC1", 400, 250], ["GC2", 390, 250]


def said(rows):
    """What each line offers: its cell, state, price, order size, and what is charged on top."""
    found = []
    for cell, line in lines(rows).items():
        offer = line.offer
        charges = sorted((charge.label, str(charge.price)) for charge in offer.charges)
        found.append((cell, str(line.state), offer.price, offer.from_kg, offer.below_kg, charges))
    return found


def as_texts(rows):
    return [[str(cell) if isinstance(cell, int | float) else cell for cell in row] for row in rows]


DELIVERED = [[*BOARD, "FOB mill EUR/t", "Energy EUR/t", "Freight EUR/t", "Delivered EUR/t"], [*GC1, 1000, 20, 50, 1070]]
MISSPELT = [[*BOARD, "Pris EUR/t", "Fragt EUR/t"], [*GC1, 1195, 41], [*GC2, 1095, 38]]
SIZES = [[*BOARD, "From kg", "To kg", "EUR/t"], [*GC1, 0, 4999, 1195], [*GC1, 5000, 0, 1150]]
QUANTITIES = [[*BOARD, "kg", "€/kg"], [*GC1, 500, 1.35], [*GC1, 900, 1.25], [*GC2, 500, 1.15], [*GC2, 900, 1.05]]
FORMS = [[*BOARD, "Rolls EUR/t", "Sheets EUR/t"], [*GC1, 1195, 1255], [*GC2, 1095, 1155]]
BUILT_UP = [[*BOARD, "Fiber EUR/t", "Margin EUR/t", "Price EUR/t"], [*GC1, 995, 200, 1195], [*GC2, 895, 200, 1095]]


@pytest.mark.parametrize("rows", [DELIVERED, MISSPELT, SIZES, QUANTITIES, FORMS, BUILT_UP])
def test_a_sheet_says_the_same_in_texts(rows):
    assert said(as_texts(rows)) == said(rows)


def test_a_delivered_price_bears_its_charges():
    mill, delivered = said(as_texts(DELIVERED))
    assert (len(mill[-1]), delivered[-1]) == (2, [])


def test_a_misspelt_charge_is_charged():
    assert [[price for _, price in line[-1]] for line in said(as_texts(MISSPELT))] == [["41"], ["38"]]


def test_places_that_are_called_like_terms_stay_places_over_figures_kept_as_texts():
    rows = [
        ["USD/ST"],
        ["Board", "pt", "lb/MSF", "FOB mill", "Delivered to"],
        [None, None, None, None, "Ashby Flats", "Port Lorne"],
        ["SBS C1S", "16", "67", "1188", "1234", "1246"],
        ["CRB C1S", "20", "79", "866", "912", "924"],
    ]
    assert set(lines(rows)) == {"D4", "E4", "F4", "D5", "E5", "F5"}


def test_a_change_below_the_prices_heading_is_none_of_them():
    rows = [
        ["Grade", "Pt", "lb/MSF", "Price, $/ST"],
        [None, None, None, "Old (superseded)", "NEW eff. 4/6/26", "Change $", "vs. winter"],
        ["CUK C1S", "16", "66", "1005", "1045", "40", "+55"],
        ["CUK C1S", "21", "86", "985", "1025", "40", "+55"],
    ]
    assert {cell: f"{line.offer.price:f}" for cell, line in lines(rows).items()} == {"E3": "1045", "E4": "1025"}

"""Weights of lots, loads and a thousand sheets, bulk, density and discounts: no basis weight of a board."""

import pytest

from tests.intake.readings import accepted, by_cell, read_rows
from tests.intake.sheets import lines
from tracker.trade.offer import State


@pytest.mark.parametrize("head", ["Weight", "Gewicht", "Poids", "Peso", "Vikt"])
def test_lots_of_thousands_of_pounds_are_no_basis_weights(head):
    rows = [["Job lots, US cents per lb"], ["Lot", "Board", head, "Asking"]]
    rows += [["L-1", "SBS 18pt 76#/MSF", "14,220 lb", "54.5 c/lb"], ["L-2", "CUK 21pt 87#/MSF", "22,640 lb", "47 c/lb"]]
    found = [line for line in lines(rows).values() if line.state == "accepted"]
    assert [round(line.offer.grammage_gsm) for line in found] == [371, 425]
    rows = [["US$ per cwt"], ["Lot", "Board", head, "Asking"], ["L-1", "SBS 18pt", "76 lb/MSF", "54.50"]]
    assert round(lines(rows)["D3"].offer.grammage_gsm) == 371


def prices(found):
    """Cell -> state, price and basis."""
    return {
        cell: (str(line.state), f"{line.offer.price:f}" if line.offer.price is not None else None, line.offer.basis)
        for cell, line in found.items()
    }


@pytest.mark.parametrize("head", ["Bulk cm3/g", "Volumen cm³/g", "cm³/g", "Dichte g/cm3", "kg/m3", "Vol. [cm³/g]"])
def test_bulk_and_density_are_no_basis_weight(head):
    found = lines([["EUR/t"], ["Sorte", "g/m²", head, "µm", "EUR/t"], ["GC1", 240, 1.69, 405, 1290]])
    assert prices(found) == {"E3": ("accepted", "1290", "tonne")}
    assert found["E3"].offer.grammage_gsm == 240


def test_a_years_usage_is_no_basis_weight():
    rows = [["Item", "Cal.", "Bs. Wt.", "USD/MSF", "Ann. usage MSF"], ["SBS C1S", "14pt", "59#", 36.87, 2200]]
    line = lines(rows)["D2"]
    assert (str(line.state), round(line.offer.grammage_gsm)) == ("accepted", 288)


@pytest.mark.parametrize(
    ("head", "weight"), [("Poids 1000 f. (kg)", 201.96), ("Gewicht 1000 Bg. (kg)", 201.96), ("kg/millar", 201.96)]
)
def test_what_a_thousand_sheets_weigh_is_no_basis_weight(head, weight):
    rows = [["Quality", "g/m²", "µm", "Format (cm)", head, "€ / kg"], ["GC1", 275, 455, "72 x 102", weight, 1.5]]
    line = lines(rows)["F2"]
    assert (str(line.state), line.offer.grammage_gsm) == ("accepted", 275)


def test_what_a_discount_starts_from_is_no_weight():
    rows = [
        ["EUR je Tonne"], ["Sorte", "g/m²", "µm", "Basis", "Abschlag", "Nettopreis"], ["GD2", 300, 400, 870, 20, 845],
        ["GD2", 350, 465, 890, 20, 872],
    ]  # fmt: skip
    assert {cell: line.state for cell, line in lines(rows).items()} == {"F3": State.ACCEPTED, "F4": State.ACCEPTED}


def test_how_much_a_lot_weighs_is_no_price_and_no_basis_weight():
    spanish = [["Material", "g/m²", "µm", "bobinas", "kg", "€/kg"], ["GD2", 350, 460, 4, 3120, 0.59]]
    assert list(lines(spanish)) == ["F2"]
    lots = [["Board", "Cal", "lb/MSF", "Rolls", "Weight lb", "¢ per lb"], ["SBS C1S", "12 pt", 52, 6, 14210, 41.5]]
    line = lines(lots)["F2"]
    assert (str(line.state), round(line.offer.grammage_gsm)) == ("accepted", 254)


def test_other_measures_are_no_basis_weight():
    reading = read_rows(
        [
            ["Ellory Sheeting Inc."],
            ["Sheets, US$ per M sheets"],
            [],
            ["Grade", "Caliper", "lb/MSF", "Bulk cm³/g", "Size", "M wt (lb)", "Price/M"],
            ["SBS C1S", "14 pt", 60, 1.3, "25 x 38", 395.8, 262.4],
            ["SBS C1S", "18 pt", 76, 1.3, "28 x 40", 591.1, 388.1],
        ]
    )
    assert set(accepted(reading)) == {"G5", "G6"}
    grammage = by_cell(reading)["G6"].offer.grammage_gsm
    assert grammage is not None
    assert round(grammage) == 371


def test_kilograms_in_a_head_are_no_partnership():
    reading = read_rows(
        [
            ["ITEM_DESC", "GRADE", "GSM", "CALIPER_UM", "NET_PRICE", "CURRENCY", "UOM", "MOQ_KG", "STOCK_KG", "SCORE"],
            ["GC1 250G RL", "GC1", 250, 405, 1265, "EUR", "TO", 2000, 18450, "0"],
            ["GD2 300G RL", "GD2", 300, 400, 842.5, "EUR", "TO", 2000, 19450, "0"],
        ]
    )
    assert accepted(reading) == {"E2": ("FBB", "1265", "EUR", "tonne"), "E3": ("CRB", "842.5", "EUR", "tonne")}
    assert by_cell(reading)["E2"].offer.minimum_kg == 2000
    assert by_cell(reading)["E2"].offer.coated_sides != 0


def test_the_weight_of_a_thousand_sheets_is_no_basis_weight():
    rows = [["EUR/1000 Bogen"], ["Sorte", "Flächengewicht g/m²", "Format mm", "Gewicht kg/1000 Bogen", "Preis"],
            ["GC1", 250, "700 x 1000", 175, 239.4]]  # fmt: skip
    (line,) = lines(rows).values()
    assert (str(line.state), line.offer.grammage_gsm) == ("accepted", 250)


def test_what_a_thousand_sheets_weigh_is_no_second_basis_weight():
    heads = ["Board", "Caliper", "Basis (lb/MSF)", "Size", "Ctn wt lb/M", "$/M"]
    (line,) = lines([heads, ["SBS C1S", "18 pt", 77, "28 x 40", 599, 378.2]]).values()
    assert (str(line.state), line.offer.basis.value) == ("accepted", "1000sheets")


def test_the_rolls_and_the_pounds_of_a_lot_are_no_basis_weights():
    rows = [
        ["Lot", "Description", "# Rolls", "Lbs", "$/CWT"],
        ["T-17", "18pt C1S SBS 74#/MSF", "9", "38,450", "48.50"],
        ["T-18", "16pt C1S SBS 66#/MSF", "4", "15,120", "47.25"],
    ]
    found = lines([["All prices in US dollars"], *rows])
    assert [(str(line.state), round(line.offer.grammage_gsm)) for line in found.values()] == [
        ("accepted", 361),
        ("accepted", 322),
    ]


@pytest.mark.parametrize(
    ("heads", "rows", "grammages"),
    [
        (["Sorte", "Stärke (µm)", "Gewicht", "Preis EUR/t"], [["GC1", 450, "300,000", 1120]], [300]),
        (["Kvalitet", "Tjocklek (µm)", "Ytvikt", "Pris EUR/t"], [["GC1", 450, "300,000", 1120]], [300]),
        (["Sorte", "Stärke (µm)", "Gewicht", "Preis EUR/t"],
         [["GC1", 450, "318,250", 1120], ["GD2", 400, "285,000", 820]], [318, 285]),
        (["Grade", "Caliper (pt)", "Weight", "Price USD/ST"],
         [["SBS", 18, "77.000", 1228], ["CUK", 21, "84.000", 1010]], [376, 410]),
        (["Grade", "Caliper (pt)", "Basis weight (lb)", "Price USD/ST"], [["SBS", 18, "77.000", 1228]], [376]),
        (["Grade", "Caliper (pt)", "Lbs", "Price USD/ST"], [["SBS", 18, "77.250", 1228]], [377]),
    ],
)  # fmt: skip
def test_a_basis_weight_with_three_decimals_is_no_lot(heads, rows, grammages):
    found = [line.offer for line in lines([heads, *rows]).values()]
    assert [(round(one.grammage_gsm), one.grammage_from.value) for one in found] == [(g, "quoted") for g in grammages]


def test_pounds_in_thousands_are_of_lots():
    heads = ["Grade", "Caliper (pt)", "Weight (lb)", "Price USD/ST"]
    found = lines([heads, ["SBS", 18, "12,500", 1228], ["CUK", 21, "8,400", 1010]])
    assert {line.offer.grammage_from.value for line in found.values()} == {"estimated"}


LOTS = [
    (["Grade", "Basis weight lb/MSF", "Weight", "Price USD/ST"],
     [["SBS", 77, "40,100", 1228], ["CUK", 84, "42,300", 990]]),
    (["Sorte", "Stärke (µm)", "Gewicht", "Preis EUR/t"], [["GC1", 450, "38,450", 1120], ["GD2", 400, "45,120", 820]]),
    (["Grade", "Caliper (pt)", "Weight", "Price USD/ST"], [["CRB", 10, "42,100", 900], ["CRB", 12, "44,300", 890]]),
    (["Grade", "Caliper (pt)", "Weight (lbs)", "Price USD/ST"],
     [["SBS", 18, "77,250", 1228], ["CUK", 21, "84,500", 1010]]),
    (["Grade", "Caliper (pt)", "Lbs", "Price USD/ST"], [["SBS", 18, "40,100", 1228], ["CUK", 21, "42,300", 1010]]),
    (["Sorte", "Stärke (µm)", "Gewicht kg", "Preis EUR/t"],
     [["GC1", 450, "240.150", 1120], ["GD2", 400, "220.300", 820]]),
]  # fmt: skip


@pytest.mark.parametrize(("heads", "rows"), LOTS)
def test_lots_of_a_truckload_are_no_weights_with_three_decimals(heads, rows):
    found = [line.offer for line in lines([heads, *rows]).values()]
    quoted = [round(one.grammage_gsm) for one in found if one.grammage_from.value == "quoted"]
    # A basis weight beside the lots is the board's.
    assert quoted == ([376, 410] if "Basis weight lb/MSF" in heads else [])


@pytest.mark.parametrize(
    ("head", "written", "grammages"),
    [
        ("Lbs", ("77.250", "84.500"), [377, 413]), ("Weight", ("77.100", "84.300"), [376, 412]),
        ("Weight (lbs)", ("41.250", "47.100"), [201, 230]),
    ],
)  # fmt: skip
def test_a_point_before_three_decimals_of_pounds_makes_no_lots(head, written, grammages):
    heads = ["Grade", "Caliper (pt)", head, "Price USD/ST"]
    calipers = (18, 21) if grammages[0] > 300 else (10, 12)
    rows = [["CRB", caliper, text, 1010] for caliper, text in zip(calipers, written, strict=True)]
    found = [line.offer for line in lines([heads, *rows]).values()]
    assert [(round(one.grammage_gsm), one.grammage_from.value) for one in found] == [(g, "quoted") for g in grammages]

"""Heads that lead to something else: units left of an axis, an index's points, letters of a key, places behind 'to'."""

from tests.intake.sheets import lines


def test_a_unit_over_nothing_left_of_bare_numbers_is_theirs():
    rows = [
        ["EUR per tonne"],
        [None, "g/m² →", 230, 260],
        ["Board"],
        ["GC1", None, 1325, 1312],
        ["GC2", None, 1280, 1267],
    ]
    assert [line.offer.grammage_gsm for line in lines(rows).values()][:2] == [230, 260]


def test_points_that_no_board_has_are_an_index_s():
    heads = ["Board", "Caliper, pt", "lb/MSF", "USD/ST", None, "Fiber index", "Points"]
    rows = [heads, ["SBS", 12, 52, 1200, None, "Jul 2026", 1088], ["SBS", 16, 67, 1190, None, "Aug 2026", 1102]]
    assert {cell: line.offer.caliper_um and float(line.offer.caliper_um) for cell, line in lines(rows).items()} == {
        "D2": 304.8,
        "D3": 406.4,
    }


def test_a_letter_over_letters_is_no_price():
    rows = [
        ["Board", "Pt", "Lb/MSF", "Amt USD", "U", "T"],
        ["SBS", 16, 67, 1188, "S", "P"],
        ["CRB", 24, 93, 868, "S", "D"],
    ]
    found = lines([*rows, [None], ["U: S = per short ton"]])
    assert {cell: line.offer.basis for cell, line in found.items()} == {"D2": "short_ton", "D3": "short_ton"}


def test_to_behind_terms_of_delivery_leads_to_places_and_is_no_ton():
    heads = ["Board", "Pt", "lb/MSF", "FOB mill", "Delivered, freight prepaid, to", None]
    rows = [["US$/ST"], heads, [None, None, None, None, "Northeast", "Gulf"], ["SBS", 14, 61, 1120, 1178, 1214]]
    found = lines([*rows, ["URB", 24, 86, 690, 748, 784]])
    assert [(line.offer.basis, line.offer.delivered) for line in found.values()][:3] == [
        ("short_ton", False),
        ("short_ton", True),
        ("short_ton", True),
    ]


def test_where_board_comes_from_is_no_vendor():
    rows = [
        ["Board", "g/m²", "µm", "Source", "EUR/t"],
        ["GC2", 240, 390, "Mill", 1168],
        ["GC2", 300, 500, "Stock", 1244],
    ]
    assert {line.offer.vendor for line in lines(rows).values()} == {None}
    rows[1][3] = rows[2][3] = "Ferrowick Board"
    assert {line.offer.vendor for line in lines(rows).values()} == {"Ferrowick Board"}


def test_prices_by_the_pallet_are_asked_about_and_not_dropped():
    rows = [["Euros la tonne"], ["Sorte", "g/m²", "µm", "à la palette", "par camion complet"]]
    found = lines([*rows, ["GC1", 240, 390, 1421, 1306], ["GD2", 350, 455, 961, 868]])
    assert {cell: str(line.state) for cell, line in found.items()} == dict.fromkeys(
        ("D3", "E3", "D4", "E4"), "question"
    )


def test_a_head_that_only_says_per_what_stands_over_prices():
    heads = ["Furnish", "Coating", "Thickness, inch", "lb per 3000 sq ft", "Each cwt", "Ships"]
    rows = [["USD"], heads, ["Solid bleached", "one side", 0.014, 183, 58.9, "4 wks"]]
    found = lines([*rows, [None, None, 0.018, 228, 57.65, "4 wks"], [None, "two sides", 0.016, 207, 60.35, "6 wks"]])
    assert {line.offer.grade for line in found.values()} == {"SBS"}
    assert list(found) == ["E3", "E4", "E5"]


def test_places_across_are_priced_where_descriptions_say_the_boards():
    heads = [
        ["US$ per short ton"],
        [None],
        ["Board description", "Delivered to", None],
        [None, "Reno, NV", "Tulsa, OK"],
    ]
    rows = [["16 pt SBS C1S, 68 lb/MSF", 1266, 1231], ["18 pt CUK, 74 lb/MSF", 1131, 1096]]
    assert [str(line.state) for line in lines([*heads, *rows]).values()] == ["accepted"] * 4
    freight = [["Truck", 58, 71], ["Rail", 49, 55]]
    assert not lines([*heads, *freight])

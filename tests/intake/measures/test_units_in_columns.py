"""Units of measure in columns of their own beside the figures."""

from tests.intake.sheets import lines, prices


def test_units_of_measure_in_columns_of_their_own():
    rows = [
        ["Kvalitet", "Ytvikt", None, "Tjocklek", None, "Minsta order", None, "Pris", None],
        ["GC1", 250, "g/m²", 405, "µm", 2, "t", 13600, "SEK/ton"],
        ["GD2", 350, "g/m²", 465, "µm", 5, "t", 8700, "SEK/ton"],
    ]
    found = lines(rows)
    assert prices(found) == {"H2": ("accepted", "13600", "tonne"), "H3": ("accepted", "8700", "tonne")}
    assert [int(line.offer.minimum_kg) for line in found.values()] == [2000, 5000]


def test_units_beside_their_figures_under_a_head_that_says_whose_they_are():
    heads = ["Material", "Grammage", "GSM unit", "Thickness", "Thk unit", "EUR", "UoM", "MOQ", "MOQ UoM"]
    (line,) = lines([heads, ["GC2", 250, "g/m2", 410, "um", 1085, "TNE", 5, "TNE"]]).values()
    assert (str(line.state), line.offer.basis.value, line.offer.minimum_kg) == ("accepted", "tonne", 5000)


def test_units_of_measure_in_columns_of_their_own_go_with_the_figures_before_them():
    heads = ["Board", "Thick", "U/M", "Weight", "U/M", "Price", "Curr", "Per"]
    rows = [
        ["SBS C1S", 18, "pt", 77, "lb/MSF", 1185, "USD", "short ton"],
        ["GC1", 420, "µm", 260, "g/m²", 1235, "EUR", "tonne"],
    ]
    found = lines([heads, *rows]).values()
    assert [(str(line.state), float(line.offer.caliper_um), line.offer.basis.value) for line in found] == [
        ("accepted", 457.2, "short_ton"),
        ("accepted", 420, "tonne"),
    ]


def test_a_unit_of_the_smallest_order_and_the_price_is_both():
    heads = ["Grade", "Caliper (pt)", "Min", "Unit (min and price)", "Price USD"]
    found = lines([heads, ["SBS", 18, 5, "ST", 1228], ["CUK", 21, 4000, "lb", 0.51]]).values()
    assert [(line.offer.basis.value, round(line.offer.minimum_kg)) for line in found] == [
        ("short_ton", 4536),
        ("lb", 1814),
    ]

"""How wide a machine's web is, in the unit of calipers."""

import pytest

from tests.intake.sheets import lines

WIDTHS = [
    ("Max. trim", "inches", 92),
    ("Deckle", "in", 104),
    ("Machine width", "inches", 118),
    ("Arbeitsbreite", "mm", 2340),
    ("Max. Breite", "mm", 2640),
    ("Laize utile", "mm", 2340),
    ("Ancho máx.", "mm", 2640),
    ("Anchura útil", "mm", 2340),
    ("Arbetsbredd", "mm", 2640),
]


@pytest.mark.parametrize(("name", "unit", "width"), WIDTHS)
@pytest.mark.parametrize("rows", [1, 2])
def test_a_width_is_no_caliper(name, unit, width, rows):
    heads = [["Board", "g/m²", f"{name} ({unit})", "EUR/t"]]
    if rows > 1:
        heads = [["Board", "Weight", name, "Price"], [None, "g/m²", unit, "EUR/t"]]
    found = lines([["All prices per 1000 kg"], [], *heads, ["GC1", 250, width, 1254], ["GD2", 350, width + 12, 816]])
    assert {(str(line.state), line.offer.caliper_um) for line in found.values()} == {("accepted", None)}
    assert len(found) == 2


@pytest.mark.parametrize("heads", [("Thickness, inches", "Max. trim, inches"), ("Inches", "Trim (inches)")])
def test_a_caliper_beside_a_width_is_one(heads):
    found = lines([["Board", *heads, "$/ST"], ["SBS", 0.018, 92, 1168], ["CRB", 0.022, 104, 810]])
    assert [round(line.offer.caliper_um) for line in found.values()] == [457, 559]
    assert {str(line.state) for line in found.values()} == {"accepted"}

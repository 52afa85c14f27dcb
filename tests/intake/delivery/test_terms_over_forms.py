"""Terms of delivery over groups of forms, in line with the unit of all prices."""

import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    ("unit", "without", "with_freight", "forms"),
    [
        ("USD/ST", "FOB mill", "Delivered", ("Rolls", "Sheets")),
        ("EUR/t", "ab Werk", "frei Haus", ("Rollen", "Bogen")),
        ("€/t", "départ usine", "franco", ("Bobines", "Feuilles")),
        ("€/t", "ex fábrica", "entregado", ("Bobinas", "Hojas")),
        ("SEK/t", "fritt fabrik", "fritt levererat", ("Rullar", "Ark")),
    ],
)  # fmt: skip
def test_each_price_has_the_terms_over_it(unit, without, with_freight, forms):
    rows = [[unit, without, None, with_freight, None], [None, *forms, *forms],
            ["GC1 300 g/m²", 1200, 1250, 1300, 1350], ["GD2 350 g/m²", 900, 950, 1000, 1050]]  # fmt: skip
    found = lines(rows).values()
    assert [(str(line.state), line.offer.delivered) for line in found] == [
        ("accepted", told) for told in (False, False, True, True)
    ] * 2


def test_terms_of_the_list_stay_above_the_heads():
    rows = [["Cartonboard", None, "ex works Cork", "5 days"], ["Grade", "g/m²", "Form", "Price EUR/t"],
            ["GC1", 300, "Rolls", 1200], ["GD2", 350, "Sheets", 900]]  # fmt: skip
    assert [line.offer.grade for line in lines(rows).values()] == ["FBB", "CRB"]

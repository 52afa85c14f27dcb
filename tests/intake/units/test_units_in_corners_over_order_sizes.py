"""'USD/ST' in the corner over 'Order size': it is what the prices across are in, not what the sizes are."""

import pytest

from tests.intake.sheets import read

CORNERS = [
    (["USD/ST", "SBS (pt)", None, "CRB (pt)", None], ["Order size", 16, 18, 20, 24], "under 10,000 lb", "short_ton"),
    (["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], ["Menge", 230, 250, 300, 350], "unter 5 t", "tonne"),
    (["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], ["Quantité", 230, 250, 300, 350], "moins de 5 t", "tonne"),
    (["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], ["Cantidad", 230, 250, 300, 350], "menos de 5 t", "tonne"),
    (["EUR/t", "GC1 (g/m²)", None, "GD2 (g/m²)", None], ["Kvantitet", 230, 250, 300, 350], "under 5 t", "tonne"),
]


@pytest.mark.parametrize(("upper", "lower", "size", "basis"), CORNERS)
def test_the_corner_tells_the_unit(upper, lower, size, basis):
    found = read([upper, lower, [size, 1250, 1230, 900, 880]]).lines
    assert [(str(line.state), str(line.offer.basis)) for line in found] == [("accepted", basis)] * 4
    assert all(line.offer.below_kg is not None for line in found)


def test_units_of_their_own_over_the_prices_count():
    rows = [["USD/ST", "SBS", "CRB"], ["Caliper", "USD/cwt", "USD/cwt"], ["16 pt", 62, 45], ["18 pt", 61, 44]]
    assert {str(line.offer.basis) for line in read(rows).lines} == {"cwt"}

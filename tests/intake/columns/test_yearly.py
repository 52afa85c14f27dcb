import pytest

from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "head", ["Volym/år", "Volume per year", "Menge pro Jahr", "Jahresmenge", "Volume/an", "Volumen anual"]
)
@pytest.mark.parametrize("volume", [120, "120 ton", "120 t"])
def test_what_is_bought_in_a_year_is_no_order_size(head, volume):
    found = lines([["EUR per 1000 kg"], ["Grade", "g/m²", "µm", head, "Price"], ["GC1", 230, 375, volume, 1215]])
    (line,) = found.values()
    assert (str(line.state), line.offer.from_kg, line.offer.below_kg) == ("accepted", None, None)

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


@pytest.mark.parametrize("head", ["2025 volume (ST)", "Volume 2025", "Brightness C1S", "Last paid US$/ST"])
def test_figures_of_a_year_a_property_or_a_purchase_are_neither_prices_nor_order_sizes(head):
    boards = (["SBS C1S", 16, 68, 450, 1190], ["CRB C1S", 18, 71, 440, 870])
    found = lines([["US$/ST"], ["Grade", "Caliper (pt)", "lb/MSF", head, "Price"], *boards])
    assert {cell: (str(line.state), line.offer.from_kg) for cell, line in found.items()} == {
        "E3": ("accepted", None),
        "E4": ("accepted", None),
    }

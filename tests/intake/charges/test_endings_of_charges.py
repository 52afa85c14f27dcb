"""Compound words that are charges by their ending, and those with the same ending that are none of each order's."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.intake.values.freight.charge_parts import optional_charges
from tracker.intake.values.freight.charges import find_charges
from tracker.trade.offer import OPEN


@pytest.mark.parametrize(
    "name",
    ["Mautpauschale", "Klimaabgabe", "Umweltgebühr", "Holzumlage", "Rohstoffaufschlag", "Papierzuschlag", "miljöavgift",
     "klimatpåslag", "råvarutillägget", "vägavgiften"],
)  # fmt: skip
def test_an_amount_under_such_a_name_is_charged(name):
    (charge,) = find_charges(f"{name} 4,80 EUR/t")
    assert (charge.label, [str(one.value) for one in charge.amounts]) == (name, ["4.80"])


@pytest.mark.parametrize(
    "name",
    ["Anzahlungspauschale", "Stornopauschale", "Mindermengenpauschale", "Kleinmengengebühr", "Angebotsabgabe",
     "påminnelseavgift", "småorderpåslag"],
)  # fmt: skip
def test_of_other_dealings_and_small_orders_it_is_none(name):
    assert find_charges(f"{name} 25 EUR") == ()


@pytest.mark.parametrize(
    "name", ["Musterpauschale", "Expresszuschlag", "provavgift", "rush surcharge", "majoration urgence"]
)
def test_for_samples_and_rush_orders_it_is_left_to_the_buyer(name):
    assert find_charges(f"{name} 25 EUR/t") == ()
    assert optional_charges(f"{name} 25 EUR/t")


@pytest.mark.parametrize("name", ["Palettengebühr", "Bearbeitungspauschale", "Pallet charge", "pallavgift"])
def test_what_is_charged_by_the_piece_is_not_per_the_prices_unit(name):
    head = ["Board", "g/m²", "µm", "EUR/t"]
    (line,) = lines([["ex works"], head, ["GC1", 250, 405, 1278], [name, None, None, 25]]).values()
    assert [one.currency for one in line.offer.charges] == [OPEN]
    assert "number-ambiguous" in codes(line)
    (line,) = lines([["ex works"], head, ["GC1", 250, 405, 1278], [name, None, None, "25 EUR/t"]]).values()
    assert [one.currency for one in line.offer.charges] == ["EUR"]

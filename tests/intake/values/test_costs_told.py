"""What a vendor says of his own costs is no charge; a surcharge that he gives the same reason for is one."""

import pytest

from tracker.intake.values.freight.charges import find_charges


@pytest.mark.parametrize(
    "text",
    [
        "Energy costs are up 14 % since January", "Our energy bill alone is up 14%", "Freight costs have risen by 8 %",
        "Die Energiekosten sind um 11 % gestiegen", "Steigende Fracht- und Energiekosten (+ 9 %)",
        "La hausse continue du coût de l'énergie (+ 11 % depuis janvier) et des pâtes nous oblige à réviser nos tarifs",
        "Los costes de energía han subido un 11 %", "Energikostnaderna har ökat med 11 % sedan januari",
    ],
)  # fmt: skip
def test_costs_that_rose_are_no_charge(text):
    assert find_charges(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "Because energy costs have risen 11 %, an energy surcharge of 3 % applies",
        "Wegen gestiegener Energiekosten: Energiezuschlag 3 %", "Energiekostenzuschlag 3 %", "Energy costs: 3 %",
        "Energy surcharge increased to 3 % since July", "Supplément énergie de 3 % depuis janvier",
        "Recargo energético del 3 %", "Energitillägg 3 % sedan januari",
    ],
)  # fmt: skip
def test_a_surcharge_is_charged_whatever_its_reason(text):
    (charge,) = find_charges(text)
    assert charge.percent
    assert [float(amount.value) for amount in charge.amounts] == [3.0]


def test_a_charge_beside_the_reason_of_a_rise_is_kept():
    (charge,) = find_charges("Energy costs have risen since January, freight 35 EUR/t extra")
    assert charge.label == "freight"

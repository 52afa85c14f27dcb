"""Charges listed with what each comes to, and 'included' behind the last: nothing is charged."""

import pytest

from tests.intake.charges.test_charges_of_some_customers import charges


@pytest.mark.parametrize(
    "note",
    [
        "Freight (42 EUR/t), energy (18 EUR/t) included.", "Freight (42 EUR/t) and energy (18 EUR/t) included.",
        "Freight (42 EUR/t), energy surcharge (18 EUR/t) and sheeting (20 EUR/t) included",
        "Fracht (42 EUR/t), Energie (18 EUR/t) enthalten", "Transport (42 EUR/t), énergie (18 EUR/t) compris",
        "Flete (42 EUR/t), energía (18 EUR/t) incluidos", "Frakt (42 EUR/t), energi (18 EUR/t) ingår",
    ],
)  # fmt: skip
def test_one_word_behind_several_charges_is_about_all(note):
    assert charges(note) == []


@pytest.mark.parametrize(
    ("note", "charged"),
    [
        ("Freight (42 EUR/t) included, energy (18 EUR/t) extra", ["18"]),
        ("Freight (42 EUR/t), energy (18 EUR/t) not included", ["42", "18"]),
        ("Freight 42 EUR/t, energy included", ["42"]), ("Fracht 42 EUR/t, Energie enthalten", ["42"]),
    ],
)  # fmt: skip
def test_what_is_charged_is_kept(note, charged):
    assert charges(note) == charged


@pytest.mark.parametrize(
    "note",
    [
        "Freight 42 EUR/t, energy 18 EUR/t included", "Freight 42 EUR/t and energy 18 EUR/t included in the price",
        "Fracht 42 EUR/t, Energie 18 EUR/t enthalten", "Flete 42 EUR/t y energía 18 EUR/t incluidos",
    ],
)  # fmt: skip
def test_of_charges_whose_amounts_stand_in_no_brackets_the_first_is_open(note):
    assert charges(note) == ["?"]

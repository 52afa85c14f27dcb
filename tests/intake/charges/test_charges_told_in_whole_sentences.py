"""Charges of every board that a sentence tells in many words: 'There is a mill energy charge of 24 EUR per tonne on
every grade'."""

import pytest

from tests.intake.sheets import lines


def _charges(note):
    found = lines([["Tarnwell Board Ltd"], ["Grade", "g/m²", "µm", "EUR/tonne"], ["GC1", 300, 490, 1180], [note]])
    (line,) = found.values()
    return [f"{charge.price:f} {charge.basis}" for charge in line.offer.charges]


@pytest.mark.parametrize(
    "note",
    [
        "There is a mill energy charge of 24 EUR per tonne on every grade, invoiced separately.",
        "A paper recovery levy of 24 EUR per tonne is charged on top, whatever the grade.",
        "Es gibt einen Energiezuschlag von 24 EUR je Tonne auf jede Sorte, gesondert berechnet.",
        "Il y a un supplément énergie de 24 EUR par tonne sur toutes les qualités, facturé à part.",
        "Une taxe de recyclage de 24 EUR par tonne est facturée en sus, quelle que soit la qualité.",
        "Hay un recargo energético de 24 EUR por tonelada en todas las calidades, facturado aparte.",
        "Se cobra además una tasa de reciclaje de 24 EUR por tonelada, sea cual sea la calidad.",
        "Utöver priset debiterar vi ett energitillägg på 24 EUR per ton (1 000 kg) på samtliga kvaliteter.",
    ],
)
def test_what_comes_on_top_of_every_price(note):
    assert _charges(note) == ["24 tonne"]


@pytest.mark.parametrize(
    "note",
    [
        "There is a mill energy charge of about 24 EUR per tonne on some grades.",
        "There is a mill charge of 24 EUR per order.",
        "There is talk of an energy charge of 24 EUR per tonne.",
    ],
)
def test_no_amount_that_is_not_certain(note):
    assert "24 tonne" not in _charges(note)

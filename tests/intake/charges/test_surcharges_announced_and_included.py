"""A surcharge or a tax like one that was announced and is in the prices changes none; one that is not is charged."""

import pytest

from tests.intake.sheets import lines

_HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def _line(note):
    (line,) = lines([_HEAD, ["GC1", 250, 410, 1262], [], [note]]).values()
    return line


@pytest.mark.parametrize(
    "note",
    [
        "The carbon tax of 12 EUR/t announced in September is already included and will not be added.",
        "Die im September angekündigte CO2-Steuer von 12 €/t ist bereits enthalten und wird nicht aufgeschlagen.",
        "La taxe carbone de 12 €/t annoncée en septembre est déjà comprise et ne sera pas ajoutée.",
        "El impuesto al carbono de 12 €/t anunciado en septiembre ya está incluido y no se añadirá.",
        "Koldioxidskatten på 12 EUR/ton som aviserades i september ingår redan och läggs inte på.",
        "The surcharge of 15 EUR/t announced in October is already included in the prices.",
        "Der angekündigte Energiezuschlag von 15 EUR/t ist bereits eingerechnet und kommt nicht mehr hinzu.",
        "La majoration énergie de 15 €/t annoncée en octobre est incluse et ne s'ajoutera pas.",
        "El recargo energético de 15 €/t anunciado en octubre ya va incluido en el precio y no se cobrará aparte.",
        "Det tillägg på 15 EUR/ton som aviserades i oktober är redan inräknat i priserna.",
    ],
)
def test_what_is_in_the_prices_already_is_not_asked_about(note):
    line = _line(note)
    assert (line.state.value, line.offer.charges) == ("accepted", ())


@pytest.mark.parametrize(
    "note",
    ["A carbon tax of 12 EUR/t is added to all prices.", "CO2-Steuer 12 EUR/t zuzüglich.",
     "La taxe carbone de 12 €/t s'ajoute aux prix.", "El impuesto al carbono de 12 €/t se añade a los precios.",
     "Koldioxidskatt 12 EUR/ton tillkommer."],
)  # fmt: skip
def test_what_is_added_is_charged(note):
    assert [charge.price for charge in _line(note).offer.charges] == [12]


@pytest.mark.parametrize("note", ["Prix TVA comprise.", "Prices incl. VAT.", "Preise inkl. MwSt."])
def test_value_added_tax_in_the_prices_is_asked_about(note):
    assert _line(note).state.value == "question"

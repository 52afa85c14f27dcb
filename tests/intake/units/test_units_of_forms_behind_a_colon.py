"""What is said of all prices before a colon, and the units of rolls and sheets behind it."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Grade", "Form", "µm", "g/m²", "Price"]
ROLLS, SHEETS = ["SBS C1S", "Rolls", 400, 300, 1290], ["SBS C1S", "Sheets 70 x 100 cm", 400, 300, 270]


def units(note):
    found = lines([HEAD, ROLLS, SHEETS, [], [note]]).values()
    return [(line.offer.currency, str(line.offer.basis), line.offer.delivered) for line in found]


@pytest.mark.parametrize(
    "note",
    ["All prices in euro delivered: rolls per tonne, sheets per 1,000 sheets.",
     "Alle Preise in Euro frei Haus: Rollen je Tonne, Bogen je 1.000 Bogen.",
     "Tous les prix en euros franco : bobines la tonne, feuilles les 1000 feuilles.",
     "Todos los precios en euros puestos en destino: bobinas por tonelada, hojas por 1.000 hojas.",
     "Alla priser i EUR fritt levererat: rullar per ton, ark per 1000 ark."],
)  # fmt: skip
def test_each_form_has_its_unit_and_all_the_freight(note):
    assert units(note) == [("EUR", "tonne", True), ("EUR", "1000sheets", True)]


def test_units_before_their_colons():
    assert units("EUR/t: rolls, EUR/1000 sheets: sheets")[0][1] == "tonne"


def test_freight_of_a_form_behind_the_colon_is_its_own():
    assert [one[2] for one in units("Preise frei Haus: Rollen EUR/t, Bogen ab Werk.")] == [True, False]

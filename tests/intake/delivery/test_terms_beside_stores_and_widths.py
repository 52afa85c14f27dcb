"""Prices from the vendor's store, and lead times beside the widths of rolls."""

import pytest

from tests.intake.sheets import lines


def offer(*notes):
    rows = [["Sorte", "µm", "g/m²", "Preis EUR/t"], ["GC1", 390, 240, 1138], ["GC2", 400, 250, 1038]]
    return lines([["Harwick Karton AG"], [], *rows, [], *[[note] for note in notes]])["D4"].offer


@pytest.mark.parametrize(
    "note",
    [
        "Preise in EUR/t ab Lager", "Nettopreise ab Lager, zzgl. MwSt.", "Restposten, Preise in EUR/t ab Lager",
        "Precios salida almacén", "Priser fritt lager", "Prices ex warehouse",
    ],
)  # fmt: skip
def test_prices_from_the_store_include_no_freight(note):
    assert offer(note).delivered is False


@pytest.mark.parametrize("note", ["ab Lager", "Lieferung ab Lager", "Lieferbar ab Lager", "GC1 ab Lager"])
def test_boards_from_the_store_say_how_soon(note):
    assert offer(note).delivered is None


def test_prices_free_house_from_the_store_include_it():
    assert offer("Preise frei Haus, ab Lager").delivered is True


@pytest.mark.parametrize(
    "note",
    [
        'Lead time 4 to 5 weeks. Roll widths 20" to 96".',
        "Lieferzeit 4 bis 5 Wochen. Rollen 50 bis 240 cm Breite.",
        "Délai 4 à 5 semaines. Bobines : laizes de 50 à 240 cm.",
        "Plazo 4 a 5 semanas. Bobinas: anchos de 50 a 240 cm.",
        "Leveranstid 4 till 5 veckor. Rullar: bredd 50 till 240 cm.",
    ],
)
def test_widths_of_rolls_are_no_time_of_theirs(note):
    assert offer(note).lead_days == (28, 35)


def test_a_time_of_rolls_is_not_that_of_all():
    assert offer("Lead time: rolls 4 weeks, sheets 6 weeks").lead_days is None

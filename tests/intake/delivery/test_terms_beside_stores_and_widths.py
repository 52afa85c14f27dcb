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


@pytest.mark.parametrize(
    ("ex", "to"),
    [
        ("EXW mill", "DAP your warehouse"), ("EXW fábrica", "DAP su almacén"), ("EXW usine", "DAP votre entrepôt"),
        ("EXW Werk", "DAP Ihr Lager"), ("EXW bruk", "DAP ert lager"), ("EXW warehouse", "DDP warehouse"),
    ],
)  # fmt: skip
def test_prices_under_a_term_and_a_warehouse_are_prices_by_that_term(ex, to):
    head = ["Board", "g/m²", "µm", ex, to]
    found = lines([["EUR per tonne"], [], head, ["GC1", 230, 370, 1276.5, 1331.5], ["GD2", 300, 390, 866, 921]])
    assert {cell: (str(line.state), line.offer.delivered) for cell, line in found.items()} == {
        "D4": ("accepted", False), "D5": ("accepted", False), "E4": ("accepted", True), "E5": ("accepted", True),
    }  # fmt: skip


@pytest.mark.parametrize("head", ["Warehouse", "Moisture %", "Our warehouse, no."])
def test_figures_under_a_warehouse_or_a_property_are_no_prices(head):
    found = lines([["EUR per tonne"], [], ["Board", "g/m²", "µm", "Price", head], ["GC1", 230, 370, 1276.5, 12]])
    assert list(found) == ["D4"]

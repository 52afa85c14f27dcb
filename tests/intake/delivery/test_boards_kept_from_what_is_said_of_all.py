"""Boards of which a note tells another delivery than of all: in words that are no term of it, or of a later day."""

import pytest

from tests.intake.sheets import lines

ROWS = [["Grade", "g/m²", "Price EUR/t"], ["SBS", 250, 1200], ["GD2", 300, 900], ["GC1", 280, 1300]]


def _delivered(note):
    return [line.offer.delivered for line in lines([*ROWS, [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Prices delivered. GD2: pick up at mill.", "Prices delivered. GD2 is excluded from free delivery.",
        "Preise frei Haus, GD2 Abholung", "Preise frei Haus. GD2 nur ab Lager abholbar.",
        "Priser fritt levererat. GD2: upphämtning",
    ],
)  # fmt: skip
def test_a_board_that_is_collected_is_not_delivered(note):
    assert _delivered(note) == [True, None, True]


@pytest.mark.parametrize("note", ["Prices delivered. GD2 is recycled board.", "Prices delivered; GD2 only in rolls"])
def test_one_of_which_something_else_is_told_is(note):
    assert _delivered(note) == [True, True, True]


@pytest.mark.parametrize(
    "note",
    [
        "Preise ab Werk, SBS wird in Rollen geliefert", "Prix départ usine, le SBS est livré en bobines",
        "Prices FOB mill, SBS is delivered in rolls", "Precios en fábrica, SBS se entrega en bobinas",
        "Priser fritt fabrik, SBS levereras i rullar",
    ],
)  # fmt: skip
def test_the_form_in_which_one_comes_is_no_freight(note):
    assert True not in _delivered(note)


@pytest.mark.parametrize(
    "note", ["Prices FOB mill, SBS will be delivered from January", "Prices FOB mill, SBS delivered to our warehouse"]
)
def test_nor_is_that_of_a_later_day_or_to_the_seller(note):
    assert _delivered(note) == [None, False, False]


@pytest.mark.parametrize(
    "note", ["Prices FOB mill, SBS delivered to your warehouse", "Preise ab Werk, SBS wird frei Haus geliefert"]
)
def test_that_to_the_buyer_is(note):
    assert _delivered(note) == [True, False, False]

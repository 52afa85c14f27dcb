"""Boards that are excepted from the last day of an offer, and have one of their own."""

from datetime import date

import pytest

from tests.intake.sheets import lines


def _days(note):
    rows = (["GC1", 230, 375, 1310], ["GD2", 300, 400, 915])
    found = lines([["EUR/t, DAP"], ["Grade", "g/m²", "µm", "Price"], *map(list, rows), [note]])
    return [line.offer.valid_until for line in found.values()]


@pytest.mark.parametrize(
    "note",
    [
        "Offer valid until 31 January 2027, except GD: until 31 December 2026.",
        "Offer valid until 31 January 2027, except for grade GD: until 31 December 2026.",
        "Offer valid until 31 January 2027, except GD until 31 December 2026.",
        "Angebot gültig bis 31.01.2027, ausgenommen Sorte GD: bis 31.12.2026.",
        "Offre valable jusqu'au 31/01/2027, sauf qualité GD : jusqu'au 31/12/2026.",
        "Oferta válida hasta el 31/01/2027, salvo calidad GD: hasta el 31/12/2026.",
        "Offerten gäller till 2027-01-31, utom kvalitet GD: till 2026-12-31.",
    ],
)
def test_they_end_on_their_own_day(note):
    assert _days(note) == [date(2027, 1, 31), date(2026, 12, 31)]


def test_what_is_excepted_without_a_day_has_none():
    assert _days("Offer valid until 31 January 2027, except GD.") == [date(2027, 1, 31), None]

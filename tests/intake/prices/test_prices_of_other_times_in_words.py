"""Columns of prices that were, that are before a rebate, and of what is saved: today's are offers."""

import pytest

from tests.intake.sheets import lines

OFFERED = {"C3": 1200, "C4": 900}
NET = {"D3": 1190, "D4": 870}


def _read(*heads):
    rows = [["SBS", 300, 1200, 1190], ["CUK", 350, 900, 870]]
    found = lines([["Tarn Board Inc."], ["Grade", "g/m²", *heads], *rows])
    return {cell: line.offer.price for cell, line in found.items() if str(line.state) == "accepted"}


@pytest.mark.parametrize(
    ("now", "other"),
    [
        ("This month", "Last month"),
        ("Today", "A year ago"),
        ("Price", "6 months ago"),
        ("Heute", "Vor einem Jahr"),
        ("Diese Woche", "Letzte Woche"),
        ("Aujourd'hui", "Il y a un an"),
        ("Ce mois", "Mois dernier"),
        ("Hoy", "Hace un año"),
        ("Este mes", "Mes pasado"),
        ("Denna månad", "Förra månaden"),
        ("Idag", "För ett år sedan"),
    ],
)
def test_what_was_paid_is_not_offered(now, other):
    assert _read(f"{now} EUR/t", f"{other} EUR/t") == OFFERED


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("EUR/t before rebate", "EUR/t after rebate"),
        ("EUR/t vor Rabatt", "EUR/t nach Rabatt"),
        ("EUR/t avant remise", "EUR/t après remise"),
        ("EUR/t före rabatt", "EUR/t efter rabatt"),
    ],
)
def test_what_is_paid_is_the_price_after_a_rebate(before, after):
    assert _read(before, after) == NET


@pytest.mark.parametrize(("one", "other"), [("Harwick", "Selmouth"), ("Rolls", "Sheets")])
def test_prices_to_two_places_or_of_two_forms_are_two_offers(one, other):
    assert _read(f"{one} EUR/t", f"{other} EUR/t") == OFFERED | NET


@pytest.mark.parametrize("head", ["Saving", "You save", "Ersparnis", "Économie", "Ahorro", "Besparing"])
def test_what_is_saved_is_not_charged(head):
    heads = ["Grade", "g/m²", "Price EUR/t", f"{head} EUR/t"]
    rows = [["Tarn Board Inc."], heads, ["SBS", 300, 1250, 50], ["CUK", 350, 950, 40], ["Delivered."]]
    assert all(line.offer.charges == () for line in lines(rows).values())

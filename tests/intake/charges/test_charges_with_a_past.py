"""A note on since when a column's charge has been charged, or on what it will come to, leaves today's as it is."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import OPEN

SHEETS = {
    "en": (["Grade", "Caliper (pt)", "Price USD/short ton", "Energy surcharge USD/short ton"], ["SBS", 18, 1200, 25]),
    "de": (["Sorte", "Gewicht g/m²", "Preis EUR/t", "Energiezuschlag EUR/t"], ["GC1", 250, 1200, 25]),
    "fr": (["Qualité", "Grammage g/m²", "Prix EUR/t", "Surcharge énergie EUR/t"], ["GC1", 250, 1200, 25]),
    "es": (["Calidad", "Gramaje g/m²", "Precio EUR/t", "Recargo energético EUR/t"], ["GC1", 250, 1200, 25]),
    "sv": (["Kvalitet", "Ytvikt g/m²", "Pris EUR/t", "Energitillägg EUR/t"], ["GC1", 250, 1200, 25]),
}


def charges(language, note, title=None):
    head, board = SHEETS[language]
    (line,) = lines([*([[title]] if title else []), [], head, board, [], [note]]).values()
    return [None if charge.currency == OPEN else int(charge.price) for charge in line.offer.charges]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge since January 2026"), ("en", "Energy surcharge since 2022"),
        ("en", "Energy surcharge in force since January 1, 2026"), ("en", "Energy surcharge unchanged since July"),
        ("de", "Energiezuschlag seit 1.1.2026"), ("de", "Energiezuschlag unverändert seit Januar"),
        ("fr", "Surcharge énergie depuis le 1er janvier 2026"), ("fr", "Surcharge énergie depuis janvier 2026"),
        ("es", "Recargo energético desde enero de 2026"), ("es", "Recargo energético desde el 1 de enero de 2026"),
        ("sv", "Energitillägg sedan januari 2026"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("title", [None, "2026-10-01"])
def test_what_has_been_charged_since_some_day_is_charged(language, note, title):
    assert charges(language, note, title) == [25]


@pytest.mark.parametrize(
    ("language", "title", "note"),
    [
        ("en", "Effective October 1, 2026", "Energy surcharge effective October 1, 2026"),
        ("en", "Carton board price list, effective October 2026", "Energy surcharge from October 1, 2026"),
        ("en", "Price list 2026", "Energy surcharge from January 2026"),
        ("de", "Gültig ab 1.10.2026", "Energiezuschlag ab 1.10.2026"),
        ("fr", "Prix en vigueur le 1er octobre 2026", "Surcharge énergie à partir du 1er octobre 2026"),
        (
            "es",
            "Precios vigentes desde el 1 de octubre de 2026",
            "Recargo energético a partir del 1 de octubre de 2026",
        ),
        ("sv", "Gäller från 1 oktober 2026", "Energitillägg från den 1 oktober 2026"),
    ],
)
def test_the_day_from_which_the_prices_hold_is_no_later_one(language, title, note):
    assert charges(language, note, title) == [25]


@pytest.mark.parametrize(
    ("language", "title", "note"),
    [
        ("en", "Effective October 1, 2026", "Energy surcharge effective November 1, 2026"),
        ("en", "Freight rates effective November 1, 2026", "Energy surcharge effective November 1, 2026"),
        ("de", "Gültig ab 1.10.2026", "Energiezuschlag ab 1.11.2026"),
        ("fr", "Prix en vigueur le 1er octobre 2026", "Surcharge énergie à partir du 1er novembre 2026"),
        ("es", "Precios vigentes desde el 1 de octubre de 2026", "Recargo energético a partir del 1 de enero de 2027"),
        ("sv", "Gäller från 1 oktober 2026", "Energitillägg från den 1 november 2026"),
    ],
)
def test_a_day_behind_that_is_one(language, title, note):
    assert charges(language, note, title) == [None]


@pytest.mark.parametrize("title", ["2026-10-01", "Effective October 1, 2026"])
@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge $30/ST from January 1, 2027"),
        ("en", "Energy surcharge rises to $30/ST from January 1, 2027"),
        ("en", "Energy surcharge will change from January 2027"),
        ("de", "Energiezuschlag 30 EUR/t ab 1.1.2027"), ("de", "Energiezuschlag wird ab Januar 2027 erhöht"),
        ("fr", "Surcharge énergie 30 EUR/t à partir du 1er janvier 2027"),
        ("fr", "La surcharge énergie sera augmentée à partir de janvier 2027"),
        ("es", "Recargo energético 30 EUR/t a partir del 1 de enero de 2027"),
        ("es", "El recargo energético subirá a partir de enero de 2027"),
        ("sv", "Energitillägg 30 EUR/t från 1 januari 2027"), ("sv", "Energitillägget höjs från januari 2027"),
    ],
)  # fmt: skip
def test_what_it_will_come_to_leaves_it_until_then(language, title, note):
    assert charges(language, note, title) == [25]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Energy surcharge of $25/ST applies from January 1, 2027"),
        ("de", "Energiezuschlag 25 EUR/t ab 1.1.2027"),
        ("fr", "Surcharge énergie 25 EUR/t à partir du 1er janvier 2027"),
        ("es", "Recargo energético 25 EUR/t a partir del 1 de enero de 2027"),
        ("sv", "Energitillägg 25 EUR/t från 1 januari 2027"),
    ],
)
def test_the_columns_own_amount_from_a_later_day_is_to_come(language, note):
    assert charges(language, note, "2026-10-01") == [None]

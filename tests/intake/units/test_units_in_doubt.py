"""Currencies and bases that a sentence gives a board, where it may tell of what is possible, of a later day or of what
else is done with it: these are asked, and never passed over."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 250, 1200], ["GD2", 300, 1400]]


def units(*notes, boards=BOARDS):
    """What each board is priced in and per; '?' where it is asked."""
    found = lines([["Sort", "g/m²", "Price"], *boards, [], *([note] for note in notes)])
    return [f"{one.offer.currency or '?'}/{one.offer.basis or '?'}" for one in found.values()]


ALL = {
    "en": "Prices in EUR per tonne.",
    "de": "Preise in EUR je Tonne.",
    "fr": "Prix en EUR par tonne métrique.",
    "es": "Precios en EUR por tonelada métrica.",
    "sv": "Priser i EUR per ton (1 000 kg).",
}


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GD2 comes from Sweden and is invoiced in SEK."),
        ("de", "GD2 kommt aus Schweden und wird in SEK fakturiert."),
        ("de", "GD2 stammt aus Schweden und wird in SEK fakturiert."),
        ("fr", "Le GD2 vient de Suède et est facturé en SEK."),
        ("sv", "GD2 kommer från Sverige och faktureras i SEK."),
    ],
)
@pytest.mark.parametrize("apart", [False, True])
def test_where_a_board_comes_from_does_not_hide_its_currency(language, note, apart):
    notes = (ALL[language], note) if apart else (f"{ALL[language]} {note}",)
    assert units(*notes) == ["EUR/tonne", "SEK/tonne"]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GD2 for Sweden is invoiced in SEK."),
        ("en", "GD2 can be invoiced in SEK."),
        ("en", "GD2 in SEK if shipped to Sweden."),
        ("en", "If shipped to Sweden, GD2 is in SEK."),
        ("en", "We buy GD2 in SEK."),
        ("en", "GD2 will be in SEK from January 2027."),
        ("de", "GD2 für Schweden wird in SEK fakturiert."),
        ("de", "Bei GD2 in SEK möglich."),
        ("de", "Den Zellstoff für GD2 kaufen wir in SEK."),
        ("de", "GD2 kaufen wir in SEK ein."),
        ("de", "GD2 ab Januar 2027 in SEK."),
        ("fr", "GD2 peut être facturé en SEK."),
        ("fr", "GD2 acheté en SEK."),
        ("fr", "GD2 en SEK à partir de janvier 2027."),
        ("es", "GD2 puede facturarse en SEK."),
        ("es", "GD2 en SEK si se envía a Suecia."),
        ("es", "GD2 en SEK a partir de enero de 2027."),
        ("sv", "GD2 kan faktureras i SEK."),
        ("sv", "GD2 köps in i SEK."),
        ("sv", "GD2 i SEK från januari 2027."),
    ],
)
@pytest.mark.parametrize("apart", [False, True])
def test_a_currency_that_a_board_may_have_is_asked(language, note, apart):
    notes = (ALL[language], note) if apart else (f"{ALL[language]} {note}",)
    assert units(*notes) == ["EUR/tonne", "?/tonne"]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "GD2 is in SEK."),
        ("en", "GD2 is bought in and invoiced in SEK."),
        ("de", "GD2 in SEK."),
        ("de", "GD2 wird zugekauft und in SEK fakturiert."),
        ("fr", "GD2 est facturé en SEK."),
        ("es", "GD2 en SEK."),
        ("sv", "GD2 faktureras i SEK."),
    ],
)
def test_a_currency_that_a_board_has_is_its_own(language, note):
    assert units(ALL[language], note) == ["EUR/tonne", "SEK/tonne"]


@pytest.mark.parametrize(
    ("language", "note"),
    [
        ("en", "Customers from Sweden are invoiced in SEK."),
        ("de", "Kunden aus Schweden fakturieren wir in SEK."),
    ],
)
def test_the_money_of_some_buyers_is_no_boards(language, note):
    assert units(f"{ALL[language]} {note}") == ["EUR/tonne"] * 2


@pytest.mark.parametrize(
    ("note", "basis"),
    [
        ("GD2 is shipped by the short ton.", "?"),
        ("GD2 is per short ton from January 2027.", "?"),
        ("GD2 will be quoted per short ton from January 2027.", "?"),
        ("GD2 is sold by the short ton.", "short_ton"),
        ("GD2 is per short ton.", "short_ton"),
        ("GD2 comes from Poland and is invoiced per short ton.", "short_ton"),
    ],
)
def test_what_a_board_may_be_sold_by_is_asked(note, basis):
    assert units(f"{ALL['en']} {note}") == ["EUR/tonne", f"EUR/{basis}"]


@pytest.mark.parametrize(
    "note",
    [
        "Prices per tonne in EUR, those of GD2 in SEK.",
        "Prices per tonne in EUR, those for GD2 in SEK.",
        "Preise je Tonne in EUR, die für GD2 in SEK.",
        "Prix par tonne métrique en EUR, ceux du GD2 en SEK.",
        "Precios por tonelada métrica en EUR, los del GD2 en SEK.",
        "GC1 EUR/tonne, GD2 SEK/tonne.",
        "GC1: EUR per tonne. Others: SEK per tonne.",
    ],
)
def test_what_all_prices_are_per_is_said_of_a_board_with_its_own_currency_too(note):
    assert units(note) == ["EUR/tonne", "SEK/tonne"]


@pytest.mark.parametrize(
    ("ditto", "unit"),
    [("ditto", "EUR"), ("dito", "EUR"), ("idem", "EUR"), ("ídem", "EUR"), ("d:o", "EUR"), ("quite", "?")],
)
def test_a_board_ditto_has_the_unit_before_it(ditto, unit):
    boards = [*BOARDS, ["SBS", 250, 1500]]
    found = units(f"GC1 EUR/tonne, GD2 {ditto}, SBS SEK/tonne.", boards=boards)
    assert found[:2] == ["EUR/tonne", f"{unit}/tonne"]


def test_a_nearer_unit_is_doubted_by_what_may_be_of_its_board():
    rows = [["Prices in EUR per tonne"], ["Sort", "g/m²", "Price"], *BOARDS, [], ["GD2 can be invoiced in SEK."]]
    assert [one.offer.currency for one in lines(rows).values()] == ["EUR", None]

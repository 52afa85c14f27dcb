"""Who makes the board is named, and another sells it: the merchant quotes."""

import pytest

from tests.intake.sheets import book, grid, read
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers

HEADS = {
    "en": (["Grade", "Caliper (pt)", "USD/ST"], ["SBS", 16, 1200]),
    "de": (["Sorte", "g/m²", "EUR/t"], ["GC1", 250, 1200]),
    "fr": (["Qualité", "g/m²", "EUR/t"], ["GC1", 250, 1200]),
    "es": (["Calidad", "g/m²", "EUR/t"], ["GC1", 250, 1200]),
    "sv": (["Kvalitet", "g/m²", "SEK/kg"], ["GC1", 250, 12]),
}
MAKERS = {
    "en": ("Manufacturer: Tarnwick Mills Ltd.", "Tarnwick Mills Ltd.", "Fairhaven Paper Inc.", "Distributed by"),
    "de": ("Hersteller: Tarnwick AG", "Tarnwick AG", "Moosbrunner Papier GmbH", "Vertrieb durch"),
    "fr": ("Fabricant : Tarnwick SA", "Tarnwick SA", "Papeteries Roux SARL", "Distribué par"),
    "es": ("Fabricante: Tarnwick SA", "Tarnwick SA", "Papeles Roux SL", "Distribuido por"),
    "sv": ("Tillverkare: Tarnwick AB", "Tarnwick AB", "Lunds Papper AB", "Säljs av"),
}


def vendors(language, *titles):
    return {line.offer.vendor for line in read([*([title] for title in titles), *HEADS[language]]).lines}


@pytest.mark.parametrize("language", MAKERS)
def test_a_merchant_who_names_himself_quotes(language):
    label, _, merchant, sold_by = MAKERS[language]
    assert vendors(language, merchant, label) == {merchant}
    assert vendors(language, label, merchant) == {merchant}
    assert vendors(language, label, f"{sold_by} {merchant}") == {merchant}


@pytest.mark.parametrize("language", MAKERS)
def test_a_maker_quotes_where_no_other_firm_is_named(language):
    label, maker, *_ = MAKERS[language]
    assert vendors(language, label) == {maker}
    assert vendors(language, maker, label) == {maker}


def test_who_is_called_supplier_too_quotes():
    assert vendors("en", "Fairhaven Paper Inc.", "Supplier / manufacturer: Tarnwick Mills Ltd.") == {
        "Tarnwick Mills Ltd."
    }


def test_a_customer_does_not_quote():
    label, maker, *_ = MAKERS["en"]
    assert vendors("en", "To: Marlow Cartons Inc.", label) == {maker}
    assert vendors("en", "Prices for Marlow Cartons Inc.", label) == {maker}


def test_nobody_is_named_where_the_sheet_begins_with_what_may_be_a_firm():
    assert vendors("en", "Fairhaven Paper", MAKERS["en"][0]) == {None}


def test_mills_over_the_tables_of_a_merchant_do_not_quote():
    head, board = HEADS["en"]
    mills = [["Mill: Tarnwick Mills Ltd."], head, board, [], ["Mill: Dover Mills Ltd."], head, ["CUK", 16, 1000]]
    assert {line.offer.vendor for line in read([["Fairhaven Paper Inc."], [], *mills]).lines} == {
        "Fairhaven Paper Inc."
    }
    assert [line.offer.vendor for line in read(mills).lines] == ["Tarnwick Mills Ltd.", "Dover Mills Ltd."]


def test_mills_on_the_sheets_of_a_merchant_do_not_quote():
    head, board = HEADS["en"]
    cover = grid([["Fairhaven Paper Inc."], ["Price list"]], sheet="Cover")
    first = grid([["Mill: Tarnwick Mills Ltd."], head, board], sheet="A")
    second = grid([["Mill: Dover Mills Ltd."], head, ["CUK", 16, 1000]], sheet="B")
    merchant = read_workbook(book(cover, first, second), Answers()).lines
    assert {line.offer.vendor for line in merchant} == {"Fairhaven Paper Inc."}
    mills = read_workbook(book(first, second), Answers()).lines
    assert [line.offer.vendor for line in mills] == ["Tarnwick Mills Ltd.", "Dover Mills Ltd."]

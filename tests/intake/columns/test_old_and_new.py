"""An earlier price and the one in force in one cell: the words beside them, or their head, say which is paid."""

import pytest

from tests.intake.sheets import lines, prices
from tracker.intake.values.prices.money import price_text

HEAD = ["Grade", "g/m²", "µm"]


def figures(text):
    said = price_text(text)
    plain = said is not None and not said.rest and not said.is_range
    return {f"{reading.value:f}" for reading in said.amounts} if plain else set()


@pytest.mark.parametrize(
    "text",
    [
        "was $1240 – now $1085", "now $1085 (was $1240)", "$1085 (was $1240)", "$1240 now $1085", "1085 now, was 1240",
        "Was: $1240 / Now: $1085", "1085 instead of 1240", "old 1240 new 1085", "NOW $1085", "new price now 1085",
        "statt 1240 jetzt 1085", "1085 statt 1240", "statt 1240 € nur 1085 €", "bisher 1240, neu 1085",
        "au lieu de 1 240 maintenant 1 085", "1 085 € au lieu de 1 240 €", "ancien 1240, nouveau 1085",
        "antes 1240 ahora 1085", "1085 en lugar de 1240", "förr 1 240 nu 1 085", "nu 1085 kr (tidigare 1240 kr)",
    ],
)  # fmt: skip
def test_the_later_of_two_prices_in_a_cell_is_the_price(text):
    assert figures(text) == {"1085"}


@pytest.mark.parametrize(
    "text",
    [
        "$1085 - $1240", "was 1240", "current 1240, proposed 1085", "1240 until 30 June, now 1085", "was now 1085",
        "was $1240 now CAD 1085", "was $1240 now $85", "was 62¢ now 58", "was $1240/ST, now $52/cwt",
        "now 1085 or 1240",
    ],
)  # fmt: skip
def test_words_that_leave_it_open_make_no_price(text):
    assert figures(text) != {"1085"}


def test_the_one_price_may_say_the_unit_for_both():
    said = price_text("now 1085, was 1240 USD/ST")
    assert (said.currency.code, said.basis.basis) == ("USD", "short_ton")


def read(head, *cells, title="Carton board"):
    rows = [["GC1", 250 + 10 * n, 400 + 20 * n, cell] for n, cell in enumerate(cells)]
    return prices(lines([[title], [*HEAD, head], *rows]))


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        ("alt / neu €/t", ("1.210 / 1.245", "890 / 915")), ("neu / alt €/t", ("1.245 / 1.210", "915 / 890")),
        ("Preis €/t (alt / neu)", ("1210/1245", "890/915")), ("Price old / new €/t", ("1210 / 1245", "890 / 915")),
        ("Old price / New price €/t", ("1210 / 1245", "890 / 915")), ("Was → Now €/t", ("1210 → 1245", "890 → 915")),
        ("Preis neu (alt) €/t", ("1245 (1210)", "915 (890)")), ("ancien / nouveau €/t", ("1 210 / 1 245", "890 / 915")),
        ("antiguo / nuevo €/t", ("1.210 / 1.245", "– / 915")), ("gammalt / nytt €/t", ("1 210 / 1 245", "890 / 915")),
    ],
)  # fmt: skip
def test_a_head_that_names_both_in_their_order_tells_which_is_paid(head, cells):
    assert read(head, *cells) == {"D3": ("accepted", "1245", "tonne"), "D4": ("accepted", "915", "tonne")}


@pytest.mark.parametrize(
    ("head", "title"),
    [
        ("old / proposed €/t", "Carton board"), ("alt / geplant €/t", "Carton board"), ("€/t", "Carton board"),
        ("Rollen / Bogen €/t", "Carton board"), ("alt / neu €/t ab 01.01.2027", "Preisliste vom 20.11.2026"),
        ("alt / neu €/t", "Neue Preise ab 01.01.2027"), ("ancien / futur €/t", "Carton board"),
    ],
)  # fmt: skip
def test_a_pair_of_which_nothing_tells_the_one_in_force_is_asked_about(head, title):
    assert {state for state, *_ in read(head, "1210 / 1245", "890 / 915", title=title).values()} == {"question"}


def test_new_prices_that_began_before_the_list_was_made_are_in_force():
    found = read("alt / neu €/t ab 01.11.2026", "1210 / 1245", "890 / 915", title="Preisliste vom 20.11.2026")
    assert [price for _, price, _ in found.values()] == ["1245", "915"]


def test_one_figure_among_pairs_is_asked_about_and_a_dash_for_the_new_offers_nothing():
    found = read("alt / neu €/t", "1210 / 1245", "890 / 915", "940", "880 / –")
    assert [state for state, *_ in found.values()] == ["accepted", "accepted", "question"]

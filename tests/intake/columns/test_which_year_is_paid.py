"""Prices of two years beside each other in a list that no day dates: what the heads, titles and notes say of them."""

import pytest

from tests.intake.sheets import lines

BOARDS = [["GC1", 240, 390, 1305, 1342], ["GC2", 250, 410, 1240, 1226]]


def offered(*heads, above=(), below=()):
    rows = [*([text] for text in above), ["Grade", "g/m²", "µm", *(f"{head} EUR/t" for head in heads)]]
    rows += [*BOARDS, [], *([text] for text in below)]
    return [(str(line.state), line.offer.price) for line in lines(rows).values()]


SECOND = [("accepted", 1342), ("accepted", 1226)]
ASKED = [("question", price) for price in (1305, 1342, 1240, 1226)]


@pytest.mark.parametrize(
    ("earlier", "this"),
    [
        ("Price 2025", "Current price 2026"), ("Price 2025", "New price 2026"), ("2025 price", "2026 price (current)"),
        ("Price 2025", "Price 2026 (new)"), ("Price 2025", "Price 2026 valid now"),
        ("Preis 2025", "Aktueller Preis 2026"), ("Preis 2025", "Neuer Preis 2026"), ("Preis 2025", "Preis 2026 (neu)"),
        ("Prix 2025", "Prix actuel 2026"), ("Prix 2025", "Nouveau prix 2026"), ("Precio 2025", "Precio actual 2026"),
        ("Precio 2025", "Precio nuevo 2026"), ("Precio 2025", "Precio vigente 2026"), ("Pris 2025", "Nytt pris 2026"),
        ("Pris 2025", "Aktuellt pris 2026"),
    ],
)  # fmt: skip
def test_a_head_that_calls_the_last_price_new(earlier, this):
    assert offered(earlier, this) == SECOND


def test_two_heads_that_each_call_theirs_in_force_are_asked():
    assert "accepted" not in [state for state, _ in offered("Current price 2025", "New price 2026")]


@pytest.mark.parametrize(
    "title",
    [
        "Price increase effective January 1, 2026", "Price adjustment 1/1/2026", "New prices", "New price list",
        "Preiserhöhung zum 1.1.2026", "Preisanpassung zum 1. Januar 2026", "Neue Preise", "Nouveaux prix",
        "Nuevos precios", "Nya priser", "Prishöjning från 1 januari 2026",
    ],
)  # fmt: skip
def test_titles_of_a_rise_or_of_new_prices(title):
    assert offered("Price 2025", "Price 2026", above=[title]) == SECOND


@pytest.mark.parametrize(
    "note",
    [
        "Printed 10/15/2026", "Issued October 2026", "Prices valid through December 2026",
        "2026 prices are effective from January 1", "2025 prices for reference only",
        "2025 prices shown for comparison", "2025 prices are no longer valid", "Gedruckt 15.10.2026",
        "Die Preise 2025 nur zum Vergleich", "Prix 2025 pour mémoire", "Precios 2025 a título informativo",
        "Priserna 2025 endast som jämförelse",
    ],
)  # fmt: skip
def test_notes_that_date_the_list_or_say_which_prices_are_over(note):
    assert offered("Price 2025", "Price 2026", below=[note]) == SECOND


@pytest.mark.parametrize(
    "note",
    [
        "2025 prices are still valid", "2026 prices for reference only", "2026 prices are estimates",
        "Lead time 4 weeks in 2026", "New prices to follow", "Printed 10/15/2025",
        "Our works in Halden are closed on 12/24/2026",
    ],
)  # fmt: skip
def test_notes_that_do_not_tell(note):
    assert offered("Price 2025", "Price 2026", below=[note]) == ASKED


@pytest.mark.parametrize("titles", [[], ["Contract prices"], ["Contract prices, October 2026"]])
def test_of_three_years_each_is_asked(titles):
    rows = [["EUR per tonne"], *([title] for title in titles), ["Grade", "g/m²", "2026", "2027", "2028"]]
    found = lines([*rows, ["GC1", 240, 1300, 1340, 1360]])
    assert [str(line.state) for line in found.values()] == ["question"] * 3

"""Prices of years, quarters, months and days beside each other: the one in force is offered, or it is asked which."""

import pytest

from tests.intake.sheets import lines, prices
from tracker.trade.offer import State

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


def test_a_unit_before_a_year_heads_that_years_prices():
    rows = [[*HEAD[:3], "EUR/t 2025 (superseded)", "EUR/t 2026"], ["GC1", 250, 400, 1200, 1240]]
    assert states(rows) == {"E2": ("accepted", "1240")}


@pytest.mark.parametrize("today", ["Now", "Current", "Jetzt", "Actuel", "Ahora", "Nu"])
def test_what_prices_are_now_is_offered_beside_what_they_were(today):
    rows = [["US$/cwt"], ["Board", "pt", "lb/MSF", "Was", today, "You save"]]
    rows += [["SBS C1S", 14, 60, 62, 59.5, 2.5], ["CRB", 20, 78, 46.25, 43.75, 2.5]]
    assert states(rows) == {"E3": ("accepted", "59.5"), "E4": ("accepted", "43.75")}


@pytest.mark.parametrize(("heads", "cell"), [(("Dec price", "Nov price"), "D3"), (("Nov price", "Dec price"), "F3")])
def test_the_later_of_two_months_is_offered_whichever_stands_first(heads, cell):
    prices = {"Dec price": 1215, "Nov price": 1195}
    rows = [["US$/ST"], ["Grade", "pt", "lb/MSF", heads[0], "Change vs Nov", heads[1]]]
    rows += [["SBS C1S", 14, 60, prices[heads[0]], 20, prices[heads[1]]]]
    rows += [["CRB", 20, 78, prices[heads[0]] - 300, 20, prices[heads[1]] - 300]]
    assert states(rows)[cell] == ("accepted", "1215")
    assert len(states(rows)) == 2


@pytest.mark.parametrize("start", ["ab 01.01.2027", "gültig ab 01.01.2027", "fr.o.m. 2027-01-01"])
def test_beside_the_price_so_far_the_figures_from_a_day_on_are_offered(start):
    rows = [["EUR/t"], ["Sorte", "g/m²", "µm", "bisher", "Erhöhung", start], ["GC2", 250, 405, 1240, 40, 1280]]
    assert prices(lines(rows)) == {"F3": ("accepted", "1280", "tonne")}


def test_the_offer_beside_prices_that_have_run_out():
    rows = [
        ["EUR/t"],
        ["Sorte", "g/m²", "µm", "Preis Q2/2026 (abgelaufen)", "Preis Q3/2026 (abgelaufen)", "Angebot Q4/2026"],
        ["GC1", 250, 405, 1232, 1247, 1262],
    ]
    assert prices(lines(rows)) == {"F3": ("accepted", "1262", "tonne")}


YEARS_HEAD = ["Board", "pt", "lb/MSF"]
SBS = ["SBS C1S", 18, 75]


def in_2026(*heads, title="Price list of 1 March 2026"):
    """The states of two prices under these heads, in a list of 2026."""
    rows = [[title], [*YEARS_HEAD, *heads], [*SBS, 1100, 1000]]
    return {cell: line.state for cell, line in lines(rows).items()}


@pytest.mark.parametrize("dated", ["Price 2025", "Price 2025 USD/ST"])
def test_last_years_price_beside_the_plain_one_is_no_offer(dated):
    assert in_2026("Price USD/ST", dated) == {"D3": State.ACCEPTED}
    assert in_2026(dated, "Price USD/ST") == {"E3": State.ACCEPTED}


@pytest.mark.parametrize("dated", ["Price 2026 USD/ST", "Price 2027 USD/ST"])
def test_a_price_of_this_year_or_the_next_beside_the_plain_one_is_asked(dated):
    assert State.ACCEPTED not in in_2026("Price USD/ST", dated).values()


def test_this_years_price_beside_the_next_ones_is_asked_about():
    assert in_2026("Price 2026 USD/ST", "Price 2027 USD/ST") == {"D3": State.QUESTION, "E3": State.QUESTION}


@pytest.mark.parametrize(
    ("heads", "offered"),
    [
        (("Q4 2025 price", "Q1 2026 price"), {"E3": State.ACCEPTED}),
        (("Price January", "Price March"), {"E3": State.ACCEPTED}),
        (("Q1 2026 price", "Q2 2026 price"), dict.fromkeys(("D3", "E3"), State.QUESTION)),
        (("Q3 2025 price", "Q4 2025 price"), dict.fromkeys(("D3", "E3"), State.QUESTION)),
        (("2025", "2026"), {"E3": State.ACCEPTED}),
    ],
)
def test_the_lists_own_date_tells_which_period_is_the_last(heads, offered):
    assert in_2026(*heads, title="Price list of 1 March 2026, USD/ST") == offered


def test_a_list_without_a_date_does_not_tell_which_year_is_over():
    states = in_2026("Price USD/ST", "Price 2025 USD/ST", title="Price list")
    assert State.ACCEPTED not in states.values()


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("Utgånget pris (t.o.m. 30 april)", "Gällande pris (fr.o.m. 1 maj)"),
        ("Precio vencido (hasta 30 abril)", "Precio vigente (desde 1 mayo)"),
        ("Expired price (through April 30)", "Current price (from May 1)"),
    ],
)
def test_an_expired_price_is_no_offer(old, new):
    rows = [["SEK/kg EXW"], ["Kvalitet", "g/m²", "µm", old, new], ["GC2", 235, 385, 12.6, 12.95]]
    assert list(lines(rows)) == ["E3"]


@pytest.mark.parametrize("rise", ["Anhebung", "Zuwachs", "Hausse", "Subida", "Höjning"])
def test_what_leads_from_the_old_price_to_the_new_is_no_price(rise):
    rows = [["Sorte", "g/m²", "µm", "bisher", rise, "neu ab 01.07.2026"], [None, None, None, "€/t", "€/t", "€/t"]]
    rows += [["GD2", 250, 315, 812.5, 40, 852.5], ["GD2", 300, 385, 800, 40, 840]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"F3": "accepted", "F4": "accepted"}


TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize("head", ["Vorperiode", "Prior period", "Période précédente", "Período anterior"])
def test_what_the_period_before_cost_is_no_offer(head):
    (line,) = lines([[*TONNES, head], [*GC1, 1080]]).values()
    assert line.offer.price == 1100


def test_a_new_price_from_a_day_on_is_the_price_and_no_end_of_a_range():
    (line,) = lines(
        [[*TONNES[:3], "Old price (thru 9/30) EUR/tonne", "New price (from 10/1) EUR/tonne"], [*GC1[:3], 1080, 1100]]
    ).values()
    assert (str(line.state), line.offer.price) == ("accepted", 1100)


def test_the_ends_of_a_range_are_still_asked():
    found = lines([[*TONNES[:3], "Price from, EUR/tonne", "Price to, EUR/tonne"], [*GC1[:3], 1080, 1100]])
    assert {str(line.state) for line in found.values()} == {"question"}

"""What stands beside and below a vendor's offers without being one: old lists, wishes, quantities, rates.

All vendors, boards and prices are invented.
"""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines, merged

HEAD = ["Grade", "g/m²", "µm", "EUR/t"]


def states(rows):
    """Cell -> state and price."""
    return {cell: (str(line.state), str(line.offer.price)) for cell, line in lines(rows).items()}


def test_an_old_list_beside_the_current_one_makes_only_itself_old():
    rows = [
        ["Cinderford Carton Board Ltd"],
        [],
        ["Current list (June 2026)", None, None, None, None, "Superseded list (January 2026)"],
        [*HEAD, None, *HEAD],
        ["GC1", 250, 400, 1240, None, "GC1", 250, 400, 1275],
        ["GD2", 300, 395, 880, None, "GD2", 300, 395, 905],
    ]
    assert states(rows) == {"D5": ("accepted", "1240"), "D6": ("accepted", "880")}


@pytest.mark.parametrize(
    "heads",
    [
        ("Market price", "Your target", "Our offer"),
        ("Prix du marché", "Votre objectif", "Notre offre"),
        ("Precio de mercado", "Su objetivo", "Nuestra oferta"),
    ],
)
def test_the_market_and_a_wish_beside_an_offer_are_no_offers(heads):
    rows = [["EUR/t"], [*HEAD[:3], *heads], ["GC1", 250, 400, 1265, 1165, 1225], ["GD2", 300, 395, 900, 820, 862]]
    assert states(rows) == {"F3": ("accepted", "1225"), "F4": ("accepted", "862")}


def test_an_index_beside_the_offers_is_neither_a_price_nor_a_charge():
    rows = [
        ["EUR/t"],
        [*HEAD, None, "Month", "FBB index", "Energy index"],
        ["GC1", 250, 400, 1240, None, "May", 1195, 104],
    ]
    (line,) = lines(rows).values()
    assert (line.offer.source.cell, line.offer.charges) == ("D3", ())


@pytest.mark.parametrize("label", ["g/m²", "Gewicht g/m²", "lb/MSF"])
def test_measures_in_the_line_of_a_board_are_no_prices(label):
    rows = [["EUR/t"], ["Grade", "350 µm", "400 µm"], [f"GC1 {label}", 215, 245], ["GC1", 1115, 1105]]
    assert set(states(rows)) == {"B4", "C4"}


def test_a_quantity_in_short_tons_is_no_price():
    rows = [["USD"], ["Description", "Qty (ST)", "Unit price /ST"], ["SBS C1S 16 pt 68 lb/MSF", 20, 1210]]
    assert states(rows) == {"C3": ("accepted", "1210")}


def test_a_unit_before_a_year_heads_that_years_prices():
    rows = [[*HEAD[:3], "EUR/t 2025 (superseded)", "EUR/t 2026"], ["GC1", 250, 400, 1200, 1240]]
    assert states(rows) == {"E2": ("accepted", "1240")}


@pytest.mark.parametrize("words", ["Exchange rate EUR/USD", "Price index May", "Sheets per pallet", "Gesamttotal"])
def test_a_rate_a_count_or_a_sum_below_the_offers_is_none(words):
    assert set(states([["EUR/t"], HEAD, ["GC1", 250, 400, 1240], [], [words, None, None, 1150]])) == {"D3"}


@pytest.mark.parametrize(
    "heads",
    [("Price USD/ST", "Rush"), ("Ex stock", "Making order"), ("Stock", "Fabrication"), ("Reels USD/ST", "Sheets")],
)
def test_no_column_like_prices_beside_prices_is_left_out_in_silence(heads):
    rows = [["Prices in USD per short ton"], ["Board", "pt", "lb/MSF", *heads], ["SBS", 18, 75, 1150, 1210]]
    found = lines([*rows, ["CRB", 18, 70, 900, 960]])
    assert set(found) == {"D3", "E3", "D4", "E4"}


def test_figures_that_do_not_move_with_the_prices_are_no_prices():
    rows = [
        ["Board", "pt", "lb/MSF", "Price USD/ST", "Phone ext."],
        ["SBS", 18, 75, 1150, 1000],
        ["CRB", 18, 70, 900, 1001],
    ]
    assert set(lines(rows)) == {"D2", "D3"}


def test_bare_figures_behind_boards_in_a_letter_are_asked():
    rows = [["We offer, in EUR per tonne:"], ["GC1 250 g/m² 400 µm", 1050], ["Kind regards"], ["Telephone", 5550123]]
    assert set(lines(rows)) == {"B2"}


@pytest.mark.parametrize("title", ["Freight rates, US$ per cwt, truckload 40,000 lb", "Fracht US$/cwt"])
def test_rates_by_zone_and_state_below_a_title_for_freight_are_no_board(title):
    rows = [[title], [], ["Zone", "States", "Rate"], [1, "OH, IN, MI", 1.65], [2, "IL, WI, MN", 2.05]]
    assert states(rows) == {}


def test_places_under_delivered_to_take_the_unit_of_the_title():
    rows = [
        ["Delivered prices by zone, US$ per MSF"],
        ["Board", "pt", "lb/MSF", "Delivered to", None],
        [None, None, None, "Midwest", "Southeast"],
        ["SBS C1S", 14, 60, 37.9, 38.4],
        ["CRB C1S", 18, 70, 32.5, 33.0],
    ]
    found = lines(rows, merged=merged((1, 3, 1, 4))).values()
    assert [(str(line.state), line.offer.basis) for line in found] == [("accepted", "msf")] * 4


@pytest.mark.parametrize(
    ("title", "mm"),
    [
        ("Sheets 28 x 40 in – US$ per 1,000 sheets", (Decimal("711.2"), Decimal("1016"))),
        ("Formatware 70 x 100 cm, USD/1000 Bogen", (Decimal(700), Decimal(1000))),
        ("Franco, USD/1000 feuilles 72 x 102 cm", (Decimal(720), Decimal(1020))),
    ],
)
def test_a_title_says_how_large_the_sheets_below_it_are_and_what_a_thousand_cost(title, mm):
    rows = [[title], ["Board", "pt", "lb/MSF", "Price"], ["SBS C1S", 16, 68, 342.5], ["CCNB", 18, 71, 268.4]]
    found = lines(rows).values()
    assert [(str(line.state), line.offer.sheet_mm) for line in found] == [("accepted", mm)] * 2


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Reels, price ex works, lead time 6 weeks", "Sheets 70 x 100 cm"),
        ("GC1 folding boxboard, ex works, 6 weeks", "GD2 white-lined chipboard"),
    ],
)
def test_the_terms_in_one_tables_title_do_not_hold_below_a_title_for_another(first, second):
    rows = [
        ["Marlwick Board Ltd"],
        [],
        [first],
        HEAD,
        ["GC1", 250, 400, 1240],
        [],
        [second],
        HEAD,
        ["GD2", 300, 395, 880],
    ]
    one, other = lines(rows).values()
    assert (one.offer.delivered, other.offer.delivered) == (False, None)
    assert other.offer.lead_days is None


def test_what_the_first_boards_title_says_of_money_holds_for_the_next_board():
    head = [*HEAD[:3], "Price"]
    first, second = [["GC1, EUR/t ex works"], head, ["GC1", 250, 400, 1240]], [["GD2"], head, ["GD2", 300, 395, 880]]
    assert {line.offer.currency for line in lines([["Marlwick Board Ltd"], [], *first, [], *second]).values()} == {
        "EUR"
    }


@pytest.mark.parametrize("line", ["Sheeting charges, US$/cwt (where sheets are ordered)", "Freight rates in US$/cwt"])
def test_the_unit_of_a_charge_is_not_the_prices(line):
    rows = [["US$/ST FOB mill"], ["Grade", "pt", "lb/MSF", "US$/ST"], ["SBS C1S", 14, 60, 1190], [], [line]]
    assert states(rows) == {"D3": ("accepted", "1190")}


def test_lead_times_by_board_beside_a_table_are_no_columns_of_it():
    rows = [
        ["US$/cwt"],
        ["Grade", "pt", "lb/MSF", "US$/cwt", None, "Lead times"],
        ["SBS C1S", 14, 60, 60.4, None, "CUK", "6 weeks"],
        ["CUK", 18, 75, 54.1, None, "SBS", "4 weeks"],
    ]
    assert {line.offer.grade for line in lines(rows).values()} == {"SBS", "CUK"}


@pytest.mark.parametrize("today", ["Now", "Current", "Jetzt", "Actuel", "Ahora", "Nu"])
def test_what_prices_are_now_is_offered_beside_what_they_were(today):
    rows = [["US$/cwt"], ["Board", "pt", "lb/MSF", "Was", today, "You save"]]
    rows += [["SBS C1S", 14, 60, 62, 59.5, 2.5], ["CRB", 20, 78, 46.25, 43.75, 2.5]]
    assert states(rows) == {"E3": ("accepted", "59.5"), "E4": ("accepted", "43.75")}


def test_a_row_that_its_status_calls_superseded_is_no_offer():
    rows = [[*HEAD, "Status"], ["GC1", 250, 400, 1240, "current"], ["GC1", 250, 400, 1190, "superseded 1 Oct 2026"]]
    assert states(rows) == {"D2": ("accepted", "1240")}


def test_terms_laid_out_in_two_columns_are_heard():
    rows = [
        ["EUR/t", "EXW"],
        ["Lead time: 3 weeks", "Minimum 2 t"],
        [],
        ["Grade", "350 µm", "400 µm"],
        ["GD2", 880, 905],
    ]
    found = lines(rows)
    assert [(line.offer.basis, line.offer.delivered, line.offer.lead_days) for line in found.values()] == [
        ("tonne", False, (21, 21))
    ] * 2
    labelled = lines(
        [[*HEAD[:3], "Price EUR/t"], ["GD2", 300, 395, 880], [], [], ["Minimum order", "2 t"], ["Lead time", "3 weeks"]]
    )
    assert [(line.offer.minimum_kg, line.offer.lead_days) for line in labelled.values()] == [(2000, (21, 21))]


@pytest.mark.parametrize(("heads", "cell"), [(("Dec price", "Nov price"), "D3"), (("Nov price", "Dec price"), "F3")])
def test_the_later_of_two_months_is_offered_whichever_stands_first(heads, cell):
    prices = {"Dec price": 1215, "Nov price": 1195}
    rows = [["US$/ST"], ["Grade", "pt", "lb/MSF", heads[0], "Change vs Nov", heads[1]]]
    rows += [["SBS C1S", 14, 60, prices[heads[0]], 20, prices[heads[1]]]]
    rows += [["CRB", 20, 78, prices[heads[0]] - 300, 20, prices[heads[1]] - 300]]
    assert states(rows)[cell] == ("accepted", "1215")
    assert len(states(rows)) == 2


def test_an_average_named_last_is_no_offer():
    rows = [
        ["US$/ST"],
        ["Board", "pt", "lb/MSF", "US$/ST"],
        ["SBS C1S", 14, 60, 1200],
        ["SBS C1S average", None, None, 1200],
    ]
    assert set(states(rows)) == {"D3"}


def test_a_limited_partnership_over_prices_is_a_vendor_and_no_kilogram():
    heads = ["Board", "g/m²", "µm", "Kartonfabrik Ellerbach KG", "Hallenbeck Kartonwerk GmbH"]
    found = lines([["€/t delivered"], heads, ["GC1", 240, 395, 1235, 1247]])
    assert [line.offer.vendor for line in found.values()] == heads[3:]

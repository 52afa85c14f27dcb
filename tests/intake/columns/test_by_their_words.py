"""Columns and labels whose words could mean more than one thing: what stands above and below them decides."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State

BOARD = ["SBS C1S", 18, 75]


def test_a_width_over_inches_is_no_caliper():
    rows = [
        ["USD per 1,000 sheets"], ["Grade", "Caliper (pt)", "lb/MSF", "Width", "Length", "Price"],
        [None, None, None, "in", "in", "$/M"], [*BOARD, 28, 40, 366],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert (line.state, line.offer.caliper_um, line.offer.sheet_mm) == (
        State.ACCEPTED,
        Decimal("457.2"),
        (Decimal("711.2"), 1016),
    )


@pytest.mark.parametrize("head", ["Fiber", "Grade"])
def test_a_column_of_grades_names_the_board_beside_one_of_coatings(head):
    rows = [["US$/short ton"], [head, "Coating", "Caliper (pt)", "lb/MSF", "Price"], ["SBS", "C2S", 18, 75, 1190]]
    (line,) = lines(rows).values()
    assert (line.state, line.offer.grade, line.offer.coated_sides) == (State.ACCEPTED, "SBS", 2)


@pytest.mark.parametrize("label", ["Price basis: short ton (2,000 lb)", "Unit: short ton"])
def test_a_label_may_say_what_prices_are_per(label):
    (line,) = lines([["Currency: USD"], [label], ["Grade", "pt", "lb/MSF", "Price"], [*BOARD, 1190]]).values()
    assert (line.state, line.offer.basis) == (State.ACCEPTED, "short_ton")


@pytest.mark.parametrize("labels", [("Grammage (g/m²)", "Caliper (µm)"), ("g/m²", "µm")])
def test_reels_and_sheets_down_the_side_are_forms_and_no_order_sizes(labels):
    rows = [
        ["GC2 folding boxboard, £ per tonne"], [labels[0], 230, 270], [labels[1], 380, 455],
        ["Reels", 1170, 1150], ["Sheets", 1240, 1220],
    ]  # fmt: skip
    found = lines(rows)
    assert {cell: (line.state, line.offer.grammage_gsm, line.offer.caliper_um) for cell, line in found.items()} == {
        "B4": (State.ACCEPTED, 230, 380), "C4": (State.ACCEPTED, 270, 455),
        "B5": (State.ACCEPTED, 230, 380), "C5": (State.ACCEPTED, 270, 455),
    }  # fmt: skip


def test_prices_of_two_quarters_are_asked_and_of_two_years_the_lists_own_holds():
    quarters = lines([["US$/ST"], ["Grade", "pt", "lb/MSF", "Q2 2026 price", "Q3 2026 price"], [*BOARD, 1180, 1210]])
    assert [line.state for line in quarters.values()] == [State.QUESTION] * 2
    made = "Price list of March 3, 2026, US$/ST"
    years = lines([[made], ["Grade", "pt", "lb/MSF", "Price 2025", "Price 2026"], [*BOARD, 1180, 1210]])
    assert [line.offer.price for line in years.values()] == [1210]


def test_a_count_of_sheets_before_the_amount_bounds_no_order_size():
    rows = [
        ["Description", "Sheet size", "Qty (sheets)", "Price per M", "Extension"],
        ["SBS C1S 14 pt 59 lb/MSF", '25" x 38"', 20000, Decimal("246"), 4920],
    ]
    (line,) = lines(rows, formats={(1, 3): "$#,##0.00"}).values()
    assert (line.state, line.offer.price, line.offer.from_kg) == (State.ACCEPTED, 246, None)


@pytest.mark.parametrize(
    "title",
    ["Prices in US$ per short ton, based on a rate of 1.36 CAD/USD", "USD/ST, reflecting the $50/ton increase of May"],
)
def test_an_amount_in_a_title_leaves_the_currency_and_unit_beside_it(title):
    (line,) = lines([[title], ["Grade", "pt", "lb/MSF", "Price"], [*BOARD, 1190]]).values()
    assert (line.state, line.offer.currency, line.offer.basis) == (State.ACCEPTED, "USD", "short_ton")


@pytest.mark.parametrize(
    ("terms", "delivered"), [("Prepaid & allowed", True), ("Collect", False), ("Third party", None)]
)
def test_freight_terms_say_who_pays(terms, delivered):
    (line,) = lines([["USD/ST"], ["Grade", "pt", "lb/MSF", "Price", "Freight terms"], [*BOARD, 1190, terms]]).values()
    assert line.offer.delivered is delivered


def test_a_property_above_a_unit_of_weight_is_no_weight():
    heads = [["Grade", "Grammage", "Caliper", "Cobb 60", "Price"], [None, "g/m²", "µm", "g/m²", "€/t"]]
    found = lines([*heads, ["GC1", 240, 385, 45, 1290], ["GT2", 320, 430, 48, 985]])
    assert {cell: str(line.offer.grammage_gsm) for cell, line in found.items()} == {"E3": "240", "E4": "320"}


def test_quantities_that_move_together_where_nothing_else_is_a_price_are_prices():
    heads = ["Grade", "g/m²", "µm", "Ex stock", "Making (min. 5 t)"]
    found = lines([["£ per tonne"], heads, ["GC1", 240, 385, 1370, 1290], ["GT2", 320, 430, 1065, 985]])
    assert set(found) == {"D3", "E3", "D4", "E4"}
    assert {(str(line.state), line.offer.minimum_kg) for line in found.values()} <= {
        ("accepted", None),
        ("accepted", 5000),
    }
    assert not lines([["£ per tonne"], heads, ["GC1", 240, 385, 1370, 20], ["GT2", 320, 430, 65, 5]])


def test_a_title_that_prices_sheets_gives_their_size():
    heads = ["Grade", "Caliper (pt)", "lb/MSF", "under 10,000 lb", "10,000 lb & up"]
    found = lines([["US$ per 1,000 sheets 28 x 40 in"], [], heads, ["SBS C1S", 16, 68, 377.4, 349]])
    assert {tuple(map(str, line.offer.sheet_mm)) for line in found.values()} == {("711.2", "1016.0")}


@pytest.mark.parametrize("head", ["Offer", "Oferta", "Angebot", "Offre", "Offert"])
def test_numbers_of_offers_beside_their_prices_are_no_prices(head):
    rows = [[head, "Board", "g/m²", "µm", "EUR/tonne"], ["O-71", "GC2", 255, 430, 1184], ["O-72", "GD2", 280, 370, 879]]
    assert {cell: str(line.state) for cell, line in lines(rows).items()} == {"E2": "accepted", "E3": "accepted"}


def test_amounts_behind_a_currency_are_no_numbers_of_offers():
    rows = [["Offer", "Board", "g/m²", "µm"], ["EUR-1184", "GC2", 255, 430], ["EUR-879", "GD2", 280, 370]]
    assert set(lines(rows)) == {"A2", "A3"}

"""Columns of prices whose heads sound like something else, in five languages; and what only looks like them."""

import pytest

from tests.intake.sheets import lines, read
from tracker.trade.offer import State

ACCEPTED, QUESTION = State.ACCEPTED, State.QUESTION


def _boards(title, heads, *figures, measure="Caliper (pt)"):
    boards = (["White", "SBS", 18], ["Grey", "CRB", 20], ["Brown", "CUK", 24])
    rows = [[*board, *row] for board, row in zip(boards, figures, strict=False)]
    return [[title], ["Product", "Grade", measure, *heads], *rows]


def _states(rows, column):
    found = lines(rows)
    return {found[cell].state for cell in found if cell[0] == column}


@pytest.mark.parametrize(
    ("title", "head"),
    [
        ("Prices in USD per short ton", "Premium"), ("Prices in USD per short ton", "Large"),
        ("Prices in USD per short ton", "Payment 60 days"), ("Prices in USD per short ton", "Change"),
        ("Preise in EUR/1000 kg", "Zuschlag"), ("Prix en EUR/1000 kg", "Supplément"),
        ("Precios en EUR/1000 kg", "Recargo"), ("Priser i EUR/1000 kg", "Tillägg"),
    ],
)  # fmt: skip
def test_figures_as_high_as_the_price_beside_them_are_asked_about_whatever_their_head_says(title, head):
    rows = _boards(title, ["Price", head], [1145, 1195], [905, 950])
    assert _states(rows, "D") == {ACCEPTED}
    assert _states(rows, "E") == {QUESTION}
    assert all(not line.offer.charges for line in lines(rows).values())


@pytest.mark.parametrize(
    ("heads", "first", "second"),
    [
        (["Price", "Premium"], [1145, 60], [905, 55]), (["Price", "Min order"], [1145, 1200], [905, 1000]),
        (["Price", "Min order (kg)"], [1145, 1200], [905, 1000]), (["Price", "Width"], [1145, 1100], [905, 900]),
        (["Price", "Width", "Length"], [1145, 700, 1000], [905, 640, 900]),
        (["Price", "Freight", "Total"], [1145, 50, 1195], [905, 50, 955]),
        (["Price", "Yield"], [1145, 1100], [905, 900]),
    ],
)  # fmt: skip
def test_charges_quantities_and_sums_are_what_their_heads_say(heads, first, second):
    found = lines(_boards("Prices in USD per short ton", heads, first, second))
    assert {cell: line.state for cell, line in found.items()} == {"D3": ACCEPTED, "D4": ACCEPTED}


@pytest.mark.parametrize(
    ("title", "heads"),
    [
        ("Prices in USD per short ton", ["Tier 1", "Tier 2"]), ("Prices in USD per short ton", ["Break 1", "Break 2"]),
        ("Prices in USD per short ton", ["Band 1", "Band 2"]), ("Preise in EUR/t", ["Menge 1", "Menge 2"]),
        ("Prix en EUR/t", ["Palier 1", "Palier 2"]), ("Priser i EUR/t", ["Volym 1", "Volym 2"]),
    ],
)  # fmt: skip
def test_numbered_order_sizes_that_say_no_weight_are_asked_about(title, heads):
    rows = _boards(title, heads, [1145, 1100], [905, 880])
    assert _states(rows, "D") == _states(rows, "E") == {QUESTION}


@pytest.mark.parametrize(
    "head", ["Total", "Value", "Premium", "Extra", "Charge", "Ex stock", "Volume", "Index", "Forecast"]
)
def test_the_only_figures_beside_boards_below_a_title_of_prices_are_asked_about(head):
    rows = _boards("Prices in USD per short ton", [head], [1145], [905])
    assert _states(rows, "D") == {QUESTION}


def test_boards_measured_in_their_names_are_boards_too():
    found = lines([["Prices in USD per short ton"], ["Product", "Value"], ["SBS C1S 18 pt", 1145], ["CRB 20 pt", 905]])
    assert {line.state for line in found.values()} == {QUESTION}


@pytest.mark.parametrize(
    ("title", "head", "figures"),
    [
        ("Surcharges, USD/ST", "Extra", [40, 35]), ("Market index, USD/ST", "Index", [1145, 905]),
        ("Technical data", "Index", [110, 105]), ("Boards", "Premium", [40, 35]),
    ],
)  # fmt: skip
def test_a_title_that_names_what_stands_below_it_and_low_charges_leave_no_question(title, head, figures):
    assert not read(_boards(title, [head], *[[figure] for figure in figures])).lines


def test_where_one_board_is_offered_a_head_that_says_nothing_known_may_be_its_price():
    rows = _boards("Prices in USD per short ton", ["Price", "Rush"], [1145, 1195])
    assert _states(rows, "E") == {QUESTION}


def test_an_export_without_a_word_for_price_has_it_beside_its_currency():
    heads = ["KX1", "KX2", "Grade", "CALPT", "PRQ", "CYQ", "UMQ", "DXQ"]
    rows = [heads, ["001", "60417", "CRB", "14", "44.25", "USD", "CWT", "21"],
            ["001", "60417", "CRB", "18", "870.00", "USD", "ST", "21"]]  # fmt: skip
    found = lines(rows)
    assert {cell: (line.state, line.offer.price) for cell, line in found.items()} == {
        "E2": (ACCEPTED, found["E2"].offer.price), "E3": (ACCEPTED, found["E3"].offer.price),
    }  # fmt: skip
    codes = ["ITNO", "ITDS", "CALPT", "BWLBMSF", "SAPR", "CUCD", "SPUM", "TEDL", "LEAT_DAYS", "VENDOR"]
    row = ["1100418", "CRB C1S", "14", "55", "44.25", "USD", "CWT", "FOB MILL", "21", "Oxbow Falls Board Mills"]
    (line,) = lines([codes, row]).values()
    assert line.state is ACCEPTED
    assert line.offer.lead_days == (21, 21)


def test_a_year_before_a_unit_of_price_heads_a_column_among_heads():
    heads = ["Board", "Pt", "lb/MSF", "MSF/ST", "2025 $/ST (expired)", "2026 $/ST", "Moisture %"]
    rows = [["FOB Timber Hollow, Ohio"], [], heads, ["SBS C1S", 16, 68, 29.41, 1160, 1195, 6.5],
            ["CCNB", 18, 71, 28.17, 890, 912, 7.1]]  # fmt: skip
    assert {cell: line.state for cell, line in lines(rows).items()} == {"F4": ACCEPTED, "F5": ACCEPTED}
    data = [["SBS C1S", "18 pt", "2026 USD/ST"], ["CRB", "20 pt", "1905 USD/ST"]]
    assert lines(data).keys() == {"C1", "C2"}

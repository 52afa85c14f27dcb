"""Order sizes spread across: no column of them is left out in silence."""

import pytest

from tests.intake.sheets import book, codes, grid, lines, merged
from tracker.intake.read import read_workbook
from tracker.trade.layout import Layout, MarkedColumn
from tracker.trade.offer import Answers

TITLE = ["All prices US dollars per cwt, f.o.b. mill"]
GROUP = ["", "", "", "Order size (lbs)", "", ""]


def _sheet(last: str):
    heads = ["Grade", "Caliper (pt)", "Basis wt lbs/MSF", "5,000 - 19,999", "20,000 - 39,999", last]
    rows = [["SBS C1S", 12, 52.5, 71.40, 68.90, 66.25], ["SBS C1S", 18, 71.5, 70.40, 67.90, 65.25]]
    return lines([TITLE, GROUP, heads, *rows], merged=merged((1, 3, 1, 5)))


@pytest.mark.parametrize("last", ["40,000 and over", "40,000 & over", "40,000 and up", "40,000+", "from 40,000"])
def test_an_open_order_size_without_a_unit_takes_that_of_its_heading(last):
    found = _sheet(last)
    assert [str(found[cell].state) for cell in ("D4", "E4", "F4", "F5")] == ["accepted"] * 4
    assert round(found["F4"].offer.from_kg) == 18144
    assert found["F4"].offer.below_kg is None
    assert found["E4"].offer.below_kg == pytest.approx(found["F4"].offer.from_kg)


@pytest.mark.parametrize("last", ["straight wagon", "by agreement", "best"])
def test_a_head_that_cannot_be_read_among_order_sizes_is_asked_about(last):
    found = _sheet(last)
    assert str(found["F4"].state) == "question"
    assert str(found["F5"].state) == "question"
    assert "bracket-unread" in codes(found["F4"]) or "number-ambiguous" in codes(found["F4"])
    assert str(found["E4"].state) == "accepted"


def _marked(*, grouped: bool):
    heads = ("Grade", "Caliper (pt)", "Basis wt lbs/MSF", "5,000 - 19,999", "20,000 and over")
    group = ("", "", "", "Order size (lbs)", "") if grouped else ("",)
    rows = [TITLE, group, heads, ("SBS C1S", 12, 52.5, 71.40, 68.90), ("SBS C1S", 18, 71.5, 70.40, 67.90)]
    roles = [("grade", ""), ("caliper", "pt"), ("weight", "lb/MSF"), ("price", "cwt"), ("price", "cwt")]
    columns = tuple(MarkedColumn(index, role, unit) for index, (role, unit) in enumerate(roles))
    layout = Layout("Sheet1", "0" * 64, columns, first_row=3, header_row=2, heads=tuple(enumerate(heads)))
    workbook = book(grid(rows, merged=merged((1, 3, 1, 4))))
    return read_workbook(workbook, Answers(layouts=(layout,))).lines


def test_price_columns_marked_by_hand_keep_the_order_sizes_of_their_heads():
    first, last = _marked(grouped=True)[:2]
    assert (str(first.state), str(last.state)) == ("accepted", "accepted")
    assert round(first.offer.from_kg) == 2268
    assert first.offer.below_kg == last.offer.from_kg
    assert last.offer.below_kg is None


def test_order_sizes_marked_by_hand_without_a_unit_are_asked_about():
    assert all("bracket-unread" in codes(line) for line in _marked(grouped=False))


def test_the_same_order_sizes_under_two_coatings_are_offers_of_their_own():
    title = "Solid bleached sulfate, ¢/lb FOB mill"
    heads = [
        ["Caliper", "lb/MSF", "C1S", None, "C2S", None],
        [None, None, *["under 20,000 lb", "20,000 lb up"] * 2],
    ]
    found = lines(
        [[title], [], *heads, ["12 pt", 52, 61.5, 60, 64.5, 62.75]], merged=merged((2, 2, 2, 3), (2, 4, 2, 5))
    )
    assert [(line.offer.coated_sides, line.offer.below_kg is None, str(line.state)) for line in found.values()] == [
        (1, False, "accepted"),
        (1, True, "accepted"),
        (2, False, "accepted"),
        (2, True, "accepted"),
    ]


def test_net_prices_by_order_size_stand_beside_the_list_price():
    heads = ["Grade", "pt", "lb/MSF", "List", "Net under 10,000 lb", "Net 10,000 lb and up"]
    found = lines([["US$/ST delivered"], heads, ["SBS C1S", 14, 60, 1300, 1261, 1222], ["CRB", 20, 78, 960, 931, 902]])
    assert [(cell, str(line.state), line.offer.below_kg is None) for cell, line in found.items()] == [
        ("E3", "accepted", False),
        ("F3", "accepted", True),
        ("E4", "accepted", False),
        ("F4", "accepted", True),
    ]


@pytest.mark.parametrize(
    ("middle", "state"), [("Half load (5-19 t)", "accepted"), ("Quantity Blue (5-19 t)", "question")]
)
def test_no_column_among_order_sizes_is_left_out(middle, state):
    heads = ["Grade", "g/m²", "µm", "LTL (under 5 t)", middle, "Truckload (20 t and over)"]
    rows = [["GC1", 250, 405, 1260, 1225, 1190], ["GD2", 350, 455, 880, 850, 826]]
    found = lines([["EUR per tonne"], heads, *rows])
    assert str(found["E3"].state) == state


def test_a_dash_is_no_end_of_an_order_size():
    heads = ["Grade", "g/m²", "µm", "From (t)", "To below (t)", "EUR/t"]
    found = lines([heads, ["GC1", 240, 395, 2, 10, 1280], ["GC1", 240, 395, 10, "–", 1255]])
    assert [(line.offer.from_kg, line.offer.below_kg, str(line.state)) for line in found.values()] == [
        (2000, 10000, "accepted"),
        (10000, None, "accepted"),
    ]


def test_a_span_in_such_a_head_is_asked_about_and_not_lost():
    found = lines([["Sorte", "230-250 g/m² EUR/t", "260-300 g/m² EUR/t"], ["GC1", 1145, 1150], ["GD2", 905, 910]])
    assert {"B2", "B3"} <= set(found)
    assert all("caliper-unknown" in codes(line) for line in found.values())


AMOUNTS = ["Importe según cantidad", "Betrag nach Menge", "Montant selon quantité", "Belopp", "Amount by order size"]


@pytest.mark.parametrize("head", AMOUNTS)
def test_amounts_over_order_sizes_are_prices(head):
    heads = [["Sorte", "g/m²", "µm", head, None], [None, None, None, "< 3 t", "> 3 t"], [*[None] * 3, "€/t", "€/t"]]
    found = lines([*heads, ["GC1", 245, 400, 1286, 1239]], merged=merged((0, 3, 0, 4)))
    assert [str(line.state) for line in found.values()] == ["accepted", "accepted"]
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [(None, 3000), (3000, None)]


@pytest.mark.parametrize("head", ["Importe", "Betrag", "Montant", "Belopp", "Amount"])
def test_amounts_beside_prices_are_what_a_line_comes_to(head):
    found = lines([["Sorte", "g/m²", "µm", "t", "€/t", head], ["GC1", 245, 400, 3, 1286, 3858]])
    assert {cell: str(line.state) for cell, line in found.items()} == {"E2": "accepted"}

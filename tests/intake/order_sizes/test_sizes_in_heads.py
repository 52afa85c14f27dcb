"""Order sizes in the heads of the prices: where each ends, and units and words beside them."""

from decimal import Decimal

import pytest

from tests.intake.readings import accepted, by_cell, pounds, read_rows
from tests.intake.sheets import lines, merged
from tracker.intake.grid import MergedRange
from tracker.trade.offer import State


def test_one_head_over_the_order_sizes_that_prices_begin_with():
    rows = [["Sorte", "g/m²", "µm", "Preis €/t ab Menge (t)"], [None, None, None, 1, 5], ["GC1", 250, 405, 1290, 1245]]
    offers = [line.offer for line in lines(rows).values()]
    assert [(offer.price, offer.from_kg, offer.below_kg) for offer in offers] == [
        (1290, 1000, 5000),
        (1245, 5000, None),
    ]


def test_an_order_size_at_the_end_of_a_long_head_beside_a_lead_time_in_weeks():
    heads = [
        "Sorte",
        "g/m²",
        "µm",
        "Preis in Euro je Tonne ab Werk bei Abnahme von mindestens 5 t",
        "Lieferzeit in Wochen",
    ]
    assert lines([heads, ["GC1", 250, 405, 1204, 4]])["D2"].offer.from_kg == 5000


def test_order_sizes_in_the_names_of_fields_are_read():
    head = ["GRD", "CAL_PT", "BW_LB_MSF", "PRC_0_4999LB", "PRC_5000_19999LB", "PRC_20000LB_UP"]
    found = lines([["USD per CWT"], head, ["SBS", 12, 51, 69.5, 63.75, 60.9], ["CUK", 18, 70, 62.4, 57.1, 54.35]])
    assert [round(found[cell].offer.from_kg or 0) for cell in ("D3", "E3", "F3")] == [0, 2268, 9072]


def test_order_sizes_broken_over_two_rows_of_the_head():
    rows = [
        ["Board", "Spec", None, "US cents per pound by order weight"],
        [None, "Caliper", "Basis", "Under", "10,000 -", "40,000"],
        [None, "pt", "lb/MSF", "10,000 lb", "39,999 lb", "lb & up"],
        ["SBS C1S", 12, 50, 69.25, 66, 64.75],
        [None, 14, 58, 68.9, 65.65, 64.4],
    ]
    found = list(lines(rows, merged=merged((0, 1, 0, 2), (0, 3, 0, 5))).values())
    assert {str(line.state) for line in found} == {"accepted"}
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found[:3]] == [
        (None, Decimal("4535.9237")), (Decimal("4535.9237"), Decimal("18143.6948")), (Decimal("18143.6948"), None),
    ]  # fmt: skip


def test_whole_order_sizes_below_each_other_are_left_apart():
    rows = [
        ["USD/ST", None, None, "Under 10,000 lb", "10,000 lb and up"],
        ["Board", "pt", "lb/MSF", "Mill", "Mill"],
        ["SBS C1S", 12, 50, 1385, 1320],
    ]
    assert [line.offer.price for line in lines(rows).values()] == [1385, 1320]


def test_brackets_across_end_where_the_next_begins():
    rows = [["Grade", "g/m²", "µm", "< 5 t", "5–20 t", "> 20 t"], ["GC2", 235, 380, 1260, 1205, 1165]]
    found = lines([["EUR per tonne"], [], *rows])
    assert [(line.offer.from_kg, line.offer.below_kg) for line in found.values()] == [
        (None, 5000),
        (5000, 20000),
        (20000, None),
    ]


@pytest.mark.parametrize("last", ["and up", "+", "–", "no limit", "y más", "offen", "et plus"])
def test_the_last_order_size_is_open(last):
    rows = [
        ["Board", "pt", "Order from (lb)", "to (lb)", "USD/cwt"],
        ["SBS", 18, 5000, 19999, 62], ["SBS", 18, 20000, last, 59],
    ]  # fmt: skip
    line = lines(rows)["E3"]
    assert (line.state, line.offer.below_kg) == (State.ACCEPTED, None)


def test_order_sizes_down_in_the_heads_pounds():
    reading = read_rows(
        [
            ["Millrace Fold Board Inc."],
            ["US$ per short ton FOB"],
            [],
            ["Order (lb)", "SBS C1S", None, "CUK C1S", None],
            [None, "16 pt", "18 pt", "18 pt", "21 pt"],
            ["under 10,000", 1200, 1190, 1100, 1090],
            ["10,000 to 39,999", 1170, 1160, 1070, 1060],
            ["40,000 and over", 1150, 1140, 1050, 1040],
        ],
        merged=(MergedRange(3, 0, 4, 0), MergedRange(3, 1, 3, 2), MergedRange(3, 3, 3, 4)),
    )
    lines = by_cell(reading)
    assert len(accepted(reading)) == 12
    sizes = [(lines[cell].offer.from_kg, lines[cell].offer.below_kg) for cell in ("E6", "E7", "E8")]
    assert sizes == [(None, pounds(10000)), (pounds(10000), pounds(40000)), (pounds(40000), None)]


HEAD = ["Sorte", "g/m²", "µm"]


@pytest.mark.parametrize("heads", [("0–5 t", "5–15 t"), ("0-5 ton", "5-15 ton"), ("0 bis 5 t", "5 bis 15 t")])
def test_an_order_size_from_nought_is_open_below(heads):
    found = lines([["Preise in EUR je 1000 kg"], [], [*HEAD, *heads], ["GC1", 240, 375, 1100, 1050]])
    sizes = [(line.offer.from_kg, line.offer.below_kg) for line in found.values()]
    assert sizes == [(None, 5000), (5000, 15000)]

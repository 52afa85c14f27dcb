"""Offers written as forms, and blocks of a sheet that are each in units of their own."""

import pytest

from tests.intake.sheets import lines
from tracker.trade.offer import State


@pytest.mark.parametrize("gap", [0, 1, 2])
def test_an_offer_written_as_a_form_may_leave_columns_blank_before_its_values(gap):
    form = [
        ("Quote no.", "Q-20814"), ("Product", "SBS C1S"), ("Caliper", "16 pt"), ("Basis weight", "67 lb/MSF"),
        ("Price", "$1,248.00"), ("Unit", "per short ton"), ("Lead time", "3 weeks"),
    ]  # fmt: skip
    (line,) = lines([[None, label, *[None] * gap, value] for label, value in form]).values()
    assert (line.state, line.offer.basis, line.offer.lead_days) == (State.ACCEPTED, "short_ton", (21, 21))


def test_a_lone_t_is_a_tonne_in_a_metric_table_beside_one_in_pounds():
    rows = [
        ["A. USD/MSF"], ["Grade", "Caliper in", "lb/MSF", "Price"], ["SBS C1S", 0.018, 75, 43.8], [],
        ["B. EUR/t"], ["Grade", "Caliper µm", "g/m²", "Price"], ["GC1", 480, 290, 1042],
    ]  # fmt: skip
    assert [line.offer.basis for line in lines(rows).values()] == ["msf", "tonne"]
    asked = lines([*rows[:4], ["B. EUR/ton"], *rows[5:]]).values()
    assert [line.state for line in asked] == [State.ACCEPTED, State.QUESTION]


def test_a_sales_tax_is_no_charge():
    rows = [["Prices delivered, HST 13 % extra"], ["Grade", "pt", "lb/MSF", "USD/ST"], ["SBS C1S", 18, 75, 1100]]
    assert [line.offer.charges for line in lines(rows).values()] == [()]


def test_a_ditto_in_the_price_column_is_the_price_above_it():
    rows = [
        ["Grade", "pt", "lb/MSF", "USD/ST"],
        ["SBS C1S", 14, 59, 1190],
        ["SBS C1S", 18, 76, '"'],
        ["CRB", 20, 78, 870],
    ]
    assert {cell: line.offer.price for cell, line in lines(rows).items()} == {"D2": 1190, "D3": 1190, "D4": 870}


def test_a_table_of_months_is_no_offer():
    history = [["Recovered paper, USD/ST"], ["Month", "Board", "OCC"], ["Jan 2026", 1210, 95], ["Feb 2026", 1205, 92]]
    assert lines([["SBS C1S 18 pt list of Harlow Bend Board"], [], *history]) == {}
    named = [["USD/ST"], ["Month", "Board", "Price"], ["Jan 2026", "SBS 18 pt", 1210], ["Feb 2026", "CRB 20 pt", 905]]
    assert len(lines(named)) == 2

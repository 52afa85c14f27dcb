"""Offers that differ in nothing but figure and place are worked out once, and each as if it were alone."""

import pytest

from tests.intake import sheets
from tracker.intake.offers.lines import TableReader
from tracker.intake.offers.rows.alike_offers import AlikeOffers

HEADS = ["Item", "Board", "Grade", "Caliper (pt)", "USD/short ton", "Lead time", "Remark", "Pallets"]


def row(item, price, board="White board", grade="SBS", caliper=18, lead="3 weeks", remark=None, pallets=4):
    return [item, board, grade, caliper, price, lead, remark, pallets]


@pytest.fixture
def worked_out(monkeypatch):
    """The addresses of the prices that were worked out, and not filled from another."""
    found = []
    own = TableReader._fill

    def seen(self, draft, *others):
        found.append(draft.where)
        own(self, draft, *others)

    monkeypatch.setattr(TableReader, "_fill", seen)
    return found


def both_ways(monkeypatch, rows, **more):
    together = sheets.read([HEADS, *rows], **more)
    with monkeypatch.context() as patch:
        patch.setattr(AlikeOffers, "said", lambda _self, _whole: None)
        assert sheets.read([HEADS, *rows], **more) == together
    return {line.offer.source.cell: line for line in together.lines}


def test_a_row_that_says_the_same_is_filled_from_the_first(monkeypatch, worked_out):
    rows = [row("A1", 1100), row("A2", 1120, pallets=7), row("A3", 1140)]
    found = both_ways(monkeypatch, rows)
    assert worked_out == ["E2", "E2", "E3", "E4"]
    assert [line.offer.price for line in found.values()] == [1100, 1120, 1140]
    said = {one.field: one.said_by for one in found["E4"].evidence}
    assert said["grade"] == "C4"
    assert said["lead_days"] == "F4"
    assert [note.cell for note in found["E4"].notes] == ["E4"]


@pytest.mark.parametrize(
    "other",
    [
        row("A2", 1120, caliper=20),
        row("A2", 1120, lead="5 weeks"),
        row("A2", 1120, remark="less 3 %"),
        row("A2", 1120, remark="indicative"),
        row("A2", 1120, board="White board, to be discontinued"),
        row("A2", "1120 EUR/t"),
        row("A2", 11),
        row("A2", 112000),
    ],
)
def test_a_row_that_says_something_else_is_worked_out_by_itself(monkeypatch, worked_out, other):
    both_ways(monkeypatch, [row("A1", 1100), other, row("A3", 1140)])
    assert worked_out == ["E2", "E3", "E2", "E3", "E4"]


def test_what_a_note_says_of_a_figure_is_asked_of_that_figure_alone(monkeypatch):
    note = ["The price 1120 should read 1210."]
    found = both_ways(monkeypatch, [row("A1", 1100), row("A2", 1120), row("A3", 1140), [], note])
    assert [str(line.state) for line in found.values()] == ["accepted", "question", "accepted"]


def test_a_sign_at_a_rows_number_is_not_lost(monkeypatch):
    note = ["* withdrawn"]
    found = both_ways(monkeypatch, [row("A1", 1100), row("A2*", 1120), row("A3", 1140), [], note])
    assert found["E2"].state != found["E3"].state or len(found) == 2


def test_a_hidden_row_is_told(monkeypatch):
    found = both_ways(monkeypatch, [row("A1", 1100), row("A2", 1120), row("A3", 1140)], hidden_rows=frozenset({2}))
    assert [bool(sheets.codes(line) & {"hidden"}) for line in found.values()] == [False, True, False]


def test_a_price_far_outside_what_board_costs_is_told_of_that_one(monkeypatch):
    found = both_ways(monkeypatch, [row("A1", 1100), row("A2", 9), row("A3", 1140)])
    assert [bool(sheets.codes(line) & {"outside-usual-range"}) for line in found.values()] == [False, True, False]

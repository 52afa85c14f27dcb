"""Offers as rows for export: the same columns for any offers, and nothing of the JSON lost unawares."""

from datetime import date

from tests.desk.filing import file
from tests.store.making import line
from tracker.desk.comparison import ChosenFooting
from tracker.desk.export import flat
from tracker.desk.offer_rows import offer_rows
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk
from tracker.desk.quotes import compare, load_snapshot

_LEFT_OUT = {"verdict_peers_method", "verdict_band_per", "rate_said"}
"""The same on every row, or said by its neighbours already."""
_WHERE_THERE_IS_NONE = {"rate", "verdict_band", "verdict_peers", "verdict_slip"}


def rows_and_objects(desk: Desk, currency: str = "EUR") -> tuple[list[dict[str, object]], list[dict[str, object]]]:
    file(desk, *(line(f"D{row}", product=f"Fenlight {row}") for row in range(5, 25)))
    footing = ChosenFooting(date(2026, 11, 25), currency, equal_caliper_um=457.2)
    comparison = compare(desk, load_snapshot(desk), footing)
    every = range(len(comparison.snapshot))
    return offer_rows(comparison, every), offer_objects(comparison, every)


def test_every_field_of_the_json_has_its_column_or_a_reason_to_have_none(desk: Desk) -> None:
    rows, objects = rows_and_objects(desk)
    fields = {field for each in objects for field in flat(each)}
    assert fields - set(rows[0]) <= _LEFT_OUT | _WHERE_THERE_IS_NONE
    assert len({tuple(row) for row in rows}) == 1


def test_what_was_worked_out_has_no_digits_of_noise_and_what_was_quoted_stays(desk: Desk) -> None:
    rows, objects = rows_and_objects(desk)
    for row, each in zip(rows, objects, strict=True):
        assert row["price"] == each["price"]
        assert row["compared_in"] == "EUR"
        exact = each["per_tonne"]
        assert isinstance(exact, float)
        assert row["per_tonne"] == float(f"{exact:.6g}") != exact


def test_a_lead_time_reads_as_a_span(desk: Desk) -> None:
    rows, objects = rows_and_objects(desk)
    for row, each in zip(rows, objects, strict=True):
        lead = each["lead_days"]
        assert isinstance(lead, list)
        assert row["lead_days"] == (f"{lead[0]} to {lead[1]}" if lead[0] != lead[1] else str(lead[0]))

"""The lead time or the last day of one board behind that of all, whatever leads to the board."""

from datetime import date

import pytest

from tests.intake.lead_times.test_lead_times_on_a_condition import HEAD, leads_below
from tests.intake.sheets import lines


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 3 weeks (5 weeks for GD2).", "Lead time 3 weeks, 5 weeks on GD2.", "Lead time 3 weeks, GD2 5 weeks.",
        "Lieferzeit 3 Wochen, für GD2 5 Wochen.", "Lieferzeit 3 Wochen (5 Wochen für GD2).",
        "Délai 3 semaines, 5 semaines pour le GD2.", "Plazo 3 semanas, 5 semanas para GD2.",
        "Leveranstid 3 veckor, 5 veckor för GD2.",
    ],
)  # fmt: skip
def test_it_holds_for_the_board_and_the_first_for_the_others(text):
    assert leads_below(text) == [(21, 21), (35, 35)]


def test_one_board_alone_leaves_the_others_open():
    assert leads_below("Lead time 5 weeks for GD2.") == [None, (35, 35)]


def test_a_last_day_of_one_board():
    note = "Prices valid until 31 December 2026, for GD2 30 November 2026."
    found = lines([HEAD, ["GC1", 430, 290, 1201], ["GD2", 450, 350, 780], [], [note]])
    assert [found[cell].offer.valid_until for cell in ("D2", "D3")] == [date(2026, 12, 31), date(2026, 11, 30)]

"""A column of a charge that begins after the day of the list is charged to nobody for certain."""

import pytest

from tests.intake.sheets import codes, lines
from tracker.trade.offer import OPEN


def charges(head, note=None, title="Price list, 1 November 2026"):
    rows = [[title], ["Grade", "Caliper", "USD/ST", head], ["SBS", "18 pt", 1200, 30], ["CUK", "20 pt", 1000, 30]]
    line, _ = lines([*rows, *([[], [note]] if note else [])]).values()
    return [charge.price if charge.currency != OPEN else None for charge in line.offer.charges], codes(line)


@pytest.mark.parametrize(
    "head",
    [
        "Energy surcharge from January 2027 USD/ST", "Energy surcharge from 1 January 2027 USD/ST",
        "Energy surcharge effective Q1 2027 USD/ST", "Energiezuschlag ab Januar 2027 USD/ST",
        "Supplément énergie à partir de janvier 2027 USD/ST", "Recargo energía a partir de enero de 2027 USD/ST",
        "Energitillägg från januari 2027 USD/ST",
    ],
)  # fmt: skip
def test_a_charge_of_a_later_day_is_left_open(head):
    amounts, noted = charges(head)
    assert amounts == [None]
    assert "number-ambiguous" in noted


@pytest.mark.parametrize(
    "note",
    [
        "The energy surcharge applies from January 2027.", "Energiezuschlag ab Januar 2027.",
        "Supplément énergie à partir de janvier 2027.", "Recargo de energía a partir de enero de 2027.",
        "Energitillägg från januari 2027.",
    ],
)  # fmt: skip
def test_so_is_one_of_which_a_note_says_so(note):
    assert charges("Energy surcharge USD/ST", note)[0] == [None]


@pytest.mark.parametrize(
    ("head", "note"),
    [
        ("Energy surcharge from January 2026 USD/ST", None), ("Energy surcharge from 1 November 2026 USD/ST", None),
        ("Energiezuschlag ab Januar 2026 USD/ST", None), ("Freight from Kelmton USD/ST", None),
        ("Energy surcharge USD/ST", "Energy surcharge from January 2026."),
        ("Energy surcharge USD/ST", "Prices from January 2027 on request."),
    ],
)  # fmt: skip
def test_one_that_has_begun_is_charged(head, note):
    assert charges(head, note)[0] == [30]


def test_without_the_lists_own_day_it_may_be_to_come():
    assert charges("Energy surcharge from January 2027 USD/ST", title="Price list")[0] == [None]

"""A board that ends on a day may be given up then: that is no last day of its price."""

import pytest

from tests.intake.sheets import codes, lines

ROWS = [["Board", "g/m²", "EUR/t"], ["GC1", 250, 1200], ["GD2", 300, 900]]


def held(note):
    return list(lines([*ROWS, [], [note]]).values())


@pytest.mark.parametrize(
    "note",
    [
        "GC1 ends 24 December 2026",
        "GC1 läuft aus am 24.12.2026",
        "GC1 se termine le 24/12/2026",
        "GC1 termina el 24.12.2026",
        "GC1 går ut 2026-12-24",
    ],
)
def test_the_end_of_a_board_is_left_open_with_a_note(note):
    first, other = held(note)
    assert (first.offer.valid_until, "validity-unread" in codes(first)) == (None, True)
    assert (other.offer.valid_until, codes(other) & {"validity-unread"}) == (None, set())


@pytest.mark.parametrize("note", ["GC1 valid until 24 December 2026", "GC1 gültig bis 24.12.2026"])
def test_the_last_day_of_its_price_is_heard(note):
    assert [str(line.offer.valid_until) for line in held(note)] == ["2026-12-24", "None"]


def test_the_offer_that_ends_then_holds_until_then():
    assert [str(line.offer.valid_until) for line in held("Offer ends 24 December 2026")] == ["2026-12-24"] * 2

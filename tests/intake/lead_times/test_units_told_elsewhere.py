"""Bare figures under a head for lead times whose unit stands in a key, or nowhere."""

import pytest

from tests.intake.sheets import codes, lines


def lead(head, *notes, group=None):
    over = [[None, None, None, group]] if group else []
    rows = [*over, ["Grade", "pt", "lb/MSF", "USD/MSF", head], ["SBS C1S", 16, 67, 41.1, 4], ["CCNB", 18, 71, 31.9, 2]]
    found = lines([*rows, [], *([note] for note in notes)])
    assert {str(line.state) for line in found.values()} == {"accepted"}
    return next(iter(found.values()))


@pytest.mark.parametrize(
    ("head", "note", "days"),
    [
        ("LT", "Key: LT = lead time in weeks (0 = from stock).", 28),
        ("Lead time", "Lead times in working days.", 6),
        ("Lieferzeit", "Lieferzeit in Wochen ab Auftrag", 28),
        ("Délai", "Délais en jours calendaires", 4),
        ("Plazo", "Plazo de entrega en semanas", 28),
        ("Ledtid", "Ledtid i veckor", 28),
    ],
)
def test_a_note_gives_the_unit(head, note, days):
    assert lead(head, note).offer.lead_days == (days, days)


def test_without_one_it_is_told_that_nothing_can_be_counted():
    line = lead("LT")
    assert (line.offer.lead_days, codes(line)) == (None, {"lead-time-unread"})


def test_under_money_a_bare_lead_time_is_no_price():
    line = lead("LT", group="USD per MSF")
    assert codes(line) == {"lead-time-unread"}


def test_two_units_settle_nothing():
    assert lead("LT", "Lead times in weeks.", "Lead times in working days.").offer.lead_days is None


def test_a_unit_of_some_boards_is_not_that_of_all():
    assert lead("LT", "Stock sheets: lead times in days").offer.lead_days is None


def test_firm_for_some_weeks_is_how_long_a_price_holds():
    (line,) = lines([["Grade", "pt", "lb/MSF", "USD/MSF"], ["SBS C1S", 16, 67, 41.1], [], ["Firm 4 weeks"]]).values()
    assert line.offer.lead_days is None


@pytest.mark.parametrize(
    "note",
    ["Lead times in weeks except SBS", "Lead times in days for rolls", "CRB lead time in weeks"],
)
def test_a_unit_that_a_note_gives_some_boards_settles_nothing(note):
    assert lead("LT", note).offer.lead_days is None

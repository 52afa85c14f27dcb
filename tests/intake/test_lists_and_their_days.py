"""Last days as whole sheets tell them: beside the list's own day, and where a date can be read in two ways."""

from datetime import date

import pytest

from tests.intake.sheets import codes, lines


def _list(*texts):
    head = ["Product", "Grade", "Caliper (pt)", "Price USD/ST"]
    return lines([*([text] for text in texts), head, ["White", "SBS", 18, 1145]])[f"D{len(texts) + 2}"]


@pytest.mark.parametrize(
    ("issued", "until"),
    [
        ("Issued: 15.07.2026", "Prices valid until 26-10-31"),
        ("Preisliste vom 15.07.2026", "gültig bis 26-10-31"),
        ("Prislista 2026-07-15", "gäller t.o.m. 26-10-31"),
    ],
)
def test_the_lists_own_day_tells_the_year_of_its_last(issued, until):
    assert _list(issued, until).offer.valid_until == date(2026, 10, 31)


def test_without_it_the_year_stays_open():
    line = _list("Orders by 15.07.2026", "Prices valid until 26-10-31")
    assert line.offer.valid_until is None
    assert codes(line) >= {"date-ambiguous"}
    assert any("31 Oct 2026 or 26 Oct 2031" in note.text for note in line.notes)

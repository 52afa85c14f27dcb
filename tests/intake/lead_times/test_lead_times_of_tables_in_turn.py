"""'Lead time for table A 4 weeks, table B 6 weeks': the words for it are said once."""

import pytest

from tests.intake.sheets import codes, lines

HEAD = ["Grade", "Caliper", "USD/ST"]
TABLES = [["Table A"], HEAD, ["SBS", "18 pt", 1200], [], ["Table B"], HEAD, ["CRB", "24 pt", 800], []]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time for table A 4 weeks, table B 6 weeks.", "Lead time: table A 4 weeks, table B 6 weeks",
        "Lieferzeit für Tabelle A 4 Wochen, Tabelle B 6 Wochen.",
        "Délai pour le tableau A 4 semaines, tableau B 6 semaines",
        "Plazo para la tabla A 4 semanas, tabla B 6 semanas", "Leveranstid för tabell A 4 veckor, tabell B 6 veckor",
    ],
)  # fmt: skip
def test_each_table_has_its_own(note):
    assert [line.offer.lead_days for line in lines([*TABLES, [note]]).values()] == [(28, 28), (42, 42)]


@pytest.mark.parametrize(
    "note", ["Lead time for table A 4 weeks, table B 6", "Lead time for table A 4 weeks, table B 6 weeks for rolls"]
)
def test_what_is_not_all_read_is_told(note):
    first, second = lines([*TABLES, [note]]).values()
    assert (first.offer.lead_days, second.offer.lead_days) == ((28, 28), None)
    assert "lead-time-unread" in codes(second)


def test_other_times_are_none():
    note = "Payment for table A 4 weeks, table B 6 weeks"
    assert [line.offer.lead_days for line in lines([*TABLES, [note]]).values()] == [None, None]

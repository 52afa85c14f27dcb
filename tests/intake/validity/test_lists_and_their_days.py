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


@pytest.mark.parametrize(
    "text",
    [
        "From 1 October 2026 the prices below apply, which are maintained until 31 March 2027",
        "Ab 1. Oktober 2026 gelten die Preise unten, sie werden beibehalten bis 31. März 2027",
        "Nous appliquons dès le 1 octobre 2026 les prix ci-dessous, maintenus jusqu'au 31 mars 2027",
        "A partir del 1 de octubre de 2026 aplicamos estos precios, que mantendremos hasta el 31 de marzo de 2027",
        "Från 1 oktober 2026 gäller priserna nedan, som håller till den 31 mars 2027",
    ],
)
def test_prices_that_are_kept_hold_until_then(text):
    rows = [[text], [], ["Board", "g/m²", "µm", "EUR/t"], ["GC2", 260, 430, 1290]]
    assert {str(line.offer.valid_until) for line in lines(rows).values()} == {"2027-03-31"}
    rows[0] = ["El material reservado queda en stock hasta el 31 de marzo de 2027"]
    assert {line.offer.valid_until for line in lines(rows).values()} == {None}

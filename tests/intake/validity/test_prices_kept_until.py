"""'Nous maintenons ces prix jusqu'à fin février 2027': prices that a vendor keeps until a day, which dates no list."""

from datetime import date

import pytest

from tracker.intake.values.notes.dated import SaysDate
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.validity import Validity


@pytest.mark.parametrize(
    "note",
    [
        "We keep these prices until the end of February 2027.", "Wir halten diese Preise bis Ende Februar 2027.",
        "Nous maintenons ces prix jusqu'à fin février 2027.",
        "Sostenemos los precios hasta el 28 de febrero de 2027.",
        "Vi håller dessa priser till slutet av februari 2027.",
    ],
)  # fmt: skip
def test_they_hold_until_that_day(note):
    said = statements(note)
    (held,) = [one for one in said if isinstance(one, Validity)]
    assert held.until is not None
    assert held.until.readings == (date(2027, 2, 28),)
    assert not any(isinstance(one, SaysDate) for one in said)

"""A last day labelled behind the day of the paper."""

from datetime import date

import pytest

from tracker.intake.values.times.validity import validity


@pytest.mark.parametrize(
    "text",
    [
        "Quotation of 3 November 2026, validity: 18 December 2026",
        "Angebot vom 03.11.2026, Gültigkeit: 18. Dezember 2026",
        "Cotation du 03/11/2026, validité : 18 décembre 2026",
        "Oferta del 3 de noviembre de 2026, validez: 18 de diciembre de 2026",
        "Offert 2026-11-03, giltighet: 2026-12-18",
    ],
)
def test_the_labelled_day_is_the_last(text):
    said = validity(text)
    assert said is not None
    assert said.until is not None
    assert said.until.readings == (date(2026, 12, 18),)


@pytest.mark.parametrize(
    "text",
    [
        "Validity: 18 December 2026, CRB: 1 January 2027",
        "Validity: 18 December 2026 or 31 January 2027",
        "Gültig 18. Dezember 2026 oder 31. Januar 2027",
        "Quotation of 3 November 2026, validity 18 December 2026 for SBS",
    ],
)
def test_another_day_or_other_words_leave_it_unread(text):
    said = validity(text)
    assert said is None or said.unread

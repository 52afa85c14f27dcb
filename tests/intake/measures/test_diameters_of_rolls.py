"""Diameters of rolls are no times, though 'dia' is a day in Spanish, and no calipers."""

from decimal import Decimal

import pytest

from tests.intake.sheets import lines

_BOARDS = [["SBS", 14, 59], ["SBS", 16, 67]]
_HEADS = [
    "Roll dia.", "Max dia", "Dia.", "Diam.", "Ø", "Rollendurchmesser", "Rollen-Ø", "Diamètre", "Diam. bobine",
    "Diámetro", "Diám. bobina", "Bobindiameter", "Rulldiam.",
]  # fmt: skip
_UNITS = ["(in)", "(mm)", "in", '(")', "(cm)"]


def offers(head, unit, figure, *notes):
    heads = [["Stock", "Caliper", "Basis wt.", head, "Price"], [None, "(pts)", "(lb/MSF)", unit, "($/cwt)"]]
    rows = [[*board, figure, price] for board, price in zip(_BOARDS, (56.4, 56.1), strict=True)]
    found = lines([["FOB mill"], *heads, *rows, [], *([note] for note in notes)])
    assert list(found) == ["E4", "E5"]
    return [line.offer for line in found.values()]


@pytest.mark.parametrize("head", _HEADS)
@pytest.mark.parametrize("unit", _UNITS)
def test_a_column_of_diameters_is_no_time_and_no_caliper(head, unit):
    for offer, points in zip(offers(head, unit, 60, "Ships 4 to 5 weeks after order."), (14, 16), strict=True):
        assert offer.lead_days == (28, 35)
        assert offer.caliper_um == points * Decimal("25.4")
        assert (offer.minimum_kg, offer.from_kg) == (None, None)


@pytest.mark.parametrize(
    ("head", "unit"),
    [
        ("Lead time", "(days)"), ("Lieferzeit", "(Tage)"), ("Délai", "(j)"), ("Plazo", "(días)"), ("Plazo", "(dia)"),
        ("Plazo", "dias"), ("Leveranstid", "(dagar)"),
    ],
)  # fmt: skip
def test_a_column_of_times_is_one(head, unit):
    assert [offer.lead_days for offer in offers(head, unit, 30)] == [(30, 30)] * 2


@pytest.mark.parametrize("head", ["Lead time", "Lieferzeit", "Délai", "Plazo", "Leveranstid"])
def test_a_length_below_such_a_head_is_no_time(head):
    assert [offer.lead_days for offer in offers(head, "(mm)", 30)] == [None] * 2


@pytest.mark.parametrize(
    "note",
    [
        "Delivery on 60 dia rolls",
        "Ships in 60 dia. rolls",
        "Delivery: rolls 40 to 60 dia.",
        "Rolls max. 60 dia., 3 in core",
    ],
)
def test_a_sentence_on_diameters_tells_no_time(note):
    found = lines([["FOB mill"], ["Stock", "pt", "lb/MSF", "$/cwt"], ["SBS", 14, 59, 56.4], [], [note]])
    assert found["D3"].offer.lead_days is None
    assert not [one for one in found["D3"].notes if one.code.value == "lead-time-unread"]


@pytest.mark.parametrize(
    ("note", "days"), [("Entrega: 60 dias", 60), ("Entrega de bobinas: 60 días", 60), ("Plazo: 60 dias", 60)]
)
def test_a_spanish_one_on_days_does(note, days):
    found = lines([["FOB mill"], ["Stock", "pt", "lb/MSF", "$/cwt"], ["SBS", 14, 59, 56.4], [], [note]])
    assert found["D3"].offer.lead_days == (days, days)

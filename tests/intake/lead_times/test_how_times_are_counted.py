"""From what day weeks count, weeks of the calendar, and lead times that can't be counted and are told."""

import pytest

from tests.intake.readings import by_cell, note_codes, read_rows
from tests.intake.sheets import codes, lines
from tracker.trade.offer import NoteCode, State


def test_weeks_counted_from_the_works_do_not_contradict_delivered_prices():
    rows = [
        ["Prices EUR/t, DAP your plant"],
        ["Lead time: 5-6 weeks ex mill"],
        ["Grade", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert lines(rows)["D4"].offer.delivered is True


HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


def lead_beside(*texts):
    (line,) = lines([*([text] for text in texts), HEAD, GC1]).values()
    return line.offer.lead_days, codes(line)


@pytest.mark.parametrize(
    "text",
    [
        "Lead time 4 weeks, sheets 6 weeks", "Lead time 4 weeks; 2 weeks from stock", "Lead time 3 months",
        "Standard lead time is 4 weeks, for some 2 weeks", "Lead times will be longer than 4 weeks in August",
        "Lieferzeit Rollen 4 Wochen, Bogen 6 Wochen", "Lieferzeit auf Anfrage", "Lead time: call",
        "Délai bobines 3 semaines, formats 5 semaines", "Plazo bobinas 3 semanas, hojas 5 semanas",
        "Entrega: según disponibilidad", "Leveranstid rulle 3 veckor, ark 5 veckor",
        "Leveranstid enligt överenskommelse",
    ],
)  # fmt: skip
def test_a_lead_time_that_can_not_be_counted_is_told(text):
    assert lead_beside(text) == (None, {"lead-time-unread"})


def test_a_week_of_the_calendar_is_no_lead_time():
    reading = read_rows(
        [
            ["Coldharbour Carton Ltd"],
            ["£ per tonne"],
            [],
            ["Board", "gsm", "Microns", "Price", "Availability"],
            ["GC2", 270, 440, 1040, "3 to 4 wks"],
            ["GD2", 300, 400, 745, "week 24"],
        ]
    )
    line = by_cell(reading)["D6"]
    assert by_cell(reading)["D5"].offer.lead_days == (21, 28)
    assert (line.state, line.offer.lead_days) == (State.ACCEPTED, None)
    assert NoteCode.LEAD_TIME_UNREAD in note_codes(line)


@pytest.mark.parametrize(
    ("head", "cells"),
    [
        ("Lieferung", ("frei Haus, 4 Wochen", "4 Wochen", "KW 34")),
        ("Delivery terms", ("DAP, 4 weeks", "4 weeks", "week 34")),
        ("Leverans", ("fritt levererat, 4 veckor", "4 veckor", "v. 34")),
    ],
)
def test_a_lead_time_beside_delivery_is_read_and_a_week_of_the_calendar_told(head, cells):
    grades = ("GC1", "GC2", "GC3")
    found = lines([[*HEAD, head], *([grade, *GC1[1:], cell] for grade, cell in zip(grades, cells, strict=True))])
    delivered, plain, told = found.values()
    assert (delivered.offer.lead_days, delivered.offer.delivered) == ((28, 28), True)
    assert (plain.offer.lead_days, plain.offer.delivered) == ((28, 28), None)
    assert (told.offer.lead_days, codes(told)) == (None, {"lead-time-unread"})


@pytest.mark.parametrize("note", ["Leverans v. 34", "Lieferung in KW 34", "Delivery: week 34-36", "Livraison sem. 34"])
def test_a_week_of_the_calendar_in_a_note_is_told(note):
    (line,) = lines([[note], HEAD, GC1]).values()
    assert (line.offer.lead_days, codes(line)) == (None, {"lead-time-unread"})

"""Lead times of some boards or some columns: beside the table, across over it, or by the grades they name."""

import pytest

from tests.intake.sheets import codes, lines, merged
from tracker.intake.values.notes.statements import statements
from tracker.intake.values.times.lead import LeadTime


def test_lead_times_by_board_beside_a_table_are_no_columns_of_it():
    rows = [
        ["US$/cwt"],
        ["Grade", "pt", "lb/MSF", "US$/cwt", None, "Lead times"],
        ["SBS C1S", 14, 60, 60.4, None, "CUK", "6 weeks"],
        ["CUK", 18, 75, 54.1, None, "SBS", "4 weeks"],
    ]
    assert {line.offer.grade for line in lines(rows).values()} == {"SBS", "CUK"}


HEAD = ["Board", "pt", "lb/MSF", "USD/ST delivered"]
SBS, CRB = ["SBS C1S", 18, 75, 1100], ["CRB C1S", 18, 70, 900]


@pytest.mark.parametrize(
    ("note", "sbs", "crb"),
    [
        ("Lead times: SBS 4-5 weeks; CRB 3 weeks", (28, 35), (21, 21)),
        ("Lead time SBS 4 weeks, CRB in stock", (28, 28), (0, 0)),
        ("Lead time for SBS four weeks", (28, 28), None),
        ("SBS ships in 3 weeks; all other grades 5 weeks", (21, 21), (35, 35)),
        ("Lead time: rolls 3 weeks; sheets 5 weeks", None, None),
        ("Ships three to four weeks after receipt of order.", (21, 28), (21, 28)),
    ],
)
def test_a_lead_time_holds_for_the_grades_it_names(note, sbs, crb):
    assert [line.offer.lead_days for line in lines([HEAD, SBS, CRB, [], [note]]).values()] == [sbs, crb]


def test_a_rows_own_lead_time_comes_before_that_of_its_grade():
    rows = [[*HEAD, "Lead time"], [*SBS, "2 weeks"], [*CRB, "TBA"], [], ["Lead times: SBS 4 weeks; CRB 3 weeks"]]
    assert [line.offer.lead_days for line in lines(rows).values()] == [(14, 14), None]


LEAD_HEAD = ["Grade", "µm", "g/m²", "EUR/t"]
GC1 = ["GC1", 450, 300, 1100]


@pytest.mark.parametrize(
    "text",
    [
        "Lead time: GC1 4 weeks, all others 6 weeks", "Lieferzeit: GC1 4 Wochen, übrige 6 Wochen",
        "Délai : GC1 4 semaines, autres 6 semaines", "Plazo: GC1 4 semanas, resto 6 semanas",
        "Leveranstid: GC1 4 veckor, övriga 6 veckor",
    ],
)  # fmt: skip
def test_what_is_said_of_all_others_holds_for_the_grades_not_named(text):
    assert [said.grades for said in statements(text) if isinstance(said, LeadTime)] == [("FBB",), ()]
    named, other = lines([[text], LEAD_HEAD, GC1, ["GD2", *GC1[1:]]]).values()
    assert (named.offer.lead_days, other.offer.lead_days) == ((28, 28), (42, 42))


def test_a_row_of_lead_times_gives_each_column_its_own():
    found = lines(
        [
            ["Precios en euros por tonelada, ex fábrica"],
            ["Gramaje (g/m²)", "Reverso gris (GD2)", "Reverso kraft (GT)", "Reverso crema (GC2)"],
            ["Plazo de entrega", "15 días", "a convenir", "4 semanas"],
            [250, "962,50", "1.014,00", "1.268,00"],
            [300, "948,00", "1.002,50", "1.252,00"],
        ]
    )
    assert [cell for cell in found if str(found[cell].state) == "accepted"] == ["B4", "C4", "D4", "B5", "C5", "D5"]
    assert [found[cell].offer.lead_days for cell in ("B4", "C4", "D5")] == [(15, 15), None, (28, 28)]
    assert codes(found["C5"]) == {"lead-time-unread"}


def test_one_lead_time_for_all_columns_is_every_columns():
    found = lines(
        [
            ["Prices in EUR per tonne"],
            ["Grammage (g/m²)", "GD2", "GC2"],
            ["Lead time", "3 weeks", ""],
            [250, 962, 1268],
            [300, 948, 1252],
        ]
    )
    assert {cell: line.offer.lead_days for cell, line in found.items()} == dict.fromkeys(
        ("B4", "C4", "B5", "C5"), (21, 21)
    )


def test_the_shortest_and_the_longest_lead_time_may_stand_in_two_columns():
    heads = [["Grade", "g/m²", "µm", "EUR/t", "Lead time, weeks", None], [None, None, None, None, "min", "max"]]
    found = lines([["EXW"], *heads, ["GC1", 240, 395, 1235, 3, 5]], merged=merged((1, 4, 1, 5)))
    assert [line.offer.lead_days for line in found.values()] == [(21, 35)]


def test_stock_of_sheets_in_a_title_is_none_of_rolls():
    rows = [["Price list - sheets from stock, USD per short ton"], [], ["Board", "pt", "lb/MSF", "Rolls", "Sheets"]]
    found = lines([*rows, ["SBS", 14, 60, 1228, 1290]])
    assert [line.offer.lead_days for line in found.values()] == [None, (0, 0)]


@pytest.mark.parametrize(
    ("note", "days"),
    [
        ("Rolls 4 weeks, sheets 6 weeks", [(28, 28), (42, 42)]),
        ("Rolls: 4 weeks; sheets: 6 weeks", [(28, 28), (42, 42)]),
        ("Payment: rolls 4 weeks, sheets 6 weeks", [None, None]),
        ("Quality claims: rolls 4 weeks, sheets 2 weeks", [None, None]),
        ("Rolls stored 4 weeks, sheets 2 weeks", [None, None]),
    ],
)
def test_weeks_of_rolls_and_sheets_are_a_lead_time_where_nothing_else_takes_them(note, days):
    head = ["Board", "pt", "lb/MSF", "Rolls USD/ST", "Sheets USD/ST"]
    found = lines([head, ["SBS", 18, 77, 1228, 1300], ["CUK", 21, 84, 1010, 1080], [], [note]])
    assert [found[at].offer.lead_days for at in ("D2", "E2")] == days

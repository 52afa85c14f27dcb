"""Notes that say one thing of all lines and another of some, in one cell."""

import pytest

from tests.intake.sheets import lines

HEAD = ["Item", "Product", "Caliper (pt)", "Price USD/short ton"]
BOARDS = [[1, "SBS C1S", 18, 1250], [2, "SBS C1S", 20, 1240], [3, "CRB", 24, 890], [4, "CUK", 18, 1010]]


def told(note, field):
    found = lines([["Marrowgate Board Co."], [], HEAD, *BOARDS, [], [note]])
    return [getattr(found[f"D{row}"].offer, field) for row in range(4, 8)]


@pytest.mark.parametrize(
    "note",
    [
        "Lead time 3 weeks; item 4: 6 weeks.",
        "Lead time 3 weeks. Item 4 6 weeks.",
        "Lead time 3 weeks, item 4 6 weeks",
        "Lead time 3 weeks (item 4: 6 weeks)",
        "Lead time 3 weeks, 6 weeks for item 4",
        "All items: lead time 3 weeks. Item 4 is 6 weeks.",
        "Lead time 3 weeks. CUK: 6 weeks. Prices delivered.",
        "Lieferzeit 3 Wochen; Pos. 4: 6 Wochen. Preise frei Haus.",
        "Délai 3 semaines, poste 4 : 6 semaines",
        "Plazo de entrega 3 semanas; posición 4: 6 semanas",
        "Leveranstid 3 veckor; rad 4: 6 veckor",
    ],
)
def test_what_holds_for_all_is_not_added_to_what_holds_for_one_line(note):
    assert told(note, "lead_days") == [(21, 21)] * 3 + [(42, 42)]


def test_a_bare_figure_of_some_lines_is_of_what_the_note_began_with():
    assert [round(kg) for kg in told("Minimum order 10,000 lb; item 3 20,000 lb.", "minimum_kg")] == [
        4536,
        4536,
        9072,
        4536,
    ]
    charges = told("Freight $45 per short ton, item 3 $60 per short ton", "charges")
    assert [str(charge.price) for (charge,) in charges] == ["45", "45", "60", "45"]


def test_each_of_several_lines_keeps_its_own():
    assert told("Item 1: 4 weeks, item 2: 5 weeks, items 3 and 4: 8 weeks", "lead_days") == [
        (28, 28),
        (35, 35),
        (56, 56),
        (56, 56),
    ]


def test_a_sentence_that_goes_on_about_a_line_stays_with_it():
    note = "Item 2: special making. Minimum 20 short tons. Lead time 8 weeks."
    assert told(note, "lead_days") == [None, (56, 56), None, None]
    assert told("Item 2: minimum 20 short tons. Prices delivered.", "delivered") == [True] * 4
    # The comma joins two things that are said of the same lines.
    note = "Lead time 6 weeks, minimum 20 short tons for items 3 and 4"
    assert told(note, "lead_days") == [None, None, (42, 42), (42, 42)]


def test_the_word_for_lines_may_stand_before_each_number():
    assert told("Lead time 6 weeks for item 1, item 2 and item 3", "lead_days") == [(42, 42)] * 3 + [None]
    assert told("Pos. 1 und Pos. 2: Lieferzeit 4 Wochen", "lead_days") == [(28, 28)] * 2 + [None] * 2


@pytest.mark.parametrize("note", ["Item 4 – 10 weeks lead time", "Lead time item 4 – 10 weeks", "Pos. 4 – 10 Wochen"])
def test_a_dash_behind_a_lines_number_begins_its_lead_time(note):
    assert told(note, "lead_days") == [None, None, None, (70, 70)]


def test_a_dash_between_numbers_of_lines_or_of_weeks_spans_them():
    assert told("Items 2 – 4: 6 weeks", "lead_days") == [None, (42, 42), (42, 42), (42, 42)]
    assert told("Lead time 3 – 4 weeks", "lead_days") == [(21, 28)] * 4
    assert told("Lead time per item 3 – 4 weeks", "lead_days") == [(21, 28)] * 4


def test_a_figure_per_line_holds_for_all():
    note = "Minimum per line 10 short tons. Lead time 5 weeks."
    assert told(note, "lead_days") == [(35, 35)] * 4
    assert all(kg is not None for kg in told(note, "minimum_kg"))


def test_a_note_by_number_is_about_the_table_above_it():
    head = ["Item", "Product", "Caliper (pt)", "Price USD/short ton"]
    rolls = [["Rolls"], head, [1, "SBS C1S", 18, 1250], [2, "CRB", 20, 890], ["Item 2: lead time 6 weeks"]]
    sheets = [["Sheets"], head, [1, "SBS C1S", 18, 1350], [2, "CRB", 20, 990], [], ["Item 1: lead time 9 weeks"]]
    found = lines([["Marrowgate Board Co."], [], *rolls, [], *sheets])
    leads = {cell: line.offer.lead_days for cell, line in found.items()}
    assert leads == {"D5": None, "D6": (42, 42), "D11": (63, 63), "D12": None}


def test_a_note_by_number_reaches_lines_of_every_table_that_counts_on():
    head = ["Item", "Product", "Caliper (pt)", "Price USD/short ton"]
    rolls = [["Rolls"], head, [1, "SBS C1S", 18, 1250], [2, "CRB", 20, 890]]
    sheets = [["Sheets"], head, [3, "SBS C1S", 18, 1350], [4, "CRB", 20, 990], [], ["Items 2 and 3: lead time 9 weeks"]]
    found = lines([["Marrowgate Board Co."], [], *rolls, [], *sheets])
    leads = [line.offer.lead_days for line in found.values()]
    assert leads == [None, (63, 63), (63, 63), None]

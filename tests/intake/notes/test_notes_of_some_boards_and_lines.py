"""What a note says of some boards, or of some lines by their numbers, holds for no others."""

import pytest

from tests.intake.sheets import lines

METRIC = ["Grade", "µm", "g/m²", "EUR/tonne"]
CODES = [["GC1", 450, 300, 1100], ["GT2", 420, 350, 860], ["GD2", 400, 300, 790]]


def below(note):
    return [line.offer for line in lines([METRIC, *CODES, [], [note]]).values()]


@pytest.mark.parametrize(
    "note", ["Lead time for GT2: 6 weeks.", "Plazo para GT2: 6 semanas.", "GT2: Lieferzeit 6 Wochen"]
)
def test_a_note_about_one_code_says_nothing_of_another_of_its_grade(note):
    assert [offer.lead_days for offer in below(note)] == [None, (42, 42), None]


def test_a_note_about_the_grade_holds_for_all_its_codes():
    assert [offer.lead_days for offer in below("Lead time for CRB: 6 weeks.")] == [None, (42, 42), (42, 42)]


def test_a_note_about_a_kind_of_board_is_not_said_of_all():
    assert [offer.lead_days for offer in below("Lead time for recycled board: 6 weeks.")] == [None, (42, 42), (42, 42)]


HEAD = ["Board", "pt", "lb/MSF"]
SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


MIXED = [
    ["No.", *HEAD, "USD/ST"],
    [1, "SBS C1S", 18, 75, 1178],
    [2, "SBS C1S", 20, 81, 1160],
    [3, "CRB C1S", 20, 85, 800],
]


@pytest.mark.parametrize(
    ("note", "lead", "minimum", "delivered"),
    [
        ("Item 2: lead time 6 weeks", "-6-", "---", "---"),
        ("Lead time for items 1 and 3 is 6 weeks", "6-6", "---", "---"),
        ("Lines 1-2: minimum 5 short tons", "---", "55-", "---"),
        ("Rad 2: leveranstid 6 veckor", "-6-", "---", "---"),
        ("Délai pour la ligne 3 : 6 semaines", "--6", "---", "---"),
        ("Pos. 3: Lieferzeit 6 Wochen", "--6", "---", "---"),
        ("Partida 1: plazo de entrega 6 semanas", "6--", "---", "---"),
        ("All items 6 weeks lead time", "666", "---", "---"),
        ("CRB delivered", "---", "---", "--y"),
        ("CRB: delivered", "---", "---", "--y"),
        ("Freight is included for SBS only", "---", "---", "yy-"),
        ("18 pt is made to order, lead time 6 weeks", "6--", "---", "---"),
        ("20 pt only: minimum order 5 short tons", "---", "-55", "---"),
        ("Minimum for 20 pt: 5 short tons", "---", "-55", "---"),
        ("24 pt is made to order, lead time 6 weeks", "---", "---", "---"),
        ("Line 7: lead time 6 weeks", "---", "---", "---"),
        ("Lead time 6 weeks, minimum 5 short tons", "666", "555", "---"),
    ],
)
def test_a_note_about_some_lines_holds_for_these(note, lead, minimum, delivered):
    found = [line.offer for line in lines([*MIXED, [], [note]]).values()]
    assert "".join("6" if offer.lead_days == (42, 42) else "-" for offer in found) == lead
    assert "".join("5" if offer.minimum_kg else "-" for offer in found) == minimum
    assert "".join("y" if offer.delivered else "-" for offer in found) == delivered


def test_a_charge_or_currency_of_some_lines_is_no_other_lines():
    charged = lines([*MIXED, [], ["Items 1 and 2: freight 40 USD/short ton extra"]])
    assert [len(line.offer.charges) for line in charged.values()] == [1, 1, 0]
    surcharge = lines([*MIXED, [], ["Energy surcharge of 3 % on SBS"]])
    assert [len(line.offer.charges) for line in surcharge.values()] == [1, 1, 0]
    asked = lines([*MIXED, [], ["Item 2 price in CAD"]])
    assert [str(line.state) for line in asked.values()] == ["accepted", "question", "accepted"]


def test_a_sheet_size_of_one_line_is_no_other_lines():
    found = lines([*MIXED, [], ["Sheet size for line 2: 28 x 40 in"]])
    assert [line.offer.sheet_mm is not None for line in found.values()] == [False, True, False]


def test_a_name_before_a_colon_is_the_line_of_that_name():
    rows = [["Brand", *HEAD, "USD/ST"], ["Fenlight", *SBS, 1178], ["Marlstone", *SBS, 1160]]
    found = lines([*rows, [], ["Marlstone: lead time 6 weeks"]])
    assert [line.offer.lead_days for line in found.values()] == [None, (42, 42)]


def test_a_contracts_article_is_no_line():
    found = lines(
        [["Grade", "µm", "g/m²", "EUR/t"], ["GC1", 450, 250, 1100], [], ["Lieferung gemäß Artikel 5 unserer AGB: DAP"]]
    )
    assert [line.offer.delivered for line in found.values()] == [True]


@pytest.mark.parametrize(
    ("note", "lead"),
    [
        ("Lead time on all lines is 6 weeks, except line 3, which is made twice a year: 9 weeks", "669"),
        ("Lieferzeit 6 Wochen, ausgenommen Pos. 3: 9 Wochen", "669"),
        ("Délai 6 semaines, sauf la ligne 3 : 9 semaines", "669"),
        ("Plazo de entrega 6 semanas, salvo la partida 3: 9 semanas", "669"),
        ("Leveranstid 6 veckor, utom rad 3: 9 veckor", "669"),
        ("Lead time 6 weeks, except items 1 and 2", "--6"),
        ("All items except 3: lead time 6 weeks", "66-"),
    ],
)
def test_an_exception_holds_for_its_lines_and_the_rest_for_all_others(note, lead):
    said = {(42, 42): "6", (63, 63): "9", None: "-"}
    found = lines([*MIXED, [], [note]]).values()
    assert "".join(said[line.offer.lead_days] for line in found) == lead


def test_a_minimum_with_an_exception():
    found = lines([*MIXED, [], ["Minimum order 5 short tons, except item 2: 10 short tons"]]).values()
    assert [round(line.offer.minimum_kg) for line in found] == [4536, 9072, 4536]


def test_a_light_caliper_charge_of_some_lines():
    found = lines([*MIXED, [], ["Lines 1 and 2 carry a light-caliper charge of $45 per short ton, not in the price."]])
    assert [[str(charge.price) for charge in line.offer.charges] for line in found.values()] == [["45"], ["45"], []]


@pytest.mark.parametrize(
    ("note", "leads"),
    [
        ("Lead time 3 weeks except items 1 and 2", "--3"),
        ("Lead time 3 weeks except item 2: 6 weeks", "363"),
        ("Item 2: lead time 6 weeks. All other items: 3 weeks.", "363"),
        ("Lieferzeit 3 Wochen außer Pos. 2 (6 Wochen)", "363"),
        ("Pos. 2: Lieferzeit 6 Wochen, alle übrigen 3 Wochen", "363"),
        ("Délai 3 semaines sauf poste 2 : 6 semaines", "363"),
        ("Plazo de entrega 3 semanas salvo partida 2: 6 semanas", "363"),
        ("Leveranstid 3 veckor utom rad 2", "3-3"),
        ("Item 2: six weeks", "-6-"),
        ("20 pt: six weeks", "-66"),
        ("The 20 pt comes from our second machine and needs six weeks.", "-66"),
        ("The .020 runs on a special cycle: 60,000 lb minimum and 6 weeks on that one.", "-66"),
        ("Der 20 pt kommt von der zweiten Maschine und benötigt sechs Wochen.", "-66"),
        ("Le 20 pt vient d'une autre usine et demande 6 semaines.", "-66"),
        ("El 20 pt viene de otra fábrica y necesita 6 semanas.", "-66"),
        ("20 pt går på en annan maskin och kräver 6 veckor.", "-66"),
        ("The 20 pt is a firm offer for 6 weeks.", "---"),
        ("The 24 pt needs six weeks.", "---"),
        ("Six weeks", "---"),
        ("Item 2: 30 days", "---"),
    ],
)
def test_a_note_about_some_lines_and_the_others(note, leads):
    found = [line.offer.lead_days for line in lines([*MIXED, [], [note]]).values()]
    said = {None: "-", (21, 21): "3", (42, 42): "6"}
    assert "".join(said[lead] for lead in found) == leads


def test_minimums_and_last_days_of_some_lines_and_the_others():
    notes = ["Item 3: min. order 30,000 lb each. All other items: 10,000 lb."]
    notes += ["Item 1 is offered for acceptance by July 10, 2026; the remaining prices stand until September 30, 2026."]
    found = [line.offer for line in lines([*MIXED, [], *([note] for note in notes)]).values()]
    assert [round(offer.minimum_kg) for offer in found] == [4536, 4536, 13608]
    assert [offer.valid_until.isoformat() for offer in found] == ["2026-07-10", "2026-09-30", "2026-09-30"]


def test_lines_without_numbers_are_not_known_to_be_the_others():
    rows = [row[1:] for row in MIXED]
    found = lines([*rows, [], ["Lead time 3 weeks except item 2: 6 weeks"]])
    assert {line.offer.lead_days for line in found.values()} == {None}


def test_a_time_behind_a_sign_is_the_lead_time_of_the_rows_that_carry_it():
    rows = [row.copy() for row in MIXED]
    rows[-2][1] += " (1)"
    found = [line.offer.lead_days for line in lines([*rows, [], ["Lead time 3 weeks"], ["(1) six weeks"]]).values()]
    assert found == [(21, 21), (42, 42), (21, 21)]

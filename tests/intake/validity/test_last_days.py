"""Last days: of all boards or some, counted from the list's day, and days that end nothing."""

from datetime import date, datetime

import pytest

from tests.intake.readings import by_cell, note_codes, read_rows
from tests.intake.sheets import codes, lines
from tracker.intake.values.times.validity import validity
from tracker.trade.offer import NoteCode

HEAD = ["Grade", "pt", "lb/MSF"]
BOARD = ["SBS C1S", 18, 75]


def test_days_without_a_date_of_the_list_end_on_no_known_day():
    reading = read_rows([["Prices firm for 30 days"], [], [*HEAD, "USD/ST"], [*BOARD, 1165]])
    line = by_cell(reading)["D4"]
    assert line.offer.valid_until is None
    assert NoteCode.VALIDITY_UNREAD in note_codes(line)


def test_days_count_from_a_date_that_stands_by_itself_in_the_letterhead():
    letter = [["Tamsin Creek Paperboard"], [datetime(2026, 9, 14)], ["Firm for 30 days from the date above."], []]
    reading = read_rows([*letter, [*HEAD, "USD/ST"], [*BOARD, 1165]])
    assert by_cell(reading)["D6"].offer.valid_until == date(2026, 10, 14)


def test_a_date_of_effect_and_a_lead_time_beside_it_are_no_validity():
    reading = read_rows([["Effective 02/23/2026", "Delivery 3 wks. ARO"], [], [*HEAD, "USD/ST"], [*BOARD, 1405]])
    line = by_cell(reading)["D4"]
    assert (line.offer.valid_until, line.offer.lead_days) == (None, (21, 21))


def test_the_day_a_french_list_begins_is_not_its_last():
    rows = [
        ["Tarif applicable au 1er octobre 2026, EUR/t"],
        ["Sorte", "g/m²", "µm", "EUR/t"],
        ["GC1", 240, 405, 1320],
    ]
    assert lines(rows)["D3"].offer.valid_until is None


@pytest.mark.parametrize(
    ("said", "last"),
    [
        ("Preise gültig vom 01.01. bis 31.03.2027", "2027-03-31"),
        ("Preise gültig bis Ende 2026", "2026-12-31"),
        ("prix valables jusqu'à fin 2026", "2026-12-31"),
        ("Offert t.o.m. 2027-01-31, fritt kund", "2027-01-31"),
        ("Prislista 2027:1, gäller 2027-01-01 – 2027-03-31", "2027-03-31"),
    ],
)
def test_last_days_of_validity(said, last):
    rows = [["€/t"], [said], ["Sorte", "g/m²", "µm", "€/t"], ["GC1", 240, 405, 1240]]
    assert str(lines(rows)["D4"].offer.valid_until) == last


EXPORT_HEAD = ["Board", "pt", "lb/MSF"]


def test_a_day_may_be_written_without_hyphens():
    rows = [[*EXPORT_HEAD, "USD/ST", "Valid to"], [*BOARD, 1190, "20270331"]]
    assert str(lines(rows)["D2"].offer.valid_until) == "2027-03-31"
    assert lines([rows[0], [*BOARD, 1190, "20271331"]])["D2"].offer.valid_until is None


TONNE_HEAD = ["Grade", "g/m²", "µm", "EUR/tonne"]
OLD = [["GD2", 300, 390, 803], ["GC2", 270, 435, 1104]]


@pytest.mark.parametrize(
    ("title", "until"),
    [
        ("Offer to 18 October 2026, delivered free", date(2026, 10, 18)),
        ("Prices to 30 September 2026 in EUR", date(2026, 9, 30)),
        ("Preise laufen bis 30.9.2026", date(2026, 9, 30)),
        ("Le tarif court jusqu'au 30 septembre 2026", date(2026, 9, 30)),
        ("Offer to Pellow Cartons, 12 September 2026", None),
    ],
)
def test_a_day_that_an_offer_runs_to(title, until):
    assert {line.offer.valid_until for line in lines([[title], TONNE_HEAD, *OLD]).values()} == {until}


METRIC = ["Grade", "µm", "g/m²", "EUR/tonne"]
CODES = [["GC1", 450, 300, 1100], ["GT2", 420, 350, 860], ["GD2", 400, 300, 790]]


def below(note):
    return [line.offer for line in lines([METRIC, *CODES, [], [note]]).values()]


@pytest.mark.parametrize(
    "note",
    [
        "Priset på GD2 gäller t.o.m. 2026-09-15, övriga tills vidare.",
        "Prices of GD2 valid until 15 September 2026, all others until further notice.",
    ],
)
def test_a_last_day_of_one_board_is_not_that_of_the_others(note):
    assert [offer.valid_until for offer in below(note)] == [None, None, date(2026, 9, 15)]


def test_a_last_day_of_all_is_that_of_each():
    assert {offer.valid_until for offer in below("Prices valid until 15 September 2026.")} == {date(2026, 9, 15)}


def offer(rows, cell):
    """The one offer of a price cell, which must be accepted."""
    line = lines(rows)[cell]
    assert str(line.state) == "accepted", [note.text for note in line.notes]
    return line.offer


@pytest.mark.parametrize(
    ("title", "until"),
    [("Validez de la oferta: 30 días", "2026-06-11"), ("Validité de l'offre : 2 semaines", "2026-05-26")],
)
def test_days_that_an_offer_is_valid_count_from_its_date(title, until):
    rows = [["Fecha: 12 de mayo de 2026"], [title], [], ["Calidad", "g/m²", "µm", "EUR/t"], ["GC1", 250, 400, 1230]]
    assert offer(rows, "D5").valid_until.isoformat() == until


@pytest.mark.parametrize(
    "text",
    [
        "We have reduced our prices to 1 October 2025 levels.", "Price to 1 March 2026 list: +3 %",
        "Compared with our list to 1 October 2025", "No change of prices to 31 December 2026",
    ],
)  # fmt: skip
def test_prices_of_another_day_end_on_none(text):
    said = validity(text)
    assert said is None or said.last_day() is None
    assert validity("Prices to 30 September 2026 in EUR").last_day() is not None


SBS, CRB = ["SBS C1S", 18, 75], ["CRB C1S", 18, 70]


def test_two_last_days_of_two_boards_are_not_one():
    said = "Prices for SBS valid until December 31, 2026, CRB until January 31, 2027"
    for line in lines([[*EXPORT_HEAD, "USD/ST"], [*SBS, 1178], [*CRB, 884], [], [said]]).values():
        assert (line.offer.valid_until, codes(line)) == (None, {"validity-unread"})


@pytest.mark.parametrize(
    "said",
    [
        'The prices in the column "Former price" cease to be in force on October 4, 2026.',
        "The former prices remain valid until October 4, 2026.",
        "Les anciens prix restent valables jusqu'au 4 octobre 2026.",
        "De tidigare priserna gäller till och med 4 oktober 2026.",
    ],
)
def test_until_when_former_prices_hold_is_not_said_of_the_new(said):
    rows = [["US dollars per short ton", said], [*EXPORT_HEAD, "Former price", "New price"], [*BOARD, 1150, 1190]]
    assert lines(rows)["E3"].offer.valid_until is None


TONNES = ["Grade", "µm", "g/m²", "EUR/tonne"]
GC1 = ["GC1", 450, 300, 1100]


def test_days_count_from_the_day_prices_were_quoted():
    (line,) = lines([["Quoted March 2, 2026; prices hold 45 days."], TONNES, GC1]).values()
    assert line.offer.valid_until == date(2026, 4, 16)


def test_what_names_no_end_is_no_other_last_day():
    rows = [
        ["Effective with shipments on and after January 4, 2027 the prices below apply"],
        ["Prices hold through March 31, 2027"], [], ["Board", "Caliper (in.)", "lb per MSF", "USD/ST"],
        ["SBS", 0.018, 74, 1140],
    ]  # fmt: skip
    (line,) = lines(rows).values()
    assert str(line.offer.valid_until) == "2027-03-31"

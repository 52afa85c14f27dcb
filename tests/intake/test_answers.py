"""An answer touches the lines and words it was asked about, and never what was understood already."""

import contextlib
import dataclasses
from itertools import islice

import pytest

from tests.corpus.registry import corpus
from tests.intake.sheets import book, codes, grid, lines, read
from tracker.intake.files import open_workbook
from tracker.intake.grid import Unreadable
from tracker.intake.read import read_workbook
from tracker.trade.offer import Answers, State

UNITS = [
    ["Offer valid until 03/04/2026"],
    [],
    ["Board", "Caliper (pt)", "Weight", "Price", "Unit"],
    ["SBS C1S", 18, "75 lb/MSF", 1090, "USD/ton"],
    ["SBS C1S", 18, "75 lb/MSF", 1230.5, "USD/MT"],
    ["CUK", 18, "350 g/m²", 985, "USD/T"],
    ["Fenlight White", 18, "75 lb/MSF", 1085, "USD/ST"],
    ["CRB C1S", 18, "71 lb", 905, "USD/ST"],
    ["CRB C1S", 20, "236 lb", 900, "USD/ST"],
    ["URB", None, "130 lb", 34.2, "USD/MSF"],
    ["CRB C1S", 18, "71 lb/MSF", "9,234", "kr/MT"],
    ["CRB C1S", 16, "63 lb/MSF", 46.1, None],
]
BRACKETS = [
    ["Prices in $ per ream, Hamilton, Ontario"],
    ["Board", "pt", "lb", "1 truckload", "2 truckloads"],
    ["SBS", 18, 75, 1100, 1050],
    ["Unbleached kraft board", 18, 75, "1,100 USD/lb", 990],
]
TERMS = [
    ["All prices in SEK per tonne"],
    ["Board", "µm", "g/m²", "Price EUR/t"],
    ["FBB GC2", 400, 250, 1100],
    ["FBB GC1", 400, 270, 1190],
]


def understood(reading):
    return {
        (line.offer.source.sheet, line.offer.source.cell): line.offer
        for line in reading.lines
        if line.state is State.ACCEPTED
    }


def each_answer(workbook, given):
    """Every question's every answer, alone, with the reading that it leads to."""
    before = read_workbook(workbook, Answers(given))
    typed = {"currency": ("SEK", "USD"), "bracket": ("18000:", "1:2"), "vendor": ("Tolmere Board",)}
    for question in before.questions:
        offered = [choice.value for choice in question.choices] or typed.get(question.key.partition(":")[0], ())
        for value in offered:
            yield question, value, before, read_workbook(workbook, Answers({**given, question.key: value}))


def overruled(before, after):
    """What an answer changed of offers that were accepted before, but for fields that were open."""
    kept = understood(after)
    for place, offer in understood(before).items():
        if place not in kept:
            yield place, "no longer accepted"
            continue
        for field in dataclasses.fields(offer):
            was, now = getattr(offer, field.name), getattr(kept[place], field.name)
            if was != now and was not in (None, ()):
                yield place, field.name, was, now


def check(workbook, given=None):
    asked = 0
    for question, value, before, after in each_answer(workbook, given or {}):
        asked += 1
        assert list(overruled(before, after)) == [], (question.key, value)
        assert len(understood(after)) >= len(understood(before)), (question.key, value)
        about = set(question.cells)
        fresh = set(understood(after)) - set(understood(before))
        assert fresh <= about, (question.key, value)
    return asked


@pytest.mark.parametrize("rows", [UNITS, BRACKETS, TERMS], ids=["units", "brackets", "terms"])
@pytest.mark.parametrize("given", [{}, {"decimal": "."}, {"ton": "metric", "currency:kr/mt": "SEK"}], ids=str)
def test_no_answer_overrules_a_line_that_was_understood(rows, given):
    assert check(book(grid(rows)), given) >= 2


@pytest.fixture(scope="module")
def sheets_that_ask(tmp_path_factory):
    """Some of the generated vendors' sheets that leave something open: those of every other family."""
    folder = tmp_path_factory.mktemp("asking")
    asking = []
    for made in islice(corpus(11, count=1, heavy=False), 0, None, 2):
        path = folder / made.name
        path.write_bytes(made.data)
        with contextlib.suppress(Unreadable):
            workbook = open_workbook(path)
            if read_workbook(workbook, Answers()).questions:
                asking.append(workbook)
    return asking


def test_nor_in_sheets_of_many_vendors(sheets_that_ask):
    assert sum(check(workbook) for workbook in sheets_that_ask) > 50


def test_an_answer_is_given_to_the_words_it_was_asked_about_and_no_others():
    answered = lines(UNITS, {"currency:kr/mt": "SEK", "decimal": "."})
    assert (answered["D11"].offer.currency, answered["D11"].state) == ("SEK", State.ACCEPTED)
    assert answered["D12"].offer.currency is None
    assert "currency-unknown" in codes(answered["D12"])


def test_an_answer_for_the_whole_file_goes_where_the_sheet_leaves_it_open():
    whole = lines(UNITS, {"currency": "SEK", "decimal": "."})
    assert [whole[cell].offer.currency for cell in ("D5", "D11", "D12")] == ["USD", "SEK", "SEK"]
    assert lines(UNITS, {"currency": "EUR", "decimal": "."})["D11"].offer.currency is None


def test_a_question_offers_what_the_words_leave_open():
    offered = {question.key: [choice.value for choice in question.choices] for question in read(UNITS).questions}
    assert offered["currency:kr/mt"] == ["DKK", "ISK", "NOK", "SEK"]
    assert offered["weight-basis"] == ["msf", "3000ft2"]
    assert offered["currency:"] == []
    abroad = [["Hamilton, Ontario"], ["Board", "pt", "lb/MSF", "$/ST"], ["SBS", 18, 75, 1100]]
    (question,) = read(abroad).questions
    assert {"USD", "CAD", "AUD"} < {choice.value for choice in question.choices}
    assert lines(abroad, {question.key: "CAD"})["D3"].offer.currency == "CAD"


def test_pounds_that_physics_settles_stay_whatever_is_answered_of_others():
    for answer in ("msf", "3000ft2"):
        answered = lines(UNITS, {"weight-basis": answer})
        assert {answered[cell].state for cell in ("D8", "D9", "D10")} == {State.ACCEPTED}
    assert lines(UNITS)["D10"].state is State.QUESTION


def test_a_bare_weight_that_may_be_grams_is_asked_with_just_its_possible_units():
    rows = [["Board", "Basis weight", "USD/ST"], ["SBS", 250, 1100]]
    (question,) = read(rows).questions
    assert [choice.value for choice in question.choices] == ["msf", "3000ft2", "gsm"]
    assert lines(rows, {question.key: "gsm"})["C2"].offer.grammage_gsm == 250


def test_two_currencies_that_contradict_are_one_question_for_all_their_lines():
    (question,) = read(TERMS).questions
    assert [choice.value for choice in question.choices] == ["EUR", "SEK"]
    assert len(question.cells) == 2
    answered = lines(TERMS, {question.key: "EUR"})
    assert {(line.offer.currency, line.state) for line in answered.values()} == {("EUR", State.ACCEPTED)}


@pytest.mark.parametrize(
    ("key", "value"),
    [("currency:kr/mt", "CROWNS"), ("currency", "ZZZ"), ("ton", "long"), ("grade:fenlight white", "BAR"),
     ("basis:", "ream"), ("decimal", "'"), ("weight-basis", "acre"), ("bracket:1 truckload", "a truck"),
     ("bracket:1 truckload", "5:1"), ("bracket:1 truckload", ":")],
)  # fmt: skip
def test_a_remembered_answer_that_is_none_of_its_kind_leaves_the_question_open(key, value):
    for rows in (UNITS, BRACKETS):
        assert read(rows, {key: value}) == read(rows)

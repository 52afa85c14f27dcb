"""What the reader makes of the demo's sheets: every price where the invented market has it, and every planted fault."""

import tomllib
from collections import Counter
from datetime import date

import pytest

from tests.demo_sheets.market import CHEAPER_WHEN_THICKER, LEVEL_USD_PER_TONNE, PER_DOLLAR, RATIO
from tests.reading_here import reading_in_this_process
from tracker.intake.read import read_sheet
from tracker.trade.footing import footing
from tracker.trade.offer import Answers, GrammageFrom, NoteCode, State
from tracker.trade.resources import resource, sample_quotes

PLANTED = tomllib.loads(resource("demo", "scenario.toml").read_text(encoding="utf-8"))["planted"]
PRICED_WRONG = {(each["file"], each["cell"]) for each in PLANTED if each["finds"] in ("slip", "out of line")}
BRACKETS_VENDORS_AND_NOISE = 0.14


@pytest.fixture(scope="module")
def readings():
    with reading_in_this_process():
        return {path.name: read_sheet(path, Answers()) for path in sorted(sample_quotes().iterdir())}


@pytest.fixture(scope="module")
def lines(readings):
    return [(name, line) for name, reading in readings.items() for line in reading.lines]


def held(lines):
    return {(name, line.offer.source.cell) for name, line in lines if line.state is not State.ACCEPTED}


def codes(lines, file, cell):
    found = [line for name, line in lines if (name, line.offer.source.cell) == (file, cell)]
    return {note.code for line in found for note in line.notes}


def test_every_file_can_be_read_and_names_its_vendor(readings):
    scenario = tomllib.loads(resource("demo", "scenario.toml").read_text(encoding="utf-8"))
    vendors = {entry["file"]: vendor["name"] for vendor in scenario["vendors"] for entry in vendor["files"]}
    said = {
        name: {(line.offer.vendor or reading.vendor or "").casefold() for line in reading.lines}
        for name, reading in readings.items()
    }
    assert said == {name: {vendor.casefold()} for name, vendor in vendors.items()}


def test_there_are_300_offers_over_six_grades_and_10_to_30_points_in_four_currencies(lines):
    offers = [line.offer for _, line in lines if line.state is State.ACCEPTED]
    assert len(offers) >= 300
    assert {offer.grade for offer in offers} == set(RATIO)
    assert {offer.currency for offer in offers} == set(PER_DOLLAR)
    points = [float(offer.caliper_um) / 25.4 for offer in offers]
    assert min(points) == 10
    assert max(points) == 30


def test_nothing_is_held_back_but_what_is_planted(lines):
    planted = {
        (each["file"], each["cell"])
        for each in PLANTED
        if each["finds"] in (NoteCode.FORMULA_WITHOUT_VALUE, NoteCode.WEIGHT_IMPLAUSIBLE)
    }
    per_ton = {("Halvern FBB offer.xlsx", f"D{row}") for row in range(5, 13)}
    assert held(lines) == planted | per_ton


@pytest.mark.parametrize("code", [NoteCode.FORMULA_WITHOUT_VALUE, NoteCode.WEIGHT_IMPLAUSIBLE, NoteCode.HIDDEN])
def test_a_planted_fault_of_the_sheet_is_noted_at_its_cell(lines, code):
    (planted,) = [each for each in PLANTED if each["finds"] == code]
    assert code in codes(lines, planted["file"], planted["cell"])


def test_one_question_asks_which_ton(readings):
    questions = Counter(question.key for reading in readings.values() for question in reading.questions)
    assert questions["ton"] == 1
    assert [question.key for question in readings["Halvern FBB offer.xlsx"].questions] == ["ton"]


def test_an_answer_about_the_ton_lets_the_list_in():
    reading = read_sheet(sample_quotes() / "Halvern FBB offer.xlsx", Answers({"ton": "metric"}))
    assert {line.state for line in reading.lines} == {State.ACCEPTED}
    assert {line.offer.basis.value for line in reading.lines} == {"tonne"}


def test_every_price_is_where_the_market_has_it(lines):
    for name, line in lines:
        offer = line.offer
        if line.state is not State.ACCEPTED or (name, offer.source.cell) in PRICED_WRONG:
            continue
        dollars = float(footing_per_tonne(offer)) / PER_DOLLAR[offer.currency]
        points = float(offer.caliper_um) / 25.4
        usual = LEVEL_USD_PER_TONNE * RATIO[offer.grade] * (points / 18) ** CHEAPER_WHEN_THICKER
        assert dollars == pytest.approx(usual, rel=BRACKETS_VENDORS_AND_NOISE), f"{name} {offer.source.cell}"


def footing_per_tonne(offer):
    """Where no weight is quoted, the estimate must have been made."""
    assert offer.grammage_from is (GrammageFrom.ESTIMATED if offer.basis.value == "msf" else GrammageFrom.QUOTED)
    return footing(offer).per_tonne


def test_only_the_summer_list_has_lapsed(lines):
    lapsed = {name for name, line in lines if line.offer.valid_until and line.offer.valid_until < date(2026, 11, 25)}
    assert lapsed == {"drummelow_summer.csv"}
    assert all(line.offer.valid_until for _, line in lines)

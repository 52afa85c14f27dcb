"""The demo: every planted fault is found, by whatever the scenario says finds it, and nothing else cries wolf."""

import tomllib
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from tests.reading_here import reading_in_this_process
from tracker.desk import files, keeping, questions, samples
from tracker.desk.comparison import ChosenFooting, Comparison
from tracker.desk.demo import fresh_demo
from tracker.desk.opening import Desk, open_desk
from tracker.desk.quotes import compare, load_snapshot
from tracker.desk.today import Today, today
from tracker.store.held import lines as held_lines
from tracker.trade.offer import NoteCode
from tracker.trade.resources import resource

SCENARIO = tomllib.loads(resource("demo", "scenario.toml").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Desk]:
    with reading_in_this_process():
        desk = open_desk(fresh_demo(tmp_path_factory.mktemp("demo")))
    yield desk
    desk.close()


@pytest.fixture(scope="module")
def all_offers(demo: Desk) -> Comparison:
    return compare(demo, load_snapshot(demo), ChosenFooting(demo.today, current_only=False))


@pytest.fixture(scope="module")
def waiting(demo: Desk, all_offers: Comparison) -> Today:
    return today(demo, all_offers)


def place_of(comparison: Comparison, planted: dict[str, Any]) -> int | None:
    """The index of the offer whose price stands in the planted cell."""
    snapshot = comparison.snapshot
    for index in range(len(snapshot)):
        where = (snapshot.files[snapshot.file[index]], snapshot.sheet[index], snapshot.cell[index])
        if where == (planted["file"], planted["sheet"], planted["cell"]):
            return index
    return None


def notes_at(demo: Desk, comparison: Comparison, planted: dict[str, Any]) -> set[NoteCode]:
    from tracker.desk.explanation import explain

    index = place_of(comparison, planted)
    if index is not None:
        return {note.code for note in explain(demo, comparison, index).notes}
    kept = next(file for file in files.files(demo) if file.name == planted["file"])
    with demo.store.reading() as connection:
        held = held_lines(connection, kept.id)
    return {
        note.code
        for each in held
        if (each.sheet, each.cell) == (planted["sheet"], planted["cell"])
        for note in each.notes
    }


@pytest.mark.parametrize("planted", SCENARIO["planted"], ids=lambda planted: planted["finds"])
def test_what_is_planted_is_found(demo: Desk, all_offers: Comparison, planted: dict[str, Any]) -> None:
    index, finds = place_of(all_offers, planted), planted["finds"]
    if finds in ("slip", "out of line"):
        assert index is not None
        assert all_offers.out_of_line[index]
        assert all_offers.slip[index] == (finds == "slip")
    elif finds == "lapsed":
        assert index is not None
        assert not all_offers.current[index]
    else:
        assert NoteCode(finds) in notes_at(demo, all_offers, planted)


def test_nothing_else_is_out_of_line(all_offers: Comparison) -> None:
    planted = {place_of(all_offers, each) for each in SCENARIO["planted"] if each["finds"] in ("slip", "out of line")}
    assert set(np.flatnonzero(all_offers.out_of_line).tolist()) == planted


def test_it_has_what_a_demo_needs(all_offers: Comparison) -> None:
    snapshot = all_offers.snapshot
    assert len(snapshot) >= 300
    assert sorted(snapshot.grades) == ["CRB", "CUK", "FBB", "SBS", "URB", "UUK"]
    assert len(snapshot.vendors) >= 8
    assert len(snapshot.currencies) >= 3
    assert np.nanmin(snapshot.caliper_um) <= 10.5 * 25.4
    assert np.nanmax(snapshot.caliper_um) >= 29.5 * 25.4


def test_every_sample_is_in_the_state_the_scenario_says(demo: Desk) -> None:
    states = {sample.number: sample.state.value for sample in samples.samples(demo)}
    wanted = {number: each["state"] for number, each in enumerate(SCENARIO["samples"], start=1)}
    assert states == wanted
    assert len(Counter(wanted.values())) == 7


def test_today_has_something_of_each_kind(waiting: Today) -> None:
    assert waiting.overdue
    assert waiting.questions
    assert len(waiting.out_of_line) == 2
    assert waiting.lapsing


def test_the_demo_stands_on_its_own_day_whenever_it_is_opened(demo: Desk) -> None:
    assert demo.today == SCENARIO["today"]


def test_the_ambiguous_ton_answered_adds_its_vendor_s_offers(demo: Desk, tmp_path: Path) -> None:
    keeping.backup(demo, tmp_path / "copy.sqlite")
    desk = open_desk(str(tmp_path / "copy.sqlite"))
    before = len(load_snapshot(desk))
    (asked,) = [each for each in questions.open_questions(desk) if each.question.key.startswith("ton")]
    stored = questions.answer(desk, asked.id, "short")
    assert stored.offers == asked.lines
    assert len(load_snapshot(desk)) == before + stored.offers
    assert asked.id not in [each.id for each in questions.open_questions(desk)]
    desk.close()

"""A team's server and a file on one's own disk give the same answers to the same work."""

import json
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from decimal import Decimal
from typing import Any

import pytest

from tests.desk.filing import file
from tests.store.making import TON, VENDOR, held, line
from tracker.desk import files, levels, questions, rates, samples, verdicts
from tracker.desk.comparison import ChosenFooting
from tracker.desk.edits import Edit, history, undo
from tracker.desk.explanation import explain
from tracker.desk.keeping import backup, check, restore
from tracker.desk.offers_json import offer_objects
from tracker.desk.opening import Desk, desk_if_there, open_desk
from tracker.desk.quotes import compare, load_snapshot
from tracker.desk.sample_life import EventKind
from tracker.desk.today import today
from tracker.desk.trouble import Trouble
from tracker.desk.vendors import vendors
from tracker.trade.basis import Basis
from tracker.trade.level import LevelFigure

TODAY = date(2026, 11, 25)


@contextmanager
def desk_on(where: str) -> Iterator[Desk]:
    desk = open_desk(where, TODAY, "Ada")
    try:
        yield desk
    finally:
        desk.close()


def a_week_s_work(desk: Desk) -> dict[str, Any]:
    """Everything a buyer does, and what is seen at the end of it."""
    levels.set_level(
        desk, "SBS", LevelFigure(Decimal("1300.50"), "USD"), date(2026, 10, 1), "our estimate", Decimal("12.5")
    )
    rates.set_rate(desk, "USD", Decimal("0.9"), date(2026, 11, 20))
    for number, price in enumerate(("1190", "1240.50", "1260", "1275.25", "1300", "59.2")):
        offer = line(vendor=f"Vendor {number}", price=Decimal(price), product=f"Ärlund {number}")
        file(desk, offer, content=price.encode(), vendor=f"Vendor {number}")
    withdrawn = file(desk, line("F7", basis=Basis.MSF), held("D9"), content=b"last", questions=[TON])
    number = samples.log(desk, VENDOR, "SBS", Decimal("457.2"), "20 sheets", on=date(2026, 11, 2)).number
    promise = samples.record(desk, number, EventKind.PROMISED, date(2026, 11, 3), date(2026, 11, 10))
    verdicts.approve(desk, VENDOR, "Ärlund 1", "tea cartons")
    gone: Edit = files.withdraw(desk, withdrawn)
    undo(desk, gone)
    undo(desk, undo(desk, promise))
    comparison = compare(desk, load_snapshot(desk), ChosenFooting(TODAY, "EUR"))
    waiting = today(desk, comparison)
    told = explain(desk, comparison, 1)
    return {
        "offers": offer_objects(comparison, range(len(comparison.price))),
        "samples": [repr(sample) for sample in samples.samples(desk)],
        "levels": [levels.level_object(level) for level in levels.levels(desk)],
        "vendors": vendors(desk),
        "today": (len(waiting.overdue), len(waiting.questions), waiting.out_of_line, waiting.lapsing),
        "questions": [asked.question.key for asked in questions.open_questions(desk)],
        "ladder": [step.text for step in told.steps],
        "log": [(change.who, change.text, change.table) for change in history(desk)],
        "faults": check(desk),
    }


def test_the_same_work_gives_the_same_answers(where: str, tmp_path_factory: pytest.TempPathFactory) -> None:
    with desk_on(where) as desk, desk_on(str(tmp_path_factory.mktemp("own") / "own.sqlite")) as own:
        seen, wanted = a_week_s_work(desk), a_week_s_work(own)
    assert json.dumps(seen, sort_keys=True) == json.dumps(wanted, sort_keys=True)
    assert len(seen["offers"]) == 7
    assert seen["faults"] == ()
    # A price per hundredweight as per short ton, and one per short ton as per 1,000 ft²: the latter is further off.
    assert seen["today"][2] == (6, 5)


def test_a_server_counts_as_there_and_is_backed_up_by_its_own_means(server: str, tmp_path_factory: Any) -> None:
    found = desk_if_there(server)
    assert found is not None
    found.close()
    desk = Desk(server, "Ada")
    copy = tmp_path_factory.mktemp("copy") / "copy.sqlite"
    with pytest.raises(Trouble, match="restored by its own means"):
        restore(server, copy)
    with pytest.raises(Trouble, match="backed up by its own means"):
        backup(desk, copy)
    desk.close()

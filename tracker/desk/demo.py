"""The demo: a fresh database from the invented vendors' files and the scenario beside them."""

from __future__ import annotations

import tomllib
from datetime import date
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Any

from tracker.desk import contacts, levels, readings, samples, take_in, verdicts
from tracker.desk.edits import writing
from tracker.desk.opening import Desk, desk_on
from tracker.desk.sample_life import EventKind
from tracker.desk.trouble import Trouble
from tracker.trade.exact import as_decimal
from tracker.trade.level import LevelFigure
from tracker.trade.offer import Answers
from tracker.trade.quantities import CaliperUnit, micrometres
from tracker.trade.resources import resource, sample_quotes

DATABASE_NAME = "demo.sqlite"
_WHO = "demo"


def fresh_demo(folder: Path) -> str:
    """Makes the demo's database anew in a folder and gives its path. Trouble if the folder can't be written to."""
    path = folder / DATABASE_NAME
    try:
        folder.mkdir(parents=True, exist_ok=True)
        for ending in ("", "-wal", "-shm"):
            path.with_name(path.name + ending).unlink(missing_ok=True)
    except OSError as problem:
        raise Trouble(
            f"{path} can't be made anew ({problem.strerror}): close it, or name another --folder."
        ) from problem
    scenario = _scenario()
    desk = desk_on(str(path), scenario["today"], _WHO)
    try:
        _stand_still(desk)
        _take_in_files(desk, scenario)
        for level in scenario["levels"]:
            _set_level(desk, level)
        for vendor in scenario["vendors"]:
            if "contact" in vendor:
                contacts.set_contact(desk, vendor["name"], **vendor["contact"])
        for number, sample in enumerate(scenario["samples"], start=1):
            _ask_for(desk, sample, number)
    finally:
        desk.close()
    return str(path)


def default_folder() -> Path:
    """Where the demo goes when no folder is named: the user's data folder."""
    from platformdirs import user_data_path

    return user_data_path("paperboard-tracker", appauthor=False) / "demo"


def _scenario() -> dict[str, Any]:
    # Decimals, because a reading of 18.1 is to be kept as it is written.
    text = resource("demo", "scenario.toml").read_text(encoding="utf-8")
    return tomllib.loads(text, parse_float=Decimal)


def _stand_still(desk: Desk) -> None:
    """The demo's files lapse and its samples fall due by its own day, on whatever day it is opened."""
    from tracker.store import settings

    with writing(desk, "made the demo") as pen:
        settings.put(pen, settings.TODAY, desk.today.isoformat())


def _take_in_files(desk: Desk, scenario: dict[str, Any]) -> None:
    files = [(vendor["name"], file) for vendor in scenario["vendors"] for file in vendor["files"]]
    # In the order in which they came, so that the newer of two lists is the current one.
    for vendor, file in sorted(files, key=lambda each: each[1]["received"]):
        answers = Answers({"vendor": vendor, **scenario.get("answers", {})}, file["received"])
        taken = take_in.read(desk, sample_quotes() / file["file"], answers)
        take_in.store(desk, taken)


def _set_level(desk: Desk, level: dict[str, Any]) -> None:
    figure = LevelFigure(Decimal(level["per_tonne"]), level["currency"])
    levels.set_level(desk, level["grade"], figure, level["from"], level["source"])


def _ask_for(desk: Desk, sample: dict[str, Any], number: int) -> None:
    logged = samples.log(
        desk,
        sample["vendor"],
        sample["grade"],
        _caliper(sample.get("caliper_pt")),
        sample.get("quantity", ""),
        sample.get("needed"),
        sample["requested"],
        sample.get("for", ""),
    )
    assert logged.number == number  # a fresh database counts from 1
    for event in sample.get("events", ()):
        samples.record(desk, number, EventKind(event["kind"]), event["on"], event.get("until"), event.get("note", ""))
    arrived = next((event["on"] for event in sample.get("events", ()) if event["kind"] == "arrived"), None)
    for taken in sample.get("readings", ()):
        values = [str(value) for value in taken["values"]]
        day = _day(taken.get("on"), arrived)
        readings.add(desk, number, taken["property"], values, taken.get("unit", ""), day, taken.get("conditioned"))
    if "verdict" in sample:
        verdicts.decide(desk, number, **sample["verdict"])


def _day(said: date | None, arrived: date | None) -> date | None:
    return said or arrived


def _caliper(points: Decimal | int | None) -> Decimal | None:
    return None if points is None else as_decimal(micrometres(Fraction(points), CaliperUnit.POINT))

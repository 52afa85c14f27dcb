"""Labels and calendar files from the desk's own samples, read back by other programs."""

from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from icalendar import Calendar

from tracker.desk import samples
from tracker.desk.opening import Desk
from tracker.desk.sample_life import EventKind
from tracker.desk.sample_papers import label_sheets, write_calendar, write_labels
from tracker.desk.trouble import Trouble


def nov(day: int) -> date:
    return date(2026, 11, day)


@pytest.fixture
def asked(desk: Desk) -> Desk:
    for until in (30, 12, 20):
        number = samples.log(desk, "Quillmere, Board; Works", "SBS", Decimal("457.2"), on=nov(2)).number
        samples.record(desk, number, EventKind.PROMISED, nov(3), nov(until))
    samples.record(desk, 2, EventKind.ARRIVED, nov(9))
    samples.record(desk, 3, EventKind.LOST, nov(10))
    return desk


def todos(path: Path) -> dict[str, object]:
    return {str(todo["SUMMARY"]): todo for todo in Calendar.from_ical(path.read_bytes()).walk("VTODO")}


def test_each_state_has_its_to_do(asked: Desk, tmp_path: Path) -> None:
    assert write_calendar(asked, tmp_path / "owed.ics") == 3
    read = todos(tmp_path / "owed.ics")
    states = {summary[7:13]: (todo["STATUS"], len(todo.walk("VALARM"))) for summary, todo in read.items()}
    assert states == {"S-0001": ("NEEDS-ACTION", 1), "S-0002": ("COMPLETED", 0), "S-0003": ("CANCELLED", 0)}
    first = read["Sample S-0001 from Quillmere, Board; Works"]
    assert first["DUE"].dt == nov(30)


def test_exporting_again_updates_the_same_to_dos(asked: Desk, tmp_path: Path) -> None:
    write_calendar(asked, tmp_path / "one.ics")
    samples.record(asked, 1, EventKind.PROMISED, nov(20), date(2026, 12, 9))
    write_calendar(asked, tmp_path / "two.ics")
    one, two = (todos(tmp_path / name)["Sample S-0001 from Quillmere, Board; Works"] for name in ("one.ics", "two.ics"))
    assert one["UID"] == two["UID"]
    assert two["SEQUENCE"] > one["SEQUENCE"]
    assert two["DUE"].dt == date(2026, 12, 9)


def test_labels_in_every_size(asked: Desk, tmp_path: Path) -> None:
    for key in label_sheets():
        write_labels(asked, (1, 3), key, tmp_path / f"{key}.pdf")
        assert (tmp_path / f"{key}.pdf").read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize(
    ("numbers", "sheet", "words"),
    [((9,), "a4-21", "no sample 9"), ((1,), "a9", "no label size"), ((), "a4-21", "no label")],
)
def test_labels_that_can_not_be_printed_are_said(
    asked: Desk, tmp_path: Path, numbers: tuple[int, ...], sheet: str, words: str
) -> None:
    with pytest.raises(Trouble, match=words):
        write_labels(asked, numbers, sheet, tmp_path / "labels.pdf")
    assert not (tmp_path / "labels.pdf").exists()


def test_a_place_that_can_not_be_written_to_is_said(asked: Desk, tmp_path: Path) -> None:
    with pytest.raises(Trouble, match="can't be written"):
        write_labels(asked, (1,), "a4-21", tmp_path / "no" / "labels.pdf")
    with pytest.raises(Trouble, match="can't be written"):
        write_calendar(asked, tmp_path / "no" / "owed.ics")

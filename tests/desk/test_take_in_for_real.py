"""Taking in with the real reader: sheets shown beside what was understood, answered in place, stopped midway."""

import threading
from pathlib import Path

import pytest
from openpyxl import Workbook

from tracker.desk import take_in
from tracker.desk.opening import Desk, desk_on, is_there, load_store
from tracker.desk.take_in import Manner
from tracker.desk.trouble import Trouble
from tracker.trade.basis import Basis
from tracker.trade.offer import Answers, State


@pytest.fixture
def tons(tmp_path: Path) -> Path:
    """A vendor's list whose 'ton' may be either."""
    path = tmp_path / "tons.xlsx"
    book = Workbook()
    sheet = book.active
    sheet.append(["Ostrel Karton Ltd"])
    sheet.append([])
    sheet.append(["Board", "Grade", "Caliper (pt)", "Basis weight (g/m²)", "Price USD/ton"])
    for caliper, weight in ((16, 300), (18, 335), (20, 365)):
        sheet.append([f"Fenlight {caliper}", "SBS", caliper, weight, 1200 + caliper])
    book.save(path)
    return path


def test_the_sheet_is_there_to_be_shown(desk: Desk, tons: Path) -> None:
    taken = take_in.read(desk, tons, manner=Manner(show=True))
    assert taken.sheets is not None
    assert taken.sheets.grids[0].cells[(3, 4)].text == "1216"
    assert take_in.read(desk, tons).sheets is None
    assert take_in.workbook(taken.content, "tons.xlsx") == taken.sheets


def test_an_answer_in_place_settles_the_lines_as_reading_anew_does(desk: Desk, tons: Path) -> None:
    shown = take_in.read(desk, tons, manner=Manner(show=True))
    assert {line.state for line in shown.reading.lines} == {State.QUESTION}
    answers = Answers({"ton": "short"})
    in_place = take_in.read_again(desk, shown, answers)
    anew = take_in.read(desk, tons, answers)
    assert in_place.reading == anew.reading
    assert {line.offer.basis for line in in_place.reading.lines} == {Basis.SHORT_TON}
    assert in_place.sheets is shown.sheets


def test_a_reading_that_was_stopped_says_so(desk: Desk, tons: Path) -> None:
    stop = threading.Event()
    stop.set()
    with pytest.raises(Trouble, match=r"tons\.xlsx was stopped"):
        take_in.read(desk, tons, manner=Manner(cancelled=stop))


def test_a_workbook_that_can_not_be_shown_is_said() -> None:
    with pytest.raises(Trouble):
        take_in.workbook(b"PK\x03\x04 not really", "broken.xlsx")


def test_what_storing_takes_is_loaded_beside_the_reading_and_makes_no_database(tmp_path: Path) -> None:
    fresh = desk_on(str(tmp_path / "new.sqlite"))
    broken = tmp_path / "broken.xlsx"
    broken.write_bytes(b"PK\x03\x04 not really")
    taken = take_in.read(fresh, broken, manner=Manner(meanwhile=lambda: load_store(fresh)))
    assert taken.reading.unreadable
    assert not is_there(fresh)

"""The bar that shows how much of the files being taken in is read."""

from pathlib import Path

import pytest

from tests.reading_here import reading_in_this_process
from tests.window.fixtures.invented_door import invented_sheet
from tracker.desk.take_in import Manner, read
from tracker.trade.offer import Answers
from tracker.window.take_in.file_at_hand import FileAtHand
from tracker.window.take_in.reading_bar import ReadingBar


@pytest.fixture
def files() -> list[FileAtHand]:
    return [FileAtHand(Path("one.xlsx")), FileAtHand(Path("two.xlsx"))]


def test_it_moves_to_and_fro_until_something_is_known(qtbot, files: list[FileAtHand]) -> None:
    bar = ReadingBar(lambda: files)
    qtbot.addWidget(bar)
    bar.begin()
    assert (bar.minimum(), bar.maximum()) == (0, 0)
    files[0].hear(0.4)
    qtbot.waitUntil(lambda: bar.value() == 40, timeout=2000)
    assert bar.maximum() == 200


def test_what_is_read_counts_whole_and_the_last_takes_it_away(qtbot, files: list[FileAtHand]) -> None:
    bar = ReadingBar(lambda: files)
    qtbot.addWidget(bar)
    bar.begin()
    files[0].taken = invented_sheet.taken(Answers())
    files[1].hear(0.25)
    bar.look()
    assert (bar.value(), bar.isHidden()) == (125, False)
    files[1].taken = invented_sheet.taken(Answers())
    bar.look()
    assert bar.isHidden()


def test_a_long_list_tells_how_much_of_it_is_read(tmp_path: Path) -> None:
    path = tmp_path / "long.csv"
    rows = (f"SBS C1S,{18 + number % 7},{75 + number % 7},{1100 + number % 90}" for number in range(3000))
    path.write_text("Grade,Caliper (pt),Basis weight (lb/MSF),USD/short ton\n" + "\n".join(rows), encoding="utf-8")
    shares: list[float] = []
    with reading_in_this_process():
        read(None, path, manner=Manner(progress=shares.append))
    assert len(shares) > 10
    assert shares == sorted(shares)
    assert 0 < shares[0] < shares[-1] < 1

"""What goes over every line of a file runs on the desk's thread: of a long one the interface would wait for it."""

import threading
from pathlib import Path

import pytest

from tests.window.conftest import settle
from tests.window.fixtures.strange_sheet import VENDOR
from tracker.window.main_window import MainWindow
from tracker.window.take_in import cells, kept_sheet, marks_understood
from tracker.window.take_in.cells import Use

pytestmark = pytest.mark.gui
_PLAIN = (
    "Board,Grade,Caliper pt,Weight lb/MSF,Price USD/short ton\n"
    "Fen 16,SBS,16,66,1180\nFen 18,SBS,18,74,1170\nFen 20,SBS,20,82,1160\n"
)


@pytest.fixture
def on_interface(monkeypatch) -> dict[str, list[bool]]:
    """Which threads look up a cell's place, by who asks: True for the interface's own."""
    asked: dict[str, list[bool]] = {"marks": [], "kept": []}
    for who, module in (("marks", marks_understood), ("kept", kept_sheet)):

        def place_of(address: str, who: str = who) -> tuple[int, int] | None:
            asked[who].append(threading.current_thread() is threading.main_thread())
            return cells.place_of(address)

        monkeypatch.setattr(module, "place_of", place_of)
    return asked


def test_lines_are_gone_over_off_the_interface(real_window: MainWindow, qtbot, tmp_path: Path, on_interface) -> None:
    sheet = tmp_path / "fen.csv"
    sheet.write_text(_PLAIN, encoding="utf-8")
    real_window.take_in_files([sheet])
    settle(qtbot, real_window)
    take_in = real_window.take_in
    take_in.marking.begin()
    assert sorted(take_in.sheet.strip._marking.columns) == [0, 1, 2, 3, 4]
    take_in.marking.begin(wanted=False)
    take_in.understood.vendor.named.emit(VENDOR)
    settle(qtbot, real_window)
    take_in.agree.click()
    settle(qtbot, real_window)
    real_window._show_sheet_of(0)
    settle(qtbot, real_window)
    shown = real_window.sheet.sheet.view.model()
    assert [shown._uses.get((row, 4)) for row in range(5)] == [None, Use.PRICE, Use.PRICE, Use.PRICE, None]
    assert on_interface["marks"]
    assert on_interface["kept"]
    assert not any(on_interface["marks"] + on_interface["kept"])

"""How quick the window is: from dropping a sheet to seeing it, and how long the interface ever stands still.

    python tests/benchmarks/window_speed.py [--offers 100000]

Needs no display (draws offscreen). A heart beats every few milliseconds on the window's own thread; where it was late,
a watching thread has noted what the window's thread was doing. Figures are of the machine it runs on.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from pathlib import Path
from statistics import median

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from openpyxl import Workbook
from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication

from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.application import make_application
from tracker.window.door import Door
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.render import OpenWindow

BEAT_MS = 4
LATE_S = 0.050
BLOCKED_MS = 100


class Heart(QObject):
    """Beats on the thread it lives on; a watching thread notes where that thread stands when a beat is late."""

    def __init__(self) -> None:
        super().__init__()
        self._last = time.perf_counter()
        self._thread = threading.get_ident()
        self._worked = time.thread_time()
        self.longest = self.busiest = 0.0
        self.where = ""
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._beat)
        self._timer.start(BEAT_MS)
        self._over = threading.Event()
        threading.Thread(target=self._watch, daemon=True).start()

    def begin(self) -> None:
        """Starts counting anew."""
        self._last, self._worked = time.perf_counter(), time.thread_time()
        self.longest, self.busiest, self.where = 0.0, 0.0, ""

    def stop(self) -> None:
        self._over.set()
        self._timer.stop()

    def _beat(self) -> None:
        now, worked = time.perf_counter(), time.thread_time()
        self.longest = max(self.longest, now - self._last)
        self.busiest = max(self.busiest, worked - self._worked)
        self._last, self._worked = now, worked

    def _watch(self) -> None:
        while not self._over.wait(0.010):
            late = time.perf_counter() - self._last
            if late > max(LATE_S, self.longest):
                self.where = _where(self._thread)


def _where(thread: int) -> str:
    """What a thread is doing, innermost first. Its frames are let go of at once: one that is kept keeps a painter
    alive beyond its paint event, which Qt does not survive."""
    frame = sys._current_frames().get(thread)
    stack = []
    while frame is not None and len(stack) < 3:
        stack.append((frame.f_code.co_filename, frame.f_code.co_name, frame.f_lineno))
        frame = frame.f_back
    del frame
    return " < ".join(f"{Path(file).stem}.{name}:{line}" for file, name, line in stack)


def main() -> None:
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--offers", type=int, default=100_000)
    options.add_argument("--sheet-rows", type=int, default=20_000)
    asked = options.parse_args()
    theme = Theme(make_application(), "light")
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        measure_dropping(theme, work, asked.sheet_rows)
        measure_stopping(theme, work, asked.sheet_rows)
        measure_gaps("a long sheet", theme, Door(str(work / "long.sqlite")), _reading(_sheet(work, asked.sheet_rows)))
        measure_gaps("the demo", theme, Door(_demo(work)), _ACTIONS)
        measure_gaps(f"{asked.offers:,} offers", theme, InventedDoor(asked.offers), _ACTIONS)


def measure_dropping(theme: Theme, work: Path, long_rows: int) -> None:
    """A sheet of 60 rows, from being handed to the window to being painted."""
    sheet, long = _sheet(work, 60), _sheet(work, long_rows)
    opened = OpenWindow(Door(str(work / "drop.sqlite")), theme)
    before: dict[str, Callable[[], None]] = {
        "the reader being ready": lambda: _let_pass(2.0),
        "right after another": lambda: None,
        "right after a long one that was stopped": lambda: _stop_reading(opened, long),
    }
    for what, prepare in before.items():
        took = [_drop(opened, sheet, prepare) for _ in range(7)]
        print(
            f"60 rows dropped to shown, {what}: {median(took):.0f} ms, {min(took):.0f} to {max(took):.0f}", flush=True
        )
    opened.close()


def _stop_reading(opened: OpenWindow, sheet: Path) -> None:
    _let_pass(1.0)
    opened.window.take_in_files([sheet])
    _let_pass(0.3)
    opened.window.take_in.leave.click()
    opened.settle()


def _drop(opened: OpenWindow, sheet: Path, prepare: Callable[[], None]) -> float:
    window = opened.window
    prepare()
    began = time.perf_counter()
    window.take_in_files([sheet])
    while window.take_in.understood.model.rowCount() == 0:
        QApplication.processEvents()
        time.sleep(0.001)
    window.repaint()
    took = 1000 * (time.perf_counter() - began)
    opened.settle()
    window.take_in.leave.click()
    opened.settle()
    return took


def measure_stopping(theme: Theme, work: Path, rows: int) -> None:
    """How long leaving a long sheet, and closing the window over it, take while it is being read."""
    sheet = _sheet(work, rows)
    for what in ("leaving", "closing"):
        opened = OpenWindow(Door(str(work / f"{what}.sqlite")), theme)
        opened.window.take_in_files([sheet])
        _let_pass(0.8)
        assert opened.window.take_in.at_hand.taken is None, "the sheet was read before it could be stopped"
        began = time.perf_counter()
        opened.window.take_in.leave.click() if what == "leaving" else opened.window.close()
        said = time.perf_counter() - began
        while not opened.session.work.is_idle():
            QApplication.processEvents()
            time.sleep(0.001)
        ended = time.perf_counter() - began
        print(
            f"{what} while {rows:,} rows are read: {1000 * said:.0f} ms, the reading ended after {1000 * ended:.0f} ms"
        )
        opened.close()


def measure_gaps(name: str, theme: Theme, door: Door, actions: dict[str, Callable[[MainWindow], None]]) -> None:
    """The longest standstill of each action, opening the window first."""
    heart = Heart()
    print(f"\n{name}: longest standstill in ms, and the most work of the window's own thread between two beats")
    heart.begin()
    opened = OpenWindow(door, theme)
    _tell("open", heart)
    for title, act in actions.items():
        heart.begin()
        act(opened.window)
        _let_pass(0.05)
        opened.settle()
        _let_pass(0.10)
        _tell(title, heart)
    heart.stop()
    opened.close()
    # Else the widgets of this window would be dressed anew at the next one's change of theme.
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def _tell(title: str, heart: Heart) -> None:
    longest = 1000 * heart.longest
    mark = f"  BLOCKED in {heart.where}" if longest > BLOCKED_MS else ""
    print(f"  {title:<28}{longest:6.0f}{1000 * heart.busiest:8.0f}{mark}", flush=True)


def _let_pass(seconds: float) -> None:
    until = time.perf_counter() + seconds
    while time.perf_counter() < until:
        QApplication.processEvents()
        time.sleep(0.001)


def _reading(sheet: Path) -> dict[str, Callable[[MainWindow], None]]:
    return {
        "read": lambda window: window.take_in_files([sheet]),
        "look at a line": lambda window: window.take_in.understood.table.selectRow(7),
        "mark by hand": lambda window: window.take_in.sheet.mark_by_hand.click(),
        "take in": lambda window: window.take_in.agree.click(),
        "why an offer": lambda window: window.session.select_offer(5),
        "its sheet": lambda window: window.show_in_sheet(),
        "undo": lambda window: window.session.undo_stack.undo(),
        "redo": lambda window: window.session.undo_stack.redo(),
    }


def _saving(ending: str) -> Callable[[MainWindow], None]:
    """Saves the picture, as the window does, but asks nobody where."""

    def save(window: MainWindow) -> None:
        from tracker.window.quotes.save_picture import to_save

        folder = tempfile.TemporaryDirectory()
        write = to_save(window.quotes.picture, Path(folder.name) / f"prices.{ending}")
        window.session.work.ask(write, lambda _: folder.cleanup())

    return save


def _find(words: str) -> Callable[[MainWindow], None]:
    """Types words to find, and waits as long as the field does for the next letter."""

    def find(window: MainWindow) -> None:
        window.quotes.filters.field.setText(words)
        _let_pass(0.5)

    return find


_ACTIONS: dict[str, Callable[[MainWindow], None]] = {
    "quotes, all grades": lambda window: window.go_quotes(),
    "another picture": lambda window: window.quotes.picture.choose(1),
    "lead time": lambda window: window.quotes.picture.choose(2),
    "caliper again": lambda window: window.quotes.picture.choose(0),
    "one grade": lambda window: window.quotes.rail.choose("SBS"),
    "all grades": lambda window: window.quotes.rail.choose(""),
    "select an offer": lambda window: window.session.select_offer(5),
    "find a word": _find("tolmere"),
    "no word": _find(""),
    "save as PNG": _saving("png"),
    "save as SVG": _saving("svg"),
    "save its data": _saving("csv"),
    "sort": lambda window: window.quotes.table.sortByColumn(
        3, window.quotes.table.horizontalHeader().sortIndicatorOrder()
    ),
    "per tonne": lambda window: window.switches.switch_per(),
    "metric": lambda window: window.switches.switch_units(),
    "dark": lambda window: window.switches.switch_theme(),
    "today": lambda window: window.go_today(),
    "samples": lambda window: window.go_samples(),
    "reference": lambda window: window.go_reference(),
}


def _demo(work: Path) -> str:
    from tracker.desk.demo import fresh_demo

    return fresh_demo(work)


def _sheet(work: Path, rows: int) -> Path:
    path = work / f"sheet-{rows}.xlsx"
    if path.exists():
        return path
    book = Workbook(write_only=True)
    sheet = book.create_sheet("Prices")
    sheet.append(["Tolmere Board Ltd, price list of 2 November 2026, valid until 31 December 2026"])
    sheet.append([])
    sheet.append(
        ["Board", "Grade", "Caliper (pt)", "Basis weight (lb/MSF)", "Price USD/short ton", "Lead time (weeks)"]
    )
    for number in range(rows):
        points = 10 + number % 21
        sheet.append([f"Fenlight {number}", "SBS", points, round(points * 4.1, 1), 1100 + number % 300, 3 + number % 4])
    book.save(path)
    return path


if __name__ == "__main__":
    main()

"""The window on a real, empty database: a sheet taken in, judged, looked up; a sample asked for and taken back."""

import threading

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel

from tests.window.conftest import settle
from tracker.desk.opening import Desk
from tracker.window.door import Door
from tracker.window.main_window import QUOTES, SHEET, MainWindow

pytestmark = pytest.mark.gui
HEADER = "vendor,product,grade,coated_sides,caliper_pt,basis_weight_lb_msf,price,currency,basis,from_kg,below_kg,lead_days,valid_until,received"  # noqa: E501


@pytest.fixture
def window(open_window, database) -> MainWindow:
    return open_window(Door(database))


@pytest.fixture
def sheet(tmp_path):
    rows = [
        f"Tolmere Board,Bleached C1S,SBS,1,{points},{weight},{price},USD,short_ton,,,21,2099-12-31,2026-11-02"
        for points, weight, price in ((14, 58, 1310), (16, 65, 1295), (18, 72, 1280), (20, 79, 2400))
    ]
    path = tmp_path / "tolmere.csv"
    path.write_text("\n".join([HEADER, *rows]) + "\n", encoding="utf-8")
    return path


def test_a_sheet_from_dropping_it_to_its_cell(window: MainWindow, qtbot, sheet) -> None:
    assert window.today._stack.currentWidget() is window.today.welcome
    window.take_in_files([sheet])
    settle(qtbot, window)
    assert window.take_in.agree.text() == "Take in 4 offers"
    window.take_in.agree.click()
    settle(qtbot, window)
    assert window.stack.currentIndex() == QUOTES
    comparison = window.session.comparison
    assert len(comparison.snapshot) == 4
    assert window.quotes.model.rowCount() == 4

    window.quotes.table.setFocus()
    window.session.select_offer(3)
    settle(qtbot, window)
    steps = window.quotes.reasons._ladder._steps
    assert steps[0].cell
    assert steps[-1].last
    window.show_in_sheet()
    settle(qtbot, window)
    assert window.stack.currentIndex() == SHEET
    assert window.sheet.sheet.view.currentIndex().data() == "2400"

    window.steps.undo()
    settle(qtbot, window)
    assert len(window.session.comparison.snapshot) == 0
    window.steps.redo()
    settle(qtbot, window)
    assert window.session.comparison.shown.sum() == 4


def test_a_sample_is_asked_for_promised_and_taken_back(window: MainWindow, qtbot) -> None:
    control = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(window, Qt.Key.Key_N, control)
    for text, key in (("Tolmere", Qt.Key.Key_Tab), ("SBS", Qt.Key.Key_Tab), ("18", Qt.Key.Key_Return)):
        qtbot.keyClicks(QApplication.focusWidget(), text)
        qtbot.keyClick(QApplication.focusWidget(), key)
    settle(qtbot, window)
    assert [sample.vendor for sample in window.session.samples] == ["Tolmere"]
    window.samples.table.setFocus()
    qtbot.keyClick(window.samples.table, Qt.Key.Key_P)
    qtbot.keyClicks(window.samples.record.life.until, "2 weeks")
    qtbot.keyClick(window.samples.record.life.until, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert str(window.session.samples[0].state) == "promised"
    window.steps.undo()
    settle(qtbot, window)
    assert str(window.session.samples[0].state) == "requested"
    window.steps.undo()
    settle(qtbot, window)
    assert window.session.samples == ()
    assert window.message.text.startswith("Undone")


def test_what_cannot_be_is_said_in_a_sentence(window: MainWindow, qtbot) -> None:
    window.go_samples()
    form = window.samples.form
    form.vendor.setText("Tolmere")
    form.grade.setText("SBS")
    form.needed.setText("2020-01-01")
    form.log()
    settle(qtbot, window)
    assert window.session.samples == ()
    assert form._wrong.label.text().endswith(".")
    assert form.vendor.text() == "Tolmere"
    assert "Traceback" not in window.message.text
    assert form.vendor.text() == "Tolmere"


def test_a_level_moves_the_expected_prices(window: MainWindow, qtbot, sheet) -> None:
    window.take_in_files([sheet])
    settle(qtbot, window)
    window.take_in.agree.click()
    settle(qtbot, window)
    before = window.session.comparison.band_high.copy()
    window.go_reference()
    form = window.reference.level
    form.amount.setText("2600")
    form.source.setText("trade press")
    form.set_level()
    settle(qtbot, window)
    assert form._so_far.text().startswith("USD 2,600 per short ton")
    assert form._so_far.text().endswith("trade press")
    assert (window.session.comparison.band_high != before).all()


def test_the_window_never_asks_the_desk_on_its_own_thread(open_window, qtbot, tmp_path, sheet) -> None:
    seen = []

    class Watched(Door):
        @property
        def desk(self) -> Desk:
            seen.append(threading.get_ident())
            return super().desk

    window = open_window(Watched(str(tmp_path / "watched.sqlite")))
    window.take_in_files([sheet])
    settle(qtbot, window)
    window.take_in.agree.click()
    settle(qtbot, window)
    window.session.select_offer(1)
    for place in range(4):
        window.go(place)
    settle(qtbot, window)
    assert len(seen) > 10
    assert len(set(seen)) == 1
    assert seen[0] != threading.get_ident()


def test_an_answer_given_on_today_is_undone_and_done_again(window: MainWindow, qtbot, tmp_path) -> None:
    path = tmp_path / "ostrel.csv"
    path.write_text(
        "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,ton\nFenlight 18,SBS,18,335,1218,tonne\n",
        encoding="utf-8",
    )
    window.take_in_files([path])
    settle(qtbot, window)
    assert window.take_in.agree.text() == "Take in 1 offer"
    window.take_in.agree.click()
    settle(qtbot, window)
    window.go_today()
    (task,) = window.today.questions.list.tasks
    window.today._store_answer(task.target[0].id, "short")
    settle(qtbot, window)
    assert len(window.session.comparison.snapshot) == 2
    assert window.today.questions.list.tasks == ()
    window.steps.undo()
    settle(qtbot, window)
    assert len(window.session.comparison.snapshot) == 1
    assert len(window.today.questions.list.tasks) == 1
    window.steps.redo()
    settle(qtbot, window)
    assert len(window.session.comparison.snapshot) == 2


def test_the_panel_of_a_price_says_what_the_sheet_said(window: MainWindow, qtbot, sheet) -> None:
    window.take_in_files([sheet])
    settle(qtbot, window)
    window.take_in.agree.click()
    settle(qtbot, window)
    window.session.select_offer(1)
    settle(qtbot, window)
    told = [label.text() for label in window.quotes.reasons.findChildren(QLabel)]
    (said,) = [text for text in told if text.startswith("What the sheet says")]
    assert "\nGrade: C3 “SBS”" in said

"""Today: each thing one Enter from where it is settled; a first start that says what to do."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import InventedDoor
from tests.window.fixtures.invented_offers import comparison
from tests.window.fixtures.invented_sheet import TON
from tracker.desk.questions import open_questions  # noqa: F401  (the module must exist for the window)
from tracker.desk.standing import standings
from tracker.window.look.figures import Units
from tracker.window.main_window import QUOTES, SAMPLES, TAKE_IN, TODAY, MainWindow
from tracker.window.quotes.offer_columns import offers
from tracker.window.today import tasks_of
from tracker.window.today.answer_dialog import AnswerDialog

pytestmark = pytest.mark.gui


def test_the_window_opens_on_what_needs_the_user(window: MainWindow) -> None:
    assert window.stack.currentIndex() == TODAY
    today = window.today
    assert len(today.out_of_line.list.tasks) == len(window.session.todays.out_of_line)
    assert "things to settle" in today._told.text()


def test_enter_on_a_price_explains_it(window: MainWindow, qtbot) -> None:
    listing = window.today.out_of_line.list
    listing.setFocus()
    qtbot.keyClick(listing, Qt.Key.Key_Down)
    wanted = listing.tasks[1].target
    qtbot.keyClick(listing, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.stack.currentIndex() == QUOTES
    assert window.session.selected == wanted
    assert window.quotes.model.row_of(wanted) == window.quotes.table.currentIndex().row()


def test_a_click_on_an_overdue_sample_opens_it(window: MainWindow, qtbot) -> None:
    listing = window.today.overdue.list
    where = listing.visualRect(listing.model().index(2, 0)).center()
    qtbot.mouseClick(listing.viewport(), Qt.MouseButton.LeftButton, pos=where)
    settle(qtbot, window)
    assert window.stack.currentIndex() == SAMPLES
    assert window.samples._chosen == listing.tasks[2].target


def test_the_task_lists_keep_qts_promises(window: MainWindow, qtmodeltester) -> None:
    qtmodeltester.check(window.today.out_of_line.list.model())


def test_a_first_start_says_what_to_do(open_window, qtbot) -> None:
    window = open_window(InventedDoor(0))
    assert window.today._stack.currentWidget() is window.today.welcome
    assert window.today.welcome.isVisible()


def test_a_sheet_dropped_on_the_window_is_taken_in(open_window, qtbot, tmp_path) -> None:
    window = open_window(InventedDoor(0))
    sheet = tmp_path / "prices.csv"
    sheet.write_text("board,price\n", encoding="utf-8")
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(sheet))])
    how = (Qt.DropAction.CopyAction, mime, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(window, QDragEnterEvent(QPoint(5, 5), *how))
    assert window.message.text.startswith("Drop it to read it")
    QApplication.sendEvent(window, QDropEvent(QPointF(5, 5), *how))
    settle(qtbot, window)
    assert window.stack.currentIndex() == TAKE_IN
    assert window.take_in.at_hand.path == sheet


def test_a_question_is_answered_where_it_is_listed(window: MainWindow, qtbot) -> None:
    from tracker.desk.take_in import Stored
    from tracker.desk.today import Today
    from tracker.store.held import OpenQuestion

    asked = OpenQuestion(7, 1, "tolmere.xlsx", "Tolmere Board", TON, 7)
    answered = []

    def answer(number, value, remember):
        answered.append((number, value, remember))
        return Stored(1, 7, 0, 0)

    window.session.door.answer = answer
    window.session._set_todays(Today((), (asked,), (), ()))
    (task,) = window.today.questions.list.tasks
    window.today.questions.list.wanted.emit(task.target)
    dialog = window.today.findChild(AnswerDialog)
    dialog.cards[7].answered.emit("ton", "metric")
    settle(qtbot, window)
    assert answered == [(7, "metric", True)]


def test_the_vendor_that_a_sheet_lacks_is_named_beside_its_questions(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    sheet = tmp_path / "list.csv"
    sheet.write_text(
        "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,tonne\nHarrow 18,,18,335,1218,tonne\n",
        encoding="utf-8",
    )
    window.take_in_files([sheet])
    settle(qtbot, window)
    window.take_in.understood.vendor.nameless.click()
    window.take_in.agree.click()
    settle(qtbot, window)
    window.go_today()
    (task,) = window.today.questions.list.tasks
    window.today.questions.list.wanted.emit(task.target)
    dialog = window.today.findChild(AnswerDialog)
    assert dialog.naming.isVisible()
    qtbot.keyClicks(dialog.naming.field, "Ferrowick Mills")
    qtbot.keyClick(dialog.naming.field, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert dialog.isVisible()
    assert not dialog.naming.isVisible()
    assert window.session.comparison.snapshot.vendors == ["Ferrowick Mills"]
    (card,) = dialog.cards.values()
    qtbot.waitUntil(lambda: not card._too_soon)
    qtbot.keyClick(card, Qt.Key.Key_1)
    settle(qtbot, window)
    assert [(each.vendor, each.value) for each in window.session.door.remembered()] == [("Ferrowick Mills", "SBS")]
    assert len(window.session.comparison.snapshot) == 2


def test_a_board_without_a_name_is_called_by_its_grade() -> None:
    made = comparison(1)
    unnamed = replace(made, snapshot=replace(made.snapshot, product=[""]))
    said = tasks_of._board(offers(unnamed, standings(unnamed), Units.US), 0)
    grade = made.snapshot.grades[made.snapshot.grade[0]]
    assert said.split(": ")[1].startswith(f"{grade}, ")

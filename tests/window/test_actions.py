from collections import Counter

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QAbstractButton, QLabel

from tests.window.conftest import settle
from tracker.window.actions import ACTIONS
from tracker.window.do_list import DoList, matching
from tracker.window.file_tasks import FileTasks
from tracker.window.guides import Guides
from tracker.window.keys_dialog import KeysDialog
from tracker.window.main_window import REFERENCE, MainWindow
from tracker.window.other_database import OtherDatabase
from tracker.window.session import Session
from tracker.window.sheet_at_hand import SheetAtHand
from tracker.window.steps import Steps
from tracker.window.switches import Switches


def test_ids_and_keys_are_unique(qapp) -> None:
    """Two actions with one key in one window: Qt then does neither."""
    assert max(Counter(action.key for action in ACTIONS).values()) == 1
    keys = Counter(QKeySequence(action.keys).toString() for action in ACTIONS if action.keys)
    assert max(keys.values()) == 1
    assert "" not in keys


def test_the_window_can_do_each_of_them() -> None:
    for action in ACTIONS:
        doers = (MainWindow, FileTasks, OtherDatabase, Guides, Switches, Steps, SheetAtHand, Session)
        assert sum(callable(getattr(doer, action.does, None)) for doer in doers) == 1, action.key


def test_words_find_an_action() -> None:
    assert [action.key for action in matching("log sample")] == ["log-sample"]
    assert {action.key for action in matching("switch")} == {"per", "units", "delivered", "weight", "current", "theme"}
    assert matching("no such thing") == []


@pytest.mark.gui
def test_an_action_is_done_by_its_words(window: MainWindow, qtbot) -> None:
    done = DoList(window, window.actions_by_key, window.session.theme.palette)
    done.open_over(window)
    qtbot.keyClicks(done.field, "reference")
    qtbot.keyClick(done.field, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.stack.currentIndex() == REFERENCE


@pytest.mark.gui
def test_places_are_a_key_away(window: MainWindow, qtbot) -> None:
    for place in range(5):
        qtbot.keyClick(window, Qt.Key(Qt.Key.Key_1 + place), Qt.KeyboardModifier.ControlModifier)
        assert window.stack.currentIndex() == place


@pytest.mark.gui
def test_a_word_that_names_no_action_is_said_to(window: MainWindow, qtbot) -> None:
    done = DoList(window, window.actions_by_key, window.session.theme.palette)
    done.open_over(window)
    qtbot.keyClicks(done.field, "frobnicate")
    assert done.nothing.isVisible()
    assert "“frobnicate”" in done.nothing.text()
    done.field.clear()
    qtbot.keyClicks(done.field, "rest")
    assert not done.nothing.isVisible()
    assert done.list.item(0).text() == "Restore a backup…"
    done.close()


@pytest.mark.gui
def test_f1_shows_the_keys(window: MainWindow, qtbot) -> None:
    qtbot.keyClick(window, Qt.Key.Key_F1)
    (keys,) = window.findChildren(KeysDialog)
    said = {label.text() for label in keys.findChildren(QLabel)}
    assert {action.keys for action in ACTIONS if action.keys} <= said
    keys.close()


@pytest.mark.gui
def test_the_page_does_not_move_when_a_message_comes_and_goes(window: MainWindow, qtbot) -> None:
    before = window.stack.geometry()
    window.message.say("Sample 4 logged.")
    qtbot.wait(10)
    assert window.stack.geometry() == before
    window.message.hide()
    qtbot.wait(10)
    assert window.stack.geometry() == before
    assert window.message.text == ""


@pytest.mark.gui
def test_at_its_smallest_the_window_cuts_no_word_of_its_bar(window: MainWindow, qtbot) -> None:
    window.resize(window.minimumSize())
    qtbot.wait(10)
    for press in window.bar.findChildren(QAbstractButton):
        assert press.width() >= press.sizeHint().width(), press.text()

from collections import Counter

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence

from tests.window.conftest import settle
from tracker.window.actions import ACTIONS
from tracker.window.do_list import DoList, matching
from tracker.window.file_tasks import FileTasks
from tracker.window.main_window import REFERENCE, MainWindow
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
        doers = (MainWindow, FileTasks, Switches, Steps)
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

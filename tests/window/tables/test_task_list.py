"""A list of things to settle: in a narrow place a row is taller, so that none of its words is cut."""

import pytest

from tests.window.conftest import settle
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.tables.task_list import Task, TaskList

TASK = Task(
    "Kestrelby Carton Stock LLC: C1S CCNB 20pt", "63.45 USD per MSF, quoted $81.34 /cwt", "62 % above", 1, "CRB"
)


@pytest.mark.gui
@pytest.mark.parametrize(("width", "lines"), [(280, 4), (360, 3), (560, 2), (900, 2)])
def test_a_narrow_list_gives_its_words_further_lines(theme: Theme, qtbot, width: int, lines: int) -> None:
    tasks = TaskList("Prices that stand out", theme)
    qtbot.addWidget(tasks)
    tasks.show_tasks([TASK, TASK])
    tasks.resize(width, 300)
    tasks.show()
    height = 46 + 18 * (lines - 2)
    qtbot.waitUntil(lambda: tasks.visualRect(tasks.model().index(1, 0)).top() == height)
    assert tasks.sizeHint().height() == 2 * height + 2


@pytest.mark.gui
def test_rows_laid_out_while_nobody_saw_them_fit_the_width_they_are_shown_in(window: MainWindow, qtbot) -> None:
    window.resize(1600, 1000)
    window.go_quotes()
    settle(qtbot, window)
    tasks = window.quotes.reasons._standing_out
    first, second = (tasks.visualRect(tasks.model().index(row, 0)) for row in range(2))
    assert second.top() - first.top() == tasks.sizeHintForRow(0)


@pytest.mark.gui
def test_a_list_made_narrower_puts_its_rows_further_apart(theme: Theme, qtbot) -> None:
    tasks = TaskList("Prices that stand out", theme)
    qtbot.addWidget(tasks)
    tasks.show_tasks([TASK, TASK])
    tasks.resize(900, 300)
    tasks.show()
    qtbot.waitUntil(lambda: tasks.visualRect(tasks.model().index(1, 0)).top() == 46)
    tasks.resize(360, 300)
    qtbot.waitUntil(lambda: tasks.visualRect(tasks.model().index(1, 0)).top() == 64)

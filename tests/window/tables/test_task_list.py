"""A list of things to settle: in a tight place a row is taller, so that neither its detail nor its figure is cut."""

import pytest

from tests.window.conftest import settle
from tracker.window.look.theme import Theme
from tracker.window.main_window import MainWindow
from tracker.window.tables.task_list import Task, TaskList

TASK = Task(
    "Kestrelby Carton Stock LLC: C1S CCNB 20pt", "63.45 USD per MSF, quoted $81.34 /cwt", "62 % above", 1, "CRB"
)


@pytest.mark.gui
@pytest.mark.parametrize(("width", "lines"), [(360, 3), (500, 2), (900, 2)])
def test_a_tight_list_gives_the_figure_a_line_of_its_own(theme: Theme, qtbot, width: int, lines: int) -> None:
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
    assert tasks.visualRect(tasks.model().index(0, 0)).height() == tasks.sizeHintForRow(0)

"""A currency that no list has is typed, where a table is marked by hand and where a remembered answer is changed."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMenu, QPushButton

from tests.window.conftest import settle
from tracker.window.currency_dialog import CurrencyDialog
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def _type(window: MainWindow, qtbot, text: str) -> CurrencyDialog:
    dialog = window.findChild(CurrencyDialog)
    dialog.field.setText("")
    qtbot.keyClicks(dialog.field, text)
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)
    settle(qtbot, window)
    return dialog


def test_a_table_is_marked_in_any_currency(marked: MainWindow, qtbot) -> None:
    strip = marked.take_in.sheet.strip
    marked.take_in.sheet.mark_by_hand.click()
    menu = QMenu(strip)
    strip._fill_all_rows(menu)
    money = next(action.menu() for action in menu.actions() if action.text() == "The prices are in")
    next(action for action in money.actions() if action.text() == "another…").trigger()
    dialog = _type(marked, qtbot, "yen")
    assert dialog.wrong.label.text().startswith("“yen” is no currency")
    _type(marked, qtbot, "jpy")
    assert marked.take_in.at_hand.marking.currency == "JPY"
    strip._fill_all_rows(menu)
    money = next(action.menu() for action in menu.actions() if action.text() == "The prices are in")
    assert [action.text() for action in money.actions() if action.isChecked()] == ["JPY"]


def test_a_remembered_currency_is_changed_to_any(marked: MainWindow, qtbot) -> None:
    marked.take_in.agree.click()
    settle(qtbot, marked)
    marked.go_sheets()
    settle(qtbot, marked)
    (change,) = (each for each in marked.sheets.remembered.findChildren(QPushButton) if each.text() == "Change…")
    (choices,) = change.findChildren(QMenu)
    next(action for action in choices.actions() if action.text() == "Another…").trigger()
    _type(marked, qtbot, "brl")
    assert set(marked.session.comparison.snapshot.currencies) == {"BRL"}

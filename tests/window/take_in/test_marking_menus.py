"""The menus in which a table is marked by hand tell what is marked already."""

import pytest
from PySide6.QtWidgets import QMenu

from tests.window.fixtures.strange_sheet import NAMES
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def test_the_role_a_column_has_is_ticked_though_it_has_units(marked: MainWindow) -> None:
    strip = marked.take_in.sheet.strip
    marked.take_in.marking.begin()
    price = next(place for place, (role, _) in enumerate(NAMES) if role == "price")
    strip.stand_at(3, price)
    menu = QMenu(strip)
    strip._fill_names(menu)
    assert [action.text() for action in menu.actions() if action.isChecked()] == ["Price"]

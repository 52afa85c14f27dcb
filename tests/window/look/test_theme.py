"""A change of theme reaches everything, what is in view first; the rest waits for a turn of its own."""

import shutil

import pytest
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QCheckBox, QDialog, QWidget

from tests.window.conftest import settle
from tracker.trade.resources import resource
from tracker.window.do_list import DoList
from tracker.window.look import theme
from tracker.window.look.palette import palette_named
from tracker.window.look.theme import style_sheet
from tracker.window.main_window import SAMPLES, MainWindow

pytestmark = pytest.mark.gui


def parts(window: MainWindow) -> list[QWidget]:
    return [window.bar, window.footing, *(window.stack.widget(place) for place in range(window.stack.count()))]


def test_what_is_in_view_changes_at_once_and_the_rest_in_turns_of_its_own(window: MainWindow, qtbot) -> None:
    window.go_quotes()
    dark, light = (style_sheet(name, window.session.theme.base_px) for name in ("dark", "light"))
    window.session.theme.choose("dark")
    assert window.quotes.styleSheet() == window.bar.styleSheet() == dark
    assert window.stack.widget(SAMPLES).styleSheet() == light
    qtbot.waitUntil(lambda: all(part.styleSheet() == dark for part in parts(window)))
    window.session.theme.choose("light")
    window.session.theme.choose("dark")
    window.session.theme.choose("light")
    qtbot.waitUntil(lambda: all(part.styleSheet() == light for part in parts(window)))


def test_the_style_sheet_holds_wherever_the_program_lies(qapp, tmp_path, monkeypatch, qtlog) -> None:
    """Qt drops a whole style sheet for one address that it can't read, and people have their own names for folders."""
    folder = tmp_path / "Jörg's 100% (work)"
    shutil.copytree(resource(), folder)
    monkeypatch.setattr(theme, "resource", folder.joinpath)
    box = QCheckBox("chosen")
    box.setChecked(True)
    box.setStyleSheet(style_sheet.__wrapped__("light", 13))
    drawn = box.grab().toImage()
    accent = QColor(palette_named("light").accent)
    inside = [drawn.pixelColor(x, y) for x in range(20) for y in range(drawn.height())]
    assert accent in inside
    assert not [record.message for record in qtlog.records if "stylesheet" in record.message]


@pytest.mark.parametrize("name", ["dark", "light"])
def test_a_place_not_in_view_has_its_colours_when_it_comes_up(window: MainWindow, qtbot, name: str) -> None:
    theme = window.session.theme
    theme.choose(name)
    for go in (window.go_samples, window.go_reference, window.go_quotes, window.go_today):
        go()
        settle(qtbot, window)
        image = window.grab().toImage()
        shown = {image.pixelColor(4, y).name() for y in range(0, image.height(), 7)}
        assert QColor(theme.palette.ground).name() in shown
        assert window.stack.currentWidget().styleSheet() == style_sheet(name, theme.base_px)


@pytest.mark.parametrize("opening", ["show_keys", "open_do"])
def test_what_opens_over_the_window_wears_the_theme(window: MainWindow, qtbot, opening: str) -> None:
    getattr(window.guides, opening)()
    settle(qtbot, window)
    (opened,) = (
        each for each in QApplication.topLevelWidgets() if isinstance(each, QDialog | DoList) and each.isVisible()
    )
    assert opened.styleSheet() == style_sheet(window.session.theme.name, window.session.theme.base_px)
    opened.close()
    window.session.theme.choose("dark")
    qtbot.waitUntil(lambda: window.stack.widget(SAMPLES).styleSheet() != "")

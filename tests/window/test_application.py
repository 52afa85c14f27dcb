"""How the window opens."""

import pytest
from PySide6.QtCore import QSize

from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.application import fitting
from tracker.window.look.figures import Units
from tracker.window.look.theme import Theme
from tracker.window.quotes.place import QuotesPlace
from tracker.window.session import Session
from tracker.window.settings import Settings


@pytest.mark.parametrize(
    ("screen", "opens"), [((1920, 1040), (1280, 800)), ((1280, 800), (1264, 752)), ((1024, 700), (1008, 652))]
)
def test_a_window_opens_within_its_screen(screen, opens):
    assert fitting(QSize(1280, 800), QSize(*screen)) == QSize(*opens)


@pytest.mark.gui
def test_calipers_are_narrowed_in_the_units_that_were_kept(theme: Theme, qtbot) -> None:
    settings = Settings()
    settings.keep(units=Units.METRIC.value)
    quotes = QuotesPlace(Session(InventedDoor(5), theme, settings))
    qtbot.addWidget(quotes)
    assert quotes.filters._unit.text() == "µm"

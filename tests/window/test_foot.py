"""The foot of the window says what the database holds while no message stands there."""

import pytest

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import InventedDoor
from tracker.window.foot import Foot

pytestmark = pytest.mark.gui


def test_what_is_held_and_no_change_of_height_by_a_message(open_window, qtbot) -> None:
    window = open_window(InventedDoor(50))
    foot = window.findChild(Foot)
    vendors = len(set(window.session.comparison.snapshot.vendor.tolist()))
    assert foot.held.text().startswith(f"50 offers of {vendors} vendors")
    assert "still owed" in foot.held.text()
    height, below = foot.height(), window.stack.geometry().bottom()
    window.message.warn("Something was refused.")
    settle(qtbot, window)
    assert (foot.height(), window.stack.geometry().bottom()) == (height, below)
    assert window.message.text == "Something was refused."

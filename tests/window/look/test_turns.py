"""Work that can wait for its turn: at once where it is seen, else one piece after another."""

import pytest
import shiboken6
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from tracker.window.look.turns import Turns

pytestmark = pytest.mark.gui


class Part(QWidget):
    def __init__(self) -> None:
        super().__init__()
        self.drawn: list[str] = []

    def draw(self) -> None:
        self.drawn.append("drawn")

    def name(self) -> None:
        self.drawn.append("named")


@pytest.fixture
def turns(qapp):
    owner = QObject()
    yield Turns(owner)
    owner.deleteLater()


@pytest.fixture
def part(qtbot) -> Part:
    part = Part()
    qtbot.addWidget(part)
    return part


def test_a_part_in_view_is_drawn_at_once(turns, part, qtbot) -> None:
    part.show()
    turns.put_off(part, Part.draw)
    turns.do(part, Part.draw)
    assert part.drawn == ["drawn"]
    qtbot.wait(20)
    assert part.drawn == ["drawn"]


def test_a_part_out_of_view_is_drawn_once_in_its_turn(turns, part, qtbot) -> None:
    turns.do(part, Part.draw)
    turns.do(part, Part.name)
    turns.do(part, Part.draw)
    assert part.drawn == []
    qtbot.waitUntil(lambda: part.drawn == ["drawn", "named"])


def test_a_part_that_comes_into_view_waits_no_longer(turns, part) -> None:
    turns.do(part, Part.draw)
    part.show()
    turns.catch_up()
    assert part.drawn == ["drawn"]


def test_what_was_put_off_waits_though_it_is_in_view(turns, part, qtbot) -> None:
    part.show()
    turns.put_off(part, Part.draw)
    assert part.drawn == []
    qtbot.waitUntil(lambda: part.drawn == ["drawn"])


def test_a_part_that_is_gone_is_passed_over(turns, part, qtbot) -> None:
    gone = Part()
    turns.do(gone, Part.draw)
    turns.do(part, Part.draw)
    shiboken6.delete(gone)
    qtbot.waitUntil(lambda: part.drawn == ["drawn"])
    assert gone.drawn == []

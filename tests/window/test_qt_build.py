"""The installed Qt binding itself: one release of it aborts the interpreter that this project must run on."""

import importlib.util
import sys

from PySide6.QtCore import QObject


def test_calls_that_return_nothing_take_no_reference_to_none() -> None:
    """6.12.0 under Python 3.11 takes one reference to None per call, and the interpreter dies when they run out."""
    thing = QObject()
    before = sys.getrefcount(None)
    for _ in range(200):
        thing.setObjectName("board")
    assert abs(sys.getrefcount(None) - before) < 100


def test_only_the_essentials_are_installed() -> None:
    """Qt's charts are in the add-ons, which are GPL only; nothing here may come to rest on them."""
    assert importlib.util.find_spec("PySide6.QtCharts") is None

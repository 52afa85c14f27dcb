"""The bar at the top keeps its words whole."""

import pytest
from PySide6.QtWidgets import QWidget

from tests.window.conftest import settle

pytestmark = pytest.mark.gui


def _whole(*parts: QWidget) -> bool:
    return all(part.width() >= part.sizeHint().width() for part in parts)


@pytest.mark.parametrize("file", ["odd.xls", "Faltschachtelkarton 2026-II Endfassung.xlsx"])
def test_a_sheet_that_waits_is_named_as_far_as_no_other_word_is_cut(real_window, qtbot, file):
    settle(qtbot, real_window)
    bar = real_window.bar
    for width in (1024, 1280):
        real_window.resize(width, 700)
        bar.lead_back_to(file)
        qtbot.waitUntil(lambda: _whole(bar.back, bar.take_in, bar.log_sample, bar.do))
        assert bar.back.text().startswith(f"Back to {file[:3]}")
        assert bar.back.text().endswith(file[-3:])


def test_the_word_for_work_takes_its_room_from_the_name_of_the_sheet_alone(real_window, qtbot):
    settle(qtbot, real_window)
    bar = real_window.bar
    real_window.resize(1024, 700)
    bar.lead_back_to("odd.xls")
    bar.show_busy(True)
    qtbot.waitUntil(lambda: bar.back.text() == "Back")
    qtbot.waitUntil(lambda: _whole(bar.back, bar.take_in, bar.log_sample, bar.do))
    bar.show_busy(False)
    assert bar.back.text() == "Back to odd.xls"

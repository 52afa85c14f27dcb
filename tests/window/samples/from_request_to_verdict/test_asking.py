"""Asking for samples by keyboard, and finding one again."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from tests.window.samples.from_request_to_verdict.keyboard import CONTROL, SHIFT, VENDORS, Keys, asked
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def test_five_vendors_are_asked_in_one_go(window: MainWindow, keys: Keys) -> None:
    keys.press(Qt.Key.Key_N, CONTROL)
    keys.settle()
    keys.type("al;br;co;du;es")
    keys.press(Qt.Key.Key_Tab)
    keys.type("s")
    keys.press(Qt.Key.Key_Tab)
    keys.type("18")
    assert window.samples.form._log.text() == "Log 5 requests"
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert [sample.vendor for sample in asked(window)] == list(VENDORS)
    assert {sample.grade for sample in asked(window)} == {"SBS"}
    assert keys.pressed == 21
    window.steps.undo()
    keys.settle()
    assert window.session.samples == ()


def test_a_template_asks_fifteen_in_three_keys(window: MainWindow, keys: Keys) -> None:
    form = window.samples.form
    form.vendor.setText("; ".join(VENDORS))
    form.grade.setText("SBS")
    form.caliper.setText("16 18 20")
    form.template_name.setText("White board")
    keys.settle()
    form.template_name.returnPressed.emit()
    keys.settle()
    for field in (form.vendor, form.grade, form.caliper):
        field.clear()
    keys.press(Qt.Key.Key_N, CONTROL | SHIFT)
    keys.settle()
    assert QApplication.activePopupWidget() is form.templates.menu()
    form.templates.menu().actions()[0].trigger()
    form.templates.menu().close()
    assert form._log.text() == "Log 15 requests"
    form.log()
    keys.settle()
    assert len(asked(window)) == 15


def test_a_completed_name_stays_when_the_next_begins(window: MainWindow, keys: Keys) -> None:
    window.log_sample()
    keys.settle()
    keys.type("br;cor")
    assert window.samples.form.vendor.text().casefold() == "brackly mills;corvane karton"


def test_several_requests_are_refused_whole_and_nothing_typed_is_lost(window: MainWindow, keys: Keys) -> None:
    form = window.samples.form
    form.vendor.setText("Aldermoor Board")
    form.grade.setText("SBS")
    form.asked_on.setText("2099-01-01")
    form.log()
    keys.settle()
    assert "still to come" in form._wrong.label.text()
    assert form.vendor.text() == "Aldermoor Board"


def test_a_number_typed_or_scanned_opens_the_record(owing: MainWindow, qtbot) -> None:
    keys = Keys(qtbot, owing)
    keys.press(Qt.Key.Key_G, CONTROL)
    keys.type("S-0002")
    keys.press(Qt.Key.Key_Return)
    assert owing.samples._chosen == 2
    owing.samples.table.setFocus()
    keys.type("1")
    assert QApplication.focusWidget() is owing.samples.listing.number
    keys.press(Qt.Key.Key_Return)
    assert owing.samples._chosen == 1
    keys.press(Qt.Key.Key_G, CONTROL)
    keys.type("99")
    keys.press(Qt.Key.Key_Return)
    assert "no sample 99" in owing.message.text
    keys.press(Qt.Key.Key_G, CONTROL)
    keys.type("tea")
    keys.press(Qt.Key.Key_Return)
    assert "sample's number" in owing.message.text

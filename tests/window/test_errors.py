import logging
import subprocess
import sys
from datetime import date

import pytest
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QComboBox, QLineEdit, QWidget

from tests.window.fixtures.invented_door import InventedDoor
from tracker.desk.trouble import Trouble
from tracker.window.errors import Mishaps, sentence_for
from tracker.window.main_window import MainWindow
from tracker.window.settings import Settings


def test_the_desks_own_sentence_is_said_as_it_is() -> None:
    assert (
        sentence_for(Trouble("The list lapsed on 3 May: ask for a new one."))
        == "The list lapsed on 3 May: ask for a new one."
    )


def test_a_full_disk_is_not_called_a_fault_of_ours() -> None:
    assert "No space left" in sentence_for(OSError(28, "No space left on device"))


def test_our_own_faults_show_no_code() -> None:
    said = sentence_for(KeyError("vendor_id"))
    assert "KeyError" not in said
    assert "log" in said


def test_what_nobody_caught_is_logged_and_said_once(qapp, caplog) -> None:
    mishaps, said = Mishaps(), []
    mishaps.happened.connect(said.append)
    with caplog.at_level(logging.ERROR):
        for _ in range(3):
            try:
                raise ZeroDivisionError("in a paint event")
            except ZeroDivisionError as error:
                mishaps.caught(type(error), error, error.__traceback__)
    assert len(said) == 1
    assert len(caplog.records) == 3
    assert "ZeroDivisionError" in caplog.text


@pytest.mark.gui
def test_a_trouble_is_a_line_in_the_window_that_can_be_closed(window: MainWindow, qtbot) -> None:
    window.session.tell_trouble(Trouble("Sample 4 was never asked for: check its number."))
    assert window.message.text == "Sample 4 was never asked for: check its number."
    window.message._close.click()
    assert window.message.text == ""


@pytest.mark.gui
def test_a_database_that_cant_be_opened_is_said_in_the_window(open_window, qtbot) -> None:
    class Locked(InventedDoor):
        def today(self) -> date:
            raise Trouble("The database is in use elsewhere: close it there.")

    window = open_window(Locked(20))
    assert "in use elsewhere" in window.message.text
    assert "in use elsewhere" in window.today._told.text()


def test_settings_come_back_with_their_types_in_another_process(tmp_path) -> None:
    script = """
import sys
from datetime import date
from PySide6.QtCore import QSettings
from tracker.window.settings import Settings
store = QSettings(sys.argv[1], QSettings.Format.IniFormat)
settings = Settings(store)
if sys.argv[2] == "write":
    settings.keep(delivered=False, per="tonne")
    store.sync()
else:
    print(repr(settings.delivered), repr(settings.per), repr(settings.units))
"""
    said = ""
    for what in ("write", "read"):
        command = [sys.executable, "-c", script, str(tmp_path / "window.ini"), what]
        said = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    assert said.split() == ["False", "'tonne'", "'US'"]
    with pytest.raises(TypeError):
        Settings().keep(colour="red")


@pytest.mark.gui
def test_closing_waits_for_the_desk_and_closes_it(window: MainWindow) -> None:
    window.session.reload()
    window.close()
    assert window.session.door.asked[-1] == "close"


@pytest.mark.gui
def test_everything_one_can_use_has_a_name_that_can_be_read_out(window: MainWindow) -> None:
    nameless = []
    for kind in (QLineEdit, QComboBox, QAbstractItemView, QAbstractButton):
        for widget in window.findChildren(kind):
            text = widget.text() if isinstance(widget, QAbstractButton) else ""
            if not (widget.accessibleName() or text) and not is_part_of_another(widget):
                nameless.append(widget)
    assert nameless == []


def is_part_of_another(widget: QWidget) -> bool:
    """A combo's own list, a table's corner, a field's clear button: Qt's, not ours."""
    parent = widget.parentWidget()
    while parent is not None:
        if isinstance(parent, QComboBox | QAbstractItemView | QLineEdit):
            return True
        parent = parent.parentWidget()
    return False

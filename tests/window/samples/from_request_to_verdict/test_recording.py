"""What happens to a request, and what is written out about it."""

from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QFileDialog

from tests.window.conftest import settle
from tests.window.samples.from_request_to_verdict.keyboard import VENDORS, Keys, asked, requested
from tracker.window.main_window import MainWindow
from tracker.window.samples.label_dialog import LabelDialog

pytestmark = pytest.mark.gui


def test_sent_asks_for_the_carrier_and_its_number(window: MainWindow, keys: Keys) -> None:
    requested(window, keys)
    window.go_samples()
    keys.press(Qt.Key.Key_S)
    life = window.samples.record.life
    life.carrier.setText("Ostrel Parcel")
    life.tracking.setText("OP 123")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    (sample,) = asked(window)
    assert (sample.carrier, sample.tracking, str(sample.state)) == ("Ostrel Parcel", "OP 123", "sent")


def test_an_impossible_day_is_said_where_it_was_typed(owing: MainWindow, qtbot) -> None:
    keys = Keys(qtbot, owing)
    owing.samples.go_to(1)
    keys.press(Qt.Key.Key_A)
    life = owing.samples.record.life
    life.on.setText("2020-01-01")
    life.note.setText("with a dent")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert "nothing can have happened" in life._wrong.label.text()
    assert life.note.text() == "with a dent"


def test_a_contact_is_kept_with_its_language(owing: MainWindow, qtbot) -> None:
    owing.samples.go_to(1)
    owing.samples.record.start_deciding()
    settle(qtbot, owing)
    kept = owing.samples.record.kept
    kept.contact.name.setText("Frau Weiß")
    kept.contact.mail.setText("no address")
    kept.contact.language.setCurrentIndex(1)
    kept._set_contact()
    settle(qtbot, owing)
    assert "not a mail address" in owing.message.text
    kept.contact.mail.setText("weiss@aldermoor.example")
    kept._set_contact()
    settle(qtbot, owing)
    found = owing.session.door.contact(VENDORS[0])
    assert (found.name, found.language) == ("Frau Weiß", "de")


def test_labels_and_calendar_are_written(
    owing: MainWindow, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[str] = []
    monkeypatch.setattr(
        "tracker.window.file_tasks.QDesktopServices.openUrl", lambda url: opened.append(url.toLocalFile())
    )
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "labels"), "PDF (*.pdf)"))
    owing.go_samples()
    owing.print_labels()
    dialog = owing.samples.findChild(LabelDialog)
    dialog.which.button(1).setChecked(True)
    (tmp_path / "labels.pdf").write_text("mine", encoding="utf-8")
    dialog._write()
    assert "labels.pdf is there already" in dialog._told.text()
    assert dialog.isVisible()
    (tmp_path / "labels.pdf").unlink()
    dialog._write()
    settle(qtbot, owing)
    assert (tmp_path / "labels.pdf").read_bytes().startswith(b"%PDF")
    assert opened == [str(tmp_path / "labels.pdf")]
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "owed.ics"), ""))
    owing.files.write_calendar()
    settle(qtbot, owing)
    assert "2 to-dos" in owing.message.text


def test_the_pictures_show_every_request_and_pick_one(owing: MainWindow, qtbot) -> None:
    owing.go_samples()
    listing = owing.samples.listing
    listing.turn_to(1)
    settle(qtbot, owing)
    lines = listing.lines
    assert lines.x_of(lines.span()[0]) < lines.x_of(date.today()) < lines.width()
    second = lines._samples[1].number
    qtbot.mouseClick(lines, Qt.MouseButton.LeftButton, pos=QPoint(300, 60))
    assert owing.samples._chosen == second
    assert not lines.grab().isNull()
    listing.turn_to(2)
    settle(qtbot, owing)
    assert [row.vendor for row in listing.turn_round._rows] == [None, VENDORS[0]]
    assert listing.turn_round.words_of(listing.turn_round._rows[1]) == "too few came to tell, 2 asked, 2 owed"
    assert not listing.turn_round.grab().isNull()

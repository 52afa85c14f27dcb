"""Asking a vendor for what it owes: a draft at one key, who signs it, what it says, and when it counts as a chase."""

from datetime import date, timedelta
from pathlib import Path
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QInputDialog

from tests.window.conftest import settle
from tests.window.samples.from_request_to_verdict.keyboard import VENDORS, Keys, asked
from tracker.desk import chase_templates
from tracker.desk.sample_life import EventKind
from tracker.window.main_window import MainWindow
from tracker.window.samples import chasing
from tracker.window.samples.chase_dialogs import ChaseText
from tracker.window.samples.chase_words import ChaseWords
from tracker.window.samples.contact_fields import ContactDialog

pytestmark = pytest.mark.gui


@pytest.fixture
def opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What was handed to the desktop; drafts and words go to folders of the test's own."""
    opened: list[str] = []
    monkeypatch.setattr(chasing, "drafts_folder", lambda: tmp_path / "chases")
    monkeypatch.setattr(chase_templates, "own_folder", lambda: tmp_path / "words")
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path / "chosen"))
    monkeypatch.setattr(
        "tracker.window.file_tasks.QDesktopServices.openUrl", lambda url: opened.append(url.toLocalFile())
    )
    return opened


@pytest.fixture
def signed(owing: MainWindow, opened: list[str]) -> MainWindow:
    owing.session.door.sign_as("A. Buyer")
    owing.samples.go_to(1)
    return owing


def asking(window: MainWindow) -> ChaseText:
    return window.samples.findChildren(ChaseText)[-1]


def test_one_key_drafts_a_chase_and_nothing_counts_until_it_was_sent(
    signed: MainWindow, qtbot, opened: list[str], tmp_path: Path
) -> None:
    keys = Keys(qtbot, signed)
    assert signed.samples.listing.chase.text() == "Chase 1 vendor…"
    keys.press(Qt.Key.Key_D)
    keys.settle()
    (written,) = (tmp_path / "chases").iterdir()
    assert opened == [str(written)]
    body = written.read_text(encoding="utf-8")
    assert "S-0001" in body
    assert "S-0002" in body
    assert "A. Buyer" in body
    dialog = asking(signed)
    assert "days overdue: 20" in dialog.text.toPlainText()
    # Enter at once is "Not sent yet".
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert keys.pressed == 2
    assert [sample.chased for sample in asked(signed)] == [0, 0]
    assert signed.samples.listing.chase.text() == "Chase 1 vendor…"


def test_sent_marks_all_that_it_lists_and_one_undo_takes_that_back(signed: MainWindow, qtbot) -> None:
    signed.samples.draft_chase()
    settle(qtbot, signed)
    assert asking(signed).yes.text() == "Sent: mark 2 samples as chased"
    asking(signed).yes.click()
    settle(qtbot, signed)
    assert [sample.chased for sample in asked(signed)] == [1, 1]
    assert signed.samples.listing.chase.text() == "Draft chases…"
    signed.session.undo_stack.undo()
    settle(qtbot, signed)
    assert [sample.chased for sample in asked(signed)] == [0, 0]


def test_the_name_is_asked_once_and_the_login_never_signs(owing: MainWindow, qtbot, opened: list[str]) -> None:
    owing.samples.go_to(1)
    owing.samples.draft_chase()
    settle(qtbot, owing)
    assert opened == []
    dialog = owing.samples.findChild(QInputDialog)
    dialog.setTextValue("Tamsin Ort")
    dialog.accept()
    settle(qtbot, owing)
    assert asking(owing).text.toPlainText().endswith("Tamsin Ort")
    asking(owing).reject()
    owing.samples.draft_chase()
    settle(qtbot, owing)
    assert len(opened) == 2
    asking(owing).reject()


def test_without_a_name_nothing_is_drafted(owing: MainWindow, qtbot, opened: list[str], tmp_path: Path) -> None:
    owing.samples.go_to(1)
    owing.samples.draft_chase()
    settle(qtbot, owing)
    owing.samples.findChild(QInputDialog).reject()
    settle(qtbot, owing)
    assert not (tmp_path / "chases").exists()


def test_all_who_are_due_are_shown_before_a_folder_is_asked_for(signed: MainWindow, qtbot, tmp_path: Path) -> None:
    signed.draft_chases()
    settle(qtbot, signed)
    assert not (tmp_path / "chosen").exists()
    before = asking(signed)
    assert "S-0001" in before.text.toPlainText()
    before.yes.click()
    settle(qtbot, signed)
    assert len(list((tmp_path / "chosen").iterdir())) == 1
    assert "1 draft in" in signed.message.text
    assert asking(signed).windowTitle() == "Draft made"
    asking(signed).yes.click()
    settle(qtbot, signed)
    assert [sample.chased for sample in asked(signed)] == [1, 1]


def test_a_missing_address_is_hinted_at_and_written_down_there(signed: MainWindow, qtbot, opened: list[str]) -> None:
    signed.draft_chases()
    settle(qtbot, signed)
    before = asking(signed)
    assert before.hint.text().startswith(f"No address is known of {VENDORS[0]}")
    before.contact.click()
    settle(qtbot, signed)
    contact = before.findChild(ContactDialog)
    contact.fields.mail.setText("nowhere")
    contact.keep()
    settle(qtbot, signed)
    assert "not a mail address" in contact._wrong.label.text()
    contact.fields.mail.setText("weiss@aldermoor.example")
    contact.fields.language.setCurrentIndex(1)
    contact.keep()
    settle(qtbot, signed)
    anew = asking(signed)
    assert anew.text.toPlainText().startswith("To: weiss@aldermoor.example\nSubject: Ausstehende Muster (2)")
    assert anew.hint.text() == ""
    anew.reject()


def test_words_are_changed_with_what_they_come_to_in_view_and_put_back(
    signed: MainWindow, qtbot, opened: list[str], tmp_path: Path
) -> None:
    signed.draft_chases()
    settle(qtbot, signed)
    asking(signed).words.click()
    settle(qtbot, signed)
    words = asking(signed).findChild(ChaseWords)
    assert "S-0012" in words.example.toPlainText()
    words.body.setPlainText("Hello")
    assert words.example.toPlainText() == "The message must hold $list, where the samples stand."
    words.keep()
    settle(qtbot, signed)
    assert not (tmp_path / "words").exists()
    words.body.setPlainText("$greeting\n$list\nCheers\n$buyer")
    words.keep()
    settle(qtbot, signed)
    assert "Cheers" in asking(signed).text.toPlainText()
    asking(signed).words.click()
    settle(qtbot, signed)
    words = asking(signed).findChild(ChaseWords)
    words.back.click()
    settle(qtbot, signed)
    words.keep()
    settle(qtbot, signed)
    assert "Kind regards" in asking(signed).text.toPlainText()
    assert not (tmp_path / "words" / "en.toml").exists()
    asking(signed).reject()


@pytest.mark.parametrize("kind", ["contact", "words"])
def test_what_is_closed_while_the_desk_is_at_work_hears_no_more_and_loses_nothing(
    signed: MainWindow, qtbot, opened: list[str], kind: str
) -> None:
    """A big sheet may keep the desk for seconds; Escape does not wait for it, and Qt deletes what was closed."""
    if kind == "contact":
        dialog = ContactDialog(signed.session, [VENDORS[0]], signed)
        settle(qtbot, signed)
        dialog.fields.mail.setText("weiss@aldermoor.example")
    else:
        dialog = ChaseWords(signed.session, signed)
        settle(qtbot, signed)
        dialog.body.setPlainText("$greeting\n$list\nCheers\n$buyer")
    dialog.show()
    may_go_on = Event()
    signed.session.work.ask(may_go_on.wait, lambda _: None)
    dialog.keep()
    dialog._ask()
    with qtbot.waitSignal(dialog.destroyed):
        dialog.reject()
    may_go_on.set()
    settle(qtbot, signed)
    if kind == "contact":
        assert signed.session.door.contact(VENDORS[0]).mail == "weiss@aldermoor.example"
        assert signed.session.undo_stack.canUndo()
    else:
        assert "Cheers" in signed.session.door.chase_words("en").body


def test_what_was_settled_before_the_drafts_are_written_is_not_chased(
    signed: MainWindow, qtbot, opened: list[str], tmp_path: Path
) -> None:
    signed.draft_chases()
    settle(qtbot, signed)
    signed.session.door.record(1, EventKind.ARRIVED, date.today() - timedelta(days=1), None, "")
    asking(signed).yes.click()
    settle(qtbot, signed)
    assert signed.message.text == "Nobody is due for a chase today."
    assert not (tmp_path / "chosen").exists()


def test_a_sample_that_came_meanwhile_is_not_marked(signed: MainWindow, qtbot) -> None:
    signed.samples.draft_chase()
    settle(qtbot, signed)
    door = signed.session.door
    door.record(1, EventKind.ARRIVED, date.today() - timedelta(days=1), None, "")
    asking(signed).yes.click()
    settle(qtbot, signed)
    assert "arrived on" in signed.message.text
    assert all(sample.chased == 0 for sample in door.samples())

"""The verdict on a board, and the files kept with it."""

from io import BytesIO
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QPushButton

from tests.window.samples.from_request_to_verdict.keyboard import SHIFT, Keys, arrived, asked
from tracker.window.main_window import MainWindow
from tracker.window.samples.photographs import LARGE, SMALL, Photograph, decoded

pytestmark = pytest.mark.gui


def test_a_verdict_stands_in_the_quotes(window: MainWindow, keys: Keys, qtbot) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_V)
    assert QApplication.focusWidget() is window.samples.record.kept.approved_for
    window.samples.record.kept.rejected_because.setFocus()
    keys.type("cracks")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert window.samples.record.kept.rejected_because.text() == ""
    window.go_quotes()
    keys.settle()
    texts = [
        str(window.quotes.model.index(0, place).data() or "") for place in range(window.quotes.model.columnCount())
    ]
    assert "rejected" in texts
    window.session.select_offer(0)
    keys.settle()
    layout = window.quotes.reasons._reasons
    said = [layout.itemAt(place).widget().text() for place in range(layout.count())]
    assert said[0].startswith("This board was rejected: cracks (")


def test_a_verdict_is_signed_with_the_name_that_was_kept(window: MainWindow, keys: Keys) -> None:
    from tracker.desk.chasing import sign_as

    arrived(window, keys)
    window.session.work.ask(lambda: sign_as(window.session.door.desk, "Mira Okander"), lambda _: None)
    keys.press(Qt.Key.Key_V)
    keys.type("tea cartons")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert asked(window)[0].verdict_by.startswith("Mira Okander, ")


def test_a_stray_enter_approves_nothing(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_V)
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    assert not asked(window)[0].verdict
    keys.press(Qt.Key.Key_Space)
    keys.settle()
    assert asked(window)[0].verdict.startswith("approved")


def test_a_rejection_without_a_reason_is_refused_beside_it(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    window.samples.record.start_deciding()
    window.samples.record.kept.reject()
    keys.settle()
    assert "why" in window.samples.record.kept._wrong.label.text()


def test_a_photograph_is_kept_and_saved_again(
    window: MainWindow, keys: Keys, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    arrived(window, keys)
    photograph = tmp_path / "edge.jpg"
    photograph.write_bytes(b"a photograph")
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: ([str(photograph)], ""))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "again.jpg"), ""))
    window.samples.record.start_deciding()
    kept = window.samples.record.kept
    kept._choose_files()
    keys.settle()
    (file,) = window.session.door.attachments(1)
    kept.file_saved.emit(file.id, file.name)
    keys.settle()
    assert (tmp_path / "again.jpg").read_bytes() == b"a photograph"
    kept.file_off.emit(1, "edge.jpg")
    keys.settle()
    assert window.session.door.attachments(1) == ()


def keep(window: MainWindow, keys: Keys, path: Path, content: bytes) -> None:
    path.write_bytes(content)
    window.session.door.attach(1, path)
    window.samples.record.start_deciding()
    window.session.reload_samples()
    keys.settle()


def picture(width: int, height: int, colour: str) -> bytes:
    from PIL import Image

    buffer = BytesIO()
    Image.new("RGB", (width, height), colour).save(buffer, "PNG")
    return buffer.getvalue()


def test_a_copy_keeps_the_ending_of_the_file(window: MainWindow, keys: Keys, tmp_path: Path, monkeypatch) -> None:
    arrived(window, keys)
    keep(window, keys, tmp_path / "edge.png", picture(40, 20, "red"))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "copy"), ""))
    files = window.samples.record.kept.files
    next(each for each in files.findChildren(QPushButton) if each.text() == "Save a copy…").click()
    keys.settle()
    assert (tmp_path / "copy.png").read_bytes() == (tmp_path / "edge.png").read_bytes()
    assert window.message.text == f"It is in {tmp_path / 'copy.png'}."


def test_a_photograph_is_seen_small_and_large(window: MainWindow, keys: Keys, tmp_path: Path) -> None:
    arrived(window, keys)
    keep(window, keys, tmp_path / "edge.png", picture(4000, 2000, "red"))
    files = window.samples.record.kept.files
    look = files.looks["edge.png"]
    assert look.isVisibleTo(files)
    small = look.icon().pixmap(look.iconSize()).toImage()
    assert small.pixelColor(small.rect().center()).name() == "#ff0000"
    while QApplication.focusWidget() is not look and keys.pressed < 40:
        keys.press(Qt.Key.Key_Tab)
    for text in ("Save a copy…", "Take off"):
        keys.press(Qt.Key.Key_Tab)
        assert QApplication.focusWidget().text() == text
    for _ in range(2):
        keys.press(Qt.Key.Key_Backtab, SHIFT)
    assert QApplication.focusWidget() is look
    keys.press(Qt.Key.Key_Space)
    keys.settle()
    shown = files.findChild(Photograph)
    assert shown.windowTitle() == "edge.png"
    large = shown.picture.pixmap()
    assert large.width() == 2 * large.height()
    assert large.width() <= shown.picture.width()
    keys.press(Qt.Key.Key_Escape)
    keys.settle()
    assert files.findChild(Photograph) is None


@pytest.mark.parametrize(
    ("name", "content"),
    [("sheet.pdf", b"%PDF-1.4 a data sheet"), ("broken.png", b"\x89PNG\r\n\x1a\n cut off"), ("note.txt", b"dented")],
)
def test_what_is_no_photograph_is_only_named(
    window: MainWindow, keys: Keys, tmp_path: Path, name: str, content: bytes
) -> None:
    arrived(window, keys)
    keep(window, keys, tmp_path / name, content)
    files = window.samples.record.kept.files
    assert not files.looks[name].isVisibleTo(files)
    assert name not in window.message.text


def test_a_photograph_stands_upright_as_the_camera_held_it() -> None:
    from PIL import Image

    image, buffer = Image.new("RGB", (40, 20), "white"), BytesIO()
    turned = image.getexif()
    turned[0x0112] = 6  # the camera was held on its side
    image.save(buffer, "JPEG", exif=turned)
    seen = decoded(buffer.getvalue(), LARGE)
    assert (seen.width(), seen.height()) == (20, 40)
    assert max(decoded(picture(4000, 100, "red"), SMALL).size().toTuple()) == SMALL.width()


def test_a_sample_that_arrived_stays_at_hand_for_its_readings_and_verdict(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    assert [sample.state.value for sample in window.samples.listing.shown() if sample.number == 1] == ["arrived"]
    keys.press(Qt.Key.Key_M)
    assert window.samples.record._sample.number == 1

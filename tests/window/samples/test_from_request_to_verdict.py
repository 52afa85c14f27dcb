"""A new user's whole task on a real database: ask five vendors, record what comes, chase, measure, decide."""

import shutil
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QToolButton

from tests.desk.filing import file
from tests.store.making import line
from tests.window.conftest import settle
from tracker.desk import contacts, samples
from tracker.desk.opening import open_desk
from tracker.desk.sample_life import EventKind
from tracker.trade.exact import as_decimal
from tracker.trade.quantities import WeightUnit, grammage
from tracker.window.door import Door
from tracker.window.main_window import MainWindow
from tracker.window.samples import place as samples_place
from tracker.window.samples.label_dialog import LabelDialog

pytestmark = pytest.mark.gui
CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
VENDORS = ("Aldermoor Board", "Brackly Mills", "Corvane Karton", "Dunholt Paper", "Estwick Board")


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Five vendors are known; one of them has quoted SBS of 18 pt and 72 lb/MSF. Made once: copying it is quicker."""
    path = tmp_path_factory.mktemp("made") / "board.sqlite"
    desk = open_desk(str(path), who="Ada")
    offer = line(
        vendor=VENDORS[0], product="Fenlight", grammage_gsm=as_decimal(grammage(72, WeightUnit.LB_MSF)), charges=(),
        price=Decimal(1280), from_kg=None, below_kg=None, minimum_kg=None, valid_until=None,
    )  # fmt: skip
    file(desk, offer, vendor=VENDORS[0])
    for vendor in VENDORS:
        contacts.set_contact(desk, vendor)
    desk.close()
    return path


@pytest.fixture
def database(made: Path, tmp_path: Path) -> str:
    return str(shutil.copy(made, tmp_path / "board.sqlite"))


@pytest.fixture
def window(open_window, database: str) -> MainWindow:
    return open_window(Door(database))


@pytest.fixture
def owing(open_window, database: str) -> MainWindow:
    """A window in which sample 1 is overdue, and 2, the same vendor's, is not."""
    desk = open_desk(database, who="Ada")
    for days in (30, 2):
        asked = date.today() - timedelta(days=days)
        number = samples.log(desk, VENDORS[0], "SBS", on=asked).number
        samples.record(desk, number, EventKind.PROMISED, asked, asked + timedelta(days=10))
    desk.close()
    return open_window(Door(database))


class Keys:
    """Presses keys wherever the cursor is, and counts them."""

    def __init__(self, qtbot, window: MainWindow) -> None:
        self._qtbot, self._window = qtbot, window
        self.pressed = 0

    def press(self, key: Qt.Key, modifiers: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
        self._qtbot.keyClick(QApplication.focusWidget() or self._window, key, modifiers)
        self.pressed += 1

    def type(self, text: str) -> None:
        self._qtbot.keyClicks(QApplication.focusWidget(), text)
        self.pressed += len(text)

    def settle(self) -> None:
        settle(self._qtbot, self._window)


@pytest.fixture
def keys(qtbot, window: MainWindow) -> Keys:
    return Keys(qtbot, window)


def asked(window: MainWindow) -> list:
    return sorted(window.session.samples, key=lambda sample: sample.number)


def arrived(window: MainWindow, keys: Keys) -> None:
    """Sample 1 of 18 pt SBS is asked for and recorded as arrived."""
    window.log_sample()
    keys.type("ald")
    keys.press(Qt.Key.Key_Tab)
    keys.type("sbs")
    keys.press(Qt.Key.Key_Tab)
    keys.type("18")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
    window.go_samples()
    keys.press(Qt.Key.Key_A)
    keys.press(Qt.Key.Key_Return)
    keys.settle()


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


def test_sent_asks_for_the_carrier_and_its_number(window: MainWindow, keys: Keys) -> None:
    window.log_sample()
    keys.type("ald")
    keys.press(Qt.Key.Key_Tab)
    keys.type("sbs")
    keys.press(Qt.Key.Key_Return)
    keys.settle()
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


def test_one_key_drafts_a_chase_and_records_it(
    owing: MainWindow, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[Path] = []
    monkeypatch.setattr(samples_place, "drafts_folder", lambda: tmp_path / "chases")
    monkeypatch.setattr(
        "tracker.window.file_tasks.QDesktopServices.openUrl", lambda url: opened.append(url.toLocalFile())
    )
    keys = Keys(qtbot, owing)
    assert owing.samples.listing.chase.text() == "Chase 1 vendor…"
    owing.samples.go_to(1)
    keys.press(Qt.Key.Key_D)
    keys.settle()
    (written,) = (tmp_path / "chases").iterdir()
    assert opened == [str(written)]
    body = written.read_text(encoding="utf-8")
    assert "S-0001" in body
    assert "S-0002" in body
    assert [sample.chased for sample in asked(owing)] == [1, 1]
    assert owing.samples.listing.chase.text() == "Draft chases…"
    assert keys.pressed == 1


def test_a_pasted_column_and_what_it_says_of_the_claim(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    assert QApplication.focusWidget() is page.figures
    assert page.unit.currentText() == "pt"
    page.figures.setPlainText("18.1\n17.9\n18.0\n0.018\n18.2")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    assert "another unit" in page._wrong.label.text()
    assert "0.018" in page.figures.toPlainText()
    page.figures.setPlainText("18.1\n17.9\n18.0\n18.0\n18.2")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    assert page.figures.toPlainText() == ""
    shown = [label.text() for label in page.findChildren(type(page._how)) if label.text()]
    assert "Caliper agrees" in shown
    assert any(text.startswith("In pt: mean 18.04") and "claimed 18" in text for text in shown)
    (sample,) = asked(window)
    assert str(sample.state) == "tested"


def test_a_data_sheet_s_claim_is_typed_beside_the_readings(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    page = window.samples.record.measured
    keys.press(Qt.Key.Key_M)
    page.which.setCurrentIndex(page.which.findData("gloss75"))
    page.claim.setText("50")
    page.claim.returnPressed.emit()
    keys.settle()
    assert page.claim.text() == ""
    shown = [label.text() for label in page.findChildren(type(page._how)) if label.text()]
    assert "Gloss at 75° cannot be said yet" in shown


def test_what_the_weight_comes_to_in_a_year(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    page = window.samples.record.measured
    keys.press(Qt.Key.Key_M)
    page.which.setCurrentIndex(page.which.findData("grammage"))
    page.figures.setPlainText("76\n76\n75.9\n76.1\n76")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    assert page.year.isVisibleTo(page)
    page.year.volume.setText("30,000")
    page.year.volume.returnPressed.emit()
    keys.settle()
    # 4 lb more on each 1,000 ft² at 1,280 a short ton is 2.56.
    assert "USD 2.56 more: USD 76,800 more over a year's 30,000 MSF" in page.year._said.text()
    claimed = float(window.session.comparison.per_msf[0])
    window.switches.switch_weight()
    keys.settle()
    assert float(window.session.comparison.per_msf[0]) / claimed == pytest.approx(76 / 72)
    assert "measured" in window.footing._weight.text()


def test_a_verdict_stands_in_the_quotes(window: MainWindow, keys: Keys, qtbot) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_V)
    assert QApplication.focusWidget() is window.samples.record.kept.words
    keys.type("cracks")
    window.samples.record.kept.reject()
    keys.settle()
    window.go_quotes()
    keys.settle()
    texts = [
        str(window.quotes.model.index(0, place).data() or "") for place in range(window.quotes.model.columnCount())
    ]
    assert any(text.startswith("rejected · Fenlight") for text in texts)
    window.session.select_offer(0)
    keys.settle()
    layout = window.quotes.reasons._reasons
    said = [layout.itemAt(place).widget().text() for place in range(layout.count())]
    assert said[0].startswith("This board was rejected: cracks (")


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


def test_labels_and_calendar_are_written(
    owing: MainWindow, qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[str] = []
    monkeypatch.setattr(
        "tracker.window.file_tasks.QDesktopServices.openUrl", lambda url: opened.append(url.toLocalFile())
    )
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "labels.pdf"), ""))
    owing.go_samples()
    owing.print_labels()
    dialog = owing.samples.findChild(LabelDialog)
    dialog.which.button(1).setChecked(True)
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


def test_a_contact_is_kept_with_its_language(owing: MainWindow, qtbot) -> None:
    owing.samples.go_to(1)
    owing.samples.record.start_deciding()
    settle(qtbot, owing)
    kept = owing.samples.record.kept
    kept.contact.setText("Frau Weiß")
    kept.mail.setText("no address")
    kept.language.setCurrentIndex(1)
    kept._set_contact()
    settle(qtbot, owing)
    assert "not a mail address" in owing.message.text
    kept.mail.setText("weiss@aldermoor.example")
    kept._set_contact()
    settle(qtbot, owing)
    found = owing.session.door.contact(VENDORS[0])
    assert (found.name, found.language) == ("Frau Weiß", "de")


def test_several_requests_are_refused_whole_and_nothing_typed_is_lost(window: MainWindow, keys: Keys) -> None:
    form = window.samples.form
    form.vendor.setText("Aldermoor Board")
    form.grade.setText("SBS")
    form.asked_on.setText("2099-01-01")
    form.log()
    keys.settle()
    assert "still to come" in form._wrong.label.text()
    assert form.vendor.text() == "Aldermoor Board"


def test_a_mistyped_reading_is_taken_off_and_brought_back(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    page.figures.setPlainText("18.1\n19.9")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    offered = next(each for each in page.findChildren(QToolButton) if each.text().startswith("Take off"))
    offered.menu().actions()[1].trigger()
    keys.settle()
    door = window.session.door
    assert [len(each.readings) for each in door.check_sample(1).properties if each.readings] == [1]
    window.steps.undo()
    keys.settle()
    assert [len(each.readings) for each in door.check_sample(1).properties if each.readings] == [2]

"""Readings against what was claimed."""

from decimal import Decimal

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QToolButton

from tests.desk.filing import file
from tests.store.making import line
from tests.window.samples.from_request_to_verdict.keyboard import CONTROL, SHIFT, VENDORS, Keys, arrived, asked
from tracker.desk import samples
from tracker.desk.opening import open_desk
from tracker.desk.sample_life import EventKind
from tracker.window.door import Door
from tracker.window.main_window import MainWindow
from tracker.window.samples.reading_strip import ReadingStrip

pytestmark = pytest.mark.gui


def test_readings_with_spaces_are_told_in_points_first(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    keys.settle()
    before = [label.text() for label in page.findChildren(type(page._how)) if label.text()]
    assert any("claimed 18 pt (held to ± 5 %); no readings so far" in text for text in before)
    keys.type("18.1 17.9 .018in 18,0 18.2")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    shown = [label.text() for label in page.findChildren(type(page._how)) if label.text()]
    assert any(text.startswith("Caliper: 5 readings, mean 18.04 pt") for text in shown)
    assert any(text.startswith("In µm: mean 458.2") for text in shown)
    (strip,) = page.findChildren(ReadingStrip)
    assert [said for _, said in strip.marks()] == ["17.1", "18 pt", "18.9"]
    assert "Ctrl+Enter" in " ".join(each.text() for each in page.findChildren(QPushButton))


def test_one_bad_reading_is_named_and_its_sentence_goes_when_it_is_mended(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    keys.type("18.1 thick")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    assert "thick" in page._wrong.label.text()
    assert page.figures.toPlainText() == "18.1 thick"
    assert not page._wrong.label.isHidden()
    keys.press(Qt.Key.Key_Backspace)
    assert page._wrong.label.isHidden()


def test_what_has_arrived_offers_its_readings(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    life = window.samples.record.life
    assert life._measure.isVisibleTo(life)
    assert not life._form.isVisibleTo(life)
    life._measure.click()
    assert QApplication.focusWidget() is window.samples.record.measured.figures


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
    assert any("mean 18.04 pt" in text and "claimed 18 pt (held to ± 5 %)" in text for text in shown)
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
    assert "Gloss at 75°: too few readings to tell" in shown


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


def test_which_of_several_boards_it_is_is_said_where_the_claim_is_missed(open_window, database: str, qtbot) -> None:
    desk = open_desk(database)
    two = [
        line(
            vendor=VENDORS[1], product=product, caliper_um=Decimal("457.2"), charges=(), from_kg=None, below_kg=None,
            minimum_kg=None, valid_until=None,
        )
        for product in ("Tamber White", "Tamber Natural")
    ]  # fmt: skip
    file(desk, *two, vendor=VENDORS[1], content=b"tamber")
    samples.log(desk, VENDORS[1], "SBS", Decimal("457.2"))
    samples.record(desk, 1, EventKind.ARRIVED)
    desk.close()
    window = open_window(Door(database))
    keys = Keys(qtbot, window)
    window.go_samples()
    window.samples.go_to(1)
    keys.press(Qt.Key.Key_M)
    keys.type("18.1 18.0 17.9 18.0 18.2")
    keys.press(Qt.Key.Key_Return, CONTROL)
    keys.settle()
    page = window.samples.record.measured
    said = [page._found.itemAt(place).widget() for place in range(page._found.count())]
    texts = [each.text() for each in said if isinstance(each, QLabel)]
    assert "nothing is claimed" in texts[1]
    assert texts[2].startswith("Several boards of Brackly Mills fit: Tamber Natural, Tamber White")
    named, take_off = page._menus
    keys.press(Qt.Key.Key_Backtab, SHIFT)
    assert QApplication.focusWidget() is page.unit
    keys.press(Qt.Key.Key_Backtab, SHIFT)
    keys.press(Qt.Key.Key_Backtab, SHIFT)
    assert QApplication.focusWidget() is take_off
    keys.press(Qt.Key.Key_Backtab, SHIFT)
    assert QApplication.focusWidget() is named
    assert named.text() == "Which board is it?"
    named.menu().actions()[1].trigger()
    keys.settle()
    assert asked(window)[0].board == "Tamber White"
    assert QApplication.focusWidget() is page.figures
    shown = [label.text() for label in page.findChildren(QLabel)]
    assert any("agrees with the claimed 18 pt" in text for text in shown)
    window.steps.undo()
    keys.settle()
    assert asked(window)[0].board == ""


def test_escape_leaves_the_readings_as_they_stand(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    keys.type("18.1 18")
    keys.press(Qt.Key.Key_Escape)
    assert QApplication.focusWidget() is window.samples.table
    assert window.samples.record.measured.figures.toPlainText() == "18.1 18"
    keys.press(Qt.Key.Key_V)
    assert QApplication.focusWidget() is window.samples.record.kept.approved_for


def test_the_example_is_in_the_unit_chosen(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    assert page.figures.placeholderText().startswith("18.1 ")
    page.unit.setCurrentText("µm")
    assert page.figures.placeholderText().startswith("460 ")
    page.which.setCurrentIndex(page.which.findData("gloss75"))
    assert not any(sign.isdigit() for sign in page.figures.placeholderText())


def test_a_claim_is_told_as_it_was_typed(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page = window.samples.record.measured
    page.claim.setText("18.5")
    page.claim.returnPressed.emit()
    keys.settle()
    assert "caliper 18.5 pt" in window.message.text


def test_what_is_wrong_moves_no_field(window: MainWindow, keys: Keys) -> None:
    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    keys.settle()
    page = window.samples.record.measured
    before = [part.mapTo(window, part.rect().topLeft()) for part in (page.figures, page.claim, page.unit)]
    page.refuse("The reading “thick” is no number.")
    keys.settle()
    assert page._wrong.label.isVisible()
    assert [part.mapTo(window, part.rect().topLeft()) for part in (page.figures, page.claim, page.unit)] == before


def test_prices_at_measured_weight_follow_what_is_measured_and_undone(window: MainWindow, keys: Keys) -> None:
    def weighed() -> int:
        keys.settle()
        return int(window.session.comparison.snapshot.measured.sum())

    arrived(window, keys)
    keys.press(Qt.Key.Key_M)
    page, samples_place = window.samples.record.measured, window.samples
    samples_place._name_board(1, "Fenlight")
    page.which.setCurrentIndex(page.which.findData("grammage"))
    page.unit.setCurrentText("g/m²")
    page.figures.setPlainText("340 341 342 343 344")
    page.record()
    assert weighed() == 0
    window.session.choose_footing(measured_weight=True)
    assert weighed() == 1
    window.steps.undo()  # taken at claimed weights, undone at measured ones
    assert weighed() == 0
    window.steps.redo()
    assert weighed() == 1
    samples_place._name_board(1, "Another board")
    assert weighed() == 0
    window.steps.undo()
    assert weighed() == 1
    (reading, *_) = window.session.door.check_sample(1).properties[-1].readings
    samples_place._remove_reading(1, reading.id)
    assert weighed() == 0

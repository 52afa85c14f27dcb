"""Logging and recording by keyboard alone, and taking it back."""

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QAbstractItemView, QApplication

from tests.window.conftest import settle
from tests.window.fixtures.invented_door import sample
from tests.window.fixtures.invented_offers import DAY
from tracker.desk.samples import SampleState
from tracker.window.main_window import MainWindow
from tracker.window.samples.listing import TURN_ROUND

pytestmark = pytest.mark.gui
CONTROL = Qt.KeyboardModifier.ControlModifier


def focused():
    return QApplication.focusWidget()


def log_by_keys(qtbot, window: MainWindow) -> int:
    """Logs Tolmere Board, SBS, 18 pt as a user would; gives the number of keys pressed."""
    qtbot.keyClick(window, Qt.Key.Key_N, CONTROL)
    pressed = 1
    for text, key in (("Tol", Qt.Key.Key_Tab), ("S", Qt.Key.Key_Tab), ("18", Qt.Key.Key_Return)):
        qtbot.keyClicks(focused(), text)
        qtbot.keyClick(focused(), key)
        pressed += len(text) + 1
    settle(qtbot, window)
    return pressed


def test_a_request_takes_ten_keys_and_no_pointer(window: MainWindow, qtbot) -> None:
    door = window.session.door
    before = set(door.kept)
    assert log_by_keys(qtbot, window) == 10
    (number,) = set(door.kept) - before
    logged = door.kept[number]
    assert (logged.vendor, logged.grade, float(logged.caliper_um)) == ("Tolmere Board", "SBS", 457.2)
    assert focused() is window.samples.form.vendor
    assert window.samples.form.vendor.text() == ""
    assert f"ample {number} logged" in window.message.text


def test_undo_and_redo_of_a_request(window: MainWindow, qtbot) -> None:
    door = window.session.door
    before = set(door.kept)
    log_by_keys(qtbot, window)
    qtbot.keyClick(focused(), Qt.Key.Key_Z, CONTROL)
    settle(qtbot, window)
    assert set(door.kept) == before
    assert window.samples.form.vendor.text() == "", "the field it was typed in brings nothing back"
    qtbot.keyClick(focused(), Qt.Key.Key_Z, CONTROL | Qt.KeyboardModifier.ShiftModifier)
    settle(qtbot, window)
    assert len(door.kept) == len(before) + 1


def test_what_is_missing_is_said_in_a_sentence_and_nothing_is_lost(window: MainWindow, qtbot) -> None:
    window.log_sample()
    form = window.samples.form
    qtbot.keyClicks(form.vendor, "Ulverby")
    form.needed.setText("3/4")
    qtbot.keyClick(form.needed, Qt.Key.Key_Return)
    assert "Which grade?" in form._wrong.label.text()
    assert focused() is form.grade
    form.grade.setText("crb")
    qtbot.keyClick(form.grade, Qt.Key.Key_Return)
    assert "3/4" in form._wrong.label.text()
    assert form.vendor.text() == "Ulverby"


def test_outstanding_ones_first_the_most_overdue_on_top(window: MainWindow) -> None:
    window.go_samples()
    place = window.samples
    shown = [window.session.samples[row] for row in place.model.order]
    assert all(sample.state.outstanding for sample in shown)
    late = [sample.overdue_days for sample in shown if sample.overdue]
    assert late == sorted(late, reverse=True)
    assert place.listing.which.button(0).text() == f"Outstanding  {len(shown)}"


def test_arrival_is_two_keys(window: MainWindow, qtbot) -> None:
    window.go_samples()
    settle(qtbot, window)
    number = window.samples._chosen
    qtbot.keyClick(window.samples.table, Qt.Key.Key_A)
    assert window.samples.record.life._record.text() == "Record as arrived"
    qtbot.keyClick(focused(), Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.session.door.kept[number].state is SampleState.ARRIVED
    qtbot.keyClick(window, Qt.Key.Key_Z, CONTROL)
    settle(qtbot, window)
    assert window.session.door.kept[number].state is not SampleState.ARRIVED


def test_a_promise_needs_its_day(window: MainWindow, qtbot) -> None:
    window.go_samples()
    settle(qtbot, window)
    number = window.samples._chosen
    qtbot.keyClick(window.samples.table, Qt.Key.Key_P)
    record = window.samples.record.life
    assert focused() is record.until
    qtbot.keyClick(record.until, Qt.Key.Key_Return)
    assert record._wrong.label.text().startswith("Promised for when?")
    qtbot.keyClicks(record.until, "2 weeks")
    qtbot.keyClick(record.until, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.session.door.kept[number].state is SampleState.PROMISED


def test_a_request_is_found_by_its_number_even_when_filtered_out(window: MainWindow, qtbot) -> None:
    done = next(sample for sample in window.session.samples if not sample.state.outstanding)
    window._show_sample(done.number)
    settle(qtbot, window)
    assert window.samples._chosen == done.number
    assert window.samples.record._title.text().startswith(f"No. {done.number}")


def test_every_column_that_is_shown_stands_whole_in_the_window(window: MainWindow, qtbot) -> None:
    window.go_samples()
    table = window.samples.table
    bold = table.font()
    bold.setBold(True)
    longest = {"overdue": "127 days overdue", "state": "requested", "requested": "30 Sep 2026"}
    for size in ((1280, 800), (1024, 700), (1400, 900)):
        window.resize(*size)
        settle(qtbot, window)
        shown = [place for place in range(table.model().columnCount()) if not table.isColumnHidden(place)]
        assert sum(map(table.columnWidth, shown)) <= table.viewport().width()
        for place in shown:
            text = longest.get(table.model().columns[place].key, "")
            assert QFontMetrics(bold).horizontalAdvance(text) < table.columnWidth(place), text


@pytest.fixture
def many(window: MainWindow, qtbot) -> MainWindow:
    """More requests are owed than the table has lines; the next one logged comes last."""
    door = window.session.door
    door.kept = {number: sample(number, "Ulverby", "SBS", overdue_days=30) for number in range(100, 160)}
    window.session.reload_samples()
    window.go_samples()
    settle(qtbot, window)
    return window


@pytest.mark.parametrize("size", [(1024, 700), (1400, 900)])
def test_the_row_just_logged_is_in_view_when_the_message_has_come(
    many: MainWindow, qtbot, size: tuple[int, int]
) -> None:
    window = many
    window.resize(*size)
    log_by_keys(qtbot, window)
    table = window.samples.table
    assert window.message.text
    assert table.currentIndex().isValid()
    assert window.samples._chosen == max(window.session.door.kept)
    assert table.currentIndex().row() == table.model().rowCount() - 1
    row = table.visualRect(table.currentIndex())
    assert table.viewport().rect().contains(row)


def test_the_chosen_row_stays_in_view_when_the_table_loses_a_line(many: MainWindow, qtbot) -> None:
    window = many
    window.resize(1400, 900)
    log_by_keys(qtbot, window)
    table = window.samples.table
    table.scrollTo(table.currentIndex(), QAbstractItemView.ScrollHint.PositionAtBottom)
    window.resize(1400, 860)
    settle(qtbot, window)
    assert table.viewport().rect().contains(table.visualRect(table.currentIndex()))


def test_home_is_the_most_overdue_and_end_the_last(many: MainWindow, qtbot) -> None:
    table = many.samples.table
    qtbot.keyClick(table, Qt.Key.Key_End)
    assert table.currentIndex().row() == table.model().rowCount() - 1
    assert many.samples._chosen == many.samples.listing.shown()[-1].number
    qtbot.keyClick(table, Qt.Key.Key_Home)
    assert table.currentIndex().row() == 0
    assert many.samples._chosen == many.samples.listing.shown()[0].number


def test_the_scale_of_weeks_leaves_each_figure_its_room(window: MainWindow, qtbot) -> None:
    window.go_samples()
    window.samples.listing.turn_to(TURN_ROUND)
    settle(qtbot, window)
    turn_round = window.samples.listing.turn_round
    assert turn_round.longest() > 28
    for width in (560, 700, 900, 1600):
        turn_round.resize(width, 400)
        assert turn_round.x_of(turn_round.step()) - turn_round.x_of(0) >= 30
        assert turn_round.step() % 7 == 0


def test_a_sample_due_after_the_day_it_is_needed_says_so(window: MainWindow) -> None:
    late = sample(91, "Tolmere Board", "SBS", due=DAY + timedelta(30), needed=DAY + timedelta(7), overdue_days=-30)
    window.samples.record.show_sample(late)
    assert "⚠ due 23 days after you need it" in window.samples.record._about.text()
    window.samples.record.show_sample(replace(late, needed=DAY + timedelta(30)))
    assert "after you need it" not in window.samples.record._about.text()

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QFileDialog, QLabel

from tests.window.conftest import settle
from tracker.desk.sensitivity import Sensitivity
from tracker.trade.bands import ratio
from tracker.trade.grades import grades
from tracker.trade.sourced import SourceKind
from tracker.window.door import Door
from tracker.window.look.figures import Units
from tracker.window.main_window import MainWindow

pytestmark = pytest.mark.gui


def words_on(widget) -> str:
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if not label.isHidden())


def test_every_fact_of_every_grade_stands_beside_its_source(window: MainWindow, qtbot) -> None:
    window.go_reference()
    for place, (code, grade) in enumerate(grades().items()):
        window.reference.list.setCurrentRow(place)
        qtbot.wait(1)
        shown = words_on(window.reference)
        in_full = {label.toolTip() for label in window.reference.findChildren(QLabel) if not label.isHidden()}
        assert f"{code} · {grade.name.says}" in shown
        for fact in (*grade.cautions, *grade.strengths, grade.pulp):
            assert fact.says in shown
            assert str(fact.source) in in_full
            assert fact.source.reference in shown
        assert ratio(code).source in shown
        # Every one of them is told by its mark or in words, and the marks by the legend.
        for kind, mark in ((SourceKind.COMMON_PRACTICE, "○"), (SourceKind.MEMORY, "△")):
            assert f"{mark} {kind.value}" in shown


def test_a_level_needs_a_source_and_a_plain_figure(window: MainWindow, qtbot) -> None:
    window.go_reference()
    form = window.reference.level
    form.per.setCurrentText("tonne")
    form.set_level()
    assert form._wrong.text() == "Write a price here, for example 1450 or 1450.50."
    form.amount.setText("1,450")
    qtbot.keyClick(form.amount, Qt.Key.Key_Return)
    assert "without a comma" in form._wrong.text()
    form.amount.setText("1450.50")
    qtbot.keyClick(form.amount, Qt.Key.Key_Return)
    assert "source" in form._wrong.text()
    form.source.setText("trade press, November")
    qtbot.keyClick(form.source, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert any("Decimal('1450.50')" in asked and "trade press" in asked for asked in window.session.door.asked)
    assert form.amount.text() == ""
    assert window.session.undo_stack.undoText() == "set a level"


@pytest.mark.parametrize("size", [(1024, 700), (1280, 800)], ids=str)
def test_set_the_level_opens_at_the_form_with_the_cursor_in_view(window: MainWindow, qtbot, size) -> None:
    window.resize(*size)
    place = window.reference
    for grade in ("CRB", "SBS", ""):
        window.go_quotes()
        window.quotes.picture.level_wanted.emit(grade)
        settle(qtbot, window)
        qtbot.waitUntil(lambda: not place._level_to_the_top.isActive())
        viewport = place._scroll.viewport()
        for part in (place._level_heading, place.level.amount, place.level._line.button):
            top = part.mapTo(viewport, QPoint(0, 0)).y()
            assert 0 <= top <= viewport.height() - part.height(), (grade, part)
        assert window.focusWidget() is place.level.amount


def test_a_ratio_is_typed_in_per_cent_with_its_source(window: MainWindow, qtbot) -> None:
    window.reference.show_level("FBB")
    form = window.reference.ratio
    form.low.setText("70")
    form.high.setText("0,8")
    qtbot.keyClick(form.high, Qt.Key.Key_Return)
    assert "without a comma" in form.wrong.text()
    form.high.setText("80")
    form.source.setText("our tender")
    qtbot.keyClick(form.source, Qt.Key.Key_Return)
    settle(qtbot, window)
    (asked,) = [asked for asked in window.session.door.asked if asked.startswith("ratio")]
    assert "'FBB', Decimal('0.7'), Decimal('0.8')" in asked


def test_sbs_has_no_ratio_to_itself(window: MainWindow) -> None:
    window.reference.show_level("SBS")
    assert window.reference.ratio.isHidden()


def test_a_rate_of_one_s_own_and_the_sensitivity_are_set_on_one_page(window: MainWindow, qtbot) -> None:
    window.go_reference()
    window.reference.show_yardsticks()
    page = window.reference.yardsticks
    page.code.setText("sek")
    page.euros.setText("0,09")
    qtbot.keyClick(page.euros, Qt.Key.Key_Return)
    assert "without a comma" in page.wrong.text()
    page.euros.setText("0.0921")
    qtbot.keyClick(page.euros, Qt.Key.Key_Return)
    page.choices[Sensitivity.SURE].click()
    settle(qtbot, window)
    assert any("rate ('SEK', Decimal('0.0921')" in asked for asked in window.session.door.asked)
    assert "sensitivity sure" in window.session.door.asked


def test_a_rate_can_be_typed_as_what_one_euro_is_worth(window: MainWindow, qtbot) -> None:
    window.go_reference()
    window.reference.show_yardsticks()
    page = window.reference.yardsticks
    page.way.setCurrentText("units for one euro")
    page.code.setText("USD")
    page.euros.setText("0")
    qtbot.keyClick(page.euros, Qt.Key.Key_Return)
    assert "“0” is not a rate" in page.wrong.text()
    page.euros.setText("1.25")
    qtbot.keyClick(page.euros, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert any("rate ('USD', Decimal('0.8000000000')" in asked for asked in window.session.door.asked)


@pytest.fixture
def on_a_desk(open_window, database: str) -> MainWindow:
    return open_window(Door(database))


def test_a_level_is_carried_by_an_index_taken_back_and_all_undone(on_a_desk, qtbot, tmp_path, monkeypatch) -> None:
    window, place = on_a_desk, on_a_desk.reference
    index = tmp_path / "board index.csv"
    index.write_text("date,value\n2026-01,100\n2026-02,104\n", encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(index), ""))
    window.go_reference()
    place.show_level("SBS")
    assert place.level.index.isHidden()
    place.level.per.setCurrentText("tonne")
    for field, text in ((place.level.amount, "1450"), (place.level.on, "2026-02-01"), (place.level.source, "talks")):
        field.setText(text)
    place.level.set_level()
    settle(qtbot, window)
    qtbot.mouseClick(place.level.index, Qt.MouseButton.LeftButton)
    settle(qtbot, window)
    assert "USD 1,450 per tonne from 1 Feb 2026, talks; carried forward by board index" in words_on(place)
    qtbot.mouseClick(place.level.remove, Qt.MouseButton.LeftButton)
    settle(qtbot, window)
    assert "Not set: the median of current offers" in words_on(place)
    window.steps.undo()
    settle(qtbot, window)
    assert "carried forward by board index" in words_on(place)


def test_a_level_is_taken_per_short_ton_or_cwt_and_kept_so(window: MainWindow, qtbot) -> None:
    window.go_reference()
    form = window.reference.level
    assert form.per.currentText() == "short ton"
    for weight, amount in (("short ton", "1320"), ("cwt", "66"), ("tonne", "1455.05")):
        form.per.setCurrentText(weight)
        form.amount.setText(amount)
        form.source.setText("trade press")
        qtbot.keyClick(form.source, Qt.Key.Key_Return)
        settle(qtbot, window)
    typed = [asked for asked in window.session.door.asked if asked.startswith("level")]
    said = ("Decimal('1320'), currency='USD', basis=<Basis.SHORT_TON", "Decimal('66')", "Decimal('1455.05')")
    assert [words in asked for words, asked in zip(said, typed, strict=True)] == [True] * 3
    window.session.choose_units(Units.METRIC)
    assert form.per.currentText() == "tonne"


def test_a_level_a_decimal_point_off_is_asked_about_once(on_a_desk, qtbot) -> None:
    window, form = on_a_desk, on_a_desk.reference.level
    window.go_reference()
    form.per.setCurrentText("tonne")
    form.amount.setText("145")
    form.source.setText("talks")
    form.set_level()
    settle(qtbot, window)
    assert "which no carton board costs. Press Enter again if it is meant." in words_on(form)
    assert not window.session.undo_stack.count()
    form.set_level()
    settle(qtbot, window)
    assert "USD 145 per tonne from" in words_on(form)


def test_a_rate_a_decimal_point_off_is_asked_about_once(on_a_desk, qtbot) -> None:
    window, page = on_a_desk, on_a_desk.reference.yardsticks
    window.go_yardsticks()
    page.code.setText("USD")
    page.euros.setText("86")
    page.set_rate()
    settle(qtbot, window)
    assert "Press Enter again" in page.wrong.text()
    page.euros.setText("0.86")
    page.set_rate()
    settle(qtbot, window)
    assert window.session.undo_stack.undoText().startswith("set 1 USD to 0.86 EUR")


def test_a_broken_index_is_told_by_its_row(on_a_desk, qtbot, tmp_path, monkeypatch) -> None:
    index = tmp_path / "index.csv"
    index.write_text("2026-01,100\n02/2026,104\n", encoding="utf-8")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(index), ""))
    on_a_desk.reference.level.index_wanted.emit("SBS")
    settle(qtbot, on_a_desk)
    assert "row 2" in words_on(on_a_desk.message)


def test_a_level_of_its_own_sets_the_ratio_aside_and_its_usual_spread_is_told_at_the_field(
    on_a_desk: MainWindow, qtbot
) -> None:
    window, place = on_a_desk, on_a_desk.reference
    window.go_reference()
    place.show_level("CRB")
    settle(qtbot, window)
    assert place._expected.text() == "60 % to 85 % of the level of SBS, per weight"
    assert place.level.spread.placeholderText() == "15 if blank"
    for field, text in ((place.level.amount, "940"), (place.level.source, "talks")):
        field.setText(text)
    place.level.set_level()
    settle(qtbot, window)
    assert place._expected.text().startswith("by its own market level")
    assert "does not count while the grade has a market level of its own" in words_on(place.ratio)
    window.steps.undo()
    settle(qtbot, window)
    assert place._expected.text().startswith("60 % to 85 %")
    assert "does not count" not in words_on(place.ratio)


def test_the_fields_of_a_level_fit_beside_each_other(window: MainWindow, qtbot) -> None:
    window.go_reference()
    window.reference.show_level("CRB")
    spread = window.reference.level.spread
    for size in ((1024, 700), (1280, 800)):
        window.resize(*size)
        settle(qtbot, window)
        assert window.reference._scroll.horizontalScrollBar().maximum() == 0
        assert window.reference.level.source.width() >= 100
        assert spread.fontMetrics().horizontalAdvance(spread.placeholderText()) <= spread.width() - 16

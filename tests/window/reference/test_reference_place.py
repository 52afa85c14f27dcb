import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from tests.window.conftest import settle
from tracker.trade.bands import ratio
from tracker.trade.grades import grades
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
        assert f"{code} · {grade.name.says}" in shown
        for fact in (*grade.cautions, *grade.strengths, grade.pulp):
            assert fact.says in shown
            assert str(fact.source) in shown
        assert ratio(code).source in shown


def test_a_level_needs_a_source_and_a_plain_figure(window: MainWindow, qtbot) -> None:
    window.go_reference()
    form = window.reference.level
    form.per_tonne.setText("1,450")
    qtbot.keyClick(form.per_tonne, Qt.Key.Key_Return)
    assert "without a comma" in form._wrong.text()
    form.per_tonne.setText("1450.50")
    qtbot.keyClick(form.per_tonne, Qt.Key.Key_Return)
    assert "source" in form._wrong.text()
    form.source.setText("trade press, November")
    qtbot.keyClick(form.source, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert any("Decimal('1450.50')" in asked and "trade press" in asked for asked in window.session.door.asked)
    assert form.per_tonne.text() == ""
    assert window.session.undo_stack.undoText() == "set a level"

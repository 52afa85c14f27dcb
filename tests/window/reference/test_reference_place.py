import pytest
from PySide6.QtWidgets import QLabel

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

"""Small parts: a chosen word has room for its bold letters."""

import pytest
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QWidget

from tracker.window.look.theme import Theme
from tracker.window.pieces import one_of

pytestmark = pytest.mark.gui


def test_a_long_choice_is_not_cut_when_it_is_chosen(theme: Theme, qtbot) -> None:
    titles = ("All", "Verdict and files", "Outstanding  1,420", "Comes within a week")
    shown = QWidget()
    qtbot.addWidget(shown)
    group, layout = one_of(titles, shown)
    shown.setLayout(layout)
    shown.show()
    for choice in group.buttons():
        choice.setChecked(True)
        bold = QFont(choice.font())
        bold.setWeight(QFont.Weight.DemiBold)
        gap_after = 16
        assert choice.width() - gap_after >= QFontMetrics(bold).horizontalAdvance(choice.text())

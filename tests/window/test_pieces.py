"""Small parts: a chosen word has room for its bold letters, what is told is in view."""

import pytest
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import QWidget

from tests.window.conftest import PATIENCE_MS
from tracker.window.look.theme import Theme
from tracker.window.pieces import bring_in_view, column, holder, one_of, scrolled, words

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


def test_what_is_told_below_the_fold_is_scrolled_to(qtbot) -> None:
    told = words("The other way round it is 0.9009. Press Enter again if it is meant.", wrap=True)
    told.hide()
    page = scrolled(holder(column(600, told)))
    qtbot.addWidget(page)
    page.resize(200, 300)
    page.show()
    told.show()
    bring_in_view(told)
    qtbot.waitUntil(lambda: told.visibleRegion().boundingRect() == told.rect(), timeout=PATIENCE_MS)

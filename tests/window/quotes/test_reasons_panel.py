"""The panel that explains a price: its conclusion is in view, whatever the window's size and currency."""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QLabel

from tests.window.conftest import settle
from tracker.desk.standing import Standing
from tracker.window.main_window import MainWindow
from tracker.window.pieces import words

pytestmark = pytest.mark.gui


@pytest.fixture
def panel(qtbot, window: MainWindow):
    window.go_quotes()
    offer = int((window.session.marks == Standing.ABOVE).nonzero()[0][0])
    window.quotes.go_to(offer)
    # The desk explains in a moment of its own.
    settle(qtbot, window)
    return window.quotes.reasons


def at_each_size(panel, qtbot) -> Iterator[tuple[int, int]]:
    """The window in one size after another, and the panel at rest in it."""
    for size in ((1280, 800), (1024, 700)):
        panel.window().resize(*size)
        settle(qtbot, panel.window())
        qtbot.waitUntil(lambda: not panel._body._settled.isActive())
        yield size


def test_reasons_stand_first_and_in_view(panel, qtbot) -> None:
    reasons = [panel._reasons.itemAt(place).widget() for place in range(panel._reasons.count())]
    assert reasons
    for _ in at_each_size(panel, qtbot):
        viewport = panel._body.viewport()
        for reason in reasons:
            below = reason.mapTo(viewport, QPoint(0, reason.height())).y()
            assert below <= viewport.height(), reason.text()
            assert below < panel._ladder.mapTo(viewport, QPoint(0, 0)).y()


def test_no_line_is_cut_in_two(panel, qtbot) -> None:
    for _ in at_each_size(panel, qtbot):
        # Words are laid out over some turns of the loop; then it stays so.
        qtbot.waitUntil(lambda: not _cut(panel))


def _cut(panel) -> list[str]:
    body = panel._body
    height, cut = body.viewport().height(), []
    for label in body.widget().findChildren(QLabel):
        top = label.mapTo(body.viewport(), QPoint(0, 0)).y()
        one_line = QLabel("x", font=label.font()).sizeHint().height()
        if top < height < top + label.height() and (height - top) % one_line > 2:
            cut.append(label.text())
    return cut


def test_the_cell_is_told_once(panel, qtbot) -> None:
    settle(qtbot, panel.window())
    snapshot = panel._session.comparison.snapshot
    cell = snapshot.cell[panel._session.selected]
    told = [
        label.text() for label in panel.findChildren(QLabel) if cell in label.text().replace("(", " ").split(", ")[-1]
    ]
    assert len(told) == 1, told


def test_a_long_file_name_cuts_no_sentence(panel, qtbot) -> None:
    session = panel._session
    snapshot = session.comparison.snapshot
    long_name = "a_very_long_name_of_a_price_list_as_an_export_writes_it.xlsx"
    snapshot.files[int(snapshot.file[session.selected])] = long_name
    panel._show_offer(session.selected)
    settle(qtbot, panel.window())
    body = panel._body
    panel._reasons.addWidget(words("Compare with " + long_name.replace("_", ""), wrap=True))
    for _ in at_each_size(panel, qtbot):
        qtbot.waitUntil(lambda: body.widget().width() == body.viewport().width())

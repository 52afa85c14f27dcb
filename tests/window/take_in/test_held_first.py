"""What waits for an answer, and what can't be used, stands at the top of a long list; the rest as the sheet has it."""

from pathlib import Path

import pytest

from tests.window.conftest import settle
from tracker.window.main_window import MainWindow
from tracker.window.take_in.line_columns import LINE_COLUMNS

pytestmark = pytest.mark.gui

_CELL = [column.key for column in LINE_COLUMNS].index("cell")


def _cells(window: MainWindow) -> list[str]:
    model = window.take_in.understood.model
    return [model.index(row, _CELL).data() for row in range(model.rowCount())]


def test_held_and_refused_lines_stand_first(real_window: MainWindow, qtbot, tmp_path: Path) -> None:
    path = tmp_path / "ostrel.csv"
    rows = [f"Fen,{'Tessel' if at == 5 else 'SBS'},{16 + at},300,{0 if at == 3 else 1216}" for at in range(7)]
    head = "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD/t\n"
    path.write_text(head + "".join(f"{row}\n" for row in rows), encoding="utf-8")
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    assert _cells(real_window) == ["E9", "E7", "E4", "E5", "E6", "E8", "E10"]
    understood = real_window.take_in.understood
    (question,) = real_window.take_in.at_hand.found.asked
    understood.questions.answered.emit(question.key, "SBS")
    settle(qtbot, real_window)
    assert _cells(real_window) == ["E7", "E4", "E5", "E6", "E8", "E9", "E10"]
    # A cell of the sheet still leads to its own line.
    real_window.take_in.sheet.view.setCurrentIndex(real_window.take_in.sheet.view.model().index(8, 4))
    assert understood.table.currentIndex().row() == 5

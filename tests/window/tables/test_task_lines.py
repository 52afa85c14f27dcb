"""Where the words and the figure of a task stand, as the room shrinks."""

import pytest
from PySide6.QtGui import QFontMetricsF

from tracker.window.tables.task_lines import lay_out

SHORT = "65.93 USD per MSF, quoted £0.389"
LONG = "Mirrowgate Board Ltd: GC1 folding boxboard, white back, 19.3 pt"
FIGURE = 60.0


@pytest.mark.gui
@pytest.mark.parametrize(
    ("text", "detail", "widest", "share", "lines", "figure_at"),
    [
        pytest.param(LONG, SHORT, LONG, 1.01, 2, 1, id="beside the detail"),
        pytest.param(SHORT, LONG, LONG, 1.01, 2, 0, id="beside the text"),
        pytest.param(SHORT, SHORT, SHORT, 1.01, 3, 2, id="below both"),
        pytest.param(SHORT, SHORT, SHORT, 0.8, 4, 3, id="each on two lines"),
    ],
)
def test_no_word_is_cut_for_the_figure(
    qapp, text: str, detail: str, widest: str, share: float, lines: int, figure_at: int
) -> None:
    width = QFontMetricsF(qapp.font()).horizontalAdvance(widest) * share
    laid = lay_out(text, detail, FIGURE, width, qapp.font())
    assert (laid.count, laid.figure_at) == (lines, figure_at)
    assert " ".join((*laid.text, *laid.detail)) == f"{text} {detail}"

"""A caption takes a low picture no more height than it has to give, and never breaks off within a sentence."""

import pytest
from PySide6.QtGui import QFontMetrics

from tests.window.conftest import settle
from tracker.window.quotes.caption import first_sentences, lines_of

pytestmark = pytest.mark.gui
SAID = "The ribbon is the band as it stood. A line joins one board's prices. 3 offers are not drawn."


@pytest.mark.parametrize(
    ("width", "lines", "shown"),
    [
        (5_000, 1, SAID),
        (5_000, 3, SAID),
        (10, 1, "The ribbon is the band as it stood.\u00a0…"),
        (10, 0, "The ribbon is the band as it stood.\u00a0…"),
    ],
)
def test_whole_sentences_as_many_as_fit(theme, qapp, width: int, lines: int, shown: str) -> None:
    assert first_sentences(SAID, QFontMetrics(qapp.font()), width, lines) == shown


def test_what_is_shown_fits_its_lines(theme, qapp) -> None:
    metrics = QFontMetrics(qapp.font())
    for width in range(260, 700, 40):
        shown = first_sentences(SAID, metrics, width, 2)
        assert lines_of(shown, metrics, width) <= 2
        assert SAID.startswith(shown.removesuffix("\u00a0…"))


def test_no_words_no_caption(theme, qapp) -> None:
    assert first_sentences("", QFontMetrics(qapp.font()), 100, 2) == ""


def test_a_low_picture_keeps_its_height_and_all_is_told_where_the_pointer_rests(window, qtbot) -> None:
    window.resize(1024, 700)
    window.go_quotes()
    picture = window.quotes.picture
    for kind in range(4):
        picture.choose(kind)
        settle(qtbot, window)
        caption = picture._caption
        shown = lines_of(caption.text(), caption.fontMetrics(), caption.width())
        assert shown <= 2 or caption.text().count(". ") == 0
        assert picture.plot.height() >= 150
        assert caption.text() == caption.whole or caption.toolTip().replace("\n", " ") == caption.whole
        button = picture._set_level
        assert button.isVisible()
        assert button.mapTo(picture, button.rect().bottomRight()).x() <= picture.width()

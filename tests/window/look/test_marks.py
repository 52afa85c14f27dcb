from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter

from tests.window.fixtures.invented_offers import comparison
from tracker.desk.standing import Standing, standing_words, standings
from tracker.trade.grades import grades
from tracker.window.look.marks import draw_mark
from tracker.window.look.palette import palette_named
from tracker.window.look.plies import draw_plies
from tracker.window.look.theme import style_sheet


def drawn(draw) -> bytes:
    image = QImage(40, 24, QImage.Format.Format_Grayscale8)
    image.fill(255)
    painter = QPainter(image)
    draw(painter, QRectF(4, 2, 32, 18))
    painter.end()
    return bytes(image.constBits())


def test_marks_differ_by_shape_alone(qapp) -> None:
    """Drawn in one colour, without hue, every mark is still its own."""
    grey = replace(palette_named("light"), slip="#333333", above="#333333", below="#333333", point="#333333")
    pictures = {mark: drawn(lambda painter, box, m=mark: draw_mark(painter, m, box, grey)) for mark in Standing}
    assert len(set(pictures.values())) == len(Standing)


def test_grades_differ_without_colour(qapp) -> None:
    pictures = {code: drawn(lambda painter, box, c=code: draw_plies(painter, c, box)) for code in grades()}
    assert len(set(pictures.values())) == len(grades())


def test_every_mark_has_words() -> None:
    market = comparison(1)
    said = {standing_words(market, 0, standing) for standing in Standing}
    assert len(said) == len(Standing)
    assert all(said)


def test_marks_repeat_the_conclusions_and_judge_nothing() -> None:
    market = comparison(2_000)
    marks = standings(market)
    assert ((marks == Standing.SLIP) == market.slip).all()
    standing_out = (marks == Standing.ABOVE) | (marks == Standing.BELOW)
    assert (standing_out == (market.out_of_line & ~market.slip)).all()
    assert (market.price[marks == Standing.ABOVE] > market.expected[marks == Standing.ABOVE]).all()
    quiet = ~market.out_of_line & ~market.slip
    assert ((marks == Standing.ESTIMATED) == (quiet & market.snapshot.estimated)).all()


def test_what_could_not_be_judged_says_so() -> None:
    market = comparison(20)
    unjudged = replace(
        market, place=np.full(20, -9, dtype=np.int32), out_of_line=np.zeros(20, bool), slip=np.zeros(20, bool)
    )
    assert (standings(unjudged) == Standing.FEW).all()


@pytest.mark.parametrize("name", ["light", "dark"])
def test_the_style_sheet_names_only_colours_that_there_are(name: str) -> None:
    sheet = style_sheet(name, 13)
    assert "@" not in sheet
    assert "font-size: 12px" in sheet

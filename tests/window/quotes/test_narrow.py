"""Nothing in Quotes or the footing line is cut to nonsense on a small screen."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QToolButton

from tests.window.conftest import PATIENCE_MS, settle
from tracker.desk.standing import standings
from tracker.window.look.figures import Units, date_text
from tracker.window.main_window import MainWindow
from tracker.window.quotes.offer_columns import offers

pytestmark = pytest.mark.gui
SIZES = [(1024, 700), (1280, 800), (1600, 1000)]


@pytest.fixture
def at_each_size(qtbot, window: MainWindow) -> Iterator[MainWindow]:
    """The window on its quotes, one size after another, its longest words in the footing line."""
    window.go_quotes()
    return _sized(qtbot, window)


def _sized(qtbot, window: MainWindow) -> Iterator[MainWindow]:
    for size in SIZES:
        window.resize(*size)
        settle(qtbot, window)
        window.footing._order.setText("order of 22.5 ST")
        window.footing._day.setText("at 24 Nov 2026, rate of 30 Oct")
        window.footing._rows.fit()
        settle(qtbot, window)
        assert window.width() == size[0]
        yield window


def test_every_control_shows_its_words_whole_and_beside_the_others(at_each_size) -> None:
    for window in at_each_size:
        footing, picture = window.footing, window.quotes.picture
        pills = [pill for pill in footing.findChildren(QToolButton) if pill.isVisible()]
        assert len(pills) == 8
        for place, pill in enumerate(pills):
            assert not any(pill.geometry().intersects(other.geometry()) for other in pills[place + 1 :])
        shown = [
            *pills,
            *footing.findChildren(QLabel),
            *picture.kinds.buttons(),
            picture._title,
            picture._unit,
            window.quotes.filters.standing_out,
        ]
        for part in shown:
            if part.isVisible():
                assert part.width() >= part.sizeHint().width(), part.text()
                assert part.mapTo(window, part.rect().topRight()).x() < window.width(), part.text()


def test_lead_time_and_last_day_are_in_view_and_only_what_needs_to_gives_way(at_each_size, qtbot) -> None:
    for window in at_each_size:
        table, across = window.quotes.table, window.quotes.table.horizontalHeader()
        keys = [column.key for column in window.quotes.model.columns]
        for grade in ("", "SBS"):
            window.quotes.rail.choose(grade)
            settle(qtbot, window)
            assert across.length() <= table.viewport().width()
            hidden = {key for place, key in enumerate(keys) if table.isColumnHidden(place)}
            assert hidden <= {"grade", "decided", "weight", "quoted"}
            if window.width() >= 1280:
                assert not hidden & {"weight", "quoted"}


def test_the_day_s_control_says_when_the_rate_is_older(window, monkeypatch) -> None:
    for on, said in ((date(2026, 10, 30), ", rate of 30 Oct"), (date(2026, 11, 23), "")):
        monkeypatch.setattr("tracker.window.footing_line.oldest_rate", lambda _, on=on: on)
        window.footing._repeat()
        assert window.footing._day.text() == f"at 24 Nov 2026{said}"


def test_the_choice_of_picture_stays_where_it_is_and_the_legend_is_whole(at_each_size, qtbot) -> None:
    for window in at_each_size:
        picture, places = window.quotes.picture, set()
        for grade in ("", "SBS"):
            window.quotes.rail.choose(grade)
            for kind in range(4):
                picture.choose(kind)
                settle(qtbot, window)
                places.add(picture.kinds.button(3).mapTo(window, picture.kinds.button(3).rect().topLeft()).y())
                legend = picture._legend
                assert all(legend._taken(line) <= legend.width() for line in legend.lines(legend.width()))
                assert legend.height() >= legend.heightForWidth(legend.width())
        assert len(places) == 1


def test_what_gave_way_is_said(window, qtbot) -> None:
    window.go_quotes()
    for size in SIZES:
        window.resize(*size)
        settle(qtbot, window)
        keys = [column.key for column in window.quotes.model.columns]
        hidden = {key for key in ("weight", "quoted") if window.quotes.table.isColumnHidden(keys.index(key))}
        said = window.quotes._narrow_note.text()
        assert ("tells basis weight" in said, "price as quoted" in said) == ("weight" in hidden, "quoted" in hidden)
        assert window.quotes._narrow_note.width() >= window.quotes._narrow_note.sizeHint().width()


def test_an_empty_picture_tells_why_in_full(window, qtbot) -> None:
    window.resize(*SIZES[0])
    window.go_quotes()
    window.quotes.filters.field.setText("nobody of this name")
    qtbot.waitUntil(lambda: window.quotes.model.rowCount() == 0, timeout=PATIENCE_MS)
    overlay = window.quotes.picture.plot._overlay
    room, _, text = overlay.nothing_told()
    assert text == "No offer here has what this picture needs: loosen the filters."
    assert overlay.rect().contains(room.toAlignedRect())
    wrapped = overlay.fontMetrics().boundingRect(room.toAlignedRect(), overlay.NOTHING_FLAGS, text)
    assert room.toAlignedRect().contains(wrapped)


def test_every_heading_is_read_whole_even_with_its_arrow(at_each_size, qtbot) -> None:
    for window in at_each_size:
        table, model = window.quotes.table, window.quotes.model
        keys, header = [column.key for column in model.columns], table.horizontalHeader()
        for sorted_by in ("expected", "price", "quoted"):
            table.sortByColumn(keys.index(sorted_by), Qt.SortOrder.DescendingOrder)
            settle(qtbot, window)
            for place, key in enumerate(keys):
                if not table.isColumnHidden(place):
                    words = model.headerData(place, Qt.Orientation.Horizontal) or ""
                    room = header.sectionSize(place) - 14 - (8 if key == sorted_by else 0)
                    assert header.fontMetrics().horizontalAdvance(words) <= room, words


def test_a_day_before_any_offer_came_is_told_with_the_first(window) -> None:
    made = window.session.comparison
    first = date.fromordinal(int(made.snapshot.received.min()))
    early = replace(
        made, shown=np.zeros(len(made.snapshot), bool), footing=replace(made.footing, as_of=first - timedelta(days=3))
    )
    said = window.quotes.picture._nothing(offers(early, standings(early), Units.US))
    assert said.startswith("No offer had come by ")
    assert said.endswith(f"; the first is of {date_text(first)}.")
    late = replace(early, footing=replace(made.footing, as_of=first + timedelta(days=3)))
    assert "show lapsed and superseded" in window.quotes.picture._nothing(offers(late, standings(late), Units.US))

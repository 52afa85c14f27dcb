"""What a buyer does with the quotes: narrow, point, go by keys, follow a price to its cell."""

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF, Qt

from tests.window.conftest import PATIENCE_MS, settle
from tracker.desk.comparison import Per
from tracker.desk.standing import Standing
from tracker.window.look.figures import Units
from tracker.window.main_window import QUOTES, SHEET, MainWindow
from tracker.window.tables.model import FAINT

pytestmark = pytest.mark.gui


@pytest.fixture
def quotes(window: MainWindow):
    window.go_quotes()
    return window.quotes


def a_point(quotes) -> tuple[int, QPointF]:
    """An offer that stands out, and where it is drawn."""
    drawing = quotes.picture.plot.drawing
    place = int(np.flatnonzero(drawing.marks == Standing.ABOVE)[0])
    across, down = quotes.picture.plot.pixels(drawing.x[[place]], drawing.y[[place]])
    return int(drawing.rows[place]), QPointF(across[0], down[0])


def test_a_click_in_the_picture_selects_the_row_and_explains_it(quotes, qtbot, window) -> None:
    quotes.rail.choose("URB")
    offer, at = a_point(quotes)
    qtbot.mouseClick(quotes.picture.plot.viewport(), Qt.MouseButton.LeftButton, pos=at.toPoint())
    settle(qtbot, window)
    assert window.session.selected == offer
    assert quotes.model.order[quotes.table.currentIndex().row()] == offer
    assert quotes.reasons._title.text() == "Why this price stands out"
    assert quotes.reasons._ladder._steps[-1].last


def test_going_down_the_table_moves_the_ring_in_the_picture(quotes, qtbot) -> None:
    quotes.table.setFocus()
    qtbot.keyClick(quotes.table, Qt.Key.Key_Down)
    qtbot.keyClick(quotes.table, Qt.Key.Key_Down)
    assert quotes.picture.plot.selected == quotes.model.order[quotes.table.currentIndex().row()]


def test_arrow_keys_walk_the_picture(quotes, qtbot) -> None:
    quotes.rail.choose("SBS")
    plot = quotes.picture.plot
    plot.setFocus()
    qtbot.keyClick(plot, Qt.Key.Key_Right)
    first = plot.selected
    qtbot.keyClick(plot, Qt.Key.Key_Right)
    assert plot.selected != first
    qtbot.keyClick(plot, Qt.Key.Key_Left)
    assert plot.selected == first
    assert quotes.model.row_of(first) == quotes.table.currentIndex().row()


def test_table_picture_and_count_show_the_same_offers(quotes, qtbot, window) -> None:
    quotes.rail.choose("CRB")
    quotes.filters.field.setText("tolmere")
    qtbot.waitUntil(lambda: 0 < quotes.model.rowCount() < 20, timeout=PATIENCE_MS)
    assert sorted(quotes.picture.plot.drawing.rows) == sorted(quotes.model.order)
    assert window.footing._count.text() == f"{quotes.model.rowCount()} of 300 offers"
    assert window.footing._count.isVisibleTo(window.footing)
    window.go_today()
    assert not window.footing._count.isVisibleTo(window.footing)


def test_a_caliper_that_is_no_number_is_marked_and_filters_nothing(quotes, qtbot) -> None:
    quotes.filters._low.setText("thick")
    qtbot.wait(200)
    assert quotes.filters._low.property("wrong") == "true"
    assert quotes.model.rowCount() == 300


def test_calipers_are_typed_in_the_users_units(quotes, qtbot, window) -> None:
    window.session.choose_units(Units.METRIC)
    quotes.filters._low.setText("700")
    qtbot.waitUntil(lambda: quotes.model.rowCount() < 300, timeout=PATIENCE_MS)
    assert window.session.comparison.snapshot.caliper_um[quotes.model.order].min() > 699


def test_the_footing_is_said_in_heading_and_picture(quotes, qtbot, window) -> None:
    heading = [column.key for column in quotes.model.columns].index("price")
    assert quotes.model.headerData(heading, Qt.Orientation.Horizontal) == "USD per MSF"
    qtbot.keyClick(window, Qt.Key.Key_M, Qt.KeyboardModifier.ControlModifier)
    settle(qtbot, window)
    assert window.session.footing.per is Per.TONNE
    assert quotes.model.headerData(heading, Qt.Orientation.Horizontal) == "USD per tonne"
    assert quotes.picture._unit.text() == "USD per tonne"
    assert window.footing._per.text() == "per tonne"


def test_a_selected_offer_stays_selected_on_another_footing(quotes, qtbot, window) -> None:
    window.session.select_offer(17)
    window.switches.switch_per()
    settle(qtbot, window)
    assert window.session.selected == 17
    assert quotes.model.order[quotes.table.currentIndex().row()] == 17


def test_enter_shows_the_vendors_sheet_and_escape_comes_back(quotes, qtbot, window) -> None:
    window.session.select_offer(3)
    assert window.session.comparison.snapshot.cell[3] == "F8"
    quotes.table.setFocus()
    qtbot.keyClick(quotes.table, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.stack.currentIndex() == SHEET
    at = window.sheet.sheet.view.currentIndex()
    assert (at.row(), at.column()) == (7, 5)
    qtbot.keyClick(window.sheet, Qt.Key.Key_Escape)
    assert window.stack.currentWidget() is quotes


def test_every_picture_draws_light_and_dark(quotes, window) -> None:
    for name in ("dark", "light"):
        window.session.theme.choose(name)
        for kind in range(3):
            quotes.picture.choose(kind)
            assert len(quotes.picture.plot.drawing.rows)


def test_choosing_vendors_says_how_many(quotes) -> None:
    assert quotes.filters._vendors.text() == "all 9 vendors"
    quotes.filters.choose_vendors(frozenset({"Ulverby", "Marrowdene"}))
    assert quotes.filters._vendors.text() == "2 of 9"
    assert {"Ulverby", "Marrowdene"} == {quotes._offers.name("vendor", int(row)) for row in quotes.model.order}


def test_sorting_by_price(quotes, window) -> None:
    column = [each.key for each in quotes.model.columns].index("price")
    quotes.table.sortByColumn(column, Qt.SortOrder.DescendingOrder)
    prices = window.session.comparison.price[quotes.model.order]
    assert (np.diff(prices) <= 0).all()


def test_the_picture_is_saved_as_png_and_svg(quotes, tmp_path) -> None:
    from tracker.window.quotes.save_picture import to_save

    assert "is in" in to_save(quotes.picture, tmp_path / "prices.png")()
    assert "is in" in to_save(quotes.picture, tmp_path / "prices.svg")()
    assert (tmp_path / "prices.png").read_bytes().startswith(b"\x89PNG")
    assert b"<svg" in (tmp_path / "prices.svg").read_bytes()
    assert "could not be written" in to_save(quotes.picture, tmp_path / "nowhere" / "prices.png")()


def test_a_saved_picture_shows_nothing_to_press_and_says_what_its_prices_mean(quotes, tmp_path) -> None:
    from tracker.window.quotes.save_picture import to_save

    picture = quotes.picture
    to_save(picture, tmp_path / "prices.svg")()
    saved = (tmp_path / "prices.svg").read_text(encoding="utf-8")
    assert "By caliper" not in saved
    assert "Set the level" not in saved
    assert "Every price: per 1,000 ft" in saved
    # Sharp at any size: words and marks are shapes, only the ground is a picture.
    assert saved.count("<image") <= 1
    assert not picture._switch.isHidden()
    assert not picture._set_level.isHidden()


def test_offers_that_a_picture_has_no_place_for_are_counted(quotes, qtbot, window) -> None:
    snapshot = window.session.comparison.snapshot
    shown = quotes.model.order
    snapshot.caliper_um[shown[:3]] = np.nan
    quotes._show_rows(fresh=True)
    settle(qtbot, window)
    known = np.isfinite(snapshot.caliper_um[shown]) & np.isfinite(window.session.comparison.price[shown])
    assert f"{int((~known).sum())} offers not drawn: no caliper" in quotes.picture._caption.whole


def test_the_card_at_the_pointer_stays_inside_a_small_picture(quotes, window, qtbot) -> None:
    window.resize(1024, 700)
    plot = quotes.picture.plot
    cards = []
    for place in (int(plot.drawing.x.argmin()), int(plot.drawing.x.argmax()), int(plot.drawing.y_shown.argmin())):
        plot._overlay.hover(place)
        cards.append(plot._overlay.card_box(plot.drawing))
    inside = QRectF(plot._overlay.rect())
    assert all(inside.contains(card) for card in cards)


def test_the_words_at_the_band_keep_off_the_points(quotes, window) -> None:
    quotes.rail.choose("SBS")
    plot = quotes.picture.plot
    overlay, drawing, nothing = plot._overlay, plot.drawing, slice(0)
    points = {name: getattr(drawing, name)[nothing] for name in ("rows", "x", "y", "marks")}
    (before,) = overlay._note_boxes(replace(drawing, **points))
    middle = plot.mapToScene(int(before.x + before.width / 2), int(before.y + before.height / 2))
    moved = replace(drawing, x=drawing.x.copy(), y=drawing.y.copy())
    moved.x[0], moved.y[0] = plot.getViewBox().mapSceneToView(middle).toTuple()
    (after,) = overlay._note_boxes(moved)
    assert after.y > before.y


def test_the_data_behind_the_picture_is_saved_with_the_cell_of_every_price(quotes, tmp_path, window) -> None:
    import csv

    from tracker.window.quotes.save_picture import to_save

    quotes.rail.choose("SBS")
    path = tmp_path / "prices.csv"
    assert "is in" in to_save(quotes.picture, path)()
    rows = list(csv.DictReader(path.read_text(encoding="utf-8-sig").splitlines()))
    drawing = quotes.picture.plot.drawing
    assert len(rows) == len(drawing.rows) > 0
    first = int(drawing.rows[0])
    snapshot = window.session.comparison.snapshot
    price = window.session.comparison.price[first]
    assert (rows[0]["cell"], float(rows[0]["price"])) == (snapshot.cell[first], pytest.approx(price, rel=1e-5))
    assert {row["beside_band"] for row in rows} <= {"below", "within", "above", ""}
    above = sum(row["beside_band"] == "above" for row in rows)
    told = f"{above} {'lies' if above == 1 else 'lie'} above the band"
    assert (told in quotes.picture._caption.whole) is bool(above)
    assert {row["unit"] for row in rows} == {"USD per MSF"}
    assert "can't be written" in to_save(quotes.picture, tmp_path / "nowhere" / "prices.csv")()


def test_over_time_is_per_tonne_where_thick_and_thin_would_stand_side_by_side(quotes, window) -> None:
    quotes.rail.choose("SBS")
    quotes.picture.choose(3)
    drawing, comparison = quotes.picture.plot.drawing, window.session.comparison
    assert quotes.picture._unit.text() == "USD per tonne"
    assert (drawing.y == comparison.per_tonne[drawing.rows]).all()
    assert [words for _, words in drawing.x_ticks] == ["Nov 2026", "Dec 2026"]


def test_the_way_from_the_band_to_its_level(quotes, qtbot, window) -> None:
    quotes.rail.choose("FBB")
    qtbot.mouseClick(quotes.picture._set_level, Qt.MouseButton.LeftButton)
    assert window.stack.currentWidget() is window.reference
    assert window.reference._grade == "FBB"


def test_what_stands_out_comes_first(quotes, window) -> None:
    marks = window.session.marks[quotes.model.order]
    assert marks[0] == Standing.SLIP
    assert (np.diff(marks) >= 0).all()


def test_going_to_the_table_explains_its_first_offer(quotes, window) -> None:
    assert window.session.selected == quotes.model.order[0]


def test_without_a_choice_the_panel_offers_what_stands_out(qtbot, window) -> None:
    window.go(QUOTES)
    listing = window.quotes.reasons._standing_out
    assert listing.isVisible()
    assert [task.target for task in listing.tasks] == list(window.session.todays.out_of_line)
    listing.setFocus()
    qtbot.keyClick(listing, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.session.selected == listing.tasks[0].target
    assert not listing.isVisible()


def test_a_price_of_another_grade_that_stands_out_is_brought_in_view(qtbot, window) -> None:
    window.go(QUOTES)
    listing, snapshot = window.quotes.reasons._standing_out, window.session.comparison.snapshot
    offer = listing.tasks[0].target
    own = snapshot.grades[snapshot.grade[offer]]
    window.quotes.rail.choose(next(grade for grade in snapshot.grades if grade != own))
    settle(qtbot, window)
    assert window.quotes.model.row_of(offer) is None
    listing.setFocus()
    qtbot.keyClick(listing, Qt.Key.Key_Return)
    settle(qtbot, window)
    assert window.session.selected == offer
    assert window.quotes.model.row_of(offer) is not None


def test_offers_that_no_longer_count_step_back(quotes, qtbot, window) -> None:
    market = window.session.comparison
    window.session.show_comparison(replace(market, current=np.arange(300) >= 150))
    settle(qtbot, window)
    faint = [bool(quotes.model.index(row, 2).data(FAINT)) for row in range(300)]
    assert faint == [bool(row < 150) for row in quotes.model.order]
    assert (quotes.picture.plot.drawing.faint == (quotes.picture.plot.drawing.rows < 150)).all()


def test_a_board_without_a_name_is_called_by_its_grade_and_a_verdict_stands_apart(quotes, window) -> None:
    market = window.session.comparison
    row = int(quotes.model.order[0])
    names = ["" if place == row else name for place, name in enumerate(market.snapshot.product)]
    snapshot = replace(market.snapshot, product=names)
    window.session.show_comparison(replace(market, snapshot=snapshot))
    keys = [column.key for column in quotes.model.columns]
    place = quotes.model.row_of(row)
    text = quotes.model.index(place, keys.index("board")).data()
    assert text.startswith(window.session.comparison.snapshot.grades[snapshot.grade[row]])
    assert quotes.table.isColumnHidden(keys.index("decided")) is not bool(market.board_verdicts)


def test_the_panel_lets_go_of_an_offer_that_the_filters_hide_and_takes_it_up_again(quotes, qtbot, window) -> None:
    offer = int(quotes.model.order[3])
    window.session.select_offer(offer)
    settle(qtbot, window)
    assert quotes.reasons._body.isVisible()
    quotes.filters.field.setText("nobody of this name")
    qtbot.waitUntil(lambda: quotes.model.rowCount() == 0, timeout=PATIENCE_MS)
    assert window.session.selected == -1
    assert not quotes.reasons._body.isVisible()
    assert quotes.reasons._standing_out.isVisible()
    quotes.filters.field.clear()
    qtbot.waitUntil(lambda: quotes.model.rowCount() == 300, timeout=PATIENCE_MS)
    assert window.session.selected == offer
    assert quotes.model.order[quotes.table.currentIndex().row()] == offer


def test_the_picture_of_many_offers_waits_for_a_turn_of_its_own(quotes, monkeypatch, qtbot) -> None:
    before = quotes.picture.plot.drawing
    quotes.rail.choose("SBS")
    few = quotes.picture.plot.drawing
    assert few is not before
    monkeypatch.setattr("tracker.window.quotes.place._MANY", 10)
    quotes.rail.choose("")
    assert len(quotes.model.order) > len(few.rows)
    assert quotes.picture.plot.drawing is few
    qtbot.waitUntil(lambda: len(quotes.picture.plot.drawing.rows) > len(few.rows))


def test_a_picture_is_drawn_at_once_and_written_when_asked(quotes, tmp_path) -> None:
    from tracker.window.quotes.save_picture import to_save

    paths = [tmp_path / f"prices.{ending}" for ending in ("png", "svg", "csv")]
    writings = [to_save(quotes.picture, path) for path in paths]
    assert not any(path.exists() for path in paths)
    drawn = len(quotes.picture.plot.drawing.rows)
    quotes.rail.choose("SBS")
    assert all(f"in {path}." in write() for write, path in zip(writings, paths, strict=True))
    assert len(paths[2].read_text(encoding="utf-8-sig").splitlines()) == drawn + 1

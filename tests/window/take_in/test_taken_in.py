"""What is seen once offers are stored: the new ones, and of a list that has run out, that it has."""

from pathlib import Path

import numpy as np
import pytest
from PySide6.QtWidgets import QPushButton

from tests.window.conftest import settle
from tracker.window.main_window import QUOTES, MainWindow
from tracker.window.quotes.offer_columns import OFFER_COLUMNS
from tracker.window.take_in.file_at_hand import lapsed_words

pytestmark = pytest.mark.gui

_HEAD = "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD/t,Valid until\n"


def _read(window: MainWindow, qtbot, tmp_path: Path, name: str, vendor: str, *rows: str) -> None:
    path = tmp_path / name
    path.write_text(f"{vendor},,,,,\n\n{_HEAD}" + "".join(f"{row}\n" for row in rows), encoding="utf-8")
    window.take_in_files([path])
    settle(qtbot, window)


def _take_in(window: MainWindow, qtbot) -> None:
    window.take_in.agree.click()
    settle(qtbot, window)


def test_offers_that_have_lapsed_are_told_and_where_they_are_shown(real_window: MainWindow, qtbot, tmp_path) -> None:
    rows = ("Fenlight,SBS,16,300,1216,2020-03-31", "Fenlight,SBS,18,335,1218,2020-03-31")
    _read(real_window, qtbot, tmp_path, "old.csv", "Ostrel Karton Ltd", *rows)
    assert "All 2 have lapsed" in real_window.take_in.foot.told.text()
    _take_in(real_window, qtbot)
    assert "Took in 2 offers from old.csv. All 2 have lapsed" in real_window.message.text
    assert "lapsed and replaced ones too" in real_window.message.text
    assert real_window.message._action.text() == "Undo"
    assert real_window.session.undo_stack.undoText() == "took in 2 offers from old.csv"
    _read(real_window, qtbot, tmp_path, "new.csv", "Ostrel Karton Ltd", "Dusk,URB,20,400,630,2099-12-31")
    assert "lapsed" not in real_window.take_in.foot.told.text()
    _take_in(real_window, qtbot)
    assert "lapsed" not in real_window.message.text


def test_how_many_have_lapsed_in_words() -> None:
    assert lapsed_words(1, 1).startswith("It has lapsed: Quotes shows it among")
    assert lapsed_words(1, 4).startswith("1 of them has lapsed: Quotes shows it among")
    assert lapsed_words(3, 4).startswith("3 of them have lapsed: Quotes shows them among")


def test_the_new_offers_are_gone_to_though_another_was_chosen_and_filters_hid_them(
    real_window: MainWindow, qtbot, tmp_path
) -> None:
    window = real_window
    _read(window, qtbot, tmp_path, "first.csv", "Ostrel Karton Ltd", "Fenlight,SBS,16,300,1216,2099-12-31")
    _take_in(window, qtbot)
    old = window.session.selected
    assert old >= 0
    window.quotes.filters.field.setText("Fenlight")
    window.quotes.filters.changed.emit()
    _read(window, qtbot, tmp_path, "second.csv", "Skarvik Board Ltd", "Dusk,URB,20,400,630,2099-12-31")
    _take_in(window, qtbot)
    assert window.stack.currentIndex() == QUOTES
    snapshot = window.session.comparison.snapshot
    assert snapshot.product[window.session.selected] == "Dusk"
    assert window.quotes.filters.field.text() == ""
    # What is chosen afterwards stays chosen when all is read anew.
    window.session.select_offer(snapshot.product.index("Fenlight"))
    window.session.reload()
    settle(qtbot, window)
    assert window.session.comparison.snapshot.product[window.session.selected] == "Fenlight"


def test_a_price_is_off_from_others_only_where_there_are_others(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    rows = [f"Fenlight,SBS,{16 + 2 * at},{300 + 30 * at},{1216 - 4 * at},2099-12-31" for at in range(4)]
    _read(window, qtbot, tmp_path, "first.csv", "Ostrel Karton Ltd", *rows)
    _take_in(window, qtbot)
    column = next(each for each in OFFER_COLUMNS if each.key == "expected")
    offers = window.quotes._offers
    assert np.isfinite(offers.of_expected).all(), "the band of its own prices would give a figure"
    assert {column.text(offers, row) for row in range(4)} == {"–"}
    assert "No other vendor offers SBS" in column.tip(offers, 0)
    _read(window, qtbot, tmp_path, "second.csv", "Skarvik Board Ltd", "Mist,SBS,18,330,1230,2099-12-31")
    _take_in(window, qtbot)
    offers = window.quotes._offers
    assert all(column.text(offers, row).endswith(" %") for row in range(5))
    assert column.tip(offers, 0) in (
        "Compared with 1 offer of other vendors for SBS", "Compared with 4 offers of other vendors for SBS",
    )  # fmt: skip


def _of_some_ton(folder: Path) -> Path:
    """A list whose ton is a question."""
    path = folder / "ostrel.csv"
    path.write_text(
        "Ostrel Karton Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,ton\n",
        encoding="utf-8",
    )
    return path


def _with_short_tons(window: MainWindow, qtbot, tmp_path: Path) -> Path:
    """Reads that list and answers its question."""
    path = _of_some_ton(tmp_path)
    window.take_in_files([path])
    settle(qtbot, window)
    _press(window, qtbot, "short ton")
    return path


def test_undoing_an_answer_given_anew_keeps_the_words_it_answered(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    path = _with_short_tons(window, qtbot, tmp_path)
    _take_in(window, qtbot)
    remembered = window.session.door.remembered
    before = [(each.value, each.words) for each in remembered()]
    assert before == [("short", "ton")]
    window.take_in_files([path])
    settle(qtbot, window)
    window.take_in.foot.anew.click()
    settle(qtbot, window)
    _press(window, qtbot, "Change:")
    _press(window, qtbot, "tonne")
    _take_in(window, qtbot)
    window.steps.undo()
    settle(qtbot, window)
    assert [(each.value, each.words) for each in remembered()] == before


def test_what_was_undone_is_one_sentence(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = real_window
    _with_short_tons(window, qtbot, tmp_path)
    window.steps.undo()
    settle(qtbot, window)
    assert window.message.text == "Undone: answered that the ton is a short ton (2,000 lb)"


def _press(window: MainWindow, qtbot, words: str) -> None:
    buttons = window.take_in.understood.questions.findChildren(QPushButton)
    next(each for each in buttons if words in each.text() or words in each.accessibleName()).click()
    settle(qtbot, window)

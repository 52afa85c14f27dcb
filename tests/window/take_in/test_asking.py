"""What a sheet leaves open is asked so that a person answers all of it by keyboard, and nothing odd is taken."""

from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton

from tests.window.conftest import settle
from tracker.window.main_window import QUOTES, TODAY, MainWindow
from tracker.window.take_in.question_card import QuestionCard

pytestmark = pytest.mark.gui

_BOARDS = ("Fenlight", "Harrow", "Quill", "Marl", "Thistle", "Copse", "Sedge", "Larch")


@pytest.fixture
def eight_questions(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A sheet that asks for the grade of each of its eight boards."""
    real_window.take_in_files([sheet_of_boards(tmp_path / "ostrel.csv")])
    settle(qtbot, real_window)
    return real_window


def sheet_of_boards(path: Path, first_price: int = 1210) -> Path:
    """A sheet of eight boards that does not say their grades."""
    rows = [f"{board} {16 + at},{16 + at},{300 + 10 * at},{first_price + at},tonne" for at, board in enumerate(_BOARDS)]
    head = "Ostrel Karton Ltd,,,,\n\nBoard,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
    path.write_text(head + "\n".join(rows) + "\n", encoding="utf-8")
    return path


@pytest.fixture
def nameless(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A sheet that names nobody."""
    return _read(
        real_window,
        qtbot,
        tmp_path / "list.csv",
        "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,tonne\nFenlight 18,SBS,18,335,1218,tonne\n",
    )


def _read(window: MainWindow, qtbot, path: Path, text: str) -> MainWindow:
    path.write_text(text, encoding="utf-8")
    window.take_in_files([path])
    settle(qtbot, window)
    return window


def _press(qtbot, window: MainWindow, key: Qt.Key) -> None:
    at = QApplication.focusWidget()
    qtbot.waitUntil(lambda: not (isinstance(at, QuestionCard) and at._too_soon))
    qtbot.keyClick(at, key)
    settle(qtbot, window)


def _card_in_focus() -> QuestionCard:
    at = QApplication.focusWidget()
    while not isinstance(at, QuestionCard):
        at = at.parentWidget()
    return at


def test_each_answer_leads_to_the_next_question_in_view(eight_questions: MainWindow, qtbot) -> None:
    window, pane = eight_questions, eight_questions.take_in.understood.questions
    asked = []
    for _ in _BOARDS:
        card = _card_in_focus()
        asked.append(card.question.key)
        assert QApplication.focusWidget() is card
        assert card.visibleRegion().boundingRect() == card.rect()
        _press(qtbot, window, Qt.Key.Key_1)
    assert asked == [f"grade:{board.casefold()} {16 + at}" for at, board in enumerate(_BOARDS)]
    assert not any(card.isVisible() for card in pane.findChildren(QuestionCard))
    assert QApplication.focusWidget() is window.take_in.understood.table
    qtbot.keyClick(window.take_in, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    settle(qtbot, window)
    assert window.stack.currentIndex() == QUOTES
    assert len(window.session.comparison.snapshot) == len(_BOARDS)


def test_enter_answers_nothing_unread(eight_questions: MainWindow, qtbot) -> None:
    for key in (Qt.Key.Key_Return, Qt.Key.Key_Return, Qt.Key.Key_Space, Qt.Key.Key_9):
        _press(qtbot, eight_questions, key)
    assert eight_questions.take_in.at_hand.given == {}
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert QApplication.focusWidget().text() == "①  SBS · Solid bleached sulphate"
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Backtab, Qt.KeyboardModifier.ShiftModifier)
    assert QApplication.focusWidget() is eight_questions.take_in.sheet.view, "questions come after the sheet"
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    _press(qtbot, eight_questions, Qt.Key.Key_Return)
    assert list(eight_questions.take_in.at_hand.given) == ["grade:fenlight 16"]


def test_a_number_pressed_once_too_often_answers_nothing_unread(eight_questions: MainWindow, qtbot) -> None:
    _press(qtbot, eight_questions, Qt.Key.Key_2)
    card = _card_in_focus()
    card.begin()
    qtbot.keyClick(card, Qt.Key.Key_1)
    assert eight_questions.take_in.at_hand.given == {"grade:fenlight 16": "CUK"}
    _press(qtbot, eight_questions, Qt.Key.Key_6)
    assert eight_questions.take_in.at_hand.given == {"grade:fenlight 16": "CUK", "grade:harrow 17": "FBB"}


def test_a_key_held_down_answers_one_question(eight_questions: MainWindow, qtbot) -> None:
    card = _card_in_focus()
    qtbot.waitUntil(lambda: not card._too_soon)
    repeated = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_1, Qt.KeyboardModifier.NoModifier, "1", autorep=True)
    QApplication.sendEvent(card, repeated)
    settle(qtbot, eight_questions)
    assert eight_questions.take_in.at_hand.given == {}


def test_a_question_may_be_answered_later_and_the_next_one_follows(eight_questions: MainWindow, qtbot) -> None:
    cards = eight_questions.take_in.understood.questions._asked
    cards[3].findChild(QPushButton).setFocus()
    _press(qtbot, eight_questions, Qt.Key.Key_Space)
    assert _card_in_focus().question.key == f"grade:{_BOARDS[4].casefold()} 20"


def test_an_answer_keeps_the_vendors_capitals(eight_questions: MainWindow, qtbot) -> None:
    _press(qtbot, eight_questions, Qt.Key.Key_1)
    names = [each.accessibleName() for each in eight_questions.take_in.understood.questions.findChildren(QPushButton)]
    assert "Change: “Fenlight 16” is SBS." in names


def test_a_word_that_is_no_currency_is_refused_beside_the_field(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = _read(
        real_window,
        qtbot,
        tmp_path / "ostrel.csv",
        "Ostrel Karton Ltd,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price,Unit\n"
        "Fenlight 16,SBS,16,300,1216,tonne\n",
    )
    card = _card_in_focus()
    # Letters typed on the card go to its field.
    qtbot.keyClick(card, "c")
    field = QApplication.focusWidget()
    assert isinstance(field, QLineEdit)
    qtbot.keyClicks(field, "rowns")
    _press(qtbot, window, Qt.Key.Key_Return)
    assert field.text() == "crowns"
    assert field.hasFocus()
    assert card._wrong.label.isVisible()
    assert card._wrong.label.text() == "“crowns” is no currency: write its three letters, such as USD or EUR."
    assert window.take_in.at_hand.given == {}
    qtbot.keyClicks(field, "sek")
    _press(qtbot, window, Qt.Key.Key_Return)
    assert window.take_in.at_hand.taken.reading.lines[0].offer.currency == "SEK"


def test_a_sheet_without_a_vendor_waits_for_its_name(nameless: MainWindow, qtbot) -> None:
    take_in = nameless.take_in
    assert not take_in.agree.isEnabled()
    assert "whose sheet" in take_in.foot.told.text()
    assert take_in.understood.vendor.isVisible()
    assert QApplication.focusWidget() is take_in.understood.vendor.naming.field
    qtbot.keyClicks(QApplication.focusWidget(), "Ferrowick  Mills")
    _press(qtbot, nameless, Qt.Key.Key_Return)
    assert take_in.understood.whose.label.text() == "From Ferrowick Mills"
    assert take_in.understood.vendor.isHidden()
    take_in.agree.click()
    settle(qtbot, nameless)
    assert nameless.session.comparison.snapshot.vendors == ["Ferrowick Mills"]


def test_the_first_line_of_a_sheet_may_be_its_vendor_if_the_user_says_so(real_window, qtbot, tmp_path) -> None:
    window = _read(
        real_window,
        qtbot,
        tmp_path / "tillerow.csv",
        "Tillerow Orvane\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,tonne\n",
    )
    card = window.take_in.understood.vendor
    assert card.suggested.text() == "It is “Tillerow Orvane”"
    assert window.take_in.at_hand.given == {}
    card.suggested.click()
    settle(qtbot, window)
    assert window.take_in.at_hand.given == {"vendor": "Tillerow Orvane"}
    assert card.isHidden()


def test_words_that_stand_by_themselves_below_a_dated_title_are_suggested(real_window, qtbot, tmp_path) -> None:
    window = _read(
        real_window,
        qtbot,
        tmp_path / "dated.csv",
        "Offer,18 November 2026\nTillerow Orvane\n\n"
        "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\nFenlight 16,SBS,16,300,1216,tonne\n",
    )
    assert "Tillerow Orvane" in window.take_in.at_hand.taken.reading.letterhead
    assert window.take_in.understood.vendor.suggested.text() == "It is “Tillerow Orvane”"


def test_without_a_name_it_is_taken_in_only_by_choice_which_can_be_undone(nameless: MainWindow, qtbot) -> None:
    take_in = nameless.take_in
    qtbot.mouseClick(take_in.understood.vendor.nameless, Qt.MouseButton.LeftButton)
    assert take_in.agree.isEnabled()
    nameless.steps.undo()
    assert not take_in.agree.isEnabled()
    assert take_in.understood.vendor.isVisible()
    nameless.steps.redo()
    take_in.understood.whose.change.click()
    assert not take_in.agree.isEnabled()
    take_in.understood.vendor.nameless.click()
    take_in.agree.click()
    settle(qtbot, nameless)
    assert nameless.session.comparison.snapshot.vendors == []


@pytest.mark.parametrize(
    ("typed", "named"), [("ferrowick mills", "Ferrowick Mills LLC"), ("Ferowick Mills", None), ("Pellmoor", "Pellmoor")]
)
def test_a_known_vendor_is_meant_whatever_its_legal_form(nameless: MainWindow, qtbot, typed: str, named) -> None:
    naming = nameless.take_in.understood.vendor.naming
    naming.know(("Ferrowick Mills LLC", "Ostrel Karton Ltd"))
    qtbot.keyClicks(naming.field, typed)
    naming.field.completer().popup().hide()
    _press(qtbot, nameless, Qt.Key.Key_Return)
    if named is None:
        assert nameless.take_in.at_hand.given == {}
        assert QApplication.focusWidget().text() == "Ferrowick Mills LLC"
        _press(qtbot, nameless, Qt.Key.Key_Return)
        named = "Ferrowick Mills LLC"
    assert nameless.take_in.at_hand.given == {"vendor": named}


def test_a_new_vendor_with_a_name_like_a_known_one_can_be_insisted_on(nameless: MainWindow, qtbot) -> None:
    naming = nameless.take_in.understood.vendor.naming
    naming.know(("Ferrowick Mills LLC",))
    naming.field.setText("Ferrowick Mill")
    naming.take.click()
    next(each for each in naming.findChildren(QPushButton) if each.text().startswith("No, ")).click()
    settle(qtbot, nameless)
    assert nameless.take_in.at_hand.given == {"vendor": "Ferrowick Mill"}


def test_what_holds_of_every_line_is_told_once(real_window: MainWindow, qtbot, tmp_path) -> None:
    window = _read(
        real_window,
        qtbot,
        tmp_path / "ostrel.csv",
        "Ostrel Karton Ltd,,,,,\nOffer valid until further notice,,,,,\n\n"
        "Board,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Fenlight 16,SBS,16,300,1216,tonne\nFenlight 18,SBS,18,335,1218,tonne\n",
    )
    understood = window.take_in.understood
    assert "further notice" in understood.told_once.text()
    assert understood.told_once.isVisible()
    keys = [column.key for column in understood.model.columns]
    assert understood.table.isColumnHidden(keys.index("notes"))


def test_a_file_that_cant_be_read_is_one_message_and_a_way_back(real_window: MainWindow, qtbot, tmp_path) -> None:
    path = tmp_path / "prices.xlsx"
    path.write_bytes(b"\x00\x01nothing of a workbook" * 20)
    real_window.take_in_files([path])
    settle(qtbot, real_window)
    take_in = real_window.take_in
    assert "prices.xlsx" in take_in.unreadable.why.text()
    assert take_in.unreadable.isVisible()
    for part in (take_in.sheet, take_in.agree, take_in.understood.table, take_in.understood.vendor):
        assert not part.isVisible()
    assert take_in.leave.text() == "Back"
    assert QApplication.focusWidget() is take_in.leave
    _press(qtbot, real_window, Qt.Key.Key_Space)
    assert real_window.stack.currentIndex() == TODAY


def test_the_cell_that_is_asked_about_is_in_view_with_the_one_beside_it(eight_questions: MainWindow, qtbot) -> None:
    eight_questions.resize(1280, 800)
    view = eight_questions.take_in.sheet.view
    view.horizontalScrollBar().setValue(0)
    _press(qtbot, eight_questions, Qt.Key.Key_1)
    price = view.model().index(4, 3)
    assert view.currentIndex() == price
    for seen in (price, price.siblingAtColumn(4)):
        assert view.viewport().rect().contains(view.visualRect(seen))

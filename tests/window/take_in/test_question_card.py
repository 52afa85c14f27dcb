"""A question's card takes no answer that is not of its kind."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton

from tracker.trade.offer import Choice, NoteCode, Question
from tracker.window.take_in.question_card import QuestionCard

OPEN = Question("currency:", NoteCode.CURRENCY_UNKNOWN, "Nothing says in which currency the prices are.", "", ())
CROWNS = Question(
    "currency:kr/mt", NoteCode.CURRENCY_UNKNOWN, "Which currency is “kr/MT”?", "kr/MT",
    tuple(Choice(code, code) for code in ("DKK", "NOK", "SEK")),
)  # fmt: skip


def card_of(qtbot, question):
    card = QuestionCard(question)
    qtbot.addWidget(card)
    given = []
    card.answered.connect(lambda key, value: given.append((key, value)))
    return card, given


def test_what_is_no_currency_stays_in_the_field_and_is_told(qtbot) -> None:
    card, given = card_of(qtbot, OPEN)
    field = card.findChild(QLineEdit)
    qtbot.keyClicks(field, "crowns")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert given == []
    assert field.text() == "crowns"
    assert "“CROWNS” is no currency" in card._wrong.label.text()
    assert not card._wrong.label.isHidden()
    field.clear()
    qtbot.keyClicks(field, "sek")
    assert card._wrong.label.isHidden()
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert given == [("currency:", "SEK")]


def test_what_the_words_leave_open_are_buttons(qtbot) -> None:
    card, given = card_of(qtbot, CROWNS)
    assert card.findChild(QLineEdit) is None
    next(each for each in card.findChildren(QPushButton) if each.accessibleName() == "NOK").click()
    assert given == [("currency:kr/mt", "NOK")]

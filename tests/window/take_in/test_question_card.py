"""A question's card takes no answer that is not of its kind."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton

from tracker.trade.offer import Choice, NoteCode, Question
from tracker.window.look.figures import Units
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
    assert "“crowns” is no currency" in card._wrong.label.text()
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


SIZE = Question("bracket:1 truck", NoteCode.BRACKET_UNREAD, "For what weight of order does “1 truck” stand?", "", ())


def test_an_order_size_is_typed_in_the_buyers_own_unit_and_said_back(qtbot) -> None:
    card, given = card_of(qtbot, SIZE)
    field = card.findChild(QLineEdit)
    qtbot.keyClicks(field, "20 tons")
    assert card._meant.text() == "An order from 18,144 kg (40,000 lb)"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    field.clear()
    qtbot.keyClicks(field, "5-10 t")
    assert card._meant.text() == "An order from 5,000 kg (11,023 lb) below 10,000 kg (22,046 lb)"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert given == [("bracket:1 truck", "18143.6948:"), ("bracket:1 truck", "5000:10000")]


def test_a_ton_typed_is_that_of_the_units_chosen(qtbot) -> None:
    card = QuestionCard(SIZE, units=Units.METRIC)
    qtbot.addWidget(card)
    field = card.findChild(QLineEdit)
    qtbot.keyClicks(field, "20 tons")
    assert card._meant.text() == "An order from 20,000 kg (44,092 lb)"


def test_a_figure_without_a_unit_is_no_order_size(qtbot) -> None:
    card, given = card_of(qtbot, SIZE)
    field = card.findChild(QLineEdit)
    qtbot.keyClicks(field, "5000")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert given == []
    assert card._wrong.label.text().startswith("“5000” is no order size: write 5 tons, 10,000 lb")


def test_the_usual_currencies_are_buttons_beside_the_field(qtbot) -> None:
    card, given = card_of(qtbot, OPEN)
    next(each for each in card.findChildren(QPushButton) if each.accessibleName() == "CAD").click()
    card.begin()
    qtbot.wait(350)
    qtbot.keyClick(card, "2")
    qtbot.keyClick(card, "j")
    field = card.findChild(QLineEdit)
    qtbot.keyClicks(field, "py")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert given == [("currency:", "CAD"), ("currency:", "EUR"), ("currency:", "JPY")]


def test_the_tenth_answer_has_a_key_too(qtbot) -> None:
    units = tuple(Choice(f"unit{number}", f"unit {number}") for number in range(1, 12))
    card, given = card_of(qtbot, Question("basis:", NoteCode.BASIS_UNKNOWN, "What are the prices per?", "", units))
    labels = [each.text() for each in card.findChildren(QPushButton)]
    assert {"①  unit 1", "⓪  unit 10", "unit 11"} <= set(labels)
    qtbot.keyClick(card, "0")
    qtbot.keyClick(card, "9")
    assert given == [("basis:", "unit10"), ("basis:", "unit9")]

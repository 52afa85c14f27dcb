"""A sheet left half answered is not lost: something leads back, and its answers are there."""

import gc
import shutil
from pathlib import Path
from weakref import ref

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton

from tests.window.conftest import settle
from tests.window.fixtures.invented_sheet import taken
from tests.window.take_in.test_asking import sheet_of_boards
from tracker.trade.offer import Answers
from tracker.window.door import Door
from tracker.window.main_window import QUOTES, TAKE_IN, MainWindow
from tracker.window.settings import Settings
from tracker.window.take_in.begun_files import BegunFiles, BegunSheet
from tracker.window.take_in.file_at_hand import FileAtHand

pytestmark = pytest.mark.gui


@pytest.fixture
def half_answered(real_window: MainWindow, qtbot, tmp_path: Path) -> MainWindow:
    """A sheet with one of its eight questions answered."""
    real_window.take_in_files([sheet_of_boards(tmp_path / "ostrel.csv")])
    settle(qtbot, real_window)
    real_window.take_in.understood.questions._asked[0].findChild(QPushButton).click()
    settle(qtbot, real_window)
    return real_window


def _answers(window: MainWindow) -> dict[str, str]:
    return window.take_in.at_hand.given


def test_a_sheet_that_is_left_is_led_back_to_and_goes_on(half_answered: MainWindow, qtbot) -> None:
    window = half_answered
    assert window.bar.back.isHidden()
    window.go_quotes()
    assert window.bar.back.text() == "Back to ostrel.csv"
    assert window.bar.back.isVisible()
    qtbot.mouseClick(window.bar.back, Qt.MouseButton.LeftButton)
    assert window.stack.currentIndex() == TAKE_IN
    assert _answers(window) == {"grade:fenlight 16": "SBS"}
    assert QApplication.focusWidget() is window.take_in.understood.questions._asked[0]
    assert window.bar.back.isHidden()


@pytest.mark.parametrize("cancelled", [False, True])
def test_the_same_bytes_opened_again_take_up_the_answers(half_answered, qtbot, tmp_path, cancelled: bool) -> None:
    window = half_answered
    if cancelled:
        window.take_in.leave.click()
        assert window.bar.back.isHidden()
    else:
        window.go_quotes()
    window.take_in_files([tmp_path / "ostrel.csv"])
    settle(qtbot, window)
    assert _answers(window) == {"grade:fenlight 16": "SBS"}
    assert "7 held by 7 questions" in window.take_in.understood.summary.text()
    window.steps.undo()
    settle(qtbot, window)
    assert "8 held by 8 questions" in window.take_in.understood.summary.text()


def test_a_changed_file_is_asked_anew(half_answered: MainWindow, qtbot, tmp_path: Path) -> None:
    path = sheet_of_boards(tmp_path / "ostrel.csv", first_price=1310)
    half_answered.take_in_files([path])
    settle(qtbot, half_answered)
    assert _answers(half_answered) == {}


def test_another_sheet_does_not_push_out_the_one_at_hand(half_answered: MainWindow, qtbot, tmp_path: Path) -> None:
    window, take_in = half_answered, half_answered.take_in
    window.go_quotes()
    other = tmp_path / "other.csv"
    other.write_text(
        "Pellmoor Board Ltd,,,,,\n\nBoard,Grade,Caliper (pt),Basis weight (g/m²),Price USD,Unit\n"
        "Copse 16,SBS,16,300,1216,tonne\n",
        encoding="utf-8",
    )
    window.take_in_files([other])
    settle(qtbot, window)
    assert take_in.at_hand.path == other
    take_in.agree.click()
    settle(qtbot, window)
    assert window.stack.currentIndex() == TAKE_IN
    assert take_in.at_hand.path.name == "ostrel.csv"
    assert _answers(window) == {"grade:fenlight 16": "SBS"}
    take_in.agree.click()
    settle(qtbot, window)
    assert window.stack.currentIndex() == QUOTES
    assert window.bar.back.isHidden()
    assert len(window.session.comparison.snapshot) == 2


def test_the_next_window_takes_up_the_answers_too(half_answered: MainWindow, tmp_path: Path) -> None:
    half_answered.close()
    kept = half_answered.session.settings
    assert "grade:fenlight 16" in kept.begun
    begun = BegunFiles(kept, half_answered.session.door.place)
    anew = FileAtHand(tmp_path / "renamed.csv", taken=half_answered.take_in.at_hand.taken)
    assert begun.take_up(anew) is anew
    assert anew.given == {"grade:fenlight 16": "SBS"}
    assert begun.take_up(anew) is None


@pytest.mark.parametrize("text", ["{", "[]", '{"a": 1}', '{"a": {"given": []}}'])
def test_what_other_hands_wrote_is_no_answer(text: str) -> None:
    settings = Settings()
    settings.keep(begun=text)
    file = FileAtHand(Path("tolmere.xlsx"), taken=taken(Answers()))
    assert BegunFiles(settings, "own").take_up(file) is None


def test_without_a_sheet_at_hand_the_way_back_says_so(window: MainWindow) -> None:
    window.actions_by_key["back-to-sheet"].trigger()
    assert "No sheet waits" in window.message.text


def _task_of_begun(window: MainWindow):
    return next(task for task in window.today.questions.list.tasks if isinstance(task.target, BegunSheet))


def test_the_next_window_is_led_back_to_it_from_today(half_answered: MainWindow, open_window, qtbot, database) -> None:
    half_answered.close()
    window = open_window(Door(database), half_answered.session.settings)
    task = _task_of_begun(window)
    assert task.text == "Ostrel Karton Ltd: a sheet you began"
    assert task.detail == "ostrel.csv: 1 answer given, not taken in yet"
    assert task.figure == "7 questions left"
    window.today.questions.list.wanted.emit(task.target)
    settle(qtbot, window)
    assert window.stack.currentIndex() == TAKE_IN
    assert _answers(window) == {"grade:fenlight 16": "SBS"}
    assert "7 held by 7 questions" in window.take_in.understood.summary.text()


def test_what_was_begun_waits_for_the_database_it_was_begun_for(
    half_answered: MainWindow, qtbot, database: str, empty_database: Path, tmp_path: Path
) -> None:
    window, door = half_answered, half_answered.session.door
    other = str(shutil.copy(empty_database, tmp_path / "other.sqlite"))

    def turn_to(name: str) -> None:
        door.close()
        door._database = name

    window.databases._open(lambda: turn_to(other), lambda _: "Another one.")
    settle(qtbot, window)
    assert window.message.text == "Another one."
    assert window.take_in.at_hand is None
    assert window.bar.back.isHidden()
    assert window.take_in.begun.listing() == window.today._begun == ()
    window.databases._open(lambda: turn_to(database), lambda _: "The one before.")
    settle(qtbot, window)
    assert _task_of_begun(window).detail == "ostrel.csv: 1 answer given, not taken in yet"


def test_a_begun_file_that_moved_says_so_and_is_taken_up_where_it_lies(
    half_answered: MainWindow, open_window, qtbot, database, tmp_path: Path
) -> None:
    half_answered.close()
    moved = (tmp_path / "ostrel.csv").rename(tmp_path / "ostrel_received.csv")
    window = open_window(Door(database), half_answered.session.settings)
    window.today.questions.list.wanted.emit(_task_of_begun(window).target)
    assert "ostrel.csv is not there any more" in window.message.text
    assert window.stack.currentIndex() != TAKE_IN
    window.take_in_files([moved])
    settle(qtbot, window)
    assert _answers(window) == {"grade:fenlight 16": "SBS"}
    window.go_today()
    assert "ostrel_received.csv" in _task_of_begun(window).detail


def test_what_was_said_of_a_file_that_is_gone_can_be_forgotten(
    half_answered: MainWindow, open_window, database, tmp_path: Path
) -> None:
    half_answered.close()
    (tmp_path / "ostrel.csv").unlink()
    window = open_window(Door(database), half_answered.session.settings)
    window.today.questions.list.wanted.emit(_task_of_begun(window).target)
    window.message._action.click()
    assert window.take_in.begun.listing() == ()
    assert window.today.welcome.isVisible()


def test_every_answer_is_kept_at_once_and_starting_over_drops_them(half_answered: MainWindow, qtbot) -> None:
    take_in = half_answered.take_in
    assert take_in.leave.text() == "Finish later"
    (waiting,) = take_in.begun.listing()
    assert (waiting.answers, waiting.asked) == (1, 7)
    take_in.foot.start_over.click()
    settle(qtbot, half_answered)
    assert take_in.begun.listing() == ()
    assert "8 held by 8 questions" in take_in.understood.summary.text()
    half_answered.steps.undo()
    settle(qtbot, half_answered)
    assert _answers(half_answered) == {"grade:fenlight 16": "SBS"}


def test_a_sheet_that_was_taken_in_waits_no_more(half_answered: MainWindow, qtbot) -> None:
    half_answered.take_in.agree.click()
    settle(qtbot, half_answered)
    assert half_answered.take_in.begun.listing() == ()
    assert half_answered.session.settings.begun == "{}"


def test_marks_by_hand_outlive_the_window(marked: MainWindow, open_window, qtbot, database, tmp_path: Path) -> None:
    marking = marked.take_in.at_hand.marking
    path = marked.take_in.at_hand.path
    marked.close()
    window = open_window(Door(database), marked.session.settings)
    assert "marked by hand" in _task_of_begun(window).detail
    window.take_in_files([path])
    settle(qtbot, window)
    assert window.take_in.at_hand.marking == marking
    assert len(window.take_in.at_hand.taken.reading.lines) == 3


def test_a_sheet_about_which_nothing_was_said_is_let_go_once_another_is_read(
    half_answered: MainWindow, qtbot, tmp_path: Path
) -> None:
    """A buyer reads dozens of sheets a day, and each takes many megabytes."""
    window = half_answered
    answered = ref(window.take_in.at_hand)
    for name in ("first.csv", "second.csv"):
        (tmp_path / name).write_text(f"{name}\nGrade,pt,USD/ST\nSBS,18,1145\n", encoding="utf-8")
        window.take_in_files([tmp_path / name])
        settle(qtbot, window)
        if name == "first.csv":
            untouched = ref(window.take_in.at_hand)
            assert untouched().path.name == name
    gc.collect()
    assert untouched() is None
    assert answered() is not None

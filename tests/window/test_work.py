import logging
import threading

import pytest

from tests.window.conftest import PATIENCE_MS
from tracker.desk.trouble import Trouble
from tracker.window.errors import keep_log
from tracker.window.work import Work


@pytest.fixture
def work(qapp):
    made = Work()
    yield made
    made.finish()


def test_every_result_arrives_in_order_on_this_thread(work: Work, qtbot) -> None:
    """A signal object owned by the job would lose results without a word."""
    here, got, where = threading.get_ident(), [], set()

    def keep(value: int) -> None:
        got.append(value)
        where.add(threading.get_ident())

    # The second lot wakes a thread that waits, which Qt gives its jobs in another way.
    for lot in (range(150), range(150, 300)):
        for number in lot:
            work.ask(lambda n=number: n, keep)
        qtbot.waitUntil(work.is_idle, timeout=PATIENCE_MS)
    assert got == list(range(300))
    assert where == {here}


def test_what_can_wait_lets_everything_else_go_first(work: Work, qtbot) -> None:
    begun, got = threading.Event(), []
    work.ask(begun.wait, lambda _: None)
    for asked, can_wait in (("file 1", True), ("file 2", True), ("answer", False)):
        work.ask(lambda asked=asked: asked, got.append, can_wait=can_wait)
    begun.set()
    qtbot.waitUntil(work.is_idle, timeout=PATIENCE_MS)
    assert got == ["answer", "file 1", "file 2"]


def test_jobs_run_on_one_other_thread(work: Work, qtbot) -> None:
    seen = []
    for _ in range(5):
        work.ask(threading.get_ident, seen.append)
    qtbot.waitUntil(work.is_idle, timeout=PATIENCE_MS)
    assert len(set(seen)) == 1
    assert seen[0] != threading.get_ident()


def test_an_error_comes_back_as_a_value(work: Work, qtbot) -> None:
    errors = []

    def fail() -> None:
        raise ValueError("no such board")

    work.ask(fail, lambda _: pytest.fail("it failed"), errors.append)
    with qtbot.waitSignal(work.failed, timeout=PATIENCE_MS) as heard:
        work.ask(fail, lambda _: None)
    assert str(errors[0]) == "no such board"
    assert isinstance(heard.args[0], ValueError)


def test_a_fault_of_ours_is_in_the_log_that_its_sentence_names(work: Work, qtbot, tmp_path) -> None:
    """What a user can mend says all in its own sentence, and is not kept."""
    ours = logging.getLogger("tracker")
    before = list(ours.handlers)
    keep_log(tmp_path / "window.log")

    def fail(error: Exception) -> None:
        raise error

    for error in (KeyError("vendor_id"), Trouble("Sample 4 was never asked for: check its number.")):
        with qtbot.waitSignal(work.failed, timeout=PATIENCE_MS):
            work.ask(lambda error=error: fail(error), lambda _: None)
    for handler in set(ours.handlers) - set(before):
        ours.removeHandler(handler)
        handler.close()
    kept = (tmp_path / "window.log").read_text(encoding="utf-8")
    assert "KeyError: 'vendor_id'" in kept
    assert "in fail" in kept
    assert "Sample 4" not in kept


def test_what_is_dropped_goes_nowhere(work: Work, qtbot) -> None:
    begin, got, ran = threading.Event(), [], []
    first = work.ask(begin.wait, got.append)
    second = work.ask(lambda: ran.append("second"), got.append)
    work.drop(first)
    work.drop(second)
    begin.set()
    work.ask(lambda: "third", got.append)
    qtbot.waitUntil(work.is_idle, timeout=PATIENCE_MS)
    assert got == ["third"]
    assert ran == []


def test_it_says_when_it_is_busy(work: Work, qtbot) -> None:
    said = []
    work.busy.connect(said.append)
    work.ask(lambda: None, lambda _: None)
    work.ask(lambda: None, lambda _: None)
    qtbot.waitUntil(work.is_idle, timeout=PATIENCE_MS)
    assert said == [True, False]

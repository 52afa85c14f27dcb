"""Children that wait for a file: which of them read the next one, and that the bounds hold for each file anew."""

import os
import signal
import sys
import threading
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from tracker.intake import children
from tracker.intake.child import Cancelled, read_in_child
from tracker.intake.child_side import allow
from tracker.intake.children import dismiss, keep_ready
from tracker.intake.grid import Unreadable

HERE = Path("offer.xlsx")
WARM = "tracker.intake.ahead"

on_other_systems = pytest.mark.skipif(sys.platform == "win32", reason="signals of other systems")
on_linux = pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the address space is bounded on Linux")


def number(path: Path) -> int:
    return os.getpid()


def refuses(path: Path) -> None:
    raise Unreadable(f"{os.getpid()} is empty.")


def fails(path: Path) -> None:
    raise ZeroDivisionError("our own mistake")


def sleeps(path: Path) -> None:
    time.sleep(60)


def burns(path: Path) -> None:
    while True:
        pass


def works_long(path: Path) -> int:
    time.process_time = lambda: 1e6  # as if it had: nobody need wait for it
    return os.getpid()


def keeps_much(path: Path) -> int:
    keeps_much.kept = bytearray(200_000_000)
    return os.getpid()


def eats(path: Path) -> int:
    return len(bytearray(2_000_000_000))


def is_given_time(path: Path) -> int:
    allow(1000)
    return os.getpid()


def waiting() -> list[int]:
    return [child.process.pid for child in children._waiting._children]


@pytest.fixture(autouse=True)
def none_left() -> Iterator[None]:
    yield
    dismiss()


@pytest.fixture
def ready() -> int:
    """The number of a child that was started ahead of need."""
    keep_ready(WARM)
    return waiting()[0]


def test_a_child_that_waits_takes_one_file_after_another(ready: int):
    keep_ready(WARM)
    assert [read_in_child(HERE, number) for _ in range(3)] == [ready] * 3


def test_a_child_stays_after_a_file_that_it_refused_in_good_order(ready: int):
    with pytest.raises(Unreadable, match=f"^{ready} is empty"):
        read_in_child(HERE, refuses)
    assert read_in_child(HERE, number) == ready


def test_no_child_stays_where_none_is_wanted():
    first = read_in_child(HERE, number)
    assert waiting() == []
    assert read_in_child(HERE, number) != first


@pytest.mark.parametrize("work", [fails, sleeps])
def test_a_child_whose_file_did_not_end_well_reads_no_other(ready: int, work):
    with pytest.raises(Unreadable):
        read_in_child(HERE, work, timeout_s=0.5)
    assert waiting() == []
    assert read_in_child(HERE, number) != ready


def test_a_child_whose_file_was_cancelled_reads_no_other(ready: int):
    cancelled = threading.Event()
    cancelled.set()
    with pytest.raises(Cancelled):
        read_in_child(HERE, sleeps, cancelled=cancelled)
    assert waiting() == []


def test_a_child_that_worked_long_reads_no_other(ready: int):
    assert read_in_child(HERE, works_long) == ready
    assert waiting() == []


@on_linux
def test_a_child_that_has_grown_reads_no_other(ready: int):
    assert read_in_child(HERE, keeps_much) == ready
    assert waiting() == []


def ready_for_the_next() -> None:
    keep_ready(WARM)


def test_one_that_was_started_meanwhile_takes_the_file_after_one_that_hung(ready: int):
    with pytest.raises(Unreadable):
        read_in_child(HERE, sleeps, timeout_s=0.2, meanwhile=ready_for_the_next)
    (second,) = waiting()
    assert read_in_child(HERE, number) == second


def test_one_that_has_read_before_goes_before_one_that_only_starts(ready: int):
    assert [read_in_child(HERE, number, meanwhile=ready_for_the_next) for _ in range(3)] == [ready] * 3
    assert len(waiting()) == 2


def test_no_more_than_two_wait(ready: int):
    def read_at_once(files: int) -> None:
        keep_ready(WARM)
        if files:
            read_in_child(HERE, number, meanwhile=lambda: read_at_once(files - 1))

    read_at_once(3)
    assert len(waiting()) == 2


def test_children_that_waited_in_vain_are_ended(ready: int):
    read_in_child(HERE, number, meanwhile=ready_for_the_next)
    processes = [child.process for child in children._waiting._children]
    dismiss()
    assert all(process.returncode is not None for process in processes)


def test_a_child_at_work_while_the_others_are_dismissed_ends_with_its_file(ready: int):
    assert read_in_child(HERE, number, meanwhile=dismiss) == ready
    assert waiting() == []


@on_other_systems
def test_a_child_that_died_waiting_is_passed_over(ready: int):
    process = children._waiting._children[0].process
    os.kill(ready, signal.SIGKILL)
    process.wait()
    assert read_in_child(HERE, number) != ready


@on_other_systems
def test_processor_time_is_bounded_for_each_file_anew(ready: int):
    assert read_in_child(HERE, is_given_time) == ready
    with pytest.raises(Unreadable, match=r"^offer\.xlsx was not read within 1 seconds and was stopped"):
        read_in_child(HERE, burns, timeout_s=1)


@on_linux
def test_memory_is_bounded_for_each_file_anew(ready: int):
    assert read_in_child(HERE, number, memory_mb=3000) == ready
    with pytest.raises(Unreadable, match=r"^offer\.xlsx needs more than 300 MB of memory to read and was stopped"):
        read_in_child(HERE, eats, memory_mb=300)

import functools
import os
import signal
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from tests.intake.files.books import write, xlsx_parts
from tracker.intake import child
from tracker.intake.child import Cancelled, ChildFailure, deadline_s, read_in_child
from tracker.intake.child_side import allow, hand_over, tell
from tracker.intake.files import open_workbook
from tracker.intake.grid import Unreadable

HERE = Path("offer.xlsx")


def length(path: Path) -> int:
    return len(path.name)


def refuses(path: Path) -> None:
    raise Unreadable(f"{path.name} is empty; ask the vendor to send it again.") from ValueError("inner")


def fails(path: Path) -> None:
    raise ZeroDivisionError("our own mistake")


def dies(path: Path) -> None:
    os.kill(os.getpid(), signal.SIGABRT)


def leaves(path: Path) -> None:
    os._exit(0)


def tells(path: Path) -> str:
    for share in (0.25, 0.5, 0.75, 1.0):
        tell(share)
        tell(share)
        time.sleep(0.12)
    return "done"


def hands_over(path: Path) -> str:
    for number in range(3):
        hand_over([number] * 100_000)
    return "the rest"


def hands_over_and_fails(path: Path) -> None:
    hand_over("a piece")
    raise Unreadable(f"{path.name} ends in the middle; ask the vendor to send it again.")


def sleeps(path: Path) -> None:
    time.sleep(60)


def waits_its_turn(path: Path) -> str:
    time.sleep(1.2)
    return "done"


def burns(path: Path) -> None:
    while True:
        try:
            int("7")
        except Exception:  # what a reader makes of a damaged file must not swallow the end of its time
            continue


def eats(path: Path) -> int:
    return len(bytearray(2_000_000_000))


def prints(path: Path) -> str:
    print("noise on standard output")
    os.write(1, b"more noise")
    return "done"


def takes_longer(path: Path) -> str:
    allow(30)
    time.sleep(0.8)
    return "done"


def adds(more: int, path: Path) -> int:
    return len(path.name) + more


def test_the_result_comes_back():
    assert read_in_child(HERE, length) == 10
    assert read_in_child(HERE, functools.partial(adds, 5)) == 15


def test_a_workbook_comes_back(tmp_path):
    path = write(tmp_path, "offer.xlsx", xlsx_parts('<row r="1"><c r="A1"><v>905</v></c></row>'))
    assert read_in_child(path, open_workbook).grids[0].cells[0, 0].text == "905"


def test_pieces_come_in_order_before_the_rest():
    pieces: list[list[int]] = []
    assert read_in_child(HERE, hands_over, part=pieces.append) == "the rest"
    assert [(len(piece), set(piece)) for piece in pieces] == [(100_000, {number}) for number in range(3)]
    assert read_in_child(HERE, hands_over) == "the rest"


def test_what_comes_next_is_made_ready_while_the_child_works():
    done: list[str] = []
    assert read_in_child(HERE, hands_over, part=lambda _: done.append("piece"), meanwhile=lambda: done.append("ready"))
    assert done == ["ready", "piece", "piece", "piece"]


def test_how_much_is_done_is_told_from_time_to_time():
    shares: list[float] = []
    assert read_in_child(HERE, tells, progress=shares.append) == "done"
    assert shares == sorted(shares)
    assert shares[0] == 0.25
    assert 2 <= len(shares) <= 4
    assert read_in_child(HERE, tells) == "done"


def test_pieces_do_not_hide_that_a_file_is_unreadable():
    with pytest.raises(Unreadable, match="ends in the middle"):
        read_in_child(HERE, hands_over_and_fails, part=lambda _: None)


def test_an_unreadable_file_keeps_its_sentence_and_its_cause():
    with pytest.raises(Unreadable, match=r"^offer\.xlsx is empty; ask the vendor to send it again\.$") as caught:
        read_in_child(HERE, refuses)
    assert isinstance(caught.value.__cause__, ChildFailure)
    assert "ValueError: inner" in str(caught.value.__cause__)


def test_a_mistake_of_our_own_is_told_apart_by_its_cause():
    with pytest.raises(Unreadable, match=r"^offer\.xlsx could not be read, reading it broke off; open it") as caught:
        read_in_child(HERE, fails)
    assert "our own mistake" in str(caught.value.__cause__)


@pytest.mark.skipif(sys.platform == "win32", reason="signals of other systems")
@pytest.mark.parametrize("work", [dies, leaves])
def test_a_child_that_ends_takes_nothing_with_it(work):
    with pytest.raises(Unreadable, match=r"^offer\.xlsx could not be read, reading it broke off"):
        read_in_child(HERE, work)


def test_the_deadline_ends_a_reading():
    with pytest.raises(Unreadable, match=r"^offer\.xlsx was not read within 0\.5 seconds and was stopped"):
        read_in_child(HERE, sleeps, timeout_s=0.5)


@pytest.mark.skipif(sys.platform == "win32", reason="processor time is counted on other systems")
def test_processor_time_ends_a_reading_long_before_the_clock_does(monkeypatch):
    monkeypatch.setattr(child, "_PATIENCE", 1000)
    with pytest.raises(Unreadable, match=r"^offer\.xlsx was not read within 1 seconds and was stopped"):
        read_in_child(HERE, burns, timeout_s=1)


def test_a_process_that_had_to_wait_for_its_turn_is_given_longer_by_the_clock():
    assert read_in_child(HERE, waits_its_turn, timeout_s=1) == "done"


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="the address space is bounded on Linux")
def test_memory_is_bounded():
    with pytest.raises(Unreadable, match=r"^offer\.xlsx needs more than 300 MB of memory to read and was stopped"):
        read_in_child(HERE, eats, memory_mb=300)


def test_work_that_says_how_much_there_is_gets_its_time():
    assert read_in_child(HERE, takes_longer, timeout_s=0.5) == "done"


def test_a_long_sheet_is_given_longer(tmp_path):
    small, large = write(tmp_path, "a.csv", b"a"), write(tmp_path, "b.csv", bytes(3_000_000))
    assert deadline_s(small) == 5
    assert deadline_s(large) == 11
    assert deadline_s(tmp_path / "gone.csv") == 5


def test_the_user_can_cancel():
    cancelled = threading.Event()
    threading.Timer(0.2, cancelled.set).start()
    with pytest.raises(Cancelled):
        read_in_child(HERE, sleeps, cancelled=cancelled)


def test_stray_output_does_not_break_the_answer():
    assert read_in_child(HERE, prints) == "done"


def test_the_child_starts_without_the_heavy_libraries(tmp_path):
    """Starting takes a fraction of a second only while the readers import little."""
    path = write(tmp_path, "offer.xlsx", xlsx_parts('<row r="1"><c r="A1"><v>905</v></c></row>'))
    code = (
        "import sys; from pathlib import Path; from tracker.intake import child_side; "
        "from tracker.intake.files import open_workbook; open_workbook(Path(sys.argv[1])); "
        "print(*sorted({name.partition('.')[0] for name in sys.modules}))"
    )
    done = subprocess.run([sys.executable, "-c", code, str(path)], capture_output=True, text=True, check=True)
    heavy = {"numpy", "pandas", "scipy", "PySide6", "sqlalchemy", "openpyxl", "xlrd", "multiprocessing"}
    assert not heavy & set(done.stdout.split())

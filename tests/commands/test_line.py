"""The command line itself: its statuses, its help, and no traceback ever."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.commands.conftest import Tracker
from tracker.commands import run
from tracker.commands.line import _COMMANDS
from tracker.commands.outcome import Status, WindowWanted
from tracker.desk.trouble import Trouble

ROOT = Path(__file__).resolve().parents[2]


def test_without_a_command_the_window_is_wanted() -> None:
    assert run([]) == WindowWanted(None)
    assert run(["--database", "x.sqlite"]) == WindowWanted("x.sqlite")


@pytest.mark.parametrize("command", list(_COMMANDS))
def test_every_command_explains_itself(command: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert run([command, "--help"]) == Status.DONE
    said = capsys.readouterr().out
    assert "--database" in said
    assert command in said


def test_help_names_every_command(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["--help"]) == Status.DONE
    said = capsys.readouterr().out
    assert all(command in said for command in _COMMANDS)


@pytest.mark.parametrize(
    "arguments",
    [
        ["sell"],
        ["import"],
        ["import", "x.csv", "--grade", "Fenlight=XYZ"],
        ["import", "x.csv", "--currency", "UDS"],
        ["quotes", "--grade", "XYZ"],
        ["quotes", "--caliper-pt", "1e400"],
        ["quotes", "--order-kg", "1e999999999"],
        ["level", "XYZ"],
        ["level", "SBS", "--per-tonne", "nan"],
        ["rate", "US$", "0.9", "--on", "2026-11-25"],
        ["sample", "log", "--grade", "XYZ"],
        ["samples", "--as-of", "soon"],
        ["samples", "--database", " "],
    ],
)
def test_wrong_use_is_status_two(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    assert run(arguments) == Status.WRONG_USE
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert said.endswith("--help.\n")


def test_a_user_s_trouble_is_one_sentence_and_status_one(tracker: Tracker) -> None:
    ended = tracker("sample", "event", "7", "sent")
    assert (ended.status, ended.out) == (Status.FAILED, "")
    assert ended.err == "There is no sample 7: look at the list of samples for its number.\n"


def test_a_fault_of_ours_is_said_without_a_traceback(tracker: Tracker, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("division by zero")

    monkeypatch.setattr("tracker.commands.samples.samples", broken)
    ended = tracker("samples")
    assert ended.status == Status.FAILED
    assert "Traceback" not in ended.err
    assert "--debug" in ended.err
    with pytest.raises(ZeroDivisionError):
        tracker("--debug", "samples")


def test_being_stopped_is_said_without_a_traceback(
    tracker: Tracker, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def stopped(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("tracker.commands.samples.samples", stopped)
    assert tracker("samples").status == Status.FAILED
    monkeypatch.setattr("tracker.commands.line._parser", stopped)
    assert run(["samples"]) == Status.FAILED
    assert capsys.readouterr().err.startswith("Stopped")


def test_a_full_disk_is_not_called_a_fault_of_this_program(tracker: Tracker, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tracker.commands.samples.samples", full)
    ended = tracker("samples")
    assert ended.status == Status.FAILED
    assert "No space left" in ended.err
    assert "fault in this program" not in ended.err


@pytest.mark.parametrize(("module", "told"), [("platformdirs", "is not installed"), ("tracker.lost", "fault in this")])
def test_a_package_that_is_not_installed_is_told_by_its_name(
    tracker: Tracker, monkeypatch: pytest.MonkeyPatch, module: str, told: str
) -> None:
    def lacking(*_: object) -> None:
        raise ModuleNotFoundError(f"No module named '{module}'", name=module)

    monkeypatch.setattr("tracker.commands.samples.samples", lacking)
    ended = tracker("samples")
    assert ended.status == Status.FAILED
    assert told in ended.err


def test_a_damaged_database_is_not_called_a_fault_of_this_program(tracker: Tracker, database: Path) -> None:
    with database.open("r+b") as file:
        file.seek(4096)
        file.write(b"\xff" * (database.stat().st_size - 4096))
    ended = tracker("samples")
    assert ended.status == Status.FAILED
    assert "run the command “check”" in ended.err or "can't be opened" in ended.err
    assert "fault in this program" not in ended.err


def test_results_that_nobody_reads_to_the_end_are_no_failure_to_talk_about(database: Path) -> None:
    command = [sys.executable, "-m", "tracker", "--database", str(database), "level", "--json"]
    reader, writer = os.pipe()
    os.close(reader)
    ended = subprocess.run(command, cwd=ROOT, stdout=writer, stderr=subprocess.PIPE, check=False)
    os.close(writer)
    assert (ended.returncode, ended.stderr) == (Status.FAILED, b"")


def test_debug_shows_where_a_trouble_arose(tracker: Tracker) -> None:
    with pytest.raises(Trouble):
        tracker("--debug", "sample", "event", "7", "sent")


def test_options_for_all_commands_stand_before_or_after_the_command(
    database: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["level", "--database", str(database), "--json"]) == Status.DONE
    assert '"levels": []' in capsys.readouterr().out
    assert run(["sample", "template", "--database", str(database)]) == Status.DONE
    assert capsys.readouterr().out == "No template is kept.\n"


def test_results_are_utf8_whatever_the_terminal_says(database: Path) -> None:
    """A process whose output is set to ASCII still prints letters beyond it, as a Windows console's code page may."""
    environment = {**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONPATH": str(ROOT)}

    def in_a_process(*arguments: str) -> str:
        command = [sys.executable, "-m", "tracker", "--database", str(database), *arguments]
        ended = subprocess.run(command, cwd=ROOT, env=environment, check=True, capture_output=True)
        return ended.stdout.decode("utf-8")

    in_a_process("sample", "log", "--vendor", "Ärlunda", "--grade", "SBS")
    assert "Ärlunda" in in_a_process("samples")


@pytest.mark.parametrize("heavy", ["sqlalchemy", "pandas", "scipy", "PySide6", "openpyxl", "alembic", "numpy"])
def test_starting_loads_nothing_heavy(heavy: str) -> None:
    code = (
        "import sys; from tracker.commands import run; run(['import', '--help']); "
        f"sys.exit(any(name.split('.')[0] == {heavy!r} for name in sys.modules))"
    )
    ended = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, check=False)
    assert ended.returncode == 0, f"{heavy} is loaded before any file is read"

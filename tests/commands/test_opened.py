"""Which commands may make a database, and that none makes one in silence."""

from pathlib import Path

import pytest

from tests.commands.conftest import Tracker
from tracker.commands import run
from tracker.commands.outcome import Status


@pytest.fixture
def nowhere(tmp_path: Path) -> Path:
    return tmp_path / "mistyped" / "tracker.sqlite"


@pytest.mark.parametrize(
    "arguments",
    [
        ["quotes"],
        ["quotes", "--json"],
        ["level"],
        ["level", "--json"],
        ["samples"],
        ["waits"],
        ["report", "report.pdf"],
        ["backup", "copy.sqlite"],
        ["check"],
        ["sample", "show", "1"],
        ["sample", "event", "1", "arrived"],
        ["sample", "template"],
        ["sample", "chase"],
    ],
)
def test_what_only_looks_makes_no_database(
    arguments: list[str],
    nowhere: Path,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.chdir(tmp_path)
    assert run(["--database", str(nowhere), *arguments]) == Status.FAILED
    written = capsys.readouterr()
    assert written.out == ""
    assert written.err.startswith(f"There is no database at {nowhere}: check its name.")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    "arguments",
    [
        ["rate", "USD", "0.86", "--on", "2026-11-25"],
        ["level", "--sensitivity", "sure"],
        ["sample", "log", "--vendor", "Ostrel Karton", "--grade", "SBS"],
    ],
)
def test_what_makes_a_database_says_so(arguments: list[str], nowhere: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["--database", str(nowhere), *arguments]) == Status.DONE
    assert f"no database {nowhere}, so a new one was made" in capsys.readouterr().err
    assert nowhere.is_file()
    assert run(["--database", str(nowhere), *arguments]) == Status.DONE
    assert "a new one" not in capsys.readouterr().err


def test_a_sheet_that_can_not_be_read_makes_no_database(nowhere: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["--database", str(nowhere), "import", "gone.xlsx"]) == Status.WRONG_USE
    assert "a new one" not in capsys.readouterr().err
    assert not nowhere.exists()


def test_files_that_were_written_are_named(tracker: Tracker, tmp_path: Path) -> None:
    for name, arguments in (
        ("q.csv", ("quotes", "--csv")),
        ("q.xlsx", ("quotes", "--xlsx")),
        ("r.xlsx", ("report",)),
        ("s.csv", ("samples", "--csv")),
        ("copy.sqlite", ("backup",)),
    ):
        ended = tracker(*arguments, str(tmp_path / name))
        assert ended.status == Status.DONE
        assert ended.out.endswith(f"{tmp_path / name}.\n")
        assert ended.out.count("\n") == 1


def test_a_backup_writes_over_an_older_one_only_when_told(tracker: Tracker, tmp_path: Path) -> None:
    copy = str(tmp_path / "copy.sqlite")
    assert tracker("backup", copy).status == Status.DONE
    again = tracker("backup", copy)
    assert again.status == Status.FAILED
    assert "--replace" in again.err
    assert tracker("backup", copy, "--replace").status == Status.DONE

"""Commands run in this process, on a database of their own."""

import json
import shutil
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from tracker.commands import run
from tracker.store.opening import open_database


@dataclass(frozen=True)
class Ended:
    """How a command ended: its status, and what it wrote."""

    status: Any
    out: str
    err: str

    @property
    def document(self) -> Any:
        return json.loads(self.out)


Tracker = Callable[..., Ended]


@pytest.fixture(scope="session")
def empty_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("template") / "empty.sqlite"
    open_database(path).close()
    return path


@pytest.fixture
def database(empty_file: Path, tmp_path: Path) -> Path:
    path = tmp_path / "tracker.sqlite"
    shutil.copy(empty_file, path)
    return path


@pytest.fixture
def tracker(database: Path, capsys: pytest.CaptureFixture[str]) -> Tracker:
    """tracker('level', '--json') runs that command and gives how it ended."""

    def call(*arguments: str) -> Ended:
        status = run(["--database", str(database), *arguments])
        written = capsys.readouterr()
        return Ended(status, written.out, written.err)

    return call

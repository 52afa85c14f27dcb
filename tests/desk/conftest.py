"""A desk on a fresh database, standing on one day."""

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from tracker.desk.opening import Desk, open_desk
from tracker.store.opening import open_database

TODAY = date(2026, 11, 25)


@pytest.fixture(scope="session")
def empty_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A database without rows, made once: copying it is quicker than migrating anew."""
    path = tmp_path_factory.mktemp("template") / "empty.sqlite"
    open_database(path).close()
    return path


@pytest.fixture
def desk(empty_file: Path, tmp_path: Path) -> Iterator[Desk]:
    path = tmp_path / "tracker.sqlite"
    shutil.copy(empty_file, path)
    opened = open_desk(str(path), TODAY, "Ada")
    yield opened
    opened.close()

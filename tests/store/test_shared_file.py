"""One SQLite file, two programs: what one of them wrote is seen by the other, whatever else was done with the file."""

import subprocess
import sys
from pathlib import Path

import pytest

from tracker.store.opening import open_database

OTHER_PROGRAM = """
import sqlite3, sys
with sqlite3.connect(sys.argv[1]) as other:
    print(other.execute("SELECT COUNT(*) FROM setting").fetchone()[0])
other.close()
"""


def _counted_elsewhere(path: Path) -> int:
    done = subprocess.run([sys.executable, "-c", OTHER_PROGRAM, str(path)], capture_output=True, text=True, check=True)
    return int(done.stdout)


@pytest.fixture
def path(tmp_path: Path, empty_file: Path) -> Path:
    path = tmp_path / "shared.sqlite"
    path.write_bytes(empty_file.read_bytes())
    return path


def test_nothing_is_lost_when_the_file_is_peeked_at_while_it_is_open(path: Path) -> None:
    """Closing any handle on the file drops this process's locks on it, as a file dialog's look at it does."""
    database = open_database(path)
    try:
        for written, key in enumerate(("order", "units"), 1):
            with database.writing() as connection:
                connection.exec_driver_sql("INSERT INTO setting (key, value) VALUES (?, 1)", (key,))
            path.open("rb").close()
            assert _counted_elsewhere(path) == written
    finally:
        database.close()
    assert _counted_elsewhere(path) == 2

import os
import sys
from hashlib import sha256
from pathlib import Path

import pytest

from tracker.intake import content
from tracker.intake.content import content_of
from tracker.intake.grid import Unreadable
from tracker.intake.read import read_sheet
from tracker.trade.offer import Answers


def test_a_file_comes_whole(tmp_path):
    path = tmp_path / "offer.csv"
    path.write_bytes(b"price\r\n905")
    assert content_of(path) == b"price\r\n905"


@pytest.mark.skipif(sys.platform == "win32", reason="pipes and devices of other systems")
def test_what_never_ends_is_not_waited_for(tmp_path):
    pipe = tmp_path / "pipe.csv"
    os.mkfifo(pipe)
    with pytest.raises(Unreadable, match=r"^pipe\.csv is not a file; save"):
        content_of(pipe)
    with pytest.raises(Unreadable, match=r"^zero is not a file; save"):
        content_of(Path("/dev/zero"))


def test_a_file_too_large_is_neither_read_nor_hashed(tmp_path, monkeypatch):
    path = tmp_path / "large.csv"
    path.write_bytes(bytes(2_000_001))
    monkeypatch.setattr(content, "LARGEST_FILE", 2_000_000)
    monkeypatch.setattr(Path, "read_bytes", lambda _: pytest.fail("it was read"))
    with pytest.raises(Unreadable, match=r"^large\.csv is 2 MB, more than the 2 MB that are read"):
        content_of(path)


def test_an_unreadable_file_is_known_by_its_hash_and_a_missing_one_by_none(tmp_path):
    empty = tmp_path / "empty.csv"
    empty.write_bytes(b"\n")
    assert read_sheet(empty, Answers()).sha256 == sha256(b"\n").hexdigest()
    assert read_sheet(tmp_path / "gone.csv", Answers()).sha256 == ""

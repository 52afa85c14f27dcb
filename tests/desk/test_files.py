"""A sheet that named nobody gets its vendor afterwards, and that can be undone."""

from dataclasses import replace

import pytest

from tests.desk.filing import file
from tests.store.making import VENDOR, line
from tracker.desk import files
from tracker.desk.edits import history, undo
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.desk.trouble import Trouble
from tracker.store import offers


def boards(desk: Desk) -> list[int]:
    snapshot = load_snapshot(desk)
    return [int(code) for code in snapshot.board]


def test_offers_of_an_unnamed_vendor_become_the_vendor_s(desk: Desk) -> None:
    named = file(desk, line("D5"), content=b"spring", name="spring.xlsx")
    nameless = file(desk, line("D5"), line("D6", vendor="Marrowby Paper"), vendor=None)
    edit = files.name_vendor(desk, nameless, f" {VENDOR.upper()} ")
    assert files.find(desk, nameless).vendor == VENDOR
    with desk.store.reading() as connection:
        stored = [offers.get(connection, number) for number in (1, 2, 3)]
    assert [each.offer.vendor for each in stored] == [VENDOR, VENDOR, "Marrowby Paper"]
    assert [each.file_id for each in stored] == [named, nameless, nameless]
    undo(desk, edit)
    assert files.find(desk, nameless).vendor is None


def test_once_named_they_are_the_same_boards_as_in_the_vendor_s_other_sheets(desk: Desk) -> None:
    file(desk, line("D5"), content=b"spring", name="spring.xlsx")
    nameless = file(desk, line("D5"), vendor=None)
    first, second = boards(desk)
    assert first != second
    edit = files.name_vendor(desk, nameless, VENDOR)
    again, same = boards(desk)
    assert again == same
    undo(desk, edit)
    assert len(set(boards(desk))) == 2


def test_a_vendor_made_on_the_way_is_in_the_change_log(desk: Desk) -> None:
    file(desk, line("D5"))
    assert [(change.table, change.now and change.now["name"]) for change in history(desk)] == [
        ("price_file", "list.xlsx"),
        ("vendor", VENDOR),
    ]


def test_a_file_whose_vendor_is_known_keeps_it(desk: Desk) -> None:
    known = file(desk, line("D5"))
    with pytest.raises(Trouble, match=f"is {VENDOR}'s already"):
        files.name_vendor(desk, known, "Marrowby Paper")
    nameless = file(desk, replace(line("D5")), vendor=None, content=b"another")
    with pytest.raises(Trouble, match="Say the vendor's name"):
        files.name_vendor(desk, nameless, " ")

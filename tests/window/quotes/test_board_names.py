"""Boards' names as codes, and what is told by them: which offers are one board, which hold a word."""

from dataclasses import replace

import numpy as np

from tests.window.fixtures.invented_offers import comparison
from tracker.window.quotes.board_names import board_names
from tracker.window.quotes.joins import boards_of
from tracker.window.quotes.narrowing import Narrowing, rows_of


def test_names_are_coded_once_for_a_snapshot() -> None:
    snapshot = comparison(300).snapshot
    names = board_names(snapshot)
    assert [names.names[code] for code in names.codes] == snapshot.product
    assert len(names.names) == len(set(snapshot.product)) < 300
    assert board_names(snapshot) is names
    other = replace(snapshot, product=[f"{name} II" for name in snapshot.product])
    assert board_names(other).names == [f"{name} II" for name in names.names]


def test_one_board_is_one_vendor_s_name_caliper_grade_file_and_day() -> None:
    snapshot = comparison(300).snapshot
    rows = np.arange(299, 50, -1)
    snapshot.caliper_um[rows[:4]] = np.nan
    parts = (snapshot.vendor, snapshot.caliper_um, snapshot.grade, snapshot.file, snapshot.received)
    keys = [(snapshot.product[row], *(part[row] for part in parts)) for row in rows]
    groups = boards_of(snapshot, rows)
    for at, key in enumerate(keys):
        alike = [place for place, other in enumerate(keys) if other == key] or [at]
        assert np.flatnonzero(groups == groups[at]).tolist() == alike
    assert len(boards_of(snapshot, rows[:0])) == 0


def test_every_word_is_looked_for_in_vendor_and_board() -> None:
    compared = comparison(300)
    snapshot = compared.snapshot
    vendor, board = snapshot.vendors[int(snapshot.vendor[0])].split()[0], snapshot.product[0].split()[0]
    found = rows_of(compared, Narrowing(words=f"{vendor.upper()} {board[:4].upper()}"))
    said = [f"{snapshot.vendors[snapshot.vendor[row]]} | {snapshot.product[row]}".casefold() for row in range(300)]
    wanted = [
        row for row in np.flatnonzero(compared.shown) if all(w.casefold() in said[row] for w in (vendor, board[:4]))
    ]
    assert found.tolist() == wanted
    assert 0 < len(found) < int(compared.shown.sum())

"""Stored offers as columns: nothing lost, and the newer offer of a board supersedes the older."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.desk.filing import file
from tests.store.making import FULL, VENDOR, line
from tracker.desk import files
from tracker.desk.edits import undo
from tracker.desk.loading import superseded_by_day
from tracker.desk.opening import Desk
from tracker.desk.quotes import load_snapshot
from tracker.trade.basis import Basis
from tracker.trade.footing import footing
from tracker.trade.offer import GrammageFrom

OLD, NEW = date(2026, 8, 18), date(2026, 11, 3)


def test_an_empty_database_is_an_empty_snapshot(desk: Desk) -> None:
    snapshot = load_snapshot(desk)
    assert len(snapshot) == 0
    assert snapshot.vendors == []


def test_every_field_is_in_its_column(desk: Desk) -> None:
    file(desk, line())
    snapshot = load_snapshot(desk)
    exact = footing(FULL)
    assert (snapshot.vendors, snapshot.grades, snapshot.currencies) == ([VENDOR], ["SBS"], ["USD"])
    assert snapshot.bases[snapshot.basis[0]] == Basis.SHORT_TON
    assert (snapshot.files, snapshot.sheet, snapshot.cell) == (["list.xlsx"], ["Prices"], ["D5"])
    assert (snapshot.product, snapshot.as_quoted) == (["Fenlight White"], ["$1,240.50 /ST"])
    assert snapshot.price[0] == 1240.5
    assert snapshot.caliper_um[0] == 457.2
    assert snapshot.grammage_gsm[0] == 380.829355638
    assert snapshot.from_kg[0] == 4535.9237
    assert (snapshot.lead_low[0], snapshot.lead_high[0]) == (28, 42)
    assert snapshot.valid_until[0] == date(2026, 12, 31).toordinal()
    assert snapshot.received[0] == NEW.toordinal()
    assert (snapshot.coated_sides[0], snapshot.delivered[0], snapshot.estimated[0]) == (1, 0, False)
    for column, wanted in (
        (snapshot.per_tonne, exact.per_tonne),
        (snapshot.per_msf, exact.per_msf),
        (snapshot.delivered_per_tonne, exact.delivered_per_tonne),
        (snapshot.delivered_per_msf, exact.delivered_per_msf),
    ):
        assert column[0] == pytest.approx(float(wanted), rel=1e-12)


def test_what_is_not_known_is_not_a_number(desk: Desk) -> None:
    bare = line(caliper_um=None, grammage_gsm=None, from_kg=None, below_kg=None, lead_days=None, valid_until=None,
                delivered=None, coated_sides=None, charges=())  # fmt: skip
    file(desk, bare)
    snapshot = load_snapshot(desk)
    for column in (snapshot.caliper_um, snapshot.grammage_gsm, snapshot.from_kg, snapshot.lead_low, snapshot.per_msf):
        assert np.isnan(column[0])
    assert (snapshot.valid_until[0], snapshot.delivered[0], snapshot.coated_sides[0]) == (-1, -1, -1)


def test_a_weight_that_is_an_estimate_is_marked(desk: Desk) -> None:
    file(desk, line(grammage_from=GrammageFrom.ESTIMATED))
    assert load_snapshot(desk).estimated[0]


def test_the_newer_offer_of_a_board_supersedes_the_older_whatever_its_basis(desk: Desk) -> None:
    file(desk, line(received=OLD, price=Decimal("52.10"), basis=Basis.MSF), content=b"summer")
    file(desk, line("F9", received=NEW), content=b"autumn")
    snapshot = load_snapshot(desk)
    assert snapshot.superseded_by_day.tolist() == [NEW.toordinal(), -1]
    assert snapshot.board[0] == snapshot.board[1]


@pytest.mark.parametrize(
    "other",
    [
        {"product": "Fenlight Cream"},
        {"caliper_um": Decimal("508")},
        {"from_kg": Decimal("18143.6948"), "below_kg": None},
        {"currency": "EUR"},
        {"delivered": True},
        {"vendor": "Marrowby Paper"},
    ],
)
def test_another_board_bracket_currency_or_vendor_supersedes_nothing(desk: Desk, other: dict[str, object]) -> None:
    file(desk, line(received=OLD), content=b"summer")
    file(desk, line(received=NEW, **other), content=b"autumn")
    assert load_snapshot(desk).superseded_by_day.tolist() == [-1, -1]


def test_an_older_list_taken_in_late_is_superseded_from_the_start(desk: Desk) -> None:
    file(desk, line(received=NEW), content=b"autumn")
    file(desk, line(received=OLD), content=b"summer")
    assert load_snapshot(desk).superseded_by_day.tolist() == [-1, NEW.toordinal()]


def test_offers_of_unnamed_vendors_never_supersede_each_other(desk: Desk) -> None:
    file(desk, line(received=OLD), content=b"summer", vendor=None)
    file(desk, line(received=NEW), content=b"autumn", vendor=None)
    snapshot = load_snapshot(desk)
    assert snapshot.superseded_by_day.tolist() == [-1, -1]
    assert snapshot.vendor.tolist() == [-1, -1]


def test_a_withdrawn_file_counts_no_more_until_it_is_brought_back(desk: Desk) -> None:
    file(desk, line(received=OLD), content=b"summer")
    newer = file(desk, line(received=NEW), content=b"autumn")
    edit = files.withdraw(desk, newer)
    assert load_snapshot(desk).superseded_by_day.tolist() == [-1]
    undo(desk, edit)
    assert load_snapshot(desk).superseded_by_day.tolist() == [NEW.toordinal(), -1]


@given(st.lists(st.tuples(st.integers(0, 3), st.integers(1, 4), st.integers(0, 3)), max_size=12))
def test_superseding_is_what_a_loop_over_all_pairs_finds(rows: list[tuple[int, int, int]]) -> None:
    # A file is received on one day.
    day_of_file: dict[int, int] = {}
    rows = [(key, day_of_file.setdefault(file_id, day), file_id) for key, day, file_id in rows]
    keys, days, file_ids = (
        np.array(column, np.int64) for column in (zip(*rows, strict=True) if rows else ([], [], []))
    )
    found = superseded_by_day(keys, days.astype(np.int32), file_ids)
    for key, day, file_id, superseded in zip(keys, days, file_ids, found, strict=True):
        newer = [(d, f) for k, d, f in rows if k == key and (d, f) > (day, file_id)]
        assert superseded == (min(newer)[0] if newer else -1)


def test_every_offer_keeps_its_file_even_with_many(desk: Desk) -> None:
    for number in range(4):
        file(
            desk,
            replace(line(), offer=replace(FULL, product=f"Board {number}")),
            content=bytes([number]),
            name=f"{number}.csv",
        )
    snapshot = load_snapshot(desk)
    assert [snapshot.files[code] for code in snapshot.file] == ["0.csv", "1.csv", "2.csv", "3.csv"]
    assert len({snapshot.sha256s[code] for code in snapshot.file}) == 4

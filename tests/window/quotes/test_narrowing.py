from dataclasses import replace

import numpy as np

from tests.window.fixtures.invented_offers import comparison
from tracker.window.quotes.narrowing import Narrowing, rows_of

MARKET = comparison(500)


def test_nothing_chosen_lets_everything_through() -> None:
    assert len(rows_of(MARKET, Narrowing())) == 500


def test_offers_that_take_no_part_never_show() -> None:
    hidden = replace(MARKET, shown=np.arange(500) < 100)
    assert len(rows_of(hidden, Narrowing())) == 100


def test_by_grade_vendor_caliper_and_words() -> None:
    snapshot = MARKET.snapshot
    rows = rows_of(MARKET, Narrowing("CRB", frozenset({"Ulverby", "Tolmere Board"}), 14 * 25.4, 20 * 25.4, "recycled"))
    assert len(rows)
    assert {snapshot.grades[code] for code in snapshot.grade[rows]} == {"CRB"}
    assert {snapshot.vendors[code] for code in snapshot.vendor[rows]} <= {"Ulverby", "Tolmere Board"}
    assert snapshot.caliper_um[rows].min() >= 14 * 25.4 - 1
    assert snapshot.caliper_um[rows].max() <= 20 * 25.4 + 1
    assert len(
        rows_of(
            MARKET,
            Narrowing("CRB"),
        )
    ) > len(rows)


def test_words_are_looked_for_in_vendor_and_board_in_any_order() -> None:
    found = rows_of(MARKET, Narrowing(words="chip ulver"))
    assert len(found)
    assert all("chip" in MARKET.snapshot.product[row] for row in found)
    assert not len(rows_of(MARKET, Narrowing(words="no such board")))


def test_the_rail_counts_other_grades_under_the_same_filters() -> None:
    narrowing = Narrowing("CRB", frozenset({"Ulverby"}))
    everywhere = rows_of(MARKET, narrowing, any_grade=True)
    assert len(everywhere) > len(rows_of(MARKET, narrowing))


def test_only_what_stands_out() -> None:
    rows = rows_of(MARKET, Narrowing(standing_out=True))
    assert (MARKET.out_of_line | MARKET.slip)[rows].all()
    assert len(rows) == (MARKET.out_of_line | MARKET.slip).sum()

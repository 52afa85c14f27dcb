from datetime import date

import pytest

from tracker.desk.received import day_received
from tracker.trade.offer import Answers, Reading

TODAY = date(2026, 11, 25)


@pytest.mark.parametrize(
    ("dated", "said", "counts"),
    [
        (None, None, TODAY),
        (date(2026, 11, 9), None, date(2026, 11, 9)),
        (date(2026, 12, 1), None, TODAY),
        (date(2026, 11, 9), date(2026, 11, 12), date(2026, 11, 12)),
    ],
)
def test_a_list_counts_from_the_day_it_came_or_was_made(dated, said, counts) -> None:
    assert day_received(Reading("list.xlsx", "", dated=dated), Answers(received=said), TODAY) == counts

"""A picture that draws only some of its points says so, and never leaves out one that stands out."""

import numpy as np
import pytest

from tests.window.fixtures.invented_offers import comparison
from tracker.desk.standing import Standing, standings
from tracker.window.look.figures import Units
from tracker.window.quotes import spread_picture
from tracker.window.quotes.lead_picture import lead_against_price
from tracker.window.quotes.offer_columns import offers
from tracker.window.quotes.spread_picture import against_caliper, by_strip
from tracker.window.quotes.time_picture import over_time

PICTURES = [against_caliper, by_strip, lead_against_price, over_time]


@pytest.mark.parametrize("draw", PICTURES)
def test_a_thinned_picture_says_how_many_it_draws(monkeypatch: pytest.MonkeyPatch, draw) -> None:
    made = comparison(2_000)
    table = offers(made, standings(made), Units.US)
    rows = np.arange(2_000)
    whole = draw(table, rows, "")
    assert " are drawn, all that stand out" not in whole.caption
    monkeypatch.setattr(spread_picture, "MOST_POINTS", 500)
    thin = draw(table, rows, "")
    drawn = len(thin.drawing.rows)
    assert drawn < 700
    assert f"Of {len(whole.drawing.rows):,} offers {drawn:,} are drawn, all that stand out among them." in thin.caption
    kept = set(thin.drawing.rows.tolist())
    assert {int(row) for row in whole.drawing.rows if table.marks[row] <= Standing.BELOW} <= kept


def test_what_lacks_a_lead_time_is_not_said_to_be_thinned(monkeypatch: pytest.MonkeyPatch) -> None:
    made = comparison(2_000)
    table = offers(made, standings(made), Units.US)
    unknown = int(np.isnan(made.snapshot.lead_high).sum())
    monkeypatch.setattr(spread_picture, "MOST_POINTS", 500)
    assert f"{unknown} offers not drawn" in lead_against_price(table, np.arange(2_000), "").caption

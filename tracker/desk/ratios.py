"""What a grade costs beside the reference grade, where the user knows better than the trade's sayings."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble
from tracker.trade.bands import REFERENCE_GRADE
from tracker.trade.exact import plain_text
from tracker.trade.grades import grades

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.ratios import OwnRatio as OwnRatio

_LARGEST = 5


def set_ratio(desk: Desk, grade: str, low: Decimal, high: Decimal, on: date, source: str) -> Edit:
    """Expects a grade at `low` to `high` times the reference grade's level from a day on (0.65 to 0.80).

    Trouble for what can't be a ratio or has no source.
    """
    from tracker.store import ratios as kept

    code = grade.strip().upper()
    if code not in grades():
        raise Trouble(f"{grade} is not a grade: use one of {', '.join(grades())}.")
    if not 0 < low <= high <= _LARGEST:
        raise Trouble(
            f"A ratio is what the grade costs over {REFERENCE_GRADE}, the lower end first, such as 0.65 to 0.80; "
            f"{plain_text(low)} to {plain_text(high)} was given."
        )
    if not source.strip():
        raise Trouble("Say where the ratio comes from: a figure without a source can't be defended before a vendor.")
    text = f"expect {code} at {plain_text(low)} to {plain_text(high)} of {REFERENCE_GRADE} from {on.isoformat()}"
    with writing(desk, text) as pen:
        change = kept.put(pen, code, on, low, high, source.strip())
    return Edit(text, (change,))


def ratios(desk: Desk) -> tuple[OwnRatio, ...]:
    """Every ratio the user set, by grade, the latest first."""
    from tracker.store import ratios as kept

    with desk.store.reading() as connection:
        return kept.listing(connection)


def ratio_object(ratio: OwnRatio) -> dict[str, Any]:
    """A ratio as `level --json` lists it; figures as decimal strings."""
    return {
        "grade": ratio.grade,
        "from": ratio.on.isoformat(),
        "low": plain_text(ratio.low),
        "high": plain_text(ratio.high),
        "source": ratio.source,
    }

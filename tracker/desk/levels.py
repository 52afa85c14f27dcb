"""Market levels: what a grade costs per tonne on a day, as the user knows it, with the source."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from tracker.desk.edits import Edit, writing
from tracker.desk.trouble import Trouble
from tracker.trade.currencies import no_currency
from tracker.trade.days import day_text
from tracker.trade.exact import plain_text
from tracker.trade.grades import grades
from tracker.trade.level import LevelFigure

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.store.levels import Level as Level


def set_level(
    desk: Desk,
    grade: str,
    figure: LevelFigure,
    on: date,
    source: str,
    spread: Decimal | None = None,
) -> Edit:
    """Sets a grade's level from a day on; `spread` is in per cent up and down. Trouble for what can't be a level."""
    from tracker.store import levels as kept

    code = grade.strip().upper()
    if code not in grades():
        raise Trouble(f"{grade} is not a grade: use one of {', '.join(grades())}.")
    wrong = no_currency(figure.currency)
    if wrong is not None:
        raise Trouble(wrong)
    if not figure.amount > 0:
        raise Trouble(f"A level must be above 0; {plain_text(figure.amount)} was given.")
    if spread is not None and not 0 < spread < 100:
        raise Trouble(f"A spread lies between 0 and 100 per cent; {plain_text(spread)} was given.")
    if not source.strip():
        raise Trouble("Say where the level comes from: a figure without a source can't be defended before a vendor.")
    text = f"set the level of {code} to {figure} from {day_text(on)}"
    with writing(desk, text) as pen:
        change = kept.put(pen, code, on, figure, source.strip(), spread)
    return Edit(text, (change,))


def levels(desk: Desk) -> tuple[Level, ...]:
    """Every level by grade, the latest first."""
    from tracker.store import levels as kept

    with desk.store.reading() as connection:
        return kept.listing(connection)


def remove_level(desk: Desk, level_id: int) -> Edit:
    """Takes a level back. Trouble where there is none of that id."""
    from tracker.store.tables import level

    known = next((each for each in levels(desk) if each.id == level_id), None)
    if known is None:
        raise Trouble("That level is gone already.")
    text = f"removed the level of {known.grade} of {day_text(known.on)}"
    with writing(desk, text) as pen:
        change = pen.delete(level, level_id)
    return Edit(text, (change,))


def level_object(level: Level) -> dict[str, Any]:
    """A level as `level --json` lists it; the figures as decimal strings, per tonne and as they were said."""
    return {
        "grade": level.grade,
        "from": level.on.isoformat(),
        "per_tonne": plain_text(level.per_tonne),
        "currency": level.currency,
        "said": {"price": plain_text(level.said.amount), "basis": level.said.basis.value},
        "source": level.source,
        "spread": None if level.spread is None else plain_text(level.spread),
        "carried_by": level.index_name or None,
    }

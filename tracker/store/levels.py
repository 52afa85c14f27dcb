"""Market levels as the user sets them: dated, per grade, each with its source."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, RowMapping, select

from tracker.store.changes import Pen
from tracker.store.tables import level
from tracker.store.types import exact_values, join
from tracker.trade.basis import Basis
from tracker.trade.level import LevelFigure


@dataclass(frozen=True, slots=True)
class Level:
    """A grade's price per tonne on a day, and `said`, the figure as it was given, per whatever weight.

    spread: per cent up and down that still is its band (None: not said).
    index: the published price index that carries it forward, as (day, value) in order of day; index_name: what it is.
    """

    id: int
    grade: str
    on: date
    per_tonne: Decimal
    currency: str
    said: LevelFigure
    source: str
    spread: Decimal | None
    index_name: str = ""
    index: tuple[tuple[date, Decimal], ...] = ()


def listing(connection: Connection) -> tuple[Level, ...]:
    """Every level by grade, the latest first."""
    rows = connection.execute(select(level).order_by(level.c.grade, level.c.on_day.desc())).mappings()
    return tuple(
        Level(
            row["id"],
            row["grade"],
            row["on_day"],
            join(row["per_tonne_units"], row["per_tonne_scale"]) or Decimal(0),
            row["currency"],
            _said(row),
            row["source"],
            row["spread_percent"],
            row["index_name"],
            tuple((date.fromisoformat(day), Decimal(value)) for day, value in row["index_points"] or ()),
        )
        for row in rows
    )


def _said(row: RowMapping) -> LevelFigure:
    """Levels of before it was kept were said per tonne."""
    said = join(row["said_units"], row["said_scale"])
    if said is None:
        return LevelFigure(join(row["per_tonne_units"], row["per_tonne_scale"]) or Decimal(0), row["currency"])
    return LevelFigure(said, row["currency"], Basis(row["said_basis"]))


def put(pen: Pen, grade: str, on: date, figure: LevelFigure, source: str, spread: Decimal | None) -> int:
    """Sets a grade's level on a day, in place of one set for that day before; gives the log's entry."""
    per_another_weight = figure.basis is not Basis.TONNE
    values = {
        **exact_values("per_tonne", figure.per_tonne),
        **exact_values("said", figure.amount if per_another_weight else None),
        "said_basis": figure.basis.value if per_another_weight else None,
        "currency": figure.currency,
        "source": source,
        "spread_percent": spread,
        "index_name": "",
        "index_points": None,
    }
    there = select(level.c.id).where(level.c.grade == grade, level.c.on_day == on)
    earlier = pen.connection.execute(there).scalar()
    if earlier is not None:
        return pen.update(level, earlier, values)
    return pen.insert(level, {"grade": grade, "on_day": on, **values})[1]


def carry_by(pen: Pen, level_id: int, name: str, index: Sequence[tuple[date, Decimal]]) -> int:
    """Lets a price index carry a level forward; gives the log's entry."""
    points = [[day.isoformat(), format(value, "f")] for day, value in index]
    return pen.update(level, level_id, {"index_name": name, "index_points": points})

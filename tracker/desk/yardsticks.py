"""What prices are held against, as the user set it: dated levels, ratios between grades, and the sensitivity."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from tracker.desk.levels import levels
from tracker.desk.ratios import ratios as own_ratios
from tracker.desk.sensitivity import Sensitivity, sensitivity
from tracker.market import bands
from tracker.trade.bands import Ratio, ratios
from tracker.trade.days import day_text

if TYPE_CHECKING:
    from tracker.desk.opening import Desk
    from tracker.desk.rates import RatesOn
    from tracker.store.levels import Level
    from tracker.store.ratios import OwnRatio


@dataclass(frozen=True, slots=True)
class Yardsticks:
    """All that the user set, of every day; what stands on one day is picked by the functions below."""

    levels: tuple[Level, ...] = ()
    ratios: tuple[OwnRatio, ...] = ()
    sensitivity: Sensitivity = Sensitivity.CAREFUL


def yardsticks(desk: Desk) -> Yardsticks:
    """What this database holds."""
    return Yardsticks(levels(desk), own_ratios(desk), sensitivity(desk))


def levels_standing(kept: Iterable[Level], day: date, currency: str, rates: RatesOn) -> list[bands.Level]:
    """Each grade's level that stands on a day, in a currency, carried forward where an index was given for it.

    A level in a currency without a known rate is left out.
    """
    standing: dict[str, Level] = {}
    for level in kept:
        held = standing.get(level.grade)
        if level.on <= day and (held is None or level.on >= held.on):
            standing[level.grade] = level
    made = (_level(level, day, currency, rates) for level in standing.values())
    return [level for level in made if level is not None]


def ratios_standing(kept: Iterable[OwnRatio], day: date) -> dict[str, bands.Ratio]:
    """Every grade's ratio on a day: the user's latest of that day or before, else the trade's sayings."""
    standing = {code: bands.Ratio(float(said.low), float(said.high), _short(said)) for code, said in ratios().items()}
    for own in sorted(kept, key=lambda ratio: ratio.on):
        if own.on <= day:
            standing[own.grade] = bands.Ratio(float(own.low), float(own.high), f"{own.source}, {day_text(own.on)}")
    return standing


def _level(level: Level, day: date, currency: str, rates: RatesOn) -> bands.Level | None:
    rate = rates.rate(level.currency, currency)
    if rate is None:
        return None
    said = f"{level.said} of {day_text(level.on)} ({level.source})"
    if level.currency != currency:
        said += f" in {currency} at {float(rate.factor):.5g} ({rate.said(rates.on)})"
    spread = None if level.spread is None else float(level.spread) / 100
    made = bands.Level(level.grade, float(level.per_tonne * rate.factor), level.on.toordinal(), said, spread)
    if not level.index:
        return made
    index = [(on.toordinal(), float(value)) for on, value in level.index]
    return bands.carry_forward(made, index, level.index_name, day.toordinal())


def _short(ratio: Ratio) -> str:
    """Who says both ends of a ratio, by the kind of source alone: what exactly stands in the reference."""
    low, high = ratio.low_source.kind.value, ratio.high_source.kind.value
    return low if low == high else f"low end {low}; high end {high}"

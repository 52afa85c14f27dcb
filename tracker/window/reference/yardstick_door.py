"""What the window asks the desk about levels, ratios, rates and sensitivity; the window's one door is made of this
and more. Every method is called on the desk's thread (see work.py)."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import date
    from decimal import Decimal
    from pathlib import Path

    from tracker.desk.edits import Edit
    from tracker.desk.opening import Desk
    from tracker.desk.yardsticks import Yardsticks
    from tracker.trade.level import LevelFigure


class YardstickDoor:
    """The part of the door behind which lies what prices are held against."""

    @property
    def desk(self) -> Desk:
        raise NotImplementedError

    def yardsticks(self) -> Yardsticks:
        from tracker.desk.yardsticks import yardsticks

        return yardsticks(self.desk)

    def set_level(self, grade: str, figure: LevelFigure, on: date, source: str, spread: Decimal | None) -> Edit:
        from tracker.desk.levels import set_level

        return set_level(self.desk, grade, figure, on, source, spread)

    def doubt_level(self, grade: str, figure: LevelFigure, on: date) -> str | None:
        from tracker.desk.level_doubt import doubt_level

        return doubt_level(self.desk, grade, figure, on)

    def doubt_rate(self, code: str, euros: Decimal, on: date) -> str | None:
        from tracker.desk.rates import doubt_rate

        return doubt_rate(self.desk, code, euros, on)

    def remove_level(self, level_id: int) -> Edit:
        from tracker.desk.levels import remove_level

        return remove_level(self.desk, level_id)

    def carry_forward(self, grade: str, path: Path) -> Edit:
        """Lets the price index in a CSV carry the grade's latest level forward; it is called by the file's name."""
        from tracker.desk.price_index import carry_forward, read_index

        return carry_forward(self.desk, grade, read_index(path), path.stem)

    def set_ratio(self, grade: str, low: Decimal, high: Decimal, on: date, source: str) -> Edit:
        from tracker.desk.ratios import set_ratio

        return set_ratio(self.desk, grade, low, high, on, source)

    def set_sensitivity(self, word: str) -> Edit:
        from tracker.desk.sensitivity import Sensitivity, set_sensitivity

        return set_sensitivity(self.desk, Sensitivity(word))

    def set_rate(self, code: str, euros: Decimal, on: date) -> Edit:
        from tracker.desk.rates import set_rate

        return set_rate(self.desk, code, euros, on)

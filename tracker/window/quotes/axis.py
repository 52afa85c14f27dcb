"""An axis of a picture: figures with their unit, a word for zero, the other unit below."""

import numpy as np
import pyqtgraph as pg

_WHOLE_FROM = 100
"""From here on a tenth of the other unit says nothing more."""


class Axis(pg.AxisItem):
    """Figures with their unit, no line of its own."""

    unit = ""
    zero = ""
    signed = False
    also: tuple[float, str] | None = None

    def tickStrings(self, values: list[float], scale: float, spacing: float) -> list[str]:
        places = max(0, int(np.ceil(-np.log10(spacing)))) if spacing < 1 else 0
        sign = "+" if self.signed else ""
        said = [self.zero if self.zero and not value else f"{value:{sign},.{places}f}{self.unit}" for value in values]
        if self.also is None:
            return said
        return [f"{text}\n{self.also_text(value)}" for text, value in zip(said, values, strict=True)]

    def also_text(self, value: float) -> str:
        """The same place on the axis in the other unit."""
        factor, unit = self.also or (1.0, "")
        there = value * factor
        return f"{there:,.{0 if there >= _WHOLE_FROM else 1}f}{unit}"

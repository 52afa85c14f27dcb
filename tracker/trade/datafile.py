"""Reads the TOML files under resources/ so that a slip of the pen is told by file and key, not by a traceback.

The people who mend these files know the trade, not Python: every complaint is one plain sentence.
"""

import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from pathlib import Path
from typing import Any, TypeVar

_Member = TypeVar("_Member", bound=StrEnum)


class WrongDataFile(Exception):
    """A data file can't be used; the message names the file, the key and what belongs there."""


@dataclass(frozen=True, slots=True)
class Entry:
    """One table of a data file. `key` is its dotted name ('SBS.density'), empty for the whole file."""

    file: str
    key: str
    values: dict[str, Any]

    def __contains__(self, key: str) -> bool:
        return key in self.values

    def text(self, key: str, default: str | None = None) -> str:
        """A text that is not blank; `default` serves where the key may be missing."""
        if key not in self.values and default is not None:
            return default
        value = self._value(key, "a text in quotes")
        if not isinstance(value, str) or not value.strip():
            raise self._wrong(key, "a text in quotes")
        return value

    def number(self, key: str) -> Decimal:
        """A number, exact as written."""
        return self._as_number(key, self._value(key, "a number"))

    def numbers(self, key: str) -> tuple[Decimal, ...]:
        """A list of numbers in square brackets, never empty."""
        expected = "a list of numbers like [12, 14, 16]"
        return tuple(self._as_number(key, value, expected) for value in self._list(key, expected))

    def integer(self, key: str) -> int:
        value = self._value(key, "a whole number")
        if not isinstance(value, int) or isinstance(value, bool):
            raise self._wrong(key, "a whole number")
        return value

    def member(self, key: str, kinds: type[_Member]) -> _Member:
        """One of an enumeration's words."""
        allowed = "one of: " + "; ".join(kind.value for kind in kinds)
        value = self._value(key, allowed)
        try:
            return kinds(value)
        except ValueError:
            raise self._wrong(key, allowed) from None

    def table(self, key: str) -> "Entry":
        value = self._value(key, "a table")
        if not isinstance(value, dict):
            raise self._wrong(key, "a table")
        return Entry(self.file, self._dotted(key), value)

    def tables(self, key: str) -> tuple["Entry", ...]:
        """A list of tables, never empty."""
        values = self._list(key, "a list of tables")
        if not all(isinstance(value, dict) for value in values):
            raise self._wrong(key, "a list of tables")
        return tuple(Entry(self.file, f"{self._dotted(key)}[{place}]", value) for place, value in enumerate(values, 1))

    def each(self) -> Iterator[tuple[str, "Entry"]]:
        """Every key with its table."""
        for key in self.values:
            yield key, self.table(key)

    def refuse_unknown(self, *known: str) -> None:
        """Complain about a key that nothing reads: most often a misspelt one."""
        for key in self.values:
            if key not in known:
                raise WrongDataFile(f"{self._place(key)} is not a known key; the keys are {', '.join(known)}.")

    def complaint(self, key: str, what: str) -> WrongDataFile:
        """For a value that has the right form but can't be true."""
        return WrongDataFile(f"{self._place(key)}: {what}.")

    def _value(self, key: str, expected: str) -> Any:
        if key not in self.values:
            raise WrongDataFile(f"{self._place(key)} is missing; it should be {expected}.")
        return self.values[key]

    def _list(self, key: str, expected: str) -> list[Any]:
        value = self._value(key, expected)
        if not isinstance(value, list) or not value:
            raise self._wrong(key, expected)
        return value

    def _as_number(self, key: str, value: Any, expected: str = "a number") -> Decimal:
        if isinstance(value, bool) or not isinstance(value, int | Decimal) or not Decimal(value).is_finite():
            raise self._wrong(key, expected)
        return Decimal(value)

    def _wrong(self, key: str, expected: str) -> WrongDataFile:
        found = self.values[key]
        shown = str(found) if isinstance(found, Decimal) else repr(found)
        return WrongDataFile(f"{self._place(key)} is {shown}; it should be {expected}.")

    def _dotted(self, key: str) -> str:
        return f"{self.key}.{key}" if self.key else key

    def _place(self, key: str) -> str:
        return f"{self.file}, {self._dotted(key)}"


def read_data_file(path: Path) -> Entry:
    """The whole file as one table. WrongDataFile when it is missing or not TOML."""
    try:
        values = tomllib.loads(path.read_text(encoding="utf-8"), parse_float=Decimal)
    except OSError:
        raise WrongDataFile(
            f"The data file {path.name} can't be read; install the tracker again or restore it."
        ) from None
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise WrongDataFile(f"{path.name} is not written as TOML should be: {error}.") from None
    return Entry(path.name, "", values)

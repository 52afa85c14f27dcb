"""A statement of the trade with where it comes from."""

from dataclasses import dataclass
from enum import StrEnum

from tracker.trade.datafile import Entry


class SourceKind(StrEnum):
    """How far a figure can be leaned on, strongest first."""

    STANDARD = "standard"
    HANDBOOK = "handbook"
    COMMON_PRACTICE = "common practice, no source"
    MEMORY = "from memory"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class Provenance:
    """The kind of source and, where there is one, which: title, number, or what the assumption is."""

    kind: SourceKind
    reference: str = ""

    def __str__(self) -> str:
        return f"{self.kind.value}: {self.reference}" if self.reference else self.kind.value


@dataclass(frozen=True, slots=True)
class Fact:
    """One sentence or name, and where it comes from."""

    says: str
    source: Provenance

    def __str__(self) -> str:
        return self.says


def provenance(entry: Entry) -> Provenance:
    """The keys `source` and, where given, `reference` of a table."""
    return Provenance(entry.member("source", SourceKind), entry.text("reference", ""))


def fact(entry: Entry, key: str) -> Fact:
    """One `{ says = "…", source = "…" }` under a key."""
    return _read(entry.table(key))


def facts(entry: Entry, key: str) -> tuple[Fact, ...]:
    """A list of facts under a key."""
    return tuple(_read(table) for table in entry.tables(key))


def _read(table: Entry) -> Fact:
    table.refuse_unknown("says", "source", "reference")
    return Fact(table.text("says"), provenance(table))

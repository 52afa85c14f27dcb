"""How far back the groups go that a heading ends: 'SHEETS' over 'Bleached' ends 'ROLLS' with all its groups, 'Kraft'
only the one before it."""

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from tracker.intake.tables.table import Words
from tracker.intake.values.boards.boards_named import boards_named
from tracker.intake.values.notes.statements import statements
from tracker.intake.words.lists import phrases


@dataclass(frozen=True, slots=True)
class Reach:
    """Where what a heading ends begins for certain, and where at the earliest."""

    sure: int
    earliest: int


@dataclass(frozen=True, slots=True)
class _Level:
    start: int
    kind: str


class GroupLevels:
    """The headings that stand over the last rows, from the widest down."""

    def __init__(self) -> None:
        self._open: list[_Level] = []
        self._ended: int | None = None

    def begins(self, said: Sequence[Words], start: int) -> None:
        """Headings stand over the rows from `start` on."""
        kinds = _kinds(said)
        if kinds:
            self._open[self._places(kinds)[0] :] = [_Level(start, kind) for kind in kinds]

    def ended_by(self, said: Sequence[Words]) -> Reach:
        """Which groups headings end, of which terms tell something."""
        sure, earliest = self._places(_kinds(said))
        self._ended = sure if self._ended is None else min(self._ended, sure)
        return Reach(self._start(sure), self._start(earliest))

    @property
    def last(self) -> Reach:
        """The last group, as wide as those were that ended before it."""
        start = self._start(len(self._open) if self._ended is None else self._ended)
        return Reach(start, start)

    def _start(self, place: int) -> int:
        return self._open[min(place, len(self._open) - 1)].start if self._open else 0

    def _places(self, kinds: Sequence[str]) -> tuple[int, int]:
        """The level that headings take for certain, and the widest that they may take: one line may be of any."""
        lowest = max(len(self._open) - len(kinds), 0)
        kind = kinds[0] if kinds else ""
        alike = [place for place, level in enumerate(self._open[: lowest + 1]) if level.kind == kind]
        if kind and len(alike) == 1:
            return alike[0], alike[0]
        return lowest, 0


def _kinds(said: Sequence[Words]) -> list[str]:
    """By line, whether it names forms or boards; one that states something heads nothing."""
    rows: dict[int, list[str]] = {}
    for words in said:
        rows.setdefault(words.row, []).append(words.text)
    return [kind for texts in rows.values() if (kind := _kind(texts)) is not None]


def _kind(texts: Collection[str]) -> str | None:
    if any(boards_named(text).some for text in texts):
        return "boards"
    if any(statements(text) for text in texts):
        return None
    return "forms" if any(phrases("forms").find(text) for text in texts) else ""

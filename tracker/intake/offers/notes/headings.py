"""Which sub-headings hold for a row: a later one ends the earlier ones that speak of the same."""

from tracker.intake.tables.table import Headings, Words
from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.notes.statements import statements

_Held = tuple[tuple[Words, frozenset[str]], ...]


class HeadingsInForce:
    """The sub-headings of one table that hold below each of its groups, worked out once from those before."""

    def __init__(self) -> None:
        self._held: dict[Headings | None, _Held] = {None: ()}

    def at(self, headings: Headings | None) -> tuple[Words, ...]:
        """Those in force for the rows right below, oldest first."""
        new = []
        known = headings
        while known not in self._held:
            assert known is not None
            new.append(known)
            known = known.before
        for group in reversed(new):
            self._held[group] = _ended_by(group.own, self._held[group.before])
        return tuple(words for words, _ in self._held[headings])


def _ended_by(group: tuple[Words, ...], held: _Held) -> _Held:
    new = tuple((words, _subjects(words)) for words in group)
    subjects = frozenset().union(*(said for _, said in new))
    first = next((place for place, (_, said) in enumerate(held) if said & subjects), len(held))
    return held[:first] + new


def _subjects(words: Words) -> frozenset[str]:
    """What a heading speaks of; one that says nothing known is about the board, as most headings are."""
    said = {type(statement).__name__ for statement in statements(words.text)}
    reading = find_grade(words.text)
    if reading is not None or not said:
        said.add("board")
    return frozenset(said)

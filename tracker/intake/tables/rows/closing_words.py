"""Words between rows that say which of them they are about: 'Above prices in US dollars' between two lots of boards."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from tracker.intake.grid import Cell
from tracker.intake.tables.table import BodyRow, Headings, Words
from tracker.intake.values.notes.above_and_below import Side, parts_by_side
from tracker.intake.words.lists import joined


def tells_sides(cells: Iterable[Cell]) -> bool:
    """Whether a row may say so: nearly none of a long list does."""
    named = joined("prices_above", "prices_below", "prices_above_and_below")
    return any(named.may_begin_in(cell.text) and named.find(cell.text) for cell in cells if isinstance(cell.value, str))


@dataclass(frozen=True, slots=True)
class Sides:
    """Words about the rows above and about those below."""

    above: tuple[Words, ...]
    below: tuple[Words, ...]


def sides_of(said: Sequence[Words]) -> Sides:
    """'Les prix ci-dessus s'entendent départ usine. Les prix ci-dessous …': each sentence to its side, a text that
    names no side to those below, one of which the side is not known to both: neither has it for certain."""
    return Sides(tuple(_on(Side.ABOVE, said)), tuple(_on(Side.BELOW, said)))


def _on(side: Side, said: Sequence[Words]) -> Iterator[Words]:
    for words in said:
        parts = parts_by_side(words.text)
        if not parts and side is Side.BELOW:
            yield words
        own = [part.text for part in parts if part.side in (side, Side.BOTH)]
        if own:
            yield replace(words, text=_together(own))
        unknown = [part.text for part in parts if part.side is Side.UNKNOWN]
        if unknown:
            yield replace(words, text=_together(unknown), unsure=True)


def _together(texts: Sequence[str]) -> str:
    return texts[0] if len(texts) == 1 else ". ".join(text.rstrip(".") for text in texts)


def close(rows: Sequence[BodyRow], since: int, said: tuple[Words, ...]) -> int:
    """Puts the words over the rows since the last such words, where what is said of rows is looked for, nearer than the
    sub-headings that these rows have. Returns where the next lot begins."""
    put_over(rows[since:], said)
    return len(rows)


def put_over(rows: Sequence[BodyRow], said: tuple[Words, ...]) -> None:
    """Puts words over rows, nearer than their sub-headings; rows below the same ones go on sharing them."""
    over: dict[int, Headings] = {}
    for row in rows:
        row.headings = over.setdefault(id(row.headings), Headings(said, row.headings))

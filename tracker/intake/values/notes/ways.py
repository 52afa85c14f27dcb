"""Terms said of one way in which board is sold: 'Mindestmenge Rolle 5 t, Bogen 1 t', 'Strecke: Lieferzeit 4 Wochen'."""

from collections.abc import Iterable
from functools import lru_cache

from tracker.intake.values.notes.ways_named import FORMS, OTHER_WAY, named_in
from tracker.intake.values.notes.ways_told import TermOfWay, parts_told

_STOPS = " :,;–-"


def considered(of_prices: Iterable[str]) -> frozenset[str]:
    """The ways that notes are heard to name: forms always, others where prices are told apart by them."""
    ways = frozenset(of_prices)
    return FORMS | {way for way in ways if OTHER_WAY[way] in ways}


@lru_cache(maxsize=4096)
def terms_by_way(text: str, heard: frozenset[str]) -> tuple[TermOfWay, ...]:
    """The parts of a note that tells terms of one of the ways `heard` and not of the other; () for any other note."""
    if not any(match.value in heard for match in named_in(text)):
        return ()
    parts = tuple(parts_told(text, heard))
    return parts if any(part.ways and part.kinds for part in parts) else ()


def left_to(text: str, own: frozenset[str], apart: frozenset[str]) -> str:
    """What a note says of prices of their `own` ways, where the ways `apart` are those of others beside them.

    A term of their own comes before one of the same kind that is said of all.
    """
    parts = terms_by_way(text, considered(apart))
    named = frozenset().union(*(part.ways for part in parts))
    held = [part for part in parts if all(_holds(way, part, own, apart, named) for way in part.ways)]
    own_kinds = frozenset().union(*(part.kinds for part in held if part.ways and part.ways <= own))
    kept = [part for part in held if part.ways or not part.kinds & own_kinds]
    unsure = _told_twice(kept, own)
    kept = [part for part in kept if not part.kinds & unsure]
    if len(kept) == len(parts) and not any(_is_own_least(part, own) for part in kept):
        return text
    by_clause: dict[tuple[int, int], list[str]] = {}
    for place, part in enumerate(kept):
        told = _without_any(part.text) if _is_own_least(part, own) else part.text
        by_clause.setdefault((part.clause, place if part.ways else -1), []).append(told)
    return "; ".join(", ".join(texts) for texts in by_clause.values())


def _is_own_least(part: TermOfWay, own: frozenset[str]) -> bool:
    """A smallest order of these prices' own way: 'Delivered: minimum 20 t'. It is that of all of them."""
    return bool(part.ways) and part.ways <= own and part.kinds == {"minimum"}


def _without_any(piece: str) -> str:
    for match in reversed(named_in(piece)):
        piece = f"{piece[: match.start]} {piece[match.end :]}"
    return piece.strip(_STOPS)


def _told_twice(parts: list[TermOfWay], own: frozenset[str]) -> frozenset[str]:
    """The kinds of terms of which these prices may have that of all or that of a way. Two lead times or smallest orders
    are told as such where they are read."""
    of_all = frozenset().union(*(part.kinds for part in parts if not part.ways))
    of_some = frozenset().union(*(part.kinds for part in parts if part.ways and not part.ways <= own))
    return (of_all & of_some) - _TOLD_WHERE_READ


_TOLD_WHERE_READ = frozenset({"lead", "minimum"})


def _holds(way: str, part: TermOfWay, own: frozenset[str], apart: frozenset[str], named: frozenset[str]) -> bool:
    """Whether what is said of a way is said of these prices; of those whose way is not told, where no others are."""
    other = OTHER_WAY[way]
    if way in own or other in own:
        return way in own
    # Two of which it is not known which holds are told as such where they are read.
    both = other in named and way in FORMS and not part.kinds & _TOLD_WHERE_READ
    return not (both or {way, other} & apart)

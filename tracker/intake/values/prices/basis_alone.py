"""Parts of a sentence that say what prices are per and no more, so that words for 'per' count that are others too: '…,
for a short ton of 2,000 lb', 'jeweils für 1.000 Bogen', '… och avser 1 000 ark'."""

from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import BasisReading, after_per, ton_definition, unit_at
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import between


@lru_cache(maxsize=4096)
def basis_alone(clause: str) -> BasisReading | None:
    """The unit of the first such part of a clause about prices; None where it has none."""
    return next(filter(None, map(_of_part, _parts(clause))), None)


def _parts(clause: str) -> Iterator[str]:
    for piece in COMMA.split(clause):
        yield from between(piece, phrases("and_words").find(piece))


def _of_part(part: str) -> BasisReading | None:
    found = tokens(fold(part.strip(" .:")))
    start = _behind_small_words(part.strip(" .:"))
    after = after_per(found, start, weak=True)
    unit = unit_at(found, after, part.strip(" .:")) if start < after < len(found) else None
    if unit is None or not unit[0].bases:
        return None
    rest = part.strip(" .:")[found[unit[1]][1] :] if unit[1] < len(found) else ""
    defines = ton_definition(part) is not None
    return unit[0] if not rest or defines else None


def _behind_small_words(part: str) -> int:
    """The number of the first token behind 'each', 'jeweils', 'are'."""
    small = {match.first: match.after for kind in _SMALL for match in phrases(kind).find(part)}
    place = 0
    while place in small:
        place = small[place]
    return place


_SMALL = ("copula", "each_time")

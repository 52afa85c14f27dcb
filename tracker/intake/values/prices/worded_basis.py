"""What prices are per, in words that are none for 'per', or are others too: '…, for a short ton of 2,000 lb', 'jeweils
für 1.000 Bogen', 'what one thousand sheets cost in pounds', 'el importe de cada mil metros cuadrados'."""

from collections.abc import Iterator
from functools import lru_cache

from tracker.intake.values.freight.charge_names import charges_named
from tracker.intake.values.notes.clauses import COMMA
from tracker.intake.values.prices.basis import BasisReading, after_per, unit_at
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.words.fold import fold, tokens
from tracker.intake.words.lists import phrases
from tracker.intake.words.phrases import Found, between, without


@lru_cache(maxsize=4096)
def worded_basis(clause: str) -> BasisReading | None:
    """The unit that a clause about prices gives them so; None where it names none, or several."""
    return next(filter(None, map(_of_part, _parts(clause))), None) or _of_one_unit(clause)


def _parts(clause: str) -> Iterator[str]:
    for piece in COMMA.split(clause):
        yield from between(piece, phrases("and_words").find(piece))


def _of_part(part: str) -> BasisReading | None:
    """The unit of a part that is nothing but 'per' in any of its words and a unit."""
    part = part.strip(" .:*")
    found, start = tokens(fold(part)), _behind_small_words(part)
    after = after_per(found, start, weak=True)
    unit = unit_at(found, after, part) if start < after < len(found) else None
    if unit is None or not unit[0].bases:
        return None
    goes_on = unit[1] < len(found)
    return None if goes_on and ton_definition(part) is None else unit[0]


def _behind_small_words(part: str) -> int:
    """The number of the first token behind 'each', 'jeweils', 'are'."""
    small = {match.first: match.after for kind in _SMALL for match in phrases(kind).find(part)}
    place = 0
    while place in small:
        place = small[place]
    return place


_SMALL = ("copula", "each_time")


def _of_one_unit(clause: str) -> BasisReading | None:
    """The one unit of a sentence that names prices or what something costs, and no figure besides: a thousand of
    something, or 'one', 'each', 'cada' of it. Sentences about charges and what is denied say nothing so."""
    named = [match for match in phrases("basis").find(clause) if _is_one(clause, match)]
    if len(named) != 1 or not names_costs(clause) or phrases("negations").find(clause) or charges_named(clause):
        return None
    if any(map(str.isdigit, without(clause, named))):
        return None
    found = tokens(fold(clause))
    unit = unit_at(found, named[0].first, clause)
    return unit[0] if unit is not None and unit[0].bases else None


def names_costs(clause: str) -> bool:
    """Whether a clause speaks of prices, of what something costs or of the amounts of a list."""
    return any(phrases(kind).find(clause) for kind in ("price_words", "what_it_costs"))


def _is_one(clause: str, unit: Found[str]) -> bool:
    if unit.value in _THOUSANDS:
        return True
    last = clause[: unit.start].rsplit(maxsplit=1)[-1:]
    said = " ".join(last), clause[unit.start : unit.end].split()[0]
    return any(phrases("one_of").whole(word) is not None for word in said)


_THOUSANDS = ("1000sheets", "msf", "1000m2")

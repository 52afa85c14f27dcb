"""What a clause says that prices hold, and what they leave out: 'Prices exclude freight ($42/ST) and energy ($18/ST)',
'Preise inkl. Fracht, jedoch ohne Energiezuschlag (25 EUR/t)'."""

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from tracker.intake.values.freight.charge_names import ChargeKind, charges_named, label_of
from tracker.intake.values.freight.entry_amounts import amounts_in
from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.words.lists import joined, phrases
from tracker.intake.words.phrases import Found, blanked


class PricesHold(NamedTuple):
    """`lead`: the prices and the verb by which they hold something; `held` and `left_out`: what they hold, and what
    comes on top, each '' for nothing."""

    lead: str
    held: str
    left_out: str


@lru_cache(maxsize=8192)
def prices_hold(clause: str) -> PricesHold | None:
    """None where a clause says neither of prices, or says more of them ahead of it."""
    verb = _first_verb(clause)
    if verb is None or not phrases("price_words").find(clause[: verb.start]):
        return None
    lead = clause[: verb.start]
    if rest_of(lead, (), *_LEADS_TO_VERB):
        return None
    said: dict[bool, list[str]] = {True: [], False: []}
    held = _holds(verb, lead, clause[verb.end :])
    holds = clause[: verb.end]
    for part in _parts(clause[verb.end :].lstrip(".")):
        turned = _turned(part, held)
        if turned is None:
            return None
        if turned[0] and not held and (other := _first_verb(part)) is not None:
            denials = joined("negations", "denies_ahead").find(lead)
            holds = f"{blanked(lead, (match.span for match in denials)).strip()} {part[: other.end].strip()}"
        held, content = turned
        relative = _relative_ahead(content)
        if relative and said[held]:
            # 'Freight, which is $42/ST'.
            content = f"{said[held].pop()} {content[relative:]}"
        said[held].append(content.strip(" ,."))
    kept, left_out = (list(filter(None, said[each])) for each in (True, False))
    if kept and not all(map(_is_a_thing, left_out)):
        return None
    return PricesHold(holds, ", ".join(kept), ", ".join(left_out))


def _is_a_thing(part: str) -> bool:
    """'The energy surcharge ($25/ST)', 'VAT'; of 'not for orders below 10 t', 'not to Alaska' freight is left out."""
    named = [*phrases("charges").find(part), *phrases("taxes").find(part), *phrases("tax").find(part)]
    first = min(named, key=lambda one: one.start, default=None)
    return first is not None and not rest_of(part[: first.start], (), "articles")


def left_out_of_prices(clause: str) -> str:
    """The charges that a clause says prices leave out, each as one would write it by itself: 'freight ($42/ST), energy
    ($18/ST)' of 'Prices exclude freight ($42/ST) and energy ($18/ST)'; other clauses as they are."""
    said = prices_hold(clause)
    return said.left_out if said is not None and said.left_out and (said.held or amounts_in(said.left_out)) else clause


def held_by_prices(clause: str) -> str:
    """'Prices include freight' of 'Prices include freight but not energy ($25/ST)'; '' of a clause by which they hold
    nothing, others as they are."""
    said = prices_hold(clause)
    if said is None or not said.left_out:
        return clause
    return f"{said.lead} {said.held}" if said.held else ""


def freight_held(text: str) -> str:
    """A text without what is left out beside the freight that prices hold: that says nothing of the freight."""
    told = [(clause, held_by_prices(clause)) for clause in clauses(text)]
    kept = [held if held and phrases("carriage").find(held) else clause for clause, held in told]
    return text if kept == [clause for clause, _ in told] else "; ".join(kept)


def left_out_unsaid(text: str) -> Iterator[tuple[ChargeKind, str, str]]:
    """What prices are said to leave out beside what they hold, and not what it comes to: 'Prices include freight but
    not energy'; each with the clause that says so. Freight that is left out is told of the prices themselves."""
    for clause in clauses(text):
        said = prices_hold(clause)
        if said is not None and said.held and said.left_out and not amounts_in(said.left_out):
            for part in _PARTS.split(said.left_out):
                named = charges_named(part)
                if named and named[0].value != ChargeKind.FREIGHT:
                    yield ChargeKind(named[0].value), label_of(part, named), clause


def _parts(behind: str) -> Iterator[str]:
    """Its parts between commas, and those ahead of 'but', 'and', 'nor' and of a further verb."""
    start = 0
    joints = [match.span for match in joined("but_words", "nor").find(behind)]
    for begins, end in sorted([*joints, *(match.span() for match in _PARTS.finditer(behind))]):
        if begins >= start:
            yield behind[start:begins]
            start = end
    yield behind[start:]


_PARTS = re.compile(r",(?!\d)(?![^(]*\))")


def _turned(part: str, held: bool) -> tuple[bool, str] | None:
    """Whether prices hold what a part names, and the part without the words that say so; None where they are not read:
    of 'energy is not included' they stand behind it."""
    verb = _first_verb(part)
    if verb is not None and not rest_of(
        part[: verb.start], (), "negations", "denies_ahead", "articles", "these_prices"
    ):
        held = _holds(verb, part[: verb.start], part[verb.end :])
        part = part[verb.end :].lstrip(".")
    denial = _denial_ahead(part)
    if denial is not None:
        held, part = False, part[denial.end :]
    elif phrases("negations").find(part) or phrases("relieved").find(part):
        return None
    return held, part


def _relative_ahead(part: str) -> int:
    """Where the 'which is' ends that a part begins with; 0 where it begins with none."""
    relative = next((one for one in phrases("relative_words").find(part) if not part[: one.start].strip()), None)
    if relative is None:
        return 0
    said = next((one for one in phrases("copula").find(part) if not part[relative.end : one.start].strip()), None)
    return relative.end if said is None or said.start < relative.end else said.end


def _first_verb(text: str) -> Found[str] | None:
    found = (*phrases("bears").find(text), *phrases("prices_without").find(text))
    return min(found, key=lambda verb: (verb.start, -verb.end), default=None)


def _holds(verb: Found[str], before: str, behind: str) -> bool:
    """'Include', and neither 'do not include' nor 'include neither'; 'do not exclude' too."""
    denied = bool(phrases("negations").find(before)) or _denial_ahead(behind) is not None
    return (verb.value == "included") != denied


def _denial_ahead(part: str) -> Found[str] | None:
    denial = next(iter(joined("negations", "nor").find(part)), None)
    return None if denial is None or part[: denial.start].strip(" ,.") else denial


_LEADS_TO_VERB = (
    "price_words", "these_prices", "prices_above", "all_of_them", "negations", "denies_ahead", "articles", "list_names",
    "copula", "tells_of_prices",
)  # fmt: skip

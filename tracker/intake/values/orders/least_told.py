"""What one clause tells of smallest orders, part for part between its commas and brackets: a weight, or words that are
not understood.

A part tells a weight for certain where it has words for a smallest order and one weight, and nothing is left of it but
grades and what goes without saying. What stands in other parts is another matter ('Net 30, no discount, minimum order 5
t, lead time 3 weeks'), unless it begins a condition ('minimum 5 t, unless mixed').
"""

from collections.abc import Iterator
from dataclasses import dataclass

from tracker.intake.values.boards.grade import find_grade
from tracker.intake.values.figures.numbers_in_words import says_unread_number
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.notes.unless import unless_at
from tracker.intake.values.orders.bracket_pieces import VEHICLES
from tracker.intake.values.orders.least_parts import AROUND, Part, parts_of
from tracker.intake.values.orders.masses import Mass
from tracker.intake.values.orders.not_least import may_be_of_a_piece, of_something_else
from tracker.intake.values.orders.pieces_weighed import may_be_one, restates, times_pieces
from tracker.intake.values.prices.ton_kinds import ton_definition
from tracker.intake.values.times.dates import find_dates
from tracker.intake.values.times.lead import lead_phrases
from tracker.intake.words.lists import joined, phrases, without_words


@dataclass(frozen=True, slots=True)
class Told:
    """A smallest order, of boards of some `grades` where any are named. `read`: whether all of it is understood; where
    not, `mass` is the weight that stands there, if one does. `apart`: of orders that this list is not for, unless it
    is one for export and `mass` is told. `part`: the words that name the grades."""

    mass: Mass | None
    grades: tuple[str, ...] = ()
    read: bool = True
    apart: bool = False
    part: str = ""


_SPEAKING = ("minimum", "minimum_at_first", "at_least")


def least_told(clause: str, before: tuple[Told, ...] = ()) -> tuple[Told, ...]:
    """All that a clause tells of smallest orders; () where it tells of none. Weights stand in figures, and what an
    order is counted for ('/Sorte') is away. `before`: what is told already."""
    parts = parts_of(clause)
    if not any(phrases(section).find(clause) for section in _SPEAKING) and not any(part.topics for part in parts):
        return _of_further_boards(clause, before)
    if says_unread_number(clause):
        return (Told(None, read=False),)
    if any(one.grades for one in before):
        # 'SBS is made from 5 t; the minimum for all other grades is 1 t': of all but those named before.
        clause = without_words(clause, "the_others")
    return tuple(_told(parts_of(clause)))


def _of_further_boards(clause: str, told: tuple[Told, ...]) -> tuple[Told, ...]:
    """What a clause without words for a smallest order tells of other boards than those named before, the 'CRB 5 t' of
    'minimum SBS 10 t; CRB 5 t', or of some that have no name."""
    parts = parts_of(clause) if told else []
    found = [(part, one) for part in parts if part.masses and not part.topics for one in _further(part, list(told))]
    named = any(one.grades for one in told)
    return tuple(one for part, one in found if (named if one.grades else _begins_with_a_weight(part)))


def _begins_with_a_weight(part: Part) -> bool:
    """'Minimum order 10,000 lb per size; 5,000 lb for stocked sizes'."""
    return not part.text[: part.masses[0][1][0]].strip()


def _told(parts: list[Part]) -> Iterator[Told]:
    told: list[Told] = []
    used: set[int] = set()
    for place, part in enumerate(parts):
        now: list[Told] = []
        if part.topics and (weighed := _weighed_apart(parts, place)) is not None:
            used.add(weighed)
            now = _around(parts, place, weighed) or _in_loads(part)
        elif part.topics and part.masses:
            now = _judged(part, parts)
        elif part.masses and told and place not in used:
            now = [] if may_be_of_a_piece(part, parts) else _further(part, told)
        elif told and is_condition(part.text):
            now = [Told(told[-1].mass, read=False)]
        told += now
    yield from told


def _weighed_apart(parts: list[Part], place: int) -> int | None:
    """Which part has the weight for the words for a smallest order in this one: the part before, '5 ST (minimum)', or
    one behind, 'minimum order, per item, 5 ST', 'minimum so far 2 t, now 5 t'. None where its own has it, or none
    does."""
    if parts[place].masses and not _was(parts[place]):
        return None
    before = parts[place - 1] if place else None
    if before is not None and before.masses and not before.topics and not (before.rest or parts[place].rest):
        return place - 1
    for behind in range(place + 1, len(parts)):
        if parts[behind].topics or (parts[behind].rest and not parts[behind].masses):
            return None
        if parts[behind].masses and not _was(parts[behind]):
            return behind
    return None


def _around(parts: list[Part], place: int, weighed: int) -> list[Told]:
    """What these two parts tell together: 'Mindestmenge: 2 Rollen, Rollengewicht 650 kg'. The truck of 'minimum 3
    pallets, truckload 20 t' is another matter."""
    judged = _judged(parts[min(place, weighed)].joined(parts[max(place, weighed)]), parts)
    return [one for one in judged if one.read or not parts[weighed].rest]


def _in_loads(part: Part) -> list[Told]:
    """'Half a truckload, a truckload is 40,000 lb': an order in parts of a load."""
    loads = any(match.value in VEHICLES for match in phrases("bracket").find(part.text))
    return [Told(None, read=False)] if loads else []


def _judged(part: Part, parts: list[Part]) -> list[Told]:
    """What a part tells that has words for a smallest order and weights."""
    if of_something_else(part, parts) or _is_for_a_purpose(part, parts):
        return []
    if _is_apart(part, parts):
        rest = rest_of(part.rest, (), "sold_apart.goods")
        clear = phrases("of_export").find(part.text) and len(part.masses) == 1 and not rest
        return [Told(part.masses[0][0] if clear else None, read=False, apart=True)]
    now = _without_earlier(part)
    grades = _grades(now.text)
    first = now.masses[0][0]
    defined = now.pieces or ton_definition(now.text) is not None
    several = not defined and any(not restates(first, other) for other, _ in now.masses[1:])
    weight = None if several else times_pieces(now.behind_topic, first)
    if weight is None:
        return [Told(None, grades, read=False)]
    ahead = parts[: next((place for place, one in enumerate(parts) if one is part), 0)]
    bounded = any(_is_size(one) or is_condition(one.text) for one in ahead)
    return [Told(weight, grades, read=not (now.rest or bounded or may_be_of_a_piece(now, parts)), part=now.text)]


def _is_for_a_purpose(part: Part, parts: list[Part]) -> bool:
    """'Aufträge müssen mindestens 10 t umfassen, um frei geliefert zu werden': smaller ones are taken as well."""
    behind = (one.text.lstrip() for one in parts if one is not part and one.text in part.onwards)
    return any(match.start == 0 for text in behind for match in phrases("purposes").find(text))


def _is_apart(part: Part, parts: list[Part]) -> bool:
    """'Orders for export: minimum 20 t', 'Pour l'exportation, la quantité minimale est de 24 t'."""
    led = parts[0].text if parts and not rest_of(parts[0].text, (), "sold_apart.goods") else ""
    return bool(phrases("sold_apart").find(f"{led} {part.text}"))


def _was(part: Part) -> bool:
    """Its weights are those of once."""
    ends = [0, *(end for _, (_, end) in part.masses)]
    starts = [start for _, (start, _) in part.masses]
    return all(_once_ahead(part.text[end:start]) is not None for end, start in zip(ends, starts, strict=False))


def _without_earlier(part: Part) -> Part:
    """The part without a weight that was once, or a step, where another stands beside it: 'from 3 t to 5 t', '5 t,
    bisher 3 t', '5 t in multiples of 1 t'."""
    spans, end, kept = [], 0, 0
    for _, (start, after) in part.masses:
        was = _once_ahead(part.text[end:start], "was_once", "in_steps")
        if was is None:
            kept += 1
        else:
            spans.append((end + was, after))
        end = after
    return part.without(spans) if spans and kept else part


def _once_ahead(words: str, *sections: str) -> int | None:
    """Where the word begins that makes the weight right behind these words an earlier one, or what these lists say."""
    found = joined(*(sections or ("was_once",))).find(words)
    return found[-1].start if found and not rest_of(words[found[-1].end :], ()) else None


def _further(part: Part, told: list[Told]) -> list[Told]:
    """What a weight without words for a smallest order tells behind one that has them: that of another board, 'SBS 10
    t, CRB 5 t', or a second one of all, '5 t per item, 20 t per order'."""
    if ton_definition(part.text) is not None or part.pieces:
        return []
    (mass, (start, _)), *others = part.masses
    grades = _grades(part.text)
    if _once_ahead(part.text[:start], "was_once", "in_steps") is not None or _says_again(mass, grades, told):
        return []
    named = any(one.grades for one in told)
    of_the_others = [match.span for match in phrases("the_others").find(part.text)] if named else []
    own = part.without(of_the_others) if of_the_others else part
    rest = rest_of(own.rest, (), "exceptions", "excepted")
    if not grades and rest:
        return [Told(mass, read=False)] if _is_of_some(part) else []
    return [Told(mass, grades, read=bool(grades or of_the_others) and not (rest or others), part=part.text)]


def _says_again(mass: Mass, grades: tuple[str, ...], told: list[Told]) -> bool:
    """The second unit of '5,000 lb, 2.3 t', or what holds for all; the CUK of 'SBS 5 ST, CUK 5 ST' has its own."""
    same = (one for one in told if one.mass is not None)
    return any(
        may_be_one(one.mass, mass) if grades else restates(one.mass, mass)
        for one in same
        if one.mass is not None and (not grades or not one.grades or set(grades) <= set(one.grades))
    )


def _is_of_some(part: Part) -> bool:
    """'2 ST on sheets', '500 kg for stocked sizes', '10 ST from 1 January 2027': another one of some, or later. A load
    from stock is another matter."""
    if _in_loads(part):
        return False
    stock = any(match.value == "stock" for match in lead_phrases().find(part.text))
    return stock or bool(phrases("forms").find(part.text) or find_dates(part.text))


def is_condition(text: str) -> bool:
    """'Unless mixed', 'außer bei Lagerware'; 'unless otherwise agreed' is said of everything."""
    begins = any(match.first == 0 for match in phrases("conditions").find(text))
    return begins and unless_at(text) is None and bool(rest_of(text, ()))


def _is_size(part: Part) -> bool:
    """'Below 5 ST' and 'ab 10 t', ahead of the rest: what follows holds for such orders alone."""
    spans = [span for _, span in part.masses]
    sized = any(match.value in _SIZES for match in phrases("bracket").find(part.text))
    return bool(spans) and sized and not part.topics and not rest_of(part.text, spans, *AROUND, "bracket")


_SIZES = ("below", "up_to", "from", "above")


def _grades(text: str) -> tuple[str, ...]:
    named = find_grade(text)
    return named.grades if named is not None else ()

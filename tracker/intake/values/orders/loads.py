"""What a file says its truckloads and pallets weigh: 'TL: 40,000 lb or more', '1 pallet = 800 kg'."""

import re
from dataclasses import dataclass, replace
from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.orders.bracket_pieces import HALF_LOAD, VEHICLES
from tracker.intake.values.orders.brackets import Bracket, bracket_text
from tracker.intake.values.orders.each_load import (
    EACH,
    excepts_boards,
    grade_of_load,
    led_by_a_kind,
    made_up,
    may_be_most,
    said_of_some,
    weight_ahead,
    weight_of_each,
)
from tracker.intake.values.orders.masses import Mass, find_masses
from tracker.intake.words.lists import pattern, phrases, words
from tracker.intake.words.phrases import Found

LOADS = (*VEHICLES, *EACH)
"""What an order may be counted in, and weighed only where the file says what one weighs."""


@dataclass(frozen=True, slots=True)
class LoadDefinition:
    """A kind of load ('truckload', 'part_load', 'half_load', 'pallet', 'roll').

    Either its `bracket` of weights, or what `each` of them weighs. `grade`: the one whose pallets or rolls they are.
    """

    kind: str
    words: str
    bracket: Bracket | None = None
    each: Mass | None = None
    grade: str | None = None

    @property
    def weight(self) -> Mass | None:
        """What one weighs, where a weight and no more is said: 'half truck = 12 t', and not 'LTL: under 12 t'."""
        if self.bracket is not None:
            return self.bracket.start if self.bracket.alone else None
        return self.each

    @property
    def begins(self) -> Mass | None:
        """Where a part load begins that also ends, or half a load: 'LTL: 10,000-42,000 lb', 'half truck: 12 t+'."""
        if self.bracket is None or not (self.kind == HALF_LOAD or (self.kind == "part_load" and self.bracket.end)):
            return None
        return None if self.bracket.alone else self.bracket.start

    @property
    def full_load(self) -> Mass | None:
        """Where a full load begins: 'full load = 24 t and more', 'part load = under 24 t'."""
        if self.bracket is None or self.bracket.alone:
            return None
        if self.kind == "truckload":
            return self.bracket.start
        ends = self.kind == "part_load" or (self.kind == HALF_LOAD and self.bracket.start is not None)
        return self.bracket.end if ends else None


_SIGN = re.compile(r"\s*(?:[:=]|-\s|–\s)\s*")


@lru_cache(maxsize=4096)
def load_definitions(text: str) -> tuple[LoadDefinition, ...]:
    """The loads that a note defines by weight. () where it defines none."""
    return tuple(one for one in _all_definitions(text) if one.grade is None)


@lru_cache(maxsize=4096)
def loads_of_grades(text: str) -> tuple[LoadDefinition, ...]:
    """What each pallet or roll of one grade weighs: 'SBS pallets weigh 2,000 lb'."""
    return tuple(one for one in _all_definitions(text) if one.grade is not None)


def _all_definitions(text: str) -> list[LoadDefinition]:
    found: list[LoadDefinition] = []
    for clause in clauses(text):
        parts = [one for part in re.split(r",(?!\d)", clause) for one in _each_load(part.strip())]
        told = filter(None, map(_definition, (*parts, *_said_of_the_load_before(clause))))
        some = excepts_boards(clause) or may_be_most(clause)
        for one in () if some else told:
            if one.each is None or not said_of_some(clause, one.words):
                found.append(one)
            elif (grade := grade_of_load(clause)) is not None:
                found.append(replace(one, grade=grade))
    return found


def _said_of_the_load_before(clause: str) -> list[str]:
    """'A roll weighs 800 kg' of 'A roll is 40 in wide and weighs 800 kg', where one load alone is spoken of."""
    named = [match for match in phrases("bracket").find(clause) if match.value in LOADS]
    if len({match.value for match in named}) != 1:
        return []
    if led_by_a_kind(clause[: named[0].start]):
        return []
    load = clause[named[0].start : named[0].end]
    joints = re.finditer(rf"\s{pattern('range', 'and')}\s|,(?!\d)\s*", clause[named[-1].end :], re.IGNORECASE)
    behind = (clause[named[-1].end + joint.end() :].strip() for joint in joints)
    return [f"{load} {said}" for said in behind if any(match.start == 0 for match in phrases("weighs").find(said))]


def _each_load(part: str) -> list[str]:
    """'One roll is 2,100 lb' and 'a truckload is 42,000 lb' where 'and' joins them; '40,000 lb and over' is one."""
    for joint in re.finditer(rf"\s{pattern('range', 'and')}\s", part, re.IGNORECASE):
        before, behind = part[: joint.start()], part[joint.end() :]
        if _definition(before) is not None and _definition(behind) is not None:
            return [before, *_each_load(behind)]
    return [part]


def _apart(part: str) -> str:
    """'Rullvikt: 750 kg' and 'Rullvikt 750 kg' as 'rulle: 750 kg'."""
    for match in reversed(phrases("load_weights").find(part)):
        load, behind = words("bracket")[match.value][0], part[match.end :]
        sign = "" if _behind_sign(behind.strip()) or not weight_of_each(behind) else ":"
        part = f"{part[: match.start]}{load}{sign}{behind}"
    return part


def _definition(text: str) -> LoadDefinition | None:
    part = _apart(text)
    named = [match for match in phrases("bracket").find(part) if match.value in LOADS]
    if not named or len({match.value for match in named}) != 1:
        return None
    kind = named[0].value
    if kind in EACH and led_by_a_kind(part[: named[0].start]):
        return None
    each = weight_ahead(part[: named[0].start]) if kind in EACH else None
    if each is not None:
        return LoadDefinition(kind, text, each=each)
    rest = _behind_sign(part[named[-1].end :].lstrip(" )."))
    if not rest:
        return None
    if kind in EACH:
        each = weight_of_each(rest)
        return LoadDefinition(kind, text, each=each) if each is not None else None
    bracket = bracket_text(rest.strip())
    if bracket is None or bracket.not_weight:
        return None
    return LoadDefinition(kind, part, bracket=bracket)


def _behind_sign(text: str) -> str:
    """What stands behind '=' or a word that defines ('weighs'); '' where neither begins the text."""
    sign = _SIGN.match(text)
    if sign is not None:
        return text[sign.end() :]
    said = [match for match in (*made_up(text), *phrases("weighs").find(text)) if match.start == 0]
    return text[max(match.end for match in said) :].lstrip(" :") if said else ""


def load_at_end(words: str) -> Found[str] | None:
    """The load that a size from some weight goes up to: 'T/L' in '20,000 lb to T/L' and in '20,000 lb up to a full
    T/L', which weighs something else. Of 'under 2 TL' it says nothing."""
    load = next((match for match in phrases("bracket").find(words) if match.value in WHOLE_LOADS), None)
    before = _ONE.sub("", words[: load.start].rstrip()) if load is not None else ""
    joint = before[_end_of_weight(before) :].strip()
    return load if joint != before.strip() and (joint in _DASHES or _joins(joint)) else None


_ONE = re.compile(r"(?<=[^\W\d])\s+1$")
"""'To under 1 TL' as 'to under a TL'."""


def ending_at(words: str, load: Found[str], weight: Mass) -> Bracket | None:
    """'5 t up to a full load' as a size whose end weighs so much."""
    bracket = bracket_text(f"{words[: _end_of_weight(words[: load.start])]} - {weight.words}")
    return None if bracket is None else replace(bracket, words=words, end_included=False)


def _end_of_weight(before: str) -> int:
    masses = find_masses(before)
    return before.rfind(masses[-1].words) + len(masses[-1].words) if masses else 0


def _joins(joint: str) -> bool:
    """'to', 'up to a', 'jusqu'au', 'bis unter einer': a word for where a size ends, with small words and no others."""
    first = next((match for match in phrases("load_joints").find(joint) if match.start == 0), None)
    first = first or next((match for match in phrases("bracket").find(joint) if _ends_a_size(match)), None)
    if first is None:
        return phrases("range").whole(joint) == "any"
    return all(phrases("load_articles").whole(word) is not None for word in joint[first.end :].split())


def _ends_a_size(match: Found[str]) -> bool:
    return match.start == 0 and match.value in ("up_to", "to", "below")


def counted_to_load(words: str) -> tuple[Bracket, Found[str]] | None:
    """'5 rolls up to a truckload': what is counted, and the load that it goes up to; None where it is weighed."""
    load = next((match for match in phrases("bracket").find(words) if match.value in WHOLE_LOADS), None)
    before = words[: load.start] if load is not None else ""
    joints = [match.span() for match in re.finditer(r"\s[-–—]\s", before)]
    joints += [(match.start, match.end) for match in phrases("bracket").find(before) if match.value == "up_to"]
    start, end = max(joints, default=(0, 0))
    size = bracket_text(before[:start].strip()) if start and len(before[end:].split()) <= 1 else None
    counted = size is not None and size.not_weight in ("roll", "pallet") and size.start is not None and not size.end
    return (size, load) if size is not None and load is not None and counted else None


WHOLE_LOADS = ("truckload", "railcar")
_DASHES = ("-", "–", "—")

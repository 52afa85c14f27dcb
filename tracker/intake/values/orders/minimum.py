"""The smallest order a vendor takes: 'Minimum order 10,000 lb per item', 'MOQ 2 t', 'Mindestmenge 5 t'."""

import re
from dataclasses import dataclass
from functools import lru_cache

from tracker.intake.values.notes.clauses import clauses
from tracker.intake.values.notes.rest import rest_of
from tracker.intake.values.orders.brackets import bracket_text
from tracker.intake.values.orders.least_told import Told, least_told
from tracker.intake.values.orders.masses import MASS_UNITS, Mass, find_masses
from tracker.intake.values.orders.orders_refused import refused_below, refuses_small
from tracker.intake.values.orders.pieces_weighed import may_be_one
from tracker.intake.values.orders.weights_in_words import weights_in_figures
from tracker.intake.words.lists import phrases

_SLASH = re.compile(r"\s*/\s*([^\W\d]+)")


@dataclass(frozen=True, slots=True)
class Minimum:
    """A smallest order. `grades`: of which boards; () of all. `part`: the words that name them."""

    mass: Mass
    grades: tuple[str, ...] = ()
    part: str = ""


@dataclass(frozen=True, slots=True)
class LeastUnread:
    """Words that tell a smallest order which is not understood: one on terms, or one of some orders alone. `apart`: of
    orders that no price of this list is for, as those for export are; `export`: the weight of these; `perhaps`: it may
    be that of other boards only."""

    words: str
    apart: bool = False
    export: Mass | None = None
    perhaps: bool = False


def _without_per_item(clause: str) -> str:
    """'3 t/item' and '2 t/Sorte' are weights of each order; '75 lb/MSF' is none."""
    return _SLASH.sub(lambda per: " " if phrases("minimum_per").whole(per[1]) else per[0], clause)


@lru_cache(maxsize=8192)
def find_minimum(text: str) -> Mass | None:
    """The one weight that a text tells as the smallest order; None where it tells none, or one that is not
    understood."""
    told = _told(text)
    masses = [one.mass for one in told if one.read and one.mass is not None]
    certain = len(masses) == len(told) and all(may_be_one(masses[0], other) for other in masses)
    return masses[0] if masses and certain else None


def tells_a_least(text: str) -> bool:
    """Whether a text tells a smallest order, understood or not."""
    return bool(_told(text))


@lru_cache(maxsize=8192)
def minimums(text: str) -> tuple[Minimum, ...]:
    """What a note says of smallest orders: one of all boards, those of the boards it names, or both; () where
    neither."""
    told = _told(text)
    if not any(one.grades for one in told):
        general = find_minimum(text)
        return () if general is None else (Minimum(general),)
    if not all(one.read for one in told):
        return ()
    return tuple(dict.fromkeys(Minimum(one.mass, one.grades, one.part) for one in told if one.mass is not None))


@lru_cache(maxsize=8192)
def least_unread(text: str) -> LeastUnread | None:
    """The first clause that tells a smallest order which is not understood, where the text tells none that is."""
    if minimums(text):
        return None
    for clause in clauses(text):
        told = _told_in(clause)
        if not all(one.read for one in told):
            export = next((one.mass for one in told if one.apart), None)
            return LeastUnread(clause.strip(" ."), any(one.apart for one in told), export)
    return LeastUnread(text.strip()) if _told(text) else None


@lru_cache(maxsize=8192)
def _told(text: str) -> tuple[Told, ...]:
    """All that a text tells of smallest orders; what it tells of those for export changes nothing of one for all."""
    if not any(phrases(section).find(text) for section in _SPEAKING):
        return ()
    told: tuple[Told, ...] = ()
    for clause in clauses(text):
        told += _told_in(clause, told)
    return tuple(one for one in told if not one.apart) or told


_SPEAKING = ("minimum", "minimum_at_first", "at_least", "orders_refused", "orders_taken")


def _told_in(clause: str, before: tuple[Told, ...] = ()) -> tuple[Told, ...]:
    clause = _without_per_item(weights_in_figures(clause))
    if refuses_small(clause):
        refused = refused_below(clause)
        return () if refused is None else (refused,)
    return least_told(_with_unit_behind(clause), before)


def _with_unit_behind(clause: str) -> str:
    """'Minimum order (lb): 5,000' -> 'Minimum order: 5,000 lb', as a form has the unit with the label, and so 'Min lb
    5000'; 'Minimum charge (lb)' and 'Minimum stock (lb)' are none of orders, and what 'Minimum order (1,000 lb): 5'
    counts is not read."""
    said = _LABELLED.fullmatch(clause) or _UNIT_BEFORE.fullmatch(clause)
    if said is None:
        return clause
    if any(map(str.isdigit, said["unit"])):
        return said["label"] if find_masses(said["unit"]) else clause
    if phrases("basis").whole(said["unit"]) not in MASS_UNITS:
        return clause
    if rest_of(said["label"], (), "minimum", "around_a_minimum", "order_words", "ordered.any", "minimum_per"):
        return clause
    return f"{said['label']}: {said['figure']} {said['unit']}"


_LABELLED = re.compile(
    r"(?P<label>[^\d:()\[\]]+?)\s*(?:[(\[](?P<unit>[^()\[\]]{1,12})[)\]])\s*:?\s*(?P<figure>\d[\d.,' ]*)\.?"
)
_UNIT_BEFORE = re.compile(r"(?P<label>[^\d:()\[\]]+?)\s+(?P<unit>[^\W\d]+\.?)\s*:?\s+(?P<figure>\d[\d.,' ]*)\.?")


@lru_cache(maxsize=4096)
def begins_at(text: str) -> Mass | None:
    """The smallest order that a remark on one board names: 'min. 5 t', 'from 500 kg' and nothing else."""
    size = bracket_text(text)
    opens = size is not None and size.end is None and not size.alone and not size.not_weight
    return size.start if size is not None and opens else find_minimum(text)
